//! A hot block, its pump and its circuits as a set of heat balances.
//!
//! Every mass has one temperature. A block is one mass, or metal and water coupled by a film. A
//! circuit is a chain of cells that the water passes one after the other: a pipe run is cut into
//! equal stirred cells, an emitter is one. `C dT/dt = m c (T_upstream - T) - loss(T)` for a cell;
//! the block takes what the circuits bring back. Circuits lie parallel between the same two
//! points of the block. Temperatures are in kelvin, heat capacities in joule per kelvin.
//!
//! Every loss is integrated beside the temperatures, so that what the parts have given off and
//! what is still stored can be compared at any moment: both methods of the solver keep that sum.

use super::solver::{System, power, total};
use crate::convection::natural::FREE_FALL;
use crate::math::{cos, pow, sqrt};
use crate::water::liquid;
use alloc::vec;
use alloc::vec::Vec;

/// Heat given off to the room, in watt: `linear dT + coefficient |dT|^exponent + radiation (T^4 - T_room^4)`,
/// and a fitted law where there is one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct HeatLoss {
    /// W/K
    pub linear: f64,
    /// W/K^exponent
    pub coefficient: f64,
    pub exponent: f64,
    /// Emissivity times Stefan-Boltzmann constant times area, W/K^4
    pub radiation: f64,
    pub fitted: Option<FittedLoss>,
}

/// Terms of a fitted loss.
const FIT: usize = 12;

/// A loss known only point by point (a pipe's heat balance), as a polynomial.
///
/// Loss over excess is a polynomial in the sixth root of the excess: free convection by Churchill
/// and Chu has that root in it, radiation and insulation are smooth in it. Being one polynomial it
/// is as smooth as the solver needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct FittedLoss {
    /// Sixth roots of the least and the greatest excess fitted, K^(1/6)
    from: f64,
    to: f64,
    /// Chebyshev coefficients of loss over excess, W/K
    coefficients: [f64; FIT],
}

impl FittedLoss {
    /// Excess from which on the law is fitted, K; below, the loss is taken in proportion.
    const LEAST: f64 = 0.05;

    /// Through `loss` (W) at Chebyshev points of the excess over the room, up to `greatest` (K).
    pub(crate) fn new(greatest: f64, loss: impl Fn(f64) -> f64) -> Self {
        let (from, to) = (pow(Self::LEAST, 1.0 / 6.0), pow(greatest, 1.0 / 6.0));
        let count = FIT as f64;
        let angle = |point: usize| core::f64::consts::PI * (point as f64 + 0.5) / count;
        let values: [f64; FIT] = core::array::from_fn(|point| {
            let root = 0.5 * (from + to) + 0.5 * (to - from) * cos(angle(point));
            let excess = pow(root, 6.0);
            loss(excess) / excess
        });
        let coefficients = core::array::from_fn(|term| {
            let sum: f64 = values.iter().enumerate().map(|(point, value)| value * cos(term as f64 * angle(point))).sum();
            sum * if term == 0 { 1.0 } else { 2.0 } / count
        });
        Self { from, to, coefficients }
    }

    /// Loss over excess, W/K, and its derivative by the logarithm of the excess.
    fn conductance(&self, excess: f64) -> (f64, f64) {
        let root = crate::math::clamp(power(excess.abs().max(1e-12), 1.0 / 6.0), self.from, self.to);
        let x = (2.0 * root - self.from - self.to) / (self.to - self.from);
        // Clenshaw's recurrence, for the sum and its derivative.
        let (mut b1, mut b2, mut d1, mut d2) = (0.0, 0.0, 0.0, 0.0);
        for coefficient in self.coefficients.iter().skip(1).rev() {
            (d1, d2) = (2.0 * b1 + 2.0 * x * d1 - d2, d1);
            (b1, b2) = (coefficient + 2.0 * x * b1 - b2, b1);
        }
        let value = self.coefficients[0] + x * b1 - b2;
        let slope = if root > self.from && root < self.to { b1 + x * d1 - d2 } else { 0.0 };
        (value, slope * 2.0 / (self.to - self.from) * root / 6.0)
    }
}

/// Sum of the excess of each temperature over the room, K.
#[inline(always)]
fn excess(temperatures: &[f64], room: f64) -> f64 {
    let mut lanes = [0.0; 4];
    let fours = temperatures.chunks_exact(4);
    for (lane, temperature) in lanes.iter_mut().zip(fours.remainder()) {
        *lane += temperature - room;
    }
    for four in fours {
        for (lane, temperature) in lanes.iter_mut().zip(four) {
            *lane += temperature - room;
        }
    }
    total(lanes)
}

impl HeatLoss {
    pub(crate) const NONE: HeatLoss = HeatLoss { linear: 0.0, coefficient: 0.0, exponent: 1.0, radiation: 0.0, fitted: None };

    pub(crate) fn linear(conductance: f64) -> Self {
        HeatLoss { linear: conductance, ..Self::NONE }
    }

    /// `power_at_50` watt at 50 K over the room and by a power of the difference elsewhere: an
    /// emitter (EN 442 form), or natural convection.
    pub(crate) fn power_law(power_at_50: f64, exponent: f64) -> Self {
        if exponent == 1.0 {
            return Self::linear(power_at_50 / 50.0);
        }
        HeatLoss { coefficient: power_at_50 / pow(50.0, exponent), exponent, ..Self::NONE }
    }

    /// A law known point by point; see [`FittedLoss`].
    pub(crate) fn fitted(greatest: f64, loss: impl Fn(f64) -> f64) -> Self {
        HeatLoss { fitted: Some(FittedLoss::new(greatest, loss)), ..Self::NONE }
    }

    fn times(self, factor: f64) -> Self {
        let fitted = self.fitted.map(|law| FittedLoss { coefficients: law.coefficients.map(|term| term * factor), ..law });
        HeatLoss {
            fitted,
            linear: self.linear * factor,
            coefficient: self.coefficient * factor,
            exponent: self.exponent,
            radiation: self.radiation * factor,
        }
    }

    fn is_linear(&self) -> bool {
        self.coefficient == 0.0 && self.radiation == 0.0 && self.fitted.is_none()
    }

    /// Heat given off, W.
    pub(crate) fn power(&self, temperature: f64, room: f64) -> f64 {
        self.linear * (temperature - room) + self.beyond_linear(temperature, room)
    }

