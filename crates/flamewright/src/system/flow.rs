//! `flow_from_heat` and `heat_from_flow`: what a heat output needs of water, and what water carried.

use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::quantity::types::{
    AvailableEnergy, MassDensity, MassRate, Power, Ratio, SpecificHeatCapacity, TemperatureInterval, ThermodynamicTemperature, VolumeRate,
};
use crate::quantity::units::{KILOWATT, LITRE_PER_HOUR};
use crate::quantity::{AbsolutePressure, Value};
use crate::record::record;
use crate::water::{FLUID_SETTING, Fluid, saturation_pressure};
use crate::working::{Working, step};
use crate::{Error, rules};

/// A heat output and the temperatures between which water carries it.
#[record]
pub struct FlowFromHeatInput {
    /// Heat that the water is to carry.
    #[field("\\Phi", KILOWATT, 0.001..=10000.0, usual = 0.2..=500.0)]
    pub heat_output: Power,
    /// Temperature at which the water sets out (flow).
    #[field("t_F", DEGREE_CELSIUS, -30.0..=110.0, usual = 25.0..=90.0)]
    pub flow_temperature: ThermodynamicTemperature,
    /// Temperature at which it comes back (return).
    #[field("t_R", DEGREE_CELSIUS, -30.0..=110.0, usual = 15.0..=80.0)]
    pub return_temperature: ThermodynamicTemperature,
    /// Absolute pressure of the water; hardly matters.
    #[field("p", BAR, 0.5..=20.0, default = 2.0)]
    pub pressure: AbsolutePressure,
    /// Share of glycol by mass; needs the setting `fluid`.
    #[field("w", PERCENT, 0.0..=60.0, default = 0.0)]
    pub glycol_mass_fraction: Ratio,
}

/// The flow that carries the heat.
#[record]
pub struct FlowFromHeatResult {
    /// Temperature drop from flow to return.
    #[field("\\Delta t", KELVIN)]
    pub temperature_drop: TemperatureInterval,
    /// Mean heat capacity between the two temperatures: enthalpy difference over temperature drop.
    #[field("\\bar c_p", JOULE_PER_KILOGRAM_KELVIN)]
    pub mean_specific_heat_capacity: SpecificHeatCapacity,
    /// Mass flow.
    #[field("\\dot m", KILOGRAM_PER_SECOND)]
    pub mass_flow: MassRate,
    /// Volume flow where the water is at return temperature (pump or meter in the return).
    #[field("\\dot V_R", LITRE_PER_HOUR)]
    pub volume_flow_at_return: VolumeRate,
    /// Volume flow where the water is at flow temperature.
    #[field("\\dot V_F", LITRE_PER_HOUR)]
    pub volume_flow_at_flow: VolumeRate,
    /// Volume flow at the mean of the two temperatures.
    #[field("\\dot V_m", LITRE_PER_HOUR)]
    pub volume_flow_at_mean: VolumeRate,
    /// Volume flow by the rule of thumb of 4186 J/(kg K) and 1 kg/L, for comparison.
    #[field("\\dot V_{rule}", LITRE_PER_HOUR)]
    pub volume_flow_by_rule: VolumeRate,
}

/// Flow from heat output and temperature drop.
#[derive(Clone, Copy, Debug, Default)]
pub struct FlowFromHeat {
    /// What circulates.
    pub fluid: Fluid,
}

impl Context for FlowFromHeat {
    const SETTINGS: &'static [Setting] = &[FLUID_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { fluid: Fluid::from_settings(settings)? })
    }
}

const WATER_SOURCE: Source = Source::new("IAPWS SR6-08(2011)", "enthalpy and density of water");
const GLYCOL_SOURCE: Source =
    Source::new("Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries them", "glycol mixtures");

