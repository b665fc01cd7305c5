//! A visit as a user meets it: the invented demo, and everything that can be written wrongly.

use flamewright::judgement::{Decision, Policy};
use flamewright::node::Node;
use flamewright::visit::{Assessment, Severity, Stage, Visit, assess};

const DEMO: &str = include_str!("../../../examples/visits/village_hall.toml");
const POLICY: &str = include_str!("../../../examples/visits/example_policy.toml");

fn assessed(record: &str, policy: Option<&str>) -> Assessment {
    let visit = Visit::read(&Node::from_toml(record).unwrap()).unwrap_or_else(|e| panic!("{e}"));
    assess(visit, policy.map(|p| Policy::read(&Node::from_toml(p).unwrap()).unwrap()))
}

fn refusal(record: &str) -> String {
    match Node::from_toml(record).and_then(|node| Visit::read(&node)) {
        Err(error) => error.to_string(),
        Ok(visit) => assess(visit, None).parts.iter().find_map(|p| p.refused.as_ref().map(ToString::to_string)).unwrap_or_default(),
    }
}

/// A record with one flue analysis in which `line` replaces the one that begins alike.
fn flue_with(line: &str) -> String {
    let key = line.split('=').next().unwrap_or_default().trim();
    let good = [
        "fuel = \"G20\"",
        "oxygen_dry = \"4.6 %\"",
        "carbon_monoxide_dry = \"48 ppm\"",
        "flue_temperature = \"180 degC\"",
        "air_temperature = \"20 degC\"",
    ];
    let kept: Vec<&str> = good.into_iter().filter(|g| g.split('=').next().unwrap_or_default().trim() != key).chain([line]).collect();
    format!("[as_left.flue_analysis]\n{}\n", kept.join("\n"))
}

#[test]
fn the_demo_is_assessed_without_a_gap() {
    let assessment = assessed(DEMO, Some(POLICY));
    assert!(assessment.parts.iter().all(|p| p.refused.is_none()));
    let rate = assessment.part(Stage::AsLeft, "gas_rate").unwrap();
    let share = rate.output("share_of_plate_net").unwrap();
    assert!((share.value - 1.007).abs() < 0.002 && share.standard > 0.004 && share.standard < 0.02);
    assert!(share.judged.iter().all(|j| j.verdict.decision == Decision::Conforms));
    // The gauge of the demo is out of calibration, and ventilation was not measured.
    let has = |severity: Severity, word: &str| assessment.findings.iter().any(|f| f.severity == severity && f.text.contains(word));
    assert!(has(Severity::Inconsistent, "calibration") && has(Severity::NotMeasured, "Ventilation") && has(Severity::NotDone, "spillage"));
    assert!(has(Severity::PutRight, "share of plate net"));
    let change = assessment.change("flue_analysis", "", "carbon_monoxide_ratio").unwrap();
    assert!(change.difference < 0.0 && change.significant == Some(true));
    for text in [assessment.to_text(), assessment.to_html(), assessment.to_node().to_json()] {
        assert!(text.contains("invented") && text.contains("conforms") && text.contains("emergency"));
    }
    assert!(!assessment.to_html().contains("<script"));
}

#[test]
fn the_readme_shows_what_is_printed() {
    let readme = include_str!("../../../README.md");
    let (_, shown) = readme.split_once("```text\n").unwrap();
    let shown: Vec<&str> = shown.split("```").next().unwrap().lines().collect();
    assert!(shown.len() > 40 && shown.last() == Some(&"…"));
    let printed = assessed(DEMO, Some(POLICY)).to_text();
    let mut lines = printed.lines().map(str::trim_end);
    for line in &shown[..shown.len() - 1] {
        assert!(lines.any(|printed| printed == *line), "not printed, or not in this order: {line}");
    }
}

#[test]
fn what_is_dangerous_stands_first() {
    let assessment = assessed(DEMO, Some(POLICY));
    for text in [assessment.to_text(), assessment.to_html()] {
        let place = |word: &str| text.find(word).unwrap_or_else(|| panic!("{word}: {text}"));
        assert!(place("at risk") < place("cannot be told apart") && place("cannot be told apart") < place("Not measured."));
    }
}

