//! What a release promises besides its numbers: no standard library needed, licences, what the
//! packages hold, the oldest dependencies that will do, the public interface.

use crate::steps::{Outcome, root, run};
use flamewright::node::Node;
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::process::Command;

/// The packages that are published.
const PUBLISHED: [&str; 3] = ["flamewright-derive", "flamewright", "flamewright-columns"];
/// What may lie at the top of a package.
const EXPECTED: &[&str] = &[
    ".cargo_vcs_info.json",
    "Cargo.lock",
    "Cargo.toml",
    "Cargo.toml.orig",
    "LICENSE-APACHE",
    "LICENSE-MIT",
    "README.md",
    "CALCULATIONS.md",
    "docs-header.html",
    "examples.toml",
    "schema",
    "src",
];
const SNAPSHOT: &str = "crates/flamewright/public-api.txt";

/// What is quick enough for every run.
pub(crate) fn quick() -> Outcome {
    licences()?;
    contents()?;
    bare()
}

/// All of it; needs a nightly compiler, cargo-deny and cargo-public-api.
pub(crate) fn all() -> Outcome {
    quick()?;
    run("", "cargo", &["deny", "--offline", "check", "licenses", "bans", "sources"])?;
    let packages: Vec<&str> = PUBLISHED.iter().flat_map(|name| ["-p", name]).collect();
    run("", "cargo", &[&["package", "--locked", "--allow-dirty", "--no-verify"], &packages[..]].concat())?;
    oldest()?;
    let now = public_interface()?;
    let promised = fs::read_to_string(root().join(SNAPSHOT)).map_err(|e| format!("{SNAPSHOT}: {e}"))?;
    if now != promised {
        let gone = promised.lines().filter(|line| !now.lines().any(|l| l == *line)).collect::<Vec<_>>();
        return Err(format!(
            "the public interface is not that of {SNAPSHOT}; gone or changed:\n{}\nIf it is meant: cargo xtask accept-api",
            gone.join("\n")
        ));
    }
    println!("==> the public interface is that of {SNAPSHOT}");
    Ok(())
}

/// Promises the public interface of the core as it is now.
pub(crate) fn accept() -> Outcome {
    fs::write(root().join(SNAPSHOT), public_interface()?).map_err(|e| format!("{SNAPSHOT}: {e}"))
}

fn said(folder: &Path, program: &str, arguments: &[&str]) -> Result<String, String> {
    let name = format!("{program} {}", arguments.join(" "));
    let said = Command::new(program).args(arguments).current_dir(folder).output().map_err(|e| format!("{name}: {e}"))?;
    if !said.status.success() {
        return Err(format!("{name}: {}", String::from_utf8_lossy(&said.stderr)));
    }
    Ok(String::from_utf8_lossy(&said.stdout).into_owned())
}

/// The public interface, a line an item. What every record and calculation has from the traits it
/// implements is left out: that it implements them is one line.
fn public_interface() -> Result<String, String> {
    let all = said(&root().join("crates/flamewright"), "cargo", &["+nightly", "public-api", "-sss"])?;
    let generic = ["record::Record for", "calculation::Context for", "calculation::Calculation for", "quantity::Value for"];
    let mut kept = BTreeSet::new();
    let mut of_a_trait = false;
    for line in all.lines() {
        let member = ["pub fn", "pub const", "pub type"].iter().any(|start| line.starts_with(start));
        if !member {
            of_a_trait = line.starts_with("impl") && generic.iter().any(|name| line.contains(name));
        }
        if !(member && of_a_trait) {
            kept.insert(line);
        }
    }
    Ok(kept.into_iter().fold(String::new(), |text, line| text + line + "\n"))
}

/// Whether `expression` (SPDX) can be met with the `allowed` licences: one side of an OR, all of an AND.
fn permitted(expression: &str, allowed: &[&str]) -> bool {
    let plain = expression.replace(['(', ')'], "").replace('/', " OR ");
    // Where both words stand, parentheses matter: then all licences named must be allowed.
    if plain.contains(" OR ") && plain.contains(" AND ") {
        return plain.split(" OR ").flat_map(|side| side.split(" AND ")).all(|one| allowed.contains(&one.trim()));
    }
    plain.split(" OR ").any(|side| side.split(" AND ").all(|one| allowed.contains(&one.trim())))
}

