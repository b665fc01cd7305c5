//! `material_properties`: what the tables hold of a metal, an insulation or a finish.

use super::name::find;
use super::{INSULATIONS, Insulation, METALS, Metal, SURFACES, Surface};
use crate::Error;
use crate::calculation::{Calculation, Context, Form, Info, Setting, Settings, Source};
use crate::quantity::Value;
use crate::quantity::types::{MassDensity, Ratio, SpecificHeatCapacity, ThermalConductivity, ThermodynamicTemperature};
use crate::record::record;
use crate::working::{Working, step};

/// Where the material works.
#[record]
pub struct MaterialPropertiesInput {
    /// Mean temperature of the material; only insulation depends on it here.
    #[field("t", DEGREE_CELSIUS, -50.0..=300.0, default = 50.0, usual = 0.0..=110.0)]
    pub temperature: ThermodynamicTemperature,
}

/// What is known of it.
#[record]
pub struct MaterialPropertiesResult {
    /// Density.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE, absent = "not in the table")]
    pub density: MassDensity,
    /// Specific heat capacity.
    #[field("c", JOULE_PER_KILOGRAM_KELVIN, absent = "not in the table")]
    pub specific_heat_capacity: SpecificHeatCapacity,
    /// Lowest specific heat capacity in print.
    #[field("c_{low}", JOULE_PER_KILOGRAM_KELVIN, absent = "prints do not differ much")]
    pub least_heat_capacity: SpecificHeatCapacity,
    /// Highest specific heat capacity in print.
    #[field("c_{high}", JOULE_PER_KILOGRAM_KELVIN, absent = "prints do not differ much")]
    pub greatest_heat_capacity: SpecificHeatCapacity,
    /// Thermal conductivity.
    #[field("\\lambda", WATT_PER_METRE_KELVIN, absent = "a finish has none")]
    pub thermal_conductivity: ThermalConductivity,
    /// Emissivity.
    #[field("\\varepsilon", ONE, absent = "depends on the finish: ask for that by its name")]
    pub emissivity: Ratio,
    /// Lowest emissivity in print.
    #[field("\\varepsilon_{low}", ONE, absent = "not a finish")]
    pub least_emissivity: Ratio,
    /// Highest emissivity in print.
    #[field("\\varepsilon_{high}", ONE, absent = "not a finish")]
    pub greatest_emissivity: Ratio,
}

/// A row of one of the tables.
#[derive(Clone, Copy, Debug)]
pub enum Material {
    /// A metal or a plastic.
    Metal(&'static Metal),
    /// An insulation.
    Insulation(&'static Insulation),
    /// A finish.
    Surface(&'static Surface),
}

impl Material {
    /// Its name.
    #[must_use]
    pub fn name(&self) -> &'static str {
        match self {
            Self::Metal(metal) => metal.name,
            Self::Insulation(insulation) => insulation.name,
            Self::Surface(surface) => surface.name,
        }
    }

    /// Where its numbers come from.
    #[must_use]
    pub fn source(&self) -> &'static str {
        match self {
            Self::Metal(metal) => metal.source,
            Self::Insulation(insulation) => insulation.source,
            Self::Surface(surface) => surface.source,
        }
    }

    /// Every row of the tables.
    pub fn all() -> impl Iterator<Item = Self> + Clone {
        METALS.iter().map(Self::Metal).chain(INSULATIONS.iter().map(Self::Insulation)).chain(SURFACES.iter().map(Self::Surface))
    }
}

/// Properties of a material by name.
#[derive(Clone, Copy, Debug)]
pub struct MaterialProperties {
    /// The material.
    pub material: Material,
}

const COUNT: usize = METALS.len() + INSULATIONS.len() + SURFACES.len();
/// Names of all materials.
const NAMES: [&str; COUNT] = {
    let mut names = [""; COUNT];
    let mut i = 0;
    while i < METALS.len() {
        names[i] = METALS[i].name;
        i += 1;
    }
    while i < METALS.len() + INSULATIONS.len() {
        names[i] = INSULATIONS[i - METALS.len()].name;
        i += 1;
    }
    while i < COUNT {
        names[i] = SURFACES[i - METALS.len() - INSULATIONS.len()].name;
        i += 1;
    }
    names
};

impl Context for MaterialProperties {
    const SETTINGS: &'static [Setting] =
        &[Setting { name: "material", doc: "A metal, an insulation or a surface finish.", form: Form::Choice(&NAMES), default: None }];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let material = find("material", settings.text("material")?, Material::all(), |material| material.name().into())?;
        Ok(Self { material })
    }
}

