//! The calculation `cool_down_fit`: a loss coefficient or a heat capacity from a logged cool-down.

use super::plant::HOT_BLOCK_CAUTIONS;
use crate::calculation::{Calculation, Column, Context, Form, Info, Raised, Setting, Settings, Source, Table};
use crate::math::{exp, ln, pow, sqrt};
use crate::quantity::types::{Frequency, HeatCapacity, Ratio, TemperatureInterval, ThermalConductance, ThermodynamicTemperature, Time};
use crate::quantity::units::{DEGREE_CELSIUS, KELVIN, KILOJOULE_PER_KELVIN, MINUTE, WATT_PER_KELVIN};
use crate::quantity::{Value, units};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};
use alloc::vec::Vec;

/// What is known beside the logged readings.
#[record]
pub struct CoolDownFitState {
    /// Heat capacity of all that cooled together; with it the loss is found.
    #[field("C", KILOJOULE_PER_KELVIN, 0.001..=1e6, absent = "not known")]
    pub heat_capacity: HeatCapacity,
    /// Standard uncertainty of that heat capacity.
    #[field("u_C", KILOJOULE_PER_KELVIN, 0.0..=1e6, default = 0.0)]
    pub heat_capacity_uncertainty: HeatCapacity,
    /// Loss conductance expected at 50 K over the room: compared where the heat capacity is known, else the heat capacity is found from it.
    #[field("H", WATT_PER_KELVIN, 1e-4..=1e5, absent = "not known")]
    pub expected_loss_conductance: ThermalConductance,
    /// Standard uncertainty of that loss conductance.
    #[field("u_H", WATT_PER_KELVIN, 0.0..=1e5, default = 0.0)]
    pub loss_conductance_uncertainty: ThermalConductance,
    /// Exponent with which the loss falls off: 1 for an insulated block or steady flow, 1.25 for a bare one, about 1.3 for radiators.
    #[field("n", ONE, 1.0..=2.0, default = 1.0)]
    pub loss_exponent: Ratio,
    /// Room temperature.
    #[field("t_A", DEGREE_CELSIUS, -30.0..=60.0, default = 20.0, usual = 0.0..=35.0)]
    pub room_temperature: ThermodynamicTemperature,
    /// Standard uncertainty of the room temperature.
    #[field("u_A", KELVIN, 0.0..=20.0, default = 0.5)]
    pub room_temperature_uncertainty: TemperatureInterval,
    /// Standard uncertainty of one temperature reading (resolution and scatter; a fixed error of the probe is not in it).
    #[field("u_t", KELVIN, 0.001..=20.0, default = 0.3, usual = 0.05..=2.0)]
    pub reading_uncertainty: TemperatureInterval,
}

/// What the logged cool-down says.
#[record]
pub struct CoolDownFitResult {
    /// Time constant at 50 K over the room: heat capacity over loss conductance.
    #[field("\\tau_{50}", MINUTE)]
    pub time_constant: Time,
    /// Its standard uncertainty.
    #[field("u(\\tau_{50})", MINUTE)]
    pub time_constant_uncertainty: Time,
    /// Loss conductance at 50 K over the room.
    #[field("H_f", WATT_PER_KELVIN, absent = "no heat capacity given")]
    pub loss_conductance: ThermalConductance,
    /// Its standard uncertainty.
    #[field("u(H_f)", WATT_PER_KELVIN, absent = "no heat capacity given")]
    pub fitted_loss_uncertainty: ThermalConductance,
    /// Heat capacity found from the loss conductance expected.
    #[field("C_f", KILOJOULE_PER_KELVIN, absent = "the heat capacity is given")]
    pub fitted_heat_capacity: HeatCapacity,
    /// Its standard uncertainty.
    #[field("u(C_f)", KILOJOULE_PER_KELVIN, absent = "the heat capacity is given")]
    pub fitted_heat_capacity_uncertainty: HeatCapacity,
    /// Fitted less expected loss conductance, over the standard uncertainty of that difference.
    #[field("E", ONE, absent = "nothing to compare")]
    pub deviation: Ratio,
    /// Temperature at the time zero of the log, by the fit.
    #[field("t_0", DEGREE_CELSIUS, detail = true)]
    pub start_temperature: ThermodynamicTemperature,
    /// Root mean square of reading less fit, with two fitted values allowed for.
    #[field("s", KELVIN)]
    pub residual: TemperatureInterval,
    /// That over the uncertainty stated for a reading: near 1 where the model fits.
    #[field("s/u_t", ONE, detail = true)]
    pub residual_ratio: Ratio,
}

