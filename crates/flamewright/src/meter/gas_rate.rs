//! The calculation `gas_rate`: gas through the meter in a timed test, and the heat input it stands for.

use super::atmosphere::{AltitudeRule, ISO_2533, SI_1996_439};
use super::{CAUTION_BASIS, CAUTION_COMPETENCE};
use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::error::Error;
use crate::fuel::{Fuel, MeteredGas};
use crate::quantity::types::{Length, Power, Pressure, Ratio, ThermodynamicTemperature, Time, Volume, VolumeRate};
use crate::quantity::units::{CUBIC_METRE, CUBIC_METRE_PER_HOUR, KILOWATT, MEGAJOULE_PER_CUBIC_METRE, MILLIBAR, PERCENT};
use crate::quantity::{
    AbsolutePressure, AtMeter, AtReference, CalorificValue, Efficiency, GasFlow, GasVolume, GaugePressure, Gross, HeatInput, Net,
    ReferenceConditions, Value,
};
use crate::record::record;
use crate::rules;
use crate::working::{Working, step};

/// A timed test at the meter. The volume is given in one of three ways: as such, by revolutions of a
/// test dial, or by two readings of the index. Gas pressure, gas temperature and atmospheric pressure
/// (or altitude) go together and convert the rate to reference conditions; without them only the
/// uncorrected heat input is given.
#[record]
pub struct GasRateReading {
    /// Volume that passed, as the meter shows it.
    #[field("V", CUBIC_METRE, 1e-5..=1000.0, usual = 0.005..=5.0, absent = "not read as such")]
    pub volume: GasVolume<AtMeter>,
    /// Volume of one revolution of the test dial.
    #[field("V_d", CUBIC_METRE, 1e-5..=10.0, usual = 0.005..=0.3, absent = "no test dial used")]
    pub dial_volume: GasVolume<AtMeter>,
    /// Revolutions of the test dial.
    #[field("N", ONE, 0.01..=1000.0, usual = 0.5..=20.0, absent = "no test dial used")]
    pub revolutions: Ratio,
    /// Index at the start, in the unit of the setting `index_unit`.
    #[field("R_1", ONE, 0.0..=1e9, absent = "index not read")]
    pub index_start: Ratio,
    /// Index at the end, in the unit of the setting `index_unit`.
    #[field("R_2", ONE, 0.0..=1e9, absent = "index not read")]
    pub index_end: Ratio,
    /// Duration of the test.
    #[field("t", SECOND, 1.0..=3600.0, usual = 20.0..=1200.0)]
    pub time: Time,
    /// Error of the meter: shown volume less true volume, over true volume.
    #[field("e", PERCENT, -20.0..=20.0, default = 0.0, usual = -3.0..=3.0)]
    pub meter_error: Ratio,
    /// Gauge pressure of the gas in the meter.
    #[field("p_g", MILLIBAR, 0.0..=2000.0, usual = 5.0..=75.0, absent = "not measured")]
    pub gas_pressure: GaugePressure,
    /// Temperature of the gas in the meter.
    #[field("T", DEGREE_CELSIUS, -40.0..=60.0, usual = -5.0..=25.0, absent = "not measured")]
    pub gas_temperature: ThermodynamicTemperature,
    /// Atmospheric pressure.
    #[field("p_b", MILLIBAR, 600.0..=1100.0, usual = 950.0..=1040.0, absent = "not measured")]
    pub barometric_pressure: AbsolutePressure,
    /// Height above sea level, to stand in for a barometer.
    #[field("h", METRE, -500.0..=4000.0, usual = -5.0..=2500.0, absent = "not stated")]
    pub altitude: Length,
    /// Compression factor of the gas at reference conditions over that in the meter.
    #[field("Z_{ref}/Z", ONE, 0.9..=1.1, usual = 0.99..=1.01, absent = "that of the fuel if it is named, else 1")]
    pub compression_ratio: Ratio,
    /// Gross calorific value at the reference conditions.
    #[field("H_s", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, usual = 10.0..=140.0, absent = "not stated")]
    pub gross_calorific_value: CalorificValue<Gross>,
    /// Net calorific value at the reference conditions.
    #[field("H_i", MEGAJOULE_PER_CUBIC_METRE, 1.0..=200.0, usual = 10.0..=130.0, absent = "not stated")]
    pub net_calorific_value: CalorificValue<Net>,
    /// Heat input of the appliance plate, where it is on the gross basis.
    #[field("\\dot Q_{s,n}", KILOWATT, 0.01..=1e5, usual = 1.0..=1000.0, absent = "no plate on this basis")]
    pub plate_heat_input_gross: HeatInput<Gross>,
    /// Heat input of the appliance plate, where it is on the net basis.
    #[field("\\dot Q_{i,n}", KILOWATT, 0.01..=1e5, usual = 1.0..=1000.0, absent = "no plate on this basis")]
    pub plate_heat_input_net: HeatInput<Net>,
}

