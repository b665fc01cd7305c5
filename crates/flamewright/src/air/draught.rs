//! The calculations `natural_draught` and `flue_flow`: the pull of warm flue gas, and what the flue
//! takes of it.

use super::cooling::{flue_friction_factor, flue_gas_viscosity};
use super::{CAUTION_CARBON_MONOXIDE, CAUTION_OPEN_FLUE};
use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::quantity::types::{Length, MassDensity, MassRate, Pressure, Ratio, SpecificHeatCapacity, ThermodynamicTemperature, Velocity};
use crate::quantity::units::*;
use crate::quantity::{AbsolutePressure, Value};
use crate::record::record;
use crate::supply::{STANDARD_GRAVITY, or};
use crate::working::{Working, step};
use crate::{no_settings, rules};
use core::f64::consts::PI;

const HYDROSTATICS: &str = "Hydrostatics, in the form of EN 13384-1 (from memory)";
const GAS_LAW: &str = "ideal gas law";
pub(super) const GAS_CONSTANTS: Source = Source::new(
    "EN 13384-1, from memory",
    "gas constants 288 J/(kg K) of air and about 300 J/(kg K) of the flue gas of natural gas, as defaults",
);

/// A flue and the air beside it.
#[record]
pub struct DraughtConditions {
    /// Height of the flue outlet above its inlet.
    #[field("H", METRE, 0.0..=200.0, usual = 1.0..=30.0)]
    pub height: Length,
    /// Temperature of the outdoor air.
    #[field("T_L", DEGREE_CELSIUS, -50.0..=60.0, usual = -20.0..=35.0)]
    pub outdoor_temperature: ThermodynamicTemperature,
    /// Mean temperature of the gas in the flue.
    #[field("T_m", DEGREE_CELSIUS, -50.0..=1000.0, usual = 40.0..=250.0)]
    pub mean_flue_temperature: ThermodynamicTemperature,
    /// Barometric pressure at the place.
    #[field("p_b", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 940.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
    /// Specific gas constant of the outdoor air.
    #[field("R_L", JOULE_PER_KILOGRAM_KELVIN, 270.0..=310.0, default = 288.0)]
    pub air_gas_constant: SpecificHeatCapacity,
    /// Specific gas constant of the gas in the flue.
    #[field("R", JOULE_PER_KILOGRAM_KELVIN, 250.0..=350.0, default = 300.0)]
    pub flue_gas_constant: SpecificHeatCapacity,
    /// Pressure that flow through flue, appliance and air openings takes.
    #[field("p_R", PASCAL, 0.0..=1000.0, default = 0.0, usual = 0.0..=50.0)]
    pub pressure_loss: Pressure,
}

/// The draught. Positive pulls the flue gas up.
#[record]
pub struct DraughtResult {
    /// Density of the outdoor air.
    #[field("\\rho_L", KILOGRAM_PER_CUBIC_METRE)]
    pub air_density: MassDensity,
    /// Mean density of the gas in the flue.
    #[field("\\rho_m", KILOGRAM_PER_CUBIC_METRE)]
    pub flue_density: MassDensity,
    /// Draught at rest.
    #[field("p_H", PASCAL)]
    pub draught: Pressure,
    /// Draught left after the pressure loss.
    #[field("p_Z", PASCAL)]
    pub net_draught: Pressure,
    /// Mean flue temperature at which the draught at rest turns.
    #[field("T_{m,0}", DEGREE_CELSIUS)]
    pub reversal_flue_temperature: ThermodynamicTemperature,
    /// Outdoor temperature at which the net draught turns; warmer outdoors it pushes down.
    #[field("T_{L,0}", DEGREE_CELSIUS, absent = "a flue without height has no draught to turn")]
    pub reversal_outdoor_temperature: ThermodynamicTemperature,
}

/// Natural draught of a flue.
#[derive(Clone, Copy, Debug)]
pub struct NaturalDraught;

no_settings!(NaturalDraught);

rules! {
    notice REVERSED on "mean_flue_temperature": "the net draught is down the flue: products would enter the room";
}

