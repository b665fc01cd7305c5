//! The whole job in one call: a visit record in, an assessment out.

use crate::guard::{guarded, hand_over, text, usable};
use crate::last_error::c_text;
use crate::status::{Failure, fw_status};
use core_library::Error;
use core_library::describe;
use core_library::judgement::Policy;
use core_library::node::Node;
use core_library::visit::{Assessment, Visit, assess};
use std::ffi::c_char;

/// JSON or TOML: only JSON starts with a brace.
fn record(text: &str) -> Result<Node, Error> {
    if text.trim_start().starts_with('{') { Node::from_json(text) } else { Node::from_toml(text) }
}

fn assessed(visit: &str, policy: Option<&str>) -> Result<Assessment, Error> {
    let policy = policy.map(|text| Policy::read(&record(text)?)).transpose()?;
    Ok(assess(Visit::read(&record(visit)?)?, policy))
}

/// The body of the functions that write an assessment in one form or another.
///
/// # Safety
/// The texts end with a NUL or, for the policy, are NULL; `written` is NULL or may be written.
unsafe fn write(
    visit: *const c_char,
    policy: *const c_char,
    written: *mut *mut c_char,
    form: fn(&Assessment) -> String,
    refusal: fn(&Error) -> Option<String>,
) -> fw_status {
    guarded(|| {
        usable(written, "written")?;
        // SAFETY: what the caller promises.
        let visit = unsafe { text(visit, "visit") }?;
        // SAFETY: as above.
        let policy = if policy.is_null() { None } else { Some(unsafe { text(policy, "policy") }?) };
        let (answer, outcome) = match assessed(visit, policy) {
            Ok(assessment) => (Some(form(&assessment)), Ok(())),
            Err(error) => (refusal(&error), Err(Failure::from(error))),
        };
        if let Some(answer) = answer {
            // SAFETY: looked at above.
            unsafe { hand_over(c_text(&answer), written) };
        }
        outcome
    })
}

/// Assesses a visit: every part of it that can be computed, with uncertainties, notices, findings by
/// the policy, cautions, and what was left out and why; as JSON.
///
/// `visit` is a visit record in TOML or JSON, units in the values. `policy` is the caller's policy in
/// TOML or JSON: limits with their citations; NULL judges nothing. A record that cannot be read is
/// refused as a whole, and `written` is then {"error": {...}}, as fw_evaluate_json does it; a part
/// that cannot be computed is no failure of the call, it is said in the assessment. Free the text
/// with fw_string_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_visit_json(visit: *const c_char, policy: *const c_char, written: *mut *mut c_char) -> fw_status {
    let refusal = |error: &Error| Some(Node::from([("error", describe::error(error))]).to_json());
    // SAFETY: by the rules of the header.
    unsafe { write(visit, policy, written, |assessment| assessment.to_node().to_json(), refusal) }
}

/// As fw_visit_json, as plain text to be read and printed; nothing is written on failure.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_visit_text(visit: *const c_char, policy: *const c_char, written: *mut *mut c_char) -> fw_status {
    // SAFETY: by the rules of the header.
    unsafe { write(visit, policy, written, Assessment::to_text, |_| None) }
}

/// As fw_visit_json, as one HTML page that needs nothing beside it; nothing is written on failure.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_visit_html(visit: *const c_char, policy: *const c_char, written: *mut *mut c_char) -> fw_status {
    // SAFETY: by the rules of the header.
    unsafe { write(visit, policy, written, Assessment::to_html, |_| None) }
}
