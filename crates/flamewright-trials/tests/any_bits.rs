//! No bits in any field of any calculation make it panic, what it accepts has finite results, and a
//! hole in what it needs is no number.

use flamewright::catalogue::CATALOGUE;
use flamewright_trials::{Draws, fuzz::try_bits, needed_settings, settings};
use std::time::{Duration, Instant};

/// A calculation gets no more readings when it has taken so long over those it has.
const LONG: Duration = Duration::from_millis(12);

#[test]
fn every_calculation_can_be_made() {
    let mut failed = Vec::new();
    for entry in CATALOGUE {
        for table in settings(*entry) {
            if let Err(error) = entry.prepare(&table) {
                failed.push(format!("{} with {}: {error}", entry.info().name, table.to_json()));
            }
        }
    }
    assert!(failed.is_empty(), "{}", failed.join("\n"));
}

/// One kind of reading through every calculation in every setting; how many readings there were.
fn walk(readings: usize, draw: fn(&mut Draws, &flamewright::record::Field) -> f64) -> usize {
    let mut walked = 0;
    for entry in CATALOGUE {
        for (k, table) in settings(*entry).iter().enumerate() {
            let prepared = entry.prepare(table).unwrap();
            let (mut draws, started) = (Draws::new(k as u64), Instant::now());
            for i in 0..readings {
                if i > 0 && started.elapsed() > LONG {
                    break;
                }
                let input: Vec<f64> = entry.inputs().iter().map(|field| draw(&mut draws, field)).collect();
                try_bits(&*prepared, &input);
                walked += 1;
            }
        }
    }
    walked
}

#[test]
fn readings_at_the_ends_of_the_ranges() {
    assert!(walk(400, Draws::accepted) > 1_000);
}

#[test]
fn any_bits() {
    assert!(walk(150, |draws, field| f64::from_bits(draws.bits()) + 0.0 * field.minimum) > 1_000);
    assert!(walk(150, Draws::anything) > 1_000);
}

/// Each field alone takes every odd value, the others being good: past the first refusal.
#[test]
fn one_odd_value_among_good_ones() {
    for entry in CATALOGUE {
        let table = &settings(*entry)[0];
        let prepared = entry.prepare(table).unwrap();
        let (mut draws, started) = (Draws::new(3), Instant::now());
        for round in 0..40 {
            if round > 0 && started.elapsed() > LONG {
                break;
            }
            for place in 0..entry.inputs().len() {
                let mut input: Vec<f64> = entry.inputs().iter().map(|field| draws.usual(field)).collect();
                input[place] = draws.anything(&entry.inputs()[place]);
                try_bits(&*prepared, &input);
            }
        }
    }
}

/// Usual readings are accepted, and refused as soon as one that is needed is left open.
#[test]
fn what_must_be_given_is_asked_for() {
    let mut untouched = Vec::new();
    for entry in CATALOGUE {
        let name = entry.info().name;
        let prepared = entry.prepare(&needed_settings(*entry)[0]).unwrap();
        let mut draws = Draws::new(7);
        for _ in 0..if entry.is_long() { 1 } else { 20 } {
            let Some((input, mut output)) = draws.readings(&*prepared, 3000) else {
                untouched.push(name);
                break;
            };
            try_bits(&*prepared, &input);
            for (place, field) in entry.inputs().iter().enumerate().filter(|(_, field)| field.absent.is_empty()) {
                let mut hole = input.clone();
                hole[place] = f64::NAN;
                let judged = prepared.run(&hole, &mut output);
                assert!(judged.is_refused(entry.rules()), "{name}: {} left open", field.name);
            }
        }
    }
    assert!(untouched.len() <= 3, "no readings for {untouched:?}");
}

/// What comes out of nothing but not-a-number is decided by the settings alone, so every reading gives
/// the same; what may be left out is left out, and not every calculation does without.
#[test]
fn nothing_is_made_up() {
    let mut compared = 0;
    for entry in CATALOGUE.iter().filter(|entry| !entry.is_long()) {
        let name = entry.info().name;
        let prepared = entry.prepare(&needed_settings(*entry)[0]).unwrap();
        let mut nothing = vec![0.0; entry.outputs().len()];
        prepared.compute(&vec![f64::NAN; entry.inputs().len()], &mut nothing);
        let mut draws = Draws::new(5);
        for _ in 0..10 {
            let Some((mut input, mut output)) = draws.readings(&*prepared, 3000) else { break };
            for (value, _) in input.iter_mut().zip(entry.inputs()).filter(|(_, field)| !field.absent.is_empty()) {
                *value = f64::NAN;
            }
            if prepared.run(&input, &mut output).is_refused(entry.rules()) {
                continue;
            }
            for ((field, with), without) in entry.outputs().iter().zip(&output).zip(&nothing).filter(|(_, without)| !without.is_nan()) {
                assert_eq!(with, without, "{name}.{} is {without} without any reading", field.name);
            }
            compared += 1;
        }
    }
    assert!(compared > 700, "{compared} readings compared");
}
