//! A calculation: a pure function from one record to another, with what is fixed beforehand.
//!
//! Refusing is apart from computing, so that the same straight-line body serves one reading and a
//! million. Everything generic (validation, columns, uncertainty, sweeps, working, every face) is
//! written once over [`Calculation`] or its erased form in [`crate::catalogue`].

use crate::error::Error;
use crate::node::Node;
use crate::quantity::{Kind, Unit, Value, quantity_text};
use crate::record::{Field, Record};
use crate::working::{Known, Silent, Step, Steps, Working};
use alloc::string::String;
use alloc::vec::Vec;

/// Where a formula or a number comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Source {
    /// The publication with edition, table or equation; or `common practice, no source`; or `from memory`.
    pub citation: &'static str,
    /// What is taken from it.
    pub covers: &'static str,
}

impl Source {
    /// `citation` is the source of what `covers` says.
    #[must_use]
    pub const fn new(citation: &'static str, covers: &'static str) -> Self {
        Self { citation, covers }
    }
}

/// What is said about a calculation, once, for every face.
#[derive(Clone, Copy, Debug)]
pub struct Info {
    /// The name on every face, for instance `flue_analysis`.
    pub name: &'static str,
    /// The name in words.
    pub title: &'static str,
    /// What it answers, in a sentence or two.
    pub summary: &'static str,
    /// Sources of formulas and numbers.
    pub sources: &'static [Source],
    /// Expected accuracy and what limits it.
    pub accuracy: &'static str,
    /// Cautions that travel with the result.
    pub cautions: &'static [&'static str],
    /// Where outside checks live (files of `tests/reference`), or why there is none.
    pub checked_against: &'static str,
}

/// What a rule does when it holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Severity {
    /// The input is refused.
    Refuse,
    /// The result stands, with a notice beside it.
    Notice,
}

/// A joint condition on the input or the result.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// A stable name.
    pub code: &'static str,
    /// Refuse or notice.
    pub severity: Severity,
    /// The field it concerns.
    pub field: &'static str,
    /// What is wrong and what to do.
    pub text: &'static str,
}

/// The rules that hold, as a set of bits: no allocation, no branch.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Raised(pub u64);

impl Raised {
    /// No rule.
    pub const NONE: Self = Self(0);
    /// Adds rule number `rule` where `holds`.
    #[inline(always)]
    #[must_use]
    pub const fn when(self, rule: u32, holds: bool) -> Self {
        Self(self.0 | ((holds as u64) << rule))
    }
    /// Both sets.
    #[inline(always)]
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self(self.0 | other.0)
    }
}

/// Declares the rules of a calculation: number constants and the list `RULES`.
///
/// ```
/// mod example {
/// flamewright::rules! {
///     refuse FLUE_COLDER_THAN_AIR on "flue_temperature": "swap the probes, or wait for the burner";
///     notice DILUTED on "oxygen_dry": "sampled behind a draught diverter?";
/// }
/// pub fn both_hold() -> flamewright::calculation::Raised {
///     assert_eq!(RULES[DILUTED as usize].code, "DILUTED");
///     flamewright::calculation::Raised::NONE.when(FLUE_COLDER_THAN_AIR, true).when(DILUTED, true)
/// }
/// }
/// assert_eq!(example::both_hold().0, 0b11);
/// ```
#[macro_export]
macro_rules! rules {
    ($($severity:ident $name:ident on $field:literal : $text:expr;)*) => {
        #[allow(non_camel_case_types, clippy::upper_case_acronyms)]
        #[repr(u32)]
        enum RuleNumber { $($name),* }
        $( const $name: u32 = RuleNumber::$name as u32; )*
        const RULES: &[$crate::calculation::Rule] = &[$( $crate::calculation::Rule {
            code: stringify!($name), severity: $crate::rules!(@ $severity), field: $field, text: $text,
        } ),*];
        const _: () = assert!(RULES.len() <= 64);
    };
    (@ refuse) => { $crate::calculation::Severity::Refuse };
    (@ notice) => { $crate::calculation::Severity::Notice };
}

