//! What flamewright is tried with: settings for every calculation, readings drawn from its ranges
//! or from anything at all, and the targets of the fuzzing.
//!
//! Property tests, the comparison of the faces and the fuzzing share what is here, so that they all
//! speak of the same cases.
#![forbid(unsafe_code)]

mod cases;
mod draws;
pub mod fuzz;
mod settings;

pub use cases::cases;
pub use draws::{Draws, usual_range};
pub use settings::{needed_settings, settings};
