//! Dynamic viscosity of fuel gases and their mixtures at low pressure.
//!
//! At the few tens of millibars of a gas installation the viscosity depends on temperature and
//! composition alone. Each pure gas is a cubic in temperature fitted to a published equation; a
//! mixture follows Wilke's rule.

use crate::math::sqrt;
use alloc::vec::Vec;

/// A pure gas: its name in formula letters and its viscosity as a cubic in temperature.
#[derive(Clone, Copy, Debug)]
pub struct GasViscosity {
    /// Formula, as the fuel component table writes it.
    pub formula: &'static str,
    /// Coefficients in micropascal second of 1, t, t^2, t^3 with t = (T - 288.15 K) / 100 K.
    pub cubic: [f64; 4],
    /// The published equation or table that the cubic was fitted to.
    pub source: &'static str,
}

impl GasViscosity {
    /// Dynamic viscosity in pascal second at a temperature in kelvin, fitted from 243 K to 353 K.
    #[must_use]
    pub fn at(&self, temperature: f64) -> f64 {
        let t = (temperature - 288.15) * 0.01;
        let [a, b, c, d] = self.cubic;
        1e-6 * (a + t * (b + t * (c + t * d)))
    }
}

const fn gas(formula: &'static str, cubic: [f64; 4], source: &'static str) -> GasViscosity {
    GasViscosity { formula, cubic, source }
}

/// Viscosity of the pure gases, at 101.325 kPa where the gas exists there over the whole range,
/// else at the part of the range where it does or, for what is never alone in a pipe, at zero
/// density (marked).
///
/// The cubics were fitted here to the equations named, as evaluated by CoolProp 8.0.0; the fit
/// departs from the equation by less than 3e-4 where the equation was evaluated. The equations
/// claim 0.2 % to 2 % themselves.
pub static PURE_GASES: [GasViscosity; 20] = [
    gas("CH4", [10.87680, 3.21622, -0.20549, 0.02836], "Quiñones-Cisneros & Deiters 2006, J. Phys. Chem. B 110, 12820"),
    gas("C2H6", [9.05940, 2.95877, -0.11945, -0.00705], "Friend, Ingham & Ely 1991, J. Phys. Chem. Ref. Data 20, 275"),
    gas("C3H8", [7.87627, 2.70529, -0.06563, 0.00154], "Vogel et al. 1998, J. Phys. Chem. Ref. Data 27, 947"),
    gas(
        "nC4H10",
        [7.15238, 2.53954, -0.10025, 0.02551],
        "Vogel, Küchenmeister & Bich 1999, High Temp. High Press. 31, 173; fitted above 274 K",
    ),
    gas(
        "iC4H10",
        [7.25049, 2.48307, -0.09500, 0.01663],
        "Vogel, Küchenmeister & Bich 2000, Int. J. Thermophys. 21, 343; fitted above 262 K",
    ),
    gas("nC5H12", [6.54836, 2.34459, -0.01685, -0.01155], "Quiñones-Cisneros & Deiters 2006, J. Phys. Chem. B 110, 12820; zero density"),
    gas("iC5H12", [6.73076, 2.41239, -0.00605, -0.02354], "Chung et al. 1988, Ind. Eng. Chem. Res. 27, 671; zero density"),
    gas(
        "neoC5H12",
        [6.87823, 2.50995, -0.06331, 0.0],
        "VDI Heat Atlas, PPDS equation for vapour viscosity; seen in the open chemicals library",
    ),
    gas("nC6H14", [6.07377, 2.12618, -0.02962, -0.00007], "Michailidou et al. 2013, J. Phys. Chem. Ref. Data 42, 033104; zero density"),
    gas(
        "C2H4",
        [9.87721, 3.31342, -0.16577, 0.00303],
        "Perry's Chemical Engineers' Handbook 8th ed. Table 2-312; seen in the open chemicals library",
    ),
    gas("C3H6", [8.26051, 2.99395, -0.09871, -0.01277], "Huber, Laesecke & Perkins 2003, Ind. Eng. Chem. Res. 42, 3163"),
    gas("H2", [8.69271, 2.08735, -0.11365, 0.01866], "Muzny, Huber & Kazakov 2013, J. Chem. Eng. Data 58, 969"),
    gas(
        "CO",
        [17.21526, 4.66726, -0.37174, 0.04834],
        "Perry's Chemical Engineers' Handbook 8th ed. Table 2-312; seen in the open chemicals library",
    ),
    gas("N2", [17.33949, 4.68666, -0.34119, 0.04118], "Lemmon & Jacobsen 2004, Int. J. Thermophys. 25, 21"),
    gas("CO2", [14.43427, 4.81533, -0.12121, -0.02784], "Laesecke & Muzny 2017, J. Phys. Chem. Ref. Data 46, 013107"),
    gas("O2", [19.99327, 5.60786, -0.38529, 0.04258], "Lemmon & Jacobsen 2004, Int. J. Thermophys. 25, 21"),
    gas("He", [19.38853, 4.59389, -0.21783, 0.03104], "Arp, McCarty & Friend 1998, NIST Technical Note 1334"),
    gas("Ar", [21.98712, 6.40877, -0.40130, 0.03779], "Lemmon & Jacobsen 2004, Int. J. Thermophys. 25, 21"),
    gas(
        "H2O",
        [9.39503, 3.08167, 0.60323, -0.19358],
        "Huber et al. 2009, J. Phys. Chem. Ref. Data 38, 101; zero density, fitted above 274 K",
    ),
    gas("H2S", [11.64961, 4.28663, -0.02909, -0.03947], "Quiñones-Cisneros et al. 2012, J. Chem. Eng. Data 57, 3014"),
];

