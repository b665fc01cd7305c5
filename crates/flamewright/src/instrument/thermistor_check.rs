//! The calculation `thermistor_check`: what an ohmmeter should show, and whether it does.

use super::thermistor::ThermistorCurve;
use super::thermistor_beta::SOURCES;
use crate::calculation::{Calculation, Column, Context, Info, Raised, Setting, Settings, Table};
use crate::quantity::types::{ElectricalResistance, Ratio, TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::{Value, units};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};
use alloc::vec::Vec;

/// A thermistor at a known temperature.
#[record]
pub struct ThermistorState {
    /// Temperature of the thermistor, from a thermometer beside it.
    #[field("t", DEGREE_CELSIUS, -50.0..=200.0, usual = -20.0..=110.0)]
    pub temperature: ThermodynamicTemperature,
    /// By how much that temperature may be wrong, either way.
    #[field("\\Delta t", KELVIN, 0.0..=20.0, default = 0.0, usual = 0.0..=5.0)]
    pub temperature_tolerance: TemperatureInterval,
    /// Tolerance of the resistance at the reference temperature, either way.
    #[field("\\delta_R", PERCENT, 0.0..=30.0, default = 0.0, usual = 0.0..=10.0)]
    pub resistance_tolerance: Ratio,
    /// Tolerance of Beta, either way.
    #[field("\\delta_\\beta", PERCENT, 0.0..=10.0, default = 0.0, usual = 0.0..=3.0)]
    pub beta_tolerance: Ratio,
    /// Reference temperature, at which the tolerance of the resistance holds alone.
    #[field("t_0", DEGREE_CELSIUS, -50.0..=200.0, default = 25.0, usual = 20.0..=25.0)]
    pub reference_temperature: ThermodynamicTemperature,
    /// Resistance measured, if it was.
    #[field("R_m", OHM, 0.1..=1e8, absent = "not measured")]
    pub measured_resistance: ElectricalResistance,
}

/// What to expect of it.
#[record]
pub struct ThermistorExpectation {
    /// Resistance of a nominal thermistor.
    #[field("R", OHM)]
    pub resistance: ElectricalResistance,
    /// Lowest resistance of a sound one, all tolerances at their worst together.
    #[field("R_{min}", OHM)]
    pub lowest_resistance: ElectricalResistance,
    /// Highest resistance of a sound one, all tolerances at their worst together.
    #[field("R_{max}", OHM)]
    pub highest_resistance: ElectricalResistance,
    /// Relative change of the resistance with temperature.
    #[field("\\alpha", PERCENT_PER_KELVIN)]
    pub sensitivity: TemperatureCoefficient,
    /// Temperature that the control reads from the measured resistance.
    #[field("t_m", DEGREE_CELSIUS, absent = "not measured, or no temperature has that resistance")]
    pub indicated_temperature: ThermodynamicTemperature,
    /// By how much that is above the true temperature.
    #[field("\\Delta t_m", KELVIN, absent = "not measured, or no temperature has that resistance")]
    pub deviation: TemperatureInterval,
}

/// Resistance to expect of a thermistor, with the band its tolerances allow.
#[derive(Clone, Copy, Debug)]
pub struct ThermistorCheck {
    /// The curve.
    pub curve: ThermistorCurve,
}

impl Context for ThermistorCheck {
    const SETTINGS: &'static [Setting] = ThermistorCurve::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        ThermistorCurve::from_settings(settings).map(|curve| Self { curve })
    }
}

impl ThermistorCheck {
    /// Lowest and highest resistance in ohm at a temperature in K with the tolerances of `state`.
    fn band(&self, kelvin: f64, state: &ThermistorState) -> (f64, f64) {
        let at = |t| self.curve.band_ohm(t, state.reference_temperature.si(), state.resistance_tolerance.si(), state.beta_tolerance.si());
        let off = state.temperature_tolerance.si();
        (at(kelvin + off).0, at(kelvin - off).1)
    }
}

