//! The one loop over rows, and its list over all calculations.

use crate::Column;
use crate::status::Status;
use crate::table::Table;
use flamewright::calculation::{Calculation, Context, Judged, Notice, Raised, Settings};
use flamewright::catalogue::{Entry, Prepared, erase};
use flamewright::node::Node;
use flamewright::record::{LANES, Record};
use flamewright::working::{Silent, Straight, Working};
use flamewright::{Error, for_each_calculation};
use rayon::prelude::*;

/// Rows that the widest vector of common processors holds.
const WIDTH: usize = 8;
/// Rows handed to a core at a time, a whole number of bytes of bits: large enough to hide the
/// hand-over, small enough to balance.
const CHUNK: usize = 16 * 1024;

/// A calculation with its settings fixed, over columns.
pub struct Columns {
    kernel: Box<dyn Kernel>,
    scalar: Box<dyn Prepared>,
    settings: Node,
    plain: bool,
}

/// Where results go: the place of a result field and its column, for each that is wanted; and the status.
pub(crate) struct Target<'a> {
    pub(crate) columns: Vec<(usize, &'a mut [f64])>,
    pub(crate) status: &'a mut [Status],
}

trait Kernel: Send + Sync {
    /// `plain` keeps to the instructions that every processor of the kind has.
    fn rows(&self, plain: bool, inputs: &[Column<'_>], first: usize, target: &mut Target<'_>);
}

struct Of<C>(C);

impl<C: Calculation> Kernel for Of<C> {
    fn rows(&self, plain: bool, inputs: &[Column<'_>], first: usize, target: &mut Target<'_>) {
        #[cfg(target_arch = "x86_64")]
        if !plain {
            use std::arch::is_x86_feature_detected as has;
            // SAFETY: the processor was just found to have the features the function is compiled for.
            #[allow(unsafe_code)]
            unsafe {
                if has!("avx512f") && has!("avx512dq") && has!("avx512vl") && has!("avx512bw") {
                    return rows_avx512(&self.0, inputs, first, target);
                }
                if has!("avx2") {
                    return rows_avx2(&self.0, inputs, first, target);
                }
            }
        }
        let _ = plain;
        rows(&self.0, inputs, first, target);
    }
}

#[cfg(target_arch = "x86_64")]
#[target_feature(enable = "avx512f,avx512dq,avx512vl,avx512bw")]
fn rows_avx512<C: Calculation>(calculation: &C, inputs: &[Column<'_>], first: usize, target: &mut Target<'_>) {
    rows(calculation, inputs, first, target);
}

#[cfg(target_arch = "x86_64")]
#[target_feature(enable = "avx2")]
fn rows_avx2<C: Calculation>(calculation: &C, inputs: &[Column<'_>], first: usize, target: &mut Target<'_>) {
    rows(calculation, inputs, first, target);
}

#[inline(always)]
fn rows<C: Calculation>(calculation: &C, inputs: &[Column<'_>], first: usize, target: &mut Target<'_>) {
    let count = target.status.len();
    let mut given = C::Input::BLOCK;
    let mut result = C::Output::BLOCK;
    let mut found = Found::NOTHING;
    let ordinary = Ordinary::of::<C>(inputs, &mut given);
    for start in (0..count).step_by(LANES) {
        let here = start..count.min(start + LANES);
        for &(place, values) in &ordinary.values {
            load(&mut given.as_mut()[place], &values[first + here.start..first + here.end]);
        }
        block(calculation, &ordinary, &mut given, &mut result, &mut found, &mut target.status[here.clone()]);
        for (place, column) in &mut target.columns {
            store(&mut column[here.clone()], &result.as_ref()[*place]);
        }
    }
}

/// One block: refuse, compute, review, and the status of the lanes that have a row.
#[inline(always)]
fn block<C: Calculation>(
    calculation: &C,
    ordinary: &Ordinary<'_>,
    given: &mut <C::Input as Record>::Block,
    result: &mut <C::Output as Record>::Block,
    found: &mut Found,
    status: &mut [Status],
) {
    let rows = status.len().min(LANES);
    // Whole vectors, except of what is too dear to be done for a lane without a row.
    let lanes = if C::LONG { rows } else { rows.div_ceil(WIDTH).min(LANES / WIDTH) * WIDTH };
    // Refusing comes first for all lanes, so that a body meets only what it was written for.
    let mut raised = 0;
    for lane in 0..lanes {
        found.checked[lane] = calculation.check(&C::Input::from_fn(|i| given.as_ref()[i][lane])).0;
        raised |= found.checked[lane];
    }
    if !ordinary.holds(given.as_ref(), lanes) {
        judge_ranges::<C>(given, found, lanes);
    }
    let refused = found.ranges | Judged { raised: Raised(raised), ..Judged::default() }.is_refused(C::RULES);
    if C::LONG {
        for lane in 0..lanes {
            if found.before(lane).is_refused(C::RULES) {
                (found.reviewed[lane], found.sum[lane]) = (0, 0.0);
            } else {
                conclude(calculation, lane, given, result, found, Silent);
            }
        }
    } else if !refused {
        conclude_all(calculation, given, result, found, lanes);
    } else {
        if stand_in::<C>(given, found, lanes) {
            conclude_all(calculation, given, result, found, lanes);
        }
        leave_out::<C>(found, lanes);
    }
    // Few instructions, for what is seldom found.
    let mut infinite = 0;
    for lane in 0..lanes {
        raised |= found.reviewed[lane];
        infinite |= u64::from(found.sum[lane].to_bits() & INFINITE == INFINITE);
    }
    if infinite != 0 {
        find_undefined::<C>(result, found, lanes);
    }
    if raised == 0 && !found.ranges {
        match status.first_chunk_mut::<LANES>() {
            Some(whole) => *whole = [Status::OK; LANES],
            None => status.fill(Status::OK),
        }
    } else {
        tell::<C>(result, found, status);
    }
}

/// What is looked at on each block before its ranges are judged field by field: most blocks hold
/// nothing that is refused or noted, and constants are the same in all.
struct Ordinary<'a> {
    /// Fields that change from row to row.
    values: Vec<(usize, &'a [f64])>,
    /// Those that need a value, with the lowest and highest about which nothing is to be said.
    needed: Vec<(usize, f64, f64)>,
    /// Those that may be absent, likewise.
    optional: Vec<(usize, f64, f64)>,
    /// Whether nothing is to be said about the constants.
    constants: bool,
}

impl<'a> Ordinary<'a> {
    /// Puts the constants into `given`, where they stay.
    fn of<C: Calculation>(inputs: &[Column<'a>], given: &mut <C::Input as Record>::Block) -> Self {
        let mut ordinary = Self { values: Vec::new(), needed: Vec::new(), optional: Vec::new(), constants: true };
        for (place, (column, field)) in inputs.iter().zip(C::Input::FIELDS).enumerate() {
            let range = (place, field.minimum.max(field.usual_minimum), field.maximum.min(field.usual_maximum));
            match *column {
                Column::Constant(value) => {
                    given.as_mut()[place] = [value; LANES];
                    ordinary.constants &= value >= range.1 && value <= range.2 || value.is_nan() && !field.absent.is_empty();
                }
                Column::Values(values) => {
                    ordinary.values.push((place, values));
                    if field.absent.is_empty() { &mut ordinary.needed } else { &mut ordinary.optional }.push(range);
                }
            }
        }
        ordinary
    }

    /// Whether nothing is to be said about the range of any value of the block.
    #[inline(always)]
    fn holds(&self, given: &[[f64; LANES]], lanes: usize) -> bool {
        // Drawn into its range, an ordinary value keeps its bits. By the order of the comparisons
        // not-a-number is drawn as well where a value is needed, and kept where it may be absent.
        let mut moved = 0;
        for &(place, low, high) in &self.needed {
            for &value in &given[place][..lanes] {
                let drawn = if value >= low { value } else { low };
                let drawn = if drawn > high { high } else { drawn };
                moved |= drawn.to_bits() ^ value.to_bits();
            }
        }
        for &(place, low, high) in &self.optional {
            for &value in &given[place][..lanes] {
                let drawn = if value < low { low } else { value };
                let drawn = if drawn > high { high } else { drawn };
                moved |= drawn.to_bits() ^ value.to_bits();
            }
        }
        self.constants & (moved == 0)
    }
}

/// What was found on a block, as columns of lanes: a row of [`Judged`] would be written with a
/// stride, which keeps the compiler from taking the lanes together.
struct Found {
    /// Whether anything stands in the next three.
    ranges: bool,
    refused: [u64; LANES],
    unusual: [u64; LANES],
    undefined: [u64; LANES],
    /// Rules raised by the input.
    checked: [u64; LANES],
    /// Rules raised by the result.
    reviewed: [u64; LANES],
    /// The sum of the results, absent ones left out: finite, if each of them is, unless they are huge.
    sum: [f64; LANES],
}

/// The exponent of an infinite number, or of no number.
const INFINITE: u64 = 0x7ff << 52;

impl Found {
    const NOTHING: Self = Self {
        ranges: false,
        refused: [0; LANES],
        unusual: [0; LANES],
        undefined: [0; LANES],
        checked: [0; LANES],
        reviewed: [0; LANES],
        sum: [0.0; LANES],
    };
    /// What was found on a lane before it was computed.
    #[inline(always)]
    fn before(&self, lane: usize) -> Judged {
        Judged { refused: self.refused[lane], unusual: self.unusual[lane], raised: Raised(self.checked[lane]), undefined: false }
    }
    fn lane(&self, lane: usize) -> Judged {
        let raised = Raised(self.checked[lane] | self.reviewed[lane]);
        Judged { raised, undefined: self.undefined[lane] != 0, ..self.before(lane) }
    }
}

/// Judges each value of a block by its range.
#[cold]
#[inline(never)]
fn judge_ranges<C: Calculation>(given: &<C::Input as Record>::Block, found: &mut Found, lanes: usize) {
    found.ranges = true;
    for lane in 0..lanes {
        let judged = Judged::by_ranges(&C::Input::from_fn(|i| given.as_ref()[i][lane]));
        found.refused[lane] = judged.refused;
        found.unusual[lane] = judged.unusual;
    }
}

/// Puts the first accepted row of a block in the place of those that were refused, so that the lanes stay together.
/// Whether there is one.
#[cold]
#[inline(never)]
fn stand_in<C: Calculation>(given: &mut <C::Input as Record>::Block, found: &Found, lanes: usize) -> bool {
    let is_refused = |lane: &usize| found.before(*lane).is_refused(C::RULES);
    let Some(accepted) = (0..lanes).find(|lane| !is_refused(lane)) else { return false };
    for refused in (0..lanes).filter(is_refused) {
        given.as_mut().iter_mut().for_each(|column| column[refused] = column[accepted]);
    }
    true
}

/// Takes back what was found on the results of rows that were refused.
#[cold]
#[inline(never)]
fn leave_out<C: Calculation>(found: &mut Found, lanes: usize) {
    for lane in 0..lanes {
        if found.before(lane).is_refused(C::RULES) {
            (found.reviewed[lane], found.sum[lane]) = (0, 0.0);
        }
    }
}

/// Finds the lanes with an undefined result. That of a refused row, which was not computed, is whatever
/// stood there; why it was refused goes before in its status.
#[cold]
#[inline(never)]
fn find_undefined<C: Calculation>(result: &<C::Output as Record>::Block, found: &mut Found, lanes: usize) {
    found.ranges = true;
    for (values, field) in result.as_ref().iter().zip(C::Output::FIELDS) {
        for (undefined, &value) in found.undefined.iter_mut().zip(&values[..lanes]) {
            *undefined |= u64::from(field.is_undefined(value));
        }
    }
}

/// The status of each row, and no result where it has none.
fn tell<C: Calculation>(result: &mut <C::Output as Record>::Block, found: &mut Found, status: &mut [Status]) {
    for (lane, status) in status.iter_mut().enumerate() {
        let judged = found.lane(lane);
        *status = Status::of(&judged, C::RULES);
        if !status.has_result() {
            result.as_mut().iter_mut().for_each(|column| column[lane] = f64::NAN);
        }
    }
    if found.ranges {
        *found = Found::NOTHING;
    }
}

/// Computes all lanes and reviews their results.
#[inline(always)]
fn conclude_all<C: Calculation>(
    calculation: &C,
    given: &<C::Input as Record>::Block,
    result: &mut <C::Output as Record>::Block,
    found: &mut Found,
    lanes: usize,
) {
    if C::STRAIGHT && (0..lanes).fold(true, |all, lane| all & calculation.is_straight(&C::Input::from_fn(|i| given.as_ref()[i][lane]))) {
        for lane in 0..lanes {
            conclude(calculation, lane, given, result, found, Straight);
        }
    } else {
        for lane in 0..lanes {
            conclude(calculation, lane, given, result, found, Silent);
        }
    }
}

/// Computes one lane and reviews its result.
#[inline(always)]
fn conclude<C: Calculation, W: Working>(
    calculation: &C,
    lane: usize,
    given: &<C::Input as Record>::Block,
    result: &mut <C::Output as Record>::Block,
    found: &mut Found,
    mut working: W,
) {
    let input = C::Input::from_fn(|i| given.as_ref()[i][lane]);
    let output = calculation.compute(&input, &mut working);
    found.reviewed[lane] = calculation.review(&input, &output).0;
    let values = output.to_array();
    // Four chains: one would take as long as half the sums of a reading in the flue.
    let mut sums = [0.0; 4];
    for (i, (&value, field)) in values.as_ref().iter().zip(C::Output::FIELDS).enumerate() {
        sums[i % 4] += if value.is_nan() & !field.absent.is_empty() { 0.0 } else { value };
    }
    found.sum[lane] = (sums[0] + sums[1]) + (sums[2] + sums[3]);
    for (column, value) in result.as_mut().iter_mut().zip(values.as_ref()) {
        column[lane] = *value;
    }
}

/// Takes rows into their lanes; lanes without a row repeat the first one.
#[inline(always)]
fn load(lanes: &mut [f64; LANES], rows: &[f64]) {
    match rows.first_chunk() {
        Some(whole) => *lanes = *whole,
        None => load_part(lanes, rows),
    }
}

/// Apart, because in line it would have whole blocks taken up value by value as well.
#[cold]
#[inline(never)]
fn load_part(lanes: &mut [f64; LANES], rows: &[f64]) {
    *lanes = [rows.first().copied().unwrap_or(f64::NAN); LANES];
    lanes[..rows.len()].copy_from_slice(rows);
}

/// Gives the lanes that have a row.
#[inline(always)]
fn store(rows: &mut [f64], lanes: &[f64; LANES]) {
    match rows.first_chunk_mut() {
        Some(whole) => *whole = *lanes,
        None => rows.copy_from_slice(&lanes[..rows.len()]),
    }
}

impl Columns {
    /// The calculation.
    #[must_use]
    pub fn entry(&self) -> &'static dyn Entry {
        self.scalar.entry()
    }

    /// The same calculation, one reading at a time.
    #[inline]
    #[must_use]
    pub fn scalar(&self) -> &dyn Prepared {
        &*self.scalar
    }

    /// The settings as they were given.
    #[must_use]
    pub fn settings(&self) -> &Node {
        &self.settings
    }

    /// The same with the instructions that every processor of the kind has, whatever this one can do
    /// besides: the same results to the bit, only slower. It is there to show that.
    #[must_use]
    pub fn plain(mut self) -> Self {
        self.plain = true;
        self
    }

    /// Rows handed to a core at a time.
    pub(crate) fn chunk(&self) -> usize {
        if self.entry().is_long() { WIDTH } else { CHUNK }
    }

    /// As many rows as `target` has, from row `first` of `inputs`, which were checked.
    #[cfg(feature = "arrow")]
    pub(crate) fn rows(&self, inputs: &[Column<'_>], first: usize, target: &mut Target<'_>) {
        self.kernel.rows(self.plain, inputs, first, target);
    }

    /// Evaluates `rows` rows; columns in field order.
    ///
    /// # Errors
    /// Another number of columns than input fields, or a column of another length.
    pub fn evaluate(&self, inputs: &[Column<'_>], rows: usize) -> Result<Table, Error> {
        let fields = self.entry().outputs();
        let mut columns: Vec<Vec<f64>> = fields.iter().map(|_| vec![0.0; rows]).collect();
        let mut status = vec![Status::OK; rows];
        let mut targets: Vec<Option<&mut [f64]>> = columns.iter_mut().map(|c| Some(c.as_mut_slice())).collect();
        self.evaluate_into(inputs, &mut targets, &mut status)?;
        Ok(Table { fields, columns, status })
    }

    /// Evaluates into columns that the caller owns, in field order, `None` for a result that is not
    /// wanted; as many rows as `status` has. Whatever is wanted, the status is that of the whole calculation.
    ///
    /// # Errors
    /// Another number of columns than fields, or a column of another length.
    pub fn evaluate_into(&self, inputs: &[Column<'_>], outputs: &mut [Option<&mut [f64]>], status: &mut [Status]) -> Result<(), Error> {
        let rows = status.len();
        self.check(inputs, rows)?;
        if outputs.len() != self.entry().outputs().len() || outputs.iter().flatten().any(|c| c.len() != rows) {
            return Err(Error::bad_setting("outputs", "", &format!("{} columns of {rows} rows are needed", self.entry().outputs().len())));
        }
        let chunk = self.chunk();
        let mut chunks = Vec::with_capacity(rows.div_ceil(chunk));
        let mut rest: Vec<(usize, &mut [f64])> =
            outputs.iter_mut().enumerate().filter_map(|(place, c)| c.as_deref_mut().map(|c| (place, c))).collect();
        for status in status.chunks_mut(chunk) {
            let (mut columns, mut after) = (Vec::with_capacity(rest.len()), Vec::with_capacity(rest.len()));
            for (place, column) in rest {
                let (head, tail) = column.split_at_mut(status.len());
                columns.push((place, head));
                after.push((place, tail));
            }
            rest = after;
            chunks.push(Target { columns, status });
        }
        if chunks.len() == 1 {
            for target in &mut chunks {
                self.kernel.rows(self.plain, inputs, 0, target);
            }
        } else {
            chunks.par_iter_mut().enumerate().for_each(|(i, target)| self.kernel.rows(self.plain, inputs, i * chunk, target));
        }
        Ok(())
    }

    /// Why `row` was refused, or what is to be known about it.
    ///
    /// # Errors
    /// The refusal of that row.
    pub fn explain(&self, inputs: &[Column<'_>], row: usize) -> Result<Vec<Notice>, Error> {
        let entry = self.entry();
        let value = |column: &Column<'_>| match column {
            Column::Constant(value) => *value,
            Column::Values(values) => values.get(row).copied().unwrap_or(f64::NAN),
        };
        let input: Vec<f64> = inputs.iter().map(value).collect();
        let mut output = vec![f64::NAN; entry.outputs().len()];
        let judged = self.scalar.run(&input, &mut output);
        if judged.is_refused(entry.rules()) {
            return Err(judged.error(entry.inputs(), entry.rules(), &input, entry.outputs(), &output));
        }
        Ok(judged.notices(entry.inputs(), entry.rules(), &input))
    }

    fn check(&self, inputs: &[Column<'_>], rows: usize) -> Result<(), Error> {
        let fields = self.entry().inputs();
        if inputs.len() != fields.len() {
            return Err(Error::bad_setting("inputs", "", &format!("{} columns were given, {} are needed", inputs.len(), fields.len())));
        }
        for (field, column) in fields.iter().zip(inputs) {
            if let Column::Values(values) = column
                && values.len() != rows
            {
                return Err(Error::bad_setting(field.name, "", &format!("the column has {} rows, {rows} are needed", values.len())));
            }
        }
        Ok(())
    }
}

/// A calculation of the catalogue, over columns.
pub trait ColumnsEntry: Sync {
    /// Its name.
    fn name(&self) -> &'static str;
    /// Fixes the settings.
    ///
    /// # Errors
    /// Names the setting and what is wrong with it.
    fn prepare(&self, settings: &Node) -> Result<Columns, Error>;
}

struct EntryOf<C>(std::marker::PhantomData<fn() -> C>);

impl<C: Calculation> ColumnsEntry for EntryOf<C> {
    fn name(&self) -> &'static str {
        C::INFO.name
    }
    fn prepare(&self, settings: &Node) -> Result<Columns, Error> {
        let build = || C::from_settings(&Settings::new(settings, <C as Context>::SETTINGS)?);
        Ok(Columns { kernel: Box::new(Of(build()?)), scalar: erase(build()?), settings: settings.clone(), plain: false })
    }
}

macro_rules! list {
    ($($calculation:ty),* $(,)?) => {
        /// Every calculation there is, over columns.
        pub static CATALOGUE: &[&dyn ColumnsEntry] = &[$( &EntryOf::<$calculation>(std::marker::PhantomData) ),*];
    };
}
for_each_calculation!(list);

/// The calculation `name` over columns, with `settings` fixed.
///
/// # Errors
/// An unknown name, with the nearest; or a bad setting.
pub fn columns(name: &str, settings: &Node) -> Result<Columns, Error> {
    CATALOGUE
        .iter()
        .find(|e| e.name() == name)
        .ok_or_else(|| Error::unknown_name("calculation", name, CATALOGUE.iter().map(|e| e.name())))?
        .prepare(settings)
}

#[cfg(test)]
mod tests {
    use super::*;
    use flamewright_trials::{needed_settings, usual_range};

    /// Every result with every choice of instructions, cut into blocks in other places, and one by one, to the bit;
    /// among the rows some are refused and some unusual.
    /// The optimiser is what could tell them apart: the tests of the Python package try the same on its
    /// wheel, which is optimised, and `cargo test --release` does here.
    #[test]
    fn instruction_sets_and_blocks_give_the_same_bits() {
        let mut walked = 0;
        for entry in flamewright::catalogue::CATALOGUE {
            let Ok(columns) = columns(entry.info().name, &needed_settings(*entry)[0]) else { continue };
            // Without the optimiser there is nothing to tell apart, and these take a minute.
            if cfg!(debug_assertions) && entry.is_long() {
                continue;
            }
            // More than two blocks, the last one in part.
            let rows = if entry.is_long() { 21 } else { 2 * LANES + 21 };
            let mut state = 1_u64;
            let mut drawn = || {
                state = state.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
                (state >> 11) as f64 / (1u64 << 53) as f64
            };
            let fields = entry.inputs().iter();
            let given: Vec<Vec<f64>> = fields
                .map(|field| {
                    let (low, high) = usual_range(field);
                    let beyond = field.maximum.min(1e9) + 0.5;
                    let dirt = |chance: f64| if chance < 0.01 { f64::NAN } else { beyond };
                    (0..rows)
                        .map(|row| match drawn() {
                            _ if row == 13 => f64::NAN,
                            chance if chance < 0.02 => dirt(chance),
                            chance if chance < 0.04 => field.minimum.max(-1e9),
                            _ => low + drawn() * (high - low),
                        })
                        .collect()
                })
                .collect();
            let inputs: Vec<Column<'_>> = given.iter().map(|values| Column::Values(values)).collect();
            let bits = |plain: bool, cuts: &[usize]| {
                let mut results = vec![vec![0.0; rows]; entry.outputs().len()];
                let mut status = vec![Status::OK; rows];
                for cut in cuts.windows(2) {
                    let (from, to) = (cut[0], cut[1]);
                    let mut target = Target {
                        columns: results.iter_mut().map(|c| &mut c[from..to]).enumerate().collect(),
                        status: &mut status[from..to],
                    };
                    columns.kernel.rows(plain, &inputs, from, &mut target);
                }
                let values: Vec<u64> = results.iter().flatten().map(|v| if v.is_nan() { u64::MAX } else { v.to_bits() }).collect();
                (values, status)
            };
            let expected = bits(false, &[0, rows]);
            assert!(bits(true, &[0, rows]) == expected, "{}", entry.info().name);
            assert!(bits(false, &[0, 3, 14, rows]) == expected, "{}", entry.info().name);
            let mut results = vec![vec![f64::NAN; rows]; entry.outputs().len()];
            let mut status = Vec::new();
            for row in 0..rows {
                let input: Vec<f64> = given.iter().map(|column| column[row]).collect();
                let mut output = vec![f64::NAN; results.len()];
                status.push(Status::of(&columns.scalar.run(&input, &mut output), entry.rules()));
                if status[row].has_result() {
                    results.iter_mut().zip(output).for_each(|(column, value)| column[row] = value);
                }
            }
            let values: Vec<u64> = results.iter().flatten().map(|v| if v.is_nan() { u64::MAX } else { v.to_bits() }).collect();
            assert!((values, status) == expected, "{}: one by one", entry.info().name);
            walked += 1;
        }
        assert!(walked * 100 >= 90 * flamewright::catalogue::CATALOGUE.len(), "{walked}");
    }
}
