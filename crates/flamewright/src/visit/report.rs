//! The assessment as a tree and as plain text.

use super::assess::{Assessment, Judged, PartResult, ResultValue};
use super::findings::Severity;
use super::record::Stage;
use crate::node::Node;
use crate::quantity::quantity_text;
use crate::quantity::unit::number;
use crate::record::Field;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// Width of the plain-text report, in characters.
const WIDTH: usize = 100;

/// What the signs of a report mean.
pub(crate) const HOW_TO_READ: &str = "± is the expanded uncertainty (about 95 %: coverage factor 2, larger where it rests on few repeated readings) from what was stated of the instruments; a value without ± had \
     nothing stated. A change is significant where it exceeds its own expanded uncertainty, with what both readings share \
     taken out. Limits are those of the policy above, none is built in; near a limit, by the guard band of JCGM 106:2012, the \
     verdict is undecided.";

/// A value with its expanded uncertainty, rounded to where the uncertainty begins: `4.60 ± 0.35 %`.
pub(crate) fn with_uncertainty(field: &Field, value: f64, expanded: f64) -> String {
    if value.is_nan() {
        return field.show(value, 4);
    }
    if expanded <= 0.0 || !expanded.is_finite() {
        return field.show(value, 4);
    }
    let (shown, spread) = (field.unit.from_si(value), expanded / field.unit.factor);
    let exponent = crate::math::floor(crate::math::log10(spread)) as i32;
    let decimals = (1 - exponent).clamp(0, 9) as usize;
    let (shown, plus_minus) = if exponent > 1 {
        (format!("{shown:.0}"), format!("{spread:.0}"))
    } else {
        (format!("{shown:.decimals$}"), format!("{spread:.decimals$}"))
    };
    if (shown.len().max(plus_minus.len())) > 12 {
        return format!("{} ± {} {}", number(field.unit.from_si(value), 4), number(spread, 2), field.unit.symbol);
    }
    format!("{shown} ± {plus_minus} {}", field.unit.symbol).trim_end().to_string()
}

pub(crate) fn words(name: &str) -> String {
    name.replace('_', " ")
}

/// Fills `text` to lines of at most `width` characters.
fn wrap(text: &str, width: usize) -> Vec<String> {
    let mut lines = Vec::new();
    let mut line = String::new();
    for word in text.split_whitespace() {
        if !line.is_empty() && line.chars().count() + 1 + word.chars().count() > width {
            lines.push(core::mem::take(&mut line));
        }
        if !line.is_empty() {
            line.push(' ');
        }
        line.push_str(word);
    }
    if !line.is_empty() || lines.is_empty() {
        lines.push(line);
    }
    lines
}

/// Parts with the same calculation and label: what is shown side by side.
pub(crate) struct Group<'a> {
    pub(crate) parts: Vec<&'a PartResult>,
}

impl Group<'_> {
    /// What the parts of a group took by default, and which results they could not give and why.
    pub(crate) fn footnotes(&self) -> Vec<String> {
        let mut notes = Vec::new();
        let once = |list: &mut Vec<String>, text: String| {
            if !list.contains(&text) {
                list.push(text);
            }
        };
        let (mut assumed, mut absent) = (Vec::new(), Vec::new());
        for part in &self.parts {
            for value in part.inputs.iter().filter(|v| v.assumed && !v.value.is_nan()) {
                once(&mut assumed, format!("{} {}", words(value.field.name), value.field.show(value.value, 5)));
            }
            for value in part.outputs.iter().filter(|v| v.value.is_nan() && !v.field.detail) {
                once(&mut absent, format!("{} ({})", words(value.field.name), value.field.absent));
            }
        }
        if !assumed.is_empty() {
            notes.push(format!("not given, so taken: {}", assumed.join("; ")));
        }
        if !absent.is_empty() {
            notes.push(format!("no value for: {}", absent.join("; ")));
        }
        notes
    }
    pub(crate) fn first(&self) -> &PartResult {
        self.parts[0]
    }
    pub(crate) fn at(&self, stage: Stage) -> Option<&PartResult> {
        self.parts.iter().find(|p| p.part.stage == stage).copied()
    }
}

/// One line of a group: a field with its value at each stage.
pub(crate) struct Line<'a> {
    pub(crate) field: &'static Field,
    pub(crate) values: Vec<(Stage, &'a ResultValue)>,
}