rules! {
    notice OUTSIDE_BAND on "measured_resistance": "the measured resistance is outside the band of a sound thermistor at this temperature: wrong curve, leads, moisture or a faulty sensor";
    notice NO_TOLERANCE on "resistance_tolerance": "no tolerance was given, so the band has no width: a sound thermistor will seldom lie inside";
}

impl Calculation for ThermistorCheck {
    type Input = ThermistorState;
    type Output = ThermistorExpectation;
    const INFO: Info = Info {
        name: "thermistor_check",
        title: "Thermistor check with an ohmmeter",
        summary: "Resistance to expect of an NTC thermistor at a temperature and the band its tolerances allow, with a table from -20 to 110 °C to check against, \
                  and what a measured resistance would make the control believe.",
        sources: SOURCES,
        accuracy: "The band is the worst case of the stated tolerances, not a statistical one.",
        cautions: &["Measure resistance only on a sensor that is unplugged and dead; the board must be isolated first."],
        checked_against: "trade/sensors.csv (ntc_beta_forward, ntc_uncertainty for the sensitivity)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline]
    fn check(&self, input: &ThermistorState) -> Raised {
        let width = input.resistance_tolerance.si() + input.beta_tolerance.si() + input.temperature_tolerance.si();
        Raised::NONE.when(NO_TOLERANCE, width == 0.0)
    }

    #[inline]
    fn review(&self, input: &ThermistorState, output: &ThermistorExpectation) -> Raised {
        let measured = input.measured_resistance;
        Raised::NONE.when(OUTSIDE_BAND, measured < output.lowest_resistance || measured > output.highest_resistance)
    }

    fn compute<W: Working>(&self, input: &ThermistorState, working: &mut W) -> ThermistorExpectation {
        let kelvin = input.temperature.si();
        let nominal = self.curve.resistance_ohm(kelvin);
        let (lowest, highest) = self.band(kelvin, input);
        let indicated = self.curve.temperature_kelvin(input.measured_resistance.si());
        step!(working, let resistance: "R" = ElectricalResistance::from_si(nominal), "1/T as a cubic in ln(R/R₀), inverted");
        step!(working, let lowest_resistance: "R_{min}" = ElectricalResistance::from_si(lowest), "R (1 - δ_R) (R/R₀)^(±δ_β) at t + Δt");
        step!(working, let highest_resistance: "R_{max}" = ElectricalResistance::from_si(highest), "R (1 + δ_R) (R/R₀)^(±δ_β) at t - Δt");
        step!(working, let indicated_temperature: "T_m" = ThermodynamicTemperature::from_si(indicated), "1/T as a cubic in ln(R/R₀)");
        ThermistorExpectation {
            resistance,
            lowest_resistance,
            highest_resistance,
            sensitivity: TemperatureCoefficient::from_si(self.curve.relative_sensitivity(kelvin, nominal)),
            indicated_temperature,
            deviation: TemperatureInterval::from_si(indicated - kelvin),
        }
    }

    fn tables(&self, input: &ThermistorState) -> Vec<Table> {
        let kelvins: Vec<f64> = (-4..=22).map(|i| 273.15 + 5.0 * f64::from(i)).collect();
        let column = |name: &str, unit, values| Column { name: name.into(), unit, values };
        let bands: Vec<(f64, f64)> = kelvins.iter().map(|&kelvin| self.band(kelvin, input)).collect();
        let nominal = kelvins.iter().map(|&kelvin| self.curve.resistance_ohm(kelvin)).collect();
        Vec::from([Table {
            name: "expected_resistance",
            row_names: Vec::new(),
            columns: Vec::from([
                column("resistance", &units::OHM, nominal),
                column("lowest_resistance", &units::OHM, bands.iter().map(|band| band.0).collect()),
                column("highest_resistance", &units::OHM, bands.iter().map(|band| band.1).collect()),
                column("temperature", &units::DEGREE_CELSIUS, kelvins),
            ]),
        }])
    }
}
