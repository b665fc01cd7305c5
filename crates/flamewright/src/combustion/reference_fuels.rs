//! The fuels that the reference tables are about.

use flamewright_reference::rows;
use std::string::ToString;

use crate::fuel::{Elements, Fuel, FuelState};

/// Compares with a printed value: `relative` of it, or half a unit in the sixth digit and
/// `absolute`, whichever is more.
pub(crate) fn assert_close(value: f64, expected: f64, relative: f64, absolute: f64, what: &str) {
    let allowed = (relative * expected.abs()).max(absolute);
    assert!((value - expected).abs() <= allowed, "{what}: {value} instead of {expected}");
}

/// Ideal-gas heat capacity at 25 degC in J/(mol K) of the gases in the tables (NASA TM-4513).
const HEAT_CAPACITY: [(&str, f64); 12] = [
    ("CH4", 35.69),
    ("C2H6", 52.5),
    ("C3H8", 73.6),
    ("nC4H10", 98.7),
    ("iC4H10", 96.6),
    ("nC5H12", 120.0),
    ("iC5H12", 118.9),
    ("nC6H14", 142.6),
    ("H2", 28.84),
    ("N2", 29.12),
    ("CO2", 37.13),
    ("O2", 29.4),
];

pub(crate) fn fuel(name: &str) -> Fuel {
    let name = if name == "CH4" {
        "G20"
    } else if name == "C3H8" {
        "G31"
    } else {
        name
    };
    let table = rows("combustion/fuels.csv");
    let row = table.iter().find(|row| row.text("fuel") == name).unwrap_or_else(|| panic!("no fuel {name}"));
    let gas = row.text("unit") == "mol";
    let heat_capacity = row
        .text("composition")
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
            carbon: row.number("C_mol"),
            hydrogen: row.number("H_mol"),
            oxygen: row.number("O_mol"),
            nitrogen: row.number("N_mol"),
            sulphur: row.number("S_mol"),
            ..Elements::default()
        },
        mass: if gas { row.number("M_or_1_kg") / 1000.0 } else { 1.0 },
        gross_calorific_value: 1e6 * row.number("Hs_25C_MJ_per_unit"),
        net_calorific_value: 1e6 * row.number("Hi_25C_MJ_per_unit"),
        heat_capacity,
        heat_capacity_slope: 0.0,
    }
}
