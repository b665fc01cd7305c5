//! Heat lost by a pipe run, and what becomes of the water in it.

pub(crate) mod math;
pub(crate) mod run;
pub mod surface;

mod heat_loss;

pub use heat_loss::{PipeHeatLoss, PipeHeatLossInput, PipeHeatLossResult};
pub use run::{InsulationLayer, Run};
