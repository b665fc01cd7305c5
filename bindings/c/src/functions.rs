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

/// Volume per energy, SI.
pub type fw_cubic_metre_per_joule = f64;

/// Volume per energy (gross), SI.
pub type fw_cubic_metre_per_joule_gross = f64;

/// Volume per energy (net), SI.
pub type fw_cubic_metre_per_joule_net = f64;

/// Specific volume, SI.
pub type fw_cubic_metre_per_kilogram = f64;

/// Volume flow, SI.
pub type fw_cubic_metre_per_second = f64;

/// Volume flow (at reference conditions), SI.
pub type fw_cubic_metre_per_second_at_reference_conditions = f64;

/// Volume flow (at the meter), SI.
pub type fw_cubic_metre_per_second_at_the_meter = f64;

/// Volume per power, SI.
pub type fw_cubic_metre_per_watt = f64;

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

/// Molar energy, SI.
pub type fw_joule_per_mole = f64;

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

/// Mass per energy (gross), SI.
pub type fw_kilogram_per_joule_gross = f64;

/// Mass per energy (net), SI.
pub type fw_kilogram_per_joule_net = f64;

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

/// Ratio (air-free), SI.
pub type fw_ratio_air_free = f64;

/// Ratio (dry), SI.
pub type fw_ratio_dry = f64;

/// Ratio (gross), SI.
pub type fw_ratio_gross = f64;

/// Ratio (net), SI.
pub type fw_ratio_net = f64;

/// Ratio (wet), SI.
pub type fw_ratio_wet = f64;

/// Time, SI.
pub type fw_second = f64;

/// Area, SI.
pub type fw_square_metre = f64;

/// Area (equivalent), SI.
pub type fw_square_metre_equivalent = f64;

/// Area (free), SI.
pub type fw_square_metre_free = f64;

/// Thermal resistance of an area, SI.
pub type fw_square_metre_kelvin_per_watt = f64;

/// Area (overall), SI.
pub type fw_square_metre_overall = f64;

/// Kinematic viscosity, SI.
pub type fw_square_metre_per_second = f64;

/// Area per power, SI.
pub type fw_square_metre_per_watt = f64;

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

/// What goes into fw_combustion_air_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_combustion_air_flow_input {
    /// Heat input on the net calorific value; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to
    /// 1000000 (1 kW to 1000 kW).
    pub heat_input_net: fw_watt_net,
    /// Net calorific value of the gas at the reference conditions of its volume; allowed 1000000 to 2e8 (1
    /// MJ/m³ to 200 MJ/m³); usually 1e7 to 1.3e8 (10 MJ/m³ to 130 MJ/m³).
    pub net_calorific_value: fw_joule_per_cubic_metre_net,
    /// Air needed per volume of gas; allowed 0.5 to 60.
    pub stoichiometric_air: fw_ratio,
    /// Excess air ratio, the air drawn in by a draught diverter counted; allowed 1 to 20.
    pub excess_air_ratio: fw_ratio,
}
const _: () = assert!(size_of::<fw_combustion_air_flow_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_combustion_air_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_combustion_air_flow_output {
    /// Gas rate at the reference conditions of the calorific value.
    pub gas_rate: fw_cubic_metre_per_second_at_reference_conditions,
    /// Air flow at the same conditions.
    pub air_flow: fw_cubic_metre_per_second,
}
const _: () = assert!(size_of::<fw_combustion_air_flow_output>() == size_of::<[f64; 2]>());

static COMBUSTION_AIR_FLOW: Face = Face::new("combustion_air_flow");

/// Combustion air flow.
///
/// Gas rate and air flow of a burner from its net heat input, the gas and the excess air ratio.
///
/// Accuracy: Exact arithmetic on the inputs.
///
/// Source: definition (gas rate = heat input / net calorific value; air = gas rate × air needed ×
/// excess air ratio).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_combustion_air_flow(
    input: *const fw_combustion_air_flow_input,
    output: *mut fw_combustion_air_flow_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COMBUSTION_AIR_FLOW.evaluate::<4, 2>(null(), input.cast(), output.cast(), notices) }
}

/// fw_combustion_air_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_combustion_air_flow_batch(
    rows: usize,
    inputs: *const fw_combustion_air_flow_input,
    input_stride: usize,
    outputs: *mut fw_combustion_air_flow_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COMBUSTION_AIR_FLOW.batch::<4, 2>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_combustion_air_flow into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_combustion_air_flow_unset(input: *mut fw_combustion_air_flow_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COMBUSTION_AIR_FLOW.unset::<4>(input.cast()) }
}

/// What goes into fw_combustion_products.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_combustion_products_input {
    /// Excess air ratio: air supplied over air needed. Below 1 the mixture is rich, and its products are
    /// another matter; allowed 1 to 50; usually 1 to 3; default 1.
    pub excess_air_ratio: fw_ratio,
    /// Temperature of the combustion air, for its humidity; allowed 253.15 to 333.15 (-20 °C to 60 °C);
    /// default 293.15 (20 °C).
    pub air_temperature: fw_kelvin,
    /// Relative humidity of the combustion air; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub relative_humidity: fw_ratio,
    /// Absolute pressure of the atmosphere; allowed 60000 to 110000 (600 mbar to 1100 mbar); default 101325
    /// (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Compression factor of the fuel gas at 15 °C, for the real volume of air per volume of gas; allowed
    /// 0.8 to 1.1; default 1.
    pub fuel_compression_factor: fw_ratio,
}
const _: () = assert!(size_of::<fw_combustion_products_input>() == size_of::<[f64; 5]>());

/// What comes out of fw_combustion_products.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_combustion_products_output {
    /// Dry air needed per volume of gas, both at the same temperature and pressure; NaN means: the fuel is
    /// not a gas.
    pub stoichiometric_air: fw_ratio,
    /// The same with the compression factors of gas and air at 15 °C; NaN means: the fuel is not a gas.
    pub stoichiometric_air_real: fw_ratio,
    /// Oxygen needed per volume of gas; NaN means: the fuel is not a gas.
    pub stoichiometric_oxygen: fw_ratio,
    /// Dry flue gas per volume of gas; NaN means: the fuel is not a gas.
    pub dry_flue: fw_ratio,
    /// Wet flue gas per volume of gas; NaN means: the fuel is not a gas.
    pub wet_flue: fw_ratio,
    /// Water vapour per volume of gas; NaN means: the fuel is not a gas.
    pub water_vapour: fw_ratio,
    /// Carbon dioxide per volume of gas; NaN means: the fuel is not a gas.
    pub carbon_dioxide: fw_ratio,
    /// Dry air needed, normal cubic metres per kilogram of fuel.
    pub stoichiometric_air_per_mass: fw_cubic_metre_per_kilogram,
    /// Oxygen needed, normal cubic metres per kilogram of fuel.
    pub stoichiometric_oxygen_per_mass: fw_cubic_metre_per_kilogram,
    /// Dry flue gas, normal cubic metres per kilogram of fuel.
    pub dry_flue_per_mass: fw_cubic_metre_per_kilogram,
    /// Wet flue gas, normal cubic metres per kilogram of fuel.
    pub wet_flue_per_mass: fw_cubic_metre_per_kilogram,
    /// Water vapour, normal cubic metres per kilogram of fuel.
    pub water_vapour_per_mass: fw_cubic_metre_per_kilogram,
    /// Carbon dioxide, normal cubic metres per kilogram of fuel.
    pub carbon_dioxide_per_mass: fw_cubic_metre_per_kilogram,
    /// Mass of dry air needed over mass of fuel.
    pub stoichiometric_air_mass: fw_ratio,
    /// Mass of the dry air supplied over mass of fuel.
    pub air_mass: fw_ratio,
    /// Mass of wet flue gas over mass of fuel.
    pub flue_mass: fw_ratio,
    /// Mass of water in the flue gas over mass of fuel.
    pub water_mass: fw_ratio,
    /// Water in the air, mass over mass of dry air.
    pub humidity_ratio: fw_ratio,
    /// Largest carbon dioxide in dry flue gas: complete combustion without excess air.
    pub carbon_dioxide_maximum: fw_ratio_dry,
    /// Oxygen in dry flue gas.
    pub oxygen_dry: fw_ratio_dry,
    /// Carbon dioxide in dry flue gas.
    pub carbon_dioxide_dry: fw_ratio_dry,
    /// Carbon dioxide in wet flue gas.
    pub carbon_dioxide_wet: fw_ratio_wet,
    /// Water vapour in wet flue gas.
    pub water_wet: fw_ratio_wet,
    /// Oxygen in wet flue gas.
    pub oxygen_wet: fw_ratio_wet,
    /// Nitrogen in wet flue gas.
    pub nitrogen_wet: fw_ratio_wet,
    /// Argon in wet flue gas.
    pub argon_wet: fw_ratio_wet,
    /// Sulphur dioxide in wet flue gas.
    pub sulphur_dioxide_wet: fw_ratio_wet,
    /// Temperature at which the flue gas begins to condense; NaN means: too little water vapour to condense
    /// above 0 °C.
    pub water_dew_point: fw_kelvin,
    /// Molar mass of the wet flue gas.
    pub flue_molar_mass: fw_kilogram_per_mole,
    /// Density of the wet flue gas at 0 °C and 1013.25 mbar, had nothing condensed.
    pub flue_normal_density: fw_kilogram_per_cubic_metre,
    /// Dry air needed, normal cubic metres per net heat input.
    pub stoichiometric_air_per_net_heat: fw_cubic_metre_per_joule_net,
    /// Dry flue gas, normal cubic metres per net heat input.
    pub dry_flue_per_net_heat: fw_cubic_metre_per_joule_net,
    /// Dry flue gas, normal cubic metres per gross heat input.
    pub dry_flue_per_gross_heat: fw_cubic_metre_per_joule_gross,
    /// Carbon dioxide from the fuel per gross heat input.
    pub carbon_dioxide_per_gross_heat: fw_kilogram_per_joule_gross,
}
const _: () = assert!(size_of::<fw_combustion_products_output>() == size_of::<[f64; 34]>());

static COMBUSTION_PRODUCTS: Face = Face::new("combustion_products");

/// Air needed and flue gas made.
///
/// Stoichiometric air, dry and wet flue gas, largest carbon dioxide, composition, dew point and amounts
/// per heat input of a fuel, at any excess air ratio from 1, with humid air.
///
/// Accuracy: Amounts as exact as the composition; dew point 0.02 K of the formulation, 0.1 K of real
/// flue gas.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
/// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
/// every default.
///
/// Source: element balance (air and flue gas; the composition of dry air is stated in the setting).
///
/// Source: ISO 6976:2016 (atomic masses, calorific values at 25 °C, compression factor of air).
///
/// Source: IAPWS-IF97 region 4 (dew point and humidity, without enhancement factor).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_combustion_products(
    context: *const fw_context,
    input: *const fw_combustion_products_input,
    output: *mut fw_combustion_products_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COMBUSTION_PRODUCTS.evaluate::<5, 34>(context, input.cast(), output.cast(), notices) }
}

/// fw_combustion_products over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_combustion_products_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_combustion_products_input,
    input_stride: usize,
    outputs: *mut fw_combustion_products_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COMBUSTION_PRODUCTS.batch::<5, 34>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_combustion_products into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_combustion_products_unset(input: *mut fw_combustion_products_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COMBUSTION_PRODUCTS.unset::<5>(input.cast()) }
}

/// What goes into fw_flame_temperature.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flame_temperature_input {
    /// Excess air ratio: air supplied over air needed; allowed 1 to 20; default 1.
    pub excess_air_ratio: fw_ratio,
    /// Temperature of the fuel gas; liquids and solids are taken to enter at 25 °C; allowed 233.15 to
    /// 373.15 (-40 °C to 100 °C); default 298.15 (25 °C).
    pub fuel_temperature: fw_kelvin,
    /// Temperature of the combustion air; allowed 233.15 to 873.15 (-40 °C to 600 °C); default 298.15 (25
    /// °C).
    pub air_temperature: fw_kelvin,
    /// Water in the combustion air as relative humidity at 20 °C; allowed 0 to 1 (0 % to 100 %); default 0
    /// (0 %).
    pub relative_humidity_20: fw_ratio,
    /// Absolute pressure; allowed 10000 to 2000000 (100 mbar to 20000 mbar); default 101325 (1013.25 mbar).
    pub pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_flame_temperature_input>() == size_of::<[f64; 5]>());

/// What comes out of fw_flame_temperature.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flame_temperature_output {
    /// Adiabatic flame temperature in chemical equilibrium, with dissociation.
    pub flame_temperature: fw_kelvin,
    /// Adiabatic flame temperature if combustion were complete; too high above about 1500 °C.
    pub flame_temperature_complete: fw_kelvin,
    /// Carbon monoxide in the wet gas in equilibrium at flame temperature; nearly all of it burns on
    /// cooling.
    pub carbon_monoxide_wet: fw_ratio_wet,
    /// Nitric oxide in the wet gas in equilibrium at flame temperature; a flame has no time to form as
    /// much.
    pub nitric_oxide_wet: fw_ratio_wet,
    /// Oxygen in the wet gas in equilibrium at flame temperature.
    pub oxygen_wet: fw_ratio_wet,
    /// Hydrogen in the wet gas in equilibrium at flame temperature.
    pub hydrogen_wet: fw_ratio_wet,
}
const _: () = assert!(size_of::<fw_flame_temperature_output>() == size_of::<[f64; 6]>());

static FLAME_TEMPERATURE: Face = Face::new("flame_temperature");

/// Adiabatic flame temperature.
///
/// Temperature of the flame if no heat left it, with dissociation in chemical equilibrium and for
/// complete combustion, and the carbon monoxide and nitric oxide that belong to it.
///
/// Accuracy: 2 K in equilibrium (CO2, CO, H2O, H2, O2, OH, H, O, N2, NO), 1 K complete. A real flame is
/// colder: it radiates.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
/// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
/// every default.
///
/// Source: NASA TM-4513 (1993) (enthalpies and entropies, 200 to 6000 K).
///
/// Source: NASA RP-1311 part I (1994), section 2 (iteration to the least Gibbs energy).
///
/// Source: ISO 6976:2016 (net calorific value at 25 °C).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flame_temperature(
    context: *const fw_context,
    input: *const fw_flame_temperature_input,
    output: *mut fw_flame_temperature_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLAME_TEMPERATURE.evaluate::<5, 6>(context, input.cast(), output.cast(), notices) }
}

/// fw_flame_temperature over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flame_temperature_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_flame_temperature_input,
    input_stride: usize,
    outputs: *mut fw_flame_temperature_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLAME_TEMPERATURE.batch::<5, 6>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_flame_temperature into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flame_temperature_unset(input: *mut fw_flame_temperature_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLAME_TEMPERATURE.unset::<5>(input.cast()) }
}

/// What goes into fw_gas_enthalpy.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_enthalpy_input {
    /// Temperature of the gas; allowed 223.15 to 2973.15 (-50 °C to 2700 °C); usually 273.15 to 873.15 (0
    /// °C to 600 °C).
    pub temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_gas_enthalpy_input>() == size_of::<[f64; 1]>());

/// What comes out of fw_gas_enthalpy.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_enthalpy_output {
    /// Carbon dioxide.
    pub carbon_dioxide: fw_joule_per_mole,
    /// Water vapour as an ideal gas.
    pub water_vapour: fw_joule_per_mole,
    /// Oxygen.
    pub oxygen: fw_joule_per_mole,
    /// Nitrogen.
    pub nitrogen: fw_joule_per_mole,
    /// Argon.
    pub argon: fw_joule_per_mole,
    /// Sulphur dioxide.
    pub sulphur_dioxide: fw_joule_per_mole,
    /// Carbon monoxide.
    pub carbon_monoxide: fw_joule_per_mole,
}
const _: () = assert!(size_of::<fw_gas_enthalpy_output>() == size_of::<[f64; 7]>());

static GAS_ENTHALPY: Face = Face::new("gas_enthalpy");

/// Enthalpies of flue gases.
///
/// Heat of one mole of each flue gas above 25 °C.
///
/// Accuracy: 0.1 % up to 1000 K.
///
/// Source: NASA TM-4513 (1993) (seven-coefficient polynomials, 200 to 6000 K (sulphur dioxide 300 to
/// 5000 K)).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_enthalpy(
    input: *const fw_gas_enthalpy_input,
    output: *mut fw_gas_enthalpy_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_ENTHALPY.evaluate::<1, 7>(null(), input.cast(), output.cast(), notices) }
}

/// fw_gas_enthalpy over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_enthalpy_batch(
    rows: usize,
    inputs: *const fw_gas_enthalpy_input,
    input_stride: usize,
    outputs: *mut fw_gas_enthalpy_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_ENTHALPY.batch::<1, 7>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_enthalpy into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_enthalpy_unset(input: *mut fw_gas_enthalpy_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_ENTHALPY.unset::<1>(input.cast()) }
}

/// What goes into fw_saturated_water.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_saturated_water_input {
    /// Temperature of water and vapour; allowed 273.15 to 373.15 (0 °C to 100 °C).
    pub temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_saturated_water_input>() == size_of::<[f64; 1]>());

/// What comes out of fw_saturated_water.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_saturated_water_output {
    /// Saturation pressure.
    pub saturation_pressure: fw_pascal_absolute,
    /// Heat of vaporisation.
    pub heat_of_vaporisation: fw_joule_per_kilogram,
    /// Enthalpy of the liquid above that at the triple point.
    pub liquid_enthalpy: fw_joule_per_kilogram,
}
const _: () = assert!(size_of::<fw_saturated_water_output>() == size_of::<[f64; 3]>());

static SATURATED_WATER: Face = Face::new("saturated_water");

/// Saturated water.
///
/// Vapour pressure, heat of vaporisation and liquid enthalpy of water from 0 to 100 °C.
///
/// Accuracy: Saturation pressure 7e-5 of IAPWS-95.
///
/// Source: IAPWS-IF97 region 4, R7-97(2012) (saturation pressure, by a fit within 6e-8).
///
/// Source: IAPWS-95, by CoolProp 8.0.0 (heat of vaporisation and liquid enthalpy, by fits within 2
/// J/kg).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_saturated_water(
    input: *const fw_saturated_water_input,
    output: *mut fw_saturated_water_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SATURATED_WATER.evaluate::<1, 3>(null(), input.cast(), output.cast(), notices) }
}

/// fw_saturated_water over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_saturated_water_batch(
    rows: usize,
    inputs: *const fw_saturated_water_input,
    input_stride: usize,
    outputs: *mut fw_saturated_water_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SATURATED_WATER.batch::<1, 3>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_saturated_water into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_saturated_water_unset(input: *mut fw_saturated_water_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SATURATED_WATER.unset::<1>(input.cast()) }
}

/// What goes into fw_carbon_monoxide.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_carbon_monoxide_input {
    /// Carbon monoxide in dry flue gas; allowed 0 to 0.1 (0 ppm to 100000 ppm); usually 0 to 0.001 (0 ppm
    /// to 1000 ppm).
    pub carbon_monoxide_dry: fw_ratio_dry,
    /// Carbon dioxide in dry flue gas; allowed 0.0005 to 0.25 (0.05 % to 25 %); usually 0.01 to 0.15 (1 %
    /// to 15 %); NaN means: not measured.
    pub carbon_dioxide_dry: fw_ratio_dry,
    /// Oxygen in dry flue gas; allowed 0 to 0.205 (0 % to 20.5 %); usually 0.01 to 0.18 (1 % to 18 %); NaN
    /// means: not measured.
    pub oxygen_dry: fw_ratio_dry,
    /// Oxygen of air in the rule's own formula: 20.9, 20.95 or 21 %; needed with oxygen; allowed 0.208 to
    /// 0.211 (20.8 % to 21.1 %); NaN means: no rule chosen.
    pub air_oxygen: fw_ratio_dry,
    /// Oxygen that the rule refers to; 0 % means air-free; allowed 0 to 0.2 (0 % to 20 %); default 0 (0 %).
    pub reference_oxygen: fw_ratio_dry,
    /// Largest carbon dioxide of the fuel; needed for the air-free value from carbon dioxide; allowed 0.01
    /// to 0.25 (1 % to 25 %); NaN means: not given.
    pub carbon_dioxide_maximum: fw_ratio_dry,
}
const _: () = assert!(size_of::<fw_carbon_monoxide_input>() == size_of::<[f64; 6]>());

/// What comes out of fw_carbon_monoxide.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_carbon_monoxide_output {
    /// Carbon monoxide over carbon dioxide, both by volume of the same sample; dilution does not change it;
    /// NaN means: carbon dioxide not measured.
    pub carbon_monoxide_ratio: fw_ratio,
    /// Carbon dioxide over carbon monoxide, the "one to ..." way of stating it; NaN means: no carbon
    /// monoxide, or carbon dioxide not measured.
    pub carbon_dioxide_over_monoxide: fw_ratio,
    /// Carbon monoxide at zero oxygen, from the oxygen read; NaN means: oxygen not measured or no oxygen of
    /// air chosen.
    pub carbon_monoxide_air_free: fw_ratio_air_free,
    /// Carbon monoxide at reference oxygen, from the oxygen read; NaN means: oxygen not measured or no
    /// oxygen of air chosen.
    pub carbon_monoxide_at_reference: fw_ratio_dry,
    /// Carbon monoxide at zero excess air, from the carbon dioxide read and the fuel's largest one; NaN
    /// means: carbon dioxide or its largest value not given.
    pub carbon_monoxide_air_free_from_carbon_dioxide: fw_ratio_air_free,
}
const _: () = assert!(size_of::<fw_carbon_monoxide_output>() == size_of::<[f64; 5]>());

static CARBON_MONOXIDE: Face = Face::new("carbon_monoxide");

/// Carbon monoxide ratio and air-free value.
///
/// CO/CO2 ratio, air-free carbon monoxide from oxygen or from carbon dioxide, and carbon monoxide at a
/// reference oxygen.
///
/// Accuracy: Exact arithmetic; the short forms are within 0.5 % of the element balance.
///
/// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
/// observed, not computed.
///
/// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
/// air in first, reckon later; no result here is leave to stay.
///
/// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
/// beside them.
///
/// Source: definition (ratio CO/CO2 by volume of the same sample).
///
/// Source: common practice; the form of US and German rules (CO O2air / (O2air - O2), CO CO2max / CO2).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_carbon_monoxide(
    input: *const fw_carbon_monoxide_input,
    output: *mut fw_carbon_monoxide_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CARBON_MONOXIDE.evaluate::<6, 5>(null(), input.cast(), output.cast(), notices) }
}

/// fw_carbon_monoxide over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_carbon_monoxide_batch(
    rows: usize,
    inputs: *const fw_carbon_monoxide_input,
    input_stride: usize,
    outputs: *mut fw_carbon_monoxide_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CARBON_MONOXIDE.batch::<6, 5>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_carbon_monoxide into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_carbon_monoxide_unset(input: *mut fw_carbon_monoxide_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CARBON_MONOXIDE.unset::<6>(input.cast()) }
}

/// What goes into fw_flue_analysis.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flue_analysis_input {
    /// Oxygen in dry flue gas; allowed 0 to 0.209 (0 % to 20.9 %); usually 0.02 to 0.12 (2 % to 12 %); NaN
    /// means: not measured.
    pub oxygen_dry: fw_ratio_dry,
    /// Carbon dioxide in dry flue gas, measured as such; leave it out where the instrument derives it from
    /// oxygen; allowed 0.0005 to 0.25 (0.05 % to 25 %); usually 0.04 to 0.15 (4 % to 15 %); NaN means: not
    /// measured.
    pub carbon_dioxide_dry: fw_ratio_dry,
    /// Carbon monoxide in dry flue gas; allowed 0 to 0.1 (0 ppm to 100000 ppm); usually 0 to 0.001 (0 ppm
    /// to 1000 ppm).
    pub carbon_monoxide_dry: fw_ratio_dry,
    /// Temperature of the flue gas where the sample is taken; allowed 253.15 to 873.15 (-20 °C to 600 °C);
    /// usually 303.15 to 573.15 (30 °C to 300 °C).
    pub flue_temperature: fw_kelvin,
    /// Temperature of the combustion air where the burner takes it; allowed 233.15 to 333.15 (-40 °C to 60
    /// °C); usually 263.15 to 313.15 (-10 °C to 40 °C).
    pub air_temperature: fw_kelvin,
    /// Absolute pressure of the atmosphere at the place, not reduced to sea level; allowed 60000 to 110000
    /// (600 mbar to 1100 mbar); usually 80000 to 104500 (800 mbar to 1045 mbar); default 101325 (1013.25
    /// mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Relative humidity of the combustion air; dry air is the convention of published loss figures;
    /// allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub relative_humidity: fw_ratio,
}
const _: () = assert!(size_of::<fw_flue_analysis_input>() == size_of::<[f64; 7]>());

/// What comes out of fw_flue_analysis.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flue_analysis_output {
    /// Excess air ratio: air supplied over air needed, by element balance with the carbon monoxide in it.
    pub excess_air_ratio: fw_ratio,
    /// Excess air: the excess air ratio less one.
    pub excess_air: fw_ratio,
    /// Oxygen in dry flue gas derived from the carbon dioxide; NaN means: measured, not derived.
    pub oxygen_dry_derived: fw_ratio_dry,
    /// Carbon dioxide in dry flue gas derived from the oxygen and the fuel; not an independent reading; NaN
    /// means: measured, not derived.
    pub carbon_dioxide_dry_derived: fw_ratio_dry,
    /// Measured less derived carbon dioxide: nearly zero when oxygen, carbon dioxide and fuel belong
    /// together; NaN means: only one of the two was measured.
    pub carbon_dioxide_closure: fw_ratio,
    /// Largest carbon dioxide the fuel can give in dry flue gas.
    pub carbon_dioxide_maximum: fw_ratio_dry,
    /// Carbon monoxide over carbon dioxide, the measured one where there is one; dilution does not change
    /// it.
    pub carbon_monoxide_ratio: fw_ratio,
    /// Carbon monoxide per dry flue gas of complete combustion without excess air, by exact balance.
    pub carbon_monoxide_air_free: fw_ratio_air_free,
    /// Temperature at which the flue gas begins to condense; NaN means: too little water vapour to condense
    /// above 0 °C.
    pub water_dew_point: fw_kelvin,
    /// Heat in the dry flue gas above 25 °C.
    pub dry_gas_loss: fw_ratio_gross,
    /// Heat in the water vapour above 25 °C.
    pub moisture_loss: fw_ratio_gross,
    /// Latent heat that leaves with the vapour, less that which came with humid air.
    pub latent_loss: fw_ratio_gross,
    /// Heat in the condensate, which leaves at flue temperature.
    pub condensate_loss: fw_ratio_gross,
    /// Heat not released because carbon monoxide did not burn.
    pub unburnt_loss: fw_ratio_gross,
    /// Heat brought by the combustion air above 25 °C; negative where it is colder.
    pub air_credit: fw_ratio_gross,
    /// Heat brought by the fuel gas, taken at air temperature; zero for liquids and solids.
    pub fuel_credit: fw_ratio_gross,
    /// Flue loss as short formulae mean it: heat of dry gas and vapour above air temperature, without
    /// latent heat and carbon monoxide.
    pub flue_loss_net: fw_ratio_net,
    /// Combustion efficiency on the gross calorific value: what does not leave by the flue.
    pub efficiency_gross: fw_ratio_gross,
    /// Combustion efficiency on the net calorific value; above 100 % where enough condenses.
    pub efficiency_net: fw_ratio_net,
    /// Condensate per gross heat input.
    pub condensate: fw_kilogram_per_joule_gross,
}
const _: () = assert!(size_of::<fw_flue_analysis_output>() == size_of::<[f64; 20]>());

static FLUE_ANALYSIS: Face = Face::new("flue_analysis");

