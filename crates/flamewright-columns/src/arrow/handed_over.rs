//! Record batches from other languages, by the Arrow C data interface.

use arrow_array::ffi::{FFI_ArrowArray, FFI_ArrowSchema, from_ffi};
use arrow_array::{Array, RecordBatch, StructArray};
use arrow_schema::{ArrowError, Schema};
use std::sync::Arc;

/// The record batch that `array` of `schema` hands over; without a copy, where its buffers lie at
/// multiples of their width.
///
/// # Errors
/// What can be seen to be wrong: no struct, one that was released, other columns than the schema has, rows
/// that are null as a whole.
///
/// # Safety
/// Both are what the Arrow C data interface says, and `array` is an array of `schema`.
#[allow(unsafe_code)]
pub unsafe fn record_batch(array: FFI_ArrowArray, schema: &FFI_ArrowSchema) -> Result<RecordBatch, ArrowError> {
    let wrong = |why: &str| ArrowError::InvalidArgumentError(why.to_owned());
    if array.is_released() || schema.release().is_none() {
        return Err(wrong("the table was released already"));
    }
    let described = Schema::try_from(schema)?;
    if array.num_children() != described.fields().len() {
        return Err(wrong("the table has another number of columns than its schema"));
    }
    // SAFETY: what the caller promises.
    let rows = StructArray::from(unsafe { from_ffi(array, schema) }?);
    if rows.null_count() > 0 {
        return Err(wrong("whole rows are null: a table has its nulls in its columns"));
    }
    RecordBatch::from(rows).with_schema(Arc::new(described))
}
