//! What combustion and flue sums need to know of a fuel, whatever it is.
use alloc::string::String;

/// State in which a fuel reaches the burner; it fixes the unit of amount of a [`Fuel`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FuelState {
    /// Amounts are per mole.
    Gas,
    /// Amounts are per kilogram.
    Liquid,
    /// Amounts are per kilogram.
    Solid,
}

/// Moles of atoms in one unit of fuel, inert parts and moisture included: the carbon and oxygen of
/// carbon dioxide, the hydrogen and oxygen of water and the nitrogen of N2 all count.
///
/// So complete combustion gives `carbon` of CO2, `hydrogen / 2` of H2O, `sulphur` of SO2,
/// `nitrogen / 2` of N2 and the noble gases as they came, and needs
/// `carbon + hydrogen / 4 + sulphur - oxygen / 2` of O2.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Elements {
    /// Carbon atoms, mol per unit of fuel.
    pub carbon: f64,
    /// Hydrogen atoms, mol per unit of fuel.
    pub hydrogen: f64,
    /// Oxygen atoms, mol per unit of fuel.
    pub oxygen: f64,
    /// Nitrogen atoms, mol per unit of fuel.
    pub nitrogen: f64,
    /// Sulphur atoms, mol per unit of fuel.
    pub sulphur: f64,
    /// Helium and neon, mol per unit of fuel.
    pub helium: f64,
    /// Argon, mol per unit of fuel.
    pub argon: f64,
}

/// A fuel as combustion sums see it: one mole of a gas, or one kilogram of a liquid or solid.
#[derive(Clone, Debug, PartialEq)]
pub struct Fuel {
    /// Name to show, such as "G20" or "gas oil".
    pub name: String,
    /// State, and with it the unit of amount: mol for a gas, kg for a liquid or solid.
    pub state: FuelState,
    /// Atoms in one unit of fuel.
    pub elements: Elements,
    /// Mass of one unit of fuel, kg: the molar mass of a gas in kg/mol, 1 for a liquid or solid.
    pub mass: f64,
    /// Gross calorific value at 25 degC, J per unit of fuel (a gas taken as ideal).
    pub gross_calorific_value: f64,
    /// Net calorific value at 25 degC, J per unit of fuel (a gas taken as ideal).
    pub net_calorific_value: f64,
    /// Heat capacity at constant pressure and 25 degC, J/K per unit of fuel.
    pub heat_capacity: f64,
    /// Rise of that heat capacity with temperature at 25 degC, J/K2 per unit of fuel.
    pub heat_capacity_slope: f64,
}

impl Fuel {
    /// Oxygen that burns one unit of fuel completely to CO2, H2O and SO2, mol.
    #[must_use]
    pub fn stoichiometric_oxygen(&self) -> f64 {
        let e = &self.elements;
        e.carbon + 0.25 * e.hydrogen + e.sulphur - 0.5 * e.oxygen
    }

    /// Sensible enthalpy of one unit of fuel above 25 degC, J; good for -40 to 60 degC.
    #[must_use]
    pub fn sensible_enthalpy(&self, temperature_kelvin: f64) -> f64 {
        let above = temperature_kelvin - 298.15;
        above * (self.heat_capacity + 0.5 * above * self.heat_capacity_slope)
    }
}
