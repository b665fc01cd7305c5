//! The calculation `burner_pressure`: heat input and pressure at one injector, from one state to
//! another: another pressure, another gas, another altitude.

use super::gas::{PipedGas, REFERENCE};
use super::{CAUTION_BURNER, CAUTION_COMPETENCE, or};
use crate::Error;
use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::fuel::Fuel;
use crate::math;
use crate::quantity::types::{Power, Pressure, Ratio, ThermodynamicTemperature};
use crate::quantity::units::*;
use crate::quantity::{AbsolutePressure, CalorificValue, GaugePressure, Gross, Value, WobbeIndex};
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};

/// A burner as it is known, and the state it is wanted in.
#[record]
pub struct BurnerStates {
    /// Heat input known, on either basis; the result stands on the same.
    #[field("\\dot Q_1", KILOWATT, 1e-3..=1e5, usual = 0.5..=200.0)]
    pub heat_input: Power,
    /// Burner pressure at which it is known.
    #[field("p_1", MILLIBAR, 0.01..=500.0, usual = 1.0..=60.0)]
    pub burner_pressure: GaugePressure,
    /// Burner pressure in the new state; left out, the same.
    #[field("p_2", MILLIBAR, 0.01..=500.0, absent = "unchanged", usual = 1.0..=60.0)]
    pub new_burner_pressure: GaugePressure,
    /// Heat input wanted in the new state; left out, the same.
    #[field("\\dot Q_w", KILOWATT, 1e-3..=1e5, absent = "unchanged", usual = 0.5..=200.0)]
    pub wanted_heat_input: Power,
    /// Gross calorific value of the gas known; left out, that of the fuel.
    #[field("H_1", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, absent = "that of the fuel")]
    pub gross_calorific_value: CalorificValue<Gross>,
    /// Gross calorific value of the new gas; left out, that of the new fuel.
    #[field("H_2", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, absent = "that of the new fuel, or unchanged")]
    pub new_gross_calorific_value: CalorificValue<Gross>,
    /// Relative density of the gas known; left out, that of the fuel.
    #[field("d_1", ONE, 0.05..=5.0, absent = "that of the fuel")]
    pub relative_density: Ratio,
    /// Relative density of the new gas; left out, that of the new fuel.
    #[field("d_2", ONE, 0.05..=5.0, absent = "that of the new fuel, or unchanged")]
    pub new_relative_density: Ratio,
    /// Gas temperature at which the heat input is known.
    #[field("T_1", DEGREE_CELSIUS, -40.0..=80.0, default = 15.0)]
    pub gas_temperature: ThermodynamicTemperature,
    /// Gas temperature in the new state; left out, the same.
    #[field("T_2", DEGREE_CELSIUS, -40.0..=80.0, absent = "unchanged")]
    pub new_gas_temperature: ThermodynamicTemperature,
    /// Barometric pressure at which the heat input is known.
    #[field("p_{b,1}", MILLIBAR, 500.0..=1100.0, default = 1013.25)]
    pub barometric_pressure: AbsolutePressure,
    /// Barometric pressure in the new state; left out, the same.
    #[field("p_{b,2}", MILLIBAR, 500.0..=1100.0, absent = "unchanged")]
    pub new_barometric_pressure: AbsolutePressure,
}

/// The burner in the new state.
#[record]
pub struct BurnerChange {
    /// Heat input at the new pressure with the same injector.
    #[field("\\dot Q_2", KILOWATT)]
    pub new_heat_input: Power,
    /// New over known heat input with the same injector.
    #[field("\\dot Q_2/\\dot Q_1", ONE)]
    pub heat_input_ratio: Ratio,
    /// Burner pressure that gives the wanted heat input with the same injector.
    #[field("p_w", MILLIBAR)]
    pub pressure_for_wanted: GaugePressure,
    /// Injector diameter over the present one that gives the wanted heat input at the new pressure.
    #[field("d_w/d_1", ONE)]
    pub injector_diameter_ratio: Ratio,
    /// Gross Wobbe index of the gas known.
    #[field("W_1", MEGAJOULE_PER_CUBIC_METRE)]
    pub gross_wobbe_index: WobbeIndex<Gross>,
    /// Gross Wobbe index of the new gas.
    #[field("W_2", MEGAJOULE_PER_CUBIC_METRE)]
    pub new_gross_wobbe_index: WobbeIndex<Gross>,
    /// New over known Wobbe index.
    #[field("W_2/W_1", ONE)]
    pub wobbe_ratio: Ratio,
    /// New over known modified Wobbe index, which holds the temperature of the gas as well.
    #[field("W'_2/W'_1", ONE)]
    pub modified_wobbe_ratio: Ratio,
    /// New over known flow at reference conditions.
    #[field("\\dot V_2/\\dot V_1", ONE)]
    pub reference_flow_ratio: Ratio,
}

