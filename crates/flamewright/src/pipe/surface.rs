//! The heat balance of a pipe's outer surface: what comes through the wall and the insulation
//! leaves by convection and by radiation.
//!
//! [`still_air_balance`] is the quick form for a horizontal pipe by Churchill and Chu;
//! [`balance`] serves every correlation with its formula as printed, and is the check of the first.

use super::math::natural_logarithm;
use crate::air::properties::{HIGHEST_TEMPERATURE, LOWEST_TEMPERATURE, STANDARD_ATMOSPHERE, polynomial, scaled_temperature};
use crate::convection::outside::{OutsideAir, OutsideFilm};
use crate::convection::radiation::{STEFAN_BOLTZMANN, radiated};
use crate::root::rising_root;
use core::f64::consts::PI;

/// The room as the outer surface meets it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surroundings {
    /// Air temperature in K.
    pub air_temperature: f64,
    /// Mean temperature in K of the surfaces the pipe radiates to.
    pub radiant_temperature: f64,
    /// Emissivity of the outer surface, 0 to 1.
    pub emissivity: f64,
    /// Absolute pressure of the air in Pa.
    pub pressure: f64,
}

/// What the outer surface gives off once the balance is struck.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SurfaceBalance {
    /// Temperature of the outer surface in K.
    pub temperature: f64,
    /// Heat given off by convection in W per metre of pipe; negative where the air is warmer.
    pub convection: f64,
    /// Heat given off by radiation in W per metre of pipe.
    pub radiation: f64,
    /// Coefficient of convection in W/(m² K).
    pub coefficient: f64,
}

impl SurfaceBalance {
    /// Heat given off in W per metre of pipe.
    #[inline(always)]
    pub fn loss(&self) -> f64 {
        self.convection + self.radiation
    }

    const NONE: Self = Self { temperature: f64::NAN, convection: f64::NAN, radiation: f64::NAN, coefficient: f64::NAN };
}

/// Resistance in m K/W, over a metre of pipe, of a cylindrical shell of one conductivity in W/(m K).
///
/// A shell of no thickness has no resistance, whatever its conductivity.
#[inline(always)]
pub fn shell_resistance(inner_diameter: f64, outer_diameter: f64, conductivity: f64) -> f64 {
    let possible = (inner_diameter > 0.0) & (outer_diameter >= inner_diameter) & (conductivity > 0.0);
    let resistance = natural_logarithm(outer_diameter / inner_diameter) / (2.0 * PI * conductivity);
    if possible { resistance } else { f64::NAN }
}

// With the air's properties at film temperature folded in, Churchill and Chu's equation reads
//   coefficient * diameter = (STILL + MOVING * (diameter^3 difference (p/p0)^2)^(1/6))^2
// where STILL = 0.60 sqrt(k) and
//   MOVING = 0.387 sqrt(k) (g Pr/(T nu^2))^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27)
// depend on film temperature alone. Least-squares polynomials through both at 101 325 Pa, in the
// variable of the air's own polynomials; largest relative departure 2.2e-9 and 2e-10.
const STILL: [f64; 10] = [
    1.037020996320861e-01,
    1.534315843975748e-02,
    -2.054000098806275e-03,
    4.348083035355451e-04,
    -1.032677983909097e-04,
    2.603070264686009e-05,
    -6.687613924838160e-06,
    1.895718103201020e-06,
    -7.557043039535404e-07,
    2.408765942389779e-07,
];
const MOVING: [f64; 12] = [
    1.054176660620453e+00,
    -1.327911017208656e-01,
    3.305961270693330e-02,
    -8.693568337970463e-03,
    2.468206514694467e-03,
    -8.151138411765834e-04,
    2.684113837252234e-04,
    -7.916120597158732e-05,
    2.342689838901426e-05,
    -7.439359577437259e-06,
    3.588839350681532e-06,
    -1.201310624061952e-06,
];
// Their slopes per kelvin, to 1e-3 and 6e-3 of themselves: good enough to steer Newton's method.
const STILL_SLOPE: [f64; 4] = [1.225957488631948e-04, -3.274252765151947e-05, 1.159105683041605e-05, -3.769305545526473e-06];
const MOVING_SLOPE: [f64; 4] = [-1.057455465889278e-03, 5.241303688507285e-04, -2.459611433853954e-04, 9.743197909023507e-05];

