//! The calculation `gas_rate_uncertainty`: what a gas rate is worth, and what decides it.

use super::conversion::root_of_squares;
use super::{CAUTION_BASIS, CAUTION_COMPETENCE};
use crate::calculation::{Calculation, Context, Info, Raised, Rule, Setting, Settings, Source};
use crate::error::Error;
use crate::math;
use crate::quantity::types::{Power, Pressure, Ratio, TemperatureInterval, ThermodynamicTemperature, Time, Volume};
use crate::quantity::units::KILOWATT;
use crate::quantity::{AbsolutePressure, AtMeter, CalorificValue, GasVolume, GaugePressure, Gross, HeatInput, ReferenceConditions, Value};
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};

/// A timed test at the meter with what is known of each reading. Uncertainties are standard
/// uncertainties (k = 1) unless said otherwise. Gas conditions may be left out together; they then
/// add nothing, and the rate is uncorrected.
#[record]
pub struct GasRateBudget {
    /// Volume that passed.
    #[field("V", CUBIC_METRE, 1e-5..=1000.0, usual = 0.005..=5.0)]
    pub volume: GasVolume<AtMeter>,
    /// Smallest step of the index or dial, which is read at the start and at the end.
    #[field("\\delta V", CUBIC_METRE, 0.0..=10.0, usual = 0.0001..=0.01)]
    pub meter_resolution: Volume,
    /// Duration of the test.
    #[field("t", SECOND, 1.0..=3600.0, usual = 20.0..=1200.0)]
    pub time: Time,
    /// Uncertainty of each press of the stopwatch.
    #[field("u_t", SECOND, 0.0..=10.0, default = 0.15, usual = 0.05..=0.5)]
    pub reaction_time_uncertainty: Time,
    /// Maximum permissible error of the meter, as a half-width.
    #[field("\\mathrm{MPE}", PERCENT, 0.0..=20.0, usual = 0.5..=4.0)]
    pub maximum_permissible_error: Ratio,
    /// Gross calorific value at the reference conditions.
    #[field("H_s", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, usual = 10.0..=140.0)]
    pub gross_calorific_value: CalorificValue<Gross>,
    /// Uncertainty of the gross calorific value.
    #[field("u_H", MEGAJOULE_PER_CUBIC_METRE, 0.0..=50.0, default = 0.0, usual = 0.0..=2.0)]
    pub calorific_value_uncertainty: CalorificValue<Gross>,
    /// Gauge pressure of the gas in the meter.
    #[field("p_g", MILLIBAR, 0.0..=2000.0, usual = 5.0..=75.0, absent = "not measured")]
    pub gas_pressure: GaugePressure,
    /// Uncertainty of the gas pressure.
    #[field("u_{p_g}", MILLIBAR, 0.0..=100.0, default = 0.0, usual = 0.0..=5.0)]
    pub gas_pressure_uncertainty: Pressure,
    /// Atmospheric pressure.
    #[field("p_b", MILLIBAR, 600.0..=1100.0, usual = 950.0..=1040.0, absent = "not measured")]
    pub barometric_pressure: AbsolutePressure,
    /// Uncertainty of the atmospheric pressure.
    #[field("u_{p_b}", MILLIBAR, 0.0..=200.0, default = 0.0, usual = 0.0..=30.0)]
    pub barometric_pressure_uncertainty: Pressure,
    /// Temperature of the gas in the meter.
    #[field("T", DEGREE_CELSIUS, -40.0..=60.0, usual = -5.0..=25.0, absent = "not measured")]
    pub gas_temperature: ThermodynamicTemperature,
    /// Uncertainty of the gas temperature.
    #[field("u_T", KELVIN, 0.0..=30.0, default = 0.0, usual = 0.0..=10.0)]
    pub gas_temperature_uncertainty: TemperatureInterval,
}

