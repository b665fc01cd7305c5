//! What a gas is worth: the calculations `gas_properties` (composition measured, one field per
//! component) and `fuel_properties` (any fuel by name or composition).

use super::composition::{Normalisation, SUM_TOLERANCE};
use super::edition::{Edition, column_shares};
use super::fuel::{Elements, Fuel, FuelState};
use super::iso6976::{MixtureColumns, Sums, TABLE_PRESSURE, TableUncertainty, Weights, air_compression_factor};
use super::{COMPONENT_COUNT, COMPONENTS, component_position};
use crate::calculation::{Calculation, Column, Context, Form, Info, Raised, Rule, Setting, Settings, Source, Table};
use crate::error::Error;
use crate::math;
use crate::quantity::types::{
    AvailableEnergy, MassDensity, MolarEnergy, MolarMass, Pressure, Ratio, TemperatureInterval, ThermodynamicTemperature,
};
use crate::quantity::{
    AbsolutePressure, CalorificValue, Gross, MassCalorificValue, MolarCalorificValue, Net, ReferenceConditions, Value, WobbeIndex, units,
};
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};
use alloc::string::ToString;
use alloc::vec::Vec;
use uom::si::f64::MolarHeatCapacity;

/// A gas by the share of each component, as a chromatograph reports it. What is not given is taken as
/// absent.
#[record]
pub struct GasAnalysis {
    /// Mole fraction of methane.
    #[field("x_{\\mathrm{CH_{4}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub methane: Ratio,
    /// Mole fraction of ethane.
    #[field("x_{\\mathrm{C_{2}H_{6}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub ethane: Ratio,
    /// Mole fraction of propane.
    #[field("x_{\\mathrm{C_{3}H_{8}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub propane: Ratio,
    /// Mole fraction of n-butane.
    #[field("x_{\\mathrm{nC_{4}H_{10}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub n_butane: Ratio,
    /// Mole fraction of isobutane.
    #[field("x_{\\mathrm{iC_{4}H_{10}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub isobutane: Ratio,
    /// Mole fraction of n-pentane.
    #[field("x_{\\mathrm{nC_{5}H_{12}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub n_pentane: Ratio,
    /// Mole fraction of isopentane.
    #[field("x_{\\mathrm{iC_{5}H_{12}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub isopentane: Ratio,
    /// Mole fraction of neopentane.
    #[field("x_{\\mathrm{neoC_{5}H_{12}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub neopentane: Ratio,
    /// Mole fraction of n-hexane.
    #[field("x_{\\mathrm{nC_{6}H_{14}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub n_hexane: Ratio,
    /// Mole fraction of n-heptane.
    #[field("x_{\\mathrm{nC_{7}H_{16}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub n_heptane: Ratio,
    /// Mole fraction of n-octane.
    #[field("x_{\\mathrm{nC_{8}H_{18}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub n_octane: Ratio,
    /// Mole fraction of n-nonane.
    #[field("x_{\\mathrm{nC_{9}H_{20}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub n_nonane: Ratio,
    /// Mole fraction of n-decane.
    #[field("x_{\\mathrm{nC_{10}H_{22}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub n_decane: Ratio,
    /// Mole fraction of ethene.
    #[field("x_{\\mathrm{C_{2}H_{4}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub ethene: Ratio,
    /// Mole fraction of propene.
    #[field("x_{\\mathrm{C_{3}H_{6}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub propene: Ratio,
    /// Mole fraction of hydrogen.
    #[field("x_{\\mathrm{H_{2}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub hydrogen: Ratio,
    /// Mole fraction of carbon monoxide.
    #[field("x_{\\mathrm{CO}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub carbon_monoxide: Ratio,
    /// Mole fraction of nitrogen.
    #[field("x_{\\mathrm{N_{2}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub nitrogen: Ratio,
    /// Mole fraction of carbon dioxide.
    #[field("x_{\\mathrm{CO_{2}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub carbon_dioxide: Ratio,
    /// Mole fraction of oxygen.
    #[field("x_{\\mathrm{O_{2}}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub oxygen: Ratio,
    /// Mole fraction of helium.
    #[field("x_{\\mathrm{He}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub helium: Ratio,
    /// Mole fraction of argon.
    #[field("x_{\\mathrm{Ar}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub argon: Ratio,
    /// Mole fraction of water.
    #[field("x_{\\mathrm{H_{2}O}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub water: Ratio,
    /// Mole fraction of hydrogen sulphide.
    #[field("x_{\\mathrm{H_{2}S}}", PERCENT, 0.0..=100.0, default = 0.0)]
    pub hydrogen_sulphide: Ratio,
}

