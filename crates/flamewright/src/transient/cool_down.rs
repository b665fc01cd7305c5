//! The calculation `cool_down`: how long until a hot block is cool enough, and where its heat goes.

use super::network::Point;
use super::plant::{HOT_BLOCK_CAUTIONS, Laid, Layout, Plant, State, layout_settings, plant_record, plant_rules};
use super::run::{Bounds, MOST_MARKS, Mark, Peak, Then, Trace, What, run};
use super::solver::Direction;
use super::thermostat::Controls;
use crate::Error;
use crate::calculation::{Calculation, Column, Context, Form, Info, Raised, Setting, Settings, Source, Table};
use crate::catalogue::{Bare, read_input};
use crate::node::Node;
use crate::quantity::types::{
    Energy, HeatCapacity, HeatCapacityPerLength, Length, Mass, MassDensity, MassRate, Power, Pressure, Ratio, SpecificHeatCapacity,
    ThermalConductance, ThermalConductivity, ThermodynamicTemperature, Time, Volume,
};
use crate::quantity::units::{KILOJOULE, KILOJOULE_PER_KELVIN, MINUTE};
use crate::quantity::{LinearTransmittance, Value, units};
use crate::record::{Record, record};
use crate::working::{Working, step};
use alloc::borrow::ToOwned;
use alloc::string::String;
use alloc::vec::Vec;

plant_record! {
    /// A hot heat generator, its circuit, and the temperature it is to fall to.
    pub struct CoolDownState {
        /// Temperature to be reached at the point watched.
        #[field("t_Z", DEGREE_CELSIUS, -30.0..=150.0, usual = 20.0..=95.0)]
        pub target_temperature: ThermodynamicTemperature,
    }
}

/// When the target is reached, and where the heat has gone by then.
#[record]
pub struct CoolDownResult {
    /// Time until the target is reached.
    #[field("\\tau", MINUTE, absent = "never, or not found")]
    pub time: Time,
    /// Temperature of the water coming back to the block at that moment.
    #[field("t_R", DEGREE_CELSIUS, absent = "no flow, never, or not found")]
    pub return_temperature: ThermodynamicTemperature,
    /// Heat that block, pipes and emitters have released by then.
    #[field("Q", KILOJOULE, absent = "never, or not found")]
    pub heat_released: Energy,
    /// Heat given off by the casing.
    #[field("Q_B", KILOJOULE, absent = "never, or not found")]
    pub casing_heat: Energy,
    /// Heat given off by the pipes of all circuits.
    #[field("Q_P", KILOJOULE, absent = "never, or not found")]
    pub pipe_heat: Energy,
    /// Heat given off by the emitters of all circuits.
    #[field("Q_E", KILOJOULE, absent = "never, or not found")]
    pub emitter_heat: Energy,
    /// Heat that block, pipes and emitters still hold over the room.
    #[field("Q_L", KILOJOULE, absent = "never, or not found")]
    pub heat_left: Energy,
    /// Temperature at the point watched after an endless time.
    #[field("t_\\infty", DEGREE_CELSIUS, absent = "none: heat is put in and none is lost, or not found")]
    pub steady_temperature: ThermodynamicTemperature,
    /// Share by which heat put in, stored and given off fail to balance.
    #[field("\\varepsilon", ONE, absent = "never, or not found")]
    pub imbalance: Ratio,
    /// Time until the target is reached with the circuits in their second state.
    #[field("\\tau'", MINUTE, absent = "no circuit changes over, never, or not found")]
    pub time_after: Time,
    /// Heat given off by the emitters by then.
    #[field("Q_E'", KILOJOULE, absent = "no circuit changes over, never, or not found")]
    pub emitter_heat_after: Energy,
    /// Temperature after an endless time in that state.
    #[field("t_\\infty'", DEGREE_CELSIUS, absent = "no circuit changes over, none, or not found")]
    pub steady_temperature_after: ThermodynamicTemperature,
}

/// A temperature somebody wants to know the time of.
#[record]
pub struct Threshold {
    /// The temperature.
    #[field("t", DEGREE_CELSIUS, -30.0..=150.0)]
    pub temperature: ThermodynamicTemperature,
}

/// A threshold with its name and, where it comes from somebody's policy, that policy.
#[derive(Clone, Debug, PartialEq)]
pub struct NamedThreshold {
    /// The name in tables.
    pub name: String,
    /// The temperature.
    pub temperature: ThermodynamicTemperature,
}

pub(crate) const THRESHOLDS: Setting = Setting {
    name: "thresholds",
    doc: "Temperatures to list the times of, each with a name: for draining, for touching (a threshold is the caller's policy; that a hand can rest on metal below about 50 °C is common practice without a source).",
    form: Form::Records(Threshold::FIELDS),
    default: Some(""),
};

/// The most thresholds of a list.
const MOST_THRESHOLDS: usize = 100;
const _: () = assert!(MOST_THRESHOLDS <= MOST_MARKS);