/// Heat input with its uncertainty and what makes it up.
#[record]
pub struct UncertainGasRate {
    /// Heat input on the gross basis, uncorrected where the gas conditions were not measured.
    #[field("\\dot Q_s", KILOWATT)]
    pub heat_input_gross: HeatInput<Gross>,
    /// Its standard uncertainty.
    #[field("u(\\dot Q_s)", KILOWATT)]
    pub standard_uncertainty: Power,
    /// Its expanded uncertainty, k = 2.
    #[field("U(\\dot Q_s)", KILOWATT)]
    pub expanded_uncertainty: Power,
    /// Standard uncertainty as a share of the heat input.
    #[field("u_{rel}", PERCENT)]
    pub relative_uncertainty: Ratio,
    /// The same without pressure and temperature of the gas: that of an uncorrected rate, which has
    /// an error besides.
    #[field("u_{rel,0}", PERCENT)]
    pub uncorrected_relative_uncertainty: Ratio,
    /// Share of the meter's resolution in the squared uncertainty.
    #[field("s_{\\delta V}", PERCENT, absent = "no uncertainty at all")]
    pub share_of_resolution: Ratio,
    /// Share of the stopwatch.
    #[field("s_t", PERCENT, absent = "no uncertainty at all")]
    pub share_of_timing: Ratio,
    /// Share of the meter's permissible error.
    #[field("s_{MPE}", PERCENT, absent = "no uncertainty at all")]
    pub share_of_meter: Ratio,
    /// Share of the calorific value.
    #[field("s_H", PERCENT, absent = "no uncertainty at all")]
    pub share_of_calorific_value: Ratio,
    /// Share of gas and atmospheric pressure.
    #[field("s_p", PERCENT, absent = "no uncertainty at all")]
    pub share_of_pressure: Ratio,
    /// Share of the gas temperature.
    #[field("s_T", PERCENT, absent = "no uncertainty at all")]
    pub share_of_temperature: Ratio,
}

/// Uncertainty of a gas rate.
#[derive(Clone, Copy, Debug)]
pub struct GasRateUncertainty {
    /// Conditions at which the calorific value is stated.
    pub reference: ReferenceConditions,
}

impl Context for GasRateUncertainty {
    const SETTINGS: &'static [Setting] =
        &[ReferenceConditions::setting("Conditions at which the calorific value is stated and to which the rate is converted.")];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { reference: ReferenceConditions::from_settings(settings, "reference")? })
    }
}

rules! {
    refuse CONDITIONS_INCOMPLETE on "gas_temperature": "gas_pressure, barometric_pressure and gas_temperature go together: give all three, or none for an uncorrected rate";
    notice RESOLUTION_DECIDES on "meter_resolution": "the meter's resolution makes more than half of the uncertainty: time a larger volume";
    notice TIMING_DECIDES on "time": "the stopwatch makes more than half of the uncertainty: time for longer";
}

impl Calculation for GasRateUncertainty {
    type Input = GasRateBudget;
    type Output = UncertainGasRate;
    const INFO: Info = Info {
        name: "gas_rate_uncertainty",
        title: "Uncertainty of a gas rate",
        summary: "The uncertainty budget of a timed gas rate: resolution of the meter, reaction time, permissible error, calorific value, \
                  pressure and temperature, to first order and independent of each other.",
        sources: &[
            Source::new("JCGM 100:2008, clause 5.1", "combination of independent uncertainties"),
            Source::new("JCGM 100:2008, 4.3.7", "resolution and permissible error as rectangular distributions"),
            Source::new("common practice, no source", "0.15 s for each press of a stopwatch"),
        ],
        accuracy: "First order; within 0.2 % of a Monte Carlo calculation in the cases checked. The distribution of the result is not normal \
                   where the resolution decides: use draws on gas_rate for its limits.",
        cautions: &[CAUTION_COMPETENCE, CAUTION_BASIS],
        checked_against: "trade/gas_rate.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &GasRateBudget) -> Raised {
        let missing = [input.gas_pressure.si(), input.barometric_pressure.si(), input.gas_temperature.si()].map(f64::is_nan);
        let count: u8 = missing.iter().map(|m| u8::from(*m)).sum();
        Raised::NONE.when(CONDITIONS_INCOMPLETE, (count == 1) | (count == 2))
    }

