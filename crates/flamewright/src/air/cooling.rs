//! How flue gas cools on its way up a chimney, and how warm the inner wall stays.
//!
//! The form is that of EN 13384-1 (cooling number, internal and external coefficient, temperatures
//! at constant surroundings). The standard was not opened: the form and the two property lines of
//! [`flue_gas_viscosity`] and [`flue_gas_conductivity`] are from memory. The internal coefficient is
//! Gnielinski's published equation for gases.

use crate::convection::friction::{LAMINAR_BELOW, colebrook, laminar};
use crate::math::{exp, ln, pow};
use core::f64::consts::PI;

/// Dynamic viscosity of flue gas, Pa s, at a temperature in kelvin; 0 to 500 degC.
///
/// Quadratic of EN 13384-1, from memory.
#[must_use]
pub fn flue_gas_viscosity(temperature: f64) -> f64 {
    let celsius = temperature - 273.15;
    15e-6 + celsius * (47e-9 - celsius * 20e-12)
}

/// Thermal conductivity of flue gas, W/(m K), at a temperature in kelvin; 0 to 500 degC.
///
/// Straight line of EN 13384-1, from memory.
#[must_use]
pub fn flue_gas_conductivity(temperature: f64) -> f64 {
    0.0223 + 0.000_065 * (temperature - 273.15)
}

/// Nusselt number of gas in turbulent flow in a pipe of limited length.
///
/// Gnielinski 1975, Forsch. Ingenieurwes. 41, 8: `0.0214 (Re^0.8 - 100) Pr^0.4 (1 + (D/L)^(2/3))`,
/// for Prandtl numbers of 0.5 to 1.5. Multiplied by (rough factor / smooth factor)^0.67 for the
/// roughness of the wall, as EN 13384-1 does (from memory). Below Re 2300 the value at 2300 serves,
/// which keeps the gas cooling fast and so errs toward condensation.
#[must_use]
pub fn nusselt(reynolds: f64, prandtl: f64, diameter_over_length: f64, relative_roughness: f64) -> f64 {
    let reynolds = reynolds.max(LAMINAR_BELOW) + 0.0 * reynolds;
    let roughened = colebrook(reynolds, relative_roughness) / colebrook(reynolds, 0.0);
    0.0214 * (pow(reynolds, 0.8) - 100.0) * pow(prandtl, 0.4) * (1.0 + pow(diameter_over_length, 2.0 / 3.0)) * pow(roughened, 0.67)
}

/// Friction factor of a flue: Colebrook's, or the laminar one where it is the larger.
///
/// A chimney rarely runs laminar; below Re 2300 the Colebrook value at 2300 is kept unless the
/// laminar value exceeds it, so that the draught is never overstated.
#[must_use]
pub fn flue_friction_factor(reynolds: f64, relative_roughness: f64) -> f64 {
    let turbulent = colebrook(reynolds.max(LAMINAR_BELOW) + 0.0 * reynolds, relative_roughness);
    turbulent.max(laminar(reynolds)) + 0.0 * turbulent
}

/// A chimney or flue pipe of one construction, with flue gas entering it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chimney {
    /// Mass flow of flue gas, kg/s.
    pub mass_flow: f64,
    /// Specific heat capacity of the flue gas at constant pressure, J/(kg K).
    pub heat_capacity: f64,
    /// Temperature at the inlet, K.
    pub inlet_temperature: f64,
    /// Temperature of the air around it, K.
    pub ambient_temperature: f64,
    /// Bore (hydraulic diameter), m.
    pub bore: f64,
    /// Outside diameter, m.
    pub outside_diameter: f64,
    /// Length, m.
    pub length: f64,
    /// Roughness of the inner wall, m.
    pub roughness: f64,
    /// Thermal resistance of the wall, m2 K/W on the inner surface.
    pub thermal_resistance: f64,
    /// Coefficient of heat transfer at the outside, W/(m2 K).
    pub external_coefficient: f64,
    /// Factor for a wall that has not reached its final temperature; 1 in equilibrium.
    pub instability_factor: f64,
}

