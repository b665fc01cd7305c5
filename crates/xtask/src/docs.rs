//! The documentation site: handbook, reference of all calculations, lessons and the Python interface,
//! laid together from their one source each and made into pages by Sphinx.

use super::generate::calculations;
use super::links::{links, resolved};
use super::steps::{Outcome, root, run};
use std::fmt::Write;
use std::fs;
use std::path::{Path, PathBuf};

const SOURCE: &str = "target/docs/source";
const PAGES: &str = "target/docs/html";

/// The parts of the reference, by the folder in which the code of a calculation lies.
const AREAS: &[(&str, &str)] = &[
    ("fuel", "Fuel"),
    ("combustion", "Combustion"),
    ("flue", "Flue gas"),
    ("meter", "Meter and gas rate"),
    ("supply", "Gas supply"),
    ("air", "Air, ventilation and draught"),
    ("water", "Water and antifreeze"),
    ("material", "Materials and tubes"),
    ("convection", "Friction"),
    ("pipe", "Pipes and heat loss"),
    ("system", "Heating system"),
    ("transient", "The hot block"),
    ("instrument", "Instruments and sensors"),
];

/// Where a file of the project stands in the site, below its root; none if it is not part of it.
fn in_the_site(file: &Path, anchor: &str) -> Option<String> {
    let place = file.to_string_lossy();
    if place == "crates/flamewright/CALCULATIONS.md" {
        return Some(format!("reference/{}.md", if anchor.is_empty() { "index" } else { anchor }));
    }
    if let Some(name) = place.strip_prefix("examples/notebooks/").and_then(|name| name.strip_suffix(".ipynb")) {
        return Some(format!("lessons/{name}.ipynb"));
    }
    let page = place.strip_prefix("docs/")?;
    Some(if anchor.is_empty() { page.to_owned() } else { format!("{page}#{anchor}") })
}

/// `text` from the folder `from` of the project with its links made right for the folder `to` of the
/// site; what is not part of the site is named by its place in the project.
fn relinked(text: &str, from: &str, to: &str) -> Result<String, String> {
    let mut out = String::new();
    let mut done = 0;
    for link in links(text) {
        let target = &text[link.target.clone()];
        if target.starts_with("http") || target.starts_with('#') {
            continue;
        }
        let (file, anchor) = target.split_once('#').unwrap_or((target, ""));
        let place = resolved(Path::new(from), file).ok_or_else(|| format!("{target}: leads out of the project"))?;
        let shown = &text[link.shown.clone()];
        out.push_str(&text[done..link.all.start]);
        let _ = match in_the_site(&place, anchor) {
            Some(page) => write!(out, "[{shown}]({}{page})", "../".repeat(usize::from(!to.is_empty()))),
            None if shown.contains(&*place.to_string_lossy()) || shown.contains('`') => write!(out, "{shown} (in the repository)"),
            None => write!(out, "{shown} (`{}` in the repository)", place.display()),
        };
        done = link.all.end;
    }
    out.push_str(&text[done..]);
    Ok(out)
}

fn write(place: &str, text: &str) -> Outcome {
    let path = root().join(SOURCE).join(place);
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    }
    fs::write(&path, text).map_err(|e| format!("{}: {e}", path.display()))
}

/// Files below `folder` of the project, by their place below it.
fn files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut entries: Vec<PathBuf> = fs::read_dir(folder).into_iter().flatten().flatten().map(|e| e.path()).collect();
    entries.sort();
    for entry in entries {
        if entry.is_dir() {
            let name = entry.file_name().map(PathBuf::from).unwrap_or_default();
            found.extend(files(&entry).into_iter().map(|file| name.join(file)));
        } else {
            found.extend(entry.file_name().map(PathBuf::from));
        }
    }
    found
}

fn is_a(file: &Path, extension: &str) -> bool {
    file.extension().is_some_and(|x| x == extension)
}

