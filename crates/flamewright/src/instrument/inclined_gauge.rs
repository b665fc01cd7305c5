//! The calculation `inclined_gauge`: small pressures from an inclined tube.

use super::liquid_column::CAUTIONS;
use super::manometer::CONVENTIONAL_WATER_DENSITY;
use crate::calculation::{Calculation, Info, Source};
use crate::no_settings;
use crate::quantity::types::{Acceleration, Angle, Length, MassDensity, Ratio};
use crate::quantity::units::MILLIMETRE;
use crate::quantity::{GaugePressure, LevelDifference, Value};
use crate::record::record;
use crate::working::{Working, step};

/// An inclined gauge with a wide cistern.
#[record]
pub struct InclinedReading {
    /// Movement of the liquid along the tube, positive for a pressure and negative for a draught.
    #[field("l", MILLIMETRE, -2000.0..=2000.0)]
    pub length: Length,
    /// Angle of the tube to the horizontal.
    #[field("\\alpha", DEGREE, 0.2..=90.0, usual = 2.0..=45.0)]
    pub angle: Angle,
    /// Relative density of the liquid to conventional water, as printed on the gauge.
    #[field("d", ONE, 0.5..=14.0, default = 1.0, usual = 0.7..=1.1)]
    pub relative_density: Ratio,
    /// Acceleration of gravity at the place.
    #[field("g", METRE_PER_SECOND_SQUARED, 9.7..=9.9, default = 9.80665, usual = 9.78..=9.84)]
    pub gravity: Acceleration,
}

/// What the inclined column is worth.
#[record]
pub struct InclinedPressure {
    /// Height of the column.
    #[field("h", MILLIMETRE)]
    pub level_difference: LevelDifference,
    /// Pressure above the atmosphere; negative for a draught.
    #[field("p", PASCAL)]
    pub pressure: GaugePressure,
}

/// Pressure from an inclined tube.
#[derive(Clone, Copy, Debug)]
pub struct InclinedGauge;

no_settings!(InclinedGauge);

impl Calculation for InclinedGauge {
    type Input = InclinedReading;
    type Output = InclinedPressure;
    const INFO: Info = Info {
        name: "inclined_gauge",
        title: "Inclined gauge",
        summary: "Small gauge pressure or draught from the movement along an inclined tube. The level in the cistern is taken as fixed.",
        sources: &[
            Source::new("hydrostatics and geometry, h = l sin α", "height and pressure of the column"),
            Source::new("NIST SP 811 (2008), Appendix B.8", "conventional water, to which the relative density refers"),
        ],
        accuracy: "The relative density printed on the gauge holds at its own temperature; most oils lose about 0.1 % of density per kelvin. An angle wrong by \
                   0.5 degrees changes a 10 degree gauge by 5 %.",
        cautions: CAUTIONS,
        checked_against: "trade/pressure.csv (inclined_manometer)",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &InclinedReading, working: &mut W) -> InclinedPressure {
        let (length, angle, relative_density, gravity) = (input.length, input.angle.si(), input.relative_density, input.gravity);
        let water = MassDensity::from_si(CONVENTIONAL_WATER_DENSITY);
        step!(working, let height: "h" in MILLIMETRE = length * crate::math::sin(angle), "geometry of an inclined gauge");
        step!(working, let pressure: "p" = relative_density * water * gravity * height, "hydrostatics");
        InclinedPressure { level_difference: LevelDifference::new(height), pressure: GaugePressure::new(pressure) }
    }
}
