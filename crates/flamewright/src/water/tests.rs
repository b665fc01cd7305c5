//! The water formulas against the verification tables of the releases and against IAPWS-95.

use super::transport::Reduced;
use super::*;
use flamewright_reference::rows;
use std::format;

#[track_caller]
pub(crate) fn assert_close(value: f64, expected: f64, relative: f64, what: &str) {
    let deviation = (value / expected - 1.0).abs();
    assert!(deviation <= relative, "{what}: {value} for {expected}, off by {deviation:e}");
}

/// Half a unit of the last printed digit.
fn half_digit(printed: &str) -> f64 {
    let (mantissa, exponent) = printed.split_once('e').unwrap_or((printed, "0"));
    let decimals = mantissa.split_once('.').map_or(0, |(_, fraction)| fraction.len() as i32);
    0.5 * 10f64.powi(exponent.parse::<i32>().unwrap() - decimals)
}

#[test]
fn verification_values_of_the_releases() {
    let mut tested = 0;
    for row in rows("heat/iapws_check_values.csv") {
        let release = format!("{} {}", row.text("release"), row.text("table"));
        let kelvin = || row.number("T_K");
        let pascal = || row.number("p_MPa") * 1e6;
        let value = if release.contains("region 1") {
            let state = region1(pascal(), kelvin());
            match row.text("property") {
                "v" => state.specific_volume,
                "h" => state.enthalpy / 1e3,
                "s" => state.entropy / 1e3,
                "cp" => state.specific_heat_capacity / 1e3,
                other => panic!("{other}"),
            }
        } else if release.contains("region 4") {
            match row.text("property") {
                "psat" => saturation_pressure(kelvin()) / 1e6,
                "Tsat" => saturation_temperature(pascal()),
                other => panic!("{other}"),
            }
        } else if release.contains("R12-08") {
            Reduced::new(row.number("rho_kg_m3"), kelvin()).viscosity() * 1e6
        } else if release.contains("R15-11") {
            Reduced::new(row.number("rho_kg_m3"), kelvin()).conductivity_background() * 1e3
        } else {
            continue; // steam (region 2) and the scientific formulation are not ours
        };
        // To the last printed digit, with the slack of one unit in the file's own rounding where
        // it drops trailing zeros (v at 500 K is printed there as 0.001202418).
        let printed = row.text("value_published");
        let allowed = half_digit(printed) * 1.02;
        let published = row.number("value_published");
        assert!((value - published).abs() <= allowed, "{release} {}: {value} for {printed}", row.text("property"));
        tested += 1;
    }
    assert_eq!(tested, 26);
}

#[test]
fn enhancement_and_other_derivatives_against_an_independent_code() {
    // Computed with iapws 1.5.5 (IAPWS97): T, p, rho, cp, cv, speed of sound, expansion, viscosity,
    // conductivity with its critical enhancement, entropy.
    let cases = [
        (
            473.15,
            10e6,
            870.9465457010842,
            4447.220094237461,
            3310.836529887948,
            1362.2996578773348,
            0.0013184566185097484,
            0.00013670858867080826,
            0.6669786768425126,
            2317.6828433981447,
        ),
        (
            573.15,
            10e6,
            715.2895586329864,
            5681.6319856887185,
            3049.605458175095,
            922.7553988300152,
            0.0031698529060268927,
            8.643358791834052e-05,
            0.555065006196188,
            3248.366132830791,
        ),
        (
            603.15,
            15e6,
            649.618536545549,
            6828.916959720494,
            3036.725226913343,
            762.354566038125,
            0.004932290401257821,
            7.577113925683423e-05,
            0.507332678392102,
            3534.2852929722284,
        ),
        (
            620.0,
            100e6,
            766.4099866100134,
            4591.439135124742,
            2886.659653750797,
            1243.9958438090605,
            0.001681109318048897,
            9.669009081464817e-05,
            0.6122177185317137,
            3374.4806449079645,
        ),
    ];
    for (kelvin, pascal, density, cp, cv, sound, expansion, viscosity, conductivity, entropy) in cases {
        let parts = region1(pascal, kelvin);
        let whole = hot_liquid(pascal, kelvin);
        assert_close(whole.density, density, 1e-12, "density");
        assert_close(whole.specific_heat_capacity, cp, 1e-12, "cp");
        assert_close(parts.specific_heat_capacity_at_constant_volume, cv, 1e-11, "cv");
        assert_close(parts.speed_of_sound_squared, sound * sound, 1e-11, "speed of sound");
        assert_close(whole.expansion_coefficient, expansion, 1e-11, "expansion");
        assert_close(whole.dynamic_viscosity, viscosity, 1e-11, "viscosity");
        assert_close(whole.thermal_conductivity, conductivity, 1e-9, "conductivity");
        assert_close(whole.entropy, entropy, 1e-12, "entropy");
    }
}

