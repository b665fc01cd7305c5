//! The working of a sum: what a student writes down.
//!
//! A calculation writes each line of its sum once, inside [`step!`]. The line is computed as it
//! stands; its formula and the numbers put in are read off the same expression, so what is shown
//! is what was done. The steps go to a sink, [`Steps`], or to [`Silent`], which compiles to nothing.
//!
//! ```
//! use flamewright::working::{step, Steps, Working};
//! use uom::si::f64::{Length, Time, Velocity};
//! use uom::si::{length::meter, time::second};
//!
//! fn speed<W: Working>(way: Length, time: Time, working: &mut W) -> Velocity {
//!     step!(working, let speed: "v" = way / time, "definition");
//!     speed
//! }
//!
//! let mut steps = Steps::new([("way", "s"), ("time", "t")]);
//! speed(Length::new::<meter>(12.0), Time::new::<second>(1.5), &mut steps);
//! assert_eq!(steps.plain(), "v = s / t = 12 m / (1.5 s) = 8 m/s  [definition]\n");
//! ```

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use uom::typenum::Integer;

use crate::math;
use crate::quantity::Unit;
use crate::quantity::unit::{NUMBER, PRESSURE, number, read_unit};

/// Computes one line of a sum and, if the working is wanted, records it.
///
/// ```text
/// step!(working, let name: "latex symbol" = expression, "source");
/// step!(working, let name: "latex symbol" as Power in KILOWATT = expression, "source");
/// ```
///
/// `as` gives the variable a type, `in` names a constant [`Unit`] in which the result is shown
/// beside its SI value. The source is a `&'static str`.
///
/// The expression is made of `+ - * /`, the elementary functions as methods or from `math`,
/// names, fields, numbers, and calls. Calls of other functions are shown by name, and put in by
/// the value they returned; such functions must be pure, since they are called again for it.
/// Anything else does not compile:
///
/// ```compile_fail
/// # use flamewright::working::{step, Silent};
/// let (working, a) = (&mut Silent, 2.0);
/// step!(working, let b: "b" = if a > 1.0 { a } else { 1.0 }, "no source");
/// ```
pub use flamewright_derive::step;

pub use crate::quantity::Dimension;

/// Where the steps of a sum go.
pub trait Working {
    /// Whether steps are wanted at all; when not, nothing of them is compiled.
    const ON: bool;
    /// Whether the input is one of those that [`Calculation::is_straight`](crate::calculation::Calculation::is_straight)
    /// tells apart; then the sum leaves out what it need not ask.
    const STRAIGHT: bool = false;
    /// Takes one step.
    fn step(&mut self, step: Step);
}

/// Wants no steps.
#[derive(Clone, Copy, Debug, Default)]
pub struct Silent;

impl Working for Silent {
    const ON: bool = false;
    fn step(&mut self, _: Step) {}
}

/// Wants no steps, and promises a straight input; see [`Working::STRAIGHT`].
#[derive(Clone, Copy, Debug, Default)]
pub struct Straight;

impl Working for Straight {
    const ON: bool = false;
    const STRAIGHT: bool = true;
    fn step(&mut self, _: Step) {}
}

/// Whether a sink wants steps; for [`step!`], which does not know the sink's type by name.
#[doc(hidden)]
#[inline(always)]
pub const fn is_on<W: Working>(_: &W) -> bool {
    W::ON
}

/// A value that can be written down: a number in coherent SI units, and its dimension.
#[diagnostic::on_unimplemented(
    message = "`{Self}` is not a number or a quantity, so a step cannot show it",
    label = "stands in a step as a number"
)]
pub trait Shown {
    /// The value in the coherent SI unit of its dimension.
    fn shown(&self) -> (f64, Dimension);
}

macro_rules! plain_numbers {
    ($($number:ty),*) => { $(impl Shown for $number {
        fn shown(&self) -> (f64, Dimension) {
            (*self as f64, NUMBER)
        }
    })* };
}
plain_numbers!(f64, i32, u8, u16, u32, u64, usize);

impl<T: Shown + ?Sized> Shown for &T {
    fn shown(&self) -> (f64, Dimension) {
        (**self).shown()
    }
}

impl<D> Shown for uom::si::Quantity<D, uom::si::SI<f64>, f64>
where
    D: uom::si::Dimension + ?Sized,
{
    fn shown(&self) -> (f64, Dimension) {
        let dimension = [D::L::I8, D::M::I8, D::T::I8, D::I::I8, D::Th::I8, D::N::I8, D::J::I8];
        (self.value, dimension)
    }
}

/// How uom writes a unit.
#[doc(hidden)]
pub fn abbreviation<U: uom::si::Unit>() -> &'static str {
    U::abbreviation()
}

/// Asks whether a value is [`Shown`] without requiring it.
#[doc(hidden)]
pub struct Probe<'a, T: ?Sized>(pub &'a T);

#[doc(hidden)]
pub trait ProbeShown {
    fn probe(&self) -> Option<(f64, Dimension)>;
}

impl<T: Shown + ?Sized> ProbeShown for Probe<'_, T> {
    fn probe(&self) -> Option<(f64, Dimension)> {
        Some(self.0.shown())
    }
}

