//! Settings and readings made up for any calculation, so that what holds for all of them can be
//! tried on all of them. All of it is invented.

#![allow(dead_code, reason = "shared by several tests, each of which uses a part")]

use flamewright::calculation::{Form, Setting};
use flamewright::catalogue::{CATALOGUE, Entry, Prepared};
use flamewright::node::Node;
use flamewright::quantity::quantity_text;
use flamewright::record::Field;

/// Values of settings that their form alone does not give away.
const VALUES: &[(&str, &str)] = &[
    ("antifreeze", r#""ethylene glycol""#),
    ("beta", r#""3950 K""#),
    ("circuits", r#"[{"name": "all", "sections": ["flow"]}]"#),
    ("classes", r#"[{"name": "only", "from": "0 L/h"}]"#),
    ("constants", r#""de-natural-gas""#),
    ("cut_ins", r#"["74.1 degC", "74.4 degC", "74.0 degC"]"#),
    ("cut_outs", r#"["81.8 degC", "82.1 degC", "81.6 degC"]"#),
    ("fitting", r#""elbow 90""#),
    ("material", r#""mineral wool""#),
    ("pipes", r#"[{"length": "6 m", "tube": "copper 22x0.9"}, {"length": "3 m", "bore": "13 mm"}]"#),
    ("policy", r#""a house rule, invented""#),
    ("pump_flows", r#"["0 m3/h", "1 m3/h", "2 m3/h", "3 m3/h"]"#),
    ("pump_pressures", r#"["60 kPa", "55 kPa", "40 kPa", "15 kPa"]"#),
    ("rating_basis", r#""heat_input_net""#),
    ("reference_resistance", r#""10 kOhm""#),
    ("sections", r#"[{"name": "flow", "tube": "copper 22x0.9", "length": "12 m", "volume_flow": "0.6 m3/h"}]"#),
    ("tube", r#""copper 22x0.9""#),
    ("tubes", r#"["copper 15x0.7", "copper 28x0.9"]"#),
];

/// Values that suit one calculation only.
const OF_CALCULATION: &[(&str, &str, &str)] = &[
    ("gas_installation", "sections", r#"[{"name": "only", "length": "5 m", "load": "20 kW", "tube": "copper 22x0.9"}]"#),
    ("gas_pipe_sizing", "sections", r#"[{"name": "only", "length": "5 m", "load": "20 kW"}]"#),
];

fn plausible(calculation: &str, setting: &Setting) -> Option<Node> {
    let own = OF_CALCULATION.iter().find(|(c, name, _)| *c == calculation && *name == setting.name).map(|(_, _, json)| json);
    if let Some(json) = own.or_else(|| VALUES.iter().find(|(name, _)| *name == setting.name).map(|(_, json)| json)) {
        return Some(Node::from_json(json).unwrap());
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

/// Calculations that follow a plant over hours of its life: up to a second a reading without optimisation.
pub(crate) const SLOW: [&str; 6] = ["circuit_cycling", "cool_down", "pump_overrun", "overshoot", "warm_up", "cool_down_fit"];

/// The fewest settings that a calculation can be made with.
pub(crate) fn settings(entry: &dyn Entry) -> Node {
    // Many settings without a default may be left out: add one after the other while it is refused.
    let mut given: Vec<(String, Node)> = Vec::new();
    loop {
        let Err(error) = entry.prepare(&Node::Table(given.clone())) else { return Node::Table(given) };
        let name = entry.info().name;
        let missing = error.field().split('.').next().unwrap_or_default();
        let value = entry.settings().iter().find(|s| s.name == missing && given.iter().all(|(n, _)| n != missing));
        let value = value.and_then(|s| plausible(name, s)).unwrap_or_else(|| panic!("no settings can be made up for {name}: {error}"));
        given.push((missing.to_owned(), value));
    }
}

/// Every calculation, with such settings.
pub(crate) fn all() -> impl Iterator<Item = (&'static str, Box<dyn Prepared>)> {
    CATALOGUE.iter().map(|entry| (entry.info().name, entry.prepare(&settings(*entry)).unwrap()))
}

/// Numbers that look drawn and are the same every time (Knuth's MMIX generator, TAOCP 2, 3.3.4).
pub(crate) struct Draws(pub(crate) u64);

impl Draws {
    pub(crate) fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// A value of the usual range; the default half of the time where there is one; what may be left
    /// out is, one time in four.
    pub(crate) fn reading(&mut self, field: &Field) -> f64 {
        let (place, whether) = (self.next(), self.next());
        if !field.absent.is_empty() && whether < 0.25 {
            return f64::NAN;
        }
        if !field.default.is_nan() && whether < 0.5 {
            return field.default;
        }
        let (low, high) = usual(field);
        low + place * (high - low)
    }

    /// Readings that the calculation accepts, or none in that many draws.
    pub(crate) fn accepted(&mut self, prepared: &dyn Prepared, draws: usize) -> Option<(Vec<f64>, Vec<f64>)> {
        let entry = prepared.entry();
        let mut output = vec![f64::NAN; entry.outputs().len()];
        for _ in 0..draws {
            let input: Vec<f64> = entry.inputs().iter().map(|field| self.reading(field)).collect();
            if !prepared.run(&input, &mut output).is_refused(entry.rules()) {
                return Some((input, output));
            }
        }
        None
    }
}

/// The usual range of an input, within what is allowed.
pub(crate) fn usual(field: &Field) -> (f64, f64) {
    (field.minimum.max(field.usual_minimum), field.maximum.min(field.usual_maximum))
}
