//! Metals and other solid walls, and insulation.

use super::name::find;
use crate::Error;

/// A solid of which pipes, emitters and heat exchangers are made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Metal {
    /// Name to look it up by.
    pub name: &'static str,
    /// Density in kg/m³; NaN where none is given.
    pub density: f64,
    /// Specific heat capacity in J/(kg K); NaN where none is given.
    pub specific_heat_capacity: f64,
    /// Lowest and highest specific heat capacity in print, where prints differ enough to matter.
    pub specific_heat_capacity_spread: Option<(f64, f64)>,
    /// Thermal conductivity in W/(m K).
    pub thermal_conductivity: f64,
    /// Where the numbers come from.
    pub source: &'static str,
}

const fn solid(name: &'static str, density: f64, specific_heat_capacity: f64, thermal_conductivity: f64, source: &'static str) -> Metal {
    Metal { name, density, specific_heat_capacity, specific_heat_capacity_spread: None, thermal_conductivity, source }
}

const fn cast_iron(
    name: &'static str,
    density: f64,
    specific_heat_capacity: f64,
    thermal_conductivity: f64,
    source: &'static str,
) -> Metal {
    Metal { name, density, specific_heat_capacity, specific_heat_capacity_spread: Some((420.0, 545.0)), thermal_conductivity, source }
}

/// Pure copper.
pub const COPPER: Metal = solid(
    "copper",
    8933.0,
    385.0,
    401.0,
    "pure copper, 300 K: Kutz, Mechanical Engineers' Handbook vol. 4, heat transfer Table 1; Incropera Table A.1",
);
/// Pure aluminium.
pub const ALUMINIUM: Metal = solid("aluminium", 2702.0, 903.0, 237.0, "pure aluminium, 300 K: Kutz vol. 4 Table 1; Incropera Table A.1");
/// Plain carbon steel.
pub const CARBON_STEEL: Metal = solid("carbon steel", 7854.0, 434.0, 60.5, "plain carbon steel, 300 K: Incropera Table A.1, from memory");

/// The metals, and the plastics of which tube walls are made.
///
/// Heat capacities hold near room temperature; iron and steel gain some 4 % by 80 °C. For cast
/// iron, prints run from 420 to 545 J/(kg K): the sums that need it take it as an input, and this
/// table offers the two ends under their own names rather than one truth.
pub const METALS: &[Metal] = &[
    COPPER,
    solid("iron", 7870.0, 447.0, 80.2, "pure iron, 300 K: Kutz vol. 4 Table 1; Incropera Table A.1"),
    ALUMINIUM,
    CARBON_STEEL,
    solid("stainless steel 304", 7900.0, 477.0, 14.9, "AISI 304, 300 K: Incropera Table A.1, from memory"),
    cast_iron("cast iron 4 % C", 7272.0, 420.0, 52.0, "20 °C: Holman Table A-2, from memory"),
    cast_iron("grey cast iron", 7200.0, 540.0, 50.0, "Callister Table B (544 J/(kg K) for grey iron), from memory"),
    solid("brass 70/30", 8530.0, 380.0, 110.0, "cartridge brass, 300 K: Incropera Table A.1, from memory"),
    solid("cast aluminium alloy", 2790.0, 883.0, 168.0, "alloy 195 cast: Incropera Table A.1, seen in a reproduction"),
    solid("PEX", 940.0, 2300.0, 0.4, "common practice, no source; PE-RT the same"),
    solid("multilayer wall", f64::NAN, f64::NAN, 0.43, "pipe maker's data sheet to EN ISO 21003-2"),
];

/// A metal by its name.
///
/// # Errors
/// An unknown name; the refusal offers the nearest.
pub fn metal(name: &str) -> Result<&'static Metal, Error> {
    find("metal", name, METALS.iter(), |entry| entry.name.into())
}

/// An insulation with its conductivity at one or two mean temperatures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Insulation {
    /// Name to look it up by.
    pub name: &'static str,
    /// Density in kg/m³; NaN where none is given.
    pub density: f64,
    /// Mean temperature in K and conductivity in W/(m K) there.
    pub lower_point: (f64, f64),
    /// A second such pair at a higher temperature, where one is published.
    pub upper_point: Option<(f64, f64)>,
    /// Where the numbers come from.
    pub source: &'static str,
}

impl Insulation {
    /// Thermal conductivity in W/(m K) at the mean temperature of the insulation in K.
    ///
    /// Straight line through the two published points, carried on beyond them; constant where only
    /// one is published.
    #[inline]
    pub fn thermal_conductivity(&self, mean_temperature: f64) -> f64 {
        let (t1, k1) = self.lower_point;
        match self.upper_point {
            Some((t2, k2)) => k1 + (k2 - k1) * ((mean_temperature - t1) / (t2 - t1)),
            // Multiplied by one so that a temperature that is not a number gives none.
            None => k1 + 0.0 * mean_temperature,
        }
    }
}