#[doc(hidden)]
pub trait ProbeOther {
    fn probe(&self) -> Option<(f64, Dimension)>;
}

impl<T: ?Sized> ProbeOther for &Probe<'_, T> {
    fn probe(&self) -> Option<(f64, Dimension)> {
        None
    }
}

/// The shape of an expression, with numbered holes for its leaves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Formula {
    /// A leaf of the step, by its place in [`Step::leaves`].
    Leaf(usize),
    /// A number written in the formula itself.
    Number(f64),
    /// `-a`
    Negative(&'static Formula),
    /// `a + b`
    Sum(&'static Formula, &'static Formula),
    /// `a - b`
    Difference(&'static Formula, &'static Formula),
    /// `a * b`
    Product(&'static Formula, &'static Formula),
    /// `a / b`
    Quotient(&'static Formula, &'static Formula),
    /// `a` to the power `b`
    Power(&'static Formula, &'static Formula),
    /// An elementary function of its arguments.
    Function(Function, &'static [Formula]),
    /// Any other function: the leaf that holds its name and the value it returned, and its arguments.
    Call(usize, &'static [Formula]),
}

/// The elementary functions a formula may hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs)]
pub enum Function {
    SquareRoot,
    CubeRoot,
    Magnitude,
    Exponential,
    NaturalLogarithm,
    CommonLogarithm,
    Sine,
    Cosine,
    HyperbolicTangent,
    Least,
    Greatest,
}

impl Function {
    /// Opening and closing in plain text and in LaTeX.
    fn brackets(self, latex: bool) -> (&'static str, &'static str) {
        match (self, latex) {
            (Self::SquareRoot, false) => ("√(", ")"),
            (Self::SquareRoot, true) => ("\\sqrt{", "}"),
            (Self::CubeRoot, false) => ("∛(", ")"),
            (Self::CubeRoot, true) => ("\\sqrt[3]{", "}"),
            (Self::Magnitude, false) => ("|", "|"),
            (Self::Magnitude, true) => ("\\left|", "\\right|"),
            (Self::Exponential, false) => ("exp(", ")"),
            (Self::Exponential, true) => ("\\exp\\left(", "\\right)"),
            (Self::NaturalLogarithm, false) => ("ln(", ")"),
            (Self::NaturalLogarithm, true) => ("\\ln\\left(", "\\right)"),
            (Self::CommonLogarithm, false) => ("lg(", ")"),
            (Self::CommonLogarithm, true) => ("\\lg\\left(", "\\right)"),
            (Self::Sine, false) => ("sin(", ")"),
            (Self::Sine, true) => ("\\sin\\left(", "\\right)"),
            (Self::Cosine, false) => ("cos(", ")"),
            (Self::Cosine, true) => ("\\cos\\left(", "\\right)"),
            (Self::HyperbolicTangent, false) => ("tanh(", ")"),
            (Self::HyperbolicTangent, true) => ("\\tanh\\left(", "\\right)"),
            (Self::Least, false) => ("min(", ")"),
            (Self::Least, true) => ("\\min\\left(", "\\right)"),
            (Self::Greatest, false) => ("max(", ")"),
            (Self::Greatest, true) => ("\\max\\left(", "\\right)"),
        }
    }

    fn of(self, arguments: &[f64]) -> f64 {
        match (self, arguments) {
            (Self::SquareRoot, [x]) => math::sqrt(*x),
            (Self::CubeRoot, [x]) => math::cbrt(*x),
            (Self::Magnitude, [x]) => x.abs(),
            (Self::Exponential, [x]) => math::exp(*x),
            (Self::NaturalLogarithm, [x]) => math::ln(*x),
            (Self::CommonLogarithm, [x]) => math::log10(*x),
            (Self::Sine, [x]) => math::sin(*x),
            (Self::Cosine, [x]) => math::cos(*x),
            (Self::HyperbolicTangent, [x]) => math::tanh(*x),
            (Self::Least, [x, y]) => x.min(*y),
            (Self::Greatest, [x, y]) => x.max(*y),
            _ => f64::NAN,
        }
    }
}

/// A name or a called function in a formula, with the value put in for it.
#[derive(Clone, Debug)]
pub struct Leaf {
    name: Cow<'static, str>,
    /// Stands behind a dot in the formula: a record's field rather than an earlier step.
    field: bool,
    symbol: Option<Cow<'static, str>>,
    value: Option<(f64, Dimension)>,
    unit: Option<Unit>,
    /// The unit whose bare number stands in the formula instead of the quantity.
    measured_in: Option<&'static str>,
}

#[doc(hidden)]
impl Leaf {
    pub fn new(name: &'static str, field: bool, value: &(impl Shown + ?Sized)) -> Self {
        Self::probed(name, field, Some(value.shown()))
    }

    pub fn bared(name: &'static str, field: bool, probed: Option<(f64, Dimension)>, bare: &(impl Shown + ?Sized)) -> Self {
        Self::probed(name, field, probed.or_else(|| Some(bare.shown())))
    }

    pub fn probed(name: &'static str, field: bool, value: Option<(f64, Dimension)>) -> Self {
        Self { name: Cow::Borrowed(name), field, symbol: None, value, unit: None, measured_in: None }
    }

    pub fn measured(name: &'static str, field: bool, number: &(impl Shown + ?Sized), unit: &'static str) -> Self {
        Self { measured_in: Some(unit), ..Self::new(name, field, number) }
    }
}

impl Leaf {
    /// The name in the program.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The symbol in plain text. That of a number taken in a unit of its own is `{T}_°C`, as in ISO 80000-1.
    pub fn symbol(&self) -> String {
        let symbol = plain_symbol(&self.quantity());
        match self.measured_in {
            Some(unit) => format!("{{{symbol}}}_{unit}"),
            None => symbol,
        }
    }

    /// The symbol as LaTeX.
    pub fn symbol_latex(&self) -> String {
        let symbol = self.quantity();
        match self.measured_in {
            Some(unit) => format!("\\{{{symbol}\\}}_{{{}}}", unit_latex(unit)),
            None => symbol.into_owned(),
        }
    }

    /// Takes what is known of its name, unless the line would then say that something is itself.
    fn take(&mut self, known: Known, form: &Formula, result: &str) {
        let index = split_index(&self.name).1;
        if index.is_none() && matches!(form, Formula::Leaf(_) | Formula::Call(..)) && known.symbol == result {
            return;
        }
        self.symbol = Some(match index {
            Some(index) => Cow::Owned(format!("{{{}}}_{{{index}}}", known.symbol)),
            None => Cow::Borrowed(known.symbol),
        });
        self.unit = known.unit;
        if let (Some((value, dimension)), Some(known_value), Some(unit)) = (&mut self.value, known.value, known.unit)
            && *dimension == NUMBER
            && self.measured_in.is_none()
            && value.to_bits() == known_value.to_bits()
        {
            *dimension = unit.dimension;
        }
    }

    /// A symbol may itself be a difference or a quotient of symbols.
    fn binding(&self) -> Binding {
        let mut depth = 0;
        let mut binding = Binding::Atom;
        for letter in self.symbol.as_deref().filter(|_| self.measured_in.is_none()).unwrap_or_default().chars() {
            match letter {
                '{' | '(' => depth += 1,
                '}' | ')' => depth -= 1,
                '+' | '-' if depth == 0 => return Binding::Sum,
                '/' if depth == 0 => binding = Binding::Product,
                _ => {}
            }
        }
        binding
    }

    fn quantity(&self) -> Cow<'_, str> {
        match &self.symbol {
            Some(symbol) => Cow::Borrowed(symbol),
            None => Cow::Owned(spelled_out(&self.name)),
        }
    }

    /// The value in coherent SI units; none for an object that is not a number, such as a fuel.
    pub fn value(&self) -> Option<f64> {
        self.value.map(|(value, _)| value)
    }

    /// The value with its unit in plain text, empty for an object that is not a number.
    pub fn shown(&self) -> String {
        self.value.map_or_else(String::new, |(value, dimension)| {
            with_unit(value, FIGURES_PUT_IN, &coherent_unit(dimension, self.unit), false).text
        })
    }
}

/// An identifier as an upright LaTeX symbol, an index as its subscript.
fn spelled_out(name: &str) -> String {
    let (name, index) = split_index(name);
    let mut text = format!("\\mathrm{{{}}}", name.replace('_', "\\_"));
    if let Some(index) = index {
        text += &format!("_{{{}}}", index.replace('_', "\\_"));
    }
    text
}

fn split_index(name: &str) -> (&str, Option<&str>) {
    match name.strip_suffix(']').and_then(|name| name.split_once('[')) {
        Some((name, index)) => (name, Some(index)),
        None => (name, None),
    }
}

/// One line of a sum.
#[derive(Clone, Debug)]
pub struct Step {
    name: &'static str,
    symbol: &'static str,
    form: &'static Formula,
    leaves: Vec<Leaf>,
    value: f64,
    dimension: Dimension,
    unit: Option<Unit>,
    source: &'static str,
}

/// Figures to which a result is printed.
const RESULT_FIGURES: usize = 6;
/// Figures to which the numbers put in are printed, unless the result needs more to follow.
const FIGURES_PUT_IN: usize = 7;
/// Figures that tell any two numbers apart.
const ALL_FIGURES: usize = 17;

impl Step {
    /// Made by [`step!`].
    #[doc(hidden)]
    pub fn new<const N: usize>(
        name: &'static str,
        symbol: &'static str,
        form: &'static Formula,
        leaves: [Leaf; N],
        value: &(impl Shown + ?Sized),
        unit: Option<Unit>,
        source: &'static str,
    ) -> Self {
        let (value, dimension) = value.shown();
        // A kernel on bare SI numbers says by its display unit what it computed.
        let dimension = match unit {
            Some(unit) if dimension == NUMBER => unit.dimension,
            _ => dimension,
        };
        Self { name, symbol, form, leaves: leaves.into(), value, dimension, unit, source }
    }

    /// The variable's name in the program.
    pub fn name(&self) -> &'static str {
        self.name
    }

    /// The symbol in plain text.
    pub fn symbol(&self) -> String {
        plain_symbol(self.symbol)
    }

    /// The symbol as LaTeX.
    pub fn symbol_latex(&self) -> &'static str {
        self.symbol
    }

    /// The names that stand in the formula, with the values put in.
    pub fn leaves(&self) -> &[Leaf] {
        &self.leaves
    }

    /// The shape of the formula.
    pub fn form(&self) -> &'static Formula {
        self.form
    }

    /// The result in coherent SI units.
    pub fn value(&self) -> f64 {
        self.value
    }

    /// The dimension of the result.
    pub fn dimension(&self) -> Dimension {
        self.dimension
    }

    /// The coherent SI unit of the result in plain text, empty for a bare number.
    pub fn unit(&self) -> Cow<'static, str> {
        coherent_unit(self.dimension, self.unit)
    }

    /// The unit in which the result is shown beside its SI value.
    pub fn display_unit(&self) -> Option<Unit> {
        self.unit
    }

    /// Where the formula comes from.
    pub fn source(&self) -> &'static str {
        self.source
    }

    /// The right-hand side in symbols, as plain text.
    pub fn formula(&self) -> String {
        Writer { step: self, figures: None, latex: false }.line()
    }

    /// The right-hand side in symbols, as LaTeX.
    pub fn formula_latex(&self) -> String {
        Writer { step: self, figures: None, latex: true }.line()
    }

    /// The right-hand side with numbers and SI units put in, as plain text. It holds enough
    /// figures for a pocket calculator to give the printed result.
    pub fn substituted(&self) -> String {
        Writer { step: self, figures: Some(self.figures_put_in()), latex: false }.line()
    }

    /// The right-hand side with numbers and SI units put in, as LaTeX.
    pub fn substituted_latex(&self) -> String {
        Writer { step: self, figures: Some(self.figures_put_in()), latex: true }.line()
    }

    /// The result in SI, and in its display unit if that is another one.
    pub fn result(&self) -> String {
        self.result_in(false)
    }

    /// The result as LaTeX.
    pub fn result_latex(&self) -> String {
        self.result_in(true)
    }

    fn result_in(&self, latex: bool) -> String {
        let coherent = self.unit();
        let mut text = with_unit(self.value, RESULT_FIGURES, &coherent, latex).text;
        if let Some(unit) = self.unit.filter(|unit| !is_coherent(unit)) {
            let shown = with_unit(unit.from_si(self.value), RESULT_FIGURES, unit.symbol, latex).text;
            text += &if latex { format!("\\quad\\left({shown}\\right)") } else { format!(" ({shown})") };
        }
        text
    }

    /// The formula worked out again from the values put in. It equals the result but for rounding,
    /// unless the line hid a change of unit from the formula; a test over all steps finds that.
    pub fn recomputed(&self) -> f64 {
        self.evaluate(self.form, &|value| value)
    }

    fn evaluate(&self, form: &Formula, as_printed: &dyn Fn(f64) -> f64) -> f64 {
        let part = |form: &Formula| self.evaluate(form, as_printed);
        match form {
            Formula::Leaf(index) | Formula::Call(index, _) => self.leaves.get(*index).and_then(Leaf::value).map_or(f64::NAN, as_printed),
            Formula::Number(number) => *number,
            Formula::Negative(inner) => -part(inner),
            Formula::Sum(left, right) => part(left) + part(right),
            Formula::Difference(left, right) => part(left) - part(right),
            Formula::Product(left, right) => part(left) * part(right),
            Formula::Quotient(left, right) => part(left) / part(right),
            Formula::Power(base, exponent) => math::pow(part(base), part(exponent)),
            Formula::Function(function, arguments) => {
                let arguments: Vec<f64> = arguments.iter().map(part).collect();
                function.of(&arguments)
            }
        }
    }

    /// The fewest figures, seven at least, from which the result follows to its printed figures.
    fn figures_put_in(&self) -> usize {
        let exact = self.recomputed();
        let follows = |figures: usize| {
            let rounded = self.evaluate(self.form, &|value| format!("{value:.*e}", figures - 1).parse().unwrap_or(value));
            (rounded - exact).abs() <= 0.5e-6 * exact.abs()
        };
        (FIGURES_PUT_IN..ALL_FIGURES).find(|figures| follows(*figures)).unwrap_or(if exact.is_finite() {
            ALL_FIGURES
        } else {
            FIGURES_PUT_IN
        })
    }

    /// Formula, numbers and result without what merely repeats.
    fn parts(&self, latex: bool) -> Vec<String> {
        let mut parts = if latex {
            alloc::vec![self.formula_latex(), self.substituted_latex(), self.result_latex()]
        } else {
            alloc::vec![self.formula(), self.substituted(), self.result()]
        };
        if matches!(self.form, Formula::Leaf(_) | Formula::Number(_)) {
            parts.remove(1);
        }
        parts.dedup();
        parts
    }

    /// The step on one line of plain text.
    pub fn plain(&self) -> String {
        format!("{} = {}  [{}]", self.symbol(), self.parts(false).join(" = "), self.source)
    }

    /// The step as lines of a LaTeX alignment, the source beside the first.
    pub fn latex(&self) -> String {
        let mut lines = String::from(self.symbol);
        for (place, part) in self.parts(true).iter().enumerate() {
            let source = if place == 0 { format!(" && \\text{{{}}}", escaped(self.source)) } else { String::new() };
            let start = if place == 0 { " &= " } else { " \\\\\n  &= " };
            lines += &format!("{start}{part}{source}");
        }
        lines
    }
}

