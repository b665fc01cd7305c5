//! Text records: TOML and JSON to and from [`Node`], and calls by JSON.
//!
//! Input is bounded: a text of more than [`LONGEST`] bytes is refused, nesting is bounded by the
//! readers themselves, and a key given twice is an error, since one of the two would be lost.

use crate::calculation::Table;
use crate::catalogue::Outcome;
use crate::error::Error;
use crate::node::Node;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use serde::de::{self, Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use serde::ser::{Serialize, SerializeMap, SerializeSeq, Serializer};

/// The longest text record that is read, in bytes.
pub const LONGEST: usize = 16 * 1024 * 1024;

impl<'de> Deserialize<'de> for Node {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct AnyNode;
        impl<'de> Visitor<'de> for AnyNode {
            type Value = Node;
            fn expecting(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                f.write_str("text, a number, true or false, a list or a table ")
            }
            fn visit_bool<E>(self, flag: bool) -> Result<Node, E> {
                Ok(Node::Flag(flag))
            }
            fn visit_f64<E>(self, number: f64) -> Result<Node, E> {
                Ok(Node::Number(number))
            }
            fn visit_i64<E>(self, number: i64) -> Result<Node, E> {
                Ok(Node::Number(number as f64))
            }
            fn visit_u64<E>(self, number: u64) -> Result<Node, E> {
                Ok(Node::Number(number as f64))
            }
            fn visit_str<E>(self, text: &str) -> Result<Node, E> {
                Ok(Node::Text(text.to_string()))
            }
            fn visit_unit<E>(self) -> Result<Node, E> {
                Ok(Node::Null)
            }
            fn visit_none<E>(self) -> Result<Node, E> {
                Ok(Node::Null)
            }
            fn visit_some<D: Deserializer<'de>>(self, deserializer: D) -> Result<Node, D::Error> {
                deserializer.deserialize_any(self)
            }
            fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Node, A::Error> {
                let mut list = Vec::new();
                while let Some(item) = items.next_element()? {
                    list.push(item);
                }
                Ok(Node::List(list))
            }
            fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Node, A::Error> {
                let mut table: Vec<(String, Node)> = Vec::new();
                while let Some((key, value)) = entries.next_entry::<String, Node>()? {
                    table.push((key, value));
                }
                // Sorted, since comparing each with each would take hours over a table that is wide on purpose.
                let mut keys: Vec<&str> = table.iter().map(|(key, _)| key.as_str()).collect();
                keys.sort_unstable();
                if let Some(twice) = keys.windows(2).find(|pair| pair.first() == pair.last()).and_then(<[_]>::first) {
                    let shown: String = twice.chars().take(60).collect();
                    return Err(de::Error::custom(format!("\"{shown}\" is given twice")));
                }
                // The TOML reader hands over an unquoted date as a table with this one key.
                if let [(key, Node::Text(date))] = table.as_slice()
                    && key == "$__toml_private_datetime"
                {
                    return Ok(Node::Text(date.clone()));
                }
                Ok(Node::Table(table))
            }
        }
        deserializer.deserialize_any(AnyNode)
    }
}

impl Serialize for Node {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Null => serializer.serialize_unit(),
            Self::Flag(flag) => serializer.serialize_bool(*flag),
            Self::Number(n) => serializer.serialize_f64(*n),
            Self::Text(text) => serializer.serialize_str(text),
            Self::List(items) => {
                let mut list = serializer.serialize_seq(Some(items.len()))?;
                for item in items {
                    list.serialize_element(item)?;
                }
                list.end()
            }
            Self::Table(entries) => {
                let mut map = serializer.serialize_map(Some(entries.len()))?;
                for (key, value) in entries {
                    map.serialize_entry(key, value)?;
                }
                map.end()
            }
        }
    }
}

fn bounded(text: &str) -> Result<(), Error> {
    if text.len() > LONGEST {
        return Err(Error::bad_setting("record", "", &format!("the text has {} bytes, {LONGEST} at most are read", text.len())));
    }
    Ok(())
}

impl Node {
    /// Reads JSON.
    ///
    /// # Errors
    /// With line and column, if it is not JSON, a key is given twice, or it is too long.
    pub fn from_json(text: &str) -> Result<Self, Error> {
        bounded(text)?;
        serde_json::from_str(text).map_err(|e| Error::bad_setting("JSON record", "", &e.to_string()))
    }
    /// Reads TOML.
    ///
    /// # Errors
    /// With the place, if it is not TOML, a key is given twice, or it is too long.
    pub fn from_toml(text: &str) -> Result<Self, Error> {
        bounded(text)?;
        toml::from_str(text).map_err(|e| Error::bad_setting("TOML record", "", e.to_string().trim_end()))
    }
    /// Writes JSON; a number that is not finite becomes `null`.
    #[must_use]
    pub fn to_json(&self) -> String {
        // Writing a tree of plain values to a string cannot fail.
        serde_json::to_string_pretty(self).unwrap_or_default()
    }
}

