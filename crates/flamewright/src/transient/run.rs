//! One run of a network under its controls: integrates between switchings, finds the moments.

use super::network::{Firing, Model, Point};
use super::solver::{Direction, Halt, Solver};
use super::thermostat::{Burner, Controls, PumpRule};
use crate::calculation::{Column, Table};
use crate::quantity::units;
use alloc::borrow::ToOwned;
use alloc::vec::Vec;

/// Bounds of a run.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Bounds {
    /// Longest time followed, s
    pub horizon: f64,
    /// Local error of a step, K
    pub tolerance: f64,
    pub most_steps: u32,
    /// Switchings followed at most.
    pub most_switchings: u32,
}

impl Bounds {
    /// A week, within a microkelvin a step: on the reference circuits that is within 1e-8 of the times.
    pub(crate) const USUAL: Bounds = Bounds { horizon: 604_800.0, tolerance: 1e-6, most_steps: 100_000, most_switchings: 20_000 };
}

/// A level somebody wants to know the time of; nothing switches there.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Mark {
    pub node: usize,
    /// K
    pub level: f64,
    pub direction: Direction,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum What {
    BurnerLights,
    BurnerStops,
    HighStage(bool),
    /// The limit thermostat locks the burner out.
    LimitTrips,
    PumpStarts,
    PumpStops,
    Demand(bool),
    Mark(usize),
    /// The watched temperature stops rising.
    Peak,
}

impl What {
    /// The word for it in a table of switchings; nothing switches at a mark or a peak.
    fn word(self) -> Option<&'static str> {
        Some(match self {
            What::BurnerLights => "lights",
            What::BurnerStops => "stops",
            What::HighStage(true) => "high stage",
            What::HighStage(false) => "low stage",
            What::LimitTrips => "limit trips",
            What::PumpStarts => "pump starts",
            What::PumpStops => "pump stops",
            What::Demand(true) => "demand begins",
            What::Demand(false) => "demand ends",
            What::Mark(_) | What::Peak => return None,
        })
    }
}

/// Every switching of a run with its time and the temperature of the block's water, up to a number.
#[derive(Debug, Clone, Default)]
pub(crate) struct Switchings {
    rows: Vec<(&'static str, f64, f64)>,
}

impl Switchings {
    const MOST: usize = 2000;

    pub(crate) fn note(&mut self, what: What, time: f64, state: &[f64]) {
        if let (Some(word), Some(block), true) = (what.word(), state.first(), self.rows.len() < Self::MOST) {
            self.rows.push((word, time, *block));
        }
    }

    pub(crate) fn table(&self) -> Table {
        let column = |name: &str, unit, values| Column { name: name.to_owned(), unit, values };
        Table {
            name: "switchings",
            row_names: self.rows.iter().map(|(word, ..)| (*word).to_owned()).collect(),
            columns: alloc::vec![
                column("time", &units::MINUTE, self.rows.iter().map(|(_, time, _)| *time).collect()),
                column("block", &units::DEGREE_CELSIUS, self.rows.iter().map(|(.., block)| *block).collect()),
            ],
        }
    }
}

/// Whether a plant under its switches has come to repeat itself.
///
/// Looked at each time the burner lights, and each time a high stage comes back. The measure is the
/// heat by which all masses together, the room among them, differ from the last time, as a share of
/// the heat that swings between hot and cold in the cycle. Heat a cycle leaves in a slow store is
/// what is missing between supply and loss, so that this share bounds what on and off times may
/// still change until the slowest store is at rest, however slow it is; the change from cycle to
/// cycle, or of the times alone, does not.
#[derive(Debug, Clone, Default)]
pub(crate) struct Recurrence {
    burner: Cycle,
    stages: Cycle,
}

#[derive(Debug, Clone, Default)]
struct Cycle {
    previous: Vec<f64>,
    stored_when_hot: f64,
    least: Option<f64>,
    no_better: u32,
}

impl Cycle {
    /// Share at which nothing is left to find.
    const NOTHING: f64 = 1e-9;
    /// Share that will do where the last cycles brought it no lower: the local errors of the
    /// integration scatter.
    const LITTLE: f64 = 1e-6;
    const NO_BETTER: u32 = 2;

