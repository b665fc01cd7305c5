//! What a step shows is what it computed.
//!
//! The shown lines are read back by a small evaluator that knows school arithmetic and nothing of
//! the library. Units are numbers to it, so a line whose units do not balance is found out as well.

use flamewright::quantity::Unit;
use flamewright::quantity::units::{DEGREE_CELSIUS, KILOWATT, MEGAJOULE_PER_CUBIC_METRE, PERCENT};
use flamewright::working::{Formula, Function, Known, Leaf, Silent, Step, Steps, Working, plain_symbol, step, unit_latex};
use uom::si::f64::{
    HeatCapacity, MassDensity, Power, Pressure, SpecificHeatCapacity, TemperatureInterval, ThermodynamicTemperature, Time, Volume,
    VolumeRate,
};
use uom::si::{
    heat_capacity::joule_per_kelvin, mass_density::kilogram_per_cubic_meter, power::watt, pressure::pascal,
    specific_heat_capacity::joule_per_kilogram_kelvin, temperature_interval::kelvin as kelvin_interval,
    thermodynamic_temperature::degree_celsius, thermodynamic_temperature::kelvin, time::second, volume::cubic_meter,
    volume_rate::cubic_meter_per_second,
};

/// Reads school arithmetic.
struct Reader<'a> {
    rest: &'a str,
    named: &'a dyn Fn(&str) -> Option<f64>,
}

impl<'a> Reader<'a> {
    fn read(text: &'a str, named: &'a dyn Fn(&str) -> Option<f64>) -> f64 {
        let mut reader = Self { rest: text, named };
        let value = reader.sum();
        reader.rest = reader.rest.trim_start();
        assert!(reader.rest.is_empty(), "left over in {text:?}: {:?}", reader.rest);
        value
    }

    fn take(&mut self, sign: &str) -> bool {
        let rest = self.rest.trim_start();
        match rest.strip_prefix(sign) {
            Some(rest) => {
                self.rest = rest;
                true
            }
            None => false,
        }
    }

    fn expect(&mut self, sign: &str) {
        assert!(self.take(sign), "expected {sign} before {:?}", self.rest);
    }

    fn sum(&mut self) -> f64 {
        let mut value = self.product();
        loop {
            if self.take("+") {
                value += self.product();
            } else if self.take("-") {
                value -= self.product();
            } else {
                return value;
            }
        }
    }

    fn product(&mut self) -> f64 {
        let negative = self.take("-");
        let mut value = self.power();
        loop {
            if self.take("×") || self.take("·") {
                value *= self.power();
            } else if self.take("/") {
                value /= self.power();
            } else if self.rest.trim_start().starts_with(|letter: char| letter.is_alphabetic() && letter != '√') {
                // A unit behind its number.
                value *= self.power();
            } else {
                return if negative { -value } else { value };
            }
        }
    }

    fn power(&mut self) -> f64 {
        let base = self.atom();
        if self.take("^") {
            return base.powf(self.atom());
        }
        let raised: String = self
            .rest
            .chars()
            .map_while(|letter| "⁰¹²³⁴⁵⁶⁷⁸⁹".chars().position(|high| high == letter).map(|digit| digit.to_string()))
            .collect();
        let minus = self.rest.strip_prefix('⁻');
        if let Some(rest) = minus {
            let digits: Vec<char> = rest.chars().take_while(|letter| "⁰¹²³⁴⁵⁶⁷⁸⁹".contains(*letter)).collect();
            let exponent =
                digits.iter().fold(0, |number, digit| number * 10 + "⁰¹²³⁴⁵⁶⁷⁸⁹".chars().position(|high| high == *digit).unwrap());
            self.rest = &rest[digits.iter().map(|digit| digit.len_utf8()).sum()..];
            return base.powi(-(exponent as i32));
        }
        if raised.is_empty() {
            return base;
        }
        self.rest = &self.rest[self.rest.chars().take(raised.len()).map(char::len_utf8).sum()..];
        base.powi(raised.parse().unwrap())
    }

