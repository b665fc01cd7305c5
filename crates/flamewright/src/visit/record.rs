//! The visit record.

use crate::catalogue::{CATALOGUE, Entry, calculation};
use crate::error::Error;
use crate::node::Node;
use crate::uncertainty::STATEMENTS;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// When readings were taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stage {
    /// Before anything was changed.
    AsFound,
    /// After the work.
    AsLeft,
    /// Done once.
    Checks,
}

impl Stage {
    /// All stages, in order.
    pub const ALL: [Self; 3] = [Self::AsFound, Self::AsLeft, Self::Checks];
    /// The key in the record.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::AsFound => "as_found",
            Self::AsLeft => "as_left",
            Self::Checks => "checks",
        }
    }
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::AsFound => "as found",
            Self::AsLeft => "as left",
            Self::Checks => "checked",
        }
    }
}

/// One calculation of a visit, as given.
#[derive(Clone)]
pub struct Part {
    /// When.
    pub stage: Stage,
    /// Which.
    pub entry: &'static dyn Entry,
    /// Tells parts with the same calculation apart; may be empty.
    pub label: String,
    /// The user's remark; may be empty.
    pub note: String,
    /// Instruments used, by name.
    pub instruments: Vec<String>,
    /// Fields and settings as given.
    pub given: Node,
}

/// An instrument: free text, and what it says of each field's uncertainty.
#[derive(Clone, Debug)]
pub struct Instrument {
    /// Its name in the record.
    pub name: String,
    /// What it is.
    pub description: String,
    /// Its serial number or mark.
    pub identity: String,
    /// Day of the last calibration, YYYY-MM-DD.
    pub calibrated: String,
    /// Day the next is due, YYYY-MM-DD.
    pub due: String,
    /// Statements by field name.
    pub statements: Node,
}

impl Instrument {
    /// The instrument in words.
    pub(crate) fn describe(&self) -> String {
        let mut text = self.name.replace('_', " ");
        for (label, value) in
            [("", &self.description), ("identity ", &self.identity), ("calibrated ", &self.calibrated), ("due ", &self.due)]
        {
            if !value.is_empty() {
                text += &format!(", {label}{value}");
            }
        }
        text
    }
}

impl Defect {
    /// The defect in words.
    pub(crate) fn describe(&self) -> String {
        let class = if self.class.is_empty() { "not classified" } else { &self.class };
        let remedy = if self.remedy.is_empty() { String::new() } else { format!(" → {}", self.remedy) };
        format!("{class}: {}{remedy}", self.text)
    }
}

/// A defect as the engineer records it. Its class is theirs; none is computed.
#[derive(Clone, Debug)]
pub struct Defect {
    /// What is wrong.
    pub text: String,
    /// The class given by the engineer, in the words of their procedure; may be empty.
    pub class: String,
    /// What was done or advised; may be empty.
    pub remedy: String,
}

/// A visit, read and checked for form.
#[derive(Clone)]
pub struct Visit {
    /// What the visit was.
    pub title: String,
    /// The day, YYYY-MM-DD.
    pub date: String,
    /// Why the visit was made.
    pub occasion: String,
    /// Whether the record is invented.
    pub invented: bool,
    /// Who, where and what, as free text: heading, then names and texts.
    pub particulars: Vec<(String, Vec<(String, String)>)>,
    /// Values used by every part that has such a field or setting.
    pub common: Node,
    /// Instruments used.
    pub instruments: Vec<Instrument>,
    /// The calculations, in the order given.
    pub parts: Vec<Part>,
    /// What was not done, and why.
    pub not_done: Vec<(String, String)>,
    /// Defects recorded.
    pub defects: Vec<Defect>,
    /// Remarks.
    pub remarks: Vec<String>,
}

/// The most parts that a visit may have: all are correlated with all, so time and memory grow with the square.
const MOST_PARTS: usize = 100;

const KEYS: &[&str] = &[
    "title",
    "date",
    "occasion",
    "invented",
    "engineer",
    "site",
    "appliance",
    "signatures",
    "common",
    "instruments",
    "as_found",
    "as_left",
    "checks",
    "not_done",
    "defects",
    "remarks",
];
const PARTICULARS: [&str; 4] = ["engineer", "site", "appliance", "signatures"];
/// What may be reported as not done besides the calculations of the catalogue.
pub(crate) const OBSERVATIONS: &[&str] = &["spillage", "flue_flow", "visual_inspection", "safety_device", "ventilation"];

/// A table of free texts.
fn texts(node: &Node, name: &str) -> Result<Vec<(String, String)>, Error> {
    node.entries(name)?.map(|(key, value)| Ok((key.to_string(), value.text(key)?.to_string()))).collect()
}

fn optional(table: &Node, key: &str) -> Result<String, Error> {
    table.get(key).map_or(Ok(""), |n| n.text(key)).map(ToString::to_string)
}