    fn beyond_linear(&self, temperature: f64, room: f64) -> f64 {
        let excess = temperature - room;
        let mut sum = 0.0;
        if self.coefficient != 0.0 && excess != 0.0 {
            sum += self.coefficient * excess * power(excess.abs(), self.exponent - 1.0);
        }
        if self.radiation != 0.0 {
            // (T^4 - R^4) without the cancellation of near temperatures.
            sum += self.radiation * excess * (temperature + room) * (temperature * temperature + room * room);
        }
        if let Some(law) = &self.fitted {
            sum += excess * law.conductance(excess).0;
        }
        sum
    }

    /// Derivatives of `beyond_linear` by the temperature and, with the sign turned, by the room's.
    fn slopes(&self, temperature: f64, room: f64) -> (f64, f64) {
        let excess = (temperature - room).abs();
        let power_law = if self.coefficient != 0.0 && excess > 0.0 {
            self.coefficient * self.exponent * power(excess, self.exponent - 1.0)
        } else {
            0.0
        };
        let fitted = self.fitted.map_or(0.0, |law| {
            let (value, by_logarithm) = law.conductance(temperature - room);
            value + by_logarithm
        });
        let power_law = power_law + fitted;
        let cube = |t: f64| 4.0 * self.radiation * t * t * t;
        (power_law + cube(temperature), power_law + cube(room))
    }
}

/// The iron and the water of the heat generator.
#[derive(Debug, Clone)]
pub(crate) struct Block {
    /// All of it, or the water alone where the metal is a mass of its own. J/K
    pub heat_capacity: f64,
    pub metal: Option<Metal>,
    /// From the metal where it is a mass of its own.
    pub casing: HeatLoss,
    /// Temperature at the start, K
    pub start: f64,
}

#[derive(Debug, Clone, Copy)]
pub(crate) struct Metal {
    /// J/K
    pub heat_capacity: f64,
    /// Conductance of the film between metal and water, W/K
    pub film: f64,
    /// K
    pub start: f64,
}

/// One piece of a circuit, in the order the water passes it.
#[derive(Debug, Clone)]
pub(crate) struct Part {
    /// Of the whole part, J/K
    pub heat_capacity: f64,
    /// Of the whole part.
    pub loss: HeatLoss,
    /// Stirred cells in a row; an emitter has one.
    pub cells: usize,
    /// Temperature at the start, K
    pub start: f64,
}

impl Part {
    /// A run of pipe: capacity in J/(m K), loss per metre.
    pub(crate) fn run(length: f64, capacity_per_metre: f64, loss_per_metre: HeatLoss, cells: usize, start: f64) -> Self {
        Part { heat_capacity: length * capacity_per_metre, loss: loss_per_metre.times(length), cells, start }
    }
}

#[derive(Debug, Clone)]
pub(crate) struct Circuit {
    pub parts: Vec<Part>,
    pub open: bool,
    /// Flow over the root of the pressure difference, kg/(s Pa^1/2). Only its ratio to that of the
    /// other open circuits counts while the pump's flow is given.
    pub flow_coefficient: f64,
    /// Height of the emitter's middle over the block's, m, where water is to circulate by gravity
    /// while the pump stands: it rises in the first part and falls in the last. The flow coefficient
    /// must then be a true one.
    pub rise: Option<f64>,
}

/// Pressure difference, Pa, about which gravity flow passes from laminar (in proportion) to
/// turbulent (as the root): a regularisation of ours, so that the flow begins smoothly.
const LAMINAR_PRESSURE: f64 = 2.0;
/// Absolute pressure taken for the density of the water, Pa; hardly matters.
const COLUMN_PRESSURE: f64 = 2e5;

/// Melting point of water, K.
const MELTING: f64 = 273.15;

/// Flow coefficient of a circuit that loses `pressure` (Pa) at `flow` (kg/s), turbulent.
pub(crate) fn flow_coefficient(flow: f64, pressure: f64) -> f64 {
    flow / sqrt(pressure)
}

#[derive(Debug, Clone, Copy)]
pub(crate) enum Pump {
    /// Whole mass flow, kg/s, however many circuits are open.
    Flow(f64),
    /// `pressure = shut_off - steepness flow^2`, Pa and Pa s2/kg2.
    Curve { shut_off: f64, steepness: f64 },
}

impl Pump {
    /// Mass flow through circuits of this flow coefficient in all, kg/s.
    fn flow(self, coefficient: f64) -> f64 {
        if !(coefficient > 0.0) {
            return 0.0;
        }
        match self {
            Pump::Flow(flow) => flow,
            Pump::Curve { shut_off, steepness } => sqrt(shut_off / (steepness + 1.0 / (coefficient * coefficient))),
        }
    }
}

#[derive(Debug, Clone, Copy)]
pub(crate) enum Room {
    /// K
    Fixed(f64),
    /// A room of one temperature that takes all the losses and gives them on to the outside.
    Lumped { start: f64, heat_capacity: f64, loss: f64, outside: f64 },
}

/// A temperature that somebody looks at, or a thermostat.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Point {
    /// The water of the block, which is what leaves by the flow pipe.
    Block,
    Metal,
    /// The last cell of a part of a circuit.
    PartEnd {
        circuit: usize,
        part: usize,
    },
    Room,
    /// The sensor of this number.
    Sensor(usize),
}

/// A sensor follows the temperature of its point with a lag of first order.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Sensor {
    pub point: Point,
    /// Time constant, s; zero where the sensor shows the point itself.
    pub time_constant: f64,
}

#[derive(Debug, Clone)]
pub(crate) struct Network {
    pub block: Block,
    pub pump: Pump,
    pub circuits: Vec<Circuit>,
    pub room: Room,
    /// Specific heat capacity of the water that flows, J/(kg K)
    pub water_heat_capacity: f64,
    pub sensors: Vec<Sensor>,
}

/// Heat put into the block by the burner, W.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Firing {
    Fixed(f64),
    /// Falls from `most` at `band` kelvin below `set_point` of a sensor to `least` at the set point;
    /// whoever runs it leaves it at either end, so that the law has no corner inside a step.
    Modulating {
        least: f64,
        most: f64,
        set_point: f64,
        band: f64,
        sensor: usize,
    },
}

impl Firing {
    pub(crate) const OFF: Firing = Firing::Fixed(0.0);

    fn power(&self, sensor: impl Fn(usize) -> f64) -> f64 {
        match *self {
            Firing::Fixed(power) => power,
            Firing::Modulating { least, most, set_point, band, sensor: number } => {
                let share = (set_point - sensor(number)) / band;
                least + (most - least) * share
            }
        }
    }

    /// Derivative of the power by the temperature of its sensor, W/K.
    fn slope(&self) -> f64 {
        match *self {
            Firing::Fixed(_) => 0.0,
            Firing::Modulating { least, most, band, .. } => (least - most) / band,
        }
    }
}