    fn atom(&mut self) -> f64 {
        for (name, function) in [
            ("√(", f64::sqrt as fn(f64) -> f64),
            ("∛(", f64::cbrt),
            ("exp(", f64::exp),
            ("ln(", f64::ln),
            ("lg(", f64::log10),
            ("sin(", f64::sin),
            ("cos(", f64::cos),
            ("tanh(", f64::tanh),
            ("(", |x| x),
        ] {
            if self.take(name) {
                let value = function(self.sum());
                self.expect(")");
                return value;
            }
        }
        for (name, function) in [("min(", f64::min as fn(f64, f64) -> f64), ("max(", f64::max)] {
            if self.take(name) {
                let first = self.sum();
                self.expect(",");
                let value = function(first, self.sum());
                self.expect(")");
                return value;
            }
        }
        if self.take("|") {
            let value = self.sum().abs();
            self.expect("|");
            return value;
        }
        self.rest = self.rest.trim_start();
        let number = self.rest.find(|letter: char| !letter.is_ascii_digit() && letter != '.').unwrap_or(self.rest.len());
        if number > 0 {
            let mut end = number;
            if let Some(exponent) = self.rest[number..].strip_prefix('e') {
                let digits = exponent.trim_start_matches('-');
                let length = digits.find(|letter: char| !letter.is_ascii_digit()).unwrap_or(digits.len());
                assert!(length > 0, "a number breaks off: {:?}", self.rest);
                end += 1 + exponent.len() - digits.len() + length;
            }
            let (number, rest) = self.rest.split_at(end);
            self.rest = rest;
            return number.parse().unwrap();
        }
        let is_name = |letter: char| {
            (letter.is_alphanumeric() && !"⁰¹²³⁴⁵⁶⁷⁸⁹".contains(letter)) || letter == '_' || ('\u{300}'..'\u{370}').contains(&letter)
        };
        let end = self.rest.find(|letter: char| !is_name(letter)).unwrap_or(self.rest.len());
        assert!(end > 0, "expected a value before {:?}", self.rest);
        let (name, rest) = self.rest.split_at(end);
        self.rest = rest;
        (self.named)(name).unwrap_or_else(|| panic!("unknown name {name:?}"))
    }
}

/// LaTeX as the plain arithmetic it is typeset from.
fn from_latex(latex: &str) -> String {
    // A group in braces: its inside and what follows.
    fn group(text: &str) -> (&str, &str) {
        let text = text.strip_prefix('{').expect("a group");
        let mut depth = 1;
        for (place, letter) in text.char_indices() {
            depth += match letter {
                '{' => 1,
                '}' => -1,
                _ => 0,
            };
            if depth == 0 {
                return (&text[..place], &text[place + 1..]);
            }
        }
        panic!("a group is left open: {text:?}")
    }
    let mut plain = String::new();
    let mut rest = latex;
    'next: while let Some(letter) = rest.chars().next() {
        for (command, meaning) in [
            ("\\left", ""),
            ("\\right", ""),
            ("\\cdot", "×"),
            ("\\times", "×"),
            ("\\,", " "),
            ("\\exp", "exp"),
            ("\\ln", "ln"),
            ("\\lg", "lg"),
            ("\\sin", "sin"),
            ("\\cos", "cos"),
            ("\\tanh", "tanh"),
            ("\\min", "min"),
            ("\\max", "max"),
        ] {
            if let Some(after) = rest.strip_prefix(command) {
                plain += meaning;
                rest = after;
                continue 'next;
            }
        }
        if let Some(after) = rest.strip_prefix("\\frac") {
            let (above, after) = group(after);
            let (below, after) = group(after);
            plain += &format!("(({})/({}))", from_latex(above), from_latex(below));
            rest = after;
        } else if let Some(after) = rest.strip_prefix("\\sqrt[3]") {
            let (inside, after) = group(after);
            plain += &format!("∛({})", from_latex(inside));
            rest = after;
        } else if let Some(after) = rest.strip_prefix("\\sqrt") {
            let (inside, after) = group(after);
            plain += &format!("√({})", from_latex(inside));
            rest = after;
        } else if rest.starts_with('{') {
            let (inside, after) = group(rest);
            // Braces do not bracket what a reader sees, unless they raise it.
            let raised = plain.ends_with('^');
            plain += &if raised { format!("({})", from_latex(inside)) } else { from_latex(inside) };
            rest = after;
        } else {
            assert!(letter != '\\' && letter != '}', "not understood: {rest:?}");
            plain.push(letter);
            rest = &rest[letter.len_utf8()..];
        }
    }
    plain
}

fn agree(shown: f64, computed: f64, tolerance: f64) -> bool {
    shown == computed || (shown - computed).abs() <= tolerance * computed.abs() || (shown.is_nan() && computed.is_nan())
}

/// Numbers without order (a linear congruence; constants from memory, any full-period pair will do).
struct Numbers(u64);

impl Numbers {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
        self.0 >> 33
    }

    /// Between the bounds, sometimes on a whole number; zero is positive, for a text shows it without its sign.
    fn between(&mut self, low: f64, high: f64) -> f64 {
        let value = low + (high - low) * self.next() as f64 / (1u64 << 31) as f64;
        if self.next().is_multiple_of(4) { value.round() + 0.0 } else { value }
    }
}

