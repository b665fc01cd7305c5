//! Mixtures of water with propylene or ethylene glycol.
//!
//! Polynomials of Å. Melinder, *Properties of Secondary Working Fluids for Indirect Systems*,
//! International Institute of Refrigeration, 2010, in the mass fraction of glycol and the
//! temperature. The coefficients are as CoolProp's incompressible fluids MPG and MEG carry them (the
//! book itself was not read); they are those of glycol and water alone. An inhibited product from a
//! can differs, by more than the fit does: its maker's data sheet goes first.

use crate::Error;
use crate::calculation::{Form, Setting, Settings};
use crate::math::exp_branch_free;

/// Which glycol.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Antifreeze {
    /// Propane-1,2-diol.
    PropyleneGlycol,
    /// Ethane-1,2-diol; poisonous.
    EthyleneGlycol,
}

/// The setting `antifreeze`.
pub(crate) const ANTIFREEZE_SETTING: Setting = Setting {
    name: "antifreeze",
    doc: "Which glycol.",
    form: Form::Choice(&["propylene glycol", "ethylene glycol"]),
    default: Some("propylene glycol"),
};

/// Highest mass fraction of glycol of the fits.
pub const HIGHEST_MASS_FRACTION: f64 = 0.6;
/// Highest temperature of the fits in K; the lowest is the freezing point of the mixture.
pub const HIGHEST_MIXTURE_TEMPERATURE: f64 = 373.15;

/// Properties of a mixture, in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mixture {
    /// Density in kg/m³.
    pub density: f64,
    /// Specific heat capacity in J/(kg K).
    pub specific_heat_capacity: f64,
    /// Specific enthalpy in J/kg above that of the same mixture at 0 °C: the integral of the heat
    /// capacity. For differences at one concentration only.
    pub enthalpy: f64,
    /// Volumetric expansion coefficient in 1/K.
    pub expansion_coefficient: f64,
    /// Dynamic viscosity in Pa s.
    pub dynamic_viscosity: f64,
    /// Thermal conductivity in W/(m K).
    pub thermal_conductivity: f64,
    /// Prandtl number.
    pub prandtl_number: f64,
    /// Temperature in K at which ice begins to form.
    pub freezing_temperature: f64,
}

/// Rows: powers 0 to 3 of the temperature difference; columns: powers 0 to 5 of the difference of
/// the mass fraction (rows end earlier by 0, 1, 2, 3).
struct Surface {
    row0: [f64; 6],
    row1: [f64; 5],
    row2: [f64; 4],
    row3: [f64; 3],
}

impl Surface {
    /// Coefficients of the powers 0 to 3 of the temperature difference at a concentration.
    #[inline(always)]
    fn at(&self, x: f64) -> [f64; 4] {
        let [a0, a1, a2, a3, a4, a5] = self.row0;
        let [b0, b1, b2, b3, b4] = self.row1;
        let [c0, c1, c2, c3] = self.row2;
        let [d0, d1, d2] = self.row3;
        [
            a0 + x * (a1 + x * (a2 + x * (a3 + x * (a4 + x * a5)))),
            b0 + x * (b1 + x * (b2 + x * (b3 + x * b4))),
            c0 + x * (c1 + x * (c2 + x * c3)),
            d0 + x * (d1 + x * d2),
        ]
    }
}

#[inline(always)]
fn cubic([a, b, c, d]: [f64; 4], y: f64) -> f64 {
    a + y * (b + y * (c + y * d))
}

/// One glycol's coefficients.
struct Fit {
    /// Temperature in K and mass fraction from which the differences are taken.
    base_temperature: f64,
    base_fraction: f64,
    /// kg/m³
    density: Surface,
    /// J/(kg K)
    specific_heat_capacity: Surface,
    /// W/(m K)
    conductivity: Surface,
    /// Natural logarithm of the viscosity in mPa s.
    log_viscosity: Surface,
    /// Freezing temperature in K by powers of the fraction's difference.
    freezing: [f64; 6],
    /// Density in kg/m³ of the pure glycol at 20 °C, from memory, for shares by volume.
    pure_density: f64,
}

