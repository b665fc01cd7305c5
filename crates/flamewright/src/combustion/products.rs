//! Element balance: air needed and flue gas made by one unit of fuel.

use crate::combustion::air::DryAir;
use crate::combustion::species::{self, SensiblePolynomial};
use crate::fuel::Fuel;

/// Volume of one mole of an ideal gas at 0 degC and 101.325 kPa, m3/mol (CODATA 2018).
pub const NORMAL_MOLAR_VOLUME: f64 = 0.022_413_969_54;

/// Molar mass of helium, kg/mol (ISO 6976:2016, Table A.2).
const HELIUM_MOLAR_MASS: f64 = 0.004_002_602;

/// Flue gas from one unit of fuel, mol of each gas per unit of fuel.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Products {
    /// Carbon dioxide, with that of the air.
    pub carbon_dioxide: f64,
    /// Water vapour: of the fuel's hydrogen and moisture, and of the air.
    pub water: f64,
    /// Sulphur dioxide.
    pub sulphur_dioxide: f64,
    /// Oxygen left over.
    pub oxygen: f64,
    /// Nitrogen.
    pub nitrogen: f64,
    /// Argon, with the fuel's helium and neon counted apart.
    pub argon: f64,
    /// Helium and neon of the fuel.
    pub helium: f64,
}

impl Products {
    /// Complete combustion with `excess_air_ratio` times the air needed (symbol lambda; 1 or more;
    /// a smaller one gives a negative amount of oxygen, which the caller must refuse).
    ///
    /// `humidity_mole_ratio` is the water in the air, mol per mol of dry air.
    #[must_use]
    pub fn of_complete_combustion(fuel: &Fuel, air: &DryAir, excess_air_ratio: f64, humidity_mole_ratio: f64) -> Self {
        let e = &fuel.elements;
        let needed = fuel.stoichiometric_oxygen();
        let dry_air = excess_air_ratio * needed / air.oxygen;
        Self {
            carbon_dioxide: e.carbon + dry_air * air.carbon_dioxide,
            water: 0.5 * e.hydrogen + dry_air * humidity_mole_ratio,
            sulphur_dioxide: e.sulphur,
            oxygen: (excess_air_ratio - 1.0) * needed,
            nitrogen: 0.5 * e.nitrogen + dry_air * air.nitrogen,
            argon: e.argon + dry_air * air.argon,
            helium: e.helium,
        }
    }

    /// All gases but water, mol per unit of fuel.
    #[must_use]
    pub fn dry(&self) -> f64 {
        self.carbon_dioxide + self.sulphur_dioxide + self.oxygen + self.nitrogen + self.argon + self.helium
    }

    /// All gases, mol per unit of fuel.
    #[must_use]
    pub fn wet(&self) -> f64 {
        self.dry() + self.water
    }

    /// Mass of all gases, kg per unit of fuel.
    #[must_use]
    pub fn mass(&self) -> f64 {
        self.carbon_dioxide * species::CARBON_DIOXIDE.molar_mass
            + self.water * species::WATER.molar_mass
            + self.sulphur_dioxide * species::SULPHUR_DIOXIDE.molar_mass
            + self.oxygen * species::OXYGEN.molar_mass
            + self.nitrogen * species::NITROGEN.molar_mass
            + self.argon * species::ARGON.molar_mass
            + self.helium * HELIUM_MOLAR_MASS
    }

    /// Heat of the dry gases above 25 degC as a polynomial, J per unit of fuel (below 1000 K).
    #[must_use]
    pub fn dry_sensible_polynomial(&self) -> SensiblePolynomial {
        SensiblePolynomial::default()
            .plus(self.carbon_dioxide, &species::CARBON_DIOXIDE.sensible_polynomial())
            .plus(self.sulphur_dioxide, &species::SULPHUR_DIOXIDE.sensible_polynomial())
            .plus(self.oxygen, &species::OXYGEN.sensible_polynomial())
            .plus(self.nitrogen, &species::NITROGEN.sensible_polynomial())
            // Noble gases share one heat capacity, 5/2 R.
            .plus(self.argon + self.helium, &species::ARGON.sensible_polynomial())
    }

    /// Heat of all gases above 25 degC, J per unit of fuel; 200 to 6000 K (sulphur dioxide 300 to
    /// 5000 K).
    #[must_use]
    pub fn sensible_enthalpy(&self, temperature: f64) -> f64 {
        self.carbon_dioxide * species::CARBON_DIOXIDE.sensible_enthalpy(temperature)
            + self.water * species::WATER.sensible_enthalpy(temperature)
            + self.sulphur_dioxide * species::SULPHUR_DIOXIDE.sensible_enthalpy(temperature)
            + self.oxygen * species::OXYGEN.sensible_enthalpy(temperature)
            + self.nitrogen * species::NITROGEN.sensible_enthalpy(temperature)
            + (self.argon + self.helium) * species::ARGON.sensible_enthalpy(temperature)
    }

    /// Heat capacity of all gases, J/K per unit of fuel.
    #[must_use]
    pub fn heat_capacity(&self, temperature: f64) -> f64 {
        species::MOLAR_GAS_CONSTANT
            * (self.carbon_dioxide * species::CARBON_DIOXIDE.heat_capacity_over_r(temperature)
                + self.water * species::WATER.heat_capacity_over_r(temperature)
                + self.sulphur_dioxide * species::SULPHUR_DIOXIDE.heat_capacity_over_r(temperature)
                + self.oxygen * species::OXYGEN.heat_capacity_over_r(temperature)
                + self.nitrogen * species::NITROGEN.heat_capacity_over_r(temperature)
                + (self.argon + self.helium) * species::ARGON.heat_capacity_over_r(temperature))
    }
}
