//! The calculation `thermistor_temperature`: from the resistance by any curve.

use super::thermistor::ThermistorCurve;
use super::thermistor_beta::SOURCES;
use crate::calculation::{Calculation, Context, Form, Info, Raised, Setting, Settings};
use crate::quantity::types::{ElectricalResistance, TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::{Value, units};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};
use alloc::vec::Vec;

/// A thermistor measured with an ohmmeter.
#[record]
pub struct ThermistorReading {
    /// Resistance measured.
    #[field("R", OHM, 1.0..=1e7, usual = 100.0..=100_000.0)]
    pub resistance: ElectricalResistance,
}

/// What the resistance means.
#[record]
pub struct ThermistorTemperature {
    /// Temperature of the thermistor.
    #[field("t", DEGREE_CELSIUS)]
    pub temperature: ThermodynamicTemperature,
    /// Relative change of the resistance with temperature there.
    #[field("\\alpha", PERCENT_PER_KELVIN)]
    pub sensitivity: TemperatureCoefficient,
}

const OHM: Form = Form::Quantity(ElectricalResistance::KIND, &units::OHM);

impl ThermistorCurve {
    pub(super) const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "curve",
            doc: "How the thermistor is described: Beta; three Steinhart-Hart coefficients for R in ohm; four coefficients of the powers of ln(R/R₀); or \
                  points of resistance and temperature (two give Beta, three the Steinhart-Hart form, four the four-term form).",
            form: Form::Choice(&["beta", "steinhart_hart", "four_term", "points"]),
            default: None,
        },
        Setting { name: "reference_resistance", doc: "R₀, for the curves beta and four_term.", form: OHM, default: None },
        Setting {
            name: "reference_temperature",
            doc: "Temperature of R₀, for the curve beta.",
            form: Form::Quantity(ThermodynamicTemperature::KIND, &units::DEGREE_CELSIUS),
            default: Some("25 degC"),
        },
        Setting {
            name: "beta",
            doc: "Beta, for the curve beta.",
            form: Form::Quantity(TemperatureInterval::KIND, &units::KELVIN),
            default: None,
        },
        Setting {
            name: "coefficients",
            doc: "Three or four coefficients, for the curves steinhart_hart and four_term.",
            form: Form::Quantities(TemperatureCoefficient::KIND, &units::PER_KELVIN),
            default: None,
        },
        Setting {
            name: "resistances",
            doc: "Resistances of two to four points.",
            form: Form::Quantities(ElectricalResistance::KIND, &units::OHM),
            default: None,
        },
        Setting {
            name: "temperatures",
            doc: "Temperatures of the points, in the order of the resistances.",
            form: Form::Quantities(ThermodynamicTemperature::KIND, &units::DEGREE_CELSIUS),
            default: None,
        },
    ];

    pub(super) fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        #[derive(Clone, Copy)]
        enum Described {
            Beta,
            SteinhartHart,
            FourTerm,
            Points,
        }
        let resistance = || settings.quantity::<ElectricalResistance>("reference_resistance", 10.0..=1e6).map(Value::si);
        let coefficients = || -> Result<Vec<f64>, Error> {
            let given: Vec<TemperatureCoefficient> = settings.quantities("coefficients", -1.0..=1.0, 4)?;
            Ok(given.into_iter().map(Value::si).collect())
        };
        let described = settings.choice(
            "curve",
            &[
                ("beta", Described::Beta),
                ("steinhart_hart", Described::SteinhartHart),
                ("four_term", Described::FourTerm),
                ("points", Described::Points),
            ],
        )?;
        let curve = match described {
            Described::Beta => {
                let beta: TemperatureInterval = settings.quantity("beta", 1000.0..=10_000.0)?;
                let reference: ThermodynamicTemperature = settings.quantity("reference_temperature", 223.15..=473.15)?;
                Self::beta(resistance()?, reference.si(), beta.si())
            }
            Described::SteinhartHart => match coefficients()?[..] {
                [a, b, c] => Self::steinhart_hart(a, b, c),
                _ => return Err(Error::bad_setting("coefficients", "", "three are needed: A, B and C in 1/K")),
            },
            Described::FourTerm => match coefficients()?[..] {
                [a, b, c, d] => Self::four_term(resistance()?, [a, b, c, d]),
                _ => return Err(Error::bad_setting("coefficients", "", "four are needed: those of the powers 0 to 3 of ln(R/R₀), in 1/K")),
            },
            Described::Points => {
                let resistances: Vec<ElectricalResistance> = settings.quantities("resistances", 1.0..=1e7, 4)?;
                let temperatures: Vec<ThermodynamicTemperature> = settings.quantities("temperatures", 213.15..=573.15, 4)?;
                if resistances.len() != temperatures.len() {
                    return Err(Error::bad_setting("temperatures", "", "as many are needed as there are resistances"));
                }
                let mut points: Vec<(f64, f64)> = resistances.iter().map(|r| r.si()).zip(temperatures.iter().map(|t| t.si())).collect();
                points.sort_by(|a, b| a.1.total_cmp(&b.1));
                if points.windows(2).any(|pair| matches!(pair, [cold, warm] if warm.1 <= cold.1 || warm.0 >= cold.0)) {
                    return Err(Error::bad_setting("resistances", "", "they must fall from each temperature to the next higher one"));
                }
                match points[..] {
                    [first, second] => Self::beta(first.0, first.1, Self::beta_between(first, second)),
                    [first, second, third] => Self::through_three([first, second, third]),
                    [first, second, third, fourth] => Self::through_four(first.0, [first, second, third, fourth]),
                    _ => return Err(Error::bad_setting("resistances", "", "two to four points are needed")),
                }
            }
        };
        // A curve that cannot tell room temperature is no thermistor's: refused here, not at each reading.
        if curve.resistance_ohm(298.15).is_finite() {
            Ok(curve)
        } else {
            Err(Error::bad_setting("curve", "", "with these constants the resistance does not fall with temperature near 25 °C"))
        }
    }
}

