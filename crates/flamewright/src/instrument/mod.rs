//! The instruments of a visit: what the reading of a gauge, a probe, a meter or an analyser means.

mod absolute_pressure;
mod analyser_reading;
mod flame_supervision;
mod inclined_gauge;
mod liquid_column;
mod local_gravity;
mod platinum_resistance;
mod platinum_temperature;
mod thermistor_beta;
mod thermistor_check;
mod thermistor_fit;
mod thermistor_temperature;
mod thermocouple_temperature;
mod thermocouple_voltage;
mod thermostat_differential;
mod thermostat_test;
mod u_gauge;

mod manometer;
mod resistance_thermometer;
mod thermistor;
mod thermocouple;
mod thermostat;

pub use absolute_pressure::*;
pub use analyser_reading::*;
pub use flame_supervision::*;
pub use inclined_gauge::*;
pub use liquid_column::{ColumnPressure, ColumnReading, LiquidColumn};
pub use local_gravity::*;
pub use manometer::GaugeLiquid;
pub use platinum_resistance::*;
pub use platinum_temperature::{PlatinumGrade, PlatinumReading, PlatinumTemperature, PlatinumThermometer};
pub use resistance_thermometer::{PlatinumClass, PlatinumConstruction};
pub use thermistor::ThermistorCurve;
pub use thermistor_beta::{BetaOfPoints, BetaReading, BetaTemperature, ThermistorBeta, ThermistorBetaOfPoints, TwoPoints};
pub use thermistor_check::*;
pub use thermistor_fit::*;
pub use thermistor_temperature::*;
pub use thermocouple::{ThermocoupleClass, ThermocoupleType};
pub use thermocouple_temperature::{Thermocouple, ThermocoupleGrade, ThermocoupleReading, ThermocoupleTemperature};
pub use thermocouple_voltage::*;
pub use thermostat_differential::{ThermostatDifference, ThermostatDifferential, ThermostatReadings};
pub use thermostat_test::*;
pub use u_gauge::*;

#[cfg(test)]
mod tests;
