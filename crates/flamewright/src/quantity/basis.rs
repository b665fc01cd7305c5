//! Bases: the same dimension, another meaning. Crossing from one to another is a named step.
//!
//! Each of these mistakes is refused by the compiler. Every proof has a twin that differs only in
//! the type of the argument and compiles, so it is the mix that is refused and nothing else.
//!
//! A gross heat input where a net one is wanted (about 11 % apart for natural gas):
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: HeatInput<Net>) {}
//! # fn given(x: HeatInput<Net>) {
//! wanted(x); // x: HeatInput<Net>
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: HeatInput<Net>) {}
//! # fn given(x: HeatInput<Gross>) {
//! wanted(x); // x: HeatInput<Gross>
//! # }
//! ```
//! A gross calorific value where a net one is wanted:
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: CalorificValue<Net>) {}
//! # fn given(x: CalorificValue<Net>) {
//! wanted(x); // x: CalorificValue<Net>
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: CalorificValue<Net>) {}
//! # fn given(x: CalorificValue<Gross>) {
//! wanted(x); // x: CalorificValue<Gross>
//! # }
//! ```
//! A gross efficiency where a net one is wanted (about 10 percentage points apart):
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: Efficiency<Net>) {}
//! # fn given(x: Efficiency<Net>) {
//! wanted(x); // x: Efficiency<Net>
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: Efficiency<Net>) {}
//! # fn given(x: Efficiency<Gross>) {
//! wanted(x); // x: Efficiency<Gross>
//! # }
//! ```
//! A gauge pressure in a gas law (a factor of 50):
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: AbsolutePressure) {}
//! # fn given(x: AbsolutePressure) {
//! wanted(x); // x: AbsolutePressure
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: AbsolutePressure) {}
//! # fn given(x: GaugePressure) {
//! wanted(x); // x: GaugePressure
//! # }
//! ```
//! A wet share where an analyser's dry one is wanted (up to 20 %):
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: MoleFraction<Dry>) {}
//! # fn given(x: MoleFraction<Dry>) {
//! wanted(x); // x: MoleFraction<Dry>
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: MoleFraction<Dry>) {}
//! # fn given(x: MoleFraction<Wet>) {
//! wanted(x); // x: MoleFraction<Wet>
//! # }
//! ```
//! A measured share where the air-free one is wanted:
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: MoleFraction<AirFree>) {}
//! # fn given(x: MoleFraction<AirFree>) {
//! wanted(x); // x: MoleFraction<AirFree>
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: MoleFraction<AirFree>) {}
//! # fn given(x: MoleFraction<Dry>) {
//! wanted(x); // x: MoleFraction<Dry>
//! # }
//! ```
//! A volume at the meter where the reference volume is wanted:
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: GasVolume<AtReference>) {}
//! # fn given(x: GasVolume<AtReference>) {
//! wanted(x); // x: GasVolume<AtReference>
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: GasVolume<AtReference>) {}
//! # fn given(x: GasVolume<AtMeter>) {
//! wanted(x); // x: GasVolume<AtMeter>
//! # }
//! ```
//! A free area where the equivalent area is wanted (a factor of 1.5 to 3):
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: VentArea<Equivalent>) {}
//! # fn given(x: VentArea<Equivalent>) {
//! wanted(x); // x: VentArea<Equivalent>
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: VentArea<Equivalent>) {}
//! # fn given(x: VentArea<Free>) {
//! wanted(x); // x: VentArea<Free>
//! # }
//! ```
//! An overall area of a ventilator where its free area is wanted:
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: VentArea<Free>) {}
//! # fn given(x: VentArea<Free>) {
//! wanted(x); // x: VentArea<Free>
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: VentArea<Free>) {}
//! # fn given(x: VentArea<Overall>) {
//! wanted(x); // x: VentArea<Overall>
//! # }
//! ```
//! A temperature where a difference is wanted (8 K or 281 K):
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: TemperatureInterval) {}
//! # fn given(x: TemperatureInterval) {
//! wanted(x); // x: TemperatureInterval
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: TemperatureInterval) {}
//! # fn given(x: ThermodynamicTemperature) {
//! wanted(x); // x: ThermodynamicTemperature
//! # }
//! ```
//! A pressure where a calorific value is wanted: to `uom` alone the two are the same:
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: CalorificValue<Net>) {}
//! # fn given(x: CalorificValue<Net>) {
//! wanted(x); // x: CalorificValue<Net>
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: CalorificValue<Net>) {}
//! # fn given(x: Pressure) {
//! wanted(x); // x: Pressure
//! # }
//! ```
//! A power where an energy is wanted:
//! ```
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: Energy) {}
//! # fn given(x: Energy) {
//! wanted(x); // x: Energy
//! # }
//! ```
//! ```compile_fail,E0308
//! # use flamewright::quantity::{*, types::*};
//! # fn wanted(_: Energy) {}
//! # fn given(x: Power) {
//! wanted(x); // x: Power
//! # }
//! ```

