//! The calculations `opening_flow` and `opening_size`: air through an opening at a pressure
//! difference, free area and equivalent area kept apart.

use super::{CAUTION_OPEN_FLUE, CAUTION_VENTILATION};
use crate::calculation::{Calculation, Info, Source};
use crate::math;
use crate::no_settings;
use crate::quantity::types::{Area, MassDensity, Pressure, Ratio, Velocity, VolumeRate};
use crate::quantity::units::*;
use crate::quantity::{Equivalent, Free, Value, VentArea};
use crate::record::record;
use crate::working::{Working, step};

const LAW: &str = "Orifice equation for a small pressure difference; textbook";
const SHARP_EDGE: &str = "Definition of equivalent area (EN 13141-1, not opened): a sharp-edged opening that passes the same air";

/// An opening and the pressure across it.
#[record]
pub struct OpeningAtWork {
    /// Free area: the sum of the openings as measured.
    #[field("A", SQUARE_MILLIMETRE, 1.0..=1e8, usual = 500.0..=200000.0)]
    pub free_area: VentArea<Free>,
    /// Pressure difference across the opening.
    #[field("\\Delta p", PASCAL, 0.01..=500.0, usual = 1.0..=50.0)]
    pub pressure_difference: Pressure,
    /// Discharge coefficient of the opening; 0.61 for a sharp edge, less for grilles and meshes.
    #[field("C_d", ONE, 0.05..=1.0, default = 0.61, usual = 0.25..=0.75)]
    pub discharge_coefficient: Ratio,
    /// Discharge coefficient of the sharp edge that defines equivalent area.
    #[field("C_0", ONE, 0.55..=0.65, default = 0.61)]
    pub sharp_edge_coefficient: Ratio,
    /// Density of the air.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE, 0.3..=2.0, default = 1.2041, usual = 0.9..=1.35)]
    pub air_density: MassDensity,
}

/// What the opening passes.
#[record]
pub struct OpeningFlowResult {
    /// Flow of air.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR)]
    pub air_flow: VolumeRate,
    /// Equivalent area.
    #[field("A_{eq}", SQUARE_MILLIMETRE)]
    pub equivalent_area: VentArea<Equivalent>,
    /// Mean velocity over the free area.
    #[field("v", METRE_PER_SECOND)]
    pub mean_velocity: Velocity,
}

/// Air through an opening.
#[derive(Clone, Copy, Debug)]
pub struct OpeningFlow;

no_settings!(OpeningFlow);

impl Calculation for OpeningFlow {
    type Input = OpeningAtWork;
    type Output = OpeningFlowResult;
    const INFO: Info = Info {
        name: "opening_flow",
        title: "Air through an opening",
        summary: "Air that passes an opening of a free area at a pressure difference, and its equivalent area.",
        sources: &[Source::new(LAW, "flow"), Source::new(SHARP_EDGE, "equivalent area")],
        accuracy: "The discharge coefficient decides; grilles are seldom known to better than 10 %.",
        cautions: &[CAUTION_VENTILATION, CAUTION_OPEN_FLUE],
        checked_against: "trade/flue_vent.csv",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &OpeningAtWork, working: &mut W) -> OpeningFlowResult {
        step!(working, let loss_free: "v_0" = Velocity::from_si(math::sqrt(2.0 * input.pressure_difference.si() / input.air_density.si())), LAW);
        step!(working, let mean_velocity: "v" = input.discharge_coefficient * loss_free, "definition");
        step!(working, let air_flow: "\\dot V" as VolumeRate in CUBIC_METRE_PER_HOUR = input.free_area.plain() * mean_velocity, "continuity");
        step!(working, let equivalent_area: "A_{eq}" as Area in SQUARE_MILLIMETRE =
            input.free_area.plain() * input.discharge_coefficient / input.sharp_edge_coefficient, SHARP_EDGE);
        OpeningFlowResult { air_flow, equivalent_area: VentArea::new(equivalent_area), mean_velocity }
    }
}

