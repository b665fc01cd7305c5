//! The sums of a gas heating engineer's visit: unit-safe, sourced, with uncertainty.
#![forbid(unsafe_code)]
#![no_std]
extern crate alloc;
extern crate self as flamewright;
#[cfg(any(test, feature = "std"))]
extern crate std;

pub use error::{Error, ErrorKind};
pub use uom;

pub mod calculation;
pub mod catalogue;
pub(crate) mod math;
pub mod node;
pub mod quantity;
pub mod record;
pub mod working;

mod error;
mod registered;

pub mod air;
pub mod convection;
pub mod fuel;
pub mod material;
pub mod supply;
pub mod water;
