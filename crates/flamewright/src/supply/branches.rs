//! A branched gas installation: pressure at every point for given loads, and the pipe sizes that
//! keep every appliance within an allowed drop with the least pipe.

use super::pipe_flow::{Between, InletGas, PipeFlow, Stretch, buoyancy, pipe_flow};
use crate::convection::friction::TurbulentFriction;
use alloc::vec;
use alloc::vec::Vec;
use core::f64::consts::PI;

/// One section between two branch points, or between a branch point and an appliance.
#[derive(Clone, Debug, PartialEq)]
pub struct Branch {
    /// The section it hangs from, by position; it must stand earlier in the list. `None` at the
    /// meter.
    pub parent: Option<usize>,
    /// Length with the equivalent length of fittings, m.
    pub length: f64,
    /// Loss coefficients of fittings, in velocity heads.
    pub loss_coefficient: f64,
    /// Height of its end above its beginning, m.
    pub rise: f64,
    /// Flow drawn by an appliance at its end, m3/s at reference conditions; nought without one.
    pub load: f64,
}

/// A size of tube that may be chosen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bore {
    /// Bore, m.
    pub diameter: f64,
    /// Roughness of the wall, m.
    pub roughness: f64,
}

/// The gas in the whole installation, which is at one temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SupplyGas {
    /// Density at reference conditions, kg/m3.
    pub reference_density: f64,
    /// Density at line temperature and one pascal absolute, kg/m3 (density over pressure).
    pub density_per_pressure: f64,
    /// Dynamic viscosity, Pa s.
    pub viscosity: f64,
    /// Density of the air around the pipes, kg/m3.
    pub air_density: f64,
    /// Barometric pressure, Pa.
    pub barometric_pressure: f64,
    /// Gauge pressure at the meter outlet, Pa.
    pub inlet_pressure: f64,
    /// Equation of the turbulent friction factor.
    pub friction: TurbulentFriction,
}

/// What happens in one section.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct BranchFlow {
    /// Flow, m3/s at reference conditions.
    pub flow: f64,
    /// Velocity, Reynolds number, friction and drop.
    pub pipe: PipeFlow,
    /// Gauge pressure at the end of the section, Pa: `low` if all transitional flow is turbulent.
    pub end_pressure: Between,
}

/// Reference flow in each section, or `None` if a parent does not stand before its child.
#[must_use]
pub fn section_flows(branches: &[Branch]) -> Option<Vec<f64>> {
    let mut flows: Vec<f64> = branches.iter().map(|branch| branch.load).collect();
    for (position, branch) in branches.iter().enumerate().rev() {
        if let Some(parent) = branch.parent {
            let flow = *flows.get(position)?;
            if parent >= position {
                return None;
            }
            *flows.get_mut(parent)? += flow;
        }
    }
    Some(flows)
}

fn in_section(flow: f64, branch: &Branch, bore: &Bore, gas: &SupplyGas, gauge: f64) -> (PipeFlow, f64) {
    let absolute_pressure = gauge + gas.barometric_pressure;
    let density = gas.density_per_pressure * absolute_pressure;
    let stretch =
        Stretch { bore: bore.diameter, length: branch.length, roughness: bore.roughness, loss_coefficient: branch.loss_coefficient };
    let inlet = InletGas { density, viscosity: gas.viscosity, absolute_pressure };
    let pipe = pipe_flow(flow * gas.reference_density / density, &stretch, &inlet, gas.friction);
    (pipe, buoyancy(branch.rise, density, gas.air_density))
}

/// Pressures through the installation with a given bore and reference flow (m3/s) in each section,
/// written to `done`.
///
/// `None` if the lists are not of one length or a parent does not stand before its child.
pub fn pressures(branches: &[Branch], bores: &[Bore], flows: &[f64], gas: &SupplyGas, done: &mut [BranchFlow]) -> Option<()> {
    if [bores.len(), flows.len(), done.len()].iter().any(|&length| length != branches.len()) {
        return None;
    }
    for (position, ((branch, bore), &flow)) in branches.iter().zip(bores).zip(flows).enumerate() {
        let (before, from_here) = done.split_at_mut(position);
        let from = match branch.parent {
            None => Between { low: gas.inlet_pressure, high: gas.inlet_pressure },
            Some(parent) => before.get(parent)?.end_pressure,
        };
        let (pipe, gained) = in_section(flow, branch, bore, gas, from.low);
        let end_pressure = Between {
            low: from.low + gained - pipe.pressure_drop_expanding.high,
            high: from.high + gained - pipe.pressure_drop_expanding.low,
        };
        *from_here.first_mut()? = BranchFlow { flow, pipe, end_pressure };
    }
    Some(())
}

/// A way to size what hangs from a point: the worst drop to an appliance, the pipe it takes, and
/// which size each section gets.
#[derive(Clone)]
struct Plan {
    drop: f64,
    volume: f64,
    sizes: Vec<(usize, usize)>,
}

