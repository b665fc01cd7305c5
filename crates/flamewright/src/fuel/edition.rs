//! What each edition of ISO 6976 tabulates, and how a temperature between its columns is treated.
use super::component::COMPONENT_COUNT;

/// Reference temperatures for which the tables have a column, degC. Summation factors have the first
/// four, calorific values all five.
pub const TABLE_TEMPERATURES: [f64; 5] = [0.0, 15.0, 15.55, 20.0, 25.0];

/// Edition of ISO 6976, "Natural gas: calculation of calorific values, density, relative density and
/// Wobbe indices from composition".
///
/// Use the edition that the figures to be compared with rest on: EN 437 and most contracts made
/// before 2016 rest on that of 1995. The two differ by up to 0.2 % for the butanes and by less than
/// 0.01 % for methane.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Edition {
    /// ISO 6976:2016.
    #[default]
    Iso6976Of2016,
    /// ISO 6976:1995 (with its corrections of 1999).
    Iso6976Of1995,
}

/// One edition's figures, in the units it prints, component by component in the order of
/// [`COMPONENTS`](super::COMPONENTS).
///
/// Each column lies in one array, so that a sum over a composition is a dot product of two arrays.
pub(super) struct Table {
    /// J/(mol K)
    pub gas_constant: f64,
    /// kg/kmol
    pub air_molar_mass: f64,
    /// Compression factor of dry air at 101.325 kPa and the first four table temperatures.
    pub air_compression_factor: [f64; 4],
    /// kg/kmol
    pub molar_mass: [f64; COMPONENT_COUNT],
    /// Summation factors (in 1995: square root of b) at the first four table temperatures.
    pub summation: [[f64; COMPONENT_COUNT]; 4],
    /// Molar gross calorific value at the five table temperatures, kJ/mol
    pub gross: [[f64; COMPONENT_COUNT]; 5],
    /// Molar net calorific value at the five table temperatures, kJ/mol
    pub net: [[f64; COMPONENT_COUNT]; 5],
    /// Standard uncertainty of the summation factors; NaN where the edition gives none.
    pub summation_uncertainty: [f64; COMPONENT_COUNT],
    /// Standard uncertainty of the gross calorific values, kJ/mol; NaN where the edition gives none.
    pub gross_uncertainty: [f64; COMPONENT_COUNT],
    /// Number of leading components that the edition tabulates.
    pub tabulated: usize,
}

impl Edition {
    pub(super) const fn table(self) -> &'static Table {
        match self {
            Self::Iso6976Of2016 => &TABLE_2016,
            Self::Iso6976Of1995 => &TABLE_1995,
        }
    }

    /// Whether the edition tabulates the component at this position of
    /// [`COMPONENTS`](super::COMPONENTS). That of 1995 lacks n-undecane to n-pentadecane.
    #[must_use]
    pub const fn tabulates(self, component_position: usize) -> bool {
        component_position < self.table().tabulated
    }

    /// Name with year, for sources.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Iso6976Of2016 => "ISO 6976:2016",
            Self::Iso6976Of1995 => "ISO 6976:1995",
        }
    }

    /// Molar gas constant the edition uses, J/(mol K).
    #[must_use]
    pub const fn gas_constant(self) -> f64 {
        self.table().gas_constant
    }

    /// Molar mass of dry air the edition uses, kg/mol.
    #[must_use]
    pub const fn air_molar_mass(self) -> f64 {
        self.table().air_molar_mass * 1e-3
    }
}

/// Shares of the table columns that give the value at a temperature by straight lines between the
/// two columns next to it; NaN outside the table.
///
/// The standard gives columns, no rule between them; over the 5 to 15 K between two columns a
/// straight line is within 0.003 % for calorific values (seen from the 15.55 degC column, which it
/// reproduces to the figures printed) and 0.0002 in a summation factor.
pub(super) fn column_shares<const N: usize>(temperature_kelvin: f64) -> [f64; N] {
    let celsius = temperature_kelvin - 273.15;
    let columns = TABLE_TEMPERATURES;
    let mut shares = [0.0; N];
    for (i, share) in shares.iter_mut().enumerate() {
        let rising = if i == 0 { 1.0 } else { (celsius - columns[i - 1]) / (columns[i] - columns[i - 1]) };
        let falling = if i + 1 == N { 1.0 } else { (columns[i + 1] - celsius) / (columns[i + 1] - columns[i]) };
        *share = rising.min(falling).clamp(0.0, 1.0);
    }
    if celsius >= columns[0] - ROUNDING && celsius <= columns[N - 1] + ROUNDING { shares } else { [f64::NAN; N] }
}

