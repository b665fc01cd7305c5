//! Probability of conformity and decisions with a guard band, JCGM 106:2012 clauses 7 and 8.

use crate::uncertainty::normal;

/// Which side of a limit is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Direction {
    /// The value must not be above the limit.
    AtMost,
    /// The value must not be below the limit.
    AtLeast,
}

/// What can be said about a value and a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Decision {
    /// The probability of conformity is at least the required one.
    Conforms,
    /// The probability of non-conformity is at least the required one.
    DoesNotConform,
    /// Neither: the uncertainty does not allow a decision.
    Undecided,
}

impl Decision {
    /// The decision in words.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Conforms => "conforms",
            Self::DoesNotConform => "does not conform",
            Self::Undecided => "undecided",
        }
    }
}

/// A decision with its ground, in the unit of the value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Verdict {
    /// The decision.
    pub decision: Decision,
    /// Probability that the true value is on the wanted side (JCGM 106:2012 7.3).
    pub probability: f64,
    /// Distance from the limit inside which no decision is made.
    pub guard_band: f64,
}

/// The guard band for a required probability: w = u·z (JCGM 106:2012 8.3.2).
///
/// ```
/// // 95 % on one side: 1.645 standard uncertainties.
/// assert!((flamewright::judgement::guard_band(2.0, 0.95) - 3.29).abs() < 0.001);
/// ```
#[must_use]
pub fn guard_band(standard_uncertainty: f64, required: f64) -> f64 {
    standard_uncertainty * normal::quantile(required)
}

/// Judges `value` with standard uncertainty `standard_uncertainty` against `limit`.
///
/// ```
/// use flamewright::judgement::{Decision, Direction, conformity};
/// let near = conformity(29.1, 1.0, 30.0, Direction::AtMost, 0.95);
/// assert_eq!(near.decision, Decision::Undecided);
/// assert_eq!(conformity(27.0, 1.0, 30.0, Direction::AtMost, 0.95).decision, Decision::Conforms);
/// ```
///
/// `required` is the probability from which a decision is made, from 0.5 to below 1 (0.95 is
/// common practice). Without uncertainty the unrounded value decides. Not-a-number is undecided.
#[must_use]
pub fn conformity(value: f64, standard_uncertainty: f64, limit: f64, direction: Direction, required: f64) -> Verdict {
    let margin = match direction {
        Direction::AtMost => limit - value,
        Direction::AtLeast => value - limit,
    };
    let required = required.clamp(0.5, 1.0 - 1e-12);
    let probability = if standard_uncertainty > 0.0 {
        normal::probability(margin / standard_uncertainty)
    } else if margin >= 0.0 {
        1.0
    } else {
        0.0
    };
    let decision = if margin.is_nan() || standard_uncertainty.is_nan() {
        Decision::Undecided
    } else if probability >= required {
        Decision::Conforms
    } else if 1.0 - probability >= required {
        Decision::DoesNotConform
    } else {
        Decision::Undecided
    };
    Verdict {
        decision,
        probability: if margin.is_nan() { f64::NAN } else { probability },
        guard_band: guard_band(standard_uncertainty, required),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn decisions_on_both_sides_of_the_guard_band() {
        let judge = |value: f64| conformity(value, 1.0, 10.0, Direction::AtMost, 0.95).decision;
        let w = guard_band(1.0, 0.95);
        assert!((w - 1.644_853_626_951).abs() < 1e-9);
        assert_eq!(judge(10.0 - w - 1e-9), Decision::Conforms);
        assert_eq!(judge(10.0 - w + 1e-9), Decision::Undecided);
        assert_eq!(judge(10.0 + w + 1e-9), Decision::DoesNotConform);
        assert_eq!(conformity(10.0, 0.0, 10.0, Direction::AtLeast, 0.95).decision, Decision::Conforms);
        assert_eq!(conformity(f64::NAN, 1.0, 10.0, Direction::AtLeast, 0.95).decision, Decision::Undecided);
    }

    #[test]
    fn the_probability_is_that_of_the_wanted_side() {
        // Two standard uncertainties above the limit: 97.725 % lie above it (JCGM 106:2012 7.3, tables of the normal distribution).
        let least = conformity(14.0, 2.0, 10.0, Direction::AtLeast, 0.95);
        assert!((least.probability - 0.977_249_868).abs() < 1e-9 && least.decision == Decision::Conforms);
        let most = conformity(14.0, 2.0, 10.0, Direction::AtMost, 0.95);
        assert!((most.probability - 0.022_750_132).abs() < 1e-9 && most.decision == Decision::DoesNotConform);
        assert!((most.guard_band - 2.0 * 1.644_853_626_951).abs() < 1e-9);
        // 99 % asks more than two standard uncertainties.
        assert_eq!(conformity(14.0, 2.0, 10.0, Direction::AtLeast, 0.99).decision, Decision::Undecided);
        // Values that are exact, on either side.
        for (value, direction, probability, decision) in [
            (9.9, Direction::AtLeast, 0.0, Decision::DoesNotConform),
            (10.1, Direction::AtLeast, 1.0, Decision::Conforms),
            (9.9, Direction::AtMost, 1.0, Decision::Conforms),
            (10.1, Direction::AtMost, 0.0, Decision::DoesNotConform),
        ] {
            let judged = conformity(value, 0.0, 10.0, direction, 0.95);
            assert_eq!((judged.probability, judged.decision), (probability, decision), "{value}");
        }
        assert_eq!(conformity(9.0, f64::NAN, 10.0, Direction::AtMost, 0.95).decision, Decision::Undecided);
        // What is asked for is held between one half and certainty.
        assert_eq!(conformity(9.9, 1.0, 10.0, Direction::AtMost, 0.1).decision, Decision::Conforms);
        let certain = conformity(0.0, 1.0, 10.0, Direction::AtMost, 1.0);
        assert!(certain.decision == Decision::Conforms && certain.guard_band > 6.0 && certain.guard_band < 8.0, "{certain:?}");
        assert_eq!(Decision::DoesNotConform.word(), "does not conform");
    }
}
