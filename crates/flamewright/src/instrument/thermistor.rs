//! Thermistors with negative temperature coefficient (NTC).
//!
//! Every form in use writes the reciprocal of the absolute temperature as a cubic in the logarithm of
//! the resistance, so one [`ThermistorCurve`] serves them all:
//! - Beta: 1/T = 1/T₀ + ln(R/R₀)/β (IEC 60539-1, from memory);
//! - Steinhart-Hart, three terms: 1/T = A + B ln R + C (ln R)³ with R in ohm
//!   (Steinhart and Hart, *Deep-Sea Research* 15 (1968) 497, from memory);
//! - four terms: 1/T = A + B x + C x² + D x³ with x = ln(R/R₀).

use crate::math::{exp, ln};

/// Centre, in ohm, from which the resistance for a temperature is sought; any NTC in use is near enough.
const SEARCH_CENTRE: f64 = 1.0e4;

/// 1/T as a cubic in ln(R/R₀): the coefficients of the powers 0 to 3 in 1/K, and R₀ in ohm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ThermistorCurve {
    /// R₀ in ohm.
    pub reference_resistance: f64,
    /// Coefficients of the powers 0 to 3 of ln(R/R₀), 1/K.
    pub coefficients: [f64; 4],
}

impl ThermistorCurve {
    /// From the resistance in ohm at a reference temperature in K, and Beta in K.
    #[inline]
    pub fn beta(reference_resistance: f64, reference_kelvin: f64, beta: f64) -> Self {
        Self { reference_resistance, coefficients: [1.0 / reference_kelvin, 1.0 / beta, 0.0, 0.0] }
    }

    /// From the three Steinhart-Hart coefficients in 1/K, for resistance in ohm.
    #[inline]
    pub const fn steinhart_hart(a: f64, b: f64, c: f64) -> Self {
        Self { reference_resistance: 1.0, coefficients: [a, b, 0.0, c] }
    }

    /// From the four coefficients in 1/K of the powers of ln(R/R₀), R₀ in ohm.
    #[inline]
    pub const fn four_term(reference_resistance: f64, coefficients: [f64; 4]) -> Self {
        Self { reference_resistance, coefficients }
    }

    /// Beta in K between two points of resistance in ohm and temperature in K.
    #[inline]
    pub fn beta_between(first: (f64, f64), second: (f64, f64)) -> f64 {
        ln(first.0 / second.0) / (1.0 / first.1 - 1.0 / second.1)
    }

    /// The three-term curve through three points of resistance in ohm and temperature in K.
    ///
    /// NaN coefficients where two points coincide.
    pub fn through_three(points: [(f64, f64); 3]) -> Self {
        let [(l1, y1), (l2, y2), (l3, y3)] = points.map(|(r, t)| (ln(r), 1.0 / t));
        let slope_12 = (y2 - y1) / (l2 - l1);
        let slope_13 = (y3 - y1) / (l3 - l1);
        let c = (slope_13 - slope_12) / (l3 - l2) / (l1 + l2 + l3);
        let b = slope_12 - c * (l1 * l1 + l1 * l2 + l2 * l2);
        let a = y1 - l1 * (b + c * l1 * l1);
        Self::steinhart_hart(a, b, c)
    }

    /// The four-term curve through four points of resistance in ohm and temperature in K, about R₀ in
    /// ohm. NaN coefficients where two points coincide.
    pub fn through_four(reference_resistance: f64, points: [(f64, f64); 4]) -> Self {
        let [(x1, y1), (x2, y2), (x3, y3), (x4, y4)] = points.map(|(r, t)| (ln(r / reference_resistance), 1.0 / t));
        // Newton's divided differences, then multiplied out.
        let (d12, d23, d34) = ((y2 - y1) / (x2 - x1), (y3 - y2) / (x3 - x2), (y4 - y3) / (x4 - x3));
        let (d123, d234) = ((d23 - d12) / (x3 - x1), (d34 - d23) / (x4 - x2));
        let d = (d234 - d123) / (x4 - x1);
        let c = d123 - d * (x1 + x2 + x3);
        let b = d12 - d123 * (x1 + x2) + d * (x1 * x2 + x1 * x3 + x2 * x3);
        let a = y1 - x1 * (b + x1 * (c + x1 * d));
        Self::four_term(reference_resistance, [a, b, c, d])
    }

    /// 1/T in 1/K and its slope with ln R, at a value of ln(R/R₀).
    #[inline(always)]
    fn reciprocal_and_slope(&self, x: f64) -> (f64, f64) {
        let [a, b, c, d] = self.coefficients;
        (a + x * (b + x * (c + x * d)), b + x * (2.0 * c + x * 3.0 * d))
    }

    /// Temperature in K for a resistance in ohm.
    ///
    /// NaN for a resistance that is not positive, and where the curve is not that of an NTC there (the
    /// temperature would not be positive, or would rise with the resistance): a fit far outside its
    /// points.
    #[inline]
    pub(crate) fn temperature_kelvin(&self, resistance: f64) -> f64 {
        let (reciprocal, slope) = self.reciprocal_and_slope(ln(resistance / self.reference_resistance));
        let physical = reciprocal > 0.0 && reciprocal < f64::INFINITY && slope > 0.0;
        if physical && resistance > 0.0 { 1.0 / reciprocal } else { f64::NAN }
    }

