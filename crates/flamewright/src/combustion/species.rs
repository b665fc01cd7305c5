//! Thermodynamic data of the gases in a flame and its flue gas.
//!
//! Seven-coefficient polynomials of B.J. McBride, S. Gordon, M.A. Reno, "Coefficients for
//! Calculating Thermodynamic and Transport Properties of Individual Species", NASA TM-4513 (1993),
//! compared figure by figure with the file `nasa_gas.yaml` of Cantera 3.2.0. Molar masses from the
//! atomic masses of ISO 6976:2016, Table A.2.

use crate::math;

/// Molar gas constant, J/(mol K); exact since the 2019 revision of the SI.
pub const MOLAR_GAS_CONSTANT: f64 = 8.314_462_618_153_24;

/// Temperature from which sensible enthalpies count, K (25 degC).
pub const ENTHALPY_DATUM: f64 = 298.15;

/// Temperature at which the two polynomials of a species meet, K (NASA TM-4513).
const COMMON_TEMPERATURE: f64 = 1000.0;

/// One gas: heat capacity, enthalpy and entropy as functions of temperature, at 1 bar.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Species {
    /// Chemical formula.
    pub formula: &'static str,
    /// Molar mass, kg/mol.
    pub molar_mass: f64,
    /// Lowest temperature of the fit, K.
    pub minimum_temperature: f64,
    /// Highest temperature of the fit, K.
    pub maximum_temperature: f64,
    /// Coefficients a1 to a7 up to 1000 K.
    pub low: [f64; 7],
    /// Coefficients a1 to a7 from 1000 K.
    pub high: [f64; 7],
}

impl Species {
    fn coefficients(&self, temperature: f64) -> &[f64; 7] {
        if temperature < COMMON_TEMPERATURE { &self.low } else { &self.high }
    }

    /// Heat capacity at constant pressure, divided by R.
    #[must_use]
    pub fn heat_capacity_over_r(&self, temperature: f64) -> f64 {
        let [a1, a2, a3, a4, a5, ..] = self.coefficients(temperature);
        let t = temperature;
        a1 + t * (a2 + t * (a3 + t * (a4 + t * a5)))
    }

    /// Enthalpy from the elements at 25 degC, divided by R T.
    #[must_use]
    pub fn enthalpy_over_rt(&self, temperature: f64) -> f64 {
        let [a1, a2, a3, a4, a5, a6, _] = self.coefficients(temperature);
        let t = temperature;
        a1 + t * (a2 / 2.0 + t * (a3 / 3.0 + t * (a4 / 4.0 + t * (a5 / 5.0)))) + a6 / t
    }

    /// Entropy at 1 bar, divided by R.
    #[must_use]
    pub fn entropy_over_r(&self, temperature: f64) -> f64 {
        let [a1, a2, a3, a4, a5, _, a7] = self.coefficients(temperature);
        let t = temperature;
        a1 * math::ln(t) + t * (a2 + t * (a3 / 2.0 + t * (a4 / 3.0 + t * (a5 / 4.0)))) + a7
    }

    /// Enthalpy of one mole from the elements at 25 degC, J/mol.
    #[must_use]
    pub fn enthalpy(&self, temperature: f64) -> f64 {
        self.enthalpy_over_rt(temperature) * MOLAR_GAS_CONSTANT * temperature
    }

    /// Enthalpy of one mole above 25 degC, J/mol. Flue gas is good to about 0.1 %.
    #[must_use]
    pub fn sensible_enthalpy(&self, temperature: f64) -> f64 {
        self.enthalpy(temperature) - self.enthalpy(ENTHALPY_DATUM)
    }