/// Gas rate and heat input.
#[record]
pub struct GasRateResult {
    /// Volume that passed, with the meter's error taken out.
    #[field("V_m", CUBIC_METRE)]
    pub volume: GasVolume<AtMeter>,
    /// Volume flow as it passes the meter.
    #[field("\\dot V", CUBIC_METRE_PER_HOUR)]
    pub gas_rate: GasFlow<AtMeter>,
    /// Atmospheric pressure taken.
    #[field("p_a", MILLIBAR, absent = "neither measured nor stated by altitude")]
    pub atmospheric_pressure: AbsolutePressure,
    /// Reference volume over volume in the meter (state number).
    #[field("C", ONE, absent = "gas conditions not measured")]
    pub conversion_factor: Ratio,
    /// Volume flow at reference conditions.
    #[field("\\dot V_{ref}", CUBIC_METRE_PER_HOUR, absent = "gas conditions not measured")]
    pub reference_gas_rate: GasFlow<AtReference>,
    /// Heat input on the gross basis, converted to reference conditions.
    #[field("\\dot Q_s", KILOWATT, absent = "gas conditions or gross calorific value not known")]
    pub heat_input_gross: HeatInput<Gross>,
    /// Heat input on the net basis, converted to reference conditions.
    #[field("\\dot Q_i", KILOWATT, absent = "gas conditions or net calorific value not known")]
    pub heat_input_net: HeatInput<Net>,
    /// Gross heat input as if the gas in the meter were at reference conditions.
    #[field("\\dot Q_{s,0}", KILOWATT, absent = "gross calorific value not known")]
    pub uncorrected_heat_input_gross: HeatInput<Gross>,
    /// Net heat input as if the gas in the meter were at reference conditions.
    #[field("\\dot Q_{i,0}", KILOWATT, absent = "net calorific value not known")]
    pub uncorrected_heat_input_net: HeatInput<Net>,
    /// What the uncorrected heat input is off the converted one.
    #[field("\\varepsilon", PERCENT, absent = "gas conditions not measured")]
    pub uncorrected_error: Ratio,
    /// Gross calorific value over net.
    #[field("H_s/H_i", ONE, absent = "gross or net calorific value not known")]
    pub gross_over_net: Ratio,
    /// Gross heat input over that of the plate; uncorrected where the gas conditions are not known.
    #[field("\\beta_s", PERCENT, absent = "no plate value or calorific value on the gross basis")]
    pub share_of_plate_gross: Efficiency<Gross>,
    /// Net heat input over that of the plate; uncorrected where the gas conditions are not known.
    #[field("\\beta_i", PERCENT, absent = "no plate value or calorific value on the net basis")]
    pub share_of_plate_net: Efficiency<Net>,
}

/// Unit that a meter index counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum IndexUnit {
    /// Cubic metres.
    CubicMetre,
    /// Litres.
    Litre,
    /// Cubic feet.
    CubicFoot,
    /// Tens of cubic feet.
    TenCubicFeet,
    /// Hundreds of cubic feet.
    HundredCubicFeet,
    /// Thousands of cubic feet.
    ThousandCubicFeet,
}

impl IndexUnit {
    const NAMED: [(&'static str, Self); 6] = [
        ("m3", Self::CubicMetre),
        ("L", Self::Litre),
        ("ft3", Self::CubicFoot),
        ("10 ft3", Self::TenCubicFeet),
        ("100 ft3", Self::HundredCubicFeet),
        ("1000 ft3", Self::ThousandCubicFeet),
    ];

    /// Volume of one count, m³; the foot is 0.3048 m by definition.
    #[must_use]
    pub fn volume(self) -> f64 {
        const CUBIC_FOOT: f64 = 0.3048 * 0.3048 * 0.3048;
        match self {
            Self::CubicMetre => 1.0,
            Self::Litre => 1e-3,
            Self::CubicFoot => CUBIC_FOOT,
            Self::TenCubicFeet => 10.0 * CUBIC_FOOT,
            Self::HundredCubicFeet => 100.0 * CUBIC_FOOT,
            Self::ThousandCubicFeet => 1000.0 * CUBIC_FOOT,
        }
    }
}

/// Gas rate from a timed test at the meter.
///
/// ```
/// use flamewright::calculation::Calculation;
/// use flamewright::meter::{GasRate, GasRateReading};
/// use flamewright::quantity::Value;
/// use flamewright::record::Record;
///
/// let reading = GasRateReading::read([
///     ("dial_volume", "1 ft3"),
///     ("revolutions", "2"),
///     ("time", "1 min 31 s"),
///     ("gas_pressure", "21 mbar"),
///     ("gas_temperature", "12 °C"),
///     ("barometric_pressure", "1005 mbar"),
///     ("net_calorific_value", "35.6 MJ/m3"),
/// ])?;
/// let result = GasRate::default().evaluate(&reading)?;
/// assert_eq!((result.heat_input_net.si() / 100.0).round() / 10.0, 22.7); // kW
/// assert!(result.heat_input_gross.si().is_nan()); // no gross calorific value, no gross heat input
/// # Ok::<(), flamewright::Error>(())
/// ```
#[derive(Clone, Debug)]
pub struct GasRate {
    /// Conditions at which the calorific values are stated and to which the rate is converted.
    pub reference: ReferenceConditions,
    /// Unit that the index counts; needed only where the index is read.
    pub index_unit: Option<IndexUnit>,
    /// How an altitude stands in for a barometer.
    pub altitude_rule: AltitudeRule,
    /// Whether the meter is known to run above 100 mbar.
    pub medium_pressure: bool,
    fuel: Option<MeteredGas>,
}

impl GasRate {
    /// The same with a gas of known composition: it gives the compression factor, a calorific value
    /// that is not stated, and the other one from the one that is.
    ///
    /// # Errors
    /// If the fuel is no gas, or the tables of ISO 6976 do not reach the reference conditions.
    pub fn with_fuel(mut self, fuel: &Fuel) -> Result<Self, Error> {
        let gas = match &fuel.composition {
            Some(composition) => composition.metered(&self.reference)?,
            None => return Err(Error::bad_setting("fuel", &fuel.name, "a liquid or solid does not pass a gas meter")),
        };
        if gas.gross_calorific_value.is_nan() {
            let why = "with a fuel the tables of ISO 6976 must reach the reference conditions: 0 °C to 25 °C for combustion, 0 °C to 20 °C for metering";
            return Err(Error::bad_setting("reference", "", why));
        }
        self.fuel = Some(gas);
        Ok(self)
    }

