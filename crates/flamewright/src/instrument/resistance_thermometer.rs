//! Platinum resistance thermometers (Pt100, Pt1000 and others) by IEC 60751.
//!
//! Source: IEC 60751:2008, clause 4.2 (the Callendar-Van Dusen form, temperature on ITS-90);
//! coefficients and the class formulae as given alike in several public reproductions, the standard
//! itself not opened.

use crate::math::sqrt;

/// Coefficient of t, 1/°C.
pub(crate) const A: f64 = 3.9083e-3;
/// Coefficient of t², 1/°C².
pub(crate) const B: f64 = -5.775e-7;
/// Coefficient of (t - 100 °C) t³, 1/°C⁴, below 0 °C only.
pub(crate) const C: f64 = -4.183e-12;

/// Lowest and highest temperature of the IEC 60751 relation, °C.
pub(crate) const RANGE_CELSIUS: (f64, f64) = (-200.0, 850.0);

/// Ratio R/R0 and its slope in 1/K, without the range check. `c` is [`C`] below 0 °C, 0 above.
#[inline(always)]
fn ratio_and_slope(celsius: f64, c: f64) -> (f64, f64) {
    let t = celsius;
    let ratio = 1.0 + t * (A + t * (B + t * c * (t - 100.0)));
    let slope = A + t * (2.0 * B + t * c * (4.0 * t - 300.0));
    (ratio, slope)
}

#[inline(always)]
fn cold_coefficient(below_zero: bool) -> f64 {
    if below_zero { C } else { 0.0 }
}

/// Resistance at a temperature in °C as a ratio to the resistance at 0 °C.
///
/// -200 to 850 °C, NaN outside.
#[inline]
pub(crate) fn resistance_ratio(celsius: f64) -> f64 {
    let (ratio, _) = ratio_and_slope(celsius, cold_coefficient(celsius < 0.0));
    if celsius >= RANGE_CELSIUS.0 && celsius <= RANGE_CELSIUS.1 { ratio } else { f64::NAN }
}

/// Slope of [`resistance_ratio`] in 1/K; NaN outside -200 to 850 °C.
#[inline]
pub(crate) fn resistance_ratio_slope(celsius: f64) -> f64 {
    let (_, slope) = ratio_and_slope(celsius, cold_coefficient(celsius < 0.0));
    if celsius >= RANGE_CELSIUS.0 && celsius <= RANGE_CELSIUS.1 { slope } else { f64::NAN }
}

/// Temperature in °C from the ratio of the resistance to the resistance at 0 °C.
///
/// The quadratic is solved in closed form; below 0 °C its root, once corrected for the fourth-order
/// term, starts two Newton steps. Above 0 °C those steps change nothing but rounding, and keeping them
/// keeps the function free of branches.
#[inline]
pub(crate) fn temperature_celsius(ratio: f64) -> f64 {
    let c = cold_coefficient(ratio < 1.0);
    // The form of the root that does not cancel near 0 °C.
    let root = |excess: f64| 2.0 * excess / (A + sqrt(A * A + 4.0 * B * excess));
    let first = root(ratio - 1.0);
    let start = root(ratio - 1.0 - c * (first - 100.0) * first * first * first);
    let (value, slope) = ratio_and_slope(start, c);
    let nearer = start - (value - ratio) / slope;
    let (value, slope) = ratio_and_slope(nearer, c);
    let celsius = nearer - (value - ratio) / slope;
    // A few roundings of room, so that the ends of the range come back.
    let inside = celsius >= RANGE_CELSIUS.0 - 1e-9 && celsius <= RANGE_CELSIUS.1 + 1e-9;
    if inside { celsius } else { f64::NAN }
}

/// Tolerance class of a platinum thermometer, IEC 60751:2008.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PlatinumClass {
    /// 0.1 K + 0.0017 |t|.
    AA,
    /// 0.15 K + 0.002 |t|.
    A,
    /// 0.3 K + 0.005 |t|.
    B,
    /// 0.6 K + 0.01 |t|.
    C,
}

/// How the platinum resistor is made; it decides how far a tolerance class reaches.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum PlatinumConstruction {
    /// Wire-wound.
    #[default]
    Wire,
    /// Film on a carrier.
    Film,
}

impl PlatinumClass {
    /// Half-width in K of the tolerance at a temperature in °C.
    ///
    /// The formula alone: whether the class reaches that temperature is [`Self::range_celsius`].
    #[inline]
    pub(crate) fn tolerance_kelvin(self, celsius: f64) -> f64 {
        let (constant, slope) = match self {
            Self::AA => (0.1, 0.0017),
            Self::A => (0.15, 0.002),
            Self::B => (0.3, 0.005),
            Self::C => (0.6, 0.01),
        };
        constant + slope * celsius.abs()
    }

    /// Temperatures in °C over which IEC 60751:2008 defines the class for thermometers.
    ///
    /// From memory; the standard was not opened.
    pub(crate) const fn range_celsius(self, construction: PlatinumConstruction) -> (f64, f64) {
        match (self, construction) {
            (Self::AA, PlatinumConstruction::Wire) => (-50.0, 250.0),
            (Self::AA, PlatinumConstruction::Film) => (0.0, 150.0),
            (Self::A, PlatinumConstruction::Wire) => (-100.0, 450.0),
            (Self::A, PlatinumConstruction::Film) => (-30.0, 300.0),
            (Self::B | Self::C, PlatinumConstruction::Wire) => (-196.0, 600.0),
            (Self::B, PlatinumConstruction::Film) => (-50.0, 500.0),
            (Self::C, PlatinumConstruction::Film) => (-50.0, 600.0),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn platinum_round_trip_over_the_full_range() {
        let (lowest, highest) = RANGE_CELSIUS;
        let mut worst = 0.0_f64;
        for i in 0..=100_000 {
            let t = lowest + (highest - lowest) * f64::from(i) / 100_000.0;
            let back = temperature_celsius(resistance_ratio(t));
            assert!(back.is_finite(), "{t}");
            worst = worst.max((back - t).abs());
        }
        assert!(worst < 1e-9, "{worst}");
        assert_eq!(temperature_celsius(1.0), 0.0);
        for outside in [-200.1, 850.1, f64::NAN, f64::INFINITY] {
            assert!(resistance_ratio(outside).is_nan());
        }
        for outside in [0.18, 3.95, -1.0, 20.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert!(temperature_celsius(outside).is_nan(), "{outside}");
        }
    }
}
