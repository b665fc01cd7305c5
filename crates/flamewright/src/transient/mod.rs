//! The hot block: cool-down, pump overrun, overshoot, warm-up, cycling, and the proof of a control.

pub(crate) mod lump;
pub(crate) mod network;
pub(crate) mod plant;
pub(crate) mod run;
pub(crate) mod solver;
pub(crate) mod thermostat;

mod block_cool_down;
mod burner_cycling;
mod cool_down;

pub use block_cool_down::{BlockCoolDown, BlockCoolDownResult, BlockCoolDownState};
pub use burner_cycling::{BurnerCycling, BurnerCyclingResult, BurnerCyclingState};
pub use cool_down::{CoolDown, CoolDownResult, CoolDownState, NamedThreshold, Threshold, Watched};
pub use plant::{FurtherCircuit, Layout, NamedCircuit, Opening, Plant};
