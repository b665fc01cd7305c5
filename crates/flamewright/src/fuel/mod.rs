//! Fuel gases and other heating fuels: what they are made of and the heat in them.
mod component;
mod composition;
mod edition;
mod fuel;
mod iso6976;
mod properties;
mod test_gas;
#[cfg(test)]
pub(crate) mod tests;

pub use component::{COMPONENT_COUNT, COMPONENTS, Component, component_names, component_position};
pub use composition::{AmountBasis, Composition, Normalisation, SUM_TOLERANCE};
pub use edition::{Edition, TABLE_TEMPERATURES};
pub use fuel::{Elements, Fuel, FuelState, TYPICAL_FUELS, TypicalFuel, UltimateAnalysis, WATER_VAPORISATION_25C};
pub(crate) use iso6976::MeteredGas;
pub use properties::{FuelProperties, FuelReference, GasAnalysis, GasProperties, GasPropertiesOf};
pub use test_gas::{TEST_GASES, TestGas};
