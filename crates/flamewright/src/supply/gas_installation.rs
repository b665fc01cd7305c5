//! The calculations `gas_installation` and `gas_pipe_sizing`: pressures at every appliance of a
//! branched installation, and the tubes that keep each within an allowed drop.

use super::branches::{Bore, Branch, BranchFlow, SupplyGas, choose_bores, pressures, section_flows};
use super::gas::{FRICTION, PipedGas, REFERENCE, air_density, friction};
use super::installation_volume::bore_and_roughness;
use super::{CAUTION_COMPETENCE, or};
use crate::Error;
use crate::calculation::{Calculation, Column, Context, Form, Info, Raised, Rule, Setting, Settings, Source, Table};
use crate::convection::friction::{LAMINAR_BELOW, TURBULENT_FROM, TurbulentFriction};
use crate::fuel::Fuel;
use crate::material::tube;
use crate::node::Node;
use crate::quantity::types::{Length, Pressure, Ratio, ThermodynamicTemperature, Velocity, Volume, VolumeRate};
use crate::quantity::units::*;
use crate::quantity::{AbsolutePressure, AtReference, GasFlow, GaugePressure, Gross, HeatInput, Value};
use crate::record::record;
use crate::rules;
use crate::system::fittings_from_node;
use crate::working::{Working, step};
use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;
use core::f64::consts::PI;

/// Most sections of one installation; they are walked without allocation.
const MOST_SECTIONS: usize = 64;
/// Most sizes to choose from.
const MOST_SIZES: usize = 20;
/// Roughness of a drawn tube, m: textbook value, taken where only a bore is stated.
const DRAWN_TUBE: f64 = 1.5e-6;

const SOURCES: &[Source] = &[
    Source::new("Darcy-Weisbach with isothermal expansion; Hagen-Poiseuille and the turbulent equation set", "drop of each section"),
    Source::new("Hydrostatics", "gain or loss with height"),
    Source::new("ISO 6976:2016", "density and calorific value from the composition"),
    Source::new("Wilke 1950, J. Chem. Phys. 18, 517", "viscosity"),
];
const ACCURACY: &str =
    "About 5 % of each drop in turbulent flow for known bores. Sections in transition are bounded; reckon with the low pressure.";

/// A section of an installation.
#[derive(Clone, Debug, PartialEq)]
pub struct Section {
    /// Its name.
    pub name: String,
    /// Where it hangs, how long it is, what it feeds.
    pub branch: Branch,
    /// Its bore; not looked at where sizes are to be chosen.
    pub bore: Option<Bore>,
}

/// An installation as both calculations share it.
#[derive(Clone, Debug)]
struct Network {
    gas: PipedGas,
    friction: TurbulentFriction,
    names: Vec<String>,
    branches: Vec<Branch>,
    /// Reference flow in each section, m3/s.
    flows: Vec<f64>,
}

const SECTIONS_DOC: &str = "The sections, each a table: name; from (name of the section it hangs from, which stands before it; left out, the meter); length; equivalent_length and loss_coefficient of parts not named; fittings (names with their number, as water_pressure_drop takes them); rise; load (an appliance at its end: gross heat input such as \"24 kW\", or flow at reference conditions such as \"2.3 m3/h\").";
const SECTIONS_WITH_TUBES_DOC: &str =
    "The sections, as in gas_pipe_sizing, each also with tube (by name), or bore, or outside_diameter and wall; roughness if known.";

impl Network {
    fn new(gas: PipedGas, friction: TurbulentFriction, sections: &[Section]) -> Result<Self, Error> {
        let refuse = |why: &str| Error::bad_setting("sections", "", why);
        if sections.is_empty() || sections.len() > MOST_SECTIONS {
            return Err(refuse("an installation has 1 to 64 sections"));
        }
        let branches: Vec<Branch> = sections.iter().map(|section| section.branch.clone()).collect();
        let Some(flows) = section_flows(&branches) else { return Err(refuse("a section hangs from one that stands before it")) };
        if !branches.iter().any(|branch| branch.load > 0.0) {
            return Err(refuse("no section has a load"));
        }
        Ok(Self { gas, friction, names: sections.iter().map(|section| section.name.clone()).collect(), branches, flows })
    }

    /// Fittings of a section without a tube of its own are taken in a tube of `bore`.
    fn from_settings(settings: &Settings<'_>, bore: f64) -> Result<(Self, Vec<Section>), Error> {
        let gas = PipedGas::from_settings(settings)?;
        let sections = read_sections(settings.need("sections")?, gas.gross_calorific_value, bore)?;
        Ok((Self::new(gas, friction(settings)?, &sections)?, sections))
    }