pub(crate) fn lines<'a>(group: &Group<'a>, outputs: bool) -> Vec<Line<'a>> {
    let entry = group.first().part.entry;
    let fields = if outputs { entry.outputs() } else { entry.inputs() };
    let mut all = Vec::new();
    for field in fields.iter().filter(|f| !(outputs && f.detail)) {
        let values: Vec<(Stage, &ResultValue)> = group
            .parts
            .iter()
            .filter_map(|p| {
                let list = if outputs { &p.outputs } else { &p.inputs };
                let value = list.iter().find(|v| v.field.name == field.name)?;
                (!value.value.is_nan() && !value.assumed).then_some((p.part.stage, value))
            })
            .collect();
        if !values.is_empty() {
            all.push(Line { field, values });
        }
    }
    all
}

impl Assessment {
    pub(crate) fn groups(&self) -> Vec<Group<'_>> {
        let mut groups: Vec<Group<'_>> = Vec::new();
        for part in &self.parts {
            let same = |g: &&mut Group<'_>| {
                g.first().part.entry.info().name == part.part.entry.info().name && g.first().part.label == part.part.label
            };
            match groups.iter_mut().find(same) {
                Some(group) => group.parts.push(part),
                None => groups.push(Group { parts: Vec::from([part]) }),
            }
        }
        groups
    }

    /// The change of a line in words, where there is an as-found and an as-left value.
    pub(crate) fn change_words(&self, group: &Group<'_>, field: &Field) -> String {
        let part = &group.first().part;
        let Some(change) = self.change(part.entry.info().name, &part.label, field.name) else { return String::new() };
        let difference = number(change.difference / field.unit.factor, 3);
        let sign = if change.difference > 0.0 { "+" } else { "" };
        let meaning = match change.significant {
            Some(true) => "significant",
            Some(false) => "within uncertainty",
            None => "",
        };
        format!("{sign}{difference} {meaning}").trim_end().to_string()
    }

    pub(crate) fn policy_words(&self) -> String {
        let Some(policy) = &self.policy else { return "none given: nothing is judged".to_string() };
        let invented = if policy.invented { "; AN INVENTED EXAMPLE, not for real work" } else { "" };
        let whose = if policy.jurisdiction.is_empty() { String::new() } else { format!(", {}", policy.jurisdiction) };
        format!("{}{whose}, dated {}{invented}", policy.title, policy.date)
    }

    /// The assessment as plain text.
    #[must_use]
    pub fn to_text(&self) -> String {
        let mut out = String::new();
        let rule = "─".repeat(WIDTH);
        let heavy = "═".repeat(WIDTH);
        let visit = &self.visit;
        let head = "ASSESSMENT OF A VISIT";
        let version = format!("flamewright {}", crate::VERSION);
        out += &format!("{heavy}\n{head}{version:>width$}\n", width = WIDTH - head.len());
        if !visit.title.is_empty() {
            out += &format!("{}\n", visit.title);
        }
        if visit.invented {
            out += "INVENTED RECORD: made up to show the library; it describes no real person, place or appliance.\n";
        }
        let date = if visit.date.is_empty() { "date not given" } else { &visit.date };
        out += &format!("{date}   {}\n", visit.occasion);
        for (heading, entries) in &visit.particulars {
            let text: Vec<String> = entries.iter().map(|(k, v)| format!("{}: {v}", words(k))).collect();
            for (i, line) in wrap(&text.join("; "), WIDTH - 12).iter().enumerate() {
                out += &format!("{:<12}{line}\n", if i == 0 { heading.as_str() } else { "" });
            }
        }
        for instrument in &visit.instruments {
            for (i, line) in wrap(&instrument.describe(), WIDTH - 12).iter().enumerate() {
                out += &format!("{:<12}{line}\n", if i == 0 { "instrument" } else { "" });
            }
        }
        for (i, line) in wrap(&self.policy_words(), WIDTH - 12).iter().enumerate() {
            out += &format!("{:<12}{line}\n", if i == 0 { "policy" } else { "" });
        }

        out += &format!("{heavy}\nAT A GLANCE\n");
        for (word, text) in self.at_a_glance() {
            for (i, line) in wrap(&text, WIDTH - 25).iter().enumerate() {
                out += &format!("  {:<22} {line}\n", if i == 0 { word } else { "" });
            }
        }

        for group in self.groups() {
            out += &format!("{rule}\n");
            self.group_text(&group, &mut out);
        }

        let notices: Vec<_> = self.findings.iter().filter(|f| f.severity == Severity::Notice).collect();
        if !notices.is_empty() {
            out += &format!("{rule}\nTO KNOW\n");
            for notice in notices {
                for (i, line) in wrap(&notice.text, WIDTH - 4).iter().enumerate() {
                    out += &format!("  {} {line}\n", if i == 0 { "•" } else { " " });
                }
            }
        }
        if !visit.remarks.is_empty() {
            out += &format!("{rule}\nREMARKS\n");
            for line in visit.remarks.iter().flat_map(|r| wrap(r, WIDTH - 4)) {
                out += &format!("  {line}\n");
            }
        }
        out += &format!("{rule}\nHOW TO READ THIS\n");
        for line in wrap(HOW_TO_READ, WIDTH - 2) {
            out += &format!("  {line}\n");
        }
        out += "CAUTIONS\n";
        for caution in &self.cautions {
            for (i, line) in wrap(caution, WIDTH - 4).iter().enumerate() {
                out += &format!("  {} {line}\n", if i == 0 { "•" } else { " " });
            }
        }
        out += &format!("{heavy}\n");
        out
    }

    fn group_text(&self, group: &Group<'_>, out: &mut String) {
        let first = &group.first().part;
        let label = if first.label.is_empty() { String::new() } else { format!(" ({})", first.label) };
        let stages: Vec<Stage> = Stage::ALL.into_iter().filter(|s| group.at(*s).is_some()).collect();
        let both = group.at(Stage::AsFound).is_some() && group.at(Stage::AsLeft).is_some();
        let mut heading = format!("{:<38}", format!("{}{label}", first.entry.info().title.to_uppercase()));
        for stage in &stages {
            heading += &format!("{:<21}", stage.words());
        }
        if both {
            heading += "change";
        }
        *out += &format!("{}\n", heading.trim_end());
        for part in &group.parts {
            if let Some(why) = &part.refused {
                for line in wrap(&format!("{}: no result: {why}", part.part.stage.words()), WIDTH - 2) {
                    *out += &format!("  {line}\n");
                }
            }
            if !part.part.note.is_empty() {
                *out += &format!("  note: {}\n", part.part.note);
            }
        }
        for (outputs, title) in [(false, "given"), (true, "computed")] {
            let lines = lines(group, outputs);
            if lines.is_empty() {
                continue;
            }
            *out += &format!("  {title}\n");
            for line in lines {
                let name = words(line.field.name);
                let mut row = if name.chars().count() > 34 { format!("    {name}\n{:<38}", "") } else { format!("    {name:<34}") };
                for stage in &stages {
                    let value =
                        line.values.iter().find(|(s, _)| s == stage).map(|(_, v)| with_uncertainty(line.field, v.value, v.expanded()));
                    row += &format!("{:<21}", value.unwrap_or_else(|| "–".to_string()));
                    if !row.ends_with(' ') {
                        row.push(' ');
                    }
                }
                if both && outputs {
                    row += &self.change_words(group, line.field);
                }
                *out += &format!("{}\n", row.trim_end());
                for (stage, value) in &line.values {
                    for judged in &value.judged {
                        let text = format!("{}: {}", stage.words(), verdict_words(judged, line.field, value.standard));
                        for (i, part) in wrap(&text, WIDTH - 10).iter().enumerate() {
                            *out += &format!("      {} {part}\n", if i == 0 { "→" } else { " " });
                        }
                    }
                }
            }
        }
        for note in group.footnotes() {
            for (i, line) in wrap(&note, WIDTH - 6).iter().enumerate() {
                *out += &format!("  {}{line}\n", if i == 0 { "" } else { "  " });
            }
        }
    }

    /// The assessment as a tree, for JSON.
    #[must_use]
    pub fn to_node(&self) -> Node {
        let visit = &self.visit;
        let text = |s: &str| Node::Text(s.to_string());
        let value = |v: &ResultValue| {
            let judged = v.judged.iter().map(|j| {
                Node::from([
                    ("decision", text(j.verdict.decision.word())),
                    ("limit", Node::Text(j.limit.describe())),
                    ("probability_of_conformity", Node::Number(j.verdict.probability)),
                    ("guard_band", Node::Number(j.verdict.guard_band / v.field.unit.factor)),
                    ("citation", text(&j.limit.citation)),
                ])
            });
            let node = Node::from([
                ("value", Node::Number(v.field.unit.from_si(v.value))),
                ("standard_uncertainty", Node::Number(v.standard / v.field.unit.factor)),
                ("coverage_factor", Node::Number(v.coverage_factor)),
                ("unit", text(v.field.unit.symbol)),
                ("basis", text(v.field.kind.basis.word())),
                ("si", Node::Number(v.value)),
                ("meaning", text(v.field.doc)),
                ("assumed", Node::Flag(v.assumed)),
                ("absent", if v.value.is_nan() { text(v.field.absent) } else { Node::Null }),
                ("verdicts", Node::List(judged.collect())),
            ]);
            (v.field.name.to_string(), node)
        };
        let parts = self.parts.iter().map(|p| {
            let name = p.part.entry.info().name;
            let change = |v: &ResultValue| {
                let change = self.change(name, &p.part.label, v.field.name)?;
                let significant = change.significant.map_or(Node::Null, Node::Flag);
                let node = Node::from([
                    ("difference", Node::Number(change.difference / v.field.unit.factor)),
                    ("standard_uncertainty", Node::Number(change.standard / v.field.unit.factor)),
                    ("coverage_factor", Node::Number(change.coverage_factor)),
                    ("significant", significant),
                ]);
                Some((v.field.name.to_string(), node))
            };
            let changes = if p.part.stage == Stage::AsLeft { p.outputs.iter().filter_map(change).collect() } else { Vec::new() };
            Node::from([
                ("calculation", text(name)),
                ("title", text(p.part.entry.info().title)),
                ("label", text(&p.part.label)),
                ("stage", text(p.part.stage.key())),
                ("given", Node::Table(p.inputs.iter().filter(|v| !v.value.is_nan()).map(value).collect())),
                ("results", Node::Table(p.outputs.iter().map(value).collect())),
                ("change", Node::Table(changes)),
                ("refused", p.refused.as_ref().map_or(Node::Null, |e| Node::Text(e.to_string()))),
            ])
        });
        let findings = self.findings.iter().map(|f| {
            Node::from([
                ("severity", text(f.severity.words())),
                ("code", text(&f.code)),
                ("field", text(&f.field)),
                ("text", text(&f.text)),
            ])
        });
        let policy = self.policy.as_ref().map_or(Node::Null, |p| {
            Node::from([
                ("title", text(&p.title)),
                ("jurisdiction", text(&p.jurisdiction)),
                ("date", text(&p.date)),
                ("invented", Node::Flag(p.invented)),
            ])
        });
        let instruments = visit.instruments.iter().map(|i| {
            Node::from(
                [
                    ("name", &i.name),
                    ("description", &i.description),
                    ("identity", &i.identity),
                    ("calibrated", &i.calibrated),
                    ("due", &i.due),
                ]
                .map(|(k, v)| (k, text(v))),
            )
        });
        let particulars = visit
            .particulars
            .iter()
            .map(|(heading, entries)| (heading.clone(), Node::Table(entries.iter().map(|(k, v)| (k.clone(), text(v))).collect())));
        let defects =
            visit.defects.iter().map(|d| Node::from([("text", text(&d.text)), ("class", text(&d.class)), ("remedy", text(&d.remedy))]));
        Node::from([
            ("library", Node::from([("name", text("flamewright")), ("version", text(crate::VERSION))])),
            ("title", text(&visit.title)),
            ("date", text(&visit.date)),
            ("occasion", text(&visit.occasion)),
            ("invented", Node::Flag(visit.invented)),
            ("particulars", Node::Table(particulars.collect())),
            ("instruments", Node::List(instruments.collect())),
            ("policy", policy),
            ("findings", Node::List(findings.collect())),
            ("defects", Node::List(defects.collect())),
            ("parts", Node::List(parts.collect())),
            ("remarks", Node::List(visit.remarks.iter().map(|r| text(r)).collect())),
            ("cautions", Node::List(self.cautions.iter().map(|c| text(c)).collect())),
        ])
    }
}

/// A verdict with its ground and its citation.
pub(crate) fn verdict_words(judged: &Judged, field: &Field, standard: f64) -> String {
    let ground = if standard > 0.0 {
        let band = quantity_text(judged.verdict.guard_band, &crate::quantity::Unit { offset: 0.0, ..*field.unit }, 2);
        format!("probability of conformity {}; guard band {band}", percent(judged.verdict.probability))
    } else {
        "no uncertainty stated".to_string()
    };
    format!("{} ({}; {ground}) [{}]", judged.verdict.decision.word(), judged.limit.describe(), judged.limit.citation)
}

fn percent(probability: f64) -> String {
    if probability > 0.9995 {
        "> 99.9 %".to_string()
    } else if probability < 0.0005 {
        "< 0.1 %".to_string()
    } else {
        format!("{} %", number(100.0 * probability, 3))
    }
}
