//! Air: its properties, and the room's and the flue's share of it.

pub mod cooling;
pub mod properties;
