//! Goal seek: bracketed, so that an answer found is an answer, and none is said to be none.

use crate::catalogue::Prepared;
use crate::error::Error;
use crate::record::{Field, find};
use alloc::format;
use alloc::vec::Vec;

/// The answer of a goal seek.
#[derive(Clone, Debug, PartialEq)]
pub struct Goal {
    /// The input that gives the wanted output, SI.
    pub value: f64,
    /// All inputs with it in place, SI, in field order.
    pub input: Vec<f64>,
    /// All outputs there, SI, in field order.
    pub output: Vec<f64>,
    /// Whether the output crosses the wanted value more than once in the range searched; the answer
    /// is then the one nearest the lower end.
    pub several: bool,
}

/// Places looked at over the range before the bracket is narrowed: finds answers of a function that
/// rises and falls, and steps over places where it has no value.
const PLACES: usize = 64;

/// The value of input `vary`, from `low` to `high` (SI), for which output `of` is `wanted` (SI).
///
/// The range is looked over at equal steps; the first bracket is then narrowed by Brent's method
/// (R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4) until the input
/// is known to the last bits.
///
/// # Errors
/// Unknown names; a range that is empty or outside that of the field; no place where the calculation
/// accepts its input; or no solution, with the values between which the output runs.
pub fn goal_seek(prepared: &dyn Prepared, input: &[f64], vary: &str, low: f64, high: f64, of: &str, wanted: f64) -> Result<Goal, Error> {
    let entry = prepared.entry();
    let (place, field) = find(entry.inputs(), vary)?;
    let (result, output_field) = find(entry.outputs(), of)?;
    if !(low < high && low >= field.minimum && high <= field.maximum) {
        let why = format!(
            "the range from {} to {} must be ascending and lie within {} to {}",
            field.show(low, 7),
            field.show(high, 7),
            field.show(field.minimum, 7),
            field.show(field.maximum, 7)
        );
        return Err(Error::bad_setting(vary, "", &why));
    }
    if !wanted.is_finite() {
        return Err(Error::bad_setting(of, "", "the wanted value is not finite"));
    }
    let mut point = input.to_vec();
    point.resize(entry.inputs().len(), f64::NAN);
    let mut output = alloc::vec![f64::NAN; entry.outputs().len()];
    let mut refusal = None;
    let mut at = |x: f64, point: &mut Vec<f64>, output: &mut Vec<f64>| {
        point[place] = x;
        let judged = prepared.run(point, output);
        if judged.is_refused(entry.rules()) {
            refusal.get_or_insert_with(|| judged.error(entry.inputs(), entry.rules(), point, entry.outputs(), output));
            return f64::NAN;
        }
        output[result] - wanted
    };
    let mut least = f64::INFINITY;
    let mut greatest = f64::NEG_INFINITY;
    let mut bracket: Option<(f64, f64, f64, f64)> = None;
    let mut several = false;
    let mut previous = (low, f64::NAN);
    for step in 0..=PLACES {
        let x = if step == PLACES { high } else { low + (high - low) * step as f64 / PLACES as f64 };
        let miss = at(x, &mut point, &mut output);
        if miss.is_nan() {
            previous = (x, miss);
            continue;
        }
        least = least.min(miss + wanted);
        greatest = greatest.max(miss + wanted);
        let hit = miss == 0.0 && previous.1 != 0.0;
        let crossed = !previous.1.is_nan() && previous.1 * miss < 0.0;
        if hit || crossed {
            if bracket.is_some() {
                several = true;
            } else {
                bracket = Some(if hit { (x, miss, x, miss) } else { (previous.0, previous.1, x, miss) });
            }
        }
        previous = (x, miss);
    }
    let Some((a, miss_a, b, miss_b)) = bracket else {
        return Err(none(field, output_field, (low, high), (least, greatest), wanted, refusal));
    };
    let value = narrow(a, miss_a, b, miss_b, |x| at(x, &mut point, &mut output));
    let miss = at(value, &mut point, &mut output);
    // A bracket may enclose a jump, or a gap, instead of a crossing.
    let scale = wanted.abs().max((greatest - least).abs());
    if miss.is_nan() || miss.abs() > 1e-6 * scale {
        let why = format!("{of} jumps over the wanted value near {vary} = {}", field.show(value, 7));
        return Err(Error::no_solution(vary, &why));
    }
    Ok(Goal { value, input: point, output, several })
}

fn none(field: &Field, of: &Field, range: (f64, f64), outputs: (f64, f64), wanted: f64, refusal: Option<Error>) -> Error {
    if outputs.0 > outputs.1 {
        let why = refusal.map_or_else(|| "the output has no value anywhere in the range".into(), |e| format!("{e}"));
        return Error::no_solution(field.name, &why);
    }
    let why = format!(
        "between {} and {} the output {} runs from {} to {}, and {} is wanted",
        field.show(range.0, 7),
        field.show(range.1, 7),
        of.name,
        of.show(outputs.0, 7),
        of.show(outputs.1, 7),
        of.show(wanted, 7)
    );
    Error::no_solution(field.name, &why)
}

/// Brent's root of `miss` between `a` and `b`, where it has opposite signs.
fn narrow(a: f64, miss_a: f64, b: f64, miss_b: f64, mut miss: impl FnMut(f64) -> f64) -> f64 {
    let (mut a, mut fa, mut b, mut fb) = (a, miss_a, b, miss_b);
    if fa == 0.0 {
        return a;
    }
    let (mut c, mut fc) = (a, fa);
    let mut last = b - a;
    let mut step = last;
    for _ in 0..200 {
        if fb * fc > 0.0 {
            (c, fc) = (a, fa);
            last = b - a;
            step = last;
        }
        if fc.abs() < fb.abs() {
            (a, fa, b, fb, c, fc) = (b, fb, c, fc, b, fb);
        }
        let tolerance = 2.0 * f64::EPSILON * b.abs();
        let half = 0.5 * (c - b);
        if half.abs() <= tolerance || fb == 0.0 {
            return b;
        }
        if last.abs() >= tolerance && fa.abs() > fb.abs() {
            let s = fb / fa;
            let (mut p, mut q) = if a == c {
                (2.0 * half * s, 1.0 - s)
            } else {
                let (q, r) = (fa / fc, fb / fc);
                (s * (2.0 * half * q * (q - r) - (b - a) * (r - 1.0)), (q - 1.0) * (r - 1.0) * (s - 1.0))
            };
            if p > 0.0 {
                q = -q;
            } else {
                p = -p;
            }
            if 2.0 * p < (3.0 * half * q - (tolerance * q).abs()).min((last * q).abs()) {
                last = step;
                step = p / q;
            } else {
                last = half;
                step = half;
            }
        } else {
            last = half;
            step = half;
        }
        (a, fa) = (b, fb);
        b += if step.abs() > tolerance { step } else { tolerance.copysign(half) };
        fb = miss(b);
        if fb.is_nan() {
            return b;
        }
    }
    b
}
