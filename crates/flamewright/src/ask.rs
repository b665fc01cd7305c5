//! A call in text with all that can be asked about it: what it is worth, its working, draws, the
//! input for a wanted result, a sweep.

use crate::catalogue::{Bare, Entry, Outcome, Prepared, outcome, split};
use crate::error::Error;
use crate::explore::{Axis, Goal, goal_seek, sweep};
use crate::node::Node;
use crate::quantity::Unit;
use crate::record::{Field, find};
use crate::uncertainty::{Covariance, FirstOrder, Measured, coverage_factor_like_two, first_order, monte_carlo};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// What can stand under `ask`.
const ASKED: &[&str] = &["steps", "correlations", "correlation_of_results", "monte_carlo", "goal_seek", "sweep"];

/// Draws and rows that one call is answered with at most.
const MOST_TRIALS: f64 = 1e6;
const MOST_POINTS: f64 = 1e4;

/// Answers `call`: the name under `calculation`, settings and fields by name, and what is asked under `ask`.
pub(crate) fn answer(call: &Node) -> Result<Node, Error> {
    let name = call.get("calculation").ok_or_else(|| Error::bad_setting("calculation", "", "the name of a calculation is needed"))?;
    let entry = crate::catalogue::calculation(name.text("calculation")?)?;
    let ask = call.get("ask").cloned().unwrap_or_default();
    known("ask", &ask, ASKED)?;
    let given = call.entries("call")?.filter(|(key, _)| !["calculation", "ask"].contains(key));
    let (settings, fields) = split(entry, &Node::Table(given.map(|(key, value)| (key.to_string(), value.clone())).collect()))?;
    let mut measured: Vec<Measured> = entry.inputs().iter().map(|field| Measured::exact(field.default)).collect();
    for (name, node) in fields.entries("fields")? {
        let (i, field) = find(entry.inputs(), name)?;
        measured[i] = Measured::read(field, node)?;
    }
    let worth = Worth::of(entry, &measured, ask.get("correlations"))?;
    let mut input: Vec<f64> = measured.iter().map(|m| m.value).collect();
    let prepared = entry.prepare(&settings)?;
    if let Some(axes) = ask.get("sweep") {
        if ask.entries("ask")?.count() > 1 {
            return Err(Error::bad_setting("sweep", "", "a sweep has rows for answers, so nothing else can be asked of it"));
        }
        return swept(&*prepared, &input, &fields, axes);
    }
    let goal = ask.get("goal_seek").map(|goal| sought(&*prepared, &input, &fields, goal)).transpose()?;
    if let Some(goal) = &goal {
        input.clone_from(&goal.1.input);
    }
    told(&outcome(prepared, input)?, &worth, goal, &ask)
}

/// Refuses what is not among the `offered` keys of a table.
fn known(name: &str, table: &Node, offered: &[&'static str]) -> Result<(), Error> {
    match table.entries(name)?.find(|(key, _)| !offered.contains(key)) {
        Some((key, _)) => Err(Error::unknown_name(name, key, offered.iter().copied())),
        None => Ok(()),
    }
}

/// A whole number from `least` to `most`.
fn count(table: &Node, name: &str, otherwise: f64, least: f64, most: f64) -> Result<f64, Error> {
    match table.get(name) {
        None => Ok(otherwise),
        Some(Node::Number(n)) if (least..=most).contains(n) && crate::math::floor(*n) == *n => Ok(*n),
        Some(other) => Err(Error::bad_setting(name, &other.brief(), &format!("a whole number from {least} to {most} is needed"))),
    }
}

fn needed<'a>(table: &'a Node, within: &str, name: &str) -> Result<&'a Node, Error> {
    table.get(name).ok_or_else(|| Error::bad_setting(name, "", &format!("{within} needs it")))
}

fn numbers(si: &[f64], unit: &Unit) -> Node {
    Node::List(si.iter().map(|&v| Node::Number(unit.from_si(v))).collect())
}

/// What is known of the inputs beyond their values.
struct Worth {
    covariance: Covariance,
    freedom: Vec<f64>,
    shapes: Vec<crate::uncertainty::Distribution>,
}

