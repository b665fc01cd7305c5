//! Resistance of fittings and valves, by name.

use crate::Error;
use crate::convection::friction::colebrook;
use crate::material::find;
use crate::math::pow;

/// How a fitting's resistance is published.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Resistance {
    /// Multiple `n` of the fully turbulent friction factor of its size: `K = n f_T` (Crane).
    LengthRatio(f64),
    /// Loss coefficient `K` on the velocity pressure.
    Coefficient(f64),
    /// Length of its own tube with the same drop, in m, for one bore in m.
    EquivalentLength {
        /// Length in m.
        length: f64,
        /// Bore in m for which it is given.
        bore: f64,
    },
}

/// A fitting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fitting {
    /// Name to look it up by.
    pub name: &'static str,
    /// Its resistance.
    pub resistance: Resistance,
    /// Where the number comes from.
    pub source: &'static str,
}

/// Friction factor in fully turbulent flow of commercial steel pipe of a bore in m: the `f_T` that
/// Crane's multiples go with, whatever the tube is made of.
///
/// Crane TP-410M (2009) prints it for nominal sizes to two or three digits; between them this is
/// the curve of the library `fluids` 1.3.1, which rounds to the printed ones: Colebrook's equation
/// at a Reynolds number of `7.5e6 D` and a roughness of `3.41268e-5 D^-1.0112` of the bore.
pub fn fully_turbulent_friction_factor(bore: f64) -> f64 {
    colebrook(7.5e6 * bore, 3.412_682_535_292_5e-5 * pow(bore, -1.0112))
}

impl Fitting {
    /// Loss coefficient `K` and equivalent length in m of this fitting in a tube of a bore in m; one
    /// of the two is zero.
    pub fn loss(&self, bore: f64) -> (f64, f64) {
        match self.resistance {
            Resistance::LengthRatio(ratio) => (ratio * fully_turbulent_friction_factor(bore), 0.0),
            Resistance::Coefficient(coefficient) => (coefficient, 0.0),
            Resistance::EquivalentLength { length, .. } => (0.0, length),
        }
    }
}

const CRANE: &str = "Crane TP-410M (2009), multiple of f_T, as evaluated with fluids 1.3.1";
const CRANE_MEMORY: &str = "Crane TP-410M, multiple of f_T, from memory";
const CRANE_BEND: &str = "Crane TP-410M (2009) bend table, smoothed by the curve of fluids 1.3.1 (12 is printed at 2 and 3 diameters)";
const CENGEL: &str = "Cengel & Cimbala, Fluid Mechanics, Table 8-4, from memory";
const BS_6891: &str = "BS 6891:2015 equivalent length for gas, seen in a secondary quotation";

const fn ratio(name: &'static str, multiple: f64, source: &'static str) -> Fitting {
    Fitting { name, resistance: Resistance::LengthRatio(multiple), source }
}
const fn coefficient(name: &'static str, k: f64) -> Fitting {
    Fitting { name, resistance: Resistance::Coefficient(k), source: CENGEL }
}
const fn length(name: &'static str, length: f64, bore: f64) -> Fitting {
    Fitting { name, resistance: Resistance::EquivalentLength { length, bore }, source: BS_6891 }
}

