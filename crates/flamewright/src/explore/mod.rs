//! Asking a calculation the other way round: which input gives a wanted output, and how an output
//! varies over one or two inputs. Inverse questions of the trade fall out of it: the insulation for
//! a wanted loss, the pipe for an allowed drop, the oxygen for a wanted efficiency.

mod goal_seek;
mod sweep;

pub use goal_seek::{Goal, goal_seek};
pub use sweep::{Axis, Sweep, sweep};
