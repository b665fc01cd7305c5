//! The calculation `leak_scaling`: a leak measured at one pressure with one gas, at another.

use super::{CAUTION_COMPETENCE, CAUTION_TIGHTNESS, PipedGas, or};
use crate::Error;
use crate::air::properties::{STANDARD_ATMOSPHERE, dry_air};
use crate::calculation::{Calculation, Context, Form, Info, Setting, Settings, Source};
use crate::fuel::Fuel;
use crate::math;
use crate::node::Node;
use crate::quantity::types::{DynamicViscosity, MassDensity, Ratio, ThermodynamicTemperature};
use crate::quantity::units::*;
use crate::quantity::{AtReference, GasFlow, GaugePressure, ReferenceConditions, Value};
use crate::record::record;
use crate::working::{Working, step};

/// A leak as it was measured, and the conditions it is wanted at.
#[record]
pub struct LeakUnderTest {
    /// Leak as measured, with the test gas.
    #[field("\\dot V_1", LITRE_PER_HOUR, 0.0..=1e6, default = 1.0)]
    pub leak_rate: GasFlow<AtReference>,
    /// Gauge pressure of the test.
    #[field("p_1", MILLIBAR, 0.01..=10000.0, usual = 5.0..=1000.0)]
    pub test_pressure: GaugePressure,
    /// Gauge pressure in operation.
    #[field("p_2", MILLIBAR, 0.01..=10000.0, usual = 5.0..=1000.0)]
    pub operating_pressure: GaugePressure,
    /// Density over that of air of the gas tested with; left out, that of the test gas named.
    #[field("d_1", ONE, 0.05..=5.0, absent = "that of the test gas")]
    pub test_relative_density: Ratio,
    /// Density over that of air of the gas in operation; left out, that of the gas named.
    #[field("d_2", ONE, 0.05..=5.0, absent = "that of the operating gas")]
    pub operating_relative_density: Ratio,
    /// Viscosity of the gas tested with; left out, that of the test gas named.
    #[field("\\mu_1", PASCAL_SECOND, 1e-6..=1e-4, absent = "that of the test gas")]
    pub test_viscosity: DynamicViscosity,
    /// Viscosity of the gas in operation; left out, that of the gas named.
    #[field("\\mu_2", PASCAL_SECOND, 1e-6..=1e-4, absent = "that of the operating gas")]
    pub operating_viscosity: DynamicViscosity,
    /// Temperature of gas and air.
    #[field("T", DEGREE_CELSIUS, -40.0..=60.0, default = 15.0)]
    pub temperature: ThermodynamicTemperature,
}

/// The leak as it would be in operation, if the leak path is fine and if it is short.
#[record]
pub struct LeakElsewhere {
    /// Leak if it seeps through a long fine path, where viscosity rules.
    #[field("\\dot V_{lam}", LITRE_PER_HOUR)]
    pub leak_rate_laminar: GasFlow<AtReference>,
    /// Leak if it blows through a short hole, where density rules.
    #[field("\\dot V_{or}", LITRE_PER_HOUR)]
    pub leak_rate_orifice: GasFlow<AtReference>,
    /// Laminar leak of the operating gas over that of the test gas at one pressure.
    #[field("r_{lam}", ONE)]
    pub gas_ratio_laminar: Ratio,
    /// Orifice leak of the operating gas over that of the test gas at one pressure.
    #[field("r_{or}", ONE)]
    pub gas_ratio_orifice: Ratio,
    /// Viscosity of the operating gas at the temperature.
    #[field("\\mu_2", PASCAL_SECOND)]
    pub operating_viscosity: DynamicViscosity,
    /// Viscosity of air at the temperature.
    #[field("\\mu_a", PASCAL_SECOND)]
    pub air_viscosity: DynamicViscosity,
    /// Density of air at the temperature and one standard atmosphere.
    #[field("\\rho_a", KILOGRAM_PER_CUBIC_METRE)]
    pub air_density: MassDensity,
}

/// A leak under other conditions: the gas tested with and the gas in operation.
#[derive(Clone, Debug, Default)]
pub struct LeakScaling {
    /// Gas tested with; air where `None`.
    pub test_gas: Option<PipedGas>,
    /// Gas in operation; air where `None`.
    pub operating_gas: Option<PipedGas>,
}

impl Context for LeakScaling {
    const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "test_gas",
            doc: "The gas tested with: \"air\", or a fuel as fuel_properties takes it.",
            form: Form::Fuel,
            default: Some("air"),
        },
        Setting {
            name: "operating_gas",
            doc: "The gas in operation: a fuel as fuel_properties takes it, or \"air\".",
            form: Form::Fuel,
            default: Some("G20"),
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let gas = |name: &str| -> Result<Option<PipedGas>, Error> {
            let fuel = match settings.get(name) {
                Some(node @ Node::Table(_)) => Fuel::from_node(node)?,
                _ => match settings.text(name)? {
                    "air" => return Ok(None),
                    text => Fuel::named(text)?,
                },
            };
            PipedGas::new(&fuel, ReferenceConditions::AT_15_15).map(Some)
        };
        Ok(Self { test_gas: gas("test_gas")?, operating_gas: gas("operating_gas")? })
    }
}

