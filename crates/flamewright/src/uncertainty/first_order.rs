//! First-order propagation, JCGM 100:2008 clause 5.

use super::{Covariance, Model};
use alloc::vec::Vec;

/// Outputs with their covariance, and how each input contributes.
#[derive(Clone, Debug, PartialEq)]
pub struct FirstOrder {
    /// The outputs at the input values, SI.
    pub outputs: Vec<f64>,
    /// Sensitivity of output `j` to input `i` at place `j * inputs + i`, SI.
    pub sensitivities: Vec<f64>,
    /// Covariance of the outputs.
    pub covariance: Covariance,
    inputs: Covariance,
}

impl FirstOrder {
    /// Standard uncertainty of output `j`.
    #[must_use]
    pub fn standard(&self, j: usize) -> f64 {
        self.covariance.standard(j)
    }
    /// Sensitivity of output `j` to input `i`.
    #[must_use]
    pub fn sensitivity(&self, j: usize, i: usize) -> f64 {
        self.sensitivities.get(j * self.inputs.size() + i).copied().unwrap_or(f64::NAN)
    }
    /// Share of each input in the variance of output `j`; the shares sum to one.
    ///
    /// A covariance between two inputs is counted half to each, so a share can be negative where
    /// a correlation reduces the uncertainty. All zero where the output has no uncertainty.
    #[must_use]
    pub fn budget(&self, j: usize) -> Vec<f64> {
        let n = self.inputs.size();
        let variance = self.covariance.get(j, j);
        let share = |i: usize| {
            let sum: f64 = (0..n).map(|k| self.sensitivity(j, k) * self.inputs.get(i, k)).sum();
            if variance > 0.0 { self.sensitivity(j, i) * sum / variance } else { 0.0 }
        };
        (0..n).map(share).collect()
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
/// Inputs without uncertainty are not varied; their sensitivities are zero.
#[must_use]
pub fn first_order<M: Model + ?Sized>(model: &M, at: &[f64], inputs: &Covariance) -> FirstOrder {
    let (n, m) = (model.inputs(), model.outputs());
    let mut outputs = alloc::vec![f64::NAN; m];
    model.compute(at, &mut outputs);
    let mut sensitivities = alloc::vec![0.0; n * m];
    let mut point = at.to_vec();
    let (mut above, mut below) = (alloc::vec![0.0; m], alloc::vec![0.0; m]);
    for i in 0..n.min(at.len()) {
        let u = inputs.standard(i);
        if u <= 0.0 {
            continue;
        }
        let (low, high) = model.range(i);
        let step = (0.01 * u).max(6e-6 * at[i].abs());
        // A step is what the rounded points really differ by.
        let (up, down) = (at[i] + step, at[i] - step);
        let mut difference = |first: f64, second: f64, above: &mut [f64], below: &mut [f64]| {
            point[i] = first;
            model.compute(&point, above);
            point[i] = second;
            model.compute(&point, below);
            point[i] = at[i];
        };
        if down >= low && up <= high {
            difference(up, down, &mut above, &mut below);
            for j in 0..m {
                sensitivities[j * n + i] = (above[j] - below[j]) / (up - down);
            }
        } else {
            let direction = if up <= high { step } else { -step };
            difference(at[i] + direction, at[i] + 2.0 * direction, &mut above, &mut below);
            for j in 0..m {
                sensitivities[j * n + i] = (4.0 * above[j] - 3.0 * outputs[j] - below[j]) / (2.0 * direction);
            }
        }
    }
    let mut covariance = Covariance::zero(m);
    let mut half = alloc::vec![0.0; n];
    for j in 0..m {
        for (i, slot) in half.iter_mut().enumerate() {
            *slot = (0..n).map(|k| sensitivities[j * n + k] * inputs.get(k, i)).sum();
        }
        for l in j..m {
            let value: f64 = (0..n).map(|i| half[i] * sensitivities[l * n + i]).sum();
            covariance.set(j, l, value);
        }
    }
    FirstOrder { outputs, sensitivities, covariance, inputs: inputs.clone() }
}