/// The components of [`GasAnalysis`], in the order of its fields.
const ANALYSED: [&str; 24] = [
    "methane",
    "ethane",
    "propane",
    "n-butane",
    "isobutane",
    "n-pentane",
    "isopentane",
    "neopentane",
    "n-hexane",
    "n-heptane",
    "n-octane",
    "n-nonane",
    "n-decane",
    "ethene",
    "propene",
    "hydrogen",
    "carbon monoxide",
    "nitrogen",
    "carbon dioxide",
    "oxygen",
    "helium",
    "argon",
    "water",
    "hydrogen sulphide",
];

/// What a gas is worth at its reference conditions. Volumes are those of the real gas, with the water
/// that the composition states and no other.
#[record]
pub struct GasProperties {
    /// Molar mass.
    #[field("M", GRAM_PER_MOLE, absent = "not a gas")]
    pub molar_mass: MolarMass,
    /// Compression factor at metering conditions.
    #[field("Z", ONE, absent = "not a gas")]
    pub compression_factor: Ratio,
    /// Density at metering conditions.
    #[field("\\rho", KILOGRAM_PER_CUBIC_METRE, absent = "not a gas")]
    pub density: MassDensity,
    /// Density the gas would have at metering conditions if it were ideal.
    #[field("\\rho^\\circ", KILOGRAM_PER_CUBIC_METRE, absent = "not a gas")]
    pub ideal_density: MassDensity,
    /// Density over that of dry air, both real and at metering conditions.
    #[field("d", ONE, absent = "not a gas")]
    pub relative_density: Ratio,
    /// Molar mass over that of dry air: relative density of ideal gases.
    #[field("d^\\circ", ONE, absent = "not a gas")]
    pub ideal_relative_density: Ratio,
    /// Gross calorific value per volume.
    #[field("H_s", MEGAJOULE_PER_CUBIC_METRE, absent = "not a gas")]
    pub gross_calorific_value: CalorificValue<Gross>,
    /// Net calorific value per volume.
    #[field("H_i", MEGAJOULE_PER_CUBIC_METRE, absent = "not a gas")]
    pub net_calorific_value: CalorificValue<Net>,
    /// Gross Wobbe index.
    #[field("W_s", MEGAJOULE_PER_CUBIC_METRE, absent = "not a gas")]
    pub gross_wobbe_index: WobbeIndex<Gross>,
    /// Net Wobbe index.
    #[field("W_i", MEGAJOULE_PER_CUBIC_METRE, absent = "not a gas")]
    pub net_wobbe_index: WobbeIndex<Net>,
    /// Gross calorific value per amount of substance.
    #[field("H_{s,mol}", KILOJOULE_PER_MOLE, absent = "not a gas")]
    pub gross_molar_calorific_value: MolarCalorificValue<Gross>,
    /// Net calorific value per amount of substance.
    #[field("H_{i,mol}", KILOJOULE_PER_MOLE, absent = "not a gas")]
    pub net_molar_calorific_value: MolarCalorificValue<Net>,
    /// Gross calorific value per mass.
    #[field("H_{s,m}", MEGAJOULE_PER_KILOGRAM)]
    pub gross_mass_calorific_value: MassCalorificValue<Gross>,
    /// Net calorific value per mass.
    #[field("H_{i,m}", MEGAJOULE_PER_KILOGRAM)]
    pub net_mass_calorific_value: MassCalorificValue<Net>,
    /// Gross calorific value over net.
    #[field("H_s/H_i", ONE, absent = "the gas gives no heat")]
    pub gross_over_net: Ratio,
}

