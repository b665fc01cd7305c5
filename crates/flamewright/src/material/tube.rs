//! Tubes by standard and size.

use super::metal;
use super::name::find;
use crate::Error;
use crate::calculation::{Form, Setting, Settings};
use crate::node::Node;
use crate::quantity::Value;
use crate::quantity::types::Length;
use alloc::string::String;
use alloc::vec::Vec;
use core::f64::consts::PI;

/// One size of a family.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TubeSize {
    /// Size as the trade names it: "15x0.7", or "1/2" for threaded steel.
    pub name: &'static str,
    /// Outside diameter in m.
    pub outer_diameter: f64,
    /// Wall thickness in m.
    pub wall_thickness: f64,
    /// Mass per metre in print, kg/m, where one is.
    pub published_mass_per_metre: Option<f64>,
    /// Where the size comes from.
    pub source: &'static str,
}

/// Tubes of one standard and material.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TubeFamily {
    /// Name that comes before the size: "copper".
    pub name: &'static str,
    /// Standard and what it is.
    pub standard: &'static str,
    /// Density of the wall in kg/m³.
    pub wall_density: f64,
    /// Thermal conductivity of the wall in W/(m K).
    pub wall_conductivity: f64,
    /// Specific heat capacity of the wall in J/(kg K).
    pub wall_heat_capacity: f64,
    /// Roughness of the bore in m, as new.
    pub roughness: f64,
    /// Where the properties of the wall come from.
    pub source: &'static str,
    /// Its sizes.
    pub sizes: &'static [TubeSize],
}

/// A tube as the sums need it: from a table, or of any size by value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tube {
    /// Outside diameter in m.
    pub outer_diameter: f64,
    /// Wall thickness in m.
    pub wall_thickness: f64,
    /// Density of the wall in kg/m³.
    pub wall_density: f64,
    /// Thermal conductivity of the wall in W/(m K).
    pub wall_conductivity: f64,
    /// Specific heat capacity of the wall in J/(kg K).
    pub wall_heat_capacity: f64,
    /// Roughness of the bore in m.
    pub roughness: f64,
}

impl Tube {
    /// Bore in m: outside diameter less two walls.
    #[inline]
    pub fn bore(&self) -> f64 {
        self.outer_diameter - 2.0 * self.wall_thickness
    }

    /// Water content in m³ per metre.
    #[inline]
    pub fn content_per_metre(&self) -> f64 {
        0.25 * PI * self.bore() * self.bore()
    }

    /// Mass of the wall in kg per metre, by geometry and density.
    #[inline]
    pub fn mass_per_metre(&self) -> f64 {
        PI * (self.outer_diameter - self.wall_thickness) * self.wall_thickness * self.wall_density
    }

    /// Heat capacity of the wall in J/K per metre.
    #[inline]
    pub fn wall_capacity_per_metre(&self) -> f64 {
        self.mass_per_metre() * self.wall_heat_capacity
    }
}

impl Tube {
    /// The setting `tube`.
    pub const SETTING: Setting = Setting {
        name: "tube",
        doc: "A tube by name (\"copper 15x0.7\", \"steel medium 1/2\", \"multilayer 16x2\"), or by value: { outer_diameter, wall_thickness, material (a metal's name, copper if left out), roughness (0.0015 mm if left out) }.",
        form: Form::Structure,
        default: None,
    };

    /// The tube given by the setting `tube`.
    ///
    /// # Errors
    /// Missing, an unknown name, or an impossible size.
    pub fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Self::from_node(Self::SETTING.name, settings.need(Self::SETTING.name)?)
    }

    /// A tube from its name or from a table of its sizes.
    ///
    /// # Errors
    /// An unknown name, or an impossible size.
    pub fn from_node(name: &str, node: &Node) -> Result<Self, Error> {
        if let Node::Text(text) = node {
            return tube(text).map_err(|error| error.within(name));
        }
        let (mut outer, mut wall, mut roughness, mut of) = (f64::NAN, f64::NAN, 1.5e-6, "copper");
        for (key, value) in node.entries(name)? {
            match key {
                "outer_diameter" => outer = value.quantity::<Length>(key)?.si(),
                "wall_thickness" => wall = value.quantity::<Length>(key)?.si(),
                "roughness" => roughness = value.quantity::<Length>(key)?.si(),
                "material" => of = value.text(key)?,
                other => {
                    return Err(Error::unknown_name(
                        name,
                        other,
                        ["outer_diameter", "wall_thickness", "material", "roughness"].into_iter(),
                    ));
                }
            }
        }
        let metal = metal(of)?;
        let sound = (0.001..=2.0).contains(&outer) && wall > 0.0 && 2.0 * wall < outer && (0.0..0.05 * outer).contains(&roughness);
        if !sound {
            let why = "outer diameter (1 mm to 2 m), wall thickness (less than half of it) and roughness (less than a twentieth of it) must make a tube";
            return Err(Error::bad_setting(name, &node.brief(), why));
        }
        Ok(Self {
            outer_diameter: outer,
            wall_thickness: wall,
            wall_density: metal.density,
            wall_conductivity: metal.thermal_conductivity,
            wall_heat_capacity: metal.specific_heat_capacity,
            roughness,
        })
    }
}

