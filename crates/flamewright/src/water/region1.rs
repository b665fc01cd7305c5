//! Region 1 (liquid) of the IAPWS Industrial Formulation 1997, release R7-97(2012), equation 7,
//! coefficients of its Table 2.

/// Specific gas constant of water in J/(kg K), R7-97(2012) equation 1.
pub(crate) const GAS_CONSTANT: f64 = 461.526;
/// Reducing pressure of region 1 in Pa, R7-97(2012) section 5.1.
const REDUCING_PRESSURE: f64 = 16.53e6;
/// Reducing temperature of region 1 in K, R7-97(2012) section 5.1.
const REDUCING_TEMPERATURE: f64 = 1386.0;
/// Lowest temperature of region 1 in K.
pub(crate) const LOWEST_TEMPERATURE: f64 = 273.15;
/// Highest temperature of region 1 in K.
pub(crate) const HIGHEST_TEMPERATURE: f64 = 623.15;
/// Highest pressure of region 1 in Pa.
pub(crate) const HIGHEST_PRESSURE: f64 = 100.0e6;

/// Thermodynamic properties of liquid water, in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Region1 {
    /// Specific volume in m³/kg.
    pub specific_volume: f64,
    /// Specific enthalpy in J/kg, zero internal energy at the triple point.
    pub enthalpy: f64,
    /// Specific entropy in J/(kg K), zero at the triple point.
    pub entropy: f64,
    /// Specific heat capacity at constant pressure in J/(kg K).
    pub specific_heat_capacity: f64,
    /// Specific heat capacity at constant volume in J/(kg K).
    pub specific_heat_capacity_at_constant_volume: f64,
    /// Speed of sound in m/s, squared: the root is left to who needs it.
    pub speed_of_sound_squared: f64,
    /// Isobaric expansion coefficient in 1/K, negative below about 4 °C.
    pub expansion_coefficient: f64,
    /// Isothermal compressibility in 1/Pa.
    pub compressibility: f64,
}

/// Sums a row of `coefficient * b^J` three ways: plain, times J, and times J (J - 1).
macro_rules! row {
    ($($coefficient:literal, $exponent:literal, $power:expr;)+) => {
        (
            0.0 $(+ $coefficient * $power)+,
            0.0 $(+ ($coefficient * $exponent) * $power)+,
            0.0 $(+ ($coefficient * $exponent * ($exponent - 1.0)) * $power)+,
        )
    };
}