/// A part of the network that gives heat to the room: its nodes lie in a row.
#[derive(Debug, Clone, Copy)]
struct Sink {
    from: usize,
    to: usize,
    /// Linear loss of one node, W/K
    linear: f64,
    /// What goes beyond a linear loss, of one node.
    rest: HeatLoss,
    /// Heat capacity of one node, J/K
    capacity: f64,
}

#[derive(Debug, Clone, Copy)]
struct Chain {
    from: usize,
    to: usize,
    /// m c by the pump, W/K
    conveyance: f64,
    gravity: Option<Column>,
}

/// The two legs of a circuit that hangs over the block.
#[derive(Debug, Clone, Copy)]
struct Column {
    height: f64,
    /// kg/(s Pa^1/2)
    flow_coefficient: f64,
    /// End of the rising leg and beginning of the falling one, as nodes.
    up_to: usize,
    down_from: usize,
}

/// Solution of the hub equations and of what hangs on them, prepared by `factor`.
#[derive(Debug, Clone, Default)]
struct Factors {
    shift: f64,
    /// One over the diagonal, for every follower.
    inverse: Vec<f64>,
    /// Share of the predecessor in a follower, after elimination.
    follow: Vec<f64>,
    /// What a follower has of the hubs' values (water, metal, room).
    of_hub: [Vec<f64>; 3],
    /// `m c` by chain, W/K, as it was when prepared.
    conveyance: Vec<f64>,
    /// Loss slope of each node by its own temperature and by the room's, W/K.
    by_self: Vec<f64>,
    by_room: Vec<f64>,
    hub_inverse: [[f64; 3]; 3],
    firing_slope: f64,
}

/// A network made ready for the solver. State: water, metal, cells, room, sensors; then the heat
/// given off by casing and parts, the heat given on to the outside, and the heat from the burner.
#[derive(Debug, Clone)]
pub(crate) struct Model {
    temperatures: usize,
    water: usize,
    metal: Option<usize>,
    room: Option<usize>,
    chains: Vec<Chain>,
    sinks: Vec<Sink>,
    /// Number of the part's sink, by circuit.
    part_sinks: Vec<usize>,
    /// Sensors with a lag: own node, node followed, rate in 1/s.
    lags: Vec<(usize, usize, f64)>,
    sensor_nodes: Vec<usize>,
    /// Per node: one over the heat capacity, K/J.
    per_capacity: Vec<f64>,
    /// Per node: linear loss over capacity, 1/s.
    decay: Vec<f64>,
    /// Heat capacity per node, zero where none is stored (sensors).
    capacity: Vec<f64>,
    film: f64,
    fixed_room: f64,
    outside_loss: f64,
    outside: f64,
    firing: Firing,
    /// Heat put in all the time, W
    standing: f64,
    pump: Pump,
    pump_runs: bool,
    flow_coefficients: Vec<f64>,
    water_heat_capacity: f64,
    open: Vec<bool>,
    initial: Vec<f64>,
    factors: Factors,
    /// Two states to work with.
    scratch: [Vec<f64>; 2],
}

impl Model {
    /// Lays the network out. `None` where a circuit, part or sensor is asked for that is not there,
    /// a part has no cell, or a number makes no sense (a mass without heat capacity, for one).
    pub(crate) fn new(network: &Network) -> Option<Self> {
        let positive = |x: f64| x > 0.0 && x.is_finite();
        let block = &network.block;
        if !positive(block.heat_capacity) || !positive(network.water_heat_capacity) {
            return None;
        }
        let mut initial = vec![block.start];
        let mut capacity = vec![block.heat_capacity];
        let mut metal = None;
        let mut film = 0.0;
        if let Some(mass) = block.metal {
            if !positive(mass.heat_capacity) || !positive(mass.film) {
                return None;
            }
            metal = Some(1);
            film = mass.film;
            initial.push(mass.start);
            capacity.push(mass.heat_capacity);
        }
        let casing_node = metal.unwrap_or(0);
        let sink = |from: usize, to: usize, loss: HeatLoss, capacity: f64| Sink {
            from,
            to,
            linear: loss.linear,
            rest: HeatLoss { linear: 0.0, ..loss },
            capacity,
        };
        let mut sinks = vec![sink(casing_node, casing_node + 1, block.casing, capacity[casing_node])];
        let mut chains = Vec::new();
        let mut part_sinks = Vec::new();
        for circuit in &network.circuits {
            let from = capacity.len();
            part_sinks.push(sinks.len());
            for part in &circuit.parts {
                if part.cells == 0 || !positive(part.heat_capacity) {
                    return None;
                }
                #[allow(clippy::cast_precision_loss)]
                let share = 1.0 / part.cells as f64;
                let start = capacity.len();
                for _ in 0..part.cells {
                    capacity.push(part.heat_capacity * share);
                    initial.push(part.start);
                }
                sinks.push(sink(start, capacity.len(), part.loss.times(share), part.heat_capacity * share));
            }
            if capacity.len() == from {
                return None;
            }
            let gravity = match circuit.rise {
                Some(height) if circuit.open => {
                    let [up, .., down] = circuit.parts.as_slice() else { return None };
                    if !positive(circuit.flow_coefficient) {
                        return None;
                    }
                    let (up_to, down_from) = (from + up.cells, capacity.len() - down.cells);
                    Some(Column { height, flow_coefficient: circuit.flow_coefficient, up_to, down_from })
                }
                _ => None,
            };
            chains.push(Chain { from, to: capacity.len(), conveyance: 0.0, gravity });
        }
        let mut room = None;
        let (mut fixed_room, mut outside_loss, mut outside) = (f64::NAN, 0.0, 0.0);
        match network.room {
            Room::Fixed(temperature) => fixed_room = temperature,
            Room::Lumped { start, heat_capacity, loss, outside: temperature } => {
                if !positive(heat_capacity) {
                    return None;
                }
                room = Some(capacity.len());
                capacity.push(heat_capacity);
                initial.push(start);
                outside_loss = loss;
                outside = temperature;
            }
        }
        let mut model = Model {
            temperatures: 0,
            water: 0,
            metal,
            room,
            chains,
            sinks,
            part_sinks,
            lags: Vec::new(),
            sensor_nodes: Vec::new(),
            per_capacity: Vec::new(),
            decay: Vec::new(),
            capacity,
            film,
            fixed_room,
            outside_loss,
            outside,
            firing: Firing::OFF,
            standing: 0.0,
            pump: network.pump,
            pump_runs: false,
            flow_coefficients: network.circuits.iter().map(|circuit| circuit.flow_coefficient).collect(),
            water_heat_capacity: network.water_heat_capacity,
            open: network.circuits.iter().map(|circuit| circuit.open).collect(),
            initial,
            factors: Factors::default(),
            scratch: Default::default(),
        };
        for sensor in &network.sensors {
            let node = model.node(sensor.point)?;
            if sensor.time_constant > 0.0 {
                model.lags.push((model.capacity.len(), node, 1.0 / sensor.time_constant));
                model.sensor_nodes.push(model.capacity.len());
                model.capacity.push(0.0);
                model.initial.push(model.initial[node]);
            } else {
                model.sensor_nodes.push(node);
            }
        }
        let n = model.capacity.len();
        model.temperatures = n;
        model.per_capacity = model.capacity.iter().map(|&c| if c > 0.0 { 1.0 / c } else { 0.0 }).collect();
        model.decay = vec![0.0; n];
        for sink in &model.sinks {
            for node in sink.from..sink.to {
                model.decay[node] = sink.linear / sink.capacity;
            }
        }
        model.initial.extend(core::iter::repeat_n(0.0, model.sinks.len() + 2));
        model.factors = Factors {
            inverse: vec![0.0; n],
            follow: vec![0.0; n],
            of_hub: core::array::from_fn(|_| vec![0.0; n]),
            by_self: vec![0.0; n],
            by_room: vec![0.0; n],
            conveyance: vec![0.0; model.chains.len()],
            ..Factors::default()
        };
        model.scratch = core::array::from_fn(|_| model.initial.clone());
        Some(model)
    }