/// Hundredths of a millimetre to metres: every size of every table is a whole number of them.
const fn metres(hundredths: u32) -> f64 {
    hundredths as f64 / 100_000.0
}

const fn size(name: &'static str, outer: u32, wall: u32, source: &'static str) -> TubeSize {
    TubeSize { name, outer_diameter: metres(outer), wall_thickness: metres(wall), published_mass_per_metre: None, source }
}

const fn weighed(name: &'static str, outer: u32, wall: u32, mass: f64, source: &'static str) -> TubeSize {
    TubeSize { name, outer_diameter: metres(outer), wall_thickness: metres(wall), published_mass_per_metre: Some(mass), source }
}

const EN_1057: &str = "EN 1057, recommended size, seen in a secondary reproduction";
const EN_1057_OTHER: &str = "EN 1057, other European size, seen in a secondary reproduction";
const EN_1057_MAKER: &str = "EN 1057, recommended size, seen in a secondary reproduction; mass printed by a tube maker";
const EN_1057_MEMORY: &str = "EN 1057, from memory";
const EN_10255: &str = "EN 10255:2004, outside diameter and wall from memory; mass seen in a secondary reproduction";
const EN_10255_MEMORY: &str = "EN 10255:2004, outside diameter and wall from memory";
const EN_10305: &str = "EN 10305-3, common press-system size, from memory";
const EN_15875: &str = "EN ISO 15875-2, from memory";
const EN_21003: &str = "pipe maker's informative data sheet to EN ISO 21003-2";
const EN_21003_MEMORY: &str = "size in common use, from memory";