    /// Resistance in ohm at a temperature in K, the inverse of [`Self::temperature_kelvin`] by
    /// Newton's method on the logarithm. NaN where there is none.
    pub(crate) fn resistance_ohm(&self, kelvin: f64) -> f64 {
        let wanted = 1.0 / kelvin;
        let mut x = ln(SEARCH_CENTRE / self.reference_resistance);
        // The curve is nearly straight: four or five steps reach rounding. The bound is for a curve
        // that has no solution.
        for _ in 0..60 {
            let (reciprocal, slope) = self.reciprocal_and_slope(x);
            let step = (reciprocal - wanted) / slope;
            x -= step;
            if step.abs() < 1e-12 {
                let resistance = self.reference_resistance * exp(x);
                return if slope > 0.0 && kelvin > 0.0 { resistance } else { f64::NAN };
            }
        }
        f64::NAN
    }

    /// Relative change of resistance with temperature, (dR/dT)/R in 1/K, at a temperature in K where
    /// the resistance is that in ohm.
    #[inline]
    pub(crate) fn relative_sensitivity(&self, kelvin: f64, resistance: f64) -> f64 {
        let x = ln(resistance / self.reference_resistance);
        -1.0 / (kelvin * kelvin * self.reciprocal_and_slope(x).1)
    }

    /// Lowest and highest resistance in ohm that a sound thermistor may show at a temperature in K.
    ///
    /// `resistance_tolerance` is the relative half-width of the resistance at the reference
    /// temperature in K, `beta_tolerance` that of Beta, i.e. of ln(R/R₀) of the curve through the
    /// reference; both taken at their worst together.
    pub(crate) fn band_ohm(&self, kelvin: f64, reference_kelvin: f64, resistance_tolerance: f64, beta_tolerance: f64) -> (f64, f64) {
        let nominal = self.resistance_ohm(kelvin);
        let spread = exp((ln(nominal / self.resistance_ohm(reference_kelvin)) * beta_tolerance).abs());
        (nominal * (1.0 - resistance_tolerance) / spread, nominal * (1.0 + resistance_tolerance) * spread)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::vec::Vec;

    #[test]
    fn thermistor_round_trips() {
        let three = ThermistorCurve::steinhart_hart(1.129148e-3, 2.34125e-4, 8.76741e-8);
        let four = ThermistorCurve::four_term(10_000.0, [3.354016e-3, 2.569850e-4, 2.620131e-6, 6.383091e-8]);
        let mut curves = Vec::from([three, four]);
        for reference in [100.0, 5_000.0, 100_000.0] {
            curves.push(ThermistorCurve::beta(reference, 298.15, 3435.0));
        }
        for curve in curves {
            for tenth in -400..=1500 {
                let kelvin = 273.15 + f64::from(tenth) / 10.0;
                let back = curve.temperature_kelvin(curve.resistance_ohm(kelvin));
                assert!((back - kelvin).abs() < 1e-9, "{curve:?} at {kelvin}: {back}");
            }
        }
        // A curve that is no NTC: refused both ways.
        let broken = ThermistorCurve::four_term(1_000.0, [3.3e-3, -2.0e-4, 0.0, 0.0]);
        assert!(broken.temperature_kelvin(2_000.0).is_nan());
        assert!(broken.resistance_ohm(300.0).is_nan());
        for resistance in [0.0, -5.0, f64::NAN, f64::INFINITY] {
            assert!(three.temperature_kelvin(resistance).is_nan(), "{resistance}");
        }
    }

    #[test]
    fn fits_reproduce_their_own_curve() {
        let four = ThermistorCurve::four_term(10_000.0, [3.354016e-3, 2.569850e-4, 2.620131e-6, 6.383091e-8]);
        let points = [273.15, 298.15, 333.15, 363.15].map(|kelvin| (four.resistance_ohm(kelvin), kelvin));
        let fitted = ThermistorCurve::through_four(10_000.0, points);
        for kelvin in [253.15, 283.15, 313.15, 383.15] {
            let back = fitted.temperature_kelvin(four.resistance_ohm(kelvin));
            assert!((back - kelvin).abs() < 1e-8, "{kelvin}: {back}");
        }
        let three = ThermistorCurve::steinhart_hart(1.129148e-3, 2.34125e-4, 8.76741e-8);
        let points = [273.15, 313.15, 353.15].map(|kelvin| (three.resistance_ohm(kelvin), kelvin));
        let fitted = ThermistorCurve::through_three(points);
        assert!((fitted.temperature_kelvin(2_000.0) - three.temperature_kelvin(2_000.0)).abs() < 1e-9);
        let doubled = [(1_000.0, 300.0), (1_000.0, 300.0), (500.0, 320.0)];
        assert!(ThermistorCurve::through_three(doubled).temperature_kelvin(700.0).is_nan());
    }

    #[test]
    fn band_holds_the_extreme_sensors() {
        let nominal = ThermistorCurve::beta(10_000.0, 298.15, 3977.0);
        for kelvin in [263.15, 298.15, 333.15, 363.15] {
            let (lowest, highest) = nominal.band_ohm(kelvin, 298.15, 0.02, 0.0075);
            let mut extremes = Vec::new();
            for r in [0.98, 1.02] {
                for b in [0.9925, 1.0075] {
                    let sensor = ThermistorCurve::beta(10_000.0 * r, 298.15, 3977.0 * b);
                    extremes.push(sensor.resistance_ohm(kelvin));
                }
            }
            let least = extremes.iter().copied().fold(f64::INFINITY, f64::min);
            let most = extremes.iter().copied().fold(0.0, f64::max);
            assert!((least / lowest - 1.0).abs() < 1e-9, "{kelvin}: {least} {lowest}");
            assert!((most / highest - 1.0).abs() < 1e-9, "{kelvin}: {most} {highest}");
        }
    }
}
