//! The calculations `thermostat_differential` and `thermostat_repeat_test`: a control proved by its operating values.

use crate::calculation::{Calculation, Context, Form, Info, Raised, Setting, Settings, Source};
use crate::math::sqrt;
use crate::quantity::types::{Ratio, TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::units::{DEGREE_CELSIUS, KELVIN};
use crate::quantity::{Value, units};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, no_settings, rules};
use alloc::vec::Vec;

const SOURCES: &[Source] = &[
    Source::new("IEC 60730-1 (wording from memory)", "operating value, differential"),
    Source::new("JCGM 100:2008, 4.2", "standard deviation of repeated readings and of their mean"),
];
const CAUTIONS: &[&str] = &[
    "A switching point is where the sensor is, not where the water is hottest: compare at the phial or pocket.",
    "Never bridge or lift a thermostat or limit to get a reading.",
];

/// Where a thermostat opened and closed once.
#[record]
pub struct ThermostatReadings {
    /// Operating value on rising temperature: the burner stops.
    #[field("t_{off}", DEGREE_CELSIUS, -20.0..=200.0, usual = 20.0..=100.0)]
    pub cut_out_temperature: ThermodynamicTemperature,
    /// Operating value on falling temperature: the burner lights again.
    #[field("t_{on}", DEGREE_CELSIUS, -20.0..=200.0, usual = 10.0..=95.0)]
    pub cut_in_temperature: ThermodynamicTemperature,
}

/// What the two readings say.
#[record]
pub struct ThermostatDifference {
    /// Difference of the two operating values.
    #[field("\\Delta t", KELVIN)]
    pub differential: TemperatureInterval,
    /// Middle between them.
    #[field("t_m", DEGREE_CELSIUS)]
    pub mid_point: ThermodynamicTemperature,
}

/// Differential and mid-point of a thermostat from one cut-out and one cut-in.
#[derive(Clone, Copy, Debug)]
pub struct ThermostatDifferential;

no_settings!(ThermostatDifferential);

mod one {
    crate::rules! {
        refuse CUT_IN_ABOVE_CUT_OUT on "cut_in_temperature": "the burner cannot light again above the temperature at which it stopped: swap the readings, or take them again after the overshoot";
    }
    pub(super) const ALL: &[crate::calculation::Rule] = RULES;
    pub(super) const REVERSED: u32 = CUT_IN_ABOVE_CUT_OUT;
}

impl Calculation for ThermostatDifferential {
    type Input = ThermostatReadings;
    type Output = ThermostatDifference;
    const INFO: Info = Info {
        name: "thermostat_differential",
        title: "Differential of a thermostat",
        summary: "Differential and mid-point from the temperature at which a thermostat opens and the one at which it closes again.",
        sources: SOURCES,
        accuracy: "As the two readings; the probe must sit where the thermostat's sensor sits.",
        cautions: CAUTIONS,
        checked_against: "trade/sensors.csv (thermostat_differential)",
    };
    const RULES: &'static [crate::calculation::Rule] = one::ALL;

    #[inline(always)]
    fn check(&self, input: &ThermostatReadings) -> Raised {
        Raised::NONE.when(one::REVERSED, input.cut_in_temperature.si() > input.cut_out_temperature.si())
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &ThermostatReadings, working: &mut W) -> ThermostatDifference {
        let fall = TemperatureInterval::from_si(input.cut_out_temperature.si() - input.cut_in_temperature.si());
        step!(working, let differential: "\\Delta t" in KELVIN = fall, "IEC 60730-1, from memory: difference of the operating values");
        let cut_in_temperature = input.cut_in_temperature;
        step!(working, let mid_point: "t_m" in DEGREE_CELSIUS = cut_in_temperature + differential / 2.0, "middle of the operating values");
        ThermostatDifference { differential, mid_point }
    }
}

/// What a repeated test is compared with.
#[record]
pub struct RepeatTestState {
    /// Set point the cut-out is compared with.
    #[field("t_S", DEGREE_CELSIUS, -20.0..=200.0, absent = "not compared")]
    pub set_point: ThermodynamicTemperature,
}

