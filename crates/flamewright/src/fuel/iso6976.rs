//! The sums of ISO 6976 on plain numbers: everything a gas mixture is worth at given reference
//! conditions.
use super::component::COMPONENT_COUNT;
use super::edition::{Edition, Table as Figures, blend, column_shares};
use super::fuel::Elements;
use crate::calculation::{Column, Table};
use crate::math::sqrt;
use crate::quantity::ReferenceConditions as Reference;
use alloc::string::ToString;
use alloc::vec::Vec;

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

impl Sums {
    #[inline(always)]
    pub(super) fn times(self, scale: f64) -> Self {
        Self { molar_mass: self.molar_mass * scale, summation: self.summation * scale, gross: self.gross * scale, net: self.net * scale }
    }
}

/// What each component adds to the [`Sums`] per unit of mole fraction, at one pair of reference
/// temperatures: a column for each sum. Short dot products are unrolled by the compiler, which lets it
/// lay several compositions into one vector.
#[derive(Clone, Debug)]
pub(super) struct Weights<const N: usize> {
    /// kg/mol
    molar_mass: [f64; N],
    summation: [f64; N],
    /// J/mol
    gross: [f64; N],
    /// J/mol
    net: [f64; N],
}

impl<const N: usize> Weights<N> {
    /// Weights of the components at the given positions of [`COMPONENTS`](super::COMPONENTS); NaN for
    /// one that the edition lacks.
    pub(super) fn new(edition: Edition, reference: &Reference, positions: [usize; N]) -> Self {
        let table = edition.table();
        let combustion = column_shares::<5>(reference.combustion_temperature);
        let metering = column_shares::<4>(reference.metering_temperature);
        let pick = |value: &dyn Fn(usize) -> f64| positions.map(|i| if edition.tabulates(i) { value(i) } else { f64::NAN });
        Self {
            molar_mass: pick(&|i| table.molar_mass[i] * 1e-3),
            summation: pick(&|i| blend(&table.summation.each_ref().map(|column| column[i]), &metering)),
            gross: pick(&|i| blend(&table.gross.each_ref().map(|column| column[i]), &combustion) * 1e3),
            net: pick(&|i| blend(&table.net.each_ref().map(|column| column[i]), &combustion) * 1e3),
        }
    }

    /// The sums of a composition given in mole fractions.
    #[inline(always)]
    pub(super) fn sums(&self, fractions: &[f64; N]) -> Sums {
        Sums {
            molar_mass: dot(fractions, &self.molar_mass),
            summation: dot(fractions, &self.summation),
            gross: dot(fractions, &self.gross),
            net: dot(fractions, &self.net),
        }
    }
}

#[inline(always)]
fn dot<const N: usize>(a: &[f64; N], b: &[f64; N]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
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
        let dot = |column: &[f64; COMPONENT_COUNT]| dot(column, fractions);
        Some(Self {
            molar_mass: dot(&table.molar_mass) * 1e-3,
            summation: table.summation.each_ref().map(dot),
            gross: table.gross.each_ref().map(|column| dot(column) * 1e3),
            net: table.net.each_ref().map(|column| dot(column) * 1e3),
        })
    }

    /// The sums at reference conditions; NaN where the tables do not reach.
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
pub(super) fn air_compression_factor(table: &Figures, reference: &Reference) -> f64 {
    let at_table_pressure = blend(&table.air_compression_factor, &column_shares(reference.metering_temperature));
    1.0 - reference.metering_pressure / TABLE_PRESSURE * (1.0 - at_table_pressure)
}

/// A gas at fixed reference conditions, as a meter needs it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct MeteredGas {
    /// Gross calorific value at the reference conditions, J/m³.
    pub(crate) gross_calorific_value: f64,
    /// Net calorific value at the reference conditions, J/m³.
    pub(crate) net_calorific_value: f64,
    compression_factor: f64,
    summation: [f64; 4],
}

impl MeteredGas {
    pub(super) fn new(edition: Edition, columns: &MixtureColumns, reference: &Reference) -> Self {
        let sums = columns.sums(reference);
        let factor = |summation: f64, pressure: f64| 1.0 - pressure / TABLE_PRESSURE * summation * summation;
        let compression_factor = factor(sums.summation, reference.metering_pressure);
        let molar_volume = compression_factor * edition.gas_constant() * reference.metering_temperature / reference.metering_pressure;
        Self {
            gross_calorific_value: sums.gross / molar_volume,
            net_calorific_value: sums.net / molar_volume,
            compression_factor,
            summation: columns.summation,
        }
    }

    /// Compression factor at reference conditions over that at the given absolute pressure in Pa and
    /// temperature in K. Outside 0 °C to 20 °C, where the tables end, their last straight line is
    /// continued: against the reference equations of state (CoolProp 8.0.0) the ratio is within
    /// 0.01 % for methane from -20 °C to 60 °C and 0.12 % for propane, at 1034 mbar.
    #[inline(always)]
    pub(crate) fn compression_ratio(&self, pressure: f64, temperature: f64) -> f64 {
        let celsius = temperature - 273.15;
        let [at_0, at_15, _, at_20] = self.summation;
        let (cold, warm) = ((at_15 - at_0) / 15.0, (at_20 - at_15) / 5.0);
        let summation = if celsius < 15.0 { at_0 + cold * celsius } else { at_15 + warm * (celsius - 15.0) };
        self.compression_factor / (1.0 - pressure / TABLE_PRESSURE * summation * summation)
    }
}

