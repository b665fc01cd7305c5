//! The generated files: each is made from the catalogue, checked in, and proved fresh by a check.

pub(crate) mod abi;
mod c_functions;
mod c_header;
pub(crate) mod calculations;
mod cpp_header;
mod face;
mod python_stub;

use super::steps::{Outcome, root};
use std::fs;
use std::path::PathBuf;

/// One generated file: its place below the root, and what makes its text.
type Generated = (&'static str, fn() -> Result<String, String>);

/// In this order: a later one may be made from an earlier one.
const FILES: &[Generated] = &[
    ("tests/VALIDATION.md", crate::validation::report::make),
    ("tests/VALIDATION.html", crate::validation::page::make),
    ("crates/flamewright/CALCULATIONS.md", calculations::make),
    ("crates/flamewright/schema/visit.schema.json", || Ok(flamewright::visit::record_schema().to_json() + "\n")),
    ("crates/flamewright/schema/assessment.schema.json", || Ok(flamewright::visit::assessment_schema().to_json() + "\n")),
    ("bindings/c/src/functions.rs", c_functions::make),
    ("bindings/c/include/flamewright.h", c_header::make),
    ("bindings/c/include/flamewright.hpp", cpp_header::make),
    ("bindings/c/abi.txt", abi::make),
    ("bindings/python/python/flamewright/__init__.pyi", python_stub::make),
];

fn place(file: &str) -> PathBuf {
    root().join(file)
}

pub(crate) fn write() -> Outcome {
    for (file, make) in FILES {
        let text = make()?;
        fs::write(place(file), text).map_err(|e| format!("{file}: {e}"))?;
        println!("wrote {file}");
    }
    Ok(())
}

pub(crate) fn check() -> Outcome {
    for (file, make) in FILES {
        let kept = fs::read_to_string(place(file)).map_err(|e| format!("{file}: {e}"))?;
        if kept != make()? {
            return Err(format!("{file} is not fresh: run `cargo xtask generate` and keep what it writes"));
        }
    }
    println!("{} generated files are fresh", FILES.len());
    Ok(())
}
