//! The calculation `thermostat_differential`: a control proved by one pair of operating values.

use crate::calculation::{Calculation, Info, Raised, Source};
use crate::quantity::Value;
use crate::quantity::types::{TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::units::{DEGREE_CELSIUS, KELVIN};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

const SOURCES: &[Source] = &[Source::new("IEC 60730-1 (wording from memory)", "operating value, differential")];
pub(super) const CAUTIONS: &[&str] = &[
    "A switching point is where the sensor is, not where the water is hottest: compare at the phial or pocket.",
    crate::caution::DEFEAT,
    crate::caution::HOT_BLOCK,
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

rules! {
    refuse CUT_IN_ABOVE_CUT_OUT on "cut_in_temperature": "the burner cannot light again above the temperature at which it stopped: swap the readings, or take them again after the overshoot";
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
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &ThermostatReadings) -> Raised {
        Raised::NONE.when(CUT_IN_ABOVE_CUT_OUT, input.cut_in_temperature.si() > input.cut_out_temperature.si())
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

#[cfg(test)]
mod tests {
    use super::*;
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
}
