//! Viscosity and thermal conductivity of water from density and temperature.

use crate::math::{atan, exp, exp_branch_free, pow};

/// Critical temperature in K, IAPWS R12-08 and R15-11.
const CRITICAL_TEMPERATURE: f64 = 647.096;
/// Critical density in kg/m³, IAPWS R12-08 and R15-11.
const CRITICAL_DENSITY: f64 = 322.0;
/// Critical pressure in Pa, IAPWS R12-08 and R15-11.
const CRITICAL_PRESSURE: f64 = 22.064e6;

/// Specific gas constant in J/(kg K) as R15-11 prints it (IF97 uses 461.526).
const GAS_CONSTANT: f64 = 461.518_05;

/// Temperature and density reduced as both releases want them; made once for both.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Reduced {
    /// `T_c / T`.
    inverse_temperature: f64,
    /// `sqrt(T / T_c)`.
    root_temperature: f64,
    /// `rho / rho_c`.
    density: f64,
}

impl Reduced {
    /// From a density in kg/m³ and a temperature in K between 246 K and 1197 K.
    #[inline(always)]
    pub(crate) fn new(density: f64, temperature: f64) -> Self {
        let reduced = temperature * (1.0 / CRITICAL_TEMPERATURE);
        let inverse = CRITICAL_TEMPERATURE / temperature;
        // A polynomial within 1.4e-4 of the root from 0.38 to 1.85, then Heron's rule twice: the
        // library's root is a call, which would stop a loop over this from vectorising.
        let x = reduced;
        let x2 = x * x;
        let guess = (0.221_55 + 1.344_748 * x) + x2 * ((-1.02 + 0.654_195 * x) + x2 * (-0.235_768 + 0.035_141 * x));
        let root = 0.5 * (guess + x / guess);
        let root = 0.5 * (root + x / root);
        Self { inverse_temperature: inverse, root_temperature: root, density: density * (1.0 / CRITICAL_DENSITY) }
    }

    /// Dynamic viscosity in Pa s: IAPWS R12-08 equations 11 and 12, without the critical
    /// enhancement (mu2 = 1), which the release allows for industrial use and which is below its
    /// uncertainty everywhere but next to the critical point.
    #[inline(always)]
    pub(crate) fn viscosity(self) -> f64 {
        let z = self.inverse_temperature;
        let dilute = 1.0e-4 * self.root_temperature / (1.677_52 + z * (2.204_62 + z * (0.636_656_4 - z * 0.241_605)));
        let x = z - 1.0;
        let y = self.density - 1.0;
        let y2 = y * y;
        let y3 = y2 * y;
        let y6 = y3 * y3;
        let h0 = (0.520_094 + 0.222_531 * y) + y2 * (-0.281_378 + 0.161_913 * y - 0.032_537_2 * y2);
        let h1 = (0.085_089_5 + 0.999_115 * y) + y2 * (-0.906_851 + 0.257_399 * y);
        let h2 = -1.083_74 + 1.887_97 * y - 0.772_479 * y2;
        let h3 = (-0.289_555 + 1.266_13 * y - 0.489_837 * y2) + (0.069_845_2 * (y2 * y2) - 0.004_356_73 * y6);
        let h4 = -0.257_040 * y2 + 0.008_721_02 * (y3 * y2);
        let h5 = 0.120_573 * y - 0.000_593_264 * y6;
        let x2 = x * x;
        let sum = (h0 + x * h1) + x2 * ((h2 + x * h3) + x2 * (h4 + x * h5));
        dilute * exp_branch_free(self.density * sum)
    }

    /// Thermal conductivity in W/(m K) without the critical enhancement: IAPWS R15-11 equations
    /// 16 and 17.
    #[inline(always)]
    pub(crate) fn conductivity_background(self) -> f64 {
        let z = self.inverse_temperature;
        let dilute = 1.0e-3 * self.root_temperature
            / (2.443_221e-3 + z * (1.323_095e-2 + z * (6.770_357e-3 + z * (-3.454_586e-3 + z * 4.096_266e-4))));
        let x = z - 1.0;
        let y = self.density - 1.0;
        let y2 = y * y;
        let y4 = y2 * y2;
        let l0 =
            (1.603_973_57 - 0.646_013_523 * y) + y2 * (0.111_443_906 + 0.102_997_357 * y) + y4 * (-0.050_412_363_4 + 0.006_098_592_58 * y);
        let l1 =
            (2.337_718_42 - 2.788_437_78 * y) + y2 * (1.536_161_67 - 0.463_045_512 * y) + y4 * (0.083_282_701_9 - 0.007_192_012_45 * y);
        let l2 = (2.196_505_29 - 4.545_807_85 * y) + y2 * (3.557_772_44 - 1.409_449_78 * y) + y4 * (0.275_418_278 - 0.020_593_881_6 * y);
        let l3 = (-1.210_513_78 + 1.608_129_89 * y) + y2 * (-0.621_178_141 + 0.071_637_322_4 * y);
        let l4 = (-2.720_337_0 + 4.575_863_31 * y) + y2 * (-3.183_692_45 + 1.116_834_8 * y) + y4 * (-0.192_683_05 + 0.012_913_842 * y);
        let x2 = x * x;
        let sum = (l0 + x * l1) + x2 * ((l2 + x * l3) + x2 * l4);
        dilute * exp_branch_free(self.density * sum)
    }

