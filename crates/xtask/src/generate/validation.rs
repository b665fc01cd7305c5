//! The validation report: rows of the reference tables against the catalogue, called by name.

use flamewright::catalogue::{Bare, CATALOGUE, evaluate};
use flamewright::node::Node;
use flamewright::record::Field;
use flamewright_reference::{Row, rows};
use std::collections::BTreeMap;
use std::fmt::Write;

type Names = &'static [(&'static str, &'static str)];

/// How the rows of one kind are calculated.
struct Check {
    file: &'static str,
    kind: &'static str,
    calculation: &'static str,
    fixed: Names,
    /// Input of the row to field or setting.
    given: Names,
    /// Output of the row to result; rows of other outputs are left to the tests.
    results: Names,
}

const fn check(file: &'static str, kind: &'static str, calculation: &'static str, fixed: Names, given: Names, results: Names) -> Check {
    Check { file, kind, calculation, fixed, given, results }
}

const PRESSURE: &str = "trade/pressure.csv";
const SENSORS: &str = "trade/sensors.csv";
const TIGHTNESS: &str = "trade/tightness.csv";
const FLUE: &str = "trade/flue_vent.csv";
const GAS_RATE: &str = "trade/gas_rate.csv";
const FILES: [&str; 5] = [PRESSURE, SENSORS, TIGHTNESS, FLUE, GAS_RATE];

const TEST: Names = &[
    ("V", "installation_volume"),
    ("p_gauge", "test_pressure"),
    ("dp", "pressure_drop"),
    ("dt", "test_duration"),
    ("p_atm", "barometric_pressure"),
    ("T", "gas_temperature"),
    ("dT", "temperature_rise"),
    ("dp_atm", "barometer_rise"),
];
const PLATINUM: Names = &[("t", "temperature"), ("R0", "resistance_at_zero")];

