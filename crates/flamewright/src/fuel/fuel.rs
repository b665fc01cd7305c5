//! What combustion and flue sums need to know of a fuel, whatever it is.
use crate::calculation::{Form, Setting, Settings};
use crate::node::Node;
use crate::quantity::types::Ratio;
use crate::quantity::{Gross, MassCalorificValue, Value};
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::component::{component_names, plain};
use super::composition::{AmountBasis, Composition, Normalisation};
use super::edition::Edition;
use super::test_gas::{TEST_GASES, TestGas};
use crate::error::Error;
use crate::quantity::ReferenceConditions;

/// State in which a fuel reaches the burner; it fixes the unit of amount of a [`Fuel`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FuelState {
    /// Amounts are per mole.
    Gas,
    /// Amounts are per kilogram.
    Liquid,
    /// Amounts are per kilogram.
    Solid,
}

/// Moles of atoms in one unit of fuel, inert parts and moisture included: the carbon and oxygen of
/// carbon dioxide, the hydrogen and oxygen of water and the nitrogen of N2 all count.
///
/// So complete combustion gives `carbon` of CO2, `hydrogen / 2` of H2O, `sulphur` of SO2,
/// `nitrogen / 2` of N2 and the noble gases as they came, and needs
/// `carbon + hydrogen / 4 + sulphur - oxygen / 2` of O2.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Elements {
    /// Carbon atoms, mol per unit of fuel.
    pub carbon: f64,
    /// Hydrogen atoms, mol per unit of fuel.
    pub hydrogen: f64,
    /// Oxygen atoms, mol per unit of fuel.
    pub oxygen: f64,
    /// Nitrogen atoms, mol per unit of fuel.
    pub nitrogen: f64,
    /// Sulphur atoms, mol per unit of fuel.
    pub sulphur: f64,
    /// Helium and neon, mol per unit of fuel.
    pub helium: f64,
    /// Argon, mol per unit of fuel.
    pub argon: f64,
}

impl Elements {
    /// Add an amount of something else that holds these atoms per unit.
    pub(super) fn add(&mut self, other: &Self, amount: f64) {
        self.carbon += amount * other.carbon;
        self.hydrogen += amount * other.hydrogen;
        self.oxygen += amount * other.oxygen;
        self.nitrogen += amount * other.nitrogen;
        self.sulphur += amount * other.sulphur;
        self.helium += amount * other.helium;
        self.argon += amount * other.argon;
    }
}

/// A fuel as combustion sums see it: one mole of a gas, or one kilogram of a liquid or solid.
///
/// ```
/// use flamewright::fuel::Fuel;
///
/// let blend = Fuel::named("CH4 80 %, H2 20 %")?;
/// assert!((blend.stoichiometric_oxygen() - 1.7).abs() < 1e-12); // mol per mol
/// let refused = Fuel::named("CH4 80 %, hydrogem 20 %").unwrap_err();
/// assert!(refused.to_string().contains("did you mean \"hydrogen\"?"));
/// # Ok::<(), flamewright::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Fuel {
    /// Name to show, such as "G20" or "gas oil".
    pub name: String,
    /// State, and with it the unit of amount: mol for a gas, kg for a liquid or solid.
    pub state: FuelState,
    /// Atoms in one unit of fuel.
    pub elements: Elements,
    /// Mass of one unit of fuel, kg: the molar mass of a gas in kg/mol, 1 for a liquid or solid.
    pub mass: f64,
    /// Gross calorific value at 25 degC, J per unit of fuel (a gas taken as ideal).
    pub gross_calorific_value: f64,
    /// Net calorific value at 25 degC, J per unit of fuel (a gas taken as ideal).
    pub net_calorific_value: f64,
    /// Heat capacity at constant pressure and 25 degC, J/K per unit of fuel.
    pub heat_capacity: f64,
    /// Rise of that heat capacity with temperature at 25 degC, J/K2 per unit of fuel.
    pub heat_capacity_slope: f64,
    /// What a gas is made of; `None` for a liquid or solid.
    pub composition: Option<Composition>,
}

