//! The calculation `pump_overrun`: when the overrun thermostat stops the pump, if ever.

use super::network::{Point, Sensor};
use super::plant::{HOT_BLOCK_CAUTIONS, Layout, Plant, State, layout_settings, plant_record, plant_rules};
use super::run::{Bounds, Ending, Peak, Then, What, run};
use super::thermostat::{Controls, PumpRule, Thermostat};
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Raised, Setting, Settings, Source};
use crate::math::sqrt;
use crate::quantity::types::{
    Energy, HeatCapacity, HeatCapacityPerLength, Length, Mass, MassDensity, MassRate, Power, Pressure, Ratio, SpecificHeatCapacity,
    TemperatureInterval, ThermalConductance, ThermalConductivity, ThermodynamicTemperature, Time, Volume,
};
use crate::quantity::units::{DEGREE_CELSIUS, KILOJOULE, MINUTE};
use crate::quantity::{LinearTransmittance, Value};
use crate::record::record;
use crate::working::{Working, step};
use alloc::vec::Vec;

plant_record! {
    /// A heat generator at the moment the burner has stopped and the demand is over, and its overrun thermostat.
    pub struct OverrunState {
        /// Temperature to which the overrun thermostat must fall for the pump to stop.
        #[field("t_{open}", DEGREE_CELSIUS, 0.0..=120.0, usual = 30.0..=90.0)]
        pub overrun_temperature: ThermodynamicTemperature,
        /// Differential of the overrun thermostat: so far it must rise again for the pump to start anew.
        #[field("\\Delta t_O", KELVIN, 0.1..=60.0, default = 6.0, usual = 2.0..=15.0)]
        pub overrun_differential: TemperatureInterval,
        /// Time constant of the thermostat's sensor in its pocket.
        #[field("\\tau_S", SECOND, 0.0..=3600.0, default = 0.0, usual = 0.0..=120.0)]
        pub sensor_time_constant: Time,
        /// Time after which the pump was seen to stop.
        #[field("\\tau_{obs}", MINUTE, 0.0..=10000.0, absent = "not observed")]
        pub observed_stop_time: Time,
        /// Standard uncertainty of that observation.
        #[field("u_{obs}", SECOND, 0.0..=3600.0, default = 10.0)]
        pub observation_uncertainty: Time,
        /// Relative standard uncertainty of the time computed, by what is uncertain in losses and heat capacities; propagate it, or take 15 % (common practice, no source).
        #[field("u_r", PERCENT, 0.0..=100.0, default = 15.0)]
        pub model_uncertainty: Ratio,
    }
}

/// When the pump stops, and what the plant is like then.
#[record]
pub struct OverrunResult {
    /// Time until the pump stops for the first time.
    #[field("\\tau", MINUTE, absent = "never, or not found")]
    pub stop_time: Time,
    /// Temperature of the water in the block at that moment.
    #[field("t_B", DEGREE_CELSIUS, absent = "never, or not found")]
    pub block_temperature_at_stop: ThermodynamicTemperature,
    /// Temperature of the returning water just before.
    #[field("t_R", DEGREE_CELSIUS, absent = "never, not found, or no flow")]
    pub return_temperature_at_stop: ThermodynamicTemperature,
    /// Heat the overrun has carried out of block, pipes and emitters.
    #[field("Q", KILOJOULE, absent = "never, or not found")]
    pub heat_rejected: Energy,
    /// Heat that block, pipes and emitters still hold over the room.
    #[field("Q_L", KILOJOULE, absent = "never, or not found")]
    pub heat_left: Energy,
    /// Highest temperature of the block's water after the pump has stopped for the first time, with the pump then left off.
    #[field("t_{max}", DEGREE_CELSIUS, absent = "never, or not found")]
    pub peak_after_stop: ThermodynamicTemperature,
    /// How often the residual heat starts the pump again.
    #[field("N", ONE)]
    pub restart_count: Ratio,
    /// Time until the pump has stopped for good.
    #[field("\\tau_{end}", MINUTE, absent = "never, or not found")]
    pub final_stop_time: Time,
    /// Temperature of the thermostat's place after an endless time with the pump running.
    #[field("t_\\infty", DEGREE_CELSIUS, absent = "none: heat is put in and none is lost, or not found")]
    pub steady_temperature: ThermodynamicTemperature,
    /// Share by which heat put in, stored and given off fail to balance at the stop.
    #[field("\\varepsilon", ONE, absent = "never, or not found", detail = true)]
    pub imbalance: Ratio,
    /// Time until the pump stops for the first time with the circuits in their second state.
    #[field("\\tau'", MINUTE, absent = "no circuit changes over, never, or not found")]
    pub stop_time_after: Time,
    /// Temperature of the thermostat's place after an endless time with the pump running, in that state.
    #[field("t_\\infty'", DEGREE_CELSIUS, absent = "no circuit changes over, none, or not found", detail = true)]
    pub steady_temperature_after: ThermodynamicTemperature,
    /// Observed less computed time, over the standard uncertainty of that difference: within -2 to 2 they agree.
    #[field("E", ONE, absent = "not observed, never, or not found")]
    pub deviation: Ratio,
}

