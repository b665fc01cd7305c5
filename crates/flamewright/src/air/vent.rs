//! The calculation `vent_free_area`: the free area of a ventilator from a tape.

use super::CAUTION_VENTILATION;
use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::quantity::types::{Area, Length, Ratio};
use crate::quantity::units::*;
use crate::quantity::{Free, Overall, Value, VentArea};
use crate::record::record;
use crate::supply::or;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A ventilator as measured.
#[record]
pub struct VentMeasured {
    /// Width over all of the opening in the wall or of the grille's core.
    #[field("b", MILLIMETRE, 1.0..=10000.0, usual = 50.0..=1000.0)]
    pub width: Length,
    /// Height over all.
    #[field("h", MILLIMETRE, 1.0..=10000.0, usual = 50.0..=1000.0)]
    pub height: Length,
    /// Number of like openings within.
    #[field("N", ONE, 1.0..=100000.0, absent = "a free share is stated")]
    pub opening_count: Ratio,
    /// Width of one opening, clear.
    #[field("b_1", MILLIMETRE, 0.1..=10000.0, absent = "a free share is stated")]
    pub opening_width: Length,
    /// Height of one opening, clear.
    #[field("h_1", MILLIMETRE, 0.1..=10000.0, absent = "a free share is stated")]
    pub opening_height: Length,
    /// Free over overall area as its maker states it; leave it out where the openings are measured.
    #[field("\\varphi", PERCENT, 1.0..=100.0, absent = "the openings are measured", usual = 20.0..=90.0)]
    pub free_share: Ratio,
}

/// Its areas.
#[record]
pub struct VentAreas {
    /// Overall area, which says nothing of the air that passes.
    #[field("A_0", SQUARE_MILLIMETRE)]
    pub overall_area: VentArea<Overall>,
    /// Free area: the sum of the openings.
    #[field("A", SQUARE_MILLIMETRE)]
    pub free_area: VentArea<Free>,
    /// Free over overall area.
    #[field("\\varphi", PERCENT)]
    pub free_share: Ratio,
}

/// Free area of a ventilator.
#[derive(Clone, Copy, Debug)]
pub struct VentFreeArea;

no_settings!(VentFreeArea);

rules! {
    refuse OPENINGS_UNKNOWN on "opening_count": "state the number, width and height of the openings, or the free share, not both";
    refuse FREE_ABOVE_OVERALL on "free_area": "the openings together exceed the overall area; measure again";
    notice NARROW on "opening_width": "openings narrower than 5 mm clog with lint and paint; local rules may forbid them";
}

impl Calculation for VentFreeArea {
    type Input = VentMeasured;
    type Output = VentAreas;
    const INFO: Info = Info {
        name: "vent_free_area",
        title: "Free area of a ventilator",
        summary: "Free area of a ventilator from its openings or from its maker's share, kept apart from its overall area.",
        sources: &[Source::new("Geometry", "areas"), Source::new("common practice, no source", "openings of at least 5 mm")],
        accuracy: "As measured. The areas of sleeves, cowls and screens in series are not in it: the tightest of them counts.",
        cautions: &[CAUTION_VENTILATION],
        checked_against: "Geometry alone; no outside check exists.",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &VentMeasured) -> Raised {
        let missing = [input.opening_count.si(), input.opening_width.si(), input.opening_height.si()].map(f64::is_nan);
        let all_missing = missing[0] & missing[1] & missing[2];
        let some_missing = missing[0] | missing[1] | missing[2];
        let share = !input.free_share.si().is_nan();
        let least = if input.opening_width.si() < input.opening_height.si() { input.opening_width } else { input.opening_height };
        Raised::NONE.when(OPENINGS_UNKNOWN, (share & !all_missing) | (!share & some_missing)).when(NARROW, least.si() < 5e-3)
    }

    #[inline(always)]
    fn review(&self, _input: &VentMeasured, output: &VentAreas) -> Raised {
        Raised::NONE.when(FREE_ABOVE_OVERALL, output.free_area.si() > output.overall_area.si() * (1.0 + 1e-12))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &VentMeasured, working: &mut W) -> VentAreas {
        step!(working, let overall_area: "A_0" as Area in SQUARE_MILLIMETRE = input.width * input.height, "geometry");
        let measured: Area = input.opening_count * input.opening_width * input.opening_height;
        let stated: Area = input.free_share * overall_area;
        let free_area = Area::from_si(or(stated.si(), measured.si()));
        step!(working, let free_share: "\\varphi" as Ratio in PERCENT = free_area / overall_area, "definition");
        VentAreas { overall_area: VentArea::new(overall_area), free_area: VentArea::new(free_area), free_share }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;

    fn grille() -> VentMeasured {
        VentMeasured {
            width: Length::from_si(0.225),
            height: Length::from_si(0.15),
            opening_count: Ratio::from_si(9.0),
            opening_width: Length::from_si(0.2),
            opening_height: Length::from_si(0.008),
            ..VentMeasured::unset()
        }
    }

    #[test]
    fn slots_add_up_and_stay_within_the_frame() {
        let got = VentFreeArea.evaluate(&grille()).unwrap().output;
        assert!((got.free_area.si() - 0.0144).abs() < 1e-15 && (got.overall_area.si() - 0.03375).abs() < 1e-15);
        assert!((got.free_share.si() - 0.0144 / 0.03375).abs() < 1e-15);
        assert!(VentFreeArea.evaluate(&VentMeasured { opening_count: Ratio::from_si(30.0), ..grille() }).is_err());
    }

    #[test]
    fn a_share_will_do_instead_but_not_beside() {
        let none = f64::NAN;
        let by_share = VentMeasured {
            opening_count: Ratio::from_si(none),
            opening_width: Length::from_si(none),
            opening_height: Length::from_si(none),
            free_share: Ratio::from_si(0.45),
            ..grille()
        };
        assert!((VentFreeArea.evaluate(&by_share).unwrap().output.free_area.si() - 0.45 * 0.03375).abs() < 1e-15);
        assert!(VentFreeArea.evaluate(&VentMeasured { free_share: Ratio::from_si(0.45), ..grille() }).is_err());
        assert!(VentFreeArea.evaluate(&VentMeasured { opening_width: Length::from_si(none), ..grille() }).is_err());
    }
}
