//! Instructions that the hot kernels execute, counted by valgrind: the same on a busy machine as on
//! an idle one, so that a slow-down of a few per cent shows which a clock would hide.
//!
//! `cargo run --release --bin instructions` in this folder prints the table and compares it with
//! `instructions.txt`; it fails where a kernel executes more than 5 % more than is written there, or
//! where the calculation with its silent working executes more than 3 % more than the same kernel on
//! raw numbers. `-- accept` writes what was counted. Counts belong to a compiler, which the file
//! names: count again on yours before comparing a change.

use flamewright::catalogue::{Bare, Prepared, calculation, read_input, split};
use flamewright::flue::{FlueAnalysis, FlueReading};
use flamewright::node::Node;
use flamewright::prelude::*;
use flamewright::uncertainty::{Covariance, first_order, monte_carlo};
use flamewright_benches::flue;
use std::fmt::Write;
use std::hint::black_box;
use std::process::Command;

/// A kernel may execute so much more than its baseline.
const TOLERANCE: f64 = 1.05;
/// The working not asked for may cost so much.
const SILENT: f64 = 1.03;

/// Calculations by name, with INVENTED settings and readings.
const CALCULATIONS: [(&str, &str); 6] = [
    (
        "flue_analysis",
        r#"{"fuel": "G20", "oxygen_dry": "5.2 %", "carbon_monoxide_dry": "42 ppm", "flue_temperature": "148 degC", "air_temperature": "19 degC"}"#,
    ),
    ("fuel_properties", r#"{"fuel": "G20"}"#),
    ("liquid_water", r#"{"temperature": "62 degC"}"#),
    (
        "gas_rate",
        r#"{"fuel": "G20", "volume": "0.1 m3", "time": "120 s", "gas_pressure": "20 mbar", "barometric_pressure": "1005 mbar", "gas_temperature": "15 degC"}"#,
    ),
    (
        "pipe_heat_loss",
        r#"{"outside_diameter": "22 mm", "wall_thickness": "0.9 mm", "wall_conductivity": "385 W/(m K)", "insulation_thickness": "20 mm", "insulation_conductivity": "0.04 W/(m K)", "emissivity": 0.9, "water_temperature": "70 degC", "air_temperature": "15 degC"}"#,
    ),
    (
        "cool_down",
        r#"{"metal_mass": "72 kg", "water_content": "15 L", "water_density": "980 kg/m3", "water_specific_heat_capacity": "4180 J/(kg K)", "casing_loss": "6 W/K", "pump_flow": "0.15 kg/s", "flow_length": "8 m", "return_length": "8 m", "pipe_heat_capacity": "1500 J/(m K)", "pipe_loss": "0.75 W/(m K)", "emitter_output": "1500 W", "emitter_heat_capacity": "45 kJ/K", "block_temperature": "80 degC", "target_temperature": "72.5 degC"}"#,
    ),
];

const KERNELS: [&str; 4] =
    ["flue reading, raw numbers", "flue reading, silent working", "flue_analysis, first order of four", "flue_analysis, one draw of four"];

fn prepare(name: &str) -> (Box<dyn Prepared>, Vec<f64>) {
    let json = CALCULATIONS.iter().find(|(n, _)| *n == name).map(|(_, json)| *json).unwrap();
    let entry = calculation(name).unwrap();
    let given = Node::from_json(json).unwrap();
    let (settings, fields) = split(entry, &given).unwrap();
    let prepared = entry.prepare(&settings).unwrap_or_else(|e| panic!("{name}: {e}"));
    let input = read_input(entry.inputs(), &fields, Bare::Refused).unwrap_or_else(|e| panic!("{name}: {e}"));
    let mut output = vec![0.0; entry.outputs().len()];
    let judged = prepared.run(&input, &mut output);
    assert!(!judged.is_refused(entry.rules()), "{name}: {}", judged.error(entry.inputs(), entry.rules(), &input, entry.outputs(), &output));
    (prepared, input)
}

/// Runs a kernel `count` times.
fn repeat(kernel: &str, count: usize) {
    if let Some((name, _)) = CALCULATIONS.iter().find(|(name, _)| *name == kernel) {
        let (prepared, input) = prepare(name);
        let mut output = vec![0.0; prepared.entry().outputs().len()];
        for _ in 0..count {
            prepared.run(black_box(&input), &mut output);
            black_box(&output);
        }
        return;
    }
    let settings = Node::from([("fuel", "G20")]);
    let analysis = FlueAnalysis::from_settings(&Settings::new(&settings, FlueAnalysis::SETTINGS).unwrap()).unwrap();
    let (prepared, input) = prepare("flue_analysis");
    let row: [f64; 7] = input.as_slice().try_into().unwrap();
    let record = FlueReading::from_slice(&row);
    assert_eq!(flue::raw(analysis.kernel(), &row).to_bits(), flue::typed(&analysis, &record).to_bits());
    let covariance = Covariance::independent(&[0.002, 0.0, 5e-6, 1.0, 0.5, 0.0, 0.0]);
    match KERNELS.iter().position(|k| *k == kernel) {
        Some(0) => (0..count).for_each(|_| _ = black_box(flue::raw(black_box(analysis.kernel()), black_box(&row)))),
        Some(1) => (0..count).for_each(|_| _ = black_box(flue::typed(black_box(&analysis), black_box(&record)))),
        Some(2) => (0..count).for_each(|_| drop(black_box(first_order(&*prepared, black_box(&input), &covariance)))),
        Some(3) => drop(black_box(monte_carlo(&*prepared, &input, &covariance, &[], count.max(2), 1))),
        _ => panic!("no kernel {kernel}"),
    }
}

/// Instructions of one evaluation: those of many less those of few, so that the start does not count.
fn count(kernel: &str) -> f64 {
    let (few, many) = if kernel == "cool_down" { (2, 12) } else { (100, 1100) };
    let total = |count: usize| {
        let out = Command::new("valgrind")
            .args(["--tool=callgrind", "--callgrind-out-file=/dev/null"])
            .arg(std::env::current_exe().unwrap())
            .args([kernel, &count.to_string()])
            .output()
            .expect("valgrind is needed");
        let text = String::from_utf8_lossy(&out.stderr).into_owned();
        assert!(out.status.success(), "{text}");
        let collected = text.lines().find_map(|line| line.split_once("Collected :")).unwrap_or_else(|| panic!("{text}"));
        collected.1.trim().parse::<f64>().unwrap()
    };
    (total(many) - total(few)) / (many - few) as f64
}

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    if let [kernel, count] = arguments.as_slice() {
        return repeat(kernel, count.parse().unwrap());
    }
    let file = concat!(env!("CARGO_MANIFEST_DIR"), "/instructions.txt");
    let baseline = std::fs::read_to_string(file).unwrap_or_default();
    let version = Command::new("rustc").arg("--version").output().map(|o| String::from_utf8_lossy(&o.stdout).trim().to_owned());
    let mut written = format!("# Instructions of one evaluation, {} on {}\n", version.unwrap_or_default(), std::env::consts::ARCH);
    let mut failed = Vec::new();
    let mut counted = Vec::new();
    println!("{:40} {:>14} {:>14} {:>8}", "kernel", "instructions", "baseline", "ratio");
    for kernel in KERNELS.into_iter().chain(CALCULATIONS.iter().map(|(name, _)| *name)) {
        let now = count(kernel);
        let before = baseline.lines().find_map(|l| l.strip_prefix(kernel)?.trim().parse::<f64>().ok());
        let ratio = before.map_or(f64::NAN, |b| now / b);
        println!("{kernel:40} {now:14.1} {:14.1} {ratio:8.4}", before.unwrap_or(f64::NAN));
        writeln!(written, "{kernel:40} {now:.1}").unwrap();
        if ratio > TOLERANCE {
            failed.push(format!("{kernel} executes {ratio:.3} times its baseline"));
        }
        counted.push(now);
    }
    let silent = counted[1] / counted[0];
    println!("the working, not asked for, over raw numbers: {silent:.4} (allowed {SILENT})");
    if silent > SILENT {
        failed.push("the silent working costs".into());
    }
    println!("first order of four inputs over one checked evaluation: {:.2}", counted[2] / counted[4]);
    if arguments.first().is_some_and(|a| a == "accept") {
        std::fs::write(file, written).unwrap();
        return;
    }
    for failure in &failed {
        eprintln!("{failure}");
    }
    assert!(failed.is_empty() && !baseline.is_empty(), "compare by hand, or `-- accept` what was counted");
}