/// What repeated readings say of a thermostat.
#[record]
pub struct RepeatTestResult {
    /// Mean operating value on rising temperature.
    #[field("\\bar t_{off}", DEGREE_CELSIUS)]
    pub mean_cut_out: ThermodynamicTemperature,
    /// Mean operating value on falling temperature.
    #[field("\\bar t_{on}", DEGREE_CELSIUS)]
    pub mean_cut_in: ThermodynamicTemperature,
    /// Mean differential.
    #[field("\\Delta t", KELVIN)]
    pub mean_differential: TemperatureInterval,
    /// Standard deviation of the cut-out readings: the repeatability.
    #[field("s_{off}", KELVIN)]
    pub cut_out_deviation: TemperatureInterval,
    /// Standard deviation of the cut-in readings.
    #[field("s_{on}", KELVIN)]
    pub cut_in_deviation: TemperatureInterval,
    /// Standard uncertainty of the mean cut-out from its scatter (type A).
    #[field("u_{off}", KELVIN)]
    pub cut_out_uncertainty: TemperatureInterval,
    /// Standard uncertainty of the mean cut-in from its scatter (type A).
    #[field("u_{on}", KELVIN)]
    pub cut_in_uncertainty: TemperatureInterval,
    /// Number of cut-out readings.
    #[field("N", ONE)]
    pub reading_count: Ratio,
    /// Mean cut-out less the set point.
    #[field("t_{off} - t_S", KELVIN, absent = "no set point given")]
    pub set_point_deviation: TemperatureInterval,
}

/// A thermostat switched several times.
#[derive(Clone, Debug, PartialEq)]
pub struct ThermostatRepeatTest {
    cut_outs: Vec<f64>,
    cut_ins: Vec<f64>,
}

const MOST_READINGS: usize = 1000;
/// Temperatures accepted, K: -20 to 200 degC.
const READINGS: core::ops::RangeInclusive<f64> = 253.15..=473.15;

impl ThermostatRepeatTest {
    /// From the cut-out and the cut-in readings, two of each at least.
    ///
    /// # Errors
    /// Too few readings, or one out of range.
    pub fn new(cut_outs: &[ThermodynamicTemperature], cut_ins: &[ThermodynamicTemperature]) -> Result<Self, Error> {
        let taken = |name: &str, readings: &[ThermodynamicTemperature]| {
            let values: Vec<f64> = readings.iter().map(|reading| reading.si()).collect();
            if values.len() < 2 {
                return Err(Error::bad_setting(name, "", "two readings at least are needed for a scatter"));
            }
            match values.iter().find(|value| !READINGS.contains(value)) {
                Some(_) => Err(Error::bad_setting(name, "", "a reading lies outside -20 °C to 200 °C")),
                None => Ok(values),
            }
        };
        Ok(Self { cut_outs: taken("cut_outs", cut_outs)?, cut_ins: taken("cut_ins", cut_ins)? })
    }
}

impl Context for ThermostatRepeatTest {
    const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "cut_outs",
            doc: "Temperatures at which the thermostat opened on rising temperature, one for each cycle.",
            form: Form::Quantities(<ThermodynamicTemperature as Value>::KIND, &units::DEGREE_CELSIUS),
            default: None,
        },
        Setting {
            name: "cut_ins",
            doc: "Temperatures at which it closed on falling temperature, one for each cycle.",
            form: Form::Quantities(<ThermodynamicTemperature as Value>::KIND, &units::DEGREE_CELSIUS),
            default: None,
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let list = |name: &str| settings.quantities::<ThermodynamicTemperature>(name, READINGS, MOST_READINGS);
        Self::new(&list("cut_outs")?, &list("cut_ins")?)
    }
}

rules! {
    refuse CUT_IN_ABOVE_CUT_OUT on "mean_differential": "the burner cannot light again above the temperature at which it stopped: swap the two lists of readings";
}

/// Mean and standard deviation. The readings are taken from the first, so that nothing cancels.
fn mean_and_deviation(readings: &[f64]) -> (f64, f64) {
    let Some(first) = readings.first() else { return (f64::NAN, f64::NAN) };
    let count = readings.len() as f64;
    let mean = readings.iter().map(|reading| reading - first).sum::<f64>() / count;
    let squares: f64 = readings.iter().map(|reading| (reading - first - mean) * (reading - first - mean)).sum();
    (first + mean, sqrt(squares / (count - 1.0)))
}

impl Calculation for ThermostatRepeatTest {
    type Input = RepeatTestState;
    type Output = RepeatTestResult;
    const INFO: Info = Info {
        name: "thermostat_repeat_test",
        title: "Repeated switching test of a thermostat",
        summary: "Mean operating values, differential and repeatability of a thermostat from several cycles, and how far its cut-out lies from the set point.",
        sources: SOURCES,
        accuracy: "The scatter of the readings is stated; what the probe adds (calibration, place) is not in it.",
        cautions: CAUTIONS,
        checked_against: "trade/sensors.csv (thermostat_repeat_test)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    fn review(&self, _input: &RepeatTestState, output: &RepeatTestResult) -> Raised {
        Raised::NONE.when(CUT_IN_ABOVE_CUT_OUT, output.mean_differential.si() < 0.0)
    }

