//! Carbon monoxide and nitrogen oxides: ratio, air-free, at reference oxygen, by mass.

use crate::combustion::species::{self, MOLAR_GAS_CONSTANT};

/// Molar mass of nitrogen dioxide, as which nitrogen oxides are counted, kg/mol (ISO 6976:2016,
/// Table A.2).
pub const NITROGEN_DIOXIDE_MOLAR_MASS: f64 = 0.046_005_5;

/// Molar mass of carbon monoxide, kg/mol.
pub const CARBON_MONOXIDE_MOLAR_MASS: f64 = species::CARBON_MONOXIDE.molar_mass;

/// A trace gas brought from the measured oxygen to a reference oxygen by mixing with or taking
/// away air: `x (O2air - O2ref) / (O2air - O2)`.
///
/// All in mol/mol of dry gas; `reference_oxygen` 0 gives air-free. `air_oxygen` is the rule's own
/// convention: 0.209, 0.2095 or 0.21.
#[must_use]
#[inline(always)]
pub fn at_reference_oxygen(fraction_dry: f64, oxygen_dry: f64, reference_oxygen: f64, air_oxygen: f64) -> f64 {
    fraction_dry * (air_oxygen - reference_oxygen) / (air_oxygen - oxygen_dry)
}

/// A trace gas air-free by the fuel's largest carbon dioxide: `x CO2max / CO2`, mol/mol of dry gas.
#[must_use]
#[inline(always)]
pub fn air_free_from_carbon_dioxide(fraction_dry: f64, carbon_dioxide_dry: f64, carbon_dioxide_maximum: f64) -> f64 {
    fraction_dry * carbon_dioxide_maximum / carbon_dioxide_dry
}

/// Mass of a trace gas per volume of gas, kg/m3, ideal gas.
///
/// `fraction` in mol/mol, `molar_mass` in kg/mol, temperature in K, absolute pressure in Pa.
#[must_use]
#[inline(always)]
pub fn mass_concentration(fraction: f64, molar_mass: f64, temperature: f64, pressure: f64) -> f64 {
    fraction * molar_mass * pressure / (MOLAR_GAS_CONSTANT * temperature)
}

/// Fraction of a trace gas from its mass per volume, the inverse of [`mass_concentration`].
#[must_use]
#[inline(always)]
pub fn fraction_from_mass_concentration(mass_concentration: f64, molar_mass: f64, temperature: f64, pressure: f64) -> f64 {
    mass_concentration * MOLAR_GAS_CONSTANT * temperature / (molar_mass * pressure)
}
