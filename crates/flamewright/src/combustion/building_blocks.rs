//! The calculations `gas_enthalpy` and `saturated_water`: what flue losses are made of.

use super::{species, water_vapour};
use crate::calculation::{Calculation, Info, Source};
use crate::no_settings;
use crate::quantity::types::{AvailableEnergy, MolarEnergy, ThermodynamicTemperature};
use crate::quantity::{AbsolutePressure, Value};
use crate::record::record;
use crate::working::{Working, step};

/// A temperature of flue gas.
#[record]
pub struct GasTemperature {
    /// Temperature of the gas.
    #[field("t", DEGREE_CELSIUS, -50.0..=2700.0, usual = 0.0..=600.0)]
    pub temperature: ThermodynamicTemperature,
}

/// Heat of one mole of each flue gas above 25 °C.
#[record]
pub struct GasEnthalpies {
    /// Carbon dioxide.
    #[field("h_{CO_2}", KILOJOULE_PER_MOLE)]
    pub carbon_dioxide: MolarEnergy,
    /// Water vapour as an ideal gas.
    #[field("h_{H_2O}", KILOJOULE_PER_MOLE)]
    pub water_vapour: MolarEnergy,
    /// Oxygen.
    #[field("h_{O_2}", KILOJOULE_PER_MOLE)]
    pub oxygen: MolarEnergy,
    /// Nitrogen.
    #[field("h_{N_2}", KILOJOULE_PER_MOLE)]
    pub nitrogen: MolarEnergy,
    /// Argon.
    #[field("h_{Ar}", KILOJOULE_PER_MOLE)]
    pub argon: MolarEnergy,
    /// Sulphur dioxide.
    #[field("h_{SO_2}", KILOJOULE_PER_MOLE)]
    pub sulphur_dioxide: MolarEnergy,
    /// Carbon monoxide.
    #[field("h_{CO}", KILOJOULE_PER_MOLE)]
    pub carbon_monoxide: MolarEnergy,
}

/// Enthalpies of the flue gases.
#[derive(Clone, Copy, Debug)]
pub struct GasEnthalpy;

no_settings!(GasEnthalpy);

impl Calculation for GasEnthalpy {
    type Input = GasTemperature;
    type Output = GasEnthalpies;
    const INFO: Info = Info {
        name: "gas_enthalpy",
        title: "Enthalpies of flue gases",
        summary: "Heat of one mole of each flue gas above 25 °C.",
        sources: &[Source::new("NASA TM-4513 (1993)", "seven-coefficient polynomials, 200 to 6000 K (sulphur dioxide 300 to 5000 K)")],
        accuracy: "0.1 % up to 1000 K.",
        cautions: &[],
        checked_against: "combustion/gas_sensible_enthalpy_above_25C.csv",
    };

    fn compute<W: Working>(&self, input: &GasTemperature, working: &mut W) -> GasEnthalpies {
        let heat = |gas: &species::Species| MolarEnergy::from_si(gas.sensible_enthalpy(input.temperature.si()));
        step!(working, let carbon_dioxide: "h_{CO_2}" = heat(&species::CARBON_DIOXIDE), "NASA TM-4513");
        step!(working, let water_vapour: "h_{H_2O}" = heat(&species::WATER), "NASA TM-4513");
        step!(working, let oxygen: "h_{O_2}" = heat(&species::OXYGEN), "NASA TM-4513");
        step!(working, let nitrogen: "h_{N_2}" = heat(&species::NITROGEN), "NASA TM-4513");
        step!(working, let argon: "h_{Ar}" = heat(&species::ARGON), "NASA TM-4513");
        step!(working, let sulphur_dioxide: "h_{SO_2}" = heat(&species::SULPHUR_DIOXIDE), "NASA TM-4513");
        step!(working, let carbon_monoxide: "h_{CO}" = heat(&species::CARBON_MONOXIDE), "NASA TM-4513");
        GasEnthalpies { carbon_dioxide, water_vapour, oxygen, nitrogen, argon, sulphur_dioxide, carbon_monoxide }
    }
}

/// A temperature of saturated water.
#[record]
pub struct SaturationTemperature {
    /// Temperature of water and vapour.
    #[field("t", DEGREE_CELSIUS, 0.0..=100.0)]
    pub temperature: ThermodynamicTemperature,
}

/// Water and vapour in balance.
#[record]
pub struct SaturatedWaterResult {
    /// Saturation pressure.
    #[field("p_s", PASCAL)]
    pub saturation_pressure: AbsolutePressure,
    /// Heat of vaporisation.
    #[field("r", KILOJOULE_PER_KILOGRAM)]
    pub heat_of_vaporisation: AvailableEnergy,
    /// Enthalpy of the liquid above that at the triple point.
    #[field("h'", KILOJOULE_PER_KILOGRAM)]
    pub liquid_enthalpy: AvailableEnergy,
}

/// Saturated water.
#[derive(Clone, Copy, Debug)]
pub struct SaturatedWater;

no_settings!(SaturatedWater);

impl Calculation for SaturatedWater {
    type Input = SaturationTemperature;
    type Output = SaturatedWaterResult;
    const INFO: Info = Info {
        name: "saturated_water",
        title: "Saturated water",
        summary: "Vapour pressure, heat of vaporisation and liquid enthalpy of water from 0 to 100 °C.",
        sources: &[
            Source::new("IAPWS-IF97 region 4, R7-97(2012)", "saturation pressure, by a fit within 6e-8"),
            Source::new("IAPWS-95, by CoolProp 8.0.0", "heat of vaporisation and liquid enthalpy, by fits within 2 J/kg"),
        ],
        accuracy: "Saturation pressure 7e-5 of IAPWS-95.",
        cautions: &[],
        checked_against: "combustion/water_saturation_iapws95.csv, heat/water_saturation.csv, heat/iapws_check_values.csv",
    };

    fn compute<W: Working>(&self, input: &SaturationTemperature, working: &mut W) -> SaturatedWaterResult {
        let temperature = input.temperature.si();
        let pressure = AbsolutePressure::from_si(water_vapour::saturation_pressure(temperature)).plain();
        let vaporisation = AvailableEnergy::from_si(water_vapour::heat_of_vaporisation(temperature));
        let liquid = AvailableEnergy::from_si(water_vapour::liquid_enthalpy(temperature));
        step!(working, let saturation_pressure: "p_s" = pressure, "IAPWS-IF97 region 4");
        step!(working, let heat_of_vaporisation: "r" = vaporisation, "IAPWS-95, fitted");
        step!(working, let liquid_enthalpy: "h'" = liquid, "IAPWS-95, fitted");
        SaturatedWaterResult { saturation_pressure: AbsolutePressure::new(saturation_pressure), heat_of_vaporisation, liquid_enthalpy }
    }
}
