//! Seeded mutations of good input, and input made to cost: refused or answered, always soon.

use flamewright::node::Node;
use flamewright::text::call_json;
use flamewright::visit::{Visit, assess};
use flamewright_trials::{Draws, fuzz};
use std::time::{Duration, Instant};

/// How long each target is tried; `FLAMEWRIGHT_TRIAL_SECONDS` makes it longer.
fn seconds() -> f64 {
    std::env::var("FLAMEWRIGHT_TRIAL_SECONDS").ok().and_then(|s| s.parse().ok()).unwrap_or(1.0)
}

/// Says which input it was when a target panics, in a form that can be kept.
struct Culprit<'a>(&'static str, &'a [u8]);

impl Drop for Culprit<'_> {
    fn drop(&mut self) {
        if std::thread::panicking() {
            eprintln!("target {}: {:?}", self.0, String::from_utf8_lossy(self.1));
            eprintln!("bytes {:?}", self.1);
        }
    }
}

fn walk(name: &str) {
    let target = fuzz::target(name).unwrap();
    let seeds = (target.seeds)();
    assert!(!seeds.is_empty());
    let (mut draws, started, mut runs, mut slowest) = (Draws::new(20_261_125), Instant::now(), 0, Duration::ZERO);
    let mut attempt = |data: &[u8]| {
        let before = Instant::now();
        let culprit = Culprit(target.name, data);
        (target.run)(data);
        drop(culprit);
        slowest = slowest.max(before.elapsed());
        runs += 1;
    };
    // Every fifth seed at first, so that a short run sees all kinds of them.
    for seed in seeds.iter().step_by(5) {
        if started.elapsed().as_secs_f64() > seconds() {
            break;
        }
        attempt(seed);
    }
    while started.elapsed().as_secs_f64() < 2.0 * seconds() {
        attempt(&fuzz::mutated(&seeds, &mut draws));
    }
    println!("{name}: {runs} runs, the slowest {:.3} s", slowest.as_secs_f64());
    assert!(runs > 0, "{runs}");
}

#[test]
fn quantities() {
    walk("quantity");
}

#[test]
fn compositions() {
    walk("composition");
}

#[test]
fn policies() {
    walk("policy");
}

#[test]
fn visits() {
    walk("visit");
}

#[test]
fn calls() {
    walk("call");
}

#[test]
fn settings() {
    walk("settings");
}

#[test]
fn bits() {
    walk("bits");
}

/// Far above what any of these takes, far below what a cost that grows with the square would.
const SOON: Duration = Duration::from_secs(60);

fn soon<T>(what: &str, work: impl FnOnce() -> T) -> T {
    let started = Instant::now();
    let made = work();
    assert!(started.elapsed() < SOON, "{what} took {:?}", started.elapsed());
    made
}

#[test]
fn nesting_is_bounded() {
    for (open, close) in [("[", "]"), ("{\"a\":", "}")] {
        let deep = format!("{}1{}", open.repeat(1_000_000), close.repeat(1_000_000));
        assert!(soon("nested JSON", || Node::from_json(&deep)).is_err());
    }
    let deep = format!("a = {}1{}", "[".repeat(200_000), "]".repeat(200_000));
    assert!(soon("nested TOML", || Node::from_toml(&deep)).is_err());
    let deep = format!("a = {}1{}", "{a = ".repeat(200_000), "}".repeat(200_000));
    assert!(soon("nested TOML", || Node::from_toml(&deep)).is_err());
    // A key with many dots nests as well, and so does the name of a table.
    let keys = vec!["a"; 100_000].join(".");
    assert!(soon("dotted TOML", || Node::from_toml(&format!("{keys} = 1"))).is_err());
    assert!(soon("a deep table in TOML", || Node::from_toml(&format!("[{keys}]"))).is_err());
}

#[test]
fn many_keys_take_time_in_proportion() {
    let entries: Vec<String> = (0..300_000).map(|i| format!("\"k{i}\":1")).collect();
    let wide = format!("{{{}}}", entries.join(","));
    let node = soon("a wide table", || Node::from_json(&wide)).unwrap();
    assert!(soon("a wide visit", || Visit::read(&node)).is_err());
    let again = format!("{{{},\"k7\":2}}", entries.join(","));
    let error = soon("a wide table", || Node::from_json(&again)).unwrap_err();
    assert!(error.to_string().contains("\"k7\" is given twice"), "{error}");
}

