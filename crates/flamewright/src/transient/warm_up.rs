//! The calculation `warm_up`: how long a plant takes from cold to a temperature.

use super::cool_down::{WATCHED, WATCHED_SETTING, Watched};
use super::plant::{
    BURNER, DEMAND, DEMAND_CHANGES, DEMAND_PUMP, Demand, FiredPlant, Layout, Plant, State, Turndown, fired_plant_record, layout_settings,
    plant_record, plant_rules,
};
use super::run::{Bounds, Ending, Mark, Peak, Recurrence, Switchings, Then, What, run};
use super::solver::Direction;
use super::thermostat::Controls;
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Raised, Setting, Settings, Source, Table};
use crate::quantity::types::{
    Energy, HeatCapacity, HeatCapacityPerLength, Length, Mass, MassDensity, MassRate, Power, Pressure, Ratio, SpecificHeatCapacity,
    TemperatureInterval, ThermalConductance, ThermalConductivity, ThermodynamicTemperature, Time, Volume,
};
use crate::quantity::units::{KILOJOULE, MINUTE};
use crate::quantity::{LinearTransmittance, Value};
use crate::record::record;
use crate::working::{Working, step};
use alloc::vec::Vec;

fired_plant_record! {
    /// A plant at the moment its burner lights, and the temperature it is to reach.
    pub struct WarmUpState {
        /// Differential of the control thermostat.
        #[field("\\Delta t", KELVIN, 0.1..=60.0, default = 8.0, usual = 2.0..=15.0)]
        pub control_differential: TemperatureInterval,
        /// Least time the burner stays off.
        #[field("\\tau_{min}", MINUTE, 0.0..=120.0, default = 0.0)]
        pub anti_cycling_delay: Time,
        /// Temperature to be reached at the point watched.
        #[field("t_Z", DEGREE_CELSIUS, -30.0..=150.0, usual = 20.0..=90.0)]
        pub target_temperature: ThermodynamicTemperature,
    }
}

/// How long it takes and where the heat has gone.
#[record]
pub struct WarmUpResult {
    /// Time until the target is reached.
    #[field("\\tau", MINUTE, absent = "never, or not found")]
    pub time: Time,
    /// Heat the burner has given to the block by then.
    #[field("Q", KILOJOULE, absent = "never, or not found")]
    pub heat_put_in: Energy,
    /// Heat that block, pipes and emitters have taken up.
    #[field("Q_S", KILOJOULE, absent = "never, or not found")]
    pub heat_stored: Energy,
    /// Heat given off by casing and pipes.
    #[field("Q_V", KILOJOULE, absent = "never, or not found")]
    pub heat_lost: Energy,
    /// Heat given off by the emitters.
    #[field("Q_E", KILOJOULE, absent = "never, or not found")]
    pub emitter_heat: Energy,
    /// Temperature of the block's water at that moment.
    #[field("t_B", DEGREE_CELSIUS, absent = "never, or not found")]
    pub block_temperature_then: ThermodynamicTemperature,
    /// How often the burner has stopped on the way.
    #[field("N", ONE)]
    pub stop_count: Ratio,
    /// Highest temperature the point watched ever gets to, at rest or in a cycle that repeats.
    #[field("t_{max}", DEGREE_CELSIUS, absent = "the target is reached, or not found")]
    pub highest_temperature: ThermodynamicTemperature,
    /// Time at which the limit thermostat locks the burner out.
    #[field("\\tau_{lim}", MINUTE, absent = "it does not trip on the way")]
    pub limit_trip_time: Time,
    /// Share by which heat put in, stored and given off fail to balance.
    #[field("\\varepsilon", ONE, absent = "never, or not found", detail = true)]
    pub imbalance: Ratio,
}

/// Warm-up of a plant under its control thermostat.
#[derive(Clone, Debug)]
pub struct WarmUp {
    /// Cells and further circuits.
    pub layout: Layout,
    /// How the burner gives its output.
    pub turndown: Turndown,
    /// When heat is asked for.
    pub demand: Demand,
    /// The point whose temperature counts.
    pub watched: Watched,
}

