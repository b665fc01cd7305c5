//! The heat generator, its pump, its main circuit and the room, as every calculation here asks for them.

use super::network::{Block, Circuit, HeatLoss, Metal, Model, Network, Part, Point, Pump, Room, Sensor};
use super::thermostat::{Burner, Controls, Thermostat};
use crate::Error;
use crate::air::properties::STANDARD_ATMOSPHERE;
use crate::calculation::{Context, Form, Setting, Settings};
use crate::catalogue::{Bare, read_input};
use crate::node::Node;
use crate::pipe::Run;
use crate::pipe::run::Given;
use crate::quantity::types::{
    HeatCapacity, HeatCapacityPerLength, Length, Mass, MassDensity, MassRate, Power, Pressure, Ratio, SpecificHeatCapacity,
    TemperatureInterval, ThermalConductance, ThermalConductivity, ThermodynamicTemperature, Time, Volume,
};
use crate::quantity::{LinearTransmittance, Value};
use crate::record::{Record, record};
use alloc::borrow::ToOwned;
use alloc::string::String;
use alloc::vec::Vec;

/// Hottest water whose pipe loss is fitted, K: the highest temperature a plant here may have.
const HIGHEST_PIPE_TEMPERATURE: f64 = 423.15;
/// Absolute pressure taken for the water in a named tube, Pa; hardly matters.
const WATER_PRESSURE: f64 = 2e5;

/// Cautions that go with every result about a hot block.
pub(crate) const HOT_BLOCK_CAUTIONS: &[&str] = &[
    crate::caution::HOT_BLOCK,
    crate::caution::DEFEAT,
    "A pump on overrun may be fed from a permanent supply: prove it dead before work.",
];