/// How long the pump runs on under its overrun thermostat.
#[derive(Clone, Debug, Default)]
pub struct PumpOverrun {
    /// Cells and further circuits.
    pub layout: Layout,
}

impl Context for PumpOverrun {
    const SETTINGS: &'static [Setting] = layout_settings![];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { layout: Layout::from_settings(settings)? })
    }
}

plant_rules! {
    notice ALREADY_OPEN on "stop_time": "the overrun thermostat is open from the start: the pump does not run on at all";
    notice NEVER on "stop_time": "the pump never stops: the thermostat's place comes to rest above its opening temperature (see steady_temperature)";
    notice NOT_FOUND on "stop_time": super::plant::NOT_FOUND_TEXT;
    notice NEVER_AFTER on "stop_time_after": "with the circuits in their second state the pump never stops (see steady_temperature_after)";
    notice NOT_FOUND_AFTER on "stop_time_after": super::plant::NOT_FOUND_TEXT;
    notice STARTS_WITHOUT_END on "final_stop_time": "the pump was still starting again where the sum ended: its last stop was not found";
    notice DISAGREES on "deviation": "the pump was seen to stop at a time that differs by more than twice the standard uncertainty of the difference: another circuit is open, the flow is another, or the thermostat opens elsewhere";
    notice PEAK_NOT_FOUND on "peak_after_stop": super::plant::PEAK_NOT_FOUND_TEXT;
    notice STARTS_AGAIN on "restart_count": "residual heat starts the pump again after it has stopped: a wider differential, or a lower opening temperature, ends that";
    notice HEAT_BOOK_OPEN on "imbalance": super::plant::HEAT_BOOK_OPEN_TEXT;
}

#[derive(Clone, Copy)]
struct Overrun {
    stop: f64,
    block: f64,
    back: f64,
    rejected: f64,
    left: f64,
    peak: f64,
    restarts: f64,
    last_stop: f64,
    steady: f64,
    imbalance: f64,
}

const NONE: Overrun = Overrun {
    stop: f64::NAN,
    block: f64::NAN,
    back: f64::NAN,
    rejected: f64::NAN,
    left: f64::NAN,
    peak: f64::NAN,
    restarts: f64::NAN,
    last_stop: f64::NAN,
    steady: f64::NAN,
    imbalance: f64::NAN,
};

/// Restarts followed at most.
const MOST_RESTARTS: u32 = 200;

