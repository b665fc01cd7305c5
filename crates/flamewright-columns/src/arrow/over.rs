//! A calculation laid over a table of a known schema.

use super::options::{Keep, Options, Units};
use super::source::{Source, Values};
use crate::kernel::{Columns, Target};
use crate::{Column, Status};
use arrow_array::types::Int16Type;
use arrow_array::{ArrayRef, DictionaryArray, Float64Array, Int16Array, RecordBatch, RecordBatchOptions, StringArray};
use arrow_buffer::{BooleanBuffer, Buffer, NullBuffer, ScalarBuffer};
use arrow_schema::{DataType, Field as Described, Schema, SchemaRef};
use flamewright::Error;
use flamewright::catalogue::Entry;
use flamewright::node::Node;
use flamewright::quantity::quantity_text;
use flamewright::record::Field;
use rayon::prelude::*;
use std::collections::HashMap;
use std::sync::Arc;

/// Rows converted, computed and converted back while they lie in the nearest cache.
const BLOCK: usize = 512;

/// A calculation laid over tables of one schema.
pub struct Over {
    columns: Arc<Columns>,
    sources: Vec<Source>,
    /// A result field each: factor and offset of its unit, where it is wanted.
    results: Vec<Option<(f64, f64)>>,
    kept: Vec<usize>,
    reasons: Option<ArrayRef>,
    schema: SchemaRef,
    one_thread: bool,
}

impl Over {
    /// Lays `columns` over tables of `schema`. Columns that fill no field are left alone.
    ///
    /// # Errors
    /// Whatever is wrong with the schema or the options: see the module.
    pub fn new(columns: Arc<Columns>, schema: &Schema, options: &Options) -> Result<Self, Error> {
        let entry = columns.entry();
        check_names(entry, options)?;
        let mut sources = Vec::with_capacity(entry.inputs().len());
        let mut described: Vec<Arc<Described>> = schema.fields().iter().cloned().collect();
        for field in entry.inputs() {
            let (source, stated) = Source::of(field, schema, options)?;
            if let (&Source::Column { place, .. }, Some(unit)) = (&source, stated)
                && !described[place].metadata().contains_key("unit")
            {
                // A unit said once stays with the column.
                let mut metadata = described[place].metadata().clone();
                metadata.insert("unit".to_owned(), unit.to_owned());
                described[place] = Arc::new(described[place].as_ref().clone().with_metadata(metadata));
            }
            sources.push(source);
        }
        let kept = kept(schema, &options.keep)?;
        let mut fields: Vec<Arc<Described>> = kept.iter().map(|&place| described[place].clone()).collect();
        let mut results = Vec::with_capacity(entry.outputs().len());
        for field in entry.outputs() {
            let wanted = options.outputs.as_ref().is_none_or(|names| names.iter().any(|name| name == field.name));
            results.push(if wanted {
                let (unit, scale) = output_unit(field, &options.output_units)?;
                fields.push(Arc::new(describe(entry, field, &unit, &options.prefix)));
                Some(scale)
            } else {
                None
            });
        }
        fields.push(Arc::new(Described::new(format!("{}status", options.prefix), DataType::Int16, false)));
        if options.reasons {
            let words = DataType::Dictionary(Box::new(DataType::Int16), Box::new(DataType::Utf8));
            fields.push(Arc::new(Described::new(format!("{}reason", options.prefix), words, true)));
        }
        for new in &fields[kept.len()..] {
            if fields[..kept.len()].iter().any(|old| old.name() == new.name()) {
                return Err(Error::bad_setting(new.name(), "", "the table has a column of this name; give a prefix, or do not keep it"));
            }
        }
        let mut metadata = schema.metadata().clone();
        let place = format!("flamewright.{}{}", options.prefix, entry.info().name);
        metadata.insert(place, provenance(&columns, &sources, schema).to_json());
        let reasons = options.reasons.then(|| Arc::new(StringArray::from(reasons(entry))) as ArrayRef);
        let schema = Arc::new(Schema::new_with_metadata(fields, metadata));
        Ok(Self { columns, sources, results, kept, reasons, schema, one_thread: false })
    }