#[test]
fn liquid_against_iapws_95() {
    let file = rows("heat/water_liquid.csv");
    for row in &file {
        let at = |column: &str| row.number(column);
        let state = liquid(at("p_bar_abs") * 1e5, at("T_C") + 273.15);
        let what = format!("{} bar, {} C", row.text("p_bar_abs"), row.text("T_C"));
        // The same formulation, to the digits printed.
        assert_close(state.density, at("rho_IF97_kg_m3"), 6e-8, &what);
        assert_close(state.specific_heat_capacity, at("cp_IF97_J_kgK"), 6e-8, &what);
        assert_close(state.enthalpy, at("h_IF97_kJ_kg") * 1e3, 6e-8, &what);
        // The scientific formulation, at the tolerances of the reference's README.
        assert_close(state.density, at("rho_kg_m3"), 2e-5, &what);
        assert_close(state.specific_heat_capacity, at("cp_J_kgK"), 6e-4, &what);
        assert_close(state.dynamic_viscosity, at("mu_Pa_s"), 1e-3, &what);
        assert_close(state.thermal_conductivity, at("k_W_mK"), 1e-3, &what);
        assert_close(state.prandtl_number, at("Pr"), 1e-3, &what);
        assert!((state.enthalpy - at("h_kJ_kg") * 1e3).abs() <= 100.0, "{what}");
        let expansion = at("beta_1_K");
        assert!((state.expansion_coefficient - expansion).abs() <= (0.01 * expansion.abs()).max(1e-6), "{what}");
    }
    assert_eq!(file.len(), 46);
}

#[test]
fn saturation_line() {
    for row in rows("heat/water_saturation.csv") {
        let kelvin = row.number("T_C") + 273.15;
        assert_close(saturation_pressure(kelvin), row.number("psat_Pa_IF97_R4"), 1e-7, row.text("T_C"));
        assert_close(saturation_pressure(kelvin), row.number("psat_Pa_IAPWS95"), 1e-4, row.text("T_C"));
        let liquid = liquid(saturation_pressure(kelvin), kelvin);
        assert_close(liquid.density, row.number("rho_sat_liq_kg_m3"), 2e-5, row.text("T_C"));
    }
}

#[test]
fn derivatives_agree_with_differences_of_the_values() {
    for &(pascal, kelvin) in &[(1.5e5, 280.0), (3e5, 340.0), (1e6, 400.0), (5e7, 420.0)] {
        let (dt, dp) = (1e-2, 1e3);
        let here = liquid(pascal, kelvin);
        let (warmer, colder) = (liquid(pascal, kelvin + dt), liquid(pascal, kelvin - dt));
        let (above, below) = (liquid(pascal + dp, kelvin), liquid(pascal - dp, kelvin));
        let cp = (warmer.enthalpy - colder.enthalpy) / (2.0 * dt);
        let beta = -(warmer.density - colder.density) / (2.0 * dt * here.density);
        let kappa = (above.density - below.density) / (2.0 * dp * here.density);
        assert_close(here.specific_heat_capacity, cp, 1e-7, "cp");
        assert_close(here.expansion_coefficient, beta, 1e-5, "beta");
        assert_close(here.compressibility, kappa, 1e-5, "kappa");
        // T ds = dh at constant pressure.
        assert_close((warmer.entropy - colder.entropy) / (2.0 * dt) * kelvin, cp, 1e-7, "entropy");
    }
}

#[test]
fn hot_and_ordinary_form_agree_to_the_bit_and_join() {
    let mut kelvin = 273.15;
    while kelvin < 423.15 {
        assert_eq!(liquid(1e6, kelvin), hot_liquid(1e6, kelvin));
        kelvin += 1.3;
    }
    let (below, above) = (hot_liquid(1e6, 423.15), hot_liquid(1e6, 423.15 + 1e-9));
    assert_close(above.thermal_conductivity, below.thermal_conductivity, 1e-10, "join");
}

#[test]
fn the_enhancement_is_zero_wherever_the_ordinary_form_holds() {
    for step in 0..=150 {
        let kelvin = 273.15 + f64::from(step);
        for pascal in [saturation_pressure(kelvin).max(1e3), 1e5, 1e6, 1e7, 5e7, 1e8] {
            let t = region1(pascal, kelvin);
            let reduced = Reduced::new(1.0 / t.specific_volume, kelvin);
            let enhancement = reduced.conductivity_enhancement(
                t.compressibility,
                t.specific_heat_capacity,
                t.specific_heat_capacity_at_constant_volume,
                reduced.viscosity(),
            );
            assert_eq!(enhancement, 0.0, "{pascal} Pa, {kelvin} K");
        }
    }
}

#[test]
fn the_branch_free_exponential() {
    let mut x = -60.0;
    while x < 60.0 {
        let (ours, theirs) = (crate::math::exp_branch_free(x), crate::math::exp(x));
        assert!((ours / theirs - 1.0).abs() <= 4.5e-16, "{x}: {ours} {theirs}");
        x += 0.003_7;
    }
    assert!(crate::math::exp_branch_free(f64::NAN).is_nan());
}

#[test]
fn no_formula_no_number() {
    for (pascal, kelvin) in [
        (1e5, 273.14),
        (1e5, 423.16),
        (0.0, 300.0),
        (-1e5, 300.0),
        (1.01e8, 300.0),
        (f64::NAN, 300.0),
        (1e5, f64::NAN),
        (f64::INFINITY, 300.0),
        (1e5, f64::INFINITY),
        (1e5, 0.0),
    ] {
        let state = liquid(pascal, kelvin);
        for value in [
            state.density,
            state.enthalpy,
            state.specific_heat_capacity,
            state.dynamic_viscosity,
            state.thermal_conductivity,
            state.prandtl_number,
            state.expansion_coefficient,
        ] {
            assert!(value.is_nan(), "{pascal} Pa, {kelvin} K: {state:?}");
        }
    }
    assert!(hot_liquid(1e7, 623.16).density.is_nan());
}
