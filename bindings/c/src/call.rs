//! The one body of all functions that take numbers.

use crate::context::{Face, fw_context, given};
use crate::guard::{guarded, usable};
use crate::status::{Failure, fw_status, fw_status::*};
use columns::{Column, Status};
use core_library::calculation::Judged;
use core_library::catalogue::Prepared;

const DOUBLE: usize = size_of::<f64>();
/// Rows worked on at a time: small enough to stay in the cache, and for the library to need no threads.
const CHUNK: usize = 1024;

/// The row has its result and nothing is to be said about it.
pub const FW_ROW_OK: u16 = 0;
/// The row has its result and something is to be known about it.
pub const FW_ROW_NOTICE: u16 = 1;
/// From here on the row has no result. FW_ROW_FIELD + i: input field i was refused.
pub const FW_ROW_FIELD: u16 = 0x100;
/// FW_ROW_RULE + i: rule i of the calculation refused the row.
pub const FW_ROW_RULE: u16 = 0x200;
/// The sum has no finite result for the row.
pub const FW_ROW_UNDEFINED: u16 = 0x300;

const _: () = {
    assert!(Status::OK.0 == FW_ROW_OK && Status::NOTICE.0 == FW_ROW_NOTICE);
    assert!(matches!(Status(FW_ROW_FIELD + 5).refused_field(), Some(5)) && !Status(FW_ROW_FIELD).has_result());
    assert!(matches!(Status(FW_ROW_RULE + 5).refusing_rule(), Some(5)));
    assert!(Status(FW_ROW_UNDEFINED).refused_field().is_none() && Status(FW_ROW_UNDEFINED).refusing_rule().is_none());
};

/// What is to be known about a result that stands. Both are zero if nothing is.
/// fw_notices_json() puts them into words.
#[repr(C)]
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct fw_notices {
    /// Bit i: input field i lies outside its usual range.
    pub unusual: u64,
    /// Bit i: rule i of the calculation, in the order of the catalogue, deserves a notice.
    pub raised: u64,
}

/// One input of a batch.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct fw_column {
    /// The value of the first row, SI.
    pub values: *const f64,
    /// Bytes from one row to the next; 0 takes the first value for every row.
    pub stride: usize,
}

/// One output of a batch.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct fw_column_out {
    /// Where the value of the first row goes, SI; NULL where this output is not wanted.
    pub values: *mut f64,
    /// Bytes from one row to the next.
    pub stride: usize,
}

#[cold]
fn refused(prepared: &dyn Prepared, judged: &Judged, input: &[f64], output: &[f64]) -> Failure {
    let entry = prepared.entry();
    judged.error(entry.inputs(), entry.rules(), input, entry.outputs(), output).into()
}

#[cold]
fn wrong_count(name: &str, got: usize, needed: usize) -> Failure {
    Failure::call(FW_WRONG_COUNT, format!("{name} has {got} values, {needed} are needed"))
}

/// Evaluates one reading; `output` is local to the caller, who hands it over where this succeeds.
#[inline(always)]
fn one(context: &fw_context, input: &[f64], output: &mut [f64]) -> Result<fw_notices, Failure> {
    let prepared = context.prepared();
    let entry = prepared.entry();
    if input.len() != entry.inputs().len() {
        return Err(wrong_count("input", input.len(), entry.inputs().len()));
    }
    if output.len() != entry.outputs().len() {
        return Err(wrong_count("output", output.len(), entry.outputs().len()));
    }
    let judged = prepared.run(input, output);
    if judged.is_refused(entry.rules()) {
        return Err(refused(prepared, &judged, input, output));
    }
    Ok(fw_notices { unusual: judged.unusual, raised: judged.raised.0 })
}

/// Refuses a place for notices that cannot be written; NULL stands for "not wanted".
#[inline(always)]
fn notices_usable(notices: *const fw_notices) -> Result<(), Failure> {
    if notices.is_null() { Ok(()) } else { usable(notices, "notices") }
}

