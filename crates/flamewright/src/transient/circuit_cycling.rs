//! The calculation `circuit_cycling`: on and off times of a burner on a block with its circuits.

use super::plant::{
    BURNER, DEMAND, DEMAND_CHANGES, DEMAND_PUMP, Demand, FiredPlant, Layout, Plant, State, Turndown, fired_plant_record, layout_settings,
    plant_record, plant_rules,
};
use super::run::{Bounds, Ending, Peak, Recurrence, Switchings, Then, What, run};
use super::thermostat::Controls;
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Raised, Setting, Settings, Source, Table};
use crate::quantity::types::{
    Frequency, HeatCapacity, HeatCapacityPerLength, Length, Mass, MassDensity, MassRate, Power, Pressure, Ratio, SpecificHeatCapacity,
    TemperatureInterval, ThermalConductance, ThermalConductivity, ThermodynamicTemperature, Time, Volume,
};
use crate::quantity::units::{KILOWATT, PER_HOUR, SECOND};
use crate::quantity::{LinearTransmittance, Value};
use crate::record::record;
use crate::working::{Working, step};
use alloc::vec::Vec;

fired_plant_record! {
    /// A plant whose burner a thermostat switches.
    pub struct CircuitCyclingState {
        /// Temperature at which it lights the burner again, on falling temperature.
        #[field("t_{on}", DEGREE_CELSIUS, -20.0..=150.0, usual = 20.0..=90.0)]
        pub cut_in_temperature: ThermodynamicTemperature,
        /// Least time the burner stays off.
        #[field("\\tau_{min}", MINUTE, 0.0..=120.0, default = 0.0)]
        pub anti_cycling_delay: Time,
    }
}

/// How the burner cycles once its cycles repeat.
#[record]
pub struct CircuitCyclingResult {
    /// Time the burner burns in each cycle.
    #[field("\\tau_{on}", SECOND, absent = "no repeating cycle, or not found")]
    pub on_time: Time,
    /// Time it stands in each cycle.
    #[field("\\tau_{off}", SECOND, absent = "no repeating cycle, or not found")]
    pub off_time: Time,
    /// Time of a whole cycle.
    #[field("\\tau", SECOND, absent = "no repeating cycle, or not found")]
    pub period: Time,
    /// Starts per hour.
    #[field("z", PER_HOUR, absent = "no repeating cycle, or not found")]
    pub start_rate: Frequency,
    /// Share of the time the burner burns.
    #[field("d", PERCENT, absent = "no repeating cycle, or not found")]
    pub duty: Ratio,
    /// Mean heat from the burner over a cycle; what it gives at rest, where it burns without stopping.
    #[field("\\bar P", KILOWATT, absent = "no repeating cycle, or not found")]
    pub mean_output: Power,
    /// Temperature of the block's water at which the plant comes to rest, where the burner burns or stands without end.
    #[field("t_\\infty", DEGREE_CELSIUS, absent = "burner or stages cycle, or not found")]
    pub steady_temperature: ThermodynamicTemperature,
    /// Cycles until they repeat.
    #[field("N", ONE, detail = true)]
    pub settling_count: Ratio,
    /// Time followed: until the cycles repeat, or the plant comes to rest, or 500 cycles or a week are over.
    #[field("\\tau_N", MINUTE, absent = "the sum did not end", detail = true)]
    pub followed_time: Time,
    /// Time of a whole cycle of the stages, where these change over while the burner burns without stopping.
    #[field("\\tau_{st}", SECOND, absent = "the stages do not cycle by themselves")]
    pub stage_period: Time,
    /// Time at which the limit thermostat locks the burner out.
    #[field("\\tau_{lim}", MINUTE, absent = "it does not trip")]
    pub limit_trip_time: Time,
}

/// Cycling of a burner on a block with its circuits.
#[derive(Clone, Debug, Default)]
pub struct CircuitCycling {
    /// Cells and further circuits.
    pub layout: Layout,
    /// How the burner gives its output.
    pub turndown: Turndown,
    /// When heat is asked for.
    pub demand: Demand,
}