    /// Critical enhancement of the conductivity in W/(m K): IAPWS R15-11 equations 18 to 25, the
    /// reference compressibility by equation 25 and Table 6.
    ///
    /// It is exactly zero where the compressibility is not above the reference one, which in
    /// liquid water is so at every pressure of region 1 below 155 °C (found by a scan of the
    /// region in steps of 1 K from saturation to 100 MPa; the border rises to 216 °C at
    /// 100 MPa); at 200 °C and 10 MPa it adds 0.2 %, at 300 °C and 10 MPa 1.2 %.
    pub(crate) fn conductivity_enhancement(
        self,
        compressibility: f64,
        specific_heat_capacity: f64,
        specific_heat_capacity_at_constant_volume: f64,
        viscosity: f64,
    ) -> f64 {
        let d = self.density;
        // R15-11 Table 6, for the density range in which d lies.
        let a: [f64; 6] = if d <= 0.310_559_006 {
            [
                6.537_868_071_995_16,
                -5.611_499_549_233_48,
                3.396_241_673_613_25,
                -2.274_926_297_308_78,
                10.263_185_466_270_9,
                1.978_150_503_315_19,
            ]
        } else if d <= 0.776_397_516 {
            [
                6.527_177_592_817_99,
                -6.308_169_833_875_75,
                8.083_792_854_925_95,
                -9.822_405_101_976_03,
                12.135_841_379_139_5,
                -5.543_496_645_712_95,
            ]
        } else if d <= 1.242_236_025 {
            [
                5.355_005_298_961_24,
                -3.964_156_899_254_46,
                8.919_902_089_187_95,
                -12.033_872_950_579,
                9.194_948_651_943_02,
                -2.168_662_744_797_12,
            ]
        } else if d <= 1.863_354_037 {
            [
                1.552_259_599_066_81,
                0.464_621_290_821_181,
                8.932_373_748_614_79,
                -11.032_196_006_112_6,
                6.167_809_999_333_6,
                -0.965_458_722_086_812,
            ]
        } else {
            [
                1.119_999_264_199_94,
                0.595_748_562_571_649,
                9.889_525_650_789_2,
                -10.325_505_114_704,
                4.668_612_944_574_14,
                -0.503_243_546_373_828,
            ]
        };
        let [a0, a1, a2, a3, a4, a5] = a;
        let reference = 1.0 / (a0 + d * (a1 + d * (a2 + d * (a3 + d * (a4 + d * a5)))));
        // d(rho)/dp reduced is compressibility * rho * p_c / rho_c.
        let susceptibility = compressibility * d * CRITICAL_PRESSURE;
        let difference = d * (susceptibility - reference * 1.5 * self.inverse_temperature);
        if difference.is_nan() {
            return f64::NAN;
        }
        if difference <= 0.0 {
            return 0.0;
        }
        // Correlation length over 0.4 nm: amplitude 0.13 nm, Gamma_0 0.06, exponents 0.63 / 1.239.
        let y = 0.13 / 0.4 * pow(difference / 0.06, 0.630 / 1.239);
        if y < 1.2e-7 {
            return 0.0;
        }
        let ratio = specific_heat_capacity_at_constant_volume / specific_heat_capacity;
        let z = 2.0 / (core::f64::consts::PI * y)
            * (((1.0 - ratio) * atan(y) + ratio * y) - (1.0 - exp(-1.0 / (1.0 / y + y * y / (3.0 * d * d)))));
        // Amplitude 177.8514 for reduced cp (by R), viscosity (by 1e-6 Pa s), conductivity (1e-3).
        let reduced_heat_capacity = specific_heat_capacity / GAS_CONSTANT;
        177.8514e-3 * d * reduced_heat_capacity / (self.inverse_temperature * viscosity * 1.0e6) * z
    }
}
