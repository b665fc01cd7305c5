//! The calculation `analyser_reading`: what a cell's reading is worth.

use crate::calculation::{Calculation, Info, Raised, Source};
use crate::math;
use crate::quantity::Value;
use crate::quantity::types::Ratio;
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A reading of one cell of a gas analyser and the figures of its data sheet.
#[record]
pub struct CellReading {
    /// The reading.
    #[field("x", PPM, -10_000.0..=1_000_000.0)]
    pub reading: Ratio,
    /// Lowest value of the measuring range.
    #[field("x_{min}", PPM, 0.0..=1_000_000.0, default = 0.0)]
    pub range_low: Ratio,
    /// Highest value of the measuring range.
    #[field("x_{max}", PPM, 0.0..=1_000_000.0)]
    pub range_high: Ratio,
    /// Smallest step of the display.
    #[field("r", PPM, 0.0..=100_000.0, default = 0.0)]
    pub resolution: Ratio,
    /// Stated accuracy, either way, that holds at least.
    #[field("a", PPM, 0.0..=200_000.0, default = 0.0)]
    pub accuracy_absolute: Ratio,
    /// Stated accuracy, either way, as a share of the reading; the greater of both holds.
    #[field("a_r", PERCENT, 0.0..=100.0, default = 0.0, usual = 0.0..=20.0)]
    pub accuracy_relative: Ratio,
    /// Reading in clean air before sampling, which should be the true value there.
    #[field("x_0", PPM, -10_000.0..=1_000_000.0, absent = "not recorded")]
    pub clean_air_reading: Ratio,
    /// True value in clean air: nothing for carbon monoxide, about 20.9 % for oxygen.
    #[field("x_{0,t}", PPM, 0.0..=1_000_000.0, default = 0.0)]
    pub clean_air_value: Ratio,
}

/// What the reading is worth.
#[record]
pub struct CellResult {
    /// Half-width of the stated accuracy at this reading.
    #[field("a_x", PPM)]
    pub accuracy: Ratio,
    /// Standard uncertainty: accuracy and resolution, both as rectangular distributions.
    #[field("u_x", PPM)]
    pub standard_uncertainty: Ratio,
    /// The same as a share of the reading.
    #[field("u_r", PERCENT, absent = "the reading is zero")]
    pub relative_uncertainty: Ratio,
    /// How far the reading stands in the measuring range.
    #[field("k", PERCENT)]
    pub share_of_range: Ratio,
    /// Zero error in clean air.
    #[field("\\Delta x_0", PPM, absent = "not recorded")]
    pub zero_error: Ratio,
}

rules! {
    refuse EMPTY_RANGE on "range_high": "the measuring range is empty: its highest value is not above its lowest";
    refuse OVER_RANGE on "reading": "the reading is above the measuring range of the cell: the true value is not known; take the probe out and let the cell recover";
    refuse UNDER_RANGE on "reading": "the reading is below the measuring range by more than its accuracy: zero the analyser in clean air";
    notice NEAR_TOP on "reading": "the reading is in the last tenth of the measuring range";
    notice NOT_DETECTED on "reading": "the reading is within its own accuracy of zero: say less than that, not none";
    notice ZERO_ERROR on "clean_air_reading": "in clean air the cell read wrong by more than its accuracy: zero it and repeat";
    notice NO_ACCURACY on "accuracy_absolute": "no accuracy was stated: the uncertainty is that of the display alone";
}

/// Range and uncertainty of an analyser's reading.
#[derive(Clone, Copy, Debug)]
pub struct AnalyserReading;

no_settings!(AnalyserReading);

#[inline(always)]
fn accuracy_of(input: &CellReading) -> f64 {
    input.accuracy_absolute.si().max(input.accuracy_relative.si() * input.reading.si().abs())
}

impl Calculation for AnalyserReading {
    type Input = CellReading;
    type Output = CellResult;
    const INFO: Info = Info {
        name: "analyser_reading",
        title: "Reading of an analyser",
        summary: "Whether a reading lies in the measuring range of the cell, and the uncertainty that the data sheet's accuracy and resolution give it.",
        sources: &[Source::new("JCGM 100:2008, 4.3.7 and 4.3.8", "rectangular distributions of accuracy and resolution")],
        accuracy: "As the data sheet; drift since the last calibration, cross-sensitivity and a wet or leaking sample are not in it.",
        cautions: &[
            "An analyser past its calibration date gives figures for guidance only; record date and certificate.",
            "A number inside a limit says nothing of spillage, flue flow or ventilation.",
        ],
        checked_against: "none: the rule of JCGM 100 on the data sheet's figures; own arithmetic in the tests",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &CellReading) -> Raised {
        let (x, low, high) = (input.reading.si(), input.range_low.si(), input.range_high.si());
        let accuracy = accuracy_of(input);
        let zero_error = (input.clean_air_reading.si() - input.clean_air_value.si()).abs();
        let zero_accuracy = input.accuracy_absolute.si().max(input.accuracy_relative.si() * input.clean_air_value.si());
        Raised::NONE
            .when(EMPTY_RANGE, high <= low)
            .when(OVER_RANGE, x > high)
            .when(UNDER_RANGE, x < low - accuracy - input.resolution.si())
            .when(NEAR_TOP, x > high - 0.1 * (high - low))
            .when(NOT_DETECTED, x <= accuracy.max(input.resolution.si()))
            .when(ZERO_ERROR, zero_error > zero_accuracy.max(input.resolution.si()))
            .when(NO_ACCURACY, accuracy == 0.0)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &CellReading, working: &mut W) -> CellResult {
        let CellReading { reading, range_low, range_high, resolution, clean_air_reading, clean_air_value, .. } = *input;
        step!(working, let accuracy: "a_x" = Ratio::from_si(accuracy_of(input)), "the greater of the two stated figures");
        step!(working, let standard_uncertainty: "u_x" = Ratio::from_si(math::sqrt((accuracy * accuracy / 3.0 + resolution * resolution / 12.0).si())), "JCGM 100, 4.3.7");
        step!(working, let share_of_range: "k" = (reading - range_low) / (range_high - range_low), "definition");
        let relative = standard_uncertainty.si() / reading.si().abs();
        CellResult {
            accuracy,
            standard_uncertainty,
            relative_uncertainty: Ratio::from_si(if relative.is_finite() { relative } else { f64::NAN }),
            share_of_range,
            zero_error: clean_air_reading - clean_air_value,
        }
    }
}