/// What the flue gas and the wall come to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cooling {
    /// Reynolds number at the mean temperature.
    pub reynolds: f64,
    /// Friction factor at the mean temperature.
    pub friction_factor: f64,
    /// Internal coefficient of heat transfer, W/(m2 K).
    pub internal_coefficient: f64,
    /// Coefficient of heat transmission on the inner surface, W/(m2 K), with the instability factor.
    pub transmission: f64,
    /// Cooling number: heat lost per kelvin over heat carried per kelvin.
    pub cooling_number: f64,
    /// Mean temperature of the flue gas, K.
    pub mean_temperature: f64,
    /// Temperature at the outlet, K.
    pub outlet_temperature: f64,
    /// Inner wall temperature at the outlet in equilibrium, K.
    pub outlet_wall_temperature: f64,
    /// Fall from flue gas to inner wall as a share of the fall from flue gas to surroundings, in
    /// equilibrium.
    pub wall_share: f64,
}

/// Cools the flue gas along the chimney; properties are taken at the mean temperature, which is
/// found by putting it back into itself.
#[must_use]
pub fn cooling(chimney: &Chimney) -> Cooling {
    // The properties move by a few tenths of a percent per ten kelvin, so each turn gains two to
    // three digits.
    let mut cooled = cooling_at(chimney, chimney.inlet_temperature);
    for _ in 0..9 {
        cooled = cooling_at(chimney, cooled.mean_temperature);
    }
    cooled
}

/// Cooling with the properties of the flue gas at a given temperature.
fn cooling_at(c: &Chimney, mean: f64) -> Cooling {
    let above = c.inlet_temperature - c.ambient_temperature;
    let circumference = PI * c.bore;
    let viscosity = flue_gas_viscosity(mean);
    let conductivity = flue_gas_conductivity(mean);
    let reynolds = 4.0 * c.mass_flow / (circumference * viscosity);
    let relative_roughness = c.roughness / c.bore;
    let prandtl = viscosity * c.heat_capacity / conductivity;
    let internal_coefficient = nusselt(reynolds, prandtl, c.bore / c.length, relative_roughness) * conductivity / c.bore;
    let beyond = c.thermal_resistance + c.bore / (c.external_coefficient * c.outside_diameter);
    let transmission = 1.0 / (1.0 / internal_coefficient + c.instability_factor * beyond);
    let cooling_number = circumference * transmission * c.length / (c.mass_flow * c.heat_capacity);
    let outlet_temperature = c.ambient_temperature + above * exp(-cooling_number);
    let wall_share = 1.0 / (1.0 + internal_coefficient * beyond);
    Cooling {
        reynolds,
        friction_factor: flue_friction_factor(reynolds, relative_roughness),
        internal_coefficient,
        transmission,
        cooling_number,
        mean_temperature: c.ambient_temperature + above * mean_share(cooling_number),
        outlet_temperature,
        outlet_wall_temperature: outlet_temperature - wall_share * (outlet_temperature - c.ambient_temperature),
        wall_share,
    }
}

/// Mean over inlet excess temperature, `(1 - exp(-K)) / K`; 1 at K = 0.
#[must_use]
pub fn mean_share(cooling_number: f64) -> f64 {
    if cooling_number == 0.0 { 1.0 } else { -crate::math::expm1(-cooling_number) / cooling_number }
}

