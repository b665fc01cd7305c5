//! `heat_store`: the heat that iron, metal and water hold between two temperatures.

use super::PRESSURE_CAUTION;
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Raised, Rule, Setting, Settings, Source};
use crate::material::{ALUMINIUM, CARBON_STEEL, COPPER};
use crate::quantity::Value;
use crate::quantity::types::{
    AvailableEnergy, Energy, HeatCapacity, Mass, MassDensity, Ratio, SpecificHeatCapacity, TemperatureInterval, ThermodynamicTemperature,
    Volume,
};
use crate::quantity::units::{KILOJOULE_PER_KELVIN, KILOWATT_HOUR};
use crate::record::record;
use crate::rules;
use crate::water::{FLUID_SETTING, Fluid};
use crate::working::{Working, step};

/// Parts that cool or warm together.
#[record]
pub struct HeatStoreInput {
    /// Temperature at the start.
    #[field("t_1", DEGREE_CELSIUS, -30.0..=110.0, usual = 5.0..=95.0)]
    pub start_temperature: ThermodynamicTemperature,
    /// Temperature at the end.
    #[field("t_2", DEGREE_CELSIUS, -30.0..=110.0, usual = 5.0..=95.0)]
    pub end_temperature: ThermodynamicTemperature,
    /// Water content at the start.
    #[field("V", LITRE, 0.0..=1000000.0, default = 0.0)]
    pub water_content: Volume,
    /// Share of glycol by mass; needs the setting `fluid`.
    #[field("w", PERCENT, 0.0..=60.0, default = 0.0)]
    pub glycol_mass_fraction: Ratio,
    /// Mass of cast iron.
    #[field("m_{Fe}", KILOGRAM, 0.0..=100000.0, default = 0.0)]
    pub cast_iron_mass: Mass,
    /// Heat capacity of that cast iron; prints run from 420 to 545 J/(kg K), so state which is meant.
    #[field("c_{Fe}", JOULE_PER_KILOGRAM_KELVIN, 380.0..=600.0, default = 500.0, usual = 420.0..=545.0)]
    pub cast_iron_heat_capacity: SpecificHeatCapacity,
    /// Mass of steel.
    #[field("m_{St}", KILOGRAM, 0.0..=100000.0, default = 0.0)]
    pub steel_mass: Mass,
    /// Mass of copper.
    #[field("m_{Cu}", KILOGRAM, 0.0..=100000.0, default = 0.0)]
    pub copper_mass: Mass,
    /// Mass of aluminium.
    #[field("m_{Al}", KILOGRAM, 0.0..=100000.0, default = 0.0)]
    pub aluminium_mass: Mass,
    /// Mass of insulation that follows the temperature; half of a jacket is a fair guess.
    #[field("m_i", KILOGRAM, 0.0..=100000.0, default = 0.0)]
    pub insulation_mass: Mass,
    /// Heat capacity of the insulation.
    #[field("c_i", JOULE_PER_KILOGRAM_KELVIN, 500.0..=2500.0, default = 1030.0)]
    pub insulation_heat_capacity: SpecificHeatCapacity,
    /// Heat capacity of anything else.
    #[field("C_o", KILOJOULE_PER_KELVIN, 0.0..=1000000.0, default = 0.0)]
    pub other_heat_capacity: HeatCapacity,
}

/// What they hold.
#[record]
pub struct HeatStoreResult {
    /// Heat capacity of the metal.
    #[field("C_m", KILOJOULE_PER_KELVIN)]
    pub metal_heat_capacity: HeatCapacity,
    /// Heat capacity of the water: its enthalpy difference over the temperature difference.
    #[field("C_w", KILOJOULE_PER_KELVIN)]
    pub water_heat_capacity: HeatCapacity,
    /// Heat capacity of the whole.
    #[field("C", KILOJOULE_PER_KELVIN)]
    pub heat_capacity: HeatCapacity,
    /// Heat given off from start to end; negative where the parts warm up.
    #[field("Q", KILOWATT_HOUR)]
    pub heat: Energy,
    /// Share of it that the water gives.
    #[field("r_w", PERCENT)]
    pub water_share: Ratio,
}

/// Heat held between two temperatures.
#[derive(Clone, Copy, Debug, Default)]
pub struct HeatStore {
    /// What fills it.
    pub fluid: Fluid,
}

impl Context for HeatStore {
    const SETTINGS: &'static [Setting] = &[FLUID_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { fluid: Fluid::from_settings(settings)? })
    }
}

