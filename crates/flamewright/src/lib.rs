//! The sums of a gas heating engineer's visit: unit-safe, sourced, with uncertainty.
#![forbid(unsafe_code)]
#![no_std]
extern crate alloc;
// The macros name this crate by its own name, inside it as well as outside.
extern crate self as flamewright;
#[cfg(test)]
extern crate std;

pub(crate) mod math;
pub mod air;
pub mod convection;
pub mod fuel;
pub mod material;
pub mod water;

pub mod quantity;
pub mod working;
