//! The hot block: cool-down, pump overrun, overshoot, warm-up, cycling, and the proof of a control.

pub(crate) mod lump;
pub(crate) mod network;
pub(crate) mod run;
pub(crate) mod solver;
pub(crate) mod thermostat;
