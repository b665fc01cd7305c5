//! Liquid water from 0 to 110 °C, closer to IAPWS-95 than IF97 is: for sums that hang on small
//! differences of density or enthalpy, as expansion, static head and heat from flow do.

use super::fluid::FluidState;
use super::transport::Reduced;

/// Lowest temperature in K.
const LOWEST_TEMPERATURE: f64 = 273.15;
/// Highest temperature in K of the release.
pub const HIGHEST_HEATING_TEMPERATURE: f64 = 383.15;
/// Highest pressure in Pa that was compared with IAPWS-95.
const HIGHEST_PRESSURE: f64 = 2.0e6;
/// Reference pressure in Pa.
const REFERENCE_PRESSURE: f64 = 1.0e5;
/// Specific gas constant in J/(kg K) as the release prints it.
const GAS_CONSTANT: f64 = 461.518_05;

/// Properties of liquid water at an absolute pressure in Pa and a temperature in K.
///
/// Density, heat capacity, enthalpy and expansion by IAPWS SR6-08(2011), the supplementary release
/// on liquid water at 0.1 MPa, with its pressure derivatives; viscosity by IAPWS R12-08 and
/// conductivity by R15-11 at that density. Compared with IAPWS-95 from 0 to 110 °C the density is
/// within 1e-7 up to 4 bar, 1e-6 up to 10 bar and 4e-6 up to 20 bar, the heat capacity within 6e-5 and
/// the enthalpy within 3 J/kg, where IF97 may be 1.6e-5 off:
/// 5e-4 of the expansion between 10 and 80 °C, and as much of the heat given off over
/// a drop of 10 K.
///
/// Straight-line like [`liquid`](super::liquid). NaN outside 273.15 K to 383.15 K and 0 to 2 MPa.
#[inline(always)]
pub fn heating_water(pressure: f64, temperature: f64) -> FluidState {
    let inside =
        (pressure > 0.0) & (pressure <= HIGHEST_PRESSURE) & (LOWEST_TEMPERATURE..=HIGHEST_HEATING_TEMPERATURE).contains(&temperature);
    let temperature = if inside { temperature } else { f64::NAN };
    let tau = 0.1 * temperature;
    let a = 10.0 / (593.0 - temperature);
    let b = 10.0 / (temperature - 232.0);
    let (a2, b2) = (a * a, b * b);
    let (a3, b3) = (a2 * a, b2 * b);
    let (a4, b4) = (a2 * a2, b2 * b2);

    // Table 1 of the release; `g` are the terms of the Gibbs energy, `v` of the volume, `w` of its
    // pressure derivative. Each power series is formed once and weighted for the derivatives:
    // by temperature, a^n goes to n a^(n+1) and b^m to -m b^(m+1), divided by 10 K.
    let (g4, g5, g7) = (-1.661_470_539e5 * a4, 2.708_781_640e6 * (a4 * a), -1.557_191_544e8 * (a4 * a3));
    let (k2, k3, k4, k5) = (-8.237_426_256e-1 * b2, 1.908_956_353 * b3, -2.017_597_384 * b4, 8.546_361_348e-1 * (b4 * b));
    let gibbs = (g4 + g5 + g7) + (k2 + k3 + k4 + k5);
    let gibbs_t = a * (4.0 * g4 + 5.0 * g5 + 7.0 * g7) - b * (2.0 * k2 + 3.0 * k3 + 4.0 * k4 + 5.0 * k5);
    let gibbs_tt = a2 * (20.0 * g4 + 30.0 * g5 + 56.0 * g7) + b2 * (6.0 * k2 + 12.0 * k3 + 20.0 * k4 + 30.0 * k5);

    let (v4, v5, v7, v8, v9) = (
        6.744_584_46e3 * a4,
        -2.225_216_04e5 * (a4 * a),
        1.002_312_47e8 * (a4 * a3),
        -1.635_521_18e9 * (a4 * a4),
        8.322_996_58e9 * (a4 * a4 * a),
    );
    let (u1, u2, u3, u4, u5, u6) = (
        5.785_452_92e-3 * b,
        -1.531_956_65e-2 * b2,
        3.113_378_59e-2 * b3,
        -4.235_462_41e-2 * b4,
        3.387_135_07e-2 * (b4 * b),
        -1.199_467_61e-2 * (b4 * b2),
    );
    let volume = 1.937_631_57e-2 + ((v4 + v5) + (v7 + v8 + v9)) + ((u1 + u2 + u3) + (u4 + u5 + u6));
    let volume_t =
        a * (4.0 * v4 + 5.0 * v5 + 7.0 * v7 + 8.0 * v8 + 9.0 * v9) - b * (u1 + 2.0 * u2 + 3.0 * u3 + 4.0 * u4 + 5.0 * u5 + 6.0 * u6);
    let volume_tt = a2 * (20.0 * v4 + 30.0 * v5 + 56.0 * v7 + 72.0 * v8 + 90.0 * v9)
        + b2 * (2.0 * u1 + 6.0 * u2 + 12.0 * u3 + 20.0 * u4 + 30.0 * u5 + 42.0 * u6);

    let (w1, w3, w5, w6, w7) =
        (-7.524_587_8e-6 * a, -1.376_741_8e-2 * a3, 1.062_729_3e1 * (a4 * a), -2.045_779_5e2 * (a4 * a2), 1.203_741_4e3 * (a4 * a3));
    let (z1, z3, z4, z5, z6, z7, z9) = (
        -3.109_147_0e-6 * b,
        2.896_491_9e-5 * b3,
        -1.311_276_3e-4 * b4,
        3.041_045_3e-4 * (b4 * b),
        -3.903_459_4e-4 * (b4 * b2),
        2.340_311_7e-4 * (b4 * b3),
        -4.851_010_1e-5 * (b4 * b4 * b),
    );
    let volume_p = ((w1 + w3 + w5) + (w6 + w7)) + ((z1 + z3 + z4 + z5) + (z6 + z7 + z9));
    let volume_pt =
        a * (w1 + 3.0 * w3 + 5.0 * w5 + 6.0 * w6 + 7.0 * w7) - b * (z1 + 3.0 * z3 + 4.0 * z4 + 5.0 * z5 + 6.0 * z6 + 7.0 * z7 + 9.0 * z9);
    let volume_ptt = a2 * (2.0 * w1 + 12.0 * w3 + 30.0 * w5 + 42.0 * w6 + 56.0 * w7)
        + b2 * (2.0 * z1 + 12.0 * z3 + 20.0 * z4 + 30.0 * z5 + 42.0 * z6 + 56.0 * z7 + 90.0 * z9);

    // Pressure above the reference one, as a multiple of it.
    let above = pressure * (1.0 / REFERENCE_PRESSURE) - 1.0;
    // R T_R / p_0, the unit of volume.
    const VOLUME: f64 = GAS_CONSTANT * 10.0 / REFERENCE_PRESSURE;
    let specific_volume = VOLUME * (volume + above * volume_p);
    let volume_slope = 0.1 * VOLUME * (volume_t + above * volume_pt);
    // h = g + T s, in which the logarithms of the release cancel; then v - T dv/dT over the pressure.
    let enthalpy = GAS_CONSTANT
        * 10.0
        * (-2.452_093_414e2 + 8.983_025_854 * tau + gibbs - tau * gibbs_t
            + above * ((volume - tau * volume_t) + 0.5 * above * (volume_p - tau * volume_pt)));
    let specific_heat_capacity = -GAS_CONSTANT * (-8.983_025_854 + tau * (gibbs_tt + above * (volume_tt + 0.5 * above * volume_ptt)));

    let density = 1.0 / specific_volume;
    let reduced = Reduced::new(density, temperature);
    FluidState {
        density,
        specific_heat_capacity,
        enthalpy,
        expansion_coefficient: volume_slope * density,
        dynamic_viscosity: reduced.viscosity(),
        thermal_conductivity: reduced.conductivity_background(),
    }
}

