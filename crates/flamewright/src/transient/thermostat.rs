//! What switches the burner and the pump.

use super::network::Firing;
use super::plant::Demand;
use crate::quantity::Value;
use alloc::vec::Vec;

/// A switch that opens on rising temperature and closes again when that has fallen by the
/// differential.
///
/// Operating value and differential as in IEC 60730-1 (wording from memory).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Thermostat {
    /// Number of the sensor in the network.
    pub sensor: usize,
    /// Operating value on rising temperature, K
    pub upper: f64,
    /// Operating value on falling temperature, K
    pub lower: f64,
}

/// How the burner gives its heat while the control thermostat asks for it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Burner {
    /// Output to the block, W
    Fixed(f64),
    /// The high stage runs up to `change` kelvin below the upper operating value, and comes back
    /// where the temperature has fallen a differential below that. W
    TwoStage { low: f64, high: f64, change: f64 },
    /// Full output up to `band` kelvin below the upper operating value, from there falling in
    /// proportion to `least` at that value. W
    Modulating { least: f64, most: f64, band: f64 },
}

impl Burner {
    /// The heat it gives; `full` while the temperature has not risen to where it turns down.
    pub(crate) fn firing(self, control: &Thermostat, full: bool) -> Firing {
        match self {
            Burner::Fixed(power) => Firing::Fixed(power),
            Burner::TwoStage { low, high, .. } => Firing::Fixed(if full { high } else { low }),
            Burner::Modulating { most, .. } if full => Firing::Fixed(most),
            Burner::Modulating { least, most, band } => {
                Firing::Modulating { least, most, set_point: control.upper, band, sensor: control.sensor }
            }
        }
    }

    /// Where it turns down on rising temperature and goes back to full output on falling, K.
    pub(crate) fn turns_down(self, control: &Thermostat) -> Option<(f64, f64)> {
        match self {
            Burner::Fixed(_) => None,
            Burner::TwoStage { change, .. } => Some((control.upper - change, control.lower - change)),
            Burner::Modulating { band, .. } => Some((control.upper - band, control.upper - band)),
        }
    }
}

/// What makes the pump run.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum PumpRule {
    Always,
    Never,
    /// While heat is asked for, and afterwards as long as the overrun thermostat, if there is one,
    /// is closed on the hot side.
    DemandAndOverrun,
}

/// The controls of one heat generator.
#[derive(Debug, Clone)]
pub(crate) struct Controls {
    pub burner: Option<(Burner, Thermostat)>,
    /// Limit thermostat: sensor and operating value (K). It locks the burner out until reset by hand.
    pub limit: Option<(usize, f64)>,
    /// Overrun thermostat: the pump runs from `upper` on until the temperature has fallen to `lower`.
    pub overrun: Option<Thermostat>,
    pub pump: PumpRule,
    /// Least time the burner stays off, s
    pub anti_cycling: f64,
    /// Moments (s, rising) at which the demand for heat changes over; it is on before the first
    /// where `demand_at_start` says so.
    pub demand_changes: Vec<f64>,
    pub demand_at_start: bool,
    /// Whether the burner burns at the start (the thermostat being between its operating values).
    pub burning_at_start: bool,
}

impl Controls {
    /// As these, under a demand for heat that comes and goes.
    pub(crate) fn under(self, demand: &Demand) -> Self {
        Controls {
            demand_changes: demand.changes.iter().map(|moment| moment.si()).collect(),
            demand_at_start: demand.at_start,
            pump: if demand.switches_pump { PumpRule::DemandAndOverrun } else { PumpRule::Always },
            ..self
        }
    }

    /// No burner; the pump as told.
    pub(crate) fn pump_only(running: bool) -> Self {
        Controls {
            burner: None,
            limit: None,
            overrun: None,
            pump: if running { PumpRule::Always } else { PumpRule::Never },
            anti_cycling: 0.0,
            demand_changes: Vec::new(),
            demand_at_start: false,
            burning_at_start: false,
        }
    }
}