/// The form of a setting.
#[derive(Clone, Copy, Debug)]
pub enum Form {
    /// One of these words.
    Choice(&'static [&'static str]),
    /// Free text, or the name of something in a table (a tube, a test gas).
    Text,
    /// A fuel: the name of a gas, or a table of components and shares.
    Fuel,
    /// One value.
    Quantity(Kind, &'static Unit),
    /// A list of values of one kind.
    Quantities(Kind, &'static Unit),
    /// Yes or no.
    Flag,
    /// A list of records with these fields (which may also carry a `name`).
    Records(&'static [Field]),
    /// A structure described in the documentation.
    Structure,
}

/// Something fixed before a calculation runs: a fuel, a correlation, a circuit.
#[derive(Clone, Copy, Debug)]
pub struct Setting {
    /// The name.
    pub name: &'static str,
    /// The meaning.
    pub doc: &'static str,
    /// The form of its value.
    pub form: Form,
    /// Taken where none is given; `None` where one must be given.
    pub default: Option<&'static str>,
}

/// The settings given by name.
///
/// ```
/// use flamewright::flue::FlueAnalysis;
/// use flamewright::node::Node;
/// use flamewright::prelude::*;
/// let given = Node::from([("fuel", "G20")]);
/// let analysis = FlueAnalysis::from_settings(&Settings::new(&given, FlueAnalysis::SETTINGS)?)?;
/// let misspelt = Node::from([("fual", "G20")]);
/// assert!(Settings::new(&misspelt, FlueAnalysis::SETTINGS).unwrap_err().to_string().contains("fuel"));
/// # Ok::<(), flamewright::Error>(())
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Settings<'a> {
    given: &'a Node,
    known: &'static [Setting],
}

impl<'a> Settings<'a> {
    /// Settings from a table; every key must be known.
    ///
    /// # Errors
    /// An unknown key, with the nearest known one; or not a table.
    pub fn new(given: &'a Node, known: &'static [Setting]) -> Result<Self, Error> {
        for (key, _) in given.entries("settings")? {
            if !known.iter().any(|s| s.name == key) {
                return Err(Error::unknown_name("setting", key, known.iter().map(|s| s.name)));
            }
        }
        Ok(Self { given, known })
    }
    /// What was given for `name`, if anything.
    #[must_use]
    pub fn get(&self, name: &str) -> Option<&'a Node> {
        self.given.get(name)
    }
    /// What was given for `name`.
    ///
    /// # Errors
    /// If nothing was.
    pub fn need(&self, name: &str) -> Result<&'a Node, Error> {
        let doc = self.known.iter().find(|s| s.name == name).map_or("", |s| s.doc);
        self.get(name).ok_or_else(|| Error::missing(name, doc))
    }
    /// The text given for `name`, or its default.
    ///
    /// # Errors
    /// If it is not text, or missing without a default.
    pub fn text(&self, name: &str) -> Result<&'a str, Error> {
        match self.get(name) {
            Some(node) => node.text(name),
            None => {
                self.known.iter().find(|s| s.name == name).and_then(|s| s.default).ok_or_else(|| Error::missing(name, "a text is needed"))
            }
        }
    }
    /// The choice among `options` given for `name`, or its default.
    ///
    /// # Errors
    /// If the word is not offered.
    pub fn choice<T: Copy>(&self, name: &str, options: &[(&'static str, T)]) -> Result<T, Error> {
        let word = self.text(name)?;
        options
            .iter()
            .find(|(w, _)| *w == word)
            .map(|&(_, v)| v)
            .ok_or_else(|| Error::unknown_name(name, word, options.iter().map(|&(w, _)| w)))
    }
    /// Whether the flag `name` is set; unset where not given.
    ///
    /// # Errors
    /// If it is neither true nor false.
    pub fn flag(&self, name: &str) -> Result<bool, Error> {
        self.get(name).map_or(Ok(false), |n| n.flag(name))
    }
    /// One value with its unit, or its default.
    ///
    /// # Errors
    /// Unreadable, wrong dimension or basis, missing without a default, outside `range` (SI).
    pub fn quantity<T: Value>(&self, name: &str, range: core::ops::RangeInclusive<f64>) -> Result<T, Error> {
        let value: T = match self.get(name) {
            Some(node) => node.quantity(name)?,
            None => crate::quantity::parse(name, self.text(name)?)?,
        };
        bounded(name, value, &range)
    }
    /// A list of values with their units.
    ///
    /// # Errors
    /// As [`Settings::quantity`]; more than `most` values.
    pub fn quantities<T: Value>(&self, name: &str, range: core::ops::RangeInclusive<f64>, most: usize) -> Result<Vec<T>, Error> {
        let items = self.need(name)?.list(name)?;
        if items.len() > most {
            return Err(Error::bad_setting(name, "", &alloc::format!("{} values were given, {most} at most", items.len())));
        }
        items.iter().map(|n| n.quantity(name).and_then(|v| bounded(name, v, &range))).collect()
    }
}

fn bounded<T: Value>(name: &str, value: T, range: &core::ops::RangeInclusive<f64>) -> Result<T, Error> {
    if range.contains(&value.si()) {
        return Ok(value);
    }
    let why = alloc::format!("allowed is {} to {} ({}, in SI units)", range.start(), range.end(), T::KIND.describe());
    Err(Error::bad_setting(name, &alloc::format!("{}", value.si()), &why))
}

/// What a calculation needs fixed before it runs.
pub trait Context: Sized + Send + Sync + 'static {
    /// The settings, each with its meaning.
    const SETTINGS: &'static [Setting];
    /// Builds the context from settings by name.
    ///
    /// # Errors
    /// Names the setting and what is wrong with it.
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error>;
}

