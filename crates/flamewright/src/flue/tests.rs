use super::{
    CarbonMonoxide, CarbonMonoxideReading, EmissionReading, EmissionResult, FlueAnalysis, FlueEmissions, FlueReading, FlueResult,
    MassConcentration, SiegertConstantsOf, SiegertField, SiegertFlueLoss, SiegertReading, VolumeFraction, emission, kernel::FlueKernel,
};
use crate::calculation::Calculation;
use crate::catalogue::{Bare, evaluate};
use crate::combustion::air::DryAir;
use crate::combustion::reference_fuels::{assert_close, fuel, fuel_setting};
use crate::node::Node;
use crate::quantity::Value;
use crate::record::Record;
use crate::working::Silent;
use flamewright_reference::{Row, rows, rows_of_kind};
use std::format;
use std::string::{String, ToString};
use std::vec::Vec;

const KILOWATT_HOUR: f64 = 3.6e6;

fn analysis(name: &str) -> FlueAnalysis {
    FlueAnalysis::new(&fuel(name), &DryAir::STANDARD)
}

/// A reading of oxygen in %, carbon monoxide in ppm and two temperatures in degC.
fn reading(oxygen: f64, carbon_monoxide: f64, flue: f64, air: f64) -> FlueReading {
    FlueReading {
        oxygen_dry: Value::from_si(oxygen / 100.0),
        carbon_monoxide_dry: Value::from_si(carbon_monoxide / 1e6),
        flue_temperature: Value::from_si(flue + 273.15),
        air_temperature: Value::from_si(air + 273.15),
        ..FlueReading::unset()
    }
}

#[test]
fn losses_and_efficiencies_agree_with_the_reference() {
    let table = rows("combustion/flue_losses.csv");
    assert_eq!(table.len(), 173);
    let mut worst: (f64, String) = (0.0, String::new());
    for row in &table {
        let name = row.text("fuel");
        let number = |column: &str| row.number(column);
        let given = reading(number("o2_dry_pct"), number("co_ppm_dry"), number("t_flue_C"), number("t_air_C"));
        let result = analysis(name).evaluate(&given).unwrap();
        let got = result.output;
        let what = format!("{name} O2 {} at {}", row.text("o2_dry_pct"), row.text("t_flue_C"));
        assert_close(got.excess_air_ratio.si(), number("lambda"), 6e-6, 0.0, &what);
        assert_close(100.0 * got.carbon_dioxide_dry_derived.si(), number("co2_dry_pct"), 6e-6, 0.0, &what);
        assert_close(got.water_dew_point.si() - 273.15, number("dew_point_C"), 0.0, 0.02, &what);
        let condensing = row.text("condensing") == "1";
        assert_eq!(got.condensate.si() > 0.0, condensing, "{what}");
        assert_eq!(result.notices().iter().any(|notice| notice.code == "CONDENSING"), condensing, "{what}");
        for (value, column) in [
            (got.dry_gas_loss.si(), "dry_sens_pct_gross"),
            (got.moisture_loss.si(), "vapour_sens_pct_gross"),
            (got.latent_loss.si(), "latent_pct_gross"),
            (got.condensate_loss.si(), "liquid_sens_pct_gross"),
            (got.unburnt_loss.si(), "unburnt_co_pct_gross"),
            (got.air_credit.si(), "air_credit_pct_gross"),
            (got.fuel_credit.si(), "fuel_credit_pct_gross"),
            (got.efficiency_gross.si(), "eff_gross_pct"),
            (got.efficiency_net.si(), "eff_net_pct"),
            (got.flue_loss_net.si(), "airdatum_loss_pct_net"),
        ] {
            let deviation = (100.0 * value - number(column)).abs();
            if deviation > worst.0 {
                worst = (deviation, format!("{what} {column}"));
            }
            // The table's own bound is 0.02 percentage points; we hold a tenth of it.
            assert!(deviation < 0.002, "{what} {column}: {} instead of {}", 100.0 * value, row.text(column));
        }
        let condensate = got.condensate.si() * KILOWATT_HOUR;
        assert_close(condensate, number("condensate_kg_per_kWh_gross"), 1e-4, 3e-5, &what);
        if let Some(expected) = row.maybe("siegert_bimschv_pct_net") {
            let constants = match name {
                "G31" => "de-lpg",
                "GAS_OIL" => "de-heating-oil",
                _ => "de-natural-gas",
            };
            let text = |value: &str, unit: &str| Node::Text(format!("{value} {unit}"));
            let given = Node::from([
                ("constants", Node::from(constants)),
                ("oxygen_dry", text(row.text("o2_dry_pct"), "%")),
                ("flue_temperature", text(row.text("t_flue_C"), "degC")),
                ("air_temperature", text(row.text("t_air_C"), "degC")),
            ]);
            let loss = evaluate("siegert_flue_loss", &given, Bare::Refused).unwrap().get("flue_loss_net").unwrap();
            assert_close(100.0 * loss, expected, 5e-5, 0.0, &what);
            let difference = 100.0 * (loss - got.flue_loss_net.si());
            assert_close(difference, number("siegert_minus_airdatum"), 0.0, 0.002, &what);
        }
    }
    std::println!("largest deviation {:.5} percentage points: {}", worst.0, worst.1);
}

