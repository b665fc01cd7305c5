//! Columns by the Arrow C data interface, with the feature `arrow`. Each item says so itself, because the
//! header is made from this file without regard to `lib.rs`.

use crate::context::{fw_context, given};
use crate::guard::{guarded, text, usable};
use crate::status::{Failure, fw_status, fw_status::*};
use arrow_array::ffi::{FFI_ArrowArray, FFI_ArrowSchema};
use arrow_array::{Array, StructArray};
use arrow_schema::{ArrowError, Schema};
use columns::arrow::{Options, Over, record_batch};
use core_library::Error;
use core_library::node::Node;
use std::ffi::c_char;

/// `struct ArrowSchema` of the Arrow C data interface, as the program declares it.
#[cfg(feature = "arrow")]
pub struct ArrowSchema;

/// `struct ArrowArray` of the Arrow C data interface, as the program declares it.
#[cfg(feature = "arrow")]
pub struct ArrowArray;

#[cold]
fn no_table(error: &ArrowError) -> Failure {
    Error::bad_setting("table", "", &error.to_string()).into()
}

/// Evaluates a record batch of whatever calculation `context` is of, and hands the results over as
/// another: the columns kept, the results with their units in the metadata, `status` (FW_ROW_OK and so on)
/// and, where a row was refused, its `reason` in words. No row is lost; a refused one has null results.
///
/// There only in a library built with its feature `arrow`, and declared only where FLAMEWRIGHT_ARROW is
/// defined. `schema` and `array` are a struct, each child a column of numbers; columns fill the input
/// fields of their names, in the unit that their metadata states under `unit`. `options_json` says what
/// else is wanted, NULL nothing: an object that may hold `constants`, `columns`, `units`, `outputs`,
/// `output_units`, `keep`, `prefix` and `reasons`, for instance
/// {"units": {"temperature": "degC"}, "constants": {"pressure": "2 bar"}, "keep": false}.
///
/// `schema` stays with the caller. `array` is moved from once schema and options are found right, also
/// where the call fails after that: its release is NULL then, and its memory goes when nothing uses it any
/// more, as columns kept are not copied. Both results are written only on success, to memory that holds
/// nothing, and the caller calls their release; `result_schema` may not be `schema`. Results do not need
/// the context any more. All work is done by the calling thread, and any thread may release a result.
#[cfg(feature = "arrow")]
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_evaluate_arrow(
    context: *const fw_context,
    options_json: *const c_char,
    schema: *const ArrowSchema,
    array: *mut ArrowArray,
    result_schema: *mut ArrowSchema,
    result_array: *mut ArrowArray,
) -> fw_status {
    guarded(|| {
        // SAFETY: by the rules of the header.
        let context = unsafe { given(context) }?;
        let (schema, array) = (schema.cast::<FFI_ArrowSchema>(), array.cast::<FFI_ArrowArray>());
        let (result_schema, result_array) = (result_schema.cast::<FFI_ArrowSchema>(), result_array.cast::<FFI_ArrowArray>());
        usable(schema, "schema")?;
        usable(array, "array")?;
        usable(result_schema, "result_schema")?;
        usable(result_array, "result_array")?;
        if std::ptr::eq(result_schema, schema) {
            return Err(Failure::call(FW_OVERLAP, "result_schema is schema"));
        }
        // SAFETY: looked at above; both types are laid out as the interface says.
        let schema = unsafe { &*schema };
        if schema.release().is_none() {
            return Err(no_table(&ArrowError::InvalidArgumentError("the schema was released already".to_owned())));
        }
        let options = if options_json.is_null() {
            Node::Null
        } else {
            // SAFETY: by the rules of the header the text ends with a NUL.
            Node::from_json(unsafe { text(options_json, "options_json") }?)?
        };
        let options = Options::read(context.columns().entry(), &options)?;
        let described = Schema::try_from(schema).map_err(|e| no_table(&e))?;
        let over = Over::new(context.columns().clone(), &described, &options)?.on_one_thread();
        // SAFETY: looked at above; that the array is one of this schema is the caller's promise.
        let batch = unsafe { record_batch(FFI_ArrowArray::from_raw(array), schema) }.map_err(|e| no_table(&e))?;
        let result = over.evaluate(&batch)?;
        let described = FFI_ArrowSchema::try_from(result.schema().as_ref()).map_err(|e| no_table(&e))?;
        let result = FFI_ArrowArray::new(&StructArray::from(result).into_data());
        // SAFETY: looked at above, and by the rules of the header writable.
        unsafe {
            result_schema.write(described);
            result_array.write(result);
        }
        Ok(())
    })
}