/// A logged cool-down.
#[derive(Clone, Debug, PartialEq)]
pub struct CoolDownFit {
    times: Vec<f64>,
    temperatures: Vec<f64>,
}

const MOST_READINGS: usize = 10_000;
/// Seconds accepted: from the start to a month.
const TIMES: core::ops::RangeInclusive<f64> = 0.0..=2.7e6;
/// Temperatures accepted, K: -30 to 300 degC.
const TEMPERATURES: core::ops::RangeInclusive<f64> = 243.15..=573.15;

impl CoolDownFit {
    /// From times and temperatures logged, three at least, the times rising.
    ///
    /// # Errors
    /// Too few, not as many of one as of the other, times that do not rise, or values out of range.
    pub fn new(times: &[Time], temperatures: &[ThermodynamicTemperature]) -> Result<Self, Error> {
        let times: Vec<f64> = times.iter().map(|time| time.si()).collect();
        let temperatures: Vec<f64> = temperatures.iter().map(|temperature| temperature.si()).collect();
        let refuse = |name: &str, why: &str| Err(Error::bad_setting(name, "", why));
        if times.len() != temperatures.len() {
            return refuse("temperatures", "as many temperatures as times are needed");
        }
        if times.len() < 3 {
            return refuse("times", "three readings at least are needed: two are always met");
        }
        if !times.iter().all(|time| TIMES.contains(time)) || times.windows(2).any(|pair| matches!(pair, [a, b] if b <= a)) {
            return refuse("times", "times must rise, from 0 s to a month");
        }
        if !temperatures.iter().all(|temperature| TEMPERATURES.contains(temperature)) {
            return refuse("temperatures", "temperatures from -30 °C to 300 °C are accepted");
        }
        Ok(Self { times, temperatures })
    }
}

impl Context for CoolDownFit {
    const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "times",
            doc: "Times of the readings, rising, the burner being off and nothing switched in between.",
            form: Form::Quantities(<Time as Value>::KIND, &units::MINUTE),
            default: None,
        },
        Setting {
            name: "temperatures",
            doc: "Temperatures read at those times.",
            form: Form::Quantities(<ThermodynamicTemperature as Value>::KIND, &units::DEGREE_CELSIUS),
            default: None,
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let times: Vec<Time> = settings.quantities("times", TIMES, MOST_READINGS)?;
        let temperatures: Vec<ThermodynamicTemperature> = settings.quantities("temperatures", TEMPERATURES, MOST_READINGS)?;
        Self::new(&times, &temperatures)
    }
}

rules! {
    refuse NOTHING_KNOWN on "heat_capacity": "a time constant alone gives neither loss nor heat capacity: state the one that is known (heat_capacity, or expected_loss_conductance)";
    refuse NOT_COOLING on "room_temperature": "the readings do not fall towards the room temperature: check the room temperature and the order of the readings";
    notice POOR_FIT on "residual_ratio": "the readings scatter about the fit by more than twice what is stated for a reading: another exponent, a circuit that changed, or a burner that lit";
    notice DISAGREES on "deviation": "the loss found and the loss expected differ by more than twice the standard uncertainty of their difference";
}

/// `theta` at a time, from 50 K times a reduced start and a rate at 50 K.
fn excess(start: f64, rate: f64, exponent: f64, time: f64) -> f64 {
    if exponent == 1.0 {
        return start * exp(-rate * time);
    }
    let sum = pow(start / 50.0, 1.0 - exponent) + (exponent - 1.0) * rate * time;
    if sum > 0.0 { 50.0 * pow(sum, -1.0 / (exponent - 1.0)) } else { f64::NAN }
}

struct Fitted {
    start: f64,
    rate: f64,
    rate_variance: f64,
    residual: f64,
}

