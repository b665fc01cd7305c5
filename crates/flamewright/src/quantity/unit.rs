//! Units as data: how a value in coherent SI units is shown.

/// A unit: the SI value is the shown value times `factor`, plus `offset`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unit {
    /// As it is written after the number.
    pub symbol: &'static str,
    /// SI value of one of it.
    pub factor: f64,
    /// SI value of its zero.
    pub offset: f64,
    /// Exponents of length, mass, time, current, temperature, amount, luminous intensity.
    pub dimension: [i8; 7],
}

/// kW
pub const KILOWATT: Unit = Unit { symbol: "kW", factor: 1e3, offset: 0.0, dimension: [2, 1, -3, 0, 0, 0, 0] };
/// %
pub const PERCENT: Unit = Unit { symbol: "%", factor: 1e-2, offset: 0.0, dimension: [0; 7] };
/// °C
pub const DEGREE_CELSIUS: Unit = Unit { symbol: "°C", factor: 1.0, offset: 273.15, dimension: [0, 0, 0, 0, 1, 0, 0] };
/// MJ/m³
pub const MEGAJOULE_PER_CUBIC_METRE: Unit = Unit { symbol: "MJ/m³", factor: 1e6, offset: 0.0, dimension: [-1, 1, -2, 0, 0, 0, 0] };
