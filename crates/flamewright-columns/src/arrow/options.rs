//! How a calculation is laid over a table.

use flamewright::Error;
use flamewright::catalogue::{Bare, Entry, read_input};
use flamewright::node::Node;

/// Units of columns.
#[derive(Clone, Debug, PartialEq)]
pub enum Units {
    /// By field; the rest as the column's metadata says (inputs) or as the field is shown (results).
    Stated(Vec<(String, String)>),
    /// SI, where an input's metadata says nothing else.
    Si,
}

impl<const N: usize> From<[(&str, &str); N]> for Units {
    fn from(stated: [(&str, &str); N]) -> Self {
        Self::Stated(stated.map(|(field, unit)| (field.to_owned(), unit.to_owned())).into())
    }
}

/// Which columns of the table go into the result as they are.
#[derive(Clone, Debug, PartialEq)]
pub enum Keep {
    /// All of them.
    All,
    /// These.
    Only(Vec<String>),
}

/// How a calculation is laid over a table.
#[derive(Clone, Debug, PartialEq)]
pub struct Options {
    /// Input fields that have the same value in every row, SI.
    pub constants: Vec<(String, f64)>,
    /// Input fields whose column has another name: the field, and its column.
    pub columns: Vec<(String, String)>,
    /// The units of the input columns.
    pub units: Units,
    /// The results wanted; all where none are named.
    pub outputs: Option<Vec<String>>,
    /// The units of the result columns.
    pub output_units: Units,
    /// The columns of the table that are kept.
    pub keep: Keep,
    /// Put before the names of the new columns.
    pub prefix: String,
    /// Whether a column says in words why a row was refused.
    pub reasons: bool,
}

impl Default for Options {
    fn default() -> Self {
        Self {
            constants: Vec::new(),
            columns: Vec::new(),
            units: Units::Stated(Vec::new()),
            outputs: None,
            output_units: Units::Stated(Vec::new()),
            keep: Keep::All,
            prefix: String::new(),
            reasons: true,
        }
    }
}

const KEYS: &[&str] = &["constants", "columns", "units", "outputs", "output_units", "keep", "prefix", "reasons"];

impl Options {
    /// From a table such as `{"units": {"flue_temperature": "degC"}, "constants": {"air_temperature": "20 degC"}}`:
    /// keys as the fields of this struct; units may be `"si"`, `keep` may be true or false.
    ///
    /// # Errors
    /// An unknown key, a value of another form, a constant that cannot be read.
    pub fn read(entry: &dyn Entry, given: &Node) -> Result<Self, Error> {
        let mut options = Self::default();
        for (key, value) in given.entries("options")? {
            match key {
                "constants" => {
                    let values = read_input(entry.inputs(), value, Bare::Refused)?;
                    for (name, _) in value.entries(key)? {
                        let at = entry.inputs().iter().position(|f| f.name == name).and_then(|i| values.get(i));
                        options.constants.extend(at.map(|si| (name.to_owned(), *si)));
                    }
                }
                "columns" => options.columns = texts(key, value)?,
                "units" => options.units = units(key, value)?,
                "outputs" => options.outputs = if *value == Node::Null { None } else { Some(names(key, value)?) },
                "output_units" => options.output_units = units(key, value)?,
                "keep" => {
                    options.keep = match value {
                        Node::Null | Node::Flag(true) => Keep::All,
                        Node::Flag(false) => Keep::Only(Vec::new()),
                        list => Keep::Only(names(key, list)?),
                    };
                }
                "prefix" => value.text(key)?.clone_into(&mut options.prefix),
                "reasons" => options.reasons = value.flag(key)?,
                other => return Err(Error::unknown_name("options", other, KEYS.iter().copied())),
            }
        }
        Ok(options)
    }
}

fn texts(key: &str, value: &Node) -> Result<Vec<(String, String)>, Error> {
    value.entries(key)?.map(|(name, text)| Ok((name.to_owned(), text.text(name)?.to_owned()))).collect()
}

fn names(key: &str, value: &Node) -> Result<Vec<String>, Error> {
    value.list(key)?.iter().map(|name| name.text(key).map(str::to_owned)).collect()
}

fn units(key: &str, value: &Node) -> Result<Units, Error> {
    match value {
        Node::Text(word) if word == "si" => Ok(Units::Si),
        Node::Text(word) => Err(Error::bad_setting(key, word, "give \"si\", or a table of fields and their units")),
        table => texts(key, table).map(Units::Stated),
    }
}
