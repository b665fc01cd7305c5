//! The calculation `warm_up`: how long a plant takes from cold to a temperature.

use super::cool_down::{WATCHED, WATCHED_SETTING, Watched};
use super::plant::{BURNER, FiredPlant, Layout, Plant, State, Turndown, fired_plant_record, layout_settings, plant_record, plant_rules};
use super::run::{Bounds, Mark, Then, What, run};
use super::solver::Direction;
use super::thermostat::{Controls, Thermostat};
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Raised, Setting, Settings, Source};
use crate::quantity::types::{
    Energy, HeatCapacity, HeatCapacityPerLength, Length, Mass, MassDensity, MassRate, Power, Pressure, Ratio, SpecificHeatCapacity,
    TemperatureInterval, ThermalConductance, ThermalConductivity, ThermodynamicTemperature, Time, Volume,
};
use crate::quantity::units::{KILOJOULE, MINUTE};
use crate::quantity::{LinearTransmittance, Value};
use crate::record::record;
use crate::working::{Working, step};

fired_plant_record! {
    /// A plant at the moment its burner lights, and the temperature it is to reach.
    pub struct WarmUpState {
        /// Differential of the control thermostat.
        #[field("\\Delta t", KELVIN, 0.1..=60.0, default = 8.0, usual = 2.0..=15.0)]
        pub control_differential: TemperatureInterval,
        /// Temperature to be reached at the point watched.
        #[field("t_Z", DEGREE_CELSIUS, -30.0..=150.0, usual = 20.0..=90.0)]
        pub target_temperature: ThermodynamicTemperature,
    }
}

/// How long it takes and where the heat has gone.
#[record]
pub struct WarmUpResult {
    /// Time until the target is reached.
    #[field("\\tau", MINUTE, absent = "never")]
    pub time: Time,
    /// Heat the burner has given to the block by then.
    #[field("Q", KILOJOULE, absent = "never")]
    pub heat_put_in: Energy,
    /// Heat that block, pipes and emitters have taken up.
    #[field("Q_S", KILOJOULE, absent = "never")]
    pub heat_stored: Energy,
    /// Heat given off by casing and pipes.
    #[field("Q_V", KILOJOULE, absent = "never")]
    pub heat_lost: Energy,
    /// Heat given off by the emitters.
    #[field("Q_E", KILOJOULE, absent = "never")]
    pub emitter_heat: Energy,
    /// Temperature of the block's water at that moment.
    #[field("t_B", DEGREE_CELSIUS, absent = "never")]
    pub block_temperature_then: ThermodynamicTemperature,
    /// How often the burner has stopped on the way.
    #[field("N", ONE)]
    pub stop_count: Ratio,
    /// Share by which heat put in, stored and given off fail to balance.
    #[field("\\varepsilon", ONE, absent = "never", detail = true)]
    pub imbalance: Ratio,
}

/// Warm-up of a plant under its control thermostat.
#[derive(Clone, Debug)]
pub struct WarmUp {
    /// Cells and further circuits.
    pub layout: Layout,
    /// How the burner gives its output.
    pub turndown: Turndown,
    /// The point whose temperature counts.
    pub watched: Watched,
}

impl Default for WarmUp {
    fn default() -> Self {
        Self { layout: Layout::default(), turndown: Turndown::Fixed, watched: Watched::Block }
    }
}

impl Context for WarmUp {
    const SETTINGS: &'static [Setting] = layout_settings![BURNER, WATCHED_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self {
            layout: Layout::from_settings(settings)?,
            turndown: Turndown::from_settings(settings)?,
            watched: settings.choice("watched", WATCHED)?,
        })
    }
}

plant_rules! {
    refuse NO_TURNDOWN on "low_output": "a two-stage or modulating burner needs a low output below its full one";
    refuse POINT_IS_MISSING on "target_temperature": "the plant has no such point to watch: no emitter, no pipe, or metal and water sharing one temperature";
    notice ALREADY_THERE on "time": "the point watched is at or above the target from the start";
    notice NEVER on "time": "the target was not reached within a week, 500 stops of the burner or the steps allowed: commonly the burner is too small for the losses, or the thermostat holds the plant below it";
    notice HEAT_BOOK_OPEN on "imbalance": "the heat put in, stored and given off do not balance to one part in a million: do not rely on the result";
}

