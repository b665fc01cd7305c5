//! JSON Schemas of the visit record and of its assessment, made from the catalogue.

use super::record::{OBSERVATIONS, Stage};
use crate::calculation::{Form, Setting};
use crate::catalogue::{CATALOGUE, Entry};
use crate::node::Node;
use crate::record::Field;
use crate::uncertainty::STATEMENTS;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

const DIALECT: &str = "https://json-schema.org/draft/2020-12/schema";

fn object(properties: Vec<(String, Node)>) -> Node {
    Node::from([("type", Node::from("object")), ("properties", Node::Table(properties)), ("additionalProperties", Node::Flag(false))])
}

fn named(properties: &[(&str, Node)]) -> Node {
    object(properties.iter().map(|(k, v)| ((*k).to_string(), v.clone())).collect())
}

fn of_type(kind: &str) -> Node {
    Node::from([("type", kind)])
}

fn list_of(items: Node) -> Node {
    Node::from([("type", Node::from("array")), ("items", items)])
}

fn refer(definition: &str) -> Node {
    Node::from([("$ref", format!("#/$defs/{definition}").as_str())])
}

fn either(forms: Vec<Node>) -> Node {
    Node::Table(Vec::from([("anyOf".to_string(), Node::List(forms))]))
}

/// A schema with a description beside it.
fn described(schema: Node, description: String) -> Node {
    match schema {
        Node::Table(mut entries) => {
            entries.push(("description".to_string(), Node::Text(description)));
            Node::Table(entries)
        }
        other => other,
    }
}

fn input(field: &Field) -> Node {
    let basis = field.kind.basis.word();
    let basis = if basis.is_empty() { String::new() } else { format!(", {basis}") };
    let range = format!("{} to {}", field.show(field.minimum, 7), field.show(field.maximum, 7));
    described(refer("value"), format!("{} ({}{basis}; {range}; for instance \"{}\")", field.doc, field.kind.name, field.example()))
}

fn setting(setting: &Setting) -> Node {
    let form = match setting.form {
        Form::Choice(words) => Node::Table(Vec::from([("enum".to_string(), Node::List(words.iter().map(|&w| w.into()).collect()))])),
        Form::Text => of_type("string"),
        Form::Flag => of_type("boolean"),
        Form::Quantity(..) => either(Vec::from([of_type("string"), of_type("number")])),
        Form::Quantities(..) => list_of(either(Vec::from([of_type("string"), of_type("number")]))),
        Form::Records(_) => list_of(of_type("object")),
        Form::Fuel | Form::Structure => Node::Table(Vec::new()),
    };
    described(form, setting.doc.to_string())
}

fn part(entry: &dyn Entry) -> Node {
    let mut properties: Vec<(String, Node)> = Vec::from([
        ("label".to_string(), of_type("string")),
        ("note".to_string(), of_type("string")),
        ("instruments".to_string(), list_of(of_type("string"))),
    ]);
    properties.extend(entry.settings().iter().map(|s| (s.name.to_string(), setting(s))));
    properties.extend(entry.inputs().iter().map(|f| (f.name.to_string(), input(f))));
    described(object(properties), entry.info().summary.to_string())
}

/// JSON Schema of a visit record.
#[must_use]
pub fn record_schema() -> Node {
    let spread = either(Vec::from([of_type("string"), of_type("number")]));
    let statement = |name: &str| match name {
        "larger_of" => of_type("boolean"),
        "distribution" => Node::Table(Vec::from([(
            "enum".to_string(),
            Node::List(["rectangular", "triangular", "arcsine", "normal"].map(Node::from).into()),
        )])),
        _ => spread.clone(),
    };
    let statements: Vec<(String, Node)> = STATEMENTS.iter().map(|s| ((*s).to_string(), statement(s))).collect();
    let mut measured = Vec::from([("value".to_string(), spread.clone()), ("readings".to_string(), list_of(spread.clone()))]);
    measured.extend(statements.iter().cloned());
    let value = either(Vec::from([
        described(of_type("string"), "a number with its unit, or \"= calculation.result\"".to_string()),
        of_type("number"),
        object(measured),
    ]));
    let mut definitions = Vec::from([("value".to_string(), value), ("statement".to_string(), object(statements))]);
    definitions.extend(CATALOGUE.iter().map(|e| (format!("part.{}", e.info().name), part(*e))));

    let mut fields: Vec<(String, Node)> = Vec::new();
    let mut common: Vec<(String, Node)> = Vec::new();
    for entry in CATALOGUE {
        for field in entry.inputs() {
            if !fields.iter().any(|(name, _)| name == field.name) {
                fields.push((field.name.to_string(), refer("statement")));
            }
            if !common.iter().any(|(name, _)| name == field.name) {
                common.push((field.name.to_string(), refer("value")));
            }
        }
        for s in entry.settings() {
            if !common.iter().any(|(name, _)| name == s.name) {
                common.push((s.name.to_string(), Node::Table(Vec::new())));
            }
        }
    }
    fields.extend(["description", "identity", "calibrated", "due"].map(|k| (k.to_string(), of_type("string"))));
    let instruments = Node::from([("type", Node::from("object")), ("additionalProperties", object(fields))]);
    let texts = Node::from([("type", Node::from("object")), ("additionalProperties", of_type("string"))]);
    let parts = |name: &str| {
        let one = refer(&format!("part.{name}"));
        either(Vec::from([one.clone(), list_of(one)]))
    };
    let stage = object(CATALOGUE.iter().map(|e| (e.info().name.to_string(), parts(e.info().name))).collect());
    let not_done = CATALOGUE.iter().map(|e| e.info().name).chain(OBSERVATIONS.iter().copied());
    let mut properties: Vec<(String, Node)> = ["title", "date", "occasion"].map(|k| (k.to_string(), of_type("string"))).into();
    properties.push(("invented".to_string(), of_type("boolean")));
    properties.extend(["engineer", "site", "appliance", "signatures"].map(|k| (k.to_string(), texts.clone())));
    properties.push(("common".to_string(), object(common)));
    properties.push(("instruments".to_string(), instruments));
    properties.extend(Stage::ALL.map(|s| (s.key().to_string(), stage.clone())));
    properties.push(("not_done".to_string(), object(not_done.map(|n| (n.to_string(), of_type("string"))).collect())));
    let defect = named(&["text", "class", "remedy"].map(|k| (k, of_type("string"))));
    properties.push(("defects".to_string(), list_of(defect)));
    properties.push(("remarks".to_string(), list_of(of_type("string"))));
    head("Visit record", object(properties), Some(Node::Table(definitions)))
}

