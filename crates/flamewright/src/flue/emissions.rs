//! The calculation `flue_emissions`: carbon monoxide and nitrogen oxides in every form rules ask for.

use super::emission::{CARBON_MONOXIDE_MOLAR_MASS, NITROGEN_DIOXIDE_MOLAR_MASS, at_reference_oxygen, mass_concentration};
use super::kernel::FlueKernel;
use super::siegert::{carbon_dioxide_short, excess_air_ratio_short};
use crate::calculation::{Calculation, Context, Info, Raised, Rule, Setting, Settings, Source};
use crate::combustion::air::DryAir;
use crate::combustion::context;
use crate::fuel::Fuel;
use crate::quantity::types::{MassDensity, MassPerEnergy, Ratio, ThermodynamicTemperature};
use crate::quantity::units::{MILLIGRAM_PER_CUBIC_METRE, MILLIGRAM_PER_KILOWATT_HOUR, PPM};
use crate::quantity::{AbsolutePressure, AirFree, Dry, Gross, MoleFraction, Net, On, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};

/// Trace gases in the flue, and the conventions of the rule they are wanted for.
#[record]
pub struct EmissionReading {
    /// Oxygen in dry flue gas.
    #[field("x_{O_2}", PERCENT, 0.0..=20.5, usual = 2.0..=12.0)]
    pub oxygen_dry: MoleFraction<Dry>,
    /// Carbon monoxide in dry flue gas.
    #[field("x_{CO}", PPM, 0.0..=100_000.0, usual = 0.0..=1000.0)]
    pub carbon_monoxide_dry: MoleFraction<Dry>,
    /// Nitrogen oxides in dry flue gas.
    #[field("x_{NO_x}", PPM, 0.0..=10_000.0, usual = 0.0..=300.0, absent = "not measured")]
    pub nitrogen_oxides_dry: MoleFraction<Dry>,
    /// Oxygen that the rule refers emissions to: 0 % means air-free.
    #[field("x_{O_2,ref}", PERCENT, 0.0..=20.0)]
    pub reference_oxygen: MoleFraction<Dry>,
    /// Oxygen of air in the rule's own formula: 20.9, 20.95 or 21 %.
    #[field("x_{O_2,air}", PERCENT, 20.8..=21.1)]
    pub air_oxygen: MoleFraction<Dry>,
    /// Temperature to which masses per cubic metre refer.
    #[field("t_{ref}", DEGREE_CELSIUS, -50.0..=60.0, default = 0.0)]
    pub volume_temperature: ThermodynamicTemperature,
    /// Absolute pressure to which masses per cubic metre refer.
    #[field("p_{ref}", MILLIBAR, 600.0..=1100.0, default = 1013.25)]
    pub volume_pressure: AbsolutePressure,
}

