//! `bindings/c/include/flamewright.hpp`: the C++ wrapper, strong types and a function a calculation.

use super::c_functions::{describe, wrapped};
use super::face::{Shape, every, unit_name, unit_names};
use flamewright::record::Field;
use std::fmt::Write;

const TOP: &str = include_str!("flamewright.hpp.txt");

pub(crate) fn make() -> Result<String, String> {
    let mut text = String::from(TOP);
    types(&mut text).map_err(|e| e.to_string())?;
    for shape in every()? {
        calculation(&mut text, &shape).map_err(|e| e.to_string())?;
    }
    text.push_str("\n} // namespace flamewright\n\n#endif // FLAMEWRIGHT_HPP\n");
    Ok(text)
}

fn types(text: &mut String) -> std::fmt::Result {
    text.push_str("\nnamespace tag {\n");
    let names = unit_names();
    for name in names.keys() {
        writeln!(text, "struct {name};")?;
    }
    text.push_str("} // namespace tag\n\n");
    for (name, meaning) in names {
        writeln!(text, "/// {meaning}.\nusing {name} = quantity<tag::{name}>;")?;
    }
    Ok(())
}

fn calculation(text: &mut String, shape: &Shape) -> std::fmt::Result {
    let Shape { name, inputs, outputs, entry } = shape;
    record(text, name, "input", inputs)?;
    record(text, name, "output", outputs)?;
    let (parameter, argument) = if entry.settings().is_empty() { ("", "") } else { ("const context &settings, ", "settings.get(), ") };
    let info = entry.info();
    writeln!(text, "\n/// {}; see fw_{name} for settings, accuracy, cautions and sources.", info.title)?;
    for line in wrapped(info.summary) {
        writeln!(text, "/// {line}")?;
    }
    writeln!(
        text,
        "inline {name}_output {name}({parameter}const {name}_input &input, fw_notices *notices = nullptr)
{{
    return detail::one<fw_{name}_output, {name}_output, fw_{name}_input>(
        input, [&](const fw_{name}_input *given, fw_{name}_output *made) {{ return fw_{name}({argument}given, made, notices); }});
}}

/// The same over many inputs; no row is lost.
inline rows<{name}_output> {name}_batch({parameter}const std::vector<{name}_input> &inputs)
{{
    rows<{name}_output> made{{std::vector<{name}_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())}};
    detail::check(fw_{name}_batch({argument}inputs.size(), reinterpret_cast<const fw_{name}_input *>(inputs.data()),
        sizeof({name}_input), reinterpret_cast<fw_{name}_output *>(made.outputs.data()), sizeof({name}_output), made.status.data()));
    return made;
}}"
    )
}

fn record(text: &mut String, name: &str, side: &str, fields: &[Field]) -> std::fmt::Result {
    writeln!(text, "\nstruct {name}_{side} {{")?;
    for field in fields {
        for line in wrapped(&describe(field)) {
            writeln!(text, "    /// {line}")?;
        }
        let default = if field.default.is_nan() { String::new() } else { format!("{{{:?}}}", field.default) };
        writeln!(text, "    {} {}{default};", unit_name(&field.kind), field.name)?;
    }
    writeln!(text, "}};")
}