#[test]
fn long_numbers_and_great_exponents() {
    for text in ["9".repeat(1_000_000), format!("0.{}1", "0".repeat(1_000_000)), "1e999999999".into(), "1e-999999999".into(), "-0".into()] {
        let quoted = format!(r#"{{"calculation": "liquid_water", "temperature": "{text} K"}}"#);
        assert!(soon("a long quantity", || call_json(&quoted)).is_err());
        let bare = format!(r#"{{"calculation": "liquid_water", "temperature": {text}}}"#);
        assert!(soon("a long number", || call_json(&bare)).is_err());
        let toml = soon("a long number in TOML", || Node::from_toml(&format!("a = {text}")));
        assert!(toml.is_err() || toml.is_ok_and(|n| matches!(n.get("a"), Some(Node::Number(_)))));
    }
    let words =
        soon("a long composition", || flamewright::fuel::Fuel::named(&format!("{} % methane", "very ".repeat(2_000_000)))).unwrap_err();
    assert!(words.to_string().len() < 500);
    assert!(call_json(&format!(r#"{{"calculation": "{}"}}"#, "x".repeat(5_000_000))).unwrap_err().to_string().len() < 500);
    let unknown = format!(r#"{{"calculation": "liquid_water", "{}": 1}}"#, "y".repeat(5_000_000));
    assert!(call_json(&unknown).unwrap_err().to_string().len() < 500);
}

#[test]
fn long_lists_are_refused() {
    let item = |text: &str, n: usize| format!("[{}]", vec![text; n].join(","));
    for (calculation, settings) in [
        ("duty_point", format!(r#""pump_flows": {0}, "pump_pressures": {0}"#, item("\"1 m3/h\"", 200_000))),
        ("cool_down_fit", format!(r#""times": {}, "temperatures": {}"#, item("\"1 min\"", 200_000), item("\"1 degC\"", 200_000))),
        ("thermostat_test", format!(r#""cut_outs": {0}, "cut_ins": {0}"#, item("\"80 degC\"", 200_000))),
        ("installation_volume", format!(r#""pipes": {}"#, item(r#"{"length": "1 m", "bore": "20 mm"}"#, 200_000))),
        ("system_content", format!(r#""pipes": {}"#, item(r#"{"length": "1 m", "tube": "copper 22x0.9"}"#, 200_000))),
        ("circuit_balance", format!(r#""sections": {0}, "circuits": {0}"#, item("{}", 200_000))),
        ("gas_installation", format!(r#""sections": {}"#, item("{}", 200_000))),
        ("leak_class", format!(r#""classes": {}"#, item(r#"{"name": "a", "from": "1 L/h"}"#, 200_000))),
        ("pipe_heat_loss", format!(r#""further_layers": {}"#, item("{}", 200_000))),
        ("cool_down", format!(r#""circuits": {}"#, item("{}", 200_000))),
        ("cool_down", format!(r#""thresholds": {}"#, item(r#"{"name": "a", "temperature": "40 degC"}"#, 200_000))),
        ("thermistor_temperature", format!(r#""curve": "points", "resistances": {0}, "temperatures": {0}"#, item("\"1 ohm\"", 200_000))),
    ] {
        let call = format!(r#"{{"calculation": "{calculation}", {settings}}}"#);
        let error = soon(calculation, || call_json(&call)).unwrap_err();
        assert!(error.to_string().len() < 2_000, "{calculation}: {}", error.to_string().len());
    }
}

#[test]
fn a_visit_with_very_many_parts() {
    let part = |i: usize| format!("[[checks.liquid_water]]\nlabel = \"{i}\"\ntemperature = \"60 degC\"\n");
    let visit = |n: usize| (0..n).map(part).collect::<String>();
    let error = soon("reading", || Visit::read(&Node::from_toml(&visit(20_000)).unwrap()).err()).unwrap();
    assert!(error.to_string().contains("100 parts at most"), "{error}");
    let modest = Visit::read(&Node::from_toml(&visit(100)).unwrap()).unwrap();
    assert_eq!(soon("assessing", || assess(modest, None)).parts.len(), 100);
}