impl Face {
    /// The body of every scalar function.
    ///
    /// # Safety
    /// `context` is NULL or a living context; the others are NULL or may be read (written) as what they
    /// point to.
    #[inline(always)]
    pub(crate) unsafe fn evaluate<const INPUTS: usize, const OUTPUTS: usize>(
        &self,
        context: *const fw_context,
        input: *const [f64; INPUTS],
        output: *mut [f64; OUTPUTS],
        notices: *mut fw_notices,
    ) -> fw_status {
        guarded(|| {
            usable(input, "input")?;
            usable(output, "output")?;
            notices_usable(notices)?;
            // SAFETY: what the caller promises.
            let context = unsafe { self.context(context) }?;
            // SAFETY: looked at above; copied, so that the output may lie over the input.
            let values = unsafe { input.read() };
            let mut results = [f64::NAN; OUTPUTS];
            let found = one(context, &values, &mut results)?;
            // SAFETY: looked at above.
            unsafe {
                output.write(results);
                if !notices.is_null() {
                    notices.write(found);
                }
            }
            Ok(())
        })
    }

    /// The body of every function that writes the defaults of an input struct.
    ///
    /// # Safety
    /// `input` is NULL or may be written.
    pub(crate) unsafe fn unset<const INPUTS: usize>(&self, input: *mut [f64; INPUTS]) -> fw_status {
        guarded(|| {
            usable(input, "input")?;
            let fields = core_library::catalogue::calculation(self.name())?.inputs();
            let mut values = [f64::NAN; INPUTS];
            if fields.len() != INPUTS {
                return Err(wrong_count("input", INPUTS, fields.len()));
            }
            for (value, field) in values.iter_mut().zip(fields) {
                *value = field.default;
            }
            // SAFETY: looked at above.
            unsafe { input.write(values) };
            Ok(())
        })
    }

    /// The body of every batch function.
    ///
    /// # Safety
    /// As [`Face::evaluate`], for `rows` structs a stride apart, and `rows` statuses or NULL.
    pub(crate) unsafe fn batch<const INPUTS: usize, const OUTPUTS: usize>(
        &self,
        context: *const fw_context,
        rows: usize,
        (input, input_stride): (*const [f64; INPUTS], usize),
        (output, output_stride): (*mut [f64; OUTPUTS], usize),
        row_status: *mut u16,
    ) -> fw_status {
        guarded(|| {
            // SAFETY: what the caller promises.
            let context = unsafe { self.context(context) }?;
            let inputs = Span::new("inputs", input.cast(), input_stride, INPUTS * DOUBLE, rows)?;
            let outputs = Span::new("outputs", output.cast_const().cast(), output_stride, OUTPUTS * DOUBLE, rows)?;
            outputs.takes_every_row()?;
            outputs.keeps_clear_of(&inputs, SAME_ROW)?;
            let of_field = |span: &Span, i: usize| Span { start: span.start.wrapping_add(i), ..*span };
            let given: [Span; INPUTS] = std::array::from_fn(|i| of_field(&inputs, i));
            let wanted: [Option<Span>; OUTPUTS] = std::array::from_fn(|i| Some(of_field(&outputs, i)));
            if !row_status.is_null() {
                let status = Span::new("row_status", row_status.cast_const(), size_of::<u16>(), size_of::<u16>(), rows)?;
                inputs.keeps_clear_of(&status, NEVER)?;
                outputs.keeps_clear_of(&status, NEVER)?;
            }
            // SAFETY: `Span::new` found the pointers usable; what lies behind them is the caller's promise.
            unsafe { all_rows(context, rows, &given, &wanted, row_status) }
        })
    }
}

/// An output may lie over the input of its own row, which has been read by then.
const SAME_ROW: fn(i128) -> bool = |k| k == 0;
const NEVER: fn(i128) -> bool = |_| false;

/// Equal pieces of memory, one a row.
#[derive(Clone, Copy)]
struct Span<T = f64> {
    name: &'static str,
    start: *const T,
    stride: usize,
    size: usize,
    rows: usize,
}