    fn supply(&self, inlet: GaugePressure, temperature: ThermodynamicTemperature, barometer: AbsolutePressure) -> SupplyGas {
        let reference_density = self.gas.reference_density;
        let inlet_absolute = inlet.si() + barometer.si();
        SupplyGas {
            reference_density,
            density_per_pressure: self.gas.density(reference_density, self.gas.non_ideality, temperature.si(), inlet_absolute)
                / inlet_absolute,
            viscosity: self.gas.viscosity.at(temperature.si()),
            air_density: air_density(temperature.si(), barometer.si()),
            barometric_pressure: barometer.si(),
            inlet_pressure: inlet.si(),
            friction: self.friction,
        }
    }

    /// All sections with given bores and a share of the full load.
    fn walk(&self, bores: &[Bore], load_factor: f64, gas: &SupplyGas) -> Walk {
        let mut flows = [0.0; MOST_SECTIONS];
        for (slot, flow) in flows.iter_mut().zip(&self.flows) {
            *slot = flow * load_factor;
        }
        let mut sections = [BranchFlow::default(); MOST_SECTIONS];
        let count = self.branches.len().min(MOST_SECTIONS);
        let walked = match (flows.get(..count), sections.get_mut(..count)) {
            (Some(flows), Some(sections)) => pressures(&self.branches, bores, flows, gas, sections),
            _ => None,
        };
        Walk { sections, count: if walked.is_some() { count } else { 0 } }
    }

    fn summary(&self, walk: &Walk, bores: &[Bore], inlet: f64) -> Summary {
        let nothing =
            Summary { lowest_low: f64::NAN, lowest_high: f64::NAN, drop: f64::NAN, velocity: f64::NAN, volume: f64::NAN, transition: 0.0 };
        if walk.count == 0 {
            return nothing;
        }
        let start =
            Summary { lowest_low: f64::INFINITY, lowest_high: f64::INFINITY, drop: 0.0, velocity: 0.0, volume: 0.0, transition: 0.0 };
        let found = walk.sections().iter().zip(&self.branches).zip(bores).fold(start, |mut sum, ((flow, branch), bore)| {
            if branch.load > 0.0 {
                sum.lowest_low = least(sum.lowest_low, flow.end_pressure.low);
                sum.lowest_high = least(sum.lowest_high, flow.end_pressure.high);
            }
            sum.velocity = -least(-sum.velocity, -flow.pipe.velocity);
            sum.volume += 0.25 * PI * bore.diameter * bore.diameter * branch.length;
            sum.transition += f64::from(u8::from((LAMINAR_BELOW..TURBULENT_FROM).contains(&flow.pipe.reynolds))) + 0.0 * flow.pipe.reynolds;
            sum
        });
        Summary { drop: inlet - found.lowest_low, ..found }
    }

    fn table(&self, walk: &Walk, bores: &[Bore], row_names: Vec<String>) -> Table {
        let flows = |name: &str, unit, value: &dyn Fn(&BranchFlow) -> f64| Column {
            name: name.into(),
            unit,
            values: walk.sections().iter().map(value).collect(),
        };
        let lengths = self.branches.iter().map(|branch| branch.length).collect();
        Table {
            name: "sections",
            row_names,
            columns: vec![
                Column { name: "bore".into(), unit: &MILLIMETRE, values: bores.iter().map(|bore| bore.diameter).collect() },
                Column { name: "effective_length".into(), unit: &METRE, values: lengths },
                flows("gas_flow", &CUBIC_METRE_PER_HOUR, &|section| section.flow),
                flows("velocity", &METRE_PER_SECOND, &|section| section.pipe.velocity),
                flows("reynolds_number", &ONE, &|section| section.pipe.reynolds),
                flows("pressure_drop_low", &PASCAL, &|section| section.pipe.pressure_drop_expanding.low),
                flows("pressure_drop_high", &PASCAL, &|section| section.pipe.pressure_drop_expanding.high),
                flows("end_pressure_low", &MILLIBAR, &|section| section.end_pressure.low),
                flows("end_pressure_high", &MILLIBAR, &|section| section.end_pressure.high),
            ],
        }
    }

    fn full_flow(&self) -> f64 {
        self.branches.iter().map(|branch| branch.load).sum()
    }
}

/// The lesser, and not-a-number if either is.
fn least(one: f64, other: f64) -> f64 {
    if one.is_nan() || one < other { one } else { other }
}

struct Walk {
    sections: [BranchFlow; MOST_SECTIONS],
    count: usize,
}

impl Walk {
    fn sections(&self) -> &[BranchFlow] {
        self.sections.get(..self.count).unwrap_or(&[])
    }
}

struct Summary {
    lowest_low: f64,
    lowest_high: f64,
    drop: f64,
    velocity: f64,
    volume: f64,
    transition: f64,
}

