//! Flow of gas through a straight round pipe: pressure lost, and flow for a given loss.
//!
//! Darcy and Weisbach's equation with the density at the inlet, and the isothermal compressible
//! form beside it. Where the flow is neither laminar nor turbulent nobody knows the friction
//! factor, so every result is a pair: the value if the flow stays laminar and the value if it is
//! turbulent. Outside the transition the two are equal.

use crate::convection::friction::{LAMINAR_BELOW, TURBULENT_FROM, TurbulentFriction, laminar};
use crate::math::{ln, sqrt};
use core::f64::consts::PI;

/// A stretch of pipe of one bore.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Bore, m.
    pub bore: f64,
    /// Length with the equivalent length of its fittings, m.
    pub length: f64,
    /// Roughness of the wall, m.
    pub roughness: f64,
    /// Sum of the loss coefficients of its fittings, in velocity heads.
    pub loss_coefficient: f64,
}

/// The gas as it enters a stretch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InletGas {
    /// Density at the inlet, kg/m3.
    pub density: f64,
    /// Dynamic viscosity, Pa s.
    pub viscosity: f64,
    /// Absolute pressure at the inlet, Pa.
    pub absolute_pressure: f64,
}

/// A value that is known between two bounds; equal where it is known.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Between {
    /// Least value.
    pub low: f64,
    /// Greatest value.
    pub high: f64,
}

/// What a flow does in a stretch of pipe.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PipeFlow {
    /// Mean velocity at the inlet, m/s.
    pub velocity: f64,
    /// Reynolds number.
    pub reynolds: f64,
    /// Darcy friction factor.
    pub friction_factor: Between,
    /// Pressure lost with the density of the inlet kept throughout, Pa.
    pub pressure_drop: Between,
    /// Pressure lost with the gas expanding at constant temperature, Pa. NaN where the pipe
    /// cannot pass the flow at all.
    pub pressure_drop_expanding: Between,
}

/// Pressure lost by a volume flow (m3/s at inlet conditions) in a stretch.
#[must_use]
pub fn pipe_flow(flow: f64, stretch: &Stretch, gas: &InletGas, turbulent: TurbulentFriction) -> PipeFlow {
    let area = 0.25 * PI * stretch.bore * stretch.bore;
    let velocity = flow / area;
    let reynolds = gas.density * velocity * stretch.bore / gas.viscosity;
    let head = 0.5 * gas.density * velocity * velocity;
    let friction_factor = factor(reynolds, stretch.roughness / stretch.bore, turbulent);
    let lost = |factor: f64| head * (factor * stretch.length / stretch.bore + stretch.loss_coefficient);
    let known = |value: f64| if reynolds > 0.0 { value } else { value * 0.0 };
    // At rest the laminar factor is infinite and the loss nought.
    let pressure_drop = Between { low: known(lost(friction_factor.low)), high: known(lost(friction_factor.high)) };
    let pressure_drop = if reynolds == 0.0 { Between { low: 0.0, high: 0.0 } } else { pressure_drop };
    let expanding = |drop: f64| expanding(drop, 2.0 * head, gas.absolute_pressure);
    PipeFlow {
        velocity,
        reynolds,
        friction_factor,
        pressure_drop,
        pressure_drop_expanding: Between { low: expanding(pressure_drop.low), high: expanding(pressure_drop.high) },
    }
}

/// Laminar and turbulent factor in the transition, the one that holds outside it.
fn factor(reynolds: f64, relative_roughness: f64, turbulent: TurbulentFriction) -> Between {
    let smooth = laminar(reynolds);
    let rough = turbulent.factor(reynolds, relative_roughness);
    if reynolds < LAMINAR_BELOW {
        Between { low: smooth, high: smooth }
    } else if reynolds < TURBULENT_FROM {
        Between { low: smooth.min(rough), high: smooth.max(rough) }
    } else {
        Between { low: rough, high: rough }
    }
}

/// Drop of a gas that expands isothermally, from the drop at constant inlet density.
///
/// Momentum along the pipe, integrated (any textbook of gas dynamics):
/// `p1^2 - p2^2 = 2 p1 (drop + density velocity^2 ln(p1/p2))`. The logarithm is small, so putting
/// p2 back four times settles it far below rounding for any gas installation.
fn expanding(drop: f64, twice_head: f64, inlet: f64) -> f64 {
    let mut outlet = inlet;
    for _ in 0..4 {
        outlet = sqrt(inlet * inlet - 2.0 * inlet * (drop + twice_head * ln(inlet / outlet)));
    }
    inlet - outlet
}

