//! `cargo xtask test` runs every check there is; `cargo xtask generate` writes the generated files.

mod c;
mod coverage;
mod docs;
mod generate;
mod links;
mod release;
mod steps;
mod validation;

use std::path::Path;
use std::process::ExitCode;

const HELP: &str = "cargo xtask test              every check: style, Rust, C, Python, generated files
cargo xtask test rust|c|python  the checks of one language
cargo xtask test sdist        build the Python source distribution, and a wheel from it alone
cargo xtask docs              the documentation site, in target/docs/html
cargo xtask docs PYTHON       the same with a Python that has flamewright and Sphinx already
cargo xtask rustdoc           the documentation of the crates, in target/doc
cargo xtask check-links       fail if a link in a Markdown file leads nowhere
cargo xtask generate          write the generated files
cargo xtask install-c PREFIX  build the C library for release and install it below PREFIX; with `arrow` behind it, with Arrow
cargo xtask fuzz-c SECONDS    the checks of C with so many seconds of random input
cargo xtask coverage          which lines of the core the Rust checks reach (llvm-cov and llvm-profdata)
cargo xtask cases FILE        the cases that the faces are compared by, with what Rust makes of them
cargo xtask fuzz TARGET SECONDS  one target of the fuzzing, guided by coverage (nightly, cargo-fuzz)
cargo xtask release           what a release promises besides its numbers (nightly, cargo-deny, cargo-public-api)
cargo xtask accept-api        promise the public interface of the core as it is now
cargo xtask accept-abi        promise the binary interface of the C library as it is now
cargo xtask check-generated   fail if a generated file is not what `generate` would write";

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let outcome = match words.as_slice() {
        ["test"] => steps::all(),
        ["test", "rust"] => steps::rust(),
        ["test", "c"] => steps::c(),
        ["test", "python"] => steps::python(),
        ["test", "sdist"] => steps::sdist(),
        ["rustdoc"] => steps::rustdoc(),
        ["docs"] => steps::docs(),
        ["docs", python] => docs::build(Path::new(python)),
        ["check-links"] => links::check(),
        ["cases", file] => steps::cases(file),
        ["coverage"] => coverage::measure(),
        ["release"] => release::all(),
        ["accept-api"] => release::accept(),
        ["fuzz", target, seconds] => steps::fuzz(target, seconds),
        ["fuzz-c", seconds] => seconds.parse().map_err(|e| format!("{seconds}: {e}")).and_then(c::test),
        ["install-c", prefix] => c::install(Path::new(prefix), true, false),
        ["install-c", prefix, "arrow"] => c::install(Path::new(prefix), true, true),
        ["accept-abi"] => generate::abi::accept(),
        ["generate"] => generate::write(),
        ["check-generated"] => generate::check(),
        _ => Err(HELP.to_owned()),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            eprintln!("{why}");
            ExitCode::FAILURE
        }
    }
}
