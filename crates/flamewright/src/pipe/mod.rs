//! Heat lost by a pipe run, and what becomes of the water in it.

pub mod surface;
