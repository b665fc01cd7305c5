//! Goal seek: bracketed, so that an answer found is an answer, and none is said to be none.

use crate::catalogue::Prepared;
use crate::error::Error;
use crate::record::{Field, find};
use crate::root::Bracket;
use alloc::format;
use alloc::string::String;
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
    /// Whether the wanted output was met more than once in the range searched; the answer is then
    /// the one nearest the lower end.
    pub several: bool,
}

/// Places looked at over the range before a bracket is narrowed: finds answers of a function that
/// rises and falls, and steps over places where it has no value.
const PLACES: usize = 64;

/// Halvings that leave no number between the ends of a bracket, unless it ends at zero, where numbers
/// crowd together.
const HALVINGS: usize = 64;

/// How near the output of an answer lies to what was wanted, as a share of what was wanted.
const RELATIVE: f64 = 1e-10;

/// The value of input `vary`, from `low` to `high` (SI), for which output `of` is `wanted` (SI).
///
/// An answer is checked by evaluation: the output there differs from `wanted` by at most 1e-10 of
/// `wanted`, both in SI units (so of kelvins from absolute zero). Where zero is wanted there is
/// nothing to be relative to, and 1e-10 of the largest output at the places looked at is allowed instead.
///
/// The range is looked over at equal steps, and up to the edges of stretches where the calculation
/// refuses; each bracket is narrowed by regula falsi and halving until no number lies between its ends.
/// Without an answer, jumps and holes between the places looked at are searched up to their edges, and
/// the peaks nearest to the wanted value are looked at more closely.
///
/// ```
/// # use flamewright::{catalogue::{calculation, read_input, split, Bare}, explore::goal_seek, node::Node};
/// // How hot is water that weighs 983 kg/m³?
/// let water = calculation("liquid_water")?.prepare(&Node::Table(vec![]))?;
/// let goal = goal_seek(&*water, &[f64::NAN, 2e5], "temperature", 283.15, 373.15, "density", 983.0)?;
/// assert!((goal.output[0] - 983.0).abs() <= 1e-10 * 983.0);
/// assert!((goal.value - 333.6).abs() < 0.1);
/// // None is said to be none.
/// let none = goal_seek(&*water, &[f64::NAN, 2e5], "temperature", 283.15, 373.15, "density", 1100.0);
/// assert!(none.unwrap_err().to_string().contains("the output density runs from"));
/// # Ok::<(), flamewright::Error>(())
/// ```
///
/// # Errors
/// Unknown names; a range that is empty or outside that of the field; no place where the calculation
/// accepts its input; a wanted value that was met nowhere, with the values between which the output
/// runs, or with the first place where it jumps over the wanted value and the outputs on both sides.
pub fn goal_seek(prepared: &dyn Prepared, input: &[f64], vary: &str, low: f64, high: f64, of: &str, wanted: f64) -> Result<Goal, Error> {
    let entry = prepared.entry();
    let (place, field) = find(entry.inputs(), vary)?;
    let (result, of) = find(entry.outputs(), of)?;
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
        return Err(Error::bad_setting(of.name, "", "the wanted value is not finite"));
    }
    let mut input = input.to_vec();
    input.resize(entry.inputs().len(), f64::NAN);
    let mut search = Search {
        prepared,
        input,
        place,
        output: alloc::vec![f64::NAN; entry.outputs().len()],
        result,
        wanted,
        least: f64::INFINITY,
        greatest: f64::NEG_INFINITY,
        allowed: 0.0,
        nearest: None,
        refusal: None,
        answers: Vec::new(),
        missed: None,
    };
    let stretches = search.look_over(low, high);
    // Taken here, since a pole found by narrowing would make anything small beside it.
    search.allowed = RELATIVE * if wanted == 0.0 { search.least.abs().max(search.greatest.abs()) } else { wanted.abs() };
    for stretch in &stretches {
        search.cross(stretch);
    }
    if search.answers.is_empty() {
        let pieces: Vec<Vec<Tried>> = stretches.iter().flat_map(|stretch| search.pieces(stretch)).collect();
        for piece in &pieces {
            search.cross(piece);
        }
        if search.answers.is_empty() {
            for piece in &pieces {
                search.peaks(piece);
            }
        }
    }
    for pair in stretches.windows(2) {
        if let [.., below] = *pair[0]
            && let [above, ..] = *pair[1]
        {
            search.misses(below, above, true);
        }
    }
    let first = search.answers.first().copied();
    if let Some(value) = first.or_else(|| search.nearest.filter(|n| search.meets(n.miss)).map(|n| n.at))
        && let miss = search.try_at(value).miss
        && search.meets(miss)
    {
        return Ok(Goal { value, input: search.input, output: search.output, several: search.answers.len() > 1 });
    }
    let why = match search.missed {
        Some(missed) => missed.describe(&search, field, of),
        None => search.none(field, of, low, high),
    };
    Err(Error::no_solution(field.name, &why))
}