/// Named temperatures from the setting `thresholds`.
pub(crate) fn thresholds_from(settings: &Settings<'_>) -> Result<Vec<NamedThreshold>, Error> {
    let Some(given) = settings.get("thresholds") else { return Ok(Vec::new()) };
    let items = given.list("thresholds")?;
    if items.len() > MOST_THRESHOLDS {
        return Err(Error::bad_setting("thresholds", "", &alloc::format!("{} were given, {MOST_THRESHOLDS} at most", items.len())));
    }
    let mut thresholds = Vec::new();
    for (number, item) in items.iter().enumerate() {
        let mut name = alloc::format!("threshold {}", number + 1);
        let mut fields = Vec::new();
        for (key, value) in item.entries("threshold")? {
            if key == "name" {
                value.text("name")?.clone_into(&mut name);
            } else {
                fields.push((key.to_owned(), value.clone()));
            }
        }
        let values = read_input(Threshold::FIELDS, &Node::Table(fields), Bare::Refused)?;
        if let (Some(&value), Some(field)) = (values.first(), Threshold::FIELDS.first())
            && !(value >= field.minimum && value <= field.maximum)
        {
            return Err(Error::for_field(field, value).within(&alloc::format!("thresholds[{number}]")));
        }
        thresholds.push(NamedThreshold { name, temperature: Threshold::from_slice(&values).temperature });
    }
    Ok(thresholds)
}

/// The place of the main circuit that is watched.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Watched {
    /// The water of the block, which leaves by the flow pipe.
    Block,
    /// The metal of the block, where it is a mass of its own.
    Metal,
    /// The end of the flow pipe.
    FlowEnd,
    /// The emitter.
    Emitter,
    /// The end of the return pipe.
    ReturnEnd,
    /// The room, where it is to warm up.
    Room,
}

pub(crate) const WATCHED: &[(&str, Watched)] = &[
    ("block", Watched::Block),
    ("metal", Watched::Metal),
    ("flow_end", Watched::FlowEnd),
    ("emitter", Watched::Emitter),
    ("return_end", Watched::ReturnEnd),
    ("room", Watched::Room),
];

pub(crate) const WATCHED_SETTING: Setting = Setting {
    name: "watched",
    doc: "The point whose temperature counts: the water of the block, its metal, the end of the flow pipe, the emitter, the end of the return pipe, or a room that warms up.",
    form: Form::Choice(&["block", "metal", "flow_end", "emitter", "return_end", "room"]),
    default: Some("block"),
};

impl Watched {
    /// The point of the network, where the plant has it.
    pub(crate) fn point(self, plant: &Plant) -> Option<Point> {
        let (flow, emits, back) = (plant.flow_length.si() > 0.0, plant.emitter_output.si() > 0.0, plant.return_length.si() > 0.0);
        let part = |number: usize| Some(Point::PartEnd { circuit: 0, part: number });
        match self {
            Self::Block => Some(Point::Block),
            Self::Metal => plant.two_masses().then_some(Point::Metal),
            Self::FlowEnd if flow => part(0),
            Self::Emitter if emits => part(usize::from(flow)),
            Self::ReturnEnd if back => part(usize::from(flow) + usize::from(emits)),
            Self::Room => (!plant.room_heat_capacity.si().is_nan()).then_some(Point::Room),
            _ => None,
        }
    }
}

/// How long until a hot heat generator is cool enough, and where its heat goes.
#[derive(Clone, Debug)]
pub struct CoolDown {
    /// Cells and further circuits.
    pub layout: Layout,
    /// Whether the pump runs.
    pub pump_runs: bool,
    /// The point whose temperature counts.
    pub watched: Watched,
    /// Further temperatures to list the times of.
    pub thresholds: Vec<NamedThreshold>,
}

impl Default for CoolDown {
    fn default() -> Self {
        Self { layout: Layout::default(), pump_runs: true, watched: Watched::Block, thresholds: Vec::new() }
    }
}

impl Context for CoolDown {
    const SETTINGS: &'static [Setting] = layout_settings![
        Setting {
            name: "pump",
            doc: "Whether the pump runs while the block cools.",
            form: Form::Choice(&["running", "stopped"]),
            default: Some("running"),
        },
        WATCHED_SETTING,
        THRESHOLDS,
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self {
            layout: Layout::from_settings(settings)?,
            pump_runs: settings.choice("pump", &[("running", true), ("stopped", false)])?,
            watched: settings.choice("watched", WATCHED)?,
            thresholds: thresholds_from(settings)?,
        })
    }
}

plant_rules! {
    refuse POINT_IS_MISSING on "target_temperature": "the plant has no such point to watch: no emitter, no pipe, or metal and water sharing one temperature";
    notice ALREADY_THERE on "time": "the point watched is at or below the target from the start";
    notice NEVER on "time": "the target is never reached: the plant comes to rest above it (see steady_temperature)";
    notice NOT_FOUND on "time": super::plant::NOT_FOUND_TEXT;
    notice NEVER_AFTER on "time_after": "with the circuits in their second state the target is never reached: the plant comes to rest above it (see steady_temperature_after)";
    notice NOT_FOUND_AFTER on "time_after": super::plant::NOT_FOUND_TEXT;
    notice HEAT_BOOK_OPEN on "imbalance": super::plant::HEAT_BOOK_OPEN_TEXT;
}

