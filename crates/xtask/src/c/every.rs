//! `every.inc`: the table of all calculations that the C tests walk, with readings and what the Rust
//! library makes of them.

use flamewright::catalogue::{CATALOGUE, Entry, Prepared};
use flamewright::node::Node;
use flamewright_trials::{Draws, needed_settings};
use std::fmt::Write;
use std::time::{Duration, Instant};

/// Readings drawn for each calculation.
const SAMPLES: u32 = 24;
/// No more readings are drawn for a calculation that has taken so long over those it has.
const LONG: Duration = Duration::from_millis(500);
/// A calculation that takes longer than this over a reading is left alone most of the time by what
/// calls everything as often as it can.
const SLOW: Duration = Duration::from_millis(2);

/// Readings as rows of C.
struct Samples {
    list: String,
    kept: u32,
    slow: bool,
}

pub(super) fn table() -> Result<String, String> {
    let mut text = String::from("#include \"every.h\"\n");
    let mut rows = String::new();
    for entry in CATALOGUE {
        calculation(*entry, &mut text, &mut rows).map_err(|e| e.to_string())?;
    }
    write!(text, "const struct calculation every[] = {{\n{rows}}};\nconst size_t every_count = sizeof every / sizeof *every;\n")
        .map_err(|e| e.to_string())?;
    Ok(text)
}

fn calculation(entry: &dyn Entry, text: &mut String, rows: &mut String) -> std::fmt::Result {
    let name = entry.info().name;
    let (n, m) = (entry.inputs().len(), entry.outputs().len());
    let settings = needed_settings(entry).into_iter().next().unwrap_or_default();
    let samples = match entry.prepare(&settings) {
        Ok(prepared) => samples(entry, &*prepared, text)?,
        Err(error) => panic!("{name}: {error}"),
    };
    let (passed, unused) = if entry.settings().is_empty() { ("", "    (void)context;\n") } else { ("context, ", "") };
    writeln!(
        text,
        "
static fw_status unset_{name}(double *values)
{{
    fw_{name}_input input;
    fw_status status = fw_{name}_unset(&input);
    memcpy(values, &input, sizeof input);
    return status;
}}
static fw_status call_{name}(const fw_context *context, const double *values, double *results, fw_notices *notices)
{{
    fw_{name}_input input;
    fw_{name}_output output;
    memcpy(&input, values, sizeof input);
    memcpy(&output, results, sizeof output);
{unused}    fw_status status = fw_{name}({passed}&input, &output, notices);
    memcpy(results, &output, sizeof output);
    return status;
}}
static fw_status batch_{name}(const fw_context *context, size_t rows, const double *inputs, double *outputs, uint16_t *row_status)
{{
    fw_{name}_input *given = calloc(rows, sizeof *given);
    fw_{name}_output *made = calloc(rows, sizeof *made);
    CHECK(given && made);
    memcpy(given, inputs, rows * sizeof *given);
{unused}    fw_status status = fw_{name}_batch({passed}rows, given, sizeof *given, made, sizeof *made, row_status);
    memcpy(outputs, made, rows * sizeof *made);
    free(given);
    free(made);
    return status;
}}"
    )?;
    writeln!(text, "static const struct sample samples_{name}[] = {{\n{}}};", samples.list)?;
    let settings = if settings == Node::Table(Vec::new()) { "NULL".to_owned() } else { c_string(&settings.to_json()) };
    let (kept, slow) = (samples.kept, u8::from(samples.slow));
    writeln!(rows, "    {{\"{name}\", {settings}, {n}, {m}, {slow}, unset_{name}, call_{name}, batch_{name}, samples_{name}, {kept}}},")
}

fn samples(entry: &dyn Entry, prepared: &dyn Prepared, text: &mut String) -> Result<Samples, std::fmt::Error> {
    let name = entry.info().name;
    let mut numbers = Draws::new(0x9E37_79B9_7F4A_7C15);
    let mut list = String::new();
    let mut kept: u32 = 0;
    let started = Instant::now();
    // Mostly readings that have a result: others are kept only where there are too few of those.
    for attempt in 0..40 * SAMPLES {
        if kept == SAMPLES || kept > 0 && started.elapsed() > LONG {
            break;
        }
        let input: Vec<f64> = entry.inputs().iter().map(|field| numbers.usual(field)).collect();
        let mut output = vec![f64::NAN; entry.outputs().len()];
        let judged = prepared.run(&input, &mut output);
        let refused = judged.is_refused(entry.rules());
        if refused && (SAMPLES / 4..39 * SAMPLES).contains(&attempt) {
            continue;
        }
        let status = if refused {
            let error = judged.error(entry.inputs(), entry.rules(), &input, entry.outputs(), &output);
            format!("FW_{}", error.kind().code().to_uppercase())
        } else {
            "FW_OK".to_owned()
        };
        writeln!(text, "static const double in_{name}_{kept}[] = {{{}}};", doubles(&input))?;
        writeln!(text, "static const double out_{name}_{kept}[] = {{{}}};", doubles(&output))?;
        writeln!(
            list,
            "    {{{status}, UINT64_C({}), UINT64_C({}), in_{name}_{kept}, out_{name}_{kept}}},",
            judged.unusual, judged.raised.0
        )?;
        kept += 1;
    }
    Ok(Samples { list, kept, slow: started.elapsed() > SLOW * kept })
}

fn doubles(values: &[f64]) -> String {
    values.iter().map(|v| hexadecimal(*v)).collect::<Vec<_>>().join(", ")
}

/// A double in C, to the last bit.
fn hexadecimal(value: f64) -> String {
    if value.is_nan() {
        return "(double)NAN".to_owned();
    }
    let sign = if value.is_sign_negative() { "-" } else { "" };
    if value.is_infinite() {
        return format!("{sign}(double)INFINITY");
    }
    let bits = value.to_bits();
    let (exponent, fraction) = ((bits >> 52 & 0x7FF) as i32, bits & ((1 << 52) - 1));
    let (lead, power) = if exponent == 0 { (0, -1022) } else { (1, exponent - 1023) };
    format!("{sign}0x{lead}.{fraction:013x}p{power}")
}

fn c_string(text: &str) -> String {
    let mut quoted = String::from("\"");
    for byte in text.bytes() {
        match byte {
            b'"' | b'\\' => quoted.extend(['\\', byte as char]),
            b' '..=b'~' => quoted.push(byte as char),
            _ => quoted.push_str(&format!("\\{byte:03o}")),
        }
    }
    quoted + "\""
}
