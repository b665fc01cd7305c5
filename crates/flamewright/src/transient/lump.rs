//! A block taken as one mass: closed forms, and quadrature where there is none.

use super::network::HeatLoss;
use crate::math::exp;
use crate::pipe::decay::stretch_between;

/// Time in which a mass of `heat_capacity` (J/K) goes from `start` to `target` (K) by
/// `C dT/dt = power - loss(T)`, in seconds.
///
/// Both ends must lie on one side of the temperature where power and loss are equal: else the
/// answer is infinite, or NaN where the mass moves away from the target.
///
/// Quadrature where there is no closed form; see [`stretch_between`].
pub(crate) fn time_between(heat_capacity: f64, loss: &HeatLoss, power: f64, room: f64, start: f64, target: f64) -> f64 {
    if start == target {
        return 0.0;
    }
    if !(heat_capacity > 0.0) || room.is_nan() {
        return f64::NAN;
    }
    let steady = steady_temperature(loss, power, room);
    let (from, to) = (start - steady, target - steady);
    if from.is_nan() || to.is_nan() {
        return f64::NAN;
    }
    if steady.is_infinite() {
        // No loss at all: the mass changes by the power alone, or stays as it is.
        let time = heat_capacity * (target - start) / power;
        return if power == 0.0 {
            f64::INFINITY
        } else if time >= 0.0 {
            time
        } else {
            f64::NAN
        };
    }
    if from == 0.0 || to == 0.0 || (from > 0.0) != (to > 0.0) {
        // At rest before the target is reached, or only after an endless time.
        return f64::INFINITY;
    }
    stretch_between(start, target, steady, |temperature| (loss.power(temperature, room) - power) / heat_capacity)
}

/// Temperature at which the loss equals the power, K. Infinite where nothing is lost, minus
/// infinity where the room cannot give what is drawn.
pub(crate) fn steady_temperature(loss: &HeatLoss, power: f64, room: f64) -> f64 {
    let side = if power < 0.0 { -1.0 } else { 1.0 };
    let short = |distance: f64| side * (power - loss.power(room + side * distance, room));
    if power == 0.0 {
        return if loss.power(room + 1.0, room) > 0.0 { room } else { f64::INFINITY };
    }
    // Doubling from one kelvin: a loss grows at least in proportion to the distance.
    let mut reach = 1.0;
    while short(reach) > 0.0 {
        reach *= 2.0;
        if reach > 1e12 {
            return side * f64::INFINITY;
        }
    }
    if short(reach).is_nan() {
        return f64::NAN;
    }
    room + side * super::solver::bracketed_root(short, 0.0, side * power, reach, short(reach))
}

/// Temperature after a time, K: the inverse of [`time_between`].
pub(crate) fn temperature_after(heat_capacity: f64, loss: &HeatLoss, power: f64, room: f64, start: f64, time: f64) -> f64 {
    let steady = steady_temperature(loss, power, room);
    if steady.is_infinite() {
        return start + power * time / heat_capacity;
    }
    if start == steady || time == 0.0 || !(time > 0.0) {
        return if time >= 0.0 { start } else { f64::NAN };
    }
    // Share of the way to rest, on a scale on which a linear loss is a straight line.
    let target = |progress: f64| steady + (start - steady) * exp(-progress);
    let late = |progress: f64| time - time_between(heat_capacity, loss, power, room, start, target(progress));
    let mut reach = 1.0;
    while late(reach) > 0.0 && reach < 600.0 {
        reach *= 2.0;
    }
    if late(reach).is_nan() {
        return f64::NAN;
    }
    target(super::solver::bracketed_root(late, 0.0, time, reach, late(reach)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::math::{ln, pow};

    #[test]
    fn linear_loss_is_the_exponential() {
        let loss = HeatLoss::linear(8.0);
        for target in [79.9, 65.0, 40.0, 20.001] {
            let time = time_between(90_000.0, &loss, 0.0, 293.15, 353.15, target + 273.15);
            let closed = 90_000.0 / 8.0 * ln(60.0 / (target - 20.0));
            assert!((time / closed - 1.0).abs() < 1e-11, "{time} {closed}");
        }
        // Warming towards a steady temperature above the target.
        let time = time_between(90_000.0, &loss, 1000.0, 293.15, 293.15, 353.15);
        let closed = 90_000.0 / 8.0 * ln(125.0 / 65.0);
        assert!((time / closed - 1.0).abs() < 1e-12);
    }

    #[test]
    fn power_law_loss_is_its_closed_form() {
        // Bejan and Kraus, Heat Transfer Handbook, eq. 3.286, as quoted with the reference cases.
        let (k, n, c) = (3.2, 1.25, 90_000.0);
        let loss = HeatLoss { coefficient: k, exponent: n, ..HeatLoss::NONE };
        for target in [65.0, 40.0, 21.0] {
            let time = time_between(c, &loss, 0.0, 293.15, 353.15, target + 273.15);
            let closed = c / (k * (n - 1.0)) * (pow(target - 20.0, 1.0 - n) - pow(60.0, 1.0 - n));
            assert!((time / closed - 1.0).abs() < 1e-10, "{time} {closed}");
        }
    }

    #[test]
    fn what_cannot_be_reached_is_said() {
        let loss = HeatLoss::linear(8.0);
        assert_eq!(time_between(9e4, &loss, 0.0, 293.15, 353.15, 293.15), f64::INFINITY);
        assert_eq!(time_between(9e4, &loss, 0.0, 293.15, 353.15, 280.0), f64::INFINITY);
        assert!(time_between(9e4, &loss, 0.0, 293.15, 330.0, 340.0).is_nan());
        assert_eq!(time_between(9e4, &loss, 400.0, 293.15, 300.0, 350.0), f64::INFINITY);
        assert_eq!(time_between(9e4, &HeatLoss::NONE, 0.0, 293.15, 353.15, 340.0), f64::INFINITY);
        assert!((time_between(9e4, &HeatLoss::NONE, 900.0, 293.15, 300.0, 310.0) - 1000.0).abs() < 1e-9);
        assert!(time_between(0.0, &loss, 0.0, 293.15, 353.15, 340.0).is_nan());
        assert!(time_between(9e4, &loss, 0.0, f64::NAN, 353.15, 340.0).is_nan());
    }

    #[test]
    fn a_load_on_a_mass_that_loses_nothing_is_a_straight_line() {
        assert!((time_between(120_000.0, &HeatLoss::NONE, -6000.0, 293.15, 350.0, 342.0) - 160.0).abs() < 1e-9);
        // And one that draws below the room ends where the room gives as much.
        let steady = steady_temperature(&HeatLoss::linear(8.0), -80.0, 293.15);
        assert!((steady - 283.15).abs() < 1e-9);
        let time = time_between(9e4, &HeatLoss::linear(8.0), -80.0, 293.15, 303.15, 288.15);
        assert!((time / (9e4 / 8.0 * ln(20.0 / 5.0)) - 1.0).abs() < 1e-11);
    }

    #[test]
    fn temperature_after_a_time_is_the_inverse() {
        let loss = HeatLoss { linear: 2.0, coefficient: 3.2, exponent: 1.25, radiation: 5e-8, fitted: None };
        for power in [0.0, 500.0, -60.0] {
            let target = 330.0;
            let time = time_between(9e4, &loss, power, 293.15, 353.15, target);
            let back = temperature_after(9e4, &loss, power, 293.15, 353.15, time);
            assert!((back - target).abs() < 1e-9, "{power} {back}");
        }
        assert_eq!(temperature_after(9e4, &HeatLoss::NONE, -900.0, 293.15, 350.0, 100.0), 349.0);
    }
}