const CHECKS: &[Check] = &[
    check(PRESSURE, "local_gravity", "local_gravity", &[], &[("latitude", "latitude"), ("h", "height")], &[("g", "gravity")]),
    check(
        PRESSURE,
        "water_density",
        "liquid_column",
        &[("level_difference", "100 mm")],
        &[("T", "liquid_temperature"), ("p", "barometric_pressure")],
        &[("density", "liquid_density")],
    ),
    check(
        PRESSURE,
        "u_gauge_reading",
        "liquid_column",
        &[],
        &[("level_difference", "level_difference"), ("T_water", "liquid_temperature"), ("g", "gravity")],
        &[
            ("p", "pressure"),
            ("p_mbar", "pressure"),
            ("p_conventional", "pressure_conventional"),
            ("p_with_air_buoyancy", "pressure_less_air"),
            ("convention_error", "convention_error"),
        ],
    ),
    check(
        PRESSURE,
        "u_gauge_two_limbs",
        "u_gauge",
        &[],
        &[("limb_down", "limb_down"), ("limb_up", "limb_up")],
        &[("p_conventional", "pressure_conventional"), ("level_difference", "level_difference")],
    ),
    check(
        PRESSURE,
        "gauge_to_absolute",
        "absolute_pressure",
        &[],
        &[("p_gauge", "gauge_pressure"), ("p_atm", "barometric_pressure")],
        &[("p_abs", "absolute_pressure"), ("p_abs_Pa", "absolute_pressure")],
    ),
    check(SENSORS, "pt100_table", "platinum_resistance", &[], PLATINUM, &[("R", "resistance")]),
    check(SENSORS, "pt1000_forward", "platinum_resistance", &[], PLATINUM, &[("R", "resistance")]),
    check(
        SENSORS,
        "pt100_inverse",
        "platinum_temperature",
        &[],
        &[("R", "resistance"), ("R0", "resistance_at_zero")],
        &[("t", "temperature")],
    ),
    check(
        SENSORS,
        "typeK_table",
        "thermocouple_voltage",
        &[],
        &[("t", "temperature"), ("t_ref", "reference_junction_temperature")],
        &[("emf", "voltage")],
    ),
    check(
        SENSORS,
        "typeK_inverse",
        "thermocouple_temperature",
        &[],
        &[("emf", "voltage"), ("t_ref", "reference_junction_temperature")],
        &[("t", "temperature")],
    ),
    check(
        SENSORS,
        "typeK_cold_junction",
        "thermocouple_temperature",
        &[],
        &[("emf_measured", "voltage"), ("t_ref", "reference_junction_temperature")],
        &[("t", "temperature")],
    ),
    check(
        SENSORS,
        "ntc_beta_inverse",
        "thermistor_beta",
        &[],
        &[("R", "resistance"), ("R25", "reference_resistance"), ("beta", "beta")],
        &[("t", "temperature")],
    ),
    check(
        TIGHTNESS,
        "leak_rate_from_drop",
        "tightness_test",
        &[("gross_calorific_value", "39.5 MJ/m3")],
        TEST,
        &[
            ("amount_lost", "amount_lost"),
            ("leak_at_reference_15C", "leak_rate"),
            ("leak_m3_per_h_reference", "leak_rate"),
            ("leak_at_line_conditions", "leak_rate_in_pipe"),
            ("energy_leak_gross_39.5", "heat_lost_gross"),
        ],
    ),
    check(
        TIGHTNESS,
        "leak_rate_temperature_barometer_corrected",
        "tightness_test",
        &[],
        TEST,
        &[("amount_lost", "amount_lost"), ("leak_at_reference_15C", "leak_rate"), ("leak_uncorrected", "leak_rate_uncorrected")],
    ),
    check(
        TIGHTNESS,
        "purge_volume",
        "purge",
        &[],
        &[("V", "installation_volume"), ("purge_factor", "purge_factor"), ("dial_volume", "dial_volume")],
        &[("purge_volume", "purge_volume"), ("meter_readings", "dial_revolutions")],
    ),
    check(
        FLUE,
        "room_CO_buildup",
        "room_concentration",
        &[],
        &[
            ("source", "source"),
            ("V", "room_volume"),
            ("air_changes", "air_change_rate"),
            ("background", "background"),
            ("t", "elapsed_time"),
        ],
        &[("CO_steady", "steady"), ("CO_at_t", "concentration")],
    ),
    check(
        FLUE,
        "draught_EN13384_form",
        "natural_draught",
        &[],
        &[
            ("H", "height"),
            ("T_out", "outdoor_temperature"),
            ("T_mean", "mean_flue_temperature"),
            ("p", "barometric_pressure"),
            ("R_air", "air_gas_constant"),
            ("R_flue", "flue_gas_constant"),
        ],
        &[("rho_air", "air_density"), ("rho_flue", "flue_density"), ("draught", "draught"), ("draught_inH2O", "draught")],
    ),
    check(
        GAS_RATE,
        "metric_uncorrected",
        "gas_rate",
        &[],
        &[("V", "volume"), ("t", "time"), ("Hs", "gross_calorific_value"), ("Hi", "net_calorific_value")],
        &[
            ("volume_rate", "gas_rate"),
            ("heat_input_gross", "uncorrected_heat_input_gross"),
            ("heat_input_net", "uncorrected_heat_input_net"),
            ("gross_over_net", "gross_over_net"),
        ],
    ),
    check(
        GAS_RATE,
        "corrected_15C_1013.25",
        "gas_rate",
        &[],
        &[
            ("V", "volume"),
            ("t", "time"),
            ("Hs", "gross_calorific_value"),
            ("p_gauge", "gas_pressure"),
            ("p_atm", "barometric_pressure"),
            ("T_gas", "gas_temperature"),
        ],
        &[
            ("conversion_factor", "conversion_factor"),
            ("volume_rate_meter", "gas_rate"),
            ("volume_rate_ref", "reference_gas_rate"),
            ("heat_input_gross", "heat_input_gross"),
            ("error_if_uncorrected", "uncorrected_error"),
        ],
    ),
    check(GAS_RATE, "altitude_pressure_ISA", "atmospheric_pressure", &[], &[("h", "altitude")], &[("p_atm", "standard_pressure")]),
];

fn quantity(value: &str, unit: &str) -> String {
    if matches!(unit, "1" | "text") { value.to_owned() } else { format!("{value} {}", unit.replace('.', "*")) }
}