/// Reads every shown form of a step back and compares it with what was computed.
fn assert_shown_as_computed(step: &Step, symbols: &[(&str, &str, f64)]) {
    let value = step.value();
    let by_symbol = |name: &str| symbols.iter().find(|(_, latex, _)| plain_symbol(latex) == name).map(|(_, _, value)| *value);
    assert!(agree(step.recomputed(), value, 1e-12), "recomputed {} for {value}: {}", step.recomputed(), step.formula());
    let formula = step.formula();
    assert!(agree(Reader::read(&formula, &by_symbol), value, 1e-11), "formula {formula} is not {value}");
    let substituted = step.substituted();
    assert!(agree(Reader::read(&substituted, &|_| None), value, 0.6e-6), "{substituted} is not {value}");
    let mut latex = step.formula_latex();
    for (_, symbol, _) in symbols {
        latex = latex.replace(symbol, &plain_symbol(symbol));
    }
    let read = from_latex(&latex);
    assert!(agree(Reader::read(&read, &by_symbol), value, 1e-11), "{latex} is not {value}");
    let latex = step.substituted_latex();
    assert!(agree(Reader::read(&from_latex(&latex), &|_| None), value, 0.6e-6), "{latex} is not {value}");
}

struct Sizes {
    length: f64,
    mass: f64,
}

/// The names of a sum, whose LaTeX symbols do not contain one another.
const SYMBOLS: [(&str, &str); 6] =
    [("a", "\\alpha"), ("b", "\\dot V_{ref}"), ("c", "\\lambda_n"), ("d", "x_{O_2}"), ("length", "\\ell"), ("mass", "\\dot m")];

macro_rules! shapes {
    ($($formula:literal => $body:expr;)*) => {
        #[test]
        #[allow(clippy::neg_multiply, clippy::precedence, clippy::deref_addrof)]
        fn every_shape_of_expression_is_shown_as_computed() {
            let mut numbers = Numbers(1);
            for round in 0..60 {
                // Every third round the numbers are positive only, so that roots and logarithms have values.
                let low = if round % 3 == 0 { 0.1 } else { -30.0 };
                let [a, b, c, d, length, mass] = [(); 6].map(|()| numbers.between(low, 40.0));
                let sizes = Sizes { length, mass };
                let _ = (a, b, c, d, &sizes);
                $({
                    let mut steps = Steps::new(SYMBOLS);
                    shapes!(@let steps, a, b, c, d, sizes, $body);
                    if let Some(step) = steps.steps().first() {
                        assert_eq!(step.formula(), $formula);
                        let values = [a, b, c, d, length, mass];
                        let symbols: Vec<_> = SYMBOLS.iter().zip(values).map(|((name, symbol), value)| (*name, *symbol, value)).collect();
                        assert_shown_as_computed(step, &symbols);
                    } else {
                        // The root of a negative number is no line of a sum.
                        assert!(low < 0.0, "{} left no step", $formula);
                    }
                })*
            }
        }
    };
    (@let $steps:ident, $a:ident, $b:ident, $c:ident, $d:ident, $sizes:ident, $body:expr) => {
        let result = {
            let working = &mut $steps;
            let body: fn(f64, f64, f64, f64, &Sizes, &mut Steps) -> f64 = $body;
            body($a, $b, $c, $d, &$sizes, working)
        };
        assert!($steps.steps().first().map_or(result.is_nan(), |step| step.value().to_bits() == result.to_bits()));
    };
}

/// The body of a shape: one step, on the names below.
macro_rules! one {
    (|$($name:ident),*| $body:expr) => {
        |$($name),*, working| {
            $(let _ = &$name;)*
            step!(working, let y: "y" = $body, "invented");
            y
        }
    };
}

mod math {
    pub(super) fn sqrt(x: f64) -> f64 {
        x.sqrt()
    }
    pub(super) fn exp(x: f64) -> f64 {
        x.exp()
    }
    pub(super) fn ln(x: f64) -> f64 {
        x.ln()
    }
    pub(super) fn pow(x: f64, y: f64) -> f64 {
        x.powf(y)
    }
}

