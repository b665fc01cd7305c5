//! Properties of dry and humid air.

use crate::math::{exp, pow};
use crate::root::rising_root;
use crate::water::saturation_pressure;

/// Standard atmosphere in Pa (ISO 2533, by definition).
pub const STANDARD_ATMOSPHERE: f64 = 101_325.0;

/// Lowest temperature in K for which [`dry_air`] answers.
pub const LOWEST_TEMPERATURE: f64 = 223.15;
/// Highest temperature in K for which [`dry_air`] answers.
pub const HIGHEST_TEMPERATURE: f64 = 473.15;

/// Properties of dry air at one state.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DryAir {
    /// Density in kg/m³.
    pub density: f64,
    /// Specific heat capacity at constant pressure in J/(kg K).
    pub heat_capacity: f64,
    /// Dynamic viscosity in Pa s.
    pub viscosity: f64,
    /// Thermal conductivity in W/(m K).
    pub conductivity: f64,
}

impl DryAir {
    /// Kinematic viscosity in m²/s.
    pub fn kinematic_viscosity(&self) -> f64 {
        self.viscosity / self.density
    }

    /// Prandtl number.
    pub fn prandtl(&self) -> f64 {
        self.viscosity * self.heat_capacity / self.conductivity
    }
}

// Least-squares polynomials in u = (T - 348.15 K) / 125 K through the equations of Lemmon et al.
// 2000 (density, heat capacity) and Lemmon & Jacobsen 2004 (transport) at 101 325 Pa as CoolProp
// 8.0.0 evaluates them. Largest relative departure over -50..200 degC: density 1.9e-6, heat
// capacity 8e-7, viscosity 1.3e-8, conductivity 1.4e-7.
const DENSITY_TIMES_TEMPERATURE: [f64; 6] =
    [3.52987464024e2, -2.09983233623e-1, 1.56045042167e-1, -8.89289021094e-2, 6.86824257917e-2, -3.38639341409e-2];
const HEAT_CAPACITY: [f64; 7] =
    [1.00906840913e3, 9.49714831884, 6.59895286941, 1.62929306563e-1, -3.25460493968e-1, -1.37173038294e-1, 1.01187997098e-1];
const VISCOSITY: [f64; 7] =
    [2.07836190948e-5, 5.65049951683e-6, -4.43578712899e-7, 6.40303253095e-8, -9.77304500860e-9, 1.52302982926e-9, -2.01516273639e-10];
const CONDUCTIVITY: [f64; 7] =
    [2.98725708306e-2, 8.83954288602e-3, -5.29436864325e-4, 7.54229184023e-5, -1.06788747403e-5, 1.22070452654e-6, -2.42898329558e-8];

/// The variable of the polynomials for air: -1 at the lowest temperature, 1 at the highest.
#[inline(always)]
pub(crate) fn scaled_temperature(temperature: f64) -> f64 {
    (temperature - 348.15) * (1.0 / 125.0)
}

/// A polynomial, lowest power first.
///
/// The powers are taken in four strands that a processor works on side by side; in one strand each
/// term would wait for the last.
#[inline(always)]
pub(crate) fn polynomial<const N: usize>(coefficients: &[f64; N], u: f64) -> f64 {
    let squared = u * u;
    let fourth = squared * squared;
    let mut strands = [0.0; 4];
    for (power, coefficient) in coefficients.iter().enumerate().rev() {
        strands[power % 4] = strands[power % 4] * fourth + coefficient;
    }
    (strands[0] + strands[1] * u) + squared * (strands[2] + strands[3] * u)
}

/// Dry air at a temperature in K and an absolute pressure in Pa.
///
/// Valid from -50 to 200 degC; NaN outside. At 101 325 Pa within 2e-6 of the equations of Lemmon
/// et al. At another pressure the density is scaled in proportion and the rest kept, which
/// between 50 and 110 kPa costs at most 3e-4 of the density from 0 degC up and 9e-4 at -50 degC.
#[inline(always)]
pub fn dry_air(temperature: f64, pressure: f64) -> DryAir {
    let inside = (LOWEST_TEMPERATURE..=HIGHEST_TEMPERATURE).contains(&temperature) & (pressure > 0.0);
    let u = scaled_temperature(if inside { temperature } else { f64::NAN });
    DryAir {
        density: polynomial(&DENSITY_TIMES_TEMPERATURE, u) * (pressure / STANDARD_ATMOSPHERE) / temperature,
        heat_capacity: polynomial(&HEAT_CAPACITY, u),
        viscosity: polynomial(&VISCOSITY, u),
        conductivity: polynomial(&CONDUCTIVITY, u),
    }
}

