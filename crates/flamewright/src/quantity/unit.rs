//! Units: a table of names people write, and the reading of unit expressions made of them.
//!
//! Every factor is exact by definition or derived from exact ones, but for the units whose name states
//! a temperature or a mean, which are rounded in the source itself. Sources: SI Brochure (9th
//! edition) for SI and units accepted with it; NIST SP 811 (2008) Appendix B for the inch-pound
//! units, the conventional liquid columns and the Btu, therm and calorie of each kind.

use alloc::string::{String, ToString};

/// Exponents of length, mass, time, electric current, temperature, amount, luminous intensity.
pub type Dimension = [i8; 7];

/// The dimension of a plain number.
pub(crate) const NUMBER: Dimension = [0; 7];
pub(crate) const LENGTH: Dimension = [1, 0, 0, 0, 0, 0, 0];
pub(crate) const AREA: Dimension = [2, 0, 0, 0, 0, 0, 0];
pub(crate) const VOLUME: Dimension = [3, 0, 0, 0, 0, 0, 0];
pub(crate) const MASS: Dimension = [0, 1, 0, 0, 0, 0, 0];
pub(crate) const TIME: Dimension = [0, 0, 1, 0, 0, 0, 0];
pub(crate) const CURRENT: Dimension = [0, 0, 0, 1, 0, 0, 0];
pub(crate) const TEMPERATURE: Dimension = [0, 0, 0, 0, 1, 0, 0];
pub(crate) const AMOUNT: Dimension = [0, 0, 0, 0, 0, 1, 0];
pub(crate) const PRESSURE: Dimension = [-1, 1, -2, 0, 0, 0, 0];
pub(crate) const ENERGY: Dimension = [2, 1, -2, 0, 0, 0, 0];
pub(crate) const POWER: Dimension = [2, 1, -3, 0, 0, 0, 0];
pub(crate) const FORCE: Dimension = [1, 1, -2, 0, 0, 0, 0];
pub(crate) const POTENTIAL: Dimension = [2, 1, -3, -1, 0, 0, 0];
pub(crate) const RESISTANCE: Dimension = [2, 1, -3, -2, 0, 0, 0];
pub(crate) const ACCELERATION: Dimension = [1, 0, -2, 0, 0, 0, 0];
pub(crate) const FREQUENCY: Dimension = [0, 0, -1, 0, 0, 0, 0];

/// A unit for showing values: SI value = shown value × `factor` + `offset`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unit {
    /// The unit as printed, for instance `m³/h`.
    pub symbol: &'static str,
    /// SI units in one of this unit.
    pub factor: f64,
    /// SI value at zero of this unit; not zero only for degrees Celsius and Fahrenheit.
    pub offset: f64,
    /// What the unit measures.
    pub dimension: Dimension,
}

impl Unit {
    const fn new(symbol: &'static str, factor: f64, dimension: Dimension) -> Self {
        Self { symbol, factor, offset: 0.0, dimension }
    }

    /// The SI value of `shown` of this unit.
    #[must_use]
    pub const fn to_si(&self, shown: f64) -> f64 {
        shown * self.factor + self.offset
    }

    /// `si` expressed in this unit.
    #[must_use]
    pub const fn from_si(&self, si: f64) -> f64 {
        (si - self.offset) / self.factor
    }
}

/// Units that records show their fields in.
#[allow(missing_docs, reason = "each name is its own meaning")]
pub mod units {
    use super::*;

    const fn per(dimension: Dimension, divisor: Dimension) -> Dimension {
        let mut out = dimension;
        let mut i = 0;
        while i < 7 {
            out[i] -= divisor[i];
            i += 1;
        }
        out
    }
    const fn times(dimension: Dimension, other: Dimension) -> Dimension {
        per(dimension, per(NUMBER, other))
    }