/// The handbook as it is, with its links made right.
fn handbook() -> Outcome {
    let home = root().join("docs");
    for file in files(&home) {
        let name = file.to_string_lossy().into_owned();
        let text = fs::read_to_string(home.join(&file)).map_err(|e| format!("{name}: {e}"))?;
        let folder = file.parent().map(|p| p.to_string_lossy().into_owned()).unwrap_or_default();
        let text = if is_a(&file, "md") { relinked(&text, &format!("docs/{folder}"), &folder)? } else { text };
        write(&name, &text)?;
    }
    Ok(())
}

/// A page for every calculation, and for every area a list of them.
fn reference() -> Outcome {
    let sections = calculations::sections()?;
    let mut index = String::from(
        "# Every calculation\n\nMade from the catalogue, which is behind every face: what is given and its range, an invented example, the sum line by \
         line, what is refused, accuracy, sources, checks and cautions.\n",
    );
    for (area, title) in AREAS {
        let _ = write!(index, "\n```{{toctree}}\n:caption: {title}\n:maxdepth: 1\n\n");
        for (name, _, section) in sections.iter().filter(|(_, of, _)| of == area) {
            let _ = writeln!(index, "{name}");
            let section = relinked(section, "crates/flamewright", "reference")?;
            let from_python = format!("\nIn Python: {{py:func}}`flamewright.{name}`\n");
            write(&format!("reference/{name}.md"), &(section.replacen("## ", "# ", 1) + &from_python))?;
        }
        index.push_str("```\n");
    }
    if let Some((name, area, _)) = sections.iter().find(|(_, area, _)| !AREAS.iter().any(|(known, _)| known == area)) {
        return Err(format!("{name}: the area {area} has no title in the reference"));
    }
    write("reference/index.md", &index)?;
    let mut python = String::from("# The calculations in Python\n\n```{eval-rst}\n.. py:currentmodule:: flamewright\n\n");
    for (name, ..) in &sections {
        let _ = writeln!(python, ".. autofunction:: flamewright.{name}\n");
    }
    write("python/calculations.md", &(python + "```\n"))
}

fn lessons() -> Outcome {
    let home = root().join("examples/notebooks");
    let mut index =
        String::from("# Ten lessons\n\nExecuted notebooks for a class; all readings are invented.\n\n```{toctree}\n:maxdepth: 1\n\n");
    for file in files(&home).iter().filter(|f| is_a(f, "ipynb")) {
        let text = fs::read_to_string(home.join(file)).map_err(|e| format!("{}: {e}", file.display()))?;
        write(&format!("lessons/{}", file.display()), &text)?;
        let _ = writeln!(index, "{}", file.with_extension("").display());
    }
    write("lessons/index.md", &(index + "```\n"))
}

/// Lays the sources together and makes the pages, with the Python that has flamewright and Sphinx.
pub(crate) fn build(python: &Path) -> Outcome {
    let source = root().join(SOURCE);
    if source.exists() {
        fs::remove_dir_all(&source).map_err(|e| format!("{SOURCE}: {e}"))?;
    }
    handbook()?;
    reference()?;
    lessons()?;
    run("", python, &["-m", "sphinx", "--builder", "html", "--fail-on-warning", "--keep-going", "--quiet", SOURCE, PAGES])?;
    println!("the pages are in {PAGES}; begin with index.html");
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn links_are_made_right_for_the_site() {
        let made = |text: &str| relinked(text, "docs/handbook", "handbook").unwrap_or_else(|e| panic!("{e}"));
        assert_eq!(made("[g](../../crates/flamewright/CALCULATIONS.md#gas_rate)"), "[g](../reference/gas_rate.md)");
        assert_eq!(made("see [d](design.md#basis) x"), "see [d](../handbook/design.md#basis) x");
        assert_eq!(made("[r](../../README.md)"), "r (`README.md` in the repository)");
        assert!(relinked("[r](../../../x)", "docs/handbook", "handbook").is_err());
    }
}
