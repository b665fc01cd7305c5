//! Laws that hold whatever the numbers: balances, round trips, order, limits, units.
//!
//! The cases are drawn anew from the same seed each time; proptest shrinks what fails.

use flamewright::catalogue::{CATALOGUE, Prepared, calculation};
use flamewright::node::Node;
use flamewright::quantity::quantity_text;
use flamewright_trials::{Draws, needed_settings};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};

/// Runs `law` on values of `strategy`, always the same ones.
fn always<S: Strategy>(cases: u32, strategy: S, law: impl Fn(S::Value) -> Result<(), TestCaseError>) {
    let config = Config { cases, failure_persistence: None, max_global_rejects: 20 * cases, ..Config::default() };
    let rng = TestRng::from_seed(RngAlgorithm::ChaCha, b"the same cases at every running.");
    TestRunner::new_with_rng(config, rng).run(&strategy, law).unwrap_or_else(|e| panic!("{e}"));
}

/// A calculation with its settings, called by names and SI values.
struct Sum(Box<dyn Prepared>);

impl Sum {
    fn of(name: &str, settings: &str) -> Self {
        let tree = Node::from_json(settings).unwrap();
        Self(calculation(name).unwrap().prepare(&tree).unwrap_or_else(|e| panic!("{name}: {e}")))
    }
    /// The results by name, or nothing where the reading is refused.
    fn call(&self, given: &[(&str, f64)]) -> Option<Results<'_>> {
        let entry = self.0.entry();
        let mut input: Vec<f64> = entry.inputs().iter().map(|f| f.default).collect();
        for (name, value) in given {
            let place = entry.inputs().iter().position(|f| f.name == *name).unwrap_or_else(|| panic!("no field {name}"));
            input[place] = *value;
        }
        let mut output = vec![0.0; entry.outputs().len()];
        let refused = self.0.run(&input, &mut output).is_refused(entry.rules());
        (!refused).then_some(Results(&*self.0, output))
    }
}

struct Results<'a>(&'a dyn Prepared, Vec<f64>);

impl Results<'_> {
    fn get(&self, name: &str) -> f64 {
        self.1[self.0.entry().outputs().iter().position(|f| f.name == name).unwrap_or_else(|| panic!("no result {name}"))]
    }
}

fn near(got: f64, expected: f64, relative: f64) -> Result<(), TestCaseError> {
    let room = relative * got.abs().max(expected.abs());
    prop_assert!((got - expected).abs() <= room, "{got} is not {expected} within {relative}");
    Ok(())
}

const FUELS: [&str; 6] = [
    r#""G20""#,
    r#""G25""#,
    r#""G31""#,
    r#""CH4 80 %, H2 20 %""#,
    r#""gas oil""#,
    r#"{"composition": "CH4 85 %, C2H6 7 %, C3H8 3 %, N2 3 %, CO2 2 %"}"#,
];

