//! `static_head`: the pressure that a height of water makes.

use super::GRAVITY;
use crate::calculation::{Calculation, Context, Info, Raised, Rule, Setting, Settings, Source};
use crate::quantity::types::{Acceleration, Length, MassDensity, Pressure, Ratio, ThermodynamicTemperature};
use crate::quantity::units::BAR;
use crate::quantity::{AbsolutePressure, Value};
use crate::record::record;
use crate::water::{FLUID_SETTING, Fluid};
use crate::working::{Working, step};
use crate::{Error, rules};

/// A height of water.
#[record]
pub struct StaticHeadInput {
    /// Height of the water's top above the point of interest.
    #[field("h", METRE, 0.0..=200.0, usual = 0.5..=40.0)]
    pub height: Length,
    /// Temperature of the water.
    #[field("t", DEGREE_CELSIUS, -30.0..=110.0, default = 10.0)]
    pub temperature: ThermodynamicTemperature,
    /// Absolute pressure of the water; hardly matters.
    #[field("p", BAR, 0.5..=20.0, default = 2.5)]
    pub pressure: AbsolutePressure,
    /// Share of glycol by mass; needs the setting `fluid`.
    #[field("w", PERCENT, 0.0..=60.0, default = 0.0)]
    pub glycol_mass_fraction: Ratio,
}

/// What it weighs.
#[record]
pub struct StaticHeadResult {
    /// Density of the liquid.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE)]
    pub density: MassDensity,
    /// Pressure of the column.
    #[field("p_{st}", BAR)]
    pub static_pressure: Pressure,
}

/// Static pressure of a column of water or glycol mixture.
#[derive(Clone, Copy, Debug, Default)]
pub struct StaticHead {
    /// What fills the column.
    pub fluid: Fluid,
}

impl Context for StaticHead {
    const SETTINGS: &'static [Setting] = &[FLUID_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { fluid: Fluid::from_settings(settings)? })
    }
}

rules! {
    refuse FROZEN on "temperature": "the liquid would be frozen at this temperature";
    refuse GLYCOL_IN_WATER on "glycol_mass_fraction": "set `fluid` to the glycol that is in the water";
}

impl Calculation for StaticHead {
    type Input = StaticHeadInput;
    type Output = StaticHeadResult;
    const INFO: Info = Info {
        name: "static_head",
        title: "Static head",
        summary: "The pressure that a height of water makes at its temperature.",
        sources: &[
            Source::new("hydrostatics", "density times gravity times height"),
            Source::new("IAPWS SR6-08(2011)", "density of water"),
            Source::new("Melinder, Properties of Secondary Working Fluids, IIR 2010", "density of glycol mixtures"),
        ],
        accuracy: "0.001 % for water besides the height; local gravity differs from standard by up to 0.3 %.",
        cautions: &[],
        checked_against: "heat/static_head.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &StaticHeadInput) -> Raised {
        let fraction = input.glycol_mass_fraction.si();
        Raised::NONE
            .when(FROZEN, self.fluid.frozen(fraction, input.temperature.si()))
            .when(GLYCOL_IN_WATER, self.fluid.glycol_in_water(fraction))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &StaticHeadInput, working: &mut W) -> StaticHeadResult {
        let state = self.fluid.state(input.glycol_mass_fraction.si(), input.pressure.si(), input.temperature.si());
        step!(working, let gravity: "g" = Acceleration::from_si(GRAVITY), "standard gravity, CGPM 1901");
        step!(working, let density: "\\rho" = MassDensity::from_si(state.density), "IAPWS SR6-08, or Melinder 2010");
        step!(working, let static_pressure: "p_{st}" in BAR = density * gravity * input.height, "hydrostatics");
        StaticHeadResult { density, static_pressure }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::water::tests::assert_close;
    use flamewright_reference::rows;

    #[test]
    fn reference_rows() {
        for row in rows("heat/static_head.csv") {
            let input = StaticHeadInput {
                height: Length::from_si(row.number("height_m")),
                temperature: ThermodynamicTemperature::from_si(row.number("T_C") + 273.15),
                ..StaticHeadInput::unset()
            };
            let got = StaticHead::default().evaluate(&input).unwrap();
            assert_close(got.density.si(), row.number("rho_kg_m3"), 1e-7, &row.place);
            assert_close(got.static_pressure.si(), row.number("p_Pa"), 1e-7, &row.place);
        }
    }
}