shapes! {
    "α + V̇_ref" => one!(|a, b, c, d, sizes| a + b);
    "α - (V̇_ref + λ_n)" => one!(|a, b, c, d, sizes| a - (b + c));
    "α - (V̇_ref - λ_n)" => one!(|a, b, c, d, sizes| a - (b - c));
    "α - V̇_ref - λ_n" => one!(|a, b, c, d, sizes| a - b - c);
    "α - V̇_ref + λ_n" => one!(|a, b, c, d, sizes| a - b + c);
    "α + V̇_ref - λ_n" => one!(|a, b, c, d, sizes| a + (b - c));
    "α / (V̇_ref × λ_n)" => one!(|a, b, c, d, sizes| a / (b * c));
    "α / V̇_ref / λ_n" => one!(|a, b, c, d, sizes| a / b / c);
    "α / (V̇_ref / λ_n)" => one!(|a, b, c, d, sizes| a / (b / c));
    "α / V̇_ref × λ_n" => one!(|a, b, c, d, sizes| a / b * c);
    "α × V̇_ref / λ_n" => one!(|a, b, c, d, sizes| a * (b / c));
    "(α + V̇_ref) × (λ_n - x_O2)" => one!(|a, b, c, d, sizes| (a + b) * (c - d));
    "(α + V̇_ref) / (λ_n - x_O2)" => one!(|a, b, c, d, sizes| (a + b) / (c - d));
    "(α + V̇_ref)^2" => one!(|a, b, c, d, sizes| (a + b).powi(2));
    "-α × V̇_ref" => one!(|a, b, c, d, sizes| -a * b);
    "α × (-V̇_ref)" => one!(|a, b, c, d, sizes| a * -b);
    "-α × V̇_ref + λ_n" => one!(|a, b, c, d, sizes| -(a * b) + c);
    "-(α + V̇_ref)" => one!(|a, b, c, d, sizes| -(a + b));
    "α - (-V̇_ref)" => one!(|a, b, c, d, sizes| a - -b);
    "-(-α)" => one!(|a, b, c, d, sizes| -(-a));
    "(-α)^2" => one!(|a, b, c, d, sizes| (-a).powi(2));
    "-α^2" => one!(|a, b, c, d, sizes| -a.powi(2));
    "(α^2)^3" => one!(|a, b, c, d, sizes| a.powi(2).powi(3));
    "α^(-2) × V̇_ref" => one!(|a, b, c, d, sizes| a.powi(-2) * b);
    "(α / V̇_ref)^2" => one!(|a, b, c, d, sizes| (a / b).powi(2));
    "(α × V̇_ref)^3 / λ_n^2" => one!(|a, b, c, d, sizes| (a * b).powi(3) / c.powi(2));
    "√(α^2 + V̇_ref^2)" => one!(|a, b, c, d, sizes| (a.powi(2) + b.powi(2)).sqrt());
    "√(α) / ∛(V̇_ref)" => one!(|a, b, c, d, sizes| a.sqrt() / b.cbrt());
    "√(α × V̇_ref) - ln(λ_n / x_O2)" => one!(|a, b, c, d, sizes| math::sqrt(a * b) - math::ln(c / d));
    "exp(-α / 40) × V̇_ref" => one!(|a, b, c, d, sizes| math::exp(-a / 40.0) * b);
    "α^(V̇_ref / 50)" => one!(|a, b, c, d, sizes| math::pow(a, b / 50.0));
    "(α + V̇_ref)^(1 - λ_n)" => one!(|a, b, c, d, sizes| math::pow(a + b, 1.0 - c));
    "1 / (α + V̇_ref)" => one!(|a, b, c, d, sizes| (a + b).recip());
    "α / (1 / V̇_ref)" => one!(|a, b, c, d, sizes| a / b.recip());
    "|α - V̇_ref| × |λ_n|" => one!(|a, b, c, d, sizes| (a - b).abs() * c.abs());
    "min(α, V̇_ref + λ_n) / max(λ_n, 0.5)" => one!(|a, b, c, d, sizes| a.min(b + c) / c.max(0.5));
    "max(α, V̇_ref)^2" => one!(|a, b, c, d, sizes| f64::max(a, b).powi(2));
    "tanh(α) + sin(V̇_ref) - cos(λ_n)" => one!(|a, b, c, d, sizes| a.tanh() + b.sin() - c.cos());
    "lg(α) × 1e-6" => one!(|a, b, c, d, sizes| a.log10() * 1e-6);
    "α × 1.5e8 / 273.15" => one!(|a, b, c, d, sizes| a * 1.5e8 / 273.15);
    "ℓ × m\u{307}" => one!(|a, b, c, d, sizes| sizes.length * sizes.mass);
    "20.9 / (20.9 - α)" => one!(|a, b, c, d, sizes| 20.9 / (20.9 - a));
    "α × α - α" => one!(|a, b, c, d, sizes| a * a - a);
    "α" => one!(|a, b, c, d, sizes| a);
    "α + V̇_ref × λ_n" => one!(|a, b, c, d, sizes| *&a + (b as f64) * (c));
}

