//! Adaptive integration of a thermal network, with a continuous solution inside each step.
//!
//! Two one-step methods share one controller and one way to look inside a step:
//!
//! * the explicit pair of Dormand and Prince, order 5(4) with its interpolant of order 4
//!   (J. Comput. Appl. Math. 6 (1980) 19; interpolant and stiffness test as in Hairer, Norsett and
//!   Wanner, *Solving Ordinary Differential Equations I*, 2nd ed., sections II.5, II.6 and IV.2);
//! * the linear-implicit method Rodas5P, order 5 with an interpolant of order 4 (Steinebach,
//!   BIT Numer. Math. 63 (2023) 27), for circuits with short cells at a high flow.
//!
//! Why by hand: a heating circuit is mildly stiff, the explicit pair then needs no dependency and
//! is as quick as the crates compared with it. Where the step is held down by stability alone (a
//! short bypass loop near its slow decay) the linear-implicit method takes over: the
//! network offers its own elimination of order n, so that such a step costs about as much as an
//! explicit one and is hundreds of times longer.
//!
//! Memory is taken once, when the solver is made. The same input gives the same steps.

use crate::math::{exp_branch_free, sqrt};
use crate::pipe::math::natural_logarithm;
use alloc::vec;
use alloc::vec::Vec;

/// A set of rates of change that do not depend on time itself.
pub(crate) trait System {
    /// Number of state values.
    fn dimension(&self) -> usize;
    /// Leading state values whose error is controlled; those behind are integrals of them.
    fn controlled(&self) -> usize;
    /// Rates of change, per second.
    fn rates(&self, state: &[f64], rates: &mut [f64]);
    /// Prepares the solution of `(shift I - J(state)) x = b`; false where no Jacobian is offered.
    fn factor(&mut self, state: &[f64], shift: f64) -> bool;
    /// Solves the prepared equations in place.
    fn solve(&self, right_hand_side: &mut [f64]);
}

/// Why an integration cannot go on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Halt {
    /// The bound on the number of steps was reached.
    TooManySteps,
    /// The state or its rate of change is no longer a finite number, or no step is short enough.
    NotFinite,
}

/// Which way a level is passed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Direction {
    Falling,
    Rising,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Method {
    Explicit,
    LinearImplicit,
}

const STAGES: usize = 8;

/// Longest the step may grow, and shrink, from one to the next.
const GROWTH: (f64, f64) = (0.2, 8.0);
/// Stability-bound steps in a row after which the linear-implicit method takes over.
const STIFF_AFTER: u32 = 8;
/// `h |lambda|` from which on a step counts as bound by stability. On the negative real axis the
/// explicit pair is stable up to 3.3 (Hairer et al.), but the step swings about the limit and a
/// row of equal cells is not normal: at the limit of such circuits 2.8 to 6 was seen.
const STABILITY_LIMIT: f64 = 2.5;

pub(crate) struct Solver {
    /// Largest local error accepted in one step, in units of the state.
    tolerance: f64,
    most_steps: u32,
    steps: u32,
    method: Method,
    /// Method of the step just taken: its stages carry the interpolant.
    method_taken: Method,
    stiff_steps: u32,
    time: f64,
    /// Length of the step just taken.
    taken: f64,
    /// Length proposed for the next step.
    proposed: f64,
    last_error: f64,
    before: Vec<f64>,
    state: Vec<f64>,
    rates_before: Vec<f64>,
    rates: Vec<f64>,
    trial: Vec<f64>,
    spare: Vec<f64>,
    stages: [Vec<f64>; STAGES],
}

/// `base^exponent` for a base above zero and an exponent from -1 to 1; a third of the time of `libm`'s power.
#[inline(always)]
pub(crate) fn power(base: f64, exponent: f64) -> f64 {
    exp_branch_free(exponent * natural_logarithm(base))
}

