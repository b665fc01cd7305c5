//! The flue analysis of one fuel, with everything that depends on the fuel alone folded beforehand.
//!
//! The methods are straight lines of additions, products and a few divisions, without a branch, so
//! that a loop over columns of readings vectorises. They are total: NaN in, NaN out.
//!
//! Balance of one unit of fuel, with `c` mol of carbon monoxide, `D` mol of dry flue gas and the
//! excess air ratio `lambda`: `D = D0 + (lambda - 1) L + c/2`, oxygen `(lambda - 1) o + c/2`,
//! carbon dioxide `C + lambda L a - c`, where `o` is the oxygen needed, `L` the dry air needed, `a`
//! that air's carbon dioxide and `D0` the dry flue gas of complete combustion without excess air.

use crate::combustion::air::DryAir;
use crate::combustion::products::Products;
use crate::combustion::species::{self, SensiblePolynomial};
use crate::combustion::water_vapour;
use crate::fuel::{Fuel, FuelState};
use crate::water;

/// A fuel and its combustion air, prepared for the analysis of many readings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlueKernel {
    /// Dry air needed, mol per unit of fuel.
    dry_air: f64,
    /// Dry flue gas without excess air, mol per unit of fuel.
    stoichiometric_dry_flue: f64,
    /// Carbon of the fuel, mol per unit of fuel.
    carbon: f64,
    /// Water from the fuel, mol per unit of fuel.
    water: f64,
    /// Oxygen in dry air, mol/mol, and its reciprocal.
    air_oxygen: f64,
    per_air_oxygen: f64,
    /// Carbon dioxide in dry air, mol/mol.
    air_carbon_dioxide: f64,
    /// Reciprocal of the oxygen needed, units of fuel per mol.
    per_oxygen: f64,
    /// Gross calorific value, J per unit of fuel, its reciprocal, and its ratio to the net one.
    gross: f64,
    per_gross: f64,
    gross_over_net: f64,
    /// Heat above 25 degC, as a fraction of the gross calorific value: of the dry flue gas of one
    /// unit of fuel without any of the air counted in ...
    dry_heat: SensiblePolynomial,
    /// ... of the dry air needed ...
    air_heat: SensiblePolynomial,
    /// ... of the change when one mole of CO2 leaves as CO and half a mole of O2 ...
    carbon_monoxide_heat: SensiblePolynomial,
    /// ... and of one mole of water vapour.
    vapour_heat: SensiblePolynomial,
    /// The same for the fuel as it enters: constant part and slope of its heat capacity.
    fuel_heat: [f64; 2],
    /// Heat of combustion of one mole of carbon monoxide over the gross calorific value.
    carbon_monoxide: f64,
}

/// Combustion as a reading shows it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Combustion {
    /// Excess air ratio (symbol lambda): air supplied over air needed.
    pub excess_air_ratio: f64,
    /// Dry flue gas, mol per unit of fuel.
    pub dry_flue: f64,
    /// Carbon monoxide, mol per unit of fuel.
    pub carbon_monoxide: f64,
    /// Oxygen in dry flue gas, mol/mol.
    pub oxygen_dry: f64,
    /// Carbon dioxide in dry flue gas, mol/mol.
    pub carbon_dioxide_dry: f64,
}

/// Water in the flue gas.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlueWater {
    /// All water, mol per unit of fuel.
    pub total: f64,
    /// The part that came as vapour with the air, mol per unit of fuel.
    pub from_air: f64,
    /// The part that leaves as vapour, mol per unit of fuel.
    pub vapour: f64,
    /// The part that condenses, mol per unit of fuel.
    pub condensate: f64,
    /// Temperature at which condensing begins, K.
    pub dew_point: f64,
}

/// Where the heat goes, each as a fraction of the gross heat input, enthalpies counted from 25 degC.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeatBalance {
    /// Heat in the dry flue gas.
    pub dry: f64,
    /// Heat in the water vapour above 25 degC.
    pub vapour: f64,
    /// Latent heat leaving with the vapour, less that which came with humid air.
    pub latent: f64,
    /// Heat in the condensate.
    pub condensate: f64,
    /// Heat not released because carbon monoxide did not burn.
    pub unburnt: f64,
    /// Heat brought by the combustion air (negative below 25 degC).
    pub air: f64,
    /// Heat brought by a fuel gas at air temperature (negative below 25 degC).
    pub fuel: f64,
    /// Heat of dry gas and uncondensed vapour above the air temperature, as a fraction of the
    /// **net** heat input: the flue loss that short formulae stand for.
    pub flue_loss_net: f64,
    /// What stays, as a fraction of the gross heat input.
    pub efficiency_gross: f64,
    /// What stays, as a fraction of the net heat input.
    pub efficiency_net: f64,
}