    /// The same below 1000 K as a polynomial about 25 degC: the coefficients b1 to b5 of
    /// `x (b1 + x (b2 + ... x b5))`, x in K above 25 degC, J/mol.
    ///
    /// It is the published polynomial with its origin moved, exact but for rounding, and is
    /// exactly zero at 25 degC.
    #[must_use]
    pub fn sensible_polynomial(&self) -> SensiblePolynomial {
        let [a1, a2, a3, a4, a5, ..] = self.low;
        let d = ENTHALPY_DATUM;
        let r = MOLAR_GAS_CONSTANT;
        // Taylor coefficients at the datum: the heat capacity's derivatives over n!.
        SensiblePolynomial([
            r * (a1 + d * (a2 + d * (a3 + d * (a4 + d * a5)))),
            r * (a2 + d * (2.0 * a3 + d * (3.0 * a4 + d * 4.0 * a5))) / 2.0,
            r * (a3 + d * (3.0 * a4 + d * 6.0 * a5)) / 3.0,
            r * (a4 + d * 4.0 * a5) / 4.0,
            r * a5 / 5.0,
        ])
    }
}

/// Heat above 25 degC as a polynomial in the temperature above 25 degC; see
/// [`Species::sensible_polynomial`]. Polynomials of a mixture add up.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SensiblePolynomial(pub [f64; 5]);

impl SensiblePolynomial {
    /// Enthalpy at `above` kelvin above 25 degC.
    #[must_use]
    #[inline(always)]
    pub fn at(&self, above: f64) -> f64 {
        let [b1, b2, b3, b4, b5] = self.0;
        above * (b1 + above * (b2 + above * (b3 + above * (b4 + above * b5))))
    }

    /// This polynomial and `amount` times another one.
    #[must_use]
    #[inline(always)]
    pub fn plus(&self, amount: f64, other: &Self) -> Self {
        let [a1, a2, a3, a4, a5] = self.0;
        let [b1, b2, b3, b4, b5] = other.0;
        Self([a1 + amount * b1, a2 + amount * b2, a3 + amount * b3, a4 + amount * b4, a5 + amount * b5])
    }
}

/// Carbon dioxide (data set L 7/88, 200 to 6000 K).
pub static CARBON_DIOXIDE: Species = Species {
    formula: "CO2",
    molar_mass: 0.0440095,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [2.35677352, 0.00898459677, -7.12356269e-06, 2.45919022e-09, -1.43699548e-13, -48371.9697, 9.90105222],
    high: [4.63659493, 0.00274131991, -9.95828531e-07, 1.60373011e-10, -9.16103468e-15, -49024.9341, -1.93534855],
};

/// Water, as an ideal gas (data set L 8/89, 200 to 6000 K).
pub static WATER: Species = Species {
    formula: "H2O",
    molar_mass: 0.01801528,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [4.19864056, -0.0020364341, 6.52040211e-06, -5.48797062e-09, 1.77197817e-12, -30293.7267, -0.849032208],
    high: [2.67703787, 0.00297318329, -7.7376969e-07, 9.44336689e-11, -4.26900959e-15, -29885.8938, 6.88255571],
};

/// Oxygen (data set TPIS89, 200 to 6000 K).
pub static OXYGEN: Species = Species {
    formula: "O2",
    molar_mass: 0.0319988,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [3.78245636, -0.00299673415, 9.847302e-06, -9.68129508e-09, 3.24372836e-12, -1063.94356, 3.65767573],
    high: [3.66096083, 0.000656365523, -1.41149485e-07, 2.05797658e-11, -1.29913248e-15, -1215.97725, 3.41536184],
};

/// Nitrogen (data set TPIS78, 200 to 6000 K).
pub static NITROGEN: Species = Species {
    formula: "N2",
    molar_mass: 0.0280134,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [3.53100528, -0.000123660987, -5.02999437e-07, 2.43530612e-09, -1.40881235e-12, -1046.97628, 2.96747468],
    high: [2.95257626, 0.00139690057, -4.92631691e-07, 7.86010367e-11, -4.60755321e-15, -923.948645, 5.87189252],
};

