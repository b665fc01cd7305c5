//! The calculations `gas_pipe_drop` and `gas_pipe_discharge`: one pipe, its pressure drop for a flow
//! and its flow for a pressure drop.

use super::gas::{FRICTION, PipedGas, REFERENCE, air_density, friction};
use super::pipe_flow::{InletGas, PipeFlow, Stretch, buoyancy, discharge, pipe_flow, pole_discharge};
use super::{CAUTION_COMPETENCE, or};
use crate::Error;
use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::convection::friction::{LAMINAR_BELOW, TURBULENT_FROM, TurbulentFriction};
use crate::fuel::Fuel;
use crate::material::{Tube, tube};
use crate::quantity::types::{DynamicViscosity, Length, MassDensity, Pressure, Ratio, ThermodynamicTemperature, Velocity, VolumeRate};
use crate::quantity::units::*;
use crate::quantity::{AbsolutePressure, AtMeter, AtReference, GasFlow, GaugePressure, Gross, HeatInput, Value};
use crate::record::record;
use crate::rules;
use crate::system::fittings_from_node;
use crate::working::{Working, step};
use alloc::string::ToString;
use core::f64::consts::PI;

/// Roughness of a drawn tube, m: textbook value (Moody; Cengel), taken where none is stated.
const DRAWN_TUBE: f64 = 1.5e-6;

const SOURCES: &[Source] = &[
    Source::new("Darcy-Weisbach; textbook", "pressure drop"),
    Source::new("Hagen-Poiseuille, 64/Re; Colebrook 1939, Haaland 1983 or Swamee & Jain 1976 as set", "friction factor"),
    Source::new("Isothermal compressible flow; textbook of gas dynamics", "drop of the expanding gas"),
    Source::new("ISO 6976:2016", "density and calorific value from the composition"),
    Source::new("Wilke 1950, J. Chem. Phys. 18, 517, with the pure viscosities of the equations named in supply/viscosity.rs", "viscosity"),
    Source::new("Hydrostatics", "gain or loss with height"),
];

const ACCURACY: &str = "About 5 % of the drop in turbulent flow for a known bore, and the fifth power of the bore's error. Between Re 2300 and 4000 nobody knows the friction factor: low and high bound it.";

/// A pipe by name of tube, the gas in it and the friction equation.
#[derive(Clone, Debug)]
pub struct PipeContext {
    /// The gas.
    pub gas: PipedGas,
    /// The tube, unless bore and roughness are stated.
    pub tube: Option<Tube>,
    /// Equation of the turbulent friction factor.
    pub friction: TurbulentFriction,
    /// Sum of the loss coefficients of the fittings named.
    pub fitting_coefficient: f64,
    /// Sum of the equivalent lengths of the fittings named, m.
    pub fitting_length: f64,
}

impl PipeContext {
    const SETTINGS: &'static [Setting] = &[
        Fuel::setting(),
        REFERENCE,
        FRICTION,
        Setting {
            name: "tube",
            doc: "The tube by name, such as \"copper 22x0.9\"; left out, the bore is stated.",
            form: Form::Text,
            default: Some(""),
        },
        Setting {
            name: "fittings",
            doc: "Names of fittings with their number, for instance { \"elbow 90\" = 4, \"tee branch\" = 1 }, as water_pressure_drop takes them; needs tube.",
            form: Form::Structure,
            default: Some(""),
        },
    ];

    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let tube = match settings.text("tube")? {
            "" => None,
            name => Some(tube(name).map_err(|unknown| Error::bad_setting("tube", name, &unknown.to_string()))?),
        };
        let (fitting_coefficient, fitting_length) = match (settings.get("fittings"), tube) {
            (None, _) => (0.0, 0.0),
            (Some(_), None) => {
                return Err(Error::bad_setting("fittings", "", "the resistance of a named fitting goes with the tube: name it"));
            }
            (given, Some(tube)) => fittings_from_node("fittings", given, tube.bore())?,
        };
        Ok(Self { gas: PipedGas::from_settings(settings)?, tube, friction: friction(settings)?, fitting_coefficient, fitting_length })
    }

    #[inline(always)]
    fn bore(&self, stated: Length) -> f64 {
        or(stated.si(), self.tube.map_or(f64::NAN, |tube| tube.bore()))
    }

    #[inline(always)]
    fn roughness(&self, stated: Length) -> f64 {
        or(stated.si(), self.tube.map_or(DRAWN_TUBE, |tube| tube.roughness))
    }
}

