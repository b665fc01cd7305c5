//! The compiled part of the Python package: calculations by name over numbers and columns.
//!
//! Names, units, ranges and meanings come from the catalogue at run time; there is no code here
//! for any one calculation.

#![allow(clippy::needless_pass_by_value, clippy::type_complexity, reason = "the forms that Python hands over")]

mod arrow;
mod convert;
mod prepared;
mod si_results;
mod worth;

use convert::{error, node_of, object_of};
use flamewright::quantity::Unit;
use flamewright::uncertainty::Measured;
use pyo3::prelude::*;

/// The catalogue as a list of dicts.
#[pyfunction]
fn catalogue(py: Python<'_>) -> PyResult<Py<PyAny>> {
    object_of(py, &flamewright::describe::catalogue())
}

/// One calculation of the catalogue as a dict.
#[pyfunction]
fn describe(py: Python<'_>, name: &str) -> PyResult<Py<PyAny>> {
    let entry = flamewright::catalogue::calculation(name).map_err(|e| error(py, &e))?;
    object_of(py, &flamewright::describe::calculation(entry))
}

/// The names of all calculations, in order.
#[pyfunction]
fn names() -> Vec<&'static str> {
    flamewright::catalogue::CATALOGUE.iter().map(|e| e.info().name).collect()
}

/// Field `i` of the inputs, or of the results, of a calculation.
fn field(py: Python<'_>, name: &str, results: bool, i: usize) -> PyResult<&'static flamewright::record::Field> {
    let entry = flamewright::catalogue::calculation(name).map_err(|e| error(py, &e))?;
    let fields = if results { entry.outputs() } else { entry.inputs() };
    fields.get(i).ok_or_else(|| pyo3::exceptions::PyTypeError::new_err("no such field"))
}

/// SI value of a text for a field.
#[pyfunction]
fn read(py: Python<'_>, name: &str, results: bool, i: usize, text: &str) -> PyResult<f64> {
    field(py, name, results, i)?.read(text).map_err(|e| error(py, &e))
}

/// Factor and offset to SI from a unit given in words, for a field.
#[pyfunction]
fn scale(py: Python<'_>, name: &str, results: bool, i: usize, unit: &str) -> PyResult<(f64, f64)> {
    field(py, name, results, i)?.scale(unit).map_err(|e| error(py, &e))
}

/// A value of an input field with what is stated of it: the mean of `repeated` readings or the only one,
/// its standard uncertainty, its degrees of freedom, and the word for its shape. Numbers are SI.
#[pyfunction]
fn stated(
    py: Python<'_>,
    name: &str,
    i: usize,
    readings: Vec<f64>,
    repeated: bool,
    statement: &Bound<'_, PyAny>,
) -> PyResult<(f64, f64, f64, &'static str)> {
    let field = field(py, name, false, i)?;
    let measured = match readings.as_slice() {
        [only] if !repeated => Ok(Measured::exact(*only)),
        several => Measured::repeated(several).map_err(|e| e.within(field.name)),
    };
    let statement = node_of(statement, 0)?;
    let measured = measured.and_then(|m| m.stated(field, &statement)).map_err(|e| error(py, &e))?;
    Ok((measured.value, measured.standard(), measured.freedom(), measured.distribution().word()))
}

/// Fixes the settings of a calculation; `plain` keeps columns to the instructions of every processor.
#[pyfunction]
#[pyo3(signature = (name, settings, plain=false))]
fn prepare(py: Python<'_>, name: &str, settings: &Bound<'_, PyAny>, plain: bool) -> PyResult<prepared::Prepared> {
    let settings = node_of(settings, 0)?;
    prepared::Prepared::new(py, name, &settings, plain)
}

/// Assesses a visit given as a dict, TOML or JSON text, by a policy given likewise or `None`.
/// Returns the assessment as a dict, as text and as a self-contained HTML page.
#[pyfunction]
#[pyo3(signature = (visit, policy=None))]
fn assess(py: Python<'_>, visit: &Bound<'_, PyAny>, policy: Option<&Bound<'_, PyAny>>) -> PyResult<(Py<PyAny>, String, String)> {
    let record = convert::record_of(visit)?;
    let policy = policy.map(convert::record_of).transpose()?;
    let result = py.detach(|| {
        let visit = flamewright::visit::Visit::read(&record)?;
        let policy = policy.map(|p| flamewright::judgement::Policy::read(&p)).transpose()?;
        let assessment = flamewright::visit::assess(visit, policy);
        Ok((assessment.to_node(), assessment.to_text(), assessment.to_html()))
    });
    let (node, text, page) = result.map_err(|e: flamewright::Error| error(py, &e))?;
    Ok((object_of(py, &node)?, text, page))
}

/// Prints an SI value in a unit given by symbol, factor and offset, to `digits` digits.
#[pyfunction]
fn show(si: f64, symbol: &str, factor: f64, offset: f64, digits: usize) -> String {
    let unit = Unit { symbol: "", factor, offset, dimension: [0; 7] };
    let number = flamewright::quantity::quantity_text(si, &unit, digits.clamp(1, 17));
    if symbol.is_empty() || !si.is_finite() { number } else { format!("{number} {symbol}") }
}

/// Factor and offset to SI from a unit in words, for a quantity and basis as the catalogue names them.
#[pyfunction]
fn scale_of(py: Python<'_>, quantity: &str, basis: &str, unit: &str) -> PyResult<(f64, f64)> {
    let fields = flamewright::catalogue::CATALOGUE.iter().flat_map(|e| e.outputs().iter().chain(e.inputs()));
    let mut same = fields.filter(|f| f.kind.name == quantity && f.kind.basis.word() == basis);
    let field = same.next().ok_or_else(|| pyo3::exceptions::PyTypeError::new_err("no such quantity"))?;
    field.scale(unit).map_err(|e| error(py, &e))
}

#[pymodule(gil_used = false)]
mod _flamewright {
    #[pymodule_export]
    use super::arrow::LaidOver;
    #[pymodule_export]
    use super::prepared::Prepared;
    #[pymodule_export]
    use super::si_results::SiResults;
    #[pymodule_export]
    use super::worth::FirstOrder;
    #[pymodule_export]
    use super::{assess, catalogue, describe, names, prepare, read, scale, scale_of, show, stated};

    #[pymodule_init]
    fn init(module: &pyo3::Bound<'_, pyo3::types::PyModule>) -> pyo3::PyResult<()> {
        use pyo3::prelude::*;
        module.add("__version__", flamewright::VERSION)
    }
}