/// Temperature of a thermistor from its resistance, by any curve.
#[derive(Clone, Copy, Debug)]
pub struct ThermistorByCurve {
    /// The curve.
    pub curve: ThermistorCurve,
}

impl Context for ThermistorByCurve {
    const SETTINGS: &'static [Setting] = ThermistorCurve::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        ThermistorCurve::from_settings(settings).map(|curve| Self { curve })
    }
}

rules! {
    refuse OFF_THE_CURVE on "resistance": "the curve has no temperature for this resistance: open circuit, short circuit, or the wrong curve";
    notice FAR on "resistance": "the temperature is outside -50 to 150 °C: is it the right curve?";
}

impl Calculation for ThermistorByCurve {
    type Input = ThermistorReading;
    type Output = ThermistorTemperature;
    const INFO: Info = Info {
        name: "thermistor_temperature",
        title: "Temperature of a thermistor",
        summary: "Temperature from the resistance of an NTC thermistor by Beta, by three or four coefficients, or by a curve through points.",
        sources: SOURCES,
        accuracy: "As the curve: Beta about 0.5 K between 0 and 100 °C, three terms about 0.02 K, four terms better; the tolerance of the part comes on top.",
        cautions: &[],
        checked_against: "trade/sensors.csv (steinhart_hart, ntc_four_term, ntc_beta_inverse)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline]
    fn review(&self, _: &ThermistorReading, output: &ThermistorTemperature) -> Raised {
        let kelvin = output.temperature.si();
        Raised::NONE.when(OFF_THE_CURVE, kelvin.is_nan()).when(FAR, !(223.15..=423.15).contains(&kelvin))
    }

    fn compute<W: Working>(&self, input: &ThermistorReading, working: &mut W) -> ThermistorTemperature {
        let kelvin = self.curve.temperature_kelvin(input.resistance.si());
        step!(working, let temperature: "T" = ThermodynamicTemperature::from_si(kelvin), "1/T as a cubic in ln(R/R₀)");
        step!(working, let sensitivity: "\\alpha" = TemperatureCoefficient::from_si(self.curve.relative_sensitivity(kelvin, input.resistance.si())), "derivative of the same");
        ThermistorTemperature { temperature, sensitivity }
    }
}
