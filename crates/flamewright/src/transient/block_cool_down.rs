//! The calculation `block_cool_down`: one hot mass in a room, without a circuit.

use super::lump::{steady_temperature, time_between};
use super::network::HeatLoss;
use super::plant::HOT_BLOCK_CAUTIONS;
use crate::calculation::{Calculation, Info, Raised, Source};
use crate::convection::radiation::STEFAN_BOLTZMANN;
use crate::math::ln;
use crate::quantity::Value;
use crate::quantity::types::{
    Area, Energy, HeatCapacity, Power, Ratio, TemperatureInterval, ThermalConductance, ThermodynamicTemperature, Time,
};
use crate::quantity::units::{KILOJOULE, MINUTE, WATT};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A hot mass that loses heat to a room.
#[record]
pub struct BlockCoolDownState {
    /// Heat capacity of all that cools together: metal and water.
    #[field("C", KILOJOULE_PER_KELVIN, 0.001..=1e6, usual = 1.0..=2000.0)]
    pub heat_capacity: HeatCapacity,
    /// Loss in proportion to the temperature difference: casing, insulated pipe, a circuit with a steady flow.
    #[field("H", WATT_PER_KELVIN, 0.0..=1e5, default = 0.0)]
    pub loss_conductance: ThermalConductance,
    /// Loss by natural convection (or an emitter's output) at 50 K over the room.
    #[field("P_{50}", WATT, 0.0..=1e6, default = 0.0)]
    pub convective_loss: Power,
    /// Exponent of that loss: 1.25 for laminar natural convection, about 1.3 for radiators.
    #[field("n", ONE, 1.0..=2.0, default = 1.25)]
    pub loss_exponent: Ratio,
    /// Bare area that radiates to surfaces at room temperature.
    #[field("A", SQUARE_METRE, 0.0..=1000.0, default = 0.0)]
    pub radiating_area: Area,
    /// Emissivity of that area.
    #[field("\\epsilon", ONE, 0.0..=1.0, default = 0.9)]
    pub emissivity: Ratio,
    /// Heat put in all the time, such as by a pilot flame.
    #[field("P_0", WATT, 0.0..=5000.0, default = 0.0)]
    pub standing_heat: Power,
    /// Room temperature (air and surfaces).
    #[field("t_A", DEGREE_CELSIUS, -30.0..=60.0, default = 20.0, usual = 0.0..=35.0)]
    pub room_temperature: ThermodynamicTemperature,
    /// Temperature at the start.
    #[field("t_0", DEGREE_CELSIUS, -30.0..=300.0, usual = 20.0..=110.0)]
    pub start_temperature: ThermodynamicTemperature,
    /// Temperature to be reached.
    #[field("t_Z", DEGREE_CELSIUS, -30.0..=300.0, usual = 15.0..=100.0)]
    pub target_temperature: ThermodynamicTemperature,
}

/// How long it takes.
#[record]
pub struct BlockCoolDownResult {
    /// Time until the target is reached.
    #[field("\\tau", MINUTE, absent = "never")]
    pub time: Time,
    /// Heat the mass has released by then.
    #[field("Q", KILOJOULE, absent = "never")]
    pub heat_released: Energy,
    /// Loss at the start.
    #[field("P_A", WATT)]
    pub loss_at_start: Power,
    /// Loss at the target temperature.
    #[field("P_Z", WATT)]
    pub loss_at_target: Power,
    /// Heat capacity times temperature difference over loss, at the start.
    #[field("\\tau_0", MINUTE, absent = "the mass is at room temperature")]
    pub time_constant: Time,
    /// Time by the exponential with that time constant: too short where the loss falls faster than the difference.
    #[field("\\tau_e", MINUTE, absent = "never")]
    pub exponential_time: Time,
    /// Temperature after an endless time.
    #[field("t_\\infty", DEGREE_CELSIUS)]
    pub steady_temperature: ThermodynamicTemperature,
}

/// Cool-down of one mass by a linear loss, natural convection and radiation together.
#[derive(Clone, Copy, Debug)]
pub struct BlockCoolDown;

no_settings!(BlockCoolDown);

rules! {
    refuse NO_LOSS on "loss_conductance": "the mass loses no heat: state a loss conductance, a convective loss or a radiating area";
    notice ALREADY_THERE on "time": "the mass is at or below the target from the start";
    notice NEVER on "time": "the target is never reached: the mass comes to rest at or above it (see steady_temperature)";
}

