//! The list of calculations for readers: what each answers, its sum with a worked example, how well,
//! from which sources, and where the code and the check are.

use flamewright::catalogue::{Bare, CATALOGUE, Entry, Outcome, evaluate};
use flamewright::quantity::{Unit, quantity_text};
use flamewright::record::Field;
use flamewright::working::{Formula, Step};
use std::fmt::Write;
use std::path::{Path, PathBuf};

use super::super::steps::root;

fn shown(field: &Field, si: f64) -> String {
    quantity_text(si, &Unit { symbol: "", ..*field.unit }, 6)
}

fn range(field: &Field) -> String {
    let default = if field.default.is_nan() { String::new() } else { format!(", {} if not given", shown(field, field.default)) };
    let optional = if field.absent.is_empty() { String::new() } else { format!(", may be left out: {}", field.absent) };
    format!("{} to {}{default}{optional}", shown(field, field.minimum), shown(field, field.maximum))
}

fn unit(field: &Field) -> String {
    let symbol = if field.unit.symbol.is_empty() { "number" } else { field.unit.symbol };
    let basis = field.kind.basis.word();
    if basis.is_empty() { symbol.to_owned() } else { format!("{symbol}, {basis}") }
}

/// Files of Rust below `folder`, in order.
fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut entries: Vec<PathBuf> = std::fs::read_dir(folder).into_iter().flatten().flatten().map(|e| e.path()).collect();
    entries.sort();
    for entry in entries {
        if entry.is_dir() {
            found.extend(sources(&entry));
        } else if entry.extension().is_some_and(|x| x == "rs") {
            found.push(entry);
        }
    }
    found
}

/// Where the code of every calculation is: its name and the file below `crates/flamewright`.
fn places() -> Result<Vec<(&'static str, String)>, String> {
    let home = root().join("crates/flamewright");
    let files: Vec<(String, String)> = sources(&home.join("src"))
        .iter()
        .map(|path| {
            let text = std::fs::read_to_string(path).map_err(|e| format!("{}: {e}", path.display()))?;
            let place = path.strip_prefix(&home).unwrap_or(path).display().to_string();
            Ok((place, text))
        })
        .collect::<Result<_, String>>()?;
    CATALOGUE
        .iter()
        .map(|entry| {
            let info = entry.info();
            let told = format!("name: \"{}\",", info.name);
            let titled = format!("title: \"{}\"", info.title);
            let holds = |text: &str| text.contains(&told) && text.contains(&titled);
            let (place, _) = files.iter().find(|(_, text)| holds(text)).ok_or(format!("{}: its code was not found", info.name))?;
            Ok((info.name, place.clone()))
        })
        .collect()
}

/// The example of `name` as the table of TOML that stands in `examples.toml`.
fn example_text(name: &str) -> Result<String, String> {
    let place = root().join("crates/flamewright/examples.toml");
    let all = std::fs::read_to_string(&place).map_err(|e| format!("{}: {e}", place.display()))?;
    let head = format!("[{name}]\n");
    let begin = all.find(&format!("\n{head}")).ok_or(format!("{name}: no example"))? + 1;
    let rest = &all[begin..];
    let end = rest.find("\n\n").map_or(rest.trim_end().len(), |end| end);
    Ok(rest[..end].to_owned())
}

/// The lines of the sum with the numbers and the results of the example; lines that a loop repeats stand there once.
fn sum(out: &mut String, steps: &[Step]) {
    let mut said: Vec<(String, String)> = Vec::new();
    for step in steps {
        let line = (step.symbol_latex().to_owned(), step.formula_latex());
        // A value handed on under the same symbol says nothing.
        if line.0 == line.1 || said.contains(&line) {
            continue;
        }
        let source = if step.source().is_empty() { String::new() } else { format!("; {}", step.source()) };
        let result = step.result();
        let put_in = Some(step.substituted()).filter(|_| !matches!(step.form(), Formula::Leaf(_) | Formula::Call(..)));
        let put_in = put_in.map_or(String::new(), |numbers| format!("{numbers} = "));
        let _ = writeln!(out, "* $`\\displaystyle {} = {}`$: {put_in}{result}{source}", line.0, line.1);
        said.push(line);
    }
}