impl Calculation for NaturalDraught {
    type Input = DraughtConditions;
    type Output = DraughtResult;
    const INFO: Info = Info {
        name: "natural_draught",
        title: "Natural draught of a flue",
        summary: "Draught from height, mean flue temperature, outdoor temperature and barometer, what is left after losses, and the temperatures at which it turns.",
        sources: &[Source::new(HYDROSTATICS, "draught"), GAS_CONSTANTS],
        accuracy: "Exact for the mean temperature given; that mean decides. Wind is left out.",
        cautions: &[CAUTION_OPEN_FLUE, CAUTION_CARBON_MONOXIDE],
        checked_against: "trade/flue_vent.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn review(&self, _input: &DraughtConditions, output: &DraughtResult) -> Raised {
        Raised::NONE.when(REVERSED, output.net_draught.si() < 0.0)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &DraughtConditions, working: &mut W) -> DraughtResult {
        let gravity = STANDARD_GRAVITY;
        step!(working, let air_density: "\\rho_L" = MassDensity::from_si(
            input.barometric_pressure.si() / (input.air_gas_constant.si() * input.outdoor_temperature.si())), GAS_LAW);
        step!(working, let flue_density: "\\rho_m" = MassDensity::from_si(
            input.barometric_pressure.si() / (input.flue_gas_constant.si() * input.mean_flue_temperature.si())), GAS_LAW);
        step!(working, let draught: "p_H" = Pressure::from_si(input.height.si() * gravity * (air_density.si() - flue_density.si())), HYDROSTATICS);
        step!(working, let net_draught: "p_Z" in PASCAL = draught - input.pressure_loss, "definition");
        step!(working, let reversal_flue: "T_{m,0}" = ThermodynamicTemperature::from_si(
            input.outdoor_temperature.si() * input.air_gas_constant.si() / input.flue_gas_constant.si()), "equal densities");
        step!(working, let reversal_outdoor: "T_{L,0}" = ThermodynamicTemperature::from_si(
            input.barometric_pressure.si() / (input.air_gas_constant.si() * (flue_density.si() + input.pressure_loss.si() / (input.height.si() * gravity)))), "no net draught");
        let standing = if input.height.si() > 0.0 { reversal_outdoor.si() } else { f64::NAN };
        DraughtResult {
            air_density,
            flue_density,
            draught,
            net_draught,
            reversal_flue_temperature: reversal_flue,
            reversal_outdoor_temperature: ThermodynamicTemperature::from_si(standing),
        }
    }
}

/// Flow of flue gas in a flue.
#[record]
pub struct FlueFlowState {
    /// Velocity; leave it out to state a mass flow.
    #[field("w", METRE_PER_SECOND, 0.0..=50.0, absent = "a mass flow is stated", usual = 0.3..=10.0)]
    pub velocity: Velocity,
    /// Mass flow; leave it out to state a velocity.
    #[field("\\dot m", KILOGRAM_PER_SECOND, 0.0..=1000.0, absent = "a velocity is stated")]
    pub mass_flow: MassRate,
    /// Mean temperature of the flue gas.
    #[field("T_m", DEGREE_CELSIUS, -50.0..=1000.0, usual = 40.0..=250.0)]
    pub mean_flue_temperature: ThermodynamicTemperature,
    /// Specific gas constant of the flue gas.
    #[field("R", JOULE_PER_KILOGRAM_KELVIN, 250.0..=350.0, default = 300.0)]
    pub flue_gas_constant: SpecificHeatCapacity,
    /// Absolute pressure in the flue, which is the barometer's.
    #[field("p", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 940.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
    /// Bore of the flue (hydraulic diameter).
    #[field("D", MILLIMETRE, 20.0..=10000.0, usual = 60.0..=400.0)]
    pub bore: Length,
    /// Length of the flue.
    #[field("L", METRE, 0.0..=1000.0, usual = 0.5..=50.0)]
    pub length: Length,
    /// Friction factor (Darcy); left out, from the roughness.
    #[field("\\psi", ONE, 0.005..=1.0, absent = "from the roughness")]
    pub friction_factor: Ratio,
    /// Roughness of the inner wall.
    #[field("r", MILLIMETRE, 0.0..=20.0, default = 1.0, usual = 0.05..=5.0)]
    pub roughness: Length,
    /// Sum of the loss coefficients of bends, inlet and outlet.
    #[field("\\Sigma\\zeta", ONE, 0.0..=1000.0, default = 0.0, usual = 0.0..=20.0)]
    pub loss_coefficient: Ratio,
}

/// What the flow takes.
#[record]
pub struct FlueFlowResult {
    /// Density of the flue gas.
    #[field("\\rho_m", KILOGRAM_PER_CUBIC_METRE)]
    pub flue_density: MassDensity,
    /// Velocity.
    #[field("w", METRE_PER_SECOND)]
    pub velocity: Velocity,
    /// Mass flow.
    #[field("\\dot m", KILOGRAM_PER_SECOND)]
    pub mass_flow: MassRate,
    /// Reynolds number.
    #[field("Re", ONE)]
    pub reynolds_number: Ratio,
    /// Friction factor (Darcy) used.
    #[field("\\psi", ONE, absent = "no flow")]
    pub friction_factor: Ratio,
    /// Pressure lost by friction and at the fittings.
    #[field("p_R", PASCAL)]
    pub pressure_loss: Pressure,
}

