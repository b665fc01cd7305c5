//! Natural convection from the outside of a pipe in still air.
//!
//! For a horizontal pipe the published correlations lie within about 15 % of one another; for a
//! thin vertical pipe they disagree by 30 % and more, so that there the caller names one.

use super::Limit;
use crate::math::{cbrt, ln, pow, sqrt};

/// Standard acceleration of free fall in m/s² (ISO 80000-3, by definition).
pub const FREE_FALL: f64 = 9.80665;

/// A correlation for a horizontal pipe.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum HorizontalCylinder {
    /// Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1049: one equation for every range.
    #[default]
    ChurchillChu,
    /// Morgan 1975, Adv. Heat Transfer 11, 199: powers of the Rayleigh number by range. It gives 5
    /// to 14 % more than Churchill and Chu on heating pipes.
    Morgan,
    /// The form of ISO 12241:2008, `1.25 (ΔT/D)^(1/4)`, above a `D³ ΔT` of 10 m³K
    /// `1.21 ΔT^(1/3)`. The coefficients are quoted at second hand, not read in the standard.
    Iso12241,
}

/// A correlation for a vertical pipe. None is better than 30 % on thin pipes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum VerticalCylinder {
    /// Whole-range plate of Churchill & Chu 1975 times the curvature factor of Popiel 2008
    /// (Heat Transfer Eng. 29, 521).
    #[default]
    PopielPlate,
    /// Laminar plate of Churchill & Chu 1975 times the same factor.
    PopielLaminarPlate,
    /// Le Fevre & Ede 1956, laminar.
    LeFevreEde,
    /// `1.32 (ΔT/D)^(1/4)`, quoted at second hand as the form of ISO 12241:2008.
    Iso12241,
}

const CHURCHILL_CHU: [Limit; 1] = [Limit { of: "Ra", minimum: 1e-6, maximum: 1e12 }];
const MORGAN: [Limit; 1] = [Limit { of: "Ra", minimum: 1e-10, maximum: 1e12 }];
const ISO_12241: [Limit; 1] = [Limit { of: "Ra", minimum: 1e4, maximum: 1e12 }];
const POPIEL: [Limit; 2] = [Limit { of: "Ra", minimum: 0.1, maximum: 1e12 }, Limit { of: "Pr", minimum: 0.01, maximum: 100.0 }];
const POPIEL_LAMINAR: [Limit; 2] = [Limit { of: "Ra", minimum: 0.1, maximum: 1e9 }, Limit { of: "Pr", minimum: 0.01, maximum: 100.0 }];
const LE_FEVRE_EDE: [Limit; 1] = [Limit { of: "Ra", minimum: 1e4, maximum: 1e9 }];

impl HorizontalCylinder {
    /// The range of Rayleigh numbers (on the diameter) for which the correlation is published.
    /// For the ISO form it is the usual range of the quarter-power law, from memory.
    pub const fn limits(self) -> &'static [Limit] {
        match self {
            Self::ChurchillChu => &CHURCHILL_CHU,
            Self::Morgan => &MORGAN,
            Self::Iso12241 => &ISO_12241,
        }
    }

    /// Expected relative accuracy of the film coefficient in still air.
    pub const fn scatter(self) -> f64 {
        0.15
    }
}

impl VerticalCylinder {
    /// The range of Rayleigh numbers (on the height) for which the correlation is published, from
    /// memory.
    pub const fn limits(self) -> &'static [Limit] {
        match self {
            Self::PopielPlate => &POPIEL,
            Self::PopielLaminarPlate => &POPIEL_LAMINAR,
            Self::LeFevreEde => &LE_FEVRE_EDE,
            Self::Iso12241 => &ISO_12241,
        }
    }

    /// Expected relative accuracy of the film coefficient in still air.
    pub const fn scatter(self) -> f64 {
        0.30
    }
}

fn positive(value: f64) -> f64 {
    if value >= 0.0 { value } else { f64::NAN }
}

fn sixth_root(value: f64) -> f64 {
    sqrt(cbrt(value))
}

fn fourth_root(value: f64) -> f64 {
    sqrt(sqrt(value))
}

/// Nusselt number of a horizontal cylinder on its diameter, Churchill & Chu 1975.
pub fn churchill_chu_cylinder(rayleigh: f64, prandtl: f64) -> f64 {
    let spread = pow(1.0 + pow(0.559 / positive(prandtl), 9.0 / 16.0), 8.0 / 27.0);
    let root = 0.60 + 0.387 * sixth_root(positive(rayleigh)) / spread;
    root * root
}

