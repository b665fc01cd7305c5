//! Quantities from and to text, with the spellings people write.

use super::basis::Basis;
use super::unit::{self, NUMBER, ReadUnit, TEMPERATURE, number, read_unit};
use super::{Kind, Unit, Value};
use crate::error::Error;
use alloc::format;
use alloc::string::String;

const BASIS_WORDS: &[(&str, Basis)] = &[
    ("g", Basis::Gauge),
    ("gauge", Basis::Gauge),
    ("a", Basis::Absolute),
    ("abs", Basis::Absolute),
    ("absolute", Basis::Absolute),
    ("gross", Basis::Gross),
    ("net", Basis::Net),
    ("dry", Basis::Dry),
    ("wet", Basis::Wet),
    ("air-free", Basis::AirFree),
    ("overall", Basis::Overall),
    ("free", Basis::Free),
    ("equivalent", Basis::Equivalent),
    ("one-limb", Basis::OneLimb),
    ("both-limbs", Basis::BothLimbs),
];

/// Reads one value as people write it: `21 mbar`, `20.5 mbar(g)`, `62 °C`, `2 min 5 s`.
///
/// `field` names the value in the error. The type decides the dimension and the basis; a basis
/// word in the text must agree with it.
///
/// # Errors
/// Names the field, the text and what was expected: no number, no unit, unknown unit, wrong
/// dimension, wrong basis, a temperature where a difference is wanted.
pub fn parse<T: Value>(field: &str, text: &str) -> Result<T, Error> {
    read(field, text, &T::KIND, example(&T::KIND)).map(T::from_si)
}

/// Prints an SI value in `unit` to `digits` significant digits.
#[must_use]
pub fn quantity_text(si: f64, unit: &Unit, digits: usize) -> String {
    let shown = number(unit.from_si(si), digits);
    if unit.symbol.is_empty() || !si.is_finite() { shown } else { format!("{shown} {}", unit.symbol) }
}

fn example(kind: &Kind) -> &'static str {
    match (kind.name, kind.basis) {
        ("temperature", _) => "62 degC",
        ("temperature difference", _) => "8 K",
        ("pressure", Basis::Gauge) => "20.5 mbar(g)",
        ("pressure", Basis::Absolute) => "1013 mbar(a)",
        ("pressure", _) => "21 mbar",
        ("ratio", _) => "4.6 % or 48 ppm",
        ("volume", _) => "0.100 m3 or 1 ft3",
        ("volume flow", _) => "2.88 m3/h",
        ("time", _) => "2 min 5 s or 125 s",
        ("power", _) => "18.8 kW",
        ("energy per volume", _) => "35.6 MJ/m3",
        ("length", _) => "15 mm",
        ("electrical resistance", _) => "138.5 ohm",
        ("electric potential", _) => "25 mV",
        _ => "a number and a unit",
    }
}

/// Factor and offset to SI of a unit in words, which must measure `kind`; a basis word must agree.
pub(crate) fn scale(field: &str, unit: &str, kind: &Kind, example: &str) -> Result<(f64, f64), Error> {
    let trimmed = unit.trim();
    if trimmed.len() > 100 {
        return Err(Error::unreadable(field, "a text of more than 100 characters", "a unit is shorter"));
    }
    let read = unit_of(field, trimmed, without_basis(field, trimmed, kind)?, kind, example)?;
    Ok((read.factor, read.offset))
}

/// The SI value of `text`, which must be of `kind`.
pub(crate) fn read(field: &str, text: &str, kind: &Kind, example: &str) -> Result<f64, Error> {
    let trimmed = text.trim();
    if trimmed.is_empty() {
        return Err(Error::missing(field, &format!("write it as {example}")));
    }
    if trimmed.len() > 200 {
        return Err(Error::unreadable(field, "a text of more than 200 characters", "a quantity is shorter"));
    }
    let quantity = without_basis(field, trimmed, kind)?;
    let mut total = 0.0;
    let mut rest = quantity;
    let mut terms = 0;
    while !rest.is_empty() {
        let (value, after) = leading_number(field, trimmed, rest)?;
        let end = next_term(after);
        let (unit_text, next) = after.split_at(end);
        total += term(field, trimmed, value, unit_text.trim(), kind, example)?;
        terms += 1;
        rest = next.trim_start();
        if terms > 1 && (kind.name == "temperature" || kind.dimension == NUMBER) || terms > 4 {
            return Err(Error::unreadable(field, trimmed, "one number and one unit are expected"));
        }
    }
    if total.is_finite() { Ok(total) } else { Err(Error::not_finite(field, trimmed)) }
}

