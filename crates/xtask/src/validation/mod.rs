//! Every row of the reference tables against the catalogue, called by name as all faces call it.
//!
//! How the rows of a kind map to a calculation is said once, in `checks.toml` beside the tables. A
//! row, a column or an input that nothing there mentions stops the making.

mod check;
mod expression;
pub(crate) mod page;
pub(crate) mod peers;
pub(crate) mod report;

use check::{Check, Mapping, Table};
use flamewright::catalogue::{Bare, CATALOGUE, Outcome, evaluate};
use flamewright::node::Node;
use flamewright::quantity::{ReadUnit, read_unit};
use flamewright::uncertainty::{Covariance, first_order};
use flamewright_reference::{Row, rows};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::OnceLock;

/// The folders of `tests/reference`.
pub(crate) const FOLDERS: [&str; 3] = ["combustion", "heat", "trade"];

/// One reference value and what the library makes of it.
pub(crate) struct Case {
    pub calculation: String,
    /// File below `tests/reference`, and line.
    pub file: String,
    pub line: String,
    /// Another table whose row goes with this one.
    pub joined: Option<String>,
    pub name: String,
    /// The column or output of the row.
    pub quantity: String,
    /// What was computed, if it is more than the field of that name.
    pub sum: String,
    pub unit: String,
    pub reference: f64,
    pub computed: f64,
    pub tolerance: f64,
    /// How the mapping words the tolerance, where one wording holds for the whole column.
    pub allowed: String,
    pub source: String,
}

impl Case {
    pub(crate) fn deviation(&self) -> f64 {
        (self.computed - self.reference).abs()
    }
    /// Deviation over tolerance; none where the value has to be met exactly and is.
    pub(crate) fn share(&self) -> f64 {
        let deviation = self.deviation();
        if deviation == 0.0 { 0.0 } else { deviation / self.tolerance }
    }
    /// Written so that not-a-number is outside.
    pub(crate) fn within(&self) -> bool {
        self.deviation() <= self.tolerance
    }
}

/// A reference value that is not compared, and why.
pub(crate) struct Unused {
    pub file: String,
    pub what: String,
    pub rows: usize,
    pub reason: String,
}

#[derive(Default)]
pub(crate) struct Validation {
    pub cases: Vec<Case>,
    pub unused: Vec<Unused>,
}

/// The validation, made once in a run.
pub(crate) fn validation() -> Result<&'static Validation, String> {
    static MADE: OnceLock<Result<Validation, String>> = OnceLock::new();
    MADE.get_or_init(make).as_ref().map_err(Clone::clone)
}

fn make() -> Result<Validation, String> {
    let (mut made, mut wrong) = (Validation::default(), Vec::new());
    for folder in FOLDERS {
        let place = super::steps::root().join("tests/reference").join(folder);
        let path = place.join("checks.toml");
        let toml = std::fs::read_to_string(&path).map_err(|e| format!("{}: {e}", path.display()))?;
        let mapping = check::read(&toml).map_err(|e| format!("{folder}/checks.toml: {e}"))?;
        let mut files: Vec<String> = std::fs::read_dir(&place)
            .map_err(|e| format!("{folder}: {e}"))?
            .flatten()
            .filter_map(|entry| entry.file_name().into_string().ok())
            .filter(|name| is_table(name))
            .collect();
        files.sort();
        for file in &files {
            if !mapping.tables.iter().any(|t| t.name == *file) {
                wrong.push(format!("{folder}/checks.toml does not speak of {file}"));
            }
        }
        for table in &mapping.tables {
            of_table(folder, table, &mapping, &mut made, &mut wrong);
        }
    }
    if !wrong.is_empty() {
        return Err(format!("{} faults:\n{}", wrong.len(), wrong.join("\n")));
    }
    unchecked(&made)?;
    Ok(made)
}

