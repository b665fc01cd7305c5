//! Forced convection: water in a pipe, wind across one.

use super::Limit;
use super::friction::{LAMINAR_BELOW, TURBULENT_FROM};
use crate::math::{cbrt, ln, pow, sqrt};

/// Nusselt number of laminar flow far from the inlet of a pipe whose wall is at one temperature.
///
/// Series solution of Graetz, 3.6568; the rounded figure of the textbooks is used.
pub const LAMINAR_NUSSELT: f64 = 3.66;

/// Range of [`internal_flow`]'s turbulent part (Gnielinski 1976, as restated in Rohsenow,
/// Hartnett & Cho, Handbook of Heat Transfer, 3rd ed.).
pub const GNIELINSKI_LIMITS: [Limit; 2] =
    [Limit { of: "Re", minimum: 2300.0, maximum: 5e6 }, Limit { of: "Pr", minimum: 0.5, maximum: 2000.0 }];

/// Range of [`churchill_bernstein`] (Churchill & Bernstein 1977): the product of the Reynolds
/// and Prandtl numbers.
pub const CHURCHILL_BERNSTEIN_LIMITS: [Limit; 1] = [Limit { of: "Re Pr", minimum: 0.2, maximum: 1e7 }];

/// Nusselt number of turbulent flow in a smooth pipe.
///
/// Gnielinski 1976, Int. Chem. Eng. 16, 359, with the friction factor
/// `f = (0.790 ln Re - 1.64)^-2` of Petukhov 1970.
pub fn gnielinski(reynolds: f64, prandtl: f64) -> f64 {
    let root = 0.790 * ln(reynolds) - 1.64;
    let eighth = 0.125 / (root * root);
    let two_thirds = cbrt(prandtl) * cbrt(prandtl);
    eighth * (reynolds - 1000.0) * prandtl / (1.0 + 12.7 * sqrt(eighth) * (two_thirds - 1.0))
}

/// Nusselt number inside a full pipe, on the bore, properties at the bulk temperature.
///
/// 3.66 below a Reynolds number of 2300, [`gnielinski`] from 4000, and a straight line in the
/// Reynolds number between, where flow is in transition and the figure is a convention
/// (Gnielinski 2013, Int. J. Heat Mass Transfer 63, 134, joins in the same manner).
/// Entrance effects are left out, so that short runs lose a little more than this says.
pub fn internal_flow(reynolds: f64, prandtl: f64) -> f64 {
    if !(reynolds >= 0.0 && prandtl > 0.0) {
        f64::NAN
    } else if reynolds < LAMINAR_BELOW {
        LAMINAR_NUSSELT
    } else if reynolds < TURBULENT_FROM {
        let share = (reynolds - LAMINAR_BELOW) / (TURBULENT_FROM - LAMINAR_BELOW);
        LAMINAR_NUSSELT + share * (gnielinski(TURBULENT_FROM, prandtl) - LAMINAR_NUSSELT)
    } else {
        gnielinski(reynolds, prandtl)
    }
}

/// Nusselt number of a cylinder in cross flow, on its diameter, properties at film temperature.
///
/// Churchill & Bernstein 1977, J. Heat Transfer 99, 300; scatter about 20 % (Incropera & DeWitt,
/// from memory).
pub fn churchill_bernstein(reynolds: f64, prandtl: f64) -> f64 {
    if !(reynolds >= 0.0 && prandtl > 0.0) {
        return f64::NAN;
    }
    let spread = cbrt(0.4 / prandtl);
    let laminar = 0.62 * sqrt(reynolds) * cbrt(prandtl) / sqrt(sqrt(1.0 + spread * spread));
    0.3 + laminar * pow(1.0 + pow(reynolds / 282_000.0, 0.625), 0.8)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn published_examples_are_met() {
        // Incropera & DeWitt, Introduction to Heat Transfer, 6th ed., Example 7.3.
        assert!((churchill_bernstein(6071.0, 0.7) - 40.637_085_941).abs() < 1e-8);
        // At rest the cylinder still conducts.
        assert_eq!(churchill_bernstein(0.0, 0.7), 0.3);
    }

    #[test]
    fn internal_flow_has_no_jump_and_knows_its_regimes() {
        assert_eq!(internal_flow(2299.0, 3.0), LAMINAR_NUSSELT);
        assert!((internal_flow(2300.0, 3.0) - LAMINAR_NUSSELT).abs() < 1e-12);
        assert!((internal_flow(3999.999_999, 3.0) / gnielinski(4000.0, 3.0) - 1.0).abs() < 1e-8);
        assert!(internal_flow(-1.0, 3.0).is_nan());
        assert!(internal_flow(f64::NAN, 3.0).is_nan());
        assert!(churchill_bernstein(1e4, -0.7).is_nan());
    }
}
