//! Fuel values against the reference tables.
use std::string::ToString;

use flamewright_reference::{Row, rows};

use super::edition::{blend, column_shares};
use super::*;
use crate::calculation::Calculation;
use crate::catalogue::{Bare, Outcome, erase, evaluate};
use crate::node::Node;
use crate::quantity::ReferenceConditions;
use crate::record::Record;
use crate::uncertainty::{Covariance, first_order};

#[track_caller]
fn close(got: f64, wanted: f64, tolerance: f64, what: &str) {
    assert!((got - wanted).abs() <= tolerance, "{what}: got {got}, wanted {wanted} within {tolerance}");
}

fn named(text: &str) -> Composition {
    Composition::from_text(text, AmountBasis::Mole, Normalisation::Refuse).unwrap()
}

#[test]
fn tables_are_the_published_ones() {
    for (edition, data, summation) in [
        (Edition::Iso6976Of2016, rows("combustion/components_iso6976_2016.csv"), "s"),
        (Edition::Iso6976Of1995, rows("combustion/components_iso6976_1995.csv"), "sqrt_b"),
    ] {
        assert_eq!(data.len(), 20);
        for row in &data {
            let name = row.text("component");
            let i = component_position(name).unwrap();
            assert_eq!(COMPONENTS[i].symbol, name);
            let table = edition.table();
            close(table.molar_mass[i], row.number("M_kg_per_kmol"), 0.0, name);
            for celsius in [0, 15, 20, 25] {
                let shares = column_shares::<5>(f64::from(celsius) + 273.15);
                let column = |values: &[[f64; COMPONENT_COUNT]; 5]| blend(&[0, 1, 2, 3, 4].map(|c| values[c][i]), &shares);
                let gross = row.number(&std::format!("Hgross_{celsius}C_kJ_per_mol"));
                let net = row.number(&std::format!("Hnet_{celsius}C_kJ_per_mol"));
                close(column(&table.gross), gross, 0.0, name);
                close(column(&table.net), net, 1e-9, name);
            }
            for celsius in [0, 15, 20] {
                let shares = column_shares::<4>(f64::from(celsius) + 273.15);
                let got = blend(&[0, 1, 2, 3].map(|c| table.summation[c][i]), &shares);
                close(got, row.number(&std::format!("{summation}_{celsius}C")), 0.0, name);
            }
            if edition == Edition::Iso6976Of2016 {
                close(table.gross_uncertainty[i], row.number("u_Hgross_kJ_per_mol"), 0.0, name);
            }
        }
    }
}

#[test]
fn molar_masses_agree_with_the_atoms() {
    // ISO 6976:2016 Table A.2
    let atomic = [12.0107, 1.007_94, 15.9994, 14.0067, 32.065];
    for (component, mass) in COMPONENTS.iter().zip(&Edition::Iso6976Of2016.table().molar_mass) {
        let atoms: f64 = component.atoms.iter().zip(&atomic).map(|(n, a)| f64::from(*n) * a).sum();
        if atoms > 0.0 {
            close(*mass, atoms, 1e-6, component.name);
        }
    }
}

#[test]
fn straight_lines_between_columns_reproduce_the_one_between() {
    let table = Edition::Iso6976Of2016.table();
    for (i, component) in COMPONENTS.iter().enumerate() {
        let line = |a: f64, b: f64| a + (b - a) * 0.11;
        close(table.gross[2][i], line(table.gross[1][i], table.gross[3][i]), 3e-6 * table.gross[2][i] + 0.01, component.name);
        close(table.summation[2][i], line(table.summation[1][i], table.summation[3][i]), 3e-4, component.name);
    }
}

/// Values of `fuel_properties` for a fuel, by name as all faces call it.
fn properties(fuel: impl Into<Node>, edition: &str, combustion: f64, metering: f64) -> Outcome {
    let given = Node::from([
        ("fuel", fuel.into()),
        ("edition", Node::from(edition)),
        ("combustion_temperature", Node::Number(combustion + 273.15)),
        ("metering_temperature", Node::Number(metering + 273.15)),
    ]);
    evaluate("fuel_properties", &given, Bare::Si).unwrap_or_else(|e| panic!("{e}"))
}

fn mixture(text: &str, basis: &str) -> Node {
    Node::from([("composition", Node::from(text)), ("basis", Node::from(basis)), ("normalise", Node::Flag(basis == "volume"))])
}

