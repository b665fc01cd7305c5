//! The calculations `mass_concentration` and `volume_fraction`: ppm to mg/m³ and back.

use super::emission::{CARBON_MONOXIDE_MOLAR_MASS, NITROGEN_DIOXIDE_MOLAR_MASS, fraction_from_mass_concentration, mass_concentration};
use crate::Error;
use crate::calculation::{Calculation, Context, Form, Info, Setting, Settings, Source};
use crate::combustion::species;
use crate::quantity::types::{MassDensity, Ratio, ThermodynamicTemperature};
use crate::quantity::{AbsolutePressure, Value};
use crate::record::record;
use crate::working::{Working, step};

/// A share of volume, and the state of the gas it is in.
#[record]
pub struct VolumeFractionReading {
    /// Share of volume.
    #[field("x", PPM, 0.0..=1e6)]
    pub fraction: Ratio,
    /// Temperature to which the cubic metre refers; without it the mass is up to 7 % wrong.
    #[field("t", DEGREE_CELSIUS, -50.0..=60.0)]
    pub temperature: ThermodynamicTemperature,
    /// Absolute pressure to which the cubic metre refers.
    #[field("p", MILLIBAR, 600.0..=1100.0, default = 1013.25)]
    pub pressure: AbsolutePressure,
}

/// The share as mass per volume.
#[record]
pub struct MassConcentrationResult {
    /// Mass of the gas per cubic metre.
    #[field("\\beta", MILLIGRAM_PER_CUBIC_METRE)]
    pub mass_concentration: MassDensity,
}

/// A mass per volume, and the state of the gas it is in.
#[record]
pub struct MassConcentrationReading {
    /// Mass of the gas per cubic metre.
    #[field("\\beta", MILLIGRAM_PER_CUBIC_METRE, 0.0..=3e6)]
    pub mass_concentration: MassDensity,
    /// Temperature to which the cubic metre refers.
    #[field("t", DEGREE_CELSIUS, -50.0..=60.0)]
    pub temperature: ThermodynamicTemperature,
    /// Absolute pressure to which the cubic metre refers.
    #[field("p", MILLIBAR, 600.0..=1100.0, default = 1013.25)]
    pub pressure: AbsolutePressure,
}

/// The mass as a share of volume.
#[record]
pub struct VolumeFractionResult {
    /// Share of volume.
    #[field("x", PPM)]
    pub fraction: Ratio,
}

const GASES: [(&str, f64); 4] = [
    ("carbon monoxide", CARBON_MONOXIDE_MOLAR_MASS),
    ("carbon dioxide", species::CARBON_DIOXIDE.molar_mass),
    ("nitrogen monoxide", species::NITRIC_OXIDE.molar_mass),
    ("nitrogen dioxide", NITROGEN_DIOXIDE_MOLAR_MASS),
];

const GAS: Setting = Setting {
    name: "gas",
    doc: "Which gas; nitrogen oxides are counted as nitrogen dioxide.",
    form: Form::Choice(&["carbon monoxide", "carbon dioxide", "nitrogen monoxide", "nitrogen dioxide"]),
    default: Some("carbon monoxide"),
};

const SOURCES: &[Source] = &[Source::new("ideal gas; ISO 6976:2016 Table A.2", "density and molar masses")];
const ACCURACY: &str = "0.1 % at room conditions (ideal gas).";
const CHECKED: &str = "trade/flue_vent.csv: ppm_to_mg_m3, mg_m3_to_ppm";

/// From a share of volume to mass per volume.
#[derive(Clone, Copy, Debug)]
pub struct MassConcentration {
    /// Molar mass of the gas, kg/mol.
    pub molar_mass: f64,
}

/// From mass per volume to a share of volume.
#[derive(Clone, Copy, Debug)]
pub struct VolumeFraction {
    /// Molar mass of the gas, kg/mol.
    pub molar_mass: f64,
}

impl Context for MassConcentration {
    const SETTINGS: &'static [Setting] = &[GAS];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { molar_mass: settings.choice("gas", &GASES)? })
    }
}

impl Context for VolumeFraction {
    const SETTINGS: &'static [Setting] = &[GAS];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { molar_mass: settings.choice("gas", &GASES)? })
    }
}

impl Calculation for MassConcentration {
    type Input = VolumeFractionReading;
    type Output = MassConcentrationResult;
    const INFO: Info = Info {
        name: "mass_concentration",
        title: "Mass concentration from volume fraction",
        summary: "Milligrams per cubic metre from parts per million, at a stated temperature and pressure.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: super::CAUTIONS,
        checked_against: CHECKED,
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &VolumeFractionReading, working: &mut W) -> MassConcentrationResult {
        let density = MassDensity::from_si(mass_concentration(1.0, self.molar_mass, input.temperature.si(), input.pressure.si()));
        step!(working, let concentration: "\\beta" = input.fraction * density, "ideal gas");
        MassConcentrationResult { mass_concentration: concentration }
    }
}

impl Calculation for VolumeFraction {
    type Input = MassConcentrationReading;
    type Output = VolumeFractionResult;
    const INFO: Info = Info {
        name: "volume_fraction",
        title: "Volume fraction from mass concentration",
        summary: "Parts per million from milligrams per cubic metre, at a stated temperature and pressure.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: super::CAUTIONS,
        checked_against: CHECKED,
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &MassConcentrationReading, working: &mut W) -> VolumeFractionResult {
        let fraction =
            fraction_from_mass_concentration(input.mass_concentration.si(), self.molar_mass, input.temperature.si(), input.pressure.si());
        step!(working, let fraction: "x" = Ratio::from_si(fraction), "ideal gas");
        VolumeFractionResult { fraction }
    }
}
