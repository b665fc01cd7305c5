//! What a gas is made of: amounts of known components, checked before anything is computed from them.
use crate::error::Error;
use alloc::format;
use alloc::string::{String, ToString};

use super::component::{COMPONENT_COUNT, COMPONENTS, Component, component_names, component_position};
use super::edition::{Edition, blend, column_shares};
use super::fuel::Elements;
use super::iso6976::{MeteredGas, MixtureColumns, TABLE_PRESSURE};
use crate::quantity::ReferenceConditions;

/// What the amounts in a composition are shares of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum AmountBasis {
    /// Shares of the amount of substance (mole fractions), as a chromatograph reports.
    #[default]
    Mole,
    /// Shares of real-gas volume at 15 degC and 101.325 kPa, as EN 437 states its test gases.
    Volume,
    /// Shares of mass, as liquefied petroleum gas is often stated.
    Mass,
}

impl AmountBasis {
    /// The basis called `mole`, `volume` or `mass`.
    ///
    /// # Errors
    /// If it is called anything else.
    pub fn named(word: &str) -> Result<Self, Error> {
        match word {
            "mole" => Ok(Self::Mole),
            "volume" => Ok(Self::Volume),
            "mass" => Ok(Self::Mass),
            other => Err(Error::unknown_name("basis", other, ["mole", "volume", "mass"].into_iter())),
        }
    }
}

/// What to do with a composition that does not add up to one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Normalisation {
    /// Refuse it if the sum is off by more than 0.0001.
    #[default]
    Refuse,
    /// Divide every amount by the sum.
    Normalise,
}

/// How far from one the sum of a composition may be (our choice: the resolution of figures given to
/// a hundredth of a per cent).
pub const SUM_TOLERANCE: f64 = 1e-4;

/// The longest composition that is read as text, in bytes: several times one with every component.
const LONGEST_TEXT: usize = 4000;

/// A gas mixture: the mole fraction of each known component. The fractions are never negative and
/// add up to one within [`SUM_TOLERANCE`].
#[derive(Clone, Debug, PartialEq)]
pub struct Composition {
    fractions: [f64; COMPONENT_COUNT],
}

/// Dry air as the combustion sums here take it (rounded; by definition), for gases mixed with air.
const AIR: [(&str, f64); 4] = [("N2", 0.7808), ("O2", 0.2095), ("Ar", 0.0093), ("CO2", 0.0004)];

impl Composition {
    /// A composition from component names and amounts, which are shares of the given basis.
    ///
    /// A name may be a formula (`CH4`), a name (`methane`) or a common alias (`isobutane`, `nC4`);
    /// `air` stands for dry air. A component may be given more than once.
    ///
    /// # Errors
    /// If a component is unknown, an amount is negative or no number, or the sum is not one.
    pub fn new<'a>(
        amounts: impl IntoIterator<Item = (&'a str, f64)>,
        basis: AmountBasis,
        normalisation: Normalisation,
    ) -> Result<Self, Error> {
        let mut shares = [0.0; COMPONENT_COUNT];
        let mut sum = 0.0;
        let mut empty = true;
        let mut add = |name: &str, amount: f64| match component_position(name).and_then(|i| shares.get_mut(i)) {
            Some(share) => {
                *share += amount;
                Ok(())
            }
            None => Err(Error::unknown_name("composition", name, component_names())),
        };
        for (name, amount) in amounts {
            if !(amount >= 0.0 && amount.is_finite()) {
                let why = format!("the amount is {amount}: it must be a number of 0 or more");
                return Err(Error::bad_setting("composition", name, &why));
            }
            if name.trim().eq_ignore_ascii_case("air") {
                AIR.iter().try_for_each(|(part, share)| add(part, amount * share))?;
            } else {
                add(name, amount)?;
            }
            sum += amount;
            empty = false;
        }
        if empty {
            return Err(Error::bad_setting("composition", "", "it names no component"));
        }
        let off = (sum - 1.0_f64).abs();
        if !(sum > 0.0 && sum.is_finite()) || (normalisation == Normalisation::Refuse && off > SUM_TOLERANCE) {
            return Err(wrong_sum(sum));
        }
        if normalisation == Normalisation::Normalise {
            scale(&mut shares, 1.0 / sum);
        }
        Ok(Self { fractions: mole_fractions(&shares, basis) })
    }