impl FlueKernel {
    /// Prepares a fuel; every result is NaN for a fuel that needs no air or has no calorific value.
    #[must_use]
    pub fn new(fuel: &Fuel, air: &DryAir) -> Self {
        let oxygen = fuel.stoichiometric_oxygen();
        let dry_air = oxygen / air.oxygen;
        let usable = oxygen > 0.0 && fuel.gross_calorific_value > 0.0 && fuel.net_calorific_value > 0.0;
        let gross = if usable { fuel.gross_calorific_value } else { f64::NAN };
        let stoichiometric = Products::of_complete_combustion(fuel, air, 1.0, 0.0);
        let none = SensiblePolynomial::default();
        let air_heat = none
            .plus(air.oxygen, &species::OXYGEN.sensible_polynomial())
            .plus(air.nitrogen, &species::NITROGEN.sensible_polynomial())
            .plus(air.argon, &species::ARGON.sensible_polynomial())
            .plus(air.carbon_dioxide, &species::CARBON_DIOXIDE.sensible_polynomial());
        let carbon_monoxide_heat = none
            .plus(1.0, &species::CARBON_MONOXIDE.sensible_polynomial())
            .plus(0.5, &species::OXYGEN.sensible_polynomial())
            .plus(-1.0, &species::CARBON_DIOXIDE.sensible_polynomial());
        let enters_warm = match fuel.state {
            FuelState::Gas => 1.0,
            FuelState::Liquid | FuelState::Solid => 0.0,
        };
        let datum = species::ENTHALPY_DATUM;
        let heat_of_carbon_monoxide =
            species::CARBON_MONOXIDE.enthalpy(datum) + 0.5 * species::OXYGEN.enthalpy(datum) - species::CARBON_DIOXIDE.enthalpy(datum);
        Self {
            dry_air,
            stoichiometric_dry_flue: stoichiometric.dry(),
            carbon: fuel.elements.carbon,
            water: 0.5 * fuel.elements.hydrogen,
            air_oxygen: air.oxygen,
            per_air_oxygen: 1.0 / air.oxygen,
            air_carbon_dioxide: air.carbon_dioxide,
            per_oxygen: 1.0 / oxygen,
            gross,
            per_gross: 1.0 / gross,
            gross_over_net: gross / fuel.net_calorific_value,
            dry_heat: none.plus(1.0 / gross, &stoichiometric.dry_sensible_polynomial().plus(-dry_air, &air_heat)),
            air_heat: none.plus(dry_air / gross, &air_heat),
            carbon_monoxide_heat: none.plus(1.0 / gross, &carbon_monoxide_heat),
            vapour_heat: none.plus(1.0 / gross, &species::WATER.sensible_polynomial()),
            fuel_heat: [enters_warm * fuel.heat_capacity / gross, enters_warm * 0.5 * fuel.heat_capacity_slope / gross],
            carbon_monoxide: heat_of_carbon_monoxide / gross,
        }
    }

    /// Largest carbon dioxide in dry flue gas: complete combustion without excess air, mol/mol.
    #[must_use]
    pub fn carbon_dioxide_maximum(&self) -> f64 {
        (self.carbon + self.dry_air * self.air_carbon_dioxide) / self.stoichiometric_dry_flue
    }

    /// Dry flue gas without excess air, mol per joule of gross heat input.
    #[must_use]
    #[inline(always)]
    pub fn stoichiometric_dry_flue_per_gross_heat(&self) -> f64 {
        self.stoichiometric_dry_flue * self.per_gross
    }

    /// Gross over net calorific value.
    #[must_use]
    #[inline(always)]
    pub fn gross_over_net(&self) -> f64 {
        self.gross_over_net
    }

    /// Combustion from oxygen and carbon monoxide in dry flue gas, mol/mol.
    ///
    /// Exact element balance, oxygen from 0 to nearly that of air. Less than air needed comes out
    /// as a ratio below 1; then hydrogen is left unburnt as well and the figures are only a sign.
    #[must_use]
    #[inline(always)]
    pub fn from_oxygen(&self, oxygen_dry: f64, carbon_monoxide_dry: f64) -> Combustion {
        let free_oxygen = oxygen_dry - 0.5 * carbon_monoxide_dry;
        let dry_flue = self.stoichiometric_dry_flue / (1.0 - 0.5 * carbon_monoxide_dry - free_oxygen * self.per_air_oxygen);
        let excess_air_ratio = 1.0 + dry_flue * free_oxygen * self.per_oxygen;
        let carbon = self.carbon + excess_air_ratio * (self.dry_air * self.air_carbon_dioxide);
        Combustion {
            excess_air_ratio,
            dry_flue,
            carbon_monoxide: carbon_monoxide_dry * dry_flue,
            oxygen_dry,
            carbon_dioxide_dry: carbon / dry_flue - carbon_monoxide_dry,
        }
    }