impl Default for WarmUp {
    fn default() -> Self {
        Self { layout: Layout::default(), turndown: Turndown::Fixed, demand: Demand::default(), watched: Watched::Block }
    }
}

impl Context for WarmUp {
    const SETTINGS: &'static [Setting] = layout_settings![BURNER, DEMAND, DEMAND_CHANGES, DEMAND_PUMP, WATCHED_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self {
            layout: Layout::from_settings(settings)?,
            turndown: Turndown::from_settings(settings)?,
            demand: Demand::from_settings(settings)?,
            watched: settings.choice("watched", WATCHED)?,
        })
    }
}

plant_rules! {
    refuse NO_TURNDOWN on "low_output": super::plant::NO_TURNDOWN_TEXT;
    refuse POINT_IS_MISSING on "target_temperature": "the plant has no such point to watch: no emitter, no pipe, or metal and water sharing one temperature";
    notice ALREADY_THERE on "time": "the point watched is at or above the target from the start";
    notice NEVER on "time": "the target is never reached: the plant comes to rest, or repeats its cycle, below it (see highest_temperature): the burner is too small for the losses, the thermostat holds the plant below, or no heat is asked for";
    notice NOT_FOUND on "time": super::plant::NOT_FOUND_TEXT;
    notice LIMIT_TRIPS on "limit_trip_time": "the limit thermostat locks the burner out on the way: it stays off until reset by hand";
    notice HEAT_BOOK_OPEN on "imbalance": super::plant::HEAT_BOOK_OPEN_TEXT;
}

struct Found {
    time: f64,
    heat: f64,
    stored: f64,
    lost: f64,
    emitted: f64,
    block: f64,
    stops: f64,
    highest: f64,
    trip: f64,
    imbalance: f64,
}

const NONE: Found = Found {
    time: f64::NAN,
    heat: f64::NAN,
    stored: f64::NAN,
    lost: f64::NAN,
    emitted: f64::NAN,
    block: f64::NAN,
    stops: f64::NAN,
    highest: f64::NAN,
    trip: f64::NAN,
    imbalance: f64::NAN,
};

/// Stops of the burner followed at most.
const MOST_STOPS: f64 = 1000.0;

impl WarmUp {
    fn follow(&self, input: &WarmUpState, mut switchings: Option<&mut Switchings>) -> Found {
        let fired = FiredPlant::of(input);
        let plant = Plant::of(input);
        if !Plant::is_whole(input) {
            return NONE;
        }
        let Some(mut laid) = plant.lay_out(&self.layout, State::Before, alloc::vec![fired.sensor()]) else { return NONE };
        let Some(node) = self.watched.point(&plant).and_then(|point| laid.model.node(point)) else { return NONE };
        let cut_in = input.cut_out_temperature.si() - input.control_differential.si();
        let controls = Controls { anti_cycling: input.anti_cycling_delay.si(), ..fired.controls(self.turndown, cut_in) };
        let controls = controls.under(&self.demand);
        let mark = Mark { node, level: input.target_temperature.si(), direction: Direction::Rising };
        let (mut stops, mut trip, mut reached) = (0.0, f64::NAN, None);
        let (mut recurrence, mut holds, mut changes_left) = (Recurrence::default(), false, self.demand.changes.len());
        let outcome = run(&mut laid.model, &controls, &[mark], Peak::Kept(node), &Bounds::USUAL, None, |what, time, model, state| {
            if let Some(list) = switchings.as_deref_mut() {
                list.note(what, time, state);
            }
            // The target not being reached in a cycle that repeats, it never is.
            holds = recurrence.repeats(what, model, state) && changes_left == 0;
            match what {
                What::Mark(_) => reached = Some(time),
                What::BurnerStops => stops += 1.0,
                What::LimitTrips => trip = time,
                What::Demand(_) => changes_left -= 1,
                _ => {}
            }
            if reached.is_some() || holds || stops >= MOST_STOPS { Then::Stop } else { Then::GoOn }
        });
        let solver = &outcome.solver;
        let Some(time) = reached else {
            let highest = match outcome.ending {
                Ending::Settled => outcome.highest.max(outcome.rest(node)),
                Ending::Stopped if holds => outcome.highest,
                _ => f64::NAN,
            };
            return Found { stops, highest, trip, ..NONE };
        };
        let state = solver.state();
        let (pipes, emitted) = laid.pipes_and_emitters(state);
        Found {
            time,
            heat: laid.model.heat_put_in(state),
            stored: laid.model.stored(state),
            lost: laid.model.casing_heat(state) + pipes,
            emitted,
            block: state[0],
            stops,
            highest: f64::NAN,
            trip,
            imbalance: laid.model.imbalance(state),
        }
    }
}

