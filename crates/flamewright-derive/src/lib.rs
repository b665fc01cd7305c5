//! Macros of flamewright.
