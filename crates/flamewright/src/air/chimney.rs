//! The calculation `chimney_draught`: a chimney that cools its flue gas, its draught and its wall.

use super::cooling::{Chimney, cooling, length_to_wall_temperature};
use super::draught::GAS_CONSTANTS;
use super::{CAUTION_CARBON_MONOXIDE, CAUTION_OPEN_FLUE};
use crate::calculation::{Calculation, Column, Info, Raised, Rule, Source, Table};
use crate::math;
use crate::quantity::types::{
    HeatTransfer, InsulanceFactor, Length, MassDensity, MassRate, Pressure, Ratio, SpecificHeatCapacity, TemperatureInterval,
    ThermodynamicTemperature, Velocity,
};
use crate::quantity::units::*;
use crate::quantity::{AbsolutePressure, MoleFraction, Value, Wet};
use crate::record::record;
use crate::supply::{STANDARD_GRAVITY, or};
use crate::water::saturation_temperature;
use crate::working::{Working, step};
use crate::{no_settings, rules};
use alloc::vec;
use alloc::vec::Vec;
use core::f64::consts::PI;

const FORM: &str = "Form of EN 13384-1, from memory";

/// A chimney of one construction and the flue gas that enters it.
#[record]
pub struct ChimneyState {
    /// Mass flow of flue gas, with the air drawn in at a draught diverter.
    #[field("\\dot m", KILOGRAM_PER_SECOND, 1e-5..=100.0, usual = 0.002..=0.2)]
    pub mass_flow: MassRate,
    /// Temperature of the flue gas at the inlet of the chimney.
    #[field("T_e", DEGREE_CELSIUS, 0.0..=1000.0, usual = 40.0..=250.0)]
    pub inlet_temperature: ThermodynamicTemperature,
    /// Temperature of the outdoor air.
    #[field("T_L", DEGREE_CELSIUS, -50.0..=60.0, usual = -20.0..=35.0)]
    pub outdoor_temperature: ThermodynamicTemperature,
    /// Mean temperature of the air around the chimney; left out, that outdoors.
    #[field("T_u", DEGREE_CELSIUS, -50.0..=100.0, absent = "that outdoors")]
    pub surrounding_temperature: ThermodynamicTemperature,
    /// Height of the outlet above the inlet.
    #[field("H", METRE, 0.1..=200.0, usual = 1.0..=30.0)]
    pub height: Length,
    /// Length of the flue; left out, the height.
    #[field("L", METRE, 0.1..=500.0, absent = "the height")]
    pub length: Length,
    /// Bore (hydraulic diameter).
    #[field("D_h", MILLIMETRE, 20.0..=5000.0, usual = 60.0..=400.0)]
    pub bore: Length,
    /// Outside diameter; left out, the bore.
    #[field("D_{ha}", MILLIMETRE, 20.0..=10000.0, absent = "the bore")]
    pub outside_diameter: Length,
    /// Thermal resistance of the wall on its inner surface.
    #[field("1/\\Lambda", SQUARE_METRE_KELVIN_PER_WATT, 0.0..=10.0, default = 0.0, usual = 0.0..=1.0)]
    pub thermal_resistance: InsulanceFactor,
    /// Coefficient of heat transfer at the outside.
    #[field("\\alpha_a", WATT_PER_SQUARE_METRE_KELVIN, 0.5..=200.0, default = 8.0, usual = 5.0..=30.0)]
    pub external_coefficient: HeatTransfer,
    /// Share of the wall's resistance that counts while the wall still warms; 1 when settled.
    #[field("S_H", ONE, 0.0..=1.0, default = 1.0)]
    pub instability_factor: Ratio,
    /// Roughness of the inner wall.
    #[field("r", MILLIMETRE, 0.0..=20.0, default = 1.0, usual = 0.05..=5.0)]
    pub roughness: Length,
    /// Sum of the loss coefficients of bends, inlet and outlet.
    #[field("\\Sigma\\zeta", ONE, 0.0..=1000.0, default = 0.0, usual = 0.0..=20.0)]
    pub loss_coefficient: Ratio,
    /// Factor by which the loss of the flue is raised for safety.
    #[field("S_E", ONE, 1.0..=3.0, default = 1.0)]
    pub flow_safety_factor: Ratio,
    /// Draught that appliance, connecting pipe and air supply need.
    #[field("p_W", PASCAL, 0.0..=200.0, default = 0.0, usual = 0.0..=30.0)]
    pub draught_needed: Pressure,
    /// Specific heat capacity of the flue gas.
    #[field("c_p", JOULE_PER_KILOGRAM_KELVIN, 950.0..=1500.0, default = 1100.0, usual = 1000.0..=1250.0)]
    pub specific_heat_capacity: SpecificHeatCapacity,
    /// Specific gas constant of the flue gas.
    #[field("R", JOULE_PER_KILOGRAM_KELVIN, 250.0..=350.0, default = 300.0)]
    pub flue_gas_constant: SpecificHeatCapacity,
    /// Specific gas constant of the outdoor air.
    #[field("R_L", JOULE_PER_KILOGRAM_KELVIN, 270.0..=310.0, default = 288.0)]
    pub air_gas_constant: SpecificHeatCapacity,
    /// Share of water vapour in the flue gas as it is in the chimney.
    #[field("x_{H_2O}", PERCENT, 0.0..=40.0, absent = "not stated", usual = 2.0..=20.0)]
    pub water_vapour: MoleFraction<Wet>,
    /// Barometric pressure at the place.
    #[field("p_b", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 940.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
}

