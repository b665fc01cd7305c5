//! The calculation `pipe_cool_down`: how long standing water in a run stays warm.

use super::decay::{stretch_between, temperature_after};
use super::run::{AIR_SOURCE, FILM_SOURCE, Run, VERTICAL_SOURCE, WATER_SOURCE, WIND_SOURCE, run_record, run_rules};
use crate::Error;
use crate::calculation::{Calculation, Column, Context, Info, Raised, Rule, Setting, Settings, Table};
use crate::math::ln;
use crate::quantity::Value;
use crate::quantity::types::{
    Area, Energy, HeatCapacityPerLength, Length, MassDensity, PowerPerLength, SpecificHeatCapacity, TemperatureInterval,
    ThermodynamicTemperature, Time,
};
use crate::quantity::units::{DEGREE_CELSIUS, MINUTE, WATT_PER_METRE};
use crate::record::record;
use crate::water::heating_water;
use crate::working::{Silent, Working, step};
use alloc::vec::Vec;
use core::f64::consts::PI;

run_record! {
    /// A pipe run full of warm water that stands.
    pub struct PipeCoolDownInput {
        /// Temperature of water and pipe at the start.
        #[field("t_1", DEGREE_CELSIUS, 0.0..=110.0, usual = 20.0..=95.0)]
        pub start_temperature: ThermodynamicTemperature,
        /// Temperature the water is to come to.
        #[field("t_2", DEGREE_CELSIUS, 0.0..=110.0, usual = 10.0..=90.0)]
        pub target_temperature: ThermodynamicTemperature,
        /// Time after which the temperature is asked.
        #[field("\\tau_x", MINUTE, 0.0..=100000.0, absent = "not asked")]
        pub elapsed_time: Time,
        /// Length of the run.
        #[field("l", METRE, 0.001..=100000.0, default = 1.0, usual = 0.1..=200.0)]
        pub length: Length,
        /// Density of the pipe's wall.
        #[field("\\rho_w", KILOGRAM_PER_CUBIC_METRE, 500.0..=20000.0, absent = "as the named tube")]
        pub wall_density: MassDensity,
        /// Specific heat capacity of the pipe's wall.
        #[field("c_w", JOULE_PER_KILOGRAM_KELVIN, 100.0..=5000.0, absent = "as the named tube")]
        pub wall_heat_capacity: SpecificHeatCapacity,
    }
}

/// How the run cools, and what heat it holds.
#[record]
pub struct PipeCoolDownResult {
    /// Time until the target temperature.
    #[field("\\tau", MINUTE, absent = "never reached")]
    pub time_to_target: Time,
    /// Temperature after the time asked.
    #[field("t_x", DEGREE_CELSIUS, absent = "not asked")]
    pub temperature_after: ThermodynamicTemperature,
    /// Heat capacity of the water per metre.
    #[field("C_w", JOULE_PER_METRE_KELVIN)]
    pub water_capacity: HeatCapacityPerLength,
    /// Heat capacity of the pipe's wall per metre.
    #[field("C_p", JOULE_PER_METRE_KELVIN)]
    pub wall_capacity: HeatCapacityPerLength,
    /// Heat lost per metre at the start.
    #[field("q_1", WATT_PER_METRE)]
    pub heat_loss_at_start: PowerPerLength,
    /// Time in which the excess over the room would fall to 1/e if the loss per kelvin stayed what it is at the start.
    #[field("\\tau_1", MINUTE, absent = "nothing to lose")]
    pub time_constant: Time,
    /// Time until the target by that constant: the usual exponential, for comparison.
    #[field("\\tau_e", MINUTE, absent = "never reached")]
    pub time_to_target_by_exponential: Time,
    /// Heat that water and pipe of the whole run hold above the temperature at which they come to rest.
    #[field("E", KILOJOULE)]
    pub heat_held: Energy,
}

/// Cool-down of a pipe run whose water stands.
#[derive(Clone, Debug, Default)]
pub struct PipeCoolDown {
    /// What the run is made of and how it lies.
    pub run: Run,
}

impl Context for PipeCoolDown {
    const SETTINGS: &'static [Setting] = Run::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { run: Run::from_settings(settings)? })
    }
}

run_rules! {
    refuse WALL_MISSING on "wall_density": "name a tube in the setting `tube`, or give wall_density and wall_heat_capacity";
    notice NEVER_REACHED on "target_temperature": "the water comes to rest before it reaches this temperature, or moves away from it";
}

