//! The calculation `tightness_plan`: what a test can show, and how long it must last.

use super::{CAUTION_COMPETENCE, CAUTION_TIGHTNESS};
use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::quantity::types::{Pressure, PressurePerTemperature, TemperatureInterval, ThermodynamicTemperature, Time, Volume, VolumeRate};
use crate::quantity::units::*;
use crate::quantity::{AbsolutePressure, AtReference, GasFlow, GaugePressure, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// What is known before a tightness test.
#[record]
pub struct TightnessPlanned {
    /// Volume of gas under test: pipes, fittings and meter.
    #[field("V", LITRE, 1e-3..=1e5, usual = 0.5..=1000.0)]
    pub installation_volume: Volume,
    /// Smallest movement of the gauge that can be read.
    #[field("\\delta p", MILLIBAR, 1e-6..=100.0, usual = 0.001..=1.0)]
    pub readable_movement: Pressure,
    /// Duration intended.
    #[field("\\Delta t", SECOND, 1.0..=864000.0, absent = "not stated", usual = 60.0..=7200.0)]
    pub test_duration: Time,
    /// Leak that must not go unseen, at reference conditions; set by the local procedure.
    #[field("\\dot V_{lim}", LITRE_PER_HOUR, 1e-6..=1e6, absent = "not stated")]
    pub leak_limit: GasFlow<AtReference>,
    /// Change of gas temperature to be feared during the test.
    #[field("\\Delta T", KELVIN, 0.0..=20.0, default = 0.0, usual = 0.0..=2.0)]
    pub temperature_change: TemperatureInterval,
    /// Gauge pressure of the test.
    #[field("p_g", MILLIBAR, 0.1..=10000.0, default = 20.0, usual = 5.0..=200.0)]
    pub test_pressure: GaugePressure,
    /// Barometric pressure.
    #[field("p_b", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 940.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
    /// Temperature of the gas.
    #[field("T", DEGREE_CELSIUS, -40.0..=60.0, default = 15.0, usual = -10.0..=35.0)]
    pub gas_temperature: ThermodynamicTemperature,
    /// Reference temperature to which leaks are stated.
    #[field("T_r", DEGREE_CELSIUS, 0.0..=25.0, default = 15.0)]
    pub reference_temperature: ThermodynamicTemperature,
    /// Reference pressure to which leaks are stated.
    #[field("p_r", MILLIBAR, 900.0..=1100.0, default = 1013.25)]
    pub reference_pressure: AbsolutePressure,
}

/// What the test can show.
#[record]
pub struct TightnessProspect {
    /// Least leak that moves the gauge by the readable movement within the duration.
    #[field("\\dot V_{min}", LITRE_PER_HOUR, absent = "no duration stated")]
    pub smallest_detectable_leak: GasFlow<AtReference>,
    /// Time in which a leak at the limit moves the gauge by the readable movement.
    #[field("\\Delta t_{min}", SECOND, absent = "no leak limit stated")]
    pub time_needed: Time,
    /// Drop that a leak at the limit makes within the duration.
    #[field("\\Delta p_{lim}", MILLIBAR, absent = "no leak limit or no duration stated")]
    pub drop_at_limit: Pressure,
    /// Change of the gauge reading for each kelvin.
    #[field("\\partial p/\\partial T", MILLIBAR_PER_KELVIN)]
    pub temperature_sensitivity: PressurePerTemperature,
    /// Change of the gauge reading by the temperature change feared.
    #[field("\\Delta p_T", MILLIBAR)]
    pub temperature_effect: Pressure,
    /// Leak that the temperature change feared would feign or hide within the duration.
    #[field("\\dot V_T", LITRE_PER_HOUR, absent = "no duration stated")]
    pub leak_masked_by_temperature: GasFlow<AtReference>,
}

/// What a tightness test can show before it is made.
#[derive(Clone, Copy, Debug)]
pub struct TightnessPlan;

no_settings!(TightnessPlan);

rules! {
    notice TOO_SHORT on "test_duration": "a leak at the limit would not move the gauge by its readable movement: test longer or read finer";
    notice TEMPERATURE_MASKS on "temperature_change": "the temperature change could feign or hide a leak at the limit";
}

impl Calculation for TightnessPlan {
    type Input = TightnessPlanned;
    type Output = TightnessProspect;
    const INFO: Info = Info {
        name: "tightness_plan",
        title: "Planning a tightness test",
        summary: "The smallest leak a gauge shows in a given time, the time a given leak needs to show, and what temperature does to the reading.",
        sources: &[Source::new("Ideal gas law at constant volume; textbook", "all results")],
        accuracy: "As good as the volume and the readable movement stated.",
        cautions: &[CAUTION_TIGHTNESS, CAUTION_COMPETENCE],
        checked_against: "trade/tightness.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn review(&self, input: &TightnessPlanned, output: &TightnessProspect) -> Raised {
        Raised::NONE
            .when(TOO_SHORT, output.time_needed.si() > input.test_duration.si())
            .when(TEMPERATURE_MASKS, output.leak_masked_by_temperature.si() >= input.leak_limit.si())
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &TightnessPlanned, working: &mut W) -> TightnessProspect {
        step!(working, let volume_per_pressure: "V_r/\\Delta p" =
            input.installation_volume / input.gas_temperature * input.reference_temperature / input.reference_pressure.plain(), "ideal gas law");
        step!(working, let smallest_volume: "V_{r,min}" in LITRE = input.readable_movement * volume_per_pressure, "definition");
        step!(working, let smallest_leak: "\\dot V_{min}" in LITRE_PER_HOUR = smallest_volume / input.test_duration, "definition");
        step!(working, let time_needed: "\\Delta t_{min}" in SECOND = smallest_volume / input.leak_limit.plain(), "definition");
        let drop_at_limit = input.leak_limit.plain() * input.test_duration / volume_per_pressure;
        step!(working, let sensitivity: "\\partial p/\\partial T" in MILLIBAR_PER_KELVIN =
            (input.test_pressure.plain() + input.barometric_pressure.plain()) / input.gas_temperature, "Gay-Lussac, absolute pressure");
        step!(working, let temperature_effect: "\\Delta p_T" in MILLIBAR = sensitivity * input.temperature_change, "Gay-Lussac");
        let masked: VolumeRate = temperature_effect * volume_per_pressure / input.test_duration;
        TightnessProspect {
            smallest_detectable_leak: GasFlow::new(smallest_leak),
            time_needed,
            drop_at_limit,
            temperature_sensitivity: sensitivity,
            temperature_effect,
            leak_masked_by_temperature: GasFlow::new(masked),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::supply::trade::{Inputs, check};

    fn planned(i: &Inputs) -> TightnessPlanned {
        TightnessPlanned {
            installation_volume: Volume::from_si(i.si("V")),
            readable_movement: Pressure::from_si(i.si("readable_movement")),
            test_duration: Time::from_si(i.maybe("dt").unwrap_or(f64::NAN)),
            leak_limit: GasFlow::from_si(i.maybe("leak_limit").unwrap_or(f64::NAN)),
            ..TightnessPlanned::unset()
        }
    }

    #[test]
    fn detection_and_time_agree_with_the_table() {
        let file = "trade/tightness.csv";
        check(file, "smallest_detectable_leak", |i, _| TightnessPlan.evaluate(&planned(i)).unwrap().output.smallest_detectable_leak.si());
        check(file, "test_time_needed", |i, _| TightnessPlan.evaluate(&planned(i)).unwrap().output.time_needed.si());
    }

    #[test]
    fn a_test_too_short_or_too_warm_is_noticed() {
        let plan = TightnessPlanned {
            installation_volume: Volume::from_si(0.1),
            readable_movement: Pressure::from_si(25.0),
            test_duration: Time::from_si(60.0),
            leak_limit: GasFlow::from_si(1e-3 / 3600.0),
            temperature_change: TemperatureInterval::from_si(0.1),
            ..TightnessPlanned::unset()
        };
        let evaluated = TightnessPlan.evaluate(&plan).unwrap();
        assert_eq!(evaluated.judged.raised.0, 1 << TOO_SHORT | 1 << TEMPERATURE_MASKS);
        // The leak at the limit falls short of the readable movement by the same factor as the time.
        let got = evaluated.output;
        assert!((got.drop_at_limit.si() / 25.0 - 60.0 / got.time_needed.si()).abs() < 1e-12);
    }
}