    pub const ONE: Unit = Unit::new("", 1.0, NUMBER);
    pub const PERCENT: Unit = Unit::new("%", 0.01, NUMBER);
    pub const PPM: Unit = Unit::new("ppm", 1e-6, NUMBER);
    pub const METRE: Unit = Unit::new("m", 1.0, LENGTH);
    pub const MILLIMETRE: Unit = Unit::new("mm", 1e-3, LENGTH);
    pub const SQUARE_METRE: Unit = Unit::new("m²", 1.0, AREA);
    pub const SQUARE_MILLIMETRE: Unit = Unit::new("mm²", 1e-6, AREA);
    pub const SQUARE_CENTIMETRE: Unit = Unit::new("cm²", 1e-4, AREA);
    pub const CUBIC_METRE: Unit = Unit::new("m³", 1.0, VOLUME);
    pub const LITRE: Unit = Unit::new("L", 1e-3, VOLUME);
    pub const MILLILITRE: Unit = Unit::new("mL", 1e-6, VOLUME);
    pub const CUBIC_METRE_PER_HOUR: Unit = Unit::new("m³/h", 1.0 / 3600.0, per(VOLUME, TIME));
    pub const CUBIC_METRE_PER_SECOND: Unit = Unit::new("m³/s", 1.0, per(VOLUME, TIME));
    pub const LITRE_PER_HOUR: Unit = Unit::new("L/h", 1e-3 / 3600.0, per(VOLUME, TIME));
    pub const LITRE_PER_SECOND: Unit = Unit::new("L/s", 1e-3, per(VOLUME, TIME));
    pub const LITRE_PER_METRE: Unit = Unit::new("L/m", 1e-3, AREA);
    pub const SECOND: Unit = Unit::new("s", 1.0, TIME);
    pub const MINUTE: Unit = Unit::new("min", 60.0, TIME);
    pub const HOUR: Unit = Unit::new("h", 3600.0, TIME);
    pub const PER_HOUR: Unit = Unit::new("1/h", 1.0 / 3600.0, FREQUENCY);
    pub const PER_SECOND: Unit = Unit::new("1/s", 1.0, FREQUENCY);
    pub const METRE_PER_SECOND: Unit = Unit::new("m/s", 1.0, per(LENGTH, TIME));
    pub const METRE_PER_SECOND_SQUARED: Unit = Unit::new("m/s²", 1.0, per(per(LENGTH, TIME), TIME));
    pub const KILOGRAM: Unit = Unit::new("kg", 1.0, MASS);
    pub const GRAM: Unit = Unit::new("g", 1e-3, MASS);
    pub const KILOGRAM_PER_METRE: Unit = Unit::new("kg/m", 1.0, per(MASS, LENGTH));
    pub const KILOGRAM_PER_SECOND: Unit = Unit::new("kg/s", 1.0, per(MASS, TIME));
    pub const KILOGRAM_PER_HOUR: Unit = Unit::new("kg/h", 1.0 / 3600.0, per(MASS, TIME));
    pub const KILOGRAM_PER_CUBIC_METRE: Unit = Unit::new("kg/m³", 1.0, per(MASS, VOLUME));
    pub const MILLIGRAM_PER_CUBIC_METRE: Unit = Unit::new("mg/m³", 1e-6, per(MASS, VOLUME));
    pub const CUBIC_METRE_PER_KILOGRAM: Unit = Unit::new("m³/kg", 1.0, per(VOLUME, MASS));
    pub const MILLIGRAM_PER_KILOWATT_HOUR: Unit = Unit::new("mg/kWh", 1e-6 / 3.6e6, per(MASS, ENERGY));
    pub const KILOGRAM_PER_KILOWATT_HOUR: Unit = Unit::new("kg/kWh", 1.0 / 3.6e6, per(MASS, ENERGY));
    pub const CUBIC_METRE_PER_KILOWATT_HOUR: Unit = Unit::new("m³/kWh", 1.0 / 3.6e6, per(VOLUME, ENERGY));
    pub const KILOGRAM_PER_KILOGRAM: Unit = Unit::new("kg/kg", 1.0, NUMBER);
    pub const MOLE: Unit = Unit::new("mol", 1.0, AMOUNT);
    pub const KILOGRAM_PER_MOLE: Unit = Unit::new("kg/mol", 1.0, per(MASS, AMOUNT));
    pub const GRAM_PER_MOLE: Unit = Unit::new("g/mol", 1e-3, per(MASS, AMOUNT));
    pub const MOLE_PER_KILOGRAM: Unit = Unit::new("mol/kg", 1.0, per(AMOUNT, MASS));
    pub const KELVIN: Unit = Unit::new("K", 1.0, TEMPERATURE);
    pub const KELVIN_PER_METRE: Unit = Unit::new("K/m", 1.0, per(TEMPERATURE, LENGTH));
    pub const PER_KELVIN: Unit = Unit::new("1/K", 1.0, per(NUMBER, TEMPERATURE));
    pub const PERCENT_PER_KELVIN: Unit = Unit::new("%/K", 0.01, per(NUMBER, TEMPERATURE));
    pub const DEGREE_CELSIUS: Unit = Unit { symbol: "°C", factor: 1.0, offset: 273.15, dimension: TEMPERATURE };
    pub const PASCAL: Unit = Unit::new("Pa", 1.0, PRESSURE);
    pub const KILOPASCAL: Unit = Unit::new("kPa", 1e3, PRESSURE);
    pub const MILLIBAR: Unit = Unit::new("mbar", 100.0, PRESSURE);
    pub const BAR: Unit = Unit::new("bar", 1e5, PRESSURE);
    pub const MEGAPASCAL: Unit = Unit::new("MPa", 1e6, PRESSURE);
    pub const PASCAL_PER_METRE: Unit = Unit::new("Pa/m", 1.0, per(PRESSURE, LENGTH));
    pub const MILLIBAR_PER_KELVIN: Unit = Unit::new("mbar/K", 100.0, per(PRESSURE, TEMPERATURE));
    pub const PASCAL_SECOND: Unit = Unit::new("Pa·s", 1.0, times(PRESSURE, TIME));
    pub const SQUARE_METRE_PER_SECOND: Unit = Unit::new("m²/s", 1.0, per(AREA, TIME));
    pub const JOULE: Unit = Unit::new("J", 1.0, ENERGY);
    pub const KILOJOULE: Unit = Unit::new("kJ", 1e3, ENERGY);
    pub const MEGAJOULE: Unit = Unit::new("MJ", 1e6, ENERGY);
    pub const KILOWATT_HOUR: Unit = Unit::new("kWh", 3.6e6, ENERGY);
    pub const WATT: Unit = Unit::new("W", 1.0, POWER);
    pub const KILOWATT: Unit = Unit::new("kW", 1e3, POWER);
    pub const MEGAJOULE_PER_CUBIC_METRE: Unit = Unit::new("MJ/m³", 1e6, per(ENERGY, VOLUME));
    pub const MEGAJOULE_PER_KILOGRAM: Unit = Unit::new("MJ/kg", 1e6, per(ENERGY, MASS));
    pub const KILOJOULE_PER_KILOGRAM: Unit = Unit::new("kJ/kg", 1e3, per(ENERGY, MASS));
    pub const KILOJOULE_PER_MOLE: Unit = Unit::new("kJ/mol", 1e3, per(ENERGY, AMOUNT));
    pub const JOULE_PER_KELVIN: Unit = Unit::new("J/K", 1.0, per(ENERGY, TEMPERATURE));
    pub const KILOJOULE_PER_KELVIN: Unit = Unit::new("kJ/K", 1e3, per(ENERGY, TEMPERATURE));
    pub const JOULE_PER_METRE_KELVIN: Unit = Unit::new("J/(m·K)", 1.0, per(per(ENERGY, LENGTH), TEMPERATURE));
    pub const JOULE_PER_KILOGRAM_KELVIN: Unit = Unit::new("J/(kg·K)", 1.0, per(per(ENERGY, MASS), TEMPERATURE));
    pub const KILOJOULE_PER_KILOGRAM_KELVIN: Unit = Unit::new("kJ/(kg·K)", 1e3, per(per(ENERGY, MASS), TEMPERATURE));
    pub const WATT_PER_METRE: Unit = Unit::new("W/m", 1.0, per(POWER, LENGTH));
    pub const WATT_PER_SQUARE_METRE: Unit = Unit::new("W/m²", 1.0, per(POWER, AREA));
    pub const WATT_PER_KELVIN: Unit = Unit::new("W/K", 1.0, per(POWER, TEMPERATURE));
    pub const WATT_PER_METRE_KELVIN: Unit = Unit::new("W/(m·K)", 1.0, per(per(POWER, LENGTH), TEMPERATURE));
    pub const WATT_PER_SQUARE_METRE_KELVIN: Unit = Unit::new("W/(m²·K)", 1.0, per(per(POWER, AREA), TEMPERATURE));
    pub const METRE_KELVIN_PER_WATT: Unit = Unit::new("m·K/W", 1.0, per(times(LENGTH, TEMPERATURE), POWER));
    pub const KELVIN_PER_WATT: Unit = Unit::new("K/W", 1.0, per(TEMPERATURE, POWER));
    pub const CUBIC_METRE_PER_KILOWATT: Unit = Unit::new("m³/kW", 1e-3, per(VOLUME, POWER));
    pub const SQUARE_METRE_KELVIN_PER_WATT: Unit = Unit::new("m²·K/W", 1.0, per(times(AREA, TEMPERATURE), POWER));
    pub const SQUARE_MILLIMETRE_PER_KILOWATT: Unit = Unit::new("mm²/kW", 1e-9, per(AREA, POWER));
    pub const CUBIC_METRE_PER_HOUR_KILOWATT: Unit = Unit::new("m³/(h·kW)", 1.0 / 3.6e6, per(per(VOLUME, TIME), POWER));
    pub const OHM: Unit = Unit::new("Ω", 1.0, RESISTANCE);
    pub const VOLT: Unit = Unit::new("V", 1.0, POTENTIAL);
    pub const MILLIVOLT: Unit = Unit::new("mV", 1e-3, POTENTIAL);
    pub const MICROVOLT_PER_KELVIN: Unit = Unit::new("µV/K", 1e-6, per(POTENTIAL, TEMPERATURE));
    pub const DEGREE: Unit = Unit::new("°", core::f64::consts::PI / 180.0, NUMBER);
    pub const RADIAN: Unit = Unit::new("rad", 1.0, NUMBER);
}

