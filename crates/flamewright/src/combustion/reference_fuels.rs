//! The fuels that the reference tables are about.

use crate::fuel::Fuel;
use crate::node::Node;
use flamewright_reference::rows;
use std::string::ToString;

/// Compares with a printed value: within `relative` of it or `absolute`, whichever is more.
pub(crate) fn assert_close(value: f64, expected: f64, relative: f64, absolute: f64, what: &str) {
    let allowed = (relative * expected.abs()).max(absolute);
    assert!((value - expected).abs() <= allowed, "{what}: {value} instead of {expected}");
}

/// The setting `fuel` for a fuel of `combustion/fuels.csv`, from its composition there. The tables
/// take test gases by mole fraction, so their letters (volume fractions) would not do for G21.
pub(crate) fn fuel_setting(name: &str) -> Node {
    let name = match name {
        "CH4" => "G20",
        "C3H8" => "G31",
        other => other,
    };
    let table = rows("combustion/fuels.csv");
    let row = table.iter().find(|row| row.text("fuel") == name).unwrap_or_else(|| panic!("no fuel {name}"));
    let composition = row.text("composition");
    if row.text("unit") == "mol" {
        return Node::Text(composition.to_string());
    }
    let element = |symbol: &str| {
        let share = composition.split(' ').find_map(|part| part.split_once('=').filter(|(known, _)| *known == symbol));
        Node::Number(share.map_or(0.0, |(_, share)| share.parse().unwrap()))
    };
    let text = |text: &str| Node::Text(text.to_string());
    Node::Table(
        [
            ("state", text(if name == "WOOD_DRY" { "solid" } else { "liquid" })),
            ("carbon", element("C")),
            ("hydrogen", element("H")),
            ("oxygen", element("O")),
            ("nitrogen", element("N")),
            ("sulphur", element("S")),
            ("gross_calorific_value", Node::Text(std::format!("{} MJ/kg", row.text("Hs_25C_MJ_per_unit")))),
        ]
        .map(|(key, node)| (key.to_string(), node))
        .into(),
    )
}

pub(crate) fn fuel(name: &str) -> Fuel {
    Fuel::from_node(&fuel_setting(name)).unwrap()
}