const PROPYLENE: Fit = Fit {
    base_temperature: 305.8583,
    base_fraction: 0.307_031,
    density: Surface {
        row0: [1018.0, 76.04, -24.98, -155.0, -113.1, 234.2],
        row1: [-0.5406, -0.945, 0.27, 2.829, -2.221],
        row2: [-2.666e-3, 5.541e-3, -4.018e-3, -7.175e-3],
        row3: [1.347e-5, -1.343e-5, 3.376e-5],
    },
    specific_heat_capacity: Surface {
        row0: [3882.0, -1304.0, -1598.0, 353.9, 5000.0, -4959.0],
        row1: [2.699, 5.07, 0.9534, 31.02, -71.35],
        row2: [-1.659e-3, -4.752e-3, 0.1167, -0.295],
        row3: [-1.032e-5, 1.522e-4, -4.87e-4],
    },
    conductivity: Surface {
        row0: [0.4513, -0.4795, 0.2076, -0.09083, -0.05952, 0.2104],
        row1: [7.955e-4, -1.678e-3, 1.563e-3, -2.518e-3, -3.605e-3],
        row2: [3.482e-8, 8.941e-6, -4.615e-5, 6.543e-5],
        row3: [-5.966e-9, 1.493e-8, 9.897e-8],
    },
    log_viscosity: Surface {
        row0: [0.6837, 3.328, 0.5453, -3.9, -1.587, 35.64],
        row1: [-0.03045, -0.03984, -8.6e-4, 0.1054, 0.04475],
        row2: [2.525e-4, 4.332e-4, -1.593e-4, -1.589e-3],
        row3: [-1.399e-6, -1.86e-6, -4.465e-7],
    },
    freezing: [259.9, -66.31, -109.4, -228.3, -340.9, 146.5],
    pure_density: 1036.0,
};

const ETHYLENE: Fit = Fit {
    base_temperature: 304.878,
    base_fraction: 0.308_462,
    density: Surface {
        row0: [1034.0, 131.1, 0.749, -106.2, -96.23, 489.1],
        row1: [-0.4781, -0.6876, 0.7855, 1.229, -7.211],
        row2: [-2.692e-3, 4.805e-3, -3.995e-3, -0.01153],
        row3: [4.725e-6, 1.69e-6, 4.982e-5],
    },
    specific_heat_capacity: Surface {
        row0: [3737.0, -1799.0, -993.3, 2610.0, 1537.0, -16180.0],
        row1: [2.93, 10.46, 3.516, -1.189, -42.72],
        row2: [-4.675e-3, -0.04147, 0.05109, -0.1643],
        row3: [-1.389e-5, 1.847e-5, -7.138e-4],
    },
    conductivity: Surface {
        row0: [0.472, -0.4286, 0.1747, 0.03017, -0.1322, 0.2678],
        row1: [8.903e-4, -1.473e-3, 6.814e-4, -2.412e-3, 2.555e-3],
        row2: [-1.058e-6, 1.059e-5, -3.612e-5, 4.004e-5],
        row3: [-2.789e-9, -1.142e-8, 2.365e-8],
    },
    log_viscosity: Surface {
        row0: [0.4705, 2.471, 0.03328, 1.659, 3.089, -18.65],
        row1: [-0.0255, -0.01171, 0.01086, 3.157e-3, 0.01831],
        row2: [1.782e-4, 1.052e-4, 1.051e-4, 4.063e-4],
        row3: [-7.669e-7, -1.634e-6, -6.475e-6],
    },
    freezing: [257.9, -80.8, -133.4, -72.93, 100.6, 11.4],
    pure_density: 1113.0,
};

/// Density in kg/m³ of water at 20 °C and 1 bar, IAPWS-IF97; for shares by volume.
const WATER_DENSITY_AT_20: f64 = 998.205_49;

