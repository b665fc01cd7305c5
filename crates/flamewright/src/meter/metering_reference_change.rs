//! The calculation `metering_reference_change`: a stated calorific value carried to another metering
//! reference.

use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::quantity::types::{Ratio, ThermodynamicTemperature};
use crate::quantity::units::MEGAJOULE_PER_CUBIC_METRE;
use crate::quantity::{AbsolutePressure, CalorificValue, Gross, Net, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A calorific value per volume, the metering reference it is stated at, and the one wanted.
#[record]
pub struct CalorificValueHere {
    /// Gross calorific value as stated.
    #[field("H_s", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, usual = 10.0..=140.0, absent = "not stated")]
    pub gross_calorific_value: CalorificValue<Gross>,
    /// Net calorific value as stated.
    #[field("H_i", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, usual = 10.0..=130.0, absent = "not stated")]
    pub net_calorific_value: CalorificValue<Net>,
    /// Metering temperature of the stated value.
    #[field("T_1", DEGREE_CELSIUS, -20.0..=50.0, usual = 0.0..=25.0)]
    pub stated_temperature: ThermodynamicTemperature,
    /// Metering pressure of the stated value.
    #[field("p_1", MILLIBAR, 600.0..=1200.0, default = 1013.25, usual = 980.0..=1030.0)]
    pub stated_pressure: AbsolutePressure,
    /// Metering temperature wanted.
    #[field("T_2", DEGREE_CELSIUS, -20.0..=50.0, usual = 0.0..=25.0)]
    pub wanted_temperature: ThermodynamicTemperature,
    /// Metering pressure wanted.
    #[field("p_2", MILLIBAR, 600.0..=1200.0, default = 1013.25, usual = 980.0..=1030.0)]
    pub wanted_pressure: AbsolutePressure,
    /// Compression factor at the stated over that at the wanted conditions.
    #[field("Z_1/Z_2", ONE, 0.9..=1.1, default = 1.0, usual = 0.99..=1.01)]
    pub compression_ratio: Ratio,
}

/// The calorific value at the wanted metering reference.
#[record]
pub struct CalorificValueElsewhere {
    /// Volume of the same gas at the stated over that at the wanted conditions.
    #[field("V_1/V_2", ONE)]
    pub volume_ratio: Ratio,
    /// Gross calorific value.
    #[field("H_{s,2}", MEGAJOULE_PER_CUBIC_METRE, absent = "not stated")]
    pub gross_calorific_value: CalorificValue<Gross>,
    /// Net calorific value.
    #[field("H_{i,2}", MEGAJOULE_PER_CUBIC_METRE, absent = "not stated")]
    pub net_calorific_value: CalorificValue<Net>,
}

/// Change of the metering reference of a calorific value.
#[derive(Clone, Copy, Debug)]
pub struct MeteringReferenceChange;

no_settings!(MeteringReferenceChange);

rules! {
    refuse NO_CALORIFIC_VALUE on "gross_calorific_value": "state the gross or the net calorific value, or both";
}

impl Calculation for MeteringReferenceChange {
    type Input = CalorificValueHere;
    type Output = CalorificValueElsewhere;
    const INFO: Info = Info {
        name: "metering_reference_change",
        title: "Change of the metering reference of a calorific value",
        summary: "A calorific value per volume carried from one metering temperature and pressure to another. The combustion reference stays; \
                  where the composition is known, gas_properties gives both parts exactly.",
        sources: &[Source::new("ideal gas law, with the compression factors where they are given (as ISO 13443)", "volume ratio")],
        accuracy: "Left out: the compression factors unless given (under 0.1 % for natural gas) and any change of the combustion \
                   temperature (0.26 % of the gross value from 0 °C to 25 °C for methane).",
        cautions: &[],
        checked_against: "trade/gas_rate.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &CalorificValueHere) -> Raised {
        let missing = input.gross_calorific_value.si().is_nan() & input.net_calorific_value.si().is_nan();
        Raised::NONE.when(NO_CALORIFIC_VALUE, missing)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &CalorificValueHere, working: &mut W) -> CalorificValueElsewhere {
        let (gross_calorific_value, net_calorific_value) = (input.gross_calorific_value.plain(), input.net_calorific_value.plain());
        let (stated_pressure, wanted_pressure) = (input.stated_pressure.plain(), input.wanted_pressure.plain());
        step!(working, let volume_ratio: "V_1/V_2" = wanted_pressure / stated_pressure * (input.stated_temperature / input.wanted_temperature) * input.compression_ratio, "gas law");
        step!(working, let gross: "H_{s,2}" in MEGAJOULE_PER_CUBIC_METRE = gross_calorific_value * volume_ratio, "ISO 13443");
        step!(working, let net: "H_{i,2}" in MEGAJOULE_PER_CUBIC_METRE = net_calorific_value * volume_ratio, "ISO 13443");
        CalorificValueElsewhere {
            volume_ratio,
            gross_calorific_value: CalorificValue::new(gross),
            net_calorific_value: CalorificValue::new(net),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::supply::trade::check;

    #[test]
    fn changes_of_reference_agree() {
        let checked = check("trade/gas_rate.csv", "metering_reference_change", |i, _| {
            let stated = CalorificValueHere {
                gross_calorific_value: CalorificValue::from_si(i.si("H")),
                stated_temperature: ThermodynamicTemperature::from_si(i.si("T_ref_from")),
                wanted_temperature: ThermodynamicTemperature::from_si(i.si("T_ref_to")),
                ..CalorificValueHere::unset()
            };
            MeteringReferenceChange.evaluate(&stated).unwrap().output.gross_calorific_value.si()
        });
        assert_eq!(checked, 4);
    }
}