impl Calculation for LeakScaling {
    type Input = LeakUnderTest;
    type Output = LeakElsewhere;
    const INFO: Info = Info {
        name: "leak_scaling",
        title: "A leak at another pressure or with another gas",
        summary: "What a leak measured at test pressure, perhaps with air, would be at operating pressure with the gas: as a fine seep and as a hole, between which the truth lies.",
        sources: &[
            Source::new("Hagen-Poiseuille; textbook", "laminar seep: with pressure over viscosity"),
            Source::new("Orifice equation; textbook", "hole: with the root of pressure over density"),
            Source::new("Lemmon & Jacobsen 2004, Int. J. Thermophys. 25, 21", "viscosity of air"),
        ],
        accuracy: "The two forms bound the leak; which applies is a judgement. Expansion of the gas is neglected, so keep to pressures well below one bar.",
        cautions: &[CAUTION_TIGHTNESS, CAUTION_COMPETENCE],
        checked_against: "trade/tightness.csv",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &LeakUnderTest, working: &mut W) -> LeakElsewhere {
        let air = dry_air(input.temperature.si(), STANDARD_ATMOSPHERE);
        let viscosity = |gas: &Option<PipedGas>| gas.as_ref().map_or(air.viscosity, |gas| gas.viscosity.at(input.temperature.si()));
        let density = |gas: &Option<PipedGas>| gas.as_ref().map_or(1.0, |gas| gas.relative_density);
        let test_viscosity = DynamicViscosity::from_si(or(input.test_viscosity.si(), viscosity(&self.test_gas)));
        let operating_viscosity = DynamicViscosity::from_si(or(input.operating_viscosity.si(), viscosity(&self.operating_gas)));
        let test_density = Ratio::from_si(or(input.test_relative_density.si(), density(&self.test_gas)));
        let operating_density = Ratio::from_si(or(input.operating_relative_density.si(), density(&self.operating_gas)));
        step!(working, let pressure_ratio: "p_2/p_1" as Ratio = input.operating_pressure.plain() / input.test_pressure.plain(), "gauge pressures");
        step!(working, let gas_ratio_laminar: "r_{lam}" as Ratio = test_viscosity / operating_viscosity, "Hagen-Poiseuille");
        step!(working, let gas_ratio_orifice: "r_{or}" = Ratio::from_si(math::sqrt(test_density.si() / operating_density.si())), "orifice equation");
        step!(working, let laminar: "\\dot V_{lam}" in LITRE_PER_HOUR = input.leak_rate.plain() * pressure_ratio * gas_ratio_laminar, "Hagen-Poiseuille");
        step!(working, let orifice: "\\dot V_{or}" in LITRE_PER_HOUR = input.leak_rate.plain() * math::sqrt(pressure_ratio.si()) * gas_ratio_orifice, "orifice equation");
        LeakElsewhere {
            leak_rate_laminar: GasFlow::new(laminar),
            leak_rate_orifice: GasFlow::new(orifice),
            gas_ratio_laminar,
            gas_ratio_orifice,
            operating_viscosity,
            air_viscosity: DynamicViscosity::from_si(air.viscosity),
            air_density: MassDensity::from_si(air.density),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::record::Record;
    use crate::supply::trade::check;

    #[test]
    fn scaling_by_pressure_agrees_with_the_table() {
        check("trade/tightness.csv", "leak_scaling_pressure", |i, output| {
            let input = LeakUnderTest {
                leak_rate: GasFlow::from_si(i.si("leak")),
                test_pressure: GaugePressure::from_si(i.si("p_test")),
                operating_pressure: GaugePressure::from_si(i.si("p_operating")),
                ..LeakUnderTest::unset()
            };
            let got = LeakScaling::default().evaluate(&input).unwrap().output;
            match output {
                "laminar" => got.leak_rate_laminar.si(),
                "orifice" => got.leak_rate_orifice.si(),
                other => panic!("{other}"),
            }
        });
    }

    #[test]
    fn air_to_gas_agrees_with_the_table() {
        check("trade/tightness.csv", "air_test_to_gas_leak_ratio", |i, output| {
            let temperature = alloc::format!("{} K", i.si("T"));
            let given = [
                ("operating_gas", i.0["gas"].0.as_str()),
                ("test_pressure", "20 mbar"),
                ("operating_pressure", "20 mbar"),
                ("temperature", &temperature),
            ];
            let result = match output {
                "laminar_ratio" => "gas_ratio_laminar",
                "orifice_ratio" => "gas_ratio_orifice",
                "viscosity_air" => "air_viscosity",
                "viscosity_gas" => "operating_viscosity",
                other => panic!("{other}"),
            };
            evaluate("leak_scaling", &Node::from(given), Bare::Refused).unwrap().get(result).unwrap()
        });
    }

    #[test]
    fn air_against_air_changes_nothing() {
        let input = LeakUnderTest {
            test_pressure: GaugePressure::from_si(2000.0),
            operating_pressure: GaugePressure::from_si(2000.0),
            ..LeakUnderTest::unset()
        };
        let got = LeakScaling::default().evaluate(&input).unwrap().output;
        assert_eq!((got.gas_ratio_laminar.si(), got.gas_ratio_orifice.si()), (1.0, 1.0));
    }
}
