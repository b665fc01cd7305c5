//! The checks of the C face: built, installed outside the source tree, and used from there.

mod every;
mod install;

pub(crate) use install::install;

use crate::steps::{Outcome, root};
use flamewright::judgement::Policy;
use flamewright::node::Node;
use flamewright::visit::{Visit, assess};
use std::fs;
use std::path::PathBuf;
use std::process::Command;

/// What both languages are compiled with.
const STRICT: &[&str] = &["-Wall", "-Wextra", "-Wpedantic", "-Werror", "-O1", "-g"];
const C11: &[&str] = &["-std=c11"];
const CPP17: &[&str] = &["-std=c++17"];
const SANITIZE: &[&str] = &["-fsanitize=address,undefined", "-fno-sanitize-recover=all"];

/// The invented visit that the examples assess, and the policy.
const DEMO: [&str; 2] = ["examples/visits/village_hall.toml", "examples/visits/example_policy.toml"];

/// An installed library and a place to build programs against it.
struct Bench {
    folder: PathBuf,
    prefix: PathBuf,
    arrow: bool,
}

/// Every check of the C face; `seconds` of fuzzing.
pub(crate) fn test(seconds: u32) -> Outcome {
    let folder = std::env::temp_dir().join(format!("flamewright-c-{}", std::process::id()));
    let bench = Bench { prefix: folder.join("prefix"), folder, arrow: false };
    install(&bench.prefix, false, false)?;
    bench.symbols()?;
    bench.interface()?;
    fs::write(bench.folder.join("every.c"), every::table()?).map_err(|e| e.to_string())?;

    let cases = bench.c("cases", &["bindings/c/tests/cases.c"], &[])?;
    bench.run(&[&cases])?;
    let conformance = bench.c("conformance", &["bindings/c/tests/conformance.c", "every.c"], &["-pthread"])?;
    bench.run(&[&conformance])?;
    let fuzz = bench.c("fuzz", &["bindings/c/tests/fuzz.c", "every.c"], &[])?;
    let visit = root().join(DEMO[0]).display().to_string();
    bench.run(&[&fuzz, &seconds.to_string(), "20261125", &visit])?;
    bench.valgrind(&[&cases])?;
    bench.valgrind(&[&fuzz, "1"])?;
    bench.sanitized()?;

    bench.link_statically()?;
    bench.examples()?;
    bench.arrow()?;
    fs::remove_dir_all(&bench.folder).map_err(|e| e.to_string())
}

fn found(program: &str) -> bool {
    Command::new(program).arg("--version").output().is_ok_and(|o| o.status.success())
}

/// Says what is left out for want of a program; only the compiler and Rust are required.
fn skip(what: &str, program: &str) {
    println!("==> SKIPPED: {what}: {program} is not installed");
}

/// Runs a program and gives what it printed.
fn output(program: &str, arguments: &[&str]) -> Result<String, String> {
    let said = Command::new(program).args(arguments).output().map_err(|e| format!("{program}: {e}"))?;
    if !said.status.success() {
        return Err(format!("{program} {}: {}", arguments.join(" "), String::from_utf8_lossy(&said.stderr)));
    }
    Ok(String::from_utf8_lossy(&said.stdout).into_owned())
}

impl Bench {
    fn lib(&self) -> PathBuf {
        self.prefix.join("lib")
    }

    /// Compiles sources (from the source tree, or from the bench's own folder) with `flags` for linking.
    fn compile(&self, compiler: &str, program: &str, sources: &[&str], flags: &[&[&str]]) -> Result<String, String> {
        let made = self.folder.join(program).display().to_string();
        let mut arguments: Vec<String> = STRICT.iter().chain(flags.iter().copied().flatten()).map(ToString::to_string).collect();
        arguments.extend(["-I".to_owned(), root().join("bindings/c/tests").display().to_string(), "-o".to_owned(), made.clone()]);
        for source in sources {
            let below = if source.contains('/') { root() } else { self.folder.clone() };
            arguments.push(below.join(source).display().to_string());
        }
        arguments.extend(self.link_flags()?);
        arguments.push("-lm".to_owned());
        println!("==> {compiler} {program}");
        let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
        output(compiler, &arguments)?;
        Ok(made)
    }

