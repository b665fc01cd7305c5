//! Record batches give what slices and single calls give, bit for bit; whatever stands in a row is
//! the business of that row alone.

use arrow_array::cast::AsArray;
use arrow_array::types::{Float64Type, Int16Type};
use arrow_array::{
    Array, ArrayRef, Decimal128Array, DictionaryArray, Float32Array, Float64Array, Int16Array, Int64Array, RecordBatch, StringArray,
};
use arrow_schema::{ArrowError, DataType, Field as Described, Schema};
use flamewright::catalogue::{CATALOGUE, Entry};
use flamewright::node::Node;
use flamewright::record::Field;
use flamewright_columns::arrow::{Keep, Options, Over, Units};
use flamewright_columns::{Column, Columns, Table, columns};
use flamewright_trials::needed_settings;
use std::sync::Arc;

/// Every calculation that settings can be made up for.
fn every() -> Vec<Arc<Columns>> {
    let prepared = |entry: &&dyn Entry| columns(entry.info().name, &needed_settings(*entry)[0]).ok().map(Arc::new);
    let all: Vec<Arc<Columns>> = CATALOGUE.iter().filter_map(prepared).collect();
    assert!(all.len() * 100 >= CATALOGUE.len() * 95, "{} of {}", all.len(), CATALOGUE.len());
    all
}

/// Numbers that look drawn and are the same every time.
struct Drawn(u64);

impl Drawn {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }
    /// Mostly usual, sometimes left out, now and then impossible.
    fn reading(&mut self, field: &Field) -> Option<f64> {
        let (place, kind, which) = (self.next(), self.next(), self.next());
        let low = if field.usual_minimum.is_finite() { field.usual_minimum } else { field.minimum };
        let high = if field.usual_maximum.is_finite() { field.usual_maximum } else { field.maximum };
        match kind {
            k if k < 0.03 => [None, Some(f64::NAN), Some(f64::INFINITY), Some(f64::NEG_INFINITY), Some(-1e300)][(which * 5.0) as usize],
            k if k < 0.3 && !field.absent.is_empty() => None,
            k if k < 0.5 && !field.default.is_nan() => Some(field.default),
            _ => Some(low + place * (high - low)),
        }
    }
}

fn readings(entry: &dyn Entry, rows: usize, seed: u64) -> Vec<Vec<Option<f64>>> {
    let mut drawn = Drawn(seed);
    let mut columns: Vec<Vec<Option<f64>>> = entry.inputs().iter().map(|_| Vec::with_capacity(rows)).collect();
    for _ in 0..rows {
        for (column, field) in columns.iter_mut().zip(entry.inputs()) {
            column.push(drawn.reading(field));
        }
    }
    columns
}

fn batch(entry: &dyn Entry, values: &[Vec<Option<f64>>]) -> RecordBatch {
    let arrays = entry.inputs().iter().zip(values).map(|(field, column)| {
        // Under a null stands a value that would not be noticed if it were read.
        let array = Float64Array::from(column.clone());
        (field.name, Arc::new(array) as ArrayRef)
    });
    RecordBatch::try_from_iter(arrays).unwrap()
}

fn slices(calculation: &Columns, values: &[Vec<Option<f64>>]) -> Table {
    let flat: Vec<Vec<f64>> = values.iter().map(|c| c.iter().map(|v| v.unwrap_or(f64::NAN)).collect()).collect();
    let inputs: Vec<Column<'_>> = flat.iter().map(|c| Column::Values(c)).collect();
    calculation.evaluate(&inputs, flat.first().map_or(0, Vec::len)).unwrap()
}

fn si() -> Options {
    Options { units: Units::Si, output_units: Units::Si, keep: Keep::Only(Vec::new()), ..Options::default() }
}

fn over(calculation: &Arc<Columns>, batch: &RecordBatch, options: &Options) -> RecordBatch {
    Over::new(calculation.clone(), &batch.schema(), options).unwrap().evaluate(batch).unwrap()
}

