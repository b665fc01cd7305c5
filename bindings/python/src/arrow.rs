//! Arrow tables of any library, handed over without a copy (the Arrow PyCapsule interface).

use crate::convert::error;
use arrow_array::ffi::{FFI_ArrowArray, FFI_ArrowSchema};
use arrow_array::ffi_stream::{FFI_ArrowArrayStream, RecordBatchStreamReader};
use arrow_array::{RecordBatch, RecordBatchIterator, RecordBatchReader};
use arrow_schema::{ArrowError, SchemaRef};
use flamewright_columns::Columns;
use flamewright_columns::arrow::{Options, Over, record_batch};
use pyo3::exceptions::{PyRuntimeError, PyTypeError, PyValueError};
use pyo3::prelude::*;
use pyo3::types::{PyCapsule, PyCapsuleMethods, PyIterator, PyTuple};
use std::ffi::CStr;
use std::sync::{Arc, Mutex, PoisonError};

const STREAM: &CStr = c"arrow_array_stream";
const ARRAY: &CStr = c"arrow_array";
const SCHEMA: &CStr = c"arrow_schema";

/// Batches of one schema, from wherever.
type Reader = Box<dyn RecordBatchReader + Send>;

/// A table with the results of a calculation beside its columns, computed as it is read.
///
/// Give it to anything that reads Arrow: `pyarrow.table(laid)`, `polars.DataFrame(laid)`, DuckDB. It
/// can be read once, batch by batch, in constant memory.
#[pyclass(frozen, module = "flamewright", name = "LaidOver")]
pub struct LaidOver {
    schema: SchemaRef,
    reader: Mutex<Option<Reader>>,
}

impl LaidOver {
    pub(crate) fn new(py: Python<'_>, columns: Arc<Columns>, table: &Bound<'_, PyAny>, options: &Options) -> PyResult<Self> {
        let reader = reader(table)?;
        let over = Over::new(columns, &reader.schema(), options).map_err(|e| error(py, &e))?;
        Ok(Self { schema: over.schema(), reader: Mutex::new(Some(Box::new(over.stream(reader)))) })
    }
}

#[pymethods]
impl LaidOver {
    /// The stream of batches, for whoever reads Arrow; once only.
    #[pyo3(signature = (requested_schema=None))]
    fn __arrow_c_stream__<'py>(&self, py: Python<'py>, requested_schema: Option<&Bound<'py, PyAny>>) -> PyResult<Bound<'py, PyCapsule>> {
        // A wish for other types is one that a producer is free to leave to the consumer.
        let _ = requested_schema;
        let reader = self.reader.lock().unwrap_or_else(PoisonError::into_inner).take();
        let reader = reader
            .ok_or_else(|| PyRuntimeError::new_err("this table was read already: it can be read once; keep what it was read into"))?;
        PyCapsule::new_with_value(py, FFI_ArrowArrayStream::new(reader), STREAM)
    }

    /// The schema: columns kept, results with their units, `status`, `reason`.
    fn __arrow_c_schema__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyCapsule>> {
        let schema = FFI_ArrowSchema::try_from(self.schema.as_ref()).map_err(|e| PyValueError::new_err(e.to_string()))?;
        PyCapsule::new_with_value(py, schema, SCHEMA)
    }

    /// Names of the columns, in order.
    #[getter]
    fn column_names(&self) -> Vec<String> {
        self.schema.fields().iter().map(|field| field.name().clone()).collect()
    }

    fn __repr__(&self) -> String {
        let unit = |field: &arrow_schema::Field| {
            field.metadata().get("unit").filter(|u| !u.is_empty()).map_or(String::new(), |u| format!(" [{u}]"))
        };
        let columns: Vec<String> = self.schema.fields().iter().map(|field| format!("{}{}", field.name(), unit(field))).collect();
        format!("<a table still to be read: {}>", columns.join(", "))
    }
}

