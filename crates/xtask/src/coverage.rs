//! Which lines of the core its Rust checks run, measured by the compiler's own counters.

use super::steps::{Outcome, root, run};
use std::collections::BTreeMap;
use std::ffi::OsStr;
use std::fmt::Write;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Everything goes here, so that the ordinary builds stay as they are.
const FOLDER: &str = "target/coverage";
const TESTS: [&str; 7] = ["test", "--locked", "-p", "flamewright", "-p", "flamewright-trials", "--tests"];

/// A tool of LLVM: named by an environment variable, beside the compiler, or on the path.
fn tool(variable: &str, name: &str) -> Result<PathBuf, String> {
    if let Some(given) = std::env::var_os(variable) {
        return Ok(given.into());
    }
    let sysroot = Command::new("rustc").args(["--print", "sysroot"]).output().map_err(|e| format!("rustc: {e}"))?;
    let hosts = Path::new(String::from_utf8_lossy(&sysroot.stdout).trim()).join("lib/rustlib");
    let beside = std::fs::read_dir(&hosts).into_iter().flatten().flatten().map(|host| host.path().join("bin").join(name));
    if let Some(found) = beside.into_iter().find(|path| path.exists()) {
        return Ok(found);
    }
    match Command::new(name).arg("--version").output() {
        Ok(_) => Ok(name.into()),
        Err(_) => Err(format!(
            "{name} is missing: `rustup component add llvm-tools`, or name one of the compiler's LLVM version (`rustc -vV`) by {variable}"
        )),
    }
}

/// What a program prints, if it succeeds.
fn printed(program: &Path, arguments: &[&OsStr]) -> Result<String, String> {
    let name = program.display();
    let output = Command::new(program).args(arguments).current_dir(root()).output().map_err(|e| format!("{name}: {e}"))?;
    if output.status.success() {
        String::from_utf8(output.stdout).map_err(|e| format!("{name}: {e}"))
    } else {
        Err(format!("{name}: {}", String::from_utf8_lossy(&output.stderr)))
    }
}

/// Counts by line and by the first line of a function, of one file.
#[derive(Default)]
struct Counted {
    lines: BTreeMap<usize, u64>,
    functions: BTreeMap<usize, u64>,
}

/// The counts of the core's files, without the tests that stand at their ends.
fn counted(lcov: &str) -> Result<BTreeMap<String, (Vec<String>, Counted)>, String> {
    let mut files: BTreeMap<String, (Vec<String>, Counted)> = BTreeMap::new();
    let (mut file, mut begins): (Option<String>, BTreeMap<String, usize>) = (None, BTreeMap::new());
    let number = |text: &str| text.parse::<u64>().map_err(|e| format!("{text}: {e}"));
    for line in lcov.lines() {
        let Some((key, rest)) = line.split_once(':') else { continue };
        if key == "SF" {
            begins.clear();
            file = rest.split_once("crates/flamewright/src/").map(|(_, name)| name.to_owned()).filter(|name| !name.ends_with("tests.rs"));
            if let Some(name) = &file {
                let path = root().join("crates/flamewright/src").join(name);
                let text = std::fs::read_to_string(&path).map_err(|e| format!("{}: {e}", path.display()))?;
                let source = text.lines().take_while(|line| !line.starts_with("#[cfg(test)]") && !line.starts_with("#[cfg(all(test"));
                files.entry(name.clone()).or_insert_with(|| (source.map(str::to_owned).collect(), Counted::default()));
            }
        }
        let Some((source, found)) = file.as_ref().and_then(|name| files.get_mut(name)) else { continue };
        let Some((first, second)) = rest.split_once(',') else { continue };
        let mut add = |to_lines: bool, place: usize, count: u64| {
            if place <= source.len() {
                let counts = if to_lines { &mut found.lines } else { &mut found.functions };
                *counts.entry(place).or_default() += count;
            }
        };
        match key {
            "DA" => add(true, number(first)? as usize, number(second.split(',').next().unwrap_or(second))?),
            "FN" => {
                begins.insert(second.to_owned(), number(first)? as usize);
            }
            "FNDA" => {
                if let Some(place) = begins.get(second) {
                    add(false, *place, number(first)?);
                }
            }
            _ => {}
        }
    }
    Ok(files)
}

