//! A calculation with its settings fixed.

use crate::arrow::LaidOver;
use crate::convert::{error, node_of, object_of};
use crate::si_results::SiResults;
use crate::worth::FirstOrder;
use flamewright::Error;
use flamewright::calculation::Notice;
use flamewright::explore::goal_seek;
use flamewright::node::Node;
use flamewright::record::Field;
use flamewright::uncertainty::{Covariance, Distribution, first_order, monte_carlo};
use flamewright_columns::arrow::Options;
use flamewright_columns::{Column, Columns, Status};
use numpy::{PyArray1, PyArrayMethods, PyReadonlyArray1, PyUntypedArrayMethods};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PySlice, PyString, PyTuple};
use std::sync::Arc;

/// More fields than any calculation has.
const MOST: usize = 64;

/// Results and notices of one evaluation.
type Evaluated = (Vec<f64>, Vec<(String, String, String)>);

/// A calculation with its settings fixed.
#[pyclass(frozen, module = "flamewright._flamewright")]
pub struct Prepared {
    columns: Arc<Columns>,
    names: Vec<Py<PyString>>,
    defaults: Vec<f64>,
    results: Arc<[Py<PyString>]>,
}

fn words(notices: Vec<Notice>) -> Vec<(String, String, String)> {
    notices.into_iter().map(|n| (n.code.to_owned(), n.field.to_owned(), n.text)).collect()
}

impl Prepared {
    pub(crate) fn new(py: Python<'_>, name: &str, settings: &Node, plain: bool) -> PyResult<Self> {
        let columns = flamewright_columns::columns(name, settings).map_err(|e| error(py, &e))?;
        let columns = if plain { columns.plain() } else { columns };
        let inputs = columns.entry().inputs();
        let interned = |fields: &[Field]| fields.iter().map(|f| PyString::intern(py, f.name).unbind()).collect::<Vec<_>>();
        let (names, results) = (interned(inputs), interned(columns.entry().outputs()).into());
        let defaults = inputs.iter().map(|f| f.default).collect();
        Ok(Self { columns: Arc::new(columns), names, defaults, results })
    }

    fn run(&self, input: &[f64]) -> Result<(Vec<f64>, flamewright::calculation::Judged), Error> {
        let entry = self.columns.entry();
        let mut output = vec![f64::NAN; entry.outputs().len()];
        let judged = self.columns.scalar().run(input, &mut output);
        if judged.is_refused(entry.rules()) {
            return Err(judged.error(entry.inputs(), entry.rules(), input, entry.outputs(), &output));
        }
        Ok((output, judged))
    }

    /// The inputs as they are where nothing else is given.
    fn with_defaults<'a>(&self, input: &'a mut [f64; MOST]) -> PyResult<&'a mut [f64]> {
        let input = input.get_mut(..self.defaults.len()).ok_or_else(|| PyTypeError::new_err("too many fields"))?;
        input.copy_from_slice(&self.defaults);
        Ok(input)
    }

    /// The place of the input that a keyword names.
    fn place(&self, py: Python<'_>, key: &Bound<'_, PyAny>) -> PyResult<usize> {
        // Keywords are interned, so that the address usually tells.
        if let Some(place) = self.names.iter().position(|n| n.as_ptr() == key.as_ptr()) {
            return Ok(place);
        }
        let name = key.cast::<PyString>()?.to_str()?;
        let fields = self.columns.entry().inputs();
        let place = fields.iter().position(|f| f.name == name);
        place.ok_or_else(|| error(py, &Error::unknown_name("field", name, fields.iter().map(|f| f.name))))
    }

    fn covariance(&self, py: Python<'_>, standard: &[f64], correlations: &[(usize, usize, f64)]) -> PyResult<Covariance> {
        let mut covariance = Covariance::independent(standard);
        for &(i, j, r) in correlations {
            covariance.correlate(i, j, r).map_err(|e| error(py, &e))?;
        }
        if standard.len() != self.names.len() {
            return Err(PyTypeError::new_err("one standard uncertainty an input is needed"));
        }
        Ok(covariance)
    }
}