impl Calculation for WarmUp {
    type Input = WarmUpState;
    type Output = WarmUpResult;
    const INFO: Info = Info {
        name: "warm_up",
        title: "Warm-up of a heat generator and its circuits",
        summary: "How long a plant takes from its start to a temperature at the block, an emitter or the return, with a fixed, two-stage or modulating burner, and where the heat has gone by then.",
        sources: &[
            Source::new("energy balance of stirred masses in a row; first law", "block, pipe cells, emitters"),
            Source::new("EN 442 (exponent form, from memory)", "emitter output against temperature difference"),
        ],
        accuracy: "The equations are solved to about one part in 10^8 of the time; the burner's output (5 %) and the heat capacities (10 %) limit the answer.",
        cautions: &[],
        checked_against: "closed form of one mass with a linear loss (test); the same network as cool_down and circuit_cycling, which have outside checks",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;
    const LONG: bool = true;

    fn check(&self, input: &WarmUpState) -> Raised {
        let plant = Plant::of(input);
        check_plant(&plant, &self.layout, true)
            .when(NO_TURNDOWN, FiredPlant::of(input).has_no_turndown(self.turndown))
            .when(POINT_IS_MISSING, self.watched.point(&plant).is_none())
    }

    fn review(&self, _input: &WarmUpState, output: &WarmUpResult) -> Raised {
        Raised::NONE
            .when(ALREADY_THERE, output.time.si() == 0.0)
            .when(NEVER, output.time.si().is_nan() && !output.highest_temperature.si().is_nan())
            .when(NOT_FOUND, output.time.si().is_nan() && output.highest_temperature.si().is_nan())
            .when(LIMIT_TRIPS, !output.limit_trip_time.si().is_nan())
            .when(HEAT_BOOK_OPEN, output.imbalance.si().abs() > 1e-6)
    }

    fn compute<W: Working>(&self, input: &WarmUpState, working: &mut W) -> WarmUpResult {
        let found = self.follow(input, None);
        step!(working, let time: "\\tau" in MINUTE = Time::from_si(found.time), "integration of the heat balances");
        step!(working, let heat_put_in: "Q" in KILOJOULE = Energy::from_si(found.heat), "integral of the burner's output");
        step!(working, let heat_stored: "Q_S" in KILOJOULE = Energy::from_si(found.stored), "heat capacities times rise");
        step!(working, let heat_lost: "Q_V" in KILOJOULE = Energy::from_si(found.lost), "integral of the losses");
        step!(working, let emitter_heat: "Q_E" in KILOJOULE = Energy::from_si(found.emitted), "integral of the emitters' output");
        WarmUpResult {
            time,
            heat_put_in,
            heat_stored,
            heat_lost,
            emitter_heat,
            block_temperature_then: ThermodynamicTemperature::from_si(found.block),
            stop_count: Ratio::from_si(found.stops),
            highest_temperature: ThermodynamicTemperature::from_si(found.highest),
            limit_trip_time: Time::from_si(found.trip),
            imbalance: Ratio::from_si(found.imbalance),
        }
    }

    /// Every switching on the way.
    fn tables(&self, input: &WarmUpState) -> Vec<Table> {
        let mut switchings = Switchings::default();
        self.follow(input, Some(&mut switchings));
        alloc::vec![switchings.table()]
    }
}

#[cfg(test)]
mod tests {
    use super::super::cool_down::tests::{bypass, radiator};
    use super::super::plant::{Opening, with_plant};
    use super::*;
    use crate::record::Record;

