//! The validation as Markdown, and the summaries that both forms of the report show.

use super::{Case, Validation, named_tables, peers, validation};
use flamewright::catalogue::CATALOGUE;
use std::collections::BTreeMap;
use std::fmt::Write;

/// Cases taken together.
pub(crate) struct Summary {
    pub cases: usize,
    pub share: f64,
    pub relative: f64,
}

pub(crate) fn summary<'a>(cases: impl Iterator<Item = &'a Case>) -> Summary {
    let mut out = Summary { cases: 0, share: 0.0, relative: 0.0 };
    for case in cases {
        out.cases += 1;
        out.share = out.share.max(case.share());
        if case.reference.abs() > case.tolerance {
            out.relative = out.relative.max(case.deviation() / case.reference.abs());
        }
    }
    out
}

/// Rounding noise is not shown, so that it says nothing where there is nothing to say.
pub(crate) fn small(value: f64) -> String {
    if value == 0.0 {
        "0".to_owned()
    } else if value < 1e-9 {
        "<1e-9".to_owned()
    } else {
        format!("{value:.1e}")
    }
}

pub(crate) fn share(value: f64) -> String {
    if value < 0.0005 { "0.000".to_owned() } else { format!("{value:.3}") }
}

/// Seven digits, without what they do not need.
pub(crate) fn number(value: f64) -> String {
    if !value.is_finite() {
        return value.to_string();
    }
    let digits = value.abs().log10().floor();
    if value == 0.0 {
        "0".to_owned()
    } else if (-4.0..7.0).contains(&digits) {
        let text = format!("{value:.*}", (6.0 - digits).max(0.0) as usize);
        if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
    } else {
        format!("{value:.6e}")
    }
}

pub(crate) fn folders(cases: &[Case]) -> Vec<(&'static str, Vec<&Case>)> {
    super::FOLDERS.iter().map(|folder| (*folder, cases.iter().filter(|c| c.file.split('/').next() == Some(folder)).collect())).collect()
}

/// The cases of each calculation in the order of the catalogue; reading units comes first.
pub(crate) fn calculations(made: &Validation) -> Vec<(&str, Vec<&Case>)> {
    let mut by: BTreeMap<&str, Vec<&Case>> = BTreeMap::new();
    for case in &made.cases {
        by.entry(&case.calculation).or_default().push(case);
    }
    let names = std::iter::once("units").chain(CATALOGUE.iter().map(|e| e.info().name));
    names.filter_map(|name| by.remove(name).map(|cases| (name, cases))).collect()
}

/// The sources of some cases, each once, in order.
pub(crate) fn sources<'a>(cases: &[&'a Case]) -> Vec<&'a str> {
    let mut out: Vec<&str> = Vec::new();
    for case in cases {
        if !out.contains(&case.source.as_str()) {
            out.push(&case.source);
        }
    }
    out
}

pub(crate) fn files<'a>(cases: &[&'a Case]) -> Vec<&'a str> {
    let mut out: Vec<&str> = cases.iter().map(|c| c.file.as_str()).collect();
    out.sort_unstable();
    out.dedup();
    out
}

/// One quantity of one table, by one sum, from one source.
pub(crate) struct Group<'a> {
    pub first: &'a Case,
    pub cases: Vec<&'a Case>,
}

impl Group<'_> {
    pub(crate) fn within(&self) -> usize {
        self.cases.iter().filter(|c| c.within()).count()
    }
    /// The case nearest to its tolerance.
    pub(crate) fn worst(&self) -> &Case {
        self.cases.iter().copied().fold(self.first, |worst, case| if case.share() > worst.share() { case } else { worst })
    }
}

/// The cases by table, quantity, sum and source, in order of appearance.
pub(crate) fn groups<'a>(cases: &[&'a Case]) -> Vec<Group<'a>> {
    let key = |c: &'a Case| (&c.file, &c.quantity, &c.sum, &c.unit, &c.source);
    let mut out: Vec<Group> = Vec::new();
    for case in cases {
        match out.iter_mut().find(|group| key(group.first) == key(case)) {
            Some(group) => group.cases.push(case),
            None => out.push(Group { first: case, cases: vec![case] }),
        }
    }
    out
}

/// Calculations that name no outside table, with what they say instead.
pub(crate) fn declared() -> impl Iterator<Item = (&'static str, &'static str)> {
    CATALOGUE.iter().map(|e| (e.info().name, e.info().checked_against)).filter(|(_, text)| named_tables(text).is_empty())
}

/// What the list of calculations says after the tables a calculation is checked against.
pub(crate) fn link(calculation: &str) -> Result<String, String> {
    let cases: Vec<&Case> = validation()?.cases.iter().filter(|c| c.calculation == calculation).collect();
    if cases.is_empty() {
        return Ok(String::new());
    }
    let found = summary(cases.iter().copied());
    Ok(format!(
        "; {} values, the worst at {} of its tolerance: [validation report](../../tests/VALIDATION.md#{calculation})",
        found.cases,
        share(found.share)
    ))
}