/// What a temperature may lie outside the table through rounding in a change of unit, K.
const ROUNDING: f64 = 1e-9;

/// Value at the temperature of the column shares.
pub(super) fn blend<const N: usize>(columns: &[f64; N], shares: &[f64; N]) -> f64 {
    columns.iter().zip(shares).map(|(value, share)| value * share).sum()
}

struct Row2016 {
    molar_mass: f64,
    summation: [f64; 4],
    summation_uncertainty: f64,
    gross: [f64; 5],
    gross_uncertainty: f64,
}

const fn row_2016(molar_mass: f64, summation: [f64; 4], summation_uncertainty: f64, gross: [f64; 5], gross_uncertainty: f64) -> Row2016 {
    Row2016 { molar_mass, summation, summation_uncertainty, gross, gross_uncertainty }
}

struct Row1995 {
    molar_mass: f64,
    summation: [f64; 3],
    gross: [f64; 4],
    net: [f64; 4],
}

const fn row_1995(molar_mass: f64, summation: [f64; 3], gross: [f64; 4], net: [f64; 4]) -> Row1995 {
    Row1995 { molar_mass, summation, gross, net }
}

static TABLE_2016: Table = {
    // Table A.5: molar enthalpy of vaporisation of water at the five table temperatures.
    let vaporisation = [45.064, 44.431, 44.408, 44.222, 44.013];
    let mut table = Table {
        gas_constant: 8.314_462_1,                                            // Table A.1
        air_molar_mass: 28.965_46,                                            // Table A.3
        air_compression_factor: [0.999_419, 0.999_595, 0.999_601, 0.999_645], // Table A.4
        molar_mass: [0.0; COMPONENT_COUNT],
        summation: [[0.0; COMPONENT_COUNT]; 4],
        gross: [[0.0; COMPONENT_COUNT]; 5],
        net: [[0.0; COMPONENT_COUNT]; 5],
        summation_uncertainty: [0.0; COMPONENT_COUNT],
        gross_uncertainty: [0.0; COMPONENT_COUNT],
        tabulated: ROWS_2016.len(),
    };
    let mut i = 0;
    while i < ROWS_2016.len() {
        let row = &ROWS_2016[i];
        table.molar_mass[i] = row.molar_mass;
        table.summation_uncertainty[i] = row.summation_uncertainty;
        table.gross_uncertainty[i] = row.gross_uncertainty;
        let mut column = 0;
        while column < 5 {
            if column < 4 {
                table.summation[column][i] = row.summation[column];
            }
            table.gross[column][i] = row.gross[column];
            // Formula (3): net = gross - (hydrogen atoms / 2) x enthalpy of vaporisation of water
            table.net[column][i] = row.gross[column] - super::component::COMPONENTS[i].atoms[1] as f64 / 2.0 * vaporisation[column];
            column += 1;
        }
        i += 1;
    }
    table
};

static TABLE_1995: Table = {
    // The edition of 1995 has no 15.55 degC column: it is filled from its neighbours.
    const fn with_between<const M: usize, const N: usize>(columns: [f64; M]) -> [f64; N] {
        let share = (TABLE_TEMPERATURES[2] - TABLE_TEMPERATURES[1]) / (TABLE_TEMPERATURES[3] - TABLE_TEMPERATURES[1]);
        let mut filled = [0.0; N];
        filled[0] = columns[0];
        filled[1] = columns[1];
        filled[2] = columns[1] + (columns[2] - columns[1]) * share;
        let mut i = 3;
        while i < N {
            filled[i] = columns[i - 1];
            i += 1;
        }
        filled
    }
    let mut table = Table {
        gas_constant: 8.314_51,
        air_molar_mass: 28.9626,
        air_compression_factor: with_between([0.999_41, 0.999_58, 0.999_63]), // 20 degC from memory
        molar_mass: [0.0; COMPONENT_COUNT],
        summation: [[0.0; COMPONENT_COUNT]; 4],
        gross: [[0.0; COMPONENT_COUNT]; 5],
        net: [[0.0; COMPONENT_COUNT]; 5],
        summation_uncertainty: [f64::NAN; COMPONENT_COUNT],
        gross_uncertainty: [f64::NAN; COMPONENT_COUNT],
        tabulated: ROWS_1995.len(),
    };
    let mut i = 0;
    while i < ROWS_1995.len() {
        let row = &ROWS_1995[i];
        table.molar_mass[i] = row.molar_mass;
        let summation: [f64; 4] = with_between(row.summation);
        let gross: [f64; 5] = with_between(row.gross);
        let net: [f64; 5] = with_between(row.net);
        let mut column = 0;
        while column < 5 {
            if column < 4 {
                table.summation[column][i] = summation[column];
            }
            table.gross[column][i] = gross[column];
            table.net[column][i] = net[column];
            column += 1;
        }
        i += 1;
    }
    table
};