    /// The same without other threads than the one that asks: the same results to the bit.
    #[must_use]
    pub fn on_one_thread(mut self) -> Self {
        self.one_thread = true;
        self
    }

    /// The schema of the results: the columns kept, the results wanted, `status`, `reason`.
    #[must_use]
    pub fn schema(&self) -> SchemaRef {
        self.schema.clone()
    }

    /// The columns kept and the results, a row for each row of `batch`.
    ///
    /// `status` holds the number of [`Status`], `reason` the words where a row was refused.
    ///
    /// # Errors
    /// Only where `batch` has another schema than the one given to [`Over::new`].
    pub fn evaluate(&self, batch: &RecordBatch) -> Result<RecordBatch, Error> {
        let rows = batch.num_rows();
        let values: Vec<Values<'_>> = self.sources.iter().map(|source| source.over(batch)).collect::<Result<_, _>>()?;
        let wanted = self.results.iter().flatten().count();
        let bytes = rows.div_ceil(8);
        let mut results: Vec<(Vec<f64>, Vec<u8>)> = (0..wanted).map(|_| (vec![0.0; rows], vec![0; bytes])).collect();
        let mut status = vec![0_i16; rows];
        let mut reasons = if self.reasons.is_some() { (vec![0_i16; rows], vec![0_u8; bytes]) } else { (Vec::new(), Vec::new()) };

        let chunk = self.columns.chunk();
        let mut parts: Vec<Part<'_>> = status.chunks_mut(chunk).enumerate().map(|(i, status)| Part::new(i * chunk, status)).collect();
        for (numbers, valid) in &mut results {
            for (part, column) in parts.iter_mut().zip(numbers.chunks_mut(chunk).zip(valid.chunks_mut(chunk / 8))) {
                part.results.push(column);
            }
        }
        for (part, column) in parts.iter_mut().zip(reasons.0.chunks_mut(chunk).zip(reasons.1.chunks_mut(chunk / 8))) {
            part.reasons = Some(column);
        }
        if self.one_thread || parts.len() == 1 {
            for part in &mut parts {
                self.compute(&values, part);
            }
        } else {
            parts.par_iter_mut().for_each(|part| self.compute(&values, part));
        }
        drop(parts);

        let nulls =
            |valid: Vec<u8>| Some(NullBuffer::new(BooleanBuffer::new(Buffer::from_vec(valid), 0, rows))).filter(|n| n.null_count() > 0);
        let mut arrays: Vec<ArrayRef> = Vec::with_capacity(self.schema.fields().len());
        for &place in &self.kept {
            arrays.extend(batch.columns().get(place).cloned());
        }
        for (numbers, valid) in results {
            arrays.push(Arc::new(Float64Array::new(ScalarBuffer::from(numbers), nulls(valid))));
        }
        arrays.push(Arc::new(Int16Array::new(ScalarBuffer::from(status), None)));
        if let Some(words) = &self.reasons {
            let keys = Int16Array::new(ScalarBuffer::from(reasons.0), nulls(reasons.1));
            arrays.push(Arc::new(DictionaryArray::<Int16Type>::new(keys, words.clone())));
        }
        let options = RecordBatchOptions::new().with_row_count(Some(rows));
        RecordBatch::try_new_with_options(self.schema.clone(), arrays, &options)
            .map_err(|e| Error::bad_setting("table", "", &format!("a batch does not fit the schema: {e}")))
    }

