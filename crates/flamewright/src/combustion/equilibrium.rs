//! Chemical equilibrium of flue gas with dissociation, at constant pressure and enthalpy.
//!
//! Gibbs energy minimised by the iteration of S. Gordon, B.J. McBride, NASA RP-1311 part I (1994),
//! section 2: Newton steps in the logarithms of the amounts, of their sum and of temperature, with
//! the element potentials as multipliers. Noble gases and sulphur dioxide are taken along without
//! reacting.

use crate::combustion::products::Products;
use crate::combustion::species::{self, MOLAR_GAS_CONSTANT, Species};
use crate::math;

/// Standard pressure of the entropies, Pa.
const STANDARD_PRESSURE: f64 = 1e5;

/// Number of reacting species.
const SPECIES: usize = 10;
/// Number of elements: carbon, hydrogen, oxygen, nitrogen.
const ELEMENTS: usize = 4;
/// Unknowns of one step: element potentials, logarithm of the sum, logarithm of temperature.
const UNKNOWNS: usize = ELEMENTS + 2;
/// Steps after which the iteration counts as failed; it normally takes 10 to 20.
const MAXIMUM_STEPS: usize = 200;

/// The reacting species and the atoms of carbon, hydrogen, oxygen and nitrogen in each.
static REACTING: [(&Species, [f64; ELEMENTS]); SPECIES] = [
    (&species::CARBON_DIOXIDE, [1.0, 0.0, 2.0, 0.0]),
    (&species::WATER, [0.0, 2.0, 1.0, 0.0]),
    (&species::OXYGEN, [0.0, 0.0, 2.0, 0.0]),
    (&species::NITROGEN, [0.0, 0.0, 0.0, 2.0]),
    (&species::CARBON_MONOXIDE, [1.0, 0.0, 1.0, 0.0]),
    (&species::HYDROGEN, [0.0, 2.0, 0.0, 0.0]),
    (&species::HYDROXYL, [0.0, 1.0, 1.0, 0.0]),
    (&species::ATOMIC_HYDROGEN, [0.0, 1.0, 0.0, 0.0]),
    (&species::ATOMIC_OXYGEN, [0.0, 0.0, 1.0, 0.0]),
    (&species::NITRIC_OXIDE, [0.0, 0.0, 1.0, 1.0]),
];

/// State of the gas in equilibrium.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Equilibrium {
    /// Temperature, K.
    pub temperature: f64,
    /// Mole fraction of carbon monoxide, water counted.
    pub carbon_monoxide_wet: f64,
    /// Mole fraction of nitric oxide, water counted.
    pub nitric_oxide_wet: f64,
    /// Mole fraction of oxygen, water counted.
    pub oxygen_wet: f64,
    /// Mole fraction of hydrogen, water counted.
    pub hydrogen_wet: f64,
    /// Mole fraction of hydroxyl, water counted.
    pub hydroxyl_wet: f64,
}

impl Equilibrium {
    const UNSOLVED: Self = Self {
        temperature: f64::NAN,
        carbon_monoxide_wet: f64::NAN,
        nitric_oxide_wet: f64::NAN,
        oxygen_wet: f64::NAN,
        hydrogen_wet: f64::NAN,
        hydroxyl_wet: f64::NAN,
    };
}

