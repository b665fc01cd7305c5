//! A pipe run as the sums meet it: tube, insulation, finish, and the air it hangs in.
//!
//! The calculations of this folder share their description of the run: the fields of
//! [`run_record!`], the settings of [`Run`] and the rules of [`run_rules!`].

use super::surface::{SurfaceBalance, Surroundings, balance, shell_resistance, still_air_balance};
use crate::Error;
use crate::calculation::{Context, Form, Setting, Settings, Source};
use crate::catalogue::{Bare, read_input};
use crate::convection::forced::internal_flow;
use crate::convection::natural::{HorizontalCylinder, VerticalCylinder};
use crate::convection::outside::{FilmState, OutsideAir, OutsideFilm};
use crate::material::{self, Insulation, Surface, Tube};
use crate::quantity::Value;
use crate::quantity::types::{Length, ThermalConductivity};
use crate::record::{Record, record};
use crate::water::{heating_water, saturation_pressure};
use alloc::vec::Vec;
use core::f64::consts::PI;

/// Declares an input record that describes a pipe run besides the fields it names, and reads the
/// run out of it.
macro_rules! run_record {
    ($(#[$meta:meta])* pub struct $name:ident { $($own:tt)* }) => {
        #[$crate::record::record]
        $(#[$meta])*
        pub struct $name {
            $($own)*
            /// Outside diameter of the bare pipe.
            #[field("d_o", MILLIMETRE, 2.0..=700.0, usual = 6.0..=170.0, absent = "as the named tube")]
            pub outside_diameter: $crate::quantity::types::Length,
            /// Thickness of the pipe's wall; 0 for a surface of known temperature.
            #[field("s", MILLIMETRE, 0.0..=50.0, absent = "as the named tube")]
            pub wall_thickness: $crate::quantity::types::Length,
            /// Thermal conductivity of the pipe's wall.
            #[field("\\lambda_w", WATT_PER_METRE_KELVIN, 0.02..=500.0, absent = "as the named tube")]
            pub wall_conductivity: $crate::quantity::types::ThermalConductivity,
            /// Thickness of the insulation; 0 for a bare pipe.
            #[field("s_i", MILLIMETRE, 0.0..=500.0, default = 0.0, usual = 0.0..=120.0)]
            pub insulation_thickness: $crate::quantity::types::Length,
            /// Thermal conductivity of the insulation.
            #[field("\\lambda_i", WATT_PER_METRE_KELVIN, 0.005..=5.0, usual = 0.015..=0.1, absent = "as the named insulation at its mean temperature, or bare")]
            pub insulation_conductivity: $crate::quantity::types::ThermalConductivity,
            /// Emissivity of the outermost surface.
            #[field("\\varepsilon", ONE, 0.0..=1.0, absent = "as the named finish")]
            pub emissivity: $crate::quantity::types::Ratio,
            /// Temperature of the air around the run.
            #[field("t_a", DEGREE_CELSIUS, -40.0..=60.0, usual = -15.0..=35.0)]
            pub air_temperature: $crate::quantity::types::ThermodynamicTemperature,
            /// Mean temperature of the surfaces the run radiates to.
            #[field("t_r", DEGREE_CELSIUS, -60.0..=90.0, usual = -15.0..=40.0, absent = "as the air")]
            pub radiant_temperature: $crate::quantity::types::ThermodynamicTemperature,
            /// Speed of the air across the run; for a run in the wind.
            #[field("v", METRE_PER_SECOND, 0.0..=60.0, absent = "still air")]
            pub wind_speed: $crate::quantity::types::Velocity,
            /// Atmospheric pressure.
            #[field("p_a", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 800.0..=1060.0)]
            pub air_pressure: $crate::quantity::AbsolutePressure,
            /// Absolute pressure of the water; hardly matters.
            #[field("p_w", BAR, 0.5..=20.0, default = 2.0, usual = 1.0..=6.0)]
            pub water_pressure: $crate::quantity::AbsolutePressure,
        }
        impl $name {
            /// The run described, lengthwise of `length`.
            #[inline(always)]
            fn given(&self, length: f64) -> $crate::pipe::run::Given {
                use $crate::quantity::Value;
                $crate::pipe::run::Given {
                    length,
                    outside_diameter: self.outside_diameter.si(),
                    wall_thickness: self.wall_thickness.si(),
                    wall_conductivity: self.wall_conductivity.si(),
                    insulation_thickness: self.insulation_thickness.si(),
                    insulation_conductivity: self.insulation_conductivity.si(),
                    emissivity: self.emissivity.si(),
                    air_temperature: self.air_temperature.si(),
                    radiant_temperature: self.radiant_temperature.si(),
                    wind_speed: self.wind_speed.si(),
                    air_pressure: self.air_pressure.si(),
                    water_pressure: self.water_pressure.si(),
                }
            }
        }
    };
}
pub(crate) use run_record;

/// Declares the rules every run obeys, and those a calculation adds.
macro_rules! run_rules {
    ($($own:tt)*) => {
        $crate::rules! {
            refuse TUBE_MISSING on "outside_diameter": "name a tube in the setting `tube`, or give outside_diameter, wall_thickness and wall_conductivity";
            refuse NO_BORE on "wall_thickness": "so thick a wall leaves no bore; check diameter and wall";
            refuse INSULATION_MISSING on "insulation_conductivity": "name the setting `insulation`, or give insulation_conductivity";
            refuse EMISSIVITY_MISSING on "emissivity": "name the setting `finish`, or give the emissivity of the outer surface";
            refuse WIND_MISSING on "wind_speed": "a run in the wind needs the speed of the air across it";
            notice WIND_LEFT_OUT on "wind_speed": "the correlation is for still air and leaves the wind out; set `position` to \"wind\"";
            refuse WOULD_BOIL on "water_pressure": "the water would boil at this pressure; check temperature and pressure";
            notice VERTICAL_SCATTER on "outside_diameter": "published correlations for thin vertical pipes disagree by 30 % and more; name the one you mean and allow for it";
            $($own)*
        }
        /// The rules that the run itself raises.
        #[inline(always)]
        fn run_rules(found: $crate::pipe::run::Findings) -> $crate::calculation::Raised {
            $crate::calculation::Raised::NONE
                .when(TUBE_MISSING, found.tube_missing)
                .when(NO_BORE, found.no_bore)
                .when(INSULATION_MISSING, found.insulation_missing)
                .when(EMISSIVITY_MISSING, found.emissivity_missing)
                .when(WIND_MISSING, found.wind_missing)
                .when(WIND_LEFT_OUT, found.wind_left_out)
                .when(WOULD_BOIL, found.would_boil)
                .when(VERTICAL_SCATTER, found.vertical)
        }
    };
}
pub(crate) use run_rules;

/// A further layer around the first.
#[record]
pub struct InsulationLayer {
    /// Thickness of the layer.
    #[field("s", MILLIMETRE, 0.0..=500.0)]
    pub thickness: Length,
    /// Thermal conductivity of the layer.
    #[field("\\lambda", WATT_PER_METRE_KELVIN, 0.005..=500.0)]
    pub conductivity: ThermalConductivity,
}

/// What a run is made of and how it lies, as far as it is said by name.
#[derive(Clone, Debug, Default)]
pub struct Run {
    /// How the air moves over it, and the correlation used.
    pub film: OutsideFilm,
    /// The tube; fields given by value go before it.
    pub tube: Option<Tube>,
    /// The insulation whose conductivity is taken at its mean temperature; a conductivity given by
    /// value goes before it.
    pub insulation: Option<Insulation>,
    /// The outer finish; an emissivity given by value goes before it.
    pub finish: Option<Surface>,
    /// Layers around the first, from the inside out.
    pub further_layers: Vec<InsulationLayer>,
}

const MOST_LAYERS: usize = 8;

const CHURCHILL_CHU: &str = "Churchill-Chu";
const MORGAN: &str = "Morgan";
const ISO_12241: &str = "ISO 12241";
const POPIEL: &str = "Popiel";
const POPIEL_LAMINAR: &str = "Popiel laminar";
const LE_FEVRE_EDE: &str = "Le Fevre-Ede";
const CHURCHILL_BERNSTEIN: &str = "Churchill-Bernstein";
const USUAL: &str = "usual";

#[derive(Clone, Copy)]
enum Position {
    Horizontal,
    Vertical,
    Wind,
}

fn film_named(position: Position, correlation: &str) -> Result<OutsideFilm, Error> {
    let (place, offered): (&str, &[(&str, OutsideFilm)]) = match position {
        Position::Horizontal => (
            "a horizontal run",
            &[
                (CHURCHILL_CHU, OutsideFilm::Horizontal(HorizontalCylinder::ChurchillChu)),
                (MORGAN, OutsideFilm::Horizontal(HorizontalCylinder::Morgan)),
                (ISO_12241, OutsideFilm::Horizontal(HorizontalCylinder::Iso12241)),
            ],
        ),
        Position::Vertical => (
            "a vertical run",
            &[
                (POPIEL, OutsideFilm::Vertical(VerticalCylinder::PopielPlate)),
                (POPIEL_LAMINAR, OutsideFilm::Vertical(VerticalCylinder::PopielLaminarPlate)),
                (LE_FEVRE_EDE, OutsideFilm::Vertical(VerticalCylinder::LeFevreEde)),
                (ISO_12241, OutsideFilm::Vertical(VerticalCylinder::Iso12241)),
            ],
        ),
        Position::Wind => ("a run in the wind", &[(CHURCHILL_BERNSTEIN, OutsideFilm::Wind)]),
    };
    let found = if correlation == USUAL { offered.first() } else { offered.iter().find(|(name, _)| *name == correlation) };
    found.map(|&(_, film)| film).ok_or_else(|| {
        let names: Vec<&str> = offered.iter().map(|&(name, _)| name).collect();
        let why = alloc::format!("for {place} there are: {}", names.join(", "));
        Error::bad_setting("correlation", correlation, &why)
    })
}

impl Context for Run {
    const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "position",
            doc: "How the run lies: horizontal or vertical in still air, or across the wind.",
            form: Form::Choice(&["horizontal", "vertical", "wind"]),
            default: Some("horizontal"),
        },
        Setting {
            name: "correlation",
            doc: "Whose correlation for the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position.",
            form: Form::Choice(&[USUAL, CHURCHILL_CHU, MORGAN, ISO_12241, POPIEL, POPIEL_LAMINAR, LE_FEVRE_EDE, CHURCHILL_BERNSTEIN]),
            default: Some(USUAL),
        },
        Setting {
            name: "tube",
            doc: "The tube by name, such as \"copper 22x0.9\"; diameter, wall and conductivity may be given by value instead.",
            form: Form::Text,
            default: Some(""),
        },
        Setting {
            name: "insulation",
            doc: "The insulation by name, such as \"mineral wool\"; its conductivity may be given by value instead.",
            form: Form::Text,
            default: Some(""),
        },
        Setting {
            name: "finish",
            doc: "The outer finish by name, such as \"tarnished copper\" or \"paint\"; the emissivity may be given by value instead.",
            form: Form::Text,
            default: Some(""),
        },
        Setting {
            name: "further_layers",
            doc: "Layers around the first insulation, from the inside out: a list of thickness and conductivity.",
            form: Form::Records(InsulationLayer::FIELDS),
            default: Some(""),
        },
    ];

    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let position = settings
            .choice("position", &[("horizontal", Position::Horizontal), ("vertical", Position::Vertical), ("wind", Position::Wind)])?;
        let named = |name: &str| settings.text(name).map(|text| Some(text).filter(|text| !text.is_empty()));
        let mut further_layers = Vec::new();
        if let Some(given) = settings.get("further_layers") {
            let items = given.list("further_layers")?;
            if items.len() > MOST_LAYERS {
                let why = alloc::format!("{} layers were given, {MOST_LAYERS} at most", items.len());
                return Err(Error::bad_setting("further_layers", "", &why));
            }
            for item in items {
                let values = read_input(InsulationLayer::FIELDS, item, Bare::Refused)?;
                for (field, value) in InsulationLayer::FIELDS.iter().zip(&values) {
                    if !(*value >= field.minimum && *value <= field.maximum) {
                        return Err(Error::for_field(field, *value).within("further_layers"));
                    }
                }
                further_layers.push(InsulationLayer::from_slice(&values));
            }
        }
        Ok(Self {
            film: film_named(position, settings.text("correlation")?)?,
            tube: named("tube")?.map(material::tube).transpose()?,
            insulation: named("insulation")?.map(material::insulation).transpose()?.copied(),
            finish: named("finish")?.map(material::surface).transpose()?.copied(),
            further_layers,
        })
    }
}