    fn cold() -> WarmUpState {
        let rest = WarmUpState::read([("burner_output", "12 kW"), ("cut_out_temperature", "80 degC"), ("target_temperature", "60 degC")]);
        let start = ThermodynamicTemperature::from_si(293.15);
        WarmUpState { block_temperature: start, circuit_temperature: start, ..with_plant(&bypass(), &rest.unwrap()) }
    }

    #[test]
    fn a_block_with_a_short_loop_warms_as_one_mass() {
        // Closed form of one mass with block and loop together; the loop lags by seconds.
        let got = WarmUp::default().evaluate(&cold()).unwrap();
        let (capacity, conductance) = (97_446.0 + 5250.0, 6.0 + 3.5 * 0.75);
        let closed = -capacity / conductance * crate::math::ln(1.0 - conductance * 40.0 / 12_000.0);
        assert!((got.time.si() / closed - 1.0).abs() < 0.01, "{} {closed}", got.time.si());
        assert!((got.heat_put_in.si() / (12_000.0 * got.time.si()) - 1.0).abs() < 1e-9);
        let parts = got.heat_stored.si() + got.heat_lost.si() + got.emitter_heat.si();
        assert!((parts / got.heat_put_in.si() - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_smaller_or_turned_down_burner_takes_longer() {
        let mut calculation = WarmUp::default();
        let fixed = calculation.evaluate(&cold()).unwrap().time.si();
        let low = WarmUpState { low_output: Power::from_si(4000.0), turn_down_band: TemperatureInterval::from_si(30.0), ..cold() };
        calculation.turndown = Turndown::TwoStage;
        let staged = calculation.evaluate(&low).unwrap().time.si();
        calculation.turndown = Turndown::Modulating;
        let modulating = calculation.evaluate(&low).unwrap();
        assert!(modulating.imbalance.si().abs() < 1e-9);
        // Full output to 50 degC, then one third of it, or a fall from all to three quarters.
        assert!(staged > modulating.time.si() && modulating.time.si() > fixed, "{fixed} {staged} {}", modulating.time.si());
        let quarter_time = fixed / 4.0;
        assert!((staged / (3.0 * quarter_time + 3.0 * quarter_time) - 1.0).abs() < 0.05, "{staged} {fixed}");
        assert_eq!(calculation.evaluate(&cold()).err().unwrap().code(), "NO_TURNDOWN");
    }

    #[test]
    fn the_emitter_comes_later_than_the_block() {
        let mut calculation = WarmUp::default();
        calculation.layout.circuits.push(radiator(Opening::Open));
        let input =
            WarmUpState { emitter_output: Power::from_si(1500.0), emitter_heat_capacity: HeatCapacity::from_si(45_000.0), ..cold() };
        let block = calculation.evaluate(&input).unwrap();
        calculation.watched = Watched::Emitter;
        let emitter = calculation.evaluate(&input).unwrap();
        assert!(emitter.time.si() > block.time.si() + 10.0);
        assert!(emitter.emitter_heat.si() > 0.0);
    }

    #[test]
    fn what_cannot_be_reached_is_said() {
        let hot = WarmUpState { target_temperature: ThermodynamicTemperature::from_si(363.15), ..cold() };
        let got = WarmUp::default().evaluate(&hot).unwrap();
        assert!(got.time.si().is_nan() && got.stop_count.si() > 0.0);
        // It repeats its cycle below: the block gets no hotter than the cut-out.
        assert_eq!(codes(&got), ["NEVER"]);
        assert!((got.highest_temperature.si() - 353.15).abs() < 1e-6, "{}", got.highest_temperature.si());
        let weak = WarmUpState { burner_output: Power::from_si(100.0), ..cold() };
        let got = WarmUp::default().evaluate(&weak).unwrap();
        assert!(got.time.si().is_nan());
        assert_eq!(codes(&got), ["NEVER"]);
        assert!((got.highest_temperature.si() - 293.15 - 100.0 / 8.7).abs() < 0.2, "{}", got.highest_temperature.si());
        let off = WarmUp { demand: Demand { at_start: false, ..Demand::default() }, ..WarmUp::default() };
        let got = off.evaluate(&cold()).unwrap();
        assert_eq!(codes(&got), ["NEVER"]);
        assert!((got.highest_temperature.si() - 293.15).abs() < 1e-9);
    }

    fn codes(got: &crate::calculation::Evaluated<WarmUp>) -> Vec<&'static str> {
        got.notices().iter().map(|notice| notice.code).filter(|code| *code != "UNUSUAL").collect()
    }

    #[test]
    fn what_does_not_end_is_not_called_never() {
        // A room that takes years to warm to 25 degC: no week of cycles tells.
        let slow = WarmUpState {
            room_heat_capacity: HeatCapacity::from_si(5e9),
            target_temperature: ThermodynamicTemperature::from_si(298.15),
            room_loss: ThermalConductance::from_si(20.0),
            ..cold()
        };
        let calculation = WarmUp { watched: Watched::Room, ..WarmUp::default() };
        let got = calculation.evaluate(&slow).unwrap();
        assert!(got.time.si().is_nan() && got.highest_temperature.si().is_nan());
        assert_eq!(codes(&got), ["NOT_FOUND"]);
    }

    #[test]
    fn demand_limit_and_delay_are_obeyed() {
        let plain = WarmUp::default().evaluate(&cold()).unwrap().time.si();
        // Asked for after an hour, it is there an hour later; with a pause on the way, later still.
        let minutes = |values: &[f64]| values.iter().map(|t| Time::from_si(t * 60.0)).collect::<Vec<_>>();
        let late = |changes: &[f64]| {
            let demand = Demand { at_start: false, changes: minutes(changes), ..Demand::default() };
            WarmUp { demand, ..WarmUp::default() }
        };
        let hour = late(&[60.0]).evaluate(&cold()).unwrap().time.si();
        assert!((hour - 3600.0 - plain).abs() < 1e-5, "{hour} {plain}");
        assert!(late(&[60.0, 62.0, 72.0]).evaluate(&cold()).unwrap().time.si() > hour + 590.0);
        let table = &late(&[60.0]).tables(&cold())[0];
        assert_eq!(table.row_names, ["demand begins", "lights"]);
        assert_eq!(table.columns[0].values, [3600.0, 3600.0]);
        // A limit below the target locks out on the way, at that temperature.
        let tight = WarmUpState { limit_temperature: ThermodynamicTemperature::from_si(323.15), ..cold() };
        let got = WarmUp::default().evaluate(&tight).unwrap();
        assert!(got.time.si().is_nan() && got.limit_trip_time.si() > 0.0 && got.limit_trip_time.si() < plain);
        assert_eq!(codes(&got), ["NEVER", "LIMIT_TRIPS"]);
        assert!((got.highest_temperature.si() - 323.15).abs() < 1e-3, "{}", got.highest_temperature.si());
        // An emitter that needs more than one burn waits for the delay.
        let emitter = WarmUpState {
            emitter_output: Power::from_si(1500.0),
            emitter_heat_capacity: HeatCapacity::from_si(400_000.0),
            target_temperature: ThermodynamicTemperature::from_si(347.0),
            pump_flow: MassRate::from_si(0.05),
            ..cold()
        };
        let calculation = WarmUp { watched: Watched::Emitter, ..WarmUp::default() };
        let prompt = calculation.evaluate(&emitter).unwrap();
        assert!(prompt.stop_count.si() >= 1.0, "{:?}", prompt.output);
        let delayed = WarmUpState { anti_cycling_delay: Time::from_si(1200.0), ..emitter };
        // Later, or the pauses let the emitter lose what it gained.
        let later = calculation.evaluate(&delayed).unwrap();
        assert!(!(later.time.si() <= prompt.time.si() + 60.0), "{:?} {:?}", later.output, prompt.output);
    }
}