/// The families.
pub static TUBE_FAMILIES: &[TubeFamily] = &[
    TubeFamily {
        name: "copper",
        standard: "EN 1057 copper",
        wall_density: 8900.0,
        wall_conductivity: 385.0,
        wall_heat_capacity: 385.0,
        roughness: 1.5e-6,
        source: "density that gives the masses tube makers print; conductivity and heat capacity textbook; roughness of drawn tubing, Cengel & Cimbala Table 8-2, from memory",
        sizes: &[
            size("6x0.6", 600, 60, EN_1057),
            size("6x0.8", 600, 80, EN_1057_MEMORY),
            size("6x1", 600, 100, EN_1057),
            size("8x0.6", 800, 60, EN_1057),
            size("8x0.8", 800, 80, EN_1057_MEMORY),
            size("8x1", 800, 100, EN_1057),
            size("10x0.6", 1000, 60, EN_1057),
            size("10x0.7", 1000, 70, EN_1057_MEMORY),
            size("10x0.8", 1000, 80, EN_1057),
            weighed("10x1", 1000, 100, 0.252, EN_1057_MAKER),
            size("12x0.6", 1200, 60, EN_1057_MEMORY),
            size("12x0.7", 1200, 70, EN_1057_MEMORY),
            size("12x0.8", 1200, 80, EN_1057),
            weighed("12x1", 1200, 100, 0.308, EN_1057_MAKER),
            size("14x1", 1400, 100, EN_1057_MEMORY),
            size("15x0.7", 1500, 70, EN_1057),
            size("15x0.8", 1500, 80, EN_1057),
            weighed("15x1", 1500, 100, 0.391, EN_1057_MAKER),
            size("16x1", 1600, 100, EN_1057_MEMORY),
            size("18x0.8", 1800, 80, EN_1057_MEMORY),
            weighed("18x1", 1800, 100, 0.475, EN_1057_MAKER),
            size("22x0.9", 2200, 90, EN_1057),
            size("22x1", 2200, 100, EN_1057_MEMORY),
            size("22x1.1", 2200, 110, EN_1057_MEMORY),
            size("22x1.2", 2200, 120, EN_1057),
            weighed("22x1.5", 2200, 150, 0.86, EN_1057_MAKER),
            size("28x0.9", 2800, 90, EN_1057),
            size("28x1", 2800, 100, EN_1057),
            size("28x1.2", 2800, 120, EN_1057),
            size("28x1.5", 2800, 150, EN_1057_MEMORY),
            size("35x1", 3500, 100, EN_1057_OTHER),
            size("35x1.2", 3500, 120, EN_1057),
            size("35x1.5", 3500, 150, EN_1057_MEMORY),
            size("42x1", 4200, 100, EN_1057_OTHER),
            size("42x1.2", 4200, 120, EN_1057),
            size("42x1.5", 4200, 150, EN_1057_MEMORY),
            size("54x1", 5400, 100, EN_1057_OTHER),
            size("54x1.2", 5400, 120, EN_1057),
            size("54x1.5", 5400, 150, EN_1057_MEMORY),
            weighed("54x2", 5400, 200, 2.908, EN_1057_MAKER),
            size("64x2", 6400, 200, EN_1057_MEMORY),
            size("66.7x1.2", 6670, 120, EN_1057),
            size("66.7x2", 6670, 200, EN_1057_MEMORY),
            size("76.1x1.5", 7610, 150, EN_1057),
            size("76.1x2", 7610, 200, EN_1057),
            size("88.9x2", 8890, 200, EN_1057_MEMORY),
            size("108x1.5", 10800, 150, EN_1057_MEMORY),
            size("108x2.5", 10800, 250, EN_1057),
            size("133x1.5", 13300, 150, EN_1057_MEMORY),
            size("133x3", 13300, 300, EN_1057_MEMORY),
            size("159x2", 15900, 200, EN_1057_MEMORY),
            size("159x3", 15900, 300, EN_1057_MEMORY),
        ],
    },
    TubeFamily {
        name: "steel medium",
        standard: "EN 10255 non-alloy steel for threading, medium series",
        wall_density: 7850.0,
        wall_conductivity: 60.5,
        wall_heat_capacity: 434.0,
        roughness: 45.0e-6,
        source: "density of steel 7850 kg/m³, common; conductivity and heat capacity Incropera Table A.1, from memory; roughness of commercial steel, Cengel & Cimbala Table 8-2, from memory",
        sizes: &[
            size("1/4", 1350, 230, EN_10255_MEMORY),
            weighed("3/8", 1720, 230, 0.839, EN_10255),
            weighed("1/2", 2130, 260, 1.21, EN_10255),
            size("3/4", 2690, 260, EN_10255_MEMORY),
            weighed("1", 3370, 320, 2.41, EN_10255),
            weighed("1 1/4", 4240, 320, 3.10, EN_10255),
            size("1 1/2", 4830, 320, EN_10255_MEMORY),
            weighed("2", 6030, 360, 5.03, EN_10255),
            size("2 1/2", 7610, 360, EN_10255_MEMORY),
            size("3", 8890, 400, EN_10255_MEMORY),
            weighed("4", 11430, 450, 12.2, EN_10255),
            size("5", 13970, 500, EN_10255_MEMORY),
            size("6", 16510, 500, EN_10255_MEMORY),
        ],
    },
    TubeFamily {
        name: "steel heavy",
        standard: "EN 10255 non-alloy steel for threading, heavy series",
        wall_density: 7850.0,
        wall_conductivity: 60.5,
        wall_heat_capacity: 434.0,
        roughness: 45.0e-6,
        source: "as the medium series",
        sizes: &[
            size("1/4", 1350, 290, EN_10255_MEMORY),
            size("3/8", 1720, 290, EN_10255_MEMORY),
            weighed("1/2", 2130, 320, 1.44, EN_10255),
            weighed("3/4", 2690, 320, 1.87, EN_10255),
            size("1", 3370, 400, EN_10255_MEMORY),
            weighed("1 1/4", 4240, 400, 3.80, EN_10255),
            weighed("1 1/2", 4830, 400, 4.38, EN_10255),
            size("2", 6030, 450, EN_10255_MEMORY),
            size("2 1/2", 7610, 450, EN_10255_MEMORY),
            size("3", 8890, 500, EN_10255_MEMORY),
            size("4", 11430, 540, EN_10255_MEMORY),
            size("5", 13970, 540, EN_10255_MEMORY),
            size("6", 16510, 540, EN_10255_MEMORY),
        ],
    },
    TubeFamily {
        name: "press steel",
        standard: "EN 10305-3 thin-wall carbon steel for press fittings",
        wall_density: 7850.0,
        wall_conductivity: 60.5,
        wall_heat_capacity: 434.0,
        roughness: 10.0e-6,
        source: "as the threaded steel; roughness common practice, no source",
        sizes: &[
            size("12x1.2", 1200, 120, EN_10305),
            size("15x1.2", 1500, 120, EN_10305),
            size("18x1.2", 1800, 120, EN_10305),
            size("22x1.5", 2200, 150, EN_10305),
            size("28x1.5", 2800, 150, EN_10305),
            size("35x1.5", 3500, 150, EN_10305),
            size("42x1.5", 4200, 150, EN_10305),
            size("54x1.5", 5400, 150, EN_10305),
            size("66.7x1.5", 6670, 150, EN_10305),
            size("76.1x2", 7610, 200, EN_10305),
            size("88.9x2", 8890, 200, EN_10305),
            size("108x2", 10800, 200, EN_10305),
        ],
    },
    TubeFamily {
        name: "PEX",
        standard: "EN ISO 15875 cross-linked polyethylene, series S5 and S3.2",
        wall_density: 940.0,
        wall_conductivity: 0.40,
        wall_heat_capacity: 2300.0,
        roughness: 7.0e-6,
        source: "common practice, no source; roughness as the multilayer tube",
        sizes: &[
            size("12x1.7", 1200, 170, EN_15875),
            size("16x1.8", 1600, 180, EN_15875),
            size("16x2.2", 1600, 220, EN_15875),
            size("20x1.9", 2000, 190, EN_15875),
            size("20x2.8", 2000, 280, EN_15875),
            size("25x2.3", 2500, 230, EN_15875),
            size("25x3.5", 2500, 350, EN_15875),
            size("32x2.9", 3200, 290, EN_15875),
            size("32x4.4", 3200, 440, EN_15875),
            size("40x3.7", 4000, 370, EN_15875),
            size("40x5.5", 4000, 550, EN_15875),
            size("50x4.6", 5000, 460, EN_15875),
            size("50x6.9", 5000, 690, EN_15875),
            size("63x5.8", 6300, 580, EN_15875),
        ],
    },
    TubeFamily {
        name: "multilayer",
        standard: "EN ISO 21003 PE-RT/AL/PE-RT multilayer",
        // What the printed masses of 16x2 to 26x3 amount to over the whole wall (1384 to 1426).
        wall_density: 1406.0,
        wall_conductivity: 0.43,
        wall_heat_capacity: 1700.0,
        roughness: 7.0e-6,
        source: "conductivity and roughness: pipe maker's data sheet; density: mean over the printed masses; heat capacity: polyethylene and aluminium by mass, an estimate",
        sizes: &[
            size("14x2", 1400, 200, EN_21003_MEMORY),
            weighed("16x2", 1600, 200, 0.125, EN_21003),
            weighed("18x2", 1800, 200, 0.140, EN_21003),
            size("20x2", 2000, 200, EN_21003_MEMORY),
            size("20x2.25", 2000, 225, EN_21003_MEMORY),
            weighed("25x2.5", 2500, 250, 0.252, EN_21003),
            weighed("26x3", 2600, 300, 0.300, EN_21003),
            size("32x3", 3200, 300, EN_21003_MEMORY),
            weighed("40x3.5", 4000, 350, 0.600, EN_21003),
            weighed("50x4", 5000, 400, 0.860, EN_21003),
            size("63x4.5", 6300, 450, EN_21003_MEMORY),
            size("63x6", 6300, 600, EN_21003_MEMORY),
        ],
    },
];

