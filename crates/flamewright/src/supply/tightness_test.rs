//! The calculation `tightness_test`: a pressure change read on a shut-off installation, as a leak.

use super::{CAUTION_COMPETENCE, CAUTION_SMELL, CAUTION_TIGHTNESS, CONVENTIONAL_WATER_DENSITY, MOLAR_GAS_CONSTANT, STANDARD_GRAVITY, or};
use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::math::ln;
use crate::quantity::types::{
    AmountOfSubstance, Frequency, Length, Power, Pressure, PressurePerTemperature, Ratio, TemperatureInterval, ThermodynamicTemperature,
    Time, Volume, VolumeRate,
};
use crate::quantity::units::*;
use crate::quantity::{AbsolutePressure, AtMeter, AtReference, CalorificValue, GasFlow, GaugePressure, Gross, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};
use core::f64::consts::PI;

/// What is read during a tightness test.
#[record]
pub struct TightnessReading {
    /// Volume of gas under test: pipes, fittings and meter.
    #[field("V", LITRE, 1e-3..=1e5, usual = 0.5..=1000.0)]
    pub installation_volume: Volume,
    /// Gauge pressure at the start of the test.
    #[field("p_{g,1}", MILLIBAR, 0.1..=10000.0, usual = 5.0..=200.0)]
    pub test_pressure: GaugePressure,
    /// Fall of the gauge reading over the test; negative where it rose.
    #[field("\\Delta p", MILLIBAR, -1000.0..=10000.0, usual = -0.001..=20.0)]
    pub pressure_drop: Pressure,
    /// Duration of the test, after the gas has settled.
    #[field("\\Delta t", SECOND, 1.0..=864000.0, usual = 60.0..=7200.0)]
    pub test_duration: Time,
    /// Barometric pressure at the start.
    #[field("p_b", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 940.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
    /// Temperature of the gas at the start.
    #[field("T_1", DEGREE_CELSIUS, -40.0..=60.0, default = 15.0, usual = -10.0..=35.0)]
    pub gas_temperature: ThermodynamicTemperature,
    /// Rise of the gas temperature over the test.
    #[field("\\Delta T", KELVIN, -20.0..=20.0, default = 0.0, usual = -2.0..=2.0)]
    pub temperature_rise: TemperatureInterval,
    /// Rise of the barometer over the test.
    #[field("\\Delta p_b", MILLIBAR, -50.0..=50.0, default = 0.0, usual = -2.0..=2.0)]
    pub barometer_rise: Pressure,
    /// Smallest movement of the gauge that can be read.
    #[field("\\delta p", MILLIBAR, 1e-6..=100.0, absent = "not stated", usual = 0.001..=1.0)]
    pub readable_movement: Pressure,
    /// Bore of the limbs of a liquid gauge, whose moving column takes up volume.
    #[field("d_g", MILLIMETRE, 0.5..=50.0, absent = "no liquid gauge")]
    pub gauge_bore: Length,
    /// Gross calorific value of the gas at the reference conditions below.
    #[field("H_s", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, absent = "not stated")]
    pub gross_calorific_value: CalorificValue<Gross>,
    /// Reference temperature to which the leak is stated.
    #[field("T_r", DEGREE_CELSIUS, 0.0..=25.0, default = 15.0)]
    pub reference_temperature: ThermodynamicTemperature,
    /// Reference pressure to which the leak is stated.
    #[field("p_r", MILLIBAR, 900.0..=1100.0, default = 1013.25)]
    pub reference_pressure: AbsolutePressure,
}