/// Properties of moist air at one state.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HumidAir {
    /// Mole fraction of water vapour.
    pub vapour_mole_fraction: f64,
    /// Mass of vapour per mass of dry air in kg/kg.
    pub humidity_ratio: f64,
    /// Density in kg/m³.
    pub density: f64,
}

/// Molar masses in kg/mol: dry air with 400 ppm of carbon dioxide, and water (CIPM-2007).
const MOLAR_MASS_DRY: f64 = 28.96546e-3;
const MOLAR_MASS_WATER: f64 = 18.01528e-3;

/// Lowest and highest temperature in K for which [`humid_air`] answers.
pub const HUMID_RANGE: core::ops::RangeInclusive<f64> = 273.15..=323.15;

/// Lowest temperature in K that [`dew_point`] gives.
pub const LOWEST_DEW_POINT: f64 = 233.15;

/// Pressure in Pa at which water vapour in air over water or, below 0 degC, over ice is saturated.
///
/// IAPWS-IF97 region 4 over water, Wagner et al. 2011 (IAPWS R14-08) over ice, times the
/// enhancement by the air: least-squares polynomials through ASHRAE RP-1485 as CoolProp 8.0.0
/// evaluates it, within 6e-5 from 0 to 50 degC and 4e-6 from -40 to 0 degC, at 60 to 110 kPa.
fn saturation_in_air(temperature: f64, pressure: f64) -> f64 {
    let t = temperature - 273.15;
    let bar = pressure * 1e-5;
    if t >= 0.0 {
        let own = ((-1.801319e-9 * t + 3.736151e-7) * t + 2.580899e-5) * t + 4.670641e-4;
        let with_pressure = ((1.812877e-9 * t + 3.579256e-7) * t - 3.645885e-5) * t + 3.588201e-3;
        (1.0 + own + bar * with_pressure) * saturation_pressure(temperature)
    } else {
        let own = ((2.674094e-9 * t + 4.484685e-7) * t + 2.519698e-5) * t + 4.868591e-4;
        let with_pressure = (3.609698e-7 * t - 3.151138e-5) * t + 3.661165e-3;
        (1.0 + own + bar * with_pressure) * sublimation_pressure(temperature)
    }
}

/// Pressure of water vapour over ice in Pa at a temperature in K; Wagner, Riethmann, Feistel &
/// Harvey 2011, J. Phys. Chem. Ref. Data 40, 043103, which is IAPWS R14-08(2011).
fn sublimation_pressure(temperature: f64) -> f64 {
    const TERMS: [(f64, f64); 3] = [(-0.212144006e2, 0.333333333e-2), (0.273203819e2, 0.120666667e1), (-0.610598130e1, 0.170333333e1)];
    let theta = temperature / 273.16;
    let sum: f64 = TERMS.iter().map(|(factor, exponent)| factor * pow(theta, *exponent)).sum();
    611.657 * exp(sum / theta)
}

/// Humid air at a temperature in K, an absolute pressure in Pa and a relative humidity (0 to 1)
/// over liquid water.
///
/// Density by the equation of state of CIPM-2007 (Picard, Davis, Gläser & Fujii 2008, Metrologia
/// 45, 149) for 400 ppm of carbon dioxide: 2.2e-5 from 15 to 27 degC and 60 to 110 kPa. Answers
/// from 0 to 50 degC, where it keeps within 6e-5 of ASHRAE RP-1485.
pub fn humid_air(temperature: f64, pressure: f64, relative_humidity: f64) -> HumidAir {
    const MOLAR_GAS_CONSTANT: f64 = 8.314472; // J/(mol K), CODATA 2006, as CIPM-2007 prescribes
    let inside = HUMID_RANGE.contains(&temperature) & (pressure > 0.0) & (0.0..=1.0).contains(&relative_humidity);
    let kelvin = if inside { temperature } else { f64::NAN };
    let celsius = kelvin - 273.15;
    let fraction = relative_humidity * saturation_in_air(kelvin, pressure) / pressure;
    // Vapour at more than the pressure of the air would be boiling water.
    let x = if fraction < 1.0 { fraction } else { f64::NAN };
    let p_over_t = pressure / kelvin;
    let compressibility = 1.0
        - p_over_t
            * (1.58123e-6 - 2.9331e-8 * celsius
                + 1.1043e-10 * celsius * celsius
                + (5.707e-6 - 2.051e-8 * celsius) * x
                + (1.9898e-4 - 2.376e-6 * celsius) * x * x)
        + p_over_t * p_over_t * (1.83e-11 - 0.765e-8 * x * x);
    HumidAir {
        vapour_mole_fraction: x,
        humidity_ratio: x / (1.0 - x) * (MOLAR_MASS_WATER / MOLAR_MASS_DRY),
        density: p_over_t * MOLAR_MASS_DRY / (compressibility * MOLAR_GAS_CONSTANT) * (1.0 - x * (1.0 - MOLAR_MASS_WATER / MOLAR_MASS_DRY)),
    }
}