/// Shares of the mass of a liquid or solid fuel as it is burnt (ultimate analysis). What is left to
/// one is ash.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct UltimateAnalysis {
    /// Carbon, kg/kg.
    pub carbon: f64,
    /// Hydrogen other than that of the moisture, kg/kg.
    pub hydrogen: f64,
    /// Oxygen other than that of the moisture, kg/kg.
    pub oxygen: f64,
    /// Nitrogen, kg/kg.
    pub nitrogen: f64,
    /// Sulphur, kg/kg.
    pub sulphur: f64,
    /// Moisture, kg/kg.
    pub moisture: f64,
}

/// Atomic masses of carbon, hydrogen, oxygen, nitrogen and sulphur, kg/mol: ISO 6976:2016 Table A.2.
const ATOMIC_MASS: [f64; 5] = [12.0107e-3, 1.007_94e-3, 15.9994e-3, 14.0067e-3, 32.065e-3];

/// Molar enthalpy of vaporisation of water at 25 degC, J/mol: ISO 6976:2016 Table A.5.
pub const WATER_VAPORISATION_25C: f64 = 44_013.0;

impl UltimateAnalysis {
    /// Atoms per kilogram, mol/kg, those of the moisture included.
    #[must_use]
    pub fn elements(&self) -> Elements {
        let [c, h, o, n, s] = ATOMIC_MASS;
        let water = self.moisture / (2.0 * h + o);
        Elements {
            carbon: self.carbon / c,
            hydrogen: self.hydrogen / h + 2.0 * water,
            oxygen: self.oxygen / o + water,
            nitrogen: self.nitrogen / n,
            sulphur: self.sulphur / s,
            helium: 0.0,
            argon: 0.0,
        }
    }

    /// Sum of the shares: one less the ash.
    #[must_use]
    pub fn sum(&self) -> f64 {
        self.carbon + self.hydrogen + self.oxygen + self.nitrogen + self.sulphur + self.moisture
    }
}

impl Fuel {
    /// A gas of this composition; calorific values of ISO 6976:2016 at 25 degC.
    ///
    /// # Errors
    /// If the edition lacks one of the components.
    pub fn gas(name: &str, composition: &Composition) -> Result<Self, Error> {
        let edition = Edition::Iso6976Of2016;
        let sums = composition.columns(edition)?.sums(&ReferenceConditions::at_celsius(25.0, 15.0));
        let [heat_capacity, heat_capacity_slope] = composition.heat_capacity();
        Ok(Self {
            name: name.to_string(),
            state: FuelState::Gas,
            elements: composition.elements(),
            mass: sums.molar_mass,
            gross_calorific_value: sums.gross,
            net_calorific_value: sums.net,
            heat_capacity,
            heat_capacity_slope,
            composition: Some(composition.clone()),
        })
    }

    /// A liquid or solid of this analysis and gross calorific value as burnt, J/kg at 25 degC. It is
    /// taken to enter the burner at 25 degC, so it has no sensible heat.
    ///
    /// The net calorific value is the gross one less the heat of vaporisation of all water that
    /// leaves, that formed and that brought as moisture.
    #[must_use]
    pub fn from_analysis(name: &str, state: FuelState, analysis: &UltimateAnalysis, gross_calorific_value: f64) -> Self {
        let elements = analysis.elements();
        Self {
            name: name.to_string(),
            state,
            mass: 1.0,
            gross_calorific_value,
            net_calorific_value: gross_calorific_value - 0.5 * elements.hydrogen * WATER_VAPORISATION_25C,
            elements,
            heat_capacity: 0.0,
            heat_capacity_slope: 0.0,
            composition: None,
        }
    }

    /// Oxygen that burns one unit of fuel completely to CO2, H2O and SO2, mol.
    #[must_use]
    pub fn stoichiometric_oxygen(&self) -> f64 {
        let e = &self.elements;
        e.carbon + 0.25 * e.hydrogen + e.sulphur - 0.5 * e.oxygen
    }

    /// Sensible enthalpy of one unit of fuel above 25 degC, J; good for -40 to 60 degC.
    #[must_use]
    pub fn sensible_enthalpy(&self, temperature_kelvin: f64) -> f64 {
        let above = temperature_kelvin - 298.15;
        above * (self.heat_capacity + 0.5 * above * self.heat_capacity_slope)
    }
}

