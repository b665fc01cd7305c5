//! The calculations `siegert_flue_loss` and `siegert_constants`: the short formula, and what it
//! should hold for a fuel.

use super::kernel::FlueKernel;
use super::siegert::{PUBLISHED_SIEGERT, SIEGERT_AIR_OXYGEN, SiegertConstants, carbon_dioxide_constant, flue_loss_from_carbon_dioxide};
use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::combustion::air::DryAir;
use crate::combustion::context;
use crate::fuel::Fuel;
use crate::node::Node;
use crate::quantity::types::{Ratio, ThermodynamicTemperature};
use crate::quantity::units::PERCENT;
use crate::quantity::{Dry, Efficiency, MoleFraction, Net, On, Value};
use crate::record::record;
use crate::working::{Silent, Working, step};
use crate::{Error, rules};

/// A reading for Siegert's formula.
#[record]
pub struct SiegertReading {
    /// Oxygen in dry flue gas.
    #[field("x_{O_2}", PERCENT, 0.0..=20.0, usual = 2.0..=12.0, absent = "not measured")]
    pub oxygen_dry: MoleFraction<Dry>,
    /// Carbon dioxide in dry flue gas, for the carbon dioxide form.
    #[field("x_{CO_2}", PERCENT, 0.5..=25.0, usual = 4.0..=15.0, absent = "not measured")]
    pub carbon_dioxide_dry: MoleFraction<Dry>,
    /// Largest carbon dioxide of the fuel, for the carbon dioxide form.
    #[field("x_{CO_2,max}", PERCENT, 1.0..=25.0, absent = "not given")]
    pub carbon_dioxide_maximum: MoleFraction<Dry>,
    /// Temperature of the flue gas.
    #[field("t_A", DEGREE_CELSIUS, -20.0..=600.0, usual = 60.0..=300.0)]
    pub flue_temperature: ThermodynamicTemperature,
    /// Temperature of the combustion air.
    #[field("t_L", DEGREE_CELSIUS, -40.0..=60.0, usual = -10.0..=40.0)]
    pub air_temperature: ThermodynamicTemperature,
}

/// Flue loss by Siegert's formula.
#[record]
pub struct SiegertResult {
    /// Flue loss from oxygen, share of the net heat input.
    #[field("q_A", PERCENT, absent = "oxygen not measured")]
    pub flue_loss_net: Efficiency<Net>,
    /// Net heat input less that flue loss.
    #[field("\\eta_K", PERCENT, absent = "oxygen not measured")]
    pub efficiency_net: Efficiency<Net>,
    /// Flue loss from carbon dioxide, share of the net heat input.
    #[field("q_{A,CO_2}", PERCENT, absent = "carbon dioxide or its largest value not given")]
    pub flue_loss_net_from_carbon_dioxide: Efficiency<Net>,
}

/// Siegert's formula with one pair of constants.
#[derive(Clone, Copy, Debug)]
pub struct SiegertFlueLoss {
    /// The constants.
    pub constants: SiegertConstants,
}

const CONSTANTS: Setting = Setting {
    name: "constants",
    doc: "A published pair by name (de-heating-oil, de-natural-gas, de-coke-oven-gas, de-lpg, be-vl-natural-gas, be-vl-propane, \
          be-vl-gas-oil), or a table with a2 and b.",
    form: Form::Structure,
    default: None,
};

impl Context for SiegertFlueLoss {
    const SETTINGS: &'static [Setting] = &[CONSTANTS];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let node = settings.need("constants")?;
        if let Node::Table(_) = node {
            if let Some((key, _)) = node.entries("constants")?.find(|(key, _)| !["a2", "b"].contains(key)) {
                return Err(Error::unknown_name("constants", key, ["a2", "b"].into_iter()));
            }
            let number = |name: &str, most: f64| -> Result<f64, Error> {
                let node = node.get(name).ok_or_else(|| Error::missing(name, "a constant of Siegert's formula"))?;
                let number = node.quantity::<Ratio>(name)?.si();
                let inside = number > 0.0 && number <= most;
                if inside { Ok(number) } else { Err(Error::bad_setting(name, &node.brief(), "no fuel has such a constant")) }
            };
            return Ok(Self { constants: SiegertConstants { a2: number("a2", 2.0)?, b: number("b", 0.1)? } });
        }
        let name = node.text("constants")?;
        PUBLISHED_SIEGERT
            .iter()
            .find(|known| known.name == name)
            .map(|known| Self { constants: known.constants })
            .ok_or_else(|| Error::unknown_name("constants", name, PUBLISHED_SIEGERT.iter().map(|known| known.name)))
    }
}