/// Text that a formula's part became.
struct Written {
    text: String,
    /// How strongly it holds together.
    binding: Binding,
}

#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Binding {
    Sum,
    Product,
    Fraction,
    Power,
    Atom,
}

/// Writes a step's formula in symbols, or with numbers of so many figures.
struct Writer<'a> {
    step: &'a Step,
    figures: Option<usize>,
    latex: bool,
}

impl Writer<'_> {
    fn line(&self) -> String {
        match self.step.form {
            // A call that is the whole line shows its arguments; inside a longer line its value serves better.
            Formula::Call(index, arguments) => self.call(*index, arguments).text,
            form => self.write(form).text,
        }
    }

    fn write(&self, form: &Formula) -> Written {
        let (times, over) = if self.latex { (" \\cdot ", " / ") } else { (" × ", " / ") };
        match form {
            Formula::Leaf(index) => self.leaf(*index),
            Formula::Number(number) => decimal(*number, None, self.latex),
            Formula::Negative(inner) => Written { text: format!("-{}", self.right(inner, Binding::Product)), binding: Binding::Product },
            Formula::Sum(left, right) => self.between(left, Binding::Sum, " + ", right, Binding::Sum, Binding::Sum),
            Formula::Difference(left, right) => self.between(left, Binding::Sum, " - ", right, Binding::Product, Binding::Sum),
            Formula::Product(left, right) => self.between(left, Binding::Product, times, right, Binding::Product, Binding::Product),
            Formula::Quotient(left, right) if self.latex => {
                Written { text: format!("\\frac{{{}}}{{{}}}", self.write(left).text, self.write(right).text), binding: Binding::Fraction }
            }
            Formula::Quotient(left, right) => self.between(left, Binding::Product, over, right, Binding::Fraction, Binding::Product),
            Formula::Power(base, exponent) => {
                let base = self.right(base, Binding::Atom);
                let text = if self.latex {
                    format!("{{{base}}}^{{{}}}", self.write(exponent).text)
                } else {
                    format!("{base}^{}", self.right(exponent, Binding::Atom))
                };
                Written { text, binding: Binding::Power }
            }
            Formula::Function(function, arguments) => {
                let (open, close) = function.brackets(self.latex);
                Written { text: format!("{open}{}{close}", self.list(arguments)), binding: Binding::Atom }
            }
            Formula::Call(index, arguments) => match self.figures {
                Some(_) => self.leaf(*index),
                None => self.call(*index, arguments),
            },
        }
    }

    fn between(&self, left: &Formula, least: Binding, sign: &str, right: &Formula, least_right: Binding, binding: Binding) -> Written {
        let left = self.write(left);
        let left = if left.binding < least { self.bracketed(&left.text) } else { left.text };
        Written { text: format!("{left}{sign}{}", self.right(right, least_right)), binding }
    }

    /// A part that does not begin its line: bracketed if it holds too weakly or begins with a minus.
    fn right(&self, form: &Formula, least: Binding) -> String {
        let written = self.write(form);
        if written.binding < least || written.text.starts_with('-') { self.bracketed(&written.text) } else { written.text }
    }

    fn bracketed(&self, text: &str) -> String {
        if self.latex { format!("\\left({text}\\right)") } else { format!("({text})") }
    }

    fn list(&self, arguments: &[Formula]) -> String {
        let arguments: Vec<String> = arguments.iter().map(|argument| self.write(argument).text).collect();
        arguments.join(", ")
    }

    fn leaf(&self, index: usize) -> Written {
        let Some(leaf) = self.step.leaves.get(index) else { return Written { text: String::from("?"), binding: Binding::Atom } };
        // A constant without a name stands in the formula by its value.
        let figures = if leaf.name.is_empty() { Some(self.figures.unwrap_or(ALL_FIGURES - 1)) } else { self.figures };
        match (figures, leaf.value) {
            (Some(figures), Some((value, dimension))) => {
                // In a line that gives an energy per volume, what has its dimension is one.
                with_unit(value, figures, &coherent_unit(dimension, leaf.unit.or(self.step.unit)), self.latex)
            }
            _ => Written { text: self.symbol(leaf), binding: leaf.binding() },
        }
    }

    fn symbol(&self, leaf: &Leaf) -> String {
        if self.latex { leaf.symbol_latex() } else { leaf.symbol() }
    }

    fn call(&self, index: usize, arguments: &[Formula]) -> Written {
        let name = self.step.leaves.get(index).map_or_else(String::new, |leaf| self.symbol(leaf));
        let text = match (arguments.is_empty(), self.latex) {
            (true, _) => name,
            (false, true) => format!("{name}\\left({}\\right)", self.list(arguments)),
            (false, false) => format!("{name}({})", self.list(arguments)),
        };
        Written { text, binding: Binding::Atom }
    }
}

