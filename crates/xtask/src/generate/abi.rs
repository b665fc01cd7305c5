//! `bindings/c/abi.txt`: the binary interface as it was promised, line by line.
//!
//! Generating only ever adds lines. One that the header no longer bears out stays, and the check of
//! the C face fails on it: either mend the change, or raise `FW_ABI_VERSION` and accept the new
//! interface with `cargo xtask accept-abi`.

use crate::steps::{Outcome, root};
use std::collections::BTreeMap;
use std::fs;

const KEPT: &str = "bindings/c/abi.txt";
const HEADER: &str = "bindings/c/include/flamewright.h";

/// What a line speaks of (`field fw_x.y`), and the rest of it.
type Lines = BTreeMap<String, String>;

pub(super) fn make() -> Result<String, String> {
    let mut lines = present()?;
    lines.extend(kept());
    Ok(written(&lines))
}

/// Takes the interface as it is now for the one that is promised.
pub(crate) fn accept() -> Outcome {
    fs::write(root().join(KEPT), written(&present()?)).map_err(|e| format!("{KEPT}: {e}"))
}

/// Fails where the header does not bear out what was promised.
pub(crate) fn check() -> Outcome {
    let present = present()?;
    let broken: Vec<String> = kept()
        .into_iter()
        .filter(|(key, rest)| present.get(key) != Some(rest))
        .map(|(key, rest)| match present.get(&key) {
            Some(now) => format!("  {key}: was {rest}, is {now}"),
            None => format!("  {key}: was {rest}, is gone"),
        })
        .collect();
    if broken.is_empty() {
        return Ok(());
    }
    Err(format!(
        "the binary interface has changed:\n{}\nMend it; or, if it is meant, raise FW_ABI_VERSION (unless nothing was released yet) \
         and run `cargo xtask accept-abi`",
        broken.join("\n")
    ))
}

/// A C program that compiles only where a compiler sees the interface as it was promised.
pub(crate) fn program() -> String {
    let mut text = String::from("#define FLAMEWRIGHT_ARROW\n#include <flamewright.h>\n#include <stddef.h>\n");
    for (key, rest) in kept() {
        let (what, name) = key.split_once(' ').unwrap_or((key.as_str(), ""));
        let (first, second) = rest.split_once(' ').unwrap_or((rest.as_str(), ""));
        text.push_str(&match what {
            "define" | "value" => format!("_Static_assert({name} == {rest}, \"{name}\");\n"),
            "type" => format!("_Static_assert(_Generic(({name})0, {rest}: 1, default: 0), \"{name}\");\n"),
            "struct" => format!("_Static_assert(sizeof({name}) == {rest}, \"{name}\");\n"),
            "field" => {
                let (of, field) = name.split_once('.').unwrap_or((name, ""));
                format!(
                    "_Static_assert(offsetof({of}, {field}) == {first}, \"{name}\");\n\
                     _Static_assert(_Generic((({of} *)0)->{field}, {second}: 1, default: 0), \"{name}\");\n"
                )
            }
            _ => format!("{rest};\n"),
        });
    }
    text + "int main(void) { return 0; }\n"
}

/// The names of all functions that the header declares, sorted.
pub(crate) fn functions_of(header: &str) -> Vec<String> {
    let lines = read(header).unwrap_or_default();
    lines.keys().filter_map(|key| key.strip_prefix("function ")).map(str::to_owned).collect()
}

fn kept() -> Lines {
    let text = fs::read_to_string(root().join(KEPT)).unwrap_or_default();
    text.lines().filter_map(|line| line.split_once(": ")).map(|(key, rest)| (key.to_owned(), rest.to_owned())).collect()
}

fn written(lines: &Lines) -> String {
    lines.iter().fold(String::new(), |text, (key, rest)| text + key + ": " + rest + "\n")
}

fn present() -> Result<Lines, String> {
    read(&fs::read_to_string(root().join(HEADER)).map_err(|e| format!("{HEADER}: {e}"))?)
}

/// Reads the header that cbindgen writes: no more of C than it uses.
fn read(header: &str) -> Result<Lines, String> {
    let mut lines = Lines::new();
    let mut code = String::new();
    let mut only_cpp = false;
    let mut comment = false;
    for line in header.lines().map(str::trim) {
        if line.starts_with("/*") {
            comment = true;
        }
        if comment {
            comment = !line.ends_with("*/");
        } else if line.starts_with("#ifdef __cplusplus") {
            only_cpp = true;
        } else if line.starts_with("#endif") {
            only_cpp = false;
        } else if let Some(define) = line.strip_prefix("#define ") {
            if let Some((name, value)) = define.split_once(' ') {
                lines.insert(format!("define {name}"), value.to_owned());
            }
        } else if !(only_cpp || line.starts_with('#') || line.starts_with("//")) {
            code.push_str(line);
            code.push(' ');
        }
    }
    let mut depth = 0;
    let mut start = 0;
    for (i, letter) in code.char_indices() {
        match letter {
            '{' => depth += 1,
            '}' => depth -= 1,
            ';' if depth == 0 => {
                declaration(&code[start..i], &mut lines)?;
                start = i + 1;
            }
            _ => {}
        }
    }
    Ok(lines)
}

fn declaration(text: &str, lines: &mut Lines) -> Outcome {
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let strange = || format!("flamewright.h holds a declaration that the reader of the interface does not know: {text}");
    if let (Some((head, rest)), Some((_, name))) = (text.split_once('{'), text.rsplit_once("} ")) {
        let body = rest.rsplit_once('}').map_or(rest, |(body, _)| body);
        if head.starts_with("typedef enum") {
            for item in body.split(',').map(str::trim).filter(|item| !item.is_empty()) {
                let (value, number) = item.split_once(" = ").ok_or_else(strange)?;
                lines.insert(format!("value {value}"), number.to_owned());
            }
            return Ok(());
        }
        let mut size = 0;
        for field in body.split(';').map(str::trim).filter(|field| !field.is_empty()) {
            let end = field.rfind([' ', '*']).ok_or_else(strange)? + 1;
            let (kind, field) = field.split_at(end);
            // Every member takes eight bytes where pointers do: doubles, uint64_t, size_t, pointers.
            lines.insert(format!("field {name}.{field}"), format!("{size} {}", kind.trim()));
            size += 8;
        }
        lines.insert(format!("struct {name}"), size.to_string());
    } else if let Some(alias) = text.strip_prefix("typedef ") {
        let (kind, name) = alias.rsplit_once(' ').ok_or_else(strange)?;
        if !kind.starts_with("struct") {
            lines.insert(format!("type {name}"), kind.to_owned());
        }
    } else {
        let head = text.split_once('(').ok_or_else(strange)?.0;
        let name = head.rsplit([' ', '*']).next().ok_or_else(strange)?;
        lines.insert(format!("function {name}"), text.clone());
    }
    Ok(())
}