fn follow(layout: &Layout, input: &OverrunState, state: State) -> Overrun {
    let plant = Plant::of(input);
    if !Plant::is_whole(input) {
        return NONE;
    }
    let sensor = Sensor { point: Point::Block, time_constant: input.sensor_time_constant.si() };
    let Some(mut laid) = plant.lay_out(layout, state, alloc::vec![sensor]) else { return NONE };
    let lower = input.overrun_temperature.si();
    let overrun = Thermostat { sensor: 0, upper: lower + input.overrun_differential.si(), lower };
    let controls = Controls { overrun: Some(overrun), pump: PumpRule::DemandAndOverrun, ..Controls::pump_only(true) };
    let mut found = Overrun { restarts: 0.0, ..NONE };
    let mut at_stop: Option<Vec<f64>> = None;
    if laid.model.initial().first().is_some_and(|start| *start <= lower) {
        found = Overrun { stop: 0.0, last_stop: 0.0, rejected: 0.0, imbalance: 0.0, ..found };
    }
    let outcome = run(&mut laid.model, &controls, &[], Peak::Ignored, &Bounds::USUAL, None, |what, time, model, state| {
        match what {
            What::PumpStops => {
                found.last_stop = time;
                if found.stop.is_nan() {
                    found.stop = time;
                    at_stop = Some(state.to_vec());
                    found.imbalance = model.imbalance(state);
                    found.rejected = model.given_off(state) - model.heat_put_in(state);
                    found.left = model.left(state);
                }
            }
            What::PumpStarts => found.restarts += 1.0,
            _ => {}
        }
        if found.restarts >= f64::from(MOST_RESTARTS) { Then::Stop } else { Then::GoOn }
    });
    if outcome.ending != Ending::Settled {
        found.last_stop = f64::NAN;
    }
    if found.stop.is_nan() {
        found.steady = outcome.rest(0);
        return found;
    }
    if let Some(state) = at_stop {
        laid.model.start_from(&state);
        found.block = state[0];
    } else {
        let start = laid.model.initial();
        found.block = start[0];
        found.left = laid.model.left(start);
    }
    found.peak = super::overshoot::peak(&mut laid, false).0;
    laid.model.set_pump(true);
    if found.stop > 0.0 {
        found.back = laid.model.return_temperature(laid.model.initial());
    }
    found.steady = laid.rest(0);
    found
}

