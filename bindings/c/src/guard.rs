//! What stands between C and every body: panics are caught, pointers are looked at before use.

use crate::last_error::keep;
use crate::status::{Failure, fw_status, fw_status::*};
use std::any::Any;
use std::ffi::{CStr, CString, c_char};
use std::panic::{AssertUnwindSafe, catch_unwind};

/// Runs `body`; a failure becomes the last error of the thread, a panic becomes a failure.
#[inline(always)]
pub(crate) fn guarded(body: impl FnOnce() -> Result<(), Failure>) -> fw_status {
    // Nothing that a body touches outlives a panic half done: outputs are written last, and what
    // contexts hold is never written after they are made.
    match catch_unwind(AssertUnwindSafe(body)) {
        Ok(Ok(())) => FW_OK,
        Ok(Err(failure)) => keep(&failure),
        Err(payload) => panicked(&*payload),
    }
}

#[cold]
fn panicked(payload: &(dyn Any + Send)) -> fw_status {
    let why = payload.downcast_ref::<&str>().map(ToString::to_string).or_else(|| payload.downcast_ref::<String>().cloned());
    keep(&Failure::call(FW_PANIC, format!("a defect of the library: {}", why.as_deref().unwrap_or("no message"))))
}

/// Refuses a pointer that is NULL or not aligned.
#[inline(always)]
pub(crate) fn usable<T>(pointer: *const T, name: &str) -> Result<(), Failure> {
    if pointer.is_null() {
        return Err(null(name));
    }
    if !pointer.is_aligned() {
        return Err(misaligned(name, align_of::<T>()));
    }
    Ok(())
}

#[cold]
fn null(name: &str) -> Failure {
    Failure::call(FW_NULL_POINTER, format!("{name} is NULL"))
}

#[cold]
fn misaligned(name: &str, alignment: usize) -> Failure {
    Failure::call(FW_MISALIGNED, format!("{name} does not start at a multiple of {alignment} bytes"))
}

/// A text given by C.
///
/// # Safety
/// `text` is NULL or points to bytes that end with a NUL and stay as they are while the result is used.
pub(crate) unsafe fn text<'a>(text: *const c_char, name: &str) -> Result<&'a str, Failure> {
    usable(text, name)?;
    // SAFETY: not NULL; the rest is what the caller promises.
    let text = unsafe { CStr::from_ptr(text) };
    text.to_str().map_err(|e| Failure::call(FW_NOT_UTF8, format!("{name} is not UTF-8 from byte {} on", e.valid_up_to())))
}

/// Hands `text` over to C, to be given back with `fw_string_free`.
///
/// # Safety
/// `target` has passed [`usable`] and may be written.
pub(crate) unsafe fn hand_over(text: CString, target: *mut *mut c_char) {
    // SAFETY: what the caller promises.
    unsafe { target.write(text.into_raw()) };
}

/// Frees a text that the library made; NULL is allowed. Only texts received through an output
/// argument are freed so; those that functions return belong to the library.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_string_free(text: *mut c_char) {
    if !text.is_null() {
        // SAFETY: by the rules of the header it is a text from `hand_over` that was not freed before.
        drop(unsafe { CString::from_raw(text) });
    }
}