/// Flue gas analysis.
///
/// Excess air, derived gases, carbon monoxide ratio and air-free, dew point, every loss, condensate and
/// the combustion efficiency on both bases, from oxygen or carbon dioxide, carbon monoxide and
/// temperatures, by exact element and energy balance.
///
/// Accuracy: The balance itself: 0.002 percentage points of loss against independent computation. The
/// readings decide: 0.3 % O2 is about 2 % of excess air. Loss of the case to the room is not in it.
///
/// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
/// observed, not computed.
///
/// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
/// air in first, reckon later; no result here is leave to stay.
///
/// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
/// beside them.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
/// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
/// every default.
///
/// Source: element and energy balance (excess air, derived gases, losses; no correlation).
///
/// Source: NASA TM-4513 (1993) (enthalpies of the flue gases, 200 to 1000 K).
///
/// Source: ISO 6976:2016 (calorific values and latent heat at 25 °C).
///
/// Source: IAPWS-IF97 region 4; IAPWS-95 (dew point and saturation; enthalpy of the condensate).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_analysis(
    context: *const fw_context,
    input: *const fw_flue_analysis_input,
    output: *mut fw_flue_analysis_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_ANALYSIS.evaluate::<7, 20>(context, input.cast(), output.cast(), notices) }
}

/// fw_flue_analysis over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_analysis_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_flue_analysis_input,
    input_stride: usize,
    outputs: *mut fw_flue_analysis_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_ANALYSIS.batch::<7, 20>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_flue_analysis into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_analysis_unset(input: *mut fw_flue_analysis_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_ANALYSIS.unset::<7>(input.cast()) }
}

/// What goes into fw_flue_emissions.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flue_emissions_input {
    /// Oxygen in dry flue gas; allowed 0 to 0.205 (0 % to 20.5 %); usually 0.02 to 0.12 (2 % to 12 %).
    pub oxygen_dry: fw_ratio_dry,
    /// Carbon monoxide in dry flue gas; allowed 0 to 0.1 (0 ppm to 100000 ppm); usually 0 to 0.001 (0 ppm
    /// to 1000 ppm).
    pub carbon_monoxide_dry: fw_ratio_dry,
    /// Nitrogen oxides in dry flue gas; allowed 0 to 0.01 (0 ppm to 10000 ppm); usually 0 to 0.0003 (0 ppm
    /// to 300 ppm); NaN means: not measured.
    pub nitrogen_oxides_dry: fw_ratio_dry,
    /// Oxygen that the rule refers emissions to: 0 % means air-free; allowed 0 to 0.2 (0 % to 20 %).
    pub reference_oxygen: fw_ratio_dry,
    /// Oxygen of air in the rule's own formula: 20.9, 20.95 or 21 %; allowed 0.208 to 0.211 (20.8 % to 21.1
    /// %).
    pub air_oxygen: fw_ratio_dry,
    /// Temperature to which masses per cubic metre refer; allowed 223.15 to 333.15 (-50 °C to 60 °C);
    /// default 273.15 (0 °C).
    pub volume_temperature: fw_kelvin,
    /// Absolute pressure to which masses per cubic metre refer; allowed 60000 to 110000 (600 mbar to 1100
    /// mbar); default 101325 (1013.25 mbar).
    pub volume_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_flue_emissions_input>() == size_of::<[f64; 7]>());

/// What comes out of fw_flue_emissions.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flue_emissions_output {
    /// Excess air ratio by element balance.
    pub excess_air_ratio: fw_ratio,
    /// Excess air ratio by the short form with the rule's oxygen of air; 1 to 8 % high for hydrocarbons.
    pub excess_air_ratio_short: fw_ratio,
    /// Carbon dioxide in dry flue gas derived from oxygen by element balance.
    pub carbon_dioxide_dry_derived: fw_ratio_dry,
    /// Carbon dioxide in dry flue gas derived by the short form.
    pub carbon_dioxide_dry_short: fw_ratio_dry,
    /// Carbon monoxide over carbon dioxide, derived by element balance.
    pub carbon_monoxide_ratio: fw_ratio,
    /// Carbon monoxide over carbon dioxide, derived by the short form.
    pub carbon_monoxide_ratio_short: fw_ratio,
    /// Carbon monoxide per dry flue gas of complete combustion without excess air, by element balance.
    pub carbon_monoxide_air_free: fw_ratio_air_free,
    /// Carbon monoxide air-free by the rule's formula.
    pub carbon_monoxide_air_free_rule: fw_ratio_air_free,
    /// Carbon monoxide at reference oxygen by the rule's formula.
    pub carbon_monoxide_at_reference: fw_ratio_dry,
    /// Nitrogen oxides at reference oxygen by the rule's formula; NaN means: not measured.
    pub nitrogen_oxides_at_reference: fw_ratio_dry,
    /// Mass of carbon monoxide per cubic metre of dry flue gas as measured.
    pub carbon_monoxide_concentration: fw_kilogram_per_cubic_metre,
    /// Mass of carbon monoxide per cubic metre of dry flue gas at reference oxygen.
    pub carbon_monoxide_concentration_at_reference: fw_kilogram_per_cubic_metre,
    /// Mass of nitrogen oxides, counted as NO2, per cubic metre of dry flue gas as measured; NaN means: not
    /// measured.
    pub nitrogen_oxides_concentration: fw_kilogram_per_cubic_metre,
    /// Mass of nitrogen oxides, counted as NO2, per cubic metre of dry flue gas at reference oxygen; NaN
    /// means: not measured.
    pub nitrogen_oxides_concentration_at_reference: fw_kilogram_per_cubic_metre,
    /// Carbon monoxide per gross heat input, by element balance.
    pub carbon_monoxide_per_gross_heat: fw_kilogram_per_joule_gross,
    /// Carbon monoxide per net heat input, by element balance.
    pub carbon_monoxide_per_net_heat: fw_kilogram_per_joule_net,
    /// Nitrogen oxides, counted as NO2, per gross heat input, by element balance; NaN means: not measured.
    pub nitrogen_oxides_per_gross_heat: fw_kilogram_per_joule_gross,
    /// Nitrogen oxides, counted as NO2, per net heat input, by element balance; NaN means: not measured.
    pub nitrogen_oxides_per_net_heat: fw_kilogram_per_joule_net,
}
const _: () = assert!(size_of::<fw_flue_emissions_output>() == size_of::<[f64; 18]>());

static FLUE_EMISSIONS: Face = Face::new("flue_emissions");

/// Emissions of carbon monoxide and nitrogen oxides.
///
/// Carbon monoxide and nitrogen oxides air-free, at reference oxygen, per cubic metre and per
/// kilowatt-hour on both bases, by element balance and by the short formulae of rules.
///
/// Accuracy: 0.002 % against independent computation; EN practice rounds densities to 1.25 and 2.054
/// kg/m³, 0.07 % from the ideal gas.
///
/// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
/// observed, not computed.
///
/// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
/// air in first, reckon later; no result here is leave to stay.
///
/// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
/// beside them.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
/// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
/// every default.
///
/// Source: element balance (excess air, derived carbon dioxide, masses per heat input).
///
/// Source: common practice; the form of German and US rules (x (O2air - O2ref) / (O2air - O2)).
///
/// Source: ISO 6976:2016 Table A.2; ideal gas (molar masses; masses per cubic metre).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_emissions(
    context: *const fw_context,
    input: *const fw_flue_emissions_input,
    output: *mut fw_flue_emissions_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_EMISSIONS.evaluate::<7, 18>(context, input.cast(), output.cast(), notices) }
}

/// fw_flue_emissions over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_emissions_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_flue_emissions_input,
    input_stride: usize,
    outputs: *mut fw_flue_emissions_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_EMISSIONS.batch::<7, 18>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_flue_emissions into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_emissions_unset(input: *mut fw_flue_emissions_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_EMISSIONS.unset::<7>(input.cast()) }
}

/// What goes into fw_mass_concentration.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_mass_concentration_input {
    /// Share of volume; allowed 0 to 1 (0 ppm to 1000000 ppm).
    pub fraction: fw_ratio,
    /// Temperature to which the cubic metre refers; without it the mass is up to 7 % wrong; allowed 223.15
    /// to 333.15 (-50 °C to 60 °C).
    pub temperature: fw_kelvin,
    /// Absolute pressure to which the cubic metre refers; allowed 60000 to 110000 (600 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pub pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_mass_concentration_input>() == size_of::<[f64; 3]>());

/// What comes out of fw_mass_concentration.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_mass_concentration_output {
    /// Mass of the gas per cubic metre.
    pub mass_concentration: fw_kilogram_per_cubic_metre,
}
const _: () = assert!(size_of::<fw_mass_concentration_output>() == size_of::<[f64; 1]>());

static MASS_CONCENTRATION: Face = Face::new("mass_concentration");

/// Mass concentration from volume fraction.
///
/// Milligrams per cubic metre from parts per million, at a stated temperature and pressure.
///
/// Accuracy: 0.1 % at room conditions (ideal gas).
///
/// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
/// observed, not computed.
///
/// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
/// air in first, reckon later; no result here is leave to stay.
///
/// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
/// beside them.
///
/// The context holds the settings `gas` (Which gas; nitrogen oxides are counted as nitrogen dioxide,
/// one of carbon monoxide, carbon dioxide, nitrogen monoxide, nitrogen dioxide, default carbon
/// monoxide); NULL takes every default.
///
/// Source: ideal gas; ISO 6976:2016 Table A.2 (density and molar masses).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_mass_concentration(
    context: *const fw_context,
    input: *const fw_mass_concentration_input,
    output: *mut fw_mass_concentration_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { MASS_CONCENTRATION.evaluate::<3, 1>(context, input.cast(), output.cast(), notices) }
}

/// fw_mass_concentration over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_mass_concentration_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_mass_concentration_input,
    input_stride: usize,
    outputs: *mut fw_mass_concentration_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { MASS_CONCENTRATION.batch::<3, 1>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_mass_concentration into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_mass_concentration_unset(input: *mut fw_mass_concentration_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { MASS_CONCENTRATION.unset::<3>(input.cast()) }
}

/// What goes into fw_siegert_constants.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_siegert_constants_input {
    /// Least oxygen; allowed 0 to 0.15 (0 % to 15 %); default 0.01 (1 %).
    pub least_oxygen: fw_ratio_dry,
    /// Most oxygen; allowed 0.001 to 0.18 (0.1 % to 18 %); default 0.09 (9 %).
    pub most_oxygen: fw_ratio_dry,
    /// Lowest flue temperature; allowed 334.15 to 673.15 (61 °C to 400 °C); default 353.15 (80 °C).
    pub lowest_flue_temperature: fw_kelvin,
    /// Highest flue temperature; allowed 335.15 to 873.15 (62 °C to 600 °C); default 573.15 (300 °C).
    pub highest_flue_temperature: fw_kelvin,
    /// Air temperature; allowed 233.15 to 333.15 (-40 °C to 60 °C); default 293.15 (20 °C).
    pub air_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_siegert_constants_input>() == size_of::<[f64; 5]>());

/// What comes out of fw_siegert_constants.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_siegert_constants_output {
    /// Constant A2 of the oxygen form.
    pub a2: fw_ratio,
    /// Constant B.
    pub b: fw_ratio,
    /// Constant A1 of the carbon dioxide form.
    pub a1: fw_ratio,
    /// Largest difference of the formula from the energy balance over the field.
    pub largest_deviation: fw_ratio_net,
}
const _: () = assert!(size_of::<fw_siegert_constants_output>() == size_of::<[f64; 4]>());

static SIEGERT_CONSTANTS: Face = Face::new("siegert_constants");

/// Siegert constants of a fuel.
///
/// Constants of Siegert's formula by least squares against the exact flue loss over a field of oxygen
/// and flue temperature; for fuels that no rule lists, such as hydrogen blends.
///
/// Accuracy: The largest deviation is a result.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
/// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
/// every default.
///
/// Source: least squares on the energy balance of flue_analysis (9 by 12 points, evenly spaced).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_siegert_constants(
    context: *const fw_context,
    input: *const fw_siegert_constants_input,
    output: *mut fw_siegert_constants_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SIEGERT_CONSTANTS.evaluate::<5, 4>(context, input.cast(), output.cast(), notices) }
}

/// fw_siegert_constants over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_siegert_constants_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_siegert_constants_input,
    input_stride: usize,
    outputs: *mut fw_siegert_constants_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SIEGERT_CONSTANTS.batch::<5, 4>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_siegert_constants into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_siegert_constants_unset(input: *mut fw_siegert_constants_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SIEGERT_CONSTANTS.unset::<5>(input.cast()) }
}

/// What goes into fw_siegert_flue_loss.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_siegert_flue_loss_input {
    /// Oxygen in dry flue gas; allowed 0 to 0.2 (0 % to 20 %); usually 0.02 to 0.12 (2 % to 12 %); NaN
    /// means: not measured.
    pub oxygen_dry: fw_ratio_dry,
    /// Carbon dioxide in dry flue gas, for the carbon dioxide form; allowed 0.005 to 0.25 (0.5 % to 25 %);
    /// usually 0.04 to 0.15 (4 % to 15 %); NaN means: not measured.
    pub carbon_dioxide_dry: fw_ratio_dry,
    /// Largest carbon dioxide of the fuel, for the carbon dioxide form; allowed 0.01 to 0.25 (1 % to 25 %);
    /// NaN means: not given.
    pub carbon_dioxide_maximum: fw_ratio_dry,
    /// Temperature of the flue gas; allowed 253.15 to 873.15 (-20 °C to 600 °C); usually 333.15 to 573.15
    /// (60 °C to 300 °C).
    pub flue_temperature: fw_kelvin,
    /// Temperature of the combustion air; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to
    /// 313.15 (-10 °C to 40 °C).
    pub air_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_siegert_flue_loss_input>() == size_of::<[f64; 5]>());

/// What comes out of fw_siegert_flue_loss.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_siegert_flue_loss_output {
    /// Flue loss from oxygen, share of the net heat input; NaN means: oxygen not measured.
    pub flue_loss_net: fw_ratio_net,
    /// Net heat input less that flue loss; NaN means: oxygen not measured.
    pub efficiency_net: fw_ratio_net,
    /// Flue loss from carbon dioxide, share of the net heat input; NaN means: carbon dioxide or its largest
    /// value not given.
    pub flue_loss_net_from_carbon_dioxide: fw_ratio_net,
}
const _: () = assert!(size_of::<fw_siegert_flue_loss_output>() == size_of::<[f64; 3]>());

static SIEGERT_FLUE_LOSS: Face = Face::new("siegert_flue_loss");

/// Flue loss by Siegert's formula.
///
/// Flue loss on the net basis by the short formula that German and Belgian rules prescribe, with their
/// constants or the caller's; for the loss itself use flue_analysis.
///
/// Accuracy: Against the energy balance at 80 to 300 °C: natural gas -0.5 to 0, LPG -0.7 to -0.1, oil
/// -0.1 to +0.1 percentage points.
///
/// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
/// observed, not computed.
///
/// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
/// air in first, reckon later; no result here is leave to stay.
///
/// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
/// beside them.
///
/// The context holds the settings `constants` (A published pair by name (de-heating-oil,
/// de-natural-gas, de-coke-oven-gas, de-lpg, be-vl-natural-gas, be-vl-propane, be-vl-gas-oil), or a
/// table with a2 and b); NULL takes every default.
///
/// Source: 1. BImSchV (2010), Anlage 2, no. 3.4.1 (formula, German constants).
///
/// Source: Flemish Government decree of 8 December 2006, Annex II, no. 4 (Flemish constants).
///
/// Source: common practice, no source (A1 = A2 CO2max / 21).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_siegert_flue_loss(
    context: *const fw_context,
    input: *const fw_siegert_flue_loss_input,
    output: *mut fw_siegert_flue_loss_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SIEGERT_FLUE_LOSS.evaluate::<5, 3>(context, input.cast(), output.cast(), notices) }
}

/// fw_siegert_flue_loss over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_siegert_flue_loss_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_siegert_flue_loss_input,
    input_stride: usize,
    outputs: *mut fw_siegert_flue_loss_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SIEGERT_FLUE_LOSS.batch::<5, 3>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_siegert_flue_loss into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_siegert_flue_loss_unset(input: *mut fw_siegert_flue_loss_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SIEGERT_FLUE_LOSS.unset::<5>(input.cast()) }
}

/// What goes into fw_volume_fraction.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_volume_fraction_input {
    /// Mass of the gas per cubic metre; allowed 0 to 3 (0 mg/m³ to 3000000 mg/m³).
    pub mass_concentration: fw_kilogram_per_cubic_metre,
    /// Temperature to which the cubic metre refers; allowed 223.15 to 333.15 (-50 °C to 60 °C).
    pub temperature: fw_kelvin,
    /// Absolute pressure to which the cubic metre refers; allowed 60000 to 110000 (600 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pub pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_volume_fraction_input>() == size_of::<[f64; 3]>());

/// What comes out of fw_volume_fraction.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_volume_fraction_output {
    /// Share of volume.
    pub fraction: fw_ratio,
}
const _: () = assert!(size_of::<fw_volume_fraction_output>() == size_of::<[f64; 1]>());

static VOLUME_FRACTION: Face = Face::new("volume_fraction");

/// Volume fraction from mass concentration.
///
/// Parts per million from milligrams per cubic metre, at a stated temperature and pressure.
///
/// Accuracy: 0.1 % at room conditions (ideal gas).
///
/// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
/// observed, not computed.
///
/// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
/// air in first, reckon later; no result here is leave to stay.
///
/// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
/// beside them.
///
/// The context holds the settings `gas` (Which gas; nitrogen oxides are counted as nitrogen dioxide,
/// one of carbon monoxide, carbon dioxide, nitrogen monoxide, nitrogen dioxide, default carbon
/// monoxide); NULL takes every default.
///
/// Source: ideal gas; ISO 6976:2016 Table A.2 (density and molar masses).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_volume_fraction(
    context: *const fw_context,
    input: *const fw_volume_fraction_input,
    output: *mut fw_volume_fraction_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VOLUME_FRACTION.evaluate::<3, 1>(context, input.cast(), output.cast(), notices) }
}

/// fw_volume_fraction over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_volume_fraction_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_volume_fraction_input,
    input_stride: usize,
    outputs: *mut fw_volume_fraction_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VOLUME_FRACTION.batch::<3, 1>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_volume_fraction into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_volume_fraction_unset(input: *mut fw_volume_fraction_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VOLUME_FRACTION.unset::<3>(input.cast()) }
}

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
const _: () = assert!(size_of::<fw_fuel_properties_input>() == size_of::<[f64; 3]>());

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
const _: () = assert!(size_of::<fw_fuel_properties_output>() == size_of::<[f64; 15]>());

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
const _: () = assert!(size_of::<fw_gas_properties_input>() == size_of::<[f64; 24]>());

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
const _: () = assert!(size_of::<fw_gas_properties_output>() == size_of::<[f64; 15]>());

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
const _: () = assert!(size_of::<fw_atmospheric_pressure_input>() == size_of::<[f64; 1]>());

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
const _: () = assert!(size_of::<fw_atmospheric_pressure_output>() == size_of::<[f64; 4]>());

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
    /// usually 0.99 to 1.01; NaN means: that of the fuel if it is named, else 1.
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
const _: () = assert!(size_of::<fw_gas_rate_input>() == size_of::<[f64; 16]>());

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
    pub share_of_plate_gross: fw_ratio_gross,
    /// Net heat input over that of the plate; uncorrected where the gas conditions are not known; NaN
    /// means: no plate value or calorific value on the net basis.
    pub share_of_plate_net: fw_ratio_net,
}
const _: () = assert!(size_of::<fw_gas_rate_output>() == size_of::<[f64; 13]>());

static GAS_RATE: Face = Face::new("gas_rate");

/// Gas rate and heat input.
///
/// Gas rate from a timed volume, test dial or index, converted to reference conditions, with the heat
/// input gross and net and its share of the appliance plate on the same basis.
///
/// Accuracy: Decided by the readings: see gas_rate_uncertainty. Compression factors left out (no fuel
/// named) cost at most 0.06 % for natural gas and 0.5 % for propane at ordinary conditions. Gas is
/// taken as dry.
///
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
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
/// 100 mbar; otherwise such a gas pressure is refused as a slip, default false); `fuel` (The gas, if
/// its composition is known (as in fuel_properties): it then gives the compression factors, and a
/// calorific value that is not stated); NULL takes every default.
///
/// Source: common practice, no source (rate = volume / time; heat input = reference rate × calorific
/// value).
///
/// Source: ideal gas law with compression factors, as ISO 13443 and EN 12405 convert volumes (from
/// memory) (conversion factor).
///
/// Source: ISO 6976:2016 (compression factors and calorific values of a fuel that is named).
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
const _: () = assert!(size_of::<fw_gas_rate_uncertainty_input>() == size_of::<[f64; 13]>());

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
const _: () = assert!(size_of::<fw_gas_rate_uncertainty_output>() == size_of::<[f64; 11]>());

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
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
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
const _: () = assert!(size_of::<fw_gas_rate_test_time_input>() == size_of::<[f64; 8]>());

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
const _: () = assert!(size_of::<fw_gas_rate_test_time_output>() == size_of::<[f64; 4]>());

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
const _: () = assert!(size_of::<fw_gas_energy_input>() == size_of::<[f64; 3]>());

/// What comes out of fw_gas_energy.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_energy_output {
    /// Volume at reference conditions.
    pub reference_volume: fw_cubic_metre_at_reference_conditions,
    /// Energy on the gross basis.
    pub energy_gross: fw_joule,
}
const _: () = assert!(size_of::<fw_gas_energy_output>() == size_of::<[f64; 2]>());

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
const _: () = assert!(size_of::<fw_metering_reference_change_input>() == size_of::<[f64; 7]>());

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
const _: () = assert!(size_of::<fw_metering_reference_change_output>() == size_of::<[f64; 3]>());

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
const _: () = assert!(size_of::<fw_wobbe_index_input>() == size_of::<[f64; 3]>());

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
const _: () = assert!(size_of::<fw_wobbe_index_output>() == size_of::<[f64; 3]>());

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
const _: () = assert!(size_of::<fw_liquid_water_input>() == size_of::<[f64; 2]>());

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
const _: () = assert!(size_of::<fw_liquid_water_output>() == size_of::<[f64; 8]>());

static LIQUID_WATER: Face = Face::new("liquid_water");

/// Properties of liquid water.
///
/// Density, heat capacity, enthalpy, viscosity, conductivity and expansion of liquid water at a
/// temperature and pressure.
///
/// Accuracy: As the formulations: density 0.001 % and heat capacity 0.1 % below 100 °C, 0.005 % and 0.2
/// % above; viscosity 1 %; conductivity 1.5 %.
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

/// What goes into fw_dry_air.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_dry_air_input {
    /// Temperature of the air; allowed 223.15 to 473.15 (-50 °C to 200 °C); usually 253.15 to 383.15 (-20
    /// °C to 110 °C).
    pub temperature: fw_kelvin,
    /// Absolute pressure of the air; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to
    /// 106000 (800 mbar to 1060 mbar); default 101325 (1013.25 mbar).
    pub pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_dry_air_input>() == size_of::<[f64; 2]>());

/// What comes out of fw_dry_air.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_dry_air_output {
    /// Density.
    pub density: fw_kilogram_per_cubic_metre,
    /// Specific heat capacity at constant pressure.
    pub specific_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Dynamic viscosity.
    pub dynamic_viscosity: fw_pascal_second,
    /// Kinematic viscosity.
    pub kinematic_viscosity: fw_square_metre_per_second,
    /// Thermal conductivity.
    pub thermal_conductivity: fw_watt_per_metre_kelvin,
    /// Prandtl number.
    pub prandtl_number: fw_ratio,
}
const _: () = assert!(size_of::<fw_dry_air_output>() == size_of::<[f64; 6]>());

static DRY_AIR: Face = Face::new("dry_air");

/// Properties of dry air.
///
/// Density, heat capacity, viscosity, conductivity and Prandtl number of dry air.
///
/// Accuracy: 0.1 % in density, 1 % in heat capacity, 2 % in viscosity and conductivity, as the
/// formulations. Away from 1013.25 mbar the density is scaled in proportion, which costs at most 0.03 %
/// from 0 °C up and 0.09 % at -50 °C.
///
/// Source: Lemmon et al. 2000, J. Phys. Chem. Ref. Data 29, 331; Lemmon & Jacobsen 2004, Int. J.
/// Thermophys. 25, 21; as CoolProp 8.0.0 evaluates them (all properties, fitted to 2e-6 at 1013.25
/// mbar).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_dry_air(
    input: *const fw_dry_air_input,
    output: *mut fw_dry_air_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { DRY_AIR.evaluate::<2, 6>(null(), input.cast(), output.cast(), notices) }
}

/// fw_dry_air over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_dry_air_batch(
    rows: usize,
    inputs: *const fw_dry_air_input,
    input_stride: usize,
    outputs: *mut fw_dry_air_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { DRY_AIR.batch::<2, 6>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_dry_air into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_dry_air_unset(input: *mut fw_dry_air_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { DRY_AIR.unset::<2>(input.cast()) }
}

/// What goes into fw_humid_air.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_humid_air_input {
    /// Temperature of the air; allowed 273.15 to 323.15 (0 °C to 50 °C); usually 278.15 to 313.15 (5 °C to
    /// 40 °C).
    pub temperature: fw_kelvin,
    /// Relative humidity: vapour pressure over that of saturated air; allowed 0 to 1 (0 % to 100 %);
    /// usually 0.1 to 1 (10 % to 100 %).
    pub relative_humidity: fw_ratio,
    /// Absolute pressure of the air; allowed 60000 to 110000 (600 mbar to 1100 mbar); usually 80000 to
    /// 106000 (800 mbar to 1060 mbar); default 101325 (1013.25 mbar).
    pub pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_humid_air_input>() == size_of::<[f64; 3]>());

/// What comes out of fw_humid_air.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_humid_air_output {
    /// Density.
    pub density: fw_kilogram_per_cubic_metre,
    /// Mass of vapour per mass of dry air.
    pub humidity_ratio: fw_ratio,
    /// Mole fraction of vapour in the humid air.
    pub vapour_mole_fraction: fw_ratio,
    /// Pressure of the vapour: mole fraction times pressure.
    pub vapour_pressure: fw_pascal_absolute,
    /// Temperature at which dew or, below 0 °C, frost begins to form; NaN means: below -40 °C.
    pub dew_point: fw_kelvin,
}
const _: () = assert!(size_of::<fw_humid_air_output>() == size_of::<[f64; 5]>());

static HUMID_AIR: Face = Face::new("humid_air");

/// Properties of humid air.
///
/// Density, humidity ratio, vapour pressure and dew point of the air in a room or outdoors.
///
/// Accuracy: 0.02 % in density and humidity ratio, 0.002 K in dew point, besides the readings: 3 % of
/// relative humidity is 3 % of the vapour.
///
/// Source: CIPM-2007: Picard, Davis, Gläser & Fujii 2008, Metrologia 45, 149 (density).
///
/// Source: IAPWS R7-97(2012) region 4, IAPWS R14-08(2011) (saturation over water and over ice).
///
/// Source: ASHRAE RP-1485 as CoolProp 8.0.0 evaluates it (enhancement of the saturation pressure by the
/// air, fitted to 6e-5).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_humid_air(
    input: *const fw_humid_air_input,
    output: *mut fw_humid_air_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { HUMID_AIR.evaluate::<3, 5>(null(), input.cast(), output.cast(), notices) }
}

/// fw_humid_air over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_humid_air_batch(
    rows: usize,
    inputs: *const fw_humid_air_input,
    input_stride: usize,
    outputs: *mut fw_humid_air_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { HUMID_AIR.batch::<3, 5>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_humid_air into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_humid_air_unset(input: *mut fw_humid_air_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { HUMID_AIR.unset::<3>(input.cast()) }
}

/// What goes into fw_friction_factor.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_friction_factor_input {
    /// Reynolds number: velocity times bore over kinematic viscosity; allowed 0.001 to 1e9; usually 10 to
    /// 1e7.
    pub reynolds_number: fw_ratio,
    /// Roughness of the wall over the bore; allowed 0 to 0.2; usually 0 to 0.05; default 0.
    pub relative_roughness: fw_ratio,
}
const _: () = assert!(size_of::<fw_friction_factor_input>() == size_of::<[f64; 2]>());

/// What comes out of fw_friction_factor.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_friction_factor_output {
    /// Darcy friction factor; in the transition a straight line between its ends, for want of better.
    pub friction_factor: fw_ratio,
    /// Least factor that may be: below `friction_factor` in the transition only.
    pub least_friction_factor: fw_ratio,
    /// Greatest factor that may be: above `friction_factor` in the transition only.
    pub greatest_friction_factor: fw_ratio,
    /// Factor if the flow were laminar, 64/Re.
    pub laminar_friction_factor: fw_ratio,
    /// Factor if the flow were turbulent, by the named equation; NaN means: none so far below the turbulent
    /// range.
    pub turbulent_friction_factor: fw_ratio,
}
const _: () = assert!(size_of::<fw_friction_factor_output>() == size_of::<[f64; 5]>());

