//! Liquid water and antifreeze mixtures as a heating system meets them.
//!
//! Everything here works on SI numbers and returns NaN for a state it has no formula for; the
//! calculations built on it refuse such a state by name before it is computed.
//!
//! * [`liquid`]: all properties of liquid water at a pressure and a temperature in one pass.
//! * [`saturation_pressure`], [`saturation_temperature`]: where it boils.
//! * [`hot_liquid`]: the same to 350 °C; [`region1`]: its thermodynamic part alone.
//! * [`heating_water`]: 0 to 110 °C, closer to IAPWS-95, for small differences of density or enthalpy.
//! * [`Fluid`]: either of water and a glycol mixture.
//! * [`Antifreeze`]: water with propylene or ethylene glycol.

mod antifreeze;
mod fluid;
mod heating_water;
mod liquid;
mod mixture;
mod region1;
mod saturation;
pub(crate) mod transport;

pub(crate) use antifreeze::ANTIFREEZE_SETTING;
pub use antifreeze::{Antifreeze, HIGHEST_MASS_FRACTION, HIGHEST_MIXTURE_TEMPERATURE, Mixture};
pub(crate) use fluid::FLUID_SETTING;
pub use fluid::{Fluid, FluidState};
pub use heating_water::{HIGHEST_HEATING_TEMPERATURE, heating_water};
pub use liquid::{Liquid, hot_liquid, liquid};
pub use mixture::{
    AntifreezeMixture, AntifreezeMixtureInput, AntifreezeMixtureResult, BoilingPoint, BoilingPointInput, BoilingPointResult,
};
pub use region1::{Region1, region1};
pub use saturation::{saturation_pressure, saturation_temperature};

#[cfg(test)]
pub(crate) mod tests;

mod calculation;
pub use calculation::{LiquidWater, WaterProperties, WaterState};