/// Any tree of operations, to try the brackets where no one thought of a case.
fn grown(numbers: &mut Numbers, depth: u32) -> Formula {
    let part = |numbers: &mut Numbers| -> &'static Formula { Box::leak(Box::new(grown(numbers, depth - 1))) };
    if depth == 0 || numbers.next().is_multiple_of(8) {
        return match numbers.next() % 7 {
            6 => Formula::Number(numbers.between(-3.0, 5.0)),
            place => Formula::Leaf((place % 4) as usize),
        };
    }
    match numbers.next() % 9 {
        0 => Formula::Negative(part(numbers)),
        1 | 2 => Formula::Sum(part(numbers), part(numbers)),
        3 | 4 => Formula::Difference(part(numbers), part(numbers)),
        5 => Formula::Product(part(numbers), part(numbers)),
        6 => Formula::Quotient(part(numbers), part(numbers)),
        7 => Formula::Power(part(numbers), Box::leak(Box::new(Formula::Number([-2.0, 2.0, 3.0][numbers.next() as usize % 3])))),
        _ => {
            let (one, two) = (*part(numbers), *part(numbers));
            match numbers.next() % 3 {
                0 => Formula::Function(Function::Magnitude, Box::leak(Box::new([one]))),
                1 => Formula::Function(Function::SquareRoot, Box::leak(Box::new([one]))),
                _ => Formula::Function(Function::Greatest, Box::leak(Box::new([one, two]))),
            }
        }
    }
}

#[test]
fn brackets_stand_where_any_tree_of_operations_needs_them() {
    let mut numbers = Numbers(7);
    let mut finite = 0;
    for _ in 0..20_000 {
        let form: &'static Formula = Box::leak(Box::new(grown(&mut numbers, 4)));
        let values = [(); 4].map(|()| numbers.between(-9.0, 9.0));
        let leaves = [0, 1, 2, 3].map(|place| Leaf::new(SYMBOLS[place].0, false, &values[place]));
        let mut steps = Steps::new(SYMBOLS);
        let drawn = Step::new("y", "y", form, leaves.clone(), &0.0, None, "invented");
        steps.step(Step::new("y", "y", form, leaves, &drawn.recomputed(), None, "invented"));
        let Some(step) = steps.steps().first() else { continue };
        // Sums that cancel lose the figures the comparison needs; they say nothing of brackets.
        let spread = [1.0 + 1e-9, 1.0 - 1e-9].map(|factor| {
            let leaves =
                [0, 1, 2, 3].map(|place| Leaf::new(SYMBOLS[place].0, false, &(values[place] * if place % 2 == 0 { factor } else { 1.0 })));
            Step::new("y", "y", form, leaves, &0.0, None, "invented").recomputed()
        });
        if !step.value().is_finite() || step.value().abs() < 1e-9 || !spread.iter().all(|moved| agree(*moved, step.value(), 1e-6)) {
            continue;
        }
        finite += 1;
        let symbols: Vec<_> = SYMBOLS.iter().zip(values).map(|((name, symbol), value)| (*name, *symbol, value)).collect();
        assert_shown_as_computed(step, &symbols);
    }
    assert!(finite > 5_000, "only {finite} trees had a value to compare");
}

/// Gas rate to heat input, in uom quantities; uom holds energy per volume to be a pressure.
fn heat_input<W: Working>(metered_flow: VolumeRate, factor: f64, calorific_value: Pressure, working: &mut W) -> Power {
    step!(working, let reference_flow: "\\dot V_{ref}" = metered_flow * factor, "ISO 13443");
    step!(working, let heat_input: "\\dot Q" in KILOWATT = reference_flow * calorific_value, "definition");
    heat_input
}

fn fields() -> [Known; 3] {
    [
        ("metered_flow", "\\dot V").into(),
        ("factor", "f").into(),
        Known { name: "calorific_value", symbol: "H_s", unit: Some(MEGAJOULE_PER_CUBIC_METRE), value: None },
    ]
}

fn heat_input_steps() -> Steps {
    let mut steps = Steps::new(fields());
    let (flow, value) = (VolumeRate::new::<cubic_meter_per_second>(0.0008), Pressure::new::<pascal>(39.5e6));
    let shown = heat_input(flow, 0.95, value, &mut steps);
    assert_eq!(shown.get::<watt>().to_bits(), heat_input(flow, 0.95, value, &mut Silent).get::<watt>().to_bits());
    steps
}

#[test]
fn a_sum_is_written_down_with_its_units() {
    assert_eq!(
        heat_input_steps().plain(),
        "V̇_ref = V̇ × f = 0.0008 m³/s × 0.95 = 0.00076 m³/s  [ISO 13443]\n\
         Q̇ = V̇_ref × H_s = 0.00076 m³/s × 3.95e7 J/m³ = 30020 W (30.02 kW)  [definition]\n"
    );
}

