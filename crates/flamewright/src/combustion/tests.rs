use super::air::{DryAir, humidity_mole_ratio};
use super::products::{NORMAL_MOLAR_VOLUME, Products};
use super::reference_fuels::{assert_close, fuel};
use super::{flame, species, water_vapour};
use crate::fuel::FuelState;
use crate::water::saturation_temperature;
use flamewright_reference::rows;
use std::format;

/// Six printed digits and the fuels' own six make this the tightest fair bound.
const PRINTED: f64 = 1.2e-5;

fn dew_point(products: &Products) -> f64 {
    saturation_temperature(101_325.0 * products.water / products.wet()) - 273.15
}

#[test]
fn stoichiometry_agrees_with_the_reference() {
    let table = rows("combustion/stoichiometry.csv");
    assert_eq!(table.len(), 16);
    for row in &table {
        let fuel = fuel(row.text("fuel"));
        let air = DryAir::STANDARD;
        let products = Products::of_complete_combustion(&fuel, &air, 1.0, 0.0);
        // Per kilogram the tables give normal cubic metres, per mole moles.
        let volume = if fuel.state == FuelState::Gas { 1.0 } else { NORMAL_MOLAR_VOLUME };
        let oxygen = fuel.stoichiometric_oxygen();
        let net_kwh = fuel.net_calorific_value / 3.6e6;
        let gross_kwh = fuel.gross_calorific_value / 3.6e6;
        let expect = |value: f64, column: &str| {
            assert_close(value, row.number(column), PRINTED, 0.0, &format!("{} {column}", fuel.name));
        };
        expect(oxygen * volume, "o2_mol_per_mol_or_m3n_per_kg");
        expect(oxygen / air.oxygen * volume, "dry_air_vol");
        expect(oxygen / air.oxygen * air.molar_mass() / fuel.mass, "dry_air_kg_per_kg");
        expect(products.dry() * volume, "dry_flue_vol");
        expect(products.wet() * volume, "wet_flue_vol");
        expect(products.water * volume, "h2o_vol");
        expect(products.water * species::WATER.molar_mass / fuel.mass, "h2o_kg_per_kg");
        expect(products.carbon_dioxide * volume, "co2_vol");
        expect(100.0 * products.carbon_dioxide / products.dry(), "co2max_dry_pct");
        expect(oxygen / air.oxygen * NORMAL_MOLAR_VOLUME / net_kwh, "dry_air_m3n_per_kWh_net");
        expect(products.dry() * NORMAL_MOLAR_VOLUME / net_kwh, "dry_flue_m3n_per_kWh_net");
        expect(products.dry() * NORMAL_MOLAR_VOLUME / gross_kwh, "dry_flue_m3n_per_kWh_gross");
        expect(fuel.elements.carbon * species::CARBON_DIOXIDE.molar_mass / gross_kwh, "co2_kg_per_kWh_gross");
        assert_close(dew_point(&products), row.number("flue_dew_point_C"), 0.0, 0.02, &fuel.name);
        let simple = Products::of_complete_combustion(&fuel, &DryAir::OXYGEN_21_NITROGEN_79, 1.0, 0.0);
        expect(oxygen / 0.21 * volume, "simple_air_dry_air_vol");
        expect(100.0 * simple.carbon_dioxide / simple.dry(), "simple_air_co2max_pct");
    }
}

#[test]
fn flue_gas_at_any_excess_air_agrees_with_the_reference() {
    let table = rows("combustion/flue_composition_vs_lambda.csv");
    assert_eq!(table.len(), 96);
    for row in &table {
        let fuel = fuel(row.text("fuel"));
        let products = Products::of_complete_combustion(&fuel, &DryAir::STANDARD, row.number("lambda"), 0.0);
        let volume = if fuel.state == FuelState::Gas { 1.0 } else { NORMAL_MOLAR_VOLUME };
        let wet = products.wet();
        let expect = |value: f64, column: &str| {
            assert_close(value, row.number(column), PRINTED, 1e-12, &format!("{} {column}", fuel.name));
        };
        expect(100.0 * products.oxygen / products.dry(), "o2_dry_pct");
        expect(100.0 * products.carbon_dioxide / products.dry(), "co2_dry_pct");
        expect(products.carbon_dioxide / wet, "wet_co2");
        expect(products.water / wet, "wet_h2o");
        expect(products.oxygen / wet, "wet_o2");
        expect(products.nitrogen / wet, "wet_n2");
        expect(products.argon / wet, "wet_ar");
        expect(products.sulphur_dioxide / wet, "wet_so2");
        assert_close(dew_point(&products), row.number("dew_point_C"), 0.0, 0.02, &fuel.name);
        expect(products.dry() * volume, "dry_flue_vol");
        expect(wet * volume, "wet_flue_vol");
        expect(products.mass() / fuel.mass, "flue_kg_per_kg_fuel");
        expect(1000.0 * products.mass() / wet, "M_wet_flue");
        expect(products.mass() / wet / NORMAL_MOLAR_VOLUME, "rho_wet_flue_kg_per_m3n");
    }
}