/// A flow of air wanted through an opening.
#[record]
pub struct OpeningWanted {
    /// Flow of air wanted.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR, 0.01..=1e6, usual = 1.0..=1000.0)]
    pub air_flow: VolumeRate,
    /// Pressure difference that may be used up.
    #[field("\\Delta p", PASCAL, 0.01..=500.0, usual = 1.0..=50.0)]
    pub pressure_difference: Pressure,
    /// Discharge coefficient of the opening; 0.61 for a sharp edge, less for grilles and meshes.
    #[field("C_d", ONE, 0.05..=1.0, default = 0.61, usual = 0.25..=0.75)]
    pub discharge_coefficient: Ratio,
    /// Discharge coefficient of the sharp edge that defines equivalent area.
    #[field("C_0", ONE, 0.55..=0.65, default = 0.61)]
    pub sharp_edge_coefficient: Ratio,
    /// Density of the air.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE, 0.3..=2.0, default = 1.2041, usual = 0.9..=1.35)]
    pub air_density: MassDensity,
}

/// The opening that passes it.
#[record]
pub struct OpeningSizeResult {
    /// Free area needed.
    #[field("A", SQUARE_MILLIMETRE)]
    pub free_area: VentArea<Free>,
    /// Equivalent area needed.
    #[field("A_{eq}", SQUARE_MILLIMETRE)]
    pub equivalent_area: VentArea<Equivalent>,
}

/// Opening for a flow of air.
#[derive(Clone, Copy, Debug)]
pub struct OpeningSize;

no_settings!(OpeningSize);

impl Calculation for OpeningSize {
    type Input = OpeningWanted;
    type Output = OpeningSizeResult;
    const INFO: Info = Info {
        name: "opening_size",
        title: "Opening for a flow of air",
        summary: "Free and equivalent area that pass a flow of air at a pressure difference.",
        sources: &[Source::new(LAW, "area"), Source::new(SHARP_EDGE, "equivalent area")],
        accuracy: "The discharge coefficient decides; grilles are seldom known to better than 10 %.",
        cautions: &[CAUTION_VENTILATION, CAUTION_OPEN_FLUE],
        checked_against: "trade/flue_vent.csv",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &OpeningWanted, working: &mut W) -> OpeningSizeResult {
        step!(working, let loss_free: "v_0" = Velocity::from_si(math::sqrt(2.0 * input.pressure_difference.si() / input.air_density.si())), LAW);
        step!(working, let free_area: "A" as Area in SQUARE_MILLIMETRE = input.air_flow / (input.discharge_coefficient * loss_free), "continuity");
        step!(working, let equivalent_area: "A_{eq}" as Area in SQUARE_MILLIMETRE = input.air_flow / (input.sharp_edge_coefficient * loss_free), SHARP_EDGE);
        OpeningSizeResult { free_area: VentArea::new(free_area), equivalent_area: VentArea::new(equivalent_area) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::supply::trade::check;

    #[test]
    fn areas_agree_with_the_table_and_pass_the_flow() {
        check("trade/flue_vent.csv", "orifice_area_for_air_flow", |i, _| {
            let wanted = OpeningWanted {
                air_flow: VolumeRate::from_si(i.si("air_flow")),
                pressure_difference: Pressure::from_si(i.si("dp")),
                discharge_coefficient: Ratio::from_si(i.si("Cd")),
                air_density: MassDensity::from_si(i.si("rho")),
                ..OpeningWanted::unset()
            };
            let size = OpeningSize.evaluate(&wanted).unwrap().output;
            let opening = OpeningAtWork {
                free_area: size.free_area,
                pressure_difference: wanted.pressure_difference,
                discharge_coefficient: wanted.discharge_coefficient,
                air_density: wanted.air_density,
                ..OpeningAtWork::unset()
            };
            let flow = OpeningFlow.evaluate(&opening).unwrap().output;
            assert!((flow.air_flow.si() / wanted.air_flow.si() - 1.0).abs() < 1e-14);
            assert!((flow.equivalent_area.si() / size.equivalent_area.si() - 1.0).abs() < 1e-14);
            size.free_area.si()
        });
    }

    #[test]
    fn a_grille_has_less_equivalent_than_free_area() {
        let grille = OpeningAtWork {
            free_area: VentArea::from_si(0.01),
            pressure_difference: Pressure::from_si(4.0),
            discharge_coefficient: Ratio::from_si(0.4),
            ..OpeningAtWork::unset()
        };
        let got = OpeningFlow.evaluate(&grille).unwrap().output;
        assert!((got.equivalent_area.si() - 0.01 * 0.4 / 0.61).abs() < 1e-15);
        assert!(OpeningAtWork::read([("free_area", "100 cm2 equivalent")]).is_err());
    }
}
