//! Names the shared library: `libflamewright.so.N`, where N is the version of the binary interface.
//! The version of the crate has no part in it, so that a program need not be linked anew after an
//! upgrade that keeps the interface.

include!("src/abi_version.rs");

fn main() {
    println!("cargo:rerun-if-changed=src/abi_version.rs");
    let system = std::env::var("CARGO_CFG_TARGET_OS").unwrap_or_default();
    match system.as_str() {
        "linux" | "android" | "freebsd" | "netbsd" | "openbsd" | "dragonfly" => {
            println!("cargo:rustc-cdylib-link-arg=-Wl,-soname,libflamewright.so.{FW_ABI_VERSION}");
        }
        "macos" => println!("cargo:rustc-cdylib-link-arg=-Wl,-install_name,@rpath/libflamewright.{FW_ABI_VERSION}.dylib"),
        _ => {}
    }
}
