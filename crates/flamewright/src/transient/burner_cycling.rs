//! The calculation `burner_cycling`: on and off times of a burner on one mass of metal and water.

use super::cool_down::column;
use super::lump::{temperature_after, time_between};
use super::network::HeatLoss;
use crate::calculation::{Calculation, Info, Raised, Source, Table};
use crate::quantity::types::{
    Frequency, HeatCapacity, Power, Ratio, TemperatureInterval, ThermalConductance, ThermodynamicTemperature, Time, Volume,
};
use crate::quantity::units::{KELVIN, KILOJOULE_PER_KELVIN, LITRE, PER_HOUR, SECOND};
use crate::quantity::{Value, units};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};
use alloc::vec::Vec;

/// A burner that a thermostat switches, and the load on the mass it heats.
#[record]
pub struct BurnerCyclingState {
    /// Heat capacity of all that warms and cools together: block, water, and what stays open to it.
    #[field("C", KILOJOULE_PER_KELVIN, 0.001..=1e6, usual = 1.0..=5000.0)]
    pub heat_capacity: HeatCapacity,
    /// Output of the burner to the water.
    #[field("P", KILOWATT, 0.01..=1e4, usual = 1.0..=500.0)]
    pub burner_output: Power,
    /// Load that does not depend on the temperature.
    #[field("P_L", KILOWATT, 0.0..=1e4, default = 0.0)]
    pub load: Power,
    /// Load in proportion to the temperature over the room.
    #[field("H", WATT_PER_KELVIN, 0.0..=1e5, default = 0.0)]
    pub load_conductance: ThermalConductance,
    /// Output of the emitters at 50 K over the room.
    #[field("P_{50}", KILOWATT, 0.0..=1e4, default = 0.0)]
    pub emitter_output: Power,
    /// Exponent of the emitters (EN 442).
    #[field("n", ONE, 1.0..=2.0, default = 1.3, usual = 1.0..=1.5)]
    pub emitter_exponent: Ratio,
    /// Room temperature.
    #[field("t_A", DEGREE_CELSIUS, -30.0..=60.0, default = 20.0, usual = 0.0..=35.0)]
    pub room_temperature: ThermodynamicTemperature,
    /// Temperature at which the thermostat stops the burner, on rising temperature.
    #[field("t_{off}", DEGREE_CELSIUS, 0.0..=150.0, usual = 25.0..=95.0)]
    pub cut_out_temperature: ThermodynamicTemperature,
    /// Temperature at which it lights the burner again, on falling temperature.
    #[field("t_{on}", DEGREE_CELSIUS, 0.0..=150.0, usual = 20.0..=90.0)]
    pub cut_in_temperature: ThermodynamicTemperature,
    /// Least time the burner stays off.
    #[field("\\tau_{min}", MINUTE, 0.0..=120.0, default = 0.0)]
    pub anti_cycling_delay: Time,
    /// Shortest on-time wanted.
    #[field("\\tau_w", MINUTE, 0.01..=600.0, absent = "no on-time asked for")]
    pub wanted_on_time: Time,
}

/// How the burner cycles.
#[record]
pub struct BurnerCyclingResult {
    /// Difference of the two operating values.
    #[field("\\Delta t", KELVIN)]
    pub differential: TemperatureInterval,
    /// Time the burner burns in each cycle.
    #[field("\\tau_{on}", SECOND, absent = "the burner never stops")]
    pub on_time: Time,
    /// Time it stands in each cycle.
    #[field("\\tau_{off}", SECOND, absent = "the burner never lights again")]
    pub off_time: Time,
    /// Time of a whole cycle.
    #[field("\\tau", SECOND, absent = "no cycle")]
    pub period: Time,
    /// Starts per hour.
    #[field("z", PER_HOUR, absent = "no cycle")]
    pub start_rate: Frequency,
    /// Share of the time the burner burns.
    #[field("d", PERCENT, absent = "no cycle")]
    pub duty: Ratio,
    /// Temperature at which the burner lights; below the cut-in where the delay holds it back.
    #[field("t_{low}", DEGREE_CELSIUS, absent = "the burner never lights again")]
    pub lowest_temperature: ThermodynamicTemperature,
    /// Heat capacity that gives the on-time wanted.
    #[field("C_w", KILOJOULE_PER_KELVIN, absent = "no on-time asked for, or no cycle")]
    pub heat_capacity_needed: HeatCapacity,
    /// Water to add for it; negative where there is more than enough.
    #[field("V_w", LITRE, absent = "no on-time asked for, or no cycle")]
    pub water_needed: Volume,
}

