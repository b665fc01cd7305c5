//! Repeated readings of a thermostat.
//!
//! Definitions after IEC 60730-1 and -2-9, from memory: the operating values are the temperatures at
//! which the contact opens on the rise and closes on the fall, the differential is the difference
//! between them; a temperature difference, never a temperature.

use crate::math::sqrt;

/// Mean, spread and drift of repeated readings of one operating value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Repeats {
    /// Arithmetic mean, in the unit of the readings.
    pub(crate) mean: f64,
    /// Experimental standard deviation (JCGM 100:2008, 4.2.2); NaN for fewer than two readings.
    pub(crate) standard_deviation: f64,
    /// Standard uncertainty of the mean, type A (JCGM 100:2008, 4.2.3).
    pub(crate) standard_uncertainty: f64,
    /// Largest less smallest reading.
    pub(crate) spread: f64,
    /// Slope of the straight line fitted to the readings against their order, per cycle.
    pub(crate) drift_per_cycle: f64,
    /// Standard uncertainty of that slope from the scatter about the line; NaN for fewer than three.
    pub(crate) drift_uncertainty: f64,
    /// Number of readings.
    pub(crate) count: usize,
}

impl Repeats {
    /// From readings in the order they were taken. NaN where there are too few.
    pub(crate) fn of(readings: &[f64]) -> Self {
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
        let drift_per_cycle = moment / order_squares;
        // Rounding may leave a little less than nothing where all readings lie on the line.
        let about_line = f64::max(squares - drift_per_cycle * moment, 0.0);
        Self {
            mean,
            standard_deviation,
            standard_uncertainty: standard_deviation / sqrt(count),
            // `min` and `max` pass over a NaN reading; the mean does not.
            spread: if mean.is_finite() { highest - lowest } else { f64::NAN },
            drift_per_cycle,
            drift_uncertainty: if readings.len() > 2 { sqrt(about_line / ((count - 2.0) * order_squares)) } else { f64::NAN },
            count: readings.len(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn repeats_see_drift_and_refuse_too_few() {
        let rising = Repeats::of(&[80.0, 80.5, 81.0, 81.5]);
        assert!((rising.drift_per_cycle - 0.5).abs() < 1e-12);
        assert!(rising.drift_uncertainty < 1e-6);
        assert!((rising.spread - 1.5).abs() < 1e-12);
        let single = Repeats::of(&[80.0]);
        assert_eq!(single.mean, 80.0);
        assert!(single.standard_deviation.is_nan() && single.drift_per_cycle.is_nan());
        let none = Repeats::of(&[]);
        assert!(none.mean.is_nan() && none.spread.is_nan());
        let gap = Repeats::of(&[80.0, f64::NAN, 81.0]);
        assert!(gap.mean.is_nan() && gap.spread.is_nan() && gap.drift_per_cycle.is_nan());
    }
}
