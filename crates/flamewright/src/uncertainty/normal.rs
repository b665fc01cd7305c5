//! The normal and Student distributions.

use crate::math;

/// Probability that a standard normal variable is at most `x`.
pub(crate) fn probability(x: f64) -> f64 {
    0.5 * libm::erfc(-x * core::f64::consts::FRAC_1_SQRT_2)
}

/// The value that a standard normal variable is below with probability `p`.
///
/// M. J. Wichura, Algorithm AS 241, Applied Statistics 37 (1988) 477-484, routine PPND16; relative
/// error about 1e-16. Coefficients from memory, checked against [`probability`] in the tests.
#[inline]
pub(crate) fn quantile(p: f64) -> f64 {
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        let r = 0.180625 - q * q;
        return q * polynomial(
            r,
            &[
                3.387_132_872_796_366_5,
                133.141_667_891_784_38,
                1_971.590_950_306_551_3,
                13_731.693_765_509_46,
                45_921.953_931_549_87,
                67_265.770_927_008_7,
                33_430.575_583_588_13,
                2_509.080_928_730_122_7,
            ],
        ) / polynomial(
            r,
            &[
                1.0,
                42.313_330_701_600_91,
                687.187_007_492_057_9,
                5_394.196_021_424_751,
                21_213.794_301_586_597,
                39_307.895_800_092_71,
                28_729.085_735_721_943,
                5_226.495_278_852_545,
            ],
        );
    }
    let tail = if q < 0.0 { p } else { 1.0 - p };
    let r = math::sqrt(-math::ln(tail));
    let value = if r <= 5.0 {
        let r = r - 1.6;
        polynomial(
            r,
            &[
                1.423_437_110_749_683_5,
                4.630_337_846_156_546,
                5.769_497_221_460_691,
                3.647_848_324_763_204_5,
                1.270_458_252_452_368_4,
                0.241_780_725_177_450_6,
                0.022_723_844_989_269_184,
                7.745_450_142_783_414e-4,
            ],
        ) / polynomial(
            r,
            &[
                1.0,
                2.053_191_626_637_759,
                1.676_384_830_183_803_8,
                0.689_767_334_985_1,
                0.148_103_976_427_480_08,
                0.015_198_666_563_616_457,
                5.475_938_084_995_345e-4,
                1.050_750_071_644_416_9e-9,
            ],
        )
    } else {
        let r = r - 5.0;
        polynomial(
            r,
            &[
                6.657_904_643_501_103,
                5.463_784_911_164_114,
                1.784_826_539_917_291_3,
                0.296_560_571_828_504_87,
                0.026_532_189_526_576_124,
                0.001_242_660_947_388_078_4,
                2.711_555_568_743_487_6e-5,
                2.010_334_399_292_288_1e-7,
            ],
        ) / polynomial(
            r,
            &[
                1.0,
                0.599_832_206_555_887_9,
                0.136_929_880_922_735_8,
                0.014_875_361_290_850_615,
                7.868_691_311_456_133e-4,
                1.846_318_317_510_054_8e-5,
                1.421_511_758_316_446e-7,
                2.044_263_103_389_939_8e-15,
            ],
        )
    };
    if q < 0.0 { -value } else { value }
}

#[inline(always)]
fn polynomial(x: f64, coefficients: &[f64; 8]) -> f64 {
    coefficients.iter().rev().fold(0.0, |sum, c| sum * x + c)
}

/// Probability that a Student variable with `freedom` degrees of freedom lies within ±`t`.
pub(crate) fn student_within(t: f64, freedom: f64) -> f64 {
    if freedom.is_infinite() {
        return 2.0 * probability(t.abs()) - 1.0;
    }
    1.0 - incomplete_beta(freedom / (freedom + t * t), 0.5 * freedom, 0.5)
}

/// Regularised incomplete beta function by its continued fraction (Lentz), DLMF 8.17.22.
fn incomplete_beta(x: f64, a: f64, b: f64) -> f64 {
    if x <= 0.0 || x >= 1.0 {
        return x.clamp(0.0, 1.0);
    }
    if x > (a + 1.0) / (a + b + 2.0) {
        return 1.0 - incomplete_beta(1.0 - x, b, a);
    }
    let log_front = libm::lgamma(a + b) - libm::lgamma(a) - libm::lgamma(b) + a * math::ln(x) + b * math::ln_1p(-x);
    let small = 1e-300;
    let (mut c, mut d) = (1.0, 1.0 - (a + b) * x / (a + 1.0));
    d = 1.0 / if d.abs() < small { small } else { d };
    let mut fraction = d;
    for m in 1..500 {
        let m = f64::from(m);
        for numerator in
            [m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m)), -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0))]
        {
            d = 1.0 + numerator * d;
            c = 1.0 + numerator / c;
            d = 1.0 / if d.abs() < small { small } else { d };
            c = if c.abs() < small { small } else { c };
            fraction *= c * d;
        }
        if (c * d - 1.0).abs() < 1e-15 {
            break;
        }
    }
    math::exp(log_front) * fraction / a
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_quantile_inverts_the_probability() {
        for i in 1..2000 {
            let p = f64::from(i) / 2000.0;
            assert!((probability(quantile(p)) - p).abs() < 1e-15, "{p}");
        }
        for p in [1e-300, 1e-30, 1e-12, 1e-6, 1e-3] {
            assert!((probability(quantile(p)) / p - 1.0).abs() < 2e-12, "{p}: {}", probability(quantile(p)) / p - 1.0);
        }
    }

    #[test]
    fn student_probabilities_of_the_guide() {
        // JCGM 100:2008 Table G.2, two decimals.
        for (freedom, p, t) in
            [(1.0, 0.95, 12.71), (5.0, 0.95, 2.57), (10.0, 0.99, 3.17), (50.0, 0.9545, 2.05), (f64::INFINITY, 0.95, 1.96)]
        {
            let (low, high) = (student_within(t - 0.005, freedom), student_within(t + 0.005, freedom));
            assert!(low <= p && p <= high, "{freedom} {p}: {low} {high}");
        }
    }
}
