//! The instruments of a visit: what the reading of a gauge, a probe, a meter or an analyser means.

pub mod analyser;
pub mod manometer;
pub mod resistance_thermometer;
pub mod thermistor;
pub mod thermocouple;
pub mod thermostat;

#[cfg(test)]
mod tests;