/// ISO 6976:2016 Table 1 (molar mass, kg/kmol), Table 2 (summation factors at 0, 15, 15.55 and
/// 20 degC, their standard uncertainty) and Table 3 (gross calorific values at 0, 15, 15.55, 20 and
/// 25 degC, kJ/mol, their standard uncertainty).
///
/// Read in a public repository that says its tables were typed from the standard
/// (ErikvanderWerff/iso6976-py_2016). Checked: molar masses against the atoms and the standard's
/// atomic masses, all to 1e-6 kg/kmol; the 15.55 degC columns against a straight line between 15 and
/// 20 degC; Annex D examples 1 to 3.
#[rustfmt::skip]
const ROWS_2016: [Row2016; 60] = [
    row_2016(16.04246, [0.04886, 0.04452, 0.04437, 0.04317], 0.0005, [892.92, 891.51, 891.46, 891.05, 890.58], 0.19), // CH4
    row_2016(30.06904, [0.0997, 0.0919, 0.0916, 0.0895], 0.0011, [1564.35, 1562.14, 1562.06, 1561.42, 1560.69], 0.51), // C2H6
    row_2016(44.09562, [0.1465, 0.1344, 0.134, 0.1308], 0.0016, [2224.03, 2221.1, 2220.99, 2220.13, 2219.17], 0.51), // C3H8
    row_2016(58.1222, [0.2022, 0.184, 0.1834, 0.1785], 0.0039, [2883.35, 2879.76, 2879.63, 2878.58, 2877.4], 0.72), // nC4H10
    row_2016(58.1222, [0.1885, 0.1722, 0.1717, 0.1673], 0.0031, [2874.21, 2870.58, 2870.45, 2869.39, 2868.2], 0.72), // iC4H10
    row_2016(72.14878, [0.2586, 0.2361, 0.2354, 0.2295], 0.0107, [3542.91, 3538.6, 3538.45, 3537.19, 3535.77], 0.23), // nC5H12
    row_2016(72.14878, [0.2458, 0.2251, 0.2244, 0.2189], 0.0088, [3536.01, 3531.68, 3531.52, 3530.25, 3528.83], 0.23), // iC5H12
    row_2016(72.14878, [0.2245, 0.204, 0.2033, 0.1979], 0.006, [3521.75, 3517.44, 3517.28, 3516.02, 3514.61], 0.25), // neoC5H12
    row_2016(86.17536, [0.3319, 0.3001, 0.299, 0.2907], 0.0271, [4203.24, 4198.24, 4198.06, 4196.6, 4194.95], 0.32), // nC6H14
    row_2016(86.17536, [0.3114, 0.2826, 0.2816, 0.274], 0.0221, [4195.64, 4190.62, 4190.44, 4188.97, 4187.32], 0.53), // 2-MP
    row_2016(86.17536, [0.2997, 0.2762, 0.2754, 0.269], 0.0234, [4198.27, 4193.22, 4193.04, 4191.56, 4189.9], 0.53), // 3-MP
    row_2016(86.17536, [0.253, 0.235, 0.2344, 0.2295], 0.0173, [4185.86, 4180.83, 4180.65, 4179.17, 4177.52], 0.48), // 2,2-DMB
    row_2016(86.17536, [0.2836, 0.2632, 0.2625, 0.2569], 0.0207, [4193.68, 4188.61, 4188.43, 4186.94, 4185.28], 0.46), // 2,3-DMB
    row_2016(100.20194, [0.4076, 0.3668, 0.3654, 0.3547], 0.1001, [4862.88, 4857.18, 4856.98, 4855.31, 4853.43], 0.67), // nC7H16
    row_2016(114.22852, [0.4845, 0.4346, 0.4329, 0.4198], 0.1002, [5522.41, 5516.01, 5515.78, 5513.9, 5511.8], 0.76), // nC8H18
    row_2016(128.2551, [0.5617, 0.503, 0.501, 0.4856], 0.1006, [6182.92, 6175.82, 6175.56, 6173.48, 6171.15], 0.81), // nC9H20
    row_2016(142.28168, [0.6713, 0.5991, 0.5967, 0.5778], 0.1006, [6842.69, 6834.9, 6834.62, 6832.33, 6829.77], 0.87), // nC10H22
    row_2016(28.05316, [0.0868, 0.0799, 0.0797, 0.0778], 0.001, [1413.55, 1412.12, 1412.07, 1411.65, 1411.18], 0.21), // C2H4
    row_2016(42.07974, [0.1381, 0.1267, 0.1263, 0.1232], 0.0016, [2061.57, 2059.43, 2059.35, 2058.73, 2058.02], 0.34), // C3H6
    row_2016(56.10632, [0.1964, 0.1776, 0.177, 0.1721], 0.0041, [2721.57, 2718.71, 2718.6, 2717.76, 2716.82], 0.39), // 1-C4H8
    row_2016(56.10632, [0.2075, 0.187, 0.1863, 0.181], 0.0045, [2714.88, 2711.94, 2711.83, 2710.97, 2710.0], 0.5), // c-2-C4H8
    row_2016(56.10632, [0.2072, 0.1868, 0.1862, 0.1809], 0.0043, [2711.09, 2708.26, 2708.16, 2707.33, 2706.4], 0.47), // t-2-C4H8
    row_2016(56.10632, [0.1966, 0.1777, 0.177, 0.1721], 0.0037, [2704.88, 2702.06, 2701.96, 2701.13, 2700.2], 0.42), // iC4H8
    row_2016(70.1329, [0.2622, 0.2297, 0.2287, 0.2208], 0.0102, [3381.32, 3377.76, 3377.63, 3376.59, 3375.42], 0.73), // 1-C5H10
    row_2016(40.06386, [0.1417, 0.1313, 0.131, 0.1282], 0.0025, [1945.26, 1943.97, 1943.92, 1943.54, 1943.11], 0.6), // C3H4
    row_2016(54.09044, [0.2063, 0.1862, 0.1855, 0.1803], 0.011, [2597.15, 2595.12, 2595.05, 2594.46, 2593.79], 0.4), // 1,2-C4H6
    row_2016(54.09044, [0.1993, 0.1739, 0.1731, 0.1673], 0.0038, [2544.14, 2542.11, 2542.03, 2541.44, 2540.77], 0.41), // 1,3-C4H6
    row_2016(26.03728, [0.0936, 0.0836, 0.0833, 0.0808], 0.0024, [1301.86, 1301.37, 1301.35, 1301.21, 1301.05], 0.32), // C2H2
    row_2016(70.1329, [0.2409, 0.2221, 0.2215, 0.2164], 0.0137, [3326.14, 3322.19, 3322.05, 3320.89, 3319.59], 0.36), // cC5H10
    row_2016(84.15948, [0.2817, 0.2612, 0.2605, 0.2548], 0.0262, [3977.05, 3972.46, 3972.29, 3970.95, 3969.44], 0.56), // MCP
    row_2016(98.18606, [0.4227, 0.3684, 0.3666, 0.3531], 0.1006, [4637.2, 4631.93, 4631.74, 4630.2, 4628.47], 0.71), // ECP
    row_2016(84.15948, [0.2939, 0.2686, 0.2677, 0.261], 0.0325, [3960.68, 3956.02, 3955.85, 3954.49, 3952.96], 0.32), // cC6H12
    row_2016(98.18606, [0.3667, 0.3317, 0.3305, 0.3213], 0.0668, [4609.33, 4604.08, 4603.89, 4602.36, 4600.64], 0.71), // MCH
    row_2016(112.21264, [0.5275, 0.4547, 0.4524, 0.4345], 0.1006, [5272.76, 5266.9, 5266.69, 5264.97, 5263.05], 0.95), // ECH
    row_2016(78.11184, [0.2752, 0.2527, 0.252, 0.246], 0.0274, [3305.12, 3302.9, 3302.81, 3302.16, 3301.43], 0.27), // C6H6
    row_2016(92.13842, [0.3726, 0.3359, 0.3347, 0.3251], 0.1002, [3952.77, 3949.83, 3949.72, 3948.86, 3947.89], 0.51), // C7H8
    row_2016(106.165, [0.4129, 0.3797, 0.3785, 0.3694], 0.1002, [4613.16, 4609.54, 4609.4, 4608.34, 4607.15], 0.66), // C8H10
    row_2016(106.165, [0.4852, 0.4411, 0.4396, 0.4277], 0.1004, [4602.18, 4598.64, 4598.52, 4597.48, 4596.31], 0.76), // oC8H10
    row_2016(32.04186, [0.5806, 0.4464, 0.4423, 0.4117], 0.0233, [766.6, 765.09, 765.03, 764.59, 764.09], 0.13), // CH3OH
    row_2016(48.10746, [0.1909, 0.17, 0.1693, 0.164], 0.0117, [1241.64, 1240.28, 1240.23, 1239.84, 1239.39], 0.32), // CH3SH
    row_2016(2.01588, [-0.01, -0.01, -0.01, -0.01], 0.025, [286.64, 286.15, 286.13, 285.99, 285.83], 0.02), // H2
    row_2016(18.01528, [0.3093, 0.2562, 0.2546, 0.2419], 0.015, [45.064, 44.431, 44.408, 44.222, 44.013], 0.004), // H2O
    row_2016(34.08088, [0.1006, 0.0923, 0.092, 0.0898], 0.0023, [562.93, 562.38, 562.36, 562.19, 562.01], 0.23), // H2S
    row_2016(17.03052, [0.123, 0.11, 0.1096, 0.1062], 0.0021, [384.57, 383.51, 383.47, 383.16, 382.81], 0.18), // NH3
    row_2016(27.02534, [0.3175, 0.2765, 0.2751, 0.2644], 0.0076, [671.92, 671.67, 671.66, 671.58, 671.5], 1.26), // HCN
    row_2016(28.0101, [0.0258, 0.0217, 0.0215, 0.0203], 0.001, [282.8, 282.91, 282.91, 282.95, 282.98], 0.06), // CO
    row_2016(60.0751, [0.1211, 0.1114, 0.111, 0.1084], 0.0054, [548.01, 548.14, 548.15, 548.19, 548.23], 0.24), // COS
    row_2016(76.1407, [0.2182, 0.1958, 0.1951, 0.1894], 0.0098, [1104.05, 1104.32, 1104.33, 1104.4, 1104.49], 0.43), // CS2
    row_2016(4.002602, [-0.01, -0.01, -0.01, -0.01], 0.025, [0.0, 0.0, 0.0, 0.0, 0.0], 0.0), // He
    row_2016(20.1797, [-0.01, -0.01, -0.01, -0.01], 0.025, [0.0, 0.0, 0.0, 0.0, 0.0], 0.0), // Ne
    row_2016(39.948, [0.0307, 0.0273, 0.0272, 0.0262], 0.001, [0.0, 0.0, 0.0, 0.0, 0.0], 0.0), // Ar
    row_2016(28.0134, [0.0214, 0.017, 0.0169, 0.0156], 0.001, [0.0, 0.0, 0.0, 0.0, 0.0], 0.0), // N2
    row_2016(31.9988, [0.0311, 0.0276, 0.0275, 0.0265], 0.001, [0.0, 0.0, 0.0, 0.0, 0.0], 0.0), // O2
    row_2016(44.0095, [0.0821, 0.0752, 0.0749, 0.073], 0.002, [0.0, 0.0, 0.0, 0.0, 0.0], 0.0), // CO2
    row_2016(64.0638, [0.1579, 0.1406, 0.14, 0.1356], 0.0035, [0.0, 0.0, 0.0, 0.0, 0.0], 0.0), // SO2
    row_2016(156.30826, [0.7228, 0.6402, 0.6374, 0.6159], 0.1006, [7502.22, 7493.73, 7493.42, 7490.93, 7488.14], 1.54), // nC11H24
    row_2016(170.33484, [0.8567, 0.7615, 0.7583, 0.7335], 0.1006, [8162.43, 8153.24, 8152.91, 8150.21, 8147.19], 1.13), // nC12H26
    row_2016(184.36142, [0.9129, 0.8061, 0.8026, 0.7748], 0.1006, [8821.88, 8811.99, 8811.63, 8808.73, 8805.48], 1.21), // nC13H28
    row_2016(198.388, [1.0135, 0.894, 0.89, 0.8589], 0.1006, [9481.71, 9471.12, 9470.73, 9467.63, 9464.15], 1.32), // nC14H30
    row_2016(212.41458, [1.1176, 0.9849, 0.9804, 0.9459], 0.1006, [10141.65, 10130.23, 10129.82, 10126.52, 10122.82], 1.44), // nC15H32
];