/// The fittings.
pub const FITTINGS: &[Fitting] = &[
    ratio("elbow 90", 30.0, CRANE),
    ratio("elbow 45", 16.0, CRANE_MEMORY),
    ratio("tee through", 20.0, CRANE),
    ratio("tee branch", 60.0, CRANE),
    ratio("globe valve", 340.0, CRANE),
    ratio("ball valve", 3.0, CRANE),
    ratio("gate valve", 8.0, CRANE_MEMORY),
    ratio("angle valve", 150.0, CRANE_MEMORY),
    ratio("swing check valve", 100.0, CRANE_MEMORY),
    ratio("bend 90 radius 1", 20.0, CRANE_BEND),
    ratio("bend 90 radius 1.5", 14.060_42, CRANE_BEND),
    ratio("bend 90 radius 2", 11.884_86, CRANE_BEND),
    ratio("bend 90 radius 3", 12.121_226, CRANE_BEND),
    ratio("bend 90 radius 4", 13.936_5, CRANE_BEND),
    ratio("bend 90 radius 6", 17.118_13, CRANE_BEND),
    coefficient("smooth bend 90 flanged", 0.3),
    coefficient("smooth bend 90 threaded", 0.9),
    coefficient("mitre bend 90", 1.1),
    coefficient("mitre bend 90 with vanes", 0.2),
    coefficient("threaded elbow 45", 0.4),
    coefficient("return bend 180 flanged", 0.2),
    coefficient("return bend 180 threaded", 1.5),
    coefficient("tee branch flanged", 1.0),
    coefficient("tee branch threaded", 2.0),
    coefficient("tee through flanged", 0.2),
    coefficient("tee through threaded", 0.9),
    coefficient("threaded union", 0.08),
    coefficient("globe valve open", 10.0),
    coefficient("angle valve open", 5.0),
    coefficient("ball valve open", 0.05),
    coefficient("swing check valve open", 2.0),
    coefficient("gate valve open", 0.2),
    coefficient("gate valve quarter closed", 0.3),
    coefficient("gate valve half closed", 2.1),
    coefficient("gate valve three quarters closed", 17.0),
    coefficient("inlet sharp", 0.5),
    coefficient("inlet rounded", 0.03),
    coefficient("inlet re-entrant", 0.8),
    coefficient("outlet", 1.0),
    length("gas bend 45 copper 15 mm", 0.15, 0.0136),
    length("gas bend 90 copper 15 mm", 0.2, 0.0136),
    length("gas bend 45 copper 22 mm", 0.2, 0.0202),
    length("gas bend 90 copper 22 mm", 0.3, 0.0202),
];

/// A fitting by its name.
///
/// # Errors
/// An unknown name; the refusal offers the nearest.
pub fn fitting(name: &str) -> Result<&'static Fitting, Error> {
    find("fitting", name, FITTINGS.iter(), |entry| entry.name.into())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::water::tests::assert_close;
    use flamewright_reference::rows;

    #[test]
    fn reference_rows() {
        let file = rows("heat/fittings.csv");
        for row in &file {
            let name = match row.text("fitting") {
                "90deg standard elbow (30 fT)" => "elbow 90",
                "tee run-through (20 fT)" => "tee through",
                "tee branch (60 fT)" => "tee branch",
                "globe valve full bore (340 fT)" => "globe valve",
                "ball valve full bore (3 fT)" => "ball valve",
                "smooth bend r/d=3 (12 fT)" => "bend 90 radius 3",
                "90deg smooth bend flanged" => "smooth bend 90 flanged",
                "90deg miter without vanes" => "mitre bend 90",
                "90deg miter with vanes" => "mitre bend 90 with vanes",
                "180deg return flanged" => "return bend 180 flanged",
                "180deg return threaded" => "return bend 180 threaded",
                "tee branch flow threaded" => "tee branch threaded",
                "tee line flow flanged" => "tee through flanged",
                "threaded union" => "threaded union",
                "globe valve open" => "globe valve open",
                "ball valve open" => "ball valve open",
                "swing check valve" => "swing check valve open",
                "gate valve 1/4 closed" => "gate valve quarter closed",
                "gate valve 1/2 closed" => "gate valve half closed",
                "sharp-edged inlet" => "inlet sharp",
                "well-rounded inlet" => "inlet rounded",
                "45deg bend copper 15 mm" => "gas bend 45 copper 15 mm",
                "90deg bend copper 15 mm" => "gas bend 90 copper 15 mm",
                "45deg bend copper 22 mm" => "gas bend 45 copper 22 mm",
                "90deg bend copper 22 mm" => "gas bend 90 copper 22 mm",
                other => panic!("{other}"),
            };
            let fitting = fitting(name).unwrap();
            let bore = row.maybe("bore_mm").unwrap_or(20.0) / 1e3;
            let (k, equivalent) = fitting.loss(bore);
            if let Some(expected) = row.maybe("f_T") {
                assert_close(fully_turbulent_friction_factor(bore), expected, 1e-5, &row.place);
            }
            if let Some(expected) = row.maybe("K") {
                assert_close(k, expected, 1e-5, &row.place);
            } else {
                assert_eq!(equivalent, row.number("equivalent_length_m"), "{}", row.place);
                assert_close(equivalent / bore, row.number("L_over_D"), 1e-5, &row.place);
            }
        }
        assert_eq!(file.len(), 43);
    }

    #[test]
    fn the_nearest_is_offered() {
        assert!(std::format!("{}", fitting("elbow 60").unwrap_err()).contains("elbow 90"));
    }
}
