//! The calculation `flue_analysis`: what one reading in the flue says.

use super::kernel::FlueKernel;
use crate::calculation::{Calculation, Context, Info, Raised, Rule, Setting, Settings, Source};
use crate::combustion::air::{DryAir, humidity_mole_ratio};
use crate::combustion::context;
use crate::fuel::Fuel;
use crate::quantity::types::{MassPerEnergy, Ratio, ThermodynamicTemperature};
use crate::quantity::{AbsolutePressure, AirFree, Dry, Efficiency, Gross, MoleFraction, Net, On, Value};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};

/// A reading in the flue, with a dried sample, and of the air the burner takes.
#[record]
pub struct FlueReading {
    /// Oxygen in dry flue gas.
    #[field("x_{O_2}", PERCENT, 0.0..=20.9, usual = 2.0..=12.0, absent = "not measured")]
    pub oxygen_dry: MoleFraction<Dry>,
    /// Carbon dioxide in dry flue gas, measured as such; leave it out where the instrument derives it from oxygen.
    #[field("x_{CO_2}", PERCENT, 0.05..=25.0, usual = 4.0..=15.0, absent = "not measured")]
    pub carbon_dioxide_dry: MoleFraction<Dry>,
    /// Carbon monoxide in dry flue gas.
    #[field("x_{CO}", PPM, 0.0..=100_000.0, usual = 0.0..=1000.0)]
    pub carbon_monoxide_dry: MoleFraction<Dry>,
    /// Temperature of the flue gas where the sample is taken.
    #[field("t_A", DEGREE_CELSIUS, -20.0..=600.0, usual = 30.0..=300.0)]
    pub flue_temperature: ThermodynamicTemperature,
    /// Temperature of the combustion air where the burner takes it.
    #[field("t_L", DEGREE_CELSIUS, -40.0..=60.0, usual = -10.0..=40.0)]
    pub air_temperature: ThermodynamicTemperature,
    /// Absolute pressure of the atmosphere at the place, not reduced to sea level.
    #[field("p", MILLIBAR, 600.0..=1100.0, default = 1013.25, usual = 800.0..=1045.0)]
    pub barometric_pressure: AbsolutePressure,
    /// Relative humidity of the combustion air; dry air is the convention of published loss figures.
    #[field("\\varphi", PERCENT, 0.0..=100.0, default = 0.0)]
    pub relative_humidity: Ratio,
}

