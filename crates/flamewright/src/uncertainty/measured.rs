//! Standard uncertainties from what people have: accuracy statements, resolution, repeated
//! readings, calibration certificates. JCGM 100:2008 clauses 4.2, 4.3 and annex G.

use super::normal;
use crate::error::Error;
use crate::math;
use alloc::string::String;
use alloc::vec::Vec;

/// The shape of what is known about a value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Distribution {
    /// Bell-shaped: the standard uncertainty is stated or comes from readings.
    Normal,
    /// Equally likely anywhere within ± a half-width; u = a/√3.
    Rectangular,
    /// Likelier near the middle of ± a half-width; u = a/√6.
    Triangular,
    /// Swinging evenly between ± a half-width, as a temperature under a cycling control; u = a/√2.
    Arcsine,
}

impl Distribution {
    const WORDS: [(&'static str, Self); 4] =
        [("rectangular", Self::Rectangular), ("triangular", Self::Triangular), ("arcsine", Self::Arcsine), ("normal", Self::Normal)];

    /// The word for it.
    #[must_use]
    pub fn word(self) -> &'static str {
        Self::WORDS.iter().find(|(_, shape)| *shape == self).map_or("", |(word, _)| word)
    }

    /// The shape of a word.
    ///
    /// # Errors
    /// Another word.
    pub fn of_word(word: &str) -> Result<Self, Error> {
        let known = Self::WORDS.iter().find(|(known, _)| *known == word);
        known.map(|(_, shape)| *shape).ok_or_else(|| Error::unknown_name("distribution", word, Self::WORDS.iter().map(|(word, _)| *word)))
    }
}

/// One contribution to a standard uncertainty, SI.
#[derive(Clone, Debug, PartialEq)]
pub struct Component {
    /// What it comes from.
    pub label: String,
    /// Its standard uncertainty.
    pub standard: f64,
    /// Its degrees of freedom; infinity where the statement is taken as exact.
    pub freedom: f64,
    /// Its shape.
    pub distribution: Distribution,
}

/// A value with the contributions to its uncertainty, SI.
///
/// ```
/// use flamewright::uncertainty::Measured;
/// // 4.6 % oxygen: ± 0.3 % by the maker, read in steps of 0.1 %.
/// let oxygen = Measured::exact(0.046).accuracy(0.0, 0.003, false)?.resolution(0.001)?;
/// assert!((oxygen.standard() - 0.00176).abs() < 0.00001);
/// # Ok::<(), flamewright::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    /// The value.
    pub value: f64,
    /// The contributions, independent of each other.
    pub components: Vec<Component>,
}

impl Measured {
    /// A value with no uncertainty yet.
    #[must_use]
    pub fn exact(value: f64) -> Self {
        Self { value, components: Vec::new() }
    }

    /// The mean of repeated readings with its type A uncertainty (JCGM 100:2008 4.2).
    ///
    /// # Errors
    /// Fewer than two readings, or one that is not finite.
    pub fn repeated(readings: &[f64]) -> Result<Self, Error> {
        let n = readings.len() as f64;
        if readings.len() < 2 || readings.iter().any(|r| !r.is_finite()) {
            return Err(Error::bad_setting("readings", "", "at least two finite readings are needed"));
        }
        let mean = readings.iter().sum::<f64>() / n;
        let variance = readings.iter().map(|r| (r - mean) * (r - mean)).sum::<f64>() / (n - 1.0);
        let component = Component {
            label: "repeated readings".into(),
            standard: math::sqrt(variance / n),
            freedom: n - 1.0,
            distribution: Distribution::Normal,
        };
        Ok(Self { value: mean, components: Vec::from([component]) })
    }

    /// Adds ± `half_width` of the stated shape (type B, JCGM 100:2008 4.3). For a normal shape the
    /// half-width is the standard uncertainty itself.
    ///
    /// # Errors
    /// A half-width that is negative or not finite.
    pub fn within(mut self, label: &str, half_width: f64, distribution: Distribution) -> Result<Self, Error> {
        if !(half_width >= 0.0 && half_width.is_finite()) {
            return Err(Error::bad_setting(label, &alloc::format!("{half_width}"), "a half-width is finite and not negative"));
        }
        let standard = match distribution {
            Distribution::Normal => half_width,
            Distribution::Rectangular => half_width / math::sqrt(3.0),
            Distribution::Triangular => half_width / math::sqrt(6.0),
            Distribution::Arcsine => half_width / math::sqrt(2.0),
        };
        self.components.push(Component { label: label.into(), standard, freedom: f64::INFINITY, distribution });
        Ok(self)
    }

