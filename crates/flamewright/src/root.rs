//! The root of a function of one variable.

/// Two places with a root of a rising function between them, coming closer.
///
/// Regula falsi with Illinois' halving of the value at the end that stays, and plain halving of
/// the bracket whenever two steps did not halve it.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Bracket {
    low: f64,
    high: f64,
    at_low: f64,
    at_high: f64,
    last_width: f64,
    since_halved: u32,
    low_moved_last: Option<bool>,
}

impl Bracket {
    /// With the values at the ends: below zero at `low`, above it at `high`.
    pub(crate) fn new(low: f64, high: f64, at_low: f64, at_high: f64) -> Self {
        Self { low, high, at_low, at_high, last_width: high - low, since_halved: 0, low_moved_last: None }
    }

    /// Where a straight line through the ends is zero.
    fn secant(&self) -> f64 {
        self.high - self.at_high * (self.high - self.low) / (self.at_high - self.at_low)
    }

    /// Where to look next; none where no number lies between the ends.
    pub(crate) fn next(&self) -> Option<f64> {
        let inside = |place: f64| place > self.low && place < self.high;
        let secant = self.secant();
        let next = if self.since_halved >= 2 || !inside(secant) { 0.5 * self.low + 0.5 * self.high } else { secant };
        inside(next).then_some(next)
    }

    /// Puts `next`, where the value is `at`, in place of the end on its side.
    pub(crate) fn narrow(&mut self, next: f64, at: f64) {
        let low_moves = at < 0.0;
        if low_moves {
            (self.low, self.at_low) = (next, at);
        } else {
            (self.high, self.at_high) = (next, at);
        }
        if self.low_moved_last == Some(low_moves) {
            *if low_moves { &mut self.at_high } else { &mut self.at_low } *= 0.5;
        }
        self.low_moved_last = Some(low_moves);
        self.since_halved += 1;
        let width = self.high - self.low;
        if width <= 0.5 * self.last_width {
            (self.last_width, self.since_halved) = (width, 0);
        }
    }
}

/// The root of a rising function within a bracket, to an absolute tolerance; NaN if there is none.
pub(crate) fn rising_root(function: impl Fn(f64) -> f64, low: f64, high: f64, tolerance: f64) -> f64 {
    let (at_low, at_high) = (function(low), function(high));
    if !(at_low <= 0.0 && at_high >= 0.0) {
        return f64::NAN;
    }
    if at_low == 0.0 {
        return low;
    }
    if at_high == 0.0 {
        return high;
    }
    let mut bracket = Bracket::new(low, high, at_low, at_high);
    for _ in 0..200 {
        if bracket.high - bracket.low <= tolerance {
            return bracket.secant();
        }
        let Some(next) = bracket.next() else { return bracket.high };
        let at = function(next);
        if at == 0.0 || at.is_nan() {
            return next + at;
        }
        bracket.narrow(next, at);
    }
    bracket.secant()
}

#[cfg(test)]
mod tests {
    use super::rising_root;

    #[test]
    fn roots_of_all_shapes_are_found() {
        let cube = rising_root(|x| x * x * x - 2.0, 0.0, 10.0, 1e-12);
        assert!((cube - crate::math::cbrt(2.0)).abs() < 1e-12);
        // Flat, then steep: regula falsi alone creeps here.
        let steep = rising_root(|x| crate::math::exp(30.0 * x) - 2.0, -50.0, 3.0, 1e-12);
        assert!((steep - crate::math::ln(2.0) / 30.0).abs() < 1e-11, "{steep}");
        assert!((rising_root(|x| if x < 0.3 { -1.0 } else { 1.0 }, 0.0, 1.0, 1e-12) - 0.3).abs() < 1e-11);
        assert_eq!(rising_root(|x| x, 0.0, 1.0, 1e-12), 0.0);
        assert!(rising_root(|x| x + 2.0, 0.0, 1.0, 1e-12).is_nan());
        assert!(rising_root(|_| f64::NAN, 0.0, 1.0, 1e-12).is_nan());
    }

    #[test]
    fn a_steep_function_is_not_crept_along() {
        let calls = core::cell::Cell::new(0);
        let steep = |x: f64| {
            calls.set(calls.get() + 1);
            crate::math::exp(30.0 * x) - 2.0
        };
        assert!((rising_root(steep, -50.0, 3.0, 1e-12) - crate::math::ln(2.0) / 30.0).abs() < 1e-11);
        // Halving alone takes 46 steps to 1e-12 of 53.
        assert!(calls.get() < 40, "{} calls", calls.get());
        // Both ends of the bracket are roots where the function says so.
        assert_eq!(rising_root(|x| x - 1.0, 0.0, 1.0, 1e-12), 1.0);
    }
}
