//! Runs the target named by the environment variable `FLAMEWRIGHT_TARGET`.
#![no_main]

use flamewright_trials::fuzz::{Target, target};
use std::sync::LazyLock;

static TARGET: LazyLock<&'static Target> = LazyLock::new(|| {
    let name = std::env::var("FLAMEWRIGHT_TARGET").expect("FLAMEWRIGHT_TARGET names the target");
    target(&name).expect("FLAMEWRIGHT_TARGET names a target that there is")
});

libfuzzer_sys::fuzz_target!(|data: &[u8]| (TARGET.run)(data));
