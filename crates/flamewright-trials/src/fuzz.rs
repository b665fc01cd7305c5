//! The targets of the fuzzing: whatever the bytes, no panic, no hang, and what is answered is sound.
//!
//! The same functions run under a coverage-guided fuzzer (`fuzz/`), over the checked-in corpus, and
//! over seeded mutations of it in the ordinary tests.

use crate::draws::Draws;
use crate::settings::{needed_settings, settings};
use flamewright::catalogue::{Bare, CATALOGUE, Entry, Prepared, evaluate, outcome, read_input, split};
use flamewright::fuel::{AmountBasis, Composition, Fuel, Normalisation};
use flamewright::judgement::Policy;
use flamewright::node::Node;
use flamewright::quantity::quantity_text;
use flamewright::record::Field;
use flamewright::text::call_json;
use flamewright::visit::{Visit, assess};

/// One target.
pub struct Target {
    /// Its name, which is that of its corpus folder.
    pub name: &'static str,
    /// Tries one input.
    pub run: fn(&[u8]),
    /// Inputs to begin with, made from the library itself.
    pub seeds: fn() -> Vec<Vec<u8>>,
}

/// All targets.
pub const TARGETS: &[Target] = &[
    Target { name: "quantity", run: quantity, seeds: quantity_seeds },
    Target { name: "composition", run: composition, seeds: composition_seeds },
    Target { name: "policy", run: policy, seeds: || vec![POLICY.into()] },
    Target { name: "visit", run: visit, seeds: || vec![VISIT.into(), to_json(VISIT).into_bytes()] },
    Target { name: "call", run: call, seeds: call_seeds },
    Target { name: "settings", run: settings_tree, seeds: settings_seeds },
    Target { name: "bits", run: bits, seeds: bits_seeds },
];

/// The target called `name`.
#[must_use]
pub fn target(name: &str) -> Option<&'static Target> {
    TARGETS.iter().find(|t| t.name == name)
}

const VISIT: &str = include_str!("../../../examples/visits/village_hall.toml");
const POLICY: &str = include_str!("../../../examples/visits/example_policy.toml");

fn to_json(toml: &str) -> String {
    Node::from_toml(toml).map(|node| node.to_json()).unwrap_or_default()
}

/// Two bytes that choose, and the text behind them; nothing where it is no text.
fn chosen(data: &[u8]) -> Option<(usize, &str)> {
    let (head, rest) = data.split_at_checked(2)?;
    Some((usize::from(head[0]) | usize::from(head[1]) << 8, std::str::from_utf8(rest).ok()?))
}

fn fields() -> impl Iterator<Item = &'static Field> {
    CATALOGUE.iter().flat_map(|entry| entry.inputs())
}

/// A text as the value of any input field: what is read is finite, and reads the same once written.
///
/// # Panics
/// If it is not.
pub fn quantity(data: &[u8]) {
    let Some((place, text)) = chosen(data) else { return };
    let Some(field) = fields().nth(place % fields().count()) else { return };
    let _ = field.scale(text);
    if let Ok(si) = field.read(text) {
        assert!(si.is_finite(), "{} = {text:?} was read as {si}", field.name);
        let written = quantity_text(si, field.unit, 17);
        // What is written in another unit may overflow there, and is then refused, not misread.
        if let Ok(again) = field.read(&written) {
            // The offset of a scale of temperature costs digits near its zero.
            let room = 1e-14 * si.abs().max(field.unit.offset.abs());
            assert!((again - si).abs() <= room || si.abs() < 1e-300, "{}: {text:?} is {si}, written {written:?}, read {again}", field.name);
        }
    }
}

fn quantity_seeds() -> Vec<Vec<u8>> {
    let texts =
        ["2 min 5 s", "20.5 mbar(g)", "1e3 Pa", "62 °F", "48 ppm", "0.1 m3/h", "−5 degC", "1013 mbar(a)", "35.6 MJ/m3 gross", "1 in 3 ft"];
    let of = |(i, text): (usize, String)| [&(i as u16).to_le_bytes()[..], text.as_bytes()].concat();
    let examples = fields().map(Field::example).enumerate().map(of);
    examples.chain((0..fields().count()).step_by(17).zip(texts.iter().cycle().map(ToString::to_string)).map(of)).collect()
}