/// A number to so many figures, or to as many as it needs; zeros at the end are left off.
fn decimal(value: f64, figures: Option<usize>, latex: bool) -> Written {
    let needed = || format!("{value:e}").chars().take_while(|letter| *letter != 'e').filter(char::is_ascii_digit).count();
    let plain = number(value, figures.unwrap_or_else(needed));
    match plain.split_once('e') {
        _ if !latex => Written { text: plain, binding: Binding::Atom },
        _ if !value.is_finite() => Written { text: format!("\\text{{{plain}}}"), binding: Binding::Atom },
        Some((mantissa, exponent)) => Written { text: format!("{mantissa} \\times 10^{{{exponent}}}"), binding: Binding::Product },
        None => Written { text: plain, binding: Binding::Atom },
    }
}

/// A number with its unit, which together bind like a product.
fn with_unit(value: f64, figures: usize, unit: &str, latex: bool) -> Written {
    let number = decimal(value, Some(figures), latex);
    match (unit.is_empty(), latex) {
        (true, _) => number,
        (false, false) => Written { text: format!("{} {unit}", number.text), binding: Binding::Product },
        (false, true) => Written { text: format!("{}\\,{}", number.text, unit_latex(unit)), binding: Binding::Product },
    }
}

/// The coherent SI units that have a name or a usual spelling.
#[rustfmt::skip]
const COHERENT: [&str; 41] = [
    "Pa", "W", "J", "N", "V", "Ω", "Ω/K", "V/K", "m/s", "m/s²", "m²/s", "m³/s", "K/s", "K/m", "kg/s", "kg/m³", "m³/kg", "kg/m", "kg/mol",
    "mol/m³", "m³/mol", "N/m", "Pa/m", "Pa·s", "J/kg", "J/mol", "J/K", "J/(kg·K)", "J/(m³·K)", "J/(mol·K)", "kg/J", "m²/W", "W/m", "W/m²", "W/K",
    "W/(m·K)", "W/(m²·K)", "K/W", "m·K/W", "m²·K/W", "J/(m·K)",
];