impl Context for CircuitCycling {
    const SETTINGS: &'static [Setting] = layout_settings![BURNER, DEMAND, DEMAND_CHANGES, DEMAND_PUMP];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self {
            layout: Layout::from_settings(settings)?,
            turndown: Turndown::from_settings(settings)?,
            demand: Demand::from_settings(settings)?,
        })
    }
}

plant_rules! {
    refuse NO_TURNDOWN on "low_output": super::plant::NO_TURNDOWN_TEXT;
    refuse NO_DIFFERENTIAL on "cut_in_temperature": super::plant::NO_DIFFERENTIAL_TEXT;
    notice NEVER_STOPS on "steady_temperature": "the cut-out is not reached: circuits and casing take all the burner gives, it burns without stopping";
    notice SETTLES on "steady_temperature": "the burner does not cycle: turned down to mean_output it holds the plant at steady_temperature";
    notice STAGES_CYCLE on "stage_period": "the cut-out is not reached: the burner burns without stopping, its stages changing over as they come to repeat";
    notice NEVER_LIGHTS on "steady_temperature": "the plant comes to rest above the cut-in: the burner never lights again";
    notice DEMAND_ENDS on "steady_temperature": "no heat is asked for at the end: the burner stands and the plant comes to rest; the switchings until then are in the table";
    notice LIMIT_TRIPS on "limit_trip_time": "the limit thermostat locks the burner out: it stays off until reset by hand";
    notice NOT_REPEATING on "on_time": "the cycles did not repeat one like the other within the 500, or the week, that were followed: the plant is still warming, or cycles of several lengths take turns (see the table of switchings)";
    notice NOT_FOUND on "on_time": super::plant::NOT_FOUND_TEXT;
    notice SHORT_CYCLES on "start_rate": "the burner starts more than twelve times an hour (a notice of ours, common practice without a source): look at differential, water content and turn-down";
}

struct Cycle {
    on: f64,
    off: f64,
    mean: f64,
    steady: f64,
    count: f64,
    followed: f64,
    stages: f64,
    trip: f64,
}

const NONE: Cycle = Cycle {
    on: f64::NAN,
    off: f64::NAN,
    mean: f64::NAN,
    steady: f64::NAN,
    count: f64::NAN,
    followed: f64::NAN,
    stages: f64::NAN,
    trip: f64::NAN,
};

/// Cycles followed at most.
const MOST_CYCLES: usize = 500;

impl CircuitCycling {
    fn follow(&self, input: &CircuitCyclingState, mut switchings: Option<&mut Switchings>) -> Cycle {
        let fired = FiredPlant::of(input);
        if !Plant::is_whole(input) {
            return NONE;
        }
        let Some(mut laid) = Plant::of(input).lay_out(&self.layout, State::Before, alloc::vec![fired.sensor()]) else { return NONE };
        let controls = fired.controls(self.turndown, input.cut_in_temperature.si());
        let controls = Controls { anti_cycling: input.anti_cycling_delay.si(), ..controls }.under(&self.demand);
        let (mut lit, mut stopped, mut on, mut off, mut trip) = (f64::NAN, f64::NAN, f64::NAN, f64::NAN, f64::NAN);
        let (mut heat_when_lit, mut mean) = (f64::NAN, f64::NAN);
        // While the burner burns on: when the high stage last came back, the heat put in by then, the stages' cycle.
        let (mut raised, mut heat_when_raised, mut stages) = (f64::NAN, f64::NAN, f64::NAN);
        let (mut count, mut changes_left) = (0_usize, self.demand.changes.len());
        let (mut recurrence, mut repeats) = (Recurrence::default(), false);
        let outcome = run(&mut laid.model, &controls, &[], Peak::Ignored, &Bounds::USUAL, None, |what, time, model, state| {
            if let Some(list) = switchings.as_deref_mut() {
                list.note(what, time, state);
            }
            repeats = recurrence.repeats(what, model, state) && changes_left == 0;
            match what {
                What::BurnerStops => {
                    on = time - lit;
                    stopped = time;
                    (raised, stages) = (f64::NAN, f64::NAN);
                }
                What::BurnerLights => {
                    off = time - stopped;
                    count += 1;
                    let heat = model.heat_put_in(state);
                    mean = (heat - heat_when_lit) / (time - lit);
                    (lit, heat_when_lit) = (time, heat);
                }
                What::HighStage(true) => {
                    stages = time - raised;
                    let heat = model.heat_put_in(state);
                    mean = (heat - heat_when_raised) / stages;
                    (raised, heat_when_raised) = (time, heat);
                    count += 1;
                }
                What::LimitTrips => trip = time,
                What::Demand(_) => {
                    changes_left -= 1;
                    (lit, stopped, on, off) = (f64::NAN, f64::NAN, f64::NAN, f64::NAN);
                    (raised, stages) = (f64::NAN, f64::NAN);
                }
                _ => {}
            }
            if repeats || count >= MOST_CYCLES { Then::Stop } else { Then::GoOn }
        });
        let all = Cycle { count: count as f64, followed: outcome.solver.time(), trip, ..NONE };
        match outcome.ending {
            Ending::Stopped if repeats && !stages.is_nan() => Cycle { mean, stages, ..all },
            Ending::Stopped if repeats => Cycle { on, off, mean, ..all },
            Ending::Settled => {
                let burning = outcome.steady().map_or(f64::NAN, |state| laid.model.firing_power(state));
                Cycle { mean: burning, steady: outcome.rest(0), ..all }
            }
            Ending::Stopped | Ending::Horizon => all,
            _ => Cycle { followed: f64::NAN, ..all },
        }
    }
}