#[test]
fn readings_with_one_instrument_share_its_error() {
    let record = |instrument: &str| {
        format!(
            "[instruments.thermometer]\ntemperature = {{ accuracy = \"1 K\" }}\n\
             [as_found.liquid_water]\n{instrument}\ntemperature = \"60 degC\"\n[as_left.liquid_water]\n{instrument}\ntemperature = \"61.5 degC\"\n"
        )
    };
    let with = assessed(&record("instruments = [\"thermometer\"]"), None).change("liquid_water", "", "density").unwrap();
    let alone = record("")
        .replace("\"60 degC\"", "{ value = \"60 degC\", accuracy = \"1 K\" }")
        .replace("\"61.5 degC\"", "{ value = \"61.5 degC\", accuracy = \"1 K\" }");
    let without = assessed(&alone, None).change("liquid_water", "", "density").unwrap();
    assert_eq!(with.difference, without.difference);
    assert!(with.standard < 0.05 * without.standard, "{} {}", with.standard, without.standard);
    assert_eq!((with.significant, without.significant), (Some(true), Some(false)));
}

#[test]
fn few_repeated_readings_widen_what_is_printed_and_judged() {
    let with = |temperature: &str| {
        let record = format!("[as_left.liquid_water]\ntemperature = {temperature}\npressure = \"2 bar\"\n");
        let assessment = assessed(&record, None);
        let part = assessment.part(Stage::AsLeft, "liquid_water").unwrap();
        let (input, output) = (part.input("temperature").unwrap(), part.output("density").unwrap());
        (input.standard, input.expanded(), output.coverage_factor)
    };
    // Three readings have two degrees of freedom; k for 95.45 % is 4.53 (JCGM 100:2008 table G.2).
    let (standard, expanded, factor) = with("{ readings = [\"59 degC\", \"60 degC\", \"61 degC\"] }");
    assert!((standard - 1.0 / 3.0_f64.sqrt()).abs() < 1e-12);
    assert!((expanded / standard - 4.53).abs() < 0.005 && (factor - 4.53).abs() < 0.005, "{expanded} {factor}");
    // What is known of the instrument outweighs the readings: nu = (u/s)^4 times 2, far above 100.
    let (.., factor) = with("{ readings = [\"59.9 degC\", \"60 degC\", \"60.1 degC\"], accuracy = \"1 K\" }");
    assert!((2.0..2.001).contains(&factor), "{factor}");
    let (.., factor) = with("{ value = \"60 degC\", accuracy = \"1 K\" }");
    assert_eq!(factor, 2.0);
}

#[test]
fn a_spread_of_temperature_is_a_size_in_any_unit() {
    let standard = |accuracy: &str| {
        let record = format!("[as_left.liquid_water]\ntemperature = {{ value = \"60 degC\", accuracy = \"{accuracy}\" }}\n");
        assessed(&record, None).part(Stage::AsLeft, "liquid_water").unwrap().input("temperature").unwrap().standard
    };
    for accuracy in ["1 K", "1 degC", "1.8 degF", "1.8 °F"] {
        assert!((standard(accuracy) * 3.0_f64.sqrt() - 1.0).abs() < 1e-12, "{accuracy}");
    }
    for (accuracy, words) in [("1", "unit"), ("1 mbar", "temperature"), ("-1 K", "not negative"), ("inf K", "finite")] {
        let record = format!("[as_left.liquid_water]\ntemperature = {{ value = \"60 degC\", accuracy = \"{accuracy}\" }}\n");
        let said = refusal(&record);
        assert!(said.contains("temperature") && said.contains(words), "{accuracy}: {said}");
    }
}

#[test]
fn a_part_may_use_the_result_of_another_wherever_it_stands() {
    let record = "[checks.static_head]\nheight = \"3 m\"\ntemperature = \"= block_cool_down.steady\"\n";
    assert!(refusal(record).contains("there is no such result"));
    let record = "[as_left.heat_from_flow]\nvolume_flow = \"700 L/h\"\nflow_temperature = \"70 degC\"\nreturn_temperature = \"55 degC\"\n\
                  [as_left.flow_from_heat]\nheat_output = \"= heat_from_flow.heat_output\"\nflow_temperature = \"70 degC\"\nreturn_temperature = \"55 degC\"\n";
    let swapped = {
        let (first, second) = record.split_at(record.find("[as_left.flow_from_heat]").unwrap());
        format!("{second}{first}")
    };
    for record in [record, &swapped] {
        let assessment = assessed(record, None);
        let flow = assessment.part(Stage::AsLeft, "flow_from_heat").unwrap();
        assert!(flow.refused.is_none(), "{:?}", flow.refused);
        let back = assessment.part(Stage::AsLeft, "heat_from_flow").unwrap().output("mass_flow").unwrap().value;
        assert!((flow.output("mass_flow").unwrap().value / back - 1.0).abs() < 1e-9);
    }
    let circle = "[as_left.heat_from_flow]\nvolume_flow = \"= flow_from_heat.volume_flow_at_flow\"\nflow_temperature = \"70 degC\"\nreturn_temperature = \"55 degC\"\n\
                  [as_left.flow_from_heat]\nheat_output = \"= heat_from_flow.heat_output\"\nflow_temperature = \"70 degC\"\nreturn_temperature = \"55 degC\"\n";
    assert!(refusal(circle).contains("circle"));
}