/// Burner pressure, heat input and gas at one injector.
#[derive(Clone, Debug)]
pub struct BurnerPressure {
    /// The gas known.
    pub gas: PipedGas,
    /// The new gas, unless it stays.
    pub new_gas: Option<PipedGas>,
}

impl Context for BurnerPressure {
    const SETTINGS: &'static [Setting] = &[
        Fuel::setting(),
        REFERENCE,
        Setting {
            name: "new_fuel",
            doc: "The gas in the new state, written like fuel; left out, it stays.",
            form: Form::Fuel,
            default: Some(""),
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let gas = PipedGas::from_settings(settings)?;
        let new_fuel = match settings.get("new_fuel") {
            None => None,
            Some(node) if node.text("new_fuel").is_ok_and(str::is_empty) => None,
            Some(node) => Some(Fuel::from_node(node)?),
        };
        let new_gas = new_fuel.map(|fuel| PipedGas::new(&fuel, gas.reference)).transpose()?;
        Ok(Self { gas, new_gas })
    }
}

rules! {
    notice FAR_FROM_KNOWN on "new_burner_pressure": "the new heat input is below half or above twice the known one; the square law holds only while the injector alone holds the gas back";
    notice OTHER_FAMILY on "new_gross_calorific_value": "the Wobbe index changes by more than a tenth: that is another gas group, for which the maker states injector, pressure and air setting";
}