impl CoolDownFit {
    /// Least squares by Gauss-Newton in the logarithm of the start and the rate; NaN where it does not settle.
    fn fit(&self, room: f64, exponent: f64, reading_uncertainty: f64) -> Fitted {
        const NONE: Fitted = Fitted { start: f64::NAN, rate: f64::NAN, rate_variance: f64::NAN, residual: f64::NAN };
        let (Some(&first), Some(&last)) = (self.temperatures.first(), self.temperatures.last()) else { return NONE };
        let (Some(&begin), Some(&end)) = (self.times.first(), self.times.last()) else { return NONE };
        if !(last < first && last > room) {
            return NONE;
        }
        let reduced = |temperature: f64| pow((temperature - room) / 50.0, 1.0 - exponent);
        let mut rate = if exponent == 1.0 {
            ln((first - room) / (last - room)) / (end - begin)
        } else {
            (reduced(last) - reduced(first)) / ((exponent - 1.0) * (end - begin))
        };
        let mut start = excess(first - room, -rate, exponent, begin);
        let readings = || self.times.iter().zip(&self.temperatures);
        let (mut normal, mut determinant) = ([0.0; 3], f64::NAN);
        let mut settled = false;
        for _ in 0..60 {
            let mut gradient = [0.0; 2];
            normal = [0.0; 3];
            for (&time, &temperature) in readings() {
                let model = excess(start, rate, exponent, time);
                let fall = 50.0 * pow(model / 50.0, exponent);
                let by_start = fall * pow(start / 50.0, 1.0 - exponent);
                let by_rate = -time * fall;
                let miss = temperature - room - model;
                gradient[0] += by_start * miss;
                gradient[1] += by_rate * miss;
                normal[0] += by_start * by_start;
                normal[1] += by_start * by_rate;
                normal[2] += by_rate * by_rate;
            }
            determinant = normal[0] * normal[2] - normal[1] * normal[1];
            let to_start = (normal[2] * gradient[0] - normal[1] * gradient[1]) / determinant;
            let to_rate = (normal[0] * gradient[1] - normal[1] * gradient[0]) / determinant;
            start *= exp(to_start.clamp(-0.5, 0.5));
            rate += crate::math::clamp(to_rate, -0.5 * rate, rate);
            if to_start.abs() < 1e-13 && (to_rate / rate).abs() < 1e-12 {
                settled = true;
                break;
            }
        }
        if !(settled && rate > 0.0) {
            return NONE;
        }
        let squares: f64 = readings()
            .map(|(&time, &temperature)| {
                let miss = temperature - room - excess(start, rate, exponent, time);
                miss * miss
            })
            .sum();
        let freedom = self.times.len() as f64 - 2.0;
        let rate_variance = normal[0] / determinant * reading_uncertainty * reading_uncertainty;
        Fitted { start, rate, rate_variance, residual: sqrt(squares / freedom) }
    }
}

