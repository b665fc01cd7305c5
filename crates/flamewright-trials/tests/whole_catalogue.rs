//! What holds of every calculation: its shown steps work out to its results, first order and draws
//! agree on what its results are worth, and a wanted result is found or said not to be.

use flamewright::catalogue::{CATALOGUE, Prepared, calculation};
use flamewright::explore::goal_seek;
use flamewright::node::Node;
use flamewright::uncertainty::{Covariance, first_order, monte_carlo};
use flamewright_trials::{Draws, needed_settings, usual_range};

/// Every calculation, with the first settings it is tried with.
fn all() -> impl Iterator<Item = (&'static str, Box<dyn Prepared>)> {
    CATALOGUE.iter().map(|entry| (entry.info().name, entry.prepare(&needed_settings(*entry)[0]).unwrap()))
}

/// For every calculation, with uncertainties so small that its curves are straight: two ways that
/// share nothing but the calculation give the same spread.
#[test]
fn first_order_and_draws_agree_over_the_whole_catalogue() {
    const TRIALS: usize = 1500;
    let mut numbers = Draws::new(5);
    let (mut compared, mut apart, mut untouched) = (0, Vec::new(), Vec::new());
    for (name, prepared) in all() {
        let entry = prepared.entry();
        if entry.is_long() && cfg!(debug_assertions) {
            continue;
        }
        let Some((at, _)) = numbers.readings(&*prepared, 3000) else {
            untouched.push(name);
            continue;
        };
        let spans = entry.inputs().iter().map(usual_range);
        let standard: Vec<f64> = spans
            .zip(&at)
            .map(|((low, high), x)| {
                let u = 1e-4 * (high - low).min(x.abs());
                // Not beside the edge of the range, beyond which the sum need not mean anything.
                if u.is_finite() && x - 10.0 * u > low && x + 10.0 * u < high { u } else { 0.0 }
            })
            .collect();
        let inputs = Covariance::independent(&standard);
        let linear = first_order(&*prepared, &at, &inputs);
        let draws = monte_carlo(&*prepared, &at, &inputs, &[], TRIALS, 6).unwrap();
        for (j, output) in entry.outputs().iter().enumerate() {
            let (u, drawn) = (linear.standard(j), draws.standard(j));
            // Not those that nothing moves, and not those without a value.
            if u.is_nan() || drawn.is_nan() || u <= 1e-9 * linear.outputs()[j].abs() && drawn <= 1e-9 * linear.outputs()[j].abs() {
                continue;
            }
            // A step by step rule has no slope, and without leads their error is rounding only.
            if ["uk_band_deduction", "lead_error"].contains(&output.name) {
                continue;
            }
            compared += 1;
            if (drawn / u - 1.0).abs() > 5.0 / (2.0 * TRIALS as f64).sqrt() {
                apart.push(format!("{name}.{}: first order {u:e}, drawn {drawn:e}, value {:e}", output.name, linear.outputs()[j]));
            }
        }
    }
    assert!(compared > 350, "{compared} outputs compared");
    assert!(apart.is_empty(), "{apart:#?}");
    assert!(untouched.len() <= 3, "no readings for {untouched:?}");
}

/// What `prepared` makes of `at` with input `i` at `x`; not-a-number where it is refused.
fn with_input(prepared: &dyn Prepared, at: &[f64], i: usize, x: f64) -> Vec<f64> {
    let mut point = at.to_vec();
    point[i] = x;
    let mut output = vec![f64::NAN; prepared.entry().outputs().len()];
    if prepared.run(&point, &mut output).is_refused(prepared.entry().rules()) {
        output.fill(f64::NAN);
    }
    output
}