impl Calculation for CircuitCycling {
    type Input = CircuitCyclingState;
    type Output = CircuitCyclingResult;
    const INFO: Info = Info {
        name: "circuit_cycling",
        title: "Cycling of a burner on its circuits",
        summary: "On and off times, starts per hour and duty of a burner on a block with pump, pipes and emitters, once the cycles repeat; fixed, two-stage or modulating.",
        sources: &[
            Source::new("energy balance of stirred masses in a row; first law", "block, pipe cells, emitters"),
            Source::new("EN 442 (exponent form, from memory)", "emitter load"),
        ],
        accuracy: "The cycle is found to better than one part in 10^6 (random plants, beside runs at a thousandth of the local error); the emitter's output (10 %) and the heat capacities (10 %) limit the answer.",
        cautions: &[],
        checked_against: "heat/burner_cycling.csv (rows with a circuit)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;
    const LONG: bool = true;

    fn check(&self, input: &CircuitCyclingState) -> Raised {
        check_plant(&Plant::of(input), &self.layout, true)
            .when(NO_TURNDOWN, FiredPlant::of(input).has_no_turndown(self.turndown))
            .when(NO_DIFFERENTIAL, input.cut_in_temperature.si() >= input.cut_out_temperature.si())
    }

    fn review(&self, input: &CircuitCyclingState, output: &CircuitCyclingResult) -> Raised {
        let (rests, burns) = (!output.steady_temperature.si().is_nan(), output.mean_output.si() > input.standing_heat.si());
        let trips = !output.limit_trip_time.si().is_nan();
        let settles = burns
            && self.turndown == Turndown::Modulating
            && output.mean_output.si() - input.standing_heat.si() < input.burner_output.si() * (1.0 - 1e-9);
        let stages = !output.stage_period.si().is_nan();
        let none = output.on_time.si().is_nan() && !rests && !stages;
        let unfinished = output.followed_time.si().is_nan();
        Raised::NONE
            .when(NEVER_STOPS, rests && burns && !settles)
            .when(SETTLES, rests && settles)
            .when(STAGES_CYCLE, stages)
            .when(NEVER_LIGHTS, rests && !burns && !trips && self.demand.at_end())
            .when(DEMAND_ENDS, rests && !burns && !self.demand.at_end())
            .when(LIMIT_TRIPS, trips)
            .when(NOT_REPEATING, none && !unfinished)
            .when(NOT_FOUND, none && unfinished)
            .when(SHORT_CYCLES, output.start_rate.si() > 12.0 / 3600.0)
    }

    fn compute<W: Working>(&self, input: &CircuitCyclingState, working: &mut W) -> CircuitCyclingResult {
        let found = self.follow(input, None);
        step!(working, let on_time: "\\tau_{on}" in SECOND = Time::from_si(found.on), "integration over cycles until they repeat");
        step!(working, let off_time: "\\tau_{off}" in SECOND = Time::from_si(found.off), "integration over cycles until they repeat");
        step!(working, let period: "\\tau" in SECOND = on_time + off_time, "definition");
        step!(working, let start_rate: "z" in PER_HOUR = 1.0 / period, "definition");
        step!(working, let duty: "d" = on_time / period, "definition");
        step!(working, let mean_output: "\\bar P" in KILOWATT = Power::from_si(found.mean), "heat from the burner over a cycle, by its time");
        CircuitCyclingResult {
            on_time,
            off_time,
            period,
            start_rate: Frequency::from_si(start_rate.value),
            duty,
            mean_output,
            steady_temperature: ThermodynamicTemperature::from_si(found.steady),
            settling_count: Ratio::from_si(found.count),
            followed_time: Time::from_si(found.followed),
            stage_period: Time::from_si(found.stages),
            limit_trip_time: Time::from_si(found.trip),
        }
    }

    /// Every switching from the start until the cycles repeat.
    fn tables(&self, input: &CircuitCyclingState) -> Vec<Table> {
        let mut switchings = Switchings::default();
        self.follow(input, Some(&mut switchings));
        alloc::vec![switchings.table()]
    }
}

#[cfg(test)]
mod tests {
    use super::super::cool_down::tests::reference_plant;
    use super::super::plant::with_plant;
    use super::*;
    use crate::record::Record;
    use flamewright_reference::rows;

