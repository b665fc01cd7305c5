//! The calculation `thermostat_test`: where a thermostat switches, from repeated readings.

use super::thermostat::Repeats;
use super::thermostat_differential::CAUTIONS;
use crate::calculation::{Calculation, Context, Form, Info, Raised, Setting, Settings, Source};
use crate::quantity::types::{TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::{Value, units};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};
use alloc::vec::Vec;

/// What the thermostat is set to.
#[record]
pub struct ThermostatSetting {
    /// Temperature the thermostat is set to.
    #[field("t_{set}", DEGREE_CELSIUS, -30.0..=150.0, absent = "not stated")]
    pub set_point: ThermodynamicTemperature,
}

/// How the thermostat behaved.
#[record]
pub struct ThermostatBehaviour {
    /// Mean operating value on rising temperature: the burner stops.
    #[field("\\bar t_{off}", DEGREE_CELSIUS)]
    pub cut_out: ThermodynamicTemperature,
    /// Mean operating value on falling temperature: the burner lights again.
    #[field("\\bar t_{on}", DEGREE_CELSIUS)]
    pub cut_in: ThermodynamicTemperature,
    /// Differential: cut-out less cut-in, a difference and not a temperature.
    #[field("\\Delta t", KELVIN)]
    pub differential: TemperatureInterval,
    /// Middle between cut-out and cut-in.
    #[field("t_m", DEGREE_CELSIUS)]
    pub mid_point: ThermodynamicTemperature,
    /// Cut-out less set point.
    #[field("\\Delta t_{set}", KELVIN, absent = "no set point was stated")]
    pub offset: TemperatureInterval,
    /// Repeatability of the cut-out: experimental standard deviation of one reading.
    #[field("s_{off}", KELVIN, absent = "fewer than two readings")]
    pub cut_out_repeatability: TemperatureInterval,
    /// Repeatability of the cut-in.
    #[field("s_{on}", KELVIN, absent = "fewer than two readings")]
    pub cut_in_repeatability: TemperatureInterval,
    /// Standard uncertainty of the mean cut-out, type A.
    #[field("u_{off}", KELVIN, absent = "fewer than two readings")]
    pub cut_out_uncertainty: TemperatureInterval,
    /// Standard uncertainty of the mean cut-in, type A.
    #[field("u_{on}", KELVIN, absent = "fewer than two readings")]
    pub cut_in_uncertainty: TemperatureInterval,
    /// Highest less lowest cut-out.
    #[field("r_{off}", KELVIN)]
    pub cut_out_spread: TemperatureInterval,
    /// Highest less lowest cut-in.
    #[field("r_{on}", KELVIN)]
    pub cut_in_spread: TemperatureInterval,
    /// Drift of the cut-out from one cycle to the next, from a straight line through the readings in their order.
    #[field("d_{off}", KELVIN, absent = "fewer than two readings")]
    pub cut_out_drift: TemperatureInterval,
    /// Drift of the cut-in from one cycle to the next.
    #[field("d_{on}", KELVIN, absent = "fewer than two readings")]
    pub cut_in_drift: TemperatureInterval,
    /// Standard uncertainty of the drift of the cut-out per cycle.
    #[field("u_{d,off}", KELVIN, absent = "fewer than three readings")]
    pub cut_out_drift_uncertainty: TemperatureInterval,
}

/// Where a thermostat switches, from readings.
#[derive(Clone, Debug)]
pub struct ThermostatTest {
    off: Repeats,
    on: Repeats,
}

/// Most readings of one operating value.
const MOST: usize = 1000;

impl ThermostatTest {
    /// From the temperatures at which it switched off on the rise and on again on the fall, each in the order they were taken.
    #[must_use]
    pub fn new(cut_outs: &[ThermodynamicTemperature], cut_ins: &[ThermodynamicTemperature]) -> Self {
        let of = |readings: &[ThermodynamicTemperature]| Repeats::of(&readings.iter().map(|t| t.si()).collect::<Vec<_>>());
        Self { off: of(cut_outs), on: of(cut_ins) }
    }
}

