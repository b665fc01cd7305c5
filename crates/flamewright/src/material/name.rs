//! Looking a name up, forgiving about spaces and case.

use crate::Error;
use alloc::string::String;
use alloc::vec::Vec;

/// Lower case, without spaces, commas or hyphens, "×" as "x" and without "mm": what two spellings
/// of one name share.
fn plain(name: &str) -> String {
    let lower: String = name.chars().flat_map(char::to_lowercase).map(|c| if c == '×' { 'x' } else { c }).collect();
    lower.replace("mm", "").chars().filter(|c| !c.is_whitespace() && *c != ',' && *c != '-').collect()
}

/// The entry whose name is `name` but for case and spaces; the refusal offers the nearest.
pub(crate) fn find<T>(
    kind: &'static str,
    name: &str,
    entries: impl Iterator<Item = T> + Clone,
    name_of: impl Fn(&T) -> String,
) -> Result<T, Error> {
    let wanted = plain(name);
    entries.clone().find(|entry| plain(&name_of(entry)) == wanted).ok_or_else(|| {
        let names: Vec<String> = entries.map(|entry| name_of(&entry)).collect();
        Error::unknown_name(kind, name, names.iter().map(String::as_str))
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::string::ToString;

    #[test]
    fn spelling_is_forgiven_and_the_nearest_is_offered() {
        let names = ["copper 15x0.7", "copper 22x0.9"];
        let look = |name| find("tube", name, names.iter(), ToString::to_string);
        assert_eq!(look("Copper 15 × 0.7 mm"), Ok(&names[0]));
        assert!(look("coper 22x0.9").unwrap_err().to_string().ends_with("did you mean \"copper 22x0.9\"?"));
    }
}
