//! The calculation `absolute_pressure`: from a gauge pressure and the barometer.

use crate::calculation::{Calculation, Info, Raised, Source};
use crate::quantity::units::MILLIBAR;
use crate::quantity::{AbsolutePressure, GaugePressure, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A pressure as a gauge shows it, and the atmosphere around the gauge.
#[record]
pub struct PressureOverAtmosphere {
    /// Pressure above the atmosphere; negative below it.
    #[field("p_g", MILLIBAR, -1100.0..=100_000.0)]
    pub gauge_pressure: GaugePressure,
    /// Pressure of the atmosphere at the place, not reduced to sea level.
    #[field("p_{atm}", MILLIBAR, 500.0..=1100.0, usual = 800.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
}

/// The same pressure above vacuum.
#[record]
pub struct PressureOverVacuum {
    /// Pressure above vacuum: what gas laws need.
    #[field("p", MILLIBAR)]
    pub absolute_pressure: AbsolutePressure,
}

/// Absolute pressure from a gauge pressure and the barometer.
#[derive(Clone, Copy, Debug)]
pub struct AbsoluteFromGauge;

no_settings!(AbsoluteFromGauge);

rules! {
    refuse BELOW_VACUUM on "gauge_pressure": "it is further below the atmosphere than vacuum: is it really a gauge pressure, and in that unit?";
}

impl Calculation for AbsoluteFromGauge {
    type Input = PressureOverAtmosphere;
    type Output = PressureOverVacuum;
    const INFO: Info = Info {
        name: "absolute_pressure",
        title: "Absolute pressure",
        summary: "The pressure above vacuum of what a gauge shows, from the pressure of the atmosphere.",
        sources: &[Source::new("definition of gauge pressure", "the sum")],
        accuracy: "Exact; the barometer carries the uncertainty.",
        cautions: &[],
        checked_against: "trade/pressure.csv (gauge_to_absolute)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &PressureOverAtmosphere) -> Raised {
        Raised::NONE.when(BELOW_VACUUM, input.gauge_pressure.si() + input.barometric_pressure.si() < 0.0)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &PressureOverAtmosphere, working: &mut W) -> PressureOverVacuum {
        let (gauge_pressure, barometric_pressure) = (input.gauge_pressure.plain(), input.barometric_pressure.plain());
        step!(working, let absolute_pressure: "p" in MILLIBAR = gauge_pressure + barometric_pressure, "definition");
        PressureOverVacuum { absolute_pressure: AbsolutePressure::new(absolute_pressure) }
    }
}
