//! One value of a visit record, with what is known of its uncertainty.

use crate::error::Error;
use crate::node::Node;
use crate::record::Field;
use crate::uncertainty::Measured;
use alloc::string::{String, ToString};

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
    let measured = Measured::read(field, node)?;
    Ok(Given::Value(instrument.map_or(Ok(measured.clone()), |stated| measured.stated(field, stated))?))
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
