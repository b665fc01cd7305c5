//! The calculations `dry_air` and `humid_air`.

use super::properties::{dew_point, dry_air, humid_air};
use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::no_settings;
use crate::quantity::types::{
    DynamicViscosity, KinematicViscosity, MassDensity, Ratio, SpecificHeatCapacity, ThermalConductivity, ThermodynamicTemperature,
};
use crate::quantity::{AbsolutePressure, Value};
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};

/// A state of dry air.
#[record]
pub struct DryAirInput {
    /// Temperature of the air.
    #[field("t", DEGREE_CELSIUS, -50.0..=200.0, usual = -20.0..=110.0)]
    pub temperature: ThermodynamicTemperature,
    /// Absolute pressure of the air.
    #[field("p", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 800.0..=1060.0)]
    pub pressure: AbsolutePressure,
}

/// Properties of dry air.
#[record]
pub struct DryAirResult {
    /// Density.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE)]
    pub density: MassDensity,
    /// Specific heat capacity at constant pressure.
    #[field("c_p", JOULE_PER_KILOGRAM_KELVIN)]
    pub specific_heat_capacity: SpecificHeatCapacity,
    /// Dynamic viscosity.
    #[field("\\mu", PASCAL_SECOND)]
    pub dynamic_viscosity: DynamicViscosity,
    /// Kinematic viscosity.
    #[field("\\nu", SQUARE_METRE_PER_SECOND)]
    pub kinematic_viscosity: KinematicViscosity,
    /// Thermal conductivity.
    #[field("\\lambda", WATT_PER_METRE_KELVIN)]
    pub thermal_conductivity: ThermalConductivity,
    /// Prandtl number.
    #[field("Pr", ONE)]
    pub prandtl_number: Ratio,
}

/// Properties of dry air from temperature and pressure.
#[derive(Clone, Copy, Debug)]
pub struct DryAirState;

no_settings!(DryAirState);

impl Calculation for DryAirState {
    type Input = DryAirInput;
    type Output = DryAirResult;
    const INFO: Info = Info {
        name: "dry_air",
        title: "Properties of dry air",
        summary: "Density, heat capacity, viscosity, conductivity and Prandtl number of dry air.",
        sources: &[Source::new(
            "Lemmon et al. 2000, J. Phys. Chem. Ref. Data 29, 331; Lemmon & Jacobsen 2004, Int. J. Thermophys. 25, 21; as CoolProp 8.0.0 evaluates them",
            "all properties, fitted to 2e-6 at 1013.25 mbar",
        )],
        accuracy: "0.1 % in density, 1 % in heat capacity, 2 % in viscosity and conductivity, as the formulations. Away from \
                   1013.25 mbar the density is scaled in proportion, which costs at most 0.03 % from 0 °C up and 0.09 % at -50 °C.",
        cautions: &[],
        checked_against: "heat/air_dry_1atm.csv",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &DryAirInput, working: &mut W) -> DryAirResult {
        let air = dry_air(input.temperature.si(), input.pressure.si());
        step!(working, let density: "\\rho" = MassDensity::from_si(air.density), "Lemmon et al. 2000");
        step!(working, let specific_heat_capacity: "c_p" = SpecificHeatCapacity::from_si(air.heat_capacity), "Lemmon et al. 2000");
        step!(working, let dynamic_viscosity: "\\mu" = DynamicViscosity::from_si(air.viscosity), "Lemmon & Jacobsen 2004");
        step!(working, let thermal_conductivity: "\\lambda" = ThermalConductivity::from_si(air.conductivity), "Lemmon & Jacobsen 2004");
        step!(working, let kinematic_viscosity: "\\nu" as KinematicViscosity = dynamic_viscosity / density, "definition");
        step!(working, let prandtl_number: "Pr" = specific_heat_capacity * dynamic_viscosity / thermal_conductivity, "definition");
        DryAirResult { density, specific_heat_capacity, dynamic_viscosity, kinematic_viscosity, thermal_conductivity, prandtl_number }
    }
}

/// A state of humid air.
#[record]
pub struct HumidAirInput {
    /// Temperature of the air.
    #[field("t", DEGREE_CELSIUS, 0.0..=50.0, usual = 5.0..=40.0)]
    pub temperature: ThermodynamicTemperature,
    /// Relative humidity: vapour pressure over that of saturated air.
    #[field("\\varphi", PERCENT, 0.0..=100.0, usual = 10.0..=100.0)]
    pub relative_humidity: Ratio,
    /// Absolute pressure of the air.
    #[field("p", MILLIBAR, 600.0..=1100.0, default = 1013.25, usual = 800.0..=1060.0)]
    pub pressure: AbsolutePressure,
}

/// Properties of humid air.
#[record]
pub struct HumidAirResult {
    /// Density.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE)]
    pub density: MassDensity,
    /// Mass of vapour per mass of dry air.
    #[field("x", KILOGRAM_PER_KILOGRAM)]
    pub humidity_ratio: Ratio,
    /// Mole fraction of vapour in the humid air.
    #[field("y", PERCENT)]
    pub vapour_mole_fraction: Ratio,
    /// Pressure of the vapour: mole fraction times pressure.
    #[field("p_v", MILLIBAR)]
    pub vapour_pressure: AbsolutePressure,
    /// Temperature at which dew or, below 0 °C, frost begins to form.
    #[field("t_d", DEGREE_CELSIUS, absent = "below -40 °C")]
    pub dew_point: ThermodynamicTemperature,
}