fn with_fuel(name: &str, fuel: usize) -> Sum {
    Sum::of(name, &format!(r#"{{"fuel": {}}}"#, FUELS[fuel % FUELS.len()]))
}

#[test]
fn combustion_keeps_mass_and_amounts() {
    let fuels: Vec<Sum> = (0..FUELS.len()).map(|i| with_fuel("combustion_products", i)).collect();
    always(300, (0..FUELS.len(), 1.0..20.0_f64, 260.0..320.0_f64, 0.0..1.0_f64), |(fuel, ratio, air, humidity)| {
        let Some(made) = fuels[fuel].call(&[("excess_air_ratio", ratio), ("air_temperature", air), ("relative_humidity", humidity)]) else {
            return Ok(());
        };
        // Mass: fuel (less the ash of none of these) and humid air in, flue gas out.
        let supplied = 1.0 + made.get("air_mass") * (1.0 + made.get("humidity_ratio"));
        near(made.get("flue_mass"), supplied, 2e-4)?;
        near(made.get("air_mass"), ratio * made.get("stoichiometric_air_mass"), 1e-12)?;
        let parts = ["carbon_dioxide_wet", "water_wet", "oxygen_wet", "nitrogen_wet", "argon_wet", "sulphur_dioxide_wet"];
        near(parts.iter().map(|p| made.get(p)).sum(), 1.0, 1e-9)?;
        near(made.get("wet_flue_per_mass"), made.get("dry_flue_per_mass") + made.get("water_vapour_per_mass"), 1e-12)?;
        near(made.get("carbon_dioxide_per_mass"), made.get("carbon_dioxide_dry") * made.get("dry_flue_per_mass"), 1e-12)?;
        // Oxygen: what came with the air is either used or still there.
        let left = made.get("oxygen_dry") * made.get("dry_flue_per_mass");
        near(left + made.get("stoichiometric_oxygen_per_mass"), ratio * made.get("stoichiometric_oxygen_per_mass"), 1e-9)?;
        // Without excess air no oxygen is left, and the carbon dioxide is the largest there can be.
        prop_assert!(made.get("carbon_dioxide_dry") <= made.get("carbon_dioxide_maximum") * (1.0 + 1e-12));
        let Some(exact) = fuels[fuel].call(&[("excess_air_ratio", 1.0)]) else { return Ok(()) };
        prop_assert!(exact.get("oxygen_dry").abs() < 1e-12);
        near(exact.get("carbon_dioxide_dry"), exact.get("carbon_dioxide_maximum"), 1e-12)
    });
}

#[test]
fn flue_losses_and_efficiency_add_up_to_the_heat_put_in() {
    let fuels: Vec<Sum> = (0..FUELS.len()).map(|i| with_fuel("flue_analysis", i)).collect();
    let readings = (0..FUELS.len(), 0.0..0.15_f64, 0.0..0.002_f64, 310.0..750.0_f64, 270.0..300.0_f64, 0.0..1.0_f64);
    always(400, readings, |(fuel, oxygen, monoxide, flue, air, humidity)| {
        let reading = |oxygen: f64, monoxide: f64, flue: f64, air: f64| {
            fuels[fuel].call(&[
                ("oxygen_dry", oxygen),
                ("carbon_monoxide_dry", monoxide),
                ("flue_temperature", flue),
                ("air_temperature", air),
                ("relative_humidity", humidity),
            ])
        };
        let Some(made) = reading(oxygen, monoxide, flue, air) else { return Ok(()) };
        let leaves = ["dry_gas_loss", "moisture_loss", "latent_loss", "condensate_loss", "unburnt_loss"];
        let lost: f64 = leaves.iter().map(|l| made.get(l)).sum();
        let brought = made.get("air_credit") + made.get("fuel_credit");
        near(made.get("efficiency_gross"), 1.0 - lost + brought, 1e-12)?;
        prop_assert!(made.get("efficiency_gross") < made.get("efficiency_net"));
        // A hotter flue, more air, more carbon monoxide: less heat is kept.
        for worse in [
            reading(oxygen, monoxide, flue + 10.0, air),
            reading(oxygen + 0.01, monoxide, flue, air),
            reading(oxygen, monoxide + 0.0005, flue, air),
        ] {
            let Some(worse) = worse else { continue };
            prop_assert!(worse.get("efficiency_gross") < made.get("efficiency_gross"));
        }
        // No carbon monoxide: nothing unburnt, no ratio.
        if let Some(clean) = reading(oxygen, 0.0, flue, air) {
            prop_assert_eq!(clean.get("unburnt_loss"), 0.0);
            prop_assert_eq!(clean.get("carbon_monoxide_ratio"), 0.0);
        }
        Ok(())
    });
}

#[test]
fn oxygen_and_carbon_dioxide_tell_the_same_flue() {
    let fuels: Vec<Sum> = (0..FUELS.len()).map(|i| with_fuel("flue_analysis", i)).collect();
    always(200, (0..FUELS.len(), 0.005..0.15_f64, 320.0..600.0_f64), |(fuel, oxygen, flue)| {
        let common = [("carbon_monoxide_dry", 0.0), ("flue_temperature", flue), ("air_temperature", 293.15)];
        let Some(first) = fuels[fuel].call(&[&common[..], &[("oxygen_dry", oxygen)]].concat()) else { return Ok(()) };
        let dioxide = first.get("carbon_dioxide_dry_derived");
        let Some(second) = fuels[fuel].call(&[&common[..], &[("carbon_dioxide_dry", dioxide)]].concat()) else { return Ok(()) };
        near(second.get("oxygen_dry_derived"), oxygen, 1e-9)?;
        near(second.get("efficiency_gross"), first.get("efficiency_gross"), 1e-10)
    });
}

#[test]
fn flue_and_products_balance_the_same_elements() {
    let pairs: Vec<(Sum, Sum)> = (0..FUELS.len()).map(|i| (with_fuel("combustion_products", i), with_fuel("flue_analysis", i))).collect();
    always(200, (0..FUELS.len(), 1.01..4.0_f64), |(fuel, ratio)| {
        let (products, flue) = &pairs[fuel];
        let made = products.call(&[("excess_air_ratio", ratio), ("air_temperature", 293.15)]).unwrap();
        let reading = [
            ("oxygen_dry", made.get("oxygen_dry")),
            ("carbon_monoxide_dry", 0.0),
            ("flue_temperature", 450.0),
            ("air_temperature", 293.15),
        ];
        let Some(read) = flue.call(&reading) else { return Ok(()) };
        near(read.get("excess_air_ratio"), ratio, 1e-9)?;
        near(read.get("carbon_dioxide_dry_derived"), made.get("carbon_dioxide_dry"), 1e-9)?;
        near(read.get("carbon_dioxide_maximum"), made.get("carbon_dioxide_maximum"), 1e-12)
    });
}

/// There and back by two calculations.
struct RoundTrip {
    there: Sum,
    back: Sum,
    from: &'static str,
    over: &'static str,
    back_from: &'static str,
    low: f64,
    high: f64,
    common: &'static [(&'static str, f64)],
    exact: f64,
}