/// Puts the fields every pipe of gas has behind those of one calculation, so that they stand once.
macro_rules! gas_pipe_record {
    ($(#[$doc:meta])* pub struct $name:ident { $($first:tt)* }) => {
        $(#[$doc])*
        #[record]
        pub struct $name {
            $($first)*
            /// Equivalent length of fittings that the setting `fittings` does not name.
            #[field("L_f", METRE, 0.0..=10000.0, default = 0.0, usual = 0.0..=50.0)]
            pub equivalent_length: Length,
            /// Sum of the loss coefficients of fittings that are neither named nor counted by length.
            #[field("\\Sigma\\zeta", ONE, 0.0..=10000.0, default = 0.0, usual = 0.0..=50.0)]
            pub loss_coefficient: Ratio,
            /// Height of the end above the beginning; negative where the pipe falls.
            #[field("h", METRE, -1000.0..=1000.0, default = 0.0, usual = -30.0..=30.0)]
            pub rise: Length,
            /// Bore; left out, that of the tube.
            #[field("D", MILLIMETRE, 1.0..=2000.0, absent = "that of the tube", usual = 6.0..=160.0)]
            pub bore: Length,
            /// Roughness of the wall; left out, that of the tube or of drawn tubing.
            #[field("k", MILLIMETRE, 0.0..=5.0, absent = "that of the tube, or 0.0015 mm", usual = 0.0..=0.3)]
            pub roughness: Length,
            /// Gauge pressure at the beginning of the pipe.
            #[field("p_1", MILLIBAR, 0.0..=10000.0, usual = 5.0..=200.0)]
            pub inlet_pressure: GaugePressure,
            /// Temperature of gas and surroundings.
            #[field("T", DEGREE_CELSIUS, -30.0..=60.0, default = 15.0, usual = -10.0..=35.0)]
            pub gas_temperature: ThermodynamicTemperature,
            /// Barometric pressure.
            #[field("p_b", MILLIBAR, 500.0..=1100.0, default = 1013.25, usual = 940.0..=1050.0)]
            pub barometric_pressure: AbsolutePressure,
            /// Density of the gas at reference conditions; left out, that of the fuel.
            #[field("\\rho_r", KILOGRAM_PER_CUBIC_METRE, 0.05..=6.0, absent = "that of the fuel")]
            pub gas_density: MassDensity,
            /// Dynamic viscosity of the gas; left out, that of the fuel.
            #[field("\\mu", PASCAL_SECOND, 1e-6..=1e-4, absent = "that of the fuel")]
            pub gas_viscosity: DynamicViscosity,
        }
    };
}

gas_pipe_record! {
    /// A flow of gas through a pipe.
    pub struct GasPipeState {
        /// Flow at reference conditions; leave it out to state a heat input.
        #[field("\\dot V_r", CUBIC_METRE_PER_HOUR, 0.0..=1e5, absent = "a heat input is stated", usual = 0.05..=100.0)]
        pub gas_flow: GasFlow<AtReference>,
        /// Heat input of all that hangs on the pipe, gross; leave it out to state a flow.
        #[field("\\dot Q_s", KILOWATT, 0.0..=1e6, absent = "a flow is stated", usual = 0.5..=1000.0)]
        pub heat_input_gross: HeatInput<Gross>,
        /// Length of the pipe.
        #[field("L", METRE, 0.0..=10000.0, usual = 0.1..=100.0)]
        pub length: Length,
    }
}

/// What the flow loses. Low and high differ only where the flow is neither laminar nor turbulent.
#[record]
pub struct GasPipeDropResult {
    /// Flow at reference conditions.
    #[field("\\dot V_r", CUBIC_METRE_PER_HOUR)]
    pub gas_flow: GasFlow<AtReference>,
    /// Flow as it enters the pipe.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR)]
    pub flow_in_pipe: GasFlow<AtMeter>,
    /// Density as it enters the pipe.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE)]
    pub density_in_pipe: MassDensity,
    /// Dynamic viscosity.
    #[field("\\mu", PASCAL_SECOND)]
    pub viscosity: DynamicViscosity,
    /// Mean velocity at the inlet.
    #[field("v", METRE_PER_SECOND)]
    pub velocity: Velocity,
    /// Reynolds number.
    #[field("Re", ONE)]
    pub reynolds_number: Ratio,
    /// Least Darcy friction factor.
    #[field("f_{lo}", ONE, absent = "no flow")]
    pub friction_factor_low: Ratio,
    /// Greatest Darcy friction factor.
    #[field("f_{hi}", ONE, absent = "no flow")]
    pub friction_factor_high: Ratio,
    /// Least friction drop with the density of the inlet.
    #[field("\\Delta p_{0,lo}", PASCAL)]
    pub drop_at_inlet_density_low: Pressure,
    /// Greatest friction drop with the density of the inlet.
    #[field("\\Delta p_{0,hi}", PASCAL)]
    pub drop_at_inlet_density_high: Pressure,
    /// Least friction drop, the gas expanding.
    #[field("\\Delta p_{lo}", PASCAL)]
    pub pressure_drop_low: Pressure,
    /// Greatest friction drop, the gas expanding: the one to reckon with.
    #[field("\\Delta p_{hi}", PASCAL)]
    pub pressure_drop_high: Pressure,
    /// Gain of gauge pressure by height; negative where a light gas goes down or a heavy one up.
    #[field("\\Delta p_h", PASCAL)]
    pub height_gain: Pressure,
    /// Least gauge pressure at the end of the pipe: the one to reckon with.
    #[field("p_{2,lo}", MILLIBAR)]
    pub outlet_pressure_low: GaugePressure,
    /// Greatest gauge pressure at the end of the pipe.
    #[field("p_{2,hi}", MILLIBAR)]
    pub outlet_pressure_high: GaugePressure,
}

/// The lines both calculations begin with: the gas as it enters, and its density at reference conditions.
macro_rules! inlet_gas {
    ($context:expr, $input:ident, $working:ident) => {{
        let gas = &$context.gas;
        let reference_density = MassDensity::from_si(or($input.gas_density.si(), gas.reference_density));
        let viscosity = or($input.gas_viscosity.si(), gas.viscosity.at($input.gas_temperature.si()));
        step!($working, let inlet: "p_{1,abs}" in MILLIBAR = $input.inlet_pressure.plain() + $input.barometric_pressure.plain(), "gauge pressure plus barometer");
        // A density stated by hand is that of a gas not known further, taken as ideal.
        let non_ideality = if $input.gas_density.si().is_nan() { gas.non_ideality } else { 0.0 };
        let density_in_pipe = gas.density(reference_density.si(), non_ideality, $input.gas_temperature.si(), inlet.si());
        step!($working, let density: "\\rho" in KILOGRAM_PER_CUBIC_METRE = MassDensity::from_si(density_in_pipe), "real gas law from reference conditions");
        (InletGas { density: density.si(), viscosity, absolute_pressure: inlet.si() }, reference_density)
    }};
}

/// And the pipe with all its fittings.
macro_rules! stretch {
    ($context:expr, $input:ident, $working:ident) => {{
        let fitting_length = Length::from_si($context.fitting_length);
        step!($working, let length: "L_{eff}" in METRE = $input.length + $input.equivalent_length + fitting_length, "equivalent length");
        Stretch {
            bore: $context.bore($input.bore),
            length: length.si(),
            roughness: $context.roughness($input.roughness),
            loss_coefficient: $input.loss_coefficient.si() + $context.fitting_coefficient,
        }
    }};
}

/// Pressure drop of gas in a pipe.
#[derive(Clone, Debug)]
pub struct GasPipeDrop(pub PipeContext);

impl Context for GasPipeDrop {
    const SETTINGS: &'static [Setting] = PipeContext::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        PipeContext::from_settings(settings).map(Self)
    }
}

rules! {
    refuse FLOW_UNKNOWN on "gas_flow": "state the flow or the gross heat input, not both";
    refuse BORE_UNKNOWN on "bore": "state the bore, or name the tube";
    notice TRANSITION on "gas_flow": "the flow is neither laminar nor turbulent: the drop lies somewhere between low and high; reckon with high";
    notice NO_PRESSURE_LEFT on "inlet_pressure": "the drop exceeds the gauge pressure: this flow cannot be had through this pipe";
}

impl Calculation for GasPipeDrop {
    type Input = GasPipeState;
    type Output = GasPipeDropResult;
    const INFO: Info = Info {
        name: "gas_pipe_drop",
        title: "Pressure drop of gas in a pipe",
        summary: "Pressure lost by friction and fittings and gained or lost by height in a gas pipe, as a band where the flow is in transition, and the pressure left at its end.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: &[CAUTION_COMPETENCE],
        checked_against: "heat/gas_pipe_drop.csv, heat/gas_discharge_published.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &GasPipeState) -> Raised {
        Raised::NONE
            .when(FLOW_UNKNOWN, input.gas_flow.si().is_nan() == input.heat_input_gross.si().is_nan())
            .when(BORE_UNKNOWN, self.0.bore(input.bore).is_nan())
    }

    #[inline(always)]
    fn review(&self, _input: &GasPipeState, output: &GasPipeDropResult) -> Raised {
        let reynolds = output.reynolds_number.si();
        Raised::NONE
            .when(TRANSITION, (LAMINAR_BELOW..TURBULENT_FROM).contains(&reynolds))
            .when(NO_PRESSURE_LEFT, output.outlet_pressure_low.si() < 0.0)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &GasPipeState, working: &mut W) -> GasPipeDropResult {
        let gas = &self.0.gas;
        let bore = Length::from_si(self.0.bore(input.bore));
        let by_heat = input.heat_input_gross.si() / gas.gross_calorific_value;
        let reference_flow = VolumeRate::from_si(or(input.gas_flow.si(), by_heat));
        let (inlet_gas, reference_density) = inlet_gas!(self.0, input, working);
        let (density, viscosity) = (MassDensity::from_si(inlet_gas.density), DynamicViscosity::from_si(inlet_gas.viscosity));
        step!(working, let flow: "\\dot V" as VolumeRate in CUBIC_METRE_PER_HOUR = reference_flow * reference_density / density, "conservation of mass");
        step!(working, let area: "A" in SQUARE_MILLIMETRE = PI / 4.0 * bore * bore, "geometry");
        step!(working, let velocity: "v" as Velocity in METRE_PER_SECOND = flow / area, "continuity");
        step!(working, let reynolds: "Re" as Ratio = density * velocity * bore / viscosity, "definition");
        let stretch = stretch!(self.0, input, working);
        let (length, loss_coefficient) = (Length::from_si(stretch.length), Ratio::from_si(stretch.loss_coefficient));
        let PipeFlow { friction_factor, pressure_drop, pressure_drop_expanding, .. } =
            pipe_flow(flow.si(), &stretch, &inlet_gas, self.0.friction);
        let finite = |value: f64| if value.is_finite() { value } else { f64::NAN };
        let (greatest_factor, greatest_drop) = (finite(friction_factor.high), pressure_drop_expanding.high);
        step!(working, let friction_factor_high: "f_{hi}" = Ratio::from_si(greatest_factor),
            "64/Re below Re 2300, the chosen equation from Re 4000, the greater of both between");
        step!(working, let drop_at_inlet_density: "\\Delta p_{0,hi}" as Pressure in PASCAL =
            (friction_factor_high * (length / bore) + loss_coefficient) * (density * velocity * velocity / 2.0), "Darcy-Weisbach");
        let air = air_density(input.gas_temperature.si(), input.barometric_pressure.si());
        let height_gain = Pressure::from_si(buoyancy(input.rise.si(), density.si(), air));
        step!(working, let pressure_drop_high: "\\Delta p_{hi}" in PASCAL = Pressure::from_si(greatest_drop),
            "p1² - p2² = 2 p1 (Δp0 + ρ v² ln(p1/p2)), absolute pressures");
        step!(working, let outlet: "p_{2,lo}" in MILLIBAR = input.inlet_pressure.plain() - pressure_drop_high + height_gain, "definition");
        let at_rest = reynolds.si() == 0.0;
        GasPipeDropResult {
            gas_flow: GasFlow::new(reference_flow),
            flow_in_pipe: GasFlow::new(flow),
            density_in_pipe: density,
            viscosity,
            velocity,
            reynolds_number: reynolds,
            friction_factor_low: Ratio::from_si(finite(friction_factor.low)),
            friction_factor_high,
            drop_at_inlet_density_low: Pressure::from_si(pressure_drop.low),
            drop_at_inlet_density_high: Pressure::from_si(if at_rest { 0.0 } else { drop_at_inlet_density.si() }),
            pressure_drop_low: Pressure::from_si(pressure_drop_expanding.low),
            pressure_drop_high,
            height_gain,
            outlet_pressure_low: GaugePressure::new(outlet),
            outlet_pressure_high: GaugePressure::from_si(input.inlet_pressure.si() - pressure_drop_expanding.low + height_gain.si()),
        }
    }
}

gas_pipe_record! {
    /// A pressure drop that a pipe may use.
    pub struct GasPipeWish {
        /// Drop allowed between the gauges at both ends; set by the local rule.
        #[field("\\Delta p", MILLIBAR, 1e-4..=5000.0, usual = 0.1..=20.0)]
        pub allowed_drop: Pressure,
        /// Length of the pipe.
        #[field("L", METRE, 0.01..=10000.0, usual = 0.1..=100.0)]
        pub length: Length,
    }
}

/// What the pipe discharges. Low and high differ only where the flow is neither laminar nor turbulent.
#[record]
pub struct GasPipeDischargeResult {
    /// Flow at reference conditions that is certain: the one to reckon with.
    #[field("\\dot V_{lo}", CUBIC_METRE_PER_HOUR)]
    pub gas_flow_low: GasFlow<AtReference>,
    /// Greatest flow at reference conditions, if the flow stayed laminar.
    #[field("\\dot V_{hi}", CUBIC_METRE_PER_HOUR)]
    pub gas_flow_high: GasFlow<AtReference>,
    /// Heat input that the certain flow feeds, gross, with the calorific value of the fuel.
    #[field("\\dot Q_s", KILOWATT)]
    pub heat_input_gross: HeatInput<Gross>,
    /// Velocity at the inlet with the certain flow.
    #[field("v", METRE_PER_SECOND)]
    pub velocity: Velocity,
    /// Reynolds number of the certain flow.
    #[field("Re_{lo}", ONE)]
    pub reynolds_number_low: Ratio,
    /// Reynolds number of the greatest flow.
    #[field("Re_{hi}", ONE)]
    pub reynolds_number_high: Ratio,
    /// Friction drop that is used, the height gain added to what is allowed.
    #[field("\\Delta p_R", PASCAL)]
    pub friction_drop: Pressure,
    /// Flow by Pole's old formula, for comparison only: it promises too much in small pipes.
    #[field("\\dot V_P", CUBIC_METRE_PER_HOUR)]
    pub flow_by_pole: GasFlow<AtReference>,
}

/// Discharge of gas from a pipe.
#[derive(Clone, Debug)]
pub struct GasPipeDischarge(pub PipeContext);

impl Context for GasPipeDischarge {
    const SETTINGS: &'static [Setting] = PipeContext::SETTINGS;
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        PipeContext::from_settings(settings).map(Self)
    }
}