/// The SI size of a spread about a value of `kind`: of the same dimension, whatever its basis. Of a unit of
/// temperature the size alone counts, since "± 1 °C" can mean nothing else.
pub(crate) fn read_spread(field: &str, text: &str, kind: &Kind, example: &str) -> Result<f64, Error> {
    let kind = Kind { basis: Basis::None, ..*kind };
    if kind.dimension != unit::TEMPERATURE {
        return read(field, text, &kind, example);
    }
    let text = text.trim();
    let (size, unit) = leading_number(field, text, text)?;
    let (factor, _) = scale(field, unit, &Kind { name: "temperature", difference: false, ..kind }, example)?;
    let size = size * factor;
    if size.is_finite() { Ok(size) } else { Err(Error::not_finite(field, text)) }
}

/// `text` without its basis word, which must be that of `kind`.
fn without_basis<'a>(field: &str, text: &'a str, kind: &Kind) -> Result<&'a str, Error> {
    match split_basis(text) {
        (_, Some(given)) if given != kind.basis => Err(Error::wrong_basis(field, text, given.word(), kind)),
        (rest, _) => Ok(rest),
    }
}

fn term(field: &str, text: &str, value: f64, unit_text: &str, kind: &Kind, example: &str) -> Result<f64, Error> {
    let read = unit_of(field, text, unit_text, kind, example)?;
    Ok(value * read.factor + read.offset)
}

/// The unit `unit_text`, which must measure `kind`; `text` is the whole of what was given.
fn unit_of(field: &str, text: &str, unit_text: &str, kind: &Kind, example: &str) -> Result<ReadUnit, Error> {
    if unit_text.is_empty() && kind.dimension != NUMBER {
        return Err(Error::unit_missing(field, text, kind, example));
    }
    let Some(read) = read_unit(unit_text) else {
        return Err(Error::unknown_unit(field, text, unit_text, kind, example));
    };
    if read.dimension != kind.dimension {
        return Err(Error::wrong_dimension(field, text, kind, example, dimension_hint(&read.dimension, unit_text)));
    }
    // Dimensions that two quantities share, told apart by the words of the unit.
    if read.energy != (kind.name == "energy per volume") && read.dimension == unit::PRESSURE
        || read.angle != (kind.name == "angle") && read.dimension == NUMBER && !unit_text.is_empty()
    {
        return Err(Error::wrong_dimension(field, text, kind, example, "that unit measures something else of the same dimension"));
    }
    if read.point && kind.difference {
        return Err(Error::wrong_dimension(
            field,
            text,
            kind,
            example,
            "a temperature was given where a difference is wanted: write K for a difference",
        ));
    }
    if kind.dimension == TEMPERATURE && !kind.difference && unit_text.to_ascii_lowercase().contains("delta") {
        return Err(Error::wrong_dimension(field, text, kind, example, "a difference was given where a temperature is wanted"));
    }
    Ok(read)
}

fn dimension_hint(dimension: &super::Dimension, unit_text: &str) -> &'static str {
    match *dimension {
        unit::ENERGY => "that is an energy",
        unit::POWER => "that is a power",
        unit::PRESSURE if unit_text.contains('/') => "that is an energy per volume or a pressure",
        unit::PRESSURE => "that is a pressure",
        unit::LENGTH => "that is a length",
        unit::AREA => "that is an area",
        unit::VOLUME => "that is a volume",
        unit::TIME => "that is a time",
        unit::MASS => "that is a mass",
        unit::TEMPERATURE => "that is a temperature or a temperature difference",
        unit::NUMBER => "that has no dimension",
        _ => "that unit measures something else",
    }
}

