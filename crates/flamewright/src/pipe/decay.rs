//! How the water of a run comes to rest: along a run it flows through, or in time while it stands.
//!
//! Both are `d ln(excess) = -loss / (capacity * excess)` with the excess over the temperature at
//! which nothing is lost. The right side hardly varies, so few steps give many digits.

use crate::math::{exp, ln};

/// Below this excess in K the loss is taken in proportion to the excess; nothing measurable is left.
const LEAST_EXCESS: f64 = 1e-6;

/// Temperature in K after a stretch (of run or of time) divided into `steps`, by the classical
/// fourth-order Runge-Kutta method on the logarithm of the excess.
///
/// `decline` is the fall of temperature in K per unit of stretch, at a temperature.
pub(crate) fn temperature_after(start: f64, rest: f64, stretch: f64, steps: u32, decline: impl Fn(f64) -> f64) -> f64 {
    let side = if start < rest { -1.0 } else { 1.0 };
    let mut excess = (start - rest) * side;
    let rate = |excess: f64| {
        let excess = if excess < LEAST_EXCESS { LEAST_EXCESS } else { excess };
        side * decline(rest + side * excess) / excess
    };
    if excess == 0.0 {
        return start;
    }
    let step = stretch / f64::from(steps);
    for _ in 0..steps {
        let first = rate(excess);
        let second = rate(excess * exp(-0.5 * step * first));
        let third = rate(excess * exp(-0.5 * step * second));
        let fourth = rate(excess * exp(-step * third));
        excess *= exp(-step / 6.0 * (first + 2.0 * (second + third) + fourth));
    }
    rest + side * excess
}

/// Nodes and weights of the five-point Gauss-Legendre rule on -1..1. Abramowitz & Stegun, Handbook
/// of Mathematical Functions, Table 25.4.
const GAUSS: [(f64, f64); 5] = [
    (-0.906179845938664, 0.236926885056189),
    (-0.538469310105683, 0.478628670499366),
    (0.0, 0.568888888888889),
    (0.538469310105683, 0.478628670499366),
    (0.906179845938664, 0.236926885056189),
];

/// The stretch (of run or of time) in which the temperature goes from `start` to `target`; NaN
/// where it never does.
pub(crate) fn stretch_between(start: f64, target: f64, rest: f64, decline: impl Fn(f64) -> f64) -> f64 {
    const PANELS: u32 = 8;
    if start == target {
        return 0.0;
    }
    let side = if start < rest { -1.0 } else { 1.0 };
    let (from, to) = ((start - rest) * side, (target - rest) * side);
    if !(to > 0.0 && to < from) {
        return f64::NAN;
    }
    let half = 0.5 * ln(from / to) / f64::from(PANELS);
    let mut sum = 0.0;
    for panel in 0..PANELS {
        let middle = ln(from) - half * f64::from(2 * panel + 1);
        for (node, weight) in GAUSS {
            let excess = exp(middle + half * node);
            sum += weight * excess / (side * decline(rest + side * excess));
        }
    }
    sum * half
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_constant_coefficient_gives_the_exponential() {
        for start in [350.0, 250.0] {
            let after = temperature_after(start, 290.0, 3.0, 4, |t| 0.4 * (t - 290.0));
            let exact = 290.0 + (start - 290.0) * exp(-1.2);
            assert!((after - exact).abs() < 1e-10, "{after} {exact}");
            let stretch = stretch_between(start, exact, 290.0, |t| 0.4 * (t - 290.0));
            assert!((stretch - 3.0).abs() < 1e-11, "{stretch}");
        }
        assert!(stretch_between(350.0, 289.0, 290.0, |t| t - 290.0).is_nan());
        assert!(stretch_between(350.0, 351.0, 290.0, |t| t - 290.0).is_nan());
    }

    #[test]
    fn a_power_law_is_met_and_the_two_ways_agree() {
        // d excess/dt = -c excess^1.25 has the solution excess^-0.25 = start^-0.25 + 0.25 c t.
        let law = |t: f64| 0.01 * crate::math::pow(t - 290.0, 1.25);
        let exact = 290.0 + crate::math::pow(crate::math::pow(60.0, -0.25) + 0.0025 * 40.0, -4.0);
        let after = temperature_after(350.0, 290.0, 40.0, 16, law);
        assert!((after - exact).abs() < 1e-7, "{after} {exact}");
        assert!((stretch_between(350.0, exact, 290.0, law) / 40.0 - 1.0).abs() < 1e-11);
    }
}
