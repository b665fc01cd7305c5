//! Propagation of distributions, JCGM 101:2008, seeded and reproducible.

use super::{Covariance, Distribution, Model, normal};
use crate::error::Error;
use crate::math;
use alloc::vec::Vec;

/// xoshiro256++ (D. Blackman and S. Vigna, 2019), started by splitmix64: the same draws on every machine.
#[derive(Clone, Debug)]
pub struct Generator([u64; 4]);

impl Generator {
    /// Starts from `seed`.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        let mut state = seed;
        let mut next = || {
            state = state.wrapping_add(0x9e37_79b9_7f4a_7c15);
            let mut z = state;
            z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
            z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
            z ^ (z >> 31)
        };
        Self([next(), next(), next(), next()])
    }
    /// The next 64 random bits.
    #[inline]
    pub fn bits(&mut self) -> u64 {
        let s = &mut self.0;
        let result = s[0].wrapping_add(s[3]).rotate_left(23).wrapping_add(s[0]);
        let t = s[1] << 17;
        s[2] ^= s[0];
        s[3] ^= s[1];
        s[1] ^= s[2];
        s[0] ^= s[3];
        s[2] ^= t;
        s[3] = s[3].rotate_left(45);
        result
    }
    /// A number strictly between 0 and 1.
    #[inline]
    pub fn uniform(&mut self) -> f64 {
        ((self.bits() >> 12) as f64 + 0.5) * (1.0 / 4_503_599_627_370_496.0)
    }
    /// A draw of mean 0 and standard deviation 1.
    #[inline]
    pub fn draw(&mut self, shape: Distribution) -> f64 {
        match shape {
            Distribution::Normal => normal::quantile(self.uniform()),
            Distribution::Rectangular => (2.0 * self.uniform() - 1.0) * 1.732_050_807_568_877_2,
            Distribution::Triangular => (self.uniform() - self.uniform()) * 2.449_489_742_783_178,
            Distribution::Arcsine => math::sin(core::f64::consts::TAU * self.uniform()) * core::f64::consts::SQRT_2,
        }
    }
}

/// The draws of all outputs.
#[derive(Clone, Debug, PartialEq)]
pub struct Draws {
    /// Draws of output `j` at `j * trials ..`, SI, in the order drawn.
    values: Vec<f64>,
    trials: usize,
    outputs: usize,
}

impl Draws {
    /// How many draws there are.
    #[must_use]
    pub fn trials(&self) -> usize {
        self.trials
    }
    /// How many outputs each draw has.
    #[must_use]
    pub fn outputs(&self) -> usize {
        self.outputs
    }
    /// The draws of one output after the other, each in the order drawn.
    #[must_use]
    pub fn into_values(self) -> Vec<f64> {
        self.values
    }
    /// The draws of output `j`, in the order drawn.
    #[must_use]
    pub fn of(&self, j: usize) -> &[f64] {
        self.values.get(j * self.trials..(j + 1) * self.trials).unwrap_or(&[])
    }
    /// Mean of output `j`.
    #[must_use]
    pub fn mean(&self, j: usize) -> f64 {
        // From the first draw, so that a small spread about a large value keeps its digits.
        let draws = self.of(j);
        let start = draws.first().copied().unwrap_or(f64::NAN);
        start + draws.iter().map(|d| d - start).sum::<f64>() / self.trials as f64
    }
    /// Covariance of outputs `j` and `l`.
    #[must_use]
    pub fn covariance(&self, j: usize, l: usize) -> f64 {
        let (a, b) = (self.mean(j), self.mean(l));
        self.of(j).iter().zip(self.of(l)).map(|(x, y)| (x - a) * (y - b)).sum::<f64>() / (self.trials as f64 - 1.0)
    }
    /// Standard uncertainty of output `j`.
    #[must_use]
    pub fn standard(&self, j: usize) -> f64 {
        math::sqrt(self.covariance(j, j))
    }
    /// The coverage interval of output `j`: probabilistically symmetric, or the shortest (JCGM 101:2008 7.7).
    #[must_use]
    pub fn interval(&self, j: usize, coverage: f64, shortest: bool) -> (f64, f64) {
        let mut sorted = self.of(j).to_vec();
        sorted.sort_unstable_by(f64::total_cmp);
        let n = sorted.len();
        let inside = math::round(coverage * n as f64) as usize;
        if n == 0 || inside == 0 || inside >= n {
            return (sorted.first().copied().unwrap_or(f64::NAN), sorted.last().copied().unwrap_or(f64::NAN));
        }
        let width = |start: usize| sorted[start + inside] - sorted[start];
        let start = if shortest {
            (0..n - inside).min_by(|&a, &b| width(a).total_cmp(&width(b))).unwrap_or(0)
        } else {
            (n - inside).div_ceil(2) - 1
        };
        (sorted[start], sorted[start + inside])
    }
}

