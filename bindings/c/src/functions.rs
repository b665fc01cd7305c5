//! Generated from the catalogue by `cargo xtask generate`: do not edit.
#![allow(missing_docs, reason = "one line of the field's own words is enough")]

use crate::call::fw_notices;
use crate::context::{Face, fw_context};
use crate::status::fw_status;
use std::ptr::null;

/// Volume, SI.
pub type fw_cubic_metre = f64;

/// Volume (at reference conditions), SI.
pub type fw_cubic_metre_at_reference_conditions = f64;

/// Volume (at the meter), SI.
pub type fw_cubic_metre_at_the_meter = f64;

/// Volume flow, SI.
pub type fw_cubic_metre_per_second = f64;

/// Volume flow (at reference conditions), SI.
pub type fw_cubic_metre_per_second_at_reference_conditions = f64;

/// Volume flow (at the meter), SI.
pub type fw_cubic_metre_per_second_at_the_meter = f64;

/// Energy, SI.
pub type fw_joule = f64;

/// Energy per volume (gross), SI.
pub type fw_joule_per_cubic_metre_gross = f64;

/// Energy per volume (net), SI.
pub type fw_joule_per_cubic_metre_net = f64;

/// Heat capacity, SI.
pub type fw_joule_per_kelvin = f64;

/// Energy per mass, SI.
pub type fw_joule_per_kilogram = f64;

/// Energy per mass (gross), SI.
pub type fw_joule_per_kilogram_gross = f64;

/// Specific heat capacity, SI.
pub type fw_joule_per_kilogram_kelvin = f64;

/// Energy per mass (net), SI.
pub type fw_joule_per_kilogram_net = f64;

/// Heat capacity per length, SI.
pub type fw_joule_per_metre_kelvin = f64;

/// Molar energy (gross), SI.
pub type fw_joule_per_mole_gross = f64;

/// Molar energy (net), SI.
pub type fw_joule_per_mole_net = f64;

/// Temperature, SI.
pub type fw_kelvin = f64;

/// Temperature difference, SI.
pub type fw_kelvin_difference = f64;

/// Mass, SI.
pub type fw_kilogram = f64;

/// Density, SI.
pub type fw_kilogram_per_cubic_metre = f64;

/// Mass per length, SI.
pub type fw_kilogram_per_metre = f64;

/// Molar mass, SI.
pub type fw_kilogram_per_mole = f64;

/// Mass flow, SI.
pub type fw_kilogram_per_second = f64;

/// Length, SI.
pub type fw_metre = f64;

/// Length (both-limbs), SI.
pub type fw_metre_both_limbs = f64;

/// Thermal resistance of a length, SI.
pub type fw_metre_kelvin_per_watt = f64;

/// Length (one-limb), SI.
pub type fw_metre_one_limb = f64;

/// Velocity, SI.
pub type fw_metre_per_second = f64;

/// Acceleration, SI.
pub type fw_metre_per_second_squared = f64;

/// Amount of substance, SI.
pub type fw_mole = f64;

/// Electrical resistance, SI.
pub type fw_ohm = f64;

/// Pressure, SI.
pub type fw_pascal = f64;

/// Pressure (absolute), SI.
pub type fw_pascal_absolute = f64;

/// Pressure (gauge), SI.
pub type fw_pascal_gauge = f64;

/// Pressure per temperature difference, SI.
pub type fw_pascal_per_kelvin = f64;

/// Pressure per length, SI.
pub type fw_pascal_per_metre = f64;

/// Dynamic viscosity, SI.
pub type fw_pascal_second = f64;

/// Coefficient per kelvin, SI.
pub type fw_per_kelvin = f64;

/// Rate, SI.
pub type fw_per_second = f64;

/// Angle, SI.
pub type fw_radian = f64;

/// Ratio, SI.
pub type fw_ratio = f64;

/// Time, SI.
pub type fw_second = f64;

/// Area, SI.
pub type fw_square_metre = f64;

/// Electric potential, SI.
pub type fw_volt = f64;

/// Electric potential per temperature difference, SI.
pub type fw_volt_per_kelvin = f64;

/// Power, SI.
pub type fw_watt = f64;

/// Power (gross), SI.
pub type fw_watt_gross = f64;

/// Power (net), SI.
pub type fw_watt_net = f64;

/// Thermal conductance, SI.
pub type fw_watt_per_kelvin = f64;

/// Heat flow per length, SI.
pub type fw_watt_per_metre = f64;

/// Thermal conductivity, SI.
pub type fw_watt_per_metre_kelvin = f64;

/// Heat loss per length and kelvin, SI.
pub type fw_watt_per_metre_kelvin_of_length = f64;

/// Heat transfer coefficient, SI.
pub type fw_watt_per_square_metre_kelvin = f64;

/// What goes into fw_fuel_properties.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_fuel_properties_input {
    /// Temperature at which the fuel is taken to burn; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    /// 288.15 (15 °C).
    pub combustion_temperature: fw_kelvin,
    /// Temperature at which the volume of a gas is taken; allowed 273.15 to 293.15 (0 °C to 20 °C); default
    /// 288.15 (15 °C).
    pub metering_temperature: fw_kelvin,
    /// Absolute pressure at which the volume of a gas is taken; allowed 60000 to 120000 (60 kPa to 120
    /// kPa); usually 90000 to 110000 (90 kPa to 110 kPa); default 101325 (101.325 kPa).
    pub metering_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_fuel_properties_input>() == 3 * size_of::<f64>());

/// What comes out of fw_fuel_properties.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_fuel_properties_output {
    /// Molar mass; NaN means: not a gas.
    pub molar_mass: fw_kilogram_per_mole,
    /// Compression factor at metering conditions; NaN means: not a gas.
    pub compression_factor: fw_ratio,
    /// Density at metering conditions; NaN means: not a gas.
    pub density: fw_kilogram_per_cubic_metre,
    /// Density the gas would have at metering conditions if it were ideal; NaN means: not a gas.
    pub ideal_density: fw_kilogram_per_cubic_metre,
    /// Density over that of dry air, both real and at metering conditions; NaN means: not a gas.
    pub relative_density: fw_ratio,
    /// Molar mass over that of dry air: relative density of ideal gases; NaN means: not a gas.
    pub ideal_relative_density: fw_ratio,
    /// Gross calorific value per volume; NaN means: not a gas.
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Net calorific value per volume; NaN means: not a gas.
    pub net_calorific_value: fw_joule_per_cubic_metre_net,
    /// Gross Wobbe index; NaN means: not a gas.
    pub gross_wobbe_index: fw_joule_per_cubic_metre_gross,
    /// Net Wobbe index; NaN means: not a gas.
    pub net_wobbe_index: fw_joule_per_cubic_metre_net,
    /// Gross calorific value per amount of substance; NaN means: not a gas.
    pub gross_molar_calorific_value: fw_joule_per_mole_gross,
    /// Net calorific value per amount of substance; NaN means: not a gas.
    pub net_molar_calorific_value: fw_joule_per_mole_net,
    /// Gross calorific value per mass.
    pub gross_mass_calorific_value: fw_joule_per_kilogram_gross,
    /// Net calorific value per mass.
    pub net_mass_calorific_value: fw_joule_per_kilogram_net,
    /// Gross calorific value over net; NaN means: the gas gives no heat.
    pub gross_over_net: fw_ratio,
}
const _: () = assert!(size_of::<fw_fuel_properties_output>() == 15 * size_of::<f64>());

static FUEL_PROPERTIES: Face = Face::new("fuel_properties");

/// Properties of a fuel by name or composition.
///
/// What gas_properties gives, for a test gas by its letters, a composition by names, a hydrogen blend
/// or LPG mix, at reference conditions that may vary; for a liquid or solid fuel its calorific values
/// per mass at 25 °C.
///
/// Accuracy: As the standard: about 0.05 % in calorific value from the tables alone (k = 2) for natural
/// gas; the analysis itself usually decides. Compression factors hold from 90 kPa to 110 kPa and are
/// less good for gases rich in butane, heavier parts or hydrogen.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value, default G20); `edition` (Edition of ISO 6976: 2016, or 1995, on which EN 437
/// and older contracts rest, one of 2016, 1995, default 2016); NULL takes every default.
///
/// Source: ISO 6976:2016, tables 1 to 3 and annex A (read in a public transcription, checked against
/// its annex D) (all values of the edition of 2016).
///
/// Source: ISO 6976:1995 (read in a public data file, checked against the edition of 2016 and EN 437)
/// (all values of the edition of 1995).
///
/// Source: our choice (straight lines between the tabulated temperatures).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_fuel_properties(
    context: *const fw_context,
    input: *const fw_fuel_properties_input,
    output: *mut fw_fuel_properties_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FUEL_PROPERTIES.evaluate::<3, 15>(context, input.cast(), output.cast(), notices) }
}

/// fw_fuel_properties over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_fuel_properties_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_fuel_properties_input,
    input_stride: usize,
    outputs: *mut fw_fuel_properties_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FUEL_PROPERTIES.batch::<3, 15>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_fuel_properties into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_fuel_properties_unset(input: *mut fw_fuel_properties_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FUEL_PROPERTIES.unset::<3>(input.cast()) }
}

/// What goes into fw_gas_properties.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_properties_input {
    /// Mole fraction of methane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub methane: fw_ratio,
    /// Mole fraction of ethane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub ethane: fw_ratio,
    /// Mole fraction of propane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub propane: fw_ratio,
    /// Mole fraction of n-butane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub n_butane: fw_ratio,
    /// Mole fraction of isobutane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub isobutane: fw_ratio,
    /// Mole fraction of n-pentane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub n_pentane: fw_ratio,
    /// Mole fraction of isopentane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub isopentane: fw_ratio,
    /// Mole fraction of neopentane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub neopentane: fw_ratio,
    /// Mole fraction of n-hexane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub n_hexane: fw_ratio,
    /// Mole fraction of n-heptane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub n_heptane: fw_ratio,
    /// Mole fraction of n-octane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub n_octane: fw_ratio,
    /// Mole fraction of n-nonane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub n_nonane: fw_ratio,
    /// Mole fraction of n-decane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub n_decane: fw_ratio,
    /// Mole fraction of ethene; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub ethene: fw_ratio,
    /// Mole fraction of propene; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub propene: fw_ratio,
    /// Mole fraction of hydrogen; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub hydrogen: fw_ratio,
    /// Mole fraction of carbon monoxide; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub carbon_monoxide: fw_ratio,
    /// Mole fraction of nitrogen; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub nitrogen: fw_ratio,
    /// Mole fraction of carbon dioxide; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub carbon_dioxide: fw_ratio,
    /// Mole fraction of oxygen; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub oxygen: fw_ratio,
    /// Mole fraction of helium; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub helium: fw_ratio,
    /// Mole fraction of argon; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub argon: fw_ratio,
    /// Mole fraction of water; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub water: fw_ratio,
    /// Mole fraction of hydrogen sulphide; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub hydrogen_sulphide: fw_ratio,
}
const _: () = assert!(size_of::<fw_gas_properties_input>() == 24 * size_of::<f64>());

/// What comes out of fw_gas_properties.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_properties_output {
    /// Molar mass; NaN means: not a gas.
    pub molar_mass: fw_kilogram_per_mole,
    /// Compression factor at metering conditions; NaN means: not a gas.
    pub compression_factor: fw_ratio,
    /// Density at metering conditions; NaN means: not a gas.
    pub density: fw_kilogram_per_cubic_metre,
    /// Density the gas would have at metering conditions if it were ideal; NaN means: not a gas.
    pub ideal_density: fw_kilogram_per_cubic_metre,
    /// Density over that of dry air, both real and at metering conditions; NaN means: not a gas.
    pub relative_density: fw_ratio,
    /// Molar mass over that of dry air: relative density of ideal gases; NaN means: not a gas.
    pub ideal_relative_density: fw_ratio,
    /// Gross calorific value per volume; NaN means: not a gas.
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Net calorific value per volume; NaN means: not a gas.
    pub net_calorific_value: fw_joule_per_cubic_metre_net,
    /// Gross Wobbe index; NaN means: not a gas.
    pub gross_wobbe_index: fw_joule_per_cubic_metre_gross,
    /// Net Wobbe index; NaN means: not a gas.
    pub net_wobbe_index: fw_joule_per_cubic_metre_net,
    /// Gross calorific value per amount of substance; NaN means: not a gas.
    pub gross_molar_calorific_value: fw_joule_per_mole_gross,
    /// Net calorific value per amount of substance; NaN means: not a gas.
    pub net_molar_calorific_value: fw_joule_per_mole_net,
    /// Gross calorific value per mass.
    pub gross_mass_calorific_value: fw_joule_per_kilogram_gross,
    /// Net calorific value per mass.
    pub net_mass_calorific_value: fw_joule_per_kilogram_net,
    /// Gross calorific value over net; NaN means: the gas gives no heat.
    pub gross_over_net: fw_ratio,
}
const _: () = assert!(size_of::<fw_gas_properties_output>() == 15 * size_of::<f64>());

static GAS_PROPERTIES: Face = Face::new("gas_properties");

/// Properties of a gas from its analysis.
///
/// Molar mass, compression factor, density, calorific values and Wobbe indices of a gas mixture at any
/// reference conditions, from the mole fraction of each component.
///
/// Accuracy: As the standard: about 0.05 % in calorific value from the tables alone (k = 2) for natural
/// gas; the analysis itself usually decides. Compression factors hold from 90 kPa to 110 kPa and are
/// less good for gases rich in butane, heavier parts or hydrogen.
///
/// The context holds the settings `edition` (Edition of ISO 6976: 2016, or 1995, on which EN 437 and
/// older contracts rest, one of 2016, 1995, default 2016); `reference` (Combustion and metering
/// reference conditions: two temperatures in °C such as 15/15 or 25/0 (at 101.325 kPa), "60 °F, 14.73
/// psi", or a table of both temperatures and the pressure. Tables reach from 0 °C to 25 °C for
/// combustion and 0 °C to 20 °C for metering, default 15/15); `normalise` (Divide the fractions by
/// their sum; otherwise a sum that is not 100 % is refused, default false); NULL takes every default.
///
/// Source: ISO 6976:2016, tables 1 to 3 and annex A (read in a public transcription, checked against
/// its annex D) (all values of the edition of 2016).
///
/// Source: ISO 6976:1995 (read in a public data file, checked against the edition of 2016 and EN 437)
/// (all values of the edition of 1995).
///
/// Source: our choice (straight lines between the tabulated temperatures).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_properties(
    context: *const fw_context,
    input: *const fw_gas_properties_input,
    output: *mut fw_gas_properties_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PROPERTIES.evaluate::<24, 15>(context, input.cast(), output.cast(), notices) }
}

/// fw_gas_properties over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_properties_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_gas_properties_input,
    input_stride: usize,
    outputs: *mut fw_gas_properties_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PROPERTIES.batch::<24, 15>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_properties into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_properties_unset(input: *mut fw_gas_properties_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PROPERTIES.unset::<24>(input.cast()) }
}

/// What goes into fw_atmospheric_pressure.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_atmospheric_pressure_input {
    /// Height above mean sea level; allowed -500 to 5000; usually -5 to 2500.
    pub altitude: fw_metre,
}
const _: () = assert!(size_of::<fw_atmospheric_pressure_input>() == 1 * size_of::<f64>());

/// What comes out of fw_atmospheric_pressure.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_atmospheric_pressure_output {
    /// Pressure of the standard atmosphere.
    pub standard_pressure: fw_pascal_absolute,
    /// What UK billing law of 1996 deducts from 1013.25 mbar, in proportion to the altitude; NaN means: the
    /// table begins at sea level.
    pub uk_deduction: fw_pascal,
    /// The deduction of the band of 2.5 m in which the altitude lies; NaN means: the table begins at sea
    /// level.
    pub uk_band_deduction: fw_pascal,
    /// 1013.25 mbar less the deduction in proportion; NaN means: the table begins at sea level.
    pub uk_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_atmospheric_pressure_output>() == 4 * size_of::<f64>());

static ATMOSPHERIC_PRESSURE: Face = Face::new("atmospheric_pressure");

/// Atmospheric pressure from altitude.
///
/// The pressure of the standard atmosphere at an altitude, and what UK billing law deducts for it.
///
/// Accuracy: As the formulas. The weather moves the true barometer about either by up to 4 %: read one
/// where it matters.
///
/// Source: ISO 2533:1975, troposphere formula (constants from memory) (standard atmosphere).
///
/// Source: Gas (Calculation of Thermal Energy) Regulations 1996 (SI 1996/439), Schedule Part I, read in
/// a public text copy (deduction of 0.120 205 mbar a metre).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_atmospheric_pressure(
    input: *const fw_atmospheric_pressure_input,
    output: *mut fw_atmospheric_pressure_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ATMOSPHERIC_PRESSURE.evaluate::<1, 4>(null(), input.cast(), output.cast(), notices) }
}

/// fw_atmospheric_pressure over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_atmospheric_pressure_batch(
    rows: usize,
    inputs: *const fw_atmospheric_pressure_input,
    input_stride: usize,
    outputs: *mut fw_atmospheric_pressure_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ATMOSPHERIC_PRESSURE.batch::<1, 4>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_atmospheric_pressure into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_atmospheric_pressure_unset(input: *mut fw_atmospheric_pressure_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ATMOSPHERIC_PRESSURE.unset::<1>(input.cast()) }
}

/// What goes into fw_gas_rate.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_rate_input {
    /// Volume that passed, as the meter shows it; allowed 1e-5 to 1000; usually 0.005 to 5; NaN means: not
    /// read as such.
    pub volume: fw_cubic_metre_at_the_meter,
    /// Volume of one revolution of the test dial; allowed 1e-5 to 10; usually 0.005 to 0.3; NaN means: no
    /// test dial used.
    pub dial_volume: fw_cubic_metre_at_the_meter,
    /// Revolutions of the test dial; allowed 0.01 to 1000; usually 0.5 to 20; NaN means: no test dial used.
    pub revolutions: fw_ratio,
    /// Index at the start, in the unit of the setting `index_unit`; allowed 0 to 1e9; NaN means: index not
    /// read.
    pub index_start: fw_ratio,
    /// Index at the end, in the unit of the setting `index_unit`; allowed 0 to 1e9; NaN means: index not
    /// read.
    pub index_end: fw_ratio,
    /// Duration of the test; allowed 1 to 3600; usually 20 to 1200.
    pub time: fw_second,
    /// Error of the meter: shown volume less true volume, over true volume; allowed -0.2 to 0.2 (-20 % to
    /// 20 %); usually -0.03 to 0.03 (-3 % to 3 %); default 0 (0 %).
    pub meter_error: fw_ratio,
    /// Gauge pressure of the gas in the meter; allowed 0 to 200000 (0 mbar to 2000 mbar); usually 500 to
    /// 7500 (5 mbar to 75 mbar); NaN means: not measured.
    pub gas_pressure: fw_pascal_gauge,
    /// Temperature of the gas in the meter; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 268.15 to
    /// 298.15 (-5 °C to 25 °C); NaN means: not measured.
    pub gas_temperature: fw_kelvin,
    /// Atmospheric pressure; allowed 60000 to 110000 (600 mbar to 1100 mbar); usually 95000 to 104000 (950
    /// mbar to 1040 mbar); NaN means: not measured.
    pub barometric_pressure: fw_pascal_absolute,
    /// Height above sea level, to stand in for a barometer; allowed -500 to 4000; usually -5 to 2500; NaN
    /// means: not stated.
    pub altitude: fw_metre,
    /// Compression factor of the gas at reference conditions over that in the meter; allowed 0.9 to 1.1;
    /// usually 0.99 to 1.01; default 1.
    pub compression_ratio: fw_ratio,
    /// Gross calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    /// usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³); NaN means: not stated.
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Net calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    /// usually 1e7 to 1.3e8 (10 MJ/m³ to 130 MJ/m³); NaN means: not stated.
    pub net_calorific_value: fw_joule_per_cubic_metre_net,
    /// Heat input of the appliance plate, where it is on the gross basis; allowed 10 to 1e8 (0.01 kW to
    /// 100000 kW); usually 1000 to 1000000 (1 kW to 1000 kW); NaN means: no plate on this basis.
    pub plate_heat_input_gross: fw_watt_gross,
    /// Heat input of the appliance plate, where it is on the net basis; allowed 10 to 1e8 (0.01 kW to
    /// 100000 kW); usually 1000 to 1000000 (1 kW to 1000 kW); NaN means: no plate on this basis.
    pub plate_heat_input_net: fw_watt_net,
}
const _: () = assert!(size_of::<fw_gas_rate_input>() == 16 * size_of::<f64>());

/// What comes out of fw_gas_rate.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_rate_output {
    /// Volume that passed, with the meter's error taken out.
    pub volume: fw_cubic_metre_at_the_meter,
    /// Volume flow as it passes the meter.
    pub gas_rate: fw_cubic_metre_per_second_at_the_meter,
    /// Atmospheric pressure taken; NaN means: neither measured nor stated by altitude.
    pub atmospheric_pressure: fw_pascal_absolute,
    /// Reference volume over volume in the meter (state number); NaN means: gas conditions not measured.
    pub conversion_factor: fw_ratio,
    /// Volume flow at reference conditions; NaN means: gas conditions not measured.
    pub reference_gas_rate: fw_cubic_metre_per_second_at_reference_conditions,
    /// Heat input on the gross basis, converted to reference conditions; NaN means: gas conditions or gross
    /// calorific value not known.
    pub heat_input_gross: fw_watt_gross,
    /// Heat input on the net basis, converted to reference conditions; NaN means: gas conditions or net
    /// calorific value not known.
    pub heat_input_net: fw_watt_net,
    /// Gross heat input as if the gas in the meter were at reference conditions; NaN means: gross calorific
    /// value not known.
    pub uncorrected_heat_input_gross: fw_watt_gross,
    /// Net heat input as if the gas in the meter were at reference conditions; NaN means: net calorific
    /// value not known.
    pub uncorrected_heat_input_net: fw_watt_net,
    /// What the uncorrected heat input is off the converted one; NaN means: gas conditions not measured.
    pub uncorrected_error: fw_ratio,
    /// Gross calorific value over net; NaN means: gross or net calorific value not known.
    pub gross_over_net: fw_ratio,
    /// Gross heat input over that of the plate; uncorrected where the gas conditions are not known; NaN
    /// means: no plate value or calorific value on the gross basis.
    pub share_of_plate_gross: fw_ratio,
    /// Net heat input over that of the plate; uncorrected where the gas conditions are not known; NaN
    /// means: no plate value or calorific value on the net basis.
    pub share_of_plate_net: fw_ratio,
}
const _: () = assert!(size_of::<fw_gas_rate_output>() == 13 * size_of::<f64>());

static GAS_RATE: Face = Face::new("gas_rate");