    /// A composition from text such as `CH4 92.5 %, N2 7.5 %`, `CH4=0.925 N2=0.075` or
    /// `60 % propane, 40 % butane`.
    ///
    /// # Errors
    /// If the text cannot be read, or as in [`Composition::new`].
    pub fn from_text(text: &str, basis: AmountBasis, normalisation: Normalisation) -> Result<Self, Error> {
        let unreadable =
            |part: &str| Error::bad_setting("composition", part.trim(), "write \"CH4 92.5 %, N2 7.5 %\" or \"CH4=0.925 N2=0.075\"");
        if text.len() > LONGEST_TEXT {
            return Err(Error::bad_setting("composition", "", &format!("the text is longer than {LONGEST_TEXT} bytes")));
        }
        let mut amounts = alloc::vec::Vec::new();
        let mut rest = text;
        while let Some((part, after)) = first_part(rest) {
            rest = after;
            let part = part.trim();
            if part.is_empty() {
                continue;
            }
            if part.contains('=') {
                for pair in part.split_whitespace() {
                    let (name, amount) = pair.split_once('=').ok_or_else(|| unreadable(pair))?;
                    amounts.push((name.to_string(), share_from_text(amount).ok_or_else(|| unreadable(pair))?));
                }
                continue;
            }
            let spaced = part.replace('%', " % ");
            let mut name = String::new();
            let mut number = None;
            let mut per_cent = false;
            for word in spaced.split_whitespace() {
                if word == "%" {
                    per_cent = true;
                } else if let (Some(value), None) = (share_from_text(word), number) {
                    number = Some(value);
                } else {
                    name = if name.is_empty() { word.to_string() } else { format!("{name} {word}") };
                }
            }
            let number = match number {
                Some(value) => value,
                None if !name.is_empty() && !per_cent && text.trim() == part => 1.0,
                None => return Err(unreadable(part)),
            };
            if name.is_empty() {
                return Err(unreadable(part));
            }
            amounts.push((name, if per_cent { number / 100.0 } else { number }));
        }
        Self::new(amounts.iter().map(|(name, amount)| (name.as_str(), *amount)), basis, normalisation)
    }

    /// A mixture of two gases, with the given mole fraction of the second.
    #[must_use]
    pub fn mixed_with(&self, other: &Self, fraction_of_other: f64) -> Self {
        let mut fractions = self.fractions;
        for (mine, theirs) in fractions.iter_mut().zip(&other.fractions) {
            *mine += (theirs - *mine) * fraction_of_other;
        }
        Self { fractions }
    }

    /// Mole fraction of the component at each position of [`COMPONENTS`].
    #[must_use]
    pub const fn fractions(&self) -> &[f64; COMPONENT_COUNT] {
        &self.fractions
    }

    /// The components there are, with their mole fractions.
    pub fn parts(&self) -> impl Iterator<Item = (&'static Component, f64)> {
        COMPONENTS.iter().zip(self.fractions).filter(|(_, fraction)| *fraction != 0.0)
    }

    /// Atoms in one mole, mol.
    #[must_use]
    pub fn elements(&self) -> Elements {
        let mut total = Elements::default();
        for (component, fraction) in COMPONENTS.iter().zip(&self.fractions) {
            total.add(&component.elements(), *fraction);
        }
        total
    }

    /// Molar heat capacity at 25 degC, J/(mol K), and its rise with temperature, J/(mol K2).
    #[must_use]
    pub fn heat_capacity(&self) -> [f64; 2] {
        [0, 1].map(|i| COMPONENTS.iter().zip(&self.fractions).map(|(c, x)| c.heat_capacity[i] * x).sum())
    }