static FRICTION_FACTOR: Face = Face::new("friction_factor");

/// Friction factor of a pipe.
///
/// Darcy's friction factor from Reynolds number and relative roughness: laminar below 2300, turbulent
/// from 4000, and a band between.
///
/// Accuracy: Laminar exact; Colebrook's equation holds to some 5 % of measured factors; Haaland's keeps
/// within 2 %, Swamee and Jain's within 3 % of it.
///
/// The context holds the settings `equation` (The equation for turbulent flow, one of Colebrook,
/// Haaland, Swamee-Jain, default Colebrook); NULL takes every default.
///
/// Source: Colebrook 1939, J. Inst. Civ. Eng. 11, 133 (turbulent flow, by default; solved to 1e-12).
///
/// Source: Haaland 1983, J. Fluids Eng. 105, 89 (turbulent flow, if named).
///
/// Source: Swamee & Jain 1976, J. Hydraul. Div. ASCE 102, 657 (turbulent flow, if named).
///
/// Source: common textbook values, from memory (the limits 2300 and 4000).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_friction_factor(
    context: *const fw_context,
    input: *const fw_friction_factor_input,
    output: *mut fw_friction_factor_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FRICTION_FACTOR.evaluate::<2, 5>(context, input.cast(), output.cast(), notices) }
}

/// fw_friction_factor over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_friction_factor_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_friction_factor_input,
    input_stride: usize,
    outputs: *mut fw_friction_factor_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FRICTION_FACTOR.batch::<2, 5>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_friction_factor into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_friction_factor_unset(input: *mut fw_friction_factor_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FRICTION_FACTOR.unset::<2>(input.cast()) }
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
const _: () = assert!(size_of::<fw_pipe_heat_loss_input>() == size_of::<[f64; 14]>());

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
const _: () = assert!(size_of::<fw_pipe_heat_loss_output>() == size_of::<[f64; 19]>());

static PIPE_HEAT_LOSS: Face = Face::new("pipe_heat_loss");

/// Heat loss of a pipe run.
///
/// Heat that a bare or insulated run loses per metre and in all, its surface temperature, and the
/// resistances on the way: film inside, wall, insulation, and convection and radiation outside, with
/// the surface temperature solved. For the insulation that a wanted loss takes, seek
/// `insulation_thickness` for it.
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
/// Source: IAPWS SR6-08(2011), R12-08, R15-11 (properties of water, 0 to 110 °C).
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

/// What goes into fw_pipe_temperature_drop.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_pipe_temperature_drop_input {
    /// Temperature of the water where it enters; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 278.15
    /// to 368.15 (5 °C to 95 °C).
    pub inlet_temperature: fw_kelvin,
    /// Flow of the water where it enters; allowed 2.777778e-9 to 0.2777778 (0.01 L/h to 1000000 L/h);
    /// usually 2.777778e-6 to 0.01388889 (10 L/h to 50000 L/h).
    pub water_flow: fw_cubic_metre_per_second,
    /// Length of the run; allowed 0 to 100000; usually 0.1 to 200.
    pub length: fw_metre,
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
const _: () = assert!(size_of::<fw_pipe_temperature_drop_input>() == size_of::<[f64; 14]>());

/// What comes out of fw_pipe_temperature_drop.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_pipe_temperature_drop_output {
    /// Temperature of the water where it leaves.
    pub outlet_temperature: fw_kelvin,
    /// By how much the water cooled; negative where the run takes up heat.
    pub temperature_drop: fw_kelvin_difference,
    /// Heat lost by the whole run.
    pub heat_loss: fw_watt,
    /// Mass flow.
    pub mass_flow: fw_kilogram_per_second,
    /// Heat lost per metre where the water enters.
    pub heat_loss_at_inlet: fw_watt_per_metre,
    /// Heat lost per metre where it leaves.
    pub heat_loss_at_outlet: fw_watt_per_metre,
    /// Reynolds number where the water enters.
    pub reynolds_number_at_inlet: fw_ratio,
    /// Reynolds number where it leaves.
    pub reynolds_number_at_outlet: fw_ratio,
    /// Outlet temperature if the loss per kelvin stayed what it is at the inlet: the usual exponential, for
    /// comparison.
    pub outlet_temperature_by_exponential: fw_kelvin,
}
const _: () = assert!(size_of::<fw_pipe_temperature_drop_output>() == size_of::<[f64; 9]>());

static PIPE_TEMPERATURE_DROP: Face = Face::new("pipe_temperature_drop");

/// Temperature drop along a pipe run.
///
/// Temperature of the water where it leaves a run at a given flow, and the heat the run loses, with the
/// loss following the water's temperature along the way.
///
/// Accuracy: As the heat loss of the run: 15 % of the drop for a bare run in still air, 5 to 10 %
/// insulated, 30 % upright.
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
/// Source: IAPWS SR6-08(2011), R12-08, R15-11 (properties of water, 0 to 110 °C).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pipe_temperature_drop(
    context: *const fw_context,
    input: *const fw_pipe_temperature_drop_input,
    output: *mut fw_pipe_temperature_drop_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PIPE_TEMPERATURE_DROP.evaluate::<14, 9>(context, input.cast(), output.cast(), notices) }
}

/// fw_pipe_temperature_drop over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pipe_temperature_drop_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_pipe_temperature_drop_input,
    input_stride: usize,
    outputs: *mut fw_pipe_temperature_drop_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PIPE_TEMPERATURE_DROP.batch::<14, 9>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_pipe_temperature_drop into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pipe_temperature_drop_unset(input: *mut fw_pipe_temperature_drop_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PIPE_TEMPERATURE_DROP.unset::<14>(input.cast()) }
}

/// What goes into fw_pipe_cool_down.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_pipe_cool_down_input {
    /// Temperature of water and pipe at the start; allowed 273.15 to 383.15 (0 °C to 110 °C); usually
    /// 293.15 to 368.15 (20 °C to 95 °C).
    pub start_temperature: fw_kelvin,
    /// Temperature the water is to come to; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 283.15 to
    /// 363.15 (10 °C to 90 °C).
    pub target_temperature: fw_kelvin,
    /// Time after which the temperature is asked; allowed 0 to 6000000 (0 min to 100000 min); NaN means:
    /// not asked.
    pub elapsed_time: fw_second,
    /// Length of the run; allowed 0.001 to 100000; usually 0.1 to 200; default 1.
    pub length: fw_metre,
    /// Density of the pipe's wall; allowed 500 to 20000; NaN means: as the named tube.
    pub wall_density: fw_kilogram_per_cubic_metre,
    /// Specific heat capacity of the pipe's wall; allowed 100 to 5000; NaN means: as the named tube.
    pub wall_heat_capacity: fw_joule_per_kilogram_kelvin,
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
const _: () = assert!(size_of::<fw_pipe_cool_down_input>() == size_of::<[f64; 17]>());

/// What comes out of fw_pipe_cool_down.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_pipe_cool_down_output {
    /// Time until the target temperature; NaN means: never reached.
    pub time_to_target: fw_second,
    /// Temperature after the time asked; NaN means: not asked.
    pub temperature_after: fw_kelvin,
    /// Heat capacity of the water per metre.
    pub water_capacity: fw_joule_per_metre_kelvin,
    /// Heat capacity of the pipe's wall per metre.
    pub wall_capacity: fw_joule_per_metre_kelvin,
    /// Heat lost per metre at the start.
    pub heat_loss_at_start: fw_watt_per_metre,
    /// Time in which the excess over the room would fall to 1/e if the loss per kelvin stayed what it is at
    /// the start; NaN means: nothing to lose.
    pub time_constant: fw_second,
    /// Time until the target by that constant: the usual exponential, for comparison; NaN means: never
    /// reached.
    pub time_to_target_by_exponential: fw_second,
    /// Heat that water and pipe of the whole run hold above the temperature at which they come to rest.
    pub heat_held: fw_joule,
}
const _: () = assert!(size_of::<fw_pipe_cool_down_output>() == size_of::<[f64; 8]>());

static PIPE_COOL_DOWN: Face = Face::new("pipe_cool_down");

/// Cool-down of standing water in a pipe run.
///
/// Time in which the standing water of a run cools to a temperature, its temperature after a time, and
/// the heat the run holds. The loss follows the temperature; water and wall are taken as one mass.
///
/// Accuracy: As the heat loss of the run: 15 % of the time for a bare run in still air, 5 to 10 %
/// insulated, 30 % upright. The heat in the insulation itself is left out (a few per cent with thick
/// insulation); ends and fittings too.
///
/// Caution: Water above about 50 °C can scald: a pipe that has cooled on its surface may still hold
/// hotter water.
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
/// Source: Lemmon et al. 2000 and Lemmon & Jacobsen 2004, as CoolProp 8.0.0 evaluates them (properties
/// of air, fitted to 2e-6).
///
/// Source: IAPWS SR6-08(2011), R12-08, R15-11 (properties of water, 0 to 110 °C).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pipe_cool_down(
    context: *const fw_context,
    input: *const fw_pipe_cool_down_input,
    output: *mut fw_pipe_cool_down_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PIPE_COOL_DOWN.evaluate::<17, 8>(context, input.cast(), output.cast(), notices) }
}

/// fw_pipe_cool_down over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pipe_cool_down_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_pipe_cool_down_input,
    input_stride: usize,
    outputs: *mut fw_pipe_cool_down_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PIPE_COOL_DOWN.batch::<17, 8>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_pipe_cool_down into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pipe_cool_down_unset(input: *mut fw_pipe_cool_down_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PIPE_COOL_DOWN.unset::<17>(input.cast()) }
}

/// What goes into fw_critical_radius.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_critical_radius_input {
    /// Outside diameter of the bare pipe; allowed 0.0001 to 0.7 (0.1 mm to 700 mm); usually 0.006 to 0.17
    /// (6 mm to 170 mm).
    pub outside_diameter: fw_metre,
    /// Thickness of the insulation; allowed 0 to 0.5 (0 mm to 500 mm); default 0 (0 mm).
    pub insulation_thickness: fw_metre,
    /// Thermal conductivity of the insulation; allowed 0.005 to 5; usually 0.015 to 0.1.
    pub insulation_conductivity: fw_watt_per_metre_kelvin,
    /// Coefficient outside, convection and radiation together; allowed 0.1 to 1000; usually 4 to 50;
    /// default 10.
    pub outside_coefficient: fw_watt_per_square_metre_kelvin,
}
const _: () = assert!(size_of::<fw_critical_radius_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_critical_radius.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_critical_radius_output {
    /// Outer radius of the insulation at which the loss is greatest.
    pub critical_radius: fw_metre,
    /// Loss per metre of run and kelvin between pipe and air, with this insulation.
    pub loss_per_kelvin: fw_watt_per_metre_kelvin,
    /// The same of the bare pipe.
    pub bare_loss_per_kelvin: fw_watt_per_metre_kelvin,
    /// This loss over the bare pipe's.
    pub loss_ratio: fw_ratio,
    /// The greatest loss per kelvin that any thickness of this insulation gives.
    pub greatest_loss_per_kelvin: fw_watt_per_metre_kelvin,
}
const _: () = assert!(size_of::<fw_critical_radius_output>() == size_of::<[f64; 5]>());

static CRITICAL_RADIUS: Face = Face::new("critical_radius");

/// Critical radius of insulation.
///
/// The outer radius up to which insulation around a thin pipe raises the loss instead of lowering it,
/// and the loss per kelvin at a thickness, with a fixed coefficient outside.
///
/// Accuracy: Exact for a fixed coefficient outside; the real one falls with the diameter and rises with
/// the temperature.
///
/// Source: Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, section 3.3.1, from memory
/// (critical radius k/h).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_critical_radius(
    input: *const fw_critical_radius_input,
    output: *mut fw_critical_radius_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CRITICAL_RADIUS.evaluate::<4, 5>(null(), input.cast(), output.cast(), notices) }
}

/// fw_critical_radius over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_critical_radius_batch(
    rows: usize,
    inputs: *const fw_critical_radius_input,
    input_stride: usize,
    outputs: *mut fw_critical_radius_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CRITICAL_RADIUS.batch::<4, 5>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_critical_radius into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_critical_radius_unset(input: *mut fw_critical_radius_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CRITICAL_RADIUS.unset::<4>(input.cast()) }
}

/// What goes into fw_antifreeze_mixture.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_antifreeze_mixture_input {
    /// Share of glycol by mass; allowed 0 to 0.6 (0 % to 60 %); usually 0.1 to 0.55 (10 % to 55 %).
    pub glycol_mass_fraction: fw_ratio,
    /// Temperature; allowed 213.15 to 373.15 (-60 °C to 100 °C); usually 253.15 to 363.15 (-20 °C to 90
    /// °C).
    pub temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_antifreeze_mixture_input>() == size_of::<[f64; 2]>());

/// What comes out of fw_antifreeze_mixture.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_antifreeze_mixture_output {
    /// Density.
    pub density: fw_kilogram_per_cubic_metre,
    /// Specific heat capacity.
    pub specific_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Dynamic viscosity.
    pub dynamic_viscosity: fw_pascal_second,
    /// Thermal conductivity.
    pub thermal_conductivity: fw_watt_per_metre_kelvin,
    /// Volumetric expansion coefficient.
    pub expansion_coefficient: fw_per_kelvin,
    /// Prandtl number.
    pub prandtl_number: fw_ratio,
    /// Temperature at which ice begins to form.
    pub freezing_temperature: fw_kelvin,
    /// Share of glycol by volume, as poured together at 20 °C.
    pub glycol_volume_fraction: fw_ratio,
}
const _: () = assert!(size_of::<fw_antifreeze_mixture_output>() == size_of::<[f64; 8]>());

static ANTIFREEZE_MIXTURE: Face = Face::new("antifreeze_mixture");

/// Properties of a glycol mixture.
///
/// Density, heat capacity, viscosity, conductivity, expansion and freezing point of water with
/// propylene or ethylene glycol.
///
/// Accuracy: 1 % for glycol and water alone, viscosity 5 %; inhibited products differ by more, their
/// maker's data go first.
///
/// Caution: Ethylene glycol is poisonous: not where it can reach drinking water.
///
/// The context holds the settings `antifreeze` (Which glycol, one of propylene glycol, ethylene glycol,
/// default propylene glycol); NULL takes every default.
///
/// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries
/// them (all properties, 0 to 60 % by mass, freezing point to 100 °C).
///
/// Source: from memory (density of pure glycol at 20 °C, for the share by volume: propylene 1036,
/// ethylene 1113 kg/m³).
///
/// Source: common practice, no source (least share of a fifth).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_antifreeze_mixture(
    context: *const fw_context,
    input: *const fw_antifreeze_mixture_input,
    output: *mut fw_antifreeze_mixture_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ANTIFREEZE_MIXTURE.evaluate::<2, 8>(context, input.cast(), output.cast(), notices) }
}

/// fw_antifreeze_mixture over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_antifreeze_mixture_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_antifreeze_mixture_input,
    input_stride: usize,
    outputs: *mut fw_antifreeze_mixture_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ANTIFREEZE_MIXTURE.batch::<2, 8>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_antifreeze_mixture into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_antifreeze_mixture_unset(input: *mut fw_antifreeze_mixture_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ANTIFREEZE_MIXTURE.unset::<2>(input.cast()) }
}

/// What goes into fw_boiling_point.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_boiling_point_input {
    /// Pressure of the water over that of the air; allowed -90000 to 1e7 (-0.9 bar to 100 bar); usually 0
    /// to 1000000 (0 bar to 10 bar); default 0 (0 bar).
    pub water_pressure: fw_pascal_gauge,
    /// Pressure of the air; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 70000 to 105000 (700
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Temperature of the water, where the margin to boiling is wanted; allowed 273.15 to 623.15 (0 °C to
    /// 350 °C); NaN means: not asked.
    pub water_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_boiling_point_input>() == size_of::<[f64; 3]>());

/// What comes out of fw_boiling_point.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_boiling_point_output {
    /// Absolute pressure.
    pub absolute_pressure: fw_pascal_absolute,
    /// Boiling point.
    pub boiling_point: fw_kelvin,
    /// Margin from the water's temperature up to boiling; negative where it boils; NaN means: no water
    /// temperature given.
    pub margin: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_boiling_point_output>() == size_of::<[f64; 3]>());

static BOILING_POINT: Face = Face::new("boiling_point");

/// Boiling point of water under pressure.
///
/// The temperature at which water boils at a gauge pressure and barometer, and how far from it the
/// water is.
///
/// Accuracy: 0.01 K besides the pressure readings; 0.1 bar is 2 K near 1 bar.
///
/// Caution: Water that is let out above 100 °C flashes to steam.
///
/// Source: IAPWS R7-97(2012), IF97 region 4 (saturation temperature).
///
/// Source: common practice, no source (margin of 10 K).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_boiling_point(
    input: *const fw_boiling_point_input,
    output: *mut fw_boiling_point_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BOILING_POINT.evaluate::<3, 3>(null(), input.cast(), output.cast(), notices) }
}

/// fw_boiling_point over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_boiling_point_batch(
    rows: usize,
    inputs: *const fw_boiling_point_input,
    input_stride: usize,
    outputs: *mut fw_boiling_point_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BOILING_POINT.batch::<3, 3>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_boiling_point into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_boiling_point_unset(input: *mut fw_boiling_point_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BOILING_POINT.unset::<3>(input.cast()) }
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
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    /// the named tube and its water.
    pub pipe_heat_capacity: fw_joule_per_metre_kelvin,
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    /// means: of the named tube, by convection and radiation.
    pub pipe_loss: fw_watt_per_metre_kelvin_of_length,
    /// Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    /// usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    pub insulation_thickness: fw_metre,
    /// Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    pub insulation_conductivity: fw_watt_per_metre_kelvin,
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    pub emitter_output: fw_watt,
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    pub emitter_exponent: fw_ratio,
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    pub emitter_heat_capacity: fw_joule_per_kelvin,
    /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    /// the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    pub emitter_height: fw_metre,
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
    pub outdoor_temperature: fw_kelvin,
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    pub block_temperature: fw_kelvin,
    /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    /// the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    /// means: as the water of the block.
    pub metal_temperature: fw_kelvin,
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    pub circuit_temperature: fw_kelvin,
    /// Temperature to be reached at the point watched; allowed 243.15 to 423.15 (-30 °C to 150 °C); usually
    /// 293.15 to 368.15 (20 °C to 95 °C).
    pub target_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_cool_down_input>() == size_of::<[f64; 29]>());

/// What comes out of fw_cool_down.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_cool_down_output {
    /// Time until the target is reached; NaN means: never, or not found.
    pub time: fw_second,
    /// Temperature of the water coming back to the block at that moment; NaN means: no flow, never, or not
    /// found.
    pub return_temperature: fw_kelvin,
    /// Heat that block, pipes and emitters have released by then; NaN means: never, or not found.
    pub heat_released: fw_joule,
    /// Heat given off by the casing; NaN means: never, or not found.
    pub casing_heat: fw_joule,
    /// Heat given off by the pipes of all circuits; NaN means: never, or not found.
    pub pipe_heat: fw_joule,
    /// Heat given off by the emitters of all circuits; NaN means: never, or not found.
    pub emitter_heat: fw_joule,
    /// Heat that block, pipes and emitters still hold over the room; NaN means: never, or not found.
    pub heat_left: fw_joule,
    /// Temperature at the point watched after an endless time; NaN means: none: heat is put in and none is
    /// lost, or not found.
    pub steady_temperature: fw_kelvin,
    /// Share by which heat put in, stored and given off fail to balance; NaN means: never, or not found.
    pub imbalance: fw_ratio,
    /// Time until the target is reached with the circuits in their second state; NaN means: no circuit
    /// changes over, never, or not found.
    pub time_after: fw_second,
    /// Heat given off by the emitters by then; NaN means: no circuit changes over, never, or not found.
    pub emitter_heat_after: fw_joule,
    /// Temperature after an endless time in that state; NaN means: no circuit changes over, none, or not
    /// found.
    pub steady_temperature_after: fw_kelvin,
}
const _: () = assert!(size_of::<fw_cool_down_output>() == size_of::<[f64; 12]>());

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
/// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
/// has stopped; measure before you open or drain anything.
///
/// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
///
/// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
///
/// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
/// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
/// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
/// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
/// closed, default ); `position` (How the run lies: horizontal or vertical in still air, or across the
/// wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose correlation for
/// the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position, one of
/// usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede, Churchill-Bernstein,
/// default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter, wall and conductivity
/// may be given by value instead, default ); `insulation` (The insulation by name, such as "mineral
/// wool"; its conductivity may be given by value instead, default ); `finish` (The outer finish by
/// name, such as "tarnished copper" or "paint"; the emissivity may be given by value instead, default
/// ); `further_layers` (Layers around the first insulation, from the inside out: a list of thickness
/// and conductivity, default ); `pump` (Whether the pump runs while the block cools, one of running,
/// stopped, default running); `watched` (The point whose temperature counts: the water of the block,
/// its metal, the end of the flow pipe, the emitter, the end of the return pipe, or a room that warms
/// up, one of block, metal, flow_end, emitter, return_end, room, default block); `thresholds`
/// (Temperatures to list the times of, each with a name: for draining, for touching (a threshold is the
/// caller's policy; that a hand can rest on metal below about 50 °C is common practice without a
/// source), default ); NULL takes every default.
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
    unsafe { COOL_DOWN.evaluate::<29, 12>(context, input.cast(), output.cast(), notices) }
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
    unsafe { COOL_DOWN.batch::<29, 12>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_cool_down into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_cool_down_unset(input: *mut fw_cool_down_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COOL_DOWN.unset::<29>(input.cast()) }
}

/// What goes into fw_pump_overrun.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_pump_overrun_input {
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
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    /// the named tube and its water.
    pub pipe_heat_capacity: fw_joule_per_metre_kelvin,
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    /// means: of the named tube, by convection and radiation.
    pub pipe_loss: fw_watt_per_metre_kelvin_of_length,
    /// Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    /// usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    pub insulation_thickness: fw_metre,
    /// Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    pub insulation_conductivity: fw_watt_per_metre_kelvin,
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    pub emitter_output: fw_watt,
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    pub emitter_exponent: fw_ratio,
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    pub emitter_heat_capacity: fw_joule_per_kelvin,
    /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    /// the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    pub emitter_height: fw_metre,
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
    pub outdoor_temperature: fw_kelvin,
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    pub block_temperature: fw_kelvin,
    /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    /// the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    /// means: as the water of the block.
    pub metal_temperature: fw_kelvin,
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    pub circuit_temperature: fw_kelvin,
    /// Temperature to which the overrun thermostat must fall for the pump to stop; allowed 273.15 to 393.15
    /// (0 °C to 120 °C); usually 303.15 to 363.15 (30 °C to 90 °C).
    pub overrun_temperature: fw_kelvin,
    /// Differential of the overrun thermostat: so far it must rise again for the pump to start anew;
    /// allowed 0.1 to 60; usually 2 to 15; default 6.
    pub overrun_differential: fw_kelvin_difference,
    /// Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    /// 0.
    pub sensor_time_constant: fw_second,
    /// Time after which the pump was seen to stop; allowed 0 to 600000 (0 min to 10000 min); NaN means: not
    /// observed.
    pub observed_stop_time: fw_second,
    /// Standard uncertainty of that observation; allowed 0 to 3600; default 10.
    pub observation_uncertainty: fw_second,
    /// Relative standard uncertainty of the time computed, by what is uncertain in losses and heat
    /// capacities; propagate it, or take 15 % (common practice, no source); allowed 0 to 1 (0 % to 100 %);
    /// default 0.15 (15 %).
    pub model_uncertainty: fw_ratio,
}
const _: () = assert!(size_of::<fw_pump_overrun_input>() == size_of::<[f64; 34]>());

/// What comes out of fw_pump_overrun.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_pump_overrun_output {
    /// Time until the pump stops for the first time; NaN means: never, or not found.
    pub stop_time: fw_second,
    /// Temperature of the water in the block at that moment; NaN means: never, or not found.
    pub block_temperature_at_stop: fw_kelvin,
    /// Temperature of the returning water just before; NaN means: never, not found, or no flow.
    pub return_temperature_at_stop: fw_kelvin,
    /// Heat the overrun has carried out of block, pipes and emitters; NaN means: never, or not found.
    pub heat_rejected: fw_joule,
    /// Heat that block, pipes and emitters still hold over the room; NaN means: never, or not found.
    pub heat_left: fw_joule,
    /// Highest temperature of the block's water after the pump has stopped for the first time, with the
    /// pump then left off; NaN means: never, or not found.
    pub peak_after_stop: fw_kelvin,
    /// How often the residual heat starts the pump again.
    pub restart_count: fw_ratio,
    /// Time until the pump has stopped for good; NaN means: never, or not found.
    pub final_stop_time: fw_second,
    /// Temperature of the thermostat's place after an endless time with the pump running; NaN means: none:
    /// heat is put in and none is lost, or not found.
    pub steady_temperature: fw_kelvin,
    /// Share by which heat put in, stored and given off fail to balance at the stop; NaN means: never, or
    /// not found.
    pub imbalance: fw_ratio,
    /// Time until the pump stops for the first time with the circuits in their second state; NaN means: no
    /// circuit changes over, never, or not found.
    pub stop_time_after: fw_second,
    /// Temperature of the thermostat's place after an endless time with the pump running, in that state;
    /// NaN means: no circuit changes over, none, or not found.
    pub steady_temperature_after: fw_kelvin,
    /// Observed less computed time, over the standard uncertainty of that difference: within -2 to 2 they
    /// agree; NaN means: not observed, never, or not found.
    pub deviation: fw_ratio,
}
const _: () = assert!(size_of::<fw_pump_overrun_output>() == size_of::<[f64; 13]>());

static PUMP_OVERRUN: Face = Face::new("pump_overrun");

/// Pump overrun.
///
/// When the overrun thermostat stops the pump after the burner has stopped, or that it never does and
/// at what temperature the plant comes to rest; whether residual heat starts it again; what another
/// state of the circuits does to that.
///
/// Accuracy: The equations are solved to about one part in 10^8 of the time; loss coefficients (10 to
/// 30 %) and the metal's heat capacity (10 %) limit the answer.
///
/// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
/// has stopped; measure before you open or drain anything.
///
/// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
///
/// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
///
/// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
/// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
/// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
/// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
/// closed, default ); `position` (How the run lies: horizontal or vertical in still air, or across the
/// wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose correlation for
/// the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position, one of
/// usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede, Churchill-Bernstein,
/// default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter, wall and conductivity
/// may be given by value instead, default ); `insulation` (The insulation by name, such as "mineral
/// wool"; its conductivity may be given by value instead, default ); `finish` (The outer finish by
/// name, such as "tarnished copper" or "paint"; the emissivity may be given by value instead, default
/// ); `further_layers` (Layers around the first insulation, from the inside out: a list of thickness
/// and conductivity, default ); NULL takes every default.
///
/// Source: energy balance of stirred masses in a row; first law (block, pipe cells, emitters).
///
/// Source: IEC 60730-1 (wording from memory) (operating values and differential of the thermostat).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pump_overrun(
    context: *const fw_context,
    input: *const fw_pump_overrun_input,
    output: *mut fw_pump_overrun_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PUMP_OVERRUN.evaluate::<34, 13>(context, input.cast(), output.cast(), notices) }
}

/// fw_pump_overrun over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pump_overrun_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_pump_overrun_input,
    input_stride: usize,
    outputs: *mut fw_pump_overrun_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PUMP_OVERRUN.batch::<34, 13>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_pump_overrun into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_pump_overrun_unset(input: *mut fw_pump_overrun_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PUMP_OVERRUN.unset::<34>(input.cast()) }
}