    fn compute(&self, values: &[Values<'_>], part: &mut Part<'_>) {
        let entry = self.columns.entry();
        let mut converted = vec![0.0; BLOCK * values.len()];
        let mut found = [Status::OK; BLOCK];
        let rows = part.status.len();
        let mut start = 0;
        while start < rows {
            let width = BLOCK.min(rows - start);
            let (first, end) = (part.first + start, start + width);
            for (source, block) in values.iter().zip(converted.chunks_mut(BLOCK)) {
                source.fill(first, &mut block[..width]);
            }
            let inputs: Vec<Column<'_>> = values
                .iter()
                .zip(converted.chunks(BLOCK))
                .map(|(source, block)| match source {
                    Values::Constant(si) => Column::Constant(*si),
                    Values::Si(all) => Column::Values(&all[first..first + width]),
                    Values::Converted { .. } => Column::Values(&block[..width]),
                })
                .collect();
            let status = &mut found[..width];
            {
                let wanted = self.results.iter().enumerate().filter(|(_, r)| r.is_some()).map(|(place, _)| place);
                let columns = wanted.zip(part.results.iter_mut().map(|(numbers, _)| &mut numbers[start..end])).collect();
                self.columns.rows(&inputs, 0, &mut Target { columns, status });
            }
            let refused = status.iter().any(|s| !s.has_result());
            let wanted = self.results.iter().zip(entry.outputs()).filter_map(|(r, field)| r.map(|scale| (scale, field)));
            for ((numbers, valid), (scale, field)) in part.results.iter_mut().zip(wanted) {
                let (numbers, valid) = (&mut numbers[start..end], &mut valid[start / 8..end.div_ceil(8)]);
                if scale != (1.0, 0.0) {
                    for value in &mut *numbers {
                        *value = (*value - scale.1) / scale.0;
                    }
                }
                // Where no row is refused, only a result that may be absent can be null.
                if refused || !field.absent.is_empty() {
                    set_bits(valid, numbers.iter().map(|value| !value.is_nan()));
                } else {
                    valid.fill(u8::MAX);
                }
            }
            for (shown, status) in part.status[start..end].iter_mut().zip(&*status) {
                *shown = status.0.cast_signed();
            }
            if let (Some((keys, valid)), true) = (&mut part.reasons, refused) {
                for (row, status) in status.iter().enumerate().filter(|(_, s)| !s.has_result()) {
                    let value = |field: usize| match inputs.get(field) {
                        Some(Column::Constant(si)) => *si,
                        Some(Column::Values(block)) => block[row],
                        None => f64::NAN,
                    };
                    keys[start + row] = reason(entry, *status, value);
                }
                set_bits(&mut valid[start / 8..end.div_ceil(8)], status.iter().map(|s| !s.has_result()));
            }
            start = end;
        }
    }
}

/// The rows that one core takes, from row `first` on.
struct Part<'a> {
    first: usize,
    status: &'a mut [i16],
    results: Vec<(&'a mut [f64], &'a mut [u8])>,
    reasons: Option<(&'a mut [i16], &'a mut [u8])>,
}

impl<'a> Part<'a> {
    fn new(first: usize, status: &'a mut [i16]) -> Self {
        Self { first, status, results: Vec::new(), reasons: None }
    }
}

/// Packs flags, the first into the lowest bit.
fn set_bits(bytes: &mut [u8], mut flags: impl Iterator<Item = bool>) {
    for byte in bytes {
        *byte = flags.by_ref().take(8).enumerate().fold(0, |byte, (bit, flag)| byte | u8::from(flag) << bit);
    }
}

/// Every name in `options` must be one of the calculation's.
fn check_names(entry: &dyn Entry, options: &Options) -> Result<(), Error> {
    let known = |what: &str, fields: &'static [Field], name: &str| {
        if fields.iter().any(|f| f.name == name) { Ok(()) } else { Err(Error::unknown_name(what, name, fields.iter().map(|f| f.name))) }
    };
    let stated = |units: &Units| if let Units::Stated(units) = units { units.clone() } else { Vec::new() };
    let inputs = options.constants.iter().map(|(n, _)| n).chain(options.columns.iter().map(|(n, _)| n));
    inputs.chain(stated(&options.units).iter().map(|(n, _)| n)).try_for_each(|name| known("input field", entry.inputs(), name))?;
    let outputs = options.outputs.iter().flatten();
    outputs.chain(stated(&options.output_units).iter().map(|(n, _)| n)).try_for_each(|name| known("result", entry.outputs(), name))
}