/// A place of the range that was looked at.
#[derive(Clone, Copy, Debug)]
struct Tried {
    /// The input.
    at: f64,
    /// The output less what is wanted; not-a-number where there is none.
    miss: f64,
}

/// Two neighbouring places with the wanted value between their outputs, and no answer between them.
#[derive(Clone, Copy, Debug)]
struct Missed {
    below: Tried,
    above: Tried,
    /// Whether the calculation has no value in between; otherwise the output jumps.
    gap: bool,
}

impl Missed {
    fn describe(&self, search: &Search<'_>, field: &Field, of: &Field) -> String {
        let [left, right] = [self.below, self.above].map(|t| t.miss + search.wanted);
        // As many digits as tell the sides from each other and from what is wanted.
        let digits = [7, 10, 13, 17].into_iter().find(|&d| {
            let [left, right, wanted] = [left, right, search.wanted].map(|v| of.show(v, d));
            left != right && left != wanted && right != wanted
        });
        let show = |value: f64| of.show(value, digits.unwrap_or(17));
        let (name, wanted, left, right) = (of.name, show(search.wanted), show(left), show(right));
        if self.gap {
            let why = search.refusal.as_ref().map_or_else(String::new, |e| format!(": {e}"));
            let (from, to) = (field.show(self.below.at, 7), field.show(self.above.at, 7));
            return format!(
                "{name} was {wanted} nowhere that was looked at: it is {left} at {} = {from} and {right} at {to}, and has no value in between{why}",
                field.name
            );
        }
        let at = field.show(self.below.at, 7);
        format!(
            "{name} was {wanted} nowhere that was looked at: it jumps over that at {} = {at}, from {left} just below to {right} just above",
            field.name
        )
    }
}

struct Search<'a> {
    prepared: &'a dyn Prepared,
    input: Vec<f64>,
    place: usize,
    output: Vec<f64>,
    result: usize,
    wanted: f64,
    /// The outputs seen so far lie between these.
    least: f64,
    greatest: f64,
    /// How far from what is wanted an output may lie.
    allowed: f64,
    nearest: Option<Tried>,
    /// The first refusal met.
    refusal: Option<Error>,
    /// Where the wanted value was met, ascending; the second is looked for only to know that there is one.
    answers: Vec<f64>,
    missed: Option<Missed>,
}

