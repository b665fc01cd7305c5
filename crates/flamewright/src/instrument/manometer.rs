//! Liquid-column gauges: what a level difference is worth in pascals.
//!
//! Two different things are called an inch or a millimetre of water. The *conventional* unit is an
//! exact number of pascals (water taken as 1000 kg/m³ at standard gravity) and belongs on a scale; the
//! *actual* height of a column is worth less, by 0.18 % at 20 °C, since warm water is lighter. Each
//! has its own name here and neither stands in for the other.

use crate::math::{sin, sqrt};

/// Standard acceleration of gravity, m/s², exact (3rd CGPM, 1901).
pub const STANDARD_GRAVITY: f64 = 9.80665;
/// Density of conventional water, kg/m³, exact by convention (NIST SP 811, B.8).
pub const CONVENTIONAL_WATER_DENSITY: f64 = 1000.0;
/// One inch, m, exact.
pub const INCH: f64 = 0.0254;
/// Conventional millimetre of water, Pa, exact.
pub const MILLIMETRE_OF_WATER_CONVENTIONAL: f64 = 9.80665;
/// Conventional inch of water, Pa, exact: 25.4 conventional millimetres.
pub const INCH_OF_WATER_CONVENTIONAL: f64 = 249.088_91;
/// Inch of actual water at 39.2 °F (its greatest density), Pa; NIST SP 811, B.8, six figures.
pub const INCH_OF_WATER_39_FAHRENHEIT: f64 = 249.082;
/// Inch of actual water at 60 °F, Pa; NIST SP 811, B.8, four figures (248.8), here with the density
/// of [`water_density`] at 15.555... °C and standard gravity.
pub const INCH_OF_WATER_60_FAHRENHEIT: f64 = 248.843;

/// Density of air-free water in kg/m³ at a temperature in °C and 101 325 Pa; 0 to 40 °C, NaN outside.
///
/// Source: Tanaka et al., *Metrologia* 38 (2001) 301-309 (the CIPM recommended equation, p. 305);
/// stated uncertainty below 1e-6. The industrial formulation of the water module is 2e-5 coarser at
/// these temperatures, which is why a gauge does not use it.
#[inline]
pub fn water_density(celsius: f64) -> f64 {
    let from_maximum = celsius - 3.983_035;
    let density = 999.974_950
        * (1.0 - from_maximum * from_maximum * (celsius + 301.797) / (522_528.9 * (celsius + 69.348_81)));
    if (0.0..=40.0).contains(&celsius) { density } else { f64::NAN }
}

/// Density in kg/m³ of a liquid whose density is stated at one temperature, from its cubic expansion
/// coefficient in 1/K.
#[inline]
pub fn expanded_density(
    stated_density: f64,
    stated_at_celsius: f64,
    expansion_per_kelvin: f64,
    celsius: f64,
) -> f64 {
    stated_density / (1.0 + expansion_per_kelvin * (celsius - stated_at_celsius))
}

/// Acceleration of gravity in m/s² at a latitude in rad and a height in m above sea level.
///
/// Source: normal gravity of the Geodetic Reference System 1980 in Somigliana's closed form (Moritz,
/// *Geodetic Reference System 1980*, Journal of Geodesy 74 (2000) 128); free-air gradient
/// 3.086e-6 s⁻² (textbook value). The true local value differs by up to about 5e-4 m/s².
#[inline]
pub fn local_gravity(latitude: f64, height: f64) -> f64 {
    let sine = sin(latitude);
    let square = sine * sine;
    9.780_326_771_5 * (1.0 + 0.001_931_851_353 * square) / sqrt(1.0 - 0.006_694_380_022_90 * square)
        - 3.086e-6 * height
}

/// Level difference in m of a U-gauge whose limbs moved down and up by the given distances in m.
#[inline]
pub fn level_difference_of_limbs(limb_down: f64, limb_up: f64) -> f64 {
    limb_down + limb_up
}

/// Level difference in m of an inclined gauge: reading along the tube in m, angle to the horizontal
/// in rad.
#[inline]
pub fn level_difference_of_incline(length: f64, angle: f64) -> f64 {
    length * sin(angle)
}

/// Pressure difference in Pa that holds a column: level difference in m, densities of the liquid and
/// of the gas above it in kg/m³, gravity in m/s².
#[inline]
pub fn column_pressure(level_difference: f64, liquid: f64, gas_above: f64, gravity: f64) -> f64 {
    (liquid - gas_above) * gravity * level_difference
}
