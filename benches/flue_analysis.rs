//! What a flue analysis costs: one call with and without validation, the same sum on bare `f64`,
//! and columns. `cargo bench -p flamewright-columns --bench flue_analysis`
//!
//! Each contender is timed in turn, round after round, and the least and the median are printed;
//! readings are invented.

use flamewright::calculation::Calculation;
use flamewright::combustion::air::{DryAir, humidity_mole_ratio};
use flamewright::flue::kernel::FlueKernel;
use flamewright::flue::{FlueAnalysis, FlueReading};
use flamewright::fuel::Fuel;
use flamewright::node::Node;
use flamewright::quantity::Value;
use flamewright::record::Record;
use flamewright::working::Silent;
use flamewright_columns::{Column, Status, columns};
use std::hint::black_box;
use std::time::Instant;

/// Rows: one chunk, so that columns run on one thread and stay in the cache.
const ROWS: usize = 16 * 1024;
const ROUNDS: usize = 200;

/// The twin on bare numbers: the sums of [`FlueAnalysis`] without record, units, basis or rules.
#[inline(always)]
fn bare(kernel: &FlueKernel, input: [f64; 7]) -> [f64; 20] {
    let [oxygen, carbon_dioxide, carbon_monoxide, flue, air, pressure, relative_humidity] = input;
    let derived = kernel.oxygen_from_carbon_dioxide(carbon_dioxide, carbon_monoxide);
    let combustion = kernel.combustion(if oxygen.is_nan() { derived } else { oxygen }, carbon_monoxide, &mut Silent);
    let humidity = humidity_mole_ratio(relative_humidity, air, pressure);
    let water = kernel.water(&combustion, humidity, flue, pressure, &mut Silent);
    let heat = kernel.heat(&combustion, &water, flue, air, &mut Silent);
    [
        combustion.excess_air_ratio,
        combustion.excess_air_ratio - 1.0,
        derived,
        combustion.carbon_dioxide_dry,
        carbon_dioxide - combustion.carbon_dioxide_dry,
        carbon_monoxide / if carbon_dioxide.is_nan() { combustion.carbon_dioxide_dry } else { carbon_dioxide },
        kernel.carbon_monoxide_air_free(&combustion),
        water.dew_point,
        heat.dry,
        heat.vapour,
        heat.latent,
        heat.condensate,
        heat.unburnt,
        heat.air,
        heat.fuel,
        heat.flue_loss_net,
        heat.efficiency_gross,
        heat.efficiency_net,
        kernel.condensate_per_gross_heat(&water),
        kernel.gross_over_net(),
    ]
}

fn main() {
    let scatter = |row: usize, salt: usize| ((row * 7_919 + salt * 104_729) % 100_003) as f64 / 100_003.0;
    let column = |low: f64, high: f64, salt: usize| -> Vec<f64> { (0..ROWS).map(|row| low + (high - low) * scatter(row, salt)).collect() };
    let oxygen = column(0.02, 0.11, 1);
    let carbon_monoxide = column(0.0, 5e-4, 2);
    let flue = column(335.0, 485.0, 3);
    let air = column(283.0, 303.0, 4);

    let fuel = Fuel::named("G20").expect("a test gas");
    let analysis = FlueAnalysis::new(&fuel, &DryAir::STANDARD);
    let kernel = FlueKernel::new(&fuel, &DryAir::STANDARD);
    let readings: Vec<FlueReading> = (0..ROWS)
        .map(|row| FlueReading {
            oxygen_dry: Value::from_si(oxygen[row]),
            carbon_monoxide_dry: Value::from_si(carbon_monoxide[row]),
            flue_temperature: Value::from_si(flue[row]),
            air_temperature: Value::from_si(air[row]),
            ..FlueReading::unset()
        })
        .collect();
    let numbers: Vec<[f64; 7]> = readings.iter().map(Record::to_array).collect();
    let prepared = columns("flue_analysis", &Node::from([("fuel", "G20")])).expect("a calculation");
    let inputs = [
        Column::Values(&oxygen),
        Column::Constant(f64::NAN),
        Column::Values(&carbon_monoxide),
        Column::Values(&flue),
        Column::Values(&air),
        Column::Constant(101_325.0),
        Column::Constant(0.0),
    ];
    let mut outputs: Vec<Vec<f64>> = prepared.entry().outputs().iter().map(|_| vec![0.0; ROWS]).collect();
    let mut status = vec![Status::OK; ROWS];

    let mut times = [const { Vec::new() }; 4];
    for _ in 0..ROUNDS {
        let mut time = |which: usize, run: &mut dyn FnMut()| {
            let start = Instant::now();
            run();
            times[which].push(start.elapsed().as_nanos() as f64 / ROWS as f64);
        };
        time(0, &mut || {
            for number in &numbers {
                black_box(bare(black_box(&kernel), *black_box(number)));
            }
        });
        time(1, &mut || {
            for reading in &readings {
                black_box(black_box(&analysis).compute(black_box(reading), &mut Silent));
            }
        });
        time(2, &mut || {
            for reading in &readings {
                black_box(black_box(&analysis).evaluate(black_box(reading)).is_ok());
            }
        });
        time(3, &mut || {
            let mut targets: Vec<&mut [f64]> = outputs.iter_mut().map(Vec::as_mut_slice).collect();
            prepared.evaluate_into(&inputs, &mut targets, &mut status).expect("columns of one length");
        });
    }
    for (name, times) in ["one call, bare f64", "one call, record", "one call, validated", "columns, validated"].iter().zip(&mut times) {
        times.sort_by(f64::total_cmp);
        println!("{name:22} {:7.1} ns least {:7.1} ns median", times[0], times[times.len() / 2]);
    }
}
