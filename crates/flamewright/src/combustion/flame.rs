//! Adiabatic flame temperature: the hottest the flue gas could be if no heat left it.

use crate::combustion::air::DryAir;
use crate::combustion::products::Products;
use crate::combustion::species;
use crate::fuel::{Fuel, FuelState};

/// Highest temperature searched, K: the end of the polynomials.
const MAXIMUM_TEMPERATURE: f64 = 6000.0;

/// Heat above 25 degC carried by the products of one unit of fuel before any leaves them, J: the
/// net calorific value and what fuel and air bring.
///
/// A liquid or solid fuel is taken to enter at 25 degC, a gas at `fuel_temperature` (K).
#[must_use]
pub fn heat_in_products(
    fuel: &Fuel,
    air: &DryAir,
    excess_air_ratio: f64,
    humidity_mole_ratio: f64,
    fuel_temperature: f64,
    air_temperature: f64,
) -> f64 {
    let dry_air = excess_air_ratio * fuel.stoichiometric_oxygen() / air.oxygen;
    let air_heat = air.oxygen * species::OXYGEN.sensible_enthalpy(air_temperature)
        + air.nitrogen * species::NITROGEN.sensible_enthalpy(air_temperature)
        + air.argon * species::ARGON.sensible_enthalpy(air_temperature)
        + air.carbon_dioxide * species::CARBON_DIOXIDE.sensible_enthalpy(air_temperature)
        + humidity_mole_ratio * species::WATER.sensible_enthalpy(air_temperature);
    let fuel_heat = match fuel.state {
        FuelState::Gas => fuel.sensible_enthalpy(fuel_temperature),
        FuelState::Liquid | FuelState::Solid => 0.0,
    };
    fuel.net_calorific_value + dry_air * air_heat + fuel_heat
}

/// Flame temperature when all burns to CO2, H2O and SO2 and nothing dissociates, K.
///
/// An upper bound; at 2300 K it is about 100 K above the equilibrium one. NaN when no temperature
/// up to 6000 K holds that much heat.
#[must_use]
pub fn complete(products: &Products, sensible_heat: f64) -> f64 {
    let mut low = 200.0;
    let mut high = MAXIMUM_TEMPERATURE;
    if !(sensible_heat >= products.sensible_enthalpy(low) && sensible_heat <= products.sensible_enthalpy(high)) {
        return f64::NAN;
    }
    // Newton on a rising function, kept inside the bracket.
    let mut temperature: f64 = 2000.0;
    for _ in 0..100 {
        let surplus = products.sensible_enthalpy(temperature) - sensible_heat;
        if surplus > 0.0 {
            high = temperature;
        } else {
            low = temperature;
        }
        let newton = temperature - surplus / products.heat_capacity(temperature);
        let next = if newton > low && newton < high { newton } else { 0.5 * (low + high) };
        if (next - temperature).abs() <= 1e-9 * temperature {
            return next;
        }
        temperature = next;
    }
    f64::NAN
}
