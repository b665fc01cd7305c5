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
use crate::quantity::units::{PASCAL, PERCENT};
use crate::working::{Working, step};

/// A fuel and its combustion air, prepared for the analysis of many readings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlueKernel {
    /// Dry air needed, mol per unit of fuel.
    dry_air: f64,
    /// Dry flue gas without excess air, mol per unit of fuel, and its reciprocal.
    stoichiometric_dry_flue: f64,
    per_stoichiometric_dry_flue: f64,
    /// Carbon of the fuel, mol per unit of fuel.
    carbon: f64,
    /// Water from the fuel, mol per unit of fuel.
    water: f64,
    /// Oxygen in dry air, mol/mol, and its reciprocal.
    air_oxygen: f64,
    per_air_oxygen: f64,
    /// Carbon dioxide in dry air, mol/mol, and in the dry air needed, mol per unit of fuel.
    air_carbon_dioxide_fraction: f64,
    air_carbon_dioxide: f64,
    /// Share of the flue gas that is not excess air, per carbon dioxide above that of the air.
    undiluted_per_carbon_dioxide: f64,
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
            per_stoichiometric_dry_flue: 1.0 / stoichiometric.dry(),
            carbon: fuel.elements.carbon,
            water: 0.5 * fuel.elements.hydrogen,
            air_oxygen: air.oxygen,
            per_air_oxygen: 1.0 / air.oxygen,
            air_carbon_dioxide_fraction: air.carbon_dioxide,
            air_carbon_dioxide: air.carbon_dioxide * dry_air,
            undiluted_per_carbon_dioxide: stoichiometric.dry()
                / (fuel.elements.carbon + air.carbon_dioxide * (dry_air - stoichiometric.dry())),
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
        (self.carbon + self.air_carbon_dioxide) / self.stoichiometric_dry_flue
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
    pub fn combustion<W: Working>(&self, oxygen_dry: f64, carbon_monoxide_dry: f64, working: &mut W) -> Combustion {
        // What the fuel and the air fix, so that the sum can be followed on paper.
        step!(working, let stoichiometric_dry_flue: "V_0" = self.stoichiometric_dry_flue, "fuel: dry flue gas without excess air, mol per mol or kg");
        step!(working, let per_stoichiometric_dry_flue: "1/V_0" = self.per_stoichiometric_dry_flue, "its reciprocal");
        step!(working, let per_oxygen: "1/O_{min}" = self.per_oxygen, "fuel: reciprocal of the oxygen needed");
        step!(working, let per_air_oxygen: "1/x_{O_2,air}" = self.per_air_oxygen, "air: reciprocal of its oxygen");
        step!(working, let carbon: "n_C" = self.carbon, "fuel: carbon, mol per mol or kg");
        step!(working, let air_carbon_dioxide: "n_{CO_2,air}" = self.air_carbon_dioxide, "carbon dioxide in the air needed");
        step!(working, let surplus_oxygen: "x_{sur}" in PERCENT = oxygen_dry - 0.5 * carbon_monoxide_dry, "oxygen left had the CO burnt");
        step!(working, let undiluted_share: "s" = 1.0 - 0.5 * carbon_monoxide_dry - surplus_oxygen * per_air_oxygen, "element balance: share of dry flue gas that is not excess air");
        step!(working, let dry_flue: "V_{dry}" = stoichiometric_dry_flue / undiluted_share, "element balance, mol per mol or kg of fuel");
        step!(working, let excess_air_ratio: "\\lambda" = 1.0 + dry_flue * surplus_oxygen * per_oxygen, "element balance: air supplied over air needed");
        step!(working, let carbon_dioxide_dry: "x_{CO_2}" in PERCENT = (carbon + excess_air_ratio * air_carbon_dioxide) * undiluted_share * per_stoichiometric_dry_flue - carbon_monoxide_dry, "carbon balance");
        Combustion { excess_air_ratio, dry_flue, carbon_monoxide: carbon_monoxide_dry * dry_flue, oxygen_dry, carbon_dioxide_dry }
    }

    /// Oxygen in dry flue gas, mol/mol, that belongs to this carbon dioxide and carbon monoxide.
    ///
    /// Exact element balance. Useless for fuels without carbon, whose flue gas has only the air's.
    #[must_use]
    #[inline(always)]
    pub fn oxygen_from_carbon_dioxide(&self, carbon_dioxide_dry: f64, carbon_monoxide_dry: f64) -> f64 {
        // With no excess air counted in, the carbon of fuel and air fixes 1/D; see the module.
        let without = 1.0 - 0.5 * carbon_monoxide_dry;
        let undiluted_share =
            (carbon_dioxide_dry + carbon_monoxide_dry - self.air_carbon_dioxide_fraction * without) * self.undiluted_per_carbon_dioxide;
        0.5 * carbon_monoxide_dry + self.air_oxygen * (without - undiluted_share)
    }

    /// Carbon monoxide in dry flue gas thinned or thickened to no excess air, mol/mol.
    #[must_use]
    #[inline(always)]
    pub fn carbon_monoxide_air_free(&self, combustion: &Combustion) -> f64 {
        combustion.carbon_monoxide * self.per_stoichiometric_dry_flue
    }

    /// Water in the flue gas, its dew point, and what of it condenses at flue temperature.
    ///
    /// `humidity_mole_ratio` in mol of water per mol of dry air, temperature in K, absolute
    /// pressure in Pa. Flue gas below its dew point leaves saturated.
    #[must_use]
    #[inline(always)]
    pub fn water<W: Working>(
        &self,
        combustion: &Combustion,
        humidity_mole_ratio: f64,
        flue_temperature: f64,
        pressure: f64,
        working: &mut W,
    ) -> FlueWater {
        let Combustion { excess_air_ratio, dry_flue, .. } = *combustion;
        step!(working, let dry_air: "L_{min}" = self.dry_air, "fuel: dry air needed, mol per mol or kg");
        step!(working, let fuel_water: "n_{w,B}" = self.water, "fuel: water it makes and brings");
        step!(working, let air_water: "n_{w,air}" = excess_air_ratio * dry_air * humidity_mole_ratio, "water of the air, mol per mol or kg of fuel");
        step!(working, let total: "n_w" = fuel_water + air_water, "all water, mol per mol or kg of fuel");
        step!(working, let vapour_pressure: "p_w" in PASCAL = pressure * total / (total + dry_flue), "Dalton's law");
        let saturation = water_vapour::saturation_pressure(flue_temperature);
        let rest = pressure - saturation;
        // At or above boiling any amount of vapour stays vapour: no rest, a huge saturated amount.
        let rest = if rest < 1e-3 { 1e-3 } else { rest };
        let saturated = dry_flue * saturation / rest;
        // The order of the comparison keeps a NaN.
        let vapour = if total < saturated { total } else { saturated };
        FlueWater { total, from_air: air_water, vapour, condensate: total - vapour, dew_point: water_vapour::dew_point(vapour_pressure) }
    }

    /// Where the heat goes. Temperatures in K: the flue's below 1000, the air's 233 to 333.
    #[must_use]
    #[inline(always)]
    pub fn heat<W: Working>(
        &self,
        combustion: &Combustion,
        water: &FlueWater,
        flue_temperature: f64,
        air_temperature: f64,
        working: &mut W,
    ) -> HeatBalance {
        let flue_above = flue_temperature - species::ENTHALPY_DATUM;
        let air_above = air_temperature - species::ENTHALPY_DATUM;
        let dry_heat =
            self.dry_heat.plus(combustion.excess_air_ratio, &self.air_heat).plus(combustion.carbon_monoxide, &self.carbon_monoxide_heat);
        let dry_gas_heat = dry_heat.at(flue_above);
        let vapour_heat = self.vapour_heat.at(flue_above);
        let vapour_heat_of_air = self.vapour_heat.at(air_above);
        let latent_heat = water_vapour::LATENT_HEAT_25C * self.per_gross;
        let liquid_heat = (species::WATER.molar_mass * self.per_gross) * water_vapour::liquid_enthalpy_above_25c(flue_temperature);
        let dry_air_heat = self.air_heat.at(air_above);
        let [fuel_constant, fuel_slope] = self.fuel_heat;
        let fuel_heat = air_above * (fuel_constant + air_above * fuel_slope);
        let carbon_monoxide_heat = self.carbon_monoxide;
        let Combustion { excess_air_ratio, carbon_monoxide, .. } = *combustion;
        let FlueWater { total: all_water, from_air: air_water, vapour: vapour_amount, condensate: condensate_amount, .. } = *water;
        let gross_over_net = self.gross_over_net;

        step!(working, let dry: "q_{dry}" in PERCENT = dry_gas_heat, "NASA TM-4513 enthalpies above 25 °C, share of gross heat");
        step!(working, let vapour: "q_{vap}" in PERCENT = vapour_amount * vapour_heat, "NASA TM-4513");
        step!(working, let latent: "q_{lat}" in PERCENT = (vapour_amount - air_water) * latent_heat, "ISO 6976:2016 Table A.5");
        step!(working, let condensate: "q_{con}" in PERCENT = condensate_amount * liquid_heat, "IAPWS-95, fitted");
        step!(working, let unburnt: "q_{CO}" in PERCENT = carbon_monoxide * carbon_monoxide_heat, "NASA TM-4513");
        step!(working, let air: "q_{air}" in PERCENT = excess_air_ratio * dry_air_heat + air_water * vapour_heat_of_air, "NASA TM-4513");
        step!(working, let fuel: "q_{fuel}" in PERCENT = fuel_heat, "heat capacity of the fuel gas");
        step!(working, let efficiency_gross: "\\eta_s" in PERCENT = 1.0 - dry - vapour - latent - condensate - unburnt + air + fuel, "energy balance");
        step!(working, let efficiency_net: "\\eta_i" in PERCENT = efficiency_gross * gross_over_net, "definition");
        let dry_gas_heat_at_air = dry_heat.at(air_above);
        step!(working, let flue_loss_net: "q_A" in PERCENT = (dry - dry_gas_heat_at_air + all_water * (vapour_heat - vapour_heat_of_air)) * gross_over_net, "enthalpies above air temperature");
        HeatBalance { dry, vapour, latent, condensate, unburnt, air, fuel, flue_loss_net, efficiency_gross, efficiency_net }
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