/// Puts the fields every plant has in front of those of one calculation, so that they stand once.
macro_rules! plant_record {
    ($(#[$doc:meta])* pub struct $name:ident { $($rest:tt)* }) => {
        $(#[$doc])*
        #[record]
        pub struct $name {
            /// Mass of the metal of the block (iron, copper, aluminium).
            #[field("m_M", KILOGRAM, 0.0..=5000.0, usual = 5.0..=500.0)]
            pub metal_mass: Mass,
            /// Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K).
            #[field("c_M", JOULE_PER_KILOGRAM_KELVIN, 100.0..=2000.0, default = 500.0, usual = 380.0..=950.0)]
            pub metal_specific_heat_capacity: SpecificHeatCapacity,
            /// Water content of the block.
            #[field("V_W", LITRE, 0.0..=2000.0, usual = 0.5..=200.0)]
            pub water_content: Volume,
            /// Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C.
            #[field("\\rho_W", KILOGRAM_PER_CUBIC_METRE, 850.0..=1150.0, default = 980.0)]
            pub water_density: MassDensity,
            /// Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less.
            #[field("c_W", JOULE_PER_KILOGRAM_KELVIN, 2000.0..=4500.0, default = 4185.0, usual = 3000.0..=4250.0)]
            pub water_specific_heat_capacity: SpecificHeatCapacity,
            /// Conductance of the film between metal and water, where the two are to have temperatures of their own.
            #[field("G_F", WATT_PER_KELVIN, 1.0..=1e6, absent = "metal and water share one temperature")]
            pub film_conductance: ThermalConductance,
            /// Loss of casing and flueway to the room while the burner is off.
            #[field("U_B A_B", WATT_PER_KELVIN, 0.0..=2000.0, usual = 0.5..=60.0)]
            pub casing_loss: ThermalConductance,
            /// Heat put in all the time, such as by a pilot flame.
            #[field("P_0", WATT, 0.0..=5000.0, default = 0.0, usual = 0.0..=300.0)]
            pub standing_heat: Power,
            /// Mass flow of the pump.
            #[field("\\dot m", KILOGRAM_PER_SECOND, 0.0..=20.0, usual = 0.01..=2.0)]
            pub pump_flow: MassRate,
            /// Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits.
            #[field("\\Delta p_0", KILOPASCAL, 0.1..=1000.0, absent = "the flow stays as given")]
            pub pump_shut_off_pressure: Pressure,
            /// Pressure drop of the main circuit at the flow given; with it circuits share the flow by their resistance.
            #[field("\\Delta p_1", KILOPASCAL, 0.001..=1000.0, absent = "circuits share the flow as given")]
            pub pressure_drop: Pressure,
            /// Length of the flow pipe of the main circuit.
            #[field("l_F", METRE, 0.0..=1000.0, usual = 0.2..=100.0)]
            pub flow_length: Length,
            /// Length of the return pipe of the main circuit.
            #[field("l_R", METRE, 0.0..=1000.0, usual = 0.2..=100.0)]
            pub return_length: Length,
            /// Heat capacity of pipe and water per length.
            #[field("c_P", JOULE_PER_METRE_KELVIN, 1.0..=1e5, usual = 200.0..=10000.0, absent = "of the named tube and its water")]
            pub pipe_heat_capacity: HeatCapacityPerLength,
            /// Heat loss of the pipe per length and kelvin over the room.
            #[field("U_P", WATT_PER_METRE_KELVIN, 0.0..=50.0, usual = 0.05..=5.0, absent = "of the named tube, by convection and radiation")]
            pub pipe_loss: LinearTransmittance,
            /// Thickness of the insulation of a named tube; 0 for a bare pipe.
            #[field("s_i", MILLIMETRE, 0.0..=500.0, default = 0.0, usual = 0.0..=120.0)]
            pub insulation_thickness: Length,
            /// Thermal conductivity of that insulation.
            #[field("\\lambda_i", WATT_PER_METRE_KELVIN, 0.005..=5.0, usual = 0.015..=0.1, absent = "as the named insulation at its mean temperature, or bare")]
            pub insulation_conductivity: ThermalConductivity,
            /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass.
            #[field("P_{50}", WATT, 0.0..=1e6, default = 0.0, usual = 0.0..=40000.0)]
            pub emitter_output: Power,
            /// Exponent of that emitter (EN 442); 1.3 is common for radiators.
            #[field("n", ONE, 1.0..=2.0, default = 1.3, usual = 1.0..=1.5)]
            pub emitter_exponent: Ratio,
            /// Heat capacity of that emitter with its water.
            #[field("C_E", KILOJOULE_PER_KELVIN, 0.01..=1e5, absent = "no emitter")]
            pub emitter_heat_capacity: HeatCapacity,
            /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while the pump stands.
            #[field("h", METRE, 0.1..=50.0, usual = 0.5..=10.0, absent = "no gravity circulation")]
            pub emitter_height: Length,
            /// Room temperature (air and surfaces).
            #[field("t_A", DEGREE_CELSIUS, -30.0..=60.0, default = 20.0, usual = 0.0..=35.0)]
            pub room_temperature: ThermodynamicTemperature,
            /// Heat capacity of the room, where it is to warm up by what the plant gives off.
            #[field("C_A", KILOJOULE_PER_KELVIN, 1.0..=1e7, absent = "the room keeps its temperature")]
            pub room_heat_capacity: HeatCapacity,
            /// Loss of such a room to the outside.
            #[field("H_A", WATT_PER_KELVIN, 0.0..=1e5, default = 0.0)]
            pub room_loss: ThermalConductance,
            /// Outside temperature for such a room.
            #[field("t_e", DEGREE_CELSIUS, -60.0..=50.0, default = 5.0)]
            pub outdoor_temperature: ThermodynamicTemperature,
            /// Temperature of the block at the start.
            #[field("t_{B0}", DEGREE_CELSIUS, 0.0..=150.0, usual = 5.0..=110.0)]
            pub block_temperature: ThermodynamicTemperature,
            /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than the water by its output over the film conductance.
            #[field("t_{M0}", DEGREE_CELSIUS, 0.0..=400.0, absent = "as the water of the block")]
            pub metal_temperature: ThermodynamicTemperature,
            /// Temperature of pipes and emitters at the start.
            #[field("t_{C0}", DEGREE_CELSIUS, -30.0..=150.0, absent = "as the block")]
            pub circuit_temperature: ThermodynamicTemperature,
            $($rest)*
        }
    };
}
pub(crate) use plant_record;

/// As [`plant_record!`], with the burner's fields behind those of the plant.
macro_rules! fired_plant_record {
    ($(#[$doc:meta])* pub struct $name:ident { $($rest:tt)* }) => {
        plant_record! {
            $(#[$doc])*
            pub struct $name {
                /// Output of the burner to the block; the most it gives, where it has stages or modulates.
                #[field("P", KILOWATT, 0.01..=1e4, usual = 1.0..=500.0)]
                pub burner_output: Power,
                /// Output of the low stage, or the least of a modulating burner.
                #[field("P_{low}", KILOWATT, 0.01..=1e4, absent = "one output only")]
                pub low_output: Power,
                /// How far below the cut-out the high stage gives way to the low one, or a modulating burner begins to turn down.
                #[field("\\Delta t_P", KELVIN, 0.1..=60.0, default = 5.0)]
                pub turn_down_band: TemperatureInterval,
                /// Temperature at which the control thermostat stops the burner, on rising temperature.
                #[field("t_{off}", DEGREE_CELSIUS, 0.0..=150.0, usual = 25.0..=95.0)]
                pub cut_out_temperature: ThermodynamicTemperature,
                /// Time constant of the thermostat's sensor in its pocket.
                #[field("\\tau_S", SECOND, 0.0..=3600.0, default = 0.0, usual = 0.0..=120.0)]
                pub sensor_time_constant: Time,
                /// Operating value of the limit thermostat, whose sensor sits in the same pocket: it locks the burner out until reset by hand.
                #[field("t_{lim}", DEGREE_CELSIUS, 30.0..=160.0, usual = 80.0..=115.0, absent = "no limit thermostat")]
                pub limit_temperature: ThermodynamicTemperature,
                $($rest)*
            }
        }
    };
}
pub(crate) use fired_plant_record;

/// The rules every plant has, in front of those of one calculation, and the check for them.
macro_rules! plant_rules {
    ($($rest:tt)*) => {
        crate::rules! {
            refuse NO_MASS on "metal_mass": "the block has no heat capacity: state the mass of its metal or its water content (both, where a film couples them)";
            refuse NO_FLOW on "pump_flow": "the pump runs without flow: state a flow, or that the pump is stopped";
            refuse NO_CIRCUIT on "flow_length": "the main circuit holds neither pipe nor emitter";
            refuse EMITTER_WITHOUT_MASS on "emitter_output": "an emitter with an output needs its heat capacity (emitter_heat_capacity)";
            refuse NO_DUTY_POINT on "pump_shut_off_pressure": "a pump curve needs the pressure drop of the main circuit at the flow given, below the shut-off pressure";
            refuse PIPE_UNKNOWN on "pipe_loss": "give pipe_heat_capacity and pipe_loss, or name a tube (in still air) in the setting `tube`";
            refuse INSULATION_UNKNOWN on "insulation_thickness": "an insulated tube needs the setting `insulation`, or insulation_conductivity";
            refuse FINISH_UNKNOWN on "pipe_loss": "a named tube needs the setting `finish`: how well its outer surface radiates";
            refuse NO_GRAVITY_PATH on "emitter_height": "gravity circulation needs a flow and a return pipe and the pressure drop of the circuit at the flow given (pressure_drop, pump_flow)";
            $($rest)*
        }

        fn check_plant(
            plant: &$crate::transient::plant::Plant,
            layout: &$crate::transient::plant::Layout,
            pump_runs: bool,
        ) -> $crate::calculation::Raised {
            let [pipe, insulation, finish] = plant.pipe_is_unknown(layout);
            $crate::calculation::Raised::NONE
                .when(PIPE_UNKNOWN, pipe)
                .when(INSULATION_UNKNOWN, insulation)
                .when(FINISH_UNKNOWN, finish)
                .when(NO_MASS, plant.has_no_mass())
                .when(NO_FLOW, pump_runs && plant.pump_flow.si() <= 0.0)
                .when(NO_CIRCUIT, plant.has_no_circuit())
                .when(EMITTER_WITHOUT_MASS, plant.has_weightless_emitter())
                .when(NO_GRAVITY_PATH, plant.has_no_gravity_path(layout))
                .when(NO_DUTY_POINT, plant.has_no_duty_point())
        }
    };
}
pub(crate) use plant_rules;

plant_record! {
    /// A heat generator with its pump and main circuit.
    pub struct Plant {}
}

fired_plant_record! {
    /// A heat generator with its burner, pump and main circuit.
    pub struct FiredPlant {}
}

/// How a burner gives its output.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Turndown {
    /// One output.
    #[default]
    Fixed,
    /// Two outputs, changed over below the cut-out.
    TwoStage,
    /// In proportion to the temperature below the cut-out, down to a least output.
    Modulating,
}

pub(crate) const BURNER: Setting = Setting {
    name: "burner",
    doc: "How the burner gives its output: fixed, in two stages, or modulating down to a least output.",
    form: Form::Choice(&["fixed", "two_stage", "modulating"]),
    default: Some("fixed"),
};

impl Turndown {
    pub(crate) fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        settings.choice("burner", &[("fixed", Self::Fixed), ("two_stage", Self::TwoStage), ("modulating", Self::Modulating)])
    }
}

/// When heat is asked for, and whether the pump goes by that.
#[derive(Clone, Debug, PartialEq)]
pub struct Demand {
    /// Whether heat is asked for at the start.
    pub at_start: bool,
    /// Moments from the start, rising, at which that changes over.
    pub changes: Vec<Time>,
    /// Whether the pump stands while no heat is asked for; else it runs all the time.
    pub switches_pump: bool,
}

impl Default for Demand {
    fn default() -> Self {
        Self { at_start: true, changes: Vec::new(), switches_pump: false }
    }
}

/// The most changes of the demand, and the latest, s: what is followed at most.
const MOST_CHANGES: usize = 1000;
const LATEST_CHANGE: f64 = super::run::Bounds::USUAL.horizon;

pub(crate) const DEMAND: Setting = Setting {
    name: "demand",
    doc: "Whether heat is asked for at the start; without that the burner stands, whatever the thermostat says.",
    form: Form::Choice(&["on", "off"]),
    default: Some("on"),
};
pub(crate) const DEMAND_CHANGES: Setting = Setting {
    name: "demand_changes",
    doc: "Times from the start, rising, at which the demand for heat changes over: off, on, off... where it is on at the start.",
    form: Form::Quantities(<Time as Value>::KIND, &crate::quantity::units::MINUTE),
    default: Some(""),
};
pub(crate) const DEMAND_PUMP: Setting = Setting {
    name: "pump",
    doc: "Whether the pump runs all the time, or only while heat is asked for.",
    form: Form::Choice(&["running", "with_demand"]),
    default: Some("running"),
};

impl Demand {
    pub(crate) fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let name = DEMAND_CHANGES.name;
        let changes: Vec<Time> = match settings.get(name) {
            Some(_) => settings.quantities(name, 0.0..=LATEST_CHANGE, MOST_CHANGES)?,
            None => Vec::new(),
        };
        if changes.windows(2).any(|pair| matches!(pair, [a, b] if b <= a)) {
            return Err(Error::bad_setting(name, "", "the times must rise"));
        }
        Ok(Self {
            at_start: settings.choice(DEMAND.name, &[("on", true), ("off", false)])?,
            changes,
            switches_pump: settings.choice(DEMAND_PUMP.name, &[("running", false), ("with_demand", true)])?,
        })
    }

    /// Whether heat is asked for after the last change.
    pub(crate) fn at_end(&self) -> bool {
        self.at_start == self.changes.len().is_multiple_of(2)
    }
}

/// Wordings that several calculations with a burner share.
pub(crate) const NO_TURNDOWN_TEXT: &str = "a two-stage or modulating burner needs a low output below its full one";
pub(crate) const NO_DIFFERENTIAL_TEXT: &str =
    "the cut-in must lie below the cut-out: with no differential the burner would switch without end";
pub(crate) const NOT_FOUND_TEXT: &str = "no answer was found: the sum did not end within a week of the plant, or within the steps allowed; that is not \"never\": look at the values";
pub(crate) const PEAK_NOT_FOUND_TEXT: &str = "the water was still rising, or might rise again, where the sum ended (after a week, or with water above 150 °C that gravity is to move): no peak is given";
pub(crate) const HEAT_BOOK_OPEN_TEXT: &str =
    "the heat put in, stored and given off do not balance to one part in a million: do not rely on the result";

impl FiredPlant {
    /// The plant and burner in front of the fields of a calculation.
    pub(crate) fn of<R: Record>(record: &R) -> Self {
        Self::from_slice(record.to_array().as_ref())
    }

    /// The burner, where its outputs make sense.
    pub(crate) fn burner(&self, turndown: Turndown) -> Burner {
        let (most, least, band) = (self.burner_output.si(), self.low_output.si(), self.turn_down_band.si());
        match turndown {
            Turndown::Fixed => Burner::Fixed(most),
            Turndown::TwoStage => Burner::TwoStage { low: least, high: most, change: band },
            Turndown::Modulating => Burner::Modulating { least, most, band },
        }
    }

    /// Burner and thermostats, lit at the start where the control thermostat lets it be.
    pub(crate) fn controls(&self, turndown: Turndown, cut_in: f64) -> Controls {
        let limit = self.limit_temperature.si();
        Controls {
            burner: Some((self.burner(turndown), Thermostat { sensor: 0, upper: self.cut_out_temperature.si(), lower: cut_in })),
            limit: (!limit.is_nan()).then_some((0, limit)),
            demand_at_start: true,
            burning_at_start: true,
            ..Controls::pump_only(true)
        }
    }

    /// Whether a low output is missing or higher than the high one.
    pub(crate) fn has_no_turndown(&self, turndown: Turndown) -> bool {
        turndown != Turndown::Fixed && !(self.low_output.si() < self.burner_output.si())
    }

    /// The sensor of the control thermostat: it looks at the water of the block.
    pub(crate) fn sensor(&self) -> Sensor {
        Sensor { point: Point::Block, time_constant: self.sensor_time_constant.si() }
    }
}

/// A further circuit, parallel to the main one.
#[record]
pub struct FurtherCircuit {
    /// Length of its flow pipe.
    #[field("l_F", METRE, 0.0..=1000.0)]
    pub flow_length: Length,
    /// Length of its return pipe.
    #[field("l_R", METRE, 0.0..=1000.0)]
    pub return_length: Length,
    /// Heat capacity of pipe and water per length.
    #[field("c_P", JOULE_PER_METRE_KELVIN, 1.0..=1e5, absent = "as the main circuit")]
    pub pipe_heat_capacity: HeatCapacityPerLength,
    /// Heat loss of the pipe per length and kelvin over the room.
    #[field("U_P", WATT_PER_METRE_KELVIN, 0.0..=50.0, absent = "as the main circuit")]
    pub pipe_loss: LinearTransmittance,
    /// Output of its emitter at 50 K over the room; zero for a bypass.
    #[field("P_{50}", WATT, 0.0..=1e6, default = 0.0)]
    pub emitter_output: Power,
    /// Exponent of the emitter.
    #[field("n", ONE, 1.0..=2.0, default = 1.3)]
    pub emitter_exponent: Ratio,
    /// Heat capacity of the emitter with its water.
    #[field("C_E", KILOJOULE_PER_KELVIN, 0.01..=1e5, absent = "no emitter")]
    pub emitter_heat_capacity: HeatCapacity,
    /// Height of the emitter over the block, where water is to circulate by gravity while the pump stands.
    #[field("h", METRE, 0.1..=50.0, absent = "no gravity circulation")]
    pub emitter_height: Length,
    /// Temperature of its pipes and emitter at the start.
    #[field("t_{C0}", DEGREE_CELSIUS, -30.0..=150.0, absent = "as the main circuit")]
    pub circuit_temperature: ThermodynamicTemperature,
    /// Its flow over that of the main circuit, where the flow is shared as given.
    #[field("s", ONE, 0.0001..=1000.0, default = 1.0)]
    pub flow_share: Ratio,
    /// Its pressure drop at the flow given for the pump, where circuits share the flow by resistance.
    #[field("\\Delta p", KILOPASCAL, 0.001..=1000.0, absent = "its flow is its share")]
    pub pressure_drop: Pressure,
}

/// When a further circuit is open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Opening {
    /// In both states compared.
    Open,
    /// In the second of two states compared; closed in the first.
    OpenedAfter,
    /// In the first of two states compared; closed in the second.
    ClosedAfter,
    /// Not at all: it only stands and cools.
    Closed,
}