/// The result is that of the slices path: same bits, null where there is no number, same status.
fn assert_same(name: &str, result: &RecordBatch, expected: &Table) {
    assert_eq!(result.num_rows(), expected.status.len(), "{name}");
    for (field, values) in expected.fields.iter().zip(&expected.columns) {
        let column = result.column_by_name(field.name).unwrap().as_primitive::<Float64Type>();
        for (row, value) in values.iter().enumerate() {
            assert_eq!(column.is_null(row), value.is_nan(), "{name}.{} row {row}", field.name);
            assert!(value.is_nan() || column.value(row).to_bits() == value.to_bits(), "{name}.{} row {row}", field.name);
        }
    }
    let status = result.column_by_name("status").unwrap().as_primitive::<Int16Type>();
    let reason = result.column_by_name("reason").unwrap();
    for (row, expected) in expected.status.iter().enumerate() {
        assert_eq!(status.value(row), expected.0.cast_signed(), "{name} row {row}");
        assert_eq!(reason.is_null(row), expected.has_result(), "{name} row {row}");
    }
}

fn reason(result: &RecordBatch, row: usize) -> String {
    let reasons = result.column_by_name("reason").unwrap().as_dictionary::<Int16Type>();
    let words = reasons.values().as_string::<i32>();
    words.value(reasons.key(row).unwrap()).to_owned()
}

#[test]
fn every_calculation_gives_what_slices_and_single_calls_give() {
    let (mut refused, mut good) = (0, 0);
    for calculation in every() {
        let entry = calculation.entry();
        let name = entry.info().name;
        // Not a multiple of the block of eight, of 512, nor of 64.
        let rows = if entry.is_long() { 2 } else { 603 };
        let values = readings(entry, rows, 1);
        let table = slices(&calculation, &values);
        assert_same(name, &over(&calculation, &batch(entry, &values), &si()), &table);
        for row in 0..rows {
            let input: Vec<f64> = values.iter().map(|c| c[row].unwrap_or(f64::NAN)).collect();
            let mut output = vec![f64::NAN; entry.outputs().len()];
            let judged = calculation.scalar().run(&input, &mut output);
            let is_refused = judged.is_refused(entry.rules());
            assert_eq!(table.status[row].has_result(), !is_refused, "{name} row {row}");
            refused += usize::from(is_refused);
            good += usize::from(!is_refused);
            for (column, single) in table.columns.iter().zip(&output) {
                let same = if is_refused { column[row].is_nan() } else { column[row].to_bits() == single.to_bits() || single.is_nan() };
                assert!(same, "{name} row {row}");
            }
        }
    }
    assert!(refused > 5_000 && good > 15_000, "{refused} {good}");
}