/// Properties of humid air from temperature, relative humidity and pressure.
#[derive(Clone, Copy, Debug)]
pub struct HumidAirState;

no_settings!(HumidAirState);

rules! {
    notice FROST on "relative_humidity": "the dew point lies below 0 °C: frost forms, not dew";
}

impl Calculation for HumidAirState {
    type Input = HumidAirInput;
    type Output = HumidAirResult;
    const INFO: Info = Info {
        name: "humid_air",
        title: "Properties of humid air",
        summary: "Density, humidity ratio, vapour pressure and dew point of the air in a room or outdoors.",
        sources: &[
            Source::new("CIPM-2007: Picard, Davis, Gläser & Fujii 2008, Metrologia 45, 149", "density"),
            Source::new("IAPWS R7-97(2012) region 4, IAPWS R14-08(2011)", "saturation over water and over ice"),
            Source::new(
                "ASHRAE RP-1485 as CoolProp 8.0.0 evaluates it",
                "enhancement of the saturation pressure by the air, fitted to 6e-5",
            ),
        ],
        accuracy: "0.02 % in density and humidity ratio, 0.002 K in dew point, besides the readings: 3 % of relative humidity is 3 % of the vapour.",
        cautions: &[],
        checked_against: "heat/air_humid.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn review(&self, _input: &HumidAirInput, output: &HumidAirResult) -> Raised {
        let vapour = output.vapour_mole_fraction.si() > 0.0;
        let above = output.dew_point.si() >= 273.15;
        Raised::NONE.when(FROST, vapour & !above)
    }

    fn compute<W: Working>(&self, input: &HumidAirInput, working: &mut W) -> HumidAirResult {
        let pressure = input.pressure.plain();
        let air = humid_air(input.temperature.si(), input.pressure.si(), input.relative_humidity.si());
        step!(working, let vapour_mole_fraction: "y" = Ratio::from_si(air.vapour_mole_fraction), "relative humidity times saturation in air, IAPWS-IF97, RP-1485");
        step!(working, let vapour_pressure: "p_v" = vapour_mole_fraction * pressure, "definition");
        step!(working, let humidity_ratio: "x" = Ratio::from_si(air.humidity_ratio), "0.62196 y/(1 - y)");
        step!(working, let density: "\\rho" = MassDensity::from_si(air.density), "CIPM-2007");
        let dew = dew_point(air.vapour_mole_fraction, input.pressure.si());
        step!(working, let dew_point: "t_d" = ThermodynamicTemperature::from_si(dew), "where the vapour saturates the air");
        HumidAirResult { density, humidity_ratio, vapour_mole_fraction, vapour_pressure: AbsolutePressure::new(vapour_pressure), dew_point }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use flamewright_reference::rows;

    #[test]
    fn dry_air_agrees_with_the_reference() {
        for row in rows("heat/air_dry_1atm.csv") {
            let input = DryAirInput {
                temperature: ThermodynamicTemperature::from_si(row.number("T_C") + 273.15),
                pressure: AbsolutePressure::from_si(101_325.0),
            };
            let air = DryAirState.evaluate(&input).unwrap();
            for (got, column) in [
                (air.density.si(), "rho_kg_m3"),
                (air.specific_heat_capacity.si(), "cp_J_kgK"),
                (air.dynamic_viscosity.si(), "mu_Pa_s"),
                (air.thermal_conductivity.si(), "k_W_mK"),
                (air.prandtl_number.si(), "Pr"),
                (air.kinematic_viscosity.si(), "nu_m2_s"),
                (1.0 / input.temperature.si(), "beta_ideal_1_K"),
            ] {
                assert!((got / row.number(column) - 1.0).abs() < 1e-5, "{} {column}: {got}", row.place);
            }
        }
    }

    #[test]
    fn humid_air_agrees_with_the_reference() {
        for row in rows("heat/air_humid.csv") {
            let humidity = row.number("RH");
            let input = HumidAirInput {
                temperature: ThermodynamicTemperature::from_si(row.number("T_C") + 273.15),
                relative_humidity: Ratio::from_si(humidity),
                pressure: AbsolutePressure::from_si(row.number("p_Pa")),
            };
            let air = HumidAirState.evaluate(&input).unwrap();
            for column in ["rho_kg_m3", "rho_CIPM2007_kg_m3"] {
                assert!((air.density.si() / row.number(column) - 1.0).abs() < 1e-4, "{} {column}", row.place);
            }
            if humidity > 0.0 {
                assert!((air.humidity_ratio.si() / row.number("humidity_ratio_kg_kg") - 1.0).abs() < 1e-4, "{}", row.place);
                let dew = air.dew_point.si() - 273.15;
                assert!((dew - row.number("T_dew_C")).abs() < 1e-3, "{} {dew}", row.place);
                assert_eq!(air.notices().iter().any(|n| n.code == "FROST"), row.number("T_dew_C") < -1e-4);
            } else {
                assert!(air.humidity_ratio.si() == 0.0 && air.dew_point.si().is_nan() && air.notices().iter().all(|n| n.code != "FROST"));
            }
        }
    }
}
