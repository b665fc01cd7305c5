//! The calculations `antifreeze_mixture` and `boiling_point`.

use super::{ANTIFREEZE_SETTING, Antifreeze, saturation_temperature};
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Raised, Rule, Setting, Settings, Source};
use crate::quantity::types::{
    DynamicViscosity, MassDensity, Ratio, SpecificHeatCapacity, TemperatureCoefficient, TemperatureInterval, ThermalConductivity,
    ThermodynamicTemperature,
};
use crate::quantity::units::{BAR, PERCENT};
use crate::quantity::{AbsolutePressure, GaugePressure, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A mixture of water and glycol.
#[record]
pub struct AntifreezeMixtureInput {
    /// Share of glycol by mass.
    #[field("w", PERCENT, 0.0..=60.0, usual = 10.0..=55.0)]
    pub glycol_mass_fraction: Ratio,
    /// Temperature.
    #[field("t", DEGREE_CELSIUS, -60.0..=100.0, usual = -20.0..=90.0)]
    pub temperature: ThermodynamicTemperature,
}

/// Properties of the mixture.
#[record]
pub struct AntifreezeMixtureResult {
    /// Density.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE)]
    pub density: MassDensity,
    /// Specific heat capacity.
    #[field("c_p", JOULE_PER_KILOGRAM_KELVIN)]
    pub specific_heat_capacity: SpecificHeatCapacity,
    /// Dynamic viscosity.
    #[field("\\mu", PASCAL_SECOND)]
    pub dynamic_viscosity: DynamicViscosity,
    /// Thermal conductivity.
    #[field("\\lambda", WATT_PER_METRE_KELVIN)]
    pub thermal_conductivity: ThermalConductivity,
    /// Volumetric expansion coefficient.
    #[field("\\beta", PER_KELVIN)]
    pub expansion_coefficient: TemperatureCoefficient,
    /// Prandtl number.
    #[field("Pr", ONE)]
    pub prandtl_number: Ratio,
    /// Temperature at which ice begins to form.
    #[field("t_{frost}", DEGREE_CELSIUS)]
    pub freezing_temperature: ThermodynamicTemperature,
    /// Share of glycol by volume, as poured together at 20 °C.
    #[field("\\varphi", PERCENT)]
    pub glycol_volume_fraction: Ratio,
}

/// Properties of water with glycol.
#[derive(Clone, Copy, Debug)]
pub struct AntifreezeMixture {
    /// Which glycol.
    pub antifreeze: Antifreeze,
}

impl Context for AntifreezeMixture {
    const SETTINGS: &'static [Setting] = &[ANTIFREEZE_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { antifreeze: Antifreeze::from_settings(settings)? })
    }
}

rules! {
    refuse FROZEN on "temperature": "ice forms at this temperature: more glycol is needed for it";
    notice THIN on "glycol_mass_fraction": "below about a fifth of glycol the inhibitors in it are too thin and germs may grow; most makers state a least share";
}

