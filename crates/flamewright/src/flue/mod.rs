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
pub(crate) const CAUTIONS: &[&str] = &[
    "Readings inside a limit do not make an appliance safe: flue flow, spillage and ventilation are to be checked for themselves.",
    "At a sign of carbon monoxide in the room, leave and air it first; compute afterwards.",
    "Results are as good as the instrument: its calibration and the place of the sample belong beside them.",
];

#[cfg(test)]
mod tests;
