//! The calculation `pipe_temperature_drop`: how much the water cools on its way.

use super::decay::{stretch_between, temperature_after};
use super::run::{
    AIR_SOURCE, FILM_SOURCE, INSIDE_SOURCE, Run, Section, VERTICAL_SOURCE, WATER_SOURCE, WIND_SOURCE, inside_film, run_record, run_rules,
};
use crate::Error;
use crate::calculation::{Calculation, Column, Context, Info, Raised, Rule, Setting, Settings, Table};
use crate::convection::friction::{LAMINAR_BELOW, TURBULENT_FROM};
use crate::math::exp;
use crate::quantity::Value;
use crate::quantity::types::{
    AvailableEnergy, Length, MassDensity, MassRate, Power, PowerPerLength, Ratio, TemperatureInterval, ThermodynamicTemperature, VolumeRate,
};
use crate::quantity::units::{DEGREE_CELSIUS, METRE, WATT_PER_METRE};
use crate::record::record;
use crate::root::rising_root;
use crate::water::heating_water;
use crate::working::{Working, step};
use alloc::vec::Vec;

run_record! {
    /// A pipe run with water flowing through it.
    pub struct PipeTemperatureDropInput {
        /// Temperature of the water where it enters.
        #[field("t_1", DEGREE_CELSIUS, 0.0..=110.0, usual = 5.0..=95.0)]
        pub inlet_temperature: ThermodynamicTemperature,
        /// Flow of the water where it enters.
        #[field("\\dot V", LITRE_PER_HOUR, 0.01..=1000000.0, usual = 10.0..=50000.0)]
        pub water_flow: VolumeRate,
        /// Length of the run.
        #[field("l", METRE, 0.0..=100000.0, usual = 0.1..=200.0)]
        pub length: Length,
    }
}

/// The water where it leaves the run.
#[record]
pub struct PipeTemperatureDropResult {
    /// Temperature of the water where it leaves.
    #[field("t_2", DEGREE_CELSIUS)]
    pub outlet_temperature: ThermodynamicTemperature,
    /// By how much the water cooled; negative where the run takes up heat.
    #[field("\\Delta t", KELVIN)]
    pub temperature_drop: TemperatureInterval,
    /// Heat lost by the whole run.
    #[field("\\Phi", WATT)]
    pub heat_loss: Power,
    /// Mass flow.
    #[field("\\dot m", KILOGRAM_PER_SECOND)]
    pub mass_flow: MassRate,
    /// Heat lost per metre where the water enters.
    #[field("q_1", WATT_PER_METRE)]
    pub heat_loss_at_inlet: PowerPerLength,
    /// Heat lost per metre where it leaves.
    #[field("q_2", WATT_PER_METRE)]
    pub heat_loss_at_outlet: PowerPerLength,
    /// Reynolds number where the water enters.
    #[field("Re_1", ONE)]
    pub reynolds_number_at_inlet: Ratio,
    /// Reynolds number where it leaves.
    #[field("Re_2", ONE)]
    pub reynolds_number_at_outlet: Ratio,
    /// Outlet temperature if the loss per kelvin stayed what it is at the inlet: the usual exponential, for comparison.
    #[field("t_{2e}", DEGREE_CELSIUS)]
    pub outlet_temperature_by_exponential: ThermodynamicTemperature,
}

/// Temperature drop along a pipe run.
#[derive(Clone, Debug, Default)]
pub struct PipeTemperatureDrop {
    /// What the run is made of and how it lies.
    pub run: Run,
}

impl Context for PipeTemperatureDrop {
    const SETTINGS: &'static [Setting] = Run::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { run: Run::from_settings(settings)? })
    }
}

run_rules! {
    refuse WOULD_FREEZE on "water_flow": "the water would freeze on the way; more flow, more insulation, or a shorter run";
    notice FLOW_IN_TRANSITION on "water_flow": "the flow is between laminar and turbulent, where the film inside is not well known; it seldom matters to the loss";
}

/// Melting point of ice in K.
const FREEZING: f64 = 273.15;

/// Runge-Kutta steps over the run: with them a bare run that loses two thirds of its excess is
/// right to 1e-8 K (tested against twice as many).
const STEPS: u32 = 16;

impl PipeTemperatureDrop {
    fn loss(&self, section: &Section, mass_flow: f64, pressure: f64, temperature: f64) -> (f64, f64) {
        let film = inside_film(mass_flow, section.bore, pressure, temperature);
        (self.run.loss(section, temperature, film.resistance), film.heat_capacity)
    }

