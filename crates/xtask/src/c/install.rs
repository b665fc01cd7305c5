//! Installs the C face below a prefix, as other build systems expect to find it.

use crate::steps::{Outcome, root, run};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The library's file name and the link that linkers look for.
struct Names {
    file: String,
    link: &'static str,
}

fn names() -> Result<Names, String> {
    let version = abi_version()?;
    Ok(if cfg!(target_os = "macos") {
        Names { file: format!("libflamewright.{version}.dylib"), link: "libflamewright.dylib" }
    } else {
        Names { file: format!("libflamewright.so.{version}"), link: "libflamewright.so" }
    })
}

/// `FW_ABI_VERSION`, from where it is written.
pub(super) fn abi_version() -> Result<u32, String> {
    let text = fs::read_to_string(root().join("bindings/c/src/abi_version.rs")).map_err(|e| e.to_string())?;
    let number = text.split("u32 = ").nth(1).and_then(|rest| rest.split(';').next()).and_then(|n| n.parse().ok());
    number.ok_or_else(|| "FW_ABI_VERSION cannot be read from abi_version.rs".to_owned())
}

/// Builds the library and puts it, its headers and its package files below `prefix`.
pub(crate) fn install(prefix: &Path, release: bool, arrow: bool) -> Outcome {
    if cfg!(windows) {
        return Err("installing is written for systems with cc, pkg-config and shared libraries by soname; on Windows take \
                    flamewright.dll and the headers from the build"
            .to_owned());
    }
    let profile: &[&str] = if release { &["--release"] } else { &[] };
    let features: &[&str] = if arrow { &["--features", "arrow"] } else { &[] };
    run("", "cargo", &[&["build", "--package", "flamewright-c", "--locked"], profile, features].concat())?;
    let built = target().join(if release { "release" } else { "debug" });
    let names = names()?;
    let include = prefix.join("include");
    let lib = prefix.join("lib");
    for folder in [&include, &lib.join("pkgconfig"), &lib.join("cmake/flamewright")] {
        fs::create_dir_all(folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    }
    for header in ["flamewright.h", "flamewright.hpp"] {
        copy(&root().join("bindings/c/include").join(header), &include.join(header))?;
    }
    copy(&built.join(names.link), &lib.join(&names.file))?;
    copy(&built.join("libflamewright.a"), &lib.join("libflamewright.a"))?;
    let link = lib.join(names.link);
    if link.is_symlink() || link.exists() {
        fs::remove_file(&link).map_err(|e| format!("{}: {e}", link.display()))?;
    }
    #[cfg(unix)]
    std::os::unix::fs::symlink(&names.file, &link).map_err(|e| format!("{}: {e}", link.display()))?;

    let private = static_libraries()?;
    let fill = |template: &str| -> Result<String, String> {
        let text = fs::read_to_string(root().join("bindings/c/packaging").join(template)).map_err(|e| format!("{template}: {e}"))?;
        Ok(text
            .replace("@VERSION@", env!("CARGO_PKG_VERSION"))
            .replace("@DEFINES@", if arrow { "-DFLAMEWRIGHT_ARROW" } else { "" })
            .replace("@DEFINES_LIST@", if arrow { "FLAMEWRIGHT_ARROW" } else { "" })
            .replace("@SHARED@", &names.file)
            .replace("@PRIVATE@", &private.join(" "))
            .replace("@PRIVATE_LIST@", &private.join(";")))
    };
    for (template, file) in [
        ("flamewright.pc.in", "pkgconfig/flamewright.pc"),
        ("flamewright-config.cmake.in", "cmake/flamewright/flamewright-config.cmake"),
        ("flamewright-config-version.cmake.in", "cmake/flamewright/flamewright-config-version.cmake"),
    ] {
        fs::write(lib.join(file), fill(template)?).map_err(|e| format!("{file}: {e}"))?;
    }
    println!("installed below {}", prefix.display());
    Ok(())
}

fn copy(from: &Path, to: &Path) -> Outcome {
    // A library in use may not be overwritten, but may be replaced.
    let _ = fs::remove_file(to);
    fs::copy(from, to).map(drop).map_err(|e| format!("{} to {}: {e}", from.display(), to.display()))
}

/// Where cargo puts what it builds.
pub(super) fn target() -> PathBuf {
    std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root().join("target"), PathBuf::from)
}

/// The system's libraries that a program needs which links flamewright statically, as the compiler says.
fn static_libraries() -> Result<Vec<String>, String> {
    let probe = target().join("c/native_libraries");
    fs::create_dir_all(&probe).map_err(|e| e.to_string())?;
    let source = probe.join("empty.rs");
    fs::write(&source, "").map_err(|e| e.to_string())?;
    let said = Command::new("rustc")
        .args(["--crate-type=staticlib", "--print=native-static-libs", "--edition=2024", "--out-dir"])
        .arg(&probe)
        .arg(&source)
        .output()
        .map_err(|e| format!("rustc: {e}"))?;
    let said = String::from_utf8_lossy(&said.stderr).into_owned();
    let libraries = said.lines().find_map(|l| l.split("native-static-libs:").nth(1)).ok_or_else(|| format!("rustc did not say: {said}"))?;
    let mut list: Vec<String> = Vec::new();
    for library in libraries.split_whitespace() {
        if list.last().is_none_or(|last| last != library) {
            list.push(library.to_owned());
        }
    }
    Ok(list)
}