/// Cycling of a burner on one mass under a steady load.
#[derive(Clone, Copy, Debug)]
pub struct BurnerCycling;

no_settings!(BurnerCycling);

rules! {
    refuse NO_DIFFERENTIAL on "cut_in_temperature": super::plant::NO_DIFFERENTIAL_TEXT;
    notice NEVER_STOPS on "on_time": "the load takes all the burner gives before the cut-out is reached: the burner burns without stopping";
    notice NEVER_LIGHTS on "off_time": "the mass never falls to the cut-in: there is no load at that temperature";
    notice HELD_BACK on "lowest_temperature": "the anti-cycling delay holds the burner back: the temperature falls below the cut-in";
}

/// Density times specific heat capacity of water near 65 °C, J/(m3 K): 980 kg/m3 and 4185 J/(kg K), IAPWS-IF97 rounded.
const WATER_HEAT_CAPACITY: f64 = 980.0 * 4185.0;

struct Cycle {
    on: f64,
    off: f64,
    lowest: f64,
}

fn cycle(input: &BurnerCyclingState, cut_in: f64) -> Cycle {
    let law = HeatLoss::power_law(input.emitter_output.si(), input.emitter_exponent.si());
    let loss = HeatLoss { linear: law.linear + input.load_conductance.si(), ..law };
    let (capacity, room, load) = (input.heat_capacity.si(), input.room_temperature.si(), input.load.si());
    let cut_out = input.cut_out_temperature.si();
    let finite = |time: f64| if time.is_finite() { time } else { f64::NAN };
    let natural = finite(time_between(capacity, &loss, -load, room, cut_out, cut_in));
    let delay = input.anti_cycling_delay.si();
    let held = natural < delay;
    let lowest = if held { temperature_after(capacity, &loss, -load, room, cut_out, delay) } else { cut_in };
    let on = finite(time_between(capacity, &loss, input.burner_output.si() - load, room, lowest, cut_out));
    Cycle { on, off: if held { delay } else { natural }, lowest: if natural.is_nan() { f64::NAN } else { lowest } }
}

impl Calculation for BurnerCycling {
    type Input = BurnerCyclingState;
    type Output = BurnerCyclingResult;
    const INFO: Info = Info {
        name: "burner_cycling",
        title: "Cycling of a burner",
        summary: "On and off times, starts per hour and duty of a burner under a steady load, the effect of the differential, and the water content for a wanted on-time; the heated mass has one temperature.",
        sources: &[
            Source::new("first law for one mass", "on and off times"),
            Source::new("EN 442 (exponent form, from memory)", "emitter load"),
            Source::new("IAPWS R7-97(2012) near 65 °C, rounded", "980 kg/m³ and 4185 J/(kg·K) for the water to add"),
        ],
        accuracy: "Exact to about 1e-11 for one mass. A real circuit has a delay between flow and return that shortens the on-time and lengthens the off-time: see circuit_cycling.",
        cautions: &[],
        checked_against: "heat/burner_cycling.csv, trade/sensors.csv (thermostat_cycle_lumped)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    fn check(&self, input: &BurnerCyclingState) -> Raised {
        Raised::NONE.when(NO_DIFFERENTIAL, input.cut_in_temperature.si() >= input.cut_out_temperature.si())
    }

    fn review(&self, input: &BurnerCyclingState, output: &BurnerCyclingResult) -> Raised {
        Raised::NONE
            .when(NEVER_STOPS, output.on_time.si().is_nan())
            .when(NEVER_LIGHTS, output.off_time.si().is_nan())
            .when(HELD_BACK, output.lowest_temperature.si() < input.cut_in_temperature.si())
    }

