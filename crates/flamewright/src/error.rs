//! Why an input was refused, in words and in fields a program can read.

use crate::calculation::Rule;
use crate::quantity::{Kind, quantity_text};
use crate::record::Field;
use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::{String, ToString};

/// The family of an [`Error`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum ErrorKind {
    /// A needed value was not given.
    Missing,
    /// The value is infinite or not a number.
    NotFinite,
    /// The value lies outside the range of its field.
    OutOfRange,
    /// The text cannot be read as a quantity.
    Unreadable,
    /// A bare number where a unit is needed.
    UnitMissing,
    /// The unit is not known.
    UnknownUnit,
    /// The unit measures something else.
    WrongDimension,
    /// The value stands on another basis (gauge for absolute, gross for net).
    WrongBasis,
    /// A name that is not known.
    UnknownName,
    /// A setting has a value that is not offered, or has the wrong form.
    BadSetting,
    /// The values are impossible together.
    Refused,
    /// No answer exists in the range searched.
    NoSolution,
}

impl ErrorKind {
    /// A stable word for the kind.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::Missing => "missing",
            Self::NotFinite => "not_finite",
            Self::OutOfRange => "out_of_range",
            Self::Unreadable => "unreadable",
            Self::UnitMissing => "unit_missing",
            Self::UnknownUnit => "unknown_unit",
            Self::WrongDimension => "wrong_dimension",
            Self::WrongBasis => "wrong_basis",
            Self::UnknownName => "unknown_name",
            Self::BadSetting => "bad_setting",
            Self::Refused => "refused",
            Self::NoSolution => "no_solution",
        }
    }
}

/// A refusal. Its text names the field, the value with its unit, and what is allowed.
///
/// ```
/// use flamewright::{ErrorKind, record::Record, water::WaterState};
/// let error = WaterState::read([("temperature", "62 kPa")]).unwrap_err();
/// assert_eq!((error.kind(), error.field()), (ErrorKind::WrongDimension, "temperature"));
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Error {
    kind: ErrorKind,
    code: String,
    field: String,
    given: String,
    value: Option<f64>,
    minimum: Option<f64>,
    maximum: Option<f64>,
    unit: &'static str,
    message: String,
}

impl Error {
    #[cold]
    fn new(kind: ErrorKind, field: &str, given: &str, message: String) -> Self {
        Self {
            kind,
            code: kind.code().to_owned(),
            field: field.to_owned(),
            given: given.to_owned(),
            value: None,
            minimum: None,
            maximum: None,
            unit: "",
            message,
        }
    }