fn quantity(values: &Outcome, name: &str) -> f64 {
    let (field, unit) = match name {
        "M" => ("molar_mass", 1e-3),
        "Z" => ("compression_factor", 1.0),
        "Hs_mol" => ("gross_molar_calorific_value", 1e3),
        "Hi_mol" => ("net_molar_calorific_value", 1e3),
        "Hs_mass" | "Hs_MJ_per_kg" => ("gross_mass_calorific_value", 1e6),
        "Hi_mass" | "Hi_MJ_per_kg" => ("net_mass_calorific_value", 1e6),
        "Hs_vol" | "Hs_MJ_per_m3" | "Hs" => ("gross_calorific_value", 1e6),
        "Hi_vol" | "Hi_MJ_per_m3" | "Hi" => ("net_calorific_value", 1e6),
        "rho" | "rho_kg_per_m3" => ("density", 1.0),
        "d" => ("relative_density", 1.0),
        "Ws" | "Ws_MJ_per_m3" => ("gross_wobbe_index", 1e6),
        "Wi" | "Wi_MJ_per_m3" => ("net_wobbe_index", 1e6),
        other => panic!("{other}"),
    };
    values.get(field).unwrap() / unit
}

/// The same through `gas_properties`, the composition as fields.
fn analysed(composition: &str, reference: &str, edition: &str) -> Outcome {
    let mut given = std::vec![("reference".to_string(), Node::from(reference)), ("edition".to_string(), Node::from(edition))];
    for part in composition.split_whitespace() {
        let (component, share) = part.split_once('=').unwrap();
        let field = COMPONENTS[component_position(component).unwrap()].name.replace(['-', ' '], "_");
        given.push((field, Node::Number(share.parse().unwrap())));
    }
    evaluate("gas_properties", &Node::Table(given), Bare::Si).unwrap_or_else(|e| panic!("{e}"))
}

#[test]
fn mixtures_agree_with_published_and_computed_values() {
    let mut checked = 0;
    for row in rows("combustion/gas_mixture_properties.csv") {
        let composition = row.text("composition_mol_frac");
        let what = std::format!("{} {}", row.text("case"), row.text("quantity"));
        let computed = row.number("computed");
        let (combustion, metering) = (row.number("t_combustion_C"), row.number("t_metering_C"));
        let (got, relative) = if row.text("quantity") == "Hs_vol_14.73psia" {
            let given = Node::from([
                ("fuel", Node::from(composition)),
                ("combustion_temperature", Node::from("15.55 °C")),
                ("metering_temperature", Node::from("15.55 °C")),
                ("metering_pressure", Node::from("14.73 psi")),
            ]);
            let values = evaluate("fuel_properties", &given, Bare::Refused).unwrap();
            // Btu (International Table) per cubic foot; the table leaves out what the pressure does to Z: 5e-6
            (values.get("gross_calorific_value").unwrap() * 0.028_316_846_592 / 1_055.055_852_62, 1e-5)
        } else {
            let named = quantity(&properties(composition, "2016", combustion, metering), row.text("quantity"));
            let by_field = quantity(&analysed(composition, &std::format!("{combustion}/{metering}"), "2016"), row.text("quantity"));
            close(by_field, named, 1e-14 * named.abs(), &what);
            (named, 1e-7)
        };
        close(got, computed, relative * computed.abs(), &what);
        if let Some(published) = row.maybe("published") {
            close(got, published, row.number("tolerance"), &what);
        }
        checked += 1;
    }
    assert_eq!(checked, 52);
}

#[test]
fn annex_d_example_3_at_25_and_0() {
    // ISO 6976:2016 D.4.4.1, read as transcribed in a public repository's Annex D test module.
    let gas = "CH4=0.922393 C2H6=0.025358 C3H8=0.015190 nC4H10=0.000523 iC4H10=0.001512 nC5H12=0.002846 \
               iC5H12=0.002832 neoC5H12=0.001015 nC6H14=0.002865 N2=0.010230 CO2=0.015236";
    let values = properties(gas, "2016", 25.0, 0.0);
    for (name, published) in
        [("Hs_vol", 41.89360), ("Hi_vol", 37.85228), ("rho", 0.80701), ("d", 0.62411), ("Ws", 53.02930), ("Wi", 47.91376)]
    {
        close(quantity(&values, name), published, 5.1e-6 + 1e-6 * published, name);
    }
}

#[test]
fn annex_d_example_2_with_water_at_15_55() {
    // ISO 6976:2016 D.3. The standard's Z there is 1.8e-5 off what its own table gives, and its
    // volumetric value carries that on (so noted in the public transcription too).
    let values = properties("CH4=0.931819 C2H6=0.025618 N2=0.010335 CO2=0.015391 H2O=0.016837", "2016", 15.55, 15.55);
    close(quantity(&values, "M"), 16.989_170, 1e-5, "M");
    close(quantity(&values, "Hs_mol"), 871.443_916, 1e-4, "gross, molar");
    close(quantity(&values, "Hs_mass"), 51.294_085, 1e-5, "gross, mass");
    close(quantity(&values, "Z"), 0.997_569_0, 2e-5, "Z");
    close(quantity(&values, "Hs_vol"), 36.874_304, 1e-3, "gross, volume");
}