    fn compute<W: Working>(&self, input: &RepeatTestState, working: &mut W) -> RepeatTestResult {
        let (off, off_deviation) = mean_and_deviation(&self.cut_outs);
        let (on, on_deviation) = mean_and_deviation(&self.cut_ins);
        let root_off = sqrt(self.cut_outs.len() as f64);
        let root_on = sqrt(self.cut_ins.len() as f64);
        step!(working, let mean_cut_out: "\\bar t_{off}" in DEGREE_CELSIUS = ThermodynamicTemperature::from_si(off), "mean of the readings");
        step!(working, let mean_cut_in: "\\bar t_{on}" in DEGREE_CELSIUS = ThermodynamicTemperature::from_si(on), "mean of the readings");
        step!(working, let mean_differential: "\\Delta t" in KELVIN = TemperatureInterval::from_si(off - on), "difference of the means");
        step!(working, let cut_out_deviation: "s_{off}" in KELVIN = TemperatureInterval::from_si(off_deviation), "JCGM 100:2008, 4.2.2");
        step!(working, let cut_in_deviation: "s_{on}" in KELVIN = TemperatureInterval::from_si(on_deviation), "JCGM 100:2008, 4.2.2");
        step!(working, let cut_out_uncertainty: "u_{off}" in KELVIN = cut_out_deviation / root_off, "JCGM 100:2008, 4.2.3");
        step!(working, let cut_in_uncertainty: "u_{on}" in KELVIN = cut_in_deviation / root_on, "JCGM 100:2008, 4.2.3");
        RepeatTestResult {
            mean_cut_out,
            mean_cut_in,
            mean_differential,
            cut_out_deviation,
            cut_in_deviation,
            cut_out_uncertainty,
            cut_in_uncertainty,
            reading_count: Ratio::from_si(self.cut_outs.len() as f64),
            set_point_deviation: TemperatureInterval::from_si(off - input.set_point.si()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use flamewright_reference::rows_of_kind;

    fn celsius(t: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::from_si(t + 273.15)
    }

    #[test]
    fn differential_rows_of_the_reference() {
        for row in rows_of_kind("trade/sensors.csv", "thermostat_differential") {
            let inputs = row.inputs();
            let n = |name: &str| inputs[name].0.parse::<f64>().unwrap();
            let input =
                ThermostatReadings { cut_out_temperature: celsius(n("t_off_rising")), cut_in_temperature: celsius(n("t_on_falling")) };
            let got = ThermostatDifferential.evaluate(&input).unwrap();
            let value = if row.text("output") == "differential" { got.differential.si() } else { got.mid_point.si() - 273.15 };
            assert!(row.agrees(value), "{}: {value}", row.place);
        }
        let swapped = ThermostatReadings { cut_out_temperature: celsius(70.0), cut_in_temperature: celsius(75.0) };
        assert_eq!(ThermostatDifferential.evaluate(&swapped).err().unwrap().code(), "CUT_IN_ABOVE_CUT_OUT");
    }

    #[test]
    fn repeat_rows_of_the_reference() {
        for row in rows_of_kind("trade/sensors.csv", "thermostat_repeat_test") {
            let inputs = row.inputs();
            let list = |name: &str| inputs[name].0.split('/').map(|t| celsius(t.parse().unwrap())).collect::<Vec<_>>();
            let test = ThermostatRepeatTest::new(&list("t_off_rising"), &list("t_on_falling")).unwrap();
            let got = test.evaluate(&RepeatTestState { set_point: celsius(82.0) }).unwrap();
            assert!((got.set_point_deviation.si() - (got.mean_cut_out.si() - 355.15)).abs() < 1e-12);
            let value = match row.text("output") {
                "mean_off" => got.mean_cut_out.si() - 273.15,
                "mean_on" => got.mean_cut_in.si() - 273.15,
                "mean_differential" => got.mean_differential.si(),
                "s_off" => got.cut_out_deviation.si(),
                "u_mean_off_type_A" => got.cut_out_uncertainty.si(),
                other => panic!("{other}"),
            };
            assert!(row.agrees(value), "{}: {value}", row.place);
        }
    }

    #[test]
    fn too_few_or_wild_readings_are_refused() {
        let few = ThermostatRepeatTest::new(&[celsius(80.0)], &[celsius(70.0), celsius(71.0)]);
        assert_eq!(few.err().unwrap().field(), "cut_outs");
        let wild = ThermostatRepeatTest::new(&[celsius(80.0), celsius(81.0)], &[celsius(70.0), celsius(f64::NAN)]);
        assert_eq!(wild.err().unwrap().field(), "cut_ins");
        let swapped = ThermostatRepeatTest::new(&[celsius(70.0), celsius(71.0)], &[celsius(80.0), celsius(81.0)]).unwrap();
        assert!(swapped.evaluate(&RepeatTestState::unset()).is_err());
    }
}