/// Runge-Kutta steps of the temperature after a time.
const STEPS: u32 = 32;

impl PipeCoolDown {
    /// Density in kg/m³ and heat capacity in J/(kg K) of the wall.
    fn wall(&self, input: &PipeCoolDownInput) -> (f64, f64) {
        let tube = self.run.tube;
        let or = |value: f64, named: Option<f64>| if value.is_nan() { named.unwrap_or(f64::NAN) } else { value };
        (or(input.wall_density.si(), tube.map(|t| t.wall_density)), or(input.wall_heat_capacity.si(), tube.map(|t| t.wall_heat_capacity)))
    }
}

impl Calculation for PipeCoolDown {
    type Input = PipeCoolDownInput;
    type Output = PipeCoolDownResult;
    const INFO: Info = Info {
        name: "pipe_cool_down",
        title: "Cool-down of standing water in a pipe run",
        summary: "Time in which the standing water of a run cools to a temperature, its temperature after a time, and the heat the run \
                  holds. The loss follows the temperature; water and wall are taken as one mass.",
        sources: &[FILM_SOURCE, VERTICAL_SOURCE, WIND_SOURCE, AIR_SOURCE, WATER_SOURCE],
        accuracy: "As the heat loss of the run: 15 % of the time for a bare run in still air, 5 to 10 % insulated, 30 % upright. The \
                   heat in the insulation itself is left out (a few per cent with thick insulation); ends and fittings too.",
        cautions: &["Water above about 50 °C can scald: a pipe that has cooled on its surface may still hold hotter water."],
        checked_against: "heat/pipe_standing_cooldown.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn check(&self, input: &PipeCoolDownInput) -> Raised {
        let (density, heat_capacity) = self.wall(input);
        run_rules(self.run.findings(&input.given(input.length.si()), input.start_temperature.si()))
            .when(WALL_MISSING, density.is_nan() | heat_capacity.is_nan())
    }

    #[inline]
    fn review(&self, _input: &PipeCoolDownInput, output: &PipeCoolDownResult) -> Raised {
        Raised::NONE.when(NEVER_REACHED, output.time_to_target.si().is_nan())
    }

    fn compute<W: Working>(&self, input: &PipeCoolDownInput, working: &mut W) -> PipeCoolDownResult {
        let given = input.given(input.length.si());
        let section = self.run.section(&given);
        let water = heating_water(given.water_pressure, input.start_temperature.si());
        let (density, heat_capacity) = self.wall(input);
        let (bore, outside_diameter) = (Length::from_si(section.bore), Length::from_si(section.outside_diameter));
        let (water_density, water_heat_capacity) =
            (MassDensity::from_si(water.density), SpecificHeatCapacity::from_si(water.specific_heat_capacity));
        let (wall_density, wall_heat_capacity) = (MassDensity::from_si(density), SpecificHeatCapacity::from_si(heat_capacity));
        step!(working, let bore_area: "A_w" as Area = 0.25 * PI * bore * bore, "geometry");
        step!(working, let wall_area: "A_p" as Area = 0.25 * PI * outside_diameter * outside_diameter - bore_area, "geometry");
        step!(working, let water_capacity: "C_w" as HeatCapacityPerLength = bore_area * water_density * water_heat_capacity, "IAPWS SR6-08 at the start temperature");
        step!(working, let wall_capacity: "C_p" as HeatCapacityPerLength = wall_area * wall_density * wall_heat_capacity, "definition");
        let (start, target) = (input.start_temperature.si(), input.target_temperature.si());
        let rest = self.run.rest_temperature(&section);
        let capacity = (water_capacity + wall_capacity).si();
        let decline = |temperature: f64| self.run.loss(&section, temperature, 0.0) / capacity;
        step!(working, let heat_loss_at_start: "q_1" in WATT_PER_METRE = PowerPerLength::from_si(self.run.loss(&section, start, 0.0)), "heat balance of the surface, as pipe_heat_loss");
        let start_excess = TemperatureInterval::from_si(start - rest);
        step!(working, let excess: "\\Delta t_1" = start_excess, "start less the temperature at rest");
        step!(working, let constant: "\\tau_1" as Time in MINUTE = (water_capacity + wall_capacity) * excess / heat_loss_at_start, "definition");
        step!(working, let time_to_target: "\\tau" in MINUTE = Time::from_si(stretch_between(start, target, rest, decline)), "C dt/dtau = -q(t) integrated");
        step!(working, let heat_held: "E" as Energy = (water_capacity + wall_capacity) * excess * input.length, "definition");
        let reached = !time_to_target.si().is_nan();
        let by_exponential = constant.si() * ln((start - rest) / (target - rest));
        let asked = input.elapsed_time.si();
        PipeCoolDownResult {
            time_to_target,
            temperature_after: ThermodynamicTemperature::from_si(if asked.is_nan() {
                f64::NAN
            } else {
                temperature_after(start, rest, asked, STEPS, decline)
            }),
            water_capacity,
            wall_capacity,
            heat_loss_at_start,
            time_constant: if start == rest { Time::from_si(f64::NAN) } else { constant },
            time_to_target_by_exponential: Time::from_si(if reached { by_exponential } else { f64::NAN }),
            heat_held,
        }
    }