pub(crate) fn make() -> Result<String, String> {
    let made = validation()?;
    let outside: Vec<&Case> = made.cases.iter().filter(|c| !c.within()).collect();
    if !outside.is_empty() {
        let lines = outside.iter().map(|c| {
            format!("{}:{} {} {}: {} for {} within {}", c.file, c.line, c.calculation, c.quantity, c.computed, c.reference, c.tolerance)
        });
        return Err(format!("{} outside their tolerance:\n{}", outside.len(), lines.collect::<Vec<_>>().join("\n")));
    }
    let mut out = format!(
        "# Validation\n\nMade by `cargo xtask generate`: {} values of the tables in [reference](reference) are computed through the catalogue, by name, as \
         every face does, and compared. A value outside its tolerance stops the making, and so does a row, a column or an input that no \
         check uses; `checks.toml` of each folder says how rows map to calculations. `cargo xtask test` fails where this report is not \
         fresh. As a page with plots and every value: [VALIDATION.html](VALIDATION.html).\n\nThe deviation is relative to the reference value, the \
         tolerance is in the unit of the value, and the share is the deviation over the tolerance. Each line below is one column of one \
         table with its worst value; every single value is in the page. What the tables hold and where it comes \
         from: [combustion](reference/combustion/README.md), [heat](reference/heat/README.md), [trade](reference/trade/README.md).\n\n\
         ## Areas\n\n| area | values | worst share of tolerance | worst relative deviation | tables |\n| --- | --- | --- | --- | --- |\n",
        made.cases.len()
    );
    for (folder, cases) in folders(&made.cases) {
        let found = summary(cases.iter().copied());
        let tables = files(&cases).len();
        let _ = writeln!(
            out,
            "| [{folder}](reference/{folder}/README.md) | {} | {} | {} | {tables} |",
            found.cases,
            share(found.share),
            small(found.relative)
        );
    }
    out.push_str("\n## Calculations\n\n| calculation | values | worst share of tolerance | worst relative deviation | tables |\n| --- | --- | --- | --- | --- |\n");
    let list = calculations(made);
    for (name, cases) in &list {
        let found = summary(cases.iter().copied());
        let tables: Vec<String> = files(cases).iter().map(|f| format!("[{f}](reference/{f})")).collect();
        let _ = writeln!(
            out,
            "| [{name}](#{name}) | {} | {} | {} | {} |",
            found.cases,
            share(found.share),
            small(found.relative),
            tables.join(", ")
        );
    }
    out.push_str(
        "\n## Without an outside check\n\nNo table of reference values stands behind these; each says what it is tested by instead.\n\n",
    );
    for (name, why) in declared() {
        let _ = writeln!(out, "* [{name}](../crates/flamewright/CALCULATIONS.md#{name}): {why}");
    }
    out.push_str("\n## Reference values that are not compared\n\n| table | what | rows | why |\n| --- | --- | --- | --- |\n");
    for unused in &made.unused {
        let _ = writeln!(out, "| {} | {} | {} | {} |", unused.file, unused.what, unused.rows, unused.reason.replace('|', "/"));
    }
    out.push_str(&peers::section()?);
    for (name, cases) in &list {
        let definition = if *name == "units" {
            "Reading and converting units".to_owned()
        } else {
            format!("[Formula, sources and limits](../crates/flamewright/CALCULATIONS.md#{name})")
        };
        let _ = writeln!(out, "\n## {name}\n\n{definition}.\n");
        let sources = sources(cases);
        for (place, source) in sources.iter().enumerate() {
            let _ = writeln!(out, "{}. {}", place + 1, source.replace('|', "/"));
        }
        out.push_str(
            "\n| table | value | computed | unit | values | worst relative deviation | worst share | at | reference | computed there | tolerance | \
             source | verdict |\n| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n",
        );
        for group in groups(cases) {
            let (first, worst, count) = (group.first, group.worst(), group.cases.len());
            let place = sources.iter().position(|s| *s == first.source).unwrap_or(0) + 1;
            let verdict = if group.within() == count { "within".to_owned() } else { format!("{} OUTSIDE", count - group.within()) };
            let _ = writeln!(
                out,
                "| [{}](reference/{}) | {} | {} | {} | {count} | {} | {} | [{}](reference/{}#L{}) | {} | {} | {} | {place} | {verdict} |",
                first.file,
                first.file,
                first.quantity,
                first.sum,
                first.unit,
                small(summary(group.cases.iter().copied()).relative),
                share(worst.share()),
                worst.name.replace('|', "/"),
                worst.file,
                worst.line,
                number(worst.reference),
                number(worst.computed),
                small(worst.tolerance),
            );
        }
    }
    Ok(out)
}