    fn celsius(t: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::from_si(t + 273.15)
    }

    fn reference(row: &flamewright_reference::Row) -> CircuitCyclingState {
        let cases = rows("heat/cooldown_circuit_params.csv");
        let case = cases.iter().find(|case| case.text("case_id") == row.text("circuit_case")).unwrap();
        let rest = CircuitCyclingState {
            burner_output: Power::from_si(row.number("burner_power_W")),
            cut_out_temperature: celsius(row.number("T_off_C")),
            cut_in_temperature: celsius(row.number("T_on_C")),
            ..CircuitCyclingState::unset()
        };
        with_plant(&reference_plant(case), &rest)
    }

    #[test]
    fn limit_cycles_of_the_reference() {
        let mut seen = 0;
        for row in rows("heat/burner_cycling.csv").iter().filter(|row| !row.text("circuit_case").is_empty()) {
            let input = reference(row);
            let got = CircuitCycling::default().evaluate(&input).unwrap();
            let close = |got: f64, name: &str| assert!((got / row.number(name) - 1.0).abs() < 2e-8, "{} {name} {got}", row.place);
            close(got.on_time.si(), "time_on_s");
            close(got.off_time.si(), "time_off_s");
            close(got.period.si(), "period_s");
            close(got.start_rate.si() * 3600.0, "starts_per_hour");
            close(got.duty.si(), "duty");
            // Over a whole cycle the burner gives its output while it burns.
            assert!((got.mean_output.si() / (got.duty.si() * input.burner_output.si()) - 1.0).abs() < 1e-6);
            let table = &CircuitCycling::default().tables(&input)[0];
            for (name, block) in table.row_names.iter().zip(&table.columns[1].values) {
                let expected = if name == "lights" { input.cut_in_temperature } else { input.cut_out_temperature };
                assert!((block - expected.si()).abs() < 1e-6, "{name} {block}");
            }
            assert!(table.row_names.len() > 4);
            seen += 1;
        }
        assert_eq!(seen, 2);
    }

