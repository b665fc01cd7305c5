//! The hot block: cool-down, pump overrun, overshoot, warm-up, cycling, and the proof of a control.

// A NaN must fail a comparison here, and one number of a node indexes several arrays.
#![allow(clippy::neg_cmp_op_on_partial_ord, clippy::needless_range_loop)]

pub(crate) mod lump;
pub(crate) mod network;
pub(crate) mod plant;
pub(crate) mod run;
pub(crate) mod solver;
pub(crate) mod thermostat;

mod block_cool_down;
mod burner_cycling;
mod circuit_cycling;
mod cool_down;
mod fit;
mod overrun;
mod overshoot;
mod touch;
mod warm_up;

pub use block_cool_down::{BlockCoolDown, BlockCoolDownResult, BlockCoolDownState};
pub use burner_cycling::{BurnerCycling, BurnerCyclingResult, BurnerCyclingState};
pub use circuit_cycling::{CircuitCycling, CircuitCyclingResult, CircuitCyclingState};
pub use cool_down::{CoolDown, CoolDownResult, CoolDownState, NamedThreshold, Threshold, Watched};
pub use fit::{CoolDownFit, CoolDownFitResult, CoolDownFitState};
pub use overrun::{OverrunResult, OverrunState, PumpOverrun};
pub use overshoot::{Overshoot, OvershootResult, OvershootState};
pub use plant::{Demand, FiredPlant, FurtherCircuit, Layout, NamedCircuit, Opening, Plant, Turndown};
pub use touch::{TouchWait, TouchWaitResult, TouchWaitState};
pub use warm_up::{WarmUp, WarmUpResult, WarmUpState};
