//! The calculation `leak_class`: a leak among classes that the caller supplies.

use super::{CAUTION_COMPETENCE, CAUTION_SMELL, CAUTION_TIGHTNESS};
use crate::Error;
use crate::calculation::{Calculation, Column, Context, Form, Info, Raised, Rule, Setting, Settings, Source, Table};
use crate::quantity::types::Ratio;
use crate::quantity::units::*;
use crate::quantity::{AtReference, GasFlow, Value};
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};
use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;

/// A leak to be classed.
#[record]
pub struct LeakToClass {
    /// Leak at the conditions that the classes are stated for.
    #[field("\\dot V", LITRE_PER_HOUR, 0.0..=1e6, usual = 0.0..=100.0)]
    pub leak_rate: GasFlow<AtReference>,
    /// Least leak that the test could show.
    #[field("\\dot V_{min}", LITRE_PER_HOUR, 0.0..=1e6, absent = "not stated")]
    pub smallest_detectable_leak: GasFlow<AtReference>,
}

/// The class of the leak; its name stands in the table.
#[record]
pub struct LeakClassFound {
    /// Number of the class in the caller's list, from 1.
    #[field("N", ONE)]
    pub class_number: Ratio,
    /// Leak at which the class begins; it belongs to the class.
    #[field("\\dot V_{from}", LITRE_PER_HOUR)]
    pub class_from: GasFlow<AtReference>,
    /// Leak at which the next class begins.
    #[field("\\dot V_{below}", LITRE_PER_HOUR, absent = "the last class has no end")]
    pub class_below: GasFlow<AtReference>,
}

/// Classes of leaks by the caller's policy. No class is built in.
#[derive(Clone, Debug)]
pub struct LeakClass {
    /// Name of each class and the leak (m3/s) at which it begins, rising from nought.
    classes: Vec<(String, f64)>,
}

/// Most classes of one policy.
const MOST_CLASSES: usize = 20;

impl LeakClass {
    /// Classes by name and the leak at which each begins: nought for the first, then rising.
    ///
    /// # Errors
    /// If they do not begin at nought or do not rise.
    pub fn new(classes: Vec<(String, GasFlow<AtReference>)>) -> Result<Self, Error> {
        let classes: Vec<(String, f64)> = classes.into_iter().map(|(name, from)| (name, from.si())).collect();
        let rising = classes.windows(2).all(|pair| matches!(pair, [(_, one), (_, other)] if one < other));
        match classes.first() {
            Some(&(_, 0.0)) if rising && classes.len() <= MOST_CLASSES => Ok(Self { classes }),
            _ => Err(Error::bad_setting(
                "classes",
                "",
                "1 to 20 classes are needed, the first from 0, each from a greater leak than the last",
            )),
        }
    }

    fn position(&self, leak: f64) -> usize {
        self.classes.iter().rposition(|(_, from)| leak >= *from).unwrap_or(0)
    }
}

impl Context for LeakClass {
    const SETTINGS: &'static [Setting] = &[Setting {
        name: "classes",
        doc: "The classes of the local rule: a list of tables, each with name and from (the leak at which it begins, which belongs to it; 0 for the first).",
        form: Form::Structure,
        default: None,
    }];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let list = settings.need("classes")?.list("classes")?;
        if list.len() > MOST_CLASSES {
            return Err(Error::bad_setting("classes", "", "1 to 20 classes are needed"));
        }
        let mut classes = Vec::with_capacity(list.len());
        for node in list {
            let name = node.get("name").ok_or_else(|| Error::missing("name", "the name of each class"))?.text("name")?;
            let from = node.get("from").ok_or_else(|| Error::missing("from", "the leak at which each class begins"))?.quantity("from")?;
            classes.push((name.to_string(), from));
        }
        Self::new(classes)
    }
}

rules! {
    notice CLASS_NOT_PROVEN on "smallest_detectable_leak": "the test could not have shown a leak at the upper end of this class: the leak may belong to a worse one";
}