/// `out = base + sum of weight * vector`, the order of the sum being that of the terms.
#[inline(always)]
fn combine<const N: usize>(out: &mut [f64], base: &[f64], terms: [(f64, &[f64]); N]) {
    let n = out.len();
    let base = &base[..n];
    let vectors = terms.map(|(_, vector)| &vector[..n]);
    for i in 0..n {
        let mut sum = terms[0].0 * vectors[0][i];
        for j in 1..N {
            sum += terms[j].0 * vectors[j][i];
        }
        out[i] = base[i] + sum;
    }
}

impl Solver {
    /// `tolerance`: largest local error of a step, in kelvin. `most_steps`: bound on their number.
    pub(crate) fn new<S: System>(system: &S, initial: &[f64], tolerance: f64, most_steps: u32) -> Self {
        let n = system.dimension();
        let mut state = vec![0.0; n];
        for (to, from) in state.iter_mut().zip(initial) {
            *to = *from;
        }
        let mut solver = Solver {
            tolerance,
            most_steps,
            steps: 0,
            method: Method::Explicit,
            method_taken: Method::Explicit,
            stiff_steps: 0,
            time: 0.0,
            taken: 0.0,
            proposed: 0.0,
            last_error: 1e-4,
            before: state.clone(),
            state,
            rates_before: vec![0.0; n],
            rates: vec![0.0; n],
            trial: vec![0.0; n],
            spare: vec![0.0; n],
            stages: core::array::from_fn(|_| vec![0.0; n]),
        };
        solver.restart(system);
        solver
    }

    pub(crate) fn time(&self) -> f64 {
        self.time
    }

    /// Time at the beginning of the step just taken.
    pub(crate) fn time_before(&self) -> f64 {
        self.time - self.taken
    }

    pub(crate) fn state(&self) -> &[f64] {
        &self.state
    }

    #[cfg(test)]
    pub(crate) fn steps(&self) -> u32 {
        self.steps
    }

    /// Begins afresh from the present state, after the system has changed.
    pub(crate) fn restart<S: System>(&mut self, system: &S) {
        system.rates(&self.state, &mut self.rates);
        self.method = Method::Explicit;
        self.stiff_steps = 0;
        self.last_error = 1e-4;
        self.taken = 0.0;
        self.proposed = self.first_step(system);
    }

    /// First step by the growth of the rates over a small Euler step (Hairer et al., section II.4),
    /// with the tolerance as the unit of the state.
    fn first_step<S: System>(&mut self, system: &S) -> f64 {
        let controlled = system.controlled();
        let slope = largest(&self.rates[..controlled]) / self.tolerance;
        if !(slope > 1e-12) {
            return 1.0;
        }
        // Small enough that the state moves by a hundred tolerances at most.
        let trial_step = 100.0 / slope;
        combine(&mut self.trial, &self.state, [(trial_step, &self.rates)]);
        let (left, _) = self.stages.split_at_mut(1);
        system.rates(&self.trial, &mut left[0]);
        let mut curvature = 0.0_f64;
        for (new, old) in left[0][..controlled].iter().zip(&self.rates) {
            curvature = curvature.max((new - old).abs());
        }
        curvature /= trial_step * self.tolerance;
        // Fifth-order error taken as (h^2 * curvature)^(5/2), which errs to the short side.
        let by_curvature = if curvature > 0.0 { sqrt(0.01 / curvature) * 3.0 } else { f64::MAX };
        by_curvature.min(100.0 * trial_step).max(1e-9)
    }