    pub(crate) fn initial(&self) -> &[f64] {
        &self.initial
    }

    /// Node of a point, where it is there.
    pub(crate) fn node(&self, point: Point) -> Option<usize> {
        match point {
            Point::Block => Some(self.water),
            Point::Metal => self.metal,
            Point::PartEnd { circuit, part } => {
                let first = *self.part_sinks.get(circuit)?;
                let end = self.part_sinks.get(circuit + 1).copied().unwrap_or(self.sinks.len());
                let sink = self.sinks.get(first + part).filter(|_| first + part < end)?;
                Some(sink.to - 1)
            }
            Point::Room => self.room,
            Point::Sensor(number) => self.sensor_nodes.get(number).copied(),
        }
    }

    /// Runs or stops the pump. False where it would run without an open way.
    pub(crate) fn set_pump(&mut self, running: bool) -> bool {
        let total: f64 = self.flow_coefficients.iter().zip(&self.open).filter(|(_, open)| **open).map(|(k, _)| k).sum();
        let flow = if running { self.pump.flow(total) } else { 0.0 };
        for (number, chain) in self.chains.iter_mut().enumerate() {
            let share = if self.open[number] && total > 0.0 { self.flow_coefficients[number] / total } else { 0.0 };
            chain.conveyance = flow * share * self.water_heat_capacity;
        }
        self.pump_runs = running;
        !running || flow > 0.0
    }

    /// Heat put into the block all the time, W, such as by a pilot flame.
    pub(crate) fn set_standing_heat(&mut self, power: f64) {
        self.standing = power;
    }

    /// Takes the temperatures of a state for those of the start, and begins the heat book anew.
    pub(crate) fn start_from(&mut self, state: &[f64]) {
        for (node, (start, value)) in self.initial.iter_mut().zip(state).enumerate() {
            *start = if node < self.temperatures { *value } else { 0.0 };
        }
    }

    pub(crate) fn set_firing(&mut self, firing: Firing) {
        self.firing = firing;
    }

    pub(crate) fn firing(&self) -> Firing {
        self.firing
    }

    /// Heat put in at a state, W.
    pub(crate) fn firing_power(&self, state: &[f64]) -> f64 {
        self.standing + self.firing.power(|sensor| self.sensor_nodes.get(sensor).map_or(f64::NAN, |&node| state[node]))
    }

    /// Whether any flow depends on the temperatures.
    pub(crate) fn circulates_by_gravity(&self) -> bool {
        !self.pump_runs && self.chains.iter().any(|chain| chain.gravity.is_some())
    }

    /// `m c` of a circuit, W/K: the pump's, or what the weight of the colder leg moves against the
    /// circuit's resistance (`g h (rho_return - rho_flow) = (m / K)^2`, the balance of gravity
    /// heating in any textbook). A circuit does not run backwards.
    ///
    /// A stirred cell has the temperature of the water that leaves it, so that a leg is known at the
    /// ends of its cells and its mean goes by the trapezoidal rule, from the water that enters it on.
    /// That the rising leg begins with the block's own water is what sets a standing circuit going:
    /// by its cells alone it would rest for ever over a hot block, once both legs were alike.
    fn conveyance(&self, chain: &Chain, state: &[f64]) -> f64 {
        let Some(column) = chain.gravity.filter(|_| !self.pump_runs) else { return chain.conveyance };
        let mean = |entry: f64, cells: &[f64]| {
            let (inner, last) = cells.split_at(cells.len() - 1);
            (0.5 * (entry + last[0]) + inner.iter().sum::<f64>()) / cells.len() as f64
        };
        // Below the melting point, where a rest may lie, the table of densities ends and nothing circulates.
        let density = |temperature: f64| liquid(COLUMN_PRESSURE, if temperature < MELTING { MELTING } else { temperature }).density;
        let up = mean(state[self.water], &state[chain.from..column.up_to]);
        let down = mean(state[column.down_from - 1], &state[column.down_from..chain.to]);
        // A comparison that a NaN (water too hot for the table of densities) does not pass: it stops the solver.
        let weight = FREE_FALL * column.height * (density(down) - density(up));
        let pressure = if weight <= 0.0 { 0.0 } else { weight };
        let flow = column.flow_coefficient * pressure / sqrt(pressure + LAMINAR_PRESSURE);
        flow * self.water_heat_capacity
    }

    /// Temperature of the mixed water that comes back to the block, K; NaN while nothing flows.
    pub(crate) fn return_temperature(&self, state: &[f64]) -> f64 {
        let mut flow = 0.0;
        let mut heat = 0.0;
        for chain in &self.chains {
            let conveyance = self.conveyance(chain, state);
            flow += conveyance;
            heat += conveyance * state[chain.to - 1];
        }
        heat / flow
    }

    fn room_temperature(&self, state: &[f64]) -> f64 {
        self.room.map_or(self.fixed_room, |node| state[node])
    }

