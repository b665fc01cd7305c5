//! Reads the tables of `tests/reference`: published and independently computed values with their
//! provenance. For tests and the validation report only, so a broken table panics.

use std::collections::BTreeMap;
use std::path::PathBuf;

/// One row of a table: column name to text.
#[derive(Clone, Debug, Default)]
pub struct Row {
    columns: BTreeMap<String, String>,
    /// File and line, for messages.
    pub place: String,
}

impl Row {
    /// The text of a column; empty where the cell is.
    ///
    /// # Panics
    /// If the table has no such column.
    pub fn text(&self, column: &str) -> &str {
        self.columns.get(column).unwrap_or_else(|| panic!("{}: no column {column}", self.place))
    }
    /// The number of a column, if the cell holds one.
    pub fn maybe(&self, column: &str) -> Option<f64> {
        self.text(column).trim().parse().ok()
    }
    /// The number of a column.
    ///
    /// # Panics
    /// If the cell holds none.
    pub fn number(&self, column: &str) -> f64 {
        self.maybe(column).unwrap_or_else(|| panic!("{}: {column} is no number: {:?}", self.place, self.text(column)))
    }
    /// The names of the columns.
    pub fn columns(&self) -> impl Iterator<Item = &str> {
        self.columns.keys().map(String::as_str)
    }
    /// The inputs of a trade row (`name=value|unit; …`): name to value and unit.
    ///
    /// # Panics
    /// If an input has another form.
    pub fn inputs(&self) -> BTreeMap<String, (String, String)> {
        self.text("inputs")
            .split(';')
            .filter(|part| !part.trim().is_empty())
            .map(|part| {
                let (name, value) = part.trim().split_once('=').unwrap_or_else(|| panic!("{}: {part}", self.place));
                let (value, unit) = value.split_once('|').unwrap_or((value, "1"));
                (name.trim().to_owned(), (value.trim().to_owned(), unit.trim().to_owned()))
            })
            .collect()
    }
    /// Whether `got` lies within the tolerance of a trade row (`tol_abs`, else `tol_rel`).
    pub fn agrees(&self, got: f64) -> bool {
        let value = self.number("value");
        let tolerance = self.maybe("tol_abs").or_else(|| self.maybe("tol_rel").map(|r| r * value.abs())).unwrap_or(0.0);
        (got - value).abs() <= tolerance
    }
}

/// The rows of `tests/reference/{file}`, comma-separated with one header line and quoted cells.
///
/// # Panics
/// If the file cannot be read or a row has another number of cells than the header.
pub fn rows(file: &str) -> Vec<Row> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../tests/reference").join(file);
    let text = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    let mut lines = text.lines().enumerate().filter(|(_, l)| !l.trim().is_empty());
    let header = lines.next().map(|(_, l)| cells(l)).unwrap_or_default();
    lines
        .map(|(i, line)| {
            let place = format!("{file}:{}", i + 1);
            let values = cells(line);
            assert_eq!(values.len(), header.len(), "{place}: cells");
            Row { columns: header.iter().cloned().zip(values).collect(), place }
        })
        .collect()
}

/// The rows of a trade table of one kind.
///
/// # Panics
/// As [`rows`], or if there is no row of that kind.
pub fn rows_of_kind(file: &str, kind: &str) -> Vec<Row> {
    let found: Vec<Row> = rows(file).into_iter().filter(|r| r.text("kind") == kind).collect();
    assert!(!found.is_empty(), "{file}: no rows of kind {kind}");
    found
}

fn cells(line: &str) -> Vec<String> {
    let (mut out, mut cell, mut quoted) = (Vec::new(), String::new(), false);
    let mut chars = line.chars().peekable();
    while let Some(c) = chars.next() {
        match c {
            '"' if quoted && chars.peek() == Some(&'"') => {
                cell.push('"');
                chars.next();
            }
            '"' => quoted = !quoted,
            ',' if !quoted => out.push(std::mem::take(&mut cell)),
            _ => cell.push(c),
        }
    }
    out.push(cell);
    out
}
