//! The calculation `thermostat_test`: where a thermostat switches, from repeated readings.

use super::thermostat::Repeats;
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
    /// Mean temperature at which it switched off on the rise.
    #[field("\\bar t_{off}", DEGREE_CELSIUS)]
    pub switch_off: ThermodynamicTemperature,
    /// Mean temperature at which it switched on again on the fall.
    #[field("\\bar t_{on}", DEGREE_CELSIUS)]
    pub switch_on: ThermodynamicTemperature,
    /// Differential: switch-off less switch-on, a difference and not a temperature.
    #[field("\\Delta t", KELVIN)]
    pub differential: TemperatureInterval,
    /// Middle between switch-off and switch-on.
    #[field("t_m", DEGREE_CELSIUS)]
    pub mid_point: ThermodynamicTemperature,
    /// Switch-off less set point.
    #[field("\\Delta t_{set}", KELVIN, absent = "no set point was stated")]
    pub offset: TemperatureInterval,
    /// Repeatability of the switch-off: experimental standard deviation of one reading.
    #[field("s_{off}", KELVIN, absent = "fewer than two readings")]
    pub switch_off_repeatability: TemperatureInterval,
    /// Repeatability of the switch-on.
    #[field("s_{on}", KELVIN, absent = "fewer than two readings")]
    pub switch_on_repeatability: TemperatureInterval,
    /// Standard uncertainty of the mean switch-off, type A.
    #[field("u_{off}", KELVIN, absent = "fewer than two readings")]
    pub switch_off_uncertainty: TemperatureInterval,
    /// Standard uncertainty of the mean switch-on, type A.
    #[field("u_{on}", KELVIN, absent = "fewer than two readings")]
    pub switch_on_uncertainty: TemperatureInterval,
    /// Highest less lowest switch-off.
    #[field("r_{off}", KELVIN)]
    pub switch_off_spread: TemperatureInterval,
    /// Highest less lowest switch-on.
    #[field("r_{on}", KELVIN)]
    pub switch_on_spread: TemperatureInterval,
    /// Drift of the switch-off from one cycle to the next, from a straight line through the readings in their order.
    #[field("d_{off}", KELVIN, absent = "fewer than two readings")]
    pub switch_off_drift: TemperatureInterval,
    /// Drift of the switch-on from one cycle to the next.
    #[field("d_{on}", KELVIN, absent = "fewer than two readings")]
    pub switch_on_drift: TemperatureInterval,
    /// Standard uncertainty of the drift of the switch-off per cycle.
    #[field("u_{d,off}", KELVIN, absent = "fewer than three readings")]
    pub switch_off_drift_uncertainty: TemperatureInterval,
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
    pub fn new(switch_off: &[ThermodynamicTemperature], switch_on: &[ThermodynamicTemperature]) -> Self {
        let of = |readings: &[ThermodynamicTemperature]| Repeats::of(&readings.iter().map(|t| t.si()).collect::<Vec<_>>());
        Self { off: of(switch_off), on: of(switch_on) }
    }
}

impl Context for ThermostatTest {
    const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "switch_off",
            doc: "Temperatures at which the contact opened on the rise, in order.",
            form: Form::Quantities(ThermodynamicTemperature::KIND, &units::DEGREE_CELSIUS),
            default: None,
        },
        Setting {
            name: "switch_on",
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
        Ok(Self::new(&readings("switch_off")?, &readings("switch_on")?))
    }
}

rules! {
    refuse NEGATIVE_DIFFERENTIAL on "differential": "it switches on again at a higher temperature than it switched off: readings exchanged, or the thermometer lags behind the sensor";
    notice FEW_READINGS on "switch_off_repeatability": "fewer than three cycles: repeatability and drift are not known";
    notice DRIFTING on "switch_off_drift": "the switch-off drifts by more than twice its standard uncertainty: the block was not yet steady, or the thermostat is failing";
}

impl Calculation for ThermostatTest {
    type Input = ThermostatSetting;
    type Output = ThermostatBehaviour;
    const INFO: Info = Info {
        name: "thermostat_test",
        title: "Thermostat test",
        summary: "Switch-off, switch-on, differential, repeatability and drift of a control thermostat from repeated readings. Not for judging a limit thermostat.",
        sources: &[
            Source::new("operating values and differential after IEC 60730-1 and -2-9, from memory", "definitions"),
            Source::new("JCGM 100:2008, 4.2", "standard deviation and uncertainty of the mean"),
            Source::new("least-squares line, textbook", "drift and its uncertainty"),
        ],
        accuracy: "That of the thermometer and of its contact; a probe that lags reads the switch-off low and the switch-on high. The lag is not in the uncertainties given.",
        cautions: &[
            "Never bridge or defeat a thermostat or a limit to obtain a reading.",
            "A cast-iron block and its water stay hot for tens of minutes after switch-off: scalding and steam.",
        ],
        checked_against: "trade/sensors.csv (thermostat_differential, thermostat_repeat_test)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    fn review(&self, _: &ThermostatSetting, output: &ThermostatBehaviour) -> Raised {
        let drift = output.switch_off_drift.si().abs();
        Raised::NONE
            .when(NEGATIVE_DIFFERENTIAL, output.differential.si() < 0.0)
            .when(FEW_READINGS, self.off.count.min(self.on.count) < 3)
            .when(DRIFTING, drift > 1e-9 && drift > 2.0 * output.switch_off_drift_uncertainty.si())
    }

    fn compute<W: Working>(&self, input: &ThermostatSetting, working: &mut W) -> ThermostatBehaviour {
        let interval = TemperatureInterval::from_si;
        step!(working, let switch_off: "\\bar t_{off}" = ThermodynamicTemperature::from_si(self.off.mean), "mean of the readings");
        step!(working, let switch_on: "\\bar t_{on}" = ThermodynamicTemperature::from_si(self.on.mean), "mean of the readings");
        step!(working, let differential: "\\Delta t" = TemperatureInterval::from_si(switch_off.si() - switch_on.si()), "IEC 60730-1");
        step!(working, let mid_point: "t_m" = ThermodynamicTemperature::from_si((switch_off.si() + switch_on.si()) / 2.0), "definition");
        step!(working, let switch_off_repeatability: "s_{off}" = TemperatureInterval::from_si(self.off.standard_deviation), "JCGM 100, 4.2.2");
        step!(working, let switch_off_uncertainty: "u_{off}" = TemperatureInterval::from_si(self.off.standard_uncertainty), "JCGM 100, 4.2.3");
        step!(working, let switch_off_drift: "d_{off}" = TemperatureInterval::from_si(self.off.drift_per_cycle), "least-squares line");
        ThermostatBehaviour {
            switch_off,
            switch_on,
            differential,
            mid_point,
            offset: interval(switch_off.si() - input.set_point.si()),
            switch_off_repeatability,
            switch_on_repeatability: interval(self.on.standard_deviation),
            switch_off_uncertainty,
            switch_on_uncertainty: interval(self.on.standard_uncertainty),
            switch_off_spread: interval(self.off.spread),
            switch_on_spread: interval(self.on.spread),
            switch_off_drift,
            switch_on_drift: interval(self.on.drift_per_cycle),
            switch_off_drift_uncertainty: interval(self.off.drift_uncertainty),
        }
    }
}