    /// Water temperature in K at a distance in m from where it has `inlet` K.
    ///
    /// The film inside has a kink where the flow becomes transitional and where it becomes laminar.
    /// A step across a kink would spoil the digits, so the way is cut there.
    fn temperature_at(&self, section: &Section, mass_flow: f64, pressure: f64, inlet: f64, distance: f64, steps: u32) -> f64 {
        let rest = self.run.rest_temperature(section);
        let decline = |temperature: f64| {
            let (loss, heat_capacity) = self.loss(section, mass_flow, pressure, temperature);
            loss / (mass_flow * heat_capacity)
        };
        let (mut from, mut left) = (inlet, distance);
        let kinks = if inlet > rest { [TURBULENT_FROM, LAMINAR_BELOW] } else { [LAMINAR_BELOW, TURBULENT_FROM] };
        for reynolds in kinks {
            let excess = |temperature: f64| inside_film(mass_flow, section.bore, pressure, temperature).reynolds - reynolds;
            let (low, high) = (from.min(rest).max(FREEZING), from.max(rest));
            if excess(low) < 0.0 && excess(high) > 0.0 {
                let kink = rising_root(excess, low, high, 1e-11);
                let way = stretch_between(from, kink, rest, decline);
                if way < left {
                    (from, left) = (kink, left - way);
                }
            }
        }
        temperature_after(from, rest, left, steps, decline)
    }
}

impl Calculation for PipeTemperatureDrop {
    type Input = PipeTemperatureDropInput;
    type Output = PipeTemperatureDropResult;
    const INFO: Info = Info {
        name: "pipe_temperature_drop",
        title: "Temperature drop along a pipe run",
        summary: "Temperature of the water where it leaves a run at a given flow, and the heat the run loses, with the loss following \
                  the water's temperature along the way.",
        sources: &[FILM_SOURCE, VERTICAL_SOURCE, WIND_SOURCE, INSIDE_SOURCE, AIR_SOURCE, WATER_SOURCE],
        accuracy: "As the heat loss of the run: 15 % of the drop for a bare run in still air, 5 to 10 % insulated, 30 % upright.",
        cautions: &[],
        checked_against: "heat/pipe_run_drop.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn check(&self, input: &PipeTemperatureDropInput) -> Raised {
        run_rules(self.run.findings(&input.given(input.length.si()), input.inlet_temperature.si()))
    }

    #[inline]
    fn review(&self, _input: &PipeTemperatureDropInput, output: &PipeTemperatureDropResult) -> Raised {
        let (first, last) = (output.reynolds_number_at_inlet.si(), output.reynolds_number_at_outlet.si());
        Raised::NONE
            .when(WOULD_FREEZE, output.outlet_temperature.si().is_nan())
            .when(FLOW_IN_TRANSITION, (first.max(last) >= LAMINAR_BELOW) & (first.min(last) < TURBULENT_FROM))
    }

    fn compute<W: Working>(&self, input: &PipeTemperatureDropInput, working: &mut W) -> PipeTemperatureDropResult {
        let given = input.given(input.length.si());
        let section = self.run.section(&given);
        let pressure = given.water_pressure;
        let inlet = input.inlet_temperature.si();
        let water = heating_water(pressure, inlet);
        let inlet_density = MassDensity::from_si(water.density);
        step!(working, let mass_flow: "\\dot m" = input.water_flow * inlet_density, "IAPWS SR6-08 density");
        let flow = mass_flow.si();
        let (inlet_loss, heat_capacity) = self.loss(&section, flow, pressure, inlet);
        step!(working, let heat_loss_at_inlet: "q_1" in WATT_PER_METRE = PowerPerLength::from_si(inlet_loss), "heat balance of the surface, as pipe_heat_loss");
        let rest = self.run.rest_temperature(&section);
        let outlet = self.temperature_at(&section, flow, pressure, inlet, given.length, STEPS);
        step!(working, let outlet_temperature: "t_2" = ThermodynamicTemperature::from_si(outlet), "m c dt/dx = -q(t) integrated along the run");
        let (outlet_loss, _) = self.loss(&section, flow, pressure, outlet);
        step!(working, let heat_loss_at_outlet: "q_2" in WATT_PER_METRE = PowerPerLength::from_si(outlet_loss), "heat balance of the surface, as pipe_heat_loss");
        step!(working, let temperature_drop: "\\Delta t" = TemperatureInterval::from_si(input.inlet_temperature.si() - outlet_temperature.si()), "definition");
        let inlet_enthalpy = AvailableEnergy::from_si(water.enthalpy);
        let outlet_enthalpy = AvailableEnergy::from_si(heating_water(pressure, outlet).enthalpy);
        step!(working, let enthalpy_drop: "\\Delta h" = inlet_enthalpy - outlet_enthalpy, "IAPWS SR6-08 enthalpy");
        step!(working, let heat_loss: "\\Phi" = mass_flow * enthalpy_drop, "energy balance");
        let excess = inlet - rest;
        let transfer_units = if excess == 0.0 { 0.0 } else { inlet_loss / excess * given.length / (flow * heat_capacity) };
        PipeTemperatureDropResult {
            outlet_temperature,
            temperature_drop,
            heat_loss,
            mass_flow,
            heat_loss_at_inlet,
            heat_loss_at_outlet,
            reynolds_number_at_inlet: Ratio::from_si(inside_film(flow, section.bore, pressure, inlet).reynolds),
            reynolds_number_at_outlet: Ratio::from_si(inside_film(flow, section.bore, pressure, outlet).reynolds),
            outlet_temperature_by_exponential: ThermodynamicTemperature::from_si(rest + excess * exp(-transfer_units)),
        }
    }