/// Draws computed before they are sorted into the columns of the outputs.
const BLOCK: usize = 64;

/// Draws `trials` times from the inputs and computes the outputs of each draw.
///
/// ```
/// use flamewright::uncertainty::{Covariance, Distribution, monte_carlo};
/// use flamewright::{catalogue::calculation, node::Node};
/// let water = calculation("liquid_water")?.prepare(&Node::Table(vec![]))?;
/// let spread = Covariance::independent(&[1.0, 0.0]);
/// let draws = monte_carlo(&*water, &[333.15, 2e5], &spread, &[Distribution::Normal; 2], 10_000, 7)?;
/// assert!((draws.standard(0) - 0.52).abs() < 0.02);
/// let (low, high) = draws.interval(0, 0.95, false);
/// assert!(low < 982.5 && high > 983.9);
/// # Ok::<(), flamewright::Error>(())
/// ```
///
/// `shapes` gives the shape of each input (normal where there is none). Correlated inputs are
/// drawn through the triangular factor of `inputs`, with their shapes before mixing.
///
/// # Errors
/// Correlations that contradict each other; fewer than two trials; more than 10⁸ output values.
pub fn monte_carlo<M: Model + ?Sized>(
    model: &M,
    at: &[f64],
    inputs: &Covariance,
    shapes: &[Distribution],
    trials: usize,
    seed: u64,
) -> Result<Draws, Error> {
    let (n, m) = (model.inputs(), model.outputs());
    if trials < 2 || trials.saturating_mul(m) > 100_000_000 {
        return Err(Error::bad_setting("trials", &alloc::format!("{trials}"), "from 2 trials to 100 million output values"));
    }
    if at.len() != n || inputs.size() != n {
        return Err(Error::bad_setting("inputs", "", &alloc::format!("{n} values and a covariance of {n} are needed")));
    }
    let lower = inputs.factor()?;
    let varied: Vec<usize> = (0..n).filter(|&i| inputs.get(i, i) > 0.0).collect();
    let mut generator = Generator::new(seed);
    let mut values = alloc::vec![0.0; trials * m];
    let (mut point, mut standard) = (at.to_vec(), alloc::vec![0.0; n]);
    // A block of draws is turned from rows into columns at once: one row at a time would touch as
    // many far apart places in memory as there are outputs.
    let mut block = alloc::vec![0.0; BLOCK * m];
    let mut first = 0;
    while first < trials {
        let count = BLOCK.min(trials - first);
        for result in block.chunks_exact_mut(m.max(1)).take(count) {
            for &i in &varied {
                standard[i] = generator.draw(shapes.get(i).copied().unwrap_or(Distribution::Normal));
            }
            for &i in &varied {
                point[i] = at[i] + varied.iter().take_while(|&&k| k <= i).map(|&k| lower[i * n + k] * standard[k]).sum::<f64>();
            }
            model.compute(&point, result);
        }
        for j in 0..m {
            let column = &mut values[j * trials + first..j * trials + first + count];
            for (trial, slot) in column.iter_mut().enumerate() {
                *slot = block[trial * m + j];
            }
        }
        first += count;
    }
    Ok(Draws { values, trials, outputs: m })
}

#[cfg(test)]
mod tests {
    use super::Generator;

    /// First outputs as published with the two generators' reference code (from memory).
    #[test]
    fn the_generator_is_the_one_it_is_said_to_be() {
        assert_eq!(Generator::new(0).0, [0xe220_a839_7b1d_cdaf, 0x6e78_9e6a_a1b9_65f4, 0x06c4_5d18_8009_454f, 0xf88b_b8a8_724c_81ec]);
        let mut generator = Generator([1, 2, 3, 4]);
        let expected = [41_943_041, 58_720_359, 3_588_806_011_781_223, 3_591_011_842_654_386, 9_228_616_714_210_784_205];
        assert_eq!([(); 5].map(|()| generator.bits()), expected);
    }
}
