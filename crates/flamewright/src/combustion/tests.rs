use super::air::DryAir;
use super::products::Products;
use super::reference_fuels::{assert_close, fuel, fuel_setting};
use super::{
    BurnerAir, CombustionAirFlow, CombustionAirState, CombustionProducts, FlameState, FlameTemperature, GasEnthalpy, GasTemperature,
    SaturatedWater, SaturationTemperature, equilibrium, flame, species, water_vapour,
};
use crate::calculation::Calculation;
use crate::catalogue::{Bare, evaluate};
use crate::fuel::FuelState;
use crate::node::Node;
use crate::quantity::Value;
use crate::record::Record;
use flamewright_reference::{rows, rows_of_kind};
use std::format;
use std::string::ToString;

/// Half a unit in the sixth printed digit; the tables ask for 1e-5.
const PRINTED: f64 = 6e-6;

fn products(name: &str, air: DryAir) -> CombustionProducts {
    CombustionProducts { fuel: fuel(name), air }
}

#[test]
fn stoichiometry_agrees_with_the_reference() {
    let table = rows("combustion/stoichiometry.csv");
    assert_eq!(table.len(), 16);
    for row in &table {
        let name = row.text("fuel");
        let calculation = products(name, DryAir::STANDARD);
        let got = calculation.evaluate(&CombustionAirState::unset()).unwrap().output;
        let expect = |value: f64, column: &str| assert_close(value, row.number(column), PRINTED, 0.0, &format!("{name} {column}"));
        let gas = calculation.fuel.state == FuelState::Gas;
        for (by_volume, by_mass, column) in [
            (got.stoichiometric_oxygen, got.stoichiometric_oxygen_per_mass, "o2_mol_per_mol_or_m3n_per_kg"),
            (got.stoichiometric_air, got.stoichiometric_air_per_mass, "dry_air_vol"),
            (got.dry_flue, got.dry_flue_per_mass, "dry_flue_vol"),
            (got.wet_flue, got.wet_flue_per_mass, "wet_flue_vol"),
            (got.water_vapour, got.water_vapour_per_mass, "h2o_vol"),
            (got.carbon_dioxide, got.carbon_dioxide_per_mass, "co2_vol"),
        ] {
            assert_eq!(by_volume.si().is_nan(), !gas, "{name} {column}");
            expect(if gas { by_volume.si() } else { by_mass.si() }, column);
        }
        expect(got.stoichiometric_air_mass.si(), "dry_air_kg_per_kg");
        expect(got.water_mass.si(), "h2o_kg_per_kg");
        expect(100.0 * got.carbon_dioxide_maximum.si(), "co2max_dry_pct");
        expect(3.6e6 * got.stoichiometric_air_per_net_heat.si(), "dry_air_m3n_per_kWh_net");
        expect(3.6e6 * got.dry_flue_per_net_heat.si(), "dry_flue_m3n_per_kWh_net");
        expect(3.6e6 * got.dry_flue_per_gross_heat.si(), "dry_flue_m3n_per_kWh_gross");
        expect(3.6e6 * got.carbon_dioxide_per_gross_heat.si(), "co2_kg_per_kWh_gross");
        assert_close(got.water_dew_point.si() - 273.15, row.number("flue_dew_point_C"), 0.0, 0.02, name);
        let simple = products(name, DryAir::OXYGEN_21_NITROGEN_79).evaluate(&CombustionAirState::unset()).unwrap().output;
        let air = if gas { simple.stoichiometric_air.si() } else { simple.stoichiometric_air_per_mass.si() };
        expect(air, "simple_air_dry_air_vol");
        expect(100.0 * simple.carbon_dioxide_maximum.si(), "simple_air_co2max_pct");
    }
}

