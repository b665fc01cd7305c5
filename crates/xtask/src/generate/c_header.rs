//! `bindings/c/include/flamewright.h`: made by cbindgen from the sources of the C face.

use crate::steps::root;

/// What a caller must know, in front of the declarations.
const CONVENTIONS: &str = include_str!("conventions.txt");

/// The sources in the order in which their declarations shall stand.
const SOURCES: [&str; 9] = ["version", "status", "last_error", "context", "call", "arrow", "json", "visit", "functions"];

pub(crate) fn make() -> Result<String, String> {
    let folder = root().join("bindings/c/src");
    let mut builder = cbindgen::Builder::new()
        .with_config(cbindgen::Config {
            language: cbindgen::Language::C,
            cpp_compat: true,
            style: cbindgen::Style::Type,
            usize_is_size_t: true,
            documentation_style: cbindgen::DocumentationStyle::C99,
            line_length: 110,
            defines: [("feature = arrow".to_owned(), "FLAMEWRIGHT_ARROW".to_owned())].into(),
            tab_width: 4,
            ..cbindgen::Config::default()
        })
        .with_include_guard("FLAMEWRIGHT_H")
        .with_header(CONVENTIONS.trim_end())
        .with_src(folder.join("abi_version.rs"))
        .with_src(folder.join("guard.rs"));
    for source in SOURCES {
        builder = builder.with_src(folder.join(format!("{source}.rs")));
    }
    let bindings = builder.generate().map_err(|e| format!("flamewright.h: {e}"))?;
    let mut header = Vec::new();
    bindings.write(&mut header);
    String::from_utf8(header).map_err(|e| format!("flamewright.h: {e}"))
}