    /// Combustion from carbon dioxide and carbon monoxide in dry flue gas, mol/mol.
    ///
    /// Not for fuels without carbon, whose flue gas has only the air's.
    #[must_use]
    #[inline(always)]
    pub fn from_carbon_dioxide(&self, carbon_dioxide_dry: f64, carbon_monoxide_dry: f64) -> Combustion {
        let not_formed = 1.0 - 0.5 * carbon_monoxide_dry;
        let dry_flue = (self.carbon + self.air_carbon_dioxide * (self.dry_air - self.stoichiometric_dry_flue))
            / (carbon_dioxide_dry + carbon_monoxide_dry - self.air_carbon_dioxide * not_formed);
        let excess_air = dry_flue * not_formed - self.stoichiometric_dry_flue;
        Combustion {
            excess_air_ratio: 1.0 + excess_air / self.dry_air,
            dry_flue,
            carbon_monoxide: carbon_monoxide_dry * dry_flue,
            oxygen_dry: excess_air * self.air_oxygen / dry_flue + 0.5 * carbon_monoxide_dry,
            carbon_dioxide_dry,
        }
    }

    /// Carbon monoxide in dry flue gas thinned or thickened to no excess air, mol/mol.
    #[must_use]
    #[inline(always)]
    pub fn carbon_monoxide_air_free(&self, combustion: &Combustion) -> f64 {
        combustion.carbon_monoxide / self.stoichiometric_dry_flue
    }

    /// Water in the flue gas, its dew point, and what of it condenses at flue temperature.
    ///
    /// `humidity_mole_ratio` in mol of water per mol of dry air, temperature in K, absolute
    /// pressure in Pa. Flue gas below its dew point leaves saturated.
    #[must_use]
    #[inline(always)]
    pub fn water(&self, combustion: &Combustion, humidity_mole_ratio: f64, flue_temperature: f64, pressure: f64) -> FlueWater {
        let from_air = combustion.excess_air_ratio * self.dry_air * humidity_mole_ratio;
        let total = self.water + from_air;
        let saturation = water_vapour::saturation_pressure(flue_temperature);
        let rest = pressure - saturation;
        // At or above boiling any amount of vapour stays vapour: no rest, a huge saturated amount.
        let rest = if rest < 1e-3 { 1e-3 } else { rest };
        let saturated = combustion.dry_flue * saturation / rest;
        // The order of the comparison keeps a NaN.
        let vapour = if total < saturated { total } else { saturated };
        FlueWater {
            total,
            from_air,
            vapour,
            condensate: total - vapour,
            dew_point: water::saturation_temperature(pressure * total / (total + combustion.dry_flue)),
        }
    }

    /// Where the heat goes. Temperatures in K: the flue's below 1000, the air's 233 to 333.
    #[must_use]
    #[inline(always)]
    pub fn heat(&self, combustion: &Combustion, water: &FlueWater, flue_temperature: f64, air_temperature: f64) -> HeatBalance {
        let flue_above = flue_temperature - species::ENTHALPY_DATUM;
        let air_above = air_temperature - species::ENTHALPY_DATUM;
        let dry_heat =
            self.dry_heat.plus(combustion.excess_air_ratio, &self.air_heat).plus(combustion.carbon_monoxide, &self.carbon_monoxide_heat);
        let vapour_in_flue = self.vapour_heat.at(flue_above);
        let vapour_in_air = self.vapour_heat.at(air_above);
        let [fuel_constant, fuel_slope] = self.fuel_heat;

        let dry = dry_heat.at(flue_above);
        let vapour = water.vapour * vapour_in_flue;
        let latent = (water.vapour - water.from_air) * (water_vapour::LATENT_HEAT_25C * self.per_gross);
        let condensate =
            water.condensate * (species::WATER.molar_mass * self.per_gross) * water_vapour::liquid_enthalpy_above_25c(flue_temperature);
        let unburnt = combustion.carbon_monoxide * self.carbon_monoxide;
        let air = combustion.excess_air_ratio * self.air_heat.at(air_above) + water.from_air * vapour_in_air;
        let fuel = air_above * (fuel_constant + air_above * fuel_slope);
        let efficiency_gross = 1.0 - dry - vapour - latent - condensate - unburnt + air + fuel;
        HeatBalance {
            dry,
            vapour,
            latent,
            condensate,
            unburnt,
            air,
            fuel,
            flue_loss_net: (dry - dry_heat.at(air_above) + water.total * (vapour_in_flue - vapour_in_air)) * self.gross_over_net,
            efficiency_gross,
            efficiency_net: efficiency_gross * self.gross_over_net,
        }
    }

    /// Mass of condensate per gross heat input, kg/J.
    #[must_use]
    #[inline(always)]
    pub fn condensate_per_gross_heat(&self, water: &FlueWater) -> f64 {
        water.condensate * (species::WATER.molar_mass * self.per_gross)
    }

    /// Mass of a trace gas per gross heat input, kg/J, from its fraction of the dry flue gas.
    #[must_use]
    #[inline(always)]
    pub fn mass_per_gross_heat(&self, combustion: &Combustion, fraction_dry: f64, molar_mass: f64) -> f64 {
        fraction_dry * combustion.dry_flue * molar_mass * self.per_gross
    }
}
