//! Records: plain structs of quantities whose fields describe themselves.

use crate::error::Error;
use crate::quantity::{Kind, Unit};

pub use flamewright_derive::record;

/// One field of a record: everything said about it, once.
#[derive(Clone, Copy, Debug)]
pub struct Field {
    /// The name, in the trade's words.
    pub name: &'static str,
    /// The symbol in formulas, as LaTeX.
    pub symbol: &'static str,
    /// The meaning.
    pub doc: &'static str,
    /// The unit the field is shown in.
    pub unit: &'static Unit,
    /// What it measures and on which basis.
    pub kind: Kind,
    /// Least value accepted, SI; minus infinity for results.
    pub minimum: f64,
    /// Greatest value accepted, SI; infinity for results.
    pub maximum: f64,
    /// Below this the value is noted as unusual, SI.
    pub usual_minimum: f64,
    /// Above this the value is noted as unusual, SI.
    pub usual_maximum: f64,
    /// Value taken where none is given, SI; not a number where one must be given.
    pub default: f64,
    /// What it means that the value is not a number ("never reached", "not measured"); empty where
    /// there is always one.
    pub absent: &'static str,
    /// A result of interest to a closer look only: left out of short reports.
    pub detail: bool,
}

impl Field {
    /// Whether `value` is none that a sum may give for this field: infinite, or not a number where there is always one.
    #[inline(always)]
    #[must_use]
    pub const fn is_undefined(&self, value: f64) -> bool {
        value.is_infinite() | (value.is_nan() & self.absent.is_empty())
    }

    /// A field of `kind` shown in `unit`. Ranges are in `unit`.
    ///
    /// # Panics
    /// At compile time only: if the unit does not measure the kind.
    #[must_use]
    pub const fn new(name: &'static str, symbol: &'static str, doc: &'static str, unit: &'static Unit, kind: Kind) -> Self {
        let mut i = 0;
        while i < 7 {
            assert!(unit.dimension[i] == kind.dimension[i], "the unit does not measure what the type does");
            i += 1;
        }
        assert!(unit.offset == 0.0 || !kind.difference, "a difference is shown in kelvin");
        Self {
            name,
            symbol,
            doc,
            unit,
            kind,
            minimum: f64::NEG_INFINITY,
            maximum: f64::INFINITY,
            usual_minimum: f64::NEG_INFINITY,
            usual_maximum: f64::INFINITY,
            default: f64::NAN,
            absent: "",
            detail: false,
        }
    }
    /// Values outside are refused.
    #[must_use]
    pub const fn range(mut self, minimum: f64, maximum: f64) -> Self {
        assert!(minimum <= maximum, "the range is empty");
        self.minimum = self.unit.to_si(minimum);
        self.maximum = self.unit.to_si(maximum);
        self
    }
    /// Values outside are noted as unusual.
    #[must_use]
    pub const fn usual(mut self, minimum: f64, maximum: f64) -> Self {
        assert!(minimum <= maximum, "the usual range is empty");
        self.usual_minimum = self.unit.to_si(minimum);
        self.usual_maximum = self.unit.to_si(maximum);
        self
    }
    /// Taken where none is given.
    #[must_use]
    pub const fn default(mut self, value: f64) -> Self {
        self.default = self.unit.to_si(value);
        self
    }
    /// What it means that the value is not a number; an input with this may be left out.
    #[must_use]
    pub const fn absent(mut self, meaning: &'static str) -> Self {
        self.absent = meaning;
        self
    }
    /// Of interest to a closer look only.
    #[must_use]
    pub const fn detail(mut self, detail: bool) -> Self {
        self.detail = detail;
        self
    }
}

/// Records in a [`Record::Block`]: enough that a loop over them is worth its set-up, few enough that what it
/// leaves goes to memory in short bursts.
pub const LANES: usize = 32;

/// A plain struct of quantities, readable by programs. Made by the `#[record]` attribute.
pub trait Record: Copy + core::fmt::Debug + PartialEq + Send + Sync + 'static {
    /// `[f64; N]` in SI units, in field order.
    type Array: Copy + AsRef<[f64]> + AsMut<[f64]> + Send + Sync;
    /// [`LANES`] records side by side, field by field: what a loop over columns works on.
    type Block: Copy + AsRef<[[f64; LANES]]> + AsMut<[[f64; LANES]]>;
    /// A block of zeros.
    const BLOCK: Self::Block;
    /// The struct's name.
    const NAME: &'static str;
    /// The struct's meaning.
    const DOC: &'static str;
    /// The fields, in order.
    const FIELDS: &'static [Field];

    /// The values in SI units.
    fn to_array(&self) -> Self::Array;
    /// From values in SI units, one by one.
    fn from_fn(value: impl FnMut(usize) -> f64) -> Self;

    /// From values in SI units; missing ones become not-a-number.
    #[must_use]
    fn from_slice(values: &[f64]) -> Self {
        Self::from_fn(|i| values.get(i).copied().unwrap_or(f64::NAN))
    }
    /// The defaults, and not-a-number where a value must be given: the start of a struct update.
    #[must_use]
    fn unset() -> Self {
        Self::from_fn(|i| Self::FIELDS[i].default)
    }
    /// From names and texts such as `("oxygen_dry", "4.6 %")`.
    ///
    /// # Errors
    /// Unknown names (with the nearest), unreadable texts, wrong units or bases.
    fn read<'a>(pairs: impl IntoIterator<Item = (&'a str, &'a str)>) -> Result<Self, Error> {
        let mut values = Self::unset().to_array();
        for (name, text) in pairs {
            let (i, field) = find(Self::FIELDS, name)?;
            values.as_mut()[i] = field.read(text)?;
        }
        Ok(Self::from_slice(values.as_ref()))
    }
}