impl Search<'_> {
    fn try_at(&mut self, at: f64) -> Tried {
        self.input[self.place] = at;
        let entry = self.prepared.entry();
        let judged = self.prepared.run(&self.input, &mut self.output);
        if judged.is_refused(entry.rules()) {
            let (input, output) = (&self.input, &self.output);
            self.refusal.get_or_insert_with(|| judged.error(entry.inputs(), entry.rules(), input, entry.outputs(), output));
            return Tried { at, miss: f64::NAN };
        }
        let value = self.output[self.result];
        if !value.is_finite() {
            return Tried { at, miss: f64::NAN };
        }
        self.least = self.least.min(value);
        self.greatest = self.greatest.max(value);
        let tried = Tried { at, miss: value - self.wanted };
        if self.nearest.is_none_or(|n| tried.miss.abs() < n.miss.abs()) {
            self.nearest = Some(tried);
        }
        tried
    }

    fn meets(&self, miss: f64) -> bool {
        miss.abs() <= self.allowed
    }

    /// The last place with a value before a stretch without: `with` has one, `without` has none.
    fn edge(&mut self, mut with: Tried, mut without: f64) -> Tried {
        for _ in 0..HALVINGS {
            let Some(middle) = between(with.at, without) else { break };
            let tried = self.try_at(middle);
            if tried.miss.is_nan() { without = middle } else { with = tried }
        }
        with
    }

    /// Stretches of places with a value, edges included.
    fn look_over(&mut self, low: f64, high: f64) -> Vec<Vec<Tried>> {
        let mut stretches: Vec<Vec<Tried>> = Vec::new();
        let mut open = false;
        let mut without = None;
        for step in 0..=PLACES {
            let at = if step == PLACES { high } else { low + (high - low) * step as f64 / PLACES as f64 };
            let tried = self.try_at(at);
            match (stretches.last().and_then(|s| s.last()).copied().filter(|_| open), tried.miss.is_nan()) {
                (Some(_), false) => stretches.last_mut().into_iter().for_each(|s| s.push(tried)),
                (Some(last), true) => {
                    let edge = self.edge(last, at);
                    stretches.last_mut().into_iter().filter(|_| edge.at != last.at).for_each(|s| s.push(edge));
                }
                (None, false) => {
                    let edge = without.map_or(tried, |without| self.edge(tried, without));
                    stretches.push(if edge.at == tried.at { Vec::from([tried]) } else { Vec::from([edge, tried]) });
                }
                (None, true) => {}
            }
            open = !tried.miss.is_nan();
            without = (!open).then_some(at);
        }
        stretches
    }

    /// A stretch taken apart where the output jumps or has no value between two places looked at: on
    /// either side of it the output may reach further than those places show.
    fn pieces(&mut self, stretch: &[Tried]) -> Vec<Vec<Tried>> {
        let mut pieces = Vec::from([Vec::new()]);
        for (i, &here) in stretch.iter().enumerate() {
            if let Some(&next) = stretch.get(i + 1)
                && let Some((below, above)) = self.break_between(here, next)
            {
                let piece = if below.at == here.at { Vec::from([here]) } else { Vec::from([here, below]) };
                pieces.last_mut().into_iter().for_each(|p: &mut Vec<Tried>| p.extend(&piece));
                pieces.push(if above.at == next.at { Vec::new() } else { Vec::from([above]) });
            } else {
                pieces.last_mut().into_iter().for_each(|p| p.push(here));
            }
        }
        pieces
    }

    /// The edges of the jump or the hole between two places, found by halving, or none: where there
    /// is neither, soon both halves have their share of the change.
    fn break_between(&mut self, mut a: Tried, mut b: Tried) -> Option<(Tried, Tried)> {
        while let Some(middle) = between(a.at, b.at) {
            let tried = self.try_at(middle);
            if tried.miss.is_nan() {
                return Some((self.edge(a, middle), self.edge(b, middle)));
            }
            let [left, right] = [(tried.miss - a.miss).abs(), (b.miss - tried.miss).abs()];
            if left.min(right) > 0.25 * left.max(right) || left == right {
                return None;
            }
            if left > right { b = tried } else { a = tried }
        }
        Some((a, b))
    }

    fn answered(&mut self, at: f64) {
        if self.answers.last() != Some(&at) {
            self.answers.push(at);
        }
    }

    /// Answers between the places of a stretch, two at most.
    fn cross(&mut self, stretch: &[Tried]) {
        for (i, &here) in stretch.iter().enumerate() {
            if self.answers.len() > 1 {
                return;
            }
            if here.miss == 0.0 {
                self.answered(here.at);
            } else if let Some(&next) = stretch.get(i + 1)
                && here.miss * next.miss < 0.0
            {
                self.narrow(here, next, 0);
            }
        }
    }

    /// Answers beside a peak that reaches the wanted value between the places looked at.
    fn peaks(&mut self, stretch: &[Tried]) {
        for (i, &here) in stretch.iter().enumerate() {
            let (before, after) = (stretch[i.saturating_sub(1)], stretch[(i + 1).min(stretch.len() - 1)]);
            let nearer = |other: Tried| other.at == here.at || here.miss.abs() <= other.miss.abs();
            let level = before.miss == here.miss && here.miss == after.miss;
            if self.answers.len() < 2 && nearer(before) && nearer(after) && !level && before.miss * after.miss > 0.0 {
                let peak = self.climb(before, after);
                if peak.miss * here.miss <= 0.0 {
                    self.cross(&[before, peak, after]);
                }
            }
        }
    }

    /// The place nearest to the wanted value between `a` and `b`, or one beyond it (golden section).
    fn climb(&mut self, a: Tried, b: Tried) -> Tried {
        const SHARE: f64 = 0.618_033_988_749_894_9;
        let side = a.miss.signum();
        let (mut low, mut high) = (a.at, b.at);
        let mut left = self.try_at(high - SHARE * (high - low));
        let mut right = self.try_at(low + SHARE * (high - low));
        // Forty steps leave 4e-9 of the bracket: a peak is flat over the root of the rounding unit.
        for _ in 0..40 {
            for tried in [left, right] {
                if tried.miss.is_nan() || tried.miss * side <= 0.0 {
                    return tried;
                }
            }
            if left.miss.abs() < right.miss.abs() {
                (high, right) = (right.at, left);
                left = self.try_at(high - SHARE * (high - low));
            } else {
                (low, left) = (left.at, right);
                right = self.try_at(low + SHARE * (high - low));
            }
        }
        if left.miss.abs() < right.miss.abs() { left } else { right }
    }

    /// Narrows a bracket, whose ends have misses of opposite sign, to an answer, a jump or a gap.
    fn narrow(&mut self, mut below: Tried, mut above: Tried, depth: u32) {
        let side = above.miss.signum();
        let mut bracket = Bracket::new(below.at, above.at, below.miss * side, above.miss * side);
        for _ in 0..3 * HALVINGS {
            let Some(next) = bracket.next() else { break };
            let tried = self.try_at(next);
            if tried.miss.is_nan() {
                return self.around_gap(below, next, above, depth);
            }
            if tried.miss == 0.0 {
                return self.answered(next);
            }
            if tried.miss * side < 0.0 {
                below = tried;
            } else {
                above = tried;
            }
            bracket.narrow(next, tried.miss * side);
        }
        let nearer = if below.miss.abs() < above.miss.abs() { below } else { above };
        if self.meets(nearer.miss) {
            self.answered(nearer.at);
        } else {
            self.misses(below, above, false);
        }
    }

    /// Goes on on both sides of a place without a value inside a bracket.
    fn around_gap(&mut self, below: Tried, without: f64, above: Tried, depth: u32) {
        let (left, right) = (self.edge(below, without), self.edge(above, without));
        let found = self.answers.len();
        if depth < 8 {
            for (a, b) in [(below, left), (right, above)] {
                if a.at < b.at && a.miss * b.miss < 0.0 {
                    self.narrow(a, b, depth + 1);
                }
            }
        }
        if self.answers.len() == found {
            self.misses(left, right, true);
        }
    }

    /// Keeps the first two neighbours that have the wanted value, and no answer, between them.
    fn misses(&mut self, below: Tried, above: Tried, gap: bool) {
        if below.miss * above.miss < 0.0 {
            self.missed.get_or_insert(Missed { below, above, gap });
        }
    }

    fn none(&self, field: &Field, of: &Field, low: f64, high: f64) -> String {
        if self.least > self.greatest {
            return self.refusal.as_ref().map_or_else(|| "the output has no value anywhere in the range".into(), |e| format!("{e}"));
        }
        // As many digits as tell what is wanted from the nearest end.
        let digits = [7, 10, 13, 17]
            .into_iter()
            .find(|&d| [self.least, self.greatest].iter().all(|end| *end == self.wanted || of.show(*end, d) != of.show(self.wanted, d)));
        let show = |value: f64| of.show(value, digits.unwrap_or(17));
        format!(
            "between {} and {} the output {} runs from {} to {}, and {} is wanted",
            field.show(low, 7),
            field.show(high, 7),
            of.name,
            show(self.least),
            show(self.greatest),
            show(self.wanted)
        )
    }
}

/// A number between two others, or none where they are neighbours.
fn between(a: f64, b: f64) -> Option<f64> {
    let middle = 0.5 * a + 0.5 * b;
    (middle != a && middle != b).then_some(middle)
}