/// The entry of a pure gas by its formula.
#[must_use]
pub fn pure_gas(formula: &str) -> Option<&'static GasViscosity> {
    PURE_GASES.iter().find(|gas| gas.formula == formula)
}

/// One gas of a mixture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MixtureShare {
    /// Mole fraction; the shares need not add up to one.
    pub mole_fraction: f64,
    /// Molar mass, in any unit common to all shares.
    pub molar_mass: f64,
    /// Dynamic viscosity of the pure gas, Pa s.
    pub viscosity: f64,
}

/// Dynamic viscosity of a gas mixture at low pressure, Pa s.
///
/// Wilke 1950, J. Chem. Phys. 18, 517. Within about 1 % for hydrocarbons, less good with hydrogen
/// (errors of several percent are published there). NaN for an empty mixture.
#[must_use]
pub fn wilke(shares: &[MixtureShare]) -> f64 {
    const ROOT_8: f64 = 2.828_427_124_746_190_3;
    let mixture: f64 = shares
        .iter()
        .map(|one| {
            let weight: f64 = shares
                .iter()
                .map(|other| {
                    let mass_ratio = other.molar_mass / one.molar_mass;
                    let bracket = 1.0 + sqrt(one.viscosity / other.viscosity * sqrt(mass_ratio));
                    other.mole_fraction * bracket * bracket / (ROOT_8 * sqrt(1.0 + 1.0 / mass_ratio))
                })
                .sum();
            // A component listed at zero would otherwise turn an all-zero mixture into a number.
            one.mole_fraction * one.viscosity / weight
        })
        .sum();
    if mixture > 0.0 { mixture } else { f64::NAN }
}

