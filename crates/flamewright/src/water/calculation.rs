//! The calculation `liquid_water`: what pipe, pump and vessel sums need to know of the water.

use super::liquid::ENHANCEMENT_FROM;
use super::{hot_liquid, liquid, saturation_pressure};
use crate::calculation::{Calculation, Info, Raised, Source};
use crate::quantity::types::{
    AvailableEnergy, DynamicViscosity, MassDensity, Pressure, Ratio, SpecificHeatCapacity, TemperatureCoefficient, ThermalConductivity,
    ThermodynamicTemperature,
};
use crate::quantity::{AbsolutePressure, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A state of liquid water.
#[record]
pub struct WaterState {
    /// Temperature of the water.
    #[field("t", DEGREE_CELSIUS, 0.0..=350.0, usual = 0.0..=110.0)]
    pub temperature: ThermodynamicTemperature,
    /// Absolute pressure of the water.
    #[field("p", BAR, 0.006..=1000.0, default = 2.0, usual = 0.5..=11.0)]
    pub pressure: AbsolutePressure,
}

/// Properties of liquid water.
#[record]
pub struct WaterProperties {
    /// Density.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE)]
    pub density: MassDensity,
    /// Specific heat capacity at constant pressure.
    #[field("c_p", JOULE_PER_KILOGRAM_KELVIN)]
    pub specific_heat_capacity: SpecificHeatCapacity,
    /// Specific enthalpy, zero near 0 °C.
    #[field("h", KILOJOULE_PER_KILOGRAM)]
    pub specific_enthalpy: AvailableEnergy,
    /// Dynamic viscosity.
    #[field("\\mu", PASCAL_SECOND)]
    pub dynamic_viscosity: DynamicViscosity,
    /// Thermal conductivity.
    #[field("\\lambda", WATT_PER_METRE_KELVIN)]
    pub thermal_conductivity: ThermalConductivity,
    /// Volumetric expansion coefficient at constant pressure; negative below about 4 °C.
    #[field("\\beta", PER_KELVIN)]
    pub expansion_coefficient: TemperatureCoefficient,
    /// Prandtl number.
    #[field("Pr", ONE)]
    pub prandtl_number: Ratio,
    /// Pressure at which water of this temperature boils.
    #[field("p_s", BAR)]
    pub saturation_pressure: AbsolutePressure,
}

/// Properties of liquid water from temperature and pressure.
#[derive(Clone, Copy, Debug)]
pub struct LiquidWater;

no_settings!(LiquidWater);

rules! {
    refuse WOULD_BOIL on "pressure": "the water would boil at this temperature and pressure; raise the pressure or lower the temperature";
}

impl Calculation for LiquidWater {
    type Input = WaterState;
    type Output = WaterProperties;
    const INFO: Info = Info {
        name: "liquid_water",
        title: "Properties of liquid water",
        summary: "Density, heat capacity, enthalpy, viscosity, conductivity and expansion of liquid water at a temperature and pressure.",
        sources: &[
            Source::new("IAPWS R7-97(2012), IF97 regions 1 and 4", "density, heat capacity, enthalpy, expansion, saturation pressure"),
            Source::new("IAPWS R12-08", "viscosity, without critical enhancement"),
            Source::new("IAPWS R15-11", "thermal conductivity"),
        ],
        accuracy: "As the formulations: density 0.001 % and heat capacity 0.1 % below 100 °C, 0.005 % and 0.2 % above; viscosity 1 %; conductivity 1.5 %.",
        cautions: &[],
        checked_against: "heat/iapws_check_values.csv, heat/water_liquid.csv, heat/water_saturation.csv",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline]
    fn review(&self, input: &WaterState, output: &WaterProperties) -> Raised {
        Raised::NONE.when(WOULD_BOIL, input.pressure.plain() < output.saturation_pressure.plain())
    }

    const STRAIGHT: bool = true;

    #[inline(always)]
    fn is_straight(&self, input: &WaterState) -> bool {
        input.temperature.si() <= ENHANCEMENT_FROM
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &WaterState, working: &mut W) -> WaterProperties {
        let (pressure, temperature) = (input.pressure.si(), input.temperature.si());
        let water = if W::STRAIGHT { liquid(pressure, temperature) } else { hot_liquid(pressure, temperature) };
        step!(working, let density: "\\rho" = MassDensity::from_si(water.density), "IAPWS-IF97 region 1");
        step!(working, let specific_heat_capacity: "c_p" = SpecificHeatCapacity::from_si(water.specific_heat_capacity), "IAPWS-IF97 region 1");
        step!(working, let dynamic_viscosity: "\\mu" = DynamicViscosity::from_si(water.dynamic_viscosity), "IAPWS R12-08");
        step!(working, let thermal_conductivity: "\\lambda" = ThermalConductivity::from_si(water.thermal_conductivity), "IAPWS R15-11");
        step!(working, let prandtl_number: "Pr" = specific_heat_capacity * dynamic_viscosity / thermal_conductivity, "definition");
        step!(working, let saturation: "p_s" = Pressure::from_si(saturation_pressure(input.temperature.si())), "IAPWS-IF97 region 4");
        WaterProperties {
            density,
            specific_heat_capacity,
            specific_enthalpy: AvailableEnergy::from_si(water.enthalpy),
            dynamic_viscosity,
            thermal_conductivity,
            expansion_coefficient: TemperatureCoefficient::from_si(water.expansion_coefficient),
            prandtl_number,
            saturation_pressure: AbsolutePressure::new(saturation),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::node::Node;
    use crate::record::Record;

    #[test]
    fn one_definition_serves_typed_and_named_calls() {
        let typed = LiquidWater.evaluate(&WaterState::read([("temperature", "60 °C")]).unwrap()).unwrap();
        let named = evaluate("liquid_water", &Node::from([("temperature", "60 degC"), ("pressure", "2 bar")]), Bare::Refused).unwrap();
        assert_eq!(typed.output.to_array().as_slice(), named.output.as_slice());
        let steps = LiquidWater.steps(&typed.input).unwrap();
        assert_eq!(steps.len(), 6);
    }

    #[test]
    fn boiling_and_frozen_water_are_refused() {
        let message = |t: &str, p: &str| {
            let given = Node::from([("temperature", t), ("pressure", p)]);
            evaluate("liquid_water", &given, Bare::Refused).err().map(|e| std::format!("{e}")).unwrap_or_default()
        };
        assert_eq!(message("-3 degC", "2 bar"), "temperature = -3 °C is out of range: allowed is 0 °C to 350 °C (temperature)");
        assert!(message("150 degC", "1.5 bar").starts_with("pressure = 1.5 bar: the water would boil"));
        assert!(message("60 degC", "2 bar(g)").contains("gauge basis"));
        assert!(message("60", "2 bar").contains("written for instance as \"55 °C\""));
    }
}