fn full_name(family: &TubeFamily, size: &TubeSize) -> String {
    alloc::format!("{} {}", family.name, size.name)
}

fn all() -> impl Iterator<Item = (&'static TubeFamily, &'static TubeSize)> + Clone {
    TUBE_FAMILIES.iter().flat_map(|family| family.sizes.iter().map(move |size| (family, size)))
}

/// Every name that [`tube`] knows.
pub fn tube_names() -> Vec<String> {
    all().map(|(family, size)| full_name(family, size)).collect()
}

/// A tube by its family and size, such as "copper 15x0.7", "steel medium 1/2" or
/// "multilayer 16x2". Where a mass per metre is in print for a multilayer wall, the wall's density
/// is the one that gives it.
///
/// # Errors
/// An unknown name; the refusal offers the nearest.
pub fn tube(name: &str) -> Result<Tube, Error> {
    let (family, size) = find("tube", name, all(), |(family, size)| full_name(family, size))?;
    let mut tube = Tube {
        outer_diameter: size.outer_diameter,
        wall_thickness: size.wall_thickness,
        wall_density: family.wall_density,
        wall_conductivity: family.wall_conductivity,
        wall_heat_capacity: family.wall_heat_capacity,
        roughness: family.roughness,
    };
    if let (Some(mass), "multilayer") = (size.published_mass_per_metre, family.name) {
        tube.wall_density *= mass / tube.mass_per_metre();
    }
    Ok(tube)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::water::tests::assert_close;
    use flamewright_reference::rows;
    use std::format;

    #[test]
    fn every_tube_of_the_reference_table_is_there() {
        let file = rows("heat/tubes.csv");
        for row in &file {
            let wall = row.number("wall_mm");
            let (family, by_wall) = match row.text("family") {
                "EN 1057 copper" => ("copper", true),
                "EN 10255 steel medium" => ("steel medium", false),
                "EN 10255 steel heavy" => ("steel heavy", false),
                "EN 10305-3 thin-wall press carbon steel" => ("press steel", true),
                "PEX EN ISO 15875 S5" | "PEX EN ISO 15875 S3.2" => ("PEX", true),
                "PE-RT/AL/PE-RT multilayer EN ISO 21003" => ("multilayer", true),
                other => panic!("{other}"),
            };
            let nominal = row.text("nominal");
            let name = if by_wall { format!("{family} {nominal} x {wall}") } else { format!("{family} {nominal}") };
            let tube = tube(&name).unwrap();
            assert_close(tube.outer_diameter, row.number("od_mm") / 1e3, 1e-14, &name);
            assert_close(tube.wall_thickness, wall / 1e3, 1e-14, &name);
            assert_close(tube.bore(), row.number("bore_mm") / 1e3, 1e-14, &name);
            assert_close(tube.content_per_metre(), row.number("litre_per_m") / 1e3, 5e-6, &name);
            if !row.text("kg_per_m").is_empty() {
                assert_close(tube.mass_per_metre(), row.number("kg_per_m"), 5e-6, &name);
            }
            if !row.text("kg_per_m_published").is_empty() {
                assert_close(tube.mass_per_metre(), row.number("kg_per_m_published"), 0.01, &name);
            }
            if !row.text("litre_per_m_published").is_empty() {
                assert!((tube.content_per_metre() * 1e3 - row.number("litre_per_m_published")).abs() < 6e-4, "{name}");
            }
        }
        assert_eq!(file.len(), 63);
    }

    #[test]
    fn names_are_one_of_a_kind_and_geometry_is_sound() {
        let mut names = tube_names();
        let count = names.len();
        names.sort();
        names.dedup();
        assert_eq!(names.len(), count);
        for name in names {
            let tube = tube(&name).unwrap();
            assert!(tube.bore() > 0.55 * tube.outer_diameter, "{name}");
            assert!(tube.wall_thickness > 0.01 * tube.outer_diameter, "{name}");
        }
        for (family, size) in all() {
            if size.name.contains('x') {
                let (outer, wall) = size.name.split_once('x').unwrap();
                assert_close(size.outer_diameter * 1e3, outer.parse().unwrap(), 1e-14, size.name);
                assert_close(size.wall_thickness * 1e3, wall.parse().unwrap(), 1e-14, size.name);
            } else {
                assert!(family.name.starts_with("steel"));
            }
        }
    }

    #[test]
    fn the_nearest_is_offered() {
        assert!(std::format!("{}", tube("copper 15x0.75").unwrap_err()).contains("copper 15x0.7"));
        assert!(std::format!("{}", tube("multi-layer 16x2.1").unwrap_err()).contains("multilayer 16x2"));
    }

    /// 22 mm by 0.9 mm of copper: 0.5966 cm² of wall.
    #[test]
    fn mass_and_heat_capacity_follow_from_the_wall() {
        let tube = tube("copper 22x0.9").unwrap();
        let area = core::f64::consts::PI * 0.0211 * 0.0009;
        assert_close(tube.mass_per_metre(), area * tube.wall_density, 1e-12, "mass");
        assert_close(tube.wall_capacity_per_metre(), area * tube.wall_density * tube.wall_heat_capacity, 1e-12, "heat capacity");
    }
}
