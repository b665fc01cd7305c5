//! The C face of flamewright. What a caller needs to know stands on top of the header
//! `include/flamewright.h`, which is made from this crate.
//!
//! `functions.rs` is generated from the catalogue: for every calculation its structs and its
//! functions, each of which only hands its pointers to the one body in `call.rs`.
#![allow(non_camel_case_types, reason = "the names are those that C sees")]
#![allow(clippy::missing_safety_doc, reason = "the rules for pointers are the same everywhere and stand on top of the header")]
#![allow(clippy::enum_glob_use, reason = "the statuses carry their prefix, as C needs it")]
#![allow(clippy::missing_errors_doc, reason = "every status is explained at fw_status")]

#[cfg(feature = "arrow")]
pub mod arrow;
pub mod call;
pub mod context;
#[rustfmt::skip]
#[allow(clippy::identity_op)]
pub mod functions;
pub mod guard;
pub mod json;
pub mod last_error;
pub mod status;
pub mod version;
pub mod visit;
