//! The fuels that the reference tables are about.

use flamewright_reference::rows;
use std::string::ToString;

use crate::fuel::Fuel;

/// Compares with a printed value: `relative` of it, or half a unit in the sixth digit and
/// `absolute`, whichever is more.
pub(crate) fn assert_close(value: f64, expected: f64, relative: f64, absolute: f64, what: &str) {
    let allowed = (relative * expected.abs()).max(absolute);
    assert!((value - expected).abs() <= allowed, "{what}: {value} instead of {expected}");
}

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
    Fuel { name: name.to_string(), ..crate::fuel::tests::fuel_of(row) }
}
