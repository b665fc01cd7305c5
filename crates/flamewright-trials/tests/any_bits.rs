//! No bits in any field of any calculation make it panic, and what it accepts has finite results.

use flamewright::catalogue::CATALOGUE;
use flamewright_trials::{Draws, fuzz::try_bits, settings};
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