    /// Takes one accepted step, not past `until`.
    pub(crate) fn step<S: System>(&mut self, system: &mut S, until: f64) -> Result<(), Halt> {
        let controlled = system.controlled();
        loop {
            if self.steps >= self.most_steps {
                return Err(Halt::TooManySteps);
            }
            let room = until - self.time;
            // A step is stretched a little rather than leave a sliver before `until`.
            let clipped = self.proposed * 1.01 >= room;
            let h = if clipped { room } else { self.proposed };
            if !(h > 0.0) || !(self.time + 0.1 * h > self.time) {
                return Err(Halt::NotFinite);
            }
            self.steps += 1;
            let error = match self.method {
                Method::Explicit => self.try_explicit(system, controlled, h),
                Method::LinearImplicit => self.try_linear_implicit(system, controlled, h),
            } / self.tolerance;
            // A NaN fails this comparison too, and the step is tried again, shorter.
            if error <= 1.0 {
                let bounded = error.max(1e-6);
                // Proportional-integral control, exponents of Hairer et al., section IV.2.
                let factor = 0.9 * power(self.last_error, 0.04) * power(bounded, 0.03 - 0.2);
                let wanted = h * factor.clamp(GROWTH.0, GROWTH.1);
                // A step cut short by `until` says little about the next but that it may be longer.
                self.proposed = if clipped { wanted.max(self.proposed) } else { wanted };
                self.last_error = bounded.max(1e-4);
                self.time = if clipped { until } else { self.time + h };
                self.taken = h;
                core::mem::swap(&mut self.before, &mut self.state);
                core::mem::swap(&mut self.state, &mut self.trial);
                core::mem::swap(&mut self.rates_before, &mut self.rates);
                self.method_taken = self.method;
                if self.method == Method::Explicit {
                    self.rates.copy_from_slice(&self.stages[6]);
                    if self.stiff_steps >= STIFF_AFTER && system.factor(&self.state, 1.0) {
                        self.method = Method::LinearImplicit;
                    }
                } else {
                    system.rates(&self.state, &mut self.rates);
                }
                return Ok(());
            }
            let shrink = if error.is_finite() { (0.9 * power(error, -0.2)).max(GROWTH.0) } else { GROWTH.0 };
            self.proposed = h * shrink;
        }
    }

    /// One step of the Dormand-Prince pair; leaves the result in `trial`, returns the error.
    fn try_explicit<S: System>(&mut self, system: &S, controlled: usize, h: f64) -> f64 {
        let y = &self.state;
        let trial = &mut self.trial;
        let [k1, k2, k3, k4, k5, k6, k7, inner] = &mut self.stages;
        k1.copy_from_slice(&self.rates);
        combine(trial, y, [(h * (1.0 / 5.0), k1)]);
        system.rates(trial, k2);
        combine(trial, y, [(h * (3.0 / 40.0), k1), (h * (9.0 / 40.0), k2)]);
        system.rates(trial, k3);
        combine(trial, y, [(h * (44.0 / 45.0), k1), (h * (-56.0 / 15.0), k2), (h * (32.0 / 9.0), k3)]);
        system.rates(trial, k4);
        combine(
            trial,
            y,
            [(h * (19372.0 / 6561.0), k1), (h * (-25360.0 / 2187.0), k2), (h * (64448.0 / 6561.0), k3), (h * (-212.0 / 729.0), k4)],
        );
        system.rates(trial, k5);
        combine(
            inner,
            y,
            [
                (h * (9017.0 / 3168.0), k1),
                (h * (-355.0 / 33.0), k2),
                (h * (46732.0 / 5247.0), k3),
                (h * (49.0 / 176.0), k4),
                (h * (-5103.0 / 18656.0), k5),
            ],
        );
        system.rates(inner, k6);
        combine(
            trial,
            y,
            [
                (h * (35.0 / 384.0), k1),
                (h * (500.0 / 1113.0), k3),
                (h * (125.0 / 192.0), k4),
                (h * (-2187.0 / 6784.0), k5),
                (h * (11.0 / 84.0), k6),
            ],
        );
        system.rates(trial, k7);
        // Four sums beside each other: one after the other the additions would wait for each other.
        let (mut worst, mut rate_change, mut state_change, mut sum) = ([0.0_f64; 4], [0.0; 4], [0.0; 4], [0.0; 4]);
        let [k1, k3, k4, k5, k6, k7] = [k1, k3, k4, k5, k6, k7].map(|stage| &stage[..controlled]);
        let (trial, inner) = (&trial[..controlled], &inner[..controlled]);
        let mut look = |i: usize, lane: usize| {
            let error = h
                * ((71.0 / 57600.0) * k1[i] - (71.0 / 16695.0) * k3[i] + (71.0 / 1920.0) * k4[i] - (17253.0 / 339200.0) * k5[i]
                    + (22.0 / 525.0) * k6[i]
                    - (1.0 / 40.0) * k7[i]);
            let magnitude = error.abs();
            worst[lane] = if magnitude > worst[lane] { magnitude } else { worst[lane] };
            // A comparison drops a NaN; the sum keeps it.
            sum[lane] += error;
            rate_change[lane] += (k7[i] - k6[i]) * (k7[i] - k6[i]);
            state_change[lane] += (trial[i] - inner[i]) * (trial[i] - inner[i]);
        };
        let whole = controlled / 4 * 4;
        for begin in (0..whole).step_by(4) {
            for lane in 0..4 {
                look(begin + lane, lane);
            }
        }
        for i in whole..controlled {
            look(i, 0);
        }
        let (rate_change, state_change, sum) = (total(rate_change), total(state_change), total(sum));
        let at_limit = h * h * rate_change > STABILITY_LIMIT * STABILITY_LIMIT * state_change;
        self.stiff_steps = if at_limit { self.stiff_steps + 1 } else { self.stiff_steps.saturating_sub(1) };
        if sum.is_finite() { largest(&worst) } else { f64::NAN }
    }