use super::value::{EnergyPerVolume as PerVolume, Kind, Value, types};
use core::marker::PhantomData;

/// The basis a value stands on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the markers below explain each")]
pub enum Basis {
    None,
    Gross,
    Net,
    Gauge,
    Absolute,
    Dry,
    Wet,
    AirFree,
    AtMeter,
    AtReference,
    Overall,
    Free,
    Equivalent,
    OneLimb,
    BothLimbs,
}

impl Basis {
    /// The word for it, empty for `None`.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::None => "",
            Self::Gross => "gross",
            Self::Net => "net",
            Self::Gauge => "gauge",
            Self::Absolute => "absolute",
            Self::Dry => "dry",
            Self::Wet => "wet",
            Self::AirFree => "air-free",
            Self::AtMeter => "at the meter",
            Self::AtReference => "at reference conditions",
            Self::Overall => "overall",
            Self::Free => "free",
            Self::Equivalent => "equivalent",
            Self::OneLimb => "one-limb",
            Self::BothLimbs => "both-limbs",
        }
    }
}

/// A marker type for a basis.
pub trait Marker: Copy + core::fmt::Debug + PartialEq + PartialOrd + Send + Sync + 'static {
    /// The basis it marks.
    const BASIS: Basis;
}

macro_rules! markers {
    ($($(#[$doc:meta])* $name:ident)*) => { $(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
        pub struct $name;
        impl Marker for $name { const BASIS: Basis = Basis::$name; }
    )* };
}

markers! {
    /// The water of combustion counted as condensed (superior, higher).
    Gross
    /// The water of combustion counted as vapour (inferior, lower).
    Net
    /// Pressure above the surrounding atmosphere.
    Gauge
    /// Pressure above vacuum.
    Absolute
    /// Share of the gas with its water vapour removed, as an analyser with a dried sample reads it.
    Dry
    /// Share of the gas with its water vapour.
    Wet
    /// Share that would remain with all excess air removed (zero oxygen).
    AirFree
    /// Gas volume as it flows through the meter, at its own pressure and temperature.
    AtMeter
    /// Gas volume converted to reference conditions.
    AtReference
    /// Area of a ventilator over all, frame and bars included.
    Overall
    /// Open area of a ventilator as measured: the sum of its openings.
    Free
    /// Area of a sharp-edged opening that would pass the same air at the same pressure difference.
    Equivalent
    /// Movement of the liquid in one limb of a U-gauge: about half of what balances the pressure.
    OneLimb
    /// Difference between the levels of both limbs of a U-gauge: what balances the pressure.
    BothLimbs
}

/// A quantity `Q` that stands on basis `B`; different bases are different types.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
#[repr(transparent)]
pub struct On<B, Q>(Q, PhantomData<B>);

impl<B: Marker, Q: Value> On<B, Q> {
    /// States that `quantity` stands on this basis.
    #[inline(always)]
    pub fn new(quantity: Q::Plain) -> Self {
        Self(Q::of(quantity), PhantomData)
    }
}

impl<B: Marker, Q: Value> Value for On<B, Q> {
    type Plain = Q::Plain;
    const KIND: Kind = Kind { basis: B::BASIS, ..Q::KIND };
    #[inline(always)]
    fn from_si(si: f64) -> Self {
        Self(Q::from_si(si), PhantomData)
    }
    #[inline(always)]
    fn si(self) -> f64 {
        self.0.si()
    }
    #[inline(always)]
    fn plain(self) -> Q::Plain {
        self.0.plain()
    }
    #[inline(always)]
    fn of(plain: Q::Plain) -> Self {
        Self(Q::of(plain), PhantomData)
    }
}

impl<B: Marker, Q: Value> crate::working::Shown for On<B, Q> {
    fn shown(&self) -> (f64, super::Dimension) {
        (self.si(), Q::KIND.dimension)
    }
}

impl<B: Marker, Q: Value> core::str::FromStr for On<B, Q> {
    type Err = crate::Error;
    fn from_str(text: &str) -> Result<Self, crate::Error> {
        super::parse(Q::KIND.name, text)
    }
}

/// Pressure above the atmosphere.
pub type GaugePressure = On<Gauge, types::Pressure>;
/// Pressure above vacuum.
pub type AbsolutePressure = On<Absolute, types::Pressure>;
/// Heat input (fuel rate × calorific value) on one basis.
pub type HeatInput<B> = On<B, types::Power>;
/// Calorific value per volume of gas on one basis. Its reference conditions are part of the context.
pub type CalorificValue<B> = On<B, PerVolume>;
/// Wobbe index on one basis.
pub type WobbeIndex<B> = On<B, PerVolume>;
/// Calorific value per mass on one basis.
pub type MassCalorificValue<B> = On<B, types::AvailableEnergy>;
/// Calorific value per amount of substance on one basis.
pub type MolarCalorificValue<B> = On<B, types::MolarEnergy>;
/// Efficiency, or a loss, as a share of the heat input on one basis.
pub type Efficiency<B> = On<B, types::Ratio>;
/// Share by amount (equal to share by volume of an ideal gas), dry, wet or air-free.
pub type MoleFraction<B> = On<B, types::Ratio>;
/// Gas volume, at the meter or at reference conditions.
pub type GasVolume<B> = On<B, types::Volume>;
/// Gas volume flow, at the meter or at reference conditions.
pub type GasFlow<B> = On<B, types::VolumeRate>;
/// Ventilator area, overall, free or equivalent.
pub type VentArea<B> = On<B, types::Area>;

/// Movement of the liquid in one limb of a U-gauge, counted positive in the sense of a pressure.
pub type LimbMovement = On<OneLimb, types::Length>;
/// Difference between the levels in the two limbs of a liquid-column gauge.
pub type LevelDifference = On<BothLimbs, types::Length>;

impl LimbMovement {
    /// The level difference when one limb has fallen by `self` and the other has risen by `risen`.
    ///
    /// One limb alone does not make a level difference:
    ///
    /// ```compile_fail,E0308
    /// use flamewright::quantity::{LevelDifference, LimbMovement, Value};
    /// let fallen = LimbMovement::from_si(0.105);
    /// let difference: LevelDifference = fallen;
    /// ```
    #[must_use]
    pub fn level_difference(self, risen: Self) -> LevelDifference {
        On::new(self.plain() + risen.plain())
    }
}

impl GaugePressure {
    /// The absolute pressure where the atmosphere stands at `barometer`.
    #[must_use]
    pub fn to_absolute(self, barometer: AbsolutePressure) -> AbsolutePressure {
        On::new(self.plain() + barometer.plain())
    }
}

impl AbsolutePressure {
    /// The gauge pressure where the atmosphere stands at `barometer`.
    #[must_use]
    pub fn to_gauge(self, barometer: Self) -> GaugePressure {
        On::new(self.plain() - barometer.plain())
    }
}

impl MoleFraction<Wet> {
    /// The share after the water vapour, itself `water` of the wet gas, has been removed.
    #[must_use]
    pub fn to_dry(self, water: MoleFraction<Wet>) -> MoleFraction<Dry> {
        On::from_si(self.si() / (1.0 - water.si()))
    }
}

impl MoleFraction<Dry> {
    /// The share in the gas with its water vapour, which is `water` of the wet gas.
    #[must_use]
    pub fn to_wet(self, water: MoleFraction<Wet>) -> MoleFraction<Wet> {
        On::from_si(self.si() * (1.0 - water.si()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn crossing_a_basis_there_and_back() {
        let barometer = AbsolutePressure::from_si(101_325.0);
        let gauge = GaugePressure::from_si(2_000.0);
        assert_eq!(gauge.to_absolute(barometer).si(), 103_325.0);
        assert_eq!(gauge.to_absolute(barometer).to_gauge(barometer).si(), 2_000.0);
        // A tenth of the dry gas with a fifth of the wet gas as water is 0.08 of the wet gas.
        let (dry, water) = (MoleFraction::<Dry>::from_si(0.1), MoleFraction::<Wet>::from_si(0.2));
        assert!((dry.to_wet(water).si() - 0.08).abs() < 1e-15);
        assert!((dry.to_wet(water).to_dry(water).si() - 0.1).abs() < 1e-15);
        let difference = LimbMovement::from_si(0.105).level_difference(LimbMovement::from_si(0.095));
        assert!((difference.si() - 0.2).abs() < 1e-15);
    }
}
