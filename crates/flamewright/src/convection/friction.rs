//! Friction factor of a full round pipe.
//!
//! All factors are Darcy's (also called Moody's or Weisbach's): the pressure drop is
//! `f * length / bore * density * velocity^2 / 2`. Fanning's factor is a quarter of it.

use super::Limit;
use crate::math::{ln, log10, pow};

/// Reynolds number below which flow in a pipe is taken as laminar.
///
/// Common textbook value (Incropera & DeWitt; Cengel), from memory.
pub const LAMINAR_BELOW: f64 = 2300.0;

/// Reynolds number from which flow in a pipe is taken as fully turbulent.
///
/// Common textbook value (Moody 1944 shades 2000 to 4000 as the critical zone), from memory.
pub const TURBULENT_FROM: f64 = 4000.0;

/// How the fluid moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Regime {
    /// Below [`LAMINAR_BELOW`]: the factor follows from the Reynolds number alone.
    Laminar,
    /// Between the two: flow switches between laminar and turbulent and nobody can name one factor.
    Transition,
    /// From [`TURBULENT_FROM`] up.
    Turbulent,
}

/// The regime at a Reynolds number; `None` if it is negative or not a number.
pub fn regime(reynolds: f64) -> Option<Regime> {
    if reynolds >= TURBULENT_FROM {
        Some(Regime::Turbulent)
    } else if reynolds >= LAMINAR_BELOW {
        Some(Regime::Transition)
    } else if reynolds >= 0.0 {
        Some(Regime::Laminar)
    } else {
        None
    }
}

/// An equation for the turbulent friction factor.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum TurbulentFriction {
    /// Colebrook's implicit equation, the one the Moody diagram is drawn from.
    #[default]
    Colebrook,
    /// Haaland's explicit equation.
    Haaland,
    /// Swamee and Jain's explicit equation.
    SwameeJain,
}

const MOODY: [Limit; 2] = [Limit { of: "Re", minimum: 4000.0, maximum: 1e8 }, Limit { of: "roughness/bore", minimum: 0.0, maximum: 0.05 }];
const SWAMEE_JAIN: [Limit; 2] =
    [Limit { of: "Re", minimum: 5000.0, maximum: 1e8 }, Limit { of: "roughness/bore", minimum: 1e-6, maximum: 0.01 }];

impl TurbulentFriction {
    /// Darcy friction factor at a Reynolds number and a relative roughness (roughness / bore).
    pub fn factor(self, reynolds: f64, relative_roughness: f64) -> f64 {
        match self {
            Self::Colebrook => colebrook(reynolds, relative_roughness),
            Self::Haaland => haaland(reynolds, relative_roughness),
            Self::SwameeJain => swamee_jain(reynolds, relative_roughness),
        }
    }

    /// The range for which the equation is published (the figures are from memory): Reynolds
    /// number, then relative roughness.
    pub const fn limits(self) -> &'static [Limit] {
        match self {
            Self::Colebrook | Self::Haaland => &MOODY,
            Self::SwameeJain => &SWAMEE_JAIN,
        }
    }

    /// Where the equation comes from.
    pub const fn source(self) -> &'static str {
        match self {
            Self::Colebrook => "Colebrook 1939, J. Inst. Civ. Eng. 11, 133",
            Self::Haaland => "Haaland 1983, J. Fluids Eng. 105, 89",
            Self::SwameeJain => "Swamee & Jain 1976, J. Hydraul. Div. ASCE 102, 657",
        }
    }
}

/// What can be said about a friction factor: one value, or in the transition a band.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FrictionBand {
    /// How the fluid moves.
    pub regime: Regime,
    /// Least factor.
    pub low: f64,
    /// Greatest factor; equal to `low` outside the transition.
    pub high: f64,
}

