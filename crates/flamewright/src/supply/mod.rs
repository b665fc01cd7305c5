//! Gas from the meter to the burner: pressure in the pipes, injectors, tightness and purging.

pub mod branches;
pub mod pipe_flow;
pub mod viscosity;

mod altitude;
mod burner;
mod gas;
mod gas_installation;
mod gas_pipe;
mod injector;
mod installation_volume;
mod leak_class;
mod leak_scaling;
mod let_by;
mod purge;
mod tightness_plan;
mod tightness_test;

pub use altitude::{Altitude, AltitudeEffect, HeightAboveSea};
pub use burner::{BurnerChange, BurnerPressure, BurnerStates};
pub use gas::PipedGas;
pub use gas_installation::{GasInstallation, GasPipeSizing, InstallationLoad, InstallationResult, Section, SizingResult, SizingWish};
pub use gas_pipe::{GasPipeDischarge, GasPipeDischargeResult, GasPipeDrop, GasPipeDropResult, GasPipeState, GasPipeWish};
pub use injector::{InjectorAtWork, InjectorFlow, InjectorFlowResult, InjectorSize, InjectorSizeResult, InjectorWanted};
pub use installation_volume::{InstallationVolume, PipeContent, VolumeAllowances, VolumeOfInstallation};
pub use leak_class::{LeakClass, LeakClassFound, LeakToClass};
pub use leak_scaling::{LeakElsewhere, LeakScaling, LeakUnderTest};
pub use let_by::{LetBy, LetByReading, LetByResult};
pub use purge::{Purge, PurgeNeed, PurgePlan, PurgeTravel, PurgeVelocity, PurgeVelocityInput};
pub use tightness_plan::{TightnessPlan, TightnessPlanned, TightnessProspect};
pub use tightness_test::{TightnessReading, TightnessResult, TightnessTest};

/// Standard acceleration of free fall, m/s2 (3rd CGPM 1901; ISO 80000-3).
pub(crate) const STANDARD_GRAVITY: f64 = 9.806_65;

/// Molar gas constant, J/(mol K), exact since the 2019 SI (CODATA 2018).
pub(crate) const MOLAR_GAS_CONSTANT: f64 = 8.314_462_618_153_24;

/// Density of water of the conventional millimetre of water, kg/m3 (NIST SP 811, B.8).
pub(crate) const CONVENTIONAL_WATER_DENSITY: f64 = 1000.0;

pub(crate) use crate::caution::SMELL as CAUTION_SMELL;
pub(crate) use crate::meter::CAUTION_COMPETENCE;
pub(crate) const CAUTION_TIGHTNESS: &str = "Test pressure, waiting time, duration and the leak that may stay in use are set by the local procedure, not here. No movement on the gauge means no leak above the smallest detectable one, not none.";
pub(crate) const CAUTION_PURGE: &str = "Air and gas pass through the explosive range while purging. Follow the local procedure for venting, ignition sources and proof of completion; a volume or a time reckoned here does not prove it.";
pub(crate) const CAUTION_BURNER: &str =
    "Change an injector, a pressure or a gas only as the appliance maker allows, and prove combustion afterwards with an analyser.";

/// `value`, or `otherwise` where nothing was given.
#[inline(always)]
pub(crate) fn or(value: f64, otherwise: f64) -> f64 {
    if value.is_nan() { otherwise } else { value }
}

/// Checks against the trade tables, whose rows name inputs with their units.
#[cfg(test)]
pub(crate) mod trade {
    use crate::quantity::unit::read_unit;
    use flamewright_reference::{Row, rows_of_kind};
    use std::collections::BTreeMap;
    use std::string::String;

    fn in_si(value: f64, unit: &str) -> f64 {
        let unit = match unit {
            "text" | "1" => "",
            "uPa.s" => "1e-6",
            other => other,
        };
        if unit == "1e-6" {
            return value * 1e-6;
        }
        let unit = read_unit(&unit.replace('.', "*")).unwrap_or_else(|| panic!("unit {unit}"));
        value * unit.factor + unit.offset
    }

    /// The inputs of a row in SI.
    pub(crate) struct Inputs(pub(crate) BTreeMap<String, (String, String)>);

    impl Inputs {
        pub(crate) fn maybe(&self, name: &str) -> Option<f64> {
            self.0.get(name).map(|(value, unit)| in_si(value.parse().unwrap(), unit))
        }
        pub(crate) fn si(&self, name: &str) -> f64 {
            self.maybe(name).unwrap_or_else(|| panic!("no input {name}"))
        }
    }

    /// Compares every row of a kind with `compute(inputs, output name)` in SI; answers how many.
    pub(crate) fn check(file: &str, kind: &str, compute: impl Fn(&Inputs, &str) -> f64) -> usize {
        let rows: std::vec::Vec<Row> = rows_of_kind(file, kind);
        for row in &rows {
            let unit = row.text("unit");
            let got = compute(&Inputs(row.inputs()), row.text("output"));
            let (zero, one) = (in_si(0.0, unit), in_si(1.0, unit));
            let shown = (got - zero) / (one - zero);
            assert!(row.agrees(shown), "{} {kind} {}: {shown} for {}", row.place, row.text("output"), row.text("value"));
        }
        rows.len()
    }
}
