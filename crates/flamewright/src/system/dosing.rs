//! `inhibitor_dose`, `antifreeze_dose`, `partial_drain`: what goes into the water, and what a drain takes out.

use crate::Error;
use crate::calculation::{Calculation, Context, Info, Raised, Rule, Setting, Settings, Source};
use crate::quantity::Value;
use crate::quantity::types::{Mass, MassDensity, Ratio, ThermodynamicTemperature, Time, Volume, VolumeRate};
use crate::quantity::units::{LITRE, PERCENT};
use crate::record::record;
use crate::water::{ANTIFREEZE_SETTING, Antifreeze};
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// A system to be dosed with inhibitor.
#[record]
pub struct InhibitorDoseInput {
    /// Water content of the whole system.
    #[field("V", LITRE, 1.0..=1000000.0, usual = 20.0..=5000.0)]
    pub system_content: Volume,
    /// Litres of product for each litre of system water, from its label.
    #[field("d", PERCENT, 0.01..=20.0, default = 1.0, usual = 0.2..=5.0)]
    pub dose_ratio: Ratio,
    /// Share of a full dose that is in the water already, by test.
    #[field("s", PERCENT, 0.0..=100.0, default = 0.0)]
    pub strength_left: Ratio,
    /// Content of one container.
    #[field("V_1", LITRE, 0.01..=1000.0, default = 1.0)]
    pub container_content: Volume,
}

/// What it takes.
#[record]
pub struct InhibitorDoseResult {
    /// Product for water that holds none.
    #[field("V_{full}", LITRE)]
    pub full_dose: Volume,
    /// Product to add.
    #[field("V_d", LITRE)]
    pub dose: Volume,
    /// Containers that hold it, in parts of one.
    #[field("N", ONE)]
    pub containers: Ratio,
}

/// Inhibitor for a content.
#[derive(Clone, Copy, Debug)]
pub struct InhibitorDose;
no_settings!(InhibitorDose);

const LABEL: Source = Source::new("the product's label, given by the caller", "dose");
const BALANCE: Source = Source::new("volume balance", "shares by volume, contraction on mixing left out");

impl Calculation for InhibitorDose {
    type Input = InhibitorDoseInput;
    type Output = InhibitorDoseResult;
    const INFO: Info = Info {
        name: "inhibitor_dose",
        title: "Inhibitor dose",
        summary: "Litres of inhibitor that a system's content needs, less what is still in it.",
        sources: &[LABEL, BALANCE, Source::new("common practice, no source", "1 L in 100 L where the label is not at hand")],
        accuracy: "As the content is known; a tenth too much does no harm, too little does.",
        cautions: &["Products of different makers may not mix: flush before changing, and follow the label."],
        checked_against: "no outside check exists: a proportion",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &InhibitorDoseInput, working: &mut W) -> InhibitorDoseResult {
        let whole = Ratio::from_si(1.0);
        step!(working, let full_dose: "V_{full}" in LITRE = input.dose_ratio * input.system_content, "product's label");
        step!(working, let dose: "V_d" in LITRE = full_dose * (whole - input.strength_left), "volume balance");
        step!(working, let containers: "N" = dose / input.container_content, "definition");
        InhibitorDoseResult { full_dose, dose, containers }
    }
}

/// A system to be protected from frost.
#[record]
pub struct AntifreezeDoseInput {
    /// Water content of the whole system.
    #[field("V", LITRE, 1.0..=1000000.0, usual = 20.0..=5000.0)]
    pub system_content: Volume,
    /// Temperature down to which no ice is to form.
    #[field("t_{frost}", DEGREE_CELSIUS, -50.0..=-1.0, usual = -30.0..=-5.0)]
    pub frost_temperature: ThermodynamicTemperature,
    /// Glycol that is in the water already, by volume.
    #[field("\\varphi_1", PERCENT, 0.0..=60.0, default = 0.0)]
    pub glycol_volume_fraction: Ratio,
    /// Share of glycol in the product as bought, by volume.
    #[field("\\varphi_p", PERCENT, 50.0..=100.0, default = 100.0)]
    pub product_strength: Ratio,
}

