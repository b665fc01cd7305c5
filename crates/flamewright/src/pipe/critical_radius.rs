//! The calculation `critical_radius`: where insulation begins to help.

use super::math;
use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::no_settings;
use crate::quantity::Value;
use crate::quantity::types::{HeatTransfer, Length, LengthThermalResistance, Ratio, ThermalConductivity};
use crate::quantity::units::MILLIMETRE;
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};
use core::f64::consts::PI;

/// A pipe, its insulation, and a film outside that is taken as fixed.
#[record]
pub struct CriticalRadiusInput {
    /// Outside diameter of the bare pipe.
    #[field("d_o", MILLIMETRE, 0.1..=700.0, usual = 6.0..=170.0)]
    pub outside_diameter: Length,
    /// Thickness of the insulation.
    #[field("s_i", MILLIMETRE, 0.0..=500.0, default = 0.0)]
    pub insulation_thickness: Length,
    /// Thermal conductivity of the insulation.
    #[field("\\lambda_i", WATT_PER_METRE_KELVIN, 0.005..=5.0, usual = 0.015..=0.1)]
    pub insulation_conductivity: ThermalConductivity,
    /// Coefficient outside, convection and radiation together.
    #[field("h", WATT_PER_SQUARE_METRE_KELVIN, 0.1..=1000.0, default = 10.0, usual = 4.0..=50.0)]
    pub outside_coefficient: HeatTransfer,
}

/// Where insulation begins to help, and what it does here.
#[record]
pub struct CriticalRadiusResult {
    /// Outer radius of the insulation at which the loss is greatest.
    #[field("r_c", MILLIMETRE)]
    pub critical_radius: Length,
    /// Loss per metre of run and kelvin between pipe and air, with this insulation.
    #[field("q'", WATT_PER_METRE_KELVIN)]
    pub loss_per_kelvin: ThermalConductivity,
    /// The same of the bare pipe.
    #[field("q'_0", WATT_PER_METRE_KELVIN)]
    pub bare_loss_per_kelvin: ThermalConductivity,
    /// This loss over the bare pipe's.
    #[field("q'/q'_0", ONE)]
    pub loss_ratio: Ratio,
    /// The greatest loss per kelvin that any thickness of this insulation gives.
    #[field("q'_{max}", WATT_PER_METRE_KELVIN)]
    pub greatest_loss_per_kelvin: ThermalConductivity,
}

/// Critical radius of insulation.
#[derive(Clone, Copy, Debug)]
pub struct CriticalRadius;

no_settings!(CriticalRadius);

rules! {
    notice INSULATION_WARMS on "insulation_thickness": "with this insulation the pipe loses more than bare; it takes a better or a thicker one";
}

