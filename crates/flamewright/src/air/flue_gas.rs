//! The calculation `flue_gas_flow`: the flue gas that a heat input sends up the flue.

use super::CAUTION_OPEN_FLUE;
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Setting, Settings, Source};
use crate::combustion::air::{DryAir, humidity_mole_ratio};
use crate::combustion::context::{AIR, FUEL, fuel_and_air};
use crate::combustion::products::Products;
use crate::fuel::Fuel;
use crate::quantity::types::{MassRate, Ratio, SpecificHeatCapacity, ThermodynamicTemperature, VolumeRate};
use crate::quantity::{AbsolutePressure, HeatInput, MoleFraction, Net, Value, Wet};
use crate::record::record;
use crate::supply::MOLAR_GAS_CONSTANT;
use crate::water::saturation_temperature;
use crate::working::{Working, step};

/// A burner and the air that goes up the flue with its products.
#[record]
pub struct FlueGasSource {
    /// Heat input on the net basis.
    #[field("\\dot Q_i", KILOWATT, 0.01..=1e5, usual = 1.0..=200.0)]
    pub heat_input_net: HeatInput<Net>,
    /// Air in the flue over the air needed, with what a draught diverter draws in.
    #[field("\\lambda", ONE, 1.0..=50.0, usual = 1.1..=6.0)]
    pub excess_air_ratio: Ratio,
    /// Temperature of the flue gas, for its heat capacity and volume.
    #[field("T", DEGREE_CELSIUS, 0.0..=1000.0, default = 100.0, usual = 40.0..=250.0)]
    pub flue_temperature: ThermodynamicTemperature,
    /// Temperature of the air that is drawn in.
    #[field("T_a", DEGREE_CELSIUS, -20.0..=60.0, default = 15.0, usual = -10.0..=35.0)]
    pub air_temperature: ThermodynamicTemperature,
    /// Relative humidity of that air.
    #[field("\\varphi", PERCENT, 0.0..=100.0, default = 60.0)]
    pub air_relative_humidity: Ratio,
    /// Barometric pressure.
    #[field("p_b", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 940.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
}

/// The flue gas.
#[record]
pub struct FlueGasFlowResult {
    /// Mass flow.
    #[field("\\dot m", KILOGRAM_PER_SECOND)]
    pub mass_flow: MassRate,
    /// Volume flow at the flue temperature and the barometer.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR)]
    pub volume_flow: VolumeRate,
    /// Specific gas constant.
    #[field("R", JOULE_PER_KILOGRAM_KELVIN)]
    pub flue_gas_constant: SpecificHeatCapacity,
    /// Specific heat capacity at constant pressure.
    #[field("c_p", JOULE_PER_KILOGRAM_KELVIN)]
    pub specific_heat_capacity: SpecificHeatCapacity,
    /// Share of water vapour.
    #[field("x_{H_2O}", PERCENT)]
    pub water_vapour: MoleFraction<Wet>,
    /// Dew point of that vapour.
    #[field("T_p", DEGREE_CELSIUS, absent = "below freezing")]
    pub dew_point: ThermodynamicTemperature,
}

/// Flue gas of a heat input, as `chimney_draught` takes it.
#[derive(Clone, Debug)]
pub struct FlueGasFlow {
    /// The fuel.
    pub fuel: Fuel,
    /// Composition taken for dry air.
    pub air: DryAir,
}

impl Context for FlueGasFlow {
    const SETTINGS: &'static [Setting] = &[FUEL, AIR];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let (fuel, air) = fuel_and_air(settings)?;
        Ok(Self { fuel, air })
    }
}