/// A first, rough sixth root of a number of at least 0: within 4 % from 1e-30 to 1e30.
#[inline(always)]
fn rough_sixth_root(value: f64) -> f64 {
    // The bits of a float are nearly the logarithm of its value; dividing them by six divides that.
    const BIAS: u32 = 127 << 23;
    const CENTRING: u32 = 320_000;
    f64::from(f32::from_bits((value as f32).to_bits() / 6 + (BIAS - BIAS / 6) - CENTRING))
}

/// Heat balance of a horizontal pipe in still air, Churchill & Chu 1975.
///
/// * `inner_temperature` in K: where the heat comes from, water or pipe wall.
/// * `resistance` in m K/W: between that and the outer surface; 0 if the surface has that temperature.
/// * `diameter` in m: of the outer surface.
///
/// Straight-line arithmetic with a fixed number of steps and no elementary function, so that a
/// loop over pipes runs in vector lanes. Over the range of the air's properties (film from -50 to
/// 200 degC) it stays within 1e-7 K of [`balance`]. NaN for impossible input.
#[inline(always)]
pub fn still_air_balance(inner_temperature: f64, resistance: f64, diameter: f64, surroundings: &Surroundings) -> SurfaceBalance {
    let Surroundings { air_temperature, radiant_temperature, emissivity, pressure } = *surroundings;
    let possible = (0.0..f64::INFINITY).contains(&resistance)
        & (diameter > 0.0)
        & (diameter < f64::INFINITY)
        & (0.0..=1.0).contains(&emissivity)
        & (pressure > 0.0)
        & (pressure < f64::INFINITY)
        & (radiant_temperature > 0.0)
        & (radiant_temperature < f64::INFINITY)
        & (inner_temperature > 0.0)
        & (inner_temperature < f64::INFINITY);

    let radiating = PI * diameter * emissivity * STEFAN_BOLTZMANN;
    let radiant_squared = radiant_temperature * radiant_temperature;
    let radiant_fourth = radiant_squared * radiant_squared;
    let density_ratio = pressure / STANDARD_ATMOSPHERE;
    let size = diameter * diameter * diameter * density_ratio * density_ratio; // m³

    // At air temperature only radiation passes; on which side of it the surface settles follows.
    let air_squared = air_temperature * air_temperature;
    let air_fourth = air_squared * air_squared;
    let drive = inner_temperature - air_temperature - resistance * radiating * (air_fourth - radiant_fourth);
    let side = if drive < 0.0 { -1.0 } else { 1.0 };
    let drive = drive * side;

    // Unknown: the excess of the surface over the air, taken positive. It is kept as `root`, the
    // sixth root of `size * excess` that the correlation needs, so that no root is ever drawn.
    let per_size = 1.0 / size;
    let guess = drive / (1.0 + resistance * PI * diameter * (5.0 + 6.0 * emissivity));
    let start = rough_sixth_root(guess * size);
    let still_air = StillAir { air_temperature, side, drive, resistance, radiating, radiant_fourth, air_fourth, per_size };
    // Written out, not looped: loops within keep a compiler from running the pipes in lanes.
    let first = still_air.newton_step(start);
    let second = still_air.newton_step(first.root);
    let third = still_air.newton_step(second.root);
    let last = still_air.newton_step(third.root);
    let inside = (LOWEST_TEMPERATURE..=HIGHEST_TEMPERATURE).contains(&last.film_temperature);
    let sign = if possible & inside { side } else { f64::NAN };
    SurfaceBalance {
        temperature: air_temperature + sign * last.excess,
        convection: sign * last.convection,
        radiation: sign * last.radiation,
        coefficient: sign * side * last.coefficient_times_diameter / diameter,
    }
}