    /// Heat stored in the masses over the start, J; the room's own is left out.
    pub(crate) fn stored(&self, state: &[f64]) -> f64 {
        let mut sum = 0.0;
        for node in (0..self.temperatures).filter(|node| Some(*node) != self.room) {
            sum += self.capacity[node] * (state[node] - self.initial[node]);
        }
        sum
    }

    /// Heat the masses hold over the room, J; the room's own is left out.
    pub(crate) fn left(&self, state: &[f64]) -> f64 {
        let room = self.room_temperature(state);
        let masses = (0..self.temperatures).filter(|node| Some(*node) != self.room);
        masses.map(|node| self.capacity[node] * (state[node] - room)).sum()
    }

    /// Heat given off since the start by the casing, J.
    pub(crate) fn casing_heat(&self, state: &[f64]) -> f64 {
        state[self.temperatures]
    }

    /// Heat given off since the start by a part of a circuit, J.
    pub(crate) fn part_heat(&self, state: &[f64], circuit: usize, part: usize) -> f64 {
        self.part_sinks.get(circuit).map_or(f64::NAN, |first| state[self.temperatures + first + part])
    }

    /// Heat given off since the start by all that gives heat to the room, J.
    pub(crate) fn given_off(&self, state: &[f64]) -> f64 {
        state[self.temperatures..self.temperatures + self.sinks.len()].iter().sum()
    }

    /// Heat from burner and standing flame since the start, J.
    pub(crate) fn heat_put_in(&self, state: &[f64]) -> f64 {
        state[self.temperatures + self.sinks.len() + 1]
    }

    /// What the heat book lacks, as a share of the heat that moved: burner = stored + given off.
    pub(crate) fn imbalance(&self, state: &[f64]) -> f64 {
        let (stored, given, burner) = (self.stored(state), self.given_off(state), self.heat_put_in(state));
        let moved = stored.abs().max(given.abs()).max(burner.abs());
        if moved > 0.0 { (burner - stored - given) / moved } else { 0.0 }
    }

    /// Turns a state into the one at which nothing changes any more. False where there is none (heat
    /// put in and no loss) or none was found.
    pub(crate) fn settle(&mut self, state: &mut [f64]) -> bool {
        let unheated = self.standing == 0.0 && self.firing == Firing::OFF;
        if unheated && self.room.is_none() && self.sinks.iter().all(|sink| sink.linear > 0.0 || !sink.rest.is_linear()) {
            // All masses lose heat, and nothing gives any: the rest is the room's temperature, known without a search.
            state[..self.temperatures].fill(self.fixed_room);
            return true;
        }
        let [mut from, mut rates] = core::mem::take(&mut self.scratch);
        from.copy_from_slice(state);
        let mut found = self.newton(state, &mut rates, 0);
        if !found {
            // Far from the end the slopes are those of another temperature: short steps lead up to it.
            state.copy_from_slice(&from);
            found = self.newton(state, &mut rates, 8);
        }
        self.scratch = [from, rates];
        found
    }

    /// Newton steps with a very long time step, after some shorter ones.
    fn newton(&mut self, state: &mut [f64], rates: &mut [f64], short_steps: usize) -> bool {
        for turn in 0..short_steps + 100 {
            self.rates(state, rates);
            self.factor(state, if turn < short_steps { 1e-4 } else { 1e-10 });
            self.solve(rates);
            let mut change = 0.0_f64;
            for (value, step) in state[..self.temperatures].iter_mut().zip(rates.iter()) {
                *value += step;
                change = change.max(step.abs());
                if !(*value > 0.0 && *value < 1e5) {
                    return false;
                }
            }
            if turn >= short_steps && change < 1e-10 {
                return true;
            }
        }
        false
    }

    /// Whether no temperature can rise above a level from a state on, whatever flows: all of them
    /// and the outside lie below it, and the casing alone would lose at that level what is put in.
    /// (The level everywhere is then a state at which nothing rises, and water that moves between
    /// masses takes none above another.)
    pub(crate) fn is_bounded_by(&self, state: &[f64], level: f64) -> bool {
        let around = if self.room.is_some() { self.outside } else { self.fixed_room };
        let hottest = state[..self.temperatures].iter().copied().fold(around, f64::max);
        let lost = match (self.room, self.sinks.first()) {
            // A room that warms as far would leave the casing nothing to lose.
            (None, Some(casing)) => casing.linear * (level - around) + casing.rest.power(level, around),
            _ => 0.0,
        };
        hottest <= level && matches!(self.firing, Firing::Fixed(power) if power + self.standing <= lost)
    }

    /// Heat that lies between the temperatures of two states, each mass counted by its size, J.
    pub(crate) fn heat_between(&self, state: &[f64], other: &[f64]) -> f64 {
        self.capacity.iter().zip(state).zip(other).map(|((capacity, a), b)| capacity * (a - b).abs()).sum()
    }

    /// Largest distance of any temperature from that of another state, K.
    pub(crate) fn distance(&self, state: &[f64], other: &[f64]) -> f64 {
        state[..self.temperatures].iter().zip(other).fold(0.0, |most, (a, b)| if (a - b).abs() > most { (a - b).abs() } else { most })
    }
}

impl System for Model {
    fn dimension(&self) -> usize {
        self.initial.len()
    }

    fn controlled(&self) -> usize {
        self.temperatures
    }

    fn rates(&self, state: &[f64], rates: &mut [f64]) {
        let n = self.temperatures;
        let room = self.room_temperature(state);
        let water = state[self.water];
        let (temperatures, _) = state.split_at(n);
        let (change, books) = rates.split_at_mut(n);

        let mut returned = 0.0;
        for chain in &self.chains {
            let (from, to) = (chain.from, chain.to);
            let conveyance = self.conveyance(chain, state);
            let n = to - from;
            let (cells, per_capacity, decay) =
                (&temperatures[from..to][..n], &self.per_capacity[from..to][..n], &self.decay[from..to][..n]);
            let change = &mut change[from..to][..n];
            change[0] = conveyance * per_capacity[0] * (water - cells[0]) - decay[0] * (cells[0] - room);
            for i in 1..n {
                change[i] = conveyance * per_capacity[i] * (cells[i - 1] - cells[i]) - decay[i] * (cells[i] - room);
            }
            returned += conveyance * (cells[n - 1] - water);
        }

        let firing = self.firing_power(state);
        if let Some(metal) = self.metal {
            let through_film = self.film * (state[metal] - water);
            change[self.water] = (returned + through_film) * self.per_capacity[self.water];
            change[metal] = (firing - through_film) * self.per_capacity[metal] - self.decay[metal] * (state[metal] - room);
        } else {
            change[self.water] = (returned + firing) * self.per_capacity[self.water] - self.decay[self.water] * (water - room);
        }

        let mut to_room = 0.0;
        for (sink, book) in self.sinks.iter().zip(books.iter_mut()) {
            let cells = &temperatures[sink.from..sink.to];
            let mut power = if sink.linear == 0.0 { 0.0 } else { sink.linear * excess(cells, room) };
            if !sink.rest.is_linear() {
                for node in sink.from..sink.to {
                    let beyond = sink.rest.beyond_linear(temperatures[node], room);
                    change[node] -= beyond * self.per_capacity[node];
                    power += beyond;
                }
            }
            *book = power;
            to_room += power;
        }

        let to_outside = self.outside_loss * (room - self.outside);
        if let Some(node) = self.room {
            change[node] = (to_room - to_outside) * self.per_capacity[node];
        }
        for &(node, followed, rate) in &self.lags {
            change[node] = rate * (temperatures[followed] - temperatures[node]);
        }
        let last = self.sinks.len();
        books[last] = if self.room.is_some() { to_outside } else { 0.0 };
        books[last + 1] = firing;
    }

