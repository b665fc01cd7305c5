//! Timing of contenders side by side: interleaved rounds in one process, least time of each.

pub mod flue;

use std::time::Instant;

/// One contender: a name and a body that does `count` evaluations.
pub struct Contender<'a> {
    /// What to call it.
    pub name: &'static str,
    /// One round.
    pub body: Box<dyn FnMut() + 'a>,
}

/// Runs every contender in turn, `rounds` times, and gives the least time in ns per evaluation.
pub fn race(contenders: &mut [Contender<'_>], count: usize, rounds: usize) -> Vec<f64> {
    let mut least = vec![f64::INFINITY; contenders.len()];
    for _ in 0..rounds {
        for (time, contender) in least.iter_mut().zip(contenders.iter_mut()) {
            let start = Instant::now();
            (contender.body)();
            *time = time.min(start.elapsed().as_nanos() as f64 / count as f64);
        }
    }
    least
}

/// Prints times and their ratios to the first contender.
pub fn report(contenders: &[Contender<'_>], times: &[f64]) {
    for (contender, time) in contenders.iter().zip(times) {
        println!("{:56} {time:9.1} ns  {:6.3}", contender.name, time / times[0]);
    }
}