#[test]
fn each_field_of_each_calculation_is_refused_for_its_reason_and_alone() {
    let mut cases = 0;
    for calculation in every() {
        let entry = calculation.entry();
        let name = entry.info().name;
        let Some(sound) = sound(&calculation) else { continue };
        for (place, field) in entry.inputs().iter().enumerate() {
            let beyond = |limit: f64, way: f64| limit + way * (1.0 + limit.abs());
            let slow = entry.is_long();
            let mut tried = vec![
                (None, "missing"),
                (Some(f64::NAN), "missing"),
                (Some(f64::INFINITY), "not finite"),
                (Some(f64::NEG_INFINITY), "not finite"),
                (Some(beyond(field.minimum, -1.0)), "outside"),
                (Some(beyond(field.maximum, 1.0)), "outside"),
            ];
            // What is computed, rather than refused, is left out where it takes long.
            tried.retain(|(value, _)| !(slow && !field.absent.is_empty() && value.is_none_or(f64::is_nan)));
            // Sound rows before and behind the others.
            let around = usize::from(!slow);
            let rows = tried.len() + 2 * around;
            let given = |row: usize| tried.get(row.wrapping_sub(around));
            let column = |i: usize| -> Vec<Option<f64>> {
                (0..rows).map(|row| given(row).filter(|_| i == place).map_or(sound[i], |(value, _)| *value)).collect()
            };
            let values: Vec<Vec<Option<f64>>> = (0..sound.len()).map(column).collect();
            let result = over(&calculation, &batch(entry, &values), &si());
            let status = result.column_by_name("status").unwrap().as_primitive::<Int16Type>();
            for row in 0..rows {
                let Some(&(value, why)) = given(row) else {
                    assert!(status.value(row) < 0x100, "{name}.{} row {row}", field.name);
                    continue;
                };
                if value.is_none_or(f64::is_nan) && !field.absent.is_empty() {
                    // It may be left out: then it is not this field that is refused.
                    assert_ne!(status.value(row), 0x100 + place as i16, "{name}.{}", field.name);
                    continue;
                }
                assert_eq!(status.value(row), 0x100 + place as i16, "{name}.{} {value:?}", field.name);
                assert!(reason(&result, row).starts_with(&format!("{}: {why}", field.name)), "{name}: {}", reason(&result, row));
                cases += 1;
            }
            // A unit of something else is refused before any work, by name.
            let wrong = if field.kind.name == "electrical resistance" { "m³" } else { "Ω" };
            let options = Options { units: Units::Stated(vec![(field.name.to_owned(), wrong.to_owned())]), ..si() };
            let only = batch(entry, &values).project(&[place]).unwrap();
            let constants = entry.inputs().iter().zip(&sound).filter(|(f, _)| f.name != field.name);
            let options = Options { constants: constants.map(|(f, v)| (f.name.to_owned(), v.unwrap_or(f.default))).collect(), ..options };
            let error = Over::new(calculation.clone(), &only.schema(), &options).err().unwrap();
            assert_eq!((error.kind().code(), error.field()), ("wrong_dimension", field.name), "{name}");
            let options = Options { units: Units::Stated(vec![(field.name.to_owned(), "furlong".to_owned())]), ..options };
            let error = Over::new(calculation.clone(), &only.schema(), &options).err().unwrap();
            assert_eq!((error.kind().code(), error.field()), ("unknown_unit", field.name), "{name}");
        }
    }
    assert!(cases > 2_000, "{cases}");
}

/// A row that the calculation accepts.
fn sound(calculation: &Columns) -> Option<Vec<Option<f64>>> {
    let entry = calculation.entry();
    (0..400).map(|seed| readings(entry, 1, seed).into_iter().map(|c| c[0]).collect::<Vec<_>>()).find(|row| {
        let input: Vec<f64> = row.iter().map(|v| v.unwrap_or(f64::NAN)).collect();
        let mut output = vec![f64::NAN; entry.outputs().len()];
        !calculation.scalar().run(&input, &mut output).is_refused(entry.rules())
    })
}

fn flue() -> Arc<Columns> {
    Arc::new(columns("flue_analysis", &Node::from([("fuel", "G20")])).unwrap())
}

#[test]
fn slices_of_a_batch_give_slices_of_the_result() {
    let calculation = flue();
    let values = readings(calculation.entry(), 50_000, 3);
    let whole = batch(calculation.entry(), &values);
    let result = over(&calculation, &whole, &si());
    assert_same("flue_analysis", &result, &slices(&calculation, &values));
    // Offsets inside a byte of the validity bitmap, over the borders of blocks and of the cores' shares.
    for (from, length) in [(0, 0), (1, 1), (3, 700), (511, 513), (5, 16_384), (7, 33_001), (49_999, 1), (50_000, 0)] {
        assert_eq!(over(&calculation, &whole.slice(from, length), &si()), result.slice(from, length), "{from} {length}");
    }
}

