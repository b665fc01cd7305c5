//! The calculations `gas_mass_concentration` and `gas_volume_fraction`: ppm and mg/m³.

use crate::Error;
use crate::calculation::{Calculation, Context, Form, Info, Setting, Settings, Source};
use crate::quantity::types::{MassDensity, MolarMass, Ratio, ThermodynamicTemperature};
use crate::quantity::units::{MILLIGRAM_PER_CUBIC_METRE, PPM};
use crate::quantity::{AbsolutePressure, Value, units};
use crate::record::record;
use crate::working::{Working, step};

/// Molar gas constant, J/(mol K), exact in the SI since 2019.
const MOLAR_GAS_CONSTANT: f64 = 8.314_462_618_153_24;

/// A gas that analysers measure, with its molar mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TraceGas {
    /// The molar mass.
    pub molar_mass: MolarMass,
}

/// Molar masses in g/mol from the standard atomic weights of IUPAC (abridged values of 2013: H 1.008, C 12.011, N 14.007, O 15.999,
/// S 32.06), but for carbon monoxide and dioxide, which are given to the figures of ISO 6976:2016.
const MOLAR_MASSES: &[(&str, f64)] = &[
    ("carbon_monoxide", 28.0101),
    ("carbon_dioxide", 44.0095),
    ("nitric_oxide", 30.006),
    ("nitrogen_dioxide", 46.005),
    ("sulphur_dioxide", 64.058),
    ("methane", 16.043),
    ("oxygen", 31.998),
];

impl TraceGas {
    /// The gas called `name`.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        MOLAR_MASSES.iter().find(|(n, _)| *n == name).map(|&(_, grams)| Self { molar_mass: MolarMass::from_si(grams * 1e-3) })
    }

    const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "gas",
            doc: "The gas; oxides of nitrogen together are stated as nitrogen dioxide.",
            form: Form::Choice(&[
                "carbon_monoxide",
                "carbon_dioxide",
                "nitric_oxide",
                "nitrogen_dioxide",
                "sulphur_dioxide",
                "methane",
                "oxygen",
                "other",
            ]),
            default: Some("carbon_monoxide"),
        },
        Setting {
            name: "molar_mass",
            doc: "Molar mass, for gas = \"other\" alone.",
            form: Form::Quantity(MolarMass::KIND, &units::GRAM_PER_MOLE),
            default: None,
        },
    ];

    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let name = settings.text("gas")?;
        if name == "other" {
            return settings.quantity("molar_mass", 1e-3..=0.5).map(|molar_mass| Self { molar_mass });
        }
        if settings.get("molar_mass").is_some() {
            return Err(Error::bad_setting("molar_mass", "", "it belongs to gas = \"other\"; that of a named gas is known"));
        }
        Self::named(name).ok_or_else(|| Error::unknown_name("gas", name, MOLAR_MASSES.iter().map(|&(n, _)| n)))
    }
}

const SOURCES: &[Source] = &[
    Source::new("ideal gas law with the molar gas constant of the SI (2019)", "concentration from fraction"),
    Source::new("IUPAC standard atomic weights (abridged, 2013); ISO 6976:2016 for carbon monoxide and dioxide", "molar masses"),
];
const ACCURACY: &str = "The ideal gas law is good to 0.1 % for flue gas and room air; the analyser decides.";
const CAUTIONS: &[&str] = &[
    "Carbon monoxide cannot be smelt or felt. On an alarm or a suspicious reading: people out first, ventilate, isolate the gas, then calculate.",
    "A number below a limit says nothing of spillage, flue flow or ventilation; limits and procedures are those in force locally.",
];

/// A share by volume at a temperature and pressure.
#[record]
pub struct FractionState {
    /// Share by volume, dry or wet as it was measured; the concentration stands on the same basis.
    #[field("x", PPM, 0.0..=1_000_000.0, usual = 0.0..=5000.0)]
    pub volume_fraction: Ratio,
    /// Temperature to which the cubic metre refers.
    #[field("t", DEGREE_CELSIUS, -50.0..=1500.0, usual = 0.0..=25.0)]
    pub temperature: ThermodynamicTemperature,
    /// Pressure to which the cubic metre refers.
    #[field("p", MILLIBAR, 300.0..=2000.0, usual = 800.0..=1050.0)]
    pub pressure: AbsolutePressure,
}