    /// How to find and link the installed library: asked of pkg-config, as a user would.
    fn link_flags(&self) -> Result<Vec<String>, String> {
        let lib = self.lib().display().to_string();
        let mut flags = vec![format!("-Wl,-rpath,{lib}")];
        if found("pkg-config") {
            let asked = Command::new("pkg-config")
                .args(["--cflags", "--libs", "flamewright"])
                .env("PKG_CONFIG_PATH", self.lib().join("pkgconfig"))
                .output()
                .map_err(|e| e.to_string())?;
            if !asked.status.success() {
                return Err(format!("pkg-config: {}", String::from_utf8_lossy(&asked.stderr)));
            }
            flags.extend(String::from_utf8_lossy(&asked.stdout).split_whitespace().map(str::to_owned));
        } else {
            flags.extend([format!("-I{}", self.prefix.join("include").display()), format!("-L{lib}"), "-lflamewright".to_owned()]);
        }
        Ok(flags)
    }

    fn c(&self, program: &str, sources: &[&str], flags: &[&str]) -> Result<String, String> {
        self.compile("cc", program, sources, &[C11, flags])
    }

    /// Runs a program from the bench's own folder.
    fn run(&self, words: &[&str]) -> Outcome {
        let name = words.iter().map(|w| w.rsplit('/').next().unwrap_or(w)).collect::<Vec<_>>().join(" ");
        println!("==> {name}");
        let (program, arguments) = words.split_first().ok_or("nothing to run")?;
        let status = Command::new(program)
            .args(arguments)
            .current_dir(&self.folder)
            .status()
            .map_err(|e| format!("{name}: cannot be started: {e}"))?;
        if status.success() { Ok(()) } else { Err(format!("{name}: failed ({status})")) }
    }

    fn valgrind(&self, words: &[&str]) -> Outcome {
        if !found("valgrind") {
            skip("memory check", "valgrind");
            return Ok(());
        }
        let strict = ["valgrind", "--quiet", "--error-exitcode=9", "--leak-check=full", "--show-leak-kinds=definite,indirect,possible"];
        self.run(&[&strict[..], words].concat())
    }

    /// The C tests with the C compiler's sanitizers, where it has them.
    fn sanitized(&self) -> Outcome {
        let probe = self.folder.join("probe.c");
        fs::write(&probe, "int main(void) { return 0; }\n").map_err(|e| e.to_string())?;
        let (source, made) = (probe.display().to_string(), self.folder.join("probe").display().to_string());
        if output("cc", &[SANITIZE, &[&source, "-o", &made]].concat()).is_err() {
            skip("sanitizers", "the sanitizer runtime of cc");
            return Ok(());
        }
        let cases = self.compile("cc", "cases-sanitized", &["bindings/c/tests/cases.c"], &[C11, SANITIZE])?;
        self.run(&[&cases])?;
        let fuzz = self.compile("cc", "fuzz-sanitized", &["bindings/c/tests/fuzz.c", "every.c"], &[C11, SANITIZE])?;
        self.run(&[&fuzz, "2", "7", &root().join(DEMO[0]).display().to_string()])
    }

    /// Only names with `fw_` are visible, all of them are declared, and the library is named after its interface.
    fn symbols(&self) -> Outcome {
        if cfg!(not(target_os = "linux")) {
            skip("exported symbols", "nm for ELF");
            return Ok(());
        }
        let library = self.lib().join("libflamewright.so").display().to_string();
        if !found("nm") || !found("readelf") {
            skip("exported symbols", "nm or readelf");
            return Ok(());
        }
        let listed = output("nm", &["-D", "--defined-only", "--format=posix", &library])?;
        let mut exported: Vec<&str> = listed.lines().filter_map(|l| l.split_whitespace().next()).collect();
        exported.sort_unstable();
        let header = fs::read_to_string(root().join("bindings/c/include/flamewright.h")).map_err(|e| e.to_string())?;
        let mut declared = crate::generate::abi::functions_of(&header);
        declared.retain(|name| self.arrow || !name.contains("arrow"));
        if exported != declared {
            return Err(format!("exported and declared differ:\n  exported: {exported:?}\n  declared: {declared:?}"));
        }
        let soname = format!("[libflamewright.so.{}]", install::abi_version()?);
        if !output("readelf", &["-d", &library])?.lines().any(|l| l.contains("SONAME") && l.contains(&soname)) {
            return Err(format!("the SONAME is not {soname}"));
        }
        println!("==> {} exported symbols, each declared in the header; SONAME {soname}", exported.len());
        Ok(())
    }

