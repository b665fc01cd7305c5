//! Heat lost by a pipe run, and what becomes of the water in it.

pub(crate) mod decay;
pub(crate) mod math;
pub(crate) mod run;
pub mod surface;

mod cool_down;
mod critical_radius;
mod heat_loss;
mod temperature_drop;

pub use cool_down::{PipeCoolDown, PipeCoolDownInput, PipeCoolDownResult};
pub use critical_radius::{CriticalRadius, CriticalRadiusInput, CriticalRadiusResult};
pub use heat_loss::{PipeHeatLoss, PipeHeatLossInput, PipeHeatLossResult};
pub use run::{InsulationLayer, Run};
pub use temperature_drop::{PipeTemperatureDrop, PipeTemperatureDropInput, PipeTemperatureDropResult};