fn worked(name: &str) -> Result<(Outcome, Vec<Step>), String> {
    let given = flamewright::describe::example(name).map_err(|e| format!("the example of {name}: {e}"))?;
    let outcome = evaluate(name, &given, Bare::Refused).map_err(|e| format!("the example of {name}: {e}"))?;
    let steps = outcome.prepared.steps(&outcome.input).map_err(|e| format!("the example of {name}: {e}"))?;
    Ok((outcome, steps))
}

/// All that is said about one calculation, headed `## name`; `place` is the file of its code.
fn section(entry: &dyn Entry, place: &str) -> Result<String, String> {
    let info = entry.info();
    let (outcome, steps) = worked(info.name)?;
    let mut out = format!("## {}\n\n**{}.** {}\n\n", info.name, info.title, info.summary);
    for setting in entry.settings() {
        let default = setting.default.filter(|d| !d.is_empty()).map_or(String::new(), |d| format!(" If not given: {d}."));
        let _ = writeln!(out, "* setting `{}`: {}{default}", setting.name, setting.doc);
    }
    if !entry.settings().is_empty() {
        out.push('\n');
    }
    out.push_str("| given | unit | range | meaning |\n| --- | --- | --- | --- |\n");
    for field in entry.inputs() {
        let _ = writeln!(out, "| `{}` | {} | {} | {} |", field.name, unit(field), range(field), field.doc);
    }
    let _ = write!(out, "\nAn invented example:\n\n```toml\n{}\n```\n", example_text(info.name)?);
    out.push_str("\n| result | in the example | unit | meaning |\n| --- | --- | --- | --- |\n");
    for (field, value) in entry.outputs().iter().zip(&outcome.output) {
        let absent = if field.absent.is_empty() { String::new() } else { format!(" No value: {}.", field.absent) };
        let value = if value.is_finite() { shown(field, *value) } else { "no value".to_owned() };
        let _ = writeln!(out, "| `{}` | {value} | {} | {}{absent} |", field.name, unit(field), field.doc);
    }
    for notice in &outcome.notices {
        let _ = writeln!(out, "\nNotice with the example: {}", notice.text);
    }
    if !steps.is_empty() {
        out.push_str("\nThe sum, with the numbers of the example:\n\n");
        sum(&mut out, &steps);
    }
    if !entry.rules().is_empty() {
        out.push_str("\nBesides the ranges, it watches for:\n\n");
        for rule in entry.rules() {
            let does = match rule.severity {
                flamewright::calculation::Severity::Refuse => "refused",
                flamewright::calculation::Severity::Notice => "notice",
            };
            let _ = writeln!(out, "* `{}`, {does}, on `{}`: {}", rule.code, rule.field, rule.text);
        }
    }
    let _ = write!(out, "\nAccuracy: {}\n\nSources:\n\n", info.accuracy);
    for source in info.sources {
        let _ = writeln!(out, "* {}: {}", source.citation, source.covers);
    }
    let _ = writeln!(out, "\nChecked against: {}{}", info.checked_against, crate::validation::report::link(info.name)?);
    let _ = writeln!(out, "\nCode: [{place}]({place})");
    for caution in info.cautions {
        let _ = writeln!(out, "\nCaution: {caution}");
    }
    Ok(out)
}

/// Every calculation in the order of the catalogue: its name, its area and its section.
pub(crate) fn sections() -> Result<Vec<(&'static str, String, String)>, String> {
    let places = places()?;
    CATALOGUE
        .iter()
        .zip(&places)
        .map(|(entry, (name, place))| {
            let area = place.split('/').nth(1).unwrap_or_default().to_owned();
            Ok((*name, area, section(*entry, place)?))
        })
        .collect()
}

pub(crate) fn make() -> Result<String, String> {
    let mut out = String::from(
        "# The calculations\n\nMade from the catalogue by `cargo xtask generate`; the same text is behind every face. Ranges are what is accepted, \
         in the unit named. The lines of a sum are made from the expressions that are computed, and behind the colon stand the numbers put in and what they gave \
         for the example. \"From memory\" and \"common practice, no source\" say what they mean: no document stands behind that number.\n\n",
    );
    for entry in CATALOGUE {
        let _ = writeln!(out, "* [{}](#{}): {}", entry.info().name, entry.info().name, entry.info().title);
    }
    for (_, _, section) in sections()? {
        out.push('\n');
        out.push_str(&section);
    }
    Ok(out)
}