rules! {
    refuse RETURN_NOT_COLDER on "return_temperature": "the return must be colder than the flow, by 0.01 K or more; swap the two readings?";
    refuse WOULD_BOIL on "flow_temperature": "the water would boil at this pressure; check the temperature, or state the pressure";
    refuse FROZEN on "return_temperature": "the liquid would be frozen at this temperature";
    refuse GLYCOL_IN_WATER on "glycol_mass_fraction": "set `fluid` to the glycol that is in the water";
    refuse GLYCOL_TOO_HOT on "flow_temperature": "the glycol data end at 100 °C";
    notice SMALL_DROP on "return_temperature": "with so small a drop a slip of a few tenths of a kelvin in one thermometer changes the result much; state the uncertainty";
}

/// The least drop, kelvins: no thermometer tells less, and the heat capacity is a quotient of two
/// differences, which keeps ten digits here and loses them all as the drop vanishes.
const LEAST_DROP: f64 = 0.01;

#[inline(always)]
fn judged(fluid: Fluid, flow: f64, back: f64, pressure: f64, fraction: f64) -> Raised {
    let hot = if matches!(fluid, Fluid::Water) { saturation_pressure(flow) } else { 0.0 };
    Raised::NONE
        .when(RETURN_NOT_COLDER, flow - back < LEAST_DROP)
        .when(WOULD_BOIL, pressure < hot)
        .when(FROZEN, fluid.frozen(fraction, back))
        .when(GLYCOL_IN_WATER, fluid.glycol_in_water(fraction))
        .when(GLYCOL_TOO_HOT, !matches!(fluid, Fluid::Water) & (flow > crate::water::HIGHEST_MIXTURE_TEMPERATURE))
        .when(SMALL_DROP, flow - back < 5.0)
}

impl Calculation for FlowFromHeat {
    type Input = FlowFromHeatInput;
    type Output = FlowFromHeatResult;
    const INFO: Info = Info {
        name: "flow_from_heat",
        title: "Flow from heat output and temperature drop",
        summary: "The water flow that carries a heat output between flow and return temperature, from the enthalpies of the real liquid.",
        sources: &[
            WATER_SOURCE,
            GLYCOL_SOURCE,
            Source::new("common practice, no source", "the rule of thumb with 4186 J/(kg K) and 1 kg/L"),
        ],
        accuracy: "0.1 % for water; about 2 % for glycol mixtures, whose makers' products differ. The readings limit it.",
        cautions: &[],
        checked_against: "heat/flow_from_heat.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &FlowFromHeatInput) -> Raised {
        let (flow, back) = (input.flow_temperature.si(), input.return_temperature.si());
        judged(self.fluid, flow, back, input.pressure.si(), input.glycol_mass_fraction.si())
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &FlowFromHeatInput, working: &mut W) -> FlowFromHeatResult {
        let (pressure, fraction) = (input.pressure.si(), input.glycol_mass_fraction.si());
        let (flow, back) = (input.flow_temperature.si(), input.return_temperature.si());
        let hot = self.fluid.state(fraction, pressure, flow);
        let cold = self.fluid.state(fraction, pressure, back);
        let mean = self.fluid.state(fraction, pressure, 0.5 * (flow + back));
        step!(working, let flow_enthalpy: "h_F" = AvailableEnergy::from_si(hot.enthalpy), "IAPWS SR6-08, or the glycol's heat capacity");
        step!(working, let return_enthalpy: "h_R" = AvailableEnergy::from_si(cold.enthalpy), "likewise");
        step!(working, let return_density: "\\rho_R" = MassDensity::from_si(cold.density), "IAPWS SR6-08, or Melinder 2010");
        step!(working, let flow_density: "\\rho_F" = MassDensity::from_si(hot.density), "likewise");
        step!(working, let mean_density: "\\rho_m" = MassDensity::from_si(mean.density), "likewise");
        step!(working, let temperature_drop: "\\Delta t" = TemperatureInterval::from_si(input.flow_temperature.si() - input.return_temperature.si()), "definition");
        step!(working, let enthalpy_drop: "\\Delta h" = flow_enthalpy - return_enthalpy, "definition");
        step!(working, let mean_specific_heat_capacity: "\\bar c_p" = SpecificHeatCapacity::from_si(enthalpy_drop.si() / temperature_drop.si()), "definition");
        step!(working, let mass_flow: "\\dot m" = input.heat_output / enthalpy_drop, "energy balance");
        step!(working, let volume_flow_at_return: "\\dot V_R" in LITRE_PER_HOUR = mass_flow / return_density, "definition");
        step!(working, let volume_flow_at_flow: "\\dot V_F" in LITRE_PER_HOUR = mass_flow / flow_density, "definition");
        step!(working, let volume_flow_at_mean: "\\dot V_m" in LITRE_PER_HOUR = mass_flow / mean_density, "definition");
        step!(working, let volume_flow_by_rule: "\\dot V_{rule}" in LITRE_PER_HOUR = VolumeRate::from_si(input.heat_output.si() / (4186.0 * 1000.0 * temperature_drop.si())), "rule of thumb, common practice");
        FlowFromHeatResult {
            temperature_drop,
            mean_specific_heat_capacity,
            mass_flow,
            volume_flow_at_return,
            volume_flow_at_flow,
            volume_flow_at_mean,
            volume_flow_by_rule,
        }
    }
}

