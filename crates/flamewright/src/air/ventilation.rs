//! The calculation `ventilation_need`: opening, room volume or air flow from a rule of the caller.

use super::{CAUTION_OPEN_FLUE, CAUTION_VENTILATION};
use crate::Error;
use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::quantity::types::{Area, AreaPerPower, Power, Volume, VolumePerPower, VolumeRate, VolumeRatePerPower};
use crate::quantity::units::*;
use crate::quantity::{Equivalent, Free, Gross, HeatInput, Net, Value, VentArea};
use crate::record::record;
use crate::rules;
use crate::supply::or;
use crate::working::{Working, step};

/// An appliance rating and the caller's rule.
#[record]
pub struct VentilationRule {
    /// Heat input on the net basis.
    #[field("\\dot Q_i", KILOWATT, 0.01..=1e5, absent = "stated on another basis", usual = 1.0..=200.0)]
    pub heat_input_net: HeatInput<Net>,
    /// Heat input on the gross basis.
    #[field("\\dot Q_s", KILOWATT, 0.01..=1e5, absent = "stated on another basis", usual = 1.0..=200.0)]
    pub heat_input_gross: HeatInput<Gross>,
    /// Nominal heat output.
    #[field("\\dot Q_n", KILOWATT, 0.01..=1e5, absent = "stated on another basis", usual = 1.0..=200.0)]
    pub heat_output: Power,
    /// Rating that the rule leaves free.
    #[field("\\dot Q_0", KILOWATT, 0.0..=1e4, default = 0.0)]
    pub threshold: Power,
    /// Area for each kilowatt above the threshold.
    #[field("a", SQUARE_MILLIMETRE_PER_KILOWATT, 0.0..=1e6, absent = "the rule asks for no opening")]
    pub area_rate: AreaPerPower,
    /// Least area whatever the rating.
    #[field("A_{min}", SQUARE_MILLIMETRE, 0.0..=1e8, default = 0.0)]
    pub minimum_area: Area,
    /// Room volume for each kilowatt above the threshold.
    #[field("u", CUBIC_METRE_PER_KILOWATT, 0.0..=1000.0, absent = "the rule asks for no room volume")]
    pub room_volume_rate: VolumePerPower,
    /// Air flow for each kilowatt above the threshold.
    #[field("w", CUBIC_METRE_PER_HOUR_KILOWATT, 0.0..=1000.0, absent = "the rule asks for no air flow")]
    pub air_flow_rate: VolumeRatePerPower,
}

/// What the rule asks for.
#[record]
pub struct VentilationNeeded {
    /// Rating on the basis of the rule, above the threshold.
    #[field("\\dot Q - \\dot Q_0", KILOWATT)]
    pub rating_above_threshold: Power,
    /// Free area of each opening asked for.
    #[field("A", SQUARE_MILLIMETRE, absent = "the rule asks for no free area")]
    pub free_area: VentArea<Free>,
    /// Equivalent area of each opening asked for.
    #[field("A_{eq}", SQUARE_MILLIMETRE, absent = "the rule asks for no equivalent area")]
    pub equivalent_area: VentArea<Equivalent>,
    /// Room volume asked for.
    #[field("V", CUBIC_METRE, absent = "the rule asks for no room volume")]
    pub room_volume: Volume,
    /// Air flow asked for.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR, absent = "the rule asks for no air flow")]
    pub air_flow: VolumeRate,
}

/// The basis on which a rule counts the rating of an appliance.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RatingBasis {
    /// Heat input, net.
    HeatInputNet,
    /// Heat input, gross.
    HeatInputGross,
    /// Nominal heat output.
    HeatOutput,
}

/// Ventilation by a rule of the caller.
#[derive(Clone, Copy, Debug)]
pub struct VentilationNeed {
    /// Basis on which the rule counts the rating.
    pub basis: RatingBasis,
    /// Whether the rule counts equivalent area rather than free area.
    pub equivalent: bool,
}