impl Visit {
    /// Reads a visit record. Every key must be known.
    ///
    /// # Errors
    /// The first thing that is unknown or of the wrong form, with its place. Values are read later,
    /// part by part, so that one bad value does not hide the rest.
    pub fn read(node: &Node) -> Result<Self, Error> {
        let mut empty = true;
        for (key, _) in node.entries("visit")? {
            empty = false;
            if !KEYS.contains(&key) {
                return Err(Error::unknown_name("visit", key, KEYS.iter().copied()));
            }
        }
        if empty {
            return Err(Error::bad_setting(
                "visit",
                "",
                "the record is empty: it needs at least a title, a date and one part such as [as_found.flue_analysis]",
            ));
        }
        let null = Node::Null;
        let section = |key: &str| node.get(key).unwrap_or(&null);
        let common = section("common").clone();
        for (key, _) in common.entries("common")? {
            let fields = || CATALOGUE.iter().flat_map(|e| e.inputs().iter().map(|f| f.name).chain(e.settings().iter().map(|s| s.name)));
            if !fields().any(|name| name == key) {
                return Err(Error::unknown_name("common", key, fields()));
            }
        }
        let mut instruments = Vec::new();
        for (name, table) in section("instruments").entries("instruments")? {
            instruments.push(instrument(name, table).map_err(|e| e.within(&format!("instruments.{name}")))?);
        }
        let mut parts = Vec::new();
        for stage in Stage::ALL {
            for (name, given) in section(stage.key()).entries(stage.key())? {
                let entry = calculation(name).map_err(|e| e.within(stage.key()))?;
                let list = match given {
                    Node::List(items) => items.as_slice(),
                    one => core::slice::from_ref(one),
                };
                if parts.len() + list.len() > MOST_PARTS {
                    return Err(Error::bad_setting(name, "", &format!("a visit has {MOST_PARTS} parts at most")).within(stage.key()));
                }
                for item in list {
                    let part = part(stage, entry, item, &instruments).map_err(|e| e.within(&format!("{}.{name}", stage.key())))?;
                    if parts.iter().any(|p: &Part| p.stage == stage && p.entry.info().name == name && p.label == part.label) {
                        return Err(Error::bad_setting(name, &part.label, "two parts of a stage need different labels").within(stage.key()));
                    }
                    parts.push(part);
                }
            }
        }
        let mut not_done = Vec::new();
        for (name, why) in texts(section("not_done"), "not_done")? {
            if !OBSERVATIONS.contains(&name.as_str()) {
                calculation(&name).map_err(|_| {
                    Error::unknown_name("not_done", &name, CATALOGUE.iter().map(|e| e.info().name).chain(OBSERVATIONS.iter().copied()))
                })?;
            }
            not_done.push((name, why));
        }
        let list = |key: &str| node.get(key).map_or(Ok([].as_slice()), |n| n.list(key));
        let defects = list("defects")?.iter().map(defect).collect::<Result<_, _>>()?;
        let remarks = list("remarks")?.iter().map(|n| n.text("remarks").map(ToString::to_string)).collect::<Result<_, _>>()?;
        let particulars = PARTICULARS
            .iter()
            .map(|&key| Ok((key.to_string(), texts(section(key), key)?)))
            .filter(|r| r.as_ref().is_ok_and(|(_, list)| !list.is_empty()) || r.is_err())
            .collect::<Result<_, Error>>()?;
        Ok(Self {
            title: optional(node, "title")?,
            date: optional(node, "date")?,
            occasion: optional(node, "occasion")?,
            invented: node.get("invented").map_or(Ok(false), |n| n.flag("invented"))?,
            particulars,
            common,
            instruments,
            parts,
            not_done,
            defects,
            remarks,
        })
    }
}

fn defect(node: &Node) -> Result<Defect, Error> {
    for (key, _) in node.entries("defects")? {
        if !["text", "class", "remedy"].contains(&key) {
            return Err(Error::unknown_name("defects", key, ["text", "class", "remedy"].into_iter()));
        }
    }
    Ok(Defect { text: optional(node, "text")?, class: optional(node, "class")?, remedy: optional(node, "remedy")? })
}

fn instrument(name: &str, table: &Node) -> Result<Instrument, Error> {
    const TEXTS: &[&str] = &["description", "identity", "calibrated", "due"];
    let mut statements = Vec::new();
    for (key, value) in table.entries(name)? {
        if TEXTS.contains(&key) {
            continue;
        }
        let fields = || CATALOGUE.iter().flat_map(|e| e.inputs().iter().map(|f| f.name));
        if !fields().any(|f| f == key) {
            return Err(Error::unknown_name(name, key, TEXTS.iter().copied().chain(fields())));
        }
        for (statement, _) in value.entries(key)? {
            if !STATEMENTS.contains(&statement) {
                return Err(Error::unknown_name(key, statement, STATEMENTS.iter().copied()));
            }
        }
        statements.push((key.to_string(), value.clone()));
    }
    Ok(Instrument {
        name: name.to_string(),
        description: optional(table, "description")?,
        identity: optional(table, "identity")?,
        calibrated: optional(table, "calibrated")?,
        due: optional(table, "due")?,
        statements: Node::Table(statements),
    })
}

fn part(stage: Stage, entry: &'static dyn Entry, item: &Node, known: &[Instrument]) -> Result<Part, Error> {
    let mut given = Vec::new();
    let mut instruments = Vec::new();
    for (key, value) in item.entries(entry.info().name)? {
        match key {
            "label" | "note" => {}
            "instruments" => {
                for name in value.list("instruments")? {
                    let name = name.text("instruments")?;
                    if !known.iter().any(|i| i.name == name) {
                        return Err(Error::unknown_name("instruments", name, known.iter().map(|i| i.name.as_str())));
                    }
                    instruments.push(name.to_string());
                }
            }
            _ => given.push((key.to_string(), value.clone())),
        }
    }
    let given = Node::Table(given);
    crate::catalogue::split(entry, &given)?;
    Ok(Part { stage, entry, label: optional(item, "label")?, note: optional(item, "note")?, instruments, given })
}
