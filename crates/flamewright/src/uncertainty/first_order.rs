//! First-order propagation, JCGM 100:2008 clause 5.

use super::{Covariance, Model};
use alloc::vec::Vec;

/// Outputs with their covariance, and how each input contributes.
///
/// What is kept are the sensitivities and the inputs' covariance; the outputs' covariance is formed
/// from them when it is asked for.
#[derive(Clone, Debug, PartialEq)]
pub struct FirstOrder {
    /// The outputs at the input values, SI.
    pub outputs: Vec<f64>,
    /// Sensitivities of the outputs to one varied input after the other, SI.
    sensitivities: Vec<f64>,
    /// The inputs that have an uncertainty.
    varied: Vec<usize>,
    inputs: Covariance,
}

impl FirstOrder {
    /// Sensitivity of output `j` to the varied input number `k`.
    fn slope(&self, j: usize, k: usize) -> f64 {
        self.sensitivities.get(k * self.outputs.len() + j).copied().unwrap_or(f64::NAN)
    }
    /// Sensitivity of output `j` to input `i`; zero for an input without uncertainty.
    #[must_use]
    pub fn sensitivity(&self, j: usize, i: usize) -> f64 {
        self.varied.iter().position(|&v| v == i).map_or(0.0, |k| self.slope(j, k))
    }
    /// Covariance of outputs `j` and `l`.
    #[must_use]
    pub fn covariance_of(&self, j: usize, l: usize) -> f64 {
        let rows = self.varied.iter().enumerate().map(|(k, &i)| {
            let sum: f64 = self.varied.iter().enumerate().map(|(p, &q)| self.slope(l, p) * self.inputs.get(i, q)).sum();
            self.slope(j, k) * sum
        });
        rows.sum()
    }
    /// Standard uncertainty of output `j`.
    #[must_use]
    pub fn standard(&self, j: usize) -> f64 {
        crate::math::sqrt(self.covariance_of(j, j))
    }
    /// Covariance of all outputs.
    #[must_use]
    pub fn covariance(&self) -> Covariance {
        let m = self.outputs.len();
        let mut covariance = Covariance::zero(m);
        for j in 0..m {
            for l in j..m {
                covariance.set(j, l, self.covariance_of(j, l));
            }
        }
        covariance
    }
    /// Share of each input in the variance of output `j`; the shares sum to one.
    ///
    /// A covariance between two inputs is counted half to each, so a share can be negative where
    /// a correlation reduces the uncertainty. All zero where the output has no uncertainty.
    #[must_use]
    pub fn budget(&self, j: usize) -> Vec<f64> {
        let variance = self.covariance_of(j, j);
        let mut shares = alloc::vec![0.0; self.inputs.size()];
        if variance > 0.0 {
            for (k, &i) in self.varied.iter().enumerate() {
                let sum: f64 = self.varied.iter().enumerate().map(|(p, &q)| self.slope(j, p) * self.inputs.get(i, q)).sum();
                shares[i] = self.slope(j, k) * sum / variance;
            }
        }
        shares
    }
    /// Standard uncertainty that input `i` alone gives output `j`.
    #[must_use]
    pub fn contribution(&self, j: usize, i: usize) -> f64 {
        (self.sensitivity(j, i) * self.inputs.standard(i)).abs()
    }
}

/// Propagates `inputs` (the covariance of the values at `at`) through `model`.
///
/// Sensitivities are central differences over a step of a hundredth of the standard uncertainty,
/// but at least 6e-6 of the value (the cube root of the rounding unit, where truncation and
/// rounding balance near 1e-10). JCGM 100:2008 5.1.3 note 2 allows the numerical form with a step
/// of a whole standard uncertainty, so the error here lies far below what first order itself
/// leaves out. At the edge of an input's range the difference is one-sided of second order.
/// Inputs without uncertainty are not varied.
#[must_use]
pub fn first_order<M: Model + ?Sized>(model: &M, at: &[f64], inputs: &Covariance) -> FirstOrder {
    let (n, m) = (model.inputs().min(at.len()), model.outputs());
    let varied: Vec<usize> = (0..n).filter(|&i| inputs.get(i, i) > 0.0).collect();
    let mut outputs = alloc::vec![f64::NAN; m];
    model.compute(at, &mut outputs);
    let mut sensitivities = alloc::vec![0.0; varied.len() * m];
    let mut workspace = alloc::vec![0.0; at.len() + m];
    let (point, below) = workspace.split_at_mut(at.len());
    point.copy_from_slice(at);
    for (&i, slopes) in varied.iter().zip(sensitivities.chunks_exact_mut(m.max(1))) {
        let (low, high) = model.range(i);
        let step = (0.01 * inputs.standard(i)).max(6e-6 * at[i].abs());
        let (up, down) = (at[i] + step, at[i] - step);
        if down >= low && up <= high {
            point[i] = up;
            model.compute(point, slopes);
            point[i] = down;
            model.compute(point, below);
            // The step is what the rounded points really differ by.
            let per_step = 1.0 / (up - down);
            for (above, below) in slopes.iter_mut().zip(below.iter()) {
                *above = (*above - below) * per_step;
            }
        } else {
            let direction = if up <= high { step } else { -step };
            point[i] = at[i] + direction;
            model.compute(point, slopes);
            point[i] = at[i] + 2.0 * direction;
            model.compute(point, below);
            for ((near, far), here) in slopes.iter_mut().zip(below.iter()).zip(&outputs) {
                *near = (4.0 * *near - 3.0 * here - far) / (2.0 * direction);
            }
        }
        point[i] = at[i];
    }
    FirstOrder { outputs, sensitivities, varied, inputs: inputs.clone() }
}
