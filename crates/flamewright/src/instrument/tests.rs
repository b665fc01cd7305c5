//! The kernels against the reference rows of `tests/reference/trade`, and their round trips.

use super::manometer::*;
use super::resistance_thermometer as platinum;
use super::resistance_thermometer::{PlatinumClass, RANGE_CELSIUS};
use super::thermistor::ThermistorCurve;
use super::thermocouple::{ThermocoupleClass, ThermocoupleType};
use super::{analyser, thermostat};
use std::collections::BTreeMap;
use std::string::{String, ToString};
use std::vec::Vec;
use std::{format, println};

const PRESSURE: &str = include_str!("../../../../tests/reference/trade/pressure.csv");
const SENSORS: &str = include_str!("../../../../tests/reference/trade/sensors.csv");
const FLUE: &str = include_str!("../../../../tests/reference/trade/flue_vent.csv");

struct Row {
    case: String,
    kind: String,
    inputs: BTreeMap<String, (String, String)>,
    output: String,
    value: f64,
    tolerance: f64,
}

impl Row {
    fn text(&self, name: &str) -> &str {
        &self.inputs[name].0
    }
    fn number(&self, name: &str) -> f64 {
        self.text(name).parse().unwrap()
    }
    fn list(&self, name: &str) -> Vec<f64> {
        self.text(name).split('/').map(|reading| reading.parse().unwrap()).collect()
    }
    /// Length in m, whether the row gives it in mm, in or m.
    fn metres(&self, name: &str) -> f64 {
        self.number(name)
            * match self.inputs[name].1.as_str() {
                "mm" => 1e-3,
                "in" => INCH,
                "m" => 1.0,
                other => panic!("{other}"),
            }
    }
}

fn fields(line: &str) -> Vec<String> {
    let (mut out, mut quoted) = (Vec::from([String::new()]), false);
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => out.push(String::new()),
            _ => out.last_mut().unwrap().push(c),
        }
    }
    out
}

fn rows(text: &str) -> Vec<Row> {
    text.lines()
        .skip(1)
        .filter(|line| !line.is_empty())
        .map(|line| {
            let f = fields(line);
            let inputs = f[2]
                .split("; ")
                .map(|pair| {
                    let (name, value) = pair.split_once('=').unwrap();
                    let (number, unit) = value.split_once('|').unwrap();
                    (name.to_string(), (number.to_string(), unit.to_string()))
                })
                .collect();
            let value: f64 = f[4].parse().unwrap();
            let tolerance = if f[6].is_empty() {
                f[7].parse::<f64>().unwrap() * value.abs()
            } else {
                f[6].parse().unwrap()
            };
            Row {
                case: f[0].clone(),
                kind: f[1].clone(),
                inputs,
                output: f[3].clone(),
                value,
                tolerance,
            }
        })
        .collect()
}

/// Compares every row that `compute` answers, prints the largest share of the tolerance used by each
/// kind, and returns the number of rows compared.
fn compare(text: &str, compute: impl Fn(&Row) -> Option<f64>) -> usize {
    let mut used: BTreeMap<String, (usize, f64)> = BTreeMap::new();
    let mut failures = Vec::new();
    for row in rows(text) {
        let Some(got) = compute(&row) else { continue };
        let deviation = (got - row.value).abs();
        if !(deviation <= row.tolerance) {
            failures.push(format!("{} {}: {got} for {}", row.case, row.output, row.value));
        }
        let entry = used.entry(row.kind).or_default();
        entry.0 += 1;
        entry.1 = entry.1.max(deviation / row.tolerance);
    }
    for (kind, (count, share)) in &used {
        println!("{kind}: {count} rows, at most {share:.2} of the tolerance");
    }
    assert!(failures.is_empty(), "{failures:#?}");
    used.values().map(|(count, _)| count).sum()
}

/// Density of dry air in kg/m³ as the rows take it: 28.9652 g/mol, ideal, 101 325 Pa.
fn dry_air(celsius: f64) -> f64 {
    analyser::mass_concentration(1.0, 28.9652e-3, celsius + 273.15, 101_325.0)
}

