//! `fitting_loss`: the resistance of one fitting in one bore.

use super::fitting::{FITTINGS, Fitting, Resistance, fitting, fully_turbulent_friction_factor};
use crate::Error;
use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::quantity::Value;
use crate::quantity::types::{Length, Ratio};
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};

/// Where the fitting sits.
#[record]
pub struct FittingLossInput {
    /// Bore of the tube.
    #[field("d", MILLIMETRE, 1.0..=1000.0, usual = 6.0..=200.0)]
    pub bore: Length,
}

/// Its resistance.
#[record]
pub struct FittingLossResult {
    /// Friction factor of fully turbulent flow in commercial steel pipe of this bore.
    #[field("f_T", ONE)]
    pub turbulent_friction_factor: Ratio,
    /// Loss coefficient on the velocity pressure.
    #[field("\\zeta", ONE, absent = "published as a length: times the friction factor of the flow, over the bore")]
    pub loss_coefficient: Ratio,
    /// Equivalent length in bores; for a loss coefficient by the fully turbulent friction factor.
    #[field("L/d", ONE)]
    pub length_ratio: Ratio,
    /// Equivalent length of the same tube.
    #[field("L_{eq}", METRE)]
    pub equivalent_length: Length,
}

/// Resistance of a fitting by name.
#[derive(Clone, Copy, Debug)]
pub struct FittingLoss {
    /// The fitting.
    pub fitting: &'static Fitting,
}

/// Names of all fittings.
const NAMES: [&str; FITTINGS.len()] = {
    let mut names = [""; FITTINGS.len()];
    let mut i = 0;
    while i < names.len() {
        names[i] = FITTINGS[i].name;
        i += 1;
    }
    names
};

impl Context for FittingLoss {
    const SETTINGS: &'static [Setting] =
        &[Setting { name: "fitting", doc: "The fitting or valve.", form: Form::Choice(&NAMES), default: None }];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { fitting: fitting(settings.text("fitting")?)? })
    }
}

rules! {
    notice OTHER_BORE on "bore": "the length is published for another bore; it does not carry over";
}

impl Calculation for FittingLoss {
    type Input = FittingLossInput;
    type Output = FittingLossResult;
    const INFO: Info = Info {
        name: "fitting_loss",
        title: "Resistance of a fitting",
        summary: "Loss coefficient and equivalent length of a fitting or valve in a tube of a bore.",
        sources: &[
            Source::new("Crane TP-410M (2009), as evaluated with the library fluids 1.3.1", "multiples of f_T, and f_T itself"),
            Source::new("Cengel & Cimbala, Fluid Mechanics, Table 8-4, from memory", "loss coefficients that hold for any bore"),
            Source::new("BS 6891:2015, seen in a secondary quotation", "equivalent lengths of gas bends"),
        ],
        accuracy: "20 to 50 %: prints differ, and so do makes.",
        cautions: &[],
        checked_against: "heat/fittings.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn check(&self, input: &FittingLossInput) -> Raised {
        let other = match self.fitting.resistance {
            Resistance::EquivalentLength { bore, .. } => (input.bore.si() / bore - 1.0).abs() > 0.05,
            Resistance::LengthRatio(_) | Resistance::Coefficient(_) => false,
        };
        Raised::NONE.when(OTHER_BORE, other)
    }

    fn compute<W: Working>(&self, input: &FittingLossInput, working: &mut W) -> FittingLossResult {
        let factor = fully_turbulent_friction_factor(input.bore.si());
        let (coefficient, length) = self.fitting.loss(input.bore.si());
        let by_length = matches!(self.fitting.resistance, Resistance::EquivalentLength { .. });
        let loss_coefficient = Ratio::from_si(if by_length { f64::NAN } else { coefficient });
        step!(working, let turbulent_friction_factor: "f_T" = Ratio::from_si(factor), "Crane TP-410M, between its sizes by Colebrook");
        step!(working, let ratio_of_coefficient: "\\zeta/f_T" = coefficient / turbulent_friction_factor, "Crane TP-410M: K = n f_T");
        step!(working, let ratio_of_length: "L/d" = Length::from_si(length) / input.bore, "definition");
        step!(working, let length_ratio: "n" = ratio_of_coefficient + ratio_of_length, "one of the two is zero");
        step!(working, let equivalent_length: "L_{eq}" = length_ratio * input.bore, "definition");
        FittingLossResult { turbulent_friction_factor, loss_coefficient, length_ratio, equivalent_length }
    }
}

#[cfg(test)]
mod tests {
    use crate::catalogue::{Bare, evaluate};
    use crate::node::Node;
    use crate::water::tests::assert_close;

    #[test]
    fn each_way_of_print_gives_coefficient_and_length() {
        let get =
            |name: &str, bore: &str| evaluate("fitting_loss", &Node::from([("fitting", name), ("bore", bore)]), Bare::Refused).unwrap();
        let elbow = get("elbow 90", "13.6 mm");
        assert_close(elbow.get("loss_coefficient").unwrap(), 0.798_747, 1e-5, "elbow");
        assert_close(elbow.get("length_ratio").unwrap(), 30.0, 1e-14, "elbow");
        assert_close(elbow.get("equivalent_length").unwrap(), 30.0 * 0.0136, 1e-14, "elbow");
        let valve = get("Globe valve open", "20.2 mm");
        assert_eq!(valve.get("loss_coefficient"), Some(10.0));
        assert_close(valve.get("length_ratio").unwrap(), 10.0 / 0.023_911_2, 1e-5, "valve");
        let bend = get("gas bend 90 copper 22 mm", "20.2 mm");
        assert!(bend.get("loss_coefficient").unwrap().is_nan() && bend.notices.is_empty());
        assert_close(bend.get("length_ratio").unwrap(), 14.851_5, 1e-5, "bend");
        assert_eq!(get("gas bend 90 copper 22 mm", "26 mm").notices[0].code, "OTHER_BORE");
    }
}