/// A liquid or solid fuel of typical make.
#[derive(Clone, Copy, Debug)]
pub struct TypicalFuel {
    /// Name.
    pub name: &'static str,
    /// State.
    pub state: FuelState,
    /// Ultimate analysis as burnt.
    pub analysis: UltimateAnalysis,
    /// Gross calorific value, J/kg.
    pub gross_calorific_value: f64,
}

/// Typical liquid and solid fuels. Analyses and calorific values are from memory (handbook-typical)
/// and no substitute for those of the fuel at hand.
pub static TYPICAL_FUELS: [TypicalFuel; 3] = [
    TypicalFuel {
        name: "kerosene",
        state: FuelState::Liquid,
        analysis: UltimateAnalysis { carbon: 0.858, hydrogen: 0.141, oxygen: 0.0, nitrogen: 0.0, sulphur: 0.001, moisture: 0.0 },
        gross_calorific_value: 46.4e6,
    },
    TypicalFuel {
        name: "gas oil",
        state: FuelState::Liquid,
        analysis: UltimateAnalysis { carbon: 0.861, hydrogen: 0.132, oxygen: 0.0, nitrogen: 0.0, sulphur: 0.007, moisture: 0.0 },
        gross_calorific_value: 45.5e6,
    },
    TypicalFuel {
        name: "dry wood",
        state: FuelState::Solid,
        analysis: UltimateAnalysis { carbon: 0.5, hydrogen: 0.06, oxygen: 0.435, nitrogen: 0.002, sulphur: 0.0, moisture: 0.0 },
        gross_calorific_value: 20.1e6,
    },
];

const SETTING: &str = "fuel";

impl Fuel {
    /// The setting `fuel`, for calculations that need one.
    #[must_use]
    pub const fn setting() -> Setting {
        Setting {
            name: SETTING,
            doc: "A test gas by its letters (G20; EN 437 states shares of volume, which are turned into mole fractions), a pure gas by \
                  name or formula, a composition in mole fractions such as \"CH4 80 %, H2 20 %\", a typical kerosene, gas oil or dry wood; \
                  or a table: composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid) with the \
                  mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and gross_calorific_value.",
            form: Form::Fuel,
            default: Some("G20"),
        }
    }

