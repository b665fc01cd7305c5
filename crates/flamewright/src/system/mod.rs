//! The heating system around the boiler: content, heat stored, emitters, flow, pressure drop,
//! pump, balance, expansion vessel, dosing.
//!
//! One file a calculation; what two of them share stands beside them ([`fitting`], [`emitter`]).

pub mod emitter;
pub mod fitting;
mod flow;
mod head;
mod pressure_drop;

pub use emitter::{EmitterAtFlow, EmitterAtFlowInput, EmitterAtFlowResult, EmitterOutput, EmitterOutputInput, EmitterOutputResult};
pub use flow::{FlowFromHeat, FlowFromHeatInput, FlowFromHeatResult, HeatFromFlow, HeatFromFlowInput, HeatFromFlowResult};
pub use head::{StaticHead, StaticHeadInput, StaticHeadResult};
pub use pressure_drop::{WaterPressureDrop, WaterPressureDropInput, WaterPressureDropResult};

/// Standard acceleration of gravity in m/s², exact by definition (CGPM 1901).
pub(crate) const GRAVITY: f64 = 9.806_65;