/// Every calculation has an outside check or declares why none exists, and names no table that does not check it.
fn unchecked(made: &Validation) -> Result<(), String> {
    let mut wrong = Vec::new();
    for entry in CATALOGUE {
        let info = entry.info();
        let cases = made.cases.iter().filter(|c| c.calculation == info.name);
        let used: BTreeSet<&str> = cases.flat_map(|c| std::iter::once(c.file.as_str()).chain(c.joined.as_deref())).collect();
        let named: BTreeSet<&str> =
            named_tables(info.checked_against).into_iter().filter(|t| FOLDERS.iter().any(|f| t.starts_with(f))).collect();
        if used.is_empty() && info.checked_against.len() < 20 {
            wrong.push(format!("{} has no outside check and does not say why none exists", info.name));
        }
        if !used.is_empty() && named.is_empty() {
            wrong.push(format!("{} is checked against {used:?} and does not say so", info.name));
        }
        for table in named.difference(&used) {
            wrong.push(format!("{} says it is checked against {table}, which no check uses for it", info.name));
        }
    }
    if wrong.is_empty() { Ok(()) } else { Err(wrong.join("\n")) }
}

fn is_table(name: &str) -> bool {
    std::path::Path::new(name).extension().is_some_and(|extension| extension == "csv")
}

/// The reference tables that a text names.
pub(crate) fn named_tables(text: &str) -> BTreeSet<&str> {
    text.split(|c: char| !(c.is_ascii_alphanumeric() || "/_.-".contains(c)))
        .map(|word| word.trim_end_matches('.'))
        .filter(|word| is_table(word))
        .collect()
}

/// A row with what its check makes of it.
struct Reading<'a> {
    row: &'a Row,
    trade: bool,
    inputs: BTreeMap<String, (String, String)>,
    joined: Option<Row>,
    check: &'a Check,
    before: Vec<(&'a str, Outcome)>,
    used: std::cell::RefCell<BTreeSet<String>>,
}

/// The spelling of a unit in the tables, as the library reads it.
fn spelt(unit: &str) -> String {
    match unit {
        "1" | "-" | "text" => String::new(),
        // The reference condition is said by the calculation's own setting.
        other => other.replace("(0C)", "").replace("uPa", "1e-6*Pa").replace("(1000 Btu/h)", "(1000*Btu/h)"),
    }
}

fn unit(text: &str) -> Result<ReadUnit, String> {
    let spelt = spelt(text);
    if let Some(rest) = spelt.strip_prefix("1e-6*") {
        let read = unit(rest)?;
        return Ok(ReadUnit { factor: read.factor * 1e-6, ..read });
    }
    read_unit(&spelt).or_else(|| read_unit(&spelt.replace('.', "*"))).ok_or_else(|| format!("unit \"{text}\" is not known"))
}

