//! The cases that the faces are compared by: what the Rust library makes of each.

use crate::draws::Draws;
use crate::settings::settings;
use flamewright::catalogue::{CATALOGUE, Prepared};
use flamewright::describe;
use flamewright::node::Node;
use flamewright::quantity::quantity_text;
use flamewright::record::Field;
use std::time::{Duration, Instant};

/// A calculation gets no more readings when it has taken so long over those it has.
const LONG: Duration = Duration::from_millis(60);

/// Every calculation with every table of settings and `readings` readings, good and bad: one JSON
/// object a line, doubles as sixteen hexadecimal digits of their bits.
///
/// # Panics
/// If a calculation cannot be made with its settings.
#[must_use]
pub fn cases(readings: usize) -> String {
    let mut lines = String::new();
    for entry in CATALOGUE {
        let begun = Instant::now();
        for (i, table) in settings(*entry).into_iter().enumerate() {
            if i > 0 && begun.elapsed() > 10 * LONG {
                break;
            }
            let name = entry.info().name;
            let prepared = entry.prepare(&table).unwrap_or_else(|e| panic!("{name}: {e}"));
            let mut draws = Draws::new(20_261_125);
            let started = Instant::now();
            let mut list = Vec::new();
            for k in 0..readings {
                if k >= 2 && started.elapsed() > LONG {
                    break;
                }
                let fields = entry.inputs();
                let drawn: Vec<f64> = fields
                    .iter()
                    .map(|field| match k % 4 {
                        0 | 1 => draws.usual(field),
                        2 => draws.accepted(field),
                        // Mostly good, so that what is refused is not always the first field.
                        _ if draws.below(4) == 0 => draws.anything(field),
                        _ => draws.usual(field),
                    })
                    .collect();
                // What can be written is rounded to what its text says, so that calls in text give the same bits.
                let texts: Vec<Option<String>> =
                    fields.iter().zip(&drawn).map(|(f, v)| f.unit.from_si(*v).is_finite().then(|| quantity_text(*v, f.unit, 6))).collect();
                let read = |(field, text, value): (&Field, &Option<String>, f64)| {
                    text.as_ref().and_then(|text| field.read(text).ok()).unwrap_or(value)
                };
                let input: Vec<f64> = fields.iter().zip(&texts).zip(&drawn).map(|((f, t), v)| read((f, t, *v))).collect();
                list.push(reading(&*prepared, &input, &texts));
            }
            let line = Node::from([("calculation", Node::from(name)), ("settings", table), ("readings", Node::List(list))]);
            lines += &line.to_json().replace('\n', " ");
            lines.push('\n');
        }
    }
    lines
}

fn bits(values: &[f64]) -> Node {
    Node::List(values.iter().map(|v| Node::Text(format!("{:016x}", v.to_bits()))).collect())
}

fn reading(prepared: &dyn Prepared, input: &[f64], texts: &[Option<String>]) -> Node {
    let entry = prepared.entry();
    let mut output = vec![f64::NAN; entry.outputs().len()];
    let judged = prepared.run(input, &mut output);
    let texts = texts.iter().map(|text| text.clone().map_or(Node::Null, Node::Text)).collect();
    let mut said = vec![("input".to_owned(), bits(input)), ("text".to_owned(), Node::List(texts))];
    if judged.is_refused(entry.rules()) {
        let error = judged.error(entry.inputs(), entry.rules(), input, entry.outputs(), &output);
        said.push(("error".to_owned(), describe::error(&error)));
    } else {
        let notices = judged.notices(entry.inputs(), entry.rules(), input);
        said.push(("output".to_owned(), bits(&output)));
        said.push(("notices".to_owned(), Node::List(notices.iter().map(|n| Node::List(vec![n.code.into(), n.field.into()])).collect())));
    }
    Node::Table(said)
}