/// What the reading says of the combustion and of the heat.
#[record]
pub struct FlueResult {
    /// Excess air ratio: air supplied over air needed, by element balance with the carbon monoxide in it.
    #[field("\\lambda", ONE)]
    pub excess_air_ratio: Ratio,
    /// Excess air: the excess air ratio less one.
    #[field("e", PERCENT)]
    pub excess_air: Ratio,
    /// Oxygen in dry flue gas derived from the carbon dioxide.
    #[field("x_{O_2,der}", PERCENT, absent = "measured, not derived")]
    pub oxygen_dry_derived: MoleFraction<Dry>,
    /// Carbon dioxide in dry flue gas derived from the oxygen and the fuel; not an independent reading.
    #[field("x_{CO_2,der}", PERCENT, absent = "measured, not derived")]
    pub carbon_dioxide_dry_derived: MoleFraction<Dry>,
    /// Measured less derived carbon dioxide: nearly zero when oxygen, carbon dioxide and fuel belong together.
    #[field("\\Delta x_{CO_2}", PERCENT, absent = "only one of the two was measured")]
    pub carbon_dioxide_closure: Ratio,
    /// Largest carbon dioxide the fuel can give in dry flue gas.
    #[field("x_{CO_2,max}", PERCENT)]
    pub carbon_dioxide_maximum: MoleFraction<Dry>,
    /// Carbon monoxide over carbon dioxide, the measured one where there is one; dilution does not change it.
    #[field("r", ONE)]
    pub carbon_monoxide_ratio: Ratio,
    /// Carbon monoxide per dry flue gas of complete combustion without excess air, by exact balance.
    #[field("x_{CO,af}", PPM)]
    pub carbon_monoxide_air_free: MoleFraction<AirFree>,
    /// Temperature at which the flue gas begins to condense.
    #[field("t_D", DEGREE_CELSIUS, absent = "too little water vapour to condense above 0 °C")]
    pub water_dew_point: ThermodynamicTemperature,
    /// Heat in the dry flue gas above 25 °C.
    #[field("q_{dry}", PERCENT)]
    pub dry_gas_loss: Efficiency<Gross>,
    /// Heat in the water vapour above 25 °C.
    #[field("q_{vap}", PERCENT)]
    pub moisture_loss: Efficiency<Gross>,
    /// Latent heat that leaves with the vapour, less that which came with humid air.
    #[field("q_{lat}", PERCENT)]
    pub latent_loss: Efficiency<Gross>,
    /// Heat in the condensate, which leaves at flue temperature.
    #[field("q_{con}", PERCENT)]
    pub condensate_loss: Efficiency<Gross>,
    /// Heat not released because carbon monoxide did not burn.
    #[field("q_{CO}", PERCENT)]
    pub unburnt_loss: Efficiency<Gross>,
    /// Heat brought by the combustion air above 25 °C; negative where it is colder.
    #[field("q_{air}", PERCENT)]
    pub air_credit: Efficiency<Gross>,
    /// Heat brought by the fuel gas, taken at air temperature; zero for liquids and solids.
    #[field("q_{fuel}", PERCENT)]
    pub fuel_credit: Efficiency<Gross>,
    /// Flue loss as short formulae mean it: heat of dry gas and vapour above air temperature, without latent heat and carbon monoxide.
    #[field("q_A", PERCENT)]
    pub flue_loss_net: Efficiency<Net>,
    /// Combustion efficiency on the gross calorific value: what does not leave by the flue.
    #[field("\\eta_s", PERCENT)]
    pub efficiency_gross: Efficiency<Gross>,
    /// Combustion efficiency on the net calorific value; above 100 % where enough condenses.
    #[field("\\eta_i", PERCENT)]
    pub efficiency_net: Efficiency<Net>,
    /// Condensate per gross heat input.
    #[field("m_{con}", KILOGRAM_PER_KILOWATT_HOUR)]
    pub condensate: On<Gross, MassPerEnergy>,
}

/// Flue gas analysis for one fuel.
#[derive(Clone, Copy, Debug)]
pub struct FlueAnalysis {
    kernel: FlueKernel,
    carbon_dioxide_maximum: f64,
}

impl FlueAnalysis {
    /// For this fuel, burnt in this air.
    #[must_use]
    pub fn new(fuel: &Fuel, air: &DryAir) -> Self {
        let kernel = FlueKernel::new(fuel, air);
        Self { kernel, carbon_dioxide_maximum: kernel.carbon_dioxide_maximum() }
    }
    /// The sums on plain numbers that this calculation stands on.
    #[must_use]
    pub fn kernel(&self) -> &FlueKernel {
        &self.kernel
    }
}

impl Context for FlueAnalysis {
    const SETTINGS: &'static [Setting] = &[context::FUEL, context::AIR];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let (fuel, air) = context::fuel_and_air(settings)?;
        Ok(Self::new(&fuel, &air))
    }
}

rules! {
    refuse NOTHING_MEASURED on "oxygen_dry": "neither oxygen nor carbon dioxide is given; one of them is needed";
    refuse READS_AIR on "oxygen_dry": "this is the oxygen of air: the probe is not in the flue gas, or the burner is off";
    refuse MOSTLY_AIR on "carbon_dioxide_dry": "so little carbon dioxide is nearly air: the probe is not in the flue gas, or the burner is off";
    refuse NO_CARBON_IN_FUEL on "carbon_dioxide_dry": "this fuel makes too little carbon dioxide to judge by; measure oxygen";
    refuse MORE_THAN_MAXIMUM on "carbon_dioxide_dry": "this fuel cannot give so much carbon dioxide; check the fuel, and % against ppm";
    refuse FLUE_NOT_WARMER_THAN_AIR on "flue_temperature": "the flue is not warmer than the air: probes swapped, or the burner is not running";
    refuse RICH on "excess_air_ratio": "less air than the fuel needs: the mixture is rich, so hydrogen and more leave unburnt and no balance from these readings holds; put the burner right or check ppm against %";
    notice NO_EXCESS_AIR on "excess_air_ratio": "hardly any oxygen beside carbon monoxide: the mixture is at or just below the air it needs";
    notice DILUTED on "oxygen_dry": "much oxygen: behind a draught diverter or a leak this is dilution, not excess air. Ratio and air-free carbon monoxide stand; excess air, losses and efficiency are then not the burner's";
    notice DOES_NOT_CLOSE on "carbon_dioxide_dry": "measured oxygen and carbon dioxide differ from this fuel's balance by more than 0.5 % of volume: check fuel, sample line and both cells; oxygen was used";
    notice CONDENSING on "flue_temperature": "below the dew point: the flue gas is taken to leave saturated, what condenses gives its heat back";
    notice DOUBTFUL_RATIO on "carbon_monoxide_dry": "more than 5 % of the carbon as carbon monoxide: check ppm against %";
}