/// Gas rate and heat input.
///
/// Gas rate from a timed volume, test dial or index, converted to reference conditions, with the heat
/// input gross and net and its share of the appliance plate on the same basis.
///
/// Accuracy: Decided by the readings: see gas_rate_uncertainty. The compression factor left at 1 costs
/// at most 0.06 % for natural gas and 0.5 % for propane at ordinary conditions. Gas is taken as dry.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A gas rate that
/// agrees with the plate is no certificate.
///
/// Caution: Compare a heat input only with a plate on the same basis: gross is about a tenth above net
/// for natural gas.
///
/// The context holds the settings `reference` (Conditions at which the calorific values are stated and
/// to which the rate is converted: combustion and metering temperature in °C such as 15/15 or 25/0, "60
/// °F, 14.73 psi", or a table, default 15/15); `index_unit` (Unit that the index counts, needed only
/// where the index is read: there is no default, since a wrong guess is a factor of 10 to 100, one of
/// m3, L, ft3, 10 ft3, 100 ft3, 1000 ft3); `altitude_rule` (How an altitude stands in for a barometer:
/// the standard atmosphere, or the deduction of UK billing law of 1996, one of standard_atmosphere,
/// uk_1996, default standard_atmosphere); `medium_pressure` (Whether the meter is known to run above
/// 100 mbar; otherwise such a gas pressure is refused as a slip, default false); NULL takes every
/// default.
///
/// Source: common practice, no source (rate = volume / time; heat input = reference rate × calorific
/// value).
///
/// Source: ideal gas law with compression factors, as ISO 13443 and EN 12405 convert volumes (from
/// memory) (conversion factor).
///
/// Source: ISO 2533:1975, troposphere formula (constants from memory) (pressure by altitude).
///
/// Source: Gas (Calculation of Thermal Energy) Regulations 1996 (SI 1996/439), Schedule Part I, read in
/// a public text copy (pressure by altitude under UK billing law).
///
/// Source: International foot, 1959 (cubic foot).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_rate(
    context: *const fw_context,
    input: *const fw_gas_rate_input,
    output: *mut fw_gas_rate_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_RATE.evaluate::<16, 13>(context, input.cast(), output.cast(), notices) }
}

/// fw_gas_rate over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_rate_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_gas_rate_input,
    input_stride: usize,
    outputs: *mut fw_gas_rate_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_RATE.batch::<16, 13>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_rate into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_rate_unset(input: *mut fw_gas_rate_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_RATE.unset::<16>(input.cast()) }
}

/// What goes into fw_gas_rate_uncertainty.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_rate_uncertainty_input {
    /// Volume that passed; allowed 1e-5 to 1000; usually 0.005 to 5.
    pub volume: fw_cubic_metre_at_the_meter,
    /// Smallest step of the index or dial, which is read at the start and at the end; allowed 0 to 10;
    /// usually 0.0001 to 0.01.
    pub meter_resolution: fw_cubic_metre,
    /// Duration of the test; allowed 1 to 3600; usually 20 to 1200.
    pub time: fw_second,
    /// Uncertainty of each press of the stopwatch; allowed 0 to 10; usually 0.05 to 0.5; default 0.15.
    pub reaction_time_uncertainty: fw_second,
    /// Maximum permissible error of the meter, as a half-width; allowed 0 to 0.2 (0 % to 20 %); usually
    /// 0.005 to 0.04 (0.5 % to 4 %).
    pub maximum_permissible_error: fw_ratio,
    /// Gross calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    /// usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³).
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Uncertainty of the gross calorific value; allowed 0 to 5e7 (0 MJ/m³ to 50 MJ/m³); usually 0 to
    /// 2000000 (0 MJ/m³ to 2 MJ/m³); default 0 (0 MJ/m³).
    pub calorific_value_uncertainty: fw_joule_per_cubic_metre_gross,
    /// Gauge pressure of the gas in the meter; allowed 0 to 200000 (0 mbar to 2000 mbar); usually 500 to
    /// 7500 (5 mbar to 75 mbar); NaN means: not measured.
    pub gas_pressure: fw_pascal_gauge,
    /// Uncertainty of the gas pressure; allowed 0 to 10000 (0 mbar to 100 mbar); usually 0 to 500 (0 mbar
    /// to 5 mbar); default 0 (0 mbar).
    pub gas_pressure_uncertainty: fw_pascal,
    /// Atmospheric pressure; allowed 60000 to 110000 (600 mbar to 1100 mbar); usually 95000 to 104000 (950
    /// mbar to 1040 mbar); NaN means: not measured.
    pub barometric_pressure: fw_pascal_absolute,
    /// Uncertainty of the atmospheric pressure; allowed 0 to 20000 (0 mbar to 200 mbar); usually 0 to 3000
    /// (0 mbar to 30 mbar); default 0 (0 mbar).
    pub barometric_pressure_uncertainty: fw_pascal,
    /// Temperature of the gas in the meter; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 268.15 to
    /// 298.15 (-5 °C to 25 °C); NaN means: not measured.
    pub gas_temperature: fw_kelvin,
    /// Uncertainty of the gas temperature; allowed 0 to 30; usually 0 to 10; default 0.
    pub gas_temperature_uncertainty: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_gas_rate_uncertainty_input>() == 13 * size_of::<f64>());

/// What comes out of fw_gas_rate_uncertainty.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_rate_uncertainty_output {
    /// Heat input on the gross basis, uncorrected where the gas conditions were not measured.
    pub heat_input_gross: fw_watt_gross,
    /// Its standard uncertainty.
    pub standard_uncertainty: fw_watt,
    /// Its expanded uncertainty, k = 2.
    pub expanded_uncertainty: fw_watt,
    /// Standard uncertainty as a share of the heat input.
    pub relative_uncertainty: fw_ratio,
    /// The same without pressure and temperature of the gas: that of an uncorrected rate, which has an
    /// error besides.
    pub uncorrected_relative_uncertainty: fw_ratio,
    /// Share of the meter's resolution in the squared uncertainty; NaN means: no uncertainty at all.
    pub share_of_resolution: fw_ratio,
    /// Share of the stopwatch; NaN means: no uncertainty at all.
    pub share_of_timing: fw_ratio,
    /// Share of the meter's permissible error; NaN means: no uncertainty at all.
    pub share_of_meter: fw_ratio,
    /// Share of the calorific value; NaN means: no uncertainty at all.
    pub share_of_calorific_value: fw_ratio,
    /// Share of gas and atmospheric pressure; NaN means: no uncertainty at all.
    pub share_of_pressure: fw_ratio,
    /// Share of the gas temperature; NaN means: no uncertainty at all.
    pub share_of_temperature: fw_ratio,
}
const _: () = assert!(size_of::<fw_gas_rate_uncertainty_output>() == 11 * size_of::<f64>());

static GAS_RATE_UNCERTAINTY: Face = Face::new("gas_rate_uncertainty");

/// Uncertainty of a gas rate.
///
/// The uncertainty budget of a timed gas rate: resolution of the meter, reaction time, permissible
/// error, calorific value, pressure and temperature, to first order and independent of each other.
///
/// Accuracy: First order; within 0.2 % of a Monte Carlo calculation in the cases checked. The
/// distribution of the result is not normal where the resolution decides: use draws on gas_rate for its
/// limits.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A gas rate that
/// agrees with the plate is no certificate.
///
/// Caution: Compare a heat input only with a plate on the same basis: gross is about a tenth above net
/// for natural gas.
///
/// The context holds the settings `reference` (Conditions at which the calorific value is stated and to
/// which the rate is converted, default 15/15); NULL takes every default.
///
/// Source: JCGM 100:2008, clause 5.1 (combination of independent uncertainties).
///
/// Source: JCGM 100:2008, 4.3.7 (resolution and permissible error as rectangular distributions).
///
/// Source: common practice, no source (0.15 s for each press of a stopwatch).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_rate_uncertainty(
    context: *const fw_context,
    input: *const fw_gas_rate_uncertainty_input,
    output: *mut fw_gas_rate_uncertainty_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_RATE_UNCERTAINTY.evaluate::<13, 11>(context, input.cast(), output.cast(), notices) }
}

/// fw_gas_rate_uncertainty over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_rate_uncertainty_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_gas_rate_uncertainty_input,
    input_stride: usize,
    outputs: *mut fw_gas_rate_uncertainty_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_RATE_UNCERTAINTY.batch::<13, 11>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_rate_uncertainty into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_rate_uncertainty_unset(input: *mut fw_gas_rate_uncertainty_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_RATE_UNCERTAINTY.unset::<13>(input.cast()) }
}

/// What goes into fw_gas_rate_test_time.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_rate_test_time_input {
    /// Gas rate expected, as it passes the meter; allowed 2.777778e-7 to 27.77778 (0.001 m³/h to 100000
    /// m³/h); usually 1.388889e-5 to 0.02777778 (0.05 m³/h to 100 m³/h); NaN means: to be found from the
    /// heat input.
    pub gas_rate: fw_cubic_metre_per_second_at_the_meter,
    /// Heat input expected; allowed 10 to 1e9 (0.01 kW to 1000000 kW); usually 500 to 1000000 (0.5 kW to
    /// 1000 kW); NaN means: not stated.
    pub heat_input_gross: fw_watt_gross,
    /// Gross calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    /// usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³); NaN means: not stated.
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Reference volume over volume in the meter; allowed 0.1 to 10; usually 0.7 to 1.2; default 1.
    pub conversion_factor: fw_ratio,
    /// Volume that is to pass; allowed 1e-5 to 1000; usually 0.005 to 5; NaN means: not stated.
    pub volume: fw_cubic_metre_at_the_meter,
    /// Smallest step of the index or dial, which is read at the start and at the end; allowed 0 to 10;
    /// usually 0.0001 to 0.01; NaN means: not stated.
    pub meter_resolution: fw_cubic_metre,
    /// Standard uncertainty of each press of the stopwatch; allowed 0 to 10; usually 0.05 to 0.5; default
    /// 0.15.
    pub reaction_time_uncertainty: fw_second,
    /// Standard uncertainty wanted from reading and timing together, as a share of the rate; allowed 0.0001
    /// to 0.5 (0.01 % to 50 %); usually 0.002 to 0.05 (0.2 % to 5 %); NaN means: not stated.
    pub wanted_uncertainty: fw_ratio,
}
const _: () = assert!(size_of::<fw_gas_rate_test_time_input>() == 8 * size_of::<f64>());

/// What comes out of fw_gas_rate_test_time.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_rate_test_time_output {
    /// Gas rate taken.
    pub gas_rate: fw_cubic_metre_per_second_at_the_meter,
    /// Time in which the volume passes; NaN means: no volume stated.
    pub time_for_volume: fw_second,
    /// Time from which reading and timing are as certain as wanted; NaN means: no resolution or wanted
    /// uncertainty stated.
    pub time_for_uncertainty: fw_second,
    /// Volume that passes in that time; NaN means: no resolution or wanted uncertainty stated.
    pub volume_for_uncertainty: fw_cubic_metre_at_the_meter,
}
const _: () = assert!(size_of::<fw_gas_rate_test_time_output>() == 4 * size_of::<f64>());

static GAS_RATE_TEST_TIME: Face = Face::new("gas_rate_test_time");

/// Duration of a test at the meter.
///
/// The time a volume takes to pass at an expected rate, and the test time from which the meter's
/// resolution and the stopwatch leave a wanted uncertainty.
///
/// Accuracy: As the expected rate. Error of the meter, calorific value and gas conditions are not part
/// of the wanted uncertainty.
///
/// Caution: Compare a heat input only with a plate on the same basis: gross is about a tenth above net
/// for natural gas.
///
/// Source: definition (time = volume / rate).
///
/// Source: JCGM 100:2008, 4.3.7 and 5.1 (two rectangular readings and two presses, solved for the
/// time).
///
/// Source: common practice, no source (0.15 s for each press of a stopwatch).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_rate_test_time(
    input: *const fw_gas_rate_test_time_input,
    output: *mut fw_gas_rate_test_time_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_RATE_TEST_TIME.evaluate::<8, 4>(null(), input.cast(), output.cast(), notices) }
}

/// fw_gas_rate_test_time over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_rate_test_time_batch(
    rows: usize,
    inputs: *const fw_gas_rate_test_time_input,
    input_stride: usize,
    outputs: *mut fw_gas_rate_test_time_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_RATE_TEST_TIME.batch::<8, 4>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_rate_test_time into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_rate_test_time_unset(input: *mut fw_gas_rate_test_time_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_RATE_TEST_TIME.unset::<8>(input.cast()) }
}

/// What goes into fw_gas_energy.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_energy_input {
    /// Volume the meter counted; allowed 0 to 1e7.
    pub volume: fw_cubic_metre_at_the_meter,
    /// Reference volume over metered volume; 1 if the meter already converts; allowed 0.1 to 10; usually
    /// 0.7 to 1.2.
    pub conversion_factor: fw_ratio,
    /// Gross calorific value at the reference conditions of the conversion; allowed 1000000 to 2e8 (1 MJ/m³
    /// to 200 MJ/m³); usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³).
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
}
const _: () = assert!(size_of::<fw_gas_energy_input>() == 3 * size_of::<f64>());

/// What comes out of fw_gas_energy.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_energy_output {
    /// Volume at reference conditions.
    pub reference_volume: fw_cubic_metre_at_reference_conditions,
    /// Energy on the gross basis.
    pub energy_gross: fw_joule,
}
const _: () = assert!(size_of::<fw_gas_energy_output>() == 2 * size_of::<f64>());

static GAS_ENERGY: Face = Face::new("gas_energy");

/// Energy of a metered volume of gas.
///
/// Gross energy of the gas that a meter counted, from the volume conversion factor and the calorific
/// value that the bill states.
///
/// Accuracy: As the figures stated.
///
/// Source: Gas (Calculation of Thermal Energy) Regulations (SI 1992/450) regulation 4(4) (energy in kWh
/// = volume × calorific value in MJ/m³ ÷ 3.6).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_energy(
    input: *const fw_gas_energy_input,
    output: *mut fw_gas_energy_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_ENERGY.evaluate::<3, 2>(null(), input.cast(), output.cast(), notices) }
}

/// fw_gas_energy over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_energy_batch(
    rows: usize,
    inputs: *const fw_gas_energy_input,
    input_stride: usize,
    outputs: *mut fw_gas_energy_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_ENERGY.batch::<3, 2>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_energy into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_energy_unset(input: *mut fw_gas_energy_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_ENERGY.unset::<3>(input.cast()) }
}

/// What goes into fw_metering_reference_change.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_metering_reference_change_input {
    /// Gross calorific value as stated; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.4e8
    /// (10 MJ/m³ to 140 MJ/m³); NaN means: not stated.
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Net calorific value as stated; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.3e8
    /// (10 MJ/m³ to 130 MJ/m³); NaN means: not stated.
    pub net_calorific_value: fw_joule_per_cubic_metre_net,
    /// Metering temperature of the stated value; allowed 253.15 to 323.15 (-20 °C to 50 °C); usually 273.15
    /// to 298.15 (0 °C to 25 °C).
    pub stated_temperature: fw_kelvin,
    /// Metering pressure of the stated value; allowed 60000 to 120000 (600 mbar to 1200 mbar); usually
    /// 98000 to 103000 (980 mbar to 1030 mbar); default 101325 (1013.25 mbar).
    pub stated_pressure: fw_pascal_absolute,
    /// Metering temperature wanted; allowed 253.15 to 323.15 (-20 °C to 50 °C); usually 273.15 to 298.15 (0
    /// °C to 25 °C).
    pub wanted_temperature: fw_kelvin,
    /// Metering pressure wanted; allowed 60000 to 120000 (600 mbar to 1200 mbar); usually 98000 to 103000
    /// (980 mbar to 1030 mbar); default 101325 (1013.25 mbar).
    pub wanted_pressure: fw_pascal_absolute,
    /// Compression factor at the stated over that at the wanted conditions; allowed 0.9 to 1.1; usually
    /// 0.99 to 1.01; default 1.
    pub compression_ratio: fw_ratio,
}
const _: () = assert!(size_of::<fw_metering_reference_change_input>() == 7 * size_of::<f64>());

/// What comes out of fw_metering_reference_change.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_metering_reference_change_output {
    /// Volume of the same gas at the stated over that at the wanted conditions.
    pub volume_ratio: fw_ratio,
    /// Gross calorific value; NaN means: not stated.
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Net calorific value; NaN means: not stated.
    pub net_calorific_value: fw_joule_per_cubic_metre_net,
}
const _: () = assert!(size_of::<fw_metering_reference_change_output>() == 3 * size_of::<f64>());

static METERING_REFERENCE_CHANGE: Face = Face::new("metering_reference_change");

/// Change of the metering reference of a calorific value.
///
/// A calorific value per volume carried from one metering temperature and pressure to another. The
/// combustion reference stays; where the composition is known, gas_properties gives both parts exactly.
///
/// Accuracy: Left out: the compression factors unless given (under 0.1 % for natural gas) and any
/// change of the combustion temperature (0.26 % of the gross value from 0 °C to 25 °C for methane).
///
/// Source: ideal gas law, with the compression factors where they are given (as ISO 13443) (volume
/// ratio).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_metering_reference_change(
    input: *const fw_metering_reference_change_input,
    output: *mut fw_metering_reference_change_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { METERING_REFERENCE_CHANGE.evaluate::<7, 3>(null(), input.cast(), output.cast(), notices) }
}

/// fw_metering_reference_change over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_metering_reference_change_batch(
    rows: usize,
    inputs: *const fw_metering_reference_change_input,
    input_stride: usize,
    outputs: *mut fw_metering_reference_change_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { METERING_REFERENCE_CHANGE.batch::<7, 3>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_metering_reference_change into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_metering_reference_change_unset(input: *mut fw_metering_reference_change_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { METERING_REFERENCE_CHANGE.unset::<7>(input.cast()) }
}

/// What goes into fw_wobbe_index.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_wobbe_index_input {
    /// Gross calorific value; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.4e8 (10 MJ/m³
    /// to 140 MJ/m³); NaN means: not stated.
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Net calorific value; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.3e8 (10 MJ/m³
    /// to 130 MJ/m³); NaN means: not stated.
    pub net_calorific_value: fw_joule_per_cubic_metre_net,
    /// Density of the gas over that of dry air; allowed 0.05 to 5; usually 0.06 to 2.2.
    pub relative_density: fw_ratio,
}
const _: () = assert!(size_of::<fw_wobbe_index_input>() == 3 * size_of::<f64>());

/// What comes out of fw_wobbe_index.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_wobbe_index_output {
    /// Gross Wobbe index; NaN means: no gross calorific value stated.
    pub gross_wobbe_index: fw_joule_per_cubic_metre_gross,
    /// Net Wobbe index; NaN means: no net calorific value stated.
    pub net_wobbe_index: fw_joule_per_cubic_metre_net,
    /// Gross calorific value over net; NaN means: gross or net not stated.
    pub gross_over_net: fw_ratio,
}
const _: () = assert!(size_of::<fw_wobbe_index_output>() == 3 * size_of::<f64>());

static WOBBE_INDEX: Face = Face::new("wobbe_index");

/// Wobbe index from calorific value and relative density.
///
/// Gross and net Wobbe index of a gas whose calorific value and relative density are stated, as on a
/// supplier's sheet.
///
/// Accuracy: As the stated figures; a relative density to three places gives the Wobbe index to 0.1 %.
///
/// Source: ISO 6976, definition of the Wobbe index (W = H/√d).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_wobbe_index(
    input: *const fw_wobbe_index_input,
    output: *mut fw_wobbe_index_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { WOBBE_INDEX.evaluate::<3, 3>(null(), input.cast(), output.cast(), notices) }
}

/// fw_wobbe_index over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_wobbe_index_batch(
    rows: usize,
    inputs: *const fw_wobbe_index_input,
    input_stride: usize,
    outputs: *mut fw_wobbe_index_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { WOBBE_INDEX.batch::<3, 3>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_wobbe_index into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_wobbe_index_unset(input: *mut fw_wobbe_index_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { WOBBE_INDEX.unset::<3>(input.cast()) }
}

/// What goes into fw_liquid_water.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_liquid_water_input {
    /// Temperature of the water; allowed 273.15 to 623.15 (0 °C to 350 °C); usually 273.15 to 383.15 (0 °C
    /// to 110 °C).
    pub temperature: fw_kelvin,
    /// Absolute pressure of the water; allowed 600 to 1e8 (0.006 bar to 1000 bar); usually 50000 to 1100000
    /// (0.5 bar to 11 bar); default 200000 (2 bar).
    pub pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_liquid_water_input>() == 2 * size_of::<f64>());

/// What comes out of fw_liquid_water.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_liquid_water_output {
    /// Density.
    pub density: fw_kilogram_per_cubic_metre,
    /// Specific heat capacity at constant pressure.
    pub specific_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Specific enthalpy, zero near 0 °C.
    pub specific_enthalpy: fw_joule_per_kilogram,
    /// Dynamic viscosity.
    pub dynamic_viscosity: fw_pascal_second,
    /// Thermal conductivity.
    pub thermal_conductivity: fw_watt_per_metre_kelvin,
    /// Volumetric expansion coefficient at constant pressure; negative below about 4 °C.
    pub expansion_coefficient: fw_per_kelvin,
    /// Prandtl number.
    pub prandtl_number: fw_ratio,
    /// Pressure at which water of this temperature boils.
    pub saturation_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_liquid_water_output>() == 8 * size_of::<f64>());

static LIQUID_WATER: Face = Face::new("liquid_water");

/// Properties of liquid water.
///
/// Density, heat capacity, enthalpy, viscosity, conductivity and expansion of liquid water at a
/// temperature and pressure.
///
/// Accuracy: As the formulations: density 0.001 % and heat capacity 0.1 % below 100 °C; viscosity 1 %;
/// conductivity 1.5 %.
///
/// Source: IAPWS R7-97(2012), IF97 regions 1 and 4 (density, heat capacity, enthalpy, expansion,
/// saturation pressure).
///
/// Source: IAPWS R12-08 (viscosity, without critical enhancement).
///
/// Source: IAPWS R15-11 (thermal conductivity).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_liquid_water(
    input: *const fw_liquid_water_input,
    output: *mut fw_liquid_water_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LIQUID_WATER.evaluate::<2, 8>(null(), input.cast(), output.cast(), notices) }
}

/// fw_liquid_water over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_liquid_water_batch(
    rows: usize,
    inputs: *const fw_liquid_water_input,
    input_stride: usize,
    outputs: *mut fw_liquid_water_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LIQUID_WATER.batch::<2, 8>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_liquid_water into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_liquid_water_unset(input: *mut fw_liquid_water_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LIQUID_WATER.unset::<2>(input.cast()) }
}

/// What goes into fw_cool_down.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_cool_down_input {
    /// Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    pub metal_mass: fw_kilogram,
    /// Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    /// allowed 100 to 2000; usually 380 to 950; default 500.
    pub metal_specific_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    pub water_content: fw_cubic_metre,
    /// Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    /// default 980.
    pub water_density: fw_kilogram_per_cubic_metre,
    /// Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    /// 2000 to 4500; usually 3000 to 4250; default 4185.
    pub water_specific_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Conductance of the film between metal and water, where the two are to have temperatures of their
    /// own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    pub film_conductance: fw_watt_per_kelvin,
    /// Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    /// 60.
    pub casing_loss: fw_watt_per_kelvin,
    /// Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    pub standing_heat: fw_watt,
    /// Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    pub pump_flow: fw_kilogram_per_second,
    /// Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    /// allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    pub pump_shut_off_pressure: fw_pascal,
    /// Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    /// resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    /// given.
    pub pressure_drop: fw_pascal,
    /// Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    pub flow_length: fw_metre,
    /// Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    pub return_length: fw_metre,
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000.
    pub pipe_heat_capacity: fw_joule_per_metre_kelvin,
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5.
    pub pipe_loss: fw_watt_per_metre_kelvin_of_length,
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    pub emitter_output: fw_watt,
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    pub emitter_exponent: fw_ratio,
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    pub emitter_heat_capacity: fw_joule_per_kelvin,
    /// Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    /// 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    pub room_temperature: fw_kelvin,
    /// Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    /// (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    pub room_heat_capacity: fw_joule_per_kelvin,
    /// Loss of such a room to the outside; allowed 0 to 100000; default 0.
    pub room_loss: fw_watt_per_kelvin,
    /// Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    /// °C).
    pub outside_temperature: fw_kelvin,
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    pub block_temperature: fw_kelvin,
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    pub circuit_temperature: fw_kelvin,
    /// Temperature to be reached at the point watched; allowed 243.15 to 423.15 (-30 °C to 150 °C); usually
    /// 293.15 to 368.15 (20 °C to 95 °C).
    pub target_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_cool_down_input>() == 25 * size_of::<f64>());

