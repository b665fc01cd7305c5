//! Any calculation over Arrow record batches.
//!
//! Columns are taken by the names of the input fields, or as [`Options::columns`] says, in the unit
//! that the column's field metadata states under `unit`, or that [`Options::units`] gives. All that can be
//! wrong with a table is found by [`Over::new`], before any work: a unit unknown or of another
//! dimension, another basis, a column that is no number, a field that nothing fills. After that no
//! row stops another: each has its `status` and, where it was refused, its `reason`, and its
//! results are null.
//!
//! ```
//! use arrow_array::{ArrayRef, Float64Array, RecordBatch};
//! use flamewright::node::Node;
//! use flamewright_columns::{arrow::{Options, Over}, columns};
//! use std::sync::Arc;
//!
//! let temperature: ArrayRef = Arc::new(Float64Array::from(vec![Some(60.0), None, Some(-40.0)]));
//! let batch = RecordBatch::try_from_iter([("temperature", temperature)])?;
//! let options = Options { units: [("temperature", "degC")].into(), ..Options::default() };
//! let water = Over::new(Arc::new(columns("liquid_water", &Node::Null)?), &batch.schema(), &options)?;
//! let result = water.evaluate(&batch)?;
//! assert_eq!(result.num_rows(), 3);
//! assert_eq!(result.column_by_name("density").unwrap().null_count(), 2);
//! assert_eq!(result.schema().field_with_name("density")?.metadata()["unit"], "kg/m³");
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod handed_over;
mod options;
mod over;
mod source;
mod stream;

pub use handed_over::record_batch;
pub use options::{Keep, Options, Units};
pub use over::Over;
pub use stream::Stream;