/// Reference, computed, tolerance, in the unit the result is shown in; and that unit.
fn compare(check: &Check, row: &Row, result: &str) -> Result<(f64, f64, f64, &'static Field), String> {
    let inputs = row.inputs();
    let mut given: Vec<(String, Node)> = check.fixed.iter().map(|(name, text)| ((*name).to_owned(), Node::from(*text))).collect();
    for (there, here) in check.given {
        if let Some((value, unit)) = inputs.get(*there) {
            given.push(((*here).to_owned(), Node::Text(quantity(value, unit))));
        }
    }
    let outcome = evaluate(check.calculation, &Node::Table(given), Bare::Refused).map_err(|e| format!("{}: {e}", row.place))?;
    let fields = outcome.prepared.entry().outputs();
    let field = fields.iter().find(|f| f.name == result).ok_or_else(|| format!("{} has no {result}", check.calculation))?;
    let computed = outcome.get(result).unwrap_or(f64::NAN);
    let read = |value: f64| field.read(&quantity(&format!("{value:?}"), row.text("unit"))).map_err(|e| format!("{}: {e}", row.place));
    let value = row.number("value");
    let spread = row.maybe("tol_abs").or_else(|| row.maybe("tol_rel").map(|r| r * value.abs())).unwrap_or(0.0);
    let shown = |si: f64| (si - field.unit.offset) / field.unit.factor;
    let tolerance = shown(read(value + spread)?) - shown(read(value)?);
    Ok((shown(read(value)?), shown(computed), tolerance, field))
}

pub(crate) fn make() -> Result<String, String> {
    let (mut table, mut areas, mut left, mut outside) = (String::new(), String::new(), String::new(), Vec::new());
    for file in FILES {
        let (mut count, mut worst) = (0_usize, 0.0_f64);
        let mut missing: BTreeMap<String, usize> = BTreeMap::new();
        for row in rows(file) {
            let found = CHECKS.iter().find(|c| c.file == file && c.kind == row.text("kind"));
            let result = found.and_then(|c| c.results.iter().find(|(there, _)| *there == row.text("output")).map(|(_, here)| (c, *here)));
            let Some((check, result)) = result else {
                *missing.entry(row.text("kind").to_owned()).or_default() += 1;
                continue;
            };
            let (reference, computed, tolerance, field) = compare(check, &row, result)?;
            let deviation = (computed - reference).abs();
            // Written so that not-a-number is outside.
            let within = deviation <= tolerance;
            // Rounding noise is not shown, so that it cannot make the file stale.
            let relative = if deviation <= 1e-9 * reference.abs() {
                "below 1e-9".to_owned()
            } else if reference == 0.0 {
                "-".to_owned()
            } else {
                format!("{:.1e}", deviation / reference.abs())
            };
            if !within {
                outside.push(format!("{} {} {result}: {computed} for {reference}", row.place, check.calculation));
            }
            count += 1;
            if tolerance > 0.0 {
                worst = worst.max(deviation / tolerance);
            }
            let source = format!("{}: {}", row.text("source_class"), row.text("source")).replace('|', "/");
            let _ = writeln!(
                table,
                "| {} | {} | `{result}` | {source} | {reference:.6} {} | {computed:.6} | {relative} | {tolerance:.1e} | {} |",
                check.calculation,
                row.text("case_id"),
                field.unit.symbol,
                if within { "within" } else { "OUTSIDE" }
            );
        }
        let _ = writeln!(areas, "| {file} | {count} | {worst:.3} |");
        for (kind, rows) in missing {
            let _ = writeln!(left, "* {file}, {kind}: {rows} rows");
        }
    }
    if !outside.is_empty() {
        return Err(format!("outside the tolerance:\n{}", outside.join("\n")));
    }
    let mut out = format!(
        "# Validation\n\nMade by `cargo xtask generate`: each row below was computed through the catalogue, by name, when this file was made, \
         and a row outside its tolerance stops the making. Not in here yet: the tables of `reference/heat` and `reference/combustion`, \
         `trade/uncertainty.csv` and `trade/visit_demo.csv`, and the rows listed at the end; the tests beside each calculation \
         (`cargo test -p flamewright`) hold those of them that are driven.\n\n## Summary\n\n| table | cases | worst deviation over tolerance |\n\
         | --- | --- | --- |\n{areas}\n## Cases\n\nTolerance in the unit of the reference value; the deviation is relative, of the number as shown in that unit.\n\n\
         | calculation | case | quantity | source | reference | computed | deviation | tolerance | verdict |\n\
         | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n{table}\n## Rows left to the tests\n\n{left}\n\
         ## Calculations that name no reference table\n\n"
    );
    for entry in CATALOGUE.iter().filter(|e| !e.info().checked_against.contains(".csv")) {
        let _ = writeln!(out, "* {}: {}", entry.info().name, entry.info().checked_against);
    }
    Ok(out)
}