/// Volume flow (m3/s at inlet conditions) that loses a given pressure in a stretch, the gas
/// expanding at constant temperature.
///
/// `low` is the flow that is certain, `high` the most that could pass if the flow stayed laminar.
/// Laminar flow is counted on below [`LAMINAR_BELOW`] and turbulent flow from [`TURBULENT_FROM`].
#[must_use]
pub fn discharge(pressure_drop: f64, stretch: &Stretch, gas: &InletGas, turbulent: TurbulentFriction) -> Between {
    let per_reynolds = 0.25 * PI * stretch.bore * gas.viscosity / gas.density;
    // The equation of `expanding`, read backwards: expansion acts as a smaller drop and one more
    // loss coefficient.
    let outlet = gas.absolute_pressure - pressure_drop;
    let stretch = &Stretch { loss_coefficient: stretch.loss_coefficient + 2.0 * ln(gas.absolute_pressure / outlet), ..*stretch };
    let pressure_drop = pressure_drop - 0.5 * pressure_drop * pressure_drop / gas.absolute_pressure;
    let if_laminar = laminar_reynolds(pressure_drop, stretch, gas);
    if if_laminar <= LAMINAR_BELOW {
        return Between { low: per_reynolds * if_laminar, high: per_reynolds * if_laminar };
    }
    let if_turbulent = turbulent_reynolds(pressure_drop, stretch, gas, turbulent);
    if if_turbulent >= TURBULENT_FROM {
        return Between { low: per_reynolds * if_turbulent, high: per_reynolds * if_turbulent };
    }
    Between {
        low: per_reynolds * if_turbulent.max(LAMINAR_BELOW) + 0.0 * if_turbulent,
        high: per_reynolds * if_laminar.min(TURBULENT_FROM),
    }
}

/// `drop bore^2 density / viscosity^2`: the drop as a number that goes with Re^2.
fn drop_number(pressure_drop: f64, stretch: &Stretch, gas: &InletGas) -> f64 {
    2.0 * pressure_drop * gas.density * stretch.bore * stretch.bore / (gas.viscosity * gas.viscosity)
}

/// Reynolds number at which laminar flow loses the pressure:
/// `64 (L/D) Re + K Re^2 = drop number`.
fn laminar_reynolds(pressure_drop: f64, stretch: &Stretch, gas: &InletGas) -> f64 {
    let wanted = drop_number(pressure_drop, stretch, gas);
    let half_linear = 32.0 * stretch.length / stretch.bore;
    // This form of the root of a quadratic stays exact as the coefficients go to nought.
    wanted / (half_linear + sqrt(half_linear * half_linear + stretch.loss_coefficient * wanted))
}

/// Reynolds number at which turbulent flow loses the pressure: `(f L/D + K) Re^2 = drop number`.
///
/// The factor changes slowly with Re, so putting it back converges by a factor of about ten a turn.
fn turbulent_reynolds(pressure_drop: f64, stretch: &Stretch, gas: &InletGas, turbulent: TurbulentFriction) -> f64 {
    let wanted = drop_number(pressure_drop, stretch, gas);
    let mut reynolds = TURBULENT_FROM;
    for _ in 0..20 {
        let factor = turbulent.factor(reynolds, stretch.roughness / stretch.bore);
        reynolds = sqrt(wanted / (factor * stretch.length / stretch.bore + stretch.loss_coefficient));
    }
    reynolds
}

/// Rise of gauge pressure (Pa) in a gas that climbs `rise` metres within air of a given density.
///
/// Gauge pressure is measured against the air beside it, so a gas lighter than air gains on the
/// way up and a heavier one loses. `(density_air - density_gas) g rise`, hydrostatics.
#[must_use]
pub fn buoyancy(rise: f64, gas_density: f64, air_density: f64) -> f64 {
    crate::supply::STANDARD_GRAVITY * rise * (air_density - gas_density)
}