/// What it takes.
#[record]
pub struct AntifreezeDoseResult {
    /// Glycol needed, by mass.
    #[field("w", PERCENT)]
    pub glycol_mass_fraction: Ratio,
    /// Glycol needed, by volume.
    #[field("\\varphi", PERCENT)]
    pub needed_volume_fraction: Ratio,
    /// Product to add, after as much of the present water has been drained; zero if there is enough.
    #[field("V_p", LITRE)]
    pub product_volume: Volume,
    /// Mass of glycol in the system afterwards.
    #[field("m_g", KILOGRAM)]
    pub glycol_mass: Mass,
}

/// Antifreeze for a content.
#[derive(Clone, Copy, Debug)]
pub struct AntifreezeDose {
    /// Which glycol.
    pub antifreeze: Antifreeze,
}

impl Context for AntifreezeDose {
    const SETTINGS: &'static [Setting] = &[ANTIFREEZE_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { antifreeze: Antifreeze::from_settings(settings)? })
    }
}

rules! {
    refuse BEYOND_THE_FIT on "frost_temperature": "no mixture of up to 60 % by mass protects so far";
    refuse TOO_WEAK_PRODUCT on "product_strength": "the product holds less glycol than the system needs; it cannot be reached by topping up";
    notice ENOUGH on "glycol_volume_fraction": "the glycol in the water is enough already";
    notice THIN on "needed_volume_fraction": "below about a fifth of glycol the inhibitors in it are too thin and germs may grow; most makers state a least share";
}

const GLYCOL: Source = Source::new(
    "Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries them",
    "freezing point against mass fraction",
);
const MIXED: Source =
    Source::new("from memory", "density of pure glycol at 20 °C: propylene 1036, ethylene 1113 kg/m³, for shares by volume");