#[test]
fn every_mistake_tells_the_reader_what_to_do() {
    for (record, expected) in [
        (String::new(), "the record is empty"),
        ("[as_fond.flue_analysis]\n".to_owned(), "did you mean \"as_found\""),
        ("[as_found.flue_analisis]\n".to_owned(), "did you mean \"flue_analysis\""),
        (flue_with("oxigen_dry = \"4.6 %\""), "did you mean \"oxygen_dry\""),
        (flue_with("oxygen_dry = \"25 %\""), "out of range: allowed is 0 % to 20.9 %"),
        (flue_with("oxygen_dry = \"4.6\""), "has no unit"),
        (flue_with("oxygen_dry = 4.6"), "has no unit"),
        (flue_with("oxygen_dry = \"4.6 mbar\""), "ratio (dry) is needed"),
        (flue_with("oxygen_dry = \"4.6 % wet\""), "wet basis"),
        (flue_with("carbon_monoxide_dry = \"48 %\""), "out of range"),
        (flue_with("flue_temperature = \"15 degC\""), "not warmer than the air"),
        (flue_with("flue_temperature = \"180 bananas\""), "\"bananas\" is not known"),
        (flue_with("fuel = \"G2O\""), "G20"),
        (flue_with("barometric_pressure = \"20 mbar(g)\""), "gauge"),
        ("[as_left.gas_rate]\nvolume = \"0.1 m3\"\ntime = \"2:05\"\n".to_owned(), "2 min 5 s"),
        ("[as_left.gas_rate]\nvolume = \"0,1 m3\"\ntime = \"125 s\"\n".to_owned(), "decimal point"),
        ("[as_left.gas_rate]\nvolume = \"0.1 m3\"\ntime = \"125 s\"\nplate_heat_input_net = \"20 kW gross\"\n".to_owned(), "gross basis"),
        ("[as_left.gas_rate]\nvolume = \"0.1 m3\"\ntime = \"125 s\"\nplate_heat_input_net = \"20 kWh\"\n".to_owned(), "energy"),
        ("[as_left.gas_rate]\nvolume = \"0.1 kW\"\ntime = \"125 s\"\n".to_owned(), "volume"),
        ("[as_left.liquid_water]\ntemperature = \"60 degC\"\ntemperature = \"61 degC\"\n".to_owned(), "duplicate"),
        ("[as_left.liquid_water]\ninstruments = [\"thermometer\"]\ntemperature = \"60 degC\"\n".to_owned(), "thermometer"),
        ("[as_left.liquid_water]\ntemperature = { value = \"60 degC\", accurracy = \"1 K\" }\n".to_owned(), "did you mean \"accuracy\""),
        ("[common]\nbarometr = \"1000 mbar\"\n".to_owned(), "not known"),
    ] {
        let said = refusal(&record);
        assert!(said.contains(expected), "{record}\nsaid: {said}\nexpected: {expected}");
    }
}