    #[test]
    fn turning_down_lengthens_the_burn() {
        let rows = rows("heat/burner_cycling.csv");
        let row = rows.iter().find(|row| !row.text("circuit_case").is_empty()).unwrap();
        let input = CircuitCyclingState { low_output: Power::from_si(4000.0), ..reference(row) };
        let on = |turndown| CircuitCycling { turndown, ..CircuitCycling::default() }.evaluate(&input).unwrap();
        let (fixed, staged, modulating) = (on(Turndown::Fixed), on(Turndown::TwoStage), on(Turndown::Modulating));
        assert!(staged.on_time.si() > 1.2 * fixed.on_time.si());
        assert!(modulating.on_time.si() > 1.2 * fixed.on_time.si());
        // The heat is asked for by the circuits whichever way it is given: nearly the same mean.
        assert!((modulating.mean_output.si() / fixed.mean_output.si() - 1.0).abs() < 0.05);
        // A least output below the load: the burner finds its rest and does not stop.
        let fine = CircuitCyclingState { low_output: Power::from_si(500.0), turn_down_band: TemperatureInterval::from_si(10.0), ..input };
        let steady = CircuitCycling { turndown: Turndown::Modulating, ..CircuitCycling::default() }.evaluate(&fine).unwrap();
        let codes: Vec<_> = steady.notices().iter().map(|notice| notice.code).collect();
        assert!(codes.contains(&"SETTLES") && !codes.contains(&"NEVER_STOPS"), "{codes:?}");
        // By the law of the burner at that temperature.
        let share = (input.cut_out_temperature.si() - steady.steady_temperature.si()) / 10.0;
        let by_law = 500.0 + (fine.burner_output.si() - 500.0) * share;
        assert!((steady.mean_output.si() / by_law - 1.0).abs() < 1e-9, "{:?} {by_law}", steady.mean_output);
        assert!(
            steady.steady_temperature.si() < input.cut_out_temperature.si()
                && steady.steady_temperature.si() > input.cut_out_temperature.si() - 10.0
        );
    }

    /// Time and block temperature of the switchings of this name.
    fn rows_named<'a>(table: &'a Table, name: &'a str) -> impl Iterator<Item = (f64, f64)> + 'a {
        let values = table.columns[0].values.iter().zip(&table.columns[1].values);
        table.row_names.iter().zip(values).filter(move |(row, _)| *row == name).map(|(_, (time, block))| (*time, *block))
    }

    fn first_reference() -> CircuitCyclingState {
        reference(rows("heat/burner_cycling.csv").iter().find(|row| !row.text("circuit_case").is_empty()).unwrap())
    }

    #[test]
    fn the_limit_locks_the_burner_out() {
        // The sensor in its pocket goes on rising after the cut-out, by nearly rate times lag.
        let lagging = CircuitCyclingState { sensor_time_constant: Time::from_si(30.0), ..first_reference() };
        let plain = CircuitCycling::default().evaluate(&lagging).unwrap();
        assert!(plain.on_time.si() > 0.0 && plain.limit_trip_time.si().is_nan());
        let high = CircuitCyclingState { limit_temperature: lagging.cut_out_temperature + TemperatureInterval::from_si(30.0), ..lagging };
        assert_eq!(CircuitCycling::default().evaluate(&high).unwrap().on_time.si(), plain.on_time.si());
        let near = CircuitCyclingState { limit_temperature: lagging.cut_out_temperature + TemperatureInterval::from_si(0.1), ..lagging };
        let got = CircuitCycling::default().evaluate(&near).unwrap();
        let codes: Vec<_> = got.notices().iter().map(|notice| notice.code).collect();
        assert!(codes.contains(&"LIMIT_TRIPS") && !codes.contains(&"NEVER_LIGHTS"), "{codes:?}");
        assert!(got.on_time.si().is_nan());
        // Locked out, the plant goes to the room.
        assert!((got.steady_temperature.si() - near.room_temperature.si()).abs() < 1e-6);
        let table = &CircuitCycling::default().tables(&near)[0];
        let trips: Vec<_> = rows_named(table, "limit trips").collect();
        let (stop, _) = rows_named(table, "stops").next().unwrap();
        assert_eq!(trips.len(), 1);
        assert!((trips[0].0 - got.limit_trip_time.si()).abs() < 1e-9 && trips[0].0 > stop && trips[0].0 < stop + 30.0);
        assert_eq!(rows_named(table, "lights").filter(|(time, _)| *time > trips[0].0).count(), 0);
        // At the limit from the start, it never burns.
        let hot = CircuitCyclingState { limit_temperature: celsius(30.0), ..first_reference() };
        let got = CircuitCycling::default().evaluate(&hot).unwrap();
        assert_eq!((got.limit_trip_time.si(), got.mean_output.si()), (0.0, 0.0));
    }