/// Declares that a calculation (a unit struct) has no settings.
#[macro_export]
macro_rules! no_settings {
    ($name:ident) => {
        impl $crate::calculation::Context for $name {
            const SETTINGS: &'static [$crate::calculation::Setting] = &[];
            fn from_settings(_: &$crate::calculation::Settings<'_>) -> Result<Self, $crate::Error> {
                Ok(Self)
            }
        }
    };
}

/// A named table that goes with a result: a trace, a balance, a list of branches.
#[derive(Clone, Debug, PartialEq)]
pub struct Table {
    /// The table's name.
    pub name: &'static str,
    /// Names of the rows; empty where rows are only numbered.
    pub row_names: Vec<String>,
    /// The columns, all of the same length.
    pub columns: Vec<Column>,
}

/// One column of a [`Table`], in SI units.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    /// The column's name.
    pub name: String,
    /// The unit it is shown in.
    pub unit: &'static Unit,
    /// The values, SI.
    pub values: Vec<f64>,
}

/// A pure function from an input record to an output record.
///
/// ```
/// use flamewright::prelude::*;
/// use flamewright::water::{LiquidWater, WaterState};
/// let hot = LiquidWater.evaluate(&WaterState::read([("temperature", "62 °C")])?)?;
/// assert!((hot.density.si() - 982.2).abs() < 0.1);
/// // The working is that of the expressions computed; a refusal names the field and its range.
/// assert!(!LiquidWater.steps(&WaterState::read([("temperature", "62 °C")])?)?.is_empty());
/// let cold = WaterState::read([("temperature", "-5 °C")]).and_then(|state| LiquidWater.evaluate(&state).map(|_| ()));
/// assert_eq!(cold.unwrap_err().field(), "temperature");
/// # Ok::<(), flamewright::Error>(())
/// ```
pub trait Calculation: Context {
    /// What is measured or stated.
    type Input: Record;
    /// What follows from it.
    type Output: Record;
    /// What is said about the calculation.
    const INFO: Info;
    /// Joint conditions, numbered by their place; see [`rules!`](crate::rules).
    const RULES: &'static [Rule] = &[];
    /// Whether one result is an integration or a search, from ten microseconds on: few rows of it
    /// are worth handing to another core.
    const LONG: bool = false;