#[test]
fn a_sum_is_typeset_as_an_alignment() {
    let expected = r"\begin{align*}
\dot V_{ref} &= \dot V \cdot f && \text{ISO 13443} \\
  &= 0.0008\,\mathrm{m^{3}/s} \cdot 0.95 \\
  &= 0.00076\,\mathrm{m^{3}/s} \\
\dot Q &= \dot V_{ref} \cdot H_s && \text{definition} \\
  &= 0.00076\,\mathrm{m^{3}/s} \cdot 3.95 \times 10^{7}\,\mathrm{J/m^{3}} \\
  &= 30020\,\mathrm{W}\quad\left(30.02\,\mathrm{kW}\right)
\end{align*}
";
    assert_eq!(heat_input_steps().latex(), expected);
}

/// Values for the units that make every unbalanced line show: no two products of them agree.
fn unit_value(name: &str) -> Option<f64> {
    let (m, kg, s, k) = (1.37, 2.11, 0.73, 3.19);
    Some(match name {
        "m" => m,
        "kg" => kg,
        "s" => s,
        "K" => k,
        "N" => kg * m / (s * s),
        "Pa" => kg / (m * s * s),
        "J" => kg * m * m / (s * s),
        "W" => kg * m * m / (s * s * s),
        _ => return None,
    })
}

#[test]
fn the_units_of_numbers_put_in_balance_those_of_the_result() {
    let density = MassDensity::new::<kilogram_per_cubic_meter>(983.2);
    let heat = SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(4185.0);
    let content = Volume::new::<cubic_meter>(0.0123);
    let difference = TemperatureInterval::new::<kelvin_interval>(7.3);
    let time = Time::new::<second>(127.0);
    let extra = HeatCapacity::new::<joule_per_kelvin>(8_300.0);
    let pressure = Pressure::new::<pascal>(2100.0);
    let working =
        &mut Steps::new([("density", "\\rho"), ("difference", "\\Delta\\vartheta"), ("content", "V"), ("heat", "c_p"), ("time", "t")]);
    step!(working, let capacity: "C" = density * content * heat + extra, "definition");
    step!(working, let loss: "\\dot Q" in KILOWATT = capacity * difference / time, "definition");
    step!(working, let square: "v^2" = 2.0 * pressure / density, "Bernoulli");
    step!(working, let kinetic: "e" = density * square / 2.0 + pressure, "definition");
    step!(working, let odd: "o" = content * loss * loss / (time * difference) / (kinetic * time * difference), "invented");
    step!(working, let rate: "r" = (kinetic / pressure) / time + (odd / odd) * time.recip() - -time.recip(), "invented");
    assert!(rate.value > 0.0);
    for step in working.steps() {
        let put_in = Reader::read(&step.substituted(), &unit_value);
        let result = step.result();
        let si = result.split(" (").next().unwrap();
        assert!(agree(put_in, Reader::read(si, &unit_value), 3e-6), "{} does not give {si}", step.substituted());
    }
    assert_eq!(
        working.steps()[0].plain(),
        "C = ρ × V × c_p + extra = 983.2 kg/m³ × 0.0123 m³ × 4185 J/(kg·K) + 8300 J/K = 58910.7 J/K  [definition]"
    );
    assert_eq!(working.steps()[1].formula(), "C × Δϑ / t");
    assert_eq!(working.steps()[2].substituted(), "2 × 2100 Pa / (983.2 kg/m³)");
    assert_eq!(working.steps()[4].unit(), "m⁸·kg·s⁻⁶·K⁻²");
}

struct Fuel {
    dew: f64,
}

impl Fuel {
    fn dew_point(&self, steam: f64) -> f64 {
        self.dew + steam
    }
    fn fixed(&self) -> f64 {
        self.dew
    }
}

fn correlation(fuel: &Fuel, flow: f64) -> f64 {
    fuel.dew * flow
}

struct Job {
    fuel: Fuel,
}

impl Job {
    fn sum<W: Working>(&self, temperature: ThermodynamicTemperature, steam: f64, limits: [f64; 2], working: &mut W) -> f64 {
        step!(working, let point: "T_d" in DEGREE_CELSIUS = self.fuel.dew_point(steam), "invented");
        step!(working, let margin: "\\Delta T" = temperature.value - point, "invented");
        step!(working, let share: "s" in PERCENT = (margin + correlation(&self.fuel, 2.0 * steam)) / (self.fuel.fixed() + limits[1]), "invented");
        step!(working, let warm: "w" = temperature.get::<degree_celsius>() - temperature.get::<kelvin>() * 0.5, "invented");
        share + warm
    }
}