/// Keeps the plans that no other plan beats in both drop and pipe, in order of rising drop.
fn best(mut plans: Vec<Plan>) -> Vec<Plan> {
    plans.sort_by(|a, b| a.drop.total_cmp(&b.drop).then(a.volume.total_cmp(&b.volume)));
    let mut least = f64::INFINITY;
    plans.retain(|plan| {
        let better = plan.volume < least;
        if better {
            least = plan.volume;
        }
        better
    });
    plans
}

/// Two parts of the installation that hang from the same point, sized together: for each drop that
/// either part can have, the least pipe of both.
fn together(one: &[Plan], other: &[Plan]) -> Vec<Plan> {
    let mut joined = Vec::new();
    for drop in one.iter().chain(other).map(|plan| plan.drop) {
        let within = |plans: &[Plan]| plans.iter().rev().find(|plan| plan.drop <= drop).cloned();
        if let (Some(a), Some(b)) = (within(one), within(other)) {
            let mut sizes = a.sizes;
            sizes.extend(b.sizes);
            joined.push(Plan { drop, volume: a.volume + b.volume, sizes });
        }
    }
    best(joined)
}

/// Chooses a bore for each section so that no appliance loses more than `allowed_drop` (Pa of
/// gauge pressure from the meter), no section flows faster than `velocity_limit` (m/s), no section
/// is wider than the one it hangs from, and the volume of all pipe is the least possible.
///
/// Answers the position in `bores` for each section; `None` if no choice will do, if a parent does
/// not stand before its child, or on numbers that make no sense. `bores` must rise in diameter.
/// Transitional flow counts as turbulent. All sections are sized with the density that the gas has
/// after the whole allowed drop, which errs on the safe side by about 0.1 % for each millibar;
/// [`pressures`] then gives the figures of the choice.
#[must_use]
pub fn choose_bores(
    branches: &[Branch],
    bores: &[Bore],
    flows: &[f64],
    gas: &SupplyGas,
    allowed_drop: f64,
    velocity_limit: f64,
) -> Option<Vec<usize>> {
    if flows.len() != branches.len() {
        return None;
    }
    let rising = bores.windows(2).all(|pair| matches!(pair, [a, b] if a.diameter < b.diameter));
    if !rising || bores.is_empty() || allowed_drop.is_nan() {
        return None;
    }
    let gauge = gas.inlet_pressure - allowed_drop;
    // below[point][size]: plans for all that hangs from the end of a section of that size or wider.
    let nothing = Plan { drop: f64::NEG_INFINITY, volume: 0.0, sizes: Vec::new() };
    let mut below = vec![vec![vec![nothing.clone()]; bores.len()]; branches.len()];
    let mut at_meter = vec![nothing];
    for (position, (branch, flow)) in branches.iter().zip(flows.iter().copied()).enumerate().rev() {
        let hanging = core::mem::take(below.get_mut(position)?);
        let mut narrower: Vec<Plan> = Vec::new();
        for (size, (bore, plans)) in bores.iter().zip(hanging).enumerate() {
            let (pipe, gained) = in_section(flow, branch, bore, gas, gauge);
            let lost = pipe.pressure_drop_expanding.high - gained;
            if lost.is_finite() && pipe.velocity <= velocity_limit {
                let volume = 0.25 * PI * bore.diameter * bore.diameter * branch.length;
                let here = if branch.load > 0.0 { 0.0 } else { f64::NEG_INFINITY };
                for mut plan in plans {
                    plan.drop = plan.drop.max(here) + lost;
                    plan.volume += volume;
                    plan.sizes.push((position, size));
                    narrower.push(plan);
                }
                narrower = best(narrower);
            }
            match branch.parent {
                Some(parent) => {
                    let there = below.get_mut(parent)?.get_mut(size)?;
                    *there = together(there, &narrower);
                }
                None if size + 1 == bores.len() => at_meter = together(&at_meter, &narrower),
                None => {}
            }
        }
    }
    let chosen = at_meter.into_iter().rev().find(|plan| plan.drop <= allowed_drop)?;
    let mut sizes = vec![0; branches.len()];
    for (position, size) in chosen.sizes {
        *sizes.get_mut(position)? = size;
    }
    Some(sizes)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn gas() -> SupplyGas {
        SupplyGas {
            reference_density: 0.735,
            density_per_pressure: 0.735 / 101_325.0,
            viscosity: 1.1e-5,
            air_density: 1.225,
            barometric_pressure: 101_325.0,
            inlet_pressure: 2100.0,
            friction: TurbulentFriction::Colebrook,
        }
    }

    fn bores() -> [Bore; 5] {
        [0.0088, 0.0108, 0.0136, 0.0202, 0.0262].map(|diameter| Bore { diameter, roughness: 1.5e-6 })
    }

    fn walked(branches: &[Branch], bores: &[Bore]) -> Option<Vec<BranchFlow>> {
        let mut done = vec![BranchFlow::default(); branches.len()];
        pressures(branches, bores, &section_flows(branches)?, &gas(), &mut done)?;
        Some(done)
    }

    fn chosen(branches: &[Branch], bores: &[Bore], allowed_drop: f64, velocity_limit: f64) -> Option<Vec<usize>> {
        choose_bores(branches, bores, &section_flows(branches)?, &gas(), allowed_drop, velocity_limit)
    }

    /// An invented house: boiler 2.5 m3/h, fire 0.6, hob 0.9.
    fn house() -> Vec<Branch> {
        let branch =
            |parent, length, rise, load_per_hour: f64| Branch { parent, length, loss_coefficient: 0.0, rise, load: load_per_hour / 3600.0 };
        vec![
            branch(None, 6.0, 0.0, 0.0),
            branch(Some(0), 3.0, 2.4, 0.6),
            branch(Some(0), 5.0, 0.0, 0.0),
            branch(Some(2), 2.0, 0.0, 0.9),
            branch(Some(2), 4.0, -1.0, 2.5),
        ]
    }

    fn worst_drop(branches: &[Branch], sizes: &[usize]) -> f64 {
        let chosen: Vec<Bore> = sizes.iter().map(|&size| bores()[size]).collect();
        let flows = walked(branches, &chosen).unwrap();
        let drop = |(branch, flow): (&Branch, &BranchFlow)| {
            if branch.load > 0.0 { gas().inlet_pressure - flow.end_pressure.low } else { f64::NEG_INFINITY }
        };
        branches.iter().zip(&flows).map(drop).fold(f64::NEG_INFINITY, f64::max)
    }

    #[test]
    fn flows_add_up_toward_the_meter() {
        let flows = section_flows(&house()).unwrap();
        assert!((flows[0] * 3600.0 - 4.0).abs() < 1e-12 && (flows[2] * 3600.0 - 3.4).abs() < 1e-12);
        let mut broken = house();
        broken[1].parent = Some(3);
        assert_eq!(section_flows(&broken), None);
    }

    #[test]
    fn a_single_section_is_the_plain_pipe() {
        let one = [Branch { parent: None, length: 9.0, loss_coefficient: 0.0, rise: 0.0, load: 5.0 / 3600.0 }];
        let got = walked(&one, &[bores()[3]]).unwrap();
        // The row of the reference table for 22 mm, 9 m, 5 m3/h.
        assert!(((2100.0 - got[0].end_pressure.low) / 108.0755 - 1.0).abs() < 1e-5);
    }

    /// Every combination of sizes tried one by one is the judge of the search.
    #[test]
    fn sizing_finds_the_least_pipe_there_is() {
        let branches = house();
        let mut found = 0;
        for allowed in [30.0, 60.0, 100.0, 200.0, 400.0] {
            let volume = |sizes: &[usize]| -> f64 {
                branches.iter().zip(sizes).map(|(branch, &size)| branch.length * bores()[size].diameter * bores()[size].diameter).sum()
            };
            let mut least = f64::INFINITY;
            for code in 0..5_usize.pow(5) {
                let sizes: Vec<usize> = (0..5).map(|i| code / 5_usize.pow(i) % 5).collect();
                let narrowing = branches.iter().enumerate().all(|(i, branch)| branch.parent.is_none_or(|parent| sizes[i] <= sizes[parent]));
                if narrowing && worst_drop(&branches, &sizes) <= allowed {
                    least = least.min(volume(&sizes));
                }
            }
            match chosen(&branches, &bores(), allowed, f64::INFINITY) {
                Some(sizes) => {
                    found += 1;
                    assert!(worst_drop(&branches, &sizes) <= allowed);
                    assert!((volume(&sizes) / least - 1.0).abs() < 1e-12, "{allowed}: {sizes:?}");
                }
                None => assert_eq!(least, f64::INFINITY),
            }
        }
        assert!(found >= 3);
    }

    #[test]
    fn a_velocity_limit_widens_and_impossible_wishes_are_refused() {
        let branches = house();
        let free = chosen(&branches, &bores(), 400.0, f64::INFINITY).unwrap();
        let slow = chosen(&branches, &bores(), 400.0, 3.5).unwrap();
        assert!(slow.iter().zip(&free).any(|(a, b)| a > b));
        assert_eq!(chosen(&branches, &bores(), 0.01, f64::INFINITY), None);
        assert_eq!(chosen(&branches, &bores(), f64::NAN, f64::INFINITY), None);
        assert_eq!(chosen(&branches, &[], 100.0, f64::INFINITY), None);
        let mut sick = house();
        sick[4].load = f64::NAN;
        assert_eq!(chosen(&sick, &bores(), 100.0, f64::INFINITY), None);
        assert!(walked(&sick, &[bores()[4]; 5]).unwrap()[4].end_pressure.low.is_nan());
        assert_eq!(walked(&sick, &bores()[..2]), None);
    }
}