/// The fields of [`run_record!`] in SI units; NaN where the field was left out.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Given {
    pub(crate) length: f64,
    pub(crate) outside_diameter: f64,
    pub(crate) wall_thickness: f64,
    pub(crate) wall_conductivity: f64,
    pub(crate) insulation_thickness: f64,
    pub(crate) insulation_conductivity: f64,
    pub(crate) emissivity: f64,
    pub(crate) air_temperature: f64,
    pub(crate) radiant_temperature: f64,
    pub(crate) wind_speed: f64,
    pub(crate) air_pressure: f64,
    pub(crate) water_pressure: f64,
}

/// The run with every name resolved, SI units.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Section {
    pub(crate) bore: f64,
    pub(crate) outside_diameter: f64,
    pub(crate) wall_conductivity: f64,
    pub(crate) insulation_thickness: f64,
    /// NaN where the conductivity is the named insulation's at its mean temperature.
    pub(crate) insulation_conductivity: f64,
    pub(crate) further_resistance: f64,
    pub(crate) surface_diameter: f64,
    pub(crate) around: Surroundings,
    outside: OutsideAir,
}

/// The resistances between the water and the outer surface, in m K/W over a metre of run.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Resistances {
    pub(crate) inside: f64,
    pub(crate) wall: f64,
    pub(crate) insulation: f64,
    pub(crate) further: f64,
}

