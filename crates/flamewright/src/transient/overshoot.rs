//! The calculation `overshoot`: how hot the block's water gets after the burner has stopped, and why a pump runs on.

use super::network::Point;
use super::plant::{
    BURNER, FiredPlant, HOT_BLOCK_CAUTIONS, Laid, Layout, Plant, State, Turndown, fired_plant_record, layout_settings, plant_record,
    plant_rules,
};
use super::run::{Bounds, Ending, Peak, Then, What, run};
use super::thermostat::Controls;
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Raised, Setting, Settings, Source};
use crate::quantity::types::{
    Energy, HeatCapacity, HeatCapacityPerLength, Length, Mass, MassDensity, MassRate, Power, Pressure, Ratio, SpecificHeatCapacity,
    TemperatureInterval, ThermalConductance, ThermalConductivity, ThermodynamicTemperature, Time, Volume,
};
use crate::quantity::units::{DEGREE_CELSIUS, KELVIN, KILOJOULE};
use crate::quantity::{LinearTransmittance, Value};
use crate::record::record;
use crate::working::{Working, step};

fired_plant_record! {
    /// A heat generator with its burner lit, on its way to the cut-out.
    pub struct OvershootState {}
}

/// How far the water overshoots.
#[record]
pub struct OvershootResult {
    /// Time until the thermostat stops the burner.
    #[field("\\tau_{on}", SECOND, absent = "the burner never stops, or not found")]
    pub firing_time: Time,
    /// Temperature of the block's water as the burner stops.
    #[field("t_B", DEGREE_CELSIUS, absent = "the burner never stops, or not found")]
    pub temperature_at_cut_out: ThermodynamicTemperature,
    /// Heat the metal then holds over the water.
    #[field("Q_R", KILOJOULE, absent = "the burner never stops, or not found", detail = true)]
    pub residual_heat: Energy,
    /// Highest temperature of the block's water if the pump stops with the burner.
    #[field("t_{max,0}", DEGREE_CELSIUS, absent = "the burner never stops, or not found")]
    pub peak_with_pump_stopped: ThermodynamicTemperature,
    /// Time of that peak after the burner has stopped.
    #[field("\\tau_{max,0}", SECOND, absent = "the burner never stops, or not found", detail = true)]
    pub peak_time_with_pump_stopped: Time,
    /// Highest temperature of the block's water if the pump runs on.
    #[field("t_{max,1}", DEGREE_CELSIUS, absent = "the burner never stops, or not found")]
    pub peak_with_pump_running: ThermodynamicTemperature,
    /// Overshoot over the cut-out with the pump stopped.
    #[field("\\Delta t_0", KELVIN, absent = "the burner never stops, or not found")]
    pub overshoot_with_pump_stopped: TemperatureInterval,
    /// Overshoot over the cut-out with the pump running on.
    #[field("\\Delta t_1", KELVIN, absent = "the burner never stops, or not found")]
    pub overshoot_with_pump_running: TemperatureInterval,
    /// Limit less the peak with the pump stopped; negative where the limit would lock out.
    #[field("m_0", KELVIN, absent = "no limit given, or no peak found")]
    pub margin_with_pump_stopped: TemperatureInterval,
    /// Limit less the peak with the pump running on.
    #[field("m_1", KELVIN, absent = "no limit given, or no peak found")]
    pub margin_with_pump_running: TemperatureInterval,
    /// Temperature the block's water would reach if the burner burned on.
    #[field("t_\\infty", DEGREE_CELSIUS, absent = "none: no loss, or not found", detail = true)]
    pub steady_temperature: ThermodynamicTemperature,
}

/// Overshoot of the water temperature after the burner has stopped.
#[derive(Clone, Debug, Default)]
pub struct Overshoot {
    /// Cells and further circuits.
    pub layout: Layout,
    /// How the burner gives its output.
    pub turndown: Turndown,
}

impl Context for Overshoot {
    const SETTINGS: &'static [Setting] = layout_settings![BURNER];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { layout: Layout::from_settings(settings)?, turndown: Turndown::from_settings(settings)? })
    }
}