/// What becomes of the flue gas and what the chimney pulls.
#[record]
pub struct ChimneyResult {
    /// Internal coefficient of heat transfer.
    #[field("\\alpha_i", WATT_PER_SQUARE_METRE_KELVIN)]
    pub internal_coefficient: HeatTransfer,
    /// Coefficient of heat transmission on the inner surface.
    #[field("k", WATT_PER_SQUARE_METRE_KELVIN)]
    pub transmission_coefficient: HeatTransfer,
    /// Cooling number.
    #[field("K", ONE)]
    pub cooling_number: Ratio,
    /// Mean temperature of the flue gas.
    #[field("T_m", DEGREE_CELSIUS)]
    pub mean_flue_temperature: ThermodynamicTemperature,
    /// Temperature of the flue gas at the outlet.
    #[field("T_o", DEGREE_CELSIUS)]
    pub outlet_temperature: ThermodynamicTemperature,
    /// Temperature of the inner wall at the outlet, the wall settled.
    #[field("T_{iob}", DEGREE_CELSIUS)]
    pub outlet_wall_temperature: ThermodynamicTemperature,
    /// Mean density of the flue gas.
    #[field("\\rho_m", KILOGRAM_PER_CUBIC_METRE)]
    pub flue_density: MassDensity,
    /// Mean velocity of the flue gas.
    #[field("w_m", METRE_PER_SECOND)]
    pub velocity: Velocity,
    /// Reynolds number.
    #[field("Re", ONE)]
    pub reynolds_number: Ratio,
    /// Draught at rest.
    #[field("p_H", PASCAL)]
    pub draught: Pressure,
    /// Loss of the flue with its safety factor.
    #[field("p_R", PASCAL)]
    pub pressure_loss: Pressure,
    /// Draught at the inlet of the chimney.
    #[field("p_Z", PASCAL)]
    pub net_draught: Pressure,
    /// Draught left over what is needed.
    #[field("p_Z - p_W", PASCAL)]
    pub spare_draught: Pressure,
    /// Outdoor temperature at which nothing would be left over, this mean flue temperature kept.
    #[field("T_{L,0}", DEGREE_CELSIUS)]
    pub reversal_outdoor_temperature: ThermodynamicTemperature,
    /// Dew point of the water vapour.
    #[field("T_p", DEGREE_CELSIUS, absent = "no water vapour stated, or a dew point below freezing")]
    pub dew_point: ThermodynamicTemperature,
    /// Inner wall at the outlet above the dew point; negative where it is wet.
    #[field("T_{iob} - T_p", KELVIN, absent = "no dew point")]
    pub dew_point_margin: TemperatureInterval,
    /// Length from the inlet at which the wall begins to be wet.
    #[field("L_p", METRE, absent = "the wall stays dry, or no dew point")]
    pub wet_from: Length,
}

/// Draught and cooling of a chimney.
#[derive(Clone, Copy, Debug)]
pub struct ChimneyDraught;