impl Calculation for CoolDownFit {
    type Input = CoolDownFitState;
    type Output = CoolDownFitResult;
    const INFO: Info = Info {
        name: "cool_down_fit",
        title: "Loss or heat capacity from a logged cool-down",
        summary: "From times and temperatures logged on site: the time constant and from it the loss conductance (the heat capacity being known) or the heat capacity (the loss being known), with uncertainty, and whether the observation agrees with the loss expected.",
        sources: &[
            Source::new(
                "Newton's law of cooling, and its power-law form (Bejan and Kraus, Heat Transfer Handbook, eq. 3.286, quoted)",
                "model",
            ),
            Source::new(
                "JCGM 100:2008, 5.1 and H.3",
                "least squares and its uncertainty; room temperature and heat capacity in quadrature",
            ),
        ],
        accuracy: "One mass with one law of loss. The uncertainty holds the reading scatter, the room temperature and the value given; not a fixed error of the probe.",
        cautions: HOT_BLOCK_CAUTIONS,
        checked_against: "readings made by the same law return its values (test); uncertainty against repeated draws (test); no published log was at hand",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;
    const LONG: bool = true;

    fn check(&self, input: &CoolDownFitState) -> Raised {
        let room = input.room_temperature.si();
        let falls =
            matches!((self.temperatures.first(), self.temperatures.last()), (Some(first), Some(last)) if last < first && *last > room);
        let above = self.temperatures.iter().all(|temperature| *temperature > room);
        Raised::NONE
            .when(NOTHING_KNOWN, input.heat_capacity.si().is_nan() && input.expected_loss_conductance.si().is_nan())
            .when(NOT_COOLING, !(falls && above))
    }

    fn review(&self, _input: &CoolDownFitState, output: &CoolDownFitResult) -> Raised {
        Raised::NONE.when(POOR_FIT, output.residual_ratio.si() > 2.0).when(DISAGREES, output.deviation.si().abs() > 2.0)
    }

    fn compute<W: Working>(&self, input: &CoolDownFitState, working: &mut W) -> CoolDownFitResult {
        let (room, exponent, reading) = (input.room_temperature.si(), input.loss_exponent.si(), input.reading_uncertainty.si());
        let fitted = self.fit(room, exponent, reading);
        // Sensitivity to the room temperature by two more fits, a hundredth of a kelvin apart.
        let by_room = (self.fit(room + 0.005, exponent, reading).rate - self.fit(room - 0.005, exponent, reading).rate) / 0.01;
        let from_room = by_room * input.room_temperature_uncertainty.si();
        let relative = sqrt(fitted.rate_variance + from_room * from_room) / fitted.rate;
        let given_capacity = !input.heat_capacity.si().is_nan();
        let unless = |holds: bool, value: f64| if holds { f64::NAN } else { value };
        let share = |part: f64, whole: f64| part / whole;
        let capacity_share = share(input.heat_capacity_uncertainty.si(), input.heat_capacity.si());
        let loss_share = share(input.loss_conductance_uncertainty.si(), input.expected_loss_conductance.si());

        let (heat_capacity, expected_loss_conductance) = (input.heat_capacity, input.expected_loss_conductance);
        step!(working, let cooling_rate: "k" = Frequency::from_si(fitted.rate), "least squares over the readings");
        step!(working, let time_constant: "\\tau_{50}" in MINUTE = 1.0 / cooling_rate, "definition");
        step!(working, let relative_uncertainty: "u_r" = Ratio::from_si(relative), "JCGM 100:2008, 5.1: readings and room temperature");
        step!(working, let loss_conductance: "H_f" in WATT_PER_KELVIN = heat_capacity * cooling_rate, "definition of the time constant");
        step!(working, let fitted_capacity: "C_f" in KILOJOULE_PER_KELVIN = expected_loss_conductance * time_constant, "definition of the time constant");
        let loss_uncertainty = loss_conductance.si() * sqrt(relative * relative + capacity_share * capacity_share);
        let capacity_uncertainty = fitted_capacity.si() * sqrt(relative * relative + loss_share * loss_share);
        let expected_uncertainty = input.loss_conductance_uncertainty.si();
        let apart = loss_conductance.si() - expected_loss_conductance.si();
        let combined = sqrt(loss_uncertainty * loss_uncertainty + expected_uncertainty * expected_uncertainty);
        step!(working, let residual: "s" in KELVIN = TemperatureInterval::from_si(fitted.residual), "root mean square of reading less fit");
        step!(working, let deviation: "E" = Ratio::from_si(apart / combined), "difference over its standard uncertainty");
        step!(working, let start_temperature: "t_0" in DEGREE_CELSIUS = ThermodynamicTemperature::from_si(room + fitted.start), "least squares over the readings");
        CoolDownFitResult {
            time_constant: Time::from_si(time_constant.value),
            time_constant_uncertainty: Time::from_si(time_constant.value * relative_uncertainty.si()),
            loss_conductance,
            fitted_loss_uncertainty: ThermalConductance::from_si(loss_uncertainty),
            fitted_heat_capacity: HeatCapacity::from_si(unless(given_capacity, fitted_capacity.si())),
            fitted_heat_capacity_uncertainty: HeatCapacity::from_si(unless(given_capacity, capacity_uncertainty)),
            deviation,
            start_temperature,
            residual,
            residual_ratio: Ratio::from_si(fitted.residual / reading),
        }
    }

    /// The readings beside the fit.
    fn tables(&self, input: &CoolDownFitState) -> Vec<Table> {
        let (room, exponent) = (input.room_temperature.si(), input.loss_exponent.si());
        let fitted = self.fit(room, exponent, input.reading_uncertainty.si());
        let model: Vec<f64> = self.times.iter().map(|&time| room + excess(fitted.start, fitted.rate, exponent, time)).collect();
        let miss = self.temperatures.iter().zip(&model).map(|(reading, model)| reading - model).collect();
        let column = |name: &str, unit, values: Vec<f64>| Column { name: name.into(), unit, values };
        alloc::vec![Table {
            name: "readings and fit",
            row_names: Vec::new(),
            columns: alloc::vec![
                column("time", &units::MINUTE, self.times.clone()),
                column("reading", &units::DEGREE_CELSIUS, self.temperatures.clone()),
                column("fit", &units::DEGREE_CELSIUS, model),
                column("reading less fit", &units::KELVIN, miss),
            ],
        }]
    }
}

#[cfg(test)]
mod tests {
    use super::super::lump::temperature_after;
    use super::super::network::HeatLoss;
    use super::*;
    use crate::record::Record;

