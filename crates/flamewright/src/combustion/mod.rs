//! Combustion: air needed, flue gas made, its dew point, its heat, the flame's temperature.
//!
//! All amounts are moles per unit of fuel: per mole of a gas, per kilogram of a liquid or solid.
//! For ideal gases at equal temperature and pressure that is also cubic metre per cubic metre.

pub mod air;
mod air_supply;
mod building_blocks;
mod combustion_products;
pub(crate) mod context;
pub mod equilibrium;
pub mod flame;
mod flame_temperature;
pub mod products;
pub mod species;
pub mod water_vapour;

pub use air_supply::{BurnerAir, BurnerAirResult, CombustionAirFlow};
pub use building_blocks::{GasEnthalpies, GasEnthalpy, GasTemperature, SaturatedWater, SaturatedWaterResult, SaturationTemperature};
pub use combustion_products::{CombustionAirState, CombustionProducts, CombustionProductsResult};
pub use flame_temperature::{FlameResult, FlameState, FlameTemperature};

#[cfg(test)]
pub(crate) mod reference_fuels;
#[cfg(test)]
mod tests;
