//! The calculation `thermocouple_temperature`: from a measured voltage and the reference junction.

use super::thermocouple::{ThermocoupleClass, ThermocoupleType};
use crate::calculation::{Calculation, Context, Form, Info, Raised, Setting, Settings, Source};
use crate::quantity::Value;
use crate::quantity::types::{ElectricPotential, PotentialPerTemperature, TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::units::{DEGREE_CELSIUS, KELVIN, MILLIVOLT};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};

/// A thermocouple measured with a millivoltmeter.
#[record]
pub struct ThermocoupleReading {
    /// Voltage at the meter.
    #[field("E_m", MILLIVOLT, -15.0..=80.0, usual = -2.0..=25.0)]
    pub voltage: ElectricPotential,
    /// Temperature where the couple joins the copper of the meter.
    #[field("t_r", DEGREE_CELSIUS, -40.0..=80.0, usual = 0.0..=40.0)]
    pub reference_junction_temperature: ThermodynamicTemperature,
}

/// What the voltage means.
#[record]
pub struct ThermocoupleTemperature {
    /// EMF of the reference junction, which is added to the voltage.
    #[field("E_r", MILLIVOLT)]
    pub reference_junction_emf: ElectricPotential,
    /// EMF of the measuring junction, referred to 0 °C.
    #[field("E", MILLIVOLT)]
    pub emf: ElectricPotential,
    /// Temperature of the measuring junction.
    #[field("t", DEGREE_CELSIUS)]
    pub temperature: ThermodynamicTemperature,
    /// Seebeck coefficient there.
    #[field("S", MICROVOLT_PER_KELVIN)]
    pub seebeck_coefficient: PotentialPerTemperature,
    /// Error made by whoever looks the voltage up in the table and adds the temperature of the reference junction.
    #[field("\\Delta t_{add}", KELVIN, absent = "the voltage alone has no temperature")]
    pub addition_error: TemperatureInterval,
    /// Half-width of the tolerance of the class at this temperature.
    #[field("\\Delta t_{tol}", KELVIN, absent = "no class was named, or the type has no such class")]
    pub tolerance: TemperatureInterval,
}

/// Type and tolerance class of a thermocouple.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ThermocoupleGrade {
    /// The letter-designated type.
    pub kind: ThermocoupleType,
    /// The tolerance class, where one is known.
    pub class: Option<ThermocoupleClass>,
}

impl ThermocoupleGrade {
    pub(super) const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "type",
            doc: "Letter of the thermocouple type, IEC 60584-1.",
            form: Form::Choice(&["K", "J", "T", "N", "S", "R", "B", "E"]),
            default: Some("K"),
        },
        Setting {
            name: "class",
            doc: "Tolerance class of IEC 60584-1.",
            form: Form::Choice(&["none", "1", "2", "3"]),
            default: Some("none"),
        },
    ];

    pub(super) fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        use ThermocoupleClass::{One, Three, Two};
        Ok(Self {
            kind: settings.choice("type", &ThermocoupleType::ALL.map(|kind| (kind.letter(), kind)))?,
            class: settings.choice("class", &[("none", None), ("1", Some(One)), ("2", Some(Two)), ("3", Some(Three))])?,
        })
    }

    /// Half-width of the tolerance in K; NaN without a class.
    #[inline(always)]
    pub(super) fn tolerance(self, celsius: f64) -> f64 {
        self.class.and_then(|class| self.kind.tolerance(class)).map_or(f64::NAN, |tolerance| tolerance.kelvin(celsius))
    }

    /// Whether the class is defined at this temperature, or none is named or exists.
    #[inline(always)]
    pub(super) fn reaches(self, celsius: f64) -> bool {
        self.class.and_then(|class| self.kind.tolerance(class)).is_none_or(|tolerance| tolerance.reaches(celsius))
    }
}

pub(super) const SOURCES: &[Source] = &[
    Source::new(
        "NIST Standard Reference Database 60 (Monograph 175), same functions as IEC 60584-1:2013",
        "EMF on ITS-90, reference junction at 0 °C",
    ),
    Source::new("IEC 60584-1:2013, tolerance classes, from two public reproductions", "tolerance"),
];

/// Temperature from a thermocouple's voltage.
#[derive(Clone, Copy, Debug)]
pub struct Thermocouple {
    /// Type and tolerance class.
    pub grade: ThermocoupleGrade,
}

impl Context for Thermocouple {
    const SETTINGS: &'static [Setting] = ThermocoupleGrade::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        ThermocoupleGrade::from_settings(settings).map(|grade| Self { grade })
    }
}

rules! {
    refuse NO_TEMPERATURE on "voltage": "no temperature of this type has this EMF: wrong type, swapped leads or a break; type B has none below 42 °C";
    refuse REFERENCE_OUTSIDE on "reference_junction_temperature": "the reference function of this type does not reach this temperature";
    notice INSENSITIVE on "voltage": "the type gives less than 3 µV/K here: an error of a hundredth of a millivolt is more than 3 K";
    notice BEYOND_CLASS on "voltage": "the class is not defined at this temperature; the tolerance is its formula continued";
}

impl Calculation for Thermocouple {
    type Input = ThermocoupleReading;
    type Output = ThermocoupleTemperature;
    const INFO: Info = Info {
        name: "thermocouple_temperature",
        title: "Temperature of a thermocouple",
        summary: "Temperature of the measuring junction from the voltage at the meter and the temperature of the reference junction, whose EMF is added.",
        sources: SOURCES,
        accuracy: "The reference function is inverted to 1e-9 K (at the joins of its pieces it steps itself by up to 1.2e-6 K); the class of the wire decides.",
        cautions: &[],
        checked_against: "trade/sensors.csv (typeK_inverse, typeK_cold_junction, typeK_tolerance)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &ThermocoupleReading) -> Raised {
        let (lowest, _) = self.grade.kind.range_celsius();
        Raised::NONE.when(REFERENCE_OUTSIDE, input.reference_junction_temperature.si() - 273.15 < lowest)
    }

    #[inline(always)]
    fn review(&self, _: &ThermocoupleReading, output: &ThermocoupleTemperature) -> Raised {
        Raised::NONE
            .when(NO_TEMPERATURE, output.temperature.si().is_nan())
            .when(INSENSITIVE, output.seebeck_coefficient.si() < 3e-6)
            .when(BEYOND_CLASS, !self.grade.reaches(output.temperature.si() - 273.15))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &ThermocoupleReading, working: &mut W) -> ThermocoupleTemperature {
        let kind = self.grade.kind;
        let (voltage, reference_temperature) = (input.voltage, input.reference_junction_temperature);
        step!(working, let reference_junction_emf: "E_r" in MILLIVOLT = kind.emf(reference_temperature), "NIST SRD 60");
        step!(working, let emf: "E" in MILLIVOLT = voltage + reference_junction_emf, "law of intermediate temperatures");
        step!(working, let temperature: "t" in DEGREE_CELSIUS = kind.temperature(emf), "NIST SRD 60, inverted");
        let added = kind.temperature(voltage).si() + reference_temperature.si() - 273.15;
        step!(working, let addition_error: "\\Delta t_{add}" in KELVIN = TemperatureInterval::from_si(added - temperature.si()), "difference");
        ThermocoupleTemperature {
            reference_junction_emf,
            emf,
            temperature,
            seebeck_coefficient: kind.seebeck_coefficient(temperature),
            addition_error,
            tolerance: TemperatureInterval::from_si(self.grade.tolerance(temperature.si() - 273.15)),
        }
    }
}