/// What stays the same from step to step of [`still_air_balance`].
struct StillAir {
    air_temperature: f64,
    side: f64,
    drive: f64,
    resistance: f64,
    radiating: f64,
    radiant_fourth: f64,
    air_fourth: f64,
    per_size: f64,
}

/// Where a step of [`still_air_balance`] arrives; heat and excess are taken positive.
struct Arrived {
    root: f64,
    excess: f64,
    convection: f64,
    radiation: f64,
    coefficient_times_diameter: f64,
    film_temperature: f64,
}

impl StillAir {
    #[inline(always)]
    fn newton_step(&self, root: f64) -> Arrived {
        let Self { air_temperature, side, drive, resistance, radiating, radiant_fourth, air_fourth, per_size } = *self;
        let cube = root * root * root;
        let at = cube * cube * per_size;
        let film_temperature = air_temperature + 0.5 * side * at;
        let film = if film_temperature < LOWEST_TEMPERATURE { LOWEST_TEMPERATURE } else { film_temperature };
        let film = if film > HIGHEST_TEMPERATURE { HIGHEST_TEMPERATURE } else { film };
        let u = scaled_temperature(film);
        let moving = polynomial(&MOVING, u) * root;
        let both = polynomial(&STILL, u) + moving;
        let film_coefficient = PI * both * both; // W/(m K) of pipe
        let moving_slope = polynomial(&MOVING_SLOPE, u) * root;
        let both_slope = side * 0.5 * at * (polynomial(&STILL_SLOPE, u) + moving_slope) + moving * (1.0 / 6.0);
        let surface = air_temperature + side * at;
        let surface_squared = surface * surface;
        let convected = film_coefficient * at;
        let convected_slope = film_coefficient + 2.0 * PI * both * both_slope;
        let radiated = side * radiating * (surface_squared * surface_squared - radiant_fourth);
        let radiated_slope = 4.0 * radiating * surface_squared * surface;
        // Radiation at air temperature is already in `drive`.
        let radiated_at_air = side * radiating * (air_fourth - radiant_fourth);
        let short = drive - at - resistance * (convected + radiated - radiated_at_air);
        let step = short / (1.0 + resistance * (convected_slope + radiated_slope));
        let excess = at + step;
        // The sixth root of the new excess, by the Pade form of (1 + step/at)^(1/6).
        let towards = if excess < 0.05 * at { 0.05 * at } else { excess };
        Arrived {
            root: root * (7.0 * towards + 5.0 * at) / (5.0 * towards + 7.0 * at),
            excess,
            convection: convected + convected_slope * step,
            radiation: radiated + radiated_slope * step,
            coefficient_times_diameter: both * both + 2.0 * both * both_slope * (excess / at - 1.0),
            film_temperature,
        }
    }
}

