//! Cautions that more than one area gives, each in one wording. Common practice, no source.

pub(crate) const COMPETENCE: &str = "Work on gas is for people legally competent to do it. A computed result is not a certificate.";
pub(crate) const SMELL: &str = "Smell of gas, or a carbon monoxide alarm: stop, ventilate, isolate the gas, touch no switches, leave, and call the gas emergency service.";
pub(crate) const OBSERVE: &str =
    "A number inside a limit says nothing about flue flow, spillage or ventilation: those are observed, not computed.";
pub(crate) const DEFEAT: &str = "Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.";
pub(crate) const HOT_BLOCK: &str = "A hot block and its water can scald and flash to steam for tens of minutes after the burner has stopped; measure before you open or drain anything.";
pub(crate) const CARBON_MONOXIDE: &str = "Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and air in first, reckon later; no result here is leave to stay.";
pub(crate) const CALIBRATION: &str =
    "Results are as good as the instrument: its calibration and the place of the sample belong beside them.";
