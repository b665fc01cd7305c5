//! The checks, one after the other; the first that fails ends the run.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Instant;

pub(crate) type Outcome = Result<(), String>;

/// The root of the repository.
pub(crate) fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").components().collect()
}

/// Runs `program` in the root (or `folder` below it) and fails unless it succeeds.
pub(crate) fn run(folder: &str, program: impl AsRef<std::ffi::OsStr>, arguments: &[&str]) -> Outcome {
    let name = format!("{} {}", Path::new(program.as_ref()).display(), arguments.join(" "));
    println!("==> {name}");
    let started = Instant::now();
    let status = Command::new(&program)
        .args(arguments)
        .current_dir(root().join(folder))
        .env_remove("RUSTUP_TOOLCHAIN_FORCE")
        .status()
        .map_err(|e| format!("{name}: cannot be started: {e}"))?;
    println!("    {:.1} s", started.elapsed().as_secs_f64());
    if status.success() { Ok(()) } else { Err(format!("{name}: failed ({status})")) }
}

pub(crate) fn all() -> Outcome {
    rust()?;
    c()?;
    python()?;
    println!("every check passed");
    Ok(())
}

pub(crate) fn rust() -> Outcome {
    run("", "cargo", &["fmt", "--all", "--check"])?;
    run("", "cargo", &["clippy", "--workspace", "--all-targets", "--locked", "--", "-D", "warnings"])?;
    run("", "cargo", &["test", "--workspace", "--locked"])?;
    run("", "cargo", &["doc", "--workspace", "--no-deps", "--locked"])?;
    run("", "cargo", &["check", "-p", "flamewright", "--no-default-features", "--locked"])?;
    super::generate::check()
}

pub(crate) fn c() -> Outcome {
    super::c::test(3)
}

/// Makes a virtual environment, builds the wheel, installs it there and runs the tests on it.
pub(crate) fn python() -> Outcome {
    let environment = root().join("target/python");
    let python = environment.join("bin/python");
    if !python.exists() {
        run("", "python3", &["-m", "venv", "target/python"])?;
    }
    let pip =
        |arguments: &[&str]| run("", &python, &[&["-m", "pip", "install", "--quiet", "--disable-pip-version-check"], arguments].concat());
    pip(&["--requirement", "bindings/python/requirements-test.txt"])?;
    let wheels = "target/wheels-tested";
    if root().join(wheels).exists() {
        std::fs::remove_dir_all(root().join(wheels)).map_err(|e| format!("{wheels}: {e}"))?;
    }
    run("bindings/python", environment.join("bin/maturin"), &["build", "--release", "--locked", "--out", "../../target/wheels-tested"])?;
    let entries = std::fs::read_dir(root().join(wheels)).map_err(|e| format!("{wheels}: {e}"))?;
    let wheel = entries.flatten().map(|e| e.path()).find(|p| p.extension().is_some_and(|x| x == "whl")).ok_or("no wheel was built")?;
    pip(&["--force-reinstall", "--no-deps", &wheel.to_string_lossy()])?;
    // For the test that both faces give the same bits.
    run("", "cargo", &["build", "-p", "flamewright-c", "--locked"])?;
    // Not in the source folder, so that the installed wheel is what is tested.
    run("bindings/python/tests", &python, &["-m", "pytest", "-q", "."])
}
