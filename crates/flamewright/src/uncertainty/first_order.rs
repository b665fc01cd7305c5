//! First-order propagation, JCGM 100:2008 clause 5.

use super::{Covariance, Model};
use alloc::vec::Vec;

/// Outputs with their covariance, and how each input contributes.
///
/// What is kept are the sensitivities and the inputs' covariance; the outputs' covariance is formed
/// from them when it is asked for.
#[derive(Clone, Debug, PartialEq)]
pub struct FirstOrder {
    /// The outputs, their sensitivities to one varied input after the other, then the covariance of
    /// the varied inputs row by row, SI; in one piece, since a reading is propagated in half a
    /// microsecond and an allocation is a tenth of that.
    numbers: Vec<f64>,
    /// How many outputs there are.
    count: usize,
    /// The inputs that have an uncertainty.
    varied: Vec<usize>,
    /// How many inputs there are.
    inputs: usize,
}

impl FirstOrder {
    /// The outputs at the input values, SI.
    #[must_use]
    pub fn outputs(&self) -> &[f64] {
        &self.numbers[..self.count]
    }
    /// The inputs that have an uncertainty, in order.
    #[must_use]
    pub fn varied(&self) -> &[usize] {
        &self.varied
    }
    /// Sensitivity of output `j` to the varied input number `k`.
    fn slope(&self, j: usize, k: usize) -> f64 {
        if j < self.count { self.numbers[(k + 1) * self.count + j] } else { f64::NAN }
    }
    /// Covariance of the varied inputs number `k` and `p`.
    fn shared(&self, k: usize, p: usize) -> f64 {
        let varied = self.varied.len();
        self.numbers[(varied + 1) * self.count + k * varied + p]
    }
    /// Slope of output `j` times the covariance with the varied input number `k`, over all inputs.
    fn pull(&self, j: usize, k: usize) -> f64 {
        (0..self.varied.len()).map(|p| self.slope(j, p) * self.shared(k, p)).sum()
    }
    /// Sensitivity of output `j` to input `i`; zero for an input without uncertainty.
    #[must_use]
    pub fn sensitivity(&self, j: usize, i: usize) -> f64 {
        self.varied.iter().position(|&v| v == i).map_or(0.0, |k| self.slope(j, k))
    }
    /// Covariance of outputs `j` and `l`.
    #[must_use]
    pub fn covariance_of(&self, j: usize, l: usize) -> f64 {
        (0..self.varied.len()).map(|k| self.slope(j, k) * self.pull(l, k)).sum()
    }
    /// Standard uncertainty of output `j`.
    #[must_use]
    pub fn standard(&self, j: usize) -> f64 {
        crate::math::sqrt(self.covariance_of(j, j))
    }
    /// Covariance of all outputs.
    #[must_use]
    pub fn covariance(&self) -> Covariance {
        let m = self.count;
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
        let mut shares = alloc::vec![0.0; self.inputs];
        if variance > 0.0 {
            for (k, &i) in self.varied.iter().enumerate() {
                shares[i] = self.slope(j, k) * self.pull(j, k) / variance;
            }
        }
        shares
    }
    /// Effective degrees of freedom of output `j` from those of the inputs (Welch-Satterthwaite,
    /// JCGM 100:2008 G.4); infinite where every input's uncertainty is taken as exactly known.
    ///
    /// What correlated inputs share enters the combined variance; the formula itself holds for
    /// independent contributions.
    #[must_use]
    pub fn degrees_of_freedom(&self, j: usize, of_inputs: &[f64]) -> f64 {
        let variance = self.covariance_of(j, j);
        let part = |&i: &usize| match of_inputs.get(i) {
            Some(freedom) if freedom.is_finite() => {
                let square = self.contribution(j, i) * self.contribution(j, i);
                square * square / freedom
            }
            _ => 0.0,
        };
        let sum: f64 = self.varied.iter().map(part).sum();
        if sum > 0.0 { variance * variance / sum } else { f64::INFINITY }
    }
    /// Standard uncertainty that input `i` alone gives output `j`.
    #[must_use]
    pub fn contribution(&self, j: usize, i: usize) -> f64 {
        let alone = |k: usize| (self.slope(j, k) * crate::math::sqrt(self.shared(k, k))).abs();
        self.varied.iter().position(|&v| v == i).map_or(0.0, alone)
    }
}

/// Propagates `inputs` (the covariance of the values at `at`) through `model`.
///
/// ```
/// use flamewright::uncertainty::{Covariance, first_order};
/// use flamewright::{catalogue::calculation, node::Node};
/// // Water at 60 °C, known to 1 K: its density is known to 0.5 kg/m³.
/// let water = calculation("liquid_water")?.prepare(&Node::Table(vec![]))?;
/// let worth = first_order(&*water, &[333.15, 2e5], &Covariance::independent(&[1.0, 0.0]));
/// assert!((worth.standard(0) - 0.52).abs() < 0.02);
/// assert!((worth.budget(0)[0] - 1.0).abs() < 1e-9); // all of it from the temperature
/// # Ok::<(), flamewright::Error>(())
/// ```
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
    let (slopes_end, shared_end) = ((varied.len() + 1) * m, (varied.len() + 1) * m + varied.len() * varied.len());
    let mut numbers = alloc::vec![0.0; shared_end + at.len() + m];
    let (kept, workspace) = numbers.split_at_mut(shared_end);
    let (slopes, shared) = kept.split_at_mut(slopes_end);
    let (outputs, slopes) = slopes.split_at_mut(m);
    let (point, below) = workspace.split_at_mut(at.len());
    model.compute(at, outputs);
    for (row, &i) in shared.chunks_exact_mut(varied.len().max(1)).zip(&varied) {
        for (slot, &q) in row.iter_mut().zip(&varied) {
            *slot = inputs.get(i, q);
        }
    }
    point.copy_from_slice(at);
    for (&i, slopes) in varied.iter().zip(slopes.chunks_exact_mut(m.max(1))) {
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
            for ((near, far), here) in slopes.iter_mut().zip(below.iter()).zip(outputs.iter()) {
                *near = (4.0 * *near - 3.0 * here - far) / (2.0 * direction);
            }
        }
        point[i] = at[i];
    }
    numbers.truncate(shared_end);
    FirstOrder { numbers, count: m, varied, inputs: model.inputs() }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// y = x² + 3x for x not below zero, and z = 2x.
    struct Edge;

    impl Model for Edge {
        fn inputs(&self) -> usize {
            1
        }
        fn outputs(&self) -> usize {
            2
        }
        fn compute(&self, input: &[f64], output: &mut [f64]) {
            let x = if input[0] < 0.0 { f64::NAN } else { input[0] };
            output.copy_from_slice(&[x * x + 3.0 * x, 2.0 * x]);
        }
        fn range(&self, _: usize) -> (f64, f64) {
            (0.0, 10.0)
        }
    }

    #[test]
    fn at_the_edges_of_a_range_the_slope_is_taken_from_inside() {
        for (at, slope) in [(0.0, 3.0), (10.0, 23.0), (2.0, 7.0)] {
            let result = first_order(&Edge, &[at], &Covariance::independent(&[0.1]));
            assert!((result.sensitivity(0, 0) - slope).abs() < 1e-8, "{at}: {}", result.sensitivity(0, 0));
            assert!((result.sensitivity(1, 0) - 2.0).abs() < 1e-10);
            assert!((result.standard(0) - 0.1 * slope).abs() < 1e-9);
            assert_eq!(result.covariance().correlation(0, 1), 1.0);
        }
    }
}