impl Calculation for AntifreezeDose {
    type Input = AntifreezeDoseInput;
    type Output = AntifreezeDoseResult;
    const INFO: Info = Info {
        name: "antifreeze_dose",
        title: "Antifreeze dose",
        summary: "Share of glycol that protects down to a temperature, and the product to add for a content.",
        sources: &[GLYCOL, MIXED, BALANCE, Source::new("common practice, no source", "least share of a fifth by volume")],
        accuracy: "1 K of freezing point for plain glycol; an inhibited product follows its maker's table, which goes first.",
        cautions: &["Ethylene glycol is poisonous: not where it can reach drinking water. Drained mixtures are waste, not for the ground."],
        checked_against: "heat/glycol.csv (freezing points)",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn review(&self, input: &AntifreezeDoseInput, output: &AntifreezeDoseResult) -> Raised {
        let needed = output.needed_volume_fraction.si();
        Raised::NONE
            .when(BEYOND_THE_FIT, needed.is_nan())
            .when(TOO_WEAK_PRODUCT, needed >= input.product_strength.si())
            .when(ENOUGH, input.glycol_volume_fraction.si() >= needed)
            .when(THIN, needed < 0.2)
    }

    fn compute<W: Working>(&self, input: &AntifreezeDoseInput, working: &mut W) -> AntifreezeDoseResult {
        let antifreeze = self.antifreeze;
        step!(working, let glycol_mass_fraction: "w" in PERCENT = Ratio::from_si(antifreeze.mass_fraction_for_freezing(input.frost_temperature.si())), "solved: its freezing point is the frost temperature (Melinder 2010)");
        step!(working, let needed_volume_fraction: "\\varphi" in PERCENT = Ratio::from_si(antifreeze.volume_fraction_of_mass_fraction(glycol_mass_fraction.si())), "densities of the parts at 20 °C");
        step!(working, let pure_density: "\\rho_g" = MassDensity::from_si(antifreeze.pure_density()), "pure glycol at 20 °C, from memory");
        step!(working, let missing: "\\Delta\\varphi" in PERCENT = (needed_volume_fraction - input.glycol_volume_fraction).max(Ratio::from_si(0.0)), "definition");
        step!(working, let product_volume: "V_p" in LITRE = input.system_content * missing / (input.product_strength - input.glycol_volume_fraction), "volume balance: mixture drained, product filled in");
        step!(working, let glycol_mass: "m_g" = needed_volume_fraction.max(input.glycol_volume_fraction) * input.system_content * pure_density, "volume balance");
        AntifreezeDoseResult { glycol_mass_fraction, needed_volume_fraction, product_volume, glycol_mass }
    }
}

/// A system of which part is drained and filled again.
#[record]
pub struct PartialDrainInput {
    /// Water content of the whole system.
    #[field("V", LITRE, 1.0..=1000000.0, usual = 20.0..=5000.0)]
    pub system_content: Volume,
    /// Water drained.
    #[field("V_{out}", LITRE, 0.0..=1000000.0)]
    pub drained_volume: Volume,
    /// Share of product (inhibitor or antifreeze) in the water before, by volume.
    #[field("\\varphi_1", PERCENT, 0.0..=100.0)]
    pub product_fraction: Ratio,
    /// Share of product in what is filled in.
    #[field("\\varphi_{in}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub refill_fraction: Ratio,
    /// Share of product wanted afterwards.
    #[field("\\varphi_{set}", PERCENT, 0.0..=100.0, absent = "as before")]
    pub wanted_fraction: Ratio,
    /// Flow at which the filling tap runs.
    #[field("\\dot V", LITRE_PER_HOUR, 1.0..=100000.0, default = 600.0)]
    pub fill_flow: VolumeRate,
}

/// What is left, and what is needed.
#[record]
pub struct PartialDrainResult {
    /// Product that went with the water.
    #[field("V_{lost}", LITRE)]
    pub product_lost: Volume,
    /// Share of product after filling up again.
    #[field("\\varphi_2", PERCENT)]
    pub fraction_after: Ratio,
    /// Share of the earlier strength that is left.
    #[field("r", PERCENT, absent = "no product was in it")]
    pub strength_left: Ratio,
    /// Product in the refill that makes the wanted share.
    #[field("V_p", LITRE)]
    pub product_needed: Volume,
    /// Plain water of that refill.
    #[field("V_w", LITRE)]
    pub water_needed: Volume,
    /// Time to fill up again.
    #[field("\\tau", MINUTE)]
    pub fill_time: Time,
}

/// Strength left after a partial drain.
#[derive(Clone, Copy, Debug)]
pub struct PartialDrain;
no_settings!(PartialDrain);

mod drain {
    crate::rules! {
        refuse MORE_THAN_THERE_IS on "drained_volume": "no more can be drained than the system holds";
        refuse OUT_OF_REACH on "wanted_fraction": "the refill cannot make this share: more must be drained";
    }
    pub(super) const LIST: &[crate::calculation::Rule] = RULES;
    pub(super) const NUMBERS: [u32; 2] = [MORE_THAN_THERE_IS, OUT_OF_REACH];
}

impl Calculation for PartialDrain {
    type Input = PartialDrainInput;
    type Output = PartialDrainResult;
    const INFO: Info = Info {
        name: "partial_drain",
        title: "Partial drain and refill",
        summary: "Strength of inhibitor or antifreeze left after part of the water was drained and replaced, and the refill that restores it.",
        sources: &[BALANCE],
        accuracy: "Holds for a well mixed system; what stays in emitters and dead legs does not mix at once.",
        cautions: &[
            super::PRESSURE_CAUTION,
            "Let hot water cool before draining; check for backflow protection before filling from the main.",
        ],
        checked_against: "no outside check exists: a proportion",
    };
    const RULES: &'static [Rule] = drain::LIST;

    #[inline]
    fn check(&self, input: &PartialDrainInput) -> Raised {
        let [more_than_there_is, _] = drain::NUMBERS;
        Raised::NONE.when(more_than_there_is, input.drained_volume.si() > input.system_content.si())
    }

    #[inline]
    fn review(&self, input: &PartialDrainInput, output: &PartialDrainResult) -> Raised {
        let [_, out_of_reach] = drain::NUMBERS;
        let slack = 1e-12 * input.system_content.si();
        Raised::NONE.when(out_of_reach, (output.product_needed.si() < -slack) | (output.water_needed.si() < -slack))
    }

