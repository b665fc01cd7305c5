//! Reading the reference tables and the fuels they are about.

use std::collections::HashMap;
use std::string::{String, ToString};
use std::vec::Vec;

use crate::fuel::{Elements, Fuel, FuelState};

pub(crate) type Row = HashMap<String, String>;

/// Rows of a comma-separated table with a header line and quoted cells.
pub(crate) fn rows(text: &str) -> Vec<Row> {
    let mut lines = text.lines().filter(|line| !line.is_empty()).map(|line| {
        let mut cells = std::vec![String::new()];
        let mut quoted = false;
        for character in line.chars() {
            match character {
                '"' => quoted = !quoted,
                ',' if !quoted => cells.push(String::new()),
                other => cells.last_mut().expect("never empty").push(other),
            }
        }
        cells
    });
    let header = lines.next().expect("a header line");
    lines.map(|cells| header.iter().cloned().zip(cells).collect()).collect()
}

pub(crate) fn number(row: &Row, column: &str) -> f64 {
    let text = row.get(column).unwrap_or_else(|| panic!("no column {column}"));
    text.parse().unwrap_or_else(|_| panic!("{column} holds {text:?}"))
}

/// Compares with a printed value: `relative` of it, or half a unit in the sixth digit and
/// `absolute`, whichever is more.
pub(crate) fn assert_close(value: f64, expected: f64, relative: f64, absolute: f64, what: &str) {
    let allowed = (relative * expected.abs()).max(absolute);
    assert!((value - expected).abs() <= allowed, "{what}: {value} instead of {expected}");
}

/// Ideal-gas heat capacity at 25 degC in J/(mol K) of the gases in the tables (NASA TM-4513).
const HEAT_CAPACITY: [(&str, f64); 12] = [
    ("CH4", 35.69), ("C2H6", 52.5), ("C3H8", 73.6), ("nC4H10", 98.7), ("iC4H10", 96.6), ("nC5H12", 120.0),
    ("iC5H12", 118.9), ("nC6H14", 142.6), ("H2", 28.84), ("N2", 29.12), ("CO2", 37.13), ("O2", 29.4),
];

pub(crate) fn fuel(name: &str) -> Fuel {
    let name = if name == "CH4" { "G20" } else if name == "C3H8" { "G31" } else { name };
    let table = rows(include_str!("../../../../tests/reference/combustion/fuels.csv"));
    let row = table.iter().find(|row| row["fuel"] == name).unwrap_or_else(|| panic!("no fuel {name}"));
    let gas = row["unit"] == "mol";
    let heat_capacity = row["composition"]
        .split(' ')
        .filter_map(|part| {
            let (component, share) = part.split_once('=')?;
            let known = HEAT_CAPACITY.iter().find(|(known, _)| *known == component)?;
            Some(known.1 * share.parse::<f64>().ok()?)
        })
        .sum::<f64>();
    Fuel {
        name: name.to_string(),
        state: if gas { FuelState::Gas } else { FuelState::Solid },
        elements: Elements {
            carbon: number(row, "C_mol"),
            hydrogen: number(row, "H_mol"),
            oxygen: number(row, "O_mol"),
            nitrogen: number(row, "N_mol"),
            sulphur: number(row, "S_mol"),
            ..Elements::default()
        },
        mass: if gas { number(row, "M_or_1_kg") / 1000.0 } else { 1.0 },
        gross_calorific_value: 1e6 * number(row, "Hs_25C_MJ_per_unit"),
        net_calorific_value: 1e6 * number(row, "Hi_25C_MJ_per_unit"),
        heat_capacity,
        heat_capacity_slope: 0.0,
    }
}