impl Reading<'_> {
    fn has(&self, name: &str) -> bool {
        self.inputs.contains_key(name) || self.rows().any(|row| row.columns().any(|column| column == name))
    }
    /// The row, and the one that goes with it.
    fn rows(&self) -> impl Iterator<Item = &Row> {
        std::iter::once(self.row).chain(&self.joined)
    }
    /// The text of an input or a column, if the row holds one; and its unit.
    fn cell(&self, name: &str) -> Option<(String, String)> {
        self.used.borrow_mut().insert(name.to_owned());
        if let Some((value, unit)) = self.inputs.get(name) {
            return Some((value.clone(), unit.clone()));
        }
        let row = self.rows().find(|row| row.columns().any(|column| column == name))?;
        let text = row.text(name).trim();
        (!text.is_empty()).then(|| (text.to_owned(), String::new()))
    }
    fn number(&self, name: &str) -> Result<f64, String> {
        if let Some((place, field)) = name.split_once('.')
            && let Some((_, outcome)) = self.before.iter().find(|(known, _)| *known == place)
        {
            return outcome.get(field).ok_or_else(|| format!("{place} has no {field}"));
        }
        let (value, _) = self.cell(name).ok_or_else(|| format!("the row has no {name}"))?;
        value.parse().map_err(|_| format!("{name} is no number: {value}"))
    }
    /// Fills the row into a text; none where the row leaves a value out.
    fn fill(&self, node: &Node) -> Result<Option<Node>, String> {
        let text = match node {
            Node::List(items) => {
                // A table of which the row leaves a part out is left out of a list.
                let whole = |item: &Node, filled: &Node| match (item, filled) {
                    (Node::Table(asked), Node::Table(got)) => asked.len() == got.len(),
                    _ => true,
                };
                let mut list = Vec::new();
                for item in items {
                    list.extend(self.fill(item)?.filter(|filled| whole(item, filled)));
                }
                return Ok(Some(Node::List(list)));
            }
            Node::Table(entries) => {
                let mut table = Vec::new();
                for (key, value) in entries {
                    if let (Some(Node::Text(key)), Some(value)) = (self.fill(&Node::Text(key.clone()))?, self.fill(value)?) {
                        table.push((key, value));
                    }
                }
                return Ok(Some(Node::Table(table)));
            }
            Node::Text(text) => text,
            other => return Ok(Some(other.clone())),
        };
        let (mut out, mut rest) = (String::new(), text.as_str());
        while let Some((before, after)) = rest.split_once('{') {
            let (inside, after) = after.split_once('}').ok_or_else(|| format!("{text}: a brace is not closed"))?;
            out.push_str(before);
            rest = after;
            let (inside, may_miss) = inside.strip_prefix('?').map_or((inside, false), |name| (name, true));
            if !inside.contains(|c: char| "+-*/ ().".contains(c)) || self.has(inside) || may_miss {
                if !self.trade && !self.has(inside) {
                    return Err(format!("{text}: the table has no {inside}"));
                }
                let Some((value, unit)) = self.cell(inside) else { return Ok(None) };
                let whole = out.is_empty() && rest.is_empty();
                let dictionary = self.check.words.iter().find(|(column, _)| column == inside).map_or([].as_slice(), |(_, words)| words);
                match dictionary.iter().find(|(word, _)| *word == value) {
                    Some((_, Node::Text(word))) => {
                        out.push_str(word);
                        continue;
                    }
                    Some((_, node)) if whole => return Ok(Some(node.clone())),
                    Some(_) => return Err(format!("{text}: a table cannot stand within a text")),
                    None => {}
                }
                let unit = spelt(&unit).replace('.', "*");
                if whole && self.trade && value.contains('/') {
                    return Ok(Some(Node::List(value.split('/').map(|v| Node::Text(format!("{v} {unit}"))).collect())));
                }
                // A trade row brings its unit; where the text goes on, the text says the unit.
                if rest.is_empty() && !unit.is_empty() && self.inputs.contains_key(inside) {
                    let si = unit.strip_prefix("1e-6*").map(|rest| format!("{value}e-6 {rest}"));
                    out.push_str(&si.unwrap_or_else(|| format!("{value} {unit}")));
                } else {
                    out.push_str(&value);
                }
            } else {
                let names_missing = std::cell::Cell::new(false);
                let look = |name: &str| {
                    if self.has(name) && self.cell(name).is_none() {
                        names_missing.set(true);
                        return Ok(f64::NAN);
                    }
                    self.number(name)
                };
                let value = expression::value(inside, &look)?;
                if names_missing.get() || value.is_nan() {
                    return Ok(None);
                }
                out.push_str(&format!("{value:?}"));
            }
        }
        out.push_str(rest);
        Ok(Some(Node::Text(out)))
    }
    /// A text for readers, with the columns as the table writes them.
    fn told(&self, text: &str) -> String {
        let mut out = text.to_owned();
        for column in self.row.columns() {
            out = out.replace(&format!("{{{column}}}"), self.row.text(column));
        }
        out
    }
    fn call(&self, calculation: &str, given: &[(String, Node)]) -> Result<Outcome, String> {
        let filled = self.fill(&Node::Table(given.to_vec()))?.unwrap_or_default();
        evaluate(calculation, &filled, Bare::Refused).map_err(|e| format!("{calculation}: {e}"))
    }
    fn tolerance(&self, text: Option<&str>, value: f64) -> Result<f64, String> {
        let Some(text) = text else {
            if !self.trade {
                return Err("no tolerance is said".to_owned());
            }
            return Ok(self.row.maybe("tol_abs").or_else(|| self.row.maybe("tol_rel").map(|r| r * value.abs())).unwrap_or(0.0));
        };
        let mut widest = 0.0_f64;
        for part in text.split(" or ") {
            let filled = self.fill(&Node::Text(part.to_owned()))?;
            let Some(Node::Text(part)) = filled else { return Err(format!("the row holds no tolerance for {part}")) };
            let word = part.split_whitespace().next().unwrap_or("");
            let number: f64 = word.parse().map_err(|_| format!("tolerance {part}"))?;
            widest = widest.max(match part.trim_start().strip_prefix(word).unwrap_or("").trim().split(' ').next() {
                Some("abs") => number,
                Some("%") => number / 100.0 * value.abs(),
                _ => number * value.abs(),
            });
        }
        Ok(widest)
    }
}