#[test]
fn pure_components_agree() {
    for row in rows("combustion/pure_components_volumetric.csv") {
        let (component, edition) = (row.text("component"), row.text("edition"));
        let (combustion, metering) = (row.number("t_combustion_C"), row.number("t_metering_C"));
        let named = properties(component, edition, combustion, metering);
        let by_field = analysed(&std::format!("{component}=1"), &std::format!("{combustion}/{metering}"), edition);
        for name in
            ["Z", "Hs_MJ_per_m3", "Hi_MJ_per_m3", "Ws_MJ_per_m3", "Wi_MJ_per_m3", "rho_kg_per_m3", "d", "Hs_MJ_per_kg", "Hi_MJ_per_kg"]
        {
            let wanted = row.number(name);
            close(quantity(&named, name), wanted, 1e-7 * wanted, &std::format!("{component} {name}"));
            close(quantity(&by_field, name), wanted, 1e-7 * wanted, &std::format!("{component} {name}"));
        }
    }
}

#[test]
fn test_gases_reproduce_en_437() {
    for row in rows("combustion/en437_test_gases.csv") {
        let letters = row.text("gas");
        let text = row.text("composition_vol_pct");
        for (prefix, fuel, edition) in [
            ("mol2016", Node::from([("composition", Node::from(text)), ("normalise", Node::Flag(true))]), "2016"),
            ("vol2016", Node::from(letters), "2016"),
            ("vol1995", mixture(text, "volume"), "1995"),
            ("vol1995", Node::from(letters), "1995"),
        ] {
            let values = properties(fuel, edition, 15.0, 15.0);
            for name in ["Wi", "Hi", "Ws", "Hs", "d"] {
                let what = std::format!("{letters} {prefix} {name}");
                let wanted = row.number(&std::format!("{prefix}_{name}"));
                let got = quantity(&values, name);
                // volume shares are turned into mole fractions by the compression factors of 2016
                close(got, wanted, if prefix == "vol1995" { 5e-5 } else { 1e-5 } * wanted, &what);
                let published = row.maybe(&std::format!("pub_{name}"));
                if let (Some(published), true) = (published, prefix != "mol2016") {
                    let tolerance = match (letters, prefix, name) {
                        // the editions differ for the butanes
                        ("G30", "vol2016", "d") => 0.004,
                        ("G30", "vol2016", _) => 0.25,
                        (_, _, "d") => 0.001,
                        _ => 0.02_f64.max(0.0005 * published),
                    };
                    close(got, published, tolerance, &what);
                }
            }
        }
    }
}

#[test]
fn remembered_test_gases_reproduce_remembered_heat_values() {
    // Net and gross Wobbe index and calorific value, MJ/m3, and relative density: EN 437:2003, from
    // memory. Composition and heat values were remembered apart, so their agreement supports both.
    for (letters, published) in [
        ("G24", [47.01, 35.70, 52.09, 39.55, 0.577]),
        ("G26", [40.52, 33.36, 44.83, 36.91, 0.678]),
        ("G27", [35.17, 27.89, 39.06, 30.98, 0.629]),
        ("G271", [30.94, 25.17, 34.36, 27.96, 0.662]),
        ("G32", [68.14, 82.78, 72.86, 88.52, 1.476]),
        ("G112", [19.48, 11.81, 22.36, 13.56, 0.367]),
        ("G120", [24.40, 15.68, 27.64, 17.77, 0.413]),
    ] {
        let values = properties(letters, "1995", 15.0, 15.0);
        for (name, published) in ["Wi", "Hi", "Ws", "Hs", "d"].into_iter().zip(published) {
            let tolerance = if name == "d" { 0.001 } else { 0.02_f64.max(0.0005 * published) };
            close(quantity(&values, name), published, tolerance, &std::format!("{letters} {name}"));
        }
    }
}

#[test]
fn third_family_per_kilogram() {
    for row in rows("combustion/en437_third_family_mass_basis.csv") {
        for edition in ["1995", "2016"] {
            let values = properties(row.text("gas"), edition, 15.0, 15.0);
            for (name, published, computed) in
                [("Hi_mass", "pub_Hi_MJ_per_kg", "calc_Hi_MJ_per_kg"), ("Hs_mass", "pub_Hs_MJ_per_kg", "calc_Hs_MJ_per_kg")]
            {
                close(quantity(&values, name), row.number(published), 0.01, row.text("gas"));
                close(quantity(&values, name), row.number(computed), 2e-3, row.text("gas"));
            }
        }
    }
}