/// The leak behind a tightness reading.
#[record]
pub struct TightnessResult {
    /// Amount of gas lost, with all corrections; negative where gas came in.
    #[field("n", MOLE)]
    pub amount_lost: AmountOfSubstance,
    /// Leak at reference conditions, with all corrections, as the mean over the test.
    #[field("\\dot V_r", LITRE_PER_HOUR)]
    pub leak_rate: GasFlow<AtReference>,
    /// Leak at reference conditions from the bare reading, temperature and barometer taken as steady.
    #[field("\\dot V_{r,0}", LITRE_PER_HOUR)]
    pub leak_rate_uncorrected: GasFlow<AtReference>,
    /// Leak as it flows at the pressure and temperature in the installation.
    #[field("\\dot V", LITRE_PER_HOUR)]
    pub leak_rate_in_pipe: GasFlow<AtMeter>,
    /// Leak at the start of the test, if it goes with the gauge pressure.
    #[field("\\dot V_{r,1}", LITRE_PER_HOUR, absent = "the gauge fell to zero")]
    pub leak_rate_at_start: GasFlow<AtReference>,
    /// Rate at which the gauge pressure dies away, if the leak goes with it.
    #[field("k", PER_SECOND, absent = "the gauge fell to zero")]
    pub decay_rate: Frequency,
    /// Heat that leaks away.
    #[field("\\dot Q", WATT, absent = "no calorific value stated")]
    pub heat_lost_gross: Power,
    /// Change of the gauge reading that the temperature alone would make.
    #[field("\\Delta p_T", MILLIBAR)]
    pub temperature_effect: Pressure,
    /// Change of the gauge reading for each kelvin.
    #[field("\\partial p/\\partial T", MILLIBAR_PER_KELVIN)]
    pub temperature_sensitivity: PressurePerTemperature,
    /// Change of the gauge reading that the barometer alone would make.
    #[field("\\Delta p_B", MILLIBAR)]
    pub barometer_effect: Pressure,
    /// Volume by which the liquid of the gauge moved in.
    #[field("\\Delta V_g", MILLILITRE, absent = "no liquid gauge")]
    pub gauge_volume: Volume,
    /// Drop that the moving liquid has hidden.
    #[field("\\Delta p_g", MILLIBAR, absent = "no liquid gauge")]
    pub gauge_effect: Pressure,
    /// True loss over loss as read, for the moving liquid alone.
    #[field("f_g", ONE, absent = "no liquid gauge, or no drop")]
    pub gauge_factor: Ratio,
    /// Least leak that this gauge would have shown in this test.
    #[field("\\dot V_{min}", LITRE_PER_HOUR, absent = "no readable movement stated")]
    pub smallest_detectable_leak: GasFlow<AtReference>,
}

/// Leak of a shut-off installation from a tightness test.
#[derive(Clone, Copy, Debug)]
pub struct TightnessTest;

no_settings!(TightnessTest);

rules! {
    refuse DROP_BELOW_VACUUM on "pressure_drop": "the pressure cannot fall below vacuum; check the reading and its unit";
    notice BELOW_ZERO on "pressure_drop": "the drop exceeds the test pressure; the gauge would stand below zero";
    notice READING_ROSE on "pressure_drop": "the reading rose: warming gas, a falling barometer, or gas let by at the valve; test the valve for let-by";
    notice NOT_READABLE on "pressure_drop": "the drop is below the readable movement: a leak up to the smallest detectable one cannot be excluded";
    notice TEMPERATURE_UNCERTAIN on "temperature_rise": "temperature or barometer moved the gauge as much as half the drop; wait for steady conditions and test again";
}