    fn compute<W: Working>(&self, input: &BurnerCyclingState, working: &mut W) -> BurnerCyclingResult {
        let found = cycle(input, input.cut_in_temperature.si());
        let heat_capacity = input.heat_capacity;
        let water_heat_capacity = HeatCapacity::from_si(WATER_HEAT_CAPACITY) / Volume::from_si(1.0);
        let fall = TemperatureInterval::from_si(input.cut_out_temperature.si() - input.cut_in_temperature.si());
        step!(working, let differential: "\\Delta t" in KELVIN = fall, "difference of the operating values");
        step!(working, let on_time: "\\tau_{on}" in SECOND = Time::from_si(found.on), "integral of C dT over burner output less load");
        step!(working, let off_time: "\\tau_{off}" in SECOND = Time::from_si(found.off), "integral of C dT over the load");
        step!(working, let period: "\\tau" in SECOND = on_time + off_time, "definition");
        step!(working, let start_rate: "z" in PER_HOUR = 1.0 / period, "definition");
        step!(working, let duty: "d" = on_time / period, "definition");
        let wanted_on_time = input.wanted_on_time;
        step!(working, let heat_capacity_needed: "C_w" in KILOJOULE_PER_KELVIN = heat_capacity * wanted_on_time / on_time, "the on-time is in proportion to the heat capacity");
        step!(working, let water_needed: "V_w" in LITRE = (heat_capacity_needed - heat_capacity) / water_heat_capacity, "definition of the heat capacity");
        BurnerCyclingResult {
            differential,
            on_time,
            off_time,
            period,
            start_rate: Frequency::from_si(start_rate.value),
            duty,
            lowest_temperature: ThermodynamicTemperature::from_si(found.lowest),
            heat_capacity_needed,
            water_needed,
        }
    }