impl Calculation for PumpOverrun {
    type Input = OverrunState;
    type Output = OverrunResult;
    const INFO: Info = Info {
        name: "pump_overrun",
        title: "Pump overrun",
        summary: "When the overrun thermostat stops the pump after the burner has stopped, or that it never does and at what temperature the plant comes to rest; whether residual heat starts it again; what another state of the circuits does to that.",
        sources: &[
            Source::new("energy balance of stirred masses in a row; first law", "block, pipe cells, emitters"),
            Source::new("IEC 60730-1 (wording from memory)", "operating values and differential of the thermostat"),
        ],
        accuracy: "The equations are solved to about one part in 10^8 of the time; loss coefficients (10 to 30 %) and the metal's heat capacity (10 %) limit the answer.",
        cautions: HOT_BLOCK_CAUTIONS,
        checked_against: "heat/cooldown_circuit_params.csv, heat/cooldown_circuit_results.csv",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;
    const LONG: bool = true;

    fn check(&self, input: &OverrunState) -> Raised {
        check_plant(&Plant::of(input), &self.layout, true)
    }

    fn review(&self, input: &OverrunState, output: &OverrunResult) -> Raised {
        // A level within a millikelvin of rest is not told from rest.
        // Without a steady state found, nothing says that it never will.
        let rests_above = |steady: ThermodynamicTemperature| steady.si() >= input.overrun_temperature.si() - 1e-3;
        let (lacks, above) = (output.stop_time.si().is_nan(), rests_above(output.steady_temperature));
        let lacks_after = self.layout.changes_over() && output.stop_time_after.si().is_nan();
        let above_after = rests_above(output.steady_temperature_after);
        Raised::NONE
            .when(ALREADY_OPEN, output.stop_time.si() == 0.0)
            .when(NEVER, lacks && above)
            .when(NOT_FOUND, lacks && !above)
            .when(NEVER_AFTER, lacks_after && above_after)
            .when(NOT_FOUND_AFTER, lacks_after && !above_after)
            .when(STARTS_WITHOUT_END, !lacks && output.final_stop_time.si().is_nan())
            .when(DISAGREES, output.deviation.si().abs() > 2.0)
            .when(PEAK_NOT_FOUND, !lacks && output.peak_after_stop.si().is_nan())
            .when(STARTS_AGAIN, output.restart_count.si() > 0.0)
            .when(HEAT_BOOK_OPEN, output.imbalance.si().abs() > 1e-6)
    }

    fn compute<W: Working>(&self, input: &OverrunState, working: &mut W) -> OverrunResult {
        let found = follow(&self.layout, input, State::Before);
        let after = if self.layout.changes_over() { follow(&self.layout, input, State::After) } else { NONE };
        let block = ThermodynamicTemperature::from_si(found.block);
        step!(working, let stop_time: "\\tau" in MINUTE = Time::from_si(found.stop), "integration of the heat balances");
        step!(working, let block_temperature_at_stop: "t_B" in DEGREE_CELSIUS = block, "integration of the heat balances");
        step!(working, let heat_rejected: "Q" in KILOJOULE = Energy::from_si(found.rejected), "heat given off less heat put in");
        let (by_model, by_watch) = (found.stop * input.model_uncertainty.si(), input.observation_uncertainty.si());
        let apart = input.observed_stop_time.si() - found.stop;
        let combined = sqrt(by_model * by_model + by_watch * by_watch);
        step!(working, let deviation: "E" = Ratio::from_si(apart / combined), "difference over its standard uncertainty");
        OverrunResult {
            stop_time,
            block_temperature_at_stop,
            return_temperature_at_stop: ThermodynamicTemperature::from_si(found.back),
            heat_rejected,
            heat_left: Energy::from_si(found.left),
            peak_after_stop: ThermodynamicTemperature::from_si(found.peak),
            restart_count: Ratio::from_si(found.restarts),
            final_stop_time: Time::from_si(found.last_stop),
            steady_temperature: ThermodynamicTemperature::from_si(found.steady),
            imbalance: Ratio::from_si(found.imbalance),
            stop_time_after: Time::from_si(after.stop),
            steady_temperature_after: ThermodynamicTemperature::from_si(after.steady),
            deviation: if combined > 0.0 { deviation } else { Ratio::from_si(f64::NAN) },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::cool_down::tests::{bypass, radiator};
    use super::super::plant::{Opening, with_plant};
    use super::*;
    use crate::record::Record;

    fn overrun(at: f64) -> OverrunState {
        let rest = OverrunState { overrun_temperature: ThermodynamicTemperature::from_si(at + 273.15), ..OverrunState::unset() };
        with_plant(&bypass(), &rest)
    }

    #[test]
    fn the_pump_stops_when_the_reference_says() {
        let got = PumpOverrun::default().evaluate(&overrun(60.0)).unwrap();
        assert!((got.stop_time.si() / 4831.13147 - 1.0).abs() < 1e-8);
        assert!((got.heat_rejected.si() / 2054303.72 - 1.0).abs() < 1e-8);
        assert!((got.return_temperature_at_stop.si() - 273.15 - 59.8609066).abs() < 1e-6);
        assert!((got.block_temperature_at_stop.si() - 333.15).abs() < 1e-9);
        assert_eq!((got.restart_count.si(), got.final_stop_time.si()), (0.0, got.stop_time.si()));
        assert!(got.notices().is_empty(), "{:?}", got.notices());
    }

    #[test]
    fn a_sensor_with_lag_stops_it_later() {
        let prompt = PumpOverrun::default().evaluate(&overrun(60.0)).unwrap();
        let lagged = OverrunState { sensor_time_constant: Time::from_si(60.0), ..overrun(60.0) };
        let late = PumpOverrun::default().evaluate(&lagged).unwrap();
        // Near a slow exponential the lag is the time constant, nearly.
        let lag = late.stop_time.si() - prompt.stop_time.si();
        assert!((lag - 60.0).abs() < 1.0, "{lag}");
        assert!(late.block_temperature_at_stop.si() < prompt.block_temperature_at_stop.si());
    }

    #[test]
    fn a_pilot_flame_can_keep_it_running_for_ever() {
        let lit = OverrunState { standing_heat: Power::from_si(200.0), ..overrun(40.0) };
        let never = PumpOverrun::default().evaluate(&lit).unwrap();
        assert!(never.stop_time.si().is_nan() && never.final_stop_time.si().is_nan());
        assert!(never.notices().iter().any(|notice| notice.code == "NEVER"));
        // 200 W over casing and loop, the loop at a mean temperature a little below the block's.
        assert!((never.steady_temperature.si() - 293.15 - 200.0 / (6.0 + 3.5 * 0.75)).abs() < 0.1);
        // Opening the radiator ends that.
        let mut calculation = PumpOverrun::default();
        calculation.layout.circuits.push(radiator(Opening::OpenedAfter));
        let both = calculation.evaluate(&lit).unwrap();
        assert!(both.stop_time.si().is_nan() && both.stop_time_after.si() > 0.0);
    }

    #[test]
    fn residual_heat_starts_the_pump_again() {
        // Iron left 100 K hotter by the burner, and a cold radiator circuit that cools the water at once.
        let input = OverrunState {
            film_conductance: ThermalConductance::from_si(120.0),
            metal_temperature: ThermodynamicTemperature::from_si(453.15),
            circuit_temperature: ThermodynamicTemperature::from_si(293.15),
            overrun_differential: TemperatureInterval::from_si(0.5),
            ..overrun(75.0)
        };
        let mut calculation = PumpOverrun::default();
        calculation.layout.circuits.push(radiator(Opening::Open));
        let got = calculation.evaluate(&input).unwrap();
        assert!(got.restart_count.si() >= 1.0, "{:?}", got.output);
        assert!(got.final_stop_time.si() > got.stop_time.si());
        assert!(got.peak_after_stop.si() > got.block_temperature_at_stop.si() + 0.5);
        assert!(got.notices().iter().any(|notice| notice.code == "STARTS_AGAIN"));
    }

    #[test]
    fn an_observation_is_compared() {
        let seen = |seconds: f64| {
            let observed_stop_time = Time::from_si(seconds);
            PumpOverrun::default().evaluate(&OverrunState { observed_stop_time, ..overrun(60.0) }).unwrap()
        };
        let near = seen(4400.0);
        let expected = (4400.0 - 4831.13147) / libm::sqrt(100.0 + 0.0225 * 4831.13147 * 4831.13147);
        assert!((near.deviation.si() - expected).abs() < 1e-6 && near.notices().is_empty());
        assert!(seen(1200.0).notices().iter().any(|notice| notice.code == "DISAGREES"));
        assert!(seen(f64::NAN).deviation.si().is_nan());
    }

    #[test]
    fn an_open_thermostat_is_said() {
        let got = PumpOverrun::default().evaluate(&overrun(80.0)).unwrap();
        assert_eq!(got.stop_time.si(), 0.0);
        assert_eq!(got.notices()[0].code, "ALREADY_OPEN");
        // The pump standing from the start, hot metal still warms the water: that is the peak then.
        let hot = OverrunState {
            film_conductance: ThermalConductance::from_si(300.0),
            metal_temperature: ThermodynamicTemperature::from_si(373.15),
            overrun_differential: TemperatureInterval::from_si(40.0),
            ..overrun(80.0)
        };
        let got = PumpOverrun::default().evaluate(&hot).unwrap();
        let (metal, water) = Plant::of(&hot).capacities();
        let mixed = (metal * 373.15 + water * 353.15) / (metal + water);
        assert_eq!((got.stop_time.si(), got.restart_count.si()), (0.0, 0.0));
        assert!(got.peak_after_stop.si() > mixed - 2.0 && got.peak_after_stop.si() < mixed, "{:?} {mixed}", got.peak_after_stop);
    }

    #[test]
    fn what_does_not_end_is_not_called_never() {
        let slow = OverrunState {
            metal_mass: Mass::from_si(5000.0),
            casing_loss: ThermalConductance::from_si(0.01),
            pipe_loss: LinearTransmittance::from_si(0.02),
            ..overrun(60.0)
        };
        let mut calculation = PumpOverrun::default();
        calculation.layout.circuits.push(radiator(Opening::ClosedAfter));
        for circuits in [Vec::new(), calculation.layout.circuits] {
            let after = !circuits.is_empty();
            let layout = Layout { circuits, ..Layout::default() };
            let got = PumpOverrun { layout }.evaluate(&slow).unwrap();
            let codes: Vec<_> = got.notices().iter().map(|notice| notice.code).collect();
            assert_eq!(codes.contains(&"NOT_FOUND"), !after, "{codes:?}");
            assert_eq!(codes.contains(&"NOT_FOUND_AFTER"), after, "{codes:?}");
            assert!(!codes.contains(&"NEVER") && !codes.contains(&"NEVER_AFTER"), "{codes:?}");
        }
    }
}
