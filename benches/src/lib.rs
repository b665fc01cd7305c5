//! Timing of contenders side by side: every one in every round, in shuffled order, in one process;
//! medians. Time is the processor time of the process: on a quiet machine that of the clock, where
//! each contender keeps to one core; on a busy one it leaves out the waiting for a core.
#![allow(unsafe_code)]

pub mod flue;

use std::ffi::c_long;

/// One contender: a name and a body that does `count` evaluations.
pub struct Contender<'a> {
    /// What to call it.
    pub name: &'static str,
    /// One round.
    pub body: Box<dyn FnMut() + 'a>,
}

/// A round repeats a short body for at least this long, for the clock has steps of a microsecond.
const LEAST_NANOSECONDS: f64 = 200_000.0;

/// Processor time of the process, ns.
fn processor_time() -> f64 {
    unsafe extern "C" {
        fn clock() -> c_long;
    }
    // SAFETY: `clock` of the C library takes nothing and touches nothing of ours. POSIX has it count microseconds.
    unsafe { clock() as f64 * 1e3 }
}

/// Runs every contender `rounds` times and gives the median time in ns per evaluation.
pub fn race(contenders: &mut [Contender<'_>], count: usize, rounds: usize) -> Vec<f64> {
    let repeats: Vec<usize> = contenders
        .iter_mut()
        .map(|contender| {
            (contender.body)();
            let start = processor_time();
            (contender.body)();
            1 + (LEAST_NANOSECONDS / (processor_time() - start).max(1e3)) as usize
        })
        .collect();
    let mut times = vec![Vec::with_capacity(rounds); contenders.len()];
    let mut order: Vec<usize> = (0..contenders.len()).collect();
    let mut draw = 0x9E37_79B9_7F4A_7C15_u64;
    for _ in 0..rounds {
        for last in (1..order.len()).rev() {
            // Xorshift (Marsaglia 2003): any order will do, as long as it changes.
            draw ^= draw << 13;
            draw ^= draw >> 7;
            draw ^= draw << 17;
            order.swap(last, (draw % (last as u64 + 1)) as usize);
        }
        for &which in &order {
            let start = processor_time();
            for _ in 0..repeats[which] {
                (contenders[which].body)();
            }
            times[which].push((processor_time() - start) / (repeats[which] * count) as f64);
        }
    }
    let median = |times: &mut Vec<f64>| {
        times.sort_by(f64::total_cmp);
        times[times.len() / 2]
    };
    times.iter_mut().map(median).collect()
}

/// Prints times and their ratios to the first contender; `run.py` reads these lines.
pub fn report(contenders: &[Contender<'_>], times: &[f64]) {
    for (contender, time) in contenders.iter().zip(times) {
        println!("{:56} {time:9.1} ns  {:6.3}", contender.name, time / times[0]);
    }
}