const OPENINGS: &[(&str, Opening)] =
    &[("open", Opening::Open), ("opened_after", Opening::OpenedAfter), ("closed_after", Opening::ClosedAfter), ("closed", Opening::Closed)];

/// A further circuit with its name and when it is open.
#[derive(Clone, Debug, PartialEq)]
pub struct NamedCircuit {
    /// The name in tables and messages.
    pub name: String,
    /// When it is open.
    pub opening: Opening,
    /// What it is.
    pub circuit: FurtherCircuit,
}

/// Cells and further circuits: what is fixed before a plant is followed.
#[derive(Clone, Debug)]
pub struct Layout {
    /// Stirred cells the flow pipe is cut into, in every circuit.
    pub flow_cells: usize,
    /// Stirred cells the return pipe is cut into, in every circuit.
    pub return_cells: usize,
    /// Circuits beside the main one.
    pub circuits: Vec<NamedCircuit>,
    /// The pipe by name, for what is not given by value: tube, insulation, finish, how it lies.
    pub pipe: Run,
}

impl Default for Layout {
    fn default() -> Self {
        Self { flow_cells: 10, return_cells: 10, circuits: Vec::new(), pipe: Run::default() }
    }
}

/// The most cells of a run, and the most further circuits.
const MOST_CELLS: f64 = 1000.0;
const MOST_CIRCUITS: usize = 32;