#[test]
fn real_volume_of_air_takes_the_compression_factor() {
    let mut checked = 0;
    for row in rows("combustion/stoichiometry.csv") {
        let name = row.text("fuel");
        let Some(expected) = row.maybe("dry_air_m3_per_m3_real_15C") else { continue };
        let properties = Node::from([("fuel", fuel_setting(name))]);
        let factor = evaluate("fuel_properties", &properties, Bare::Refused).unwrap().get("compression_factor").unwrap();
        let given = Node::from([("fuel", fuel_setting(name)), ("fuel_compression_factor", Node::Number(factor))]);
        let got = evaluate("combustion_products", &given, Bare::Refused).unwrap().get("stoichiometric_air_real").unwrap();
        assert_close(got, expected, 1e-5, 0.0, name);
        checked += 1;
    }
    assert_eq!(checked, 13);
}

#[test]
fn flue_gas_at_any_excess_air_agrees_with_the_reference() {
    let table = rows("combustion/flue_composition_vs_lambda.csv");
    assert_eq!(table.len(), 96);
    for row in &table {
        let name = row.text("fuel");
        let calculation = products(name, DryAir::STANDARD);
        let ratio = Value::from_si(row.number("lambda"));
        let got = calculation.evaluate(&CombustionAirState { excess_air_ratio: ratio, ..CombustionAirState::unset() }).unwrap().output;
        let expect = |value: f64, column: &str| assert_close(value, row.number(column), PRINTED, 1e-12, &format!("{name} {column}"));
        expect(100.0 * got.oxygen_dry.si(), "o2_dry_pct");
        expect(100.0 * got.carbon_dioxide_dry.si(), "co2_dry_pct");
        expect(got.carbon_dioxide_wet.si(), "wet_co2");
        expect(got.water_wet.si(), "wet_h2o");
        expect(got.oxygen_wet.si(), "wet_o2");
        expect(got.nitrogen_wet.si(), "wet_n2");
        expect(got.argon_wet.si(), "wet_ar");
        expect(got.sulphur_dioxide_wet.si(), "wet_so2");
        assert_close(got.water_dew_point.si() - 273.15, row.number("dew_point_C"), 0.0, 0.02, name);
        let gas = calculation.fuel.state == FuelState::Gas;
        expect(if gas { got.dry_flue.si() } else { got.dry_flue_per_mass.si() }, "dry_flue_vol");
        expect(if gas { got.wet_flue.si() } else { got.wet_flue_per_mass.si() }, "wet_flue_vol");
        expect(got.flue_mass.si(), "flue_kg_per_kg_fuel");
        expect(1000.0 * got.flue_molar_mass.si(), "M_wet_flue");
        expect(got.flue_normal_density.si(), "rho_wet_flue_kg_per_m3n");
    }
}

#[test]
fn humid_air_raises_the_dew_point_as_in_the_reference() {
    let table = rows("combustion/dew_point_humid_air.csv");
    assert_eq!(table.len(), 12);
    for row in &table {
        let name = row.text("fuel");
        let text = |column: &str, unit: &str| Node::Text(format!("{} {unit}", row.text(column)));
        let given = Node::from([
            ("fuel", fuel_setting(name)),
            ("excess_air_ratio", text("lambda", "")),
            ("air_temperature", text("air_temp_C", "degC")),
            ("relative_humidity", text("air_rh_pct", "%")),
        ]);
        let got = evaluate("combustion_products", &given, Bare::Refused).unwrap();
        let get = |name: &str| got.get(name).unwrap();
        // Saturation pressures of IF97 and IAPWS-95 differ by up to 7e-5.
        assert_close(get("humidity_ratio"), row.number("air_humidity_kg_per_kg"), 7e-5, 0.0, name);
        assert_close(get("water_wet"), row.number("wet_h2o"), 2e-5, 0.0, name);
        assert_close(100.0 * get("oxygen_dry"), row.number("o2_dry_pct"), PRINTED, 0.0, name);
        assert_close(get("water_dew_point") - 273.15, row.number("dew_point_C"), 0.0, 0.02, name);
    }
}

