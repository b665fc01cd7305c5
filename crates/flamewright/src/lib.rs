//! The sums of a gas heating engineer's visit: unit-safe, sourced, with uncertainty.
#![forbid(unsafe_code)]
#![no_std]
extern crate alloc;
#[cfg(test)]
extern crate std;

pub(crate) mod math;
pub mod convection;
pub mod fuel;
pub mod water;