    /// The rules that `input` breaks or deserves a notice for.
    #[inline(always)]
    fn check(&self, _input: &Self::Input) -> Raised {
        Raised::NONE
    }
    /// Whether [`is_straight`](Self::is_straight) can be true.
    const STRAIGHT: bool = false;
    /// Whether the sum for this input is a straight line: without the calls and branches that other inputs take and that keep
    /// a loop over rows from running in vector lanes, or without much that is nothing for it. [`compute`](Self::compute) is then told so by
    /// [`Working::STRAIGHT`] and must give the same to the bit.
    #[inline(always)]
    fn is_straight(&self, _input: &Self::Input) -> bool {
        false
    }
    /// The result. Total: not-a-number in, not-a-number out; no allocation, no panic.
    fn compute<W: Working>(&self, input: &Self::Input, working: &mut W) -> Self::Output;
    /// The rules that the result breaks or deserves a notice for.
    #[inline(always)]
    fn review(&self, _input: &Self::Input, _output: &Self::Output) -> Raised {
        Raised::NONE
    }
    /// Traces and lists that go with the result.
    fn tables(&self, _input: &Self::Input) -> Vec<Table> {
        Vec::new()
    }

    /// Ranges and rules of the input, without computing.
    #[inline(always)]
    fn judge(&self, input: &Self::Input) -> Judged {
        Judged { raised: self.check(input), ..Judged::by_ranges(input) }
    }

    /// Ranges, rules, result: the one way in for a single reading.
    ///
    /// # Errors
    /// The first refused field or rule, with value, unit and allowed range.
    #[inline]
    fn evaluate(&self, input: &Self::Input) -> Result<Evaluated<Self>, Error> {
        self.evaluate_with(input, &mut Silent)
    }

    /// As [`evaluate`](Self::evaluate), with the steps of the sum going to `working`.
    ///
    /// # Errors
    /// As [`evaluate`](Self::evaluate).
    #[inline]
    fn evaluate_with<W: Working>(&self, input: &Self::Input, working: &mut W) -> Result<Evaluated<Self>, Error> {
        let mut judged = self.judge(input);
        if judged.is_refused(Self::RULES) {
            return Err(judged.error(Self::Input::FIELDS, Self::RULES, input.to_array().as_ref(), &[], &[]));
        }
        let output = self.compute(input, working);
        judged.conclude(self.review(input, &output), Self::Output::FIELDS, output.to_array().as_ref());
        if judged.is_refused(Self::RULES) {
            let (values, results) = (input.to_array(), output.to_array());
            return Err(judged.error(Self::Input::FIELDS, Self::RULES, values.as_ref(), Self::Output::FIELDS, results.as_ref()));
        }
        Ok(Evaluated { input: *input, output, judged })
    }

    /// The steps of the sum for `input`.
    ///
    /// # Errors
    /// As [`evaluate`](Self::evaluate).
    fn steps(&self, input: &Self::Input) -> Result<Vec<Step>, Error> {
        let known = |(f, v): (&Field, &f64)| Known { name: f.name, symbol: f.symbol, unit: Some(*f.unit), value: Some(*v) };
        let values = input.to_array();
        let mut steps = Steps::new(Self::Input::FIELDS.iter().zip(values.as_ref()).map(known));
        let results = self.evaluate_with(input, &mut steps)?.output.to_array();
        steps.name_results(Self::Output::FIELDS.iter().zip(results.as_ref()).map(known));
        Ok(steps.steps().to_vec())
    }
}

/// What validation found about one input. Plain bits, so that it costs nothing over a column.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Judged {
    /// Bit per input field: missing, not finite or out of range.
    pub refused: u64,
    /// Bit per input field: outside the usual range.
    pub unusual: u64,
    /// The rules raised by input and result.
    pub raised: Raised,
    /// The sum has no finite result for a field that always has one.
    pub undefined: bool,
}