fn kept(schema: &Schema, keep: &Keep) -> Result<Vec<usize>, Error> {
    match keep {
        Keep::All => Ok((0..schema.fields().len()).collect()),
        Keep::Only(names) => names
            .iter()
            .map(|name| {
                let found = schema.fields().iter().position(|column| column.name() == name);
                found.ok_or_else(|| Error::unknown_name("column to keep", name, schema.fields().iter().map(|c| c.name().as_str())))
            })
            .collect(),
    }
}

/// The unit of a result column, with factor and offset to SI.
fn output_unit(field: &Field, units: &Units) -> Result<(String, (f64, f64)), Error> {
    let stated = match units {
        Units::Si => return Ok((field.kind.si_symbol(), (1.0, 0.0))),
        Units::Stated(units) => units.iter().find(|(name, _)| name == field.name),
    };
    match stated {
        Some((_, unit)) => Ok((unit.clone(), field.scale(unit)?)),
        None => Ok((field.unit.symbol.to_owned(), (field.unit.factor, field.unit.offset))),
    }
}

fn describe(entry: &dyn Entry, field: &Field, unit: &str, prefix: &str) -> Described {
    let said = [
        ("unit", unit),
        ("quantity", field.kind.name),
        ("basis", field.kind.basis.word()),
        ("meaning", field.doc),
        ("calculation", entry.info().name),
    ];
    let metadata: HashMap<String, String> = said
        .into_iter()
        .filter(|(key, text)| *key == "unit" || !text.is_empty())
        .map(|(key, text)| (key.to_owned(), text.to_owned()))
        .collect();
    Described::new(format!("{prefix}{}", field.name), DataType::Float64, true).with_metadata(metadata)
}

/// What the results came from, for whoever finds them later.
fn provenance(columns: &Columns, sources: &[Source], schema: &Schema) -> Node {
    let entry = columns.entry();
    let (mut constants, mut taken) = (Vec::new(), Vec::new());
    for (field, source) in entry.inputs().iter().zip(sources) {
        match *source {
            Source::Constant(si) if si.is_nan() => {}
            Source::Constant(si) => constants.push((field.name.to_owned(), Node::Text(quantity_text(si, field.unit, 17)))),
            Source::Column { place, .. } => taken.push((field.name.to_owned(), Node::from(schema.field(place).name().as_str()))),
        }
    }
    Node::from([
        ("calculation", Node::from(entry.info().name)),
        ("version", flamewright::VERSION.into()),
        ("settings", columns.settings().clone()),
        ("constants", Node::Table(constants)),
        ("columns", Node::Table(taken)),
    ])
}

/// What a field can be refused for, in the order of the words below.
const PER_FIELD: usize = 3;

/// Every reason there can be: those of each field, of each rule, and that there is no solution.
fn reasons(entry: &dyn Entry) -> Vec<String> {
    let mut words = Vec::new();
    for field in entry.inputs() {
        let shown = |si: f64| quantity_text(si, field.unit, 7);
        let why: [String; PER_FIELD] = [
            "missing or not a number".to_owned(),
            "not finite".to_owned(),
            format!("outside {} to {}", shown(field.minimum), shown(field.maximum)),
        ];
        words.extend(why.map(|why| format!("{}: {why}", field.name)));
    }
    words.extend(entry.rules().iter().map(|rule| format!("{}: {}", rule.field, rule.text)));
    words.push("the calculation has no solution there".to_owned());
    words
}

/// The place of the reason for `status` among [`reasons`].
fn reason(entry: &dyn Entry, status: Status, value: impl Fn(usize) -> f64) -> i16 {
    let fields = entry.inputs().len() * PER_FIELD;
    let place = if let Some(field) = status.refused_field() {
        let value = value(field);
        field * PER_FIELD + if value.is_nan() { 0 } else { 1 + usize::from(value.is_finite()) }
    } else {
        fields + status.refusing_rule().unwrap_or(entry.rules().len())
    };
    place as i16
}
