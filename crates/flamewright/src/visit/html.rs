//! The assessment as one self-contained HTML page: no scripts, nothing fetched, prints on A4, and
//! says everything in words, so that black and white loses nothing.

use super::assess::Assessment;
use super::findings::Severity;
use super::record::Stage;
use super::report::{Group, lines, verdict_words, with_uncertainty, words};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

const STYLE: &str = "\
@page{size:A4;margin:16mm}\
body{font:10.5pt/1.4 Georgia,'Times New Roman',serif;color:#000;background:#fff;max-width:190mm;margin:1em auto;padding:0 4mm}\
h1{font-size:17pt;margin:0}h2{font-size:12.5pt;margin:1.3em 0 .3em;border-bottom:1.5pt solid #000}\
table{border-collapse:collapse;width:100%;margin:.3em 0}\
th,td{text-align:left;vertical-align:top;padding:.12em .6em .12em 0;border-bottom:.3pt solid #999}\
th{font-weight:bold;border-bottom:.8pt solid #000}section th:first-child{width:34%}\
td.n{white-space:nowrap;font-variant-numeric:tabular-nums}\
tr{break-inside:avoid}section{break-inside:auto}h2,tr:has(th+th){break-after:avoid}section th+th:not(:last-child){width:22%}\
.word{font-weight:bold;white-space:nowrap}.verdict{padding-left:1.2em;font-size:9.5pt;border-bottom:none}\
.small{font-size:9pt}.box{border:1.2pt solid #000;padding:.4em .8em;margin:.6em 0}\
ul{margin:.2em 0;padding-left:1.2em}";

/// Text with the characters that HTML takes for itself written out.
fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            _ => out.push(c),
        }
    }
    out
}

impl Assessment {
    /// The assessment as one self-contained HTML page.
    #[must_use]
    pub fn to_html(&self) -> String {
        let visit = &self.visit;
        let title = if visit.title.is_empty() { "Assessment of a visit" } else { &visit.title };
        let mut out = format!(
            "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\">\
             <title>{0}</title><style>{STYLE}</style></head><body>\n<h1>Assessment of a visit</h1>\n<p><b>{0}</b><br>{1} {2}</p>\n",
            escape(title),
            escape(&visit.date),
            escape(&visit.occasion)
        );
        if visit.invented {
            out += "<p class=\"box\"><b>Invented record</b>: made up to show the library; it describes no real person, place or appliance.</p>\n";
        }
        out += "<table>\n";
        for (heading, entries) in &visit.particulars {
            let text: Vec<String> = entries.iter().map(|(k, v)| format!("{}: {v}", words(k))).collect();
            out += &format!("<tr><th>{}</th><td>{}</td></tr>\n", escape(heading), escape(&text.join("; ")));
        }
        for instrument in &visit.instruments {
            out += &format!("<tr><th>instrument</th><td>{}</td></tr>\n", escape(&instrument.describe()));
        }
        out += &format!("<tr><th>policy</th><td>{}</td></tr>\n</table>\n", escape(&self.policy_words()));

        out += "<h2>At a glance</h2>\n<table>\n";
        for (word, text) in self.at_a_glance() {
            out += &format!("<tr><td class=\"word\">{word}</td><td>{}</td></tr>\n", escape(&text));
        }
        out += "</table>\n";
        for group in self.groups() {
            self.group_html(&group, &mut out);
        }
        let notices: Vec<_> = self.findings.iter().filter(|f| f.severity == Severity::Notice).map(|f| f.text.as_str()).collect();
        list("To know", &notices, &mut out);
        list("Remarks", &visit.remarks.iter().map(String::as_str).collect::<Vec<_>>(), &mut out);
        out += &format!("<h2>How to read this</h2>\n<p class=\"small\">{}</p>\n", escape(super::report::HOW_TO_READ));
        list("Cautions", &self.cautions, &mut out);
        out += &format!("<p class=\"small\">flamewright {}</p>\n</body></html>\n", crate::VERSION);
        out
    }

    fn group_html(&self, group: &Group<'_>, out: &mut String) {
        let first = &group.first().part;
        let stages: Vec<Stage> = Stage::ALL.into_iter().filter(|s| group.at(*s).is_some()).collect();
        let both = group.at(Stage::AsFound).is_some() && group.at(Stage::AsLeft).is_some();
        let label = if first.label.is_empty() { String::new() } else { format!(" ({})", first.label) };
        *out += &format!("<section><h2>{}</h2>\n", escape(&format!("{}{label}", first.entry.info().title)));
        for part in &group.parts {
            if let Some(why) = &part.refused {
                *out += &format!("<p><b>{}: no result.</b> {}</p>\n", part.part.stage.words(), escape(&why.to_string()));
            }
            if !part.part.note.is_empty() {
                *out += &format!("<p class=\"small\">{}: {}</p>\n", part.part.stage.words(), escape(&part.part.note));
            }
        }
        for (outputs, heading) in [(false, "given"), (true, "computed")] {
            let rows = lines(group, outputs);
            if rows.is_empty() {
                continue;
            }
            *out += &format!("<table><tr><th>{heading}</th>");
            for stage in &stages {
                *out += &format!("<th>{}</th>", stage.words());
            }
            // An empty cell keeps the columns of what is given in line with those of what is computed.
            *out += match (both, outputs) {
                (true, true) => "<th>change</th></tr>\n",
                (true, false) => "<td></td></tr>\n",
                (false, _) => "</tr>\n",
            };
            let columns = 1 + stages.len() + usize::from(both && outputs);
            for line in rows {
                *out += &format!("<tr><td>{}</td>", words(line.field.name));
                for stage in &stages {
                    let value =
                        line.values.iter().find(|(s, _)| s == stage).map(|(_, v)| with_uncertainty(line.field, v.value, v.expanded()));
                    *out += &format!("<td class=\"n\">{}</td>", escape(&value.unwrap_or_else(|| "–".to_string())));
                }
                if both && outputs {
                    *out += &format!("<td class=\"n\">{}</td>", escape(&self.change_words(group, line.field)));
                }
                *out += "</tr>\n";
                for (stage, value) in &line.values {
                    for judged in &value.judged {
                        let text = verdict_words(judged, line.field, value.standard);
                        *out += &format!(
                            "<tr><td class=\"verdict\" colspan=\"{columns}\">→ <b>{}</b>: {}</td></tr>\n",
                            stage.words(),
                            escape(&text)
                        );
                    }
                }
            }
            *out += "</table>\n";
        }
        for note in group.footnotes() {
            *out += &format!("<p class=\"small\">{}</p>\n", escape(&note));
        }
        *out += "</section>\n";
    }
}

fn list(heading: &str, items: &[&str], out: &mut String) {
    if items.is_empty() {
        return;
    }
    *out += &format!("<h2>{heading}</h2>\n<ul class=\"small\">\n");
    for item in items {
        *out += &format!("<li>{}</li>\n", escape(item));
    }
    *out += "</ul>\n";
}