/// Most numbers (32 MiB of them) in a block that results share: glibc maps what is larger afresh each time, so
/// that sharing would gain nothing, and one result kept would keep the others.
const SHARED: usize = 1 << 22;

/// Memory for results. Those of a short batch share one block: an allocator keeps a piece of that size for
/// the next batch, where twenty pieces are given back to the system and come as fresh pages each time,
/// which costs as much as the sums. Each batch has a block of its own, which lives as long as an array of it.
struct Results<'py> {
    blocks: Vec<Bound<'py, PyArray1<f64>>>,
    /// Numbers from the beginning of one column to that of the next.
    stride: usize,
}

impl<'py> Results<'py> {
    fn new(py: Python<'py>, count: usize, rows: usize) -> Self {
        // Columns that begin a multiple of a page apart would meet in the same lines of the cache.
        let stride = if rows < 512 { rows.next_multiple_of(8) } else { rows.next_multiple_of(512) + 8 }.max(1);
        let (blocks, length) = match count.checked_mul(stride) {
            Some(all) if all <= SHARED => (1, all),
            _ => (count, stride),
        };
        // SAFETY: NumPy hands over memory of another language's allocator, with whatever bytes are in it, and
        // any bytes are a number. Every row of every column is written before it is read; the few numbers
        // between columns, which only `base` of an array shows, are as `numpy.empty` would give them.
        #[allow(unsafe_code)]
        let block = || unsafe { PyArray1::<f64>::new(py, length, false) };
        Self { blocks: (0..blocks).map(|_| block()).collect(), stride }
    }

    /// The columns as arrays of `rows` numbers.
    fn columns(&self, py: Python<'py>, rows: usize) -> PyResult<Vec<Bound<'py, PyAny>>> {
        let mut columns = Vec::new();
        for block in &self.blocks {
            for start in (0..block.len()).step_by(self.stride) {
                columns.push(block.get_item(PySlice::new(py, start as isize, (start + rows) as isize, 1))?);
            }
        }
        Ok(columns)
    }
}

#[pymethods]
impl Prepared {
    /// Names of the input fields, in order.
    #[getter]
    fn inputs(&self, py: Python<'_>) -> Vec<Py<PyString>> {
        self.names.iter().map(|n| n.clone_ref(py)).collect()
    }

    /// Results and notices for SI values in field order.
    fn evaluate(&self, py: Python<'_>, input: Vec<f64>) -> PyResult<Evaluated> {
        let (output, judged) = self.run(&input).map_err(|e| error(py, &e))?;
        let entry = self.columns.entry();
        Ok((output, words(judged.notices(entry.inputs(), entry.rules(), &input))))
    }

    /// SI floats by keyword in, SI floats by name out.
    #[pyo3(signature = (/, **fields))]
    fn si(&self, py: Python<'_>, fields: Option<&Bound<'_, PyDict>>) -> PyResult<SiResults> {
        let mut input = [f64::NAN; MOST];
        let input = self.with_defaults(&mut input)?;
        for (key, value) in fields.into_iter().flatten() {
            input[self.place(py, &key)?] = value.extract::<f64>()?;
        }
        let entry = self.columns.entry();
        let mut values = vec![f64::NAN; self.results.len()].into_boxed_slice();
        let judged = self.columns.scalar().run(input, &mut values);
        if judged.is_refused(entry.rules()) {
            return Err(error(py, &judged.error(entry.inputs(), entry.rules(), input, entry.outputs(), &values)));
        }
        Ok(SiResults { calculation: entry.info().name, names: Arc::clone(&self.results), values })
    }

