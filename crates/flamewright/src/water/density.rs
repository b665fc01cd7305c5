//! Density of liquid water where parts in a million count: expansion and static head.

/// Density of liquid water in kg/m³ at an absolute pressure in Pa and a temperature in K.
///
/// IAPWS SR6-08(2011), supplementary release on liquid water at 0.1 MPa, equations for the volume
/// and its pressure derivative. Within 1e-7 of IAPWS-95 up to 4 bar and 1e-6 up to 10 bar (compared
/// from 0 to 110 °C), where IF97 may be 1.6e-5 off: that would be 5e-4 of the expansion between 10
/// and 80 °C. NaN outside 273.15 K to 383.15 K and 0 to 1 MPa.
#[inline(always)]
pub fn density(pressure: f64, temperature: f64) -> f64 {
    let inside = (pressure > 0.0) & (pressure <= 1.0e6) & (temperature >= 273.15) & (temperature <= 383.15);
    let temperature = if inside { temperature } else { f64::NAN };
    const REFERENCE_PRESSURE: f64 = 1.0e5;
    // R T_R / p_0 with R = 461.51805 J/(kg K) and T_R = 10 K.
    const VOLUME: f64 = 461.518_05 * 10.0 / REFERENCE_PRESSURE;
    let a = 10.0 / (593.0 - temperature);
    let b = 10.0 / (temperature - 232.0);
    let (a2, b2) = (a * a, b * b);
    let (a4, b4) = (a2 * a2, b2 * b2);
    let at_reference = 1.937_631_57e-2
        + a4 * (6.744_584_46e3 + a * (-2.225_216_04e5 + a2 * (1.002_312_47e8 + a * (-1.635_521_18e9 + a * 8.322_996_58e9))))
        + b * (5.785_452_92e-3
            + b * (-1.531_956_65e-2 + b * (3.113_378_59e-2 + b * (-4.235_462_41e-2 + b * (3.387_135_07e-2 - b * 1.199_467_61e-2)))));
    let slope = a * (-7.524_587_8e-6 + a2 * (-1.376_741_8e-2 + a2 * (1.062_729_3e1 + a * (-2.045_779_5e2 + a * 1.203_741_4e3))))
        + b * (-3.109_147_0e-6
            + b2 * (2.896_491_9e-5 + b * (-1.311_276_3e-4 + b * (3.041_045_3e-4 + b * (-3.903_459_4e-4 + b * 2.340_311_7e-4)))))
        - 4.851_010_1e-5 * (b4 * b4 * b);
    1.0 / (VOLUME * (at_reference + slope * (pressure * (1.0 / REFERENCE_PRESSURE) - 1.0)))
}

#[cfg(test)]
mod tests {
    use super::super::tests::assert_close;
    use super::density;
    use flamewright_reference::rows;

    #[test]
    fn against_iapws_95() {
        for row in rows("heat/water_liquid.csv") {
            let computed = density(row.number("p_bar_abs") * 1e5, row.number("T_C") + 273.15);
            assert_close(computed, row.number("rho_kg_m3"), 1e-7, &row.place);
        }
        // iapws 1.5.5, IAPWS-95 at 10 bar and 110 °C.
        assert_close(density(1e6, 383.15), 951.362_183_4, 1e-6, "10 bar");
        assert!(density(1.01e6, 300.0).is_nan() && density(1e5, 383.2).is_nan() && density(1e5, 273.1).is_nan());
    }
}