/// A composition as text and as a table: shares of at least nothing that add up to one.
///
/// # Panics
/// If they do not.
pub fn composition(data: &[u8]) {
    let Some((way, text)) = chosen(data) else { return };
    let basis = [AmountBasis::Mole, AmountBasis::Volume, AmountBasis::Mass][way % 3];
    let normalisation = if way & 4 == 0 { Normalisation::Refuse } else { Normalisation::Normalise };
    if let Ok(gas) = Composition::from_text(text, basis, normalisation) {
        let sum: f64 = gas.parts().map(|(_, share)| share).sum();
        assert!((sum - 1.0).abs() < 2e-4 && gas.parts().all(|(_, share)| share >= 0.0), "{text:?}: {gas:?}");
    }
    let fuel = Node::from_json(text).map_or_else(|_| Fuel::named(text), |node| Fuel::from_node(&node));
    if let Ok(fuel) = fuel {
        let numbers = [fuel.mass, fuel.gross_calorific_value, fuel.net_calorific_value, fuel.stoichiometric_oxygen()];
        assert!(numbers.iter().all(|n| n.is_finite()), "{text:?}: {fuel:?}");
        assert!(fuel.net_calorific_value <= fuel.gross_calorific_value, "{text:?}: {fuel:?}");
    }
}

fn composition_seeds() -> Vec<Vec<u8>> {
    let texts = [
        "G20",
        "CH4 92.5 %, N2 7.5 %",
        "CH4=0.925 N2=0.075",
        "60 % propane, 40 % butane",
        "gas oil",
        r#"{"methane": "90 %", "ethane": "10 %"}"#,
        r#"{"composition": "CH4 9, H2 1", "normalise": true, "basis": "mass", "hydrogen_blend": "5 %"}"#,
        r#"{"state": "liquid", "carbon": "86 %", "hydrogen": "13 %", "moisture": "1 %", "gross_calorific_value": "45 MJ/kg"}"#,
    ];
    texts.iter().enumerate().map(|(i, text)| [&(i as u16).to_le_bytes()[..], text.as_bytes()].concat()).collect()
}

fn record(text: &str) -> Option<Node> {
    if text.trim_start().starts_with('{') { Node::from_json(text).ok() } else { Node::from_toml(text).ok() }
}

/// A policy in TOML or JSON: its limits are numbers, its probabilities lie between nothing and one.
///
/// # Panics
/// If they do not.
pub fn policy(data: &[u8]) {
    let Ok(text) = std::str::from_utf8(data) else { return };
    let Some(node) = record(text) else { return };
    if let Ok(policy) = Policy::read(&node) {
        for limit in &policy.limits {
            assert!(limit.value.is_finite() && limit.required_probability > 0.0 && limit.required_probability < 1.0, "{limit:?}");
            assert!(!limit.describe().is_empty());
            let _ = limit.judge(limit.value, 1.0);
        }
    }
}

/// A visit in TOML or JSON, assessed and written in every form; what is written as JSON reads again.
///
/// # Panics
/// If it does not.
pub fn visit(data: &[u8]) {
    let Ok(text) = std::str::from_utf8(data) else { return };
    let Some(node) = record(text) else { return };
    assert_eq!(Node::from_json(&node.to_json()).map(|n| n.to_json()).ok(), Some(node.to_json()), "a tree and its JSON differ");
    if let Ok(visit) = Visit::read(&node) {
        let policy = record(POLICY).and_then(|node| Policy::read(&node).ok());
        let assessment = assess(visit, policy);
        assert!(!assessment.to_text().is_empty() && assessment.to_html().ends_with("</html>\n"));
        Node::from_json(&assessment.to_node().to_json()).expect("an assessment is JSON");
    }
}

/// Results are finite, or absent where their field says that they may be.
fn sound(prepared: &dyn Prepared, input: &[f64], output: &[f64]) {
    for (field, value) in prepared.entry().outputs().iter().zip(output) {
        let good = value.is_finite() || value.is_nan() && !field.absent.is_empty();
        assert!(good, "{}.{} = {value} from {input:?}", prepared.entry().info().name, field.name);
    }
}