    /// One step of Rodas5P; leaves the result in `trial`, returns the error.
    fn try_linear_implicit<S: System>(&mut self, system: &mut S, controlled: usize, h: f64) -> f64 {
        if !system.factor(&self.state, 1.0 / (rodas::GAMMA * h)) {
            return f64::NAN;
        }
        let n = self.state.len();
        for stage in 0..STAGES {
            let (done, rest) = self.stages.split_at_mut(stage);
            let Some(current) = rest.first_mut() else { return f64::NAN };
            // The last two arguments are the sixth with the newest stages added: a stiffly accurate end.
            self.trial.copy_from_slice(&self.state);
            for (weight, vector) in rodas::ARGUMENT[stage].iter().zip(done.iter()) {
                for i in 0..n {
                    self.trial[i] += weight * vector[i];
                }
            }
            if stage == 0 {
                current.copy_from_slice(&self.rates);
            } else {
                system.rates(&self.trial, current);
            }
            for (weight, vector) in rodas::COUPLING[stage].iter().zip(done.iter()) {
                let weight = weight / h;
                for i in 0..n {
                    current[i] += weight * vector[i];
                }
            }
            system.solve(current);
        }
        let correction = &self.stages[STAGES - 1];
        let mut worst = 0.0_f64;
        let mut sum = 0.0;
        for i in 0..n {
            self.trial[i] += correction[i];
            sum += correction[i];
            if i < controlled {
                worst = worst.max(correction[i].abs());
            }
        }
        if sum.is_finite() { worst } else { f64::NAN }
    }

    /// Coefficients of the interpolant of one state value over the step just taken.
    fn interpolant(&self, i: usize) -> Interpolant {
        let (y0, y1) = (self.before[i], self.state[i]);
        let difference = y1 - y0;
        let at = |stage: usize| self.stages[stage][i];
        let h = self.taken;
        let (second, third, fourth) = match self.method_taken {
            Method::Explicit => {
                let bulge = h * at(0) - difference;
                let quartic = h
                    * ((-12715105075.0 / 11282082432.0) * at(0)
                        + (87487479700.0 / 32700410799.0) * at(2)
                        + (-10690763975.0 / 1880347072.0) * at(3)
                        + (701980252875.0 / 199316789632.0) * at(4)
                        + (-1453857185.0 / 822651844.0) * at(5)
                        + (69997945.0 / 29380423.0) * at(6));
                (bulge, difference - h * at(6) - bulge, quartic)
            }
            Method::LinearImplicit => {
                let sum = |row: &[f64; STAGES]| row.iter().enumerate().map(|(stage, weight)| weight * at(stage)).sum::<f64>();
                let [k1, k2, k3] = [sum(&rodas::DENSE[0]), sum(&rodas::DENSE[1]), sum(&rodas::DENSE[2])];
                (k1, k2 + k3, -k3)
            }
        };
        Interpolant { start: y0, difference, second, third, fourth }
    }