    fn factor(&mut self, state: &[f64], shift: f64) -> bool {
        let room_temperature = self.room_temperature(state);
        let slope = self.firing.slope();
        let gravity = self.circulates_by_gravity();
        for number in 0..self.chains.len() {
            self.factors.conveyance[number] = self.conveyance(&self.chains[number], state);
        }
        let f = &mut self.factors;
        f.shift = shift;
        f.firing_slope = slope;
        for sink in &self.sinks {
            for node in sink.from..sink.to {
                let (by_self, by_room) = if sink.rest.is_linear() { (0.0, 0.0) } else { sink.rest.slopes(state[node], room_temperature) };
                f.by_self[node] = sink.linear + by_self;
                f.by_room[node] = sink.linear + by_room;
            }
        }
        // Followers: each has at most one predecessor and the room, so elimination runs down the chain.
        for (chain, conveyance) in self.chains.iter().zip(&f.conveyance) {
            let (mut water_part, mut room_part) = (1.0, 0.0);
            for node in chain.from..chain.to {
                let loss = f.by_self[node] * self.per_capacity[node];
                let convey = conveyance * self.per_capacity[node];
                let inverse = 1.0 / (shift + convey + loss);
                f.inverse[node] = inverse;
                f.follow[node] = convey * inverse;
                water_part *= f.follow[node];
                room_part = f.follow[node] * room_part + f.by_room[node] * self.per_capacity[node] * inverse;
                f.of_hub[0][node] = water_part;
                f.of_hub[1][node] = 0.0;
                f.of_hub[2][node] = if self.room.is_some() { room_part } else { 0.0 };
            }
        }
        for (hub, node) in [Some(self.water), self.metal, self.room].into_iter().enumerate() {
            if let Some(node) = node {
                for (other, column) in f.of_hub.iter_mut().enumerate() {
                    column[node] = if other == hub { 1.0 } else { 0.0 };
                }
            }
        }
        for &(node, followed, rate) in &self.lags {
            f.inverse[node] = 1.0 / (shift + rate);
            f.follow[node] = rate * f.inverse[node];
            for column in &mut f.of_hub {
                column[node] = f.follow[node] * column[followed];
            }
        }
        // Hub equations with the followers put in.
        let mut matrix = [[0.0; 3]; 3];
        let [water_row, metal_row, room_row] = &mut matrix;
        let per_water = self.per_capacity[self.water];
        water_row[0] += shift;
        for (chain, conveyance) in self.chains.iter().zip(&f.conveyance) {
            let rate = conveyance * per_water;
            water_row[0] += rate - rate * f.of_hub[0][chain.to - 1];
            water_row[2] -= rate * f.of_hub[2][chain.to - 1];
        }
        let (fired_row, per_fired) = if let Some(metal) = self.metal {
            let per_metal = self.per_capacity[metal];
            water_row[0] += self.film * per_water;
            water_row[1] -= self.film * per_water;
            metal_row[1] += shift + (self.film + f.by_self[metal]) * per_metal;
            metal_row[0] -= self.film * per_metal;
            if self.room.is_some() {
                metal_row[2] -= f.by_room[metal] * per_metal;
            }
            (metal_row, per_metal)
        } else {
            metal_row[1] = 1.0;
            water_row[0] += f.by_self[self.water] * per_water;
            if self.room.is_some() {
                water_row[2] -= f.by_room[self.water] * per_water;
            }
            (water_row, per_water)
        };
        if slope != 0.0 {
            let sensor = firing_sensor(&self.firing, &self.sensor_nodes);
            for (entry, column) in fired_row.iter_mut().zip(&f.of_hub) {
                *entry -= slope * per_fired * column[sensor];
            }
        }
        match self.room {
            None => room_row[2] = 1.0,
            Some(room) => {
                let per_room = self.per_capacity[room];
                room_row[2] += shift + self.outside_loss * per_room;
                for sink in &self.sinks {
                    for node in sink.from..sink.to {
                        for (entry, column) in room_row.iter_mut().zip(&f.of_hub) {
                            *entry -= f.by_self[node] * per_room * column[node];
                        }
                        room_row[2] += f.by_room[node] * per_room;
                    }
                }
            }
        }
        f.hub_inverse = inverse_of_three(matrix);
        // With gravity flow the slopes are those at a fixed flow: good enough to search a steady
        // state with, not for a step.
        !gravity
    }