/// The place of `name` among `fields`.
///
/// # Errors
/// If it is not among them, with the nearest that is.
pub fn find(fields: &'static [Field], name: &str) -> Result<(usize, &'static Field), Error> {
    fields.iter().enumerate().find(|(_, f)| f.name == name).ok_or_else(|| Error::unknown_name("field", name, fields.iter().map(|f| f.name)))
}

impl Field {
    /// Reads a value of this field as people write it, to SI.
    ///
    /// # Errors
    /// See [`crate::quantity::parse`].
    pub fn read(&self, text: &str) -> Result<f64, Error> {
        // A fraction written without % or ppm is a guess, unless the field is a plain number.
        let bare = text.trim();
        let shown_as_number = self.unit.symbol.is_empty();
        if !shown_as_number && self.kind.dimension == [0; 7] && bare.parse::<f64>().is_ok() {
            return Err(Error::unit_missing(self.name, bare, &self.kind, &self.example()));
        }
        crate::quantity::read(self.name, text, &self.kind, &self.example())
    }

    /// Factor and offset to SI from a unit given in words, for converting a whole column at once.
    ///
    /// # Errors
    /// As [`Field::read`]: unknown unit, wrong dimension or basis.
    pub fn scale(&self, unit: &str) -> Result<(f64, f64), Error> {
        if unit.trim().is_empty() && !self.unit.symbol.is_empty() {
            return Err(Error::unit_missing(self.name, "the column", &self.kind, &self.example()));
        }
        crate::quantity::scale(self.name, unit, &self.kind, &self.example())
    }

    /// Refuses a column that says of itself that it is another quantity or stands on another basis;
    /// an empty word says nothing.
    ///
    /// # Errors
    /// Names what it is and what is needed.
    pub fn accepts(&self, quantity: &str, basis: &str) -> Result<(), Error> {
        if !quantity.is_empty() && quantity != self.kind.name {
            return Err(Error::wrong_dimension(self.name, quantity, &self.kind, &self.example(), "that is what the column says it is"));
        }
        if !basis.is_empty() && basis != self.kind.basis.word() {
            return Err(Error::wrong_basis(self.name, "the column", basis, &self.kind));
        }
        Ok(())
    }

    /// How a value of this field is written, for messages and forms.
    #[must_use]
    pub fn example(&self) -> alloc::string::String {
        let middle = |low: f64, high: f64| (low.is_finite() && high.is_finite()).then_some((low + high) / 2.0);
        let si = if self.default.is_nan() {
            middle(self.usual_minimum, self.usual_maximum).or(middle(self.minimum, self.maximum)).unwrap_or(1.0)
        } else {
            self.default
        };
        crate::quantity::quantity_text(si, self.unit, 3)
    }

    /// The value as text in the field's unit, or what its absence means.
    #[must_use]
    pub fn show(&self, si: f64, digits: usize) -> alloc::string::String {
        if si.is_nan() && !self.absent.is_empty() { self.absent.into() } else { crate::quantity::quantity_text(si, self.unit, digits) }
    }
}

#[cfg(test)]
mod tests {
    use crate::catalogue::CATALOGUE;
    use alloc::string::ToString;

    #[test]
    fn every_field_reads_back_the_units_it_is_shown_in() {
        for field in CATALOGUE.iter().flat_map(|e| e.inputs().iter().chain(e.outputs())) {
            let symbol = field.kind.si_symbol();
            assert_eq!(field.scale(&symbol), Ok((1.0, 0.0)), "{} {symbol}", field.name);
            let (factor, offset) = field.scale(field.unit.symbol).unwrap_or_else(|e| panic!("{e}"));
            assert!((factor - field.unit.factor).abs() <= 1e-15 * field.unit.factor && offset == field.unit.offset, "{}", field.name);
        }
    }

    #[test]
    fn a_column_is_scaled_as_a_single_text_is() {
        let fields = || CATALOGUE.iter().flat_map(|e| e.inputs());
        let temperature = fields().find(|f| f.kind.name == "temperature").unwrap();
        let (factor, offset) = temperature.scale("degF").unwrap();
        assert_eq!(61.7 * factor + offset, temperature.read("61.7 degF").unwrap());
        assert!(temperature.scale("delta_degC").is_err() && temperature.scale("mbar").is_err() && temperature.scale("").is_err());
        assert!(temperature.scale("degC 5").is_err());
        let gauge = fields().find(|f| f.kind.name == "pressure" && f.kind.basis.word() == "gauge").unwrap();
        assert_eq!(gauge.scale("mbar(g)").unwrap(), (100.0, 0.0));
        assert!(gauge.scale("bara").unwrap_err().to_string().contains("absolute"));
        assert!(gauge.accepts("pressure", "gauge").is_ok() && gauge.accepts("", "").is_ok());
        assert!(gauge.accepts("pressure", "absolute").unwrap_err().to_string().contains("absolute"));
        assert!(gauge.accepts("energy per volume", "").is_err());
    }
}