    const MINUTES: [f64; 9] = [0.0, 5.0, 10.0, 15.0, 20.0, 30.0, 40.0, 50.0, 60.0];

    fn logged(loss: &HeatLoss, error: impl Fn(usize) -> f64) -> CoolDownFit {
        let times: Vec<Time> = MINUTES.iter().map(|t| Time::from_si(t * 60.0)).collect();
        let temperatures: Vec<ThermodynamicTemperature> = times
            .iter()
            .enumerate()
            .map(|(i, time)| ThermodynamicTemperature::from_si(temperature_after(9e4, loss, 0.0, 293.15, 353.15, time.si()) + error(i)))
            .collect();
        CoolDownFit::new(&times, &temperatures).unwrap()
    }

    fn known() -> CoolDownFitState {
        CoolDownFitState { heat_capacity: HeatCapacity::from_si(9e4), ..CoolDownFitState::unset() }
    }

    #[test]
    fn exact_readings_return_the_law_that_made_them() {
        let got = logged(&HeatLoss::linear(20.0), |_| 0.0).evaluate(&known()).unwrap();
        assert!((got.loss_conductance.si() / 20.0 - 1.0).abs() < 1e-9, "{}", got.loss_conductance.si());
        assert!((got.start_temperature.si() - 353.15).abs() < 1e-7 && got.residual.si() < 1e-7);
        let law = HeatLoss::power_law(1000.0, 1.25);
        let input = CoolDownFitState { loss_exponent: Ratio::from_si(1.25), ..known() };
        let got = logged(&law, |_| 0.0).evaluate(&input).unwrap();
        // 1000 W at 50 K are 20 W/K there.
        assert!((got.loss_conductance.si() / 20.0 - 1.0).abs() < 1e-9, "{}", got.loss_conductance.si());
        // The heat capacity from the loss instead.
        let reverse = CoolDownFitState {
            heat_capacity: HeatCapacity::from_si(f64::NAN),
            expected_loss_conductance: ThermalConductance::from_si(20.0),
            loss_conductance_uncertainty: ThermalConductance::from_si(2.0),
            ..input
        };
        let got = logged(&law, |_| 0.0).evaluate(&reverse).unwrap();
        assert!((got.fitted_heat_capacity.si() / 9e4 - 1.0).abs() < 1e-9);
        assert!(got.loss_conductance.si().is_nan() && got.fitted_heat_capacity_uncertainty.si() > 0.1 * 9e4);
    }