const SUM_SOURCE: &str = "ISO 6976, sum over the composition";

/// What the metering conditions fix for every gas.
#[derive(Clone, Copy, Debug)]
struct Metering {
    gas_constant: MolarHeatCapacity,
    temperature: ThermodynamicTemperature,
    pressure: Pressure,
    /// Pressure over that of the tables.
    pressure_ratio: f64,
    air_molar_mass: MolarMass,
    air_compression_factor: f64,
}

impl Metering {
    fn new(edition: Edition, reference: &ReferenceConditions) -> Self {
        let table = edition.table();
        Self {
            gas_constant: MolarEnergy::from_si(table.gas_constant) / TemperatureInterval::from_si(1.0),
            temperature: ThermodynamicTemperature::from_si(reference.metering_temperature),
            pressure: Pressure::from_si(reference.metering_pressure),
            pressure_ratio: reference.metering_pressure / TABLE_PRESSURE,
            air_molar_mass: MolarMass::from_si(edition.air_molar_mass()),
            air_compression_factor: air_compression_factor(table, reference),
        }
    }
}

/// The visible part of the sum: everything that follows from the four sums over the composition.
#[inline(always)]
fn properties<W: Working>(metering: &Metering, sums: &Sums, working: &mut W) -> GasProperties {
    let Metering { gas_constant, temperature, pressure, pressure_ratio, air_molar_mass, air_compression_factor } = *metering;
    let summation = sums.summation;
    step!(working, let molar_mass: "M" in units::GRAM_PER_MOLE = MolarMass::from_si(sums.molar_mass), SUM_SOURCE);
    step!(working, let gross_molar: "H_{s,mol}" in units::KILOJOULE_PER_MOLE = MolarEnergy::from_si(sums.gross), SUM_SOURCE);
    step!(working, let net_molar: "H_{i,mol}" in units::KILOJOULE_PER_MOLE = MolarEnergy::from_si(sums.net), SUM_SOURCE);
    step!(working, let compression_factor: "Z" = 1.0 - pressure_ratio * summation * summation, "ISO 6976, compression factor");
    step!(working, let ideal_molar_volume: "V^\\circ" = gas_constant * temperature / pressure, "ideal gas");
    step!(working, let molar_volume: "V" = ideal_molar_volume * compression_factor, "definition");
    step!(working, let density: "\\rho" = molar_mass / molar_volume, "ISO 6976, density");
    step!(working, let ideal_relative_density: "d^\\circ" = molar_mass / air_molar_mass, "ISO 6976, relative density of the ideal gas");
    step!(working, let relative_density: "d" = ideal_relative_density * air_compression_factor / compression_factor, "ISO 6976, relative density");
    step!(working, let gross: "H_s" in units::MEGAJOULE_PER_CUBIC_METRE = gross_molar / molar_volume, "ISO 6976, calorific value on a volume basis");
    step!(working, let net: "H_i" in units::MEGAJOULE_PER_CUBIC_METRE = net_molar / molar_volume, "ISO 6976, calorific value on a volume basis");
    step!(working, let gross_wobbe: "W_s" in units::MEGAJOULE_PER_CUBIC_METRE = gross / math::sqrt(relative_density.value), "ISO 6976, Wobbe index");
    step!(working, let net_wobbe: "W_i" in units::MEGAJOULE_PER_CUBIC_METRE = net / math::sqrt(relative_density.value), "ISO 6976, Wobbe index");
    GasProperties {
        molar_mass,
        compression_factor: Ratio::from_si(compression_factor),
        density,
        ideal_density: molar_mass / ideal_molar_volume,
        relative_density,
        ideal_relative_density,
        gross_calorific_value: CalorificValue::new(gross),
        net_calorific_value: CalorificValue::new(net),
        gross_wobbe_index: WobbeIndex::new(gross_wobbe),
        net_wobbe_index: WobbeIndex::new(net_wobbe),
        gross_molar_calorific_value: MolarCalorificValue::new(gross_molar),
        net_molar_calorific_value: MolarCalorificValue::new(net_molar),
        gross_mass_calorific_value: MassCalorificValue::new(gross_molar / molar_mass),
        net_mass_calorific_value: MassCalorificValue::new(net_molar / molar_mass),
        gross_over_net: over(sums.gross, sums.net),
    }
}

