//! The calculation `combustion_air_flow`.

use crate::calculation::{Calculation, Info, Source};
use crate::no_settings;
use crate::quantity::types::{Ratio, VolumeRate};
use crate::quantity::{AtReference, CalorificValue, GasFlow, HeatInput, Net, On, Value};
use crate::record::record;
use crate::working::{Working, step};

/// A burner and its gas.
#[record]
pub struct BurnerAir {
    /// Heat input on the net calorific value.
    #[field("Q_i", KILOWATT, 0.01..=100_000.0, usual = 1.0..=1000.0)]
    pub heat_input_net: HeatInput<Net>,
    /// Net calorific value of the gas at the reference conditions of its volume.
    #[field("H_i", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, usual = 10.0..=130.0)]
    pub net_calorific_value: CalorificValue<Net>,
    /// Air needed per volume of gas.
    #[field("L_{min}", ONE, 0.5..=60.0)]
    pub stoichiometric_air: Ratio,
    /// Excess air ratio, the air drawn in by a draught diverter counted.
    #[field("\\lambda", ONE, 1.0..=20.0)]
    pub excess_air_ratio: Ratio,
}

/// Gas and air that the burner takes.
#[record]
pub struct BurnerAirResult {
    /// Gas rate at the reference conditions of the calorific value.
    #[field("q_V", CUBIC_METRE_PER_HOUR)]
    pub gas_rate: GasFlow<AtReference>,
    /// Air flow at the same conditions.
    #[field("q_{V,air}", CUBIC_METRE_PER_HOUR)]
    pub air_flow: VolumeRate,
}

/// Air flow of a burner.
#[derive(Clone, Copy, Debug)]
pub struct CombustionAirFlow;

no_settings!(CombustionAirFlow);

impl Calculation for CombustionAirFlow {
    type Input = BurnerAir;
    type Output = BurnerAirResult;
    const INFO: Info = Info {
        name: "combustion_air_flow",
        title: "Combustion air flow",
        summary: "Gas rate and air flow of a burner from its net heat input, the gas and the excess air ratio.",
        sources: &[Source::new(
            "definition",
            "gas rate = heat input / net calorific value; air = gas rate × air needed × excess air ratio",
        )],
        accuracy: "Exact arithmetic on the inputs.",
        cautions: &[],
        checked_against: "trade/flue_vent.csv: combustion_air_flow",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &BurnerAir, working: &mut W) -> BurnerAirResult {
        let heat_input_net = input.heat_input_net.plain();
        let net_calorific_value = input.net_calorific_value.plain();
        let (stoichiometric_air, excess_air_ratio) = (input.stoichiometric_air, input.excess_air_ratio);
        step!(working, let gas_rate: "q_V" as VolumeRate = heat_input_net / net_calorific_value, "definition");
        step!(working, let air_flow: "q_{V,air}" as VolumeRate = gas_rate * stoichiometric_air * excess_air_ratio, "definition");
        BurnerAirResult { gas_rate: On::new(gas_rate), air_flow }
    }
}
