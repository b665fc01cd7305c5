//! Combustion air: what dry air is made of, and the water it brings.

use crate::combustion::{species, water_vapour};

/// Mole fractions of dry air; they should sum to one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DryAir {
    /// Oxygen, mol/mol.
    pub oxygen: f64,
    /// Nitrogen, mol/mol.
    pub nitrogen: f64,
    /// Argon, mol/mol.
    pub argon: f64,
    /// Carbon dioxide, mol/mol.
    pub carbon_dioxide: f64,
}

impl DryAir {
    /// Rounded composition of dry air, carbon dioxide at 400 ppm (common practice, no source; the
    /// 1975 US standard atmosphere and ISO 6976:2016 Table A.3 differ from it by less than 1e-4).
    pub const STANDARD: Self = Self { oxygen: 0.2095, nitrogen: 0.7808, argon: 0.0093, carbon_dioxide: 0.0004 };

    /// The textbook's air: 21 parts of oxygen and 79 of nitrogen (common practice).
    pub const OXYGEN_21_NITROGEN_79: Self = Self { oxygen: 0.21, nitrogen: 0.79, argon: 0.0, carbon_dioxide: 0.0 };

    /// Molar mass, kg/mol.
    #[must_use]
    pub fn molar_mass(&self) -> f64 {
        self.oxygen * species::OXYGEN.molar_mass
            + self.nitrogen * species::NITROGEN.molar_mass
            + self.argon * species::ARGON.molar_mass
            + self.carbon_dioxide * species::CARBON_DIOXIDE.molar_mass
    }
}

/// Water brought by humid air, mol per mol of dry air.
///
/// `relative_humidity` is 0 to 1, `temperature` in K (253 to 373), `pressure` absolute in Pa.
/// Ideal-gas mixture without enhancement factor; NaN when the air could not hold that much water
/// at this pressure.
#[must_use]
#[inline]
pub fn humidity_mole_ratio(relative_humidity: f64, temperature: f64, pressure: f64) -> f64 {
    let vapour = relative_humidity * water_vapour::saturation_pressure(temperature);
    let dry = pressure - vapour;
    vapour / if dry > 0.0 { dry } else { f64::NAN }
}
