//! `system_content`: how much water a heating system holds.

use crate::Error;
use crate::calculation::{Calculation, Column, Context, Form, Info, Setting, Settings, Source, Table};
use crate::material::Tube;
use crate::node::Node;
use crate::quantity::Value;
use crate::quantity::types::{HeatCapacity, Length, Mass, Volume};
use crate::quantity::units::{KILOGRAM, LITRE, METRE};
use crate::record::record;
use crate::working::{Working, step};
use alloc::string::String;
use alloc::vec::Vec;

/// Water in the parts of a system besides its pipes.
#[record]
pub struct SystemContentInput {
    /// Water in all emitters, from their makers' tables.
    #[field("V_{em}", LITRE, 0.0..=100000.0, default = 0.0)]
    pub emitter_content: Volume,
    /// Water in the boiler.
    #[field("V_b", LITRE, 0.0..=10000.0, default = 0.0, usual = 0.0..=500.0)]
    pub boiler_content: Volume,
    /// Heating water in the coil of the hot water cylinder.
    #[field("V_{coil}", LITRE, 0.0..=1000.0, default = 0.0, usual = 0.0..=60.0)]
    pub coil_content: Volume,
    /// Water in a feed and expansion cistern of an open vented system.
    #[field("V_c", LITRE, 0.0..=10000.0, default = 0.0, usual = 0.0..=200.0)]
    pub cistern_content: Volume,
    /// Water in buffer vessels and anything else.
    #[field("V_o", LITRE, 0.0..=1000000.0, default = 0.0)]
    pub other_content: Volume,
}

/// Water of the whole system.
#[record]
pub struct SystemContentResult {
    /// Length of all pipes.
    #[field("L", METRE)]
    pub pipe_length: Length,
    /// Water in all pipes.
    #[field("V_p", LITRE)]
    pub pipe_content: Volume,
    /// Mass of all pipes, empty.
    #[field("m_p", KILOGRAM)]
    pub pipe_mass: Mass,
    /// Heat capacity of all pipes, empty.
    #[field("C_p", KILOJOULE_PER_KELVIN)]
    pub pipe_heat_capacity: HeatCapacity,
    /// Water that circulates: all but the cistern's.
    #[field("V", LITRE)]
    pub system_content: Volume,
    /// Water to fill everything, the cistern too.
    #[field("V_{fill}", LITRE)]
    pub content_with_cistern: Volume,
}

/// A length of one tube.
#[derive(Clone, Debug)]
pub struct PipeRun {
    /// What to call it.
    pub name: String,
    /// The tube.
    pub tube: Tube,
    /// Length in m.
    pub length: f64,
}

/// Water content from pipe runs and parts.
#[derive(Clone, Debug, Default)]
pub struct SystemContent {
    /// The runs of pipe.
    pub pipes: Vec<PipeRun>,
}

/// Most runs taken.
const MOST_RUNS: usize = 1000;
const RUN_KEYS: [&str; 3] = ["name", "tube", "length"];

impl PipeRun {
    fn from_node(node: &Node) -> Result<Self, Error> {
        for (key, _) in node.entries("pipes")? {
            if !RUN_KEYS.contains(&key) {
                return Err(Error::unknown_name("pipes", key, RUN_KEYS.into_iter()));
            }
        }
        let need = |key: &'static str| node.get(key).ok_or_else(|| Error::bad_setting("pipes", "", "each run needs a tube and a length"));
        let tube_node = need("tube")?;
        let length: Length = need("length")?.quantity("length")?;
        if !(0.0..=100_000.0).contains(&length.si()) {
            return Err(Error::bad_setting("length", &need("length")?.brief(), "allowed is 0 m to 100 km").within("pipes"));
        }
        let tube = Tube::from_node("tube", tube_node).map_err(|error| error.within("pipes"))?;
        let name = match (node.get("name"), tube_node) {
            (Some(name), _) => name.text("name")?.into(),
            (None, Node::Text(text)) => text.clone(),
            (None, _) => String::new(),
        };
        Ok(Self { name, tube, length: length.si() })
    }
}

impl Context for SystemContent {
    const SETTINGS: &'static [Setting] = &[Setting {
        name: "pipes",
        doc: "Runs of pipe: a list of { tube, length, name }, the tube by name or by value as in `tube_run`.",
        form: Form::Structure,
        default: Some("none"),
    }];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let Some(given) = settings.get("pipes") else { return Ok(Self::default()) };
        let items = given.list("pipes")?;
        if items.len() > MOST_RUNS {
            return Err(Error::bad_setting("pipes", "", "1000 runs at most"));
        }
        Ok(Self { pipes: items.iter().map(PipeRun::from_node).collect::<Result<_, _>>()? })
    }
}

