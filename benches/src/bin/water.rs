//! Density, heat capacity, viscosity and conductivity of liquid water together, against the crate
//! seuif97 (four `pt` calls). Run with `cargo run --release --bin water` in this folder.

use flamewright::water::{heating_water, hot_liquid, liquid};
use flamewright_benches::{Contender, race, report};
use std::hint::black_box;

const STATES: usize = 4096;
/// The four together in at most this share of the contender's time.
const GOAL: f64 = 0.8;

fn seuif97_four(pressure: f64, temperature: f64) -> [f64; 4] {
    let (megapascal, celsius) = (pressure * 1e-6, temperature - 273.15);
    [
        seuif97::pt(megapascal, celsius, seuif97::OD),
        seuif97::pt(megapascal, celsius, seuif97::OCP) * 1e3,
        seuif97::pt(megapascal, celsius, seuif97::ODV),
        seuif97::pt(megapascal, celsius, seuif97::OTC),
    ]
}

#[inline(always)]
fn four(pressure: f64, temperature: f64) -> [f64; 4] {
    let water = liquid(pressure, temperature);
    [water.density, water.specific_heat_capacity, water.dynamic_viscosity, water.thermal_conductivity]
}

#[inline(never)]
fn four_in_a_call(pressure: f64, temperature: f64) -> [f64; 4] {
    four(pressure, temperature)
}

#[inline(always)]
fn column(pressure: &[f64], temperature: &[f64], out: &mut [[f64; 4]]) {
    for ((p, t), out) in pressure.iter().zip(temperature).zip(out) {
        *out = four(*p, *t);
    }
}

#[cfg(target_arch = "x86_64")]
#[target_feature(enable = "avx2")]
fn column_avx2(pressure: &[f64], temperature: &[f64], out: &mut [[f64; 4]]) {
    column(pressure, temperature, out);
}

fn main() {
    let spread = |i: usize, stride: usize| (i * stride % STATES) as f64 / STATES as f64;
    let pressure: Vec<f64> = (0..STATES).map(|i| 1e5 + 2e5 * spread(i, 37)).collect();
    let temperature: Vec<f64> = (0..STATES).map(|i| 283.15 + 80.0 * spread(i, 101)).collect();

    let mut worst = [0.0_f64; 4];
    for (p, t) in pressure.iter().zip(&temperature) {
        for ((worst, ours), theirs) in worst.iter_mut().zip(four(*p, *t)).zip(seuif97_four(*p, *t)) {
            *worst = worst.max((ours / theirs - 1.0).abs());
        }
    }
    println!("largest relative difference to seuif97: {worst:?}");
    assert!(worst.iter().all(|w| *w < 1e-11), "the contenders must compute the same");

    let sum = |body: &dyn Fn(f64, f64) -> f64| {
        black_box(pressure.iter().zip(&temperature).map(|(p, t)| body(black_box(*p), black_box(*t))).sum::<f64>());
    };
    let mut out = vec![[0.0; 4]; STATES];
    let mut wide = out.clone();
    let mut contenders = [
        Contender { name: "seuif97, four pt calls", body: Box::new(|| sum(&|p, t| seuif97_four(p, t).iter().sum())) },
        Contender { name: "flamewright liquid, the same four, one call a state", body: Box::new(|| sum(&|p, t| four_in_a_call(p, t).iter().sum())) },
        Contender {
            name: "flamewright hot_liquid, all properties",
            body: Box::new(|| sum(&|p, t| hot_liquid(p, t).density)),
        },
        Contender {
            name: "flamewright heating_water (SR6-08), density and enthalpy",
            body: Box::new(|| {
                sum(&|p, t| {
                    let water = heating_water(p, t);
                    water.density + water.enthalpy
                });
            }),
        },
        Contender {
            name: "flamewright liquid, four, a column",
            body: Box::new(|| {
                column(black_box(&pressure), black_box(&temperature), &mut out);
                black_box(&out);
            }),
        },
        #[cfg(target_arch = "x86_64")]
        Contender {
            name: "flamewright liquid, four, a column, AVX2",
            body: Box::new(|| {
                if std::arch::is_x86_feature_detected!("avx2") {
                    // SAFETY: the processor has AVX2, as just asked.
                    unsafe { column_avx2(black_box(&pressure), black_box(&temperature), &mut wide) };
                }
                black_box(&wide);
            }),
        },
    ];
    let times = race(&mut contenders, STATES, 100);
    report(&contenders, &times);
    let ratio = times[1] / times[0];
    println!("goal {GOAL}: {}", if ratio <= GOAL { "met" } else { "MISSED" });
    std::process::exit(i32::from(ratio > GOAL));
}
