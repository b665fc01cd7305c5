//! The calculation `room_concentration`: carbon monoxide or dioxide in a ventilated room.

use super::{CAUTION_CARBON_MONOXIDE, CAUTION_VENTILATION};
use crate::calculation::{Calculation, Column, Info, Raised, Rule, Source, Table};
use crate::math;
use crate::quantity::types::{Frequency, Ratio, Time, Volume, VolumeRate};
use crate::quantity::units::*;
use crate::quantity::{MoleFraction, Value, Wet};
use crate::record::record;
use crate::supply::or;
use crate::working::{Working, step};
use crate::{no_settings, rules};
use alloc::vec;
use alloc::vec::Vec;

/// A room with a source of a gas.
#[record]
pub struct RoomAir {
    /// Flow of the gas into the room; nought while it clears.
    #[field("\\dot V_s", LITRE_PER_HOUR, 0.0..=1e6, default = 0.0, usual = 0.0..=1000.0)]
    pub source: VolumeRate,
    /// Volume of the room.
    #[field("V", CUBIC_METRE, 0.1..=1e6, usual = 5.0..=500.0)]
    pub room_volume: Volume,
    /// Air changes.
    #[field("n", PER_HOUR, 0.001..=1000.0, usual = 0.1..=10.0)]
    pub air_change_rate: Frequency,
    /// Share of the gas in the air that comes in.
    #[field("x_0", PPM, 0.0..=1e5, default = 0.0)]
    pub background: MoleFraction<Wet>,
    /// Share of the gas in the room at the start; left out, the background.
    #[field("x_1", PPM, 0.0..=1e6, absent = "the background")]
    pub initial: MoleFraction<Wet>,
    /// Time from the start.
    #[field("t", HOUR, 0.0..=10000.0, usual = 0.0..=48.0)]
    pub elapsed_time: Time,
    /// Share whose time is asked for.
    #[field("x_w", PPM, 0.0..=1e6, absent = "none asked for")]
    pub level: MoleFraction<Wet>,
}

/// The room at that time.
#[record]
pub struct RoomState {
    /// Share of the gas in the room after the time.
    #[field("x(t)", PPM)]
    pub concentration: MoleFraction<Wet>,
    /// Share of the gas in the room after a very long time.
    #[field("x_\\infty", PPM)]
    pub steady: MoleFraction<Wet>,
    /// Time in which the way to the steady share shrinks to 37 %.
    #[field("\\tau", HOUR)]
    pub time_constant: Time,
    /// Share of the way to the steady share made after the time.
    #[field("1-e^{-nt}", PERCENT)]
    pub completion: Ratio,
    /// Mean share over the time.
    #[field("\\bar x", PPM)]
    pub mean: MoleFraction<Wet>,
    /// Time at which the level asked for is met.
    #[field("t_w", HOUR, absent = "never reached, or none asked for")]
    pub time_to_level: Time,
}

/// Concentration of a gas in a room.
#[derive(Clone, Copy, Debug)]
pub struct RoomConcentration;

no_settings!(RoomConcentration);

rules! {
    notice SOURCE_LARGE on "source": "the source is more than a tenth of the air change: it displaces the room's own air, which the sum neglects, so the result reads high";
}

impl Calculation for RoomConcentration {
    type Input = RoomAir;
    type Output = RoomState;
    const INFO: Info = Info {
        name: "room_concentration",
        title: "Gas in a ventilated room",
        summary: "Build-up and clearing of carbon monoxide, carbon dioxide or any gas in a well-mixed room with a steady source and air change.",
        sources: &[Source::new("Single-zone mass balance; textbook", "all results")],
        accuracy: "Exact for a well-mixed room. Real rooms are not: near the source the share can be several times the mean. The air change is seldom known to a factor of two.",
        cautions: &[CAUTION_CARBON_MONOXIDE, CAUTION_VENTILATION],
        checked_against: "trade/flue_vent.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &RoomAir) -> Raised {
        Raised::NONE.when(SOURCE_LARGE, input.source.si() > 0.1 * input.air_change_rate.si() * input.room_volume.si())
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &RoomAir, working: &mut W) -> RoomState {
        let initial = Ratio::from_si(or(input.initial.si(), input.background.si()));
        step!(working, let steady: "x_\\infty" as Ratio in PPM =
            input.background.plain() + input.source / (input.air_change_rate * input.room_volume), "mass balance in the steady state");
        step!(working, let time_constant: "\\tau" in HOUR = Time::from_si(1.0 / input.air_change_rate.si()), "definition");
        step!(working, let left: "e^{-nt}" = Ratio::from_si(math::exp(-input.air_change_rate.si() * input.elapsed_time.si())), "mass balance");
        step!(working, let concentration: "x(t)" in PPM = steady + (initial - steady) * left, "mass balance");
        let turns = input.air_change_rate.si() * input.elapsed_time.si();
        let mean = steady.si() + (initial.si() - steady.si()) * super::cooling::mean_share(turns);
        let remaining = (input.level.si() - steady.si()) / (initial.si() - steady.si());
        let reached = (remaining > 0.0) & (remaining <= 1.0);
        let time_to_level = time_constant.si() * -math::ln(if reached { remaining } else { f64::NAN });
        RoomState {
            concentration: MoleFraction::new(concentration),
            steady: MoleFraction::new(steady),
            time_constant,
            completion: Ratio::from_si(1.0 - left.si()),
            mean: MoleFraction::from_si(mean),
            time_to_level: Time::from_si(time_to_level),
        }
    }