/// Viscosity of a mixture over temperature: Wilke's rule at four temperatures between 243 K and
/// 353 K and the cubic through them, which stays within 1e-5 of the rule.
///
/// Each share comes with its pure gas; the viscosity in the share is not looked at.
#[must_use]
pub fn mixture_viscosity(parts: impl Iterator<Item = (&'static GasViscosity, MixtureShare)>) -> GasViscosity {
    const NODES: [f64; 4] = [-0.40, -0.05, 0.30, 0.60];
    let parts: Vec<_> = parts.collect();
    let values = NODES.map(|t| {
        let at = |&(gas, share): &(&GasViscosity, MixtureShare)| MixtureShare { viscosity: gas.at(288.15 + 100.0 * t), ..share };
        1e6 * wilke(&parts.iter().map(at).collect::<Vec<_>>())
    });
    GasViscosity { formula: "mixture", cubic: cubic_through(NODES, values), source: "Wilke 1950, J. Chem. Phys. 18, 517" }
}

/// Coefficients of the cubic through four points, by Newton's divided differences.
fn cubic_through([t0, t1, t2, t3]: [f64; 4], [v0, v1, v2, v3]: [f64; 4]) -> [f64; 4] {
    let (d01, d12, d23) = ((v1 - v0) / (t1 - t0), (v2 - v1) / (t2 - t1), (v3 - v2) / (t3 - t2));
    let (d012, d123) = ((d12 - d01) / (t2 - t0), (d23 - d12) / (t3 - t1));
    let d = (d123 - d012) / (t3 - t0);
    [v0 - t0 * (d01 - t1 * (d012 - t2 * d)), d01 - (t0 + t1) * d012 + (t0 * t1 + t0 * t2 + t1 * t2) * d, d012 - (t0 + t1 + t2) * d, d]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mixture_over_temperature_follows_the_rule() {
        let share = |mole_fraction, molar_mass| MixtureShare { mole_fraction, molar_mass, viscosity: f64::NAN };
        let parts = [("CH4", share(0.7, 16.04)), ("H2", share(0.2, 2.016)), ("C3H8", share(0.1, 44.1))];
        let fitted = mixture_viscosity(parts.iter().map(|&(formula, share)| (pure_gas(formula).unwrap(), share)));
        for step in 0..12 {
            let temperature = 243.15 + 10.0 * f64::from(step);
            let shares = parts.map(|(formula, share)| MixtureShare { viscosity: pure_gas(formula).unwrap().at(temperature), ..share });
            let ratio = fitted.at(temperature) / wilke(&shares);
            assert!((ratio - 1.0).abs() < 1e-5, "{temperature}: {ratio}");
        }
    }

    #[test]
    fn every_formula_is_a_component_of_the_fuel_table() {
        for gas in &PURE_GASES {
            let place = crate::fuel::component_position(gas.formula).unwrap();
            assert_eq!(crate::fuel::COMPONENTS[place].symbol, gas.formula);
        }
    }

    fn at_15(formula: &str) -> f64 {
        pure_gas(formula).unwrap().at(288.15)
    }

    /// The named equations as evaluated by CoolProp 8.0.0 between the nodes of the fit, at 1 atm
    /// where the gas exists there, else as low-pressure vapour; micropascal second.
    #[test]
    fn pure_gases_agree_with_the_named_equations() {
        let warm = 318.7;
        let cool = 278.4;
        for (formula, at_cool, at_warm, tolerance) in [
            ("CH4", 10.56124, 11.84100, 5e-5),
            ("C2H6", 8.76979, 9.95194, 5e-5),
            ("C3H8", 7.61187, 8.69667, 5e-5),
            ("nC4H10", 6.90379, 7.91956, 5e-5),
            ("iC4H10", 7.00750, 8.00067, 5e-5),
            ("nC5H12", 6.31962, 7.26272, 5e-5),
            ("iC5H12", 6.49554, 7.46633, 3e-4),
            ("nC6H14", 5.86619, 6.72055, 5e-5),
            ("C3H6", 7.96771, 9.16552, 1e-4),
            ("H2", 8.48810, 9.32033, 5e-5),
            ("N2", 16.87926, 18.74060, 5e-5),
            ("CO2", 13.96364, 15.89324, 5e-5),
            ("O2", 19.44280, 21.67174, 5e-5),
            ("He", 18.93857, 20.77257, 5e-5),
            ("Ar", 21.35842, 23.90862, 5e-5),
            ("H2O", 9.10052, 10.38741, 1e-4),
            ("H2S", 11.23135, 12.95541, 1e-4),
        ] {
            for (temperature, wanted) in [(cool, at_cool), (warm, at_warm)] {
                let got = pure_gas(formula).unwrap().at(temperature) * 1e6;
                assert!((got / wanted - 1.0).abs() < tolerance, "{formula} {temperature}: {got} for {wanted}");
            }
        }
        // Perry's equation worked by hand at 300 K: C1 T^C2 / (1 + C3/T).
        assert!((pure_gas("C2H4").unwrap().at(300.0) * 1e6 / (2.0789 * 10.745_474 / (1.0 + 352.7 / 300.0)) - 1.0).abs() < 1e-5);
        assert!(pure_gas("xenon").is_none());
    }

    #[test]
    fn a_mixture_of_one_gas_and_a_split_gas_are_that_gas() {
        let share = |mole_fraction| MixtureShare { mole_fraction, molar_mass: 16.04, viscosity: at_15("CH4") };
        for shares in [&[share(1.0)][..], &[share(0.25), share(0.75)], &[share(2.0), share(0.0)]] {
            assert!((wilke(shares) / at_15("CH4") - 1.0).abs() < 1e-14);
        }
        assert!(wilke(&[]).is_nan());
    }

    /// Methane and propane, 1:1, at 288.15 K; expected value from the Wilke function of the open
    /// chemicals library with the same inputs.
    #[test]
    fn methane_with_propane_follows_wilke() {
        let shares = [
            MixtureShare { mole_fraction: 0.5, molar_mass: 16.043, viscosity: 10.8768e-6 },
            MixtureShare { mole_fraction: 0.5, molar_mass: 44.097, viscosity: 7.87627e-6 },
        ];
        assert!((wilke(&shares) * 1e6 / 8.972_910_443_227_056 - 1.0).abs() < 1e-12);
    }
}