#[test]
fn pressure_rows() {
    let count = compare(PRESSURE, |row| {
        Some(match row.kind.as_str() {
            "water_density" => water_density(row.number("T")),
            "local_gravity" => local_gravity(row.number("latitude").to_radians(), row.metres("h")),
            "u_gauge_reading" => {
                let head = row.metres("level_difference");
                let celsius = row.number("T_water");
                let gravity = row.number("g");
                let pressure = column_pressure(head, water_density(celsius), 0.0, gravity);
                let conventional =
                    column_pressure(head, CONVENTIONAL_WATER_DENSITY, 0.0, STANDARD_GRAVITY);
                match row.output.as_str() {
                    "p" => pressure,
                    "p_mbar" => pressure / 100.0,
                    "p_conventional" => conventional,
                    "p_with_air_buoyancy" => {
                        column_pressure(head, water_density(celsius), dry_air(celsius), gravity)
                    }
                    "convention_error" => (conventional / pressure - 1.0) * 100.0,
                    other => panic!("{other}"),
                }
            }
            "u_gauge_two_limbs" => {
                let head = level_difference_of_limbs(row.metres("limb_down"), row.metres("limb_up"));
                let conventional =
                    |head| column_pressure(head, CONVENTIONAL_WATER_DENSITY, 0.0, STANDARD_GRAVITY);
                match row.output.as_str() {
                    "level_difference" => head * 1e3,
                    "p_conventional" => conventional(head),
                    "wrong_if_one_limb" => conventional(row.metres("limb_down")),
                    other => panic!("{other}"),
                }
            }
            "inclined_manometer" => column_pressure(
                level_difference_of_incline(row.metres("length"), row.number("angle").to_radians()),
                row.number("relative_density") * CONVENTIONAL_WATER_DENSITY,
                0.0,
                STANDARD_GRAVITY,
            ),
            _ => return None,
        })
    });
    assert_eq!(count, 7 + 7 + 55 + 6 + 2);
}

