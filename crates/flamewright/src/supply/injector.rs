//! The calculations `injector_flow` and `injector_size`: gas through a burner injector.

use super::gas::{PipedGas, REFERENCE};
use super::{CAUTION_BURNER, CAUTION_COMPETENCE, or};
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Raised, Rule, Setting, Settings, Source};
use crate::fuel::Fuel;
use crate::math;
use crate::quantity::types::{Area, Length, MassDensity, Power, Pressure, Ratio, Velocity, VolumeRate};
use crate::quantity::units::*;
use crate::quantity::{CalorificValue, GaugePressure, Gross, HeatInput, Value};
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};
use core::f64::consts::PI;

const LAW: &str = "Orifice equation for a small pressure difference; textbook";
/// Coefficient of the practical form in m3/h, mm2 and mbar.
const PRACTICAL: f64 = 0.0467;

/// An injector and what stands before it.
#[record]
pub struct InjectorAtWork {
    /// Diameter of the injector bore.
    #[field("d", MILLIMETRE, 0.1..=100.0, usual = 0.3..=10.0)]
    pub injector_diameter: Length,
    /// Gauge pressure before the injector.
    #[field("p", MILLIBAR, 0.01..=500.0, usual = 1.0..=60.0)]
    pub burner_pressure: GaugePressure,
    /// Density of the gas over that of air; left out, that of the fuel.
    #[field("d_r", ONE, 0.05..=5.0, absent = "that of the fuel", usual = 0.3..=2.2)]
    pub relative_density: Ratio,
    /// Discharge coefficient of the injector.
    #[field("C_d", ONE, 0.1..=1.2, usual = 0.6..=1.0)]
    pub discharge_coefficient: Ratio,
    /// Density of air at the conditions to which the flow is stated.
    #[field("\\rho_a", KILOGRAM_PER_CUBIC_METRE, 0.3..=2.0, default = 1.225, usual = 0.9..=1.35)]
    pub air_density: MassDensity,
    /// Number of like injectors.
    #[field("N", ONE, 1.0..=1000.0, default = 1.0)]
    pub injector_count: Ratio,
    /// Gross calorific value at the conditions to which the flow is stated; left out, that of the fuel.
    #[field("H_s", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, absent = "that of the fuel")]
    pub gross_calorific_value: CalorificValue<Gross>,
}

/// What the injector passes.
#[record]
pub struct InjectorFlowResult {
    /// Density of the gas.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE)]
    pub gas_density: MassDensity,
    /// Velocity of the jet where it is narrowest, without loss.
    #[field("v", METRE_PER_SECOND)]
    pub jet_velocity: Velocity,
    /// Flow of all injectors, at the conditions of the air density stated.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR)]
    pub gas_flow: VolumeRate,
    /// Flow by the practical form 0.0467 C_d A √(p/d), which implies air of 1.1885 kg/m³.
    #[field("\\dot V_p", CUBIC_METRE_PER_HOUR)]
    pub gas_flow_practical: VolumeRate,
    /// Heat input on the gross basis.
    #[field("\\dot Q_s", KILOWATT)]
    pub heat_input_gross: HeatInput<Gross>,
}

/// Flow of gas through injectors.
#[derive(Clone, Debug)]
pub struct InjectorFlow {
    /// The gas.
    pub gas: PipedGas,
}

impl Context for InjectorFlow {
    const SETTINGS: &'static [Setting] = &[Fuel::setting(), REFERENCE];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        PipedGas::from_settings(settings).map(|gas| Self { gas })
    }
}