mod discharge_rules {
    crate::rules! {
        refuse BORE_UNKNOWN on "bore": "state the bore, or name the tube";
        refuse HEIGHT_TAKES_ALL on "rise": "the height alone takes more than the drop allowed";
        refuse MORE_THAN_THERE_IS on "allowed_drop": "the drop allowed exceeds the gauge pressure";
        notice TRANSITION on "allowed_drop": "the flow is neither laminar nor turbulent: the discharge lies somewhere between low and high; reckon with low";
    }
    pub(super) const ALL: &[crate::calculation::Rule] = RULES;
    pub(super) const NO_BORE: u32 = BORE_UNKNOWN;
    pub(super) const HEIGHT: u32 = HEIGHT_TAKES_ALL;
    pub(super) const TOO_MUCH: u32 = MORE_THAN_THERE_IS;
    pub(super) const UNSURE: u32 = TRANSITION;
}

impl Calculation for GasPipeDischarge {
    type Input = GasPipeWish;
    type Output = GasPipeDischargeResult;
    const INFO: Info = Info {
        name: "gas_pipe_discharge",
        title: "Discharge of gas from a pipe",
        summary: "Flow of gas that a pipe passes for an allowed pressure drop, as a band where the flow is in transition.",
        sources: &[
            Source::new("Darcy-Weisbach, isothermal compressible; textbook", "discharge"),
            Source::new("Hagen-Poiseuille, 64/Re; Colebrook 1939, Haaland 1983 or Swamee & Jain 1976 as set", "friction factor"),
            Source::new("ISO 6976:2016", "density and calorific value from the composition"),
            Source::new("Wilke 1950, J. Chem. Phys. 18, 517", "viscosity"),
            Source::new("from memory", "Pole's formula 0.0071 √(d⁵h/(sL))"),
        ],
        accuracy: ACCURACY,
        cautions: &[CAUTION_COMPETENCE],
        checked_against: "heat/gas_discharge_published.csv",
    };
    const RULES: &'static [Rule] = discharge_rules::ALL;