/// One state of the circuits followed to the target.
struct Fall {
    time: f64,
    return_temperature: f64,
    released: f64,
    casing: f64,
    pipes: f64,
    emitters: f64,
    left: f64,
    steady: f64,
    imbalance: f64,
}

const NO_FALL: Fall = Fall {
    time: f64::NAN,
    return_temperature: f64::NAN,
    released: f64::NAN,
    casing: f64::NAN,
    pipes: f64::NAN,
    emitters: f64::NAN,
    left: f64::NAN,
    steady: f64::NAN,
    imbalance: f64::NAN,
};

impl CoolDown {
    fn lay_out(&self, plant: &Plant, state: State) -> Option<(Laid, usize)> {
        let laid = plant.lay_out(&self.layout, state, Vec::new())?;
        let node = laid.model.node(self.watched.point(plant)?)?;
        Some((laid, node))
    }

    fn fall(&self, input: &CoolDownState, state: State) -> Fall {
        let plant = Plant::of(input);
        if !Plant::is_whole(input) {
            return NO_FALL;
        }
        let Some((mut laid, node)) = self.lay_out(&plant, state) else { return NO_FALL };
        let mark = Mark { node, level: input.target_temperature.si(), direction: Direction::Falling };
        let mut reached = None;
        let controls = Controls::pump_only(self.pump_runs);
        let outcome = run(&mut laid.model, &controls, &[mark], Peak::Ignored, &Bounds::USUAL, None, |_, time, _, _| {
            reached = Some(time);
            Then::Stop
        });
        let state = outcome.solver.state();
        let steady = match reached {
            // Reached before anything was followed.
            Some(0.0) => laid.rest(node),
            _ => outcome.rest(node),
        };
        let Some(time) = reached else { return Fall { steady, ..NO_FALL } };
        let (pipes, emitters) = laid.pipes_and_emitters(state);
        Fall {
            time,
            return_temperature: laid.model.return_temperature(state),
            released: -laid.model.stored(state),
            casing: laid.model.casing_heat(state),
            pipes,
            emitters,
            left: laid.model.left(state),
            steady,
            imbalance: laid.model.imbalance(state),
        }
    }

    /// Times at which each threshold is passed, in one run.
    fn threshold_table(&self, plant: &Plant, state: State, name: &'static str) -> Option<Table> {
        let (mut laid, node) = self.lay_out(plant, state)?;
        let marks: Vec<Mark> = self
            .thresholds
            .iter()
            .map(|threshold| Mark { node, level: threshold.temperature.si(), direction: Direction::Falling })
            .collect();
        let mut times = alloc::vec![f64::NAN; marks.len()];
        let mut released = times.clone();
        let mut missing = marks.len();
        run(
            &mut laid.model,
            &Controls::pump_only(self.pump_runs),
            &marks,
            Peak::Ignored,
            &Bounds::USUAL,
            None,
            |what, time, model, state| {
                if let What::Mark(number) = what {
                    times[number] = time;
                    released[number] = -model.stored(state);
                    missing -= 1;
                }
                if missing == 0 { Then::Stop } else { Then::GoOn }
            },
        );
        Some(Table {
            name,
            row_names: self.thresholds.iter().map(|threshold| threshold.name.clone()).collect(),
            columns: alloc::vec![
                column("threshold", &units::DEGREE_CELSIUS, marks.iter().map(|mark| mark.level).collect()),
                column("time", &units::MINUTE, times),
                column("heat released", &units::KILOJOULE, released),
            ],
        })
    }