impl Calculation for TightnessTest {
    type Input = TightnessReading;
    type Output = TightnessResult;
    const INFO: Info = Info {
        name: "tightness_test",
        title: "Tightness test",
        summary: "Leak rate at reference conditions from a pressure drop, with the effects of temperature, barometer and gauge liquid apart, and the smallest leak the test could show.",
        sources: &[
            Source::new("Ideal gas law, V/R (p1/T1 - p2/T2) with absolute pressures; textbook", "amount lost"),
            Source::new("CODATA 2018", "molar gas constant"),
            Source::new("NIST SP 811 (2008) B.8", "conventional density of water in a liquid gauge"),
        ],
        accuracy: "The gas law is better than the readings: 0.1 K of gas temperature moves the gauge by 0.36 mbar, so temperature decides. Volume enters in proportion.",
        cautions: &[CAUTION_TIGHTNESS, CAUTION_SMELL, CAUTION_COMPETENCE],
        checked_against: "trade/tightness.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &TightnessReading) -> Raised {
        let drop = input.pressure_drop.si();
        let moved = effect_of_temperature(input).abs() + input.barometer_rise.si().abs();
        Raised::NONE
            .when(DROP_BELOW_VACUUM, drop >= input.test_pressure.si() + input.barometric_pressure.si())
            .when(BELOW_ZERO, drop > input.test_pressure.si())
            .when(READING_ROSE, drop < 0.0)
            .when(NOT_READABLE, drop.abs() < input.readable_movement.si())
            .when(TEMPERATURE_UNCERTAIN, (moved > 0.0) & (2.0 * moved >= drop.abs()))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &TightnessReading, working: &mut W) -> TightnessResult {
        let volume = input.installation_volume;
        let no_gauge = input.gauge_bore.si().is_nan();
        step!(working, let start_pressure: "p_1" in MILLIBAR = input.test_pressure.plain() + input.barometric_pressure.plain(), "gauge pressure plus barometer");
        step!(working, let end_pressure: "p_2" in MILLIBAR = start_pressure - input.pressure_drop + input.barometer_rise, "gauge pressure plus barometer");
        step!(working, let end_temperature: "T_2" in DEGREE_CELSIUS = input.gas_temperature + input.temperature_rise, "definition");
        // A limb falls by half the difference that the gauge shows.
        let gauge_volume = Volume::from_si(
            0.25 * PI * input.gauge_bore.si() * input.gauge_bore.si() * 0.5 * input.pressure_drop.si()
                / (CONVENTIONAL_WATER_DENSITY * STANDARD_GRAVITY),
        );
        let gauge_share = Volume::from_si(or(gauge_volume.si(), 0.0 * input.pressure_drop.si())) / volume;
        step!(working, let hidden_drop: "\\Delta p_g" in MILLIBAR = start_pressure * gauge_share, "Boyle");
        let reference = input.reference_temperature / input.reference_pressure.plain();
        step!(working, let lost_volume: "V_r" in LITRE =
            volume * ((start_pressure + hidden_drop) / input.gas_temperature - end_pressure / end_temperature)
                * input.reference_temperature / input.reference_pressure.plain(), "ideal gas law");
        step!(working, let leak_rate: "\\dot V_r" in LITRE_PER_HOUR = lost_volume / input.test_duration, "definition");
        let uncorrected: VolumeRate = volume * input.pressure_drop / input.gas_temperature * reference / input.test_duration;
        let amount = reference_amount(lost_volume.si(), input.reference_pressure.si(), input.reference_temperature.si());
        let in_pipe: VolumeRate = leak_rate / reference * input.gas_temperature / start_pressure;
        let sensitivity: PressurePerTemperature = start_pressure / input.gas_temperature;
        let remaining = (input.test_pressure.si() - input.pressure_drop.si()) / input.test_pressure.si();
        let decay_rate = if remaining > 0.0 { -ln(remaining) / input.test_duration.si() } else { f64::NAN };
        let at_start = Frequency::from_si(decay_rate) * volume * input.test_pressure.plain() / input.gas_temperature * reference;
        let smallest: VolumeRate = volume * input.readable_movement / input.gas_temperature * reference / input.test_duration;
        TightnessResult {
            amount_lost: AmountOfSubstance::from_si(amount),
            leak_rate: GasFlow::new(leak_rate),
            leak_rate_uncorrected: GasFlow::new(uncorrected),
            leak_rate_in_pipe: GasFlow::new(in_pipe),
            leak_rate_at_start: GasFlow::new(at_start),
            decay_rate: Frequency::from_si(decay_rate),
            heat_lost_gross: leak_rate * input.gross_calorific_value.plain(),
            temperature_effect: Pressure::from_si(effect_of_temperature(input)),
            temperature_sensitivity: sensitivity,
            barometer_effect: -input.barometer_rise,
            gauge_volume,
            gauge_effect: Pressure::from_si(if no_gauge { f64::NAN } else { hidden_drop.si() }),
            gauge_factor: Ratio::from_si(if no_gauge | (input.pressure_drop.si() == 0.0) {
                f64::NAN
            } else {
                1.0 + hidden_drop.si() / input.pressure_drop.si()
            }),
            smallest_detectable_leak: GasFlow::new(smallest),
        }
    }
}

/// Change of the gauge reading by temperature at constant volume, Pa.
#[inline(always)]
fn effect_of_temperature(input: &TightnessReading) -> f64 {
    (input.test_pressure.si() + input.barometric_pressure.si()) / input.gas_temperature.si() * input.temperature_rise.si()
}

