//! `circuit_balance` and `valve_kv`: the index circuit, and what the others must throttle.

use super::pressure_drop::{FRICTION_SETTING, WaterPressureDrop, WaterPressureDropInput, fittings_from_node, friction_from_settings};
use crate::calculation::{Calculation, Column, Context, Form, Info, Raised, Rule, Setting, Settings, Source, Table};
use crate::material::Tube;
use crate::math::{self, sqrt};
use crate::node::Node;
use crate::quantity::types::{Length, MassDensity, Pressure, Ratio, ThermodynamicTemperature, Velocity, VolumeRate};
use crate::quantity::units::{CUBIC_METRE_PER_HOUR, KILOPASCAL, LITRE_PER_HOUR, METRE_PER_SECOND, ONE};
use crate::quantity::{AbsolutePressure, Value};
use crate::record::{Record, record};
use crate::water::{FLUID_SETTING, Fluid};
use crate::working::{Silent, Working, step};
use crate::{Error, rules};
use alloc::string::String;
use alloc::vec::Vec;

/// Flow in m³/s that a valve would pass at 1 bar of 1000 kg/m³ water (its Kv), from flow, drop in
/// Pa and density; infinite at no drop.
fn valve_coefficient(flow: f64, drop: f64, density: f64) -> f64 {
    flow * sqrt(1.0e5 / drop * (density / 1000.0))
}

/// A flow and the drop a valve is to make.
#[record]
pub struct ValveKvInput {
    /// Volume flow through the valve.
    #[field("\\dot V", LITRE_PER_HOUR, 0.1..=1000000.0, usual = 5.0..=100000.0)]
    pub volume_flow: VolumeRate,
    /// Pressure drop that the valve is to make.
    #[field("\\Delta p", KILOPASCAL, 0.01..=1000.0, usual = 1.0..=50.0)]
    pub pressure_drop: Pressure,
    /// Temperature of the water.
    #[field("t", DEGREE_CELSIUS, -30.0..=110.0, default = 60.0)]
    pub temperature: ThermodynamicTemperature,
    /// Share of glycol by mass; needs the setting `fluid`.
    #[field("w", PERCENT, 0.0..=60.0, default = 0.0)]
    pub glycol_mass_fraction: Ratio,
}

/// The valve.
#[record]
pub struct ValveKvResult {
    /// Density of the liquid.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE)]
    pub density: MassDensity,
    /// Kv: flow at a drop of 1 bar of water of 1000 kg/m³.
    #[field("K_v", CUBIC_METRE_PER_HOUR)]
    pub valve_kv: VolumeRate,
}

/// The Kv to which a balancing valve is set.
#[derive(Clone, Copy, Debug, Default)]
pub struct ValveKv {
    /// What circulates.
    pub fluid: Fluid,
}

impl Context for ValveKv {
    const SETTINGS: &'static [Setting] = &[FLUID_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { fluid: Fluid::from_settings(settings)? })
    }
}

rules! {
    refuse FROZEN on "temperature": "the liquid would be frozen at this temperature";
    refuse GLYCOL_IN_WATER on "glycol_mass_fraction": "set `fluid` to the glycol that is in the water";
}

fn judged(fluid: Fluid, fraction: f64, temperature: f64) -> Raised {
    Raised::NONE.when(FROZEN, fluid.frozen(fraction, temperature)).when(GLYCOL_IN_WATER, fluid.glycol_in_water(fraction))
}

const KV_SOURCE: Source = Source::new("EN 60534-1", "definition of Kv: m³/h of water at 1 bar");

/// Absolute pressure at which the liquid's properties are taken, Pa; it hardly matters.
const PRESSURE: f64 = 2.0e5;