/// What comes out of fw_cool_down.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_cool_down_output {
    /// Time until the target is reached; NaN means: never.
    pub time: fw_second,
    /// Temperature of the water coming back to the block at that moment; NaN means: no flow, or never.
    pub return_temperature: fw_kelvin,
    /// Heat that block, pipes and emitters have released by then; NaN means: never.
    pub heat_released: fw_joule,
    /// Heat given off by the casing; NaN means: never.
    pub casing_heat: fw_joule,
    /// Heat given off by the pipes of all circuits; NaN means: never.
    pub pipe_heat: fw_joule,
    /// Heat given off by the emitters of all circuits; NaN means: never.
    pub emitter_heat: fw_joule,
    /// Heat that block, pipes and emitters still hold over the room; NaN means: never.
    pub heat_left: fw_joule,
    /// Temperature at the point watched after an endless time; NaN means: none: heat is put in and none is
    /// lost.
    pub steady_temperature: fw_kelvin,
    /// Share by which heat put in, stored and given off fail to balance; NaN means: never.
    pub imbalance: fw_ratio,
    /// Time until the target is reached with the circuits in their second state; NaN means: no circuit
    /// changes over, or never.
    pub time_after: fw_second,
    /// Heat given off by the emitters by then; NaN means: no circuit changes over, or never.
    pub emitter_heat_after: fw_joule,
    /// Temperature after an endless time in that state; NaN means: no circuit changes over, or none.
    pub steady_temperature_after: fw_kelvin,
}
const _: () = assert!(size_of::<fw_cool_down_output>() == 12 * size_of::<f64>());

static COOL_DOWN: Face = Face::new("cool_down");

/// Cool-down of a heat generator and its circuits.
///
/// How long until the hot block has fallen to a temperature with the pump running or stopped, where its
/// heat goes, and what opening or closing another circuit does to that.
///
/// Accuracy: The equations are solved to about one part in 10^8 of the time. What limits the answer is
/// the loss coefficients (10 to 30 %) and the heat capacity of the metal (10 %): give these an
/// uncertainty.
///
/// Caution: A hot block and its water can scald and flash to steam for a long time after the burner has
/// stopped; measure before you open or drain anything.
///
/// Caution: Never bridge or lift a thermostat, limit or flame supervision to get a reading.
///
/// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
///
/// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
/// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
/// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
/// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
/// closed, default ); `pump` (Whether the pump runs while the block cools, one of running, stopped,
/// default running); `watched` (The point whose temperature counts: the water of the block, its metal,
/// the end of the flow pipe, the emitter, or the end of the return pipe, one of block, metal, flow_end,
/// emitter, return_end, default block); `thresholds` (Temperatures to list the times of, each with a
/// name: for draining, for touching (a threshold is the caller's policy; that a hand can rest on metal
/// below about 50 °C is common practice without a source), default ); NULL takes every default.
///
/// Source: energy balance of stirred masses in a row; first law (block, pipe cells, emitters).
///
/// Source: EN 442 (exponent form, from memory) (emitter output against temperature difference).
///
/// Source: Dormand and Prince 1980; Steinebach 2023 (Rodas5P) (integration in time).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_cool_down(
    context: *const fw_context,
    input: *const fw_cool_down_input,
    output: *mut fw_cool_down_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COOL_DOWN.evaluate::<25, 12>(context, input.cast(), output.cast(), notices) }
}

/// fw_cool_down over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_cool_down_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_cool_down_input,
    input_stride: usize,
    outputs: *mut fw_cool_down_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COOL_DOWN.batch::<25, 12>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_cool_down into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_cool_down_unset(input: *mut fw_cool_down_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COOL_DOWN.unset::<25>(input.cast()) }
}

/// What goes into fw_installation_volume.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_installation_volume_input {
    /// Volume of gas in the meter; from its maker or the local procedure; allowed 0 to 10 (0 L to 10000 L);
    /// default 0 (0 L).
    pub meter_volume: fw_cubic_metre,
    /// Share of the pipe volume to add for fittings; from the local procedure; allowed 0 to 1 (0 % to 100
    /// %); default 0 (0 %).
    pub fittings_allowance: fw_ratio,
    /// Volume of vessels and appliances under test; allowed 0 to 10 (0 L to 10000 L); default 0 (0 L).
    pub other_volume: fw_cubic_metre,
}
const _: () = assert!(size_of::<fw_installation_volume_input>() == 3 * size_of::<f64>());

/// What comes out of fw_installation_volume.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_installation_volume_output {
    /// Volume of the pipes.
    pub pipe_volume: fw_cubic_metre,
    /// Allowance for fittings.
    pub fittings_volume: fw_cubic_metre,
    /// Volume in all.
    pub installation_volume: fw_cubic_metre,
}
const _: () = assert!(size_of::<fw_installation_volume_output>() == 3 * size_of::<f64>());

static INSTALLATION_VOLUME: Face = Face::new("installation_volume");

/// Volume of a gas installation.
///
/// Gas held by pipes, fittings and meter: what a tightness test and a purge are reckoned with.
///
/// Accuracy: The tubes' tolerances, about 1 % to 3 %; fittings and meter as stated.
///
/// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
/// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
/// not none.
///
/// The context holds the settings `pipes` (The pipes: a list of tables, each with length and either
/// tube (by name), bore, or outside_diameter and wall; name if wanted); NULL takes every default.
///
/// Source: Geometry (pipe volume from the bore).
///
/// Source: common practice, no source (fittings as a share of the pipe volume).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_installation_volume(
    context: *const fw_context,
    input: *const fw_installation_volume_input,
    output: *mut fw_installation_volume_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INSTALLATION_VOLUME.evaluate::<3, 3>(context, input.cast(), output.cast(), notices) }
}

/// fw_installation_volume over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_installation_volume_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_installation_volume_input,
    input_stride: usize,
    outputs: *mut fw_installation_volume_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INSTALLATION_VOLUME.batch::<3, 3>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_installation_volume into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_installation_volume_unset(input: *mut fw_installation_volume_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INSTALLATION_VOLUME.unset::<3>(input.cast()) }
}

/// What goes into fw_tightness_test.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_tightness_test_input {
    /// Volume of gas under test: pipes, fittings and meter; allowed 1e-6 to 100 (0.001 L to 100000 L);
    /// usually 0.0005 to 1 (0.5 L to 1000 L).
    pub installation_volume: fw_cubic_metre,
    /// Gauge pressure at the start of the test; allowed 10 to 1000000 (0.1 mbar to 10000 mbar); usually 500
    /// to 20000 (5 mbar to 200 mbar).
    pub test_pressure: fw_pascal_gauge,
    /// Fall of the gauge reading over the test; negative where it rose; allowed -100000 to 1000000 (-1000
    /// mbar to 10000 mbar); usually -0.1 to 2000 (-0.001 mbar to 20 mbar).
    pub pressure_drop: fw_pascal,
    /// Duration of the test, after the gas has settled; allowed 1 to 864000; usually 60 to 7200.
    pub test_duration: fw_second,
    /// Barometric pressure at the start; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    /// 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Temperature of the gas at the start; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    pub gas_temperature: fw_kelvin,
    /// Rise of the gas temperature over the test; allowed -20 to 20; usually -2 to 2; default 0.
    pub temperature_rise: fw_kelvin_difference,
    /// Rise of the barometer over the test; allowed -5000 to 5000 (-50 mbar to 50 mbar); usually -200 to
    /// 200 (-2 mbar to 2 mbar); default 0 (0 mbar).
    pub barometer_rise: fw_pascal,
    /// Smallest movement of the gauge that can be read; allowed 0.0001 to 10000 (1e-6 mbar to 100 mbar);
    /// usually 0.1 to 100 (0.001 mbar to 1 mbar); NaN means: not stated.
    pub readable_movement: fw_pascal,
    /// Bore of the limbs of a liquid gauge, whose moving column takes up volume; allowed 0.0005 to 0.05
    /// (0.5 mm to 50 mm); NaN means: no liquid gauge.
    pub gauge_bore: fw_metre,
    /// Gross calorific value of the gas at the reference conditions below; allowed 1000000 to 2e8 (1 MJ/m³
    /// to 200 MJ/m³); NaN means: not stated.
    pub calorific_value_gross: fw_joule_per_cubic_metre_gross,
    /// Reference temperature to which the leak is stated; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    /// 288.15 (15 °C).
    pub reference_temperature: fw_kelvin,
    /// Reference pressure to which the leak is stated; allowed 90000 to 110000 (900 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pub reference_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_tightness_test_input>() == 13 * size_of::<f64>());

/// What comes out of fw_tightness_test.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_tightness_test_output {
    /// Amount of gas lost, with all corrections; negative where gas came in.
    pub amount_lost: fw_mole,
    /// Leak at reference conditions, with all corrections, as the mean over the test.
    pub leak_rate: fw_cubic_metre_per_second_at_reference_conditions,
    /// Leak at reference conditions from the bare reading, temperature and barometer taken as steady.
    pub leak_rate_uncorrected: fw_cubic_metre_per_second_at_reference_conditions,
    /// Leak as it flows at the pressure and temperature in the installation.
    pub leak_rate_in_pipe: fw_cubic_metre_per_second_at_the_meter,
    /// Leak at the start of the test, if it goes with the gauge pressure; NaN means: the gauge fell to
    /// zero.
    pub leak_rate_at_start: fw_cubic_metre_per_second_at_reference_conditions,
    /// Rate at which the gauge pressure dies away, if the leak goes with it; NaN means: the gauge fell to
    /// zero.
    pub decay_rate: fw_per_second,
    /// Heat that leaks away; NaN means: no calorific value stated.
    pub heat_lost_gross: fw_watt,
    /// Change of the gauge reading that the temperature alone would make.
    pub temperature_effect: fw_pascal,
    /// Change of the gauge reading for each kelvin.
    pub temperature_sensitivity: fw_pascal_per_kelvin,
    /// Change of the gauge reading that the barometer alone would make.
    pub barometer_effect: fw_pascal,
    /// Volume by which the liquid of the gauge moved in; NaN means: no liquid gauge.
    pub gauge_volume: fw_cubic_metre,
    /// Drop that the moving liquid has hidden; NaN means: no liquid gauge.
    pub gauge_effect: fw_pascal,
    /// True loss over loss as read, for the moving liquid alone; NaN means: no liquid gauge, or no drop.
    pub gauge_factor: fw_ratio,
    /// Least leak that this gauge would have shown in this test; NaN means: no readable movement stated.
    pub smallest_detectable_leak: fw_cubic_metre_per_second_at_reference_conditions,
}
const _: () = assert!(size_of::<fw_tightness_test_output>() == 14 * size_of::<f64>());

static TIGHTNESS_TEST: Face = Face::new("tightness_test");

/// Tightness test.
///
/// Leak rate at reference conditions from a pressure drop, with the effects of temperature, barometer
/// and gauge liquid apart, and the smallest leak the test could show.
///
/// Accuracy: The gas law is better than the readings: 0.1 K of gas temperature moves the gauge by 0.36
/// mbar, so temperature decides. Volume enters in proportion.
///
/// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
/// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
/// not none.
///
/// Caution: Where gas is smelt or a carbon monoxide alarm sounds: no switches, no flames, open up, shut
/// off, leave, call the emergency number. Reckon later.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A sum that comes
/// out well is no certificate.
///
/// Source: Ideal gas law, V/R (p1/T1 - p2/T2) with absolute pressures; textbook (amount lost).
///
/// Source: CODATA 2018 (molar gas constant).
///
/// Source: NIST SP 811 (2008) B.8 (conventional density of water in a liquid gauge).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_tightness_test(
    input: *const fw_tightness_test_input,
    output: *mut fw_tightness_test_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TIGHTNESS_TEST.evaluate::<13, 14>(null(), input.cast(), output.cast(), notices) }
}

/// fw_tightness_test over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_tightness_test_batch(
    rows: usize,
    inputs: *const fw_tightness_test_input,
    input_stride: usize,
    outputs: *mut fw_tightness_test_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TIGHTNESS_TEST.batch::<13, 14>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_tightness_test into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_tightness_test_unset(input: *mut fw_tightness_test_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TIGHTNESS_TEST.unset::<13>(input.cast()) }
}

/// What goes into fw_tightness_plan.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_tightness_plan_input {
    /// Volume of gas under test: pipes, fittings and meter; allowed 1e-6 to 100 (0.001 L to 100000 L);
    /// usually 0.0005 to 1 (0.5 L to 1000 L).
    pub installation_volume: fw_cubic_metre,
    /// Smallest movement of the gauge that can be read; allowed 0.0001 to 10000 (1e-6 mbar to 100 mbar);
    /// usually 0.1 to 100 (0.001 mbar to 1 mbar).
    pub readable_movement: fw_pascal,
    /// Duration intended; allowed 1 to 864000; usually 60 to 7200; NaN means: not stated.
    pub test_duration: fw_second,
    /// Leak that must not go unseen, at reference conditions; set by the local procedure; allowed
    /// 2.777778e-13 to 0.2777778 (1e-6 L/h to 1000000 L/h); NaN means: not stated.
    pub leak_limit: fw_cubic_metre_per_second_at_reference_conditions,
    /// Change of gas temperature to be feared during the test; allowed 0 to 20; usually 0 to 2; default 0.
    pub temperature_change: fw_kelvin_difference,
    /// Gauge pressure of the test; allowed 10 to 1000000 (0.1 mbar to 10000 mbar); usually 500 to 20000 (5
    /// mbar to 200 mbar); default 2000 (20 mbar).
    pub test_pressure: fw_pascal_gauge,
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Temperature of the gas; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to 308.15 (-10 °C
    /// to 35 °C); default 288.15 (15 °C).
    pub gas_temperature: fw_kelvin,
    /// Reference temperature to which leaks are stated; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    /// 288.15 (15 °C).
    pub reference_temperature: fw_kelvin,
    /// Reference pressure to which leaks are stated; allowed 90000 to 110000 (900 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pub reference_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_tightness_plan_input>() == 10 * size_of::<f64>());

/// What comes out of fw_tightness_plan.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_tightness_plan_output {
    /// Least leak that moves the gauge by the readable movement within the duration; NaN means: no duration
    /// stated.
    pub smallest_detectable_leak: fw_cubic_metre_per_second_at_reference_conditions,
    /// Time in which a leak at the limit moves the gauge by the readable movement; NaN means: no leak limit
    /// stated.
    pub time_needed: fw_second,
    /// Drop that a leak at the limit makes within the duration; NaN means: no leak limit or no duration
    /// stated.
    pub drop_at_limit: fw_pascal,
    /// Change of the gauge reading for each kelvin.
    pub temperature_sensitivity: fw_pascal_per_kelvin,
    /// Change of the gauge reading by the temperature change feared.
    pub temperature_effect: fw_pascal,
    /// Leak that the temperature change feared would feign or hide within the duration; NaN means: no
    /// duration stated.
    pub leak_masked_by_temperature: fw_cubic_metre_per_second_at_reference_conditions,
}
const _: () = assert!(size_of::<fw_tightness_plan_output>() == 6 * size_of::<f64>());

static TIGHTNESS_PLAN: Face = Face::new("tightness_plan");

/// Planning a tightness test.
///
/// The smallest leak a gauge shows in a given time, the time a given leak needs to show, and what
/// temperature does to the reading.
///
/// Accuracy: As good as the volume and the readable movement stated.
///
/// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
/// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
/// not none.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A sum that comes
/// out well is no certificate.
///
/// Source: Ideal gas law at constant volume; textbook (all results).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_tightness_plan(
    input: *const fw_tightness_plan_input,
    output: *mut fw_tightness_plan_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TIGHTNESS_PLAN.evaluate::<10, 6>(null(), input.cast(), output.cast(), notices) }
}

/// fw_tightness_plan over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_tightness_plan_batch(
    rows: usize,
    inputs: *const fw_tightness_plan_input,
    input_stride: usize,
    outputs: *mut fw_tightness_plan_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TIGHTNESS_PLAN.batch::<10, 6>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_tightness_plan into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_tightness_plan_unset(input: *mut fw_tightness_plan_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TIGHTNESS_PLAN.unset::<10>(input.cast()) }
}

/// What goes into fw_let_by.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_let_by_input {
    /// Volume of gas behind the valve: pipes, fittings and meter; allowed 1e-6 to 100 (0.001 L to 100000
    /// L); usually 0.0005 to 1 (0.5 L to 1000 L).
    pub installation_volume: fw_cubic_metre,
    /// Gauge pressure at the start, lower than before the valve; allowed 0 to 1000000 (0 mbar to 10000
    /// mbar); usually 200 to 1500 (2 mbar to 15 mbar).
    pub start_pressure: fw_pascal_gauge,
    /// Rise of the gauge reading; negative where it fell; allowed -100000 to 100000 (-1000 mbar to 1000
    /// mbar); usually -0.1 to 1000 (-0.001 mbar to 10 mbar).
    pub pressure_rise: fw_pascal,
    /// Duration of watching; allowed 1 to 864000; usually 30 to 3600.
    pub test_duration: fw_second,
    /// Smallest movement of the gauge that can be read; allowed 0.0001 to 10000 (1e-6 mbar to 100 mbar);
    /// usually 0.1 to 100 (0.001 mbar to 1 mbar); NaN means: not stated.
    pub readable_movement: fw_pascal,
    /// Rise of the gas temperature meanwhile; allowed -20 to 20; usually -2 to 2; default 0.
    pub temperature_rise: fw_kelvin_difference,
    /// Rise of the barometer meanwhile; allowed -5000 to 5000 (-50 mbar to 50 mbar); usually -200 to 200
    /// (-2 mbar to 2 mbar); default 0 (0 mbar).
    pub barometer_rise: fw_pascal,
    /// Barometric pressure at the start; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    /// 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Temperature of the gas at the start; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    pub gas_temperature: fw_kelvin,
    /// Reference temperature to which the flow is stated; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    /// 288.15 (15 °C).
    pub reference_temperature: fw_kelvin,
    /// Reference pressure to which the flow is stated; allowed 90000 to 110000 (900 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pub reference_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_let_by_input>() == 11 * size_of::<f64>());

/// What comes out of fw_let_by.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_let_by_output {
    /// Gas that the valve lets by, less any that leaked away meanwhile; at reference conditions.
    pub let_by_rate: fw_cubic_metre_per_second_at_reference_conditions,
    /// Rise that is left after temperature and barometer are taken out.
    pub corrected_rise: fw_pascal,
    /// Least flow that this gauge would have shown; NaN means: no readable movement stated.
    pub smallest_detectable_flow: fw_cubic_metre_per_second_at_reference_conditions,
}
const _: () = assert!(size_of::<fw_let_by_output>() == 3 * size_of::<f64>());

static LET_BY: Face = Face::new("let_by");

/// Let-by of a shut valve.
///
/// Flow past a shut valve from the pressure rise behind it, temperature and barometer taken out.
///
/// Accuracy: As good as the volume and the readable movement; 0.1 K of gas temperature moves the gauge
/// by 0.36 mbar.
///
/// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
/// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
/// not none.
///
/// Caution: Where gas is smelt or a carbon monoxide alarm sounds: no switches, no flames, open up, shut
/// off, leave, call the emergency number. Reckon later.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A sum that comes
/// out well is no certificate.
///
/// Source: Ideal gas law, V/R (p2/T2 - p1/T1) with absolute pressures; textbook (all results).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_let_by(
    input: *const fw_let_by_input,
    output: *mut fw_let_by_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LET_BY.evaluate::<11, 3>(null(), input.cast(), output.cast(), notices) }
}

/// fw_let_by over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_let_by_batch(
    rows: usize,
    inputs: *const fw_let_by_input,
    input_stride: usize,
    outputs: *mut fw_let_by_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LET_BY.batch::<11, 3>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_let_by into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_let_by_unset(input: *mut fw_let_by_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LET_BY.unset::<11>(input.cast()) }
}

/// What goes into fw_leak_scaling.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_leak_scaling_input {
    /// Leak as measured, with the test gas; allowed 0 to 0.2777778 (0 L/h to 1000000 L/h); default
    /// 2.777778e-7 (1 L/h).
    pub leak_rate: fw_cubic_metre_per_second_at_reference_conditions,
    /// Gauge pressure of the test; allowed 1 to 1000000 (0.01 mbar to 10000 mbar); usually 500 to 100000 (5
    /// mbar to 1000 mbar).
    pub test_pressure: fw_pascal_gauge,
    /// Gauge pressure in operation; allowed 1 to 1000000 (0.01 mbar to 10000 mbar); usually 500 to 100000
    /// (5 mbar to 1000 mbar).
    pub operating_pressure: fw_pascal_gauge,
    /// Density over that of air of the gas tested with; 1 for air; allowed 0.05 to 5; default 1.
    pub test_relative_density: fw_ratio,
    /// Density over that of air of the gas in operation; allowed 0.05 to 5; default 1.
    pub operating_relative_density: fw_ratio,
    /// Viscosity of the gas tested with; left out, that of air; allowed 1e-6 to 0.0001; NaN means: that of
    /// air.
    pub test_viscosity: fw_pascal_second,
    /// Viscosity of the gas in operation; left out, that of air; allowed 1e-6 to 0.0001; NaN means: that of
    /// air.
    pub operating_viscosity: fw_pascal_second,
    /// Temperature of gas and air; allowed 233.15 to 333.15 (-40 °C to 60 °C); default 288.15 (15 °C).
    pub temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_leak_scaling_input>() == 8 * size_of::<f64>());

/// What comes out of fw_leak_scaling.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_leak_scaling_output {
    /// Leak if it seeps through a long fine path, where viscosity rules.
    pub leak_rate_laminar: fw_cubic_metre_per_second_at_reference_conditions,
    /// Leak if it blows through a short hole, where density rules.
    pub leak_rate_orifice: fw_cubic_metre_per_second_at_reference_conditions,
    /// Laminar leak of the operating gas over that of the test gas at one pressure.
    pub gas_ratio_laminar: fw_ratio,
    /// Orifice leak of the operating gas over that of the test gas at one pressure.
    pub gas_ratio_orifice: fw_ratio,
    /// Viscosity of air at the temperature.
    pub air_viscosity: fw_pascal_second,
    /// Density of air at the temperature and one standard atmosphere.
    pub air_density: fw_kilogram_per_cubic_metre,
}
const _: () = assert!(size_of::<fw_leak_scaling_output>() == 6 * size_of::<f64>());

static LEAK_SCALING: Face = Face::new("leak_scaling");