impl Antifreeze {
    fn fit(self) -> &'static Fit {
        match self {
            Self::PropyleneGlycol => &PROPYLENE,
            Self::EthyleneGlycol => &ETHYLENE,
        }
    }

    /// Density of the pure glycol at 20 °C in kg/m³, from memory.
    pub fn pure_density(self) -> f64 {
        self.fit().pure_density
    }

    /// The glycol named by the setting `antifreeze`.
    pub(crate) fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        settings.choice(ANTIFREEZE_SETTING.name, &[("propylene glycol", Self::PropyleneGlycol), ("ethylene glycol", Self::EthyleneGlycol)])
    }

    /// Temperature in K at which ice begins to form at a mass fraction of 0 to 0.6; NaN elsewhere.
    ///
    /// The fit is for mixtures: at no glycol it misses 0 °C by up to 0.03 K.
    pub fn freezing_temperature(self, mass_fraction: f64) -> f64 {
        if !(0.0..=HIGHEST_MASS_FRACTION).contains(&mass_fraction) {
            return f64::NAN;
        }
        let fit = self.fit();
        let x = mass_fraction - fit.base_fraction;
        let [a, b, c, d, e, f] = fit.freezing;
        a + x * (b + x * (c + x * (d + x * (e + x * f))))
    }

    /// Mass fraction whose freezing point is at a temperature in K; NaN if none in the fit has it.
    pub fn mass_fraction_for_freezing(self, temperature: f64) -> f64 {
        let (mut low, mut high) = (0.0, HIGHEST_MASS_FRACTION);
        let within = temperature <= self.freezing_temperature(low) && temperature >= self.freezing_temperature(high);
        if !within {
            return f64::NAN;
        }
        // The freezing point falls all the way; 60 halvings are past the last bit.
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if self.freezing_temperature(middle) > temperature { low = middle } else { high = middle }
        }
        0.5 * (low + high)
    }

    /// Mass fraction of a mixture poured together from a volume fraction of pure glycol, both at
    /// 20 °C; the small contraction on mixing does not matter since the parts are measured apart.
    pub fn mass_fraction_of_volume_fraction(self, volume_fraction: f64) -> f64 {
        let glycol = volume_fraction * self.fit().pure_density;
        glycol / (glycol + (1.0 - volume_fraction) * WATER_DENSITY_AT_20)
    }

    /// The reverse of [`Antifreeze::mass_fraction_of_volume_fraction`].
    pub fn volume_fraction_of_mass_fraction(self, mass_fraction: f64) -> f64 {
        let glycol = mass_fraction / self.fit().pure_density;
        glycol / (glycol + (1.0 - mass_fraction) / WATER_DENSITY_AT_20)
    }

    /// Properties at a mass fraction of glycol and a temperature in K.
    ///
    /// NaN outside mass fractions of 0 to 0.6, below the freezing point and above 373.15 K.
    /// Straight-line for a given glycol, so a loop over states vectorises. Pressure has no part
    /// in it: up to 10 bar it moves the density by less than 0.05 %.
    #[inline(always)]
    pub fn mixture(self, mass_fraction: f64, temperature: f64) -> Mixture {
        let fit = self.fit();
        let x = mass_fraction - fit.base_fraction;
        let [a, b, c, d, e, f] = fit.freezing;
        let freezing_temperature = a + x * (b + x * (c + x * (d + x * (e + x * f))));
        let inside = (0.0..=HIGHEST_MASS_FRACTION).contains(&mass_fraction)
            & (freezing_temperature..=HIGHEST_MIXTURE_TEMPERATURE).contains(&temperature);
        let temperature = if inside { temperature } else { f64::NAN };
        let y = temperature - fit.base_temperature;
        let density_row = fit.density.at(x);
        let density = cubic(density_row, y);
        let [_, r1, r2, r3] = density_row;
        let density_slope = r1 + y * (2.0 * r2 + y * (3.0 * r3));
        let heat_row = fit.specific_heat_capacity.at(x);
        let specific_heat_capacity = cubic(heat_row, y);
        let [h0, h1, h2, h3] = heat_row;
        let integral = [h0, h1 / 2.0, h2 / 3.0, h3 / 4.0];
        let zero = 273.15 - fit.base_temperature;
        let enthalpy = y * cubic(integral, y) - zero * cubic(integral, zero);
        let thermal_conductivity = cubic(fit.conductivity.at(x), y);
        let dynamic_viscosity = 1.0e-3 * exp_branch_free(cubic(fit.log_viscosity.at(x), y));
        Mixture {
            density,
            specific_heat_capacity,
            enthalpy,
            expansion_coefficient: -density_slope / density,
            dynamic_viscosity,
            thermal_conductivity,
            prandtl_number: specific_heat_capacity * dynamic_viscosity / thermal_conductivity,
            freezing_temperature,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::water::tests::assert_close;
    use flamewright_reference::rows;

    const BOTH: [Antifreeze; 2] = [Antifreeze::PropyleneGlycol, Antifreeze::EthyleneGlycol];

    #[test]
    fn against_the_reference_table() {
        let file = rows("heat/glycol.csv");
        for row in &file {
            let glycol = if row.text("fluid").starts_with("propylene") { BOTH[0] } else { BOTH[1] };
            let at = |column: &str| row.number(column);
            let state = glycol.mixture(at("mass_fraction"), at("T_C") + 273.15);
            let what = std::format!("{} {} at {}", row.text("fluid"), row.text("mass_fraction"), row.text("T_C"));
            assert_close(state.density, at("rho_kg_m3"), 6e-6, &what);
            assert_close(state.specific_heat_capacity, at("cp_J_kgK"), 2e-6, &what);
            assert_close(state.dynamic_viscosity, at("mu_Pa_s"), 6e-6, &what);
            assert_close(state.thermal_conductivity, at("k_W_mK"), 2e-6, &what);
            assert!((state.freezing_temperature - 273.15 - at("T_freeze_C")).abs() < 6e-5, "{what}");
        }
        assert_eq!(file.len(), 50);
    }

    #[test]
    fn with_no_glycol_it_is_water_within_the_fit() {
        for glycol in BOTH {
            for celsius in [5.0, 20.0, 50.0, 80.0] {
                let mixture = glycol.mixture(0.0, celsius + 273.15);
                let water = super::super::liquid(1e5, celsius + 273.15);
                assert_close(mixture.density, water.density, 2e-3, "density");
                assert_close(mixture.specific_heat_capacity, water.specific_heat_capacity, 1e-2, "cp");
                assert_close(mixture.dynamic_viscosity, water.dynamic_viscosity, 5e-2, "viscosity");
                assert_close(mixture.thermal_conductivity, water.thermal_conductivity, 1e-2, "conductivity");
            }
        }
    }

    #[test]
    fn freezing_point_and_fraction_are_inverse_and_falling() {
        for glycol in BOTH {
            let mut before = f64::INFINITY;
            for step in 0..=60 {
                let fraction = f64::from(step) / 100.0;
                let freezing = glycol.freezing_temperature(fraction);
                assert!(freezing < before);
                before = freezing;
                assert!((glycol.mass_fraction_for_freezing(freezing) - fraction).abs() < 1e-10);
            }
            assert!(glycol.mass_fraction_for_freezing(200.0).is_nan());
            assert!(glycol.mass_fraction_for_freezing(f64::NAN).is_nan());
        }
    }

    #[test]
    fn enthalpy_and_expansion_are_the_slopes_they_should_be() {
        for glycol in BOTH {
            let (here, up, down) = (glycol.mixture(0.3, 330.0), glycol.mixture(0.3, 330.01), glycol.mixture(0.3, 329.99));
            assert_close((up.enthalpy - down.enthalpy) / 0.02, here.specific_heat_capacity, 1e-7, "cp");
            assert_close(-(up.density - down.density) / 0.02 / here.density, here.expansion_coefficient, 1e-6, "beta");
            assert!(glycol.mixture(0.3, 273.15).enthalpy.abs() < 1e-9);
        }
    }

    #[test]
    fn shares_by_volume_and_mass_are_inverse() {
        for glycol in BOTH {
            for share in [0.0, 0.1, 0.4, 1.0] {
                let mass = glycol.mass_fraction_of_volume_fraction(share);
                assert!((glycol.volume_fraction_of_mass_fraction(mass) - share).abs() < 1e-15);
                assert!(mass >= share);
            }
        }
    }

    #[test]
    fn no_formula_no_number() {
        for (fraction, kelvin) in [(-0.01, 300.0), (0.61, 300.0), (0.3, 255.0), (0.3, 374.0), (f64::NAN, 300.0), (0.3, f64::NAN)] {
            assert!(BOTH[0].mixture(fraction, kelvin).density.is_nan());
            assert!(BOTH[1].mixture(fraction, kelvin).dynamic_viscosity.is_nan());
        }
    }
}