#[test]
fn humid_air_raises_the_dew_point_as_in_the_reference() {
    let table = rows("combustion/dew_point_humid_air.csv");
    assert_eq!(table.len(), 12);
    for row in &table {
        let fuel = fuel(row.text("fuel"));
        let humidity = humidity_mole_ratio(row.number("air_rh_pct") / 100.0, row.number("air_temp_C") + 273.15, 101_325.0);
        let products = Products::of_complete_combustion(&fuel, &DryAir::STANDARD, row.number("lambda"), humidity);
        let by_mass = humidity * species::WATER.molar_mass / DryAir::STANDARD.molar_mass();
        // Saturation pressures of IF97 and IAPWS-95 differ by up to 7e-5.
        assert_close(by_mass, row.number("air_humidity_kg_per_kg"), 1e-4, 0.0, &fuel.name);
        assert_close(products.water / products.wet(), row.number("wet_h2o"), 2e-5, 0.0, &fuel.name);
        assert_close(dew_point(&products), row.number("dew_point_C"), 0.0, 0.02, &fuel.name);
    }
}

#[test]
fn saturated_water_agrees_with_iapws95() {
    let table = rows("combustion/water_saturation_iapws95.csv");
    assert_eq!(table.len(), 21);
    for row in &table {
        let temperature = row.number("t_C") + 273.15;
        assert_close(water_vapour::saturation_pressure(temperature), row.number("psat_Pa"), 1e-4, 0.0, "psat");
        let vaporisation = water_vapour::heat_of_vaporisation(temperature) / 1000.0;
        assert_close(vaporisation, row.number("hfg_kJ_per_kg"), 1e-4, 0.0, "hfg");
        // At 0 degC the enthalpy itself is nearly zero; there the bound is 0.002 kJ/kg.
        let liquid = water_vapour::liquid_enthalpy(temperature) / 1000.0;
        assert_close(liquid, row.number("hf_kJ_per_kg"), 1e-4, 0.002, "hf");
    }
}

#[test]
fn the_quick_saturation_pressure_follows_region_4() {
    let mut temperature = 273.15;
    while temperature < 393.15 {
        let exact = crate::water::saturation_pressure(temperature);
        assert_close(water_vapour::saturation_pressure(temperature), exact, 6e-8, 0.0, "psat");
        temperature += 0.1;
    }
    assert!(water_vapour::saturation_pressure(f64::NAN).is_nan());
    assert!(water_vapour::saturation_pressure(900.0) > 1.9e5);
}

#[test]
fn sensible_enthalpy_agrees_with_the_reference() {
    let table = rows("combustion/gas_sensible_enthalpy_above_25C.csv");
    assert_eq!(table.len(), 15);
    let gases = [
        ("CO2", species::CARBON_DIOXIDE),
        ("H2O", species::WATER),
        ("O2", species::OXYGEN),
        ("N2", species::NITROGEN),
        ("Ar", species::ARGON),
        ("SO2", species::SULPHUR_DIOXIDE),
        ("CO", species::CARBON_MONOXIDE),
    ];
    for row in &table {
        let temperature = row.number("t_C") + 273.15;
        for (formula, gas) in &gases {
            let expected = row.number(&format!("{formula}_kJ_per_mol"));
            assert_close(gas.sensible_enthalpy(temperature) / 1000.0, expected, 1e-5, 1e-6, formula);
            let polynomial = gas.sensible_polynomial().at(temperature - species::ENTHALPY_DATUM);
            assert_close(polynomial / 1000.0, expected, 1e-5, 1e-6, formula);
        }
    }
}