/// A reader over anything that hands over Arrow data, or over an iterable of such things.
fn reader(table: &Bound<'_, PyAny>) -> PyResult<Reader> {
    if let Some(reader) = handed_over(table)? {
        return Ok(reader);
    }
    let wrong = || {
        PyTypeError::new_err(format!(
            "{} is no table: give anything that hands over Arrow data (pyarrow, polars, pandas, DuckDB), or an iterable of such batches",
            table.get_type().name().map_or_else(|_| "this".to_owned(), |name| name.to_string())
        ))
    };
    // Of Polars, a frame not yet collected gives its batches on demand.
    let batches = if table.hasattr("collect_batches")? { table.call_method0("collect_batches")? } else { table.clone() };
    let mut rest = batches.try_iter().map_err(|_| wrong())?;
    let first = rest.next().ok_or_else(|| PyValueError::new_err("there is no batch, so that the columns are not known"))??;
    let first = handed_over(&first)?.ok_or_else(wrong)?;
    Ok(Box::new(Chained { schema: first.schema(), now: first, rest: rest.unbind() }))
}

/// The reader that `table` hands over, if it is one to do so.
fn handed_over(table: &Bound<'_, PyAny>) -> PyResult<Option<Reader>> {
    let fault = |e: ArrowError| PyValueError::new_err(e.to_string());
    if table.hasattr("__arrow_c_stream__")? {
        let capsule = table.call_method0("__arrow_c_stream__")?;
        let pointer = capsule.cast::<PyCapsule>()?.pointer_checked(Some(STREAM))?.cast::<FFI_ArrowArrayStream>();
        // SAFETY: by the PyCapsule interface a capsule of this name holds a stream, which is moved
        // out of it; the capsule is left with a released one.
        #[allow(unsafe_code)]
        let stream = unsafe { FFI_ArrowArrayStream::from_raw(pointer.as_ptr()) };
        return Ok(Some(Box::new(RecordBatchStreamReader::try_new(stream).map_err(fault)?)));
    }
    if !table.hasattr("__arrow_c_array__")? {
        return Ok(None);
    }
    let pair = table.call_method0("__arrow_c_array__")?.cast_into::<PyTuple>()?;
    let schema = pair.get_item(0)?.cast::<PyCapsule>()?.pointer_checked(Some(SCHEMA))?.cast::<FFI_ArrowSchema>();
    let array = pair.get_item(1)?.cast::<PyCapsule>()?.pointer_checked(Some(ARRAY))?.cast::<FFI_ArrowArray>();
    // SAFETY: by the PyCapsule interface capsules of these names hold a schema and an array of that
    // schema; both are moved out of them.
    #[allow(unsafe_code)]
    let batch = unsafe { record_batch(FFI_ArrowArray::from_raw(array.as_ptr()), &FFI_ArrowSchema::from_raw(schema.as_ptr())) };
    let batch = batch.map_err(fault)?;
    let schema = batch.schema();
    Ok(Some(Box::new(RecordBatchIterator::new([Ok(batch)], schema))))
}

/// One table after the other, each asked for when it is needed.
struct Chained {
    schema: SchemaRef,
    now: Reader,
    rest: Py<PyIterator>,
}

impl Iterator for Chained {
    type Item = Result<RecordBatch, ArrowError>;

    fn next(&mut self) -> Option<Self::Item> {
        loop {
            if let Some(batch) = self.now.next() {
                // Metadata may differ from one piece to the next; names and types may not.
                return Some(batch.and_then(|batch| RecordBatch::try_new(self.schema.clone(), batch.columns().to_vec())));
            }
            let next = Python::attach(|py| -> PyResult<Option<Reader>> {
                let Some(table) = self.rest.bind(py).clone().next().transpose()? else { return Ok(None) };
                handed_over(&table)?
                    .map_or_else(|| Err(PyTypeError::new_err("a batch hands over no Arrow data")), |reader| Ok(Some(reader)))
            });
            match next {
                Ok(Some(reader)) if same_columns(&reader.schema(), &self.schema) => self.now = reader,
                Ok(Some(_)) => return Some(Err(ArrowError::SchemaError("a batch has other columns than the first one".to_owned()))),
                Ok(None) => return None,
                Err(failed) => return Some(Err(ArrowError::ExternalError(Box::new(failed)))),
            }
        }
    }
}

impl RecordBatchReader for Chained {
    fn schema(&self) -> SchemaRef {
        self.schema.clone()
    }
}

fn same_columns(one: &SchemaRef, other: &SchemaRef) -> bool {
    one.fields().len() == other.fields().len()
        && one.fields().iter().zip(other.fields()).all(|(a, b)| a.name() == b.name() && a.data_type() == b.data_type())
}
