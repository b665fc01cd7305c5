//! What a number is worth: standard uncertainties in, standard uncertainties out.
//!
//! Everything here works on any [`Model`]: a calculation with its settings fixed, or a [`Chain`]
//! of them. First-order propagation follows JCGM 100:2008 (GUM), the propagation of distributions
//! JCGM 101:2008. Outputs carry their full covariance, so what comes from one reading stays
//! correlated.

mod chain;
mod first_order;
mod measured;
mod monte_carlo;
pub(crate) mod normal;
mod statement;

pub use chain::{Binding, Chain};
pub use first_order::{FirstOrder, first_order};
pub use measured::{
    Component, Distribution, Measured, coverage_factor, coverage_factor_like_two, effective_degrees_of_freedom, type_a_covariance,
};
pub use monte_carlo::{Draws, Generator, monte_carlo};
pub use statement::STATEMENTS;

use crate::catalogue::Prepared;
use crate::error::Error;
use alloc::vec::Vec;

/// A function of several numbers, in SI units.
pub trait Model {
    /// How many numbers go in.
    fn inputs(&self) -> usize;
    /// How many come out.
    fn outputs(&self) -> usize;
    /// The function itself, unchecked: not-a-number where it has no value.
    fn compute(&self, input: &[f64], output: &mut [f64]);
    /// The range in which input `i` makes sense; derivatives stay inside it.
    fn range(&self, i: usize) -> (f64, f64);
}

impl Model for dyn Prepared + '_ {
    fn inputs(&self) -> usize {
        self.entry().inputs().len()
    }
    fn outputs(&self) -> usize {
        self.entry().outputs().len()
    }
    fn compute(&self, input: &[f64], output: &mut [f64]) {
        Prepared::compute(self, input, output);
    }
    fn range(&self, i: usize) -> (f64, f64) {
        self.entry().inputs().get(i).map_or((f64::NEG_INFINITY, f64::INFINITY), |f| (f.minimum, f.maximum))
    }
}

/// A symmetric matrix of covariances, SI units squared.
#[derive(Clone, Debug, PartialEq)]
pub struct Covariance {
    size: usize,
    values: Vec<f64>,
}

impl Covariance {
    /// Independent inputs with these standard uncertainties.
    #[must_use]
    pub fn independent(standard: &[f64]) -> Self {
        let mut matrix = Self::zero(standard.len());
        for (i, u) in standard.iter().enumerate() {
            matrix.set(i, i, u * u);
        }
        matrix
    }
    /// No uncertainty at all.
    #[must_use]
    pub fn zero(size: usize) -> Self {
        Self { size, values: alloc::vec![0.0; size * size] }
    }
    /// How many quantities it covers.
    #[must_use]
    pub fn size(&self) -> usize {
        self.size
    }
    /// Covariance of quantities `i` and `j`; zero outside the matrix.
    #[must_use]
    pub fn get(&self, i: usize, j: usize) -> f64 {
        if i < self.size && j < self.size { self.values[i * self.size + j] } else { 0.0 }
    }
    fn set(&mut self, i: usize, j: usize, value: f64) {
        self.values[i * self.size + j] = value;
        self.values[j * self.size + i] = value;
    }
    /// States that `i` and `j` are correlated, as by a shared instrument.
    ///
    /// # Errors
    /// If `r` is not from -1 to 1, or a place is outside the matrix.
    pub fn correlate(&mut self, i: usize, j: usize, r: f64) -> Result<(), Error> {
        if i >= self.size || j >= self.size || i == j {
            return Err(Error::bad_setting("correlation", "", "it is between two different quantities of the list"));
        }
        if !(-1.0..=1.0).contains(&r) {
            return Err(Error::bad_setting("correlation", &alloc::format!("{r}"), "a correlation coefficient is from -1 to 1"));
        }
        self.set(i, j, r * self.standard(i) * self.standard(j));
        Ok(())
    }
    /// Standard uncertainty of quantity `i`.
    #[must_use]
    pub fn standard(&self, i: usize) -> f64 {
        crate::math::sqrt(self.get(i, i).max(0.0))
    }
    /// Correlation coefficient of `i` and `j`; zero where one of them has no uncertainty.
    #[must_use]
    pub fn correlation(&self, i: usize, j: usize) -> f64 {
        let product = self.standard(i) * self.standard(j);
        if product > 0.0 { (self.get(i, j) / product).clamp(-1.0, 1.0) } else { 0.0 }
    }
    /// A lower triangle whose product with its transpose is this matrix.
    ///
    /// Full correlation makes the matrix singular, which is allowed: such a column becomes zero.
    ///
    /// # Errors
    /// If the correlations contradict each other (the matrix has a negative direction).
    pub fn factor(&self) -> Result<Vec<f64>, Error> {
        let n = self.size;
        let mut lower = alloc::vec![0.0; n * n];
        for j in 0..n {
            let used: f64 = (0..j).map(|k| lower[j * n + k] * lower[j * n + k]).sum();
            let rest = self.get(j, j) - used;
            let tolerance = 1e-12 * self.get(j, j);
            if rest < -tolerance || !rest.is_finite() {
                return Err(Error::bad_setting("correlation", "", "the correlations contradict each other"));
            }
            let pivot = if rest > tolerance { crate::math::sqrt(rest) } else { 0.0 };
            lower[j * n + j] = pivot;
            for i in j + 1..n {
                let shared: f64 = (0..j).map(|k| lower[i * n + k] * lower[j * n + k]).sum();
                let left = self.get(i, j) - shared;
                if pivot > 0.0 {
                    lower[i * n + j] = left / pivot;
                } else if crate::math::sqrt(self.get(i, i)) * crate::math::sqrt(self.get(j, j)) * 1e-6 < left.abs() {
                    return Err(Error::bad_setting("correlation", "", "the correlations contradict each other"));
                }
            }
        }
        Ok(lower)
    }
}
