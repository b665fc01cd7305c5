//! Reference conditions of a gas: at which temperature it is taken to burn, and at which temperature
//! and pressure its volume is taken. Without them a calorific value per volume means nothing: the
//! same gas is worth 5.5 % more per cubic metre at 0 °C than at 15 °C.

use super::Value;
use super::types::{Pressure, ThermodynamicTemperature};
use super::{AbsolutePressure, parse};
use crate::calculation::{Form, Setting, Settings};
use crate::error::Error;
use crate::node::Node;

const STANDARD_ATMOSPHERE: f64 = 101_325.0;
/// Pound-force per square inch, Pa (exact: 0.453 592 37 kg × 9.806 65 m/s² over (0.0254 m)²).
const PSI: f64 = 0.453_592_37 * 9.806_65 / (0.0254 * 0.0254);
const SIXTY_FAHRENHEIT: f64 = (60.0 + 459.67) * 5.0 / 9.0;

/// The two parts of reference conditions, as ISO 13443 separates them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReferenceConditions {
    /// Temperature at which the gas is taken to burn and its products are brought back to, K.
    pub combustion_temperature: f64,
    /// Temperature at which volume is taken, K.
    pub metering_temperature: f64,
    /// Absolute pressure at which volume is taken, Pa.
    pub metering_pressure: f64,
}

impl ReferenceConditions {
    /// 15 °C and 15 °C at 101.325 kPa: the natural gas industry's standard conditions (ISO 13443).
    pub const AT_15_15: Self = Self::at_celsius(15.0, 15.0);

    /// Combustion and metering temperature in °C, at 101.325 kPa.
    #[must_use]
    pub const fn at_celsius(combustion: f64, metering: f64) -> Self {
        Self {
            combustion_temperature: combustion + 273.15,
            metering_temperature: metering + 273.15,
            metering_pressure: STANDARD_ATMOSPHERE,
        }
    }

    /// The same conditions by name: a pair of temperatures in °C such as `15/15` (combustion, then
    /// metering) at 101.325 kPa, or `60 °F, 14.73 psi`. National use as in ISO 13443 annex E (from
    /// memory): 15/15 United Kingdom, Ireland; 25/0 Germany, Netherlands; 0/0 France; 25/20 eastern
    /// Europe; 60 °F United States, at the base pressure of the contract.
    ///
    /// # Errors
    /// If the name is not read so.
    pub fn named(field: &str, name: &str) -> Result<Self, Error> {
        let bad = || {
            Error::bad_setting(
                field,
                name,
                "write combustion and metering temperature in °C such as \"15/15\" or \"25/0\" (101.325 kPa), \
                 \"60 °F, 14.73 psi\", or a table with combustion_temperature, metering_temperature and metering_pressure",
            )
        };
        if let Some((combustion, metering)) = name.split_once('/') {
            let celsius = |text: &str| text.trim().parse::<f64>().ok().filter(|t| t.is_finite());
            let (Some(combustion), Some(metering)) = (celsius(combustion), celsius(metering)) else { return Err(bad()) };
            return Self::at_celsius(combustion, metering).checked(field);
        }
        let (temperature, pressure) = name.split_once(',').ok_or_else(bad)?;
        let temperature = parse::<ThermodynamicTemperature>(field, temperature)?.si();
        let pressure = parse::<Pressure>(field, pressure)?.si();
        Self { combustion_temperature: temperature, metering_temperature: temperature, metering_pressure: pressure }.checked(field)
    }

    /// The conditions a setting asks for: a name or a table.
    ///
    /// # Errors
    /// If they cannot be read or are no conditions that gas is referred to.
    pub fn from_settings(settings: &Settings<'_>, name: &str) -> Result<Self, Error> {
        match settings.get(name) {
            Some(table @ Node::Table(_)) => {
                for (key, _) in table.entries(name)? {
                    let known = ["combustion_temperature", "metering_temperature", "metering_pressure"];
                    if !known.contains(&key) {
                        return Err(Error::unknown_name(name, key, known.into_iter()));
                    }
                }
                let temperature = |key: &str| {
                    let node = table.get(key).ok_or_else(|| Error::bad_setting(name, "", "both temperatures are needed"))?;
                    node.quantity::<ThermodynamicTemperature>(key).map(Value::si)
                };
                let pressure = match table.get("metering_pressure") {
                    Some(node) => node.quantity::<AbsolutePressure>("metering_pressure")?.si(),
                    None => STANDARD_ATMOSPHERE,
                };
                Self {
                    combustion_temperature: temperature("combustion_temperature")?,
                    metering_temperature: temperature("metering_temperature")?,
                    metering_pressure: pressure,
                }
                .checked(name)
            }
            _ => Self::named(name, settings.text(name)?),
        }
    }

    fn checked(self, field: &str) -> Result<Self, Error> {
        let temperatures = [self.combustion_temperature, self.metering_temperature];
        if temperatures.iter().all(|t| (253.15..=323.15).contains(t)) && (6e4..=1.2e5).contains(&self.metering_pressure) {
            Ok(self)
        } else {
            Err(Error::bad_setting(field, "", "reference temperatures lie from -20 °C to 50 °C, pressures from 600 mbar to 1200 mbar"))
        }
    }

    /// 60 °F for both parts, at a base pressure in psi: 14.696 (one atmosphere) or 14.73 (30 inches
    /// of mercury) as the contract says.
    #[must_use]
    pub const fn at_sixty_fahrenheit(base_pressure_psi: f64) -> Self {
        Self {
            combustion_temperature: SIXTY_FAHRENHEIT,
            metering_temperature: SIXTY_FAHRENHEIT,
            metering_pressure: base_pressure_psi * PSI,
        }
    }

    /// A setting called `reference` that defaults to 15/15.
    #[must_use]
    pub const fn setting(doc: &'static str) -> Setting {
        Setting { name: "reference", doc, form: Form::Text, default: Some("15/15") }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn conditions_are_read_as_people_write_them() {
        let named = |name: &str| ReferenceConditions::named("reference", name);
        assert_eq!(named("15/15"), Ok(ReferenceConditions::AT_15_15));
        assert_eq!(named("25/0"), Ok(ReferenceConditions::at_celsius(25.0, 0.0)));
        let american = named("60 °F, 14.73 psi").unwrap();
        let wanted = ReferenceConditions::at_sixty_fahrenheit(14.73);
        assert!((american.metering_temperature - wanted.metering_temperature).abs() < 1e-9);
        assert!((american.metering_pressure - wanted.metering_pressure).abs() < 1e-6);
        // 14.73 psi is 30 inches of mercury at 60 °F to four figures
        assert!((american.metering_pressure - 101_560.0).abs() < 1.0);
        for bad in ["15", "15/", "15/x", "60 F", "nan/15", "15/1500", "15 mbar, 20 mbar"] {
            assert!(named(bad).is_err(), "{bad}");
        }
    }
}
