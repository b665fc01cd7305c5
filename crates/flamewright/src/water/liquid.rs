//! All properties of liquid water in one pass.

use super::region1::{HIGHEST_TEMPERATURE, region1};
use super::transport::Reduced;

/// Below this temperature, in K, the critical enhancement of the conductivity of liquid water is
/// exactly zero; see [`Reduced::conductivity_enhancement`].
pub(super) const ENHANCEMENT_FROM: f64 = 423.15;

/// Properties of liquid water at one state, in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Liquid {
    /// Density in kg/m³.
    pub density: f64,
    /// Specific enthalpy in J/kg (zero internal energy for the liquid at the triple point).
    pub enthalpy: f64,
    /// Specific entropy in J/(kg K) (zero for the liquid at the triple point).
    pub entropy: f64,
    /// Specific heat capacity at constant pressure in J/(kg K).
    pub specific_heat_capacity: f64,
    /// Isobaric volumetric expansion coefficient in 1/K; negative below about 4 °C.
    pub expansion_coefficient: f64,
    /// Isothermal compressibility in 1/Pa.
    pub compressibility: f64,
    /// Dynamic viscosity in Pa s.
    pub dynamic_viscosity: f64,
    /// Thermal conductivity in W/(m K).
    pub thermal_conductivity: f64,
    /// Prandtl number.
    pub prandtl_number: f64,
}

/// Properties of liquid water at an absolute pressure in Pa and a temperature in K.
///
/// Density, enthalpy, entropy, heat capacity, expansion and compressibility by IAPWS-IF97 region 1
/// (R7-97(2012)), viscosity by IAPWS R12-08 and conductivity by R15-11, both at the IF97 density,
/// the way the releases prescribe for industrial use. The critical enhancement of the viscosity is
/// left out (as R12-08 allows), that of the conductivity is zero up to 150 °C.
///
/// Straight-line: no call, no branch, so a loop over it vectorises; inlined, so that a caller pays
/// only for the fields it reads. NaN outside 273.15 K to 423.15 K and 0 to 100 MPa; for hotter
/// water see [`hot_liquid`]. Whether the water would boil is the caller's question to
/// [`saturation_pressure`](super::saturation_pressure).
///
/// ```
/// let water = flamewright::water::liquid(2.0e5, 333.15);
/// assert!((water.density - 983.254).abs() < 1e-3);
/// assert!((water.specific_heat_capacity - 4182.54).abs() < 0.01);
/// ```
#[inline(always)]
pub fn liquid(pressure: f64, temperature: f64) -> Liquid {
    let temperature = if temperature <= ENHANCEMENT_FROM { temperature } else { f64::NAN };
    let thermodynamic = region1(pressure, temperature);
    let density = 1.0 / thermodynamic.specific_volume;
    let reduced = Reduced::new(density, temperature);
    let dynamic_viscosity = reduced.viscosity();
    let thermal_conductivity = reduced.conductivity_background();
    Liquid {
        density,
        enthalpy: thermodynamic.enthalpy,
        entropy: thermodynamic.entropy,
        specific_heat_capacity: thermodynamic.specific_heat_capacity,
        expansion_coefficient: thermodynamic.expansion_coefficient,
        compressibility: thermodynamic.compressibility,
        dynamic_viscosity,
        thermal_conductivity,
        prandtl_number: thermodynamic.specific_heat_capacity * dynamic_viscosity / thermal_conductivity,
    }
}

/// The same as [`liquid`] over the whole of region 1, to 623.15 K, with the critical enhancement
/// of the conductivity. Equal to it, to the bit, where both hold.
pub fn hot_liquid(pressure: f64, temperature: f64) -> Liquid {
    if temperature <= ENHANCEMENT_FROM {
        return liquid(pressure, temperature);
    }
    let temperature = if temperature <= HIGHEST_TEMPERATURE { temperature } else { f64::NAN };
    let thermodynamic = region1(pressure, temperature);
    let density = 1.0 / thermodynamic.specific_volume;
    let reduced = Reduced::new(density, temperature);
    let dynamic_viscosity = reduced.viscosity();
    let thermal_conductivity = reduced.conductivity_background()
        + reduced.conductivity_enhancement(
            thermodynamic.compressibility,
            thermodynamic.specific_heat_capacity,
            thermodynamic.specific_heat_capacity_at_constant_volume,
            dynamic_viscosity,
        );
    Liquid {
        density,
        enthalpy: thermodynamic.enthalpy,
        entropy: thermodynamic.entropy,
        specific_heat_capacity: thermodynamic.specific_heat_capacity,
        expansion_coefficient: thermodynamic.expansion_coefficient,
        compressibility: thermodynamic.compressibility,
        dynamic_viscosity,
        thermal_conductivity,
        prandtl_number: thermodynamic.specific_heat_capacity * dynamic_viscosity / thermal_conductivity,
    }
}
