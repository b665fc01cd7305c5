//! The gas in a supply: what pipe sums need to know of a fuel gas.

use super::viscosity::{GasViscosity, MixtureShare, mixture_viscosity, pure_gas};
use crate::Error;
use crate::air::properties::dry_air;
use crate::calculation::{Calculation, Form, Setting, Settings};
use crate::convection::friction::TurbulentFriction;
use crate::fuel::{Composition, Edition, Fuel, FuelProperties, FuelReference};
use crate::quantity::types::ThermodynamicTemperature;
use crate::quantity::{AbsolutePressure, ReferenceConditions, Value};

/// Atomic masses of carbon, hydrogen, oxygen, nitrogen, sulphur, helium and argon, kg/kmol
/// (ISO 6976:2016 Table A.2). They only weigh the shares of Wilke's rule.
const ATOMIC_MASSES: [f64; 7] = [12.0107, 1.00794, 15.9994, 14.0067, 32.065, 4.002602, 39.948];

/// Share of components without a viscosity of their own that is left out of the mixture at most.
const WITHOUT_VISCOSITY: f64 = 0.01;

/// A fuel gas at its reference conditions, with its viscosity over temperature.
#[derive(Clone, Debug)]
pub struct PipedGas {
    /// Reference conditions of its volume.
    pub reference: ReferenceConditions,
    /// Density at reference conditions, kg/m3.
    pub reference_density: f64,
    /// Density over that of air.
    pub relative_density: f64,
    /// Compression factor short of one at reference conditions, `1 - Z`.
    pub non_ideality: f64,
    /// Gross calorific value at reference conditions, J/m3.
    pub gross_calorific_value: f64,
    /// Viscosity of the mixture.
    pub viscosity: GasViscosity,
}

impl PipedGas {
    /// A fuel gas; density and calorific value by ISO 6976:2016, viscosity by Wilke's rule.
    ///
    /// # Errors
    /// If the fuel is no gas, or its viscosity is not known.
    pub fn new(fuel: &Fuel, reference: ReferenceConditions) -> Result<Self, Error> {
        let Some(composition) = &fuel.composition else {
            return Err(Error::bad_setting("fuel", &fuel.name, "a gas is needed here"));
        };
        let viscosity = viscosity_of(composition)?;
        let at = FuelReference {
            combustion_temperature: ThermodynamicTemperature::from_si(reference.combustion_temperature),
            metering_temperature: ThermodynamicTemperature::from_si(reference.metering_temperature),
            metering_pressure: AbsolutePressure::from_si(reference.metering_pressure),
        };
        let properties = FuelProperties::new(fuel.clone(), Edition::Iso6976Of2016)?.evaluate(&at)?.output;
        Ok(Self {
            reference,
            reference_density: properties.density.si(),
            relative_density: properties.relative_density.si(),
            non_ideality: 1.0 - properties.compression_factor.si(),
            gross_calorific_value: properties.gross_calorific_value.si(),
            viscosity,
        })
    }

    /// The gas that the settings `fuel` and `reference` ask for.
    ///
    /// # Errors
    /// As [`PipedGas::new`].
    pub fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Self::new(&Fuel::from_settings(settings)?, ReferenceConditions::from_settings(settings, "reference")?)
    }

    /// Density (kg/m3) at a temperature (K) and an absolute pressure (Pa) of a gas that has
    /// `reference_density` at reference conditions and departs from the ideal gas law by `1 - Z` of
    /// `non_ideality` there.
    ///
    /// `1 - Z` goes with the pressure, as in ISO 6976, and about with the third power of the inverse
    /// temperature (our approximation to second virial coefficients; the error stays below 6e-4 of the
    /// density within 30 K of the reference and below 200 mbar gauge, propane included).
    #[inline(always)]
    #[must_use]
    pub fn density(&self, reference_density: f64, non_ideality: f64, temperature: f64, pressure: f64) -> f64 {
        let warmth = self.reference.metering_temperature / temperature;
        let load = pressure / self.reference.metering_pressure;
        let departure = non_ideality * load * (warmth * warmth * warmth);
        reference_density * load * warmth * (1.0 - non_ideality) / (1.0 - departure)
    }
}

/// The setting `reference`, as the piping sums use it.
pub(super) const REFERENCE: Setting =
    ReferenceConditions::setting("Reference conditions of gas volume and calorific value, such as \"15/15\" or \"25/0\".");

