//! The calculation `gas_energy`: the energy of a volume of gas, as a bill states it.

use crate::calculation::{Calculation, Info, Rule, Source};
use crate::no_settings;
use crate::quantity::types::{Energy, Ratio};
use crate::quantity::units::{CUBIC_METRE, KILOWATT_HOUR};
use crate::quantity::{AtMeter, AtReference, CalorificValue, GasVolume, Gross, Value};
use crate::record::record;
use crate::working::{Working, step};

/// A metered volume with what its bill rests on.
#[record]
pub struct MeteredGas {
    /// Volume the meter counted.
    #[field("V", CUBIC_METRE, 0.0..=1e7)]
    pub volume: GasVolume<AtMeter>,
    /// Reference volume over metered volume; 1 if the meter already converts.
    #[field("C", ONE, 0.1..=10.0, usual = 0.7..=1.2)]
    pub conversion_factor: Ratio,
    /// Gross calorific value at the reference conditions of the conversion.
    #[field("H_s", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, usual = 10.0..=140.0)]
    pub gross_calorific_value: CalorificValue<Gross>,
}

/// The energy in the gas.
#[record]
pub struct EnergyOfGas {
    /// Volume at reference conditions.
    #[field("V_{ref}", CUBIC_METRE)]
    pub reference_volume: GasVolume<AtReference>,
    /// Energy on the gross basis.
    #[field("E_s", KILOWATT_HOUR)]
    pub energy_gross: Energy,
}

/// Energy of a metered volume of gas.
#[derive(Clone, Copy, Debug)]
pub struct GasEnergy;

no_settings!(GasEnergy);

impl Calculation for GasEnergy {
    type Input = MeteredGas;
    type Output = EnergyOfGas;
    const INFO: Info = Info {
        name: "gas_energy",
        title: "Energy of a metered volume of gas",
        summary: "Gross energy of the gas that a meter counted, from the volume conversion factor and the calorific value that the bill states.",
        sources: &[Source::new(
            "Gas (Calculation of Thermal Energy) Regulations (SI 1992/450) regulation 4(4)",
            "energy in kWh = volume × calorific value in MJ/m³ ÷ 3.6",
        )],
        accuracy: "As the figures stated.",
        cautions: &[],
        checked_against: "trade/gas_rate.csv",
    };
    const RULES: &'static [Rule] = &[];

    #[inline(always)]
    fn compute<W: Working>(&self, input: &MeteredGas, working: &mut W) -> EnergyOfGas {
        let (volume, gross_calorific_value) = (input.volume.plain(), input.gross_calorific_value.plain());
        step!(working, let reference_volume: "V_{ref}" in CUBIC_METRE = volume * input.conversion_factor, "definition");
        step!(working, let energy_gross: "E_s" in KILOWATT_HOUR = reference_volume * gross_calorific_value, "definition");
        EnergyOfGas { reference_volume: GasVolume::new(reference_volume), energy_gross }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::supply::trade::check;

    #[test]
    fn bills_agree() {
        for kind in ["published_billing", "published_rule"] {
            let checked = check("trade/gas_rate.csv", kind, |i, _| {
                let metered = MeteredGas {
                    volume: GasVolume::from_si(i.si("V")),
                    conversion_factor: Ratio::from_si(i.maybe("volume_conversion").unwrap_or(1.0)),
                    gross_calorific_value: CalorificValue::from_si(i.si("Hs")),
                };
                GasEnergy.evaluate(&metered).unwrap().output.energy_gross.si()
            });
            assert_eq!(checked, 1);
        }
    }
}
