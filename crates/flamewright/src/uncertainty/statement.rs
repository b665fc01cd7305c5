//! What an instrument, or the one who read it, states of the uncertainty of a value.

use super::{Distribution, Measured};
use crate::catalogue::Bare;
use crate::error::Error;
use crate::node::Node;
use crate::quantity::{self, Value, types};
use crate::record::Field;
use alloc::vec::Vec;

/// What can be stated: ± an amount (`accuracy`), a share of the reading or of the instrument's range, whether
/// the larger of these counts or their sum, the step it shows, an expanded uncertainty with its coverage
/// factor, a standard uncertainty, and the shape of what lies within ±.
pub const STATEMENTS: &[&str] = &[
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

impl Measured {
    /// Reads a value of `field`: text with its unit, or a table of a `value`, or repeated `readings`, with what
    /// is stated of it.
    ///
    /// ```
    /// use flamewright::{catalogue::calculation, node::Node, uncertainty::Measured};
    /// let oxygen = &calculation("flue_analysis")?.inputs()[0];
    /// let reading = Measured::read(oxygen, &Node::from([("value", "4.6 %"), ("accuracy", "0.3 %")]))?;
    /// assert!((reading.value - 0.046).abs() < 1e-12 && reading.standard() > 0.001);
    /// # Ok::<(), flamewright::Error>(())
    /// ```
    ///
    /// # Errors
    /// As [`Field::read_node`] where bare numbers are refused, and as [`stated`](Self::stated); an unknown key; both
    /// a value and readings, or neither.
    pub fn read(field: &Field, node: &Node) -> Result<Self, Error> {
        let read = |node: &Node| field.read_node(node, Bare::Refused);
        if !matches!(node, Node::Table(_)) {
            return read(node).map(Self::exact);
        }
        let offered = || ["value", "readings"].into_iter().chain(STATEMENTS.iter().copied());
        for (key, _) in node.entries(field.name)? {
            if !offered().any(|known| known == key) {
                return Err(Error::unknown_name(field.name, key, offered()));
            }
        }
        let measured = match (node.get("value"), node.get("readings")) {
            (Some(value), None) => Self::exact(read(value)?),
            (None, Some(readings)) => {
                let values: Result<Vec<f64>, Error> = readings.list(field.name)?.iter().map(read).collect();
                Self::repeated(&values?).map_err(|e| e.within(field.name))?
            }
            _ => return Err(Error::bad_setting(field.name, "", "the table has either a value or readings")),
        };
        measured.stated(field, node)
    }

    /// Adds what a `statement` says of a value of `field`: a table with some of [`STATEMENTS`], each with its unit.
    ///
    /// ```
    /// use flamewright::{catalogue::calculation, node::Node, uncertainty::Measured};
    /// let oxygen = &calculation("flue_analysis")?.inputs()[0];
    /// let analyser = Node::from([("accuracy", "0.3 %"), ("resolution", "0.1 %")]);
    /// let reading = Measured::exact(0.046).stated(oxygen, &analyser)?;
    /// assert!((reading.standard() - 0.00176).abs() < 0.00001);
    /// # Ok::<(), flamewright::Error>(())
    /// ```
    ///
    /// # Errors
    /// A spread that is not of the field's dimension, negative, or without its unit; an unknown shape; a share
    /// of a range that is not stated.
    pub fn stated(self, field: &Field, statement: &Node) -> Result<Self, Error> {
        add(field, self, statement)
    }
}

fn add(field: &Field, measured: Measured, statement: &Node) -> Result<Measured, Error> {
    let spread = |key: &str| match statement.get(key) {
        Some(node) => read_spread(field, node).map(Some),
        None => Ok(None),
    };
    let shape = statement.get("distribution").map_or(Ok("rectangular"), |n| n.text("distribution")).and_then(Distribution::of_word)?;
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
    let named = |e: Error| e.within(field.name);
    let mut measured = measured;
    if of_reading != 0.0 || absolute != 0.0 {
        let relative = of_reading * measured.value.abs();
        let half_width = if larger { relative.max(absolute) } else { relative + absolute };
        measured = measured.within("accuracy", half_width, shape).map_err(named)?;
    }
    if let Some(step) = spread("resolution")? {
        measured = measured.resolution(step).map_err(named)?;
    }
    if let Some(expanded) = spread("certificate")? {
        let factor: types::Ratio = statement.get("coverage_factor").map_or(Ok(Value::from_si(2.0)), |n| n.quantity("coverage_factor"))?;
        measured = measured.certificate(expanded, factor.value).map_err(named)?;
    }
    if let Some(u) = spread("standard_uncertainty")? {
        measured = measured.within("stated", u, Distribution::Normal).map_err(named)?;
    }
    Ok(measured)
}

/// A spread about a value of `field`, with its unit.
fn read_spread(field: &Field, node: &Node) -> Result<f64, Error> {
    match node {
        Node::Text(text) => quantity::read_spread(field.name, text, &field.kind, "0.3 in the unit of the value"),
        Node::Number(n) if field.unit.symbol.is_empty() => Ok(*n),
        other => Err(Error::bad_setting(field.name, &other.brief(), "a spread is written with its unit, in quotes")),
    }
}
