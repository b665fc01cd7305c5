//! The calculation `platinum_resistance`: what a platinum thermometer should measure.

use super::platinum_temperature::{PlatinumGrade, SOURCES};
use super::resistance_thermometer::{resistance_ratio, resistance_ratio_slope, temperature_celsius};
use crate::calculation::{Calculation, Context, Info, Raised, Setting, Settings};
use crate::quantity::types::{ElectricalResistance, Ratio, TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::{Value, units::KELVIN};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};

/// A platinum thermometer at a known temperature.
#[record]
pub struct PlatinumState {
    /// Temperature of the element.
    #[field("t", DEGREE_CELSIUS, -200.0..=850.0, usual = -30.0..=300.0)]
    pub temperature: ThermodynamicTemperature,
    /// Resistance of the element at 0 °C: 100 Ω of a Pt100, 1000 Ω of a Pt1000.
    #[field("R_0", OHM, 1.0..=10_000.0)]
    pub resistance_at_zero: ElectricalResistance,
    /// Resistance of both leads together, as in a two-wire circuit; 0 with three or four wires.
    #[field("R_L", OHM, 0.0..=100.0, default = 0.0, usual = 0.0..=5.0)]
    pub lead_resistance: ElectricalResistance,
}

/// What to expect of it.
#[record]
pub struct PlatinumExpectation {
    /// Resistance of the element.
    #[field("R", OHM)]
    pub resistance: ElectricalResistance,
    /// Resistance at the meter, through the leads.
    #[field("R_m", OHM)]
    pub resistance_with_leads: ElectricalResistance,
    /// Temperature that a two-wire meter without correction shows.
    #[field("t_i", DEGREE_CELSIUS, absent = "beyond 850 °C")]
    pub indicated_temperature: ThermodynamicTemperature,
    /// By how much that is too high.
    #[field("\\Delta t_L", KELVIN, absent = "beyond 850 °C")]
    pub lead_error: TemperatureInterval,
    /// Half-width of the tolerance of the class at this temperature.
    #[field("\\Delta t_{tol}", KELVIN, absent = "no class was named")]
    pub tolerance: TemperatureInterval,
    /// Lowest resistance at the meter within the tolerance.
    #[field("R_{min}", OHM, absent = "no class was named")]
    pub lowest_resistance: ElectricalResistance,
    /// Highest resistance at the meter within the tolerance.
    #[field("R_{max}", OHM, absent = "no class was named")]
    pub highest_resistance: ElectricalResistance,
    /// Relative change of the resistance with temperature, referred to 0 °C.
    #[field("s", PERCENT_PER_KELVIN)]
    pub sensitivity: TemperatureCoefficient,
}

/// Resistance to expect of a platinum thermometer.
#[derive(Clone, Copy, Debug, Default)]
pub struct PlatinumResistance {
    /// Tolerance class and construction.
    pub grade: PlatinumGrade,
}

impl Context for PlatinumResistance {
    const SETTINGS: &'static [Setting] = PlatinumGrade::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        PlatinumGrade::from_settings(settings).map(|grade| Self { grade })
    }
}

rules! {
    notice BEYOND_CLASS on "temperature": "the class is not defined at this temperature for this construction; the tolerance is its formula continued";
}

impl Calculation for PlatinumResistance {
    type Input = PlatinumState;
    type Output = PlatinumExpectation;
    const INFO: Info = Info {
        name: "platinum_resistance",
        title: "Resistance of a platinum thermometer",
        summary: "Resistance to expect of a platinum element at a temperature, the band its class allows, and what two-wire leads do to the reading.",
        sources: SOURCES,
        accuracy: "The relation is exact by definition; the class of the element decides.",
        cautions: &[],
        checked_against: "trade/sensors.csv (pt100_table, pt1000_forward, pt_two_wire_lead_error, pt_tolerance)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &PlatinumState) -> Raised {
        Raised::NONE.when(BEYOND_CLASS, !self.grade.reaches(input.temperature.si() - 273.15))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &PlatinumState, working: &mut W) -> PlatinumExpectation {
        let (resistance_at_zero, lead_resistance) = (input.resistance_at_zero, input.lead_resistance);
        let celsius = input.temperature.si() - 273.15;
        let slope = resistance_ratio_slope(celsius);
        step!(working, let ratio: "r" = Ratio::from_si(resistance_ratio(celsius)), "IEC 60751, 4.2");
        step!(working, let resistance: "R" = resistance_at_zero * ratio, "IEC 60751, 4.2");
        step!(working, let resistance_with_leads: "R_m" = resistance + lead_resistance, "series circuit");
        step!(working, let indicated_ratio: "r_i" = resistance_with_leads / resistance_at_zero, "as if without leads");
        let indicated_celsius = temperature_celsius(indicated_ratio.si());
        step!(working, let lead_error: "\\Delta t_L" in KELVIN = TemperatureInterval::from_si(indicated_celsius - celsius), "IEC 60751, 4.2, inverted");
        step!(working, let sensitivity: "s" = TemperatureCoefficient::from_si(slope), "derivative");
        step!(working, let tolerance: "\\Delta t_{tol}" in KELVIN = TemperatureInterval::from_si(self.grade.tolerance(celsius)), "IEC 60751 classes");
        step!(working, let half_band: "\\Delta R" = resistance_at_zero * sensitivity * tolerance, "first order");
        PlatinumExpectation {
            resistance,
            resistance_with_leads,
            indicated_temperature: ThermodynamicTemperature::from_si(indicated_celsius + 273.15),
            lead_error,
            tolerance,
            lowest_resistance: resistance_with_leads - half_band,
            highest_resistance: resistance_with_leads + half_band,
            sensitivity,
        }
    }
}
