//! The heating system around the boiler: content, heat stored, emitters, flow, pressure drop,
//! pump, balance, expansion vessel, dosing.
//!
//! One file a calculation or a pair of them; the resistance of fittings, which several share,
//! stands in [`fitting`].

mod balance;
mod content;
mod dosing;
mod duty_point;
mod emitter;
mod expansion;
pub mod fitting;
mod fitting_loss;
mod flow;
mod head;
mod heat_store;
mod pressure_drop;

pub use balance::{Circuit, CircuitBalance, CircuitBalanceInput, CircuitBalanceResult, Section, ValveKv, ValveKvInput, ValveKvResult};
pub use content::{PipeRun, SystemContent, SystemContentInput, SystemContentResult};
pub use dosing::{
    AntifreezeDose, AntifreezeDoseInput, AntifreezeDoseResult, InhibitorDose, InhibitorDoseInput, InhibitorDoseResult, PartialDrain,
    PartialDrainInput, PartialDrainResult,
};
pub use duty_point::{DutyPoint, DutyPointInput, DutyPointResult};
pub use emitter::{
    EmitterAtFlow, EmitterAtFlowInput, EmitterAtFlowResult, EmitterOutput, EmitterOutputInput, EmitterOutputResult, MeanExcess,
};
pub use expansion::{ExpansionVessel, ExpansionVesselInput, ExpansionVesselResult, VesselCheck, VesselCheckInput, VesselCheckResult};
pub use fitting_loss::{FittingLoss, FittingLossInput, FittingLossResult};
pub use flow::{FlowFromHeat, FlowFromHeatInput, FlowFromHeatResult, HeatFromFlow, HeatFromFlowInput, HeatFromFlowResult};
pub use head::{StaticHead, StaticHeadInput, StaticHeadResult};
pub use heat_store::{HeatStore, HeatStoreInput, HeatStoreResult};
pub(crate) use pressure_drop::fittings_from_node;
pub use pressure_drop::{WaterPressureDrop, WaterPressureDropInput, WaterPressureDropResult};

/// Standard acceleration of gravity in m/s², exact by definition (CGPM 1901).
const GRAVITY: f64 = 9.806_65;

/// Caution wherever a pressurised hot system is opened or filled.
const PRESSURE_CAUTION: &str =
    "Hot water under pressure scalds and flashes to steam when let out: cool and relieve the system before it is opened.";