impl Resistances {
    #[inline(always)]
    pub(crate) fn sum(&self) -> f64 {
        self.inside + self.wall + self.insulation + self.further
    }
}

/// The water's side of a run, SI units.
#[derive(Clone, Copy, Debug)]
pub(crate) struct InsideFilm {
    pub(crate) reynolds: f64,
    /// W/(m² K) on the bore.
    pub(crate) coefficient: f64,
    /// m K/W over a metre of run.
    pub(crate) resistance: f64,
    /// J/(kg K).
    pub(crate) heat_capacity: f64,
}

/// The film inside a bore in m at a mass flow in kg/s of water at a pressure in Pa and a
/// temperature in K.
#[inline]
pub(crate) fn inside_film(mass_flow: f64, bore: f64, pressure: f64, temperature: f64) -> InsideFilm {
    let water = heating_water(pressure, temperature);
    let reynolds = 4.0 * mass_flow / (PI * bore * water.dynamic_viscosity);
    let prandtl = water.specific_heat_capacity * water.dynamic_viscosity / water.thermal_conductivity;
    let nusselt = internal_flow(reynolds, prandtl);
    let coefficient = nusselt * water.thermal_conductivity / bore;
    InsideFilm { reynolds, coefficient, resistance: 1.0 / (PI * bore * coefficient), heat_capacity: water.specific_heat_capacity }
}