rules! {
    refuse SAME_TEMPERATURE on "end_temperature": "start and end must differ, or no heat moves";
    refuse NOTHING_THERE on "water_content": "at least one mass, content or heat capacity is needed";
    refuse FROZEN on "end_temperature": "the liquid would be frozen at one of these temperatures";
    refuse GLYCOL_IN_WATER on "glycol_mass_fraction": "set `fluid` to the glycol that is in the water";
    refuse GLYCOL_TOO_HOT on "start_temperature": "the glycol data end at 100 °C";
}

/// Pressure at which the liquid's enthalpy is taken, Pa; it hardly matters.
const PRESSURE: f64 = 2.0e5;

impl Calculation for HeatStore {
    type Input = HeatStoreInput;
    type Output = HeatStoreResult;
    const INFO: Info = Info {
        name: "heat_store",
        title: "Heat held between two temperatures",
        summary: "Heat capacity of iron, steel, copper, aluminium, insulation and water, and the heat they give off between two temperatures.",
        sources: &[
            Source::new("IAPWS SR6-08(2011)", "enthalpy and density of water"),
            Source::new(
                "Incropera Table A.1 (carbon steel from memory)",
                "heat capacity of copper 385, aluminium 903, carbon steel 434 J/(kg K) at 300 K",
            ),
            Source::new(
                "Holman Table A-2 (420) and Callister (544), from memory",
                "spread of the heat capacity of cast iron; the default of 500 lies between",
            ),
            Source::new("ISO 10456 Table 3, from memory", "heat capacity of mineral wool 1030 J/(kg K)"),
        ],
        accuracy: "Water 0.1 %; metals 5 %, since their heat capacity grows with temperature and cast iron's is disputed.",
        cautions: &[PRESSURE_CAUTION, "A block and its water stay hot for tens of minutes after the burner is off."],
        checked_against: "heat/cooldown_circuit_params.csv (block capacity)",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn check(&self, input: &HeatStoreInput) -> Raised {
        let fraction = input.glycol_mass_fraction.si();
        let (start, end) = (input.start_temperature.si(), input.end_temperature.si());
        let parts = input.water_content.si()
            + input.cast_iron_mass.si()
            + input.steel_mass.si()
            + input.copper_mass.si()
            + input.aluminium_mass.si()
            + input.insulation_mass.si()
            + input.other_heat_capacity.si();
        let hotter = start.max(end);
        Raised::NONE
            .when(SAME_TEMPERATURE, start == end)
            .when(NOTHING_THERE, parts == 0.0)
            .when(FROZEN, self.fluid.frozen(fraction, start.min(end)) & (input.water_content.si() > 0.0))
            .when(GLYCOL_IN_WATER, self.fluid.glycol_in_water(fraction))
            .when(GLYCOL_TOO_HOT, !matches!(self.fluid, Fluid::Water) & (hotter > crate::water::HIGHEST_MIXTURE_TEMPERATURE))
    }

    fn compute<W: Working>(&self, input: &HeatStoreInput, working: &mut W) -> HeatStoreResult {
        let fraction = input.glycol_mass_fraction.si();
        let dry = input.water_content.si() == 0.0;
        let state = |temperature: f64| {
            let state = self.fluid.state(fraction, PRESSURE, temperature);
            // Metal alone may be colder than any liquid.
            if dry { (0.0, 0.0) } else { (state.density, state.enthalpy) }
        };
        let (start, end) = (state(input.start_temperature.si()), state(input.end_temperature.si()));
        let (start_density, first, last) = (start.0, start.1, end.1);
        step!(working, let density: "\\rho_1" = MassDensity::from_si(start_density), "IAPWS SR6-08, or Melinder 2010, at the start");
        step!(working, let start_enthalpy: "h_1" = AvailableEnergy::from_si(first), "IAPWS SR6-08, or the glycol's heat capacity");
        step!(working, let end_enthalpy: "h_2" = AvailableEnergy::from_si(last), "likewise");
        step!(working, let steel: "c_{St}" = SpecificHeatCapacity::from_si(CARBON_STEEL.specific_heat_capacity), "Incropera Table A.1, from memory");
        step!(working, let copper: "c_{Cu}" = SpecificHeatCapacity::from_si(COPPER.specific_heat_capacity), "Kutz; Incropera Table A.1");
        step!(working, let aluminium: "c_{Al}" = SpecificHeatCapacity::from_si(ALUMINIUM.specific_heat_capacity), "Kutz; Incropera Table A.1");
        step!(working, let difference: "\\Delta t" = TemperatureInterval::from_si(input.start_temperature.si() - input.end_temperature.si()), "definition");
        step!(working, let metal_heat_capacity: "C_m" in KILOJOULE_PER_KELVIN = HeatCapacity::from_si(input.cast_iron_mass.si() * input.cast_iron_heat_capacity.si() + input.steel_mass.si() * steel.si() + input.copper_mass.si() * copper.si() + input.aluminium_mass.si() * aluminium.si()), "sum of mass times heat capacity");
        step!(working, let insulation_capacity: "C_i" in KILOJOULE_PER_KELVIN = HeatCapacity::from_si(input.insulation_mass.si() * input.insulation_heat_capacity.si()), "mass times heat capacity");
        step!(working, let water_mass: "m_w" = density * input.water_content, "density at the start");
        step!(working, let water_heat: "Q_w" = water_mass * (start_enthalpy - end_enthalpy), "enthalpy difference");
        step!(working, let water_heat_capacity: "C_w" in KILOJOULE_PER_KELVIN = HeatCapacity::from_si(water_heat.si() / difference.si()), "definition");
        step!(working, let heat_capacity: "C" in KILOJOULE_PER_KELVIN = metal_heat_capacity + insulation_capacity + input.other_heat_capacity + water_heat_capacity, "sum");
        step!(working, let heat: "Q" in KILOWATT_HOUR = Energy::from_si(heat_capacity.si() * difference.si()), "heat capacity times temperature difference");
        step!(working, let water_share: "r_w" = water_heat / heat, "definition");
        HeatStoreResult { metal_heat_capacity, water_heat_capacity, heat_capacity, heat, water_share }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::water::tests::assert_close;
    use flamewright_reference::rows;

    fn celsius(value: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::from_si(value + 273.15)
    }

    #[test]
    fn block_capacities_of_the_reference_circuits() {
        for row in rows("heat/cooldown_circuit_params.csv") {
            let input = HeatStoreInput {
                start_temperature: celsius(80.0),
                end_temperature: celsius(60.0),
                water_content: Volume::from_si(row.number("V_water_L") / 1e3),
                cast_iron_mass: Mass::from_si(row.number("m_iron_kg")),
                cast_iron_heat_capacity: SpecificHeatCapacity::from_si(row.number("c_iron_J_kgK")),
                ..HeatStoreInput::unset()
            };
            let got = HeatStore::default().evaluate(&input).unwrap();
            // The reference rounds water to 980 kg/m³ and 4180 J/(kg K).
            assert_close(got.heat_capacity.si(), row.number("C_block_J_K"), 1e-2, &row.place);
            let iron = row.number("m_iron_kg") * row.number("c_iron_J_kgK");
            assert_close(got.metal_heat_capacity.si(), iron, 1e-14, &row.place);
            assert_close(got.heat.si(), got.heat_capacity.si() * 20.0, 1e-14, &row.place);
        }
    }

    #[test]
    fn two_steps_give_the_heat_of_one() {
        let input = HeatStoreInput {
            start_temperature: celsius(75.0),
            end_temperature: celsius(25.0),
            steel_mass: Mass::from_si(30.0),
            copper_mass: Mass::from_si(4.0),
            aluminium_mass: Mass::from_si(2.0),
            insulation_mass: Mass::from_si(1.0),
            other_heat_capacity: HeatCapacity::from_si(500.0),
            ..HeatStoreInput::unset()
        };
        let heat = |from: f64, to: f64| {
            let step = HeatStoreInput { start_temperature: celsius(from), end_temperature: celsius(to), ..input };
            HeatStore::default().evaluate(&step).unwrap().heat.si()
        };
        assert_close(heat(75.0, 50.0) + heat(50.0, 25.0), heat(75.0, 25.0), 1e-13, "sum");
        assert_close(heat(25.0, 75.0), -heat(75.0, 25.0), 1e-13, "back");
        assert_close(heat(75.0, 25.0), 50.0 * (30.0 * 434.0 + 4.0 * 385.0 + 2.0 * 903.0 + 1030.0 + 500.0), 1e-13, "by hand");
        assert!(heat(-20.0, 20.0) < 0.0); // dry metal may be frozen
        let wet = HeatStoreInput { water_content: Volume::from_si(0.01), end_temperature: celsius(-5.0), ..input };
        assert_eq!(HeatStore::default().evaluate(&wet).unwrap_err().code(), "FROZEN");
    }
}
