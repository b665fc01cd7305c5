//! `duty_point`: where a pump's curve meets the system's.

use crate::Error;
use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::math::{self, pow};
use crate::quantity::Value;
use crate::quantity::types::{Power, Pressure, Ratio, VolumeRate};
use crate::quantity::units::{KILOPASCAL, LITRE_PER_HOUR};
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};
use alloc::vec::Vec;

/// A system whose drop is known at one flow.
#[record]
pub struct DutyPointInput {
    /// A flow at which the system's pressure drop is known.
    #[field("\\dot V_1", LITRE_PER_HOUR, 1.0..=1000000.0)]
    pub known_flow: VolumeRate,
    /// Pressure drop of the system at that flow.
    #[field("\\Delta p_1", KILOPASCAL, 0.001..=10000.0, usual = 1.0..=200.0)]
    pub known_pressure_drop: Pressure,
    /// Exponent of the drop in the flow: 2 for rough pipe and fittings, 1.75 for smooth pipe alone.
    #[field("n", ONE, 1.0..=2.0, default = 2.0, usual = 1.7..=2.0)]
    pub exponent: Ratio,
    /// Pressure that the pump must lift at no flow; zero in a closed circuit.
    #[field("p_s", KILOPASCAL, 0.0..=1000.0, default = 0.0)]
    pub static_pressure: Pressure,
}

/// The point at which the pump works.
#[record]
pub struct DutyPointResult {
    /// Flow.
    #[field("\\dot V", LITRE_PER_HOUR)]
    pub volume_flow: VolumeRate,
    /// Pressure the pump makes and the system takes.
    #[field("\\Delta p", KILOPASCAL)]
    pub pressure: Pressure,
    /// Share of the known flow.
    #[field("r", ONE)]
    pub flow_ratio: Ratio,
    /// Power given to the water.
    #[field("P", WATT)]
    pub hydraulic_power: Power,
}

/// The duty point of a pump on a curve of points joined by straight lines.
#[derive(Clone, Debug)]
pub struct DutyPoint {
    /// Flow in m³/s and pressure in Pa, by rising flow.
    curve: Vec<(f64, f64)>,
}

impl DutyPoint {
    /// A pump by points of its curve: flow in m³/s and pressure in Pa.
    ///
    /// # Errors
    /// Fewer than two points, flows that do not rise, pressures that rise.
    pub fn new(curve: Vec<(f64, f64)>) -> Result<Self, Error> {
        let sound = curve.len() >= 2
            && curve.iter().all(|(flow, pressure)| *flow >= 0.0 && flow.is_finite() && *pressure >= 0.0 && pressure.is_finite())
            && curve.windows(2).all(|pair| matches!(pair, [(a, p), (b, q)] if a < b && p >= q));
        if !sound {
            let why = "at least two points are needed, flows rising and pressures not rising along the curve";
            return Err(Error::bad_setting("pump_flows", "", why));
        }
        Ok(Self { curve })
    }

    /// Flow in m³/s at which the curve meets the system's; NaN if it does not.
    fn meeting(&self, system: impl Fn(f64) -> f64) -> f64 {
        for pair in self.curve.windows(2) {
            let [(mut low, p_low), (mut high, p_high)] = *pair else { continue };
            let (from, slope) = (low, (p_high - p_low) / (high - low));
            let spare = |flow: f64| p_low + slope * (flow - from) - system(flow);
            if !(spare(low) >= 0.0 && spare(high) <= 0.0) {
                continue;
            }
            for _ in 0..80 {
                let middle = 0.5 * (low + high);
                if spare(middle) > 0.0 { low = middle } else { high = middle }
            }
            return 0.5 * (low + high);
        }
        f64::NAN
    }
}

impl Context for DutyPoint {
    const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "pump_flows",
            doc: "Flows of points of the pump curve, rising.",
            form: Form::Quantities(VolumeRate::KIND, &LITRE_PER_HOUR),
            default: None,
        },
        Setting {
            name: "pump_pressures",
            doc: "Pressures (not heads) of the same points.",
            form: Form::Quantities(Pressure::KIND, &KILOPASCAL),
            default: None,
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let flows: Vec<VolumeRate> = settings.quantities("pump_flows", 0.0..=1000.0, 200)?;
        let pressures: Vec<Pressure> = settings.quantities("pump_pressures", 0.0..=1.0e8, 200)?;
        if flows.len() != pressures.len() {
            return Err(Error::bad_setting("pump_pressures", "", "as many pressures as flows are needed"));
        }
        Self::new(flows.iter().zip(&pressures).map(|(flow, pressure)| (flow.si(), pressure.si())).collect())
    }
}

rules! {
    refuse OFF_THE_CURVE on "known_pressure_drop": "the system's curve does not meet the pump's within the points given: give more of the curve, or choose another pump";
}

