//! One set of elementary functions for every build and every face.
//!
//! The host's maths library and `libm` differ in the last bit, and differ between hosts. All
//! formulas call these, so that a result is the same to the bit wherever it is computed. The
//! square root is rounded correctly by every implementation, so the processor's own may serve.

#[allow(unused_imports, reason = "a set to choose from")]
pub(crate) use libm::{
    acosh, asinh, atan, cbrt, ceil, cos, cosh, erf, exp, expm1, floor, log as ln, log1p as ln_1p, log10, pow, round, sin, sinh, tanh,
    tgamma, trunc,
};

/// The square root; not-a-number for negative values.
#[inline(always)]
pub(crate) fn sqrt(x: f64) -> f64 {
    #[cfg(feature = "std")]
    {
        x.sqrt()
    }
    #[cfg(not(feature = "std"))]
    {
        libm::sqrt(x)
    }
}

/// `x` within `low` and `high`; unlike `f64::clamp` it does not panic where a bound is no number.
#[inline(always)]
pub(crate) fn clamp(x: f64, low: f64, high: f64) -> f64 {
    if x < low {
        low
    } else if x > high {
        high
    } else {
        x
    }
}

/// `e^x` without a branch, so that a loop over it vectorises; within 1 unit in the last place or
/// two of [`exp`] for `|x| < 700`, meaningless outside that, NaN for NaN.
///
/// The usual scheme: `x = k ln 2 + r` with `|r| <= ln 2 / 2`, a power series for `e^r`, and `2^k`
/// put straight into the exponent bits. Only `+ - *` and bit operations, hence the same bits
/// everywhere.
#[inline(always)]
pub(crate) fn exp_branch_free(x: f64) -> f64 {
    /// Adding this leaves the nearest whole number in the low bits of the sum.
    const ROUND: f64 = 6_755_399_441_055_744.0; // 1.5 * 2^52
    /// ln 2 in two parts, the first with 32 trailing zero bits so that `k * LN_2_HIGH` is exact.
    const LN_2_HIGH: f64 = 6.931_471_803_691_238_2e-1;
    const LN_2_LOW: f64 = 1.908_214_929_270_587_7e-10;
    let shifted = x * core::f64::consts::LOG2_E + ROUND;
    let k = shifted - ROUND;
    let r = (x - k * LN_2_HIGH) - k * LN_2_LOW;
    // Taylor series to r^13 / 13!, in pairs to shorten the chain; the next term is below 5e-18.
    let r2 = r * r;
    let r4 = r2 * r2;
    let low = (1.0 + r) + r2 * (1.0 / 2.0 + r * (1.0 / 6.0));
    let middle = (1.0 / 24.0 + r * (1.0 / 120.0)) + r2 * (1.0 / 720.0 + r * (1.0 / 5_040.0));
    let high = (1.0 / 40_320.0 + r * (1.0 / 362_880.0)) + r2 * (1.0 / 3_628_800.0 + r * (1.0 / 39_916_800.0));
    let top = 1.0 / 479_001_600.0 + r * (1.0 / 6_227_020_800.0);
    let series = low + r4 * (middle + r4 * (high + r4 * top));
    let power_of_two = f64::from_bits(shifted.to_bits().wrapping_add(1023) << 52);
    series * power_of_two
}