#[test]
fn saturated_water_agrees_with_iapws95() {
    let table = rows("combustion/water_saturation_iapws95.csv");
    assert_eq!(table.len(), 21);
    for row in &table {
        let temperature = Value::from_si(row.number("t_C") + 273.15);
        let got = SaturatedWater.evaluate(&SaturationTemperature { temperature }).unwrap().output;
        assert_close(got.saturation_pressure.si(), row.number("psat_Pa"), 1e-4, 0.0, "psat");
        assert_close(got.heat_of_vaporisation.si() / 1000.0, row.number("hfg_kJ_per_kg"), 1e-5, 0.0, "hfg");
        // At 0 degC the enthalpy itself is nearly zero; there the bound is 0.002 kJ/kg.
        assert_close(got.liquid_enthalpy.si() / 1000.0, row.number("hf_kJ_per_kg"), 1e-4, 0.002, "hf");
    }
}

#[test]
fn quick_saturation_follows_region_4() {
    let mut temperature = 273.15;
    while temperature < 393.15 {
        let exact = crate::water::saturation_pressure(temperature);
        assert_close(water_vapour::saturation_pressure(temperature), exact, 6e-8, 0.0, "saturation pressure");
        temperature += 0.1;
    }
    let mut pressure = 611.22;
    while pressure < 110_000.0 {
        let exact = crate::water::saturation_temperature(pressure);
        assert_close(water_vapour::dew_point(pressure), exact, 0.0, 1e-7, "dew point");
        pressure *= 1.001;
    }
    assert!(water_vapour::dew_point(600.0).is_nan() && water_vapour::dew_point(f64::NAN).is_nan());
    assert!(water_vapour::saturation_pressure(f64::NAN).is_nan());
    assert!(water_vapour::saturation_pressure(900.0) > 1.9e5);
}

#[test]
fn enthalpies_agree_with_the_reference() {
    let table = rows("combustion/gas_sensible_enthalpy_above_25C.csv");
    assert_eq!(table.len(), 15);
    for row in &table {
        let temperature = row.number("t_C") + 273.15;
        let got = GasEnthalpy.evaluate(&GasTemperature { temperature: Value::from_si(temperature) }).unwrap().output;
        for (formula, value, gas) in [
            ("CO2", got.carbon_dioxide, species::CARBON_DIOXIDE),
            ("H2O", got.water_vapour, species::WATER),
            ("O2", got.oxygen, species::OXYGEN),
            ("N2", got.nitrogen, species::NITROGEN),
            ("Ar", got.argon, species::ARGON),
            ("SO2", got.sulphur_dioxide, species::SULPHUR_DIOXIDE),
            ("CO", got.carbon_monoxide, species::CARBON_MONOXIDE),
        ] {
            let expected = row.number(&format!("{formula}_kJ_per_mol"));
            assert_close(value.si() / 1000.0, expected, 1e-5, 1e-6, formula);
            // The form folded into the flue kernel.
            let folded = gas.sensible_polynomial().at(temperature - species::ENTHALPY_DATUM);
            assert_close(folded / 1000.0, expected, 1e-5, 1e-6, formula);
        }
    }
}

#[test]
fn polynomials_meet_at_1000_kelvin() {
    for gas in [
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
    ] {
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
        let name = row.text("fuel");
        let start = Value::from_si(row.number("t_reactants_C") + 273.15);
        let state = FlameState {
            excess_air_ratio: Value::from_si(row.number("lambda")),
            fuel_temperature: start,
            air_temperature: start,
            ..FlameState::unset()
        };
        let got = FlameTemperature { fuel: fuel(name), air: DryAir::STANDARD }.evaluate(&state).unwrap().output;
        assert_close(got.flame_temperature_complete.si(), row.number("T_complete_combustion_K"), 0.0, 0.1, name);
        assert_close(got.flame_temperature.si(), row.number("T_equilibrium_K_nasa"), 0.0, 0.5, name);
        assert_close(1e6 * got.carbon_monoxide_wet.si(), row.number("eq_CO_ppm_wet"), 0.01, 0.0, name);
        assert_close(1e6 * got.nitric_oxide_wet.si(), row.number("eq_NO_ppm_wet"), 0.01, 0.0, name);
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
        let found = equilibrium::adiabatic(&products, heat, 101_325.0);
        let complete = flame::complete(&products, heat);
        assert!(found.temperature < last, "ratio {ratio}: {} after {last}", found.temperature);
        // The trace of every element may shift a cold gas by a hair.
        assert!(found.temperature < complete + 1e-3, "ratio {ratio}: {} {complete}", found.temperature);
        last = found.temperature;
    }
    for pressure in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let products = Products::of_complete_combustion(&methane, &air, 1.0, 0.0);
        assert!(equilibrium::adiabatic(&products, 8e5, pressure).temperature.is_nan());
    }
    let carbon_free = DryAir { carbon_dioxide: 0.0, nitrogen: 0.7812, ..air };
    let products = Products::of_complete_combustion(&fuel("H2"), &carbon_free, 1.0, 0.0);
    let heat = flame::heat_in_products(&fuel("H2"), &carbon_free, 1.0, 0.0, 298.15, 298.15);
    let found = equilibrium::adiabatic(&products, heat, 101_325.0);
    assert_close(found.temperature, 2380.4, 0.0, 2.0, "hydrogen in carbon-free air");
}