    fn repeats(&mut self, model: &Model, state: &[f64]) -> bool {
        let swing = self.stored_when_hot - model.stored(state);
        if self.previous.is_empty() {
            self.previous = state.to_vec();
            return false;
        }
        let share = model.heat_between(&self.previous, state) / swing;
        self.previous.copy_from_slice(state);
        if !(swing > 0.0) {
            return false;
        }
        if self.least.is_none_or(|least| share < least) {
            self.least = Some(share);
            self.no_better = 0;
        } else {
            self.no_better += 1;
        }
        share < Self::NOTHING || (share < Self::LITTLE && self.no_better >= Self::NO_BETTER)
    }
}

impl Recurrence {
    /// Takes a happening; true where a cycle ends with it that is as the one before.
    pub(crate) fn repeats(&mut self, what: What, model: &Model, state: &[f64]) -> bool {
        match what {
            What::BurnerStops => {
                self.burner.stored_when_hot = model.stored(state);
                self.stages = Cycle::default();
            }
            What::HighStage(false) => self.stages.stored_when_hot = model.stored(state),
            What::BurnerLights => return self.burner.repeats(model, state),
            What::HighStage(true) => return self.stages.repeats(model, state),
            What::Demand(_) => *self = Self::default(),
            _ => {}
        }
        false
    }
}

/// Whether the maxima of a temperature matter.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Peak {
    Ignored,
    /// The highest value of this node is kept.
    Kept(usize),
    /// As well, each maximum is reported, and the run goes on until none can be higher than the highest.
    Awaited(usize),
}

/// What the caller wants after a happening.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Then {
    GoOn,
    Stop,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Ending {
    /// The caller had seen enough.
    Stopped,
    Horizon,
    /// Nothing awaited can happen any more: the state is near the steady one, or moves only towards it.
    Settled,
    TooManySwitchings,
    Failed(Halt),
    /// The pump is to run and no circuit is open, or the network does not hold what is asked.
    NoFlow,
}

/// What a run leaves behind.
pub(crate) struct Outcome {
    pub ending: Ending,
    pub solver: Solver,
    /// The state at which the plant would come to rest with its switches as they were at the end.
    steady: Vec<f64>,
    steady_found: bool,
    /// Highest temperature of the node whose peak was asked for, K.
    pub highest: f64,
}

impl Outcome {
    pub(crate) fn steady(&self) -> Option<&[f64]> {
        self.steady_found.then_some(&self.steady)
    }

    /// Temperature of a node at that rest; NaN where the run did not end by itself, so that "never"
    /// rests on a sum that was carried through.
    pub(crate) fn rest(&self, node: usize) -> f64 {
        let carried_through = matches!(self.ending, Ending::Stopped | Ending::Settled);
        self.steady().filter(|_| carried_through).and_then(|steady| steady.get(node)).copied().unwrap_or(f64::NAN)
    }
}

/// Temperatures at regular times; when full, every second one is dropped and the interval doubled.
#[derive(Debug, Clone)]
pub(crate) struct Trace {
    nodes: Vec<usize>,
    most: usize,
    interval: f64,
    next: f64,
    pub times: Vec<f64>,
    /// Row by row, one value for each node.
    pub values: Vec<f64>,
}

impl Trace {
    pub(crate) fn new(nodes: Vec<usize>, most: usize) -> Self {
        Trace { nodes, most: most.max(8), interval: 1.0, next: 0.0, times: Vec::new(), values: Vec::new() }
    }

    fn record(&mut self, solver: &Solver, until: f64) {
        while self.next <= until {
            if self.times.len() >= self.most {
                let width = self.nodes.len();
                let kept = self.times.len().div_ceil(2);
                for row in 0..kept {
                    self.times[row] = self.times[2 * row];
                    for column in 0..width {
                        self.values[row * width + column] = self.values[2 * row * width + column];
                    }
                }
                self.times.truncate(kept);
                self.values.truncate(kept * width);
                self.interval *= 2.0;
                #[allow(clippy::cast_precision_loss)]
                let rows = kept as f64;
                self.next = rows * self.interval;
                continue;
            }
            self.times.push(self.next);
            for &node in &self.nodes {
                self.values.push(solver.value_at(node, self.next));
            }
            self.next += self.interval;
        }
    }