/// JSON Schema of an assessment.
#[must_use]
pub fn assessment_schema() -> Node {
    let [text, number, flag] = ["string", "number", "boolean"].map(of_type);
    let maybe = |kind: &str| Node::from([("type", Node::List([Node::from(kind), Node::from("null")].into()))]);
    let verdict = named(&[
        (
            "decision",
            Node::Table(Vec::from([(
                "enum".to_string(),
                Node::List(["conforms", "does not conform", "undecided"].map(Node::from).into()),
            )])),
        ),
        ("limit", text.clone()),
        ("probability_of_conformity", maybe("number")),
        ("guard_band", number.clone()),
        ("citation", text.clone()),
    ]);
    let value = named(&[
        ("value", maybe("number")),
        ("standard_uncertainty", maybe("number")),
        ("coverage_factor", maybe("number")),
        ("unit", text.clone()),
        ("basis", text.clone()),
        ("si", maybe("number")),
        ("meaning", text.clone()),
        ("assumed", flag.clone()),
        ("absent", maybe("string")),
        ("verdicts", list_of(verdict)),
    ]);
    let change = named(&[
        ("difference", maybe("number")),
        ("standard_uncertainty", maybe("number")),
        ("coverage_factor", maybe("number")),
        ("significant", maybe("boolean")),
    ]);
    let table = |of: Node| Node::from([("type", Node::from("object")), ("additionalProperties", of)]);
    let part = named(&[
        ("calculation", text.clone()),
        ("title", text.clone()),
        ("label", text.clone()),
        ("stage", Node::Table(Vec::from([("enum".to_string(), Node::List(Stage::ALL.map(|s| s.key().into()).into()))]))),
        ("given", table(refer("value"))),
        ("results", table(refer("value"))),
        ("change", table(refer("change"))),
        ("refused", maybe("string")),
    ]);
    let texts = |keys: &[&str]| named(&keys.iter().map(|k| (*k, text.clone())).collect::<Vec<_>>());
    let policy = named(&[("title", text.clone()), ("jurisdiction", text.clone()), ("date", text.clone()), ("invented", flag.clone())]);
    let schema = named(&[
        ("library", texts(&["name", "version"])),
        ("title", text.clone()),
        ("date", text.clone()),
        ("occasion", text.clone()),
        ("invented", flag),
        ("particulars", table(table(text.clone()))),
        ("instruments", list_of(texts(&["name", "description", "identity", "calibrated", "due"]))),
        ("policy", either(Vec::from([policy, of_type("null")]))),
        ("findings", list_of(texts(&["severity", "code", "field", "text"]))),
        ("defects", list_of(texts(&["text", "class", "remedy"]))),
        ("parts", list_of(part)),
        ("remarks", list_of(text.clone())),
        ("cautions", list_of(text.clone())),
    ]);
    head("Assessment of a visit", schema, Some(Node::from([("value", value), ("change", change)])))
}

fn head(title: &str, schema: Node, definitions: Option<Node>) -> Node {
    let mut entries = Vec::from([("$schema".to_string(), Node::from(DIALECT)), ("title".to_string(), Node::from(title))]);
    if let Node::Table(rest) = schema {
        entries.extend(rest);
    }
    if let Some(definitions) = definitions {
        entries.push(("$defs".to_string(), definitions));
    }
    Node::Table(entries)
}
