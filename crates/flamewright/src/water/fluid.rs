//! The liquid in a heating circuit: water, or water with glycol.

use super::{Antifreeze, heating_water};
use crate::Error;
use crate::calculation::{Form, Setting, Settings};

/// What circulates.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Fluid {
    /// Plain water.
    #[default]
    Water,
    /// Water with a glycol, at a mass fraction that the input states.
    Glycol(Antifreeze),
}

/// Properties of the circulating liquid that flow sums need, in SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FluidState {
    /// Density in kg/m³.
    pub density: f64,
    /// Specific heat capacity in J/(kg K).
    pub specific_heat_capacity: f64,
    /// Specific enthalpy in J/kg; for differences of one liquid only.
    pub enthalpy: f64,
    /// Volumetric expansion coefficient in 1/K.
    pub expansion_coefficient: f64,
    /// Dynamic viscosity in Pa s.
    pub dynamic_viscosity: f64,
    /// Thermal conductivity in W/(m K).
    pub thermal_conductivity: f64,
}

/// The setting `fluid`.
pub(crate) const FLUID_SETTING: Setting = Setting {
    name: "fluid",
    doc: "What circulates; a glycol's share is the input `glycol_mass_fraction`.",
    form: Form::Choice(&["water", "propylene glycol", "ethylene glycol"]),
    default: Some("water"),
};

impl Fluid {
    /// The fluid named by the setting `fluid`.
    pub(crate) fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        settings.choice(
            FLUID_SETTING.name,
            &[
                ("water", Self::Water),
                ("propylene glycol", Self::Glycol(Antifreeze::PropyleneGlycol)),
                ("ethylene glycol", Self::Glycol(Antifreeze::EthyleneGlycol)),
            ],
        )
    }

    /// Properties at a mass fraction of glycol, an absolute pressure in Pa and a temperature in K.
    ///
    /// Water by [`heating_water`], so from 0 to 110 °C. NaN where there is no formula, and for water
    /// with a glycol fraction other than zero.
    #[inline]
    pub fn state(self, glycol_mass_fraction: f64, pressure: f64, temperature: f64) -> FluidState {
        match self {
            Self::Water => heating_water(pressure, if glycol_mass_fraction == 0.0 { temperature } else { f64::NAN }),
            Self::Glycol(antifreeze) => {
                let mixture = antifreeze.mixture(glycol_mass_fraction, temperature);
                FluidState {
                    density: mixture.density,
                    specific_heat_capacity: mixture.specific_heat_capacity,
                    enthalpy: mixture.enthalpy,
                    expansion_coefficient: mixture.expansion_coefficient,
                    dynamic_viscosity: mixture.dynamic_viscosity,
                    thermal_conductivity: mixture.thermal_conductivity,
                }
            }
        }
    }

    /// Whether a glycol fraction is stated for plain water.
    #[inline]
    pub(crate) fn glycol_in_water(self, glycol_mass_fraction: f64) -> bool {
        matches!(self, Self::Water) & (glycol_mass_fraction != 0.0)
    }

    /// Whether the liquid is at or below its freezing point.
    #[inline]
    pub(crate) fn frozen(self, glycol_mass_fraction: f64, temperature: f64) -> bool {
        match self {
            Self::Water => temperature < 273.15,
            Self::Glycol(antifreeze) => temperature < antifreeze.freezing_temperature(glycol_mass_fraction),
        }
    }
}