    /// Columns of SI values (arrays of one length, or single numbers) in field order; gives the results
    /// whose places are `wanted`, or all, and the status.
    #[pyo3(signature = (inputs, rows, wanted=None))]
    fn evaluate_columns<'py>(
        &self,
        py: Python<'py>,
        inputs: Vec<Bound<'py, PyAny>>,
        rows: usize,
        wanted: Option<Vec<usize>>,
    ) -> PyResult<(Vec<Bound<'py, PyAny>>, Bound<'py, PyArray1<u16>>)> {
        let arrays: Vec<Option<PyReadonlyArray1<'py, f64>>> = inputs.iter().map(|i| i.extract().ok()).collect();
        let mut given = Vec::with_capacity(inputs.len());
        for (array, object) in arrays.iter().zip(&inputs) {
            given.push(match array {
                Some(array) => Column::Values(array.as_slice().map_err(|_| PyTypeError::new_err("columns must be contiguous"))?),
                None => Column::Constant(object.extract()?),
            });
        }
        let count = self.columns.entry().outputs().len();
        let wanted = wanted.unwrap_or_else(|| (0..count).collect());
        let results = Results::new(py, wanted.len(), rows);
        let status = PyArray1::<u16>::zeros(py, rows, false);
        {
            let mut writable: Vec<_> = results.blocks.iter().map(PyArrayMethods::readwrite).collect();
            let mut columns = Vec::with_capacity(wanted.len());
            for block in &mut writable {
                let block = block.as_slice_mut().map_err(|_| PyTypeError::new_err("result columns must be contiguous"))?;
                columns.extend(block.chunks_exact_mut(results.stride).map(|column| &mut column[..rows]));
            }
            let mut targets: Vec<Option<&mut [f64]>> = (0..count).map(|_| None).collect();
            for (place, column) in wanted.iter().zip(columns) {
                let target = targets.get_mut(*place).ok_or_else(|| PyTypeError::new_err("there is no such result"))?;
                // The column replaced would reach the caller without having been written.
                if target.replace(column).is_some() {
                    return Err(PyTypeError::new_err("a result is wanted twice"));
                }
            }
            let mut status = status.readwrite();
            let status = status.as_slice_mut().map_err(|_| PyTypeError::new_err("the status must be contiguous"))?;
            // SAFETY: a `Status` is laid out as the `u16` in it, any of which it may be.
            #[allow(unsafe_code)]
            let status = unsafe { &mut *(std::ptr::from_mut(status) as *mut [Status]) };
            py.detach(|| self.columns.evaluate_into(&given, &mut targets, status)).map_err(|e| error(py, &e))?;
        }
        Ok((results.columns(py, rows)?, status))
    }

    /// The calculation laid over an Arrow table; `constants` are in SI units.
    fn over(
        &self,
        py: Python<'_>,
        table: &Bound<'_, PyAny>,
        options: &Bound<'_, PyAny>,
        constants: Vec<(String, f64)>,
    ) -> PyResult<LaidOver> {
        let mut options = Options::read(self.columns.entry(), &node_of(options, 0)?).map_err(|e| error(py, &e))?;
        options.constants = constants;
        LaidOver::new(py, self.columns.clone(), table, &options)
    }

    /// The steps of the sum: symbol, formula, numbers put in, value, source; plain and as LaTeX.
    fn steps(&self, py: Python<'_>, input: Vec<f64>) -> PyResult<Vec<Py<PyDict>>> {
        let steps = self.columns.scalar().steps(&input).map_err(|e| error(py, &e))?;
        let mut all = Vec::new();
        for step in steps {
            let dict = PyDict::new(py);
            dict.set_item("plain", step.plain())?;
            dict.set_item("latex", step.latex())?;
            dict.set_item("formula", step.formula())?;
            dict.set_item("substituted", step.substituted())?;
            dict.set_item("result", step.result())?;
            all.push(dict.unbind());
        }
        Ok(all)
    }

    /// Traces and lists that go with the result.
    fn tables(&self, py: Python<'_>, input: Vec<f64>) -> PyResult<Py<PyAny>> {
        let tables = py.detach(|| self.columns.scalar().tables(&input));
        let tables = tables.into_iter().map(|t| (t.name.to_owned(), t.to_node())).collect();
        object_of(py, &Node::Table(tables))
    }