impl Calculation for AntifreezeMixture {
    type Input = AntifreezeMixtureInput;
    type Output = AntifreezeMixtureResult;
    const INFO: Info = Info {
        name: "antifreeze_mixture",
        title: "Properties of a glycol mixture",
        summary: "Density, heat capacity, viscosity, conductivity, expansion and freezing point of water with propylene or ethylene glycol.",
        sources: &[
            Source::new(
                "Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries them",
                "all properties, 0 to 60 % by mass, freezing point to 100 °C",
            ),
            Source::new("from memory", "density of pure glycol at 20 °C, for the share by volume: propylene 1036, ethylene 1113 kg/m³"),
            Source::new("common practice, no source", "least share of a fifth"),
        ],
        accuracy: "1 % for glycol and water alone, viscosity 5 %; inhibited products differ by more, their maker's data go first.",
        cautions: &["Ethylene glycol is poisonous: not where it can reach drinking water."],
        checked_against: "heat/glycol.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &AntifreezeMixtureInput) -> Raised {
        let fraction = input.glycol_mass_fraction.si();
        Raised::NONE.when(FROZEN, input.temperature.si() < self.antifreeze.freezing_temperature(fraction)).when(THIN, fraction < 0.2)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &AntifreezeMixtureInput, working: &mut W) -> AntifreezeMixtureResult {
        let fraction = input.glycol_mass_fraction.si();
        let mixture = self.antifreeze.mixture(fraction, input.temperature.si());
        let by_volume = self.antifreeze.volume_fraction_of_mass_fraction(fraction);
        step!(working, let density: "\\rho" = MassDensity::from_si(mixture.density), "Melinder 2010");
        step!(working, let specific_heat_capacity: "c_p" = SpecificHeatCapacity::from_si(mixture.specific_heat_capacity), "Melinder 2010");
        step!(working, let dynamic_viscosity: "\\mu" = DynamicViscosity::from_si(mixture.dynamic_viscosity), "Melinder 2010");
        step!(working, let thermal_conductivity: "\\lambda" = ThermalConductivity::from_si(mixture.thermal_conductivity), "Melinder 2010");
        step!(working, let prandtl_number: "Pr" = specific_heat_capacity * dynamic_viscosity / thermal_conductivity, "definition");
        step!(working, let glycol_volume_fraction: "\\varphi" in PERCENT = Ratio::from_si(by_volume), "densities of the parts at 20 °C");
        AntifreezeMixtureResult {
            density,
            specific_heat_capacity,
            dynamic_viscosity,
            thermal_conductivity,
            expansion_coefficient: TemperatureCoefficient::from_si(mixture.expansion_coefficient),
            prandtl_number,
            freezing_temperature: ThermodynamicTemperature::from_si(mixture.freezing_temperature),
            glycol_volume_fraction,
        }
    }
}

/// Water under a pressure.
#[record]
pub struct BoilingPointInput {
    /// Pressure of the water over that of the air.
    #[field("p_g", BAR, -0.9..=100.0, default = 0.0, usual = 0.0..=10.0)]
    pub water_pressure: GaugePressure,
    /// Pressure of the air.
    #[field("p_{amb}", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 700.0..=1050.0)]
    pub barometric_pressure: AbsolutePressure,
    /// Temperature of the water, where the margin to boiling is wanted.
    #[field("t", DEGREE_CELSIUS, 0.0..=350.0, absent = "not asked")]
    pub water_temperature: ThermodynamicTemperature,
}

/// Where it boils.
#[record]
pub struct BoilingPointResult {
    /// Absolute pressure.
    #[field("p", BAR)]
    pub absolute_pressure: AbsolutePressure,
    /// Boiling point.
    #[field("t_s", DEGREE_CELSIUS)]
    pub boiling_point: ThermodynamicTemperature,
    /// Margin from the water's temperature up to boiling; negative where it boils.
    #[field("\\Delta t_s", KELVIN, absent = "no water temperature given")]
    pub margin: TemperatureInterval,
}

/// Boiling point of water under a gauge pressure.
#[derive(Clone, Copy, Debug)]
pub struct BoilingPoint;
no_settings!(BoilingPoint);

mod boiling {
    crate::rules! {
        notice BOILS on "water_temperature": "the water boils at this pressure";
        notice NEAR_BOILING on "water_temperature": "within 10 K of boiling: hot surfaces and pump inlets lie nearer still";
    }
    pub(super) const LIST: &[crate::calculation::Rule] = RULES;
    pub(super) const NUMBERS: [u32; 2] = [BOILS, NEAR_BOILING];
}

impl Calculation for BoilingPoint {
    type Input = BoilingPointInput;
    type Output = BoilingPointResult;
    const INFO: Info = Info {
        name: "boiling_point",
        title: "Boiling point of water under pressure",
        summary: "The temperature at which water boils at a gauge pressure and barometer, and how far from it the water is.",
        sources: &[
            Source::new("IAPWS R7-97(2012), IF97 region 4", "saturation temperature"),
            Source::new("common practice, no source", "margin of 10 K"),
        ],
        accuracy: "0.01 K besides the pressure readings; 0.1 bar is 2 K near 1 bar.",
        cautions: &["Water that is let out above 100 °C flashes to steam."],
        checked_against: "heat/water_saturation.csv, heat/iapws_check_values.csv",
    };
    const RULES: &'static [Rule] = boiling::LIST;

