//! The sums of ISO 6976 on plain numbers: everything a gas mixture is worth at given reference
//! conditions.
use super::component::COMPONENT_COUNT;
use super::edition::{Edition, Table, blend, column_shares};
use crate::quantity::ReferenceConditions as Reference;

/// Pressure to which summation factors and the compression factors of air refer, Pa.
pub(super) const TABLE_PRESSURE: f64 = 101_325.0;

/// The four sums over a composition from which everything else follows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Sums {
    /// kg/mol
    pub molar_mass: f64,
    /// Sum of mole fraction times summation factor.
    pub summation: f64,
    /// J/mol
    pub gross: f64,
    /// J/mol
    pub net: f64,
}

/// What each component adds to the [`Sums`] per unit of mole fraction, at one pair of reference
/// temperatures. The four weights of a component lie side by side, so that the four sums are one
/// vector and a mixture is one pass over its components.
#[derive(Clone, Debug)]
pub(super) struct Weights<const N: usize>([[f64; 4]; N]);

impl<const N: usize> Weights<N> {
    /// Weights of the components at the given positions of [`COMPONENTS`](super::COMPONENTS); NaN for
    /// one that the edition lacks.
    pub(super) fn new(edition: Edition, reference: &Reference, positions: [usize; N]) -> Self {
        let table = edition.table();
        let combustion = column_shares::<5>(reference.combustion_temperature);
        let metering = column_shares::<4>(reference.metering_temperature);
        Self(positions.map(|i| {
            if !edition.tabulates(i) {
                return [f64::NAN; 4];
            }
            [
                table.molar_mass[i] * 1e-3,
                blend(&table.summation.each_ref().map(|column| column[i]), &metering),
                blend(&table.gross.each_ref().map(|column| column[i]), &combustion) * 1e3,
                blend(&table.net.each_ref().map(|column| column[i]), &combustion) * 1e3,
            ]
        }))
    }

    /// The sums of a composition given in mole fractions.
    #[inline(always)]
    pub(super) fn sums(&self, fractions: &[f64; N]) -> Sums {
        let mut sums = [0.0; 4];
        for (fraction, weights) in fractions.iter().zip(&self.0) {
            for (sum, weight) in sums.iter_mut().zip(weights) {
                *sum += fraction * weight;
            }
        }
        let [molar_mass, summation, gross, net] = sums;
        Sums { molar_mass, summation, gross, net }
    }
}

/// The sums of a composition over all components, at every column of the tables, so that the mixture
/// can be had at any reference conditions.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct MixtureColumns {
    molar_mass: f64,
    summation: [f64; 4],
    gross: [f64; 5],
    net: [f64; 5],
}

impl MixtureColumns {
    /// `None` if the composition holds a component that the edition lacks.
    pub(super) fn new(edition: Edition, fractions: &[f64; COMPONENT_COUNT]) -> Option<Self> {
        if fractions.iter().enumerate().any(|(i, x)| *x != 0.0 && !edition.tabulates(i)) {
            return None;
        }
        let table = edition.table();
        let dot = |column: &[f64; COMPONENT_COUNT]| column.iter().zip(fractions).map(|(a, b)| a * b).sum::<f64>();
        Some(Self {
            molar_mass: dot(&table.molar_mass) * 1e-3,
            summation: table.summation.each_ref().map(dot),
            gross: table.gross.each_ref().map(|column| dot(column) * 1e3),
            net: table.net.each_ref().map(|column| dot(column) * 1e3),
        })
    }

    pub(super) fn sums(&self, reference: &Reference) -> Sums {
        let combustion = column_shares(reference.combustion_temperature);
        Sums {
            molar_mass: self.molar_mass,
            summation: blend(&self.summation, &column_shares(reference.metering_temperature)),
            gross: blend(&self.gross, &combustion),
            net: blend(&self.net, &combustion),
        }
    }
}

/// Compression factor of dry air at metering conditions.
pub(super) fn air_compression_factor(table: &Table, reference: &Reference) -> f64 {
    let at_table_pressure = blend(&table.air_compression_factor, &column_shares(reference.metering_temperature));
    1.0 - reference.metering_pressure / TABLE_PRESSURE * (1.0 - at_table_pressure)
}
