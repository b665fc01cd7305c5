//! Flue gas analysis: what a reading in the flue says of the combustion and of the heat lost.

pub mod emission;
pub mod kernel;
pub mod siegert;

#[cfg(test)]
mod tests;