    /// The library with Arrow, installed beside the one without: record batches made by hand.
    fn arrow(&self) -> Outcome {
        let bench = Self { folder: self.folder.clone(), prefix: self.folder.join("prefix-arrow"), arrow: true };
        install(&bench.prefix, false, true)?;
        bench.symbols()?;
        let arrow = bench.c("arrow", &["bindings/c/tests/arrow.c"], &["-DFLAMEWRIGHT_ARROW"])?;
        bench.run(&[&arrow])?;
        bench.valgrind(&[&arrow])
    }

    /// The compiler sees the interface that was promised.
    fn interface(&self) -> Outcome {
        crate::generate::abi::check()?;
        if cfg!(target_pointer_width = "64") {
            fs::write(self.folder.join("abi.c"), crate::generate::abi::program()).map_err(|e| e.to_string())?;
            self.c("abi", &["abi.c"], &[])?;
        }
        Ok(())
    }

    /// A program that carries the library in itself runs where it is not installed.
    fn link_statically(&self) -> Outcome {
        let made = self.folder.join("cases-static").display().to_string();
        let package = fs::read_to_string(self.lib().join("pkgconfig/flamewright.pc")).map_err(|e| e.to_string())?;
        let private = package.lines().find_map(|l| l.strip_prefix("Libs.private:")).ok_or("flamewright.pc names no private libraries")?;
        let source = root().join("bindings/c/tests/cases.c").display().to_string();
        let include = format!("-I{}", self.prefix.join("include").display());
        let library = self.lib().join("libflamewright.a").display().to_string();
        println!("==> cc cases-static");
        let tests = format!("-I{}", root().join("bindings/c/tests").display());
        let own = [&include, &tests, "-o", &made, &source, &library, "-lm"];
        output("cc", &[STRICT, C11, &own, &private.split_whitespace().collect::<Vec<_>>()].concat())?;
        self.run(&[&made])
    }

    /// The demo visit, assessed by the C example, reads as the Rust library writes it.
    fn visit(&self) -> Outcome {
        let program = self.c("assess_visit", &["examples/c/assess_visit.c"], &[])?;
        let paths = DEMO.map(|path| root().join(path).display().to_string());
        let printed = output(&program, &[&paths[0], &paths[1]])?;
        let read =
            |path: &str| fs::read_to_string(path).map_err(|e| e.to_string()).and_then(|t| Node::from_toml(&t).map_err(|e| e.to_string()));
        let visit = Visit::read(&read(&paths[0])?).map_err(|e| e.to_string())?;
        let policy = Policy::read(&read(&paths[1])?).map_err(|e| e.to_string())?;
        if printed.trim_end() != assess(visit, Some(policy)).to_text().trim_end() {
            return Err(format!("the C library assesses the demo visit otherwise than the Rust library:\n{printed}"));
        }
        println!("==> assess_visit: as the Rust library, {} lines", printed.lines().count());
        Ok(())
    }

    fn examples(&self) -> Outcome {
        let c = self.c("example-c", &["examples/c/gas_and_water.c"], &[])?;
        self.run(&[&c])?;
        self.visit()?;
        if found("c++") {
            let cpp = self.compile("c++", "example-cpp", &["examples/cpp/gas_and_water.cpp"], &[CPP17])?;
            self.run(&[&cpp])?;
            let wrapper = self.compile("c++", "wrapper", &["bindings/c/tests/wrapper.cpp"], &[CPP17])?;
            self.run(&[&wrapper])?;
        } else {
            skip("C++ example and wrapper", "c++");
        }
        if found("python3") {
            let script = root().join("examples/ctypes/gas_and_water.py").display().to_string();
            let shared = self.lib().join("libflamewright.so");
            self.run(&["python3", &script, &shared.display().to_string()])?;
        } else {
            skip("ctypes example", "python3");
        }
        Ok(())
    }
}