plant_rules! {
    refuse NO_TURNDOWN on "low_output": super::plant::NO_TURNDOWN_TEXT;
    notice NEVER_STOPS on "firing_time": "the cut-out is not reached: circuits and casing take all the burner gives (see steady_temperature)";
    notice NEVER_LIGHTS on "firing_time": "the block is at or above the cut-out from the start: the burner does not light";
    notice NOT_FOUND on "firing_time": super::plant::NOT_FOUND_TEXT;
    notice PEAK_NOT_FOUND on "peak_with_pump_stopped": super::plant::PEAK_NOT_FOUND_TEXT;
    notice TRIPS_FIRING on "limit_temperature": "the limit lies at or below the cut-out: it locks the burner out before the control thermostat stops it";
    notice NO_RESIDUAL_HEAT on "residual_heat": "metal and water share one temperature and the sensor has no lag: nothing can overshoot; give a film_conductance or a sensor_time_constant";
    notice LIMIT_WOULD_TRIP on "margin_with_pump_stopped": "with the pump stopped the water reaches the limit: without overrun the limit thermostat would lock out";
    notice LIMIT_TRIPS on "margin_with_pump_running": "even with the pump running on the water reaches the limit";
    notice MAY_BOIL on "peak_with_pump_stopped": "the water passes 100 °C: it boils where the pressure is no more than atmospheric";
}

struct Peaks {
    firing: f64,
    at_cut_out: f64,
    residual: f64,
    stopped: (f64, f64),
    running: (f64, f64),
    steady: f64,
}

const NONE: Peaks = Peaks {
    firing: f64::NAN,
    at_cut_out: f64::NAN,
    residual: f64::NAN,
    stopped: (f64::NAN, f64::NAN),
    running: (f64::NAN, f64::NAN),
    steady: f64::NAN,
};

/// Highest temperature of the water from the model's start on, and when; NaN where the sum did not
/// get to the point from which it cannot rise above that again.
///
/// A dip by the cold water that comes back may lie between two rises, so every peak is looked at.
pub(crate) fn peak(laid: &mut Laid, pump: bool) -> (f64, f64) {
    let mut found = (laid.model.initial().first().copied().unwrap_or(f64::NAN), 0.0);
    let controls = Controls::pump_only(pump);
    let outcome = run(&mut laid.model, &controls, &[], Peak::Awaited(0), &Bounds::USUAL, None, |what, time, _, state| {
        if what == What::Peak && state[0] > found.0 {
            found = (state[0], time);
        }
        Then::GoOn
    });
    if outcome.ending != Ending::Settled {
        return (f64::NAN, f64::NAN);
    }
    // A rise that dies away towards rest has no maximum but its end.
    if outcome.highest > found.0 { (outcome.highest, outcome.solver.time()) } else { found }
}

fn follow(calculation: &Overshoot, input: &OvershootState) -> Peaks {
    let (plant, fired) = (Plant::of(input), FiredPlant::of(input));
    if !Plant::is_whole(input) {
        return NONE;
    }
    let Some(mut laid) = plant.lay_out(&calculation.layout, State::Before, alloc::vec![fired.sensor()]) else { return NONE };
    // The limit is compared with the peaks; here it does not act.
    let controls = Controls { limit: None, ..fired.controls(calculation.turndown, f64::NEG_INFINITY) };
    let mut at_stop = None;
    let outcome = run(&mut laid.model, &controls, &[], Peak::Ignored, &Bounds::USUAL, None, |what, time, _, state| {
        if what == What::BurnerStops {
            at_stop = Some((time, state.to_vec()));
            return Then::Stop;
        }
        Then::GoOn
    });
    let steady = outcome.rest(0);
    let Some((firing, state)) = at_stop else { return Peaks { steady, ..NONE } };
    let residual = laid.model.node(Point::Metal).map_or(0.0, |metal| plant.capacities().0 * (state[metal] - state[0]));
    laid.model.start_from(&state);
    let stopped = peak(&mut laid, false);
    let running = peak(&mut laid, true);
    Peaks { firing, at_cut_out: state[0], residual, stopped, running, steady }
}

