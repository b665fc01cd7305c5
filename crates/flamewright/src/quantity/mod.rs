//! Quantities and the units they are given in.

pub mod unit;

pub use unit::Unit;
