//! Refusals and notices: the example of a calculation with one thing changed, and every code that
//! must then be raised, no more and no fewer. A condition turned round, a unit slipped or a limit
//! on the wrong side fails here, which no reference table would see.

#![cfg(feature = "text")]

use flamewright::catalogue::{Bare, evaluate};
use flamewright::node::Node;

/// The calculation, what is changed in its example (`name = ""` leaves it out), and the codes.
const CASES: &[(&str, &str, &[&str])] = &[
    ("flue_analysis", "", &[]),
    ("flue_analysis", r#"oxygen_dry = """#, &["NOTHING_MEASURED"]),
    ("flue_analysis", r#"oxygen_dry = "12.1 %""#, &["DILUTED"]),
    ("flue_analysis", r#"oxygen_dry = "11.9 %""#, &[]),
    ("flue_analysis", r#"oxygen_dry = "20.6 %""#, &["READS_AIR"]),
    ("flue_analysis", r#"oxygen_dry = "", carbon_dioxide_dry = "6.8 %""#, &[]),
    // Methane with 5.1 % of carbon dioxide has 11.9 % of oxygen left, with 4.9 % 12.3 %.
    ("flue_analysis", r#"oxygen_dry = "", carbon_dioxide_dry = "5.1 %""#, &[]),
    ("flue_analysis", r#"oxygen_dry = "", carbon_dioxide_dry = "4.9 %""#, &["DILUTED"]),
    ("flue_analysis", r#"oxygen_dry = "", carbon_dioxide_dry = "0.1 %""#, &["MOSTLY_AIR"]),
    // Together more carbon than 1.02 times the 11.75 % of stoichiometric combustion.
    ("flue_analysis", r#"oxygen_dry = "", carbon_dioxide_dry = "11.6 %", carbon_monoxide_dry = "0.5 %""#, &["MORE_THAN_MAXIMUM"]),
    ("flue_analysis", r#"fuel = "H2", oxygen_dry = "", carbon_dioxide_dry = "0.5 %""#, &["NO_CARBON_IN_FUEL"]),
    ("flue_analysis", r#"flue_temperature = "17 degC""#, &["FLUE_NOT_WARMER_THAN_AIR"]),
    ("flue_analysis", r#"flue_temperature = "40 degC""#, &["CONDENSING"]),
    ("flue_analysis", r#"carbon_dioxide_dry = "6.8 %""#, &[]),
    ("flue_analysis", r#"carbon_dioxide_dry = "7.4 %""#, &["DOES_NOT_CLOSE"]),
    ("flue_analysis", r#"carbon_dioxide_dry = "6.1 %""#, &["DOES_NOT_CLOSE"]),
    ("flue_analysis", r#"carbon_monoxide_dry = "3000 ppm""#, &[]),
    ("flue_analysis", r#"carbon_monoxide_dry = "4000 ppm""#, &["DOUBTFUL_RATIO"]),
    ("carbon_monoxide", "", &[]),
    ("carbon_monoxide", r#"carbon_monoxide_dry = "3390 ppm""#, &[]),
    ("carbon_monoxide", r#"carbon_monoxide_dry = "3410 ppm""#, &["DOUBTFUL_RATIO"]),
    ("carbon_monoxide", r#"carbon_dioxide_dry = """#, &["NOTHING_BESIDE_IT"]),
    ("carbon_monoxide", r#"carbon_dioxide_dry = "", oxygen_dry = "4 %""#, &["NO_OXYGEN_OF_AIR"]),
    ("carbon_monoxide", r#"oxygen_dry = "13.9 %", air_oxygen = "20.95 %""#, &[]),
    ("carbon_monoxide", r#"oxygen_dry = "14.1 %", air_oxygen = "20.95 %""#, &["MUCH_AIR"]),
    ("flue_emissions", "", &[]),
    ("flue_emissions", r#"oxygen_dry = "13.9 %""#, &[]),
    ("flue_emissions", r#"oxygen_dry = "14.1 %""#, &["MUCH_AIR"]),
    ("flue_emissions", r#"oxygen_dry = "18 %""#, &["MUCH_AIR"]),
    ("siegert_constants", r#"least_oxygen = "5 %", most_oxygen = "4 %""#, &["EMPTY_FIELD"]),
    ("siegert_constants", r#"least_oxygen = "5 %", most_oxygen = "5.05 %""#, &["EMPTY_FIELD"]),
    ("siegert_constants", r#"least_oxygen = "5 %", most_oxygen = "5.5 %""#, &[]),
    ("gas_rate", "", &["VALUE_OF_THE_FUEL"]),
    ("gas_rate", r#"gross_calorific_value = "37.8 MJ/m3""#, &["OTHER_BASIS_BY_THE_FUEL"]),
    ("gas_rate", r#"net_calorific_value = "34.0 MJ/m3""#, &["OTHER_BASIS_BY_THE_FUEL"]),
    ("gas_rate", r#"gross_calorific_value = "37.8 MJ/m3", net_calorific_value = "34.0 MJ/m3""#, &[]),
    ("gas_rate", r#"gross_calorific_value = "34.0 MJ/m3", net_calorific_value = "37.8 MJ/m3""#, &["NET_ABOVE_GROSS"]),
    ("gas_rate", r#"gross_calorific_value = "37.8 MJ/m3", net_calorific_value = "36.2 MJ/m3""#, &["RATIO_UNUSUAL"]),
    ("gas_rate", r#"gross_calorific_value = "37.8 MJ/m3", net_calorific_value = "31.0 MJ/m3""#, &["RATIO_UNUSUAL"]),
    ("gas_rate", r#"volume = """#, &["NO_VOLUME"]),
    ("gas_rate", r#"dial_volume = "0.01 m3""#, &["TWO_VOLUMES"]),
    ("gas_rate", r#"volume = "", dial_volume = "0.01 m3""#, &["NO_VOLUME"]),
    ("gas_rate", r#"volume = "", dial_volume = "0.01 m3", revolutions = 10"#, &["VALUE_OF_THE_FUEL"]),
    ("gas_rate", r#"volume = "", index_start = 10, index_end = 10.1"#, &["INDEX_UNIT_UNKNOWN"]),
    ("gas_rate", r#"volume = "", index_start = 10, index_end = 10.1, index_unit = "m3""#, &["VALUE_OF_THE_FUEL"]),
    ("gas_rate", r#"volume = "", index_start = 10.1, index_end = 10, index_unit = "m3""#, &["INDEX_RUNS_BACK"]),
    ("gas_rate", r#"gas_temperature = """#, &["CONDITIONS_INCOMPLETE"]),
    ("gas_rate", r#"gas_pressure = """#, &["CONDITIONS_INCOMPLETE"]),
    ("gas_rate", r#"barometric_pressure = """#, &["CONDITIONS_INCOMPLETE"]),
    ("gas_rate", r#"barometric_pressure = "", gas_pressure = "", gas_temperature = "", altitude = "100 m""#, &["CONDITIONS_INCOMPLETE"]),
    ("gas_rate", r#"barometric_pressure = "", altitude = "100 m""#, &["VALUE_OF_THE_FUEL"]),
    ("gas_rate", r#"altitude = "100 m""#, &["BAROMETER_TAKEN", "VALUE_OF_THE_FUEL"]),
    ("gas_rate", r#"barometric_pressure = "", gas_pressure = "", gas_temperature = """#, &["UNCORRECTED", "VALUE_OF_THE_FUEL"]),
    ("gas_rate", r#"gas_pressure = "99 mbar""#, &["VALUE_OF_THE_FUEL"]),
    ("gas_rate", r#"gas_pressure = "101 mbar""#, &["PRESSURE_TOO_HIGH"]),
    ("gas_rate", r#"gas_pressure = "101 mbar", medium_pressure = true"#, &["VALUE_OF_THE_FUEL"]),
    ("gas_rate", r#"fuel = "", net_calorific_value = "34.0 MJ/m3""#, &[]),
    ("gas_rate", r#"fuel = "", gross_calorific_value = "37.8 MJ/m3""#, &["PLATE_WITHOUT_VALUE"]),
    ("gas_rate", r#"fuel = "", net_calorific_value = "34.0 MJ/m3", plate_heat_input_gross = "31 kW""#, &["PLATE_WITHOUT_VALUE"]),
    // About 27.3 kW net pass here.
    ("gas_rate", r#"plate_heat_input_net = "22 kW""#, &["VALUE_OF_THE_FUEL"]),
    ("gas_rate", r#"plate_heat_input_net = "19 kW""#, &["VALUE_OF_THE_FUEL", "FAR_FROM_PLATE"]),
    ("gas_rate", r#"plate_heat_input_net = "60 kW""#, &["VALUE_OF_THE_FUEL", "FAR_FROM_PLATE"]),
    ("gas_rate_uncertainty", "", &[]),
    ("gas_rate_uncertainty", r#"gas_pressure = "20 mbar""#, &["CONDITIONS_INCOMPLETE"]),
    ("gas_rate_uncertainty", r#"gas_pressure = "20 mbar", barometric_pressure = "1004 mbar""#, &["CONDITIONS_INCOMPLETE"]),
    ("gas_rate_uncertainty", r#"gas_pressure = "20 mbar", barometric_pressure = "1004 mbar", gas_temperature = "9 degC""#, &[]),
    // A step as large as the volume, and no more than a press of the watch.
    ("gas_rate_uncertainty", r#"volume = "0.001 m3", time = "20 s""#, &["RESOLUTION_DECIDES"]),
    ("gas_rate_uncertainty", r#"meter_resolution = "0.000001 m3", maximum_permissible_error = "0 %", time = "3 s""#, &["TIMING_DECIDES"]),
    ("gas_rate_test_time", "", &[]),
    ("gas_rate_test_time", r#"gross_calorific_value = """#, &["NO_RATE"]),
    ("gas_rate_test_time", r#"heat_input_gross = "", gross_calorific_value = """#, &["NO_RATE"]),
    ("gas_rate_test_time", r#"heat_input_gross = """#, &["NO_RATE"]),
    ("gas_rate_test_time", r#"gas_rate = "3 m3/h""#, &["TWO_RATES"]),
    ("gas_rate_test_time", r#"meter_resolution = """#, &["NOTHING_ASKED"]),
    ("gas_rate_test_time", r#"wanted_uncertainty = """#, &["NOTHING_ASKED"]),
    ("gas_rate_test_time", r#"meter_resolution = "", volume = "0.1 m3""#, &[]),
    ("gas_rate_test_time", r#"meter_resolution = "0.1 m3""#, &["LONG"]),
    ("thermistor_check", "", &["NO_TOLERANCE", "OUTSIDE_BAND"]),
    ("thermistor_check", r#"resistance_tolerance = "10 %""#, &[]),
    ("thermistor_check", r#"beta_tolerance = "1 %", measured_resistance = "10 kohm""#, &["OUTSIDE_BAND"]),
    ("thermistor_check", r#"temperature_tolerance = "3 K", measured_resistance = "1 kohm""#, &["OUTSIDE_BAND"]),
    ("thermistor_check", r#"resistance_tolerance = "10 %", beta_tolerance = "10 %""#, &[]),
    ("thermistor_check", r#"resistance_tolerance = "10 %", temperature_tolerance = "0.1 K""#, &[]),
    ("thermistor_fit", "", &[]),
    ("thermistor_fit", r#"resistance = "1000 ohm""#, &["EXTRAPOLATED"]),
    ("thermistor_fit", r#"resistance = "40 kohm""#, &["EXTRAPOLATED"]),
    ("thermistor_fit", r#"second_resistance = "33 kohm""#, &["NOT_FALLING"]),
    ("thermistor_fit", r#"second_temperature = "4 degC", second_resistance = "26 kohm""#, &["CLOSE_POINTS"]),
    ("thermocouple_temperature", "", &[]),
    // Type B gives no voltage worth reading near a room's temperature; its function begins at 0 °C.
    ("thermocouple_temperature", r#"type = "B", reference_junction_temperature = "-5 degC""#, &["REFERENCE_OUTSIDE"]),
    (
        "thermocouple_temperature",
        r#"type = "B", class = "2", voltage = "0.1 mV", reference_junction_temperature = "5 degC""#,
        &["INSENSITIVE", "BEYOND_CLASS"],
    ),
    // Class 2 of types K and R, IEC 60584-1: -40 to 1200 °C, 0 to 1600 °C.
    ("thermocouple_voltage", r#"type = "K", class = "2", temperature = "-39 degC""#, &[]),
    ("thermocouple_voltage", r#"type = "K", class = "2", temperature = "-41 degC""#, &["BEYOND_CLASS"]),
    ("thermocouple_voltage", r#"type = "K", class = "2", temperature = "1201 degC""#, &["BEYOND_CLASS"]),
    ("thermocouple_voltage", r#"type = "R", class = "2", temperature = "1601 degC""#, &["BEYOND_CLASS"]),
    // Classes of IEC 60751: A wound from -100 to 450 °C, film from -30 to 300 °C; B film from -50 to 500 °C.
    ("platinum_resistance", r#"class = "A", temperature = "-99 degC""#, &[]),
    ("platinum_resistance", r#"class = "A", temperature = "-101 degC""#, &["BEYOND_CLASS"]),
    ("platinum_resistance", r#"class = "A", temperature = "451 degC""#, &["BEYOND_CLASS"]),
    ("platinum_resistance", r#"class = "A", construction = "film", temperature = "-31 degC""#, &["BEYOND_CLASS"]),
    ("platinum_resistance", r#"class = "AA", construction = "film", temperature = "-1 degC""#, &["BEYOND_CLASS"]),
    ("platinum_resistance", r#"class = "AA", construction = "film", temperature = "149 degC""#, &[]),
    ("platinum_resistance", r#"class = "B", construction = "film", temperature = "501 degC""#, &["BEYOND_CLASS"]),
    ("platinum_resistance", r#"class = "C", construction = "film", temperature = "501 degC""#, &[]),
    ("thermocouple_voltage", r#"type = "B", temperature = "-5 degC", reference_junction_temperature = "20 degC""#, &["TYPE_OUTSIDE"]),
    ("thermocouple_voltage", r#"type = "B", temperature = "900 degC", reference_junction_temperature = "-5 degC""#, &["REFERENCE_OUTSIDE"]),
    ("let_by", "", &[]),
    ("let_by", r#"pressure_rise = "0.2 mbar""#, &["NOT_READABLE"]),
    ("let_by", r#"pressure_rise = "-0.6 mbar""#, &["FELL"]),
    ("tightness_test", r#"pressure_drop = "-0.6 mbar", readable_movement = "0.25 mbar""#, &["READING_ROSE"]),
    ("tightness_test", r#"pressure_drop = "0.2 mbar", readable_movement = "0.25 mbar""#, &["NOT_READABLE"]),
    ("emitter_output", "", &[]),
    ("emitter_output", r#"return_temperature = "66 degC""#, &["RETURN_HOTTER"]),
    ("emitter_output", r#"flow_temperature = "35 degC", return_temperature = "24 degC", room_temperature = "25 degC""#, &["ROOM_TOO_WARM"]),
    ("emitter_output", r#"rated_flow_temperature = "60 degC""#, &["RATING_IMPOSSIBLE"]),
    // 0.7 of an excess of 45 K is 31.5 K.
    ("emitter_output", r#"mean_excess = "arithmetic", return_temperature = "52 degC""#, &[]),
    ("emitter_output", r#"mean_excess = "arithmetic", return_temperature = "51 degC""#, &["USE_LOGARITHMIC"]),
    ("emitter_output", r#"mean_excess = "logarithmic", return_temperature = "51 degC""#, &[]),
    ("emitter_at_flow", r#"mean_excess = "arithmetic", mass_flow = "500 kg/h""#, &[]),
    ("emitter_at_flow", r#"mean_excess = "arithmetic", mass_flow = "20 kg/h""#, &["USE_LOGARITHMIC"]),
    ("emitter_at_flow", r#"mean_excess = "logarithmic", mass_flow = "20 kg/h""#, &[]),
    ("emitter_at_flow", r#"flow_temperature = "24 degC", room_temperature = "25 degC""#, &["ROOM_TOO_WARM"]),
    ("vessel_check", r#"highest_temperature = "15 degC", fill_temperature = "20 degC""#, &["NOT_HOTTER"]),
    ("vessel_check", r#"glycol_mass_fraction = "30 %""#, &["GLYCOL_IN_WATER"]),
    ("vessel_check", r#"fluid = "propylene glycol", glycol_mass_fraction = "30 %", highest_temperature = "101 degC""#, &["GLYCOL_TOO_HOT"]),
    ("heat_store", "", &[]),
    ("heat_store", r#"end_temperature = "82 degC""#, &["SAME_TEMPERATURE"]),
    ("heat_store", r#"cast_iron_mass = "0 kg""#, &[]),
    ("heat_store", r#"cast_iron_mass = "0 kg", water_content = "0 L""#, &["NOTHING_THERE"]),
    ("heat_store", r#"glycol_mass_fraction = "30 %""#, &["GLYCOL_IN_WATER"]),
    ("overshoot", r#"burner_output = "1 kW""#, &["NEVER_STOPS"]),
    ("natural_draught", r#"mean_flue_temperature = "10 degC", outdoor_temperature = "30 degC""#, &["REVERSED"]),
];

/// The example with what is changed.
fn changed(examples: &Node, name: &str, change: &str) -> Node {
    let example = examples.get(name).unwrap_or_else(|| panic!("no example of {name}"));
    let changes = Node::from_toml(&format!("it = {{ {change} }}")).unwrap_or_else(|e| panic!("{change}: {e}"));
    let changes = changes.get("it").unwrap();
    let mut entries: Vec<(String, Node)> = example.entries(name).unwrap().map(|(key, value)| (key.to_owned(), value.clone())).collect();
    for (key, value) in changes.entries("it").unwrap() {
        entries.retain(|(known, _)| known != key);
        if *value != Node::from("") {
            entries.push((key.to_owned(), value.clone()));
        }
    }
    Node::Table(entries)
}

#[test]
fn each_condition_raises_its_code_and_no_other() {
    let examples = Node::from_toml(include_str!("../examples.toml")).unwrap();
    let mut wrong = Vec::new();
    for (name, change, codes) in CASES {
        let raised: Vec<String> = match evaluate(name, &changed(&examples, name, change), Bare::Refused) {
            // A field outside its usual range is a notice of its own.
            Ok(outcome) => outcome.notices.iter().map(|n| n.code.to_owned()).filter(|code| code != "UNUSUAL").collect(),
            Err(error) => vec![error.code().to_owned()],
        };
        let (mut raised, mut wanted): (Vec<&str>, Vec<&str>) = (raised.iter().map(String::as_str).collect(), codes.to_vec());
        raised.sort_unstable();
        wanted.sort_unstable();
        if raised != wanted {
            wrong.push(format!("{name} with {change}: {raised:?}, not {wanted:?}"));
        }
    }
    assert!(wrong.is_empty(), "{} of {}:\n{}", wrong.len(), CASES.len(), wrong.join("\n"));
}