/// A leak at another pressure or with another gas.
///
/// What a leak measured at test pressure, perhaps with air, would be at operating pressure with the
/// gas: as a fine seep and as a hole, between which the truth lies.
///
/// Accuracy: The two forms bound the leak; which applies is a judgement. Expansion of the gas is
/// neglected, so keep to pressures well below one bar.
///
/// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
/// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
/// not none.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A sum that comes
/// out well is no certificate.
///
/// Source: Hagen-Poiseuille; textbook (laminar seep: with pressure over viscosity).
///
/// Source: Orifice equation; textbook (hole: with the root of pressure over density).
///
/// Source: Lemmon & Jacobsen 2004, Int. J. Thermophys. 25, 21 (viscosity of air).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_leak_scaling(
    input: *const fw_leak_scaling_input,
    output: *mut fw_leak_scaling_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LEAK_SCALING.evaluate::<8, 6>(null(), input.cast(), output.cast(), notices) }
}

/// fw_leak_scaling over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_leak_scaling_batch(
    rows: usize,
    inputs: *const fw_leak_scaling_input,
    input_stride: usize,
    outputs: *mut fw_leak_scaling_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LEAK_SCALING.batch::<8, 6>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_leak_scaling into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_leak_scaling_unset(input: *mut fw_leak_scaling_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LEAK_SCALING.unset::<8>(input.cast()) }
}

/// What goes into fw_purge.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_purge_input {
    /// Volume to purge: pipes, fittings and meter; allowed 1e-6 to 1000 (0.001 L to 1000000 L); usually
    /// 0.0005 to 10 (0.5 L to 10000 L).
    pub installation_volume: fw_cubic_metre,
    /// Volume to pass for each volume purged; set by the local procedure; allowed 1 to 20; usually 1 to 5.
    pub purge_factor: fw_ratio,
    /// Volume of one revolution of the test dial, or of one step of the index; allowed 1e-6 to 10 (0.001 L
    /// to 10000 L); NaN means: not stated.
    pub dial_volume: fw_cubic_metre_at_the_meter,
    /// Flow at which the gas is passed; allowed 2.777778e-8 to 27.77778 (0.0001 m³/h to 100000 m³/h); NaN
    /// means: not stated.
    pub purge_flow: fw_cubic_metre_per_second_at_the_meter,
}
const _: () = assert!(size_of::<fw_purge_input>() == 4 * size_of::<f64>());

/// What comes out of fw_purge.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_purge_output {
    /// Volume to pass.
    pub purge_volume: fw_cubic_metre_at_the_meter,
    /// Revolutions of the test dial, or steps of the index; NaN means: no dial volume stated.
    pub dial_revolutions: fw_ratio,
    /// Time to pass it; NaN means: no flow stated.
    pub purge_time: fw_second,
}
const _: () = assert!(size_of::<fw_purge_output>() == 3 * size_of::<f64>());

static PURGE: Face = Face::new("purge");

/// Purge volume and time.
///
/// Volume of gas to pass through an installation, in meter readings and in time. The factor comes from
/// the local procedure.
///
/// Accuracy: Plain proportion.
///
/// Caution: Air and gas pass through the explosive range while purging. Follow the local procedure for
/// venting, ignition sources and proof of completion; a volume or a time reckoned here does not prove
/// it.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A sum that comes
/// out well is no certificate.
///
/// Source: common practice, no source (purge volume as a multiple of the installation volume).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_purge(
    input: *const fw_purge_input,
    output: *mut fw_purge_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PURGE.evaluate::<4, 3>(null(), input.cast(), output.cast(), notices) }
}

/// fw_purge over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_purge_batch(
    rows: usize,
    inputs: *const fw_purge_input,
    input_stride: usize,
    outputs: *mut fw_purge_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PURGE.batch::<4, 3>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_purge into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_purge_unset(input: *mut fw_purge_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PURGE.unset::<4>(input.cast()) }
}

/// What goes into fw_purge_velocity.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_purge_velocity_input {
    /// Bore of the widest pipe purged; allowed 0.002 to 2 (2 mm to 2000 mm); usually 0.008 to 0.3 (8 mm to
    /// 300 mm).
    pub bore: fw_metre,
    /// Velocity to be kept; set by the local procedure; allowed 0.01 to 30; usually 0.3 to 3.
    pub velocity: fw_metre_per_second,
    /// Length of the pipe; allowed 0.01 to 10000.
    pub length: fw_metre,
}
const _: () = assert!(size_of::<fw_purge_velocity_input>() == 3 * size_of::<f64>());

/// What comes out of fw_purge_velocity.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_purge_velocity_output {
    /// Flow that gives the velocity.
    pub purge_flow: fw_cubic_metre_per_second_at_the_meter,
    /// Time in which the front passes the length.
    pub travel_time: fw_second,
}
const _: () = assert!(size_of::<fw_purge_velocity_output>() == 2 * size_of::<f64>());

static PURGE_VELOCITY: Face = Face::new("purge_velocity");

/// Purge flow from a velocity.
///
/// Flow that keeps a given velocity in a pipe, and the time the front takes to pass its length.
///
/// Accuracy: Geometry; the velocity needed to sweep the pipe is not given here.
///
/// Caution: Air and gas pass through the explosive range while purging. Follow the local procedure for
/// venting, ignition sources and proof of completion; a volume or a time reckoned here does not prove
/// it.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A sum that comes
/// out well is no certificate.
///
/// Source: Continuity; textbook (all results).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_purge_velocity(
    input: *const fw_purge_velocity_input,
    output: *mut fw_purge_velocity_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PURGE_VELOCITY.evaluate::<3, 2>(null(), input.cast(), output.cast(), notices) }
}

/// fw_purge_velocity over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_purge_velocity_batch(
    rows: usize,
    inputs: *const fw_purge_velocity_input,
    input_stride: usize,
    outputs: *mut fw_purge_velocity_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PURGE_VELOCITY.batch::<3, 2>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_purge_velocity into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_purge_velocity_unset(input: *mut fw_purge_velocity_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PURGE_VELOCITY.unset::<3>(input.cast()) }
}

/// What goes into fw_pipe_heat_loss.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_pipe_heat_loss_input {
    /// Temperature of the water; of the pipe where its wall is 0 thick and nothing flows; allowed 273.15 to
    /// 623.15 (0 °C to 350 °C); usually 278.15 to 368.15 (5 °C to 95 °C).
    pub water_temperature: fw_kelvin,
    /// Length of the run; allowed 0.001 to 100000; usually 0.1 to 200; default 1.
    pub length: fw_metre,
    /// Flow of the water, at its own temperature; allowed 2.777778e-10 to 0.2777778 (0.001 L/h to 1000000
    /// L/h); usually 2.777778e-6 to 0.01388889 (10 L/h to 50000 L/h); NaN means: standing, or the film
    /// inside left out.
    pub water_flow: fw_cubic_metre_per_second,
    /// Outside diameter of the bare pipe; allowed 0.002 to 0.7 (2 mm to 700 mm); usually 0.006 to 0.17 (6
    /// mm to 170 mm); NaN means: as the named tube.
    pub outside_diameter: fw_metre,
    /// Thickness of the pipe's wall; 0 for a surface of known temperature; allowed 0 to 0.05 (0 mm to 50
    /// mm); NaN means: as the named tube.
    pub wall_thickness: fw_metre,
    /// Thermal conductivity of the pipe's wall; allowed 0.02 to 500; NaN means: as the named tube.
    pub wall_conductivity: fw_watt_per_metre_kelvin,
    /// Thickness of the insulation; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm); usually 0 to 0.12
    /// (0 mm to 120 mm); default 0 (0 mm).
    pub insulation_thickness: fw_metre,
    /// Thermal conductivity of the insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    pub insulation_conductivity: fw_watt_per_metre_kelvin,
    /// Emissivity of the outermost surface; allowed 0 to 1; NaN means: as the named finish.
    pub emissivity: fw_ratio,
    /// Temperature of the air around the run; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 258.15 to
    /// 308.15 (-15 °C to 35 °C).
    pub air_temperature: fw_kelvin,
    /// Mean temperature of the surfaces the run radiates to; allowed 213.15 to 363.15 (-60 °C to 90 °C);
    /// usually 258.15 to 313.15 (-15 °C to 40 °C); NaN means: as the air.
    pub radiant_temperature: fw_kelvin,
    /// Speed of the air across the run; for a run in the wind; allowed 0 to 60; NaN means: still air.
    pub wind_speed: fw_metre_per_second,
    /// Atmospheric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 106000 (800
    /// mbar to 1060 mbar); default 101325 (1013.25 mbar).
    pub air_pressure: fw_pascal_absolute,
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// usually 100000 to 600000 (1 bar to 6 bar); default 200000 (2 bar).
    pub water_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_pipe_heat_loss_input>() == 14 * size_of::<f64>());

/// What comes out of fw_pipe_heat_loss.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_pipe_heat_loss_output {
    /// Heat lost per metre of run.
    pub heat_loss_per_length: fw_watt_per_metre,
    /// Heat lost by the whole run.
    pub heat_loss: fw_watt,
    /// Temperature of the outermost surface.
    pub surface_temperature: fw_kelvin,
    /// Part of the loss that leaves by convection, per metre.
    pub convection_per_length: fw_watt_per_metre,
    /// Part of the loss that leaves by radiation, per metre.
    pub radiation_per_length: fw_watt_per_metre,
    /// Resistance of the film inside; 0 where it is left out.
    pub inside_resistance: fw_metre_kelvin_per_watt,
    /// Resistance of the pipe's wall.
    pub wall_resistance: fw_metre_kelvin_per_watt,
    /// Resistance of all insulation.
    pub insulation_resistance: fw_metre_kelvin_per_watt,
    /// Resistance from the outermost surface to the air, radiation included; NaN means: nothing flows.
    pub outside_resistance: fw_metre_kelvin_per_watt,
    /// Thermal conductivity of the insulation as used; NaN means: bare.
    pub insulation_conductivity_used: fw_watt_per_metre_kelvin,
    /// Outermost diameter.
    pub surface_diameter: fw_metre,
    /// Coefficient of convection outside.
    pub convection_coefficient: fw_watt_per_square_metre_kelvin,
    /// Coefficient of radiation outside.
    pub radiation_coefficient: fw_watt_per_square_metre_kelvin,
    /// Nusselt number outside: on the diameter; on the length for a vertical run.
    pub nusselt_number: fw_ratio,
    /// Rayleigh number outside, on the same length; Reynolds times Prandtl number in the wind.
    pub rayleigh_number: fw_ratio,
    /// Mass flow of the water; NaN means: no flow given.
    pub mass_flow: fw_kilogram_per_second,
    /// Reynolds number of the water; NaN means: no flow given.
    pub reynolds_number: fw_ratio,
    /// Coefficient of the film inside, on the bore; NaN means: no flow given.
    pub inside_coefficient: fw_watt_per_square_metre_kelvin,
    /// Expected relative accuracy of the coefficient of convection outside.
    pub convection_scatter: fw_ratio,
}
const _: () = assert!(size_of::<fw_pipe_heat_loss_output>() == 19 * size_of::<f64>());

static PIPE_HEAT_LOSS: Face = Face::new("pipe_heat_loss");

/// Heat loss of a pipe run.
///
/// Heat that a bare or insulated run loses per metre and in all, its surface temperature, and the
/// resistances on the way: film inside, wall, insulation, and convection and radiation outside, with
/// the surface temperature solved.
///
/// Accuracy: Bare horizontal run in still air 15 %, insulated 5 to 10 % (mostly the conductivity and
/// the fit of the insulation); a thin vertical run 30 %; wind 20 %. Draughts raise the loss, clips,
/// valves and touching walls change it.
///
/// The context holds the settings `position` (How the run lies: horizontal or vertical in still air, or
/// across the wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose
/// correlation for the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by
/// position, one of usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede,
/// Churchill-Bernstein, default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter,
/// wall and conductivity may be given by value instead, default ); `insulation` (The insulation by
/// name, such as "mineral wool"; its conductivity may be given by value instead, default ); `finish`
/// (The outer finish by name, such as "tarnished copper" or "paint"; the emissivity may be given by
/// value instead, default ); `further_layers` (Layers around the first insulation, from the inside out:
/// a list of thickness and conductivity, default ); NULL takes every default.
///
/// Source: Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1049 (film outside a horizontal run, by
/// default).
///
/// Source: Popiel 2008, Heat Transfer Eng. 29, 521, on the plate of Churchill & Chu 1975 (film outside
/// a vertical run, by default).
///
/// Source: Churchill & Bernstein 1977, J. Heat Transfer 99, 300 (film outside a run in the wind).
///
/// Source: Gnielinski 1976, Int. Chem. Eng. 16, 359 (film inside at a Reynolds number from 4000; 3.66
/// below 2300, a line between).
///
/// Source: Lemmon et al. 2000 and Lemmon & Jacobsen 2004, as CoolProp 8.0.0 evaluates them (properties
/// of air, fitted to 2e-6).
///
/// Source: IAPWS R7-97(2012), R12-08, R15-11 (properties of water).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pipe_heat_loss(
    context: *const fw_context,
    input: *const fw_pipe_heat_loss_input,
    output: *mut fw_pipe_heat_loss_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PIPE_HEAT_LOSS.evaluate::<14, 19>(context, input.cast(), output.cast(), notices) }
}

/// fw_pipe_heat_loss over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pipe_heat_loss_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_pipe_heat_loss_input,
    input_stride: usize,
    outputs: *mut fw_pipe_heat_loss_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PIPE_HEAT_LOSS.batch::<14, 19>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_pipe_heat_loss into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pipe_heat_loss_unset(input: *mut fw_pipe_heat_loss_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PIPE_HEAT_LOSS.unset::<14>(input.cast()) }
}

/// What goes into fw_block_cool_down.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_block_cool_down_input {
    /// Heat capacity of all that cools together: metal and water; allowed 1 to 1e9 (0.001 kJ/K to 1000000
    /// kJ/K); usually 1000 to 2000000 (1 kJ/K to 2000 kJ/K).
    pub heat_capacity: fw_joule_per_kelvin,
    /// Loss in proportion to the temperature difference: casing, insulated pipe, a circuit with a steady
    /// flow; allowed 0 to 100000; default 0.
    pub loss_conductance: fw_watt_per_kelvin,
    /// Loss by natural convection (or an emitter's output) at 50 K over the room; allowed 0 to 1000000;
    /// default 0.
    pub convective_loss: fw_watt,
    /// Exponent of that loss: 1.25 for laminar natural convection, about 1.3 for radiators; allowed 1 to 2;
    /// default 1.25.
    pub loss_exponent: fw_ratio,
    /// Bare area that radiates to surfaces at room temperature; allowed 0 to 1000; default 0.
    pub radiating_area: fw_square_metre,
    /// Emissivity of that area; allowed 0 to 1; default 0.9.
    pub emissivity: fw_ratio,
    /// Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; default 0.
    pub standing_heat: fw_watt,
    /// Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    /// 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    pub room_temperature: fw_kelvin,
    /// Temperature at the start; allowed 243.15 to 573.15 (-30 °C to 300 °C); usually 293.15 to 383.15 (20
    /// °C to 110 °C).
    pub start_temperature: fw_kelvin,
    /// Temperature to be reached; allowed 243.15 to 573.15 (-30 °C to 300 °C); usually 288.15 to 373.15 (15
    /// °C to 100 °C).
    pub target_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_block_cool_down_input>() == 10 * size_of::<f64>());

/// What comes out of fw_block_cool_down.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_block_cool_down_output {
    /// Time until the target is reached; NaN means: never.
    pub time: fw_second,
    /// Heat the mass has released by then; NaN means: never.
    pub heat_released: fw_joule,
    /// Loss at the start.
    pub loss_at_start: fw_watt,
    /// Loss at the target temperature.
    pub loss_at_target: fw_watt,
    /// Heat capacity times temperature difference over loss, at the start; NaN means: the mass is at room
    /// temperature.
    pub time_constant: fw_second,
    /// Time by the exponential with that time constant: too short where the loss falls faster than the
    /// difference; NaN means: never.
    pub exponential_time: fw_second,
    /// Temperature after an endless time.
    pub steady_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_block_cool_down_output>() == 7 * size_of::<f64>());

static BLOCK_COOL_DOWN: Face = Face::new("block_cool_down");

/// Cool-down of one hot mass.
///
/// How long a hot mass (a block, a casing, a standing pipe) takes to fall to a temperature, by a linear
/// loss, natural convection and radiation together.
///
/// Accuracy: Exact to about 1e-11 for the loss stated; loss coefficients are commonly known to 10 to 30
/// %, the heat capacity of the metal to 10 %.
///
/// Caution: A hot block and its water can scald and flash to steam for a long time after the burner has
/// stopped; measure before you open or drain anything.
///
/// Caution: Never bridge or lift a thermostat, limit or flame supervision to get a reading.
///
/// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
///
/// Source: first law; Newton's law of cooling (balance and exponential).
///
/// Source: Stefan-Boltzmann law, constant of CODATA 2018 (radiation to a room of one temperature).
///
/// Source: Abramowitz and Stegun, Table 25.4 (quadrature where there is no closed form).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_block_cool_down(
    input: *const fw_block_cool_down_input,
    output: *mut fw_block_cool_down_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BLOCK_COOL_DOWN.evaluate::<10, 7>(null(), input.cast(), output.cast(), notices) }
}

/// fw_block_cool_down over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_block_cool_down_batch(
    rows: usize,
    inputs: *const fw_block_cool_down_input,
    input_stride: usize,
    outputs: *mut fw_block_cool_down_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BLOCK_COOL_DOWN.batch::<10, 7>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_block_cool_down into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_block_cool_down_unset(input: *mut fw_block_cool_down_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BLOCK_COOL_DOWN.unset::<10>(input.cast()) }
}

/// What goes into fw_burner_cycling.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_burner_cycling_input {
    /// Heat capacity of all that warms and cools together: block, water, and what stays open to it; allowed
    /// 1 to 1e9 (0.001 kJ/K to 1000000 kJ/K); usually 1000 to 5000000 (1 kJ/K to 5000 kJ/K).
    pub heat_capacity: fw_joule_per_kelvin,
    /// Output of the burner to the water; allowed 10 to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000
    /// (1 kW to 500 kW).
    pub burner_output: fw_watt,
    /// Load that does not depend on the temperature; allowed 0 to 1e7 (0 kW to 10000 kW); default 0 (0 kW).
    pub load: fw_watt,
    /// Load in proportion to the temperature over the room; allowed 0 to 100000; default 0.
    pub load_conductance: fw_watt_per_kelvin,
    /// Output of the emitters at 50 K over the room; allowed 0 to 1e7 (0 kW to 10000 kW); default 0 (0 kW).
    pub emitter_output: fw_watt,
    /// Exponent of the emitters (EN 442); allowed 1 to 2; usually 1 to 1.5; default 1.3.
    pub emitter_exponent: fw_ratio,
    /// Room temperature; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to 308.15 (0 °C to 35
    /// °C); default 293.15 (20 °C).
    pub room_temperature: fw_kelvin,
    /// Temperature at which the thermostat stops the burner, on rising temperature; allowed 273.15 to
    /// 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    pub cut_out_temperature: fw_kelvin,
    /// Temperature at which it lights the burner again, on falling temperature; allowed 273.15 to 423.15 (0
    /// °C to 150 °C); usually 293.15 to 363.15 (20 °C to 90 °C).
    pub cut_in_temperature: fw_kelvin,
    /// Least time the burner stays off; allowed 0 to 7200 (0 min to 120 min); default 0 (0 min).
    pub anti_cycling_delay: fw_second,
    /// Shortest on-time wanted; allowed 0.6 to 36000 (0.01 min to 600 min); NaN means: no on-time asked
    /// for.
    pub wanted_on_time: fw_second,
}
const _: () = assert!(size_of::<fw_burner_cycling_input>() == 11 * size_of::<f64>());

/// What comes out of fw_burner_cycling.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_burner_cycling_output {
    /// Difference of the two operating values.
    pub differential: fw_kelvin_difference,
    /// Time the burner burns in each cycle; NaN means: the burner never stops.
    pub on_time: fw_second,
    /// Time it stands in each cycle; NaN means: the burner never lights again.
    pub off_time: fw_second,
    /// Time of a whole cycle; NaN means: no cycle.
    pub period: fw_second,
    /// Starts per hour; NaN means: no cycle.
    pub start_rate: fw_per_second,
    /// Share of the time the burner burns; NaN means: no cycle.
    pub duty: fw_ratio,
    /// Temperature at which the burner lights; below the cut-in where the delay holds it back; NaN means:
    /// the burner never lights again.
    pub lowest_temperature: fw_kelvin,
    /// Heat capacity that gives the on-time wanted; NaN means: no on-time asked for, or no cycle.
    pub heat_capacity_needed: fw_joule_per_kelvin,
    /// Water to add for it; negative where there is more than enough; NaN means: no on-time asked for, or
    /// no cycle.
    pub water_needed: fw_cubic_metre,
}
const _: () = assert!(size_of::<fw_burner_cycling_output>() == 9 * size_of::<f64>());

static BURNER_CYCLING: Face = Face::new("burner_cycling");

/// Cycling of a burner.
///
/// On and off times, starts per hour and duty of a burner under a steady load, the effect of the
/// differential, and the water content for a wanted on-time; the heated mass has one temperature.
///
/// Accuracy: Exact to about 1e-11 for one mass. A real circuit has a delay between flow and return that
/// shortens the on-time and lengthens the off-time: see circuit_cycling.
///
/// Source: first law for one mass (on and off times).
///
/// Source: EN 442 (exponent form, from memory) (emitter load).
///
/// Source: IAPWS R7-97(2012) near 65 °C, rounded (980 kg/m³ and 4185 J/(kg·K) for the water to add).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_burner_cycling(
    input: *const fw_burner_cycling_input,
    output: *mut fw_burner_cycling_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BURNER_CYCLING.evaluate::<11, 9>(null(), input.cast(), output.cast(), notices) }
}

/// fw_burner_cycling over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_burner_cycling_batch(
    rows: usize,
    inputs: *const fw_burner_cycling_input,
    input_stride: usize,
    outputs: *mut fw_burner_cycling_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BURNER_CYCLING.batch::<11, 9>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_burner_cycling into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_burner_cycling_unset(input: *mut fw_burner_cycling_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BURNER_CYCLING.unset::<11>(input.cast()) }
}

/// What goes into fw_tube_run.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_tube_run_input {
    /// Length; allowed 0 to 100000; default 1.
    pub length: fw_metre,
}
const _: () = assert!(size_of::<fw_tube_run_input>() == 1 * size_of::<f64>());

/// What comes out of fw_tube_run.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_tube_run_output {
    /// Outside diameter.
    pub outer_diameter: fw_metre,
    /// Wall thickness.
    pub wall_thickness: fw_metre,
    /// Bore.
    pub bore: fw_metre,
    /// Water content per metre.
    pub content_per_length: fw_square_metre,
    /// Mass of the empty tube per metre.
    pub mass_per_length: fw_kilogram_per_metre,
    /// Water content.
    pub content: fw_cubic_metre,
    /// Mass of the empty tube.
    pub mass: fw_kilogram,
    /// Heat capacity of the tube without its water.
    pub wall_heat_capacity: fw_joule_per_kelvin,
    /// Outside surface.
    pub outer_surface: fw_square_metre,
}
const _: () = assert!(size_of::<fw_tube_run_output>() == 9 * size_of::<f64>());

static TUBE_RUN: Face = Face::new("tube_run");