pub(crate) const FLOW_CELLS: Setting = Setting {
    name: "flow_cells",
    doc: "Number of stirred cells the flow pipe of each circuit is cut into. More cells keep a temperature front sharper.",
    form: Form::Quantity(<Ratio as Value>::KIND, &crate::quantity::units::ONE),
    default: Some("10"),
};
pub(crate) const RETURN_CELLS: Setting = Setting {
    name: "return_cells",
    doc: "Number of stirred cells the return pipe of each circuit is cut into.",
    form: Form::Quantity(<Ratio as Value>::KIND, &crate::quantity::units::ONE),
    default: Some("10"),
};
pub(crate) const CIRCUITS: Setting = Setting {
    name: "circuits",
    doc: "Further circuits parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or closed.",
    form: Form::Records(FurtherCircuit::FIELDS),
    default: Some(""),
};

/// The settings of a layout, in front of those of one calculation.
macro_rules! layout_settings {
    ($($own:expr),* $(,)?) => {
        &[
            $crate::transient::plant::FLOW_CELLS,
            $crate::transient::plant::RETURN_CELLS,
            $crate::transient::plant::CIRCUITS,
            <$crate::pipe::Run as $crate::calculation::Context>::SETTINGS[0],
            <$crate::pipe::Run as $crate::calculation::Context>::SETTINGS[1],
            <$crate::pipe::Run as $crate::calculation::Context>::SETTINGS[2],
            <$crate::pipe::Run as $crate::calculation::Context>::SETTINGS[3],
            <$crate::pipe::Run as $crate::calculation::Context>::SETTINGS[4],
            <$crate::pipe::Run as $crate::calculation::Context>::SETTINGS[5],
            $($own),*
        ]
    };
}
pub(crate) use layout_settings;
/// A setting that the pipe's description gains or loses must be seen above.
const _: () = assert!(<Run as Context>::SETTINGS.len() == 6);

