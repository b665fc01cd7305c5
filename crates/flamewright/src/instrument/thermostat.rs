//! Thermostats: the test from readings, and the cycle of an ideal one.
//!
//! Definitions after IEC 60730-1 and -2-9, from memory: the operating values are the temperatures at
//! which the contact opens on the rise and closes on the fall, the differential is the difference
//! between them; a temperature difference, never a temperature.

use crate::math::sqrt;

/// Mean, spread and drift of repeated readings of one operating value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Repeats {
    /// Arithmetic mean, in the unit of the readings.
    pub mean: f64,
    /// Experimental standard deviation (JCGM 100:2008, 4.2.2); NaN for fewer than two readings.
    pub standard_deviation: f64,
    /// Standard uncertainty of the mean, type A (JCGM 100:2008, 4.2.3).
    pub standard_uncertainty: f64,
    /// Largest less smallest reading.
    pub spread: f64,
    /// Slope of the straight line fitted to the readings against their order, per cycle.
    pub drift_per_cycle: f64,
}

impl Repeats {
    /// From readings in the order they were taken. NaN where there are too few.
    pub fn of(readings: &[f64]) -> Self {
        let count = readings.len() as f64;
        let mean = readings.iter().sum::<f64>() / count;
        let middle = (count - 1.0) / 2.0;
        let (mut squares, mut moment, mut order_squares) = (0.0, 0.0, 0.0);
        let (mut lowest, mut highest) = (f64::INFINITY, f64::NEG_INFINITY);
        for (order, reading) in readings.iter().enumerate() {
            let deviation = reading - mean;
            let offset = order as f64 - middle;
            squares += deviation * deviation;
            moment += offset * deviation;
            order_squares += offset * offset;
            lowest = f64::min(lowest, *reading);
            highest = f64::max(highest, *reading);
        }
        let standard_deviation = sqrt(squares / (count - 1.0));
        Self {
            mean,
            standard_deviation,
            standard_uncertainty: standard_deviation / sqrt(count),
            // `min` and `max` pass over a NaN reading; the mean does not.
            spread: if mean.is_finite() { highest - lowest } else { f64::NAN },
            drift_per_cycle: moment / order_squares,
        }
    }
}

/// Times in s of the cycle of an ideal on/off thermostat on one lumped heat capacity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LumpedCycle {
    /// Burner on, s.
    pub time_on: f64,
    /// Burner off, s.
    pub time_off: f64,
    /// Share of the time the burner is on, load over output.
    pub duty: f64,
    /// Burner starts per second.
    pub starts_per_second: f64,
}

/// The cycle of a heat capacity in J/K swinging through a differential in K, with a heat output and a
/// constant load in W. NaN unless 0 < load < output.
#[inline]
pub fn lumped_cycle(heat_capacity: f64, differential: f64, output: f64, load: f64) -> LumpedCycle {
    let swing = if load > 0.0 && load < output { heat_capacity * differential } else { f64::NAN };
    let time_on = swing / (output - load);
    let time_off = swing / load;
    LumpedCycle {
        time_on,
        time_off,
        duty: time_on / (time_on + time_off),
        starts_per_second: 1.0 / (time_on + time_off),
    }
}