#[test]
fn published_limits_are_met_by_the_gas_they_are_for() {
    // Limits are a policy of the caller's: here they are data of the test, and G20 is within them.
    let values = properties("G20", "2016", 15.0, 15.0);
    let mut checked = 0;
    for row in rows("combustion/gas_quality_limits_published.csv") {
        let limit = row.text("value");
        let (name, low, high) = match row.text("quantity") {
            "relative_density_max" => ("d", "0", limit),
            "gross_Wobbe_min" => ("Ws", limit, "1e9"),
            "gross_Wobbe_max" => ("Ws", "0", limit),
            "gross_Wobbe_range" => ("Ws", limit.split('-').next().unwrap(), limit.split('-').next_back().unwrap()),
            "higher_heating_value_range" => ("Hs", limit.split('-').next().unwrap(), limit.split('-').next_back().unwrap()),
            other => panic!("{other}"),
        };
        let within = low.parse::<f64>().unwrap()..=high.parse().unwrap();
        assert!(within.contains(&quantity(&values, name)), "{name} {limit}");
        checked += 1;
    }
    assert_eq!(checked, 5);
}

/// The fuel of a row of `combustion/fuels.csv`.
pub(crate) fn fuel_of(row: &Row) -> Fuel {
    Fuel::from_node(&fuel_node(row)).unwrap_or_else(|e| panic!("{e}"))
}

fn fuel_node(row: &Row) -> Node {
    if row.text("unit") == "mol" {
        return Node::from(row.text("composition"));
    }
    let gross = std::format!("{} MJ/kg", row.text("Hs_25C_MJ_per_unit"));
    let state = if row.text("fuel").starts_with("WOOD") { "solid" } else { "liquid" };
    let mut table = std::vec![("gross_calorific_value".to_string(), Node::Text(gross)), ("state".to_string(), Node::from(state))];
    for part in row.text("composition").split_whitespace() {
        let (element, share) = part.split_once('=').unwrap();
        let key = match element {
            "C" => "carbon",
            "H" => "hydrogen",
            "O" => "oxygen",
            "N" => "nitrogen",
            "S" => "sulphur",
            "A" => continue, // ash is what is left
            other => panic!("{other}"),
        };
        table.push((key.to_string(), Node::from(share)));
    }
    Node::Table(table)
}

#[test]
fn fuels_hold_the_atoms_and_the_heat() {
    let ratios = rows("combustion/net_gross_ratio_25C.csv");
    for (row, ratio) in rows("combustion/fuels.csv").iter().zip(&ratios) {
        let fuel = fuel_of(row);
        let name = row.text("fuel");
        assert_eq!(name, ratio.text("fuel"));
        let mass = row.number("M_or_1_kg");
        close(fuel.mass * if row.text("unit") == "mol" { 1e3 } else { 1.0 }, mass, 5e-6 * mass, name);
        let e = &fuel.elements;
        for (column, got) in [("C_mol", e.carbon), ("H_mol", e.hydrogen), ("O_mol", e.oxygen), ("N_mol", e.nitrogen), ("S_mol", e.sulphur)]
        {
            let wanted = row.number(column);
            close(got, wanted, 5e-6 * wanted, &std::format!("{name} {column}"));
        }
        for (column, got) in [("Hs_25C_MJ_per_unit", fuel.gross_calorific_value), ("Hi_25C_MJ_per_unit", fuel.net_calorific_value)] {
            let wanted = row.number(column);
            close(got / 1e6, wanted, 5e-7 * wanted, &std::format!("{name} {column}"));
        }
        let values = properties(fuel_node(row), "2016", 25.0, 15.0);
        let gross_over_net = values.get("gross_over_net").unwrap();
        close(1.0 / gross_over_net, ratio.number("net_over_gross"), 1e-6, name);
        close(gross_over_net, ratio.number("gross_over_net"), 1e-5, name);
        if row.text("unit") == "kg" {
            close(values.get("gross_mass_calorific_value").unwrap(), fuel.gross_calorific_value, 0.0, name);
            assert!(values.get("gross_calorific_value").unwrap().is_nan(), "a liquid has no calorific value per volume of gas");
        }
        let tables = values.prepared.tables(&values.input);
        close(tables[0].columns[0].values[0], row.number("C_mol"), 5e-6 * row.number("C_mol"), name);
    }
}

#[test]
fn calorific_values_agree_with_independent_sources() {
    for row in rows("combustion/component_cv_crosscheck_25C.csv") {
        let values = properties(row.text("component"), "2016", 25.0, 15.0);
        let (gross, net) = (quantity(&values, "Hs_mol"), quantity(&values, "Hi_mol"));
        close(gross, row.number("iso2016_Hgross"), 1e-9, row.text("component"));
        close(net, row.number("iso2016_Hnet"), 1e-9, row.text("component"));
        // gri30 propane and NASA neopentane are known to be off, see the data's description
        for (column, ours, limit) in
            [("atct", gross, 0.8), ("webbook", gross, 0.8), ("crc", gross, 0.8), ("nasa7", net, 1.0), ("gri30", net, 0.9)]
        {
            let suffix = if limit == 0.8 { "Hgross" } else { "Hnet" };
            if let Some(theirs) = row.maybe(&std::format!("{column}_{suffix}")) {
                let limit = if row.text("component") == "CH4" { 0.11 } else { limit };
                close(ours, theirs, limit, &std::format!("{} {column}", row.text("component")));
                close(theirs - ours, row.number(&std::format!("{column}_minus_iso")), 1.1e-3, column);
            }
        }
    }
    for row in rows("combustion/component_cv_published_us_table.csv") {
        let name = row.text("component");
        let values = properties(name, "2016", 15.55, 15.55);
        for (ours, published, computed) in [
            (quantity(&values, "Hs_mass"), "pub_gross_Btu_per_lb", "iso2016_gross_15.55C_kJ_per_kg"),
            (quantity(&values, "Hi_mass"), "pub_net_Btu_per_lb", "iso2016_net_15.55C_kJ_per_kg"),
        ] {
            // a Btu (International Table) per pound is 2.326 kJ/kg by definition
            let btu_per_pound = row.number(published) * 2.326e-3;
            close(ours, btu_per_pound, 0.002 * btu_per_pound, name);
            let computed = row.number(computed) / 1e3;
            close(ours, computed, 1e-5 * computed, name);
        }
    }
}

