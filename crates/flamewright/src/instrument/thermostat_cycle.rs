//! The calculation `thermostat_cycle`: how often a thermostat starts the burner.

use crate::calculation::{Calculation, Info, Raised, Source};
use crate::quantity::types::{Frequency, HeatCapacity, Power, Ratio, TemperatureInterval, Time};
use crate::quantity::units::PER_HOUR;
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A boiler on an on/off thermostat at a constant load.
#[record]
pub struct CyclingBoiler {
    /// Heat capacity that swings with the thermostat: block, water and whatever follows them.
    #[field("C", KILOJOULE_PER_KELVIN, 0.1..=100_000.0, usual = 10.0..=2000.0)]
    pub heat_capacity: HeatCapacity,
    /// Differential of the thermostat.
    #[field("\\Delta t", KELVIN, 0.1..=50.0, usual = 2.0..=15.0)]
    pub differential: TemperatureInterval,
    /// Heat output of the boiler while the burner is on.
    #[field("P", KILOWATT, 0.1..=2000.0, usual = 3.0..=70.0)]
    pub heat_output: Power,
    /// Heat taken by the system, constant.
    #[field("P_L", KILOWATT, 0.001..=2000.0, usual = 0.3..=60.0)]
    pub load: Power,
}

/// One cycle.
#[record]
pub struct ThermostatCycle {
    /// Time the burner is on.
    #[field("t_{on}", SECOND)]
    pub time_on: Time,
    /// Time the burner is off.
    #[field("t_{off}", SECOND)]
    pub time_off: Time,
    /// Share of the time the burner is on: load over output.
    #[field("D", PERCENT)]
    pub duty: Ratio,
    /// Burner starts per time.
    #[field("n", PER_HOUR)]
    pub starts: Frequency,
}

rules! {
    refuse LOAD_REACHES_OUTPUT on "load": "the load is not below the output: the burner never stops";
    notice SHORT_CYCLE on "heat_output": "the burner is on for less than a minute: other lags than the differential decide the cycle then";
}

/// Burner cycle of an ideal on/off thermostat on one heat capacity.
#[derive(Clone, Copy, Debug)]
pub struct CycleOfThermostat;

no_settings!(CycleOfThermostat);

impl Calculation for CycleOfThermostat {
    type Input = CyclingBoiler;
    type Output = ThermostatCycle;
    const INFO: Info = Info {
        name: "thermostat_cycle",
        title: "Cycling on a thermostat",
        summary: "Time on, time off and starts per hour of a boiler on an ideal on/off thermostat at constant load, all heat in one capacity.",
        sources: &[Source::new("heat balance of one heat capacity, textbook", "times on and off")],
        accuracy: "A guide: overshoot, sensor lag and the mixing time of the water lengthen the real cycle.",
        cautions: &[],
        checked_against: "trade/sensors.csv (thermostat_cycle_lumped)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &CyclingBoiler) -> Raised {
        Raised::NONE.when(LOAD_REACHES_OUTPUT, input.load >= input.heat_output)
    }

    #[inline(always)]
    fn review(&self, _: &CyclingBoiler, output: &ThermostatCycle) -> Raised {
        Raised::NONE.when(SHORT_CYCLE, output.time_on.value < 60.0)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &CyclingBoiler, working: &mut W) -> ThermostatCycle {
        let CyclingBoiler { heat_capacity, differential, heat_output, load } = *input;
        step!(working, let swing: "Q" = heat_capacity * differential, "heat to swing through the differential");
        step!(working, let time_on: "t_{on}" = swing / (heat_output - load), "heat balance");
        step!(working, let time_off: "t_{off}" = swing / load, "heat balance");
        step!(working, let duty: "D" = time_on / (time_on + time_off), "definition");
        step!(working, let starts: "n" as Frequency in PER_HOUR = 1.0 / (time_on + time_off), "definition");
        ThermostatCycle { time_on, time_off, duty, starts }
    }
}