#[test]
fn calls_getters_and_indices_are_shown_by_name_and_put_in_by_value() {
    let mut steps = Steps::new([
        Known { name: "temperature", symbol: "T", unit: None, value: Some(343.15) },
        ("steam", "x_{H_2O}").into(),
        ("limits", "\\theta").into(),
    ]);
    let job = Job { fuel: Fuel { dew: 300.0 } };
    job.sum(ThermodynamicTemperature::new::<kelvin>(343.15), 20.0, [1.0, 2.0], &mut steps);
    let shown = steps.plain();
    let lines: Vec<&str> = shown.lines().collect();
    assert_eq!(lines[0], "T_d = dew_point(fuel, x_H2O) = dew_point(fuel, 20) = 320 K (46.85 °C)  [invented]");
    assert_eq!(lines[1], "ΔT = T - T_d = 343.15 K - 320 K = 23.15  [invented]");
    assert_eq!(
        lines[2],
        "s = (ΔT + correlation(fuel, 2 × x_H2O)) / (fixed(fuel) + θ_1) = (23.15 + 12000) / (300 + 2) = 39.8118 (3981.18 %)  [invented]"
    );
    assert_eq!(lines[3], "w = {T}_°C - T × 0.5 = 70 - 343.15 K × 0.5 = -101.575  [invented]");
    assert!(steps.steps().iter().all(|step| agree(step.recomputed(), step.value(), 1e-12)));
    assert_eq!(
        steps.steps()[2].formula_latex(),
        "\\frac{\\Delta T + \\mathrm{correlation}\\left(\\mathrm{fuel}, 2 \\cdot x_{H_2O}\\right)}{\\mathrm{fixed}\\left(\\mathrm{fuel}\\right) + {\\theta}_{1}}"
    );
}

#[test]
fn a_name_keeps_its_symbol_only_as_long_as_its_value() {
    let working = &mut Steps::new([Known { name: "oxygen", symbol: "x_{O_2}", unit: Some(PERCENT), value: Some(0.05) }]);
    let oxygen = 0.05;
    step!(working, let first: "y" = oxygen * 2.0, "invented");
    let oxygen = oxygen + first;
    step!(working, let doubled: "z" = oxygen * 2.0, "invented");
    step!(working, let first: "y_2" = doubled - first, "invented");
    step!(working, let third: "u" = first * 1.0, "invented");
    assert!(third > 0.0);
    let shown: Vec<String> = working.steps().iter().map(Step::formula).collect();
    assert_eq!(shown, ["x_O2 × 2", "oxygen × 2", "z - y", "y_2 × 1"]);
}

#[test]
fn a_bare_number_gets_the_unit_of_what_it_was_taken_from() {
    let working = &mut Steps::new([
        Known { name: "temperature", symbol: "T", unit: Some(DEGREE_CELSIUS), value: Some(343.15) },
        Known { name: "ambient", symbol: "T_a", unit: Some(DEGREE_CELSIUS), value: Some(293.15) },
    ]);
    let (temperature, ambient): (f64, f64) = (343.15, 300.0);
    step!(working, let loss: "\\dot Q" in KILOWATT = 20.0 * (temperature - ambient), "invented");
    step!(working, let twice: "z" = 2.0 * loss, "invented");
    assert!(agree(twice, 1726.0, 1e-12));
    assert_eq!(
        working.plain(),
        "Q\u{307} = 20 × (T - ambient) = 20 × (343.15 K - 300) = 863 W (0.863 kW)  [invented]\n\
         z = 2 × Q\u{307} = 2 × 863 W = 1726  [invented]\n"
    );
}

#[test]
fn figures_suffice_even_where_a_difference_cancels() {
    let working = &mut Steps::new([("warm", "a"), ("cold", "b")]);
    let (warm, cold) = (353.123_456_789, 353.123_450_001);
    step!(working, let difference: "d" = warm - cold, "definition");
    let step = &working.steps()[0];
    assert_eq!(step.substituted(), "353.123456789 - 353.123450001");
    assert_eq!(step.result(), "6.788e-6");
    assert!(agree(Reader::read(&step.substituted(), &|_| None), difference, 1e-6));
}

#[test]
fn a_symbol_made_of_others_is_bracketed_where_it_must_be() {
    let working = &mut Steps::new([("excess", "t - t_0"), ("share", "V/V_0"), ("per_volume", "1/V_0")]);
    let (excess, share, per_volume) = (12.0, 0.25, 2.0);
    step!(working, let a: "a" = 3.0 * excess, "invented");
    step!(working, let b: "b" = excess - excess / share, "invented");
    step!(working, let c: "c" = share * per_volume + excess.powi(2), "invented");
    assert_eq!((a, b, c), (36.0, -36.0, 144.5));
    assert_eq!(
        working.plain(),
        "a = 3 × (t-t_0) = 3 × 12 = 36  [invented]\n\
         b = t-t_0 - (t-t_0) / (V/V_0) = 12 - 12 / 0.25 = -36  [invented]\n\
         c = V/V_0 × 1/V_0 + (t-t_0)^2 = 0.25 × 2 + 12^2 = 144.5  [invented]\n"
    );
}