impl Calculation for InjectorFlow {
    type Input = InjectorAtWork;
    type Output = InjectorFlowResult;
    const INFO: Info = Info {
        name: "injector_flow",
        title: "Gas through an injector",
        summary: "Flow and heat input of burner injectors from bore, pressure, discharge coefficient and relative density.",
        sources: &[
            Source::new(LAW, "flow"),
            Source::new("Fulford, biogas stove burner design; seen in a public reproduction", "practical form 0.0467 C_d A √(p/d)"),
        ],
        accuracy: "The discharge coefficient decides: 0.8 to 0.95 by the shape of the bore, unknown to about 5 % unless measured. Expansion costs 0.2 % for each 10 mbar.",
        cautions: &[CAUTION_BURNER, CAUTION_COMPETENCE],
        checked_against: "heat/gas_injector.csv",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &InjectorAtWork, working: &mut W) -> InjectorFlowResult {
        let relative_density = Ratio::from_si(or(input.relative_density.si(), self.gas.relative_density));
        let gross_calorific_value = Pressure::from_si(or(input.gross_calorific_value.si(), self.gas.gross_calorific_value));
        step!(working, let gas_density: "\\rho" in KILOGRAM_PER_CUBIC_METRE = relative_density * input.air_density, "definition");
        step!(working, let area: "A" as Area in SQUARE_MILLIMETRE = PI / 4.0 * input.injector_diameter * input.injector_diameter, "geometry");
        step!(working, let jet_velocity: "v" = Velocity::from_si(math::sqrt(2.0 * input.burner_pressure.si() / gas_density.si())), LAW);
        step!(working, let gas_flow: "\\dot V" as VolumeRate in CUBIC_METRE_PER_HOUR =
            input.injector_count * input.discharge_coefficient * area * jet_velocity, "continuity");
        step!(working, let heat_input: "\\dot Q_s" as Power in KILOWATT = gas_flow * gross_calorific_value, "definition");
        let practical = PRACTICAL / 3600.0
            * input.injector_count.si()
            * input.discharge_coefficient.si()
            * (area.si() * 1e6)
            * math::sqrt(input.burner_pressure.si() * 1e-2 / relative_density.si());
        InjectorFlowResult {
            gas_density,
            jet_velocity,
            gas_flow,
            gas_flow_practical: VolumeRate::from_si(practical),
            heat_input_gross: HeatInput::new(heat_input),
        }
    }
}

/// A heat input or a flow wanted of an injector.
#[record]
pub struct InjectorWanted {
    /// Heat input wanted, gross; leave it out to state a flow.
    #[field("\\dot Q_s", KILOWATT, 0.01..=10000.0, absent = "a flow is stated", usual = 0.1..=200.0)]
    pub heat_input_gross: HeatInput<Gross>,
    /// Gross calorific value at the conditions to which the flow is stated; left out, that of the fuel.
    #[field("H_s", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, absent = "that of the fuel")]
    pub gross_calorific_value: CalorificValue<Gross>,
    /// Flow wanted, at the conditions of the air density stated; leave it out to state a heat input.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR, 1e-5..=1e4, absent = "a heat input is stated")]
    pub gas_flow: VolumeRate,
    /// Gauge pressure before the injector.
    #[field("p", MILLIBAR, 0.01..=500.0, usual = 1.0..=60.0)]
    pub burner_pressure: GaugePressure,
    /// Density of the gas over that of air; left out, that of the fuel.
    #[field("d_r", ONE, 0.05..=5.0, absent = "that of the fuel", usual = 0.3..=2.2)]
    pub relative_density: Ratio,
    /// Discharge coefficient of the injector.
    #[field("C_d", ONE, 0.1..=1.2, usual = 0.6..=1.0)]
    pub discharge_coefficient: Ratio,
    /// Density of air at the conditions to which flow and calorific value are stated.
    #[field("\\rho_a", KILOGRAM_PER_CUBIC_METRE, 0.3..=2.0, default = 1.225, usual = 0.9..=1.35)]
    pub air_density: MassDensity,
    /// Number of like injectors.
    #[field("N", ONE, 1.0..=1000.0, default = 1.0)]
    pub injector_count: Ratio,
}

/// The injector that passes it.
#[record]
pub struct InjectorSizeResult {
    /// Flow of all injectors.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR)]
    pub gas_flow: VolumeRate,
    /// Area of one injector.
    #[field("A", SQUARE_MILLIMETRE)]
    pub injector_area: Area,
    /// Diameter of one injector.
    #[field("d", MILLIMETRE)]
    pub injector_diameter: Length,
}

/// Size of an injector for a heat input.
#[derive(Clone, Debug)]
pub struct InjectorSize {
    /// The gas.
    pub gas: PipedGas,
}

impl Context for InjectorSize {
    const SETTINGS: &'static [Setting] = &[Fuel::setting(), REFERENCE];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        PipedGas::from_settings(settings).map(|gas| Self { gas })
    }
}

rules! {
    refuse FLOW_UNKNOWN on "heat_input_gross": "state the gas flow or the gross heat input, not both";
}