    /// The fuel that the setting `fuel` asks for.
    ///
    /// # Errors
    /// If it is unknown or cannot be read.
    pub fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        match settings.get(SETTING) {
            Some(node) => Self::from_node(node),
            None => Self::named(settings.text(SETTING)?),
        }
    }

    /// A fuel by the value of the setting `fuel`: text or a table.
    ///
    /// # Errors
    /// If it is unknown or cannot be read.
    pub fn from_node(node: &Node) -> Result<Self, Error> {
        match node {
            Node::Table(_) => Self::from_table(node),
            other => Self::named(other.text(SETTING)?),
        }
    }

    /// A fuel by the text of the setting `fuel`.
    ///
    /// # Errors
    /// If it is unknown or cannot be read.
    pub fn named(text: &str) -> Result<Self, Error> {
        let wanted = plain(text);
        if let Some(gas) = TestGas::named(text) {
            return Self::gas(gas.letters, &gas.composition()?);
        }
        if let Some(fuel) = TYPICAL_FUELS.iter().find(|fuel| plain(fuel.name) == wanted) {
            return Ok(Self::from_analysis(fuel.name, fuel.state, &fuel.analysis, fuel.gross_calorific_value));
        }
        if !text.contains(['%', '=', '.', ',', ';']) && super::component_position(text).is_none() {
            if ["gas", "naturalgas", "erdgas", "lpg", "towngas", "biogas"].contains(&wanted.as_str()) {
                let why = "such gases differ from place to place: state the composition, or take a test gas such as G20 (methane) or G31 (propane)";
                return Err(Error::bad_setting(SETTING, text, why));
            }
            let gases = TEST_GASES.iter().map(|gas| gas.letters);
            let fuels = TYPICAL_FUELS.iter().map(|fuel| fuel.name);
            return Err(Error::unknown_name(SETTING, text, gases.chain(fuels).chain(component_names())));
        }
        Self::gas(text.trim(), &Composition::from_text(text, AmountBasis::Mole, Normalisation::Refuse)?)
    }

    fn from_table(table: &Node) -> Result<Self, Error> {
        let name = table.get("name").map_or(Ok("fuel of this composition"), |node| node.text("name"))?;
        if table.get("gross_calorific_value").is_some() {
            return Self::from_analysis_table(name, table);
        }
        let basis = match table.get("basis") {
            None => AmountBasis::Mole,
            Some(node) => AmountBasis::named(node.text("basis")?)?,
        };
        let normalise = table.get("normalise").map_or(Ok(false), |node| node.flag("normalise"))?;
        let normalisation = if normalise { Normalisation::Normalise } else { Normalisation::Refuse };
        let known = ["name", "basis", "normalise", "hydrogen_blend", "composition"];
        let gas = match table.get("composition") {
            Some(Node::Text(text)) => {
                if let Some((key, _)) = table.entries(SETTING)?.find(|(key, _)| !known.contains(key)) {
                    return Err(Error::unknown_name(SETTING, key, known.into_iter()));
                }
                match TestGas::named(text) {
                    Some(gas) => gas.composition()?,
                    None => Composition::from_text(text, basis, normalisation)?,
                }
            }
            given => {
                let mut amounts = Vec::new();
                for (component, share) in given.unwrap_or(table).entries("composition")? {
                    if given.is_some() || !known.contains(&component) {
                        amounts.push((component, share.quantity::<Ratio>(component)?.si()));
                    }
                }
                Composition::new(amounts, basis, normalisation)?
            }
        };
        let gas = match table.get("hydrogen_blend") {
            None => gas,
            Some(node) => {
                let share = node.quantity::<Ratio>("hydrogen_blend")?.si();
                if !(0.0..=1.0).contains(&share) {
                    return Err(Error::bad_setting("hydrogen_blend", &node.brief(), "a share from 0 % to 100 % is needed"));
                }
                gas.mixed_with(&Composition::new([("hydrogen", 1.0)], AmountBasis::Mole, Normalisation::Refuse)?, share)
            }
        };
        Self::gas(name, &gas)
    }

    fn from_analysis_table(name: &str, table: &Node) -> Result<Self, Error> {
        let known = ["name", "state", "carbon", "hydrogen", "oxygen", "nitrogen", "sulphur", "moisture", "gross_calorific_value"];
        for (key, _) in table.entries(SETTING)? {
            if !known.contains(&key) {
                return Err(Error::unknown_name(SETTING, key, known.into_iter()));
            }
        }
        let share = |key: &str| match table.get(key) {
            None => Ok(0.0),
            Some(node) => {
                let share = node.quantity::<Ratio>(key)?.si();
                if (0.0..=1.0).contains(&share) {
                    Ok(share)
                } else {
                    Err(Error::bad_setting(key, &node.brief(), "a mass share from 0 % to 100 % is needed"))
                }
            }
        };
        let analysis = UltimateAnalysis {
            carbon: share("carbon")?,
            hydrogen: share("hydrogen")?,
            oxygen: share("oxygen")?,
            nitrogen: share("nitrogen")?,
            sulphur: share("sulphur")?,
            moisture: share("moisture")?,
        };
        if analysis.sum() > 1.0 + super::SUM_TOLERANCE {
            let why =
                "the mass shares add up to more than 100 %: hydrogen and oxygen exclude those of the moisture, and what is left is ash";
            return Err(Error::bad_setting(SETTING, "", why));
        }
        let state = match table.get("state") {
            None => return Err(Error::bad_setting("state", "", "say whether the fuel is liquid or solid")),
            Some(node) => match node.text("state")? {
                "liquid" => FuelState::Liquid,
                "solid" => FuelState::Solid,
                other => return Err(Error::unknown_name("state", other, ["liquid", "solid"].into_iter())),
            },
        };
        let node = table.get("gross_calorific_value").unwrap_or(&Node::Null);
        let gross = node.quantity::<MassCalorificValue<Gross>>("gross_calorific_value")?.si();
        let fuel = Self::from_analysis(name, state, &analysis, gross);
        // Net above zero and gross below that of hydrogen: anything else is a slip.
        if fuel.net_calorific_value > 0.0 && gross <= 1.5e8 && fuel.stoichiometric_oxygen() > 0.0 {
            Ok(fuel)
        } else {
            Err(Error::bad_setting("gross_calorific_value", &node.brief(), "no fuel of this analysis has such a calorific value"))
        }
    }
}