/// Velocity and pressure loss in a flue.
#[derive(Clone, Copy, Debug)]
pub struct FlueFlow;

no_settings!(FlueFlow);

mod flow_rules {
    crate::rules! {
        refuse FLOW_UNKNOWN on "velocity": "state the velocity or the mass flow, not both";
    }
    pub(super) const ALL: &[crate::calculation::Rule] = RULES;
    pub(super) const UNKNOWN: u32 = FLOW_UNKNOWN;
}

impl Calculation for FlueFlow {
    type Input = FlueFlowState;
    type Output = FlueFlowResult;
    const INFO: Info = Info {
        name: "flue_flow",
        title: "Velocity and pressure loss in a flue",
        summary: "Mass flow, velocity and pressure lost by friction and fittings in a flue at a mean temperature.",
        sources: &[
            Source::new("Darcy-Weisbach; textbook, in the form of EN 13384-1 (from memory)", "pressure loss"),
            Source::new("Colebrook 1939, J. Inst. Civ. Eng. 11, 133", "friction factor from the roughness"),
            Source::new("EN 13384-1, from memory", "viscosity of flue gas"),
            GAS_CONSTANTS,
        ],
        accuracy: "Roughness and loss coefficients are seldom known to better than 20 %. Below Re 2300 the larger of the laminar factor and Colebrook's at 2300 is taken.",
        cautions: &[CAUTION_OPEN_FLUE],
        checked_against: "trade/flue_vent.csv",
    };
    const RULES: &'static [Rule] = flow_rules::ALL;

