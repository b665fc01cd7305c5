//! A tree of plain values: what TOML, JSON, C and Python hand over, and what goes back.

use crate::error::Error;
use crate::quantity::Value;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// A value of a text record.
#[derive(Clone, Debug, PartialEq, Default)]
pub enum Node {
    /// Nothing.
    #[default]
    Null,
    /// Yes or no.
    Flag(bool),
    /// A bare number.
    Number(f64),
    /// Text, which is how quantities with units come.
    Text(String),
    /// A list.
    List(Vec<Node>),
    /// Names and values, in order.
    Table(Vec<(String, Node)>),
}

impl Node {
    /// The value under `key`, if this is a table that has it and it is not null.
    #[must_use]
    pub fn get(&self, key: &str) -> Option<&Self> {
        match self {
            Self::Table(entries) => entries.iter().find(|(k, v)| k == key && *v != Self::Null).map(|(_, v)| v),
            _ => None,
        }
    }
    /// The entries of a table; none for nothing.
    ///
    /// # Errors
    /// If it is something else.
    pub fn entries(&self, name: &str) -> Result<impl Iterator<Item = (&str, &Self)>, Error> {
        match self {
            Self::Table(entries) => Ok(entries.as_slice()),
            Self::Null => Ok([].as_slice()),
            other => Err(Error::bad_setting(name, &other.brief(), "a table of names and values is needed")),
        }
        .map(|entries| entries.iter().map(|(k, v)| (k.as_str(), v)))
    }
    /// The items of a list.
    ///
    /// # Errors
    /// If it is something else.
    pub fn list(&self, name: &str) -> Result<&[Self], Error> {
        match self {
            Self::List(items) => Ok(items),
            other => Err(Error::bad_setting(name, &other.brief(), "a list is needed")),
        }
    }
    /// The text.
    ///
    /// # Errors
    /// If it is something else.
    pub fn text(&self, name: &str) -> Result<&str, Error> {
        match self {
            Self::Text(text) => Ok(text),
            other => Err(Error::bad_setting(name, &other.brief(), "a text in quotes is needed")),
        }
    }
    /// Yes or no.
    ///
    /// # Errors
    /// If it is something else.
    pub fn flag(&self, name: &str) -> Result<bool, Error> {
        match self {
            Self::Flag(flag) => Ok(*flag),
            other => Err(Error::bad_setting(name, &other.brief(), "true or false is needed")),
        }
    }
    /// A quantity in text, or a bare number where the kind has no dimension.
    ///
    /// # Errors
    /// See [`crate::quantity::parse`].
    pub fn quantity<T: Value>(&self, name: &str) -> Result<T, Error> {
        match self {
            Self::Text(text) => crate::quantity::parse(name, text),
            Self::Number(n) => crate::quantity::parse(name, &n.to_string()),
            other => Err(Error::bad_setting(name, &other.brief(), "a number with its unit, in quotes, is needed")),
        }
    }
    /// A short description for messages.
    #[must_use]
    pub fn brief(&self) -> String {
        match self {
            Self::Null => "nothing".to_string(),
            Self::Flag(flag) => flag.to_string(),
            Self::Number(n) => n.to_string(),
            Self::Text(text) => alloc::format!("\"{}\"", text.chars().take(60).collect::<String>()),
            Self::List(_) => "a list".to_string(),
            Self::Table(_) => "a table".to_string(),
        }
    }
}

impl From<&str> for Node {
    fn from(text: &str) -> Self {
        Self::Text(text.to_string())
    }
}

impl From<f64> for Node {
    fn from(number: f64) -> Self {
        Self::Number(number)
    }
}

impl<K: Into<String>, V: Into<Node>, const N: usize> From<[(K, V); N]> for Node {
    fn from(entries: [(K, V); N]) -> Self {
        Self::Table(entries.into_iter().map(|(k, v)| (k.into(), v.into())).collect())
    }
}