struct Found {
    time: f64,
    heat: f64,
    stored: f64,
    lost: f64,
    emitted: f64,
    block: f64,
    stops: f64,
    imbalance: f64,
}

const NONE: Found = Found {
    time: f64::NAN,
    heat: f64::NAN,
    stored: f64::NAN,
    lost: f64::NAN,
    emitted: f64::NAN,
    block: f64::NAN,
    stops: f64::NAN,
    imbalance: f64::NAN,
};

/// Stops of the burner followed at most: past this the plant only holds its temperature.
const MOST_STOPS: f64 = 500.0;

impl WarmUp {
    fn follow(&self, input: &WarmUpState) -> Found {
        let fired = FiredPlant::of(input);
        let plant = Plant::of(input);
        if !Plant::is_whole(input) {
            return NONE;
        }
        let Some(mut laid) = plant.lay_out(&self.layout, State::Before, alloc::vec![fired.sensor()]) else { return NONE };
        let Some(node) = self.watched.point(&plant).and_then(|point| laid.model.node(point)) else { return NONE };
        let upper = input.cut_out_temperature.si();
        let control = Thermostat { sensor: 0, upper, lower: upper - input.control_differential.si() };
        let controls = Controls {
            burner: Some((fired.burner(self.turndown), control)),
            demand_at_start: true,
            burning_at_start: true,
            ..Controls::pump_only(true)
        };
        let mark = Mark { node, level: input.target_temperature.si(), direction: Direction::Rising };
        let mut stops = 0.0;
        let mut reached = None;
        let (_, solver) = run(&mut laid.model, &controls, &[mark], None, &Bounds::USUAL, None, |what, time, _, _| match what {
            What::Mark(_) => {
                reached = Some(time);
                Then::Stop
            }
            What::BurnerStops => {
                stops += 1.0;
                if stops < MOST_STOPS { Then::GoOn } else { Then::Stop }
            }
            _ => Then::GoOn,
        });
        let Some(time) = reached else { return Found { stops, ..NONE } };
        let state = solver.state();
        let (pipes, emitted) = laid.pipes_and_emitters(state);
        Found {
            time,
            heat: laid.model.heat_put_in(state),
            stored: laid.model.stored(state),
            lost: laid.model.casing_heat(state) + pipes,
            emitted,
            block: state[0],
            stops,
            imbalance: laid.model.imbalance(state),
        }
    }
}

