//! Readings that look drawn and are the same every time.

use flamewright::catalogue::Prepared;
use flamewright::record::Field;

/// The usual range of an input, within what is allowed.
#[must_use]
pub fn usual_range(field: &Field) -> (f64, f64) {
    (field.minimum.max(field.usual_minimum), field.maximum.min(field.usual_maximum))
}

/// Numbers that look drawn (Knuth's MMIX generator, TAOCP 2, 3.3.4).
pub struct Draws(u64);

impl Draws {
    /// The same numbers for the same `seed`.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// 64 bits; the low ones of the generator are mixed in with the high ones.
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        self.0 ^ self.0 >> 29 ^ self.0.rotate_left(31)
    }

    /// From 0 to less than 1.
    pub fn unit(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// From 0 to less than `n`.
    pub fn below(&mut self, n: usize) -> usize {
        (self.bits() % n.max(1) as u64) as usize
    }

    /// A value of the usual range; what may be left out is, now and then, and a default is taken.
    pub fn usual(&mut self, field: &Field) -> f64 {
        let (place, whether) = (self.unit(), self.unit());
        if !field.absent.is_empty() && whether < 0.25 {
            return f64::NAN;
        }
        if !field.default.is_nan() && whether < 0.5 {
            return field.default;
        }
        let (low, high) = usual_range(field);
        low + place * (high - low)
    }

    /// A value that the field accepts: often an end of its range, or near zero.
    pub fn accepted(&mut self, field: &Field) -> f64 {
        let (low, high) = (field.minimum, field.maximum);
        let value = match self.below(12) {
            0 => low,
            1 => high,
            2 => low.next_up(),
            3 => high.next_down(),
            4 => low + (high - low) * self.unit().powi(12),
            5 => low + (high - low) * self.unit(),
            6 => 0.0,
            7 => field.usual_minimum.max(low),
            8 => field.usual_maximum.min(high),
            _ => return self.usual(field),
        };
        if (low..=high).contains(&value) { value } else { self.usual(field) }
    }

    /// Usual values that the calculation accepts together and what it makes of them, or none in so many `tries`.
    pub fn readings(&mut self, prepared: &dyn Prepared, tries: usize) -> Option<(Vec<f64>, Vec<f64>)> {
        let entry = prepared.entry();
        let mut output = vec![f64::NAN; entry.outputs().len()];
        for _ in 0..tries {
            let input: Vec<f64> = entry.inputs().iter().map(|field| self.usual(field)).collect();
            if !prepared.run(&input, &mut output).is_refused(entry.rules()) {
                return Some((input, output));
            }
        }
        None
    }

    /// Anything: any bits, numbers at the ends of the format, values just outside the range.
    pub fn anything(&mut self, field: &Field) -> f64 {
        const ODD: [f64; 12] = [
            f64::NAN,
            f64::INFINITY,
            f64::NEG_INFINITY,
            0.0,
            -0.0,
            5e-324,
            f64::MIN_POSITIVE,
            f64::MAX,
            f64::MIN,
            f64::EPSILON,
            -1.0,
            273.15,
        ];
        match self.below(6) {
            0 => f64::from_bits(self.bits()),
            1 => ODD[self.below(ODD.len())],
            2 => field.maximum.next_up(),
            3 => field.minimum.next_down(),
            _ => self.accepted(field),
        }
    }
}
