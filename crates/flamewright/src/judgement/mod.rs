//! Judging a result against limits that the caller supplies, with its uncertainty.
//!
//! No limit is built in: a [`Policy`] is data, each limit with its citation and date. Decisions
//! follow JCGM 106:2012: a result near a limit is undecided, and says so.

mod conformity;
mod policy;

pub use conformity::{Decision, Direction, Verdict, conformity, guard_band};
pub use policy::{Limit, Policy};