    /// A state value at a time inside the step just taken.
    pub(crate) fn value_at(&self, i: usize, time: f64) -> f64 {
        if self.taken == 0.0 {
            return self.state[i];
        }
        self.interpolant(i).at((time - self.time_before()) / self.taken)
    }

    /// First time in the step just taken, not before `from`, at which a state value passes a level.
    pub(crate) fn crossing(&self, i: usize, level: f64, direction: Direction, from: f64) -> Option<f64> {
        if self.taken == 0.0 {
            return None;
        }
        let interpolant = self.interpolant(i);
        let sign = if direction == Direction::Falling { 1.0 } else { -1.0 };
        let height = |theta: f64| sign * (interpolant.at(theta) - level);
        let first = ((from - self.time_before()) / self.taken).clamp(0.0, 1.0);
        let mut left = first;
        let mut left_height = height(left);
        // Quarters of the step, so that a dip that comes and goes inside it is not missed.
        for quarter in 1..=4 {
            let right = 0.25 * f64::from(quarter);
            if right <= left {
                continue;
            }
            let right_height = height(right);
            if left_height > 0.0 && right_height <= 0.0 {
                let theta = bracketed_root(height, left, left_height, right, right_height);
                return Some(self.time_before() + theta * self.taken);
            }
            (left, left_height) = (right, right_height);
        }
        None
    }

    /// The state at a time inside the step just taken.
    pub(crate) fn state_at(&mut self, time: f64) -> &[f64] {
        let mut inside = core::mem::take(&mut self.trial);
        for (i, value) in inside.iter_mut().enumerate() {
            *value = self.value_at(i, time);
        }
        self.trial = inside;
        &self.trial
    }

    /// Time in the step just taken at which a state value stops rising.
    pub(crate) fn peak<S: System>(&mut self, system: &S, i: usize) -> Option<f64> {
        if !(self.taken > 0.0 && self.rates_before[i] > 0.0 && self.rates[i] <= 0.0) {
            return None;
        }
        let (begin, taken) = (self.time_before(), self.taken);
        let mut rates = core::mem::take(&mut self.spare);
        let (first, last) = (self.rates_before[i], self.rates[i]);
        let slope = |theta: f64| {
            system.rates(self.state_at(begin + theta * taken), &mut rates);
            rates[i]
        };
        let theta = bracketed_root(slope, 0.0, first, 1.0, last);
        self.spare = rates;
        Some(begin + theta * taken)
    }

    /// Puts the solver back to a time inside the step just taken. `restart` must follow.
    pub(crate) fn cut(&mut self, time: f64) {
        if self.taken == 0.0 || time >= self.time {
            return;
        }
        let theta = ((time - self.time_before()) / self.taken).clamp(0.0, 1.0);
        for i in 0..self.state.len() {
            self.trial[i] = self.interpolant(i).at(theta);
        }
        core::mem::swap(&mut self.state, &mut self.trial);
        self.time = time;
    }
}

/// `y(theta)` over one step, `theta` from 0 to 1; both methods can be written so.
struct Interpolant {
    start: f64,
    difference: f64,
    second: f64,
    third: f64,
    fourth: f64,
}

impl Interpolant {
    fn at(&self, theta: f64) -> f64 {
        let rest = 1.0 - theta;
        self.start + theta * (self.difference + rest * (self.second + theta * (self.third + rest * self.fourth)))
    }
}

/// Sum of four.
pub(crate) fn total(lanes: [f64; 4]) -> f64 {
    (lanes[0] + lanes[1]) + (lanes[2] + lanes[3])
}

/// Largest magnitude.
fn largest(values: &[f64]) -> f64 {
    values.iter().fold(0.0, |most, value| f64::max(most, value.abs()))
}