#[test]
fn sensor_rows() {
    let four_term = ThermistorCurve::four_term(
        10_000.0,
        [3.354016e-3, 2.569850e-4, 2.620131e-6, 6.383091e-8],
    );
    let count = compare(SENSORS, |row| {
        let k = ThermocoupleType::K;
        Some(match row.kind.as_str() {
            "pt100_table" | "pt1000_forward" => {
                row.number("R0") * platinum::resistance_ratio(row.number("t"))
            }
            "pt100_inverse" => platinum::temperature_celsius(row.number("R") / row.number("R0")),
            "pt_tolerance" => match row.text("class") {
                "AA" => PlatinumClass::AA,
                "A" => PlatinumClass::A,
                "B" => PlatinumClass::B,
                "C" => PlatinumClass::C,
                other => panic!("{other}"),
            }
            .tolerance_kelvin(row.number("t")),
            "pt_two_wire_lead_error" => {
                let (true_celsius, r0) = (row.number("t_true"), row.number("R0"));
                let measured =
                    r0 * platinum::resistance_ratio(true_celsius) + row.number("R_lead_total");
                let indicated = platinum::temperature_celsius(measured / r0);
                match row.output.as_str() {
                    "t_indicated" => indicated,
                    "error" => indicated - true_celsius,
                    other => panic!("{other}"),
                }
            }
            "typeK_table" => k.measured_millivolt(row.number("t"), row.number("t_ref")),
            "typeK_inverse" => k.measuring_junction_celsius(row.number("emf"), row.number("t_ref")),
            "typeK_cold_junction" => {
                let (emf, reference) = (row.number("emf_measured"), row.number("t_ref"));
                match row.output.as_str() {
                    "t" => k.measuring_junction_celsius(emf, reference),
                    "wrong_if_temperatures_added" => k.temperature_celsius(emf) + reference,
                    other => panic!("{other}"),
                }
            }
            "typeK_tolerance" => k.tolerance_kelvin(
                match row.text("class") {
                    "1" => ThermocoupleClass::One,
                    "2" => ThermocoupleClass::Two,
                    "3" => ThermocoupleClass::Three,
                    other => panic!("{other}"),
                },
                row.number("t"),
            ),
            "ntc_beta_forward" => {
                ThermistorCurve::beta(row.number("R25"), 298.15, row.number("beta"))
                    .resistance_ohm(row.number("t") + 273.15)
            }
            "ntc_beta_inverse" => {
                ThermistorCurve::beta(row.number("R25"), 298.15, row.number("beta"))
                    .temperature_kelvin(row.number("R"))
                    - 273.15
            }
            "ntc_beta_from_two_points" => ThermistorCurve::beta_between(
                (row.number("R1"), row.number("t1") + 273.15),
                (row.number("R2"), row.number("t2") + 273.15),
            ),
            "steinhart_hart" => {
                ThermistorCurve::steinhart_hart(row.number("A"), row.number("B"), row.number("C"))
                    .temperature_kelvin(row.number("R"))
                    - 273.15
            }
            "ntc_four_term" => {
                let by_four_terms = four_term.temperature_kelvin(row.number("R")) - 273.15;
                let by_beta = ThermistorCurve::beta(row.number("R25"), 298.15, 3977.0)
                    .temperature_kelvin(row.number("R"))
                    - 273.15;
                match row.output.as_str() {
                    "t" => by_four_terms,
                    "t_beta_3977" => by_beta,
                    "beta_minus_four_term" => by_beta - by_four_terms,
                    other => panic!("{other}"),
                }
            }
            "steinhart_hart_three_point_fit" => {
                let curve = ThermistorCurve::through_three(
                    [("R1", "t1"), ("R2", "t2"), ("R3", "t3")]
                        .map(|(r, t)| (row.number(r), row.number(t) + 273.15)),
                );
                match row.output.as_str() {
                    "A" => curve.coefficients[0],
                    "B" => curve.coefficients[1],
                    "C" => curve.coefficients[3],
                    "t_test" => curve.temperature_kelvin(row.number("R_test")) - 273.15,
                    other => panic!("{other}"),
                }
            }
            "ntc_uncertainty" if row.output == "sensitivity_pct_per_K" => {
                100.0
                    * ThermistorCurve::beta(row.number("R25"), 298.15, row.number("beta"))
                        .relative_sensitivity(row.number("t") + 273.15)
            }
            "thermostat_differential" => {
                let (off, on) = (row.number("t_off_rising"), row.number("t_on_falling"));
                match row.output.as_str() {
                    "differential" => off - on,
                    "mid_point" => (off + on) / 2.0,
                    other => panic!("{other}"),
                }
            }
            "thermostat_repeat_test" => {
                let off = thermostat::Repeats::of(&row.list("t_off_rising"));
                let on = thermostat::Repeats::of(&row.list("t_on_falling"));
                match row.output.as_str() {
                    "mean_off" => off.mean,
                    "mean_on" => on.mean,
                    "mean_differential" => off.mean - on.mean,
                    "s_off" => off.standard_deviation,
                    "u_mean_off_type_A" => off.standard_uncertainty,
                    other => panic!("{other}"),
                }
            }
            "thermostat_cycle_lumped" => {
                let cycle = thermostat::lumped_cycle(
                    row.number("C"),
                    row.number("differential"),
                    row.number("boiler_output") * 1e3,
                    row.number("load") * 1e3,
                );
                match row.output.as_str() {
                    "t_on" => cycle.time_on,
                    "t_off" => cycle.time_off,
                    "duty" => cycle.duty,
                    "starts_per_hour" => cycle.starts_per_second * 3600.0,
                    other => panic!("{other}"),
                }
            }
            _ => return None,
        })
    });
    // All rows but the two combined uncertainties, which the uncertainty tool works out.
    assert_eq!(count, rows(SENSORS).len() - 2);
}

