//! Reads a visit record and a policy (TOML) and prints the assessment.
//!
//! `cargo run --release --example assess_visit` uses the invented demo visit;
//! `… -- RECORD.toml [POLICY.toml] [--json | --html]` uses yours.

use flamewright::judgement::Policy;
use flamewright::node::Node;
use flamewright::visit::{Visit, assess};
use std::process::ExitCode;

const DEMO: [&str; 2] = [
    concat!(env!("CARGO_MANIFEST_DIR"), "/../../examples/visits/village_hall.toml"),
    concat!(env!("CARGO_MANIFEST_DIR"), "/../../examples/visits/example_policy.toml"),
];

fn read(path: &str) -> Result<Node, String> {
    let text = std::fs::read_to_string(path).map_err(|e| format!("{path}: {e}"))?;
    Node::from_toml(&text).map_err(|e| format!("{path}: {e}"))
}

fn run() -> Result<String, String> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let (forms, mut paths): (Vec<&str>, Vec<&str>) = words.iter().map(String::as_str).partition(|w| w.starts_with("--"));
    if paths.is_empty() {
        paths = DEMO.to_vec();
    }
    let visit = Visit::read(&read(paths[0])?).map_err(|e| format!("{}: {e}", paths[0]))?;
    let policy = paths.get(1).map(|path| Policy::read(&read(path)?).map_err(|e| format!("{path}: {e}"))).transpose()?;
    let assessment = assess(visit, policy);
    match forms.as_slice() {
        [] => Ok(assessment.to_text()),
        ["--json"] => Ok(assessment.to_node().to_json()),
        ["--html"] => Ok(assessment.to_html()),
        _ => Err("use: [RECORD.toml [POLICY.toml]] [--json | --html]".to_owned()),
    }
}

fn main() -> ExitCode {
    match run() {
        Ok(text) => {
            println!("{text}");
            ExitCode::SUCCESS
        }
        Err(why) => {
            eprintln!("{why}");
            ExitCode::FAILURE
        }
    }
}