fn split_basis(text: &str) -> (&str, Option<Basis>) {
    let find = |word: &str| BASIS_WORDS.iter().find(|(w, _)| w.eq_ignore_ascii_case(word)).map(|&(_, b)| b);
    if let Some(open) = text.rfind('(')
        && let Some(word) = text[open + 1..].strip_suffix(')')
        && let Some(basis) = find(word.trim())
    {
        return (text[..open].trim_end(), Some(basis));
    }
    // A single letter behind a space is a unit (`5 g`), not a basis.
    if let Some((head, word)) = text.rsplit_once(' ')
        && word.len() > 1
        && let Some(basis) = find(word)
    {
        return (head.trim_end(), Some(basis));
    }
    for (suffix, basis) in [("barg", Basis::Gauge), ("bara", Basis::Absolute), ("psig", Basis::Gauge), ("psia", Basis::Absolute)] {
        if text.ends_with(suffix) {
            return (&text[..text.len() - 1], Some(basis));
        }
    }
    (text, None)
}

fn leading_number<'a>(field: &str, text: &str, rest: &'a str) -> Result<(f64, &'a str), Error> {
    let normal = rest.strip_prefix('−').map(|r| (true, r));
    let (negative, body) = normal.unwrap_or((false, rest));
    let bytes = body.as_bytes();
    let mut end = 0;
    while end < bytes.len() {
        let c = bytes[end];
        let sign_ok = (c == b'-' || c == b'+') && (end == 0 || matches!(bytes[end - 1], b'e' | b'E'));
        let exponent_ok = matches!(c, b'e' | b'E')
            && end > 0
            && bytes
                .get(end + 1)
                .is_some_and(|&n| n.is_ascii_digit() || ((n == b'-' || n == b'+') && bytes.get(end + 2).is_some_and(u8::is_ascii_digit)));
        if c.is_ascii_digit() || c == b'.' || sign_ok || exponent_ok {
            end += 1;
        } else {
            break;
        }
    }
    let after = &body[end..];
    if after.starts_with(',') && after[1..].starts_with(|c: char| c.is_ascii_digit()) {
        return Err(Error::unreadable(field, text, "write a decimal point, and no thousands separator"));
    }
    if after.starts_with([':', '±']) {
        return Err(Error::unreadable(field, text, "write minutes and seconds as 2 min 5 s, and one number only"));
    }
    let lower = body.trim_start_matches(['+', '-']).to_ascii_lowercase();
    if end == 0 || ["nan", "inf"].iter().any(|w| lower.starts_with(w)) {
        return Err(if lower.starts_with("nan") || lower.starts_with("inf") {
            Error::not_finite(field, text)
        } else {
            Error::unreadable(field, text, "it does not begin with a number")
        });
    }
    match body[..end].parse::<f64>() {
        Ok(value) => Ok((if negative { -value } else { value }, after)),
        Err(_) => Err(Error::unreadable(field, text, "the number cannot be read")),
    }
}

/// Where the next `number unit` pair of a sum such as `2 min 5 s` begins.
fn next_term(text: &str) -> usize {
    let mut previous = ' ';
    for (i, c) in text.char_indices() {
        if i > 0 && c.is_ascii_digit() && previous == ' ' && !text[..i].trim().is_empty() {
            let before = text[..i].trim_end();
            if !before.ends_with(['/', '*', '^', '(', '·']) {
                return i;
            }
        }
        previous = c;
    }
    text.len()
}

#[cfg(test)]
mod tests {
    use super::super::basis::*;
    use super::super::types::*;
    use super::*;
    use alloc::string::ToString;

    fn si<T: Value>(text: &str) -> f64 {
        parse::<T>("field", text).unwrap_or_else(|e| panic!("{text}: {e}")).si()
    }

