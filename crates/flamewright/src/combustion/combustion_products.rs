//! The calculation `combustion_products`: air needed, flue gas made, dew point.

use super::air::{DryAir, humidity_mole_ratio};
use super::products::{NORMAL_MOLAR_VOLUME, Products};
use super::{context, species, water_vapour};
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Setting, Settings, Source};
use crate::fuel::{Fuel, FuelState};
use crate::quantity::types::{MassDensity, MassPerEnergy, MolarMass, Ratio, SpecificVolume, ThermodynamicTemperature, VolumePerEnergy};
use crate::quantity::units::{KILOGRAM_PER_KILOWATT_HOUR, PASCAL, PERCENT};
use crate::quantity::{AbsolutePressure, Dry, Gross, MoleFraction, Net, On, Value, Wet};
use crate::record::record;
use crate::working::{Working, step};

/// How much air, and of what kind.
#[record]
pub struct CombustionAirState {
    /// Excess air ratio: air supplied over air needed. Below 1 the mixture is rich, and its products are another matter.
    #[field("\\lambda", ONE, 1.0..=50.0, default = 1.0, usual = 1.0..=3.0)]
    pub excess_air_ratio: Ratio,
    /// Temperature of the combustion air, for its humidity.
    #[field("t_L", DEGREE_CELSIUS, -20.0..=60.0, default = 20.0)]
    pub air_temperature: ThermodynamicTemperature,
    /// Relative humidity of the combustion air.
    #[field("\\varphi", PERCENT, 0.0..=100.0, default = 0.0)]
    pub relative_humidity: Ratio,
    /// Absolute pressure of the atmosphere.
    #[field("p", MILLIBAR, 600.0..=1100.0, default = 1013.25)]
    pub barometric_pressure: AbsolutePressure,
    /// Compression factor of the fuel gas at 15 °C, for the real volume of air per volume of gas.
    #[field("Z", ONE, 0.8..=1.1, default = 1.0)]
    pub fuel_compression_factor: Ratio,
}