    fn solve(&self, right_hand_side: &mut [f64]) {
        let f = &self.factors;
        let n = self.temperatures;
        let (values, books) = right_hand_side.split_at_mut(n);
        // Followers as if the hubs were zero.
        let mut hub = [values[self.water], self.metal.map_or(0.0, |node| values[node]), self.room.map_or(0.0, |node| values[node])];
        let per_water = self.per_capacity[self.water];
        for (chain, conveyance) in self.chains.iter().zip(&f.conveyance) {
            let mut previous = 0.0;
            for node in chain.from..chain.to {
                previous = values[node] * f.inverse[node] + f.follow[node] * previous;
                values[node] = previous;
            }
            hub[0] += conveyance * per_water * previous;
        }
        for node in [Some(self.water), self.metal, self.room].into_iter().flatten() {
            values[node] = 0.0;
        }
        for &(node, followed, _) in &self.lags {
            values[node] = values[node] * f.inverse[node] + f.follow[node] * values[followed];
        }
        if f.firing_slope != 0.0 {
            let sensor = firing_sensor(&self.firing, &self.sensor_nodes);
            let (row, fired) = self.metal.map_or((0, self.water), |metal| (1, metal));
            hub[row] += f.firing_slope * self.per_capacity[fired] * values[sensor];
        }
        if let Some(room) = self.room {
            let mut lost = 0.0;
            for sink in &self.sinks {
                for node in sink.from..sink.to {
                    lost += f.by_self[node] * values[node];
                }
            }
            hub[2] += lost * self.per_capacity[room];
        }
        let x = f.hub_inverse.map(|row| row[0] * hub[0] + row[1] * hub[1] + row[2] * hub[2]);
        let [of_water, of_metal, of_room] = &f.of_hub;
        for node in 0..n {
            values[node] += of_water[node] * x[0] + of_metal[node] * x[1] + of_room[node] * x[2];
        }
        let room = if self.room.is_some() { x[2] } else { 0.0 };
        for (sink, book) in self.sinks.iter().zip(books.iter_mut()) {
            let mut rate = *book;
            for node in sink.from..sink.to {
                rate += f.by_self[node] * values[node] - f.by_room[node] * room;
            }
            *book = rate / f.shift;
        }
        let last = self.sinks.len();
        books[last] = (books[last] + self.outside_loss * room) / f.shift;
        let fired = f.firing_slope * values[firing_sensor(&self.firing, &self.sensor_nodes)];
        books[last + 1] = (books[last + 1] + fired) / f.shift;
    }
}

fn firing_sensor(firing: &Firing, nodes: &[usize]) -> usize {
    match firing {
        Firing::Modulating { sensor, .. } => nodes.get(*sensor).copied().unwrap_or(0),
        Firing::Fixed(_) => 0,
    }
}

