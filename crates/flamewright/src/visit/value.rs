//! One value of a visit record, with what is known of its uncertainty.

use crate::catalogue::Bare;
use crate::error::Error;
use crate::node::Node;
use crate::record::Field;
use crate::uncertainty::{Measured, STATEMENTS};
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
        measured = measured.stated(field, statement)?;
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

/// The part of a standard uncertainty that readings with the same instrument share: what it is
/// wrong by, not what it rounds.
pub(crate) fn shared_standard(measured: &Measured) -> f64 {
    let shared = measured.components.iter().filter(|c| matches!(c.label.as_str(), "accuracy" | "calibration certificate"));
    crate::math::sqrt(shared.map(|c| c.standard * c.standard).sum())
}
