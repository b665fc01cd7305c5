//! What can be asked of a calculation by a call in text, beside the same asked in Rust.
#![cfg(feature = "text")]

use flamewright::catalogue::calculation;
use flamewright::explore::goal_seek;
use flamewright::node::Node;
use flamewright::text::call_json;
use flamewright::uncertainty::{Covariance, Distribution, first_order, monte_carlo};

fn answer(call: &str) -> Node {
    Node::from_json(&call_json(call).unwrap_or_else(|e| panic!("{call}: {e}"))).unwrap()
}

fn number(tree: &Node, path: &[&str]) -> f64 {
    let found = path.iter().try_fold(tree, |node, key| node.get(key));
    let Some(Node::Number(n)) = found else { panic!("{path:?} in {tree:?}") };
    *n
}

/// Two temperatures of 81.8 °C and 74.2 °C, known to 0.4 K and 0.3 K.
const SWITCHED: &str = r#""calculation": "thermostat_differential",
    "cut_out_temperature": {"value": "81.8 degC", "standard_uncertainty": "0.4 K"},
    "cut_in_temperature": {"value": "74.2 degC", "standard_uncertainty": "0.3 K"}"#;

#[test]
fn what_is_stated_of_a_value_reaches_every_result() {
    let told = answer(&format!("{{{SWITCHED}}}"));
    let of = |key: &str| number(&told, &["results", "differential", key]);
    assert!((of("value") - 7.6).abs() < 1e-9);
    // A difference of independent values: the root of 0.4² + 0.3²; shares 16 to 9.
    assert!((of("standard_uncertainty") - 0.5).abs() < 1e-9 && of("coverage_factor") == 2.0);
    assert!((number(&told, &["results", "differential", "budget", "cut_out_temperature"]) - 0.64).abs() < 1e-9);
    // In the unit of the result, whose zero does not move it.
    assert!((number(&told, &["results", "mid_point", "standard_uncertainty"]) - 0.25).abs() < 1e-9);

    let shared = answer(&format!(
        "{{{SWITCHED}, \"ask\": {{\"correlations\": [[\"cut_out_temperature\", \"cut_in_temperature\", 1]], \"correlation_of_results\": true}}}}"
    ));
    assert!((number(&shared, &["results", "differential", "standard_uncertainty"]) - 0.1).abs() < 1e-9);
    let Some(Node::List(rows)) = shared.get("correlation_of_results") else { panic!("{shared:?}") };
    let Node::List(first) = &rows[0] else { panic!("{rows:?}") };
    assert!(matches!(first[..], [Node::Number(same), Node::Number(other)] if same == 1.0 && (other - 1.0).abs() < 1e-9), "{first:?}");

    // Three readings: 4.53 standard uncertainties cover what 2 do otherwise (JCGM 100:2008 table G.2).
    let few = answer(r#"{"calculation": "static_head", "height": {"readings": ["6.4 m", "6.5 m", "6.6 m"]}}"#);
    assert!((number(&few, &["results", "static_pressure", "coverage_factor"]) - 4.53).abs() < 0.005);
    assert!(
        answer(r#"{"calculation": "static_head", "height": "6.5 m"}"#)
            .get("results")
            .unwrap()
            .get("static_pressure")
            .unwrap()
            .get("budget")
            .is_none()
    );
}

#[test]
fn draws_are_those_of_the_library() {
    let told = answer(&format!("{{{SWITCHED}, \"ask\": {{\"monte_carlo\": {{\"trials\": 20000, \"seed\": 7, \"coverage\": 0.9}}}}}}"));
    let entry = calculation("thermostat_differential").unwrap();
    let prepared = entry.prepare(&Node::Null).unwrap();
    let (at, spread) = ([354.95, 347.35], Covariance::independent(&[0.4, 0.3]));
    let draws = monte_carlo(&*prepared, &at, &spread, &[Distribution::Normal; 2], 20_000, 7).unwrap();
    let of = |key: &str| number(&told, &["monte_carlo", "results", "differential", key]);
    let (low, high) = draws.interval(0, 0.9, false);
    assert!((of("mean") - draws.mean(0)).abs() < 1e-9 && (of("standard_uncertainty") - draws.standard(0)).abs() < 1e-9);
    assert!((of("low") - low).abs() < 1e-9 && (of("high") - high).abs() < 1e-9 && of("low") < 6.9 && of("high") > 8.3);
    assert!((of("standard_uncertainty") - first_order(&*prepared, &at, &spread).standard(0)).abs() < 0.01);
}

#[test]
fn the_working_is_that_of_the_calculation() {
    let told = answer(&format!("{{{SWITCHED}, \"ask\": {{\"steps\": true}}}}"));
    let Some(Node::List(lines)) = told.get("steps") else { panic!("{told:?}") };
    assert!(lines.iter().any(|line| line.get("plain").is_some_and(|p| p.text("plain").unwrap().contains("7.6 K"))), "{lines:?}");
    assert!(lines.iter().all(|line| line.get("source").is_some_and(|s| !s.text("source").unwrap().is_empty())));
}

#[test]
fn a_wanted_result_is_sought_and_stands_in_the_answer() {
    let told = answer(
        r#"{"calculation": "liquid_water", "ask": {"goal_seek":
            {"vary": "temperature", "low": "10 degC", "high": "90 degC", "of": "density", "wanted": "983 kg/m3"}}}"#,
    );
    let prepared = calculation("liquid_water").unwrap().prepare(&Node::Null).unwrap();
    let goal = goal_seek(&*prepared, &[f64::NAN, 2e5], "temperature", 283.15, 363.15, "density", 983.0).unwrap();
    assert_eq!(number(&told, &["goal", "si"]), goal.value);
    assert!((number(&told, &["goal", "value"]) - (goal.value - 273.15)).abs() < 1e-9);
    assert!((number(&told, &["results", "density", "value"]) - 983.0).abs() < 1e-7);
}