#[test]
fn what_was_taken_for_a_field_left_out_and_what_became_a_result_go_by_their_symbols() {
    // The bore is that of the tube, the factor and the drops come from the kernel, and the constant is known to everybody.
    let entry = flamewright::catalogue::calculation("gas_pipe_drop").unwrap();
    let given = flamewright::describe::example("gas_pipe_drop").unwrap();
    let (settings, fields) = flamewright::catalogue::split(entry, &given).unwrap();
    let input = flamewright::catalogue::read_input(entry.inputs(), &fields, flamewright::catalogue::Bare::Refused).unwrap();
    let steps = entry.prepare(&settings).unwrap().steps(&input).unwrap();
    let formula = |name: &str| steps.iter().find(|step| step.name() == name).unwrap().formula();
    assert_eq!(formula("area"), "π / 4 × D × D");
    assert_eq!(formula("reynolds"), "ρ × v × D / μ");
    // What a result is handed on from keeps its name, for a line that says D = D says nothing.
    assert_eq!(formula("density"), "density_in_pipe");
}

#[test]
fn a_constant_quantity_stands_in_the_formula_by_its_value() {
    let working = &mut Steps::new([("difference", "\\Delta T")]);
    let difference = TemperatureInterval::new::<kelvin_interval>(12.0);
    step!(working, let half: "h" as f64 = (difference / TemperatureInterval::new::<kelvin_interval>(24.0)).into(), "invented");
    assert_eq!(half, 0.5);
    assert_eq!(working.steps()[0].plain(), "h = ΔT / (24 K) = 12 K / (24 K) = 0.5  [invented]");
}

#[test]
fn what_is_not_a_number_is_no_line_of_the_sum() {
    let working = &mut Steps::new([("zero", "z")]);
    let zero: f64 = 0.0;
    step!(working, let none: "n" = zero / zero, "invented");
    step!(working, let endless: "e" in KILOWATT = 1.0 / zero, "invented");
    assert!(none.is_nan() && endless.is_infinite());
    assert_eq!(working.plain(), "e = 1 / z = 1 / 0 = inf W (inf kW)  [invented]\n");
}

#[test]
fn symbols_and_units_have_a_plain_and_a_typeset_form() {
    for (latex, plain) in [
        ("\\dot V_{ref}", "V̇_ref"),
        ("\\dot{m}", "m\u{307}"),
        ("\\bar{c}_p", "c̄_p"),
        ("x_{O_2}", "x_O2"),
        ("\\Delta\\vartheta_{\\mathrm{dp}}", "Δϑ_dp"),
        ("\\eta_{\\text{net, dry}}", "η_net,dry"),
        ("\\mathrm{flue\\_gas}", "flue_gas"),
        ("\\alpha_\\lambda", "α_λ"),
        ("\\Upsilon", "Upsilon"),
        ("", ""),
        ("\\", ""),
        ("}{_x", "x"),
    ] {
        assert_eq!(plain_symbol(latex), plain, "{latex}");
    }
    for (unit, latex) in [
        ("m³/h", "\\mathrm{m^{3}/h}"),
        ("W·m⁻²·K⁻¹", "\\mathrm{W{\\cdot}m^{-2}{\\cdot}K^{-1}}"),
        ("%", "\\mathrm{\\%}"),
        ("°C", "\\mathrm{{}^{\\circ}C}"),
    ] {
        assert_eq!(unit_latex(unit), latex);
    }
    let working = &mut Steps::new([("share", "x")]);
    let share = 0.123456789;
    step!(working, let same: "y" in PERCENT = share, "definition");
    assert_eq!(same, share);
    assert_eq!(working.plain(), "y = x = 0.123457 (12.3457 %)  [definition]\n");
    let percent: Unit = PERCENT;
    let working = &mut Steps::default();
    step!(working, let half: "h" in percent = 0.5, "100 % & more_");
    assert_eq!(half, 0.5);
    assert_eq!(
        working.latex(),
        "\\begin{align*}\nh &= 0.5 && \\text{100 \\% \\& more\\_} \\\\\n  &= 0.5\\quad\\left(50\\,\\mathrm{\\%}\\right)\n\\end{align*}\n"
    );
}
