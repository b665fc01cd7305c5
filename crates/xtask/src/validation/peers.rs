//! What the comparison with independent libraries found: written by the Python tests, shown in the report.

use flamewright::node::Node;
use std::fmt::Write;

/// One comparison over random inputs.
struct Peer {
    calculation: String,
    quantity: String,
    library: String,
    trials: String,
    deviation: f64,
    allowed: f64,
    at: String,
}

/// Where `bindings/python/tests/test_peers*.py` write their findings.
pub(crate) const FILE: &str = "tests/peers.json";

fn read() -> Result<Vec<Peer>, String> {
    let path = crate::steps::root().join(FILE);
    let text = std::fs::read_to_string(&path).map_err(|e| format!("{FILE}: {e}"))?;
    let node = Node::from_json(&text).map_err(|e| e.to_string())?;
    let list = node.list("peers").map_err(|e| e.to_string())?;
    list.iter()
        .map(|item| {
            let text = |key: &str| match item.get(key) {
                Some(Node::Text(text)) => Ok(text.clone()),
                Some(Node::Number(number)) => Ok(number.to_string()),
                _ => Err(format!("{FILE}: {key} is missing")),
            };
            let number = |key: &str| text(key)?.parse().map_err(|_| format!("{FILE}: {key} is no number"));
            Ok(Peer {
                calculation: text("calculation")?,
                quantity: text("quantity")?,
                library: text("library")?,
                trials: text("trials")?,
                deviation: number("deviation")?,
                allowed: number("allowed")?,
                at: text("at")?,
            })
        })
        .collect()
}

fn shown(deviation: f64) -> String {
    if deviation == 0.0 { "0".to_owned() } else { format!("{deviation:.1e}") }
}

const INTRODUCTION: &str = "The tests of Python compare with independent libraries on random inputs over the whole range that both accept \
    (fixed beginnings, so that a run repeats), and write down the worst they met. Deviations are relative unless a unit is named.";

pub(crate) fn section() -> Result<String, String> {
    let mut out = format!(
        "\n## Independent libraries\n\n{INTRODUCTION}\n\n| calculation | quantity | library | trials | worst deviation | allowed | where |\n\
         | --- | --- | --- | --- | --- | --- | --- |\n"
    );
    for peer in read()? {
        let Peer { calculation, quantity, library, trials, deviation, allowed, at } = peer;
        let _ = writeln!(out, "| {calculation} | {quantity} | {library} | {trials} | {} | {allowed:.1e} | {at} |", shown(deviation));
    }
    Ok(out)
}

pub(crate) fn page() -> Result<String, String> {
    let mut out = format!(
        "<h2>Independent libraries</h2>\n<p>{INTRODUCTION}</p>\n<table><tr><th>calculation<th>quantity<th>library<th>trials<th>worst \
         deviation<th>allowed<th>where\n"
    );
    for peer in read()? {
        let Peer { calculation, quantity, library, trials, deviation, allowed, at } = peer;
        let _ =
            writeln!(out, "<tr><td>{calculation}<td>{quantity}<td>{library}<td>{trials}<td>{}<td>{allowed:.1e}<td>{at}", shown(deviation));
    }
    out.push_str("</table>\n");
    Ok(out)
}