/// What goes into fw_overshoot.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_overshoot_input {
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
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    /// the named tube and its water.
    pub pipe_heat_capacity: fw_joule_per_metre_kelvin,
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    /// means: of the named tube, by convection and radiation.
    pub pipe_loss: fw_watt_per_metre_kelvin_of_length,
    /// Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    /// usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    pub insulation_thickness: fw_metre,
    /// Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    pub insulation_conductivity: fw_watt_per_metre_kelvin,
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    pub emitter_output: fw_watt,
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    pub emitter_exponent: fw_ratio,
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    pub emitter_heat_capacity: fw_joule_per_kelvin,
    /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    /// the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    pub emitter_height: fw_metre,
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
    pub outdoor_temperature: fw_kelvin,
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    pub block_temperature: fw_kelvin,
    /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    /// the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    /// means: as the water of the block.
    pub metal_temperature: fw_kelvin,
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    pub circuit_temperature: fw_kelvin,
    /// Output of the burner to the block; the most it gives, where it has stages or modulates; allowed 10
    /// to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000 (1 kW to 500 kW).
    pub burner_output: fw_watt,
    /// Output of the low stage, or the least of a modulating burner; allowed 10 to 1e7 (0.01 kW to 10000
    /// kW); NaN means: one output only.
    pub low_output: fw_watt,
    /// How far below the cut-out the high stage gives way to the low one, or a modulating burner begins to
    /// turn down; allowed 0.1 to 60; default 5.
    pub turn_down_band: fw_kelvin_difference,
    /// Temperature at which the control thermostat stops the burner, on rising temperature; allowed 273.15
    /// to 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    pub cut_out_temperature: fw_kelvin,
    /// Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    /// 0.
    pub sensor_time_constant: fw_second,
    /// Operating value of the limit thermostat, whose sensor sits in the same pocket: it locks the burner
    /// out until reset by hand; allowed 303.15 to 433.15 (30 °C to 160 °C); usually 353.15 to 388.15 (80 °C
    /// to 115 °C); NaN means: no limit thermostat.
    pub limit_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_overshoot_input>() == size_of::<[f64; 34]>());

/// What comes out of fw_overshoot.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_overshoot_output {
    /// Time until the thermostat stops the burner; NaN means: the burner never stops, or not found.
    pub firing_time: fw_second,
    /// Temperature of the block's water as the burner stops; NaN means: the burner never stops, or not
    /// found.
    pub temperature_at_cut_out: fw_kelvin,
    /// Heat the metal then holds over the water; NaN means: the burner never stops, or not found.
    pub residual_heat: fw_joule,
    /// Highest temperature of the block's water if the pump stops with the burner; NaN means: the burner
    /// never stops, or not found.
    pub peak_with_pump_stopped: fw_kelvin,
    /// Time of that peak after the burner has stopped; NaN means: the burner never stops, or not found.
    pub peak_time_with_pump_stopped: fw_second,
    /// Highest temperature of the block's water if the pump runs on; NaN means: the burner never stops, or
    /// not found.
    pub peak_with_pump_running: fw_kelvin,
    /// Overshoot over the cut-out with the pump stopped; NaN means: the burner never stops, or not found.
    pub overshoot_with_pump_stopped: fw_kelvin_difference,
    /// Overshoot over the cut-out with the pump running on; NaN means: the burner never stops, or not
    /// found.
    pub overshoot_with_pump_running: fw_kelvin_difference,
    /// Limit less the peak with the pump stopped; negative where the limit would lock out; NaN means: no
    /// limit given, or no peak found.
    pub margin_with_pump_stopped: fw_kelvin_difference,
    /// Limit less the peak with the pump running on; NaN means: no limit given, or no peak found.
    pub margin_with_pump_running: fw_kelvin_difference,
    /// Temperature the block's water would reach if the burner burned on; NaN means: none: no loss, or not
    /// found.
    pub steady_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_overshoot_output>() == size_of::<[f64; 11]>());

static OVERSHOOT: Face = Face::new("overshoot");

/// Overshoot after the burner has stopped.
///
/// The highest temperature of the block's water after the control thermostat has stopped the burner,
/// with the pump stopped and with the pump running on, and the margin to the limit thermostat: why a
/// pump runs on.
///
/// Accuracy: Two masses stand for a block whose temperature varies from place to place: take the
/// overshoot as known to about 30 %, mostly by the film conductance. The equations themselves are
/// solved to 1e-6 K.
///
/// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
/// has stopped; measure before you open or drain anything.
///
/// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
///
/// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
///
/// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
/// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
/// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
/// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
/// closed, default ); `position` (How the run lies: horizontal or vertical in still air, or across the
/// wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose correlation for
/// the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position, one of
/// usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede, Churchill-Bernstein,
/// default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter, wall and conductivity
/// may be given by value instead, default ); `insulation` (The insulation by name, such as "mineral
/// wool"; its conductivity may be given by value instead, default ); `finish` (The outer finish by
/// name, such as "tarnished copper" or "paint"; the emissivity may be given by value instead, default
/// ); `further_layers` (Layers around the first insulation, from the inside out: a list of thickness
/// and conductivity, default ); `burner` (How the burner gives its output: fixed, in two stages, or
/// modulating down to a least output, one of fixed, two_stage, modulating, default fixed); NULL takes
/// every default.
///
/// Source: energy balance of metal and water coupled by a film; first law (residual heat).
///
/// Source: first-order lag (sensor in its pocket).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_overshoot(
    context: *const fw_context,
    input: *const fw_overshoot_input,
    output: *mut fw_overshoot_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { OVERSHOOT.evaluate::<34, 11>(context, input.cast(), output.cast(), notices) }
}

/// fw_overshoot over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_overshoot_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_overshoot_input,
    input_stride: usize,
    outputs: *mut fw_overshoot_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { OVERSHOOT.batch::<34, 11>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_overshoot into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_overshoot_unset(input: *mut fw_overshoot_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { OVERSHOOT.unset::<34>(input.cast()) }
}

/// What goes into fw_warm_up.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_warm_up_input {
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
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    /// the named tube and its water.
    pub pipe_heat_capacity: fw_joule_per_metre_kelvin,
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    /// means: of the named tube, by convection and radiation.
    pub pipe_loss: fw_watt_per_metre_kelvin_of_length,
    /// Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    /// usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    pub insulation_thickness: fw_metre,
    /// Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    pub insulation_conductivity: fw_watt_per_metre_kelvin,
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    pub emitter_output: fw_watt,
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    pub emitter_exponent: fw_ratio,
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    pub emitter_heat_capacity: fw_joule_per_kelvin,
    /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    /// the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    pub emitter_height: fw_metre,
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
    pub outdoor_temperature: fw_kelvin,
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    pub block_temperature: fw_kelvin,
    /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    /// the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    /// means: as the water of the block.
    pub metal_temperature: fw_kelvin,
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    pub circuit_temperature: fw_kelvin,
    /// Output of the burner to the block; the most it gives, where it has stages or modulates; allowed 10
    /// to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000 (1 kW to 500 kW).
    pub burner_output: fw_watt,
    /// Output of the low stage, or the least of a modulating burner; allowed 10 to 1e7 (0.01 kW to 10000
    /// kW); NaN means: one output only.
    pub low_output: fw_watt,
    /// How far below the cut-out the high stage gives way to the low one, or a modulating burner begins to
    /// turn down; allowed 0.1 to 60; default 5.
    pub turn_down_band: fw_kelvin_difference,
    /// Temperature at which the control thermostat stops the burner, on rising temperature; allowed 273.15
    /// to 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    pub cut_out_temperature: fw_kelvin,
    /// Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    /// 0.
    pub sensor_time_constant: fw_second,
    /// Operating value of the limit thermostat, whose sensor sits in the same pocket: it locks the burner
    /// out until reset by hand; allowed 303.15 to 433.15 (30 °C to 160 °C); usually 353.15 to 388.15 (80 °C
    /// to 115 °C); NaN means: no limit thermostat.
    pub limit_temperature: fw_kelvin,
    /// Differential of the control thermostat; allowed 0.1 to 60; usually 2 to 15; default 8.
    pub control_differential: fw_kelvin_difference,
    /// Least time the burner stays off; allowed 0 to 7200 (0 min to 120 min); default 0 (0 min).
    pub anti_cycling_delay: fw_second,
    /// Temperature to be reached at the point watched; allowed 243.15 to 423.15 (-30 °C to 150 °C); usually
    /// 293.15 to 363.15 (20 °C to 90 °C).
    pub target_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_warm_up_input>() == size_of::<[f64; 37]>());

/// What comes out of fw_warm_up.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_warm_up_output {
    /// Time until the target is reached; NaN means: never, or not found.
    pub time: fw_second,
    /// Heat the burner has given to the block by then; NaN means: never, or not found.
    pub heat_put_in: fw_joule,
    /// Heat that block, pipes and emitters have taken up; NaN means: never, or not found.
    pub heat_stored: fw_joule,
    /// Heat given off by casing and pipes; NaN means: never, or not found.
    pub heat_lost: fw_joule,
    /// Heat given off by the emitters; NaN means: never, or not found.
    pub emitter_heat: fw_joule,
    /// Temperature of the block's water at that moment; NaN means: never, or not found.
    pub block_temperature_then: fw_kelvin,
    /// How often the burner has stopped on the way.
    pub stop_count: fw_ratio,
    /// Highest temperature the point watched ever gets to, at rest or in a cycle that repeats; NaN means:
    /// the target is reached, or not found.
    pub highest_temperature: fw_kelvin,
    /// Time at which the limit thermostat locks the burner out; NaN means: it does not trip on the way.
    pub limit_trip_time: fw_second,
    /// Share by which heat put in, stored and given off fail to balance; NaN means: never, or not found.
    pub imbalance: fw_ratio,
}
const _: () = assert!(size_of::<fw_warm_up_output>() == size_of::<[f64; 10]>());

static WARM_UP: Face = Face::new("warm_up");

/// Warm-up of a heat generator and its circuits.
///
/// How long a plant takes from its start to a temperature at the block, an emitter or the return, with
/// a fixed, two-stage or modulating burner, and where the heat has gone by then.
///
/// Accuracy: The equations are solved to about one part in 10^8 of the time; the burner's output (5 %)
/// and the heat capacities (10 %) limit the answer.
///
/// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
/// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
/// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
/// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
/// closed, default ); `position` (How the run lies: horizontal or vertical in still air, or across the
/// wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose correlation for
/// the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position, one of
/// usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede, Churchill-Bernstein,
/// default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter, wall and conductivity
/// may be given by value instead, default ); `insulation` (The insulation by name, such as "mineral
/// wool"; its conductivity may be given by value instead, default ); `finish` (The outer finish by
/// name, such as "tarnished copper" or "paint"; the emissivity may be given by value instead, default
/// ); `further_layers` (Layers around the first insulation, from the inside out: a list of thickness
/// and conductivity, default ); `burner` (How the burner gives its output: fixed, in two stages, or
/// modulating down to a least output, one of fixed, two_stage, modulating, default fixed); `demand`
/// (Whether heat is asked for at the start; without that the burner stands, whatever the thermostat
/// says, one of on, off, default on); `demand_changes` (Times from the start, rising, at which the
/// demand for heat changes over: off, on, off... where it is on at the start, default ); `pump`
/// (Whether the pump runs all the time, or only while heat is asked for, one of running, with_demand,
/// default running); `watched` (The point whose temperature counts: the water of the block, its metal,
/// the end of the flow pipe, the emitter, the end of the return pipe, or a room that warms up, one of
/// block, metal, flow_end, emitter, return_end, room, default block); NULL takes every default.
///
/// Source: energy balance of stirred masses in a row; first law (block, pipe cells, emitters).
///
/// Source: EN 442 (exponent form, from memory) (emitter output against temperature difference).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_warm_up(
    context: *const fw_context,
    input: *const fw_warm_up_input,
    output: *mut fw_warm_up_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { WARM_UP.evaluate::<37, 10>(context, input.cast(), output.cast(), notices) }
}

/// fw_warm_up over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_warm_up_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_warm_up_input,
    input_stride: usize,
    outputs: *mut fw_warm_up_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { WARM_UP.batch::<37, 10>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_warm_up into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_warm_up_unset(input: *mut fw_warm_up_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { WARM_UP.unset::<37>(input.cast()) }
}

/// What goes into fw_circuit_cycling.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_circuit_cycling_input {
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
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    /// the named tube and its water.
    pub pipe_heat_capacity: fw_joule_per_metre_kelvin,
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    /// means: of the named tube, by convection and radiation.
    pub pipe_loss: fw_watt_per_metre_kelvin_of_length,
    /// Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    /// usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    pub insulation_thickness: fw_metre,
    /// Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    pub insulation_conductivity: fw_watt_per_metre_kelvin,
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    pub emitter_output: fw_watt,
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    pub emitter_exponent: fw_ratio,
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    pub emitter_heat_capacity: fw_joule_per_kelvin,
    /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    /// the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    pub emitter_height: fw_metre,
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
    pub outdoor_temperature: fw_kelvin,
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    pub block_temperature: fw_kelvin,
    /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    /// the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    /// means: as the water of the block.
    pub metal_temperature: fw_kelvin,
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    pub circuit_temperature: fw_kelvin,
    /// Output of the burner to the block; the most it gives, where it has stages or modulates; allowed 10
    /// to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000 (1 kW to 500 kW).
    pub burner_output: fw_watt,
    /// Output of the low stage, or the least of a modulating burner; allowed 10 to 1e7 (0.01 kW to 10000
    /// kW); NaN means: one output only.
    pub low_output: fw_watt,
    /// How far below the cut-out the high stage gives way to the low one, or a modulating burner begins to
    /// turn down; allowed 0.1 to 60; default 5.
    pub turn_down_band: fw_kelvin_difference,
    /// Temperature at which the control thermostat stops the burner, on rising temperature; allowed 273.15
    /// to 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    pub cut_out_temperature: fw_kelvin,
    /// Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    /// 0.
    pub sensor_time_constant: fw_second,
    /// Operating value of the limit thermostat, whose sensor sits in the same pocket: it locks the burner
    /// out until reset by hand; allowed 303.15 to 433.15 (30 °C to 160 °C); usually 353.15 to 388.15 (80 °C
    /// to 115 °C); NaN means: no limit thermostat.
    pub limit_temperature: fw_kelvin,
    /// Temperature at which it lights the burner again, on falling temperature; allowed 253.15 to 423.15
    /// (-20 °C to 150 °C); usually 293.15 to 363.15 (20 °C to 90 °C).
    pub cut_in_temperature: fw_kelvin,
    /// Least time the burner stays off; allowed 0 to 7200 (0 min to 120 min); default 0 (0 min).
    pub anti_cycling_delay: fw_second,
}
const _: () = assert!(size_of::<fw_circuit_cycling_input>() == size_of::<[f64; 36]>());

/// What comes out of fw_circuit_cycling.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_circuit_cycling_output {
    /// Time the burner burns in each cycle; NaN means: no repeating cycle, or not found.
    pub on_time: fw_second,
    /// Time it stands in each cycle; NaN means: no repeating cycle, or not found.
    pub off_time: fw_second,
    /// Time of a whole cycle; NaN means: no repeating cycle, or not found.
    pub period: fw_second,
    /// Starts per hour; NaN means: no repeating cycle, or not found.
    pub start_rate: fw_per_second,
    /// Share of the time the burner burns; NaN means: no repeating cycle, or not found.
    pub duty: fw_ratio,
    /// Mean heat from the burner over a cycle; what it gives at rest, where it burns without stopping; NaN
    /// means: no repeating cycle, or not found.
    pub mean_output: fw_watt,
    /// Temperature of the block's water at which the plant comes to rest, where the burner burns or stands
    /// without end; NaN means: burner or stages cycle, or not found.
    pub steady_temperature: fw_kelvin,
    /// Cycles until they repeat.
    pub settling_count: fw_ratio,
    /// Time followed: until the cycles repeat, or the plant comes to rest, or 500 cycles or a week are
    /// over; NaN means: the sum did not end.
    pub followed_time: fw_second,
    /// Time of a whole cycle of the stages, where these change over while the burner burns without
    /// stopping; NaN means: the stages do not cycle by themselves.
    pub stage_period: fw_second,
    /// Time at which the limit thermostat locks the burner out; NaN means: it does not trip.
    pub limit_trip_time: fw_second,
}
const _: () = assert!(size_of::<fw_circuit_cycling_output>() == size_of::<[f64; 11]>());

static CIRCUIT_CYCLING: Face = Face::new("circuit_cycling");

/// Cycling of a burner on its circuits.
///
/// On and off times, starts per hour and duty of a burner on a block with pump, pipes and emitters,
/// once the cycles repeat; fixed, two-stage or modulating.
///
/// Accuracy: The cycle is found to better than one part in 10^6 (random plants, beside runs at a
/// thousandth of the local error); the emitter's output (10 %) and the heat capacities (10 %) limit the
/// answer.
///
/// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
/// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
/// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
/// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
/// closed, default ); `position` (How the run lies: horizontal or vertical in still air, or across the
/// wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose correlation for
/// the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position, one of
/// usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede, Churchill-Bernstein,
/// default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter, wall and conductivity
/// may be given by value instead, default ); `insulation` (The insulation by name, such as "mineral
/// wool"; its conductivity may be given by value instead, default ); `finish` (The outer finish by
/// name, such as "tarnished copper" or "paint"; the emissivity may be given by value instead, default
/// ); `further_layers` (Layers around the first insulation, from the inside out: a list of thickness
/// and conductivity, default ); `burner` (How the burner gives its output: fixed, in two stages, or
/// modulating down to a least output, one of fixed, two_stage, modulating, default fixed); `demand`
/// (Whether heat is asked for at the start; without that the burner stands, whatever the thermostat
/// says, one of on, off, default on); `demand_changes` (Times from the start, rising, at which the
/// demand for heat changes over: off, on, off... where it is on at the start, default ); `pump`
/// (Whether the pump runs all the time, or only while heat is asked for, one of running, with_demand,
/// default running); NULL takes every default.
///
/// Source: energy balance of stirred masses in a row; first law (block, pipe cells, emitters).
///
/// Source: EN 442 (exponent form, from memory) (emitter load).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_circuit_cycling(
    context: *const fw_context,
    input: *const fw_circuit_cycling_input,
    output: *mut fw_circuit_cycling_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CIRCUIT_CYCLING.evaluate::<36, 11>(context, input.cast(), output.cast(), notices) }
}

/// fw_circuit_cycling over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_circuit_cycling_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_circuit_cycling_input,
    input_stride: usize,
    outputs: *mut fw_circuit_cycling_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CIRCUIT_CYCLING.batch::<36, 11>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_circuit_cycling into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_circuit_cycling_unset(input: *mut fw_circuit_cycling_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CIRCUIT_CYCLING.unset::<36>(input.cast()) }
}

/// What goes into fw_cool_down_fit.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_cool_down_fit_input {
    /// Heat capacity of all that cooled together; with it the loss is found; allowed 1 to 1e9 (0.001 kJ/K
    /// to 1000000 kJ/K); NaN means: not known.
    pub heat_capacity: fw_joule_per_kelvin,
    /// Standard uncertainty of that heat capacity; allowed 0 to 1e9 (0 kJ/K to 1000000 kJ/K); default 0 (0
    /// kJ/K).
    pub heat_capacity_uncertainty: fw_joule_per_kelvin,
    /// Loss conductance expected at 50 K over the room: compared where the heat capacity is known, else the
    /// heat capacity is found from it; allowed 0.0001 to 100000; NaN means: not known.
    pub expected_loss_conductance: fw_watt_per_kelvin,
    /// Standard uncertainty of that loss conductance; allowed 0 to 100000; default 0.
    pub loss_conductance_uncertainty: fw_watt_per_kelvin,
    /// Exponent with which the loss falls off: 1 for an insulated block or steady flow, 1.25 for a bare
    /// one, about 1.3 for radiators; allowed 1 to 2; default 1.
    pub loss_exponent: fw_ratio,
    /// Room temperature; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to 308.15 (0 °C to 35
    /// °C); default 293.15 (20 °C).
    pub room_temperature: fw_kelvin,
    /// Standard uncertainty of the room temperature; allowed 0 to 20; default 0.5.
    pub room_temperature_uncertainty: fw_kelvin_difference,
    /// Standard uncertainty of one temperature reading (resolution and scatter; a fixed error of the probe
    /// is not in it); allowed 0.001 to 20; usually 0.05 to 2; default 0.3.
    pub reading_uncertainty: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_cool_down_fit_input>() == size_of::<[f64; 8]>());

/// What comes out of fw_cool_down_fit.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_cool_down_fit_output {
    /// Time constant at 50 K over the room: heat capacity over loss conductance.
    pub time_constant: fw_second,
    /// Its standard uncertainty.
    pub time_constant_uncertainty: fw_second,
    /// Loss conductance at 50 K over the room; NaN means: no heat capacity given.
    pub loss_conductance: fw_watt_per_kelvin,
    /// Its standard uncertainty; NaN means: no heat capacity given.
    pub fitted_loss_uncertainty: fw_watt_per_kelvin,
    /// Heat capacity found from the loss conductance expected; NaN means: the heat capacity is given.
    pub fitted_heat_capacity: fw_joule_per_kelvin,
    /// Its standard uncertainty; NaN means: the heat capacity is given.
    pub fitted_heat_capacity_uncertainty: fw_joule_per_kelvin,
    /// Fitted less expected loss conductance, over the standard uncertainty of that difference; NaN means:
    /// nothing to compare.
    pub deviation: fw_ratio,
    /// Temperature at the time zero of the log, by the fit.
    pub start_temperature: fw_kelvin,
    /// Root mean square of reading less fit, with two fitted values allowed for.
    pub residual: fw_kelvin_difference,
    /// That over the uncertainty stated for a reading: near 1 where the model fits.
    pub residual_ratio: fw_ratio,
}
const _: () = assert!(size_of::<fw_cool_down_fit_output>() == size_of::<[f64; 10]>());

static COOL_DOWN_FIT: Face = Face::new("cool_down_fit");

/// Loss or heat capacity from a logged cool-down.
///
/// From times and temperatures logged on site: the time constant and from it the loss conductance (the
/// heat capacity being known) or the heat capacity (the loss being known), with uncertainty, and
/// whether the observation agrees with the loss expected.
///
/// Accuracy: One mass with one law of loss. The uncertainty holds the reading scatter, the room
/// temperature and the value given; not a fixed error of the probe.
///
/// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
/// has stopped; measure before you open or drain anything.
///
/// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
///
/// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
///
/// The context holds the settings `times` (Times of the readings, rising, the burner being off and
/// nothing switched in between); `temperatures` (Temperatures read at those times); NULL takes every
/// default.
///
/// Source: Newton's law of cooling, and its power-law form (Bejan and Kraus, Heat Transfer Handbook,
/// eq. 3.286, quoted) (model).
///
/// Source: JCGM 100:2008, 5.1 and H.3 (least squares and its uncertainty; room temperature and heat
/// capacity in quadrature).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_cool_down_fit(
    context: *const fw_context,
    input: *const fw_cool_down_fit_input,
    output: *mut fw_cool_down_fit_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COOL_DOWN_FIT.evaluate::<8, 10>(context, input.cast(), output.cast(), notices) }
}

/// fw_cool_down_fit over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_cool_down_fit_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_cool_down_fit_input,
    input_stride: usize,
    outputs: *mut fw_cool_down_fit_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COOL_DOWN_FIT.batch::<8, 10>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_cool_down_fit into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_cool_down_fit_unset(input: *mut fw_cool_down_fit_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { COOL_DOWN_FIT.unset::<8>(input.cast()) }
}

/// What goes into fw_touch_wait.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_touch_wait_input {
    /// Temperature of the surface now; allowed 243.15 to 673.15 (-30 °C to 400 °C); usually 293.15 to
    /// 383.15 (20 °C to 110 °C).
    pub surface_temperature: fw_kelvin,
    /// Room temperature; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to 308.15 (0 °C to 35
    /// °C); default 293.15 (20 °C).
    pub room_temperature: fw_kelvin,
    /// Time constant of the cool-down, from `block_cool_down`, `cool_down_fit` or `pipe_cool_down`; allowed
    /// 0.6 to 6000000 (0.01 min to 100000 min); usually 60 to 60000 (1 min to 1000 min).
    pub time_constant: fw_second,
    /// Contact temperature not to be exceeded, by the policy named; allowed 293.15 to 373.15 (20 °C to 100
    /// °C); usually 313.15 to 343.15 (40 °C to 70 °C).
    pub contact_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_touch_wait_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_touch_wait.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_touch_wait_output {
    /// Time until the surface has fallen to the contact temperature; zero where it has; NaN means: never.
    pub wait: fw_second,
    /// Surface less contact temperature now; negative where it may be touched.
    pub excess: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_touch_wait_output>() == size_of::<[f64; 2]>());

static TOUCH_WAIT: Face = Face::new("touch_wait");

/// Wait until a surface may be touched.
///
/// How long until a cooling surface has fallen to a contact temperature that the caller's policy states
/// for its material and contact time.
///
/// Accuracy: As the time constant; a bare surface cools more slowly towards the end than the
/// exponential says, so that the wait may be a quarter longer.
///
/// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
/// has stopped; measure before you open or drain anything.
///
/// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
///
/// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
///
/// The context holds the settings `policy` (Where the contact temperatures come from: a standard with
/// edition, or a house rule, with its date. None is built in; that a hand can rest on metal below about
/// 50 °C is common practice without a source); `thresholds` (Temperatures to list the times of, each
/// with a name: for draining, for touching (a threshold is the caller's policy; that a hand can rest on
/// metal below about 50 °C is common practice without a source), default ); NULL takes every default.
///
/// Source: Newton's law of cooling (exponential with the time constant given).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_touch_wait(
    context: *const fw_context,
    input: *const fw_touch_wait_input,
    output: *mut fw_touch_wait_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TOUCH_WAIT.evaluate::<4, 2>(context, input.cast(), output.cast(), notices) }
}

/// fw_touch_wait over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_touch_wait_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_touch_wait_input,
    input_stride: usize,
    outputs: *mut fw_touch_wait_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TOUCH_WAIT.batch::<4, 2>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_touch_wait into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_touch_wait_unset(input: *mut fw_touch_wait_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { TOUCH_WAIT.unset::<4>(input.cast()) }
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
const _: () = assert!(size_of::<fw_installation_volume_input>() == size_of::<[f64; 3]>());

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
const _: () = assert!(size_of::<fw_installation_volume_output>() == size_of::<[f64; 3]>());

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
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Reference temperature to which the leak is stated; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    /// 288.15 (15 °C).
    pub reference_temperature: fw_kelvin,
    /// Reference pressure to which the leak is stated; allowed 90000 to 110000 (900 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pub reference_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_tightness_test_input>() == size_of::<[f64; 13]>());

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
const _: () = assert!(size_of::<fw_tightness_test_output>() == size_of::<[f64; 14]>());

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
/// Caution: Smell of gas, or a carbon monoxide alarm: stop, ventilate, isolate the gas, touch no
/// switches, leave, and call the gas emergency service.
///
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
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
const _: () = assert!(size_of::<fw_tightness_plan_input>() == size_of::<[f64; 10]>());

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
const _: () = assert!(size_of::<fw_tightness_plan_output>() == size_of::<[f64; 6]>());

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
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
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
const _: () = assert!(size_of::<fw_let_by_input>() == size_of::<[f64; 11]>());

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
const _: () = assert!(size_of::<fw_let_by_output>() == size_of::<[f64; 3]>());

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
/// Caution: Smell of gas, or a carbon monoxide alarm: stop, ventilate, isolate the gas, touch no
/// switches, leave, and call the gas emergency service.
///
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
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
    /// Density over that of air of the gas tested with; left out, that of the test gas named; allowed 0.05
    /// to 5; NaN means: that of the test gas.
    pub test_relative_density: fw_ratio,
    /// Density over that of air of the gas in operation; left out, that of the gas named; allowed 0.05 to
    /// 5; NaN means: that of the operating gas.
    pub operating_relative_density: fw_ratio,
    /// Viscosity of the gas tested with; left out, that of the test gas named; allowed 1e-6 to 0.0001; NaN
    /// means: that of the test gas.
    pub test_viscosity: fw_pascal_second,
    /// Viscosity of the gas in operation; left out, that of the gas named; allowed 1e-6 to 0.0001; NaN
    /// means: that of the operating gas.
    pub operating_viscosity: fw_pascal_second,
    /// Temperature of gas and air; allowed 233.15 to 333.15 (-40 °C to 60 °C); default 288.15 (15 °C).
    pub temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_leak_scaling_input>() == size_of::<[f64; 8]>());

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
    /// Viscosity of the operating gas at the temperature.
    pub operating_viscosity: fw_pascal_second,
    /// Viscosity of air at the temperature.
    pub air_viscosity: fw_pascal_second,
    /// Density of air at the temperature and one standard atmosphere.
    pub air_density: fw_kilogram_per_cubic_metre,
}
const _: () = assert!(size_of::<fw_leak_scaling_output>() == size_of::<[f64; 7]>());

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
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
///
/// The context holds the settings `test_gas` (The gas tested with: "air", or a fuel as fuel_properties
/// takes it, default air); `operating_gas` (The gas in operation: a fuel as fuel_properties takes it,
/// or "air", default G20); NULL takes every default.
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
    context: *const fw_context,
    input: *const fw_leak_scaling_input,
    output: *mut fw_leak_scaling_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LEAK_SCALING.evaluate::<8, 7>(context, input.cast(), output.cast(), notices) }
}