impl Calculation for WarmUp {
    type Input = WarmUpState;
    type Output = WarmUpResult;
    const INFO: Info = Info {
        name: "warm_up",
        title: "Warm-up of a heat generator and its circuits",
        summary: "How long a plant takes from its start to a temperature at the block, an emitter or the return, with a fixed, two-stage or modulating burner, and where the heat has gone by then.",
        sources: &[
            Source::new("energy balance of stirred masses in a row; first law", "block, pipe cells, emitters"),
            Source::new("EN 442 (exponent form, from memory)", "emitter output against temperature difference"),
        ],
        accuracy: "The equations are solved to about one part in 10^8 of the time; the burner's output (5 %) and the heat capacities (10 %) limit the answer.",
        cautions: &[],
        checked_against: "closed form of one mass with a linear loss (test); the same network as cool_down and circuit_cycling, which have outside checks",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    fn check(&self, input: &WarmUpState) -> Raised {
        let plant = Plant::of(input);
        check_plant(&plant, &self.layout, true)
            .when(NO_TURNDOWN, FiredPlant::of(input).has_no_turndown(self.turndown))
            .when(POINT_IS_MISSING, self.watched.point(&plant).is_none())
    }

    fn review(&self, _input: &WarmUpState, output: &WarmUpResult) -> Raised {
        Raised::NONE
            .when(ALREADY_THERE, output.time.si() == 0.0)
            .when(NEVER, output.time.si().is_nan())
            .when(HEAT_BOOK_OPEN, output.imbalance.si().abs() > 1e-6)
    }

    fn compute<W: Working>(&self, input: &WarmUpState, working: &mut W) -> WarmUpResult {
        let found = self.follow(input);
        step!(working, let time: "\\tau" in MINUTE = Time::from_si(found.time), "integration of the heat balances");
        step!(working, let heat_put_in: "Q" in KILOJOULE = Energy::from_si(found.heat), "integral of the burner's output");
        step!(working, let heat_stored: "Q_S" in KILOJOULE = Energy::from_si(found.stored), "heat capacities times rise");
        step!(working, let heat_lost: "Q_V" in KILOJOULE = Energy::from_si(found.lost), "integral of the losses");
        step!(working, let emitter_heat: "Q_E" in KILOJOULE = Energy::from_si(found.emitted), "integral of the emitters' output");
        WarmUpResult {
            time,
            heat_put_in,
            heat_stored,
            heat_lost,
            emitter_heat,
            block_temperature_then: ThermodynamicTemperature::from_si(found.block),
            stop_count: Ratio::from_si(found.stops),
            imbalance: Ratio::from_si(found.imbalance),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::cool_down::tests::{bypass, radiator};
    use super::super::plant::{Opening, with_plant};
    use super::*;
    use crate::record::Record;

    fn cold() -> WarmUpState {
        let rest = WarmUpState::read([("burner_output", "12 kW"), ("cut_out_temperature", "80 degC"), ("target_temperature", "60 degC")]);
        let start = ThermodynamicTemperature::from_si(293.15);
        WarmUpState { block_temperature: start, circuit_temperature: start, ..with_plant(&bypass(), &rest.unwrap()) }
    }

    #[test]
    fn a_block_with_a_short_loop_warms_as_one_mass() {
        // Closed form of one mass with block and loop together; the loop lags by seconds.
        let got = WarmUp::default().evaluate(&cold()).unwrap();
        let (capacity, conductance) = (97_446.0 + 5250.0, 6.0 + 3.5 * 0.75);
        let closed = -capacity / conductance * crate::math::ln(1.0 - conductance * 40.0 / 12_000.0);
        assert!((got.time.si() / closed - 1.0).abs() < 0.01, "{} {closed}", got.time.si());
        assert!((got.heat_put_in.si() / (12_000.0 * got.time.si()) - 1.0).abs() < 1e-9);
        let parts = got.heat_stored.si() + got.heat_lost.si() + got.emitter_heat.si();
        assert!((parts / got.heat_put_in.si() - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_smaller_or_turned_down_burner_takes_longer() {
        let mut calculation = WarmUp::default();
        let fixed = calculation.evaluate(&cold()).unwrap().time.si();
        let low = WarmUpState { low_output: Power::from_si(4000.0), turn_down_band: TemperatureInterval::from_si(30.0), ..cold() };
        calculation.turndown = Turndown::TwoStage;
        let staged = calculation.evaluate(&low).unwrap().time.si();
        calculation.turndown = Turndown::Modulating;
        let modulating = calculation.evaluate(&low).unwrap();
        assert!(modulating.imbalance.si().abs() < 1e-9);
        // Full output to 50 degC, then one third of it, or a fall from all to three quarters.
        assert!(staged > modulating.time.si() && modulating.time.si() > fixed, "{fixed} {staged} {}", modulating.time.si());
        let quarter_time = fixed / 4.0;
        assert!((staged / (3.0 * quarter_time + 3.0 * quarter_time) - 1.0).abs() < 0.05, "{staged} {fixed}");
        assert_eq!(calculation.evaluate(&cold()).err().unwrap().code(), "NO_TURNDOWN");
    }

    #[test]
    fn the_emitter_comes_later_than_the_block() {
        let mut calculation = WarmUp::default();
        calculation.layout.circuits.push(radiator(Opening::Open));
        let input =
            WarmUpState { emitter_output: Power::from_si(1500.0), emitter_heat_capacity: HeatCapacity::from_si(45_000.0), ..cold() };
        let block = calculation.evaluate(&input).unwrap();
        calculation.watched = Watched::Emitter;
        let emitter = calculation.evaluate(&input).unwrap();
        assert!(emitter.time.si() > block.time.si() + 10.0);
        assert!(emitter.emitter_heat.si() > 0.0);
    }

    #[test]
    fn what_cannot_be_reached_is_said() {
        let hot = WarmUpState { target_temperature: ThermodynamicTemperature::from_si(363.15), ..cold() };
        let got = WarmUp::default().evaluate(&hot).unwrap();
        assert!(got.time.si().is_nan() && got.stop_count.si() > 0.0);
        assert!(got.notices().iter().any(|notice| notice.code == "NEVER"));
        let weak = WarmUpState { burner_output: Power::from_si(100.0), ..cold() };
        assert!(WarmUp::default().evaluate(&weak).unwrap().time.si().is_nan());
    }
}
