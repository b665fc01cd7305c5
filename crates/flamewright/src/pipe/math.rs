//! Elementary functions without branches, so that a loop over pipes runs in vector lanes.

use crate::air::properties::polynomial;
use crate::quantity::Value;
use crate::quantity::types::Ratio;

/// Natural logarithm of a ratio; see [`natural_logarithm`].
#[inline(always)]
pub(crate) fn ln(ratio: Ratio) -> Ratio {
    Ratio::from_si(natural_logarithm(ratio.si()))
}

/// Natural logarithm of a positive normal number in straight-line arithmetic, within 2e-16 of its
/// size or of 1: `libm`'s branches would keep a loop over pipes from running in lanes.
#[inline(always)]
pub(crate) fn natural_logarithm(value: f64) -> f64 {
    // value = m 2^e with m between sqrt(1/2) and sqrt(2); ln m = 2 artanh((m - 1)/(m + 1)).
    const HALF_ROOT: u64 = 0x3fe6_a09e_667f_3bcd;
    let bits = value.to_bits();
    let exponent = (bits.wrapping_sub(HALF_ROOT) as i64) >> 52;
    let m = f64::from_bits(bits.wrapping_sub((exponent << 52) as u64));
    let s = (m - 1.0) / (m + 1.0);
    let s2 = s * s;
    const SERIES: [f64; 10] = [2.0, 2.0 / 3.0, 2.0 / 5.0, 2.0 / 7.0, 2.0 / 9.0, 2.0 / 11.0, 2.0 / 13.0, 2.0 / 15.0, 2.0 / 17.0, 2.0 / 19.0];
    s * polynomial(&SERIES, s2) + f64::from(exponent as i32) * core::f64::consts::LN_2
}

#[cfg(test)]
mod tests {
    use super::natural_logarithm;

    #[test]
    fn logarithm_is_right() {
        let mut worst = 0.0_f64;
        for i in 1..4000 {
            let x = f64::from(i) * 0.0137;
            let exact = crate::math::ln(x);
            worst = worst.max((natural_logarithm(x) - exact).abs() / exact.abs().max(1.0));
        }
        assert!(worst < 4e-16, "{worst:e}");
        assert_eq!(natural_logarithm(1.0), 0.0);
    }
}
