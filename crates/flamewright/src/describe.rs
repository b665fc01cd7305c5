//! The catalogue as a tree of plain values: enough to drive a form, a stub or a table of documentation.

use crate::calculation::{Form, Setting, Severity};
use crate::catalogue::{CATALOGUE, Entry};
use crate::error::Error;
use crate::node::Node;
use crate::record::Field;
use alloc::vec::Vec;

/// Every calculation with its inputs, outputs, settings, rules and sources.
#[must_use]
pub fn catalogue() -> Node {
    Node::List(CATALOGUE.iter().map(|entry| calculation(*entry)).collect())
}

/// A worked example of the calculation `name`: settings and fields as [`crate::catalogue::evaluate`] takes
/// them. The readings are invented.
///
/// ```
/// use flamewright::catalogue::{Bare, evaluate};
/// let given = flamewright::describe::example("static_head")?;
/// let found = evaluate("static_head", &given, Bare::Refused)?;
/// assert!(found.get("static_pressure").is_some());
/// # Ok::<(), flamewright::Error>(())
/// ```
///
/// # Errors
/// If there is no such calculation.
#[cfg(feature = "text")]
pub fn example(name: &str) -> Result<Node, Error> {
    let examples = Node::from_toml(include_str!("../examples.toml"))?;
    let known = CATALOGUE.iter().map(|entry| entry.info().name);
    examples.get(name).cloned().ok_or_else(|| Error::unknown_name("calculation", name, known))
}

/// One calculation.
#[must_use]
pub fn calculation(entry: &dyn Entry) -> Node {
    let info = entry.info();
    let rules = entry.rules().iter().map(|rule| {
        let severity = match rule.severity {
            Severity::Refuse => "refuse",
            Severity::Notice => "notice",
        };
        Node::from([("code", rule.code), ("severity", severity), ("field", rule.field), ("text", rule.text)])
    });
    let sources = info.sources.iter().map(|s| Node::from([("citation", s.citation), ("covers", s.covers)]));
    Node::from([
        ("name", Node::from(info.name)),
        ("title", info.title.into()),
        ("summary", info.summary.into()),
        ("settings", Node::List(entry.settings().iter().map(setting).collect())),
        ("inputs", Node::List(entry.inputs().iter().map(field).collect())),
        ("outputs", Node::List(entry.outputs().iter().map(field).collect())),
        ("rules", Node::List(rules.collect())),
        ("sources", Node::List(sources.collect())),
        ("accuracy", info.accuracy.into()),
        ("checked_against", info.checked_against.into()),
        ("cautions", Node::List(info.cautions.iter().map(|&c| c.into()).collect())),
    ])
}

/// One field: meaning, symbol, unit, dimension, basis, ranges in the field's unit and in SI.
#[must_use]
pub fn field(field: &Field) -> Node {
    let shown = |si: f64| if si.is_finite() { Node::Number(field.unit.from_si(si)) } else { Node::Null };
    let dimension = field.kind.dimension.iter().map(|&e| Node::Number(f64::from(e))).collect();
    Node::from([
        ("name", Node::from(field.name)),
        ("symbol", field.symbol.into()),
        ("doc", field.doc.into()),
        ("unit", field.unit.symbol.into()),
        ("unit_factor", field.unit.factor.into()),
        ("unit_offset", field.unit.offset.into()),
        ("quantity", field.kind.name.into()),
        ("basis", field.kind.basis.word().into()),
        ("dimension", Node::List(dimension)),
        ("si_unit", field.kind.si_name.into()),
        ("minimum", shown(field.minimum)),
        ("maximum", shown(field.maximum)),
        ("usual_minimum", shown(field.usual_minimum)),
        ("usual_maximum", shown(field.usual_maximum)),
        ("default", shown(field.default)),
        ("absent", field.absent.into()),
        ("detail", Node::Flag(field.detail)),
        ("example", Node::Text(field.example())),
    ])
}

/// One setting: meaning, form, choices, default.
#[must_use]
pub fn setting(setting: &Setting) -> Node {
    let mut node = Vec::from([("name".into(), Node::from(setting.name)), ("doc".into(), setting.doc.into())]);
    let form = match setting.form {
        Form::Choice(words) => {
            node.push(("choices".into(), Node::List(words.iter().map(|&w| w.into()).collect())));
            "choice"
        }
        Form::Text => "text",
        Form::Fuel => "fuel",
        Form::Quantity(kind, unit) | Form::Quantities(kind, unit) => {
            node.push(("quantity".into(), kind.name.into()));
            node.push(("basis".into(), kind.basis.word().into()));
            node.push(("unit".into(), unit.symbol.into()));
            if matches!(setting.form, Form::Quantity(..)) { "quantity" } else { "quantities" }
        }
        Form::Flag => "flag",
        Form::Records(fields) => {
            node.push(("fields".into(), Node::List(fields.iter().map(field).collect())));
            "records"
        }
        Form::Structure => "structure",
    };
    node.push(("form".into(), form.into()));
    node.push(("default".into(), setting.default.map_or(Node::Null, Node::from)));
    Node::Table(node)
}

/// A refusal: its kind and code, the field, what was given, what is allowed, and the message.
#[must_use]
pub fn error(error: &Error) -> Node {
    let number = |value: Option<f64>| value.map_or(Node::Null, Node::Number);
    Node::from([
        ("kind", Node::from(error.kind().code())),
        ("code", error.code().into()),
        ("field", error.field().into()),
        ("given", error.given().into()),
        ("value", number(error.value())),
        ("minimum", number(error.minimum())),
        ("maximum", number(error.maximum())),
        ("unit", error.unit().into()),
        ("message", Node::Text(alloc::format!("{error}"))),
    ])
}

#[cfg(all(test, feature = "text"))]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use alloc::vec::Vec;
    use std::collections::BTreeSet;

    #[test]
    fn every_calculation_has_an_example_that_works() {
        let mut amiss = Vec::new();
        for entry in CATALOGUE {
            let name = entry.info().name;
            match example(name).and_then(|given| evaluate(name, &given, Bare::Refused)) {
                Ok(found) if found.output.iter().any(|value| value.is_finite()) => {}
                Ok(_) => amiss.push(alloc::format!("{name}: no result")),
                Err(error) => amiss.push(alloc::format!("{name}: {error}")),
            }
        }
        assert!(amiss.is_empty(), "{}", amiss.join("\n"));
    }

    #[test]
    fn every_example_is_of_a_calculation() {
        let examples = Node::from_toml(include_str!("../examples.toml")).unwrap_or_else(|e| panic!("{e}"));
        let of: BTreeSet<&str> = examples.entries("examples").unwrap_or_else(|e| panic!("{e}")).map(|(name, _)| name).collect();
        let known: BTreeSet<&str> = CATALOGUE.iter().map(|entry| entry.info().name).collect();
        assert_eq!(of, known);
    }
}