/// Content and mass of a length of tube.
///
/// Bore, water content, mass and heat capacity of a length of tube of a standard size or of any size.
///
/// Accuracy: Exact for the nominal size; walls have tolerances of 10 % and more, which move the content
/// by a few percent.
///
/// The context holds the settings `tube` (A tube by name ("copper 15x0.7", "steel medium 1/2",
/// "multilayer 16x2"), or by value: { outer_diameter, wall_thickness, material (a metal's name, copper
/// if left out), roughness (0.0015 mm if left out) }); NULL takes every default.
///
/// Source: EN 1057, EN 10255, EN 10305-3, EN ISO 15875, EN ISO 21003; each size says how it was seen
/// (outside diameters and walls).
///
/// Source: geometry (content and mass).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_tube_run(
    context: *const fw_context,
    input: *const fw_tube_run_input,
    output: *mut fw_tube_run_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TUBE_RUN.evaluate::<1, 9>(context, input.cast(), output.cast(), notices) }
}

/// fw_tube_run over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_tube_run_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_tube_run_input,
    input_stride: usize,
    outputs: *mut fw_tube_run_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TUBE_RUN.batch::<1, 9>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_tube_run into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_tube_run_unset(input: *mut fw_tube_run_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TUBE_RUN.unset::<1>(input.cast()) }
}

/// What goes into fw_flow_from_heat.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flow_from_heat_input {
    /// Heat that the water is to carry; allowed 1 to 1e7 (0.001 kW to 10000 kW); usually 200 to 500000 (0.2
    /// kW to 500 kW).
    pub heat_output: fw_watt,
    /// Temperature at which the water sets out (flow); allowed 243.15 to 383.15 (-30 °C to 110 °C); usually
    /// 298.15 to 363.15 (25 °C to 90 °C).
    pub flow_temperature: fw_kelvin,
    /// Temperature at which it comes back (return); allowed 243.15 to 383.15 (-30 °C to 110 °C); usually
    /// 288.15 to 353.15 (15 °C to 80 °C).
    pub return_temperature: fw_kelvin,
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// default 200000 (2 bar).
    pub pressure: fw_pascal_absolute,
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    pub glycol_mass_fraction: fw_ratio,
}
const _: () = assert!(size_of::<fw_flow_from_heat_input>() == 5 * size_of::<f64>());

/// What comes out of fw_flow_from_heat.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flow_from_heat_output {
    /// Temperature drop from flow to return.
    pub temperature_drop: fw_kelvin_difference,
    /// Mean heat capacity between the two temperatures: enthalpy difference over temperature drop.
    pub mean_specific_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Mass flow.
    pub mass_flow: fw_kilogram_per_second,
    /// Volume flow where the water is at return temperature (pump or meter in the return).
    pub volume_flow_at_return: fw_cubic_metre_per_second,
    /// Volume flow where the water is at flow temperature.
    pub volume_flow_at_flow: fw_cubic_metre_per_second,
    /// Volume flow at the mean of the two temperatures.
    pub volume_flow_at_mean: fw_cubic_metre_per_second,
    /// Volume flow by the rule of thumb of 4186 J/(kg K) and 1 kg/L, for comparison.
    pub volume_flow_by_rule: fw_cubic_metre_per_second,
}
const _: () = assert!(size_of::<fw_flow_from_heat_output>() == 7 * size_of::<f64>());

static FLOW_FROM_HEAT: Face = Face::new("flow_from_heat");

/// Flow from heat output and temperature drop.
///
/// The water flow that carries a heat output between flow and return temperature, from the enthalpies
/// of the real liquid.
///
/// Accuracy: 0.1 % for water; about 2 % for glycol mixtures, whose makers' products differ. The
/// readings limit it.
///
/// The context holds the settings `fluid` (What circulates; a glycol's share is the input
/// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
/// every default.
///
/// Source: IAPWS SR6-08(2011) (enthalpy and density of water).
///
/// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries
/// them (glycol mixtures).
///
/// Source: common practice, no source (the rule of thumb with 4186 J/(kg K) and 1 kg/L).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flow_from_heat(
    context: *const fw_context,
    input: *const fw_flow_from_heat_input,
    output: *mut fw_flow_from_heat_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLOW_FROM_HEAT.evaluate::<5, 7>(context, input.cast(), output.cast(), notices) }
}

/// fw_flow_from_heat over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flow_from_heat_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_flow_from_heat_input,
    input_stride: usize,
    outputs: *mut fw_flow_from_heat_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLOW_FROM_HEAT.batch::<5, 7>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_flow_from_heat into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flow_from_heat_unset(input: *mut fw_flow_from_heat_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLOW_FROM_HEAT.unset::<5>(input.cast()) }
}

/// What goes into fw_heat_from_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_heat_from_flow_input {
    /// Volume flow as measured; where, says the setting `flow_measured_in`; allowed 2.777778e-8 to
    /// 0.2777778 (0.1 L/h to 1000000 L/h); usually 2.777778e-6 to 0.01111111 (10 L/h to 40000 L/h).
    pub volume_flow: fw_cubic_metre_per_second,
    /// Temperature of the flow; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 298.15 to 363.15 (25
    /// °C to 90 °C).
    pub flow_temperature: fw_kelvin,
    /// Temperature of the return; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 288.15 to 353.15 (15
    /// °C to 80 °C).
    pub return_temperature: fw_kelvin,
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// default 200000 (2 bar).
    pub pressure: fw_pascal_absolute,
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    pub glycol_mass_fraction: fw_ratio,
}
const _: () = assert!(size_of::<fw_heat_from_flow_input>() == 5 * size_of::<f64>());

/// What comes out of fw_heat_from_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_heat_from_flow_output {
    /// Temperature drop from flow to return.
    pub temperature_drop: fw_kelvin_difference,
    /// Mass flow.
    pub mass_flow: fw_kilogram_per_second,
    /// Heat carried.
    pub heat_output: fw_watt,
}
const _: () = assert!(size_of::<fw_heat_from_flow_output>() == 3 * size_of::<f64>());

static HEAT_FROM_FLOW: Face = Face::new("heat_from_flow");

/// Heat output from flow and temperature drop.
///
/// The heat that a measured water flow carries between flow and return temperature: the output by the
/// water side.
///
/// Accuracy: 0.1 % for water besides the readings; a drop of 10 K read to 0.5 K at each end is itself 7
/// % uncertain.
///
/// The context holds the settings `fluid` (What circulates; a glycol's share is the input
/// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water);
/// `flow_measured_in` (The pipe in which the flow was measured: its temperature fixes the density, one
/// of return, flow, default return); NULL takes every default.
///
/// Source: IAPWS SR6-08(2011) (enthalpy and density of water).
///
/// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries
/// them (glycol mixtures).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_heat_from_flow(
    context: *const fw_context,
    input: *const fw_heat_from_flow_input,
    output: *mut fw_heat_from_flow_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { HEAT_FROM_FLOW.evaluate::<5, 3>(context, input.cast(), output.cast(), notices) }
}

/// fw_heat_from_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_heat_from_flow_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_heat_from_flow_input,
    input_stride: usize,
    outputs: *mut fw_heat_from_flow_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { HEAT_FROM_FLOW.batch::<5, 3>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_heat_from_flow into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_heat_from_flow_unset(input: *mut fw_heat_from_flow_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { HEAT_FROM_FLOW.unset::<5>(input.cast()) }
}

/// What goes into fw_emitter_output.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_emitter_output_input {
    /// Output at the rated condition; allowed 1 to 1000000; usually 100 to 10000.
    pub rated_output: fw_watt,
    /// Exponent of the characteristic equation, from the maker; allowed 1 to 1.6; usually 1.1 to 1.45;
    /// default 1.3.
    pub exponent: fw_ratio,
    /// Flow temperature now; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 298.15 to 363.15 (25 °C to
    /// 90 °C).
    pub flow_temperature: fw_kelvin,
    /// Return temperature now; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 293.15 to 353.15 (20 °C
    /// to 80 °C).
    pub return_temperature: fw_kelvin,
    /// Room temperature now; allowed 263.15 to 323.15 (-10 °C to 50 °C); usually 278.15 to 299.15 (5 °C to
    /// 26 °C); default 293.15 (20 °C).
    pub room_temperature: fw_kelvin,
    /// Flow temperature at the rated condition; allowed 273.15 to 403.15 (0 °C to 130 °C); default 348.15
    /// (75 °C).
    pub rated_flow_temperature: fw_kelvin,
    /// Return temperature at the rated condition; allowed 273.15 to 403.15 (0 °C to 130 °C); default 338.15
    /// (65 °C).
    pub rated_return_temperature: fw_kelvin,
    /// Room temperature at the rated condition; allowed 273.15 to 303.15 (0 °C to 30 °C); default 293.15
    /// (20 °C).
    pub rated_room_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_emitter_output_input>() == 8 * size_of::<f64>());

/// What comes out of fw_emitter_output.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_emitter_output_output {
    /// Mean excess temperature now.
    pub mean_excess: fw_kelvin_difference,
    /// Mean excess temperature at the rated condition.
    pub rated_mean_excess: fw_kelvin_difference,
    /// Share of the rated output; its reverse is how much larger an emitter must be rated.
    pub output_factor: fw_ratio,
    /// Output now.
    pub heat_output: fw_watt,
}
const _: () = assert!(size_of::<fw_emitter_output_output>() == 4 * size_of::<f64>());

static EMITTER_OUTPUT: Face = Face::new("emitter_output");

/// Emitter output at another condition.
///
/// What a radiator rated at one flow, return and room temperature gives at another.
///
/// Accuracy: 3 % near the rated condition for an emitter that is mounted and connected as tested; 10 %
/// at a third of the rated excess or with small flows.
///
/// The context holds the settings `mean_excess` (How water temperature is averaged: arithmetic as EN
/// 442 rates emitters, or logarithmic, nearer the truth at large drops. Rated and actual condition
/// alike, one of arithmetic, logarithmic, default arithmetic); NULL takes every default.
///
/// Source: EN 442-2, characteristic equation (output proportional to a power of the mean excess
/// temperature; rating at 75/65/20 °C).
///
/// Source: textbook, heat exchanger theory (logarithmic mean).
///
/// Source: common practice, no source (exponent 1.3 where none is stated; logarithmic mean where the
/// return excess is below 0.7 of the flow's).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_emitter_output(
    context: *const fw_context,
    input: *const fw_emitter_output_input,
    output: *mut fw_emitter_output_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { EMITTER_OUTPUT.evaluate::<8, 4>(context, input.cast(), output.cast(), notices) }
}

/// fw_emitter_output over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_emitter_output_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_emitter_output_input,
    input_stride: usize,
    outputs: *mut fw_emitter_output_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { EMITTER_OUTPUT.batch::<8, 4>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_emitter_output into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_emitter_output_unset(input: *mut fw_emitter_output_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { EMITTER_OUTPUT.unset::<8>(input.cast()) }
}

/// What goes into fw_emitter_at_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_emitter_at_flow_input {
    /// Output at the rated condition; allowed 1 to 1000000; usually 100 to 10000.
    pub rated_output: fw_watt,
    /// Exponent of the characteristic equation, from the maker; allowed 1 to 1.6; usually 1.1 to 1.45;
    /// default 1.3.
    pub exponent: fw_ratio,
    /// Mass flow of water through it; allowed 2.777778e-5 to 27.77778 (0.1 kg/h to 100000 kg/h); usually
    /// 0.0005555556 to 0.2777778 (2 kg/h to 1000 kg/h).
    pub mass_flow: fw_kilogram_per_second,
    /// Flow temperature; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 298.15 to 363.15 (25 °C to 90
    /// °C).
    pub flow_temperature: fw_kelvin,
    /// Room temperature; allowed 273.15 to 323.15 (0 °C to 50 °C); usually 278.15 to 299.15 (5 °C to 26
    /// °C); default 293.15 (20 °C).
    pub room_temperature: fw_kelvin,
    /// Mean excess temperature of the rating: 50 K for 75/65/20 °C; allowed 5 to 80; default 50.
    pub rated_mean_excess: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_emitter_at_flow_input>() == 6 * size_of::<f64>());

/// What comes out of fw_emitter_at_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_emitter_at_flow_output {
    /// Return temperature.
    pub return_temperature: fw_kelvin,
    /// Temperature drop.
    pub temperature_drop: fw_kelvin_difference,
    /// Output.
    pub heat_output: fw_watt,
    /// Share of the rated output.
    pub output_factor: fw_ratio,
}
const _: () = assert!(size_of::<fw_emitter_at_flow_output>() == 4 * size_of::<f64>());

static EMITTER_AT_FLOW: Face = Face::new("emitter_at_flow");

/// Emitter at a water flow.
///
/// The return temperature at which the heat the water gives up is the heat the emitter gives off, and
/// that heat.
///
/// Accuracy: 3 % near the rated condition for an emitter that is mounted and connected as tested; 10 %
/// at a third of the rated excess or with small flows.
///
/// The context holds the settings `mean_excess` (How water temperature is averaged: arithmetic as EN
/// 442 rates emitters, or logarithmic, nearer the truth at large drops. Rated and actual condition
/// alike, one of arithmetic, logarithmic, default arithmetic); NULL takes every default.
///
/// Source: EN 442-2, characteristic equation (output proportional to a power of the mean excess
/// temperature; rating at 75/65/20 °C).
///
/// Source: textbook, heat exchanger theory (logarithmic mean).
///
/// Source: common practice, no source (exponent 1.3 where none is stated; logarithmic mean where the
/// return excess is below 0.7 of the flow's).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_emitter_at_flow(
    context: *const fw_context,
    input: *const fw_emitter_at_flow_input,
    output: *mut fw_emitter_at_flow_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { EMITTER_AT_FLOW.evaluate::<6, 4>(context, input.cast(), output.cast(), notices) }
}

/// fw_emitter_at_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_emitter_at_flow_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_emitter_at_flow_input,
    input_stride: usize,
    outputs: *mut fw_emitter_at_flow_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { EMITTER_AT_FLOW.batch::<6, 4>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_emitter_at_flow into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_emitter_at_flow_unset(input: *mut fw_emitter_at_flow_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { EMITTER_AT_FLOW.unset::<6>(input.cast()) }
}

/// What goes into fw_water_pressure_drop.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_water_pressure_drop_input {
    /// Volume flow; allowed 0 to 0.2777778 (0 L/h to 1000000 L/h); usually 1.388889e-6 to 0.02777778 (5 L/h
    /// to 100000 L/h).
    pub volume_flow: fw_cubic_metre_per_second,
    /// Length of tube, flow and return together; allowed 0 to 10000; usually 0.1 to 500.
    pub length: fw_metre,
    /// Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 363.15 (5
    /// °C to 90 °C); default 333.15 (60 °C).
    pub temperature: fw_kelvin,
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// default 200000 (2 bar).
    pub pressure: fw_pascal_absolute,
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    pub glycol_mass_fraction: fw_ratio,
    /// Loss coefficients of valves, boiler and other parts that the setting `fittings` does not name;
    /// allowed 0 to 10000; default 0.
    pub loss_coefficient: fw_ratio,
    /// Equivalent length of parts for which such a length is given; allowed 0 to 10000; default 0.
    pub equivalent_length: fw_metre,
    /// Density, where it is known from elsewhere; allowed 500 to 2000; NaN means: that of the fluid.
    pub density: fw_kilogram_per_cubic_metre,
    /// Dynamic viscosity, where it is known from elsewhere; allowed 1e-5 to 1; NaN means: that of the
    /// fluid.
    pub dynamic_viscosity: fw_pascal_second,
    /// Velocity above which a notice is given; makers of tube state what theirs stands; allowed 0.1 to 10;
    /// default 1.
    pub greatest_velocity: fw_metre_per_second,
    /// Velocity below which a notice is given that air may stay; allowed 0 to 2; default 0.2.
    pub least_velocity: fw_metre_per_second,
}
const _: () = assert!(size_of::<fw_water_pressure_drop_input>() == 11 * size_of::<f64>());

/// What comes out of fw_water_pressure_drop.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_water_pressure_drop_output {
    /// Mean velocity.
    pub velocity: fw_metre_per_second,
    /// Reynolds number.
    pub reynolds_number: fw_ratio,
    /// Darcy friction factor; NaN means: no flow.
    pub friction_factor: fw_ratio,
    /// Velocity pressure.
    pub velocity_pressure: fw_pascal,
    /// Pressure drop per metre of tube.
    pub drop_per_length: fw_pascal_per_metre,
    /// Pressure drop of the tube and equivalent lengths.
    pub tube_drop: fw_pascal,
    /// Pressure drop of fittings by loss coefficient.
    pub fitting_drop: fw_pascal,
    /// Pressure drop of the whole.
    pub pressure_drop: fw_pascal,
    /// Least it may be; less than the drop itself only where the flow is in transition.
    pub pressure_drop_low: fw_pascal,
    /// Most it may be; more than the drop itself only where the flow is in transition.
    pub pressure_drop_high: fw_pascal,
    /// Head of the same liquid.
    pub head_loss: fw_metre,
    /// Power that the drop takes from the liquid; a pump needs this over its efficiency.
    pub hydraulic_power: fw_watt,
}
const _: () = assert!(size_of::<fw_water_pressure_drop_output>() == 12 * size_of::<f64>());

static WATER_PRESSURE_DROP: Face = Face::new("water_pressure_drop");

/// Pressure drop of a run of tube.
///
/// Velocity and pressure drop of water or a glycol mixture through a length of tube with its fittings.
///
/// Accuracy: 5 % for the tube as new, 20 % for fittings, whose coefficients differ from make to make; a
/// factor of up to 2 in transition.
///
/// The context holds the settings `tube` (A tube by name ("copper 15x0.7", "steel medium 1/2",
/// "multilayer 16x2"), or by value: { outer_diameter, wall_thickness, material (a metal's name, copper
/// if left out), roughness (0.0015 mm if left out) }); `fluid` (What circulates; a glycol's share is
/// the input `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water);
/// `friction` (Equation for the turbulent friction factor, one of colebrook, haaland, swamee-jain,
/// default colebrook); `fittings` (Names of fittings with their number, for instance { "elbow 90" = 6,
/// "tee branch" = 2 }); NULL takes every default.
///
/// Source: Darcy and Weisbach; Hagen and Poiseuille below Re 2300; Colebrook 1939 from Re 4000
/// (friction in the tube).
///
/// Source: Crane TP-410M (2009); Cengel & Cimbala Table 8-4, from memory (loss coefficients of
/// fittings).
///
/// Source: IAPWS SR6-08(2011), IAPWS R12-08 (density and viscosity of water).
///
/// Source: common practice, no source (velocities of 0.2 m/s (air) and 1 m/s (noise)).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_water_pressure_drop(
    context: *const fw_context,
    input: *const fw_water_pressure_drop_input,
    output: *mut fw_water_pressure_drop_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { WATER_PRESSURE_DROP.evaluate::<11, 12>(context, input.cast(), output.cast(), notices) }
}

/// fw_water_pressure_drop over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_water_pressure_drop_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_water_pressure_drop_input,
    input_stride: usize,
    outputs: *mut fw_water_pressure_drop_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { WATER_PRESSURE_DROP.batch::<11, 12>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_water_pressure_drop into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_water_pressure_drop_unset(input: *mut fw_water_pressure_drop_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { WATER_PRESSURE_DROP.unset::<11>(input.cast()) }
}

/// What goes into fw_static_head.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_static_head_input {
    /// Height of the water's top above the point of interest; allowed 0 to 200; usually 0.5 to 40.
    pub height: fw_metre,
    /// Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); default 283.15 (10 °C).
    pub temperature: fw_kelvin,
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// default 250000 (2.5 bar).
    pub pressure: fw_pascal_absolute,
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    pub glycol_mass_fraction: fw_ratio,
}
const _: () = assert!(size_of::<fw_static_head_input>() == 4 * size_of::<f64>());

/// What comes out of fw_static_head.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_static_head_output {
    /// Density of the liquid.
    pub density: fw_kilogram_per_cubic_metre,
    /// Pressure of the column.
    pub static_pressure: fw_pascal,
}
const _: () = assert!(size_of::<fw_static_head_output>() == 2 * size_of::<f64>());

static STATIC_HEAD: Face = Face::new("static_head");

/// Static head.
///
/// The pressure that a height of water makes at its temperature.
///
/// Accuracy: 0.001 % for water besides the height; local gravity differs from standard by up to 0.3 %.
///
/// The context holds the settings `fluid` (What circulates; a glycol's share is the input
/// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
/// every default.
///
/// Source: hydrostatics (density times gravity times height).
///
/// Source: IAPWS SR6-08(2011) (density of water).
///
/// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010 (density of glycol mixtures).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_static_head(
    context: *const fw_context,
    input: *const fw_static_head_input,
    output: *mut fw_static_head_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { STATIC_HEAD.evaluate::<4, 2>(context, input.cast(), output.cast(), notices) }
}

/// fw_static_head over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_static_head_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_static_head_input,
    input_stride: usize,
    outputs: *mut fw_static_head_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { STATIC_HEAD.batch::<4, 2>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_static_head into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_static_head_unset(input: *mut fw_static_head_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { STATIC_HEAD.unset::<4>(input.cast()) }
}

/// What goes into fw_injector_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_injector_flow_input {
    /// Diameter of the injector bore; allowed 0.0001 to 0.1 (0.1 mm to 100 mm); usually 0.0003 to 0.01 (0.3
    /// mm to 10 mm).
    pub injector_diameter: fw_metre,
    /// Gauge pressure before the injector; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to 6000
    /// (1 mbar to 60 mbar).
    pub burner_pressure: fw_pascal_gauge,
    /// Density of the gas over that of air; allowed 0.05 to 5; usually 0.3 to 2.2.
    pub relative_density: fw_ratio,
    /// Discharge coefficient of the injector; allowed 0.1 to 1.2; usually 0.6 to 1.
    pub discharge_coefficient: fw_ratio,
    /// Density of air at the conditions to which the flow is stated; allowed 0.3 to 2; usually 0.9 to 1.35;
    /// default 1.225.
    pub air_density: fw_kilogram_per_cubic_metre,
    /// Number of like injectors; allowed 1 to 1000; default 1.
    pub injector_count: fw_ratio,
    /// Gross calorific value at the conditions to which the flow is stated; allowed 1000000 to 2e8 (1 MJ/m³
    /// to 200 MJ/m³); NaN means: not stated.
    pub calorific_value_gross: fw_joule_per_cubic_metre_gross,
}
const _: () = assert!(size_of::<fw_injector_flow_input>() == 7 * size_of::<f64>());

/// What comes out of fw_injector_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_injector_flow_output {
    /// Density of the gas.
    pub gas_density: fw_kilogram_per_cubic_metre,
    /// Velocity of the jet where it is narrowest, without loss.
    pub jet_velocity: fw_metre_per_second,
    /// Flow of all injectors, at the conditions of the air density stated.
    pub gas_flow: fw_cubic_metre_per_second,
    /// Flow by the practical form 0.0467 C_d A √(p/d), which implies air of 1.1885 kg/m³.
    pub gas_flow_practical: fw_cubic_metre_per_second,
    /// Heat input on the gross basis; NaN means: no calorific value stated.
    pub heat_input_gross: fw_watt_gross,
}
const _: () = assert!(size_of::<fw_injector_flow_output>() == 5 * size_of::<f64>());

static INJECTOR_FLOW: Face = Face::new("injector_flow");