impl Calculation for LeakClass {
    type Input = LeakToClass;
    type Output = LeakClassFound;
    const INFO: Info = Info {
        name: "leak_class",
        title: "Class of a leak",
        summary: "The class of a leak rate in a list of classes that the caller takes from the local rule.",
        sources: &[Source::new("The caller's rule", "classes")],
        accuracy: "A comparison without rounding; where the leak is uncertain, judge it with its uncertainty.",
        cautions: &[CAUTION_TIGHTNESS, CAUTION_SMELL, CAUTION_COMPETENCE],
        checked_against: "trade/tightness.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn review(&self, input: &LeakToClass, output: &LeakClassFound) -> Raised {
        Raised::NONE.when(CLASS_NOT_PROVEN, input.smallest_detectable_leak.si() >= output.class_below.si())
    }

    fn compute<W: Working>(&self, input: &LeakToClass, working: &mut W) -> LeakClassFound {
        let unknown = 0.0 * input.leak_rate.si();
        let position = self.position(input.leak_rate.si());
        let from = |position: usize| self.classes.get(position).map_or(f64::NAN, |&(_, from)| from) + unknown;
        step!(working, let class_number: "N" = Ratio::from_si(position as f64 + 1.0 + unknown), "the caller's rule");
        LeakClassFound { class_number, class_from: GasFlow::from_si(from(position)), class_below: GasFlow::from_si(from(position + 1)) }
    }

    fn tables(&self, input: &LeakToClass) -> Vec<Table> {
        let position = self.position(input.leak_rate.si());
        let found = (0..self.classes.len()).map(|place| f64::from(u8::from(place == position)));
        vec![Table {
            name: "classes",
            row_names: self.classes.iter().map(|(name, _)| name.clone()).collect(),
            columns: vec![
                Column { name: "from".into(), unit: &LITRE_PER_HOUR, values: self.classes.iter().map(|&(_, from)| from).collect() },
                Column { name: "applies".into(), unit: &ONE, values: found.collect() },
            ],
        }]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::node::Node;
    use flamewright_reference::rows_of_kind;

    fn classes() -> Node {
        let class = |name: &str, from: &str| Node::from([("name", name), ("from", from)]);
        Node::List(vec![class("unrestricted", "0 L/h"), class("reduced", "1 L/h"), class("none", "5 L/h")])
    }

    #[test]
    fn classes_of_a_policy_agree_with_the_table() {
        for row in rows_of_kind("trade/tightness.csv", "policy_example_DE") {
            let (value, unit) = row.inputs()["leak"].clone();
            let given = Node::from([("classes", classes()), ("leak_rate", Node::Text(alloc::format!("{value} {unit}")))]);
            let outcome = evaluate("leak_class", &given, Bare::Refused).unwrap();
            let table = &outcome.prepared.tables(&outcome.input)[0];
            let place = table.columns[1].values.iter().position(|applies| *applies == 1.0).unwrap();
            assert_eq!(table.row_names[place], row.text("value"), "{}", row.place);
            assert_eq!(outcome.get("class_number").unwrap(), place as f64 + 1.0);
        }
    }

    #[test]
    fn a_blunt_test_does_not_prove_a_class() {
        let given =
            Node::from([("classes", classes()), ("leak_rate", Node::from("0.2 L/h")), ("smallest_detectable_leak", Node::from("1.5 L/h"))]);
        let outcome = evaluate("leak_class", &given, Bare::Refused).unwrap();
        assert!(outcome.notices.iter().any(|notice| notice.code == "CLASS_NOT_PROVEN"));
        let unsorted = Node::List(vec![Node::from([("name", "a"), ("from", "1 L/h")])]);
        assert!(evaluate("leak_class", &Node::from([("classes", unsorted), ("leak_rate", Node::from("1 L/h"))]), Bare::Refused).is_err());
    }
}