/// What the names of a result's sum stand for: an output; `given.x`, an input of the row; `input.x`,
/// an input of the calculation; `u.x` and `r.x.y`, uncertainty and correlation of outputs; a calculation before.
fn compute(reading: &Reading, outcome: Option<&Outcome>, sum: &str) -> Result<f64, String> {
    let propagated = || -> Result<_, String> {
        let outcome = outcome.ok_or("nothing is computed")?;
        let inputs = outcome.prepared.entry().inputs();
        let mut standard = vec![0.0; inputs.len()];
        for (name, node) in &reading.check.uncertain {
            let place = inputs.iter().position(|f| f.name == name).ok_or_else(|| format!("no input {name}"))?;
            let Some(Node::Text(text)) = reading.fill(node)? else { return Err(format!("the row does not say {name}")) };
            let (number, symbol) = text.split_once(' ').unwrap_or((&text, ""));
            let number: f64 = number.parse().map_err(|_| format!("{name}: {text}"))?;
            standard[place] = number * unit(symbol)?.factor / 3.0_f64.sqrt();
        }
        Ok(first_order(&*outcome.prepared, &outcome.input, &Covariance::independent(&standard)))
    };
    let look = |name: &str| -> Result<f64, String> {
        let place = |field: &str| {
            let fields = outcome.ok_or("nothing is computed")?.prepared.entry().outputs();
            fields.iter().position(|f| f.name == field).ok_or_else(|| format!("no result {field}"))
        };
        match name.split_once('.') {
            Some(("given", input)) => {
                let (value, symbol) = reading.cell(input).ok_or_else(|| format!("the row has no {input}"))?;
                let read = unit(&symbol)?;
                Ok(value.parse::<f64>().map_err(|e| format!("{input}: {e}"))? * read.factor + read.offset)
            }
            Some(("input", field)) => {
                let outcome = outcome.ok_or("nothing is computed")?;
                let inputs = outcome.prepared.entry().inputs();
                let place = inputs.iter().position(|f| f.name == field).ok_or_else(|| format!("no input {field}"))?;
                Ok(outcome.input[place])
            }
            Some(("u", field)) => Ok(propagated()?.standard(place(field)?)),
            Some(("r", fields)) => {
                let (first, second) = fields.split_once('.').ok_or("r needs two results")?;
                Ok(propagated()?.covariance().correlation(place(first)?, place(second)?))
            }
            Some(_) => reading.number(name),
            None => Ok(outcome.ok_or("nothing is computed")?.output[place(name)?]),
        }
    };
    expression::value(sum, &look)
}

fn of_table(folder: &str, table: &Table, mapping: &Mapping, made: &mut Validation, wrong: &mut Vec<String>) {
    let file = format!("{folder}/{}", table.name);
    let mut left: BTreeMap<(String, String), usize> = BTreeMap::new();
    for row in rows(&file) {
        let trade = row.columns().any(|c| c == "inputs") && row.columns().any(|c| c == "tol_rel");
        let line = row.place.rsplit(':').next().unwrap_or("").to_owned();
        if let Some(found) = mapping.left.iter().find(|l| l.takes(&table.name, &row)) {
            let what = if trade { row.text("kind").to_owned() } else { "whole rows".to_owned() };
            *left.entry((what, found.reason.clone())).or_default() += 1;
            continue;
        }
        let checks: Vec<&Check> = mapping.checks.iter().filter(|c| c.takes(&table.name, &row)).collect();
        let mut spoken: BTreeSet<String> = table.left.iter().map(|(column, _)| column.clone()).collect();
        let named = |column: &&str| [&table.case, &table.source].iter().any(|text| text.contains(&format!("{{{column}}}")));
        spoken.extend(row.columns().filter(named).map(str::to_owned));
        if table.source.is_empty() {
            spoken.insert("source".to_owned());
        }
        let mut failed = false;
        for check in &checks {
            spoken.extend(check.left.iter().map(|(column, _)| column.clone()));
            spoken.extend(check.choosing().map(str::to_owned));
            match of_row(&file, &line, table, &row, trade, check) {
                Ok((cases, used)) => {
                    spoken.extend(used);
                    made.cases.extend(cases);
                }
                Err(why) => {
                    wrong.push(format!("{}: {}: {why}", row.place, check.calculation));
                    failed = true;
                }
            }
        }
        if failed {
            continue;
        }
        let inputs: Vec<String> = if trade { row.inputs().into_keys().collect() } else { Vec::new() };
        let output = trade.then(|| row.text("output").to_owned());
        let columns = row.columns().filter(|_| !trade).map(str::to_owned);
        for name in inputs.into_iter().chain(output).chain(columns) {
            if !spoken.contains(&name) && (trade || !row.text(&name).is_empty()) {
                wrong.push(format!("{}: nothing uses {name} ({})", row.place, if trade { row.text("kind") } else { "a column" }));
            }
        }
        let reasons = table.left.iter().chain(checks.iter().flat_map(|c| &c.left));
        for (column, reason) in reasons {
            let there =
                if trade { row.text("output") == column } else { row.columns().any(|c| c == column) && !row.text(column).is_empty() };
            if there {
                *left.entry((column.clone(), reason.clone())).or_default() += 1;
            }
        }
    }
    for ((what, reason), rows) in left {
        made.unused.push(Unused { file: file.clone(), what, rows, reason });
    }
}

