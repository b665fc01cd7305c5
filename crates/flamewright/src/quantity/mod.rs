//! Quantities: what a value measures, on which basis, in which unit, and how people write it.

mod basis;
mod reference;
mod text;
pub(crate) mod unit;
mod value;

pub use basis::*;
pub use reference::ReferenceConditions;
pub use text::{parse, quantity_text};
pub(crate) use text::{read, read_spread, scale};
pub use unit::{Dimension, ReadUnit, Unit, read_unit, units};
pub use value::{Kind, LinearTransmittance, Value, types};