    /// Adds the resolution of an instrument: the value lies anywhere within half a step.
    ///
    /// # Errors
    /// As [`within`](Self::within).
    pub fn resolution(self, step: f64) -> Result<Self, Error> {
        self.within("resolution", 0.5 * step, Distribution::Rectangular)
    }

    /// Adds an accuracy statement: ± a share of the reading and ± an absolute amount, taken as the
    /// larger of the two or their sum.
    ///
    /// # Errors
    /// As [`within`](Self::within).
    pub fn accuracy(self, of_reading: f64, absolute: f64, larger: bool) -> Result<Self, Error> {
        let relative = of_reading * self.value.abs();
        self.within("accuracy", if larger { relative.max(absolute) } else { relative + absolute }, Distribution::Rectangular)
    }

    /// Adds the expanded uncertainty of a calibration certificate with its coverage factor.
    ///
    /// # Errors
    /// As [`within`](Self::within); a coverage factor that is not positive.
    pub fn certificate(self, expanded: f64, coverage_factor: f64) -> Result<Self, Error> {
        if !(coverage_factor > 0.0 && coverage_factor.is_finite()) {
            return Err(Error::bad_setting("coverage_factor", &alloc::format!("{coverage_factor}"), "a coverage factor is positive"));
        }
        self.within("calibration certificate", expanded / coverage_factor, Distribution::Normal)
    }

    /// The combined standard uncertainty.
    #[must_use]
    pub fn standard(&self) -> f64 {
        math::sqrt(self.components.iter().map(|c| c.standard * c.standard).sum())
    }

    /// The shape to draw it with: that of its only contribution, or normal where several add up.
    #[must_use]
    pub fn distribution(&self) -> Distribution {
        match self.components.as_slice() {
            [only] => only.distribution,
            _ => Distribution::Normal,
        }
    }

    /// The effective degrees of freedom.
    #[must_use]
    pub fn freedom(&self) -> f64 {
        effective_degrees_of_freedom(self.components.iter().map(|c| (c.standard, c.freedom)))
    }
}

/// Welch-Satterthwaite, JCGM 100:2008 G.4: contributions (already multiplied by their
/// sensitivities) with their degrees of freedom.
pub fn effective_degrees_of_freedom(contributions: impl IntoIterator<Item = (f64, f64)>) -> f64 {
    let (mut variance, mut sum) = (0.0, 0.0);
    for (u, freedom) in contributions {
        variance += u * u;
        if freedom.is_finite() {
            sum += u * u * u * u / freedom;
        }
    }
    if sum > 0.0 { variance * variance / sum } else { f64::INFINITY }
}

/// The coverage factor k for which ±k·u covers with probability `coverage`, by the Student
/// distribution with `freedom` degrees of freedom (JCGM 100:2008 G.3).
#[must_use]
pub fn coverage_factor(coverage: f64, freedom: f64) -> f64 {
    if !(coverage > 0.0 && coverage < 1.0 && freedom >= 1.0) {
        return f64::NAN;
    }
    let (mut low, mut high) = (0.0, 1.0);
    while normal::student_within(high, freedom) < coverage && high < 1e12 {
        high *= 2.0;
    }
    for _ in 0..200 {
        let middle = 0.5 * (low + high);
        if normal::student_within(middle, freedom) < coverage { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}

/// The factor that covers with `freedom` degrees of freedom as much as 2 does of a normal distribution,
/// 95.45 % (JCGM 100:2008 tables G.1 and G.2): 2 where nothing rests on few readings.
#[must_use]
pub fn coverage_factor_like_two(freedom: f64) -> f64 {
    if freedom.is_finite() { coverage_factor(0.9545, freedom.max(1.0)).max(2.0) } else { 2.0 }
}

/// Covariance of the means of two simultaneous series of readings (JCGM 100:2008 5.2.3).
///
/// # Errors
/// Series of different length, or fewer than two pairs.
pub fn type_a_covariance(first: &[f64], second: &[f64]) -> Result<f64, Error> {
    if first.len() != second.len() || first.len() < 2 {
        return Err(Error::bad_setting("readings", "", "two series of the same length, of at least two readings, are needed"));
    }
    let n = first.len() as f64;
    let (a, b) = (first.iter().sum::<f64>() / n, second.iter().sum::<f64>() / n);
    let sum: f64 = first.iter().zip(second).map(|(x, y)| (x - a) * (y - b)).sum();
    Ok(sum / (n * (n - 1.0)))
}