const BASE: [&str; 7] = ["m", "kg", "s", "A", "K", "mol", "cd"];

/// The coherent SI unit of a dimension, spelled as the display unit suggests: an energy per volume
/// has the dimension of a pressure, and only the display unit tells which is meant.
fn coherent_unit(dimension: Dimension, shown_in: Option<Unit>) -> Cow<'static, str> {
    if let Some(unit) = shown_in.filter(|unit| unit.dimension == dimension) {
        if is_coherent(&unit) && !unit.symbol.starts_with('1') {
            return Cow::Borrowed(unit.symbol);
        }
        if dimension == PRESSURE && read_unit(unit.symbol).is_some_and(|read| read.energy) {
            return Cow::Borrowed("J/m³");
        }
    }
    if dimension == NUMBER {
        return Cow::Borrowed("");
    }
    match COHERENT.iter().find(|symbol| read_unit(symbol).is_some_and(|read| read.dimension == dimension)) {
        Some(symbol) => Cow::Borrowed(symbol),
        None => Cow::Owned(product_of_base_units(dimension)),
    }
}

fn is_coherent(unit: &Unit) -> bool {
    unit.factor == 1.0 && unit.offset == 0.0
}

fn product_of_base_units(dimension: Dimension) -> String {
    let mut text = String::new();
    // Positive exponents first, as units are read.
    for sign in [1, -1] {
        for (unit, exponent) in BASE.iter().zip(dimension).filter(|(_, exponent)| exponent.signum() == sign) {
            if !text.is_empty() {
                text.push('·');
            }
            text += unit;
            if exponent != 1 {
                text.extend(format!("{exponent}").chars().map(superscript));
            }
        }
    }
    text
}

