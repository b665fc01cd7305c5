//! What the results of one reading are worth, to first order.

use flamewright::uncertainty::{self, coverage_factor_like_two};
use pyo3::prelude::*;

/// Propagated uncertainties, in field order and SI units; each figure is worked out when asked for.
#[pyclass(frozen, module = "flamewright._flamewright")]
pub struct FirstOrder {
    pub(crate) result: uncertainty::FirstOrder,
    /// Degrees of freedom of the inputs.
    pub(crate) freedom: Vec<f64>,
}

impl FirstOrder {
    fn factor(&self, j: usize) -> f64 {
        coverage_factor_like_two(self.result.degrees_of_freedom(j, &self.freedom))
    }
}

#[pymethods]
impl FirstOrder {
    /// The results at the values given.
    #[getter]
    fn outputs(&self) -> Vec<f64> {
        self.result.outputs().to_vec()
    }

    /// Standard uncertainty of each result.
    #[getter]
    fn standard(&self) -> Vec<f64> {
        (0..self.result.outputs().len()).map(|j| self.result.standard(j)).collect()
    }

    /// The factor of each result that covers about 95 %, from the inputs' degrees of freedom.
    #[getter]
    fn coverage_factor(&self) -> Vec<f64> {
        (0..self.result.outputs().len()).map(|j| self.factor(j)).collect()
    }

    /// Result `j`, its standard uncertainty and its coverage factor.
    fn of(&self, j: usize) -> (f64, f64, f64) {
        (self.result.outputs().get(j).copied().unwrap_or(f64::NAN), self.result.standard(j), self.factor(j))
    }

    /// The inputs that have an uncertainty.
    #[getter]
    fn varied(&self) -> Vec<usize> {
        self.result.varied().to_vec()
    }

    /// Share of each input in the variance of result `j`.
    fn budget(&self, j: usize) -> Vec<f64> {
        self.result.budget(j)
    }

    /// Correlation coefficient of results `j` and `l`.
    fn correlation(&self, j: usize, l: usize) -> f64 {
        self.result.covariance().correlation(j, l)
    }
}