/// Emissions by exact balance and by the rule's short formula.
#[record]
pub struct EmissionResult {
    /// Excess air ratio by element balance.
    #[field("\\lambda", ONE)]
    pub excess_air_ratio: Ratio,
    /// Excess air ratio by the short form with the rule's oxygen of air; 1 to 8 % high for hydrocarbons.
    #[field("\\lambda_{short}", ONE)]
    pub excess_air_ratio_short: Ratio,
    /// Carbon dioxide in dry flue gas derived from oxygen by element balance.
    #[field("x_{CO_2}", PERCENT)]
    pub carbon_dioxide_dry_derived: MoleFraction<Dry>,
    /// Carbon dioxide in dry flue gas derived by the short form.
    #[field("x_{CO_2,short}", PERCENT)]
    pub carbon_dioxide_dry_short: MoleFraction<Dry>,
    /// Carbon monoxide over carbon dioxide, derived by element balance.
    #[field("r", ONE)]
    pub carbon_monoxide_ratio: Ratio,
    /// Carbon monoxide over carbon dioxide, derived by the short form.
    #[field("r_{short}", ONE)]
    pub carbon_monoxide_ratio_short: Ratio,
    /// Carbon monoxide per dry flue gas of complete combustion without excess air, by element balance.
    #[field("x_{CO,af}", PPM)]
    pub carbon_monoxide_air_free: MoleFraction<AirFree>,
    /// Carbon monoxide air-free by the rule's formula.
    #[field("x_{CO,af,rule}", PPM)]
    pub carbon_monoxide_air_free_rule: MoleFraction<AirFree>,
    /// Carbon monoxide at reference oxygen by the rule's formula.
    #[field("x_{CO,ref}", PPM)]
    pub carbon_monoxide_at_reference: MoleFraction<Dry>,
    /// Nitrogen oxides at reference oxygen by the rule's formula.
    #[field("x_{NO_x,ref}", PPM, absent = "not measured")]
    pub nitrogen_oxides_at_reference: MoleFraction<Dry>,
    /// Mass of carbon monoxide per cubic metre of dry flue gas as measured.
    #[field("\\beta_{CO}", MILLIGRAM_PER_CUBIC_METRE)]
    pub carbon_monoxide_concentration: MassDensity,
    /// Mass of carbon monoxide per cubic metre of dry flue gas at reference oxygen.
    #[field("\\beta_{CO,ref}", MILLIGRAM_PER_CUBIC_METRE)]
    pub carbon_monoxide_concentration_at_reference: MassDensity,
    /// Mass of nitrogen oxides, counted as NO2, per cubic metre of dry flue gas as measured.
    #[field("\\beta_{NO_x}", MILLIGRAM_PER_CUBIC_METRE, absent = "not measured")]
    pub nitrogen_oxides_concentration: MassDensity,
    /// Mass of nitrogen oxides, counted as NO2, per cubic metre of dry flue gas at reference oxygen.
    #[field("\\beta_{NO_x,ref}", MILLIGRAM_PER_CUBIC_METRE, absent = "not measured")]
    pub nitrogen_oxides_concentration_at_reference: MassDensity,
    /// Carbon monoxide per gross heat input, by element balance.
    #[field("e_{CO,s}", MILLIGRAM_PER_KILOWATT_HOUR)]
    pub carbon_monoxide_per_gross_heat: On<Gross, MassPerEnergy>,
    /// Carbon monoxide per net heat input, by element balance.
    #[field("e_{CO,i}", MILLIGRAM_PER_KILOWATT_HOUR)]
    pub carbon_monoxide_per_net_heat: On<Net, MassPerEnergy>,
    /// Nitrogen oxides, counted as NO2, per gross heat input, by element balance.
    #[field("e_{NO_x,s}", MILLIGRAM_PER_KILOWATT_HOUR, absent = "not measured")]
    pub nitrogen_oxides_per_gross_heat: On<Gross, MassPerEnergy>,
    /// Nitrogen oxides, counted as NO2, per net heat input, by element balance.
    #[field("e_{NO_x,i}", MILLIGRAM_PER_KILOWATT_HOUR, absent = "not measured")]
    pub nitrogen_oxides_per_net_heat: On<Net, MassPerEnergy>,
}

/// Emissions for one fuel.
#[derive(Clone, Copy, Debug)]
pub struct FlueEmissions {
    kernel: FlueKernel,
    carbon_dioxide_maximum: f64,
}

impl FlueEmissions {
    /// For this fuel, burnt in this air.
    #[must_use]
    pub fn new(fuel: &Fuel, air: &DryAir) -> Self {
        let kernel = FlueKernel::new(fuel, air);
        Self { kernel, carbon_dioxide_maximum: kernel.carbon_dioxide_maximum() }
    }
}

impl Context for FlueEmissions {
    const SETTINGS: &'static [Setting] = &[context::FUEL, context::AIR];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let (fuel, air) = context::fuel_and_air(settings)?;
        Ok(Self::new(&fuel, &air))
    }
}

rules! {
    refuse RICH on "excess_air_ratio": "less air than the fuel needs: the mixture is rich and no balance from these readings holds; check ppm against %";
    notice MUCH_AIR on "oxygen_dry": "near the oxygen of air the correction multiplies the error of the reading many times";
}

/// Oxygen from which a correction to reference oxygen is more than threefold (20.95 / (20.95 - 14)).
const MUCH_OXYGEN: f64 = 0.14;

impl Calculation for FlueEmissions {
    type Input = EmissionReading;
    type Output = EmissionResult;
    const INFO: Info = Info {
        name: "flue_emissions",
        title: "Emissions of carbon monoxide and nitrogen oxides",
        summary: "Carbon monoxide and nitrogen oxides air-free, at reference oxygen, per cubic metre and per kilowatt-hour on both bases, by \
                  element balance and by the short formulae of rules.",
        sources: &[
            Source::new("element balance", "excess air, derived carbon dioxide, masses per heat input"),
            Source::new("common practice; the form of German and US rules", "x (O2air - O2ref) / (O2air - O2)"),
            Source::new("ISO 6976:2016 Table A.2; ideal gas", "molar masses; masses per cubic metre"),
        ],
        accuracy: "0.002 % against independent computation; EN practice rounds densities to 1.25 and 2.054 kg/m³, 0.07 % from the ideal gas.",
        cautions: super::CAUTIONS,
        checked_against: "combustion/emission_conversions.csv, combustion/emission_factors_per_fuel.csv, combustion/published_examples.csv, \
                          trade/uncertainty.csv and trade/visit_demo.csv (excess air, short form)",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &EmissionReading) -> Raised {
        Raised::NONE.when(MUCH_AIR, input.oxygen_dry.si() > MUCH_OXYGEN)
    }