/// Nusselt number of a horizontal cylinder on its diameter, Morgan 1975.
pub fn morgan_cylinder(rayleigh: f64) -> f64 {
    let rayleigh = positive(rayleigh);
    let (factor, exponent) = if rayleigh < 1e-2 {
        (0.675, 0.058)
    } else if rayleigh < 1e2 {
        (1.02, 0.148)
    } else if rayleigh < 1e4 {
        (0.850, 0.188)
    } else if rayleigh < 1e7 {
        (0.480, 0.250)
    } else {
        (0.125, 0.333)
    };
    factor * pow(rayleigh, exponent)
}

/// Film coefficient in W/(m² K) of a horizontal pipe, the form of ISO 12241.
pub fn iso_12241_horizontal(temperature_difference: f64, diameter: f64) -> f64 {
    let difference = positive(temperature_difference.abs());
    if diameter * diameter * diameter * difference <= 10.0 {
        1.25 * fourth_root(difference / positive(diameter))
    } else {
        1.21 * cbrt(difference) + 0.0 * positive(diameter)
    }
}

/// Film coefficient in W/(m² K) of a vertical pipe, the form quoted as that of ISO 12241.
pub fn iso_12241_vertical(temperature_difference: f64, diameter: f64) -> f64 {
    1.32 * fourth_root(temperature_difference.abs() / positive(diameter))
}

/// Nusselt number of a vertical plate on its height, Churchill & Chu 1975, laminar and turbulent.
pub fn churchill_chu_plate(rayleigh: f64, prandtl: f64) -> f64 {
    let spread = pow(1.0 + pow(0.492 / positive(prandtl), 9.0 / 16.0), 8.0 / 27.0);
    let root = 0.825 + 0.387 * sixth_root(positive(rayleigh)) / spread;
    root * root
}

/// Nusselt number of a vertical plate on its height, Churchill & Chu 1975, laminar only.
pub fn churchill_chu_laminar_plate(rayleigh: f64, prandtl: f64) -> f64 {
    let spread = pow(1.0 + pow(0.492 / positive(prandtl), 9.0 / 16.0), 4.0 / 9.0);
    0.68 + 0.670 * fourth_root(positive(rayleigh)) / spread
}

/// By how much curvature raises the Nusselt number of a vertical cylinder above a plate's, Popiel 2008.
pub fn popiel_factor(grashof: f64, prandtl: f64, length_over_diameter: f64) -> f64 {
    let prandtl = positive(prandtl);
    let factor = 0.0571322 + 0.20305 * pow(prandtl, -0.43);
    let exponent = 0.9165 - 0.0043 * sqrt(prandtl) + 0.01333 * ln(prandtl) + 0.0004809 / prandtl;
    let slenderness = sqrt(32.0) / fourth_root(positive(grashof)) * positive(length_over_diameter);
    1.0 + factor * pow(slenderness, exponent)
}

/// Nusselt number of a vertical cylinder on its height, Le Fevre & Ede 1956.
pub fn le_fevre_ede(rayleigh: f64, prandtl: f64, length_over_diameter: f64) -> f64 {
    let prandtl = positive(prandtl);
    4.0 / 3.0 * fourth_root(7.0 * positive(rayleigh) * prandtl / (5.0 * (20.0 + 21.0 * prandtl)))
        + 4.0 * (272.0 + 315.0 * prandtl) * positive(length_over_diameter) / (35.0 * (64.0 + 63.0 * prandtl))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The laminar form as long as the cube of the diameter times the difference is at most 10 m³ K.
    #[test]
    fn a_horizontal_pipe_changes_its_form_where_iso_12241_does() {
        assert!((iso_12241_horizontal(16.0, 0.1) - 1.25 * 160.0_f64.sqrt().sqrt()).abs() < 1e-12);
        // An eighth of a cubic metre: 7.5 m³ K and 12.5 m³ K.
        assert!((iso_12241_horizontal(60.0, 0.5) - 1.25 * 120.0_f64.sqrt().sqrt()).abs() < 1e-12);
        assert!((iso_12241_horizontal(100.0, 0.5) - 1.21 * 100.0_f64.cbrt()).abs() < 1e-12);
        assert_eq!(iso_12241_horizontal(-60.0, 0.5), iso_12241_horizontal(60.0, 0.5));
    }
}
