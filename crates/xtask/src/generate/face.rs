//! What all generated faces share: the catalogue as the generators see it.

use flamewright::catalogue::{CATALOGUE, Entry};
use flamewright::quantity::{Kind, Unit, quantity_text};
use flamewright::record::Field;
use std::collections::BTreeMap;

/// One calculation.
pub(super) struct Shape {
    pub(super) name: &'static str,
    pub(super) inputs: &'static [Field],
    pub(super) outputs: &'static [Field],
    pub(super) entry: &'static dyn Entry,
}

/// Names that C or C++ keep for themselves and that Rust lets pass as field names.
const RESERVED: &[&str] = &[
    "alignas",
    "alignof",
    "and",
    "asm",
    "auto",
    "bitand",
    "bitor",
    "bool",
    "case",
    "catch",
    "char",
    "class",
    "compl",
    "concept",
    "default",
    "delete",
    "double",
    "explicit",
    "export",
    "float",
    "friend",
    "goto",
    "inline",
    "int",
    "long",
    "mutable",
    "namespace",
    "new",
    "not",
    "operator",
    "or",
    "private",
    "protected",
    "public",
    "register",
    "requires",
    "restrict",
    "short",
    "signed",
    "sizeof",
    "switch",
    "template",
    "this",
    "throw",
    "typedef",
    "typeid",
    "typename",
    "union",
    "unsigned",
    "using",
    "volatile",
    "xor",
];

/// Every calculation, in the order of the catalogue.
pub(super) fn every() -> Result<Vec<Shape>, String> {
    let shapes: Vec<Shape> = CATALOGUE
        .iter()
        .map(|entry| Shape { name: entry.info().name, inputs: entry.inputs(), outputs: entry.outputs(), entry: *entry })
        .collect();
    for shape in &shapes {
        if let Some(field) = shape.inputs.iter().chain(shape.outputs).find(|f| RESERVED.contains(&f.name)) {
            return Err(format!("{}: the field {} has a name that C or C++ keep for themselves", shape.name, field.name));
        }
    }
    Ok(shapes)
}

/// The unit and basis of a kind as one word, for instance `pascal_gauge`.
pub(super) fn unit_name(kind: &Kind) -> String {
    let basis = match kind.basis.word() {
        "" => String::new(),
        word => format!("_{}", word.replace(['-', ' '], "_")),
    };
    format!("{}{basis}", kind.si_name)
}

/// The C type of a field of this kind, for instance `fw_pascal_gauge`.
pub(super) fn type_name(kind: &Kind) -> String {
    format!("fw_{}", unit_name(kind))
}

/// Every unit and basis in use with its meaning, by name.
pub(super) fn unit_names() -> BTreeMap<String, String> {
    let kinds = CATALOGUE.iter().flat_map(|e| e.inputs().iter().chain(e.outputs())).map(|f| f.kind);
    kinds.map(|kind| (unit_name(&kind), format!("{}, SI", capital(&kind.describe())))).collect()
}

/// Every C type in use with its meaning.
pub(super) fn type_names() -> BTreeMap<String, String> {
    unit_names().into_iter().map(|(name, meaning)| (format!("fw_{name}"), meaning)).collect()
}

fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}

/// A range in SI and, where the field is shown in another unit, in that unit.
pub(super) fn both(unit: &Unit, low: f64, high: f64) -> String {
    let si = format!("{} to {}", number(low), number(high));
    if is_si(unit) { si } else { format!("{si} ({} to {})", quantity_text(low, unit, 7), quantity_text(high, unit, 7)) }
}

/// A value in SI and, where the field is shown in another unit, in that unit.
pub(super) fn value(unit: &Unit, si: f64) -> String {
    if is_si(unit) { number(si) } else { format!("{} ({})", number(si), quantity_text(si, unit, 7)) }
}

fn is_si(unit: &Unit) -> bool {
    unit.factor == 1.0 && unit.offset == 0.0
}

/// Seven digits are enough to read a limit; the last ones of a converted limit are rounding.
fn number(si: f64) -> String {
    if !si.is_finite() {
        return if si > 0.0 { "infinity".to_owned() } else { "-infinity".to_owned() };
    }
    let rounded: f64 = format!("{si:.6e}").parse().unwrap_or(si);
    if rounded != 0.0 && !(1e-4..1e7).contains(&rounded.abs()) { format!("{rounded:e}") } else { format!("{rounded}") }
}