impl<T> Span<T> {
    /// Looks at everything about the rows that can be looked at.
    fn new(name: &'static str, start: *const T, stride: usize, size: usize, rows: usize) -> Result<Self, Failure> {
        if rows > 0 {
            usable(start, name)?;
        }
        if stride != 0 && (stride < size || !stride.is_multiple_of(align_of::<T>())) {
            let needed = format!("{name} has stride {stride}: a multiple of {} of at least {size} is needed", align_of::<T>());
            return Err(Failure::call(FW_BAD_STRIDE, needed));
        }
        let end = rows.saturating_sub(1).checked_mul(stride).and_then(|b| b.checked_add(size)).and_then(|b| b.checked_add(start.addr()));
        match end {
            Some(end) if isize::try_from(end - start.addr()).is_ok() => Ok(Self { name, start, stride, size, rows }),
            _ => Err(Failure::call(FW_WRONG_COUNT, format!("{name}: {rows} rows of {stride} bytes do not fit into memory"))),
        }
    }

    /// Refuses one place for all rows, where results would be lost.
    fn takes_every_row(&self) -> Result<(), Failure> {
        if self.stride == 0 {
            return Err(Failure::call(FW_BAD_STRIDE, format!("{} has stride 0: every row needs a place of its own", self.name)));
        }
        Ok(())
    }

    fn first(&self) -> usize {
        self.start.addr()
    }

    /// One past the last byte; `new` has seen that this does not overflow.
    fn end(&self) -> usize {
        self.first() + self.rows.saturating_sub(1) * self.stride + self.size
    }

    /// Refuses rows that lie over rows of `other`, other than those that `allowed` lets through by how
    /// many rows the one lies behind the other.
    fn keeps_clear_of<U>(&self, other: &Span<U>, allowed: fn(i128) -> bool) -> Result<(), Failure> {
        if self.rows == 0 || other.rows == 0 || self.end() <= other.first() || other.end() <= self.first() {
            return Ok(());
        }
        if self.stride == other.stride && self.stride > 0 {
            // Row i of `self` can meet row i + k of `other` only for the k next to their distance.
            let stride = self.stride as i128;
            let offset = self.first() as i128 - other.first() as i128;
            let nearest = offset.div_euclid(stride);
            let meets = |k: i128| k * stride < offset + self.size as i128 && offset < k * stride + other.size as i128;
            let within = |k: i128| k.unsigned_abs() < self.rows as u128;
            if !(nearest - 1..=nearest + 1).any(|k| !allowed(k) && within(k) && meets(k)) {
                return Ok(());
            }
        }
        Err(Failure::call(FW_OVERLAP, format!("{} and {} overlap", self.name, other.name)))
    }
}

/// Evaluates all rows, a chunk at a time.
///
/// # Safety
/// The spans hold `rows` readable inputs and writable outputs, and no output lies over the input of
/// another row; `row_status` is NULL or holds `rows` places.
unsafe fn all_rows(
    context: &fw_context,
    rows: usize,
    inputs: &[Span],
    outputs: &[Option<Span>],
    row_status: *mut u16,
) -> Result<(), Failure> {
    let length = CHUNK.min(rows);
    let mut given = vec![0.0; length * inputs.len()];
    let mut results = vec![0.0; length * outputs.len()];
    let mut status = vec![Status::OK; length];
    for first in (0..rows).step_by(CHUNK) {
        let count = CHUNK.min(rows - first);
        let mut columns = Vec::with_capacity(inputs.len());
        for (span, values) in inputs.iter().zip(given.chunks_exact_mut(length)) {
            let values = values.get_mut(..count).unwrap_or_default();
            for (row, value) in values.iter_mut().enumerate() {
                // SAFETY: row `first + row` is below `rows`, and the span holds so many.
                *value = unsafe { span.start.byte_add((first + row) * span.stride).read() };
            }
            columns.push(if span.stride == 0 {
                Column::Constant(values.first().copied().unwrap_or(f64::NAN))
            } else {
                Column::Values(values)
            });
        }
        let mut targets: Vec<Option<&mut [f64]>> =
            outputs.iter().zip(results.chunks_exact_mut(length)).map(|(span, c)| span.and_then(|_| c.get_mut(..count))).collect();
        let status = status.get_mut(..count).unwrap_or_default();
        context.columns().evaluate_into(&columns, &mut targets, status)?;
        for (span, values) in outputs.iter().zip(&targets).filter_map(|(span, values)| Some((span.as_ref()?, values.as_ref()?))) {
            for (row, value) in values.iter().enumerate() {
                // SAFETY: as above; the span was made from a pointer that may be written.
                unsafe { span.start.cast_mut().byte_add((first + row) * span.stride).write(*value) };
            }
        }
        if !row_status.is_null() {
            for (row, status) in status.iter().enumerate() {
                // SAFETY: as above.
                unsafe { row_status.add(first + row).write(status.0) };
            }
        }
    }
    Ok(())
}