#[cfg(test)]
mod tests {
    use super::super::tests::assert_close;
    use super::heating_water;
    use flamewright_reference::rows;

    #[test]
    fn against_iapws_95() {
        for row in rows("heat/water_liquid.csv") {
            let got = heating_water(row.number("p_bar_abs") * 1e5, row.number("T_C") + 273.15);
            assert_close(got.density, row.number("rho_kg_m3"), 1e-7, &row.place);
            assert_close(got.specific_heat_capacity, row.number("cp_J_kgK"), 6e-5, &row.place);
            assert!((got.enthalpy - row.number("h_kJ_kg") * 1e3).abs() < 3.0, "{}: {}", row.place, got.enthalpy);
            assert_close(got.dynamic_viscosity, row.number("mu_Pa_s"), 1e-6, &row.place);
            assert_close(got.thermal_conductivity, row.number("k_W_mK"), 1e-6, &row.place);
            let beta = row.number("beta_1_K");
            assert!((got.expansion_coefficient - beta).abs() < 1e-8 + 2e-5 * beta.abs(), "{}: {}", row.place, got.expansion_coefficient);
        }
    }

    #[test]
    fn at_higher_pressure_and_outside() {
        // IAPWS-95 by iapws 1.5.5.
        for (kelvin, density) in [(283.15, 1_000.608_054_3), (333.15, 984.024_665_1), (383.15, 951.844_293_2)] {
            assert_close(heating_water(2e6, kelvin).density, density, 4e-6, "20 bar");
        }
        assert_close(heating_water(1e6, 383.15).density, 951.362_183_39, 1e-6, "10 bar");
        for (pascal, kelvin) in [(2.1e6, 300.0), (0.0, 300.0), (1e5, 383.2), (1e5, 273.1), (f64::NAN, 300.0), (1e5, f64::NAN)] {
            assert!(heating_water(pascal, kelvin).density.is_nan());
        }
    }

    #[test]
    fn derivatives_agree_with_differences_of_the_values() {
        for (pascal, kelvin) in [(1e5, 280.0), (3e5, 340.0), (1e6, 380.0)] {
            let (here, up, down) =
                (heating_water(pascal, kelvin), heating_water(pascal, kelvin + 0.01), heating_water(pascal, kelvin - 0.01));
            assert_close((up.enthalpy - down.enthalpy) / 0.02, here.specific_heat_capacity, 1e-7, "cp");
            assert_close((down.density - up.density) / 0.02 / here.density, here.expansion_coefficient, 1e-5, "beta");
        }
    }
}