    #[inline(always)]
    fn review(&self, _: &EmissionReading, output: &EmissionResult) -> Raised {
        Raised::NONE.when(RICH, output.excess_air_ratio.si() < 0.99)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &EmissionReading, working: &mut W) -> EmissionResult {
        let kernel = &self.kernel;
        let oxygen_dry = input.oxygen_dry.si();
        let carbon_monoxide_dry = input.carbon_monoxide_dry.si();
        let nitrogen_oxides_dry = input.nitrogen_oxides_dry.si();
        let reference_oxygen = input.reference_oxygen.si();
        let air_oxygen = input.air_oxygen.si();
        let (temperature, pressure) = (input.volume_temperature.si(), input.volume_pressure.si());
        let gross_over_net = kernel.gross_over_net();

        let combustion = kernel.combustion(oxygen_dry, carbon_monoxide_dry, working);
        let short_dioxide = carbon_dioxide_short(oxygen_dry, air_oxygen, self.carbon_dioxide_maximum);
        let air_free_rule = at_reference_oxygen(carbon_monoxide_dry, oxygen_dry, 0.0, air_oxygen);
        step!(working, let carbon_monoxide_at_reference: "x_{CO,ref}" in PPM = carbon_monoxide_dry * (air_oxygen - reference_oxygen) / (air_oxygen - oxygen_dry), "rule's formula");
        step!(working, let nitrogen_oxides_at_reference: "x_{NO_x,ref}" in PPM = nitrogen_oxides_dry * (air_oxygen - reference_oxygen) / (air_oxygen - oxygen_dry), "rule's formula");
        let carbon_monoxide_density = mass_concentration(1.0, CARBON_MONOXIDE_MOLAR_MASS, temperature, pressure);
        let nitrogen_dioxide_density = mass_concentration(1.0, NITROGEN_DIOXIDE_MOLAR_MASS, temperature, pressure);
        step!(working, let carbon_monoxide_concentration: "\\beta_{CO}" in MILLIGRAM_PER_CUBIC_METRE = carbon_monoxide_dry * carbon_monoxide_density, "ideal gas");
        step!(working, let nitrogen_oxides_concentration: "\\beta_{NO_x}" in MILLIGRAM_PER_CUBIC_METRE = nitrogen_oxides_dry * nitrogen_dioxide_density, "ideal gas, as NO2");
        let carbon_monoxide_mass = kernel.mass_per_gross_heat(&combustion, carbon_monoxide_dry, CARBON_MONOXIDE_MOLAR_MASS);
        let nitrogen_dioxide_mass = kernel.mass_per_gross_heat(&combustion, nitrogen_oxides_dry, NITROGEN_DIOXIDE_MOLAR_MASS);
        step!(working, let carbon_monoxide_per_net_heat: "e_{CO,i}" in MILLIGRAM_PER_KILOWATT_HOUR = carbon_monoxide_mass * gross_over_net, "element balance");
        step!(working, let nitrogen_oxides_per_net_heat: "e_{NO_x,i}" in MILLIGRAM_PER_KILOWATT_HOUR = nitrogen_dioxide_mass * gross_over_net, "element balance");
        EmissionResult {
            excess_air_ratio: Ratio::from_si(combustion.excess_air_ratio),
            excess_air_ratio_short: Ratio::from_si(excess_air_ratio_short(oxygen_dry, air_oxygen)),
            carbon_dioxide_dry_derived: On::from_si(combustion.carbon_dioxide_dry),
            carbon_dioxide_dry_short: On::from_si(short_dioxide),
            carbon_monoxide_ratio: Ratio::from_si(carbon_monoxide_dry / combustion.carbon_dioxide_dry),
            carbon_monoxide_ratio_short: Ratio::from_si(carbon_monoxide_dry / short_dioxide),
            carbon_monoxide_air_free: On::from_si(kernel.carbon_monoxide_air_free(&combustion)),
            carbon_monoxide_air_free_rule: On::from_si(air_free_rule),
            carbon_monoxide_at_reference: On::from_si(carbon_monoxide_at_reference),
            nitrogen_oxides_at_reference: On::from_si(nitrogen_oxides_at_reference),
            carbon_monoxide_concentration: MassDensity::from_si(carbon_monoxide_concentration),
            carbon_monoxide_concentration_at_reference: MassDensity::from_si(carbon_monoxide_at_reference * carbon_monoxide_density),
            nitrogen_oxides_concentration: MassDensity::from_si(nitrogen_oxides_concentration),
            nitrogen_oxides_concentration_at_reference: MassDensity::from_si(nitrogen_oxides_at_reference * nitrogen_dioxide_density),
            carbon_monoxide_per_gross_heat: On::from_si(carbon_monoxide_mass),
            carbon_monoxide_per_net_heat: On::from_si(carbon_monoxide_per_net_heat),
            nitrogen_oxides_per_gross_heat: On::from_si(nitrogen_dioxide_mass),
            nitrogen_oxides_per_net_heat: On::from_si(nitrogen_oxides_per_net_heat),
        }
    }
}