no_settings!(ChimneyDraught);

rules! {
    refuse OUTSIDE_WITHIN_BORE on "outside_diameter": "the outside diameter is less than the bore";
    refuse SHORTER_THAN_HIGH on "length": "the flue is shorter than it is high";
    notice NOT_ENOUGH on "draught_needed": "the draught does not meet what is needed: products may spill";
    notice WET on "water_vapour": "the inner wall falls below the water dew point: condensate runs in the flue, which must stand it and drain it";
}

fn chimney_of(input: &ChimneyState, instability_factor: f64) -> Chimney {
    Chimney {
        mass_flow: input.mass_flow.si(),
        heat_capacity: input.specific_heat_capacity.si(),
        inlet_temperature: input.inlet_temperature.si(),
        ambient_temperature: or(input.surrounding_temperature.si(), input.outdoor_temperature.si()),
        bore: input.bore.si(),
        outside_diameter: or(input.outside_diameter.si(), input.bore.si()),
        length: or(input.length.si(), input.height.si()),
        roughness: input.roughness.si(),
        thermal_resistance: input.thermal_resistance.si(),
        external_coefficient: input.external_coefficient.si(),
        instability_factor,
    }
}

impl Calculation for ChimneyDraught {
    type Input = ChimneyState;
    type Output = ChimneyResult;
    const INFO: Info = Info {
        name: "chimney_draught",
        title: "Draught and cooling of a chimney",
        summary: "Cooling of the flue gas with height, draught, loss and what is left, wall temperature at the outlet and whether and where the wall is wet.",
        sources: &[
            Source::new(
                FORM,
                "cooling number, mean and outlet temperature, wall temperature, draught and loss, viscosity and conductivity of flue gas",
            ),
            Source::new("Gnielinski 1975, Forsch. Ingenieurwes. 41, 8", "internal coefficient"),
            Source::new("Colebrook 1939, J. Inst. Civ. Eng. 11, 133", "friction factor"),
            Source::new("IAPWS R7-97(2012), IF97 region 4", "dew point; acids lie above it and are left out"),
            GAS_CONSTANTS,
        ],
        accuracy: "Internal coefficient 20 %, wall resistance as stated; the mean temperature follows within a few kelvin. Wind and the warming-up of the wall are left out.",
        cautions: &[CAUTION_OPEN_FLUE, CAUTION_CARBON_MONOXIDE],
        checked_against: "draught and loss are those of natural_draught and flue_flow, which have outside checks; no outside values of the cooling could be opened, so it is tested against a march up the flue.",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &ChimneyState) -> Raised {
        Raised::NONE
            .when(OUTSIDE_WITHIN_BORE, input.outside_diameter.si() < input.bore.si())
            .when(SHORTER_THAN_HIGH, input.length.si() < input.height.si())
    }

    #[inline(always)]
    fn review(&self, _input: &ChimneyState, output: &ChimneyResult) -> Raised {
        Raised::NONE.when(NOT_ENOUGH, output.spare_draught.si() < 0.0).when(WET, output.dew_point_margin.si() < 0.0)
    }