/// Thermodynamic properties at an absolute pressure in Pa and a temperature in K.
///
/// Straight-line: powers by products only, each of the 34 terms formed once and shared by all the
/// derivatives. Inlined, so that a caller pays only for the fields it reads. NaN outside
/// 273.15 K to 623.15 K and 0 to 100 MPa. It does not look whether the water would be steam there
/// (IF97 holds for metastable liquid close to saturation too); see
/// [`saturation_pressure`](super::saturation_pressure).
#[inline(always)]
pub fn region1(pressure: f64, temperature: f64) -> Region1 {
    let inside = (pressure > 0.0) & (pressure <= HIGHEST_PRESSURE) & (LOWEST_TEMPERATURE..=HIGHEST_TEMPERATURE).contains(&temperature);
    let temperature = if inside { temperature } else { f64::NAN };

    let reduced_pressure = pressure * (1.0 / REDUCING_PRESSURE);
    let inverse_temperature = 1.0 / temperature;
    let tau = REDUCING_TEMPERATURE * inverse_temperature;
    let a = 7.1 - reduced_pressure;
    let b = tau - 1.222;
    let c = 1.0 / b;

    // Powers of b and of its inverse c.
    let (b2, c2) = (b * b, c * c);
    let (b3, c3) = (b2 * b, c2 * c);
    let (b4, c4) = (b2 * b2, c2 * c2);
    let b5 = b3 * b2;
    let b6 = b3 * b3;
    let b10 = b5 * b5;
    let b17 = b10 * b5 * b2;
    let c5 = c3 * c2;
    let c6 = c3 * c3;
    let c7 = c4 * c3;
    let c8 = c4 * c4;
    let c9 = c5 * c4;
    let c11 = c6 * c5;
    // Powers of a.
    let a2 = a * a;
    let a3 = a2 * a;
    let a4 = a2 * a2;
    let a5 = a3 * a2;
    let a8 = a4 * a4;

    // One row for each exponent I of a; in a row the exponents J of b.
    let (s0, j0, jj0) = row! {
        0.146_329_712_131_67, -2.0, c2;
        -0.845_481_871_691_14, -1.0, c;
        -3.756_360_367_204_0, 0.0, 1.0;
        3.385_516_916_838_5, 1.0, b;
        -0.957_919_633_878_72, 2.0, b2;
        0.157_720_385_132_28, 3.0, b3;
        -0.016_616_417_199_501, 4.0, b4;
        0.000_812_146_299_835_68, 5.0, b5;
    };
    let (s1, j1, jj1) = row! {
        0.000_283_190_801_238_04, -9.0, c9;
        -0.000_607_063_015_658_74, -7.0, c7;
        -0.018_990_068_218_419, -1.0, c;
        -0.032_529_748_770_505, 0.0, 1.0;
        -0.021_841_717_175_414, 1.0, b;
        -0.528_383_579_699_30e-4, 3.0, b3;
    };
    let (s2, j2, jj2) = row! {
        -0.000_471_843_210_732_67, -3.0, c3;
        -0.000_300_017_807_930_26, 0.0, 1.0;
        0.476_613_939_069_87e-4, 1.0, b;
        -0.441_418_453_308_46e-5, 3.0, b3;
        -0.726_949_962_975_94e-15, 17.0, b17;
    };
    let (s3, j3, jj3) = row! {
        -0.316_796_448_450_54e-4, -4.0, c4;
        -0.282_707_979_853_12e-5, 0.0, 1.0;
        -0.852_051_281_201_03e-9, 6.0, b6;
    };
    let (s4, j4, jj4) = row! {
        -0.224_252_819_080_00e-5, -5.0, c5;
        -0.651_712_228_956_01e-6, -2.0, c2;
        -0.143_417_299_379_24e-12, 10.0, b10;
    };
    let (s5, j5, jj5) = row! {
        -0.405_169_968_601_17e-6, -8.0, c8;
    };
    let (s8, j8, jj8) = row! {
        -0.127_343_017_416_41e-8, -11.0, c11;
        -0.174_248_712_306_34e-9, -6.0, c6;
    };
    // The six terms of high order are a^21 b^-29 and that times powers of r = a / b and of 1/b.
    let r = a * c;
    let r2 = r * r;
    let r4 = r2 * r2;
    let r8 = r4 * r4;
    let r16 = r8 * r8;
    let high = r16 * r4 * r * c8;
    let r8c = r8 * c;
    let t21 = -0.687_621_312_955_31e-18 * high;
    let t23 = 0.144_783_078_285_21e-19 * (high * r2);
    let t29 = 0.263_357_816_627_95e-22 * (high * r8c);
    let t30 = -0.119_476_226_400_71e-22 * (high * r8c * r);
    let t31 = 0.182_280_945_814_04e-23 * (high * r8c * r2);
    let t32 = -0.935_370_872_924_58e-25 * (high * r8c * (r2 * r));

    // Whole sums over n a^I b^J with the weights that the derivatives need.
    let sum = (s0 + a * s1 + a2 * s2 + a3 * s3) + (a4 * s4 + a5 * s5 + a8 * s8) + ((t21 + t23) + (t29 + t30) + (t31 + t32));
    let sum_i = (a * s1 + 2.0 * a2 * s2 + 3.0 * a3 * s3)
        + (4.0 * a4 * s4 + 5.0 * a5 * s5 + 8.0 * a8 * s8)
        + ((21.0 * t21 + 23.0 * t23) + (29.0 * t29 + 30.0 * t30) + (31.0 * t31 + 32.0 * t32));
    let sum_ii = (2.0 * a2 * s2 + 6.0 * a3 * s3)
        + (12.0 * a4 * s4 + 20.0 * a5 * s5 + 56.0 * a8 * s8)
        + ((420.0 * t21 + 506.0 * t23) + (812.0 * t29 + 870.0 * t30) + (930.0 * t31 + 992.0 * t32));
    let sum_j = (j0 + a * j1 + a2 * j2 + a3 * j3) + (a4 * j4 + a5 * j5 + a8 * j8)
        - ((29.0 * t21 + 31.0 * t23) + (38.0 * t29 + 39.0 * t30) + (40.0 * t31 + 41.0 * t32));
    let sum_ij = (a * j1 + 2.0 * a2 * j2 + 3.0 * a3 * j3) + (4.0 * a4 * j4 + 5.0 * a5 * j5 + 8.0 * a8 * j8)
        - ((609.0 * t21 + 713.0 * t23) + (1102.0 * t29 + 1170.0 * t30) + (1240.0 * t31 + 1312.0 * t32));
    let sum_jj = (jj0 + a * jj1 + a2 * jj2 + a3 * jj3)
        + (a4 * jj4 + a5 * jj5 + a8 * jj8)
        + ((870.0 * t21 + 992.0 * t23) + (1482.0 * t29 + 1560.0 * t30) + (1640.0 * t31 + 1722.0 * t32));

    // Derivatives of the reduced Gibbs energy by pi and tau (R7-97(2012) Table 4). Those by pi are
    // kept without their factors of -1/a until a ratio shows that one is needed.
    let inverse_a = 1.0 / a;
    let gamma_pi = -sum_i * inverse_a;
    let gamma_pi_pi = sum_ii * inverse_a * inverse_a;
    let tau_gamma_tau = tau * c * sum_j;
    let tau_c = tau * c;
    let tau_tau_gamma_tau_tau = tau_c * tau_c * sum_jj;
    let tau_gamma_pi_tau = -tau_c * sum_ij * inverse_a;
    let mixed = gamma_pi - tau_gamma_pi_tau;

    // R7-97(2012) Table 3.
    let rt = GAS_CONSTANT * temperature;
    Region1 {
        specific_volume: rt * gamma_pi * (1.0 / REDUCING_PRESSURE),
        enthalpy: rt * tau_gamma_tau,
        entropy: GAS_CONSTANT * (tau_gamma_tau - sum),
        specific_heat_capacity: -GAS_CONSTANT * tau_tau_gamma_tau_tau,
        specific_heat_capacity_at_constant_volume: GAS_CONSTANT * (mixed * mixed / gamma_pi_pi - tau_tau_gamma_tau_tau),
        speed_of_sound_squared: rt * gamma_pi * gamma_pi / (mixed * mixed / tau_tau_gamma_tau_tau - gamma_pi_pi),
        expansion_coefficient: mixed / gamma_pi * inverse_temperature,
        compressibility: -gamma_pi_pi / gamma_pi * (1.0 / REDUCING_PRESSURE),
    }
}
