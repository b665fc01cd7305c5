//! EN 437 test gases by their letters.
use super::component::plain;
use super::composition::{AmountBasis, Composition, Normalisation};
use crate::error::Error;

/// A test gas of EN 437.
#[derive(Clone, Copy, Debug)]
pub struct TestGas {
    /// Letters, such as `G20`.
    pub letters: &'static str,
    /// Composition in shares of real-gas volume at 15 degC and 101.325 kPa, dry.
    pub volume_composition: &'static str,
    /// Where the composition comes from.
    pub source: &'static str,
}

const SEEN: &str = "EN 437:2003+A1:2009 Table 2 (seen in a public excerpt)";
const FROM_MEMORY: &str = "EN 437:2003 (from memory; supported by the published heat values it reproduces)";

const fn gas(letters: &'static str, volume_composition: &'static str, source: &'static str) -> TestGas {
    TestGas { letters, volume_composition, source }
}

/// The test gases known here.
#[rustfmt::skip]
pub static TEST_GASES: [TestGas; 16] = [
    gas("G20", "CH4", FROM_MEMORY),
    gas("G21", "CH4=0.87 C3H8=0.13", FROM_MEMORY),
    gas("G222", "CH4=0.77 H2=0.23", SEEN),
    gas("G23", "CH4=0.925 N2=0.075", SEEN),
    gas("G24", "CH4=0.68 C3H8=0.12 H2=0.20", FROM_MEMORY),
    gas("G231", "CH4=0.85 N2=0.15", FROM_MEMORY),
    gas("G25", "CH4=0.86 N2=0.14", FROM_MEMORY),
    gas("G26", "CH4=0.80 C3H8=0.07 N2=0.13", FROM_MEMORY),
    gas("G27", "CH4=0.82 N2=0.18", FROM_MEMORY),
    gas("G271", "CH4=0.74 N2=0.26", FROM_MEMORY),
    gas("G30", "nC4H10=0.5 iC4H10=0.5", FROM_MEMORY),
    gas("G31", "C3H8", FROM_MEMORY),
    gas("G32", "C3H6", FROM_MEMORY),
    gas("G110", "CH4=0.26 H2=0.50 N2=0.24", FROM_MEMORY),
    gas("G112", "CH4=0.17 H2=0.59 N2=0.24", FROM_MEMORY),
    gas("G120", "CH4=0.32 H2=0.47 N2=0.21", FROM_MEMORY),
];

impl TestGas {
    /// The test gas of these letters; case and blanks do not matter.
    #[must_use]
    pub fn named(letters: &str) -> Option<&'static Self> {
        let wanted = plain(letters);
        TEST_GASES.iter().find(|gas| plain(gas.letters) == wanted)
    }

    /// The gas as EN 437 defines it: its figures are shares of real-gas volume, so they are turned
    /// into mole fractions, which reproduces the heat values that EN 437 publishes.
    ///
    /// # Errors
    /// Never for the gases listed here.
    pub fn composition(&self) -> Result<Composition, Error> {
        Composition::from_text(self.volume_composition, AmountBasis::Volume, Normalisation::Refuse)
    }
}