const SUPERSCRIPTS: [(char, char); 11] =
    [('0', '⁰'), ('1', '¹'), ('2', '²'), ('3', '³'), ('4', '⁴'), ('5', '⁵'), ('6', '⁶'), ('7', '⁷'), ('8', '⁸'), ('9', '⁹'), ('-', '⁻')];

fn superscript(digit: char) -> char {
    SUPERSCRIPTS.iter().find(|(plain, _)| *plain == digit).map_or(digit, |(_, raised)| *raised)
}

/// The LaTeX of a unit written in plain text.
pub fn unit_latex(unit: &str) -> String {
    let mut text = String::from("\\mathrm{");
    let mut raised = false;
    for letter in unit.chars() {
        let lowered = SUPERSCRIPTS.iter().find(|(_, high)| *high == letter).map(|(plain, _)| *plain);
        match (lowered, raised) {
            (Some(_), false) => text += "^{",
            (None, true) => text.push('}'),
            _ => {}
        }
        raised = lowered.is_some();
        match (lowered, letter) {
            (Some(plain), _) => text.push(plain),
            (None, '·') => text += "{\\cdot}",
            (None, '°') => text += "{}^{\\circ}",
            (None, 'Ω') => text += "\\Omega{}",
            (None, 'µ' | 'μ') => text += "\\mu{}",
            (None, '₂') => text += "_2",
            (None, ' ') => text += "\\,",
            (None, '%' | '_') => text.extend(['\\', letter]),
            (None, letter) => text.push(letter),
        }
    }
    if raised {
        text.push('}');
    }
    text.push('}');
    text
}