    /// Gross and net calorific value taken, J/m³: as stated, else from the other by the ratio of the
    /// fuel, else of the fuel.
    #[inline(always)]
    fn calorific_values(&self, input: &GasRateReading) -> (f64, f64) {
        let (gross, net) = (input.gross_calorific_value.si(), input.net_calorific_value.si());
        let (fuel_gross, fuel_net) = match &self.fuel {
            Some(gas) => (gas.gross_calorific_value, gas.net_calorific_value),
            None => (f64::NAN, f64::NAN),
        };
        (or(gross, or(net * (fuel_gross / fuel_net), fuel_gross)), or(net, or(gross * (fuel_net / fuel_gross), fuel_net)))
    }
}

impl Default for GasRate {
    fn default() -> Self {
        Self {
            reference: ReferenceConditions::AT_15_15,
            index_unit: None,
            altitude_rule: AltitudeRule::StandardAtmosphere,
            medium_pressure: false,
            fuel: None,
        }
    }
}

impl Context for GasRate {
    const SETTINGS: &'static [Setting] = &[
        ReferenceConditions::setting(
            "Conditions at which the calorific values are stated and to which the rate is converted: combustion and metering temperature \
             in °C such as 15/15 or 25/0, \"60 °F, 14.73 psi\", or a table.",
        ),
        Setting {
            name: "index_unit",
            doc: "Unit that the index counts, needed only where the index is read: there is no default, since a wrong guess is a factor \
                  of 10 to 100.",
            form: Form::Choice(&["m3", "L", "ft3", "10 ft3", "100 ft3", "1000 ft3"]),
            default: None,
        },
        Setting {
            name: "altitude_rule",
            doc: "How an altitude stands in for a barometer: the standard atmosphere, or the deduction of UK billing law of 1996.",
            form: Form::Choice(&AltitudeRule::CHOICES),
            default: Some(AltitudeRule::CHOICES[0]),
        },
        Setting {
            name: "medium_pressure",
            doc: "Whether the meter is known to run above 100 mbar; otherwise such a gas pressure is refused as a slip.",
            form: Form::Flag,
            default: Some("false"),
        },
        Setting {
            name: "fuel",
            doc: "The gas, if its composition is known (as in fuel_properties): it then gives the compression factors, and a calorific value \
                  that is not stated.",
            form: Form::Fuel,
            default: None,
        },
    ];

    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let bare = Self {
            reference: ReferenceConditions::from_settings(settings, "reference")?,
            index_unit: match settings.get("index_unit") {
                Some(_) => Some(settings.choice("index_unit", &IndexUnit::NAMED)?),
                None => None,
            },
            altitude_rule: AltitudeRule::named(settings, "altitude_rule")?,
            medium_pressure: settings.flag("medium_pressure")?,
            fuel: None,
        };
        match settings.get("fuel") {
            Some(node) => bare.with_fuel(&Fuel::from_node(node)?),
            None => Ok(bare),
        }
    }
}