/// A ratio, not-a-number where there is nothing to divide by.
#[inline(always)]
fn over(gross: f64, net: f64) -> Ratio {
    Ratio::from_si(if net > 0.0 { gross / net } else { f64::NAN })
}

const REFERENCE_DOC: &str = "Combustion and metering reference conditions: two temperatures in °C such as 15/15 or 25/0 \
     (at 101.325 kPa), \"60 °F, 14.73 psi\", or a table of both temperatures and the pressure. \
     Tables reach from 0 °C to 25 °C for combustion and 0 °C to 20 °C for metering.";

const EDITION: Setting = Setting {
    name: "edition",
    doc: "Edition of ISO 6976: 2016, or 1995, on which EN 437 and older contracts rest.",
    form: Form::Choice(&["2016", "1995"]),
    default: Some("2016"),
};

fn edition(settings: &Settings<'_>) -> Result<Edition, Error> {
    settings.choice("edition", &[("2016", Edition::Iso6976Of2016), ("1995", Edition::Iso6976Of1995)])
}

const SOURCES: &[Source] = &[
    Source::new(
        "ISO 6976:2016, tables 1 to 3 and annex A (read in a public transcription, checked against its annex D)",
        "all values of the edition of 2016",
    ),
    Source::new(
        "ISO 6976:1995 (read in a public data file, checked against the edition of 2016 and EN 437)",
        "all values of the edition of 1995",
    ),
    Source::new("our choice", "straight lines between the tabulated temperatures"),
];

const ACCURACY: &str = "As the standard: about 0.05 % in calorific value from the tables alone (k = 2) for natural gas; the analysis itself \
     usually decides. Compression factors hold from 90 kPa to 110 kPa and are less good for gases rich in butane, heavier parts or hydrogen.";

/// Properties of a gas from its analysis.
///
/// ```
/// use flamewright::calculation::Calculation;
/// use flamewright::fuel::{Edition, GasAnalysis, GasPropertiesOf, Normalisation};
/// use flamewright::quantity::{ReferenceConditions, Value};
/// use flamewright::record::Record;
///
/// let gas = GasPropertiesOf::new(Edition::Iso6976Of2016, ReferenceConditions::AT_15_15, Normalisation::Refuse)?;
/// let analysis = GasAnalysis::read([("methane", "80 %"), ("hydrogen", "20 %")])?;
/// let properties = gas.evaluate(&analysis)?;
/// assert!((properties.gross_wobbe_index.si() / 1e6 - 48.2368).abs() < 1e-4); // MJ/m³ at 15/15
/// # Ok::<(), flamewright::Error>(())
/// ```
#[derive(Clone, Debug)]
pub struct GasPropertiesOf {
    edition: Edition,
    reference: ReferenceConditions,
    metering: Metering,
    normalisation: Normalisation,
    weights: Weights<24>,
    positions: [usize; 24],
}

impl GasPropertiesOf {
    /// Fixes edition, reference conditions, and what to do with a sum that is not one.
    ///
    /// # Errors
    /// If the tables do not reach the reference temperatures.
    pub fn new(edition: Edition, reference: ReferenceConditions, normalisation: Normalisation) -> Result<Self, Error> {
        let reached = column_shares::<5>(reference.combustion_temperature)[0] + column_shares::<4>(reference.metering_temperature)[0];
        if reached.is_nan() {
            let why = "the tables of ISO 6976 reach from 0 °C to 25 °C for combustion and from 0 °C to 20 °C for metering";
            return Err(Error::bad_setting("reference", "", why));
        }
        // Every name is a component's: a test walks them.
        let positions = ANALYSED.map(|name| component_position(name).unwrap_or(COMPONENT_COUNT));
        let metering = Metering::new(edition, &reference);
        Ok(Self { edition, reference, metering, normalisation, weights: Weights::new(edition, &reference, positions), positions })
    }
}

