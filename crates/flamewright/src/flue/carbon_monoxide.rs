//! The calculation `carbon_monoxide`: ratio and air-free value from readings alone, no fuel needed.

use super::emission::{air_free_from_carbon_dioxide, at_reference_oxygen};
use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::quantity::types::Ratio;
use crate::quantity::units::PPM;
use crate::quantity::{AirFree, Dry, MoleFraction, On, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// Carbon monoxide with what was read beside it, and the conventions to judge it by.
#[record]
pub struct CarbonMonoxideReading {
    /// Carbon monoxide in dry flue gas.
    #[field("x_{CO}", PPM, 0.0..=100_000.0, usual = 0.0..=1000.0)]
    pub carbon_monoxide_dry: MoleFraction<Dry>,
    /// Carbon dioxide in dry flue gas.
    #[field("x_{CO_2}", PERCENT, 0.05..=25.0, usual = 1.0..=15.0, absent = "not measured")]
    pub carbon_dioxide_dry: MoleFraction<Dry>,
    /// Oxygen in dry flue gas.
    #[field("x_{O_2}", PERCENT, 0.0..=20.5, usual = 1.0..=18.0, absent = "not measured")]
    pub oxygen_dry: MoleFraction<Dry>,
    /// Oxygen of air in the rule's own formula: 20.9, 20.95 or 21 %; needed with oxygen.
    #[field("x_{O_2,air}", PERCENT, 20.8..=21.1, absent = "no rule chosen")]
    pub air_oxygen: MoleFraction<Dry>,
    /// Oxygen that the rule refers to; 0 % means air-free.
    #[field("x_{O_2,ref}", PERCENT, 0.0..=20.0, default = 0.0)]
    pub reference_oxygen: MoleFraction<Dry>,
    /// Largest carbon dioxide of the fuel; needed for the air-free value from carbon dioxide.
    #[field("x_{CO_2,max}", PERCENT, 1.0..=25.0, absent = "not given")]
    pub carbon_dioxide_maximum: MoleFraction<Dry>,
}

/// Carbon monoxide freed from dilution.
#[record]
pub struct CarbonMonoxideResult {
    /// Carbon monoxide over carbon dioxide, both by volume of the same sample; dilution does not change it.
    #[field("r", ONE, absent = "carbon dioxide not measured")]
    pub carbon_monoxide_ratio: Ratio,
    /// Carbon dioxide over carbon monoxide, the "one to ..." way of stating it.
    #[field("1/r", ONE, absent = "no carbon monoxide, or carbon dioxide not measured")]
    pub carbon_dioxide_over_monoxide: Ratio,
    /// Carbon monoxide at zero oxygen, from the oxygen read.
    #[field("x_{CO,af}", PPM, absent = "oxygen not measured or no oxygen of air chosen")]
    pub carbon_monoxide_air_free: MoleFraction<AirFree>,
    /// Carbon monoxide at reference oxygen, from the oxygen read.
    #[field("x_{CO,ref}", PPM, absent = "oxygen not measured or no oxygen of air chosen")]
    pub carbon_monoxide_at_reference: MoleFraction<Dry>,
    /// Carbon monoxide at zero excess air, from the carbon dioxide read and the fuel's largest one.
    #[field("x_{CO,af,CO_2}", PPM, absent = "carbon dioxide or its largest value not given")]
    pub carbon_monoxide_air_free_from_carbon_dioxide: MoleFraction<AirFree>,
}

/// Carbon monoxide ratio and air-free value.
#[derive(Clone, Copy, Debug)]
pub struct CarbonMonoxide;

no_settings!(CarbonMonoxide);

rules! {
    refuse NOTHING_BESIDE_IT on "carbon_monoxide_dry": "carbon monoxide alone says nothing of its dilution; give carbon dioxide, or oxygen with the rule's oxygen of air";
    refuse NO_OXYGEN_OF_AIR on "air_oxygen": "the correction by oxygen needs the rule's oxygen of air: 20.9, 20.95 or 21 %";
    notice DOUBTFUL_RATIO on "carbon_monoxide_dry": "more than 5 % of the carbon as carbon monoxide: check ppm against %";
    notice MUCH_AIR on "oxygen_dry": "near the oxygen of air the correction multiplies the error of the reading many times";
}

impl Calculation for CarbonMonoxide {
    type Input = CarbonMonoxideReading;
    type Output = CarbonMonoxideResult;
    const INFO: Info = Info {
        name: "carbon_monoxide",
        title: "Carbon monoxide ratio and air-free value",
        summary: "CO/CO2 ratio, air-free carbon monoxide from oxygen or from carbon dioxide, and carbon monoxide at a reference oxygen.",
        sources: &[
            Source::new("definition", "ratio CO/CO2 by volume of the same sample"),
            Source::new("common practice; the form of US and German rules", "CO O2air / (O2air - O2), CO CO2max / CO2"),
        ],
        accuracy: "Exact arithmetic; the short forms are within 0.5 % of the element balance.",
        cautions: super::CAUTIONS,
        checked_against: "trade/flue_vent.csv: co_co2_ratio, co_air_free_from_O2, co_air_free_from_CO2, co_to_O2_reference",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &CarbonMonoxideReading) -> Raised {
        let no_oxygen = input.oxygen_dry.si().is_nan();
        Raised::NONE
            .when(NOTHING_BESIDE_IT, no_oxygen & input.carbon_dioxide_dry.si().is_nan())
            .when(NO_OXYGEN_OF_AIR, !no_oxygen & input.air_oxygen.si().is_nan())
            .when(DOUBTFUL_RATIO, input.carbon_monoxide_dry.si() > 0.05 * input.carbon_dioxide_dry.si())
            .when(MUCH_AIR, input.oxygen_dry.si() > 0.14)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &CarbonMonoxideReading, working: &mut W) -> CarbonMonoxideResult {
        let carbon_monoxide_dry = input.carbon_monoxide_dry.si();
        let carbon_dioxide_dry = input.carbon_dioxide_dry.si();
        let oxygen_dry = input.oxygen_dry.si();
        let air_oxygen = input.air_oxygen.si();
        step!(working, let carbon_monoxide_ratio: "r" = carbon_monoxide_dry / carbon_dioxide_dry, "definition");
        step!(working, let carbon_monoxide_air_free: "x_{CO,af}" in PPM = carbon_monoxide_dry * air_oxygen / (air_oxygen - oxygen_dry), "rule's formula");
        let at_reference = at_reference_oxygen(carbon_monoxide_dry, oxygen_dry, input.reference_oxygen.si(), air_oxygen);
        let from_dioxide = air_free_from_carbon_dioxide(carbon_monoxide_dry, carbon_dioxide_dry, input.carbon_dioxide_maximum.si());
        let inverse = carbon_dioxide_dry / carbon_monoxide_dry;
        CarbonMonoxideResult {
            carbon_monoxide_ratio: Ratio::from_si(carbon_monoxide_ratio),
            // Without carbon monoxide "one to infinity" is no number to show.
            carbon_dioxide_over_monoxide: Ratio::from_si(if carbon_monoxide_dry > 0.0 { inverse } else { f64::NAN }),
            carbon_monoxide_air_free: On::from_si(carbon_monoxide_air_free),
            carbon_monoxide_at_reference: On::from_si(at_reference),
            carbon_monoxide_air_free_from_carbon_dioxide: On::from_si(from_dioxide),
        }
    }
}