const BOOKLET: &str = "UK Fuel Efficiency Booklet 8, seen as an extracted table";
const COMMON: &str = "common practice, no source";

/// The insulations.
pub const INSULATIONS: &[Insulation] = &[
    Insulation { name: "mineral wool", density: 48.0, lower_point: (323.15, 0.035), upper_point: Some((373.15, 0.044)), source: BOOKLET },
    Insulation { name: "polyisocyanurate", density: 50.0, lower_point: (323.15, 0.023), upper_point: None, source: BOOKLET },
    Insulation {
        name: "calcium silicate",
        density: 210.0,
        lower_point: (373.15, 0.055),
        upper_point: None,
        source: "UK Fuel Efficiency Booklet 8, seen as an extracted table whose columns had to be guessed",
    },
    Insulation {
        name: "elastomeric foam",
        density: 60.0,
        lower_point: (273.15, 0.036),
        upper_point: Some((313.15, 0.040)),
        source: COMMON,
    },
    Insulation { name: "polyethylene foam", density: 30.0, lower_point: (313.15, 0.040), upper_point: None, source: COMMON },
    Insulation { name: "phenolic foam", density: 37.0, lower_point: (323.15, 0.025), upper_point: None, source: COMMON },
];

/// An insulation by its name.
///
/// # Errors
/// An unknown name; the refusal offers the nearest.
pub fn insulation(name: &str) -> Result<&'static Insulation, Error> {
    find("insulation", name, INSULATIONS.iter(), |entry| entry.name.into())
}

#[cfg(test)]
mod tests {
    use super::*;
    use flamewright_reference::rows;

    #[test]
    fn every_row_of_the_reference_table_is_there() {
        let names = [
            ("copper pure 300 K", "copper"),
            ("iron pure 300 K", "iron"),
            ("aluminium pure 300 K", "aluminium"),
            ("carbon steel plain 300 K", "carbon steel"),
            ("stainless AISI 304 300 K", "stainless steel 304"),
            ("cast iron 4% C 20 C", "cast iron 4 % C"),
            ("grey cast iron", "grey cast iron"),
            ("brass 70/30 300 K", "brass 70/30"),
            ("aluminium alloy cast (Si)", "cast aluminium alloy"),
            ("PEX / PE-RT", "PEX"),
            ("multilayer pipe wall", "multilayer wall"),
        ];
        let file = rows("heat/materials.csv");
        for (printed, ours) in names {
            let row = file.iter().find(|row| row.text("material") == printed).unwrap();
            let metal = metal(ours).unwrap();
            assert_eq!(metal.thermal_conductivity, row.number("k_W_mK"), "{ours}");
            if !row.text("cp_J_kgK").is_empty() {
                assert_eq!(metal.density, row.number("density_kg_m3"), "{ours}");
                assert_eq!(metal.specific_heat_capacity, row.number("cp_J_kgK"), "{ours}");
            }
        }
        let insulations = [
            ("mineral wool 48 kg/m3 at 50 C", "mineral wool", 323.15),
            ("mineral wool 48 kg/m3 at 100 C", "mineral wool", 373.15),
            ("polyisocyanurate at 50 C", "polyisocyanurate", 323.15),
            ("calcium silicate 210 kg/m3 at 100 C", "calcium silicate", 373.15),
        ];
        for (printed, ours, kelvin) in insulations {
            let row = file.iter().find(|row| row.text("material") == printed).unwrap();
            let insulation = insulation(ours).unwrap();
            assert!((insulation.thermal_conductivity(kelvin) - row.number("k_W_mK")).abs() < 1e-15, "{ours}");
            assert_eq!(insulation.density, row.number("density_kg_m3"), "{ours}");
        }
    }

    #[test]
    fn conductivity_runs_straight_between_its_points() {
        let wool = insulation("Mineral Wool").unwrap();
        assert!((wool.thermal_conductivity(348.15) - 0.0395).abs() < 1e-15);
        for entry in INSULATIONS {
            assert!(entry.thermal_conductivity(f64::NAN).is_nan());
            assert!(entry.thermal_conductivity(300.0) > 0.015 && entry.thermal_conductivity(300.0) < 0.06);
        }
    }

    #[test]
    fn the_nearest_is_offered() {
        assert!(std::format!("{}", metal("coppr").unwrap_err()).contains("copper"));
        assert!(std::format!("{}", insulation("rock wool").unwrap_err()).contains("mineral wool"));
    }
}