    #[inline(always)]
    fn check(&self, input: &GasPipeWish) -> Raised {
        Raised::NONE
            .when(discharge_rules::NO_BORE, self.0.bore(input.bore).is_nan())
            .when(discharge_rules::TOO_MUCH, input.allowed_drop.si() > input.inlet_pressure.si())
    }

    #[inline(always)]
    fn review(&self, _input: &GasPipeWish, output: &GasPipeDischargeResult) -> Raised {
        Raised::NONE
            .when(discharge_rules::HEIGHT, output.friction_drop.si() <= 0.0)
            .when(discharge_rules::UNSURE, output.gas_flow_low.si() < output.gas_flow_high.si())
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &GasPipeWish, working: &mut W) -> GasPipeDischargeResult {
        let gas = &self.0.gas;
        let bore = Length::from_si(self.0.bore(input.bore));
        let (inlet_gas, reference_density) = inlet_gas!(self.0, input, working);
        let (density, viscosity) = (MassDensity::from_si(inlet_gas.density), DynamicViscosity::from_si(inlet_gas.viscosity));
        let stretch = stretch!(self.0, input, working);
        let air = air_density(input.gas_temperature.si(), input.barometric_pressure.si());
        let height_gain = Pressure::from_si(buoyancy(input.rise.si(), density.si(), air));
        step!(working, let friction_drop: "\\Delta p_R" in PASCAL = input.allowed_drop + height_gain, "definition");
        let between = discharge(friction_drop.si(), &stretch, &inlet_gas, self.0.friction);
        let (flow, high) = (VolumeRate::from_si(between.low), VolumeRate::from_si(between.high));
        step!(working, let gas_flow: "\\dot V_{lo}" as VolumeRate in CUBIC_METRE_PER_HOUR = flow * density / reference_density, "Darcy-Weisbach solved for the flow; conservation of mass");
        let gas_flow_high: VolumeRate = high * density / reference_density;
        step!(working, let area: "A" in SQUARE_MILLIMETRE = PI / 4.0 * bore * bore, "geometry");
        step!(working, let velocity: "v" as Velocity in METRE_PER_SECOND = flow / area, "continuity");
        step!(working, let reynolds: "Re" as Ratio = density * velocity * bore / viscosity, "definition");
        let air_at_reference = gas.reference_density / gas.relative_density;
        let relative_density = reference_density.si() / air_at_reference;
        GasPipeDischargeResult {
            gas_flow_low: GasFlow::new(gas_flow),
            gas_flow_high: GasFlow::new(gas_flow_high),
            heat_input_gross: HeatInput::from_si(gas_flow.si() * gas.gross_calorific_value),
            velocity,
            reynolds_number_low: reynolds,
            reynolds_number_high: Ratio::from_si(reynolds.si() * high.si() / flow.si()),
            friction_drop,
            flow_by_pole: GasFlow::from_si(pole_discharge(input.allowed_drop.si(), bore.si(), stretch.length, relative_density)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::node::Node;
    use crate::quantity::ReferenceConditions;
    use crate::record::Record;
    use alloc::string::String;
    use alloc::vec::Vec;
    use flamewright_reference::rows;

    fn near(got: f64, wanted: f64, tolerance: f64, what: &str) {
        assert!((got / wanted - 1.0).abs() <= tolerance, "{what}: {got} for {wanted}");
    }

    fn context(friction: TurbulentFriction) -> PipeContext {
        let gas = PipedGas::new(&Fuel::named("G20").unwrap(), ReferenceConditions::AT_15_15).unwrap();
        PipeContext { gas, tube: None, friction, fitting_coefficient: 0.0, fitting_length: 0.0 }
    }

    #[test]
    fn drops_agree_with_the_table() {
        let rows = rows("heat/gas_pipe_drop.csv");
        assert!(rows.len() >= 36);
        for row in rows {
            let methane = row.text("gas") == "methane";
            let mut state = GasPipeState {
                gas_flow: GasFlow::from_si(row.number("flow_m3_h_15C_1013mbar") / 3600.0),
                length: Length::from_si(row.number("length_m")),
                bore: Length::from_si(row.number("bore_mm") * 1e-3),
                roughness: Length::from_si(row.number("roughness_mm") * 1e-3),
                inlet_pressure: GaugePressure::from_si(2100.0),
                ..GasPipeState::unset()
            };
            // Methane comes from its composition; the other gas is made up.
            let tolerance = 1e-4;
            if !methane {
                state.gas_density = MassDensity::from_si(row.number("rho_ref_kg_m3"));
                state.gas_viscosity = DynamicViscosity::from_si(row.number("mu_Pa_s"));
            }
            let colebrook = GasPipeDrop(context(TurbulentFriction::Colebrook)).evaluate(&state).unwrap();
            let haaland = GasPipeDrop(context(TurbulentFriction::Haaland)).evaluate(&state).unwrap().output;
            let got = colebrook.output;
            near(got.velocity.si(), row.number("velocity_m_s"), tolerance, &row.place);
            near(got.reynolds_number.si(), row.number("Re"), tolerance, &row.place);
            let check = |column: &str, value: f64| {
                if let Some(wanted) = row.maybe(column) {
                    near(value, wanted, tolerance, column);
                }
            };
            check("f_laminar", got.friction_factor_low.si());
            check("f_Colebrook", got.friction_factor_high.si());
            check("f_Haaland", haaland.friction_factor_high.si());
            check("dp_laminar_Pa", got.drop_at_inlet_density_low.si());
            check("dp_Colebrook_Pa", got.drop_at_inlet_density_high.si());
            check("dp_Haaland_Pa", haaland.drop_at_inlet_density_high.si());
            check("dp_compressible_Pa", got.pressure_drop_high.si());
            assert_eq!(colebrook.judged.raised.0 >> TRANSITION & 1 == 1, row.text("regime") == "transitional");
        }
    }

    #[test]
    fn discharges_agree_with_the_table() {
        let rows = rows("heat/gas_discharge_published.csv");
        let mut turbulent = 0;
        for row in &rows {
            let bore = Length::from_si((row.number("od_mm") - 2.0 * row.number("wall_mm")) * 1e-3);
            let length = Length::from_si(row.number("length_m"));
            let (gas_density, gas_viscosity) = (MassDensity::from_si(0.735), DynamicViscosity::from_si(1.1e-5));
            let inlet_pressure = GaugePressure::from_si(2100.0);
            let state = GasPipeState {
                gas_flow: GasFlow::from_si(row.number("flow_published_m3_h") / 3600.0),
                length,
                bore,
                inlet_pressure,
                gas_density,
                gas_viscosity,
                ..GasPipeState::unset()
            };
            let drop = GasPipeDrop(context(TurbulentFriction::Colebrook)).evaluate(&state).unwrap().output;
            near(drop.reynolds_number.si(), row.number("Re_at_published_flow"), 1e-5, &row.place);
            near(drop.pressure_drop_high.si(), row.number("dp_computed_at_published_flow_Pa"), 1e-5, &row.place);
            let wish = GasPipeWish {
                allowed_drop: Pressure::from_si(100.0),
                length,
                bore,
                inlet_pressure,
                gas_density,
                gas_viscosity,
                ..GasPipeWish::unset()
            };
            let got = GasPipeDischarge(context(TurbulentFriction::Colebrook)).evaluate(&wish).unwrap().output;
            // The file takes a relative density of 0.6 where ISO air gives 0.59979.
            near(got.flow_by_pole.si() * 3600.0, row.number("flow_Pole_m3_h"), 3e-4, &row.place);
            if let Some(wanted) = row.maybe("flow_Darcy_for_1mbar_m3_h") {
                near(got.gas_flow_low.si() * 3600.0, wanted, 1e-5, &row.place);
                assert_eq!(got.gas_flow_low, got.gas_flow_high);
                near(got.gas_flow_low.si() * 3600.0, row.number("flow_published_m3_h"), 0.10, &row.place);
                turbulent += 1;
            }
        }
        assert!(turbulent >= 7 && rows.len() >= 27);
    }

    #[test]
    fn a_tube_by_name_and_a_load_in_kilowatts_will_do() {
        let given = Node::from([
            ("fuel", "G20"),
            ("tube", "copper 22x0.9"),
            ("heat_input_gross", "30 kW"),
            ("length", "9 m"),
            ("equivalent_length", "3 m"),
            ("rise", "4 m"),
            ("inlet_pressure", "21 mbar(g)"),
        ]);
        let outcome = evaluate("gas_pipe_drop", &given, Bare::Refused).unwrap();
        // 30 kW over 37.78 MJ/m3 (G20 gross at 15/15) is 2.859 m3/h.
        near(outcome.get("gas_flow").unwrap() * 3600.0, 2.859, 1e-3, "flow");
        assert!(outcome.notices.iter().any(|notice| notice.code == "TRANSITION"));
        // Methane gains (1.2254 - 0.694) 9.80665 4 m = 20.8 Pa on the way up.
        near(outcome.get("height_gain").unwrap(), 20.8, 5e-3, "height");
        let balance = 2100.0 - outcome.get("pressure_drop_high").unwrap() + outcome.get("height_gain").unwrap();
        near(outcome.get("outlet_pressure_low").unwrap(), balance, 1e-12, "outlet");
    }

    #[test]
    fn fittings_by_name_add_their_coefficients() {
        let given = |fittings: Option<Node>| {
            let mut entries: Vec<(String, Node)> =
                [("tube", "copper 22x0.9"), ("gas_flow", "6 m3/h"), ("length", "10 m"), ("inlet_pressure", "21 mbar")]
                    .map(|(key, value)| (key.to_string(), Node::from(value)))
                    .into();
            entries.extend(fittings.map(|node| ("fittings".to_string(), node)));
            evaluate("gas_pipe_drop", &Node::Table(entries), Bare::Refused).unwrap()
        };
        let (plain, fitted) = (given(None), given(Some(Node::from([("elbow 90", 4.0), ("gas bend 90 copper 22 mm", 2.0)]))));
        let drop = |outcome: &crate::catalogue::Outcome| outcome.get("drop_at_inlet_density_high").unwrap();
        let velocity = plain.get("velocity").unwrap();
        let head = 0.5 * plain.get("density_in_pipe").unwrap() * velocity * velocity;
        let friction = plain.get("friction_factor_high").unwrap();
        let elbow = 30.0 * crate::system::fitting::fully_turbulent_friction_factor(0.0202);
        near(drop(&fitted) - drop(&plain), head * (4.0 * elbow + friction * 2.0 * 0.3 / 0.0202), 1e-10, "fittings");
    }

    #[test]
    fn what_is_missing_or_too_much_is_refused() {
        let pipe = GasPipeDrop(context(TurbulentFriction::Colebrook));
        let state = GasPipeState {
            gas_flow: GasFlow::from_si(1e-3),
            length: Length::from_si(5.0),
            bore: Length::from_si(0.02),
            inlet_pressure: GaugePressure::from_si(2000.0),
            ..GasPipeState::unset()
        };
        assert!(pipe.evaluate(&state).is_ok());
        assert!(pipe.evaluate(&GasPipeState { bore: Length::from_si(f64::NAN), ..state }).is_err());
        assert!(pipe.evaluate(&GasPipeState { heat_input_gross: HeatInput::from_si(1e4), ..state }).is_err());
        assert!(pipe.evaluate(&GasPipeState { gas_flow: GasFlow::from_si(f64::NAN), ..state }).is_err());
        // No pipe of 20 mm passes 1000 m3/h at 20 mbar over a kilometre.
        let mad = GasPipeState { gas_flow: GasFlow::from_si(0.3), length: Length::from_si(1000.0), ..state };
        assert!(pipe.evaluate(&mad).is_err());
        let still = pipe.evaluate(&GasPipeState { gas_flow: GasFlow::from_si(0.0), ..state }).unwrap().output;
        assert_eq!((still.pressure_drop_high.si(), still.outlet_pressure_low.si()), (0.0, 2000.0));
        let wish = GasPipeWish {
            allowed_drop: Pressure::from_si(10.0),
            length: Length::from_si(50.0),
            bore: Length::from_si(0.02),
            rise: Length::from_si(-30.0),
            inlet_pressure: GaugePressure::from_si(2000.0),
            ..GasPipeWish::unset()
        };
        let pipe = GasPipeDischarge(context(TurbulentFriction::Colebrook));
        assert!(pipe.evaluate(&wish).is_err());
        assert!(pipe.evaluate(&GasPipeWish { rise: Length::from_si(0.0), ..wish }).is_ok());
        assert!(pipe.evaluate(&GasPipeWish { rise: Length::from_si(0.0), allowed_drop: Pressure::from_si(2500.0), ..wish }).is_err());
    }

    /// Friction takes the drop and height gives its gain, at both ends of the band.
    #[test]
    fn what_is_left_at_the_end_is_what_friction_and_height_leave() {
        let state = GasPipeState {
            gas_flow: GasFlow::from_si(3.0 / 3600.0),
            length: Length::from_si(12.0),
            bore: Length::from_si(0.02),
            rise: Length::from_si(8.0),
            inlet_pressure: GaugePressure::from_si(2000.0),
            ..GasPipeState::unset()
        };
        let found = GasPipeDrop(context(TurbulentFriction::Colebrook)).evaluate(&state).unwrap().output;
        // Natural gas is lighter than air by about 0.5 kg/m3.
        assert!(found.height_gain.si() > 30.0, "{}", found.height_gain.si());
        for (left, lost) in [(found.outlet_pressure_low, found.pressure_drop_high), (found.outlet_pressure_high, found.pressure_drop_low)] {
            assert!((left.si() - (2000.0 - lost.si() + found.height_gain.si())).abs() < 1e-9);
        }
        assert!(found.outlet_pressure_low.si() <= found.outlet_pressure_high.si());
    }
}