    fn tables(&self, input: &RoomAir) -> Vec<Table> {
        const POINTS: u32 = 61;
        let times: Vec<f64> = (0..POINTS).map(|i| input.elapsed_time.si() * f64::from(i) / f64::from(POINTS - 1)).collect();
        let shares = times.iter().map(|&time| {
            let then = RoomAir { elapsed_time: Time::from_si(time), ..*input };
            self.compute(&then, &mut crate::working::Silent).concentration.si()
        });
        let shares = shares.collect();
        vec![Table {
            name: "course",
            row_names: Vec::new(),
            columns: vec![
                Column { name: "time".into(), unit: &HOUR, values: times },
                Column { name: "concentration".into(), unit: &PPM, values: shares },
            ],
        }]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::supply::trade::check;

    #[test]
    fn build_up_agrees_with_the_table() {
        check("trade/flue_vent.csv", "room_CO_buildup", |i, output| {
            let room = RoomAir {
                source: VolumeRate::from_si(i.si("source")),
                room_volume: Volume::from_si(i.si("V")),
                air_change_rate: Frequency::from_si(i.si("air_changes")),
                background: MoleFraction::from_si(i.si("background")),
                elapsed_time: Time::from_si(i.si("t")),
                ..RoomAir::unset()
            };
            let got = RoomConcentration.evaluate(&room).unwrap().output;
            match output {
                "CO_steady" => got.steady.si(),
                "CO_at_t" => got.concentration.si(),
                other => panic!("{other}"),
            }
        });
    }

    fn clearing() -> RoomAir {
        RoomAir {
            room_volume: Volume::from_si(40.0),
            air_change_rate: Frequency::from_si(2.0 / 3600.0),
            background: MoleFraction::from_si(1e-6),
            initial: MoleFraction::from_si(200e-6),
            elapsed_time: Time::from_si(3600.0),
            level: MoleFraction::from_si(10e-6),
            ..RoomAir::unset()
        }
    }

    #[test]
    fn clearing_meets_the_level_at_the_time_said() {
        let got = RoomConcentration.evaluate(&clearing()).unwrap().output;
        let then = RoomConcentration.evaluate(&RoomAir { elapsed_time: got.time_to_level, ..clearing() }).unwrap().output;
        assert!((then.concentration.si() / 10e-6 - 1.0).abs() < 1e-12);
        // Never below the background, and never above what is there while it clears.
        for level in [0.5e-6, 300e-6] {
            let never = RoomAir { level: MoleFraction::from_si(level), ..clearing() };
            assert!(RoomConcentration.evaluate(&never).unwrap().output.time_to_level.si().is_nan());
        }
    }

    /// The balance marched in small steps is the judge, for the mean as well.
    #[test]
    fn a_march_in_small_steps_gives_the_same() {
        let room = RoomAir { source: VolumeRate::from_si(0.02 / 3600.0), ..clearing() };
        let got = RoomConcentration.evaluate(&room).unwrap().output;
        let steps = 100_000;
        let dt = 3600.0 / f64::from(steps);
        let (mut x, mut sum) = (200e-6, 0.0);
        let slope = |x: f64| 0.02 / 3600.0 / 40.0 + 2.0 / 3600.0 * (1e-6 - x);
        for _ in 0..steps {
            let middle = x + 0.5 * dt * slope(x);
            sum += middle * dt;
            x += dt * slope(middle);
        }
        assert!((got.concentration.si() / x - 1.0).abs() < 1e-8);
        assert!((got.mean.si() / (sum / 3600.0) - 1.0).abs() < 1e-8);
        let course = &RoomConcentration.tables(&room)[0];
        assert_eq!(course.columns[1].values.last(), Some(&got.concentration.si()));
    }
}