impl Worth {
    fn of(entry: &dyn Entry, measured: &[Measured], correlations: Option<&Node>) -> Result<Self, Error> {
        let standard: Vec<f64> = measured.iter().map(Measured::standard).collect();
        let mut covariance = Covariance::independent(&standard);
        for item in correlations.map_or(Ok([].as_slice()), |list| list.list("correlations"))? {
            let [one, other, Node::Number(r)] = item.list("correlations")? else {
                return Err(Error::bad_setting("correlations", &item.brief(), "each is a list of two inputs and a coefficient"));
            };
            let place = |node: &Node| find(entry.inputs(), node.text("correlations")?).map(|(i, _)| i);
            covariance.correlate(place(one)?, place(other)?, *r)?;
        }
        let freedom = measured.iter().map(Measured::freedom).collect();
        Ok(Self { covariance, freedom, shapes: measured.iter().map(Measured::distribution).collect() })
    }
    fn is_stated(&self) -> bool {
        (0..self.covariance.size()).any(|i| self.covariance.get(i, i) > 0.0)
    }
}

/// Refuses a value for an input that the answer is about to vary.
fn left_open(fields: &Node, name: &str) -> Result<(), Error> {
    match fields.get(name) {
        Some(_) => Err(Error::bad_setting(name, "", "it is varied, so it is not to be given")),
        None => Ok(()),
    }
}

fn sought(prepared: &dyn Prepared, input: &[f64], fields: &Node, asked: &Node) -> Result<(&'static Field, Goal), Error> {
    known("goal_seek", asked, &["vary", "low", "high", "of", "wanted"])?;
    let need = |name: &str| needed(asked, "goal_seek", name);
    let (_, vary) = find(prepared.entry().inputs(), need("vary")?.text("vary")?)?;
    let (_, of) = find(prepared.entry().outputs(), need("of")?.text("of")?)?;
    left_open(fields, vary.name)?;
    let end = |name: &str| vary.read_node(need(name)?, Bare::Refused);
    let wanted = of.read_node(need("wanted")?, Bare::Refused)?;
    Ok((vary, goal_seek(prepared, input, vary.name, end("low")?, end("high")?, of.name, wanted)?))
}

fn swept(prepared: &dyn Prepared, input: &[f64], fields: &Node, asked: &Node) -> Result<Node, Error> {
    let entry = prepared.entry();
    let mut axes = Vec::new();
    for (name, node) in asked.entries("sweep")? {
        let (_, field) = find(entry.inputs(), name)?;
        left_open(fields, name)?;
        axes.push(match node {
            Node::List(values) => {
                let values: Result<Vec<f64>, Error> = values.iter().map(|v| field.read_node(v, Bare::Refused)).collect();
                Axis { field: field.name, values: values? }
            }
            ends => {
                known(name, ends, &["from", "to", "points"])?;
                let end = |which: &str| field.read_node(needed(ends, name, which)?, Bare::Refused);
                Axis::even(field.name, end("from")?, end("to")?, count(ends, "points", 41.0, 1.0, MOST_POINTS)? as usize)
            }
        });
    }
    if axes.iter().map(|axis| axis.values.len()).fold(1, usize::saturating_mul) > MOST_TRIALS as usize {
        return Err(Error::bad_setting("sweep", "", &format!("at most {MOST_TRIALS} combinations are answered")));
    }
    let found = sweep(prepared, input, &axes)?;
    let column = |field: &Field, si: &[f64]| {
        let column = Node::from([("unit", Node::from(field.unit.symbol)), ("values", numbers(si, field.unit))]);
        (field.name.to_string(), column)
    };
    let varied = axes.iter().zip(&found.axes).filter_map(|(axis, si)| find(entry.inputs(), axis.field).ok().map(|(_, f)| column(f, si)));
    let results = entry.outputs().iter().zip(&found.columns).map(|(field, si)| column(field, si));
    Ok(Node::from([
        ("calculation", Node::from(entry.info().name)),
        ("version", crate::VERSION.into()),
        ("axes", Node::Table(varied.collect())),
        ("results", Node::Table(results.collect())),
        ("accepted", Node::List(found.accepted.iter().map(|&good| Node::Flag(good)).collect())),
        ("cautions", Node::List(entry.info().cautions.iter().map(|&c| c.into()).collect())),
    ]))
}