    fn compute<W: Working>(&self, input: &ChimneyState, working: &mut W) -> ChimneyResult {
        let chimney = chimney_of(input, input.instability_factor.si());
        let cooled = cooling(&chimney);
        let settled_chimney = Chimney { instability_factor: 1.0, ..chimney };
        let settled = cooling(&settled_chimney);
        let gravity = STANDARD_GRAVITY;
        let length = Length::from_si(chimney.length);
        let surrounding_temperature = ThermodynamicTemperature::from_si(chimney.ambient_temperature);
        let transmission_coefficient = HeatTransfer::from_si(cooled.transmission);
        step!(working, let cooling_number: "K" = Ratio::from_si(
            PI * input.bore.si() * transmission_coefficient.si() * length.si() / (input.mass_flow.si() * input.specific_heat_capacity.si())), FORM);
        step!(working, let outlet_temperature: "T_o" = ThermodynamicTemperature::from_si(surrounding_temperature.si()
            + (input.inlet_temperature.si() - surrounding_temperature.si()) * math::exp(-cooling_number.si())), FORM);
        let mean_flue_temperature = ThermodynamicTemperature::from_si(cooled.mean_temperature);
        step!(working, let air_density: "\\rho_L" = MassDensity::from_si(
            input.barometric_pressure.si() / (input.air_gas_constant.si() * input.outdoor_temperature.si())), "ideal gas law");
        step!(working, let flue_density: "\\rho_m" = MassDensity::from_si(
            input.barometric_pressure.si() / (input.flue_gas_constant.si() * mean_flue_temperature.si())), "ideal gas law");
        step!(working, let velocity: "w_m" = Velocity::from_si(
            4.0 * input.mass_flow.si() / (PI * input.bore.si() * input.bore.si() * flue_density.si())), "continuity");
        step!(working, let draught: "p_H" = Pressure::from_si(input.height.si() * gravity * (air_density.si() - flue_density.si())), FORM);
        let friction_factor = Ratio::from_si(cooled.friction_factor);
        step!(working, let pressure_loss: "p_R" as Pressure in PASCAL = input.flow_safety_factor
            * (friction_factor * (length / input.bore) + input.loss_coefficient) * (flue_density * velocity * velocity / 2.0), FORM);
        step!(working, let net_draught: "p_Z" in PASCAL = draught - pressure_loss, FORM);
        step!(working, let spare_draught: "p_Z - p_W" in PASCAL = net_draught - input.draught_needed, FORM);
        let taken = (pressure_loss.si() + input.draught_needed.si()) / (input.height.si() * gravity);
        let reversal = input.barometric_pressure.si() / (input.air_gas_constant.si() * (flue_density.si() + taken));
        let dew_point = saturation_temperature(input.water_vapour.si() * input.barometric_pressure.si());
        let wet_from = length_to_wall_temperature(&settled_chimney, &settled, dew_point);
        ChimneyResult {
            internal_coefficient: HeatTransfer::from_si(cooled.internal_coefficient),
            transmission_coefficient,
            cooling_number,
            mean_flue_temperature,
            outlet_temperature,
            outlet_wall_temperature: ThermodynamicTemperature::from_si(settled.outlet_wall_temperature),
            flue_density,
            velocity,
            reynolds_number: Ratio::from_si(cooled.reynolds),
            draught,
            pressure_loss,
            net_draught,
            spare_draught,
            reversal_outdoor_temperature: ThermodynamicTemperature::from_si(reversal),
            dew_point: ThermodynamicTemperature::from_si(dew_point),
            dew_point_margin: TemperatureInterval::from_si(settled.outlet_wall_temperature - dew_point),
            wet_from: Length::from_si(if wet_from <= chimney.length { wet_from } else { f64::NAN }),
        }
    }

