//! The calculation `thermistor_fit`: the three Steinhart-Hart coefficients through three points.

use super::thermistor::ThermistorCurve;
use super::thermistor_beta::SOURCES;
use crate::calculation::{Calculation, Info, Raised};
use crate::quantity::Value;
use crate::quantity::types::{ElectricalResistance, TemperatureCoefficient, ThermodynamicTemperature};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// Three points of a thermistor.
#[record]
pub struct ThreePoints {
    /// Resistance at the first temperature.
    #[field("R_1", OHM, 1.0..=1e7)]
    pub first_resistance: ElectricalResistance,
    /// First temperature.
    #[field("t_1", DEGREE_CELSIUS, -60.0..=300.0)]
    pub first_temperature: ThermodynamicTemperature,
    /// Resistance at the second temperature.
    #[field("R_2", OHM, 1.0..=1e7)]
    pub second_resistance: ElectricalResistance,
    /// Second temperature.
    #[field("t_2", DEGREE_CELSIUS, -60.0..=300.0)]
    pub second_temperature: ThermodynamicTemperature,
    /// Resistance at the third temperature.
    #[field("R_3", OHM, 1.0..=1e7)]
    pub third_resistance: ElectricalResistance,
    /// Third temperature.
    #[field("t_3", DEGREE_CELSIUS, -60.0..=300.0)]
    pub third_temperature: ThermodynamicTemperature,
    /// A resistance to be turned into a temperature with the fit.
    #[field("R", OHM, 1.0..=1e7, absent = "none asked")]
    pub resistance: ElectricalResistance,
}

/// The curve through them: 1/T = A + B ln R + C (ln R)³, R in ohm.
#[record]
pub struct SteinhartHart {
    /// Coefficient A.
    #[field("A", PER_KELVIN)]
    pub coefficient_a: TemperatureCoefficient,
    /// Coefficient B, of ln R.
    #[field("B", PER_KELVIN)]
    pub coefficient_b: TemperatureCoefficient,
    /// Coefficient C, of (ln R)³.
    #[field("C", PER_KELVIN)]
    pub coefficient_c: TemperatureCoefficient,
    /// Temperature for the resistance asked.
    #[field("t", DEGREE_CELSIUS, absent = "no resistance was asked for, or the curve has no temperature there")]
    pub temperature: ThermodynamicTemperature,
}

rules! {
    refuse NOT_FALLING on "third_temperature": "the resistance must fall from each temperature to the next higher one: points mixed up or given twice, or no NTC";
    notice EXTRAPOLATED on "resistance": "the resistance lies outside the three points: the fit is not sure there";
    notice CLOSE_POINTS on "third_temperature": "two points are less than 5 K apart: small errors of either make large ones of the coefficients";
}

/// The three Steinhart-Hart coefficients through three points.
#[derive(Clone, Copy, Debug)]
pub struct ThermistorFit;

no_settings!(ThermistorFit);

impl ThreePoints {
    fn points(&self) -> [(f64, f64); 3] {
        [
            (self.first_resistance.si(), self.first_temperature.si()),
            (self.second_resistance.si(), self.second_temperature.si()),
            (self.third_resistance.si(), self.third_temperature.si()),
        ]
    }
}

impl Calculation for ThermistorFit {
    type Input = ThreePoints;
    type Output = SteinhartHart;
    const INFO: Info = Info {
        name: "thermistor_fit",
        title: "Steinhart-Hart coefficients from three points",
        summary: "The three-term curve through three points of resistance and temperature, and the temperature it gives for another resistance.",
        sources: SOURCES,
        accuracy: "Between points 0, 40 and 85 °C the curve follows a typical thermistor to about 0.01 K; outside the points it strays.",
        cautions: &[],
        checked_against: "trade/sensors.csv (steinhart_hart_three_point_fit)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline]
    fn check(&self, input: &ThreePoints) -> Raised {
        let [first, second, third] = input.points();
        let falls = |a: (f64, f64), b: (f64, f64)| (b.1 - a.1) * (b.0 - a.0) < 0.0;
        let close = |a: (f64, f64), b: (f64, f64)| (b.1 - a.1).abs() < 5.0;
        let (lowest, highest) = (first.0.min(second.0).min(third.0), first.0.max(second.0).max(third.0));
        Raised::NONE
            .when(NOT_FALLING, !(falls(first, second) && falls(second, third) && falls(first, third)))
            .when(CLOSE_POINTS, close(first, second) || close(second, third) || close(first, third))
            .when(EXTRAPOLATED, input.resistance.si() < lowest || input.resistance.si() > highest)
    }

    fn compute<W: Working>(&self, input: &ThreePoints, working: &mut W) -> SteinhartHart {
        let curve = ThermistorCurve::through_three(input.points());
        let [a, b, _, c] = curve.coefficients;
        let kelvin = curve.temperature_kelvin(input.resistance.si());
        step!(working, let coefficient_a: "A" = TemperatureCoefficient::from_si(a), "1/T = A + B ln R + C (ln R)³ at the three points");
        step!(working, let coefficient_b: "B" = TemperatureCoefficient::from_si(b), "1/T = A + B ln R + C (ln R)³ at the three points");
        step!(working, let coefficient_c: "C" = TemperatureCoefficient::from_si(c), "1/T = A + B ln R + C (ln R)³ at the three points");
        step!(working, let temperature: "T" = ThermodynamicTemperature::from_si(kelvin), "1/T = A + B ln R + C (ln R)³");
        SteinhartHart { coefficient_a, coefficient_b, coefficient_c, temperature }
    }
}