/// Ordinary words made safe inside LaTeX's `\text{}`.
fn escaped(words: &str) -> String {
    let mut text = String::new();
    for letter in words.chars() {
        match letter {
            '%' | '&' | '#' | '_' | '$' | '{' | '}' => text.extend(['\\', letter]),
            '\\' => text += "\\backslash ",
            '~' | '^' => text.extend(['\\', letter, '{', '}']),
            letter => text.push(letter),
        }
    }
    text
}

/// LaTeX commands that are a letter or a sign in plain text.
const LETTERS: [(&str, &str); 44] = [
    ("alpha", "α"),
    ("beta", "β"),
    ("gamma", "γ"),
    ("delta", "δ"),
    ("epsilon", "ε"),
    ("varepsilon", "ε"),
    ("zeta", "ζ"),
    ("eta", "η"),
    ("theta", "θ"),
    ("vartheta", "ϑ"),
    ("kappa", "κ"),
    ("lambda", "λ"),
    ("mu", "μ"),
    ("nu", "ν"),
    ("xi", "ξ"),
    ("pi", "π"),
    ("rho", "ρ"),
    ("sigma", "σ"),
    ("tau", "τ"),
    ("phi", "φ"),
    ("varphi", "φ"),
    ("chi", "χ"),
    ("psi", "ψ"),
    ("omega", "ω"),
    ("Gamma", "Γ"),
    ("Delta", "Δ"),
    ("Theta", "Θ"),
    ("Lambda", "Λ"),
    ("Xi", "Ξ"),
    ("Pi", "Π"),
    ("Sigma", "Σ"),
    ("Phi", "Φ"),
    ("Psi", "Ψ"),
    ("Omega", "Ω"),
    ("ell", "ℓ"),
    ("infty", "∞"),
    ("cdot", "·"),
    ("times", "×"),
    ("circ", "°"),
    ("degree", "°"),
    ("prime", "′"),
    ("partial", "∂"),
    ("pm", "±"),
    ("sum", "Σ"),
];

/// LaTeX accents and the marks that stand on the letter before them in plain text.
const ACCENTS: [(&str, char); 7] = [
    ("dot", '\u{307}'),
    ("ddot", '\u{308}'),
    ("bar", '\u{304}'),
    ("overline", '\u{304}'),
    ("hat", '\u{302}'),
    ("tilde", '\u{303}'),
    ("vec", '\u{20d7}'),
];

/// LaTeX commands that change only how their argument looks.
const LAYOUT: [&str; 9] = ["mathrm", "mathit", "mathbf", "mathsf", "text", "operatorname", "left", "right", "rm"];

/// The plain text of a symbol written in LaTeX: `\dot V_{ref}` is `V̇_ref`, `x_{O_2}` is `x_O2`.
pub fn plain_symbol(latex: &str) -> String {
    let mut text = String::new();
    let mut accent = None;
    let mut depth = 0usize;
    let mut letters = latex.chars().peekable();
    while let Some(letter) = letters.next() {
        let mut put = |what: &str, accent: &mut Option<char>| {
            text += what;
            text.extend(accent.take());
        };
        match letter {
            '\\' => {
                let mut command = String::new();
                while let Some(letter) = letters.next_if(char::is_ascii_alphabetic) {
                    command.push(letter);
                }
                if command.is_empty() {
                    // An escaped sign stands for itself; `\,` and its kind are spaces.
                    if let Some(sign) = letters.next().filter(|sign| "%_&#$".contains(*sign)) {
                        put(sign.encode_utf8(&mut [0; 4]), &mut accent);
                    }
                } else if let Some((_, mark)) = ACCENTS.iter().find(|(name, _)| *name == command) {
                    accent = Some(*mark);
                } else if let Some((_, plain)) = LETTERS.iter().find(|(name, _)| *name == command) {
                    put(plain, &mut accent);
                } else if !LAYOUT.contains(&command.as_str()) {
                    put(&command, &mut accent);
                }
            }
            '{' => depth += 1,
            '}' => depth = depth.saturating_sub(1),
            // Only the first level of subscripts can be seen in plain text.
            '_' | '^' if depth > 0 => {}
            '$' | ' ' => {}
            letter => put(letter.encode_utf8(&mut [0; 4]), &mut accent),
        }
    }
    text
}

/// What is known of a name before the sum begins, mostly of a record's field.
#[derive(Clone, Copy, Debug)]
pub struct Known {
    /// The name in the program.
    pub name: &'static str,
    /// The symbol as LaTeX.
    pub symbol: &'static str,
    /// The unit it is usually given in.
    pub unit: Option<Unit>,
    /// Its value in coherent SI units. Given, only a name of that value is taken for it, and a bare number gets its unit;
    /// not-a-number where it was left out, so that the name stands for what was taken instead.
    pub value: Option<f64>,
}