    /// One last row at the end of the run.
    fn finish(&mut self, solver: &Solver) {
        if self.times.last().is_none_or(|last| *last < solver.time()) {
            self.times.push(solver.time());
            for &node in &self.nodes {
                self.values.push(solver.state()[node]);
            }
        }
    }
}

/// Where burner and pump stand.
struct Position {
    demand: bool,
    next_demand: usize,
    burning: bool,
    /// The burner has not turned down, or is back at its high stage.
    full: bool,
    locked_out: bool,
    pump: bool,
    overrun_closed: bool,
    off_since: f64,
    /// The control thermostat is closed (asks for heat).
    asks: bool,
}

#[derive(Clone, Copy)]
enum Watch {
    ControlOpens,
    ControlCloses,
    TurnsDown,
    TurnsUp,
    Limit,
    OverrunOpens,
    OverrunCloses,
}

/// A level at which something switches: what, at which node, in which direction.
type Awaited = (Watch, usize, f64, Direction);

/// Marks are kept in the bits of one number.
pub(crate) const MOST_MARKS: usize = 128;

/// Follows the network until the caller stops, nothing awaited can come, or a bound is reached.
///
/// `seen` is called at every happening, in order of time, with the state then. Memory is taken
/// before the first step: none later, however long the run and however often something switches.
#[allow(clippy::too_many_arguments)]
pub(crate) fn run(
    model: &mut Model,
    controls: &Controls,
    marks: &[Mark],
    peak: Peak,
    bounds: &Bounds,
    mut trace: Option<&mut Trace>,
    mut seen: impl FnMut(What, f64, &Model, &[f64]) -> Then,
) -> Outcome {
    debug_assert!(marks.len() <= MOST_MARKS);
    model.set_firing(Firing::OFF);
    let mut solver = Solver::new(model, model.initial(), bounds.tolerance, bounds.most_steps);
    let mut steady = solver.state().to_vec();
    let mut steady_found = false;
    let (peak_of, awaited) = match peak {
        Peak::Ignored => (None, false),
        Peak::Kept(node) => (Some(node), false),
        Peak::Awaited(node) => (Some(node), true),
    };
    let mut highest = peak_of.map_or(f64::NAN, |node| solver.state()[node]);
    macro_rules! end {
        ($ending:expr) => {{
            if let Some(trace) = trace.as_deref_mut() {
                trace.finish(&solver);
            }
            return Outcome { ending: $ending, solver, steady, steady_found, highest };
        }};
    }
    macro_rules! tell {
        ($what:expr) => {
            if seen($what, solver.time(), model, solver.state()) == Then::Stop {
                end!(Ending::Stopped);
            }
        };
    }
    let node_of = |model: &Model, number: usize| model.node(Point::Sensor(number));
    let shown = |model: &Model, number: usize, state: &[f64]| node_of(model, number).map_or(f64::NAN, |node| state[node]);
    let begins = |sensor: usize| shown(model, sensor, solver.state());
    let mut position = Position {
        demand: controls.demand_at_start,
        next_demand: 0,
        burning: false,
        full: false,
        locked_out: false,
        pump: false,
        overrun_closed: controls.overrun.is_some_and(|overrun| begins(overrun.sensor) > overrun.lower),
        off_since: f64::NEG_INFINITY,
        asks: controls.burner.is_some_and(|(_, control)| {
            let shown = begins(control.sensor);
            shown <= control.lower || (shown < control.upper && controls.burning_at_start)
        }),
    };
    let trips_at_once = controls.limit.is_some_and(|(sensor, level)| begins(sensor) >= level);
    if trips_at_once {
        position.locked_out = true;
        tell!(What::LimitTrips);
    }
    let mut marked = 0_u128;
    let mut switchings = 0;
    let mut begun = false;

    loop {
        // Put the switches to what the positions of the thermostats say.
        let now = solver.time();
        while controls.demand_changes.get(position.next_demand).is_some_and(|moment| *moment <= now) {
            position.demand = !position.demand;
            position.next_demand += 1;
            tell!(What::Demand(position.demand));
        }
        let rested = now >= position.off_since + controls.anti_cycling;
        let burn = position.demand && position.asks && !position.locked_out && (position.burning || rested);
        if let Some((burner, control)) = controls.burner {
            if burn != position.burning {
                position.burning = burn;
                if burn {
                    let shown = shown(model, control.sensor, solver.state());
                    position.full = burner.turns_down(&control).is_none_or(|(down, _)| shown < down);
                } else {
                    position.off_since = now;
                }
                if begun {
                    switchings += 1;
                    tell!(if burn { What::BurnerLights } else { What::BurnerStops });
                }
            }
            model.set_firing(if position.burning { burner.firing(&control, position.full) } else { Firing::OFF });
        }
        let pump = match controls.pump {
            PumpRule::Always => true,
            PumpRule::Never => false,
            PumpRule::DemandAndOverrun => position.demand || position.overrun_closed,
        };
        if !model.set_pump(pump) {
            end!(Ending::NoFlow);
        }
        if pump != position.pump {
            position.pump = pump;
            if begun {
                switchings += 1;
                tell!(if pump { What::PumpStarts } else { What::PumpStops });
            }
        }
        begun = true;
        if switchings >= bounds.most_switchings {
            end!(Ending::TooManySwitchings);
        }
        for (number, mark) in marks.iter().enumerate() {
            let value = solver.state()[mark.node];
            let there = match mark.direction {
                Direction::Falling => value <= mark.level,
                Direction::Rising => value >= mark.level,
            };
            if there && marked & (1 << number) == 0 {
                marked |= 1 << number;
                tell!(What::Mark(number));
            }
        }

        // What can happen next in this position.
        let mut watches: [Option<Awaited>; 4] = [None; 4];
        let mut watch = |place: usize, what: Watch, sensor: usize, level: f64, direction: Direction| {
            watches[place] = node_of(model, sensor).map(|node| (what, node, level, direction));
            watches[place].is_some()
        };
        let mut all_there = true;
        if let Some((burner, control)) = controls.burner {
            all_there &= if position.asks {
                watch(0, Watch::ControlOpens, control.sensor, control.upper, Direction::Rising)
            } else {
                watch(0, Watch::ControlCloses, control.sensor, control.lower, Direction::Falling)
            };
            if let (Some((down, up)), true) = (burner.turns_down(&control), position.burning) {
                all_there &= if position.full {
                    watch(1, Watch::TurnsDown, control.sensor, down, Direction::Rising)
                } else {
                    watch(1, Watch::TurnsUp, control.sensor, up, Direction::Falling)
                };
            }
        }
        if let (Some((sensor, level)), false) = (controls.limit, position.locked_out) {
            all_there &= watch(2, Watch::Limit, sensor, level, Direction::Rising);
        }
        if let (Some(overrun), PumpRule::DemandAndOverrun) = (controls.overrun, controls.pump) {
            all_there &= if position.overrun_closed {
                watch(3, Watch::OverrunOpens, overrun.sensor, overrun.lower, Direction::Falling)
            } else {
                watch(3, Watch::OverrunCloses, overrun.sensor, overrun.upper, Direction::Rising)
            };
        }
        if !all_there {
            end!(Ending::NoFlow);
        }
        let waiting = position.demand && position.asks && !position.burning && !position.locked_out && controls.burner.is_some();
        let mut until = bounds.horizon;
        let mut moment_due = false;
        let delay_ends = waiting.then_some(position.off_since + controls.anti_cycling);
        for moment in [controls.demand_changes.get(position.next_demand).copied(), delay_ends].into_iter().flatten() {
            if moment <= until {
                until = moment;
                moment_due = true;
            }
        }
        solver.restart(model);
        steady.copy_from_slice(solver.state());
        steady_found = model.settle(&mut steady);

        // Steps until one of them happens.
        let mut distance = model.distance(solver.state(), &steady);
        'steps: loop {
            if solver.time() >= until {
                if moment_due {
                    break 'steps;
                }
                end!(Ending::Horizon);
            }
            // Close to rest, a level at the steady temperature itself would be passed by rounding only.
            let near_rest = steady_found && distance < 1e3 * bounds.tolerance;
            let only_by_rounding = |node: usize, level: f64| near_rest && (steady[node] - level).abs() < 10.0 * bounds.tolerance;
            if let Err(halt) = solver.step(model, until) {
                end!(Ending::Failed(halt));
            }
            let begin = solver.time_before();
            let mut first: Option<(f64, Watch)> = None;
            for (watch, node, level, direction) in watches.into_iter().flatten() {
                let crossing = solver.crossing(node, level, direction, begin).filter(|_| !only_by_rounding(node, level));
                if let Some(time) = crossing
                    && first.is_none_or(|(earliest, _)| time < earliest)
                {
                    first = Some((time, watch));
                }
            }
            let end = first.map_or(solver.time(), |(time, _)| time);
            // Marks and the peak inside the step, in order of time; a later step may hold another peak.
            let mut peak_time = peak_of.and_then(|node| solver.peak(model, node)).filter(|time| *time <= end);
            if let Some(node) = peak_of {
                highest = highest.max(solver.value_at(node, end));
                if let Some(time) = peak_time {
                    highest = highest.max(solver.value_at(node, time));
                }
            }
            loop {
                let mut next: Option<(f64, What)> = None;
                for (number, mark) in marks.iter().enumerate().filter(|(number, _)| marked & (1 << number) == 0) {
                    let crossing = solver.crossing(mark.node, mark.level, mark.direction, begin);
                    if let Some(time) = crossing.filter(|_| !only_by_rounding(mark.node, mark.level))
                        && time <= end
                        && next.is_none_or(|(earliest, _)| time < earliest)
                    {
                        next = Some((time, What::Mark(number)));
                    }
                }
                if let Some(time) = peak_time.filter(|_| awaited)
                    && next.is_none_or(|(earliest, _)| time < earliest)
                {
                    next = Some((time, What::Peak));
                }
                let Some((time, what)) = next else { break };
                match what {
                    What::Mark(number) => marked |= 1 << number,
                    _ => peak_time = None,
                }
                if seen(what, time, model, solver.state_at(time)) == Then::Stop {
                    if let Some(trace) = trace.as_deref_mut() {
                        trace.record(&solver, time);
                    }
                    solver.cut(time);
                    end!(Ending::Stopped);
                }
            }
            if let Some(trace) = trace.as_deref_mut() {
                trace.record(&solver, end);
            }
            if let Some((time, watch)) = first {
                solver.cut(time);
                match watch {
                    Watch::ControlOpens => position.asks = false,
                    Watch::ControlCloses => position.asks = true,
                    Watch::TurnsDown | Watch::TurnsUp => {
                        position.full = matches!(watch, Watch::TurnsUp);
                        switchings += 1;
                        if matches!(controls.burner, Some((Burner::TwoStage { .. }, _))) {
                            tell!(What::HighStage(position.full));
                        }
                    }
                    Watch::Limit => {
                        position.locked_out = true;
                        tell!(What::LimitTrips);
                    }
                    Watch::OverrunOpens => position.overrun_closed = false,
                    Watch::OverrunCloses => position.overrun_closed = true,
                }
                break 'steps;
            }
            distance = model.distance(solver.state(), &steady);
            if steady_found && !moment_due {
                // In a passive network no temperature ever leaves the band its largest distance from
                // the steady state allows (its matrix is an M-matrix), so what lies beyond cannot
                // come. Where flow or fire hangs on the temperatures that is not so, but nothing gets
                // beyond a level that is above all of them and at which the casing loses what is put in.
                let follows = matches!(model.firing(), Firing::Modulating { .. }) || model.circulates_by_gravity();
                let out_of_reach = |node: usize, level: f64, direction: Direction| match direction {
                    Direction::Falling => !follows && steady[node] - level >= distance,
                    Direction::Rising if follows => model.is_bounded_by(solver.state(), level),
                    Direction::Rising => level - steady[node] >= distance,
                };
                let none_can_come = || {
                    watches.iter().flatten().all(|&(_, node, level, direction)| out_of_reach(node, level, direction))
                        && marks
                            .iter()
                            .enumerate()
                            .all(|(number, mark)| marked & (1 << number) != 0 || out_of_reach(mark.node, mark.level, mark.direction))
                        && (!awaited || peak_of.is_none_or(|node| out_of_reach(node, highest, Direction::Rising)))
                };
                if distance < 0.1 * bounds.tolerance || none_can_come() {
                    end!(Ending::Settled);
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::network::{Block, Circuit, HeatLoss, Network, Part, Point, Pump, Room, Sensor};
    use super::super::thermostat::Thermostat;
    use super::*;
    use std::collections::BTreeMap;
    use std::string::String;
    use std::{println, vec};

    const KELVIN: f64 = 273.15;

    fn rows(text: &str) -> Vec<BTreeMap<String, String>> {
        let mut lines = text.lines().map(|line| {
            let (mut cells, mut cell, mut quoted) = (vec![], String::new(), false);
            for c in line.chars() {
                match c {
                    '"' => quoted = !quoted,
                    ',' if !quoted => cells.push(core::mem::take(&mut cell)),
                    c => cell.push(c),
                }
            }
            cells.push(cell);
            cells
        });
        let head = lines.next().unwrap();
        lines.map(|cells| head.iter().cloned().zip(cells).collect()).collect()
    }

    fn circuit_cases() -> BTreeMap<String, BTreeMap<String, String>> {
        rows(include_str!("../../../../tests/reference/heat/cooldown_circuit_params.csv"))
            .into_iter()
            .map(|row| (row["case_id"].clone(), row))
            .collect()
    }

    fn network(row: &BTreeMap<String, String>) -> Network {
        let n = |name: &str| row[name].parse::<f64>().unwrap();
        let start = n("T0_circuit_C") + KELVIN;
        let run = |length: f64, cells: f64| Part::run(length, n("c_pipe_J_mK"), HeatLoss::linear(n("ua_pipe_W_mK")), cells as usize, start);
        let mut parts = vec![run(n("L_flow_m"), n("n_flow"))];
        if n("emitter_P50_W") > 0.0 {
            parts.push(Part {
                heat_capacity: n("emitter_C_J_K"),
                loss: HeatLoss::power_law(n("emitter_P50_W"), n("emitter_n")),
                cells: 1,
                start,
            });
        }
        parts.push(run(n("L_return_m"), n("n_return")));
        Network {
            block: Block {
                heat_capacity: n("m_iron_kg") * n("c_iron_J_kgK") + n("V_water_L") / 1000.0 * n("rho_w") * n("cp_w"),
                metal: None,
                casing: HeatLoss::linear(n("ua_block_W_K")),
                start: n("T0_block_C") + KELVIN,
            },
            pump: Pump::Flow(n("mdot_kg_s")),
            circuits: vec![Circuit { parts, open: true, flow_coefficient: 1.0, rise: None }],
            room: Room::Fixed(n("T_air_C") + KELVIN),
            water_heat_capacity: n("cp_w"),
            sensors: vec![Sensor { point: Point::Block, time_constant: 0.0 }],
        }
    }

    #[test]
    fn circuits_cool_as_the_reference() {
        let cases = circuit_cases();
        let results = rows(include_str!("../../../../tests/reference/heat/cooldown_circuit_results.csv"));
        let (mut worst_time, mut worst_energy, mut worst_return) = (0.0_f64, 0.0_f64, 0.0_f64);
        for (case, row) in &cases {
            let mut model = Model::new(&network(row)).unwrap();
            let wanted: Vec<_> = results.iter().filter(|r| &r["case_id"] == case).collect();
            let n = |r: &BTreeMap<String, String>, name: &str| r[name].parse::<f64>().unwrap();
            let marks: Vec<Mark> =
                wanted.iter().map(|r| Mark { node: 0, level: n(r, "set_point_C") + KELVIN, direction: Direction::Falling }).collect();
            let mut found = 0;
            let outcome =
                run(&mut model, &Controls::pump_only(true), &marks, Peak::Ignored, &Bounds::USUAL, None, |what, time, model, state| {
                    let What::Mark(number) = what else { return Then::GoOn };
                    let expected = wanted[number];
                    worst_time = worst_time.max((time / n(expected, "time_s") - 1.0).abs());
                    worst_energy = worst_energy.max((-model.stored(state) / n(expected, "stored_energy_released_J") - 1.0).abs());
                    worst_return = worst_return.max((model.return_temperature(state) - KELVIN - n(expected, "T_return_C")).abs());
                    assert!(model.imbalance(state).abs() < 1e-10);
                    found += 1;
                    if found == wanted.len() { Then::Stop } else { Then::GoOn }
                });
            assert_eq!(outcome.ending, Ending::Stopped, "{case}");
            println!("{case}: {} steps, {} s", outcome.solver.steps(), outcome.solver.time());
        }
        println!("time {worst_time:e}, energy {worst_energy:e}, return {worst_return:e} K");
        assert!(worst_time < 1e-7, "{worst_time:e}");
        assert!(worst_energy < 1e-6, "{worst_energy:e}");
        assert!(worst_return < 1e-5, "{worst_return:e}");
    }

    /// A row of equal short cells at a high flow holds the explicit method down though no single
    /// rate is far from the others.
    #[test]
    fn short_cells_at_a_high_flow_do_not_take_small_steps() {
        let cases = circuit_cases();
        let mut network = network(cases.values().next().unwrap());
        let start = network.block.start;
        network.circuits[0].parts = vec![Part::run(1.0, 3000.0, HeatLoss::linear(0.7), 20, start)];
        network.pump = Pump::Flow(0.6);
        let mut model = Model::new(&network).unwrap();
        let mark = Mark { node: 0, level: network.block.start - 20.0, direction: Direction::Falling };
        let controls = Controls::pump_only(true);
        let outcome = run(&mut model, &controls, &[mark], Peak::Ignored, &Bounds::USUAL, None, |_, _, _, _| Then::Stop);
        assert_eq!(outcome.ending, Ending::Stopped);
        // By stability alone: time over the longest step of the explicit method, 3.3 m / (2 flow).
        let longest = 3.3 * (3000.0 / 20.0) / (2.0 * 0.6 * network.water_heat_capacity);
        let held_down = outcome.solver.time() / longest;
        assert!(f64::from(outcome.solver.steps()) < 0.05 * held_down, "{} of {held_down}", outcome.solver.steps());
    }

    #[test]
    fn circuit_cycles_as_the_reference() {
        let cases = circuit_cases();
        for row in rows(include_str!("../../../../tests/reference/heat/burner_cycling.csv")) {
            if row["circuit_case"].is_empty() {
                continue;
            }
            let n = |name: &str| row[name].parse::<f64>().unwrap();
            let network = network(&cases[&row["circuit_case"]]);
            let mut model = Model::new(&network).unwrap();
            let control = Thermostat { sensor: 0, upper: n("T_off_C") + KELVIN, lower: n("T_on_C") + KELVIN };
            let controls = Controls {
                burner: Some((Burner::Fixed(n("burner_power_W")), control)),
                demand_at_start: true,
                burning_at_start: true,
                ..Controls::pump_only(true)
            };
            let (mut lit, mut stopped) = (f64::NAN, f64::NAN);
            let (mut on, mut off) = (f64::NAN, f64::NAN);
            let Outcome { ending, solver, .. } =
                run(&mut model, &controls, &[], Peak::Ignored, &Bounds::USUAL, None, |what, time, _, _| {
                    match what {
                        What::BurnerLights => {
                            let last = off;
                            off = time - stopped;
                            lit = time;
                            if (off / last - 1.0).abs() < 1e-9 {
                                return Then::Stop;
                            }
                        }
                        What::BurnerStops => {
                            on = time - lit;
                            stopped = time;
                        }
                        _ => {}
                    }
                    Then::GoOn
                });
            assert_eq!(ending, Ending::Stopped);
            println!(
                "{on} {off} after {} s, {} steps, {:e} {:e}",
                solver.time(),
                solver.steps(),
                on / n("time_on_s") - 1.0,
                off / n("time_off_s") - 1.0
            );
            assert!((on / n("time_on_s") - 1.0).abs() < 1e-6);
            assert!((off / n("time_off_s") - 1.0).abs() < 1e-6);
        }
    }
}