#[test]
fn bad_fuels_are_refused_with_a_reason() {
    let message = |fuel: Node| Fuel::from_node(&fuel).map(|fuel| fuel.name).unwrap_err().to_string();
    for (text, wanted) in [
        ("CH4=0.9 N2=0.05", "add up to 0.95, not 1"),
        ("CH4 90, N2 10", "write per cent with the % sign"),
        ("metane=1", "did you mean \"methane\"?"),
        ("metane", "did you mean \"methane\"?"),
        ("natural gas", "differ from place to place"),
        ("G2O", "did you mean \"G20\"?"),
        ("CH4=1.1 N2=-0.1", "N2: the amount is -0.1"),
        ("CH4=NaN", "write \"CH4 92.5 %"),
        ("CH4 90 %, 10 %", "10 %: write"),
        ("CH4 90 %, N2", "N2: write"),
        ("CH4 9,5 %, N2 90.5 %", "write"),
        ("", "not known"),
    ] {
        let message = message(Node::from(text));
        assert!(message.contains(wanted), "{text}: {message}");
    }
    assert!(message(Node::from([("CH4", "90 %"), ("Nitrogin", "10 %")])).contains("did you mean \"nitrogen\"?"));
    assert!(message(Node::from([("composition", "CH4"), ("basiss", "mole")])).contains("did you mean \"basis\"?"));
    let oil = |carbon: &str, gross: &str| {
        Node::from([("state", "liquid"), ("carbon", carbon), ("hydrogen", "13.2 %"), ("gross_calorific_value", gross)])
    };
    assert!(Fuel::from_node(&oil("86.8 %", "45.5 MJ/kg")).is_ok());
    assert!(message(oil("96.8 %", "45.5 MJ/kg")).contains("more than 100 %"));
    assert!(message(oil("86.8 %", "45.5 kJ/kg")).contains("no fuel of this analysis"));
    assert!(message(oil("86.8 %", "45.5 MJ/kg net")).contains("net basis"));
    assert!(Composition::new([("CH4", f64::NAN)], AmountBasis::Mole, Normalisation::Normalise).is_err());
    assert!(Composition::new([("CH4", 0.0)], AmountBasis::Mole, Normalisation::Normalise).is_err());
    let heavy = Fuel::named("CH4=0.999 nC12H26=0.001").unwrap();
    let refusal = FuelProperties::new(heavy.clone(), Edition::Iso6976Of1995).unwrap_err().to_string();
    assert!(refusal.contains("n-dodecane") && refusal.contains("ISO 6976:2016"), "{refusal}");
    assert!(FuelProperties::new(heavy, Edition::Iso6976Of2016).is_ok());
}

#[test]
fn bad_analyses_are_refused_with_a_reason() {
    let outcome = |given: Node| evaluate("gas_properties", &given, Bare::Refused).map(|o| o.output);
    let message = |given: Node| outcome(given).unwrap_err().to_string();
    assert!(message(Node::from([("methane", "90 %"), ("nitrogen", "5 %")])).contains("do not add up to 100 %"));
    assert!(message(Node::from([("methane", "101 %")])).contains("out of range"));
    assert!(message(Node::from([("methane", "90")])).contains('%'));
    assert!(message(Node::from([("metane", "90 %")])).contains("methane"));
    assert!(message(Node::from([("methane", "100 %"), ("reference", "30/15")])).contains("0 °C to 25 °C"));
    let normalised = Node::from([("methane", Node::from("90 %")), ("nitrogen", Node::from("5 %")), ("normalise", Node::Flag(true))]);
    let whole = Node::from([
        ("methane", Node::Text(std::format!("{} %", 9000.0 / 95.0))),
        ("nitrogen", Node::Text(std::format!("{} %", 500.0 / 95.0))),
    ]);
    for (a, b) in outcome(normalised).unwrap().iter().zip(outcome(whole).unwrap()) {
        close(*a, b, 1e-12 * b.abs(), "normalised");
    }
}