/// Heat balance of a pipe by any correlation, formulas as printed.
///
/// `inner_temperature` in K and `resistance` in m K/W as for [`still_air_balance`]; the outer
/// diameter, air temperature and pressure are those of `outside`. The surface temperature is
/// found to 1e-11 K, from the quick form's by secants, or within a bracket where those fail. NaN for impossible input.
pub fn balance(
    film: OutsideFilm,
    inner_temperature: f64,
    resistance: f64,
    outside: &OutsideAir,
    radiant_temperature: f64,
    emissivity: f64,
) -> SurfaceBalance {
    let air = outside.air_temperature;
    let possible = resistance >= 0.0
        && resistance.is_finite()
        && (0.0..=1.0).contains(&emissivity)
        && radiant_temperature > 0.0
        && radiant_temperature.is_finite()
        && inner_temperature > 0.0
        && inner_temperature.is_finite();
    if !possible {
        return SurfaceBalance::NONE;
    }
    let at = |temperature: f64| {
        let coefficient = film.state(temperature, outside).coefficient;
        SurfaceBalance {
            temperature,
            convection: PI * outside.diameter * coefficient * (temperature - air),
            radiation: PI * outside.diameter * radiated(emissivity, temperature, radiant_temperature),
            coefficient,
        }
    };
    // Heat given off less heat brought: rises with the surface temperature, which therefore lies
    // between the coldest and the warmest of what surrounds it.
    let excess = |temperature: f64| temperature - inner_temperature + resistance * at(temperature).loss();
    let coldest = inner_temperature.min(air).min(radiant_temperature);
    let warmest = inner_temperature.max(air).max(radiant_temperature);
    let around = Surroundings { air_temperature: air, radiant_temperature, emissivity, pressure: outside.pressure };
    let start = still_air_balance(inner_temperature, resistance, outside.diameter, &around);
    let solved = secant_root(excess, &start, resistance * PI * outside.diameter);
    at(if solved >= coldest && solved <= warmest { solved } else { rising_root(excess, coldest, warmest, TOLERANCE) })
}

/// To how many kelvin [`balance`] finds the surface temperature.
const TOLERANCE: f64 = 1e-11;