    /// Temperatures against time until the lowest of target and thresholds is reached, and the heat by circuit then.
    fn trace_tables(&self, plant: &Plant, lowest: f64, state: State, names: [&'static str; 2]) -> Option<[Table; 2]> {
        let (mut laid, node) = self.lay_out(plant, state)?;
        let points: Vec<(&str, Watched)> = WATCHED.iter().filter(|(_, watched)| watched.point(plant).is_some()).copied().collect();
        let nodes: Vec<usize> = points.iter().filter_map(|(_, watched)| laid.model.node(watched.point(plant)?)).collect();
        let width = nodes.len();
        let mut trace = Trace::new(nodes, MOST_TRACE_ROWS);
        let mark = Mark { node, level: lowest, direction: Direction::Falling };
        let controls = Controls::pump_only(self.pump_runs);
        let outcome = run(&mut laid.model, &controls, &[mark], Peak::Ignored, &Bounds::USUAL, Some(&mut trace), |_, _, _, _| Then::Stop);
        let mut columns = alloc::vec![column("time", &units::MINUTE, trace.times.clone())];
        for (number, (name, _)) in points.iter().enumerate() {
            let values = trace.values.iter().skip(number).step_by(width).copied().collect();
            columns.push(column(name, &units::DEGREE_CELSIUS, values));
        }
        let state = outcome.solver.state();
        let mut rows = alloc::vec!["casing".to_owned(), "main circuit".to_owned()];
        rows.extend(self.layout.circuits.iter().map(|circuit| circuit.name.clone()));
        let (mut pipes, mut emitters) = (alloc::vec![laid.model.casing_heat(state)], alloc::vec![0.0]);
        for circuit in 0..laid.parts.len() {
            let (pipe, emitter) = laid.of_circuit(state, circuit);
            pipes.push(pipe);
            emitters.push(emitter);
        }
        let heat = alloc::vec![column("casing or pipes", &units::KILOJOULE, pipes), column("emitter", &units::KILOJOULE, emitters),];
        Some([Table { name: names[0], row_names: Vec::new(), columns }, Table { name: names[1], row_names: rows, columns: heat }])
    }
}

/// Rows of a trace at most; between a half and the whole of this are used.
pub(crate) const MOST_TRACE_ROWS: usize = 400;

pub(crate) fn column(name: &str, unit: &'static crate::quantity::Unit, values: Vec<f64>) -> Column {
    Column { name: name.to_owned(), unit, values }
}

impl Calculation for CoolDown {
    type Input = CoolDownState;
    type Output = CoolDownResult;
    const INFO: Info = Info {
        name: "cool_down",
        title: "Cool-down of a heat generator and its circuits",
        summary: "How long until the hot block has fallen to a temperature with the pump running or stopped, where its heat goes, and what opening or closing another circuit does to that.",
        sources: &[
            Source::new("energy balance of stirred masses in a row; first law", "block, pipe cells, emitters"),
            Source::new("EN 442 (exponent form, from memory)", "emitter output against temperature difference"),
            Source::new("Dormand and Prince 1980; Steinebach 2023 (Rodas5P)", "integration in time"),
        ],
        accuracy: "The equations are solved to about one part in 10^8 of the time. What limits the answer is the loss coefficients (10 to 30 %) and the heat capacity of the metal (10 %): give these an uncertainty.",
        cautions: HOT_BLOCK_CAUTIONS,
        checked_against: "heat/cooldown_circuit_params.csv, heat/cooldown_circuit_results.csv",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;
    const LONG: bool = true;

    fn check(&self, input: &CoolDownState) -> Raised {
        let plant = Plant::of(input);
        check_plant(&plant, &self.layout, self.pump_runs).when(POINT_IS_MISSING, self.watched.point(&plant).is_none())
    }

    fn review(&self, input: &CoolDownState, output: &CoolDownResult) -> Raised {
        // A level within a millikelvin of rest is not told from rest.
        // Without a steady state found, nothing says that it never will.
        let rests_above = |steady: ThermodynamicTemperature| steady.si() >= input.target_temperature.si() - 1e-3;
        let (lacks, above) = (output.time.si().is_nan(), rests_above(output.steady_temperature));
        let lacks_after = self.layout.changes_over() && output.time_after.si().is_nan();
        let above_after = rests_above(output.steady_temperature_after);
        Raised::NONE
            .when(ALREADY_THERE, output.time.si() == 0.0)
            .when(NEVER, lacks && above)
            .when(NOT_FOUND, lacks && !above)
            .when(NEVER_AFTER, lacks_after && above_after)
            .when(NOT_FOUND_AFTER, lacks_after && !above_after)
            .when(HEAT_BOOK_OPEN, output.imbalance.si().abs() > 1e-6)
    }

    fn compute<W: Working>(&self, input: &CoolDownState, working: &mut W) -> CoolDownResult {
        let before = self.fall(input, State::Before);
        let after = if self.layout.changes_over() { self.fall(input, State::After) } else { NO_FALL };
        let CoolDownState { metal_mass, metal_specific_heat_capacity, water_content, water_density, water_specific_heat_capacity, .. } =
            *input;
        step!(working, let metal_capacity: "C_M" in KILOJOULE_PER_KELVIN = metal_mass * metal_specific_heat_capacity, "definition");
        step!(working, let water_capacity: "C_W" in KILOJOULE_PER_KELVIN = water_content * water_density * water_specific_heat_capacity, "definition");
        step!(working, let block_capacity: "C_B" in KILOJOULE_PER_KELVIN = metal_capacity + water_capacity, "sum of the block's masses");
        let plant = Plant::of(input);
        step!(working, let pipe_length: "l" = plant.flow_length + plant.return_length, "main circuit");
        step!(working, let circuit_loss: "H_P" = pipe_length * plant.pipe_loss.plain(), "main circuit");
        step!(working, let conductance: "H" = plant.casing_loss + circuit_loss, "casing and pipes of the main circuit; emitters come on top");
        let _ = (block_capacity, conductance);
        step!(working, let time: "\\tau" in MINUTE = Time::from_si(before.time), "integration of the heat balances");
        step!(working, let casing_heat: "Q_B" in KILOJOULE = Energy::from_si(before.casing), "integral of the casing's loss");
        step!(working, let pipe_heat: "Q_P" in KILOJOULE = Energy::from_si(before.pipes), "integral of the pipes' loss");
        step!(working, let emitter_heat: "Q_E" in KILOJOULE = Energy::from_si(before.emitters), "integral of the emitters' output");
        CoolDownResult {
            time,
            return_temperature: ThermodynamicTemperature::from_si(before.return_temperature),
            heat_released: Energy::from_si(before.released),
            casing_heat,
            pipe_heat,
            emitter_heat,
            heat_left: Energy::from_si(before.left),
            steady_temperature: ThermodynamicTemperature::from_si(before.steady),
            imbalance: Ratio::from_si(before.imbalance),
            time_after: Time::from_si(after.time),
            emitter_heat_after: Energy::from_si(after.emitters),
            steady_temperature_after: ThermodynamicTemperature::from_si(after.steady),
        }
    }

    fn tables(&self, input: &CoolDownState) -> Vec<Table> {
        let plant = Plant::of(input);
        let target = input.target_temperature.si();
        let lowest = self.thresholds.iter().fold(target, |low, threshold| f64::min(low, threshold.temperature.si()));
        let mut tables = Vec::new();
        let mut add = |state: State, names: [&'static str; 3]| {
            if !self.thresholds.is_empty() {
                tables.extend(self.threshold_table(&plant, state, names[0]));
            }
            tables.extend(self.trace_tables(&plant, lowest, state, [names[1], names[2]]).into_iter().flatten());
        };
        add(State::Before, ["thresholds", "temperatures", "heat given off"]);
        if self.layout.changes_over() {
            add(State::After, ["thresholds after", "temperatures after", "heat given off after"]);
        }
        tables
    }
}

#[cfg(test)]
pub(crate) mod tests {
    use super::super::plant::{FurtherCircuit, NamedCircuit, Opening};
    use super::*;
    use flamewright_reference::{Row, rows};
    use std::vec;