impl Layout {
    /// Whether any circuit differs between the two states.
    pub(crate) fn changes_over(&self) -> bool {
        self.circuits.iter().any(|circuit| matches!(circuit.opening, Opening::OpenedAfter | Opening::ClosedAfter))
    }

    /// From settings by name.
    pub(crate) fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let cells = |name: &str| -> Result<usize, Error> {
            let count: Ratio = settings.quantity(name, 1.0..=MOST_CELLS)?;
            if crate::math::trunc(count.si()) != count.si() {
                return Err(Error::bad_setting(name, "", "a whole number of cells is needed"));
            }
            Ok(count.si() as usize)
        };
        let mut circuits = Vec::new();
        if let Some(given) = settings.get("circuits") {
            let items = given.list("circuits")?;
            if items.len() > MOST_CIRCUITS {
                return Err(Error::bad_setting("circuits", "", &alloc::format!("{} were given, {MOST_CIRCUITS} at most", items.len())));
            }
            for (number, item) in items.iter().enumerate() {
                circuits.push(named_circuit(item, number).map_err(|error| error.within(&alloc::format!("circuits[{number}]")))?);
            }
        }
        let pipe = Run::from_settings(settings)?;
        Ok(Self { flow_cells: cells("flow_cells")?, return_cells: cells("return_cells")?, circuits, pipe })
    }
}

