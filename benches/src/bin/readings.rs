//! The flue analysis of G20: the record of `uom` quantities against the same kernel on raw numbers,
//! validated and erased calls, columns against a bare copy of the same memory, and uncertainty
//! against the plain evaluation. Run with `cargo run --release --bin readings` in this folder.

use flamewright::catalogue::erase;
use flamewright::flue::kernel::FlueKernel;
use flamewright::flue::{FlueAnalysis, FlueReading};
use flamewright::node::Node;
use flamewright::prelude::*;
use flamewright::uncertainty::{Covariance, first_order, monte_carlo};
use flamewright::working::Silent;
use flamewright_benches::{Contender, flue, race, report};
use flamewright_columns::{Column, columns};
use std::hint::black_box;

const ROWS: usize = 4096;
const MANY: usize = 1_000_000;

/// All twenty results of a reading on raw numbers, without record, ranges, rules or status; dry air.
#[inline(always)]
fn all_by_hand(kernel: &FlueKernel, carbon_dioxide_maximum: f64, [oxygen, carbon_monoxide, flue, air]: [f64; 4]) -> [f64; 20] {
    let combustion = kernel.combustion(oxygen, carbon_monoxide, &mut Silent);
    let water = kernel.water(&combustion, 0.0, flue, 101_325.0, &mut Silent);
    let heat = kernel.heat(&combustion, &water, flue, air, &mut Silent);
    [
        combustion.excess_air_ratio,
        combustion.excess_air_ratio - 1.0,
        f64::NAN,
        combustion.carbon_dioxide_dry,
        f64::NAN,
        carbon_dioxide_maximum,
        carbon_monoxide / combustion.carbon_dioxide_dry,
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
    ]
}

/// The loop as a careful hand writes it: eight rows at a time, a block a result.
#[inline(always)]
fn loop_by_hand(kernel: &FlueKernel, given: &[Vec<f64>], results: &mut [Vec<f64>]) {
    const LANES: usize = 8;
    let maximum = kernel.carbon_dioxide_maximum();
    for start in (0..given[0].len()).step_by(LANES) {
        let (mut rows, mut block) = ([[0.0; LANES]; 4], [[0.0; LANES]; 20]);
        for (row, column) in rows.iter_mut().zip(given) {
            row.copy_from_slice(&column[start..start + LANES]);
        }
        for lane in 0..LANES {
            let row = all_by_hand(kernel, maximum, [rows[0][lane], rows[1][lane], rows[2][lane], rows[3][lane]]);
            for k in 0..20 {
                block[k][lane] = row[k];
            }
        }
        for (column, lanes) in results.iter_mut().zip(&block) {
            column[start..start + LANES].copy_from_slice(lanes);
        }
    }
}

#[cfg(target_arch = "x86_64")]
#[target_feature(enable = "avx2")]
fn loop_by_hand_avx2(kernel: &FlueKernel, given: &[Vec<f64>], results: &mut [Vec<f64>]) {
    loop_by_hand(kernel, given, results);
}

fn columns_by_hand(kernel: &FlueKernel, given: &[Vec<f64>], results: &mut [Vec<f64>]) {
    #[cfg(target_arch = "x86_64")]
    if std::arch::is_x86_feature_detected!("avx2") {
        // SAFETY: the processor has AVX2, as just asked.
        #[allow(unsafe_code)]
        unsafe {
            loop_by_hand_avx2(kernel, given, results);
        }
        return;
    }
    loop_by_hand(kernel, given, results);
}

