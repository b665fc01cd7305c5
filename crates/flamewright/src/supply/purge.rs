//! The calculations `purge` and `purge_velocity`: gas to pass, and how long it takes.

use super::{CAUTION_COMPETENCE, CAUTION_PURGE};
use crate::calculation::{Calculation, Info, Source};
use crate::no_settings;
use crate::quantity::types::{Length, Ratio, Time, Velocity, Volume, VolumeRate};
use crate::quantity::units::*;
use crate::quantity::{AtMeter, GasFlow, GasVolume, Value};
use crate::record::record;
use crate::working::{Working, step};
use core::f64::consts::PI;

/// What a purge is planned from.
#[record]
pub struct PurgePlan {
    /// Volume to purge: pipes, fittings and meter.
    #[field("V", LITRE, 1e-3..=1e6, usual = 0.5..=10000.0)]
    pub installation_volume: Volume,
    /// Volume to pass for each volume purged; set by the local procedure.
    #[field("f", ONE, 1.0..=20.0, usual = 1.0..=5.0)]
    pub purge_factor: Ratio,
    /// Volume of one revolution of the test dial, or of one step of the index.
    #[field("V_d", LITRE, 1e-3..=1e4, absent = "not stated")]
    pub dial_volume: GasVolume<AtMeter>,
    /// Flow at which the gas is passed.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR, 1e-4..=1e5, absent = "not stated")]
    pub purge_flow: GasFlow<AtMeter>,
}

/// What the purge needs.
#[record]
pub struct PurgeNeed {
    /// Volume to pass.
    #[field("V_p", LITRE)]
    pub purge_volume: GasVolume<AtMeter>,
    /// Revolutions of the test dial, or steps of the index.
    #[field("N", ONE, absent = "no dial volume stated")]
    pub dial_revolutions: Ratio,
    /// Time to pass it.
    #[field("t_p", SECOND, absent = "no flow stated")]
    pub purge_time: Time,
}

/// Volume and time of a purge.
#[derive(Clone, Copy, Debug)]
pub struct Purge;

no_settings!(Purge);

impl Calculation for Purge {
    type Input = PurgePlan;
    type Output = PurgeNeed;
    const INFO: Info = Info {
        name: "purge",
        title: "Purge volume and time",
        summary: "Volume of gas to pass through an installation, in meter readings and in time. The factor comes from the local procedure.",
        sources: &[Source::new("common practice, no source", "purge volume as a multiple of the installation volume")],
        accuracy: "Plain proportion.",
        cautions: &[CAUTION_PURGE, CAUTION_COMPETENCE],
        checked_against: "trade/tightness.csv",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &PurgePlan, working: &mut W) -> PurgeNeed {
        step!(working, let purge_volume: "V_p" in LITRE = input.purge_factor * input.installation_volume, "local procedure");
        step!(working, let dial_revolutions: "N" = purge_volume / input.dial_volume.plain(), "definition");
        step!(working, let purge_time: "t_p" in SECOND = purge_volume / input.purge_flow.plain(), "definition");
        PurgeNeed { purge_volume: GasVolume::new(purge_volume), dial_revolutions, purge_time }
    }
}

/// A velocity at which gas must drive air before it.
#[record]
pub struct PurgeVelocityInput {
    /// Bore of the widest pipe purged.
    #[field("D", MILLIMETRE, 2.0..=2000.0, usual = 8.0..=300.0)]
    pub bore: Length,
    /// Velocity to be kept; set by the local procedure.
    #[field("v", METRE_PER_SECOND, 0.01..=30.0, usual = 0.3..=3.0)]
    pub velocity: Velocity,
    /// Length of the pipe.
    #[field("L", METRE, 0.01..=10000.0)]
    pub length: Length,
}

/// The flow that keeps the velocity.
#[record]
pub struct PurgeTravel {
    /// Flow that gives the velocity.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR)]
    pub purge_flow: GasFlow<AtMeter>,
    /// Time in which the front passes the length.
    #[field("t", SECOND)]
    pub travel_time: Time,
}

/// Purge flow for a wanted velocity.
#[derive(Clone, Copy, Debug)]
pub struct PurgeVelocity;

no_settings!(PurgeVelocity);

impl Calculation for PurgeVelocity {
    type Input = PurgeVelocityInput;
    type Output = PurgeTravel;
    const INFO: Info = Info {
        name: "purge_velocity",
        title: "Purge flow from a velocity",
        summary: "Flow that keeps a given velocity in a pipe, and the time the front takes to pass its length.",
        sources: &[Source::new("Continuity; textbook", "all results")],
        accuracy: "Geometry; the velocity needed to sweep the pipe is not given here.",
        cautions: &[CAUTION_PURGE, CAUTION_COMPETENCE],
        checked_against: "trade/tightness.csv",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &PurgeVelocityInput, working: &mut W) -> PurgeTravel {
        step!(working, let area: "A" in SQUARE_MILLIMETRE = PI / 4.0 * input.bore * input.bore, "geometry");
        step!(working, let flow: "\\dot V" as VolumeRate in CUBIC_METRE_PER_HOUR = input.velocity * area, "continuity");
        step!(working, let travel_time: "t" in SECOND = input.length / input.velocity, "definition");
        PurgeTravel { purge_flow: GasFlow::new(flow), travel_time }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::supply::trade::check;

    #[test]
    fn purges_agree_with_the_table() {
        let file = "trade/tightness.csv";
        check(file, "purge_volume", |i, output| {
            let plan = PurgePlan {
                installation_volume: Volume::from_si(i.si("V")),
                purge_factor: Ratio::from_si(i.si("purge_factor")),
                dial_volume: GasVolume::from_si(i.si("dial_volume")),
                ..PurgePlan::unset()
            };
            let got = Purge.evaluate(&plan).unwrap().output;
            assert!(got.purge_time.si().is_nan());
            match output {
                "purge_volume" => got.purge_volume.si(),
                "meter_readings" => got.dial_revolutions.si(),
                other => panic!("{other}"),
            }
        });
        check(file, "purge_flow_from_velocity", |i, output| {
            let input = PurgeVelocityInput {
                bore: Length::from_si(i.si("bore")),
                velocity: Velocity::from_si(i.si("velocity")),
                length: Length::from_si(10.0),
            };
            let got = PurgeVelocity.evaluate(&input).unwrap().output;
            match output {
                "flow" => got.purge_flow.si(),
                "time_for_10_m" => got.travel_time.si(),
                other => panic!("{other}"),
            }
        });
    }

    #[test]
    fn time_is_volume_over_flow_and_a_factor_below_one_is_refused() {
        let plan = PurgePlan {
            installation_volume: Volume::from_si(0.0163),
            purge_factor: Ratio::from_si(1.5),
            purge_flow: GasFlow::from_si(1.0 / 3600.0),
            ..PurgePlan::unset()
        };
        assert!((Purge.evaluate(&plan).unwrap().output.purge_time.si() - 88.02).abs() < 1e-9);
        assert!(Purge.evaluate(&PurgePlan { purge_factor: Ratio::from_si(0.5), ..plan }).is_err());
    }
}