    pub(crate) fn reference_plant(row: &Row) -> CoolDownState {
        let n = |name: &str| row.number(name);
        let emitter = n("emitter_P50_W");
        CoolDownState {
            metal_mass: Mass::from_si(n("m_iron_kg")),
            metal_specific_heat_capacity: SpecificHeatCapacity::from_si(n("c_iron_J_kgK")),
            water_content: Volume::from_si(n("V_water_L") / 1000.0),
            water_density: MassDensity::from_si(n("rho_w")),
            water_specific_heat_capacity: SpecificHeatCapacity::from_si(n("cp_w")),
            casing_loss: ThermalConductance::from_si(n("ua_block_W_K")),
            pump_flow: MassRate::from_si(n("mdot_kg_s")),
            pipe_heat_capacity: HeatCapacityPerLength::from_si(n("c_pipe_J_mK")),
            pipe_loss: LinearTransmittance::from_si(n("ua_pipe_W_mK")),
            flow_length: Length::from_si(n("L_flow_m")),
            return_length: Length::from_si(n("L_return_m")),
            emitter_output: Power::from_si(emitter),
            emitter_exponent: Ratio::from_si(n("emitter_n")),
            emitter_heat_capacity: HeatCapacity::from_si(if emitter > 0.0 { n("emitter_C_J_K") } else { f64::NAN }),
            room_temperature: ThermodynamicTemperature::from_si(n("T_air_C") + 273.15),
            block_temperature: ThermodynamicTemperature::from_si(n("T0_block_C") + 273.15),
            circuit_temperature: ThermodynamicTemperature::from_si(n("T0_circuit_C") + 273.15),
            ..CoolDownState::unset()
        }
    }

    #[test]
    fn circuits_cool_as_the_reference() {
        let cases = rows("heat/cooldown_circuit_params.csv");
        let mut seen = 0;
        for result in rows("heat/cooldown_circuit_results.csv") {
            let case = cases.iter().find(|case| case.text("case_id") == result.text("case_id")).unwrap();
            let n = |name: &str| case.number(name) as usize;
            let layout = Layout { flow_cells: n("n_flow"), return_cells: n("n_return"), circuits: vec![], ..Layout::default() };
            let target_temperature = ThermodynamicTemperature::from_si(result.number("set_point_C") + 273.15);
            let input = CoolDownState { target_temperature, ..reference_plant(case) };
            let got = CoolDown { layout, ..CoolDown::default() }.evaluate(&input).unwrap();
            let place = &result.place;
            assert!((got.time.si() / result.number("time_s") - 1.0).abs() < 1e-7, "{place}: {:?}", got.time);
            assert!((got.heat_released.si() / result.number("stored_energy_released_J") - 1.0).abs() < 1e-6, "{place}");
            assert!((got.return_temperature.si() - 273.15 - result.number("T_return_C")).abs() < 1e-5, "{place}");
            // The heat released went somewhere, and nowhere else.
            let given = got.casing_heat.si() + got.pipe_heat.si() + got.emitter_heat.si();
            assert!((given / got.heat_released.si() - 1.0).abs() < 1e-9, "{place}");
            assert!(got.imbalance.si().abs() < 1e-9);
            assert!(got.notices().is_empty(), "{:?}", got.notices());
            seen += 1;
        }
        assert_eq!(seen, 48);
    }

