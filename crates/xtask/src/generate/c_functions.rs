//! `bindings/c/src/functions.rs`: the structs and functions of every calculation.

use super::face::{Shape, both, every, type_name, type_names};
use flamewright::calculation::Form;
use flamewright::record::Field;
use std::fmt::Write;

const TOP: &str = "//! Generated from the catalogue by `cargo xtask generate`: do not edit.
#![allow(missing_docs, reason = \"one line of the field's own words is enough\")]

use crate::call::fw_notices;
use crate::context::{Face, fw_context};
use crate::status::fw_status;
use std::ptr::null;
";

pub(crate) fn make() -> Result<String, String> {
    let mut text = String::from(TOP);
    for (name, meaning) in type_names() {
        write!(text, "\n/// {meaning}.\npub type {name} = f64;\n").map_err(|e| e.to_string())?;
    }
    for shape in every()? {
        calculation(&mut text, &shape).map_err(|e| e.to_string())?;
    }
    Ok(text)
}

fn calculation(text: &mut String, shape: &Shape) -> std::fmt::Result {
    let Shape { name, inputs, outputs, entry } = shape;
    let info = entry.info();
    let face = name.to_uppercase();
    record(text, name, "input", &format!("What goes into fw_{name}."), inputs)?;
    record(text, name, "output", &format!("What comes out of fw_{name}."), outputs)?;
    writeln!(text, "\nstatic {face}: Face = Face::new(\"{name}\");")?;

    let context = if entry.settings().is_empty() { "" } else { "\n    context: *const fw_context," };
    let passed = if entry.settings().is_empty() { "null()" } else { "context" };
    let (n, m) = (inputs.len(), outputs.len());
    let safety = "// SAFETY: both structs are as many doubles as stated here, which the compiler checks above.";

    writeln!(text, "\n/// {}.\n///", info.title)?;
    paragraph(text, info.summary)?;
    paragraph(text, &format!("Accuracy: {}", info.accuracy))?;
    for caution in info.cautions {
        paragraph(text, &format!("Caution: {caution}"))?;
    }
    if !entry.settings().is_empty() {
        paragraph(text, &settings(shape))?;
    }
    for source in info.sources {
        paragraph(text, &format!("Source: {} ({}).", source.citation, source.covers))?;
    }
    writeln!(
        text,
        "/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern \"C\" fn fw_{name}({context}
    input: *const fw_{name}_input,
    output: *mut fw_{name}_output,
    notices: *mut fw_notices,
) -> fw_status {{
    {safety}
    unsafe {{ {face}.evaluate::<{n}, {m}>({passed}, input.cast(), output.cast(), notices) }}
}}"
    )?;
    writeln!(
        text,
        "\n/// fw_{name} over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern \"C\" fn fw_{name}_batch({context}
    rows: usize,
    inputs: *const fw_{name}_input,
    input_stride: usize,
    outputs: *mut fw_{name}_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {{
    {safety}
    unsafe {{ {face}.batch::<{n}, {m}>({passed}, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }}
}}"
    )?;
    writeln!(
        text,
        "\n/// Writes the defaults of fw_{name} into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern \"C\" fn fw_{name}_unset(input: *mut fw_{name}_input) -> fw_status {{
    {safety}
    unsafe {{ {face}.unset::<{n}>(input.cast()) }}
}}"
    )
}

fn record(text: &mut String, name: &str, side: &str, doc: &str, fields: &[Field]) -> std::fmt::Result {
    writeln!(text, "\n/// {doc}\n#[repr(C)]\n#[derive(Clone, Copy)]\npub struct fw_{name}_{side} {{")?;
    for field in fields {
        for line in wrapped(&describe(field)) {
            writeln!(text, "    /// {line}")?;
        }
        writeln!(text, "    pub {}: {},", field.name, type_name(&field.kind))?;
    }
    writeln!(text, "}}\nconst _: () = assert!(size_of::<fw_{name}_{side}>() == size_of::<[f64; {}]>());", fields.len())
}

/// Meaning, unit, range, default, and what absence means.
pub(super) fn describe(field: &Field) -> String {
    let mut words = field.doc.trim_end_matches('.').to_owned();
    let mut say = |what: String| {
        words.push_str("; ");
        words.push_str(&what);
    };
    let range = |low: f64, high: f64| both(field.unit, low, high);
    if field.minimum.is_finite() || field.maximum.is_finite() {
        say(format!("allowed {}", range(field.minimum, field.maximum)));
    }
    if field.usual_minimum.is_finite() || field.usual_maximum.is_finite() {
        say(format!("usually {}", range(field.usual_minimum, field.usual_maximum)));
    }
    if !field.default.is_nan() {
        say(format!("default {}", super::face::value(field.unit, field.default)));
    }
    if !field.absent.is_empty() {
        say(format!("NaN means: {}", field.absent));
    }
    words.push('.');
    words
}

fn settings(shape: &Shape) -> String {
    let listed: Vec<String> = shape
        .entry
        .settings()
        .iter()
        .map(|setting| {
            let form = match setting.form {
                Form::Choice(words) => format!(", one of {}", words.join(", ")),
                _ => String::new(),
            };
            let default = setting.default.map_or(String::new(), |d| format!(", default {d}"));
            format!("`{}` ({}{form}{default})", setting.name, setting.doc.trim_end_matches('.'))
        })
        .collect();
    format!("The context holds the settings {}; NULL takes every default.", listed.join("; "))
}

fn paragraph(text: &mut String, words: &str) -> std::fmt::Result {
    for line in wrapped(words) {
        writeln!(text, "/// {line}")?;
    }
    writeln!(text, "///")
}

/// Lines of at most 100 characters.
pub(super) fn wrapped(words: &str) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in words.split_whitespace() {
        match lines.last_mut() {
            Some(line) if line.chars().count() + word.chars().count() < 100 => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}