impl Calculation for InjectorSize {
    type Input = InjectorWanted;
    type Output = InjectorSizeResult;
    const INFO: Info = Info {
        name: "injector_size",
        title: "Size of an injector",
        summary: "Bore of a burner injector for a heat input or a flow at a pressure.",
        sources: &[Source::new(LAW, "area")],
        accuracy: "Half the error of the discharge coefficient; a drill is stepped more coarsely than that.",
        cautions: &[CAUTION_BURNER, CAUTION_COMPETENCE],
        checked_against: "heat/gas_injector.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &InjectorWanted) -> Raised {
        Raised::NONE.when(FLOW_UNKNOWN, input.gas_flow.si().is_nan() == input.heat_input_gross.si().is_nan())
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &InjectorWanted, working: &mut W) -> InjectorSizeResult {
        let relative_density = Ratio::from_si(or(input.relative_density.si(), self.gas.relative_density));
        let gross_calorific_value = Pressure::from_si(or(input.gross_calorific_value.si(), self.gas.gross_calorific_value));
        let by_heat = input.heat_input_gross.si() / gross_calorific_value.si();
        let gas_flow = VolumeRate::from_si(or(input.gas_flow.si(), by_heat));
        step!(working, let gas_density: "\\rho" in KILOGRAM_PER_CUBIC_METRE = relative_density * input.air_density, "definition");
        step!(working, let jet_velocity: "v" = Velocity::from_si(math::sqrt(2.0 * input.burner_pressure.si() / gas_density.si())), LAW);
        step!(working, let injector_area: "A" as Area in SQUARE_MILLIMETRE =
            gas_flow / (input.injector_count * input.discharge_coefficient * jet_velocity), "continuity");
        step!(working, let injector_diameter: "d" in MILLIMETRE = Length::from_si(math::sqrt(4.0 / PI * injector_area.si())), "geometry");
        InjectorSizeResult { gas_flow, injector_area, injector_diameter }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::ReferenceConditions;
    use crate::record::Record;
    use flamewright_reference::rows;

    fn methane() -> PipedGas {
        PipedGas::new(&Fuel::named("G20").unwrap(), ReferenceConditions::AT_15_15).unwrap()
    }

    fn near(got: f64, wanted: f64, tolerance: f64, what: &str) {
        assert!((got / wanted - 1.0).abs() <= tolerance, "{what}: {got} for {wanted}");
    }

    #[test]
    fn flow_and_size_agree_with_the_table() {
        let rows = rows("heat/gas_injector.csv");
        assert!(rows.len() >= 13);
        let (flow, size) = (InjectorFlow { gas: methane() }, InjectorSize { gas: methane() });
        for row in rows {
            let input = InjectorAtWork {
                injector_diameter: Length::from_si(row.number("diameter_mm") * 1e-3),
                burner_pressure: GaugePressure::from_si(row.number("pressure_mbar") * 100.0),
                relative_density: Ratio::from_si(row.number("relative_density")),
                discharge_coefficient: Ratio::from_si(row.number("Cd")),
                air_density: MassDensity::from_si(row.number("rho_air_kg_m3")),
                gross_calorific_value: CalorificValue::from_si(38.5e6),
                ..InjectorAtWork::unset()
            };
            let got = flow.evaluate(&input).unwrap().output;
            // The table prints eight digits.
            near(got.gas_density.si(), row.number("rho_gas_kg_m3"), 1e-8, &row.place);
            near(got.gas_flow.si() * 3600.0, row.number("flow_m3_h"), 5e-8, &row.place);
            near(got.gas_flow_practical.si() * 3600.0, row.number("flow_form_0_0467_m3_h"), 5e-8, &row.place);
            near(got.heat_input_gross.si() / 1e3, row.number("heat_kW_gross_at_38_5MJ_m3"), 5e-8, &row.place);
            let wanted = InjectorWanted {
                heat_input_gross: got.heat_input_gross,
                gross_calorific_value: input.gross_calorific_value,
                burner_pressure: input.burner_pressure,
                relative_density: input.relative_density,
                discharge_coefficient: input.discharge_coefficient,
                air_density: input.air_density,
                ..InjectorWanted::unset()
            };
            let back = size.evaluate(&wanted).unwrap().output;
            near(back.injector_diameter.si(), input.injector_diameter.si(), 1e-12, &row.place);
        }
    }

    #[test]
    fn one_way_of_stating_the_flow_is_needed() {
        let size = InjectorSize { gas: methane() };
        let wanted = InjectorWanted {
            burner_pressure: GaugePressure::from_si(1000.0),
            relative_density: Ratio::from_si(0.6),
            discharge_coefficient: Ratio::from_si(0.85),
            ..InjectorWanted::unset()
        };
        assert!(size.evaluate(&wanted).is_err());
        let by_flow = InjectorWanted { gas_flow: VolumeRate::from_si(1e-4), ..wanted };
        assert!(size.evaluate(&by_flow).is_ok());
        let both =
            InjectorWanted { heat_input_gross: HeatInput::from_si(3e3), gross_calorific_value: CalorificValue::from_si(38e6), ..by_flow };
        assert!(size.evaluate(&both).is_err());
        assert!(size.evaluate(&InjectorWanted { heat_input_gross: HeatInput::from_si(3e3), ..wanted }).is_ok());
    }
}