#[inline(always)]
fn value_or(value: f64, named: Option<f64>) -> f64 {
    if value.is_nan() { named.unwrap_or(f64::NAN) } else { value }
}

impl Run {
    /// Outside diameter and bore in m.
    #[inline(always)]
    fn diameters(&self, given: &Given) -> (f64, f64) {
        let outside = value_or(given.outside_diameter, self.tube.map(|t| t.outer_diameter));
        (outside, outside - 2.0 * value_or(given.wall_thickness, self.tube.map(|t| t.wall_thickness)))
    }

    #[inline(always)]
    fn wall_conductivity(&self, given: &Given) -> f64 {
        value_or(given.wall_conductivity, self.tube.map(|t| t.wall_conductivity))
    }

    #[inline(always)]
    fn emissivity(&self, given: &Given) -> f64 {
        value_or(given.emissivity, self.finish.map(|f| f.emissivity))
    }

    /// The run with names resolved; NaN where something is missing.
    #[inline]
    pub(crate) fn section(&self, given: &Given) -> Section {
        let (outside_diameter, bore) = self.diameters(given);
        let mut diameter = outside_diameter + 2.0 * given.insulation_thickness;
        let mut further_resistance = 0.0;
        for layer in &self.further_layers {
            let outer = diameter + 2.0 * layer.thickness.si();
            further_resistance += shell_resistance(diameter, outer, layer.conductivity.si());
            diameter = outer;
        }
        let around = Surroundings {
            air_temperature: given.air_temperature,
            radiant_temperature: value_or(given.radiant_temperature, Some(given.air_temperature)),
            emissivity: self.emissivity(given),
            pressure: given.air_pressure,
        };
        Section {
            bore,
            outside_diameter,
            wall_conductivity: self.wall_conductivity(given),
            insulation_thickness: given.insulation_thickness,
            insulation_conductivity: given.insulation_conductivity,
            further_resistance,
            surface_diameter: diameter,
            around,
            outside: OutsideAir {
                diameter,
                length: given.length,
                air_temperature: given.air_temperature,
                pressure: given.air_pressure,
                wind_speed: given.wind_speed,
            },
        }
    }

