//! Region 4 (saturation) of the IAPWS Industrial Formulation 1997, release R7-97(2012),
//! equations 30 and 31, coefficients of its Table 34.

use crate::math::sqrt;

/// Coefficients n1 to n10 of R7-97(2012) Table 34.
const N: [f64; 10] = [
    0.116_705_214_527_67e4,
    -0.724_213_167_032_06e6,
    -0.170_738_469_400_92e2,
    0.120_208_247_024_70e5,
    -0.323_255_503_223_33e7,
    0.149_151_086_135_30e2,
    -0.482_326_573_615_91e4,
    0.405_113_405_420_57e6,
    -0.238_555_575_678_49,
    0.650_175_348_447_98e3,
];

/// Saturation pressure of water in Pa at a temperature in K.
///
/// Valid from 273.15 K to the critical temperature, 647.096 K; NaN elsewhere. R7-97(2012)
/// equation 30.
#[inline]
pub fn saturation_pressure(temperature: f64) -> f64 {
    let temperature = if (273.15..=647.096).contains(&temperature) { temperature } else { f64::NAN };
    let theta = temperature + N[8] / (temperature - N[9]);
    let theta2 = theta * theta;
    let a = theta2 + N[0] * theta + N[1];
    let b = N[2] * theta2 + N[3] * theta + N[4];
    let c = N[5] * theta2 + N[6] * theta + N[7];
    let root = 2.0 * c / (-b + sqrt(b * b - 4.0 * a * c));
    let squared = root * root;
    1.0e6 * squared * squared
}

/// Saturation temperature of water in K at an absolute pressure in Pa.
///
/// Valid from 611.213 Pa (the pressure at 273.15 K) to the critical pressure, 22.064 MPa; NaN elsewhere. R7-97(2012)
/// equation 31.
#[inline]
pub fn saturation_temperature(pressure: f64) -> f64 {
    let pressure = if (611.212..=22.064e6).contains(&pressure) { pressure } else { f64::NAN };
    let beta2 = sqrt(pressure * 1.0e-6);
    let beta = sqrt(beta2);
    let e = beta2 + N[2] * beta + N[5];
    let f = N[0] * beta2 + N[3] * beta + N[6];
    let g = N[1] * beta2 + N[4] * beta + N[7];
    let d = 2.0 * g / (-f - sqrt(f * f - 4.0 * e * g));
    let sum = N[9] + d;
    0.5 * (sum - sqrt(sum * sum - 4.0 * (N[8] + N[9] * d)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_two_equations_are_inverse() {
        let mut temperature = 273.15;
        while temperature < 647.0 {
            let back = saturation_temperature(saturation_pressure(temperature));
            assert!((back - temperature).abs() < 2e-7, "{temperature} came back as {back}");
            temperature += 0.37;
        }
    }

    #[test]
    fn outside_the_line_is_nan() {
        for temperature in [273.0, 648.0, f64::NAN, f64::INFINITY] {
            assert!(saturation_pressure(temperature).is_nan());
        }
        for pressure in [0.0, -1.0, 611.0, 23e6, f64::NAN] {
            assert!(saturation_temperature(pressure).is_nan());
        }
    }
}
