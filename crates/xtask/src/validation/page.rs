//! The validation as one page that needs nothing else: no scripts, plots as inline SVG, black on white.

use super::report::{calculations, declared, files, folders, groups, number, share, small, sources, summary};
use super::{Case, peers, validation};
use std::collections::BTreeSet;
use std::fmt::Write;

const STYLE: &str = "body{font:15px/1.45 Georgia,serif;margin:2em auto;max-width:72em;padding:0 1em;color:#000;background:#fff}\
h1,h2,h3{font-family:Helvetica,Arial,sans-serif;line-height:1.2}h2{margin-top:2em;border-bottom:1px solid #000}\
table{border-collapse:collapse;font:12.5px/1.35 Helvetica,Arial,sans-serif;margin:.6em 0}\
td,th{border-bottom:1px solid #bbb;padding:.15em .55em;text-align:left;vertical-align:top}th{border-bottom:1px solid #000}\
.n td:nth-child(n+2){text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}\
svg{display:block;width:100%;height:auto;margin:1em 0}svg text{font:11px Helvetica,Arial,sans-serif}\
a{color:#000}summary{cursor:pointer}@media print{details>*{display:block}}";

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}

/// Powers of ten of the plot: what lies below the lowest is drawn on it.
const LOWEST: f64 = -6.0;
const HIGHEST: f64 = 0.0;
const PLOT: (f64, f64) = (1060.0, 330.0);
const LEFT: f64 = 62.0;

/// Deviation over tolerance, one mark a value, a column a calculation.
fn plot(area: &str, groups: &[(&str, Vec<&Case>)]) -> String {
    let (width, height) = PLOT;
    // The root keeps a calculation of a few values visible beside one of hundreds.
    let weights: Vec<f64> = groups.iter().map(|(_, cases)| (cases.len() as f64).sqrt().max(3.0)).collect();
    let whole: f64 = weights.iter().sum();
    let top = 14.0;
    let y = |share: f64| {
        let power = if share > 0.0 { share.log10().clamp(LOWEST, HIGHEST + 0.3) } else { LOWEST };
        top + (HIGHEST + 0.3 - power) / (HIGHEST + 0.3 - LOWEST) * (height - top)
    };
    let mut out = format!(
        "<svg viewBox=\"0 0 {:.0} {:.0}\" role=\"img\" aria-label=\"Deviation over tolerance of every value of {area}, by calculation\">",
        LEFT + width + 10.0,
        height + 175.0
    );
    let mut x = LEFT;
    // Marks that fall on each other are drawn once.
    let mut marks = BTreeSet::new();
    for (place, ((name, cases), weight)) in groups.iter().zip(&weights).enumerate() {
        let column = weight / whole * width;
        if place % 2 == 1 {
            let _ = write!(out, "<path fill=\"#eee\" d=\"M{x:.1} {top}h{column:.1}V{height:.0}h{:.1}z\"/>", -column);
        }
        let middle = x + column / 2.0;
        let _ = write!(
            out,
            "<a href=\"#{name}\"><text text-anchor=\"end\" transform=\"translate({:.1} {:.0})rotate(-62)\">{name}</text></a>",
            middle + 3.0,
            height + 14.0
        );
        for (i, case) in cases.iter().enumerate() {
            let at = x + 3.0 + (column - 6.0) * (i as f64 + 0.5) / cases.len() as f64;
            marks.insert((at.round() as i32, y(case.share()).round() as i32));
        }
        x += column;
    }
    for power in LOWEST as i32..=HIGHEST as i32 {
        let at = y(10f64.powi(power));
        let (dash, label) = match power {
            0 => ("stroke-width=\"1.6\"", "1 = tolerance".to_owned()),
            p if f64::from(p) == LOWEST => ("stroke-width=\".7\"", "\u{2264}1e-6".to_owned()),
            p => ("stroke-width=\".4\" stroke-dasharray=\"2 3\"", format!("1e{p}")),
        };
        let _ = write!(out, "<path stroke=\"#000\" {dash} d=\"M{LEFT:.0} {at:.1}h{width:.0}\"/>");
        let anchor = if power == 0 { (LEFT + 4.0, at - 3.0, "start") } else { (LEFT - 5.0, at + 4.0, "end") };
        let _ = write!(out, "<text x=\"{:.0}\" y=\"{:.1}\" text-anchor=\"{}\">{label}</text>", anchor.0, anchor.1, anchor.2);
    }
    out.push_str("<path stroke=\"#000\" stroke-width=\"2\" fill=\"none\" d=\"");
    for (x, y) in &marks {
        let _ = write!(out, "M{x} {y}h2");
    }
    let _ = write!(
        out,
        "\"/><path stroke=\"#000\" fill=\"none\" d=\"M{LEFT:.0} {top}V{height:.0}\"/>\
         <text text-anchor=\"middle\" transform=\"translate(13 {:.0})rotate(-90)\">deviation / tolerance</text>\
         <text x=\"{:.0}\" y=\"{:.0}\" text-anchor=\"middle\">calculation (one mark a reference value)</text></svg>",
        height / 2.0,
        LEFT + width / 2.0,
        height + 168.0
    );
    out
}