impl Context for VentilationNeed {
    const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "rating_basis",
            doc: "What the rule counts: the heat input net or gross, or the heat output.",
            form: Form::Choice(&["heat_input_net", "heat_input_gross", "heat_output"]),
            default: None,
        },
        Setting {
            name: "area_kind",
            doc: "Which area the rule counts.",
            form: Form::Choice(&["free", "equivalent"]),
            default: Some("free"),
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        settings.need("rating_basis")?;
        Ok(Self {
            basis: settings.choice(
                "rating_basis",
                &[
                    ("heat_input_net", RatingBasis::HeatInputNet),
                    ("heat_input_gross", RatingBasis::HeatInputGross),
                    ("heat_output", RatingBasis::HeatOutput),
                ],
            )?,
            equivalent: settings.choice("area_kind", &[("free", false), ("equivalent", true)])?,
        })
    }
}

rules! {
    refuse BASIS_MISSING on "heat_input_net": "the rating is not stated on the basis that the rule counts; convert it by name with the fuel or the efficiency";
    refuse NO_RULE on "area_rate": "state at least one rate of the rule: area, room volume or air flow";
    notice BELOW_THRESHOLD on "threshold": "the rating is below the threshold of the rule; other rules may still ask for air";
}

impl VentilationNeed {
    #[inline(always)]
    fn rating(&self, input: &VentilationRule) -> Power {
        match self.basis {
            RatingBasis::HeatInputNet => input.heat_input_net.plain(),
            RatingBasis::HeatInputGross => input.heat_input_gross.plain(),
            RatingBasis::HeatOutput => input.heat_output,
        }
    }
}