#[test]
fn a_policy_must_say_what_it_rests_on() {
    let policy = |limit: &str| match Node::from_toml(&format!("title = \"t\"\ndate = \"2026-01-01\"\n[[limit]]\n{limit}"))
        .and_then(|n| Policy::read(&n))
    {
        Ok(_) => String::new(),
        Err(error) => error.to_string(),
    };
    let cite = "citation = \"invented\"";
    assert_eq!(policy(&format!("on = \"gas_rate.share_of_plate_net\"\nbasis = \"net\"\nat_most = \"105 %\"\n{cite}")), "");
    assert!(
        policy(&format!("on = \"gas_rate.share_of_plate_net\"\nbasis = \"gross\"\nat_most = \"105 %\"\n{cite}"))
            .contains("cannot be judged")
    );
    assert!(policy(&format!("on = \"liquid_water.density\"\nbasis = \"gross\"\nat_most = \"990 kg/m3\"\n{cite}")).contains("has no basis"));
    assert!(policy(&format!("on = \"gas_rate.share_of_plate_net\"\nat_most = \"105 %\"\n{cite}")).contains("say basis"));
    assert!(
        policy(&format!("on = \"flue_analysis.efficiency_nett\"\nat_least = \"85 %\"\n{cite}")).contains("did you mean \"efficiency_net\"")
    );
    assert!(policy("on = \"liquid_water.density\"\nat_most = \"990 kg/m3\"").contains("citation"));
    assert!(policy(&format!("on = \"liquid_water.density\"\nat_most = 990\n{cite}")).contains("unit"));
    assert!(policy(&format!("on = \"liquid_water.density\"\n{cite}")).contains("at_most or at_least"));
    assert!(Policy::read(&Node::from_toml("title = \"t\"").unwrap()).unwrap_err().to_string().contains("date"));
}

/// A flue analysis with this instrument, this in the part besides, and an invented limit on its ratio.
fn flue_read_with(instrument: &str, part: &str) -> Assessment {
    let record = format!(
        r#"
title = "invented"
date = "2026-01-01"
invented = true
[common]
fuel = "G20"
[instruments.box]
{instrument}
[as_left.flue_analysis]
{part}
oxygen_dry = "5 %"
carbon_monoxide_dry = "40 ppm"
flue_temperature = "150 degC"
air_temperature = "20 degC"
"#
    );
    let policy = "title = \"invented\"\ndate = \"2026-01-01\"\ninvented = true\n[[limit]]\non = \"flue_analysis.carbon_monoxide_ratio\"\n\
                  at_most = 0.004\ncitation = \"invented\"\n";
    assessed(&record, Some(policy))
}

#[test]
fn a_share_of_the_range_is_a_half_width() {
    let standard = |statement: &str| {
        let assessment = flue_read_with(&format!("oxygen_dry = {{ {statement} }}"), "instruments = [\"box\"]");
        let part = &assessment.parts[0];
        assert!(part.refused.is_none(), "{:?}", part.refused);
        part.input("oxygen_dry").unwrap().standard
    };
    let close = |got: f64, half_width: f64| assert!((got - half_width / 3_f64.sqrt()).abs() < 1e-15, "{got} {half_width}");
    close(standard(r#"of_range = "1 %", range = "25 %""#), 0.0025);
    close(standard(r#"of_range = "1 %", range = "25 %", of_reading = "2 %""#), 0.0025 + 0.001);
    close(standard(r#"of_range = "1 %", range = "25 %", of_reading = "2 %", larger_of = true"#), 0.0025);
    close(standard(r#"accuracy = "0.05 %", of_reading = "2 %", larger_of = true"#), 0.001);
    close(standard(r#"accuracy = "0.3 %", of_reading = "2 %""#), 0.003 + 0.001);
    let without = flue_read_with(r#"oxygen_dry = { of_range = "1 %" }"#, "instruments = [\"box\"]");
    assert!(without.parts[0].refused.as_ref().unwrap().to_string().contains("range"));
}

#[test]
fn what_a_verdict_cannot_rest_on_is_said_at_a_glance() {
    let found = |assessment: &Assessment, code: &str| assessment.findings.iter().any(|f| f.code == code);
    let stated = r#"oxygen_dry = { accuracy = "0.3 %" }"#;
    let idle = flue_read_with(stated, "");
    assert!(found(&idle, "NO_UNCERTAINTY") && found(&idle, "INSTRUMENT_UNUSED") && !found(&idle, "NO_CALIBRATION"));
    let used = flue_read_with(stated, "instruments = [\"box\"]");
    assert!(!found(&used, "NO_UNCERTAINTY") && !found(&used, "INSTRUMENT_UNUSED") && found(&used, "NO_CALIBRATION"));
    let calibrated = flue_read_with(&format!("calibrated = \"2025-06-01\"\n{stated}"), "instruments = [\"box\"]");
    assert!(!found(&calibrated, "NO_CALIBRATION"));
}
