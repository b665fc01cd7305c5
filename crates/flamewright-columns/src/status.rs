//! What became of a row.

use flamewright::calculation::{Judged, Rule, Severity};

/// What became of one row, in two bytes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[repr(transparent)]
pub struct Status(pub u16);

const FIELD: u16 = 0x100;
const RULE: u16 = 0x200;
const UNDEFINED: u16 = 0x300;

impl Status {
    /// The row has its result and nothing is to be said.
    pub const OK: Self = Self(0);
    /// The row has its result; something is to be known about it.
    pub const NOTICE: Self = Self(1);

    /// Whether the row has a result.
    #[must_use]
    pub const fn has_result(self) -> bool {
        self.0 < FIELD
    }
    /// The input field that was refused, by its place.
    #[must_use]
    pub const fn refused_field(self) -> Option<usize> {
        if self.0 >= FIELD && self.0 < RULE { Some((self.0 - FIELD) as usize) } else { None }
    }
    /// The rule that refused, by its place.
    #[must_use]
    pub const fn refusing_rule(self) -> Option<usize> {
        if self.0 >= RULE && self.0 < UNDEFINED { Some((self.0 - RULE) as usize) } else { None }
    }

    #[inline(always)]
    pub(crate) fn of(judged: &Judged, rules: &[Rule]) -> Self {
        if judged.is_refused(rules) {
            return Self::of_refused(judged, rules);
        }
        if judged.unusual | judged.raised.0 == 0 { Self::OK } else { Self::NOTICE }
    }

    #[cold]
    #[inline(never)]
    fn of_refused(judged: &Judged, rules: &[Rule]) -> Self {
        if judged.refused != 0 {
            return Self(FIELD + judged.refused.trailing_zeros() as u16);
        }
        let refuses = |i: &usize| judged.raised.0 >> i & 1 == 1 && rules.get(*i).is_some_and(|r| r.severity == Severity::Refuse);
        if let Some(rule) = (0..rules.len()).find(refuses) {
            return Self(RULE + rule as u16);
        }
        Self(UNDEFINED)
    }
}