#[test]
fn eight_threads_over_one_batch_give_identical_bytes() {
    let calculation = flue();
    let table = batch(calculation.entry(), &readings(calculation.entry(), 40_000, 4));
    let laid = Over::new(calculation, &table.schema(), &si()).unwrap();
    let bytes = |result: &RecordBatch| -> Vec<Vec<u8>> {
        let data = result.columns().iter().map(Array::to_data);
        data.flat_map(|d| d.buffers().iter().map(|b| b.to_vec()).chain(d.nulls().map(|n| n.buffer().to_vec())).collect::<Vec<_>>())
            .collect()
    };
    let expected = bytes(&laid.evaluate(&table).unwrap());
    std::thread::scope(|scope| {
        let threads: Vec<_> = (0..8).map(|_| scope.spawn(|| bytes(&laid.evaluate(&table).unwrap()))).collect();
        for thread in threads {
            assert!(thread.join().unwrap() == expected);
        }
    });
    // A single core gives the same bytes as all of them.
    let alone = rayon::ThreadPoolBuilder::new().num_threads(1).build().unwrap();
    assert!(alone.install(|| bytes(&laid.evaluate(&table).unwrap())) == expected);
}

#[test]
fn units_come_from_the_column_or_the_caller() {
    let water = Arc::new(columns("liquid_water", &Node::Null).unwrap());
    let described = |unit: &str, more: &[(&str, &str)]| {
        let metadata: std::collections::HashMap<String, String> =
            [("unit", unit)].iter().chain(more).map(|(k, v)| ((*k).to_owned(), (*v).to_owned())).collect();
        Described::new("temperature", DataType::Float64, true).with_metadata(metadata)
    };
    let table = |field: Described, values: ArrayRef| RecordBatch::try_new(Arc::new(Schema::new(vec![field])), vec![values]).unwrap();
    let warm: ArrayRef = Arc::new(Float64Array::from(vec![140.0, 61.7]));
    let plain = Options { output_units: Units::Si, ..Options::default() };
    let from_metadata = over(&water, &table(described("degF", &[]), warm.clone()), &plain);
    let bare = table(Described::new("temperature", DataType::Float64, false), warm.clone());
    let stated = Options { units: [("temperature", "degF")].into(), ..plain.clone() };
    let from_caller = over(&water, &bare, &stated);
    assert_eq!(from_metadata.column_by_name("density"), from_caller.column_by_name("density"));
    assert_eq!(from_caller.schema().field(0).metadata()["unit"], "degF", "a unit said once stays with the column");
    // As a text is read, to the bit.
    let field = &water.entry().inputs()[0];
    let mut output = vec![0.0; water.entry().outputs().len()];
    water.scalar().run(&[field.read("61.7 degF").unwrap(), water.entry().inputs()[1].default], &mut output);
    let density = from_caller.column_by_name("density").unwrap().as_primitive::<Float64Type>().value(1);
    let place = water.entry().outputs().iter().position(|f| f.name == "density").unwrap();
    assert_eq!(density.to_bits(), output[place].to_bits());

    let refusal = |table: &RecordBatch, options: &Options| Over::new(water.clone(), &table.schema(), options).err().unwrap().to_string();
    assert!(refusal(&bare, &plain).contains("no unit"), "{}", refusal(&bare, &plain));
    assert!(refusal(&table(described("degC", &[]), warm.clone()), &stated).contains("says of itself"));
    assert!(refusal(&table(described("K", &[("basis", "gauge")]), warm.clone()), &plain).contains("gauge"));
    let difference = [("quantity", "temperature difference"), ("calculation", "heat_output")];
    assert!(refusal(&table(described("K", &difference), warm), &plain).contains("temperature difference"));
}