/// fw_leak_scaling over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_leak_scaling_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_leak_scaling_input,
    input_stride: usize,
    outputs: *mut fw_leak_scaling_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LEAK_SCALING.batch::<8, 7>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_leak_scaling into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_leak_scaling_unset(input: *mut fw_leak_scaling_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LEAK_SCALING.unset::<8>(input.cast()) }
}

/// What goes into fw_leak_class.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_leak_class_input {
    /// Leak at the conditions that the classes are stated for; allowed 0 to 0.2777778 (0 L/h to 1000000
    /// L/h); usually 0 to 2.777778e-5 (0 L/h to 100 L/h).
    pub leak_rate: fw_cubic_metre_per_second_at_reference_conditions,
    /// Least leak that the test could show; allowed 0 to 0.2777778 (0 L/h to 1000000 L/h); NaN means: not
    /// stated.
    pub smallest_detectable_leak: fw_cubic_metre_per_second_at_reference_conditions,
}
const _: () = assert!(size_of::<fw_leak_class_input>() == size_of::<[f64; 2]>());

/// What comes out of fw_leak_class.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_leak_class_output {
    /// Number of the class in the caller's list, from 1.
    pub class_number: fw_ratio,
    /// Leak at which the class begins; it belongs to the class.
    pub class_from: fw_cubic_metre_per_second_at_reference_conditions,
    /// Leak at which the next class begins; NaN means: the last class has no end.
    pub class_below: fw_cubic_metre_per_second_at_reference_conditions,
}
const _: () = assert!(size_of::<fw_leak_class_output>() == size_of::<[f64; 3]>());

static LEAK_CLASS: Face = Face::new("leak_class");

/// Class of a leak.
///
/// The class of a leak rate in a list of classes that the caller takes from the local rule.
///
/// Accuracy: A comparison without rounding; where the leak is uncertain, judge it with its uncertainty.
///
/// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
/// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
/// not none.
///
/// Caution: Smell of gas, or a carbon monoxide alarm: stop, ventilate, isolate the gas, touch no
/// switches, leave, and call the gas emergency service.
///
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
///
/// The context holds the settings `classes` (The classes of the local rule: a list of tables, each with
/// name and from (the leak at which it begins, which belongs to it; 0 for the first)); NULL takes every
/// default.
///
/// Source: The caller's rule (classes).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_leak_class(
    context: *const fw_context,
    input: *const fw_leak_class_input,
    output: *mut fw_leak_class_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LEAK_CLASS.evaluate::<2, 3>(context, input.cast(), output.cast(), notices) }
}

/// fw_leak_class over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_leak_class_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_leak_class_input,
    input_stride: usize,
    outputs: *mut fw_leak_class_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LEAK_CLASS.batch::<2, 3>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_leak_class into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_leak_class_unset(input: *mut fw_leak_class_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { LEAK_CLASS.unset::<2>(input.cast()) }
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
const _: () = assert!(size_of::<fw_purge_input>() == size_of::<[f64; 4]>());

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
const _: () = assert!(size_of::<fw_purge_output>() == size_of::<[f64; 3]>());

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
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
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
const _: () = assert!(size_of::<fw_purge_velocity_input>() == size_of::<[f64; 3]>());

/// What comes out of fw_purge_velocity.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_purge_velocity_output {
    /// Flow that gives the velocity.
    pub purge_flow: fw_cubic_metre_per_second_at_the_meter,
    /// Time in which the front passes the length.
    pub travel_time: fw_second,
}
const _: () = assert!(size_of::<fw_purge_velocity_output>() == size_of::<[f64; 2]>());

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
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
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
const _: () = assert!(size_of::<fw_block_cool_down_input>() == size_of::<[f64; 10]>());

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
const _: () = assert!(size_of::<fw_block_cool_down_output>() == size_of::<[f64; 7]>());

static BLOCK_COOL_DOWN: Face = Face::new("block_cool_down");

/// Cool-down of one hot mass.
///
/// How long a hot mass (a block, a casing, a standing pipe) takes to fall to a temperature, by a linear
/// loss, natural convection and radiation together.
///
/// Accuracy: Exact to about 1e-11 for the loss stated; loss coefficients are commonly known to 10 to 30
/// %, the heat capacity of the metal to 10 %.
///
/// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
/// has stopped; measure before you open or drain anything.
///
/// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
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
const _: () = assert!(size_of::<fw_burner_cycling_input>() == size_of::<[f64; 11]>());

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
const _: () = assert!(size_of::<fw_burner_cycling_output>() == size_of::<[f64; 9]>());

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
const _: () = assert!(size_of::<fw_tube_run_input>() == size_of::<[f64; 1]>());

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
const _: () = assert!(size_of::<fw_tube_run_output>() == size_of::<[f64; 9]>());

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

/// What goes into fw_material_properties.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_material_properties_input {
    /// Mean temperature of the material; only insulation depends on it here; allowed 223.15 to 573.15 (-50
    /// °C to 300 °C); usually 273.15 to 383.15 (0 °C to 110 °C); default 323.15 (50 °C).
    pub temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_material_properties_input>() == size_of::<[f64; 1]>());

/// What comes out of fw_material_properties.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_material_properties_output {
    /// Density; NaN means: not in the table.
    pub density: fw_kilogram_per_cubic_metre,
    /// Specific heat capacity; NaN means: not in the table.
    pub specific_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Lowest specific heat capacity in print; NaN means: prints do not differ much.
    pub least_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Highest specific heat capacity in print; NaN means: prints do not differ much.
    pub greatest_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Thermal conductivity; NaN means: a finish has none.
    pub thermal_conductivity: fw_watt_per_metre_kelvin,
    /// Emissivity; NaN means: depends on the finish: ask for that by its name.
    pub emissivity: fw_ratio,
    /// Lowest emissivity in print; NaN means: not a finish.
    pub least_emissivity: fw_ratio,
    /// Highest emissivity in print; NaN means: not a finish.
    pub greatest_emissivity: fw_ratio,
}
const _: () = assert!(size_of::<fw_material_properties_output>() == size_of::<[f64; 8]>());

static MATERIAL_PROPERTIES: Face = Face::new("material_properties");

/// Properties of a material.
///
/// Density, heat capacity, conductivity and emissivity of a metal, an insulation or a finish, with the
/// spread of the prints.
///
/// Accuracy: Metals 5 %, insulation 10 % as new and dry, emissivity as its spread.
///
/// The context holds the settings `material` (A metal, an insulation or a surface finish, one of
/// copper, iron, aluminium, carbon steel, stainless steel 304, cast iron 4 % C, grey cast iron, brass
/// 70/30, cast aluminium alloy, PEX, multilayer wall, mineral wool, polyisocyanurate, calcium silicate,
/// elastomeric foam, polyethylene foam, phenolic foam, polished copper, tarnished copper, paint, black
/// steel, cast iron surface, aluminium paint, polished aluminium cladding, bright galvanised steel,
/// plastic, insulation jacket); NULL takes every default.
///
/// Source: Kutz, Mechanical Engineers' Handbook vol. 4; Incropera Table A.1; Holman; Callister (metals;
/// which row comes from which is told in the table).
///
/// Source: UK Fuel Efficiency Booklet 8; common practice (insulation).
///
/// Source: textbook ranges, from memory; ISO 12241:2008 Table 2; Cengel (emissivity).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_material_properties(
    context: *const fw_context,
    input: *const fw_material_properties_input,
    output: *mut fw_material_properties_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { MATERIAL_PROPERTIES.evaluate::<1, 8>(context, input.cast(), output.cast(), notices) }
}

/// fw_material_properties over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_material_properties_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_material_properties_input,
    input_stride: usize,
    outputs: *mut fw_material_properties_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { MATERIAL_PROPERTIES.batch::<1, 8>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_material_properties into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_material_properties_unset(input: *mut fw_material_properties_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { MATERIAL_PROPERTIES.unset::<1>(input.cast()) }
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
const _: () = assert!(size_of::<fw_flow_from_heat_input>() == size_of::<[f64; 5]>());

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
const _: () = assert!(size_of::<fw_flow_from_heat_output>() == size_of::<[f64; 7]>());

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
const _: () = assert!(size_of::<fw_heat_from_flow_input>() == size_of::<[f64; 5]>());

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
const _: () = assert!(size_of::<fw_heat_from_flow_output>() == size_of::<[f64; 3]>());

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
    /// Output wanted now, where an emitter is to be chosen; allowed 1 to 1000000; NaN means: not asked.
    pub wanted_output: fw_watt,
}
const _: () = assert!(size_of::<fw_emitter_output_input>() == size_of::<[f64; 9]>());

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
    /// Output at the rated condition that an emitter needs to give the wanted one now; NaN means: no wanted
    /// output given.
    pub needed_rated_output: fw_watt,
}
const _: () = assert!(size_of::<fw_emitter_output_output>() == size_of::<[f64; 5]>());

static EMITTER_OUTPUT: Face = Face::new("emitter_output");

/// Emitter output at another condition.
///
/// What a radiator rated at one flow, return and room temperature gives at another, and the rating that
/// a wanted output needs there.
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
    unsafe { EMITTER_OUTPUT.evaluate::<9, 5>(context, input.cast(), output.cast(), notices) }
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
    unsafe { EMITTER_OUTPUT.batch::<9, 5>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_emitter_output into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_emitter_output_unset(input: *mut fw_emitter_output_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { EMITTER_OUTPUT.unset::<9>(input.cast()) }
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
const _: () = assert!(size_of::<fw_emitter_at_flow_input>() == size_of::<[f64; 6]>());

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
const _: () = assert!(size_of::<fw_emitter_at_flow_output>() == size_of::<[f64; 4]>());

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
const _: () = assert!(size_of::<fw_water_pressure_drop_input>() == size_of::<[f64; 11]>());

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
const _: () = assert!(size_of::<fw_water_pressure_drop_output>() == size_of::<[f64; 12]>());

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

/// What goes into fw_fitting_loss.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_fitting_loss_input {
    /// Bore of the tube; allowed 0.001 to 1 (1 mm to 1000 mm); usually 0.006 to 0.2 (6 mm to 200 mm).
    pub bore: fw_metre,
}
const _: () = assert!(size_of::<fw_fitting_loss_input>() == size_of::<[f64; 1]>());

/// What comes out of fw_fitting_loss.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_fitting_loss_output {
    /// Friction factor of fully turbulent flow in commercial steel pipe of this bore.
    pub turbulent_friction_factor: fw_ratio,
    /// Loss coefficient on the velocity pressure; NaN means: published as a length: times the friction
    /// factor of the flow, over the bore.
    pub loss_coefficient: fw_ratio,
    /// Equivalent length in bores; for a loss coefficient by the fully turbulent friction factor.
    pub length_ratio: fw_ratio,
    /// Equivalent length of the same tube.
    pub equivalent_length: fw_metre,
}
const _: () = assert!(size_of::<fw_fitting_loss_output>() == size_of::<[f64; 4]>());

static FITTING_LOSS: Face = Face::new("fitting_loss");

/// Resistance of a fitting.
///
/// Loss coefficient and equivalent length of a fitting or valve in a tube of a bore.
///
/// Accuracy: 20 to 50 %: prints differ, and so do makes.
///
/// The context holds the settings `fitting` (The fitting or valve, one of elbow 90, elbow 45, tee
/// through, tee branch, globe valve, ball valve, gate valve, angle valve, swing check valve, bend 90
/// radius 1, bend 90 radius 1.5, bend 90 radius 2, bend 90 radius 3, bend 90 radius 4, bend 90 radius
/// 6, smooth bend 90 flanged, smooth bend 90 threaded, mitre bend 90, mitre bend 90 with vanes,
/// threaded elbow 45, return bend 180 flanged, return bend 180 threaded, tee branch flanged, tee branch
/// threaded, tee through flanged, tee through threaded, threaded union, globe valve open, angle valve
/// open, ball valve open, swing check valve open, gate valve open, gate valve quarter closed, gate
/// valve half closed, gate valve three quarters closed, inlet sharp, inlet rounded, inlet re-entrant,
/// outlet, gas bend 45 copper 15 mm, gas bend 90 copper 15 mm, gas bend 45 copper 22 mm, gas bend 90
/// copper 22 mm); NULL takes every default.
///
/// Source: Crane TP-410M (2009), as evaluated with the library fluids 1.3.1 (multiples of f_T, and f_T
/// itself).
///
/// Source: Cengel & Cimbala, Fluid Mechanics, Table 8-4, from memory (loss coefficients that hold for
/// any bore).
///
/// Source: BS 6891:2015, seen in a secondary quotation (equivalent lengths of gas bends).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_fitting_loss(
    context: *const fw_context,
    input: *const fw_fitting_loss_input,
    output: *mut fw_fitting_loss_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FITTING_LOSS.evaluate::<1, 4>(context, input.cast(), output.cast(), notices) }
}

/// fw_fitting_loss over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_fitting_loss_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_fitting_loss_input,
    input_stride: usize,
    outputs: *mut fw_fitting_loss_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FITTING_LOSS.batch::<1, 4>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_fitting_loss into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_fitting_loss_unset(input: *mut fw_fitting_loss_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FITTING_LOSS.unset::<1>(input.cast()) }
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
const _: () = assert!(size_of::<fw_static_head_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_static_head.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_static_head_output {
    /// Density of the liquid.
    pub density: fw_kilogram_per_cubic_metre,
    /// Pressure of the column.
    pub static_pressure: fw_pascal,
}
const _: () = assert!(size_of::<fw_static_head_output>() == size_of::<[f64; 2]>());

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

/// What goes into fw_duty_point.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_duty_point_input {
    /// A flow at which the system's pressure drop is known; allowed 2.777778e-7 to 0.2777778 (1 L/h to
    /// 1000000 L/h).
    pub known_flow: fw_cubic_metre_per_second,
    /// Pressure drop of the system at that flow; allowed 1 to 1e7 (0.001 kPa to 10000 kPa); usually 1000 to
    /// 200000 (1 kPa to 200 kPa).
    pub known_pressure_drop: fw_pascal,
    /// Exponent of the drop in the flow: 2 for rough pipe and fittings, 1.75 for smooth pipe alone; allowed
    /// 1 to 2; usually 1.7 to 2; default 2.
    pub exponent: fw_ratio,
    /// Pressure that the pump must lift at no flow; zero in a closed circuit; allowed 0 to 1000000 (0 kPa
    /// to 1000 kPa); default 0 (0 kPa).
    pub static_pressure: fw_pascal,
}
const _: () = assert!(size_of::<fw_duty_point_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_duty_point.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_duty_point_output {
    /// Flow.
    pub volume_flow: fw_cubic_metre_per_second,
    /// Pressure the pump makes and the system takes.
    pub pressure: fw_pascal,
    /// Share of the known flow.
    pub flow_ratio: fw_ratio,
    /// Power given to the water.
    pub hydraulic_power: fw_watt,
}
const _: () = assert!(size_of::<fw_duty_point_output>() == size_of::<[f64; 4]>());

static DUTY_POINT: Face = Face::new("duty_point");

/// Duty point of a pump.
///
/// Flow and pressure at which a pump's curve meets the curve of the system.
///
/// Accuracy: As the curve: makers' pump curves are within about 5 to 10 %, read-off points add to that.
///
/// The context holds the settings `pump_flows` (Flows of points of the pump curve, rising);
/// `pump_pressures` (Pressures (not heads) of the same points); NULL takes every default.
///
/// Source: textbook, fluid mechanics (a system's drop grows as a power of the flow; the pump works
/// where the curves meet).
///
/// Source: common practice, no source (exponent 2).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_duty_point(
    context: *const fw_context,
    input: *const fw_duty_point_input,
    output: *mut fw_duty_point_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { DUTY_POINT.evaluate::<4, 4>(context, input.cast(), output.cast(), notices) }
}

/// fw_duty_point over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_duty_point_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_duty_point_input,
    input_stride: usize,
    outputs: *mut fw_duty_point_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { DUTY_POINT.batch::<4, 4>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_duty_point into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_duty_point_unset(input: *mut fw_duty_point_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { DUTY_POINT.unset::<4>(input.cast()) }
}

/// What goes into fw_valve_kv.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_valve_kv_input {
    /// Volume flow through the valve; allowed 2.777778e-8 to 0.2777778 (0.1 L/h to 1000000 L/h); usually
    /// 1.388889e-6 to 0.02777778 (5 L/h to 100000 L/h).
    pub volume_flow: fw_cubic_metre_per_second,
    /// Pressure drop that the valve is to make; allowed 10 to 1000000 (0.01 kPa to 1000 kPa); usually 1000
    /// to 50000 (1 kPa to 50 kPa).
    pub pressure_drop: fw_pascal,
    /// Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); default 333.15 (60 °C).
    pub temperature: fw_kelvin,
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    pub glycol_mass_fraction: fw_ratio,
}
const _: () = assert!(size_of::<fw_valve_kv_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_valve_kv.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_valve_kv_output {
    /// Density of the liquid.
    pub density: fw_kilogram_per_cubic_metre,
    /// Kv: flow at a drop of 1 bar of water of 1000 kg/m³.
    pub valve_kv: fw_cubic_metre_per_second,
}
const _: () = assert!(size_of::<fw_valve_kv_output>() == size_of::<[f64; 2]>());

static VALVE_KV: Face = Face::new("valve_kv");

/// Kv of a balancing valve.
///
/// The Kv to which a valve must be set to take a pressure drop at a flow.
///
/// Accuracy: Exact for turbulent flow; valves hold their scale to about 10 %, worse when nearly shut.
///
/// The context holds the settings `fluid` (What circulates; a glycol's share is the input
/// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
/// every default.
///
/// Source: EN 60534-1 (definition of Kv: m³/h of water at 1 bar).
///
/// Source: IAPWS SR6-08(2011); Melinder 2010 (density).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_valve_kv(
    context: *const fw_context,
    input: *const fw_valve_kv_input,
    output: *mut fw_valve_kv_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VALVE_KV.evaluate::<4, 2>(context, input.cast(), output.cast(), notices) }
}

/// fw_valve_kv over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_valve_kv_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_valve_kv_input,
    input_stride: usize,
    outputs: *mut fw_valve_kv_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VALVE_KV.batch::<4, 2>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_valve_kv into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_valve_kv_unset(input: *mut fw_valve_kv_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VALVE_KV.unset::<4>(input.cast()) }
}

/// What goes into fw_circuit_balance.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_circuit_balance_input {
    /// Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 363.15 (5
    /// °C to 90 °C); default 333.15 (60 °C).
    pub temperature: fw_kelvin,
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// default 200000 (2 bar).
    pub pressure: fw_pascal_absolute,
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    pub glycol_mass_fraction: fw_ratio,
}
const _: () = assert!(size_of::<fw_circuit_balance_input>() == size_of::<[f64; 3]>());

/// What comes out of fw_circuit_balance.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_circuit_balance_output {
    /// Number of the index circuit, counted from 1: the one with the greatest pressure drop.
    pub index_circuit: fw_ratio,
    /// Its pressure drop: what the pump must make.
    pub index_pressure_drop: fw_pascal,
    /// Smallest pressure drop of any circuit.
    pub least_pressure_drop: fw_pascal,
    /// Flow of the index circuit.
    pub index_flow: fw_cubic_metre_per_second,
    /// Greatest velocity in any section.
    pub greatest_velocity: fw_metre_per_second,
}
const _: () = assert!(size_of::<fw_circuit_balance_output>() == size_of::<[f64; 5]>());

static CIRCUIT_BALANCE: Face = Face::new("circuit_balance");

/// Index circuit and balance.
///
/// Pressure drop of every circuit, the index circuit, and the Kv to which the balancing valve of each
/// other circuit is set.
///
/// Accuracy: As water_pressure_drop: 5 % for tube, 20 % for fittings.
///
/// The context holds the settings `fluid` (What circulates; a glycol's share is the input
/// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); `friction`
/// (Equation for the turbulent friction factor, one of colebrook, haaland, swamee-jain, default
/// colebrook); `sections` (Lengths of tube with one flow each: a list of { name, tube, length,
/// volume_flow, fittings, loss_coefficient, fixed_drop }; fixed_drop is that of a boiler, emitter or
/// open valve at this flow); `circuits` (Ways of the water from the pump and back: a list of { name,
/// sections }, the sections by name); NULL takes every default.
///
/// Source: Darcy and Weisbach, as in water_pressure_drop (drop of each section).
///
/// Source: EN 60534-1 (definition of Kv: m³/h of water at 1 bar).
///
/// Source: textbook, hydronics (the pump serves the index circuit; the others throttle the difference).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_circuit_balance(
    context: *const fw_context,
    input: *const fw_circuit_balance_input,
    output: *mut fw_circuit_balance_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CIRCUIT_BALANCE.evaluate::<3, 5>(context, input.cast(), output.cast(), notices) }
}

/// fw_circuit_balance over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_circuit_balance_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_circuit_balance_input,
    input_stride: usize,
    outputs: *mut fw_circuit_balance_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CIRCUIT_BALANCE.batch::<3, 5>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_circuit_balance into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_circuit_balance_unset(input: *mut fw_circuit_balance_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CIRCUIT_BALANCE.unset::<3>(input.cast()) }
}

/// What goes into fw_expansion_vessel.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_expansion_vessel_input {
    /// Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    /// to 5000 L).
    pub system_content: fw_cubic_metre,
    /// Temperature of the water when it is filled; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually
    /// 277.15 to 298.15 (4 °C to 25 °C); default 283.15 (10 °C).
    pub fill_temperature: fw_kelvin,
    /// Highest temperature the water may reach: what the limiter allows; allowed 283.15 to 383.15 (10 °C to
    /// 110 °C); usually 313.15 to 383.15 (40 °C to 110 °C).
    pub highest_temperature: fw_kelvin,
    /// Height of the system's top above the vessel; allowed 0 to 200; usually 0 to 40.
    pub static_height: fw_metre,
    /// Pressure to be kept at the top over that of the air; allowed 0 to 200000 (0 bar to 2 bar); usually
    /// 20000 to 50000 (0.2 bar to 0.5 bar); default 30000 (0.3 bar).
    pub pressure_margin: fw_pascal,
    /// Least pre-charge whatever the height; allowed 0 to 300000 (0 bar to 3 bar); default 70000 (0.7 bar).
    pub least_pre_charge: fw_pascal_gauge,
    /// Set pressure of the safety valve; allowed 50000 to 1600000 (0.5 bar to 16 bar); usually 200000 to
    /// 600000 (2 bar to 6 bar); default 300000 (3 bar).
    pub safety_valve_pressure: fw_pascal_gauge,
    /// Water reserve as a share of the content; allowed 0 to 0.2 (0 % to 20 %); default 0.005 (0.5 %).
    pub reserve_share: fw_ratio,
    /// Least water reserve; allowed 0 to 0.1 (0 L to 100 L); default 0.003 (3 L).
    pub least_reserve: fw_cubic_metre,
    /// Pressure of the air; the standard counts it as 1 bar; allowed 60000 to 110000 (0.6 bar to 1.1 bar);
    /// default 100000 (1 bar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    pub glycol_mass_fraction: fw_ratio,
    /// Expansion of the liquid, where it is taken from a table; allowed 0 to 0.2 (0 % to 20 %); NaN means:
    /// from the densities of the liquid.
    pub expansion_share: fw_ratio,
}
const _: () = assert!(size_of::<fw_expansion_vessel_input>() == size_of::<[f64; 12]>());

/// What comes out of fw_expansion_vessel.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_expansion_vessel_output {
    /// Expansion of the liquid as a share of its cold volume.
    pub expansion_share: fw_ratio,
    /// Expansion volume.
    pub expansion_volume: fw_cubic_metre,
    /// Water reserve.
    pub water_reserve: fw_cubic_metre,
    /// Static pressure of the cold system at the vessel.
    pub static_pressure: fw_pascal,
    /// Pre-charge of the vessel, without water in it.
    pub pre_charge: fw_pascal_gauge,
    /// Pressure that the hot system may reach.
    pub final_pressure: fw_pascal_gauge,
    /// Share of the vessel that water can take between pre-charge and final pressure.
    pub acceptance: fw_ratio,
    /// Least vessel, with the reserve by share of the content.
    pub vessel_volume: fw_cubic_metre,
    /// Least vessel where a fifth of it is the reserve: the rule for vessels of up to 15 L; NaN means: the
    /// pressures leave no room for a reserve of a fifth.
    pub vessel_volume_with_fifth: fw_cubic_metre,
    /// Least vessel with no reserve at all, for comparison.
    pub vessel_volume_without_reserve: fw_cubic_metre,
    /// Least pressure to which the cold system is filled, so that the reserve is in the vessel.
    pub fill_pressure: fw_pascal_gauge,
}
const _: () = assert!(size_of::<fw_expansion_vessel_output>() == size_of::<[f64; 11]>());

static EXPANSION_VESSEL: Face = Face::new("expansion_vessel");

/// Expansion vessel.
///
/// Expansion volume, water reserve, pre-charge, vessel size and fill pressure of a sealed heating
/// system.
///
/// Accuracy: Expansion of water 0.01 % of itself, of glycol 5 %; the content of the system is seldom
/// known to 10 %: round the vessel up.
///
/// Caution: Hot water under pressure scalds and flashes to steam when let out: cool and relieve the
/// system before it is opened.
///
/// The context holds the settings `fluid` (What circulates; a glycol's share is the input
/// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
/// every default.
///
/// Source: EN 12828, annex on expansion vessels, from memory (reserve of 0.5 % and at least 3 L, of a
/// fifth of vessels up to 15 L; final pressure 0.5 bar (above 5 bar: a tenth) below the safety valve;
/// vessel and fill pressure).
///
/// Source: Boyle's law (gas side of the vessel, taken as isothermal).
///
/// Source: IAPWS SR6-08(2011) (density of water).
///
/// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010 (density of glycol mixtures).
///
/// Source: common practice, no source (0.3 bar above the static pressure and 0.7 bar as least
/// pre-charge).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_expansion_vessel(
    context: *const fw_context,
    input: *const fw_expansion_vessel_input,
    output: *mut fw_expansion_vessel_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { EXPANSION_VESSEL.evaluate::<12, 11>(context, input.cast(), output.cast(), notices) }
}

/// fw_expansion_vessel over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_expansion_vessel_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_expansion_vessel_input,
    input_stride: usize,
    outputs: *mut fw_expansion_vessel_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { EXPANSION_VESSEL.batch::<12, 11>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_expansion_vessel into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_expansion_vessel_unset(input: *mut fw_expansion_vessel_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { EXPANSION_VESSEL.unset::<12>(input.cast()) }
}

/// What goes into fw_vessel_check.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_vessel_check_input {
    /// Nominal volume of the vessel; allowed 0.0005 to 100 (0.5 L to 100000 L); usually 0.004 to 1 (4 L to
    /// 1000 L).
    pub vessel_volume: fw_cubic_metre,
    /// Pre-charge as measured with the water side relieved of pressure; allowed 0 to 1000000 (0 bar to 10
    /// bar); usually 50000 to 400000 (0.5 bar to 4 bar).
    pub pre_charge: fw_pascal_gauge,
    /// Pressure of the cold system as filled; allowed 0 to 1000000 (0 bar to 10 bar); usually 80000 to
    /// 400000 (0.8 bar to 4 bar).
    pub fill_pressure: fw_pascal_gauge,
    /// Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    /// to 5000 L).
    pub system_content: fw_cubic_metre,
    /// Temperature of the water at that pressure; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually
    /// 277.15 to 298.15 (4 °C to 25 °C); default 283.15 (10 °C).
    pub fill_temperature: fw_kelvin,
    /// Temperature to which the whole content is heated; allowed 283.15 to 383.15 (10 °C to 110 °C);
    /// usually 313.15 to 383.15 (40 °C to 110 °C).
    pub highest_temperature: fw_kelvin,
    /// Set pressure of the safety valve; allowed 50000 to 1600000 (0.5 bar to 16 bar); usually 200000 to
    /// 600000 (2 bar to 6 bar); default 300000 (3 bar).
    pub safety_valve_pressure: fw_pascal_gauge,
    /// Pressure of the air; allowed 60000 to 110000 (0.6 bar to 1.1 bar); default 100000 (1 bar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    pub glycol_mass_fraction: fw_ratio,
}
const _: () = assert!(size_of::<fw_vessel_check_input>() == size_of::<[f64; 9]>());