    #[inline]
    fn review(&self, _input: &BoilingPointInput, output: &BoilingPointResult) -> Raised {
        let [boils, near] = boiling::NUMBERS;
        let margin = output.margin.si();
        Raised::NONE.when(boils, margin <= 0.0).when(near, (margin > 0.0) & (margin < 10.0))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &BoilingPointInput, working: &mut W) -> BoilingPointResult {
        step!(working, let absolute_pressure: "p" in BAR = input.water_pressure.plain() + input.barometric_pressure.plain(), "definition");
        let boiling = saturation_temperature(absolute_pressure.si());
        step!(working, let boiling_point: "t_s" = ThermodynamicTemperature::from_si(boiling), "IAPWS-IF97 region 4");
        BoilingPointResult {
            absolute_pressure: AbsolutePressure::new(absolute_pressure),
            boiling_point,
            margin: TemperatureInterval::from_si(boiling_point.si() - input.water_temperature.si()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::tests::assert_close;
    use super::*;
    use crate::record::Record;
    use flamewright_reference::rows;

    #[test]
    fn mixture_rows_of_the_reference_table() {
        for row in rows("heat/glycol.csv") {
            let antifreeze =
                if row.text("fluid").starts_with("propylene") { Antifreeze::PropyleneGlycol } else { Antifreeze::EthyleneGlycol };
            let input = AntifreezeMixtureInput {
                glycol_mass_fraction: Ratio::from_si(row.number("mass_fraction")),
                temperature: ThermodynamicTemperature::from_si(row.number("T_C") + 273.15),
            };
            let got = AntifreezeMixture { antifreeze }.evaluate(&input).unwrap();
            assert_close(got.density.si(), row.number("rho_kg_m3"), 6e-6, &row.place);
            assert_close(got.specific_heat_capacity.si(), row.number("cp_J_kgK"), 6e-6, &row.place);
            assert_close(got.dynamic_viscosity.si(), row.number("mu_Pa_s"), 6e-6, &row.place);
            assert_close(got.thermal_conductivity.si(), row.number("k_W_mK"), 6e-6, &row.place);
            assert!((got.freezing_temperature.si() - 273.15 - row.number("T_freeze_C")).abs() < 6e-5, "{}", row.place);
            let pr = got.specific_heat_capacity.si() * got.dynamic_viscosity.si() / got.thermal_conductivity.si();
            assert_close(got.prandtl_number.si(), pr, 1e-15, &row.place);
        }
        let ice =
            AntifreezeMixtureInput { glycol_mass_fraction: Ratio::from_si(0.3), temperature: ThermodynamicTemperature::from_si(255.0) };
        assert_eq!(AntifreezeMixture { antifreeze: Antifreeze::PropyleneGlycol }.evaluate(&ice).unwrap_err().code(), "FROZEN");
    }

    #[test]
    fn boiling_points_of_the_reference_table() {
        for row in rows("heat/water_saturation.csv") {
            let barometric_pressure = 1.0e5;
            let input = BoilingPointInput {
                water_pressure: GaugePressure::from_si(row.number("psat_Pa_IF97_R4") - barometric_pressure),
                barometric_pressure: AbsolutePressure::from_si(barometric_pressure),
                water_temperature: ThermodynamicTemperature::from_si(353.0),
            };
            // Below about 46 °C water boils in a vacuum deeper than the gauge range.
            let Ok(got) = BoilingPoint.evaluate(&input) else {
                assert!(row.number("T_C") < 50.0, "{}", row.place);
                continue;
            };
            assert!((got.boiling_point.si() - 273.15 - row.number("T_C")).abs() < 1e-5, "{}", row.place);
            let boils = got.notices().iter().any(|notice| notice.code == "BOILS");
            assert_eq!(boils, row.number("T_C") < 79.0, "{}", row.place);
        }
        let open = BoilingPoint.evaluate(&BoilingPointInput::unset()).unwrap();
        assert!((open.boiling_point.si() - 373.124_3).abs() < 1e-3 && open.margin.si().is_nan());
    }
}