/// Sections from their setting; a load in kilowatts is turned into a flow with the calorific value.
fn read_sections(list: &Node, gross_calorific_value: f64, unsized_bore: f64) -> Result<Vec<Section>, Error> {
    const KNOWN: [&str; 13] = [
        "name",
        "from",
        "length",
        "equivalent_length",
        "loss_coefficient",
        "rise",
        "load",
        "tube",
        "bore",
        "outside_diameter",
        "wall",
        "roughness",
        "fittings",
    ];
    let nodes = list.list("sections")?;
    if nodes.len() > MOST_SECTIONS {
        return Err(Error::bad_setting("sections", "", "an installation has 1 to 64 sections"));
    }
    let mut sections: Vec<Section> = Vec::with_capacity(nodes.len());
    for (position, node) in nodes.iter().enumerate() {
        for (key, _) in node.entries("sections")? {
            if !KNOWN.contains(&key) {
                return Err(Error::unknown_name("sections", key, KNOWN.iter().copied()));
            }
        }
        let metres = |key: &str, low: f64| -> Result<f64, Error> {
            let Some(given) = node.get(key) else { return Ok(0.0) };
            let value = given.quantity::<Length>(key)?.si();
            if (low..=1e4).contains(&value) {
                Ok(value)
            } else {
                Err(Error::bad_setting(key, &given.brief(), "a length of a section lies within 10 km"))
            }
        };
        let name = match node.get("name") {
            Some(given) => given.text("name")?.to_string(),
            None => alloc::format!("section {}", position + 1),
        };
        if sections.iter().any(|section| section.name == name) {
            return Err(Error::bad_setting("sections", &name, "two sections have one name"));
        }
        let parent = match node.get("from") {
            None => None,
            Some(given) => {
                let from = given.text("from")?;
                let place = sections.iter().position(|section| section.name == from);
                Some(place.ok_or_else(|| Error::unknown_name("from", from, sections.iter().map(|section| section.name.as_str())))?)
            }
        };
        let loss_coefficient = match node.get("loss_coefficient") {
            None => 0.0,
            Some(given) => given.quantity::<Ratio>("loss_coefficient")?.si(),
        };
        if !(0.0..=1e4).contains(&loss_coefficient) {
            return Err(Error::bad_setting("loss_coefficient", "", "the sum of loss coefficients lies from 0 to 10000"));
        }
        node.get("length").ok_or_else(|| Error::missing("length", "the length of each section"))?;
        let load = match node.get("load") {
            None => 0.0,
            Some(given) => match given.quantity::<HeatInput<Gross>>("load") {
                Ok(heat) => heat.si() / gross_calorific_value,
                Err(no_heat) => given.quantity::<GasFlow<AtReference>>("load").map_err(|_| no_heat)?.si(),
            },
        };
        if !(0.0..=1e3).contains(&load) {
            return Err(Error::bad_setting("load", &node.get("load").map(Node::brief).unwrap_or_default(), "a load is not negative"));
        }
        let sized = ["tube", "bore", "outside_diameter"].iter().any(|key| node.get(key).is_some());
        let bore = if sized {
            let (bore, roughness) = bore_and_roughness(node, "sections")?;
            Some(Bore { diameter: bore.si(), roughness: roughness.map_or(DRAWN_TUBE, Value::si) })
        } else {
            None
        };
        let fittings_bore = bore.map_or(unsized_bore, |bore| bore.diameter);
        let (fitting_coefficient, fitting_length) = fittings_from_node("fittings", node.get("fittings"), fittings_bore)?;
        let branch = Branch {
            parent,
            length: metres("length", 0.0)? + metres("equivalent_length", 0.0)? + fitting_length,
            loss_coefficient: loss_coefficient + fitting_coefficient,
            rise: metres("rise", -1e4)?,
            load,
        };
        sections.push(Section { name, branch, bore });
    }
    Ok(sections)
}

/// The state in which an installation is looked at.
#[record]
pub struct InstallationLoad {
    /// Gauge pressure at the meter outlet.
    #[field("p_1", MILLIBAR, 0.0..=10000.0, usual = 5.0..=200.0)]
    pub inlet_pressure: GaugePressure,
    /// Share of every load that is drawn.
    #[field("g", PERCENT, 0.0..=200.0, default = 100.0, usual = 0.0..=100.0)]
    pub load_factor: Ratio,
    /// Temperature of gas and surroundings.
    #[field("T", DEGREE_CELSIUS, -30.0..=60.0, default = 15.0, usual = -10.0..=35.0)]
    pub gas_temperature: ThermodynamicTemperature,
    /// Barometric pressure.
    #[field("p_b", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 940.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
}