impl From<(&'static str, &'static str)> for Known {
    fn from((name, symbol): (&'static str, &'static str)) -> Self {
        Self { name, symbol, unit: None, value: None }
    }
}

/// Constants by the names that programs give them.
const CONSTANTS: [(&str, &str); 6] = [
    ("PI", "\\pi"),
    ("GRAVITY", "g"),
    ("gravity", "g"),
    ("standard_gravity", "g_n"),
    ("MOLAR_GAS_CONSTANT", "R_m"),
    ("gas_constant", "R_m"),
];

/// Keeps the steps of a sum.
#[derive(Clone, Debug, Default)]
pub struct Steps {
    known: Vec<Known>,
    steps: Vec<Step>,
}

impl Steps {
    /// An empty sheet on which these names, mostly a record's fields, have their symbols.
    pub fn new<K: Into<Known>>(known: impl IntoIterator<Item = K>) -> Self {
        Self { known: known.into_iter().map(Into::into).collect(), steps: Vec::new() }
    }

    /// The steps so far.
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// All steps as plain text, a line each.
    pub fn plain(&self) -> String {
        self.steps.iter().map(|step| step.plain() + "\n").collect()
    }

    /// All steps as a LaTeX `align*`.
    pub fn latex(&self) -> String {
        let lines: Vec<String> = self.steps.iter().map(Step::latex).collect();
        format!("\\begin{{align*}}\n{}\n\\end{{align*}}\n", lines.join(" \\\\\n"))
    }

    /// The latest thing of that name and value: a field of the record is meant behind a dot, a step
    /// otherwise. A name that was given another value since is not the same thing any more.
    fn find(&self, leaf: &Leaf, name: &str) -> Option<Known> {
        let whole = name == leaf.name && leaf.measured_in.is_none();
        let same = |known: Option<f64>| match (known, leaf.value()) {
            (Some(known), Some(value)) if whole => known.to_bits() == value.to_bits() || known.is_nan(),
            _ => true,
        };
        let field = || self.known.iter().find(|known| known.name == name && same(known.value)).copied();
        let step = || {
            let step = self.steps.iter().rev().find(|step| step.name == name && same(Some(step.value)))?;
            Some(Known { name: step.name, symbol: step.symbol, unit: step.unit, value: Some(step.value) })
        };
        let constant = || CONSTANTS.iter().find(|(constant, _)| *constant == name).map(|&constant| constant.into());
        if leaf.field { field().or_else(step) } else { step().or_else(field).or_else(constant) }
    }

    /// Gives a name without a symbol that of the result of the same name and value.
    pub(crate) fn name_results(&mut self, results: impl Iterator<Item = Known>) {
        let results: Vec<Known> = results.collect();
        for step in &mut self.steps {
            for leaf in step.leaves.iter_mut().filter(|leaf| leaf.symbol.is_none() && leaf.measured_in.is_none()) {
                let same = |known: &&Known| known.name == leaf.name && known.value.map(f64::to_bits) == leaf.value().map(f64::to_bits);
                if let Some(known) = results.iter().find(same) {
                    leaf.take(*known, step.form, step.symbol);
                }
            }
        }
    }
}

impl Working for Steps {
    const ON: bool = true;

    fn step(&mut self, mut step: Step) {
        // A line without a result was not part of this sum: what it needs was not given.
        if step.value.is_nan() {
            return;
        }
        for leaf in &mut step.leaves {
            if let Some(known) = self.find(leaf, split_index(&leaf.name).0) {
                leaf.take(known, step.form, step.symbol);
            }
        }
        self.steps.push(step);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn coherent_units_are_spelled_so_that_they_read_as_what_they_measure() {
        for symbol in COHERENT {
            let read = read_unit(symbol).unwrap();
            assert_eq!((read.factor, read.offset), (1.0, 0.0), "{symbol}");
            assert_eq!(coherent_unit(read.dimension, None), symbol);
        }
        // Everything between, spelled out in base units.
        for place in 0..3_usize.pow(5) {
            let dimension = [0, 1, 2, 3, 4, 5, 6].map(|base| if base < 5 { (place / 3_usize.pow(base) % 3) as i8 * 2 - 2 } else { 1 });
            let spelled = product_of_base_units(dimension);
            let known = read_unit(&spelled.replace("·cd", "").replace("cd·", ""));
            assert_eq!(known.map(|read| [&read.dimension[..6], &[1]].concat()), Some(dimension.to_vec()), "{spelled}");
        }
    }

    #[test]
    fn a_display_unit_tells_energy_per_volume_from_pressure() {
        use crate::quantity::units::{KILOPASCAL, MEGAJOULE_PER_CUBIC_METRE, PASCAL};
        for (unit, spelled) in [(KILOPASCAL, "Pa"), (PASCAL, "Pa"), (MEGAJOULE_PER_CUBIC_METRE, "J/m³")] {
            assert_eq!(coherent_unit(unit.dimension, Some(unit)), spelled);
        }
    }
}