#[test]
fn polynomials_meet_at_1000_kelvin() {
    let gases = [
        species::CARBON_DIOXIDE,
        species::WATER,
        species::OXYGEN,
        species::NITROGEN,
        species::ARGON,
        species::SULPHUR_DIOXIDE,
        species::CARBON_MONOXIDE,
        species::HYDROGEN,
        species::HYDROXYL,
        species::ATOMIC_HYDROGEN,
        species::ATOMIC_OXYGEN,
        species::NITRIC_OXIDE,
    ];
    for gas in gases {
        let below = 1000.0 * (1.0 - f64::EPSILON);
        assert_close(gas.enthalpy(1000.0), gas.enthalpy(below), 1e-6, 0.3, gas.formula);
        assert_close(gas.entropy_over_r(1000.0), gas.entropy_over_r(below), 1e-5, 0.0, gas.formula);
        assert_close(gas.heat_capacity_over_r(1000.0), gas.heat_capacity_over_r(below), 1e-4, 0.0, gas.formula);
    }
}

#[test]
fn flame_temperature_agrees_with_the_reference() {
    let table = rows("combustion/adiabatic_flame_temperature.csv");
    assert_eq!(table.len(), 9);
    for row in &table {
        let fuel = fuel(row.text("fuel"));
        let start = row.number("t_reactants_C") + 273.15;
        let ratio = row.number("lambda");
        let air = DryAir::STANDARD;
        let products = Products::of_complete_combustion(&fuel, &air, ratio, 0.0);
        let heat = flame::heat_in_products(&fuel, &air, ratio, 0.0, start, start);
        let complete = flame::complete(&products, heat);
        assert_close(complete, row.number("T_complete_combustion_K"), 0.0, 1.0, &fuel.name);
        let equilibrium = flame::equilibrium(&products, heat, 101_325.0);
        std::println!("{} {ratio}: {complete:.2} {equilibrium:.3?}", fuel.name);
        assert_close(equilibrium.temperature, row.number("T_equilibrium_K_nasa"), 0.0, 2.0, &fuel.name);
        let carbon_monoxide = 1e6 * equilibrium.carbon_monoxide_wet;
        assert_close(carbon_monoxide, row.number("eq_CO_ppm_wet"), 0.01, 0.0, &fuel.name);
        assert_close(1e6 * equilibrium.nitric_oxide_wet, row.number("eq_NO_ppm_wet"), 0.01, 0.0, &fuel.name);
    }
}

#[test]
fn equilibrium_is_found_or_refused_over_a_wide_field() {
    let methane = fuel("G20");
    let air = DryAir::STANDARD;
    let mut last = f64::INFINITY;
    for step in 0..200 {
        let ratio = 1.0 + 0.05 * f64::from(step);
        let products = Products::of_complete_combustion(&methane, &air, ratio, 0.0);
        let heat = flame::heat_in_products(&methane, &air, ratio, 0.0, 298.15, 298.15);
        let found = flame::equilibrium(&products, heat, 101_325.0);
        let complete = flame::complete(&products, heat);
        assert!(found.temperature < last, "ratio {ratio}: {} after {last}", found.temperature);
        // The trace of every element may shift a cold gas by a hair.
        assert!(found.temperature < complete + 1e-3, "ratio {ratio}: {} {complete}", found.temperature);
        last = found.temperature;
    }
    for pressure in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let products = Products::of_complete_combustion(&methane, &air, 1.0, 0.0);
        assert!(flame::equilibrium(&products, 8e5, pressure).temperature.is_nan());
    }
    let carbon_free = DryAir { carbon_dioxide: 0.0, nitrogen: 0.7812, ..air };
    let products = Products::of_complete_combustion(&fuel("H2"), &carbon_free, 1.0, 0.0);
    let heat = flame::heat_in_products(&fuel("H2"), &carbon_free, 1.0, 0.0, 298.15, 298.15);
    let found = flame::equilibrium(&products, heat, 101_325.0);
    assert_close(found.temperature, 2380.4, 0.0, 2.0, "hydrogen in carbon-free air");
}
