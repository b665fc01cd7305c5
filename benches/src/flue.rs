//! One flue reading twice: as a record of `uom` quantities with a silent working, and as the same
//! kernel on raw numbers. Every result is used, so that neither is spared a part of the sum.

use flamewright::combustion::air::humidity_mole_ratio;
use flamewright::flue::kernel::FlueKernel;
use flamewright::flue::{FlueAnalysis, FlueReading};
use flamewright::prelude::*;
use flamewright::working::Silent;

/// The kernel on raw numbers: the gas not measured derived, the humidity of the air, the balance.
#[inline(always)]
pub fn raw(kernel: &FlueKernel, r: &[f64; 7]) -> f64 {
    let derived = kernel.oxygen_from_carbon_dioxide(r[1], r[2]);
    let oxygen = if r[0].is_nan() { derived } else { r[0] };
    let combustion = kernel.combustion(oxygen, r[2], &mut Silent);
    let carbon_dioxide = if r[1].is_nan() { combustion.carbon_dioxide_dry } else { r[1] };
    let humidity = humidity_mole_ratio(r[6], r[4], r[5]);
    let water = kernel.water(&combustion, humidity, r[3], r[5], &mut Silent);
    let heat = kernel.heat(&combustion, &water, r[3], r[4], &mut Silent);
    combustion.excess_air_ratio
        + r[2] / carbon_dioxide
        + kernel.carbon_monoxide_air_free(&combustion)
        + water.dew_point
        + heat.dry
        + heat.vapour
        + heat.latent
        + heat.condensate
        + heat.unburnt
        + heat.air
        + heat.fuel
        + heat.flue_loss_net
        + heat.efficiency_gross
        + heat.efficiency_net
        + kernel.condensate_per_gross_heat(&water)
}

/// The calculation on its record.
#[inline(always)]
pub fn typed(analysis: &FlueAnalysis, input: &FlueReading) -> f64 {
    let o = analysis.compute(input, &mut Silent);
    o.excess_air_ratio.si()
        + o.carbon_monoxide_ratio.si()
        + o.carbon_monoxide_air_free.si()
        + o.water_dew_point.si()
        + o.dry_gas_loss.si()
        + o.moisture_loss.si()
        + o.latent_loss.si()
        + o.condensate_loss.si()
        + o.unburnt_loss.si()
        + o.air_credit.si()
        + o.fuel_credit.si()
        + o.flue_loss_net.si()
        + o.efficiency_gross.si()
        + o.efficiency_net.si()
        + o.condensate.si()
}