#[test]
fn analyser_rows() {
    let count = compare(FLUE, |row| {
        let molar_mass = 28.0101e-3;
        let (kelvin, pressure) = match row.kind.as_str() {
            "ppm_to_mg_m3" | "mg_m3_to_ppm" => (row.number("T") + 273.15, row.number("p") * 100.0),
            _ => return None,
        };
        Some(if row.kind == "ppm_to_mg_m3" {
            analyser::mass_concentration(row.number("CO") * 1e-6, molar_mass, kelvin, pressure) * 1e6
        } else {
            analyser::mole_fraction(row.number("CO") * 1e-6, molar_mass, kelvin, pressure) * 1e6
        })
    });
    assert_eq!(count, 11);
}

#[test]
fn platinum_round_trip_over_the_full_range() {
    let (lowest, highest) = RANGE_CELSIUS;
    let mut worst = 0.0_f64;
    for i in 0..=100_000 {
        let t = lowest + (highest - lowest) * f64::from(i) / 100_000.0;
        let back = platinum::temperature_celsius(platinum::resistance_ratio(t));
        assert!(back.is_finite(), "{t}");
        worst = worst.max((back - t).abs());
    }
    println!("platinum: {worst:.1e} K");
    assert!(worst < 1e-9, "{worst}");
    assert_eq!(platinum::temperature_celsius(1.0), 0.0);
    for outside in [-200.1, 850.1, f64::NAN, f64::INFINITY] {
        assert!(platinum::resistance_ratio(outside).is_nan());
    }
    for outside in [0.18, 3.95, -1.0, 20.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert!(platinum::temperature_celsius(outside).is_nan(), "{outside}");
    }
}

#[test]
fn thermistor_round_trips() {
    let three = ThermistorCurve::steinhart_hart(1.129148e-3, 2.34125e-4, 8.76741e-8);
    let four = ThermistorCurve::four_term(
        10_000.0,
        [3.354016e-3, 2.569850e-4, 2.620131e-6, 6.383091e-8],
    );
    let mut curves = Vec::from([three, four]);
    for reference in [100.0, 5_000.0, 100_000.0] {
        curves.push(ThermistorCurve::beta(reference, 298.15, 3435.0));
    }
    for curve in curves {
        for tenth in -400..=1500 {
            let kelvin = 273.15 + f64::from(tenth) / 10.0;
            let back = curve.temperature_kelvin(curve.resistance_ohm(kelvin));
            assert!((back - kelvin).abs() < 1e-9, "{curve:?} at {kelvin}: {back}");
        }
    }
    // A curve that is no NTC: refused both ways.
    let broken = ThermistorCurve::four_term(1_000.0, [3.3e-3, -2.0e-4, 0.0, 0.0]);
    assert!(broken.temperature_kelvin(2_000.0).is_nan());
    assert!(broken.resistance_ohm(300.0).is_nan());
    for resistance in [0.0, -5.0, f64::NAN, f64::INFINITY] {
        assert!(three.temperature_kelvin(resistance).is_nan(), "{resistance}");
    }
}

#[test]
fn fits_reproduce_their_own_curve() {
    let four = ThermistorCurve::four_term(
        10_000.0,
        [3.354016e-3, 2.569850e-4, 2.620131e-6, 6.383091e-8],
    );
    let points = [273.15, 298.15, 333.15, 363.15].map(|kelvin| (four.resistance_ohm(kelvin), kelvin));
    let fitted = ThermistorCurve::through_four(10_000.0, points);
    for kelvin in [253.15, 283.15, 313.15, 383.15] {
        let back = fitted.temperature_kelvin(four.resistance_ohm(kelvin));
        assert!((back - kelvin).abs() < 1e-8, "{kelvin}: {back}");
    }
    let three = ThermistorCurve::steinhart_hart(1.129148e-3, 2.34125e-4, 8.76741e-8);
    let points = [273.15, 313.15, 353.15].map(|kelvin| (three.resistance_ohm(kelvin), kelvin));
    let fitted = ThermistorCurve::through_three(points);
    assert!((fitted.temperature_kelvin(2_000.0) - three.temperature_kelvin(2_000.0)).abs() < 1e-9);
    let doubled = [(1_000.0, 300.0), (1_000.0, 300.0), (500.0, 320.0)];
    assert!(ThermistorCurve::through_three(doubled).temperature_kelvin(700.0).is_nan());
}