/// A measured flow and the temperatures on its way.
#[record]
pub struct HeatFromFlowInput {
    /// Volume flow as measured; where, says the setting `flow_measured_in`.
    #[field("\\dot V", LITRE_PER_HOUR, 0.1..=1000000.0, usual = 10.0..=40000.0)]
    pub volume_flow: VolumeRate,
    /// Temperature of the flow.
    #[field("t_F", DEGREE_CELSIUS, -30.0..=110.0, usual = 25.0..=90.0)]
    pub flow_temperature: ThermodynamicTemperature,
    /// Temperature of the return.
    #[field("t_R", DEGREE_CELSIUS, -30.0..=110.0, usual = 15.0..=80.0)]
    pub return_temperature: ThermodynamicTemperature,
    /// Absolute pressure of the water; hardly matters.
    #[field("p", BAR, 0.5..=20.0, default = 2.0)]
    pub pressure: AbsolutePressure,
    /// Share of glycol by mass; needs the setting `fluid`.
    #[field("w", PERCENT, 0.0..=60.0, default = 0.0)]
    pub glycol_mass_fraction: Ratio,
}

/// The heat that the water carried.
#[record]
pub struct HeatFromFlowResult {
    /// Temperature drop from flow to return.
    #[field("\\Delta t", KELVIN)]
    pub temperature_drop: TemperatureInterval,
    /// Mass flow.
    #[field("\\dot m", KILOGRAM_PER_SECOND)]
    pub mass_flow: MassRate,
    /// Heat carried.
    #[field("\\Phi", KILOWATT)]
    pub heat_output: Power,
}

/// Heat output from a measured flow: the output by the water side.
#[derive(Clone, Copy, Debug, Default)]
pub struct HeatFromFlow {
    /// What circulates.
    pub fluid: Fluid,
    /// Whether the flow is measured in the hot pipe; else in the return.
    pub measured_in_flow: bool,
}

impl Context for HeatFromFlow {
    const SETTINGS: &'static [Setting] = &[
        FLUID_SETTING,
        Setting {
            name: "flow_measured_in",
            doc: "The pipe in which the flow was measured: its temperature fixes the density.",
            form: Form::Choice(&["return", "flow"]),
            default: Some("return"),
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self {
            fluid: Fluid::from_settings(settings)?,
            measured_in_flow: settings.choice("flow_measured_in", &[("return", false), ("flow", true)])?,
        })
    }
}

