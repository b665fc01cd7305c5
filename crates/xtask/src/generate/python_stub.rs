//! `bindings/python/python/flamewright/__init__.pyi`: every calculation with its keywords, for type
//! checkers and editors.

use super::face::{Shape, every};
use flamewright::calculation::{Form, Setting};
use flamewright::node::Node;
use flamewright::record::Field;
use std::fmt::Write;

const TOP: &str = include_str!("python_stub.pyi.txt");

/// Words that Python keeps for itself and that serve as names here.
const RESERVED: &[&str] = &["as", "class", "from", "global", "in", "is", "lambda", "pass", "with", "yield"];

pub(crate) fn make() -> Result<String, String> {
    let mut text = String::from(TOP);
    for shape in every()? {
        calculation(&mut text, &shape).map_err(|e| e.to_string())?;
    }
    Ok(text)
}

fn argument(name: &str) -> String {
    if RESERVED.contains(&name) { format!("{name}_") } else { name.to_owned() }
}

/// `gas_rate` as `GasRate`.
fn class(name: &str) -> String {
    name.split('_').map(|word| word.chars().take(1).flat_map(char::to_uppercase).chain(word.chars().skip(1)).collect::<String>()).collect()
}

fn type_of_field(field: &Field) -> &'static str {
    if field.unit.symbol.is_empty() { "_Number" } else { "_Quantity" }
}

fn type_of_setting(setting: &Setting) -> String {
    match setting.form {
        Form::Choice(words) => format!("Literal[{}]", words.iter().map(|w| format!("\"{w}\"")).collect::<Vec<_>>().join(", ")),
        Form::Text => "str".into(),
        Form::Fuel => "str | Mapping[str, Any]".into(),
        Form::Quantity(_, unit) => if unit.symbol.is_empty() { "_Number" } else { "_Quantity" }.into(),
        Form::Quantities(..) => "Sequence[_Quantity] | Sequence[float]".into(),
        Form::Flag => "bool | str".into(),
        Form::Records(_) => "Sequence[Mapping[str, Any]]".into(),
        Form::Structure => "str | Mapping[str, Any] | Sequence[Mapping[str, Any]]".into(),
    }
}

/// Whether a calculation cannot be prepared without this setting. Only the first one that is
/// missing is told, so that a second needed one passes as optional here; the call then says so.
fn needed(shape: &Shape, setting: &Setting) -> bool {
    setting.default.is_none() && shape.entry.prepare(&Node::Table(Vec::new())).is_err_and(|e| e.field() == setting.name)
}

fn calculation(text: &mut String, shape: &Shape) -> std::fmt::Result {
    let info = shape.entry.info();
    let class = class(shape.name);
    writeln!(text, "\n@type_check_only\nclass {class}Result(Record):")?;
    for field in shape.outputs {
        writeln!(text, "    @property\n    def {}(self) -> Value:\n        \"\"\"{}\"\"\"", argument(field.name), doc(field))?;
    }
    writeln!(
        text,
        "\n@type_check_only\nclass {class}(Calculation[{class}Result]):\n    def __call__(  # type: ignore[override]\n        self,\n        *,"
    )?;
    let mut optional = String::new();
    for setting in shape.entry.settings() {
        // A name that is a setting and a field is one keyword; the field below has the wider type.
        if shape.inputs.iter().any(|f| f.name == setting.name) {
            continue;
        }
        let (name, kind) = (argument(setting.name), type_of_setting(setting));
        if needed(shape, setting) {
            writeln!(text, "        {name}: {kind},")?;
        } else {
            writeln!(optional, "        {name}: {kind} | None = ...,")?;
        }
    }
    for field in shape.inputs {
        let (name, kind) = (argument(field.name), type_of_field(field));
        if field.default.is_nan() && field.absent.is_empty() {
            writeln!(text, "        {name}: {kind},")?;
        } else {
            writeln!(optional, "        {name}: {kind} | None = ...,")?;
        }
    }
    writeln!(text, "{optional}        outputs: Sequence[str] | None = ...,")?;
    writeln!(text, "    ) -> {class}Result:\n        \"\"\"{}\"\"\"\n\n{}: {class}", info.summary.replace('\\', "\\\\"), shape.name)
}

fn doc(field: &Field) -> String {
    let basis = field.kind.basis.word();
    let basis = if basis.is_empty() { String::new() } else { format!(", {basis}") };
    let unit = if field.unit.symbol.is_empty() { "number" } else { field.unit.symbol };
    format!("{} [{unit}{basis}]", field.doc.trim()).replace('\\', "\\\\").replace('"', "'")
}