    pub(crate) fn bypass() -> CoolDownState {
        let cases = rows("heat/cooldown_circuit_params.csv");
        let target_temperature = ThermodynamicTemperature::from_si(333.15);
        CoolDownState { target_temperature, ..reference_plant(&cases[0]) }
    }

    pub(crate) fn radiator(opening: Opening) -> NamedCircuit {
        let circuit = FurtherCircuit::read([
            ("flow_length", "8 m"),
            ("return_length", "8 m"),
            ("pipe_heat_capacity", "1500 J/(m·K)"),
            ("pipe_loss", "0.75 W/(m·K)"),
            ("emitter_output", "1500 W"),
            ("emitter_heat_capacity", "45 kJ/K"),
            ("circuit_temperature", "20 degC"),
        ])
        .unwrap();
        NamedCircuit { name: "radiator".to_owned(), opening, circuit }
    }

    #[test]
    fn opening_a_circuit_shortens_the_cool_down() {
        let alone = CoolDown::default().evaluate(&bypass()).unwrap();
        let mut compared = CoolDown::default();
        compared.layout.circuits.push(radiator(Opening::OpenedAfter));
        let both = compared.evaluate(&bypass()).unwrap();
        // A closed circuit at room temperature changes nothing.
        assert!((both.time.si() / alone.time.si() - 1.0).abs() < 1e-7);
        assert!(both.time_after.si() < 0.35 * both.time.si(), "{:?}", both.output);
        assert!(both.emitter_heat_after.si() > 0.0);
        assert!(alone.time_after.si().is_nan());
        // The second state is what a circuit open from the start gives.
        compared.layout.circuits = vec![radiator(Opening::Open)];
        let open = compared.evaluate(&bypass()).unwrap();
        assert_eq!(open.time.si(), both.time_after.si());
        // And with the circuit closed after, the states change places.
        compared.layout.circuits = vec![radiator(Opening::ClosedAfter)];
        let reversed = compared.evaluate(&bypass()).unwrap();
        assert_eq!((reversed.time.si(), reversed.time_after.si()), (open.time.si(), both.time.si()));
    }

    #[test]
    fn what_is_never_reached_is_said_with_the_reason() {
        let at = |target: f64, pilot: f64| {
            let target_temperature = ThermodynamicTemperature::from_si(target + 273.15);
            let input = CoolDownState { target_temperature, standing_heat: Power::from_si(pilot), ..bypass() };
            CoolDown::default().evaluate(&input).unwrap()
        };
        // The room is at 20 degC.
        for (target, pilot, steady) in [(20.0, 0.0, 20.0), (15.0, 0.0, 20.0), (40.0, 200.0, 43.2)] {
            let never = at(target, pilot);
            assert!(never.time.si().is_nan());
            assert!((never.steady_temperature.si() - 273.15 - steady).abs() < 0.1, "{}", never.steady_temperature.si());
            assert!(never.notices().iter().any(|notice| notice.code == "NEVER"), "{target}");
        }
        assert!(at(45.0, 200.0).time.si() > at(45.0, 0.0).time.si());
        let there = at(85.0, 0.0);
        assert_eq!(there.time.si(), 0.0);
        assert!(there.notices().iter().any(|notice| notice.code == "ALREADY_THERE"));
    }

    #[test]
    fn what_does_not_end_is_not_called_never() {
        // Five tonnes with next to no loss take months; with water circulating by its weight nothing
        // proves what the rest will be before it is there.
        let slow = |height: f64| CoolDownState {
            metal_mass: Mass::from_si(5000.0),
            casing_loss: ThermalConductance::from_si(0.01),
            pipe_loss: LinearTransmittance::from_si(0.02),
            pressure_drop: Pressure::from_si(4000.0),
            emitter_height: Length::from_si(height),
            ..bypass()
        };
        for (pump_runs, height) in [(false, 2.0), (true, f64::NAN)] {
            let mut calculation = CoolDown { pump_runs, ..CoolDown::default() };
            let got = calculation.evaluate(&slow(height)).unwrap();
            let codes: Vec<_> = got.notices().iter().map(|notice| notice.code).filter(|code| *code != "UNUSUAL").collect();
            assert!(codes.contains(&"NOT_FOUND") && !codes.contains(&"NEVER"), "{codes:?}");
            assert!(got.time.si().is_nan() && got.steady_temperature.si().is_nan());
            calculation.layout.circuits.push(radiator(Opening::ClosedAfter));
            let both = calculation.evaluate(&slow(height)).unwrap();
            let codes: Vec<_> = both.notices().iter().map(|notice| notice.code).collect();
            assert!(codes.contains(&"NOT_FOUND_AFTER") && !codes.contains(&"NEVER_AFTER"), "{codes:?}");
            assert!(both.time_after.si().is_nan() && both.steady_temperature_after.si().is_nan());
        }
        // And where a pilot flame holds the second state up, that is said as never.
        let mut calculation = CoolDown::default();
        calculation.layout.circuits.push(radiator(Opening::ClosedAfter));
        let target_temperature = ThermodynamicTemperature::from_si(313.15);
        let got = calculation.evaluate(&CoolDownState { standing_heat: Power::from_si(200.0), target_temperature, ..bypass() }).unwrap();
        assert!(got.time.si() > 0.0 && got.time_after.si().is_nan());
        assert!(got.notices().iter().any(|notice| notice.code == "NEVER_AFTER"));
    }