pub(crate) const INCH: f64 = 0.0254;
const FOOT: f64 = 0.3048;
const POUND: f64 = 0.453_592_37;
pub(crate) const GRAVITY: f64 = 9.806_65;
const BTU_IT: f64 = 1_055.055_852_62;
const MERCURY: f64 = 13_595.1 * GRAVITY; // conventional mercury, Pa per metre
// An inch of actual water is less than the conventional inch and depends on its temperature: NIST
// SP 811 prints 249.082 Pa at 39.2 °F and 248.84 Pa at 60 °F, the latter given here to six figures
// from the density of water (999.013 kg/m³, CIPM) and standard gravity.
pub(crate) const INCH_OF_WATER_39_FAHRENHEIT: f64 = 249.082;
pub(crate) const INCH_OF_WATER_60_FAHRENHEIT: f64 = 248.843;
const DEGREE_FAHRENHEIT: f64 = 5.0 / 9.0;

struct Atom(f64, Dimension, &'static [&'static str]);

/// Names that may stand in a unit expression. First spelling: the symbol.
#[rustfmt::skip]
const ATOMS: &[Atom] = &[
    Atom(1.0, NUMBER, &["1", "dimensionless"]),
    Atom(1e-2, NUMBER, &["%", "percent", "vol%", "%vol", "pct"]),
    Atom(1e-6, NUMBER, &["ppm", "ppmv"]),
    Atom(1e-9, NUMBER, &["ppb"]),
    Atom(1.0, NUMBER, &["rad", "radian", "radians"]),
    Atom(core::f64::consts::PI / 180.0, NUMBER, &["°", "deg", "degree", "degrees"]),
    Atom(1.0, LENGTH, &["m", "metre", "meter", "metres", "meters"]),
    Atom(1e-3, LENGTH, &["mm", "millimetre", "millimeter", "millimetres", "millimeters"]),
    Atom(1e-2, LENGTH, &["cm", "centimetre", "centimeter"]),
    Atom(1e3, LENGTH, &["km", "kilometre", "kilometer"]),
    Atom(1e-6, LENGTH, &["µm", "um", "μm", "micrometre", "micrometer"]),
    Atom(INCH, LENGTH, &["in", "inch", "inches", "\""]),
    Atom(FOOT, LENGTH, &["ft", "foot", "feet"]),
    Atom(FOOT * FOOT * FOOT, VOLUME, &["cubic_foot", "cubic_feet", "cu_ft"]),
    Atom(1e-3, VOLUME, &["L", "l", "litre", "liter", "litres", "liters"]),
    Atom(1e-6, VOLUME, &["mL", "ml", "millilitre", "milliliter"]),
    Atom(1.0, TIME, &["s", "sec", "second", "seconds"]),
    Atom(1e-3, TIME, &["ms", "millisecond"]),
    Atom(60.0, TIME, &["min", "minute", "minutes"]),
    Atom(3600.0, TIME, &["h", "hr", "hour", "hours"]),
    Atom(86_400.0, TIME, &["d", "day", "days"]),
    Atom(1.0, FREQUENCY, &["Hz", "hertz"]),
    Atom(1.0, MASS, &["kg", "kilogram", "kilograms"]),
    Atom(1e-3, MASS, &["g", "gram", "grams"]),
    Atom(1e-6, MASS, &["mg", "milligram", "milligrams"]),
    Atom(1e-9, MASS, &["µg", "ug", "μg", "microgram"]),
    Atom(1e3, MASS, &["t", "tonne", "metric_ton"]),
    Atom(POUND, MASS, &["lb", "pound", "pounds"]),
    Atom(1.0, AMOUNT, &["mol", "mole", "moles"]),
    Atom(1e3, AMOUNT, &["kmol", "kilomole"]),
    Atom(1.0, TEMPERATURE, &["K", "kelvin", "delta_degree_Celsius", "delta_degC", "Δ°C"]),
    Atom(DEGREE_FAHRENHEIT, TEMPERATURE, &["delta_degree_Fahrenheit", "delta_degF", "Δ°F", "degree_Rankine"]),
    Atom(1.0, CURRENT, &["A", "ampere", "amp"]),
    Atom(1e-3, CURRENT, &["mA", "milliampere"]),
    Atom(1.0, PRESSURE, &["Pa", "pascal"]),
    Atom(1e2, PRESSURE, &["hPa", "hectopascal"]),
    Atom(1e3, PRESSURE, &["kPa", "kilopascal"]),
    Atom(1e6, PRESSURE, &["MPa", "megapascal"]),
    Atom(1e2, PRESSURE, &["mbar", "millibar"]),
    Atom(1e5, PRESSURE, &["bar"]),
    Atom(101_325.0, PRESSURE, &["atm", "standard_atmosphere"]),
    Atom(1e4 * GRAVITY, PRESSURE, &["at", "technical_atmosphere"]),
    Atom(POUND * GRAVITY / (INCH * INCH), PRESSURE, &["psi", "pound_force_per_square_inch", "lbf/in2"]),
    Atom(GRAVITY, PRESSURE, &["mmH2O", "mmWC", "mmWG", "mmH₂O", "mmH2O_conventional"]),
    Atom(1e3 * GRAVITY, PRESSURE, &["mH2O", "mWC", "mH2O_conventional"]),
    Atom(10.0 * GRAVITY, PRESSURE, &["cmH2O", "cmH2O_conventional"]),
    Atom(98.0638, PRESSURE, &["cmH2O_4C"]),
    Atom(FOOT * 1e3 * GRAVITY, PRESSURE, &["ftH2O", "ftH2O_conventional"]),
    Atom(2988.98, PRESSURE, &["ftH2O_39.2F"]),
    Atom(INCH * 1e3 * GRAVITY, PRESSURE, &["inH2O", "inWC", "inWG", "inH₂O", "inch_H2O", "inH2O_conventional"]),
    Atom(INCH_OF_WATER_39_FAHRENHEIT, PRESSURE, &["inH2O_39.2F", "inH2O_4C"]),
    Atom(INCH_OF_WATER_60_FAHRENHEIT, PRESSURE, &["inH2O_60F"]),
    Atom(MERCURY * 1e-3, PRESSURE, &["mmHg", "millimeter_Hg", "mmHg_conventional"]),
    Atom(101_325.0 / 760.0, PRESSURE, &["torr", "Torr"]),
    Atom(MERCURY * INCH, PRESSURE, &["inHg", "inch_Hg", "inHg_conventional"]),
    Atom(MERCURY * 1e-2, PRESSURE, &["cmHg", "cmHg_conventional"]),
    Atom(1333.22, PRESSURE, &["cmHg_0C"]),
    Atom(3386.38, PRESSURE, &["inHg_32F"]),
    Atom(3376.85, PRESSURE, &["inHg_60F"]),
    Atom(1.0, ENERGY, &["J", "joule", "joules"]),
    Atom(1e3, ENERGY, &["kJ", "kilojoule"]),
    Atom(1e6, ENERGY, &["MJ", "megajoule"]),
    Atom(1e9, ENERGY, &["GJ", "gigajoule"]),
    Atom(3600.0, ENERGY, &["Wh", "watt_hour"]),
    Atom(3.6e6, ENERGY, &["kWh", "kilowatt_hour"]),
    Atom(3.6e9, ENERGY, &["MWh", "megawatt_hour"]),
    Atom(BTU_IT, ENERGY, &["Btu", "BTU", "btu", "british_thermal_unit", "Btu_IT"]),
    Atom(1_054.350_264_488_889, ENERGY, &["Btu_th"]),
    Atom(1055.87, ENERGY, &["Btu_mean"]),
    Atom(1059.67, ENERGY, &["Btu_39F"]),
    Atom(1054.80, ENERGY, &["Btu_59F"]),
    Atom(1054.68, ENERGY, &["Btu_60F"]),
    Atom(1e5 * BTU_IT, ENERGY, &["therm"]),
    // Directive 80/181/EEC rounds it (as NIST SP 811 prints).
    Atom(1.055_06e8, ENERGY, &["therm_EC"]),
    Atom(1.054_804e8, ENERGY, &["therm_US"]),
    Atom(4.1868, ENERGY, &["calorie_IT", "cal_IT"]),
    Atom(4.184, ENERGY, &["calorie_th", "cal_th"]),
    Atom(4186.8, ENERGY, &["kilocalorie_IT", "kcal_IT"]),
    Atom(4184.0, ENERGY, &["kilocalorie_th", "kcal_th"]),
    Atom(1.0, POWER, &["W", "watt", "watts"]),
    Atom(1e-3, POWER, &["mW", "milliwatt"]),
    Atom(1e3, POWER, &["kW", "kilowatt", "kilowatts"]),
    Atom(1e6, POWER, &["MW", "megawatt"]),
    Atom(1.0, FORCE, &["N", "newton"]),
    Atom(GRAVITY, FORCE, &["kgf", "kilogram_force"]),
    Atom(POUND * GRAVITY, FORCE, &["lbf", "pound_force"]),
    Atom(POUND * GRAVITY / 16.0, FORCE, &["ozf", "ounce_force"]),
    Atom(GRAVITY, ACCELERATION, &["standard_gravity"]),
    Atom(1.0, POTENTIAL, &["V", "volt", "volts"]),
    Atom(1e-3, POTENTIAL, &["mV", "millivolt", "millivolts"]),
    Atom(1e-6, POTENTIAL, &["µV", "uV", "μV", "microvolt"]),
    Atom(1.0, RESISTANCE, &["Ω", "ohm", "ohms", "Ohm", "Ω"]),
    Atom(1e3, RESISTANCE, &["kΩ", "kohm", "kiloohm", "kOhm"]),
    Atom(1e6, RESISTANCE, &["MΩ", "Mohm", "megaohm"]),
    Atom(1e-3, RESISTANCE, &["mΩ", "mohm", "milliohm"]),
];