impl Context for GasPropertiesOf {
    const SETTINGS: &'static [Setting] = &[
        EDITION,
        ReferenceConditions::setting(REFERENCE_DOC),
        Setting {
            name: "normalise",
            doc: "Divide the fractions by their sum; otherwise a sum that is not 100 % is refused.",
            form: Form::Flag,
            default: Some("false"),
        },
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let normalisation = if settings.flag("normalise")? { Normalisation::Normalise } else { Normalisation::Refuse };
        Self::new(edition(settings)?, ReferenceConditions::from_settings(settings, "reference")?, normalisation)
    }
}

rules! {
    refuse SUM_IS_NOT_ONE on "methane": "the fractions do not add up to 100 % within 0.01 %: mend them, or set normalise";
    refuse NOTHING_IN_IT on "methane": "all fractions are zero";
    notice OUT_OF_SCOPE on "methane": "less than half methane: ISO 6976 is meant for natural gas; its figures are then still the usual ones, but less certain";
}

impl Calculation for GasPropertiesOf {
    type Input = GasAnalysis;
    type Output = GasProperties;
    const INFO: Info = Info {
        name: "gas_properties",
        title: "Properties of a gas from its analysis",
        summary: "Molar mass, compression factor, density, calorific values and Wobbe indices of a gas mixture at any reference \
                  conditions, from the mole fraction of each component.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: &[],
        checked_against: "combustion/pure_components_volumetric.csv; mixtures agree with fuel_properties to the last bits (test)",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &GasAnalysis) -> Raised {
        let sum: f64 = input.fractions().iter().sum();
        let refusing = self.normalisation == Normalisation::Refuse;
        Raised::NONE
            .when(SUM_IS_NOT_ONE, refusing & ((sum - 1.0).abs() > SUM_TOLERANCE))
            .when(NOTHING_IN_IT, !refusing & (sum <= 0.0))
            .when(OUT_OF_SCOPE, input.methane.si() < 0.5 * sum)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &GasAnalysis, working: &mut W) -> GasProperties {
        let fractions = input.fractions();
        let total: f64 = fractions.iter().sum();
        // The sums are linear in the fractions, so they are normalised instead; without a branch, for the sake of columns.
        let scale = if self.normalisation == Normalisation::Normalise { 1.0 / total } else { 1.0 };
        properties(&self.metering, &self.weights.sums(&fractions).times(scale), working)
    }

    fn tables(&self, input: &GasAnalysis) -> Vec<Table> {
        let mut fractions = [0.0; COMPONENT_COUNT];
        let mut elements = Elements::default();
        for (fraction, position) in input.fractions().iter().zip(self.positions) {
            if let (Some(place), Some(component)) = (fractions.get_mut(position), COMPONENTS.get(position)) {
                *place = *fraction;
                elements.add(&component.elements(), *fraction);
            }
        }
        let sums = self.weights.sums(&input.fractions());
        Vec::from([TableUncertainty::new(self.edition, &fractions, &elements, &sums, &self.reference).table()])
    }
}

impl GasAnalysis {
    #[inline(always)]
    fn fractions(&self) -> [f64; 24] {
        crate::record::Record::to_array(self)
    }
}

/// Reference conditions as numbers, for a fuel that is fixed.
#[record]
pub struct FuelReference {
    /// Temperature at which the fuel is taken to burn.
    #[field("t_1", DEGREE_CELSIUS, 0.0..=25.0, default = 15.0)]
    pub combustion_temperature: ThermodynamicTemperature,
    /// Temperature at which the volume of a gas is taken.
    #[field("t_2", DEGREE_CELSIUS, 0.0..=20.0, default = 15.0)]
    pub metering_temperature: ThermodynamicTemperature,
    /// Absolute pressure at which the volume of a gas is taken.
    #[field("p_2", KILOPASCAL, 60.0..=120.0, default = 101.325, usual = 90.0..=110.0)]
    pub metering_pressure: AbsolutePressure,
}

impl FuelReference {
    #[inline(always)]
    fn reference(&self) -> ReferenceConditions {
        ReferenceConditions {
            combustion_temperature: self.combustion_temperature.si(),
            metering_temperature: self.metering_temperature.si(),
            metering_pressure: self.metering_pressure.si(),
        }
    }
}