#[test]
fn compositions_are_read_in_the_spellings_people_write() {
    let wanted = named("CH4=0.925 N2=0.075");
    for text in [
        "CH4 92.5 %, N2 7.5 %",
        "CH4 92.5%,N2 7.5%",
        "92.5 % methane; 7.5 % nitrogen",
        "methane 0.925, nitrogen 0.075",
        "CH4=92.5% N2=7.5%",
        "CH4 92.5 %\nN2 7.5 %\n",
    ] {
        assert_eq!(named(text), wanted, "{text}");
    }
    assert_eq!(named("2,2-dimethylbutane 40 %, 1,3-butadiene 60 %").fractions()[component_position("2,2-DMB").unwrap()], 0.4);
    let normalised = Composition::from_text("CH4 46.25, N2 3.75", AmountBasis::Mole, Normalisation::Normalise).unwrap();
    close(normalised.fractions()[0], 0.925, 1e-15, "normalised");
}

#[test]
fn hydrogen_can_be_blended_up_to_all_of_it() {
    let blend = |share: &str| Fuel::from_node(&Node::from([("composition", "G20"), ("hydrogen_blend", share)])).unwrap();
    assert_eq!(blend("0 %").composition, Fuel::named("CH4").unwrap().composition);
    assert_eq!(blend("100 %").composition, Fuel::named("H2").unwrap().composition);
    close(blend("20 %").elements.hydrogen, 3.6, 1e-15, "hydrogen atoms");
    for share in ["-1 %", "101 %"] {
        assert!(Fuel::from_node(&Node::from([("composition", "G20"), ("hydrogen_blend", share)])).is_err());
    }
}

#[test]
fn liquefied_gas_may_be_stated_by_mass() {
    let gas = Fuel::from_node(&Node::from([("composition", "propane 60 %, n-butane 40 %"), ("basis", "mass")])).unwrap();
    // moles per kilogram of mixture
    let (propane, butane) = (0.6 / 44.095_62e-3, 0.4 / 58.1222e-3);
    close(gas.mass, 1.0 / (propane + butane), 1e-12, "molar mass");
    let gross = (propane * 2_219.17e3 + butane * 2_877.40e3) / (propane + butane);
    close(gas.gross_calorific_value, gross, 1e-6, "gross");
}

#[test]
fn wood_as_burnt_gives_less_than_dry() {
    // Dry wood of the reference table, burnt at 20 % moisture: all shares fall by a fifth, and the
    // net value also pays for the moisture.
    let dry = Fuel::named("dry wood").unwrap();
    let wet = Fuel::from_node(&Node::from([
        ("state", "solid"),
        ("carbon", "40 %"),
        ("hydrogen", "4.8 %"),
        ("oxygen", "34.8 %"),
        ("nitrogen", "0.16 %"),
        ("moisture", "20 %"),
        ("gross_calorific_value", "16.08 MJ/kg"),
    ]))
    .unwrap();
    close(wet.elements.carbon, 0.8 * dry.elements.carbon, 1e-12, "carbon");
    close(wet.stoichiometric_oxygen(), 0.8 * dry.stoichiometric_oxygen(), 1e-12, "oxygen");
    let water = 0.2 / 0.018_015_28;
    close(wet.net_calorific_value, 0.8 * dry.net_calorific_value - water * 44_013.0, 1.0, "net");
}

#[test]
fn every_field_of_an_analysis_is_a_component() {
    for field in GasAnalysis::FIELDS {
        let name = field.name.replace('_', "-");
        let position = component_position(&name).unwrap_or_else(|| panic!("{name}"));
        assert_eq!(COMPONENTS[position].name.replace(['-', ' '], "_"), field.name);
    }
}

#[test]
fn the_working_of_a_gas_is_shown() {
    let gas = GasPropertiesOf::new(Edition::Iso6976Of2016, ReferenceConditions::AT_15_15, Normalisation::Refuse).unwrap();
    let input = GasAnalysis::read([("methane", "80 %"), ("hydrogen", "20 %")]).unwrap();
    let steps = gas.steps(&input).unwrap();
    let wobbe = steps.last().unwrap();
    assert_eq!((steps.len(), wobbe.name()), (13, "net_wobbe"));
    close(wobbe.value() / 1e6, 43.229508, 1e-6, "net Wobbe index");
}