/// Inverse by cofactors; a singular matrix gives infinities, which the solver takes as a failed step.
fn inverse_of_three(m: [[f64; 3]; 3]) -> [[f64; 3]; 3] {
    let minor = |r: [usize; 2], c: [usize; 2]| m[r[0]][c[0]] * m[r[1]][c[1]] - m[r[0]][c[1]] * m[r[1]][c[0]];
    let cofactor = [
        [minor([1, 2], [1, 2]), -minor([1, 2], [0, 2]), minor([1, 2], [0, 1])],
        [-minor([0, 2], [1, 2]), minor([0, 2], [0, 2]), -minor([0, 2], [0, 1])],
        [minor([0, 1], [1, 2]), -minor([0, 1], [0, 2]), minor([0, 1], [0, 1])],
    ];
    let determinant = m[0][0] * cofactor[0][0] + m[0][1] * cofactor[0][1] + m[0][2] * cofactor[0][2];
    core::array::from_fn(|i| core::array::from_fn(|j| cofactor[j][i] / determinant))
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::vec;

    /// Everything there can be: two masses, two open circuits and one closed, a room that warms,
    /// sensors with lag on a chain and on the block, a modulating burner.
    fn everything() -> Network {
        let natural = HeatLoss { linear: 0.1, coefficient: 0.4, radiation: 2e-8, exponent: 1.25, fitted: None };
        let run = |length: f64, start: f64| Part::run(length, 900.0, natural, 3, start);
        let law = HeatLoss::fitted(120.0, |excess| excess * (0.5 + 0.1 * pow(excess, 0.25)));
        let bare = Part::run(2.0, 900.0, law, 3, 340.0);
        let emitter = Part { heat_capacity: 30_000.0, loss: HeatLoss::power_law(1200.0, 1.3), cells: 1, start: 295.0 };
        Network {
            block: Block {
                heat_capacity: 60_000.0,
                metal: Some(Metal { heat_capacity: 40_000.0, film: 800.0, start: 355.0 }),
                casing: HeatLoss { linear: 4.0, coefficient: 1.0, exponent: 1.33, radiation: 1e-8, fitted: None },
                start: 345.0,
            },
            pump: Pump::Curve { shut_off: 30_000.0, steepness: 2e5 },
            circuits: vec![
                Circuit { parts: vec![run(5.0, 330.0), emitter.clone(), run(4.0, 310.0)], open: true, flow_coefficient: 1e-3, rise: None },
                Circuit { parts: vec![bare], open: true, flow_coefficient: 2e-3, rise: None },
                Circuit { parts: vec![run(8.0, 300.0), emitter], open: false, flow_coefficient: 1e-3, rise: None },
            ],
            room: Room::Lumped { start: 291.0, heat_capacity: 2e5, loss: 40.0, outside: 278.0 },
            water_heat_capacity: 4186.0,
            sensors: vec![
                Sensor { point: Point::Block, time_constant: 30.0 },
                Sensor { point: Point::PartEnd { circuit: 0, part: 1 }, time_constant: 20.0 },
                Sensor { point: Point::Metal, time_constant: 0.0 },
            ],
        }
    }

    fn model() -> Model {
        let mut model = Model::new(&everything()).unwrap();
        assert!(model.set_pump(true));
        model.set_firing(Firing::Modulating { least: 4000.0, most: 20_000.0, set_point: 350.0, band: 12.0, sensor: 0 });
        model
    }

    #[test]
    fn powers_are_right() {
        for i in 1..400 {
            let base = 1e-9 * libm::exp(0.07 * f64::from(i));
            for exponent in [0.0, 0.25, 0.3, 1.0] {
                assert!((power(base, exponent) / pow(base, exponent) - 1.0).abs() < 1e-14, "{base} {exponent}");
            }
        }
    }

    #[test]
    fn gravity_flow_balances_the_columns() {
        let mut network = everything();
        network.circuits[0].rise = Some(4.0);
        let mut model = Model::new(&network).unwrap();
        assert!(model.set_pump(false));
        let mut state = model.initial().to_vec();
        let (from, to) = (model.chains[0].from, model.chains[0].to);
        state[model.water] = 350.0;
        state[from..from + 3].fill(350.0);
        state[from + 3..to].fill(330.0);
        // Density of water (IAPWS-95 table of the reference data, between rows): 984.79 at 330 K, 973.74 at 350 K.
        let pressure = 9.80665 * 4.0 * (984.79 - 973.74);
        let flow = model.conveyance(&model.chains[0], &state) / model.water_heat_capacity;
        let expected = 1e-3 * sqrt(pressure) / sqrt(1.0 + 2.0 / pressure);
        assert!((flow / expected - 1.0).abs() < 2e-3, "{flow} {expected}");
        // Nothing moves in the other circuits, nor backwards, and nothing by gravity under the pump.
        assert_eq!(model.conveyance(&model.chains[1], &state), 0.0);
        state[from..from + 3].fill(320.0);
        assert_eq!(model.conveyance(&model.chains[0], &state), 0.0);
        // Both legs alike, over a block that is hotter: its own water sets the circuit going.
        state[from..to].fill(320.0);
        assert!(model.conveyance(&model.chains[0], &state) > 0.0);
        state[model.water] = 320.0;
        assert_eq!(model.conveyance(&model.chains[0], &state), 0.0);
        model.set_pump(true);
        assert_eq!(model.conveyance(&model.chains[0], &state), model.chains[0].conveyance);
    }

    #[test]
    fn a_fitted_loss_meets_its_law() {
        // Half radiation, half convection, as a bare pipe has them.
        let law = |excess: f64| {
            let root = 0.9 + 0.35 * pow(excess, 1.0 / 6.0);
            let hot = 293.15 + excess;
            excess * root * root * 0.05 + 2e-9 * (hot * hot * hot * hot - 293.15 * 293.15 * 293.15 * 293.15)
        };
        let fitted = HeatLoss::fitted(130.0, law);
        for i in 1..1300 {
            let excess = 0.1 * f64::from(i);
            let got = fitted.power(293.15 + excess, 293.15);
            assert!((got / law(excess) - 1.0).abs() < 2e-6, "{excess} {}", got / law(excess) - 1.0);
        }
        let slope = |h: f64| (fitted.power(330.0 + h, 293.15) - fitted.power(330.0 - h, 293.15)) / (2.0 * h);
        assert!((fitted.slopes(330.0, 293.15).0 / slope(1e-3) - 1.0).abs() < 1e-8);
    }

    #[test]
    fn elimination_solves_the_equations_of_the_slopes() {
        for metal in [true, false] {
            for room in [true, false] {
                let mut network = everything();
                if !metal {
                    network.block.metal = None;
                    network.sensors.pop();
                }
                if !room {
                    network.room = Room::Fixed(292.0);
                }
                let mut model = Model::new(&network).unwrap();
                model.set_pump(true);
                model.set_firing(Firing::Modulating { least: 4000.0, most: 20_000.0, set_point: 350.0, band: 12.0, sensor: 0 });
                let state = model.initial().to_vec();
                let n = state.len();
                let wanted: Vec<f64> = (0..n).map(|i| libm::sin(1.0 + i as f64)).collect();
                let shift = 0.02;
                // (shift I - J) wanted, J by central differences along `wanted`: J v = df/dv.
                let along = |step: f64| {
                    let moved: Vec<f64> = state.iter().zip(&wanted).map(|(y, v)| y + step * v).collect();
                    let mut rates = vec![0.0; n];
                    model.rates(&moved, &mut rates);
                    rates
                };
                let (up, down) = (along(1e-4), along(-1e-4));
                let mut b: Vec<f64> = (0..n).map(|i| shift * wanted[i] - (up[i] - down[i]) / 2e-4).collect();
                assert!(model.factor(&state, shift));
                model.solve(&mut b);
                for i in 0..n {
                    // Books carry joules: their slopes are thousands.
                    let unit = if i < model.temperatures { 1.0 } else { 1e4 };
                    assert!((b[i] - wanted[i]).abs() < 1e-6 * unit, "{metal} {room} {i}: {} {}", b[i], wanted[i]);
                }
            }
        }
    }

    #[test]
    fn heat_is_neither_made_nor_lost() {
        let model = model();
        let state = model.initial().to_vec();
        let mut rates = vec![0.0; state.len()];
        model.rates(&state, &mut rates);
        let into_masses: f64 = (0..model.temperatures).filter(|i| Some(*i) != model.room).map(|i| model.capacity[i] * rates[i]).sum();
        let given: f64 = rates[model.temperatures..rates.len() - 2].iter().sum();
        let burner = rates[rates.len() - 1];
        assert!(burner > 4000.0);
        assert!((burner - given - into_masses).abs() < 1e-9 * burner);
        // And the room keeps what it does not pass on.
        let room = model.room.unwrap();
        assert!((model.capacity[room] * rates[room] - (given - rates[rates.len() - 2])).abs() < 1e-9 * given.abs());
    }

    #[test]
    fn steady_state_has_no_change_left() {
        let mut model = model();
        let mut steady = model.initial().to_vec();
        assert!(model.settle(&mut steady));
        let mut rates = vec![0.0; steady.len()];
        model.rates(&steady, &mut rates);
        assert!(rates[..model.temperatures].iter().all(|rate| rate.abs() < 1e-12), "{rates:?}");
        // Heat with nowhere to go has no steady state.
        let mut closed = everything();
        closed.block.casing = HeatLoss::NONE;
        closed.circuits.clear();
        closed.sensors.clear();
        let mut model = Model::new(&closed).unwrap();
        model.set_firing(Firing::Fixed(1000.0));
        let mut start = model.initial().to_vec();
        assert!(!model.settle(&mut start));
    }

    #[test]
    fn pump_curve_and_parallel_circuits_balance() {
        let model = model();
        let flow = |circuit: usize| model.chains[circuit].conveyance / model.water_heat_capacity;
        let (first, second, closed) = (flow(0), flow(1), flow(2));
        assert_eq!(closed, 0.0);
        // Parallel ways have the same pressure difference, which is what the pump gives at the sum.
        let pressures = [first / 1e-3, second / 2e-3].map(|root| root * root);
        assert!((pressures[0] / pressures[1] - 1.0).abs() < 1e-12);
        let pump = 30_000.0 - 2e5 * (first + second) * (first + second);
        assert!((pump / pressures[0] - 1.0).abs() < 1e-12);
        assert!((flow_coefficient(first, pressures[0]) - 1e-3).abs() < 1e-15);
        // Pump running against closed ways.
        let mut shut = everything();
        shut.circuits.iter_mut().for_each(|circuit| circuit.open = false);
        assert!(!Model::new(&shut).unwrap().set_pump(true));
    }

    #[test]
    fn impossible_networks_are_refused() {
        let broken = |change: &dyn Fn(&mut Network)| {
            let mut network = everything();
            change(&mut network);
            Model::new(&network).is_none()
        };
        assert!(broken(&|n| n.block.heat_capacity = 0.0));
        assert!(broken(&|n| n.circuits[0].parts[0].cells = 0));
        assert!(broken(&|n| n.circuits[0].parts.clear()));
        assert!(broken(&|n| n.sensors[0].point = Point::PartEnd { circuit: 1, part: 1 }));
        assert!(broken(&|n| n.circuits[0].parts[1].heat_capacity = f64::NAN));
        assert!(!broken(&|_| {}));
    }
}
