//! The links of the Markdown files: every relative one leads to a file that is there, and to a heading
//! in it where it names one.

use super::steps::{Outcome, root};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Component, Path, PathBuf};

/// A link in a text: where its target stands, and the text that is shown for it.
pub(crate) struct Link {
    /// The whole link, from bracket to bracket.
    pub(crate) all: std::ops::Range<usize>,
    pub(crate) shown: std::ops::Range<usize>,
    pub(crate) target: std::ops::Range<usize>,
}

/// The stretches of `text` that are code: fenced blocks and what stands between backticks.
fn code(text: &str) -> Vec<std::ops::Range<usize>> {
    let mut found = Vec::new();
    let (mut place, mut fence) = (0, None);
    for line in text.split_inclusive('\n') {
        let bare = line.trim_start();
        match fence {
            None if bare.starts_with("```") => fence = Some(place),
            Some(begin) if bare.starts_with("```") => {
                found.push(begin..place + line.len());
                fence = None;
            }
            None => {
                let ticks: Vec<usize> = line.match_indices('`').map(|(i, _)| place + i).collect();
                found.extend(ticks.chunks_exact(2).map(|pair| pair[0]..pair[1] + 1));
            }
            Some(_) => {}
        }
        place += line.len();
    }
    found
}

/// The stretch of code that holds `place`; the stretches stand in order.
fn around(code: &[std::ops::Range<usize>], place: usize) -> Option<&std::ops::Range<usize>> {
    code.get(code.partition_point(|c| c.end <= place)).filter(|c| c.contains(&place))
}

pub(crate) fn links(text: &str) -> Vec<Link> {
    let code = code(text);
    let mut found = Vec::new();
    for (middle, _) in text.match_indices("](") {
        if around(&code, middle).is_some() {
            continue;
        }
        let (Some(begin), Some(length)) = (text[..middle].rfind('['), text[middle..].find(')')) else { continue };
        let target = middle + 2..middle + length;
        found.push(Link { all: begin..target.end + 1, shown: begin + 1..middle, target });
    }
    found
}

/// `target` as seen from the folder `from`, both below the root, without `..`; none if it leads out.
pub(crate) fn resolved(from: &Path, target: &str) -> Option<PathBuf> {
    let mut place = PathBuf::new();
    for part in from.join(target).components() {
        match part {
            Component::Normal(name) => place.push(name),
            Component::ParentDir if place.pop() => {}
            Component::CurDir => {}
            _ => return None,
        }
    }
    Some(place)
}

/// The anchors of a page: its headings in small letters, with hyphens for spaces and without signs.
fn anchors(text: &str) -> BTreeSet<String> {
    let code = code(text);
    let mut place = 0;
    let mut found = BTreeSet::new();
    for line in text.split_inclusive('\n') {
        let fenced = around(&code, place).is_some_and(|c| c.len() > line.len());
        if line.starts_with('#') && !fenced {
            let words = line.trim_start_matches('#').trim().to_lowercase();
            let kept = words.chars().filter(|c| c.is_alphanumeric() || matches!(c, ' ' | '-' | '_'));
            found.insert(kept.map(|c| if c == ' ' { '-' } else { c }).collect());
        }
        for (i, _) in line.match_indices("<a id=\"") {
            found.extend(line[i + 7..].split('"').next().map(str::to_owned));
        }
        place += line.len();
    }
    found
}

/// The places in a file that a link may name: its headings, and its lines as `L` with their number.
fn places(text: &str) -> BTreeSet<String> {
    let lines = (1..=text.lines().count()).map(|number| format!("L{number}"));
    lines.chain(anchors(text)).collect()
}

/// The Markdown files of the project.
fn pages(folder: &Path, found: &mut Vec<PathBuf>) {
    let mut entries: Vec<PathBuf> = fs::read_dir(folder).into_iter().flatten().flatten().map(|e| e.path()).collect();
    entries.sort();
    for entry in entries {
        let name = entry.file_name().unwrap_or_default().to_string_lossy().into_owned();
        if entry.is_dir() && name != "target" && !name.starts_with('.') {
            pages(&entry, found);
        } else if entry.extension().is_some_and(|x| x == "md") {
            found.push(entry);
        }
    }
}

/// What is amiss with the links of `page`; `known` holds the places of files looked at before.
fn amiss(page: &Path, text: &str, known: &mut BTreeMap<PathBuf, BTreeSet<String>>) -> Vec<String> {
    let folder = page.parent().unwrap_or(Path::new(""));
    let mut found = Vec::new();
    for link in links(text) {
        let target = &text[link.target];
        if target.starts_with("http://") || target.starts_with("https://") {
            continue;
        }
        let (file, anchor) = target.split_once('#').unwrap_or((target, ""));
        let place = if file.is_empty() { Some(page.to_owned()) } else { resolved(folder, file) };
        let Some(place) = place.filter(|p| root().join(p).exists()) else {
            found.push(format!("{}: {target}: no such file", page.display()));
            continue;
        };
        let look = || fs::read_to_string(root().join(&place)).map(|text| places(&text)).unwrap_or_default();
        if !anchor.is_empty() && !known.entry(place.clone()).or_insert_with(look).contains(anchor) {
            found.push(format!("{}: {target}: no such heading", page.display()));
        }
    }
    found
}

pub(crate) fn check() -> Outcome {
    let mut all = Vec::new();
    pages(&root(), &mut all);
    let (mut found, mut count, mut known) = (Vec::new(), 0, BTreeMap::new());
    for page in &all {
        let text = fs::read_to_string(page).map_err(|e| format!("{}: {e}", page.display()))?;
        count += links(&text).len();
        found.extend(amiss(page.strip_prefix(root()).unwrap_or(page), &text, &mut known));
    }
    if found.is_empty() {
        println!("{count} links in {} pages lead somewhere", all.len());
        return Ok(());
    }
    Err(found.join("\n"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn links_stand_outside_code() {
        let text = "[a](b.md#c) `[d](e.md)`\n```\n[f](g.md)\n# Not a heading\n```\n## The `gas_rate`, told\n";
        let found: Vec<&str> = links(text).into_iter().map(|l| &text[l.target]).collect();
        assert_eq!(found, ["b.md#c"]);
        assert_eq!(anchors(text), BTreeSet::from(["the-gas_rate-told".to_owned()]));
    }

    #[test]
    fn a_link_that_leads_nowhere_is_seen() {
        let amiss = |text: &str| amiss(Path::new("README.md"), text, &mut BTreeMap::new());
        assert_eq!(amiss("[x](DEVELOPERS.md#the-shape) [y](https://example.org) [z](README.md#L1)"), Vec::<String>::new());
        assert_eq!(amiss("[x](DEVELOPERS.md#no-such) [y](README.md#L99999)").len(), 2);
        assert_eq!(amiss("[x](nowhere.md) [y](../outside.md)").len(), 2);
    }
}
