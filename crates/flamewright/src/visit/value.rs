//! One value of a visit record, with what is known of its uncertainty.

use crate::catalogue::Bare;
use crate::error::Error;
use crate::node::Node;
use crate::quantity::{Kind, types};
use crate::record::Field;
use crate::uncertainty::{Distribution, Measured};
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// Where a value comes from.
#[derive(Clone, Debug, PartialEq)]
pub enum Given {
    /// Measured or stated, SI.
    Value(Measured),
    /// A result of another part: calculation, label (may be empty), field.
    Reference(String, String, String),
}

/// What an instrument, or the one who read it, says of a value's uncertainty.
pub(crate) const STATEMENTS: &[&str] = &[
    "accuracy",
    "of_reading",
    "of_range",
    "range",
    "larger_of",
    "resolution",
    "certificate",
    "coverage_factor",
    "standard_uncertainty",
    "distribution",
];

/// Reads a value of `field`, with the statement of its instrument if there is one.
pub(crate) fn read(field: &Field, node: &Node, instrument: Option<&Node>) -> Result<Given, Error> {
    if let Node::Text(text) = node
        && let Some(reference) = text.trim().strip_prefix('=')
    {
        return reference_to(field, reference.trim());
    }
    let table = match node {
        Node::Table(_) => node,
        _ => &Node::Null,
    };
    for (key, _) in table.entries(field.name)? {
        if !["value", "readings"].contains(&key) && !STATEMENTS.contains(&key) {
            return Err(Error::unknown_name(field.name, key, ["value", "readings"].into_iter().chain(STATEMENTS.iter().copied())));
        }
    }
    let mut measured = match (table.get("value"), table.get("readings"), node) {
        (Some(value), None, _) => Measured::exact(field.read_node(value, Bare::Refused)?),
        (None, Some(readings), _) => {
            let values: Result<Vec<f64>, Error> = readings.list(field.name)?.iter().map(|n| field.read_node(n, Bare::Refused)).collect();
            Measured::repeated(&values?).map_err(|e| e.within(field.name))?
        }
        (_, _, Node::Table(_)) => return Err(Error::bad_setting(field.name, "", "the table has either a value or readings")),
        _ => Measured::exact(field.read_node(node, Bare::Refused)?),
    };
    for statement in [instrument, Some(table)].into_iter().flatten() {
        measured = add(field, measured, statement)?;
    }
    Ok(Given::Value(measured))
}

fn reference_to(field: &Field, text: &str) -> Result<Given, Error> {
    let bad = || Error::bad_setting(field.name, text, "write a reference as \"= calculation.result\" or \"= calculation[label].result\"");
    let (part, result) = text.rsplit_once('.').ok_or_else(bad)?;
    let (calculation, label) = match part.split_once('[') {
        Some((calculation, label)) => (calculation, label.strip_suffix(']').ok_or_else(bad)?),
        None => (part, ""),
    };
    Ok(Given::Reference(calculation.trim().to_string(), label.trim().to_string(), result.trim().to_string()))
}

/// Adds what `statement` says to `measured`.
fn add(field: &Field, measured: Measured, statement: &Node) -> Result<Measured, Error> {
    let spread = |key: &str| match statement.get(key) {
        Some(node) => read_spread(field, node).map(Some),
        None => Ok(None),
    };
    let shape = match statement.get("distribution").map_or(Ok("rectangular"), |n| n.text("distribution"))? {
        "rectangular" => Distribution::Rectangular,
        "triangular" => Distribution::Triangular,
        "arcsine" => Distribution::Arcsine,
        "normal" => Distribution::Normal,
        other => return Err(Error::unknown_name("distribution", other, ["rectangular", "triangular", "arcsine", "normal"].into_iter())),
    };
    let share = |key: &str| -> Result<f64, Error> {
        let share = |node: &Node| node.quantity(key).map(|share: types::Ratio| share.value);
        statement.get(key).map_or(Ok(0.0), share)
    };
    let of_reading = share("of_reading")?;
    let of_range = match (share("of_range")?, spread("range")?) {
        (0.0, _) => 0.0,
        (share, Some(range)) => share * range.abs(),
        (_, None) => return Err(Error::bad_setting("range", "", "of_range is a share of the instrument's range, which has to be stated")),
    };
    let larger = statement.get("larger_of").map_or(Ok(false), |n| n.flag("larger_of"))?;
    let absolute = spread("accuracy")?.unwrap_or(0.0) + of_range;
    let mut measured = measured;
    if of_reading != 0.0 || absolute != 0.0 {
        let relative = of_reading * measured.value.abs();
        let half_width = if larger { relative.max(absolute) } else { relative + absolute };
        measured = measured.within("accuracy", half_width, shape)?;
    }
    if let Some(step) = spread("resolution")? {
        measured = measured.resolution(step)?;
    }
    if let Some(expanded) = spread("certificate")? {
        let factor: types::Ratio =
            statement.get("coverage_factor").map_or(Ok(crate::quantity::Value::from_si(2.0)), |n| n.quantity("coverage_factor"))?;
        measured = measured.certificate(expanded, factor.value)?;
    }
    if let Some(u) = spread("standard_uncertainty")? {
        measured = measured.within("stated", u, Distribution::Normal)?;
    }
    Ok(measured)
}

/// A spread about a value of `field`: of the same dimension, without its basis, a difference where
/// the field is a temperature.
fn read_spread(field: &Field, node: &Node) -> Result<f64, Error> {
    let temperature = field.kind.dimension == crate::quantity::unit::TEMPERATURE;
    let kind = Kind {
        name: if temperature { "temperature difference" } else { field.kind.name },
        difference: temperature,
        basis: crate::quantity::Basis::None,
        ..field.kind
    };
    match node {
        Node::Text(text) => crate::quantity::read(field.name, text, &kind, "0.3 in the unit of the value"),
        Node::Number(n) if field.unit.symbol.is_empty() => Ok(*n),
        other => Err(Error::bad_setting(field.name, &other.brief(), "a spread is written with its unit, in quotes")),
    }
}

/// The part of a standard uncertainty that readings with the same instrument share: what it is
/// wrong by, not what it rounds.
pub(crate) fn shared_standard(measured: &Measured) -> f64 {
    let shared = measured.components.iter().filter(|c| matches!(c.label.as_str(), "accuracy" | "calibration certificate"));
    crate::math::sqrt(shared.map(|c| c.standard * c.standard).sum())
}