#[test]
fn numbers_of_every_width_are_taken_and_nothing_else() {
    let water = Arc::new(columns("liquid_water", &Node::Null).unwrap());
    let options = Options { units: [("temperature", "degC")].into(), ..Options::default() };
    let density = |values: ArrayRef| -> Result<ArrayRef, flamewright::Error> {
        let table = RecordBatch::try_from_iter([("temperature", values)]).unwrap();
        let laid = Over::new(water.clone(), &table.schema(), &options)?;
        Ok(laid.evaluate(&table)?.column_by_name("density").unwrap().clone())
    };
    let expected = density(Arc::new(Float64Array::from(vec![Some(60.0), None, Some(21.5)]))).unwrap();
    assert_eq!(expected.null_count(), 1);
    let single: ArrayRef = Arc::new(Float32Array::from(vec![Some(60.0), None, Some(21.5)]));
    let decimal: ArrayRef = Arc::new(Decimal128Array::from(vec![Some(6000), None, Some(2150)]).with_precision_and_scale(10, 2).unwrap());
    for other in [single, decimal] {
        assert_eq!(&density(other).unwrap(), &expected);
    }
    let whole: ArrayRef = Arc::new(Int64Array::from(vec![Some(60), None]));
    let short: ArrayRef = Arc::new(Int16Array::from(vec![Some(60), None]));
    for other in [whole, short] {
        assert_eq!(&density(other).unwrap(), &expected.slice(0, 2));
    }
    let words: ArrayRef = Arc::new(StringArray::from(vec!["60"]));
    let coded: ArrayRef = Arc::new(vec!["60"].into_iter().collect::<DictionaryArray<Int16Type>>());
    for wrong in [words, coded] {
        let error = density(wrong).unwrap_err();
        assert!(error.to_string().contains("numbers") && error.field() == "temperature", "{error}");
    }
    let nothing = density(arrow_array::new_null_array(&DataType::Null, 3)).unwrap();
    assert_eq!(nothing.null_count(), 3);
}

#[test]
fn the_caller_chooses_columns_results_units_and_names() {
    let water = Arc::new(columns("liquid_water", &Node::Null).unwrap());
    let tag: ArrayRef = Arc::new(StringArray::from(vec!["A", "B"]));
    let flow: ArrayRef = Arc::new(Float64Array::from(vec![60.0, -40.0]));
    let table = RecordBatch::try_from_iter([("tag", tag), ("flow", flow)]).unwrap();
    let options = Node::from_json(
        r#"{"columns": {"temperature": "flow"}, "units": {"temperature": "degC"}, "constants": {"pressure": "3 bar"},
            "outputs": ["density"], "output_units": {"density": "g/mL"}, "keep": ["tag"], "prefix": "flow_"}"#,
    );
    let options = Options::read(water.entry(), &options.unwrap()).unwrap();
    let result = over(&water, &table, &options);
    let schema = result.schema();
    let names: Vec<&str> = schema.fields().iter().map(|f| f.name().as_str()).collect();
    assert_eq!(names, ["tag", "flow_density", "flow_status", "flow_reason"]);
    let density = result.column(1).as_primitive::<Float64Type>();
    assert!((density.value(0) - 0.9832).abs() < 1e-3 && density.is_null(1), "{density:?}");
    let words = result.column(3).as_dictionary::<Int16Type>();
    assert!(words.is_null(0));
    assert!(words.values().as_string::<i32>().value(words.key(1).unwrap()).starts_with("temperature: outside"));
    let said = &schema.metadata()["flamewright.flow_liquid_water"];
    let provenance = Node::from_json(said).unwrap();
    assert_eq!(provenance.get("version"), Some(&Node::from(flamewright::VERSION)));
    assert_eq!(provenance.get("columns"), Some(&Node::from([("temperature", "flow")])));
    assert_eq!(schema.field(1).metadata()["unit"], "g/mL");

    let refusal = |change: fn(&mut Options)| {
        let mut changed = options.clone();
        change(&mut changed);
        Over::new(water.clone(), &table.schema(), &changed).err().unwrap().to_string()
    };
    assert!(refusal(|o| o.outputs = Some(vec!["densty".into()])).contains("did you mean \"density\""));
    assert!(refusal(|o| o.output_units = [("density", "mbar")].into()).contains("density"));
    assert!(refusal(|o| o.columns = vec![("temperature".into(), "flw".into())]).contains("did you mean \"flow\""));
    assert!(refusal(|o| o.constants.push(("temperature".into(), 300.0))).contains("constant too"));
    assert!(refusal(|o| o.columns.clear()).contains("temperature"));
    assert!(refusal(|o| o.keep = Keep::Only(vec!["tagg".into()])).contains("tag"));
    let named = Options { prefix: "x".into(), ..options.clone() };
    let clash = RecordBatch::try_from_iter([("flow", table.column(1).clone()), ("xstatus", table.column(0).clone())]).unwrap();
    let clashing = Over::new(water.clone(), &clash.schema(), &Options { keep: Keep::All, ..named }).err().unwrap();
    assert!(clashing.to_string().contains("xstatus"), "{clashing}");
    for wrong in [r#"{"unit": {}}"#, r#"{"units": "SI"}"#, r#"{"outputs": "density"}"#, r#"{"constants": {"pressure": 3e5}}"#] {
        assert!(Options::read(water.entry(), &Node::from_json(wrong).unwrap()).is_err(), "{wrong}");
    }
}

