//! The root of a function of one variable.

/// The root of a rising function within a bracket, to an absolute tolerance; NaN if there is none.
///
/// Regula falsi with Illinois' halving of the value at the end that stays, and plain halving of
/// the bracket whenever two steps did not halve it.
pub(crate) fn rising_root(function: impl Fn(f64) -> f64, low: f64, high: f64, tolerance: f64) -> f64 {
    let (mut low, mut high) = (low, high);
    let (mut at_low, mut at_high) = (function(low), function(high));
    if !(at_low <= 0.0 && at_high >= 0.0) {
        return f64::NAN;
    }
    if at_low == 0.0 {
        return low;
    }
    if at_high == 0.0 {
        return high;
    }
    let (mut last_width, mut since_halved) = (high - low, 0);
    let mut low_moved_last = None;
    for _ in 0..200 {
        let secant = high - at_high * (high - low) / (at_high - at_low);
        if high - low <= tolerance {
            return secant;
        }
        let centre = 0.5 * (low + high);
        let next = if since_halved >= 2 || !(secant > low && secant < high) { centre } else { secant };
        if !(next > low && next < high) {
            // Neighbouring numbers: nothing lies between.
            return next;
        }
        let at = function(next);
        if at == 0.0 {
            return next;
        }
        if at < 0.0 {
            (low, at_low) = (next, at);
            if low_moved_last == Some(true) {
                at_high *= 0.5;
            }
            low_moved_last = Some(true);
        } else if at > 0.0 {
            (high, at_high) = (next, at);
            if low_moved_last == Some(false) {
                at_low *= 0.5;
            }
            low_moved_last = Some(false);
        } else {
            return f64::NAN;
        }
        since_halved += 1;
        if high - low <= 0.5 * last_width {
            (last_width, since_halved) = (high - low, 0);
        }
    }
    0.5 * (low + high)
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