#[test]
fn burner_air_agrees_with_the_reference() {
    for row in rows_of_kind("trade/flue_vent.csv", "combustion_air_flow") {
        let input = row.inputs();
        let number = |name: &str| input[name].0.parse::<f64>().unwrap();
        let burner = BurnerAir {
            heat_input_net: Value::from_si(1e3 * number("heat_input_net")),
            net_calorific_value: Value::from_si(1e6 * number("Hi")),
            stoichiometric_air: Value::from_si(number("air_per_gas_stoich")),
            excess_air_ratio: Value::from_si(number("lambda_total")),
        };
        let got = CombustionAirFlow.evaluate(&burner).unwrap().output;
        let per_hour = 3600.0 * if row.text("output") == "gas_rate" { got.gas_rate.si() } else { got.air_flow.si() };
        assert!(row.agrees(per_hour), "{}: {per_hour}", row.place);
    }
}

/// Rows of `published_examples.csv` for one example and quantity.
fn published(example: &str, quantity: &str) -> (f64, f64) {
    let table = rows("combustion/published_examples.csv");
    let row = table.iter().find(|row| row.text("example") == example && row.text("quantity") == quantity).unwrap();
    let tolerance = row.text("tolerance").split(' ').next().unwrap().parse::<f64>().unwrap();
    (row.number("published"), tolerance / 100.0)
}

#[test]
fn published_air_and_flame_agree() {
    let octane = "C8H18=1";
    let given = |ratio: &str| Node::from([("fuel", octane), ("air", "21/79"), ("excess_air_ratio", ratio)]);
    let run = |name: &str, ratio: &str| evaluate(name, &given(ratio), Bare::Refused);
    // Octane is a gas to the table of components; the air it needs does not mind.
    let got = run("combustion_products", "1").unwrap();
    let (molar, tolerance) = published("MS13.1a", "air_fuel_molar");
    assert_close(got.get("stoichiometric_air").unwrap(), molar, tolerance, 0.0, "air, molar");
    let (mass, tolerance) = published("MS13.1a", "air_fuel_mass");
    assert_close(got.get("stoichiometric_air_mass").unwrap(), mass, tolerance, 0.0, "air, mass");
    let (mass, tolerance) = published("MS13.1b", "air_fuel_mass");
    assert_close(run("combustion_products", "1.5").unwrap().get("air_mass").unwrap(), mass, tolerance, 0.0, "air, mass");

    // Liquid octane: carbon and hydrogen by mass, gross calorific value 47.9 MJ/kg (25 degC, liquid).
    let flame = |ratio: &str| {
        let liquid = Node::Table(
            [
                ("state", Node::from("liquid")),
                ("carbon", Node::Number(0.841_16)),
                ("hydrogen", Node::Number(0.158_83)),
                ("gross_calorific_value", Node::from("47.893 MJ/kg")),
            ]
            .map(|(key, node)| (key.to_string(), node))
            .into(),
        );
        let given = Node::from([("fuel", liquid), ("air", Node::from("21/79")), ("excess_air_ratio", Node::from(ratio))]);
        evaluate("flame_temperature", &given, Bare::Refused).unwrap().get("flame_temperature_complete").unwrap()
    };
    let (hot, tolerance) = published("MS13.8a", "flame_temperature");
    assert_close(flame("1"), hot, tolerance, 0.0, "octane, no excess air");
    let (cool, tolerance) = published("MS13.8b", "flame_temperature");
    assert_close(flame("4"), cool, tolerance, 0.0, "octane, 400 % air");
}

