//! The calculation `thermocouple_voltage`: what a thermocouple should give.

use super::thermocouple_temperature::{SOURCES, ThermocoupleGrade};
use crate::calculation::{Calculation, Context, Info, Raised, Setting, Settings};
use crate::quantity::Value;
use crate::quantity::types::{ElectricPotential, PotentialPerTemperature, TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::units::MILLIVOLT;
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};

/// The two junctions of a thermocouple.
#[record]
pub struct ThermocoupleState {
    /// Temperature of the measuring junction.
    #[field("t", DEGREE_CELSIUS, -270.0..=1820.0, usual = -20.0..=600.0)]
    pub temperature: ThermodynamicTemperature,
    /// Temperature where the couple joins the copper of the meter.
    #[field("t_r", DEGREE_CELSIUS, -40.0..=80.0, default = 0.0, usual = 0.0..=40.0)]
    pub reference_junction_temperature: ThermodynamicTemperature,
}

/// What to expect at the meter.
#[record]
pub struct ThermocoupleExpectation {
    /// Voltage at the meter.
    #[field("E_m", MILLIVOLT)]
    pub voltage: ElectricPotential,
    /// EMF of the measuring junction, referred to 0 °C.
    #[field("E", MILLIVOLT)]
    pub emf: ElectricPotential,
    /// EMF of the reference junction, which is taken off it.
    #[field("E_r", MILLIVOLT)]
    pub reference_junction_emf: ElectricPotential,
    /// Seebeck coefficient at the measuring junction.
    #[field("S", MICROVOLT_PER_KELVIN)]
    pub seebeck_coefficient: PotentialPerTemperature,
    /// Half-width of the tolerance of the class at this temperature.
    #[field("\\Delta t_{tol}", KELVIN, absent = "no class was named, or the type has no such class")]
    pub tolerance: TemperatureInterval,
}

/// Voltage to expect of a thermocouple.
#[derive(Clone, Copy, Debug)]
pub struct ThermocoupleVoltage {
    /// Type and tolerance class.
    pub grade: ThermocoupleGrade,
}

impl Context for ThermocoupleVoltage {
    const SETTINGS: &'static [Setting] = ThermocoupleGrade::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        ThermocoupleGrade::from_settings(settings).map(|grade| Self { grade })
    }
}

rules! {
    refuse TYPE_OUTSIDE on "temperature": "the reference function of this type does not reach this temperature";
    refuse REFERENCE_OUTSIDE on "reference_junction_temperature": "the reference function of this type does not reach this temperature";
    notice BEYOND_CLASS on "temperature": "the class is not defined at this temperature; the tolerance is its formula continued";
}

impl Calculation for ThermocoupleVoltage {
    type Input = ThermocoupleState;
    type Output = ThermocoupleExpectation;
    const INFO: Info = Info {
        name: "thermocouple_voltage",
        title: "Voltage of a thermocouple",
        summary: "Voltage to expect at the meter for the temperatures of both junctions.",
        sources: SOURCES,
        accuracy: "The reference function is exact by definition; the class of the wire decides.",
        cautions: &[],
        checked_against: "trade/sensors.csv (typeK_table, typeK_tolerance)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &ThermocoupleState) -> Raised {
        let (lowest, highest) = self.grade.kind.range_celsius();
        let celsius = input.temperature.si() - 273.15;
        Raised::NONE
            .when(TYPE_OUTSIDE, celsius < lowest || celsius > highest)
            .when(REFERENCE_OUTSIDE, input.reference_junction_temperature.si() - 273.15 < lowest)
            .when(BEYOND_CLASS, !self.grade.reaches(celsius))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &ThermocoupleState, working: &mut W) -> ThermocoupleExpectation {
        let kind = self.grade.kind;
        let (temperature, reference_temperature) = (input.temperature, input.reference_junction_temperature);
        step!(working, let emf: "E" in MILLIVOLT = kind.emf(temperature), "NIST SRD 60");
        step!(working, let reference_junction_emf: "E_r" in MILLIVOLT = kind.emf(reference_temperature), "NIST SRD 60");
        step!(working, let voltage: "E_m" in MILLIVOLT = emf - reference_junction_emf, "law of intermediate temperatures");
        ThermocoupleExpectation {
            voltage,
            emf,
            reference_junction_emf,
            seebeck_coefficient: kind.seebeck_coefficient(temperature),
            tolerance: TemperatureInterval::from_si(self.grade.tolerance(temperature.si() - 273.15)),
        }
    }
}
