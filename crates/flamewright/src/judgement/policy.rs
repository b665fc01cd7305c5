//! A policy: the limits a user works to, as data with citations.

use super::{Direction, Verdict, conformity};
use crate::catalogue::{Bare, calculation};
use crate::error::Error;
use crate::node::Node;
use crate::record::{Field, find};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// One limit on one result of one calculation.
#[derive(Clone, Debug)]
pub struct Limit {
    /// The calculation that gives the result.
    pub calculation: String,
    /// The result.
    pub field: &'static Field,
    /// Which side is wanted.
    pub direction: Direction,
    /// The limit, SI.
    pub value: f64,
    /// The probability from which a decision is made.
    pub required_probability: f64,
    /// Where the limit comes from.
    pub citation: String,
    /// The words of the user for it; may be empty.
    pub note: String,
}

impl Limit {
    /// Judges a value (SI) with its standard uncertainty.
    #[must_use]
    pub fn judge(&self, value: f64, standard_uncertainty: f64) -> Verdict {
        conformity(value, standard_uncertainty, self.value, self.direction, self.required_probability)
    }
    /// The limit in words, for instance `at most 0.004`.
    #[must_use]
    pub fn describe(&self) -> String {
        let side = if self.direction == Direction::AtMost { "at most" } else { "at least" };
        format!("{side} {}", self.field.show(self.value, 7))
    }
}

/// The limits a user works to.
#[derive(Clone, Debug, Default)]
pub struct Policy {
    /// What it is called.
    pub title: String,
    /// Whose it is: the jurisdiction or the company, in the user's words.
    pub jurisdiction: String,
    /// The day it was made or last checked.
    pub date: String,
    /// Whether it is an invented example, which must not be used for real work.
    pub invented: bool,
    /// The limits.
    pub limits: Vec<Limit>,
}

const KEYS: &[&str] = &["title", "jurisdiction", "date", "invented", "limit", "required_probability"];
const LIMIT_KEYS: &[&str] = &["on", "at_most", "at_least", "basis", "citation", "note", "required_probability"];

fn known(table: &Node, name: &str, keys: &'static [&'static str]) -> Result<(), Error> {
    for (key, _) in table.entries(name)? {
        if !keys.contains(&key) {
            return Err(Error::unknown_name(name, key, keys.iter().copied()));
        }
    }
    Ok(())
}

impl Policy {
    /// Reads a policy. Title, date and, for every limit, a citation are needed.
    ///
    /// ```
    /// # use flamewright::{judgement::Policy, node::Node};
    /// let text = r#"
    /// title = "Invented example"
    /// date = "2026-01-01"
    /// invented = true
    /// [[limit]]
    /// on = "liquid_water.density"
    /// at_most = "990 kg/m3"
    /// citation = "invented for this example"
    /// "#;
    /// let policy = Policy::read(&Node::from_toml(text)?)?;
    /// assert_eq!(policy.limits[0].describe(), "at most 990 kg/m³");
    /// # Ok::<(), flamewright::Error>(())
    /// ```
    ///
    /// # Errors
    /// What is missing or unknown; a limit whose unit or basis is not that of the result.
    pub fn read(node: &Node) -> Result<Self, Error> {
        known(node, "policy", KEYS)?;
        let text = |key: &str| node.get(key).map_or(Ok(""), |n| n.text(key)).map(ToString::to_string);
        let need = |key: &'static str| match text(key)? {
            empty if empty.trim().is_empty() => {
                Err(Error::bad_setting(key, "", "a policy needs it, so that a verdict can say what it rests on"))
            }
            given => Ok(given),
        };
        let required = probability(node, 0.95)?;
        let limits = node.get("limit").map_or(Ok([].as_slice()), |n| n.list("limit"))?;
        Ok(Self {
            title: need("title")?,
            date: need("date")?,
            jurisdiction: text("jurisdiction")?,
            invented: node.get("invented").map_or(Ok(false), |n| n.flag("invented"))?,
            limits: limits
                .iter()
                .enumerate()
                .map(|(i, n)| limit(n, required).map_err(|e| e.within(&format!("limit {}", i + 1))))
                .collect::<Result<_, _>>()?,
        })
    }
    /// The limits on a result.
    pub fn on<'a>(&'a self, calculation: &'a str, field: &'a str) -> impl Iterator<Item = &'a Limit> {
        self.limits.iter().filter(move |l| l.calculation == calculation && l.field.name == field)
    }
}

fn probability(node: &Node, default: f64) -> Result<f64, Error> {
    let Some(given) = node.get("required_probability") else { return Ok(default) };
    let value: uom::si::f64::Ratio = given.quantity("required_probability")?;
    if (0.5..1.0).contains(&value.value) {
        return Ok(value.value);
    }
    Err(Error::bad_setting("required_probability", &given.brief(), "it is from 50 % to below 100 %"))
}

