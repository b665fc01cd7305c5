//! The components of ISO 6976 and the names they go by.
use alloc::string::String;

use super::fuel::Elements;

/// Number of components known, those of ISO 6976:2016 Table 1.
pub const COMPONENT_COUNT: usize = 60;

/// A component of a fuel gas: what it is called and what its molecule holds.
///
/// What an edition of ISO 6976 says of it (molar mass, summation factor, calorific value) is in
/// [`Edition`](super::Edition).
#[derive(Clone, Copy, Debug)]
pub struct Component {
    /// Short name, a formula where one is unambiguous, such as `iC4H10`.
    pub symbol: &'static str,
    /// Full name.
    pub name: &'static str,
    /// Other names that are understood.
    pub aliases: &'static [&'static str],
    /// Atoms of carbon, hydrogen, oxygen, nitrogen, sulphur, helium or neon, and argon.
    pub atoms: [u8; 7],
    /// Molar heat capacity of the ideal gas at constant pressure and 25 degC, J/(mol K), and its
    /// rise with temperature, J/(mol K2).
    pub heat_capacity: [f64; 2],
}

impl Component {
    /// Atoms in one mole, mol.
    #[must_use]
    pub fn elements(&self) -> Elements {
        let [carbon, hydrogen, oxygen, nitrogen, sulphur, helium, argon] = self.atoms.map(f64::from);
        Elements { carbon, hydrogen, oxygen, nitrogen, sulphur, helium, argon }
    }

    fn names(&self) -> impl Iterator<Item = &'static str> {
        [self.symbol, self.name].into_iter().chain(self.aliases.iter().copied())
    }
}

/// Position in [`COMPONENTS`] of the component that goes by `name`; case, spaces and punctuation do
/// not matter. `None` if no component goes by it.
#[must_use]
pub fn component_position(name: &str) -> Option<usize> {
    let wanted = plain(name);
    COMPONENTS.iter().position(|component| component.names().any(|known| plain(known) == wanted))
}

/// All names that components go by.
pub fn component_names() -> impl Iterator<Item = &'static str> {
    COMPONENTS.iter().flat_map(Component::names)
}

/// Letters and digits only, in lower case.
pub(super) fn plain(name: &str) -> String {
    name.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}

const fn component(
    symbol: &'static str,
    name: &'static str,
    aliases: &'static [&'static str],
    atoms: [u8; 7],
    heat_capacity: [f64; 2],
) -> Component {
    Component { symbol, name, aliases, atoms, heat_capacity }
}

