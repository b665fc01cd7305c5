//! From a visit record to an assessment.

use super::findings::{Finding, Severity, cross_checks, missing};
use super::record::{Part, Stage, Visit};
use super::value::{Given, read, shared_standard};
use crate::calculation::{Judged as Validation, Notice};
use crate::catalogue::Prepared;
use crate::error::Error;
use crate::judgement::{Decision, Limit, Policy, Verdict};
use crate::node::Node;
use crate::record::Field;
use crate::uncertainty::{Binding, Chain, Covariance, FirstOrder, Measured, coverage_factor_like_two, first_order};
use alloc::boxed::Box;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// A verdict on one result.
#[derive(Clone, Debug)]
pub struct Judged {
    /// The limit of the policy.
    pub limit: Limit,
    /// What can be said.
    pub verdict: Verdict,
}

/// One value of a part, SI.
#[derive(Clone, Debug)]
pub struct ResultValue {
    /// The field.
    pub field: &'static Field,
    /// Its value.
    pub value: f64,
    /// Its standard uncertainty; zero where none is known.
    pub standard: f64,
    /// Times the standard uncertainty, what covers about 95 %: 2, and more where few readings were repeated.
    pub coverage_factor: f64,
    /// An input that was not given: its default was taken.
    pub assumed: bool,
    /// Verdicts by the policy's limits on it.
    pub judged: Vec<Judged>,
}

impl ResultValue {
    /// The expanded uncertainty: what is printed behind ±.
    #[must_use]
    pub fn expanded(&self) -> f64 {
        self.coverage_factor * self.standard
    }
}

/// What became of one part.
pub struct PartResult {
    /// The part as given.
    pub part: Part,
    /// What went in, in field order; empty where it could not be read.
    pub inputs: Vec<ResultValue>,
    /// What came out, in field order; empty where the part was refused.
    pub outputs: Vec<ResultValue>,
    /// What is to be known about it.
    pub notices: Vec<Notice>,
    /// Why there is no result.
    pub refused: Option<Error>,
    first_place: usize,
}

impl PartResult {
    /// The result `name`, if there is one.
    #[must_use]
    pub fn output(&self, name: &str) -> Option<&ResultValue> {
        self.outputs.iter().find(|v| v.field.name == name && !v.value.is_nan())
    }
    /// The input `name`, if it was given.
    #[must_use]
    pub fn input(&self, name: &str) -> Option<&ResultValue> {
        self.inputs.iter().find(|v| v.field.name == name && !v.value.is_nan())
    }
    /// Calculation, label and stage in words.
    #[must_use]
    pub fn title(&self) -> String {
        let label = if self.part.label.is_empty() { String::new() } else { format!(" ({})", self.part.label) };
        format!("{}{label}, {}", self.part.entry.info().title, self.part.stage.words())
    }
}

/// How a result changed from as found to as left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Change {
    /// As left minus as found, SI.
    pub difference: f64,
    /// Its standard uncertainty, with what both readings share taken out.
    pub standard: f64,
    /// Times the standard uncertainty, what covers about 95 %: the larger one of the two readings.
    pub coverage_factor: f64,
    /// Whether it exceeds its expanded uncertainty; `None` where none is known.
    pub significant: Option<bool>,
}

/// The assessment of a visit.
pub struct Assessment {
    /// The record.
    pub visit: Visit,
    /// Its parts, in the order given.
    pub parts: Vec<PartResult>,
    /// What is to be seen at a glance, the gravest first.
    pub findings: Vec<Finding>,
    /// The policy that verdicts rest on.
    pub policy: Option<Policy>,
    /// Cautions of all parts, each once.
    pub cautions: Vec<&'static str>,
    covariance: Option<Covariance>,
}