    /// The family of the refusal.
    #[must_use]
    pub fn kind(&self) -> ErrorKind {
        self.kind
    }
    /// A stable word: the family, or the code of the rule that refused.
    #[must_use]
    pub fn code(&self) -> &str {
        &self.code
    }
    /// The field concerned.
    #[must_use]
    pub fn field(&self) -> &str {
        &self.field
    }
    /// The value as given, where it came as text.
    #[must_use]
    pub fn given(&self) -> &str {
        &self.given
    }
    /// The value in [`unit`](Self::unit), where it could be read.
    #[must_use]
    pub fn value(&self) -> Option<f64> {
        self.value
    }
    /// The least allowed value in [`unit`](Self::unit).
    #[must_use]
    pub fn minimum(&self) -> Option<f64> {
        self.minimum
    }
    /// The greatest allowed value in [`unit`](Self::unit).
    #[must_use]
    pub fn maximum(&self) -> Option<f64> {
        self.maximum
    }
    /// The unit of value, minimum and maximum.
    #[must_use]
    pub fn unit(&self) -> &'static str {
        self.unit
    }
    /// The same refusal, found inside a part of a larger record.
    #[must_use]
    pub fn within(mut self, part: &str) -> Self {
        self.message = format!("{part}: {}", self.message);
        self.field = format!("{part}.{}", self.field);
        self
    }

    pub(crate) fn missing(field: &str, hint: &str) -> Self {
        Self::new(ErrorKind::Missing, field, "", format!("{field} is missing: {hint}"))
    }
    pub(crate) fn not_finite(field: &str, given: &str) -> Self {
        Self::new(ErrorKind::NotFinite, field, given, format!("{field} = {given}: a finite number is needed"))
    }
    pub(crate) fn unreadable(field: &str, given: &str, why: &str) -> Self {
        Self::new(ErrorKind::Unreadable, field, given, format!("{field} = \"{given}\" cannot be read: {why}"))
    }
    pub(crate) fn unit_missing(field: &str, given: &str, kind: &Kind, example: &str) -> Self {
        let message = format!("{field} = {given} has no unit: a {} is needed, written for instance as \"{example}\"", kind.describe());
        Self::new(ErrorKind::UnitMissing, field, given, message)
    }
    pub(crate) fn unknown_unit(field: &str, given: &str, unit: &str, kind: &Kind, example: &str) -> Self {
        let message = format!(
            "{field} = \"{given}\": the unit \"{unit}\" is not known: a {} is written for instance as \"{example}\"",
            kind.describe()
        );
        Self::new(ErrorKind::UnknownUnit, field, given, message)
    }
    pub(crate) fn wrong_dimension(field: &str, given: &str, kind: &Kind, example: &str, hint: &str) -> Self {
        let message = format!("{field} = \"{given}\": a {} is needed, for instance \"{example}\"; {hint}", kind.describe());
        Self::new(ErrorKind::WrongDimension, field, given, message)
    }
    pub(crate) fn wrong_basis(field: &str, given: &str, word: &str, kind: &Kind) -> Self {
        let message = format!(
            "{field} = \"{given}\" is on the {word} basis, but a {} is needed: convert it by name, the two are never interchanged silently",
            kind.describe()
        );
        Self::new(ErrorKind::WrongBasis, field, given, message)
    }
    /// A name that is not among those offered; the nearest is suggested.
    pub fn unknown_name<'a>(field: &str, given: &str, offered: impl Iterator<Item = &'a str>) -> Self {
        let given: String = given.chars().take(60).collect();
        let given = given.as_str();
        let mut names = alloc::vec::Vec::new();
        let mut best: Option<(usize, &str)> = None;
        for name in offered {
            let distance = edits(&name.to_lowercase(), &given.to_lowercase());
            if best.is_none_or(|(d, _)| distance < d) {
                best = Some((distance, name));
            }
            names.push(name);
        }
        let hint = match best {
            Some((d, name)) if d <= 2 + given.len() / 3 => format!("did you mean \"{name}\"?"),
            None => "none is taken here".to_owned(),
            _ if names.len() <= 30 => format!("offered: {}", names.join(", ")),
            _ => format!("{} names are offered", names.len()),
        };
        Self::new(ErrorKind::UnknownName, field, given, format!("{field}: \"{given}\" is not known; {hint}"))
    }
    /// A setting that cannot be used.
    #[must_use]
    pub fn bad_setting(field: &str, given: &str, why: &str) -> Self {
        let message = if given.is_empty() { format!("{field}: {why}") } else { format!("{field} = {given}: {why}") };
        Self::new(ErrorKind::BadSetting, field, given, message)
    }
    /// No answer in the range searched.
    #[must_use]
    pub fn no_solution(field: &str, why: &str) -> Self {
        Self::new(ErrorKind::NoSolution, field, "", format!("{field}: no solution: {why}"))
    }
    /// Refuses `si` as the value of `field`: not given, not finite, or out of range.
    #[cold]
    #[must_use]
    pub fn for_field(field: &Field, si: f64) -> Self {
        let unit = field.unit;
        let range = format!("{} to {}", quantity_text(field.minimum, unit, 7), quantity_text(field.maximum, unit, 7));
        let name = field.name;
        let mut error = if si.is_nan() {
            let message = format!("{name} is missing or not a number: a {} from {range} is needed", field.kind.describe());
            Self::new(ErrorKind::Missing, name, "", message)
        } else {
            let given = quantity_text(si, unit, 9);
            let (kind, what) =
                if si.is_finite() { (ErrorKind::OutOfRange, "is out of range") } else { (ErrorKind::NotFinite, "is not finite") };
            Self::new(kind, name, &given, format!("{name} = {given} {what}: allowed is {range} ({})", field.kind.describe()))
        };
        error.value = (!si.is_nan()).then(|| unit.from_si(si));
        error.minimum = Some(unit.from_si(field.minimum));
        error.maximum = Some(unit.from_si(field.maximum));
        error.unit = unit.symbol;
        error
    }
    /// Refuses by a rule of a calculation; `value` is that of the rule's field, where it has one.
    #[cold]
    #[must_use]
    pub fn by_rule(rule: &Rule, fields: &[Field], values: &[f64]) -> Self {
        let place = fields.iter().position(|f| f.name == rule.field);
        let known = place.and_then(|i| Some((fields.get(i)?, *values.get(i)?)));
        let (given, value, unit) = match known {
            Some((field, si)) => (quantity_text(si, field.unit, 9), Some(field.unit.from_si(si)), field.unit.symbol),
            None => (String::new(), None, ""),
        };
        let message =
            if given.is_empty() { format!("{}: {}", rule.field, rule.text) } else { format!("{} = {given}: {}", rule.field, rule.text) };
        let mut error = Self::new(ErrorKind::Refused, rule.field, &given, message);
        rule.code.clone_into(&mut error.code);
        error.value = value;
        error.unit = unit;
        error
    }
}

impl core::fmt::Display for Error {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(&self.message)
    }
}

impl core::error::Error for Error {}

impl Kind {
    /// The kind in words, for instance `pressure (gauge)`.
    #[must_use]
    pub fn describe(&self) -> String {
        match self.basis.word() {
            "" => self.name.to_string(),
            word => format!("{} ({word})", self.name),
        }
    }
}

/// Number of single-character edits between two words (Levenshtein), bounded to short words.
fn edits(a: &str, b: &str) -> usize {
    let b: alloc::vec::Vec<char> = b.chars().take(60).collect();
    let mut row: alloc::vec::Vec<usize> = (0..=b.len()).collect();
    for (i, ca) in a.chars().take(60).enumerate() {
        let mut diagonal = row[0];
        row[0] = i + 1;
        for (j, cb) in b.iter().enumerate() {
            let next = if ca == *cb { diagonal } else { 1 + diagonal.min(row[j]).min(row[j + 1]) };
            diagonal = row[j + 1];
            row[j + 1] = next;
        }
    }
    row[b.len()]
}