fn named_circuit(item: &Node, number: usize) -> Result<NamedCircuit, Error> {
    let mut name = alloc::format!("circuit {}", number + 2);
    let mut opening = Opening::Open;
    let mut fields = Vec::new();
    for (key, value) in item.entries("circuit")? {
        match key {
            "name" => value.text("name")?.clone_into(&mut name),
            "opening" => {
                let word = value.text("opening")?;
                opening = OPENINGS
                    .iter()
                    .find(|(offered, _)| *offered == word)
                    .map(|(_, opening)| *opening)
                    .ok_or_else(|| Error::unknown_name("opening", word, OPENINGS.iter().map(|(offered, _)| *offered)))?;
            }
            _ => fields.push((key.into(), value.clone())),
        }
    }
    let values = read_input(FurtherCircuit::FIELDS, &Node::Table(fields), Bare::Refused)?;
    for (value, field) in values.iter().zip(FurtherCircuit::FIELDS) {
        let left_out = value.is_nan() && !field.absent.is_empty();
        if !left_out && !(*value >= field.minimum && *value <= field.maximum) {
            return Err(Error::for_field(field, *value));
        }
    }
    let circuit = FurtherCircuit::from_slice(&values);
    let emits = circuit.emitter_output.si() > 0.0;
    if !emits && circuit.flow_length.si() <= 0.0 && circuit.return_length.si() <= 0.0 {
        return Err(Error::bad_setting("flow_length", "", "the circuit holds neither pipe nor emitter"));
    }
    if emits && circuit.emitter_heat_capacity.si().is_nan() {
        return Err(Error::bad_setting("emitter_heat_capacity", "", "an emitter with an output needs its heat capacity"));
    }
    Ok(NamedCircuit { name, opening, circuit })
}

/// Which of two compared states of the circuits is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum State {
    Before,
    After,
}

/// The parts of one circuit: flow pipe, emitter, return pipe, as far as they are there.
struct Pipes {
    flow_length: f64,
    return_length: f64,
    capacity: f64,
    loss: HeatLoss,
    emitter_output: f64,
    emitter_exponent: f64,
    emitter_capacity: f64,
    start: f64,
    height: f64,
}

impl Pipes {
    /// Number of the emitter among the parts.
    fn emitter(&self) -> Option<usize> {
        (self.emitter_output > 0.0).then_some(usize::from(self.flow_length > 0.0))
    }

    fn parts(&self, layout: &Layout) -> Vec<Part> {
        let loss = self.loss;
        let mut parts = Vec::new();
        if self.flow_length > 0.0 {
            parts.push(Part::run(self.flow_length, self.capacity, loss, layout.flow_cells, self.start));
        }
        if self.emitter_output > 0.0 {
            let loss = HeatLoss::power_law(self.emitter_output, self.emitter_exponent);
            parts.push(Part { heat_capacity: self.emitter_capacity, loss, cells: 1, start: self.start });
        }
        if self.return_length > 0.0 {
            parts.push(Part::run(self.return_length, self.capacity, loss, layout.return_cells, self.start));
        }
        parts
    }
}

/// A plant laid out, with the places of its emitters.
pub(crate) struct Laid {
    pub(crate) model: Model,
    /// By circuit, the main one first: number of its parts, and which of them is the emitter.
    pub(crate) parts: Vec<(usize, Option<usize>)>,
}

impl Laid {
    /// Temperature of a node at the rest the plant would come to from its start, K; NaN where there is none.
    pub(crate) fn rest(&mut self, node: usize) -> f64 {
        let mut steady = self.model.initial().to_vec();
        if self.model.settle(&mut steady) { steady[node] } else { f64::NAN }
    }

    /// Heat given off by all pipes, and by all emitters, J.
    pub(crate) fn pipes_and_emitters(&self, state: &[f64]) -> (f64, f64) {
        (0..self.parts.len()).map(|circuit| self.of_circuit(state, circuit)).fold((0.0, 0.0), |sum, (p, e)| (sum.0 + p, sum.1 + e))
    }