impl Calculation for SystemContent {
    type Input = SystemContentInput;
    type Output = SystemContentResult;
    const INFO: Info = Info {
        name: "system_content",
        title: "Water content of a heating system",
        summary: "Water in pipes, emitters, boiler, cylinder coil and cistern, with the mass and heat capacity of the pipes.",
        sources: &[
            Source::new("geometry, with the tubes of tube_run", "content of pipes"),
            Source::new("makers' tables, given by the caller", "content of boiler, emitters and coil"),
        ],
        accuracy: "A few percent where every run is counted; guessed systems are seldom within 20 %.",
        cautions: &[],
        checked_against: "heat/tubes.csv: litres per metre of every tube",
    };

    fn compute<W: Working>(&self, input: &SystemContentInput, working: &mut W) -> SystemContentResult {
        let sum = |of: fn(&Tube) -> f64| self.pipes.iter().map(|run| of(&run.tube) * run.length).sum::<f64>();
        let (lengths, contents) = (sum(|_| 1.0), sum(Tube::content_per_metre));
        let (masses, capacities) = (sum(Tube::mass_per_metre), sum(Tube::wall_capacity_per_metre));
        step!(working, let pipe_length: "L" = Length::from_si(lengths), "sum over the runs");
        step!(working, let pipe_content: "V_p" in LITRE = Volume::from_si(contents), "sum over the runs: bore area times length");
        step!(working, let pipe_mass: "m_p" = Mass::from_si(masses), "sum over the runs");
        step!(working, let pipe_heat_capacity: "C_p" = HeatCapacity::from_si(capacities), "sum over the runs");
        step!(working, let system_content: "V" in LITRE = pipe_content + input.emitter_content + input.boiler_content + input.coil_content + input.other_content, "sum");
        step!(working, let content_with_cistern: "V_{fill}" in LITRE = system_content + input.cistern_content, "sum");
        SystemContentResult { pipe_length, pipe_content, pipe_mass, pipe_heat_capacity, system_content, content_with_cistern }
    }

    fn tables(&self, _input: &SystemContentInput) -> Vec<Table> {
        let column =
            |name: &str, unit, of: fn(&PipeRun) -> f64| Column { name: name.into(), unit, values: self.pipes.iter().map(of).collect() };
        alloc::vec![Table {
            name: "pipes",
            row_names: self.pipes.iter().map(|run| run.name.clone()).collect(),
            columns: alloc::vec![
                column("length", &METRE, |run| run.length),
                column("content", &LITRE, |run| run.length * run.tube.content_per_metre()),
                column("mass", &KILOGRAM, |run| run.length * run.tube.mass_per_metre()),
            ],
        }]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::water::tests::assert_close;
    use flamewright_reference::rows;

    fn run(tube: &str, length: &str) -> Node {
        Node::from([("tube", tube), ("length", length)])
    }

    #[test]
    fn parts_add_up_to_the_printed_litres() {
        let file = rows("heat/tubes.csv");
        let litres = |od: &str, wall: &str| {
            file.iter().find(|row| row.text("od_mm") == od && row.text("wall_mm") == wall).unwrap().number("litre_per_m")
        };
        let given = Node::from([
            ("pipes", Node::List(std::vec![run("copper 22x0.9", "18 m"), run("copper 15x0.7", "46 m"), run("multilayer 16x2", "30 m")])),
            ("emitter_content", Node::from("48 L")),
            ("boiler_content", Node::from("6.5 L")),
            ("coil_content", Node::from("5 L")),
            ("cistern_content", Node::from("20 L")),
        ]);
        let got = evaluate("system_content", &given, Bare::Refused).unwrap();
        let pipes = 18.0 * litres("22", "0.9") + 46.0 * litres("15", "0.7") + 30.0 * litres("16", "2");
        assert_close(got.get("pipe_content").unwrap() * 1e3, pipes, 1e-5, "pipes");
        assert_close(got.get("system_content").unwrap() * 1e3, pipes + 59.5, 1e-5, "system");
        assert_close(got.get("content_with_cistern").unwrap() * 1e3, pipes + 79.5, 1e-5, "fill");
        assert_eq!(got.prepared.tables(&got.input)[0].row_names[2], "multilayer 16x2");
    }

    #[test]
    fn wrong_runs_are_refused_by_name() {
        let refused = |node: Node| {
            let given = Node::from([("pipes", Node::List(std::vec![node]))]);
            std::format!("{}", evaluate("system_content", &given, Bare::Refused).err().unwrap())
        };
        assert!(refused(run("coper 22x0.9", "1 m")).contains("copper 22x0.9"));
        assert!(refused(run("copper 22x0.9", "-1 m")).contains("-1 m"));
        assert!(refused(Node::from([("tube", "copper 22x0.9")])).contains("length"));
        assert!(refused(Node::from([("tubes", "copper 22x0.9")])).contains("did you mean \"tube\""));
    }
}
