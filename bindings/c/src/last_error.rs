//! The last error of a thread.

use crate::status::{Failure, fw_status};
use std::cell::RefCell;
use std::ffi::{CStr, CString, c_char};

/// A failure with its texts ready for C.
struct Kept {
    status: fw_status,
    message: CString,
    code: CString,
    field: CString,
    given: CString,
    unit: CString,
    value: f64,
    minimum: f64,
    maximum: f64,
}

thread_local! {
    static LAST: RefCell<Option<Kept>> = const { RefCell::new(None) };
}

/// A text for C; what follows a NUL inside it would be lost, so such characters are left out.
pub(crate) fn c_text(text: &str) -> CString {
    CString::new(text).unwrap_or_else(|_| CString::new(text.replace('\0', "")).unwrap_or_default())
}

/// Keeps `failure` as the last error of this thread.
#[cold]
pub(crate) fn keep(failure: &Failure) -> fw_status {
    let status = failure.status();
    let kept = match failure {
        Failure::Call(_, message) => Kept {
            status,
            message: c_text(message),
            code: c"call".into(),
            field: CString::default(),
            given: CString::default(),
            unit: CString::default(),
            value: f64::NAN,
            minimum: f64::NAN,
            maximum: f64::NAN,
        },
        Failure::Refused(error) => Kept {
            status,
            message: c_text(&error.to_string()),
            code: c_text(error.code()),
            field: c_text(error.field()),
            given: c_text(error.given()),
            unit: c_text(error.unit()),
            value: error.value().unwrap_or(f64::NAN),
            minimum: error.minimum().unwrap_or(f64::NAN),
            maximum: error.maximum().unwrap_or(f64::NAN),
        },
    };
    // A thread that is being torn down has no place for it; the status is still returned.
    let _ = LAST.try_with(|last| last.replace(Some(kept)));
    status
}

fn last<T>(none: T, read: impl FnOnce(&Kept) -> T) -> T {
    LAST.try_with(|last| last.try_borrow().ok()?.as_ref().map(read)).ok().flatten().unwrap_or(none)
}

const EMPTY: &CStr = c"";

/// The status of the last call that failed on this thread; FW_OK if none has.
#[unsafe(no_mangle)]
pub extern "C" fn fw_error_status() -> fw_status {
    last(fw_status::FW_OK, |kept| kept.status)
}

/// What was wrong and what to do, in a sentence that names field, value, unit and allowed range.
#[unsafe(no_mangle)]
pub extern "C" fn fw_error_message() -> *const c_char {
    last(EMPTY.as_ptr(), |kept| kept.message.as_ptr())
}

/// A stable word: the kind of the refusal, or the code of the rule that refused; "call" if the call
/// itself was wrong.
#[unsafe(no_mangle)]
pub extern "C" fn fw_error_code() -> *const c_char {
    last(EMPTY.as_ptr(), |kept| kept.code.as_ptr())
}

/// The field or setting concerned; empty if none is.
#[unsafe(no_mangle)]
pub extern "C" fn fw_error_field() -> *const c_char {
    last(EMPTY.as_ptr(), |kept| kept.field.as_ptr())
}

/// The value as it was given, with its unit; empty if there is none.
#[unsafe(no_mangle)]
pub extern "C" fn fw_error_given() -> *const c_char {
    last(EMPTY.as_ptr(), |kept| kept.given.as_ptr())
}

/// The unit of fw_error_value(), fw_error_minimum() and fw_error_maximum(), as people write it.
#[unsafe(no_mangle)]
pub extern "C" fn fw_error_unit() -> *const c_char {
    last(EMPTY.as_ptr(), |kept| kept.unit.as_ptr())
}

/// The refused value in fw_error_unit(); NaN if there is none.
#[unsafe(no_mangle)]
pub extern "C" fn fw_error_value() -> f64 {
    last(f64::NAN, |kept| kept.value)
}

/// The least allowed value in fw_error_unit(); NaN if the refusal is not about a range.
#[unsafe(no_mangle)]
pub extern "C" fn fw_error_minimum() -> f64 {
    last(f64::NAN, |kept| kept.minimum)
}

/// The greatest allowed value in fw_error_unit(); NaN if the refusal is not about a range.
#[unsafe(no_mangle)]
pub extern "C" fn fw_error_maximum() -> f64 {
    last(f64::NAN, |kept| kept.maximum)
}
