//! Every row of the reference tables of this area, through the calculations and their texts.

use super::*;
use crate::calculation::Calculation;
use crate::catalogue::{Bare, erase, evaluate};
use crate::node::Node;
use crate::quantity::types::{ElectricalResistance, TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::unit::read_unit;
use crate::quantity::{AbsolutePressure, GaugePressure, LimbMovement, Value};
use crate::record::Record;
use crate::uncertainty::{Covariance, first_order};
use flamewright_reference::{Row, rows, rows_of_kind};
use std::format;
use std::string::{String, ToString};
use std::vec::Vec;

const PRESSURE: &str = "trade/pressure.csv";
const SENSORS: &str = "trade/sensors.csv";

/// Settings and fields by name, from the inputs of a row (renamed) and from fixed texts.
struct Call {
    calculation: &'static str,
    given: Vec<(String, Node)>,
}

impl Call {
    fn new(calculation: &'static str) -> Self {
        Self { calculation, given: Vec::new() }
    }
    fn fixed(mut self, name: &str, text: &str) -> Self {
        self.given.push((name.to_string(), text.into()));
        self
    }
    fn list(mut self, name: &str, texts: &[String]) -> Self {
        self.given.push((name.to_string(), Node::List(texts.iter().map(|t| t.as_str().into()).collect())));
        self
    }
    /// Takes inputs of the row as `(name there, name here)`.
    fn from(mut self, row: &Row, names: &[(&str, &str)]) -> Self {
        let inputs = row.inputs();
        for (there, here) in names {
            let (value, unit) = &inputs[*there];
            let text = if unit == "text" || unit == "1" { value.clone() } else { format!("{value} {unit}") };
            self.given.push(((*here).to_string(), Node::Text(text)));
        }
        self
    }
    /// The output in SI.
    fn si(&self, output: &str) -> f64 {
        let outcome = evaluate(self.calculation, &Node::Table(self.given.clone()), Bare::Refused);
        let outcome = outcome.unwrap_or_else(|e| panic!("{}: {e}", self.calculation));
        outcome.get(output).unwrap_or_else(|| panic!("{} has no {output}", self.calculation))
    }
    /// Checks an output against the row's value, in the row's unit.
    fn agrees(&self, row: &Row, output: &str) {
        agrees(row, self.si(output));
    }
    fn refused(&self) -> String {
        let outcome = evaluate(self.calculation, &Node::Table(self.given.clone()), Bare::Refused);
        format!("{}", outcome.err().unwrap_or_else(|| panic!("{} accepted {:?}", self.calculation, self.given)))
    }
}

fn agrees(row: &Row, si: f64) {
    let unit = read_unit(&row.text("unit").replace("/m3", "/m^3")).unwrap_or_else(|| panic!("{}: {}", row.place, row.text("unit")));
    // A row in K is a difference, one in degC a point: both come out of the unit itself.
    let shown = (si - unit.offset) / unit.factor;
    assert!(row.agrees(shown), "{} {}: {shown}, not {}", row.place, row.text("output"), row.text("value"));
}

#[test]
fn named_units_and_conversions() {
    for row in rows_of_kind(PRESSURE, "unit_factor").iter().chain(&rows_of_kind(PRESSURE, "unit_conversion")) {
        for (value, unit) in row.inputs().values() {
            let from = read_unit(unit).unwrap_or_else(|| panic!("{}: {unit}", row.place));
            let to = read_unit(row.text("unit").replace("m/s2", "m/s^2").as_str()).unwrap();
            assert_eq!(from.dimension, to.dimension, "{}", row.place);
            let got = value.parse::<f64>().unwrap() * from.factor / to.factor;
            assert!(row.agrees(got), "{}: {got}", row.place);
        }
    }
    // As a person writes it.
    let pressure: GaugePressure = "8 inH2O_60F".parse().unwrap();
    assert!((pressure.si() - 8.0 * 248.843).abs() < 1e-9);
}

#[test]
fn columns_of_liquid() {
    for row in rows(PRESSURE) {
        match row.text("kind") {
            "unit_factor" | "unit_conversion" => {}
            "water_density" => Call::new("liquid_column")
                .fixed("level_difference", "100 mm")
                .from(&row, &[("T", "liquid_temperature"), ("p", "barometric_pressure")])
                .agrees(&row, "liquid_density"),
            "local_gravity" => Call::new("local_gravity").from(&row, &[("latitude", "latitude"), ("h", "height")]).agrees(&row, "gravity"),
            "u_gauge_reading" => {
                let output = match row.text("output") {
                    "p" | "p_mbar" => "pressure",
                    "p_conventional" => "pressure_conventional",
                    "p_with_air_buoyancy" => "pressure_less_air",
                    other => other,
                };
                Call::new("liquid_column")
                    .from(&row, &[("level_difference", "level_difference"), ("T_water", "liquid_temperature"), ("g", "gravity")])
                    .agrees(&row, output);
            }
            "u_gauge_two_limbs" => {
                let call = Call::new("u_gauge").from(&row, &[("limb_down", "limb_down"), ("limb_up", "limb_up")]);
                match row.text("output") {
                    "p_conventional" => call.agrees(&row, "pressure_conventional"),
                    // What a column as long as the movement of one limb would be.
                    "wrong_if_one_limb" => {
                        Call::new("liquid_column").from(&row, &[("limb_down", "level_difference")]).agrees(&row, "pressure_conventional");
                    }
                    other => call.agrees(&row, other),
                }
            }
            "inclined_manometer" => Call::new("inclined_gauge")
                .from(&row, &[("length", "length"), ("angle", "angle"), ("relative_density", "relative_density")])
                .agrees(&row, "pressure"),
            "gauge_to_absolute" => Call::new("absolute_pressure")
                .from(&row, &[("p_gauge", "gauge_pressure"), ("p_atm", "barometric_pressure")])
                .agrees(&row, "absolute_pressure"),
            "u_gauge_uncertainty" => u_gauge_uncertainty(&row),
            other => panic!("{}: {other}", row.place),
        }
    }
}

/// The standard uncertainty of an output, from those of inputs by name, to first order.
fn propagated<C: Calculation>(calculation: C, input: &C::Input, uncertain: &[(&str, f64)], output: &str) -> f64 {
    let standard: Vec<f64> = C::Input::FIELDS
        .iter()
        .map(|field| uncertain.iter().find(|(name, _)| *name == field.name).map_or(0.0, |(_, standard)| *standard))
        .collect();
    let place = C::Output::FIELDS.iter().position(|field| field.name == output).unwrap();
    first_order(&*erase(calculation), input.to_array().as_ref(), &Covariance::independent(&standard)).standard(place)
}

/// The rows state rectangular half-widths of both limbs and of the temperature.
fn u_gauge_uncertainty(row: &Row) {
    if row.text("output") == "p" {
        return Call::new("liquid_column")
            .from(row, &[("level_difference", "level_difference"), ("T_water", "liquid_temperature")])
            .agrees(row, "pressure");
    }
    let inputs = row.inputs();
    let number = |name: &str| inputs[name].0.parse::<f64>().unwrap();
    let limb = LimbMovement::from_si(number("level_difference") / 2e3);
    let reading = UGaugeReading {
        limb_down: limb,
        limb_up: limb,
        liquid_temperature: ThermodynamicTemperature::from_si(number("T_water") + 273.15),
        ..UGaugeReading::unset()
    };
    let limb_uncertainty = number("limb_half_division") * 1e-3 / 3f64.sqrt();
    let uncertain =
        [("limb_down", limb_uncertainty), ("limb_up", limb_uncertainty), ("liquid_temperature", number("half_width_T") / 3f64.sqrt())];
    agrees(row, propagated(UGauge { liquid: GaugeLiquid::Water }, &reading, &uncertain, "pressure"));
}

/// The four-term curve of the rows, as settings.
fn four_term(call: Call) -> Call {
    call.fixed("curve", "four_term")
        .fixed("reference_resistance", "10 kohm")
        .list("coefficients", &["3.354016e-3 1/K", "2.569850e-4 1/K", "2.620131e-6 1/K", "6.383091e-8 1/K"].map(String::from))
}

#[test]
fn sensors() {
    const PLATINUM: &[(&str, &str)] = &[("t", "temperature"), ("R0", "resistance_at_zero")];
    for row in rows(SENSORS) {
        let output = row.text("output");
        match row.text("kind") {
            "pt100_table" | "pt1000_forward" => Call::new("platinum_resistance").from(&row, PLATINUM).agrees(&row, "resistance"),
            "pt100_inverse" => Call::new("platinum_temperature")
                .from(&row, &[("R", "resistance"), ("R0", "resistance_at_zero")])
                .agrees(&row, "temperature"),
            "pt_tolerance" => Call::new("platinum_resistance")
                .fixed("resistance_at_zero", "100 ohm")
                .from(&row, &[("t", "temperature"), ("class", "class")])
                .agrees(&row, "tolerance"),
            "pt_two_wire_lead_error" => Call::new("platinum_resistance")
                .from(&row, &[("t_true", "temperature"), ("R0", "resistance_at_zero"), ("R_lead_total", "lead_resistance")])
                .agrees(&row, if output == "error" { "lead_error" } else { "indicated_temperature" }),
            "typeK_table" => Call::new("thermocouple_voltage")
                .from(&row, &[("t", "temperature"), ("t_ref", "reference_junction_temperature")])
                .agrees(&row, if output == "emf" { "voltage" } else { output }),
            "typeK_inverse" => Call::new("thermocouple_temperature")
                .from(&row, &[("emf", "voltage"), ("t_ref", "reference_junction_temperature")])
                .agrees(&row, "temperature"),
            "typeK_cold_junction" => {
                let call = Call::new("thermocouple_temperature")
                    .from(&row, &[("emf_measured", "voltage"), ("t_ref", "reference_junction_temperature")]);
                match output {
                    "t" => call.agrees(&row, "temperature"),
                    "wrong_if_temperatures_added" => agrees(&row, call.si("temperature") + call.si("addition_error")),
                    other => panic!("{other}"),
                }
            }
            "typeK_tolerance" => {
                Call::new("thermocouple_voltage").from(&row, &[("t", "temperature"), ("class", "class")]).agrees(&row, "tolerance");
            }
            "ntc_beta_forward" => Call::new("thermistor_check")
                .fixed("curve", "beta")
                .from(&row, &[("R25", "reference_resistance"), ("beta", "beta"), ("t", "temperature")])
                .agrees(&row, "resistance"),
            "ntc_beta_inverse" => {
                let names = [("R25", "reference_resistance"), ("beta", "beta"), ("R", "resistance")];
                Call::new("thermistor_beta").from(&row, &names).agrees(&row, "temperature");
                Call::new("thermistor_temperature").fixed("curve", "beta").from(&row, &names).agrees(&row, "temperature");
            }
            "ntc_beta_from_two_points" => Call::new("thermistor_beta_of_points")
                .from(
                    &row,
                    &[("R1", "first_resistance"), ("t1", "first_temperature"), ("R2", "second_resistance"), ("t2", "second_temperature")],
                )
                .agrees(&row, "beta"),
            "steinhart_hart" => {
                let inputs = row.inputs();
                let coefficients = ["A", "B", "C"].map(|name| format!("{} {}", inputs[name].0, inputs[name].1));
                Call::new("thermistor_temperature")
                    .fixed("curve", "steinhart_hart")
                    .list("coefficients", &coefficients)
                    .from(&row, &[("R", "resistance")])
                    .agrees(&row, "temperature");
            }
            "ntc_four_term" => {
                let by_curve = four_term(Call::new("thermistor_temperature")).from(&row, &[("R", "resistance")]);
                let by_beta = Call::new("thermistor_beta")
                    .fixed("beta", "3977 K")
                    .from(&row, &[("R", "resistance"), ("R25", "reference_resistance")]);
                match output {
                    "t" => by_curve.agrees(&row, "temperature"),
                    "t_beta_3977" => by_beta.agrees(&row, "temperature"),
                    "beta_minus_four_term" => agrees(&row, by_beta.si("temperature") - by_curve.si("temperature")),
                    other => panic!("{other}"),
                }
            }
            "steinhart_hart_three_point_fit" => {
                let field = match output {
                    "A" => "coefficient_a",
                    "B" => "coefficient_b",
                    "C" => "coefficient_c",
                    "t_test" => "temperature",
                    other => panic!("{other}"),
                };
                Call::new("thermistor_fit")
                    .from(
                        &row,
                        &[
                            ("R1", "first_resistance"),
                            ("t1", "first_temperature"),
                            ("R2", "second_resistance"),
                            ("t2", "second_temperature"),
                            ("R3", "third_resistance"),
                            ("t3", "third_temperature"),
                            ("R_test", "resistance"),
                        ],
                    )
                    .agrees(&row, field);
            }
            "ntc_uncertainty" => ntc_uncertainty(&row),
            "thermostat_differential" | "thermostat_repeat_test" => {
                let inputs = row.inputs();
                let list = |name: &str| inputs[name].0.split('/').map(|t| format!("{t} degC")).collect::<Vec<_>>();
                let field = match output {
                    "mean_off" => "cut_out",
                    "mean_on" => "cut_in",
                    "mean_differential" => "differential",
                    "s_off" => "cut_out_repeatability",
                    "u_mean_off_type_A" => "cut_out_uncertainty",
                    other => other,
                };
                if row.text("kind") == "thermostat_differential" {
                    Call::new("thermostat_differential")
                        .from(&row, &[("t_off_rising", "cut_out_temperature"), ("t_on_falling", "cut_in_temperature")])
                        .agrees(&row, field);
                }
                Call::new("thermostat_test")
                    .list("cut_outs", &list("t_off_rising"))
                    .list("cut_ins", &list("t_on_falling"))
                    .agrees(&row, field);
            }
            // With `burner_cycling`, which covers them.
            "thermostat_cycle_lumped" => {}
            other => panic!("{}: {other}", row.place),
        }
    }
}

/// Rectangular tolerances of R25 and Beta, combined to first order.
fn ntc_uncertainty(row: &Row) {
    let inputs = row.inputs();
    let number = |name: &str| inputs[name].0.parse::<f64>().unwrap();
    let (reference, beta) = (number("R25"), number("beta"));
    let resistance = Call::new("thermistor_check")
        .fixed("curve", "beta")
        .from(row, &[("R25", "reference_resistance"), ("beta", "beta"), ("t", "temperature")])
        .si("resistance");
    let reading = BetaReading {
        resistance: ElectricalResistance::from_si(resistance),
        reference_resistance: ElectricalResistance::from_si(reference),
        beta: TemperatureInterval::from_si(beta),
        ..BetaReading::unset()
    };
    if row.text("output") == "sensitivity_pct_per_K" {
        return agrees(row, ThermistorBeta.evaluate(&reading).unwrap().sensitivity.si());
    }
    let rectangular = |value: f64, percent: f64| value * percent / 100.0 / 3f64.sqrt();
    let uncertain = [("reference_resistance", rectangular(reference, number("tol_R25"))), ("beta", rectangular(beta, number("tol_beta")))];
    agrees(row, propagated(ThermistorBeta, &reading, &uncertain, "temperature"));
}

#[test]
fn slips_are_refused_in_words() {
    let refused = |call: Call, expected: &str| {
        let message = call.refused();
        assert!(message.contains(expected), "{message}");
    };
    // One limb for two, both ways of slipping.
    refused(Call::new("u_gauge").fixed("limb_down", "105 mm"), "limb_up");
    refused(Call::new("liquid_column").fixed("level_difference", "105 mm one-limb"), "one-limb");
    refused(Call::new("u_gauge").fixed("limb_down", "105 mm").fixed("limb_up", "-105 mm"), "cannot rise in both limbs");
    // Gauge for absolute.
    refused(Call::new("absolute_pressure").fixed("gauge_pressure", "21 mbar(a)").fixed("barometric_pressure", "1013 mbar"), "absolute");
    refused(
        Call::new("absolute_pressure").fixed("gauge_pressure", "-1050 mbar").fixed("barometric_pressure", "1013 mbar"),
        "below the atmosphere",
    );
    // A temperature for a difference.
    refused(
        Call::new("thermistor_check")
            .fixed("curve", "beta")
            .fixed("reference_resistance", "10 kohm")
            .fixed("beta", "3977 K")
            .fixed("temperature", "60 degC")
            .fixed("temperature_tolerance", "2 degC"),
        "difference",
    );
    // Sensors: broken, shorted, wrong type, no liquid density.
    refused(Call::new("platinum_temperature").fixed("resistance", "10 ohm").fixed("resistance_at_zero", "100 ohm"), "short circuit");
    refused(Call::new("platinum_temperature").fixed("resistance", "1.2 kohm").fixed("resistance_at_zero", "100 ohm"), "open circuit");
    refused(
        Call::new("thermocouple_temperature").fixed("voltage", "70 mV").fixed("reference_junction_temperature", "20 degC"),
        "no temperature of this type",
    );
    refused(
        Call::new("thermocouple_temperature")
            .fixed("type", "B")
            .fixed("voltage", "-0.001 mV")
            .fixed("reference_junction_temperature", "20 degC"),
        "type B has none below",
    );
    refused(Call::new("thermocouple_voltage").fixed("type", "S").fixed("temperature", "-60 degC"), "does not reach this temperature");
    refused(Call::new("thermocouple_voltage").fixed("type", "X").fixed("temperature", "60 degC"), "X");
    refused(Call::new("liquid_column").fixed("liquid", "stated").fixed("level_difference", "10 mm"), "density");
    refused(Call::new("liquid_column").fixed("density", "784 kg/m3").fixed("level_difference", "10 mm"), "stated");
    refused(
        Call::new("thermistor_temperature")
            .fixed("curve", "points")
            .list("resistances", &["10 kohm", "12 kohm"].map(String::from))
            .list("temperatures", &["25 degC", "85 degC"].map(String::from))
            .fixed("resistance", "5 kohm"),
        "fall",
    );
    refused(Call::new("thermostat_test").list("cut_outs", &["74 degC".to_string()]).list("cut_ins", &["82 degC".to_string()]), "lags");
    refused(Call::new("thermostat_test").list("cut_outs", &[]).list("cut_ins", &["82 degC".to_string()]), "at least one reading");
    refused(Call::new("flame_supervision_voltage").fixed("open_circuit_voltage", "12 mV").fixed("loaded_voltage", "25 mV"), "exchanged");
    refused(Call::new("analyser_reading").fixed("reading", "4100 ppm").fixed("range_high", "4000 ppm"), "above the measuring range");
}

#[test]
fn every_thermocouple_and_its_class() {
    for kind in ["B", "E", "J", "K", "N", "R", "S", "T"] {
        let temperature = if kind == "T" { "350 degC" } else { "700 degC" };
        let class = if kind == "B" { "3" } else { "1" };
        let expectation = Call::new("thermocouple_voltage")
            .fixed("type", kind)
            .fixed("class", class)
            .fixed("temperature", temperature)
            .fixed("reference_junction_temperature", "23 degC");
        let millivolt = expectation.si("voltage") * 1e3;
        let back = Call::new("thermocouple_temperature")
            .fixed("type", kind)
            .fixed("class", class)
            .fixed("voltage", &format!("{millivolt:.17e} mV"))
            .fixed("reference_junction_temperature", "23 degC");
        let kelvin: f64 = if kind == "T" { 623.15 } else { 973.15 };
        assert!((back.si("temperature") - kelvin).abs() < 1e-9, "type {kind}");
        assert!((back.si("tolerance") - expectation.si("tolerance")).abs() < 1e-9, "type {kind}");
        assert!(back.si("tolerance") > 0.9 && back.si("tolerance") < 4.1, "type {kind}");
    }
    // Class 3 does not exist for type J.
    let none = Call::new("thermocouple_voltage").fixed("type", "J").fixed("class", "3").fixed("temperature", "20 degC");
    assert!(none.si("tolerance").is_nan());
}

#[test]
fn flame_supervision_and_analyser_by_hand() {
    let magnet = Call::new("flame_supervision_voltage")
        .fixed("open_circuit_voltage", "30 mV")
        .fixed("loaded_voltage", "12 mV")
        .fixed("drop_out_voltage", "3 mV")
        .fixed("closing_time", "18 s");
    assert!((magnet.si("holding_ratio") - 4.0).abs() < 1e-12);
    assert!((magnet.si("holding_margin") - 9e-3).abs() < 1e-15);
    assert!((magnet.si("loss_under_load") - 0.6).abs() < 1e-12);
    assert_eq!(magnet.si("closing_time"), 18.0);
    // 5 % of 200 ppm is 10 ppm, above the 5 ppm that hold at least; 1 ppm display.
    let cell = Call::new("analyser_reading")
        .fixed("reading", "200 ppm")
        .fixed("range_high", "4000 ppm")
        .fixed("resolution", "1 ppm")
        .fixed("accuracy_absolute", "5 ppm")
        .fixed("accuracy_relative", "5 %");
    assert!((cell.si("accuracy") - 10e-6).abs() < 1e-18);
    assert!((cell.si("standard_uncertainty") - 1e-6 * (100.0_f64 / 3.0 + 1.0 / 12.0).sqrt()).abs() < 1e-18);
    assert!((cell.si("share_of_range") - 0.05).abs() < 1e-12);
}

#[test]
fn notices_accompany_doubtful_readings() {
    let codes = |call: Call| {
        let outcome = evaluate(call.calculation, &Node::Table(call.given), Bare::Refused).unwrap();
        outcome.notices.iter().map(|notice| notice.code).collect::<Vec<_>>()
    };
    let cell = |reading: &str| {
        Call::new("analyser_reading").fixed("reading", reading).fixed("range_high", "4000 ppm").fixed("accuracy_absolute", "5 ppm")
    };
    assert_eq!(codes(cell("200 ppm")), Vec::<&str>::new());
    assert_eq!(codes(cell("3 ppm")), ["NOT_DETECTED"]);
    assert_eq!(codes(cell("3900 ppm")), ["NEAR_TOP"]);
    assert_eq!(codes(cell("200 ppm").fixed("clean_air_reading", "9 ppm")), ["ZERO_ERROR"]);
    assert_eq!(codes(Call::new("u_gauge").fixed("limb_down", "105 mm").fixed("limb_up", "60 mm")), ["UNEQUAL_LIMBS"]);
    let film = Call::new("platinum_resistance").fixed("class", "A").fixed("construction", "film").fixed("resistance_at_zero", "100 ohm");
    assert_eq!(codes(film.fixed("temperature", "350 degC").fixed("lead_resistance", "0 ohm")), ["UNUSUAL", "BEYOND_CLASS"]);
    let sensor = |measured: &str| {
        four_term(Call::new("thermistor_check"))
            .fixed("temperature", "60 degC")
            .fixed("resistance_tolerance", "2 %")
            .fixed("beta_tolerance", "0.75 %")
            .fixed("measured_resistance", measured)
    };
    assert_eq!(codes(sensor("2.49 kohm")), Vec::<&str>::new());
    assert_eq!(codes(sensor("2.7 kohm")), ["OUTSIDE_BAND"]);
    let drifting = Call::new("thermostat_test")
        .list("cut_outs", &["80 degC", "80.6 degC", "80.9 degC", "81.5 degC"].map(String::from))
        .list("cut_ins", &["74 degC", "74.1 degC", "74 degC", "74.1 degC"].map(String::from));
    assert!((drifting.si("cut_out_drift") - 0.48).abs() < 1e-9);
    assert_eq!(codes(drifting), ["DRIFTING"]);
}

#[test]
fn gauge_and_absolute_cross_only_with_a_barometer() {
    for row in rows_of_kind(PRESSURE, "gauge_to_absolute") {
        let inputs = row.inputs();
        let text = |name: &str| format!("{} {}", inputs[name].0, inputs[name].1);
        let (gauge, barometric_pressure): (GaugePressure, AbsolutePressure) =
            (text("p_gauge").parse().unwrap(), text("p_atm").parse().unwrap());
        agrees(&row, gauge.to_absolute(barometric_pressure).si());
    }
}

#[test]
fn table_of_a_thermistor_holds_its_band() {
    let check = ThermistorCheck { curve: ThermistorCurve::beta(10_000.0, 298.15, 3977.0) };
    let state = ThermistorState::read([("temperature", "25 degC"), ("resistance_tolerance", "2 %"), ("beta_tolerance", "0.75 %")]).unwrap();
    let tables = check.tables(&state);
    let columns = &tables[0].columns;
    for ((nominal, low), high) in columns[0].values.iter().zip(&columns[1].values).zip(&columns[2].values) {
        assert!(*low <= nominal * 0.98 + 1e-9 && *high >= nominal * 1.02 - 1e-9);
    }
    // Only the tolerance of R25 remains at 25 degC.
    let place = columns[3].values.iter().position(|kelvin| (kelvin - 298.15).abs() < 1e-9).unwrap();
    assert!((columns[1].values[place] - 9_800.0).abs() < 1e-6);
    assert!((columns[2].values[place] - 10_200.0).abs() < 1e-6);
}