fn loss_of(input: &BlockCoolDownState) -> HeatLoss {
    let law = HeatLoss::power_law(input.convective_loss.si(), input.loss_exponent.si());
    let radiation = input.emissivity.si() * STEFAN_BOLTZMANN * input.radiating_area.si();
    HeatLoss { linear: law.linear + input.loss_conductance.si(), radiation, ..law }
}

impl Calculation for BlockCoolDown {
    type Input = BlockCoolDownState;
    type Output = BlockCoolDownResult;
    const INFO: Info = Info {
        name: "block_cool_down",
        title: "Cool-down of one hot mass",
        summary: "How long a hot mass (a block, a casing, a standing pipe) takes to fall to a temperature, by a linear loss, natural convection and radiation together.",
        sources: &[
            Source::new("first law; Newton's law of cooling", "balance and exponential"),
            Source::new("Stefan-Boltzmann law, constant of CODATA 2018", "radiation to a room of one temperature"),
            Source::new("Abramowitz and Stegun, Table 25.4", "quadrature where there is no closed form"),
        ],
        accuracy: "Exact to about 1e-11 for the loss stated; loss coefficients are commonly known to 10 to 30 %, the heat capacity of the metal to 10 %.",
        cautions: HOT_BLOCK_CAUTIONS,
        checked_against: "heat/cooldown_lump_linear.csv, heat/cooldown_lump_natural.csv, trade/visit_demo.csv (overrun time)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    fn check(&self, input: &BlockCoolDownState) -> Raised {
        let radiates = input.radiating_area.si() * input.emissivity.si() > 0.0;
        Raised::NONE.when(NO_LOSS, !(input.loss_conductance.si() > 0.0) & !(input.convective_loss.si() > 0.0) & !radiates)
    }

    fn review(&self, _input: &BlockCoolDownState, output: &BlockCoolDownResult) -> Raised {
        Raised::NONE.when(ALREADY_THERE, output.time.si() == 0.0).when(NEVER, output.time.si().is_nan())
    }