impl Calculation for HeatFromFlow {
    type Input = HeatFromFlowInput;
    type Output = HeatFromFlowResult;
    const INFO: Info = Info {
        name: "heat_from_flow",
        title: "Heat output from flow and temperature drop",
        summary: "The heat that a measured water flow carries between flow and return temperature: the output by the water side.",
        sources: &[WATER_SOURCE, GLYCOL_SOURCE],
        accuracy: "0.1 % for water besides the readings; a drop of 10 K read to 0.5 K at each end is itself 7 % uncertain.",
        cautions: &[],
        checked_against: "heat/flow_from_heat.csv, read backwards",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &HeatFromFlowInput) -> Raised {
        let (flow, back) = (input.flow_temperature.si(), input.return_temperature.si());
        judged(self.fluid, flow, back, input.pressure.si(), input.glycol_mass_fraction.si())
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &HeatFromFlowInput, working: &mut W) -> HeatFromFlowResult {
        let (pressure, fraction) = (input.pressure.si(), input.glycol_mass_fraction.si());
        let hot = self.fluid.state(fraction, pressure, input.flow_temperature.si());
        let cold = self.fluid.state(fraction, pressure, input.return_temperature.si());
        let metered = if self.measured_in_flow { hot.density } else { cold.density };
        step!(working, let density: "\\rho" = MassDensity::from_si(metered), "IAPWS SR6-08, or Melinder 2010, where the flow was measured");
        step!(working, let flow_enthalpy: "h_F" = AvailableEnergy::from_si(hot.enthalpy), "IAPWS SR6-08, or the glycol's heat capacity");
        step!(working, let return_enthalpy: "h_R" = AvailableEnergy::from_si(cold.enthalpy), "likewise");
        step!(working, let temperature_drop: "\\Delta t" = TemperatureInterval::from_si(input.flow_temperature.si() - input.return_temperature.si()), "definition");
        step!(working, let mass_flow: "\\dot m" = input.volume_flow * density, "definition");
        step!(working, let enthalpy_drop: "\\Delta h" = flow_enthalpy - return_enthalpy, "definition");
        step!(working, let heat_output: "\\Phi" in KILOWATT = mass_flow * enthalpy_drop, "energy balance");
        HeatFromFlowResult { temperature_drop, mass_flow, heat_output }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::water::tests::assert_close;
    use flamewright_reference::rows;

    #[test]
    fn reference_rows_both_ways() {
        for row in rows("heat/flow_from_heat.csv") {
            let mut input = FlowFromHeatInput::unset();
            input.heat_output = Power::from_si(row.number("Q_W"));
            input.flow_temperature = ThermodynamicTemperature::from_si(row.number("T_flow_C") + 273.15);
            input.return_temperature = ThermodynamicTemperature::from_si(row.number("T_return_C") + 273.15);
            let got = FlowFromHeat::default().evaluate(&input).unwrap();
            let litres = 3.6e6;
            assert_close(got.mass_flow.si(), row.number("mass_flow_from_enthalpy_kg_s"), 1e-4, &row.place);
            assert_close(got.mass_flow.si(), row.number("mass_flow_kg_s"), 1e-4, &row.place);
            assert_close(got.volume_flow_at_mean.si() * litres, row.number("flow_at_mean_density_l_h"), 1e-4, &row.place);
            assert_close(got.volume_flow_at_return.si() * litres, row.number("flow_at_return_density_l_h"), 1e-4, &row.place);
            assert_close(got.volume_flow_by_rule.si() * litres, row.number("flow_rule_4186_1000_l_h"), 1e-6, &row.place);
            let mut back = HeatFromFlowInput::unset();
            back.volume_flow = got.volume_flow_at_return;
            back.flow_temperature = input.flow_temperature;
            back.return_temperature = input.return_temperature;
            let heat = HeatFromFlow::default().evaluate(&back).unwrap().heat_output;
            assert_close(heat.si(), row.number("Q_W"), 1e-14, &row.place);
        }
    }
}