/// The setting `friction`.
pub(super) const FRICTION: Setting = Setting {
    name: "friction",
    doc: "Equation of the friction factor in turbulent flow.",
    form: Form::Choice(&["Colebrook", "Haaland", "Swamee-Jain"]),
    default: Some("Colebrook"),
};

/// The equation that the setting `friction` asks for.
pub(super) fn friction(settings: &Settings<'_>) -> Result<TurbulentFriction, Error> {
    settings.choice(
        "friction",
        &[
            ("Colebrook", TurbulentFriction::Colebrook),
            ("Haaland", TurbulentFriction::Haaland),
            ("Swamee-Jain", TurbulentFriction::SwameeJain),
        ],
    )
}

/// Density of the air beside a pipe, kg/m3.
#[inline(always)]
pub(super) fn air_density(temperature: f64, barometer: f64) -> f64 {
    dry_air(temperature, barometer).density
}

fn viscosity_of(composition: &Composition) -> Result<GasViscosity, Error> {
    let parts = || composition.parts().filter(|(_, fraction)| *fraction > 0.0);
    let unknown: f64 = parts().filter(|(component, _)| pure_gas(component.symbol).is_none()).map(|(_, fraction)| fraction).sum();
    if unknown > WITHOUT_VISCOSITY {
        let why =
            "more than 1 % of it are components whose viscosity is not known here; state gas_viscosity and gas_density with a test gas";
        return Err(Error::bad_setting("fuel", "", why));
    }
    Ok(mixture_viscosity(parts().filter_map(|(component, mole_fraction)| {
        let molar_mass = component.atoms.iter().zip(ATOMIC_MASSES).map(|(&count, mass)| f64::from(count) * mass).sum();
        let gas = pure_gas(component.symbol)?;
        Some((gas, MixtureShare { mole_fraction, molar_mass, viscosity: f64::NAN }))
    })))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn piped(fuel: &str) -> PipedGas {
        PipedGas::new(&Fuel::named(fuel).unwrap(), ReferenceConditions::AT_15_15).unwrap()
    }

    #[test]
    fn methane_agrees_with_the_gas_pipe_table() {
        let methane = piped("G20");
        assert!((methane.reference_density / 0.6798343 - 1.0).abs() < 1e-4);
        assert!((methane.viscosity.at(288.15) / 1.087703e-5 - 1.0).abs() < 1e-4);
        let line = methane.density(methane.reference_density, methane.non_ideality, 288.15, 103_425.0);
        assert!((line / methane.reference_density / (0.6939527 / 0.6798343) - 1.0).abs() < 2e-6);
    }

    /// Real density over that at 15 degC and 1 atm by CoolProp 8.0.0 (propane: Lemmon et al. 2009).
    #[test]
    fn propane_in_the_cold_and_under_pressure_agrees_with_its_equation_of_state() {
        let propane = piped("G31");
        for (temperature, pressure, ratio) in
            [(263.15, 103_425.0, 1.125_364_6), (288.15, 105_025.0, 1.037_225_3), (303.15, 115_000.0, 1.078_134_1)]
        {
            let got = propane.density(1.0, propane.non_ideality, temperature, pressure);
            assert!((got / ratio - 1.0).abs() < 6e-4, "{temperature} {pressure}: {got} for {ratio}");
        }
    }

    /// A mixture's own sum of pure viscosities bounds what Wilke gives for gases of like viscosity.
    #[test]
    fn mixtures_lie_between_their_parts() {
        let blend = piped("CH4 86 %, N2 14 %").viscosity.at(288.15) * 1e6;
        assert!(blend > 10.8768 && blend < 17.34);
        // 50 % of each butane.
        let butane = piped("G30").viscosity.at(288.15) * 1e6;
        assert!(butane > 7.15 && butane < 7.26);
    }

    #[test]
    fn no_gas_and_strange_gases_are_refused() {
        let oil = Fuel::named("gas oil").unwrap();
        assert!(PipedGas::new(&oil, ReferenceConditions::AT_15_15).is_err());
        let strange = Fuel::named("CH4 95 %, NH3 5 %").unwrap();
        assert!(PipedGas::new(&strange, ReferenceConditions::AT_15_15).is_err());
        let trace = Fuel::named("CH4 99.5 %, nC7H16 0.5 %").unwrap();
        assert!(PipedGas::new(&trace, ReferenceConditions::AT_15_15).is_ok());
    }
}