impl Calculation for ValveKv {
    type Input = ValveKvInput;
    type Output = ValveKvResult;
    const INFO: Info = Info {
        name: "valve_kv",
        title: "Kv of a balancing valve",
        summary: "The Kv to which a valve must be set to take a pressure drop at a flow.",
        sources: &[KV_SOURCE, Source::new("IAPWS SR6-08(2011); Melinder 2010", "density")],
        accuracy: "Exact for turbulent flow; valves hold their scale to about 10 %, worse when nearly shut.",
        cautions: &[],
        checked_against: "no outside table exists: the definition itself, which the tests restate",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &ValveKvInput) -> Raised {
        judged(self.fluid, input.glycol_mass_fraction.si(), input.temperature.si())
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &ValveKvInput, working: &mut W) -> ValveKvResult {
        let state = self.fluid.state(input.glycol_mass_fraction.si(), PRESSURE, input.temperature.si());
        let bar = Pressure::from_si(1.0e5);
        let cold_water = MassDensity::from_si(1000.0);
        step!(working, let density: "\\rho" = MassDensity::from_si(state.density), "IAPWS SR6-08, or Melinder 2010");
        step!(working, let relative_drop: "\\Delta p/\\mathrm{bar}" = input.pressure_drop / bar, "definition");
        step!(working, let relative_density: "d" = density / cold_water, "definition");
        step!(working, let valve_kv: "K_v" in CUBIC_METRE_PER_HOUR = VolumeRate::from_si(input.volume_flow.si() * math::sqrt(relative_density.si() / relative_drop.si())), "EN 60534-1");
        ValveKvResult { density, valve_kv }
    }
}

/// State of the water in all circuits.
#[record]
pub struct CircuitBalanceInput {
    /// Temperature of the water.
    #[field("t", DEGREE_CELSIUS, -30.0..=110.0, default = 60.0, usual = 5.0..=90.0)]
    pub temperature: ThermodynamicTemperature,
    /// Absolute pressure of the water; hardly matters.
    #[field("p", BAR, 0.5..=20.0, default = 2.0)]
    pub pressure: AbsolutePressure,
    /// Share of glycol by mass; needs the setting `fluid`.
    #[field("w", PERCENT, 0.0..=60.0, default = 0.0)]
    pub glycol_mass_fraction: Ratio,
}

/// The index circuit.
#[record]
pub struct CircuitBalanceResult {
    /// Number of the index circuit, counted from 1: the one with the greatest pressure drop.
    #[field("i", ONE)]
    pub index_circuit: Ratio,
    /// Its pressure drop: what the pump must make.
    #[field("\\Delta p_i", KILOPASCAL)]
    pub index_pressure_drop: Pressure,
    /// Smallest pressure drop of any circuit.
    #[field("\\Delta p_{min}", KILOPASCAL)]
    pub least_pressure_drop: Pressure,
    /// Flow of the index circuit.
    #[field("\\dot V_i", LITRE_PER_HOUR)]
    pub index_flow: VolumeRate,
    /// Greatest velocity in any section.
    #[field("v_{max}", METRE_PER_SECOND)]
    pub greatest_velocity: Velocity,
}

/// A length of tube with one flow, shared by one circuit or several.
#[derive(Clone, Debug)]
pub struct Section {
    /// What circuits call it by.
    pub name: String,
    /// Tube, friction and fittings.
    pub run: WaterPressureDrop,
    /// Volume flow in m³/s.
    pub volume_flow: f64,
    /// Length in m, flow and return together.
    pub length: f64,
    /// Further loss coefficients.
    pub loss_coefficient: f64,
    /// Drop in Pa of boiler, emitter, valve or meter at this flow, from its maker.
    pub fixed_drop: f64,
}

impl Section {
    /// Velocity in m/s and pressure drop in Pa of a self.
    fn velocity_and_drop(&self, input: &CircuitBalanceInput) -> (f64, f64) {
        let mut flow = WaterPressureDropInput::unset();
        flow.volume_flow = VolumeRate::from_si(self.volume_flow);
        flow.length = Length::from_si(self.length);
        flow.loss_coefficient = Ratio::from_si(self.loss_coefficient);
        flow.temperature = input.temperature;
        flow.pressure = input.pressure;
        flow.glycol_mass_fraction = input.glycol_mass_fraction;
        let result = self.run.compute(&flow, &mut Silent);
        (result.velocity.si(), result.pressure_drop.si() + self.fixed_drop)
    }
}

/// A way of the water from the pump and back.
#[derive(Clone, Debug)]
pub struct Circuit {
    /// Its name.
    pub name: String,
    /// Places of its sections in the list of sections.
    pub sections: Vec<usize>,
}

/// Index circuit and balance of several circuits.
#[derive(Clone, Debug)]
pub struct CircuitBalance {
    sections: Vec<Section>,
    circuits: Vec<Circuit>,
}

impl CircuitBalance {
    /// Circuits over shared sections.
    ///
    /// # Errors
    /// No circuit, one without sections, or one that names a section there is not.
    pub fn new(sections: Vec<Section>, circuits: Vec<Circuit>) -> Result<Self, Error> {
        let sound = !circuits.is_empty()
            && circuits.iter().all(|circuit| !circuit.sections.is_empty() && circuit.sections.iter().all(|i| *i < sections.len()));
        if sound {
            Ok(Self { sections, circuits })
        } else {
            Err(Error::bad_setting("circuits", "", "at least one circuit is needed, and each must run through sections that exist"))
        }
    }

