//! `water_pressure_drop`: what a run of tube with its fittings takes from the pump.

use super::GRAVITY;
use super::fitting::fitting;
use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::convection::friction::{LAMINAR_BELOW, TURBULENT_FROM, TurbulentFriction, friction_band, friction_factor};
use crate::material::Tube;
use crate::node::Node;
use crate::quantity::types::{
    Acceleration, DynamicViscosity, Length, MassDensity, Power, Pressure, PressureGradient, Ratio, ThermodynamicTemperature, Velocity,
    VolumeRate,
};
use crate::quantity::units::KILOPASCAL;
use crate::quantity::{AbsolutePressure, Value};
use crate::record::record;
use crate::water::{FLUID_SETTING, Fluid};
use crate::working::{Working, step};
use crate::{Error, rules};
use core::f64::consts::PI;

/// The setting `friction`.
pub(crate) const FRICTION_SETTING: Setting = Setting {
    name: "friction",
    doc: "Equation for the turbulent friction factor.",
    form: Form::Choice(&["colebrook", "haaland", "swamee-jain"]),
    default: Some("colebrook"),
};

/// The equation named by the setting `friction`.
pub(crate) fn friction_from_settings(settings: &Settings<'_>) -> Result<TurbulentFriction, Error> {
    settings.choice(
        FRICTION_SETTING.name,
        &[
            ("colebrook", TurbulentFriction::Colebrook),
            ("haaland", TurbulentFriction::Haaland),
            ("swamee-jain", TurbulentFriction::SwameeJain),
        ],
    )
}

/// Sum of loss coefficients and of equivalent lengths in m of fittings named in a table of name to
/// count, in a tube of a bore in m.
pub(crate) fn fittings_from_node(name: &str, node: Option<&Node>, bore: f64) -> Result<(f64, f64), Error> {
    let (mut coefficient, mut length) = (0.0, 0.0);
    if let Some(node) = node {
        for (what, count) in node.entries(name)? {
            let (k, l) = fitting(what).map_err(|error| error.within(name))?.loss(bore);
            let count = match count {
                Node::Number(n) if (0.0..=1000.0).contains(n) => *n,
                other => return Err(Error::bad_setting(what, &other.brief(), "a number of fittings from 0 to 1000 is needed").within(name)),
            };
            coefficient += k * count;
            length += l * count;
        }
    }
    Ok((coefficient, length))
}

/// A flow through a run of tube.
#[record]
pub struct WaterPressureDropInput {
    /// Volume flow.
    #[field("\\dot V", LITRE_PER_HOUR, 0.0..=1000000.0, usual = 5.0..=100000.0)]
    pub volume_flow: VolumeRate,
    /// Length of tube, flow and return together.
    #[field("L", METRE, 0.0..=10000.0, usual = 0.1..=500.0)]
    pub length: Length,
    /// Temperature of the water.
    #[field("t", DEGREE_CELSIUS, -30.0..=110.0, default = 60.0, usual = 5.0..=90.0)]
    pub temperature: ThermodynamicTemperature,
    /// Absolute pressure of the water; hardly matters.
    #[field("p", BAR, 0.5..=20.0, default = 2.0)]
    pub pressure: AbsolutePressure,
    /// Share of glycol by mass; needs the setting `fluid`.
    #[field("w", PERCENT, 0.0..=60.0, default = 0.0)]
    pub glycol_mass_fraction: Ratio,
    /// Loss coefficients of valves, boiler and other parts that the setting `fittings` does not name.
    #[field("\\sum\\zeta", ONE, 0.0..=10000.0, default = 0.0)]
    pub loss_coefficient: Ratio,
    /// Equivalent length of parts for which such a length is given.
    #[field("L_{eq}", METRE, 0.0..=10000.0, default = 0.0)]
    pub equivalent_length: Length,
    /// Density, where it is known from elsewhere.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE, 500.0..=2000.0, absent = "that of the fluid")]
    pub density: MassDensity,
    /// Dynamic viscosity, where it is known from elsewhere.
    #[field("\\mu", PASCAL_SECOND, 0.00001..=1.0, absent = "that of the fluid")]
    pub dynamic_viscosity: DynamicViscosity,
    /// Velocity above which a notice is given; makers of tube state what theirs stands.
    #[field("v_{max}", METRE_PER_SECOND, 0.1..=10.0, default = 1.0)]
    pub greatest_velocity: Velocity,
    /// Velocity below which a notice is given that air may stay.
    #[field("v_{min}", METRE_PER_SECOND, 0.0..=2.0, default = 0.2)]
    pub least_velocity: Velocity,
}

