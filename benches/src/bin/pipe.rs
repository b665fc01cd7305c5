//! Heat loss of an insulated horizontal pipe, its surface temperature solved: the quick form in one
//! call and in lanes, the whole checked calculation, and the printed formulas with secants.
//! The Python peers are raced in `python/pipe_heat_loss.py`. Run with
//! `cargo run --release --bin pipe` in this folder. Pipes and rooms are INVENTED.

use flamewright::calculation::Calculation;
use flamewright::convection::outside::{OutsideAir, OutsideFilm};
use flamewright::pipe::surface::{Surroundings, balance, shell_resistance, still_air_balance};
use flamewright::pipe::{PipeHeatLoss, PipeHeatLossInput};
use flamewright::quantity::Value;
use flamewright::quantity::types::{Length, Ratio, ThermalConductivity, ThermodynamicTemperature};
use flamewright::record::Record;
use flamewright_benches::{Contender, race, report};
use std::hint::black_box;

const PIPES: usize = 4096;
const EMISSIVITY: f64 = 0.9;
const ATMOSPHERE: f64 = 101_325.0;

/// Diameter (m), insulation thickness (m), its conductivity (W/(m K)), pipe and air temperature (K).
type Pipe = [f64; 5];

fn surroundings(air_temperature: f64) -> Surroundings {
    Surroundings { air_temperature, radiant_temperature: air_temperature, emissivity: EMISSIVITY, pressure: ATMOSPHERE }
}

#[inline(always)]
fn quick([diameter, thickness, conductivity, inner, air]: Pipe) -> f64 {
    let outer = diameter + 2.0 * thickness;
    still_air_balance(inner, shell_resistance(diameter, outer, conductivity), outer, &surroundings(air)).loss()
}

#[inline(never)]
fn quick_in_a_call(pipe: Pipe) -> f64 {
    quick(pipe)
}

fn printed([diameter, thickness, conductivity, inner, air]: Pipe) -> f64 {
    let outer = diameter + 2.0 * thickness;
    let resistance = shell_resistance(diameter, outer, conductivity);
    let outside = OutsideAir { diameter: outer, length: 1.0, air_temperature: air, pressure: ATMOSPHERE, wind_speed: 0.0 };
    balance(OutsideFilm::default(), inner, resistance, &outside, air, EMISSIVITY).loss()
}

fn record([diameter, thickness, conductivity, inner, air]: Pipe) -> PipeHeatLossInput {
    PipeHeatLossInput {
        outside_diameter: Length::from_si(diameter),
        wall_thickness: Length::from_si(0.0),
        wall_conductivity: ThermalConductivity::from_si(385.0),
        insulation_thickness: Length::from_si(thickness),
        insulation_conductivity: ThermalConductivity::from_si(conductivity),
        water_temperature: ThermodynamicTemperature::from_si(inner),
        air_temperature: ThermodynamicTemperature::from_si(air),
        emissivity: Ratio::from_si(EMISSIVITY),
        ..PipeHeatLossInput::unset()
    }
}

/// Eight pipes at a time, property by property.
type Block = [[f64; 8]; 5];

#[inline(always)]
fn lanes(blocks: &[Block], out: &mut [[f64; 8]]) {
    for (block, out) in blocks.iter().zip(out) {
        for i in 0..8 {
            out[i] = quick([block[0][i], block[1][i], block[2][i], block[3][i], block[4][i]]);
        }
    }
}

#[cfg(target_arch = "x86_64")]
#[target_feature(enable = "avx2")]
fn lanes_avx2(blocks: &[Block], out: &mut [[f64; 8]]) {
    lanes(blocks, out);
}

fn main() {
    let spread = |i: usize, stride: usize| (i * stride % PIPES) as f64 / PIPES as f64;
    let pipes: Vec<Pipe> = (0..PIPES)
        .map(|i| {
            let (inner, air) = (313.15 + 50.0 * spread(i, 101), 278.15 + 20.0 * spread(i, 57));
            [0.010 + 0.05 * spread(i, 37), 0.005 + 0.045 * spread(i, 211), 0.03 + 0.02 * spread(i, 11), inner, air]
        })
        .collect();
    let blocks: Vec<Block> =
        pipes.chunks_exact(8).map(|eight| std::array::from_fn(|field| std::array::from_fn(|i| eight[i][field]))).collect();
    let records: Vec<PipeHeatLossInput> = pipes.iter().map(|&pipe| record(pipe)).collect();
    let calculation = PipeHeatLoss::default();

    let worst = pipes.iter().map(|&pipe| (quick(pipe) / printed(pipe) - 1.0).abs()).fold(0.0, f64::max);
    println!("quick form against the printed formulas, largest relative difference of the loss: {worst:e}");
    assert!(worst < 1e-7, "the contenders must compute the same");

    let sum = |body: &dyn Fn(Pipe) -> f64| {
        black_box(pipes.iter().map(|&pipe| body(black_box(pipe))).sum::<f64>());
    };
    let mut out = vec![[0.0; 8]; blocks.len()];
    let mut wide = out.clone();
    let mut contenders = [
        Contender { name: "printed formulas, secants", body: Box::new(|| sum(&printed)) },
        Contender {
            name: "pipe_heat_loss, checked, all results",
            body: Box::new(|| {
                let total = records.iter().filter_map(|r| calculation.evaluate(black_box(r)).ok()).map(|r| r.heat_loss.si());
                black_box(total.sum::<f64>());
            }),
        },
        Contender { name: "quick form, one call a pipe", body: Box::new(|| sum(&quick_in_a_call)) },
        Contender {
            name: "quick form, lanes",
            body: Box::new(|| {
                lanes(black_box(&blocks), &mut out);
                black_box(&out);
            }),
        },
        #[cfg(target_arch = "x86_64")]
        Contender {
            name: "quick form, lanes, AVX2",
            body: Box::new(|| {
                if std::arch::is_x86_feature_detected!("avx2") {
                    // SAFETY: the processor has AVX2, as just asked.
                    unsafe { lanes_avx2(black_box(&blocks), &mut wide) };
                }
                black_box(&wide);
            }),
        },
    ];
    let times = race(&mut contenders, PIPES, 200);
    report(&contenders, &times);
}