/// The installation in that state. Low and high differ only where a section is in transition.
#[record]
pub struct InstallationResult {
    /// Flow at reference conditions through the meter.
    #[field("\\dot V_r", CUBIC_METRE_PER_HOUR)]
    pub gas_flow: GasFlow<AtReference>,
    /// Heat input drawn, gross.
    #[field("\\dot Q_s", KILOWATT)]
    pub heat_input_gross: HeatInput<Gross>,
    /// Greatest drop from the meter to an appliance: the one to reckon with.
    #[field("\\Delta p_{hi}", PASCAL)]
    pub greatest_drop: Pressure,
    /// Least gauge pressure at an appliance: the one to reckon with.
    #[field("p_{lo}", MILLIBAR)]
    pub lowest_appliance_pressure_low: GaugePressure,
    /// The same if all flow in transition stayed laminar.
    #[field("p_{hi}", MILLIBAR)]
    pub lowest_appliance_pressure_high: GaugePressure,
    /// Greatest velocity.
    #[field("v_{max}", METRE_PER_SECOND)]
    pub greatest_velocity: Velocity,
    /// Sections in which the flow is neither laminar nor turbulent.
    #[field("N_t", ONE)]
    pub sections_in_transition: Ratio,
    /// Gas held by the pipes, fittings counted by their equivalent length.
    #[field("V", LITRE)]
    pub pipe_volume: Volume,
}

/// Pressures in a branched installation of given tubes.
#[derive(Clone, Debug)]
pub struct GasInstallation {
    network: Network,
    bores: Vec<Bore>,
}

impl GasInstallation {
    /// An installation of these sections, each with its bore.
    ///
    /// # Errors
    /// Without a load, without a bore, more than 64 sections, or out of order.
    pub fn new(gas: PipedGas, friction: TurbulentFriction, sections: &[Section]) -> Result<Self, Error> {
        Self::of(Network::new(gas, friction, sections)?, sections)
    }

    fn of(network: Network, sections: &[Section]) -> Result<Self, Error> {
        let bare = |section: &Section| {
            Error::bad_setting("sections", &section.name, "the section needs a tube, a bore, or outside_diameter and wall")
        };
        let bores = sections.iter().map(|section| section.bore.ok_or_else(|| bare(section))).collect::<Result<_, _>>()?;
        Ok(Self { network, bores })
    }
}

impl Context for GasInstallation {
    const SETTINGS: &'static [Setting] = &[
        Fuel::setting(),
        REFERENCE,
        FRICTION,
        Setting { name: "sections", doc: SECTIONS_WITH_TUBES_DOC, form: Form::Structure, default: None },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let (network, sections) = Network::from_settings(settings, f64::NAN)?;
        Self::of(network, &sections)
    }
}

mod installation_rules {
    crate::rules! {
        notice TRANSITION on "gas_flow": "some sections are neither laminar nor turbulent: the pressure lies between low and high; reckon with low";
        notice NO_PRESSURE_LEFT on "inlet_pressure": "the drop to an appliance exceeds the pressure at the meter: the loads cannot be fed";
    }
    pub(super) const ALL: &[crate::calculation::Rule] = RULES;
    pub(super) const UNSURE: u32 = TRANSITION;
    pub(super) const NOTHING_LEFT: u32 = NO_PRESSURE_LEFT;
}

impl Calculation for GasInstallation {
    type Input = InstallationLoad;
    type Output = InstallationResult;
    const INFO: Info = Info {
        name: "gas_installation",
        title: "Pressures in a branched gas installation",
        summary: "Flow, velocity, drop and pressure in every section of a branched installation, and the pressure at the worst-off appliance.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: &[CAUTION_COMPETENCE],
        checked_against: "heat/gas_pipe_drop.csv (single sections)",
    };
    const RULES: &'static [Rule] = installation_rules::ALL;

    #[inline]
    fn review(&self, _input: &InstallationLoad, output: &InstallationResult) -> Raised {
        Raised::NONE
            .when(installation_rules::UNSURE, output.sections_in_transition.si() > 0.0)
            .when(installation_rules::NOTHING_LEFT, output.lowest_appliance_pressure_low.si() < 0.0)
    }

    fn compute<W: Working>(&self, input: &InstallationLoad, working: &mut W) -> InstallationResult {
        let network = &self.network;
        let gas = network.supply(input.inlet_pressure, input.gas_temperature, input.barometric_pressure);
        let walk = network.walk(&self.bores, input.load_factor.si(), &gas);
        let found = network.summary(&walk, &self.bores, input.inlet_pressure.si());
        let full_flow = VolumeRate::from_si(network.full_flow());
        let gross_calorific_value = Pressure::from_si(network.gas.gross_calorific_value);
        step!(working, let gas_flow: "\\dot V_r" in CUBIC_METRE_PER_HOUR = input.load_factor * full_flow, "sum of the loads");
        step!(working, let heat_input: "\\dot Q_s" in KILOWATT = gas_flow * gross_calorific_value, "definition");
        let greatest_drop = Pressure::from_si(found.drop);
        step!(working, let lowest: "p_{lo}" in MILLIBAR = input.inlet_pressure.plain() - greatest_drop, "drops of the sections on the way, see the table");
        InstallationResult {
            gas_flow: GasFlow::new(gas_flow),
            heat_input_gross: HeatInput::new(heat_input),
            greatest_drop,
            lowest_appliance_pressure_low: GaugePressure::new(lowest),
            lowest_appliance_pressure_high: GaugePressure::from_si(found.lowest_high),
            greatest_velocity: Velocity::from_si(found.velocity),
            sections_in_transition: Ratio::from_si(found.transition),
            pipe_volume: Volume::from_si(found.volume),
        }
    }