#[test]
fn band_holds_the_extreme_sensors() {
    let nominal = ThermistorCurve::beta(10_000.0, 298.15, 3977.0);
    for kelvin in [263.15, 298.15, 333.15, 363.15] {
        let (lowest, highest) = nominal.band_ohm(kelvin, 298.15, 0.02, 0.0075);
        let mut extremes = Vec::new();
        for r in [0.98, 1.02] {
            for b in [0.9925, 1.0075] {
                let sensor = ThermistorCurve::beta(10_000.0 * r, 298.15, 3977.0 * b);
                extremes.push(sensor.resistance_ohm(kelvin));
            }
        }
        let least = extremes.iter().copied().fold(f64::INFINITY, f64::min);
        let most = extremes.iter().copied().fold(0.0, f64::max);
        assert!((least / lowest - 1.0).abs() < 1e-9, "{kelvin}: {least} {lowest}");
        assert!((most / highest - 1.0).abs() < 1e-9, "{kelvin}: {most} {highest}");
    }
}

#[test]
fn inches_of_water_have_their_own_values() {
    let product = INCH * CONVENTIONAL_WATER_DENSITY * STANDARD_GRAVITY;
    assert!((product / INCH_OF_WATER_CONVENTIONAL - 1.0).abs() < 1e-15, "{product}");
    let at_39 = column_pressure(INCH, water_density(4.0), 0.0, STANDARD_GRAVITY);
    let at_60 = column_pressure(INCH, water_density(140.0 / 9.0), 0.0, STANDARD_GRAVITY);
    assert!((at_39 - INCH_OF_WATER_39_FAHRENHEIT).abs() < 6e-4, "{at_39}");
    assert!((at_60 - INCH_OF_WATER_60_FAHRENHEIT).abs() < 6e-4, "{at_60}");
}

#[test]
fn mercury_inch_follows_from_density_and_expansion() {
    // 13 595.1 kg/m³ at 0 °C; mean cubic expansion to 60 °F 1.818e-4 1/K (handbook value, from memory).
    let inch = |celsius| {
        column_pressure(INCH, expanded_density(13_595.1, 0.0, 1.818e-4, celsius), 0.0, STANDARD_GRAVITY)
    };
    assert!((inch(0.0) / 3386.38 - 1.0).abs() < 3e-6, "{}", inch(0.0));
    assert!((inch(140.0 / 9.0) / 3376.85 - 1.0).abs() < 2e-5, "{}", inch(140.0 / 9.0));
}

#[test]
fn repeats_see_drift_and_refuse_too_few() {
    let rising = thermostat::Repeats::of(&[80.0, 80.5, 81.0, 81.5]);
    assert!((rising.drift_per_cycle - 0.5).abs() < 1e-12);
    assert!((rising.spread - 1.5).abs() < 1e-12);
    let single = thermostat::Repeats::of(&[80.0]);
    assert_eq!(single.mean, 80.0);
    assert!(single.standard_deviation.is_nan() && single.drift_per_cycle.is_nan());
    let none = thermostat::Repeats::of(&[]);
    assert!(none.mean.is_nan() && none.spread.is_nan());
    let gap = thermostat::Repeats::of(&[80.0, f64::NAN, 81.0]);
    assert!(gap.mean.is_nan() && gap.spread.is_nan() && gap.drift_per_cycle.is_nan());
}

#[test]
fn cycle_needs_a_load_below_the_output() {
    for (output, load) in [(20e3, 20e3), (20e3, 25e3), (20e3, 0.0), (20e3, -1e3), (f64::NAN, 1e3)] {
        assert!(thermostat::lumped_cycle(1e5, 8.0, output, load).time_on.is_nan(), "{output} {load}");
    }
}

#[test]
fn mass_concentration_round_trip() {
    for pressure in [70_000.0, 101_325.0] {
        let there = analyser::mass_concentration(1.2e-4, 28.0101e-3, 293.15, pressure);
        let back = analyser::mole_fraction(there, 28.0101e-3, 293.15, pressure);
        assert!((back / 1.2e-4 - 1.0).abs() < 1e-14);
    }
}
