//! The result over all rows.

use crate::status::Status;
use flamewright::record::Field;

/// A column a result field, a status a row; order kept, no row lost.
#[derive(Clone, Debug)]
pub struct Table {
    /// The result fields, one per column.
    pub fields: &'static [Field],
    /// Result columns in field order, SI; not-a-number where a row was refused.
    pub columns: Vec<Vec<f64>>,
    /// What became of each row.
    pub status: Vec<Status>,
}

impl Table {
    /// The column of the result field `name`.
    #[must_use]
    pub fn column(&self, name: &str) -> Option<&[f64]> {
        let place = self.fields.iter().position(|f| f.name == name)?;
        self.columns.get(place).map(Vec::as_slice)
    }
    /// How many rows were refused.
    #[must_use]
    pub fn refused(&self) -> usize {
        self.status.iter().filter(|s| !s.has_result()).count()
    }
}