/// All components, in the order of ISO 6976:2016 Table 1.
///
/// Atoms: ISO 6976:2016 Table 1. Heat capacities: ideal-gas correlation of Frenkel et al.,
/// "Thermodynamics of Organic Compounds in the Gas State" (TRC, 1994), evaluated at 298.15 K from
/// the coefficients in the open library `chemicals` 1.5.2; noble gases 5/2 R.
#[rustfmt::skip]
pub static COMPONENTS: [Component; COMPONENT_COUNT] = [
    component("CH4", "methane", &["C1"], [1, 4, 0, 0, 0, 0, 0], [35.66, 0.0384]),
    component("C2H6", "ethane", &["C2"], [2, 6, 0, 0, 0, 0, 0], [52.50, 0.1232]),
    component("C3H8", "propane", &["C3"], [3, 8, 0, 0, 0, 0, 0], [73.62, 0.1977]),
    component("nC4H10", "n-butane", &["butane", "nC4"], [4, 10, 0, 0, 0, 0, 0], [98.57, 0.2515]),
    component("iC4H10", "isobutane", &["2-methylpropane", "iC4", "i-butane"], [4, 10, 0, 0, 0, 0, 0], [96.69, 0.2724]),
    component("nC5H12", "n-pentane", &["pentane", "nC5"], [5, 12, 0, 0, 0, 0, 0], [120.10, 0.3113]),
    component("iC5H12", "isopentane", &["2-methylbutane", "iC5", "i-pentane"], [5, 12, 0, 0, 0, 0, 0], [118.89, 0.3424]),
    component("neoC5H12", "neopentane", &["2,2-dimethylpropane", "neoC5"], [5, 12, 0, 0, 0, 0, 0], [120.93, 0.3715]),
    component("nC6H14", "n-hexane", &["hexane", "nC6"], [6, 14, 0, 0, 0, 0, 0], [142.60, 0.3752]),
    component("2-MP", "2-methylpentane", &["isohexane"], [6, 14, 0, 0, 0, 0, 0], [142.21, 0.4193]),
    component("3-MP", "3-methylpentane", &[], [6, 14, 0, 0, 0, 0, 0], [140.11, 0.4168]),
    component("2,2-DMB", "2,2-dimethylbutane", &["neohexane"], [6, 14, 0, 0, 0, 0, 0], [141.47, 0.4182]),
    component("2,3-DMB", "2,3-dimethylbutane", &["diisopropyl"], [6, 14, 0, 0, 0, 0, 0], [139.40, 0.4430]),
    component("nC7H16", "n-heptane", &["heptane", "nC7", "C7H16"], [7, 16, 0, 0, 0, 0, 0], [165.19, 0.4383]),
    component("nC8H18", "n-octane", &["octane", "nC8", "C8H18"], [8, 18, 0, 0, 0, 0, 0], [187.75, 0.5031]),
    component("nC9H20", "n-nonane", &["nonane", "nC9", "C9H20"], [9, 20, 0, 0, 0, 0, 0], [210.40, 0.5657]),
    component("nC10H22", "n-decane", &["decane", "nC10", "C10H22"], [10, 22, 0, 0, 0, 0, 0], [233.02, 0.6288]),
    component("C2H4", "ethene", &["ethylene"], [2, 4, 0, 0, 0, 0, 0], [42.88, 0.0893]),
    component("C3H6", "propene", &["propylene"], [3, 6, 0, 0, 0, 0, 0], [64.36, 0.1581]),
    component("1-C4H8", "1-butene", &["but-1-ene"], [4, 8, 0, 0, 0, 0, 0], [85.64, 0.2271]),
    component("c-2-C4H8", "cis-2-butene", &["cis-but-2-ene"], [4, 8, 0, 0, 0, 0, 0], [80.21, 0.2176]),
    component("t-2-C4H8", "trans-2-butene", &["trans-but-2-ene"], [4, 8, 0, 0, 0, 0, 0], [87.74, 0.2028]),
    component("iC4H8", "2-methylpropene", &["isobutene", "isobutylene"], [4, 8, 0, 0, 0, 0, 0], [88.13, 0.2169]),
    component("1-C5H10", "1-pentene", &["pent-1-ene"], [5, 10, 0, 0, 0, 0, 0], [108.16, 0.2853]),
    component("C3H4", "propadiene", &["allene"], [3, 4, 0, 0, 0, 0, 0], [59.06, 0.1338]),
    component("1,2-C4H6", "1,2-butadiene", &["buta-1,2-diene"], [4, 6, 0, 0, 0, 0, 0], [79.50, 0.1807]),
    component("1,3-C4H6", "1,3-butadiene", &["buta-1,3-diene", "butadiene"], [4, 6, 0, 0, 0, 0, 0], [79.64, 0.2382]),
    component("C2H2", "ethyne", &["acetylene"], [2, 2, 0, 0, 0, 0, 0], [43.99, 0.0754]),
    component("cC5H10", "cyclopentane", &[], [5, 10, 0, 0, 0, 0, 0], [83.01, 0.3454]),
    component("MCP", "methylcyclopentane", &[], [6, 12, 0, 0, 0, 0, 0], [109.51, 0.3974]),
    component("ECP", "ethylcyclopentane", &[], [7, 14, 0, 0, 0, 0, 0], [134.02, 0.4651]),
    component("cC6H12", "cyclohexane", &[], [6, 12, 0, 0, 0, 0, 0], [106.33, 0.4221]),
    component("MCH", "methylcyclohexane", &[], [7, 14, 0, 0, 0, 0, 0], [136.13, 0.5027]),
    component("ECH", "ethylcyclohexane", &[], [8, 16, 0, 0, 0, 0, 0], [164.23, 0.5559]),
    component("C6H6", "benzene", &[], [6, 6, 0, 0, 0, 0, 0], [82.54, 0.3245]),
    component("C7H8", "toluene", &["methylbenzene"], [7, 8, 0, 0, 0, 0, 0], [103.80, 0.3622]),
    component("C8H10", "ethylbenzene", &[], [8, 10, 0, 0, 0, 0, 0], [127.54, 0.4235]),
    component("oC8H10", "o-xylene", &["1,2-dimethylbenzene", "orthoxylene"], [8, 10, 0, 0, 0, 0, 0], [132.43, 0.3818]),
    component("CH3OH", "methanol", &["CH4O", "methyl alcohol"], [1, 4, 1, 0, 0, 0, 0], [44.08, 0.0651]),
    component("CH3SH", "methanethiol", &["CH4S", "methyl mercaptan"], [1, 4, 0, 0, 1, 0, 0], [50.30, 0.0805]),
    component("H2", "hydrogen", &["dihydrogen"], [0, 2, 0, 0, 0, 0, 0], [28.83, 0.0074]),
    component("H2O", "water", &["water vapour", "water vapor", "moisture"], [0, 2, 1, 0, 0, 0, 0], [33.58, 0.0039]),
    component("H2S", "hydrogen sulphide", &["hydrogen sulfide"], [0, 2, 0, 0, 1, 0, 0], [34.12, 0.0117]),
    component("NH3", "ammonia", &[], [0, 3, 0, 1, 0, 0, 0], [35.65, 0.0258]),
    component("HCN", "hydrogen cyanide", &[], [1, 1, 0, 1, 0, 0, 0], [35.86, 0.0386]),
    component("CO", "carbon monoxide", &[], [1, 0, 1, 0, 0, 0, 0], [29.14, 0.0010]),
    component("COS", "carbonyl sulphide", &["carbonyl sulfide"], [1, 0, 1, 0, 1, 0, 0], [41.51, 0.0493]),
    component("CS2", "carbon disulphide", &["carbon disulfide"], [1, 0, 0, 0, 2, 0, 0], [45.51, 0.0469]),
    component("He", "helium", &[], [0, 0, 0, 0, 0, 1, 0], [20.79, 0.0000]),
    component("Ne", "neon", &[], [0, 0, 0, 0, 0, 1, 0], [20.79, 0.0000]),
    component("Ar", "argon", &[], [0, 0, 0, 0, 0, 0, 1], [20.79, 0.0000]),
    component("N2", "nitrogen", &["dinitrogen"], [0, 0, 0, 2, 0, 0, 0], [29.12, 0.0006]),
    component("O2", "oxygen", &["dioxygen"], [0, 0, 2, 0, 0, 0, 0], [29.37, 0.0046]),
    component("CO2", "carbon dioxide", &[], [1, 0, 2, 0, 0, 0, 0], [37.12, 0.0464]),
    component("SO2", "sulphur dioxide", &["sulfur dioxide"], [0, 0, 2, 0, 1, 0, 0], [40.08, 0.0382]),
    component("nC11H24", "n-undecane", &["undecane", "nC11", "C11H24"], [11, 24, 0, 0, 0, 0, 0], [255.67, 0.6911]),
    component("nC12H26", "n-dodecane", &["dodecane", "nC12", "C12H26"], [12, 26, 0, 0, 0, 0, 0], [278.29, 0.7580]),
    component("nC13H28", "n-tridecane", &["tridecane", "nC13", "C13H28"], [13, 28, 0, 0, 0, 0, 0], [300.95, 0.8184]),
    component("nC14H30", "n-tetradecane", &["tetradecane", "nC14", "C14H30"], [14, 30, 0, 0, 0, 0, 0], [323.31, 0.8839]),
    component("nC15H32", "n-pentadecane", &["pentadecane", "nC15", "C15H32"], [15, 32, 0, 0, 0, 0, 0], [346.23, 0.9416]),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_name_means_two_components() {
        for (position, component) in COMPONENTS.iter().enumerate() {
            for name in component.names() {
                assert_eq!(component_position(name), Some(position), "{name}");
            }
        }
    }

    #[test]
    fn names_are_understood_in_the_spellings_people_write() {
        for (given, symbol) in [
            ("Methane", "CH4"),
            ("ch4", "CH4"),
            ("n-C4H10", "nC4H10"),
            ("butane", "nC4H10"),
            ("i-C4", "iC4H10"),
            ("carbon dioxide", "CO2"),
            ("Carbon-Dioxide", "CO2"),
            ("ethylene", "C2H4"),
            ("hydrogen sulfide", "H2S"),
        ] {
            assert_eq!(component_position(given).map(|p| COMPONENTS[p].symbol), Some(symbol), "{given}");
        }
        assert_eq!(component_position("phlogiston"), None);
    }
}
