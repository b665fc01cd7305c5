//! Looking a name up, forgiving about spaces and case, and offering the nearest.

use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

/// A name that no table holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct UnknownName {
    /// What was looked for: "tube", "metal", "insulation", "surface" or "fitting".
    pub kind: &'static str,
    /// The name as asked.
    pub name: String,
    /// The most alike name there is.
    pub nearest: String,
}

impl fmt::Display for UnknownName {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(formatter, "no {} named \"{}\"; the nearest is \"{}\"", self.kind, self.name, self.nearest)
    }
}

impl core::error::Error for UnknownName {}

/// Lower case, without spaces or commas, "×" as "x" and without "mm": what two spellings of one
/// name share.
fn plain(name: &str) -> Vec<char> {
    let lower: String = name.chars().flat_map(char::to_lowercase).map(|c| if c == '×' { 'x' } else { c }).collect();
    lower.replace("mm", "").chars().filter(|c| !c.is_whitespace() && *c != ',' && *c != '-').collect()
}

/// Smallest number of insertions, deletions and replacements that turn one into the other.
fn edits(a: &[char], b: &[char]) -> usize {
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, from) in a.iter().enumerate() {
        let mut diagonal = i;
        let mut left = i + 1;
        if let Some(first) = row.first_mut() {
            *first = left;
        }
        for (cell, to) in row.iter_mut().skip(1).zip(b) {
            let above = *cell;
            let best = (diagonal + usize::from(from != to)).min(above + 1).min(left + 1);
            diagonal = above;
            left = best;
            *cell = best;
        }
    }
    row.last().copied().unwrap_or(0)
}

/// The entry whose name is `name` but for case and spaces, or else the most alike name.
pub(crate) fn find<T>(
    kind: &'static str,
    name: &str,
    entries: impl IntoIterator<Item = T>,
    name_of: impl Fn(&T) -> String,
) -> Result<T, UnknownName> {
    let wanted = plain(name);
    let mut nearest = (usize::MAX, String::new());
    for entry in entries {
        let candidate = name_of(&entry);
        let distance = edits(&wanted, &plain(&candidate));
        if distance == 0 {
            return Ok(entry);
        }
        if distance < nearest.0 {
            nearest = (distance, candidate);
        }
    }
    Err(UnknownName { kind, name: name.into(), nearest: nearest.1 })
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::string::ToString;

    #[test]
    fn edits_are_counted() {
        for (a, b, n) in [("", "", 0), ("copper", "", 6), ("", "ab", 2), ("copper", "coper", 1), ("kitten", "sitting", 3)] {
            assert_eq!(edits(&plain(a), &plain(b)), n, "{a} {b}");
            assert_eq!(edits(&plain(b), &plain(a)), n, "{b} {a}");
        }
    }

    #[test]
    fn spelling_is_forgiven_and_the_nearest_is_offered() {
        let names = ["copper 15x0.7", "copper 22x0.9"];
        let look = |name| find("tube", name, names, |n| n.to_string());
        assert_eq!(look("Copper 15 × 0.7 mm"), Ok(names[0]));
        let error = look("coper 22").unwrap_err();
        assert_eq!(error.nearest, names[1]);
        assert_eq!(error.to_string(), "no tube named \"coper 22\"; the nearest is \"copper 22x0.9\"");
    }
}