/// The friction factor, or the band from laminar to turbulent where the flow is in transition.
///
/// `None` for a negative or non-finite Reynolds number or roughness.
pub fn friction_band(reynolds: f64, relative_roughness: f64, turbulent: TurbulentFriction) -> Option<FrictionBand> {
    if !reynolds.is_finite() || !(relative_roughness >= 0.0 && relative_roughness.is_finite()) {
        return None;
    }
    let regime = regime(reynolds)?;
    let (one, other) = match regime {
        Regime::Laminar => (laminar(reynolds), laminar(reynolds)),
        Regime::Transition => (laminar(reynolds), turbulent.factor(reynolds, relative_roughness)),
        Regime::Turbulent => {
            let factor = turbulent.factor(reynolds, relative_roughness);
            (factor, factor)
        }
    };
    Some(FrictionBand { regime, low: one.min(other), high: one.max(other) })
}

/// One friction factor at any Reynolds number, for sums that need a single figure.
///
/// Laminar below [`LAMINAR_BELOW`], turbulent from [`TURBULENT_FROM`], and between them a straight
/// line in the Reynolds number, so that a solver meets no jump. The line is our convention, not a
/// measurement: report [`friction_band`] beside any result that used it.
pub fn friction_factor(reynolds: f64, relative_roughness: f64, turbulent: TurbulentFriction) -> f64 {
    match regime(reynolds) {
        None => f64::NAN,
        Some(Regime::Laminar) => laminar(reynolds) + 0.0 * relative_roughness,
        Some(Regime::Turbulent) => turbulent.factor(reynolds, relative_roughness),
        Some(Regime::Transition) => {
            let from = laminar(LAMINAR_BELOW);
            let to = turbulent.factor(TURBULENT_FROM, relative_roughness);
            from + (to - from) * (reynolds - LAMINAR_BELOW) / (TURBULENT_FROM - LAMINAR_BELOW)
        }
    }
}

/// Darcy friction factor of laminar flow, `64 / Re` (Hagen and Poiseuille).
///
/// The roughness of the wall has no part in it. Infinite at rest.
pub fn laminar(reynolds: f64) -> f64 {
    if reynolds >= 0.0 { 64.0 / reynolds } else { f64::NAN }
}

/// Darcy friction factor by Colebrook's equation,
/// `1/sqrt(f) = -2 log10(roughness/(3.7 bore) + 2.51/(Re sqrt(f)))`.
///
/// One explicit step and three Newton steps; within 1e-14 of the root over the Moody range, so the
/// same number of steps always serves.
pub fn colebrook(reynolds: f64, relative_roughness: f64) -> f64 {
    if !(reynolds > 0.0 && relative_roughness >= 0.0) {
        return f64::NAN;
    }
    // With x = 1/sqrt(f) and a = 2.51/Re the equation is x + b ln(wall + a x) = 0. Its slope is
    // close to 1, so a rough guess of x leaves little error after one substitution.
    const B: f64 = 2.0 * core::f64::consts::LOG10_E;
    const GUESS: f64 = 7.0;
    let wall = relative_roughness / 3.7;
    let a = 2.51 / reynolds;
    let mut x = -B * ln(wall + a * GUESS);
    for _ in 0..3 {
        let argument = wall + a * x;
        x -= (x + B * ln(argument)) / (1.0 + B * a / argument);
    }
    1.0 / (x * x)
}

/// Darcy friction factor by Haaland's equation,
/// `1/sqrt(f) = -1.8 log10((roughness/(3.7 bore))^1.11 + 6.9/Re)`; within 2 % of Colebrook's.
pub fn haaland(reynolds: f64, relative_roughness: f64) -> f64 {
    if !(reynolds > 0.0 && relative_roughness >= 0.0) {
        return f64::NAN;
    }
    let x = -1.8 * log10(pow(relative_roughness / 3.7, 1.11) + 6.9 / reynolds);
    1.0 / (x * x)
}