/// Oxygen from which an open flue's sample may be diluted (common practice, no source).
const DILUTION_OXYGEN: f64 = 0.12;
/// Oxygen from which a sample is taken for air (common practice, no source).
const AIR_OXYGEN: f64 = 0.205;
/// Difference of measured and derived carbon dioxide that is noted (common practice, no source).
const CLOSURE: f64 = 0.005;
/// Largest carbon dioxide below which a fuel counts as free of carbon.
const CARBON_FREE: f64 = 0.01;

impl Calculation for FlueAnalysis {
    type Input = FlueReading;
    type Output = FlueResult;
    const INFO: Info = Info {
        name: "flue_analysis",
        title: "Flue gas analysis",
        summary: "Excess air, derived gases, carbon monoxide ratio and air-free, dew point, every loss, condensate and the combustion \
                  efficiency on both bases, from oxygen or carbon dioxide, carbon monoxide and temperatures, by exact element and energy balance.",
        sources: &[
            Source::new("element and energy balance", "excess air, derived gases, losses; no correlation"),
            Source::new("NASA TM-4513 (1993)", "enthalpies of the flue gases, 200 to 1000 K"),
            Source::new("ISO 6976:2016", "calorific values and latent heat at 25 °C"),
            Source::new("IAPWS-IF97 region 4; IAPWS-95", "dew point and saturation; enthalpy of the condensate"),
        ],
        accuracy: "The balance itself: 0.002 percentage points of loss against independent computation. The readings decide: 0.3 % O2 is \
                   about 2 % of excess air. Loss of the case to the room is not in it.",
        cautions: super::CAUTIONS,
        checked_against: "combustion/flue_losses.csv, combustion/emission_conversions.csv, combustion/published_examples.csv",
    };
    const RULES: &'static [Rule] = RULES;
    /// Oxygen measured, carbon dioxide not, dry air: what most instruments and conventions give.
    const STRAIGHT: bool = true;

    #[inline(always)]
    fn is_straight(&self, input: &FlueReading) -> bool {
        input.carbon_dioxide_dry.si().is_nan() & (input.relative_humidity.si() == 0.0)
    }

    #[inline(always)]
    fn check(&self, input: &FlueReading) -> Raised {
        let oxygen = input.oxygen_dry.si();
        let carbon_dioxide = input.carbon_dioxide_dry.si();
        let carbon_monoxide = input.carbon_monoxide_dry.si();
        Raised::NONE
            .when(NOTHING_MEASURED, oxygen.is_nan() & carbon_dioxide.is_nan())
            .when(READS_AIR, oxygen > AIR_OXYGEN)
            .when(NO_CARBON_IN_FUEL, oxygen.is_nan() & (self.carbon_dioxide_maximum < CARBON_FREE))
            .when(MORE_THAN_MAXIMUM, carbon_dioxide + carbon_monoxide > 1.02 * self.carbon_dioxide_maximum.max(CARBON_FREE))
            .when(FLUE_NOT_WARMER_THAN_AIR, input.flue_temperature.si() <= input.air_temperature.si())
            .when(DILUTED, oxygen > DILUTION_OXYGEN)
    }

