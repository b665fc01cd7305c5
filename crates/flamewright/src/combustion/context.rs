//! Settings that combustion and flue sums share: the fuel and the air it burns in.

use crate::Error;
use crate::calculation::{Form, Setting, Settings};
use crate::combustion::air::DryAir;
use crate::fuel::Fuel;

/// The setting `fuel`, here without a default: carbon dioxide derived for the wrong fuel is 15 %
/// wrong and looks right.
pub(crate) const FUEL: Setting = Setting { default: None, ..Fuel::setting() };

/// The setting `air`.
pub(crate) const AIR: Setting = Setting {
    name: "air",
    doc: "Composition taken for dry air: \"standard\" (O2 20.95 %, N2 78.08 %, Ar 0.93 %, CO2 0.04 %) or the textbook's \"21/79\".",
    form: Form::Choice(&["standard", "21/79"]),
    default: Some("standard"),
};

/// Reads both settings.
pub(crate) fn fuel_and_air(settings: &Settings<'_>) -> Result<(Fuel, DryAir), Error> {
    let air = settings.choice("air", &[("standard", DryAir::STANDARD), ("21/79", DryAir::OXYGEN_21_NITROGEN_79)])?;
    Ok((Fuel::from_node(settings.need("fuel")?)?, air))
}