/// Air and flue gas of a fuel. Volumes are of ideal gases; normal cubic metres at 0 °C and 1013.25 mbar.
#[record]
pub struct CombustionProductsResult {
    /// Dry air needed per volume of gas, both at the same temperature and pressure.
    #[field("L_{min}", ONE, absent = "the fuel is not a gas")]
    pub stoichiometric_air: Ratio,
    /// The same with the compression factors of gas and air at 15 °C.
    #[field("L_{min,real}", ONE, absent = "the fuel is not a gas")]
    pub stoichiometric_air_real: Ratio,
    /// Oxygen needed per volume of gas.
    #[field("O_{min}", ONE, absent = "the fuel is not a gas")]
    pub stoichiometric_oxygen: Ratio,
    /// Dry flue gas per volume of gas.
    #[field("V_{dry}", ONE, absent = "the fuel is not a gas")]
    pub dry_flue: Ratio,
    /// Wet flue gas per volume of gas.
    #[field("V_{wet}", ONE, absent = "the fuel is not a gas")]
    pub wet_flue: Ratio,
    /// Water vapour per volume of gas.
    #[field("V_{H_2O}", ONE, absent = "the fuel is not a gas")]
    pub water_vapour: Ratio,
    /// Carbon dioxide per volume of gas.
    #[field("V_{CO_2}", ONE, absent = "the fuel is not a gas")]
    pub carbon_dioxide: Ratio,
    /// Dry air needed, normal cubic metres per kilogram of fuel.
    #[field("l_{min}", CUBIC_METRE_PER_KILOGRAM)]
    pub stoichiometric_air_per_mass: SpecificVolume,
    /// Oxygen needed, normal cubic metres per kilogram of fuel.
    #[field("o_{min}", CUBIC_METRE_PER_KILOGRAM)]
    pub stoichiometric_oxygen_per_mass: SpecificVolume,
    /// Dry flue gas, normal cubic metres per kilogram of fuel.
    #[field("v_{dry}", CUBIC_METRE_PER_KILOGRAM)]
    pub dry_flue_per_mass: SpecificVolume,
    /// Wet flue gas, normal cubic metres per kilogram of fuel.
    #[field("v_{wet}", CUBIC_METRE_PER_KILOGRAM)]
    pub wet_flue_per_mass: SpecificVolume,
    /// Water vapour, normal cubic metres per kilogram of fuel.
    #[field("v_{H_2O}", CUBIC_METRE_PER_KILOGRAM)]
    pub water_vapour_per_mass: SpecificVolume,
    /// Carbon dioxide, normal cubic metres per kilogram of fuel.
    #[field("v_{CO_2}", CUBIC_METRE_PER_KILOGRAM)]
    pub carbon_dioxide_per_mass: SpecificVolume,
    /// Mass of dry air needed over mass of fuel.
    #[field("m_{air}", KILOGRAM_PER_KILOGRAM)]
    pub stoichiometric_air_mass: Ratio,
    /// Mass of the dry air supplied over mass of fuel.
    #[field("m_{air,sup}", KILOGRAM_PER_KILOGRAM)]
    pub air_mass: Ratio,
    /// Mass of wet flue gas over mass of fuel.
    #[field("m_{flue}", KILOGRAM_PER_KILOGRAM)]
    pub flue_mass: Ratio,
    /// Mass of water in the flue gas over mass of fuel.
    #[field("m_{H_2O}", KILOGRAM_PER_KILOGRAM)]
    pub water_mass: Ratio,
    /// Water in the air, mass over mass of dry air.
    #[field("x", KILOGRAM_PER_KILOGRAM)]
    pub humidity_ratio: Ratio,
    /// Largest carbon dioxide in dry flue gas: complete combustion without excess air.
    #[field("x_{CO_2,max}", PERCENT)]
    pub carbon_dioxide_maximum: MoleFraction<Dry>,
    /// Oxygen in dry flue gas.
    #[field("x_{O_2}", PERCENT)]
    pub oxygen_dry: MoleFraction<Dry>,
    /// Carbon dioxide in dry flue gas.
    #[field("x_{CO_2}", PERCENT)]
    pub carbon_dioxide_dry: MoleFraction<Dry>,
    /// Carbon dioxide in wet flue gas.
    #[field("y_{CO_2}", PERCENT)]
    pub carbon_dioxide_wet: MoleFraction<Wet>,
    /// Water vapour in wet flue gas.
    #[field("y_{H_2O}", PERCENT)]
    pub water_wet: MoleFraction<Wet>,
    /// Oxygen in wet flue gas.
    #[field("y_{O_2}", PERCENT)]
    pub oxygen_wet: MoleFraction<Wet>,
    /// Nitrogen in wet flue gas.
    #[field("y_{N_2}", PERCENT)]
    pub nitrogen_wet: MoleFraction<Wet>,
    /// Argon in wet flue gas.
    #[field("y_{Ar}", PERCENT)]
    pub argon_wet: MoleFraction<Wet>,
    /// Sulphur dioxide in wet flue gas.
    #[field("y_{SO_2}", PPM)]
    pub sulphur_dioxide_wet: MoleFraction<Wet>,
    /// Temperature at which the flue gas begins to condense.
    #[field("t_D", DEGREE_CELSIUS, absent = "too little water vapour to condense above 0 °C")]
    pub water_dew_point: ThermodynamicTemperature,
    /// Molar mass of the wet flue gas.
    #[field("M", GRAM_PER_MOLE)]
    pub flue_molar_mass: MolarMass,
    /// Density of the wet flue gas at 0 °C and 1013.25 mbar, had nothing condensed.
    #[field("\\rho_n", KILOGRAM_PER_CUBIC_METRE)]
    pub flue_normal_density: MassDensity,
    /// Dry air needed, normal cubic metres per net heat input.
    #[field("l_i", CUBIC_METRE_PER_KILOWATT_HOUR)]
    pub stoichiometric_air_per_net_heat: On<Net, VolumePerEnergy>,
    /// Dry flue gas, normal cubic metres per net heat input.
    #[field("v_{dry,i}", CUBIC_METRE_PER_KILOWATT_HOUR)]
    pub dry_flue_per_net_heat: On<Net, VolumePerEnergy>,
    /// Dry flue gas, normal cubic metres per gross heat input.
    #[field("v_{dry,s}", CUBIC_METRE_PER_KILOWATT_HOUR)]
    pub dry_flue_per_gross_heat: On<Gross, VolumePerEnergy>,
    /// Carbon dioxide from the fuel per gross heat input.
    #[field("e_{CO_2}", KILOGRAM_PER_KILOWATT_HOUR)]
    pub carbon_dioxide_per_gross_heat: On<Gross, MassPerEnergy>,
}

