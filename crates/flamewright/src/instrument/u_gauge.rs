//! The calculation `u_gauge`: pressure from the movement of both limbs of a U-gauge.

use super::liquid_column::{ACCURACY, CAUTIONS, ColumnPressure, SOURCES, column_pressure};
use super::manometer::GaugeLiquid;
use crate::calculation::{Calculation, Context, Info, Raised, Setting, Settings};
use crate::quantity::types::{Acceleration, Length, MassDensity, ThermodynamicTemperature};
use crate::quantity::units::MILLIMETRE;
use crate::quantity::{AbsolutePressure, LevelDifference, LimbMovement, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};

/// A U-gauge read on both limbs.
#[record]
pub struct UGaugeReading {
    /// How far the liquid fell in the limb that is joined to the gas; negative for a suction.
    #[field("h_1", MILLIMETRE, -1000.0..=1000.0, usual = -150.0..=300.0)]
    pub limb_down: LimbMovement,
    /// How far the liquid rose in the limb that is open to the air; negative for a suction.
    #[field("h_2", MILLIMETRE, -1000.0..=1000.0, usual = -150.0..=300.0)]
    pub limb_up: LimbMovement,
    /// Temperature of the liquid.
    #[field("t", DEGREE_CELSIUS, 0.0..=60.0, default = 20.0, usual = 2.0..=35.0)]
    pub liquid_temperature: ThermodynamicTemperature,
    /// Acceleration of gravity at the place.
    #[field("g", METRE_PER_SECOND_SQUARED, 9.7..=9.9, default = 9.80665, usual = 9.78..=9.84)]
    pub gravity: Acceleration,
    /// Pressure of the atmosphere, which decides the weight of the air column in the open limb.
    #[field("p_{atm}", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 800.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
}

/// Pressure from both limbs of a U-gauge.
#[derive(Clone, Copy, Debug)]
pub struct UGauge {
    /// The liquid in the gauge.
    pub liquid: GaugeLiquid,
}

impl Context for UGauge {
    const SETTINGS: &'static [Setting] = GaugeLiquid::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        GaugeLiquid::from_settings(settings).map(|liquid| Self { liquid })
    }
}

rules! {
    refuse SAME_WAY on "limb_up": "the liquid cannot rise in both limbs or fall in both: give what fell and what rose, both positive for a pressure";
    notice UNEQUAL_LIMBS on "limb_up": "the limbs moved by unlike amounts: was the zero set, is the bore even, is the gauge upright?";
}

impl Calculation for UGauge {
    type Input = UGaugeReading;
    type Output = ColumnPressure;
    const INFO: Info = Info {
        name: "u_gauge",
        title: "U-gauge, both limbs",
        summary: "Gauge pressure from how far the liquid fell in one limb and rose in the other. Both are asked for, since one alone is half the pressure.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: CAUTIONS,
        checked_against: "trade/pressure.csv (u_gauge_two_limbs)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &UGaugeReading) -> Raised {
        let (down, up) = (input.limb_down.si(), input.limb_up.si());
        let unequal = (down - up).abs() > 0.005 + 0.1 * (down + up).abs();
        Raised::NONE.when(SAME_WAY, down * up < 0.0).when(UNEQUAL_LIMBS, unequal)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &UGaugeReading, working: &mut W) -> ColumnPressure {
        let (limb_down, limb_up): (Length, Length) = (input.limb_down.plain(), input.limb_up.plain());
        step!(working, let level_difference: "h" in MILLIMETRE = limb_down + limb_up, "geometry of a U-gauge");
        let density = self.liquid.density_at(input.liquid_temperature);
        step!(working, let liquid_density: "\\rho" = MassDensity::from_si(density.si()), "IAPWS SR6-08 for water, else as stated");
        let difference = LevelDifference::new(level_difference);
        column_pressure(difference, liquid_density, input.liquid_temperature, input.gravity, input.barometric_pressure, working)
    }
}