mod loss_rules {
    use super::rules;
    rules! {
        refuse NOTHING_MEASURED on "oxygen_dry": "neither oxygen nor carbon dioxide is given; one of them is needed";
        refuse NO_LARGEST_CARBON_DIOXIDE on "carbon_dioxide_maximum": "the carbon dioxide form needs the fuel's largest carbon dioxide";
        refuse FLUE_NOT_WARMER_THAN_AIR on "flue_temperature": "the flue is not warmer than the air: probes swapped, or the burner is not running";
        notice DEW_POINT_NEAR on "flue_temperature": "below about 60 °C water may condense, which this formula does not know; flue_analysis does";
        notice DILUTED on "oxygen_dry": "much oxygen: behind a draught diverter or a leak this is dilution, and the loss is not the burner's";
    }
    pub(super) const LIST: &[super::Rule] = RULES;
    pub(super) const NOTHING: u32 = NOTHING_MEASURED;
    pub(super) const NO_LARGEST: u32 = NO_LARGEST_CARBON_DIOXIDE;
    pub(super) const COLD: u32 = FLUE_NOT_WARMER_THAN_AIR;
    pub(super) const CONDENSING: u32 = DEW_POINT_NEAR;
    pub(super) const DILUTION: u32 = DILUTED;
}

impl Calculation for SiegertFlueLoss {
    type Input = SiegertReading;
    type Output = SiegertResult;
    const INFO: Info = Info {
        name: "siegert_flue_loss",
        title: "Flue loss by Siegert's formula",
        summary: "Flue loss on the net basis by the short formula that German and Belgian rules prescribe, with their constants or the \
                  caller's; for the loss itself use flue_analysis.",
        sources: &[
            Source::new("1. BImSchV (2010), Anlage 2, no. 3.4.1", "formula, German constants"),
            Source::new("Flemish Government decree of 8 December 2006, Annex II, no. 4", "Flemish constants"),
            Source::new("common practice, no source", "A1 = A2 CO2max / 21"),
        ],
        accuracy: "Against the energy balance at 80 to 300 °C: natural gas -0.5 to 0, LPG -0.7 to -0.1, oil -0.1 to +0.1 percentage points.",
        cautions: super::CAUTIONS,
        checked_against: "combustion/flue_losses.csv (siegert_bimschv_pct_net), combustion/siegert_constants_published.csv, \
                          trade/uncertainty.csv, trade/visit_demo.csv",
    };
    const RULES: &'static [Rule] = loss_rules::LIST;

    #[inline(always)]
    fn check(&self, input: &SiegertReading) -> Raised {
        let carbon_dioxide = !input.carbon_dioxide_dry.si().is_nan();
        Raised::NONE
            .when(loss_rules::NOTHING, input.oxygen_dry.si().is_nan() & !carbon_dioxide)
            .when(loss_rules::NO_LARGEST, carbon_dioxide & input.carbon_dioxide_maximum.si().is_nan())
            .when(loss_rules::COLD, input.flue_temperature.si() <= input.air_temperature.si())
            .when(loss_rules::CONDENSING, input.flue_temperature.si() < 333.15)
            .when(loss_rules::DILUTION, input.oxygen_dry.si() > 0.12)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &SiegertReading, working: &mut W) -> SiegertResult {
        let SiegertConstants { a2, b } = self.constants;
        let oxygen_percent = 100.0 * input.oxygen_dry.si();
        let air_oxygen_percent = 100.0 * SIEGERT_AIR_OXYGEN;
        let rise = input.flue_temperature.si() - input.air_temperature.si();
        step!(working, let flue_loss: "q_A" in PERCENT = rise * (a2 / (air_oxygen_percent - oxygen_percent) + b) / 100.0, "Siegert's formula, oxygen form");
        let a1 = carbon_dioxide_constant(a2, input.carbon_dioxide_maximum.si());
        let from_carbon_dioxide = flue_loss_from_carbon_dioxide(a1, b, input.carbon_dioxide_dry.si(), rise);
        SiegertResult {
            flue_loss_net: On::from_si(flue_loss),
            efficiency_net: On::from_si(1.0 - flue_loss),
            flue_loss_net_from_carbon_dioxide: On::from_si(from_carbon_dioxide),
        }
    }
}

/// The field over which the constants are fitted.
#[record]
pub struct SiegertField {
    /// Least oxygen.
    #[field("x_{O_2,1}", PERCENT, 0.0..=15.0, default = 1.0)]
    pub least_oxygen: MoleFraction<Dry>,
    /// Most oxygen.
    #[field("x_{O_2,2}", PERCENT, 0.1..=18.0, default = 9.0)]
    pub most_oxygen: MoleFraction<Dry>,
    /// Lowest flue temperature.
    #[field("t_{A,1}", DEGREE_CELSIUS, 61.0..=400.0, default = 80.0)]
    pub lowest_flue_temperature: ThermodynamicTemperature,
    /// Highest flue temperature.
    #[field("t_{A,2}", DEGREE_CELSIUS, 62.0..=600.0, default = 300.0)]
    pub highest_flue_temperature: ThermodynamicTemperature,
    /// Air temperature.
    #[field("t_L", DEGREE_CELSIUS, -40.0..=60.0, default = 20.0)]
    pub air_temperature: ThermodynamicTemperature,
}