    #[test]
    fn demand_comes_and_goes() {
        let input = first_reference();
        let always = CircuitCycling::default().evaluate(&input).unwrap();
        let minutes = |values: &[f64]| values.iter().map(|t| Time::from_si(t * 60.0)).collect::<Vec<_>>();
        let demand = Demand { changes: minutes(&[90.0, 150.0]), switches_pump: true, ..Demand::default() };
        let calculation = CircuitCycling { demand, ..CircuitCycling::default() };
        let got = calculation.evaluate(&input).unwrap();
        // After the pause the cycle is the same again.
        assert!((got.on_time.si() / always.on_time.si() - 1.0).abs() < 1e-7, "{:?} {:?}", got.on_time, always.on_time);
        assert!((got.off_time.si() / always.off_time.si() - 1.0).abs() < 1e-7);
        assert!(got.followed_time.si() > 150.0 * 60.0);
        let table = &calculation.tables(&input)[0];
        for (name, at) in [("demand ends", 90.0), ("pump stops", 90.0), ("demand begins", 150.0), ("pump starts", 150.0)] {
            let times: Vec<f64> = rows_named(table, name).map(|(time, _)| time).collect();
            assert_eq!(times, [at * 60.0], "{name}");
        }
        let idle = |time: f64| time > 90.0 * 60.0 && time < 150.0 * 60.0;
        assert_eq!(rows_named(table, "lights").filter(|(time, _)| idle(*time)).count(), 0);
        // Where it ends for good the plant goes to the room, and that is said.
        let demand = Demand { changes: minutes(&[90.0]), ..Demand::default() };
        let got = CircuitCycling { demand, ..CircuitCycling::default() }.evaluate(&input).unwrap();
        let codes: Vec<_> = got.notices().iter().map(|notice| notice.code).collect();
        assert!(codes.contains(&"DEMAND_ENDS") && !codes.contains(&"NEVER_LIGHTS"), "{codes:?}");
        assert!((got.steady_temperature.si() - input.room_temperature.si()).abs() < 1e-6);
    }

    #[test]
    fn demand_is_read_and_refused_by_name() {
        use crate::node::Node;
        let read = |entries: &[(&str, Node)]| {
            let node = Node::Table(entries.iter().map(|(key, value)| ((*key).into(), value.clone())).collect());
            CircuitCycling::from_settings(&Settings::new(&node, CircuitCycling::SETTINGS).unwrap()).map(|made| made.demand)
        };
        assert_eq!(read(&[]).unwrap(), Demand::default());
        let times = |texts: &[&str]| Node::List(texts.iter().map(|text| Node::from(*text)).collect());
        let given = [("demand", Node::from("off")), ("demand_changes", times(&["6 h", "480 min"])), ("pump", Node::from("with_demand"))];
        let demand = read(&given).unwrap();
        assert!(!demand.at_start && demand.switches_pump && !demand.at_end());
        assert_eq!(demand.changes, [Time::from_si(21_600.0), Time::from_si(28_800.0)]);
        assert_eq!(read(&[("demand_changes", times(&["2 h", "1 h"]))]).err().unwrap().field(), "demand_changes");
        assert!(read(&[("demand_changes", times(&["200 h"]))]).is_err());
    }

    #[test]
    fn stages_change_over_below_the_cut_out() {
        let input = CircuitCyclingState {
            low_output: Power::from_si(4000.0),
            turn_down_band: TemperatureInterval::from_si(4.0),
            ..first_reference()
        };
        let calculation = CircuitCycling { turndown: Turndown::TwoStage, ..CircuitCycling::default() };
        let table = &calculation.tables(&input)[0];
        let low: Vec<_> = rows_named(table, "low stage").collect();
        assert!(!low.is_empty() && low.iter().all(|(_, block)| (block - (input.cut_out_temperature.si() - 4.0)).abs() < 1e-6), "{low:?}");
    }

