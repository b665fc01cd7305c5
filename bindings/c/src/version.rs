//! Which library this is.

use core_library::VERSION;
use std::ffi::{CStr, c_char};

include!("abi_version.rs");

const VERSION_TEXT: &CStr = match CStr::from_bytes_with_nul(concat!(env!("CARGO_PKG_VERSION"), "\0").as_bytes()) {
    Ok(text) => text,
    Err(_) => panic!("a version has no NUL"),
};
const _: () = assert!(VERSION.len() == VERSION_TEXT.count_bytes(), "core and C face are released together");

/// The version of the binary interface of the library that is loaded. A program that finds another
/// number than FW_ABI_VERSION of its header must not call anything else.
#[unsafe(no_mangle)]
pub extern "C" fn fw_abi_version() -> u32 {
    FW_ABI_VERSION
}

/// The version of the library, for instance "0.1.0"; belongs to the library, never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn fw_version() -> *const c_char {
    VERSION_TEXT.as_ptr()
}
