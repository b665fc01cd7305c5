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

/// Readings drawn for each calculation in each of its settings.
const READINGS: usize = 24;

/// Writes the cases that the faces are compared by.
pub(crate) fn cases(file: &str) -> Outcome {
    let text = flamewright_trials::cases(READINGS);
    println!("==> {} calculations with settings in {file}", text.lines().count());
    std::fs::write(file, text).map_err(|e| format!("{file}: {e}"))
}

pub(crate) fn rust() -> Outcome {
    run("", "cargo", &["fmt", "--all", "--check"])?;
    run("", "cargo", &["clippy", "--workspace", "--all-targets", "--locked", "--", "-D", "warnings"])?;
    run("", "cargo", &["test", "--workspace", "--locked"])?;
    rustdoc()?;
    run("", "cargo", &["check", "-p", "flamewright", "--no-default-features", "--locked"])?;
    super::release::quick()?;
    super::generate::check()?;
    super::links::check()
}

/// Runs one target of the fuzzing, guided by coverage, from seeds that the library itself gives.
pub(crate) fn fuzz(name: &str, seconds: &str) -> Outcome {
    let target = flamewright_trials::fuzz::target(name).ok_or_else(|| format!("there is no target {name}"))?;
    let corpus = root().join("fuzz/corpus").join(name);
    std::fs::create_dir_all(&corpus).map_err(|e| format!("{}: {e}", corpus.display()))?;
    for (i, seed) in (target.seeds)().iter().enumerate() {
        std::fs::write(corpus.join(format!("seed-{i}")), seed).map_err(|e| format!("{}: {e}", corpus.display()))?;
    }
    let corpus = corpus.display().to_string();
    let limit = format!("-max_total_time={seconds}");
    let arguments = [
        &format!("FLAMEWRIGHT_TARGET={name}"),
        "cargo",
        "+nightly",
        "fuzz",
        "run",
        "any",
        &corpus,
        "--",
        &limit,
        "-timeout=20",
        "-rss_limit_mb=2048",
        "-print_final_stats=1",
    ];
    run("fuzz", "env", &arguments)
}

/// The documentation of the crates, with formulas set; a warning is an error.
pub(crate) fn rustdoc() -> Outcome {
    let header = root().join("crates/flamewright/docs-header.html");
    let flags = format!("build.rustdocflags=[\"-Dwarnings\", \"--html-in-header\", {:?}]", header.display().to_string());
    run("", "cargo", &["doc", "--workspace", "--no-deps", "--locked", "--config", &flags])
}

pub(crate) fn c() -> Outcome {
    super::c::test(3)
}

/// The wheel in a fresh environment with NumPy alone: what needs more says so, everything else works.
fn bare(wheel: &Path) -> Outcome {
    let environment = fresh("target/python-bare")?;
    run("", "python3", &["-m", "venv", "target/python-bare"])?;
    let python = environment.join("bin/python");
    run("", &python, &["-m", "pip", "install", "--quiet", "--disable-pip-version-check", &wheel.to_string_lossy()])?;
    run("bindings/python/tests", &python, &["-W", "error", "bare.py"])
}

/// Builds the source distribution, looks into it, and builds and tests a wheel from nothing but it.
pub(crate) fn sdist() -> Outcome {
    let maturin = root().join("target/python/bin/maturin");
    if !maturin.exists() {
        return Err("run `cargo xtask test python` first: it makes the environment".into());
    }
    let (made, place) = (fresh("target/sdist")?, std::env::temp_dir().join(format!("flamewright-sdist-{}", std::process::id())));
    run("bindings/python", &maturin, &["sdist", "--out", &made.to_string_lossy()])?;
    let archive = only(&made, "gz")?;
    let python = root().join("target/python/bin/python");
    run("bindings/python/tests", &python, &["contents.py", &archive.to_string_lossy()])?;
    std::fs::create_dir_all(&place).map_err(|e| format!("{}: {e}", place.display()))?;
    // By the standard way for a package with a build backend; unoptimised, since only building is tried.
    let outcome = std::process::Command::new(&python)
        .args(["-m", "pip", "wheel", "--quiet", "--no-deps", "--wheel-dir", "."])
        .arg(&archive)
        .current_dir(&place)
        .env("MATURIN_PEP517_ARGS", "--profile dev")
        .env("CARGO_TARGET_DIR", root().join("target"))
        .status()
        .map_err(|e| format!("pip wheel: {e}"))
        .and_then(|status| if status.success() { Ok(()) } else { Err(format!("pip wheel: failed ({status})")) })
        .and_then(|()| only(&place, "whl"))
        .and_then(|wheel| bare(&wheel));
    std::fs::remove_dir_all(&place).map_err(|e| format!("{}: {e}", place.display()))?;
    outcome
}

/// The path of a folder below the root that is not there yet, or not any more.
fn fresh(folder: &str) -> Result<PathBuf, String> {
    let path = root().join(folder);
    if path.exists() {
        std::fs::remove_dir_all(&path).map_err(|e| format!("{folder}: {e}"))?;
    }
    Ok(path)
}

/// The one file of a folder with an extension.
fn only(folder: &Path, extension: &str) -> Result<PathBuf, String> {
    let entries = std::fs::read_dir(folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    let mut found = entries.flatten().map(|e| e.path()).filter(|p| p.extension().is_some_and(|x| x == extension));
    found.next().ok_or_else(|| format!("{}: no .{extension} was made", folder.display()))
}

/// Makes a virtual environment, builds the wheel and installs it there; gives its Python and the wheel.
fn installed_wheel() -> Result<(PathBuf, PathBuf), String> {
    let environment = root().join("target/python");
    let python = environment.join("bin/python");
    if !python.exists() {
        run("", "python3", &["-m", "venv", "target/python"])?;
    }
    let pip =
        |arguments: &[&str]| run("", &python, &[&["-m", "pip", "install", "--quiet", "--disable-pip-version-check"], arguments].concat());
    pip(&["--requirement", "bindings/python/requirements-test.txt"])?;
    let wheels = fresh("target/wheels-tested")?;
    run("bindings/python", environment.join("bin/maturin"), &["build", "--release", "--locked", "--out", "../../target/wheels-tested"])?;
    let wheel = only(&wheels, "whl")?;
    pip(&["--force-reinstall", "--no-deps", &wheel.to_string_lossy()])?;
    Ok((python, wheel))
}

/// Runs the tests on the installed wheel and makes the documentation from it.
pub(crate) fn python() -> Outcome {
    let (python, wheel) = installed_wheel()?;
    run("bindings/python/tests", &python, &["contents.py", &wheel.to_string_lossy()])?;
    bare(&wheel)?;
    // For the test that all faces give the same bits.
    cases(&root().join("target/cases.jsonl").display().to_string())?;
    run("", "cargo", &["build", "-p", "flamewright-c", "--locked"])?;
    // Not in the source folder, so that the installed wheel is what is tested.
    run("bindings/python/tests", &python, &["-m", "pytest", "-q", "."])?;
    super::docs::build(&python)
}

pub(crate) fn docs() -> Outcome {
    super::docs::build(&installed_wheel()?.0)
}