/// Gas through an injector.
///
/// Flow and heat input of burner injectors from bore, pressure, discharge coefficient and relative
/// density.
///
/// Accuracy: The discharge coefficient decides: 0.8 to 0.95 by the shape of the bore, unknown to about
/// 5 % unless measured. Expansion costs 0.2 % for each 10 mbar.
///
/// Caution: Change an injector, a pressure or a gas only as the appliance maker allows, and prove
/// combustion afterwards with an analyser.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A sum that comes
/// out well is no certificate.
///
/// Source: Orifice equation for a small pressure difference; textbook (flow).
///
/// Source: Fulford, biogas stove burner design; seen in a public reproduction (practical form 0.0467
/// C_d A √(p/d)).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_injector_flow(
    input: *const fw_injector_flow_input,
    output: *mut fw_injector_flow_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INJECTOR_FLOW.evaluate::<7, 5>(null(), input.cast(), output.cast(), notices) }
}

/// fw_injector_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_injector_flow_batch(
    rows: usize,
    inputs: *const fw_injector_flow_input,
    input_stride: usize,
    outputs: *mut fw_injector_flow_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INJECTOR_FLOW.batch::<7, 5>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_injector_flow into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_injector_flow_unset(input: *mut fw_injector_flow_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INJECTOR_FLOW.unset::<7>(input.cast()) }
}

/// What goes into fw_injector_size.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_injector_size_input {
    /// Heat input wanted, gross; leave it out to state a flow; allowed 10 to 1e7 (0.01 kW to 10000 kW);
    /// usually 100 to 200000 (0.1 kW to 200 kW); NaN means: a flow is stated.
    pub heat_input_gross: fw_watt_gross,
    /// Gross calorific value, needed with a heat input; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); NaN
    /// means: a flow is stated.
    pub calorific_value_gross: fw_joule_per_cubic_metre_gross,
    /// Flow wanted, at the conditions of the air density stated; leave it out to state a heat input;
    /// allowed 2.777778e-9 to 2.777778 (0.00001 m³/h to 10000 m³/h); NaN means: a heat input is stated.
    pub gas_flow: fw_cubic_metre_per_second,
    /// Gauge pressure before the injector; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to 6000
    /// (1 mbar to 60 mbar).
    pub burner_pressure: fw_pascal_gauge,
    /// Density of the gas over that of air; allowed 0.05 to 5; usually 0.3 to 2.2.
    pub relative_density: fw_ratio,
    /// Discharge coefficient of the injector; allowed 0.1 to 1.2; usually 0.6 to 1.
    pub discharge_coefficient: fw_ratio,
    /// Density of air at the conditions to which flow and calorific value are stated; allowed 0.3 to 2;
    /// usually 0.9 to 1.35; default 1.225.
    pub air_density: fw_kilogram_per_cubic_metre,
    /// Number of like injectors; allowed 1 to 1000; default 1.
    pub injector_count: fw_ratio,
}
const _: () = assert!(size_of::<fw_injector_size_input>() == 8 * size_of::<f64>());

/// What comes out of fw_injector_size.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_injector_size_output {
    /// Flow of all injectors.
    pub gas_flow: fw_cubic_metre_per_second,
    /// Area of one injector.
    pub injector_area: fw_square_metre,
    /// Diameter of one injector.
    pub injector_diameter: fw_metre,
}
const _: () = assert!(size_of::<fw_injector_size_output>() == 3 * size_of::<f64>());

static INJECTOR_SIZE: Face = Face::new("injector_size");

/// Size of an injector.
///
/// Bore of a burner injector for a heat input or a flow at a pressure.
///
/// Accuracy: Half the error of the discharge coefficient; a drill is stepped more coarsely than that.
///
/// Caution: Change an injector, a pressure or a gas only as the appliance maker allows, and prove
/// combustion afterwards with an analyser.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A sum that comes
/// out well is no certificate.
///
/// Source: Orifice equation for a small pressure difference; textbook (area).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_injector_size(
    input: *const fw_injector_size_input,
    output: *mut fw_injector_size_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INJECTOR_SIZE.evaluate::<8, 3>(null(), input.cast(), output.cast(), notices) }
}

/// fw_injector_size over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_injector_size_batch(
    rows: usize,
    inputs: *const fw_injector_size_input,
    input_stride: usize,
    outputs: *mut fw_injector_size_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INJECTOR_SIZE.batch::<8, 3>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_injector_size into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_injector_size_unset(input: *mut fw_injector_size_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INJECTOR_SIZE.unset::<8>(input.cast()) }
}

/// What goes into fw_burner_pressure.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_burner_pressure_input {
    /// Heat input known, on either basis; the result stands on the same; allowed 1 to 1e8 (0.001 kW to
    /// 100000 kW); usually 500 to 200000 (0.5 kW to 200 kW).
    pub heat_input: fw_watt,
    /// Burner pressure at which it is known; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to
    /// 6000 (1 mbar to 60 mbar).
    pub burner_pressure: fw_pascal_gauge,
    /// Burner pressure in the new state; left out, the same; allowed 1 to 50000 (0.01 mbar to 500 mbar);
    /// usually 100 to 6000 (1 mbar to 60 mbar); NaN means: unchanged.
    pub new_burner_pressure: fw_pascal_gauge,
    /// Heat input wanted in the new state; left out, the same; allowed 1 to 1e8 (0.001 kW to 100000 kW);
    /// usually 500 to 200000 (0.5 kW to 200 kW); NaN means: unchanged.
    pub wanted_heat_input: fw_watt,
    /// Gross calorific value of the gas known; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); default 3.9e7
    /// (39 MJ/m³).
    pub calorific_value_gross: fw_joule_per_cubic_metre_gross,
    /// Gross calorific value of the new gas; left out, the same; allowed 1000000 to 2e8 (1 MJ/m³ to 200
    /// MJ/m³); NaN means: unchanged.
    pub new_calorific_value_gross: fw_joule_per_cubic_metre_gross,
    /// Relative density of the gas known; allowed 0.05 to 5; default 0.6.
    pub relative_density: fw_ratio,
    /// Relative density of the new gas; left out, the same; allowed 0.05 to 5; NaN means: unchanged.
    pub new_relative_density: fw_ratio,
    /// Gas temperature at which the heat input is known; allowed 233.15 to 353.15 (-40 °C to 80 °C);
    /// default 288.15 (15 °C).
    pub gas_temperature: fw_kelvin,
    /// Gas temperature in the new state; left out, the same; allowed 233.15 to 353.15 (-40 °C to 80 °C);
    /// NaN means: unchanged.
    pub new_gas_temperature: fw_kelvin,
    /// Barometric pressure at which the heat input is known; allowed 50000 to 110000 (500 mbar to 1100
    /// mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Barometric pressure in the new state; left out, the same; allowed 50000 to 110000 (500 mbar to 1100
    /// mbar); NaN means: unchanged.
    pub new_barometric_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_burner_pressure_input>() == 12 * size_of::<f64>());

/// What comes out of fw_burner_pressure.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_burner_pressure_output {
    /// Heat input at the new pressure with the same injector.
    pub new_heat_input: fw_watt,
    /// New over known heat input with the same injector.
    pub heat_input_ratio: fw_ratio,
    /// Burner pressure that gives the wanted heat input with the same injector.
    pub pressure_for_wanted: fw_pascal_gauge,
    /// Injector diameter over the present one that gives the wanted heat input at the new pressure.
    pub injector_diameter_ratio: fw_ratio,
    /// Gross Wobbe index of the gas known.
    pub wobbe_index_gross: fw_joule_per_cubic_metre_gross,
    /// Gross Wobbe index of the new gas.
    pub new_wobbe_index_gross: fw_joule_per_cubic_metre_gross,
    /// New over known Wobbe index.
    pub wobbe_ratio: fw_ratio,
    /// New over known modified Wobbe index, which holds the temperature of the gas as well.
    pub modified_wobbe_ratio: fw_ratio,
    /// New over known flow at reference conditions.
    pub reference_flow_ratio: fw_ratio,
}
const _: () = assert!(size_of::<fw_burner_pressure_output>() == 9 * size_of::<f64>());

static BURNER_PRESSURE: Face = Face::new("burner_pressure");

/// Burner pressure, heat input and gas.
///
/// Heat input at another burner pressure, gas, gas temperature or barometer by the square law of the
/// injector, the pressure for a wanted heat input, and the injector for it.
///
/// Accuracy: Within about 1 % from half to twice the pressure, if the injector is the only resistance
/// and its discharge coefficient stays.
///
/// Caution: Change an injector, a pressure or a gas only as the appliance maker allows, and prove
/// combustion afterwards with an analyser.
///
/// Caution: Work on gas belongs to people whom the local law holds competent for it. A sum that comes
/// out well is no certificate.
///
/// Source: Orifice equation for a small pressure difference; textbook (heat input with the root of
/// pressure times gas density).
///
/// Source: ISO 6976:2016, definition (Wobbe index).
///
/// Source: common practice, no source (modified Wobbe index: Wobbe index over the root of the absolute
/// gas temperature).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_burner_pressure(
    input: *const fw_burner_pressure_input,
    output: *mut fw_burner_pressure_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BURNER_PRESSURE.evaluate::<12, 9>(null(), input.cast(), output.cast(), notices) }
}

/// fw_burner_pressure over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_burner_pressure_batch(
    rows: usize,
    inputs: *const fw_burner_pressure_input,
    input_stride: usize,
    outputs: *mut fw_burner_pressure_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BURNER_PRESSURE.batch::<12, 9>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_burner_pressure into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_burner_pressure_unset(input: *mut fw_burner_pressure_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BURNER_PRESSURE.unset::<12>(input.cast()) }
}

/// What goes into fw_altitude.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_altitude_input {
    /// Height above sea level (geopotential, which differs by 0.05 % at 3000 m); allowed -430 to 5000;
    /// usually -10 to 2500.
    pub altitude: fw_metre,
    /// Barometric pressure reduced to sea level, as weather reports give it; allowed 85000 to 109000 (850
    /// mbar to 1090 mbar); usually 96000 to 105000 (960 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub sea_level_pressure: fw_pascal_absolute,
    /// Temperature of the air at the place; left out, that of the standard atmosphere; allowed 223.15 to
    /// 333.15 (-50 °C to 60 °C); NaN means: standard atmosphere.
    pub air_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_altitude_input>() == 3 * size_of::<f64>());

/// What comes out of fw_altitude.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_altitude_output {
    /// Barometric pressure at the place, as a barometer shows it.
    pub barometric_pressure: fw_pascal_absolute,
    /// Pressure at the place over 1013.25 mbar.
    pub pressure_ratio: fw_ratio,
    /// Air density over that at 15 °C and 1013.25 mbar.
    pub air_density_ratio: fw_ratio,
    /// Heat input over that at sea level, gas temperature, injector and burner pressure the same.
    pub heat_input_ratio: fw_ratio,
}
const _: () = assert!(size_of::<fw_altitude_output>() == 4 * size_of::<f64>());

static ALTITUDE: Face = Face::new("altitude");

/// Effect of altitude.
///
/// Barometric pressure at a height, and with it the density of air and the heat input of a burner left
/// as it was set at sea level.
///
/// Accuracy: Weather of equal sea-level pressure departs from the standard atmosphere by about 0.5 % of
/// the pressure for each 1000 m.
///
/// Caution: Rules for derating at altitude are the maker's and the local code's; they are not reckoned
/// here.
///
/// Caution: Change an injector, a pressure or a gas only as the appliance maker allows, and prove
/// combustion afterwards with an analyser.
///
/// Source: ISO 2533:1975 standard atmosphere (constants from memory, checked on its sea-level values)
/// (pressure with height).
///
/// Source: Orifice equation; textbook (heat input with the root of gas density).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_altitude(
    input: *const fw_altitude_input,
    output: *mut fw_altitude_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ALTITUDE.evaluate::<3, 4>(null(), input.cast(), output.cast(), notices) }
}

/// fw_altitude over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_altitude_batch(
    rows: usize,
    inputs: *const fw_altitude_input,
    input_stride: usize,
    outputs: *mut fw_altitude_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ALTITUDE.batch::<3, 4>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_altitude into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_altitude_unset(input: *mut fw_altitude_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ALTITUDE.unset::<3>(input.cast()) }
}

/// What goes into fw_absolute_pressure.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_absolute_pressure_input {
    /// Pressure above the atmosphere; negative below it; allowed -110000 to 1e7 (-1100 mbar to 100000
    /// mbar).
    pub gauge_pressure: fw_pascal_gauge,
    /// Pressure of the atmosphere at the place, not reduced to sea level; allowed 50000 to 110000 (500 mbar
    /// to 1100 mbar); usually 80000 to 105000 (800 mbar to 1050 mbar).
    pub barometer: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_absolute_pressure_input>() == 2 * size_of::<f64>());

/// What comes out of fw_absolute_pressure.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_absolute_pressure_output {
    /// Pressure above vacuum: what gas laws need.
    pub absolute_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_absolute_pressure_output>() == 1 * size_of::<f64>());

static ABSOLUTE_PRESSURE: Face = Face::new("absolute_pressure");

/// Absolute pressure.
///
/// The pressure above vacuum of what a gauge shows, from the pressure of the atmosphere.
///
/// Accuracy: Exact; the barometer carries the uncertainty.
///
/// Source: definition of gauge pressure (the sum).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_absolute_pressure(
    input: *const fw_absolute_pressure_input,
    output: *mut fw_absolute_pressure_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ABSOLUTE_PRESSURE.evaluate::<2, 1>(null(), input.cast(), output.cast(), notices) }
}

/// fw_absolute_pressure over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_absolute_pressure_batch(
    rows: usize,
    inputs: *const fw_absolute_pressure_input,
    input_stride: usize,
    outputs: *mut fw_absolute_pressure_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ABSOLUTE_PRESSURE.batch::<2, 1>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_absolute_pressure into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_absolute_pressure_unset(input: *mut fw_absolute_pressure_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ABSOLUTE_PRESSURE.unset::<2>(input.cast()) }
}

/// What goes into fw_analyser_reading.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_analyser_reading_input {
    /// The reading; allowed -0.01 to 1 (-10000 ppm to 1000000 ppm).
    pub reading: fw_ratio,
    /// Lowest value of the measuring range; allowed 0 to 1 (0 ppm to 1000000 ppm); default 0 (0 ppm).
    pub range_low: fw_ratio,
    /// Highest value of the measuring range; allowed 0 to 1 (0 ppm to 1000000 ppm).
    pub range_high: fw_ratio,
    /// Smallest step of the display; allowed 0 to 0.1 (0 ppm to 100000 ppm); default 0 (0 ppm).
    pub resolution: fw_ratio,
    /// Stated accuracy, either way, that holds at least; allowed 0 to 0.2 (0 ppm to 200000 ppm); default 0
    /// (0 ppm).
    pub accuracy_absolute: fw_ratio,
    /// Stated accuracy, either way, as a share of the reading; the greater of both holds; allowed 0 to 1 (0
    /// % to 100 %); usually 0 to 0.2 (0 % to 20 %); default 0 (0 %).
    pub accuracy_relative: fw_ratio,
    /// Reading in clean air before sampling, which should be the true value there; allowed -0.01 to 1
    /// (-10000 ppm to 1000000 ppm); NaN means: not recorded.
    pub clean_air_reading: fw_ratio,
    /// True value in clean air: nothing for carbon monoxide, about 20.9 % for oxygen; allowed 0 to 1 (0 ppm
    /// to 1000000 ppm); default 0 (0 ppm).
    pub clean_air_value: fw_ratio,
}
const _: () = assert!(size_of::<fw_analyser_reading_input>() == 8 * size_of::<f64>());

/// What comes out of fw_analyser_reading.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_analyser_reading_output {
    /// Half-width of the stated accuracy at this reading.
    pub accuracy: fw_ratio,
    /// Standard uncertainty: accuracy and resolution, both as rectangular distributions.
    pub standard_uncertainty: fw_ratio,
    /// The same as a share of the reading; NaN means: the reading is zero.
    pub relative_uncertainty: fw_ratio,
    /// How far the reading stands in the measuring range.
    pub share_of_range: fw_ratio,
    /// Zero error in clean air; NaN means: not recorded.
    pub zero_error: fw_ratio,
}
const _: () = assert!(size_of::<fw_analyser_reading_output>() == 5 * size_of::<f64>());

static ANALYSER_READING: Face = Face::new("analyser_reading");

/// Reading of an analyser.
///
/// Whether a reading lies in the measuring range of the cell, and the uncertainty that the data sheet's
/// accuracy and resolution give it.
///
/// Accuracy: As the data sheet; drift since the last calibration, cross-sensitivity and a wet or
/// leaking sample are not in it.
///
/// Caution: An analyser past its calibration date gives figures for guidance only; record date and
/// certificate.
///
/// Caution: A number inside a limit says nothing of spillage, flue flow or ventilation.
///
/// Source: JCGM 100:2008, 4.3.7 and 4.3.8 (rectangular distributions of accuracy and resolution).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_analyser_reading(
    input: *const fw_analyser_reading_input,
    output: *mut fw_analyser_reading_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ANALYSER_READING.evaluate::<8, 5>(null(), input.cast(), output.cast(), notices) }
}

/// fw_analyser_reading over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_analyser_reading_batch(
    rows: usize,
    inputs: *const fw_analyser_reading_input,
    input_stride: usize,
    outputs: *mut fw_analyser_reading_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ANALYSER_READING.batch::<8, 5>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_analyser_reading into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_analyser_reading_unset(input: *mut fw_analyser_reading_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ANALYSER_READING.unset::<8>(input.cast()) }
}

/// What goes into fw_flame_supervision_voltage.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flame_supervision_voltage_input {
    /// Voltage of the thermocouple alone, pilot burning, nothing connected; allowed 0 to 1 (0 mV to 1000
    /// mV); usually 0.01 to 0.75 (10 mV to 750 mV); NaN means: not measured.
    pub open_circuit_voltage: fw_volt,
    /// Voltage with the electromagnet connected, pilot burning; allowed 0 to 1 (0 mV to 1000 mV); usually
    /// 0.005 to 0.7 (5 mV to 700 mV).
    pub loaded_voltage: fw_volt,
    /// Voltage at which the electromagnet let go after the pilot was put out; allowed 0 to 1 (0 mV to 1000
    /// mV); NaN means: not measured.
    pub drop_out_voltage: fw_volt,
    /// Time from putting the pilot out to the valve closing; allowed 0 to 600; usually 1 to 120; NaN means:
    /// not measured.
    pub closing_time: fw_second,
}
const _: () = assert!(size_of::<fw_flame_supervision_voltage_input>() == 4 * size_of::<f64>());

/// What comes out of fw_flame_supervision_voltage.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flame_supervision_voltage_output {
    /// Loaded voltage over the voltage at which the magnet lets go; NaN means: drop-out not measured.
    pub holding_ratio: fw_ratio,
    /// Loaded voltage less the voltage at which the magnet lets go; NaN means: drop-out not measured.
    pub holding_margin: fw_volt,
    /// Share of the open-circuit voltage that is lost when the magnet is connected; NaN means: open-circuit
    /// voltage not measured.
    pub loss_under_load: fw_ratio,
    /// Time from putting the pilot out to the valve closing, as read; NaN means: not measured.
    pub closing_time: fw_second,
}
const _: () = assert!(size_of::<fw_flame_supervision_voltage_output>() == 4 * size_of::<f64>());

static FLAME_SUPERVISION_VOLTAGE: Face = Face::new("flame_supervision_voltage");

/// Thermo-electric flame supervision.
///
/// Margin of the thermocouple's voltage over what the electromagnet needs. Plain readings: what is
/// enough is for the maker's instructions and the policy they are judged against.
///
/// Accuracy: That of the millivoltmeter.
///
/// Caution: A flame supervision is a safety device: never tie, bridge or adjust it to keep an appliance
/// going.
///
/// Caution: Prove that the valve closes with the flame out and that gas has stopped, before the
/// appliance is left.
///
/// Source: comparison of readings, common practice, no source (ratio and margins).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flame_supervision_voltage(
    input: *const fw_flame_supervision_voltage_input,
    output: *mut fw_flame_supervision_voltage_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLAME_SUPERVISION_VOLTAGE.evaluate::<4, 4>(null(), input.cast(), output.cast(), notices) }
}

/// fw_flame_supervision_voltage over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flame_supervision_voltage_batch(
    rows: usize,
    inputs: *const fw_flame_supervision_voltage_input,
    input_stride: usize,
    outputs: *mut fw_flame_supervision_voltage_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLAME_SUPERVISION_VOLTAGE.batch::<4, 4>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_flame_supervision_voltage into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flame_supervision_voltage_unset(input: *mut fw_flame_supervision_voltage_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLAME_SUPERVISION_VOLTAGE.unset::<4>(input.cast()) }
}

/// What goes into fw_gas_mass_concentration.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_mass_concentration_input {
    /// Share by volume, dry or wet as it was measured; the concentration stands on the same basis; allowed
    /// 0 to 1 (0 ppm to 1000000 ppm); usually 0 to 0.005 (0 ppm to 5000 ppm).
    pub volume_fraction: fw_ratio,
    /// Temperature to which the cubic metre refers; allowed 223.15 to 1773.15 (-50 °C to 1500 °C); usually
    /// 273.15 to 298.15 (0 °C to 25 °C).
    pub temperature: fw_kelvin,
    /// Pressure to which the cubic metre refers; allowed 30000 to 200000 (300 mbar to 2000 mbar); usually
    /// 80000 to 105000 (800 mbar to 1050 mbar).
    pub pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_gas_mass_concentration_input>() == 3 * size_of::<f64>());

/// What comes out of fw_gas_mass_concentration.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_mass_concentration_output {
    /// Mass of the gas per volume of the mixture.
    pub mass_concentration: fw_kilogram_per_cubic_metre,
}
const _: () = assert!(size_of::<fw_gas_mass_concentration_output>() == 1 * size_of::<f64>());

static GAS_MASS_CONCENTRATION: Face = Face::new("gas_mass_concentration");

/// Mass concentration of a gas.
///
/// Milligrams per cubic metre from parts per million at a stated temperature and pressure.
///
/// Accuracy: The ideal gas law is good to 0.1 % for flue gas and room air; the analyser decides.
///
/// Caution: Carbon monoxide cannot be smelt or felt. On an alarm or a suspicious reading: people out
/// first, ventilate, isolate the gas, then calculate.
///
/// Caution: A number below a limit says nothing of spillage, flue flow or ventilation; limits and
/// procedures are those in force locally.
///
/// The context holds the settings `gas` (The gas; oxides of nitrogen together are stated as nitrogen
/// dioxide, one of carbon_monoxide, carbon_dioxide, nitric_oxide, nitrogen_dioxide, sulphur_dioxide,
/// methane, oxygen, other, default carbon_monoxide); `molar_mass` (Molar mass, for gas = "other"
/// alone); NULL takes every default.
///
/// Source: ideal gas law with the molar gas constant of the SI (2019) (concentration from fraction).
///
/// Source: IUPAC standard atomic weights (abridged, 2013); ISO 6976:2016 for carbon monoxide and
/// dioxide (molar masses).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_mass_concentration(
    context: *const fw_context,
    input: *const fw_gas_mass_concentration_input,
    output: *mut fw_gas_mass_concentration_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_MASS_CONCENTRATION.evaluate::<3, 1>(context, input.cast(), output.cast(), notices) }
}

/// fw_gas_mass_concentration over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_mass_concentration_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_gas_mass_concentration_input,
    input_stride: usize,
    outputs: *mut fw_gas_mass_concentration_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_MASS_CONCENTRATION.batch::<3, 1>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_mass_concentration into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_mass_concentration_unset(input: *mut fw_gas_mass_concentration_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_MASS_CONCENTRATION.unset::<3>(input.cast()) }
}

