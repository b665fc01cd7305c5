//! What a value measures: the link from a Rust type to its dimension, name and basis.

use super::basis::Basis;
use super::unit::{self, Dimension};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// What a field measures, readable by programs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Kind {
    /// The quantity, for instance `pressure`.
    pub name: &'static str,
    /// Exponents of the SI base units.
    pub dimension: Dimension,
    /// The SI unit spelled out as one word, for instance `watt_per_kelvin`.
    pub si_name: &'static str,
    /// Whether the value is a temperature difference, which degrees Celsius cannot state.
    pub difference: bool,
    /// The basis the value stands on; `Basis::None` where there is only one.
    pub basis: Basis,
}

impl Kind {
    /// The SI unit as a symbol that can be read back, for instance `W/(m²·K)`; `1` for a ratio.
    #[must_use]
    pub fn si_symbol(&self) -> String {
        let name = self.si_name.split("_of_").next().unwrap_or_default();
        let side = |words: &str| {
            let mut symbols: Vec<String> = Vec::new();
            let mut power = "";
            for word in words.split('_') {
                let symbol = match word {
                    "square" | "cubic" => {
                        power = if word == "square" { "²" } else { "³" };
                        continue;
                    }
                    "squared" | "fourth" | "sixth" => {
                        let behind = if word == "squared" {
                            "²"
                        } else if word == "fourth" {
                            "⁴"
                        } else {
                            "⁶"
                        };
                        symbols.last_mut().into_iter().for_each(|s| s.push_str(behind));
                        continue;
                    }
                    "to" | "the" | "difference" => continue,
                    "ratio" | "" => "1",
                    "radian" => "rad",
                    "metre" => "m",
                    "second" => "s",
                    "kilogram" => "kg",
                    "mole" => "mol",
                    "kelvin" => "K",
                    "pascal" => "Pa",
                    "joule" => "J",
                    "watt" => "W",
                    "volt" => "V",
                    "ohm" => "Ω",
                    other => other,
                };
                symbols.push(format!("{symbol}{power}"));
                power = "";
            }
            symbols
        };
        // A name that begins with `per_` has nothing above the line.
        let (above, below) = name.strip_prefix("per_").map_or_else(|| name.split_once("_per_").unwrap_or((name, "")), |below| ("", below));
        let above = side(above).join("·");
        match side(below) {
            _ if below.is_empty() => above,
            symbols if symbols.len() == 1 => format!("{above}/{}", symbols[0]),
            symbols => format!("{above}/({})", symbols.join("·")),
        }
    }
}

/// A transparent wrapper of one `f64` in SI base units.
pub trait Value: Copy + core::fmt::Debug + PartialEq {
    /// The `uom` quantity that formulas work with.
    type Plain: Copy;
    /// What it measures.
    const KIND: Kind;
    /// From a number in SI units.
    fn from_si(si: f64) -> Self;
    /// The number in SI units.
    fn si(self) -> f64;
    /// The quantity without its basis: a deliberate step, to be taken inside formulas only.
    fn plain(self) -> Self::Plain;
    /// A quantity put on this basis: a deliberate step, as above.
    fn of(plain: Self::Plain) -> Self;
}