pub(crate) fn make() -> Result<String, String> {
    let made = validation()?;
    let list = calculations(made);
    let mut out = format!(
        "<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\">\
         <title>Validation of flamewright</title><style>{STYLE}</style></head><body>\n<h1>Validation of flamewright</h1>\n\
         <p>{} published or independently computed values, each computed through the catalogue by name and compared. Made by \
         <code>cargo xtask generate</code>, which stops at a value outside its tolerance and at a row, a column or an input that no check \
         uses; <code>cargo xtask test</code> fails where this page is not fresh. The same as text: <a href=\"VALIDATION.md\">VALIDATION.md</a>. \
         Where the numbers come from: <a href=\"reference/combustion/README.md\">combustion</a>, <a href=\"reference/heat/README.md\">heat</a>, \
         <a href=\"reference/trade/README.md\">trade</a>.</p>\n<h2>Areas</h2>\n<table><tr><th>area<th>values<th>worst share of tolerance<th>worst \
         relative deviation<th>tables\n",
        made.cases.len()
    );
    for (folder, cases) in folders(&made.cases) {
        let found = summary(cases.iter().copied());
        let _ = writeln!(
            out,
            "<tr><td><a href=\"#area-{folder}\">{folder}</a><td>{}<td>{}<td>{}<td>{}",
            found.cases,
            share(found.share),
            escaped(&small(found.relative)),
            files(&cases).len()
        );
    }
    out.push_str("</table>\n");
    for (folder, _) in folders(&made.cases) {
        let within: Vec<(&str, Vec<&Case>)> = list
            .iter()
            .map(|(name, cases)| (*name, cases.iter().copied().filter(|c| c.file.split('/').next() == Some(folder)).collect::<Vec<_>>()))
            .filter(|(_, cases)| !cases.is_empty())
            .collect();
        let _ = writeln!(out, "<h3 id=\"area-{folder}\">{folder}</h3>\n{}", plot(folder, &within));
    }
    out.push_str(
        "<h2>Calculations</h2>\n<table><tr><th>calculation<th>values<th>worst share of tolerance<th>worst relative deviation<th>tables\n",
    );
    for (name, cases) in &list {
        let found = summary(cases.iter().copied());
        let tables: Vec<String> = files(cases).iter().map(|f| format!("<a href=\"reference/{f}\">{f}</a>")).collect();
        let _ = writeln!(
            out,
            "<tr><td><a href=\"#{name}\">{name}</a><td>{}<td>{}<td>{}<td>{}",
            found.cases,
            share(found.share),
            escaped(&small(found.relative)),
            tables.join(", ")
        );
    }
    out.push_str("</table>\n<h2>Without an outside check</h2>\n<p>No table of reference values stands behind these; each says what it is tested by instead.</p>\n<table><tr><th>calculation<th>tested by\n");
    for (name, why) in declared() {
        let _ = writeln!(out, "<tr><td><a href=\"../crates/flamewright/CALCULATIONS.md#{name}\">{name}</a><td>{}", escaped(why));
    }
    out.push_str("</table>\n<h2>Reference values that are not compared</h2>\n<table><tr><th>table<th>what<th>rows<th>why\n");
    for unused in &made.unused {
        let _ = writeln!(out, "<tr><td>{}<td>{}<td>{}<td>{}", unused.file, escaped(&unused.what), unused.rows, escaped(&unused.reason));
    }
    out.push_str("</table>\n");
    out.push_str(&peers::page()?);
    out.push_str("<h2>Values</h2>\n<p>The deviation is relative to the reference value, 0 standing for less than 1e-9; the tolerance is in the unit of the value; the share is the deviation over the tolerance. Each block is one column of one table; a row is named by its line in the table, the header being line 1.</p>\n");
    for (name, cases) in &list {
        let definition = if *name == "units" {
            "Reading and converting units.".to_owned()
        } else {
            format!("<a href=\"../crates/flamewright/CALCULATIONS.md#{name}\">Formula, sources and limits.</a>")
        };
        let _ = write!(out, "<h3 id=\"{name}\">{name}</h3>\n<p>{definition}</p>\n<ol>");
        let sources = sources(cases);
        for source in &sources {
            let _ = write!(out, "<li>{}", escaped(source));
        }
        out.push_str("</ol>\n");
        let mut file = "";
        for group in groups(cases) {
            let (first, count) = (group.first, group.cases.len());
            if first.file != file {
                file = &first.file;
                let _ = write!(out, "<h4><a href=\"reference/{file}\">{file}</a></h4>");
            }
            let place = sources.iter().position(|s| *s == first.source).unwrap_or(0) + 1;
            let unit = if first.unit.is_empty() { String::new() } else { format!(" in {}", escaped(&first.unit)) };
            // One wording of the tolerance for the column, or one beside each value.
            let (allowed, head) = match first.allowed.as_str() {
                "" => (String::new(), "<th>tolerance"),
                text if text.ends_with("abs") => (format!("; tolerance {}", text.replace("abs", "in the unit of the value")), ""),
                text => (format!("; tolerance {text} of the value"), ""),
            };
            let _ = writeln!(
                out,
                "<p><b>{}</b>{unit} against {}; source {place}{allowed}; {} of {count} within<table class=n><tr><th>line<th>reference<th>\
                 computed<th>deviation{head}<th>share",
                escaped(&first.quantity),
                escaped(&first.sum),
                group.within(),
            );
            for case in &group.cases {
                let deviation = case.deviation() / case.reference.abs();
                let relative = match deviation {
                    _ if case.reference == 0.0 => "-".to_owned(),
                    d if d < 1e-9 => "0".to_owned(),
                    d => format!("{d:.0e}"),
                };
                let tolerance = if head.is_empty() { String::new() } else { format!("<td>{}", small(case.tolerance)) };
                let _ = write!(
                    out,
                    "<tr><td>{}<td>{}<td>{}<td>{relative}{tolerance}<td>{:.2}{}",
                    case.line,
                    number(case.reference),
                    number(case.computed),
                    case.share(),
                    if case.within() { "" } else { " OUTSIDE" }
                );
            }
            out.push_str("</table>\n");
        }
    }
    out.push_str("</body></html>\n");
    Ok(out)
}