    /// Pressure drop of a circuit in Pa.
    fn drop_of(&self, circuit: &Circuit, input: &CircuitBalanceInput) -> f64 {
        circuit.sections.iter().filter_map(|i| self.sections.get(*i)).map(|section| section.velocity_and_drop(input).1).sum()
    }

    /// The circuit's own flow in m³/s: the least of its sections.
    fn flow_of(&self, circuit: &Circuit) -> f64 {
        circuit.sections.iter().filter_map(|i| self.sections.get(*i)).fold(f64::INFINITY, |least, s| least.min(s.volume_flow))
    }

    /// Place, drop in Pa and least drop in Pa of the index circuit.
    fn index(&self, input: &CircuitBalanceInput) -> (usize, f64, f64) {
        let mut index = (0, f64::NAN, f64::NAN);
        for (i, circuit) in self.circuits.iter().enumerate() {
            let drop = self.drop_of(circuit, input);
            if i == 0 || drop > index.1 {
                index = (i, drop, index.2);
            }
            index.2 = if i == 0 { drop } else { index.2.min(drop) };
        }
        index
    }
}

const SECTION_KEYS: [&str; 7] = ["name", "tube", "length", "volume_flow", "fittings", "loss_coefficient", "fixed_drop"];
/// Most sections and circuits taken.
const MOST: usize = 1000;

fn section_from_node(node: &Node, settings: &Settings<'_>) -> Result<Section, Error> {
    let within = |error: Error| error.within("sections");
    for (key, _) in node.entries("sections")? {
        if !SECTION_KEYS.contains(&key) {
            return Err(Error::unknown_name("sections", key, SECTION_KEYS.into_iter()));
        }
    }
    let need = |key: &'static str| {
        node.get(key).ok_or_else(|| Error::bad_setting("sections", "", "each section needs name, tube, length and volume_flow"))
    };
    let tube = Tube::from_node("tube", need("tube")?).map_err(within)?;
    let fluid = Fluid::from_settings(settings)?;
    let friction = friction_from_settings(settings)?;
    let (fitting_coefficient, fitting_length) = fittings_from_node("fittings", node.get("fittings"), tube.bore()).map_err(within)?;
    let number = |key: &str, value: f64, most: f64| {
        let sound = (0.0..=most).contains(&value);
        if sound {
            Ok(value)
        } else {
            Err(within(Error::bad_setting(key, &alloc::format!("{value}"), &alloc::format!("allowed is 0 to {most} (SI)"))))
        }
    };
    let flow: VolumeRate = need("volume_flow")?.quantity("volume_flow").map_err(within)?;
    let length: Length = need("length")?.quantity("length").map_err(within)?;
    let loss: Ratio = node.get("loss_coefficient").map_or(Ok(Ratio::from_si(0.0)), |n| n.quantity("loss_coefficient")).map_err(within)?;
    let fixed: Pressure = node.get("fixed_drop").map_or(Ok(Pressure::from_si(0.0)), |n| n.quantity("fixed_drop")).map_err(within)?;
    Ok(Section {
        name: need("name")?.text("name")?.into(),
        run: WaterPressureDrop { tube, fluid, friction, fitting_coefficient, fitting_length },
        volume_flow: number("volume_flow", flow.si(), 1000.0)?,
        length: number("length", length.si(), 10_000.0)?,
        loss_coefficient: number("loss_coefficient", loss.si(), 1.0e6)?,
        fixed_drop: number("fixed_drop", fixed.si(), 1.0e8)?,
    })
}

fn circuit_from_node(node: &Node, sections: &[Section]) -> Result<Circuit, Error> {
    for (key, _) in node.entries("circuits")? {
        if !["name", "sections"].contains(&key) {
            return Err(Error::unknown_name("circuits", key, ["name", "sections"].into_iter()));
        }
    }
    let missing = || Error::bad_setting("circuits", "", "each circuit needs a name and the names of its sections");
    let mut places = Vec::new();
    for item in node.get("sections").ok_or_else(missing)?.list("sections")? {
        let wanted = item.text("sections")?;
        let place = sections
            .iter()
            .position(|section| section.name == wanted)
            .ok_or_else(|| Error::unknown_name("sections", wanted, sections.iter().map(|section| section.name.as_str())))?;
        places.push(place);
    }
    Ok(Circuit { name: node.get("name").ok_or_else(missing)?.text("name")?.into(), sections: places })
}

