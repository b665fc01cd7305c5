//! Sweep: the table or surface behind a plot.

use crate::catalogue::Prepared;
use crate::error::Error;
use crate::record::find;
use alloc::format;
use alloc::vec::Vec;

/// An input that is varied.
#[derive(Clone, Debug, PartialEq)]
pub struct Axis<'a> {
    /// The input field.
    pub field: &'a str,
    /// Its values, SI.
    pub values: Vec<f64>,
}

impl<'a> Axis<'a> {
    /// `count` values from `first` to `last` (SI) at equal steps.
    #[must_use]
    pub fn even(field: &'a str, first: f64, last: f64, count: usize) -> Self {
        let steps = count.saturating_sub(1).max(1) as f64;
        Self { field, values: (0..count).map(|i| first + (last - first) * i as f64 / steps).collect() }
    }
}

/// Results over one or two varied inputs, the last axis running fastest.
#[derive(Clone, Debug, PartialEq)]
pub struct Sweep {
    /// Values of the varied inputs, an axis after the other, SI.
    pub axes: Vec<Vec<f64>>,
    /// A column an output field, SI; not-a-number where the input was refused.
    pub columns: Vec<Vec<f64>>,
    /// Whether the input was accepted, a flag a row.
    pub accepted: Vec<bool>,
}

/// Rows computed at most.
const MOST_ROWS: usize = 10_000_000;

/// Evaluates `prepared` at `input` with one or two inputs varied.
///
/// ```
/// use flamewright::explore::{Axis, sweep};
/// use flamewright::{catalogue::calculation, node::Node};
/// let water = calculation("liquid_water")?.prepare(&Node::Table(vec![]))?;
/// let hotter = sweep(&*water, &[f64::NAN, 2e5], &[Axis::even("temperature", 283.15, 353.15, 8)])?;
/// assert!(hotter.accepted.iter().all(|row| *row));
/// assert!(hotter.columns[0].is_sorted_by(|a, b| a > b)); // density falls
/// # Ok::<(), flamewright::Error>(())
/// ```
///
/// # Errors
/// No axis or more than two, an unknown field, the same field twice, an empty axis, too many rows.
pub fn sweep(prepared: &dyn Prepared, input: &[f64], axes: &[Axis<'_>]) -> Result<Sweep, Error> {
    let entry = prepared.entry();
    if axes.is_empty() || axes.len() > 2 {
        return Err(Error::bad_setting("axes", "", "one or two inputs are varied"));
    }
    let places = axes.iter().map(|a| find(entry.inputs(), a.field).map(|(i, _)| i)).collect::<Result<Vec<usize>, Error>>()?;
    let rows = axes.iter().map(|a| a.values.len()).fold(1usize, usize::saturating_mul);
    if rows == 0 || rows > MOST_ROWS || (places.len() == 2 && places[0] == places[1]) {
        return Err(Error::bad_setting("axes", "", &format!("two different inputs, with from 1 to {MOST_ROWS} combinations of values")));
    }
    let mut point = input.to_vec();
    point.resize(entry.inputs().len(), f64::NAN);
    let mut output = alloc::vec![f64::NAN; entry.outputs().len()];
    let mut columns: Vec<Vec<f64>> = output.iter().map(|_| Vec::with_capacity(rows)).collect();
    let mut accepted = Vec::with_capacity(rows);
    let inner = axes.get(1).map_or(1, |a| a.values.len());
    for row in 0..rows {
        for (k, (axis, place)) in axes.iter().zip(&places).enumerate() {
            point[*place] = axis.values[if k == 0 { row / inner } else { row % inner }];
        }
        let good = !prepared.run(&point, &mut output).is_refused(entry.rules());
        accepted.push(good);
        for (column, value) in columns.iter_mut().zip(&output) {
            column.push(if good { *value } else { f64::NAN });
        }
    }
    Ok(Sweep { axes: axes.iter().map(|a| a.values.clone()).collect(), columns, accepted })
}

#[cfg(test)]
mod tests {
    use super::super::*;
    use super::*;
    use crate::catalogue::erase;
    use crate::water::LiquidWater;

    #[test]
    fn what_is_sought_is_what_comes_out() {
        let water = erase(LiquidWater);
        let goal = goal_seek(&*water, &[f64::NAN, 2e5], "temperature", 283.15, 373.15, "density", 983.0).unwrap();
        assert!((goal.output[0] - 983.0).abs() < 1e-10 * 983.0);
        assert!(!goal.several);
    }

    #[test]
    fn the_density_of_cold_water_is_met_twice() {
        let water = erase(LiquidWater);
        let goal = goal_seek(&*water, &[f64::NAN, 2e5], "temperature", 273.15, 293.15, "density", 999.95).unwrap();
        assert!(goal.several && goal.value < 277.2);
    }

    #[test]
    fn no_solution_says_how_far_the_output_runs() {
        let water = erase(LiquidWater);
        let message = |low, high, wanted| {
            let error = goal_seek(&*water, &[f64::NAN, 2e5], "temperature", low, high, "density", wanted).unwrap_err();
            assert_eq!(error.kind(), crate::ErrorKind::NoSolution);
            std::format!("{error}")
        };
        let text = message(283.15, 363.15, 1100.0);
        assert!(
            text.contains("between 10 °C and 90 °C the output density runs from 965") && text.contains("1100 kg/m³ is wanted"),
            "{text}"
        );
        assert!(message(413.15, 433.15, 900.0).contains("boil"));
    }

    #[test]
    fn a_sweep_has_every_combination_and_loses_none() {
        let water = erase(LiquidWater);
        let axes = [Axis::even("temperature", 293.15, 413.15, 3), Axis { field: "pressure", values: [1e5, 5e5].to_vec() }];
        let swept = sweep(&*water, &[f64::NAN, f64::NAN], &axes).unwrap();
        assert_eq!(swept.accepted, [true, true, true, true, false, true]);
        assert!(swept.columns[0][4].is_nan() && swept.columns[0][5] > 900.0);
        let mut single = [0.0; 8];
        water.compute(&[413.15, 5e5], &mut single);
        assert_eq!(swept.columns[0][5], single[0]);
    }
}