    /// The input `vary` (SI) from `low` to `high` for which output `of` is `wanted`; whether there
    /// are several; and the outputs there.
    #[allow(clippy::too_many_arguments)]
    fn goal_seek(
        &self,
        py: Python<'_>,
        input: Vec<f64>,
        vary: &str,
        low: f64,
        high: f64,
        of: &str,
        wanted: f64,
    ) -> PyResult<(f64, bool, Vec<f64>)> {
        let found = py.detach(|| goal_seek(self.columns.scalar(), &input, vary, low, high, of, wanted));
        let goal = found.map_err(|e| error(py, &e))?;
        Ok((goal.value, goal.several, goal.output))
    }

    /// First-order propagation, from standard uncertainties, correlations and degrees of freedom of the inputs.
    #[pyo3(signature = (input, standard, correlations, freedom=Vec::new()))]
    fn first_order(
        &self,
        py: Python<'_>,
        input: Vec<f64>,
        standard: Vec<f64>,
        correlations: Vec<(usize, usize, f64)>,
        freedom: Vec<f64>,
    ) -> PyResult<FirstOrder> {
        self.run(&input).map_err(|e| error(py, &e))?;
        let covariance = self.covariance(py, &standard, &correlations)?;
        Ok(FirstOrder { result: first_order(self.columns.scalar(), &input, &covariance), freedom })
    }

    /// First-order propagation of SI floats by keyword, or of pairs of a float and its standard uncertainty; and
    /// which inputs have one.
    #[pyo3(signature = (/, **fields))]
    fn si_first_order(&self, py: Python<'_>, fields: Option<&Bound<'_, PyDict>>) -> PyResult<FirstOrder> {
        let (mut input, mut standard) = ([f64::NAN; MOST], [0.0_f64; MOST]);
        let input = self.with_defaults(&mut input)?;
        let standard = &mut standard[..input.len()];
        for (key, value) in fields.into_iter().flatten() {
            let place = self.place(py, &key)?;
            if let Ok(pair) = value.cast::<PyTuple>() {
                (input[place], standard[place]) = pair.extract()?;
            } else {
                input[place] = value.extract()?;
            }
            if !(standard[place] >= 0.0 && standard[place].is_finite()) {
                let field = &self.columns.entry().inputs()[place];
                return Err(error(
                    py,
                    &Error::bad_setting(field.name, &standard[place].to_string(), "a standard uncertainty is finite and not negative"),
                ));
            }
        }
        self.run(input).map_err(|e| error(py, &e))?;
        let result = first_order(self.columns.scalar(), input, &Covariance::independent(standard));
        Ok(FirstOrder { result, freedom: Vec::new() })
    }

    /// Monte Carlo: the draws of each output, reproducible from the seed.
    #[pyo3(signature = (input, standard, correlations, shapes, trials, seed))]
    #[allow(clippy::too_many_arguments)]
    fn monte_carlo<'py>(
        &self,
        py: Python<'py>,
        input: Vec<f64>,
        standard: Vec<f64>,
        correlations: Vec<(usize, usize, f64)>,
        shapes: Vec<String>,
        trials: usize,
        seed: u64,
    ) -> PyResult<Vec<Bound<'py, PyArray1<f64>>>> {
        self.run(&input).map_err(|e| error(py, &e))?;
        let covariance = self.covariance(py, &standard, &correlations)?;
        let shapes: Result<Vec<Distribution>, Error> = shapes.iter().map(|word| Distribution::of_word(word)).collect();
        let shapes = shapes.map_err(|e| error(py, &e))?;
        let draws =
            py.detach(|| monte_carlo(self.columns.scalar(), &input, &covariance, &shapes, trials, seed)).map_err(|e| error(py, &e))?;
        let outputs = draws.outputs();
        // One array of all draws, its rows the results: nothing is copied.
        let all = PyArray1::from_vec(py, draws.into_values()).reshape([outputs, trials])?;
        (0..outputs).map(|j| all.get_item(j)?.cast_into().map_err(PyErr::from)).collect()
    }
}
