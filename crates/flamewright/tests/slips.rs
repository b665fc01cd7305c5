//! Slips of a visit that no single reading shows: found across its parts, and only where they are.

#![cfg(feature = "text")]

use flamewright::node::Node;
use flamewright::visit::{Severity, Visit, assess};

/// Codes of what does not fit together in a record.
fn found(record: &str) -> Vec<String> {
    let visit = Visit::read(&Node::from_toml(record).unwrap()).unwrap_or_else(|e| panic!("{e}"));
    let assessment = assess(visit, None);
    assert!(assessment.parts.iter().all(|part| part.refused.is_none()), "{}", assessment.to_text());
    let slips = assessment.findings.iter().filter(|f| f.severity == Severity::Inconsistent);
    let mut codes: Vec<String> = slips.map(|f| f.code.clone()).collect();
    codes.sort();
    codes
}

fn flue(oxygen: &str, monoxide: &str, temperature: &str) -> String {
    format!(
        "[as_left.flue_analysis]\nfuel = \"G20\"\noxygen_dry = \"{oxygen}\"\ncarbon_monoxide_dry = \"{monoxide}\"\n\
         flue_temperature = \"{temperature}\"\nair_temperature = \"20 degC\"\n"
    )
}

fn rate(gross: &str, net: &str, plate: &str) -> String {
    format!(
        "[as_left.gas_rate]\nvolume = \"0.1 m3\"\ntime = \"120 s\"\ngas_pressure = \"20 mbar\"\ngas_temperature = \"15 degC\"\nbarometric_pressure = \"1013 mbar\"\ngross_calorific_value = \"{gross}\"\nnet_calorific_value = \"{net}\"\n{plate}\n"
    )
}

#[test]
fn readings_that_fit_together_pass() {
    assert!(found(&flue("4.6 %", "48 ppm", "180 degC")).is_empty());
    // 3 m3/h at 34 MJ/m3 are 28.3 kW.
    assert!(found(&rate("37.8 MJ/m3", "34 MJ/m3", "plate_heat_input_net = \"28 kW\"")).is_empty());
}

#[test]
fn slips_between_readings_are_named() {
    let emitter =
        "[as_left.heat_from_flow]\nvolume_flow = \"0.6 m3/h\"\nflow_temperature = \"80 degC\"\nreturn_temperature = \"70 degC\"\n";
    assert_eq!(found(&format!("{}{emitter}", flue("4.6 %", "48 ppm", "69 degC"))), ["FLUE_COLDER_THAN_RETURN"]);
    assert!(found(&format!("{}{emitter}", flue("4.6 %", "48 ppm", "71 degC"))).is_empty());
    // The return of the other stage says nothing.
    let before = emitter.replace("as_left", "as_found");
    assert!(found(&format!("{}{before}", flue("4.6 %", "48 ppm", "69 degC"))).is_empty());
    assert_eq!(found(&flue("4.6 %", "4900 ppm", "180 degC")), ["RATIO_IMPLAUSIBLE"]);
    assert!(found(&flue("4.6 %", "4000 ppm", "180 degC")).is_empty());
    // Half of the heat and more goes up this flue.
    assert_eq!(found(&flue("16 %", "48 ppm", "450 degC")), ["EFFICIENCY_IMPLAUSIBLE"]);
    assert_eq!(found(&rate("37.8 MJ/m3", "37.0 MJ/m3", "")), ["GROSS_NET"]);
    assert_eq!(found(&rate("37.8 MJ/m3", "31.0 MJ/m3", "")), ["GROSS_NET"]);
    for plate in ["plate_heat_input_net = \"60 kW\"", "plate_heat_input_net = \"20 kW\"", "plate_heat_input_gross = \"20 kW\""] {
        assert_eq!(found(&rate("37.8 MJ/m3", "34 MJ/m3", plate)), ["FAR_FROM_PLATE"], "{plate}");
    }
}

#[test]
fn instruments_out_of_date_or_unused_are_named() {
    let record = |date: &str, uses: &str| {
        format!(
            "date = \"{date}\"\n[instruments.analyser]\ncalibrated = \"2026-01-01\"\ndue = \"2027-01-01\"\n{}{uses}",
            flue("4.6 %", "48 ppm", "180 degC")
        )
    };
    let used = "instruments = [\"analyser\"]\n";
    assert!(found(&record("2026-06-01", used)).is_empty());
    assert_eq!(found(&record("2027-06-01", used)), ["CALIBRATION_EXPIRED"]);
    assert_eq!(found(&record("2026-06-01", "")), ["INSTRUMENT_UNUSED"]);
}