/// Answers a call such as `{"calculation": "liquid_water", "temperature": "60 degC"}`, JSON in and JSON out.
///
/// Settings and fields stand side by side, values with their units in text. A value may be a table of a
/// `value`, or `readings`, with some of [`STATEMENTS`](crate::uncertainty::STATEMENTS); every result then
/// has its `standard_uncertainty` (in its unit), `coverage_factor` and `budget`. Under `ask`:
///
/// | key | what the answer has in addition |
/// |---|---|
/// | `steps`: true | the working, line by line |
/// | `goal_seek`: `vary`, `low`, `high`, `of`, `wanted` | `goal`, the input that gives the wanted result; all results are those there |
/// | `monte_carlo`: `trials`, `seed`, `coverage`, `shortest` | mean, standard uncertainty and coverage interval of every result |
/// | `correlations`: lists of two inputs and a coefficient | nothing; what is stated of the inputs is taken so |
/// | `correlation_of_results`: true | a row and a column a result |
/// | `sweep`: one or two inputs, each with a list of values or `from`, `to`, `points` | columns instead of results |
///
/// ```
/// use flamewright::text::call_json;
/// let answer = call_json(r#"{"calculation": "static_head", "height": "6.5 m"}"#)?;
/// assert!(answer.contains("static_pressure"));
/// let worth = call_json(r#"{"calculation": "static_head", "height": {"value": "6.5 m", "accuracy": "0.1 m"}}"#)?;
/// assert!(worth.contains("standard_uncertainty"));
/// let height = call_json(r#"{"calculation": "static_head", "ask": {"goal_seek":
///     {"vary": "height", "low": "1 m", "high": "20 m", "of": "static_pressure", "wanted": "1 bar"}}}"#)?;
/// assert!(height.contains("\"input\": \"height\""));
/// # Ok::<(), flamewright::Error>(())
/// ```
///
/// # Errors
/// Whatever is wrong with the call, or cannot be answered.
pub fn call_json(call: &str) -> Result<String, Error> {
    Ok(crate::ask::answer(&Node::from_json(call)?)?.to_json())
}

impl Table {
    /// The table as a tree, each column in its unit.
    #[must_use]
    pub fn to_node(&self) -> Node {
        let columns = self.columns.iter().map(|column| {
            let values = column.values.iter().map(|&si| Node::Number(column.unit.from_si(si))).collect();
            let described = [("unit".to_string(), Node::from(column.unit.symbol)), ("values".to_string(), Node::List(values))];
            (column.name.clone(), Node::Table(described.into()))
        });
        let rows = Node::List(self.row_names.iter().map(|name| Node::Text(name.clone())).collect());
        Node::from([("rows", rows), ("columns", Node::Table(columns.collect()))])
    }
}

impl Outcome {
    /// The result as a tree: every field with its value in the field's unit, unit, SI value and
    /// meaning; notices, tables, cautions and provenance.
    #[must_use]
    pub fn to_node(&self) -> Node {
        let entry = self.prepared.entry();
        let info = entry.info();
        let results = entry.outputs().iter().zip(&self.output).map(|(field, &si)| {
            let mut result = alloc::vec![
                ("value".to_string(), Node::Number(field.unit.from_si(si))),
                ("unit".to_string(), field.unit.symbol.into()),
                ("si".to_string(), Node::Number(si)),
                ("basis".to_string(), field.kind.basis.word().into()),
                ("meaning".to_string(), field.doc.into()),
            ];
            if si.is_nan() {
                result.push(("absent".to_string(), field.absent.into()));
            }
            (field.name.to_string(), Node::Table(result))
        });
        let notices = self.notices.iter().map(|n| Node::from([("code", n.code), ("field", n.field), ("text", n.text.as_str())]));
        let tables = self.prepared.tables(&self.input).into_iter().map(|table| (table.name.to_string(), table.to_node()));
        Node::from([
            ("calculation", Node::from(info.name)),
            ("version", crate::VERSION.into()),
            ("results", Node::Table(results.collect())),
            ("notices", Node::List(notices.collect())),
            ("tables", Node::Table(tables.collect())),
            ("cautions", Node::List(info.cautions.iter().map(|&c| c.into()).collect())),
        ])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_call_by_json_answers_in_json() {
        let answer = call_json(r#"{"calculation": "liquid_water", "temperature": "60 degC"}"#).unwrap();
        let tree = Node::from_json(&answer).unwrap();
        let Some(Node::Number(density)) = tree.get("results").and_then(|r| r.get("density")).and_then(|d| d.get("value")) else {
            panic!("{answer}")
        };
        assert!((density - 983.24).abs() < 0.05);
    }

    #[test]
    fn what_would_be_lost_is_refused() {
        assert!(Node::from_json(r#"{"a": 1, "a": 2}"#).unwrap_err().to_string().contains("twice"));
        assert!(Node::from_toml("a = 1\na = 2").is_err());
        assert_eq!(Node::from_toml("day = 2026-11-25").unwrap(), Node::from([("day", "2026-11-25")]));
        let nested = "[".repeat(100_000);
        assert!(Node::from_json(&nested).is_err());
        assert!(Node::from_toml(&format!("deep = {nested}")).is_err());
        let closed = |levels: usize| format!("{}{}", "[".repeat(levels), "]".repeat(levels));
        assert!(Node::from_json(&closed(100)).is_ok() && Node::from_json(&closed(129)).is_err());
        assert!(Node::from_toml(&format!("deep = {}", closed(129))).is_err());
        let long = " ".repeat(LONGEST + 1);
        assert!(Node::from_json(&long).unwrap_err().to_string().contains("16777216 at most"));
        assert!(Node::from_toml(&long).unwrap_err().to_string().contains("16777216 at most"));
        assert!(call_json("[]").is_err());
        assert!(
            call_json(r#"{"calculation": "liquid_water", "temprature": "60 degC"}"#)
                .unwrap_err()
                .to_string()
                .contains("did you mean \"temperature\"")
        );
    }
}