/// Equilibrium reached adiabatically from the products of complete combustion.
///
/// `sensible_heat` is their heat above 25 degC, J per unit of fuel; `pressure` absolute, Pa.
/// All NaN when the iteration finds no solution between 200 and 6000 K.
#[must_use]
pub fn adiabatic(products: &Products, sensible_heat: f64, pressure: f64) -> Equilibrium {
    // A trace of every element keeps the equations regular for hydrogen in carbon-free air.
    let scale = products.wet();
    let trace = 1e-12 * scale;
    let elements = [
        products.carbon_dioxide + trace,
        2.0 * products.water + trace,
        2.0 * products.carbon_dioxide + products.water + 2.0 * products.oxygen + 3.0 * trace,
        2.0 * products.nitrogen + trace,
    ];
    let inert = products.argon + products.helium + products.sulphur_dioxide;
    if !(scale.is_finite() && sensible_heat.is_finite() && pressure > 0.0 && pressure.is_finite())
        || elements.iter().any(|&moles| moles <= 0.0)
    {
        return Equilibrium::UNSOLVED;
    }
    let datum = species::ENTHALPY_DATUM;
    let target_enthalpy = sensible_heat
        + products.carbon_dioxide * species::CARBON_DIOXIDE.enthalpy(datum)
        + products.water * species::WATER.enthalpy(datum)
        + products.oxygen * species::OXYGEN.enthalpy(datum)
        + products.nitrogen * species::NITROGEN.enthalpy(datum);

    // Start from complete combustion with a little of everything else.
    let little = 1e-3 * scale;
    let mut log_moles = [little; SPECIES];
    for (start, known) in log_moles.iter_mut().zip([products.carbon_dioxide, products.water, products.oxygen, products.nitrogen]) {
        *start = known.max(little);
    }
    for start in &mut log_moles {
        *start = math::ln(*start);
    }
    let mut log_sum = math::ln(scale);
    let mut log_temperature = math::ln(2000.0);

    for _ in 0..MAXIMUM_STEPS {
        let temperature = math::exp(log_temperature);
        let sum = math::exp(log_sum);
        let log_pressure = math::ln(pressure / STANDARD_PRESSURE);
        let mut moles = [0.0; SPECIES];
        let mut enthalpy = [0.0; SPECIES];
        let mut potential = [0.0; SPECIES];
        let mut matrix = [[0.0; UNKNOWNS + 1]; UNKNOWNS];
        let mut total = inert;
        let mut total_enthalpy = 0.0;
        let mut found = [0.0; ELEMENTS];
        let rows = moles.iter_mut().zip(&mut enthalpy).zip(&mut potential).zip(&log_moles).zip(&REACTING);
        for ((((n, h), mu), log_n), (gas, atoms)) in rows {
            *n = math::exp(*log_n);
            *h = gas.enthalpy_over_rt(temperature);
            *mu = *h - gas.entropy_over_r(temperature) + log_n - log_sum + log_pressure;
            total += *n;
            total_enthalpy += *n * *h;
            let mut extended = [0.0; UNKNOWNS];
            extended[..ELEMENTS].copy_from_slice(atoms);
            extended[ELEMENTS] = 1.0;
            extended[ELEMENTS + 1] = *h;
            for (row, &left) in matrix.iter_mut().zip(&extended) {
                for (cell, &right) in row.iter_mut().zip(&extended) {
                    *cell += left * right * *n;
                }
                row[UNKNOWNS] += left * *n * *mu;
            }
            for (sum_of_element, &count) in found.iter_mut().zip(atoms) {
                *sum_of_element += count * *n;
            }
            matrix[UNKNOWNS - 1][UNKNOWNS - 1] += *n * gas.heat_capacity_over_r(temperature);
        }
        for ((row, &wanted), &has) in matrix.iter_mut().zip(&elements).zip(&found) {
            row[UNKNOWNS] += wanted - has;
        }
        let inert_sulphur = products.sulphur_dioxide;
        let inert_noble = products.argon + products.helium;
        let inert_sensible = inert_sulphur * species::SULPHUR_DIOXIDE.sensible_enthalpy(temperature)
            + inert_noble * species::ARGON.sensible_enthalpy(temperature);
        matrix[ELEMENTS][ELEMENTS] -= sum;
        matrix[ELEMENTS][UNKNOWNS] += sum - total;
        matrix[UNKNOWNS - 1][UNKNOWNS - 1] += inert_sulphur * species::SULPHUR_DIOXIDE.heat_capacity_over_r(temperature)
            + inert_noble * species::ARGON.heat_capacity_over_r(temperature);
        matrix[UNKNOWNS - 1][UNKNOWNS] += (target_enthalpy - inert_sensible) / (MOLAR_GAS_CONSTANT * temperature) - total_enthalpy;

        let Some(step) = solve(&mut matrix) else { return Equilibrium::UNSOLVED };
        let log_sum_step = step[ELEMENTS];
        let log_temperature_step = step[ELEMENTS + 1];
        let mut log_steps = [0.0; SPECIES];
        let mut largest = 5.0 * log_sum_step.abs().max(log_temperature_step.abs());
        let mut residual = log_temperature_step.abs().max(log_sum_step.abs());
        let rows = log_steps.iter_mut().zip(&enthalpy).zip(&potential).zip(&moles).zip(&REACTING);
        for ((((change, h), mu), n), (_, atoms)) in rows {
            *change = log_sum_step - mu + h * log_temperature_step;
            for (count, element_potential) in atoms.iter().zip(&step) {
                *change += count * element_potential;
            }
            largest = largest.max(change.abs());
            residual = residual.max(change.abs() * n / sum);
        }
        if !largest.is_finite() {
            return Equilibrium::UNSOLVED;
        }
        // Steps beyond e squared in an amount, or e^0.4 in sum or temperature, overshoot.
        let damping = if largest > 2.0 { 2.0 / largest } else { 1.0 };
        for (log_n, change) in log_moles.iter_mut().zip(&log_steps) {
            *log_n += damping * change;
        }
        log_sum += damping * log_sum_step;
        log_temperature += damping * log_temperature_step;
        if residual < 1e-11 {
            let temperature = math::exp(log_temperature);
            if !(200.0..=6000.0).contains(&temperature) {
                return Equilibrium::UNSOLVED;
            }
            let fraction = |index: usize| log_moles.get(index).map_or(f64::NAN, |log_n| math::exp(log_n - log_sum));
            return Equilibrium {
                temperature,
                carbon_monoxide_wet: fraction(4),
                nitric_oxide_wet: fraction(9),
                oxygen_wet: fraction(2),
                hydrogen_wet: fraction(5),
                hydroxyl_wet: fraction(6),
            };
        }
    }
    Equilibrium::UNSOLVED
}

/// Solves the augmented system by elimination with scaled row pivoting; `None` when singular.
fn solve(matrix: &mut [[f64; UNKNOWNS + 1]; UNKNOWNS]) -> Option<[f64; UNKNOWNS]> {
    for row in matrix.iter_mut() {
        let largest = row.iter().take(UNKNOWNS).fold(0.0_f64, |most, cell| most.max(cell.abs()));
        for cell in row.iter_mut() {
            *cell /= largest;
        }
    }
    for column in 0..UNKNOWNS {
        let mut pivot = column;
        for candidate in column + 1..UNKNOWNS {
            if matrix[candidate][column].abs() > matrix[pivot][column].abs() {
                pivot = candidate;
            }
        }
        let size = matrix[pivot][column].abs();
        if size.is_nan() || size < 1e-300 {
            return None;
        }
        matrix.swap(column, pivot);
        let pivot_row = matrix[column];
        for row in matrix.iter_mut().skip(column + 1) {
            let factor = row[column] / pivot_row[column];
            for (cell, above) in row.iter_mut().zip(&pivot_row) {
                *cell -= factor * above;
            }
        }
    }
    let mut solution = [0.0; UNKNOWNS];
    for index in (0..UNKNOWNS).rev() {
        let row = &matrix[index];
        let known: f64 = (index + 1..UNKNOWNS).map(|column| row[column] * solution[column]).sum();
        solution[index] = (row[UNKNOWNS] - known) / row[index];
    }
    Some(solution)
}