/// Temperature in K at which air with this mole fraction of vapour, cooled at its pressure in Pa,
/// begins to lay down dew or, below 0 degC, frost.
///
/// From -40 to 50 degC; NaN outside. Between 0 and -0.01 degC, where ice and water meet, it is 0 degC.
pub fn dew_point(vapour_mole_fraction: f64, pressure: f64) -> f64 {
    let vapour = vapour_mole_fraction * pressure;
    let excess = |temperature: f64| saturation_in_air(temperature, pressure) - vapour;
    let freezing = 273.15;
    let below = 273.149_999_999;
    if excess(freezing) <= 0.0 {
        rising_root(excess, freezing, *HUMID_RANGE.end(), 1e-10)
    } else if excess(below) <= 0.0 {
        freezing
    } else {
        rising_root(excess, LOWEST_DEW_POINT, below, 1e-10)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::vec::Vec;

    fn rows(table: &str) -> impl Iterator<Item = Vec<f64>> + '_ {
        table.lines().skip(1).map(|line| line.split(',').map(|c| c.parse().unwrap_or(f64::NAN)).collect())
    }

    fn close(got: f64, wanted: f64, tolerance: f64, what: &str) {
        assert!((got / wanted - 1.0).abs() <= tolerance, "{what}: {got} is not {wanted} to {tolerance}");
    }

    #[test]
    fn dry_air_agrees_with_the_reference_table() {
        let mut count = 0;
        for row in rows(include_str!("../../../../tests/reference/heat/air_dry_1atm.csv")) {
            let air = dry_air(row[0] + 273.15, STANDARD_ATMOSPHERE);
            close(air.density, row[1], 1e-5, "density");
            close(air.heat_capacity, row[2], 1e-5, "heat capacity");
            close(air.viscosity, row[3], 1e-5, "viscosity");
            close(air.conductivity, row[4], 1e-5, "conductivity");
            close(air.prandtl(), row[5], 1e-5, "Prandtl number");
            close(air.kinematic_viscosity(), row[6], 1e-5, "kinematic viscosity");
            count += 1;
        }
        assert_eq!(count, 18);
    }

    #[test]
    fn humid_air_agrees_with_the_reference_table() {
        let mut count = 0;
        for row in rows(include_str!("../../../../tests/reference/heat/air_humid.csv")) {
            let air = humid_air(row[0] + 273.15, row[1], row[2]);
            close(air.density, row[4], 1e-4, "density");
            close(air.density, row[5], 5e-6, "CIPM-2007 density");
            if row[2] > 0.0 {
                close(air.humidity_ratio, row[3], 5e-5, "humidity ratio");
                let dew = dew_point(air.vapour_mole_fraction, row[1]) - 273.15;
                assert!((dew - row[6]).abs() < 1e-3, "dew point {dew} for {}", row[6]);
            } else {
                assert_eq!(air.humidity_ratio, 0.0);
            }
            count += 1;
        }
        assert_eq!(count, 30);
    }

    #[test]
    fn ice_has_its_published_vapour_pressure() {
        // IAPWS R14-08(2011), Table 4: 8.94735 Pa at 230 K.
        close(sublimation_pressure(230.0), 8.94735, 1e-6, "over ice");
        close(sublimation_pressure(273.16), 611.657, 1e-12, "triple point");
    }

    #[test]
    fn states_outside_give_no_number() {
        assert!(dry_air(223.0, 1e5).density.is_nan());
        assert!(dry_air(474.0, 1e5).conductivity.is_nan());
        assert!(dry_air(f64::NAN, 1e5).density.is_nan());
        assert!(humid_air(293.15, 1e5, 1.01).density.is_nan());
        assert!(humid_air(272.0, 1e5, 0.5).density.is_nan());
        assert!(humid_air(323.15, 5e3, 1.0).humidity_ratio.is_nan());
    }
}
