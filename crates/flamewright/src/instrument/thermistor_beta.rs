//! The calculations `thermistor_beta` and `thermistor_beta_of_points`: the two-constant form.

use super::thermistor::ThermistorCurve;
use crate::calculation::{Calculation, Info, Raised, Source};
use crate::quantity::Value;
use crate::quantity::types::{ElectricalResistance, TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::units::{KELVIN, PERCENT_PER_KELVIN};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A thermistor of known Beta measured with an ohmmeter.
#[record]
pub struct BetaReading {
    /// Resistance measured.
    #[field("R", OHM, 1.0..=1e7, usual = 100.0..=100_000.0)]
    pub resistance: ElectricalResistance,
    /// Resistance at the reference temperature (R25 of most data sheets).
    #[field("R_0", OHM, 10.0..=1e6, usual = 1000.0..=100_000.0)]
    pub reference_resistance: ElectricalResistance,
    /// Reference temperature.
    #[field("t_0", DEGREE_CELSIUS, -50.0..=200.0, default = 25.0, usual = 20.0..=25.0)]
    pub reference_temperature: ThermodynamicTemperature,
    /// Beta of the thermistor.
    #[field("\\beta", KELVIN, 1000.0..=10_000.0, usual = 2800.0..=4600.0)]
    pub beta: TemperatureInterval,
}

/// What the resistance means.
#[record]
pub struct BetaTemperature {
    /// Temperature of the thermistor.
    #[field("t", DEGREE_CELSIUS)]
    pub temperature: ThermodynamicTemperature,
    /// Relative change of the resistance with temperature there.
    #[field("\\alpha", PERCENT_PER_KELVIN)]
    pub sensitivity: TemperatureCoefficient,
}

pub(super) const SOURCES: &[Source] = &[
    Source::new("Beta equation as in IEC 60539-1, from memory", "1/T = 1/T₀ + ln(R/R₀)/β"),
    Source::new("Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory", "three-term and four-term forms"),
];

/// Temperature of a thermistor from its resistance and Beta.
#[derive(Clone, Copy, Debug)]
pub struct ThermistorBeta;

no_settings!(ThermistorBeta);

impl Calculation for ThermistorBeta {
    type Input = BetaReading;
    type Output = BetaTemperature;
    const INFO: Info = Info {
        name: "thermistor_beta",
        title: "Temperature of a thermistor from Beta",
        summary: "Temperature from the resistance, the resistance at a reference temperature and Beta. The constants are inputs, so their tolerances propagate.",
        sources: SOURCES,
        accuracy: "Beta between 25 and 85 °C describes a typical thermistor to about 0.5 K between 0 and 100 °C, worse beyond; the tolerances of R₀ and β come on top.",
        cautions: &[],
        checked_against: "trade/sensors.csv (ntc_beta_inverse, ntc_four_term, ntc_uncertainty)",
    };

    fn compute<W: Working>(&self, input: &BetaReading, working: &mut W) -> BetaTemperature {
        let curve = ThermistorCurve::beta(input.reference_resistance.si(), input.reference_temperature.si(), input.beta.si());
        let kelvin = curve.temperature_kelvin(input.resistance.si());
        let beta = input.beta;
        step!(working, let temperature: "T" = ThermodynamicTemperature::from_si(kelvin), "1/T = 1/T₀ + ln(R/R₀)/β");
        step!(working, let sensitivity: "\\alpha" in PERCENT_PER_KELVIN = TemperatureCoefficient::from_si(-beta.si() / (temperature.si() * temperature.si())), "derivative of the same");
        BetaTemperature { temperature, sensitivity }
    }
}

/// Two points of a thermistor.
#[record]
pub struct TwoPoints {
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
}

/// Beta between two points.
#[record]
pub struct BetaOfPoints {
    /// Beta of the thermistor between the two temperatures.
    #[field("\\beta", KELVIN)]
    pub beta: TemperatureInterval,
}

rules! {
    refuse SAME_POINT on "second_temperature": "the two points have one temperature or one resistance: nothing lies between them";
    refuse NOT_FALLING on "second_resistance": "the resistance rises with the temperature: no NTC, or the points are mixed up";
    notice CLOSE_POINTS on "second_temperature": "the points are less than 10 K apart: small errors of either make a large one of Beta";
}

/// Beta from two points of resistance and temperature.
#[derive(Clone, Copy, Debug)]
pub struct ThermistorBetaOfPoints;

no_settings!(ThermistorBetaOfPoints);

impl Calculation for ThermistorBetaOfPoints {
    type Input = TwoPoints;
    type Output = BetaOfPoints;
    const INFO: Info = Info {
        name: "thermistor_beta_of_points",
        title: "Beta of a thermistor from two points",
        summary: "Beta between two points of resistance and temperature, of a data sheet or measured.",
        sources: SOURCES,
        accuracy: "Exact for the points given.",
        cautions: &[],
        checked_against: "trade/sensors.csv (ntc_beta_from_two_points)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline]
    fn check(&self, input: &TwoPoints) -> Raised {
        let warming = input.second_temperature.si() - input.first_temperature.si();
        let rise = input.second_resistance.si() - input.first_resistance.si();
        Raised::NONE
            .when(SAME_POINT, warming == 0.0 || rise == 0.0)
            .when(NOT_FALLING, warming * rise > 0.0)
            .when(CLOSE_POINTS, warming.abs() < 10.0)
    }

    fn compute<W: Working>(&self, input: &TwoPoints, working: &mut W) -> BetaOfPoints {
        let between = ThermistorCurve::beta_between(
            (input.first_resistance.si(), input.first_temperature.si()),
            (input.second_resistance.si(), input.second_temperature.si()),
        );
        step!(working, let beta: "\\beta" in KELVIN = TemperatureInterval::from_si(between), "ln(R₁/R₂) / (1/T₁ - 1/T₂)");
        BetaOfPoints { beta }
    }
}