/// A concentration by mass.
#[record]
pub struct MassConcentration {
    /// Mass of the gas per volume of the mixture.
    #[field("\\rho", MILLIGRAM_PER_CUBIC_METRE)]
    pub mass_concentration: MassDensity,
}

/// Mass concentration of a gas from its share by volume.
#[derive(Clone, Copy, Debug)]
pub struct GasMassConcentration {
    /// The gas.
    pub gas: TraceGas,
}

impl Context for GasMassConcentration {
    const SETTINGS: &'static [Setting] = TraceGas::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        TraceGas::from_settings(settings).map(|gas| Self { gas })
    }
}

impl Calculation for GasMassConcentration {
    type Input = FractionState;
    type Output = MassConcentration;
    const INFO: Info = Info {
        name: "gas_mass_concentration",
        title: "Mass concentration of a gas",
        summary: "Milligrams per cubic metre from parts per million at a stated temperature and pressure.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: CAUTIONS,
        checked_against: "trade/flue_vent.csv (ppm_to_mg_m3)",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &FractionState, working: &mut W) -> MassConcentration {
        let (volume_fraction, temperature, pressure) = (input.volume_fraction, input.temperature.si(), input.pressure.si());
        let molar_mass = self.gas.molar_mass;
        let molar_volume = MOLAR_GAS_CONSTANT * temperature / pressure;
        step!(working, let gas_density: "\\rho_1" = MassDensity::from_si(molar_mass.si() / molar_volume), "ideal gas, M p / (R T)");
        step!(working, let mass_concentration: "\\rho" in MILLIGRAM_PER_CUBIC_METRE = volume_fraction * gas_density, "definition");
        MassConcentration { mass_concentration }
    }
}

/// A concentration by mass at a temperature and pressure.
#[record]
pub struct ConcentrationState {
    /// Mass of the gas per volume of the mixture; the share stands on the same basis, dry or wet.
    #[field("\\rho", MILLIGRAM_PER_CUBIC_METRE, 0.0..=5_000_000.0, usual = 0.0..=10_000.0)]
    pub mass_concentration: MassDensity,
    /// Temperature to which the cubic metre refers.
    #[field("t", DEGREE_CELSIUS, -50.0..=1500.0, usual = 0.0..=25.0)]
    pub temperature: ThermodynamicTemperature,
    /// Pressure to which the cubic metre refers.
    #[field("p", MILLIBAR, 300.0..=2000.0, usual = 800.0..=1050.0)]
    pub pressure: AbsolutePressure,
}

/// A share by volume.
#[record]
pub struct VolumeFraction {
    /// Share by volume.
    #[field("x", PPM)]
    pub volume_fraction: Ratio,
}

crate::rules! {
    refuse MORE_THAN_ALL on "mass_concentration": "that is more than the pure gas weighs at this temperature and pressure";
}

/// Share by volume of a gas from its mass concentration.
#[derive(Clone, Copy, Debug)]
pub struct GasVolumeFraction {
    /// The gas.
    pub gas: TraceGas,
}

impl Context for GasVolumeFraction {
    const SETTINGS: &'static [Setting] = TraceGas::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        TraceGas::from_settings(settings).map(|gas| Self { gas })
    }
}

impl Calculation for GasVolumeFraction {
    type Input = ConcentrationState;
    type Output = VolumeFraction;
    const INFO: Info = Info {
        name: "gas_volume_fraction",
        title: "Volume fraction of a gas",
        summary: "Parts per million from milligrams per cubic metre at a stated temperature and pressure.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: CAUTIONS,
        checked_against: "trade/flue_vent.csv (mg_m3_to_ppm)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn review(&self, _: &ConcentrationState, output: &VolumeFraction) -> crate::calculation::Raised {
        crate::calculation::Raised::NONE.when(MORE_THAN_ALL, output.volume_fraction.si() > 1.0)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &ConcentrationState, working: &mut W) -> VolumeFraction {
        let (mass_concentration, temperature, pressure) = (input.mass_concentration, input.temperature.si(), input.pressure.si());
        let molar_mass = self.gas.molar_mass;
        let molar_volume = MOLAR_GAS_CONSTANT * temperature / pressure;
        step!(working, let gas_density: "\\rho_1" = MassDensity::from_si(molar_mass.si() / molar_volume), "ideal gas, M p / (R T)");
        step!(working, let volume_fraction: "x" in PPM = mass_concentration / gas_density, "definition");
        VolumeFraction { volume_fraction }
    }
}