    fn tables(&self, input: &PipeTemperatureDropInput) -> Vec<Table> {
        const PARTS: u32 = 20;
        let given = input.given(input.length.si());
        let section = self.run.section(&given);
        let pressure = given.water_pressure;
        let flow = input.water_flow.si() * heating_water(pressure, input.inlet_temperature.si()).density;
        let part = given.length / f64::from(PARTS);
        let mut temperature = input.inlet_temperature.si();
        let (mut distances, mut temperatures, mut losses) = (Vec::new(), Vec::new(), Vec::new());
        for i in 0..=PARTS {
            if i > 0 {
                temperature = self.temperature_at(&section, flow, pressure, temperature, part, 2);
            }
            distances.push(part * f64::from(i));
            temperatures.push(temperature);
            losses.push(self.loss(&section, flow, pressure, temperature).0);
        }
        alloc::vec![Table {
            name: "along_the_run",
            row_names: Vec::new(),
            columns: alloc::vec![
                Column { name: "distance".into(), unit: &METRE, values: distances },
                Column { name: "water_temperature".into(), unit: &DEGREE_CELSIUS, values: temperatures },
                Column { name: "heat_loss_per_length".into(), unit: &WATT_PER_METRE, values: losses },
            ],
        }]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::types::ThermalConductivity;
    use crate::record::Record;
    use flamewright_reference::rows;

    const ZERO_CELSIUS: f64 = 273.15;

    fn bare(inlet: f64, litres_per_hour: f64, length: f64) -> PipeTemperatureDropInput {
        PipeTemperatureDropInput {
            inlet_temperature: ThermodynamicTemperature::from_si(inlet + ZERO_CELSIUS),
            air_temperature: ThermodynamicTemperature::from_si(15.0 + ZERO_CELSIUS),
            outside_diameter: Length::from_si(0.022),
            wall_thickness: Length::from_si(0.0009),
            wall_conductivity: ThermalConductivity::from_si(385.0),
            emissivity: Ratio::from_si(0.9),
            water_flow: VolumeRate::from_si(litres_per_hour / 3.6e6),
            length: Length::from_si(length),
            ..PipeTemperatureDropInput::unset()
        }
    }

    #[test]
    fn drops_agree_with_the_reference() {
        for row in rows("heat/pipe_run_drop.csv") {
            let input = PipeTemperatureDropInput {
                air_temperature: ThermodynamicTemperature::from_si(row.number("T_air_C") + ZERO_CELSIUS),
                outside_diameter: Length::from_si(row.number("od_mm") * 1e-3),
                wall_thickness: Length::from_si(row.number("wall_mm") * 1e-3),
                wall_conductivity: ThermalConductivity::from_si(row.number("k_wall_W_mK")),
                insulation_thickness: Length::from_si(row.number("insulation_mm") * 1e-3),
                insulation_conductivity: ThermalConductivity::from_si(row.maybe("k_insulation_W_mK").unwrap_or(f64::NAN)),
                emissivity: Ratio::from_si(row.number("emissivity_outer")),
                ..bare(row.number("T_inlet_C"), row.number("flow_l_h"), row.number("length_m"))
            };
            let result = PipeTemperatureDrop::default().evaluate(&input).unwrap();
            let deviation = (result.outlet_temperature.si() - ZERO_CELSIUS - row.number("T_outlet_C")).abs();
            assert!(deviation < 2e-4, "{}: {deviation} K", row.place);
            let by_exponential = result.outlet_temperature_by_exponential.si() - ZERO_CELSIUS;
            assert!((by_exponential - row.number("T_outlet_const_U_exponential_C")).abs() < 1e-3, "{}", row.place);
            for (got, column, tolerance) in [
                (result.heat_loss.si(), "loss_total_W", 3e-5),
                (result.heat_loss_at_inlet.si(), "q_inlet_W_m", 1e-5),
                (result.mass_flow.si(), "mass_flow_kg_s", 1e-6),
                (result.reynolds_number_at_inlet.si(), "Re_inlet", 1e-5),
            ] {
                assert!((got / row.number(column) - 1.0).abs() < tolerance, "{} {column}: {got}", row.place);
            }
        }
    }

    #[test]
    fn two_runs_in_series_are_one_of_double_length() {
        for (inlet, flow, length) in [(70.0, 200.0, 10.0), (70.0, 600.0, 40.0), (6.0, 300.0, 30.0), (80.0, 50.0, 15.0), (90.0, 60.0, 40.0)]
        {
            let run = PipeTemperatureDrop::default();
            let whole = run.evaluate(&bare(inlet, flow, 2.0 * length)).unwrap();
            let first = run.evaluate(&bare(inlet, flow, length)).unwrap();
            // The same mass flow, not the same volume flow, enters the second.
            let mut second = bare(inlet, flow, length);
            second.inlet_temperature = first.outlet_temperature;
            second.water_flow = VolumeRate::from_si(first.mass_flow.si() / heating_water(2e5, first.outlet_temperature.si()).density);
            let second = run.evaluate(&second).unwrap();
            let deviation = (second.outlet_temperature.si() - whole.outlet_temperature.si()).abs();
            assert!(deviation < 1e-7, "{inlet} {flow}: {deviation:e} K");
            assert!(((first.heat_loss.si() + second.heat_loss.si()) / whole.heat_loss.si() - 1.0).abs() < 1e-9, "{inlet} {flow}");
        }
    }

    #[test]
    fn physics_holds() {
        let run = PipeTemperatureDrop::default();
        let still = run.evaluate(&bare(70.0, 200.0, 0.0)).unwrap();
        assert_eq!(still.temperature_drop.si(), 0.0);
        assert_eq!(still.heat_loss.si(), 0.0);
        // A long run ends at the room's temperature, from either side.
        for inlet in [70.0, 3.0] {
            let long = run.evaluate(&bare(inlet, 20.0, 3000.0)).unwrap();
            assert!((long.outlet_temperature.si() - ZERO_CELSIUS - 15.0).abs() < 0.01, "{long:?}");
        }
        // Warm surfaces around a cold room leave water between the two.
        let mut sunny = bare(70.0, 20.0, 3000.0);
        sunny.radiant_temperature = ThermodynamicTemperature::from_si(30.0 + ZERO_CELSIUS);
        let end = run.evaluate(&sunny).unwrap().outlet_temperature.si() - ZERO_CELSIUS;
        assert!((17.0..28.0).contains(&end), "{end}");
        // More flow, less drop.
        let drop = |flow: f64| run.evaluate(&bare(70.0, flow, 20.0)).unwrap().temperature_drop.si();
        assert!(drop(100.0) > drop(200.0) && drop(200.0) > drop(1000.0));
        // The profile ends where the calculation does.
        let input = bare(70.0, 200.0, 25.0);
        let table = run.tables(&input).remove(0);
        let end = table.columns[1].values.last().unwrap();
        assert!((end - run.evaluate(&input).unwrap().outlet_temperature.si()).abs() < 1e-7);
        let mut frost = bare(20.0, 5.0, 200.0);
        frost.air_temperature = ThermodynamicTemperature::from_si(ZERO_CELSIUS - 15.0);
        assert!(std::format!("{}", run.evaluate(&frost).unwrap_err()).contains("freeze"));
    }

    #[test]
    fn the_table_along_the_run_ends_at_its_outlet() {
        let (run, input) = (PipeTemperatureDrop::default(), bare(70.0, 200.0, 12.0));
        let (result, table) = (run.evaluate(&input).unwrap(), run.tables(&input).remove(0));
        let [distances, temperatures, losses] = [0, 1, 2].map(|column| &table.columns[column].values);
        assert_eq!((distances[0], temperatures[0]), (0.0, 70.0 + ZERO_CELSIUS));
        assert!((distances[5] - 3.0).abs() < 1e-12 && (distances[20] - 12.0).abs() < 1e-12);
        assert!((losses[0] / result.heat_loss_at_inlet.si() - 1.0).abs() < 1e-12);
        assert!((temperatures[20] - result.outlet_temperature.si()).abs() < 1e-5);
        let third = run.evaluate(&bare(70.0, 200.0, 3.0)).unwrap().outlet_temperature.si();
        assert!((temperatures[5] - third).abs() < 1e-5);
    }
}