/// Properties of a fuel by name or composition.
#[derive(Clone, Debug)]
pub struct FuelProperties {
    fuel: Fuel,
    gas: Option<(Edition, MixtureColumns)>,
}

impl FuelProperties {
    /// A fuel and the edition of ISO 6976 to take.
    ///
    /// # Errors
    /// If the edition lacks a component of the gas.
    pub fn new(fuel: Fuel, edition: Edition) -> Result<Self, Error> {
        let gas = match &fuel.composition {
            Some(composition) => Some((edition, composition.columns(edition)?)),
            None => None,
        };
        Ok(Self { fuel, gas })
    }
}

impl Context for FuelProperties {
    const SETTINGS: &'static [Setting] = &[Fuel::setting(), EDITION];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Self::new(Fuel::from_settings(settings)?, edition(settings)?)
    }
}

impl Calculation for FuelProperties {
    type Input = FuelReference;
    type Output = GasProperties;
    const INFO: Info = Info {
        name: "fuel_properties",
        title: "Properties of a fuel by name or composition",
        summary: "What gas_properties gives, for a test gas by its letters, a composition by names, a hydrogen blend or LPG mix, at \
                  reference conditions that may vary; for a liquid or solid fuel its calorific values per mass at 25 °C.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: &[],
        checked_against: "combustion/gas_mixture_properties.csv, combustion/pure_components_volumetric.csv, combustion/en437_test_gases.csv, \
                          combustion/en437_third_family_mass_basis.csv, combustion/fuels.csv, combustion/net_gross_ratio_25C.csv",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &FuelReference, working: &mut W) -> GasProperties {
        let reference = input.reference();
        if let Some((edition, columns)) = &self.gas {
            return properties(&Metering::new(*edition, &reference), &columns.sums(&reference), working);
        }
        let (gross, net) = (self.fuel.gross_calorific_value, self.fuel.net_calorific_value);
        step!(working, let gross_mass: "H_{s,m}" in units::MEGAJOULE_PER_KILOGRAM = AvailableEnergy::from_si(gross), "given with the fuel");
        step!(working, let net_mass: "H_{i,m}" in units::MEGAJOULE_PER_KILOGRAM = AvailableEnergy::from_si(net), "gross less the heat of vaporisation of the water formed, ISO 6976:2016 at 25 °C");
        GasProperties {
            gross_mass_calorific_value: MassCalorificValue::new(gross_mass),
            net_mass_calorific_value: MassCalorificValue::new(net_mass),
            gross_over_net: over(gross, net),
            ..crate::record::Record::from_fn(|_| f64::NAN)
        }
    }

    fn tables(&self, input: &FuelReference) -> Vec<Table> {
        let e = &self.fuel.elements;
        let names = ["carbon", "hydrogen", "oxygen", "nitrogen", "sulphur", "helium", "argon"];
        let values = [e.carbon, e.hydrogen, e.oxygen, e.nitrogen, e.sulphur, e.helium, e.argon];
        let column = if self.fuel.state == FuelState::Gas {
            Column { name: "moles of atoms per mole".to_string(), unit: &units::ONE, values: values.to_vec() }
        } else {
            Column { name: "moles of atoms per mass".to_string(), unit: &units::MOLE_PER_KILOGRAM, values: values.to_vec() }
        };
        let mut tables =
            Vec::from([Table { name: "elements", row_names: names.map(ToString::to_string).to_vec(), columns: Vec::from([column]) }]);
        if let Some(composition) = &self.fuel.composition {
            let parts: Vec<_> = composition.parts().collect();
            if let Some((edition, columns)) = &self.gas {
                let reference = input.reference();
                let sums = columns.sums(&reference);
                tables.push(TableUncertainty::new(*edition, composition.fractions(), e, &sums, &reference).table());
            }
            tables.push(Table {
                name: "composition",
                row_names: parts.iter().map(|(component, _)| component.name.to_string()).collect(),
                columns: Vec::from([Column {
                    name: "mole fraction".to_string(),
                    unit: &units::PERCENT,
                    values: parts.iter().map(|(_, fraction)| *fraction).collect(),
                }]),
            });
        }
        tables
    }
}
