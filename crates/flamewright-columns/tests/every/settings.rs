//! Settings that any calculation can be tried with.

use flamewright::calculation::{Form, Setting};
use flamewright::catalogue::Entry;
use flamewright::node::Node;
use flamewright::quantity::quantity_text;

/// Settings that a calculation can be made with: its defaults, and something plausible where it has none.
pub(crate) fn of(entry: &dyn Entry) -> Node {
    let needed = |setting: &&Setting| setting.default.is_none();
    let table = |wanted: &dyn Fn(&Setting) -> bool| {
        let chosen = entry.settings().iter().filter(|s| wanted(s));
        Node::Table(chosen.filter_map(|s| Some((s.name.to_owned(), plausible(s)?))).collect())
    };
    // Many settings without a default may be left out: add one after the other while it is refused.
    let mut tried = table(&|_| false);
    for _ in entry.settings().iter().filter(needed) {
        let Err(error) = entry.prepare(&tried).map(drop) else { break };
        let missing = error.field().split('.').next().unwrap_or_default().to_owned();
        let Node::Table(entries) = &mut tried else { break };
        match entry.settings().iter().find(|s| s.name == missing).and_then(plausible) {
            Some(value) if entries.iter().all(|(name, _)| *name != missing) => entries.push((missing, value)),
            _ => break,
        }
    }
    if entry.prepare(&tried).is_ok() { tried } else { table(&|s| s.default.is_none()) }
}

/// Values of settings that their form alone does not give away.
const TYPICAL: &[(&str, &str)] = &[
    ("tube", r#""copper 15x0.7""#),
    ("constants", r#""de-natural-gas""#),
    ("policy", r#""a house rule, invented""#),
    ("pump_flows", r#"["0 m3/h", "1 m3/h", "2 m3/h", "3 m3/h"]"#),
    ("pump_pressures", r#"["60 kPa", "55 kPa", "40 kPa", "15 kPa"]"#),
    ("sections", r#"[{"name": "flow", "tube": "copper 22x0.9", "length": "12 m", "volume_flow": "0.6 m3/h"}]"#),
    ("pipes", r#"[{"length": "6 m", "tube": "copper 22x0.9"}, {"length": "3 m", "bore": "13 mm"}]"#),
    ("beta", r#""3950 K""#),
    ("reference_resistance", r#""10 kOhm""#),
];

fn plausible(setting: &Setting) -> Option<Node> {
    if let Some((_, json)) = TYPICAL.iter().find(|(name, _)| *name == setting.name) {
        return Node::from_json(json).ok();
    }
    Some(match setting.form {
        Form::Choice(words) => Node::from(*words.first()?),
        Form::Fuel => Node::from("G20"),
        Form::Flag => Node::Flag(false),
        Form::Quantity(_, unit) => Node::Text(quantity_text(unit.to_si(1.0), unit, 6)),
        Form::Quantities(_, unit) => Node::List((1..4).map(|i| Node::Text(quantity_text(unit.to_si(f64::from(i)), unit, 6))).collect()),
        Form::Records(fields) => {
            Node::List(vec![Node::Table(fields.iter().map(|f| (f.name.to_owned(), Node::Text(f.example()))).collect())])
        }
        Form::Text | Form::Structure => return None,
    })
}