impl Calculation for Overshoot {
    type Input = OvershootState;
    type Output = OvershootResult;
    const INFO: Info = Info {
        name: "overshoot",
        title: "Overshoot after the burner has stopped",
        summary: "The highest temperature of the block's water after the control thermostat has stopped the burner, with the pump stopped and with the pump running on, and the margin to the limit thermostat: why a pump runs on.",
        sources: &[
            Source::new("energy balance of metal and water coupled by a film; first law", "residual heat"),
            Source::new("first-order lag", "sensor in its pocket"),
        ],
        accuracy: "Two masses stand for a block whose temperature varies from place to place: take the overshoot as known to about 30 %, mostly by the film conductance. The equations themselves are solved to 1e-6 K.",
        cautions: HOT_BLOCK_CAUTIONS,
        checked_against: "closed form of two coupled masses (test); no published measurement was at hand",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;
    const LONG: bool = true;

    fn check(&self, input: &OvershootState) -> Raised {
        check_plant(&Plant::of(input), &self.layout, true).when(NO_TURNDOWN, FiredPlant::of(input).has_no_turndown(self.turndown))
    }

    fn review(&self, input: &OvershootState, output: &OvershootResult) -> Raised {
        let single = !Plant::of(input).two_masses();
        let unlit = input.block_temperature.si() >= input.cut_out_temperature.si();
        let (never, rests) = (output.firing_time.si().is_nan(), unlit || !output.steady_temperature.si().is_nan());
        Raised::NONE
            .when(NEVER_STOPS, never && rests && !unlit)
            .when(NEVER_LIGHTS, unlit)
            .when(NOT_FOUND, never && !rests)
            .when(PEAK_NOT_FOUND, !never && (output.peak_with_pump_stopped.si().is_nan() || output.peak_with_pump_running.si().is_nan()))
            .when(TRIPS_FIRING, input.limit_temperature.si() <= input.cut_out_temperature.si())
            .when(NO_RESIDUAL_HEAT, single && input.sensor_time_constant.si() == 0.0)
            .when(LIMIT_WOULD_TRIP, output.margin_with_pump_stopped.si() <= 0.0)
            .when(LIMIT_TRIPS, output.margin_with_pump_running.si() <= 0.0)
            .when(MAY_BOIL, output.peak_with_pump_stopped.si() > 373.15)
    }

    fn compute<W: Working>(&self, input: &OvershootState, working: &mut W) -> OvershootResult {
        let found = follow(self, input);
        let over = |peak: f64| TemperatureInterval::from_si(peak - input.cut_out_temperature.si());
        let under = |peak: f64| TemperatureInterval::from_si(input.limit_temperature.si() - peak);
        step!(working, let temperature_at_cut_out: "t_B" in DEGREE_CELSIUS = ThermodynamicTemperature::from_si(found.at_cut_out), "integration of the heat balances");
        step!(working, let residual_heat: "Q_R" in KILOJOULE = Energy::from_si(found.residual), "heat capacity of the metal times its excess over the water");
        step!(working, let peak_with_pump_stopped: "t_{max,0}" in DEGREE_CELSIUS = ThermodynamicTemperature::from_si(found.stopped.0), "integration without flow");
        step!(working, let peak_with_pump_running: "t_{max,1}" in DEGREE_CELSIUS = ThermodynamicTemperature::from_si(found.running.0), "integration with flow");
        step!(working, let overshoot_with_pump_stopped: "\\Delta t_0" in KELVIN = over(found.stopped.0), "peak less cut-out");
        step!(working, let overshoot_with_pump_running: "\\Delta t_1" in KELVIN = over(found.running.0), "peak less cut-out");
        step!(working, let margin_with_pump_stopped: "m_0" in KELVIN = under(found.stopped.0), "limit less peak");
        step!(working, let margin_with_pump_running: "m_1" in KELVIN = under(found.running.0), "limit less peak");
        OvershootResult {
            firing_time: Time::from_si(found.firing),
            temperature_at_cut_out,
            residual_heat,
            peak_with_pump_stopped,
            peak_time_with_pump_stopped: Time::from_si(found.stopped.1),
            peak_with_pump_running,
            overshoot_with_pump_stopped,
            overshoot_with_pump_running,
            margin_with_pump_stopped,
            margin_with_pump_running,
            steady_temperature: ThermodynamicTemperature::from_si(found.steady),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::cool_down::tests::bypass;
    use super::super::plant::with_plant;
    use super::*;
    use crate::record::Record;
    use alloc::vec::Vec;

    fn firing() -> OvershootState {
        let rest = OvershootState::read([("burner_output", "20 kW"), ("cut_out_temperature", "80 degC"), ("limit_temperature", "95 degC")]);
        OvershootState {
            film_conductance: ThermalConductance::from_si(600.0),
            block_temperature: ThermodynamicTemperature::from_si(333.15),
            circuit_temperature: ThermodynamicTemperature::from_si(333.15),
            ..with_plant(&bypass(), &rest.unwrap())
        }
    }

    #[test]
    fn without_loss_the_peak_is_the_mean_of_metal_and_water() {
        // No loss and no flow: metal and water end at one temperature, C-weighted.
        let tight = OvershootState { casing_loss: ThermalConductance::from_si(0.0), ..firing() };
        let got = Overshoot::default().evaluate(&tight).unwrap();
        let (metal, water) = Plant::of(&tight).capacities();
        let excess = got.residual_heat.si() / metal;
        let level = got.temperature_at_cut_out.si() + excess * metal / (metal + water);
        // The rise ends without a peak; it is taken where it has died away.
        assert!((got.peak_with_pump_stopped.si() - level).abs() < 1e-3 || got.peak_with_pump_stopped.si() <= level + 1e-6);
        // With a little loss the peak comes close to that and has a moment.
        let lossy = Overshoot::default().evaluate(&firing()).unwrap();
        assert!(lossy.peak_with_pump_stopped.si() < level);
        assert!(lossy.peak_with_pump_stopped.si() > level - 1.0, "{} {level}", lossy.peak_with_pump_stopped.si());
        assert!(lossy.peak_time_with_pump_stopped.si() > 30.0);
    }

    #[test]
    fn the_excess_of_the_metal_is_that_of_a_steady_rise() {
        // While all warms at one rate the film carries what the water (and circuit) takes: P C_W / C over G, nearly.
        let got = Overshoot::default().evaluate(&firing()).unwrap();
        let (metal, water) = Plant::of(&firing()).capacities();
        let circuit = 3.5 * 1500.0;
        let excess = 20_000.0 * (water + circuit) / (metal + water + circuit) / 600.0;
        assert!((got.residual_heat.si() / metal / excess - 1.0).abs() < 0.05, "{} {excess}", got.residual_heat.si() / metal);
    }

    #[test]
    fn a_running_pump_lowers_the_peak_and_the_limit_is_compared() {
        let got = Overshoot::default().evaluate(&firing()).unwrap();
        assert!(got.peak_with_pump_running.si() < got.peak_with_pump_stopped.si());
        assert!((got.overshoot_with_pump_stopped.si() + got.margin_with_pump_stopped.si() - 15.0).abs() < 1e-9);
        let near = OvershootState { limit_temperature: ThermodynamicTemperature::from_si(357.15), ..firing() };
        let got = Overshoot::default().evaluate(&near).unwrap();
        assert!(got.notices().iter().any(|notice| notice.code == "LIMIT_WOULD_TRIP"));
    }

    #[test]
    fn sensor_lag_alone_overshoots_by_rate_times_lag() {
        let one_mass = OvershootState {
            film_conductance: ThermalConductance::from_si(f64::NAN),
            sensor_time_constant: Time::from_si(20.0),
            ..firing()
        };
        let got = Overshoot::default().evaluate(&one_mass).unwrap();
        // Rate of rise near 80 degC: output less losses over all that warms (block and loop).
        let rate = (20_000.0 - 60.0 * (6.0 + 3.5 * 0.75)) / (97_446.0 + 5250.0);
        assert!((got.overshoot_with_pump_stopped.si() / (20.0 * rate) - 1.0).abs() < 0.02, "{}", got.overshoot_with_pump_stopped.si());
        let prompt = OvershootState { sensor_time_constant: Time::from_si(0.0), ..one_mass };
        let got = Overshoot::default().evaluate(&prompt).unwrap();
        assert!(got.overshoot_with_pump_stopped.si().abs() < 1e-6);
        assert!(got.notices().iter().any(|notice| notice.code == "NO_RESIDUAL_HEAT"));
    }

    /// Hot metal, cool water and a long loop as cool: the water rises until the metal's heat balances
    /// the cool return, falls as the metal does, and rises again when its own heat comes round.
    fn comes_round() -> OvershootState {
        OvershootState {
            burner_output: Power::from_si(100.0),
            cut_out_temperature: ThermodynamicTemperature::from_si(334.15),
            water_content: Volume::from_si(0.002),
            film_conductance: ThermalConductance::from_si(120.0),
            metal_temperature: ThermodynamicTemperature::from_si(673.15),
            block_temperature: ThermodynamicTemperature::from_si(333.15),
            circuit_temperature: ThermodynamicTemperature::from_si(333.15),
            flow_length: Length::from_si(30.0),
            return_length: Length::from_si(30.0),
            ..firing()
        }
    }

    /// All maxima of the water from the start of a plant, on short steps of another tolerance.
    fn maxima(laid: &mut Laid, pump: bool) -> Vec<(f64, f64)> {
        laid.model.set_pump(pump);
        laid.model.set_firing(crate::transient::network::Firing::OFF);
        let start = laid.model.initial().to_vec();
        let mut solver = crate::transient::solver::Solver::new(&laid.model, &start, 1e-9, 1_000_000);
        let (mut found, mut rising, mut last) = (Vec::new(), false, start[0]);
        for second in 1..4000 {
            let until = f64::from(second);
            while solver.time() < until {
                solver.step(&mut laid.model, until).unwrap();
            }
            let now = solver.state()[0];
            if rising && now <= last {
                found.push((last, until - 1.0));
            }
            (rising, last) = (now > last, now);
        }
        found
    }

    #[test]
    fn a_later_higher_peak_is_the_one_given() {
        let fired = FiredPlant::of(&comes_round());
        let mut laid = Plant::of(&comes_round()).lay_out(&Layout::default(), State::Before, alloc::vec![fired.sensor()]).unwrap();
        let all = maxima(&mut laid, true);
        assert!(all.len() >= 2 && all[1].0 > all[0].0 + 1.0, "{all:?}");
        let highest = all.iter().fold(0.0, |most, (value, _)| f64::max(most, *value));
        let (value, time) = peak(&mut laid, true);
        assert!((value - highest).abs() < 0.05 && value >= highest - 1e-6, "{value} {all:?}");
        assert!(all.iter().any(|(height, at)| *height == highest && (at - time).abs() <= 1.0), "{time} {all:?}");
        let got = Overshoot::default().evaluate(&comes_round()).unwrap();
        assert!((got.peak_with_pump_running.si() - value).abs() < 0.5, "{:?} {value}", got.peak_with_pump_running);
    }

    #[test]
    fn the_peak_after_an_overrun_by_gravity_is_the_highest_of_all() {
        // The pump stopped, water goes on round by its weight.
        let input = OvershootState { pressure_drop: Pressure::from_si(2000.0), emitter_height: Length::from_si(4.0), ..comes_round() };
        let mut laid = Plant::of(&input).lay_out(&Layout::default(), State::Before, alloc::vec![]).unwrap();
        let all = maxima(&mut laid, false);
        let highest = all.iter().fold(0.0, |most, (value, _)| f64::max(most, *value));
        let (value, _) = peak(&mut laid, false);
        assert!(!all.is_empty() && (value - highest).abs() < 0.05 && value >= highest - 1e-6, "{value} {all:?}");
    }

    #[test]
    fn every_kind_of_burner_overshoots_by_what_it_gives_at_the_end() {
        let low = OvershootState { low_output: Power::from_si(5000.0), turn_down_band: TemperatureInterval::from_si(10.0), ..firing() };
        let of = |turndown| Overshoot { turndown, ..Overshoot::default() }.evaluate(&low).unwrap();
        let (fixed, staged, modulating) = (of(Turndown::Fixed), of(Turndown::TwoStage), of(Turndown::Modulating));
        // In the low stage the metal holds about a quarter of the residual heat.
        let share = staged.residual_heat.si() / fixed.residual_heat.si();
        assert!((share - 0.25).abs() < 0.03, "{share}");
        assert!(staged.overshoot_with_pump_stopped.si() < 0.4 * fixed.overshoot_with_pump_stopped.si());
        assert!(modulating.residual_heat.si() < fixed.residual_heat.si() && modulating.firing_time.si() > fixed.firing_time.si());
        let none = OvershootState { low_output: Power::from_si(f64::NAN), ..low };
        let refused = Overshoot { turndown: Turndown::Modulating, ..Overshoot::default() }.evaluate(&none);
        assert_eq!(refused.err().unwrap().code(), "NO_TURNDOWN");
        // A limit below the cut-out acts before it.
        let below = OvershootState { limit_temperature: ThermodynamicTemperature::from_si(350.15), ..firing() };
        assert!(Overshoot::default().evaluate(&below).unwrap().notices().iter().any(|notice| notice.code == "TRIPS_FIRING"));
    }

    #[test]
    fn a_burner_too_small_never_stops() {
        let weak = OvershootState { burner_output: Power::from_si(400.0), ..firing() };
        let got = Overshoot::default().evaluate(&weak).unwrap();
        assert!(got.firing_time.si().is_nan());
        assert!((got.steady_temperature.si() - 293.15 - 400.0 / 8.7).abs() < 1.0, "{}", got.steady_temperature.si());
        assert!(got.notices().iter().any(|notice| notice.code == "NEVER_STOPS"));
    }
}
