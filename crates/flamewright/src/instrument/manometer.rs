//! Liquid-column gauges: what a level difference is worth in pascals.
//!
//! Two different things are called an inch or a millimetre of water. The *conventional* unit is an
//! exact number of pascals (water taken as 1000 kg/m³ at standard gravity) and belongs on a scale
//! (`inH2O`, `mmH2O`; the units named for a temperature, `inH2O_60F`, are others); the *actual* height
//! of a column is worth less, by 0.18 % at 20 °C, since warm water is lighter. Actual heights are
//! lengths here, and become pressures only in the calculations.

use crate::Error;
use crate::air::properties::STANDARD_ATMOSPHERE;
use crate::calculation::{Form, Setting, Settings};
use crate::math::{sin, sqrt};
use crate::quantity::types::{MassDensity, TemperatureCoefficient, ThermodynamicTemperature};
use crate::quantity::{Value, units};
use crate::water::heating_water;

/// Density of conventional water, kg/m³, exact by convention (NIST SP 811, B.8).
pub(crate) const CONVENTIONAL_WATER_DENSITY: f64 = 1000.0;

/// Density in kg/m³ of a liquid whose density is stated at one temperature, from its cubic expansion
/// coefficient in 1/K. Both temperatures in the same degrees.
#[inline]
pub(crate) fn expanded_density(stated_density: f64, stated_at: f64, expansion_per_kelvin: f64, temperature: f64) -> f64 {
    stated_density / (1.0 + expansion_per_kelvin * (temperature - stated_at))
}

/// Acceleration of gravity in m/s² at a latitude in rad and a height in m above sea level.
///
/// Source: normal gravity of the Geodetic Reference System 1980 in Somigliana's closed form (Moritz,
/// *Geodetic Reference System 1980*, Journal of Geodesy 74 (2000) 128); free-air gradient
/// 3.086e-6 s⁻² (textbook value). The true local value differs by up to about 5e-4 m/s².
#[inline]
pub(crate) fn local_gravity(latitude: f64, height: f64) -> f64 {
    let sine = sin(latitude);
    let square = sine * sine;
    9.780_326_771_5 * (1.0 + 0.001_931_851_353 * square) / sqrt(1.0 - 0.006_694_380_022_90 * square) - 3.086e-6 * height
}

/// The liquid in a gauge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum GaugeLiquid {
    /// Water; its density follows from its temperature.
    Water,
    /// A liquid whose density is stated.
    Stated {
        /// The density at `at`.
        density: MassDensity,
        /// The temperature of the stated density.
        at: ThermodynamicTemperature,
        /// Cubic expansion coefficient.
        expansion: TemperatureCoefficient,
    },
}

impl GaugeLiquid {
    pub(crate) const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "liquid",
            doc: "The liquid in the gauge: water, or one of stated density.",
            form: Form::Choice(&["water", "stated"]),
            default: Some("water"),
        },
        Setting {
            name: "density",
            doc: "Density of a stated liquid.",
            form: Form::Quantity(MassDensity::KIND, &units::KILOGRAM_PER_CUBIC_METRE),
            default: None,
        },
        Setting {
            name: "density_temperature",
            doc: "Temperature of the stated density.",
            form: Form::Quantity(ThermodynamicTemperature::KIND, &units::DEGREE_CELSIUS),
            default: Some("20 degC"),
        },
        Setting {
            name: "expansion_coefficient",
            doc: "Cubic expansion coefficient of a stated liquid.",
            form: Form::Quantity(TemperatureCoefficient::KIND, &units::PER_KELVIN),
            default: Some("0 1/K"),
        },
    ];

    pub(crate) fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        if settings.choice("liquid", &[("water", true), ("stated", false)])? {
            return match ["density", "density_temperature", "expansion_coefficient"].into_iter().find(|name| settings.get(name).is_some()) {
                Some(name) => Err(Error::bad_setting(name, "", "it belongs to liquid = \"stated\"; the density of water is known")),
                None => Ok(Self::Water),
            };
        }
        Ok(Self::Stated {
            density: settings.quantity("density", 500.0..=15_000.0)?,
            at: settings.quantity("density_temperature", 233.15..=333.15)?,
            expansion: settings.quantity("expansion_coefficient", 0.0..=3e-3)?,
        })
    }

    /// Density at a temperature, under the atmosphere; NaN for water outside 0 to 110 °C.
    pub(crate) fn density_at(self, temperature: ThermodynamicTemperature) -> MassDensity {
        MassDensity::from_si(match self {
            Self::Water => heating_water(STANDARD_ATMOSPHERE, temperature.si()).density,
            Self::Stated { density, at, expansion } => expanded_density(density.si(), at.si(), expansion.si(), temperature.si()),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::expanded_density;

    /// Half a per cent of volume for ten kelvin at 5e-4 1/K.
    #[test]
    fn a_stated_liquid_is_lighter_where_it_is_warmer() {
        assert_eq!(expanded_density(784.0, 20.0, 5e-4, 20.0), 784.0);
        assert!((expanded_density(784.0, 20.0, 5e-4, 30.0) - 784.0 / 1.005).abs() < 1e-12);
        assert!((expanded_density(784.0, 20.0, 5e-4, 10.0) - 784.0 / 0.995).abs() < 1e-12);
    }
}
