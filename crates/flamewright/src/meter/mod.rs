//! The gas meter: rate of gas from a timed dial or index, its conversion to reference conditions, and
//! the heat input it stands for.

mod atmosphere;
mod conversion;
mod gas_energy;
mod gas_rate;
mod gas_rate_uncertainty;
mod metering_reference_change;
mod test_time;
mod wobbe_index;

pub use atmosphere::{AltitudeRule, AtmosphericPressure, SiteAltitude, SitePressure};
pub(crate) use conversion::standard_pressure_ratio;
pub use gas_energy::{EnergyOfGas, GasEnergy, MeteredGas};
pub use gas_rate::{GasRate, GasRateReading, GasRateResult, IndexUnit};
pub use gas_rate_uncertainty::{GasRateBudget, GasRateUncertainty, UncertainGasRate};
pub use metering_reference_change::{CalorificValueElsewhere, CalorificValueHere, MeteringReferenceChange};
pub use test_time::{GasRateTestTime, TestTimeAsked, TestTimeNeeded};
pub use wobbe_index::{GasHeatAndDensity, Wobbe, WobbeIndexOf};

/// Said once over all calculations about gas, and by the visit.
pub(crate) use crate::caution::COMPETENCE as CAUTION_COMPETENCE;
const CAUTION_BASIS: &str = "Compare a heat input only with a plate on the same basis: gross is about a tenth above net for natural gas.";