    fn tables(&self, input: &InstallationLoad) -> Vec<Table> {
        let gas = self.network.supply(input.inlet_pressure, input.gas_temperature, input.barometric_pressure);
        let walk = self.network.walk(&self.bores, input.load_factor.si(), &gas);
        vec![self.network.table(&walk, &self.bores, self.network.names.clone())]
    }
}

/// What the tubes are to keep.
#[record]
pub struct SizingWish {
    /// Drop allowed from the meter to any appliance; set by the local rule.
    #[field("\\Delta p", MILLIBAR, 1e-3..=5000.0, usual = 0.1..=20.0)]
    pub allowed_drop: Pressure,
    /// Velocity that no section may exceed; set by the local rule.
    #[field("v_{lim}", METRE_PER_SECOND, 0.1..=100.0, absent = "no limit", usual = 1.0..=30.0)]
    pub velocity_limit: Velocity,
    /// Gauge pressure at the meter outlet.
    #[field("p_1", MILLIBAR, 0.0..=10000.0, usual = 5.0..=200.0)]
    pub inlet_pressure: GaugePressure,
    /// Share of every load that is reckoned with.
    #[field("g", PERCENT, 0.0..=200.0, default = 100.0, usual = 1.0..=100.0)]
    pub load_factor: Ratio,
    /// Temperature of gas and surroundings.
    #[field("T", DEGREE_CELSIUS, -30.0..=60.0, default = 15.0, usual = -10.0..=35.0)]
    pub gas_temperature: ThermodynamicTemperature,
    /// Barometric pressure.
    #[field("p_b", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 940.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
}

/// The installation with the tubes chosen; the tubes stand in the table.
#[record]
pub struct SizingResult {
    /// Gas held by the pipes, the least that will do.
    #[field("V", LITRE)]
    pub pipe_volume: Volume,
    /// Greatest drop from the meter to an appliance.
    #[field("\\Delta p_{hi}", PASCAL)]
    pub greatest_drop: Pressure,
    /// Drop left over.
    #[field("\\Delta p - \\Delta p_{hi}", PASCAL)]
    pub spare_drop: Pressure,
    /// Least gauge pressure at an appliance.
    #[field("p_{lo}", MILLIBAR)]
    pub lowest_appliance_pressure: GaugePressure,
    /// Greatest velocity.
    #[field("v_{max}", METRE_PER_SECOND)]
    pub greatest_velocity: Velocity,
    /// Widest bore chosen.
    #[field("D_{max}", MILLIMETRE)]
    pub widest_bore: Length,
}

/// Tubes for a branched installation.
#[derive(Clone, Debug)]
pub struct GasPipeSizing {
    network: Network,
    names: Vec<String>,
    bores: Vec<Bore>,
}

impl GasPipeSizing {
    /// Sections to be sized from these bores, which have names.
    ///
    /// # Errors
    /// As [`GasInstallation::new`]; no bores, more than 20, or two of one bore.
    pub fn new(gas: PipedGas, friction: TurbulentFriction, sections: &[Section], sizes: Vec<(String, Bore)>) -> Result<Self, Error> {
        Self::of(Network::new(gas, friction, sections)?, sizes)
    }

    fn of(network: Network, mut sizes: Vec<(String, Bore)>) -> Result<Self, Error> {
        sizes.sort_by(|(_, one), (_, other)| one.diameter.total_cmp(&other.diameter));
        let rising = sizes.windows(2).all(|pair| matches!(pair, [(_, one), (_, other)] if one.diameter < other.diameter));
        if sizes.is_empty() || sizes.len() > MOST_SIZES || !rising {
            return Err(Error::bad_setting("tubes", "", "1 to 20 tubes of different bores are needed"));
        }
        let (names, bores) = sizes.into_iter().unzip();
        Ok(Self { network, names, bores })
    }

