//! The calculation `altitude`: what height above the sea does to barometer, air and burner.

use super::CAUTION_BURNER;
use crate::calculation::{Calculation, Info, Source};
use crate::math;
use crate::meter::standard_pressure_ratio;
use crate::no_settings;
use crate::quantity::types::{Length, Pressure, Ratio, ThermodynamicTemperature};
use crate::quantity::units::*;
use crate::quantity::{AbsolutePressure, Value};
use crate::record::record;
use crate::working::{Working, step};

/// Fall of temperature with height in the lower standard atmosphere, K/m (ISO 2533).
const LAPSE_RATE: f64 = 0.0065;
/// Temperature of the standard atmosphere at sea level, K (ISO 2533).
const SEA_LEVEL_TEMPERATURE: f64 = 288.15;

/// A place by its height.
#[record]
pub struct HeightAboveSea {
    /// Height above sea level (geopotential, which differs by 0.05 % at 3000 m).
    #[field("h", METRE, -430.0..=5000.0, usual = -10.0..=2500.0)]
    pub altitude: Length,
    /// Barometric pressure reduced to sea level, as weather reports give it.
    #[field("p_0", MILLIBAR, 850.0..=1090.0, default = 1013.25, usual = 960.0..=1050.0)]
    pub sea_level_pressure: AbsolutePressure,
    /// Temperature of the air at the place; left out, that of the standard atmosphere.
    #[field("T", DEGREE_CELSIUS, -50.0..=60.0, absent = "standard atmosphere")]
    pub air_temperature: ThermodynamicTemperature,
}

/// What the height does.
#[record]
pub struct AltitudeEffect {
    /// Barometric pressure at the place, as a barometer shows it.
    #[field("p_b", MILLIBAR)]
    pub barometric_pressure: AbsolutePressure,
    /// Pressure at the place over 1013.25 mbar.
    #[field("p_b/p_n", ONE)]
    pub pressure_ratio: Ratio,
    /// Air density over that at 15 °C and 1013.25 mbar.
    #[field("\\rho/\\rho_n", ONE)]
    pub air_density_ratio: Ratio,
    /// Heat input over that at sea level, gas temperature, injector and burner pressure the same.
    #[field("\\dot Q/\\dot Q_n", ONE)]
    pub heat_input_ratio: Ratio,
}

/// Effect of altitude.
#[derive(Clone, Copy, Debug)]
pub struct Altitude;

no_settings!(Altitude);

impl Calculation for Altitude {
    type Input = HeightAboveSea;
    type Output = AltitudeEffect;
    const INFO: Info = Info {
        name: "altitude",
        title: "Effect of altitude",
        summary: "Barometric pressure at a height, and with it the density of air and the heat input of a burner left as it was set at sea level.",
        sources: &[
            Source::new(
                "ISO 2533:1975 standard atmosphere (constants from memory, checked on its sea-level values)",
                "pressure with height",
            ),
            Source::new("Orifice equation; textbook", "heat input with the root of gas density"),
        ],
        accuracy: "Weather of equal sea-level pressure departs from the standard atmosphere by about 0.5 % of the pressure for each 1000 m.",
        cautions: &["Rules for derating at altitude are the maker's and the local code's; they are not reckoned here.", CAUTION_BURNER],
        checked_against: "trade/gas_rate.csv (altitude_pressure_ISA); the printed ISO 2533 pressures at 1000, 2000 and 3000 m (from memory)",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &HeightAboveSea, working: &mut W) -> AltitudeEffect {
        let ratio = standard_pressure_ratio(input.altitude.si());
        let standard = SEA_LEVEL_TEMPERATURE - LAPSE_RATE * input.altitude.si();
        let temperature = ThermodynamicTemperature::from_si(super::or(input.air_temperature.si(), standard));
        step!(working, let barometer: "p_b" as Pressure in MILLIBAR = input.sea_level_pressure.plain() * ratio, "ISO 2533");
        step!(working, let pressure_ratio: "p_b/p_n" = Ratio::from_si(barometer.si() / 101_325.0), "definition");
        step!(working, let air_density_ratio: "\\rho/\\rho_n" = Ratio::from_si(pressure_ratio.si() * SEA_LEVEL_TEMPERATURE / temperature.si()), "ideal gas law");
        step!(working, let heat_input_ratio: "\\dot Q/\\dot Q_n" = Ratio::from_si(math::sqrt(pressure_ratio.si())), "orifice equation");
        AltitudeEffect { barometric_pressure: AbsolutePressure::new(barometer), pressure_ratio, air_density_ratio, heat_input_ratio }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;

    #[test]
    fn the_standard_atmosphere_is_met() {
        // ISO 2533 tables, geopotential height, hPa and kelvin; from memory.
        for (height, pressure, temperature) in
            [(0.0, 1013.25, 288.15), (1000.0, 898.746, 281.65), (2000.0, 794.952, 275.15), (3000.0, 701.085, 268.65)]
        {
            let place = HeightAboveSea { altitude: Length::from_si(height), ..HeightAboveSea::unset() };
            let got = Altitude.evaluate(&place).unwrap().output;
            assert!((got.barometric_pressure.si() / 100.0 - pressure).abs() < 0.01, "{height}: {}", got.barometric_pressure.si());
            let density = pressure / 1013.25 * 288.15 / temperature;
            assert!((got.air_density_ratio.si() - density).abs() < 1e-5, "{height}: {}", got.air_density_ratio.si());
            let square = got.heat_input_ratio.si() * got.heat_input_ratio.si();
            assert!((square - got.pressure_ratio.si()).abs() < 1e-15);
        }
    }
}