    fn tables(&self, input: &PipeCoolDownInput) -> Vec<Table> {
        const PARTS: u32 = 40;
        const TIME_CONSTANTS: f64 = 3.0;
        let given = input.given(input.length.si());
        let section = self.run.section(&given);
        let found = self.compute(input, &mut Silent);
        let capacity = (found.water_capacity + found.wall_capacity).si();
        let rest = self.run.rest_temperature(&section);
        let start = input.start_temperature.si();
        let loss = |temperature: f64| self.run.loss(&section, temperature, 0.0);
        let span = TIME_CONSTANTS * found.time_constant.si();
        if !span.is_finite() {
            return Vec::new();
        }
        let part = span / f64::from(PARTS);
        let mut temperature = start;
        let (mut times, mut temperatures, mut losses) = (Vec::new(), Vec::new(), Vec::new());
        for i in 0..=PARTS {
            if i > 0 {
                temperature = temperature_after(temperature, rest, part, 2, |t| loss(t) / capacity);
            }
            times.push(part * f64::from(i));
            temperatures.push(temperature);
            losses.push(loss(temperature));
        }
        alloc::vec![Table {
            name: "cooling",
            row_names: Vec::new(),
            columns: alloc::vec![
                Column { name: "time".into(), unit: &MINUTE, values: times },
                Column { name: "water_temperature".into(), unit: &DEGREE_CELSIUS, values: temperatures },
                Column { name: "heat_loss_per_length".into(), unit: &WATT_PER_METRE, values: losses },
            ],
        }]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::types::{Ratio, ThermalConductivity};
    use crate::record::Record;
    use flamewright_reference::rows;

    const ZERO_CELSIUS: f64 = 273.15;

    fn celsius(t: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::from_si(t + ZERO_CELSIUS)
    }

    fn bare(start: f64, target: f64, air: f64) -> PipeCoolDownInput {
        PipeCoolDownInput {
            start_temperature: celsius(start),
            target_temperature: celsius(target),
            air_temperature: celsius(air),
            outside_diameter: Length::from_si(0.022),
            wall_thickness: Length::from_si(0.0009),
            wall_conductivity: ThermalConductivity::from_si(385.0),
            wall_density: MassDensity::from_si(8933.0),
            wall_heat_capacity: SpecificHeatCapacity::from_si(385.0),
            emissivity: Ratio::from_si(0.9),
            ..PipeCoolDownInput::unset()
        }
    }

    #[test]
    fn cooling_agrees_with_the_reference() {
        for row in rows("heat/pipe_standing_cooldown.csv") {
            let at = |target: f64| PipeCoolDownInput {
                outside_diameter: Length::from_si(row.number("od_mm") * 1e-3),
                wall_thickness: Length::from_si(row.number("wall_mm") * 1e-3),
                wall_conductivity: ThermalConductivity::from_si(row.number("k_wall_W_mK")),
                wall_density: MassDensity::from_si(row.number("metal_density_kg_m3")),
                wall_heat_capacity: SpecificHeatCapacity::from_si(row.number("metal_cp_J_kgK")),
                insulation_thickness: Length::from_si(row.number("insulation_mm") * 1e-3),
                insulation_conductivity: ThermalConductivity::from_si(row.maybe("k_insulation_W_mK").unwrap_or(f64::NAN)),
                emissivity: Ratio::from_si(row.number("emissivity_outer")),
                ..bare(row.number("T_start_C"), target, row.number("T_air_C"))
            };
            for target in [60.0, 50.0, 40.0, 30.0] {
                let input = at(target);
                let result = PipeCoolDown::default().evaluate(&input).unwrap();
                let close = |got: f64, column: &str, tolerance: f64| {
                    let wanted = row.number(column);
                    assert!((got / wanted - 1.0).abs() < tolerance, "{} {column}: {got} is not {wanted}", row.place);
                };
                close(result.time_to_target.si(), &std::format!("t_to_{target}C_s"), 6e-5);
                close(result.water_capacity.si(), "C_water_J_mK", 6e-5);
                close(result.wall_capacity.si(), "C_metal_J_mK", 1e-6);
                close(result.heat_loss_at_start.si(), "q_start_W_m", 1e-5);
                close(result.time_constant.si(), "tau_linear_s", 6e-5);
                if target == 40.0 {
                    close(result.time_to_target_by_exponential.si(), "t_to_40C_linear_s", 6e-5);
                }
                // There and back: after that time the water has that temperature.
                let back = PipeCoolDownInput { elapsed_time: result.time_to_target, ..input };
                let after = PipeCoolDown::default().evaluate(&back).unwrap().temperature_after.si();
                assert!((after - ZERO_CELSIUS - target).abs() < 1e-6, "{} {after}", row.place);
            }
        }
    }

    #[test]
    fn what_cannot_be_reached_is_said() {
        let run = PipeCoolDown::default();
        for (start, target, air) in [(70.0, 15.0, 20.0), (70.0, 80.0, 20.0), (10.0, 30.0, 20.0)] {
            let result = run.evaluate(&bare(start, target, air)).unwrap();
            assert!(result.time_to_target.si().is_nan());
            assert!(result.notices().iter().any(|n| n.code == "NEVER_REACHED"));
        }
        assert_eq!(run.evaluate(&bare(70.0, 70.0, 20.0)).unwrap().time_to_target.si(), 0.0);
        // Cold water warms.
        assert!(run.evaluate(&bare(10.0, 15.0, 20.0)).unwrap().time_to_target.si() > 0.0);
        let resting = run.evaluate(&bare(20.0, 15.0, 20.0)).unwrap();
        assert!(resting.time_constant.si().is_nan() && resting.heat_held.si() == 0.0);
        let mut plastic = bare(70.0, 40.0, 20.0);
        plastic.wall_density = MassDensity::from_si(f64::NAN);
        assert!(std::format!("{}", run.evaluate(&plastic).unwrap_err()).contains("tube"));
    }

    #[test]
    fn waiting_twice_is_waiting_once_as_long() {
        let run = PipeCoolDown::default();
        let whole = run.evaluate(&bare(80.0, 30.0, 20.0)).unwrap();
        let first = run.evaluate(&bare(80.0, 50.0, 20.0)).unwrap();
        let second = run.evaluate(&bare(50.0, 30.0, 20.0)).unwrap();
        // The heat capacity of water is taken at each start: compare for one capacity.
        let capacity = |r: &PipeCoolDownResult| (r.water_capacity + r.wall_capacity).si();
        let joined = first.time_to_target.si() + second.time_to_target.si() * capacity(&whole) / capacity(&second);
        assert!((joined / whole.time_to_target.si() - 1.0).abs() < 1e-9);
        // The trace falls from the start over three time constants, and says what the results say.
        let table = run.tables(&bare(80.0, 30.0, 20.0)).remove(0);
        let [times, temperatures, losses] = [0, 1, 2].map(|column| &table.columns[column].values);
        assert_eq!((times[0], temperatures[0]), (0.0, 80.0 + ZERO_CELSIUS));
        assert!(temperatures.windows(2).all(|pair| pair[1] < pair[0]));
        assert!((times.last().unwrap() / (3.0 * whole.time_constant.si()) - 1.0).abs() < 1e-12);
        assert!((losses[0] / whole.heat_loss_at_start.si() - 1.0).abs() < 1e-12);
        for row in [1, 7, 40] {
            let waited = PipeCoolDownInput { elapsed_time: Time::from_si(times[row]), ..bare(80.0, 30.0, 20.0) };
            let after = run.evaluate(&waited).unwrap().temperature_after.si();
            assert!((temperatures[row] - after).abs() < 1e-4, "{row}: {} and {after}", temperatures[row]);
        }
    }
}