/// Combustion products of one fuel.
#[derive(Clone, Debug)]
pub struct CombustionProducts {
    /// The fuel.
    pub fuel: Fuel,
    /// The air it burns in.
    pub air: DryAir,
}

impl Context for CombustionProducts {
    const SETTINGS: &'static [Setting] = &[context::FUEL, context::AIR];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let (fuel, air) = context::fuel_and_air(settings)?;
        Ok(Self { fuel, air })
    }
}

/// Compression factor of dry air at 15 °C and 101.325 kPa (ISO 6976:2016, Table A.4).
const AIR_COMPRESSION_FACTOR: f64 = 0.999_595;

impl Calculation for CombustionProducts {
    type Input = CombustionAirState;
    type Output = CombustionProductsResult;
    const INFO: Info = Info {
        name: "combustion_products",
        title: "Air needed and flue gas made",
        summary: "Stoichiometric air, dry and wet flue gas, largest carbon dioxide, composition, dew point and amounts per heat input of a \
                  fuel, at any excess air ratio from 1, with humid air.",
        sources: &[
            Source::new("element balance", "air and flue gas; the composition of dry air is stated in the setting"),
            Source::new("ISO 6976:2016", "atomic masses, calorific values at 25 °C, compression factor of air"),
            Source::new("IAPWS-IF97 region 4", "dew point and humidity, without enhancement factor"),
        ],
        accuracy: "Amounts as exact as the composition; dew point 0.02 K of the formulation, 0.1 K of real flue gas.",
        cautions: &[],
        checked_against: "combustion/stoichiometry.csv, combustion/flue_composition_vs_lambda.csv, combustion/dew_point_humid_air.csv, \
                          combustion/published_examples.csv",
    };