/// Argon; helium and neon have the same heat (data set L 6/88, 200 to 6000 K).
pub static ARGON: Species = Species {
    formula: "Ar",
    molar_mass: 0.039948,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [2.5, 0.0, 0.0, 0.0, 0.0, -745.375, 4.37967491],
    high: [2.5, 0.0, 0.0, 0.0, 0.0, -745.375, 4.37967491],
};

/// Sulphur dioxide (data set J 6/61, 300 to 5000 K).
pub static SULPHUR_DIOXIDE: Species = Species {
    formula: "SO2",
    molar_mass: 0.0640638,
    minimum_temperature: 300.0,
    maximum_temperature: 5000.0,
    low: [3.2665338, 0.0053237902, 6.8437552e-07, -5.2810047e-09, 2.5590454e-12, -36908.148, 9.66465108],
    high: [5.2451364, 0.0019704204, -8.0375769e-07, 1.5149969e-10, -1.0558004e-14, -37558.227, -1.07404892],
};

/// Carbon monoxide (data set TPIS79, 200 to 6000 K).
pub static CARBON_MONOXIDE: Species = Species {
    formula: "CO",
    molar_mass: 0.0280101,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [3.57953347, -0.00061035368, 1.01681433e-06, 9.07005884e-10, -9.04424499e-13, -14344.086, 3.50840928],
    high: [3.04848583, 0.00135172818, -4.85794075e-07, 7.88536486e-11, -4.69807489e-15, -14266.1171, 6.0170979],
};

/// Hydrogen (data set TPIS78, 200 to 6000 K).
pub static HYDROGEN: Species = Species {
    formula: "H2",
    molar_mass: 0.00201588,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [2.34433112, 0.00798052075, -1.9478151e-05, 2.01572094e-08, -7.37611761e-12, -917.935173, 0.683010238],
    high: [2.93286579, 0.000826607967, -1.46402335e-07, 1.54100359e-11, -6.88804432e-16, -813.065597, -1.02432887],
};

/// Hydroxyl radical (data set TPIS78, 200 to 6000 K).
pub static HYDROXYL: Species = Species {
    formula: "OH",
    molar_mass: 0.01700734,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [3.99201543, -0.00240131752, 4.61793841e-06, -3.88113333e-09, 1.3641147e-12, 3615.08056, -0.103925458],
    high: [2.83864607, 0.00110725586, -2.93914978e-07, 4.20524247e-11, -2.42169092e-15, 3943.95852, 5.84452662],
};

/// Hydrogen atom (data set L 5/93, 200 to 6000 K).
pub static ATOMIC_HYDROGEN: Species = Species {
    formula: "H",
    molar_mass: 0.00100794,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [2.5, 0.0, 0.0, 0.0, 0.0, 25473.6599, -0.446682853],
    high: [2.50000286, -5.65334214e-09, 3.63251723e-12, -9.1994972e-16, 7.95260746e-20, 25473.6589, -0.446698494],
};

/// Oxygen atom (data set L 1/90, 200 to 6000 K).
pub static ATOMIC_OXYGEN: Species = Species {
    formula: "O",
    molar_mass: 0.0159994,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [3.1682671, -0.00327931884, 6.64306396e-06, -6.12806624e-09, 2.11265971e-12, 29122.2592, 2.05193346],
    high: [2.54363697, -2.73162486e-05, -4.1902952e-09, 4.95481845e-12, -4.79553694e-16, 29226.012, 4.92229457],
};

/// Nitric oxide (data set TPIS89, 200 to 6000 K).
pub static NITRIC_OXIDE: Species = Species {
    formula: "NO",
    molar_mass: 0.0300061,
    minimum_temperature: 200.0,
    maximum_temperature: 6000.0,
    low: [4.21859896, -0.00463988124, 1.10443049e-05, -9.34055507e-09, 2.80554874e-12, 9845.09964, 2.28061001],
    high: [3.26071234, 0.00119101135, -4.29122646e-07, 6.94481463e-11, -4.03295681e-15, 9921.43132, 6.36900518],
};