    /// The effect of the differential: the cut-out stays, the cut-in moves.
    fn tables(&self, input: &BurnerCyclingState) -> Vec<Table> {
        let differentials: Vec<f64> = (1..=20).map(f64::from).collect();
        let cycles: Vec<Cycle> =
            differentials.iter().map(|differential| cycle(input, input.cut_out_temperature.si() - differential)).collect();
        alloc::vec![Table {
            name: "effect of the differential",
            row_names: Vec::new(),
            columns: alloc::vec![
                column("differential", &units::KELVIN, differentials),
                column("on time", &units::SECOND, cycles.iter().map(|cycle| cycle.on).collect()),
                column("off time", &units::SECOND, cycles.iter().map(|cycle| cycle.off).collect()),
                column("starts per hour", &units::PER_HOUR, cycles.iter().map(|cycle| 1.0 / (cycle.on + cycle.off)).collect()),
            ],
        }]
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
    fn one_lump_rows_of_the_reference() {
        let mut seen = 0;
        for row in rows("heat/burner_cycling.csv").iter().filter(|row| row.text("model") == "one lump") {
            let n = |name: &str| row.number(name);
            let or_zero = |name: &str| row.maybe(name).unwrap_or(0.0);
            let input = BurnerCyclingState {
                heat_capacity: HeatCapacity::from_si(n("C_J_K")),
                burner_output: Power::from_si(n("burner_power_W")),
                load_conductance: ThermalConductance::from_si(or_zero("load_K_W_per_K")),
                emitter_output: Power::from_si(or_zero("load_P50_W")),
                emitter_exponent: Ratio::from_si(n("load_n")),
                room_temperature: celsius(n("T_air_C")),
                cut_out_temperature: celsius(n("T_off_C")),
                cut_in_temperature: celsius(n("T_on_C")),
                ..BurnerCyclingState::unset()
            };
            let got = BurnerCycling.evaluate(&input).unwrap();
            let close = |got: f64, name: &str| assert!((got / n(name) - 1.0).abs() < 5e-9, "{} {name} {got}", row.place);
            close(got.on_time.si(), "time_on_s");
            close(got.off_time.si(), "time_off_s");
            close(got.period.si(), "period_s");
            close(got.start_rate.si() * 3600.0, "starts_per_hour");
            close(got.duty.si(), "duty");
            seen += 1;
        }
        assert_eq!(seen, 5);
    }

    #[test]
    fn constant_load_rows_of_the_reference() {
        for row in rows_of_kind("trade/sensors.csv", "thermostat_cycle_lumped") {
            let inputs = row.inputs();
            let n = |name: &str| inputs[name].0.parse::<f64>().unwrap();
            let input = BurnerCyclingState {
                heat_capacity: HeatCapacity::from_si(n("C")),
                burner_output: Power::from_si(n("boiler_output") * 1e3),
                load: Power::from_si(n("load") * 1e3),
                cut_out_temperature: celsius(70.0),
                cut_in_temperature: celsius(70.0 - n("differential")),
                ..BurnerCyclingState::unset()
            };
            let got = BurnerCycling.evaluate(&input).unwrap();
            let value = match row.text("output") {
                "t_on" => got.on_time.si(),
                "t_off" => got.off_time.si(),
                "duty" => got.duty.si(),
                _ => got.start_rate.si() * 3600.0,
            };
            assert!(row.agrees(value), "{}: {value}", row.place);
        }
    }

    #[test]
    fn delay_wanted_time_and_limits() {
        let base = BurnerCyclingState::read([
            ("heat_capacity", "60 kJ/K"),
            ("burner_output", "15 kW"),
            ("load", "2 kW"),
            ("cut_out_temperature", "76 degC"),
            ("cut_in_temperature", "70 degC"),
            ("wanted_on_time", "3 min"),
        ])
        .unwrap();
        let plain = BurnerCycling.evaluate(&base).unwrap();
        assert!((plain.heat_capacity_needed.si() / (60_000.0 * 180.0 / plain.on_time.si()) - 1.0).abs() < 1e-12);
        // With the water added the on-time is the one wanted.
        let more = BurnerCyclingState { heat_capacity: plain.heat_capacity_needed, ..base };
        assert!((BurnerCycling.evaluate(&more).unwrap().on_time.si() - 180.0).abs() < 1e-9);
        // Water of 65 °C holds what is missing.
        let water = crate::water::heating_water(2e5, 338.15);
        let held = plain.water_needed.si() * water.density * water.specific_heat_capacity;
        assert!((held / (plain.heat_capacity_needed.si() - 60_000.0) - 1.0).abs() < 1.5e-3, "{held}");
        // 300 s off at 2 kW are 10 K on 60 kJ/K.
        let held = BurnerCycling.evaluate(&BurnerCyclingState { anti_cycling_delay: Time::from_si(300.0), ..base }).unwrap();
        assert!((held.lowest_temperature.si() - 339.15).abs() < 1e-9);
        assert_eq!(held.off_time.si(), 300.0);
        assert!((held.on_time.si() - 10.0 * 60_000.0 / 13_000.0).abs() < 1e-9);
        assert_eq!(held.notices()[0].code, "HELD_BACK");
        let never = BurnerCycling.evaluate(&BurnerCyclingState { load: Power::from_si(15_000.0), ..base }).unwrap();
        assert!(never.on_time.si().is_nan() && never.notices()[0].code == "NEVER_STOPS");
        let idle = BurnerCycling.evaluate(&BurnerCyclingState { load: Power::from_si(0.0), ..base }).unwrap();
        assert!(idle.off_time.si().is_nan() && idle.notices().iter().any(|notice| notice.code == "NEVER_LIGHTS"));
        let none = BurnerCyclingState { cut_in_temperature: base.cut_out_temperature, ..base };
        assert_eq!(BurnerCycling.evaluate(&none).err().unwrap().code(), "NO_DIFFERENTIAL");
        // Twice the differential, half the starts, where the load is constant.
        let table = &BurnerCycling.tables(&base)[0];
        let starts = &table.columns[3].values;
        assert!((starts[4] / starts[9] - 2.0).abs() < 1e-9);
    }
}