fn limit(node: &Node, required: f64) -> Result<Limit, Error> {
    known(node, "limit", LIMIT_KEYS)?;
    let need = |key: &'static str| node.get(key).ok_or_else(|| Error::bad_setting(key, "", "a limit needs it"));
    let on = need("on")?.text("on")?;
    let (name, result) =
        on.split_once('.').ok_or_else(|| Error::bad_setting("on", on, "write calculation.result, such as flue_analysis.co_co2_ratio"))?;
    let (_, field) = find(calculation(name)?.outputs(), result)?;
    // The basis of a limit is never guessed.
    let basis = field.kind.basis.word();
    let given_basis = node.get("basis").map_or(Ok(""), |n| n.text("basis"))?;
    if given_basis != basis {
        let why = if given_basis.is_empty() {
            format!("{on} stands on the {basis} basis: say basis = \"{basis}\" if the limit does too")
        } else if basis.is_empty() {
            format!("{on} has no basis, so a limit on the {given_basis} basis is for something else")
        } else {
            format!("{on} stands on the {basis} basis and cannot be judged by a limit on the {given_basis} basis")
        };
        return Err(Error::bad_setting("basis", given_basis, &why));
    }
    let (direction, value) = match (node.get("at_most"), node.get("at_least")) {
        (Some(value), None) => (Direction::AtMost, value),
        (None, Some(value)) => (Direction::AtLeast, value),
        _ => return Err(Error::bad_setting("at_most", "", "a limit has either at_most or at_least")),
    };
    let citation = need("citation")?.text("citation")?.trim();
    if citation.is_empty() {
        return Err(Error::bad_setting("citation", "", "a limit needs its source, which every verdict prints"));
    }
    Ok(Limit {
        calculation: name.to_string(),
        field,
        direction,
        value: field.read_node(value, Bare::Refused)?,
        required_probability: probability(node, required)?,
        citation: citation.to_string(),
        note: node.get("note").map_or(Ok(""), |n| n.text("note"))?.to_string(),
    })
}

#[cfg(all(test, feature = "text"))]
mod tests {
    use super::*;

    const HEAD: &str = "title = \"Invented\"\ndate = \"2026-01-01\"\n";

    fn read(head: &str, limit: &str) -> Result<Policy, Error> {
        Policy::read(&Node::from_toml(&format!("{head}[[limit]]\n{limit}"))?)
    }

    #[test]
    fn a_policy_is_read_as_written() {
        let policy = read(
            &format!("{HEAD}required_probability = \"90 %\"\n"),
            r#"
            on = "flue_analysis.carbon_monoxide_ratio"
            at_most = 0.004
            citation = "invented"
            [[limit]]
            on = "static_head.static_pressure"
            at_least = "0.5 bar"
            required_probability = "99 %"
            citation = "invented too"
            "#,
        )
        .unwrap();
        assert_eq!(policy.title, "Invented");
        let [most, least] = policy.limits.as_slice() else { panic!("{policy:?}") };
        assert_eq!((most.direction, most.value, most.required_probability), (Direction::AtMost, 0.004, 0.9));
        assert_eq!((least.direction, least.value, least.required_probability), (Direction::AtLeast, 5e4, 0.99));
        assert!(most.describe().starts_with("at most 0.004"));
        assert!(least.describe().starts_with("at least 0.5 bar"), "{}", least.describe());
        let on = |calculation, field| policy.on(calculation, field).count();
        assert_eq!(on("flue_analysis", "carbon_monoxide_ratio"), 1);
        assert_eq!(on("flue_analysis", "static_pressure") + on("static_head", "carbon_monoxide_ratio"), 0);
    }

    #[test]
    fn a_policy_that_does_not_say_what_it_rests_on_is_refused() {
        let good = "on = \"flue_analysis.carbon_monoxide_ratio\"\nat_most = 0.004\ncitation = \"invented\"\n";
        assert!(read(HEAD, good).is_ok());
        let with = |line: &str| read(HEAD, &format!("{good}{line}")).unwrap_err().to_string();
        let instead = |from: &str, to: &str| read(HEAD, &good.replace(from, to)).unwrap_err().to_string();
        for (error, word) in [
            (read("title = \"Invented\"\n", good).unwrap_err().to_string(), "date"),
            (read("title = \" \"\ndate = \"today\"\n", good).unwrap_err().to_string(), "title"),
            (read(&format!("{HEAD}limits = 3\n"), good).unwrap_err().to_string(), "limits"),
            (with("colour = \"red\""), "colour"),
            (with("at_least = 0.001"), "either at_most or at_least"),
            (with("required_probability = \"49 %\""), "from 50 % to below 100 %"),
            (with("required_probability = \"100 %\""), "from 50 % to below 100 %"),
            (instead("at_most = 0.004\n", ""), "either at_most or at_least"),
            (instead("\"invented\"", "\" \""), "a limit needs its source"),
            (instead("citation = \"invented\"\n", ""), "citation"),
            (instead("carbon_monoxide_ratio", "ratio"), "ratio"),
            (instead("flue_analysis.", ""), "write calculation.result"),
        ] {
            assert!(error.contains(word), "{error} does not speak of {word}");
        }
    }
}