const ANGLES: &[&str] = &["rad", "radian", "radians", "°", "deg", "degree", "degrees"];

/// A unit expression that was read: SI value = shown × factor + offset.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReadUnit {
    /// SI units in one of this unit.
    pub factor: f64,
    /// SI value at zero of this unit.
    pub offset: f64,
    /// What the unit measures.
    pub dimension: Dimension,
    /// Written as a temperature point (`°C`, `degF`), which a difference may not be.
    pub point: bool,
    /// Contains a unit of energy: an energy per volume has the dimension of a pressure.
    pub energy: bool,
    /// Contains a unit of angle, which has the dimension of a plain number.
    pub angle: bool,
}

fn atom(name: &str) -> Option<(f64, Dimension)> {
    ATOMS.iter().find(|a| a.2.contains(&name)).map(|a| (a.0, a.1))
}

fn superscripts(text: &str) -> String {
    let mut out = String::new();
    let mut raised = false;
    for c in text.chars() {
        let digit = "⁰¹²³⁴⁵⁶⁷⁸⁹".chars().position(|d| d == c);
        match (digit, c) {
            (Some(n), _) => {
                if !raised {
                    out.push('^');
                }
                out.push(char::from(b'0' + n as u8));
                raised = true;
            }
            (None, '⁻') => {
                out.push_str("^-");
                raised = true;
            }
            _ => {
                out.push(c);
                raised = false;
            }
        }
    }
    out.replace("**", "^").replace(['·', '×', '⋅'], "*")
}

