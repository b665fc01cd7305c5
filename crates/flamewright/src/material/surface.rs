//! Surface finishes and how well they radiate.

use super::name::find;
use crate::Error;

/// A finish and its emissivity for long-wave radiation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surface {
    /// Name to look it up by.
    pub name: &'static str,
    /// Hemispherical emissivity to reckon with.
    pub emissivity: f64,
    /// Lowest and highest emissivity in print.
    pub spread: (f64, f64),
    /// Where the numbers come from.
    pub source: &'static str,
}

/// The finishes.
pub const SURFACES: &[Surface] = &[
    Surface { name: "polished copper", emissivity: 0.04, spread: (0.03, 0.05), source: "textbook range, from memory" },
    Surface { name: "tarnished copper", emissivity: 0.60, spread: (0.5, 0.8), source: "textbook range, from memory" },
    Surface { name: "paint", emissivity: 0.90, spread: (0.88, 0.96), source: "gloss or matt, any colour: textbook range, from memory" },
    Surface { name: "black steel", emissivity: 0.90, spread: (0.8, 0.95), source: "common practice, no source" },
    Surface { name: "cast iron surface", emissivity: 0.70, spread: (0.6, 0.8), source: "Cengel, problem 3-94; the range is from memory" },
    Surface { name: "aluminium paint", emissivity: 0.35, spread: (0.27, 0.5), source: "textbook range, from memory" },
    Surface { name: "polished aluminium cladding", emissivity: 0.05, spread: (0.04, 0.1), source: "textbook, from memory" },
    Surface {
        name: "bright galvanised steel",
        emissivity: 0.26,
        spread: (0.2, 0.3),
        source: "ISO 12241:2008 Table 2, from memory; the range is common practice",
    },
    Surface { name: "plastic", emissivity: 0.90, spread: (0.85, 0.95), source: "common practice, no source" },
    Surface {
        name: "insulation jacket",
        emissivity: 0.90,
        spread: (0.85, 0.95),
        source: "canvas, foam skin or paper: common practice, no source",
    },
];

/// A finish by its name.
///
/// # Errors
/// An unknown name; the refusal offers the nearest.
pub fn surface(name: &str) -> Result<&'static Surface, Error> {
    find("surface", name, SURFACES.iter(), |entry| entry.name.into())
}

#[cfg(test)]
mod tests {
    use super::*;
    use flamewright_reference::rows;

    #[test]
    fn every_finish_of_the_reference_table_is_there() {
        let names = [
            ("copper polished", "polished copper"),
            ("copper tarnished / oxidised", "tarnished copper"),
            ("gloss or matt paint any colour", "paint"),
            ("cast iron", "cast iron surface"),
            ("aluminium paint", "aluminium paint"),
            ("polished aluminium cladding", "polished aluminium cladding"),
            ("galvanised steel bright", "bright galvanised steel"),
        ];
        let file = rows("heat/materials.csv");
        for (printed, ours) in names {
            let row = file.iter().find(|row| row.text("material") == printed).unwrap();
            assert_eq!(surface(ours).unwrap().emissivity, row.number("emissivity"), "{ours}");
        }
        for entry in SURFACES {
            assert!(entry.spread.0 <= entry.emissivity && entry.emissivity <= entry.spread.1, "{}", entry.name);
        }
    }
}
