//! The calculation `gas_rate_test_time`: how long a test at the meter takes, and how long it must.

use super::CAUTION_BASIS;
use super::conversion::root_of_squares;
use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::math;
use crate::quantity::types::{Ratio, Time, Volume, VolumeRate};
use crate::quantity::units::{CUBIC_METRE, CUBIC_METRE_PER_HOUR, SECOND};
use crate::quantity::{AtMeter, CalorificValue, GasFlow, GasVolume, Gross, HeatInput, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// What is expected at the meter: a gas rate, or a heat input with the calorific value.
#[record]
pub struct TestTimeAsked {
    /// Gas rate expected, as it passes the meter.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR, 1e-3..=1e5, usual = 0.05..=100.0, absent = "to be found from the heat input")]
    pub gas_rate: GasFlow<AtMeter>,
    /// Heat input expected.
    #[field("\\dot Q_s", KILOWATT, 0.01..=1e6, usual = 0.5..=1000.0, absent = "not stated")]
    pub heat_input_gross: HeatInput<Gross>,
    /// Gross calorific value at the reference conditions.
    #[field("H_s", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, usual = 10.0..=140.0, absent = "not stated")]
    pub gross_calorific_value: CalorificValue<Gross>,
    /// Reference volume over volume in the meter.
    #[field("C", ONE, 0.1..=10.0, default = 1.0, usual = 0.7..=1.2)]
    pub conversion_factor: Ratio,
    /// Volume that is to pass.
    #[field("V", CUBIC_METRE, 1e-5..=1000.0, usual = 0.005..=5.0, absent = "not stated")]
    pub volume: GasVolume<AtMeter>,
    /// Smallest step of the index or dial, which is read at the start and at the end.
    #[field("\\delta V", CUBIC_METRE, 0.0..=10.0, usual = 0.0001..=0.01, absent = "not stated")]
    pub meter_resolution: Volume,
    /// Standard uncertainty of each press of the stopwatch.
    #[field("u_t", SECOND, 0.0..=10.0, default = 0.15, usual = 0.05..=0.5)]
    pub reaction_time_uncertainty: Time,
    /// Standard uncertainty wanted from reading and timing together, as a share of the rate.
    #[field("u_{rel}", PERCENT, 0.01..=50.0, usual = 0.2..=5.0, absent = "not stated")]
    pub wanted_uncertainty: Ratio,
}

/// How long the test takes.
#[record]
pub struct TestTimeNeeded {
    /// Gas rate taken.
    #[field("\\dot V_e", CUBIC_METRE_PER_HOUR)]
    pub gas_rate: GasFlow<AtMeter>,
    /// Time in which the volume passes.
    #[field("t_V", SECOND, absent = "no volume stated")]
    pub time_for_volume: Time,
    /// Time from which reading and timing are as certain as wanted.
    #[field("t_{min}", SECOND, absent = "no resolution or wanted uncertainty stated")]
    pub time_for_uncertainty: Time,
    /// Volume that passes in that time.
    #[field("V_{min}", CUBIC_METRE, absent = "no resolution or wanted uncertainty stated")]
    pub volume_for_uncertainty: GasVolume<AtMeter>,
}

/// Duration of a test at the meter.
#[derive(Clone, Copy, Debug)]
pub struct GasRateTestTime;

no_settings!(GasRateTestTime);

rules! {
    refuse NO_RATE on "gas_rate": "give the gas rate expected, or heat_input_gross with gross_calorific_value";
    refuse TWO_RATES on "gas_rate": "give either the gas rate or the heat input";
    refuse NOTHING_ASKED on "volume": "give a volume, or meter_resolution with wanted_uncertainty";
    notice LONG on "meter_resolution": "more than ten minutes: a finer dial of the same meter, if it has one, needs less";
}

impl Calculation for GasRateTestTime {
    type Input = TestTimeAsked;
    type Output = TestTimeNeeded;
    const INFO: Info = Info {
        name: "gas_rate_test_time",
        title: "Duration of a test at the meter",
        summary: "The time a volume takes to pass at an expected rate, and the test time from which the meter's resolution and the stopwatch \
                  leave a wanted uncertainty.",
        sources: &[
            Source::new("definition", "time = volume / rate"),
            Source::new("JCGM 100:2008, 4.3.7 and 5.1", "two rectangular readings and two presses, solved for the time"),
            Source::new("common practice, no source", "0.15 s for each press of a stopwatch"),
        ],
        accuracy: "As the expected rate. Error of the meter, calorific value and gas conditions are not part of the wanted uncertainty.",
        cautions: &[CAUTION_BASIS],
        checked_against: "trade/gas_rate.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &TestTimeAsked) -> Raised {
        let given = |value: f64| !value.is_nan();
        let rate = given(input.gas_rate.si());
        let heat = given(input.heat_input_gross.si());
        let both = heat & given(input.gross_calorific_value.si());
        let uncertainty = given(input.meter_resolution.si()) & given(input.wanted_uncertainty.si());
        Raised::NONE.when(NO_RATE, !rate & !both).when(TWO_RATES, rate & heat).when(NOTHING_ASKED, !given(input.volume.si()) & !uncertainty)
    }

    #[inline]
    fn review(&self, _: &TestTimeAsked, output: &TestTimeNeeded) -> Raised {
        Raised::NONE.when(LONG, output.time_for_uncertainty.si() > 600.0)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &TestTimeAsked, working: &mut W) -> TestTimeNeeded {
        let (heat_input_gross, gross_calorific_value) = (input.heat_input_gross.plain(), input.gross_calorific_value.plain());
        let gas_rate = if input.gas_rate.si().is_nan() {
            step!(working, let gas_rate: "\\dot V_e" in CUBIC_METRE_PER_HOUR = heat_input_gross / gross_calorific_value / input.conversion_factor, "definition");
            VolumeRate::from_si(gas_rate.si())
        } else {
            input.gas_rate.plain()
        };
        let volume = input.volume.plain();
        let step_time = input.meter_resolution / gas_rate;
        let together = root_of_squares([step_time.si() / math::sqrt(6.0), math::sqrt(2.0) * input.reaction_time_uncertainty.si()]);
        step!(working, let time_for_volume: "t_V" in SECOND = volume / gas_rate, "definition");
        step!(working, let time_uncertainty: "u(t)" in SECOND = Time::from_si(together), "root of (δV/V̇)²/6 + 2 u_t², JCGM 100:2008");
        step!(working, let time_for_uncertainty: "t_{min}" in SECOND = time_uncertainty / input.wanted_uncertainty, "JCGM 100:2008 5.1, solved for the time");
        step!(working, let volume_for_uncertainty: "V_{min}" in CUBIC_METRE = gas_rate * time_for_uncertainty, "definition");
        TestTimeNeeded {
            gas_rate: GasFlow::new(gas_rate),
            time_for_volume,
            time_for_uncertainty,
            volume_for_uncertainty: GasVolume::new(volume_for_uncertainty),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::meter::{GasRateBudget, GasRateUncertainty};
    use crate::quantity::ReferenceConditions;
    use crate::record::Record;
    use crate::supply::trade::{Inputs, check};

    fn asked(i: &Inputs) -> TestTimeAsked {
        let some = |name: &str| i.maybe(name).unwrap_or(f64::NAN);
        TestTimeAsked {
            gas_rate: GasFlow::from_si(some("V_rate")),
            heat_input_gross: HeatInput::from_si(some("heat_input_gross")),
            gross_calorific_value: CalorificValue::from_si(some("Hs")),
            volume: GasVolume::from_si(some("V")),
            meter_resolution: Volume::from_si(some("meter_resolution")),
            reaction_time_uncertainty: Time::from_si(i.maybe("u_reaction_each").unwrap_or(0.15)),
            wanted_uncertainty: Ratio::from_si(some("u_target")),
            ..TestTimeAsked::unset()
        }
    }

    #[test]
    fn test_times_agree() {
        let file = "trade/gas_rate.csv";
        let got = |i: &Inputs| GasRateTestTime.evaluate(&asked(i)).unwrap().output;
        assert_eq!(check(file, "expected_time", |i, _| got(i).time_for_volume.si()), 2);
        assert_eq!(check(file, "time_for_target_uncertainty", |i, _| got(i).time_for_uncertainty.si()), 3);
    }

    #[test]
    fn the_time_found_gives_the_uncertainty_wanted() {
        let asked =
            TestTimeAsked::read([("gas_rate", "2.4 m3/h"), ("meter_resolution", "0.001 m3"), ("wanted_uncertainty", "1 %")]).unwrap();
        let found = GasRateTestTime.evaluate(&asked).unwrap().output;
        let budget = GasRateBudget {
            volume: found.volume_for_uncertainty,
            time: found.time_for_uncertainty,
            meter_resolution: asked.meter_resolution,
            maximum_permissible_error: Ratio::from_si(0.0),
            gross_calorific_value: CalorificValue::from_si(39.5e6),
            ..GasRateBudget::unset()
        };
        let got = GasRateUncertainty { reference: ReferenceConditions::AT_15_15 }.evaluate(&budget).unwrap().output;
        assert!((got.relative_uncertainty.si() - 0.01).abs() < 1e-12);
    }
}