rules! {
    refuse NO_VOLUME on "volume": "give the volume, or dial_volume with revolutions, or index_start with index_end";
    refuse TWO_VOLUMES on "volume": "give the volume in one way only: as such, by a test dial, or by the index";
    refuse INDEX_UNIT_UNKNOWN on "index_start": "say what the index counts by the setting index_unit: reading hundreds of cubic feet as cubic feet is a factor of 100";
    refuse INDEX_RUNS_BACK on "index_end": "the index must have risen; if it passed zero, add its capacity to the end reading";
    refuse CONDITIONS_INCOMPLETE on "gas_temperature": "gas_pressure, gas_temperature and barometric_pressure (or altitude) go together: give all three, or none for an uncorrected rate";
    refuse PRESSURE_TOO_HIGH on "gas_pressure": "above 100 mbar at the meter: is this absolute pressure? Set medium_pressure if the meter does run at it";
    refuse NET_ABOVE_GROSS on "net_calorific_value": "the net calorific value is never above the gross one: have the two been swapped?";
    notice UNCORRECTED on "gas_pressure": "gas conditions not measured: the heat input is uncorrected, some per cent off at sea level and 15 % or more at altitude";
    notice BAROMETER_TAKEN on "altitude": "the barometer was taken and the altitude left aside";
    notice RATIO_UNUSUAL on "net_calorific_value": "gross over net lies outside 1.05 to 1.20: check that each is on its own basis";
    notice VALUE_OF_THE_FUEL on "gross_calorific_value": "no calorific value was stated: that of the fuel's composition was taken, which the gas delivered may not have";
    notice OTHER_BASIS_BY_THE_FUEL on "net_calorific_value": "only one calorific value was stated: the other was found by the ratio of gross to net of the fuel";
    notice PLATE_WITHOUT_VALUE on "plate_heat_input_net": "a plate value can only be compared with a calorific value on the same basis, which is missing";
    notice FAR_FROM_PLATE on "share_of_plate_net": "the heat input is below half or above 1.3 times the plate: check dial size, unit, basis, and other appliances or pilots that were on";
}

/// `value`, or `otherwise` where there is none.
#[inline(always)]
fn or(value: f64, otherwise: f64) -> f64 {
    if value.is_nan() { otherwise } else { value }
}

impl Calculation for GasRate {
    type Input = GasRateReading;
    type Output = GasRateResult;
    const INFO: Info = Info {
        name: "gas_rate",
        title: "Gas rate and heat input",
        summary: "Gas rate from a timed volume, test dial or index, converted to reference conditions, with the heat input gross and net \
                  and its share of the appliance plate on the same basis.",
        sources: &[
            Source::new("common practice, no source", "rate = volume / time; heat input = reference rate × calorific value"),
            Source::new(
                "ideal gas law with compression factors, as ISO 13443 and EN 12405 convert volumes (from memory)",
                "conversion factor",
            ),
            Source::new("ISO 6976:2016", "compression factors and calorific values of a fuel that is named"),
            Source::new(ISO_2533, "pressure by altitude"),
            Source::new(SI_1996_439, "pressure by altitude under UK billing law"),
            Source::new("International foot, 1959", "cubic foot"),
        ],
        accuracy: "Decided by the readings: see gas_rate_uncertainty. Compression factors left out (no fuel named) cost at most 0.06 % for natural gas \
                   and 0.5 % for propane at ordinary conditions. Gas is taken as dry.",
        cautions: &[CAUTION_COMPETENCE, CAUTION_BASIS],
        checked_against: "trade/gas_rate.csv",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &GasRateReading) -> Raised {
        let given = |value: f64| !value.is_nan();
        let volume = given(input.volume.si());
        let (dial, revolutions) = (given(input.dial_volume.si()), given(input.revolutions.si()));
        let (start, end) = (given(input.index_start.si()), given(input.index_end.si()));
        let ways = u8::from(volume) + u8::from(dial & revolutions) + u8::from(start & end);
        let more = u8::from(volume) + u8::from(dial | revolutions) + u8::from(start | end);
        let (pressure, temperature) = (given(input.gas_pressure.si()), given(input.gas_temperature.si()));
        let (barometer, altitude) = (given(input.barometric_pressure.si()), given(input.altitude.si()));
        let conditions = pressure | temperature | barometer | altitude;
        let complete = pressure & temperature & (barometer | altitude);
        let (gross, net) = (input.gross_calorific_value.si(), input.net_calorific_value.si());
        let ratio = gross / net;
        let fuel = self.fuel.is_some();
        let gross_plate_alone = given(input.plate_heat_input_gross.si()) & !given(gross) & !fuel;
        let net_plate_alone = given(input.plate_heat_input_net.si()) & !given(net) & !fuel;
        Raised::NONE
            .when(NO_VOLUME, ways == 0)
            .when(TWO_VOLUMES, (ways > 1) | (ways == 1) & (more > 1))
            .when(INDEX_UNIT_UNKNOWN, (start | end) & self.index_unit.is_none())
            .when(INDEX_RUNS_BACK, input.index_end.si() <= input.index_start.si())
            .when(CONDITIONS_INCOMPLETE, conditions & !complete)
            .when(PRESSURE_TOO_HIGH, !self.medium_pressure & (input.gas_pressure.si() > 100e2))
            .when(NET_ABOVE_GROSS, net > gross)
            .when(UNCORRECTED, !conditions)
            .when(BAROMETER_TAKEN, barometer & altitude)
            .when(RATIO_UNUSUAL, given(ratio) & !(1.05..=1.2).contains(&ratio))
            .when(VALUE_OF_THE_FUEL, fuel & !given(gross) & !given(net))
            .when(OTHER_BASIS_BY_THE_FUEL, fuel & (given(gross) != given(net)))
            .when(PLATE_WITHOUT_VALUE, gross_plate_alone | net_plate_alone)
    }