    fn compute<W: Working>(&self, input: &CombustionAirState, working: &mut W) -> CombustionProductsResult {
        let (fuel, air) = (&self.fuel, &self.air);
        let pressure = input.barometric_pressure.si();
        let humidity = humidity_mole_ratio(input.relative_humidity.si(), input.air_temperature.si(), pressure);
        let least = Products::of_complete_combustion(fuel, air, 1.0, humidity);
        let products = Products::of_complete_combustion(fuel, air, input.excess_air_ratio.si(), humidity);
        let (carbon, hydrogen, oxygen, sulphur) =
            (fuel.elements.carbon, fuel.elements.hydrogen, fuel.elements.oxygen, fuel.elements.sulphur);
        let air_oxygen = air.oxygen;
        step!(working, let oxygen_needed: "O_{min}" = carbon + hydrogen / 4.0 + sulphur - oxygen / 2.0, "element balance, mol per mol or kg of fuel");
        step!(working, let air_needed: "L_{min}" = oxygen_needed / air_oxygen, "element balance");
        step!(working, let dry: "V_{dry}" = products.dry(), "element balance");
        step!(working, let water: "V_{H_2O}" = products.water, "element balance");
        step!(working, let wet: "V_{wet}" = dry + water, "element balance");
        step!(working, let carbon_dioxide_dry: "x_{CO_2}" in PERCENT = products.carbon_dioxide / dry, "definition");
        step!(working, let oxygen_dry: "x_{O_2}" in PERCENT = products.oxygen / dry, "definition");
        step!(working, let water_wet: "y_{H_2O}" in PERCENT = water / wet, "definition");
        step!(working, let vapour_pressure: "p_w" in PASCAL = water_wet * pressure, "Dalton's law");
        let dew_point = water_vapour::dew_point(vapour_pressure);
        let carbon_dioxide_mass = species::CARBON_DIOXIDE.molar_mass;
        let gross = fuel.gross_calorific_value;
        let net = fuel.net_calorific_value;
        step!(working, let carbon_dioxide_per_gross_heat: "e_{CO_2}" in KILOGRAM_PER_KILOWATT_HOUR = carbon * carbon_dioxide_mass / gross, "carbon balance");

        let by_volume = |amount: f64| Ratio::from_si(if fuel.state == FuelState::Gas { amount } else { f64::NAN });
        let by_mass = |amount: f64| SpecificVolume::from_si(amount * NORMAL_MOLAR_VOLUME / fuel.mass);
        let air_mass = air_needed * air.molar_mass() / fuel.mass;
        let flue_mass = products.mass();
        let water_molar_mass = species::WATER.molar_mass;
        CombustionProductsResult {
            stoichiometric_air: by_volume(air_needed),
            stoichiometric_air_real: by_volume(air_needed * AIR_COMPRESSION_FACTOR / input.fuel_compression_factor.si()),
            stoichiometric_oxygen: by_volume(oxygen_needed),
            dry_flue: by_volume(dry),
            wet_flue: by_volume(wet),
            water_vapour: by_volume(water),
            carbon_dioxide: by_volume(products.carbon_dioxide),
            stoichiometric_air_per_mass: by_mass(air_needed),
            stoichiometric_oxygen_per_mass: by_mass(oxygen_needed),
            dry_flue_per_mass: by_mass(dry),
            wet_flue_per_mass: by_mass(wet),
            water_vapour_per_mass: by_mass(water),
            carbon_dioxide_per_mass: by_mass(products.carbon_dioxide),
            stoichiometric_air_mass: Ratio::from_si(air_mass),
            air_mass: Ratio::from_si(input.excess_air_ratio.si() * air_mass),
            flue_mass: Ratio::from_si(flue_mass / fuel.mass),
            water_mass: Ratio::from_si(water * water_molar_mass / fuel.mass),
            humidity_ratio: Ratio::from_si(humidity * water_molar_mass / air.molar_mass()),
            carbon_dioxide_maximum: On::from_si(least.carbon_dioxide / least.dry()),
            oxygen_dry: On::from_si(oxygen_dry),
            carbon_dioxide_dry: On::from_si(carbon_dioxide_dry),
            carbon_dioxide_wet: On::from_si(products.carbon_dioxide / wet),
            water_wet: On::from_si(water_wet),
            oxygen_wet: On::from_si(products.oxygen / wet),
            nitrogen_wet: On::from_si(products.nitrogen / wet),
            argon_wet: On::from_si(products.argon / wet),
            sulphur_dioxide_wet: On::from_si(products.sulphur_dioxide / wet),
            water_dew_point: ThermodynamicTemperature::from_si(dew_point),
            flue_molar_mass: MolarMass::from_si(flue_mass / wet),
            flue_normal_density: MassDensity::from_si(flue_mass / wet / NORMAL_MOLAR_VOLUME),
            stoichiometric_air_per_net_heat: On::from_si(air_needed * NORMAL_MOLAR_VOLUME / net),
            dry_flue_per_net_heat: On::from_si(dry * NORMAL_MOLAR_VOLUME / net),
            dry_flue_per_gross_heat: On::from_si(dry * NORMAL_MOLAR_VOLUME / gross),
            carbon_dioxide_per_gross_heat: On::from_si(carbon_dioxide_per_gross_heat),
        }
    }
}