    #[inline]
    fn review(&self, _: &GasRateBudget, output: &UncertainGasRate) -> Raised {
        Raised::NONE.when(RESOLUTION_DECIDES, output.share_of_resolution.si() > 0.5).when(TIMING_DECIDES, output.share_of_timing.si() > 0.5)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &GasRateBudget, working: &mut W) -> UncertainGasRate {
        let (volume, gross_calorific_value) = (input.volume.plain(), input.gross_calorific_value.plain());
        let calorific_value_uncertainty = input.calorific_value_uncertainty.plain();
        let converted = !input.gas_temperature.si().is_nan();
        let reference_pressure = Pressure::from_si(self.reference.metering_pressure);
        let reference_temperature = ThermodynamicTemperature::from_si(self.reference.metering_temperature);
        // Uncorrected, the gas is taken to stand at reference conditions, without doubt about them.
        let pressure = if converted { input.gas_pressure.plain() + input.barometric_pressure.plain() } else { reference_pressure };
        let gas_temperature = if converted { input.gas_temperature } else { reference_temperature };
        let weight = f64::from(u8::from(converted));
        let both_pressures =
            Pressure::from_si(weight * root_of_squares([input.gas_pressure_uncertainty.si(), input.barometric_pressure_uncertainty.si()]));
        let temperature_ratio = weight * input.gas_temperature_uncertainty.si() / gas_temperature.si();

        step!(working, let conversion_factor: "C" = pressure / reference_pressure * (reference_temperature / gas_temperature), "gas law, as ISO 13443");
        step!(working, let heat_input: "\\dot Q_s" in KILOWATT = volume / input.time * conversion_factor * gross_calorific_value, "definition");
        step!(working, let resolution: "w_{\\delta V}" = input.meter_resolution / volume / math::sqrt(6.0), "two rectangular readings, JCGM 100:2008 4.3.7");
        step!(working, let timing: "w_t" = math::sqrt(2.0) * input.reaction_time_uncertainty / input.time, "two presses, JCGM 100:2008 5.1");
        step!(working, let meter: "w_{MPE}" = input.maximum_permissible_error / math::sqrt(3.0), "rectangular, JCGM 100:2008 4.3.7");
        step!(working, let heat: "w_H" = calorific_value_uncertainty / gross_calorific_value, "JCGM 100:2008 5.1");
        step!(working, let pressures: "w_p" = both_pressures / pressure, "JCGM 100:2008 5.1");
        step!(working, let temperature: "w_T" = Ratio::from_si(temperature_ratio), "JCGM 100:2008 5.1");
        let uncorrected = root_of_squares([resolution, timing, meter, heat].map(Value::si));
        step!(
            working,
            let relative_uncertainty: "u_{rel}" = Ratio::from_si(math::sqrt(
                resolution.value * resolution.value
                    + timing.value * timing.value
                    + meter.value * meter.value
                    + heat.value * heat.value
                    + pressures.value * pressures.value
                    + temperature.value * temperature.value
            )),
            "JCGM 100:2008 5.1"
        );
        step!(working, let standard_uncertainty: "u" in KILOWATT = heat_input * relative_uncertainty, "definition");
        step!(working, let expanded_uncertainty: "U" in KILOWATT = 2.0 * standard_uncertainty, "JCGM 100:2008 6.2, k = 2");
        let variance = relative_uncertainty.si() * relative_uncertainty.si();
        let share = |part: Ratio| Ratio::from_si(part.si() * part.si() / variance);
        UncertainGasRate {
            heat_input_gross: HeatInput::new(heat_input),
            standard_uncertainty,
            expanded_uncertainty,
            relative_uncertainty,
            uncorrected_relative_uncertainty: Ratio::from_si(uncorrected),
            share_of_resolution: share(resolution),
            share_of_timing: share(timing),
            share_of_meter: share(meter),
            share_of_calorific_value: share(heat),
            share_of_pressure: share(pressures),
            share_of_temperature: share(temperature),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::erase;
    use crate::meter::{GasRate, GasRateReading, IndexUnit};
    use crate::record::Record;
    use crate::supply::trade::{Inputs, check};
    use crate::uncertainty::{Covariance, Distribution, Draws, monte_carlo};
    use std::vec::Vec;

    const FILE: &str = "trade/gas_rate.csv";

    fn budget(i: &Inputs) -> GasRateBudget {
        GasRateBudget {
            volume: GasVolume::from_si(i.si("V")),
            meter_resolution: Volume::from_si(i.si("meter_resolution")),
            time: Time::from_si(i.si("t")),
            reaction_time_uncertainty: Time::from_si(i.si("u_reaction_each")),
            maximum_permissible_error: Ratio::from_si(i.si("meter_mpe")),
            gross_calorific_value: CalorificValue::from_si(i.si("Hs")),
            calorific_value_uncertainty: CalorificValue::from_si(i.si("u_Hs")),
            gas_pressure: GaugePressure::from_si(i.si("p_gauge")),
            gas_pressure_uncertainty: Pressure::from_si(i.si("u_p_gauge")),
            barometric_pressure: AbsolutePressure::from_si(i.si("p_atm")),
            barometric_pressure_uncertainty: Pressure::from_si(i.si("u_p_atm")),
            gas_temperature: ThermodynamicTemperature::from_si(i.si("T_gas")),
            gas_temperature_uncertainty: TemperatureInterval::from_si(i.si("u_T")),
        }
    }

    /// Draws of the heat input through `gas_rate` itself, start and end reading each rectangular.
    fn draws(i: &Inputs) -> Draws {
        let reading = GasRateReading {
            index_start: Ratio::from_si(100.0),
            index_end: Ratio::from_si(100.0 + i.si("V")),
            time: Time::from_si(i.si("t")),
            gas_pressure: GaugePressure::from_si(i.si("p_gauge")),
            gas_temperature: ThermodynamicTemperature::from_si(i.si("T_gas")),
            barometric_pressure: AbsolutePressure::from_si(i.si("p_atm")),
            gross_calorific_value: CalorificValue::from_si(i.si("Hs")),
            ..GasRateReading::unset()
        };
        let half_step = i.si("meter_resolution") / 2.0;
        let known = [
            ("index_start", half_step / 3_f64.sqrt(), Distribution::Rectangular),
            ("index_end", half_step / 3_f64.sqrt(), Distribution::Rectangular),
            ("time", 2_f64.sqrt() * i.si("u_reaction_each"), Distribution::Normal),
            ("meter_error", i.si("meter_mpe") / 3_f64.sqrt(), Distribution::Rectangular),
            ("gas_pressure", i.si("u_p_gauge"), Distribution::Normal),
            ("barometric_pressure", i.si("u_p_atm"), Distribution::Normal),
            ("gas_temperature", i.si("u_T"), Distribution::Normal),
            ("gross_calorific_value", i.si("u_Hs"), Distribution::Normal),
        ];
        let of = |name: &str| known.iter().find(|(known, ..)| *known == name);
        let standard: Vec<f64> = GasRateReading::FIELDS.iter().map(|f| of(f.name).map_or(0.0, |(_, u, _)| *u)).collect();
        let shapes: Vec<Distribution> =
            GasRateReading::FIELDS.iter().map(|f| of(f.name).map_or(Distribution::Normal, |(.., d)| *d)).collect();
        let mut calculation = GasRate::default();
        calculation.index_unit = Some(IndexUnit::CubicMetre);
        let prepared = erase(calculation);
        monte_carlo(&*prepared, reading.to_array().as_ref(), &Covariance::independent(&standard), &shapes, 100_000, 7).unwrap()
    }

    #[test]
    fn budgets_and_draws_agree() {
        let heat_input = crate::meter::GasRateResult::FIELDS.iter().position(|f| f.name == "heat_input_gross").unwrap();
        let checked = check(FILE, "uncertainty_gum", |i, output| {
            let got = GasRateUncertainty { reference: ReferenceConditions::AT_15_15 }.evaluate(&budget(i)).unwrap().output;
            match output {
                "heat_input_gross" => got.heat_input_gross.si(),
                "u_heat_input_gross" => got.standard_uncertainty.si(),
                "U_k2" => got.expanded_uncertainty.si(),
                "u_relative" => got.relative_uncertainty.si(),
                "u_relative_uncorrected" => got.uncorrected_relative_uncertainty.si(),
                "share_resolution" => got.share_of_resolution.si(),
                "share_timing" => got.share_of_timing.si(),
                "share_meter_mpe" => got.share_of_meter.si(),
                "mc_std" => draws(i).standard(heat_input),
                "mc_2.5pct" => draws(i).interval(heat_input, 0.95, false).0,
                "mc_97.5pct" => draws(i).interval(heat_input, 0.95, false).1,
                other => panic!("{other}"),
            }
        });
        assert_eq!(checked, 55);
    }

    #[test]
    fn shares_make_up_the_whole_and_conditions_may_be_left_out() {
        let input = GasRateBudget::read([
            ("volume", "0.1 m3"),
            ("meter_resolution", "0.001 m3"),
            ("time", "125 s"),
            ("maximum_permissible_error", "1.5 %"),
            ("gross_calorific_value", "39.5 MJ/m3"),
            ("gas_temperature_uncertainty", "3 K"),
        ])
        .unwrap();
        let got = GasRateUncertainty { reference: ReferenceConditions::AT_15_15 }.evaluate(&input).unwrap().output;
        assert_eq!(got.relative_uncertainty, got.uncorrected_relative_uncertainty);
        assert_eq!(got.share_of_temperature.si(), 0.0);
        let shares = got.share_of_resolution + got.share_of_timing + got.share_of_meter + got.share_of_calorific_value;
        assert!((shares.si() - 1.0).abs() < 1e-12);
        assert!((got.heat_input_gross.si() - 31_600.0).abs() < 1e-6);
    }
}