    #[test]
    fn the_uncertainty_is_the_scatter_of_repeated_logs() {
        // A fixed sequence of normal-like deviations (sums of twelve uniform ones), u = 0.3 K.
        let mut seed = 12345_u64;
        let mut uniform = || {
            seed = seed.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
            (seed >> 11) as f64 / (1u64 << 53) as f64
        };
        let input = CoolDownFitState { room_temperature_uncertainty: TemperatureInterval::from_si(0.0), ..known() };
        let mut values = Vec::new();
        let mut stated = 0.0;
        for _ in 0..400 {
            let errors: Vec<f64> = (0..MINUTES.len()).map(|_| 0.3 * ((0..12).map(|_| uniform()).sum::<f64>() - 6.0)).collect();
            let got = logged(&HeatLoss::linear(20.0), |i| errors[i]).evaluate(&input).unwrap();
            values.push(got.loss_conductance.si());
            stated = got.fitted_loss_uncertainty.si();
        }
        let mean = values.iter().sum::<f64>() / 400.0;
        let scatter = sqrt(values.iter().map(|v| (v - mean) * (v - mean)).sum::<f64>() / 399.0);
        assert!((scatter / stated - 1.0).abs() < 0.12, "{scatter} {stated}");
        assert!((mean - 20.0).abs() < 4.0 * stated / 20.0, "{mean}");
        // A room temperature that is not well known adds to it.
        let wide = CoolDownFitState { room_temperature_uncertainty: TemperatureInterval::from_si(2.0), ..known() };
        let got = logged(&HeatLoss::linear(20.0), |_| 0.0).evaluate(&wide).unwrap();
        assert!(got.fitted_loss_uncertainty.si() > 1.5 * stated);
    }

    #[test]
    fn agreement_and_poor_fits_are_noticed() {
        let expecting = |loss: f64| CoolDownFitState {
            heat_capacity_uncertainty: HeatCapacity::from_si(4500.0),
            expected_loss_conductance: ThermalConductance::from_si(loss),
            loss_conductance_uncertainty: ThermalConductance::from_si(1.0),
            ..known()
        };
        let log = logged(&HeatLoss::linear(20.0), |_| 0.0);
        let near = log.evaluate(&expecting(19.0)).unwrap();
        assert!(near.deviation.si() > 0.0 && near.deviation.si() < 2.0 && near.notices().is_empty());
        let far = log.evaluate(&expecting(10.0)).unwrap();
        assert!(far.notices().iter().any(|notice| notice.code == "DISAGREES"));
        let bent = logged(&HeatLoss::linear(20.0), |i| if i > 4 { 5.0 } else { 0.0 }).evaluate(&known()).unwrap();
        assert!(bent.notices().iter().any(|notice| notice.code == "POOR_FIT"));
        let table = &log.tables(&known())[0];
        assert!(table.columns[3].values.iter().all(|miss| miss.abs() < 1e-7));
    }

    #[test]
    fn useless_logs_are_refused() {
        let t = |values: &[f64]| values.iter().map(|t| Time::from_si(*t)).collect::<Vec<_>>();
        let k = |values: &[f64]| values.iter().map(|t| ThermodynamicTemperature::from_si(t + 273.15)).collect::<Vec<_>>();
        assert!(CoolDownFit::new(&t(&[0.0, 60.0]), &k(&[80.0, 70.0])).is_err());
        assert!(CoolDownFit::new(&t(&[0.0, 60.0, 60.0]), &k(&[80.0, 70.0, 65.0])).is_err());
        assert!(CoolDownFit::new(&t(&[0.0, 60.0, 90.0]), &k(&[80.0, f64::NAN, 65.0])).is_err());
        assert!(CoolDownFit::new(&t(&[0.0, 60.0, 90.0]), &k(&[80.0, 70.0])).is_err());
        let warming = CoolDownFit::new(&t(&[0.0, 60.0, 90.0]), &k(&[60.0, 70.0, 75.0])).unwrap();
        assert_eq!(warming.evaluate(&known()).err().unwrap().code(), "NOT_COOLING");
        let below = CoolDownFit::new(&t(&[0.0, 60.0, 90.0]), &k(&[60.0, 30.0, 15.0])).unwrap();
        assert_eq!(below.evaluate(&known()).err().unwrap().code(), "NOT_COOLING");
        let fine = CoolDownFit::new(&t(&[0.0, 60.0, 90.0]), &k(&[60.0, 50.0, 45.0])).unwrap();
        assert_eq!(fine.evaluate(&CoolDownFitState::unset()).err().unwrap().code(), "NOTHING_KNOWN");
    }
}