/// A call in JSON, as the faces take it.
///
/// # Panics
/// If the answer is no JSON, or holds a result that is neither finite nor absent.
pub fn call(data: &[u8]) {
    let Ok(text) = std::str::from_utf8(data) else { return };
    if let Ok(answer) = call_json(text) {
        Node::from_json(&answer).expect("an answer is JSON");
    }
    let Ok(Node::Table(entries)) = Node::from_json(text) else { return };
    let Some(Node::Text(name)) = entries.iter().find(|(k, _)| k == "calculation").map(|(_, v)| v.clone()) else { return };
    let rest = Node::Table(entries.into_iter().filter(|(k, _)| k != "calculation").collect());
    if let Ok(found) = evaluate(&name, &rest, Bare::Si) {
        sound(&*found.prepared, &found.input, &found.output);
    }
}

/// A call with example values for every field.
fn example_call(entry: &dyn Entry, table: Node) -> Node {
    let mut call = vec![("calculation".to_owned(), Node::from(entry.info().name))];
    if let Node::Table(given) = table {
        call.extend(given);
    }
    for field in entry.inputs().iter().filter(|f| f.absent.is_empty()) {
        if call.iter().all(|(name, _)| name != field.name) {
            call.push((field.name.to_owned(), Node::Text(field.example())));
        }
    }
    Node::Table(call)
}

fn call_seeds() -> Vec<Vec<u8>> {
    let calls = CATALOGUE.iter().flat_map(|entry| needed_settings(*entry).into_iter().map(|table| example_call(*entry, table).to_json()));
    let asked = [
        r#"{"calculation": "static_head", "height": {"value": "6.5 m", "accuracy": "0.1 m"}, "ask": {"steps": true, "correlation_of_results": true}}"#,
        r#"{"calculation": "static_head", "height": {"readings": ["6.4 m", "6.6 m"]}, "ask": {"monte_carlo": {"trials": 20, "seed": 7, "shortest": true}}}"#,
        r#"{"calculation": "static_head", "ask": {"sweep": {"height": {"from": "1 m", "to": "9 m", "points": 3}}}}"#,
        r#"{"calculation": "static_head", "ask": {"goal_seek": {"vary": "height", "low": "1 m", "high": "20 m", "of": "static_pressure", "wanted": "1 bar"}}}"#,
    ];
    calls.chain(asked.map(str::to_owned)).map(String::into_bytes).collect()
}

/// Any settings for any calculation; where they are taken, some readings are put through it.
///
/// # Panics
/// If a result is neither finite nor absent.
pub fn settings_tree(data: &[u8]) {
    let Some((place, text)) = chosen(data) else { return };
    let entry = CATALOGUE[place % CATALOGUE.len()];
    let Some(tree) = record(text) else { return };
    let Ok(prepared) = entry.prepare(&tree) else { return };
    let mut draws = Draws::new(place as u64);
    for _ in 0..3 {
        let input: Vec<f64> = entry.inputs().iter().map(|field| draws.usual(field)).collect();
        let _ = prepared.tables(&input);
        if let Ok(found) = entry.prepare(&tree).and_then(|prepared| outcome(prepared, input)) {
            sound(&*found.prepared, &found.input, &found.output);
        }
    }
}

fn settings_seeds() -> Vec<Vec<u8>> {
    let of = |(i, entry): (usize, &&dyn Entry)| {
        settings(*entry)
            .into_iter()
            .map(move |table| [&(i as u16).to_le_bytes()[..], table.to_json().as_bytes()].concat())
            .collect::<Vec<_>>()
    };
    CATALOGUE.iter().enumerate().flat_map(of).collect()
}

/// Any bits as the values of any calculation's input.
///
/// # Panics
/// If a result is neither finite nor absent.
pub fn bits(data: &[u8]) {
    let Some((head, rest)) = data.split_at_checked(2) else { return };
    let entry = CATALOGUE[usize::from(head[0]) % CATALOGUE.len()];
    let tables = needed_settings(entry);
    let Some(table) = tables.get(usize::from(head[1]) % tables.len()) else { return };
    let Ok(prepared) = entry.prepare(table) else { return };
    let mut input: Vec<f64> = entry.inputs().iter().map(|f| f.default).collect();
    for (slot, bytes) in input.iter_mut().zip(rest.chunks_exact(8)) {
        *slot = f64::from_le_bytes([bytes[0], bytes[1], bytes[2], bytes[3], bytes[4], bytes[5], bytes[6], bytes[7]]);
    }
    try_bits(&*prepared, &input);
}