/// Annex D of ISO 6976:2016 (read as transcribed in a public repository's test module): composition
/// with standard uncertainties, correlations as the lower triangle, and published uncertainties.
fn annex_d(fractions: &[(&str, f64, f64)], correlations: &[&[f64]], reference: &str, published: &[(&str, f64)]) {
    let gas =
        GasPropertiesOf::new(Edition::Iso6976Of2016, ReferenceConditions::named("reference", reference).unwrap(), Normalisation::Refuse)
            .unwrap();
    let place = |name: &str| GasAnalysis::FIELDS.iter().position(|f| f.name == name).unwrap();
    let mut input = GasAnalysis::unset().to_array();
    let mut standard = [0.0; 24];
    for (name, fraction, uncertainty) in fractions {
        input[place(name)] = *fraction;
        standard[place(name)] = *uncertainty;
    }
    let mut covariance = Covariance::independent(&standard);
    for (i, row) in correlations.iter().enumerate() {
        for (j, r) in row.iter().enumerate() {
            covariance.correlate(place(fractions[i].0), place(fractions[j].0), *r).unwrap();
        }
    }
    let tables = gas.tables(&GasAnalysis::from_slice(&input));
    let prepared = erase(gas);
    let from_composition = first_order(&*prepared, &input, &covariance);
    for (name, wanted) in published {
        let j = GasProperties::FIELDS.iter().position(|f| f.name == *name).unwrap();
        let row = tables[0].row_names.iter().position(|n| n == name).unwrap();
        let from_tables = tables[0].columns[0].values[row] * from_composition.outputs()[j];
        let variance = from_composition.covariance_of(j, j) + from_tables * from_tables;
        let unit = GasProperties::FIELDS[j].unit.factor;
        close(variance.sqrt() / unit, *wanted, 1.5e-6_f64.max(2e-4 * wanted), &std::format!("{name} at {reference}"));
    }
}

#[test]
fn uncertainties_agree_with_annex_d_example_1() {
    let fractions = [
        ("methane", 0.933_212, 0.000_346),
        ("ethane", 0.025_656, 0.000_243),
        ("propane", 0.015_368, 0.000_148),
        ("nitrogen", 0.010_350, 0.000_195),
        ("carbon_dioxide", 0.015_414, 0.000_111),
    ];
    annex_d(
        &fractions,
        &[],
        "15/15",
        &[("gross_molar_calorific_value", 0.615_609_872), ("gross_mass_calorific_value", 0.024_301), ("gross_calorific_value", 0.026_267)],
    );
}

#[test]
fn uncertainties_agree_with_annex_d_example_3_with_and_without_correlations() {
    let fractions = [
        ("methane", 0.922_393, 0.000_348),
        ("ethane", 0.025_358, 0.000_247),
        ("propane", 0.015_190, 0.000_149),
        ("n_butane", 0.000_523, 0.000_018),
        ("isobutane", 0.001_512, 0.000_027),
        ("n_pentane", 0.002_846, 0.000_007),
        ("isopentane", 0.002_832, 0.000_009),
        ("neopentane", 0.001_015, 0.000_004),
        ("n_hexane", 0.002_865, 0.000_008),
        ("nitrogen", 0.010_230, 0.000_195),
        ("carbon_dioxide", 0.015_236, 0.000_112),
    ];
    #[rustfmt::skip]
    let correlations: [&[f64]; 11] = [
        &[],
        &[-0.657_246],
        &[-0.377_458, -0.035_617],
        &[-0.041_205, -0.007_450, -0.004_442],
        &[-0.056_924, -0.013_720, -0.007_810, -0.000_824],
        &[0.099_228, -0.085_690, -0.039_877, -0.000_592, 0.002_803],
        &[0.061_961, -0.063_295, -0.029_677, -0.000_551, 0.001_827, 0.079_557],
        &[0.064_295, -0.054_908, -0.025_538, -0.000_372, 0.001_811, 0.071_180, 0.051_085],
        &[0.080_202, -0.074_061, -0.034_574, -0.000_567, 0.002_303, 0.094_670, 0.067_927, 0.060_788],
        &[-0.512_347, -0.030_668, -0.024_994, -0.005_703, -0.010_740, -0.072_794, -0.053_627, -0.046_653, -0.062_845],
        &[-0.265_664, -0.038_371, -0.023_925, -0.003_373, -0.005_392, -0.014_019, -0.010_845, -0.008_952, -0.012_357, -0.028_699],
    ];
    let names = ["gross_calorific_value", "net_calorific_value", "density", "relative_density", "gross_wobbe_index", "net_wobbe_index"];
    for (reference, correlated, published) in [
        ("15/15", false, [0.026_917, 0.024_757, 0.000_586, 0.000_478, 0.021_588, 0.020_151]),
        ("15/15", true, [0.016_316, 0.015_305, 0.000_277, 0.000_226, 0.019_823, 0.018_498]),
        ("25/0", false, [0.028_425, 0.026_164, 0.000_619, 0.000_479, 0.022_783, 0.021_278]),
        ("25/0", true, [0.017_241, 0.016_181, 0.000_293, 0.000_227, 0.020_914, 0.019_528]),
    ] {
        let published: std::vec::Vec<(&str, f64)> = names.into_iter().zip(published).collect();
        annex_d(&fractions, if correlated { &correlations } else { &[] }, reference, &published);
    }
}