/// A result of [`FlueEmissions`], and the column that should hold it times a factor.
type Column = (fn(&EmissionResult) -> f64, f64, &'static str);

fn emissions(row: &Row, air: f64, reference: f64) -> EmissionResult {
    let reading = EmissionReading {
        oxygen_dry: Value::from_si(row.number("o2_dry_pct") / 100.0),
        carbon_monoxide_dry: Value::from_si(row.number("co_ppm_dry") / 1e6),
        nitrogen_oxides_dry: Value::from_si(row.number("nox_ppm_dry") / 1e6),
        reference_oxygen: Value::from_si(reference),
        air_oxygen: Value::from_si(air),
        ..EmissionReading::unset()
    };
    FlueEmissions::new(&fuel(row.text("fuel")), &DryAir::STANDARD).evaluate(&reading).unwrap().output
}

#[test]
fn emissions_agree_with_the_reference() {
    let table = rows("combustion/emission_conversions.csv");
    assert_eq!(table.len(), 31);
    let per_kwh = 1e6 * KILOWATT_HOUR;
    let of_dry_air: [Column; 15] = [
        (|got| got.carbon_monoxide_air_free_rule.si(), 1e6, "co_airfree_ppm_20.95"),
        (|got| got.carbon_monoxide_air_free.si(), 1e6, "co_airfree_ppm_exact"),
        (|got| got.carbon_monoxide_at_reference.si(), 1e6, "co_at_3pct_ppm_20.95"),
        (|got| got.carbon_monoxide_concentration.si(), 1e6, "co_mg_m3n_measured"),
        (|got| got.carbon_monoxide_per_gross_heat.si(), per_kwh, "co_mg_kWh_gross"),
        (|got| got.carbon_monoxide_per_net_heat.si(), per_kwh, "co_mg_kWh_net"),
        (|got| got.carbon_dioxide_dry_derived.si(), 100.0, "co2_dry_exact_pct"),
        (|got| got.carbon_dioxide_dry_short.si(), 100.0, "co2_dry_simple_pct"),
        (|got| got.carbon_monoxide_ratio.si(), 1.0, "co_co2_ratio_exact"),
        (|got| got.carbon_monoxide_ratio_short.si(), 1.0, "co_co2_ratio_simple"),
        (|got| got.nitrogen_oxides_concentration.si(), 1e6, "nox_mg_m3n_measured_as_NO2"),
        (|got| got.nitrogen_oxides_per_gross_heat.si(), per_kwh, "nox_mg_kWh_gross"),
        (|got| got.nitrogen_oxides_per_net_heat.si(), per_kwh, "nox_mg_kWh_net"),
        (|got| got.excess_air_ratio.si(), 1.0, "lambda_exact"),
        (|got| got.excess_air_ratio_short.si(), 1.0, "lambda_simple"),
    ];
    let of_21_percent: [Column; 4] = [
        (|got| got.carbon_monoxide_air_free_rule.si(), 1e6, "co_airfree_ppm_21"),
        (|got| got.carbon_monoxide_at_reference.si(), 1e6, "co_at_3pct_ppm_21"),
        (|got| got.carbon_monoxide_concentration_at_reference.si(), 1e6, "co_mg_m3n_3pct_21"),
        (|got| got.nitrogen_oxides_concentration_at_reference.si(), 1e6, "nox_mg_m3n_3pct_21"),
    ];
    let mut checked = 0;
    for row in &table {
        for (air, columns) in [(0.2095, &of_dry_air[..]), (0.21, &of_21_percent[..])] {
            let got = emissions(row, air, 0.03);
            for (value, factor, column) in columns {
                let Some(expected) = row.maybe(column) else { continue };
                // The table's own bound is 0.05 %.
                assert_close(factor * value(&got), expected, 6e-6, 0.0, &format!("{} {column}", row.text("fuel")));
                checked += 1;
            }
        }
    }
    assert_eq!(checked, 31 * 19 - 2);
}

#[test]
fn emission_factors_agree_with_the_reference() {
    let table = rows("combustion/emission_factors_per_fuel.csv");
    assert_eq!(table.len(), 16);
    for row in &table {
        let name = row.text("fuel");
        // At no oxygen and a trace of 1e-9 the balance is that of air-free flue gas.
        let trace = 1e-9;
        let reading = EmissionReading {
            oxygen_dry: Value::from_si(0.0),
            carbon_monoxide_dry: Value::from_si(trace),
            nitrogen_oxides_dry: Value::from_si(trace),
            reference_oxygen: Value::from_si(0.0),
            air_oxygen: Value::from_si(0.2095),
            ..EmissionReading::unset()
        };
        let got = FlueEmissions::new(&fuel(name), &DryAir::STANDARD).evaluate(&reading).unwrap().output;
        let per_ppm = KILOWATT_HOUR / trace;
        let volume = got.carbon_monoxide_concentration.si() / KILOWATT_HOUR;
        for (value, column) in [
            (got.carbon_monoxide_per_net_heat.si() * per_ppm, "co_ppm_at_0O2_to_mg_per_kWh_net"),
            (got.carbon_monoxide_per_gross_heat.si() * per_ppm, "co_ppm_at_0O2_to_mg_per_kWh_gross"),
            (got.nitrogen_oxides_per_net_heat.si() * per_ppm, "nox_ppm_at_0O2_to_mg_per_kWh_net"),
            (got.nitrogen_oxides_per_gross_heat.si() * per_ppm, "nox_ppm_at_0O2_to_mg_per_kWh_gross"),
            (got.carbon_monoxide_per_net_heat.si() / volume, "mg_per_m3n_at_0O2_to_mg_per_kWh_net"),
            (got.carbon_monoxide_per_gross_heat.si() / volume, "mg_per_m3n_at_0O2_to_mg_per_kWh_gross"),
        ] {
            assert_close(value, row.number(column), 6e-6, 0.0, &format!("{name} {column}"));
        }
    }
}

/// The published tolerance of an example, in relative terms.
fn published(example: &str, quantity: &str) -> (f64, f64) {
    let table = rows("combustion/published_examples.csv");
    let row = table.iter().find(|row| row.text("example") == example && row.text("quantity") == quantity).unwrap();
    let tolerance = row.text("tolerance").split(' ').next().unwrap().parse::<f64>().unwrap();
    (row.number("published"), tolerance / 100.0)
}

#[test]
fn published_emission_factors_agree() {
    let air_free = |name: &str| {
        let reading = EmissionReading {
            oxygen_dry: Value::from_si(0.0),
            carbon_monoxide_dry: Value::from_si(1e-6),
            nitrogen_oxides_dry: Value::from_si(1e-6),
            reference_oxygen: Value::from_si(0.0),
            air_oxygen: Value::from_si(0.2095),
            ..EmissionReading::unset()
        };
        FlueEmissions::new(&fuel(name), &DryAir::STANDARD).evaluate(&reading).unwrap().output
    };
    let per_kwh = 1e6 * KILOWATT_HOUR;
    for (example, name, monoxide) in [
        ("EN_FACT_G20", "G20", "co_1ppm_to_mg_per_kWh"),
        ("EN_FACT_G25", "G25", "co_1ppm_to_mg_per_kWh"),
        ("EN_FACT_G30", "G30", "co_1ppm_to_mg_per_kWh"),
        ("EN_FACT_G31", "G31", "co_1ppm_to_mg_per_kWh"),
        ("FL_CO_OIL", "GAS_OIL", "co_1ppm_to_mg_per_kWh_net"),
    ] {
        let got = air_free(name);
        let (factor, tolerance) = published(example, monoxide);
        assert_close(got.carbon_monoxide_per_net_heat.si() * per_kwh, factor, tolerance, 0.0, example);
        if example != "FL_CO_OIL" {
            let (factor, tolerance) = published(example, "nox_1ppm_to_mg_per_kWh");
            assert_close(got.nitrogen_oxides_per_net_heat.si() * per_kwh, factor, tolerance, 0.0, example);
        }
    }
}

#[test]
fn published_excess_air_agrees() {
    // Both examples give all of CO2, CO, O2; the balance here uses O2 and CO.
    for (example, composition, oxygen, carbon_monoxide) in
        [("MS13.2", "CH4", "2.95 %", "0.5 %"), ("MS13.3", "CH4=0.8062 C2H6=0.0541 C3H8=0.0187 nC4H10=0.0160 N2=0.1050", "7 %", "0.2 %")]
    {
        let given = Node::from([
            ("fuel", composition),
            ("air", "21/79"),
            ("oxygen_dry", oxygen),
            ("carbon_monoxide_dry", carbon_monoxide),
            ("flue_temperature", "150 degC"),
            ("air_temperature", "20 degC"),
        ]);
        let got = evaluate("flue_analysis", &given, Bare::Refused).unwrap();
        let (percent, tolerance) = published(example, "percent_theoretical_air");
        assert_close(100.0 * got.get("excess_air_ratio").unwrap(), percent, tolerance, 0.0, example);
        if example == "MS13.2" {
            let (celsius, tolerance) = published(example, "dew_point");
            assert_close(got.get("water_dew_point").unwrap() - 273.15, celsius, tolerance, 0.0, example);
        }
    }
}

#[test]
fn siegert_constants_agree_with_the_reference() {
    let table = rows("combustion/siegert_constants_fitted.csv");
    assert_eq!(table.len(), 9);
    for row in &table {
        let name = row.text("fuel");
        let got = SiegertConstantsOf::new(&fuel(name), &DryAir::STANDARD).evaluate(&SiegertField::unset()).unwrap().output;
        // The table's grid is not stated; its own bound is 0.2 % of A2.
        assert_close(got.a2.si(), row.number("A2_fit"), 2e-3, 0.0, name);
        assert_close(got.b.si(), row.number("B_fit"), 2e-3, 0.0, name);
        assert_close(got.a1.si(), row.number("A1_equiv_co2_form"), 2e-3, 0.0, name);
        assert!(got.largest_deviation.si() < 2e-3, "{name}");
    }
    let table = rows("combustion/siegert_constants_published.csv");
    assert_eq!(table.len(), super::siegert::PUBLISHED_SIEGERT.len());
    for (row, known) in table.iter().zip(&super::siegert::PUBLISHED_SIEGERT) {
        assert_eq!((row.number("A2"), row.number("B")), (known.constants.a2, known.constants.b), "{}", known.name);
    }
}

#[test]
fn siegert_takes_constants_by_name_or_number() {
    let run = |constants: Node| {
        let fields = [("constants", constants), ("oxygen_dry", "5 %".into()), ("flue_temperature", "180 degC".into())];
        let mut entries: Vec<(String, Node)> = fields.map(|(key, node)| (key.to_string(), node)).into();
        entries.push(("air_temperature".to_string(), "20 degC".into()));
        entries.push(("carbon_dioxide_dry".to_string(), "9 %".into()));
        entries.push(("carbon_dioxide_maximum".to_string(), "11.8 %".into()));
        evaluate("siegert_flue_loss", &Node::Table(entries), Bare::Refused)
    };
    let named = run("de-natural-gas".into()).unwrap();
    let given = run(Node::from([("a2", 0.66), ("b", 0.009)])).unwrap();
    assert_eq!(named.output, given.output);
    assert_close(named.get("flue_loss_net").unwrap(), 1.6 * (0.66 / 16.0 + 0.009), 1e-12, 0.0, "oxygen form");
    let a1 = 0.66 * 11.8 / 21.0;
    assert_close(named.get("flue_loss_net_from_carbon_dioxide").unwrap(), 1.6 * (a1 / 9.0 + 0.009), 1e-12, 0.0, "carbon dioxide form");
    for wrong in [Node::from("de-natural"), Node::from([("a2", 0.66)]), Node::from([("a2", 66.0), ("b", 0.009)]), Node::Number(1.0)] {
        assert!(run(wrong).is_err());
    }
    let typed = SiegertFlueLoss { constants: super::siegert::PUBLISHED_SIEGERT[1].constants };
    let reading =
        SiegertReading { flue_temperature: Value::from_si(290.0), air_temperature: Value::from_si(290.0), ..SiegertReading::unset() };
    assert!(typed.evaluate(&reading).is_err());
}

#[test]
fn trade_rows_agree_with_the_reference() {
    const FILE: &str = "trade/flue_vent.csv";
    let mut checked = 0;
    for kind in ["co_co2_ratio", "co_air_free_from_O2", "co_air_free_from_CO2", "co_to_O2_reference", "ppm_to_mg_m3", "mg_m3_to_ppm"] {
        for row in rows_of_kind(FILE, kind) {
            let input = row.inputs();
            // Values are read as the table writes them, units and all.
            let entry =
                |name: &str, field: &str| input.get(name).map(|(value, unit)| (field.to_string(), Node::Text(format!("{value} {unit}"))));
            let (calculation, output, factor, names) = match kind {
                "ppm_to_mg_m3" => (
                    "mass_concentration",
                    "mass_concentration",
                    1e6,
                    [("CO", "fraction"), ("T", "temperature"), ("p", "pressure"), ("", "")],
                ),
                "mg_m3_to_ppm" => {
                    ("volume_fraction", "fraction", 1e6, [("CO", "mass_concentration"), ("T", "temperature"), ("p", "pressure"), ("", "")])
                }
                _ => {
                    let (output, factor) = match row.text("output") {
                        "ratio" => ("carbon_monoxide_ratio", 1.0),
                        "ratio_percent" => ("carbon_monoxide_ratio", 100.0),
                        "one_to" => ("carbon_dioxide_over_monoxide", 1.0),
                        "CO_ref" => ("carbon_monoxide_at_reference", 1e6),
                        _ if kind == "co_air_free_from_CO2" => ("carbon_monoxide_air_free_from_carbon_dioxide", 1e6),
                        _ => ("carbon_monoxide_air_free", 1e6),
                    };
                    let beside = if input.contains_key("CO2") {
                        [("CO", "carbon_monoxide_dry"), ("CO2", "carbon_dioxide_dry"), ("CO2_max", "carbon_dioxide_maximum"), ("", "")]
                    } else {
                        [("CO", "carbon_monoxide_dry"), ("O2", "oxygen_dry"), ("O2_air", "air_oxygen"), ("O2_ref", "reference_oxygen")]
                    };
                    ("carbon_monoxide", output, factor, beside)
                }
            };
            let given = Node::Table(names.iter().filter_map(|(name, field)| entry(name, field)).collect());
            let got = evaluate(calculation, &given, Bare::Refused).unwrap().get(output).unwrap();
            assert!(row.agrees(factor * got), "{}: {}", row.place, factor * got);
            checked += 1;
        }
    }
    assert_eq!(checked, 41);
}

#[test]
fn mass_and_volume_are_inverse() {
    let there = MassConcentration { molar_mass: emission::CARBON_MONOXIDE_MOLAR_MASS };
    let back = VolumeFraction { molar_mass: emission::CARBON_MONOXIDE_MOLAR_MASS };
    let (temperature, pressure) = (Value::from_si(291.0), Value::from_si(95_000.0));
    let mass = there.evaluate(&super::VolumeFractionReading { fraction: Value::from_si(37e-6), temperature, pressure }).unwrap();
    let mass_concentration = mass.output.mass_concentration;
    let fraction = back.evaluate(&super::MassConcentrationReading { mass_concentration, temperature, pressure }).unwrap().output.fraction;
    assert_close(fraction.si(), 37e-6, 1e-14, 0.0, "there and back");
}

#[test]
fn either_gas_gives_the_same_analysis() {
    for name in ["G20", "G25", "G31", "GAS_OIL", "WOOD_DRY"] {
        for oxygen in [0.5, 3.0, 9.0, 15.0, 19.0] {
            for carbon_monoxide in [0.0, 100.0, 2000.0] {
                let by_oxygen = reading(oxygen, carbon_monoxide, 140.0, 15.0);
                let one = analysis(name).evaluate(&by_oxygen).unwrap().output;
                let by_dioxide =
                    FlueReading { oxygen_dry: Value::from_si(f64::NAN), carbon_dioxide_dry: one.carbon_dioxide_dry_derived, ..by_oxygen };
                let other = analysis(name).evaluate(&by_dioxide).unwrap().output;
                assert_close(other.oxygen_dry_derived.si(), oxygen / 100.0, 1e-9, 1e-11, name);
                assert_close(other.excess_air_ratio.si(), one.excess_air_ratio.si(), 1e-9, 0.0, name);
                assert_close(other.efficiency_net.si(), one.efficiency_net.si(), 1e-9, 0.0, name);
                assert!(one.oxygen_dry_derived.si().is_nan() && other.carbon_dioxide_dry_derived.si().is_nan());
                let both = FlueReading { carbon_dioxide_dry: one.carbon_dioxide_dry_derived, ..by_oxygen };
                let closed = analysis(name).evaluate(&both).unwrap();
                assert_close(closed.carbon_dioxide_closure.si(), 0.0, 0.0, 1e-15, name);
                assert!(!closed.notices().iter().any(|notice| notice.code == "DOES_NOT_CLOSE"));
            }
        }
    }
}

#[test]
fn what_does_not_belong_together_is_noticed_or_refused() {
    let natural_gas = analysis("G20");
    let codes =
        |given: &FlueReading| -> Vec<&'static str> { natural_gas.evaluate(given).unwrap().notices().iter().map(|n| n.code).collect() };
    let good = reading(4.6, 88.0, 140.0, 20.0);
    assert!(codes(&good).is_empty());
    // Carbon dioxide that belongs to propane.
    let propane = FlueReading { carbon_dioxide_dry: Value::from_si(0.107), ..good };
    assert!(codes(&propane).contains(&"DOES_NOT_CLOSE"));
    assert!(codes(&reading(15.0, 20.0, 90.0, 20.0)).contains(&"DILUTED"));
    assert!(codes(&reading(0.0, 1000.0, 140.0, 20.0)).contains(&"NO_EXCESS_AIR"));
    assert!(codes(&reading(5.0, 9000.0, 140.0, 20.0)).contains(&"DOUBTFUL_RATIO"));

    let refusal = |given: &FlueReading| natural_gas.evaluate(given).err().map(|error| format!("{error}")).unwrap_or_default();
    let absent = Value::from_si(f64::NAN);
    assert!(refusal(&FlueReading { oxygen_dry: absent, ..good }).contains("one of them is needed"));
    assert!(refusal(&reading(20.8, 0.0, 140.0, 20.0)).contains("oxygen of air"));
    assert!(refusal(&reading(25.0, 0.0, 140.0, 20.0)).contains("out of range"));
    assert!(refusal(&reading(4.0, 0.0, 18.0, 20.0)).contains("not warmer than the air"));
    assert!(refusal(&reading(0.1, 40_000.0, 200.0, 20.0)).contains("rich"));
    let too_much = FlueReading { oxygen_dry: absent, carbon_dioxide_dry: Value::from_si(0.135), ..good };
    assert!(refusal(&too_much).contains("check the fuel"));
    let thin = FlueReading { oxygen_dry: absent, carbon_dioxide_dry: Value::from_si(0.001), ..good };
    assert!(refusal(&thin).contains("nearly air"));
    let of_hydrogen = FlueReading { oxygen_dry: absent, carbon_dioxide_dry: Value::from_si(0.005), ..good };
    let message = analysis("H2").evaluate(&of_hydrogen).err().map(|error| format!("{error}")).unwrap_or_default();
    assert!(message.contains("measure oxygen"), "{message}");
    // ppm written where the reading is in per cent, and the other way about, is caught by unit or range.
    let named = |carbon_monoxide: &str, fuel: Node| {
        let given = Node::from([
            ("fuel", fuel),
            ("oxygen_dry", "4.6 %".into()),
            ("carbon_monoxide_dry", carbon_monoxide.into()),
            ("flue_temperature", "140 degC".into()),
            ("air_temperature", "20 degC".into()),
        ]);
        evaluate("flue_analysis", &given, Bare::Refused).map(|outcome| outcome.output)
    };
    assert!(named("88 %", fuel_setting("G20")).is_err());
    assert!(named("88", fuel_setting("G20")).is_err());
    assert!(named("88 ppm", Node::Null).is_err());
    assert!(named("88 ppm", fuel_setting("G20")).is_ok());
}

#[test]
fn carbon_monoxide_alone_is_refused() {
    let alone = CarbonMonoxideReading { carbon_monoxide_dry: Value::from_si(1e-4), ..CarbonMonoxideReading::unset() };
    assert!(CarbonMonoxide.evaluate(&alone).is_err());
    let no_rule = CarbonMonoxideReading { oxygen_dry: Value::from_si(0.05), ..alone };
    assert!(CarbonMonoxide.evaluate(&no_rule).is_err());
    let none = CarbonMonoxideReading { carbon_monoxide_dry: Value::from_si(0.0), carbon_dioxide_dry: Value::from_si(0.09), ..alone };
    let got = CarbonMonoxide.evaluate(&none).unwrap().output;
    assert!(got.carbon_monoxide_ratio.si() == 0.0 && got.carbon_dioxide_over_monoxide.si().is_nan());
}

#[test]
fn dilution_leaves_ratio_and_air_free_as_they_are() {
    let natural_gas = analysis("G20");
    let near = natural_gas.evaluate(&reading(5.0, 200.0, 140.0, 20.0)).unwrap().output;
    for share_of_air in [0.1, 0.5, 0.8] {
        let mix = |flue: f64, air: f64| (1.0 - share_of_air) * flue + share_of_air * air;
        let far = natural_gas.evaluate(&reading(mix(5.0, 20.95), mix(200.0, 0.0), 140.0, 20.0)).unwrap().output;
        let carbon_dioxide = mix(near.carbon_dioxide_dry_derived.si(), 0.0004);
        assert_close(far.carbon_dioxide_dry_derived.si(), carbon_dioxide, 1e-12, 0.0, "carbon dioxide");
        assert_close(far.carbon_monoxide_air_free.si(), near.carbon_monoxide_air_free.si(), 1e-12, 0.0, "air-free");
        // The air's own carbon dioxide is all that moves the ratio.
        assert_close(far.carbon_monoxide_ratio.si(), near.carbon_monoxide_ratio.si(), 0.02, 0.0, "ratio");
    }
}

#[test]
fn efficiency_falls_steadily_across_the_dew_point() {
    let natural_gas = analysis("G20");
    let mut last = f64::INFINITY;
    for step in 0..4000 {
        let flue = 20.0 + 0.1 * f64::from(step);
        let given = FlueReading {
            barometric_pressure: Value::from_si(98_000.0),
            relative_humidity: Value::from_si(0.6),
            ..reading(4.5, 50.0, flue, 15.0)
        };
        let got = natural_gas.evaluate(&given).unwrap().output;
        assert!(got.efficiency_gross.si() < last, "efficiency rises at {flue}");
        assert!(step == 0 || last - got.efficiency_gross.si() < 0.002, "jump at {flue}");
        last = got.efficiency_gross.si();
    }
}

#[test]
fn the_balance_closes() {
    let got: FlueResult = analysis("NG_EKOFISK").evaluate(&reading(4.5, 300.0, 45.0, 10.0)).unwrap().output;
    let losses = got.dry_gas_loss.si() + got.moisture_loss.si() + got.latent_loss.si() + got.condensate_loss.si() + got.unburnt_loss.si();
    let all = got.efficiency_gross.si() + losses - got.air_credit.si() - got.fuel_credit.si();
    assert_close(all, 1.0, 1e-14, 0.0, "energy balance");
    let fuel = fuel("NG_EKOFISK");
    let ratio = fuel.gross_calorific_value / fuel.net_calorific_value;
    assert_close(got.efficiency_net.si(), ratio * got.efficiency_gross.si(), 1e-14, 0.0, "net and gross");
}

#[test]
fn no_input_that_is_not_a_number_gets_lost() {
    let kernel = FlueKernel::new(&fuel("G20"), &DryAir::STANDARD);
    for which in 0..6 {
        let mut input = [0.045, 5e-5, 350.0, 290.0, 101_325.0, 0.01];
        input[which] = f64::NAN;
        let [oxygen, carbon_monoxide, flue, air, pressure, humidity] = input;
        let combustion = kernel.combustion(oxygen, carbon_monoxide, &mut Silent);
        let water = kernel.water(&combustion, humidity, flue, pressure, &mut Silent);
        let heat = kernel.heat(&combustion, &water, flue, air, &mut Silent);
        assert!(heat.efficiency_gross.is_nan() && heat.efficiency_net.is_nan(), "input {which}");
    }
}

/// Vapour that came with the air and leaves as vapour brings no latent heat and takes none.
#[test]
fn humid_air_costs_no_latent_heat_while_nothing_condenses() {
    let g20 = analysis("G20");
    let dry = g20.evaluate(&reading(5.0, 30.0, 180.0, 25.0)).unwrap().output;
    let humid = FlueReading { relative_humidity: Value::from_si(0.8), ..reading(5.0, 30.0, 180.0, 25.0) };
    let humid = g20.evaluate(&humid).unwrap().output;
    assert!((humid.latent_loss.si() - dry.latent_loss.si()).abs() < 1e-12);
    assert!(humid.moisture_loss.si() > dry.moisture_loss.si() + 1e-4);
    assert!(humid.water_dew_point.value > dry.water_dew_point.value + 1.0);
}