    /// Positions of the tubes chosen and what they give.
    fn choose(&self, input: &SizingWish) -> Option<(Vec<usize>, Vec<Bore>, Walk)> {
        let gas = self.network.supply(input.inlet_pressure, input.gas_temperature, input.barometric_pressure);
        let factor = input.load_factor.si();
        let flows: Vec<f64> = self.network.flows.iter().map(|flow| flow * factor).collect();
        let limit = or(input.velocity_limit.si(), f64::INFINITY);
        let sizes = choose_bores(&self.network.branches, &self.bores, &flows, &gas, input.allowed_drop.si(), limit)?;
        let bores = sizes.iter().map(|&size| self.bores.get(size).copied()).collect::<Option<Vec<_>>>()?;
        let walk = self.network.walk(&bores, factor, &gas);
        Some((sizes, bores, walk))
    }
}

impl Context for GasPipeSizing {
    const SETTINGS: &'static [Setting] = &[
        Fuel::setting(),
        REFERENCE,
        FRICTION,
        Setting { name: "sections", doc: SECTIONS_DOC, form: Form::Structure, default: None },
        Setting {
            name: "tubes",
            doc: "The tubes to choose from: a list of names such as \"copper 15x0.7\".",
            form: Form::Structure,
            default: None,
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let list = settings.need("tubes")?.list("tubes")?;
        if list.len() > MOST_SIZES {
            return Err(Error::bad_setting("tubes", "", "1 to 20 tubes of different bores are needed"));
        }
        let mut sizes = Vec::with_capacity(list.len());
        for node in list {
            let name = node.text("tubes")?;
            let tube = tube(name).map_err(|unknown| Error::bad_setting("tubes", name, &unknown.to_string()))?;
            sizes.push((name.to_string(), Bore { diameter: tube.bore(), roughness: tube.roughness }));
        }
        // The loss coefficient of a named fitting falls slowly with the bore: the narrowest is safe.
        let narrowest = sizes.iter().map(|(_, bore)| bore.diameter).fold(f64::INFINITY, f64::min);
        let (network, _) = Network::from_settings(settings, narrowest)?;
        Self::of(network, sizes)
    }
}

rules! {
    refuse NO_SIZES on "allowed_drop": "no choice of the tubes offered keeps the drop and the velocity; offer wider tubes or allow more";
    refuse MORE_THAN_THERE_IS on "allowed_drop": "the drop allowed exceeds the gauge pressure at the meter";
}

