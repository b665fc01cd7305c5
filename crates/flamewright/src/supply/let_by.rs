//! The calculation `let_by`: gas that passes a shut valve, from the rise behind it.

use super::{CAUTION_COMPETENCE, CAUTION_SMELL, CAUTION_TIGHTNESS};
use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::quantity::types::{Pressure, TemperatureInterval, ThermodynamicTemperature, Time, Volume, VolumeRate};
use crate::quantity::units::*;
use crate::quantity::{AbsolutePressure, AtReference, GasFlow, GaugePressure, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// What is read while a shut valve is watched from behind.
#[record]
pub struct LetByReading {
    /// Volume of gas behind the valve: pipes, fittings and meter.
    #[field("V", LITRE, 1e-3..=1e5, usual = 0.5..=1000.0)]
    pub installation_volume: Volume,
    /// Gauge pressure at the start, lower than before the valve.
    #[field("p_{g,1}", MILLIBAR, 0.0..=10000.0, usual = 2.0..=15.0)]
    pub start_pressure: GaugePressure,
    /// Rise of the gauge reading; negative where it fell.
    #[field("\\Delta p", MILLIBAR, -1000.0..=1000.0, usual = -0.001..=10.0)]
    pub pressure_rise: Pressure,
    /// Duration of watching.
    #[field("\\Delta t", SECOND, 1.0..=864000.0, usual = 30.0..=3600.0)]
    pub test_duration: Time,
    /// Smallest movement of the gauge that can be read.
    #[field("\\delta p", MILLIBAR, 1e-6..=100.0, absent = "not stated", usual = 0.001..=1.0)]
    pub readable_movement: Pressure,
    /// Rise of the gas temperature meanwhile.
    #[field("\\Delta T", KELVIN, -20.0..=20.0, default = 0.0, usual = -2.0..=2.0)]
    pub temperature_rise: TemperatureInterval,
    /// Rise of the barometer meanwhile.
    #[field("\\Delta p_b", MILLIBAR, -50.0..=50.0, default = 0.0, usual = -2.0..=2.0)]
    pub barometer_rise: Pressure,
    /// Barometric pressure at the start.
    #[field("p_b", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 940.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
    /// Temperature of the gas at the start.
    #[field("T_1", DEGREE_CELSIUS, -40.0..=60.0, default = 15.0, usual = -10.0..=35.0)]
    pub gas_temperature: ThermodynamicTemperature,
    /// Reference temperature to which the flow is stated.
    #[field("T_r", DEGREE_CELSIUS, 0.0..=25.0, default = 15.0)]
    pub reference_temperature: ThermodynamicTemperature,
    /// Reference pressure to which the flow is stated.
    #[field("p_r", MILLIBAR, 900.0..=1100.0, default = 1013.25)]
    pub reference_pressure: AbsolutePressure,
}

/// The flow past the valve.
#[record]
pub struct LetByResult {
    /// Gas that the valve lets by, less any that leaked away meanwhile; at reference conditions.
    #[field("\\dot V_r", LITRE_PER_HOUR)]
    pub let_by_rate: GasFlow<AtReference>,
    /// Rise that is left after temperature and barometer are taken out.
    #[field("\\Delta p_c", MILLIBAR)]
    pub corrected_rise: Pressure,
    /// Least flow that this gauge would have shown.
    #[field("\\dot V_{min}", LITRE_PER_HOUR, absent = "no readable movement stated")]
    pub smallest_detectable_flow: GasFlow<AtReference>,
}

/// Gas passing a shut valve.
#[derive(Clone, Copy, Debug)]
pub struct LetBy;

no_settings!(LetBy);

rules! {
    notice NOT_READABLE on "pressure_rise": "the rise is below the readable movement: a flow up to the smallest detectable one cannot be excluded";
    notice FELL on "pressure_rise": "the reading fell: the installation leaks or the gas cooled, and either hides let-by";
}

impl Calculation for LetBy {
    type Input = LetByReading;
    type Output = LetByResult;
    const INFO: Info = Info {
        name: "let_by",
        title: "Let-by of a shut valve",
        summary: "Flow past a shut valve from the pressure rise behind it, temperature and barometer taken out.",
        sources: &[Source::new("Ideal gas law, V/R (p2/T2 - p1/T1) with absolute pressures; textbook", "all results")],
        accuracy: "As good as the volume and the readable movement; 0.1 K of gas temperature moves the gauge by 0.36 mbar.",
        cautions: &[CAUTION_TIGHTNESS, CAUTION_SMELL, CAUTION_COMPETENCE],
        checked_against: "No outside table of let-by exists; the sum is that of tightness_test with the sign turned, and tested against it.",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &LetByReading) -> Raised {
        let rise = input.pressure_rise.si();
        Raised::NONE.when(NOT_READABLE, rise.abs() < input.readable_movement.si()).when(FELL, rise < 0.0)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &LetByReading, working: &mut W) -> LetByResult {
        step!(working, let start: "p_1" in MILLIBAR = input.start_pressure.plain() + input.barometric_pressure.plain(), "gauge pressure plus barometer");
        step!(working, let end: "p_2" in MILLIBAR = start + input.pressure_rise + input.barometer_rise, "gauge pressure plus barometer");
        step!(working, let end_temperature: "T_2" in DEGREE_CELSIUS = input.gas_temperature + input.temperature_rise, "definition");
        step!(working, let corrected_rise: "\\Delta p_c" in MILLIBAR = end / end_temperature * input.gas_temperature - start, "Gay-Lussac");
        step!(working, let volume_per_pressure: "V_r/\\Delta p" =
            input.installation_volume / input.gas_temperature * input.reference_temperature / input.reference_pressure.plain(), "ideal gas law");
        step!(working, let let_by_rate: "\\dot V_r" in LITRE_PER_HOUR = corrected_rise * volume_per_pressure / input.test_duration, "definition");
        let smallest: VolumeRate = input.readable_movement * volume_per_pressure / input.test_duration;
        LetByResult { let_by_rate: GasFlow::new(let_by_rate), corrected_rise, smallest_detectable_flow: GasFlow::new(smallest) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::supply::{TightnessReading, TightnessTest};

    #[test]
    fn let_by_is_a_leak_inward() {
        let rise = LetByReading {
            installation_volume: Volume::from_si(0.02),
            start_pressure: GaugePressure::from_si(1000.0),
            pressure_rise: Pressure::from_si(130.0),
            test_duration: Time::from_si(60.0),
            temperature_rise: TemperatureInterval::from_si(0.1),
            barometer_rise: Pressure::from_si(-10.0),
            ..LetByReading::unset()
        };
        let leak = TightnessReading {
            installation_volume: rise.installation_volume,
            test_pressure: rise.start_pressure,
            pressure_drop: -rise.pressure_rise,
            test_duration: rise.test_duration,
            temperature_rise: rise.temperature_rise,
            barometer_rise: rise.barometer_rise,
            ..TightnessReading::unset()
        };
        let flow = LetBy.evaluate(&rise).unwrap().output.let_by_rate.si();
        let out = TightnessTest.evaluate(&leak).unwrap().output.leak_rate.si();
        assert!((flow / -out - 1.0).abs() < 1e-10 && flow > 0.0);
    }

    #[test]
    fn silence_is_not_proof() {
        let still = LetByReading {
            installation_volume: Volume::from_si(0.02),
            start_pressure: GaugePressure::from_si(1000.0),
            pressure_rise: Pressure::from_si(0.0),
            test_duration: Time::from_si(60.0),
            readable_movement: Pressure::from_si(25.0),
            ..LetByReading::unset()
        };
        let evaluated = LetBy.evaluate(&still).unwrap();
        assert_eq!(evaluated.judged.raised.0, 1 << NOT_READABLE);
        // 25 Pa of 20 L in a minute is 0.296 L/h at 15 degC and 101 325 Pa.
        assert!((evaluated.output.smallest_detectable_flow.si() * 3.6e6 - 0.29608).abs() < 1e-5);
    }
}