/// What goes into fw_gas_volume_fraction.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_volume_fraction_input {
    /// Mass of the gas per volume of the mixture; the share stands on the same basis, dry or wet; allowed 0
    /// to 5 (0 mg/m³ to 5000000 mg/m³); usually 0 to 0.01 (0 mg/m³ to 10000 mg/m³).
    pub mass_concentration: fw_kilogram_per_cubic_metre,
    /// Temperature to which the cubic metre refers; allowed 223.15 to 1773.15 (-50 °C to 1500 °C); usually
    /// 273.15 to 298.15 (0 °C to 25 °C).
    pub temperature: fw_kelvin,
    /// Pressure to which the cubic metre refers; allowed 30000 to 200000 (300 mbar to 2000 mbar); usually
    /// 80000 to 105000 (800 mbar to 1050 mbar).
    pub pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_gas_volume_fraction_input>() == 3 * size_of::<f64>());

/// What comes out of fw_gas_volume_fraction.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_volume_fraction_output {
    /// Share by volume.
    pub volume_fraction: fw_ratio,
}
const _: () = assert!(size_of::<fw_gas_volume_fraction_output>() == 1 * size_of::<f64>());

static GAS_VOLUME_FRACTION: Face = Face::new("gas_volume_fraction");

/// Volume fraction of a gas.
///
/// Parts per million from milligrams per cubic metre at a stated temperature and pressure.
///
/// Accuracy: The ideal gas law is good to 0.1 % for flue gas and room air; the analyser decides.
///
/// Caution: Carbon monoxide cannot be smelt or felt. On an alarm or a suspicious reading: people out
/// first, ventilate, isolate the gas, then calculate.
///
/// Caution: A number below a limit says nothing of spillage, flue flow or ventilation; limits and
/// procedures are those in force locally.
///
/// The context holds the settings `gas` (The gas; oxides of nitrogen together are stated as nitrogen
/// dioxide, one of carbon_monoxide, carbon_dioxide, nitric_oxide, nitrogen_dioxide, sulphur_dioxide,
/// methane, oxygen, other, default carbon_monoxide); `molar_mass` (Molar mass, for gas = "other"
/// alone); NULL takes every default.
///
/// Source: ideal gas law with the molar gas constant of the SI (2019) (concentration from fraction).
///
/// Source: IUPAC standard atomic weights (abridged, 2013); ISO 6976:2016 for carbon monoxide and
/// dioxide (molar masses).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_volume_fraction(
    context: *const fw_context,
    input: *const fw_gas_volume_fraction_input,
    output: *mut fw_gas_volume_fraction_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_VOLUME_FRACTION.evaluate::<3, 1>(context, input.cast(), output.cast(), notices) }
}

/// fw_gas_volume_fraction over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_volume_fraction_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_gas_volume_fraction_input,
    input_stride: usize,
    outputs: *mut fw_gas_volume_fraction_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_VOLUME_FRACTION.batch::<3, 1>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_volume_fraction into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_volume_fraction_unset(input: *mut fw_gas_volume_fraction_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_VOLUME_FRACTION.unset::<3>(input.cast()) }
}

/// What goes into fw_inclined_gauge.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_inclined_gauge_input {
    /// Movement of the liquid along the tube, positive for a pressure and negative for a draught; allowed
    /// -2 to 2 (-2000 mm to 2000 mm).
    pub length: fw_metre,
    /// Angle of the tube to the horizontal; allowed 0.01745329 to 1.570796 (1 ° to 90 °); usually
    /// 0.03490659 to 0.7853982 (2 ° to 45 °).
    pub angle: fw_radian,
    /// Relative density of the liquid to conventional water, as printed on the gauge; allowed 0.5 to 14;
    /// usually 0.7 to 1.1; default 1.
    pub relative_density: fw_ratio,
    /// Acceleration of gravity at the place; allowed 9.7 to 9.9; usually 9.78 to 9.84; default 9.80665.
    pub gravity: fw_metre_per_second_squared,
}
const _: () = assert!(size_of::<fw_inclined_gauge_input>() == 4 * size_of::<f64>());

/// What comes out of fw_inclined_gauge.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_inclined_gauge_output {
    /// Height of the column.
    pub level_difference: fw_metre_both_limbs,
    /// Pressure above the atmosphere; negative for a draught.
    pub pressure: fw_pascal_gauge,
}
const _: () = assert!(size_of::<fw_inclined_gauge_output>() == 2 * size_of::<f64>());

static INCLINED_GAUGE: Face = Face::new("inclined_gauge");

/// Inclined gauge.
///
/// Small gauge pressure or draught from the movement along an inclined tube. The level in the cistern
/// is taken as fixed.
///
/// Accuracy: The relative density printed on the gauge holds at its own temperature; most oils lose
/// about 0.1 % of density per kelvin. An angle wrong by 0.5 degrees changes a 10 degree gauge by 5 %.
///
/// Caution: Working on gas is for people legally competent to do it, to the procedure in force where
/// they work; a computed pressure certifies nothing.
///
/// Source: hydrostatics and geometry, h = l sin α (height and pressure of the column).
///
/// Source: NIST SP 811 (2008), Appendix B.8 (conventional water, to which the relative density refers).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_inclined_gauge(
    input: *const fw_inclined_gauge_input,
    output: *mut fw_inclined_gauge_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INCLINED_GAUGE.evaluate::<4, 2>(null(), input.cast(), output.cast(), notices) }
}

/// fw_inclined_gauge over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_inclined_gauge_batch(
    rows: usize,
    inputs: *const fw_inclined_gauge_input,
    input_stride: usize,
    outputs: *mut fw_inclined_gauge_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INCLINED_GAUGE.batch::<4, 2>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_inclined_gauge into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_inclined_gauge_unset(input: *mut fw_inclined_gauge_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INCLINED_GAUGE.unset::<4>(input.cast()) }
}

/// What goes into fw_liquid_column.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_liquid_column_input {
    /// Difference between the levels of the two limbs, positive for a pressure and negative for a suction.
    /// On a scale that is spaced to give the whole pressure from one limb, the figure read from the scale;
    /// allowed -2 to 2 (-2000 mm to 2000 mm); usually -0.3 to 0.6 (-300 mm to 600 mm).
    pub level_difference: fw_metre_both_limbs,
    /// Temperature of the liquid; allowed 273.15 to 333.15 (0 °C to 60 °C); usually 275.15 to 308.15 (2 °C
    /// to 35 °C); default 293.15 (20 °C).
    pub liquid_temperature: fw_kelvin,
    /// Acceleration of gravity at the place; allowed 9.7 to 9.9; usually 9.78 to 9.84; default 9.80665.
    pub gravity: fw_metre_per_second_squared,
    /// Pressure of the atmosphere, which decides the weight of the air column in the open limb; allowed
    /// 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 105000 (800 mbar to 1050 mbar); default
    /// 101325 (1013.25 mbar).
    pub barometer: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_liquid_column_input>() == 4 * size_of::<f64>());

/// What comes out of fw_liquid_column.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_liquid_column_output {
    /// Level difference that balances the pressure.
    pub level_difference: fw_metre_both_limbs,
    /// Density of the liquid at its temperature.
    pub liquid_density: fw_kilogram_per_cubic_metre,
    /// Pressure above the atmosphere by the weight of the liquid alone, with its true density and local
    /// gravity.
    pub pressure: fw_pascal_gauge,
    /// The same less the weight of the air that stands in the place of the liquid in the other limb.
    pub pressure_less_air: fw_pascal_gauge,
    /// What the same reading is in conventional units of water column: 1000 kg/m³ and standard gravity.
    pub pressure_conventional: fw_pascal_gauge,
    /// Share by which the conventional figure is too high; NaN means: no level difference.
    pub convention_error: fw_ratio,
}
const _: () = assert!(size_of::<fw_liquid_column_output>() == 6 * size_of::<f64>());

static LIQUID_COLUMN: Face = Face::new("liquid_column");

/// Pressure of a liquid column.
///
/// Gauge pressure from the level difference of a U-gauge or a scale that gives it, with the true
/// density of the liquid and local gravity, beside the figure in conventional units of water column.
///
/// Accuracy: The sum is good to 0.001 %; the reading of a limb to half a millimetre decides, which is
/// 0.05 mbar.
///
/// Caution: Working on gas is for people legally competent to do it, to the procedure in force where
/// they work; a computed pressure certifies nothing.
///
/// The context holds the settings `liquid` (The liquid in the gauge: water, or one of stated density,
/// one of water, stated, default water); `density` (Density of a stated liquid); `density_temperature`
/// (Temperature of the stated density, default 20 degC); `expansion_coefficient` (Cubic expansion
/// coefficient of a stated liquid, default 0 1/K); NULL takes every default.
///
/// Source: hydrostatics, p = ρ g h (pressure of a column).
///
/// Source: IAPWS SR6-08(2011), liquid water at 0.1 MPa (density of water).
///
/// Source: NIST SP 811 (2008), Appendix B.8 (conventional water, standard gravity).
///
/// Source: Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331, as fitted in the air module (density
/// of dry air).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_liquid_column(
    context: *const fw_context,
    input: *const fw_liquid_column_input,
    output: *mut fw_liquid_column_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LIQUID_COLUMN.evaluate::<4, 6>(context, input.cast(), output.cast(), notices) }
}

/// fw_liquid_column over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_liquid_column_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_liquid_column_input,
    input_stride: usize,
    outputs: *mut fw_liquid_column_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LIQUID_COLUMN.batch::<4, 6>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_liquid_column into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_liquid_column_unset(input: *mut fw_liquid_column_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LIQUID_COLUMN.unset::<4>(input.cast()) }
}

/// What goes into fw_local_gravity.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_local_gravity_input {
    /// Geographic latitude, north or south alike; allowed -1.570796 to 1.570796 (-90 ° to 90 °).
    pub latitude: fw_radian,
    /// Height above sea level; allowed -500 to 9000; usually -10 to 2500; default 0.
    pub height: fw_metre,
}
const _: () = assert!(size_of::<fw_local_gravity_input>() == 2 * size_of::<f64>());

/// What comes out of fw_local_gravity.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_local_gravity_output {
    /// Acceleration of gravity.
    pub gravity: fw_metre_per_second_squared,
    /// Share by which it exceeds standard gravity, 9.80665 m/s².
    pub excess_over_standard: fw_ratio,
}
const _: () = assert!(size_of::<fw_local_gravity_output>() == 2 * size_of::<f64>());

static LOCAL_GRAVITY: Face = Face::new("local_gravity");

/// Local gravity.
///
/// Acceleration of gravity at a latitude and height, for a liquid-column gauge read exactly.
///
/// Accuracy: The true local value differs by up to about 0.0005 m/s² (0.005 %), from the ground below.
///
/// Source: Moritz, Geodetic Reference System 1980, J. Geodesy 74 (2000) 128, Somigliana's closed form
/// (gravity at sea level).
///
/// Source: free-air gradient 3.086e-6 1/s², textbook value (decrease with height).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_local_gravity(
    input: *const fw_local_gravity_input,
    output: *mut fw_local_gravity_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LOCAL_GRAVITY.evaluate::<2, 2>(null(), input.cast(), output.cast(), notices) }
}

/// fw_local_gravity over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_local_gravity_batch(
    rows: usize,
    inputs: *const fw_local_gravity_input,
    input_stride: usize,
    outputs: *mut fw_local_gravity_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LOCAL_GRAVITY.batch::<2, 2>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_local_gravity into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_local_gravity_unset(input: *mut fw_local_gravity_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LOCAL_GRAVITY.unset::<2>(input.cast()) }
}

/// What goes into fw_platinum_resistance.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_platinum_resistance_input {
    /// Temperature of the element; allowed 73.15 to 1123.15 (-200 °C to 850 °C); usually 243.15 to 573.15
    /// (-30 °C to 300 °C).
    pub temperature: fw_kelvin,
    /// Resistance of the element at 0 °C: 100 Ω of a Pt100, 1000 Ω of a Pt1000; allowed 1 to 10000.
    pub resistance_at_zero: fw_ohm,
    /// Resistance of both leads together, as in a two-wire circuit; 0 with three or four wires; allowed 0
    /// to 100; usually 0 to 5; default 0.
    pub lead_resistance: fw_ohm,
}
const _: () = assert!(size_of::<fw_platinum_resistance_input>() == 3 * size_of::<f64>());

/// What comes out of fw_platinum_resistance.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_platinum_resistance_output {
    /// Resistance of the element.
    pub resistance: fw_ohm,
    /// Resistance at the meter, through the leads.
    pub resistance_with_leads: fw_ohm,
    /// Temperature that a two-wire meter without correction shows; NaN means: beyond 850 °C.
    pub indicated_temperature: fw_kelvin,
    /// By how much that is too high; NaN means: beyond 850 °C.
    pub lead_error: fw_kelvin_difference,
    /// Half-width of the tolerance of the class at this temperature; NaN means: no class was named.
    pub tolerance: fw_kelvin_difference,
    /// Lowest resistance at the meter within the tolerance; NaN means: no class was named.
    pub lowest_resistance: fw_ohm,
    /// Highest resistance at the meter within the tolerance; NaN means: no class was named.
    pub highest_resistance: fw_ohm,
    /// Relative change of the resistance with temperature, referred to 0 °C.
    pub sensitivity: fw_per_kelvin,
}
const _: () = assert!(size_of::<fw_platinum_resistance_output>() == 8 * size_of::<f64>());

static PLATINUM_RESISTANCE: Face = Face::new("platinum_resistance");

/// Resistance of a platinum thermometer.
///
/// Resistance to expect of a platinum element at a temperature, the band its class allows, and what
/// two-wire leads do to the reading.
///
/// Accuracy: The relation is exact by definition; the class of the element decides.
///
/// The context holds the settings `class` (Tolerance class of IEC 60751, one of none, AA, A, B, C,
/// default none); `construction` (Wire-wound or film element; it decides how far the class reaches, one
/// of wire, film, default wire); NULL takes every default.
///
/// Source: IEC 60751:2008, 4.2, coefficients from public reproductions (resistance and temperature).
///
/// Source: IEC 60751:2008, tolerance classes, formulae from public reproductions, ranges from memory
/// (tolerance).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_platinum_resistance(
    context: *const fw_context,
    input: *const fw_platinum_resistance_input,
    output: *mut fw_platinum_resistance_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PLATINUM_RESISTANCE.evaluate::<3, 8>(context, input.cast(), output.cast(), notices) }
}

/// fw_platinum_resistance over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_platinum_resistance_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_platinum_resistance_input,
    input_stride: usize,
    outputs: *mut fw_platinum_resistance_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PLATINUM_RESISTANCE.batch::<3, 8>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_platinum_resistance into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_platinum_resistance_unset(input: *mut fw_platinum_resistance_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PLATINUM_RESISTANCE.unset::<3>(input.cast()) }
}

/// What goes into fw_platinum_temperature.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_platinum_temperature_input {
    /// Resistance at the meter; allowed 0.1 to 50000; usually 80 to 2000.
    pub resistance: fw_ohm,
    /// Resistance of the element at 0 °C: 100 Ω of a Pt100, 1000 Ω of a Pt1000; allowed 1 to 10000.
    pub resistance_at_zero: fw_ohm,
    /// Resistance of both leads together, as in a two-wire circuit; 0 with three or four wires; allowed 0
    /// to 100; usually 0 to 5; default 0.
    pub lead_resistance: fw_ohm,
}
const _: () = assert!(size_of::<fw_platinum_temperature_input>() == 3 * size_of::<f64>());

/// What comes out of fw_platinum_temperature.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_platinum_temperature_output {
    /// Temperature of the element, the leads allowed for.
    pub temperature: fw_kelvin,
    /// Temperature that the resistance at the meter indicates if the leads are forgotten.
    pub indicated_temperature: fw_kelvin,
    /// By how much the indicated temperature is too high.
    pub lead_error: fw_kelvin_difference,
    /// Relative change of the resistance with temperature, referred to 0 °C.
    pub sensitivity: fw_per_kelvin,
    /// Half-width of the tolerance of the class at this temperature; NaN means: no class was named.
    pub tolerance: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_platinum_temperature_output>() == 5 * size_of::<f64>());

static PLATINUM_TEMPERATURE: Face = Face::new("platinum_temperature");

/// Temperature of a platinum thermometer.
///
/// Temperature from the resistance of a Pt100, Pt1000 or other platinum element, with the error of
/// two-wire leads and the tolerance of a class.
///
/// Accuracy: The relation is inverted to 1e-9 K from -200 to 850 °C; the class of the element and the
/// meter decide.
///
/// The context holds the settings `class` (Tolerance class of IEC 60751, one of none, AA, A, B, C,
/// default none); `construction` (Wire-wound or film element; it decides how far the class reaches, one
/// of wire, film, default wire); NULL takes every default.
///
/// Source: IEC 60751:2008, 4.2, coefficients from public reproductions (resistance and temperature).
///
/// Source: IEC 60751:2008, tolerance classes, formulae from public reproductions, ranges from memory
/// (tolerance).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_platinum_temperature(
    context: *const fw_context,
    input: *const fw_platinum_temperature_input,
    output: *mut fw_platinum_temperature_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PLATINUM_TEMPERATURE.evaluate::<3, 5>(context, input.cast(), output.cast(), notices) }
}

/// fw_platinum_temperature over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_platinum_temperature_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_platinum_temperature_input,
    input_stride: usize,
    outputs: *mut fw_platinum_temperature_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PLATINUM_TEMPERATURE.batch::<3, 5>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_platinum_temperature into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_platinum_temperature_unset(input: *mut fw_platinum_temperature_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PLATINUM_TEMPERATURE.unset::<3>(input.cast()) }
}

/// What goes into fw_thermistor_beta.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_beta_input {
    /// Resistance measured; allowed 1 to 1e7; usually 100 to 100000.
    pub resistance: fw_ohm,
    /// Resistance at the reference temperature (R25 of most data sheets); allowed 10 to 1000000; usually
    /// 1000 to 100000.
    pub reference_resistance: fw_ohm,
    /// Reference temperature; allowed 223.15 to 473.15 (-50 °C to 200 °C); usually 293.15 to 298.15 (20 °C
    /// to 25 °C); default 298.15 (25 °C).
    pub reference_temperature: fw_kelvin,
    /// Beta of the thermistor; allowed 1000 to 10000; usually 2800 to 4600.
    pub beta: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_thermistor_beta_input>() == 4 * size_of::<f64>());

/// What comes out of fw_thermistor_beta.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_beta_output {
    /// Temperature of the thermistor.
    pub temperature: fw_kelvin,
    /// Relative change of the resistance with temperature there.
    pub sensitivity: fw_per_kelvin,
}
const _: () = assert!(size_of::<fw_thermistor_beta_output>() == 2 * size_of::<f64>());

static THERMISTOR_BETA: Face = Face::new("thermistor_beta");

/// Temperature of a thermistor from Beta.
///
/// Temperature from the resistance, the resistance at a reference temperature and Beta. The constants
/// are inputs, so their tolerances propagate.
///
/// Accuracy: Beta between 25 and 85 °C describes a typical thermistor to about 0.5 K between 0 and 100
/// °C, worse beyond; the tolerances of R₀ and β come on top.
///
/// Source: Beta equation as in IEC 60539-1, from memory (1/T = 1/T₀ + ln(R/R₀)/β).
///
/// Source: Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory (three-term and four-term
/// forms).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_beta(
    input: *const fw_thermistor_beta_input,
    output: *mut fw_thermistor_beta_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_BETA.evaluate::<4, 2>(null(), input.cast(), output.cast(), notices) }
}

/// fw_thermistor_beta over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_beta_batch(
    rows: usize,
    inputs: *const fw_thermistor_beta_input,
    input_stride: usize,
    outputs: *mut fw_thermistor_beta_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_BETA.batch::<4, 2>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_thermistor_beta into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_beta_unset(input: *mut fw_thermistor_beta_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_BETA.unset::<4>(input.cast()) }
}

/// What goes into fw_thermistor_beta_of_points.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_beta_of_points_input {
    /// Resistance at the first temperature; allowed 1 to 1e7.
    pub first_resistance: fw_ohm,
    /// First temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    pub first_temperature: fw_kelvin,
    /// Resistance at the second temperature; allowed 1 to 1e7.
    pub second_resistance: fw_ohm,
    /// Second temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    pub second_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_thermistor_beta_of_points_input>() == 4 * size_of::<f64>());

/// What comes out of fw_thermistor_beta_of_points.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_beta_of_points_output {
    /// Beta of the thermistor between the two temperatures.
    pub beta: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_thermistor_beta_of_points_output>() == 1 * size_of::<f64>());

static THERMISTOR_BETA_OF_POINTS: Face = Face::new("thermistor_beta_of_points");

/// Beta of a thermistor from two points.
///
/// Beta between two points of resistance and temperature, of a data sheet or measured.
///
/// Accuracy: Exact for the points given.
///
/// Source: Beta equation as in IEC 60539-1, from memory (1/T = 1/T₀ + ln(R/R₀)/β).
///
/// Source: Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory (three-term and four-term
/// forms).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_beta_of_points(
    input: *const fw_thermistor_beta_of_points_input,
    output: *mut fw_thermistor_beta_of_points_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_BETA_OF_POINTS.evaluate::<4, 1>(null(), input.cast(), output.cast(), notices) }
}

/// fw_thermistor_beta_of_points over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_beta_of_points_batch(
    rows: usize,
    inputs: *const fw_thermistor_beta_of_points_input,
    input_stride: usize,
    outputs: *mut fw_thermistor_beta_of_points_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_BETA_OF_POINTS.batch::<4, 1>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_thermistor_beta_of_points into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_beta_of_points_unset(input: *mut fw_thermistor_beta_of_points_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_BETA_OF_POINTS.unset::<4>(input.cast()) }
}

/// What goes into fw_thermistor_temperature.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_temperature_input {
    /// Resistance measured; allowed 1 to 1e7; usually 100 to 100000.
    pub resistance: fw_ohm,
}
const _: () = assert!(size_of::<fw_thermistor_temperature_input>() == 1 * size_of::<f64>());

/// What comes out of fw_thermistor_temperature.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_temperature_output {
    /// Temperature of the thermistor.
    pub temperature: fw_kelvin,
    /// Relative change of the resistance with temperature there.
    pub sensitivity: fw_per_kelvin,
}
const _: () = assert!(size_of::<fw_thermistor_temperature_output>() == 2 * size_of::<f64>());

static THERMISTOR_TEMPERATURE: Face = Face::new("thermistor_temperature");

/// Temperature of a thermistor.
///
/// Temperature from the resistance of an NTC thermistor by Beta, by three or four coefficients, or by a
/// curve through points.
///
/// Accuracy: As the curve: Beta about 0.5 K between 0 and 100 °C, three terms about 0.02 K, four terms
/// better; the tolerance of the part comes on top.
///
/// The context holds the settings `curve` (How the thermistor is described: Beta; three Steinhart-Hart
/// coefficients for R in ohm; four coefficients of the powers of ln(R/R₀); or points of resistance and
/// temperature (two give Beta, three the Steinhart-Hart form, four the four-term form), one of beta,
/// steinhart_hart, four_term, points); `reference_resistance` (R₀, for the curves beta and four_term);
/// `reference_temperature` (Temperature of R₀, for the curve beta, default 25 degC); `beta` (Beta, for
/// the curve beta); `coefficients` (Three or four coefficients, for the curves steinhart_hart and
/// four_term); `resistances` (Resistances of two to four points); `temperatures` (Temperatures of the
/// points, in the order of the resistances); NULL takes every default.
///
/// Source: Beta equation as in IEC 60539-1, from memory (1/T = 1/T₀ + ln(R/R₀)/β).
///
/// Source: Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory (three-term and four-term
/// forms).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_temperature(
    context: *const fw_context,
    input: *const fw_thermistor_temperature_input,
    output: *mut fw_thermistor_temperature_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_TEMPERATURE.evaluate::<1, 2>(context, input.cast(), output.cast(), notices) }
}

