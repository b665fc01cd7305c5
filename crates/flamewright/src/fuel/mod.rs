//! Fuel gases and other heating fuels: what they are made of and the heat in them.
pub mod fuel;

pub use fuel::{Elements, Fuel, FuelState};
