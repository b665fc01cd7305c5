//! The catalogue: every calculation, readable and callable by name at run time.

use crate::calculation::{Calculation, Info, Judged, Notice, Rule, Setting, Settings, Table};
use crate::error::Error;
use crate::node::Node;
use crate::record::{Field, Record, find};
use crate::working::{Silent, Step, Straight};
use alloc::boxed::Box;
use alloc::vec::Vec;
use core::marker::PhantomData;

/// One calculation of the catalogue.
pub trait Entry: Sync {
    /// Name, meaning, sources.
    fn info(&self) -> &'static Info;
    /// The input fields.
    fn inputs(&self) -> &'static [Field];
    /// The output fields.
    fn outputs(&self) -> &'static [Field];
    /// What is fixed beforehand.
    fn settings(&self) -> &'static [Setting];
    /// Its joint conditions.
    fn rules(&self) -> &'static [Rule];
    /// Whether one result takes long; see [`Calculation::LONG`].
    fn is_long(&self) -> bool;
    /// Fixes the settings.
    ///
    /// # Errors
    /// Names the setting and what is wrong with it.
    fn prepare(&self, settings: &Node) -> Result<Box<dyn Prepared>, Error>;
}

/// A calculation with its settings fixed, over plain SI numbers in field order.
pub trait Prepared: Send + Sync {
    /// The calculation.
    fn entry(&self) -> &'static dyn Entry;
    /// The result without any check: for derivatives and draws around a checked point.
    fn compute(&self, input: &[f64], output: &mut [f64]);
    /// Checks and result. Where the input is refused, `output` holds not-a-number; where only the
    /// result is, it holds what was computed, so that the refusal can name it.
    fn run(&self, input: &[f64], output: &mut [f64]) -> Judged;
    /// The steps of the sum.
    ///
    /// # Errors
    /// As evaluation.
    fn steps(&self, input: &[f64]) -> Result<Vec<Step>, Error>;
    /// Traces and lists that go with the result; empty where the input is refused.
    fn tables(&self, input: &[f64]) -> Vec<Table>;
}

struct Of<C>(PhantomData<fn() -> C>);

impl<C: Calculation> Entry for Of<C> {
    fn info(&self) -> &'static Info {
        &C::INFO
    }
    fn inputs(&self) -> &'static [Field] {
        C::Input::FIELDS
    }
    fn outputs(&self) -> &'static [Field] {
        C::Output::FIELDS
    }
    fn settings(&self) -> &'static [Setting] {
        C::SETTINGS
    }
    fn rules(&self) -> &'static [Rule] {
        C::RULES
    }
    fn is_long(&self) -> bool {
        C::LONG
    }
    fn prepare(&self, settings: &Node) -> Result<Box<dyn Prepared>, Error> {
        Ok(Box::new(Fixed(C::from_settings(&Settings::new(settings, C::SETTINGS)?)?)))
    }
}

struct Fixed<C>(C);

impl<C: Calculation> Fixed<C> {
    /// The result, with what a straight input spares left out.
    #[inline(always)]
    fn result(&self, record: &C::Input) -> C::Output {
        if C::STRAIGHT && self.0.is_straight(record) { self.0.compute(record, &mut Straight) } else { self.0.compute(record, &mut Silent) }
    }
}

/// A calculation, erased: for the generic tools.
pub fn erase<C: Calculation>(calculation: C) -> Box<dyn Prepared> {
    Box::new(Fixed(calculation))
}

impl<C: Calculation> Prepared for Fixed<C> {
    fn entry(&self) -> &'static dyn Entry {
        &Of::<C>(PhantomData)
    }
    fn compute(&self, input: &[f64], output: &mut [f64]) {
        let result = self.result(&C::Input::from_slice(input)).to_array();
        for (slot, value) in output.iter_mut().zip(result.as_ref()) {
            *slot = *value;
        }
    }
    fn run(&self, input: &[f64], output: &mut [f64]) -> Judged {
        let record = C::Input::from_slice(input);
        let mut judged = self.0.judge(&record);
        if judged.is_refused(C::RULES) {
            output.fill(f64::NAN);
            return judged;
        }
        let result = self.result(&record);
        let values = result.to_array();
        judged.conclude(self.0.review(&record, &result), C::Output::FIELDS, values.as_ref());
        for (slot, value) in output.iter_mut().zip(values.as_ref()) {
            *slot = *value;
        }
        judged
    }
    fn steps(&self, input: &[f64]) -> Result<Vec<Step>, Error> {
        self.0.steps(&C::Input::from_slice(input))
    }
    fn tables(&self, input: &[f64]) -> Vec<Table> {
        let record = C::Input::from_slice(input);
        if self.0.judge(&record).is_refused(C::RULES) { Vec::new() } else { self.0.tables(&record) }
    }
}

macro_rules! list {
    ($($calculation:ty),* $(,)?) => {
        /// Every calculation there is.
        pub static CATALOGUE: &[&dyn Entry] = &[$( &Of::<$calculation>(PhantomData) ),*];
    };
}
crate::for_each_calculation!(list);

/// The calculation called `name`.
///
/// # Errors
/// If there is none, with the nearest name.
pub fn calculation(name: &str) -> Result<&'static dyn Entry, Error> {
    CATALOGUE
        .iter()
        .find(|e| e.info().name == name)
        .copied()
        .ok_or_else(|| Error::unknown_name("calculation", name, CATALOGUE.iter().map(|e| e.info().name)))
}