/// The pressure it takes.
#[record]
pub struct WaterPressureDropResult {
    /// Mean velocity.
    #[field("v", METRE_PER_SECOND)]
    pub velocity: Velocity,
    /// Reynolds number.
    #[field("Re", ONE)]
    pub reynolds_number: Ratio,
    /// Darcy friction factor.
    #[field("f", ONE, absent = "no flow")]
    pub friction_factor: Ratio,
    /// Velocity pressure.
    #[field("q", PASCAL)]
    pub velocity_pressure: Pressure,
    /// Pressure drop per metre of tube.
    #[field("R", PASCAL_PER_METRE)]
    pub drop_per_length: PressureGradient,
    /// Pressure drop of the tube and equivalent lengths.
    #[field("\\Delta p_L", KILOPASCAL)]
    pub tube_drop: Pressure,
    /// Pressure drop of fittings by loss coefficient.
    #[field("\\Delta p_\\zeta", KILOPASCAL)]
    pub fitting_drop: Pressure,
    /// Pressure drop of the whole.
    #[field("\\Delta p", KILOPASCAL)]
    pub pressure_drop: Pressure,
    /// Least it may be; less than the drop itself only where the flow is in transition.
    #[field("\\Delta p_{low}", KILOPASCAL)]
    pub pressure_drop_low: Pressure,
    /// Most it may be; more than the drop itself only where the flow is in transition.
    #[field("\\Delta p_{high}", KILOPASCAL)]
    pub pressure_drop_high: Pressure,
    /// Head of the same liquid.
    #[field("h", METRE)]
    pub head_loss: Length,
    /// Power that the drop takes from the liquid; a pump needs this over its efficiency.
    #[field("P", WATT)]
    pub hydraulic_power: Power,
}

/// Pressure drop of a run.
#[derive(Clone, Copy, Debug)]
pub struct WaterPressureDrop {
    /// The tube.
    pub tube: Tube,
    /// What circulates.
    pub fluid: Fluid,
    /// Equation for turbulent friction.
    pub friction: TurbulentFriction,
    /// Sum of the loss coefficients of named fittings.
    pub fitting_coefficient: f64,
    /// Sum of the equivalent lengths of named fittings, m.
    pub fitting_length: f64,
}

impl WaterPressureDrop {
    /// A run of tube with water in it and no fittings.
    pub fn of(tube: Tube) -> Self {
        Self { tube, fluid: Fluid::Water, friction: TurbulentFriction::Colebrook, fitting_coefficient: 0.0, fitting_length: 0.0 }
    }
}

impl Context for WaterPressureDrop {
    const SETTINGS: &'static [Setting] = &[
        Tube::SETTING,
        FLUID_SETTING,
        FRICTION_SETTING,
        Setting {
            name: "fittings",
            doc: "Names of fittings with their number, for instance { \"elbow 90\" = 6, \"tee branch\" = 2 }.",
            form: Form::Structure,
            default: None,
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let tube = Tube::from_settings(settings)?;
        let (fitting_coefficient, fitting_length) = fittings_from_node("fittings", settings.get("fittings"), tube.bore())?;
        Ok(Self {
            tube,
            fluid: Fluid::from_settings(settings)?,
            friction: friction_from_settings(settings)?,
            fitting_coefficient,
            fitting_length,
        })
    }
}

rules! {
    refuse FROZEN on "temperature": "the liquid would be frozen at this temperature";
    refuse GLYCOL_IN_WATER on "glycol_mass_fraction": "set `fluid` to the glycol that is in the water";
    notice TRANSITION on "reynolds_number": "between laminar and turbulent flow the friction is not predictable; the drop lies between the two bounds given";
    notice FAST on "velocity": "fast water is heard and wears tube and fittings; choose the next size";
    notice SLOW on "velocity": "slow water leaves air and sludge behind";
}