    /// The gas as a meter at these reference conditions needs it, by ISO 6976:2016.
    pub(crate) fn metered(&self, reference: &ReferenceConditions) -> Result<MeteredGas, Error> {
        let edition = Edition::Iso6976Of2016;
        Ok(MeteredGas::new(edition, &self.columns(edition)?, reference))
    }

    /// The sums of ISO 6976 at every column of its tables.
    pub(super) fn columns(&self, edition: Edition) -> Result<MixtureColumns, Error> {
        MixtureColumns::new(edition, &self.fractions).ok_or_else(|| {
            let mut parts = COMPONENTS.iter().zip(&self.fractions).enumerate();
            let missing = parts.find(|(i, (_, x))| **x != 0.0 && !edition.tabulates(*i));
            let why = format!("{} has no figures for it: use {}", edition.name(), Edition::Iso6976Of2016.name());
            Error::bad_setting("composition", missing.map_or("a component", |(_, (c, _))| c.name), &why)
        })
    }
}

#[cold]
fn wrong_sum(total: f64) -> Error {
    let sum = crate::quantity::unit::number(total, 7);
    let why = if total > 50.0 && total < 150.0 {
        format!("the amounts add up to {sum}, not 1: write per cent with the % sign, or amounts as fractions")
    } else {
        format!("the amounts add up to {sum}, not 1 (within {SUM_TOLERANCE}): mend them, or ask for them to be normalised")
    };
    Error::bad_setting("composition", "", &why)
}

/// Text up to the next separator, and what comes after it; `None` when there is no text left.
fn first_part(text: &str) -> Option<(&str, &str)> {
    if text.is_empty() {
        return None;
    }
    let separator = text.char_indices().find(|(at, c)| match c {
        ';' | '\n' => true,
        // the comma of "2,2-dimethylbutane" is part of a name
        ',' => {
            let digit_before = text[..*at].ends_with(|c: char| c.is_ascii_digit());
            let mut after = text[at + 1..].chars();
            !(digit_before && after.next().is_some_and(|c| c.is_ascii_digit()) && after.next() == Some('-'))
        }
        _ => false,
    });
    Some(separator.map_or((text, ""), |(at, _)| (&text[..at], &text[at + 1..])))
}

fn scale(values: &mut [f64], factor: f64) {
    for value in values {
        *value *= factor;
    }
}

fn share_from_text(text: &str) -> Option<f64> {
    let (number, divisor) = match text.strip_suffix('%') {
        Some(number) => (number.trim_end(), 100.0),
        None => (text, 1.0),
    };
    // "1,3-butadiene" and the like begin with a digit but are no numbers; neither are "inf" and "nan"
    number.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '+')).then_some(())?;
    number.parse::<f64>().ok().map(|value| value / divisor)
}

/// Mole fractions from shares of another basis; the sum stays what it was.
fn mole_fractions(shares: &[f64; COMPONENT_COUNT], basis: AmountBasis) -> [f64; COMPONENT_COUNT] {
    let table = Edition::Iso6976Of2016.table();
    let mut moles = *shares;
    match basis {
        AmountBasis::Mole => return moles,
        AmountBasis::Volume => {
            let columns = column_shares(ReferenceConditions::AT_15_15.metering_temperature);
            for (i, amount) in moles.iter_mut().enumerate() {
                let summation = blend(&[0, 1, 2, 3].map(|column| table.summation[column][i]), &columns);
                // Z = 1 - s^2 at the tables' pressure
                *amount /= 1.0 - ReferenceConditions::AT_15_15.metering_pressure / TABLE_PRESSURE * summation * summation;
            }
        }
        AmountBasis::Mass => moles.iter_mut().zip(&table.molar_mass).for_each(|(amount, molar_mass)| *amount /= molar_mass),
    }
    let total: f64 = moles.iter().sum();
    scale(&mut moles, shares.iter().sum::<f64>() / total);
    moles
}
