//! The calculation `leak_scaling`: a leak measured at one pressure with one gas, at another.

use super::{CAUTION_COMPETENCE, CAUTION_TIGHTNESS};
use crate::air::properties::{STANDARD_ATMOSPHERE, dry_air};
use crate::calculation::{Calculation, Info, Source};
use crate::math;
use crate::no_settings;
use crate::quantity::types::{DynamicViscosity, MassDensity, Ratio, ThermodynamicTemperature};
use crate::quantity::units::*;
use crate::quantity::{AtReference, GasFlow, GaugePressure, Value};
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
    /// Density over that of air of the gas tested with; 1 for air.
    #[field("d_1", ONE, 0.05..=5.0, default = 1.0)]
    pub test_relative_density: Ratio,
    /// Density over that of air of the gas in operation.
    #[field("d_2", ONE, 0.05..=5.0, default = 1.0)]
    pub operating_relative_density: Ratio,
    /// Viscosity of the gas tested with; left out, that of air.
    #[field("\\mu_1", PASCAL_SECOND, 1e-6..=1e-4, absent = "that of air")]
    pub test_viscosity: DynamicViscosity,
    /// Viscosity of the gas in operation; left out, that of air.
    #[field("\\mu_2", PASCAL_SECOND, 1e-6..=1e-4, absent = "that of air")]
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
    /// Viscosity of air at the temperature.
    #[field("\\mu_a", PASCAL_SECOND)]
    pub air_viscosity: DynamicViscosity,
    /// Density of air at the temperature and one standard atmosphere.
    #[field("\\rho_a", KILOGRAM_PER_CUBIC_METRE)]
    pub air_density: MassDensity,
}

/// A leak under other conditions.
#[derive(Clone, Copy, Debug)]
pub struct LeakScaling;

no_settings!(LeakScaling);

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
        let test_viscosity = DynamicViscosity::from_si(super::or(input.test_viscosity.si(), air.viscosity));
        let operating_viscosity = DynamicViscosity::from_si(super::or(input.operating_viscosity.si(), air.viscosity));
        step!(working, let pressure_ratio: "p_2/p_1" as Ratio = input.operating_pressure.plain() / input.test_pressure.plain(), "gauge pressures");
        step!(working, let gas_ratio_laminar: "r_{lam}" as Ratio = test_viscosity / operating_viscosity, "Hagen-Poiseuille");
        step!(working, let gas_ratio_orifice: "r_{or}" = Ratio::from_si(math::sqrt(input.test_relative_density.si() / input.operating_relative_density.si())), "orifice equation");
        step!(working, let laminar: "\\dot V_{lam}" in LITRE_PER_HOUR = input.leak_rate.plain() * pressure_ratio * gas_ratio_laminar, "Hagen-Poiseuille");
        step!(working, let orifice: "\\dot V_{or}" in LITRE_PER_HOUR = input.leak_rate.plain() * math::sqrt(pressure_ratio.si()) * gas_ratio_orifice, "orifice equation");
        LeakElsewhere {
            leak_rate_laminar: GasFlow::new(laminar),
            leak_rate_orifice: GasFlow::new(orifice),
            gas_ratio_laminar,
            gas_ratio_orifice,
            air_viscosity: DynamicViscosity::from_si(air.viscosity),
            air_density: MassDensity::from_si(air.density),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::supply::trade::check;
    use crate::supply::viscosity::pure_gas;

    #[test]
    fn scaling_by_pressure_agrees_with_the_table() {
        check("trade/tightness.csv", "leak_scaling_pressure", |i, output| {
            let input = LeakUnderTest {
                leak_rate: GasFlow::from_si(i.si("leak")),
                test_pressure: GaugePressure::from_si(i.si("p_test")),
                operating_pressure: GaugePressure::from_si(i.si("p_operating")),
                ..LeakUnderTest::unset()
            };
            let got = LeakScaling.evaluate(&input).unwrap().output;
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
            assert_eq!(i.0["gas"].0, "methane");
            let temperature = i.si("T");
            let viscosity = pure_gas("CH4").unwrap().at(temperature);
            let input = LeakUnderTest {
                test_pressure: GaugePressure::from_si(2000.0),
                operating_pressure: GaugePressure::from_si(2000.0),
                // Relative density of methane, ISO 6976:2016 at 15 degC.
                operating_relative_density: Ratio::from_si(0.5548),
                operating_viscosity: DynamicViscosity::from_si(viscosity),
                temperature: ThermodynamicTemperature::from_si(temperature),
                ..LeakUnderTest::unset()
            };
            let got = LeakScaling.evaluate(&input).unwrap().output;
            match output {
                "laminar_ratio" => got.gas_ratio_laminar.si(),
                "orifice_ratio" => got.gas_ratio_orifice.si(),
                "viscosity_air" => got.air_viscosity.si(),
                "viscosity_gas" => viscosity,
                other => panic!("{other}"),
            }
        });
    }
}
