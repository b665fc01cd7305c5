//! The calculation `friction_factor`: what the Moody diagram shows.

use super::friction::{LAMINAR_BELOW, TURBULENT_FROM, TurbulentFriction, friction_band, friction_factor};
use crate::Error;
use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::quantity::Value;
use crate::quantity::types::Ratio;
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};

/// Flow in a full round pipe.
#[record]
pub struct FrictionFactorInput {
    /// Reynolds number: velocity times bore over kinematic viscosity.
    #[field("Re", ONE, 1e-3..=1e9, usual = 10.0..=1e7)]
    pub reynolds_number: Ratio,
    /// Roughness of the wall over the bore.
    #[field("k/d", ONE, 0.0..=0.2, default = 0.0, usual = 0.0..=0.05)]
    pub relative_roughness: Ratio,
}

/// Darcy's friction factor.
#[record]
pub struct FrictionFactorResult {
    /// Darcy friction factor; in the transition a straight line between its ends, for want of better.
    #[field("f", ONE)]
    pub friction_factor: Ratio,
    /// Least factor that may be: below `friction_factor` in the transition only.
    #[field("f_{min}", ONE)]
    pub least_friction_factor: Ratio,
    /// Greatest factor that may be: above `friction_factor` in the transition only.
    #[field("f_{max}", ONE)]
    pub greatest_friction_factor: Ratio,
    /// Factor if the flow were laminar, 64/Re.
    #[field("f_{lam}", ONE)]
    pub laminar_friction_factor: Ratio,
    /// Factor if the flow were turbulent, by the named equation.
    #[field("f_{turb}", ONE, absent = "none so far below the turbulent range")]
    pub turbulent_friction_factor: Ratio,
}

/// Friction factor by a named equation.
#[derive(Clone, Copy, Debug, Default)]
pub struct FrictionFactor {
    /// The equation for turbulent flow.
    pub equation: TurbulentFriction,
}

impl Context for FrictionFactor {
    const SETTINGS: &'static [Setting] = &[Setting {
        name: "equation",
        doc: "The equation for turbulent flow.",
        form: Form::Choice(&["Colebrook", "Haaland", "Swamee-Jain"]),
        default: Some("Colebrook"),
    }];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let equation = settings.choice(
            "equation",
            &[
                ("Colebrook", TurbulentFriction::Colebrook),
                ("Haaland", TurbulentFriction::Haaland),
                ("Swamee-Jain", TurbulentFriction::SwameeJain),
            ],
        )?;
        Ok(Self { equation })
    }
}

rules! {
    notice IN_TRANSITION on "reynolds_number": "between laminar and turbulent flow nobody can name one factor: allow for the whole band";
    notice OUT_OF_RANGE on "reynolds_number": "outside the range for which the equation is published";
}

/// Below this Reynolds number the turbulent equations are not even asked.
const TURBULENT_ASKED_FROM: f64 = 1000.0;

impl Calculation for FrictionFactor {
    type Input = FrictionFactorInput;
    type Output = FrictionFactorResult;
    const INFO: Info = Info {
        name: "friction_factor",
        title: "Friction factor of a pipe",
        summary: "Darcy's friction factor from Reynolds number and relative roughness: laminar below 2300, turbulent from 4000, and a \
                  band between.",
        sources: &[
            Source::new("Colebrook 1939, J. Inst. Civ. Eng. 11, 133", "turbulent flow, by default; solved to 1e-12"),
            Source::new("Haaland 1983, J. Fluids Eng. 105, 89", "turbulent flow, if named"),
            Source::new("Swamee & Jain 1976, J. Hydraul. Div. ASCE 102, 657", "turbulent flow, if named"),
            Source::new("common textbook values, from memory", "the limits 2300 and 4000"),
        ],
        accuracy: "Laminar exact; Colebrook's equation holds to some 5 % of measured factors; Haaland's keeps within 2 %, Swamee and \
                   Jain's within 3 % of it.",
        cautions: &[],
        checked_against: "heat/friction_factor.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn check(&self, input: &FrictionFactorInput) -> Raised {
        let (reynolds, roughness) = (input.reynolds_number.si(), input.relative_roughness.si());
        let held = match self.equation.limits() {
            [flow, wall, ..] => flow.holds(reynolds) & wall.holds(roughness),
            _ => true,
        };
        let transition = (LAMINAR_BELOW..TURBULENT_FROM).contains(&reynolds);
        Raised::NONE.when(IN_TRANSITION, transition).when(OUT_OF_RANGE, (reynolds >= TURBULENT_FROM) & !held)
    }

    fn compute<W: Working>(&self, input: &FrictionFactorInput, working: &mut W) -> FrictionFactorResult {
        let (reynolds, roughness) = (input.reynolds_number.si(), input.relative_roughness.si());
        let asked = reynolds >= TURBULENT_ASKED_FROM;
        step!(working, let laminar_friction_factor: "f_{lam}" = Ratio::from_si(64.0) / input.reynolds_number, "Hagen and Poiseuille");
        let turbulent = if asked { self.equation.factor(reynolds, roughness) } else { f64::NAN };
        step!(working, let turbulent_friction_factor: "f_{turb}" = Ratio::from_si(turbulent), self.equation.source());
        let band = friction_band(reynolds, roughness, self.equation);
        let (low, high) = band.map_or((f64::NAN, f64::NAN), |band| (band.low, band.high));
        step!(working, let friction_factor: "f" = Ratio::from_si(friction_factor(reynolds, roughness, self.equation)), "laminar below 2300, turbulent from 4000, a line between");
        FrictionFactorResult {
            friction_factor,
            least_friction_factor: Ratio::from_si(low),
            greatest_friction_factor: Ratio::from_si(high),
            laminar_friction_factor,
            turbulent_friction_factor,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use flamewright_reference::rows;

    fn input(reynolds: f64, roughness: f64) -> FrictionFactorInput {
        FrictionFactorInput { reynolds_number: Ratio::from_si(reynolds), relative_roughness: Ratio::from_si(roughness) }
    }

    #[test]
    fn agrees_with_the_reference() {
        for row in rows("heat/friction_factor.csv") {
            let input = input(row.number("Re"), row.number("rel_roughness"));
            for (equation, column) in [
                (TurbulentFriction::Colebrook, "f_Colebrook"),
                (TurbulentFriction::SwameeJain, "f_SwameeJain"),
                (TurbulentFriction::Haaland, "f_Haaland"),
            ] {
                let result = FrictionFactor { equation }.evaluate(&input).unwrap();
                let wanted = row.maybe(column).unwrap_or_else(|| row.number("f_laminar"));
                assert!((result.friction_factor.si() / wanted - 1.0).abs() < 1e-7, "{} {column}", row.place);
                assert_eq!(result.least_friction_factor.si(), result.greatest_friction_factor.si());
            }
        }
    }

    #[test]
    fn the_transition_is_a_band_with_a_notice() {
        let result = FrictionFactor::default().evaluate(&input(3000.0, 1e-4)).unwrap();
        assert!(result.least_friction_factor < result.friction_factor && result.friction_factor < result.greatest_friction_factor);
        assert!(result.notices().iter().any(|n| n.code == "IN_TRANSITION"));
        let smooth = FrictionFactor { equation: TurbulentFriction::SwameeJain }.evaluate(&input(1e5, 0.0)).unwrap();
        assert!(smooth.notices().iter().any(|n| n.code == "OUT_OF_RANGE"));
        assert!(FrictionFactor::default().evaluate(&input(-5.0, 0.0)).is_err());
        assert!(FrictionFactor::default().evaluate(&input(1e5, -1e-4)).is_err());
    }
}