    fn compute<W: Working>(&self, input: &PartialDrainInput, working: &mut W) -> PartialDrainResult {
        let left_out = input.wanted_fraction.si().is_nan();
        let wanted = if left_out {
            step!(working, let wanted: "\\varphi_{set}" in PERCENT = input.product_fraction, "as before");
            wanted
        } else {
            input.wanted_fraction
        };
        step!(working, let product_lost: "V_{lost}" in LITRE = input.product_fraction * input.drained_volume, "volume balance");
        step!(working, let product_left: "V_{left}" in LITRE = input.product_fraction * (input.system_content - input.drained_volume), "volume balance");
        step!(working, let fraction_after: "\\varphi_2" in PERCENT = (product_left + input.refill_fraction * input.drained_volume) / input.system_content, "volume balance");
        step!(working, let product_needed: "V_p" in LITRE = wanted * input.system_content - product_left, "volume balance");
        step!(working, let water_needed: "V_w" in LITRE = input.drained_volume - product_needed, "volume balance");
        step!(working, let fill_time: "\\tau" = input.drained_volume / input.fill_flow, "definition");
        let before = input.product_fraction.si();
        PartialDrainResult {
            product_lost,
            fraction_after,
            strength_left: Ratio::from_si(if before == 0.0 { f64::NAN } else { fraction_after.si() / before }),
            product_needed,
            water_needed,
            fill_time,
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::catalogue::{Bare, evaluate};
    use crate::node::Node;
    use crate::water::tests::assert_close;
    use flamewright_reference::rows;
    use std::string::ToString;

    fn get(name: &str, given: &Node) -> impl Fn(&str) -> f64 + use<> {
        let outcome = evaluate(name, given, Bare::Refused).unwrap();
        move |field: &str| outcome.get(field).unwrap()
    }

    #[test]
    fn inhibitor_by_hand() {
        let got = get(
            "inhibitor_dose",
            &Node::from([("system_content", "150 L"), ("dose_ratio", "0.8 %"), ("strength_left", "25 %"), ("container_content", "0.5 L")]),
        );
        assert_close(got("full_dose"), 1.2e-3, 1e-12, "full");
        assert_close(got("dose"), 0.9e-3, 1e-12, "dose");
        assert_close(got("containers"), 1.8, 1e-12, "containers");
    }

    #[test]
    fn antifreeze_protects_to_the_reference_freezing_points() {
        for row in rows("heat/glycol.csv").iter().filter(|row| row.text("T_C") == "0") {
            let given = Node::from([
                ("antifreeze", Node::from(row.text("fluid"))),
                ("system_content", Node::from("200 L")),
                ("frost_temperature", Node::Text(std::format!("{} degC", row.text("T_freeze_C")))),
            ]);
            let got = get("antifreeze_dose", &given);
            assert_close(got("glycol_mass_fraction"), row.number("mass_fraction"), 1e-5, &row.place);
            // From plain water all of the glycol is bought.
            assert_close(got("product_volume"), 0.2 * got("needed_volume_fraction"), 1e-12, &row.place);
        }
    }

    #[test]
    fn topping_up_reaches_what_is_needed() {
        let got = get(
            "antifreeze_dose",
            &Node::from([
                ("system_content", "100 L"),
                ("frost_temperature", "-15 degC"),
                ("glycol_volume_fraction", "20 %"),
                ("product_strength", "95 %"),
            ]),
        );
        let (added, needed) = (got("product_volume"), got("needed_volume_fraction"));
        assert_close((0.1 - added) * 0.2 + added * 0.95, needed * 0.1, 1e-12, "balance");
        let refused = |t: &str| {
            let given = Node::from([("system_content", "100 L"), ("frost_temperature", t), ("product_strength", "50 %")]);
            evaluate("antifreeze_dose", &given, Bare::Refused).err().map(|error| error.code().to_string())
        };
        assert_eq!(refused("-49.9 degC").as_deref(), Some("TOO_WEAK_PRODUCT"));
        assert_eq!(refused("-10 degC"), None);
    }

    #[test]
    fn drain_and_restore_by_hand() {
        let got = get("partial_drain", &Node::from([("system_content", "120 L"), ("drained_volume", "30 L"), ("product_fraction", "1 %")]));
        assert_close(got("fraction_after"), 0.0075, 1e-12, "after");
        assert_close(got("strength_left"), 0.75, 1e-12, "left");
        assert_close(got("product_needed"), 0.3e-3, 1e-9, "needed");
        assert_close(got("water_needed"), 29.7e-3, 1e-9, "water");
        assert_close(got("fill_time"), 180.0, 1e-12, "time");
        let code = |drained: &str, wanted: &str| {
            let given = Node::from([
                ("system_content", "120 L"),
                ("drained_volume", drained),
                ("product_fraction", "30 %"),
                ("wanted_fraction", wanted),
            ]);
            evaluate("partial_drain", &given, Bare::Refused).err().map(|error| error.code().to_string())
        };
        assert_eq!(code("130 L", "30 %").as_deref(), Some("MORE_THAN_THERE_IS"));
        assert_eq!(code("10 L", "45 %").as_deref(), Some("OUT_OF_REACH"));
        assert_eq!(code("60 L", "45 %"), None);
    }
}