impl Calculation for BurnerPressure {
    type Input = BurnerStates;
    type Output = BurnerChange;
    const INFO: Info = Info {
        name: "burner_pressure",
        title: "Burner pressure, heat input and gas",
        summary: "Heat input at another burner pressure, gas, gas temperature or barometer by the square law of the injector, the pressure for a wanted heat input, and the injector for it.",
        sources: &[
            Source::new(
                "Orifice equation for a small pressure difference; textbook",
                "heat input with the root of pressure times gas density",
            ),
            Source::new("ISO 6976:2016, definition", "Wobbe index"),
            Source::new("common practice, no source", "modified Wobbe index: Wobbe index over the root of the absolute gas temperature"),
        ],
        accuracy: "Within about 1 % from half to twice the pressure, if the injector is the only resistance and its discharge coefficient stays.",
        cautions: &[CAUTION_BURNER, CAUTION_COMPETENCE],
        checked_against: "heat/burner_pressure_law.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn review(&self, _input: &BurnerStates, output: &BurnerChange) -> Raised {
        let ratio = output.heat_input_ratio.si();
        let wobbe = output.wobbe_ratio.si();
        Raised::NONE.when(FAR_FROM_KNOWN, !(0.5..=2.0).contains(&ratio)).when(OTHER_FAMILY, !(0.9..=1.1).contains(&wobbe))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &BurnerStates, working: &mut W) -> BurnerChange {
        let new = or;
        let gross_calorific_value = Pressure::from_si(or(input.gross_calorific_value.si(), self.gas.gross_calorific_value));
        let relative_density = Ratio::from_si(or(input.relative_density.si(), self.gas.relative_density));
        let (new_heat, new_weight) = self
            .new_gas
            .as_ref()
            .map_or((gross_calorific_value.si(), relative_density.si()), |gas| (gas.gross_calorific_value, gas.relative_density));
        let new_burner_pressure = Pressure::from_si(new(input.new_burner_pressure.si(), input.burner_pressure.si()));
        let wanted_heat_input = Power::from_si(new(input.wanted_heat_input.si(), input.heat_input.si()));
        let new_gross_calorific_value = Pressure::from_si(new(input.new_gross_calorific_value.si(), new_heat));
        let new_relative_density = Ratio::from_si(new(input.new_relative_density.si(), new_weight));
        let new_gas_temperature = ThermodynamicTemperature::from_si(new(input.new_gas_temperature.si(), input.gas_temperature.si()));
        let new_barometric_pressure = Pressure::from_si(new(input.new_barometric_pressure.si(), input.barometric_pressure.si()));
        step!(working, let wobbe: "W_1" in MEGAJOULE_PER_CUBIC_METRE =
            gross_calorific_value / math::sqrt(relative_density.si()), "ISO 6976");
        step!(working, let new_wobbe: "W_2" in MEGAJOULE_PER_CUBIC_METRE = new_gross_calorific_value / math::sqrt(new_relative_density.si()), "ISO 6976");
        step!(working, let wobbe_ratio: "W_2/W_1" as Ratio = new_wobbe / wobbe, "definition");
        step!(working, let modified_ratio: "W'_2/W'_1" = wobbe_ratio * math::sqrt(input.gas_temperature.si() / new_gas_temperature.si()), "common practice, no source");
        step!(working, let at_same_pressure: "r_p" = modified_ratio * math::sqrt(new_barometric_pressure.si() / input.barometric_pressure.si()), "orifice equation, gas density with the barometer");
        step!(working, let heat_input_ratio: "\\dot Q_2/\\dot Q_1" = at_same_pressure * math::sqrt(new_burner_pressure.si() / input.burner_pressure.si()), "orifice equation");
        step!(working, let new_heat_input: "\\dot Q_2" in KILOWATT = input.heat_input * heat_input_ratio, "definition");
        step!(working, let wanted_ratio: "\\dot Q_w/\\dot Q_1" as Ratio = wanted_heat_input / input.heat_input, "definition");
        step!(working, let pressure: "p_w" as Pressure in MILLIBAR =
            input.burner_pressure.plain() * (wanted_ratio / at_same_pressure) * (wanted_ratio / at_same_pressure), "orifice equation");
        step!(working, let diameter_ratio: "d_w/d_1" = Ratio::from_si(math::sqrt(wanted_ratio.si() / heat_input_ratio.si())), "orifice equation, flow with the area");
        BurnerChange {
            new_heat_input,
            heat_input_ratio,
            pressure_for_wanted: GaugePressure::new(pressure),
            injector_diameter_ratio: diameter_ratio,
            gross_wobbe_index: WobbeIndex::new(wobbe),
            new_gross_wobbe_index: WobbeIndex::new(new_wobbe),
            wobbe_ratio,
            modified_wobbe_ratio: modified_ratio,
            reference_flow_ratio: heat_input_ratio * (gross_calorific_value / new_gross_calorific_value),
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
    use flamewright_reference::rows;

    fn on_methane() -> BurnerPressure {
        let gas = PipedGas::new(&Fuel::named("G20").unwrap(), ReferenceConditions::AT_15_15).unwrap();
        BurnerPressure { gas, new_gas: None }
    }

    fn near(got: f64, wanted: f64, tolerance: f64) {
        assert!((got / wanted - 1.0).abs() <= tolerance, "{got} for {wanted}");
    }

    #[test]
    fn the_square_law_agrees_with_the_table() {
        let rows = rows("heat/burner_pressure_law.csv");
        assert!(rows.len() >= 5);
        for row in rows {
            let states = BurnerStates {
                heat_input: Power::from_si(row.number("rate_1") * 1e3),
                burner_pressure: GaugePressure::from_si(row.number("burner_pressure_1_mbar") * 100.0),
                new_burner_pressure: GaugePressure::from_si(row.number("burner_pressure_2_mbar") * 100.0),
                wanted_heat_input: Power::from_si(row.number("rate_1") * 900.0),
                ..BurnerStates::unset()
            };
            let got = on_methane().evaluate(&states).unwrap().output;
            // Nine printed digits.
            near(got.new_heat_input.si() / 1e3, row.number("rate_2"), 5e-9);
            near(got.pressure_for_wanted.si() / 100.0, row.number("pressure_for_rate_1_times_0_9_mbar"), 5e-9);
        }
    }

    fn methane_burner() -> BurnerStates {
        BurnerStates {
            heat_input: Power::from_si(24e3),
            burner_pressure: GaugePressure::from_si(1200.0),
            gross_calorific_value: CalorificValue::from_si(37.78e6),
            relative_density: Ratio::from_si(0.5548),
            ..BurnerStates::unset()
        }
    }

    /// The law of the injector itself, `Q = H C A sqrt(2 p rho) / rho_ref`, written out for both gases.
    #[test]
    fn a_change_of_gas_follows_the_injector_law() {
        let propane = BurnerStates {
            new_burner_pressure: GaugePressure::from_si(3700.0),
            new_gross_calorific_value: CalorificValue::from_si(95.65e6),
            new_relative_density: Ratio::from_si(1.55),
            ..methane_burner()
        };
        let evaluated = on_methane().evaluate(&propane).unwrap();
        let got = evaluated.output;
        let heat = |calorific: f64, density: f64, pressure: f64| calorific * math::sqrt(2.0 * pressure / density);
        near(got.heat_input_ratio.si(), heat(95.65e6, 1.55, 3700.0) / heat(37.78e6, 0.5548, 1200.0), 1e-14);
        near(heat(95.65e6, 1.55, got.pressure_for_wanted.si()), heat(37.78e6, 0.5548, 1200.0), 1e-14);
        let area = got.injector_diameter_ratio.si() * got.injector_diameter_ratio.si();
        near(area * got.heat_input_ratio.si(), 1.0, 1e-14);
        near(got.new_gross_wobbe_index.si(), 76.83e6, 1e-4);
        assert_eq!(evaluated.judged.raised.0, 1 << FAR_FROM_KNOWN | 1 << OTHER_FAMILY);
    }

    /// Thinner gas: at 850 mbar and 5 degC warmer the reference flow falls with the root of density.
    #[test]
    fn altitude_and_temperature_act_by_the_root_of_density() {
        let high = BurnerStates {
            new_barometric_pressure: AbsolutePressure::from_si(85_000.0),
            new_gas_temperature: ThermodynamicTemperature::from_si(293.15),
            ..methane_burner()
        };
        let got = on_methane().evaluate(&high).unwrap().output;
        near(got.heat_input_ratio.si(), math::sqrt(85_000.0 / 101_325.0 * 288.15 / 293.15), 1e-14);
        assert_eq!(got.wobbe_ratio.si(), 1.0);
        near(got.reference_flow_ratio.si(), got.heat_input_ratio.si(), 1e-15);
    }

    #[test]
    fn a_gauge_in_bar_absolute_is_refused() {
        assert!(BurnerStates::read([("burner_pressure", "1.03 bar(a)")]).is_err());
        assert!(on_methane().evaluate(&BurnerStates { burner_pressure: GaugePressure::from_si(-5.0), ..methane_burner() }).is_err());
    }

    /// G20 to G31 by name: gross Wobbe indices of EN 437 at 15/15 are 50.72 and 76.84 MJ/m3 (from
    /// memory); 12 mbar of G20 then ask for 12 (50.72/76.84)^2 = 5.23 mbar of G31.
    #[test]
    fn a_change_of_family_by_name() {
        let given = [("fuel", "G20"), ("new_fuel", "G31"), ("heat_input", "24 kW"), ("burner_pressure", "12 mbar")];
        let outcome = evaluate("burner_pressure", &Node::from(given), Bare::Refused).unwrap();
        near(outcome.get("gross_wobbe_index").unwrap(), 50.72e6, 1e-3);
        near(outcome.get("new_gross_wobbe_index").unwrap(), 76.84e6, 1e-3);
        near(outcome.get("pressure_for_wanted").unwrap(), 522.8, 2e-3);
        assert!(outcome.notices.iter().any(|notice| notice.code == "OTHER_FAMILY"));
    }
}