/// The quantity types that records are made of: `uom`'s, with short names of our own where it has none.
pub mod types {
    pub use uom::si::f64::{
        Acceleration, AmountOfSubstance, Angle, Area, AvailableEnergy, DynamicViscosity, ElectricPotential, ElectricalResistance, Energy,
        Frequency, HeatCapacity, HeatTransfer, Length, Mass, MassDensity, MassRate, MolarEnergy, MolarMass, Power, Pressure, Ratio,
        SpecificHeatCapacity, SpecificVolume, TemperatureCoefficient, TemperatureInterval, ThermalConductance, ThermalConductivity,
        ThermodynamicTemperature, Time, Velocity, Volume, VolumeRate,
    };
    use uom::si::{ISQ, Quantity, SI};
    use uom::typenum::{N1, N2, N3, P1, P2, P3, P4, Z0};
    type Q<L, M, T, I, Th, N, J> = Quantity<ISQ<L, M, T, I, Th, N, J>, SI<f64>, f64>;
    /// Power per length, W/m.
    pub type PowerPerLength = Q<P1, P1, N3, Z0, Z0, Z0, Z0>;
    /// Power per area, W/m².
    pub type PowerPerArea = Q<Z0, P1, N3, Z0, Z0, Z0, Z0>;
    /// Thermal resistance of a length, m·K/W.
    pub type LengthThermalResistance = Q<N1, N1, P3, Z0, P1, Z0, Z0>;
    /// Thermal resistance, K/W.
    pub type ThermalResistance = Q<N2, N1, P3, Z0, P1, Z0, Z0>;
    /// Heat capacity per length, J/(m·K).
    pub type HeatCapacityPerLength = Q<P1, P1, N2, Z0, N1, Z0, Z0>;
    /// Mass per length, kg/m.
    pub type MassPerLength = Q<N1, P1, Z0, Z0, Z0, Z0, Z0>;
    /// Mass per energy, kg/J.
    pub type MassPerEnergy = Q<N2, Z0, P2, Z0, Z0, Z0, Z0>;
    /// Volume per energy, m³/J.
    pub type VolumePerEnergy = Q<P1, N1, P2, Z0, Z0, Z0, Z0>;
    /// Area per power, m²/W.
    pub type AreaPerPower = Q<Z0, N1, P3, Z0, Z0, Z0, Z0>;
    /// Thermal resistance of an area, m²·K/W.
    pub type InsulanceFactor = Q<Z0, N1, P3, Z0, P1, Z0, Z0>;
    /// Volume per power, m³/W.
    pub type VolumePerPower = Q<P1, N1, P3, Z0, Z0, Z0, Z0>;
    /// Volume flow per power, m³/J.
    pub type VolumeRatePerPower = VolumePerEnergy;
    /// Kinematic viscosity or diffusivity, m²/s.
    pub type KinematicViscosity = Q<P2, Z0, N1, Z0, Z0, Z0, Z0>;
    /// Pressure per length, Pa/m.
    pub type PressureGradient = Q<N2, P1, N2, Z0, Z0, Z0, Z0>;
    /// Pressure per temperature difference, Pa/K.
    pub type PressurePerTemperature = Q<N1, P1, N2, Z0, N1, Z0, Z0>;
    /// Electric potential per temperature difference, V/K.
    pub type PotentialPerTemperature = Q<P2, P1, N3, N1, N1, Z0, Z0>;
    /// Resistance coefficient of a flow path, Pa/(m³/s)², pressure drop over flow squared.
    pub type HydraulicResistance = Q<uom::typenum::N7, P1, Z0, Z0, Z0, Z0, Z0>;
    /// Area to the second power, m⁴.
    pub type AreaSquared = Q<P4, Z0, Z0, Z0, Z0, Z0, Z0>;
}

macro_rules! values {
    ($($kind:ident, $name:literal, $si:literal, [$($d:literal),*], $difference:literal;)*) => { $(
        impl Value for types::$kind {
            type Plain = Self;
            const KIND: Kind = Kind { name: $name, dimension: [$($d),*], si_name: $si, difference: $difference, basis: Basis::None };
            #[inline(always)]
            fn from_si(si: f64) -> Self {
                Self { dimension: core::marker::PhantomData, units: core::marker::PhantomData, value: si }
            }
            #[inline(always)]
            fn si(self) -> f64 { self.value }
            #[inline(always)]
            fn plain(self) -> Self { self }
            #[inline(always)]
            fn of(plain: Self) -> Self { plain }
        }
    )* };
}

