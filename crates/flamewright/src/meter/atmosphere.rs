//! The calculation `atmospheric_pressure`: the barometer where none is at hand.

use super::conversion::{standard_atmosphere, uk_band, uk_deduction};
use crate::calculation::{Calculation, Info, Rule, Source};
use crate::error::Error;
use crate::no_settings;
use crate::quantity::types::{Length, Pressure};
use crate::quantity::units::MILLIBAR;
use crate::quantity::{AbsolutePressure, Value};
use crate::record::record;
use crate::working::{Working, step};

/// How an altitude stands in for a barometer.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum AltitudeRule {
    /// The standard atmosphere.
    #[default]
    StandardAtmosphere,
    /// What UK billing law of 1996 deducts, in proportion to the altitude.
    Uk1996,
}

impl AltitudeRule {
    pub(super) const CHOICES: [&'static str; 2] = ["standard_atmosphere", "uk_1996"];

    pub(super) fn named(settings: &crate::calculation::Settings<'_>, name: &str) -> Result<Self, Error> {
        let [standard, uk] = Self::CHOICES;
        settings.choice(name, &[(standard, Self::StandardAtmosphere), (uk, Self::Uk1996)])
    }

    pub(super) const fn source(self) -> &'static str {
        match self {
            Self::StandardAtmosphere => ISO_2533,
            Self::Uk1996 => SI_1996_439,
        }
    }

    /// Atmospheric pressure at an altitude in m, Pa.
    pub(super) fn pressure(self, altitude: f64) -> f64 {
        match self {
            Self::StandardAtmosphere => standard_atmosphere(altitude),
            Self::Uk1996 => standard_atmosphere(0.0) - uk_deduction(altitude),
        }
    }
}

/// Where the pressure is wanted.
#[record]
pub struct SiteAltitude {
    /// Height above mean sea level.
    #[field("h", METRE, -500.0..=5000.0, usual = -5.0..=2500.0)]
    pub altitude: Length,
}

/// Atmospheric pressure by the rules that stand in for a barometer.
#[record]
pub struct SitePressure {
    /// Pressure of the standard atmosphere.
    #[field("p_b", MILLIBAR)]
    pub standard_pressure: AbsolutePressure,
    /// What UK billing law of 1996 deducts from 1013.25 mbar, in proportion to the altitude.
    #[field("A", MILLIBAR, absent = "the table begins at sea level")]
    pub uk_deduction: Pressure,
    /// The deduction of the band of 2.5 m in which the altitude lies.
    #[field("A_{2.5}", MILLIBAR, absent = "the table begins at sea level")]
    pub uk_band_deduction: Pressure,
    /// 1013.25 mbar less the deduction in proportion.
    #[field("p_{UK}", MILLIBAR, absent = "the table begins at sea level")]
    pub uk_pressure: AbsolutePressure,
}

/// Atmospheric pressure from altitude.
#[derive(Clone, Copy, Debug)]
pub struct AtmosphericPressure;

no_settings!(AtmosphericPressure);

pub(super) const ISO_2533: &str = "ISO 2533:1975, troposphere formula (constants from memory)";
pub(super) const SI_1996_439: &str =
    "Gas (Calculation of Thermal Energy) Regulations 1996 (SI 1996/439), Schedule Part I, read in a public text copy";

impl Calculation for AtmosphericPressure {
    type Input = SiteAltitude;
    type Output = SitePressure;
    const INFO: Info = Info {
        name: "atmospheric_pressure",
        title: "Atmospheric pressure from altitude",
        summary: "The pressure of the standard atmosphere at an altitude, and what UK billing law deducts for it.",
        sources: &[Source::new(ISO_2533, "standard atmosphere"), Source::new(SI_1996_439, "deduction of 0.120 205 mbar a metre")],
        accuracy: "As the formulas. The weather moves the true barometer about either by up to 4 %: read one where it matters.",
        cautions: &[],
        checked_against: "trade/gas_rate.csv",
    };
    const RULES: &'static [Rule] = &[];

    #[inline(always)]
    fn compute<W: Working>(&self, input: &SiteAltitude, working: &mut W) -> SitePressure {
        let altitude = input.altitude.si();
        let on_table = if altitude >= 0.0 { altitude } else { f64::NAN };
        let sea_level = Pressure::from_si(standard_atmosphere(0.0));
        step!(working, let standard_pressure: "p_b" in MILLIBAR = Pressure::from_si(standard_atmosphere(altitude)), ISO_2533);
        step!(working, let uk_deduction: "A" in MILLIBAR = Pressure::from_si(uk_deduction(on_table)), SI_1996_439);
        step!(working, let uk_pressure: "p_{UK}" in MILLIBAR = sea_level - uk_deduction, SI_1996_439);
        SitePressure {
            standard_pressure: AbsolutePressure::new(standard_pressure),
            uk_deduction,
            uk_band_deduction: Pressure::from_si(super::conversion::uk_deduction(uk_band(on_table))),
            uk_pressure: AbsolutePressure::new(uk_pressure),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::supply::trade::{Inputs, check};

    fn at(inputs: &Inputs) -> SitePressure {
        AtmosphericPressure.evaluate(&SiteAltitude { altitude: Length::from_si(inputs.si("h")) }).unwrap().output
    }

    #[test]
    fn pressure_by_altitude_agrees_with_the_table() {
        let file = "trade/gas_rate.csv";
        assert_eq!(check(file, "altitude_pressure_ISA", |i, _| at(i).standard_pressure.si()), 6);
        assert_eq!(check(file, "altitude_pressure_deduction_UK", |i, _| at(i).uk_deduction.si()), 6);
        assert_eq!(check(file, "altitude_pressure_deduction_UK", |i, _| at(i).uk_band_deduction.si()), 6);
    }

    #[test]
    fn bands_are_taken_by_their_upper_edge() {
        for (altitude, edge) in [(0.0, 0.0), (0.1, 2.5), (2.5, 2.5), (2.6, 5.0), (100.0, 100.0), (101.0, 102.5)] {
            assert!((uk_band(altitude) - edge).abs() < 1e-9, "{altitude}");
        }
        let below = AtmosphericPressure.evaluate(&SiteAltitude { altitude: Length::from_si(-3.0) }).unwrap().output;
        assert!(below.uk_pressure.si().is_nan() && below.standard_pressure.si() > 101_325.0);
    }
}
