//! The sums of a gas heating engineer's visit: unit-safe, sourced, with uncertainty.
#![forbid(unsafe_code)]
#![no_std]
extern crate alloc;
extern crate self as flamewright;
#[cfg(any(test, feature = "std"))]
extern crate std;

pub use error::{Error, ErrorKind};
pub use uom;

/// The version of this library, which goes with every result.
pub const VERSION: &str = env!("CARGO_PKG_VERSION");

pub mod calculation;
pub mod catalogue;
pub mod describe;
pub mod explore;
pub mod judgement;
pub(crate) mod math;
pub mod node;
pub mod quantity;
pub mod record;
pub(crate) mod root;
#[cfg(feature = "text")]
pub mod text;
pub mod uncertainty;
pub mod working;

/// The traits that calls need in scope: `use flamewright::prelude::*;`.
pub mod prelude {
    pub use crate::calculation::{Calculation, Context, Settings};
    pub use crate::quantity::Value;
    pub use crate::record::Record;
}

#[cfg(feature = "text")]
mod ask;
mod caution;
mod error;
mod registered;

pub mod air;
pub mod combustion;
pub mod convection;
pub mod flue;
pub mod fuel;
pub mod instrument;
pub mod material;
pub mod meter;
pub mod pipe;
pub mod supply;
pub mod system;
pub mod transient;
pub mod visit;
pub mod water;

/// Every calculation with its fields, an example, its sum as formulas, sources and cautions.
#[cfg(doc)]
#[doc = include_str!("../CALCULATIONS.md")]
pub mod reference {}

/// The examples of the README are compiled and run with the documentation's.
#[cfg(all(doctest, feature = "text"))]
#[doc = include_str!("../../../README.md")]
pub struct Readme;