/// What comes out of fw_vessel_check.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_vessel_check_output {
    /// Expansion volume of the content.
    pub expansion_volume: fw_cubic_metre,
    /// Gas in the vessel when cold.
    pub gas_volume_cold: fw_cubic_metre,
    /// Water in the vessel when cold: the reserve.
    pub water_reserve: fw_cubic_metre,
    /// Most water the vessel takes up between cold and the pressure allowed when hot.
    pub take_up: fw_cubic_metre,
    /// Pressure of the hot system, if the safety valve did not lift; NaN means: the vessel is full of
    /// water: the safety valve must lift.
    pub hot_pressure: fw_pascal_gauge,
    /// Pressure that the hot system may reach.
    pub final_pressure: fw_pascal_gauge,
    /// Water that leaves by the safety valve on heating up, and is missing when cold again.
    pub water_lost: fw_cubic_metre,
}
const _: () = assert!(size_of::<fw_vessel_check_output>() == size_of::<[f64; 7]>());

static VESSEL_CHECK: Face = Face::new("vessel_check");

/// Expansion vessel as found.
///
/// Cold and hot pressure of a sealed system with the vessel and pre-charge found on it, and the water
/// the safety valve would let out.
///
/// Accuracy: The hot pressure to 0.1 bar if content and vessel are known to a few percent; gas and
/// water are taken at one temperature.
///
/// Caution: Hot water under pressure scalds and flashes to steam when let out: cool and relieve the
/// system before it is opened.
///
/// The context holds the settings `fluid` (What circulates; a glycol's share is the input
/// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
/// every default.
///
/// Source: EN 12828, annex on expansion vessels, from memory (reserve of 0.5 % and at least 3 L, of a
/// fifth of vessels up to 15 L; final pressure 0.5 bar (above 5 bar: a tenth) below the safety valve;
/// vessel and fill pressure).
///
/// Source: Boyle's law (gas side of the vessel, taken as isothermal).
///
/// Source: IAPWS SR6-08(2011) (density of water).
///
/// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010 (density of glycol mixtures).
///
/// Source: common practice, no source (0.3 bar above the static pressure and 0.7 bar as least
/// pre-charge).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_vessel_check(
    context: *const fw_context,
    input: *const fw_vessel_check_input,
    output: *mut fw_vessel_check_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VESSEL_CHECK.evaluate::<9, 7>(context, input.cast(), output.cast(), notices) }
}

/// fw_vessel_check over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_vessel_check_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_vessel_check_input,
    input_stride: usize,
    outputs: *mut fw_vessel_check_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VESSEL_CHECK.batch::<9, 7>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_vessel_check into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_vessel_check_unset(input: *mut fw_vessel_check_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VESSEL_CHECK.unset::<9>(input.cast()) }
}

/// What goes into fw_system_content.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_system_content_input {
    /// Water in all emitters, from their makers' tables; allowed 0 to 100 (0 L to 100000 L); default 0 (0
    /// L).
    pub emitter_content: fw_cubic_metre,
    /// Water in the boiler; allowed 0 to 10 (0 L to 10000 L); usually 0 to 0.5 (0 L to 500 L); default 0 (0
    /// L).
    pub boiler_content: fw_cubic_metre,
    /// Heating water in the coil of the hot water cylinder; allowed 0 to 1 (0 L to 1000 L); usually 0 to
    /// 0.06 (0 L to 60 L); default 0 (0 L).
    pub coil_content: fw_cubic_metre,
    /// Water in a feed and expansion cistern of an open vented system; allowed 0 to 10 (0 L to 10000 L);
    /// usually 0 to 0.2 (0 L to 200 L); default 0 (0 L).
    pub cistern_content: fw_cubic_metre,
    /// Water in buffer vessels and anything else; allowed 0 to 1000 (0 L to 1000000 L); default 0 (0 L).
    pub other_content: fw_cubic_metre,
}
const _: () = assert!(size_of::<fw_system_content_input>() == size_of::<[f64; 5]>());

/// What comes out of fw_system_content.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_system_content_output {
    /// Length of all pipes.
    pub pipe_length: fw_metre,
    /// Water in all pipes.
    pub pipe_content: fw_cubic_metre,
    /// Mass of all pipes, empty.
    pub pipe_mass: fw_kilogram,
    /// Heat capacity of all pipes, empty.
    pub pipe_heat_capacity: fw_joule_per_kelvin,
    /// Water that circulates: all but the cistern's.
    pub system_content: fw_cubic_metre,
    /// Water to fill everything, the cistern too.
    pub content_with_cistern: fw_cubic_metre,
}
const _: () = assert!(size_of::<fw_system_content_output>() == size_of::<[f64; 6]>());

static SYSTEM_CONTENT: Face = Face::new("system_content");

/// Water content of a heating system.
///
/// Water in pipes, emitters, boiler, cylinder coil and cistern, with the mass and heat capacity of the
/// pipes.
///
/// Accuracy: A few percent where every run is counted; guessed systems are seldom within 20 %.
///
/// The context holds the settings `pipes` (Runs of pipe: a list of { tube, length, name }, the tube by
/// name or by value as in `tube_run`, default none); NULL takes every default.
///
/// Source: geometry, with the tubes of tube_run (content of pipes).
///
/// Source: makers' tables, given by the caller (content of boiler, emitters and coil).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_system_content(
    context: *const fw_context,
    input: *const fw_system_content_input,
    output: *mut fw_system_content_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SYSTEM_CONTENT.evaluate::<5, 6>(context, input.cast(), output.cast(), notices) }
}

/// fw_system_content over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_system_content_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_system_content_input,
    input_stride: usize,
    outputs: *mut fw_system_content_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SYSTEM_CONTENT.batch::<5, 6>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_system_content into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_system_content_unset(input: *mut fw_system_content_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { SYSTEM_CONTENT.unset::<5>(input.cast()) }
}

/// What goes into fw_heat_store.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_heat_store_input {
    /// Temperature at the start; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 368.15 (5
    /// °C to 95 °C).
    pub start_temperature: fw_kelvin,
    /// Temperature at the end; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 368.15 (5 °C
    /// to 95 °C).
    pub end_temperature: fw_kelvin,
    /// Water content at the start; allowed 0 to 1000 (0 L to 1000000 L); default 0 (0 L).
    pub water_content: fw_cubic_metre,
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    pub glycol_mass_fraction: fw_ratio,
    /// Mass of cast iron; allowed 0 to 100000; default 0.
    pub cast_iron_mass: fw_kilogram,
    /// Heat capacity of that cast iron; prints run from 420 to 545 J/(kg K), so state which is meant;
    /// allowed 380 to 600; usually 420 to 545; default 500.
    pub cast_iron_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Mass of steel; allowed 0 to 100000; default 0.
    pub steel_mass: fw_kilogram,
    /// Mass of copper; allowed 0 to 100000; default 0.
    pub copper_mass: fw_kilogram,
    /// Mass of aluminium; allowed 0 to 100000; default 0.
    pub aluminium_mass: fw_kilogram,
    /// Mass of insulation that follows the temperature; half of a jacket is a fair guess; allowed 0 to
    /// 100000; default 0.
    pub insulation_mass: fw_kilogram,
    /// Heat capacity of the insulation; allowed 500 to 2500; default 1030.
    pub insulation_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Heat capacity of anything else; allowed 0 to 1e9 (0 kJ/K to 1000000 kJ/K); default 0 (0 kJ/K).
    pub other_heat_capacity: fw_joule_per_kelvin,
}
const _: () = assert!(size_of::<fw_heat_store_input>() == size_of::<[f64; 12]>());

/// What comes out of fw_heat_store.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_heat_store_output {
    /// Heat capacity of the metal.
    pub metal_heat_capacity: fw_joule_per_kelvin,
    /// Heat capacity of the water: its enthalpy difference over the temperature difference.
    pub water_heat_capacity: fw_joule_per_kelvin,
    /// Heat capacity of the whole.
    pub heat_capacity: fw_joule_per_kelvin,
    /// Heat given off from start to end; negative where the parts warm up.
    pub heat: fw_joule,
    /// Share of it that the water gives.
    pub water_share: fw_ratio,
}
const _: () = assert!(size_of::<fw_heat_store_output>() == size_of::<[f64; 5]>());

static HEAT_STORE: Face = Face::new("heat_store");

/// Heat held between two temperatures.
///
/// Heat capacity of iron, steel, copper, aluminium, insulation and water, and the heat they give off
/// between two temperatures.
///
/// Accuracy: Water 0.1 %; metals 5 %, since their heat capacity grows with temperature and cast iron's
/// is disputed.
///
/// Caution: Hot water under pressure scalds and flashes to steam when let out: cool and relieve the
/// system before it is opened.
///
/// Caution: A block and its water stay hot for tens of minutes after the burner is off.
///
/// The context holds the settings `fluid` (What circulates; a glycol's share is the input
/// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
/// every default.
///
/// Source: IAPWS SR6-08(2011) (enthalpy and density of water).
///
/// Source: Incropera Table A.1 (carbon steel from memory) (heat capacity of copper 385, aluminium 903,
/// carbon steel 434 J/(kg K) at 300 K).
///
/// Source: Holman Table A-2 (420) and Callister (544), from memory (spread of the heat capacity of cast
/// iron; the default of 500 lies between).
///
/// Source: ISO 10456 Table 3, from memory (heat capacity of mineral wool 1030 J/(kg K)).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_heat_store(
    context: *const fw_context,
    input: *const fw_heat_store_input,
    output: *mut fw_heat_store_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { HEAT_STORE.evaluate::<12, 5>(context, input.cast(), output.cast(), notices) }
}

/// fw_heat_store over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_heat_store_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_heat_store_input,
    input_stride: usize,
    outputs: *mut fw_heat_store_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { HEAT_STORE.batch::<12, 5>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_heat_store into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_heat_store_unset(input: *mut fw_heat_store_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { HEAT_STORE.unset::<12>(input.cast()) }
}

/// What goes into fw_inhibitor_dose.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_inhibitor_dose_input {
    /// Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    /// to 5000 L).
    pub system_content: fw_cubic_metre,
    /// Litres of product for each litre of system water, from its label; allowed 0.0001 to 0.2 (0.01 % to
    /// 20 %); usually 0.002 to 0.05 (0.2 % to 5 %); default 0.01 (1 %).
    pub dose_ratio: fw_ratio,
    /// Share of a full dose that is in the water already, by test; allowed 0 to 1 (0 % to 100 %); default 0
    /// (0 %).
    pub strength_left: fw_ratio,
    /// Content of one container; allowed 1e-5 to 1 (0.01 L to 1000 L); default 0.001 (1 L).
    pub container_content: fw_cubic_metre,
}
const _: () = assert!(size_of::<fw_inhibitor_dose_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_inhibitor_dose.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_inhibitor_dose_output {
    /// Product for water that holds none.
    pub full_dose: fw_cubic_metre,
    /// Product to add.
    pub dose: fw_cubic_metre,
    /// Containers that hold it, in parts of one.
    pub containers: fw_ratio,
}
const _: () = assert!(size_of::<fw_inhibitor_dose_output>() == size_of::<[f64; 3]>());

static INHIBITOR_DOSE: Face = Face::new("inhibitor_dose");

/// Inhibitor dose.
///
/// Litres of inhibitor that a system's content needs, less what is still in it.
///
/// Accuracy: As the content is known; a tenth too much does no harm, too little does.
///
/// Caution: Products of different makers may not mix: flush before changing, and follow the label.
///
/// Source: the product's label, given by the caller (dose).
///
/// Source: volume balance (shares by volume, contraction on mixing left out).
///
/// Source: common practice, no source (1 L in 100 L where the label is not at hand).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_inhibitor_dose(
    input: *const fw_inhibitor_dose_input,
    output: *mut fw_inhibitor_dose_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INHIBITOR_DOSE.evaluate::<4, 3>(null(), input.cast(), output.cast(), notices) }
}

/// fw_inhibitor_dose over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_inhibitor_dose_batch(
    rows: usize,
    inputs: *const fw_inhibitor_dose_input,
    input_stride: usize,
    outputs: *mut fw_inhibitor_dose_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INHIBITOR_DOSE.batch::<4, 3>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_inhibitor_dose into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_inhibitor_dose_unset(input: *mut fw_inhibitor_dose_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INHIBITOR_DOSE.unset::<4>(input.cast()) }
}

/// What goes into fw_antifreeze_dose.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_antifreeze_dose_input {
    /// Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    /// to 5000 L).
    pub system_content: fw_cubic_metre,
    /// Temperature down to which no ice is to form; allowed 223.15 to 272.15 (-50 °C to -1 °C); usually
    /// 243.15 to 268.15 (-30 °C to -5 °C).
    pub frost_temperature: fw_kelvin,
    /// Glycol that is in the water already, by volume; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    pub glycol_volume_fraction: fw_ratio,
    /// Share of glycol in the product as bought, by volume; allowed 0.5 to 1 (50 % to 100 %); default 1
    /// (100 %).
    pub product_strength: fw_ratio,
}
const _: () = assert!(size_of::<fw_antifreeze_dose_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_antifreeze_dose.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_antifreeze_dose_output {
    /// Glycol needed, by mass.
    pub glycol_mass_fraction: fw_ratio,
    /// Glycol needed, by volume.
    pub needed_volume_fraction: fw_ratio,
    /// Product to add, after as much of the present water has been drained; zero if there is enough.
    pub product_volume: fw_cubic_metre,
    /// Mass of glycol in the system afterwards.
    pub glycol_mass: fw_kilogram,
}
const _: () = assert!(size_of::<fw_antifreeze_dose_output>() == size_of::<[f64; 4]>());

static ANTIFREEZE_DOSE: Face = Face::new("antifreeze_dose");

/// Antifreeze dose.
///
/// Share of glycol that protects down to a temperature, and the product to add for a content.
///
/// Accuracy: 1 K of freezing point for plain glycol; an inhibited product follows its maker's table,
/// which goes first.
///
/// Caution: Ethylene glycol is poisonous: not where it can reach drinking water. Drained mixtures are
/// waste, not for the ground.
///
/// The context holds the settings `antifreeze` (Which glycol, one of propylene glycol, ethylene glycol,
/// default propylene glycol); NULL takes every default.
///
/// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries
/// them (freezing point against mass fraction).
///
/// Source: from memory (density of pure glycol at 20 °C: propylene 1036, ethylene 1113 kg/m³, for
/// shares by volume).
///
/// Source: volume balance (shares by volume, contraction on mixing left out).
///
/// Source: common practice, no source (least share of a fifth by volume).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_antifreeze_dose(
    context: *const fw_context,
    input: *const fw_antifreeze_dose_input,
    output: *mut fw_antifreeze_dose_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ANTIFREEZE_DOSE.evaluate::<4, 4>(context, input.cast(), output.cast(), notices) }
}

/// fw_antifreeze_dose over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_antifreeze_dose_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_antifreeze_dose_input,
    input_stride: usize,
    outputs: *mut fw_antifreeze_dose_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ANTIFREEZE_DOSE.batch::<4, 4>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_antifreeze_dose into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_antifreeze_dose_unset(input: *mut fw_antifreeze_dose_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ANTIFREEZE_DOSE.unset::<4>(input.cast()) }
}

/// What goes into fw_partial_drain.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_partial_drain_input {
    /// Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    /// to 5000 L).
    pub system_content: fw_cubic_metre,
    /// Water drained; allowed 0 to 1000 (0 L to 1000000 L).
    pub drained_volume: fw_cubic_metre,
    /// Share of product (inhibitor or antifreeze) in the water before, by volume; allowed 0 to 1 (0 % to
    /// 100 %).
    pub product_fraction: fw_ratio,
    /// Share of product in what is filled in; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    pub refill_fraction: fw_ratio,
    /// Share of product wanted afterwards; allowed 0 to 1 (0 % to 100 %); NaN means: as before.
    pub wanted_fraction: fw_ratio,
    /// Flow at which the filling tap runs; allowed 2.777778e-7 to 0.02777778 (1 L/h to 100000 L/h); default
    /// 0.0001666667 (600 L/h).
    pub fill_flow: fw_cubic_metre_per_second,
}
const _: () = assert!(size_of::<fw_partial_drain_input>() == size_of::<[f64; 6]>());

/// What comes out of fw_partial_drain.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_partial_drain_output {
    /// Product that went with the water.
    pub product_lost: fw_cubic_metre,
    /// Share of product after filling up again.
    pub fraction_after: fw_ratio,
    /// Share of the earlier strength that is left; NaN means: no product was in it.
    pub strength_left: fw_ratio,
    /// Product in the refill that makes the wanted share.
    pub product_needed: fw_cubic_metre,
    /// Plain water of that refill.
    pub water_needed: fw_cubic_metre,
    /// Time to fill up again.
    pub fill_time: fw_second,
}
const _: () = assert!(size_of::<fw_partial_drain_output>() == size_of::<[f64; 6]>());

static PARTIAL_DRAIN: Face = Face::new("partial_drain");

/// Partial drain and refill.
///
/// Strength of inhibitor or antifreeze left after part of the water was drained and replaced, and the
/// refill that restores it.
///
/// Accuracy: Holds for a well mixed system; what stays in emitters and dead legs does not mix at once.
///
/// Caution: Hot water under pressure scalds and flashes to steam when let out: cool and relieve the
/// system before it is opened.
///
/// Caution: Let hot water cool before draining; check for backflow protection before filling from the
/// main.
///
/// Source: volume balance (shares by volume, contraction on mixing left out).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_partial_drain(
    input: *const fw_partial_drain_input,
    output: *mut fw_partial_drain_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PARTIAL_DRAIN.evaluate::<6, 6>(null(), input.cast(), output.cast(), notices) }
}

/// fw_partial_drain over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_partial_drain_batch(
    rows: usize,
    inputs: *const fw_partial_drain_input,
    input_stride: usize,
    outputs: *mut fw_partial_drain_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PARTIAL_DRAIN.batch::<6, 6>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_partial_drain into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_partial_drain_unset(input: *mut fw_partial_drain_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { PARTIAL_DRAIN.unset::<6>(input.cast()) }
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
    /// Density of the gas over that of air; left out, that of the fuel; allowed 0.05 to 5; usually 0.3 to
    /// 2.2; NaN means: that of the fuel.
    pub relative_density: fw_ratio,
    /// Discharge coefficient of the injector; allowed 0.1 to 1.2; usually 0.6 to 1.
    pub discharge_coefficient: fw_ratio,
    /// Density of air at the conditions to which the flow is stated; allowed 0.3 to 2; usually 0.9 to 1.35;
    /// default 1.225.
    pub air_density: fw_kilogram_per_cubic_metre,
    /// Number of like injectors; allowed 1 to 1000; default 1.
    pub injector_count: fw_ratio,
    /// Gross calorific value at the conditions to which the flow is stated; left out, that of the fuel;
    /// allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); NaN means: that of the fuel.
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
}
const _: () = assert!(size_of::<fw_injector_flow_input>() == size_of::<[f64; 7]>());

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
    /// Heat input on the gross basis.
    pub heat_input_gross: fw_watt_gross,
}
const _: () = assert!(size_of::<fw_injector_flow_output>() == size_of::<[f64; 5]>());

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
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
/// value, such as "15/15" or "25/0", default 15/15); NULL takes every default.
///
/// Source: Orifice equation for a small pressure difference; textbook (flow).
///
/// Source: Fulford, biogas stove burner design; seen in a public reproduction (practical form 0.0467
/// C_d A √(p/d)).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_injector_flow(
    context: *const fw_context,
    input: *const fw_injector_flow_input,
    output: *mut fw_injector_flow_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INJECTOR_FLOW.evaluate::<7, 5>(context, input.cast(), output.cast(), notices) }
}

/// fw_injector_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_injector_flow_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_injector_flow_input,
    input_stride: usize,
    outputs: *mut fw_injector_flow_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INJECTOR_FLOW.batch::<7, 5>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
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
    /// Gross calorific value at the conditions to which the flow is stated; left out, that of the fuel;
    /// allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); NaN means: that of the fuel.
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Flow wanted, at the conditions of the air density stated; leave it out to state a heat input;
    /// allowed 2.777778e-9 to 2.777778 (0.00001 m³/h to 10000 m³/h); NaN means: a heat input is stated.
    pub gas_flow: fw_cubic_metre_per_second,
    /// Gauge pressure before the injector; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to 6000
    /// (1 mbar to 60 mbar).
    pub burner_pressure: fw_pascal_gauge,
    /// Density of the gas over that of air; left out, that of the fuel; allowed 0.05 to 5; usually 0.3 to
    /// 2.2; NaN means: that of the fuel.
    pub relative_density: fw_ratio,
    /// Discharge coefficient of the injector; allowed 0.1 to 1.2; usually 0.6 to 1.
    pub discharge_coefficient: fw_ratio,
    /// Density of air at the conditions to which flow and calorific value are stated; allowed 0.3 to 2;
    /// usually 0.9 to 1.35; default 1.225.
    pub air_density: fw_kilogram_per_cubic_metre,
    /// Number of like injectors; allowed 1 to 1000; default 1.
    pub injector_count: fw_ratio,
}
const _: () = assert!(size_of::<fw_injector_size_input>() == size_of::<[f64; 8]>());

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
const _: () = assert!(size_of::<fw_injector_size_output>() == size_of::<[f64; 3]>());

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
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
/// value, such as "15/15" or "25/0", default 15/15); NULL takes every default.
///
/// Source: Orifice equation for a small pressure difference; textbook (area).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_injector_size(
    context: *const fw_context,
    input: *const fw_injector_size_input,
    output: *mut fw_injector_size_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INJECTOR_SIZE.evaluate::<8, 3>(context, input.cast(), output.cast(), notices) }
}

/// fw_injector_size over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_injector_size_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_injector_size_input,
    input_stride: usize,
    outputs: *mut fw_injector_size_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { INJECTOR_SIZE.batch::<8, 3>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
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
    /// Gross calorific value of the gas known; left out, that of the fuel; allowed 1000000 to 2e8 (1 MJ/m³
    /// to 200 MJ/m³); NaN means: that of the fuel.
    pub gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Gross calorific value of the new gas; left out, that of the new fuel; allowed 1000000 to 2e8 (1
    /// MJ/m³ to 200 MJ/m³); NaN means: that of the new fuel, or unchanged.
    pub new_gross_calorific_value: fw_joule_per_cubic_metre_gross,
    /// Relative density of the gas known; left out, that of the fuel; allowed 0.05 to 5; NaN means: that of
    /// the fuel.
    pub relative_density: fw_ratio,
    /// Relative density of the new gas; left out, that of the new fuel; allowed 0.05 to 5; NaN means: that
    /// of the new fuel, or unchanged.
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
const _: () = assert!(size_of::<fw_burner_pressure_input>() == size_of::<[f64; 12]>());

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
    pub gross_wobbe_index: fw_joule_per_cubic_metre_gross,
    /// Gross Wobbe index of the new gas.
    pub new_gross_wobbe_index: fw_joule_per_cubic_metre_gross,
    /// New over known Wobbe index.
    pub wobbe_ratio: fw_ratio,
    /// New over known modified Wobbe index, which holds the temperature of the gas as well.
    pub modified_wobbe_ratio: fw_ratio,
    /// New over known flow at reference conditions.
    pub reference_flow_ratio: fw_ratio,
}
const _: () = assert!(size_of::<fw_burner_pressure_output>() == size_of::<[f64; 9]>());

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
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
/// value, such as "15/15" or "25/0", default 15/15); `new_fuel` (The gas in the new state, written like
/// fuel; left out, it stays, default ); NULL takes every default.
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
    context: *const fw_context,
    input: *const fw_burner_pressure_input,
    output: *mut fw_burner_pressure_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BURNER_PRESSURE.evaluate::<12, 9>(context, input.cast(), output.cast(), notices) }
}

/// fw_burner_pressure over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_burner_pressure_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_burner_pressure_input,
    input_stride: usize,
    outputs: *mut fw_burner_pressure_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { BURNER_PRESSURE.batch::<12, 9>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
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
const _: () = assert!(size_of::<fw_altitude_input>() == size_of::<[f64; 3]>());

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
const _: () = assert!(size_of::<fw_altitude_output>() == size_of::<[f64; 4]>());

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

/// What goes into fw_gas_pipe_drop.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_pipe_drop_input {
    /// Flow at reference conditions; leave it out to state a heat input; allowed 0 to 27.77778 (0 m³/h to
    /// 100000 m³/h); usually 1.388889e-5 to 0.02777778 (0.05 m³/h to 100 m³/h); NaN means: a heat input is
    /// stated.
    pub gas_flow: fw_cubic_metre_per_second_at_reference_conditions,
    /// Heat input of all that hangs on the pipe, gross; leave it out to state a flow; allowed 0 to 1e9 (0
    /// kW to 1000000 kW); usually 500 to 1000000 (0.5 kW to 1000 kW); NaN means: a flow is stated.
    pub heat_input_gross: fw_watt_gross,
    /// Length of the pipe; allowed 0 to 10000; usually 0.1 to 100.
    pub length: fw_metre,
    /// Equivalent length of fittings that the setting `fittings` does not name; allowed 0 to 10000; usually
    /// 0 to 50; default 0.
    pub equivalent_length: fw_metre,
    /// Sum of the loss coefficients of fittings that are neither named nor counted by length; allowed 0 to
    /// 10000; usually 0 to 50; default 0.
    pub loss_coefficient: fw_ratio,
    /// Height of the end above the beginning; negative where the pipe falls; allowed -1000 to 1000; usually
    /// -30 to 30; default 0.
    pub rise: fw_metre,
    /// Bore; left out, that of the tube; allowed 0.001 to 2 (1 mm to 2000 mm); usually 0.006 to 0.16 (6 mm
    /// to 160 mm); NaN means: that of the tube.
    pub bore: fw_metre,
    /// Roughness of the wall; left out, that of the tube or of drawn tubing; allowed 0 to 0.005 (0 mm to 5
    /// mm); usually 0 to 0.0003 (0 mm to 0.3 mm); NaN means: that of the tube, or 0.0015 mm.
    pub roughness: fw_metre,
    /// Gauge pressure at the beginning of the pipe; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually
    /// 500 to 20000 (5 mbar to 200 mbar).
    pub inlet_pressure: fw_pascal_gauge,
    /// Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    pub gas_temperature: fw_kelvin,
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Density of the gas at reference conditions; left out, that of the fuel; allowed 0.05 to 6; NaN
    /// means: that of the fuel.
    pub gas_density: fw_kilogram_per_cubic_metre,
    /// Dynamic viscosity of the gas; left out, that of the fuel; allowed 1e-6 to 0.0001; NaN means: that of
    /// the fuel.
    pub gas_viscosity: fw_pascal_second,
}
const _: () = assert!(size_of::<fw_gas_pipe_drop_input>() == size_of::<[f64; 13]>());

/// What comes out of fw_gas_pipe_drop.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_pipe_drop_output {
    /// Flow at reference conditions.
    pub gas_flow: fw_cubic_metre_per_second_at_reference_conditions,
    /// Flow as it enters the pipe.
    pub flow_in_pipe: fw_cubic_metre_per_second_at_the_meter,
    /// Density as it enters the pipe.
    pub density_in_pipe: fw_kilogram_per_cubic_metre,
    /// Dynamic viscosity.
    pub viscosity: fw_pascal_second,
    /// Mean velocity at the inlet.
    pub velocity: fw_metre_per_second,
    /// Reynolds number.
    pub reynolds_number: fw_ratio,
    /// Least Darcy friction factor; NaN means: no flow.
    pub friction_factor_low: fw_ratio,
    /// Greatest Darcy friction factor; NaN means: no flow.
    pub friction_factor_high: fw_ratio,
    /// Least friction drop with the density of the inlet.
    pub drop_at_inlet_density_low: fw_pascal,
    /// Greatest friction drop with the density of the inlet.
    pub drop_at_inlet_density_high: fw_pascal,
    /// Least friction drop, the gas expanding.
    pub pressure_drop_low: fw_pascal,
    /// Greatest friction drop, the gas expanding: the one to reckon with.
    pub pressure_drop_high: fw_pascal,
    /// Gain of gauge pressure by height; negative where a light gas goes down or a heavy one up.
    pub height_gain: fw_pascal,
    /// Least gauge pressure at the end of the pipe: the one to reckon with.
    pub outlet_pressure_low: fw_pascal_gauge,
    /// Greatest gauge pressure at the end of the pipe.
    pub outlet_pressure_high: fw_pascal_gauge,
}
const _: () = assert!(size_of::<fw_gas_pipe_drop_output>() == size_of::<[f64; 15]>());