    /// The conductivity of the insulation in W/(m K): given, or the named one's at the mean of its two faces.
    #[inline(always)]
    pub(crate) fn insulation_conductivity(&self, section: &Section, inner_temperature: f64, inside_resistance: f64) -> f64 {
        match self.insulation {
            Some(insulation) if section.insulation_conductivity.is_nan() => {
                self.conductivity_at_its_mean(&insulation, section, inner_temperature, inside_resistance)
            }
            _ => {
                // The conductivity of an insulation that is not there matters to nobody.
                let bare = (section.insulation_thickness == 0.0) & section.insulation_conductivity.is_nan();
                if bare { 1.0 } else { section.insulation_conductivity }
            }
        }
    }

    /// The conductivity of an insulation at the mean of its two faces, found by repeating the balance
    /// until it stands (each pass leaves at most a tenth of the deviation, since the published slopes
    /// are slight).
    #[inline(never)]
    fn conductivity_at_its_mean(&self, insulation: &Insulation, section: &Section, inner_temperature: f64, inside_resistance: f64) -> f64 {
        let mut conductivity = insulation.thermal_conductivity(0.5 * (inner_temperature + section.around.air_temperature));
        if insulation.upper_point.is_none() {
            return conductivity;
        }
        for _ in 0..10 {
            let resistances = Self::resistances(section, inside_resistance, conductivity);
            let surface = self.surface(section, inner_temperature, resistances.sum());
            let loss = surface.loss();
            let inner_face = inner_temperature - loss * (resistances.inside + resistances.wall);
            let outer_face = surface.temperature + loss * resistances.further;
            conductivity = insulation.thermal_conductivity(0.5 * (inner_face + outer_face));
        }
        conductivity
    }

    #[inline]
    pub(crate) fn resistances(section: &Section, inside: f64, insulation_conductivity: f64) -> Resistances {
        Resistances {
            inside,
            wall: shell_resistance(section.bore, section.outside_diameter, section.wall_conductivity),
            insulation: shell_resistance(
                section.outside_diameter,
                section.outside_diameter + 2.0 * section.insulation_thickness,
                insulation_conductivity,
            ),
            further: section.further_resistance,
        }
    }

    /// Whether an input of this insulation conductivity has the same sum with [`Self::plainest`].
    #[inline(always)]
    pub(crate) fn is_straight(&self, insulation_conductivity: f64) -> bool {
        (self.film == OutsideFilm::default())
            & self.further_layers.is_empty()
            & (self.insulation.is_none() | !insulation_conductivity.is_nan())
    }

    /// The run without what takes branches and calls, which the compiler then leaves out.
    #[inline(always)]
    pub(crate) fn plainest(&self) -> Self {
        Self { film: OutsideFilm::default(), tube: self.tube, insulation: None, finish: self.finish, further_layers: Vec::new() }
    }

    /// As [`Self::surface_in_line`]; out of line, since it is long and called from every sum on a run.
    #[inline(never)]
    pub(crate) fn surface(&self, section: &Section, inner_temperature: f64, resistance: f64) -> SurfaceBalance {
        self.surface_in_line(section, inner_temperature, resistance)
    }