/// Reads a unit expression such as `m3/h`, `W/(m² K)`, `kJ·kg⁻¹·K⁻¹` or `°C`.
pub fn read_unit(text: &str) -> Option<ReadUnit> {
    let trimmed = text.trim();
    let offset = match trimmed {
        "°C" | "degC" | "ºC" | "degree_Celsius" | "celsius" | "deg C" | "° C" | "℃" => Some((1.0, 273.15)),
        "°F" | "degF" | "ºF" | "degree_Fahrenheit" | "fahrenheit" | "deg F" | "° F" | "℉" => {
            Some((DEGREE_FAHRENHEIT, 459.67 * DEGREE_FAHRENHEIT))
        }
        _ => None,
    };
    if let Some((factor, offset)) = offset {
        return Some(ReadUnit { factor, offset, dimension: TEMPERATURE, point: true, energy: false, angle: false });
    }
    if trimmed.is_empty() {
        return Some(ReadUnit { factor: 1.0, offset: 0.0, dimension: NUMBER, point: false, energy: false, angle: false });
    }
    let plain = superscripts(trimmed);
    let mut reader = Reader { rest: &plain, depth: 0, energy: false, angle: false };
    let (factor, dimension) = reader.expression()?;
    reader.rest.trim().is_empty().then_some(ReadUnit {
        factor,
        offset: 0.0,
        dimension,
        point: false,
        energy: reader.energy,
        angle: reader.angle,
    })
}