impl Calculation for WaterPressureDrop {
    type Input = WaterPressureDropInput;
    type Output = WaterPressureDropResult;
    const INFO: Info = Info {
        name: "water_pressure_drop",
        title: "Pressure drop of a run of tube",
        summary: "Velocity and pressure drop of water or a glycol mixture through a length of tube with its fittings.",
        sources: &[
            Source::new("Darcy and Weisbach; Hagen and Poiseuille below Re 2300; Colebrook 1939 from Re 4000", "friction in the tube"),
            Source::new("Crane TP-410M (2009); Cengel & Cimbala Table 8-4, from memory", "loss coefficients of fittings"),
            Source::new("IAPWS SR6-08(2011), IAPWS R12-08", "density and viscosity of water"),
            Source::new("common practice, no source", "velocities of 0.2 m/s (air) and 1 m/s (noise)"),
        ],
        accuracy: "5 % for the tube as new, 20 % for fittings, whose coefficients differ from make to make; a factor of up to 2 in transition.",
        cautions: &[],
        checked_against: "heat/pressure_drop_water.csv, heat/published_hydraulic_examples.csv, heat/fittings.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &WaterPressureDropInput) -> Raised {
        let fraction = input.glycol_mass_fraction.si();
        Raised::NONE
            .when(FROZEN, self.fluid.frozen(fraction, input.temperature.si()))
            .when(GLYCOL_IN_WATER, self.fluid.glycol_in_water(fraction))
    }

    #[inline]
    fn review(&self, input: &WaterPressureDropInput, output: &WaterPressureDropResult) -> Raised {
        let reynolds = output.reynolds_number.si();
        let velocity = output.velocity.si();
        Raised::NONE
            .when(TRANSITION, (LAMINAR_BELOW..TURBULENT_FROM).contains(&reynolds))
            .when(FAST, velocity > input.greatest_velocity.si())
            .when(SLOW, velocity < input.least_velocity.si())
    }

