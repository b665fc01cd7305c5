//! Between Python objects and the library's tree of plain values, and its errors.

use flamewright::Error;
use flamewright::node::Node;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyBool, PyDict, PyList, PyString};

/// A refusal as the package's own exception, a `ValueError` with the parts of the refusal.
pub(crate) fn error(py: Python<'_>, error: &Error) -> PyErr {
    static CLASS: PyOnceLock<Py<PyAny>> = PyOnceLock::new();
    let class = CLASS.get_or_try_init(py, || py.import("flamewright._errors")?.getattr("Error").map(Bound::unbind));
    let arguments = (
        error.to_string(),
        error.kind().code(),
        error.code(),
        error.field(),
        error.given(),
        error.value(),
        error.minimum(),
        error.maximum(),
        error.unit(),
    );
    match class.and_then(|class| class.bind(py).call1(arguments)) {
        Ok(exception) => PyErr::from_value(exception),
        Err(failed) => failed,
    }
}

/// A tree as Python dicts, lists, texts and numbers.
pub(crate) fn object_of(py: Python<'_>, node: &Node) -> PyResult<Py<PyAny>> {
    Ok(match node {
        Node::Null => py.None(),
        Node::Flag(flag) => PyBool::new(py, *flag).to_owned().into_any().unbind(),
        Node::Number(number) => number.into_pyobject(py)?.into_any().unbind(),
        Node::Text(text) => PyString::new(py, text).into_any().unbind(),
        Node::List(items) => {
            let list = PyList::empty(py);
            for item in items {
                list.append(object_of(py, item)?)?;
            }
            list.into_any().unbind()
        }
        Node::Table(entries) => {
            let dict = PyDict::new(py);
            for (key, value) in entries {
                dict.set_item(key, object_of(py, value)?)?;
            }
            dict.into_any().unbind()
        }
    })
}

/// Python dicts, lists, texts, numbers and quantities (anything with `magnitude` and `units`) as a tree.
pub(crate) fn node_of(object: &Bound<'_, PyAny>, depth: usize) -> PyResult<Node> {
    if depth > 64 {
        return Err(PyTypeError::new_err("the values are nested too deeply"));
    }
    if object.is_none() {
        return Ok(Node::Null);
    }
    if let Ok(flag) = object.cast::<PyBool>() {
        return Ok(Node::Flag(flag.is_true()));
    }
    if let Ok(text) = object.cast::<PyString>() {
        return Ok(Node::Text(text.to_str()?.to_owned()));
    }
    if let Ok(dict) = object.cast::<PyDict>() {
        let mut table = Vec::with_capacity(dict.len());
        for (key, value) in dict.iter() {
            let key = key.cast::<PyString>().map_err(|_| PyTypeError::new_err("names are texts"))?.to_str()?.to_owned();
            table.push((key, node_of(&value, depth + 1)?));
        }
        return Ok(Node::Table(table));
    }
    if let (Ok(magnitude), Ok(units)) = (object.getattr("magnitude"), object.getattr("units"))
        && let Ok(number) = magnitude.extract::<f64>()
    {
        return Ok(Node::Text(format!("{number} {}", units.str()?.to_str()?)));
    }
    if let Ok(number) = object.extract::<f64>() {
        return Ok(Node::Number(number));
    }
    if let Ok(items) = object.try_iter() {
        return items.map(|item| node_of(&item?, depth + 1)).collect::<PyResult<_>>().map(Node::List);
    }
    Err(PyTypeError::new_err(format!("{} cannot be read as a value; give text with a unit such as \"62 degC\"", object.get_type().name()?)))
}

/// A record given as a dict, or as TOML or JSON text.
pub(crate) fn record_of(object: &Bound<'_, PyAny>) -> PyResult<Node> {
    let Ok(text) = object.cast::<PyString>() else { return node_of(object, 0) };
    let text = text.to_str()?;
    let read = if text.trim_start().starts_with('{') { Node::from_json(text) } else { Node::from_toml(text) };
    read.map_err(|e| error(object.py(), &e))
}
