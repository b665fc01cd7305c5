//! The calculation `flame_temperature`.

use super::air::{DryAir, humidity_mole_ratio};
use super::products::Products;
use super::{context, equilibrium, flame};
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Setting, Settings, Source};
use crate::fuel::Fuel;
use crate::quantity::types::{Ratio, ThermodynamicTemperature};
use crate::quantity::{AbsolutePressure, MoleFraction, On, Value, Wet};
use crate::record::record;
use crate::working::{Working, step};

/// What goes into the flame.
#[record]
pub struct FlameState {
    /// Excess air ratio: air supplied over air needed.
    #[field("\\lambda", ONE, 1.0..=20.0, default = 1.0)]
    pub excess_air_ratio: Ratio,
    /// Temperature of the fuel gas; liquids and solids are taken to enter at 25 °C.
    #[field("t_B", DEGREE_CELSIUS, -40.0..=100.0, default = 25.0)]
    pub fuel_temperature: ThermodynamicTemperature,
    /// Temperature of the combustion air.
    #[field("t_L", DEGREE_CELSIUS, -40.0..=600.0, default = 25.0)]
    pub air_temperature: ThermodynamicTemperature,
    /// Water in the combustion air as relative humidity at 20 °C.
    #[field("\\varphi_{20}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub relative_humidity_20: Ratio,
    /// Absolute pressure.
    #[field("p", MILLIBAR, 100.0..=20_000.0, default = 1013.25)]
    pub pressure: AbsolutePressure,
}

/// How hot the flame could be.
#[record]
pub struct FlameResult {
    /// Adiabatic flame temperature in chemical equilibrium, with dissociation.
    #[field("t_{ad}", DEGREE_CELSIUS)]
    pub flame_temperature: ThermodynamicTemperature,
    /// Adiabatic flame temperature if combustion were complete; too high above about 1500 °C.
    #[field("t_{com}", DEGREE_CELSIUS)]
    pub flame_temperature_complete: ThermodynamicTemperature,
    /// Carbon monoxide in the wet gas in equilibrium at flame temperature; nearly all of it burns on cooling.
    #[field("y_{CO}", PPM)]
    pub carbon_monoxide_wet: MoleFraction<Wet>,
    /// Nitric oxide in the wet gas in equilibrium at flame temperature; a flame has no time to form as much.
    #[field("y_{NO}", PPM)]
    pub nitric_oxide_wet: MoleFraction<Wet>,
    /// Oxygen in the wet gas in equilibrium at flame temperature.
    #[field("y_{O_2}", PERCENT)]
    pub oxygen_wet: MoleFraction<Wet>,
    /// Hydrogen in the wet gas in equilibrium at flame temperature.
    #[field("y_{H_2}", PPM)]
    pub hydrogen_wet: MoleFraction<Wet>,
}

/// Adiabatic flame temperature of one fuel.
#[derive(Clone, Debug)]
pub struct FlameTemperature {
    /// The fuel.
    pub fuel: Fuel,
    /// The air it burns in.
    pub air: DryAir,
}

impl Context for FlameTemperature {
    const SETTINGS: &'static [Setting] = &[context::FUEL, context::AIR];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let (fuel, air) = context::fuel_and_air(settings)?;
        Ok(Self { fuel, air })
    }
}

/// Temperature to which the humidity refers, K: air for combustion may be preheated far beyond boiling.
const HUMIDITY_TEMPERATURE: f64 = 293.15;

impl Calculation for FlameTemperature {
    type Input = FlameState;
    type Output = FlameResult;
    const INFO: Info = Info {
        name: "flame_temperature",
        title: "Adiabatic flame temperature",
        summary: "Temperature of the flame if no heat left it, with dissociation in chemical equilibrium and for complete combustion, and the \
                  carbon monoxide and nitric oxide that belong to it.",
        sources: &[
            Source::new("NASA TM-4513 (1993)", "enthalpies and entropies, 200 to 6000 K"),
            Source::new("NASA RP-1311 part I (1994), section 2", "iteration to the least Gibbs energy"),
            Source::new("ISO 6976:2016", "net calorific value at 25 °C"),
        ],
        accuracy: "2 K in equilibrium (CO2, CO, H2O, H2, O2, OH, H, O, N2, NO), 1 K complete. A real flame is colder: it radiates.",
        cautions: &[],
        checked_against: "combustion/adiabatic_flame_temperature.csv, combustion/published_examples.csv",
    };

    fn compute<W: Working>(&self, input: &FlameState, working: &mut W) -> FlameResult {
        let (fuel, air) = (&self.fuel, &self.air);
        let ratio = input.excess_air_ratio.si();
        let pressure = input.pressure.si();
        // At 0.1 bar air at 20 degC still holds its water: 23 mbar.
        let humidity = humidity_mole_ratio(input.relative_humidity_20.si(), HUMIDITY_TEMPERATURE, pressure);
        let products = Products::of_complete_combustion(fuel, air, ratio, humidity);
        let reactants = flame::heat_in_products(fuel, air, ratio, humidity, input.fuel_temperature.si(), input.air_temperature.si());
        step!(working, let net_calorific_value: "H_i" = fuel.net_calorific_value, "J per mol or kg of fuel at 25 °C");
        step!(working, let sensible_heat: "\\Delta h" = reactants - net_calorific_value, "heat that fuel and air bring above 25 °C");
        step!(working, let heat: "h" = net_calorific_value + sensible_heat, "heat above 25 °C in the products");
        let complete = flame::complete(&products, heat);
        let found = equilibrium::adiabatic(&products, heat, pressure);
        step!(working, let flame_temperature_complete: "t_{com}" = ThermodynamicTemperature::from_si(complete), "heat of the products equals h");
        step!(working, let flame_temperature: "t_{ad}" = ThermodynamicTemperature::from_si(found.temperature), "least Gibbs energy at this heat and pressure");
        FlameResult {
            flame_temperature,
            flame_temperature_complete,
            carbon_monoxide_wet: On::from_si(found.carbon_monoxide_wet),
            nitric_oxide_wet: On::from_si(found.nitric_oxide_wet),
            oxygen_wet: On::from_si(found.oxygen_wet),
            hydrogen_wet: On::from_si(found.hydrogen_wet),
        }
    }
}
