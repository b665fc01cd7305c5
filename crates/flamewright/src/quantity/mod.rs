//! Quantities: what a value measures, on which basis, in which unit, and how people write it.

mod basis;
mod text;
pub(crate) mod unit;
mod value;

pub use basis::*;
pub(crate) use text::read;
pub use text::{parse, quantity_text};
pub use unit::{Dimension, Unit, units};
pub use value::{Kind, LinearTransmittance, Value, types};