impl Context for CircuitBalance {
    const SETTINGS: &'static [Setting] = &[
        FLUID_SETTING,
        FRICTION_SETTING,
        Setting {
            name: "sections",
            doc: "Lengths of tube with one flow each: a list of { name, tube, length, volume_flow, fittings, loss_coefficient, fixed_drop }; fixed_drop is that of a boiler, emitter or open valve at this flow.",
            form: Form::Structure,
            default: None,
        },
        Setting {
            name: "circuits",
            doc: "Ways of the water from the pump and back: a list of { name, sections }, the sections by name.",
            form: Form::Structure,
            default: None,
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let list = |name: &'static str| {
            let items = settings.need(name)?.list(name)?;
            if items.len() > MOST { Err(Error::bad_setting(name, "", "1000 at most")) } else { Ok(items) }
        };
        let sections = list("sections")?.iter().map(|node| section_from_node(node, settings)).collect::<Result<Vec<_>, _>>()?;
        let circuits = list("circuits")?.iter().map(|node| circuit_from_node(node, &sections)).collect::<Result<Vec<_>, _>>()?;
        Self::new(sections, circuits)
    }
}

impl Calculation for CircuitBalance {
    type Input = CircuitBalanceInput;
    type Output = CircuitBalanceResult;
    const INFO: Info = Info {
        name: "circuit_balance",
        title: "Index circuit and balance",
        summary: "Pressure drop of every circuit, the index circuit, and the Kv to which the balancing valve of each other circuit is set.",
        sources: &[
            Source::new("Darcy and Weisbach, as in water_pressure_drop", "drop of each section"),
            KV_SOURCE,
            Source::new("textbook, hydronics", "the pump serves the index circuit; the others throttle the difference"),
        ],
        accuracy: "As water_pressure_drop: 5 % for tube, 20 % for fittings.",
        cautions: &[],
        checked_against: "heat/pressure_drop_water.csv, for every section",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn check(&self, input: &CircuitBalanceInput) -> Raised {
        let fluid = self.sections.first().map_or(Fluid::Water, |section| section.run.fluid);
        judged(fluid, input.glycol_mass_fraction.si(), input.temperature.si())
    }

    fn compute<W: Working>(&self, input: &CircuitBalanceInput, working: &mut W) -> CircuitBalanceResult {
        let (place, greatest, least) = self.index(input);
        // Nothing is said of an index circuit where the drops are not numbers.
        let hole = 0.0 * greatest;
        let number = place as f64 + 1.0 + hole;
        let flow = self.circuits.get(place).map_or(f64::NAN, |circuit| self.flow_of(circuit)) + hole;
        let fastest = self.sections.iter().fold(0.0, |most: f64, section| most.max(section.velocity_and_drop(input).0)) + hole;
        step!(working, let index_circuit: "i" = Ratio::from_si(number), "the circuit with the greatest sum over its sections");
        step!(working, let index_pressure_drop: "\\Delta p_i" in KILOPASCAL = Pressure::from_si(greatest), "sum over the sections of the index circuit");
        step!(working, let least_pressure_drop: "\\Delta p_{min}" in KILOPASCAL = Pressure::from_si(least), "sum over the sections of the easiest circuit");
        CircuitBalanceResult {
            index_circuit,
            index_pressure_drop,
            least_pressure_drop,
            index_flow: VolumeRate::from_si(flow),
            greatest_velocity: Velocity::from_si(fastest),
        }
    }

    fn tables(&self, input: &CircuitBalanceInput) -> Vec<Table> {
        let (_, greatest, _) = self.index(input);
        let column = |name: &str, unit, values: Vec<f64>| Column { name: name.into(), unit, values };
        let drops: Vec<f64> = self.circuits.iter().map(|circuit| self.drop_of(circuit, input)).collect();
        let flows: Vec<f64> = self.circuits.iter().map(|circuit| self.flow_of(circuit)).collect();
        let fluid = self.sections.first().map_or(Fluid::Water, |section| section.run.fluid);
        let density = fluid.state(input.glycol_mass_fraction.si(), input.pressure.si(), input.temperature.si()).density;
        // The index circuit throttles nothing: its valve stands open, which has no Kv of its own.
        let spare: Vec<f64> = drops.iter().map(|drop| greatest - drop).collect();
        let kv =
            spare.iter().zip(&flows).map(|(spare, flow)| if *spare > 0.0 { valve_coefficient(*flow, *spare, density) } else { f64::NAN });
        let parts: Vec<(f64, f64)> = self.sections.iter().map(|section| section.velocity_and_drop(input)).collect();
        alloc::vec![
            Table {
                name: "circuits",
                row_names: self.circuits.iter().map(|circuit| circuit.name.clone()).collect(),
                columns: alloc::vec![
                    column("volume_flow", &LITRE_PER_HOUR, flows.clone()),
                    column("pressure_drop", &KILOPASCAL, drops),
                    column("to_throttle", &KILOPASCAL, spare.clone()),
                    column("valve_kv", &CUBIC_METRE_PER_HOUR, kv.collect()),
                ],
            },
            Table {
                name: "sections",
                row_names: self.sections.iter().map(|section| section.name.clone()).collect(),
                columns: alloc::vec![
                    column("velocity", &METRE_PER_SECOND, parts.iter().map(|part| part.0).collect()),
                    column("pressure_drop", &KILOPASCAL, parts.iter().map(|part| part.1).collect()),
                    column(
                        "loss_coefficient",
                        &ONE,
                        self.sections.iter().map(|s| s.run.fitting_coefficient + s.loss_coefficient).collect()
                    ),
                ],
            },
        ]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::water::tests::assert_close;

    #[test]
    fn kv_restates_its_definition() {
        // 1 m³/h at 0.25 bar needs Kv 2 with water of 1000 kg/m³; density enters by its root.
        let given = Node::from([("volume_flow", "1000 L/h"), ("pressure_drop", "25 kPa"), ("temperature", "60 degC")]);
        let got = evaluate("valve_kv", &given, Bare::Refused).unwrap();
        let density = got.get("density").unwrap();
        assert_close(got.get("valve_kv").unwrap() * 3600.0, 2.0 * sqrt(density / 1000.0), 1e-14, "kv");
        assert_close(valve_coefficient(1.0 / 3600.0, 0.25e5, density), got.get("valve_kv").unwrap(), 1e-15, "same");
    }

    fn section(name: &str, tube: &str, length: &str, flow: &str) -> Node {
        Node::from([("name", name), ("tube", tube), ("length", length), ("volume_flow", flow)])
    }

    fn circuit(name: &str, sections: &[&str]) -> Node {
        let sections = Node::List(sections.iter().map(|s| Node::from(*s)).collect());
        Node::from([("name", Node::from(name)), ("sections", sections)])
    }

    fn given(circuits: Vec<Node>) -> Node {
        let sections = std::vec![
            section("main", "copper 22x0.9", "10 m", "600 L/h"),
            section("near", "copper 15x0.7", "4 m", "400 L/h"),
            section("far", "copper 15x0.7", "30 m", "200 L/h"),
        ];
        Node::from([("sections", Node::List(sections)), ("circuits", Node::List(circuits)), ("temperature", Node::from("50 degC"))])
    }

    #[test]
    fn drops_add_up_and_the_index_is_found() {
        let got =
            evaluate("circuit_balance", &given(std::vec![circuit("a", &["main", "near"]), circuit("b", &["main", "far"])]), Bare::Refused)
                .unwrap();
        // Drops per metre of the reference table: 50 °C, 22 mm 600 L/h; 15 mm 200 and 400 L/h.
        let (main, near, far) = (10.0 * 174.45, 4.0 * 563.4181, 30.0 * 167.6654);
        assert_eq!(got.get("index_circuit"), Some(2.0));
        assert_close(got.get("index_pressure_drop").unwrap(), main + far, 2e-6, "index");
        assert_close(got.get("least_pressure_drop").unwrap(), main + near, 2e-6, "least");
        assert_close(got.get("index_flow").unwrap(), 200.0 / 3.6e6, 1e-14, "flow");
        let tables = got.prepared.tables(&got.input);
        let kv = &tables[0].columns[3].values;
        assert_close(kv[0], valve_coefficient(400.0 / 3.6e6, far - near, 988.0781), 1e-5, "kv");
        assert!(kv[1].is_nan());
        assert_close(tables[1].columns[1].values[2], far, 2e-6, "section");
    }

    #[test]
    fn wrong_names_are_refused() {
        let refused = |node| std::format!("{}", evaluate("circuit_balance", &node, Bare::Refused).err().unwrap());
        assert!(refused(given(std::vec![circuit("a", &["main", "naer"])])).contains("did you mean \"near\""));
        assert!(refused(given(std::vec![])).contains("at least one circuit"));
    }
}