impl Calculation for VentilationNeed {
    type Input = VentilationRule;
    type Output = VentilationNeeded;
    const INFO: Info = Info {
        name: "ventilation_need",
        title: "Ventilation by a rule",
        summary: "Opening, room volume or air flow that a building rule of the caller's asks for, on the rating basis the rule counts. No rule is built in.",
        sources: &[Source::new("The caller's rule", "rates, threshold, minimum")],
        accuracy: "Arithmetic on the rule.",
        cautions: &[CAUTION_VENTILATION, CAUTION_OPEN_FLUE],
        checked_against: "trade/flue_vent.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &VentilationRule) -> Raised {
        let rating = self.rating(input).si();
        let unstated = input.area_rate.si().is_nan() & input.room_volume_rate.si().is_nan() & input.air_flow_rate.si().is_nan();
        Raised::NONE
            .when(BASIS_MISSING, rating.is_nan())
            .when(NO_RULE, unstated & (input.minimum_area.si() == 0.0))
            .when(BELOW_THRESHOLD, rating < input.threshold.si())
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &VentilationRule, working: &mut W) -> VentilationNeeded {
        let rating = self.rating(input);
        step!(working, let above: "\\dot Q - \\dot Q_0" in KILOWATT = Power::from_si((rating.si() - input.threshold.si()).max(0.0)), "the caller's rule");
        // A rule may ask for a least area alone.
        let rate = AreaPerPower::from_si(if input.minimum_area.si() > 0.0 { or(input.area_rate.si(), 0.0) } else { input.area_rate.si() });
        step!(working, let by_rate: "A_r" as Area in SQUARE_MILLIMETRE = rate * above, "the caller's rule");
        let at_least = if by_rate.si() < input.minimum_area.si() { input.minimum_area } else { by_rate };
        step!(working, let room_volume: "V" as Volume in CUBIC_METRE = input.room_volume_rate * above, "the caller's rule");
        step!(working, let air_flow: "\\dot V" as VolumeRate in CUBIC_METRE_PER_HOUR = input.air_flow_rate * above, "the caller's rule");
        let unknown = rating.si() * 0.0;
        let kept = |wanted: bool| Area::from_si(if wanted { at_least.si() + unknown } else { f64::NAN });
        VentilationNeeded {
            rating_above_threshold: Power::from_si(above.si() + unknown),
            free_area: VentArea::new(kept(!self.equivalent)),
            equivalent_area: VentArea::new(kept(self.equivalent)),
            room_volume,
            air_flow,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::supply::trade::check;

    const FILE: &str = "trade/flue_vent.csv";

    fn by(basis: RatingBasis) -> VentilationNeed {
        VentilationNeed { basis, equivalent: false }
    }

    fn net(heat_input: f64, area_rate: f64) -> VentilationRule {
        VentilationRule {
            heat_input_net: HeatInput::from_si(heat_input),
            area_rate: AreaPerPower::from_si(area_rate),
            ..VentilationRule::unset()
        }
    }

    #[test]
    fn area_rules_agree_with_the_table() {
        let rule = by(RatingBasis::HeatInputNet);
        check(FILE, "vent_area_rate_rule", |i, _| {
            let input = VentilationRule { threshold: Power::from_si(i.si("threshold")), ..net(i.si("heat_input_net"), i.si("rate")) };
            rule.evaluate(&input).unwrap().output.free_area.si()
        });
        check(FILE, "compartment_vents_outside", |i, output| {
            let rate = i.si(&output.replace("area", "rate"));
            rule.evaluate(&net(i.si("heat_input_net"), rate)).unwrap().output.free_area.si()
        });
        check(FILE, "US_opening_area", |i, _| {
            let input = VentilationRule {
                heat_input_gross: HeatInput::from_si(i.si("heat_input_gross")),
                area_rate: AreaPerPower::from_si(1.0 / i.si("btu_per_in2")),
                minimum_area: Area::from_si(i.si("minimum")),
                ..VentilationRule::unset()
            };
            by(RatingBasis::HeatInputGross).evaluate(&input).unwrap().output.free_area.si()
        });
    }

    #[test]
    fn volume_and_flow_rules_agree_with_the_table() {
        check(FILE, "US_standard_room_volume", |i, _| {
            // The rate is printed for each 1000 Btu/h.
            let rate: f64 = i.0["rate"].0.parse().unwrap();
            let per_watt = rate * 0.3048_f64.powi(3) / (1000.0 * 1_055.055_852_62 / 3600.0);
            let input = VentilationRule {
                heat_input_gross: HeatInput::from_si(i.si("heat_input_gross")),
                room_volume_rate: VolumePerPower::from_si(per_watt),
                ..VentilationRule::unset()
            };
            by(RatingBasis::HeatInputGross).evaluate(&input).unwrap().output.room_volume.si()
        });
        check(FILE, "DE_combustion_air", |i, output| {
            let input = VentilationRule {
                heat_output: Power::from_si(i.si("nominal_output")),
                room_volume_rate: VolumePerPower::from_si(4.0 / 1e3),
                air_flow_rate: VolumeRatePerPower::from_si(1.6 / 3600.0 / 1e3),
                ..VentilationRule::unset()
            };
            let got = by(RatingBasis::HeatOutput).evaluate(&input).unwrap().output;
            match output {
                "room_volume_min" => got.room_volume.si(),
                "air_flow_at_4Pa" => got.air_flow.si(),
                other => panic!("{other}"),
            }
        });
    }

    #[test]
    fn a_rating_on_another_basis_is_refused() {
        let input = net(15e3, 500e-9);
        assert!(by(RatingBasis::HeatInputNet).evaluate(&input).is_ok());
        assert!(by(RatingBasis::HeatInputGross).evaluate(&input).is_err());
        assert!(by(RatingBasis::HeatOutput).evaluate(&input).is_err());
        let no_rule = VentilationRule { area_rate: AreaPerPower::from_si(f64::NAN), ..input };
        assert!(by(RatingBasis::HeatInputNet).evaluate(&no_rule).is_err());
    }

    #[test]
    fn free_and_equivalent_area_never_stand_for_each_other() {
        let rule = VentilationNeed { basis: RatingBasis::HeatInputNet, equivalent: true };
        let got = rule.evaluate(&net(15e3, 500e-9)).unwrap().output;
        assert!(got.free_area.si().is_nan() && got.equivalent_area.si() == 15e3 * 500e-9);
        let least = VentilationRule { minimum_area: Area::from_si(0.02), ..net(15e3, f64::NAN) };
        assert_eq!(rule.evaluate(&least).unwrap().output.equivalent_area.si(), 0.02);
        let small =
            by(RatingBasis::HeatInputNet).evaluate(&VentilationRule { threshold: Power::from_si(20e3), ..net(15e3, 500e-9) }).unwrap();
        assert_eq!((small.output.free_area.si(), small.judged.raised.0), (0.0, 1 << BELOW_THRESHOLD));
    }
}