    #[inline]
    fn review(&self, _: &GasRateReading, output: &GasRateResult) -> Raised {
        let far = |share: f64| !share.is_nan() & !(0.5..=1.3).contains(&share);
        Raised::NONE.when(FAR_FROM_PLATE, far(output.share_of_plate_gross.si()) | far(output.share_of_plate_net.si()))
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &GasRateReading, working: &mut W) -> GasRateResult {
        let (dial_volume, revolutions) = (input.dial_volume.plain(), input.revolutions);
        let shown_volume = if !revolutions.si().is_nan() {
            step!(working, let shown_volume: "V" in CUBIC_METRE = revolutions * dial_volume, "definition");
            shown_volume
        } else if !input.index_end.si().is_nan() {
            let index_unit = Volume::from_si(self.index_unit.map_or(f64::NAN, IndexUnit::volume));
            step!(working, let shown_volume: "V" in CUBIC_METRE = (input.index_end - input.index_start) * index_unit, "definition");
            shown_volume
        } else {
            input.volume.plain()
        };
        step!(working, let volume: "V_m" in CUBIC_METRE = shown_volume / (1.0 + input.meter_error.value), "definition of the error of a meter");
        step!(working, let gas_rate: "\\dot V" in CUBIC_METRE_PER_HOUR = volume / input.time, "definition");

        let barometric_pressure = if input.barometric_pressure.si().is_nan() {
            let by_altitude = self.altitude_rule.pressure(input.altitude.si());
            step!(working, let barometric_pressure: "p_b" in MILLIBAR = Pressure::from_si(by_altitude), self.altitude_rule.source());
            barometric_pressure
        } else {
            input.barometric_pressure.plain()
        };
        let gas_pressure = input.gas_pressure.plain();
        let reference_pressure = Pressure::from_si(self.reference.metering_pressure);
        let reference_temperature = ThermodynamicTemperature::from_si(self.reference.metering_temperature);
        step!(working, let pressure: "p" in MILLIBAR = gas_pressure + barometric_pressure, "definition");
        let of_fuel = self.fuel.as_ref().map_or(1.0, |gas| gas.compression_ratio(pressure.si(), input.gas_temperature.si()));
        let compression_ratio = or(input.compression_ratio.si(), of_fuel);
        step!(working, let conversion_factor: "C" = pressure / reference_pressure * (reference_temperature / input.gas_temperature) * compression_ratio, "gas law, as ISO 13443");
        step!(working, let reference_gas_rate: "\\dot V_{ref}" in CUBIC_METRE_PER_HOUR = gas_rate * conversion_factor, "definition");

        let (gross_value, net_value) = self.calorific_values(input);
        let gross_calorific_value = if input.gross_calorific_value.si().is_nan() {
            step!(working, let gross_calorific_value: "H_s" in MEGAJOULE_PER_CUBIC_METRE = Pressure::from_si(gross_value), "ISO 6976:2016, composition of the fuel");
            gross_calorific_value
        } else {
            input.gross_calorific_value.plain()
        };
        let net_calorific_value = if input.net_calorific_value.si().is_nan() {
            step!(working, let net_calorific_value: "H_i" in MEGAJOULE_PER_CUBIC_METRE = Pressure::from_si(net_value), "ISO 6976:2016, composition of the fuel");
            net_calorific_value
        } else {
            input.net_calorific_value.plain()
        };
        step!(working, let uncorrected_gross: "\\dot Q_{s,0}" in KILOWATT = gas_rate * gross_calorific_value, "definition");
        step!(working, let uncorrected_net: "\\dot Q_{i,0}" in KILOWATT = gas_rate * net_calorific_value, "definition");
        step!(working, let gross: "\\dot Q_s" in KILOWATT = reference_gas_rate * gross_calorific_value, "definition");
        step!(working, let net: "\\dot Q_i" in KILOWATT = reference_gas_rate * net_calorific_value, "definition");
        let (plate_heat_input_gross, plate_heat_input_net) = (input.plate_heat_input_gross.plain(), input.plate_heat_input_net.plain());
        let best = |corrected: Power, uncorrected: Power| Power::from_si(or(corrected.si(), uncorrected.si()));
        let (heat_input_gross, heat_input_net) = (best(gross, uncorrected_gross), best(net, uncorrected_net));
        step!(working, let share_of_plate_gross: "\\beta_s" in PERCENT = heat_input_gross / plate_heat_input_gross, "definition");
        step!(working, let share_of_plate_net: "\\beta_i" in PERCENT = heat_input_net / plate_heat_input_net, "definition");
        GasRateResult {
            volume: GasVolume::new(volume),
            gas_rate: GasFlow::new(gas_rate),
            atmospheric_pressure: AbsolutePressure::new(barometric_pressure),
            conversion_factor,
            reference_gas_rate: GasFlow::new(VolumeRate::from_si(reference_gas_rate.si())),
            heat_input_gross: HeatInput::new(gross),
            heat_input_net: HeatInput::new(net),
            uncorrected_heat_input_gross: HeatInput::new(uncorrected_gross),
            uncorrected_heat_input_net: HeatInput::new(uncorrected_net),
            uncorrected_error: Ratio::from_si(1.0 / conversion_factor.si() - 1.0),
            gross_over_net: gross_calorific_value / net_calorific_value,
            share_of_plate_gross: Efficiency::new(share_of_plate_gross),
            share_of_plate_net: Efficiency::new(share_of_plate_net),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::node::Node;
    use crate::record::Record;
    use crate::supply::trade::{Inputs, check};
    use std::string::{String, ToString};

    const FILE: &str = "trade/gas_rate.csv";

    fn reading(i: &Inputs) -> GasRateReading {
        let some = |name: &str| i.maybe(name).unwrap_or(f64::NAN);
        GasRateReading {
            volume: GasVolume::from_si(some("V")),
            dial_volume: GasVolume::from_si(some("dial")),
            revolutions: Ratio::from_si(some("revolutions")),
            time: Time::from_si(some("t")),
            gas_pressure: GaugePressure::from_si(some("p_gauge")),
            gas_temperature: ThermodynamicTemperature::from_si(some("T_gas")),
            barometric_pressure: AbsolutePressure::from_si(some("p_atm")),
            altitude: Length::from_si(some("h")),
            gross_calorific_value: CalorificValue::from_si(some("Hs")),
            net_calorific_value: CalorificValue::from_si(some("Hi")),
            ..GasRateReading::unset()
        }
    }

    fn rate(calculation: &GasRate, reading: &GasRateReading) -> GasRateResult {
        calculation.evaluate(reading).unwrap_or_else(|e| panic!("{e}")).output
    }

    #[test]
    fn uncorrected_rates_agree() {
        for (kind, count) in
            [("metric_uncorrected", 20), ("imperial_dial_uncorrected", 20), ("published_engineer_note", 3), ("published_US", 8)]
        {
            let checked = check(FILE, kind, |i, output| {
                let mut reading = reading(i);
                if let Some(ratio) = i.maybe("gross_over_net") {
                    reading.net_calorific_value = CalorificValue::from_si(i.si("Hs") / ratio);
                }
                if output == "wrong_if_ft3_read_as_m3" {
                    // the slip that typed volumes prevent, made on purpose
                    reading.dial_volume = GasVolume::from_si(i.si("dial") / (0.3048 * 0.3048 * 0.3048));
                }
                let got = rate(&GasRate::default(), &reading);
                assert!(got.heat_input_gross.si().is_nan(), "nothing was measured to convert with");
                match output {
                    "volume_rate" | "volume_rate_ft3" => got.gas_rate.si(),
                    "heat_input_gross" | "heat_input_gross_btu" | "wrong_if_ft3_read_as_m3" => got.uncorrected_heat_input_gross.si(),
                    "heat_input_net" => got.uncorrected_heat_input_net.si(),
                    "gross_over_net" => got.gross_over_net.si(),
                    other => panic!("{other}"),
                }
            });
            assert_eq!(checked, count, "{kind}");
        }
    }

    #[test]
    fn corrected_rates_agree() {
        for (kind, count) in
            [("corrected_15C_1013.25", 30), ("US_corrected", 12), ("DE_state_number", 8), ("UK_conversion_factor_from_altitude", 8)]
        {
            let checked = check(FILE, kind, |i, output| {
                let mut calculation = GasRate::default();
                let mut reading = reading(i);
                if let (Some(temperature), Some(pressure)) = (i.maybe("T_base"), i.maybe("p_base")) {
                    calculation.reference.metering_temperature = temperature;
                    calculation.reference.metering_pressure = pressure;
                }
                if let Some(rate) = i.maybe("V_rate") {
                    calculation.reference = ReferenceConditions::at_celsius(25.0, 0.0);
                    // a value per normal cubic metre carries its reference in the unit's name
                    let per_normal = |name: &str| i.0[name].0.parse::<f64>().unwrap() * 3.6e6;
                    reading.gross_calorific_value = CalorificValue::from_si(per_normal("Hs_n"));
                    reading.net_calorific_value = CalorificValue::from_si(per_normal("Hi_n"));
                    reading.volume = GasVolume::from_si(rate * 600.0);
                    reading.time = Time::from_si(600.0);
                }
                if i.maybe("h").is_some() {
                    calculation.altitude_rule = AltitudeRule::Uk1996;
                    reading.volume = GasVolume::from_si(0.1);
                    reading.time = Time::from_si(100.0);
                }
                let got = rate(&calculation, &reading);
                match output {
                    "conversion_factor" | "state_number" => got.conversion_factor.si(),
                    "volume_rate_meter" | "volume_rate_ft3" => got.gas_rate.si(),
                    "volume_rate_ref" | "volume_rate_n" => got.reference_gas_rate.si(),
                    "heat_input_gross" | "heat_input_gross_btu" => got.heat_input_gross.si(),
                    "heat_input_net" => got.heat_input_net.si(),
                    "error_if_uncorrected" => got.uncorrected_error.si(),
                    "pressure_deduction" => 101_325.0 - got.atmospheric_pressure.si(),
                    other => panic!("{other}"),
                }
            });
            assert_eq!(checked, count, "{kind}");
        }
    }

    fn by_name(pairs: &[(&str, &str)]) -> Result<crate::catalogue::Outcome, String> {
        let table = pairs.iter().map(|(name, value)| ((*name).to_string(), Node::from(*value))).collect();
        evaluate("gas_rate", &Node::Table(table), Bare::Refused).map_err(|e| e.to_string())
    }

    #[test]
    fn the_three_ways_to_read_a_volume_agree() {
        let rest = [("time", "2 min 5 s"), ("gross_calorific_value", "39.5 MJ/m3")];
        let direct = by_name(&[&[("volume", "10 ft3")], &rest[..]].concat()).unwrap();
        let dial = by_name(&[&[("dial_volume", "2 ft3"), ("revolutions", "5")], &rest[..]].concat()).unwrap();
        let index =
            by_name(&[&[("index_unit", "100 ft3"), ("index_start", "1234.5"), ("index_end", "1234.6")], &rest[..]].concat()).unwrap();
        for name in ["gas_rate", "uncorrected_heat_input_gross"] {
            let wanted = direct.get(name).unwrap();
            assert!((dial.get(name).unwrap() / wanted - 1.0).abs() < 1e-12);
            assert!((index.get(name).unwrap() / wanted - 1.0).abs() < 1e-9);
        }
        assert!(direct.notices.iter().any(|n| n.code == "UNCORRECTED"));
    }

    #[test]
    fn slips_are_refused_or_noticed() {
        let base =
            [("volume", "0.1 m3"), ("time", "125 s"), ("gross_calorific_value", "39.5 MJ/m3"), ("net_calorific_value", "35.6 MJ/m3")];
        let with = |more: &[(&str, &str)]| by_name(&[&base[..], more].concat());
        for (more, wanted) in [
            (&[("dial_volume", "1 ft3"), ("revolutions", "1")][..], "in one way only"),
            (&[("dial_volume", "1 ft3")], "in one way only"),
            (&[("index_start", "1"), ("index_end", "2")], "in one way only"),
            (&[("gas_pressure", "21 mbar")], "go together"),
            (&[("gas_pressure", "1034 mbar"), ("gas_temperature", "12 °C"), ("altitude", "60 m")], "is this absolute pressure"),
            (&[("gas_pressure", "1034 mbar(a)")], "absolute basis"),
            (&[("barometric_pressure", "1005 mbar(g)")], "gauge basis"),
            (&[("plate_heat_input_net", "28 kW gross")], "gross basis"),
            (&[("plate_heat_input_net", "28")], "no unit"),
        ] {
            let message = with(more).err().unwrap_or_default();
            assert!(message.contains(wanted), "{more:?}: {message}");
        }
        for (pairs, wanted) in [
            (&[("time", "100 s")][..], "dial_volume with revolutions"),
            (&[("time", "1:30"), ("volume", "0.1 m3")], "2 min 5 s"),
            (&[("time", "100 s"), ("revolutions", "2")], "dial_volume with revolutions"),
            (&[("time", "100 s"), ("index_start", "1"), ("index_end", "2")], "index_unit"),
            (&[("time", "100 s"), ("index_start", "2"), ("index_end", "1"), ("index_unit", "m3")], "passed zero"),
            (&[("time", "100 s"), ("volume", "0.1")], "no unit"),
            (&[("time", "100 s"), ("volume", "0.1 m3"), ("index_unit", "ccf")], "not known"),
        ] {
            let message = by_name(pairs).err().unwrap_or_default();
            assert!(message.contains(wanted), "{pairs:?}: {message}");
        }
        let swapped =
            by_name(&[("volume", "0.1 m3"), ("time", "125 s"), ("gross_calorific_value", "35 MJ/m3"), ("net_calorific_value", "39 MJ/m3")]);
        assert!(swapped.err().unwrap().contains("swapped"));
        let noticed = |more: &[(&str, &str)], code: &str| with(more).unwrap().notices.iter().any(|n| n.code == code);
        assert!(noticed(&[("plate_heat_input_net", "280 kW")], "FAR_FROM_PLATE"));
        assert!(!noticed(&[("plate_heat_input_net", "28 kW")], "FAR_FROM_PLATE"));
        let conditions =
            [("gas_pressure", "21 mbar"), ("gas_temperature", "12 °C"), ("barometric_pressure", "1005 mbar"), ("altitude", "60 m")];
        assert!(noticed(&conditions, "BAROMETER_TAKEN") && !noticed(&conditions, "UNCORRECTED"));
    }

    #[test]
    fn the_plate_is_compared_on_its_own_basis() {
        let got = by_name(&[
            ("volume", "0.1 m3"),
            ("time", "125 s"),
            ("gross_calorific_value", "39.5 MJ/m3"),
            ("net_calorific_value", "35.6 MJ/m3"),
            ("plate_heat_input_net", "28.48 kW"),
        ])
        .unwrap();
        assert!((got.get("share_of_plate_net").unwrap() - 1.0).abs() < 1e-12);
        assert!(got.get("share_of_plate_gross").unwrap().is_nan());
    }

    #[test]
    fn a_fuel_gives_what_is_not_stated() {
        let reading = [
            ("volume", "0.1 m3"),
            ("time", "125 s"),
            ("gas_pressure", "21 mbar"),
            ("gas_temperature", "5 °C"),
            ("barometric_pressure", "1005 mbar"),
        ];
        let with = |more: &[(&str, &str)]| by_name(&[&reading[..], more].concat()).unwrap();
        let (bare, fuelled) = (with(&[]), with(&[("fuel", "G20")]));
        // Z of methane: 0.99802 at 15 °C and 1013.25 mbar; 1 - 1.0126 × 0.0474² = 0.99772 in the meter
        let ratio = fuelled.get("conversion_factor").unwrap() / bare.get("conversion_factor").unwrap();
        assert!((ratio - 0.998_018 / 0.997_72).abs() < 1e-5, "{ratio}");
        assert!(fuelled.notices.iter().any(|n| n.code == "VALUE_OF_THE_FUEL"));
        let heat = fuelled.get("heat_input_gross").unwrap() / fuelled.get("reference_gas_rate").unwrap();
        assert!((heat / 37.7791e6 - 1.0).abs() < 1e-5, "{heat}");
        let stated = with(&[("fuel", "G20"), ("gross_calorific_value", "39.5 MJ/m3")]);
        assert!(stated.notices.iter().any(|n| n.code == "OTHER_BASIS_BY_THE_FUEL"));
        let net = stated.get("heat_input_net").unwrap() / stated.get("reference_gas_rate").unwrap();
        assert!((net / (39.5e6 * 34.013_443 / 37.779_107) - 1.0).abs() < 1e-6, "{net}");
        let fixed = with(&[("fuel", "G20"), ("compression_ratio", "1")]);
        assert_eq!(fixed.get("conversion_factor"), bare.get("conversion_factor"));
        let oil = by_name(&[&reading[..], &[("fuel", "gas oil")]].concat());
        assert!(oil.err().unwrap().contains("does not pass a gas meter"));
    }

    #[test]
    fn a_meter_that_shows_too_much_has_let_less_through() {
        let shown = by_name(&[("volume", "0.102 m3"), ("time", "100 s"), ("meter_error", "2 %")]).unwrap();
        assert!((shown.get("volume").unwrap() - 0.1).abs() < 1e-15);
    }

    /// A foot is 0.3048 m, so a hundred cubic feet are 2.831 684 659 2 m³.
    #[test]
    fn an_index_counts_what_it_says() {
        for (unit, volume) in [
            ("m3", 1.0),
            ("L", 1e-3),
            ("ft3", 0.028_316_846_592),
            ("10 ft3", 0.283_168_465_92),
            ("100 ft3", 2.831_684_659_2),
            ("1000 ft3", 28.316_846_592),
        ] {
            let given = crate::node::Node::from([
                ("index_unit", unit),
                ("index_start", "10"),
                ("index_end", "12"),
                ("time", "1 h"),
                ("fuel", "G20"),
                ("net_calorific_value", "34 MJ/m3"),
            ]);
            let rate = crate::catalogue::evaluate("gas_rate", &given, crate::catalogue::Bare::Si).unwrap();
            assert!((rate.get("volume").unwrap() / (2.0 * volume) - 1.0).abs() < 1e-12, "{unit}");
            // The gross value follows from the net one by the ratio of methane, 891.51 to 802.648 kJ/mol (ISO 6976:2016 Table 3).
            assert!((rate.get("gross_over_net").unwrap() - 891.51 / 802.648).abs() < 1e-6, "{unit}");
        }
    }
}