    /// The balance of the outer surface at a resistance in m K/W to the inner temperature in K.
    #[inline(always)]
    pub(crate) fn surface_in_line(&self, section: &Section, inner_temperature: f64, resistance: f64) -> SurfaceBalance {
        match self.film {
            OutsideFilm::Horizontal(HorizontalCylinder::ChurchillChu) => {
                still_air_balance(inner_temperature, resistance, section.surface_diameter, &section.around)
            }
            film => balance(
                film,
                inner_temperature,
                resistance,
                &section.outside,
                section.around.radiant_temperature,
                section.around.emissivity,
            ),
        }
    }

    /// Heat lost in W per metre of run, at a water temperature in K and an inside resistance in m K/W.
    #[inline]
    pub(crate) fn loss(&self, section: &Section, water_temperature: f64, inside_resistance: f64) -> f64 {
        let conductivity = self.insulation_conductivity(section, water_temperature, inside_resistance);
        let resistance = Self::resistances(section, inside_resistance, conductivity).sum();
        self.surface(section, water_temperature, resistance).loss()
    }

    /// The water temperature in K at which the run loses nothing: the air's, unless the surfaces
    /// around are warmer or colder.
    pub(crate) fn rest_temperature(&self, section: &Section) -> f64 {
        let around = &section.around;
        if around.radiant_temperature == around.air_temperature {
            return around.air_temperature;
        }
        // So well insulated that what comes from within is nothing beside the room.
        const CUT_OFF: f64 = 1e9;
        self.surface(section, around.air_temperature, CUT_OFF).temperature
    }

    /// The film outside once the balance is struck, for its numbers and range.
    #[inline(always)]
    pub(crate) fn film(&self, section: &Section, solved: &SurfaceBalance) -> FilmState {
        self.film.described(solved.coefficient, solved.temperature, &section.outside)
    }

    /// What is to be said of a run holding water at this temperature in K.
    #[inline]
    pub(crate) fn findings(&self, given: &Given, water_temperature: f64) -> Findings {
        let (_, bore) = self.diameters(given);
        let windy = matches!(self.film, OutsideFilm::Wind);
        let insulated = given.insulation_thickness > 0.0;
        Findings {
            tube_missing: bore.is_nan() | self.wall_conductivity(given).is_nan(),
            no_bore: bore <= 0.0,
            insulation_missing: insulated & given.insulation_conductivity.is_nan() & self.insulation.is_none(),
            emissivity_missing: self.emissivity(given).is_nan(),
            wind_missing: windy & given.wind_speed.is_nan(),
            wind_left_out: !windy & (given.wind_speed > 0.0),
            would_boil: given.water_pressure < saturation_pressure(water_temperature),
            vertical: matches!(self.film, OutsideFilm::Vertical(_)),
        }
    }
}

/// What [`run_rules!`] speaks of.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Findings {
    pub(crate) tube_missing: bool,
    pub(crate) no_bore: bool,
    pub(crate) insulation_missing: bool,
    pub(crate) emissivity_missing: bool,
    pub(crate) wind_missing: bool,
    pub(crate) wind_left_out: bool,
    pub(crate) would_boil: bool,
    pub(crate) vertical: bool,
}

/// The sources every sum on a run rests on.
pub(crate) const FILM_SOURCE: Source =
    Source::new("Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1049", "film outside a horizontal run, by default");
pub(crate) const VERTICAL_SOURCE: Source =
    Source::new("Popiel 2008, Heat Transfer Eng. 29, 521, on the plate of Churchill & Chu 1975", "film outside a vertical run, by default");
pub(crate) const WIND_SOURCE: Source =
    Source::new("Churchill & Bernstein 1977, J. Heat Transfer 99, 300", "film outside a run in the wind");
pub(crate) const INSIDE_SOURCE: Source =
    Source::new("Gnielinski 1976, Int. Chem. Eng. 16, 359", "film inside at a Reynolds number from 4000; 3.66 below 2300, a line between");
pub(crate) const AIR_SOURCE: Source =
    Source::new("Lemmon et al. 2000 and Lemmon & Jacobsen 2004, as CoolProp 8.0.0 evaluates them", "properties of air, fitted to 2e-6");
pub(crate) const WATER_SOURCE: Source = Source::new("IAPWS SR6-08(2011), R12-08, R15-11", "properties of water, 0 to 110 °C");