struct Reader<'a> {
    rest: &'a str,
    depth: u8,
    energy: bool,
    angle: bool,
}

impl Reader<'_> {
    fn peek(&mut self) -> Option<char> {
        self.rest = self.rest.trim_start();
        self.rest.chars().next()
    }

    fn skip(&mut self, c: char) {
        self.rest = &self.rest[c.len_utf8()..];
    }

    fn expression(&mut self) -> Option<(f64, Dimension)> {
        let (mut factor, mut dimension) = self.factor()?;
        loop {
            let divide = match self.peek() {
                None | Some(')') => return Some((factor, dimension)),
                Some('/') => {
                    self.skip('/');
                    true
                }
                Some('*') => {
                    self.skip('*');
                    false
                }
                Some(_) => false,
            };
            let (f, d) = self.factor()?;
            factor = if divide { factor / f } else { factor * f };
            for (total, part) in dimension.iter_mut().zip(d) {
                *total = if divide { total.checked_sub(part)? } else { total.checked_add(part)? };
            }
        }
    }

    fn factor(&mut self) -> Option<(f64, Dimension)> {
        let (factor, dimension) = if self.peek()? == '(' {
            self.depth += 1;
            if self.depth > 8 {
                return None;
            }
            self.skip('(');
            let inner = self.expression()?;
            if self.peek()? != ')' {
                return None;
            }
            self.skip(')');
            self.depth -= 1;
            inner
        } else {
            self.name()?
        };
        let exponent = self.exponent()?;
        let mut power = 1.0;
        for _ in 0..exponent.unsigned_abs() {
            power *= factor;
        }
        let mut raised = NUMBER;
        for (out, part) in raised.iter_mut().zip(dimension) {
            *out = part.checked_mul(exponent)?;
        }
        Some((if exponent < 0 { 1.0 / power } else { power }, raised))
    }

    fn name(&mut self) -> Option<(f64, Dimension)> {
        let end = self.rest.find([' ', '*', '/', '(', ')', '^']).unwrap_or(self.rest.len());
        let token = &self.rest[..end];
        if let Some(found) = atom(token) {
            self.energy |= found.1 == ENERGY;
            self.angle |= ANGLES.contains(&token);
            self.rest = &self.rest[end..];
            return Some(found);
        }
        let bare = token.trim_end_matches(|c: char| c.is_ascii_digit() || c == '-');
        let found = (bare.len() < token.len()).then(|| atom(bare)).flatten()?;
        self.rest = &self.rest[bare.len()..];
        Some(found)
    }

    /// An exponent, with or without `^`, directly behind a factor; 1 where there is none.
    fn exponent(&mut self) -> Option<i8> {
        let (marked, digits) = match self.rest.trim_start().strip_prefix('^') {
            Some(rest) => (true, rest.trim_start()),
            None => (false, self.rest),
        };
        let end = digits.char_indices().find(|&(i, c)| !(c.is_ascii_digit() || (i == 0 && c == '-'))).map_or(digits.len(), |(i, _)| i);
        if end == 0 {
            return if marked { None } else { Some(1) };
        }
        let exponent: i8 = digits[..end].parse().ok()?;
        self.rest = &digits[end..];
        (exponent.unsigned_abs() <= 6).then_some(exponent)
    }
}

/// Prints `value` to `digits` significant digits, without trailing zeros.
pub(crate) fn number(value: f64, digits: usize) -> String {
    if !value.is_finite() {
        return if value.is_nan() { "not a number".to_string() } else { value.to_string() };
    }
    if value == 0.0 {
        return "0".to_string();
    }
    let digits = digits.max(1);
    let scientific = alloc::format!("{:.*e}", digits - 1, value);
    let (mantissa, exponent) = scientific.split_once('e').unwrap_or((&scientific, "0"));
    let exponent: i32 = exponent.parse().unwrap_or(0);
    let trim = |text: &str| -> String {
        if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_string() } else { text.to_string() }
    };
    if (-5..digits.max(7) as i32).contains(&exponent) {
        let decimals = (digits as i32 - 1 - exponent).max(0) as usize;
        trim(&alloc::format!("{value:.decimals$}"))
    } else {
        alloc::format!("{}e{exponent}", trim(mantissa))
    }
}