/// The cases of a row by one check, and the names of the row it uses.
fn of_row(file: &str, line: &str, table: &Table, row: &Row, trade: bool, check: &Check) -> Result<(Vec<Case>, BTreeSet<String>), String> {
    let mut reading = Reading {
        row,
        trade,
        inputs: if trade { row.inputs() } else { BTreeMap::new() },
        joined: check.join.as_ref().and_then(|join| {
            let place = format!("{}/{}", file.split('/').next().unwrap_or(""), join.table);
            rows(&place).into_iter().find(|other| other.text(&join.with) == row.text(&join.on))
        }),
        check,
        before: Vec::new(),
        used: std::cell::RefCell::default(),
    };
    if let Some(join) = &check.join {
        if reading.joined.is_none() {
            return Err(format!("{} holds no row for {}", join.table, row.text(&join.on)));
        }
        reading.used.borrow_mut().insert(join.on.clone());
    }
    for (name, call) in &check.before {
        let outcome = reading.call(&call.calculation, &call.given)?;
        reading.before.push((name, outcome));
    }
    for (_, node) in &check.uncertain {
        reading.fill(node)?;
    }
    for (_, expected) in &check.results {
        let names = expected.sum.split(|c: char| !(c.is_alphanumeric() || "._".contains(c)));
        reading.used.borrow_mut().extend(names.filter_map(|name| name.strip_prefix("given.")).map(str::to_owned));
    }
    // Units are read without any calculation.
    let outcome = if check.calculation == "units" { None } else { Some(reading.call(&check.calculation, &check.given)?) };
    let mut cases = Vec::new();
    for (column, expected) in &check.results {
        let text = if trade {
            if row.text("output") != column {
                continue;
            }
            row.text("value")
        } else {
            if !row.columns().any(|c| c == column) {
                return Err(format!("the table has no {column}"));
            }
            row.text(column)
        };
        reading.used.borrow_mut().insert(column.clone());
        if text.trim().is_empty() {
            continue;
        }
        let word = check.words.iter().find(|(c, _)| c == column || trade && c == "value");
        let word =
            word.and_then(|(_, words)| words.iter().find(|(w, _)| w == text)).map_or(text, |(_, node)| node.text("word").unwrap_or(text));
        let reference: f64 = word.trim().parse().map_err(|_| format!("{column} is no number: {text}"))?;
        let shown = match &expected.unit {
            Some(unit) => match reading.fill(&Node::Text(unit.clone()))? {
                Some(Node::Text(filled)) => filled,
                _ => return Err(format!("the row does not say the unit {unit}")),
            },
            None if trade => row.text("unit").to_owned(),
            None => String::new(),
        };
        let read = unit(&shown)?;
        let single = outcome.as_ref().and_then(|o| o.prepared.entry().outputs().iter().find(|f| f.name == expected.sum));
        if let Some(field) = single
            && read.dimension != field.kind.dimension
        {
            return Err(format!("{column}: {} is not measured in {shown}", expected.sum));
        }
        let computed = (compute(&reading, outcome.as_ref(), &expected.sum)? - read.offset) / read.factor;
        let tolerance = reading.tolerance(expected.tolerance.as_deref(), reference).map_err(|e| format!("{column}: {e}"))?;
        let own = |c: &str| if row.columns().any(|known| known == c) { row.text(c).to_owned() } else { String::new() };
        let source = if table.source.is_empty() {
            let (class, source) = (own("source_class"), own("source"));
            if class.is_empty() { source } else { format!("{class}: {source}") }
        } else {
            reading.told(&table.source)
        };
        let name = if trade { row.text("case_id").to_owned() } else { reading.told(&table.case) };
        cases.push(Case {
            calculation: check.calculation.clone(),
            file: file.to_owned(),
            line: line.to_owned(),
            joined: check.join.as_ref().map(|join| format!("{}/{}", file.split('/').next().unwrap_or(""), join.table)),
            name: if name.is_empty() { format!("line {line}") } else { name },
            quantity: column.clone(),
            sum: expected.sum.clone(),
            unit: spelt(&shown),
            reference,
            computed,
            tolerance,
            allowed: expected.tolerance.clone().filter(|text| !text.contains('{')).unwrap_or_default(),
            source,
        });
    }
    let used = reading.used.into_inner();
    Ok((cases, used))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The faults and cases of one table by a mapping written here.
    fn tried(toml: &str) -> (Validation, Vec<String>) {
        let mapping = check::read(toml).unwrap_or_else(|e| panic!("{e}"));
        let (mut made, mut wrong) = (Validation::default(), Vec::new());
        for table in &mapping.tables {
            of_table("trade", table, &mapping, &mut made, &mut wrong);
        }
        (made, wrong)
    }

    fn gauge(given: &str, result: &str) -> String {
        format!(
            "[tables.\"pressure.csv\"]\n[[left]]\ntable = \"pressure.csv\"\nrows = {{ kind = \"!inclined_manometer\" }}\nreason = \"not here\"\n\
             [[check]]\ntable = \"pressure.csv\"\nrows = {{ kind = \"inclined_manometer\" }}\ncalculation = \"inclined_gauge\"\n\
             given = {{ {given} }}\nresults = {{ p = \"{result}\" }}\n"
        )
    }

    #[test]
    fn what_no_check_uses_and_what_does_not_agree_is_found() {
        let whole = "length = \"{length}\", angle = \"{angle}\", relative_density = \"{relative_density}\"";
        let (made, wrong) = tried(&gauge(whole, "pressure"));
        assert_eq!((made.cases.len(), wrong.len()), (2, 0), "{wrong:?}");
        assert!(made.cases.iter().all(Case::within) && made.unused.iter().all(|unused| unused.reason == "not here"));
        // An input that the mapping forgets, and an output.
        let (_, wrong) = tried(&gauge("length = \"{length}\", angle = \"{angle}\"", "pressure"));
        assert!(wrong.len() == 2 && wrong[0].contains("nothing uses relative_density"), "{wrong:?}");
        let (_, wrong) = tried(&gauge(whole, "pressure").replace("p = ", "q = "));
        assert!(wrong.iter().all(|fault| fault.contains("nothing uses p")) && wrong.len() == 2, "{wrong:?}");
        // Another dimension, an unknown result, a refused input, and a value that is off.
        for (given, result, fault) in [
            (whole, "level_difference", "not measured in"),
            (whole, "presure", "no result presure"),
            ("length = \"{length}\"", "pressure", "angle"),
        ] {
            let (_, wrong) = tried(&gauge(given, result));
            assert!(wrong[0].contains(fault), "{wrong:?}");
        }
        let (made, _) = tried(&gauge(whole, "1.001 * pressure"));
        assert!(made.cases.iter().all(|case| !case.within() && case.share() > 1.0));
    }

    #[test]
    fn not_a_number_is_outside() {
        let (mut made, _) =
            tried(&gauge("length = \"{length}\", angle = \"{angle}\", relative_density = \"{relative_density}\"", "pressure"));
        made.cases[0].computed = f64::NAN;
        assert!(!made.cases[0].within());
    }
}
