//! `tube_run`: what a length of tube holds and weighs.

use super::Tube;
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Setting, Settings, Source};
use crate::quantity::Value;
use crate::quantity::types::{Area, HeatCapacity, Length, Mass, MassDensity, MassPerLength, SpecificHeatCapacity, Volume};
use crate::quantity::units::{KILOGRAM_PER_METRE, LITRE, LITRE_PER_METRE, MILLIMETRE};
use crate::record::record;
use crate::working::{Working, step};
use core::f64::consts::PI;

/// A length of tube.
#[record]
pub struct TubeRunInput {
    /// Length.
    #[field("L", METRE, 0.0..=100000.0, default = 1.0)]
    pub length: Length,
}

/// Its sizes, content and mass.
#[record]
pub struct TubeRunResult {
    /// Outside diameter.
    #[field("D", MILLIMETRE)]
    pub outer_diameter: Length,
    /// Wall thickness.
    #[field("s", MILLIMETRE)]
    pub wall_thickness: Length,
    /// Bore.
    #[field("d", MILLIMETRE)]
    pub bore: Length,
    /// Water content per metre.
    #[field("V'", LITRE_PER_METRE)]
    pub content_per_length: Area,
    /// Mass of the empty tube per metre.
    #[field("m'", KILOGRAM_PER_METRE)]
    pub mass_per_length: MassPerLength,
    /// Water content.
    #[field("V", LITRE)]
    pub content: Volume,
    /// Mass of the empty tube.
    #[field("m", KILOGRAM)]
    pub mass: Mass,
    /// Heat capacity of the tube without its water.
    #[field("C", KILOJOULE_PER_KELVIN)]
    pub wall_heat_capacity: HeatCapacity,
    /// Outside surface.
    #[field("A", SQUARE_METRE)]
    pub outer_surface: Area,
}

/// Sizes, content and mass of a length of tube.
#[derive(Clone, Copy, Debug)]
pub struct TubeRun {
    /// The tube.
    pub tube: Tube,
}

impl Context for TubeRun {
    const SETTINGS: &'static [Setting] = &[Tube::SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { tube: Tube::from_settings(settings)? })
    }
}

impl Calculation for TubeRun {
    type Input = TubeRunInput;
    type Output = TubeRunResult;
    const INFO: Info = Info {
        name: "tube_run",
        title: "Content and mass of a length of tube",
        summary: "Bore, water content, mass and heat capacity of a length of tube of a standard size or of any size.",
        sources: &[
            Source::new(
                "EN 1057, EN 10255, EN 10305-3, EN ISO 15875, EN ISO 21003; each size says how it was seen",
                "outside diameters and walls",
            ),
            Source::new("geometry", "content and mass"),
        ],
        accuracy: "Exact for the nominal size; walls have tolerances of 10 % and more, which move the content by a few percent.",
        cautions: &[],
        checked_against: "heat/tubes.csv",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &TubeRunInput, working: &mut W) -> TubeRunResult {
        let outer_diameter = Length::from_si(self.tube.outer_diameter);
        let wall_thickness = Length::from_si(self.tube.wall_thickness);
        let wall_density = MassDensity::from_si(self.tube.wall_density);
        let wall_specific = SpecificHeatCapacity::from_si(self.tube.wall_heat_capacity);
        step!(working, let bore: "d" in MILLIMETRE = outer_diameter - 2.0 * wall_thickness, "definition");
        step!(working, let content_per_length: "V'" in LITRE_PER_METRE = PI / 4.0 * (bore * bore), "geometry");
        step!(working, let mass_per_length: "m'" in KILOGRAM_PER_METRE = PI * (outer_diameter - wall_thickness) * wall_thickness * wall_density, "geometry");
        step!(working, let content: "V" in LITRE = content_per_length * input.length, "geometry");
        step!(working, let mass: "m" = mass_per_length * input.length, "geometry");
        step!(working, let wall_heat_capacity: "C" = HeatCapacity::from_si(mass.si() * wall_specific.si()), "definition");
        step!(working, let outer_surface: "A" = PI * outer_diameter * input.length, "geometry");
        TubeRunResult {
            outer_diameter,
            wall_thickness,
            bore,
            content_per_length,
            mass_per_length,
            content,
            mass,
            wall_heat_capacity,
            outer_surface,
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::catalogue::{Bare, evaluate};
    use crate::node::Node;
    use crate::water::tests::assert_close;

    #[test]
    fn by_name_and_by_value_agree() {
        let named = Node::from([("tube", Node::from("copper 22x0.9")), ("length", Node::from("10 m"))]);
        let by_name = evaluate("tube_run", &named, Bare::Refused).unwrap();
        assert_close(by_name.get("content").unwrap(), 3.204_74e-3, 1e-5, "content");
        let sizes = Node::from([("outer_diameter", "22 mm"), ("wall_thickness", "0.9 mm")]);
        let by_value = evaluate("tube_run", &Node::from([("tube", sizes), ("length", Node::from("10 m"))]), Bare::Refused).unwrap();
        assert_eq!(by_name.get("content"), by_value.get("content"));
        // The table's copper makes the masses in print, pure copper is 0.4 % heavier.
        assert_close(by_value.get("mass").unwrap() / by_name.get("mass").unwrap(), 8933.0 / 8900.0, 1e-12, "mass");
    }

    #[test]
    fn impossible_tubes_are_refused() {
        for (outer, wall) in [("22 mm", "11 mm"), ("22 mm", "0 mm"), ("0.5 mm", "0.1 mm"), ("3 m", "5 mm")] {
            let sizes = Node::from([("outer_diameter", outer), ("wall_thickness", wall)]);
            assert!(evaluate("tube_run", &Node::from([("tube", sizes)]), Bare::Refused).is_err(), "{outer} {wall}");
        }
        assert!(evaluate("tube_run", &Node::from([("length", "1 m")]), Bare::Refused).is_err());
    }
}
