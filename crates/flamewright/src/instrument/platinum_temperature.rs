//! The calculation `platinum_temperature`: from the resistance of a platinum thermometer.

use super::resistance_thermometer::{PlatinumClass, PlatinumConstruction, resistance_ratio, resistance_ratio_slope, temperature_celsius};
use crate::calculation::{Calculation, Context, Form, Info, Raised, Setting, Settings, Source};
use crate::quantity::types::{ElectricalResistance, TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::{Value, units::KELVIN};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};

/// A platinum thermometer measured with an ohmmeter.
#[record]
pub struct PlatinumReading {
    /// Resistance at the meter.
    #[field("R", OHM, 0.1..=50_000.0, usual = 80.0..=2000.0)]
    pub resistance: ElectricalResistance,
    /// Resistance of the element at 0 °C: 100 Ω of a Pt100, 1000 Ω of a Pt1000.
    #[field("R_0", OHM, 1.0..=10_000.0)]
    pub resistance_at_zero: ElectricalResistance,
    /// Resistance of both leads together, as in a two-wire circuit; 0 with three or four wires.
    #[field("R_L", OHM, 0.0..=100.0, default = 0.0, usual = 0.0..=5.0)]
    pub lead_resistance: ElectricalResistance,
}

/// What the resistance means.
#[record]
pub struct PlatinumTemperature {
    /// Temperature of the element, the leads allowed for.
    #[field("t", DEGREE_CELSIUS)]
    pub temperature: ThermodynamicTemperature,
    /// Temperature that the resistance at the meter indicates if the leads are forgotten.
    #[field("t_i", DEGREE_CELSIUS)]
    pub indicated_temperature: ThermodynamicTemperature,
    /// By how much the indicated temperature is too high.
    #[field("\\Delta t_L", KELVIN)]
    pub lead_error: TemperatureInterval,
    /// Relative change of the resistance with temperature, referred to 0 °C.
    #[field("s", PERCENT_PER_KELVIN)]
    pub sensitivity: TemperatureCoefficient,
    /// Half-width of the tolerance of the class at this temperature.
    #[field("\\Delta t_{tol}", KELVIN, absent = "no class was named")]
    pub tolerance: TemperatureInterval,
}

/// The tolerance class of a platinum thermometer and how the element is made.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct PlatinumGrade {
    /// The class, where one is known.
    pub class: Option<PlatinumClass>,
    /// How the element is made; it decides how far the class reaches.
    pub construction: PlatinumConstruction,
}

impl PlatinumGrade {
    pub(super) const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "class",
            doc: "Tolerance class of IEC 60751.",
            form: Form::Choice(&["none", "AA", "A", "B", "C"]),
            default: Some("none"),
        },
        Setting {
            name: "construction",
            doc: "Wire-wound or film element; it decides how far the class reaches.",
            form: Form::Choice(&["wire", "film"]),
            default: Some("wire"),
        },
    ];

    pub(super) fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        use PlatinumClass::{A, AA, B, C};
        Ok(Self {
            class: settings.choice("class", &[("none", None), ("AA", Some(AA)), ("A", Some(A)), ("B", Some(B)), ("C", Some(C))])?,
            construction: settings.choice("construction", &[("wire", PlatinumConstruction::Wire), ("film", PlatinumConstruction::Film)])?,
        })
    }

    /// Half-width of the tolerance in K; NaN without a class.
    #[inline(always)]
    pub(super) fn tolerance(self, celsius: f64) -> f64 {
        self.class.map_or(f64::NAN, |class| class.tolerance_kelvin(celsius))
    }

    /// Whether the class is defined at this temperature, or none is named.
    #[inline(always)]
    pub(super) fn reaches(self, celsius: f64) -> bool {
        self.class.is_none_or(|class| {
            let (lowest, highest) = class.range_celsius(self.construction);
            celsius >= lowest && celsius <= highest
        })
    }
}

pub(super) const SOURCES: &[Source] = &[
    Source::new("IEC 60751:2008, 4.2, coefficients from public reproductions", "resistance and temperature"),
    Source::new("IEC 60751:2008, tolerance classes, formulae from public reproductions, ranges from memory", "tolerance"),
];

/// Temperature from the resistance of a platinum thermometer.
#[derive(Clone, Copy, Debug, Default)]
pub struct PlatinumThermometer {
    /// Tolerance class and construction.
    pub grade: PlatinumGrade,
}

impl Context for PlatinumThermometer {
    const SETTINGS: &'static [Setting] = PlatinumGrade::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        PlatinumGrade::from_settings(settings).map(|grade| Self { grade })
    }
}

rules! {
    refuse OPEN_OR_SHORT on "resistance": "no temperature from -200 to 850 °C has this resistance: open circuit, short circuit, or another resistance at 0 °C";
    notice BEYOND_CLASS on "resistance": "the class is not defined at this temperature for this construction; the tolerance is its formula continued";
}

impl Calculation for PlatinumThermometer {
    type Input = PlatinumReading;
    type Output = PlatinumTemperature;
    const INFO: Info = Info {
        name: "platinum_temperature",
        title: "Temperature of a platinum thermometer",
        summary: "Temperature from the resistance of a Pt100, Pt1000 or other platinum element, with the error of two-wire leads and the tolerance of a class.",
        sources: SOURCES,
        accuracy: "The relation is inverted to 1e-9 K from -200 to 850 °C; the class of the element and the meter decide.",
        cautions: &[],
        checked_against: "trade/sensors.csv (pt100_inverse, pt_tolerance, pt_two_wire_lead_error)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &PlatinumReading) -> Raised {
        let ratio = input.resistance.si() / input.resistance_at_zero.si();
        let element = (input.resistance.si() - input.lead_resistance.si()) / input.resistance_at_zero.si();
        Raised::NONE.when(OPEN_OR_SHORT, !(element >= resistance_ratio(-200.0) && ratio <= resistance_ratio(850.0)))
    }

    #[inline(always)]
    fn review(&self, _: &PlatinumReading, output: &PlatinumTemperature) -> Raised {
        Raised::NONE.when(BEYOND_CLASS, !self.grade.reaches(output.temperature.si() - 273.15))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &PlatinumReading, working: &mut W) -> PlatinumTemperature {
        let (resistance, resistance_at_zero, lead_resistance) = (input.resistance, input.resistance_at_zero, input.lead_resistance);
        step!(working, let ratio: "r" = (resistance - lead_resistance) / resistance_at_zero, "IEC 60751, 4.2");
        step!(working, let indicated_ratio: "r_i" = resistance / resistance_at_zero, "as if without leads");
        let (celsius, indicated_celsius) = (temperature_celsius(ratio.si()), temperature_celsius(indicated_ratio.si()));
        step!(working, let temperature: "t" = ThermodynamicTemperature::from_si(celsius + 273.15), "IEC 60751, 4.2, inverted");
        step!(working, let indicated_temperature: "t_i" = ThermodynamicTemperature::from_si(indicated_celsius + 273.15), "IEC 60751, 4.2, inverted");
        step!(working, let lead_error: "\\Delta t_L" in KELVIN = TemperatureInterval::from_si(indicated_celsius - celsius), "difference");
        PlatinumTemperature {
            temperature,
            indicated_temperature,
            lead_error,
            sensitivity: TemperatureCoefficient::from_si(resistance_ratio_slope(celsius)),
            tolerance: TemperatureInterval::from_si(self.grade.tolerance(celsius)),
        }
    }
}