/// Length from the inlet at which the inner wall falls to a temperature (the dew point), m.
///
/// Zero if the wall is colder from the start, infinite if it stays warmer however long the chimney.
#[must_use]
pub fn length_to_wall_temperature(chimney: &Chimney, cooled: &Cooling, wall_temperature: f64) -> f64 {
    let at_inlet = (chimney.inlet_temperature - chimney.ambient_temperature) * (1.0 - cooled.wall_share);
    let wanted = wall_temperature - chimney.ambient_temperature;
    if wanted.is_nan() || at_inlet.is_nan() {
        f64::NAN
    } else if wanted <= 0.0 {
        f64::INFINITY
    } else if wanted >= at_inlet {
        0.0
    } else {
        chimney.length * ln(at_inlet / wanted) / cooled.cooling_number
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// An invented lined chimney behind a 15 kW boiler.
    fn example() -> Chimney {
        Chimney {
            mass_flow: 0.0105,
            heat_capacity: 1080.0,
            inlet_temperature: 393.15,
            ambient_temperature: 288.15,
            bore: 0.125,
            outside_diameter: 0.225,
            length: 6.0,
            roughness: 0.001,
            thermal_resistance: 0.12,
            external_coefficient: 8.0,
            instability_factor: 1.0,
        }
    }

    #[test]
    fn outlet_and_mean_follow_from_a_march_up_the_chimney() {
        let c = example();
        let got = cooling(&c);
        let steps = 20_000;
        let (mut temperature, mut sum) = (c.inlet_temperature, 0.0);
        let per_step = PI * c.bore * c.length / f64::from(steps) * got.transmission / (c.mass_flow * c.heat_capacity);
        for _ in 0..steps {
            let middle = temperature - 0.5 * per_step * (temperature - c.ambient_temperature);
            sum += middle;
            temperature -= per_step * (middle - c.ambient_temperature);
        }
        assert!((temperature - got.outlet_temperature).abs() < 1e-6);
        assert!((sum / f64::from(steps) - got.mean_temperature).abs() < 1e-6);
        // Heat given up by the gas is heat passed through the wall.
        let passed = got.transmission * PI * c.bore * c.length * (got.mean_temperature - c.ambient_temperature);
        let given = c.mass_flow * c.heat_capacity * (c.inlet_temperature - got.outlet_temperature);
        assert!((passed / given - 1.0).abs() < 1e-10);
    }

    #[test]
    fn figures_are_those_of_a_sum_by_hand() {
        // Properties at 376.85 K: viscosity 19.66e-6, conductivity 0.02904 (the two lines, by hand).
        assert!((flue_gas_viscosity(373.15) - 19.5e-6).abs() < 1e-12);
        assert!((flue_gas_conductivity(373.15) - 0.0288).abs() < 1e-12);
        let got = cooling(&example());
        // 4 m / (pi D mu): 4 * 0.0105 / (pi * 0.125 * mu) with mu at the mean temperature.
        let by_hand = 4.0 * 0.0105 / (core::f64::consts::PI * 0.125 * flue_gas_viscosity(got.mean_temperature));
        assert!((got.reynolds / by_hand - 1.0).abs() < 1e-9);
        assert!(got.outlet_wall_temperature < got.outlet_temperature && got.outlet_temperature < got.mean_temperature);
    }

    /// Gnielinski's equation at Re 10 000, Pr 0.7, long pipe: 0.0214 (1584.9 - 100) 0.8670 = 27.55.
    #[test]
    fn nusselt_number_of_a_smooth_long_pipe() {
        assert!((nusselt(1e4, 0.7, 0.0, 0.0) - 27.55).abs() < 0.01);
        assert_eq!(nusselt(500.0, 0.7, 0.1, 0.001), nusselt(2300.0, 0.7, 0.1, 0.001));
        assert!(nusselt(f64::NAN, 0.7, 0.1, 0.001).is_nan());
    }

    #[test]
    fn no_loss_through_a_perfect_wall_and_none_to_equal_surroundings() {
        let perfect = cooling(&Chimney { thermal_resistance: 1e12, ..example() });
        assert!((perfect.outlet_temperature - 393.15).abs() < 1e-6);
        assert!((perfect.outlet_wall_temperature - 393.15).abs() < 1e-6);
        let level = cooling(&Chimney { ambient_temperature: 393.15, ..example() });
        assert_eq!(level.mean_temperature, 393.15);
        assert!(cooling(&Chimney { mass_flow: f64::NAN, ..example() }).outlet_temperature.is_nan());
    }

    #[test]
    fn the_wall_reaches_the_dew_point_where_it_should() {
        let c = example();
        let got = cooling(&c);
        let at_outlet = length_to_wall_temperature(&c, &got, got.outlet_wall_temperature);
        assert!((at_outlet / c.length - 1.0).abs() < 1e-10);
        assert_eq!(length_to_wall_temperature(&c, &got, 500.0), 0.0);
        assert_eq!(length_to_wall_temperature(&c, &got, 280.0), f64::INFINITY);
        assert!(length_to_wall_temperature(&c, &got, f64::NAN).is_nan());
    }

    /// An eighth to the two thirds is a quarter.
    #[test]
    fn a_short_pipe_has_a_larger_nusselt_number() {
        assert!((nusselt(1e4, 0.7, 0.125, 0.0) / nusselt(1e4, 0.7, 0.0, 0.0) - 1.25).abs() < 1e-12);
    }

    /// Four resistances in series, each by its own area, all on the bore.
    #[test]
    fn the_outside_film_counts_by_the_outside_area() {
        let c = example();
        let got = cooling(&c);
        let beyond = 0.12 + 0.125 / (8.0 * 0.225);
        assert!((1.0 / got.transmission - (1.0 / got.internal_coefficient + beyond)).abs() < 1e-12);
        assert!((got.wall_share - 1.0 / (1.0 + got.internal_coefficient * beyond)).abs() < 1e-12);
    }
}