/// Amount of gas (mol) in a volume at reference conditions.
#[inline(always)]
pub(super) fn reference_amount(volume: f64, pressure: f64, temperature: f64) -> f64 {
    pressure * volume / (MOLAR_GAS_CONSTANT * temperature)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::supply::trade::{Inputs, check};

    const FILE: &str = "trade/tightness.csv";

    fn run(reading: TightnessReading) -> TightnessResult {
        TightnessTest.evaluate(&reading).unwrap().output
    }

    fn reading(i: &Inputs) -> TightnessReading {
        let mut reading = TightnessReading {
            installation_volume: Volume::from_si(i.maybe("V").unwrap_or(0.01)),
            test_pressure: GaugePressure::from_si(i.maybe("p_gauge").unwrap_or(2000.0)),
            pressure_drop: Pressure::from_si(i.maybe("dp").unwrap_or(0.0)),
            test_duration: Time::from_si(i.maybe("dt").unwrap_or(120.0)),
            temperature_rise: TemperatureInterval::from_si(i.maybe("dT").unwrap_or(0.0)),
            barometer_rise: Pressure::from_si(i.maybe("dp_atm").unwrap_or(0.0)),
            gauge_bore: Length::from_si(i.maybe("gauge_bore").unwrap_or(f64::NAN)),
            gross_calorific_value: CalorificValue::from_si(39.5e6),
            ..TightnessReading::unset()
        };
        if let Some(pressure) = i.maybe("p_atm") {
            reading.barometric_pressure = AbsolutePressure::from_si(pressure);
        }
        if let Some(temperature) = i.maybe("T") {
            reading.gas_temperature = ThermodynamicTemperature::from_si(temperature);
        }
        reading
    }

    #[test]
    fn leak_rates_agree_with_the_table() {
        let rows = check(FILE, "leak_rate_from_drop", |i, output| {
            let got = run(reading(i));
            match output {
                "amount_lost" => got.amount_lost.si(),
                "leak_at_reference_15C" | "leak_m3_per_h_reference" => got.leak_rate.si(),
                "leak_at_line_conditions" => got.leak_rate_in_pipe.si(),
                "energy_leak_gross_39.5" => got.heat_lost_gross.si(),
                other => panic!("{other}"),
            }
        });
        assert!(rows >= 30);
    }

    #[test]
    fn corrections_agree_with_the_table() {
        check(FILE, "leak_rate_temperature_barometer_corrected", |i, output| {
            let got = run(reading(i));
            match output {
                "amount_lost" => got.amount_lost.si(),
                "leak_at_reference_15C" => got.leak_rate.si(),
                "leak_uncorrected" => got.leak_rate_uncorrected.si(),
                other => panic!("{other}"),
            }
        });
        check(FILE, "temperature_effect", |i, output| {
            let got = run(reading(i));
            match output {
                "dp_gauge" => got.temperature_effect.si(),
                "sensitivity" => got.temperature_sensitivity.si(),
                other => panic!("{other}"),
            }
        });
        check(FILE, "barometer_effect", |i, _| run(reading(i)).barometer_effect.si());
    }

    #[test]
    fn decay_gauge_and_us_rows_agree_with_the_table() {
        check(FILE, "laminar_decay", |i, output| {
            let drop = i.si("p0_gauge") - i.si("p1_gauge");
            let got = run(TightnessReading {
                test_pressure: GaugePressure::from_si(i.si("p0_gauge")),
                pressure_drop: Pressure::from_si(drop),
                ..reading(i)
            });
            match output {
                "decay_constant" => got.decay_rate.si(),
                "leak_at_start_pressure" => got.leak_rate_at_start.si(),
                "linear_estimate" => got.leak_rate.si(),
                other => panic!("{other}"),
            }
        });
        check(FILE, "u_gauge_volume_effect", |i, output| {
            let got = run(reading(i));
            match output {
                "gauge_volume_change" => got.gauge_volume.si(),
                "equivalent_extra_dp" => got.gauge_effect.si(),
                "true_loss_factor" => got.gauge_factor.si(),
                other => panic!("{other}"),
            }
        });
        check(FILE, "US_pressure_test_drop", |i, output| {
            let got = run(TightnessReading { reference_temperature: ThermodynamicTemperature::from_si(i.si("T")), ..reading(i) });
            match output {
                "leak_at_60F_1atm" | "leak_at_60F_1atm_SI" => got.leak_rate.si(),
                "dp_for_1F" => got.temperature_sensitivity.si() * 5.0 / 9.0,
                other => panic!("{other}"),
            }
        });
    }

    #[test]
    fn a_warm_spell_that_hides_a_leak_is_noticed() {
        let evaluated = TightnessTest
            .evaluate(&TightnessReading {
                installation_volume: Volume::from_si(0.012),
                test_pressure: GaugePressure::from_si(2000.0),
                pressure_drop: Pressure::from_si(0.0),
                test_duration: Time::from_si(120.0),
                temperature_rise: TemperatureInterval::from_si(0.5),
                readable_movement: Pressure::from_si(25.0),
                ..TightnessReading::unset()
            })
            .unwrap();
        // 1.79 mbar of drop was made up by warming gas.
        assert!((evaluated.output.leak_rate.si() * 3.6e6 - 0.636).abs() < 1e-3);
        let raised = evaluated.judged.raised.0;
        assert_eq!(raised, 1 << NOT_READABLE | 1 << TEMPERATURE_UNCERTAIN);
        assert!(evaluated.output.gauge_effect.si().is_nan() && evaluated.output.heat_lost_gross.si().is_nan());
    }

    #[test]
    fn nonsense_is_refused() {
        let sound = TightnessReading {
            installation_volume: Volume::from_si(0.012),
            test_pressure: GaugePressure::from_si(2000.0),
            pressure_drop: Pressure::from_si(100.0),
            test_duration: Time::from_si(120.0),
            ..TightnessReading::unset()
        };
        assert!(TightnessTest.evaluate(&sound).is_ok());
        assert!(TightnessTest.evaluate(&TightnessReading { installation_volume: Volume::from_si(0.0), ..sound }).is_err());
        assert!(TightnessTest.evaluate(&TightnessReading { test_duration: Time::from_si(f64::NAN), ..sound }).is_err());
        assert!(TightnessTest.evaluate(&TightnessReading { pressure_drop: Pressure::from_si(104_000.0), ..sound }).is_err());
    }
}