/// What is being put together: the chain and its basic inputs.
#[derive(Default)]
struct Assembly {
    chain: Chain,
    measured: Vec<Measured>,
    /// Instrument and field of each basic input, where it was measured with one.
    read_with: Vec<Option<(String, &'static str)>>,
    common: Vec<(String, usize)>,
    links: Vec<(Stage, String, String, usize)>,
}

/// Assesses a visit, judging by `policy` where there is one.
///
/// ```
/// use flamewright::node::Node;
/// use flamewright::visit::{Visit, assess};
/// let record = r#"
/// title = "Invented"
/// date = "2026-11-20"
/// invented = true
/// [checks.static_head]
/// height = "6.5 m"
/// "#;
/// let assessment = assess(Visit::read(&Node::from_toml(record)?)?, None);
/// assert!(assessment.to_text().contains("STATIC HEAD"));
/// # Ok::<(), flamewright::Error>(())
/// ```
#[must_use]
pub fn assess(visit: Visit, policy: Option<Policy>) -> Assessment {
    let mut assembly = Assembly::default();
    let mut results: Vec<Option<PartResult>> = visit.parts.iter().map(|_| None).collect();
    // Parts that refer to others come after them; what refers in a circle, or to nothing, is refused.
    let mut waiting: Vec<usize> = (0..visit.parts.len()).collect();
    loop {
        let before = waiting.len();
        let mut still = Vec::new();
        for i in waiting {
            let part = &visit.parts[i];
            if depends_on_waiting(part, &visit, &results) {
                still.push(i);
            } else {
                results[i] = Some(assembly.add(&visit, part));
            }
        }
        waiting = still;
        if waiting.is_empty() || waiting.len() == before {
            break;
        }
    }
    for i in waiting {
        let why = Error::bad_setting(visit.parts[i].entry.info().name, "", "it refers to itself in a circle");
        results[i] = Some(refused(&visit.parts[i], why));
    }
    let mut parts: Vec<PartResult> = results.into_iter().flatten().collect();
    let propagated = assembly.propagate();
    let freedom: Vec<f64> = assembly.measured.iter().map(Measured::freedom).collect();
    if let Some(propagated) = &propagated {
        for part in parts.iter_mut().filter(|p| p.refused.is_none()) {
            for (k, output) in part.outputs.iter_mut().enumerate() {
                output.standard = propagated.standard(part.first_place + k);
                output.coverage_factor = coverage_factor_like_two(propagated.degrees_of_freedom(part.first_place + k, &freedom));
                if let Some(policy) = &policy {
                    output.judged = policy
                        .on(part.part.entry.info().name, output.field.name)
                        .map(|limit| Judged { limit: limit.clone(), verdict: limit.judge(output.value, 0.5 * output.expanded()) })
                        .collect();
                }
            }
        }
    }
    let mut cautions: Vec<&'static str> = GENERAL_CAUTIONS.to_vec();
    for caution in parts.iter().flat_map(|p| p.part.entry.info().cautions) {
        if !cautions.contains(caution) {
            cautions.push(caution);
        }
    }
    let mut assessment =
        Assessment { visit, parts, findings: Vec::new(), policy, cautions, covariance: propagated.map(|p| p.covariance()) };
    assessment.findings = assessment.find();
    assessment
}

/// What every page of results says.
const GENERAL_CAUTIONS: &[&str] = &[crate::caution::COMPETENCE, crate::caution::SMELL, crate::caution::OBSERVE, crate::caution::DEFEAT];

fn depends_on_waiting(part: &Part, visit: &Visit, results: &[Option<PartResult>]) -> bool {
    references(part).iter().any(|(calculation, label, _)| {
        visit
            .parts
            .iter()
            .zip(results)
            .any(|(p, result)| result.is_none() && p.stage == part.stage && p.entry.info().name == calculation && p.label == *label)
    })
}

fn references(part: &Part) -> Vec<(String, String, String)> {
    let Ok(entries) = part.given.entries("") else { return Vec::new() };
    let field = |name: &str| part.entry.inputs().iter().find(|f| f.name == name);
    entries
        .filter_map(|(name, node)| match read(field(name)?, node, None) {
            Ok(Given::Reference(calculation, label, result)) => Some((calculation, label, result)),
            _ => None,
        })
        .collect()
}

fn refused(part: &Part, why: Error) -> PartResult {
    PartResult { part: part.clone(), inputs: Vec::new(), outputs: Vec::new(), notices: Vec::new(), refused: Some(why), first_place: 0 }
}

impl Assembly {
    fn add(&mut self, visit: &Visit, part: &Part) -> PartResult {
        match self.try_add(visit, part) {
            Ok(result) => result,
            Err(why) => refused(part, why),
        }
    }

    fn try_add(&mut self, visit: &Visit, part: &Part) -> Result<PartResult, Error> {
        let entry = part.entry;
        let settings = entry.settings().iter().filter_map(|s| {
            let node = part.given.get(s.name).or_else(|| visit.common.get(s.name))?;
            Some((s.name.to_string(), node.clone()))
        });
        let prepared = entry.prepare(&Node::Table(settings.collect()))?;
        let mut bindings = Vec::new();
        for field in entry.inputs() {
            bindings.push(self.bind(visit, part, field)?);
        }
        self.run(part, prepared, bindings)
    }

