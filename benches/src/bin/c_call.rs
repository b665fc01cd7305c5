//! What a call through the C library costs over the same call in Rust, in one process.
//!
//! `cargo xtask install-c PREFIX`, then in this folder
//! `cargo run --release --bin c_call -- PREFIX/lib/libflamewright.so`
#![allow(unsafe_code)]

use flamewright::calculation::{Calculation, Context, Settings};
use flamewright::node::Node;
use flamewright::record::Record;
use flamewright_benches::{Contender, race, report};
use std::ffi::{CString, c_char, c_int, c_void};
use std::hint::black_box;
use std::ptr::{null, null_mut};

const CALLS: usize = 20_000;
const ROUNDS: usize = 200;
/// Nanoseconds a call may cost over the Rust call.
const GOAL: f64 = 20.0;

unsafe extern "C" {
    fn dlopen(path: *const c_char, flags: c_int) -> *mut c_void;
    fn dlsym(library: *mut c_void, name: *const c_char) -> *mut c_void;
}

type Bare = unsafe extern "C" fn(*const f64, *mut f64, *mut c_void) -> c_int;
type InContext = unsafe extern "C" fn(*const c_void, *const f64, *mut f64, *mut c_void) -> c_int;

struct Library(*mut c_void);

impl Library {
    fn symbol(&self, name: &str) -> *mut c_void {
        let name = CString::new(name).expect("a name has no NUL");
        // SAFETY: the library was opened; the name ends with a NUL.
        let found = unsafe { dlsym(self.0, name.as_ptr()) };
        assert!(!found.is_null(), "{name:?} is not in the library");
        found
    }
}

/// The excess of the C call of `C`, with default settings, at `reading`.
fn excess<C: Calculation>(library: &Library, reading: &[(&str, &str)]) -> f64 {
    let calculation = C::from_settings(&Settings::new(&Node::Null, <C as Context>::SETTINGS).expect("settings")).expect("default settings");
    let input = C::Input::read(reading.iter().copied()).expect("a reading");
    let values = input.to_array();
    let expected = calculation.evaluate(&input).expect("a result").output.to_array();
    let mut made = expected;
    made.as_mut().fill(0.0);
    let address = library.symbol(&format!("fw_{}", C::INFO.name));
    let bare = C::SETTINGS.is_empty();
    let call = |input: *const f64, output: *mut f64| {
        // SAFETY: the header declares these functions so; input and output are as long as its structs.
        unsafe {
            if bare {
                std::mem::transmute::<*mut c_void, Bare>(address)(input, output, null_mut())
            } else {
                std::mem::transmute::<*mut c_void, InContext>(address)(null(), input, output, null_mut())
            }
        }
    };
    assert_eq!(call(values.as_ref().as_ptr(), made.as_mut().as_mut_ptr()), 0);
    assert!(
        made.as_ref().iter().zip(expected.as_ref()).all(|(a, b)| a.to_bits() == b.to_bits() || a.is_nan() && b.is_nan()),
        "the same bits"
    );

    let mut contenders = [
        Contender {
            name: "Rust: evaluate",
            body: Box::new(|| {
                for _ in 0..CALLS {
                    let _ = black_box(calculation.evaluate(black_box(&input)));
                }
            }),
        },
        Contender {
            name: "C: the function of the calculation",
            body: Box::new(|| {
                for _ in 0..CALLS {
                    black_box(call(black_box(&values).as_ref().as_ptr(), black_box(&mut made).as_mut().as_mut_ptr()));
                }
            }),
        },
    ];
    let times = race(&mut contenders, CALLS, ROUNDS);
    println!("{}", C::INFO.name);
    report(&contenders, &times);
    times[1] - times[0]
}

fn main() {
    let path = std::env::args().nth(1).expect("the path of libflamewright.so is needed");
    let path = CString::new(path).expect("a path has no NUL");
    // SAFETY: the path ends with a NUL; 2 is RTLD_NOW.
    let library = Library(unsafe { dlopen(path.as_ptr(), 2) });
    assert!(!library.0.is_null(), "the library cannot be opened");
    let worst = [
        excess::<flamewright::water::LiquidWater>(&library, &[("temperature", "60 degC"), ("pressure", "2 bar")]),
        excess::<flamewright::meter::GasRate>(
            &library,
            &[
                ("volume", "0.1 m3"),
                ("time", "125 s"),
                ("gas_pressure", "21 mbar(g)"),
                ("gas_temperature", "12 degC"),
                ("barometric_pressure", "1004 mbar"),
                ("gross_calorific_value", "38.9 MJ/m3"),
            ],
        ),
    ]
    .into_iter()
    .fold(f64::NEG_INFINITY, f64::max);
    println!("a call through C costs at most {worst:.1} ns over the Rust call; goal {GOAL} ns");
    assert!(worst <= GOAL);
}