/// The answer with everything that was asked of it.
fn told(found: &Outcome, worth: &Worth, goal: Option<(&'static Field, Goal)>, ask: &Node) -> Result<Node, Error> {
    let prepared = &*found.prepared;
    let entry = prepared.entry();
    let Node::Table(mut told) = found.to_node() else { return Ok(Node::Null) };
    let propagated = worth.is_stated().then(|| first_order(prepared, &found.input, &worth.covariance));
    if let Some(propagated) = &propagated {
        for (key, node) in &mut told {
            if let (true, Node::Table(results)) = (key == "results", node) {
                for (j, (field, (_, result))) in entry.outputs().iter().zip(results).enumerate() {
                    if let Node::Table(result) = result {
                        result.extend(its_worth(entry, propagated, worth, j, field.unit));
                    }
                }
            }
        }
    }
    let mut tell = |name: &str, node: Node| told.push((name.to_string(), node));
    if let Some((field, goal)) = goal {
        let value = Node::Number(field.unit.from_si(goal.value));
        let unit = Node::from(field.unit.symbol);
        tell(
            "goal",
            Node::from([
                ("input", Node::from(field.name)),
                ("value", value),
                ("unit", unit),
                ("si", goal.value.into()),
                ("several", Node::Flag(goal.several)),
            ]),
        );
    }
    if ask.get("steps").map_or(Ok(false), |asked| asked.flag("steps"))? {
        let steps = prepared.steps(&found.input)?;
        let lines = steps.iter().map(|step| {
            let text = |text: String| Node::Text(text);
            Node::from([
                ("plain", text(step.plain())),
                ("latex", text(step.latex())),
                ("formula", text(step.formula())),
                ("substituted", text(step.substituted())),
                ("result", text(step.result())),
                ("source", step.source().into()),
            ])
        });
        tell("steps", Node::List(lines.collect()));
    }
    if ask.get("correlation_of_results").map_or(Ok(false), |asked| asked.flag("correlation_of_results"))? {
        let propagated = propagated.ok_or_else(|| Error::bad_setting("correlation_of_results", "", NOTHING_STATED))?;
        let (covariance, count) = (propagated.covariance(), entry.outputs().len());
        let row = |j: usize| Node::List((0..count).map(|l| covariance.correlation(j, l).into()).collect());
        tell("correlation_of_results", Node::List((0..count).map(row).collect()));
    }
    if let Some(asked) = ask.get("monte_carlo") {
        if !worth.is_stated() {
            return Err(Error::bad_setting("monte_carlo", "", NOTHING_STATED));
        }
        tell("monte_carlo", drawn(prepared, &found.input, worth, asked)?);
    }
    Ok(Node::Table(told))
}

const NOTHING_STATED: &str = "nothing is stated of what any value is worth, such as {\"value\": \"60 degC\", \"accuracy\": \"1 K\"}";

/// Standard uncertainty in the unit of result `j`, its coverage factor, and the share of each input in its variance.
fn its_worth(entry: &dyn Entry, propagated: &FirstOrder, worth: &Worth, j: usize, unit: &Unit) -> [(String, Node); 3] {
    let shares = propagated.budget(j);
    let shares = propagated.varied().iter().map(|&i| (entry.inputs()[i].name.to_string(), shares[i].into()));
    [
        ("standard_uncertainty".to_string(), (propagated.standard(j) / unit.factor).into()),
        ("coverage_factor".to_string(), coverage_factor_like_two(propagated.degrees_of_freedom(j, &worth.freedom)).into()),
        ("budget".to_string(), Node::Table(shares.collect())),
    ]
}

fn drawn(prepared: &dyn Prepared, input: &[f64], worth: &Worth, asked: &Node) -> Result<Node, Error> {
    known("monte_carlo", asked, &["trials", "seed", "coverage", "shortest"])?;
    let trials = count(asked, "trials", 1e5, 2.0, MOST_TRIALS)?;
    let seed = count(asked, "seed", 1.0, 0.0, 9_007_199_254_740_992.0)?;
    let shortest = asked.get("shortest").map_or(Ok(false), |flag| flag.flag("shortest"))?;
    let coverage = match asked.get("coverage") {
        None => 0.95,
        Some(Node::Number(share)) if *share > 0.0 && *share < 1.0 => *share,
        Some(other) => return Err(Error::bad_setting("coverage", &other.brief(), "a number between 0 and 1 is needed")),
    };
    let draws = monte_carlo(prepared, input, &worth.covariance, &worth.shapes, trials as usize, seed as u64)?;
    let results = prepared.entry().outputs().iter().enumerate().map(|(j, field)| {
        let (low, high) = draws.interval(j, coverage, shortest);
        let shown = |si: f64| Node::Number(field.unit.from_si(si));
        let result = Node::from([
            ("mean", shown(draws.mean(j))),
            ("standard_uncertainty", Node::Number(draws.standard(j) / field.unit.factor)),
            ("low", shown(low)),
            ("high", shown(high)),
            ("unit", field.unit.symbol.into()),
        ]);
        (field.name.to_string(), result)
    });
    Ok(Node::from([
        ("trials", Node::Number(trials)),
        ("seed", seed.into()),
        ("coverage", coverage.into()),
        ("shortest", Node::Flag(shortest)),
        ("results", Node::Table(results.collect())),
    ]))
}