#[test]
fn there_and_back() {
    let mut trips = Vec::new();
    for (kind, low, high) in [
        ("K", -199.0, 1371.0),
        ("J", -209.0, 1199.0),
        ("T", -199.0, 399.0),
        ("N", -199.0, 1299.0),
        ("E", -199.0, 999.0),
        ("S", -49.0, 1767.0),
    ] {
        let settings = format!(r#"{{"type": "{kind}"}}"#);
        trips.push(RoundTrip {
            there: Sum::of("thermocouple_voltage", &settings),
            back: Sum::of("thermocouple_temperature", &settings),
            from: "temperature",
            over: "voltage",
            back_from: "voltage",
            low: 273.15 + low,
            high: 273.15 + high,
            common: &[("reference_junction_temperature", 293.15)],
            exact: 1e-9,
        });
    }
    trips.push(RoundTrip {
        there: Sum::of("platinum_resistance", "{}"),
        back: Sum::of("platinum_temperature", "{}"),
        from: "temperature",
        over: "resistance_with_leads",
        back_from: "resistance",
        low: 74.0,
        high: 1122.0,
        common: &[("resistance_at_zero", 100.0), ("lead_resistance", 0.7)],
        exact: 1e-11,
    });
    trips.push(RoundTrip {
        there: Sum::of("opening_flow", "{}"),
        back: Sum::of("opening_size", "{}"),
        from: "free_area",
        over: "air_flow",
        back_from: "air_flow",
        low: 1e-4,
        high: 1.0,
        common: &[("pressure_difference", 3.0)],
        exact: 1e-13,
    });
    for gas in ["carbon monoxide", "nitrogen dioxide"] {
        let settings = format!(r#"{{"gas": "{gas}"}}"#);
        trips.push(RoundTrip {
            there: Sum::of("mass_concentration", &settings),
            back: Sum::of("volume_fraction", &settings),
            from: "fraction",
            over: "mass_concentration",
            back_from: "mass_concentration",
            low: 1e-6,
            high: 1e-2,
            common: &[("temperature", 273.15)],
            exact: 1e-13,
        });
    }
    for trip in trips {
        always(150, trip.low..trip.high, |value| {
            let given = [&[(trip.from, value)][..], trip.common].concat();
            let Some(there) = trip.there.call(&given) else { return Err(TestCaseError::reject("outside what the first accepts")) };
            let given = [&[(trip.back_from, there.get(trip.over))][..], trip.common].concat();
            let Some(back) = trip.back.call(&given) else { return Err(TestCaseError::reject("outside what the second accepts")) };
            near(back.get(trip.from), value, trip.exact)
        });
    }
}

#[test]
fn an_injector_sized_for_a_flow_passes_that_flow() {
    let (size, flow) = (Sum::of("injector_size", r#"{"fuel": "G20"}"#), Sum::of("injector_flow", r#"{"fuel": "G20"}"#));
    always(200, (1e-5..1e-3_f64, 500.0..4000.0_f64, 0.6..0.95_f64), |(wanted, pressure, coefficient)| {
        let common = [("burner_pressure", pressure), ("discharge_coefficient", coefficient)];
        let Some(sized) = size.call(&[&common[..], &[("gas_flow", wanted)]].concat()) else { return Ok(()) };
        let given = [&common[..], &[("injector_diameter", sized.get("injector_diameter"))]].concat();
        let Some(passed) = flow.call(&given) else { return Ok(()) };
        near(passed.get("gas_flow"), wanted, 1e-12)?;
        // Four times the pressure drives twice the gas.
        let four = [("burner_pressure", 4.0 * pressure), given[1], given[2]];
        match flow.call(&four) {
            Some(more) => near(more.get("gas_flow"), 2.0 * wanted, 1e-12),
            None => Ok(()),
        }
    });
}

#[test]
fn heat_over_flow_and_back() {
    let (flow, heat) = (Sum::of("flow_from_heat", "{}"), Sum::of("heat_from_flow", "{}"));
    always(200, (1e3..1e5_f64, 313.0..360.0_f64, 4.0..25.0_f64), |(output, hot, drop)| {
        let Some(there) = flow.call(&[("heat_output", output), ("flow_temperature", hot), ("return_temperature", hot - drop)]) else {
            return Ok(());
        };
        let back = [("volume_flow", there.get("volume_flow_at_return")), ("flow_temperature", hot), ("return_temperature", hot - drop)];
        match heat.call(&back) {
            Some(again) => near(again.get("heat_output"), output, 1e-9),
            None => Ok(()),
        }
    });
}

#[test]
fn gauge_and_absolute_differ_by_the_atmosphere() {
    let absolute = Sum::of("absolute_pressure", "{}");
    always(200, (-5e4..1e6_f64, 9e4..1.05e5_f64), |(gauge, barometer)| {
        let Some(made) = absolute.call(&[("gauge_pressure", gauge), ("barometric_pressure", barometer)]) else { return Ok(()) };
        near(made.get("absolute_pressure") - barometer, gauge, 1e-9)
    });
}

#[test]
fn a_gas_rate_follows_volume_over_time_and_the_gas_law() {
    let rate = Sum::of("gas_rate", "{}");
    always(300, (0.01..1.0_f64, 60.0..600.0_f64, 0.0..1e4_f64, 263.0..313.0_f64, 8e4..1.05e5_f64), |(volume, time, gauge, gas, air)| {
        let call = |volume: f64, time: f64| {
            rate.call(&[
                ("volume", volume),
                ("time", time),
                ("gas_pressure", gauge),
                ("gas_temperature", gas),
                ("barometric_pressure", air),
                ("gross_calorific_value", 37.8e6),
                ("net_calorific_value", 34.0e6),
            ])
        };
        let Some(made) = call(volume, time) else { return Ok(()) };
        near(made.get("gas_rate") * time, volume, 1e-13)?;
        near(made.get("reference_gas_rate"), made.get("gas_rate") * made.get("conversion_factor"), 1e-13)?;
        near(made.get("conversion_factor"), (air + gauge) / 101_325.0 * 288.15 / gas, 1e-12)?;
        near(made.get("heat_input_gross"), made.get("reference_gas_rate") * 37.8e6, 1e-12)?;
        near(made.get("heat_input_net") * made.get("gross_over_net"), made.get("heat_input_gross"), 1e-12)?;
        match call(2.0 * volume, 2.0 * time) {
            Some(same) => near(same.get("heat_input_net"), made.get("heat_input_net"), 1e-13),
            None => Ok(()),
        }
    });
}

#[test]
fn a_pipe_loses_what_convects_and_radiates_and_less_the_thicker_it_is_wrapped() {
    let pipe = Sum::of("pipe_heat_loss", r#"{"tube": "copper 22x0.9", "insulation": "mineral wool"}"#);
    always(150, (310.0..370.0_f64, 273.0..300.0_f64, 0.005..0.08_f64, 0.05..0.95_f64), |(water, air, thickness, emissivity)| {
        let call = |water: f64, thickness: f64| {
            pipe.call(&[
                ("water_temperature", water),
                ("air_temperature", air),
                ("insulation_thickness", thickness),
                ("emissivity", emissivity),
                ("length", 7.0),
            ])
        };
        let Some(made) = call(water, thickness) else { return Ok(()) };
        let per_length = made.get("heat_loss_per_length");
        near(made.get("convection_per_length") + made.get("radiation_per_length"), per_length, 1e-6)?;
        near(made.get("heat_loss"), 7.0 * per_length, 1e-12)?;
        prop_assert!(air < made.get("surface_temperature") && made.get("surface_temperature") < water);
        for (other, sign) in [(call(water + 5.0, thickness), 1.0), (call(water, thickness + 0.01), -1.0)] {
            let Some(other) = other else { continue };
            prop_assert!(sign * (other.get("heat_loss_per_length") - per_length) > 0.0);
        }
        // At the temperature of the room it loses nothing.
        match call(air, thickness) {
            Some(none) => {
                prop_assert!(none.get("heat_loss_per_length").abs() < 1e-6);
                Ok(())
            }
            None => Ok(()),
        }
    });
}

#[test]
fn a_leak_is_no_leak_without_a_drop_and_grows_with_it() {
    let test = Sum::of("tightness_test", "{}");
    always(200, (0.005..1.0_f64, 1000.0..5000.0_f64, 10.0..500.0_f64, 60.0..600.0_f64), |(volume, pressure, drop, time)| {
        let call = |drop: f64| {
            test.call(&[("installation_volume", volume), ("test_pressure", pressure), ("pressure_drop", drop), ("test_duration", time)])
        };
        let (Some(none), Some(some), Some(more)) = (call(0.0), call(drop), call(1.5 * drop)) else { return Ok(()) };
        prop_assert!(none.get("leak_rate").abs() < 1e-18);
        prop_assert!(some.get("leak_rate") > 0.0);
        near(more.get("leak_rate"), 1.5 * some.get("leak_rate"), 1e-9)
    });
}

/// Every field of every calculation: the same value in its unit, in SI, and in other units.
#[test]
fn a_value_reads_the_same_in_every_unit() {
    // Units of the same quantity, with the factor between them exact by definition.
    const PAIRS: [(&str, &str, &str, f64); 10] = [
        ("length", "mm", "in", 25.4),
        ("time", "s", "min", 60.0),
        ("pressure", "Pa", "mbar", 100.0),
        ("pressure", "kPa", "bar", 100.0),
        ("volume", "L", "m3", 1000.0),
        ("power", "W", "kW", 1000.0),
        ("mass", "g", "kg", 1000.0),
        ("volume flow", "L/h", "m3/h", 1000.0),
        ("energy per volume", "kJ/m3", "MJ/m3", 1000.0),
        ("ratio", "ppm", "%", 10_000.0),
    ];
    let mut draws = Draws::new(11);
    let mut pairs = 0;
    for field in CATALOGUE.iter().flat_map(|entry| entry.inputs()) {
        for _ in 0..20 {
            let si = draws.accepted(field);
            // The smallest numbers there are have fewer digits than a text of seventeen.
            if si.is_nan() || si != 0.0 && si.abs() < 1e-300 {
                continue;
            }
            let text = quantity_text(si, field.unit, 17);
            let again = field.read(&text).unwrap_or_else(|e| panic!("{}: {text}: {e}", field.name));
            assert!((again - si).abs() <= 4e-16 * si.abs().max(field.unit.offset), "{}: {si} as {text} is {again}", field.name);
            for (_, small, great, factor) in PAIRS.iter().filter(|(kind, ..)| *kind == field.kind.name) {
                let shown = (draws.unit() * 1000.0).floor() / 8.0;
                let one = field.read(&format!("{} {small}", shown * factor)).unwrap_or_else(|e| panic!("{}: {e}", field.name));
                let other = field.read(&format!("{shown} {great}")).unwrap_or_else(|e| panic!("{}: {e}", field.name));
                assert!((one - other).abs() <= 4e-16 * one.abs(), "{}: {one} and {other}", field.name);
                pairs += 1;
            }
        }
    }
    assert!(pairs > 1000, "{pairs}");
}

/// Every calculation: a last digit lost in a unit moves no result by more than a millionth.
#[test]
fn a_reading_in_other_units_gives_the_same_result() {
    let mut compared = 0;
    let mut far = Vec::new();
    for entry in CATALOGUE {
        let prepared = entry.prepare(&needed_settings(*entry)[0]).unwrap();
        let (mut draws, started) = (Draws::new(5), std::time::Instant::now());
        for round in 0..8 {
            // The slow ones follow a plant for hours.
            if round > 0 && started.elapsed().as_millis() > 30 {
                break;
            }
            let input: Vec<f64> = entry.inputs().iter().map(|f| draws.usual(f)).collect();
            // There and back through the unit the field is shown in, as a face that takes it does.
            let other: Vec<f64> = entry.inputs().iter().zip(&input).map(|(f, v)| f.unit.to_si(f.unit.from_si(*v))).collect();
            let (mut one, mut two) = (vec![0.0; entry.outputs().len()], vec![0.0; entry.outputs().len()]);
            let (first, second) = (prepared.run(&input, &mut one), prepared.run(&other, &mut two));
            if first.is_refused(entry.rules()) || second.is_refused(entry.rules()) {
                continue;
            }
            for ((a, b), field) in one.iter().zip(&two).zip(entry.outputs()) {
                compared += 1;
                let scale = a.abs().max(b.abs()).max(field.unit.factor * 1e-3);
                if (a - b).abs() > 1e-6 * scale || a.is_nan() != b.is_nan() {
                    far.push(format!("{}.{}: {a} and {b}", entry.info().name, field.name));
                }
            }
        }
    }
    assert!(compared > 1000, "{compared}");
    assert!(far.is_empty(), "{} of {compared}:\n{}", far.len(), far.join("\n"));
}

/// A tree of plain values, at most three deep.
fn tree() -> impl Strategy<Value = Node> {
    let leaf = prop_oneof![
        Just(Node::Null),
        any::<bool>().prop_map(Node::Flag),
        any::<f64>().prop_filter("JSON has none other", |n| n.is_finite()).prop_map(Node::Number),
        any::<String>().prop_map(Node::Text),
    ];
    leaf.prop_recursive(3, 24, 6, |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..6).prop_map(Node::List),
            prop::collection::btree_map("[a-z_]{1,8}", inner, 0..6).prop_map(|m| Node::Table(m.into_iter().collect())),
        ]
    })
}

#[test]
fn a_tree_written_as_json_reads_the_same() {
    always(300, tree(), |node| {
        prop_assert_eq!(Node::from_json(&node.to_json()).unwrap(), node);
        Ok(())
    });
}

/// Whatever tree stands where settings are expected, it is taken or refused in words.
#[test]
fn any_tree_as_settings() {
    let names: Vec<&str> = CATALOGUE.iter().flat_map(|e| e.settings().iter().map(|s| s.name)).collect();
    always(150, (prop::collection::vec((0..names.len(), tree()), 0..4), 0..CATALOGUE.len()), |(given, place)| {
        let tree = Node::Table(given.into_iter().map(|(i, node)| (names[i].to_owned(), node)).collect());
        for entry in CATALOGUE.iter().cycle().skip(place).take(20) {
            if let Err(error) = entry.prepare(&tree) {
                prop_assert!(!error.to_string().is_empty());
            }
            // Only its own settings, so that the names are known.
            let Node::Table(all) = &tree else { continue };
            let own = all.iter().filter(|(k, _)| entry.settings().iter().any(|s| s.name == k)).cloned().collect();
            let _ = entry.prepare(&Node::Table(own)).map(drop);
        }
        Ok(())
    });
}