impl Calculation for GasPipeSizing {
    type Input = SizingWish;
    type Output = SizingResult;
    const INFO: Info = Info {
        name: "gas_pipe_sizing",
        title: "Sizing of a branched gas installation",
        summary: "The tube for each section of a branched installation so that no appliance loses more than the allowed drop, no section flows too fast or widens away from the meter, and the pipes hold the least gas.",
        sources: SOURCES,
        accuracy: "The choice is the best there is for the drops reckoned, which err on the safe side: flow in transition counts as turbulent, and the gas as thin as after the whole allowed drop.",
        cautions: &[CAUTION_COMPETENCE],
        checked_against: "No outside table of sized installations; tested against the trial of every combination, and the drops against heat/gas_pipe_drop.csv.",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn check(&self, input: &SizingWish) -> Raised {
        Raised::NONE.when(MORE_THAN_THERE_IS, input.allowed_drop.si() > input.inlet_pressure.si())
    }

    #[inline]
    fn review(&self, _input: &SizingWish, output: &SizingResult) -> Raised {
        Raised::NONE.when(NO_SIZES, output.pipe_volume.si().is_nan())
    }

    // A search over lists allocates; this calculation is no kernel for columns.
    fn compute<W: Working>(&self, input: &SizingWish, working: &mut W) -> SizingResult {
        let chosen = self.choose(input);
        let (found, widest) = match &chosen {
            Some((_, bores, walk)) => {
                let widest = bores.iter().fold(0.0_f64, |widest, bore| widest.max(bore.diameter));
                (self.network.summary(walk, bores, input.inlet_pressure.si()), widest)
            }
            None => (self.network.summary(&Walk { sections: [BranchFlow::default(); MOST_SECTIONS], count: 0 }, &[], f64::NAN), f64::NAN),
        };
        let greatest_drop = Pressure::from_si(found.drop);
        step!(working, let spare_drop: "\\Delta p - \\Delta p_{hi}" in PASCAL = input.allowed_drop - greatest_drop, "definition");
        step!(working, let lowest: "p_{lo}" in MILLIBAR = input.inlet_pressure.plain() - greatest_drop, "drops of the sections on the way, see the table");
        SizingResult {
            pipe_volume: Volume::from_si(found.volume),
            greatest_drop,
            spare_drop,
            lowest_appliance_pressure: GaugePressure::new(lowest),
            greatest_velocity: Velocity::from_si(found.velocity),
            widest_bore: Length::from_si(widest),
        }
    }

    fn tables(&self, input: &SizingWish) -> Vec<Table> {
        let Some((sizes, bores, walk)) = self.choose(input) else { return Vec::new() };
        let names = self.network.names.iter().zip(&sizes).map(|(section, &size)| {
            let tube = self.names.get(size).map_or("", String::as_str);
            alloc::format!("{section}: {tube}")
        });
        vec![self.network.table(&walk, &bores, names.collect())]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::calculation::Evaluated;
    use crate::catalogue::{Bare, evaluate};
    use crate::quantity::ReferenceConditions;
    use crate::record::Record;

    fn table(entries: &[(&str, &str)]) -> Node {
        Node::Table(entries.iter().map(|&(key, value)| (key.to_string(), Node::from(value))).collect())
    }

    /// An invented house, with tubes or without.
    fn house(tubes: [&str; 4]) -> Node {
        let sections = [
            vec![("name", "main"), ("length", "6 m"), ("equivalent_length", "1.5 m"), ("tube", tubes[0])],
            vec![("name", "fire"), ("from", "main"), ("length", "3 m"), ("rise", "2.4 m"), ("load", "6 kW"), ("tube", tubes[1])],
            vec![("name", "hob"), ("from", "main"), ("length", "4 m"), ("load", "0.9 m3/h"), ("tube", tubes[2])],
            vec![("name", "boiler"), ("from", "main"), ("length", "5 m"), ("loss_coefficient", "4"), ("load", "30 kW"), ("tube", tubes[3])],
        ];
        let kept =
            sections.iter().map(|section| table(&section.iter().copied().filter(|(_, value)| !value.is_empty()).collect::<Vec<_>>()));
        Node::List(kept.collect())
    }

    fn given(entries: &[(&str, &str)], lists: Vec<(&str, Node)>) -> Node {
        let texts = entries.iter().map(|&(key, value)| (key.to_string(), Node::from(value)));
        Node::Table(texts.chain(lists.into_iter().map(|(key, node)| (key.to_string(), node))).collect())
    }

    #[test]
    fn the_worst_appliance_is_that_of_the_table() {
        let tubes = ["copper 28x0.9", "copper 15x0.7", "copper 15x0.7", "copper 22x0.9"];
        let outcome =
            evaluate("gas_installation", &given(&[("inlet_pressure", "21 mbar")], vec![("sections", house(tubes))]), Bare::Refused)
                .unwrap();
        let sections = &outcome.prepared.tables(&outcome.input)[0];
        let column = |name: &str| sections.columns.iter().find(|column| column.name == name).unwrap().values.clone();
        let lowest = column("end_pressure_low")[1..].iter().copied().fold(f64::INFINITY, f64::min);
        assert_eq!(outcome.get("lowest_appliance_pressure_low").unwrap(), lowest);
        // 36 kW over 37.78 MJ/m3 and 0.9 m3/h.
        assert!((column("gas_flow")[0] * 3600.0 - (36.0 / 37.78 * 3.6 + 0.9)).abs() < 2e-3);
        assert!((column("gas_flow")[0] / outcome.get("gas_flow").unwrap() - 1.0).abs() < 1e-14);
        // The fire gains height: its own drop is less than the fall of pressure along it is without.
        let fall = column("end_pressure_low")[0] - column("end_pressure_low")[1];
        assert!((column("pressure_drop_high")[1] - fall - 9.80665 * 2.4 * (1.2254 - 0.6939)).abs() < 0.05);
    }

    #[test]
    fn sizes_chosen_give_the_same_installation_and_keep_the_drop() {
        let tubes = Node::List(["copper 28x0.9", "copper 12x0.6", "copper 15x0.7", "copper 22x0.9"].map(Node::from).into());
        let wish = [("inlet_pressure", "21 mbar"), ("allowed_drop", "1 mbar")];
        let sized = evaluate("gas_pipe_sizing", &given(&wish, vec![("sections", house([""; 4])), ("tubes", tubes.clone())]), Bare::Refused)
            .unwrap();
        assert!(sized.get("spare_drop").unwrap() >= 0.0);
        let table = &sized.prepared.tables(&sized.input)[0];
        let chosen: Vec<&str> = table.row_names.iter().map(|name| name.split_once(": ").unwrap().1).collect();
        let built = [chosen[0], chosen[1], chosen[2], chosen[3]];
        let walked =
            evaluate("gas_installation", &given(&[("inlet_pressure", "21 mbar")], vec![("sections", house(built))]), Bare::Refused)
                .unwrap();
        assert_eq!(walked.get("greatest_drop"), sized.get("greatest_drop"));
        // One size less anywhere breaks the drop or the rule that tubes do not widen.
        let order = ["copper 12x0.6", "copper 15x0.7", "copper 22x0.9", "copper 28x0.9"];
        for section in 0..4 {
            let place = order.iter().position(|tube| *tube == built[section]).unwrap();
            let Some(smaller) = place.checked_sub(1) else { continue };
            let mut tried = built;
            tried[section] = order[smaller];
            let narrow =
                evaluate("gas_installation", &given(&[("inlet_pressure", "21 mbar")], vec![("sections", house(tried))]), Bare::Refused)
                    .unwrap();
            let widens = (1..4).any(|i| order.iter().position(|t| *t == tried[i]) > order.iter().position(|t| *t == tried[0]));
            assert!(widens || narrow.get("greatest_drop").unwrap() > 100.0, "{section}");
        }
        let too_much = [("inlet_pressure", "21 mbar"), ("allowed_drop", "0.01 mbar")];
        let refused = evaluate("gas_pipe_sizing", &given(&too_much, vec![("sections", house([""; 4])), ("tubes", tubes)]), Bare::Refused);
        assert!(refused.err().unwrap().to_string().contains("no choice of the tubes"));
    }

    #[test]
    fn one_section_is_the_pipe_of_the_reference_table() {
        // 22 mm, 9 m, 5 m3/h of a gas like that of the table; methane here, so the table's methane row
        // for 10 m and 4.5 m3/h is taken.
        let gas = PipedGas::new(&Fuel::named("G20").unwrap(), ReferenceConditions::AT_15_15).unwrap();
        let section = Section {
            name: "pipe".to_string(),
            branch: Branch { parent: None, length: 10.0, loss_coefficient: 0.0, rise: 0.0, load: 4.5 / 3600.0 },
            bore: Some(Bore { diameter: 0.0202, roughness: 1.5e-6 }),
        };
        let pipe = GasInstallation::new(gas, TurbulentFriction::Colebrook, &[section]).unwrap();
        let load = InstallationLoad { inlet_pressure: GaugePressure::from_si(2100.0), ..InstallationLoad::unset() };
        let Evaluated { output, .. } = pipe.evaluate(&load).unwrap();
        assert!((output.greatest_drop.si() / 94.45243 - 1.0).abs() < 1e-4);
        let half = pipe.evaluate(&InstallationLoad { load_factor: Ratio::from_si(0.5), ..load }).unwrap().output;
        assert!((half.gas_flow.si() / output.gas_flow.si() - 0.5).abs() < 1e-15);
    }

    #[test]
    fn installations_that_make_no_sense_are_refused() {
        let refusal = |sections: Node| {
            let given = given(&[("inlet_pressure", "21 mbar")], vec![("sections", sections)]);
            evaluate("gas_installation", &given, Bare::Refused).err().map(|error| error.to_string()).unwrap_or_default()
        };
        let section = |entries: &[(&str, &str)]| table(&[&[("tube", "copper 22x0.9"), ("length", "3 m")], entries].concat());
        assert!(refusal(Node::List(vec![section(&[])])).contains("load"));
        assert!(refusal(Node::List(vec![section(&[("load", "5 kW"), ("from", "nowhere")])])).contains("nowhere"));
        assert!(refusal(Node::List(vec![section(&[("load", "5 kW"), ("lenght", "3 m")])])).contains("length"));
        assert!(refusal(Node::List(vec![section(&[("load", "-5 kW")])])).contains("load"));
        assert!(refusal(Node::List(vec![section(&[("load", "5 kW net")])])).contains("net"));
        assert!(refusal(Node::List(vec![table(&[("length", "3 m"), ("load", "5 kW")])])).contains("tube"));
        assert!(refusal(Node::List(vec![section(&[("load", "5 kW"), ("name", "a")]), section(&[("name", "a")])])).contains("one name"));
        assert!(refusal(Node::List(vec![])).contains("sections"));
        assert_eq!(refusal(Node::List(vec![section(&[("load", "5 kW")])])), "");
    }

    #[test]
    fn an_equivalent_length_counts_as_length() {
        let drop = |entries: &[(&str, &str)]| {
            let section = table(&[&[("tube", "copper 22x0.9"), ("load", "20 kW")], entries].concat());
            let given = given(&[("inlet_pressure", "21 mbar")], vec![("sections", Node::List(vec![section]))]);
            let found = evaluate("gas_installation", &given, Bare::Refused).unwrap_or_else(|e| panic!("{e}"));
            found.output.clone()
        };
        let (whole, parts) = (drop(&[("length", "8 m")]), drop(&[("length", "5 m"), ("equivalent_length", "3 m")]));
        for (one, other) in whole.iter().zip(&parts) {
            assert!((one - other).abs() <= 1e-12 * one.abs(), "{one} and {other}");
        }
        let bends = drop(&[("length", "8 m"), ("loss_coefficient", "4")]);
        assert!(bends.iter().zip(&whole).any(|(one, other)| (one - other).abs() > 1e-3 * one.abs()));
    }
}