    fn compute<W: Working>(&self, input: &BlockCoolDownState, working: &mut W) -> BlockCoolDownResult {
        let loss = loss_of(input);
        let (room, start, target) = (input.room_temperature.si(), input.start_temperature.si(), input.target_temperature.si());
        let (capacity, power) = (input.heat_capacity.si(), input.standing_heat.si());
        let steady = steady_temperature(&loss, power, room);
        let finite = |time: f64| if time.is_finite() { time } else { f64::NAN };
        let exact = if target >= start { 0.0 } else { finite(time_between(capacity, &loss, power, room, start, target)) };

        let heat_capacity = input.heat_capacity;
        let excess_at_start = TemperatureInterval::from_si(start - steady);
        let excess_at_target = TemperatureInterval::from_si(target - steady);
        step!(working, let loss_at_start: "P_A" in WATT = Power::from_si(loss.power(start, room)), "sum of the losses at the start");
        step!(working, let loss_at_target: "P_Z" in WATT = Power::from_si(loss.power(target, room)), "sum of the losses at the target");
        step!(working, let net_loss: "P_A - P_0" in WATT = loss_at_start - input.standing_heat, "balance at the start");
        step!(working, let time_constant: "\\tau_0" in MINUTE = heat_capacity * excess_at_start / net_loss, "definition of the time constant");
        let decades = Ratio::from_si(finite(ln((excess_at_start / excess_at_target).si())));
        step!(working, let exponential_time: "\\tau_e" in MINUTE = time_constant * decades, "Newton's law of cooling");
        step!(working, let time: "\\tau" in MINUTE = Time::from_si(exact), "integral of C dT over the net loss");
        let fall = TemperatureInterval::from_si(if exact.is_nan() { f64::NAN } else { (start - target).max(0.0) });
        step!(working, let heat_released: "Q" in KILOJOULE = heat_capacity * fall, "definition of the heat capacity");
        BlockCoolDownResult {
            time,
            heat_released,
            loss_at_start,
            loss_at_target,
            time_constant: Time::from_si(finite(time_constant.si())),
            exponential_time: if target >= start { Time::from_si(0.0) } else { exponential_time },
            steady_temperature: ThermodynamicTemperature::from_si(steady),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use flamewright_reference::{rows, rows_of_kind};

    fn celsius(t: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::from_si(t + 273.15)
    }

    #[test]
    fn linear_rows_of_the_reference() {
        let mut seen = 0;
        for row in rows("heat/cooldown_lump_linear.csv") {
            let n = |name: &str| row.number(name);
            let input = BlockCoolDownState {
                heat_capacity: HeatCapacity::from_si(n("C_J_K")),
                loss_conductance: ThermalConductance::from_si(n("UA_W_K")),
                room_temperature: celsius(n("T_air_C")),
                start_temperature: celsius(n("T_start_C")),
                target_temperature: celsius(n("T_target_C")),
                ..BlockCoolDownState::unset()
            };
            let got = BlockCoolDown.evaluate(&input).unwrap();
            assert!((got.time.si() / n("time_s") - 1.0).abs() < 1e-8, "{}", row.place);
            assert!((got.heat_released.si() / n("energy_lost_J") - 1.0).abs() < 1e-9, "{}", row.place);
            assert!((got.exponential_time.si() / n("time_s") - 1.0).abs() < 1e-8, "{}", row.place);
            seen += 1;
        }
        assert_eq!(seen, 19);
    }

    #[test]
    fn natural_rows_of_the_reference() {
        let mut seen = 0;
        for row in rows("heat/cooldown_lump_natural.csv") {
            let n = |name: &str| row.number(name);
            let input = BlockCoolDownState {
                heat_capacity: HeatCapacity::from_si(n("C_J_K")),
                convective_loss: Power::from_si(n("K_W_Kn") * libm::pow(50.0, n("n"))),
                loss_exponent: Ratio::from_si(n("n")),
                radiating_area: Area::from_si(n("A_rad_m2")),
                emissivity: Ratio::from_si(n("emissivity")),
                room_temperature: celsius(n("T_air_C")),
                start_temperature: celsius(n("T_start_C")),
                target_temperature: celsius(n("T_target_C")),
                ..BlockCoolDownState::unset()
            };
            let got = BlockCoolDown.evaluate(&input).unwrap();
            assert!((got.time.si() / n("time_s") - 1.0).abs() < 2e-9, "{} {}", row.place, got.time.si());
            assert!((got.loss_at_start.si() / n("loss_start_W") - 1.0).abs() < 1e-8, "{}", row.place);
            assert!((got.loss_at_target.si() / n("loss_at_target_W") - 1.0).abs() < 1e-8, "{}", row.place);
            // The exponential with the coefficient of the start is always too short: the loss falls off faster.
            assert!(got.exponential_time.si() < got.time.si());
            seen += 1;
        }
        assert_eq!(seen, 25);
    }

    #[test]
    fn overrun_of_the_demonstration_visit() {
        let mut seen = 0;
        for row in rows_of_kind("trade/visit_demo.csv", "visit_chain") {
            let inputs = row.inputs();
            let n = |name: &str| inputs[name].0.parse::<f64>().unwrap();
            let capacity = n("m_iron") * n("c_iron") + n("m_water") * n("c_water");
            let input = BlockCoolDownState {
                heat_capacity: HeatCapacity::from_si(capacity),
                loss_conductance: ThermalConductance::from_si(n("UA")),
                room_temperature: celsius(n("T_room")),
                start_temperature: celsius(n("T_start")),
                target_temperature: celsius(n("T_open")),
                ..BlockCoolDownState::unset()
            };
            let got = BlockCoolDown.evaluate(&input).unwrap();
            match row.text("output") {
                "overrun_time" => assert!(row.agrees(got.time.si()), "{}", got.time.si()),
                "heat_rejected_in_overrun" => assert!(row.agrees(got.heat_released.si())),
                _ => continue,
            }
            seen += 1;
        }
        assert_eq!(seen, 2);
    }

    #[test]
    fn never_and_already() {
        let base = BlockCoolDownState::read([
            ("heat_capacity", "90 kJ/K"),
            ("loss_conductance", "8 W/K"),
            ("start_temperature", "80 degC"),
            ("target_temperature", "50 degC"),
        ])
        .unwrap();
        let codes = |input: &BlockCoolDownState| {
            let got = BlockCoolDown.evaluate(input).unwrap();
            (got.time.si(), got.notices().first().map(|notice| notice.code))
        };
        let (time, code) = codes(&BlockCoolDownState { standing_heat: Power::from_si(300.0), ..base });
        assert!(time.is_nan() && code == Some("NEVER"));
        assert_eq!(codes(&BlockCoolDownState { target_temperature: celsius(85.0), ..base }), (0.0, Some("ALREADY_THERE")));
        let (time, code) = codes(&BlockCoolDownState { target_temperature: celsius(20.0), ..base });
        assert!(time.is_nan() && code == Some("NEVER"));
        let none = BlockCoolDownState { loss_conductance: ThermalConductance::from_si(0.0), ..base };
        assert_eq!(BlockCoolDown.evaluate(&none).err().unwrap().code(), "NO_LOSS");
        assert_eq!(BlockCoolDown.steps(&base).unwrap().len(), 7);
    }
}