impl Calculation for CriticalRadius {
    type Input = CriticalRadiusInput;
    type Output = CriticalRadiusResult;
    const INFO: Info = Info {
        name: "critical_radius",
        title: "Critical radius of insulation",
        summary: "The outer radius up to which insulation around a thin pipe raises the loss instead of lowering it, and the loss per \
                  kelvin at a thickness, with a fixed coefficient outside.",
        sources: &[Source::new(
            "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, section 3.3.1, from memory",
            "critical radius k/h",
        )],
        accuracy: "Exact for a fixed coefficient outside; the real one falls with the diameter and rises with the temperature.",
        cautions: &[],
        checked_against: "heat/critical_radius.csv, heat/published_heat_examples.csv (E08)",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn review(&self, _input: &CriticalRadiusInput, output: &CriticalRadiusResult) -> Raised {
        Raised::NONE.when(INSULATION_WARMS, output.loss_ratio.si() > 1.0)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &CriticalRadiusInput, working: &mut W) -> CriticalRadiusResult {
        let (diameter, conductivity, coefficient) = (input.outside_diameter, input.insulation_conductivity, input.outside_coefficient);
        step!(working, let critical_radius: "r_c" as Length in MILLIMETRE = input.insulation_conductivity / input.outside_coefficient, "k/h");
        step!(working, let insulated_diameter: "D" in MILLIMETRE = input.outside_diameter + 2.0 * input.insulation_thickness, "geometry");
        step!(working, let insulation_resistance: "R_i" as LengthThermalResistance = math::ln(insulated_diameter / input.outside_diameter) / (2.0 * PI * input.insulation_conductivity), "Fourier's law for a shell");
        step!(working, let outside_resistance: "R_o" as LengthThermalResistance = (PI * insulated_diameter * input.outside_coefficient).recip(), "definition");
        step!(working, let loss_per_kelvin: "q'" as ThermalConductivity = (insulation_resistance + outside_resistance).recip(), "resistances in series");
        step!(working, let bare_loss_per_kelvin: "q'_0" as ThermalConductivity = PI * input.outside_diameter * input.outside_coefficient, "definition");
        step!(working, let loss_ratio: "q'/q'_0" = loss_per_kelvin / bare_loss_per_kelvin, "definition");
        // At the critical radius the film's resistance is 1/(2 pi k); a thicker pipe loses most when bare.
        let worst_diameter = Length::from_si((2.0 * critical_radius.si()).max(diameter.si()));
        let worst_resistance =
            math::ln(worst_diameter / diameter).si() / (2.0 * PI * conductivity.si()) + 1.0 / (PI * worst_diameter.si() * coefficient.si());
        CriticalRadiusResult {
            critical_radius,
            loss_per_kelvin,
            bare_loss_per_kelvin,
            loss_ratio,
            greatest_loss_per_kelvin: ThermalConductivity::from_si(1.0 / worst_resistance),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use flamewright_reference::rows;

    fn input(diameter: f64, thickness: f64, conductivity: f64, coefficient: f64) -> CriticalRadiusInput {
        CriticalRadiusInput {
            outside_diameter: Length::from_si(diameter * 1e-3),
            insulation_thickness: Length::from_si(thickness * 1e-3),
            insulation_conductivity: ThermalConductivity::from_si(conductivity),
            outside_coefficient: HeatTransfer::from_si(coefficient),
        }
    }

    #[test]
    fn agrees_with_the_reference() {
        for row in rows("heat/critical_radius.csv") {
            let result = CriticalRadius
                .evaluate(&input(
                    row.number("od_mm"),
                    row.number("insulation_mm"),
                    row.number("k_insulation_W_mK"),
                    row.number("h_outside_W_m2K"),
                ))
                .unwrap();
            for (got, column) in [
                (result.critical_radius.si() * 1e3, "critical_radius_mm"),
                (result.loss_per_kelvin.si(), "q_per_K_W_mK"),
                (result.loss_ratio.si(), "q_over_bare"),
                (result.greatest_loss_per_kelvin.si(), "max_possible_q_per_K_W_mK"),
            ] {
                assert!((got / row.number(column) - 1.0).abs() < 1e-6, "{} {column}: {got}", row.place);
            }
            assert_eq!(result.notices().iter().any(|n| n.code == "INSULATION_WARMS"), result.loss_ratio.si() > 1.0);
        }
    }

    #[test]
    fn the_textbook_example_is_met_and_no_thickness_beats_the_critical() {
        // Incropera & DeWitt, Example 3.5: k = 0.055, h = 5 give 11 mm.
        let example = CriticalRadius.evaluate(&input(10.0, 6.0, 0.055, 5.0)).unwrap();
        assert!((example.critical_radius.si() - 0.011).abs() < 1e-15);
        assert!((example.loss_per_kelvin.si() / example.greatest_loss_per_kelvin.si() - 1.0).abs() < 1e-14);
        for thickness in 0..60 {
            let result = CriticalRadius.evaluate(&input(10.0, f64::from(thickness), 0.055, 5.0)).unwrap();
            assert!(result.loss_per_kelvin.si() <= result.greatest_loss_per_kelvin.si() * (1.0 + 1e-12));
        }
    }
}
