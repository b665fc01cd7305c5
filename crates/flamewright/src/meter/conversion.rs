//! Gas laws of metering on SI numbers.
use crate::math;

/// Pressure of the standard atmosphere at a geopotential altitude in m, Pa: ISO 2533:1975,
/// troposphere formula (constants from memory).
pub(super) fn standard_atmosphere(altitude: f64) -> f64 {
    101_325.0 * standard_pressure_ratio(altitude)
}

/// The same over the pressure at sea level.
pub(crate) fn standard_pressure_ratio(altitude: f64) -> f64 {
    const SEA_LEVEL_TEMPERATURE: f64 = 288.15;
    const LAPSE: f64 = 6.5e-3;
    const SPECIFIC_GAS_CONSTANT: f64 = 287.052_87;
    const GRAVITY: f64 = 9.806_65;
    let relative_temperature = 1.0 - LAPSE * altitude / SEA_LEVEL_TEMPERATURE;
    math::pow(relative_temperature, GRAVITY / (SPECIFIC_GAS_CONSTANT * LAPSE))
}

/// What UK billing law takes off the sea-level pressure of 1013.25 mbar at an altitude in m, Pa.
///
/// Gas (Calculation of Thermal Energy) Regulations 1996 (SI 1996/439), Schedule Part I: a table in
/// bands of 2.5 m whose printed values (3.005 mbar at 25 m, 12.021 at 100 m, 24.342 at 202.5 m) are
/// 0.120 205 mbar a metre to half a unit of their last figure; read in a public text copy.
pub(super) fn uk_deduction(altitude: f64) -> f64 {
    const DEDUCTION_PER_METRE: f64 = 12.0205;
    DEDUCTION_PER_METRE * altitude
}

/// Upper edge of the band of the UK table in which an altitude lies, m.
pub(super) fn uk_band(altitude: f64) -> f64 {
    const BAND: f64 = 2.5;
    // an altitude on an edge belongs to the band below it, also when rounding lifted it a little
    BAND * math::ceil(altitude / BAND - 1e-9)
}

/// A root sum of squares.
pub(super) fn root_of_squares<const N: usize>(parts: [f64; N]) -> f64 {
    math::sqrt(parts.iter().map(|part| part * part).sum())
}
