//! The calculation `liquid_column`: pressure from the level difference of a liquid-column gauge.

use super::manometer::{CONVENTIONAL_WATER_DENSITY, GaugeLiquid};
use crate::air::properties::{STANDARD_ATMOSPHERE, dry_air};
use crate::calculation::{Calculation, Context, Info, Raised, Setting, Settings, Source};
use crate::quantity::types::{Acceleration, Length, MassDensity, Ratio, ThermodynamicTemperature};
use crate::quantity::units::PERCENT;
use crate::quantity::{AbsolutePressure, GaugePressure, LevelDifference, Value, unit};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};

/// A gauge read as the difference between its two levels.
#[record]
pub struct ColumnReading {
    /// Difference between the levels of the two limbs, positive for a pressure and negative for a suction. On a scale that is
    /// spaced to give the whole pressure from one limb, the figure read from the scale.
    #[field("h", MILLIMETRE, -2000.0..=2000.0, usual = -300.0..=600.0)]
    pub level_difference: LevelDifference,
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

/// What a column is worth.
#[record]
pub struct ColumnPressure {
    /// Level difference that balances the pressure.
    #[field("h", MILLIMETRE)]
    pub level_difference: LevelDifference,
    /// Density of the liquid at its temperature.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE)]
    pub liquid_density: MassDensity,
    /// Pressure above the atmosphere by the weight of the liquid alone, with its true density and local gravity.
    #[field("p", MILLIBAR)]
    pub pressure: GaugePressure,
    /// The same less the weight of the air that stands in the place of the liquid in the other limb.
    #[field("p_{air}", MILLIBAR)]
    pub pressure_less_air: GaugePressure,
    /// What the same reading is in conventional units of water column: 1000 kg/m³ and standard gravity.
    #[field("p_{conv}", MILLIBAR)]
    pub pressure_conventional: GaugePressure,
    /// Share by which the conventional figure is too high.
    #[field("\\delta", PERCENT, absent = "no level difference")]
    pub convention_error: Ratio,
}

/// The sum all U-gauges share.
#[inline(always)]
pub(super) fn column_pressure<W: Working>(
    level_difference: LevelDifference,
    liquid_density: MassDensity,
    liquid_temperature: ThermodynamicTemperature,
    gravity: Acceleration,
    barometric_pressure: AbsolutePressure,
    working: &mut W,
) -> ColumnPressure {
    let head: Length = level_difference.plain();
    let (water, standard_gravity) = (MassDensity::from_si(CONVENTIONAL_WATER_DENSITY), Acceleration::from_si(unit::GRAVITY));
    step!(working, let pressure: "p" = liquid_density * gravity * head, "hydrostatics");
    step!(working, let air_density: "\\rho_{air}" = MassDensity::from_si(dry_air(liquid_temperature.si(), barometric_pressure.si()).density), "dry air, Lemmon et al. 2000");
    step!(working, let pressure_less_air: "p_{air}" = (liquid_density - air_density) * gravity * head, "hydrostatics");
    step!(working, let pressure_conventional: "p_{conv}" = water * standard_gravity * head, "NIST SP 811, conventional water");
    step!(working, let convention_error: "\\delta" in PERCENT = (pressure_conventional - pressure) / pressure, "definition");
    ColumnPressure {
        level_difference,
        liquid_density,
        pressure: GaugePressure::new(pressure),
        pressure_less_air: GaugePressure::new(pressure_less_air),
        pressure_conventional: GaugePressure::new(pressure_conventional),
        convention_error,
    }
}

pub(super) const SOURCES: &[Source] = &[
    Source::new("hydrostatics, p = ρ g h", "pressure of a column"),
    Source::new("IAPWS SR6-08(2011), liquid water at 0.1 MPa", "density of water"),
    Source::new("NIST SP 811 (2008), Appendix B.8", "conventional water, standard gravity"),
    Source::new("Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331, as fitted in the air module", "density of dry air"),
];
pub(super) const ACCURACY: &str = "The sum is good to 0.001 %; the reading of a limb to half a millimetre decides, which is 0.05 mbar.";
pub(super) const CAUTIONS: &[&str] = &[
    "Working on gas is for people legally competent to do it, to the procedure in force where they work; a computed pressure certifies nothing.",
];

/// Pressure from the level difference of a liquid-column gauge.
#[derive(Clone, Copy, Debug)]
pub struct LiquidColumn {
    /// The liquid in the gauge.
    pub liquid: GaugeLiquid,
}

impl Context for LiquidColumn {
    const SETTINGS: &'static [Setting] = GaugeLiquid::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        GaugeLiquid::from_settings(settings).map(|liquid| Self { liquid })
    }
}

rules! {
    notice AIR_COLUMN on "barometric_pressure": "the barometer is far from standard: take it from a nearby station, not reduced to sea level";
}

impl Calculation for LiquidColumn {
    type Input = ColumnReading;
    type Output = ColumnPressure;
    const INFO: Info = Info {
        name: "liquid_column",
        title: "Pressure of a liquid column",
        summary: "Gauge pressure from the level difference of a U-gauge or a scale that gives it, with the true density of the liquid and local \
                  gravity, beside the figure in conventional units of water column.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: CAUTIONS,
        checked_against: "trade/pressure.csv (u_gauge_reading, water_density, u_gauge_uncertainty)",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &ColumnReading) -> Raised {
        Raised::NONE.when(AIR_COLUMN, (input.barometric_pressure.si() - STANDARD_ATMOSPHERE).abs() > 25_000.0)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &ColumnReading, working: &mut W) -> ColumnPressure {
        let density = self.liquid.density_at(input.liquid_temperature);
        step!(working, let liquid_density: "\\rho" = MassDensity::from_si(density.si()), "IAPWS SR6-08 for water, else as stated");
        column_pressure(input.level_difference, liquid_density, input.liquid_temperature, input.gravity, input.barometric_pressure, working)
    }
}