values! {
    Ratio, "ratio", "ratio", [0, 0, 0, 0, 0, 0, 0], false;
    Angle, "angle", "radian", [0, 0, 0, 0, 0, 0, 0], false;
    Length, "length", "metre", [1, 0, 0, 0, 0, 0, 0], false;
    Area, "area", "square_metre", [2, 0, 0, 0, 0, 0, 0], false;
    AreaSquared, "area squared", "metre_to_the_fourth", [4, 0, 0, 0, 0, 0, 0], false;
    Volume, "volume", "cubic_metre", [3, 0, 0, 0, 0, 0, 0], false;
    VolumeRate, "volume flow", "cubic_metre_per_second", [3, 0, -1, 0, 0, 0, 0], false;
    Velocity, "velocity", "metre_per_second", [1, 0, -1, 0, 0, 0, 0], false;
    Acceleration, "acceleration", "metre_per_second_squared", [1, 0, -2, 0, 0, 0, 0], false;
    Time, "time", "second", [0, 0, 1, 0, 0, 0, 0], false;
    Frequency, "rate", "per_second", [0, 0, -1, 0, 0, 0, 0], false;
    AmountOfSubstance, "amount of substance", "mole", [0, 0, 0, 0, 0, 1, 0], false;
    Mass, "mass", "kilogram", [0, 1, 0, 0, 0, 0, 0], false;
    MassRate, "mass flow", "kilogram_per_second", [0, 1, -1, 0, 0, 0, 0], false;
    MassDensity, "density", "kilogram_per_cubic_metre", [-3, 1, 0, 0, 0, 0, 0], false;
    MassPerLength, "mass per length", "kilogram_per_metre", [-1, 1, 0, 0, 0, 0, 0], false;
    MassPerEnergy, "mass per energy", "kilogram_per_joule", [-2, 0, 2, 0, 0, 0, 0], false;
    VolumePerEnergy, "volume per energy", "cubic_metre_per_joule", [1, -1, 2, 0, 0, 0, 0], false;
    InsulanceFactor, "thermal resistance of an area", "square_metre_kelvin_per_watt", [0, -1, 3, 0, 1, 0, 0], false;
    VolumePerPower, "volume per power", "cubic_metre_per_watt", [1, -1, 3, 0, 0, 0, 0], false;
    AreaPerPower, "area per power", "square_metre_per_watt", [0, -1, 3, 0, 0, 0, 0], false;
    SpecificVolume, "specific volume", "cubic_metre_per_kilogram", [3, -1, 0, 0, 0, 0, 0], false;
    MolarMass, "molar mass", "kilogram_per_mole", [0, 1, 0, 0, 0, -1, 0], false;
    MolarEnergy, "molar energy", "joule_per_mole", [2, 1, -2, 0, 0, -1, 0], false;
    AvailableEnergy, "energy per mass", "joule_per_kilogram", [2, 0, -2, 0, 0, 0, 0], false;
    ThermodynamicTemperature, "temperature", "kelvin", [0, 0, 0, 0, 1, 0, 0], false;
    TemperatureInterval, "temperature difference", "kelvin_difference", [0, 0, 0, 0, 1, 0, 0], true;
    TemperatureCoefficient, "coefficient per kelvin", "per_kelvin", [0, 0, 0, 0, -1, 0, 0], false;
    Pressure, "pressure", "pascal", [-1, 1, -2, 0, 0, 0, 0], false;
    PressureGradient, "pressure per length", "pascal_per_metre", [-2, 1, -2, 0, 0, 0, 0], false;
    PressurePerTemperature, "pressure per temperature difference", "pascal_per_kelvin", [-1, 1, -2, 0, -1, 0, 0], false;
    HydraulicResistance, "hydraulic resistance", "pascal_second_squared_per_metre_to_the_sixth", [-7, 1, 0, 0, 0, 0, 0], false;
    DynamicViscosity, "dynamic viscosity", "pascal_second", [-1, 1, -1, 0, 0, 0, 0], false;
    KinematicViscosity, "kinematic viscosity", "square_metre_per_second", [2, 0, -1, 0, 0, 0, 0], false;
    Energy, "energy", "joule", [2, 1, -2, 0, 0, 0, 0], false;
    Power, "power", "watt", [2, 1, -3, 0, 0, 0, 0], false;
    PowerPerLength, "heat flow per length", "watt_per_metre", [1, 1, -3, 0, 0, 0, 0], false;
    PowerPerArea, "heat flow per area", "watt_per_square_metre", [0, 1, -3, 0, 0, 0, 0], false;
    HeatCapacity, "heat capacity", "joule_per_kelvin", [2, 1, -2, 0, -1, 0, 0], false;
    HeatCapacityPerLength, "heat capacity per length", "joule_per_metre_kelvin", [1, 1, -2, 0, -1, 0, 0], false;
    SpecificHeatCapacity, "specific heat capacity", "joule_per_kilogram_kelvin", [2, 0, -2, 0, -1, 0, 0], false;
    HeatTransfer, "heat transfer coefficient", "watt_per_square_metre_kelvin", [0, 1, -3, 0, -1, 0, 0], false;
    ThermalConductance, "thermal conductance", "watt_per_kelvin", [2, 1, -3, 0, -1, 0, 0], false;
    ThermalConductivity, "thermal conductivity", "watt_per_metre_kelvin", [1, 1, -3, 0, -1, 0, 0], false;
    ThermalResistance, "thermal resistance", "kelvin_per_watt", [-2, -1, 3, 0, 1, 0, 0], false;
    LengthThermalResistance, "thermal resistance of a length", "metre_kelvin_per_watt", [-1, -1, 3, 0, 1, 0, 0], false;
    ElectricalResistance, "electrical resistance", "ohm", [2, 1, -3, -2, 0, 0, 0], false;
    ElectricPotential, "electric potential", "volt", [2, 1, -3, -1, 0, 0, 0], false;
    PotentialPerTemperature, "electric potential per temperature difference", "volt_per_kelvin", [2, 1, -3, -1, -1, 0, 0], false;
}

