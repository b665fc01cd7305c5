//! Gas analysers: what a cell's reading means, and its conversion to a mass concentration.

/// Molar gas constant, J/(mol K), exact (2019 SI; 8.31446261815324).
pub const MOLAR_GAS_CONSTANT: f64 = 8.314_462_618_153_24;

/// Mass concentration in kg/m³ of a mole fraction (1), from the molar mass in kg/mol, the temperature
/// in K and the absolute pressure in Pa. Ideal gas: within 0.1 % for flue and room gases.
#[inline]
pub fn mass_concentration(mole_fraction: f64, molar_mass: f64, kelvin: f64, pressure: f64) -> f64 {
    mole_fraction * molar_mass * pressure / (MOLAR_GAS_CONSTANT * kelvin)
}

/// Mole fraction (1) of a mass concentration in kg/m³; the inverse of [`mass_concentration`].
#[inline]
pub fn mole_fraction(mass_concentration: f64, molar_mass: f64, kelvin: f64, pressure: f64) -> f64 {
    mass_concentration * MOLAR_GAS_CONSTANT * kelvin / (molar_mass * pressure)
}