/// ISO 6976:1995 molar mass (kg/kmol), square root of b at 0, 15 and 20 degC, gross and net calorific
/// values at 0, 15, 20 and 25 degC (kJ/mol).
///
/// Read in a public data file (equinor/neqsim, data file for the edition of 1995); hydrogen's
/// square root of b from a second public code (0 and 15 degC) and from memory (20 degC). Checked:
/// net against gross less the vaporisation of the water formed, to 0.06 kJ/mol (trans-2-butene at
/// 15 degC, printed to one decimal, 0.07), and gross against the edition of 2016, to 0.6 kJ/mol.
#[rustfmt::skip]
const ROWS_1995: [Row1995; 55] = [
    row_1995(16.043, [0.049, 0.0447, 0.0436], [892.97, 891.56, 891.09, 890.63], [802.82, 802.69, 802.65, 802.6]), // CH4
    row_1995(30.07, [0.1, 0.0922, 0.0894], [1564.34, 1562.14, 1561.41, 1560.69], [1429.12, 1428.84, 1428.74, 1428.64]), // C2H6
    row_1995(44.097, [0.1453, 0.1338, 0.1288], [2224.01, 2221.1, 2220.13, 2219.17], [2043.71, 2043.37, 2043.23, 2043.11]), // C3H8
    row_1995(58.123, [0.2069, 0.1871, 0.1783], [2883.82, 2879.76, 2878.57, 2877.4], [2658.45, 2657.6, 2657.45, 2657.32]), // nC4H10
    row_1995(58.123, [0.2049, 0.1789, 0.1703], [2874.2, 2870.58, 2869.38, 2868.2], [2648.83, 2648.42, 2648.26, 2648.12]), // iC4H10
    row_1995(72.15, [0.2864, 0.251, 0.2345], [3542.89, 3538.6, 3537.17, 3535.77], [3272.45, 3272.0, 3271.83, 3271.67]), // nC5H12
    row_1995(72.15, [0.251, 0.228, 0.2168], [3535.98, 3531.68, 3530.24, 3528.83], [3265.54, 3265.08, 3264.89, 3264.73]), // iC5H12
    row_1995(72.15, [0.2387, 0.2121, 0.2025], [3521.72, 3517.43, 3516.01, 3514.61], [3251.28, 3250.83, 3250.67, 3250.51]), // neoC5H12
    row_1995(86.177, [0.3286, 0.295, 0.2846], [4203.23, 4198.24, 4196.58, 4194.95], [3887.71, 3887.21, 3887.01, 3886.84]), // nC6H14
    row_1995(86.177, [0.3194, 0.2933, 0.272], [4195.61, 4190.62, 4188.95, 4187.32], [3880.09, 3879.59, 3879.38, 3879.21]), // 2-MP
    row_1995(86.177, [0.3194, 0.2881, 0.2683], [4198.24, 4193.22, 4191.54, 4189.9], [3882.72, 3882.19, 3881.97, 3881.79]), // 3-MP
    row_1995(86.177, [0.2898, 0.2627, 0.255], [4185.84, 4180.83, 4179.15, 4177.52], [3870.32, 3869.8, 3869.59, 3869.41]), // 2,2-DMB
    row_1995(86.177, [0.3, 0.2739, 0.2569], [4193.63, 4188.6, 4186.93, 4185.28], [3878.11, 3877.57, 3877.36, 3877.17]), // 2,3-DMB
    row_1995(100.204, [0.4123, 0.3661, 0.3521], [4862.87, 4857.18, 4855.29, 4853.43], [4502.28, 4501.72, 4501.49, 4501.3]), // nC7H16
    row_1995(114.231, [0.5079, 0.445, 0.4278], [5522.4, 5516.01, 5513.88, 5511.8], [5116.73, 5116.11, 5115.87, 5115.66]), // nC8H18
    row_1995(128.258, [0.6221, 0.5385, 0.5148], [6182.91, 6175.82, 6173.46, 6171.15], [5732.17, 5731.49, 5731.22, 5730.99]), // nC9H20
    row_1995(142.285, [0.7523, 0.645, 0.614], [6842.69, 6834.9, 6832.31, 6829.77], [6346.88, 6346.14, 6345.85, 6345.59]), // nC10H22
    row_1995(28.054, [0.0866, 0.08, 0.0775], [1413.51, 1412.11, 1411.65, 1411.18], [1323.36, 1323.24, 1323.2, 1323.15]), // C2H4
    row_1995(42.081, [0.1378, 0.1265, 0.1225], [2061.57, 2059.43, 2058.72, 2058.02], [1926.35, 1926.13, 1926.05, 1925.97]), // C3H6
    row_1995(56.108, [0.1871, 0.1732, 0.1673], [2721.55, 2718.7, 2717.75, 2716.82], [2541.25, 2540.97, 2540.86, 2540.76]), // 1-C4H8
    row_1995(56.108, [0.1975, 0.1817, 0.1761], [2714.9, 2711.9, 2711.0, 2710.0], [2534.6, 2534.2, 2534.1, 2533.9]), // c-2-C4H8
    row_1995(56.108, [0.1975, 0.1789, 0.1761], [2711.1, 2708.3, 2707.4, 2706.4], [2530.8, 2530.5, 2530.5, 2530.3]), // t-2-C4H8
    row_1995(56.108, [0.1871, 0.1703, 0.1673], [2704.8, 2702.0, 2701.1, 2700.2], [2524.5, 2524.3, 2524.2, 2524.1]), // iC4H8
    row_1995(70.134, [0.249, 0.2258, 0.2191], [3381.29, 3377.75, 3376.57, 3375.42], [3155.92, 3155.59, 3155.45, 3155.34]), // 1-C5H10
    row_1995(40.065, [0.1414, 0.1304, 0.1265], [1945.25, 1943.96, 1943.53, 1943.11], [1855.1, 1855.09, 1855.08, 1855.08]), // C3H4
    row_1995(54.092, [0.2121, 0.1924, 0.1871], [2597.13, 2595.12, 2594.45, 2593.79], [2461.91, 2461.82, 2461.78, 2461.74]), // 1,2-C4H6
    row_1995(54.092, [0.1844, 0.1703, 0.1643], [2544.13, 2542.1, 2541.43, 2540.77], [2408.91, 2408.8, 2408.76, 2408.72]), // 1,3-C4H6
    row_1995(26.038, [0.0949, 0.0837, 0.0837], [1301.86, 1301.37, 1301.21, 1301.05], [1256.79, 1256.94, 1256.98, 1257.03]), // C2H2
    row_1995(70.134, [0.255, 0.2302, 0.2236], [3326.14, 3322.19, 3320.88, 3319.59], [3100.77, 3100.03, 3099.76, 3099.51]), // cC5H10
    row_1995(84.161, [0.313, 0.2811, 0.2702], [3977.04, 3972.46, 3970.93, 3969.44], [3706.6, 3705.86, 3705.59, 3705.34]), // MCP
    row_1995(98.188, [0.3987, 0.3521, 0.3391], [4637.27, 4631.95, 4630.19, 4628.47], [4321.75, 4320.92, 4320.63, 4320.36]), // ECP
    row_1995(84.161, [0.3209, 0.2864, 0.2757], [3960.67, 3956.02, 3954.47, 3952.96], [3690.23, 3689.42, 3689.13, 3688.86]), // cC6H12
    row_1995(98.188, [0.3808, 0.3376, 0.3256], [4609.34, 4604.09, 4602.35, 4600.64], [4293.82, 4293.06, 4292.78, 4292.53]), // MCH
    row_1995(112.215, [0.4796, 0.4195, 0.4025], [5272.88, 5266.95, 5264.98, 5263.05], [4912.29, 4911.49, 4911.19, 4910.92]), // ECH
    row_1995(78.114, [0.3017, 0.272, 0.253], [3305.03, 3302.86, 3302.15, 3301.43], [3169.81, 3169.56, 3169.48, 3169.38]), // C6H6
    row_1995(92.141, [0.3886, 0.3421, 0.3286], [3952.72, 3949.81, 3948.84, 3947.89], [3772.42, 3772.08, 3771.95, 3771.83]), // C7H8
    row_1995(106.167, [0.4858, 0.4207, 0.4037], [4613.14, 4609.53, 4608.32, 4607.15], [4387.77, 4387.37, 4387.2, 4387.07]), // C8H10
    row_1995(106.167, [0.5128, 0.4427, 0.4231], [4602.17, 4598.64, 4597.46, 4596.31], [4376.8, 4376.48, 4376.34, 4376.23]), // oC8H10
    row_1995(32.042, [0.4764, 0.3578, 0.3286], [766.59, 765.09, 764.59, 764.09], [676.44, 676.22, 676.14, 676.06]), // CH3OH
    row_1995(48.109, [0.1673, 0.1517, 0.1483], [1241.63, 1240.28, 1239.83, 1239.39], [1151.48, 1151.41, 1151.39, 1151.36]), // CH3SH
    row_1995(2.0159, [-0.004, -0.0048, -0.0051], [286.63, 286.15, 285.99, 285.83], [241.56, 241.72, 241.76, 241.81]), // H2
    row_1995(18.0153, [0.2646, 0.2345, 0.2191], [45.074, 44.433, 44.224, 44.016], [0.0, 0.0, 0.0, 0.0]), // H2O
    row_1995(34.082, [0.1, 0.1, 0.1], [562.94, 562.38, 562.19, 562.01], [517.87, 517.95, 517.97, 517.99]), // H2S
    row_1995(17.0306, [0.1225, 0.1095, 0.1049], [384.57, 383.51, 383.16, 382.81], [316.96, 316.86, 316.82, 316.79]), // NH3
    row_1995(27.026, [0.3362, 0.2966, 0.2828], [671.9, 671.7, 671.6, 671.5], [649.4, 649.5, 649.5, 649.5]), // HCN
    row_1995(28.01, [0.0265, 0.0224, 0.02], [282.8, 282.91, 282.95, 282.98], [282.8, 282.91, 282.95, 282.98]), // CO
    row_1995(60.076, [0.1225, 0.114, 0.1095], [548.01, 548.15, 548.19, 548.23], [548.01, 548.15, 548.19, 548.23]), // COS
    row_1995(76.143, [0.2145, 0.1949, 0.1871], [1104.06, 1104.32, 1104.41, 1104.49], [1104.06, 1104.32, 1104.41, 1104.49]), // CS2
    row_1995(4.0026, [0.0006, 0.0002, 0.0], [0.0, 0.0, 0.0, 0.0], [0.0, 0.0, 0.0, 0.0]), // He
    row_1995(20.1797, [0.0006, 0.0002, 0.0], [0.0, 0.0, 0.0, 0.0], [0.0, 0.0, 0.0, 0.0]), // Ne
    row_1995(39.948, [0.0316, 0.0283, 0.0265], [0.0, 0.0, 0.0, 0.0], [0.0, 0.0, 0.0, 0.0]), // Ar
    row_1995(28.0135, [0.0224, 0.0173, 0.0173], [0.0, 0.0, 0.0, 0.0], [0.0, 0.0, 0.0, 0.0]), // N2
    row_1995(31.9988, [0.0316, 0.0283, 0.0265], [0.0, 0.0, 0.0, 0.0], [0.0, 0.0, 0.0, 0.0]), // O2
    row_1995(44.01, [0.0819, 0.0748, 0.0728], [0.0, 0.0, 0.0, 0.0], [0.0, 0.0, 0.0, 0.0]), // CO2
    row_1995(64.065, [0.1549, 0.1449, 0.1414], [0.0, 0.0, 0.0, 0.0], [0.0, 0.0, 0.0, 0.0]), // SO2
];