    #[test]
    fn spellings_people_write() {
        let close = |a: f64, b: f64| assert!((a - b).abs() <= 1e-12 * b.abs(), "{a} is not {b}");
        close(si::<GaugePressure>("21 mbar"), 2100.0);
        close(si::<GaugePressure>("20.5 mbar(g)"), 2050.0);
        close(si::<AbsolutePressure>("1.2 bara"), 1.2e5);
        close(si::<Volume>("0.100 m3"), 0.1);
        close(si::<Volume>("1 ft3"), 0.028_316_846_592);
        close(si::<ThermodynamicTemperature>("62 °C"), 335.15);
        close(si::<ThermodynamicTemperature>("62degC"), 335.15);
        close(si::<ThermodynamicTemperature>("212 °F"), 373.15);
        close(si::<TemperatureInterval>("8 K"), 8.0);
        close(si::<MoleFraction<Dry>>("48 ppm"), 48e-6);
        close(si::<MoleFraction<Dry>>("4.6 %"), 0.046);
        close(si::<HeatInput<Net>>("18.8 kW net"), 18_800.0);
        close(si::<CalorificValue<Gross>>("35.6 MJ/m3"), 35.6e6);
        close(si::<Pressure>("7 inH2O"), 7.0 * 249.088_91);
        close(si::<Time>("2 min 5 s"), 125.0);
        close(si::<ThermalConductance>("95 W/K"), 95.0);
        close(si::<HeatTransfer>("10 W/(m² K)"), 10.0);
        close(si::<HeatTransfer>("10 W·m⁻²·K⁻¹"), 10.0);
        close(si::<SpecificHeatCapacity>("4.18 kJ/kg/K"), 4180.0);
        close(si::<VolumeRate>("2.88 meter ** 3 / hour"), 8e-4);
        close(si::<Mass>("5 g"), 5e-3);
        close(si::<GaugePressure>("−3 Pa"), -3.0);
    }

    #[test]
    fn mistakes_are_named() {
        let message = |r: Result<f64, Error>| r.unwrap_err().to_string();
        assert!(message(parse::<AbsolutePressure>("barometer", "20 mbar(g)").map(Value::si)).contains("gauge"));
        assert!(message(parse::<TemperatureInterval>("differential", "8 °C").map(Value::si)).contains("difference"));
        assert!(message(parse::<HeatInput<Net>>("plate", "21 kW gross").map(Value::si)).contains("gross"));
        assert!(message(parse::<HeatInput<Net>>("plate", "21 kWh").map(Value::si)).contains("energy"));
        assert!(message(parse::<HeatInput<Net>>("plate", "21").map(Value::si)).contains("unit"));
        assert!(message(parse::<Time>("time", "1:30").map(Value::si)).contains("2 min 5 s"));
        assert!(message(parse::<Volume>("volume", "0,1 m3").map(Value::si)).contains("decimal point"));
        assert!(message(parse::<Volume>("volume", "nan m3").map(Value::si)).contains("finite"));
        assert!(message(parse::<CalorificValue<Gross>>("calorific_value", "21 mbar").map(Value::si)).contains("energy per volume"));
        assert!(message(parse::<GaugePressure>("inlet", "35.6 MJ/m3").map(Value::si)).contains("pressure"));
        assert!(message(parse::<Ratio>("share", "5 deg").map(Value::si)).contains("ratio"));
        assert!(message(parse::<Angle>("slope", "5 %").map(Value::si)).contains("angle"));
        assert!(message(parse::<Volume>("volume", "1 m33x").map(Value::si)).contains("m33x"));
    }

    #[test]
    fn shown_units_are_readable_and_agree() {
        for unit in [units::CUBIC_METRE_PER_HOUR, units::WATT_PER_SQUARE_METRE_KELVIN, units::MILLIGRAM_PER_KILOWATT_HOUR] {
            let read = read_unit(unit.symbol).unwrap();
            assert_eq!(read.dimension, unit.dimension, "{}", unit.symbol);
            assert!((read.factor - unit.factor).abs() <= 1e-15 * unit.factor);
        }
    }
    use super::super::units;
}