#[test]
fn a_sweep_gives_columns_and_says_what_was_refused() {
    let told = answer(
        r#"{"calculation": "liquid_water", "ask": {"sweep":
            {"temperature": {"from": "20 degC", "to": "140 degC", "points": 3}, "pressure": ["1 bar", "5 bar"]}}}"#,
    );
    let Some(Node::List(density)) = told.get("results").and_then(|r| r.get("density")).and_then(|d| d.get("values")) else {
        panic!("{told:?}")
    };
    let accepted = [true, true, true, true, false, true].map(Node::Flag).to_vec();
    assert_eq!(told.get("accepted"), Some(&Node::List(accepted)));
    assert_eq!(density[4], Node::Null);
    let single = answer(r#"{"calculation": "liquid_water", "temperature": "140 degC", "pressure": "5 bar"}"#);
    assert_eq!(density[5], Node::Number(number(&single, &["results", "density", "value"])));
}

#[test]
fn whatever_cannot_be_answered_is_refused_by_name() {
    let water = r#""calculation": "liquid_water""#;
    for (call, words) in [
        (format!("{{{SWITCHED}, \"ask\": {{\"montecarlo\": {{}}}}}}"), "did you mean \"monte_carlo\""),
        (format!("{{{SWITCHED}, \"ask\": true}}"), "a table of names"),
        (format!("{{{SWITCHED}, \"ask\": {{\"monte_carlo\": {{\"trials\": 1}}}}}}"), "trials = 1"),
        (format!("{{{SWITCHED}, \"ask\": {{\"monte_carlo\": {{\"trials\": 2.5}}}}}}"), "whole number"),
        (format!("{{{SWITCHED}, \"ask\": {{\"monte_carlo\": {{\"coverage\": 95}}}}}}"), "between 0 and 1"),
        (format!("{{{SWITCHED}, \"ask\": {{\"correlations\": [[\"cut_out_temperature\", \"cut_in_temperature\", 2]]}}}}"), "from -1 to 1"),
        (format!("{{{SWITCHED}, \"ask\": {{\"correlations\": [[\"cut_out_temperature\", 1]]}}}}"), "two inputs and a coefficient"),
        (format!("{{{water}, \"temperature\": \"60 degC\", \"ask\": {{\"monte_carlo\": {{}}}}}}"), "nothing is stated"),
        (format!("{{{water}, \"temperature\": \"60 degC\", \"ask\": {{\"correlation_of_results\": true}}}}"), "nothing is stated"),
        (format!("{{{water}, \"temperature\": {{\"value\": \"60 degC\", \"accurracy\": \"1 K\"}}}}"), "did you mean \"accuracy\""),
        (format!("{{{water}, \"temperature\": {{\"accuracy\": \"1 K\"}}}}"), "either a value or readings"),
        (format!("{{{water}, \"ask\": {{\"goal_seek\": {{\"vary\": \"temperature\"}}}}}}"), "needs it"),
        (
            format!(
                "{{{water}, \"temperature\": \"60 degC\", \"ask\": {{\"goal_seek\": {{\"vary\": \"temperature\", \"low\": \"10 degC\", \"high\": \"90 degC\", \"of\": \"density\", \"wanted\": \"983 kg/m3\"}}}}}}"
            ),
            "not to be given",
        ),
        (format!("{{{water}, \"ask\": {{\"sweep\": {{\"temperature\": {{\"from\": \"20 degC\"}}}}}}}}"), "to: temperature needs it"),
        (format!("{{{water}, \"ask\": {{\"steps\": true, \"sweep\": {{\"temperature\": [\"20 degC\"]}}}}}}"), "nothing else"),
        (
            format!(
                "{{{water}, \"ask\": {{\"sweep\": {{\"temperature\": {{\"from\": \"20 degC\", \"to\": \"80 degC\", \"points\": 10000}}, \"pressure\": {{\"from\": \"2 bar\", \"to\": \"3 bar\", \"points\": 10000}}}}}}}}"
            ),
            "at most",
        ),
    ] {
        let said = call_json(&call).expect_err(&call).to_string();
        assert!(said.contains(words), "{call}\n{said}");
    }
}
