//! What is to be seen at a glance: implausible, inconsistent, missing, not done.

use super::assess::{Assessment, PartResult};
use super::record::{OBSERVATIONS, Stage};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// How grave a finding is; the gravest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Outside a limit of the policy.
    DoesNotConform,
    /// A part that could not be computed.
    Refused,
    /// Too near a limit to be decided.
    Undecided,
    /// Values that contradict each other.
    Inconsistent,
    /// Outside a limit, or undecided, as found; conforming as left.
    PutRight,
    /// Something to know.
    Notice,
    /// Not done, with the reason given.
    NotDone,
    /// Not measured, and no reason given.
    NotMeasured,
}

impl Severity {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::DoesNotConform => "outside the limit",
            Self::Refused => "no result",
            Self::Undecided => "undecided",
            Self::Inconsistent => "does not fit together",
            Self::PutRight => "as found, put right",
            Self::Notice => "to know",
            Self::NotDone => "not done",
            Self::NotMeasured => "not measured",
        }
    }
}

/// One thing to be seen at a glance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// How grave.
    pub severity: Severity,
    /// A stable name.
    pub code: String,
    /// The field concerned.
    pub field: String,
    /// In words.
    pub text: String,
}

impl Finding {
    pub(crate) fn new(severity: Severity, code: &str, field: &str, text: String) -> Self {
        Self { severity, code: code.to_string(), field: field.to_string(), text }
    }
}

impl Assessment {
    /// What the reader has to see first, each with the word for it: defects that the engineer
    /// recorded, then what was found, the gravest first.
    pub(crate) fn at_a_glance(&self) -> Vec<(&'static str, String)> {
        let defects = self.visit.defects.iter().map(|d| ("defect recorded", d.describe()));
        let found = self.findings.iter().filter(|f| f.severity != Severity::Notice);
        let mut all: Vec<_> = defects.chain(found.map(|f| (f.severity.words(), f.text.clone()))).collect();
        if all.is_empty() {
            all.push(("nothing", "outside a limit, undecided, contradictory or left out; no defect recorded".to_string()));
        }
        all
    }
}

/// Conditions across parts. Ranges are common practice, no source: they find slips, they judge nothing.
pub(crate) fn cross_checks(assessment: &Assessment) -> Vec<Finding> {
    let mut findings = Vec::new();
    let mut inconsistent = |code: &str, field: &str, text: String| findings.push(Finding::new(Severity::Inconsistent, code, field, text));
    let date = &assessment.visit.date;
    for instrument in &assessment.visit.instruments {
        if !instrument.due.is_empty() && !date.is_empty() && instrument.due < *date {
            let text = format!("the calibration of {} was due on {}: its results are for guidance only", instrument.name, instrument.due);
            inconsistent("CALIBRATION_EXPIRED", &instrument.name, text);
        }
    }
    for instrument in &assessment.visit.instruments {
        let name = &instrument.name;
        let to_know = if !assessment.parts.iter().any(|p| p.part.instruments.contains(name)) {
            (
                Severity::Inconsistent,
                "INSTRUMENT_UNUSED",
                format!("no part names the instrument {name}, so what is stated of it was not used"),
            )
        } else if instrument.calibrated.is_empty() && instrument.due.is_empty() {
            (Severity::Notice, "NO_CALIBRATION", format!("no calibration is stated of {name}"))
        } else {
            continue;
        };
        findings.push(Finding::new(to_know.0, to_know.1, name, to_know.2));
    }
    let mut inconsistent = |code: &str, field: &str, text: String| findings.push(Finding::new(Severity::Inconsistent, code, field, text));
    for part in &assessment.parts {
        let title = part.title();
        if let (Some(flue), Some(water)) = (part.input("flue_temperature"), return_temperature(assessment, part.part.stage))
            && flue.value < water
        {
            inconsistent("FLUE_COLDER_THAN_RETURN", "flue_temperature", format!("{title}: the flue gas is colder than the return water"));
        }
        if let (Some(gross), Some(net)) = (part.output("heat_input_gross"), part.output("heat_input_net")) {
            let ratio = gross.value / net.value;
            if !(1.05..=1.20).contains(&ratio) {
                inconsistent(
                    "GROSS_NET",
                    "heat_input_gross",
                    format!("{title}: gross over net heat input is {ratio:.3}; fuels lie from 1.05 to 1.20"),
                );
            }
        }
        if let Some(percent) = part.output("share_of_plate_net").or_else(|| part.output("share_of_plate_gross"))
            && !(0.5..=1.3).contains(&percent.value)
        {
            let text = format!(
                "{title}: {} of the plate heat input; check the dial, the units, other appliances running, and gross against net",
                percent.field.show(percent.value, 4)
            );
            inconsistent("FAR_FROM_PLATE", percent.field.name, text);
        }
        if let Some(ratio) = part.output("carbon_monoxide_ratio")
            && ratio.value > 0.05
        {
            inconsistent(
                "RATIO_IMPLAUSIBLE",
                "carbon_monoxide_ratio",
                format!("{title}: CO/CO2 above 0.05: check ppm against per cent, and the sensor's range"),
            );
        }
        if let Some(efficiency) = part.output("efficiency_net")
            && !(0.60..=1.10).contains(&efficiency.value)
        {
            let text = format!("{title}: net efficiency {}; check where the sample was taken", efficiency.field.show(efficiency.value, 4));
            inconsistent("EFFICIENCY_IMPLAUSIBLE", "efficiency_net", text);
        }
    }
    findings
}

fn return_temperature(assessment: &Assessment, stage: Stage) -> Option<f64> {
    let parts = assessment.parts.iter().filter(|p: &&PartResult| p.part.stage == stage);
    parts.filter_map(|p| p.input("return_temperature")).map(|v| v.value).next()
}

/// What a visit to a gas appliance commonly answers: any of the calculations, and the question.
/// Common practice, no source.
const QUESTIONS: &[(&[&str], &str)] = &[
    (&["gas_rate"], "Gas rate: does the appliance burn gas at the right rate?"),
    (&["flue_analysis", "carbon_monoxide"], "Flue gas: is the combustion right?"),
    (&["tightness_test"], "Tightness: does the installation leak?"),
    (&["thermostat_test", "thermostat_differential"], "Controls: do they switch where they should?"),
    (&["pump_overrun", "cool_down", "block_cool_down", "cool_down_fit"], "Overrun: does the pump stop once the block has cooled?"),
    (&["ventilation_need", "opening_flow"], "Ventilation: does the room get its air?"),
    (&["natural_draught", "chimney_draught"], "Draught: does the flue pull?"),
];

/// Questions that no part answers and nobody said were left out.
pub(crate) fn missing(assessment: &Assessment) -> Vec<Finding> {
    let answered = |names: &[&str]| {
        assessment.parts.iter().any(|p| names.contains(&p.part.entry.info().name))
            || assessment.visit.not_done.iter().any(|(name, _)| names.contains(&name.as_str()) || question_of(name, names))
    };
    QUESTIONS
        .iter()
        .filter(|(names, _)| !answered(names))
        .map(|(names, question)| Finding::new(Severity::NotMeasured, "NOT_MEASURED", names[0], format!("{question} Not measured.")))
        .collect()
}

/// Whether an observation that was reported as not done belongs to a question.
fn question_of(observation: &str, names: &[&str]) -> bool {
    OBSERVATIONS.contains(&observation)
        && names.iter().any(|n| n.contains(observation) || (observation == "ventilation" && n.starts_with("vent")))
}