impl Calculation for FlueGasFlow {
    type Input = FlueGasSource;
    type Output = FlueGasFlowResult;
    const INFO: Info = Info {
        name: "flue_gas_flow",
        title: "Flue gas of a heat input",
        summary: "Mass and volume flow, gas constant, heat capacity, water vapour and dew point of the flue gas that a burner and its dilution air send up the flue.",
        sources: &[
            Source::new("Element balance of complete combustion", "amounts"),
            Source::new("NASA polynomials, as combustion/species.rs", "heat capacity"),
            Source::new("IAPWS R7-97(2012), IF97 region 4", "dew point"),
        ],
        accuracy: "As the heat input and the air ratio; the net calorific value is that at 25 °C, within 0.1 % of that at 15 °C.",
        cautions: &[CAUTION_OPEN_FLUE],
        checked_against: "combustion/flue_composition_vs_lambda.csv for the composition; the flow is tested against a balance by hand.",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &FlueGasSource, working: &mut W) -> FlueGasFlowResult {
        let humidity = humidity_mole_ratio(input.air_relative_humidity.si(), input.air_temperature.si(), input.barometric_pressure.si());
        let products = Products::of_complete_combustion(&self.fuel, &self.air, input.excess_air_ratio.si(), humidity);
        let (mass_per_fuel, amount_per_fuel) = (products.mass(), products.wet());
        let net_calorific_value = self.fuel.net_calorific_value;
        step!(working, let fuel_rate: "\\dot n" = input.heat_input_net.si() / net_calorific_value, "definition; mol/s of a gas, kg/s of another fuel");
        step!(working, let mass_flow: "\\dot m" = MassRate::from_si(fuel_rate * mass_per_fuel), "element balance");
        step!(working, let gas_constant: "R" = SpecificHeatCapacity::from_si(MOLAR_GAS_CONSTANT * amount_per_fuel / mass_per_fuel), "definition");
        step!(working, let volume_flow: "\\dot V" = VolumeRate::from_si(
            mass_flow.si() * gas_constant.si() * input.flue_temperature.si() / input.barometric_pressure.si()), "ideal gas law");
        let water = products.water;
        step!(working, let water_vapour: "x_{H_2O}" = Ratio::from_si(water / amount_per_fuel), "definition");
        FlueGasFlowResult {
            mass_flow,
            volume_flow,
            flue_gas_constant: gas_constant,
            specific_heat_capacity: SpecificHeatCapacity::from_si(products.heat_capacity(input.flue_temperature.si()) / mass_per_fuel),
            water_vapour: MoleFraction::new(water_vapour),
            dew_point: ThermodynamicTemperature::from_si(saturation_temperature(water_vapour.si() * input.barometric_pressure.si())),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;

    fn methane() -> FlueGasFlow {
        FlueGasFlow { fuel: Fuel::named("CH4").unwrap(), air: DryAir::OXYGEN_21_NITROGEN_79 }
    }

    fn dry_air(excess_air_ratio: f64) -> FlueGasSource {
        FlueGasSource {
            heat_input_net: HeatInput::from_si(15e3),
            excess_air_ratio: Ratio::from_si(excess_air_ratio),
            air_relative_humidity: Ratio::from_si(0.0),
            ..FlueGasSource::unset()
        }
    }

    /// CH4 + 2 (O2 + 79/21 N2) by hand: 10.524 mol of flue gas, 16.043 + 2 * 137.33 g of it, from
    /// 802.6 kJ net.
    #[test]
    fn methane_by_hand() {
        let got = methane().evaluate(&dry_air(1.0)).unwrap().output;
        let moles = 3.0 + 2.0 * 79.0 / 21.0;
        let mass = 16.043e-3 + 2.0 * (31.999e-3 + 79.0 / 21.0 * 28.013e-3);
        assert!((got.mass_flow.si() / (15e3 / 802.6e3 * mass) - 1.0).abs() < 2e-4);
        assert!((got.flue_gas_constant.si() / (8.314463 * moles / mass) - 1.0).abs() < 1e-4);
        assert!((got.water_vapour.si() / (2.0 / moles) - 1.0).abs() < 1e-9);
        // About 59 degC: the well-known dew point of natural gas burnt without excess air.
        assert!((got.dew_point.si() - 273.15 - 59.0).abs() < 0.7);
    }

    #[test]
    fn dilution_adds_air_and_nothing_else() {
        let (lean, rich) = (methane().evaluate(&dry_air(3.0)).unwrap().output, methane().evaluate(&dry_air(1.0)).unwrap().output);
        let air = 15e3 / methane().fuel.net_calorific_value * 2.0 * 2.0 / 0.21 * methane().air.molar_mass();
        assert!(((lean.mass_flow.si() - rich.mass_flow.si()) / air - 1.0).abs() < 1e-6);
        assert!(lean.dew_point.si() < rich.dew_point.si());
        assert!(methane().evaluate(&dry_air(0.9)).is_err());
    }
}
