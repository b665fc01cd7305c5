//! One set of elementary functions for every build and every face.
//!
//! The host's maths library and `libm` differ in the last bit, and differ between hosts. All
//! formulas call these, so that a result is the same to the bit wherever it is computed.

pub(crate) use libm::{acosh, asinh, atan, cbrt, ceil, cos, cosh, erf, exp, expm1, floor, log as ln, log1p as ln_1p, log10, pow, round, sin, sinh, sqrt, tanh, tgamma, trunc};