    #[inline(always)]
    fn review(&self, input: &FlueReading, output: &FlueResult) -> Raised {
        let ratio = output.excess_air_ratio.si();
        Raised::NONE
            .when(MOSTLY_AIR, output.oxygen_dry_derived.si() > AIR_OXYGEN)
            .when(RICH, ratio < 0.99)
            .when(NO_EXCESS_AIR, (0.99..1.0).contains(&ratio))
            .when(DILUTED, output.oxygen_dry_derived.si() > DILUTION_OXYGEN)
            .when(DOES_NOT_CLOSE, output.carbon_dioxide_closure.si().abs() > CLOSURE)
            .when(CONDENSING, input.flue_temperature.si() < output.water_dew_point.si())
            .when(DOUBTFUL_RATIO, (output.carbon_monoxide_ratio.si() > 0.05) & (self.carbon_dioxide_maximum > CARBON_FREE))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &FlueReading, working: &mut W) -> FlueResult {
        let kernel = &self.kernel;
        let oxygen_measured = input.oxygen_dry.si();
        let carbon_dioxide_measured = input.carbon_dioxide_dry.si();
        let carbon_monoxide_dry = input.carbon_monoxide_dry.si();
        let flue_temperature = input.flue_temperature.si();
        let air_temperature = input.air_temperature.si();
        let pressure = input.barometric_pressure.si();

        // One of the two may be absent; a select instead of a branch keeps the columns in lanes.
        let carbon_dioxide_measured = if W::STRAIGHT { f64::NAN } else { carbon_dioxide_measured };
        let has_oxygen = W::STRAIGHT || !oxygen_measured.is_nan();
        let oxygen_derived = kernel.oxygen_from_carbon_dioxide(carbon_dioxide_measured, carbon_monoxide_dry);
        let oxygen_dry = if has_oxygen { oxygen_measured } else { oxygen_derived };
        let combustion = kernel.combustion(oxygen_dry, carbon_monoxide_dry, working);
        let carbon_dioxide_derived = combustion.carbon_dioxide_dry;
        let carbon_dioxide_dry = if carbon_dioxide_measured.is_nan() { carbon_dioxide_derived } else { carbon_dioxide_measured };
        step!(working, let carbon_monoxide_ratio: "r" = carbon_monoxide_dry / carbon_dioxide_dry, "definition");
        let air_free = kernel.carbon_monoxide_air_free(&combustion);

        let humidity = if W::STRAIGHT { 0.0 } else { humidity_mole_ratio(input.relative_humidity.si(), air_temperature, pressure) };
        let water = kernel.water(&combustion, humidity, flue_temperature, pressure, working);
        let heat = kernel.heat(&combustion, &water, flue_temperature, air_temperature, working);
        FlueResult {
            excess_air_ratio: Ratio::from_si(combustion.excess_air_ratio),
            excess_air: Ratio::from_si(combustion.excess_air_ratio - 1.0),
            oxygen_dry_derived: On::from_si(if has_oxygen { f64::NAN } else { oxygen_derived }),
            carbon_dioxide_dry_derived: On::from_si(if has_oxygen { carbon_dioxide_derived } else { f64::NAN }),
            // Not a number unless both were measured.
            carbon_dioxide_closure: Ratio::from_si(carbon_dioxide_measured - if has_oxygen { carbon_dioxide_derived } else { f64::NAN }),
            carbon_dioxide_maximum: On::from_si(self.carbon_dioxide_maximum),
            carbon_monoxide_ratio: Ratio::from_si(carbon_monoxide_ratio),
            carbon_monoxide_air_free: On::from_si(air_free),
            water_dew_point: ThermodynamicTemperature::from_si(water.dew_point),
            dry_gas_loss: On::from_si(heat.dry),
            moisture_loss: On::from_si(heat.vapour),
            latent_loss: On::from_si(heat.latent),
            condensate_loss: On::from_si(heat.condensate),
            unburnt_loss: On::from_si(heat.unburnt),
            air_credit: On::from_si(heat.air),
            fuel_credit: On::from_si(heat.fuel),
            flue_loss_net: On::from_si(heat.flue_loss_net),
            efficiency_gross: On::from_si(heat.efficiency_gross),
            efficiency_net: On::from_si(heat.efficiency_net),
            condensate: On::from_si(kernel.condensate_per_gross_heat(&water)),
        }
    }
}