    #[test]
    fn degenerate_plants_are_refused() {
        let code = |change: &dyn Fn(&mut CoolDownState)| {
            let mut input = bypass();
            change(&mut input);
            CoolDown::default().evaluate(&input).err().map(|error| std::format!("{} {}", error.code(), error.field())).unwrap_or_default()
        };
        assert_eq!(
            code(&|i| {
                i.metal_mass = Mass::from_si(0.0);
                i.water_content = Volume::from_si(0.0);
            }),
            "NO_MASS metal_mass"
        );
        assert_eq!(code(&|i| i.pump_flow = MassRate::from_si(0.0)), "NO_FLOW pump_flow");
        assert_eq!(code(&|i| i.emitter_exponent = Ratio::from_si(0.0)), "out_of_range emitter_exponent");
        assert_eq!(code(&|i| i.emitter_output = Power::from_si(500.0)), "EMITTER_WITHOUT_MASS emitter_output");
        assert_eq!(code(&|i| i.pump_shut_off_pressure = Pressure::from_si(3e4)), "NO_DUTY_POINT pump_shut_off_pressure");
        assert_eq!(
            code(&|i| {
                i.flow_length = Length::from_si(0.0);
                i.return_length = Length::from_si(0.0);
            }),
            "NO_CIRCUIT flow_length"
        );
        let watched = CoolDown { watched: Watched::Emitter, ..CoolDown::default() };
        assert_eq!(watched.evaluate(&bypass()).err().unwrap().code(), "POINT_IS_MISSING");
        let stopped = CoolDown { pump_runs: false, ..CoolDown::default() };
        let still = stopped.evaluate(&CoolDownState { pump_flow: MassRate::from_si(0.0), ..bypass() }).unwrap();
        // Without flow the block is a mass of its own: the exponential.
        let exponential = 97446.0 / 6.0 * crate::math::ln(60.0 / 40.0);
        assert!((still.time.si() / exponential - 1.0).abs() < 1e-8, "{}", still.time.si());
    }

    #[test]
    fn cells_converge_in_proportion_to_their_number() {
        // A cold slug arrives: the time at which the emitter side comes back depends on the cells.
        let time = |cells: usize| {
            let layout = Layout { flow_cells: cells, return_cells: cells, circuits: vec![], ..Layout::default() };
            let cases = rows("heat/cooldown_circuit_params.csv");
            let target_temperature = ThermodynamicTemperature::from_si(333.15);
            let input = CoolDownState { target_temperature, ..reference_plant(&cases[3]) };
            CoolDown { layout, ..CoolDown::default() }.evaluate(&input).unwrap().time.si()
        };
        let [a, b, c] = [time(20), time(40), time(80)];
        let order = libm::log2(((a - b) / (b - c)).abs());
        assert!((order - 1.0).abs() < 0.1, "{order}");
    }

    #[test]
    fn gravity_carries_heat_while_the_pump_stands() {
        let cases = rows("heat/cooldown_circuit_params.csv");
        let target_temperature = ThermodynamicTemperature::from_si(333.15);
        let still = CoolDownState { target_temperature, pressure_drop: Pressure::from_si(4000.0), ..reference_plant(&cases[3]) };
        let calculation = CoolDown { pump_runs: false, ..CoolDown::default() };
        let time = |height: f64| {
            let got = calculation.evaluate(&CoolDownState { emitter_height: Length::from_si(height), ..still }).unwrap();
            assert!(got.imbalance.si().abs() < 1e-9);
            got
        };
        let none = time(f64::NAN);
        let (low, high) = (time(1.0), time(4.0));
        let pumped = CoolDown::default().evaluate(&still).unwrap();
        // Casing alone is slowest, the pump quickest, gravity between, and quicker the higher the emitter.
        assert!(none.time.si() > 3.0 * low.time.si() && low.time.si() > high.time.si() && high.time.si() > pumped.time.si());
        let no_drop = CoolDownState { emitter_height: Length::from_si(2.0), pressure_drop: Pressure::from_si(f64::NAN), ..still };
        assert_eq!(calculation.evaluate(&no_drop).err().unwrap().code(), "NO_GRAVITY_PATH");
    }

