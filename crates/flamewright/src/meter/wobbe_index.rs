//! The calculation `wobbe_index`: Wobbe indices from stated calorific values and relative density.

use crate::calculation::{Calculation, Info, Raised, Rule, Source};
use crate::math;
use crate::quantity::types::Ratio;
use crate::quantity::units::MEGAJOULE_PER_CUBIC_METRE;
use crate::quantity::{CalorificValue, Gross, Net, Value, WobbeIndex};
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A gas by its stated figures, all at the same reference conditions.
#[record]
pub struct GasHeatAndDensity {
    /// Gross calorific value.
    #[field("H_s", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, usual = 10.0..=140.0, absent = "not stated")]
    pub gross_calorific_value: CalorificValue<Gross>,
    /// Net calorific value.
    #[field("H_i", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, usual = 10.0..=130.0, absent = "not stated")]
    pub net_calorific_value: CalorificValue<Net>,
    /// Density of the gas over that of dry air.
    #[field("d", ONE, 0.05..=5.0, usual = 0.06..=2.2)]
    pub relative_density: Ratio,
}

/// Wobbe indices of the gas.
#[record]
pub struct Wobbe {
    /// Gross Wobbe index.
    #[field("W_s", MEGAJOULE_PER_CUBIC_METRE, absent = "no gross calorific value stated")]
    pub gross_wobbe_index: WobbeIndex<Gross>,
    /// Net Wobbe index.
    #[field("W_i", MEGAJOULE_PER_CUBIC_METRE, absent = "no net calorific value stated")]
    pub net_wobbe_index: WobbeIndex<Net>,
    /// Gross calorific value over net.
    #[field("H_s/H_i", ONE, absent = "gross or net not stated")]
    pub gross_over_net: Ratio,
}

/// Wobbe indices from calorific value and relative density.
#[derive(Clone, Copy, Debug)]
pub struct WobbeIndexOf;

no_settings!(WobbeIndexOf);

rules! {
    refuse NO_CALORIFIC_VALUE on "gross_calorific_value": "state the gross or the net calorific value, or both";
    refuse NET_ABOVE_GROSS on "net_calorific_value": "the net calorific value is never above the gross one: have the two been swapped?";
}

impl Calculation for WobbeIndexOf {
    type Input = GasHeatAndDensity;
    type Output = Wobbe;
    const INFO: Info = Info {
        name: "wobbe_index",
        title: "Wobbe index from calorific value and relative density",
        summary: "Gross and net Wobbe index of a gas whose calorific value and relative density are stated, as on a supplier's sheet.",
        sources: &[Source::new("ISO 6976, definition of the Wobbe index", "W = H/√d")],
        accuracy: "As the stated figures; a relative density to three places gives the Wobbe index to 0.1 %.",
        cautions: &[],
        checked_against: "trade/gas_rate.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &GasHeatAndDensity) -> Raised {
        let (gross, net) = (input.gross_calorific_value.si(), input.net_calorific_value.si());
        Raised::NONE.when(NO_CALORIFIC_VALUE, gross.is_nan() & net.is_nan()).when(NET_ABOVE_GROSS, net > gross)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &GasHeatAndDensity, working: &mut W) -> Wobbe {
        let (gross_calorific_value, net_calorific_value) = (input.gross_calorific_value.plain(), input.net_calorific_value.plain());
        step!(working, let gross_wobbe_index: "W_s" in MEGAJOULE_PER_CUBIC_METRE = gross_calorific_value / math::sqrt(input.relative_density.value), "ISO 6976");
        step!(working, let net_wobbe_index: "W_i" in MEGAJOULE_PER_CUBIC_METRE = net_calorific_value / math::sqrt(input.relative_density.value), "ISO 6976");
        Wobbe {
            gross_wobbe_index: WobbeIndex::new(gross_wobbe_index),
            net_wobbe_index: WobbeIndex::new(net_wobbe_index),
            gross_over_net: gross_calorific_value / net_calorific_value,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::node::Node;
    use crate::supply::trade::check;

    #[test]
    fn published_test_gases_agree() {
        let checked = check("trade/gas_rate.csv", "published_test_gas", |i, output| {
            let gas = GasHeatAndDensity {
                gross_calorific_value: CalorificValue::from_si(i.si("Hs")),
                net_calorific_value: CalorificValue::from_si(i.si("Hi")),
                relative_density: Ratio::from_si(i.si("d")),
            };
            let got = WobbeIndexOf.evaluate(&gas).unwrap().output;
            match output {
                "Wobbe_gross" => got.gross_wobbe_index.si(),
                "Wobbe_net" => got.net_wobbe_index.si(),
                "gross_over_net" => got.gross_over_net.si(),
                other => panic!("{other}"),
            }
        });
        assert_eq!(checked, 6);
    }

    #[test]
    fn swapped_values_are_refused() {
        let given = Node::from([("gross_calorific_value", "34 MJ/m3"), ("net_calorific_value", "38 MJ/m3"), ("relative_density", "0.6")]);
        assert!(evaluate("wobbe_index", &given, Bare::Refused).err().unwrap().to_string().contains("swapped"));
    }
    use std::string::ToString;
}