/// A calorific value or Wobbe index per volume. To `uom` it would be a pressure.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
#[repr(transparent)]
pub struct EnergyPerVolume(types::Pressure);

impl Value for EnergyPerVolume {
    type Plain = types::Pressure;
    const KIND: Kind = Kind {
        name: "energy per volume",
        dimension: unit::PRESSURE,
        si_name: "joule_per_cubic_metre",
        difference: false,
        basis: Basis::None,
    };
    #[inline(always)]
    fn from_si(si: f64) -> Self {
        Self(types::Pressure::from_si(si))
    }
    #[inline(always)]
    fn si(self) -> f64 {
        self.0.value
    }
    #[inline(always)]
    fn plain(self) -> types::Pressure {
        self.0
    }
    #[inline(always)]
    fn of(plain: types::Pressure) -> Self {
        Self(plain)
    }
}

/// Heat lost per length of pipe and per kelvin over the room (linear thermal transmittance, ISO
/// 12241). To `uom` it would be a conductivity.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
#[repr(transparent)]
pub struct LinearTransmittance(types::ThermalConductivity);

impl Value for LinearTransmittance {
    type Plain = types::ThermalConductivity;
    const KIND: Kind = Kind {
        name: "heat loss per length and kelvin",
        dimension: [1, 1, -3, 0, -1, 0, 0],
        si_name: "watt_per_metre_kelvin_of_length",
        difference: false,
        basis: Basis::None,
    };
    #[inline(always)]
    fn from_si(si: f64) -> Self {
        Self(types::ThermalConductivity::from_si(si))
    }
    #[inline(always)]
    fn si(self) -> f64 {
        self.0.value
    }
    #[inline(always)]
    fn plain(self) -> types::ThermalConductivity {
        self.0
    }
    #[inline(always)]
    fn of(plain: types::ThermalConductivity) -> Self {
        Self(plain)
    }
}