impl Context for ThermostatTest {
    const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "cut_outs",
            doc: "Temperatures at which the contact opened on the rise, in order.",
            form: Form::Quantities(ThermodynamicTemperature::KIND, &units::DEGREE_CELSIUS),
            default: None,
        },
        Setting {
            name: "cut_ins",
            doc: "Temperatures at which the contact closed again on the fall, in order.",
            form: Form::Quantities(ThermodynamicTemperature::KIND, &units::DEGREE_CELSIUS),
            default: None,
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let readings = |name| -> Result<Vec<ThermodynamicTemperature>, Error> {
            let given = settings.quantities(name, 243.15..=473.15, MOST)?;
            if given.is_empty() { Err(Error::missing(name, "at least one reading is needed")) } else { Ok(given) }
        };
        Ok(Self::new(&readings("cut_outs")?, &readings("cut_ins")?))
    }
}

rules! {
    refuse NEGATIVE_DIFFERENTIAL on "differential": "it switches on again at a higher temperature than it switched off: readings exchanged, or the thermometer lags behind the sensor";
    notice FEW_READINGS on "cut_out_repeatability": "fewer than three cycles: repeatability and drift are not known";
    notice DRIFTING on "cut_out_drift": "the cut-out drifts by more than twice its standard uncertainty: the block was not yet steady, or the thermostat is failing";
}

impl Calculation for ThermostatTest {
    type Input = ThermostatSetting;
    type Output = ThermostatBehaviour;
    const INFO: Info = Info {
        name: "thermostat_test",
        title: "Thermostat test",
        summary: "Cut-out, cut-in, differential, repeatability and drift of a control thermostat from repeated readings. Not for judging a limit thermostat.",
        sources: &[
            Source::new("IEC 60730-1 and -2-9 (wording from memory)", "operating value, differential"),
            Source::new("JCGM 100:2008, 4.2", "standard deviation of repeated readings and of their mean"),
            Source::new("least-squares line, textbook", "drift and its uncertainty"),
        ],
        accuracy: "That of the thermometer and of its contact; a probe that lags reads the cut-out low and the cut-in high. The lag is not in the uncertainties given.",
        cautions: CAUTIONS,
        checked_against: "trade/sensors.csv (thermostat_differential, thermostat_repeat_test)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline]
    fn review(&self, _: &ThermostatSetting, output: &ThermostatBehaviour) -> Raised {
        let drift = output.cut_out_drift.si().abs();
        Raised::NONE
            .when(NEGATIVE_DIFFERENTIAL, output.differential.si() < 0.0)
            .when(FEW_READINGS, self.off.count.min(self.on.count) < 3)
            .when(DRIFTING, drift > 1e-9 && drift > 2.0 * output.cut_out_drift_uncertainty.si())
    }

    fn compute<W: Working>(&self, input: &ThermostatSetting, working: &mut W) -> ThermostatBehaviour {
        let interval = TemperatureInterval::from_si;
        step!(working, let cut_out: "\\bar t_{off}" = ThermodynamicTemperature::from_si(self.off.mean), "mean of the readings");
        step!(working, let cut_in: "\\bar t_{on}" = ThermodynamicTemperature::from_si(self.on.mean), "mean of the readings");
        step!(working, let differential: "\\Delta t" = TemperatureInterval::from_si(cut_out.si() - cut_in.si()), "IEC 60730-1");
        step!(working, let mid_point: "t_m" = ThermodynamicTemperature::from_si((cut_out.si() + cut_in.si()) / 2.0), "definition");
        step!(working, let cut_out_repeatability: "s_{off}" = TemperatureInterval::from_si(self.off.standard_deviation), "JCGM 100, 4.2.2");
        step!(working, let cut_out_uncertainty: "u_{off}" = TemperatureInterval::from_si(self.off.standard_uncertainty), "JCGM 100, 4.2.3");
        step!(working, let cut_out_drift: "d_{off}" = TemperatureInterval::from_si(self.off.drift_per_cycle), "least-squares line");
        ThermostatBehaviour {
            cut_out,
            cut_in,
            differential,
            mid_point,
            offset: interval(cut_out.si() - input.set_point.si()),
            cut_out_repeatability,
            cut_in_repeatability: interval(self.on.standard_deviation),
            cut_out_uncertainty,
            cut_in_uncertainty: interval(self.on.standard_uncertainty),
            cut_out_spread: interval(self.off.spread),
            cut_in_spread: interval(self.on.spread),
            cut_out_drift,
            cut_in_drift: interval(self.on.drift_per_cycle),
            cut_out_drift_uncertainty: interval(self.off.drift_uncertainty),
        }
    }
}