/// How bare numbers are taken where a unit is needed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bare {
    /// Refused, with a message that shows how to write the unit.
    Refused,
    /// Taken as SI.
    Si,
}

/// A result by name.
pub struct Outcome {
    /// The calculation with its settings.
    pub prepared: Box<dyn Prepared>,
    /// What went in, SI.
    pub input: Vec<f64>,
    /// What came out, SI.
    pub output: Vec<f64>,
    /// What to know about it.
    pub notices: Vec<Notice>,
}

impl Outcome {
    /// The result `name`, SI.
    #[must_use]
    pub fn get(&self, name: &str) -> Option<f64> {
        let place = self.prepared.entry().outputs().iter().position(|f| f.name == name)?;
        self.output.get(place).copied()
    }
}

/// Input values in field order from names and values; missing ones take their default or not-a-number.
///
/// # Errors
/// Unknown names, unreadable values, wrong units or bases, bare numbers where refused.
pub fn read_input(fields: &'static [Field], given: &Node, bare: Bare) -> Result<Vec<f64>, Error> {
    let mut values: Vec<f64> = fields.iter().map(|f| f.default).collect();
    for (name, node) in given.entries("fields")? {
        let (i, field) = find(fields, name)?;
        values[i] = field.read_node(node, bare)?;
    }
    Ok(values)
}

impl Field {
    /// Reads this field from a node.
    ///
    /// # Errors
    /// As [`Field::read`]; a bare number where `bare` refuses it.
    pub fn read_node(&self, node: &Node, bare: Bare) -> Result<f64, Error> {
        match node {
            Node::Number(n) if bare == Bare::Si || self.unit.symbol.is_empty() => Ok(*n),
            Node::Number(n) => Err(Error::unit_missing(self.name, &alloc::format!("{n}"), &self.kind, &self.example())),
            Node::Text(text) => self.read(text),
            Node::Null => Ok(self.default),
            other => Err(Error::bad_setting(self.name, &other.brief(), "a number with its unit is needed")),
        }
    }
}

/// Splits a table by name into the settings and the fields of `entry`.
///
/// # Errors
/// A name that is neither, with the nearest that is.
pub fn split(entry: &dyn Entry, given: &Node) -> Result<(Node, Node), Error> {
    let (mut settings, mut fields) = (Vec::new(), Vec::new());
    for (name, value) in given.entries(entry.info().name)? {
        let pair = || (name.into(), value.clone());
        let (setting, field) = (entry.settings().iter().any(|s| s.name == name), entry.inputs().iter().any(|f| f.name == name));
        // A name may be that of a setting and of a field: one thing, which both need.
        if setting {
            settings.push(pair());
        }
        if field {
            fields.push(pair());
        }
        if !setting && !field {
            let offered = entry.inputs().iter().map(|f| f.name).chain(entry.settings().iter().map(|s| s.name));
            return Err(Error::unknown_name(entry.info().name, name, offered));
        }
    }
    Ok((Node::Table(settings), Node::Table(fields)))
}

/// Evaluates the calculation `name`: settings and fields together, by name.
///
/// ```
/// use flamewright::catalogue::{Bare, evaluate};
/// use flamewright::node::Node;
/// let head = evaluate("static_head", &Node::from([("height", "6.5 m")]), Bare::Refused)?;
/// assert!((head.get("static_pressure").unwrap() - 63_700.0).abs() < 100.0);
/// let bare = evaluate("static_head", &Node::from([("height", 6.5)]), Bare::Refused);
/// assert!(bare.is_err_and(|e| e.to_string().contains("unit")));
/// # Ok::<(), flamewright::Error>(())
/// ```
///
/// # Errors
/// Whatever is wrong with the name, a setting, a field, or the values together.
pub fn evaluate(name: &str, given: &Node, bare: Bare) -> Result<Outcome, Error> {
    let entry = calculation(name)?;
    let (settings, fields) = split(entry, given)?;
    let prepared = entry.prepare(&settings)?;
    let input = read_input(entry.inputs(), &fields, bare)?;
    outcome(prepared, input)
}

/// Runs `prepared` on SI values and words what was found.
///
/// # Errors
/// The refusal in words.
pub fn outcome(prepared: Box<dyn Prepared>, input: Vec<f64>) -> Result<Outcome, Error> {
    let entry = prepared.entry();
    let mut output = alloc::vec![f64::NAN; entry.outputs().len()];
    let judged = prepared.run(&input, &mut output);
    if judged.is_refused(entry.rules()) {
        return Err(judged.error(entry.inputs(), entry.rules(), &input, entry.outputs(), &output));
    }
    let notices = judged.notices(entry.inputs(), entry.rules(), &input);
    Ok(Outcome { prepared, input, output, notices })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_that_is_both_setting_and_field_reaches_both() {
        let given = Node::from([
            ("temperature", "20 degC"),
            ("curve", "beta"),
            ("reference_temperature", "20 degC"),
            ("reference_resistance", "10 kohm"),
            ("beta", "3977 K"),
            ("beta_tolerance", "1 %"),
        ]);
        let checked = evaluate("thermistor_check", &given, Bare::Refused).unwrap_or_else(|e| panic!("{e}"));
        // At the reference temperature itself a tolerance of Beta leaves no band.
        let band = (checked.get("lowest_resistance").unwrap(), checked.get("highest_resistance").unwrap());
        assert!((band.0 - 1e4).abs() < 1e-6 && (band.1 - 1e4).abs() < 1e-6, "{band:?}");
    }
}