/// Root of a function with `at_left > 0 >= at_right` (false position with the Illinois rule, and a
/// bisection where that is slow). Ends within rounding of the argument or after a bounded count.
pub(crate) fn bracketed_root(
    mut function: impl FnMut(f64) -> f64,
    mut left: f64,
    mut at_left: f64,
    mut right: f64,
    mut at_right: f64,
) -> f64 {
    let mut side = 0;
    for turn in 0..120 {
        if at_right == 0.0 || right - left <= 1e-15 * right.abs().max(left.abs()) {
            return right;
        }
        let secant = right - at_right * (right - left) / (at_right - at_left);
        let middle = if turn % 4 == 3 || !(secant > left && secant < right) { 0.5 * (left + right) } else { secant };
        if middle <= left || middle >= right {
            return right;
        }
        let value = function(middle);
        if value > 0.0 {
            left = middle;
            at_left = value;
            if side == 1 {
                at_right *= 0.5;
            }
            side = 1;
        } else {
            right = middle;
            at_right = value;
            if side == -1 {
                at_left *= 0.5;
            }
            side = -1;
        }
    }
    right
}

/// Coefficients of Rodas5P in the form without products by the Jacobian: Steinebach, BIT Numer.
/// Math. 63 (2023) 27, figures as distributed with the SciML solvers (MIT licence); the tests
/// confirm order five, and order four of the interpolant.
mod rodas {
    pub(super) const GAMMA: f64 = 0.21193756319429014;

    const SIXTH: [f64; 5] = [-7.502846399306121, 2.561846144803919, -11.627539656261098, -0.18268767659942256, 0.030198172008377946];

    /// Weights of the earlier stages in the argument of each stage.
    pub(super) const ARGUMENT: [&[f64]; super::STAGES] = [
        &[],
        &[3.0],
        &[2.849394379747939, 0.45842242204463923],
        &[-6.954028509809101, 2.489845061869568, -10.358996098473584],
        &[2.8029986275628964, 0.5072464736228206, -0.3988312541770524, -0.04721187230404641],
        &SIXTH,
        &[SIXTH[0], SIXTH[1], SIXTH[2], SIXTH[3], SIXTH[4], 1.0],
        &[SIXTH[0], SIXTH[1], SIXTH[2], SIXTH[3], SIXTH[4], 1.0, 1.0],
    ];

    /// Weights of the earlier stages, over the step, on the right-hand side of each stage.
    pub(super) const COUPLING: [&[f64]; super::STAGES] = [
        &[],
        &[-14.155112264123755],
        &[-17.97296035885952, -2.859693295451294],
        &[147.12150275711716, -1.41221402718213, 71.68940251302358],
        &[165.43517024871676, -0.4592823456491126, 42.90938336958603, -5.961986721573306],
        &[24.854864614690072, -3.0009227002832186, 47.4931110020768, 5.5814197821558125, -0.6610691825249471],
        &[30.91273214028599, -3.1208243349937974, 77.79954646070892, 34.28646028294783, -19.097331116725623, -28.087943162872662],
        &[
            37.80277123390563,
            -3.2571969029072276,
            112.26918849496327,
            66.9347231244047,
            -40.06618937091002,
            -54.66780262877968,
            -9.48861652309627,
        ],
    ];

    /// Weights of the stages in the three coefficients of the interpolant.
    pub(super) const DENSE: [[f64; super::STAGES]; 3] = [
        [
            25.948786856663858,
            -2.5579724845846235,
            10.433815404888879,
            -2.3679251022685204,
            0.524948541321073,
            1.1241088310450404,
            0.4272876194431874,
            -0.17202221070155493,
        ],
        [
            -9.91568850695171,
            -0.9689944594115154,
            3.0438037242978453,
            -24.495224566215796,
            20.176138334709044,
            15.98066361424651,
            -6.789040303419874,
            -6.710236069923372,
        ],
        [
            11.419903575922262,
            2.8879645146136994,
            72.92137995996029,
            80.12511834622643,
            -52.072871366152654,
            -59.78993625266729,
            -0.15582684282751913,
            4.883087185713722,
        ],
    ];
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A stiffening spring, `x'' = -x - x^3`: not linear, and its energy is known.
    struct Spring {
        shift: f64,
        slope: f64,
    }