/// fw_thermistor_temperature over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_temperature_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_thermistor_temperature_input,
    input_stride: usize,
    outputs: *mut fw_thermistor_temperature_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_TEMPERATURE.batch::<1, 2>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_thermistor_temperature into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_temperature_unset(input: *mut fw_thermistor_temperature_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_TEMPERATURE.unset::<1>(input.cast()) }
}

/// What goes into fw_thermistor_check.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_check_input {
    /// Temperature of the thermistor, from a thermometer beside it; allowed 223.15 to 473.15 (-50 °C to 200
    /// °C); usually 253.15 to 383.15 (-20 °C to 110 °C).
    pub temperature: fw_kelvin,
    /// By how much that temperature may be wrong, either way; allowed 0 to 20; usually 0 to 5; default 0.
    pub temperature_tolerance: fw_kelvin_difference,
    /// Tolerance of the resistance at the reference temperature, either way; allowed 0 to 0.3 (0 % to 30
    /// %); usually 0 to 0.1 (0 % to 10 %); default 0 (0 %).
    pub resistance_tolerance: fw_ratio,
    /// Tolerance of Beta, either way; allowed 0 to 0.1 (0 % to 10 %); usually 0 to 0.03 (0 % to 3 %);
    /// default 0 (0 %).
    pub beta_tolerance: fw_ratio,
    /// Reference temperature, at which the tolerance of the resistance holds alone; allowed 223.15 to
    /// 473.15 (-50 °C to 200 °C); usually 293.15 to 298.15 (20 °C to 25 °C); default 298.15 (25 °C).
    pub reference_temperature: fw_kelvin,
    /// Resistance measured, if it was; allowed 0.1 to 1e8; NaN means: not measured.
    pub measured_resistance: fw_ohm,
}
const _: () = assert!(size_of::<fw_thermistor_check_input>() == 6 * size_of::<f64>());

/// What comes out of fw_thermistor_check.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_check_output {
    /// Resistance of a nominal thermistor.
    pub resistance: fw_ohm,
    /// Lowest resistance of a sound one, all tolerances at their worst together.
    pub lowest_resistance: fw_ohm,
    /// Highest resistance of a sound one, all tolerances at their worst together.
    pub highest_resistance: fw_ohm,
    /// Relative change of the resistance with temperature.
    pub sensitivity: fw_per_kelvin,
    /// Temperature that the control reads from the measured resistance; NaN means: not measured, or no
    /// temperature has that resistance.
    pub indicated_temperature: fw_kelvin,
    /// By how much that is above the true temperature; NaN means: not measured, or no temperature has that
    /// resistance.
    pub deviation: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_thermistor_check_output>() == 6 * size_of::<f64>());

static THERMISTOR_CHECK: Face = Face::new("thermistor_check");

/// Thermistor check with an ohmmeter.
///
/// Resistance to expect of an NTC thermistor at a temperature and the band its tolerances allow, with a
/// table from -20 to 110 °C to check against, and what a measured resistance would make the control
/// believe.
///
/// Accuracy: The band is the worst case of the stated tolerances, not a statistical one.
///
/// Caution: Measure resistance only on a sensor that is unplugged and dead; the board must be isolated
/// first.
///
/// The context holds the settings `curve` (How the thermistor is described: Beta; three Steinhart-Hart
/// coefficients for R in ohm; four coefficients of the powers of ln(R/R₀); or points of resistance and
/// temperature (two give Beta, three the Steinhart-Hart form, four the four-term form), one of beta,
/// steinhart_hart, four_term, points); `reference_resistance` (R₀, for the curves beta and four_term);
/// `reference_temperature` (Temperature of R₀, for the curve beta, default 25 degC); `beta` (Beta, for
/// the curve beta); `coefficients` (Three or four coefficients, for the curves steinhart_hart and
/// four_term); `resistances` (Resistances of two to four points); `temperatures` (Temperatures of the
/// points, in the order of the resistances); NULL takes every default.
///
/// Source: Beta equation as in IEC 60539-1, from memory (1/T = 1/T₀ + ln(R/R₀)/β).
///
/// Source: Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory (three-term and four-term
/// forms).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_check(
    context: *const fw_context,
    input: *const fw_thermistor_check_input,
    output: *mut fw_thermistor_check_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_CHECK.evaluate::<6, 6>(context, input.cast(), output.cast(), notices) }
}

/// fw_thermistor_check over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_check_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_thermistor_check_input,
    input_stride: usize,
    outputs: *mut fw_thermistor_check_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_CHECK.batch::<6, 6>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_thermistor_check into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_check_unset(input: *mut fw_thermistor_check_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_CHECK.unset::<6>(input.cast()) }
}

/// What goes into fw_thermistor_fit.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_fit_input {
    /// Resistance at the first temperature; allowed 1 to 1e7.
    pub first_resistance: fw_ohm,
    /// First temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    pub first_temperature: fw_kelvin,
    /// Resistance at the second temperature; allowed 1 to 1e7.
    pub second_resistance: fw_ohm,
    /// Second temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    pub second_temperature: fw_kelvin,
    /// Resistance at the third temperature; allowed 1 to 1e7.
    pub third_resistance: fw_ohm,
    /// Third temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    pub third_temperature: fw_kelvin,
    /// A resistance to be turned into a temperature with the fit; allowed 1 to 1e7; NaN means: none asked.
    pub resistance: fw_ohm,
}
const _: () = assert!(size_of::<fw_thermistor_fit_input>() == 7 * size_of::<f64>());

/// What comes out of fw_thermistor_fit.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_fit_output {
    /// Coefficient A.
    pub coefficient_a: fw_per_kelvin,
    /// Coefficient B, of ln R.
    pub coefficient_b: fw_per_kelvin,
    /// Coefficient C, of (ln R)³.
    pub coefficient_c: fw_per_kelvin,
    /// Temperature for the resistance asked; NaN means: no resistance was asked for, or the curve has no
    /// temperature there.
    pub temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_thermistor_fit_output>() == 4 * size_of::<f64>());

static THERMISTOR_FIT: Face = Face::new("thermistor_fit");

/// Steinhart-Hart coefficients from three points.
///
/// The three-term curve through three points of resistance and temperature, and the temperature it
/// gives for another resistance.
///
/// Accuracy: Between points 0, 40 and 85 °C the curve follows a typical thermistor to about 0.01 K;
/// outside the points it strays.
///
/// Source: Beta equation as in IEC 60539-1, from memory (1/T = 1/T₀ + ln(R/R₀)/β).
///
/// Source: Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory (three-term and four-term
/// forms).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_fit(
    input: *const fw_thermistor_fit_input,
    output: *mut fw_thermistor_fit_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_FIT.evaluate::<7, 4>(null(), input.cast(), output.cast(), notices) }
}

/// fw_thermistor_fit over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_fit_batch(
    rows: usize,
    inputs: *const fw_thermistor_fit_input,
    input_stride: usize,
    outputs: *mut fw_thermistor_fit_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_FIT.batch::<7, 4>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_thermistor_fit into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermistor_fit_unset(input: *mut fw_thermistor_fit_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMISTOR_FIT.unset::<7>(input.cast()) }
}

/// What goes into fw_thermocouple_temperature.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermocouple_temperature_input {
    /// Voltage at the meter; allowed -0.015 to 0.08 (-15 mV to 80 mV); usually -0.002 to 0.025 (-2 mV to 25
    /// mV).
    pub voltage: fw_volt,
    /// Temperature where the couple joins the copper of the meter; allowed 233.15 to 353.15 (-40 °C to 80
    /// °C); usually 273.15 to 313.15 (0 °C to 40 °C).
    pub reference_junction_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_thermocouple_temperature_input>() == 2 * size_of::<f64>());

/// What comes out of fw_thermocouple_temperature.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermocouple_temperature_output {
    /// EMF of the reference junction, which is added to the voltage.
    pub reference_junction_emf: fw_volt,
    /// EMF of the measuring junction, referred to 0 °C.
    pub emf: fw_volt,
    /// Temperature of the measuring junction.
    pub temperature: fw_kelvin,
    /// Seebeck coefficient there.
    pub seebeck_coefficient: fw_volt_per_kelvin,
    /// Error made by whoever looks the voltage up in the table and adds the temperature of the reference
    /// junction; NaN means: the voltage alone has no temperature.
    pub addition_error: fw_kelvin_difference,
    /// Half-width of the tolerance of the class at this temperature; NaN means: no class was named, or the
    /// type has no such class.
    pub tolerance: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_thermocouple_temperature_output>() == 6 * size_of::<f64>());

static THERMOCOUPLE_TEMPERATURE: Face = Face::new("thermocouple_temperature");

/// Temperature of a thermocouple.
///
/// Temperature of the measuring junction from the voltage at the meter and the temperature of the
/// reference junction, whose EMF is added.
///
/// Accuracy: The reference function is inverted to 1e-9 K (at the joins of its pieces it steps itself
/// by up to 1.2e-6 K); the class of the wire decides.
///
/// The context holds the settings `type` (Letter of the thermocouple type, IEC 60584-1, one of K, J, T,
/// N, S, R, B, E, default K); `class` (Tolerance class of IEC 60584-1, one of none, 1, 2, 3, default
/// none); NULL takes every default.
///
/// Source: NIST Standard Reference Database 60 (Monograph 175), same functions as IEC 60584-1:2013 (EMF
/// on ITS-90, reference junction at 0 °C).
///
/// Source: IEC 60584-1:2013, tolerance classes, from two public reproductions (tolerance).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermocouple_temperature(
    context: *const fw_context,
    input: *const fw_thermocouple_temperature_input,
    output: *mut fw_thermocouple_temperature_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOCOUPLE_TEMPERATURE.evaluate::<2, 6>(context, input.cast(), output.cast(), notices) }
}

/// fw_thermocouple_temperature over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermocouple_temperature_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_thermocouple_temperature_input,
    input_stride: usize,
    outputs: *mut fw_thermocouple_temperature_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOCOUPLE_TEMPERATURE.batch::<2, 6>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_thermocouple_temperature into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermocouple_temperature_unset(input: *mut fw_thermocouple_temperature_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOCOUPLE_TEMPERATURE.unset::<2>(input.cast()) }
}

/// What goes into fw_thermocouple_voltage.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermocouple_voltage_input {
    /// Temperature of the measuring junction; allowed 3.15 to 2093.15 (-270 °C to 1820 °C); usually 253.15
    /// to 873.15 (-20 °C to 600 °C).
    pub temperature: fw_kelvin,
    /// Temperature where the couple joins the copper of the meter; allowed 233.15 to 353.15 (-40 °C to 80
    /// °C); usually 273.15 to 313.15 (0 °C to 40 °C); default 273.15 (0 °C).
    pub reference_junction_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_thermocouple_voltage_input>() == 2 * size_of::<f64>());

/// What comes out of fw_thermocouple_voltage.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermocouple_voltage_output {
    /// Voltage at the meter.
    pub voltage: fw_volt,
    /// EMF of the measuring junction, referred to 0 °C.
    pub emf: fw_volt,
    /// EMF of the reference junction, which is taken off it.
    pub reference_junction_emf: fw_volt,
    /// Seebeck coefficient at the measuring junction.
    pub seebeck_coefficient: fw_volt_per_kelvin,
    /// Half-width of the tolerance of the class at this temperature; NaN means: no class was named, or the
    /// type has no such class.
    pub tolerance: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_thermocouple_voltage_output>() == 5 * size_of::<f64>());

static THERMOCOUPLE_VOLTAGE: Face = Face::new("thermocouple_voltage");

/// Voltage of a thermocouple.
///
/// Voltage to expect at the meter for the temperatures of both junctions.
///
/// Accuracy: The reference function is exact by definition; the class of the wire decides.
///
/// The context holds the settings `type` (Letter of the thermocouple type, IEC 60584-1, one of K, J, T,
/// N, S, R, B, E, default K); `class` (Tolerance class of IEC 60584-1, one of none, 1, 2, 3, default
/// none); NULL takes every default.
///
/// Source: NIST Standard Reference Database 60 (Monograph 175), same functions as IEC 60584-1:2013 (EMF
/// on ITS-90, reference junction at 0 °C).
///
/// Source: IEC 60584-1:2013, tolerance classes, from two public reproductions (tolerance).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermocouple_voltage(
    context: *const fw_context,
    input: *const fw_thermocouple_voltage_input,
    output: *mut fw_thermocouple_voltage_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOCOUPLE_VOLTAGE.evaluate::<2, 5>(context, input.cast(), output.cast(), notices) }
}

/// fw_thermocouple_voltage over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermocouple_voltage_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_thermocouple_voltage_input,
    input_stride: usize,
    outputs: *mut fw_thermocouple_voltage_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOCOUPLE_VOLTAGE.batch::<2, 5>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_thermocouple_voltage into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermocouple_voltage_unset(input: *mut fw_thermocouple_voltage_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOCOUPLE_VOLTAGE.unset::<2>(input.cast()) }
}

/// What goes into fw_thermostat_differential.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermostat_differential_input {
    /// Operating value on rising temperature: the burner stops; allowed 253.15 to 473.15 (-20 °C to 200
    /// °C); usually 293.15 to 373.15 (20 °C to 100 °C).
    pub cut_out_temperature: fw_kelvin,
    /// Operating value on falling temperature: the burner lights again; allowed 253.15 to 473.15 (-20 °C to
    /// 200 °C); usually 283.15 to 368.15 (10 °C to 95 °C).
    pub cut_in_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_thermostat_differential_input>() == 2 * size_of::<f64>());

/// What comes out of fw_thermostat_differential.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermostat_differential_output {
    /// Difference of the two operating values.
    pub differential: fw_kelvin_difference,
    /// Middle between them.
    pub mid_point: fw_kelvin,
}
const _: () = assert!(size_of::<fw_thermostat_differential_output>() == 2 * size_of::<f64>());

static THERMOSTAT_DIFFERENTIAL: Face = Face::new("thermostat_differential");

/// Differential of a thermostat.
///
/// Differential and mid-point from the temperature at which a thermostat opens and the one at which it
/// closes again.
///
/// Accuracy: As the two readings; the probe must sit where the thermostat's sensor sits.
///
/// Caution: A switching point is where the sensor is, not where the water is hottest: compare at the
/// phial or pocket.
///
/// Caution: Never bridge or lift a thermostat or limit to get a reading.
///
/// Caution: A cast-iron block and its water stay hot for tens of minutes after the burner stops:
/// scalding and steam.
///
/// Source: IEC 60730-1 (wording from memory) (operating value, differential).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermostat_differential(
    input: *const fw_thermostat_differential_input,
    output: *mut fw_thermostat_differential_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOSTAT_DIFFERENTIAL.evaluate::<2, 2>(null(), input.cast(), output.cast(), notices) }
}

/// fw_thermostat_differential over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermostat_differential_batch(
    rows: usize,
    inputs: *const fw_thermostat_differential_input,
    input_stride: usize,
    outputs: *mut fw_thermostat_differential_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOSTAT_DIFFERENTIAL.batch::<2, 2>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_thermostat_differential into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermostat_differential_unset(input: *mut fw_thermostat_differential_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOSTAT_DIFFERENTIAL.unset::<2>(input.cast()) }
}

/// What goes into fw_thermostat_test.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermostat_test_input {
    /// Temperature the thermostat is set to; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN means: not
    /// stated.
    pub set_point: fw_kelvin,
}
const _: () = assert!(size_of::<fw_thermostat_test_input>() == 1 * size_of::<f64>());

/// What comes out of fw_thermostat_test.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermostat_test_output {
    /// Mean operating value on rising temperature: the burner stops.
    pub cut_out: fw_kelvin,
    /// Mean operating value on falling temperature: the burner lights again.
    pub cut_in: fw_kelvin,
    /// Differential: cut-out less cut-in, a difference and not a temperature.
    pub differential: fw_kelvin_difference,
    /// Middle between cut-out and cut-in.
    pub mid_point: fw_kelvin,
    /// Cut-out less set point; NaN means: no set point was stated.
    pub offset: fw_kelvin_difference,
    /// Repeatability of the cut-out: experimental standard deviation of one reading; NaN means: fewer than
    /// two readings.
    pub cut_out_repeatability: fw_kelvin_difference,
    /// Repeatability of the cut-in; NaN means: fewer than two readings.
    pub cut_in_repeatability: fw_kelvin_difference,
    /// Standard uncertainty of the mean cut-out, type A; NaN means: fewer than two readings.
    pub cut_out_uncertainty: fw_kelvin_difference,
    /// Standard uncertainty of the mean cut-in, type A; NaN means: fewer than two readings.
    pub cut_in_uncertainty: fw_kelvin_difference,
    /// Highest less lowest cut-out.
    pub cut_out_spread: fw_kelvin_difference,
    /// Highest less lowest cut-in.
    pub cut_in_spread: fw_kelvin_difference,
    /// Drift of the cut-out from one cycle to the next, from a straight line through the readings in their
    /// order; NaN means: fewer than two readings.
    pub cut_out_drift: fw_kelvin_difference,
    /// Drift of the cut-in from one cycle to the next; NaN means: fewer than two readings.
    pub cut_in_drift: fw_kelvin_difference,
    /// Standard uncertainty of the drift of the cut-out per cycle; NaN means: fewer than three readings.
    pub cut_out_drift_uncertainty: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_thermostat_test_output>() == 14 * size_of::<f64>());

static THERMOSTAT_TEST: Face = Face::new("thermostat_test");

/// Thermostat test.
///
/// Cut-out, cut-in, differential, repeatability and drift of a control thermostat from repeated
/// readings. Not for judging a limit thermostat.
///
/// Accuracy: That of the thermometer and of its contact; a probe that lags reads the cut-out low and
/// the cut-in high. The lag is not in the uncertainties given.
///
/// Caution: A switching point is where the sensor is, not where the water is hottest: compare at the
/// phial or pocket.
///
/// Caution: Never bridge or lift a thermostat or limit to get a reading.
///
/// Caution: A cast-iron block and its water stay hot for tens of minutes after the burner stops:
/// scalding and steam.
///
/// The context holds the settings `cut_outs` (Temperatures at which the contact opened on the rise, in
/// order); `cut_ins` (Temperatures at which the contact closed again on the fall, in order); NULL takes
/// every default.
///
/// Source: IEC 60730-1 and -2-9 (wording from memory) (operating value, differential).
///
/// Source: JCGM 100:2008, 4.2 (standard deviation of repeated readings and of their mean).
///
/// Source: least-squares line, textbook (drift and its uncertainty).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermostat_test(
    context: *const fw_context,
    input: *const fw_thermostat_test_input,
    output: *mut fw_thermostat_test_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOSTAT_TEST.evaluate::<1, 14>(context, input.cast(), output.cast(), notices) }
}

/// fw_thermostat_test over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermostat_test_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_thermostat_test_input,
    input_stride: usize,
    outputs: *mut fw_thermostat_test_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOSTAT_TEST.batch::<1, 14>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_thermostat_test into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_thermostat_test_unset(input: *mut fw_thermostat_test_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { THERMOSTAT_TEST.unset::<1>(input.cast()) }
}

/// What goes into fw_u_gauge.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_u_gauge_input {
    /// How far the liquid fell in the limb that is joined to the gas; negative for a suction; allowed -1 to
    /// 1 (-1000 mm to 1000 mm); usually -0.15 to 0.3 (-150 mm to 300 mm).
    pub limb_down: fw_metre_one_limb,
    /// How far the liquid rose in the limb that is open to the air; negative for a suction; allowed -1 to 1
    /// (-1000 mm to 1000 mm); usually -0.15 to 0.3 (-150 mm to 300 mm).
    pub limb_up: fw_metre_one_limb,
    /// Temperature of the liquid; allowed 273.15 to 333.15 (0 °C to 60 °C); usually 275.15 to 308.15 (2 °C
    /// to 35 °C); default 293.15 (20 °C).
    pub liquid_temperature: fw_kelvin,
    /// Acceleration of gravity at the place; allowed 9.7 to 9.9; usually 9.78 to 9.84; default 9.80665.
    pub gravity: fw_metre_per_second_squared,
    /// Pressure of the atmosphere, which decides the weight of the air column in the open limb; allowed
    /// 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 105000 (800 mbar to 1050 mbar); default
    /// 101325 (1013.25 mbar).
    pub barometer: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_u_gauge_input>() == 5 * size_of::<f64>());

/// What comes out of fw_u_gauge.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_u_gauge_output {
    /// Level difference that balances the pressure.
    pub level_difference: fw_metre_both_limbs,
    /// Density of the liquid at its temperature.
    pub liquid_density: fw_kilogram_per_cubic_metre,
    /// Pressure above the atmosphere by the weight of the liquid alone, with its true density and local
    /// gravity.
    pub pressure: fw_pascal_gauge,
    /// The same less the weight of the air that stands in the place of the liquid in the other limb.
    pub pressure_less_air: fw_pascal_gauge,
    /// What the same reading is in conventional units of water column: 1000 kg/m³ and standard gravity.
    pub pressure_conventional: fw_pascal_gauge,
    /// Share by which the conventional figure is too high; NaN means: no level difference.
    pub convention_error: fw_ratio,
}
const _: () = assert!(size_of::<fw_u_gauge_output>() == 6 * size_of::<f64>());

static U_GAUGE: Face = Face::new("u_gauge");

/// U-gauge, both limbs.
///
/// Gauge pressure from how far the liquid fell in one limb and rose in the other. Both are asked for,
/// since one alone is half the pressure.
///
/// Accuracy: The sum is good to 0.001 %; the reading of a limb to half a millimetre decides, which is
/// 0.05 mbar.
///
/// Caution: Working on gas is for people legally competent to do it, to the procedure in force where
/// they work; a computed pressure certifies nothing.
///
/// The context holds the settings `liquid` (The liquid in the gauge: water, or one of stated density,
/// one of water, stated, default water); `density` (Density of a stated liquid); `density_temperature`
/// (Temperature of the stated density, default 20 degC); `expansion_coefficient` (Cubic expansion
/// coefficient of a stated liquid, default 0 1/K); NULL takes every default.
///
/// Source: hydrostatics, p = ρ g h (pressure of a column).
///
/// Source: IAPWS SR6-08(2011), liquid water at 0.1 MPa (density of water).
///
/// Source: NIST SP 811 (2008), Appendix B.8 (conventional water, standard gravity).
///
/// Source: Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331, as fitted in the air module (density
/// of dry air).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_u_gauge(
    context: *const fw_context,
    input: *const fw_u_gauge_input,
    output: *mut fw_u_gauge_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { U_GAUGE.evaluate::<5, 6>(context, input.cast(), output.cast(), notices) }
}

/// fw_u_gauge over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_u_gauge_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_u_gauge_input,
    input_stride: usize,
    outputs: *mut fw_u_gauge_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { U_GAUGE.batch::<5, 6>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_u_gauge into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_u_gauge_unset(input: *mut fw_u_gauge_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { U_GAUGE.unset::<5>(input.cast()) }
}
