/*
 * flamewright: the sums of a gas heating engineer's visit.
 *
 * Made by `cargo xtask generate` from bindings/c: do not edit.
 *
 * NUMBERS. Every number is a double in SI base units; the unit, and the basis where there is more
 *   than one (gauge or absolute, gross or net, dry or wet), stands in the name of its type. Those
 *   types are all double: the compiler does not tell them apart (flamewright.hpp for C++ does). So
 *   62 degC is 62 + 273.15, 21 mbar is 2100, 4.6 % is 0.046, 48 ppm is 48e-6.
 *   NaN in an input means "not given"; NaN in an output means what its field says. A value that is
 *   not finite or out of range is refused, never clamped.
 * ONE CALCULATION. For every calculation NAME of the catalogue:
 *     fw_NAME_unset  writes the defaults into an input struct; start from it;
 *     fw_NAME        evaluates one reading;
 *     fw_NAME_batch  evaluates many, none of which is lost.
 *   By name, for whatever is in the catalogue: fw_catalogue_json, fw_evaluate_json, and with the
 *   settings fixed by fw_context_new also fw_evaluate and fw_evaluate_columns.
 *   The whole job: fw_visit_json, fw_visit_text and fw_visit_html assess a visit record by a policy.
 * STATUS. Functions that can fail return fw_status; FW_OK is 0. Outputs come last and are written
 *   only on success, except where a function says otherwise.
 * LAST ERROR. Behind a status other than FW_OK stand words: fw_error_message() and its like. They
 *   belong to the thread that made the failing call, must be asked for on that thread, and stay as
 *   they are until the next call that fails on it; a call that succeeds leaves them alone. Their
 *   texts belong to the library: copy what must last longer. They are never NULL. A host that
 *   moves work between threads copies the words before it lets go of the thread.
 * NOTICES. A result may stand with something to be known about it: fw_notices. They are no errors.
 * POINTERS. Every pointer may be NULL where its function says so, and is refused elsewhere; a
 *   pointer that is not aligned is refused. What cannot be seen from a pointer is the caller's duty:
 *   that it points to living memory of the right size, that a text ends with NUL, that a context was
 *   not freed. An output struct may be the same memory as an input; in batches a row's outputs may
 *   lie over the inputs of the same row, any other overlap is refused.
 * OWNERSHIP. What the library hands out through an output argument belongs to the caller, who frees
 *   it with the function named there (fw_context_free, fw_string_free), never with free(). What
 *   functions return belongs to the library. Texts are UTF-8 and end with NUL.
 * THREADS. Every function may be called from any thread at any time. A context never changes, so
 *   threads may share it; only fw_context_free must be the last to touch it. The library starts no
 *   threads, holds no locks while it computes, opens no files and reads no environment. After
 *   fork() both processes may go on calling it, if no other thread was inside its very first call
 *   of a calculation at that moment.
 * PANICS. A defect inside is caught and returned as FW_PANIC, its message printed to stderr; the
 *   library can be used on. Only lack of memory ends the process.
 * VERSIONS. A program checks fw_abi_version() == FW_ABI_VERSION once. Within one version of the
 *   interface whatever is here stays as it is: no function, struct, field, type or number changes
 *   or goes; there may only come more. The shared library is named after it (libflamewright.so.1).
 * RESULTS ARE AID TO A COMPETENT PERSON. The library judges nothing by itself; cautions come with
 *   every calculation in the catalogue and in JSON answers.
 */

#ifndef FLAMEWRIGHT_H
#define FLAMEWRIGHT_H

#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>

// Version of the binary interface that this header describes; compare it with fw_abi_version().
//
// Within one version a function, a struct, a field, a type or a number that is here stays as it is;
// only new functions, structs and numbers may come. What must change otherwise raises this number,
// and with it the name of the shared library.
#define FW_ABI_VERSION 1

// The row has its result and nothing is to be said about it.
#define FW_ROW_OK 0

// The row has its result and something is to be known about it.
#define FW_ROW_NOTICE 1

// From here on the row has no result. FW_ROW_FIELD + i: input field i was refused.
#define FW_ROW_FIELD 256

// FW_ROW_RULE + i: rule i of the calculation refused the row.
#define FW_ROW_RULE 512

// The sum has no finite result for the row.
#define FW_ROW_UNDEFINED 768

// What became of a call. A number is never given to another meaning.
typedef enum {
    // Done; the outputs are written.
    FW_OK = 0,
    // A pointer that is needed is NULL.
    FW_NULL_POINTER = 1,
    // A pointer is not aligned for what it points to.
    FW_MISALIGNED = 2,
    // A text is not UTF-8.
    FW_NOT_UTF8 = 3,
    // A count is not what the calculation needs, or an array cannot be that large.
    FW_WRONG_COUNT = 4,
    // A stride is smaller than its element, or not a multiple of the size of a double.
    FW_BAD_STRIDE = 5,
    // An output lies over an input of another row, over another output, or over the row status.
    FW_OVERLAP = 6,
    // The context belongs to another calculation.
    FW_WRONG_CONTEXT = 7,
    // A defect of the library, caught; please report it with the message.
    FW_PANIC = 8,
    // A needed value was not given (it is not a number).
    FW_MISSING = 101,
    // A value is infinite.
    FW_NOT_FINITE = 102,
    // A value lies outside the range of its field.
    FW_OUT_OF_RANGE = 103,
    // A text cannot be read as a quantity.
    FW_UNREADABLE = 104,
    // A bare number where a unit is needed.
    FW_UNIT_MISSING = 105,
    // A unit is not known.
    FW_UNKNOWN_UNIT = 106,
    // A unit measures something else.
    FW_WRONG_DIMENSION = 107,
    // A value stands on another basis (gauge for absolute, gross for net).
    FW_WRONG_BASIS = 108,
    // A name is not known.
    FW_UNKNOWN_NAME = 109,
    // A setting, or a text record, has a value that is not offered or has the wrong form.
    FW_BAD_SETTING = 110,
    // The values are impossible together: a rule of the calculation refused them.
    FW_REFUSED = 111,
    // No answer exists.
    FW_NO_SOLUTION = 112,
    // Refused for a reason that this version of the interface has no number for; see the message.
    FW_OTHER_REFUSAL = 199,
} fw_status;

#if defined(FLAMEWRIGHT_ARROW)
// `struct ArrowArray` of the Arrow C data interface, as the program declares it.
typedef struct ArrowArray ArrowArray;
#endif

#if defined(FLAMEWRIGHT_ARROW)
// `struct ArrowSchema` of the Arrow C data interface, as the program declares it.
typedef struct ArrowSchema ArrowSchema;
#endif

// A calculation with its settings fixed: a fuel, a tube, a circuit. It is never changed after it is
// made, so any number of threads may use one at once.
typedef struct fw_context fw_context;

// What is to be known about a result that stands. Both are zero if nothing is.
// fw_notices_json() puts them into words.
typedef struct {
    // Bit i: input field i lies outside its usual range.
    uint64_t unusual;
    // Bit i: rule i of the calculation, in the order of the catalogue, deserves a notice.
    uint64_t raised;
} fw_notices;

// One input of a batch.
typedef struct {
    // The value of the first row, SI.
    const double *values;
    // Bytes from one row to the next; 0 takes the first value for every row.
    size_t stride;
} fw_column;

// One output of a batch.
typedef struct {
    // Where the value of the first row goes, SI; NULL where this output is not wanted.
    double *values;
    // Bytes from one row to the next.
    size_t stride;
} fw_column_out;

// Power (net), SI.
typedef double fw_watt_net;

// Energy per volume (net), SI.
typedef double fw_joule_per_cubic_metre_net;

// Ratio, SI.
typedef double fw_ratio;

// What goes into fw_combustion_air_flow.
typedef struct {
    // Heat input on the net calorific value; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to
    // 1000000 (1 kW to 1000 kW).
    fw_watt_net heat_input_net;
    // Net calorific value of the gas at the reference conditions of its volume; allowed 1000000 to 2e8 (1
    // MJ/m³ to 200 MJ/m³); usually 1e7 to 1.3e8 (10 MJ/m³ to 130 MJ/m³).
    fw_joule_per_cubic_metre_net net_calorific_value;
    // Air needed per volume of gas; allowed 0.5 to 60.
    fw_ratio stoichiometric_air;
    // Excess air ratio, the air drawn in by a draught diverter counted; allowed 1 to 20.
    fw_ratio excess_air_ratio;
} fw_combustion_air_flow_input;

// Volume flow (at reference conditions), SI.
typedef double fw_cubic_metre_per_second_at_reference_conditions;

// Volume flow, SI.
typedef double fw_cubic_metre_per_second;

// What comes out of fw_combustion_air_flow.
typedef struct {
    // Gas rate at the reference conditions of the calorific value.
    fw_cubic_metre_per_second_at_reference_conditions gas_rate;
    // Air flow at the same conditions.
    fw_cubic_metre_per_second air_flow;
} fw_combustion_air_flow_output;

// Temperature, SI.
typedef double fw_kelvin;

// Pressure (absolute), SI.
typedef double fw_pascal_absolute;

// What goes into fw_combustion_products.
typedef struct {
    // Excess air ratio: air supplied over air needed. Below 1 the mixture is rich, and its products are
    // another matter; allowed 1 to 50; usually 1 to 3; default 1.
    fw_ratio excess_air_ratio;
    // Temperature of the combustion air, for its humidity; allowed 253.15 to 333.15 (-20 °C to 60 °C);
    // default 293.15 (20 °C).
    fw_kelvin air_temperature;
    // Relative humidity of the combustion air; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio relative_humidity;
    // Absolute pressure of the atmosphere; allowed 60000 to 110000 (600 mbar to 1100 mbar); default 101325
    // (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
    // Compression factor of the fuel gas at 15 °C, for the real volume of air per volume of gas; allowed
    // 0.8 to 1.1; default 1.
    fw_ratio fuel_compression_factor;
} fw_combustion_products_input;

// Specific volume, SI.
typedef double fw_cubic_metre_per_kilogram;

// Ratio (dry), SI.
typedef double fw_ratio_dry;

// Ratio (wet), SI.
typedef double fw_ratio_wet;

// Molar mass, SI.
typedef double fw_kilogram_per_mole;

// Density, SI.
typedef double fw_kilogram_per_cubic_metre;

// Volume per energy (net), SI.
typedef double fw_cubic_metre_per_joule_net;

// Volume per energy (gross), SI.
typedef double fw_cubic_metre_per_joule_gross;

// Mass per energy (gross), SI.
typedef double fw_kilogram_per_joule_gross;

// What comes out of fw_combustion_products.
typedef struct {
    // Dry air needed per volume of gas, both at the same temperature and pressure; NaN means: the fuel is
    // not a gas.
    fw_ratio stoichiometric_air;
    // The same with the compression factors of gas and air at 15 °C; NaN means: the fuel is not a gas.
    fw_ratio stoichiometric_air_real;
    // Oxygen needed per volume of gas; NaN means: the fuel is not a gas.
    fw_ratio stoichiometric_oxygen;
    // Dry flue gas per volume of gas; NaN means: the fuel is not a gas.
    fw_ratio dry_flue;
    // Wet flue gas per volume of gas; NaN means: the fuel is not a gas.
    fw_ratio wet_flue;
    // Water vapour per volume of gas; NaN means: the fuel is not a gas.
    fw_ratio water_vapour;
    // Carbon dioxide per volume of gas; NaN means: the fuel is not a gas.
    fw_ratio carbon_dioxide;
    // Dry air needed, normal cubic metres per kilogram of fuel.
    fw_cubic_metre_per_kilogram stoichiometric_air_per_mass;
    // Oxygen needed, normal cubic metres per kilogram of fuel.
    fw_cubic_metre_per_kilogram stoichiometric_oxygen_per_mass;
    // Dry flue gas, normal cubic metres per kilogram of fuel.
    fw_cubic_metre_per_kilogram dry_flue_per_mass;
    // Wet flue gas, normal cubic metres per kilogram of fuel.
    fw_cubic_metre_per_kilogram wet_flue_per_mass;
    // Water vapour, normal cubic metres per kilogram of fuel.
    fw_cubic_metre_per_kilogram water_vapour_per_mass;
    // Carbon dioxide, normal cubic metres per kilogram of fuel.
    fw_cubic_metre_per_kilogram carbon_dioxide_per_mass;
    // Mass of dry air needed over mass of fuel.
    fw_ratio stoichiometric_air_mass;
    // Mass of the dry air supplied over mass of fuel.
    fw_ratio air_mass;
    // Mass of wet flue gas over mass of fuel.
    fw_ratio flue_mass;
    // Mass of water in the flue gas over mass of fuel.
    fw_ratio water_mass;
    // Water in the air, mass over mass of dry air.
    fw_ratio humidity_ratio;
    // Largest carbon dioxide in dry flue gas: complete combustion without excess air.
    fw_ratio_dry carbon_dioxide_maximum;
    // Oxygen in dry flue gas.
    fw_ratio_dry oxygen_dry;
    // Carbon dioxide in dry flue gas.
    fw_ratio_dry carbon_dioxide_dry;
    // Carbon dioxide in wet flue gas.
    fw_ratio_wet carbon_dioxide_wet;
    // Water vapour in wet flue gas.
    fw_ratio_wet water_wet;
    // Oxygen in wet flue gas.
    fw_ratio_wet oxygen_wet;
    // Nitrogen in wet flue gas.
    fw_ratio_wet nitrogen_wet;
    // Argon in wet flue gas.
    fw_ratio_wet argon_wet;
    // Sulphur dioxide in wet flue gas.
    fw_ratio_wet sulphur_dioxide_wet;
    // Temperature at which the flue gas begins to condense; NaN means: too little water vapour to condense
    // above 0 °C.
    fw_kelvin water_dew_point;
    // Molar mass of the wet flue gas.
    fw_kilogram_per_mole flue_molar_mass;
    // Density of the wet flue gas at 0 °C and 1013.25 mbar, had nothing condensed.
    fw_kilogram_per_cubic_metre flue_normal_density;
    // Dry air needed, normal cubic metres per net heat input.
    fw_cubic_metre_per_joule_net stoichiometric_air_per_net_heat;
    // Dry flue gas, normal cubic metres per net heat input.
    fw_cubic_metre_per_joule_net dry_flue_per_net_heat;
    // Dry flue gas, normal cubic metres per gross heat input.
    fw_cubic_metre_per_joule_gross dry_flue_per_gross_heat;
    // Carbon dioxide from the fuel per gross heat input.
    fw_kilogram_per_joule_gross carbon_dioxide_per_gross_heat;
} fw_combustion_products_output;

// What goes into fw_flame_temperature.
typedef struct {
    // Excess air ratio: air supplied over air needed; allowed 1 to 20; default 1.
    fw_ratio excess_air_ratio;
    // Temperature of the fuel gas; liquids and solids are taken to enter at 25 °C; allowed 233.15 to
    // 373.15 (-40 °C to 100 °C); default 298.15 (25 °C).
    fw_kelvin fuel_temperature;
    // Temperature of the combustion air; allowed 233.15 to 873.15 (-40 °C to 600 °C); default 298.15 (25
    // °C).
    fw_kelvin air_temperature;
    // Water in the combustion air as relative humidity at 20 °C; allowed 0 to 1 (0 % to 100 %); default 0
    // (0 %).
    fw_ratio relative_humidity_20;
    // Absolute pressure; allowed 10000 to 2000000 (100 mbar to 20000 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute pressure;
} fw_flame_temperature_input;

// What comes out of fw_flame_temperature.
typedef struct {
    // Adiabatic flame temperature in chemical equilibrium, with dissociation.
    fw_kelvin flame_temperature;
    // Adiabatic flame temperature if combustion were complete; too high above about 1500 °C.
    fw_kelvin flame_temperature_complete;
    // Carbon monoxide in the wet gas in equilibrium at flame temperature; nearly all of it burns on
    // cooling.
    fw_ratio_wet carbon_monoxide_wet;
    // Nitric oxide in the wet gas in equilibrium at flame temperature; a flame has no time to form as
    // much.
    fw_ratio_wet nitric_oxide_wet;
    // Oxygen in the wet gas in equilibrium at flame temperature.
    fw_ratio_wet oxygen_wet;
    // Hydrogen in the wet gas in equilibrium at flame temperature.
    fw_ratio_wet hydrogen_wet;
} fw_flame_temperature_output;

// What goes into fw_gas_enthalpy.
typedef struct {
    // Temperature of the gas; allowed 223.15 to 2973.15 (-50 °C to 2700 °C); usually 273.15 to 873.15 (0
    // °C to 600 °C).
    fw_kelvin temperature;
} fw_gas_enthalpy_input;

// Molar energy, SI.
typedef double fw_joule_per_mole;

// What comes out of fw_gas_enthalpy.
typedef struct {
    // Carbon dioxide.
    fw_joule_per_mole carbon_dioxide;
    // Water vapour as an ideal gas.
    fw_joule_per_mole water_vapour;
    // Oxygen.
    fw_joule_per_mole oxygen;
    // Nitrogen.
    fw_joule_per_mole nitrogen;
    // Argon.
    fw_joule_per_mole argon;
    // Sulphur dioxide.
    fw_joule_per_mole sulphur_dioxide;
    // Carbon monoxide.
    fw_joule_per_mole carbon_monoxide;
} fw_gas_enthalpy_output;

// What goes into fw_saturated_water.
typedef struct {
    // Temperature of water and vapour; allowed 273.15 to 373.15 (0 °C to 100 °C).
    fw_kelvin temperature;
} fw_saturated_water_input;

// Energy per mass, SI.
typedef double fw_joule_per_kilogram;

// What comes out of fw_saturated_water.
typedef struct {
    // Saturation pressure.
    fw_pascal_absolute saturation_pressure;
    // Heat of vaporisation.
    fw_joule_per_kilogram heat_of_vaporisation;
    // Enthalpy of the liquid above that at the triple point.
    fw_joule_per_kilogram liquid_enthalpy;
} fw_saturated_water_output;

// What goes into fw_carbon_monoxide.
typedef struct {
    // Carbon monoxide in dry flue gas; allowed 0 to 0.1 (0 ppm to 100000 ppm); usually 0 to 0.001 (0 ppm
    // to 1000 ppm).
    fw_ratio_dry carbon_monoxide_dry;
    // Carbon dioxide in dry flue gas; allowed 0.0005 to 0.25 (0.05 % to 25 %); usually 0.01 to 0.15 (1 %
    // to 15 %); NaN means: not measured.
    fw_ratio_dry carbon_dioxide_dry;
    // Oxygen in dry flue gas; allowed 0 to 0.205 (0 % to 20.5 %); usually 0.01 to 0.18 (1 % to 18 %); NaN
    // means: not measured.
    fw_ratio_dry oxygen_dry;
    // Oxygen of air in the rule's own formula: 20.9, 20.95 or 21 %; needed with oxygen; allowed 0.208 to
    // 0.211 (20.8 % to 21.1 %); NaN means: no rule chosen.
    fw_ratio_dry air_oxygen;
    // Oxygen that the rule refers to; 0 % means air-free; allowed 0 to 0.2 (0 % to 20 %); default 0 (0 %).
    fw_ratio_dry reference_oxygen;
    // Largest carbon dioxide of the fuel; needed for the air-free value from carbon dioxide; allowed 0.01
    // to 0.25 (1 % to 25 %); NaN means: not given.
    fw_ratio_dry carbon_dioxide_maximum;
} fw_carbon_monoxide_input;

// Ratio (air-free), SI.
typedef double fw_ratio_air_free;

// What comes out of fw_carbon_monoxide.
typedef struct {
    // Carbon monoxide over carbon dioxide, both by volume of the same sample; dilution does not change it;
    // NaN means: carbon dioxide not measured.
    fw_ratio carbon_monoxide_ratio;
    // Carbon dioxide over carbon monoxide, the "one to ..." way of stating it; NaN means: no carbon
    // monoxide, or carbon dioxide not measured.
    fw_ratio carbon_dioxide_over_monoxide;
    // Carbon monoxide at zero oxygen, from the oxygen read; NaN means: oxygen not measured or no oxygen of
    // air chosen.
    fw_ratio_air_free carbon_monoxide_air_free;
    // Carbon monoxide at reference oxygen, from the oxygen read; NaN means: oxygen not measured or no
    // oxygen of air chosen.
    fw_ratio_dry carbon_monoxide_at_reference;
    // Carbon monoxide at zero excess air, from the carbon dioxide read and the fuel's largest one; NaN
    // means: carbon dioxide or its largest value not given.
    fw_ratio_air_free carbon_monoxide_air_free_from_carbon_dioxide;
} fw_carbon_monoxide_output;

// What goes into fw_flue_analysis.
typedef struct {
    // Oxygen in dry flue gas; allowed 0 to 0.209 (0 % to 20.9 %); usually 0.02 to 0.12 (2 % to 12 %); NaN
    // means: not measured.
    fw_ratio_dry oxygen_dry;
    // Carbon dioxide in dry flue gas, measured as such; leave it out where the instrument derives it from
    // oxygen; allowed 0.0005 to 0.25 (0.05 % to 25 %); usually 0.04 to 0.15 (4 % to 15 %); NaN means: not
    // measured.
    fw_ratio_dry carbon_dioxide_dry;
    // Carbon monoxide in dry flue gas; allowed 0 to 0.1 (0 ppm to 100000 ppm); usually 0 to 0.001 (0 ppm
    // to 1000 ppm).
    fw_ratio_dry carbon_monoxide_dry;
    // Temperature of the flue gas where the sample is taken; allowed 253.15 to 873.15 (-20 °C to 600 °C);
    // usually 303.15 to 573.15 (30 °C to 300 °C).
    fw_kelvin flue_temperature;
    // Temperature of the combustion air where the burner takes it; allowed 233.15 to 333.15 (-40 °C to 60
    // °C); usually 263.15 to 313.15 (-10 °C to 40 °C).
    fw_kelvin air_temperature;
    // Absolute pressure of the atmosphere at the place, not reduced to sea level; allowed 60000 to 110000
    // (600 mbar to 1100 mbar); usually 80000 to 104500 (800 mbar to 1045 mbar); default 101325 (1013.25
    // mbar).
    fw_pascal_absolute barometric_pressure;
    // Relative humidity of the combustion air; dry air is the convention of published loss figures;
    // allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio relative_humidity;
} fw_flue_analysis_input;

// Ratio (gross), SI.
typedef double fw_ratio_gross;

// Ratio (net), SI.
typedef double fw_ratio_net;

// What comes out of fw_flue_analysis.
typedef struct {
    // Excess air ratio: air supplied over air needed, by element balance with the carbon monoxide in it.
    fw_ratio excess_air_ratio;
    // Excess air: the excess air ratio less one.
    fw_ratio excess_air;
    // Oxygen in dry flue gas derived from the carbon dioxide; NaN means: measured, not derived.
    fw_ratio_dry oxygen_dry_derived;
    // Carbon dioxide in dry flue gas derived from the oxygen and the fuel; not an independent reading; NaN
    // means: measured, not derived.
    fw_ratio_dry carbon_dioxide_dry_derived;
    // Measured less derived carbon dioxide: nearly zero when oxygen, carbon dioxide and fuel belong
    // together; NaN means: only one of the two was measured.
    fw_ratio carbon_dioxide_closure;
    // Largest carbon dioxide the fuel can give in dry flue gas.
    fw_ratio_dry carbon_dioxide_maximum;
    // Carbon monoxide over carbon dioxide, the measured one where there is one; dilution does not change
    // it.
    fw_ratio carbon_monoxide_ratio;
    // Carbon monoxide per dry flue gas of complete combustion without excess air, by exact balance.
    fw_ratio_air_free carbon_monoxide_air_free;
    // Temperature at which the flue gas begins to condense; NaN means: too little water vapour to condense
    // above 0 °C.
    fw_kelvin water_dew_point;
    // Heat in the dry flue gas above 25 °C.
    fw_ratio_gross dry_gas_loss;
    // Heat in the water vapour above 25 °C.
    fw_ratio_gross moisture_loss;
    // Latent heat that leaves with the vapour, less that which came with humid air.
    fw_ratio_gross latent_loss;
    // Heat in the condensate, which leaves at flue temperature.
    fw_ratio_gross condensate_loss;
    // Heat not released because carbon monoxide did not burn.
    fw_ratio_gross unburnt_loss;
    // Heat brought by the combustion air above 25 °C; negative where it is colder.
    fw_ratio_gross air_credit;
    // Heat brought by the fuel gas, taken at air temperature; zero for liquids and solids.
    fw_ratio_gross fuel_credit;
    // Flue loss as short formulae mean it: heat of dry gas and vapour above air temperature, without
    // latent heat and carbon monoxide.
    fw_ratio_net flue_loss_net;
    // Combustion efficiency on the gross calorific value: what does not leave by the flue.
    fw_ratio_gross efficiency_gross;
    // Combustion efficiency on the net calorific value; above 100 % where enough condenses.
    fw_ratio_net efficiency_net;
    // Condensate per gross heat input.
    fw_kilogram_per_joule_gross condensate;
} fw_flue_analysis_output;

// What goes into fw_flue_emissions.
typedef struct {
    // Oxygen in dry flue gas; allowed 0 to 0.205 (0 % to 20.5 %); usually 0.02 to 0.12 (2 % to 12 %).
    fw_ratio_dry oxygen_dry;
    // Carbon monoxide in dry flue gas; allowed 0 to 0.1 (0 ppm to 100000 ppm); usually 0 to 0.001 (0 ppm
    // to 1000 ppm).
    fw_ratio_dry carbon_monoxide_dry;
    // Nitrogen oxides in dry flue gas; allowed 0 to 0.01 (0 ppm to 10000 ppm); usually 0 to 0.0003 (0 ppm
    // to 300 ppm); NaN means: not measured.
    fw_ratio_dry nitrogen_oxides_dry;
    // Oxygen that the rule refers emissions to: 0 % means air-free; allowed 0 to 0.2 (0 % to 20 %).
    fw_ratio_dry reference_oxygen;
    // Oxygen of air in the rule's own formula: 20.9, 20.95 or 21 %; allowed 0.208 to 0.211 (20.8 % to 21.1
    // %).
    fw_ratio_dry air_oxygen;
    // Temperature to which masses per cubic metre refer; allowed 223.15 to 333.15 (-50 °C to 60 °C);
    // default 273.15 (0 °C).
    fw_kelvin volume_temperature;
    // Absolute pressure to which masses per cubic metre refer; allowed 60000 to 110000 (600 mbar to 1100
    // mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute volume_pressure;
} fw_flue_emissions_input;

// Mass per energy (net), SI.
typedef double fw_kilogram_per_joule_net;

// What comes out of fw_flue_emissions.
typedef struct {
    // Excess air ratio by element balance.
    fw_ratio excess_air_ratio;
    // Excess air ratio by the short form with the rule's oxygen of air; 1 to 8 % high for hydrocarbons.
    fw_ratio excess_air_ratio_short;
    // Carbon dioxide in dry flue gas derived from oxygen by element balance.
    fw_ratio_dry carbon_dioxide_dry_derived;
    // Carbon dioxide in dry flue gas derived by the short form.
    fw_ratio_dry carbon_dioxide_dry_short;
    // Carbon monoxide over carbon dioxide, derived by element balance.
    fw_ratio carbon_monoxide_ratio;
    // Carbon monoxide over carbon dioxide, derived by the short form.
    fw_ratio carbon_monoxide_ratio_short;
    // Carbon monoxide per dry flue gas of complete combustion without excess air, by element balance.
    fw_ratio_air_free carbon_monoxide_air_free;
    // Carbon monoxide air-free by the rule's formula.
    fw_ratio_air_free carbon_monoxide_air_free_rule;
    // Carbon monoxide at reference oxygen by the rule's formula.
    fw_ratio_dry carbon_monoxide_at_reference;
    // Nitrogen oxides at reference oxygen by the rule's formula; NaN means: not measured.
    fw_ratio_dry nitrogen_oxides_at_reference;
    // Mass of carbon monoxide per cubic metre of dry flue gas as measured.
    fw_kilogram_per_cubic_metre carbon_monoxide_concentration;
    // Mass of carbon monoxide per cubic metre of dry flue gas at reference oxygen.
    fw_kilogram_per_cubic_metre carbon_monoxide_concentration_at_reference;
    // Mass of nitrogen oxides, counted as NO2, per cubic metre of dry flue gas as measured; NaN means: not
    // measured.
    fw_kilogram_per_cubic_metre nitrogen_oxides_concentration;
    // Mass of nitrogen oxides, counted as NO2, per cubic metre of dry flue gas at reference oxygen; NaN
    // means: not measured.
    fw_kilogram_per_cubic_metre nitrogen_oxides_concentration_at_reference;
    // Carbon monoxide per gross heat input, by element balance.
    fw_kilogram_per_joule_gross carbon_monoxide_per_gross_heat;
    // Carbon monoxide per net heat input, by element balance.
    fw_kilogram_per_joule_net carbon_monoxide_per_net_heat;
    // Nitrogen oxides, counted as NO2, per gross heat input, by element balance; NaN means: not measured.
    fw_kilogram_per_joule_gross nitrogen_oxides_per_gross_heat;
    // Nitrogen oxides, counted as NO2, per net heat input, by element balance; NaN means: not measured.
    fw_kilogram_per_joule_net nitrogen_oxides_per_net_heat;
} fw_flue_emissions_output;

// What goes into fw_mass_concentration.
typedef struct {
    // Share of volume; allowed 0 to 1 (0 ppm to 1000000 ppm).
    fw_ratio fraction;
    // Temperature to which the cubic metre refers; without it the mass is up to 7 % wrong; allowed 223.15
    // to 333.15 (-50 °C to 60 °C).
    fw_kelvin temperature;
    // Absolute pressure to which the cubic metre refers; allowed 60000 to 110000 (600 mbar to 1100 mbar);
    // default 101325 (1013.25 mbar).
    fw_pascal_absolute pressure;
} fw_mass_concentration_input;

// What comes out of fw_mass_concentration.
typedef struct {
    // Mass of the gas per cubic metre.
    fw_kilogram_per_cubic_metre mass_concentration;
} fw_mass_concentration_output;

// What goes into fw_siegert_constants.
typedef struct {
    // Least oxygen; allowed 0 to 0.15 (0 % to 15 %); default 0.01 (1 %).
    fw_ratio_dry least_oxygen;
    // Most oxygen; allowed 0.001 to 0.18 (0.1 % to 18 %); default 0.09 (9 %).
    fw_ratio_dry most_oxygen;
    // Lowest flue temperature; allowed 334.15 to 673.15 (61 °C to 400 °C); default 353.15 (80 °C).
    fw_kelvin lowest_flue_temperature;
    // Highest flue temperature; allowed 335.15 to 873.15 (62 °C to 600 °C); default 573.15 (300 °C).
    fw_kelvin highest_flue_temperature;
    // Air temperature; allowed 233.15 to 333.15 (-40 °C to 60 °C); default 293.15 (20 °C).
    fw_kelvin air_temperature;
} fw_siegert_constants_input;

// What comes out of fw_siegert_constants.
typedef struct {
    // Constant A2 of the oxygen form.
    fw_ratio a2;
    // Constant B.
    fw_ratio b;
    // Constant A1 of the carbon dioxide form.
    fw_ratio a1;
    // Largest difference of the formula from the energy balance over the field.
    fw_ratio_net largest_deviation;
} fw_siegert_constants_output;

// What goes into fw_siegert_flue_loss.
typedef struct {
    // Oxygen in dry flue gas; allowed 0 to 0.2 (0 % to 20 %); usually 0.02 to 0.12 (2 % to 12 %); NaN
    // means: not measured.
    fw_ratio_dry oxygen_dry;
    // Carbon dioxide in dry flue gas, for the carbon dioxide form; allowed 0.005 to 0.25 (0.5 % to 25 %);
    // usually 0.04 to 0.15 (4 % to 15 %); NaN means: not measured.
    fw_ratio_dry carbon_dioxide_dry;
    // Largest carbon dioxide of the fuel, for the carbon dioxide form; allowed 0.01 to 0.25 (1 % to 25 %);
    // NaN means: not given.
    fw_ratio_dry carbon_dioxide_maximum;
    // Temperature of the flue gas; allowed 253.15 to 873.15 (-20 °C to 600 °C); usually 333.15 to 573.15
    // (60 °C to 300 °C).
    fw_kelvin flue_temperature;
    // Temperature of the combustion air; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to
    // 313.15 (-10 °C to 40 °C).
    fw_kelvin air_temperature;
} fw_siegert_flue_loss_input;

// What comes out of fw_siegert_flue_loss.
typedef struct {
    // Flue loss from oxygen, share of the net heat input; NaN means: oxygen not measured.
    fw_ratio_net flue_loss_net;
    // Net heat input less that flue loss; NaN means: oxygen not measured.
    fw_ratio_net efficiency_net;
    // Flue loss from carbon dioxide, share of the net heat input; NaN means: carbon dioxide or its largest
    // value not given.
    fw_ratio_net flue_loss_net_from_carbon_dioxide;
} fw_siegert_flue_loss_output;

// What goes into fw_volume_fraction.
typedef struct {
    // Mass of the gas per cubic metre; allowed 0 to 3 (0 mg/m³ to 3000000 mg/m³).
    fw_kilogram_per_cubic_metre mass_concentration;
    // Temperature to which the cubic metre refers; allowed 223.15 to 333.15 (-50 °C to 60 °C).
    fw_kelvin temperature;
    // Absolute pressure to which the cubic metre refers; allowed 60000 to 110000 (600 mbar to 1100 mbar);
    // default 101325 (1013.25 mbar).
    fw_pascal_absolute pressure;
} fw_volume_fraction_input;

// What comes out of fw_volume_fraction.
typedef struct {
    // Share of volume.
    fw_ratio fraction;
} fw_volume_fraction_output;

// What goes into fw_fuel_properties.
typedef struct {
    // Temperature at which the fuel is taken to burn; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    // 288.15 (15 °C).
    fw_kelvin combustion_temperature;
    // Temperature at which the volume of a gas is taken; allowed 273.15 to 293.15 (0 °C to 20 °C); default
    // 288.15 (15 °C).
    fw_kelvin metering_temperature;
    // Absolute pressure at which the volume of a gas is taken; allowed 60000 to 120000 (60 kPa to 120
    // kPa); usually 90000 to 110000 (90 kPa to 110 kPa); default 101325 (101.325 kPa).
    fw_pascal_absolute metering_pressure;
} fw_fuel_properties_input;

// Energy per volume (gross), SI.
typedef double fw_joule_per_cubic_metre_gross;

// Molar energy (gross), SI.
typedef double fw_joule_per_mole_gross;

// Molar energy (net), SI.
typedef double fw_joule_per_mole_net;

// Energy per mass (gross), SI.
typedef double fw_joule_per_kilogram_gross;

// Energy per mass (net), SI.
typedef double fw_joule_per_kilogram_net;

// What comes out of fw_fuel_properties.
typedef struct {
    // Molar mass; NaN means: not a gas.
    fw_kilogram_per_mole molar_mass;
    // Compression factor at metering conditions; NaN means: not a gas.
    fw_ratio compression_factor;
    // Density at metering conditions; NaN means: not a gas.
    fw_kilogram_per_cubic_metre density;
    // Density the gas would have at metering conditions if it were ideal; NaN means: not a gas.
    fw_kilogram_per_cubic_metre ideal_density;
    // Density over that of dry air, both real and at metering conditions; NaN means: not a gas.
    fw_ratio relative_density;
    // Molar mass over that of dry air: relative density of ideal gases; NaN means: not a gas.
    fw_ratio ideal_relative_density;
    // Gross calorific value per volume; NaN means: not a gas.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Net calorific value per volume; NaN means: not a gas.
    fw_joule_per_cubic_metre_net net_calorific_value;
    // Gross Wobbe index; NaN means: not a gas.
    fw_joule_per_cubic_metre_gross gross_wobbe_index;
    // Net Wobbe index; NaN means: not a gas.
    fw_joule_per_cubic_metre_net net_wobbe_index;
    // Gross calorific value per amount of substance; NaN means: not a gas.
    fw_joule_per_mole_gross gross_molar_calorific_value;
    // Net calorific value per amount of substance; NaN means: not a gas.
    fw_joule_per_mole_net net_molar_calorific_value;
    // Gross calorific value per mass.
    fw_joule_per_kilogram_gross gross_mass_calorific_value;
    // Net calorific value per mass.
    fw_joule_per_kilogram_net net_mass_calorific_value;
    // Gross calorific value over net; NaN means: the gas gives no heat.
    fw_ratio gross_over_net;
} fw_fuel_properties_output;

// What goes into fw_gas_properties.
typedef struct {
    // Mole fraction of methane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio methane;
    // Mole fraction of ethane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio ethane;
    // Mole fraction of propane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio propane;
    // Mole fraction of n-butane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio n_butane;
    // Mole fraction of isobutane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio isobutane;
    // Mole fraction of n-pentane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio n_pentane;
    // Mole fraction of isopentane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio isopentane;
    // Mole fraction of neopentane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio neopentane;
    // Mole fraction of n-hexane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio n_hexane;
    // Mole fraction of n-heptane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio n_heptane;
    // Mole fraction of n-octane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio n_octane;
    // Mole fraction of n-nonane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio n_nonane;
    // Mole fraction of n-decane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio n_decane;
    // Mole fraction of ethene; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio ethene;
    // Mole fraction of propene; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio propene;
    // Mole fraction of hydrogen; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio hydrogen;
    // Mole fraction of carbon monoxide; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio carbon_monoxide;
    // Mole fraction of nitrogen; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio nitrogen;
    // Mole fraction of carbon dioxide; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio carbon_dioxide;
    // Mole fraction of oxygen; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio oxygen;
    // Mole fraction of helium; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio helium;
    // Mole fraction of argon; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio argon;
    // Mole fraction of water; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio water;
    // Mole fraction of hydrogen sulphide; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio hydrogen_sulphide;
} fw_gas_properties_input;

// What comes out of fw_gas_properties.
typedef struct {
    // Molar mass; NaN means: not a gas.
    fw_kilogram_per_mole molar_mass;
    // Compression factor at metering conditions; NaN means: not a gas.
    fw_ratio compression_factor;
    // Density at metering conditions; NaN means: not a gas.
    fw_kilogram_per_cubic_metre density;
    // Density the gas would have at metering conditions if it were ideal; NaN means: not a gas.
    fw_kilogram_per_cubic_metre ideal_density;
    // Density over that of dry air, both real and at metering conditions; NaN means: not a gas.
    fw_ratio relative_density;
    // Molar mass over that of dry air: relative density of ideal gases; NaN means: not a gas.
    fw_ratio ideal_relative_density;
    // Gross calorific value per volume; NaN means: not a gas.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Net calorific value per volume; NaN means: not a gas.
    fw_joule_per_cubic_metre_net net_calorific_value;
    // Gross Wobbe index; NaN means: not a gas.
    fw_joule_per_cubic_metre_gross gross_wobbe_index;
    // Net Wobbe index; NaN means: not a gas.
    fw_joule_per_cubic_metre_net net_wobbe_index;
    // Gross calorific value per amount of substance; NaN means: not a gas.
    fw_joule_per_mole_gross gross_molar_calorific_value;
    // Net calorific value per amount of substance; NaN means: not a gas.
    fw_joule_per_mole_net net_molar_calorific_value;
    // Gross calorific value per mass.
    fw_joule_per_kilogram_gross gross_mass_calorific_value;
    // Net calorific value per mass.
    fw_joule_per_kilogram_net net_mass_calorific_value;
    // Gross calorific value over net; NaN means: the gas gives no heat.
    fw_ratio gross_over_net;
} fw_gas_properties_output;

// Length, SI.
typedef double fw_metre;

// What goes into fw_atmospheric_pressure.
typedef struct {
    // Height above mean sea level; allowed -500 to 5000; usually -5 to 2500.
    fw_metre altitude;
} fw_atmospheric_pressure_input;

// Pressure, SI.
typedef double fw_pascal;

// What comes out of fw_atmospheric_pressure.
typedef struct {
    // Pressure of the standard atmosphere.
    fw_pascal_absolute standard_pressure;
    // What UK billing law of 1996 deducts from 1013.25 mbar, in proportion to the altitude; NaN means: the
    // table begins at sea level.
    fw_pascal uk_deduction;
    // The deduction of the band of 2.5 m in which the altitude lies; NaN means: the table begins at sea
    // level.
    fw_pascal uk_band_deduction;
    // 1013.25 mbar less the deduction in proportion; NaN means: the table begins at sea level.
    fw_pascal_absolute uk_pressure;
} fw_atmospheric_pressure_output;

// Volume (at the meter), SI.
typedef double fw_cubic_metre_at_the_meter;

// Time, SI.
typedef double fw_second;

// Pressure (gauge), SI.
typedef double fw_pascal_gauge;

// Power (gross), SI.
typedef double fw_watt_gross;

// What goes into fw_gas_rate.
typedef struct {
    // Volume that passed, as the meter shows it; allowed 1e-5 to 1000; usually 0.005 to 5; NaN means: not
    // read as such.
    fw_cubic_metre_at_the_meter volume;
    // Volume of one revolution of the test dial; allowed 1e-5 to 10; usually 0.005 to 0.3; NaN means: no
    // test dial used.
    fw_cubic_metre_at_the_meter dial_volume;
    // Revolutions of the test dial; allowed 0.01 to 1000; usually 0.5 to 20; NaN means: no test dial used.
    fw_ratio revolutions;
    // Index at the start, in the unit of the setting `index_unit`; allowed 0 to 1e9; NaN means: index not
    // read.
    fw_ratio index_start;
    // Index at the end, in the unit of the setting `index_unit`; allowed 0 to 1e9; NaN means: index not
    // read.
    fw_ratio index_end;
    // Duration of the test; allowed 1 to 3600; usually 20 to 1200.
    fw_second time;
    // Error of the meter: shown volume less true volume, over true volume; allowed -0.2 to 0.2 (-20 % to
    // 20 %); usually -0.03 to 0.03 (-3 % to 3 %); default 0 (0 %).
    fw_ratio meter_error;
    // Gauge pressure of the gas in the meter; allowed 0 to 200000 (0 mbar to 2000 mbar); usually 500 to
    // 7500 (5 mbar to 75 mbar); NaN means: not measured.
    fw_pascal_gauge gas_pressure;
    // Temperature of the gas in the meter; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 268.15 to
    // 298.15 (-5 °C to 25 °C); NaN means: not measured.
    fw_kelvin gas_temperature;
    // Atmospheric pressure; allowed 60000 to 110000 (600 mbar to 1100 mbar); usually 95000 to 104000 (950
    // mbar to 1040 mbar); NaN means: not measured.
    fw_pascal_absolute barometric_pressure;
    // Height above sea level, to stand in for a barometer; allowed -500 to 4000; usually -5 to 2500; NaN
    // means: not stated.
    fw_metre altitude;
    // Compression factor of the gas at reference conditions over that in the meter; allowed 0.9 to 1.1;
    // usually 0.99 to 1.01; NaN means: that of the fuel if it is named, else 1.
    fw_ratio compression_ratio;
    // Gross calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    // usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³); NaN means: not stated.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Net calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    // usually 1e7 to 1.3e8 (10 MJ/m³ to 130 MJ/m³); NaN means: not stated.
    fw_joule_per_cubic_metre_net net_calorific_value;
    // Heat input of the appliance plate, where it is on the gross basis; allowed 10 to 1e8 (0.01 kW to
    // 100000 kW); usually 1000 to 1000000 (1 kW to 1000 kW); NaN means: no plate on this basis.
    fw_watt_gross plate_heat_input_gross;
    // Heat input of the appliance plate, where it is on the net basis; allowed 10 to 1e8 (0.01 kW to
    // 100000 kW); usually 1000 to 1000000 (1 kW to 1000 kW); NaN means: no plate on this basis.
    fw_watt_net plate_heat_input_net;
} fw_gas_rate_input;

// Volume flow (at the meter), SI.
typedef double fw_cubic_metre_per_second_at_the_meter;

// What comes out of fw_gas_rate.
typedef struct {
    // Volume that passed, with the meter's error taken out.
    fw_cubic_metre_at_the_meter volume;
    // Volume flow as it passes the meter.
    fw_cubic_metre_per_second_at_the_meter gas_rate;
    // Atmospheric pressure taken; NaN means: neither measured nor stated by altitude.
    fw_pascal_absolute atmospheric_pressure;
    // Reference volume over volume in the meter (state number); NaN means: gas conditions not measured.
    fw_ratio conversion_factor;
    // Volume flow at reference conditions; NaN means: gas conditions not measured.
    fw_cubic_metre_per_second_at_reference_conditions reference_gas_rate;
    // Heat input on the gross basis, converted to reference conditions; NaN means: gas conditions or gross
    // calorific value not known.
    fw_watt_gross heat_input_gross;
    // Heat input on the net basis, converted to reference conditions; NaN means: gas conditions or net
    // calorific value not known.
    fw_watt_net heat_input_net;
    // Gross heat input as if the gas in the meter were at reference conditions; NaN means: gross calorific
    // value not known.
    fw_watt_gross uncorrected_heat_input_gross;
    // Net heat input as if the gas in the meter were at reference conditions; NaN means: net calorific
    // value not known.
    fw_watt_net uncorrected_heat_input_net;
    // What the uncorrected heat input is off the converted one; NaN means: gas conditions not measured.
    fw_ratio uncorrected_error;
    // Gross calorific value over net; NaN means: gross or net calorific value not known.
    fw_ratio gross_over_net;
    // Gross heat input over that of the plate; uncorrected where the gas conditions are not known; NaN
    // means: no plate value or calorific value on the gross basis.
    fw_ratio_gross share_of_plate_gross;
    // Net heat input over that of the plate; uncorrected where the gas conditions are not known; NaN
    // means: no plate value or calorific value on the net basis.
    fw_ratio_net share_of_plate_net;
} fw_gas_rate_output;

// Volume, SI.
typedef double fw_cubic_metre;

// Temperature difference, SI.
typedef double fw_kelvin_difference;

// What goes into fw_gas_rate_uncertainty.
typedef struct {
    // Volume that passed; allowed 1e-5 to 1000; usually 0.005 to 5.
    fw_cubic_metre_at_the_meter volume;
    // Smallest step of the index or dial, which is read at the start and at the end; allowed 0 to 10;
    // usually 0.0001 to 0.01.
    fw_cubic_metre meter_resolution;
    // Duration of the test; allowed 1 to 3600; usually 20 to 1200.
    fw_second time;
    // Uncertainty of each press of the stopwatch; allowed 0 to 10; usually 0.05 to 0.5; default 0.15.
    fw_second reaction_time_uncertainty;
    // Maximum permissible error of the meter, as a half-width; allowed 0 to 0.2 (0 % to 20 %); usually
    // 0.005 to 0.04 (0.5 % to 4 %).
    fw_ratio maximum_permissible_error;
    // Gross calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    // usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³).
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Uncertainty of the gross calorific value; allowed 0 to 5e7 (0 MJ/m³ to 50 MJ/m³); usually 0 to
    // 2000000 (0 MJ/m³ to 2 MJ/m³); default 0 (0 MJ/m³).
    fw_joule_per_cubic_metre_gross calorific_value_uncertainty;
    // Gauge pressure of the gas in the meter; allowed 0 to 200000 (0 mbar to 2000 mbar); usually 500 to
    // 7500 (5 mbar to 75 mbar); NaN means: not measured.
    fw_pascal_gauge gas_pressure;
    // Uncertainty of the gas pressure; allowed 0 to 10000 (0 mbar to 100 mbar); usually 0 to 500 (0 mbar
    // to 5 mbar); default 0 (0 mbar).
    fw_pascal gas_pressure_uncertainty;
    // Atmospheric pressure; allowed 60000 to 110000 (600 mbar to 1100 mbar); usually 95000 to 104000 (950
    // mbar to 1040 mbar); NaN means: not measured.
    fw_pascal_absolute barometric_pressure;
    // Uncertainty of the atmospheric pressure; allowed 0 to 20000 (0 mbar to 200 mbar); usually 0 to 3000
    // (0 mbar to 30 mbar); default 0 (0 mbar).
    fw_pascal barometric_pressure_uncertainty;
    // Temperature of the gas in the meter; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 268.15 to
    // 298.15 (-5 °C to 25 °C); NaN means: not measured.
    fw_kelvin gas_temperature;
    // Uncertainty of the gas temperature; allowed 0 to 30; usually 0 to 10; default 0.
    fw_kelvin_difference gas_temperature_uncertainty;
} fw_gas_rate_uncertainty_input;

// Power, SI.
typedef double fw_watt;

// What comes out of fw_gas_rate_uncertainty.
typedef struct {
    // Heat input on the gross basis, uncorrected where the gas conditions were not measured.
    fw_watt_gross heat_input_gross;
    // Its standard uncertainty.
    fw_watt standard_uncertainty;
    // Its expanded uncertainty, k = 2.
    fw_watt expanded_uncertainty;
    // Standard uncertainty as a share of the heat input.
    fw_ratio relative_uncertainty;
    // The same without pressure and temperature of the gas: that of an uncorrected rate, which has an
    // error besides.
    fw_ratio uncorrected_relative_uncertainty;
    // Share of the meter's resolution in the squared uncertainty; NaN means: no uncertainty at all.
    fw_ratio share_of_resolution;
    // Share of the stopwatch; NaN means: no uncertainty at all.
    fw_ratio share_of_timing;
    // Share of the meter's permissible error; NaN means: no uncertainty at all.
    fw_ratio share_of_meter;
    // Share of the calorific value; NaN means: no uncertainty at all.
    fw_ratio share_of_calorific_value;
    // Share of gas and atmospheric pressure; NaN means: no uncertainty at all.
    fw_ratio share_of_pressure;
    // Share of the gas temperature; NaN means: no uncertainty at all.
    fw_ratio share_of_temperature;
} fw_gas_rate_uncertainty_output;

// What goes into fw_gas_rate_test_time.
typedef struct {
    // Gas rate expected, as it passes the meter; allowed 2.777778e-7 to 27.77778 (0.001 m³/h to 100000
    // m³/h); usually 1.388889e-5 to 0.02777778 (0.05 m³/h to 100 m³/h); NaN means: to be found from the
    // heat input.
    fw_cubic_metre_per_second_at_the_meter gas_rate;
    // Heat input expected; allowed 10 to 1e9 (0.01 kW to 1000000 kW); usually 500 to 1000000 (0.5 kW to
    // 1000 kW); NaN means: not stated.
    fw_watt_gross heat_input_gross;
    // Gross calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    // usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³); NaN means: not stated.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Reference volume over volume in the meter; allowed 0.1 to 10; usually 0.7 to 1.2; default 1.
    fw_ratio conversion_factor;
    // Volume that is to pass; allowed 1e-5 to 1000; usually 0.005 to 5; NaN means: not stated.
    fw_cubic_metre_at_the_meter volume;
    // Smallest step of the index or dial, which is read at the start and at the end; allowed 0 to 10;
    // usually 0.0001 to 0.01; NaN means: not stated.
    fw_cubic_metre meter_resolution;
    // Standard uncertainty of each press of the stopwatch; allowed 0 to 10; usually 0.05 to 0.5; default
    // 0.15.
    fw_second reaction_time_uncertainty;
    // Standard uncertainty wanted from reading and timing together, as a share of the rate; allowed 0.0001
    // to 0.5 (0.01 % to 50 %); usually 0.002 to 0.05 (0.2 % to 5 %); NaN means: not stated.
    fw_ratio wanted_uncertainty;
} fw_gas_rate_test_time_input;

// What comes out of fw_gas_rate_test_time.
typedef struct {
    // Gas rate taken.
    fw_cubic_metre_per_second_at_the_meter gas_rate;
    // Time in which the volume passes; NaN means: no volume stated.
    fw_second time_for_volume;
    // Time from which reading and timing are as certain as wanted; NaN means: no resolution or wanted
    // uncertainty stated.
    fw_second time_for_uncertainty;
    // Volume that passes in that time; NaN means: no resolution or wanted uncertainty stated.
    fw_cubic_metre_at_the_meter volume_for_uncertainty;
} fw_gas_rate_test_time_output;

// What goes into fw_gas_energy.
typedef struct {
    // Volume the meter counted; allowed 0 to 1e7.
    fw_cubic_metre_at_the_meter volume;
    // Reference volume over metered volume; 1 if the meter already converts; allowed 0.1 to 10; usually
    // 0.7 to 1.2.
    fw_ratio conversion_factor;
    // Gross calorific value at the reference conditions of the conversion; allowed 1000000 to 2e8 (1 MJ/m³
    // to 200 MJ/m³); usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³).
    fw_joule_per_cubic_metre_gross gross_calorific_value;
} fw_gas_energy_input;

// Volume (at reference conditions), SI.
typedef double fw_cubic_metre_at_reference_conditions;

// Energy, SI.
typedef double fw_joule;

// What comes out of fw_gas_energy.
typedef struct {
    // Volume at reference conditions.
    fw_cubic_metre_at_reference_conditions reference_volume;
    // Energy on the gross basis.
    fw_joule energy_gross;
} fw_gas_energy_output;

// What goes into fw_metering_reference_change.
typedef struct {
    // Gross calorific value as stated; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.4e8
    // (10 MJ/m³ to 140 MJ/m³); NaN means: not stated.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Net calorific value as stated; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.3e8
    // (10 MJ/m³ to 130 MJ/m³); NaN means: not stated.
    fw_joule_per_cubic_metre_net net_calorific_value;
    // Metering temperature of the stated value; allowed 253.15 to 323.15 (-20 °C to 50 °C); usually 273.15
    // to 298.15 (0 °C to 25 °C).
    fw_kelvin stated_temperature;
    // Metering pressure of the stated value; allowed 60000 to 120000 (600 mbar to 1200 mbar); usually
    // 98000 to 103000 (980 mbar to 1030 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute stated_pressure;
    // Metering temperature wanted; allowed 253.15 to 323.15 (-20 °C to 50 °C); usually 273.15 to 298.15 (0
    // °C to 25 °C).
    fw_kelvin wanted_temperature;
    // Metering pressure wanted; allowed 60000 to 120000 (600 mbar to 1200 mbar); usually 98000 to 103000
    // (980 mbar to 1030 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute wanted_pressure;
    // Compression factor at the stated over that at the wanted conditions; allowed 0.9 to 1.1; usually
    // 0.99 to 1.01; default 1.
    fw_ratio compression_ratio;
} fw_metering_reference_change_input;

// What comes out of fw_metering_reference_change.
typedef struct {
    // Volume of the same gas at the stated over that at the wanted conditions.
    fw_ratio volume_ratio;
    // Gross calorific value; NaN means: not stated.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Net calorific value; NaN means: not stated.
    fw_joule_per_cubic_metre_net net_calorific_value;
} fw_metering_reference_change_output;

// What goes into fw_wobbe_index.
typedef struct {
    // Gross calorific value; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.4e8 (10 MJ/m³
    // to 140 MJ/m³); NaN means: not stated.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Net calorific value; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.3e8 (10 MJ/m³
    // to 130 MJ/m³); NaN means: not stated.
    fw_joule_per_cubic_metre_net net_calorific_value;
    // Density of the gas over that of dry air; allowed 0.05 to 5; usually 0.06 to 2.2.
    fw_ratio relative_density;
} fw_wobbe_index_input;

// What comes out of fw_wobbe_index.
typedef struct {
    // Gross Wobbe index; NaN means: no gross calorific value stated.
    fw_joule_per_cubic_metre_gross gross_wobbe_index;
    // Net Wobbe index; NaN means: no net calorific value stated.
    fw_joule_per_cubic_metre_net net_wobbe_index;
    // Gross calorific value over net; NaN means: gross or net not stated.
    fw_ratio gross_over_net;
} fw_wobbe_index_output;

// What goes into fw_liquid_water.
typedef struct {
    // Temperature of the water; allowed 273.15 to 623.15 (0 °C to 350 °C); usually 273.15 to 383.15 (0 °C
    // to 110 °C).
    fw_kelvin temperature;
    // Absolute pressure of the water; allowed 600 to 1e8 (0.006 bar to 1000 bar); usually 50000 to 1100000
    // (0.5 bar to 11 bar); default 200000 (2 bar).
    fw_pascal_absolute pressure;
} fw_liquid_water_input;

// Specific heat capacity, SI.
typedef double fw_joule_per_kilogram_kelvin;

// Dynamic viscosity, SI.
typedef double fw_pascal_second;

// Thermal conductivity, SI.
typedef double fw_watt_per_metre_kelvin;

// Coefficient per kelvin, SI.
typedef double fw_per_kelvin;

// What comes out of fw_liquid_water.
typedef struct {
    // Density.
    fw_kilogram_per_cubic_metre density;
    // Specific heat capacity at constant pressure.
    fw_joule_per_kilogram_kelvin specific_heat_capacity;
    // Specific enthalpy, zero near 0 °C.
    fw_joule_per_kilogram specific_enthalpy;
    // Dynamic viscosity.
    fw_pascal_second dynamic_viscosity;
    // Thermal conductivity.
    fw_watt_per_metre_kelvin thermal_conductivity;
    // Volumetric expansion coefficient at constant pressure; negative below about 4 °C.
    fw_per_kelvin expansion_coefficient;
    // Prandtl number.
    fw_ratio prandtl_number;
    // Pressure at which water of this temperature boils.
    fw_pascal_absolute saturation_pressure;
} fw_liquid_water_output;

// What goes into fw_dry_air.
typedef struct {
    // Temperature of the air; allowed 223.15 to 473.15 (-50 °C to 200 °C); usually 253.15 to 383.15 (-20
    // °C to 110 °C).
    fw_kelvin temperature;
    // Absolute pressure of the air; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to
    // 106000 (800 mbar to 1060 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute pressure;
} fw_dry_air_input;

// Kinematic viscosity, SI.
typedef double fw_square_metre_per_second;

// What comes out of fw_dry_air.
typedef struct {
    // Density.
    fw_kilogram_per_cubic_metre density;
    // Specific heat capacity at constant pressure.
    fw_joule_per_kilogram_kelvin specific_heat_capacity;
    // Dynamic viscosity.
    fw_pascal_second dynamic_viscosity;
    // Kinematic viscosity.
    fw_square_metre_per_second kinematic_viscosity;
    // Thermal conductivity.
    fw_watt_per_metre_kelvin thermal_conductivity;
    // Prandtl number.
    fw_ratio prandtl_number;
} fw_dry_air_output;

// What goes into fw_humid_air.
typedef struct {
    // Temperature of the air; allowed 273.15 to 323.15 (0 °C to 50 °C); usually 278.15 to 313.15 (5 °C to
    // 40 °C).
    fw_kelvin temperature;
    // Relative humidity: vapour pressure over that of saturated air; allowed 0 to 1 (0 % to 100 %);
    // usually 0.1 to 1 (10 % to 100 %).
    fw_ratio relative_humidity;
    // Absolute pressure of the air; allowed 60000 to 110000 (600 mbar to 1100 mbar); usually 80000 to
    // 106000 (800 mbar to 1060 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute pressure;
} fw_humid_air_input;

// What comes out of fw_humid_air.
typedef struct {
    // Density.
    fw_kilogram_per_cubic_metre density;
    // Mass of vapour per mass of dry air.
    fw_ratio humidity_ratio;
    // Mole fraction of vapour in the humid air.
    fw_ratio vapour_mole_fraction;
    // Pressure of the vapour: mole fraction times pressure.
    fw_pascal_absolute vapour_pressure;
    // Temperature at which dew or, below 0 °C, frost begins to form; NaN means: below -40 °C.
    fw_kelvin dew_point;
} fw_humid_air_output;

// What goes into fw_friction_factor.
typedef struct {
    // Reynolds number: velocity times bore over kinematic viscosity; allowed 0.001 to 1e9; usually 10 to
    // 1e7.
    fw_ratio reynolds_number;
    // Roughness of the wall over the bore; allowed 0 to 0.2; usually 0 to 0.05; default 0.
    fw_ratio relative_roughness;
} fw_friction_factor_input;

// What comes out of fw_friction_factor.
typedef struct {
    // Darcy friction factor; in the transition a straight line between its ends, for want of better.
    fw_ratio friction_factor;
    // Least factor that may be: below `friction_factor` in the transition only.
    fw_ratio least_friction_factor;
    // Greatest factor that may be: above `friction_factor` in the transition only.
    fw_ratio greatest_friction_factor;
    // Factor if the flow were laminar, 64/Re.
    fw_ratio laminar_friction_factor;
    // Factor if the flow were turbulent, by the named equation; NaN means: none so far below the turbulent
    // range.
    fw_ratio turbulent_friction_factor;
} fw_friction_factor_output;

// Velocity, SI.
typedef double fw_metre_per_second;

// What goes into fw_pipe_heat_loss.
typedef struct {
    // Temperature of the water; of the pipe where its wall is 0 thick and nothing flows; allowed 273.15 to
    // 623.15 (0 °C to 350 °C); usually 278.15 to 368.15 (5 °C to 95 °C).
    fw_kelvin water_temperature;
    // Length of the run; allowed 0.001 to 100000; usually 0.1 to 200; default 1.
    fw_metre length;
    // Flow of the water, at its own temperature; allowed 2.777778e-10 to 0.2777778 (0.001 L/h to 1000000
    // L/h); usually 2.777778e-6 to 0.01388889 (10 L/h to 50000 L/h); NaN means: standing, or the film
    // inside left out.
    fw_cubic_metre_per_second water_flow;
    // Outside diameter of the bare pipe; allowed 0.002 to 0.7 (2 mm to 700 mm); usually 0.006 to 0.17 (6
    // mm to 170 mm); NaN means: as the named tube.
    fw_metre outside_diameter;
    // Thickness of the pipe's wall; 0 for a surface of known temperature; allowed 0 to 0.05 (0 mm to 50
    // mm); NaN means: as the named tube.
    fw_metre wall_thickness;
    // Thermal conductivity of the pipe's wall; allowed 0.02 to 500; NaN means: as the named tube.
    fw_watt_per_metre_kelvin wall_conductivity;
    // Thickness of the insulation; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm); usually 0 to 0.12
    // (0 mm to 120 mm); default 0 (0 mm).
    fw_metre insulation_thickness;
    // Thermal conductivity of the insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    // named insulation at its mean temperature, or bare.
    fw_watt_per_metre_kelvin insulation_conductivity;
    // Emissivity of the outermost surface; allowed 0 to 1; NaN means: as the named finish.
    fw_ratio emissivity;
    // Temperature of the air around the run; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 258.15 to
    // 308.15 (-15 °C to 35 °C).
    fw_kelvin air_temperature;
    // Mean temperature of the surfaces the run radiates to; allowed 213.15 to 363.15 (-60 °C to 90 °C);
    // usually 258.15 to 313.15 (-15 °C to 40 °C); NaN means: as the air.
    fw_kelvin radiant_temperature;
    // Speed of the air across the run; for a run in the wind; allowed 0 to 60; NaN means: still air.
    fw_metre_per_second wind_speed;
    // Atmospheric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 106000 (800
    // mbar to 1060 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute air_pressure;
    // Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    // usually 100000 to 600000 (1 bar to 6 bar); default 200000 (2 bar).
    fw_pascal_absolute water_pressure;
} fw_pipe_heat_loss_input;

// Heat flow per length, SI.
typedef double fw_watt_per_metre;

// Thermal resistance of a length, SI.
typedef double fw_metre_kelvin_per_watt;

// Heat transfer coefficient, SI.
typedef double fw_watt_per_square_metre_kelvin;

// Mass flow, SI.
typedef double fw_kilogram_per_second;

// What comes out of fw_pipe_heat_loss.
typedef struct {
    // Heat lost per metre of run.
    fw_watt_per_metre heat_loss_per_length;
    // Heat lost by the whole run.
    fw_watt heat_loss;
    // Temperature of the outermost surface.
    fw_kelvin surface_temperature;
    // Part of the loss that leaves by convection, per metre.
    fw_watt_per_metre convection_per_length;
    // Part of the loss that leaves by radiation, per metre.
    fw_watt_per_metre radiation_per_length;
    // Resistance of the film inside; 0 where it is left out.
    fw_metre_kelvin_per_watt inside_resistance;
    // Resistance of the pipe's wall.
    fw_metre_kelvin_per_watt wall_resistance;
    // Resistance of all insulation.
    fw_metre_kelvin_per_watt insulation_resistance;
    // Resistance from the outermost surface to the air, radiation included; NaN means: nothing flows.
    fw_metre_kelvin_per_watt outside_resistance;
    // Thermal conductivity of the insulation as used; NaN means: bare.
    fw_watt_per_metre_kelvin insulation_conductivity_used;
    // Outermost diameter.
    fw_metre surface_diameter;
    // Coefficient of convection outside.
    fw_watt_per_square_metre_kelvin convection_coefficient;
    // Coefficient of radiation outside.
    fw_watt_per_square_metre_kelvin radiation_coefficient;
    // Nusselt number outside: on the diameter; on the length for a vertical run.
    fw_ratio nusselt_number;
    // Rayleigh number outside, on the same length; Reynolds times Prandtl number in the wind.
    fw_ratio rayleigh_number;
    // Mass flow of the water; NaN means: no flow given.
    fw_kilogram_per_second mass_flow;
    // Reynolds number of the water; NaN means: no flow given.
    fw_ratio reynolds_number;
    // Coefficient of the film inside, on the bore; NaN means: no flow given.
    fw_watt_per_square_metre_kelvin inside_coefficient;
    // Expected relative accuracy of the coefficient of convection outside.
    fw_ratio convection_scatter;
} fw_pipe_heat_loss_output;

// What goes into fw_pipe_temperature_drop.
typedef struct {
    // Temperature of the water where it enters; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 278.15
    // to 368.15 (5 °C to 95 °C).
    fw_kelvin inlet_temperature;
    // Flow of the water where it enters; allowed 2.777778e-9 to 0.2777778 (0.01 L/h to 1000000 L/h);
    // usually 2.777778e-6 to 0.01388889 (10 L/h to 50000 L/h).
    fw_cubic_metre_per_second water_flow;
    // Length of the run; allowed 0 to 100000; usually 0.1 to 200.
    fw_metre length;
    // Outside diameter of the bare pipe; allowed 0.002 to 0.7 (2 mm to 700 mm); usually 0.006 to 0.17 (6
    // mm to 170 mm); NaN means: as the named tube.
    fw_metre outside_diameter;
    // Thickness of the pipe's wall; 0 for a surface of known temperature; allowed 0 to 0.05 (0 mm to 50
    // mm); NaN means: as the named tube.
    fw_metre wall_thickness;
    // Thermal conductivity of the pipe's wall; allowed 0.02 to 500; NaN means: as the named tube.
    fw_watt_per_metre_kelvin wall_conductivity;
    // Thickness of the insulation; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm); usually 0 to 0.12
    // (0 mm to 120 mm); default 0 (0 mm).
    fw_metre insulation_thickness;
    // Thermal conductivity of the insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    // named insulation at its mean temperature, or bare.
    fw_watt_per_metre_kelvin insulation_conductivity;
    // Emissivity of the outermost surface; allowed 0 to 1; NaN means: as the named finish.
    fw_ratio emissivity;
    // Temperature of the air around the run; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 258.15 to
    // 308.15 (-15 °C to 35 °C).
    fw_kelvin air_temperature;
    // Mean temperature of the surfaces the run radiates to; allowed 213.15 to 363.15 (-60 °C to 90 °C);
    // usually 258.15 to 313.15 (-15 °C to 40 °C); NaN means: as the air.
    fw_kelvin radiant_temperature;
    // Speed of the air across the run; for a run in the wind; allowed 0 to 60; NaN means: still air.
    fw_metre_per_second wind_speed;
    // Atmospheric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 106000 (800
    // mbar to 1060 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute air_pressure;
    // Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    // usually 100000 to 600000 (1 bar to 6 bar); default 200000 (2 bar).
    fw_pascal_absolute water_pressure;
} fw_pipe_temperature_drop_input;

// What comes out of fw_pipe_temperature_drop.
typedef struct {
    // Temperature of the water where it leaves.
    fw_kelvin outlet_temperature;
    // By how much the water cooled; negative where the run takes up heat.
    fw_kelvin_difference temperature_drop;
    // Heat lost by the whole run.
    fw_watt heat_loss;
    // Mass flow.
    fw_kilogram_per_second mass_flow;
    // Heat lost per metre where the water enters.
    fw_watt_per_metre heat_loss_at_inlet;
    // Heat lost per metre where it leaves.
    fw_watt_per_metre heat_loss_at_outlet;
    // Reynolds number where the water enters.
    fw_ratio reynolds_number_at_inlet;
    // Reynolds number where it leaves.
    fw_ratio reynolds_number_at_outlet;
    // Outlet temperature if the loss per kelvin stayed what it is at the inlet: the usual exponential, for
    // comparison.
    fw_kelvin outlet_temperature_by_exponential;
} fw_pipe_temperature_drop_output;

// What goes into fw_pipe_cool_down.
typedef struct {
    // Temperature of water and pipe at the start; allowed 273.15 to 383.15 (0 °C to 110 °C); usually
    // 293.15 to 368.15 (20 °C to 95 °C).
    fw_kelvin start_temperature;
    // Temperature the water is to come to; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 283.15 to
    // 363.15 (10 °C to 90 °C).
    fw_kelvin target_temperature;
    // Time after which the temperature is asked; allowed 0 to 6000000 (0 min to 100000 min); NaN means:
    // not asked.
    fw_second elapsed_time;
    // Length of the run; allowed 0.001 to 100000; usually 0.1 to 200; default 1.
    fw_metre length;
    // Density of the pipe's wall; allowed 500 to 20000; NaN means: as the named tube.
    fw_kilogram_per_cubic_metre wall_density;
    // Specific heat capacity of the pipe's wall; allowed 100 to 5000; NaN means: as the named tube.
    fw_joule_per_kilogram_kelvin wall_heat_capacity;
    // Outside diameter of the bare pipe; allowed 0.002 to 0.7 (2 mm to 700 mm); usually 0.006 to 0.17 (6
    // mm to 170 mm); NaN means: as the named tube.
    fw_metre outside_diameter;
    // Thickness of the pipe's wall; 0 for a surface of known temperature; allowed 0 to 0.05 (0 mm to 50
    // mm); NaN means: as the named tube.
    fw_metre wall_thickness;
    // Thermal conductivity of the pipe's wall; allowed 0.02 to 500; NaN means: as the named tube.
    fw_watt_per_metre_kelvin wall_conductivity;
    // Thickness of the insulation; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm); usually 0 to 0.12
    // (0 mm to 120 mm); default 0 (0 mm).
    fw_metre insulation_thickness;
    // Thermal conductivity of the insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    // named insulation at its mean temperature, or bare.
    fw_watt_per_metre_kelvin insulation_conductivity;
    // Emissivity of the outermost surface; allowed 0 to 1; NaN means: as the named finish.
    fw_ratio emissivity;
    // Temperature of the air around the run; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 258.15 to
    // 308.15 (-15 °C to 35 °C).
    fw_kelvin air_temperature;
    // Mean temperature of the surfaces the run radiates to; allowed 213.15 to 363.15 (-60 °C to 90 °C);
    // usually 258.15 to 313.15 (-15 °C to 40 °C); NaN means: as the air.
    fw_kelvin radiant_temperature;
    // Speed of the air across the run; for a run in the wind; allowed 0 to 60; NaN means: still air.
    fw_metre_per_second wind_speed;
    // Atmospheric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 106000 (800
    // mbar to 1060 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute air_pressure;
    // Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    // usually 100000 to 600000 (1 bar to 6 bar); default 200000 (2 bar).
    fw_pascal_absolute water_pressure;
} fw_pipe_cool_down_input;

// Heat capacity per length, SI.
typedef double fw_joule_per_metre_kelvin;

// What comes out of fw_pipe_cool_down.
typedef struct {
    // Time until the target temperature; NaN means: never reached.
    fw_second time_to_target;
    // Temperature after the time asked; NaN means: not asked.
    fw_kelvin temperature_after;
    // Heat capacity of the water per metre.
    fw_joule_per_metre_kelvin water_capacity;
    // Heat capacity of the pipe's wall per metre.
    fw_joule_per_metre_kelvin wall_capacity;
    // Heat lost per metre at the start.
    fw_watt_per_metre heat_loss_at_start;
    // Time in which the excess over the room would fall to 1/e if the loss per kelvin stayed what it is at
    // the start; NaN means: nothing to lose.
    fw_second time_constant;
    // Time until the target by that constant: the usual exponential, for comparison; NaN means: never
    // reached.
    fw_second time_to_target_by_exponential;
    // Heat that water and pipe of the whole run hold above the temperature at which they come to rest.
    fw_joule heat_held;
} fw_pipe_cool_down_output;

// What goes into fw_critical_radius.
typedef struct {
    // Outside diameter of the bare pipe; allowed 0.0001 to 0.7 (0.1 mm to 700 mm); usually 0.006 to 0.17
    // (6 mm to 170 mm).
    fw_metre outside_diameter;
    // Thickness of the insulation; allowed 0 to 0.5 (0 mm to 500 mm); default 0 (0 mm).
    fw_metre insulation_thickness;
    // Thermal conductivity of the insulation; allowed 0.005 to 5; usually 0.015 to 0.1.
    fw_watt_per_metre_kelvin insulation_conductivity;
    // Coefficient outside, convection and radiation together; allowed 0.1 to 1000; usually 4 to 50;
    // default 10.
    fw_watt_per_square_metre_kelvin outside_coefficient;
} fw_critical_radius_input;

// What comes out of fw_critical_radius.
typedef struct {
    // Outer radius of the insulation at which the loss is greatest.
    fw_metre critical_radius;
    // Loss per metre of run and kelvin between pipe and air, with this insulation.
    fw_watt_per_metre_kelvin loss_per_kelvin;
    // The same of the bare pipe.
    fw_watt_per_metre_kelvin bare_loss_per_kelvin;
    // This loss over the bare pipe's.
    fw_ratio loss_ratio;
    // The greatest loss per kelvin that any thickness of this insulation gives.
    fw_watt_per_metre_kelvin greatest_loss_per_kelvin;
} fw_critical_radius_output;

// What goes into fw_antifreeze_mixture.
typedef struct {
    // Share of glycol by mass; allowed 0 to 0.6 (0 % to 60 %); usually 0.1 to 0.55 (10 % to 55 %).
    fw_ratio glycol_mass_fraction;
    // Temperature; allowed 213.15 to 373.15 (-60 °C to 100 °C); usually 253.15 to 363.15 (-20 °C to 90
    // °C).
    fw_kelvin temperature;
} fw_antifreeze_mixture_input;

// What comes out of fw_antifreeze_mixture.
typedef struct {
    // Density.
    fw_kilogram_per_cubic_metre density;
    // Specific heat capacity.
    fw_joule_per_kilogram_kelvin specific_heat_capacity;
    // Dynamic viscosity.
    fw_pascal_second dynamic_viscosity;
    // Thermal conductivity.
    fw_watt_per_metre_kelvin thermal_conductivity;
    // Volumetric expansion coefficient.
    fw_per_kelvin expansion_coefficient;
    // Prandtl number.
    fw_ratio prandtl_number;
    // Temperature at which ice begins to form.
    fw_kelvin freezing_temperature;
    // Share of glycol by volume, as poured together at 20 °C.
    fw_ratio glycol_volume_fraction;
} fw_antifreeze_mixture_output;

// What goes into fw_boiling_point.
typedef struct {
    // Pressure of the water over that of the air; allowed -90000 to 1e7 (-0.9 bar to 100 bar); usually 0
    // to 1000000 (0 bar to 10 bar); default 0 (0 bar).
    fw_pascal_gauge water_pressure;
    // Pressure of the air; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 70000 to 105000 (700
    // mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
    // Temperature of the water, where the margin to boiling is wanted; allowed 273.15 to 623.15 (0 °C to
    // 350 °C); NaN means: not asked.
    fw_kelvin water_temperature;
} fw_boiling_point_input;

// What comes out of fw_boiling_point.
typedef struct {
    // Absolute pressure.
    fw_pascal_absolute absolute_pressure;
    // Boiling point.
    fw_kelvin boiling_point;
    // Margin from the water's temperature up to boiling; negative where it boils; NaN means: no water
    // temperature given.
    fw_kelvin_difference margin;
} fw_boiling_point_output;

// Mass, SI.
typedef double fw_kilogram;

// Thermal conductance, SI.
typedef double fw_watt_per_kelvin;

// Heat loss per length and kelvin, SI.
typedef double fw_watt_per_metre_kelvin_of_length;

// Heat capacity, SI.
typedef double fw_joule_per_kelvin;

// What goes into fw_cool_down.
typedef struct {
    // Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    fw_kilogram metal_mass;
    // Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    // allowed 100 to 2000; usually 380 to 950; default 500.
    fw_joule_per_kilogram_kelvin metal_specific_heat_capacity;
    // Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    fw_cubic_metre water_content;
    // Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    // default 980.
    fw_kilogram_per_cubic_metre water_density;
    // Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    // 2000 to 4500; usually 3000 to 4250; default 4185.
    fw_joule_per_kilogram_kelvin water_specific_heat_capacity;
    // Conductance of the film between metal and water, where the two are to have temperatures of their
    // own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    fw_watt_per_kelvin film_conductance;
    // Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    // 60.
    fw_watt_per_kelvin casing_loss;
    // Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    fw_watt standing_heat;
    // Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    fw_kilogram_per_second pump_flow;
    // Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    // allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    fw_pascal pump_shut_off_pressure;
    // Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    // resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    // given.
    fw_pascal pressure_drop;
    // Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    fw_metre flow_length;
    // Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    fw_metre return_length;
    // Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    // the named tube and its water.
    fw_joule_per_metre_kelvin pipe_heat_capacity;
    // Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    // means: of the named tube, by convection and radiation.
    fw_watt_per_metre_kelvin_of_length pipe_loss;
    // Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    // usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    fw_metre insulation_thickness;
    // Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    // named insulation at its mean temperature, or bare.
    fw_watt_per_metre_kelvin insulation_conductivity;
    // Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    // 1000000; usually 0 to 40000; default 0.
    fw_watt emitter_output;
    // Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    // default 1.3.
    fw_ratio emitter_exponent;
    // Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    // means: no emitter.
    fw_joule_per_kelvin emitter_heat_capacity;
    // Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    // the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    fw_metre emitter_height;
    // Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    // 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    // (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    fw_joule_per_kelvin room_heat_capacity;
    // Loss of such a room to the outside; allowed 0 to 100000; default 0.
    fw_watt_per_kelvin room_loss;
    // Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    // °C).
    fw_kelvin outdoor_temperature;
    // Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    // 383.15 (5 °C to 110 °C).
    fw_kelvin block_temperature;
    // Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    // the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    // means: as the water of the block.
    fw_kelvin metal_temperature;
    // Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    // means: as the block.
    fw_kelvin circuit_temperature;
    // Temperature to be reached at the point watched; allowed 243.15 to 423.15 (-30 °C to 150 °C); usually
    // 293.15 to 368.15 (20 °C to 95 °C).
    fw_kelvin target_temperature;
} fw_cool_down_input;

// What comes out of fw_cool_down.
typedef struct {
    // Time until the target is reached; NaN means: never, or not found.
    fw_second time;
    // Temperature of the water coming back to the block at that moment; NaN means: no flow, never, or not
    // found.
    fw_kelvin return_temperature;
    // Heat that block, pipes and emitters have released by then; NaN means: never, or not found.
    fw_joule heat_released;
    // Heat given off by the casing; NaN means: never, or not found.
    fw_joule casing_heat;
    // Heat given off by the pipes of all circuits; NaN means: never, or not found.
    fw_joule pipe_heat;
    // Heat given off by the emitters of all circuits; NaN means: never, or not found.
    fw_joule emitter_heat;
    // Heat that block, pipes and emitters still hold over the room; NaN means: never, or not found.
    fw_joule heat_left;
    // Temperature at the point watched after an endless time; NaN means: none: heat is put in and none is
    // lost, or not found.
    fw_kelvin steady_temperature;
    // Share by which heat put in, stored and given off fail to balance; NaN means: never, or not found.
    fw_ratio imbalance;
    // Time until the target is reached with the circuits in their second state; NaN means: no circuit
    // changes over, never, or not found.
    fw_second time_after;
    // Heat given off by the emitters by then; NaN means: no circuit changes over, never, or not found.
    fw_joule emitter_heat_after;
    // Temperature after an endless time in that state; NaN means: no circuit changes over, none, or not
    // found.
    fw_kelvin steady_temperature_after;
} fw_cool_down_output;

// What goes into fw_pump_overrun.
typedef struct {
    // Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    fw_kilogram metal_mass;
    // Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    // allowed 100 to 2000; usually 380 to 950; default 500.
    fw_joule_per_kilogram_kelvin metal_specific_heat_capacity;
    // Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    fw_cubic_metre water_content;
    // Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    // default 980.
    fw_kilogram_per_cubic_metre water_density;
    // Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    // 2000 to 4500; usually 3000 to 4250; default 4185.
    fw_joule_per_kilogram_kelvin water_specific_heat_capacity;
    // Conductance of the film between metal and water, where the two are to have temperatures of their
    // own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    fw_watt_per_kelvin film_conductance;
    // Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    // 60.
    fw_watt_per_kelvin casing_loss;
    // Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    fw_watt standing_heat;
    // Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    fw_kilogram_per_second pump_flow;
    // Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    // allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    fw_pascal pump_shut_off_pressure;
    // Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    // resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    // given.
    fw_pascal pressure_drop;
    // Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    fw_metre flow_length;
    // Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    fw_metre return_length;
    // Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    // the named tube and its water.
    fw_joule_per_metre_kelvin pipe_heat_capacity;
    // Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    // means: of the named tube, by convection and radiation.
    fw_watt_per_metre_kelvin_of_length pipe_loss;
    // Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    // usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    fw_metre insulation_thickness;
    // Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    // named insulation at its mean temperature, or bare.
    fw_watt_per_metre_kelvin insulation_conductivity;
    // Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    // 1000000; usually 0 to 40000; default 0.
    fw_watt emitter_output;
    // Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    // default 1.3.
    fw_ratio emitter_exponent;
    // Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    // means: no emitter.
    fw_joule_per_kelvin emitter_heat_capacity;
    // Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    // the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    fw_metre emitter_height;
    // Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    // 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    // (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    fw_joule_per_kelvin room_heat_capacity;
    // Loss of such a room to the outside; allowed 0 to 100000; default 0.
    fw_watt_per_kelvin room_loss;
    // Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    // °C).
    fw_kelvin outdoor_temperature;
    // Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    // 383.15 (5 °C to 110 °C).
    fw_kelvin block_temperature;
    // Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    // the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    // means: as the water of the block.
    fw_kelvin metal_temperature;
    // Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    // means: as the block.
    fw_kelvin circuit_temperature;
    // Temperature to which the overrun thermostat must fall for the pump to stop; allowed 273.15 to 393.15
    // (0 °C to 120 °C); usually 303.15 to 363.15 (30 °C to 90 °C).
    fw_kelvin overrun_temperature;
    // Differential of the overrun thermostat: so far it must rise again for the pump to start anew;
    // allowed 0.1 to 60; usually 2 to 15; default 6.
    fw_kelvin_difference overrun_differential;
    // Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    // 0.
    fw_second sensor_time_constant;
    // Time after which the pump was seen to stop; allowed 0 to 600000 (0 min to 10000 min); NaN means: not
    // observed.
    fw_second observed_stop_time;
    // Standard uncertainty of that observation; allowed 0 to 3600; default 10.
    fw_second observation_uncertainty;
    // Relative standard uncertainty of the time computed, by what is uncertain in losses and heat
    // capacities; propagate it, or take 15 % (common practice, no source); allowed 0 to 1 (0 % to 100 %);
    // default 0.15 (15 %).
    fw_ratio model_uncertainty;
} fw_pump_overrun_input;

// What comes out of fw_pump_overrun.
typedef struct {
    // Time until the pump stops for the first time; NaN means: never, or not found.
    fw_second stop_time;
    // Temperature of the water in the block at that moment; NaN means: never, or not found.
    fw_kelvin block_temperature_at_stop;
    // Temperature of the returning water just before; NaN means: never, not found, or no flow.
    fw_kelvin return_temperature_at_stop;
    // Heat the overrun has carried out of block, pipes and emitters; NaN means: never, or not found.
    fw_joule heat_rejected;
    // Heat that block, pipes and emitters still hold over the room; NaN means: never, or not found.
    fw_joule heat_left;
    // Highest temperature of the block's water after the pump has stopped for the first time, with the
    // pump then left off; NaN means: never, or not found.
    fw_kelvin peak_after_stop;
    // How often the residual heat starts the pump again.
    fw_ratio restart_count;
    // Time until the pump has stopped for good; NaN means: never, or not found.
    fw_second final_stop_time;
    // Temperature of the thermostat's place after an endless time with the pump running; NaN means: none:
    // heat is put in and none is lost, or not found.
    fw_kelvin steady_temperature;
    // Share by which heat put in, stored and given off fail to balance at the stop; NaN means: never, or
    // not found.
    fw_ratio imbalance;
    // Time until the pump stops for the first time with the circuits in their second state; NaN means: no
    // circuit changes over, never, or not found.
    fw_second stop_time_after;
    // Temperature of the thermostat's place after an endless time with the pump running, in that state;
    // NaN means: no circuit changes over, none, or not found.
    fw_kelvin steady_temperature_after;
    // Observed less computed time, over the standard uncertainty of that difference: within -2 to 2 they
    // agree; NaN means: not observed, never, or not found.
    fw_ratio deviation;
} fw_pump_overrun_output;

// What goes into fw_overshoot.
typedef struct {
    // Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    fw_kilogram metal_mass;
    // Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    // allowed 100 to 2000; usually 380 to 950; default 500.
    fw_joule_per_kilogram_kelvin metal_specific_heat_capacity;
    // Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    fw_cubic_metre water_content;
    // Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    // default 980.
    fw_kilogram_per_cubic_metre water_density;
    // Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    // 2000 to 4500; usually 3000 to 4250; default 4185.
    fw_joule_per_kilogram_kelvin water_specific_heat_capacity;
    // Conductance of the film between metal and water, where the two are to have temperatures of their
    // own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    fw_watt_per_kelvin film_conductance;
    // Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    // 60.
    fw_watt_per_kelvin casing_loss;
    // Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    fw_watt standing_heat;
    // Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    fw_kilogram_per_second pump_flow;
    // Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    // allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    fw_pascal pump_shut_off_pressure;
    // Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    // resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    // given.
    fw_pascal pressure_drop;
    // Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    fw_metre flow_length;
    // Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    fw_metre return_length;
    // Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    // the named tube and its water.
    fw_joule_per_metre_kelvin pipe_heat_capacity;
    // Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    // means: of the named tube, by convection and radiation.
    fw_watt_per_metre_kelvin_of_length pipe_loss;
    // Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    // usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    fw_metre insulation_thickness;
    // Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    // named insulation at its mean temperature, or bare.
    fw_watt_per_metre_kelvin insulation_conductivity;
    // Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    // 1000000; usually 0 to 40000; default 0.
    fw_watt emitter_output;
    // Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    // default 1.3.
    fw_ratio emitter_exponent;
    // Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    // means: no emitter.
    fw_joule_per_kelvin emitter_heat_capacity;
    // Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    // the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    fw_metre emitter_height;
    // Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    // 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    // (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    fw_joule_per_kelvin room_heat_capacity;
    // Loss of such a room to the outside; allowed 0 to 100000; default 0.
    fw_watt_per_kelvin room_loss;
    // Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    // °C).
    fw_kelvin outdoor_temperature;
    // Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    // 383.15 (5 °C to 110 °C).
    fw_kelvin block_temperature;
    // Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    // the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    // means: as the water of the block.
    fw_kelvin metal_temperature;
    // Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    // means: as the block.
    fw_kelvin circuit_temperature;
    // Output of the burner to the block; the most it gives, where it has stages or modulates; allowed 10
    // to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000 (1 kW to 500 kW).
    fw_watt burner_output;
    // Output of the low stage, or the least of a modulating burner; allowed 10 to 1e7 (0.01 kW to 10000
    // kW); NaN means: one output only.
    fw_watt low_output;
    // How far below the cut-out the high stage gives way to the low one, or a modulating burner begins to
    // turn down; allowed 0.1 to 60; default 5.
    fw_kelvin_difference turn_down_band;
    // Temperature at which the control thermostat stops the burner, on rising temperature; allowed 273.15
    // to 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    fw_kelvin cut_out_temperature;
    // Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    // 0.
    fw_second sensor_time_constant;
    // Operating value of the limit thermostat, whose sensor sits in the same pocket: it locks the burner
    // out until reset by hand; allowed 303.15 to 433.15 (30 °C to 160 °C); usually 353.15 to 388.15 (80 °C
    // to 115 °C); NaN means: no limit thermostat.
    fw_kelvin limit_temperature;
} fw_overshoot_input;

// What comes out of fw_overshoot.
typedef struct {
    // Time until the thermostat stops the burner; NaN means: the burner never stops, or not found.
    fw_second firing_time;
    // Temperature of the block's water as the burner stops; NaN means: the burner never stops, or not
    // found.
    fw_kelvin temperature_at_cut_out;
    // Heat the metal then holds over the water; NaN means: the burner never stops, or not found.
    fw_joule residual_heat;
    // Highest temperature of the block's water if the pump stops with the burner; NaN means: the burner
    // never stops, or not found.
    fw_kelvin peak_with_pump_stopped;
    // Time of that peak after the burner has stopped; NaN means: the burner never stops, or not found.
    fw_second peak_time_with_pump_stopped;
    // Highest temperature of the block's water if the pump runs on; NaN means: the burner never stops, or
    // not found.
    fw_kelvin peak_with_pump_running;
    // Overshoot over the cut-out with the pump stopped; NaN means: the burner never stops, or not found.
    fw_kelvin_difference overshoot_with_pump_stopped;
    // Overshoot over the cut-out with the pump running on; NaN means: the burner never stops, or not
    // found.
    fw_kelvin_difference overshoot_with_pump_running;
    // Limit less the peak with the pump stopped; negative where the limit would lock out; NaN means: no
    // limit given, or no peak found.
    fw_kelvin_difference margin_with_pump_stopped;
    // Limit less the peak with the pump running on; NaN means: no limit given, or no peak found.
    fw_kelvin_difference margin_with_pump_running;
    // Temperature the block's water would reach if the burner burned on; NaN means: none: no loss, or not
    // found.
    fw_kelvin steady_temperature;
} fw_overshoot_output;

// What goes into fw_warm_up.
typedef struct {
    // Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    fw_kilogram metal_mass;
    // Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    // allowed 100 to 2000; usually 380 to 950; default 500.
    fw_joule_per_kilogram_kelvin metal_specific_heat_capacity;
    // Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    fw_cubic_metre water_content;
    // Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    // default 980.
    fw_kilogram_per_cubic_metre water_density;
    // Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    // 2000 to 4500; usually 3000 to 4250; default 4185.
    fw_joule_per_kilogram_kelvin water_specific_heat_capacity;
    // Conductance of the film between metal and water, where the two are to have temperatures of their
    // own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    fw_watt_per_kelvin film_conductance;
    // Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    // 60.
    fw_watt_per_kelvin casing_loss;
    // Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    fw_watt standing_heat;
    // Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    fw_kilogram_per_second pump_flow;
    // Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    // allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    fw_pascal pump_shut_off_pressure;
    // Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    // resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    // given.
    fw_pascal pressure_drop;
    // Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    fw_metre flow_length;
    // Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    fw_metre return_length;
    // Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    // the named tube and its water.
    fw_joule_per_metre_kelvin pipe_heat_capacity;
    // Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    // means: of the named tube, by convection and radiation.
    fw_watt_per_metre_kelvin_of_length pipe_loss;
    // Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    // usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    fw_metre insulation_thickness;
    // Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    // named insulation at its mean temperature, or bare.
    fw_watt_per_metre_kelvin insulation_conductivity;
    // Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    // 1000000; usually 0 to 40000; default 0.
    fw_watt emitter_output;
    // Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    // default 1.3.
    fw_ratio emitter_exponent;
    // Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    // means: no emitter.
    fw_joule_per_kelvin emitter_heat_capacity;
    // Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    // the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    fw_metre emitter_height;
    // Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    // 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    // (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    fw_joule_per_kelvin room_heat_capacity;
    // Loss of such a room to the outside; allowed 0 to 100000; default 0.
    fw_watt_per_kelvin room_loss;
    // Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    // °C).
    fw_kelvin outdoor_temperature;
    // Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    // 383.15 (5 °C to 110 °C).
    fw_kelvin block_temperature;
    // Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    // the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    // means: as the water of the block.
    fw_kelvin metal_temperature;
    // Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    // means: as the block.
    fw_kelvin circuit_temperature;
    // Output of the burner to the block; the most it gives, where it has stages or modulates; allowed 10
    // to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000 (1 kW to 500 kW).
    fw_watt burner_output;
    // Output of the low stage, or the least of a modulating burner; allowed 10 to 1e7 (0.01 kW to 10000
    // kW); NaN means: one output only.
    fw_watt low_output;
    // How far below the cut-out the high stage gives way to the low one, or a modulating burner begins to
    // turn down; allowed 0.1 to 60; default 5.
    fw_kelvin_difference turn_down_band;
    // Temperature at which the control thermostat stops the burner, on rising temperature; allowed 273.15
    // to 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    fw_kelvin cut_out_temperature;
    // Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    // 0.
    fw_second sensor_time_constant;
    // Operating value of the limit thermostat, whose sensor sits in the same pocket: it locks the burner
    // out until reset by hand; allowed 303.15 to 433.15 (30 °C to 160 °C); usually 353.15 to 388.15 (80 °C
    // to 115 °C); NaN means: no limit thermostat.
    fw_kelvin limit_temperature;
    // Differential of the control thermostat; allowed 0.1 to 60; usually 2 to 15; default 8.
    fw_kelvin_difference control_differential;
    // Least time the burner stays off; allowed 0 to 7200 (0 min to 120 min); default 0 (0 min).
    fw_second anti_cycling_delay;
    // Temperature to be reached at the point watched; allowed 243.15 to 423.15 (-30 °C to 150 °C); usually
    // 293.15 to 363.15 (20 °C to 90 °C).
    fw_kelvin target_temperature;
} fw_warm_up_input;

// What comes out of fw_warm_up.
typedef struct {
    // Time until the target is reached; NaN means: never, or not found.
    fw_second time;
    // Heat the burner has given to the block by then; NaN means: never, or not found.
    fw_joule heat_put_in;
    // Heat that block, pipes and emitters have taken up; NaN means: never, or not found.
    fw_joule heat_stored;
    // Heat given off by casing and pipes; NaN means: never, or not found.
    fw_joule heat_lost;
    // Heat given off by the emitters; NaN means: never, or not found.
    fw_joule emitter_heat;
    // Temperature of the block's water at that moment; NaN means: never, or not found.
    fw_kelvin block_temperature_then;
    // How often the burner has stopped on the way.
    fw_ratio stop_count;
    // Highest temperature the point watched ever gets to, at rest or in a cycle that repeats; NaN means:
    // the target is reached, or not found.
    fw_kelvin highest_temperature;
    // Time at which the limit thermostat locks the burner out; NaN means: it does not trip on the way.
    fw_second limit_trip_time;
    // Share by which heat put in, stored and given off fail to balance; NaN means: never, or not found.
    fw_ratio imbalance;
} fw_warm_up_output;

// What goes into fw_circuit_cycling.
typedef struct {
    // Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    fw_kilogram metal_mass;
    // Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    // allowed 100 to 2000; usually 380 to 950; default 500.
    fw_joule_per_kilogram_kelvin metal_specific_heat_capacity;
    // Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    fw_cubic_metre water_content;
    // Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    // default 980.
    fw_kilogram_per_cubic_metre water_density;
    // Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    // 2000 to 4500; usually 3000 to 4250; default 4185.
    fw_joule_per_kilogram_kelvin water_specific_heat_capacity;
    // Conductance of the film between metal and water, where the two are to have temperatures of their
    // own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    fw_watt_per_kelvin film_conductance;
    // Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    // 60.
    fw_watt_per_kelvin casing_loss;
    // Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    fw_watt standing_heat;
    // Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    fw_kilogram_per_second pump_flow;
    // Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    // allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    fw_pascal pump_shut_off_pressure;
    // Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    // resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    // given.
    fw_pascal pressure_drop;
    // Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    fw_metre flow_length;
    // Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    fw_metre return_length;
    // Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    // the named tube and its water.
    fw_joule_per_metre_kelvin pipe_heat_capacity;
    // Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    // means: of the named tube, by convection and radiation.
    fw_watt_per_metre_kelvin_of_length pipe_loss;
    // Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    // usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    fw_metre insulation_thickness;
    // Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    // named insulation at its mean temperature, or bare.
    fw_watt_per_metre_kelvin insulation_conductivity;
    // Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    // 1000000; usually 0 to 40000; default 0.
    fw_watt emitter_output;
    // Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    // default 1.3.
    fw_ratio emitter_exponent;
    // Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    // means: no emitter.
    fw_joule_per_kelvin emitter_heat_capacity;
    // Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    // the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    fw_metre emitter_height;
    // Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    // 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    // (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    fw_joule_per_kelvin room_heat_capacity;
    // Loss of such a room to the outside; allowed 0 to 100000; default 0.
    fw_watt_per_kelvin room_loss;
    // Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    // °C).
    fw_kelvin outdoor_temperature;
    // Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    // 383.15 (5 °C to 110 °C).
    fw_kelvin block_temperature;
    // Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    // the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    // means: as the water of the block.
    fw_kelvin metal_temperature;
    // Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    // means: as the block.
    fw_kelvin circuit_temperature;
    // Output of the burner to the block; the most it gives, where it has stages or modulates; allowed 10
    // to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000 (1 kW to 500 kW).
    fw_watt burner_output;
    // Output of the low stage, or the least of a modulating burner; allowed 10 to 1e7 (0.01 kW to 10000
    // kW); NaN means: one output only.
    fw_watt low_output;
    // How far below the cut-out the high stage gives way to the low one, or a modulating burner begins to
    // turn down; allowed 0.1 to 60; default 5.
    fw_kelvin_difference turn_down_band;
    // Temperature at which the control thermostat stops the burner, on rising temperature; allowed 273.15
    // to 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    fw_kelvin cut_out_temperature;
    // Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    // 0.
    fw_second sensor_time_constant;
    // Operating value of the limit thermostat, whose sensor sits in the same pocket: it locks the burner
    // out until reset by hand; allowed 303.15 to 433.15 (30 °C to 160 °C); usually 353.15 to 388.15 (80 °C
    // to 115 °C); NaN means: no limit thermostat.
    fw_kelvin limit_temperature;
    // Temperature at which it lights the burner again, on falling temperature; allowed 253.15 to 423.15
    // (-20 °C to 150 °C); usually 293.15 to 363.15 (20 °C to 90 °C).
    fw_kelvin cut_in_temperature;
    // Least time the burner stays off; allowed 0 to 7200 (0 min to 120 min); default 0 (0 min).
    fw_second anti_cycling_delay;
} fw_circuit_cycling_input;

// Rate, SI.
typedef double fw_per_second;

// What comes out of fw_circuit_cycling.
typedef struct {
    // Time the burner burns in each cycle; NaN means: no repeating cycle, or not found.
    fw_second on_time;
    // Time it stands in each cycle; NaN means: no repeating cycle, or not found.
    fw_second off_time;
    // Time of a whole cycle; NaN means: no repeating cycle, or not found.
    fw_second period;
    // Starts per hour; NaN means: no repeating cycle, or not found.
    fw_per_second start_rate;
    // Share of the time the burner burns; NaN means: no repeating cycle, or not found.
    fw_ratio duty;
    // Mean heat from the burner over a cycle; what it gives at rest, where it burns without stopping; NaN
    // means: no repeating cycle, or not found.
    fw_watt mean_output;
    // Temperature of the block's water at which the plant comes to rest, where the burner burns or stands
    // without end; NaN means: burner or stages cycle, or not found.
    fw_kelvin steady_temperature;
    // Cycles until they repeat.
    fw_ratio settling_count;
    // Time followed: until the cycles repeat, or the plant comes to rest, or 500 cycles or a week are
    // over; NaN means: the sum did not end.
    fw_second followed_time;
    // Time of a whole cycle of the stages, where these change over while the burner burns without
    // stopping; NaN means: the stages do not cycle by themselves.
    fw_second stage_period;
    // Time at which the limit thermostat locks the burner out; NaN means: it does not trip.
    fw_second limit_trip_time;
} fw_circuit_cycling_output;

// What goes into fw_cool_down_fit.
typedef struct {
    // Heat capacity of all that cooled together; with it the loss is found; allowed 1 to 1e9 (0.001 kJ/K
    // to 1000000 kJ/K); NaN means: not known.
    fw_joule_per_kelvin heat_capacity;
    // Standard uncertainty of that heat capacity; allowed 0 to 1e9 (0 kJ/K to 1000000 kJ/K); default 0 (0
    // kJ/K).
    fw_joule_per_kelvin heat_capacity_uncertainty;
    // Loss conductance expected at 50 K over the room: compared where the heat capacity is known, else the
    // heat capacity is found from it; allowed 0.0001 to 100000; NaN means: not known.
    fw_watt_per_kelvin expected_loss_conductance;
    // Standard uncertainty of that loss conductance; allowed 0 to 100000; default 0.
    fw_watt_per_kelvin loss_conductance_uncertainty;
    // Exponent with which the loss falls off: 1 for an insulated block or steady flow, 1.25 for a bare
    // one, about 1.3 for radiators; allowed 1 to 2; default 1.
    fw_ratio loss_exponent;
    // Room temperature; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to 308.15 (0 °C to 35
    // °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Standard uncertainty of the room temperature; allowed 0 to 20; default 0.5.
    fw_kelvin_difference room_temperature_uncertainty;
    // Standard uncertainty of one temperature reading (resolution and scatter; a fixed error of the probe
    // is not in it); allowed 0.001 to 20; usually 0.05 to 2; default 0.3.
    fw_kelvin_difference reading_uncertainty;
} fw_cool_down_fit_input;

// What comes out of fw_cool_down_fit.
typedef struct {
    // Time constant at 50 K over the room: heat capacity over loss conductance.
    fw_second time_constant;
    // Its standard uncertainty.
    fw_second time_constant_uncertainty;
    // Loss conductance at 50 K over the room; NaN means: no heat capacity given.
    fw_watt_per_kelvin loss_conductance;
    // Its standard uncertainty; NaN means: no heat capacity given.
    fw_watt_per_kelvin fitted_loss_uncertainty;
    // Heat capacity found from the loss conductance expected; NaN means: the heat capacity is given.
    fw_joule_per_kelvin fitted_heat_capacity;
    // Its standard uncertainty; NaN means: the heat capacity is given.
    fw_joule_per_kelvin fitted_heat_capacity_uncertainty;
    // Fitted less expected loss conductance, over the standard uncertainty of that difference; NaN means:
    // nothing to compare.
    fw_ratio deviation;
    // Temperature at the time zero of the log, by the fit.
    fw_kelvin start_temperature;
    // Root mean square of reading less fit, with two fitted values allowed for.
    fw_kelvin_difference residual;
    // That over the uncertainty stated for a reading: near 1 where the model fits.
    fw_ratio residual_ratio;
} fw_cool_down_fit_output;

// What goes into fw_touch_wait.
typedef struct {
    // Temperature of the surface now; allowed 243.15 to 673.15 (-30 °C to 400 °C); usually 293.15 to
    // 383.15 (20 °C to 110 °C).
    fw_kelvin surface_temperature;
    // Room temperature; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to 308.15 (0 °C to 35
    // °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Time constant of the cool-down, from `block_cool_down`, `cool_down_fit` or `pipe_cool_down`; allowed
    // 0.6 to 6000000 (0.01 min to 100000 min); usually 60 to 60000 (1 min to 1000 min).
    fw_second time_constant;
    // Contact temperature not to be exceeded, by the policy named; allowed 293.15 to 373.15 (20 °C to 100
    // °C); usually 313.15 to 343.15 (40 °C to 70 °C).
    fw_kelvin contact_temperature;
} fw_touch_wait_input;

// What comes out of fw_touch_wait.
typedef struct {
    // Time until the surface has fallen to the contact temperature; zero where it has; NaN means: never.
    fw_second wait;
    // Surface less contact temperature now; negative where it may be touched.
    fw_kelvin_difference excess;
} fw_touch_wait_output;

// What goes into fw_installation_volume.
typedef struct {
    // Volume of gas in the meter; from its maker or the local procedure; allowed 0 to 10 (0 L to 10000 L);
    // default 0 (0 L).
    fw_cubic_metre meter_volume;
    // Share of the pipe volume to add for fittings; from the local procedure; allowed 0 to 1 (0 % to 100
    // %); default 0 (0 %).
    fw_ratio fittings_allowance;
    // Volume of vessels and appliances under test; allowed 0 to 10 (0 L to 10000 L); default 0 (0 L).
    fw_cubic_metre other_volume;
} fw_installation_volume_input;

// What comes out of fw_installation_volume.
typedef struct {
    // Volume of the pipes.
    fw_cubic_metre pipe_volume;
    // Allowance for fittings.
    fw_cubic_metre fittings_volume;
    // Volume in all.
    fw_cubic_metre installation_volume;
} fw_installation_volume_output;

// What goes into fw_tightness_test.
typedef struct {
    // Volume of gas under test: pipes, fittings and meter; allowed 1e-6 to 100 (0.001 L to 100000 L);
    // usually 0.0005 to 1 (0.5 L to 1000 L).
    fw_cubic_metre installation_volume;
    // Gauge pressure at the start of the test; allowed 10 to 1000000 (0.1 mbar to 10000 mbar); usually 500
    // to 20000 (5 mbar to 200 mbar).
    fw_pascal_gauge test_pressure;
    // Fall of the gauge reading over the test; negative where it rose; allowed -100000 to 1000000 (-1000
    // mbar to 10000 mbar); usually -0.1 to 2000 (-0.001 mbar to 20 mbar).
    fw_pascal pressure_drop;
    // Duration of the test, after the gas has settled; allowed 1 to 864000; usually 60 to 7200.
    fw_second test_duration;
    // Barometric pressure at the start; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    // 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
    // Temperature of the gas at the start; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to
    // 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    fw_kelvin gas_temperature;
    // Rise of the gas temperature over the test; allowed -20 to 20; usually -2 to 2; default 0.
    fw_kelvin_difference temperature_rise;
    // Rise of the barometer over the test; allowed -5000 to 5000 (-50 mbar to 50 mbar); usually -200 to
    // 200 (-2 mbar to 2 mbar); default 0 (0 mbar).
    fw_pascal barometer_rise;
    // Smallest movement of the gauge that can be read; allowed 0.0001 to 10000 (1e-6 mbar to 100 mbar);
    // usually 0.1 to 100 (0.001 mbar to 1 mbar); NaN means: not stated.
    fw_pascal readable_movement;
    // Bore of the limbs of a liquid gauge, whose moving column takes up volume; allowed 0.0005 to 0.05
    // (0.5 mm to 50 mm); NaN means: no liquid gauge.
    fw_metre gauge_bore;
    // Gross calorific value of the gas at the reference conditions below; allowed 1000000 to 2e8 (1 MJ/m³
    // to 200 MJ/m³); NaN means: not stated.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Reference temperature to which the leak is stated; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    // 288.15 (15 °C).
    fw_kelvin reference_temperature;
    // Reference pressure to which the leak is stated; allowed 90000 to 110000 (900 mbar to 1100 mbar);
    // default 101325 (1013.25 mbar).
    fw_pascal_absolute reference_pressure;
} fw_tightness_test_input;

// Amount of substance, SI.
typedef double fw_mole;

// Pressure per temperature difference, SI.
typedef double fw_pascal_per_kelvin;

// What comes out of fw_tightness_test.
typedef struct {
    // Amount of gas lost, with all corrections; negative where gas came in.
    fw_mole amount_lost;
    // Leak at reference conditions, with all corrections, as the mean over the test.
    fw_cubic_metre_per_second_at_reference_conditions leak_rate;
    // Leak at reference conditions from the bare reading, temperature and barometer taken as steady.
    fw_cubic_metre_per_second_at_reference_conditions leak_rate_uncorrected;
    // Leak as it flows at the pressure and temperature in the installation.
    fw_cubic_metre_per_second_at_the_meter leak_rate_in_pipe;
    // Leak at the start of the test, if it goes with the gauge pressure; NaN means: the gauge fell to
    // zero.
    fw_cubic_metre_per_second_at_reference_conditions leak_rate_at_start;
    // Rate at which the gauge pressure dies away, if the leak goes with it; NaN means: the gauge fell to
    // zero.
    fw_per_second decay_rate;
    // Heat that leaks away; NaN means: no calorific value stated.
    fw_watt heat_lost_gross;
    // Change of the gauge reading that the temperature alone would make.
    fw_pascal temperature_effect;
    // Change of the gauge reading for each kelvin.
    fw_pascal_per_kelvin temperature_sensitivity;
    // Change of the gauge reading that the barometer alone would make.
    fw_pascal barometer_effect;
    // Volume by which the liquid of the gauge moved in; NaN means: no liquid gauge.
    fw_cubic_metre gauge_volume;
    // Drop that the moving liquid has hidden; NaN means: no liquid gauge.
    fw_pascal gauge_effect;
    // True loss over loss as read, for the moving liquid alone; NaN means: no liquid gauge, or no drop.
    fw_ratio gauge_factor;
    // Least leak that this gauge would have shown in this test; NaN means: no readable movement stated.
    fw_cubic_metre_per_second_at_reference_conditions smallest_detectable_leak;
} fw_tightness_test_output;

// What goes into fw_tightness_plan.
typedef struct {
    // Volume of gas under test: pipes, fittings and meter; allowed 1e-6 to 100 (0.001 L to 100000 L);
    // usually 0.0005 to 1 (0.5 L to 1000 L).
    fw_cubic_metre installation_volume;
    // Smallest movement of the gauge that can be read; allowed 0.0001 to 10000 (1e-6 mbar to 100 mbar);
    // usually 0.1 to 100 (0.001 mbar to 1 mbar).
    fw_pascal readable_movement;
    // Duration intended; allowed 1 to 864000; usually 60 to 7200; NaN means: not stated.
    fw_second test_duration;
    // Leak that must not go unseen, at reference conditions; set by the local procedure; allowed
    // 2.777778e-13 to 0.2777778 (1e-6 L/h to 1000000 L/h); NaN means: not stated.
    fw_cubic_metre_per_second_at_reference_conditions leak_limit;
    // Change of gas temperature to be feared during the test; allowed 0 to 20; usually 0 to 2; default 0.
    fw_kelvin_difference temperature_change;
    // Gauge pressure of the test; allowed 10 to 1000000 (0.1 mbar to 10000 mbar); usually 500 to 20000 (5
    // mbar to 200 mbar); default 2000 (20 mbar).
    fw_pascal_gauge test_pressure;
    // Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    // mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
    // Temperature of the gas; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to 308.15 (-10 °C
    // to 35 °C); default 288.15 (15 °C).
    fw_kelvin gas_temperature;
    // Reference temperature to which leaks are stated; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    // 288.15 (15 °C).
    fw_kelvin reference_temperature;
    // Reference pressure to which leaks are stated; allowed 90000 to 110000 (900 mbar to 1100 mbar);
    // default 101325 (1013.25 mbar).
    fw_pascal_absolute reference_pressure;
} fw_tightness_plan_input;

// What comes out of fw_tightness_plan.
typedef struct {
    // Least leak that moves the gauge by the readable movement within the duration; NaN means: no duration
    // stated.
    fw_cubic_metre_per_second_at_reference_conditions smallest_detectable_leak;
    // Time in which a leak at the limit moves the gauge by the readable movement; NaN means: no leak limit
    // stated.
    fw_second time_needed;
    // Drop that a leak at the limit makes within the duration; NaN means: no leak limit or no duration
    // stated.
    fw_pascal drop_at_limit;
    // Change of the gauge reading for each kelvin.
    fw_pascal_per_kelvin temperature_sensitivity;
    // Change of the gauge reading by the temperature change feared.
    fw_pascal temperature_effect;
    // Leak that the temperature change feared would feign or hide within the duration; NaN means: no
    // duration stated.
    fw_cubic_metre_per_second_at_reference_conditions leak_masked_by_temperature;
} fw_tightness_plan_output;

// What goes into fw_let_by.
typedef struct {
    // Volume of gas behind the valve: pipes, fittings and meter; allowed 1e-6 to 100 (0.001 L to 100000
    // L); usually 0.0005 to 1 (0.5 L to 1000 L).
    fw_cubic_metre installation_volume;
    // Gauge pressure at the start, lower than before the valve; allowed 0 to 1000000 (0 mbar to 10000
    // mbar); usually 200 to 1500 (2 mbar to 15 mbar).
    fw_pascal_gauge start_pressure;
    // Rise of the gauge reading; negative where it fell; allowed -100000 to 100000 (-1000 mbar to 1000
    // mbar); usually -0.1 to 1000 (-0.001 mbar to 10 mbar).
    fw_pascal pressure_rise;
    // Duration of watching; allowed 1 to 864000; usually 30 to 3600.
    fw_second test_duration;
    // Smallest movement of the gauge that can be read; allowed 0.0001 to 10000 (1e-6 mbar to 100 mbar);
    // usually 0.1 to 100 (0.001 mbar to 1 mbar); NaN means: not stated.
    fw_pascal readable_movement;
    // Rise of the gas temperature meanwhile; allowed -20 to 20; usually -2 to 2; default 0.
    fw_kelvin_difference temperature_rise;
    // Rise of the barometer meanwhile; allowed -5000 to 5000 (-50 mbar to 50 mbar); usually -200 to 200
    // (-2 mbar to 2 mbar); default 0 (0 mbar).
    fw_pascal barometer_rise;
    // Barometric pressure at the start; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    // 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
    // Temperature of the gas at the start; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to
    // 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    fw_kelvin gas_temperature;
    // Reference temperature to which the flow is stated; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    // 288.15 (15 °C).
    fw_kelvin reference_temperature;
    // Reference pressure to which the flow is stated; allowed 90000 to 110000 (900 mbar to 1100 mbar);
    // default 101325 (1013.25 mbar).
    fw_pascal_absolute reference_pressure;
} fw_let_by_input;

// What comes out of fw_let_by.
typedef struct {
    // Gas that the valve lets by, less any that leaked away meanwhile; at reference conditions.
    fw_cubic_metre_per_second_at_reference_conditions let_by_rate;
    // Rise that is left after temperature and barometer are taken out.
    fw_pascal corrected_rise;
    // Least flow that this gauge would have shown; NaN means: no readable movement stated.
    fw_cubic_metre_per_second_at_reference_conditions smallest_detectable_flow;
} fw_let_by_output;

// What goes into fw_leak_scaling.
typedef struct {
    // Leak as measured, with the test gas; allowed 0 to 0.2777778 (0 L/h to 1000000 L/h); default
    // 2.777778e-7 (1 L/h).
    fw_cubic_metre_per_second_at_reference_conditions leak_rate;
    // Gauge pressure of the test; allowed 1 to 1000000 (0.01 mbar to 10000 mbar); usually 500 to 100000 (5
    // mbar to 1000 mbar).
    fw_pascal_gauge test_pressure;
    // Gauge pressure in operation; allowed 1 to 1000000 (0.01 mbar to 10000 mbar); usually 500 to 100000
    // (5 mbar to 1000 mbar).
    fw_pascal_gauge operating_pressure;
    // Density over that of air of the gas tested with; left out, that of the test gas named; allowed 0.05
    // to 5; NaN means: that of the test gas.
    fw_ratio test_relative_density;
    // Density over that of air of the gas in operation; left out, that of the gas named; allowed 0.05 to
    // 5; NaN means: that of the operating gas.
    fw_ratio operating_relative_density;
    // Viscosity of the gas tested with; left out, that of the test gas named; allowed 1e-6 to 0.0001; NaN
    // means: that of the test gas.
    fw_pascal_second test_viscosity;
    // Viscosity of the gas in operation; left out, that of the gas named; allowed 1e-6 to 0.0001; NaN
    // means: that of the operating gas.
    fw_pascal_second operating_viscosity;
    // Temperature of gas and air; allowed 233.15 to 333.15 (-40 °C to 60 °C); default 288.15 (15 °C).
    fw_kelvin temperature;
} fw_leak_scaling_input;

// What comes out of fw_leak_scaling.
typedef struct {
    // Leak if it seeps through a long fine path, where viscosity rules.
    fw_cubic_metre_per_second_at_reference_conditions leak_rate_laminar;
    // Leak if it blows through a short hole, where density rules.
    fw_cubic_metre_per_second_at_reference_conditions leak_rate_orifice;
    // Laminar leak of the operating gas over that of the test gas at one pressure.
    fw_ratio gas_ratio_laminar;
    // Orifice leak of the operating gas over that of the test gas at one pressure.
    fw_ratio gas_ratio_orifice;
    // Viscosity of the operating gas at the temperature.
    fw_pascal_second operating_viscosity;
    // Viscosity of air at the temperature.
    fw_pascal_second air_viscosity;
    // Density of air at the temperature and one standard atmosphere.
    fw_kilogram_per_cubic_metre air_density;
} fw_leak_scaling_output;

// What goes into fw_leak_class.
typedef struct {
    // Leak at the conditions that the classes are stated for; allowed 0 to 0.2777778 (0 L/h to 1000000
    // L/h); usually 0 to 2.777778e-5 (0 L/h to 100 L/h).
    fw_cubic_metre_per_second_at_reference_conditions leak_rate;
    // Least leak that the test could show; allowed 0 to 0.2777778 (0 L/h to 1000000 L/h); NaN means: not
    // stated.
    fw_cubic_metre_per_second_at_reference_conditions smallest_detectable_leak;
} fw_leak_class_input;

// What comes out of fw_leak_class.
typedef struct {
    // Number of the class in the caller's list, from 1.
    fw_ratio class_number;
    // Leak at which the class begins; it belongs to the class.
    fw_cubic_metre_per_second_at_reference_conditions class_from;
    // Leak at which the next class begins; NaN means: the last class has no end.
    fw_cubic_metre_per_second_at_reference_conditions class_below;
} fw_leak_class_output;

// What goes into fw_purge.
typedef struct {
    // Volume to purge: pipes, fittings and meter; allowed 1e-6 to 1000 (0.001 L to 1000000 L); usually
    // 0.0005 to 10 (0.5 L to 10000 L).
    fw_cubic_metre installation_volume;
    // Volume to pass for each volume purged; set by the local procedure; allowed 1 to 20; usually 1 to 5.
    fw_ratio purge_factor;
    // Volume of one revolution of the test dial, or of one step of the index; allowed 1e-6 to 10 (0.001 L
    // to 10000 L); NaN means: not stated.
    fw_cubic_metre_at_the_meter dial_volume;
    // Flow at which the gas is passed; allowed 2.777778e-8 to 27.77778 (0.0001 m³/h to 100000 m³/h); NaN
    // means: not stated.
    fw_cubic_metre_per_second_at_the_meter purge_flow;
} fw_purge_input;

// What comes out of fw_purge.
typedef struct {
    // Volume to pass.
    fw_cubic_metre_at_the_meter purge_volume;
    // Revolutions of the test dial, or steps of the index; NaN means: no dial volume stated.
    fw_ratio dial_revolutions;
    // Time to pass it; NaN means: no flow stated.
    fw_second purge_time;
} fw_purge_output;

// What goes into fw_purge_velocity.
typedef struct {
    // Bore of the widest pipe purged; allowed 0.002 to 2 (2 mm to 2000 mm); usually 0.008 to 0.3 (8 mm to
    // 300 mm).
    fw_metre bore;
    // Velocity to be kept; set by the local procedure; allowed 0.01 to 30; usually 0.3 to 3.
    fw_metre_per_second velocity;
    // Length of the pipe; allowed 0.01 to 10000.
    fw_metre length;
} fw_purge_velocity_input;

// What comes out of fw_purge_velocity.
typedef struct {
    // Flow that gives the velocity.
    fw_cubic_metre_per_second_at_the_meter purge_flow;
    // Time in which the front passes the length.
    fw_second travel_time;
} fw_purge_velocity_output;

// Area, SI.
typedef double fw_square_metre;

// What goes into fw_block_cool_down.
typedef struct {
    // Heat capacity of all that cools together: metal and water; allowed 1 to 1e9 (0.001 kJ/K to 1000000
    // kJ/K); usually 1000 to 2000000 (1 kJ/K to 2000 kJ/K).
    fw_joule_per_kelvin heat_capacity;
    // Loss in proportion to the temperature difference: casing, insulated pipe, a circuit with a steady
    // flow; allowed 0 to 100000; default 0.
    fw_watt_per_kelvin loss_conductance;
    // Loss by natural convection (or an emitter's output) at 50 K over the room; allowed 0 to 1000000;
    // default 0.
    fw_watt convective_loss;
    // Exponent of that loss: 1.25 for laminar natural convection, about 1.3 for radiators; allowed 1 to 2;
    // default 1.25.
    fw_ratio loss_exponent;
    // Bare area that radiates to surfaces at room temperature; allowed 0 to 1000; default 0.
    fw_square_metre radiating_area;
    // Emissivity of that area; allowed 0 to 1; default 0.9.
    fw_ratio emissivity;
    // Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; default 0.
    fw_watt standing_heat;
    // Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    // 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Temperature at the start; allowed 243.15 to 573.15 (-30 °C to 300 °C); usually 293.15 to 383.15 (20
    // °C to 110 °C).
    fw_kelvin start_temperature;
    // Temperature to be reached; allowed 243.15 to 573.15 (-30 °C to 300 °C); usually 288.15 to 373.15 (15
    // °C to 100 °C).
    fw_kelvin target_temperature;
} fw_block_cool_down_input;

// What comes out of fw_block_cool_down.
typedef struct {
    // Time until the target is reached; NaN means: never.
    fw_second time;
    // Heat the mass has released by then; NaN means: never.
    fw_joule heat_released;
    // Loss at the start.
    fw_watt loss_at_start;
    // Loss at the target temperature.
    fw_watt loss_at_target;
    // Heat capacity times temperature difference over loss, at the start; NaN means: the mass is at room
    // temperature.
    fw_second time_constant;
    // Time by the exponential with that time constant: too short where the loss falls faster than the
    // difference; NaN means: never.
    fw_second exponential_time;
    // Temperature after an endless time.
    fw_kelvin steady_temperature;
} fw_block_cool_down_output;

// What goes into fw_burner_cycling.
typedef struct {
    // Heat capacity of all that warms and cools together: block, water, and what stays open to it; allowed
    // 1 to 1e9 (0.001 kJ/K to 1000000 kJ/K); usually 1000 to 5000000 (1 kJ/K to 5000 kJ/K).
    fw_joule_per_kelvin heat_capacity;
    // Output of the burner to the water; allowed 10 to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000
    // (1 kW to 500 kW).
    fw_watt burner_output;
    // Load that does not depend on the temperature; allowed 0 to 1e7 (0 kW to 10000 kW); default 0 (0 kW).
    fw_watt load;
    // Load in proportion to the temperature over the room; allowed 0 to 100000; default 0.
    fw_watt_per_kelvin load_conductance;
    // Output of the emitters at 50 K over the room; allowed 0 to 1e7 (0 kW to 10000 kW); default 0 (0 kW).
    fw_watt emitter_output;
    // Exponent of the emitters (EN 442); allowed 1 to 2; usually 1 to 1.5; default 1.3.
    fw_ratio emitter_exponent;
    // Room temperature; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to 308.15 (0 °C to 35
    // °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Temperature at which the thermostat stops the burner, on rising temperature; allowed 273.15 to
    // 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    fw_kelvin cut_out_temperature;
    // Temperature at which it lights the burner again, on falling temperature; allowed 273.15 to 423.15 (0
    // °C to 150 °C); usually 293.15 to 363.15 (20 °C to 90 °C).
    fw_kelvin cut_in_temperature;
    // Least time the burner stays off; allowed 0 to 7200 (0 min to 120 min); default 0 (0 min).
    fw_second anti_cycling_delay;
    // Shortest on-time wanted; allowed 0.6 to 36000 (0.01 min to 600 min); NaN means: no on-time asked
    // for.
    fw_second wanted_on_time;
} fw_burner_cycling_input;

// What comes out of fw_burner_cycling.
typedef struct {
    // Difference of the two operating values.
    fw_kelvin_difference differential;
    // Time the burner burns in each cycle; NaN means: the burner never stops.
    fw_second on_time;
    // Time it stands in each cycle; NaN means: the burner never lights again.
    fw_second off_time;
    // Time of a whole cycle; NaN means: no cycle.
    fw_second period;
    // Starts per hour; NaN means: no cycle.
    fw_per_second start_rate;
    // Share of the time the burner burns; NaN means: no cycle.
    fw_ratio duty;
    // Temperature at which the burner lights; below the cut-in where the delay holds it back; NaN means:
    // the burner never lights again.
    fw_kelvin lowest_temperature;
    // Heat capacity that gives the on-time wanted; NaN means: no on-time asked for, or no cycle.
    fw_joule_per_kelvin heat_capacity_needed;
    // Water to add for it; negative where there is more than enough; NaN means: no on-time asked for, or
    // no cycle.
    fw_cubic_metre water_needed;
} fw_burner_cycling_output;

// What goes into fw_tube_run.
typedef struct {
    // Length; allowed 0 to 100000; default 1.
    fw_metre length;
} fw_tube_run_input;

// Mass per length, SI.
typedef double fw_kilogram_per_metre;

// What comes out of fw_tube_run.
typedef struct {
    // Outside diameter.
    fw_metre outer_diameter;
    // Wall thickness.
    fw_metre wall_thickness;
    // Bore.
    fw_metre bore;
    // Water content per metre.
    fw_square_metre content_per_length;
    // Mass of the empty tube per metre.
    fw_kilogram_per_metre mass_per_length;
    // Water content.
    fw_cubic_metre content;
    // Mass of the empty tube.
    fw_kilogram mass;
    // Heat capacity of the tube without its water.
    fw_joule_per_kelvin wall_heat_capacity;
    // Outside surface.
    fw_square_metre outer_surface;
} fw_tube_run_output;

// What goes into fw_material_properties.
typedef struct {
    // Mean temperature of the material; only insulation depends on it here; allowed 223.15 to 573.15 (-50
    // °C to 300 °C); usually 273.15 to 383.15 (0 °C to 110 °C); default 323.15 (50 °C).
    fw_kelvin temperature;
} fw_material_properties_input;

// What comes out of fw_material_properties.
typedef struct {
    // Density; NaN means: not in the table.
    fw_kilogram_per_cubic_metre density;
    // Specific heat capacity; NaN means: not in the table.
    fw_joule_per_kilogram_kelvin specific_heat_capacity;
    // Lowest specific heat capacity in print; NaN means: prints do not differ much.
    fw_joule_per_kilogram_kelvin least_heat_capacity;
    // Highest specific heat capacity in print; NaN means: prints do not differ much.
    fw_joule_per_kilogram_kelvin greatest_heat_capacity;
    // Thermal conductivity; NaN means: a finish has none.
    fw_watt_per_metre_kelvin thermal_conductivity;
    // Emissivity; NaN means: depends on the finish: ask for that by its name.
    fw_ratio emissivity;
    // Lowest emissivity in print; NaN means: not a finish.
    fw_ratio least_emissivity;
    // Highest emissivity in print; NaN means: not a finish.
    fw_ratio greatest_emissivity;
} fw_material_properties_output;

// What goes into fw_flow_from_heat.
typedef struct {
    // Heat that the water is to carry; allowed 1 to 1e7 (0.001 kW to 10000 kW); usually 200 to 500000 (0.2
    // kW to 500 kW).
    fw_watt heat_output;
    // Temperature at which the water sets out (flow); allowed 243.15 to 383.15 (-30 °C to 110 °C); usually
    // 298.15 to 363.15 (25 °C to 90 °C).
    fw_kelvin flow_temperature;
    // Temperature at which it comes back (return); allowed 243.15 to 383.15 (-30 °C to 110 °C); usually
    // 288.15 to 353.15 (15 °C to 80 °C).
    fw_kelvin return_temperature;
    // Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    // default 200000 (2 bar).
    fw_pascal_absolute pressure;
    // Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    fw_ratio glycol_mass_fraction;
} fw_flow_from_heat_input;

// What comes out of fw_flow_from_heat.
typedef struct {
    // Temperature drop from flow to return.
    fw_kelvin_difference temperature_drop;
    // Mean heat capacity between the two temperatures: enthalpy difference over temperature drop.
    fw_joule_per_kilogram_kelvin mean_specific_heat_capacity;
    // Mass flow.
    fw_kilogram_per_second mass_flow;
    // Volume flow where the water is at return temperature (pump or meter in the return).
    fw_cubic_metre_per_second volume_flow_at_return;
    // Volume flow where the water is at flow temperature.
    fw_cubic_metre_per_second volume_flow_at_flow;
    // Volume flow at the mean of the two temperatures.
    fw_cubic_metre_per_second volume_flow_at_mean;
    // Volume flow by the rule of thumb of 4186 J/(kg K) and 1 kg/L, for comparison.
    fw_cubic_metre_per_second volume_flow_by_rule;
} fw_flow_from_heat_output;

// What goes into fw_heat_from_flow.
typedef struct {
    // Volume flow as measured; where, says the setting `flow_measured_in`; allowed 2.777778e-8 to
    // 0.2777778 (0.1 L/h to 1000000 L/h); usually 2.777778e-6 to 0.01111111 (10 L/h to 40000 L/h).
    fw_cubic_metre_per_second volume_flow;
    // Temperature of the flow; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 298.15 to 363.15 (25
    // °C to 90 °C).
    fw_kelvin flow_temperature;
    // Temperature of the return; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 288.15 to 353.15 (15
    // °C to 80 °C).
    fw_kelvin return_temperature;
    // Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    // default 200000 (2 bar).
    fw_pascal_absolute pressure;
    // Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    fw_ratio glycol_mass_fraction;
} fw_heat_from_flow_input;

// What comes out of fw_heat_from_flow.
typedef struct {
    // Temperature drop from flow to return.
    fw_kelvin_difference temperature_drop;
    // Mass flow.
    fw_kilogram_per_second mass_flow;
    // Heat carried.
    fw_watt heat_output;
} fw_heat_from_flow_output;

// What goes into fw_emitter_output.
typedef struct {
    // Output at the rated condition; allowed 1 to 1000000; usually 100 to 10000.
    fw_watt rated_output;
    // Exponent of the characteristic equation, from the maker; allowed 1 to 1.6; usually 1.1 to 1.45;
    // default 1.3.
    fw_ratio exponent;
    // Flow temperature now; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 298.15 to 363.15 (25 °C to
    // 90 °C).
    fw_kelvin flow_temperature;
    // Return temperature now; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 293.15 to 353.15 (20 °C
    // to 80 °C).
    fw_kelvin return_temperature;
    // Room temperature now; allowed 263.15 to 323.15 (-10 °C to 50 °C); usually 278.15 to 299.15 (5 °C to
    // 26 °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Flow temperature at the rated condition; allowed 273.15 to 403.15 (0 °C to 130 °C); default 348.15
    // (75 °C).
    fw_kelvin rated_flow_temperature;
    // Return temperature at the rated condition; allowed 273.15 to 403.15 (0 °C to 130 °C); default 338.15
    // (65 °C).
    fw_kelvin rated_return_temperature;
    // Room temperature at the rated condition; allowed 273.15 to 303.15 (0 °C to 30 °C); default 293.15
    // (20 °C).
    fw_kelvin rated_room_temperature;
    // Output wanted now, where an emitter is to be chosen; allowed 1 to 1000000; NaN means: not asked.
    fw_watt wanted_output;
} fw_emitter_output_input;

// What comes out of fw_emitter_output.
typedef struct {
    // Mean excess temperature now.
    fw_kelvin_difference mean_excess;
    // Mean excess temperature at the rated condition.
    fw_kelvin_difference rated_mean_excess;
    // Share of the rated output; its reverse is how much larger an emitter must be rated.
    fw_ratio output_factor;
    // Output now.
    fw_watt heat_output;
    // Output at the rated condition that an emitter needs to give the wanted one now; NaN means: no wanted
    // output given.
    fw_watt needed_rated_output;
} fw_emitter_output_output;

// What goes into fw_emitter_at_flow.
typedef struct {
    // Output at the rated condition; allowed 1 to 1000000; usually 100 to 10000.
    fw_watt rated_output;
    // Exponent of the characteristic equation, from the maker; allowed 1 to 1.6; usually 1.1 to 1.45;
    // default 1.3.
    fw_ratio exponent;
    // Mass flow of water through it; allowed 2.777778e-5 to 27.77778 (0.1 kg/h to 100000 kg/h); usually
    // 0.0005555556 to 0.2777778 (2 kg/h to 1000 kg/h).
    fw_kilogram_per_second mass_flow;
    // Flow temperature; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 298.15 to 363.15 (25 °C to 90
    // °C).
    fw_kelvin flow_temperature;
    // Room temperature; allowed 273.15 to 323.15 (0 °C to 50 °C); usually 278.15 to 299.15 (5 °C to 26
    // °C); default 293.15 (20 °C).
    fw_kelvin room_temperature;
    // Mean excess temperature of the rating: 50 K for 75/65/20 °C; allowed 5 to 80; default 50.
    fw_kelvin_difference rated_mean_excess;
} fw_emitter_at_flow_input;

// What comes out of fw_emitter_at_flow.
typedef struct {
    // Return temperature.
    fw_kelvin return_temperature;
    // Temperature drop.
    fw_kelvin_difference temperature_drop;
    // Output.
    fw_watt heat_output;
    // Share of the rated output.
    fw_ratio output_factor;
} fw_emitter_at_flow_output;

// What goes into fw_water_pressure_drop.
typedef struct {
    // Volume flow; allowed 0 to 0.2777778 (0 L/h to 1000000 L/h); usually 1.388889e-6 to 0.02777778 (5 L/h
    // to 100000 L/h).
    fw_cubic_metre_per_second volume_flow;
    // Length of tube, flow and return together; allowed 0 to 10000; usually 0.1 to 500.
    fw_metre length;
    // Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 363.15 (5
    // °C to 90 °C); default 333.15 (60 °C).
    fw_kelvin temperature;
    // Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    // default 200000 (2 bar).
    fw_pascal_absolute pressure;
    // Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    fw_ratio glycol_mass_fraction;
    // Loss coefficients of valves, boiler and other parts that the setting `fittings` does not name;
    // allowed 0 to 10000; default 0.
    fw_ratio loss_coefficient;
    // Equivalent length of parts for which such a length is given; allowed 0 to 10000; default 0.
    fw_metre equivalent_length;
    // Density, where it is known from elsewhere; allowed 500 to 2000; NaN means: that of the fluid.
    fw_kilogram_per_cubic_metre density;
    // Dynamic viscosity, where it is known from elsewhere; allowed 1e-5 to 1; NaN means: that of the
    // fluid.
    fw_pascal_second dynamic_viscosity;
    // Velocity above which a notice is given; makers of tube state what theirs stands; allowed 0.1 to 10;
    // default 1.
    fw_metre_per_second greatest_velocity;
    // Velocity below which a notice is given that air may stay; allowed 0 to 2; default 0.2.
    fw_metre_per_second least_velocity;
} fw_water_pressure_drop_input;

// Pressure per length, SI.
typedef double fw_pascal_per_metre;

// What comes out of fw_water_pressure_drop.
typedef struct {
    // Mean velocity.
    fw_metre_per_second velocity;
    // Reynolds number.
    fw_ratio reynolds_number;
    // Darcy friction factor; NaN means: no flow.
    fw_ratio friction_factor;
    // Velocity pressure.
    fw_pascal velocity_pressure;
    // Pressure drop per metre of tube.
    fw_pascal_per_metre drop_per_length;
    // Pressure drop of the tube and equivalent lengths.
    fw_pascal tube_drop;
    // Pressure drop of fittings by loss coefficient.
    fw_pascal fitting_drop;
    // Pressure drop of the whole.
    fw_pascal pressure_drop;
    // Least it may be; less than the drop itself only where the flow is in transition.
    fw_pascal pressure_drop_low;
    // Most it may be; more than the drop itself only where the flow is in transition.
    fw_pascal pressure_drop_high;
    // Head of the same liquid.
    fw_metre head_loss;
    // Power that the drop takes from the liquid; a pump needs this over its efficiency.
    fw_watt hydraulic_power;
} fw_water_pressure_drop_output;

// What goes into fw_fitting_loss.
typedef struct {
    // Bore of the tube; allowed 0.001 to 1 (1 mm to 1000 mm); usually 0.006 to 0.2 (6 mm to 200 mm).
    fw_metre bore;
} fw_fitting_loss_input;

// What comes out of fw_fitting_loss.
typedef struct {
    // Friction factor of fully turbulent flow in commercial steel pipe of this bore.
    fw_ratio turbulent_friction_factor;
    // Loss coefficient on the velocity pressure; NaN means: published as a length: times the friction
    // factor of the flow, over the bore.
    fw_ratio loss_coefficient;
    // Equivalent length in bores; for a loss coefficient by the fully turbulent friction factor.
    fw_ratio length_ratio;
    // Equivalent length of the same tube.
    fw_metre equivalent_length;
} fw_fitting_loss_output;

// What goes into fw_static_head.
typedef struct {
    // Height of the water's top above the point of interest; allowed 0 to 200; usually 0.5 to 40.
    fw_metre height;
    // Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); default 283.15 (10 °C).
    fw_kelvin temperature;
    // Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    // default 250000 (2.5 bar).
    fw_pascal_absolute pressure;
    // Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    fw_ratio glycol_mass_fraction;
} fw_static_head_input;

// What comes out of fw_static_head.
typedef struct {
    // Density of the liquid.
    fw_kilogram_per_cubic_metre density;
    // Pressure of the column.
    fw_pascal static_pressure;
} fw_static_head_output;

// What goes into fw_duty_point.
typedef struct {
    // A flow at which the system's pressure drop is known; allowed 2.777778e-7 to 0.2777778 (1 L/h to
    // 1000000 L/h).
    fw_cubic_metre_per_second known_flow;
    // Pressure drop of the system at that flow; allowed 1 to 1e7 (0.001 kPa to 10000 kPa); usually 1000 to
    // 200000 (1 kPa to 200 kPa).
    fw_pascal known_pressure_drop;
    // Exponent of the drop in the flow: 2 for rough pipe and fittings, 1.75 for smooth pipe alone; allowed
    // 1 to 2; usually 1.7 to 2; default 2.
    fw_ratio exponent;
    // Pressure that the pump must lift at no flow; zero in a closed circuit; allowed 0 to 1000000 (0 kPa
    // to 1000 kPa); default 0 (0 kPa).
    fw_pascal static_pressure;
} fw_duty_point_input;

// What comes out of fw_duty_point.
typedef struct {
    // Flow.
    fw_cubic_metre_per_second volume_flow;
    // Pressure the pump makes and the system takes.
    fw_pascal pressure;
    // Share of the known flow.
    fw_ratio flow_ratio;
    // Power given to the water.
    fw_watt hydraulic_power;
} fw_duty_point_output;

// What goes into fw_valve_kv.
typedef struct {
    // Volume flow through the valve; allowed 2.777778e-8 to 0.2777778 (0.1 L/h to 1000000 L/h); usually
    // 1.388889e-6 to 0.02777778 (5 L/h to 100000 L/h).
    fw_cubic_metre_per_second volume_flow;
    // Pressure drop that the valve is to make; allowed 10 to 1000000 (0.01 kPa to 1000 kPa); usually 1000
    // to 50000 (1 kPa to 50 kPa).
    fw_pascal pressure_drop;
    // Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); default 333.15 (60 °C).
    fw_kelvin temperature;
    // Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    fw_ratio glycol_mass_fraction;
} fw_valve_kv_input;

// What comes out of fw_valve_kv.
typedef struct {
    // Density of the liquid.
    fw_kilogram_per_cubic_metre density;
    // Kv: flow at a drop of 1 bar of water of 1000 kg/m³.
    fw_cubic_metre_per_second valve_kv;
} fw_valve_kv_output;

// What goes into fw_circuit_balance.
typedef struct {
    // Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 363.15 (5
    // °C to 90 °C); default 333.15 (60 °C).
    fw_kelvin temperature;
    // Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    // default 200000 (2 bar).
    fw_pascal_absolute pressure;
    // Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    fw_ratio glycol_mass_fraction;
} fw_circuit_balance_input;

// What comes out of fw_circuit_balance.
typedef struct {
    // Number of the index circuit, counted from 1: the one with the greatest pressure drop.
    fw_ratio index_circuit;
    // Its pressure drop: what the pump must make.
    fw_pascal index_pressure_drop;
    // Smallest pressure drop of any circuit.
    fw_pascal least_pressure_drop;
    // Flow of the index circuit.
    fw_cubic_metre_per_second index_flow;
    // Greatest velocity in any section.
    fw_metre_per_second greatest_velocity;
} fw_circuit_balance_output;

// What goes into fw_expansion_vessel.
typedef struct {
    // Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    // to 5000 L).
    fw_cubic_metre system_content;
    // Temperature of the water when it is filled; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually
    // 277.15 to 298.15 (4 °C to 25 °C); default 283.15 (10 °C).
    fw_kelvin fill_temperature;
    // Highest temperature the water may reach: what the limiter allows; allowed 283.15 to 383.15 (10 °C to
    // 110 °C); usually 313.15 to 383.15 (40 °C to 110 °C).
    fw_kelvin highest_temperature;
    // Height of the system's top above the vessel; allowed 0 to 200; usually 0 to 40.
    fw_metre static_height;
    // Pressure to be kept at the top over that of the air; allowed 0 to 200000 (0 bar to 2 bar); usually
    // 20000 to 50000 (0.2 bar to 0.5 bar); default 30000 (0.3 bar).
    fw_pascal pressure_margin;
    // Least pre-charge whatever the height; allowed 0 to 300000 (0 bar to 3 bar); default 70000 (0.7 bar).
    fw_pascal_gauge least_pre_charge;
    // Set pressure of the safety valve; allowed 50000 to 1600000 (0.5 bar to 16 bar); usually 200000 to
    // 600000 (2 bar to 6 bar); default 300000 (3 bar).
    fw_pascal_gauge safety_valve_pressure;
    // Water reserve as a share of the content; allowed 0 to 0.2 (0 % to 20 %); default 0.005 (0.5 %).
    fw_ratio reserve_share;
    // Least water reserve; allowed 0 to 0.1 (0 L to 100 L); default 0.003 (3 L).
    fw_cubic_metre least_reserve;
    // Pressure of the air; the standard counts it as 1 bar; allowed 60000 to 110000 (0.6 bar to 1.1 bar);
    // default 100000 (1 bar).
    fw_pascal_absolute barometric_pressure;
    // Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    fw_ratio glycol_mass_fraction;
    // Expansion of the liquid, where it is taken from a table; allowed 0 to 0.2 (0 % to 20 %); NaN means:
    // from the densities of the liquid.
    fw_ratio expansion_share;
} fw_expansion_vessel_input;

// What comes out of fw_expansion_vessel.
typedef struct {
    // Expansion of the liquid as a share of its cold volume.
    fw_ratio expansion_share;
    // Expansion volume.
    fw_cubic_metre expansion_volume;
    // Water reserve.
    fw_cubic_metre water_reserve;
    // Static pressure of the cold system at the vessel.
    fw_pascal static_pressure;
    // Pre-charge of the vessel, without water in it.
    fw_pascal_gauge pre_charge;
    // Pressure that the hot system may reach.
    fw_pascal_gauge final_pressure;
    // Share of the vessel that water can take between pre-charge and final pressure.
    fw_ratio acceptance;
    // Least vessel, with the reserve by share of the content.
    fw_cubic_metre vessel_volume;
    // Least vessel where a fifth of it is the reserve: the rule for vessels of up to 15 L; NaN means: the
    // pressures leave no room for a reserve of a fifth.
    fw_cubic_metre vessel_volume_with_fifth;
    // Least vessel with no reserve at all, for comparison.
    fw_cubic_metre vessel_volume_without_reserve;
    // Least pressure to which the cold system is filled, so that the reserve is in the vessel.
    fw_pascal_gauge fill_pressure;
} fw_expansion_vessel_output;

// What goes into fw_vessel_check.
typedef struct {
    // Nominal volume of the vessel; allowed 0.0005 to 100 (0.5 L to 100000 L); usually 0.004 to 1 (4 L to
    // 1000 L).
    fw_cubic_metre vessel_volume;
    // Pre-charge as measured with the water side relieved of pressure; allowed 0 to 1000000 (0 bar to 10
    // bar); usually 50000 to 400000 (0.5 bar to 4 bar).
    fw_pascal_gauge pre_charge;
    // Pressure of the cold system as filled; allowed 0 to 1000000 (0 bar to 10 bar); usually 80000 to
    // 400000 (0.8 bar to 4 bar).
    fw_pascal_gauge fill_pressure;
    // Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    // to 5000 L).
    fw_cubic_metre system_content;
    // Temperature of the water at that pressure; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually
    // 277.15 to 298.15 (4 °C to 25 °C); default 283.15 (10 °C).
    fw_kelvin fill_temperature;
    // Temperature to which the whole content is heated; allowed 283.15 to 383.15 (10 °C to 110 °C);
    // usually 313.15 to 383.15 (40 °C to 110 °C).
    fw_kelvin highest_temperature;
    // Set pressure of the safety valve; allowed 50000 to 1600000 (0.5 bar to 16 bar); usually 200000 to
    // 600000 (2 bar to 6 bar); default 300000 (3 bar).
    fw_pascal_gauge safety_valve_pressure;
    // Pressure of the air; allowed 60000 to 110000 (0.6 bar to 1.1 bar); default 100000 (1 bar).
    fw_pascal_absolute barometric_pressure;
    // Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    fw_ratio glycol_mass_fraction;
} fw_vessel_check_input;

// What comes out of fw_vessel_check.
typedef struct {
    // Expansion volume of the content.
    fw_cubic_metre expansion_volume;
    // Gas in the vessel when cold.
    fw_cubic_metre gas_volume_cold;
    // Water in the vessel when cold: the reserve.
    fw_cubic_metre water_reserve;
    // Most water the vessel takes up between cold and the pressure allowed when hot.
    fw_cubic_metre take_up;
    // Pressure of the hot system, if the safety valve did not lift; NaN means: the vessel is full of
    // water: the safety valve must lift.
    fw_pascal_gauge hot_pressure;
    // Pressure that the hot system may reach.
    fw_pascal_gauge final_pressure;
    // Water that leaves by the safety valve on heating up, and is missing when cold again.
    fw_cubic_metre water_lost;
} fw_vessel_check_output;

// What goes into fw_system_content.
typedef struct {
    // Water in all emitters, from their makers' tables; allowed 0 to 100 (0 L to 100000 L); default 0 (0
    // L).
    fw_cubic_metre emitter_content;
    // Water in the boiler; allowed 0 to 10 (0 L to 10000 L); usually 0 to 0.5 (0 L to 500 L); default 0 (0
    // L).
    fw_cubic_metre boiler_content;
    // Heating water in the coil of the hot water cylinder; allowed 0 to 1 (0 L to 1000 L); usually 0 to
    // 0.06 (0 L to 60 L); default 0 (0 L).
    fw_cubic_metre coil_content;
    // Water in a feed and expansion cistern of an open vented system; allowed 0 to 10 (0 L to 10000 L);
    // usually 0 to 0.2 (0 L to 200 L); default 0 (0 L).
    fw_cubic_metre cistern_content;
    // Water in buffer vessels and anything else; allowed 0 to 1000 (0 L to 1000000 L); default 0 (0 L).
    fw_cubic_metre other_content;
} fw_system_content_input;

// What comes out of fw_system_content.
typedef struct {
    // Length of all pipes.
    fw_metre pipe_length;
    // Water in all pipes.
    fw_cubic_metre pipe_content;
    // Mass of all pipes, empty.
    fw_kilogram pipe_mass;
    // Heat capacity of all pipes, empty.
    fw_joule_per_kelvin pipe_heat_capacity;
    // Water that circulates: all but the cistern's.
    fw_cubic_metre system_content;
    // Water to fill everything, the cistern too.
    fw_cubic_metre content_with_cistern;
} fw_system_content_output;

// What goes into fw_heat_store.
typedef struct {
    // Temperature at the start; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 368.15 (5
    // °C to 95 °C).
    fw_kelvin start_temperature;
    // Temperature at the end; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 368.15 (5 °C
    // to 95 °C).
    fw_kelvin end_temperature;
    // Water content at the start; allowed 0 to 1000 (0 L to 1000000 L); default 0 (0 L).
    fw_cubic_metre water_content;
    // Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    fw_ratio glycol_mass_fraction;
    // Mass of cast iron; allowed 0 to 100000; default 0.
    fw_kilogram cast_iron_mass;
    // Heat capacity of that cast iron; prints run from 420 to 545 J/(kg K), so state which is meant;
    // allowed 380 to 600; usually 420 to 545; default 500.
    fw_joule_per_kilogram_kelvin cast_iron_heat_capacity;
    // Mass of steel; allowed 0 to 100000; default 0.
    fw_kilogram steel_mass;
    // Mass of copper; allowed 0 to 100000; default 0.
    fw_kilogram copper_mass;
    // Mass of aluminium; allowed 0 to 100000; default 0.
    fw_kilogram aluminium_mass;
    // Mass of insulation that follows the temperature; half of a jacket is a fair guess; allowed 0 to
    // 100000; default 0.
    fw_kilogram insulation_mass;
    // Heat capacity of the insulation; allowed 500 to 2500; default 1030.
    fw_joule_per_kilogram_kelvin insulation_heat_capacity;
    // Heat capacity of anything else; allowed 0 to 1e9 (0 kJ/K to 1000000 kJ/K); default 0 (0 kJ/K).
    fw_joule_per_kelvin other_heat_capacity;
} fw_heat_store_input;

// What comes out of fw_heat_store.
typedef struct {
    // Heat capacity of the metal.
    fw_joule_per_kelvin metal_heat_capacity;
    // Heat capacity of the water: its enthalpy difference over the temperature difference.
    fw_joule_per_kelvin water_heat_capacity;
    // Heat capacity of the whole.
    fw_joule_per_kelvin heat_capacity;
    // Heat given off from start to end; negative where the parts warm up.
    fw_joule heat;
    // Share of it that the water gives.
    fw_ratio water_share;
} fw_heat_store_output;

// What goes into fw_inhibitor_dose.
typedef struct {
    // Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    // to 5000 L).
    fw_cubic_metre system_content;
    // Litres of product for each litre of system water, from its label; allowed 0.0001 to 0.2 (0.01 % to
    // 20 %); usually 0.002 to 0.05 (0.2 % to 5 %); default 0.01 (1 %).
    fw_ratio dose_ratio;
    // Share of a full dose that is in the water already, by test; allowed 0 to 1 (0 % to 100 %); default 0
    // (0 %).
    fw_ratio strength_left;
    // Content of one container; allowed 1e-5 to 1 (0.01 L to 1000 L); default 0.001 (1 L).
    fw_cubic_metre container_content;
} fw_inhibitor_dose_input;

// What comes out of fw_inhibitor_dose.
typedef struct {
    // Product for water that holds none.
    fw_cubic_metre full_dose;
    // Product to add.
    fw_cubic_metre dose;
    // Containers that hold it, in parts of one.
    fw_ratio containers;
} fw_inhibitor_dose_output;

// What goes into fw_antifreeze_dose.
typedef struct {
    // Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    // to 5000 L).
    fw_cubic_metre system_content;
    // Temperature down to which no ice is to form; allowed 223.15 to 272.15 (-50 °C to -1 °C); usually
    // 243.15 to 268.15 (-30 °C to -5 °C).
    fw_kelvin frost_temperature;
    // Glycol that is in the water already, by volume; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    fw_ratio glycol_volume_fraction;
    // Share of glycol in the product as bought, by volume; allowed 0.5 to 1 (50 % to 100 %); default 1
    // (100 %).
    fw_ratio product_strength;
} fw_antifreeze_dose_input;

// What comes out of fw_antifreeze_dose.
typedef struct {
    // Glycol needed, by mass.
    fw_ratio glycol_mass_fraction;
    // Glycol needed, by volume.
    fw_ratio needed_volume_fraction;
    // Product to add, after as much of the present water has been drained; zero if there is enough.
    fw_cubic_metre product_volume;
    // Mass of glycol in the system afterwards.
    fw_kilogram glycol_mass;
} fw_antifreeze_dose_output;

// What goes into fw_partial_drain.
typedef struct {
    // Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    // to 5000 L).
    fw_cubic_metre system_content;
    // Water drained; allowed 0 to 1000 (0 L to 1000000 L).
    fw_cubic_metre drained_volume;
    // Share of product (inhibitor or antifreeze) in the water before, by volume; allowed 0 to 1 (0 % to
    // 100 %).
    fw_ratio product_fraction;
    // Share of product in what is filled in; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    fw_ratio refill_fraction;
    // Share of product wanted afterwards; allowed 0 to 1 (0 % to 100 %); NaN means: as before.
    fw_ratio wanted_fraction;
    // Flow at which the filling tap runs; allowed 2.777778e-7 to 0.02777778 (1 L/h to 100000 L/h); default
    // 0.0001666667 (600 L/h).
    fw_cubic_metre_per_second fill_flow;
} fw_partial_drain_input;

// What comes out of fw_partial_drain.
typedef struct {
    // Product that went with the water.
    fw_cubic_metre product_lost;
    // Share of product after filling up again.
    fw_ratio fraction_after;
    // Share of the earlier strength that is left; NaN means: no product was in it.
    fw_ratio strength_left;
    // Product in the refill that makes the wanted share.
    fw_cubic_metre product_needed;
    // Plain water of that refill.
    fw_cubic_metre water_needed;
    // Time to fill up again.
    fw_second fill_time;
} fw_partial_drain_output;

// What goes into fw_injector_flow.
typedef struct {
    // Diameter of the injector bore; allowed 0.0001 to 0.1 (0.1 mm to 100 mm); usually 0.0003 to 0.01 (0.3
    // mm to 10 mm).
    fw_metre injector_diameter;
    // Gauge pressure before the injector; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to 6000
    // (1 mbar to 60 mbar).
    fw_pascal_gauge burner_pressure;
    // Density of the gas over that of air; left out, that of the fuel; allowed 0.05 to 5; usually 0.3 to
    // 2.2; NaN means: that of the fuel.
    fw_ratio relative_density;
    // Discharge coefficient of the injector; allowed 0.1 to 1.2; usually 0.6 to 1.
    fw_ratio discharge_coefficient;
    // Density of air at the conditions to which the flow is stated; allowed 0.3 to 2; usually 0.9 to 1.35;
    // default 1.225.
    fw_kilogram_per_cubic_metre air_density;
    // Number of like injectors; allowed 1 to 1000; default 1.
    fw_ratio injector_count;
    // Gross calorific value at the conditions to which the flow is stated; left out, that of the fuel;
    // allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); NaN means: that of the fuel.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
} fw_injector_flow_input;

// What comes out of fw_injector_flow.
typedef struct {
    // Density of the gas.
    fw_kilogram_per_cubic_metre gas_density;
    // Velocity of the jet where it is narrowest, without loss.
    fw_metre_per_second jet_velocity;
    // Flow of all injectors, at the conditions of the air density stated.
    fw_cubic_metre_per_second gas_flow;
    // Flow by the practical form 0.0467 C_d A √(p/d), which implies air of 1.1885 kg/m³.
    fw_cubic_metre_per_second gas_flow_practical;
    // Heat input on the gross basis.
    fw_watt_gross heat_input_gross;
} fw_injector_flow_output;

// What goes into fw_injector_size.
typedef struct {
    // Heat input wanted, gross; leave it out to state a flow; allowed 10 to 1e7 (0.01 kW to 10000 kW);
    // usually 100 to 200000 (0.1 kW to 200 kW); NaN means: a flow is stated.
    fw_watt_gross heat_input_gross;
    // Gross calorific value at the conditions to which the flow is stated; left out, that of the fuel;
    // allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); NaN means: that of the fuel.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Flow wanted, at the conditions of the air density stated; leave it out to state a heat input;
    // allowed 2.777778e-9 to 2.777778 (0.00001 m³/h to 10000 m³/h); NaN means: a heat input is stated.
    fw_cubic_metre_per_second gas_flow;
    // Gauge pressure before the injector; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to 6000
    // (1 mbar to 60 mbar).
    fw_pascal_gauge burner_pressure;
    // Density of the gas over that of air; left out, that of the fuel; allowed 0.05 to 5; usually 0.3 to
    // 2.2; NaN means: that of the fuel.
    fw_ratio relative_density;
    // Discharge coefficient of the injector; allowed 0.1 to 1.2; usually 0.6 to 1.
    fw_ratio discharge_coefficient;
    // Density of air at the conditions to which flow and calorific value are stated; allowed 0.3 to 2;
    // usually 0.9 to 1.35; default 1.225.
    fw_kilogram_per_cubic_metre air_density;
    // Number of like injectors; allowed 1 to 1000; default 1.
    fw_ratio injector_count;
} fw_injector_size_input;

// What comes out of fw_injector_size.
typedef struct {
    // Flow of all injectors.
    fw_cubic_metre_per_second gas_flow;
    // Area of one injector.
    fw_square_metre injector_area;
    // Diameter of one injector.
    fw_metre injector_diameter;
} fw_injector_size_output;

// What goes into fw_burner_pressure.
typedef struct {
    // Heat input known, on either basis; the result stands on the same; allowed 1 to 1e8 (0.001 kW to
    // 100000 kW); usually 500 to 200000 (0.5 kW to 200 kW).
    fw_watt heat_input;
    // Burner pressure at which it is known; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to
    // 6000 (1 mbar to 60 mbar).
    fw_pascal_gauge burner_pressure;
    // Burner pressure in the new state; left out, the same; allowed 1 to 50000 (0.01 mbar to 500 mbar);
    // usually 100 to 6000 (1 mbar to 60 mbar); NaN means: unchanged.
    fw_pascal_gauge new_burner_pressure;
    // Heat input wanted in the new state; left out, the same; allowed 1 to 1e8 (0.001 kW to 100000 kW);
    // usually 500 to 200000 (0.5 kW to 200 kW); NaN means: unchanged.
    fw_watt wanted_heat_input;
    // Gross calorific value of the gas known; left out, that of the fuel; allowed 1000000 to 2e8 (1 MJ/m³
    // to 200 MJ/m³); NaN means: that of the fuel.
    fw_joule_per_cubic_metre_gross gross_calorific_value;
    // Gross calorific value of the new gas; left out, that of the new fuel; allowed 1000000 to 2e8 (1
    // MJ/m³ to 200 MJ/m³); NaN means: that of the new fuel, or unchanged.
    fw_joule_per_cubic_metre_gross new_gross_calorific_value;
    // Relative density of the gas known; left out, that of the fuel; allowed 0.05 to 5; NaN means: that of
    // the fuel.
    fw_ratio relative_density;
    // Relative density of the new gas; left out, that of the new fuel; allowed 0.05 to 5; NaN means: that
    // of the new fuel, or unchanged.
    fw_ratio new_relative_density;
    // Gas temperature at which the heat input is known; allowed 233.15 to 353.15 (-40 °C to 80 °C);
    // default 288.15 (15 °C).
    fw_kelvin gas_temperature;
    // Gas temperature in the new state; left out, the same; allowed 233.15 to 353.15 (-40 °C to 80 °C);
    // NaN means: unchanged.
    fw_kelvin new_gas_temperature;
    // Barometric pressure at which the heat input is known; allowed 50000 to 110000 (500 mbar to 1100
    // mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
    // Barometric pressure in the new state; left out, the same; allowed 50000 to 110000 (500 mbar to 1100
    // mbar); NaN means: unchanged.
    fw_pascal_absolute new_barometric_pressure;
} fw_burner_pressure_input;

// What comes out of fw_burner_pressure.
typedef struct {
    // Heat input at the new pressure with the same injector.
    fw_watt new_heat_input;
    // New over known heat input with the same injector.
    fw_ratio heat_input_ratio;
    // Burner pressure that gives the wanted heat input with the same injector.
    fw_pascal_gauge pressure_for_wanted;
    // Injector diameter over the present one that gives the wanted heat input at the new pressure.
    fw_ratio injector_diameter_ratio;
    // Gross Wobbe index of the gas known.
    fw_joule_per_cubic_metre_gross gross_wobbe_index;
    // Gross Wobbe index of the new gas.
    fw_joule_per_cubic_metre_gross new_gross_wobbe_index;
    // New over known Wobbe index.
    fw_ratio wobbe_ratio;
    // New over known modified Wobbe index, which holds the temperature of the gas as well.
    fw_ratio modified_wobbe_ratio;
    // New over known flow at reference conditions.
    fw_ratio reference_flow_ratio;
} fw_burner_pressure_output;

// What goes into fw_altitude.
typedef struct {
    // Height above sea level (geopotential, which differs by 0.05 % at 3000 m); allowed -430 to 5000;
    // usually -10 to 2500.
    fw_metre altitude;
    // Barometric pressure reduced to sea level, as weather reports give it; allowed 85000 to 109000 (850
    // mbar to 1090 mbar); usually 96000 to 105000 (960 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute sea_level_pressure;
    // Temperature of the air at the place; left out, that of the standard atmosphere; allowed 223.15 to
    // 333.15 (-50 °C to 60 °C); NaN means: standard atmosphere.
    fw_kelvin air_temperature;
} fw_altitude_input;

// What comes out of fw_altitude.
typedef struct {
    // Barometric pressure at the place, as a barometer shows it.
    fw_pascal_absolute barometric_pressure;
    // Pressure at the place over 1013.25 mbar.
    fw_ratio pressure_ratio;
    // Air density over that at 15 °C and 1013.25 mbar.
    fw_ratio air_density_ratio;
    // Heat input over that at sea level, gas temperature, injector and burner pressure the same.
    fw_ratio heat_input_ratio;
} fw_altitude_output;

// What goes into fw_gas_pipe_drop.
typedef struct {
    // Flow at reference conditions; leave it out to state a heat input; allowed 0 to 27.77778 (0 m³/h to
    // 100000 m³/h); usually 1.388889e-5 to 0.02777778 (0.05 m³/h to 100 m³/h); NaN means: a heat input is
    // stated.
    fw_cubic_metre_per_second_at_reference_conditions gas_flow;
    // Heat input of all that hangs on the pipe, gross; leave it out to state a flow; allowed 0 to 1e9 (0
    // kW to 1000000 kW); usually 500 to 1000000 (0.5 kW to 1000 kW); NaN means: a flow is stated.
    fw_watt_gross heat_input_gross;
    // Length of the pipe; allowed 0 to 10000; usually 0.1 to 100.
    fw_metre length;
    // Equivalent length of fittings that the setting `fittings` does not name; allowed 0 to 10000; usually
    // 0 to 50; default 0.
    fw_metre equivalent_length;
    // Sum of the loss coefficients of fittings that are neither named nor counted by length; allowed 0 to
    // 10000; usually 0 to 50; default 0.
    fw_ratio loss_coefficient;
    // Height of the end above the beginning; negative where the pipe falls; allowed -1000 to 1000; usually
    // -30 to 30; default 0.
    fw_metre rise;
    // Bore; left out, that of the tube; allowed 0.001 to 2 (1 mm to 2000 mm); usually 0.006 to 0.16 (6 mm
    // to 160 mm); NaN means: that of the tube.
    fw_metre bore;
    // Roughness of the wall; left out, that of the tube or of drawn tubing; allowed 0 to 0.005 (0 mm to 5
    // mm); usually 0 to 0.0003 (0 mm to 0.3 mm); NaN means: that of the tube, or 0.0015 mm.
    fw_metre roughness;
    // Gauge pressure at the beginning of the pipe; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually
    // 500 to 20000 (5 mbar to 200 mbar).
    fw_pascal_gauge inlet_pressure;
    // Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    // 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    fw_kelvin gas_temperature;
    // Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    // mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
    // Density of the gas at reference conditions; left out, that of the fuel; allowed 0.05 to 6; NaN
    // means: that of the fuel.
    fw_kilogram_per_cubic_metre gas_density;
    // Dynamic viscosity of the gas; left out, that of the fuel; allowed 1e-6 to 0.0001; NaN means: that of
    // the fuel.
    fw_pascal_second gas_viscosity;
} fw_gas_pipe_drop_input;

// What comes out of fw_gas_pipe_drop.
typedef struct {
    // Flow at reference conditions.
    fw_cubic_metre_per_second_at_reference_conditions gas_flow;
    // Flow as it enters the pipe.
    fw_cubic_metre_per_second_at_the_meter flow_in_pipe;
    // Density as it enters the pipe.
    fw_kilogram_per_cubic_metre density_in_pipe;
    // Dynamic viscosity.
    fw_pascal_second viscosity;
    // Mean velocity at the inlet.
    fw_metre_per_second velocity;
    // Reynolds number.
    fw_ratio reynolds_number;
    // Least Darcy friction factor; NaN means: no flow.
    fw_ratio friction_factor_low;
    // Greatest Darcy friction factor; NaN means: no flow.
    fw_ratio friction_factor_high;
    // Least friction drop with the density of the inlet.
    fw_pascal drop_at_inlet_density_low;
    // Greatest friction drop with the density of the inlet.
    fw_pascal drop_at_inlet_density_high;
    // Least friction drop, the gas expanding.
    fw_pascal pressure_drop_low;
    // Greatest friction drop, the gas expanding: the one to reckon with.
    fw_pascal pressure_drop_high;
    // Gain of gauge pressure by height; negative where a light gas goes down or a heavy one up.
    fw_pascal height_gain;
    // Least gauge pressure at the end of the pipe: the one to reckon with.
    fw_pascal_gauge outlet_pressure_low;
    // Greatest gauge pressure at the end of the pipe.
    fw_pascal_gauge outlet_pressure_high;
} fw_gas_pipe_drop_output;

// What goes into fw_gas_pipe_discharge.
typedef struct {
    // Drop allowed between the gauges at both ends; set by the local rule; allowed 0.01 to 500000 (0.0001
    // mbar to 5000 mbar); usually 10 to 2000 (0.1 mbar to 20 mbar).
    fw_pascal allowed_drop;
    // Length of the pipe; allowed 0.01 to 10000; usually 0.1 to 100.
    fw_metre length;
    // Equivalent length of fittings that the setting `fittings` does not name; allowed 0 to 10000; usually
    // 0 to 50; default 0.
    fw_metre equivalent_length;
    // Sum of the loss coefficients of fittings that are neither named nor counted by length; allowed 0 to
    // 10000; usually 0 to 50; default 0.
    fw_ratio loss_coefficient;
    // Height of the end above the beginning; negative where the pipe falls; allowed -1000 to 1000; usually
    // -30 to 30; default 0.
    fw_metre rise;
    // Bore; left out, that of the tube; allowed 0.001 to 2 (1 mm to 2000 mm); usually 0.006 to 0.16 (6 mm
    // to 160 mm); NaN means: that of the tube.
    fw_metre bore;
    // Roughness of the wall; left out, that of the tube or of drawn tubing; allowed 0 to 0.005 (0 mm to 5
    // mm); usually 0 to 0.0003 (0 mm to 0.3 mm); NaN means: that of the tube, or 0.0015 mm.
    fw_metre roughness;
    // Gauge pressure at the beginning of the pipe; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually
    // 500 to 20000 (5 mbar to 200 mbar).
    fw_pascal_gauge inlet_pressure;
    // Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    // 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    fw_kelvin gas_temperature;
    // Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    // mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
    // Density of the gas at reference conditions; left out, that of the fuel; allowed 0.05 to 6; NaN
    // means: that of the fuel.
    fw_kilogram_per_cubic_metre gas_density;
    // Dynamic viscosity of the gas; left out, that of the fuel; allowed 1e-6 to 0.0001; NaN means: that of
    // the fuel.
    fw_pascal_second gas_viscosity;
} fw_gas_pipe_discharge_input;

// What comes out of fw_gas_pipe_discharge.
typedef struct {
    // Flow at reference conditions that is certain: the one to reckon with.
    fw_cubic_metre_per_second_at_reference_conditions gas_flow_low;
    // Greatest flow at reference conditions, if the flow stayed laminar.
    fw_cubic_metre_per_second_at_reference_conditions gas_flow_high;
    // Heat input that the certain flow feeds, gross, with the calorific value of the fuel.
    fw_watt_gross heat_input_gross;
    // Velocity at the inlet with the certain flow.
    fw_metre_per_second velocity;
    // Reynolds number of the certain flow.
    fw_ratio reynolds_number_low;
    // Reynolds number of the greatest flow.
    fw_ratio reynolds_number_high;
    // Friction drop that is used, the height gain added to what is allowed.
    fw_pascal friction_drop;
    // Flow by Pole's old formula, for comparison only: it promises too much in small pipes.
    fw_cubic_metre_per_second_at_reference_conditions flow_by_pole;
} fw_gas_pipe_discharge_output;

// What goes into fw_gas_installation.
typedef struct {
    // Gauge pressure at the meter outlet; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually 500 to
    // 20000 (5 mbar to 200 mbar).
    fw_pascal_gauge inlet_pressure;
    // Share of every load that is drawn; allowed 0 to 2 (0 % to 200 %); usually 0 to 1 (0 % to 100 %);
    // default 1 (100 %).
    fw_ratio load_factor;
    // Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    // 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    fw_kelvin gas_temperature;
    // Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    // mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
} fw_gas_installation_input;

// What comes out of fw_gas_installation.
typedef struct {
    // Flow at reference conditions through the meter.
    fw_cubic_metre_per_second_at_reference_conditions gas_flow;
    // Heat input drawn, gross.
    fw_watt_gross heat_input_gross;
    // Greatest drop from the meter to an appliance: the one to reckon with.
    fw_pascal greatest_drop;
    // Least gauge pressure at an appliance: the one to reckon with.
    fw_pascal_gauge lowest_appliance_pressure_low;
    // The same if all flow in transition stayed laminar.
    fw_pascal_gauge lowest_appliance_pressure_high;
    // Greatest velocity.
    fw_metre_per_second greatest_velocity;
    // Sections in which the flow is neither laminar nor turbulent.
    fw_ratio sections_in_transition;
    // Gas held by the pipes, fittings counted by their equivalent length.
    fw_cubic_metre pipe_volume;
} fw_gas_installation_output;

// What goes into fw_gas_pipe_sizing.
typedef struct {
    // Drop allowed from the meter to any appliance; set by the local rule; allowed 0.1 to 500000 (0.001
    // mbar to 5000 mbar); usually 10 to 2000 (0.1 mbar to 20 mbar).
    fw_pascal allowed_drop;
    // Velocity that no section may exceed; set by the local rule; allowed 0.1 to 100; usually 1 to 30; NaN
    // means: no limit.
    fw_metre_per_second velocity_limit;
    // Gauge pressure at the meter outlet; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually 500 to
    // 20000 (5 mbar to 200 mbar).
    fw_pascal_gauge inlet_pressure;
    // Share of every load that is reckoned with; allowed 0 to 2 (0 % to 200 %); usually 0.01 to 1 (1 % to
    // 100 %); default 1 (100 %).
    fw_ratio load_factor;
    // Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    // 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    fw_kelvin gas_temperature;
    // Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    // mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
} fw_gas_pipe_sizing_input;

// What comes out of fw_gas_pipe_sizing.
typedef struct {
    // Gas held by the pipes, the least that will do.
    fw_cubic_metre pipe_volume;
    // Greatest drop from the meter to an appliance.
    fw_pascal greatest_drop;
    // Drop left over.
    fw_pascal spare_drop;
    // Least gauge pressure at an appliance.
    fw_pascal_gauge lowest_appliance_pressure;
    // Greatest velocity.
    fw_metre_per_second greatest_velocity;
    // Widest bore chosen.
    fw_metre widest_bore;
} fw_gas_pipe_sizing_output;

// What goes into fw_absolute_pressure.
typedef struct {
    // Pressure above the atmosphere; negative below it; allowed -110000 to 1e7 (-1100 mbar to 100000
    // mbar).
    fw_pascal_gauge gauge_pressure;
    // Pressure of the atmosphere at the place, not reduced to sea level; allowed 50000 to 110000 (500 mbar
    // to 1100 mbar); usually 80000 to 105000 (800 mbar to 1050 mbar).
    fw_pascal_absolute barometric_pressure;
} fw_absolute_pressure_input;

// What comes out of fw_absolute_pressure.
typedef struct {
    // Pressure above vacuum: what gas laws need.
    fw_pascal_absolute absolute_pressure;
} fw_absolute_pressure_output;

// What goes into fw_analyser_reading.
typedef struct {
    // The reading; allowed -0.01 to 1 (-10000 ppm to 1000000 ppm).
    fw_ratio reading;
    // Lowest value of the measuring range; allowed 0 to 1 (0 ppm to 1000000 ppm); default 0 (0 ppm).
    fw_ratio range_low;
    // Highest value of the measuring range; allowed 0 to 1 (0 ppm to 1000000 ppm).
    fw_ratio range_high;
    // Smallest step of the display; allowed 0 to 0.1 (0 ppm to 100000 ppm); default 0 (0 ppm).
    fw_ratio resolution;
    // Stated accuracy, either way, that holds at least; allowed 0 to 0.2 (0 ppm to 200000 ppm); default 0
    // (0 ppm).
    fw_ratio accuracy_absolute;
    // Stated accuracy, either way, as a share of the reading; the greater of both holds; allowed 0 to 1 (0
    // % to 100 %); usually 0 to 0.2 (0 % to 20 %); default 0 (0 %).
    fw_ratio accuracy_relative;
    // Reading in clean air before sampling, which should be the true value there; allowed -0.01 to 1
    // (-10000 ppm to 1000000 ppm); NaN means: not recorded.
    fw_ratio clean_air_reading;
    // True value in clean air: nothing for carbon monoxide, about 20.9 % for oxygen; allowed 0 to 1 (0 ppm
    // to 1000000 ppm); default 0 (0 ppm).
    fw_ratio clean_air_value;
} fw_analyser_reading_input;

// What comes out of fw_analyser_reading.
typedef struct {
    // Half-width of the stated accuracy at this reading.
    fw_ratio accuracy;
    // Standard uncertainty: accuracy and resolution, both as rectangular distributions.
    fw_ratio standard_uncertainty;
    // The same as a share of the reading; NaN means: the reading is zero.
    fw_ratio relative_uncertainty;
    // How far the reading stands in the measuring range.
    fw_ratio share_of_range;
    // Zero error in clean air; NaN means: not recorded.
    fw_ratio zero_error;
} fw_analyser_reading_output;

// Electric potential, SI.
typedef double fw_volt;

// What goes into fw_flame_supervision_voltage.
typedef struct {
    // Voltage of the thermocouple alone, pilot burning, nothing connected; allowed 0 to 1 (0 mV to 1000
    // mV); usually 0.01 to 0.75 (10 mV to 750 mV); NaN means: not measured.
    fw_volt open_circuit_voltage;
    // Voltage with the electromagnet connected, pilot burning; allowed 0 to 1 (0 mV to 1000 mV); usually
    // 0.005 to 0.7 (5 mV to 700 mV).
    fw_volt loaded_voltage;
    // Voltage at which the electromagnet let go after the pilot was put out; allowed 0 to 1 (0 mV to 1000
    // mV); NaN means: not measured.
    fw_volt drop_out_voltage;
    // Time from putting the pilot out to the valve closing; allowed 0 to 600; usually 1 to 120; NaN means:
    // not measured.
    fw_second closing_time;
} fw_flame_supervision_voltage_input;

// What comes out of fw_flame_supervision_voltage.
typedef struct {
    // Loaded voltage over the voltage at which the magnet lets go; NaN means: drop-out not measured.
    fw_ratio holding_ratio;
    // Loaded voltage less the voltage at which the magnet lets go; NaN means: drop-out not measured.
    fw_volt holding_margin;
    // Share of the open-circuit voltage that is lost when the magnet is connected; NaN means: open-circuit
    // voltage not measured.
    fw_ratio loss_under_load;
    // Time from putting the pilot out to the valve closing, as read; NaN means: not measured.
    fw_second closing_time;
} fw_flame_supervision_voltage_output;

// Angle, SI.
typedef double fw_radian;

// Acceleration, SI.
typedef double fw_metre_per_second_squared;

// What goes into fw_inclined_gauge.
typedef struct {
    // Movement of the liquid along the tube, positive for a pressure and negative for a draught; allowed
    // -2 to 2 (-2000 mm to 2000 mm).
    fw_metre length;
    // Angle of the tube to the horizontal; allowed 0.003490659 to 1.570796 (0.2 ° to 90 °); usually
    // 0.03490659 to 0.7853982 (2 ° to 45 °).
    fw_radian angle;
    // Relative density of the liquid to conventional water, as printed on the gauge; allowed 0.5 to 14;
    // usually 0.7 to 1.1; default 1.
    fw_ratio relative_density;
    // Acceleration of gravity at the place; allowed 9.7 to 9.9; usually 9.78 to 9.84; default 9.80665.
    fw_metre_per_second_squared gravity;
} fw_inclined_gauge_input;

// Length (both-limbs), SI.
typedef double fw_metre_both_limbs;

// What comes out of fw_inclined_gauge.
typedef struct {
    // Height of the column.
    fw_metre_both_limbs level_difference;
    // Pressure above the atmosphere; negative for a draught.
    fw_pascal_gauge pressure;
} fw_inclined_gauge_output;

// What goes into fw_liquid_column.
typedef struct {
    // Difference between the levels of the two limbs, positive for a pressure and negative for a suction.
    // On a scale that is spaced to give the whole pressure from one limb, the figure read from the scale;
    // allowed -2 to 2 (-2000 mm to 2000 mm); usually -0.3 to 0.6 (-300 mm to 600 mm).
    fw_metre_both_limbs level_difference;
    // Temperature of the liquid; allowed 273.15 to 333.15 (0 °C to 60 °C); usually 275.15 to 308.15 (2 °C
    // to 35 °C); default 293.15 (20 °C).
    fw_kelvin liquid_temperature;
    // Acceleration of gravity at the place; allowed 9.7 to 9.9; usually 9.78 to 9.84; default 9.80665.
    fw_metre_per_second_squared gravity;
    // Pressure of the atmosphere, which decides the weight of the air column in the open limb; allowed
    // 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 105000 (800 mbar to 1050 mbar); default
    // 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
} fw_liquid_column_input;

// What comes out of fw_liquid_column.
typedef struct {
    // Level difference that balances the pressure.
    fw_metre_both_limbs level_difference;
    // Density of the liquid at its temperature.
    fw_kilogram_per_cubic_metre liquid_density;
    // Pressure above the atmosphere by the weight of the liquid alone, with its true density and local
    // gravity.
    fw_pascal_gauge pressure;
    // The same less the weight of the air that stands in the place of the liquid in the other limb.
    fw_pascal_gauge pressure_less_air;
    // What the same reading is in conventional units of water column: 1000 kg/m³ and standard gravity.
    fw_pascal_gauge pressure_conventional;
    // Share by which the conventional figure is too high; NaN means: no level difference.
    fw_ratio convention_error;
} fw_liquid_column_output;

// What goes into fw_local_gravity.
typedef struct {
    // Geographic latitude, north or south alike; allowed -1.570796 to 1.570796 (-90 ° to 90 °).
    fw_radian latitude;
    // Height above sea level; allowed -500 to 9000; usually -10 to 2500; default 0.
    fw_metre height;
} fw_local_gravity_input;

// What comes out of fw_local_gravity.
typedef struct {
    // Acceleration of gravity.
    fw_metre_per_second_squared gravity;
    // Share by which it exceeds standard gravity, 9.80665 m/s².
    fw_ratio excess_over_standard;
} fw_local_gravity_output;

// Electrical resistance, SI.
typedef double fw_ohm;

// What goes into fw_platinum_resistance.
typedef struct {
    // Temperature of the element; allowed 73.15 to 1123.15 (-200 °C to 850 °C); usually 243.15 to 573.15
    // (-30 °C to 300 °C).
    fw_kelvin temperature;
    // Resistance of the element at 0 °C: 100 Ω of a Pt100, 1000 Ω of a Pt1000; allowed 1 to 10000.
    fw_ohm resistance_at_zero;
    // Resistance of both leads together, as in a two-wire circuit; 0 with three or four wires; allowed 0
    // to 100; usually 0 to 5; default 0.
    fw_ohm lead_resistance;
} fw_platinum_resistance_input;

// What comes out of fw_platinum_resistance.
typedef struct {
    // Resistance of the element.
    fw_ohm resistance;
    // Resistance at the meter, through the leads.
    fw_ohm resistance_with_leads;
    // Temperature that a two-wire meter without correction shows; NaN means: beyond 850 °C.
    fw_kelvin indicated_temperature;
    // By how much that is too high; NaN means: beyond 850 °C.
    fw_kelvin_difference lead_error;
    // Half-width of the tolerance of the class at this temperature; NaN means: no class was named.
    fw_kelvin_difference tolerance;
    // Lowest resistance at the meter within the tolerance; NaN means: no class was named.
    fw_ohm lowest_resistance;
    // Highest resistance at the meter within the tolerance; NaN means: no class was named.
    fw_ohm highest_resistance;
    // Relative change of the resistance with temperature, referred to 0 °C.
    fw_per_kelvin sensitivity;
} fw_platinum_resistance_output;

// What goes into fw_platinum_temperature.
typedef struct {
    // Resistance at the meter; allowed 0.1 to 50000; usually 80 to 2000.
    fw_ohm resistance;
    // Resistance of the element at 0 °C: 100 Ω of a Pt100, 1000 Ω of a Pt1000; allowed 1 to 10000.
    fw_ohm resistance_at_zero;
    // Resistance of both leads together, as in a two-wire circuit; 0 with three or four wires; allowed 0
    // to 100; usually 0 to 5; default 0.
    fw_ohm lead_resistance;
} fw_platinum_temperature_input;

// What comes out of fw_platinum_temperature.
typedef struct {
    // Temperature of the element, the leads allowed for.
    fw_kelvin temperature;
    // Temperature that the resistance at the meter indicates if the leads are forgotten.
    fw_kelvin indicated_temperature;
    // By how much the indicated temperature is too high.
    fw_kelvin_difference lead_error;
    // Relative change of the resistance with temperature, referred to 0 °C.
    fw_per_kelvin sensitivity;
    // Half-width of the tolerance of the class at this temperature; NaN means: no class was named.
    fw_kelvin_difference tolerance;
} fw_platinum_temperature_output;

// What goes into fw_thermistor_beta.
typedef struct {
    // Resistance measured; allowed 1 to 1e7; usually 100 to 100000.
    fw_ohm resistance;
    // Resistance at the reference temperature (R25 of most data sheets); allowed 10 to 1000000; usually
    // 1000 to 100000.
    fw_ohm reference_resistance;
    // Reference temperature; allowed 223.15 to 473.15 (-50 °C to 200 °C); usually 293.15 to 298.15 (20 °C
    // to 25 °C); default 298.15 (25 °C).
    fw_kelvin reference_temperature;
    // Beta of the thermistor; allowed 1000 to 10000; usually 2800 to 4600.
    fw_kelvin_difference beta;
} fw_thermistor_beta_input;

// What comes out of fw_thermistor_beta.
typedef struct {
    // Temperature of the thermistor.
    fw_kelvin temperature;
    // Relative change of the resistance with temperature there.
    fw_per_kelvin sensitivity;
} fw_thermistor_beta_output;

// What goes into fw_thermistor_beta_of_points.
typedef struct {
    // Resistance at the first temperature; allowed 1 to 1e7.
    fw_ohm first_resistance;
    // First temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    fw_kelvin first_temperature;
    // Resistance at the second temperature; allowed 1 to 1e7.
    fw_ohm second_resistance;
    // Second temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    fw_kelvin second_temperature;
} fw_thermistor_beta_of_points_input;

// What comes out of fw_thermistor_beta_of_points.
typedef struct {
    // Beta of the thermistor between the two temperatures.
    fw_kelvin_difference beta;
} fw_thermistor_beta_of_points_output;

// What goes into fw_thermistor_temperature.
typedef struct {
    // Resistance measured; allowed 1 to 1e7; usually 100 to 100000.
    fw_ohm resistance;
} fw_thermistor_temperature_input;

// What comes out of fw_thermistor_temperature.
typedef struct {
    // Temperature of the thermistor.
    fw_kelvin temperature;
    // Relative change of the resistance with temperature there.
    fw_per_kelvin sensitivity;
} fw_thermistor_temperature_output;

// What goes into fw_thermistor_check.
typedef struct {
    // Temperature of the thermistor, from a thermometer beside it; allowed 223.15 to 473.15 (-50 °C to 200
    // °C); usually 253.15 to 383.15 (-20 °C to 110 °C).
    fw_kelvin temperature;
    // By how much that temperature may be wrong, either way; allowed 0 to 20; usually 0 to 5; default 0.
    fw_kelvin_difference temperature_tolerance;
    // Tolerance of the resistance at the reference temperature, either way; allowed 0 to 0.3 (0 % to 30
    // %); usually 0 to 0.1 (0 % to 10 %); default 0 (0 %).
    fw_ratio resistance_tolerance;
    // Tolerance of Beta, either way; allowed 0 to 0.1 (0 % to 10 %); usually 0 to 0.03 (0 % to 3 %);
    // default 0 (0 %).
    fw_ratio beta_tolerance;
    // Reference temperature, at which the tolerance of the resistance holds alone; allowed 223.15 to
    // 473.15 (-50 °C to 200 °C); usually 293.15 to 298.15 (20 °C to 25 °C); default 298.15 (25 °C).
    fw_kelvin reference_temperature;
    // Resistance measured, if it was; allowed 0.1 to 1e8; NaN means: not measured.
    fw_ohm measured_resistance;
} fw_thermistor_check_input;

// What comes out of fw_thermistor_check.
typedef struct {
    // Resistance of a nominal thermistor.
    fw_ohm resistance;
    // Lowest resistance of a sound one, all tolerances at their worst together.
    fw_ohm lowest_resistance;
    // Highest resistance of a sound one, all tolerances at their worst together.
    fw_ohm highest_resistance;
    // Relative change of the resistance with temperature.
    fw_per_kelvin sensitivity;
    // Temperature that the control reads from the measured resistance; NaN means: not measured, or no
    // temperature has that resistance.
    fw_kelvin indicated_temperature;
    // By how much that is above the true temperature; NaN means: not measured, or no temperature has that
    // resistance.
    fw_kelvin_difference deviation;
} fw_thermistor_check_output;

// What goes into fw_thermistor_fit.
typedef struct {
    // Resistance at the first temperature; allowed 1 to 1e7.
    fw_ohm first_resistance;
    // First temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    fw_kelvin first_temperature;
    // Resistance at the second temperature; allowed 1 to 1e7.
    fw_ohm second_resistance;
    // Second temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    fw_kelvin second_temperature;
    // Resistance at the third temperature; allowed 1 to 1e7.
    fw_ohm third_resistance;
    // Third temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    fw_kelvin third_temperature;
    // A resistance to be turned into a temperature with the fit; allowed 1 to 1e7; NaN means: none asked.
    fw_ohm resistance;
} fw_thermistor_fit_input;

// What comes out of fw_thermistor_fit.
typedef struct {
    // Coefficient A.
    fw_per_kelvin coefficient_a;
    // Coefficient B, of ln R.
    fw_per_kelvin coefficient_b;
    // Coefficient C, of (ln R)³.
    fw_per_kelvin coefficient_c;
    // Temperature for the resistance asked; NaN means: no resistance was asked for, or the curve has no
    // temperature there.
    fw_kelvin temperature;
} fw_thermistor_fit_output;

// What goes into fw_thermocouple_temperature.
typedef struct {
    // Voltage at the meter; allowed -0.015 to 0.08 (-15 mV to 80 mV); usually -0.002 to 0.025 (-2 mV to 25
    // mV).
    fw_volt voltage;
    // Temperature where the couple joins the copper of the meter; allowed 233.15 to 353.15 (-40 °C to 80
    // °C); usually 273.15 to 313.15 (0 °C to 40 °C).
    fw_kelvin reference_junction_temperature;
} fw_thermocouple_temperature_input;

// Electric potential per temperature difference, SI.
typedef double fw_volt_per_kelvin;

// What comes out of fw_thermocouple_temperature.
typedef struct {
    // EMF of the reference junction, which is added to the voltage.
    fw_volt reference_junction_emf;
    // EMF of the measuring junction, referred to 0 °C.
    fw_volt emf;
    // Temperature of the measuring junction.
    fw_kelvin temperature;
    // Seebeck coefficient there.
    fw_volt_per_kelvin seebeck_coefficient;
    // Error made by whoever looks the voltage up in the table and adds the temperature of the reference
    // junction; NaN means: the voltage alone has no temperature.
    fw_kelvin_difference addition_error;
    // Half-width of the tolerance of the class at this temperature; NaN means: no class was named, or the
    // type has no such class.
    fw_kelvin_difference tolerance;
} fw_thermocouple_temperature_output;

// What goes into fw_thermocouple_voltage.
typedef struct {
    // Temperature of the measuring junction; allowed 3.15 to 2093.15 (-270 °C to 1820 °C); usually 253.15
    // to 873.15 (-20 °C to 600 °C).
    fw_kelvin temperature;
    // Temperature where the couple joins the copper of the meter; allowed 233.15 to 353.15 (-40 °C to 80
    // °C); usually 273.15 to 313.15 (0 °C to 40 °C); default 273.15 (0 °C).
    fw_kelvin reference_junction_temperature;
} fw_thermocouple_voltage_input;

// What comes out of fw_thermocouple_voltage.
typedef struct {
    // Voltage at the meter.
    fw_volt voltage;
    // EMF of the measuring junction, referred to 0 °C.
    fw_volt emf;
    // EMF of the reference junction, which is taken off it.
    fw_volt reference_junction_emf;
    // Seebeck coefficient at the measuring junction.
    fw_volt_per_kelvin seebeck_coefficient;
    // Half-width of the tolerance of the class at this temperature; NaN means: no class was named, or the
    // type has no such class.
    fw_kelvin_difference tolerance;
} fw_thermocouple_voltage_output;

// What goes into fw_thermostat_differential.
typedef struct {
    // Operating value on rising temperature: the burner stops; allowed 253.15 to 473.15 (-20 °C to 200
    // °C); usually 293.15 to 373.15 (20 °C to 100 °C).
    fw_kelvin cut_out_temperature;
    // Operating value on falling temperature: the burner lights again; allowed 253.15 to 473.15 (-20 °C to
    // 200 °C); usually 283.15 to 368.15 (10 °C to 95 °C).
    fw_kelvin cut_in_temperature;
} fw_thermostat_differential_input;

// What comes out of fw_thermostat_differential.
typedef struct {
    // Difference of the two operating values.
    fw_kelvin_difference differential;
    // Middle between them.
    fw_kelvin mid_point;
} fw_thermostat_differential_output;

// What goes into fw_thermostat_test.
typedef struct {
    // Temperature the thermostat is set to; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN means: not
    // stated.
    fw_kelvin set_point;
} fw_thermostat_test_input;

// What comes out of fw_thermostat_test.
typedef struct {
    // Mean operating value on rising temperature: the burner stops.
    fw_kelvin cut_out;
    // Mean operating value on falling temperature: the burner lights again.
    fw_kelvin cut_in;
    // Differential: cut-out less cut-in, a difference and not a temperature.
    fw_kelvin_difference differential;
    // Middle between cut-out and cut-in.
    fw_kelvin mid_point;
    // Cut-out less set point; NaN means: no set point was stated.
    fw_kelvin_difference offset;
    // Repeatability of the cut-out: experimental standard deviation of one reading; NaN means: fewer than
    // two readings.
    fw_kelvin_difference cut_out_repeatability;
    // Repeatability of the cut-in; NaN means: fewer than two readings.
    fw_kelvin_difference cut_in_repeatability;
    // Standard uncertainty of the mean cut-out, type A; NaN means: fewer than two readings.
    fw_kelvin_difference cut_out_uncertainty;
    // Standard uncertainty of the mean cut-in, type A; NaN means: fewer than two readings.
    fw_kelvin_difference cut_in_uncertainty;
    // Highest less lowest cut-out.
    fw_kelvin_difference cut_out_spread;
    // Highest less lowest cut-in.
    fw_kelvin_difference cut_in_spread;
    // Drift of the cut-out from one cycle to the next, from a straight line through the readings in their
    // order; NaN means: fewer than two readings.
    fw_kelvin_difference cut_out_drift;
    // Drift of the cut-in from one cycle to the next; NaN means: fewer than two readings.
    fw_kelvin_difference cut_in_drift;
    // Standard uncertainty of the drift of the cut-out per cycle; NaN means: fewer than three readings.
    fw_kelvin_difference cut_out_drift_uncertainty;
} fw_thermostat_test_output;

// Length (one-limb), SI.
typedef double fw_metre_one_limb;

// What goes into fw_u_gauge.
typedef struct {
    // How far the liquid fell in the limb that is joined to the gas; negative for a suction; allowed -1 to
    // 1 (-1000 mm to 1000 mm); usually -0.15 to 0.3 (-150 mm to 300 mm).
    fw_metre_one_limb limb_down;
    // How far the liquid rose in the limb that is open to the air; negative for a suction; allowed -1 to 1
    // (-1000 mm to 1000 mm); usually -0.15 to 0.3 (-150 mm to 300 mm).
    fw_metre_one_limb limb_up;
    // Temperature of the liquid; allowed 273.15 to 333.15 (0 °C to 60 °C); usually 275.15 to 308.15 (2 °C
    // to 35 °C); default 293.15 (20 °C).
    fw_kelvin liquid_temperature;
    // Acceleration of gravity at the place; allowed 9.7 to 9.9; usually 9.78 to 9.84; default 9.80665.
    fw_metre_per_second_squared gravity;
    // Pressure of the atmosphere, which decides the weight of the air column in the open limb; allowed
    // 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 105000 (800 mbar to 1050 mbar); default
    // 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
} fw_u_gauge_input;

// What comes out of fw_u_gauge.
typedef struct {
    // Level difference that balances the pressure.
    fw_metre_both_limbs level_difference;
    // Density of the liquid at its temperature.
    fw_kilogram_per_cubic_metre liquid_density;
    // Pressure above the atmosphere by the weight of the liquid alone, with its true density and local
    // gravity.
    fw_pascal_gauge pressure;
    // The same less the weight of the air that stands in the place of the liquid in the other limb.
    fw_pascal_gauge pressure_less_air;
    // What the same reading is in conventional units of water column: 1000 kg/m³ and standard gravity.
    fw_pascal_gauge pressure_conventional;
    // Share by which the conventional figure is too high; NaN means: no level difference.
    fw_ratio convention_error;
} fw_u_gauge_output;

// What goes into fw_vent_free_area.
typedef struct {
    // Width over all of the opening in the wall or of the grille's core; allowed 0.001 to 10 (1 mm to
    // 10000 mm); usually 0.05 to 1 (50 mm to 1000 mm).
    fw_metre width;
    // Height over all; allowed 0.001 to 10 (1 mm to 10000 mm); usually 0.05 to 1 (50 mm to 1000 mm).
    fw_metre height;
    // Number of like openings within; allowed 1 to 100000; NaN means: a free share is stated.
    fw_ratio opening_count;
    // Width of one opening, clear; allowed 0.0001 to 10 (0.1 mm to 10000 mm); NaN means: a free share is
    // stated.
    fw_metre opening_width;
    // Height of one opening, clear; allowed 0.0001 to 10 (0.1 mm to 10000 mm); NaN means: a free share is
    // stated.
    fw_metre opening_height;
    // Free over overall area as its maker states it; leave it out where the openings are measured; allowed
    // 0.01 to 1 (1 % to 100 %); usually 0.2 to 0.9 (20 % to 90 %); NaN means: the openings are measured.
    fw_ratio free_share;
} fw_vent_free_area_input;

// Area (overall), SI.
typedef double fw_square_metre_overall;

// Area (free), SI.
typedef double fw_square_metre_free;

// What comes out of fw_vent_free_area.
typedef struct {
    // Overall area, which says nothing of the air that passes.
    fw_square_metre_overall overall_area;
    // Free area: the sum of the openings.
    fw_square_metre_free free_area;
    // Free over overall area.
    fw_ratio free_share;
} fw_vent_free_area_output;

// What goes into fw_opening_flow.
typedef struct {
    // Free area: the sum of the openings as measured; allowed 1e-6 to 100 (1 mm² to 1e8 mm²); usually
    // 0.0005 to 0.2 (500 mm² to 200000 mm²).
    fw_square_metre_free free_area;
    // Pressure difference across the opening; allowed 0.01 to 500; usually 1 to 50.
    fw_pascal pressure_difference;
    // Discharge coefficient of the opening; 0.61 for a sharp edge, less for grilles and meshes; allowed
    // 0.05 to 1; usually 0.25 to 0.75; default 0.61.
    fw_ratio discharge_coefficient;
    // Discharge coefficient of the sharp edge that defines equivalent area; allowed 0.55 to 0.65; default
    // 0.61.
    fw_ratio sharp_edge_coefficient;
    // Density of the air; allowed 0.3 to 2; usually 0.9 to 1.35; default 1.2041.
    fw_kilogram_per_cubic_metre air_density;
} fw_opening_flow_input;

// Area (equivalent), SI.
typedef double fw_square_metre_equivalent;

// What comes out of fw_opening_flow.
typedef struct {
    // Flow of air.
    fw_cubic_metre_per_second air_flow;
    // Equivalent area.
    fw_square_metre_equivalent equivalent_area;
    // Mean velocity over the free area.
    fw_metre_per_second mean_velocity;
} fw_opening_flow_output;

// What goes into fw_opening_size.
typedef struct {
    // Flow of air wanted; allowed 2.777778e-6 to 277.7778 (0.01 m³/h to 1000000 m³/h); usually
    // 0.0002777778 to 0.2777778 (1 m³/h to 1000 m³/h).
    fw_cubic_metre_per_second air_flow;
    // Pressure difference that may be used up; allowed 0.01 to 500; usually 1 to 50.
    fw_pascal pressure_difference;
    // Discharge coefficient of the opening; 0.61 for a sharp edge, less for grilles and meshes; allowed
    // 0.05 to 1; usually 0.25 to 0.75; default 0.61.
    fw_ratio discharge_coefficient;
    // Discharge coefficient of the sharp edge that defines equivalent area; allowed 0.55 to 0.65; default
    // 0.61.
    fw_ratio sharp_edge_coefficient;
    // Density of the air; allowed 0.3 to 2; usually 0.9 to 1.35; default 1.2041.
    fw_kilogram_per_cubic_metre air_density;
} fw_opening_size_input;

// What comes out of fw_opening_size.
typedef struct {
    // Free area needed.
    fw_square_metre_free free_area;
    // Equivalent area needed.
    fw_square_metre_equivalent equivalent_area;
} fw_opening_size_output;

// Area per power, SI.
typedef double fw_square_metre_per_watt;

// Volume per power, SI.
typedef double fw_cubic_metre_per_watt;

// Volume per energy, SI.
typedef double fw_cubic_metre_per_joule;

// What goes into fw_ventilation_need.
typedef struct {
    // Heat input on the net basis; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1 kW
    // to 200 kW); NaN means: stated on another basis.
    fw_watt_net heat_input_net;
    // Heat input on the gross basis; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1
    // kW to 200 kW); NaN means: stated on another basis.
    fw_watt_gross heat_input_gross;
    // Nominal heat output; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1 kW to 200
    // kW); NaN means: stated on another basis.
    fw_watt heat_output;
    // Rating that the rule leaves free; allowed 0 to 1e7 (0 kW to 10000 kW); default 0 (0 kW).
    fw_watt threshold;
    // Area for each kilowatt above the threshold; allowed 0 to 0.001 (0 mm²/kW to 1000000 mm²/kW); NaN
    // means: the rule asks for no opening.
    fw_square_metre_per_watt area_rate;
    // Least area whatever the rating; allowed 0 to 100 (0 mm² to 1e8 mm²); default 0 (0 mm²).
    fw_square_metre minimum_area;
    // Room volume for each kilowatt above the threshold; allowed 0 to 1 (0 m³/kW to 1000 m³/kW); NaN
    // means: the rule asks for no room volume.
    fw_cubic_metre_per_watt room_volume_rate;
    // Air flow for each kilowatt above the threshold; allowed 0 to 0.0002777778 (0 m³/(h·kW) to 1000
    // m³/(h·kW)); NaN means: the rule asks for no air flow.
    fw_cubic_metre_per_joule air_flow_rate;
} fw_ventilation_need_input;

// What comes out of fw_ventilation_need.
typedef struct {
    // Rating on the basis of the rule, above the threshold.
    fw_watt rating_above_threshold;
    // Free area of each opening asked for; NaN means: the rule asks for no free area.
    fw_square_metre_free free_area;
    // Equivalent area of each opening asked for; NaN means: the rule asks for no equivalent area.
    fw_square_metre_equivalent equivalent_area;
    // Room volume asked for; NaN means: the rule asks for no room volume.
    fw_cubic_metre room_volume;
    // Air flow asked for; NaN means: the rule asks for no air flow.
    fw_cubic_metre_per_second air_flow;
} fw_ventilation_need_output;

// What goes into fw_room_concentration.
typedef struct {
    // Flow of the gas into the room; nought while it clears; allowed 0 to 0.2777778 (0 L/h to 1000000
    // L/h); usually 0 to 0.0002777778 (0 L/h to 1000 L/h); default 0 (0 L/h).
    fw_cubic_metre_per_second source;
    // Volume of the room; allowed 0.1 to 1000000; usually 5 to 500.
    fw_cubic_metre room_volume;
    // Air changes; allowed 2.777778e-7 to 0.2777778 (0.001 1/h to 1000 1/h); usually 2.777778e-5 to
    // 0.002777778 (0.1 1/h to 10 1/h).
    fw_per_second air_change_rate;
    // Share of the gas in the air that comes in; allowed 0 to 0.1 (0 ppm to 100000 ppm); default 0 (0
    // ppm).
    fw_ratio_wet background;
    // Share of the gas in the room at the start; left out, the background; allowed 0 to 1 (0 ppm to
    // 1000000 ppm); NaN means: the background.
    fw_ratio_wet initial;
    // Time from the start; allowed 0 to 3.6e7 (0 h to 10000 h); usually 0 to 172800 (0 h to 48 h).
    fw_second elapsed_time;
    // Share whose time is asked for; allowed 0 to 1 (0 ppm to 1000000 ppm); NaN means: none asked for.
    fw_ratio_wet level;
} fw_room_concentration_input;

// What comes out of fw_room_concentration.
typedef struct {
    // Share of the gas in the room after the time.
    fw_ratio_wet concentration;
    // Share of the gas in the room after a very long time.
    fw_ratio_wet steady;
    // Time in which the way to the steady share shrinks to 37 %.
    fw_second time_constant;
    // Share of the way to the steady share made after the time.
    fw_ratio completion;
    // Mean share over the time.
    fw_ratio_wet mean;
    // Time at which the level asked for is met; NaN means: never reached, or none asked for.
    fw_second time_to_level;
} fw_room_concentration_output;

// What goes into fw_natural_draught.
typedef struct {
    // Height of the flue outlet above its inlet; allowed 0 to 200; usually 1 to 30.
    fw_metre height;
    // Temperature of the outdoor air; allowed 223.15 to 333.15 (-50 °C to 60 °C); usually 253.15 to 308.15
    // (-20 °C to 35 °C).
    fw_kelvin outdoor_temperature;
    // Mean temperature of the gas in the flue; allowed 223.15 to 1273.15 (-50 °C to 1000 °C); usually
    // 313.15 to 523.15 (40 °C to 250 °C).
    fw_kelvin mean_flue_temperature;
    // Barometric pressure at the place; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    // 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
    // Specific gas constant of the outdoor air; allowed 270 to 310; default 288.
    fw_joule_per_kilogram_kelvin air_gas_constant;
    // Specific gas constant of the gas in the flue; allowed 250 to 350; default 300.
    fw_joule_per_kilogram_kelvin flue_gas_constant;
    // Pressure that flow through flue, appliance and air openings takes; allowed 0 to 1000; usually 0 to
    // 50; default 0.
    fw_pascal pressure_loss;
} fw_natural_draught_input;

// What comes out of fw_natural_draught.
typedef struct {
    // Density of the outdoor air.
    fw_kilogram_per_cubic_metre air_density;
    // Mean density of the gas in the flue.
    fw_kilogram_per_cubic_metre flue_density;
    // Draught at rest.
    fw_pascal draught;
    // Draught left after the pressure loss.
    fw_pascal net_draught;
    // Mean flue temperature at which the draught at rest turns.
    fw_kelvin reversal_flue_temperature;
    // Outdoor temperature at which the net draught turns; warmer outdoors it pushes down; NaN means: a
    // flue without height has no draught to turn.
    fw_kelvin reversal_outdoor_temperature;
} fw_natural_draught_output;

// What goes into fw_flue_flow.
typedef struct {
    // Velocity; leave it out to state a mass flow; allowed 0 to 50; usually 0.3 to 10; NaN means: a mass
    // flow is stated.
    fw_metre_per_second velocity;
    // Mass flow; leave it out to state a velocity; allowed 0 to 1000; NaN means: a velocity is stated.
    fw_kilogram_per_second mass_flow;
    // Mean temperature of the flue gas; allowed 223.15 to 1273.15 (-50 °C to 1000 °C); usually 313.15 to
    // 523.15 (40 °C to 250 °C).
    fw_kelvin mean_flue_temperature;
    // Specific gas constant of the flue gas; allowed 250 to 350; default 300.
    fw_joule_per_kilogram_kelvin flue_gas_constant;
    // Absolute pressure in the flue, which is the barometer's; allowed 50000 to 110000 (500 mbar to 1100
    // mbar); usually 94000 to 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
    // Bore of the flue (hydraulic diameter); allowed 0.02 to 10 (20 mm to 10000 mm); usually 0.06 to 0.4
    // (60 mm to 400 mm).
    fw_metre bore;
    // Length of the flue; allowed 0 to 1000; usually 0.5 to 50.
    fw_metre length;
    // Friction factor (Darcy); left out, from the roughness; allowed 0.005 to 1; NaN means: from the
    // roughness.
    fw_ratio friction_factor;
    // Roughness of the inner wall; allowed 0 to 0.02 (0 mm to 20 mm); usually 5e-5 to 0.005 (0.05 mm to 5
    // mm); default 0.001 (1 mm).
    fw_metre roughness;
    // Sum of the loss coefficients of bends, inlet and outlet; allowed 0 to 1000; usually 0 to 20; default
    // 0.
    fw_ratio loss_coefficient;
} fw_flue_flow_input;

// What comes out of fw_flue_flow.
typedef struct {
    // Density of the flue gas.
    fw_kilogram_per_cubic_metre flue_density;
    // Velocity.
    fw_metre_per_second velocity;
    // Mass flow.
    fw_kilogram_per_second mass_flow;
    // Reynolds number.
    fw_ratio reynolds_number;
    // Friction factor (Darcy) used; NaN means: no flow.
    fw_ratio friction_factor;
    // Pressure lost by friction and at the fittings.
    fw_pascal pressure_loss;
} fw_flue_flow_output;

// Thermal resistance of an area, SI.
typedef double fw_square_metre_kelvin_per_watt;

// What goes into fw_chimney_draught.
typedef struct {
    // Mass flow of flue gas, with the air drawn in at a draught diverter; allowed 1e-5 to 100; usually
    // 0.002 to 0.2.
    fw_kilogram_per_second mass_flow;
    // Temperature of the flue gas at the inlet of the chimney; allowed 273.15 to 1273.15 (0 °C to 1000
    // °C); usually 313.15 to 523.15 (40 °C to 250 °C).
    fw_kelvin inlet_temperature;
    // Temperature of the outdoor air; allowed 223.15 to 333.15 (-50 °C to 60 °C); usually 253.15 to 308.15
    // (-20 °C to 35 °C).
    fw_kelvin outdoor_temperature;
    // Mean temperature of the air around the chimney; left out, that outdoors; allowed 223.15 to 373.15
    // (-50 °C to 100 °C); NaN means: that outdoors.
    fw_kelvin surrounding_temperature;
    // Height of the outlet above the inlet; allowed 0.1 to 200; usually 1 to 30.
    fw_metre height;
    // Length of the flue; left out, the height; allowed 0.1 to 500; NaN means: the height.
    fw_metre length;
    // Bore (hydraulic diameter); allowed 0.02 to 5 (20 mm to 5000 mm); usually 0.06 to 0.4 (60 mm to 400
    // mm).
    fw_metre bore;
    // Outside diameter; left out, the bore; allowed 0.02 to 10 (20 mm to 10000 mm); NaN means: the bore.
    fw_metre outside_diameter;
    // Thermal resistance of the wall on its inner surface; allowed 0 to 10; usually 0 to 1; default 0.
    fw_square_metre_kelvin_per_watt thermal_resistance;
    // Coefficient of heat transfer at the outside; allowed 0.5 to 200; usually 5 to 30; default 8.
    fw_watt_per_square_metre_kelvin external_coefficient;
    // Share of the wall's resistance that counts while the wall still warms; 1 when settled; allowed 0 to
    // 1; default 1.
    fw_ratio instability_factor;
    // Roughness of the inner wall; allowed 0 to 0.02 (0 mm to 20 mm); usually 5e-5 to 0.005 (0.05 mm to 5
    // mm); default 0.001 (1 mm).
    fw_metre roughness;
    // Sum of the loss coefficients of bends, inlet and outlet; allowed 0 to 1000; usually 0 to 20; default
    // 0.
    fw_ratio loss_coefficient;
    // Factor by which the loss of the flue is raised for safety; allowed 1 to 3; default 1.
    fw_ratio flow_safety_factor;
    // Draught that appliance, connecting pipe and air supply need; allowed 0 to 200; usually 0 to 30;
    // default 0.
    fw_pascal draught_needed;
    // Specific heat capacity of the flue gas; allowed 950 to 1500; usually 1000 to 1250; default 1100.
    fw_joule_per_kilogram_kelvin specific_heat_capacity;
    // Specific gas constant of the flue gas; allowed 250 to 350; default 300.
    fw_joule_per_kilogram_kelvin flue_gas_constant;
    // Specific gas constant of the outdoor air; allowed 270 to 310; default 288.
    fw_joule_per_kilogram_kelvin air_gas_constant;
    // Share of water vapour in the flue gas as it is in the chimney; allowed 0 to 0.4 (0 % to 40 %);
    // usually 0.02 to 0.2 (2 % to 20 %); NaN means: not stated.
    fw_ratio_wet water_vapour;
    // Barometric pressure at the place; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    // 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
} fw_chimney_draught_input;

// What comes out of fw_chimney_draught.
typedef struct {
    // Internal coefficient of heat transfer.
    fw_watt_per_square_metre_kelvin internal_coefficient;
    // Coefficient of heat transmission on the inner surface.
    fw_watt_per_square_metre_kelvin transmission_coefficient;
    // Cooling number.
    fw_ratio cooling_number;
    // Mean temperature of the flue gas.
    fw_kelvin mean_flue_temperature;
    // Temperature of the flue gas at the outlet.
    fw_kelvin outlet_temperature;
    // Temperature of the inner wall at the outlet, the wall settled.
    fw_kelvin outlet_wall_temperature;
    // Mean density of the flue gas.
    fw_kilogram_per_cubic_metre flue_density;
    // Mean velocity of the flue gas.
    fw_metre_per_second velocity;
    // Reynolds number.
    fw_ratio reynolds_number;
    // Draught at rest.
    fw_pascal draught;
    // Loss of the flue with its safety factor.
    fw_pascal pressure_loss;
    // Draught at the inlet of the chimney.
    fw_pascal net_draught;
    // Draught left over what is needed.
    fw_pascal spare_draught;
    // Outdoor temperature at which nothing would be left over, this mean flue temperature kept.
    fw_kelvin reversal_outdoor_temperature;
    // Dew point of the water vapour; NaN means: no water vapour stated, or a dew point below freezing.
    fw_kelvin dew_point;
    // Inner wall at the outlet above the dew point; negative where it is wet; NaN means: no dew point.
    fw_kelvin_difference dew_point_margin;
    // Length from the inlet at which the wall begins to be wet; NaN means: the wall stays dry, or no dew
    // point.
    fw_metre wet_from;
} fw_chimney_draught_output;

// What goes into fw_flue_gas_flow.
typedef struct {
    // Heat input on the net basis; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1 kW
    // to 200 kW).
    fw_watt_net heat_input_net;
    // Air in the flue over the air needed, with what a draught diverter draws in; allowed 1 to 50; usually
    // 1.1 to 6.
    fw_ratio excess_air_ratio;
    // Temperature of the flue gas, for its heat capacity and volume; allowed 273.15 to 1273.15 (0 °C to
    // 1000 °C); usually 313.15 to 523.15 (40 °C to 250 °C); default 373.15 (100 °C).
    fw_kelvin flue_temperature;
    // Temperature of the air that is drawn in; allowed 253.15 to 333.15 (-20 °C to 60 °C); usually 263.15
    // to 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    fw_kelvin air_temperature;
    // Relative humidity of that air; allowed 0 to 1 (0 % to 100 %); default 0.6 (60 %).
    fw_ratio air_relative_humidity;
    // Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    // mbar to 1050 mbar); default 101325 (1013.25 mbar).
    fw_pascal_absolute barometric_pressure;
} fw_flue_gas_flow_input;

// What comes out of fw_flue_gas_flow.
typedef struct {
    // Mass flow.
    fw_kilogram_per_second mass_flow;
    // Volume flow at the flue temperature and the barometer.
    fw_cubic_metre_per_second volume_flow;
    // Specific gas constant.
    fw_joule_per_kilogram_kelvin flue_gas_constant;
    // Specific heat capacity at constant pressure.
    fw_joule_per_kilogram_kelvin specific_heat_capacity;
    // Share of water vapour.
    fw_ratio_wet water_vapour;
    // Dew point of that vapour; NaN means: below freezing.
    fw_kelvin dew_point;
} fw_flue_gas_flow_output;

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

// Frees a text that the library made; NULL is allowed. Only texts received through an output
// argument are freed so; those that functions return belong to the library.
void fw_string_free(char *text);

// The version of the binary interface of the library that is loaded. A program that finds another
// number than FW_ABI_VERSION of its header must not call anything else.
uint32_t fw_abi_version(void);

// The version of the library, for instance "0.1.0"; belongs to the library, never NULL.
const char *fw_version(void);

// The status of the last call that failed on this thread; FW_OK if none has.
fw_status fw_error_status(void);

// What was wrong and what to do, in a sentence that names field, value, unit and allowed range.
const char *fw_error_message(void);

// A stable word: the kind of the refusal, or the code of the rule that refused; "call" if the call
// itself was wrong.
const char *fw_error_code(void);

// The field or setting concerned; empty if none is.
const char *fw_error_field(void);

// The value as it was given, with its unit; empty if there is none.
const char *fw_error_given(void);

// The unit of fw_error_value(), fw_error_minimum() and fw_error_maximum(), as people write it.
const char *fw_error_unit(void);

// The refused value in fw_error_unit(); NaN if there is none.
double fw_error_value(void);

// The least allowed value in fw_error_unit(); NaN if the refusal is not about a range.
double fw_error_minimum(void);

// The greatest allowed value in fw_error_unit(); NaN if the refusal is not about a range.
double fw_error_maximum(void);

// Fixes the settings of a calculation.
//
// `calculation` is its name in the catalogue. `settings_json` is a JSON object with the settings by
// name, values with their units in text, for instance {"fuel": "G20"}; NULL takes every default.
// Free the context with fw_context_free.
fw_status fw_context_new(const char *calculation, const char *settings_json, fw_context **context);

// Frees a context; NULL is allowed. No other thread may be using it.
void fw_context_free(fw_context *context);

// Evaluates one reading of whatever calculation `context` is of: values in field order, SI. NaN
// stands for a value that is not given. `notices` may be NULL.
fw_status fw_evaluate(const fw_context *context,
                      const double *input,
                      size_t input_count,
                      double *output,
                      size_t output_count,
                      fw_notices *notices);

// Evaluates `rows` rows of whatever calculation `context` is of, from and to columns in field
// order, SI. A row that is refused gets NaN in every output and says why in `row_status` (NULL if
// not wanted), where FW_ROW_OK, FW_ROW_NOTICE and so on are written; no row is lost. An output whose
// `values` is NULL is not wanted and not written; status and the other outputs are the same then.
fw_status fw_evaluate_columns(const fw_context *context,
                              size_t rows,
                              const fw_column *inputs,
                              size_t input_count,
                              const fw_column_out *outputs,
                              size_t output_count,
                              uint16_t *row_status);

#if defined(FLAMEWRIGHT_ARROW)
// Evaluates a record batch of whatever calculation `context` is of, and hands the results over as
// another: the columns kept, the results with their units in the metadata, `status` (FW_ROW_OK and so on)
// and, where a row was refused, its `reason` in words. No row is lost; a refused one has null results.
//
// There only in a library built with its feature `arrow`, and declared only where FLAMEWRIGHT_ARROW is
// defined. `schema` and `array` are a struct, each child a column of numbers; columns fill the input
// fields of their names, in the unit that their metadata states under `unit`. `options_json` says what
// else is wanted, NULL nothing: an object that may hold `constants`, `columns`, `units`, `outputs`,
// `output_units`, `keep`, `prefix` and `reasons`, for instance
// {"units": {"temperature": "degC"}, "constants": {"pressure": "2 bar"}, "keep": false}.
//
// `schema` stays with the caller. `array` is moved from once schema and options are found right, also
// where the call fails after that: its release is NULL then, and its memory goes when nothing uses it any
// more, as columns kept are not copied. Both results are written only on success, to memory that holds
// nothing, and the caller calls their release; `result_schema` may not be `schema`. Results do not need
// the context any more. All work is done by the calling thread, and any thread may release a result.
fw_status fw_evaluate_arrow(const fw_context *context,
                            const char *options_json,
                            const ArrowSchema *schema,
                            ArrowArray *array,
                            ArrowSchema *result_schema,
                            ArrowArray *result_array);
#endif

// Every calculation with its inputs, outputs (in field order, with unit, range, meaning), settings,
// rules and sources, as a JSON list. Free the text with fw_string_free.
fw_status fw_catalogue_json(char **catalogue);

// Evaluates a call such as {"calculation": "liquid_water", "temperature": "60 degC"}: the name,
// settings and fields together, values with their units in text.
//
// A value may be a table of what is known of it, such as {"value": "60 degC", "accuracy": "1 K"} or
// `{"readings": ["59 degC", "61 degC"]}` (also: of_reading, of_range with range, larger_of,
// resolution, certificate with coverage_factor, standard_uncertainty, distribution); every result
// then has its standard uncertainty, coverage factor and budget. A table under "ask" has more told:
// "steps": true, "goal_seek": {"vary", "low", "high", "of", "wanted"}, "monte_carlo": {"trials",
// "seed", "coverage", "shortest"}, "correlations": lists of two inputs and a coefficient,
// "correlation_of_results": true, or "sweep": {"input": {"from", "to", "points"}, ...}.
//
// The answer is JSON: every result with value, unit and meaning, notices, tables and cautions. If
// the call is refused, the answer is {"error": {...}} with what fw_error_message() and its like
// say, and the status is that of the refusal. So this function writes its output on failure as
// well; only if `answer` or `call` cannot be used is nothing written. Free the answer with
// fw_string_free.
fw_status fw_evaluate_json(const char *call, char **answer);

// Puts notices into words: a JSON list of objects with `code`, `field` and `text`. `input` holds the
// values that the call was made with, in field order. Free the text with fw_string_free.
fw_status fw_notices_json(const char *calculation_name,
                          const fw_notices *notices,
                          const double *input,
                          size_t input_count,
                          char **words);

// Assesses a visit: every part of it that can be computed, with uncertainties, notices, findings by
// the policy, cautions, and what was left out and why; as JSON.
//
// `visit` is a visit record in TOML or JSON, units in the values. `policy` is the caller's policy in
// TOML or JSON: limits with their citations; NULL judges nothing. A record that cannot be read is
// refused as a whole, and `written` is then {"error": {...}}, as fw_evaluate_json does it; a part
// that cannot be computed is no failure of the call, it is said in the assessment. Free the text
// with fw_string_free.
fw_status fw_visit_json(const char *visit, const char *policy, char **written);

// As fw_visit_json, as plain text to be read and printed; nothing is written on failure.
fw_status fw_visit_text(const char *visit, const char *policy, char **written);

// As fw_visit_json, as one HTML page that needs nothing beside it; nothing is written on failure.
fw_status fw_visit_html(const char *visit, const char *policy, char **written);

// Combustion air flow.
//
// Gas rate and air flow of a burner from its net heat input, the gas and the excess air ratio.
//
// Accuracy: Exact arithmetic on the inputs.
//
// Source: definition (gas rate = heat input / net calorific value; air = gas rate × air needed ×
// excess air ratio).
//
// `notices` may be NULL.
fw_status fw_combustion_air_flow(const fw_combustion_air_flow_input *input,
                                 fw_combustion_air_flow_output *output,
                                 fw_notices *notices);

// fw_combustion_air_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_combustion_air_flow_batch(size_t rows,
                                       const fw_combustion_air_flow_input *inputs,
                                       size_t input_stride,
                                       fw_combustion_air_flow_output *outputs,
                                       size_t output_stride,
                                       uint16_t *row_status);

// Writes the defaults of fw_combustion_air_flow into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_combustion_air_flow_unset(fw_combustion_air_flow_input *input);

// Air needed and flue gas made.
//
// Stoichiometric air, dry and wet flue gas, largest carbon dioxide, composition, dew point and amounts
// per heat input of a fuel, at any excess air ratio from 1, with humid air.
//
// Accuracy: Amounts as exact as the composition; dew point 0.02 K of the formulation, 0.1 K of real
// flue gas.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
// every default.
//
// Source: element balance (air and flue gas; the composition of dry air is stated in the setting).
//
// Source: ISO 6976:2016 (atomic masses, calorific values at 25 °C, compression factor of air).
//
// Source: IAPWS-IF97 region 4 (dew point and humidity, without enhancement factor).
//
// `notices` may be NULL.
fw_status fw_combustion_products(const fw_context *context,
                                 const fw_combustion_products_input *input,
                                 fw_combustion_products_output *output,
                                 fw_notices *notices);

// fw_combustion_products over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_combustion_products_batch(const fw_context *context,
                                       size_t rows,
                                       const fw_combustion_products_input *inputs,
                                       size_t input_stride,
                                       fw_combustion_products_output *outputs,
                                       size_t output_stride,
                                       uint16_t *row_status);

// Writes the defaults of fw_combustion_products into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_combustion_products_unset(fw_combustion_products_input *input);

// Adiabatic flame temperature.
//
// Temperature of the flame if no heat left it, with dissociation in chemical equilibrium and for
// complete combustion, and the carbon monoxide and nitric oxide that belong to it.
//
// Accuracy: 2 K in equilibrium (CO2, CO, H2O, H2, O2, OH, H, O, N2, NO), 1 K complete. A real flame is
// colder: it radiates.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
// every default.
//
// Source: NASA TM-4513 (1993) (enthalpies and entropies, 200 to 6000 K).
//
// Source: NASA RP-1311 part I (1994), section 2 (iteration to the least Gibbs energy).
//
// Source: ISO 6976:2016 (net calorific value at 25 °C).
//
// `notices` may be NULL.
fw_status fw_flame_temperature(const fw_context *context,
                               const fw_flame_temperature_input *input,
                               fw_flame_temperature_output *output,
                               fw_notices *notices);

// fw_flame_temperature over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_flame_temperature_batch(const fw_context *context,
                                     size_t rows,
                                     const fw_flame_temperature_input *inputs,
                                     size_t input_stride,
                                     fw_flame_temperature_output *outputs,
                                     size_t output_stride,
                                     uint16_t *row_status);

// Writes the defaults of fw_flame_temperature into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_flame_temperature_unset(fw_flame_temperature_input *input);

// Enthalpies of flue gases.
//
// Heat of one mole of each flue gas above 25 °C.
//
// Accuracy: 0.1 % up to 1000 K.
//
// Source: NASA TM-4513 (1993) (seven-coefficient polynomials, 200 to 6000 K (sulphur dioxide 300 to
// 5000 K)).
//
// `notices` may be NULL.
fw_status fw_gas_enthalpy(const fw_gas_enthalpy_input *input,
                          fw_gas_enthalpy_output *output,
                          fw_notices *notices);

// fw_gas_enthalpy over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_gas_enthalpy_batch(size_t rows,
                                const fw_gas_enthalpy_input *inputs,
                                size_t input_stride,
                                fw_gas_enthalpy_output *outputs,
                                size_t output_stride,
                                uint16_t *row_status);

// Writes the defaults of fw_gas_enthalpy into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_gas_enthalpy_unset(fw_gas_enthalpy_input *input);

// Saturated water.
//
// Vapour pressure, heat of vaporisation and liquid enthalpy of water from 0 to 100 °C.
//
// Accuracy: Saturation pressure 7e-5 of IAPWS-95.
//
// Source: IAPWS-IF97 region 4, R7-97(2012) (saturation pressure, by a fit within 6e-8).
//
// Source: IAPWS-95, by CoolProp 8.0.0 (heat of vaporisation and liquid enthalpy, by fits within 2
// J/kg).
//
// `notices` may be NULL.
fw_status fw_saturated_water(const fw_saturated_water_input *input,
                             fw_saturated_water_output *output,
                             fw_notices *notices);

// fw_saturated_water over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_saturated_water_batch(size_t rows,
                                   const fw_saturated_water_input *inputs,
                                   size_t input_stride,
                                   fw_saturated_water_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_saturated_water into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_saturated_water_unset(fw_saturated_water_input *input);

// Carbon monoxide ratio and air-free value.
//
// CO/CO2 ratio, air-free carbon monoxide from oxygen or from carbon dioxide, and carbon monoxide at a
// reference oxygen.
//
// Accuracy: Exact arithmetic; the short forms are within 0.5 % of the element balance.
//
// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
// observed, not computed.
//
// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
// air in first, reckon later; no result here is leave to stay.
//
// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
// beside them.
//
// Source: definition (ratio CO/CO2 by volume of the same sample).
//
// Source: common practice; the form of US and German rules (CO O2air / (O2air - O2), CO CO2max / CO2).
//
// `notices` may be NULL.
fw_status fw_carbon_monoxide(const fw_carbon_monoxide_input *input,
                             fw_carbon_monoxide_output *output,
                             fw_notices *notices);

// fw_carbon_monoxide over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_carbon_monoxide_batch(size_t rows,
                                   const fw_carbon_monoxide_input *inputs,
                                   size_t input_stride,
                                   fw_carbon_monoxide_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_carbon_monoxide into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_carbon_monoxide_unset(fw_carbon_monoxide_input *input);

// Flue gas analysis.
//
// Excess air, derived gases, carbon monoxide ratio and air-free, dew point, every loss, condensate and
// the combustion efficiency on both bases, from oxygen or carbon dioxide, carbon monoxide and
// temperatures, by exact element and energy balance.
//
// Accuracy: The balance itself: 0.002 percentage points of loss against independent computation. The
// readings decide: 0.3 % O2 is about 2 % of excess air. Loss of the case to the room is not in it.
//
// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
// observed, not computed.
//
// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
// air in first, reckon later; no result here is leave to stay.
//
// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
// beside them.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
// every default.
//
// Source: element and energy balance (excess air, derived gases, losses; no correlation).
//
// Source: NASA TM-4513 (1993) (enthalpies of the flue gases, 200 to 1000 K).
//
// Source: ISO 6976:2016 (calorific values and latent heat at 25 °C).
//
// Source: IAPWS-IF97 region 4; IAPWS-95 (dew point and saturation; enthalpy of the condensate).
//
// `notices` may be NULL.
fw_status fw_flue_analysis(const fw_context *context,
                           const fw_flue_analysis_input *input,
                           fw_flue_analysis_output *output,
                           fw_notices *notices);

// fw_flue_analysis over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_flue_analysis_batch(const fw_context *context,
                                 size_t rows,
                                 const fw_flue_analysis_input *inputs,
                                 size_t input_stride,
                                 fw_flue_analysis_output *outputs,
                                 size_t output_stride,
                                 uint16_t *row_status);

// Writes the defaults of fw_flue_analysis into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_flue_analysis_unset(fw_flue_analysis_input *input);

// Emissions of carbon monoxide and nitrogen oxides.
//
// Carbon monoxide and nitrogen oxides air-free, at reference oxygen, per cubic metre and per
// kilowatt-hour on both bases, by element balance and by the short formulae of rules.
//
// Accuracy: 0.002 % against independent computation; EN practice rounds densities to 1.25 and 2.054
// kg/m³, 0.07 % from the ideal gas.
//
// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
// observed, not computed.
//
// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
// air in first, reckon later; no result here is leave to stay.
//
// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
// beside them.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
// every default.
//
// Source: element balance (excess air, derived carbon dioxide, masses per heat input).
//
// Source: common practice; the form of German and US rules (x (O2air - O2ref) / (O2air - O2)).
//
// Source: ISO 6976:2016 Table A.2; ideal gas (molar masses; masses per cubic metre).
//
// `notices` may be NULL.
fw_status fw_flue_emissions(const fw_context *context,
                            const fw_flue_emissions_input *input,
                            fw_flue_emissions_output *output,
                            fw_notices *notices);

// fw_flue_emissions over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_flue_emissions_batch(const fw_context *context,
                                  size_t rows,
                                  const fw_flue_emissions_input *inputs,
                                  size_t input_stride,
                                  fw_flue_emissions_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_flue_emissions into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_flue_emissions_unset(fw_flue_emissions_input *input);

// Mass concentration from volume fraction.
//
// Milligrams per cubic metre from parts per million, at a stated temperature and pressure.
//
// Accuracy: 0.1 % at room conditions (ideal gas).
//
// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
// observed, not computed.
//
// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
// air in first, reckon later; no result here is leave to stay.
//
// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
// beside them.
//
// The context holds the settings `gas` (Which gas; nitrogen oxides are counted as nitrogen dioxide,
// one of carbon monoxide, carbon dioxide, nitrogen monoxide, nitrogen dioxide, default carbon
// monoxide); NULL takes every default.
//
// Source: ideal gas; ISO 6976:2016 Table A.2 (density and molar masses).
//
// `notices` may be NULL.
fw_status fw_mass_concentration(const fw_context *context,
                                const fw_mass_concentration_input *input,
                                fw_mass_concentration_output *output,
                                fw_notices *notices);

// fw_mass_concentration over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_mass_concentration_batch(const fw_context *context,
                                      size_t rows,
                                      const fw_mass_concentration_input *inputs,
                                      size_t input_stride,
                                      fw_mass_concentration_output *outputs,
                                      size_t output_stride,
                                      uint16_t *row_status);

// Writes the defaults of fw_mass_concentration into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_mass_concentration_unset(fw_mass_concentration_input *input);

// Siegert constants of a fuel.
//
// Constants of Siegert's formula by least squares against the exact flue loss over a field of oxygen
// and flue temperature; for fuels that no rule lists, such as hydrogen blends.
//
// Accuracy: The largest deviation is a result.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
// every default.
//
// Source: least squares on the energy balance of flue_analysis (9 by 12 points, evenly spaced).
//
// `notices` may be NULL.
fw_status fw_siegert_constants(const fw_context *context,
                               const fw_siegert_constants_input *input,
                               fw_siegert_constants_output *output,
                               fw_notices *notices);

// fw_siegert_constants over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_siegert_constants_batch(const fw_context *context,
                                     size_t rows,
                                     const fw_siegert_constants_input *inputs,
                                     size_t input_stride,
                                     fw_siegert_constants_output *outputs,
                                     size_t output_stride,
                                     uint16_t *row_status);

// Writes the defaults of fw_siegert_constants into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_siegert_constants_unset(fw_siegert_constants_input *input);

// Flue loss by Siegert's formula.
//
// Flue loss on the net basis by the short formula that German and Belgian rules prescribe, with their
// constants or the caller's; for the loss itself use flue_analysis.
//
// Accuracy: Against the energy balance at 80 to 300 °C: natural gas -0.5 to 0, LPG -0.7 to -0.1, oil
// -0.1 to +0.1 percentage points.
//
// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
// observed, not computed.
//
// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
// air in first, reckon later; no result here is leave to stay.
//
// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
// beside them.
//
// The context holds the settings `constants` (A published pair by name (de-heating-oil,
// de-natural-gas, de-coke-oven-gas, de-lpg, be-vl-natural-gas, be-vl-propane, be-vl-gas-oil), or a
// table with a2 and b); NULL takes every default.
//
// Source: 1. BImSchV (2010), Anlage 2, no. 3.4.1 (formula, German constants).
//
// Source: Flemish Government decree of 8 December 2006, Annex II, no. 4 (Flemish constants).
//
// Source: common practice, no source (A1 = A2 CO2max / 21).
//
// `notices` may be NULL.
fw_status fw_siegert_flue_loss(const fw_context *context,
                               const fw_siegert_flue_loss_input *input,
                               fw_siegert_flue_loss_output *output,
                               fw_notices *notices);

// fw_siegert_flue_loss over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_siegert_flue_loss_batch(const fw_context *context,
                                     size_t rows,
                                     const fw_siegert_flue_loss_input *inputs,
                                     size_t input_stride,
                                     fw_siegert_flue_loss_output *outputs,
                                     size_t output_stride,
                                     uint16_t *row_status);

// Writes the defaults of fw_siegert_flue_loss into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_siegert_flue_loss_unset(fw_siegert_flue_loss_input *input);

// Volume fraction from mass concentration.
//
// Parts per million from milligrams per cubic metre, at a stated temperature and pressure.
//
// Accuracy: 0.1 % at room conditions (ideal gas).
//
// Caution: A number inside a limit says nothing about flue flow, spillage or ventilation: those are
// observed, not computed.
//
// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
// air in first, reckon later; no result here is leave to stay.
//
// Caution: Results are as good as the instrument: its calibration and the place of the sample belong
// beside them.
//
// The context holds the settings `gas` (Which gas; nitrogen oxides are counted as nitrogen dioxide,
// one of carbon monoxide, carbon dioxide, nitrogen monoxide, nitrogen dioxide, default carbon
// monoxide); NULL takes every default.
//
// Source: ideal gas; ISO 6976:2016 Table A.2 (density and molar masses).
//
// `notices` may be NULL.
fw_status fw_volume_fraction(const fw_context *context,
                             const fw_volume_fraction_input *input,
                             fw_volume_fraction_output *output,
                             fw_notices *notices);

// fw_volume_fraction over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_volume_fraction_batch(const fw_context *context,
                                   size_t rows,
                                   const fw_volume_fraction_input *inputs,
                                   size_t input_stride,
                                   fw_volume_fraction_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_volume_fraction into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_volume_fraction_unset(fw_volume_fraction_input *input);

// Properties of a fuel by name or composition.
//
// What gas_properties gives, for a test gas by its letters, a composition by names, a hydrogen blend
// or LPG mix, at reference conditions that may vary; for a liquid or solid fuel its calorific values
// per mass at 25 °C.
//
// Accuracy: As the standard: about 0.05 % in calorific value from the tables alone (k = 2) for natural
// gas; the analysis itself usually decides. Compression factors hold from 90 kPa to 110 kPa and are
// less good for gases rich in butane, heavier parts or hydrogen.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value, default G20); `edition` (Edition of ISO 6976: 2016, or 1995, on which EN 437
// and older contracts rest, one of 2016, 1995, default 2016); NULL takes every default.
//
// Source: ISO 6976:2016, tables 1 to 3 and annex A (read in a public transcription, checked against
// its annex D) (all values of the edition of 2016).
//
// Source: ISO 6976:1995 (read in a public data file, checked against the edition of 2016 and EN 437)
// (all values of the edition of 1995).
//
// Source: our choice (straight lines between the tabulated temperatures).
//
// `notices` may be NULL.
fw_status fw_fuel_properties(const fw_context *context,
                             const fw_fuel_properties_input *input,
                             fw_fuel_properties_output *output,
                             fw_notices *notices);

// fw_fuel_properties over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_fuel_properties_batch(const fw_context *context,
                                   size_t rows,
                                   const fw_fuel_properties_input *inputs,
                                   size_t input_stride,
                                   fw_fuel_properties_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_fuel_properties into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_fuel_properties_unset(fw_fuel_properties_input *input);

// Properties of a gas from its analysis.
//
// Molar mass, compression factor, density, calorific values and Wobbe indices of a gas mixture at any
// reference conditions, from the mole fraction of each component.
//
// Accuracy: As the standard: about 0.05 % in calorific value from the tables alone (k = 2) for natural
// gas; the analysis itself usually decides. Compression factors hold from 90 kPa to 110 kPa and are
// less good for gases rich in butane, heavier parts or hydrogen.
//
// The context holds the settings `edition` (Edition of ISO 6976: 2016, or 1995, on which EN 437 and
// older contracts rest, one of 2016, 1995, default 2016); `reference` (Combustion and metering
// reference conditions: two temperatures in °C such as 15/15 or 25/0 (at 101.325 kPa), "60 °F, 14.73
// psi", or a table of both temperatures and the pressure. Tables reach from 0 °C to 25 °C for
// combustion and 0 °C to 20 °C for metering, default 15/15); `normalise` (Divide the fractions by
// their sum; otherwise a sum that is not 100 % is refused, default false); NULL takes every default.
//
// Source: ISO 6976:2016, tables 1 to 3 and annex A (read in a public transcription, checked against
// its annex D) (all values of the edition of 2016).
//
// Source: ISO 6976:1995 (read in a public data file, checked against the edition of 2016 and EN 437)
// (all values of the edition of 1995).
//
// Source: our choice (straight lines between the tabulated temperatures).
//
// `notices` may be NULL.
fw_status fw_gas_properties(const fw_context *context,
                            const fw_gas_properties_input *input,
                            fw_gas_properties_output *output,
                            fw_notices *notices);

// fw_gas_properties over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_gas_properties_batch(const fw_context *context,
                                  size_t rows,
                                  const fw_gas_properties_input *inputs,
                                  size_t input_stride,
                                  fw_gas_properties_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_gas_properties into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_gas_properties_unset(fw_gas_properties_input *input);

// Atmospheric pressure from altitude.
//
// The pressure of the standard atmosphere at an altitude, and what UK billing law deducts for it.
//
// Accuracy: As the formulas. The weather moves the true barometer about either by up to 4 %: read one
// where it matters.
//
// Source: ISO 2533:1975, troposphere formula (constants from memory) (standard atmosphere).
//
// Source: Gas (Calculation of Thermal Energy) Regulations 1996 (SI 1996/439), Schedule Part I, read in
// a public text copy (deduction of 0.120 205 mbar a metre).
//
// `notices` may be NULL.
fw_status fw_atmospheric_pressure(const fw_atmospheric_pressure_input *input,
                                  fw_atmospheric_pressure_output *output,
                                  fw_notices *notices);

// fw_atmospheric_pressure over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_atmospheric_pressure_batch(size_t rows,
                                        const fw_atmospheric_pressure_input *inputs,
                                        size_t input_stride,
                                        fw_atmospheric_pressure_output *outputs,
                                        size_t output_stride,
                                        uint16_t *row_status);

// Writes the defaults of fw_atmospheric_pressure into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_atmospheric_pressure_unset(fw_atmospheric_pressure_input *input);

// Gas rate and heat input.
//
// Gas rate from a timed volume, test dial or index, converted to reference conditions, with the heat
// input gross and net and its share of the appliance plate on the same basis.
//
// Accuracy: Decided by the readings: see gas_rate_uncertainty. Compression factors left out (no fuel
// named) cost at most 0.06 % for natural gas and 0.5 % for propane at ordinary conditions. Gas is
// taken as dry.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// Caution: Compare a heat input only with a plate on the same basis: gross is about a tenth above net
// for natural gas.
//
// The context holds the settings `reference` (Conditions at which the calorific values are stated and
// to which the rate is converted: combustion and metering temperature in °C such as 15/15 or 25/0, "60
// °F, 14.73 psi", or a table, default 15/15); `index_unit` (Unit that the index counts, needed only
// where the index is read: there is no default, since a wrong guess is a factor of 10 to 100, one of
// m3, L, ft3, 10 ft3, 100 ft3, 1000 ft3); `altitude_rule` (How an altitude stands in for a barometer:
// the standard atmosphere, or the deduction of UK billing law of 1996, one of standard_atmosphere,
// uk_1996, default standard_atmosphere); `medium_pressure` (Whether the meter is known to run above
// 100 mbar; otherwise such a gas pressure is refused as a slip, default false); `fuel` (The gas, if
// its composition is known (as in fuel_properties): it then gives the compression factors, and a
// calorific value that is not stated); NULL takes every default.
//
// Source: common practice, no source (rate = volume / time; heat input = reference rate × calorific
// value).
//
// Source: ideal gas law with compression factors, as ISO 13443 and EN 12405 convert volumes (from
// memory) (conversion factor).
//
// Source: ISO 6976:2016 (compression factors and calorific values of a fuel that is named).
//
// Source: ISO 2533:1975, troposphere formula (constants from memory) (pressure by altitude).
//
// Source: Gas (Calculation of Thermal Energy) Regulations 1996 (SI 1996/439), Schedule Part I, read in
// a public text copy (pressure by altitude under UK billing law).
//
// Source: International foot, 1959 (cubic foot).
//
// `notices` may be NULL.
fw_status fw_gas_rate(const fw_context *context,
                      const fw_gas_rate_input *input,
                      fw_gas_rate_output *output,
                      fw_notices *notices);

// fw_gas_rate over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_gas_rate_batch(const fw_context *context,
                            size_t rows,
                            const fw_gas_rate_input *inputs,
                            size_t input_stride,
                            fw_gas_rate_output *outputs,
                            size_t output_stride,
                            uint16_t *row_status);

// Writes the defaults of fw_gas_rate into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_gas_rate_unset(fw_gas_rate_input *input);

// Uncertainty of a gas rate.
//
// The uncertainty budget of a timed gas rate: resolution of the meter, reaction time, permissible
// error, calorific value, pressure and temperature, to first order and independent of each other.
//
// Accuracy: First order; within 0.2 % of a Monte Carlo calculation in the cases checked. The
// distribution of the result is not normal where the resolution decides: use draws on gas_rate for its
// limits.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// Caution: Compare a heat input only with a plate on the same basis: gross is about a tenth above net
// for natural gas.
//
// The context holds the settings `reference` (Conditions at which the calorific value is stated and to
// which the rate is converted, default 15/15); NULL takes every default.
//
// Source: JCGM 100:2008, clause 5.1 (combination of independent uncertainties).
//
// Source: JCGM 100:2008, 4.3.7 (resolution and permissible error as rectangular distributions).
//
// Source: common practice, no source (0.15 s for each press of a stopwatch).
//
// `notices` may be NULL.
fw_status fw_gas_rate_uncertainty(const fw_context *context,
                                  const fw_gas_rate_uncertainty_input *input,
                                  fw_gas_rate_uncertainty_output *output,
                                  fw_notices *notices);

// fw_gas_rate_uncertainty over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_gas_rate_uncertainty_batch(const fw_context *context,
                                        size_t rows,
                                        const fw_gas_rate_uncertainty_input *inputs,
                                        size_t input_stride,
                                        fw_gas_rate_uncertainty_output *outputs,
                                        size_t output_stride,
                                        uint16_t *row_status);

// Writes the defaults of fw_gas_rate_uncertainty into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_gas_rate_uncertainty_unset(fw_gas_rate_uncertainty_input *input);

// Duration of a test at the meter.
//
// The time a volume takes to pass at an expected rate, and the test time from which the meter's
// resolution and the stopwatch leave a wanted uncertainty.
//
// Accuracy: As the expected rate. Error of the meter, calorific value and gas conditions are not part
// of the wanted uncertainty.
//
// Caution: Compare a heat input only with a plate on the same basis: gross is about a tenth above net
// for natural gas.
//
// Source: definition (time = volume / rate).
//
// Source: JCGM 100:2008, 4.3.7 and 5.1 (two rectangular readings and two presses, solved for the
// time).
//
// Source: common practice, no source (0.15 s for each press of a stopwatch).
//
// `notices` may be NULL.
fw_status fw_gas_rate_test_time(const fw_gas_rate_test_time_input *input,
                                fw_gas_rate_test_time_output *output,
                                fw_notices *notices);

// fw_gas_rate_test_time over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_gas_rate_test_time_batch(size_t rows,
                                      const fw_gas_rate_test_time_input *inputs,
                                      size_t input_stride,
                                      fw_gas_rate_test_time_output *outputs,
                                      size_t output_stride,
                                      uint16_t *row_status);

// Writes the defaults of fw_gas_rate_test_time into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_gas_rate_test_time_unset(fw_gas_rate_test_time_input *input);

// Energy of a metered volume of gas.
//
// Gross energy of the gas that a meter counted, from the volume conversion factor and the calorific
// value that the bill states.
//
// Accuracy: As the figures stated.
//
// Source: Gas (Calculation of Thermal Energy) Regulations (SI 1992/450) regulation 4(4) (energy in kWh
// = volume × calorific value in MJ/m³ ÷ 3.6).
//
// `notices` may be NULL.
fw_status fw_gas_energy(const fw_gas_energy_input *input, fw_gas_energy_output *output, fw_notices *notices);

// fw_gas_energy over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_gas_energy_batch(size_t rows,
                              const fw_gas_energy_input *inputs,
                              size_t input_stride,
                              fw_gas_energy_output *outputs,
                              size_t output_stride,
                              uint16_t *row_status);

// Writes the defaults of fw_gas_energy into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_gas_energy_unset(fw_gas_energy_input *input);

// Change of the metering reference of a calorific value.
//
// A calorific value per volume carried from one metering temperature and pressure to another. The
// combustion reference stays; where the composition is known, gas_properties gives both parts exactly.
//
// Accuracy: Left out: the compression factors unless given (under 0.1 % for natural gas) and any
// change of the combustion temperature (0.26 % of the gross value from 0 °C to 25 °C for methane).
//
// Source: ideal gas law, with the compression factors where they are given (as ISO 13443) (volume
// ratio).
//
// `notices` may be NULL.
fw_status fw_metering_reference_change(const fw_metering_reference_change_input *input,
                                       fw_metering_reference_change_output *output,
                                       fw_notices *notices);

// fw_metering_reference_change over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_metering_reference_change_batch(size_t rows,
                                             const fw_metering_reference_change_input *inputs,
                                             size_t input_stride,
                                             fw_metering_reference_change_output *outputs,
                                             size_t output_stride,
                                             uint16_t *row_status);

// Writes the defaults of fw_metering_reference_change into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_metering_reference_change_unset(fw_metering_reference_change_input *input);

// Wobbe index from calorific value and relative density.
//
// Gross and net Wobbe index of a gas whose calorific value and relative density are stated, as on a
// supplier's sheet.
//
// Accuracy: As the stated figures; a relative density to three places gives the Wobbe index to 0.1 %.
//
// Source: ISO 6976, definition of the Wobbe index (W = H/√d).
//
// `notices` may be NULL.
fw_status fw_wobbe_index(const fw_wobbe_index_input *input,
                         fw_wobbe_index_output *output,
                         fw_notices *notices);

// fw_wobbe_index over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_wobbe_index_batch(size_t rows,
                               const fw_wobbe_index_input *inputs,
                               size_t input_stride,
                               fw_wobbe_index_output *outputs,
                               size_t output_stride,
                               uint16_t *row_status);

// Writes the defaults of fw_wobbe_index into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_wobbe_index_unset(fw_wobbe_index_input *input);

// Properties of liquid water.
//
// Density, heat capacity, enthalpy, viscosity, conductivity and expansion of liquid water at a
// temperature and pressure.
//
// Accuracy: As the formulations: density 0.001 % and heat capacity 0.1 % below 100 °C, 0.005 % and 0.2
// % above; viscosity 1 %; conductivity 1.5 %.
//
// Source: IAPWS R7-97(2012), IF97 regions 1 and 4 (density, heat capacity, enthalpy, expansion,
// saturation pressure).
//
// Source: IAPWS R12-08 (viscosity, without critical enhancement).
//
// Source: IAPWS R15-11 (thermal conductivity).
//
// `notices` may be NULL.
fw_status fw_liquid_water(const fw_liquid_water_input *input,
                          fw_liquid_water_output *output,
                          fw_notices *notices);

// fw_liquid_water over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_liquid_water_batch(size_t rows,
                                const fw_liquid_water_input *inputs,
                                size_t input_stride,
                                fw_liquid_water_output *outputs,
                                size_t output_stride,
                                uint16_t *row_status);

// Writes the defaults of fw_liquid_water into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_liquid_water_unset(fw_liquid_water_input *input);

// Properties of dry air.
//
// Density, heat capacity, viscosity, conductivity and Prandtl number of dry air.
//
// Accuracy: 0.1 % in density, 1 % in heat capacity, 2 % in viscosity and conductivity, as the
// formulations. Away from 1013.25 mbar the density is scaled in proportion, which costs at most 0.03 %
// from 0 °C up and 0.09 % at -50 °C.
//
// Source: Lemmon et al. 2000, J. Phys. Chem. Ref. Data 29, 331; Lemmon & Jacobsen 2004, Int. J.
// Thermophys. 25, 21; as CoolProp 8.0.0 evaluates them (all properties, fitted to 2e-6 at 1013.25
// mbar).
//
// `notices` may be NULL.
fw_status fw_dry_air(const fw_dry_air_input *input, fw_dry_air_output *output, fw_notices *notices);

// fw_dry_air over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_dry_air_batch(size_t rows,
                           const fw_dry_air_input *inputs,
                           size_t input_stride,
                           fw_dry_air_output *outputs,
                           size_t output_stride,
                           uint16_t *row_status);

// Writes the defaults of fw_dry_air into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_dry_air_unset(fw_dry_air_input *input);

// Properties of humid air.
//
// Density, humidity ratio, vapour pressure and dew point of the air in a room or outdoors.
//
// Accuracy: 0.02 % in density and humidity ratio, 0.002 K in dew point, besides the readings: 3 % of
// relative humidity is 3 % of the vapour.
//
// Source: CIPM-2007: Picard, Davis, Gläser & Fujii 2008, Metrologia 45, 149 (density).
//
// Source: IAPWS R7-97(2012) region 4, IAPWS R14-08(2011) (saturation over water and over ice).
//
// Source: ASHRAE RP-1485 as CoolProp 8.0.0 evaluates it (enhancement of the saturation pressure by the
// air, fitted to 6e-5).
//
// `notices` may be NULL.
fw_status fw_humid_air(const fw_humid_air_input *input, fw_humid_air_output *output, fw_notices *notices);

// fw_humid_air over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_humid_air_batch(size_t rows,
                             const fw_humid_air_input *inputs,
                             size_t input_stride,
                             fw_humid_air_output *outputs,
                             size_t output_stride,
                             uint16_t *row_status);

// Writes the defaults of fw_humid_air into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_humid_air_unset(fw_humid_air_input *input);

// Friction factor of a pipe.
//
// Darcy's friction factor from Reynolds number and relative roughness: laminar below 2300, turbulent
// from 4000, and a band between.
//
// Accuracy: Laminar exact; Colebrook's equation holds to some 5 % of measured factors; Haaland's keeps
// within 2 %, Swamee and Jain's within 3 % of it.
//
// The context holds the settings `equation` (The equation for turbulent flow, one of Colebrook,
// Haaland, Swamee-Jain, default Colebrook); NULL takes every default.
//
// Source: Colebrook 1939, J. Inst. Civ. Eng. 11, 133 (turbulent flow, by default; solved to 1e-12).
//
// Source: Haaland 1983, J. Fluids Eng. 105, 89 (turbulent flow, if named).
//
// Source: Swamee & Jain 1976, J. Hydraul. Div. ASCE 102, 657 (turbulent flow, if named).
//
// Source: common textbook values, from memory (the limits 2300 and 4000).
//
// `notices` may be NULL.
fw_status fw_friction_factor(const fw_context *context,
                             const fw_friction_factor_input *input,
                             fw_friction_factor_output *output,
                             fw_notices *notices);

// fw_friction_factor over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_friction_factor_batch(const fw_context *context,
                                   size_t rows,
                                   const fw_friction_factor_input *inputs,
                                   size_t input_stride,
                                   fw_friction_factor_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_friction_factor into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_friction_factor_unset(fw_friction_factor_input *input);

// Heat loss of a pipe run.
//
// Heat that a bare or insulated run loses per metre and in all, its surface temperature, and the
// resistances on the way: film inside, wall, insulation, and convection and radiation outside, with
// the surface temperature solved. For the insulation that a wanted loss takes, seek
// `insulation_thickness` for it.
//
// Accuracy: Bare horizontal run in still air 15 %, insulated 5 to 10 % (mostly the conductivity and
// the fit of the insulation); a thin vertical run 30 %; wind 20 %. Draughts raise the loss, clips,
// valves and touching walls change it.
//
// The context holds the settings `position` (How the run lies: horizontal or vertical in still air, or
// across the wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose
// correlation for the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by
// position, one of usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede,
// Churchill-Bernstein, default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter,
// wall and conductivity may be given by value instead, default ); `insulation` (The insulation by
// name, such as "mineral wool"; its conductivity may be given by value instead, default ); `finish`
// (The outer finish by name, such as "tarnished copper" or "paint"; the emissivity may be given by
// value instead, default ); `further_layers` (Layers around the first insulation, from the inside out:
// a list of thickness and conductivity, default ); NULL takes every default.
//
// Source: Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1049 (film outside a horizontal run, by
// default).
//
// Source: Popiel 2008, Heat Transfer Eng. 29, 521, on the plate of Churchill & Chu 1975 (film outside
// a vertical run, by default).
//
// Source: Churchill & Bernstein 1977, J. Heat Transfer 99, 300 (film outside a run in the wind).
//
// Source: Gnielinski 1976, Int. Chem. Eng. 16, 359 (film inside at a Reynolds number from 4000; 3.66
// below 2300, a line between).
//
// Source: Lemmon et al. 2000 and Lemmon & Jacobsen 2004, as CoolProp 8.0.0 evaluates them (properties
// of air, fitted to 2e-6).
//
// Source: IAPWS SR6-08(2011), R12-08, R15-11 (properties of water, 0 to 110 °C).
//
// `notices` may be NULL.
fw_status fw_pipe_heat_loss(const fw_context *context,
                            const fw_pipe_heat_loss_input *input,
                            fw_pipe_heat_loss_output *output,
                            fw_notices *notices);

// fw_pipe_heat_loss over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_pipe_heat_loss_batch(const fw_context *context,
                                  size_t rows,
                                  const fw_pipe_heat_loss_input *inputs,
                                  size_t input_stride,
                                  fw_pipe_heat_loss_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_pipe_heat_loss into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_pipe_heat_loss_unset(fw_pipe_heat_loss_input *input);

// Temperature drop along a pipe run.
//
// Temperature of the water where it leaves a run at a given flow, and the heat the run loses, with the
// loss following the water's temperature along the way.
//
// Accuracy: As the heat loss of the run: 15 % of the drop for a bare run in still air, 5 to 10 %
// insulated, 30 % upright.
//
// The context holds the settings `position` (How the run lies: horizontal or vertical in still air, or
// across the wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose
// correlation for the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by
// position, one of usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede,
// Churchill-Bernstein, default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter,
// wall and conductivity may be given by value instead, default ); `insulation` (The insulation by
// name, such as "mineral wool"; its conductivity may be given by value instead, default ); `finish`
// (The outer finish by name, such as "tarnished copper" or "paint"; the emissivity may be given by
// value instead, default ); `further_layers` (Layers around the first insulation, from the inside out:
// a list of thickness and conductivity, default ); NULL takes every default.
//
// Source: Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1049 (film outside a horizontal run, by
// default).
//
// Source: Popiel 2008, Heat Transfer Eng. 29, 521, on the plate of Churchill & Chu 1975 (film outside
// a vertical run, by default).
//
// Source: Churchill & Bernstein 1977, J. Heat Transfer 99, 300 (film outside a run in the wind).
//
// Source: Gnielinski 1976, Int. Chem. Eng. 16, 359 (film inside at a Reynolds number from 4000; 3.66
// below 2300, a line between).
//
// Source: Lemmon et al. 2000 and Lemmon & Jacobsen 2004, as CoolProp 8.0.0 evaluates them (properties
// of air, fitted to 2e-6).
//
// Source: IAPWS SR6-08(2011), R12-08, R15-11 (properties of water, 0 to 110 °C).
//
// `notices` may be NULL.
fw_status fw_pipe_temperature_drop(const fw_context *context,
                                   const fw_pipe_temperature_drop_input *input,
                                   fw_pipe_temperature_drop_output *output,
                                   fw_notices *notices);

// fw_pipe_temperature_drop over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_pipe_temperature_drop_batch(const fw_context *context,
                                         size_t rows,
                                         const fw_pipe_temperature_drop_input *inputs,
                                         size_t input_stride,
                                         fw_pipe_temperature_drop_output *outputs,
                                         size_t output_stride,
                                         uint16_t *row_status);

// Writes the defaults of fw_pipe_temperature_drop into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_pipe_temperature_drop_unset(fw_pipe_temperature_drop_input *input);

// Cool-down of standing water in a pipe run.
//
// Time in which the standing water of a run cools to a temperature, its temperature after a time, and
// the heat the run holds. The loss follows the temperature; water and wall are taken as one mass.
//
// Accuracy: As the heat loss of the run: 15 % of the time for a bare run in still air, 5 to 10 %
// insulated, 30 % upright. The heat in the insulation itself is left out (a few per cent with thick
// insulation); ends and fittings too.
//
// Caution: Water above about 50 °C can scald: a pipe that has cooled on its surface may still hold
// hotter water.
//
// The context holds the settings `position` (How the run lies: horizontal or vertical in still air, or
// across the wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose
// correlation for the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by
// position, one of usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede,
// Churchill-Bernstein, default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter,
// wall and conductivity may be given by value instead, default ); `insulation` (The insulation by
// name, such as "mineral wool"; its conductivity may be given by value instead, default ); `finish`
// (The outer finish by name, such as "tarnished copper" or "paint"; the emissivity may be given by
// value instead, default ); `further_layers` (Layers around the first insulation, from the inside out:
// a list of thickness and conductivity, default ); NULL takes every default.
//
// Source: Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1049 (film outside a horizontal run, by
// default).
//
// Source: Popiel 2008, Heat Transfer Eng. 29, 521, on the plate of Churchill & Chu 1975 (film outside
// a vertical run, by default).
//
// Source: Churchill & Bernstein 1977, J. Heat Transfer 99, 300 (film outside a run in the wind).
//
// Source: Lemmon et al. 2000 and Lemmon & Jacobsen 2004, as CoolProp 8.0.0 evaluates them (properties
// of air, fitted to 2e-6).
//
// Source: IAPWS SR6-08(2011), R12-08, R15-11 (properties of water, 0 to 110 °C).
//
// `notices` may be NULL.
fw_status fw_pipe_cool_down(const fw_context *context,
                            const fw_pipe_cool_down_input *input,
                            fw_pipe_cool_down_output *output,
                            fw_notices *notices);

// fw_pipe_cool_down over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_pipe_cool_down_batch(const fw_context *context,
                                  size_t rows,
                                  const fw_pipe_cool_down_input *inputs,
                                  size_t input_stride,
                                  fw_pipe_cool_down_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_pipe_cool_down into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_pipe_cool_down_unset(fw_pipe_cool_down_input *input);

// Critical radius of insulation.
//
// The outer radius up to which insulation around a thin pipe raises the loss instead of lowering it,
// and the loss per kelvin at a thickness, with a fixed coefficient outside.
//
// Accuracy: Exact for a fixed coefficient outside; the real one falls with the diameter and rises with
// the temperature.
//
// Source: Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, section 3.3.1, from memory
// (critical radius k/h).
//
// `notices` may be NULL.
fw_status fw_critical_radius(const fw_critical_radius_input *input,
                             fw_critical_radius_output *output,
                             fw_notices *notices);

// fw_critical_radius over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_critical_radius_batch(size_t rows,
                                   const fw_critical_radius_input *inputs,
                                   size_t input_stride,
                                   fw_critical_radius_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_critical_radius into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_critical_radius_unset(fw_critical_radius_input *input);

// Properties of a glycol mixture.
//
// Density, heat capacity, viscosity, conductivity, expansion and freezing point of water with
// propylene or ethylene glycol.
//
// Accuracy: 1 % for glycol and water alone, viscosity 5 %; inhibited products differ by more, their
// maker's data go first.
//
// Caution: Ethylene glycol is poisonous: not where it can reach drinking water.
//
// The context holds the settings `antifreeze` (Which glycol, one of propylene glycol, ethylene glycol,
// default propylene glycol); NULL takes every default.
//
// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries
// them (all properties, 0 to 60 % by mass, freezing point to 100 °C).
//
// Source: from memory (density of pure glycol at 20 °C, for the share by volume: propylene 1036,
// ethylene 1113 kg/m³).
//
// Source: common practice, no source (least share of a fifth).
//
// `notices` may be NULL.
fw_status fw_antifreeze_mixture(const fw_context *context,
                                const fw_antifreeze_mixture_input *input,
                                fw_antifreeze_mixture_output *output,
                                fw_notices *notices);

// fw_antifreeze_mixture over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_antifreeze_mixture_batch(const fw_context *context,
                                      size_t rows,
                                      const fw_antifreeze_mixture_input *inputs,
                                      size_t input_stride,
                                      fw_antifreeze_mixture_output *outputs,
                                      size_t output_stride,
                                      uint16_t *row_status);

// Writes the defaults of fw_antifreeze_mixture into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_antifreeze_mixture_unset(fw_antifreeze_mixture_input *input);

// Boiling point of water under pressure.
//
// The temperature at which water boils at a gauge pressure and barometer, and how far from it the
// water is.
//
// Accuracy: 0.01 K besides the pressure readings; 0.1 bar is 2 K near 1 bar.
//
// Caution: Water that is let out above 100 °C flashes to steam.
//
// Source: IAPWS R7-97(2012), IF97 region 4 (saturation temperature).
//
// Source: common practice, no source (margin of 10 K).
//
// `notices` may be NULL.
fw_status fw_boiling_point(const fw_boiling_point_input *input,
                           fw_boiling_point_output *output,
                           fw_notices *notices);

// fw_boiling_point over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_boiling_point_batch(size_t rows,
                                 const fw_boiling_point_input *inputs,
                                 size_t input_stride,
                                 fw_boiling_point_output *outputs,
                                 size_t output_stride,
                                 uint16_t *row_status);

// Writes the defaults of fw_boiling_point into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_boiling_point_unset(fw_boiling_point_input *input);

// Cool-down of a heat generator and its circuits.
//
// How long until the hot block has fallen to a temperature with the pump running or stopped, where its
// heat goes, and what opening or closing another circuit does to that.
//
// Accuracy: The equations are solved to about one part in 10^8 of the time. What limits the answer is
// the loss coefficients (10 to 30 %) and the heat capacity of the metal (10 %): give these an
// uncertainty.
//
// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
// has stopped; measure before you open or drain anything.
//
// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
//
// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
//
// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
// closed, default ); `position` (How the run lies: horizontal or vertical in still air, or across the
// wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose correlation for
// the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position, one of
// usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede, Churchill-Bernstein,
// default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter, wall and conductivity
// may be given by value instead, default ); `insulation` (The insulation by name, such as "mineral
// wool"; its conductivity may be given by value instead, default ); `finish` (The outer finish by
// name, such as "tarnished copper" or "paint"; the emissivity may be given by value instead, default
// ); `further_layers` (Layers around the first insulation, from the inside out: a list of thickness
// and conductivity, default ); `pump` (Whether the pump runs while the block cools, one of running,
// stopped, default running); `watched` (The point whose temperature counts: the water of the block,
// its metal, the end of the flow pipe, the emitter, the end of the return pipe, or a room that warms
// up, one of block, metal, flow_end, emitter, return_end, room, default block); `thresholds`
// (Temperatures to list the times of, each with a name: for draining, for touching (a threshold is the
// caller's policy; that a hand can rest on metal below about 50 °C is common practice without a
// source), default ); NULL takes every default.
//
// Source: energy balance of stirred masses in a row; first law (block, pipe cells, emitters).
//
// Source: EN 442 (exponent form, from memory) (emitter output against temperature difference).
//
// Source: Dormand and Prince 1980; Steinebach 2023 (Rodas5P) (integration in time).
//
// `notices` may be NULL.
fw_status fw_cool_down(const fw_context *context,
                       const fw_cool_down_input *input,
                       fw_cool_down_output *output,
                       fw_notices *notices);

// fw_cool_down over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_cool_down_batch(const fw_context *context,
                             size_t rows,
                             const fw_cool_down_input *inputs,
                             size_t input_stride,
                             fw_cool_down_output *outputs,
                             size_t output_stride,
                             uint16_t *row_status);

// Writes the defaults of fw_cool_down into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_cool_down_unset(fw_cool_down_input *input);

// Pump overrun.
//
// When the overrun thermostat stops the pump after the burner has stopped, or that it never does and
// at what temperature the plant comes to rest; whether residual heat starts it again; what another
// state of the circuits does to that.
//
// Accuracy: The equations are solved to about one part in 10^8 of the time; loss coefficients (10 to
// 30 %) and the metal's heat capacity (10 %) limit the answer.
//
// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
// has stopped; measure before you open or drain anything.
//
// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
//
// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
//
// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
// closed, default ); `position` (How the run lies: horizontal or vertical in still air, or across the
// wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose correlation for
// the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position, one of
// usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede, Churchill-Bernstein,
// default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter, wall and conductivity
// may be given by value instead, default ); `insulation` (The insulation by name, such as "mineral
// wool"; its conductivity may be given by value instead, default ); `finish` (The outer finish by
// name, such as "tarnished copper" or "paint"; the emissivity may be given by value instead, default
// ); `further_layers` (Layers around the first insulation, from the inside out: a list of thickness
// and conductivity, default ); NULL takes every default.
//
// Source: energy balance of stirred masses in a row; first law (block, pipe cells, emitters).
//
// Source: IEC 60730-1 (wording from memory) (operating values and differential of the thermostat).
//
// `notices` may be NULL.
fw_status fw_pump_overrun(const fw_context *context,
                          const fw_pump_overrun_input *input,
                          fw_pump_overrun_output *output,
                          fw_notices *notices);

// fw_pump_overrun over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_pump_overrun_batch(const fw_context *context,
                                size_t rows,
                                const fw_pump_overrun_input *inputs,
                                size_t input_stride,
                                fw_pump_overrun_output *outputs,
                                size_t output_stride,
                                uint16_t *row_status);

// Writes the defaults of fw_pump_overrun into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_pump_overrun_unset(fw_pump_overrun_input *input);

// Overshoot after the burner has stopped.
//
// The highest temperature of the block's water after the control thermostat has stopped the burner,
// with the pump stopped and with the pump running on, and the margin to the limit thermostat: why a
// pump runs on.
//
// Accuracy: Two masses stand for a block whose temperature varies from place to place: take the
// overshoot as known to about 30 %, mostly by the film conductance. The equations themselves are
// solved to 1e-6 K.
//
// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
// has stopped; measure before you open or drain anything.
//
// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
//
// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
//
// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
// closed, default ); `position` (How the run lies: horizontal or vertical in still air, or across the
// wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose correlation for
// the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position, one of
// usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede, Churchill-Bernstein,
// default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter, wall and conductivity
// may be given by value instead, default ); `insulation` (The insulation by name, such as "mineral
// wool"; its conductivity may be given by value instead, default ); `finish` (The outer finish by
// name, such as "tarnished copper" or "paint"; the emissivity may be given by value instead, default
// ); `further_layers` (Layers around the first insulation, from the inside out: a list of thickness
// and conductivity, default ); `burner` (How the burner gives its output: fixed, in two stages, or
// modulating down to a least output, one of fixed, two_stage, modulating, default fixed); NULL takes
// every default.
//
// Source: energy balance of metal and water coupled by a film; first law (residual heat).
//
// Source: first-order lag (sensor in its pocket).
//
// `notices` may be NULL.
fw_status fw_overshoot(const fw_context *context,
                       const fw_overshoot_input *input,
                       fw_overshoot_output *output,
                       fw_notices *notices);

// fw_overshoot over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_overshoot_batch(const fw_context *context,
                             size_t rows,
                             const fw_overshoot_input *inputs,
                             size_t input_stride,
                             fw_overshoot_output *outputs,
                             size_t output_stride,
                             uint16_t *row_status);

// Writes the defaults of fw_overshoot into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_overshoot_unset(fw_overshoot_input *input);

// Warm-up of a heat generator and its circuits.
//
// How long a plant takes from its start to a temperature at the block, an emitter or the return, with
// a fixed, two-stage or modulating burner, and where the heat has gone by then.
//
// Accuracy: The equations are solved to about one part in 10^8 of the time; the burner's output (5 %)
// and the heat capacities (10 %) limit the answer.
//
// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
// closed, default ); `position` (How the run lies: horizontal or vertical in still air, or across the
// wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose correlation for
// the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position, one of
// usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede, Churchill-Bernstein,
// default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter, wall and conductivity
// may be given by value instead, default ); `insulation` (The insulation by name, such as "mineral
// wool"; its conductivity may be given by value instead, default ); `finish` (The outer finish by
// name, such as "tarnished copper" or "paint"; the emissivity may be given by value instead, default
// ); `further_layers` (Layers around the first insulation, from the inside out: a list of thickness
// and conductivity, default ); `burner` (How the burner gives its output: fixed, in two stages, or
// modulating down to a least output, one of fixed, two_stage, modulating, default fixed); `demand`
// (Whether heat is asked for at the start; without that the burner stands, whatever the thermostat
// says, one of on, off, default on); `demand_changes` (Times from the start, rising, at which the
// demand for heat changes over: off, on, off... where it is on at the start, default ); `pump`
// (Whether the pump runs all the time, or only while heat is asked for, one of running, with_demand,
// default running); `watched` (The point whose temperature counts: the water of the block, its metal,
// the end of the flow pipe, the emitter, the end of the return pipe, or a room that warms up, one of
// block, metal, flow_end, emitter, return_end, room, default block); NULL takes every default.
//
// Source: energy balance of stirred masses in a row; first law (block, pipe cells, emitters).
//
// Source: EN 442 (exponent form, from memory) (emitter output against temperature difference).
//
// `notices` may be NULL.
fw_status fw_warm_up(const fw_context *context,
                     const fw_warm_up_input *input,
                     fw_warm_up_output *output,
                     fw_notices *notices);

// fw_warm_up over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_warm_up_batch(const fw_context *context,
                           size_t rows,
                           const fw_warm_up_input *inputs,
                           size_t input_stride,
                           fw_warm_up_output *outputs,
                           size_t output_stride,
                           uint16_t *row_status);

// Writes the defaults of fw_warm_up into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_warm_up_unset(fw_warm_up_input *input);

// Cycling of a burner on its circuits.
//
// On and off times, starts per hour and duty of a burner on a block with pump, pipes and emitters,
// once the cycles repeat; fixed, two-stage or modulating.
//
// Accuracy: The cycle is found to better than one part in 10^6 (random plants, beside runs at a
// thousandth of the local error); the emitter's output (10 %) and the heat capacities (10 %) limit the
// answer.
//
// The context holds the settings `flow_cells` (Number of stirred cells the flow pipe of each circuit
// is cut into. More cells keep a temperature front sharper, default 10); `return_cells` (Number of
// stirred cells the return pipe of each circuit is cut into, default 10); `circuits` (Further circuits
// parallel to the main one. Each may carry a name, and an opening: open, opened_after, closed_after or
// closed, default ); `position` (How the run lies: horizontal or vertical in still air, or across the
// wind, one of horizontal, vertical, wind, default horizontal); `correlation` (Whose correlation for
// the film outside; the usual one is Churchill-Chu, Popiel or Churchill-Bernstein by position, one of
// usual, Churchill-Chu, Morgan, ISO 12241, Popiel, Popiel laminar, Le Fevre-Ede, Churchill-Bernstein,
// default usual); `tube` (The tube by name, such as "copper 22x0.9"; diameter, wall and conductivity
// may be given by value instead, default ); `insulation` (The insulation by name, such as "mineral
// wool"; its conductivity may be given by value instead, default ); `finish` (The outer finish by
// name, such as "tarnished copper" or "paint"; the emissivity may be given by value instead, default
// ); `further_layers` (Layers around the first insulation, from the inside out: a list of thickness
// and conductivity, default ); `burner` (How the burner gives its output: fixed, in two stages, or
// modulating down to a least output, one of fixed, two_stage, modulating, default fixed); `demand`
// (Whether heat is asked for at the start; without that the burner stands, whatever the thermostat
// says, one of on, off, default on); `demand_changes` (Times from the start, rising, at which the
// demand for heat changes over: off, on, off... where it is on at the start, default ); `pump`
// (Whether the pump runs all the time, or only while heat is asked for, one of running, with_demand,
// default running); NULL takes every default.
//
// Source: energy balance of stirred masses in a row; first law (block, pipe cells, emitters).
//
// Source: EN 442 (exponent form, from memory) (emitter load).
//
// `notices` may be NULL.
fw_status fw_circuit_cycling(const fw_context *context,
                             const fw_circuit_cycling_input *input,
                             fw_circuit_cycling_output *output,
                             fw_notices *notices);

// fw_circuit_cycling over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_circuit_cycling_batch(const fw_context *context,
                                   size_t rows,
                                   const fw_circuit_cycling_input *inputs,
                                   size_t input_stride,
                                   fw_circuit_cycling_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_circuit_cycling into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_circuit_cycling_unset(fw_circuit_cycling_input *input);

// Loss or heat capacity from a logged cool-down.
//
// From times and temperatures logged on site: the time constant and from it the loss conductance (the
// heat capacity being known) or the heat capacity (the loss being known), with uncertainty, and
// whether the observation agrees with the loss expected.
//
// Accuracy: One mass with one law of loss. The uncertainty holds the reading scatter, the room
// temperature and the value given; not a fixed error of the probe.
//
// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
// has stopped; measure before you open or drain anything.
//
// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
//
// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
//
// The context holds the settings `times` (Times of the readings, rising, the burner being off and
// nothing switched in between); `temperatures` (Temperatures read at those times); NULL takes every
// default.
//
// Source: Newton's law of cooling, and its power-law form (Bejan and Kraus, Heat Transfer Handbook,
// eq. 3.286, quoted) (model).
//
// Source: JCGM 100:2008, 5.1 and H.3 (least squares and its uncertainty; room temperature and heat
// capacity in quadrature).
//
// `notices` may be NULL.
fw_status fw_cool_down_fit(const fw_context *context,
                           const fw_cool_down_fit_input *input,
                           fw_cool_down_fit_output *output,
                           fw_notices *notices);

// fw_cool_down_fit over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_cool_down_fit_batch(const fw_context *context,
                                 size_t rows,
                                 const fw_cool_down_fit_input *inputs,
                                 size_t input_stride,
                                 fw_cool_down_fit_output *outputs,
                                 size_t output_stride,
                                 uint16_t *row_status);

// Writes the defaults of fw_cool_down_fit into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_cool_down_fit_unset(fw_cool_down_fit_input *input);

// Wait until a surface may be touched.
//
// How long until a cooling surface has fallen to a contact temperature that the caller's policy states
// for its material and contact time.
//
// Accuracy: As the time constant; a bare surface cools more slowly towards the end than the
// exponential says, so that the wait may be a quarter longer.
//
// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
// has stopped; measure before you open or drain anything.
//
// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
//
// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
//
// The context holds the settings `policy` (Where the contact temperatures come from: a standard with
// edition, or a house rule, with its date. None is built in; that a hand can rest on metal below about
// 50 °C is common practice without a source); `thresholds` (Temperatures to list the times of, each
// with a name: for draining, for touching (a threshold is the caller's policy; that a hand can rest on
// metal below about 50 °C is common practice without a source), default ); NULL takes every default.
//
// Source: Newton's law of cooling (exponential with the time constant given).
//
// `notices` may be NULL.
fw_status fw_touch_wait(const fw_context *context,
                        const fw_touch_wait_input *input,
                        fw_touch_wait_output *output,
                        fw_notices *notices);

// fw_touch_wait over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_touch_wait_batch(const fw_context *context,
                              size_t rows,
                              const fw_touch_wait_input *inputs,
                              size_t input_stride,
                              fw_touch_wait_output *outputs,
                              size_t output_stride,
                              uint16_t *row_status);

// Writes the defaults of fw_touch_wait into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_touch_wait_unset(fw_touch_wait_input *input);

// Volume of a gas installation.
//
// Gas held by pipes, fittings and meter: what a tightness test and a purge are reckoned with.
//
// Accuracy: The tubes' tolerances, about 1 % to 3 %; fittings and meter as stated.
//
// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
// not none.
//
// The context holds the settings `pipes` (The pipes: a list of tables, each with length and either
// tube (by name), bore, or outside_diameter and wall; name if wanted); NULL takes every default.
//
// Source: Geometry (pipe volume from the bore).
//
// Source: common practice, no source (fittings as a share of the pipe volume).
//
// `notices` may be NULL.
fw_status fw_installation_volume(const fw_context *context,
                                 const fw_installation_volume_input *input,
                                 fw_installation_volume_output *output,
                                 fw_notices *notices);

// fw_installation_volume over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_installation_volume_batch(const fw_context *context,
                                       size_t rows,
                                       const fw_installation_volume_input *inputs,
                                       size_t input_stride,
                                       fw_installation_volume_output *outputs,
                                       size_t output_stride,
                                       uint16_t *row_status);

// Writes the defaults of fw_installation_volume into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_installation_volume_unset(fw_installation_volume_input *input);

// Tightness test.
//
// Leak rate at reference conditions from a pressure drop, with the effects of temperature, barometer
// and gauge liquid apart, and the smallest leak the test could show.
//
// Accuracy: The gas law is better than the readings: 0.1 K of gas temperature moves the gauge by 0.36
// mbar, so temperature decides. Volume enters in proportion.
//
// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
// not none.
//
// Caution: Smell of gas, or a carbon monoxide alarm: stop, ventilate, isolate the gas, touch no
// switches, leave, and call the gas emergency service.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// Source: Ideal gas law, V/R (p1/T1 - p2/T2) with absolute pressures; textbook (amount lost).
//
// Source: CODATA 2018 (molar gas constant).
//
// Source: NIST SP 811 (2008) B.8 (conventional density of water in a liquid gauge).
//
// `notices` may be NULL.
fw_status fw_tightness_test(const fw_tightness_test_input *input,
                            fw_tightness_test_output *output,
                            fw_notices *notices);

// fw_tightness_test over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_tightness_test_batch(size_t rows,
                                  const fw_tightness_test_input *inputs,
                                  size_t input_stride,
                                  fw_tightness_test_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_tightness_test into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_tightness_test_unset(fw_tightness_test_input *input);

// Planning a tightness test.
//
// The smallest leak a gauge shows in a given time, the time a given leak needs to show, and what
// temperature does to the reading.
//
// Accuracy: As good as the volume and the readable movement stated.
//
// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
// not none.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// Source: Ideal gas law at constant volume; textbook (all results).
//
// `notices` may be NULL.
fw_status fw_tightness_plan(const fw_tightness_plan_input *input,
                            fw_tightness_plan_output *output,
                            fw_notices *notices);

// fw_tightness_plan over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_tightness_plan_batch(size_t rows,
                                  const fw_tightness_plan_input *inputs,
                                  size_t input_stride,
                                  fw_tightness_plan_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_tightness_plan into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_tightness_plan_unset(fw_tightness_plan_input *input);

// Let-by of a shut valve.
//
// Flow past a shut valve from the pressure rise behind it, temperature and barometer taken out.
//
// Accuracy: As good as the volume and the readable movement; 0.1 K of gas temperature moves the gauge
// by 0.36 mbar.
//
// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
// not none.
//
// Caution: Smell of gas, or a carbon monoxide alarm: stop, ventilate, isolate the gas, touch no
// switches, leave, and call the gas emergency service.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// Source: Ideal gas law, V/R (p2/T2 - p1/T1) with absolute pressures; textbook (all results).
//
// `notices` may be NULL.
fw_status fw_let_by(const fw_let_by_input *input, fw_let_by_output *output, fw_notices *notices);

// fw_let_by over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_let_by_batch(size_t rows,
                          const fw_let_by_input *inputs,
                          size_t input_stride,
                          fw_let_by_output *outputs,
                          size_t output_stride,
                          uint16_t *row_status);

// Writes the defaults of fw_let_by into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_let_by_unset(fw_let_by_input *input);

// A leak at another pressure or with another gas.
//
// What a leak measured at test pressure, perhaps with air, would be at operating pressure with the
// gas: as a fine seep and as a hole, between which the truth lies.
//
// Accuracy: The two forms bound the leak; which applies is a judgement. Expansion of the gas is
// neglected, so keep to pressures well below one bar.
//
// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
// not none.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// The context holds the settings `test_gas` (The gas tested with: "air", or a fuel as fuel_properties
// takes it, default air); `operating_gas` (The gas in operation: a fuel as fuel_properties takes it,
// or "air", default G20); NULL takes every default.
//
// Source: Hagen-Poiseuille; textbook (laminar seep: with pressure over viscosity).
//
// Source: Orifice equation; textbook (hole: with the root of pressure over density).
//
// Source: Lemmon & Jacobsen 2004, Int. J. Thermophys. 25, 21 (viscosity of air).
//
// `notices` may be NULL.
fw_status fw_leak_scaling(const fw_context *context,
                          const fw_leak_scaling_input *input,
                          fw_leak_scaling_output *output,
                          fw_notices *notices);

// fw_leak_scaling over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_leak_scaling_batch(const fw_context *context,
                                size_t rows,
                                const fw_leak_scaling_input *inputs,
                                size_t input_stride,
                                fw_leak_scaling_output *outputs,
                                size_t output_stride,
                                uint16_t *row_status);

// Writes the defaults of fw_leak_scaling into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_leak_scaling_unset(fw_leak_scaling_input *input);

// Class of a leak.
//
// The class of a leak rate in a list of classes that the caller takes from the local rule.
//
// Accuracy: A comparison without rounding; where the leak is uncertain, judge it with its uncertainty.
//
// Caution: Test pressure, waiting time, duration and the leak that may stay in use are set by the
// local procedure, not here. No movement on the gauge means no leak above the smallest detectable one,
// not none.
//
// Caution: Smell of gas, or a carbon monoxide alarm: stop, ventilate, isolate the gas, touch no
// switches, leave, and call the gas emergency service.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// The context holds the settings `classes` (The classes of the local rule: a list of tables, each with
// name and from (the leak at which it begins, which belongs to it; 0 for the first)); NULL takes every
// default.
//
// Source: The caller's rule (classes).
//
// `notices` may be NULL.
fw_status fw_leak_class(const fw_context *context,
                        const fw_leak_class_input *input,
                        fw_leak_class_output *output,
                        fw_notices *notices);

// fw_leak_class over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_leak_class_batch(const fw_context *context,
                              size_t rows,
                              const fw_leak_class_input *inputs,
                              size_t input_stride,
                              fw_leak_class_output *outputs,
                              size_t output_stride,
                              uint16_t *row_status);

// Writes the defaults of fw_leak_class into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_leak_class_unset(fw_leak_class_input *input);

// Purge volume and time.
//
// Volume of gas to pass through an installation, in meter readings and in time. The factor comes from
// the local procedure.
//
// Accuracy: Plain proportion.
//
// Caution: Air and gas pass through the explosive range while purging. Follow the local procedure for
// venting, ignition sources and proof of completion; a volume or a time reckoned here does not prove
// it.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// Source: common practice, no source (purge volume as a multiple of the installation volume).
//
// `notices` may be NULL.
fw_status fw_purge(const fw_purge_input *input, fw_purge_output *output, fw_notices *notices);

// fw_purge over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_purge_batch(size_t rows,
                         const fw_purge_input *inputs,
                         size_t input_stride,
                         fw_purge_output *outputs,
                         size_t output_stride,
                         uint16_t *row_status);

// Writes the defaults of fw_purge into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_purge_unset(fw_purge_input *input);

// Purge flow from a velocity.
//
// Flow that keeps a given velocity in a pipe, and the time the front takes to pass its length.
//
// Accuracy: Geometry; the velocity needed to sweep the pipe is not given here.
//
// Caution: Air and gas pass through the explosive range while purging. Follow the local procedure for
// venting, ignition sources and proof of completion; a volume or a time reckoned here does not prove
// it.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// Source: Continuity; textbook (all results).
//
// `notices` may be NULL.
fw_status fw_purge_velocity(const fw_purge_velocity_input *input,
                            fw_purge_velocity_output *output,
                            fw_notices *notices);

// fw_purge_velocity over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_purge_velocity_batch(size_t rows,
                                  const fw_purge_velocity_input *inputs,
                                  size_t input_stride,
                                  fw_purge_velocity_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_purge_velocity into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_purge_velocity_unset(fw_purge_velocity_input *input);

// Cool-down of one hot mass.
//
// How long a hot mass (a block, a casing, a standing pipe) takes to fall to a temperature, by a linear
// loss, natural convection and radiation together.
//
// Accuracy: Exact to about 1e-11 for the loss stated; loss coefficients are commonly known to 10 to 30
// %, the heat capacity of the metal to 10 %.
//
// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
// has stopped; measure before you open or drain anything.
//
// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
//
// Caution: A pump on overrun may be fed from a permanent supply: prove it dead before work.
//
// Source: first law; Newton's law of cooling (balance and exponential).
//
// Source: Stefan-Boltzmann law, constant of CODATA 2018 (radiation to a room of one temperature).
//
// Source: Abramowitz and Stegun, Table 25.4 (quadrature where there is no closed form).
//
// `notices` may be NULL.
fw_status fw_block_cool_down(const fw_block_cool_down_input *input,
                             fw_block_cool_down_output *output,
                             fw_notices *notices);

// fw_block_cool_down over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_block_cool_down_batch(size_t rows,
                                   const fw_block_cool_down_input *inputs,
                                   size_t input_stride,
                                   fw_block_cool_down_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_block_cool_down into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_block_cool_down_unset(fw_block_cool_down_input *input);

// Cycling of a burner.
//
// On and off times, starts per hour and duty of a burner under a steady load, the effect of the
// differential, and the water content for a wanted on-time; the heated mass has one temperature.
//
// Accuracy: Exact to about 1e-11 for one mass. A real circuit has a delay between flow and return that
// shortens the on-time and lengthens the off-time: see circuit_cycling.
//
// Source: first law for one mass (on and off times).
//
// Source: EN 442 (exponent form, from memory) (emitter load).
//
// Source: IAPWS R7-97(2012) near 65 °C, rounded (980 kg/m³ and 4185 J/(kg·K) for the water to add).
//
// `notices` may be NULL.
fw_status fw_burner_cycling(const fw_burner_cycling_input *input,
                            fw_burner_cycling_output *output,
                            fw_notices *notices);

// fw_burner_cycling over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_burner_cycling_batch(size_t rows,
                                  const fw_burner_cycling_input *inputs,
                                  size_t input_stride,
                                  fw_burner_cycling_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_burner_cycling into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_burner_cycling_unset(fw_burner_cycling_input *input);

// Content and mass of a length of tube.
//
// Bore, water content, mass and heat capacity of a length of tube of a standard size or of any size.
//
// Accuracy: Exact for the nominal size; walls have tolerances of 10 % and more, which move the content
// by a few percent.
//
// The context holds the settings `tube` (A tube by name ("copper 15x0.7", "steel medium 1/2",
// "multilayer 16x2"), or by value: { outer_diameter, wall_thickness, material (a metal's name, copper
// if left out), roughness (0.0015 mm if left out) }); NULL takes every default.
//
// Source: EN 1057, EN 10255, EN 10305-3, EN ISO 15875, EN ISO 21003; each size says how it was seen
// (outside diameters and walls).
//
// Source: geometry (content and mass).
//
// `notices` may be NULL.
fw_status fw_tube_run(const fw_context *context,
                      const fw_tube_run_input *input,
                      fw_tube_run_output *output,
                      fw_notices *notices);

// fw_tube_run over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_tube_run_batch(const fw_context *context,
                            size_t rows,
                            const fw_tube_run_input *inputs,
                            size_t input_stride,
                            fw_tube_run_output *outputs,
                            size_t output_stride,
                            uint16_t *row_status);

// Writes the defaults of fw_tube_run into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_tube_run_unset(fw_tube_run_input *input);

// Properties of a material.
//
// Density, heat capacity, conductivity and emissivity of a metal, an insulation or a finish, with the
// spread of the prints.
//
// Accuracy: Metals 5 %, insulation 10 % as new and dry, emissivity as its spread.
//
// The context holds the settings `material` (A metal, an insulation or a surface finish, one of
// copper, iron, aluminium, carbon steel, stainless steel 304, cast iron 4 % C, grey cast iron, brass
// 70/30, cast aluminium alloy, PEX, multilayer wall, mineral wool, polyisocyanurate, calcium silicate,
// elastomeric foam, polyethylene foam, phenolic foam, polished copper, tarnished copper, paint, black
// steel, cast iron surface, aluminium paint, polished aluminium cladding, bright galvanised steel,
// plastic, insulation jacket); NULL takes every default.
//
// Source: Kutz, Mechanical Engineers' Handbook vol. 4; Incropera Table A.1; Holman; Callister (metals;
// which row comes from which is told in the table).
//
// Source: UK Fuel Efficiency Booklet 8; common practice (insulation).
//
// Source: textbook ranges, from memory; ISO 12241:2008 Table 2; Cengel (emissivity).
//
// `notices` may be NULL.
fw_status fw_material_properties(const fw_context *context,
                                 const fw_material_properties_input *input,
                                 fw_material_properties_output *output,
                                 fw_notices *notices);

// fw_material_properties over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_material_properties_batch(const fw_context *context,
                                       size_t rows,
                                       const fw_material_properties_input *inputs,
                                       size_t input_stride,
                                       fw_material_properties_output *outputs,
                                       size_t output_stride,
                                       uint16_t *row_status);

// Writes the defaults of fw_material_properties into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_material_properties_unset(fw_material_properties_input *input);

// Flow from heat output and temperature drop.
//
// The water flow that carries a heat output between flow and return temperature, from the enthalpies
// of the real liquid.
//
// Accuracy: 0.1 % for water; about 2 % for glycol mixtures, whose makers' products differ. The
// readings limit it.
//
// The context holds the settings `fluid` (What circulates; a glycol's share is the input
// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
// every default.
//
// Source: IAPWS SR6-08(2011) (enthalpy and density of water).
//
// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries
// them (glycol mixtures).
//
// Source: common practice, no source (the rule of thumb with 4186 J/(kg K) and 1 kg/L).
//
// `notices` may be NULL.
fw_status fw_flow_from_heat(const fw_context *context,
                            const fw_flow_from_heat_input *input,
                            fw_flow_from_heat_output *output,
                            fw_notices *notices);

// fw_flow_from_heat over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_flow_from_heat_batch(const fw_context *context,
                                  size_t rows,
                                  const fw_flow_from_heat_input *inputs,
                                  size_t input_stride,
                                  fw_flow_from_heat_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_flow_from_heat into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_flow_from_heat_unset(fw_flow_from_heat_input *input);

// Heat output from flow and temperature drop.
//
// The heat that a measured water flow carries between flow and return temperature: the output by the
// water side.
//
// Accuracy: 0.1 % for water besides the readings; a drop of 10 K read to 0.5 K at each end is itself 7
// % uncertain.
//
// The context holds the settings `fluid` (What circulates; a glycol's share is the input
// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water);
// `flow_measured_in` (The pipe in which the flow was measured: its temperature fixes the density, one
// of return, flow, default return); NULL takes every default.
//
// Source: IAPWS SR6-08(2011) (enthalpy and density of water).
//
// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries
// them (glycol mixtures).
//
// `notices` may be NULL.
fw_status fw_heat_from_flow(const fw_context *context,
                            const fw_heat_from_flow_input *input,
                            fw_heat_from_flow_output *output,
                            fw_notices *notices);

// fw_heat_from_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_heat_from_flow_batch(const fw_context *context,
                                  size_t rows,
                                  const fw_heat_from_flow_input *inputs,
                                  size_t input_stride,
                                  fw_heat_from_flow_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_heat_from_flow into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_heat_from_flow_unset(fw_heat_from_flow_input *input);

// Emitter output at another condition.
//
// What a radiator rated at one flow, return and room temperature gives at another, and the rating that
// a wanted output needs there.
//
// Accuracy: 3 % near the rated condition for an emitter that is mounted and connected as tested; 10 %
// at a third of the rated excess or with small flows.
//
// The context holds the settings `mean_excess` (How water temperature is averaged: arithmetic as EN
// 442 rates emitters, or logarithmic, nearer the truth at large drops. Rated and actual condition
// alike, one of arithmetic, logarithmic, default arithmetic); NULL takes every default.
//
// Source: EN 442-2, characteristic equation (output proportional to a power of the mean excess
// temperature; rating at 75/65/20 °C).
//
// Source: textbook, heat exchanger theory (logarithmic mean).
//
// Source: common practice, no source (exponent 1.3 where none is stated; logarithmic mean where the
// return excess is below 0.7 of the flow's).
//
// `notices` may be NULL.
fw_status fw_emitter_output(const fw_context *context,
                            const fw_emitter_output_input *input,
                            fw_emitter_output_output *output,
                            fw_notices *notices);

// fw_emitter_output over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_emitter_output_batch(const fw_context *context,
                                  size_t rows,
                                  const fw_emitter_output_input *inputs,
                                  size_t input_stride,
                                  fw_emitter_output_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_emitter_output into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_emitter_output_unset(fw_emitter_output_input *input);

// Emitter at a water flow.
//
// The return temperature at which the heat the water gives up is the heat the emitter gives off, and
// that heat.
//
// Accuracy: 3 % near the rated condition for an emitter that is mounted and connected as tested; 10 %
// at a third of the rated excess or with small flows.
//
// The context holds the settings `mean_excess` (How water temperature is averaged: arithmetic as EN
// 442 rates emitters, or logarithmic, nearer the truth at large drops. Rated and actual condition
// alike, one of arithmetic, logarithmic, default arithmetic); NULL takes every default.
//
// Source: EN 442-2, characteristic equation (output proportional to a power of the mean excess
// temperature; rating at 75/65/20 °C).
//
// Source: textbook, heat exchanger theory (logarithmic mean).
//
// Source: common practice, no source (exponent 1.3 where none is stated; logarithmic mean where the
// return excess is below 0.7 of the flow's).
//
// `notices` may be NULL.
fw_status fw_emitter_at_flow(const fw_context *context,
                             const fw_emitter_at_flow_input *input,
                             fw_emitter_at_flow_output *output,
                             fw_notices *notices);

// fw_emitter_at_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_emitter_at_flow_batch(const fw_context *context,
                                   size_t rows,
                                   const fw_emitter_at_flow_input *inputs,
                                   size_t input_stride,
                                   fw_emitter_at_flow_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_emitter_at_flow into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_emitter_at_flow_unset(fw_emitter_at_flow_input *input);

// Pressure drop of a run of tube.
//
// Velocity and pressure drop of water or a glycol mixture through a length of tube with its fittings.
//
// Accuracy: 5 % for the tube as new, 20 % for fittings, whose coefficients differ from make to make; a
// factor of up to 2 in transition.
//
// The context holds the settings `tube` (A tube by name ("copper 15x0.7", "steel medium 1/2",
// "multilayer 16x2"), or by value: { outer_diameter, wall_thickness, material (a metal's name, copper
// if left out), roughness (0.0015 mm if left out) }); `fluid` (What circulates; a glycol's share is
// the input `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water);
// `friction` (Equation for the turbulent friction factor, one of colebrook, haaland, swamee-jain,
// default colebrook); `fittings` (Names of fittings with their number, for instance { "elbow 90" = 6,
// "tee branch" = 2 }); NULL takes every default.
//
// Source: Darcy and Weisbach; Hagen and Poiseuille below Re 2300; Colebrook 1939 from Re 4000
// (friction in the tube).
//
// Source: Crane TP-410M (2009); Cengel & Cimbala Table 8-4, from memory (loss coefficients of
// fittings).
//
// Source: IAPWS SR6-08(2011), IAPWS R12-08 (density and viscosity of water).
//
// Source: common practice, no source (velocities of 0.2 m/s (air) and 1 m/s (noise)).
//
// `notices` may be NULL.
fw_status fw_water_pressure_drop(const fw_context *context,
                                 const fw_water_pressure_drop_input *input,
                                 fw_water_pressure_drop_output *output,
                                 fw_notices *notices);

// fw_water_pressure_drop over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_water_pressure_drop_batch(const fw_context *context,
                                       size_t rows,
                                       const fw_water_pressure_drop_input *inputs,
                                       size_t input_stride,
                                       fw_water_pressure_drop_output *outputs,
                                       size_t output_stride,
                                       uint16_t *row_status);

// Writes the defaults of fw_water_pressure_drop into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_water_pressure_drop_unset(fw_water_pressure_drop_input *input);

// Resistance of a fitting.
//
// Loss coefficient and equivalent length of a fitting or valve in a tube of a bore.
//
// Accuracy: 20 to 50 %: prints differ, and so do makes.
//
// The context holds the settings `fitting` (The fitting or valve, one of elbow 90, elbow 45, tee
// through, tee branch, globe valve, ball valve, gate valve, angle valve, swing check valve, bend 90
// radius 1, bend 90 radius 1.5, bend 90 radius 2, bend 90 radius 3, bend 90 radius 4, bend 90 radius
// 6, smooth bend 90 flanged, smooth bend 90 threaded, mitre bend 90, mitre bend 90 with vanes,
// threaded elbow 45, return bend 180 flanged, return bend 180 threaded, tee branch flanged, tee branch
// threaded, tee through flanged, tee through threaded, threaded union, globe valve open, angle valve
// open, ball valve open, swing check valve open, gate valve open, gate valve quarter closed, gate
// valve half closed, gate valve three quarters closed, inlet sharp, inlet rounded, inlet re-entrant,
// outlet, gas bend 45 copper 15 mm, gas bend 90 copper 15 mm, gas bend 45 copper 22 mm, gas bend 90
// copper 22 mm); NULL takes every default.
//
// Source: Crane TP-410M (2009), as evaluated with the library fluids 1.3.1 (multiples of f_T, and f_T
// itself).
//
// Source: Cengel & Cimbala, Fluid Mechanics, Table 8-4, from memory (loss coefficients that hold for
// any bore).
//
// Source: BS 6891:2015, seen in a secondary quotation (equivalent lengths of gas bends).
//
// `notices` may be NULL.
fw_status fw_fitting_loss(const fw_context *context,
                          const fw_fitting_loss_input *input,
                          fw_fitting_loss_output *output,
                          fw_notices *notices);

// fw_fitting_loss over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_fitting_loss_batch(const fw_context *context,
                                size_t rows,
                                const fw_fitting_loss_input *inputs,
                                size_t input_stride,
                                fw_fitting_loss_output *outputs,
                                size_t output_stride,
                                uint16_t *row_status);

// Writes the defaults of fw_fitting_loss into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_fitting_loss_unset(fw_fitting_loss_input *input);

// Static head.
//
// The pressure that a height of water makes at its temperature.
//
// Accuracy: 0.001 % for water besides the height; local gravity differs from standard by up to 0.3 %.
//
// The context holds the settings `fluid` (What circulates; a glycol's share is the input
// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
// every default.
//
// Source: hydrostatics (density times gravity times height).
//
// Source: IAPWS SR6-08(2011) (density of water).
//
// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010 (density of glycol mixtures).
//
// `notices` may be NULL.
fw_status fw_static_head(const fw_context *context,
                         const fw_static_head_input *input,
                         fw_static_head_output *output,
                         fw_notices *notices);

// fw_static_head over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_static_head_batch(const fw_context *context,
                               size_t rows,
                               const fw_static_head_input *inputs,
                               size_t input_stride,
                               fw_static_head_output *outputs,
                               size_t output_stride,
                               uint16_t *row_status);

// Writes the defaults of fw_static_head into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_static_head_unset(fw_static_head_input *input);

// Duty point of a pump.
//
// Flow and pressure at which a pump's curve meets the curve of the system.
//
// Accuracy: As the curve: makers' pump curves are within about 5 to 10 %, read-off points add to that.
//
// The context holds the settings `pump_flows` (Flows of points of the pump curve, rising);
// `pump_pressures` (Pressures (not heads) of the same points); NULL takes every default.
//
// Source: textbook, fluid mechanics (a system's drop grows as a power of the flow; the pump works
// where the curves meet).
//
// Source: common practice, no source (exponent 2).
//
// `notices` may be NULL.
fw_status fw_duty_point(const fw_context *context,
                        const fw_duty_point_input *input,
                        fw_duty_point_output *output,
                        fw_notices *notices);

// fw_duty_point over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_duty_point_batch(const fw_context *context,
                              size_t rows,
                              const fw_duty_point_input *inputs,
                              size_t input_stride,
                              fw_duty_point_output *outputs,
                              size_t output_stride,
                              uint16_t *row_status);

// Writes the defaults of fw_duty_point into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_duty_point_unset(fw_duty_point_input *input);

// Kv of a balancing valve.
//
// The Kv to which a valve must be set to take a pressure drop at a flow.
//
// Accuracy: Exact for turbulent flow; valves hold their scale to about 10 %, worse when nearly shut.
//
// The context holds the settings `fluid` (What circulates; a glycol's share is the input
// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
// every default.
//
// Source: EN 60534-1 (definition of Kv: m³/h of water at 1 bar).
//
// Source: IAPWS SR6-08(2011); Melinder 2010 (density).
//
// `notices` may be NULL.
fw_status fw_valve_kv(const fw_context *context,
                      const fw_valve_kv_input *input,
                      fw_valve_kv_output *output,
                      fw_notices *notices);

// fw_valve_kv over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_valve_kv_batch(const fw_context *context,
                            size_t rows,
                            const fw_valve_kv_input *inputs,
                            size_t input_stride,
                            fw_valve_kv_output *outputs,
                            size_t output_stride,
                            uint16_t *row_status);

// Writes the defaults of fw_valve_kv into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_valve_kv_unset(fw_valve_kv_input *input);

// Index circuit and balance.
//
// Pressure drop of every circuit, the index circuit, and the Kv to which the balancing valve of each
// other circuit is set.
//
// Accuracy: As water_pressure_drop: 5 % for tube, 20 % for fittings.
//
// The context holds the settings `fluid` (What circulates; a glycol's share is the input
// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); `friction`
// (Equation for the turbulent friction factor, one of colebrook, haaland, swamee-jain, default
// colebrook); `sections` (Lengths of tube with one flow each: a list of { name, tube, length,
// volume_flow, fittings, loss_coefficient, fixed_drop }; fixed_drop is that of a boiler, emitter or
// open valve at this flow); `circuits` (Ways of the water from the pump and back: a list of { name,
// sections }, the sections by name); NULL takes every default.
//
// Source: Darcy and Weisbach, as in water_pressure_drop (drop of each section).
//
// Source: EN 60534-1 (definition of Kv: m³/h of water at 1 bar).
//
// Source: textbook, hydronics (the pump serves the index circuit; the others throttle the difference).
//
// `notices` may be NULL.
fw_status fw_circuit_balance(const fw_context *context,
                             const fw_circuit_balance_input *input,
                             fw_circuit_balance_output *output,
                             fw_notices *notices);

// fw_circuit_balance over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_circuit_balance_batch(const fw_context *context,
                                   size_t rows,
                                   const fw_circuit_balance_input *inputs,
                                   size_t input_stride,
                                   fw_circuit_balance_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_circuit_balance into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_circuit_balance_unset(fw_circuit_balance_input *input);

// Expansion vessel.
//
// Expansion volume, water reserve, pre-charge, vessel size and fill pressure of a sealed heating
// system.
//
// Accuracy: Expansion of water 0.01 % of itself, of glycol 5 %; the content of the system is seldom
// known to 10 %: round the vessel up.
//
// Caution: Hot water under pressure scalds and flashes to steam when let out: cool and relieve the
// system before it is opened.
//
// The context holds the settings `fluid` (What circulates; a glycol's share is the input
// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
// every default.
//
// Source: EN 12828, annex on expansion vessels, from memory (reserve of 0.5 % and at least 3 L, of a
// fifth of vessels up to 15 L; final pressure 0.5 bar (above 5 bar: a tenth) below the safety valve;
// vessel and fill pressure).
//
// Source: Boyle's law (gas side of the vessel, taken as isothermal).
//
// Source: IAPWS SR6-08(2011) (density of water).
//
// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010 (density of glycol mixtures).
//
// Source: common practice, no source (0.3 bar above the static pressure and 0.7 bar as least
// pre-charge).
//
// `notices` may be NULL.
fw_status fw_expansion_vessel(const fw_context *context,
                              const fw_expansion_vessel_input *input,
                              fw_expansion_vessel_output *output,
                              fw_notices *notices);

// fw_expansion_vessel over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_expansion_vessel_batch(const fw_context *context,
                                    size_t rows,
                                    const fw_expansion_vessel_input *inputs,
                                    size_t input_stride,
                                    fw_expansion_vessel_output *outputs,
                                    size_t output_stride,
                                    uint16_t *row_status);

// Writes the defaults of fw_expansion_vessel into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_expansion_vessel_unset(fw_expansion_vessel_input *input);

// Expansion vessel as found.
//
// Cold and hot pressure of a sealed system with the vessel and pre-charge found on it, and the water
// the safety valve would let out.
//
// Accuracy: The hot pressure to 0.1 bar if content and vessel are known to a few percent; gas and
// water are taken at one temperature.
//
// Caution: Hot water under pressure scalds and flashes to steam when let out: cool and relieve the
// system before it is opened.
//
// The context holds the settings `fluid` (What circulates; a glycol's share is the input
// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
// every default.
//
// Source: EN 12828, annex on expansion vessels, from memory (reserve of 0.5 % and at least 3 L, of a
// fifth of vessels up to 15 L; final pressure 0.5 bar (above 5 bar: a tenth) below the safety valve;
// vessel and fill pressure).
//
// Source: Boyle's law (gas side of the vessel, taken as isothermal).
//
// Source: IAPWS SR6-08(2011) (density of water).
//
// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010 (density of glycol mixtures).
//
// Source: common practice, no source (0.3 bar above the static pressure and 0.7 bar as least
// pre-charge).
//
// `notices` may be NULL.
fw_status fw_vessel_check(const fw_context *context,
                          const fw_vessel_check_input *input,
                          fw_vessel_check_output *output,
                          fw_notices *notices);

// fw_vessel_check over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_vessel_check_batch(const fw_context *context,
                                size_t rows,
                                const fw_vessel_check_input *inputs,
                                size_t input_stride,
                                fw_vessel_check_output *outputs,
                                size_t output_stride,
                                uint16_t *row_status);

// Writes the defaults of fw_vessel_check into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_vessel_check_unset(fw_vessel_check_input *input);

// Water content of a heating system.
//
// Water in pipes, emitters, boiler, cylinder coil and cistern, with the mass and heat capacity of the
// pipes.
//
// Accuracy: A few percent where every run is counted; guessed systems are seldom within 20 %.
//
// The context holds the settings `pipes` (Runs of pipe: a list of { tube, length, name }, the tube by
// name or by value as in `tube_run`, default none); NULL takes every default.
//
// Source: geometry, with the tubes of tube_run (content of pipes).
//
// Source: makers' tables, given by the caller (content of boiler, emitters and coil).
//
// `notices` may be NULL.
fw_status fw_system_content(const fw_context *context,
                            const fw_system_content_input *input,
                            fw_system_content_output *output,
                            fw_notices *notices);

// fw_system_content over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_system_content_batch(const fw_context *context,
                                  size_t rows,
                                  const fw_system_content_input *inputs,
                                  size_t input_stride,
                                  fw_system_content_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_system_content into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_system_content_unset(fw_system_content_input *input);

// Heat held between two temperatures.
//
// Heat capacity of iron, steel, copper, aluminium, insulation and water, and the heat they give off
// between two temperatures.
//
// Accuracy: Water 0.1 %; metals 5 %, since their heat capacity grows with temperature and cast iron's
// is disputed.
//
// Caution: Hot water under pressure scalds and flashes to steam when let out: cool and relieve the
// system before it is opened.
//
// Caution: A block and its water stay hot for tens of minutes after the burner is off.
//
// The context holds the settings `fluid` (What circulates; a glycol's share is the input
// `glycol_mass_fraction`, one of water, propylene glycol, ethylene glycol, default water); NULL takes
// every default.
//
// Source: IAPWS SR6-08(2011) (enthalpy and density of water).
//
// Source: Incropera Table A.1 (carbon steel from memory) (heat capacity of copper 385, aluminium 903,
// carbon steel 434 J/(kg K) at 300 K).
//
// Source: Holman Table A-2 (420) and Callister (544), from memory (spread of the heat capacity of cast
// iron; the default of 500 lies between).
//
// Source: ISO 10456 Table 3, from memory (heat capacity of mineral wool 1030 J/(kg K)).
//
// `notices` may be NULL.
fw_status fw_heat_store(const fw_context *context,
                        const fw_heat_store_input *input,
                        fw_heat_store_output *output,
                        fw_notices *notices);

// fw_heat_store over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_heat_store_batch(const fw_context *context,
                              size_t rows,
                              const fw_heat_store_input *inputs,
                              size_t input_stride,
                              fw_heat_store_output *outputs,
                              size_t output_stride,
                              uint16_t *row_status);

// Writes the defaults of fw_heat_store into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_heat_store_unset(fw_heat_store_input *input);

// Inhibitor dose.
//
// Litres of inhibitor that a system's content needs, less what is still in it.
//
// Accuracy: As the content is known; a tenth too much does no harm, too little does.
//
// Caution: Products of different makers may not mix: flush before changing, and follow the label.
//
// Source: the product's label, given by the caller (dose).
//
// Source: volume balance (shares by volume, contraction on mixing left out).
//
// Source: common practice, no source (1 L in 100 L where the label is not at hand).
//
// `notices` may be NULL.
fw_status fw_inhibitor_dose(const fw_inhibitor_dose_input *input,
                            fw_inhibitor_dose_output *output,
                            fw_notices *notices);

// fw_inhibitor_dose over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_inhibitor_dose_batch(size_t rows,
                                  const fw_inhibitor_dose_input *inputs,
                                  size_t input_stride,
                                  fw_inhibitor_dose_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_inhibitor_dose into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_inhibitor_dose_unset(fw_inhibitor_dose_input *input);

// Antifreeze dose.
//
// Share of glycol that protects down to a temperature, and the product to add for a content.
//
// Accuracy: 1 K of freezing point for plain glycol; an inhibited product follows its maker's table,
// which goes first.
//
// Caution: Ethylene glycol is poisonous: not where it can reach drinking water. Drained mixtures are
// waste, not for the ground.
//
// The context holds the settings `antifreeze` (Which glycol, one of propylene glycol, ethylene glycol,
// default propylene glycol); NULL takes every default.
//
// Source: Melinder, Properties of Secondary Working Fluids, IIR 2010, coefficients as CoolProp carries
// them (freezing point against mass fraction).
//
// Source: from memory (density of pure glycol at 20 °C: propylene 1036, ethylene 1113 kg/m³, for
// shares by volume).
//
// Source: volume balance (shares by volume, contraction on mixing left out).
//
// Source: common practice, no source (least share of a fifth by volume).
//
// `notices` may be NULL.
fw_status fw_antifreeze_dose(const fw_context *context,
                             const fw_antifreeze_dose_input *input,
                             fw_antifreeze_dose_output *output,
                             fw_notices *notices);

// fw_antifreeze_dose over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_antifreeze_dose_batch(const fw_context *context,
                                   size_t rows,
                                   const fw_antifreeze_dose_input *inputs,
                                   size_t input_stride,
                                   fw_antifreeze_dose_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_antifreeze_dose into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_antifreeze_dose_unset(fw_antifreeze_dose_input *input);

// Partial drain and refill.
//
// Strength of inhibitor or antifreeze left after part of the water was drained and replaced, and the
// refill that restores it.
//
// Accuracy: Holds for a well mixed system; what stays in emitters and dead legs does not mix at once.
//
// Caution: Hot water under pressure scalds and flashes to steam when let out: cool and relieve the
// system before it is opened.
//
// Caution: Let hot water cool before draining; check for backflow protection before filling from the
// main.
//
// Source: volume balance (shares by volume, contraction on mixing left out).
//
// `notices` may be NULL.
fw_status fw_partial_drain(const fw_partial_drain_input *input,
                           fw_partial_drain_output *output,
                           fw_notices *notices);

// fw_partial_drain over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_partial_drain_batch(size_t rows,
                                 const fw_partial_drain_input *inputs,
                                 size_t input_stride,
                                 fw_partial_drain_output *outputs,
                                 size_t output_stride,
                                 uint16_t *row_status);

// Writes the defaults of fw_partial_drain into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_partial_drain_unset(fw_partial_drain_input *input);

// Gas through an injector.
//
// Flow and heat input of burner injectors from bore, pressure, discharge coefficient and relative
// density.
//
// Accuracy: The discharge coefficient decides: 0.8 to 0.95 by the shape of the bore, unknown to about
// 5 % unless measured. Expansion costs 0.2 % for each 10 mbar.
//
// Caution: Change an injector, a pressure or a gas only as the appliance maker allows, and prove
// combustion afterwards with an analyser.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
// value, such as "15/15" or "25/0", default 15/15); NULL takes every default.
//
// Source: Orifice equation for a small pressure difference; textbook (flow).
//
// Source: Fulford, biogas stove burner design; seen in a public reproduction (practical form 0.0467
// C_d A √(p/d)).
//
// `notices` may be NULL.
fw_status fw_injector_flow(const fw_context *context,
                           const fw_injector_flow_input *input,
                           fw_injector_flow_output *output,
                           fw_notices *notices);

// fw_injector_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_injector_flow_batch(const fw_context *context,
                                 size_t rows,
                                 const fw_injector_flow_input *inputs,
                                 size_t input_stride,
                                 fw_injector_flow_output *outputs,
                                 size_t output_stride,
                                 uint16_t *row_status);

// Writes the defaults of fw_injector_flow into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_injector_flow_unset(fw_injector_flow_input *input);

// Size of an injector.
//
// Bore of a burner injector for a heat input or a flow at a pressure.
//
// Accuracy: Half the error of the discharge coefficient; a drill is stepped more coarsely than that.
//
// Caution: Change an injector, a pressure or a gas only as the appliance maker allows, and prove
// combustion afterwards with an analyser.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
// value, such as "15/15" or "25/0", default 15/15); NULL takes every default.
//
// Source: Orifice equation for a small pressure difference; textbook (area).
//
// `notices` may be NULL.
fw_status fw_injector_size(const fw_context *context,
                           const fw_injector_size_input *input,
                           fw_injector_size_output *output,
                           fw_notices *notices);

// fw_injector_size over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_injector_size_batch(const fw_context *context,
                                 size_t rows,
                                 const fw_injector_size_input *inputs,
                                 size_t input_stride,
                                 fw_injector_size_output *outputs,
                                 size_t output_stride,
                                 uint16_t *row_status);

// Writes the defaults of fw_injector_size into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_injector_size_unset(fw_injector_size_input *input);

// Burner pressure, heat input and gas.
//
// Heat input at another burner pressure, gas, gas temperature or barometer by the square law of the
// injector, the pressure for a wanted heat input, and the injector for it.
//
// Accuracy: Within about 1 % from half to twice the pressure, if the injector is the only resistance
// and its discharge coefficient stays.
//
// Caution: Change an injector, a pressure or a gas only as the appliance maker allows, and prove
// combustion afterwards with an analyser.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
// value, such as "15/15" or "25/0", default 15/15); `new_fuel` (The gas in the new state, written like
// fuel; left out, it stays, default ); NULL takes every default.
//
// Source: Orifice equation for a small pressure difference; textbook (heat input with the root of
// pressure times gas density).
//
// Source: ISO 6976:2016, definition (Wobbe index).
//
// Source: common practice, no source (modified Wobbe index: Wobbe index over the root of the absolute
// gas temperature).
//
// `notices` may be NULL.
fw_status fw_burner_pressure(const fw_context *context,
                             const fw_burner_pressure_input *input,
                             fw_burner_pressure_output *output,
                             fw_notices *notices);

// fw_burner_pressure over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_burner_pressure_batch(const fw_context *context,
                                   size_t rows,
                                   const fw_burner_pressure_input *inputs,
                                   size_t input_stride,
                                   fw_burner_pressure_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_burner_pressure into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_burner_pressure_unset(fw_burner_pressure_input *input);

// Effect of altitude.
//
// Barometric pressure at a height, and with it the density of air and the heat input of a burner left
// as it was set at sea level.
//
// Accuracy: Weather of equal sea-level pressure departs from the standard atmosphere by about 0.5 % of
// the pressure for each 1000 m.
//
// Caution: Rules for derating at altitude are the maker's and the local code's; they are not reckoned
// here.
//
// Caution: Change an injector, a pressure or a gas only as the appliance maker allows, and prove
// combustion afterwards with an analyser.
//
// Source: ISO 2533:1975 standard atmosphere (constants from memory, checked on its sea-level values)
// (pressure with height).
//
// Source: Orifice equation; textbook (heat input with the root of gas density).
//
// `notices` may be NULL.
fw_status fw_altitude(const fw_altitude_input *input, fw_altitude_output *output, fw_notices *notices);

// fw_altitude over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_altitude_batch(size_t rows,
                            const fw_altitude_input *inputs,
                            size_t input_stride,
                            fw_altitude_output *outputs,
                            size_t output_stride,
                            uint16_t *row_status);

// Writes the defaults of fw_altitude into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_altitude_unset(fw_altitude_input *input);

// Pressure drop of gas in a pipe.
//
// Pressure lost by friction and fittings and gained or lost by height in a gas pipe, as a band where
// the flow is in transition, and the pressure left at its end.
//
// Accuracy: About 5 % of the drop in turbulent flow for a known bore, and the fifth power of the
// bore's error. Between Re 2300 and 4000 nobody knows the friction factor: low and high bound it.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
// value, such as "15/15" or "25/0", default 15/15); `friction` (Equation of the friction factor in
// turbulent flow, one of Colebrook, Haaland, Swamee-Jain, default Colebrook); `tube` (The tube by
// name, such as "copper 22x0.9"; left out, the bore is stated, default ); `fittings` (Names of
// fittings with their number, for instance { "elbow 90" = 4, "tee branch" = 1 }, as
// water_pressure_drop takes them; needs tube, default ); NULL takes every default.
//
// Source: Darcy-Weisbach; textbook (pressure drop).
//
// Source: Hagen-Poiseuille, 64/Re; Colebrook 1939, Haaland 1983 or Swamee & Jain 1976 as set (friction
// factor).
//
// Source: Isothermal compressible flow; textbook of gas dynamics (drop of the expanding gas).
//
// Source: ISO 6976:2016 (density and calorific value from the composition).
//
// Source: Wilke 1950, J. Chem. Phys. 18, 517, with the pure viscosities of the equations named in
// supply/viscosity.rs (viscosity).
//
// Source: Hydrostatics (gain or loss with height).
//
// `notices` may be NULL.
fw_status fw_gas_pipe_drop(const fw_context *context,
                           const fw_gas_pipe_drop_input *input,
                           fw_gas_pipe_drop_output *output,
                           fw_notices *notices);

// fw_gas_pipe_drop over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_gas_pipe_drop_batch(const fw_context *context,
                                 size_t rows,
                                 const fw_gas_pipe_drop_input *inputs,
                                 size_t input_stride,
                                 fw_gas_pipe_drop_output *outputs,
                                 size_t output_stride,
                                 uint16_t *row_status);

// Writes the defaults of fw_gas_pipe_drop into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_gas_pipe_drop_unset(fw_gas_pipe_drop_input *input);

// Discharge of gas from a pipe.
//
// Flow of gas that a pipe passes for an allowed pressure drop, as a band where the flow is in
// transition.
//
// Accuracy: About 5 % of the drop in turbulent flow for a known bore, and the fifth power of the
// bore's error. Between Re 2300 and 4000 nobody knows the friction factor: low and high bound it.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
// value, such as "15/15" or "25/0", default 15/15); `friction` (Equation of the friction factor in
// turbulent flow, one of Colebrook, Haaland, Swamee-Jain, default Colebrook); `tube` (The tube by
// name, such as "copper 22x0.9"; left out, the bore is stated, default ); `fittings` (Names of
// fittings with their number, for instance { "elbow 90" = 4, "tee branch" = 1 }, as
// water_pressure_drop takes them; needs tube, default ); NULL takes every default.
//
// Source: Darcy-Weisbach, isothermal compressible; textbook (discharge).
//
// Source: Hagen-Poiseuille, 64/Re; Colebrook 1939, Haaland 1983 or Swamee & Jain 1976 as set (friction
// factor).
//
// Source: ISO 6976:2016 (density and calorific value from the composition).
//
// Source: Wilke 1950, J. Chem. Phys. 18, 517 (viscosity).
//
// Source: from memory (Pole's formula 0.0071 √(d⁵h/(sL))).
//
// `notices` may be NULL.
fw_status fw_gas_pipe_discharge(const fw_context *context,
                                const fw_gas_pipe_discharge_input *input,
                                fw_gas_pipe_discharge_output *output,
                                fw_notices *notices);

// fw_gas_pipe_discharge over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_gas_pipe_discharge_batch(const fw_context *context,
                                      size_t rows,
                                      const fw_gas_pipe_discharge_input *inputs,
                                      size_t input_stride,
                                      fw_gas_pipe_discharge_output *outputs,
                                      size_t output_stride,
                                      uint16_t *row_status);

// Writes the defaults of fw_gas_pipe_discharge into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_gas_pipe_discharge_unset(fw_gas_pipe_discharge_input *input);

// Pressures in a branched gas installation.
//
// Flow, velocity, drop and pressure in every section of a branched installation, and the pressure at
// the worst-off appliance.
//
// Accuracy: About 5 % of each drop in turbulent flow for known bores. Sections in transition are
// bounded; reckon with the low pressure.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
// value, such as "15/15" or "25/0", default 15/15); `friction` (Equation of the friction factor in
// turbulent flow, one of Colebrook, Haaland, Swamee-Jain, default Colebrook); `sections` (The
// sections, as in gas_pipe_sizing, each also with tube (by name), or bore, or outside_diameter and
// wall; roughness if known); NULL takes every default.
//
// Source: Darcy-Weisbach with isothermal expansion; Hagen-Poiseuille and the turbulent equation set
// (drop of each section).
//
// Source: Hydrostatics (gain or loss with height).
//
// Source: ISO 6976:2016 (density and calorific value from the composition).
//
// Source: Wilke 1950, J. Chem. Phys. 18, 517 (viscosity).
//
// `notices` may be NULL.
fw_status fw_gas_installation(const fw_context *context,
                              const fw_gas_installation_input *input,
                              fw_gas_installation_output *output,
                              fw_notices *notices);

// fw_gas_installation over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_gas_installation_batch(const fw_context *context,
                                    size_t rows,
                                    const fw_gas_installation_input *inputs,
                                    size_t input_stride,
                                    fw_gas_installation_output *outputs,
                                    size_t output_stride,
                                    uint16_t *row_status);

// Writes the defaults of fw_gas_installation into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_gas_installation_unset(fw_gas_installation_input *input);

// Sizing of a branched gas installation.
//
// The tube for each section of a branched installation so that no appliance loses more than the
// allowed drop, no section flows too fast or widens away from the meter, and the pipes hold the least
// gas.
//
// Accuracy: The choice is the best there is for the drops reckoned, which err on the safe side: flow
// in transition counts as turbulent, and the gas as thin as after the whole allowed drop.
//
// Caution: Work on gas is for people legally competent to do it. A computed result is not a
// certificate.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value, default G20); `reference` (Reference conditions of gas volume and calorific
// value, such as "15/15" or "25/0", default 15/15); `friction` (Equation of the friction factor in
// turbulent flow, one of Colebrook, Haaland, Swamee-Jain, default Colebrook); `sections` (The
// sections, each a table: name; from (name of the section it hangs from, which stands before it; left
// out, the meter); length; equivalent_length and loss_coefficient of parts not named; fittings (names
// with their number, as water_pressure_drop takes them); rise; load (an appliance at its end: gross
// heat input such as "24 kW", or flow at reference conditions such as "2.3 m3/h")); `tubes` (The tubes
// to choose from: a list of names such as "copper 15x0.7"); NULL takes every default.
//
// Source: Darcy-Weisbach with isothermal expansion; Hagen-Poiseuille and the turbulent equation set
// (drop of each section).
//
// Source: Hydrostatics (gain or loss with height).
//
// Source: ISO 6976:2016 (density and calorific value from the composition).
//
// Source: Wilke 1950, J. Chem. Phys. 18, 517 (viscosity).
//
// `notices` may be NULL.
fw_status fw_gas_pipe_sizing(const fw_context *context,
                             const fw_gas_pipe_sizing_input *input,
                             fw_gas_pipe_sizing_output *output,
                             fw_notices *notices);

// fw_gas_pipe_sizing over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_gas_pipe_sizing_batch(const fw_context *context,
                                   size_t rows,
                                   const fw_gas_pipe_sizing_input *inputs,
                                   size_t input_stride,
                                   fw_gas_pipe_sizing_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_gas_pipe_sizing into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_gas_pipe_sizing_unset(fw_gas_pipe_sizing_input *input);

// Absolute pressure.
//
// The pressure above vacuum of what a gauge shows, from the pressure of the atmosphere.
//
// Accuracy: Exact; the barometer carries the uncertainty.
//
// Source: definition of gauge pressure (the sum).
//
// `notices` may be NULL.
fw_status fw_absolute_pressure(const fw_absolute_pressure_input *input,
                               fw_absolute_pressure_output *output,
                               fw_notices *notices);

// fw_absolute_pressure over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_absolute_pressure_batch(size_t rows,
                                     const fw_absolute_pressure_input *inputs,
                                     size_t input_stride,
                                     fw_absolute_pressure_output *outputs,
                                     size_t output_stride,
                                     uint16_t *row_status);

// Writes the defaults of fw_absolute_pressure into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_absolute_pressure_unset(fw_absolute_pressure_input *input);

// Reading of an analyser.
//
// Whether a reading lies in the measuring range of the cell, and the uncertainty that the data sheet's
// accuracy and resolution give it.
//
// Accuracy: As the data sheet; drift since the last calibration, cross-sensitivity and a wet or
// leaking sample are not in it.
//
// Caution: An analyser past its calibration date gives figures for guidance only; record date and
// certificate.
//
// Caution: A number inside a limit says nothing of spillage, flue flow or ventilation.
//
// Source: JCGM 100:2008, 4.3.7 and 4.3.8 (rectangular distributions of accuracy and resolution).
//
// `notices` may be NULL.
fw_status fw_analyser_reading(const fw_analyser_reading_input *input,
                              fw_analyser_reading_output *output,
                              fw_notices *notices);

// fw_analyser_reading over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_analyser_reading_batch(size_t rows,
                                    const fw_analyser_reading_input *inputs,
                                    size_t input_stride,
                                    fw_analyser_reading_output *outputs,
                                    size_t output_stride,
                                    uint16_t *row_status);

// Writes the defaults of fw_analyser_reading into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_analyser_reading_unset(fw_analyser_reading_input *input);

// Thermo-electric flame supervision.
//
// Margin of the thermocouple's voltage over what the electromagnet needs. Plain readings: what is
// enough is for the maker's instructions and the policy they are judged against.
//
// Accuracy: That of the millivoltmeter.
//
// Caution: A flame supervision is a safety device: never tie, bridge or adjust it to keep an appliance
// going.
//
// Caution: Prove that the valve closes with the flame out and that gas has stopped, before the
// appliance is left.
//
// Source: comparison of readings, common practice, no source (ratio and margins).
//
// `notices` may be NULL.
fw_status fw_flame_supervision_voltage(const fw_flame_supervision_voltage_input *input,
                                       fw_flame_supervision_voltage_output *output,
                                       fw_notices *notices);

// fw_flame_supervision_voltage over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_flame_supervision_voltage_batch(size_t rows,
                                             const fw_flame_supervision_voltage_input *inputs,
                                             size_t input_stride,
                                             fw_flame_supervision_voltage_output *outputs,
                                             size_t output_stride,
                                             uint16_t *row_status);

// Writes the defaults of fw_flame_supervision_voltage into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_flame_supervision_voltage_unset(fw_flame_supervision_voltage_input *input);

// Inclined gauge.
//
// Small gauge pressure or draught from the movement along an inclined tube. The level in the cistern
// is taken as fixed.
//
// Accuracy: The relative density printed on the gauge holds at its own temperature; most oils lose
// about 0.1 % of density per kelvin. An angle wrong by 0.5 degrees changes a 10 degree gauge by 5 %.
//
// Caution: Working on gas is for people legally competent to do it, to the procedure in force where
// they work; a computed pressure certifies nothing.
//
// Source: hydrostatics and geometry, h = l sin α (height and pressure of the column).
//
// Source: NIST SP 811 (2008), Appendix B.8 (conventional water, to which the relative density refers).
//
// `notices` may be NULL.
fw_status fw_inclined_gauge(const fw_inclined_gauge_input *input,
                            fw_inclined_gauge_output *output,
                            fw_notices *notices);

// fw_inclined_gauge over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_inclined_gauge_batch(size_t rows,
                                  const fw_inclined_gauge_input *inputs,
                                  size_t input_stride,
                                  fw_inclined_gauge_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_inclined_gauge into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_inclined_gauge_unset(fw_inclined_gauge_input *input);

// Pressure of a liquid column.
//
// Gauge pressure from the level difference of a U-gauge or a scale that gives it, with the true
// density of the liquid and local gravity, beside the figure in conventional units of water column.
//
// Accuracy: The sum is good to 0.001 %; the reading of a limb to half a millimetre decides, which is
// 0.05 mbar.
//
// Caution: Working on gas is for people legally competent to do it, to the procedure in force where
// they work; a computed pressure certifies nothing.
//
// The context holds the settings `liquid` (The liquid in the gauge: water, or one of stated density,
// one of water, stated, default water); `density` (Density of a stated liquid); `density_temperature`
// (Temperature of the stated density, default 20 degC); `expansion_coefficient` (Cubic expansion
// coefficient of a stated liquid, default 0 1/K); NULL takes every default.
//
// Source: hydrostatics, p = ρ g h (pressure of a column).
//
// Source: IAPWS SR6-08(2011), liquid water at 0.1 MPa (density of water).
//
// Source: NIST SP 811 (2008), Appendix B.8 (conventional water, standard gravity).
//
// Source: Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331, as fitted in the air module (density
// of dry air).
//
// `notices` may be NULL.
fw_status fw_liquid_column(const fw_context *context,
                           const fw_liquid_column_input *input,
                           fw_liquid_column_output *output,
                           fw_notices *notices);

// fw_liquid_column over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_liquid_column_batch(const fw_context *context,
                                 size_t rows,
                                 const fw_liquid_column_input *inputs,
                                 size_t input_stride,
                                 fw_liquid_column_output *outputs,
                                 size_t output_stride,
                                 uint16_t *row_status);

// Writes the defaults of fw_liquid_column into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_liquid_column_unset(fw_liquid_column_input *input);

// Local gravity.
//
// Acceleration of gravity at a latitude and height, for a liquid-column gauge read exactly.
//
// Accuracy: The true local value differs by up to about 0.0005 m/s² (0.005 %), from the ground below.
//
// Source: Moritz, Geodetic Reference System 1980, J. Geodesy 74 (2000) 128, Somigliana's closed form
// (gravity at sea level).
//
// Source: free-air gradient 3.086e-6 1/s², textbook value (decrease with height).
//
// `notices` may be NULL.
fw_status fw_local_gravity(const fw_local_gravity_input *input,
                           fw_local_gravity_output *output,
                           fw_notices *notices);

// fw_local_gravity over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_local_gravity_batch(size_t rows,
                                 const fw_local_gravity_input *inputs,
                                 size_t input_stride,
                                 fw_local_gravity_output *outputs,
                                 size_t output_stride,
                                 uint16_t *row_status);

// Writes the defaults of fw_local_gravity into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_local_gravity_unset(fw_local_gravity_input *input);

// Resistance of a platinum thermometer.
//
// Resistance to expect of a platinum element at a temperature, the band its class allows, and what
// two-wire leads do to the reading.
//
// Accuracy: The relation is exact by definition; the class of the element decides.
//
// The context holds the settings `class` (Tolerance class of IEC 60751, one of none, AA, A, B, C,
// default none); `construction` (Wire-wound or film element; it decides how far the class reaches, one
// of wire, film, default wire); NULL takes every default.
//
// Source: IEC 60751:2008, 4.2, coefficients from public reproductions (resistance and temperature).
//
// Source: IEC 60751:2008, tolerance classes, formulae from public reproductions, ranges from memory
// (tolerance).
//
// `notices` may be NULL.
fw_status fw_platinum_resistance(const fw_context *context,
                                 const fw_platinum_resistance_input *input,
                                 fw_platinum_resistance_output *output,
                                 fw_notices *notices);

// fw_platinum_resistance over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_platinum_resistance_batch(const fw_context *context,
                                       size_t rows,
                                       const fw_platinum_resistance_input *inputs,
                                       size_t input_stride,
                                       fw_platinum_resistance_output *outputs,
                                       size_t output_stride,
                                       uint16_t *row_status);

// Writes the defaults of fw_platinum_resistance into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_platinum_resistance_unset(fw_platinum_resistance_input *input);

// Temperature of a platinum thermometer.
//
// Temperature from the resistance of a Pt100, Pt1000 or other platinum element, with the error of
// two-wire leads and the tolerance of a class.
//
// Accuracy: The relation is inverted to 1e-9 K from -200 to 850 °C; the class of the element and the
// meter decide.
//
// The context holds the settings `class` (Tolerance class of IEC 60751, one of none, AA, A, B, C,
// default none); `construction` (Wire-wound or film element; it decides how far the class reaches, one
// of wire, film, default wire); NULL takes every default.
//
// Source: IEC 60751:2008, 4.2, coefficients from public reproductions (resistance and temperature).
//
// Source: IEC 60751:2008, tolerance classes, formulae from public reproductions, ranges from memory
// (tolerance).
//
// `notices` may be NULL.
fw_status fw_platinum_temperature(const fw_context *context,
                                  const fw_platinum_temperature_input *input,
                                  fw_platinum_temperature_output *output,
                                  fw_notices *notices);

// fw_platinum_temperature over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_platinum_temperature_batch(const fw_context *context,
                                        size_t rows,
                                        const fw_platinum_temperature_input *inputs,
                                        size_t input_stride,
                                        fw_platinum_temperature_output *outputs,
                                        size_t output_stride,
                                        uint16_t *row_status);

// Writes the defaults of fw_platinum_temperature into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_platinum_temperature_unset(fw_platinum_temperature_input *input);

// Temperature of a thermistor from Beta.
//
// Temperature from the resistance, the resistance at a reference temperature and Beta. The constants
// are inputs, so their tolerances propagate.
//
// Accuracy: Beta between 25 and 85 °C describes a typical thermistor to about 0.5 K between 0 and 100
// °C, worse beyond; the tolerances of R₀ and β come on top.
//
// Source: Beta equation as in IEC 60539-1, from memory (1/T = 1/T₀ + ln(R/R₀)/β).
//
// Source: Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory (three-term and four-term
// forms).
//
// `notices` may be NULL.
fw_status fw_thermistor_beta(const fw_thermistor_beta_input *input,
                             fw_thermistor_beta_output *output,
                             fw_notices *notices);

// fw_thermistor_beta over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_thermistor_beta_batch(size_t rows,
                                   const fw_thermistor_beta_input *inputs,
                                   size_t input_stride,
                                   fw_thermistor_beta_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_thermistor_beta into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_thermistor_beta_unset(fw_thermistor_beta_input *input);

// Beta of a thermistor from two points.
//
// Beta between two points of resistance and temperature, of a data sheet or measured.
//
// Accuracy: Exact for the points given.
//
// Source: Beta equation as in IEC 60539-1, from memory (1/T = 1/T₀ + ln(R/R₀)/β).
//
// Source: Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory (three-term and four-term
// forms).
//
// `notices` may be NULL.
fw_status fw_thermistor_beta_of_points(const fw_thermistor_beta_of_points_input *input,
                                       fw_thermistor_beta_of_points_output *output,
                                       fw_notices *notices);

// fw_thermistor_beta_of_points over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_thermistor_beta_of_points_batch(size_t rows,
                                             const fw_thermistor_beta_of_points_input *inputs,
                                             size_t input_stride,
                                             fw_thermistor_beta_of_points_output *outputs,
                                             size_t output_stride,
                                             uint16_t *row_status);

// Writes the defaults of fw_thermistor_beta_of_points into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_thermistor_beta_of_points_unset(fw_thermistor_beta_of_points_input *input);

// Temperature of a thermistor.
//
// Temperature from the resistance of an NTC thermistor by Beta, by three or four coefficients, or by a
// curve through points.
//
// Accuracy: As the curve: Beta about 0.5 K between 0 and 100 °C, three terms about 0.02 K, four terms
// better; the tolerance of the part comes on top.
//
// The context holds the settings `curve` (How the thermistor is described: Beta; three Steinhart-Hart
// coefficients for R in ohm; four coefficients of the powers of ln(R/R₀); or points of resistance and
// temperature (two give Beta, three the Steinhart-Hart form, four the four-term form), one of beta,
// steinhart_hart, four_term, points); `reference_resistance` (R₀, for the curves beta and four_term);
// `reference_temperature` (Temperature of R₀, for the curve beta, default 25 degC); `beta` (Beta, for
// the curve beta); `coefficients` (Three or four coefficients, for the curves steinhart_hart and
// four_term); `resistances` (Resistances of two to four points); `temperatures` (Temperatures of the
// points, in the order of the resistances); NULL takes every default.
//
// Source: Beta equation as in IEC 60539-1, from memory (1/T = 1/T₀ + ln(R/R₀)/β).
//
// Source: Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory (three-term and four-term
// forms).
//
// `notices` may be NULL.
fw_status fw_thermistor_temperature(const fw_context *context,
                                    const fw_thermistor_temperature_input *input,
                                    fw_thermistor_temperature_output *output,
                                    fw_notices *notices);

// fw_thermistor_temperature over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_thermistor_temperature_batch(const fw_context *context,
                                          size_t rows,
                                          const fw_thermistor_temperature_input *inputs,
                                          size_t input_stride,
                                          fw_thermistor_temperature_output *outputs,
                                          size_t output_stride,
                                          uint16_t *row_status);

// Writes the defaults of fw_thermistor_temperature into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_thermistor_temperature_unset(fw_thermistor_temperature_input *input);

// Thermistor check with an ohmmeter.
//
// Resistance to expect of an NTC thermistor at a temperature and the band its tolerances allow, with a
// table from -20 to 110 °C to check against, and what a measured resistance would make the control
// believe.
//
// Accuracy: The band is the worst case of the stated tolerances, not a statistical one.
//
// Caution: Measure resistance only on a sensor that is unplugged and dead; the board must be isolated
// first.
//
// The context holds the settings `curve` (How the thermistor is described: Beta; three Steinhart-Hart
// coefficients for R in ohm; four coefficients of the powers of ln(R/R₀); or points of resistance and
// temperature (two give Beta, three the Steinhart-Hart form, four the four-term form), one of beta,
// steinhart_hart, four_term, points); `reference_resistance` (R₀, for the curves beta and four_term);
// `reference_temperature` (Temperature of R₀, for the curve beta, default 25 degC); `beta` (Beta, for
// the curve beta); `coefficients` (Three or four coefficients, for the curves steinhart_hart and
// four_term); `resistances` (Resistances of two to four points); `temperatures` (Temperatures of the
// points, in the order of the resistances); NULL takes every default.
//
// Source: Beta equation as in IEC 60539-1, from memory (1/T = 1/T₀ + ln(R/R₀)/β).
//
// Source: Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory (three-term and four-term
// forms).
//
// `notices` may be NULL.
fw_status fw_thermistor_check(const fw_context *context,
                              const fw_thermistor_check_input *input,
                              fw_thermistor_check_output *output,
                              fw_notices *notices);

// fw_thermistor_check over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_thermistor_check_batch(const fw_context *context,
                                    size_t rows,
                                    const fw_thermistor_check_input *inputs,
                                    size_t input_stride,
                                    fw_thermistor_check_output *outputs,
                                    size_t output_stride,
                                    uint16_t *row_status);

// Writes the defaults of fw_thermistor_check into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_thermistor_check_unset(fw_thermistor_check_input *input);

// Steinhart-Hart coefficients from three points.
//
// The three-term curve through three points of resistance and temperature, and the temperature it
// gives for another resistance.
//
// Accuracy: Between points 0, 40 and 85 °C the curve follows a typical thermistor to about 0.01 K;
// outside the points it strays.
//
// Source: Beta equation as in IEC 60539-1, from memory (1/T = 1/T₀ + ln(R/R₀)/β).
//
// Source: Steinhart and Hart, Deep-Sea Research 15 (1968) 497, from memory (three-term and four-term
// forms).
//
// `notices` may be NULL.
fw_status fw_thermistor_fit(const fw_thermistor_fit_input *input,
                            fw_thermistor_fit_output *output,
                            fw_notices *notices);

// fw_thermistor_fit over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_thermistor_fit_batch(size_t rows,
                                  const fw_thermistor_fit_input *inputs,
                                  size_t input_stride,
                                  fw_thermistor_fit_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_thermistor_fit into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_thermistor_fit_unset(fw_thermistor_fit_input *input);

// Temperature of a thermocouple.
//
// Temperature of the measuring junction from the voltage at the meter and the temperature of the
// reference junction, whose EMF is added.
//
// Accuracy: The reference function is inverted to 1e-9 K (at the joins of its pieces it steps itself
// by up to 1.2e-6 K); the class of the wire decides.
//
// The context holds the settings `type` (Letter of the thermocouple type, IEC 60584-1, one of K, J, T,
// N, S, R, B, E, default K); `class` (Tolerance class of IEC 60584-1, one of none, 1, 2, 3, default
// none); NULL takes every default.
//
// Source: NIST Standard Reference Database 60 (Monograph 175), same functions as IEC 60584-1:2013 (EMF
// on ITS-90, reference junction at 0 °C).
//
// Source: IEC 60584-1:2013, tolerance classes, from two public reproductions (tolerance).
//
// `notices` may be NULL.
fw_status fw_thermocouple_temperature(const fw_context *context,
                                      const fw_thermocouple_temperature_input *input,
                                      fw_thermocouple_temperature_output *output,
                                      fw_notices *notices);

// fw_thermocouple_temperature over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_thermocouple_temperature_batch(const fw_context *context,
                                            size_t rows,
                                            const fw_thermocouple_temperature_input *inputs,
                                            size_t input_stride,
                                            fw_thermocouple_temperature_output *outputs,
                                            size_t output_stride,
                                            uint16_t *row_status);

// Writes the defaults of fw_thermocouple_temperature into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_thermocouple_temperature_unset(fw_thermocouple_temperature_input *input);

// Voltage of a thermocouple.
//
// Voltage to expect at the meter for the temperatures of both junctions.
//
// Accuracy: The reference function is exact by definition; the class of the wire decides.
//
// The context holds the settings `type` (Letter of the thermocouple type, IEC 60584-1, one of K, J, T,
// N, S, R, B, E, default K); `class` (Tolerance class of IEC 60584-1, one of none, 1, 2, 3, default
// none); NULL takes every default.
//
// Source: NIST Standard Reference Database 60 (Monograph 175), same functions as IEC 60584-1:2013 (EMF
// on ITS-90, reference junction at 0 °C).
//
// Source: IEC 60584-1:2013, tolerance classes, from two public reproductions (tolerance).
//
// `notices` may be NULL.
fw_status fw_thermocouple_voltage(const fw_context *context,
                                  const fw_thermocouple_voltage_input *input,
                                  fw_thermocouple_voltage_output *output,
                                  fw_notices *notices);

// fw_thermocouple_voltage over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_thermocouple_voltage_batch(const fw_context *context,
                                        size_t rows,
                                        const fw_thermocouple_voltage_input *inputs,
                                        size_t input_stride,
                                        fw_thermocouple_voltage_output *outputs,
                                        size_t output_stride,
                                        uint16_t *row_status);

// Writes the defaults of fw_thermocouple_voltage into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_thermocouple_voltage_unset(fw_thermocouple_voltage_input *input);

// Differential of a thermostat.
//
// Differential and mid-point from the temperature at which a thermostat opens and the one at which it
// closes again.
//
// Accuracy: As the two readings; the probe must sit where the thermostat's sensor sits.
//
// Caution: A switching point is where the sensor is, not where the water is hottest: compare at the
// phial or pocket.
//
// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
//
// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
// has stopped; measure before you open or drain anything.
//
// Source: IEC 60730-1 (wording from memory) (operating value, differential).
//
// `notices` may be NULL.
fw_status fw_thermostat_differential(const fw_thermostat_differential_input *input,
                                     fw_thermostat_differential_output *output,
                                     fw_notices *notices);

// fw_thermostat_differential over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_thermostat_differential_batch(size_t rows,
                                           const fw_thermostat_differential_input *inputs,
                                           size_t input_stride,
                                           fw_thermostat_differential_output *outputs,
                                           size_t output_stride,
                                           uint16_t *row_status);

// Writes the defaults of fw_thermostat_differential into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_thermostat_differential_unset(fw_thermostat_differential_input *input);

// Thermostat test.
//
// Cut-out, cut-in, differential, repeatability and drift of a control thermostat from repeated
// readings. Not for judging a limit thermostat.
//
// Accuracy: That of the thermometer and of its contact; a probe that lags reads the cut-out low and
// the cut-in high. The lag is not in the uncertainties given.
//
// Caution: A switching point is where the sensor is, not where the water is hottest: compare at the
// phial or pocket.
//
// Caution: Never defeat a thermostat, limit, flame supervision or spillage device to obtain a reading.
//
// Caution: A hot block and its water can scald and flash to steam for tens of minutes after the burner
// has stopped; measure before you open or drain anything.
//
// The context holds the settings `cut_outs` (Temperatures at which the contact opened on the rise, in
// order); `cut_ins` (Temperatures at which the contact closed again on the fall, in order); NULL takes
// every default.
//
// Source: IEC 60730-1 and -2-9 (wording from memory) (operating value, differential).
//
// Source: JCGM 100:2008, 4.2 (standard deviation of repeated readings and of their mean).
//
// Source: least-squares line, textbook (drift and its uncertainty).
//
// `notices` may be NULL.
fw_status fw_thermostat_test(const fw_context *context,
                             const fw_thermostat_test_input *input,
                             fw_thermostat_test_output *output,
                             fw_notices *notices);

// fw_thermostat_test over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_thermostat_test_batch(const fw_context *context,
                                   size_t rows,
                                   const fw_thermostat_test_input *inputs,
                                   size_t input_stride,
                                   fw_thermostat_test_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_thermostat_test into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_thermostat_test_unset(fw_thermostat_test_input *input);

// U-gauge, both limbs.
//
// Gauge pressure from how far the liquid fell in one limb and rose in the other. Both are asked for,
// since one alone is half the pressure.
//
// Accuracy: The sum is good to 0.001 %; the reading of a limb to half a millimetre decides, which is
// 0.05 mbar.
//
// Caution: Working on gas is for people legally competent to do it, to the procedure in force where
// they work; a computed pressure certifies nothing.
//
// The context holds the settings `liquid` (The liquid in the gauge: water, or one of stated density,
// one of water, stated, default water); `density` (Density of a stated liquid); `density_temperature`
// (Temperature of the stated density, default 20 degC); `expansion_coefficient` (Cubic expansion
// coefficient of a stated liquid, default 0 1/K); NULL takes every default.
//
// Source: hydrostatics, p = ρ g h (pressure of a column).
//
// Source: IAPWS SR6-08(2011), liquid water at 0.1 MPa (density of water).
//
// Source: NIST SP 811 (2008), Appendix B.8 (conventional water, standard gravity).
//
// Source: Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331, as fitted in the air module (density
// of dry air).
//
// `notices` may be NULL.
fw_status fw_u_gauge(const fw_context *context,
                     const fw_u_gauge_input *input,
                     fw_u_gauge_output *output,
                     fw_notices *notices);

// fw_u_gauge over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_u_gauge_batch(const fw_context *context,
                           size_t rows,
                           const fw_u_gauge_input *inputs,
                           size_t input_stride,
                           fw_u_gauge_output *outputs,
                           size_t output_stride,
                           uint16_t *row_status);

// Writes the defaults of fw_u_gauge into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_u_gauge_unset(fw_u_gauge_input *input);

// Free area of a ventilator.
//
// Free area of a ventilator from its openings or from its maker's share, kept apart from its overall
// area.
//
// Accuracy: As measured. The areas of sleeves, cowls and screens in series are not in it: the tightest
// of them counts.
//
// Caution: How much air a room needs, and through what opening, is set by local building and gas
// rules; a sum is no approval, and an opening counts only while it is clear.
//
// Source: Geometry (areas).
//
// Source: common practice, no source (openings of at least 5 mm).
//
// `notices` may be NULL.
fw_status fw_vent_free_area(const fw_vent_free_area_input *input,
                            fw_vent_free_area_output *output,
                            fw_notices *notices);

// fw_vent_free_area over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_vent_free_area_batch(size_t rows,
                                  const fw_vent_free_area_input *inputs,
                                  size_t input_stride,
                                  fw_vent_free_area_output *outputs,
                                  size_t output_stride,
                                  uint16_t *row_status);

// Writes the defaults of fw_vent_free_area into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_vent_free_area_unset(fw_vent_free_area_input *input);

// Air through an opening.
//
// Air that passes an opening of a free area at a pressure difference, and its equivalent area.
//
// Accuracy: The discharge coefficient decides; grilles are seldom known to better than 10 %.
//
// Caution: How much air a room needs, and through what opening, is set by local building and gas
// rules; a sum is no approval, and an opening counts only while it is clear.
//
// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
// reckoned says nothing of spillage, blockage or wind.
//
// Source: Orifice equation for a small pressure difference; textbook (flow).
//
// Source: Definition of equivalent area (EN 13141-1, not opened): a sharp-edged opening that passes
// the same air (equivalent area).
//
// `notices` may be NULL.
fw_status fw_opening_flow(const fw_opening_flow_input *input,
                          fw_opening_flow_output *output,
                          fw_notices *notices);

// fw_opening_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_opening_flow_batch(size_t rows,
                                const fw_opening_flow_input *inputs,
                                size_t input_stride,
                                fw_opening_flow_output *outputs,
                                size_t output_stride,
                                uint16_t *row_status);

// Writes the defaults of fw_opening_flow into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_opening_flow_unset(fw_opening_flow_input *input);

// Opening for a flow of air.
//
// Free and equivalent area that pass a flow of air at a pressure difference.
//
// Accuracy: The discharge coefficient decides; grilles are seldom known to better than 10 %.
//
// Caution: How much air a room needs, and through what opening, is set by local building and gas
// rules; a sum is no approval, and an opening counts only while it is clear.
//
// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
// reckoned says nothing of spillage, blockage or wind.
//
// Source: Orifice equation for a small pressure difference; textbook (area).
//
// Source: Definition of equivalent area (EN 13141-1, not opened): a sharp-edged opening that passes
// the same air (equivalent area).
//
// `notices` may be NULL.
fw_status fw_opening_size(const fw_opening_size_input *input,
                          fw_opening_size_output *output,
                          fw_notices *notices);

// fw_opening_size over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_opening_size_batch(size_t rows,
                                const fw_opening_size_input *inputs,
                                size_t input_stride,
                                fw_opening_size_output *outputs,
                                size_t output_stride,
                                uint16_t *row_status);

// Writes the defaults of fw_opening_size into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_opening_size_unset(fw_opening_size_input *input);

// Ventilation by a rule.
//
// Opening, room volume or air flow that a building rule of the caller's asks for, on the rating basis
// the rule counts. No rule is built in.
//
// Accuracy: Arithmetic on the rule.
//
// Caution: How much air a room needs, and through what opening, is set by local building and gas
// rules; a sum is no approval, and an opening counts only while it is clear.
//
// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
// reckoned says nothing of spillage, blockage or wind.
//
// The context holds the settings `rating_basis` (What the rule counts: the heat input net or gross, or
// the heat output, one of heat_input_net, heat_input_gross, heat_output); `area_kind` (Which area the
// rule counts, one of free, equivalent, default free); NULL takes every default.
//
// Source: The caller's rule (rates, threshold, minimum).
//
// `notices` may be NULL.
fw_status fw_ventilation_need(const fw_context *context,
                              const fw_ventilation_need_input *input,
                              fw_ventilation_need_output *output,
                              fw_notices *notices);

// fw_ventilation_need over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_ventilation_need_batch(const fw_context *context,
                                    size_t rows,
                                    const fw_ventilation_need_input *inputs,
                                    size_t input_stride,
                                    fw_ventilation_need_output *outputs,
                                    size_t output_stride,
                                    uint16_t *row_status);

// Writes the defaults of fw_ventilation_need into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_ventilation_need_unset(fw_ventilation_need_input *input);

// Gas in a ventilated room.
//
// Build-up and clearing of carbon monoxide, carbon dioxide or any gas in a well-mixed room with a
// steady source and air change.
//
// Accuracy: Exact for a well-mixed room. Real rooms are not: near the source the share can be several
// times the mean. The air change is seldom known to a factor of two.
//
// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
// air in first, reckon later; no result here is leave to stay.
//
// Caution: How much air a room needs, and through what opening, is set by local building and gas
// rules; a sum is no approval, and an opening counts only while it is clear.
//
// Source: Single-zone mass balance; textbook (all results).
//
// `notices` may be NULL.
fw_status fw_room_concentration(const fw_room_concentration_input *input,
                                fw_room_concentration_output *output,
                                fw_notices *notices);

// fw_room_concentration over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_room_concentration_batch(size_t rows,
                                      const fw_room_concentration_input *inputs,
                                      size_t input_stride,
                                      fw_room_concentration_output *outputs,
                                      size_t output_stride,
                                      uint16_t *row_status);

// Writes the defaults of fw_room_concentration into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_room_concentration_unset(fw_room_concentration_input *input);

// Natural draught of a flue.
//
// Draught from height, mean flue temperature, outdoor temperature and barometer, what is left after
// losses, and the temperatures at which it turns.
//
// Accuracy: Exact for the mean temperature given; that mean decides. Wind is left out.
//
// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
// reckoned says nothing of spillage, blockage or wind.
//
// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
// air in first, reckon later; no result here is leave to stay.
//
// Source: Hydrostatics, in the form of EN 13384-1 (from memory) (draught).
//
// Source: EN 13384-1, from memory (gas constants 288 J/(kg K) of air and about 300 J/(kg K) of the
// flue gas of natural gas, as defaults).
//
// `notices` may be NULL.
fw_status fw_natural_draught(const fw_natural_draught_input *input,
                             fw_natural_draught_output *output,
                             fw_notices *notices);

// fw_natural_draught over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_natural_draught_batch(size_t rows,
                                   const fw_natural_draught_input *inputs,
                                   size_t input_stride,
                                   fw_natural_draught_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_natural_draught into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_natural_draught_unset(fw_natural_draught_input *input);

// Velocity and pressure loss in a flue.
//
// Mass flow, velocity and pressure lost by friction and fittings in a flue at a mean temperature.
//
// Accuracy: Roughness and loss coefficients are seldom known to better than 20 %. Below Re 2300 the
// larger of the laminar factor and Colebrook's at 2300 is taken.
//
// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
// reckoned says nothing of spillage, blockage or wind.
//
// Source: Darcy-Weisbach; textbook, in the form of EN 13384-1 (from memory) (pressure loss).
//
// Source: Colebrook 1939, J. Inst. Civ. Eng. 11, 133 (friction factor from the roughness).
//
// Source: EN 13384-1, from memory (viscosity of flue gas).
//
// Source: EN 13384-1, from memory (gas constants 288 J/(kg K) of air and about 300 J/(kg K) of the
// flue gas of natural gas, as defaults).
//
// `notices` may be NULL.
fw_status fw_flue_flow(const fw_flue_flow_input *input, fw_flue_flow_output *output, fw_notices *notices);

// fw_flue_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_flue_flow_batch(size_t rows,
                             const fw_flue_flow_input *inputs,
                             size_t input_stride,
                             fw_flue_flow_output *outputs,
                             size_t output_stride,
                             uint16_t *row_status);

// Writes the defaults of fw_flue_flow into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_flue_flow_unset(fw_flue_flow_input *input);

// Draught and cooling of a chimney.
//
// Cooling of the flue gas with height, draught, loss and what is left, wall temperature at the outlet
// and whether and where the wall is wet.
//
// Accuracy: Internal coefficient 20 %, wall resistance as stated; the mean temperature follows within
// a few kelvin. Wind and the warming-up of the wall are left out.
//
// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
// reckoned says nothing of spillage, blockage or wind.
//
// Caution: Carbon monoxide is not felt, and symptoms can come before an alarm does. Get people out and
// air in first, reckon later; no result here is leave to stay.
//
// Source: Form of EN 13384-1, from memory (cooling number, mean and outlet temperature, wall
// temperature, draught and loss, viscosity and conductivity of flue gas).
//
// Source: Gnielinski 1975, Forsch. Ingenieurwes. 41, 8 (internal coefficient).
//
// Source: Colebrook 1939, J. Inst. Civ. Eng. 11, 133 (friction factor).
//
// Source: IAPWS R7-97(2012), IF97 region 4 (dew point; acids lie above it and are left out).
//
// Source: EN 13384-1, from memory (gas constants 288 J/(kg K) of air and about 300 J/(kg K) of the
// flue gas of natural gas, as defaults).
//
// `notices` may be NULL.
fw_status fw_chimney_draught(const fw_chimney_draught_input *input,
                             fw_chimney_draught_output *output,
                             fw_notices *notices);

// fw_chimney_draught over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_chimney_draught_batch(size_t rows,
                                   const fw_chimney_draught_input *inputs,
                                   size_t input_stride,
                                   fw_chimney_draught_output *outputs,
                                   size_t output_stride,
                                   uint16_t *row_status);

// Writes the defaults of fw_chimney_draught into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_chimney_draught_unset(fw_chimney_draught_input *input);

// Flue gas of a heat input.
//
// Mass and volume flow, gas constant, heat capacity, water vapour and dew point of the flue gas that a
// burner and its dilution air send up the flue.
//
// Accuracy: As the heat input and the air ratio; the net calorific value is that at 25 °C, within 0.1
// % of that at 15 °C.
//
// Caution: Prove an open flue by test with doors, windows and fans as bad as they get. A draught
// reckoned says nothing of spillage, blockage or wind.
//
// The context holds the settings `fuel` (A test gas by its letters (G20; EN 437 states shares of
// volume, which are turned into mole fractions), a pure gas by name or formula, a composition in mole
// fractions such as "CH4 80 %, H2 20 %", a typical kerosene, gas oil or dry wood; or a table:
// composition with basis (mole, volume, mass), normalise, hydrogen_blend; or state (liquid, solid)
// with the mass shares carbon, hydrogen, oxygen, nitrogen, sulphur, moisture as burnt and
// gross_calorific_value); `air` (Composition taken for dry air: "standard" (O2 20.95 %, N2 78.08 %, Ar
// 0.93 %, CO2 0.04 %) or the textbook's "21/79", one of standard, 21/79, default standard); NULL takes
// every default.
//
// Source: Element balance of complete combustion (amounts).
//
// Source: NASA polynomials, as combustion/species.rs (heat capacity).
//
// Source: IAPWS R7-97(2012), IF97 region 4 (dew point).
//
// `notices` may be NULL.
fw_status fw_flue_gas_flow(const fw_context *context,
                           const fw_flue_gas_flow_input *input,
                           fw_flue_gas_flow_output *output,
                           fw_notices *notices);

// fw_flue_gas_flow over `rows` rows. Strides are in bytes; 0 as `input_stride` takes one input for all rows.
// `row_status` may be NULL; see FW_ROW_OK. A refused row gets NaN in every output.
fw_status fw_flue_gas_flow_batch(const fw_context *context,
                                 size_t rows,
                                 const fw_flue_gas_flow_input *inputs,
                                 size_t input_stride,
                                 fw_flue_gas_flow_output *outputs,
                                 size_t output_stride,
                                 uint16_t *row_status);

// Writes the defaults of fw_flue_gas_flow into `input`, and NaN into what must be given or may be left out.
// Start from this: a field that is forgotten is then refused, where 0 might be taken for a reading.
fw_status fw_flue_gas_flow_unset(fw_flue_gas_flow_input *input);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* FLAMEWRIGHT_H */
