//! Films, radiation and friction: how heat leaves a surface and what a fluid pays to pass a pipe.
//!
//! The functions take and return plain `f64` in SI units, the unit standing in each name or in its
//! line of documentation. Non-finite or impossible input gives NaN, never a panic. Every
//! correlation is published with the [`Limit`]s within which it was drawn up.

pub mod forced;
pub mod friction;
mod friction_factor;
pub mod natural;
pub mod outside;
pub mod radiation;

pub use friction_factor::{FrictionFactor, FrictionFactorInput, FrictionFactorResult};

/// A bound within which a correlation was drawn up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limit {
    /// The number that is bounded, by its usual symbol: `"Re"`, `"Ra"`, `"Pr"`.
    pub of: &'static str,
    /// Least value for which the correlation is published.
    pub minimum: f64,
    /// Greatest value for which the correlation is published.
    pub maximum: f64,
}

impl Limit {
    /// True where `value` lies within the limit; false for NaN.
    pub fn holds(&self, value: f64) -> bool {
        value >= self.minimum && value <= self.maximum
    }
}