/// Puts `input` through every way in: with checks, without, as steps, as tables.
///
/// # Panics
/// If a result is neither finite nor absent, or a refusal has no words.
pub fn try_bits(prepared: &dyn Prepared, input: &[f64]) {
    let entry = prepared.entry();
    let mut output = vec![f64::NAN; entry.outputs().len()];
    let judged = prepared.run(input, &mut output);
    if judged.is_refused(entry.rules()) {
        let error = judged.error(entry.inputs(), entry.rules(), input, entry.outputs(), &output);
        assert!(!error.to_string().is_empty() && !error.code().is_empty());
        assert!(prepared.steps(input).is_err());
        // What is refused is computed as well where a row of a column holds it.
        prepared.compute(input, &mut output);
    } else {
        sound(prepared, input, &output);
        let notices = judged.notices(entry.inputs(), entry.rules(), input);
        assert!(notices.iter().all(|n| !n.text.is_empty()));
        for table in prepared.tables(input) {
            let lengths = || table.columns.iter().map(|c| c.values.len());
            assert!(lengths().all(|n| Some(n) == lengths().next()), "{}: a ragged table", entry.info().name);
        }
    }
}

fn bits_seeds() -> Vec<Vec<u8>> {
    let mut draws = Draws::new(1);
    let of = |(i, entry): (usize, &&dyn Entry)| {
        let mut seed = vec![i as u8, 0];
        for field in entry.inputs() {
            seed.extend(draws.usual(field).to_le_bytes());
        }
        seed
    };
    CATALOGUE.iter().enumerate().map(of).collect()
}

/// A mutation of one of `inputs`: bytes changed, cut out, doubled, or taken from another of them.
#[must_use]
pub fn mutated(inputs: &[Vec<u8>], draws: &mut Draws) -> Vec<u8> {
    const PIECES: [&str; 26] = [
        "\"",
        "{",
        "}",
        "[",
        "]",
        ",",
        ":",
        "=",
        "-",
        "e",
        "e308",
        "9",
        "99999999999999999999",
        "0",
        ".",
        " ",
        "\n",
        "%",
        "(g)",
        "null",
        "true",
        "1e-400",
        "°C",
        "−",
        "/",
        "^",
    ];
    let mut data = inputs[draws.below(inputs.len())].clone();
    for _ in 0..=draws.below(6) {
        let (at, other) = (draws.below(data.len() + 1), draws.below(data.len() + 1));
        let (low, high) = (at.min(other), at.max(other));
        match draws.below(7) {
            0 if at < data.len() => data[at] = draws.bits() as u8,
            1 if at < data.len() => data[at] ^= 1 << draws.below(8),
            2 => drop(data.drain(low..high.min(low + 40))),
            3 => {
                let piece = data[low..high.min(low + 40)].to_vec();
                data.splice(at..at, piece);
            }
            4 => {
                let from = &inputs[draws.below(inputs.len())];
                let start = draws.below(from.len() + 1);
                let piece = from[start..from.len().min(start + draws.below(60))].to_vec();
                data.splice(at..at, piece);
            }
            5 if data.len() >= 10 => {
                let place = 2 + 8 * draws.below((data.len() - 2) / 8);
                let odd = [f64::NAN, f64::INFINITY, -0.0, 5e-324, f64::MAX, -1.0, 1.0, 0.0][draws.below(8)];
                data[place..place + 8].copy_from_slice(&odd.to_le_bytes());
            }
            _ => {
                let piece = PIECES[draws.below(PIECES.len())];
                data.splice(at..at, piece.bytes());
            }
        }
    }
    data
}

/// The settings and fields of an example call, for whoever needs a whole good call in text.
///
/// # Errors
/// As [`split`] and [`read_input`], which cannot happen for the calculation's own examples.
pub fn example(entry: &'static dyn Entry, table: Node) -> Result<(Node, Vec<f64>), flamewright::Error> {
    let Node::Table(call) = example_call(entry, table) else { return Ok((Node::Null, Vec::new())) };
    let rest = Node::Table(call.into_iter().filter(|(k, _)| k != "calculation").collect());
    let (settings, fields) = split(entry, &rest)?;
    Ok((settings, read_input(entry.inputs(), &fields, Bare::Refused)?))
}