/// Darcy friction factor by Swamee and Jain's equation,
/// `f = 0.25 / log10(roughness/(3.7 bore) + 5.74/Re^0.9)^2`; within 3 % of Colebrook's.
///
/// Some programs write `(6.97/Re)^0.9`; 5.74 is the printed figure and differs by 2e-4.
pub fn swamee_jain(reynolds: f64, relative_roughness: f64) -> f64 {
    if !(reynolds > 0.0 && relative_roughness >= 0.0) {
        return f64::NAN;
    }
    let x = -2.0 * log10(relative_roughness / 3.7 + 5.74 / pow(reynolds, 0.9));
    1.0 / (x * x)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::vec::Vec;

    fn close(got: f64, wanted: f64, tolerance: f64) {
        assert!((got / wanted - 1.0).abs() <= tolerance, "{got} is not {wanted} to {tolerance}");
    }

    #[test]
    fn agrees_with_the_reference_table() {
        let table = include_str!("../../../../tests/reference/heat/friction_factor.csv");
        let mut checked = 0;
        for line in table.lines().skip(1) {
            let cell: Vec<&str> = line.split(',').collect();
            let number = |i: usize| cell[i].parse::<f64>().unwrap();
            let (reynolds, roughness) = (number(0), number(1));
            if cell[2] == "laminar" {
                close(laminar(reynolds), number(3), 1e-7);
                assert_eq!(regime(reynolds), Some(Regime::Laminar));
                checked += 1;
            } else {
                for (law, column) in
                    [(TurbulentFriction::Colebrook, 4), (TurbulentFriction::SwameeJain, 5), (TurbulentFriction::Haaland, 6)]
                {
                    close(law.factor(reynolds, roughness), number(column), 1e-7);
                    checked += 1;
                }
                assert_eq!(regime(reynolds), Some(Regime::Turbulent));
            }
        }
        assert_eq!(checked, 2 + 3 * 25);
    }

    #[test]
    fn colebrook_is_solved_to_1e_12_everywhere() {
        let mut worst = 0.0_f64;
        for i in 0..=160 {
            let reynolds = pow(10.0, 3.3 + 0.03 * f64::from(i));
            for roughness in [0.0, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 0.01, 0.03, 0.05] {
                // Independent of the solver: halve a bracket down to adjacent numbers.
                let excess = |x: f64| x + 2.0 * log10(roughness / 3.7 + 2.51 * x / reynolds);
                let (mut below, mut above) = (1.0, 20.0);
                for _ in 0..60 {
                    let middle = 0.5 * (below + above);
                    if excess(middle) < 0.0 { below = middle } else { above = middle }
                }
                let deviation = (colebrook(reynolds, roughness) * above * above - 1.0).abs();
                worst = worst.max(deviation);
            }
        }
        assert!(worst <= 1e-12, "largest deviation {worst:e}");
    }

    #[test]
    fn transition_is_a_band_and_the_single_figure_lies_on_its_ends() {
        let law = TurbulentFriction::Colebrook;
        let band = friction_band(3000.0, 1e-4, law).unwrap();
        assert_eq!(band.regime, Regime::Transition);
        assert!(band.low < band.high);
        close(band.low, 64.0 / 3000.0, 1e-15);
        close(friction_factor(LAMINAR_BELOW, 1e-4, law), 64.0 / 2300.0, 1e-15);
        close(friction_factor(TURBULENT_FROM - 1e-9, 1e-4, law), colebrook(4000.0, 1e-4), 1e-12);
        let outside = friction_band(1e5, 1e-4, law).unwrap();
        assert_eq!(outside.low, outside.high);
    }

    #[test]
    fn impossible_input_gives_no_number() {
        for law in [TurbulentFriction::Colebrook, TurbulentFriction::Haaland, TurbulentFriction::SwameeJain] {
            for (reynolds, roughness) in [(-1.0, 0.0), (f64::NAN, 0.0), (1e5, -1e-3), (1e5, f64::NAN)] {
                assert!(law.factor(reynolds, roughness).is_nan());
                assert!(friction_factor(reynolds, roughness, law).is_nan());
                assert_eq!(friction_band(reynolds, roughness, law), None);
            }
        }
        assert!(laminar(-5.0).is_nan());
        assert!(!TurbulentFriction::Colebrook.limits()[0].holds(3000.0));
    }

    #[test]
    fn no_fit_answers_for_what_is_no_flow_or_no_wall() {
        for of in [haaland, swamee_jain] {
            assert!(of(1e5, 0.0).is_finite());
            for (reynolds, roughness) in [(1e5, -1e-4), (0.0, 1e-4), (-1e5, 1e-4), (f64::NAN, 1e-4), (1e5, f64::NAN)] {
                assert!(of(reynolds, roughness).is_nan(), "{reynolds}, {roughness}");
            }
        }
    }
}