#[test]
fn no_text_is_too_odd_to_be_refused() {
    // Strings put together at random from what compositions are made of, and what they are not.
    let pieces = [
        "CH4",
        "C3H8",
        "n-butane",
        "2,2-dimethylbutane",
        "hydrogen",
        "air",
        "G20",
        "gas oil",
        " ",
        ", ",
        ",",
        ";",
        "=",
        "%",
        "0.5",
        "92,5",
        "100",
        "-1",
        "1e400",
        "nan",
        "inf",
        ".",
        "é",
        "度",
        "\n",
        "((",
        "\u{0}",
    ];
    let mut state = 12345_u64;
    let mut accepted = 0;
    for _ in 0..3_000 {
        let mut text = std::string::String::new();
        for _ in 0..8 {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            let choice = (state >> 33) as usize;
            text.push_str(pieces[choice % pieces.len()]);
            if choice.is_multiple_of(3) {
                break;
            }
        }
        if let Ok(fuel) = Fuel::named(&text) {
            accepted += 1;
            assert!(fuel.mass > 0.0 && fuel.gross_calorific_value >= fuel.net_calorific_value, "{text}");
            if let Some(composition) = &fuel.composition {
                close(composition.fractions().iter().sum(), 1.0, SUM_TOLERANCE, &text);
            }
        }
    }
    assert!(accepted > 30, "{accepted}");
}

#[test]
fn compression_ratios_agree_with_equations_of_state() {
    // Compression factors of CoolProp 8.0.0 (reference equations of state), at °C and Pa.
    let points = [(-20.0, 98_000.0), (-5.0, 103_400.0), (5.0, 102_600.0), (30.0, 104_000.0)];
    for (gas, at_15, others, tolerance) in [
        ("methane", 0.998_018_1, [0.997_024_5, 0.997_406_1, 0.997_728_7, 0.998_307_9], 1.5e-4),
        ("propane", 0.981_931_1, [0.973_400_5, 0.976_720_9, 0.979_491_6, 0.984_234_1], 1.2e-3),
    ] {
        let metered = Fuel::named(gas).unwrap().composition.unwrap().metered(&ReferenceConditions::AT_15_15).unwrap();
        for ((celsius, pressure), z) in points.into_iter().zip(others) {
            let wanted = at_15 / z;
            close(metered.compression_ratio(pressure, celsius + 273.15), wanted, tolerance, &std::format!("{gas} {celsius}"));
        }
    }
}

/// One molecule of each burns to water, carbon dioxide and sulphur dioxide.
#[test]
fn sulphur_takes_its_oxygen() {
    for (gas, oxygen) in [("H2S", 1.5), ("COS", 1.5), ("CS2", 3.0), ("CH4 50 %, H2S 50 %", 1.75)] {
        let fuel = Fuel::named(gas).unwrap();
        assert!((fuel.stoichiometric_oxygen() - oxygen).abs() < 1e-12, "{gas}: {}", fuel.stoichiometric_oxygen());
    }
}

/// The 1995 edition has no column at 60 °F, which lies a ninth part of the way from 15 to 20 °C.
#[test]
fn sixty_degrees_fahrenheit_lie_between_the_columns_of_1995() {
    let heat = |celsius: &str| {
        let given =
            Node::from([("fuel", "CH4"), ("edition", "1995"), ("combustion_temperature", celsius), ("metering_temperature", "15 degC")]);
        evaluate("fuel_properties", &given, Bare::Refused).unwrap().get("gross_molar_calorific_value").unwrap()
    };
    let share = (heat("15.55 degC") - heat("15 degC")) / (heat("20 degC") - heat("15 degC"));
    assert!((share - 0.55 / 5.0).abs() < 1e-9, "{share}");
}

/// Neon and helium have the same negative factor, so that a mixture with either is less unlike an ideal gas.
#[test]
fn a_negative_summation_factor_takes_away() {
    let compression = |gas: &str, celsius: &str| {
        let given = Node::from([("fuel", gas), ("edition", "2016"), ("metering_temperature", celsius)]);
        evaluate("fuel_properties", &given, Bare::Refused).unwrap().get("compression_factor").unwrap()
    };
    for celsius in ["0 degC", "15 degC", "15.55 degC", "20 degC"] {
        let (neon, helium) = (compression("CH4 50 %, Ne 50 %", celsius), compression("CH4 50 %, He 50 %", celsius));
        assert!((neon - helium).abs() < 1e-12, "{celsius}: {neon} {helium}");
    }
    let neon = compression("CH4 50 %, Ne 50 %", "15 degC");
    // Half of methane's 0.04452 at 15 °C less half of 0.01, squared (ISO 6976:2016 Table 2).
    assert!((1.0 - neon - (0.5_f64 * 0.04452 - 0.5 * 0.01).powi(2)).abs() < 2e-7, "{neon}");
}