    /// Where the input `field` of a part comes from: the part, the common values, or its default.
    fn bind(&mut self, visit: &Visit, part: &Part, field: &'static Field) -> Result<Binding, Error> {
        let own = part.given.get(field.name);
        if own.is_none()
            && let Some((_, place)) = self.common.iter().find(|(name, _)| name == field.name)
        {
            return Ok(Binding::Input(*place));
        }
        let Some(node) = own.or_else(|| visit.common.get(field.name)) else {
            return Ok(Binding::Fixed(field.default));
        };
        let instrument = part.instruments.iter().find_map(|name| {
            let instrument = visit.instruments.iter().find(|i| i.name == *name)?;
            Some((name.clone(), instrument.statements.get(field.name)?))
        });
        match read(field, node, instrument.as_ref().map(|(_, statement)| *statement))? {
            Given::Value(measured) => {
                let place = self.chain.input(field.name);
                self.measured.push(measured);
                self.read_with.push(instrument.map(|(name, _)| (name, field.name)));
                if own.is_none() {
                    self.common.push((field.name.to_string(), place));
                }
                Ok(Binding::Input(place))
            }
            Given::Reference(calculation, label, result) => {
                let find = |stage: Stage| self.links.iter().find(|(s, name, l, _)| *s == stage && *name == calculation && *l == label);
                let link = find(part.stage).or_else(|| find(Stage::AsLeft)).map(|l| l.3);
                let output = link.and_then(|l| self.chain.output_of(l, &result).map(|output| Binding::Output { link: l, output }));
                output.ok_or_else(|| {
                    Error::bad_setting(
                        field.name,
                        &format!("= {calculation}.{result}"),
                        "there is no such result in this visit (or its part was refused)",
                    )
                })
            }
        }
    }

    fn run(&mut self, part: &Part, prepared: Box<dyn Prepared>, bindings: Vec<Binding>) -> Result<PartResult, Error> {
        let entry = part.entry;
        let values: Vec<f64> = self.measured.iter().map(|m| m.value).collect();
        let input = self.chain.values_of(&bindings, &values);
        let mut output = alloc::vec![f64::NAN; entry.outputs().len()];
        let judged: Validation = prepared.run(&input, &mut output);
        if judged.is_refused(entry.rules()) {
            return Err(judged.error(entry.inputs(), entry.rules(), &input, entry.outputs(), &output));
        }
        let notices = judged.notices(entry.inputs(), entry.rules(), &input);
        let worth = |binding: &Binding| match binding {
            Binding::Input(i) => self.measured.get(*i).map_or((0.0, 2.0), |m| (m.standard(), coverage_factor_like_two(m.freedom()))),
            _ => (0.0, 2.0),
        };
        let inputs = entry.inputs().iter().zip(&input).zip(&bindings).map(|((field, &value), binding)| ResultValue {
            field,
            value,
            standard: worth(binding).0,
            coverage_factor: worth(binding).1,
            assumed: matches!(binding, Binding::Fixed(_)),
            judged: Vec::new(),
        });
        let inputs = inputs.collect();
        let result =
            |(field, &value)| ResultValue { field, value, standard: 0.0, coverage_factor: 2.0, assumed: false, judged: Vec::new() };
        let outputs = entry.outputs().iter().zip(&output).map(result).collect();
        let link = self.chain.link(prepared, bindings)?;
        self.links.push((part.stage, entry.info().name.to_string(), part.label.clone(), link));
        let first_place = self.chain.first_place(link);
        Ok(PartResult { part: part.clone(), inputs, outputs, notices, refused: None, first_place })
    }