#[test]
fn published_flue_volumes_per_heat_agree() {
    // dscf/MMBtu at 68 degF, 29.92 inHg: cubic feet of ideal gas at 293.15 K per million Btu gross.
    let cubic_foot = 0.3048_f64.powi(3);
    let per_joule = 293.15 / 273.15 / cubic_foot * 1_055.055_852_62e6;
    for (example, name) in [
        ("CFR75F_natural_gas", "NG_EKOFISK"),
        ("CFR75F_propane", "G31"),
        ("CFR75F_butane", "nC4H10"),
        ("CFR75F_oil", "GAS_OIL"),
        ("CFR75F_wood_residue", "WOOD_DRY"),
    ] {
        let got = products(name, DryAir::STANDARD).evaluate(&CombustionAirState::unset()).unwrap().output;
        let (flue, tolerance) = published(example, "F_dry_flue_at_0_O2");
        assert_close(got.dry_flue_per_gross_heat.si() * per_joule, flue, tolerance, 0.0, example);
        let (carbon_dioxide, tolerance) = published(example, "Fc_co2");
        let volume = got.carbon_dioxide_per_gross_heat.si() / species::CARBON_DIOXIDE.molar_mass * super::products::NORMAL_MOLAR_VOLUME;
        assert_close(volume * per_joule, carbon_dioxide, tolerance, 0.0, example);
    }
    for (example, name) in [("EN_FACT_G20", "G20"), ("EN_FACT_G25", "G25"), ("EN_FACT_G30", "G30"), ("EN_FACT_G31", "G31")] {
        let got = products(name, DryAir::STANDARD).evaluate(&CombustionAirState::unset()).unwrap().output;
        let (factor, tolerance) = published(example, "1mg_m3_to_mg_per_kWh");
        assert_close(3.6e6 * got.dry_flue_per_net_heat.si(), factor, tolerance, 0.0, example);
    }
}

#[test]
fn rich_mixtures_are_refused() {
    let given = Node::from([("fuel", "G20"), ("excess_air_ratio", "0.9")]);
    for name in ["combustion_products", "flame_temperature"] {
        let message = evaluate(name, &given, Bare::Refused).err().map(|error| format!("{error}")).unwrap_or_default();
        assert!(message.starts_with("excess_air_ratio = 0.9 is out of range"), "{message}");
    }
    let without_fuel = Node::from([("excess_air_ratio", "1.2")]);
    assert!(evaluate("combustion_products", &without_fuel, Bare::Refused).is_err());
}

/// Helium and argon hold the same heat, so that a flame cannot tell one from the other.
#[test]
fn noble_gases_cool_a_flame_alike() {
    let with = |noble: &str| {
        let given = Node::from([("fuel", Node::from(format!("CH4 60 %, {noble} 40 %").as_str())), ("air_temperature", "25 degC".into())]);
        let state = evaluate("flame_temperature", &given, Bare::Refused).unwrap();
        [state.get("flame_temperature").unwrap(), state.get("flame_temperature_complete").unwrap()]
    };
    let (helium, argon, nitrogen) = (with("He"), with("Ar"), with("N2"));
    for i in 0..2 {
        assert!((helium[i] - argon[i]).abs() < 0.1, "{helium:?} {argon:?}");
        assert!(argon[i] > nitrogen[i] + 10.0, "{argon:?} {nitrogen:?}");
    }
}

#[test]
fn saturation_is_held_at_the_ends_of_its_range() {
    let ends = [253.15, 393.15].map(water_vapour::saturation_pressure);
    assert_eq!([200.0, 420.0].map(water_vapour::saturation_pressure), ends);
    assert!(ends[0] < water_vapour::saturation_pressure(260.0) && water_vapour::saturation_pressure(390.0) < ends[1]);
    assert!(water_vapour::saturation_pressure(f64::NAN).is_nan());
}
