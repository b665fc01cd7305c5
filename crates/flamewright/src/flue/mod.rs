//! Flue gas analysis: what a reading in the flue says of the combustion and of the heat lost.

mod analysis;
mod carbon_monoxide;
mod concentration;
pub mod emission;
mod emissions;
pub mod kernel;
pub mod siegert;
mod siegert_loss;

pub use analysis::{FlueAnalysis, FlueReading, FlueResult};
pub use carbon_monoxide::{CarbonMonoxide, CarbonMonoxideReading, CarbonMonoxideResult};
pub use concentration::{
    MassConcentration, MassConcentrationReading, MassConcentrationResult, VolumeFraction, VolumeFractionReading, VolumeFractionResult,
};
pub use emissions::{EmissionReading, EmissionResult, FlueEmissions};
pub use siegert_loss::{SiegertConstantsOf, SiegertField, SiegertFit, SiegertFlueLoss, SiegertReading, SiegertResult};

/// Cautions that go with every result about flue gas.
pub(crate) const CAUTIONS: &[&str] = &[crate::caution::OBSERVE, crate::caution::CARBON_MONOXIDE, crate::caution::CALIBRATION];

#[cfg(test)]
mod tests;