    fn propagate(&self) -> Option<FirstOrder> {
        let values: Vec<f64> = self.measured.iter().map(|m| m.value).collect();
        let standard: Vec<f64> = self.measured.iter().map(Measured::standard).collect();
        let mut covariance = Covariance::independent(&standard);
        for i in 0..values.len() {
            for j in 0..i {
                if self.read_with[i].is_some() && self.read_with[i] == self.read_with[j] && standard[i] * standard[j] > 0.0 {
                    let shared = shared_standard(&self.measured[i]) * shared_standard(&self.measured[j]);
                    // Rounding must not make it more than one: refused, it would cost every result its uncertainty.
                    covariance.correlate(i, j, (shared / (standard[i] * standard[j])).min(1.0)).ok()?;
                }
            }
        }
        Some(first_order(&self.chain, &values, &covariance))
    }
}

impl Assessment {
    /// How the result `name` of a calculation changed from as found to as left.
    #[must_use]
    pub fn change(&self, calculation: &str, label: &str, name: &str) -> Option<Change> {
        let place = |stage: Stage| {
            let part =
                self.parts.iter().find(|p| p.part.stage == stage && p.part.entry.info().name == calculation && p.part.label == label)?;
            let k = part.outputs.iter().position(|v| v.field.name == name && !v.value.is_nan())?;
            Some((part.outputs[k].value, part.outputs[k].coverage_factor, part.first_place + k))
        };
        let ((found, found_factor, i), (left, left_factor, j)) = (place(Stage::AsFound)?, place(Stage::AsLeft)?);
        let covariance = self.covariance.as_ref()?;
        let variance = covariance.get(i, i) + covariance.get(j, j) - 2.0 * covariance.get(i, j);
        let standard = crate::math::sqrt(variance.max(0.0));
        let difference = left - found;
        let coverage_factor = found_factor.max(left_factor);
        let significant = (standard > 0.0).then_some(difference.abs() > coverage_factor * standard);
        Some(Change { difference, standard, coverage_factor, significant })
    }

    /// The part of a calculation at a stage.
    #[must_use]
    pub fn part(&self, stage: Stage, calculation: &str) -> Option<&PartResult> {
        self.parts.iter().find(|p| p.part.stage == stage && p.part.entry.info().name == calculation)
    }

    /// Whether the same result conforms to the same limit after the work.
    fn conforms_as_left(&self, found: &PartResult, field: &Field, limit: &Limit) -> bool {
        let same = |p: &&PartResult| {
            p.part.stage == Stage::AsLeft && p.part.entry.info().name == found.part.entry.info().name && p.part.label == found.part.label
        };
        let left = self.parts.iter().find(same).and_then(|p| p.output(field.name));
        let judged = left.and_then(|v| v.judged.iter().find(|j| j.limit.direction == limit.direction && j.limit.value == limit.value));
        judged.is_some_and(|j| j.verdict.decision == Decision::Conforms)
    }

    fn find(&self) -> Vec<Finding> {
        let mut findings = Vec::new();
        for part in &self.parts {
            let title = part.title();
            if let Some(why) = &part.refused {
                findings.push(Finding::new(Severity::Refused, why.code(), why.field(), format!("{title}: no result. {why}")));
            }
            for output in &part.outputs {
                for judged in &output.judged {
                    let mut severity = match judged.verdict.decision {
                        Decision::Conforms => continue,
                        Decision::DoesNotConform => Severity::DoesNotConform,
                        Decision::Undecided => Severity::Undecided,
                    };
                    let what = if severity == Severity::Undecided { "cannot be told apart from" } else { "does not conform to" };
                    let put_right = part.part.stage == Stage::AsFound && self.conforms_as_left(part, output.field, &judged.limit);
                    if put_right {
                        severity = Severity::PutRight;
                    }
                    let text = format!(
                        "{title}: {} {} {what} the limit, {} ({}){}",
                        output.field.name.replace('_', " "),
                        output.field.show(output.value, 4),
                        judged.limit.describe(),
                        judged.limit.citation,
                        if put_right { "; as left it conforms" } else { "" }
                    );
                    findings.push(Finding::new(severity, "LIMIT", output.field.name, text));
                }
            }
            // A reading taken as exact can make a verdict look safer than it is.
            if part.outputs.iter().any(|v| !v.judged.is_empty() && v.standard == 0.0) {
                let text = format!("{title}: nothing is stated of what was read, so verdicts take the readings as exact");
                findings.push(Finding::new(Severity::Notice, "NO_UNCERTAINTY", part.part.entry.info().name, text));
            }
            for notice in &part.notices {
                findings.push(Finding::new(Severity::Notice, notice.code, notice.field, format!("{title}: {}", notice.text)));
            }
        }
        findings.extend(cross_checks(self));
        findings.extend(missing(self));
        for (name, why) in &self.visit.not_done {
            findings.push(Finding::new(Severity::NotDone, "NOT_DONE", name, format!("{}: not done: {why}", name.replace('_', " "))));
        }
        findings.sort_by_key(|f| f.severity);
        findings
    }
}