    /// Heat given off by the pipes and by the emitter of one circuit, J.
    pub(crate) fn of_circuit(&self, state: &[f64], circuit: usize) -> (f64, f64) {
        let Some(&(parts, emitter)) = self.parts.get(circuit) else { return (f64::NAN, f64::NAN) };
        let mut heat = (0.0, 0.0);
        for part in 0..parts {
            let given = self.model.part_heat(state, circuit, part);
            if Some(part) == emitter { heat.1 += given } else { heat.0 += given }
        }
        heat
    }
}

impl Plant {
    /// The plant in front of the fields of a calculation.
    pub(crate) fn of<R: Record>(record: &R) -> Self {
        Self::from_slice(record.to_array().as_ref())
    }

    /// Whether every value is there that the record asks for.
    pub(crate) fn is_whole<R: Record>(record: &R) -> bool {
        let values = record.to_array();
        values.as_ref().iter().zip(R::FIELDS).all(|(value, field)| value.is_finite() || (value.is_nan() && !field.absent.is_empty()))
    }

    /// Heat capacity of the metal and of the water of the block, J/K.
    pub(crate) fn capacities(&self) -> (f64, f64) {
        let metal = self.metal_mass.si() * self.metal_specific_heat_capacity.si();
        let water = self.water_content.si() * self.water_density.si() * self.water_specific_heat_capacity.si();
        (metal, water)
    }

    /// Whether metal and water are two masses.
    pub(crate) fn two_masses(&self) -> bool {
        !self.film_conductance.si().is_nan()
    }

    /// Whether the main circuit holds nothing.
    pub(crate) fn has_no_circuit(&self) -> bool {
        self.flow_length.si() <= 0.0 && self.return_length.si() <= 0.0 && self.emitter_output.si() <= 0.0
    }

    /// Whether a mass that is there has no heat capacity.
    pub(crate) fn has_no_mass(&self) -> bool {
        let (metal, water) = self.capacities();
        if self.two_masses() { metal <= 0.0 || water <= 0.0 } else { metal + water <= 0.0 }
    }

    /// Whether an emitter is given without its heat capacity.
    pub(crate) fn has_weightless_emitter(&self) -> bool {
        self.emitter_output.si() > 0.0 && self.emitter_heat_capacity.si().is_nan()
    }

    /// Whether a pump curve is asked for without a pressure drop, or does not reach it.
    pub(crate) fn has_no_duty_point(&self) -> bool {
        let shut_off = self.pump_shut_off_pressure.si();
        !shut_off.is_nan() && !(self.pressure_drop.si() < shut_off)
    }

    /// Heat capacity of the named tube and the water in it, J/(m K); NaN where none is named.
    fn tube_capacity(&self, layout: &Layout) -> f64 {
        layout.pipe.tube.map_or(f64::NAN, |tube| {
            let water = tube.content_per_metre() * self.water_density.si() * self.water_specific_heat_capacity.si();
            water + tube.wall_capacity_per_metre()
        })
    }

    fn run_given(&self) -> Given {
        Given {
            length: self.flow_length.si(),
            outside_diameter: f64::NAN,
            wall_thickness: f64::NAN,
            wall_conductivity: f64::NAN,
            insulation_thickness: self.insulation_thickness.si(),
            insulation_conductivity: self.insulation_conductivity.si(),
            emissivity: f64::NAN,
            air_temperature: self.room_temperature.si(),
            radiant_temperature: f64::NAN,
            wind_speed: f64::NAN,
            air_pressure: STANDARD_ATMOSPHERE,
            water_pressure: WATER_PRESSURE,
        }
    }

    /// Loss of the named tube per metre. The film inside is left out: it takes less than one part
    /// in a hundred off the loss of a pipe in still air.
    fn tube_loss(&self, layout: &Layout) -> HeatLoss {
        let section = layout.pipe.section(&self.run_given());
        let room = self.room_temperature.si();
        HeatLoss::fitted(HIGHEST_PIPE_TEMPERATURE - room, |excess| layout.pipe.loss(&section, room + excess, 0.0))
    }

    /// Whether pipe values are neither given nor to be had from a tube, its insulation and finish.
    pub(crate) fn pipe_is_unknown(&self, layout: &Layout) -> [bool; 3] {
        let no_tube = layout.pipe.tube.is_none();
        if self.pipe_loss.si().is_nan() && !no_tube {
            let found = layout.pipe.findings(&self.run_given(), self.room_temperature.si().max(274.0));
            let unknown = found.tube_missing || found.no_bore || found.wind_missing;
            return [unknown, found.insulation_missing, found.emissivity_missing];
        }
        [no_tube && (self.pipe_loss.si().is_nan() || self.pipe_heat_capacity.si().is_nan()), false, false]
    }

    /// Whether water is to circulate by gravity where it cannot.
    pub(crate) fn has_no_gravity_path(&self, layout: &Layout) -> bool {
        let lacks = |height: Length, drop: Pressure, flow: Length, back: Length| {
            let path = drop.si() > 0.0 && flow.si() > 0.0 && back.si() > 0.0 && self.pump_flow.si() > 0.0;
            !height.si().is_nan() && !path
        };
        lacks(self.emitter_height, self.pressure_drop, self.flow_length, self.return_length)
            || layout.circuits.iter().any(|named| {
                let circuit = &named.circuit;
                let drop = if self.pressure_drop.si().is_nan() { self.pressure_drop } else { circuit.pressure_drop };
                lacks(circuit.emitter_height, drop, circuit.flow_length, circuit.return_length)
            })
    }