/// Standard uncertainties (k = 1) that the tables alone bring to the values of a mixture; the edition
/// of 1995 states none, so there it is not-a-number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct TableUncertainty {
    /// Relative, gross calorific value per amount.
    pub(super) gross_molar: f64,
    /// Relative, gross calorific value per mass.
    pub(super) gross_mass: f64,
    /// Relative, gross calorific value per volume.
    pub(super) gross_volume: f64,
    /// Relative, net calorific value per amount.
    pub(super) net_molar: f64,
    /// Relative, net calorific value per mass.
    pub(super) net_mass: f64,
    /// Relative, net calorific value per volume.
    pub(super) net_volume: f64,
    /// Relative, density.
    pub(super) density: f64,
    /// Relative, relative density.
    pub(super) relative_density: f64,
    /// Relative, gross Wobbe index.
    pub(super) gross_wobbe: f64,
    /// Relative, net Wobbe index.
    pub(super) net_wobbe: f64,
}

impl TableUncertainty {
    /// ISO 6976:2016 annex B, the terms that do not come from the composition, as in the public
    /// transcription named with the tables; the molar mass of air is added to the relative density.
    pub(super) fn new(
        edition: Edition,
        fractions: &[f64; COMPONENT_COUNT],
        elements: &Elements,
        sums: &Sums,
        reference: &Reference,
    ) -> Self {
        /// Standard uncertainties of the atomic masses of C, H, O, N, S, He and Ar, kg/kmol.
        const ATOMIC: [f64; 7] = [0.0004, 0.000_035, 0.000_15, 0.0001, 0.0025, 0.000_001, 0.0005];
        const GAS_CONSTANT: f64 = 7.5e-6 / 8.314_462_1;
        const AIR_MOLAR_MASS: f64 = 0.000_17 / 28.965_46;
        const AIR_COMPRESSION: f64 = 0.000_015;
        /// Of the molar enthalpy of vaporisation of water, J/mol.
        const VAPORISATION: f64 = 4.0;
        let table = edition.table();
        let root = |parts: &[f64]| sqrt(parts.iter().map(|part| part * part).sum());
        let over = |uncertainty: &[f64; COMPONENT_COUNT]| {
            sqrt(fractions.iter().zip(uncertainty).filter(|(x, _)| **x != 0.0).map(|(x, u)| x * u * x * u).sum())
        };
        let e = elements;
        let atoms = [e.carbon, e.hydrogen, e.oxygen, e.nitrogen, e.sulphur, e.helium, e.argon];
        let mass = sqrt(atoms.iter().zip(&ATOMIC).map(|(n, u)| n * u * n * u).sum()) * 1e-3 / sums.molar_mass;
        let gross = over(&table.gross_uncertainty) * 1e3;
        let net = root(&[gross, 0.5 * elements.hydrogen * VAPORISATION]) / sums.net;
        let gross = gross / sums.gross;
        let pressure = reference.metering_pressure / TABLE_PRESSURE;
        let factor = 1.0 - pressure * sums.summation * sums.summation;
        let compression = 2.0 * pressure * sums.summation * over(&table.summation_uncertainty) / factor;
        let wobbe = |heat: f64| root(&[heat, 0.5 * compression, 0.5 * mass, GAS_CONSTANT, 0.5 * AIR_MOLAR_MASS, 0.5 * AIR_COMPRESSION]);
        Self {
            gross_molar: gross,
            gross_mass: root(&[gross, mass]),
            gross_volume: root(&[gross, compression, GAS_CONSTANT]),
            net_molar: net,
            net_mass: root(&[net, mass]),
            net_volume: root(&[net, compression, GAS_CONSTANT]),
            density: root(&[mass, compression, GAS_CONSTANT]),
            relative_density: root(&[mass, compression, AIR_COMPRESSION, AIR_MOLAR_MASS]),
            gross_wobbe: wobbe(gross),
            net_wobbe: wobbe(net),
        }
    }

    /// As a table: the value's name, its standard uncertainty relative to the value.
    pub(super) fn table(&self) -> Table {
        let rows = [
            ("gross_molar_calorific_value", self.gross_molar),
            ("net_molar_calorific_value", self.net_molar),
            ("gross_mass_calorific_value", self.gross_mass),
            ("net_mass_calorific_value", self.net_mass),
            ("gross_calorific_value", self.gross_volume),
            ("net_calorific_value", self.net_volume),
            ("density", self.density),
            ("relative_density", self.relative_density),
            ("gross_wobbe_index", self.gross_wobbe),
            ("net_wobbe_index", self.net_wobbe),
        ];
        Table {
            name: "uncertainty of the tables",
            row_names: rows.iter().map(|(name, _)| (*name).to_string()).collect(),
            columns: Vec::from([Column {
                name: "relative standard uncertainty".to_string(),
                unit: &crate::quantity::units::PERCENT,
                values: rows.iter().map(|(_, u)| *u).collect(),
            }]),
        }
    }
}