    #[test]
    fn stages_may_cycle_while_the_burner_burns_on() {
        // A load between the two outputs: the low stage does not hold the temperature, the high one raises it.
        let input = CircuitCyclingState {
            burner_output: Power::from_si(6000.0),
            low_output: Power::from_si(400.0),
            turn_down_band: TemperatureInterval::from_si(4.0),
            ..first_reference()
        };
        let calculation = CircuitCycling { turndown: Turndown::TwoStage, ..CircuitCycling::default() };
        let got = calculation.evaluate(&input).unwrap();
        let codes: Vec<_> = got.notices().iter().map(|notice| notice.code).collect();
        assert!(codes.contains(&"STAGES_CYCLE") && !codes.contains(&"NOT_REPEATING"), "{codes:?}");
        assert!(got.stage_period.si() > 0.0 && got.on_time.si().is_nan());
        assert!(got.mean_output.si() > 400.0 && got.mean_output.si() < 6000.0);
        let table = &calculation.tables(&input)[0];
        let highs: Vec<f64> = rows_named(table, "high stage").map(|(time, _)| time).collect();
        let [.., before, last] = highs.as_slice() else { panic!("{highs:?}") };
        assert!(((last - before) / got.stage_period.si() - 1.0).abs() < 1e-9);
        assert_eq!(rows_named(table, "stops").count(), 0);
    }

    #[test]
    fn what_does_not_end_is_not_called_never() {
        // Water and a room that gathers heat for years: no cycle repeats within 500, or a week.
        let slow = CircuitCyclingState {
            room_heat_capacity: HeatCapacity::from_si(2e9),
            room_loss: ThermalConductance::from_si(20.0),
            ..first_reference()
        };
        let got = CircuitCycling::default().evaluate(&slow).unwrap();
        let codes: Vec<_> = got.notices().iter().map(|notice| notice.code).collect();
        assert!(
            !codes.contains(&"NOT_FOUND") && codes.contains(&"NOT_REPEATING") && !codes.iter().any(|code| code.starts_with("NEVER")),
            "{codes:?}"
        );
        assert!(got.on_time.si().is_nan() && got.steady_temperature.si().is_nan() && got.followed_time.si() > 0.0);
    }

    #[test]
    fn delay_and_limits() {
        let rows = rows("heat/burner_cycling.csv");
        let row = rows.iter().find(|row| !row.text("circuit_case").is_empty()).unwrap();
        let held = CircuitCyclingState { anti_cycling_delay: Time::from_si(900.0), ..reference(row) };
        let got = CircuitCycling::default().evaluate(&held).unwrap();
        assert!((got.off_time.si() - 900.0).abs() < 1e-6, "{}", got.off_time.si());
        let big_load = CircuitCyclingState { burner_output: Power::from_si(1000.0), ..reference(row) };
        let got = CircuitCycling::default().evaluate(&big_load).unwrap();
        assert!(got.notices().iter().any(|notice| notice.code == "NEVER_STOPS"));
        let cold_cut_in = CircuitCyclingState { cut_in_temperature: celsius(15.0), ..reference(row) };
        let got = CircuitCycling::default().evaluate(&cold_cut_in).unwrap();
        assert!(got.notices().iter().any(|notice| notice.code == "NEVER_LIGHTS"));
        // The delay makes the off times equal at once; the cycle counts only when the rest repeats too.
        let table = &CircuitCycling::default().tables(&held)[0];
        let lights: Vec<f64> = rows_named(table, "lights").map(|(_, block)| block).collect();
        let [.., last, end] = lights.as_slice() else { panic!("{lights:?}") };
        assert!((last - end).abs() < 1e-6 && *end < held.cut_in_temperature.si(), "{lights:?}");
        let none = CircuitCyclingState { cut_in_temperature: celsius(80.0), ..reference(row) };
        assert_eq!(CircuitCycling::default().evaluate(&none).err().unwrap().code(), "NO_DIFFERENTIAL");
    }
}
