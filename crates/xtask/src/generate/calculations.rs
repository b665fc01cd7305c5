//! The list of calculations for readers: what each answers, how well, from which sources.

use flamewright::catalogue::CATALOGUE;
use flamewright::record::Field;
use std::fmt::Write;

fn range(field: &Field) -> String {
    let shown = |si: f64| flamewright::quantity::quantity_text(si, &flamewright::quantity::Unit { symbol: "", ..*field.unit }, 6);
    let default = if field.default.is_nan() { String::new() } else { format!(", {} if not given", shown(field.default)) };
    let optional = if field.absent.is_empty() { String::new() } else { format!(", may be left out: {}", field.absent) };
    format!("{} to {}{default}{optional}", shown(field.minimum), shown(field.maximum))
}

fn unit(field: &Field) -> String {
    let symbol = if field.unit.symbol.is_empty() { "number" } else { field.unit.symbol };
    let basis = field.kind.basis.word();
    if basis.is_empty() { symbol.to_owned() } else { format!("{symbol}, {basis}") }
}

#[allow(clippy::unnecessary_wraps, reason = "every generated file is made by such a function")]
pub(crate) fn make() -> Result<String, String> {
    let mut out = String::from(
        "# The calculations\n\nMade from the catalogue by `cargo xtask generate`; the same text is behind every face. Ranges are what is accepted, \
         in the unit named. \"From memory\" and \"common practice, no source\" say what they mean: no document stands behind that number.\n\n",
    );
    for entry in CATALOGUE {
        let _ = writeln!(out, "* [{}](#{}): {}", entry.info().name, entry.info().name, entry.info().title);
    }
    for entry in CATALOGUE {
        let info = entry.info();
        let _ = write!(out, "\n## {}\n\n**{}.** {}\n\n", info.name, info.title, info.summary);
        for setting in entry.settings() {
            let default = setting.default.map_or(String::new(), |d| format!(" If not given: {d}."));
            let _ = writeln!(out, "* setting `{}`: {}{default}", setting.name, setting.doc);
        }
        out.push_str("\n| given | unit | range | meaning |\n| --- | --- | --- | --- |\n");
        for field in entry.inputs() {
            let _ = writeln!(out, "| `{}` | {} | {} | {} |", field.name, unit(field), range(field), field.doc);
        }
        out.push_str("\n| result | unit | meaning |\n| --- | --- | --- |\n");
        for field in entry.outputs() {
            let absent = if field.absent.is_empty() { String::new() } else { format!(" No value: {}.", field.absent) };
            let _ = writeln!(out, "| `{}` | {} | {}{absent} |", field.name, unit(field), field.doc);
        }
        let _ = write!(out, "\nAccuracy: {}\n\nSources:\n\n", info.accuracy);
        for source in info.sources {
            let _ = writeln!(out, "* {}: {}", source.citation, source.covers);
        }
        let _ = writeln!(out, "\nChecked against: {}", info.checked_against);
        for caution in info.cautions {
            let _ = writeln!(out, "\nCaution: {caution}");
        }
    }
    Ok(out)
}