    #[test]
    fn a_named_tube_stands_and_cools_as_the_pipe_sums_say() {
        use crate::pipe::{PipeCoolDown, PipeCoolDownInput};
        for (insulation, finish, thickness) in [("", "paint", "0 mm"), ("mineral wool", "insulation jacket", "13 mm")] {
            let settings: &[(&str, &str)] = &[("tube", "copper 22x0.9"), ("insulation", insulation), ("finish", finish)];
            let node = Node::Table(settings.iter().map(|(k, v)| ((*k).to_owned(), Node::from(*v))).collect());
            let layout = Layout::from_settings(&Settings::new(&node, CoolDown::SETTINGS).unwrap()).unwrap();
            let standing = CoolDown { layout, pump_runs: false, watched: Watched::FlowEnd, thresholds: vec![] };
            let rest = CoolDownState::read([("insulation_thickness", thickness), ("target_temperature", "40 degC")]);
            let rest = rest.unwrap();
            let water = crate::water::heating_water(2e5, 353.15);
            let input = CoolDownState {
                pipe_heat_capacity: rest.pipe_heat_capacity,
                pipe_loss: rest.pipe_loss,
                insulation_thickness: rest.insulation_thickness,
                water_density: MassDensity::from_si(water.density),
                water_specific_heat_capacity: SpecificHeatCapacity::from_si(water.specific_heat_capacity),
                target_temperature: rest.target_temperature,
                ..bypass()
            };
            let got = standing.evaluate(&input).unwrap();
            let run = crate::pipe::Run::from_settings(&Settings::new(&node, PipeCoolDown::SETTINGS).unwrap()).unwrap();
            let pipe = PipeCoolDownInput::read([
                ("start_temperature", "80 degC"),
                ("target_temperature", "40 degC"),
                ("air_temperature", "20 degC"),
                ("insulation_thickness", thickness),
                ("length", "2 m"),
            ]);
            let expected = PipeCoolDown { run }.evaluate(&pipe.unwrap()).unwrap();
            let ratio = got.time.si() / expected.time_to_target.si();
            assert!((ratio - 1.0).abs() < 3e-6, "{insulation}: {ratio}");
        }
    }

    #[test]
    fn a_named_tube_that_lacks_something_is_refused() {
        let code = |settings: &[(&str, &str)], thickness: f64| {
            let node = Node::Table(settings.iter().map(|(k, v)| ((*k).to_owned(), Node::from(*v))).collect());
            let layout = Layout::from_settings(&Settings::new(&node, CoolDown::SETTINGS).unwrap()).unwrap();
            let input = CoolDownState {
                pipe_heat_capacity: HeatCapacityPerLength::from_si(f64::NAN),
                pipe_loss: LinearTransmittance::from_si(f64::NAN),
                insulation_thickness: Length::from_si(thickness),
                ..bypass()
            };
            CoolDown { layout, ..CoolDown::default() }.evaluate(&input).err().map(|error| error.code().to_owned())
        };
        assert_eq!(code(&[], 0.0).as_deref(), Some("PIPE_UNKNOWN"));
        assert_eq!(code(&[("tube", "copper 22x0.9")], 0.0).as_deref(), Some("FINISH_UNKNOWN"));
        assert_eq!(code(&[("tube", "copper 22x0.9"), ("finish", "paint")], 0.013).as_deref(), Some("INSULATION_UNKNOWN"));
        assert_eq!(code(&[("tube", "copper 22x0.9"), ("finish", "paint")], 0.0), None);
    }

    #[test]
    fn tables_hold_thresholds_traces_and_heat_by_circuit() {
        let mut calculation = CoolDown {
            thresholds: vec![
                NamedThreshold { name: "hand can rest".to_owned(), temperature: ThermodynamicTemperature::from_si(323.15) },
                NamedThreshold { name: "below the room".to_owned(), temperature: ThermodynamicTemperature::from_si(290.15) },
            ],
            ..CoolDown::default()
        };
        calculation.layout.circuits.push(radiator(Opening::OpenedAfter));
        let tables = calculation.tables(&bypass());
        let names: Vec<_> = tables.iter().map(|table| table.name).collect();
        assert_eq!(
            names,
            ["thresholds", "temperatures", "heat given off", "thresholds after", "temperatures after", "heat given off after"]
        );
        assert!((tables[0].columns[1].values[0] / 8258.08519 - 1.0).abs() < 1e-7);
        assert!(tables[0].columns[1].values[1].is_nan());
        let trace = &tables[4];
        assert!(trace.columns[0].values.len() >= MOST_TRACE_ROWS / 2 && trace.columns[0].values.len() <= MOST_TRACE_ROWS + 1);
        assert!(trace.columns.iter().all(|column| column.values.len() == trace.columns[0].values.len()));
        assert_eq!(tables[5].row_names, ["casing", "main circuit", "radiator"]);
    }
}