/// Every package in the lock file has a licence that `deny.toml` allows, and comes from a registry or from here.
fn licences() -> Outcome {
    let policy = fs::read_to_string(root().join("deny.toml")).map_err(|e| format!("deny.toml: {e}"))?;
    let policy = Node::from_toml(&policy).map_err(|e| e.to_string())?;
    let list = policy.get("licenses").and_then(|l| l.get("allow")).ok_or("deny.toml allows no licence")?;
    let allowed: Vec<&str> = list.list("allow").map_err(|e| e.to_string())?.iter().filter_map(|n| n.text("allow").ok()).collect();
    let metadata = said(&root(), "cargo", &["metadata", "--format-version", "1", "--locked"])?;
    let metadata = Node::from_json(&metadata).map_err(|e| e.to_string())?;
    let packages = metadata.get("packages").ok_or("no packages")?.list("packages").map_err(|e| e.to_string())?;
    for package in packages {
        let text = |key: &str| package.get(key).and_then(|n| n.text(key).ok()).unwrap_or_default();
        let (name, licence, source) = (text("name"), text("license"), text("source"));
        if !permitted(licence, &allowed) {
            return Err(format!("{name}: the licence \"{licence}\" is not allowed by deny.toml"));
        }
        if !(source.is_empty() && (name.starts_with("flamewright") || name == "xtask") || source.starts_with("registry+")) {
            return Err(format!("{name}: comes from \"{source}\", not from a registry"));
        }
    }
    println!("==> {} packages, each with an allowed licence and from a registry or from here", packages.len());
    Ok(())
}

/// Every package holds its sources and licences, and nothing that is not expected.
fn contents() -> Outcome {
    for name in PUBLISHED {
        let files = said(&root(), "cargo", &["package", "--list", "--allow-dirty", "--locked", "-p", name])?;
        for needed in ["LICENSE-APACHE", "LICENSE-MIT", "README.md", "Cargo.toml", "src/lib.rs"] {
            if !files.lines().any(|line| line == needed) {
                return Err(format!("the package of {name} lacks {needed}"));
            }
        }
        for line in files.lines() {
            let top = line.split('/').next().unwrap_or_default();
            if !EXPECTED.contains(&top) && top != "tests" {
                return Err(format!("the package of {name} holds {line}, which is not expected"));
            }
        }
        println!("==> the package of {name}: {} files, licences and sources among them", files.lines().count());
    }
    Ok(())
}

/// The core runs in a program without the standard library.
fn bare() -> Outcome {
    let target = root().join("target/bare");
    let folder = target.display().to_string();
    run("tests/bare", "cargo", &["build", "--quiet", "--locked", "--target-dir", &folder])?;
    let (library, program) = (target.join("debug/libflamewright_bare.a"), target.join("bare"));
    run("tests/bare", "cc", &["main.c", &library.display().to_string(), "-lm", "-o", &program.display().to_string()])?;
    run("", &program, &[])
}

/// The published packages compile with the oldest dependencies that their manifests allow.
fn oldest() -> Outcome {
    let folder = std::env::temp_dir().join(format!("flamewright-oldest-{}", std::process::id()));
    let there = folder.display().to_string();
    run("", "git", &["clone", "--quiet", "--depth", "1", &format!("file://{}", root().display()), &there])?;
    let checked = said(&folder, "cargo", &["+nightly", "update", "-Z", "direct-minimal-versions"])
        .and_then(|_| said(&folder, "cargo", &["check", "--quiet", "-p", "flamewright", "-p", "flamewright-columns"]));
    fs::remove_dir_all(&folder).map_err(|e| e.to_string())?;
    checked.map(|_| println!("==> compiles with the oldest direct dependencies"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn licences_are_read_as_they_are_meant() {
        let allowed = ["MIT", "Unicode-3.0"];
        assert!(permitted("MIT OR GPL-3.0", &allowed) && permitted("GPL-3.0/MIT", &allowed));
        assert!(permitted("MIT AND Unicode-3.0", &allowed) && !permitted("MIT AND GPL-3.0", &allowed));
        assert!(!permitted("(MIT OR GPL-3.0) AND Unicode-3.0", &allowed) && !permitted("", &allowed));
    }
}
