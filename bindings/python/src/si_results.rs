//! The results of one reading on the fast path.

use pyo3::prelude::*;
use pyo3::types::{PyDict, PyFloat, PyString, PyTuple};
use std::sync::Arc;

/// Results of one call as floats in SI units, by name as an attribute or by place as in a tuple. A number becomes
/// an object of Python when it is asked for: twenty at once cost more than the sum.
#[pyclass(frozen, sequence, module = "flamewright._flamewright")]
pub struct SiResults {
    pub(crate) calculation: &'static str,
    pub(crate) names: Arc<[Py<PyString>]>,
    pub(crate) values: Box<[f64]>,
}

impl SiResults {
    fn tuple<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(py, &self.values)
    }

    fn named<'py>(&'py self, py: Python<'py>) -> impl Iterator<Item = (&'py Bound<'py, PyString>, f64)> {
        self.names.iter().map(move |name| name.bind(py)).zip(self.values.iter().copied())
    }
}

#[pymethods]
impl SiResults {
    fn __getattribute__<'py>(slf: &Bound<'py, Self>, name: &Bound<'py, PyString>) -> PyResult<Bound<'py, PyAny>> {
        let (py, this) = (slf.py(), slf.get());
        // Attributes in source text are interned, so that the address usually tells.
        let place = this.names.iter().position(|n| n.as_ptr() == name.as_ptr());
        if let Some(value) = place.and_then(|place| this.values.get(place)) {
            return Ok(PyFloat::new(py, *value).into_any());
        }
        let text = name.to_str()?;
        match this.named(py).find(|(n, _)| n.to_str().is_ok_and(|n| n == text)) {
            Some((_, value)) => Ok(PyFloat::new(py, value).into_any()),
            None => py.get_type::<PyAny>().call_method1("__getattribute__", (slf, name)),
        }
    }

    fn __len__(&self) -> usize {
        self.values.len()
    }

    fn __getitem__<'py>(&self, py: Python<'py>, place: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        self.tuple(py)?.as_any().get_item(place)
    }

    fn __iter__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.tuple(py)?.as_any().try_iter().map(Bound::into_any)
    }

    fn __eq__(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<bool> {
        let own = self.tuple(py)?;
        match other.cast::<Self>() {
            Ok(other) => own.eq(other.get().tuple(py)?),
            Err(_) => own.eq(other),
        }
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        self.tuple(py)?.hash()
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        let shown: PyResult<Vec<String>> =
            self.named(py).map(|(name, value)| Ok(format!("{name}={}", PyFloat::new(py, value).repr()?))).collect();
        Ok(format!("{}({})", self.calculation, shown?.join(", ")))
    }

    fn __dir__(slf: &Bound<'_, Self>) -> PyResult<Vec<String>> {
        let own: Vec<String> = slf.py().get_type::<PyAny>().call_method1("__dir__", (slf,))?.extract()?;
        Ok(own.into_iter().chain(slf.get().names.iter().map(ToString::to_string)).collect())
    }

    /// The names of the results, in order.
    #[getter]
    fn _fields<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(py, self.names.iter().map(|name| name.bind(py)))
    }

    /// Names and values.
    fn _asdict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let all = PyDict::new(py);
        for (name, value) in self.named(py) {
            all.set_item(name, value)?;
        }
        Ok(all)
    }
}