    fn tables(&self, input: &ChimneyState) -> Vec<Table> {
        const POINTS: u32 = 41;
        let chimney = chimney_of(input, 1.0);
        let cooled = cooling(&chimney);
        let along: Vec<f64> = (0..POINTS).map(|i| f64::from(i) / f64::from(POINTS - 1)).collect();
        let above = chimney.inlet_temperature - chimney.ambient_temperature;
        let gas: Vec<f64> = along.iter().map(|x| chimney.ambient_temperature + above * math::exp(-cooled.cooling_number * x)).collect();
        let wall = gas.iter().map(|gas| gas - cooled.wall_share * (gas - chimney.ambient_temperature)).collect();
        vec![Table {
            name: "along_the_flue",
            row_names: Vec::new(),
            columns: vec![
                Column { name: "length".into(), unit: &METRE, values: along.iter().map(|x| x * chimney.length).collect() },
                Column { name: "flue_temperature".into(), unit: &DEGREE_CELSIUS, values: gas },
                Column { name: "wall_temperature".into(), unit: &DEGREE_CELSIUS, values: wall },
            ],
        }]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::air::{DraughtConditions, FlueFlow, FlueFlowState, NaturalDraught};
    use crate::record::Record;

    /// Invented: a 15 kW boiler on a lined chimney outdoors.
    fn example() -> ChimneyState {
        ChimneyState {
            mass_flow: MassRate::from_si(0.0105),
            inlet_temperature: ThermodynamicTemperature::from_si(393.15),
            outdoor_temperature: ThermodynamicTemperature::from_si(273.15),
            height: Length::from_si(6.0),
            bore: Length::from_si(0.125),
            outside_diameter: Length::from_si(0.225),
            thermal_resistance: InsulanceFactor::from_si(0.12),
            loss_coefficient: Ratio::from_si(2.0),
            draught_needed: Pressure::from_si(3.0),
            water_vapour: MoleFraction::from_si(0.10),
            ..ChimneyState::unset()
        }
    }

    #[test]
    fn the_parts_agree_with_the_calculations_of_the_parts() {
        let got = ChimneyDraught.evaluate(&example()).unwrap().output;
        let draught = DraughtConditions {
            height: example().height,
            outdoor_temperature: example().outdoor_temperature,
            mean_flue_temperature: got.mean_flue_temperature,
            ..DraughtConditions::unset()
        };
        assert!((NaturalDraught.evaluate(&draught).unwrap().output.draught.si() / got.draught.si() - 1.0).abs() < 1e-12);
        let flow = FlueFlowState {
            mass_flow: example().mass_flow,
            mean_flue_temperature: got.mean_flue_temperature,
            bore: example().bore,
            length: example().height,
            loss_coefficient: example().loss_coefficient,
            ..FlueFlowState::unset()
        };
        assert!((FlueFlow.evaluate(&flow).unwrap().output.pressure_loss.si() / got.pressure_loss.si() - 1.0).abs() < 1e-9);
        assert_eq!(got.spare_draught.si(), got.draught.si() - got.pressure_loss.si() - 3.0);
    }

    #[test]
    fn nothing_is_left_over_at_the_reversal_temperature() {
        let greedy = ChimneyState { draught_needed: Pressure::from_si(14.0), ..example() };
        let got = ChimneyDraught.evaluate(&greedy).unwrap().output;
        // Surroundings and mean flue temperature kept, only the outdoor air is warmer.
        let surroundings = ThermodynamicTemperature::from_si(273.15);
        let warm = ChimneyState { outdoor_temperature: got.reversal_outdoor_temperature, surrounding_temperature: surroundings, ..greedy };
        assert!(ChimneyDraught.evaluate(&warm).unwrap().output.spare_draught.si().abs() < 1e-9);
    }

    #[test]
    fn a_bare_flue_is_wet_and_an_insulated_one_dry() {
        let bare = ChimneyState { thermal_resistance: InsulanceFactor::from_si(0.0), ..example() };
        let evaluated = ChimneyDraught.evaluate(&bare).unwrap();
        assert_eq!(evaluated.judged.raised.0, 1 << WET);
        let wet_from = evaluated.output.wet_from.si();
        assert!((0.0..6.0).contains(&wet_from));
        // Steam tables print 10.10 kPa at 46 degC; 10 % of 1013.25 mbar is 10.13 kPa.
        assert!((evaluated.output.dew_point.si() - 273.15 - 46.06).abs() < 0.05);
        let insulated = ChimneyState { thermal_resistance: InsulanceFactor::from_si(2.0), ..example() };
        let dry = ChimneyDraught.evaluate(&insulated).unwrap();
        assert!(dry.judged.raised.0 == 0 && dry.output.wet_from.si().is_nan() && dry.output.dew_point_margin.si() > 0.0);
    }

    #[test]
    fn the_table_runs_from_inlet_to_outlet() {
        let table = &ChimneyDraught.tables(&example())[0];
        let got = ChimneyDraught.evaluate(&example()).unwrap().output;
        assert_eq!(table.columns[1].values[0], 393.15);
        assert!((table.columns[1].values[40] - got.outlet_temperature.si()).abs() < 1e-9);
        assert!((table.columns[2].values[40] - got.outlet_wall_temperature.si()).abs() < 1e-9);
    }

    #[test]
    fn impossible_chimneys_are_refused() {
        assert!(ChimneyDraught.evaluate(&ChimneyState { outside_diameter: Length::from_si(0.1), ..example() }).is_err());
        assert!(ChimneyDraught.evaluate(&ChimneyState { length: Length::from_si(5.0), ..example() }).is_err());
        assert!(ChimneyDraught.evaluate(&ChimneyState { mass_flow: MassRate::from_si(0.0), ..example() }).is_err());
    }
}