impl Judged {
    /// What the ranges of the fields say.
    #[inline(always)]
    pub fn by_ranges<R: Record>(input: &R) -> Self {
        let mut judged = Self::default();
        let values = input.to_array();
        for (i, (value, field)) in values.as_ref().iter().zip(R::FIELDS).enumerate() {
            // A field that may be absent takes not-a-number for "not measured".
            let left_out = value.is_nan() & !field.absent.is_empty();
            let inside = (*value >= field.minimum) & (*value <= field.maximum) | left_out;
            let usual = (*value >= field.usual_minimum) & (*value <= field.usual_maximum) | left_out;
            judged.refused |= u64::from(!inside) << i;
            judged.unusual |= u64::from(!usual) << i;
        }
        judged
    }
    /// Adds what was found on the result.
    #[inline(always)]
    pub fn conclude(&mut self, raised: Raised, fields: &[Field], results: &[f64]) {
        self.raised = self.raised.and(raised);
        for (value, field) in results.iter().zip(fields) {
            self.undefined |= field.is_undefined(*value);
        }
    }
    /// Whether there is no result.
    #[inline]
    #[must_use]
    pub fn is_refused(&self, rules: &[Rule]) -> bool {
        self.refused != 0 || self.undefined || self.raised.0 & refusals(rules) != 0
    }
    /// The refusal in words; call only where [`is_refused`](Self::is_refused).
    #[cold]
    #[must_use]
    pub fn error(&self, inputs: &[Field], rules: &[Rule], values: &[f64], outputs: &[Field], results: &[f64]) -> Error {
        if let Some(field) = inputs.get(self.refused.trailing_zeros() as usize) {
            return Error::for_field(field, values.get(self.refused.trailing_zeros() as usize).copied().unwrap_or(f64::NAN));
        }
        let refusing = self.raised.0 & refusals(rules);
        if let Some(rule) = rules.get(refusing.trailing_zeros() as usize) {
            return if inputs.iter().any(|f| f.name == rule.field) {
                Error::by_rule(rule, inputs, values)
            } else {
                Error::by_rule(rule, outputs, results)
            };
        }
        let undefined = outputs.iter().zip(results).find(|(f, v)| f.is_undefined(**v));
        Error::no_solution(undefined.map_or("result", |(f, _)| f.name), "the sum has no finite value for this input")
    }
    /// The notices in words.
    #[must_use]
    pub fn notices(&self, inputs: &[Field], rules: &[Rule], values: &[f64]) -> Vec<Notice> {
        let mut notices = Vec::new();
        for (i, field) in inputs.iter().enumerate().filter(|(i, _)| self.unusual >> i & 1 == 1) {
            let value = values.get(i).copied().unwrap_or(f64::NAN);
            let text = alloc::format!(
                "{} = {} is unusual: commonly {} to {}; check the reading",
                field.name,
                quantity_text(value, field.unit, 6),
                quantity_text(field.usual_minimum, field.unit, 6),
                quantity_text(field.usual_maximum, field.unit, 6)
            );
            notices.push(Notice { code: "UNUSUAL", field: field.name, text });
        }
        for (_, rule) in rules.iter().enumerate().filter(|(i, r)| self.raised.0 >> i & 1 == 1 && r.severity == Severity::Notice) {
            notices.push(Notice { code: rule.code, field: rule.field, text: rule.text.into() });
        }
        notices
    }
}

fn refusals(rules: &[Rule]) -> u64 {
    rules.iter().enumerate().fold(0, |bits, (i, r)| bits | u64::from(matches!(r.severity, Severity::Refuse)) << i)
}

/// Something to know about a result that stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notice {
    /// A stable name.
    pub code: &'static str,
    /// The field concerned.
    pub field: &'static str,
    /// What to know.
    pub text: String,
}

/// A result with what was found on the way. Gives the output's fields directly.
#[derive(Clone, Copy, Debug)]
pub struct Evaluated<C: Calculation> {
    /// What went in.
    pub input: C::Input,
    /// What came out.
    pub output: C::Output,
    /// What validation found.
    pub judged: Judged,
}

impl<C: Calculation> Evaluated<C> {
    /// The notices in words.
    #[must_use]
    pub fn notices(&self) -> Vec<Notice> {
        self.judged.notices(C::Input::FIELDS, C::RULES, self.input.to_array().as_ref())
    }
}

impl<C: Calculation> core::ops::Deref for Evaluated<C> {
    type Target = C::Output;
    fn deref(&self) -> &C::Output {
        &self.output
    }
}
