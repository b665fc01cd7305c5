//! Combustion: air needed, flue gas made, its dew point, its heat, the flame's temperature.
//!
//! All amounts are moles per unit of fuel: per mole of a gas, per kilogram of a liquid or solid.
//! For ideal gases at equal temperature and pressure that is also cubic metre per cubic metre.

pub mod air;
pub mod equilibrium;
pub mod flame;
pub mod products;
pub mod species;
pub mod water_vapour;

#[cfg(test)]
pub(crate) mod reference_fuels;
#[cfg(test)]
mod tests;