/// Every input of every calculation, varied over its usual range, for several of its outputs: what
/// can be reached is found to ten digits, and what cannot is said not to be.
#[test]
fn what_is_sought_comes_out_or_is_said_not_to() {
    let mut draws = Draws::new(21);
    let (mut found, mut none, mut untouched) = (0, 0, Vec::new());
    for (name, prepared) in all() {
        let entry = prepared.entry();
        let slow = entry.is_long();
        // A seek is a hundred evaluations.
        if slow && cfg!(debug_assertions) {
            continue;
        }
        let Some((at, here)) = draws.readings(&*prepared, if slow { 20 } else { 3000 }) else {
            untouched.push(name);
            continue;
        };
        let mut sought = 0;
        for (i, input) in entry.inputs().iter().enumerate() {
            let (low, high) = usual_range(input);
            if !(low < high && high.is_finite() && low.is_finite()) || slow && sought > 0 {
                continue;
            }
            let check = |j: usize, wanted: f64| {
                let output = &entry.outputs()[j];
                let goal = goal_seek(&*prepared, &at, input.name, low, high, output.name, wanted)?;
                let place = format!("{name}: {} = {wanted}, got {} at {} = {}", output.name, goal.output[j], input.name, goal.value);
                let largest = if wanted == 0.0 { here[j].abs().max(with_input(&*prepared, &at, i, high)[j].abs()) } else { wanted.abs() };
                assert!((goal.output[j] - wanted).abs() <= 1e-10 * largest, "{place}");
                assert_eq!(with_input(&*prepared, &at, i, goal.value)[j].to_bits(), goal.output[j].to_bits(), "{place}");
                assert!((low..=high).contains(&goal.value), "{place}");
                Ok::<(), flamewright::Error>(())
            };
            let there = with_input(&*prepared, &at, i, low + (high - low) * draws.unit());
            for _ in 0..if slow { 1 } else { 3 } {
                let j = (draws.unit() * there.len() as f64) as usize;
                // The greatest difference of two nearly equal curves: rounding alone makes it jump by 1e-9 of itself.
                if there[j].is_finite() && entry.outputs()[j].name != "largest_deviation" {
                    check(j, there[j]).unwrap_or_else(|error| panic!("{name}: {error}"));
                    found += 1;
                    sought += 1;
                    // What lies ten times its distance from the value here is mostly out of reach.
                    let beyond = here[j] + 10.0 * (there[j] - here[j]);
                    if beyond.is_finite()
                        && !slow
                        && let Err(error) = check(j, beyond)
                    {
                        assert_eq!(error.code(), "no_solution", "{name}");
                        let text = error.to_string();
                        assert!(text.contains("runs from") && text.contains("is wanted"), "{name}: {text}");
                        none += 1;
                    }
                }
            }
        }
    }
    assert!(found > 1200 && none > 400, "{found} found, {none} none");
    assert!(untouched.len() <= 3, "no readings for {untouched:?}");
}

#[test]
fn the_last_drop_before_a_wider_tube_is_found() {
    // As the gas warms the drop rises, until a section needs the next tube: near 34.84 °C here, a
    // fraction of a step from the end of the range.
    let settings = r#"{"sections": [{"name": "only", "length": "5 m", "load": "20 kW"}], "tubes": ["copper 15x0.7", "copper 28x0.9"]}"#;
    let entry = calculation("gas_pipe_sizing").unwrap();
    let sizing = entry.prepare(&Node::from_json(settings).unwrap()).unwrap();
    let at = [1197.247, 6.3565025, 13828.586, 0.7854957, f64::NAN, 97162.87];
    let seek = |wanted| goal_seek(&*sizing, &at, "gas_temperature", 263.15, 308.15, "greatest_drop", wanted);
    for temperature in [307.9, 307.95, 308.0, 308.05] {
        let wanted = with_input(&*sizing, &at, 4, temperature)[1];
        let goal = seek(wanted).unwrap_or_else(|error| panic!("{wanted} Pa, as at {temperature} K: {error}"));
        assert!((goal.output[1] - wanted).abs() <= 1e-10 * wanted);
    }
    // Between the drops on the two sides there is none.
    let text = seek(33.0).unwrap_err().to_string();
    assert!(text.contains("greatest_drop was 33 Pa nowhere that was looked at: it jumps over that at gas_temperature = 34.8"), "{text}");
}

/// Every calculation, on readings drawn from its usual ranges.
#[test]
fn every_step_of_the_catalogue_works_out_to_what_was_computed() {
    let mut draws = Draws::new(3);
    let mut untouched = Vec::new();
    for (name, prepared) in all() {
        let rounds = if prepared.entry().is_long() { 1 } else { 6 };
        let mut reached = false;
        for _ in 0..rounds {
            let Some((input, _)) = draws.readings(&*prepared, 3000) else { break };
            let steps = prepared.steps(&input).unwrap();
            reached |= !steps.is_empty();
            for step in &steps {
                let (value, again) = (step.value(), step.recomputed());
                let same =
                    value == again || (value - again).abs() <= 1e-9 * value.abs().max(again.abs()) || value.is_nan() && again.is_nan();
                assert!(same, "{name}: {} is recomputed as {again}", step.plain());
                let braces = step.latex().chars().fold(0, |depth, letter| depth + i32::from(letter == '{') - i32::from(letter == '}'));
                assert_eq!(braces, 0, "{name}: {}", step.latex());
                assert!(!step.source().is_empty(), "{name}: {} has no source", step.plain());
            }
        }
        if !reached {
            untouched.push(name);
        }
    }
    assert!(untouched.len() <= 3, "no steps seen of {untouched:?}");
}
