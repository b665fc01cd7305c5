//! The calculation `local_gravity`.

use super::manometer;
use crate::calculation::{Calculation, Info, Source};
use crate::no_settings;
use crate::quantity::types::{Acceleration, Angle, Length, Ratio};
use crate::quantity::units::{METRE_PER_SECOND_SQUARED, PERCENT};
use crate::quantity::{Value, unit};
use crate::record::record;
use crate::working::{Working, step};

/// A place on the earth.
#[record]
pub struct Place {
    /// Geographic latitude, north or south alike.
    #[field("\\varphi", DEGREE, -90.0..=90.0)]
    pub latitude: Angle,
    /// Height above sea level.
    #[field("h", METRE, -500.0..=9000.0, default = 0.0, usual = -10.0..=2500.0)]
    pub height: Length,
}

/// Gravity at a place.
#[record]
pub struct Gravity {
    /// Acceleration of gravity.
    #[field("g", METRE_PER_SECOND_SQUARED)]
    pub gravity: Acceleration,
    /// Share by which it exceeds standard gravity, 9.80665 m/s².
    #[field("\\delta_g", PERCENT)]
    pub excess_over_standard: Ratio,
}

/// Acceleration of gravity from latitude and height.
#[derive(Clone, Copy, Debug)]
pub struct LocalGravity;

no_settings!(LocalGravity);

impl Calculation for LocalGravity {
    type Input = Place;
    type Output = Gravity;
    const INFO: Info = Info {
        name: "local_gravity",
        title: "Local gravity",
        summary: "Acceleration of gravity at a latitude and height, for a liquid-column gauge read exactly.",
        sources: &[
            Source::new(
                "Moritz, Geodetic Reference System 1980, J. Geodesy 74 (2000) 128, Somigliana's closed form",
                "gravity at sea level",
            ),
            Source::new("free-air gradient 3.086e-6 1/s², textbook value", "decrease with height"),
        ],
        accuracy: "The true local value differs by up to about 0.0005 m/s² (0.005 %), from the ground below.",
        cautions: &[],
        checked_against: "trade/pressure.csv (local_gravity)",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &Place, working: &mut W) -> Gravity {
        let computed = manometer::local_gravity(input.latitude.si(), input.height.si());
        let standard_gravity = Acceleration::from_si(unit::GRAVITY);
        step!(working, let gravity: "g" in METRE_PER_SECOND_SQUARED = Acceleration::from_si(computed), "Geodetic Reference System 1980, free-air gradient");
        step!(working, let excess_over_standard: "\\delta_g" in PERCENT = (gravity - standard_gravity) / standard_gravity, "definition");
        Gravity { gravity, excess_over_standard }
    }
}