static GAS_PIPE_DROP: Face = Face::new("gas_pipe_drop");

/// Pressure drop of gas in a pipe.
///
/// Pressure lost by friction and fittings and gained or lost by height in a gas pipe, as a band where
/// the flow is in transition, and the pressure left at its end.
///
/// Accuracy: About 5 % of the drop in turbulent flow for a known bore, and the fifth power of the
/// bore's error. Between Re 2300 and 4000 nobody knows the friction factor: low and high bound it.
///
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
/// value, such as "15/15" or "25/0", default 15/15); `friction` (Equation of the friction factor in
/// turbulent flow, one of Colebrook, Haaland, Swamee-Jain, default Colebrook); `tube` (The tube by
/// name, such as "copper 22x0.9"; left out, the bore is stated, default ); `fittings` (Names of
/// fittings with their number, for instance { "elbow 90" = 4, "tee branch" = 1 }, as
/// water_pressure_drop takes them; needs tube, default ); NULL takes every default.
///
/// Source: Darcy-Weisbach; textbook (pressure drop).
///
/// Source: Hagen-Poiseuille, 64/Re; Colebrook 1939, Haaland 1983 or Swamee & Jain 1976 as set (friction
/// factor).
///
/// Source: Isothermal compressible flow; textbook of gas dynamics (drop of the expanding gas).
///
/// Source: ISO 6976:2016 (density and calorific value from the composition).
///
/// Source: Wilke 1950, J. Chem. Phys. 18, 517, with the pure viscosities of the equations named in
/// supply/viscosity.rs (viscosity).
///
/// Source: Hydrostatics (gain or loss with height).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_pipe_drop(
    context: *const fw_context,
    input: *const fw_gas_pipe_drop_input,
    output: *mut fw_gas_pipe_drop_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PIPE_DROP.evaluate::<13, 15>(context, input.cast(), output.cast(), notices) }
}

/// fw_gas_pipe_drop over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_pipe_drop_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_gas_pipe_drop_input,
    input_stride: usize,
    outputs: *mut fw_gas_pipe_drop_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PIPE_DROP.batch::<13, 15>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_pipe_drop into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_pipe_drop_unset(input: *mut fw_gas_pipe_drop_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PIPE_DROP.unset::<13>(input.cast()) }
}

/// What goes into fw_gas_pipe_discharge.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_pipe_discharge_input {
    /// Drop allowed between the gauges at both ends; set by the local rule; allowed 0.01 to 500000 (0.0001
    /// mbar to 5000 mbar); usually 10 to 2000 (0.1 mbar to 20 mbar).
    pub allowed_drop: fw_pascal,
    /// Length of the pipe; allowed 0.01 to 10000; usually 0.1 to 100.
    pub length: fw_metre,
    /// Equivalent length of fittings that the setting `fittings` does not name; allowed 0 to 10000; usually
    /// 0 to 50; default 0.
    pub equivalent_length: fw_metre,
    /// Sum of the loss coefficients of fittings that are neither named nor counted by length; allowed 0 to
    /// 10000; usually 0 to 50; default 0.
    pub loss_coefficient: fw_ratio,
    /// Height of the end above the beginning; negative where the pipe falls; allowed -1000 to 1000; usually
    /// -30 to 30; default 0.
    pub rise: fw_metre,
    /// Bore; left out, that of the tube; allowed 0.001 to 2 (1 mm to 2000 mm); usually 0.006 to 0.16 (6 mm
    /// to 160 mm); NaN means: that of the tube.
    pub bore: fw_metre,
    /// Roughness of the wall; left out, that of the tube or of drawn tubing; allowed 0 to 0.005 (0 mm to 5
    /// mm); usually 0 to 0.0003 (0 mm to 0.3 mm); NaN means: that of the tube, or 0.0015 mm.
    pub roughness: fw_metre,
    /// Gauge pressure at the beginning of the pipe; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually
    /// 500 to 20000 (5 mbar to 200 mbar).
    pub inlet_pressure: fw_pascal_gauge,
    /// Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    pub gas_temperature: fw_kelvin,
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Density of the gas at reference conditions; left out, that of the fuel; allowed 0.05 to 6; NaN
    /// means: that of the fuel.
    pub gas_density: fw_kilogram_per_cubic_metre,
    /// Dynamic viscosity of the gas; left out, that of the fuel; allowed 1e-6 to 0.0001; NaN means: that of
    /// the fuel.
    pub gas_viscosity: fw_pascal_second,
}
const _: () = assert!(size_of::<fw_gas_pipe_discharge_input>() == size_of::<[f64; 12]>());

/// What comes out of fw_gas_pipe_discharge.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_pipe_discharge_output {
    /// Flow at reference conditions that is certain: the one to reckon with.
    pub gas_flow_low: fw_cubic_metre_per_second_at_reference_conditions,
    /// Greatest flow at reference conditions, if the flow stayed laminar.
    pub gas_flow_high: fw_cubic_metre_per_second_at_reference_conditions,
    /// Heat input that the certain flow feeds, gross, with the calorific value of the fuel.
    pub heat_input_gross: fw_watt_gross,
    /// Velocity at the inlet with the certain flow.
    pub velocity: fw_metre_per_second,
    /// Reynolds number of the certain flow.
    pub reynolds_number_low: fw_ratio,
    /// Reynolds number of the greatest flow.
    pub reynolds_number_high: fw_ratio,
    /// Friction drop that is used, the height gain added to what is allowed.
    pub friction_drop: fw_pascal,
    /// Flow by Pole's old formula, for comparison only: it promises too much in small pipes.
    pub flow_by_pole: fw_cubic_metre_per_second_at_reference_conditions,
}
const _: () = assert!(size_of::<fw_gas_pipe_discharge_output>() == size_of::<[f64; 8]>());

static GAS_PIPE_DISCHARGE: Face = Face::new("gas_pipe_discharge");

/// Discharge of gas from a pipe.
///
/// Flow of gas that a pipe passes for an allowed pressure drop, as a band where the flow is in
/// transition.
///
/// Accuracy: About 5 % of the drop in turbulent flow for a known bore, and the fifth power of the
/// bore's error. Between Re 2300 and 4000 nobody knows the friction factor: low and high bound it.
///
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
/// value, such as "15/15" or "25/0", default 15/15); `friction` (Equation of the friction factor in
/// turbulent flow, one of Colebrook, Haaland, Swamee-Jain, default Colebrook); `tube` (The tube by
/// name, such as "copper 22x0.9"; left out, the bore is stated, default ); `fittings` (Names of
/// fittings with their number, for instance { "elbow 90" = 4, "tee branch" = 1 }, as
/// water_pressure_drop takes them; needs tube, default ); NULL takes every default.
///
/// Source: Darcy-Weisbach, isothermal compressible; textbook (discharge).
///
/// Source: Hagen-Poiseuille, 64/Re; Colebrook 1939, Haaland 1983 or Swamee & Jain 1976 as set (friction
/// factor).
///
/// Source: ISO 6976:2016 (density and calorific value from the composition).
///
/// Source: Wilke 1950, J. Chem. Phys. 18, 517 (viscosity).
///
/// Source: from memory (Pole's formula 0.0071 √(d⁵h/(sL))).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_pipe_discharge(
    context: *const fw_context,
    input: *const fw_gas_pipe_discharge_input,
    output: *mut fw_gas_pipe_discharge_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PIPE_DISCHARGE.evaluate::<12, 8>(context, input.cast(), output.cast(), notices) }
}

/// fw_gas_pipe_discharge over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_pipe_discharge_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_gas_pipe_discharge_input,
    input_stride: usize,
    outputs: *mut fw_gas_pipe_discharge_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PIPE_DISCHARGE.batch::<12, 8>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_pipe_discharge into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_pipe_discharge_unset(input: *mut fw_gas_pipe_discharge_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PIPE_DISCHARGE.unset::<12>(input.cast()) }
}

/// What goes into fw_gas_installation.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_installation_input {
    /// Gauge pressure at the meter outlet; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually 500 to
    /// 20000 (5 mbar to 200 mbar).
    pub inlet_pressure: fw_pascal_gauge,
    /// Share of every load that is drawn; allowed 0 to 2 (0 % to 200 %); usually 0 to 1 (0 % to 100 %);
    /// default 1 (100 %).
    pub load_factor: fw_ratio,
    /// Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    pub gas_temperature: fw_kelvin,
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_gas_installation_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_gas_installation.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_installation_output {
    /// Flow at reference conditions through the meter.
    pub gas_flow: fw_cubic_metre_per_second_at_reference_conditions,
    /// Heat input drawn, gross.
    pub heat_input_gross: fw_watt_gross,
    /// Greatest drop from the meter to an appliance: the one to reckon with.
    pub greatest_drop: fw_pascal,
    /// Least gauge pressure at an appliance: the one to reckon with.
    pub lowest_appliance_pressure_low: fw_pascal_gauge,
    /// The same if all flow in transition stayed laminar.
    pub lowest_appliance_pressure_high: fw_pascal_gauge,
    /// Greatest velocity.
    pub greatest_velocity: fw_metre_per_second,
    /// Sections in which the flow is neither laminar nor turbulent.
    pub sections_in_transition: fw_ratio,
    /// Gas held by the pipes, fittings counted by their equivalent length.
    pub pipe_volume: fw_cubic_metre,
}
const _: () = assert!(size_of::<fw_gas_installation_output>() == size_of::<[f64; 8]>());

static GAS_INSTALLATION: Face = Face::new("gas_installation");

/// Pressures in a branched gas installation.
///
/// Flow, velocity, drop and pressure in every section of a branched installation, and the pressure at
/// the worst-off appliance.
///
/// Accuracy: About 5 % of each drop in turbulent flow for known bores. Sections in transition are
/// bounded; reckon with the low pressure.
///
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
/// value, such as "15/15" or "25/0", default 15/15); `friction` (Equation of the friction factor in
/// turbulent flow, one of Colebrook, Haaland, Swamee-Jain, default Colebrook); `sections` (The
/// sections, as in gas_pipe_sizing, each also with tube (by name), or bore, or outside_diameter and
/// wall; roughness if known); NULL takes every default.
///
/// Source: Darcy-Weisbach with isothermal expansion; Hagen-Poiseuille and the turbulent equation set
/// (drop of each section).
///
/// Source: Hydrostatics (gain or loss with height).
///
/// Source: ISO 6976:2016 (density and calorific value from the composition).
///
/// Source: Wilke 1950, J. Chem. Phys. 18, 517 (viscosity).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_installation(
    context: *const fw_context,
    input: *const fw_gas_installation_input,
    output: *mut fw_gas_installation_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_INSTALLATION.evaluate::<4, 8>(context, input.cast(), output.cast(), notices) }
}

/// fw_gas_installation over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_installation_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_gas_installation_input,
    input_stride: usize,
    outputs: *mut fw_gas_installation_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_INSTALLATION.batch::<4, 8>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_installation into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_installation_unset(input: *mut fw_gas_installation_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_INSTALLATION.unset::<4>(input.cast()) }
}

/// What goes into fw_gas_pipe_sizing.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_pipe_sizing_input {
    /// Drop allowed from the meter to any appliance; set by the local rule; allowed 0.1 to 500000 (0.001
    /// mbar to 5000 mbar); usually 10 to 2000 (0.1 mbar to 20 mbar).
    pub allowed_drop: fw_pascal,
    /// Velocity that no section may exceed; set by the local rule; allowed 0.1 to 100; usually 1 to 30; NaN
    /// means: no limit.
    pub velocity_limit: fw_metre_per_second,
    /// Gauge pressure at the meter outlet; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually 500 to
    /// 20000 (5 mbar to 200 mbar).
    pub inlet_pressure: fw_pascal_gauge,
    /// Share of every load that is reckoned with; allowed 0 to 2 (0 % to 200 %); usually 0.01 to 1 (1 % to
    /// 100 %); default 1 (100 %).
    pub load_factor: fw_ratio,
    /// Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    pub gas_temperature: fw_kelvin,
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_gas_pipe_sizing_input>() == size_of::<[f64; 6]>());

/// What comes out of fw_gas_pipe_sizing.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_gas_pipe_sizing_output {
    /// Gas held by the pipes, the least that will do.
    pub pipe_volume: fw_cubic_metre,
    /// Greatest drop from the meter to an appliance.
    pub greatest_drop: fw_pascal,
    /// Drop left over.
    pub spare_drop: fw_pascal,
    /// Least gauge pressure at an appliance.
    pub lowest_appliance_pressure: fw_pascal_gauge,
    /// Greatest velocity.
    pub greatest_velocity: fw_metre_per_second,
    /// Widest bore chosen.
    pub widest_bore: fw_metre,
}
const _: () = assert!(size_of::<fw_gas_pipe_sizing_output>() == size_of::<[f64; 6]>());

static GAS_PIPE_SIZING: Face = Face::new("gas_pipe_sizing");

/// Sizing of a branched gas installation.
///
/// The tube for each section of a branched installation so that no appliance loses more than the
/// allowed drop, no section flows too fast or widens away from the meter, and the pipes hold the least
/// gas.
///
/// Accuracy: The choice is the best there is for the drops reckoned, which err on the safe side: flow
/// in transition counts as turbulent, and the gas as thin as after the whole allowed drop.
///
/// Caution: Work on gas is for people legally competent to do it. A computed result is not a
/// certificate.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
/// value, such as "15/15" or "25/0", default 15/15); `friction` (Equation of the friction factor in
/// turbulent flow, one of Colebrook, Haaland, Swamee-Jain, default Colebrook); `sections` (The
/// sections, each a table: name; from (name of the section it hangs from, which stands before it; left
/// out, the meter); length; equivalent_length and loss_coefficient of parts not named; fittings (names
/// with their number, as water_pressure_drop takes them); rise; load (an appliance at its end: gross
/// heat input such as "24 kW", or flow at reference conditions such as "2.3 m3/h")); `tubes` (The tubes
/// to choose from: a list of names such as "copper 15x0.7"); NULL takes every default.
///
/// Source: Darcy-Weisbach with isothermal expansion; Hagen-Poiseuille and the turbulent equation set
/// (drop of each section).
///
/// Source: Hydrostatics (gain or loss with height).
///
/// Source: ISO 6976:2016 (density and calorific value from the composition).
///
/// Source: Wilke 1950, J. Chem. Phys. 18, 517 (viscosity).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_pipe_sizing(
    context: *const fw_context,
    input: *const fw_gas_pipe_sizing_input,
    output: *mut fw_gas_pipe_sizing_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PIPE_SIZING.evaluate::<6, 6>(context, input.cast(), output.cast(), notices) }
}

/// fw_gas_pipe_sizing over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_pipe_sizing_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_gas_pipe_sizing_input,
    input_stride: usize,
    outputs: *mut fw_gas_pipe_sizing_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PIPE_SIZING.batch::<6, 6>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_gas_pipe_sizing into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_gas_pipe_sizing_unset(input: *mut fw_gas_pipe_sizing_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { GAS_PIPE_SIZING.unset::<6>(input.cast()) }
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
    pub barometric_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_absolute_pressure_input>() == size_of::<[f64; 2]>());

/// What comes out of fw_absolute_pressure.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_absolute_pressure_output {
    /// Pressure above vacuum: what gas laws need.
    pub absolute_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_absolute_pressure_output>() == size_of::<[f64; 1]>());

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
const _: () = assert!(size_of::<fw_analyser_reading_input>() == size_of::<[f64; 8]>());

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
const _: () = assert!(size_of::<fw_analyser_reading_output>() == size_of::<[f64; 5]>());

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
const _: () = assert!(size_of::<fw_flame_supervision_voltage_input>() == size_of::<[f64; 4]>());

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
const _: () = assert!(size_of::<fw_flame_supervision_voltage_output>() == size_of::<[f64; 4]>());

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

/// What goes into fw_inclined_gauge.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_inclined_gauge_input {
    /// Movement of the liquid along the tube, positive for a pressure and negative for a draught; allowed
    /// -2 to 2 (-2000 mm to 2000 mm).
    pub length: fw_metre,
    /// Angle of the tube to the horizontal; allowed 0.003490659 to 1.570796 (0.2 ° to 90 °); usually
    /// 0.03490659 to 0.7853982 (2 ° to 45 °).
    pub angle: fw_radian,
    /// Relative density of the liquid to conventional water, as printed on the gauge; allowed 0.5 to 14;
    /// usually 0.7 to 1.1; default 1.
    pub relative_density: fw_ratio,
    /// Acceleration of gravity at the place; allowed 9.7 to 9.9; usually 9.78 to 9.84; default 9.80665.
    pub gravity: fw_metre_per_second_squared,
}
const _: () = assert!(size_of::<fw_inclined_gauge_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_inclined_gauge.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_inclined_gauge_output {
    /// Height of the column.
    pub level_difference: fw_metre_both_limbs,
    /// Pressure above the atmosphere; negative for a draught.
    pub pressure: fw_pascal_gauge,
}
const _: () = assert!(size_of::<fw_inclined_gauge_output>() == size_of::<[f64; 2]>());

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
    pub barometric_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_liquid_column_input>() == size_of::<[f64; 4]>());

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
const _: () = assert!(size_of::<fw_liquid_column_output>() == size_of::<[f64; 6]>());

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
const _: () = assert!(size_of::<fw_local_gravity_input>() == size_of::<[f64; 2]>());

/// What comes out of fw_local_gravity.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_local_gravity_output {
    /// Acceleration of gravity.
    pub gravity: fw_metre_per_second_squared,
    /// Share by which it exceeds standard gravity, 9.80665 m/s².
    pub excess_over_standard: fw_ratio,
}
const _: () = assert!(size_of::<fw_local_gravity_output>() == size_of::<[f64; 2]>());

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
const _: () = assert!(size_of::<fw_platinum_resistance_input>() == size_of::<[f64; 3]>());

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
const _: () = assert!(size_of::<fw_platinum_resistance_output>() == size_of::<[f64; 8]>());

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
const _: () = assert!(size_of::<fw_platinum_temperature_input>() == size_of::<[f64; 3]>());

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
const _: () = assert!(size_of::<fw_platinum_temperature_output>() == size_of::<[f64; 5]>());

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
const _: () = assert!(size_of::<fw_thermistor_beta_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_thermistor_beta.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_beta_output {
    /// Temperature of the thermistor.
    pub temperature: fw_kelvin,
    /// Relative change of the resistance with temperature there.
    pub sensitivity: fw_per_kelvin,
}
const _: () = assert!(size_of::<fw_thermistor_beta_output>() == size_of::<[f64; 2]>());

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
const _: () = assert!(size_of::<fw_thermistor_beta_of_points_input>() == size_of::<[f64; 4]>());

/// What comes out of fw_thermistor_beta_of_points.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_beta_of_points_output {
    /// Beta of the thermistor between the two temperatures.
    pub beta: fw_kelvin_difference,
}
const _: () = assert!(size_of::<fw_thermistor_beta_of_points_output>() == size_of::<[f64; 1]>());

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
const _: () = assert!(size_of::<fw_thermistor_temperature_input>() == size_of::<[f64; 1]>());

/// What comes out of fw_thermistor_temperature.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermistor_temperature_output {
    /// Temperature of the thermistor.
    pub temperature: fw_kelvin,
    /// Relative change of the resistance with temperature there.
    pub sensitivity: fw_per_kelvin,
}
const _: () = assert!(size_of::<fw_thermistor_temperature_output>() == size_of::<[f64; 2]>());

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
const _: () = assert!(size_of::<fw_thermistor_check_input>() == size_of::<[f64; 6]>());

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
const _: () = assert!(size_of::<fw_thermistor_check_output>() == size_of::<[f64; 6]>());

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
const _: () = assert!(size_of::<fw_thermistor_fit_input>() == size_of::<[f64; 7]>());

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
const _: () = assert!(size_of::<fw_thermistor_fit_output>() == size_of::<[f64; 4]>());

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
const _: () = assert!(size_of::<fw_thermocouple_temperature_input>() == size_of::<[f64; 2]>());

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
const _: () = assert!(size_of::<fw_thermocouple_temperature_output>() == size_of::<[f64; 6]>());

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
const _: () = assert!(size_of::<fw_thermocouple_voltage_input>() == size_of::<[f64; 2]>());

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
const _: () = assert!(size_of::<fw_thermocouple_voltage_output>() == size_of::<[f64; 5]>());

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
const _: () = assert!(size_of::<fw_thermostat_differential_input>() == size_of::<[f64; 2]>());

/// What comes out of fw_thermostat_differential.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_thermostat_differential_output {
    /// Difference of the two operating values.
    pub differential: fw_kelvin_difference,
    /// Middle between them.
    pub mid_point: fw_kelvin,
}
const _: () = assert!(size_of::<fw_thermostat_differential_output>() == size_of::<[f64; 2]>());

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
/// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
///
/// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
/// has stopped; measure before you open or drain anything.
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
const _: () = assert!(size_of::<fw_thermostat_test_input>() == size_of::<[f64; 1]>());

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
const _: () = assert!(size_of::<fw_thermostat_test_output>() == size_of::<[f64; 14]>());

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
/// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
///
/// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
/// has stopped; measure before you open or drain anything.
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
    pub barometric_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_u_gauge_input>() == size_of::<[f64; 5]>());

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
const _: () = assert!(size_of::<fw_u_gauge_output>() == size_of::<[f64; 6]>());

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

/// What goes into fw_vent_free_area.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_vent_free_area_input {
    /// Width over all of the opening in the wall or of the grille's core; allowed 0.001 to 10 (1 mm to
    /// 10000 mm); usually 0.05 to 1 (50 mm to 1000 mm).
    pub width: fw_metre,
    /// Height over all; allowed 0.001 to 10 (1 mm to 10000 mm); usually 0.05 to 1 (50 mm to 1000 mm).
    pub height: fw_metre,
    /// Number of like openings within; allowed 1 to 100000; NaN means: a free share is stated.
    pub opening_count: fw_ratio,
    /// Width of one opening, clear; allowed 0.0001 to 10 (0.1 mm to 10000 mm); NaN means: a free share is
    /// stated.
    pub opening_width: fw_metre,
    /// Height of one opening, clear; allowed 0.0001 to 10 (0.1 mm to 10000 mm); NaN means: a free share is
    /// stated.
    pub opening_height: fw_metre,
    /// Free over overall area as its maker states it; leave it out where the openings are measured; allowed
    /// 0.01 to 1 (1 % to 100 %); usually 0.2 to 0.9 (20 % to 90 %); NaN means: the openings are measured.
    pub free_share: fw_ratio,
}
const _: () = assert!(size_of::<fw_vent_free_area_input>() == size_of::<[f64; 6]>());

/// What comes out of fw_vent_free_area.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_vent_free_area_output {
    /// Overall area, which says nothing of the air that passes.
    pub overall_area: fw_square_metre_overall,
    /// Free area: the sum of the openings.
    pub free_area: fw_square_metre_free,
    /// Free over overall area.
    pub free_share: fw_ratio,
}
const _: () = assert!(size_of::<fw_vent_free_area_output>() == size_of::<[f64; 3]>());

static VENT_FREE_AREA: Face = Face::new("vent_free_area");

/// Free area of a ventilator.
///
/// Free area of a ventilator from its openings or from its maker's share, kept apart from its overall
/// area.
///
/// Accuracy: As measured. The areas of sleeves, cowls and screens in series are not in it: the tightest
/// of them counts.
///
/// Caution: How much air a room needs, and through what opening, is set by local building and gas
/// rules; a sum is no approval, and an opening counts only while it is clear.
///
/// Source: Geometry (areas).
///
/// Source: common practice, no source (openings of at least 5 mm).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_vent_free_area(
    input: *const fw_vent_free_area_input,
    output: *mut fw_vent_free_area_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VENT_FREE_AREA.evaluate::<6, 3>(null(), input.cast(), output.cast(), notices) }
}

/// fw_vent_free_area over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_vent_free_area_batch(
    rows: usize,
    inputs: *const fw_vent_free_area_input,
    input_stride: usize,
    outputs: *mut fw_vent_free_area_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VENT_FREE_AREA.batch::<6, 3>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_vent_free_area into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_vent_free_area_unset(input: *mut fw_vent_free_area_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VENT_FREE_AREA.unset::<6>(input.cast()) }
}

/// What goes into fw_opening_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_opening_flow_input {
    /// Free area: the sum of the openings as measured; allowed 1e-6 to 100 (1 mm² to 1e8 mm²); usually
    /// 0.0005 to 0.2 (500 mm² to 200000 mm²).
    pub free_area: fw_square_metre_free,
    /// Pressure difference across the opening; allowed 0.01 to 500; usually 1 to 50.
    pub pressure_difference: fw_pascal,
    /// Discharge coefficient of the opening; 0.61 for a sharp edge, less for grilles and meshes; allowed
    /// 0.05 to 1; usually 0.25 to 0.75; default 0.61.
    pub discharge_coefficient: fw_ratio,
    /// Discharge coefficient of the sharp edge that defines equivalent area; allowed 0.55 to 0.65; default
    /// 0.61.
    pub sharp_edge_coefficient: fw_ratio,
    /// Density of the air; allowed 0.3 to 2; usually 0.9 to 1.35; default 1.2041.
    pub air_density: fw_kilogram_per_cubic_metre,
}
const _: () = assert!(size_of::<fw_opening_flow_input>() == size_of::<[f64; 5]>());

/// What comes out of fw_opening_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_opening_flow_output {
    /// Flow of air.
    pub air_flow: fw_cubic_metre_per_second,
    /// Equivalent area.
    pub equivalent_area: fw_square_metre_equivalent,
    /// Mean velocity over the free area.
    pub mean_velocity: fw_metre_per_second,
}
const _: () = assert!(size_of::<fw_opening_flow_output>() == size_of::<[f64; 3]>());

static OPENING_FLOW: Face = Face::new("opening_flow");

/// Air through an opening.
///
/// Air that passes an opening of a free area at a pressure difference, and its equivalent area.
///
/// Accuracy: The discharge coefficient decides; grilles are seldom known to better than 10 %.
///
/// Caution: How much air a room needs, and through what opening, is set by local building and gas
/// rules; a sum is no approval, and an opening counts only while it is clear.
///
/// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
/// reckoned says nothing of spillage, blockage or wind.
///
/// Source: Orifice equation for a small pressure difference; textbook (flow).
///
/// Source: Definition of equivalent area (EN 13141-1, not opened): a sharp-edged opening that passes
/// the same air (equivalent area).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_opening_flow(
    input: *const fw_opening_flow_input,
    output: *mut fw_opening_flow_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { OPENING_FLOW.evaluate::<5, 3>(null(), input.cast(), output.cast(), notices) }
}

/// fw_opening_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_opening_flow_batch(
    rows: usize,
    inputs: *const fw_opening_flow_input,
    input_stride: usize,
    outputs: *mut fw_opening_flow_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { OPENING_FLOW.batch::<5, 3>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_opening_flow into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_opening_flow_unset(input: *mut fw_opening_flow_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { OPENING_FLOW.unset::<5>(input.cast()) }
}

/// What goes into fw_opening_size.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_opening_size_input {
    /// Flow of air wanted; allowed 2.777778e-6 to 277.7778 (0.01 m³/h to 1000000 m³/h); usually
    /// 0.0002777778 to 0.2777778 (1 m³/h to 1000 m³/h).
    pub air_flow: fw_cubic_metre_per_second,
    /// Pressure difference that may be used up; allowed 0.01 to 500; usually 1 to 50.
    pub pressure_difference: fw_pascal,
    /// Discharge coefficient of the opening; 0.61 for a sharp edge, less for grilles and meshes; allowed
    /// 0.05 to 1; usually 0.25 to 0.75; default 0.61.
    pub discharge_coefficient: fw_ratio,
    /// Discharge coefficient of the sharp edge that defines equivalent area; allowed 0.55 to 0.65; default
    /// 0.61.
    pub sharp_edge_coefficient: fw_ratio,
    /// Density of the air; allowed 0.3 to 2; usually 0.9 to 1.35; default 1.2041.
    pub air_density: fw_kilogram_per_cubic_metre,
}
const _: () = assert!(size_of::<fw_opening_size_input>() == size_of::<[f64; 5]>());

