//! Every calculation of gas supply, air, water, material and system, fed with the ends of its ranges, with draws from within,
//! and with not-a-number in each place: it answers or refuses, and never panics or makes a number
//! out of nothing.

mod typical;

use flamewright::catalogue::{CATALOGUE, Prepared};
use flamewright::record::Field;

const NAMES: [&str; 48] = [
    "installation_volume",
    "tightness_test",
    "tightness_plan",
    "let_by",
    "leak_scaling",
    "leak_class",
    "purge",
    "purge_velocity",
    "injector_flow",
    "injector_size",
    "burner_pressure",
    "altitude",
    "gas_pipe_drop",
    "gas_pipe_discharge",
    "gas_installation",
    "gas_pipe_sizing",
    "vent_free_area",
    "opening_flow",
    "opening_size",
    "ventilation_need",
    "room_concentration",
    "natural_draught",
    "flue_flow",
    "flue_gas_flow",
    "chimney_draught",
    "friction_factor",
    "liquid_water",
    "antifreeze_mixture",
    "boiling_point",
    "tube_run",
    "material_properties",
    "flow_from_heat",
    "heat_from_flow",
    "emitter_output",
    "emitter_at_flow",
    "water_pressure_drop",
    "fitting_loss",
    "static_head",
    "duty_point",
    "valve_kv",
    "circuit_balance",
    "expansion_vessel",
    "vessel_check",
    "system_content",
    "heat_store",
    "inhibitor_dose",
    "antifreeze_dose",
    "partial_drain",
];

/// A value of a field, often from the end of its range.
fn reading(draws: &mut typical::Draws, field: &Field) -> f64 {
    let (low, high) = typical::usual(field);
    match (draws.next() * 8.0) as u32 {
        0 => field.minimum,
        1 => field.maximum,
        2 if !field.absent.is_empty() => f64::NAN,
        3 if !field.default.is_nan() => field.default,
        _ => low + (high - low) * draws.next(),
    }
}

fn run(prepared: &dyn Prepared, input: &[f64]) -> (bool, Vec<f64>) {
    let entry = prepared.entry();
    let mut output = vec![f64::NAN; entry.outputs().len()];
    let judged = prepared.run(input, &mut output);
    let refused = judged.is_refused(entry.rules());
    if refused {
        // Every refusal has words.
        let error = judged.error(entry.inputs(), entry.rules(), input, entry.outputs(), &output);
        assert!(!error.to_string().is_empty());
    } else {
        let _ = judged.notices(entry.inputs(), entry.rules(), input);
        let _ = prepared.tables(input);
    }
    (refused, output)
}

#[test]
fn every_calculation_answers_or_refuses() {
    for name in NAMES {
        let entry = CATALOGUE.iter().find(|entry| entry.info().name == name).unwrap_or_else(|| panic!("no calculation {name}"));
        let prepared = entry.prepare(&typical::settings(*entry)).unwrap_or_else(|error| panic!("{name}: {error}"));
        let mut draws = typical::Draws(7);
        let mut answered = 0;
        for _ in 0..3000 {
            let input: Vec<f64> = entry.inputs().iter().map(|field| reading(&mut draws, field)).collect();
            let (refused, output) = run(&*prepared, &input);
            if refused {
                continue;
            }
            answered += 1;
            for (field, value) in entry.outputs().iter().zip(&output) {
                assert!(
                    value.is_finite() || (value.is_nan() && !field.absent.is_empty()),
                    "{name}.{} = {value} from {input:?}",
                    field.name
                );
            }
            // Not-a-number in a field that must be given is refused, and never computes to a number throughout.
            for (place, field) in entry.inputs().iter().enumerate().filter(|(_, field)| field.absent.is_empty()).take(answered % 3) {
                let mut hole = input.clone();
                hole[place] = f64::NAN;
                assert!(run(&*prepared, &hole).0, "{name}: {} left open", field.name);
            }
        }
        assert!(answered >= 20, "{name} answered {answered} of 3000 draws");
    }
}

#[test]
fn a_hole_in_the_input_is_a_hole_in_the_output() {
    let mut found = Vec::new();
    for name in NAMES {
        let Some(entry) = CATALOGUE.iter().find(|entry| entry.info().name == name) else { continue };
        let prepared = entry.prepare(&typical::settings(*entry)).unwrap_or_else(|error| panic!("{name}: {error}"));
        let mut output = vec![0.0; entry.outputs().len()];
        prepared.compute(&vec![f64::NAN; entry.inputs().len()], &mut output);
        let made_up = entry.outputs().iter().zip(&output).filter(|(_, value)| !value.is_nan());
        // What depends on the settings alone stands.
        if ["tube_run", "material_properties", "system_content"].contains(&name) {
            continue;
        }
        let settled = ["gas_ratio_orifice", "pipe_volume", "gross_wobbe_index", "new_gross_wobbe_index", "wobbe_ratio"];
        found.extend(
            made_up.map(|(field, _)| field.name).filter(|result| !settled.contains(result)).map(|result| format!("{name}.{result}")),
        );
    }
    assert!(found.is_empty(), "made up out of nothing: {found:?}");
}