impl Calculation for DutyPoint {
    type Input = DutyPointInput;
    type Output = DutyPointResult;
    const INFO: Info = Info {
        name: "duty_point",
        title: "Duty point of a pump",
        summary: "Flow and pressure at which a pump's curve meets the curve of the system.",
        sources: &[
            Source::new("textbook, fluid mechanics", "a system's drop grows as a power of the flow; the pump works where the curves meet"),
            Source::new("common practice, no source", "exponent 2"),
        ],
        accuracy: "As the curve: makers' pump curves are within about 5 to 10 %, read-off points add to that.",
        cautions: &[],
        checked_against: "no outside table exists; a straight and a parabolic curve have closed solutions, which the tests use",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn review(&self, _input: &DutyPointInput, output: &DutyPointResult) -> Raised {
        Raised::NONE.when(OFF_THE_CURVE, output.volume_flow.si().is_nan())
    }

    fn compute<W: Working>(&self, input: &DutyPointInput, working: &mut W) -> DutyPointResult {
        let (known, drop) = (input.known_flow.si(), input.known_pressure_drop.si());
        let (exponent, lift) = (input.exponent.si(), input.static_pressure.si());
        let flow = self.meeting(|flow| lift + drop * pow(flow / known, exponent));
        step!(working, let volume_flow: "\\dot V" in LITRE_PER_HOUR = VolumeRate::from_si(flow), "solved: pump and system pressure are equal");
        step!(working, let flow_ratio: "r" = volume_flow / input.known_flow, "definition");
        step!(working, let pressure: "\\Delta p" in KILOPASCAL = Pressure::from_si(input.static_pressure.si() + input.known_pressure_drop.si() * math::pow(flow_ratio.si(), input.exponent.si())), "system curve");
        step!(working, let hydraulic_power: "P" = volume_flow * pressure, "definition");
        DutyPointResult { volume_flow, pressure, flow_ratio, hydraulic_power }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::math::sqrt;
    use crate::node::Node;
    use crate::record::Record;
    use crate::water::tests::assert_close;

    #[test]
    fn straight_curve_has_a_closed_solution() {
        let pump = DutyPoint::new(std::vec![(0.0, 50e3), (1e-3, 0.0)]).unwrap();
        let input = DutyPointInput {
            known_flow: VolumeRate::from_si(4e-4),
            known_pressure_drop: Pressure::from_si(20e3),
            ..DutyPointInput::unset()
        };
        let got = pump.evaluate(&input).unwrap();
        // 20e3 x^2 + 50e3 * 0.4 x - 50e3 = 0 in x = V / V1.
        let x = (-20e3 + sqrt(20e3 * 20e3 + 4.0 * 20e3 * 50e3)) / 40e3;
        assert_close(got.flow_ratio.si(), x, 1e-13, "ratio");
        assert_close(got.pressure.si(), 20e3 * x * x, 1e-13, "pressure");
        let lifted = DutyPointInput { static_pressure: Pressure::from_si(60e3), ..input };
        assert_eq!(pump.evaluate(&lifted).unwrap_err().code(), "OFF_THE_CURVE");
    }

    #[test]
    fn parabola_by_points_converges_to_its_solution() {
        // Pump 60 kPa - 30 kPa (V/V1)^2, system 20 kPa (V/V1)^2: they meet at sqrt(1.2).
        let points = (0..=150).map(|i| f64::from(i) / 100.0).map(|x| (x * 1e-3, (60e3 - 30e3 * x * x).max(0.0)));
        let pump = DutyPoint::new(points.take(141).collect()).unwrap();
        let input = DutyPointInput {
            known_flow: VolumeRate::from_si(1e-3),
            known_pressure_drop: Pressure::from_si(20e3),
            ..DutyPointInput::unset()
        };
        assert_close(pump.evaluate(&input).unwrap().flow_ratio.si(), sqrt(1.2), 2e-5, "meeting");
    }

    #[test]
    fn by_name_and_bad_curves() {
        let curve = |flows: [&str; 3], pressures: [&str; 3]| {
            Node::from([
                ("pump_flows", Node::List(flows.iter().map(|t| Node::from(*t)).collect())),
                ("pump_pressures", Node::List(pressures.iter().map(|t| Node::from(*t)).collect())),
                ("known_flow", Node::from("1000 L/h")),
                ("known_pressure_drop", Node::from("20 kPa")),
            ])
        };
        let run = |node| evaluate("duty_point", &node, Bare::Refused);
        let got = run(curve(["0 L/h", "1 m3/h", "2 m3/h"], ["45 kPa", "35 kPa", "10 kPa"])).unwrap();
        assert!((1000.0..1500.0).contains(&(got.get("volume_flow").unwrap() * 3.6e6)));
        assert!(run(curve(["0 L/h", "2 m3/h", "1 m3/h"], ["45 kPa", "35 kPa", "10 kPa"])).is_err());
        assert!(run(curve(["0 L/h", "1 m3/h", "2 m3/h"], ["45 kPa", "50 kPa", "10 kPa"])).is_err());
    }
}