#[test]
fn a_stream_gives_batch_by_batch_what_the_whole_gives() {
    let calculation = flue();
    let whole = batch(calculation.entry(), &readings(calculation.entry(), 3_000, 5));
    let expected = over(&calculation, &whole, &si());
    let cuts = [0, 1_000, 1_000, 1_001, 3_000];
    let pieces: Vec<Result<RecordBatch, ArrowError>> = cuts.windows(2).map(|w| Ok(whole.slice(w[0], w[1] - w[0]))).collect();
    let laid = Over::new(calculation.clone(), &whole.schema(), &si()).unwrap();
    let results: Vec<RecordBatch> = laid.stream(pieces.into_iter()).map(Result::unwrap).collect();
    assert_eq!(results.iter().map(RecordBatch::num_rows).collect::<Vec<_>>(), [1_000, 0, 1, 1_999]);
    for (window, result) in cuts.windows(2).zip(&results) {
        assert_eq!(*result, expected.slice(window[0], window[1] - window[0]));
    }
    // A batch of another schema, and a fault of the source, are told and end nothing else.
    let laid = Over::new(calculation, &whole.schema(), &si()).unwrap();
    let other = RecordBatch::try_from_iter([("x", Arc::new(StringArray::from(vec!["1"])) as ArrayRef)]).unwrap();
    let mixed = vec![Ok(other), Err(ArrowError::ComputeError("the disc is gone".into())), Ok(whole.clone())];
    let results: Vec<_> = laid.stream(mixed.into_iter()).collect();
    assert!(results[0].as_ref().unwrap_err().to_string().contains("schema"));
    assert!(results[1].as_ref().unwrap_err().to_string().contains("disc"));
    assert_eq!(*results[2].as_ref().unwrap(), expected);
}

#[test]
fn a_batch_of_more_than_a_million_rows_comes_in_pieces() {
    let water = Arc::new(columns("liquid_water", &Node::Null).unwrap());
    let rows = (1 << 20) + 5;
    let values: ArrayRef = Arc::new(Float64Array::from_iter_values((0..rows).map(|row| 280.0 + (row % 90) as f64)));
    let table = RecordBatch::try_from_iter([("temperature", values)]).unwrap();
    let laid = Over::new(water, &table.schema(), &si()).unwrap();
    let sizes: Vec<usize> = laid.stream(std::iter::once(Ok(table))).map(|piece| piece.unwrap().num_rows()).collect();
    assert_eq!(sizes, [1 << 20, 5]);
}
