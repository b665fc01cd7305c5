//! Water in flue gas: saturation, latent heat, condensate.
//!
//! Saturation here is a pair of quick fits to IAPWS-IF97 region 4 ([`crate::water`] has the
//! formulation itself), so that flue sums over columns need few roots and divisions. No
//! enhancement factor is applied for the other gases (it would raise the saturation pressure by
//! about 0.5 %).

use crate::combustion::species;
use crate::math;

/// Latent heat of water at 25 degC on which gross and net calorific values differ, J/mol
/// (ISO 6976:2016, Table A.5; vapour as an ideal gas).
pub const LATENT_HEAT_25C: f64 = 44_013.0;

/// Range of [`saturation_pressure`], K.
const SATURATION_RANGE: (f64, f64) = (253.15, 393.15);

/// Saturation pressure of water over a liquid surface, Pa, without a root or a division.
///
/// `temperature` in K, 253.15 to 393.15 and held at these ends beyond them. Own polynomial for the
/// fourth root of IAPWS-IF97 region 4 (R7-97(2012), equation 30), largest deviation 6e-8 of the
/// pressure; below 0 degC both extrapolate to supercooled water, over which relative humidity is
/// counted by meteorological custom.
#[must_use]
#[inline(always)]
pub fn saturation_pressure(temperature: f64) -> f64 {
    let (lowest, highest) = SATURATION_RANGE;
    // Comparisons that keep a NaN, which `clamp` by minimum and maximum would not.
    let temperature = if temperature < lowest { lowest } else { temperature };
    let temperature = if temperature > highest { highest } else { temperature };
    let x = (temperature - 323.15) * (1.0 / 70.0);
    let even = 10.542_118_79
        + x * x * (1.709_456_731_3 + x * x * (-0.019_408_612_23 + x * x * (-0.003_132_649_593_4 + x * x * 0.000_371_138_064_04)));
    let odd = 9.155_007_191_6 + x * x * (-0.291_712_832_78 + x * x * (0.020_153_676_594 - x * x * 0.000_795_857_625_63));
    let root = even + x * odd;
    let square = root * root;
    square * square
}

/// Temperature at which vapour of this partial pressure begins to condense, K.
///
/// `vapour_pressure` in Pa, 611.213 to 110 000; NaN below, where ice would form. Own quotient of
/// polynomials in the fourth root of the pressure for IAPWS-IF97 region 4 (R7-97(2012), equation
/// 31), largest deviation 5e-8 K.
#[must_use]
#[inline(always)]
pub fn dew_point(vapour_pressure: f64) -> f64 {
    const CENTRE: f64 = 11.591_682_273_480_362;
    const HALF_WIDTH: f64 = 6.619_920_594_898_357;
    let x = (math::sqrt(math::sqrt(vapour_pressure)) - CENTRE) * (1.0 / HALF_WIDTH);
    let x2 = x * x;
    let numerator = 57.863_304_376_3 + x * 113.689_642_739_5 + x2 * (71.520_866_947_41 + x * 16.878_483_545_1 + x2 * 1.182_873_248_445);
    let denominator = 1.0 + x * 1.124_274_616_514 + x2 * (0.389_731_665_545_9 + x * 0.039_200_092_227_41 - x2 * 0.000_372_607_853_604);
    let temperature = 273.15 + numerator / denominator;
    if vapour_pressure >= 611.213 { temperature } else { f64::NAN }
}

/// Enthalpy of saturated liquid water at 25 degC above that at the triple point, J/kg (IAPWS-95,
/// by CoolProp 8.0.0).
const LIQUID_ENTHALPY_25C: f64 = 104_829.222;

/// Enthalpy of liquid water on its saturation line above that at 25 degC, J/kg.
///
/// `temperature` in K, 273.15 to 373.15. Own polynomial through IAPWS-95 (CoolProp 8.0.0), largest
/// deviation 1.9 J/kg.
#[must_use]
#[inline(always)]
pub fn liquid_enthalpy_above_25c(temperature: f64) -> f64 {
    let x = (temperature - species::ENTHALPY_DATUM) * 0.01;
    x * (418_172.917 + x * (-1_994.814_67 + x * (8_554.581_01 + x * (-13_328.032_1 + x * (15_489.463_4 - x * 6_967.727_97)))))
}

/// Enthalpy of liquid water on its saturation line above that at the triple point, J/kg; range and
/// accuracy of [`liquid_enthalpy_above_25c`].
#[must_use]
pub fn liquid_enthalpy(temperature: f64) -> f64 {
    LIQUID_ENTHALPY_25C + liquid_enthalpy_above_25c(temperature)
}

/// Heat of vaporisation of water, real saturated vapour, J/kg.
///
/// `temperature` in K, 273.15 to 373.15. Own polynomial through IAPWS-95 (CoolProp 8.0.0), largest
/// deviation 0.8 J/kg. Flue losses use [`LATENT_HEAT_25C`] instead, which belongs to the calorific
/// values.
#[must_use]
pub fn heat_of_vaporisation(temperature: f64) -> f64 {
    let x = (temperature - species::ENTHALPY_DATUM) * 0.01;
    2_441_676.175
        + x * (-237_035.203 + x * (-4_393.711_71 + x * (-14_315.029_2 + x * (10_096.404_1 + x * (-13_181.349_8 + x * 5_329.204_11)))))
}