    #[inline(always)]
    fn check(&self, input: &FlueFlowState) -> Raised {
        Raised::NONE.when(flow_rules::UNKNOWN, input.velocity.si().is_nan() == input.mass_flow.si().is_nan())
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &FlueFlowState, working: &mut W) -> FlueFlowResult {
        step!(working, let area: "A" = PI / 4.0 * input.bore * input.bore, "geometry");
        step!(working, let flue_density: "\\rho_m" = MassDensity::from_si(
            input.barometric_pressure.si() / (input.flue_gas_constant.si() * input.mean_flue_temperature.si())), GAS_LAW);
        let velocity = Velocity::from_si(or(input.velocity.si(), input.mass_flow.si() / (flue_density.si() * area.si())));
        step!(working, let mass_flow: "\\dot m" = MassRate::from_si(flue_density.si() * area.si() * velocity.si()), "continuity");
        let viscosity = flue_gas_viscosity(input.mean_flue_temperature.si());
        step!(working, let reynolds: "Re" = Ratio::from_si(flue_density.si() * velocity.si() * input.bore.si() / viscosity), "definition");
        let from_roughness = flue_friction_factor(reynolds.si(), input.roughness.si() / input.bore.si());
        let friction_factor = Ratio::from_si(or(input.friction_factor.si(), from_roughness));
        step!(working, let head: "q" as Pressure in PASCAL = flue_density * velocity * velocity / 2.0, "definition");
        step!(working, let pressure_loss: "p_R" in PASCAL =
            (friction_factor * (input.length / input.bore) + input.loss_coefficient) * head, "Darcy-Weisbach");
        let at_rest = velocity.si() == 0.0;
        FlueFlowResult {
            flue_density,
            velocity,
            mass_flow,
            reynolds_number: reynolds,
            friction_factor: Ratio::from_si(if friction_factor.si().is_finite() { friction_factor.si() } else { f64::NAN }),
            pressure_loss: Pressure::from_si(if at_rest { 0.0 } else { pressure_loss.si() }),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::supply::trade::check;

    const FILE: &str = "trade/flue_vent.csv";

    #[test]
    fn draughts_agree_with_the_table() {
        check(FILE, "draught_EN13384_form", |i, output| {
            let conditions = DraughtConditions {
                height: Length::from_si(i.si("H")),
                outdoor_temperature: ThermodynamicTemperature::from_si(i.si("T_out")),
                mean_flue_temperature: ThermodynamicTemperature::from_si(i.si("T_mean")),
                barometric_pressure: AbsolutePressure::from_si(i.si("p")),
                air_gas_constant: SpecificHeatCapacity::from_si(i.si("R_air")),
                flue_gas_constant: SpecificHeatCapacity::from_si(i.si("R_flue")),
                ..DraughtConditions::unset()
            };
            let got = NaturalDraught.evaluate(&conditions).unwrap().output;
            match output {
                "rho_air" => got.air_density.si(),
                "rho_flue" => got.flue_density.si(),
                "draught" | "draught_inH2O" => got.draught.si(),
                other => panic!("{other}"),
            }
        });
        // A printed figure of a boiler maker's handbook, flue gas taken as air.
        check(FILE, "published_draught", |i, _| {
            let conditions = DraughtConditions {
                height: Length::from_si(i.si("H")),
                outdoor_temperature: ThermodynamicTemperature::from_si(i.si("T_out")),
                mean_flue_temperature: ThermodynamicTemperature::from_si(i.si("T_flue")),
                barometric_pressure: AbsolutePressure::from_si(i.si("p_atm")),
                flue_gas_constant: SpecificHeatCapacity::from_si(288.0),
                ..DraughtConditions::unset()
            };
            NaturalDraught.evaluate(&conditions).unwrap().output.draught.si()
        });
    }

    #[test]
    fn friction_agrees_with_the_table() {
        check(FILE, "flue_velocity_and_friction", |i, output| {
            let state = FlueFlowState {
                velocity: Velocity::from_si(i.si("velocity")),
                mean_flue_temperature: ThermodynamicTemperature::from_si(i.si("T_mean")),
                bore: Length::from_si(i.si("D")),
                length: Length::from_si(i.si("L")),
                friction_factor: Ratio::from_si(i.si("friction_factor")),
                loss_coefficient: Ratio::from_si(i.si("sum_zeta")),
                ..FlueFlowState::unset()
            };
            let got = FlueFlow.evaluate(&state).unwrap().output;
            match output {
                "mass_flow" => got.mass_flow.si(),
                "pressure_loss" => got.pressure_loss.si(),
                other => panic!("{other}"),
            }
        });
    }

    fn summer() -> DraughtConditions {
        DraughtConditions {
            height: Length::from_si(5.0),
            outdoor_temperature: ThermodynamicTemperature::from_si(303.15),
            mean_flue_temperature: ThermodynamicTemperature::from_si(333.15),
            pressure_loss: Pressure::from_si(6.0),
            ..DraughtConditions::unset()
        }
    }

    #[test]
    fn the_draught_turns_where_it_is_said_to() {
        let got = NaturalDraught.evaluate(&summer()).unwrap().output;
        let at = |conditions: &DraughtConditions| NaturalDraught.evaluate(conditions).unwrap().output;
        let turned = at(&DraughtConditions { outdoor_temperature: got.reversal_outdoor_temperature, ..summer() });
        assert!(turned.net_draught.si().abs() < 1e-9);
        let cold_flue = at(&DraughtConditions { mean_flue_temperature: got.reversal_flue_temperature, ..summer() });
        assert!(cold_flue.draught.si().abs() < 1e-9);
        let hot_day = DraughtConditions {
            outdoor_temperature: ThermodynamicTemperature::from_si(got.reversal_outdoor_temperature.si() + 1.0),
            ..summer()
        };
        assert_eq!(NaturalDraught.evaluate(&hot_day).unwrap().judged.raised.0, 1 << REVERSED);
        let flat = at(&DraughtConditions { height: Length::from_si(0.0), ..summer() });
        assert!(flat.draught.si() == 0.0 && flat.reversal_outdoor_temperature.si().is_nan());
    }

    #[test]
    fn mass_flow_and_velocity_are_two_ways_to_say_one_thing() {
        let state = FlueFlowState {
            velocity: Velocity::from_si(1.2),
            mean_flue_temperature: ThermodynamicTemperature::from_si(393.15),
            bore: Length::from_si(0.125),
            length: Length::from_si(5.0),
            ..FlueFlowState::unset()
        };
        let by_velocity = FlueFlow.evaluate(&state).unwrap().output;
        let by_mass = FlueFlow
            .evaluate(&FlueFlowState { velocity: Velocity::from_si(f64::NAN), mass_flow: by_velocity.mass_flow, ..state })
            .unwrap()
            .output;
        assert!((by_mass.pressure_loss.si() / by_velocity.pressure_loss.si() - 1.0).abs() < 1e-13);
        assert!(FlueFlow.evaluate(&FlueFlowState { mass_flow: by_velocity.mass_flow, ..state }).is_err());
        assert!(FlueFlow.evaluate(&FlueFlowState { velocity: Velocity::from_si(f64::NAN), ..state }).is_err());
        let rest = FlueFlow.evaluate(&FlueFlowState { velocity: Velocity::from_si(0.0), ..state }).unwrap().output;
        assert!(rest.pressure_loss.si() == 0.0 && rest.friction_factor.si().is_nan());
    }
}
