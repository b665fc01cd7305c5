//! Gas from the meter to the burner: pressure in the pipes, injectors, tightness and purging.

pub mod branches;
pub mod pipe_flow;
pub mod viscosity;

/// Standard acceleration of free fall, m/s2 (3rd CGPM 1901; ISO 80000-3).
pub(crate) const STANDARD_GRAVITY: f64 = 9.806_65;