    impl System for Spring {
        fn dimension(&self) -> usize {
            2
        }
        fn controlled(&self) -> usize {
            2
        }
        fn rates(&self, state: &[f64], rates: &mut [f64]) {
            rates[0] = state[1];
            rates[1] = -state[0] - state[0] * state[0] * state[0];
        }
        fn factor(&mut self, state: &[f64], shift: f64) -> bool {
            self.shift = shift;
            self.slope = -1.0 - 3.0 * state[0] * state[0];
            true
        }
        fn solve(&self, b: &mut [f64]) {
            let determinant = self.shift * self.shift - self.slope;
            let [x, y] = [b[0], b[1]];
            b[0] = (self.shift * x + y) / determinant;
            b[1] = (self.slope * x + self.shift * y) / determinant;
        }
    }

    fn fixed_steps(method: Method, steps: u32) -> (f64, f64) {
        let mut spring = Spring { shift: 0.0, slope: 0.0 };
        let mut solver = Solver::new(&spring, &[1.0, 0.0], 1e9, 100_000);
        let h = 2.0 / f64::from(steps);
        let mut inside = f64::NAN;
        for step in 0..steps {
            solver.method = method;
            solver.proposed = h;
            solver.step(&mut spring, h * f64::from(step + 1)).unwrap();
            if step + 1 == steps {
                inside = solver.value_at(0, solver.time_before() + 0.4 * solver.taken);
            }
        }
        (solver.state()[0], inside)
    }

    #[test]
    fn both_methods_have_order_five_and_their_interpolants_four() {
        for method in [Method::Explicit, Method::LinearImplicit] {
            let truth = fixed_steps(method, 4096).0;
            let errors = [32, 64].map(|n| (fixed_steps(method, n).0 - truth).abs());
            let order = libm::log2(errors[0] / errors[1]);
            assert!(order > 4.7 && order < 6.5, "{method:?} {order} {errors:?}");
            // The point inside the last step is at 2 - 0.6 h: its truth from very fine steps.
            let inside = [32_u32, 64].map(|n| {
                let mut spring = Spring { shift: 0.0, slope: 0.0 };
                let mut fine = Solver::new(&spring, &[1.0, 0.0], 1e-13, 1_000_000);
                let end = 2.0 - 0.6 * 2.0 / f64::from(n);
                while fine.time() < end {
                    fine.step(&mut spring, end).unwrap();
                }
                (fixed_steps(method, n).1 - fine.state()[0]).abs()
            });
            let order = libm::log2(inside[0] / inside[1]);
            assert!(order > 3.8, "{method:?} {order} {inside:?}");
        }
    }

    #[test]
    fn agrees_with_the_other_method_and_keeps_the_energy() {
        let mut spring = Spring { shift: 0.0, slope: 0.0 };
        let mut solver = Solver::new(&spring, &[1.0, 0.0], 1e-11, 100_000);
        while solver.time() < 20.0 {
            solver.step(&mut spring, 20.0).unwrap();
        }
        let [x, v] = [solver.state()[0], solver.state()[1]];
        assert!((0.5 * v * v + 0.5 * x * x + 0.25 * x * x * x * x - 0.75).abs() < 1e-8);
    }

    #[test]
    fn a_step_that_cannot_be_taken_is_a_failure_and_not_a_loop() {
        let mut spring = Spring { shift: 0.0, slope: 0.0 };
        let mut solver = Solver::new(&spring, &[f64::NAN, 0.0], 1e-8, 1000);
        assert!(solver.step(&mut spring, 1.0).is_err());
        let mut solver = Solver::new(&spring, &[1.0, 0.0], 1e-8, 5);
        let halt = (0..10).find_map(|_| solver.step(&mut spring, 1e6).err());
        assert_eq!(halt, Some(Halt::TooManySteps));
    }

    #[test]
    fn a_bracketed_root_is_found_to_rounding() {
        let root = bracketed_root(|x| 2.0 - x * x * x, 0.0, 2.0, 2.0, -6.0);
        assert!((root * root * root - 2.0).abs() < 1e-14);
        assert_eq!(bracketed_root(|x| -x, -1.0, 1.0, 0.0, 0.0), 0.0);
    }
}