fn main() {
    let settings = Node::from([("fuel", "G20")]);
    let analysis = FlueAnalysis::from_settings(&Settings::new(&settings, FlueAnalysis::SETTINGS).unwrap()).unwrap();
    let spread = |i: usize, stride: usize| (i * stride % ROWS) as f64 / ROWS as f64;
    let reading = |i: usize| -> [f64; 7] {
        [
            0.03 + 0.06 * spread(i, 37),
            f64::NAN,
            1e-4 * spread(i, 91),
            350.0 + 150.0 * spread(i, 13),
            288.15 + 10.0 * spread(i, 7),
            101_325.0,
            0.0,
        ]
    };
    let rows: Vec<[f64; 7]> = (0..ROWS).map(reading).collect();
    let records: Vec<FlueReading> = rows.iter().map(|r| FlueReading::from_slice(r)).collect();
    let kernel: FlueKernel = *analysis.kernel();

    let raw = |row: &[f64; 7]| flue::raw(&kernel, row);
    let typed = |record: &FlueReading| flue::typed(&analysis, record);
    for (row, record) in rows.iter().zip(&records) {
        assert_eq!(raw(row).to_bits(), typed(record).to_bits(), "the contenders must compute the same");
    }
    let erased = erase(FlueAnalysis::from_settings(&Settings::new(&settings, FlueAnalysis::SETTINGS).unwrap()).unwrap());
    let (mut output, mut other) = ([0.0; 20], [0.0; 20]);
    println!("one reading");
    let mut contenders = [
        Contender {
            name: "the kernel on raw f64",
            body: Box::new(|| {
                black_box(rows.iter().map(|r| raw(black_box(r))).sum::<f64>());
            }),
        },
        Contender {
            name: "a record of uom quantities, unchecked",
            body: Box::new(|| {
                black_box(records.iter().map(|r| typed(black_box(r))).sum::<f64>());
            }),
        },
        Contender {
            name: "evaluate: ranges, rules, result",
            body: Box::new(|| {
                black_box(records.iter().map(|r| analysis.evaluate(black_box(r)).map_or(f64::NAN, |e| e.efficiency_net.si())).sum::<f64>());
            }),
        },
        Contender {
            name: "by name: erased, checked, on numbers",
            body: Box::new(|| {
                for row in &rows {
                    black_box(erased.run(black_box(row), &mut output));
                }
            }),
        },
    ];
    let times = race(&mut contenders, ROWS, 200);
    report(&contenders, &times);

    println!("columns of {MANY} rows, 7 in (4 varying), 20 out, one core");
    let table = columns("flue_analysis", &settings).unwrap();
    let pool = rayon::ThreadPoolBuilder::new().num_threads(1).build().unwrap();
    let given: Vec<Vec<f64>> = [0, 2, 3, 4].iter().map(|&k| (0..MANY).map(|i| reading(i)[k]).collect()).collect();
    let inputs = [
        Column::Values(&given[0]),
        Column::Constant(f64::NAN),
        Column::Values(&given[1]),
        Column::Values(&given[2]),
        Column::Values(&given[3]),
        Column::Constant(101_325.0),
        Column::Constant(0.0),
    ];
    let mut results = vec![vec![0.0; MANY]; 20];
    let (mut copies, mut by_hand) = (results.clone(), results.clone());
    columns_by_hand(&kernel, &given, &mut by_hand);
    let checked = table.evaluate(&inputs, MANY).unwrap();
    for (k, field) in checked.fields.iter().enumerate().filter(|(_, f)| !f.name.ends_with("_derived") && !f.name.ends_with("_maximum")) {
        let differ = checked.columns[k].iter().zip(&by_hand[k]).find(|(a, b)| a.to_bits() != b.to_bits() && !(a.is_nan() && b.is_nan()));
        assert_eq!(differ, None, "{}: the contenders must compute the same", field.name);
    }
    let mut status = vec![flamewright_columns::Status::OK; MANY];
    let mut contenders = [
        Contender {
            name: "memory floor: 4 columns read, 20 written",
            body: Box::new(|| {
                for (k, copy) in copies.iter_mut().enumerate() {
                    for (to, from) in copy.iter_mut().zip(&given[k % 4]) {
                        *to = *from + 1.0;
                    }
                }
                black_box(&copies);
            }),
        },
        Contender {
            name: "hand-written loop on raw f64, unchecked, 20 results",
            body: Box::new(|| {
                columns_by_hand(&kernel, &given, &mut by_hand);
                black_box(&by_hand);
            }),
        },
        Contender {
            name: "flamewright columns, results given",
            body: Box::new(|| {
                let mut targets: Vec<Option<&mut [f64]>> = results.iter_mut().map(|c| Some(c.as_mut_slice())).collect();
                pool.install(|| table.evaluate_into(&inputs, &mut targets, &mut status)).unwrap();
            }),
        },
    ];
    let times = race(&mut contenders, MANY, 9);
    report(&contenders, &times);
    drop(contenders);

    println!("uncertainty of one reading, four inputs, 20 results");
    let at = rows[1];
    let covariance = Covariance::independent(&[0.002, 0.0, 5e-6, 1.0, 0.5, 0.0, 0.0]);
    let mut contenders = [
        Contender {
            name: "plain evaluation (erased)",
            body: Box::new(|| {
                for _ in 0..100 {
                    erased.compute(black_box(&at), &mut other);
                }
            }),
        },
        Contender {
            name: "first order, full covariance",
            body: Box::new(|| {
                for _ in 0..100 {
                    black_box(first_order(&*erased, black_box(&at), &covariance));
                }
            }),
        },
    ];
    let times = race(&mut contenders, 100, 200);
    report(&contenders, &times);
    let mut contenders = [Contender {
        name: "Monte Carlo, 100 000 draws (time of the whole)",
        body: Box::new(|| {
            black_box(monte_carlo(&*erased, &at, &covariance, &[], 100_000, 1).unwrap());
        }),
    }];
    let times = race(&mut contenders, 1, 5);
    report(&contenders, &times);
}