/// Pole's old discharge formula for low-pressure gas, m3/s, from a drop in Pa, a bore and a
/// length in m and the relative density.
///
/// `Q[m3/h] = 0.0071 sqrt(d[mm]^5 h[mbar] / (s L[m]))`; the constant is from memory. It knows
/// nothing of viscosity and promises more than small pipes pass; kept only to compare with.
#[must_use]
pub fn pole_discharge(pressure_drop: f64, bore: f64, length: f64, relative_density: f64) -> f64 {
    let bore_mm = bore * 1e3;
    let square = bore_mm * bore_mm;
    0.0071 / 3600.0 * sqrt(square * square * bore_mm * (pressure_drop * 1e-2) / (relative_density * length))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::vec::Vec;

    const COLEBROOK: TurbulentFriction = TurbulentFriction::Colebrook;

    fn near(got: f64, wanted: f64, tolerance: f64, what: &str) {
        assert!((got / wanted - 1.0).abs() <= tolerance, "{what}: {got} for {wanted}");
    }

    #[test]
    fn reproduces_the_gas_pipe_drop_table() {
        let table = include_str!("../../../../tests/reference/heat/gas_pipe_drop.csv");
        let mut rows = 0;
        for line in table.lines().skip(1) {
            let cell: Vec<&str> = line.split(',').collect();
            let number = |i: usize| cell[i].parse::<f64>().unwrap();
            let stretch = Stretch { bore: number(4) * 1e-3, length: number(2), roughness: number(5) * 1e-3, loss_coefficient: 0.0 };
            let gas = InletGas { density: number(7), viscosity: number(8), absolute_pressure: 103_425.0 };
            let flow = number(1) / 3600.0 * number(6) / number(7);
            let got = pipe_flow(flow, &stretch, &gas, COLEBROOK);
            near(got.velocity, number(9), 1e-6, "velocity");
            near(got.reynolds, number(10), 1e-6, "Re");
            match cell[11] {
                "laminar" => {
                    near(got.pressure_drop.low, number(15), 1e-6, line);
                    near(got.pressure_drop_expanding.low, number(18), 1e-6, line);
                }
                "transitional" => {
                    near(got.pressure_drop.low, number(15), 1e-6, line);
                    near(got.pressure_drop.high, number(16), 1e-6, line);
                    near(got.pressure_drop_expanding.high, number(18), 1e-6, line);
                }
                _ => {
                    near(got.pressure_drop.high, number(16), 1e-6, line);
                    near(got.pressure_drop_expanding.high, number(18), 1e-6, line);
                    let haaland = pipe_flow(flow, &stretch, &gas, TurbulentFriction::Haaland);
                    near(haaland.pressure_drop.high, number(17), 1e-6, line);
                }
            }
            rows += 1;
        }
        assert_eq!(rows, 36);
    }

    #[test]
    fn reproduces_the_discharge_table() {
        let table = include_str!("../../../../tests/reference/heat/gas_discharge_published.csv");
        let (mut computed, mut rows) = (0, 0);
        for line in table.lines().skip(1) {
            let cell: Vec<&str> = line.rsplit('"').next().unwrap().split(',').skip(1).collect();
            let number = |i: usize| cell[i].parse::<f64>().unwrap();
            let bore = (number(0) - 2.0 * number(1)) * 1e-3;
            let stretch = Stretch { bore, length: number(2), roughness: 1.5e-6, loss_coefficient: 0.0 };
            let gas = InletGas { density: 0.735 * 103_425.0 / 101_325.0, viscosity: 1.1e-5, absolute_pressure: 103_425.0 };
            let at_line = 101_325.0 / 103_425.0;
            let got = pipe_flow(number(3) / 3600.0 * at_line, &stretch, &gas, COLEBROOK);
            near(got.reynolds, number(5), 1e-5, line);
            near(got.pressure_drop_expanding.high, number(7), 1e-5, line);
            near(pole_discharge(100.0, bore, number(2), 0.6) * 3600.0, number(8), 1e-5, line);
            if !cell[4].is_empty() {
                near(discharge(100.0, &stretch, &gas, COLEBROOK).low * 3600.0 / at_line, number(4), 1e-5, line);
                // The published figure itself, at the tolerance its own scatter allows.
                near(number(3), number(4), 0.10, line);
                computed += 1;
            }
            rows += 1;
        }
        assert_eq!((rows, computed), (27, 7));
    }

    #[test]
    fn discharge_inverts_the_drop_and_brackets_it_in_transition() {
        let gas = InletGas { density: 0.75, viscosity: 1.1e-5, absolute_pressure: 103_425.0 };
        for loss_coefficient in [0.0, 6.0] {
            let stretch = Stretch { bore: 0.0202, length: 12.0, roughness: 1.5e-6, loss_coefficient };
            for drop in [0.1, 1.0, 10.0, 40.0, 100.0, 1000.0] {
                let flow = discharge(drop, &stretch, &gas, COLEBROOK);
                let (low, high) = (pipe_flow(flow.low, &stretch, &gas, COLEBROOK), pipe_flow(flow.high, &stretch, &gas, COLEBROOK));
                if flow.low == flow.high {
                    near(low.pressure_drop_expanding.low, drop, 1e-10, "one regime");
                    assert_eq!(low.pressure_drop.low, low.pressure_drop.high);
                } else {
                    assert!(low.reynolds >= LAMINAR_BELOW * (1.0 - 1e-12) && high.reynolds <= TURBULENT_FROM * (1.0 + 1e-12));
                    assert!(low.reynolds > LAMINAR_BELOW || low.pressure_drop_expanding.low < drop);
                    // At the upper end of the band either laminar flow loses just the drop, or the band
                    // is cut off where flow is surely turbulent and loses more.
                    let loses = high.pressure_drop_expanding;
                    assert!((loses.low / drop - 1.0).abs() < 1e-10 || loses.high > drop);
                }
            }
        }
    }

    #[test]
    fn two_halves_in_series_lose_what_the_whole_loses() {
        let gas = InletGas { density: 0.75, viscosity: 1.1e-5, absolute_pressure: 103_425.0 };
        let whole = Stretch { bore: 0.0262, length: 20.0, roughness: 1.5e-6, loss_coefficient: 0.0 };
        let half = Stretch { length: 10.0, ..whole };
        let flow = 6.0 / 3600.0;
        let all = pipe_flow(flow, &whole, &gas, COLEBROOK).pressure_drop_expanding.high;
        let first = pipe_flow(flow, &half, &gas, COLEBROOK).pressure_drop_expanding.high;
        let left = gas.absolute_pressure - first;
        let thinner = InletGas { density: gas.density * left / gas.absolute_pressure, absolute_pressure: left, ..gas };
        let second = pipe_flow(flow * gas.absolute_pressure / left, &half, &thinner, COLEBROOK).pressure_drop_expanding.high;
        near(first + second, all, 1e-12, "series");
    }

    #[test]
    fn rest_loses_nothing_and_nonsense_gives_no_number() {
        let gas = InletGas { density: 0.75, viscosity: 1.1e-5, absolute_pressure: 103_425.0 };
        let stretch = Stretch { bore: 0.02, length: 5.0, roughness: 1.5e-6, loss_coefficient: 1.0 };
        assert_eq!(pipe_flow(0.0, &stretch, &gas, COLEBROOK).pressure_drop.high, 0.0);
        assert!(pipe_flow(-1e-3, &stretch, &gas, COLEBROOK).pressure_drop.high.is_nan());
        assert!(pipe_flow(f64::NAN, &stretch, &gas, COLEBROOK).pressure_drop.high.is_nan());
        assert!(pipe_flow(0.02, &Stretch { bore: f64::NAN, ..stretch }, &gas, COLEBROOK).pressure_drop.high.is_nan());
        // Far past what any pressure can push through.
        assert!(pipe_flow(1.0, &Stretch { length: 1e4, ..stretch }, &gas, COLEBROOK).pressure_drop_expanding.high.is_nan());
        assert!(discharge(f64::NAN, &stretch, &gas, COLEBROOK).low.is_nan());
        assert!(discharge(-1.0, &stretch, &gas, COLEBROOK).low.is_nan() || discharge(-1.0, &stretch, &gas, COLEBROOK).low <= 0.0);
        assert_eq!(discharge(0.0, &stretch, &gas, COLEBROOK).low, 0.0);
    }

    #[test]
    fn light_gas_gains_on_the_way_up_and_heavy_gas_loses() {
        near(buoyancy(10.0, 0.68, 1.225), 53.446, 1e-4, "natural gas");
        assert!(buoyancy(10.0, 1.9, 1.225) < 0.0);
        assert_eq!(buoyancy(3.0, 0.68, 1.225), -buoyancy(-3.0, 0.68, 1.225));
    }
}