    /// Lays out the plant. `sensors`: what thermostats look at. `None` where the rules refuse it.
    pub(crate) fn lay_out(&self, layout: &Layout, state: State, sensors: Vec<Sensor>) -> Option<Laid> {
        let start = self.block_temperature.si();
        let or = |value: f64, other: f64| if value.is_nan() { other } else { value };
        let circuit_start = or(self.circuit_temperature.si(), start);
        let flow = self.pump_flow.si();
        let by_resistance = !self.pressure_drop.si().is_nan();
        let pipe_capacity = or(self.pipe_heat_capacity.si(), self.tube_capacity(layout));
        let given_loss = |loss: f64| (!loss.is_nan()).then(|| HeatLoss::linear(loss));
        let pipe_loss = given_loss(self.pipe_loss.si()).unwrap_or_else(|| self.tube_loss(layout));
        let main = Pipes {
            flow_length: self.flow_length.si(),
            return_length: self.return_length.si(),
            capacity: pipe_capacity,
            loss: pipe_loss,
            emitter_output: self.emitter_output.si(),
            emitter_exponent: self.emitter_exponent.si(),
            emitter_capacity: self.emitter_heat_capacity.si(),
            start: circuit_start,
            height: self.emitter_height.si(),
        };
        let coefficient = |share: f64, drop: f64| {
            if by_resistance && !drop.is_nan() { super::network::flow_coefficient(flow, drop) } else { share }
        };
        let mut circuits = Vec::new();
        let mut parts = Vec::new();
        let main_coefficient = coefficient(1.0, self.pressure_drop.si());
        let mut add = |pipes: &Pipes, open: bool, flow_coefficient: f64| {
            let laid = pipes.parts(layout);
            parts.push((laid.len(), pipes.emitter()));
            let rise = (!pipes.height.is_nan()).then_some(pipes.height);
            circuits.push(Circuit { parts: laid, open, flow_coefficient, rise });
        };
        add(&main, true, main_coefficient);
        for NamedCircuit { opening, circuit, .. } in &layout.circuits {
            let pipes = Pipes {
                flow_length: circuit.flow_length.si(),
                return_length: circuit.return_length.si(),
                capacity: or(circuit.pipe_heat_capacity.si(), pipe_capacity),
                loss: given_loss(circuit.pipe_loss.si()).unwrap_or(pipe_loss),
                emitter_output: circuit.emitter_output.si(),
                emitter_exponent: circuit.emitter_exponent.si(),
                emitter_capacity: circuit.emitter_heat_capacity.si(),
                start: or(circuit.circuit_temperature.si(), circuit_start),
                height: circuit.emitter_height.si(),
            };
            let open = match opening {
                Opening::Open => true,
                Opening::Closed => false,
                Opening::OpenedAfter => state == State::After,
                Opening::ClosedAfter => state == State::Before,
            };
            add(&pipes, open, coefficient(circuit.flow_share.si() * main_coefficient, circuit.pressure_drop.si()));
        }
        let shut_off = self.pump_shut_off_pressure.si();
        let pump = if shut_off.is_nan() {
            Pump::Flow(flow)
        } else {
            Pump::Curve { shut_off, steepness: (shut_off - self.pressure_drop.si()) / (flow * flow) }
        };
        let room = if self.room_heat_capacity.si().is_nan() {
            Room::Fixed(self.room_temperature.si())
        } else {
            Room::Lumped {
                start: self.room_temperature.si(),
                heat_capacity: self.room_heat_capacity.si(),
                loss: self.room_loss.si(),
                outside: self.outdoor_temperature.si(),
            }
        };
        let (metal, water) = self.capacities();
        let film = self.film_conductance.si();
        let block = Block {
            heat_capacity: if self.two_masses() { water } else { metal + water },
            metal: self.two_masses().then_some(Metal { heat_capacity: metal, film, start: or(self.metal_temperature.si(), start) }),
            casing: HeatLoss::linear(self.casing_loss.si()),
            start,
        };
        let water_heat_capacity = self.water_specific_heat_capacity.si();
        let mut model = Model::new(&Network { block, pump, circuits, room, water_heat_capacity, sensors })?;
        model.set_standing_heat(self.standing_heat.si());
        Some(Laid { model, parts })
    }
}

/// One record with the plant's fields taken from another: they stand in front in both.
#[cfg(test)]
pub(crate) fn with_plant<A: Record, B: Record>(plant: &A, rest: &B) -> B {
    let (from, to) = (plant.to_array(), rest.to_array());
    B::from_fn(|i| if i < Plant::FIELDS.len() { from.as_ref()[i] } else { to.as_ref()[i] })
}