impl Calculation for MaterialProperties {
    type Input = MaterialPropertiesInput;
    type Output = MaterialPropertiesResult;
    const INFO: Info = Info {
        name: "material_properties",
        title: "Properties of a material",
        summary: "Density, heat capacity, conductivity and emissivity of a metal, an insulation or a finish, with the spread of the prints.",
        sources: &[
            Source::new(
                "Kutz, Mechanical Engineers' Handbook vol. 4; Incropera Table A.1; Holman; Callister",
                "metals; which row comes from which is told in the table",
            ),
            Source::new("UK Fuel Efficiency Booklet 8; common practice", "insulation"),
            Source::new("textbook ranges, from memory; ISO 12241:2008 Table 2; Cengel", "emissivity"),
        ],
        accuracy: "Metals 5 %, insulation 10 % as new and dry, emissivity as its spread.",
        cautions: &[],
        checked_against: "heat/materials.csv",
    };

    fn compute<W: Working>(&self, input: &MaterialPropertiesInput, working: &mut W) -> MaterialPropertiesResult {
        let nothing = (f64::NAN, f64::NAN);
        let (density, heat_capacity, spread, conductivity, (emissivity, emissivities)) = match self.material {
            Material::Metal(metal) => (
                metal.density,
                metal.specific_heat_capacity,
                metal.specific_heat_capacity_spread.unwrap_or(nothing),
                metal.thermal_conductivity,
                (f64::NAN, nothing),
            ),
            Material::Insulation(insulation) => {
                (insulation.density, f64::NAN, nothing, insulation.thermal_conductivity(input.temperature.si()), (f64::NAN, nothing))
            }
            Material::Surface(surface) => (f64::NAN, f64::NAN, nothing, f64::NAN, (surface.emissivity, surface.spread)),
        };
        step!(working, let thermal_conductivity: "\\lambda" = ThermalConductivity::from_si(conductivity), "table; insulation between its published points");
        MaterialPropertiesResult {
            density: MassDensity::from_si(density),
            specific_heat_capacity: SpecificHeatCapacity::from_si(heat_capacity),
            least_heat_capacity: SpecificHeatCapacity::from_si(spread.0),
            greatest_heat_capacity: SpecificHeatCapacity::from_si(spread.1),
            thermal_conductivity,
            emissivity: Ratio::from_si(emissivity),
            least_emissivity: Ratio::from_si(emissivities.0),
            greatest_emissivity: Ratio::from_si(emissivities.1),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::node::Node;
    use std::format;

    #[test]
    fn every_name_is_found_once_and_gives_what_its_table_says() {
        let mut names = NAMES.to_vec();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), COUNT, "a name in two tables");
        for name in NAMES {
            let got = evaluate("material_properties", &Node::from([("material", name)]), Bare::Refused).unwrap();
            let known = ["thermal_conductivity", "emissivity"].map(|field| got.get(field).unwrap());
            assert_eq!(known.iter().filter(|value| value.is_nan()).count(), 1, "{name}: {known:?}");
        }
        let wool = Node::from([("material", "mineral wool"), ("temperature", "100 degC")]);
        assert!(
            (evaluate("material_properties", &wool, Bare::Refused).unwrap().get("thermal_conductivity").unwrap() - 0.044).abs() < 1e-15
        );
        let wrong = evaluate("material_properties", &Node::from([("material", "minral wool")]), Bare::Refused).err().unwrap();
        assert!(format!("{wrong}").contains("did you mean \"mineral wool\""));
    }
}