/// What comes out of fw_opening_size.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_opening_size_output {
    /// Free area needed.
    pub free_area: fw_square_metre_free,
    /// Equivalent area needed.
    pub equivalent_area: fw_square_metre_equivalent,
}
const _: () = assert!(size_of::<fw_opening_size_output>() == size_of::<[f64; 2]>());

static OPENING_SIZE: Face = Face::new("opening_size");

/// Opening for a flow of air.
///
/// Free and equivalent area that pass a flow of air at a pressure difference.
///
/// Accuracy: The discharge coefficient decides; grilles are seldom known to better than 10 %.
///
/// Caution: How much air a room needs, and through what opening, is set by local building and gas
/// rules; a sum is no approval, and an opening counts only while it is clear.
///
/// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
/// reckoned says nothing of spillage, blockage or wind.
///
/// Source: Orifice equation for a small pressure difference; textbook (area).
///
/// Source: Definition of equivalent area (EN 13141-1, not opened): a sharp-edged opening that passes
/// the same air (equivalent area).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_opening_size(
    input: *const fw_opening_size_input,
    output: *mut fw_opening_size_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { OPENING_SIZE.evaluate::<5, 2>(null(), input.cast(), output.cast(), notices) }
}

/// fw_opening_size over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_opening_size_batch(
    rows: usize,
    inputs: *const fw_opening_size_input,
    input_stride: usize,
    outputs: *mut fw_opening_size_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { OPENING_SIZE.batch::<5, 2>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_opening_size into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_opening_size_unset(input: *mut fw_opening_size_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { OPENING_SIZE.unset::<5>(input.cast()) }
}

/// What goes into fw_ventilation_need.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_ventilation_need_input {
    /// Heat input on the net basis; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1 kW
    /// to 200 kW); NaN means: stated on another basis.
    pub heat_input_net: fw_watt_net,
    /// Heat input on the gross basis; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1
    /// kW to 200 kW); NaN means: stated on another basis.
    pub heat_input_gross: fw_watt_gross,
    /// Nominal heat output; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1 kW to 200
    /// kW); NaN means: stated on another basis.
    pub heat_output: fw_watt,
    /// Rating that the rule leaves free; allowed 0 to 1e7 (0 kW to 10000 kW); default 0 (0 kW).
    pub threshold: fw_watt,
    /// Area for each kilowatt above the threshold; allowed 0 to 0.001 (0 mm²/kW to 1000000 mm²/kW); NaN
    /// means: the rule asks for no opening.
    pub area_rate: fw_square_metre_per_watt,
    /// Least area whatever the rating; allowed 0 to 100 (0 mm² to 1e8 mm²); default 0 (0 mm²).
    pub minimum_area: fw_square_metre,
    /// Room volume for each kilowatt above the threshold; allowed 0 to 1 (0 m³/kW to 1000 m³/kW); NaN
    /// means: the rule asks for no room volume.
    pub room_volume_rate: fw_cubic_metre_per_watt,
    /// Air flow for each kilowatt above the threshold; allowed 0 to 0.0002777778 (0 m³/(h·kW) to 1000
    /// m³/(h·kW)); NaN means: the rule asks for no air flow.
    pub air_flow_rate: fw_cubic_metre_per_joule,
}
const _: () = assert!(size_of::<fw_ventilation_need_input>() == size_of::<[f64; 8]>());

/// What comes out of fw_ventilation_need.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_ventilation_need_output {
    /// Rating on the basis of the rule, above the threshold.
    pub rating_above_threshold: fw_watt,
    /// Free area of each opening asked for; NaN means: the rule asks for no free area.
    pub free_area: fw_square_metre_free,
    /// Equivalent area of each opening asked for; NaN means: the rule asks for no equivalent area.
    pub equivalent_area: fw_square_metre_equivalent,
    /// Room volume asked for; NaN means: the rule asks for no room volume.
    pub room_volume: fw_cubic_metre,
    /// Air flow asked for; NaN means: the rule asks for no air flow.
    pub air_flow: fw_cubic_metre_per_second,
}
const _: () = assert!(size_of::<fw_ventilation_need_output>() == size_of::<[f64; 5]>());

static VENTILATION_NEED: Face = Face::new("ventilation_need");

/// Ventilation by a rule.
///
/// Opening, room volume or air flow that a building rule of the caller's asks for, on the rating basis
/// the rule counts. No rule is built in.
///
/// Accuracy: Arithmetic on the rule.
///
/// Caution: How much air a room needs, and through what opening, is set by local building and gas
/// rules; a sum is no approval, and an opening counts only while it is clear.
///
/// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
/// reckoned says nothing of spillage, blockage or wind.
///
/// The context holds the settings `rating_basis` (What the rule counts: the heat input net or gross, or
/// the heat output, one of heat_input_net, heat_input_gross, heat_output); `area_kind` (Which area the
/// rule counts, one of free, equivalent, default free); NULL takes every default.
///
/// Source: The caller's rule (rates, threshold, minimum).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_ventilation_need(
    context: *const fw_context,
    input: *const fw_ventilation_need_input,
    output: *mut fw_ventilation_need_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VENTILATION_NEED.evaluate::<8, 5>(context, input.cast(), output.cast(), notices) }
}

/// fw_ventilation_need over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_ventilation_need_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_ventilation_need_input,
    input_stride: usize,
    outputs: *mut fw_ventilation_need_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VENTILATION_NEED.batch::<8, 5>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_ventilation_need into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_ventilation_need_unset(input: *mut fw_ventilation_need_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { VENTILATION_NEED.unset::<8>(input.cast()) }
}

/// What goes into fw_room_concentration.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_room_concentration_input {
    /// Flow of the gas into the room; nought while it clears; allowed 0 to 0.2777778 (0 L/h to 1000000
    /// L/h); usually 0 to 0.0002777778 (0 L/h to 1000 L/h); default 0 (0 L/h).
    pub source: fw_cubic_metre_per_second,
    /// Volume of the room; allowed 0.1 to 1000000; usually 5 to 500.
    pub room_volume: fw_cubic_metre,
    /// Air changes; allowed 2.777778e-7 to 0.2777778 (0.001 1/h to 1000 1/h); usually 2.777778e-5 to
    /// 0.002777778 (0.1 1/h to 10 1/h).
    pub air_change_rate: fw_per_second,
    /// Share of the gas in the air that comes in; allowed 0 to 0.1 (0 ppm to 100000 ppm); default 0 (0
    /// ppm).
    pub background: fw_ratio_wet,
    /// Share of the gas in the room at the start; left out, the background; allowed 0 to 1 (0 ppm to
    /// 1000000 ppm); NaN means: the background.
    pub initial: fw_ratio_wet,
    /// Time from the start; allowed 0 to 3.6e7 (0 h to 10000 h); usually 0 to 172800 (0 h to 48 h).
    pub elapsed_time: fw_second,
    /// Share whose time is asked for; allowed 0 to 1 (0 ppm to 1000000 ppm); NaN means: none asked for.
    pub level: fw_ratio_wet,
}
const _: () = assert!(size_of::<fw_room_concentration_input>() == size_of::<[f64; 7]>());

/// What comes out of fw_room_concentration.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_room_concentration_output {
    /// Share of the gas in the room after the time.
    pub concentration: fw_ratio_wet,
    /// Share of the gas in the room after a very long time.
    pub steady: fw_ratio_wet,
    /// Time in which the way to the steady share shrinks to 37 %.
    pub time_constant: fw_second,
    /// Share of the way to the steady share made after the time.
    pub completion: fw_ratio,
    /// Mean share over the time.
    pub mean: fw_ratio_wet,
    /// Time at which the level asked for is met; NaN means: never reached, or none asked for.
    pub time_to_level: fw_second,
}
const _: () = assert!(size_of::<fw_room_concentration_output>() == size_of::<[f64; 6]>());

static ROOM_CONCENTRATION: Face = Face::new("room_concentration");

/// Gas in a ventilated room.
///
/// Build-up and clearing of carbon monoxide, carbon dioxide or any gas in a well-mixed room with a
/// steady source and air change.
///
/// Accuracy: Exact for a well-mixed room. Real rooms are not: near the source the share can be several
/// times the mean. The air change is seldom known to a factor of two.
///
/// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
/// air in first, reckon later; no result here is leave to stay.
///
/// Caution: How much air a room needs, and through what opening, is set by local building and gas
/// rules; a sum is no approval, and an opening counts only while it is clear.
///
/// Source: Single-zone mass balance; textbook (all results).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_room_concentration(
    input: *const fw_room_concentration_input,
    output: *mut fw_room_concentration_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ROOM_CONCENTRATION.evaluate::<7, 6>(null(), input.cast(), output.cast(), notices) }
}

/// fw_room_concentration over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_room_concentration_batch(
    rows: usize,
    inputs: *const fw_room_concentration_input,
    input_stride: usize,
    outputs: *mut fw_room_concentration_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ROOM_CONCENTRATION.batch::<7, 6>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_room_concentration into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_room_concentration_unset(input: *mut fw_room_concentration_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { ROOM_CONCENTRATION.unset::<7>(input.cast()) }
}

/// What goes into fw_natural_draught.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_natural_draught_input {
    /// Height of the flue outlet above its inlet; allowed 0 to 200; usually 1 to 30.
    pub height: fw_metre,
    /// Temperature of the outdoor air; allowed 223.15 to 333.15 (-50 °C to 60 °C); usually 253.15 to 308.15
    /// (-20 °C to 35 °C).
    pub outdoor_temperature: fw_kelvin,
    /// Mean temperature of the gas in the flue; allowed 223.15 to 1273.15 (-50 °C to 1000 °C); usually
    /// 313.15 to 523.15 (40 °C to 250 °C).
    pub mean_flue_temperature: fw_kelvin,
    /// Barometric pressure at the place; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    /// 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Specific gas constant of the outdoor air; allowed 270 to 310; default 288.
    pub air_gas_constant: fw_joule_per_kilogram_kelvin,
    /// Specific gas constant of the gas in the flue; allowed 250 to 350; default 300.
    pub flue_gas_constant: fw_joule_per_kilogram_kelvin,
    /// Pressure that flow through flue, appliance and air openings takes; allowed 0 to 1000; usually 0 to
    /// 50; default 0.
    pub pressure_loss: fw_pascal,
}
const _: () = assert!(size_of::<fw_natural_draught_input>() == size_of::<[f64; 7]>());

/// What comes out of fw_natural_draught.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_natural_draught_output {
    /// Density of the outdoor air.
    pub air_density: fw_kilogram_per_cubic_metre,
    /// Mean density of the gas in the flue.
    pub flue_density: fw_kilogram_per_cubic_metre,
    /// Draught at rest.
    pub draught: fw_pascal,
    /// Draught left after the pressure loss.
    pub net_draught: fw_pascal,
    /// Mean flue temperature at which the draught at rest turns.
    pub reversal_flue_temperature: fw_kelvin,
    /// Outdoor temperature at which the net draught turns; warmer outdoors it pushes down; NaN means: a
    /// flue without height has no draught to turn.
    pub reversal_outdoor_temperature: fw_kelvin,
}
const _: () = assert!(size_of::<fw_natural_draught_output>() == size_of::<[f64; 6]>());

static NATURAL_DRAUGHT: Face = Face::new("natural_draught");

/// Natural draught of a flue.
///
/// Draught from height, mean flue temperature, outdoor temperature and barometer, what is left after
/// losses, and the temperatures at which it turns.
///
/// Accuracy: Exact for the mean temperature given; that mean decides. Wind is left out.
///
/// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
/// reckoned says nothing of spillage, blockage or wind.
///
/// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
/// air in first, reckon later; no result here is leave to stay.
///
/// Source: Hydrostatics, in the form of EN 13384-1 (from memory) (draught).
///
/// Source: EN 13384-1, from memory (gas constants 288 J/(kg K) of air and about 300 J/(kg K) of the
/// flue gas of natural gas, as defaults).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_natural_draught(
    input: *const fw_natural_draught_input,
    output: *mut fw_natural_draught_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { NATURAL_DRAUGHT.evaluate::<7, 6>(null(), input.cast(), output.cast(), notices) }
}

/// fw_natural_draught over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_natural_draught_batch(
    rows: usize,
    inputs: *const fw_natural_draught_input,
    input_stride: usize,
    outputs: *mut fw_natural_draught_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { NATURAL_DRAUGHT.batch::<7, 6>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_natural_draught into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_natural_draught_unset(input: *mut fw_natural_draught_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { NATURAL_DRAUGHT.unset::<7>(input.cast()) }
}

/// What goes into fw_flue_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flue_flow_input {
    /// Velocity; leave it out to state a mass flow; allowed 0 to 50; usually 0.3 to 10; NaN means: a mass
    /// flow is stated.
    pub velocity: fw_metre_per_second,
    /// Mass flow; leave it out to state a velocity; allowed 0 to 1000; NaN means: a velocity is stated.
    pub mass_flow: fw_kilogram_per_second,
    /// Mean temperature of the flue gas; allowed 223.15 to 1273.15 (-50 °C to 1000 °C); usually 313.15 to
    /// 523.15 (40 °C to 250 °C).
    pub mean_flue_temperature: fw_kelvin,
    /// Specific gas constant of the flue gas; allowed 250 to 350; default 300.
    pub flue_gas_constant: fw_joule_per_kilogram_kelvin,
    /// Absolute pressure in the flue, which is the barometer's; allowed 50000 to 110000 (500 mbar to 1100
    /// mbar); usually 94000 to 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
    /// Bore of the flue (hydraulic diameter); allowed 0.02 to 10 (20 mm to 10000 mm); usually 0.06 to 0.4
    /// (60 mm to 400 mm).
    pub bore: fw_metre,
    /// Length of the flue; allowed 0 to 1000; usually 0.5 to 50.
    pub length: fw_metre,
    /// Friction factor (Darcy); left out, from the roughness; allowed 0.005 to 1; NaN means: from the
    /// roughness.
    pub friction_factor: fw_ratio,
    /// Roughness of the inner wall; allowed 0 to 0.02 (0 mm to 20 mm); usually 5e-5 to 0.005 (0.05 mm to 5
    /// mm); default 0.001 (1 mm).
    pub roughness: fw_metre,
    /// Sum of the loss coefficients of bends, inlet and outlet; allowed 0 to 1000; usually 0 to 20; default
    /// 0.
    pub loss_coefficient: fw_ratio,
}
const _: () = assert!(size_of::<fw_flue_flow_input>() == size_of::<[f64; 10]>());

/// What comes out of fw_flue_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flue_flow_output {
    /// Density of the flue gas.
    pub flue_density: fw_kilogram_per_cubic_metre,
    /// Velocity.
    pub velocity: fw_metre_per_second,
    /// Mass flow.
    pub mass_flow: fw_kilogram_per_second,
    /// Reynolds number.
    pub reynolds_number: fw_ratio,
    /// Friction factor (Darcy) used; NaN means: no flow.
    pub friction_factor: fw_ratio,
    /// Pressure lost by friction and at the fittings.
    pub pressure_loss: fw_pascal,
}
const _: () = assert!(size_of::<fw_flue_flow_output>() == size_of::<[f64; 6]>());

static FLUE_FLOW: Face = Face::new("flue_flow");

/// Velocity and pressure loss in a flue.
///
/// Mass flow, velocity and pressure lost by friction and fittings in a flue at a mean temperature.
///
/// Accuracy: Roughness and loss coefficients are seldom known to better than 20 %. Below Re 2300 the
/// larger of the laminar factor and Colebrook's at 2300 is taken.
///
/// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
/// reckoned says nothing of spillage, blockage or wind.
///
/// Source: Darcy-Weisbach; textbook, in the form of EN 13384-1 (from memory) (pressure loss).
///
/// Source: Colebrook 1939, J. Inst. Civ. Eng. 11, 133 (friction factor from the roughness).
///
/// Source: EN 13384-1, from memory (viscosity of flue gas).
///
/// Source: EN 13384-1, from memory (gas constants 288 J/(kg K) of air and about 300 J/(kg K) of the
/// flue gas of natural gas, as defaults).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_flow(
    input: *const fw_flue_flow_input,
    output: *mut fw_flue_flow_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_FLOW.evaluate::<10, 6>(null(), input.cast(), output.cast(), notices) }
}

/// fw_flue_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_flow_batch(
    rows: usize,
    inputs: *const fw_flue_flow_input,
    input_stride: usize,
    outputs: *mut fw_flue_flow_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_FLOW.batch::<10, 6>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_flue_flow into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_flow_unset(input: *mut fw_flue_flow_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_FLOW.unset::<10>(input.cast()) }
}

/// What goes into fw_chimney_draught.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_chimney_draught_input {
    /// Mass flow of flue gas, with the air drawn in at a draught diverter; allowed 1e-5 to 100; usually
    /// 0.002 to 0.2.
    pub mass_flow: fw_kilogram_per_second,
    /// Temperature of the flue gas at the inlet of the chimney; allowed 273.15 to 1273.15 (0 °C to 1000
    /// °C); usually 313.15 to 523.15 (40 °C to 250 °C).
    pub inlet_temperature: fw_kelvin,
    /// Temperature of the outdoor air; allowed 223.15 to 333.15 (-50 °C to 60 °C); usually 253.15 to 308.15
    /// (-20 °C to 35 °C).
    pub outdoor_temperature: fw_kelvin,
    /// Mean temperature of the air around the chimney; left out, that outdoors; allowed 223.15 to 373.15
    /// (-50 °C to 100 °C); NaN means: that outdoors.
    pub surrounding_temperature: fw_kelvin,
    /// Height of the outlet above the inlet; allowed 0.1 to 200; usually 1 to 30.
    pub height: fw_metre,
    /// Length of the flue; left out, the height; allowed 0.1 to 500; NaN means: the height.
    pub length: fw_metre,
    /// Bore (hydraulic diameter); allowed 0.02 to 5 (20 mm to 5000 mm); usually 0.06 to 0.4 (60 mm to 400
    /// mm).
    pub bore: fw_metre,
    /// Outside diameter; left out, the bore; allowed 0.02 to 10 (20 mm to 10000 mm); NaN means: the bore.
    pub outside_diameter: fw_metre,
    /// Thermal resistance of the wall on its inner surface; allowed 0 to 10; usually 0 to 1; default 0.
    pub thermal_resistance: fw_square_metre_kelvin_per_watt,
    /// Coefficient of heat transfer at the outside; allowed 0.5 to 200; usually 5 to 30; default 8.
    pub external_coefficient: fw_watt_per_square_metre_kelvin,
    /// Share of the wall's resistance that counts while the wall still warms; 1 when settled; allowed 0 to
    /// 1; default 1.
    pub instability_factor: fw_ratio,
    /// Roughness of the inner wall; allowed 0 to 0.02 (0 mm to 20 mm); usually 5e-5 to 0.005 (0.05 mm to 5
    /// mm); default 0.001 (1 mm).
    pub roughness: fw_metre,
    /// Sum of the loss coefficients of bends, inlet and outlet; allowed 0 to 1000; usually 0 to 20; default
    /// 0.
    pub loss_coefficient: fw_ratio,
    /// Factor by which the loss of the flue is raised for safety; allowed 1 to 3; default 1.
    pub flow_safety_factor: fw_ratio,
    /// Draught that appliance, connecting pipe and air supply need; allowed 0 to 200; usually 0 to 30;
    /// default 0.
    pub draught_needed: fw_pascal,
    /// Specific heat capacity of the flue gas; allowed 950 to 1500; usually 1000 to 1250; default 1100.
    pub specific_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Specific gas constant of the flue gas; allowed 250 to 350; default 300.
    pub flue_gas_constant: fw_joule_per_kilogram_kelvin,
    /// Specific gas constant of the outdoor air; allowed 270 to 310; default 288.
    pub air_gas_constant: fw_joule_per_kilogram_kelvin,
    /// Share of water vapour in the flue gas as it is in the chimney; allowed 0 to 0.4 (0 % to 40 %);
    /// usually 0.02 to 0.2 (2 % to 20 %); NaN means: not stated.
    pub water_vapour: fw_ratio_wet,
    /// Barometric pressure at the place; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    /// 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_chimney_draught_input>() == size_of::<[f64; 20]>());

/// What comes out of fw_chimney_draught.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_chimney_draught_output {
    /// Internal coefficient of heat transfer.
    pub internal_coefficient: fw_watt_per_square_metre_kelvin,
    /// Coefficient of heat transmission on the inner surface.
    pub transmission_coefficient: fw_watt_per_square_metre_kelvin,
    /// Cooling number.
    pub cooling_number: fw_ratio,
    /// Mean temperature of the flue gas.
    pub mean_flue_temperature: fw_kelvin,
    /// Temperature of the flue gas at the outlet.
    pub outlet_temperature: fw_kelvin,
    /// Temperature of the inner wall at the outlet, the wall settled.
    pub outlet_wall_temperature: fw_kelvin,
    /// Mean density of the flue gas.
    pub flue_density: fw_kilogram_per_cubic_metre,
    /// Mean velocity of the flue gas.
    pub velocity: fw_metre_per_second,
    /// Reynolds number.
    pub reynolds_number: fw_ratio,
    /// Draught at rest.
    pub draught: fw_pascal,
    /// Loss of the flue with its safety factor.
    pub pressure_loss: fw_pascal,
    /// Draught at the inlet of the chimney.
    pub net_draught: fw_pascal,
    /// Draught left over what is needed.
    pub spare_draught: fw_pascal,
    /// Outdoor temperature at which nothing would be left over, this mean flue temperature kept.
    pub reversal_outdoor_temperature: fw_kelvin,
    /// Dew point of the water vapour; NaN means: no water vapour stated, or a dew point below freezing.
    pub dew_point: fw_kelvin,
    /// Inner wall at the outlet above the dew point; negative where it is wet; NaN means: no dew point.
    pub dew_point_margin: fw_kelvin_difference,
    /// Length from the inlet at which the wall begins to be wet; NaN means: the wall stays dry, or no dew
    /// point.
    pub wet_from: fw_metre,
}
const _: () = assert!(size_of::<fw_chimney_draught_output>() == size_of::<[f64; 17]>());

static CHIMNEY_DRAUGHT: Face = Face::new("chimney_draught");

/// Draught and cooling of a chimney.
///
/// Cooling of the flue gas with height, draught, loss and what is left, wall temperature at the outlet
/// and whether and where the wall is wet.
///
/// Accuracy: Internal coefficient 20 %, wall resistance as stated; the mean temperature follows within
/// a few kelvin. Wind and the warming-up of the wall are left out.
///
/// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
/// reckoned says nothing of spillage, blockage or wind.
///
/// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
/// air in first, reckon later; no result here is leave to stay.
///
/// Source: Form of EN 13384-1, from memory (cooling number, mean and outlet temperature, wall
/// temperature, draught and loss, viscosity and conductivity of flue gas).
///
/// Source: Gnielinski 1975, Forsch. Ingenieurwes. 41, 8 (internal coefficient).
///
/// Source: Colebrook 1939, J. Inst. Civ. Eng. 11, 133 (friction factor).
///
/// Source: IAPWS R7-97(2012), IF97 region 4 (dew point; acids lie above it and are left out).
///
/// Source: EN 13384-1, from memory (gas constants 288 J/(kg K) of air and about 300 J/(kg K) of the
/// flue gas of natural gas, as defaults).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_chimney_draught(
    input: *const fw_chimney_draught_input,
    output: *mut fw_chimney_draught_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CHIMNEY_DRAUGHT.evaluate::<20, 17>(null(), input.cast(), output.cast(), notices) }
}

/// fw_chimney_draught over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_chimney_draught_batch(
    rows: usize,
    inputs: *const fw_chimney_draught_input,
    input_stride: usize,
    outputs: *mut fw_chimney_draught_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CHIMNEY_DRAUGHT.batch::<20, 17>(null(), rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_chimney_draught into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_chimney_draught_unset(input: *mut fw_chimney_draught_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { CHIMNEY_DRAUGHT.unset::<20>(input.cast()) }
}

/// What goes into fw_flue_gas_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flue_gas_flow_input {
    /// Heat input on the net basis; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1 kW
    /// to 200 kW).
    pub heat_input_net: fw_watt_net,
    /// Air in the flue over the air needed, with what a draught diverter draws in; allowed 1 to 50; usually
    /// 1.1 to 6.
    pub excess_air_ratio: fw_ratio,
    /// Temperature of the flue gas, for its heat capacity and volume; allowed 273.15 to 1273.15 (0 °C to
    /// 1000 °C); usually 313.15 to 523.15 (40 °C to 250 °C); default 373.15 (100 °C).
    pub flue_temperature: fw_kelvin,
    /// Temperature of the air that is drawn in; allowed 253.15 to 333.15 (-20 °C to 60 °C); usually 263.15
    /// to 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    pub air_temperature: fw_kelvin,
    /// Relative humidity of that air; allowed 0 to 1 (0 % to 100 %); default 0.6 (60 %).
    pub air_relative_humidity: fw_ratio,
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pub barometric_pressure: fw_pascal_absolute,
}
const _: () = assert!(size_of::<fw_flue_gas_flow_input>() == size_of::<[f64; 6]>());

/// What comes out of fw_flue_gas_flow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct fw_flue_gas_flow_output {
    /// Mass flow.
    pub mass_flow: fw_kilogram_per_second,
    /// Volume flow at the flue temperature and the barometer.
    pub volume_flow: fw_cubic_metre_per_second,
    /// Specific gas constant.
    pub flue_gas_constant: fw_joule_per_kilogram_kelvin,
    /// Specific heat capacity at constant pressure.
    pub specific_heat_capacity: fw_joule_per_kilogram_kelvin,
    /// Share of water vapour.
    pub water_vapour: fw_ratio_wet,
    /// Dew point of that vapour; NaN means: below freezing.
    pub dew_point: fw_kelvin,
}
const _: () = assert!(size_of::<fw_flue_gas_flow_output>() == size_of::<[f64; 6]>());

static FLUE_GAS_FLOW: Face = Face::new("flue_gas_flow");

/// Flue gas of a heat input.
///
/// Mass and volume flow, gas constant, heat capacity, water vapour and dew point of the flue gas that a
/// burner and its dilution air send up the flue.
///
/// Accuracy: As the heat input and the air ratio; the net calorific value is that at 25 °C, within 0.1
/// % of that at 15 °C.
///
/// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
/// reckoned says nothing of spillage, blockage or wind.
///
/// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
/// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
/// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
/// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
/// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
/// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
/// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
/// every default.
///
/// Source: Element balance of complete combustion (amounts).
///
/// Source: NASA polynomials, as combustion/species.rs (heat capacity).
///
/// Source: IAPWS R7-97(2012), IF97 region 4 (dew point).
///
/// `notices` may be NULL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_gas_flow(
    context: *const fw_context,
    input: *const fw_flue_gas_flow_input,
    output: *mut fw_flue_gas_flow_output,
    notices: *mut fw_notices,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_GAS_FLOW.evaluate::<6, 6>(context, input.cast(), output.cast(), notices) }
}

/// fw_flue_gas_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
/// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_gas_flow_batch(
    context: *const fw_context,
    rows: usize,
    inputs: *const fw_flue_gas_flow_input,
    input_stride: usize,
    outputs: *mut fw_flue_gas_flow_output,
    output_stride: usize,
    row_status: *mut u16,
) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_GAS_FLOW.batch::<6, 6>(context, rows, (inputs.cast(), input_stride), (outputs.cast(), output_stride), row_status) }
}

/// Writes the defaults of fw_flue_gas_flow into `input`, and NaN into what must be given or may be left out.
/// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_flue_gas_flow_unset(input: *mut fw_flue_gas_flow_input) -> fw_status {
    // SAFETY: both structs are as many doubles as stated here, which the compiler checks above.
    unsafe { FLUE_GAS_FLOW.unset::<6>(input.cast()) }
}