/// Constants of Siegert's formula that suit a fuel.
#[record]
pub struct SiegertFit {
    /// Constant A2 of the oxygen form.
    #[field("A_2", ONE)]
    pub a2: Ratio,
    /// Constant B.
    #[field("B", ONE)]
    pub b: Ratio,
    /// Constant A1 of the carbon dioxide form.
    #[field("A_1", ONE)]
    pub a1: Ratio,
    /// Largest difference of the formula from the energy balance over the field.
    #[field("\\Delta q_{max}", PERCENT)]
    pub largest_deviation: Efficiency<Net>,
}

/// Siegert's constants fitted to the energy balance of a fuel.
#[derive(Clone, Copy, Debug)]
pub struct SiegertConstantsOf {
    kernel: FlueKernel,
}

impl SiegertConstantsOf {
    /// For this fuel, burnt in this air.
    #[must_use]
    pub fn new(fuel: &Fuel, air: &DryAir) -> Self {
        Self { kernel: FlueKernel::new(fuel, air) }
    }
}

impl Context for SiegertConstantsOf {
    const SETTINGS: &'static [Setting] = &[context::FUEL, context::AIR];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let (fuel, air) = context::fuel_and_air(settings)?;
        Ok(Self::new(&fuel, &air))
    }
}

rules! {
    refuse EMPTY_FIELD on "most_oxygen": "the field is empty: the upper ends must exceed the lower ones, oxygen by 0.1 % or more";
}

/// Over a narrower field of oxygen the two constants cannot be told apart: at 0.1 % the normal
/// equations keep ten digits, at a millionth none.
const NARROWEST_FIELD: f64 = 0.001;

/// Points along each side of the fitted field: oxygen, temperature.
const POINTS: (u32, u32) = (9, 12);

impl Calculation for SiegertConstantsOf {
    type Input = SiegertField;
    type Output = SiegertFit;
    const INFO: Info = Info {
        name: "siegert_constants",
        title: "Siegert constants of a fuel",
        summary: "Constants of Siegert's formula by least squares against the exact flue loss over a field of oxygen and flue temperature; \
                  for fuels that no rule lists, such as hydrogen blends.",
        sources: &[Source::new("least squares on the energy balance of flue_analysis", "9 by 12 points, evenly spaced")],
        accuracy: "The largest deviation is a result.",
        cautions: &[],
        checked_against: "combustion/siegert_constants_fitted.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline]
    fn check(&self, input: &SiegertField) -> Raised {
        Raised::NONE.when(
            EMPTY_FIELD,
            input.most_oxygen.si() - input.least_oxygen.si() < NARROWEST_FIELD
                || input.lowest_flue_temperature.si() >= input.highest_flue_temperature.si(),
        )
    }

    fn compute<W: Working>(&self, input: &SiegertField, working: &mut W) -> SiegertFit {
        let air = input.air_temperature.si();
        let between = |low: f64, high: f64, point: u32, points: u32| low + (high - low) * f64::from(point) / f64::from(points - 1);
        let points = || {
            (0..POINTS.0 * POINTS.1).map(move |index| {
                let oxygen = between(input.least_oxygen.si(), input.most_oxygen.si(), index / POINTS.1, POINTS.0);
                let flue = between(input.lowest_flue_temperature.si(), input.highest_flue_temperature.si(), index % POINTS.1, POINTS.1);
                let combustion = self.kernel.combustion(oxygen, 0.0, &mut Silent);
                // The loss of the short formula leaves condensing out, and so does this one.
                let water = self.kernel.water(&combustion, 0.0, flue, 101_325.0, &mut Silent);
                let heat = self.kernel.heat(&combustion, &water, flue, air, &mut Silent);
                let rise = flue - air;
                (rise / (100.0 * (SIEGERT_AIR_OXYGEN - oxygen)), rise, 100.0 * heat.flue_loss_net)
            })
        };
        // Normal equations of loss = A2 u + B v.
        let (mut sum_uu, mut sum_uv, mut sum_vv, mut sum_ul, mut sum_vl) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (u, v, loss) in points() {
            sum_uu += u * u;
            sum_uv += u * v;
            sum_vv += v * v;
            sum_ul += u * loss;
            sum_vl += v * loss;
        }
        step!(working, let determinant: "\\Delta" = sum_uu * sum_vv - sum_uv * sum_uv, "normal equations of loss = A2 u + B v in per cent and kelvins, u = v/(21 - O2), v = flue less air; sums over the grid");
        step!(working, let a2: "A_2" = (sum_ul * sum_vv - sum_vl * sum_uv) / determinant, "normal equations");
        step!(working, let b: "B" = (sum_vl * sum_uu - sum_ul * sum_uv) / determinant, "normal equations");
        let largest = points().fold(0.0_f64, |most, (u, v, loss)| {
            let deviation = (a2 * u + b * v - loss).abs();
            // A comparison that keeps a NaN.
            if deviation <= most { most } else { deviation }
        });
        SiegertFit {
            a2: Ratio::from_si(a2),
            b: Ratio::from_si(b),
            a1: Ratio::from_si(carbon_dioxide_constant(a2, self.kernel.carbon_dioxide_maximum())),
            largest_deviation: On::from_si(largest / 100.0),
        }
    }
}
