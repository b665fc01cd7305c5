//! Short formulae for the flue loss and the excess air ratio, under their own names.
//!
//! They are approximations for comparison and for rules that ask for them; the element balance of
//! [`crate::flue::kernel`] is the exact way.

/// Constants of Siegert's formula in its oxygen form, for one class of fuel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SiegertConstants {
    /// Factor A2, % per K times % of oxygen.
    pub a2: f64,
    /// Summand B, % per K.
    pub b: f64,
}

/// A published pair of constants.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PublishedSiegert {
    /// Name to choose it by.
    pub name: &'static str,
    /// Fuels it was published for.
    pub fuels: &'static str,
    /// The constants.
    pub constants: SiegertConstants,
    /// Where it was published.
    pub source: &'static str,
}

const GERMAN: &str = "1. BImSchV (2010), Anlage 2, no. 3.4.1";
const FLEMISH: &str = "Flemish Government decree of 8 December 2006 (heating appliances), Annex II, no. 4";

/// Published pairs. They are data to choose from, never a default.
pub static PUBLISHED_SIEGERT: [PublishedSiegert; 7] = [
    published("de-heating-oil", "heating oil EL", 0.68, 0.007, GERMAN),
    published("de-natural-gas", "gas of the public supply", 0.66, 0.009, GERMAN),
    published("de-coke-oven-gas", "coke-oven gas", 0.60, 0.011, GERMAN),
    published("de-lpg", "LPG and LPG-air mixtures", 0.63, 0.008, GERMAN),
    published("be-vl-natural-gas", "natural gas", 0.65, 0.009, FLEMISH),
    published("be-vl-propane", "propane", 0.63, 0.008, FLEMISH),
    published("be-vl-gas-oil", "gas oil", 0.68, 0.007, FLEMISH),
];

const fn published(name: &'static str, fuels: &'static str, a2: f64, b: f64, source: &'static str) -> PublishedSiegert {
    PublishedSiegert { name, fuels, constants: SiegertConstants { a2, b }, source }
}

/// Oxygen of air in Siegert's formula, mol/mol (1. BImSchV, Anlage 2).
pub const SIEGERT_AIR_OXYGEN: f64 = 0.21;

/// Flue loss as a fraction of the net heat input by the carbon dioxide form of Siegert's formula, `q = (t_flue - t_air) (A1 / CO2 + B)`, `a1` in % per K
/// times % of carbon dioxide.
#[must_use]
#[inline(always)]
pub fn flue_loss_from_carbon_dioxide(a1: f64, b: f64, carbon_dioxide_dry: f64, temperature_rise: f64) -> f64 {
    0.01 * temperature_rise * (a1 / (100.0 * carbon_dioxide_dry) + b)
}

/// Constant A1 of the carbon dioxide form that goes with A2: `A1 = A2 CO2max / 21`.
#[must_use]
pub fn carbon_dioxide_constant(a2: f64, carbon_dioxide_maximum: f64) -> f64 {
    a2 * carbon_dioxide_maximum / SIEGERT_AIR_OXYGEN
}

/// Excess air ratio by the short form `20.95 / (20.95 - O2)`.
///
/// It reads 1 to 8 % high for hydrocarbons, because dry flue gas is less than the air that made it.
/// `air_oxygen` is the caller's convention for the oxygen of air (0.209, 0.2095 or 0.21).
#[must_use]
#[inline(always)]
pub fn excess_air_ratio_short(oxygen_dry: f64, air_oxygen: f64) -> f64 {
    air_oxygen / (air_oxygen - oxygen_dry)
}

/// Carbon dioxide in dry flue gas by the short form `CO2max (1 - O2 / O2air)`, mol/mol.
#[must_use]
#[inline(always)]
pub fn carbon_dioxide_short(oxygen_dry: f64, air_oxygen: f64, carbon_dioxide_maximum: f64) -> f64 {
    carbon_dioxide_maximum * (1.0 - oxygen_dry / air_oxygen)
}