/// Evaluates one reading of whatever calculation `context` is of: values in field order, SI. NaN
/// stands for a value that is not given. `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_evaluate(
    context: *const fw_context,
    input: *const f64,
    input_count: usize,
    output: *mut f64,
    output_count: usize,
    notices: *mut fw_notices,
) -> fw_status {
    guarded(|| {
        // SAFETY: by the rules of the header.
        let context = unsafe { given(context) }?;
        usable(input, "input")?;
        usable(output, "output")?;
        notices_usable(notices)?;
        let entry = context.prepared().entry();
        if input_count != entry.inputs().len() {
            return Err(wrong_count("input", input_count, entry.inputs().len()));
        }
        if output_count != entry.outputs().len() {
            return Err(wrong_count("output", output_count, entry.outputs().len()));
        }
        // SAFETY: looked at above; as many values as the caller says there are. Copied, so that the
        // output may lie over the input.
        let values = unsafe { std::slice::from_raw_parts(input, input_count) }.to_vec();
        let mut results = vec![f64::NAN; output_count];
        let found = one(context, &values, &mut results)?;
        // SAFETY: looked at above.
        unsafe {
            output.copy_from_nonoverlapping(results.as_ptr(), output_count);
            if !notices.is_null() {
                notices.write(found);
            }
        }
        Ok(())
    })
}

/// Evaluates `rows` rows of whatever calculation `context` is of, from and to columns in field
/// order, SI. A row that is refused gets NaN in every output and says why in `row_status` (NULL if
/// not wanted), where FW_ROW_OK, FW_ROW_NOTICE and so on are written; no row is lost. An output whose
/// `values` is NULL is not wanted and not written; status and the other outputs are the same then.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_evaluate_columns(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_column,
    input_count: usize,
    outputs: *const fw_column_out,
    output_count: usize,
    row_status: *mut u16,
) -> fw_status {
    guarded(|| {
        // SAFETY: by the rules of the header.
        let context = unsafe { given(context) }?;
        usable(inputs, "inputs")?;
        usable(outputs, "outputs")?;
        let entry = context.prepared().entry();
        if input_count != entry.inputs().len() {
            return Err(wrong_count("inputs", input_count, entry.inputs().len()));
        }
        if output_count != entry.outputs().len() {
            return Err(wrong_count("outputs", output_count, entry.outputs().len()));
        }
        // SAFETY: looked at above; as many as the caller says there are.
        let (inputs, outputs) =
            unsafe { (std::slice::from_raw_parts(inputs, input_count), std::slice::from_raw_parts(outputs, output_count)) };
        let given: Vec<Span> = entry
            .inputs()
            .iter()
            .zip(inputs)
            .map(|(f, c)| Span::new(f.name, c.values, c.stride, DOUBLE, rows))
            .collect::<Result<_, _>>()?;
        let wanted: Vec<Option<Span>> = entry
            .outputs()
            .iter()
            .zip(outputs)
            .map(|(f, c)| (!c.values.is_null()).then(|| Span::new(f.name, c.values.cast_const(), c.stride, DOUBLE, rows)).transpose())
            .collect::<Result<_, _>>()?;
        let written: Vec<Span> = wanted.iter().copied().flatten().collect();
        written.iter().try_for_each(Span::takes_every_row)?;
        for (i, span) in written.iter().enumerate() {
            for input in &given {
                span.keeps_clear_of(input, SAME_ROW)?;
            }
            for (j, other) in written.iter().enumerate() {
                if i != j {
                    span.keeps_clear_of(other, NEVER)?;
                }
            }
        }
        if !row_status.is_null() {
            let status = Span::new("row_status", row_status.cast_const(), size_of::<u16>(), size_of::<u16>(), rows)?;
            for span in given.iter().chain(&written) {
                span.keeps_clear_of(&status, NEVER)?;
            }
        }
        // SAFETY: `Span::new` found the pointers usable; what lies behind them is the caller's promise.
        unsafe { all_rows(context, rows, &given, &wanted, row_status) }
    })
}
