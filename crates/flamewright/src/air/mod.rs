//! Air: its properties, and the room's and the flue's share of it.

mod chimney;
pub mod cooling;
mod draught;
mod flue_gas;
mod opening;
pub mod properties;
mod room;
mod state;
mod vent;
mod ventilation;

pub use chimney::{ChimneyDraught, ChimneyResult, ChimneyState};
pub use draught::{DraughtConditions, DraughtResult, FlueFlow, FlueFlowResult, FlueFlowState, NaturalDraught};
pub use flue_gas::{FlueGasFlow, FlueGasFlowResult, FlueGasSource};
pub use opening::{OpeningAtWork, OpeningFlow, OpeningFlowResult, OpeningSize, OpeningSizeResult, OpeningWanted};
pub use room::{RoomAir, RoomConcentration, RoomState};
pub use state::{DryAirInput, DryAirResult, DryAirState, HumidAirInput, HumidAirResult, HumidAirState};
pub use vent::{VentAreas, VentFreeArea, VentMeasured};
pub use ventilation::{RatingBasis, VentilationNeed, VentilationNeeded, VentilationRule};
pub(crate) const CAUTION_VENTILATION: &str = "How much air a room needs, and through what opening, is set by local building and gas rules; a sum is no approval, and an opening counts only while it is clear.";
pub(crate) const CAUTION_OPEN_FLUE: &str = "Prove an open flue by test with doors, windows and fans as bad as they get. A draught reckoned says nothing of spillage, blockage or wind.";
pub(crate) use crate::caution::CARBON_MONOXIDE as CAUTION_CARBON_MONOXIDE;
