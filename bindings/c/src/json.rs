//! Calls in text: JSON in, JSON out.

use crate::call::fw_notices;
use crate::guard::{guarded, hand_over, text, usable};
use crate::last_error::c_text;
use crate::status::{Failure, fw_status, fw_status::*};
use core_library::calculation::{Judged, Raised};
use core_library::catalogue::calculation;
use core_library::node::Node;
use core_library::{describe, text::call_json};
use std::ffi::c_char;

/// Every calculation with its inputs, outputs (in field order, with unit, range, meaning), settings,
/// rules and sources, as a JSON list. Free the text with fw_string_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_catalogue_json(catalogue: *mut *mut c_char) -> fw_status {
    guarded(|| {
        usable(catalogue, "catalogue")?;
        // SAFETY: looked at above.
        unsafe { hand_over(c_text(&describe::catalogue().to_json()), catalogue) };
        Ok(())
    })
}

/// Evaluates a call such as {"calculation": "liquid_water", "temperature": "60 degC"}: the name,
/// settings and fields together, values with their units in text.
///
/// A value may be a table of what is known of it, such as {"value": "60 degC", "accuracy": "1 K"} or
/// `{"readings": ["59 degC", "61 degC"]}` (also: of_reading, of_range with range, larger_of,
/// resolution, certificate with coverage_factor, standard_uncertainty, distribution); every result
/// then has its standard uncertainty, coverage factor and budget. A table under "ask" has more told:
/// "steps": true, "goal_seek": {"vary", "low", "high", "of", "wanted"}, "monte_carlo": {"trials",
/// "seed", "coverage", "shortest"}, "correlations": lists of two inputs and a coefficient,
/// "correlation_of_results": true, or "sweep": {"input": {"from", "to", "points"}, ...}.
///
/// The answer is JSON: every result with value, unit and meaning, notices, tables and cautions. If
/// the call is refused, the answer is {"error": {...}} with what fw_error_message() and its like
/// say, and the status is that of the refusal. So this function writes its output on failure as
/// well; only if `answer` or `call` cannot be used is nothing written. Free the answer with
/// fw_string_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_evaluate_json(call: *const c_char, answer: *mut *mut c_char) -> fw_status {
    guarded(|| {
        usable(answer, "answer")?;
        // SAFETY: by the rules of the header the text ends with a NUL.
        let call = unsafe { text(call, "call") }?;
        let (written, outcome) = match call_json(call) {
            Ok(written) => (written, Ok(())),
            Err(error) => (Node::from([("error", describe::error(&error))]).to_json(), Err(error.into())),
        };
        // SAFETY: looked at above.
        unsafe { hand_over(c_text(&written), answer) };
        outcome
    })
}

/// Puts notices into words: a JSON list of objects with `code`, `field` and `text`. `input` holds the
/// values that the call was made with, in field order. Free the text with fw_string_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_notices_json(
    calculation_name: *const c_char,
    notices: *const fw_notices,
    input: *const f64,
    input_count: usize,
    words: *mut *mut c_char,
) -> fw_status {
    guarded(|| {
        usable(words, "words")?;
        usable(notices, "notices")?;
        usable(input, "input")?;
        // SAFETY: by the rules of the header the text ends with a NUL.
        let entry = calculation(unsafe { text(calculation_name, "calculation_name") }?)?;
        if input_count != entry.inputs().len() {
            let message = format!("input has {input_count} values, {} are needed", entry.inputs().len());
            return Err(Failure::call(FW_WRONG_COUNT, message));
        }
        // SAFETY: looked at above; as many values as the caller says there are.
        let (notices, input) = unsafe { (notices.read(), std::slice::from_raw_parts(input, input_count)) };
        let judged = Judged { unusual: notices.unusual, raised: Raised(notices.raised), ..Judged::default() };
        let list = judged
            .notices(entry.inputs(), entry.rules(), input)
            .into_iter()
            .map(|n| Node::from([("code", n.code), ("field", n.field), ("text", n.text.as_str())]));
        // SAFETY: looked at above.
        unsafe { hand_over(c_text(&Node::List(list.collect()).to_json()), words) };
        Ok(())
    })
}