/// Runs the Rust checks of the core with counters and says what they do not reach.
pub(crate) fn measure() -> Outcome {
    let (cov, profdata) = (tool("LLVM_COV", "llvm-cov")?, tool("LLVM_PROFDATA", "llvm-profdata")?);
    let folder = root().join(FOLDER);
    let profiles = folder.join("profiles");
    if profiles.exists() {
        std::fs::remove_dir_all(&profiles).map_err(|e| format!("{}: {e}", profiles.display()))?;
    }
    let with_counters = [
        "RUSTFLAGS=-C instrument-coverage".to_owned(),
        format!("CARGO_TARGET_DIR={}", folder.display()),
        format!("LLVM_PROFILE_FILE={}", profiles.join("%p-%m.profraw").display()),
    ];
    let counting = |arguments: &[&str]| {
        let words: Vec<&str> = with_counters.iter().map(String::as_str).chain(arguments.iter().copied()).collect();
        run("", "env", &words)
    };
    counting(&[&["cargo"], TESTS.as_slice()].concat())?;
    counting(&["cargo", "build", "--locked", "-p", "xtask"])?;
    // The generator computes every value of the validation report and every example.
    let generator = folder.join("debug/xtask").display().to_string();
    counting(&[&generator, "check-generated"])?;

    let mut binaries = vec![generator];
    let built = Command::new("cargo")
        .args(TESTS)
        .args(["--no-run", "--message-format=json"])
        .envs(with_counters.iter().filter_map(|pair| pair.split_once('=')))
        .current_dir(root())
        .output()
        .map_err(|e| format!("cargo: {e}"))?;
    for line in String::from_utf8_lossy(&built.stdout).lines() {
        if let Some((path, _)) = line.split_once("\"executable\":\"").and_then(|(_, rest)| rest.split_once('"')) {
            binaries.push(path.to_owned());
        }
    }
    let merged = folder.join("merged.profdata");
    let raw = std::fs::read_dir(&profiles).map_err(|e| format!("{}: {e}", profiles.display()))?.flatten().map(|entry| entry.path());
    let raw: Vec<PathBuf> = raw.collect();
    let mut arguments: Vec<&OsStr> = ["merge", "-sparse", "-o"].map(OsStr::new).to_vec();
    arguments.push(merged.as_os_str());
    arguments.extend(raw.iter().map(|path| path.as_os_str()));
    printed(&profdata, &arguments)?;
    let profile = format!("-instr-profile={}", merged.display());
    let mut arguments = vec![OsStr::new("export"), OsStr::new("-format=lcov"), OsStr::new(&profile), OsStr::new(&binaries[0])];
    arguments.extend(binaries[1..].iter().flat_map(|path| [OsStr::new("-object"), OsStr::new(path)]));
    let lcov = printed(&cov, &arguments)?;

    let (mut untested, mut lines, mut functions) = (String::new(), [0_usize; 2], [0_usize; 2]);
    for (name, (source, found)) in counted(&lcov)? {
        lines[0] += found.lines.values().filter(|count| **count > 0).count();
        lines[1] += found.lines.len();
        functions[0] += found.functions.values().filter(|count| **count > 0).count();
        functions[1] += found.functions.len();
        for (place, _) in found.lines.iter().filter(|(_, count)| **count == 0) {
            let _ = writeln!(untested, "{name}:{place}: {}", source[place - 1].trim());
        }
    }
    let list = folder.join("untested.txt");
    std::fs::write(&list, untested).map_err(|e| format!("{}: {e}", list.display()))?;
    for (what, [reached, all]) in [("lines", lines), ("functions", functions)] {
        println!("{what} of the core reached: {reached} of {all}, {:.1} %", 100.0 * reached as f64 / all.max(1) as f64);
    }
    println!("the lines that are not: {FOLDER}/untested.txt");
    Ok(())
}