    fn compute<W: Working>(&self, input: &WaterPressureDropInput, working: &mut W) -> WaterPressureDropResult {
        let state = self.fluid.state(input.glycol_mass_fraction.si(), input.pressure.si(), input.temperature.si());
        let known_or = |known: f64, own: f64| if known.is_nan() { own } else { known };
        let own_density = known_or(input.density.si(), state.density);
        let own_viscosity = known_or(input.dynamic_viscosity.si(), state.dynamic_viscosity);
        let coefficient = input.loss_coefficient.si() + self.fitting_coefficient;
        let with_equivalents = input.length.si() + input.equivalent_length.si() + self.fitting_length;
        let relative_roughness = self.tube.roughness / self.tube.bore();
        step!(working, let bore: "d" = Length::from_si(self.tube.bore()), "the tube's table or sizes");
        step!(working, let density: "\\rho" = MassDensity::from_si(own_density), "IAPWS SR6-08, or Melinder 2010, or as given");
        step!(working, let viscosity: "\\mu" = DynamicViscosity::from_si(own_viscosity), "IAPWS R12-08, or Melinder 2010, or as given");
        step!(working, let velocity: "v" = Velocity::from_si(4.0 * input.volume_flow.si() / (PI * (bore.si() * bore.si()))), "continuity");
        step!(working, let reynolds_number: "Re" = density * velocity * bore / viscosity, "definition");
        step!(working, let velocity_pressure: "q" = 0.5 * density * (velocity * velocity), "definition");
        // At rest the factor is infinite and the drop zero.
        let (friction_factor, drop_per_length) = if velocity.si() == 0.0 {
            (Ratio::from_si(f64::NAN), PressureGradient::from_si(0.0))
        } else {
            step!(working, let friction_factor: "f" = Ratio::from_si(friction_factor(reynolds_number.si(), relative_roughness, self.friction)), "Hagen-Poiseuille below Re 2300, the chosen equation from Re 4000, straight between");
            step!(working, let drop_per_length: "R" = friction_factor * velocity_pressure / bore, "Darcy-Weisbach");
            (friction_factor, drop_per_length)
        };
        step!(working, let length: "L" = Length::from_si(with_equivalents), "tube and equivalent lengths");
        step!(working, let loss_coefficients: "\\sum\\zeta" = Ratio::from_si(coefficient), "named fittings and further parts");
        step!(working, let tube_drop: "\\Delta p_L" in KILOPASCAL = drop_per_length * length, "Darcy-Weisbach");
        step!(working, let fitting_drop: "\\Delta p_\\zeta" in KILOPASCAL = loss_coefficients * velocity_pressure, "loss coefficients");
        step!(working, let pressure_drop: "\\Delta p" in KILOPASCAL = tube_drop + fitting_drop, "sum");
        step!(working, let gravity: "g" = Acceleration::from_si(GRAVITY), "standard gravity, CGPM 1901");
        step!(working, let head_loss: "h" = pressure_drop / (density * gravity), "hydrostatics");
        step!(working, let hydraulic_power: "P" = input.volume_flow * pressure_drop, "definition");
        let (low, high) = friction_band(reynolds_number.si(), relative_roughness, self.friction)
            .filter(|_| velocity.si() != 0.0)
            .map_or((1.0, 1.0), |band| (band.low / friction_factor.si(), band.high / friction_factor.si()));
        WaterPressureDropResult {
            velocity,
            reynolds_number,
            friction_factor,
            velocity_pressure,
            drop_per_length,
            tube_drop,
            fitting_drop,
            pressure_drop,
            pressure_drop_low: tube_drop * low + fitting_drop,
            pressure_drop_high: tube_drop * high + fitting_drop,
            head_loss,
            hydraulic_power,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::record::Record;
    use crate::water::tests::assert_close;
    use flamewright_reference::rows;

    fn tube(bore: f64, roughness: f64) -> Tube {
        Tube { outer_diameter: bore + 0.002, wall_thickness: 0.001, roughness, ..crate::material::tube("copper 15x0.7").unwrap() }
    }

    #[test]
    fn reference_rows() {
        let file = rows("heat/pressure_drop_water.csv");
        for row in &file {
            let input = WaterPressureDropInput {
                volume_flow: VolumeRate::from_si(row.number("flow_l_h") / 3.6e6),
                length: Length::from_si(1.0),
                temperature: ThermodynamicTemperature::from_si(row.number("T_C") + 273.15),
                ..WaterPressureDropInput::unset()
            };
            let run = WaterPressureDrop::of(tube(row.number("bore_mm") / 1e3, row.number("roughness_mm") / 1e3));
            let got = run.evaluate(&input).unwrap();
            for (value, column) in [
                (got.velocity.si(), "velocity_m_s"),
                (got.reynolds_number.si(), "Re"),
                (got.friction_factor.si(), "f"),
                (got.drop_per_length.si(), "dp_Pa_per_m"),
                (got.pressure_drop.si(), "dp_Pa_per_m"),
                (got.pressure_drop_low.si(), "dp_Pa_per_m"),
                (got.pressure_drop_high.si(), "dp_Pa_per_m"),
                (got.velocity_pressure.si(), "velocity_pressure_Pa"),
            ] {
                assert_close(value, row.number(column), 2e-6, &std::format!("{} {column}", row.place));
            }
        }
        assert_eq!(file.len(), 40);
    }

    #[test]
    fn published_examples() {
        let (foot, pound) = (0.3048, 0.453_592_37);
        let american = WaterPressureDropInput {
            volume_flow: VolumeRate::from_si(0.2 * foot * foot * foot),
            length: Length::from_si(200.0 * foot),
            density: MassDensity::from_si(62.36 * pound / (foot * foot * foot)),
            dynamic_viscosity: DynamicViscosity::from_si(7.536e-4 * pound / foot),
            ..WaterPressureDropInput::unset()
        };
        let metric = WaterPressureDropInput {
            volume_flow: VolumeRate::from_si(0.008),
            length: Length::from_si(30.0),
            density: MassDensity::from_si(999.1),
            dynamic_viscosity: DynamicViscosity::from_si(1.138e-3),
            ..WaterPressureDropInput::unset()
        };
        let h01 = WaterPressureDrop::of(tube(2.0 * 0.0254, 0.000_007 * foot)).evaluate(&american).unwrap();
        let h03 = WaterPressureDrop::of(tube(0.04, 2.0e-6)).evaluate(&metric).unwrap();
        let mut tested = 0;
        for row in rows("heat/published_hydraulic_examples.csv") {
            let (got, unit) = match row.text("example_id") {
                "H01" => (&h01, row.text("unit")),
                "H03" => (&h03, row.text("unit")),
                _ => continue,
            };
            let value = match row.text("quantity") {
                "velocity" => got.velocity.si() / foot,
                "Re" => got.reynolds_number.si(),
                "f" | "f Colebrook" => got.friction_factor.si(),
                "head loss" => got.head_loss.si() / if unit == "ft" { foot } else { 1.0 },
                "pressure drop" => got.pressure_drop.si() / if unit == "psi" { 6_894.757 } else { 1e3 },
                "pump power" => got.hydraulic_power.si() / if unit == "kW" { 1e3 } else { 1.0 },
                other => panic!("{other}"),
            };
            assert_close(value, row.number("value_published"), 5e-3, &row.place);
            // These were worked with gravity rounded to 32.2 ft/s².
            let rounded = matches!(row.text("quantity"), "head loss" | "pressure drop" | "pump power");
            let tolerance = if rounded { 1e-3 } else { 5e-6 };
            assert_close(value, row.number("value_recomputed"), tolerance, &row.place);
            tested += 1;
        }
        assert_eq!(tested, 11);
    }

    #[test]
    fn by_name_with_fittings_rest_and_transition() {
        let given = Node::from([
            ("tube", Node::from("copper 15x0.7")),
            ("fittings", Node::from([("elbow 90", 4.0), ("tee branch", 2.0)])),
            ("volume_flow", Node::from("300 L/h")),
            ("length", Node::from("12 m")),
            ("loss_coefficient", Node::from(3.0)),
        ]);
        let got = evaluate("water_pressure_drop", &given, Bare::Refused).unwrap();
        let k = (4.0 * 30.0 + 2.0 * 60.0) * crate::system::fitting::fully_turbulent_friction_factor(0.0136) + 3.0;
        let (q, fittings) = (got.get("velocity_pressure").unwrap(), got.get("fitting_drop").unwrap());
        assert_close(fittings, k * q, 1e-14, "fittings");
        assert_close(got.get("pressure_drop").unwrap(), got.get("tube_drop").unwrap() + fittings, 1e-15, "sum");
        let run = WaterPressureDrop::of(tube(0.0136, 1.5e-6));
        let still = WaterPressureDropInput {
            volume_flow: VolumeRate::from_si(0.0),
            length: Length::from_si(3.0),
            ..WaterPressureDropInput::unset()
        };
        assert_eq!(run.evaluate(&still).unwrap().pressure_drop.si(), 0.0);
        let between = run.evaluate(&WaterPressureDropInput { volume_flow: VolumeRate::from_si(60.0 / 3.6e6), ..still }).unwrap();
        assert!(between.pressure_drop_low.si() < 0.8 * between.pressure_drop_high.si());
        assert!(between.notices().iter().any(|notice| notice.code == "TRANSITION"));
        let wrong = Node::from([("tube", "copper 15x0.75"), ("volume_flow", "300 L/h"), ("length", "12 m")]);
        let message = std::format!("{}", evaluate("water_pressure_drop", &wrong, Bare::Refused).err().unwrap());
        assert!(message.contains("copper 15x0.7"), "{message}");
    }

    #[test]
    fn more_flow_more_drop_and_two_runs_are_one_of_double_length() {
        let run = WaterPressureDrop::of(tube(0.0136, 1.5e-6));
        let at = |litres_per_hour: f64, metres: f64| {
            let input = WaterPressureDropInput {
                volume_flow: VolumeRate::from_si(litres_per_hour / 3.6e6),
                length: Length::from_si(metres),
                ..WaterPressureDropInput::unset()
            };
            run.evaluate(&input).unwrap().pressure_drop.si()
        };
        let mut before = 0.0;
        for step in 1..400 {
            let drop = at(f64::from(step) * 3.0, 1.0);
            assert!(drop > before, "{step}");
            before = drop;
            assert_close(at(f64::from(step) * 3.0, 2.0), 2.0 * drop, 1e-14, "series");
        }
        let by = |flow: &str, length: &str| {
            let given = Node::from([("tube", "copper 15x0.7"), ("volume_flow", flow), ("length", length)]);
            evaluate("water_pressure_drop", &given, Bare::Refused).unwrap().get("pressure_drop").unwrap()
        };
        assert_close(by("0.3 m3/h", "40 ft"), by("300 L/h", "12.192 m"), 1e-14, "units");
    }
}