/// The root near `start` by the secant method; NaN where it does not settle, as over the jumps of
/// correlations that are written in pieces.
fn secant_root(excess: impl Fn(f64) -> f64, start: &SurfaceBalance, conductance: f64) -> f64 {
    let (mut last, mut at_last) = (start.temperature, excess(start.temperature));
    // The first slope is a guess from the film of the quick form; it need not be good.
    let mut step = -at_last / (1.0 + conductance * (1.25 * start.coefficient + 6.0));
    for _ in 0..12 {
        let next = last + step;
        if step.abs() <= TOLERANCE {
            return next;
        }
        let at_next = excess(next);
        step = -at_next * (next - last) / (at_next - at_last);
        (last, at_last) = (next, at_next);
        if at_next == 0.0 {
            return next;
        }
    }
    f64::NAN
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::math::ln;

    fn grid(mut visit: impl FnMut(f64, f64, f64, &Surroundings)) {
        for &inner in &[250.0, 278.15, 293.1, 293.15, 293.1501, 310.0, 333.15, 355.0, 383.15, 450.0] {
            for &air in &[253.15, 278.15, 293.15, 308.0, 333.0] {
                for &radiant_less_air in &[-10.0, 0.0, 0.5, 15.0] {
                    for &resistance in &[0.0, 1e-4, 0.005, 0.1, 1.0, 4.0, 12.0, 100.0] {
                        for &diameter in &[0.004, 0.015, 0.06, 0.3] {
                            for &emissivity in &[0.0, 0.05, 0.9, 1.0] {
                                for &pressure in &[60e3, STANDARD_ATMOSPHERE] {
                                    visit(
                                        inner,
                                        resistance,
                                        diameter,
                                        &Surroundings {
                                            air_temperature: air,
                                            radiant_temperature: air + radiant_less_air,
                                            emissivity,
                                            pressure,
                                        },
                                    );
                                }
                            }
                        }
                    }
                }
            }
        }
    }

    #[test]
    fn quick_form_agrees_with_the_printed_form() {
        let (mut worst, mut worst_loss, mut worst_closure) = (0.0_f64, 0.0_f64, 0.0_f64);
        let mut count = 0;
        grid(|inner, resistance, diameter, around| {
            let quick = still_air_balance(inner, resistance, diameter, around);
            let outside =
                OutsideAir { diameter, length: 1.0, air_temperature: around.air_temperature, pressure: around.pressure, wind_speed: 0.0 };
            let printed = balance(OutsideFilm::default(), inner, resistance, &outside, around.radiant_temperature, around.emissivity);
            let deviation = (quick.temperature - printed.temperature).abs();
            assert!(deviation < 1e-3, "{inner} {resistance} {diameter} {around:?}: {quick:?} {printed:?}");
            worst = worst.max(deviation);
            worst_loss = worst_loss.max((quick.loss() - printed.loss()).abs() / (1e-3 + printed.loss().abs()));
            let brought = (inner - quick.temperature) / resistance;
            if resistance >= 1e-4 {
                worst_closure = worst_closure.max((brought - quick.loss()).abs() * resistance.min(1.0) / (1.0 + quick.loss().abs()));
            }
            count += 1;
        });
        assert!(worst < 1e-7, "{worst:e} K");
        assert!(worst_loss < 1e-7, "{worst_loss:e} of the loss");
        assert!(worst_closure < 1e-9, "{worst_closure:e}");
    }

    #[test]
    fn shell_and_first_root_are_right() {
        assert_eq!(shell_resistance(0.015, 0.015, 0.04), 0.0);
        assert!((shell_resistance(0.015, 0.041, 0.038) - ln(41.0 / 15.0) / (2.0 * PI * 0.038)).abs() < 1e-15);
        for (inner, outer, k) in [(0.02, 0.015, 0.04), (0.0, 0.01, 0.04), (0.01, 0.02, 0.0), (f64::NAN, 0.02, 1.0)] {
            assert!(shell_resistance(inner, outer, k).is_nan());
        }
        let mut rough = 0.0_f64;
        for i in -280..280 {
            let x = crate::math::pow(10.0, f64::from(i) * 0.1);
            rough = rough.max((rough_sixth_root(x) / crate::math::pow(x, 1.0 / 6.0) - 1.0).abs());
        }
        assert!(rough < 0.04, "{rough}");
    }

    #[test]
    fn resistances_in_series_meet_the_textbook() {
        // Cengel, Example 3-8: cast iron 5 to 5.5 cm, 3 cm of glass wool, films of 60 and 18 W/(m2 K);
        // from memory, printed with three figures.
        let (wall, wool) = (shell_resistance(0.05, 0.055, 80.0), shell_resistance(0.055, 0.115, 0.05));
        let resistance = 1.0 / (60.0 * PI * 0.05) + wall + wool + 1.0 / (18.0 * PI * 0.115);
        assert!((resistance / 2.61 - 1.0).abs() < 0.002, "{resistance}");
        let loss = 315.0 / resistance;
        assert!((loss / 121.0 - 1.0).abs() < 0.003, "{loss}");
        assert!((loss * wool / 284.0 - 1.0).abs() < 0.003 && (loss * wall - 0.0229).abs() < 1e-4);
    }

    #[test]
    fn impossible_input_gives_no_number() {
        let around = Surroundings { air_temperature: 293.15, radiant_temperature: 293.15, emissivity: 0.9, pressure: 101_325.0 };
        let bad = [
            still_air_balance(f64::NAN, 1.0, 0.02, &around),
            still_air_balance(343.0, -1.0, 0.02, &around),
            still_air_balance(343.0, f64::INFINITY, 0.02, &around),
            still_air_balance(343.0, 1.0, 0.0, &around),
            still_air_balance(343.0, 1.0, 0.02, &Surroundings { emissivity: 1.2, ..around }),
            still_air_balance(343.0, 1.0, 0.02, &Surroundings { pressure: -1.0, ..around }),
            still_air_balance(343.0, 1.0, 0.02, &Surroundings { air_temperature: f64::NAN, ..around }),
            still_air_balance(343.0, 1.0, 0.02, &Surroundings { air_temperature: 100.0, ..around }),
            still_air_balance(1000.0, 0.0, 0.02, &around),
        ];
        for balance in bad {
            assert!(balance.temperature.is_nan() && balance.loss().is_nan());
        }
    }
}
