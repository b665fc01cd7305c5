// flamewright for C++17: the C interface with strong types, owned handles and exceptions. Header only.
//
// Made by `cargo xtask generate`: do not edit. The rules of flamewright.h hold here too.
//
// A quantity knows its unit and basis: flamewright::pascal_gauge and flamewright::pascal_absolute are
// different types, and a bare number is none of them. All hold SI values; `units` helps to write
// them: kelvin{62 * units::celsius}, pascal_gauge{21 * units::millibar}, ratio_dry{4.6 * units::percent}.
// A quantity that nobody set is NaN: "not given" in an input, and in an output what its field says.
//
// A refusal is thrown as flamewright::error; attempt() returns it instead.

#ifndef FLAMEWRIGHT_HPP
#define FLAMEWRIGHT_HPP

#include <flamewright.h>

#include <cstdint>
#include <cstring>
#include <limits>
#include <memory>
#include <stdexcept>
#include <string>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace flamewright {

/// A value in the SI unit and on the basis that `Unit` names.
template <class Unit>
class quantity {
public:
    /// Not given.
    constexpr quantity() noexcept = default;
    /// From a number in SI units.
    constexpr explicit quantity(double si) noexcept : si_(si) {}
    /// The number in SI units.
    constexpr double si() const noexcept { return si_; }
    /// Whether there is a value.
    constexpr bool given() const noexcept { return si_ == si_; }

    friend constexpr bool operator==(quantity a, quantity b) noexcept { return a.si_ == b.si_; }
    friend constexpr bool operator!=(quantity a, quantity b) noexcept { return a.si_ != b.si_; }
    friend constexpr bool operator<(quantity a, quantity b) noexcept { return a.si_ < b.si_; }
    friend constexpr bool operator>(quantity a, quantity b) noexcept { return a.si_ > b.si_; }
    friend constexpr bool operator<=(quantity a, quantity b) noexcept { return a.si_ <= b.si_; }
    friend constexpr bool operator>=(quantity a, quantity b) noexcept { return a.si_ >= b.si_; }

private:
    double si_ = std::numeric_limits<double>::quiet_NaN();
};

/// Units to write SI values with: number * unit is the SI value, si / unit the number.
namespace units {
struct unit {
    double factor;
    double offset = 0.0;
};
constexpr double operator*(double number, unit u) noexcept { return number * u.factor + u.offset; }
constexpr double operator/(double si, unit u) noexcept { return (si - u.offset) / u.factor; }

inline constexpr unit percent{0.01}, ppm{1e-6};
inline constexpr unit celsius{1.0, 273.15}, kelvin{1.0};
inline constexpr unit pascal{1.0}, millibar{100.0}, kilopascal{1e3}, bar{1e5};
inline constexpr unit millimetre{1e-3}, metre{1.0}, square_millimetre{1e-6}, square_centimetre{1e-4};
inline constexpr unit litre{1e-3}, cubic_metre{1.0}, cubic_foot{0.028316846592};
inline constexpr unit second{1.0}, minute{60.0}, hour{3600.0};
inline constexpr unit litre_per_minute{1e-3 / 60.0}, cubic_metre_per_hour{1.0 / 3600.0};
inline constexpr unit watt{1.0}, kilowatt{1e3}, kilowatt_hour{3.6e6};
inline constexpr unit megajoule_per_cubic_metre{1e6}, megajoule_per_kilogram{1e6};
} // namespace units

/// Why a call was refused.
class error : public std::runtime_error {
public:
    /// What the library says of the last call that failed on this thread, and returned `status`.
    explicit error(fw_status status)
        : std::runtime_error(fw_error_message()), status_(status), code_(fw_error_code()), field_(fw_error_field()),
          given_(fw_error_given()), unit_(fw_error_unit()), value_(fw_error_value()), minimum_(fw_error_minimum()),
          maximum_(fw_error_maximum())
    {
    }
    fw_status status() const noexcept { return status_; }
    /// The kind of the refusal, or the code of the rule that refused.
    const std::string &code() const noexcept { return code_; }
    const std::string &field() const noexcept { return field_; }
    const std::string &given() const noexcept { return given_; }
    /// The unit of value, minimum and maximum, which are NaN if they do not apply.
    const std::string &unit() const noexcept { return unit_; }
    double value() const noexcept { return value_; }
    double minimum() const noexcept { return minimum_; }
    double maximum() const noexcept { return maximum_; }

private:
    fw_status status_;
    std::string code_, field_, given_, unit_;
    double value_, minimum_, maximum_;
};

namespace detail {
inline void check(fw_status status)
{
    if (status != FW_OK) {
        throw error(status);
    }
}

struct free_text {
    void operator()(char *text) const noexcept { fw_string_free(text); }
};

/// A text that a call hands out.
template <class Call>
std::string text(Call call)
{
    char *made = nullptr;
    const fw_status status = call(&made);
    const std::unique_ptr<char, free_text> owner(made);
    check(status);
    return made ? std::string(made) : std::string();
}

/// The structs here and those of C are the same doubles in the same order.
template <class Here, class There>
constexpr bool same_shape = sizeof(Here) == sizeof(There) && std::is_trivially_copyable<Here>::value
                            && std::is_standard_layout<Here>::value;

template <class COutput, class Output, class CInput, class Input, class Call>
Output one(const Input &input, Call call)
{
    static_assert(same_shape<Input, CInput> && same_shape<Output, COutput>, "made from one catalogue");
    CInput given;
    COutput made;
    std::memcpy(&given, &input, sizeof given);
    check(call(&given, &made));
    Output output;
    std::memcpy(static_cast<void *>(&output), &made, sizeof made);
    return output;
}
} // namespace detail

/// A result, or the refusal that `work` threw.
template <class Work>
auto attempt(Work &&work) -> std::variant<decltype(work()), error>
{
    try {
        return work();
    } catch (const error &refusal) {
        return refusal;
    }
}

/// A calculation with its settings fixed. Threads may share one.
class context {
public:
    /// `settings_json`: a JSON object of settings by name, for instance {"fuel": "G20"}.
    explicit context(const std::string &calculation, const std::string &settings_json = "{}")
    {
        fw_context *made = nullptr;
        detail::check(fw_context_new(calculation.c_str(), settings_json.c_str(), &made));
        handle_.reset(made);
    }
    const fw_context *get() const noexcept { return handle_.get(); }

private:
    struct free_context {
        void operator()(fw_context *handle) const noexcept { fw_context_free(handle); }
    };
    std::unique_ptr<fw_context, free_context> handle_;
};

/// Many results: an output a row, NaN throughout where `status` is FW_ROW_FIELD or more.
template <class Output>
struct rows {
    std::vector<Output> outputs;
    std::vector<std::uint16_t> status;
};

/// The version of the library that is loaded.
inline std::string version() { return fw_version(); }

/// Whether the library that is loaded has the interface of this header.
inline bool abi_fits() noexcept { return fw_abi_version() == FW_ABI_VERSION; }

/// Every calculation, as JSON.
inline std::string catalogue_json() { return detail::text(fw_catalogue_json); }

/// Evaluates a call in JSON and returns the result in JSON.
inline std::string evaluate_json(const std::string &call)
{
    return detail::text([&](char **answer) { return fw_evaluate_json(call.c_str(), answer); });
}

namespace tag {
struct cubic_metre;
struct cubic_metre_at_reference_conditions;
struct cubic_metre_at_the_meter;
struct cubic_metre_per_joule;
struct cubic_metre_per_joule_gross;
struct cubic_metre_per_joule_net;
struct cubic_metre_per_kilogram;
struct cubic_metre_per_second;
struct cubic_metre_per_second_at_reference_conditions;
struct cubic_metre_per_second_at_the_meter;
struct cubic_metre_per_watt;
struct joule;
struct joule_per_cubic_metre_gross;
struct joule_per_cubic_metre_net;
struct joule_per_kelvin;
struct joule_per_kilogram;
struct joule_per_kilogram_gross;
struct joule_per_kilogram_kelvin;
struct joule_per_kilogram_net;
struct joule_per_metre_kelvin;
struct joule_per_mole;
struct joule_per_mole_gross;
struct joule_per_mole_net;
struct kelvin;
struct kelvin_difference;
struct kilogram;
struct kilogram_per_cubic_metre;
struct kilogram_per_joule_gross;
struct kilogram_per_joule_net;
struct kilogram_per_metre;
struct kilogram_per_mole;
struct kilogram_per_second;
struct metre;
struct metre_both_limbs;
struct metre_kelvin_per_watt;
struct metre_one_limb;
struct metre_per_second;
struct metre_per_second_squared;
struct mole;
struct ohm;
struct pascal;
struct pascal_absolute;
struct pascal_gauge;
struct pascal_per_kelvin;
struct pascal_per_metre;
struct pascal_second;
struct per_kelvin;
struct per_second;
struct radian;
struct ratio;
struct ratio_air_free;
struct ratio_dry;
struct ratio_gross;
struct ratio_net;
struct ratio_wet;
struct second;
struct square_metre;
struct square_metre_equivalent;
struct square_metre_free;
struct square_metre_kelvin_per_watt;
struct square_metre_overall;
struct square_metre_per_second;
struct square_metre_per_watt;
struct volt;
struct volt_per_kelvin;
struct watt;
struct watt_gross;
struct watt_net;
struct watt_per_kelvin;
struct watt_per_metre;
struct watt_per_metre_kelvin;
struct watt_per_metre_kelvin_of_length;
struct watt_per_square_metre_kelvin;
} // namespace tag

/// Volume, SI.
using cubic_metre = quantity<tag::cubic_metre>;
/// Volume (at reference conditions), SI.
using cubic_metre_at_reference_conditions = quantity<tag::cubic_metre_at_reference_conditions>;
/// Volume (at the meter), SI.
using cubic_metre_at_the_meter = quantity<tag::cubic_metre_at_the_meter>;
/// Volume per energy, SI.
using cubic_metre_per_joule = quantity<tag::cubic_metre_per_joule>;
/// Volume per energy (gross), SI.
using cubic_metre_per_joule_gross = quantity<tag::cubic_metre_per_joule_gross>;
/// Volume per energy (net), SI.
using cubic_metre_per_joule_net = quantity<tag::cubic_metre_per_joule_net>;
/// Specific volume, SI.
using cubic_metre_per_kilogram = quantity<tag::cubic_metre_per_kilogram>;
/// Volume flow, SI.
using cubic_metre_per_second = quantity<tag::cubic_metre_per_second>;
/// Volume flow (at reference conditions), SI.
using cubic_metre_per_second_at_reference_conditions = quantity<tag::cubic_metre_per_second_at_reference_conditions>;
/// Volume flow (at the meter), SI.
using cubic_metre_per_second_at_the_meter = quantity<tag::cubic_metre_per_second_at_the_meter>;
/// Volume per power, SI.
using cubic_metre_per_watt = quantity<tag::cubic_metre_per_watt>;
/// Energy, SI.
using joule = quantity<tag::joule>;
/// Energy per volume (gross), SI.
using joule_per_cubic_metre_gross = quantity<tag::joule_per_cubic_metre_gross>;
/// Energy per volume (net), SI.
using joule_per_cubic_metre_net = quantity<tag::joule_per_cubic_metre_net>;
/// Heat capacity, SI.
using joule_per_kelvin = quantity<tag::joule_per_kelvin>;
/// Energy per mass, SI.
using joule_per_kilogram = quantity<tag::joule_per_kilogram>;
/// Energy per mass (gross), SI.
using joule_per_kilogram_gross = quantity<tag::joule_per_kilogram_gross>;
/// Specific heat capacity, SI.
using joule_per_kilogram_kelvin = quantity<tag::joule_per_kilogram_kelvin>;
/// Energy per mass (net), SI.
using joule_per_kilogram_net = quantity<tag::joule_per_kilogram_net>;
/// Heat capacity per length, SI.
using joule_per_metre_kelvin = quantity<tag::joule_per_metre_kelvin>;
/// Molar energy, SI.
using joule_per_mole = quantity<tag::joule_per_mole>;
/// Molar energy (gross), SI.
using joule_per_mole_gross = quantity<tag::joule_per_mole_gross>;
/// Molar energy (net), SI.
using joule_per_mole_net = quantity<tag::joule_per_mole_net>;
/// Temperature, SI.
using kelvin = quantity<tag::kelvin>;
/// Temperature difference, SI.
using kelvin_difference = quantity<tag::kelvin_difference>;
/// Mass, SI.
using kilogram = quantity<tag::kilogram>;
/// Density, SI.
using kilogram_per_cubic_metre = quantity<tag::kilogram_per_cubic_metre>;
/// Mass per energy (gross), SI.
using kilogram_per_joule_gross = quantity<tag::kilogram_per_joule_gross>;
/// Mass per energy (net), SI.
using kilogram_per_joule_net = quantity<tag::kilogram_per_joule_net>;
/// Mass per length, SI.
using kilogram_per_metre = quantity<tag::kilogram_per_metre>;
/// Molar mass, SI.
using kilogram_per_mole = quantity<tag::kilogram_per_mole>;
/// Mass flow, SI.
using kilogram_per_second = quantity<tag::kilogram_per_second>;
/// Length, SI.
using metre = quantity<tag::metre>;
/// Length (both-limbs), SI.
using metre_both_limbs = quantity<tag::metre_both_limbs>;
/// Thermal resistance of a length, SI.
using metre_kelvin_per_watt = quantity<tag::metre_kelvin_per_watt>;
/// Length (one-limb), SI.
using metre_one_limb = quantity<tag::metre_one_limb>;
/// Velocity, SI.
using metre_per_second = quantity<tag::metre_per_second>;
/// Acceleration, SI.
using metre_per_second_squared = quantity<tag::metre_per_second_squared>;
/// Amount of substance, SI.
using mole = quantity<tag::mole>;
/// Electrical resistance, SI.
using ohm = quantity<tag::ohm>;
/// Pressure, SI.
using pascal = quantity<tag::pascal>;
/// Pressure (absolute), SI.
using pascal_absolute = quantity<tag::pascal_absolute>;
/// Pressure (gauge), SI.
using pascal_gauge = quantity<tag::pascal_gauge>;
/// Pressure per temperature difference, SI.
using pascal_per_kelvin = quantity<tag::pascal_per_kelvin>;
/// Pressure per length, SI.
using pascal_per_metre = quantity<tag::pascal_per_metre>;
/// Dynamic viscosity, SI.
using pascal_second = quantity<tag::pascal_second>;
/// Coefficient per kelvin, SI.
using per_kelvin = quantity<tag::per_kelvin>;
/// Rate, SI.
using per_second = quantity<tag::per_second>;
/// Angle, SI.
using radian = quantity<tag::radian>;
/// Ratio, SI.
using ratio = quantity<tag::ratio>;
/// Ratio (air-free), SI.
using ratio_air_free = quantity<tag::ratio_air_free>;
/// Ratio (dry), SI.
using ratio_dry = quantity<tag::ratio_dry>;
/// Ratio (gross), SI.
using ratio_gross = quantity<tag::ratio_gross>;
/// Ratio (net), SI.
using ratio_net = quantity<tag::ratio_net>;
/// Ratio (wet), SI.
using ratio_wet = quantity<tag::ratio_wet>;
/// Time, SI.
using second = quantity<tag::second>;
/// Area, SI.
using square_metre = quantity<tag::square_metre>;
/// Area (equivalent), SI.
using square_metre_equivalent = quantity<tag::square_metre_equivalent>;
/// Area (free), SI.
using square_metre_free = quantity<tag::square_metre_free>;
/// Thermal resistance of an area, SI.
using square_metre_kelvin_per_watt = quantity<tag::square_metre_kelvin_per_watt>;
/// Area (overall), SI.
using square_metre_overall = quantity<tag::square_metre_overall>;
/// Kinematic viscosity, SI.
using square_metre_per_second = quantity<tag::square_metre_per_second>;
/// Area per power, SI.
using square_metre_per_watt = quantity<tag::square_metre_per_watt>;
/// Electric potential, SI.
using volt = quantity<tag::volt>;
/// Electric potential per temperature difference, SI.
using volt_per_kelvin = quantity<tag::volt_per_kelvin>;
/// Power, SI.
using watt = quantity<tag::watt>;
/// Power (gross), SI.
using watt_gross = quantity<tag::watt_gross>;
/// Power (net), SI.
using watt_net = quantity<tag::watt_net>;
/// Thermal conductance, SI.
using watt_per_kelvin = quantity<tag::watt_per_kelvin>;
/// Heat flow per length, SI.
using watt_per_metre = quantity<tag::watt_per_metre>;
/// Thermal conductivity, SI.
using watt_per_metre_kelvin = quantity<tag::watt_per_metre_kelvin>;
/// Heat loss per length and kelvin, SI.
using watt_per_metre_kelvin_of_length = quantity<tag::watt_per_metre_kelvin_of_length>;
/// Heat transfer coefficient, SI.
using watt_per_square_metre_kelvin = quantity<tag::watt_per_square_metre_kelvin>;

struct combustion_air_flow_input {
    /// Heat input on the net calorific value; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to
    /// 1000000 (1 kW to 1000 kW).
    watt_net heat_input_net;
    /// Net calorific value of the gas at the reference conditions of its volume; allowed 1000000 to 2e8 (1
    /// MJ/m³ to 200 MJ/m³); usually 1e7 to 1.3e8 (10 MJ/m³ to 130 MJ/m³).
    joule_per_cubic_metre_net net_calorific_value;
    /// Air needed per volume of gas; allowed 0.5 to 60.
    ratio stoichiometric_air;
    /// Excess air ratio, the air drawn in by a draught diverter counted; allowed 1 to 20.
    ratio excess_air_ratio;
};

struct combustion_air_flow_output {
    /// Gas rate at the reference conditions of the calorific value.
    cubic_metre_per_second_at_reference_conditions gas_rate;
    /// Air flow at the same conditions.
    cubic_metre_per_second air_flow;
};

/// Combustion air flow; see fw_combustion_air_flow for settings, accuracy, cautions and sources.
/// Gas rate and air flow of a burner from its net heat input, the gas and the excess air ratio.
inline combustion_air_flow_output combustion_air_flow(const combustion_air_flow_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_combustion_air_flow_output, combustion_air_flow_output, fw_combustion_air_flow_input>(
        input, [&](const fw_combustion_air_flow_input *given, fw_combustion_air_flow_output *made) { return fw_combustion_air_flow(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<combustion_air_flow_output> combustion_air_flow_batch(const std::vector<combustion_air_flow_input> &inputs)
{
    rows<combustion_air_flow_output> made{std::vector<combustion_air_flow_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_combustion_air_flow_batch(inputs.size(), reinterpret_cast<const fw_combustion_air_flow_input *>(inputs.data()),
        sizeof(combustion_air_flow_input), reinterpret_cast<fw_combustion_air_flow_output *>(made.outputs.data()), sizeof(combustion_air_flow_output), made.status.data()));
    return made;
}

struct combustion_products_input {
    /// Excess air ratio: air supplied over air needed. Below 1 the mixture is rich, and its products are
    /// another matter; allowed 1 to 50; usually 1 to 3; default 1.
    ratio excess_air_ratio{1.0};
    /// Temperature of the combustion air, for its humidity; allowed 253.15 to 333.15 (-20 °C to 60 °C);
    /// default 293.15 (20 °C).
    kelvin air_temperature{293.15};
    /// Relative humidity of the combustion air; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio relative_humidity{0.0};
    /// Absolute pressure of the atmosphere; allowed 60000 to 110000 (600 mbar to 1100 mbar); default 101325
    /// (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Compression factor of the fuel gas at 15 °C, for the real volume of air per volume of gas; allowed
    /// 0.8 to 1.1; default 1.
    ratio fuel_compression_factor{1.0};
};

struct combustion_products_output {
    /// Dry air needed per volume of gas, both at the same temperature and pressure; NaN means: the fuel is
    /// not a gas.
    ratio stoichiometric_air;
    /// The same with the compression factors of gas and air at 15 °C; NaN means: the fuel is not a gas.
    ratio stoichiometric_air_real;
    /// Oxygen needed per volume of gas; NaN means: the fuel is not a gas.
    ratio stoichiometric_oxygen;
    /// Dry flue gas per volume of gas; NaN means: the fuel is not a gas.
    ratio dry_flue;
    /// Wet flue gas per volume of gas; NaN means: the fuel is not a gas.
    ratio wet_flue;
    /// Water vapour per volume of gas; NaN means: the fuel is not a gas.
    ratio water_vapour;
    /// Carbon dioxide per volume of gas; NaN means: the fuel is not a gas.
    ratio carbon_dioxide;
    /// Dry air needed, normal cubic metres per kilogram of fuel.
    cubic_metre_per_kilogram stoichiometric_air_per_mass;
    /// Oxygen needed, normal cubic metres per kilogram of fuel.
    cubic_metre_per_kilogram stoichiometric_oxygen_per_mass;
    /// Dry flue gas, normal cubic metres per kilogram of fuel.
    cubic_metre_per_kilogram dry_flue_per_mass;
    /// Wet flue gas, normal cubic metres per kilogram of fuel.
    cubic_metre_per_kilogram wet_flue_per_mass;
    /// Water vapour, normal cubic metres per kilogram of fuel.
    cubic_metre_per_kilogram water_vapour_per_mass;
    /// Carbon dioxide, normal cubic metres per kilogram of fuel.
    cubic_metre_per_kilogram carbon_dioxide_per_mass;
    /// Mass of dry air needed over mass of fuel.
    ratio stoichiometric_air_mass;
    /// Mass of the dry air supplied over mass of fuel.
    ratio air_mass;
    /// Mass of wet flue gas over mass of fuel.
    ratio flue_mass;
    /// Mass of water in the flue gas over mass of fuel.
    ratio water_mass;
    /// Water in the air, mass over mass of dry air.
    ratio humidity_ratio;
    /// Largest carbon dioxide in dry flue gas: complete combustion without excess air.
    ratio_dry carbon_dioxide_maximum;
    /// Oxygen in dry flue gas.
    ratio_dry oxygen_dry;
    /// Carbon dioxide in dry flue gas.
    ratio_dry carbon_dioxide_dry;
    /// Carbon dioxide in wet flue gas.
    ratio_wet carbon_dioxide_wet;
    /// Water vapour in wet flue gas.
    ratio_wet water_wet;
    /// Oxygen in wet flue gas.
    ratio_wet oxygen_wet;
    /// Nitrogen in wet flue gas.
    ratio_wet nitrogen_wet;
    /// Argon in wet flue gas.
    ratio_wet argon_wet;
    /// Sulphur dioxide in wet flue gas.
    ratio_wet sulphur_dioxide_wet;
    /// Temperature at which the flue gas begins to condense; NaN means: too little water vapour to condense
    /// above 0 °C.
    kelvin water_dew_point;
    /// Molar mass of the wet flue gas.
    kilogram_per_mole flue_molar_mass;
    /// Density of the wet flue gas at 0 °C and 1013.25 mbar, had nothing condensed.
    kilogram_per_cubic_metre flue_normal_density;
    /// Dry air needed, normal cubic metres per net heat input.
    cubic_metre_per_joule_net stoichiometric_air_per_net_heat;
    /// Dry flue gas, normal cubic metres per net heat input.
    cubic_metre_per_joule_net dry_flue_per_net_heat;
    /// Dry flue gas, normal cubic metres per gross heat input.
    cubic_metre_per_joule_gross dry_flue_per_gross_heat;
    /// Carbon dioxide from the fuel per gross heat input.
    kilogram_per_joule_gross carbon_dioxide_per_gross_heat;
};

/// Air needed and flue gas made; see fw_combustion_products for settings, accuracy, cautions and sources.
/// Stoichiometric air, dry and wet flue gas, largest carbon dioxide, composition, dew point and amounts
/// per heat input of a fuel, at any excess air ratio from 1, with humid air.
inline combustion_products_output combustion_products(const context &settings, const combustion_products_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_combustion_products_output, combustion_products_output, fw_combustion_products_input>(
        input, [&](const fw_combustion_products_input *given, fw_combustion_products_output *made) { return fw_combustion_products(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<combustion_products_output> combustion_products_batch(const context &settings, const std::vector<combustion_products_input> &inputs)
{
    rows<combustion_products_output> made{std::vector<combustion_products_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_combustion_products_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_combustion_products_input *>(inputs.data()),
        sizeof(combustion_products_input), reinterpret_cast<fw_combustion_products_output *>(made.outputs.data()), sizeof(combustion_products_output), made.status.data()));
    return made;
}

struct flame_temperature_input {
    /// Excess air ratio: air supplied over air needed; allowed 1 to 20; default 1.
    ratio excess_air_ratio{1.0};
    /// Temperature of the fuel gas; liquids and solids are taken to enter at 25 °C; allowed 233.15 to
    /// 373.15 (-40 °C to 100 °C); default 298.15 (25 °C).
    kelvin fuel_temperature{298.15};
    /// Temperature of the combustion air; allowed 233.15 to 873.15 (-40 °C to 600 °C); default 298.15 (25
    /// °C).
    kelvin air_temperature{298.15};
    /// Water in the combustion air as relative humidity at 20 °C; allowed 0 to 1 (0 % to 100 %); default 0
    /// (0 %).
    ratio relative_humidity_20{0.0};
    /// Absolute pressure; allowed 10000 to 2000000 (100 mbar to 20000 mbar); default 101325 (1013.25 mbar).
    pascal_absolute pressure{101325.0};
};

struct flame_temperature_output {
    /// Adiabatic flame temperature in chemical equilibrium, with dissociation.
    kelvin flame_temperature;
    /// Adiabatic flame temperature if combustion were complete; too high above about 1500 °C.
    kelvin flame_temperature_complete;
    /// Carbon monoxide in the wet gas in equilibrium at flame temperature; nearly all of it burns on
    /// cooling.
    ratio_wet carbon_monoxide_wet;
    /// Nitric oxide in the wet gas in equilibrium at flame temperature; a flame has no time to form as
    /// much.
    ratio_wet nitric_oxide_wet;
    /// Oxygen in the wet gas in equilibrium at flame temperature.
    ratio_wet oxygen_wet;
    /// Hydrogen in the wet gas in equilibrium at flame temperature.
    ratio_wet hydrogen_wet;
};

/// Adiabatic flame temperature; see fw_flame_temperature for settings, accuracy, cautions and sources.
/// Temperature of the flame if no heat left it, with dissociation in chemical equilibrium and for
/// complete combustion, and the carbon monoxide and nitric oxide that belong to it.
inline flame_temperature_output flame_temperature(const context &settings, const flame_temperature_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_flame_temperature_output, flame_temperature_output, fw_flame_temperature_input>(
        input, [&](const fw_flame_temperature_input *given, fw_flame_temperature_output *made) { return fw_flame_temperature(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<flame_temperature_output> flame_temperature_batch(const context &settings, const std::vector<flame_temperature_input> &inputs)
{
    rows<flame_temperature_output> made{std::vector<flame_temperature_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_flame_temperature_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_flame_temperature_input *>(inputs.data()),
        sizeof(flame_temperature_input), reinterpret_cast<fw_flame_temperature_output *>(made.outputs.data()), sizeof(flame_temperature_output), made.status.data()));
    return made;
}

struct gas_enthalpy_input {
    /// Temperature of the gas; allowed 223.15 to 2973.15 (-50 °C to 2700 °C); usually 273.15 to 873.15 (0
    /// °C to 600 °C).
    kelvin temperature;
};

struct gas_enthalpy_output {
    /// Carbon dioxide.
    joule_per_mole carbon_dioxide;
    /// Water vapour as an ideal gas.
    joule_per_mole water_vapour;
    /// Oxygen.
    joule_per_mole oxygen;
    /// Nitrogen.
    joule_per_mole nitrogen;
    /// Argon.
    joule_per_mole argon;
    /// Sulphur dioxide.
    joule_per_mole sulphur_dioxide;
    /// Carbon monoxide.
    joule_per_mole carbon_monoxide;
};

/// Enthalpies of flue gases; see fw_gas_enthalpy for settings, accuracy, cautions and sources.
/// Heat of one mole of each flue gas above 25 °C.
inline gas_enthalpy_output gas_enthalpy(const gas_enthalpy_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_enthalpy_output, gas_enthalpy_output, fw_gas_enthalpy_input>(
        input, [&](const fw_gas_enthalpy_input *given, fw_gas_enthalpy_output *made) { return fw_gas_enthalpy(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_enthalpy_output> gas_enthalpy_batch(const std::vector<gas_enthalpy_input> &inputs)
{
    rows<gas_enthalpy_output> made{std::vector<gas_enthalpy_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_enthalpy_batch(inputs.size(), reinterpret_cast<const fw_gas_enthalpy_input *>(inputs.data()),
        sizeof(gas_enthalpy_input), reinterpret_cast<fw_gas_enthalpy_output *>(made.outputs.data()), sizeof(gas_enthalpy_output), made.status.data()));
    return made;
}

struct saturated_water_input {
    /// Temperature of water and vapour; allowed 273.15 to 373.15 (0 °C to 100 °C).
    kelvin temperature;
};

struct saturated_water_output {
    /// Saturation pressure.
    pascal_absolute saturation_pressure;
    /// Heat of vaporisation.
    joule_per_kilogram heat_of_vaporisation;
    /// Enthalpy of the liquid above that at the triple point.
    joule_per_kilogram liquid_enthalpy;
};

/// Saturated water; see fw_saturated_water for settings, accuracy, cautions and sources.
/// Vapour pressure, heat of vaporisation and liquid enthalpy of water from 0 to 100 °C.
inline saturated_water_output saturated_water(const saturated_water_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_saturated_water_output, saturated_water_output, fw_saturated_water_input>(
        input, [&](const fw_saturated_water_input *given, fw_saturated_water_output *made) { return fw_saturated_water(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<saturated_water_output> saturated_water_batch(const std::vector<saturated_water_input> &inputs)
{
    rows<saturated_water_output> made{std::vector<saturated_water_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_saturated_water_batch(inputs.size(), reinterpret_cast<const fw_saturated_water_input *>(inputs.data()),
        sizeof(saturated_water_input), reinterpret_cast<fw_saturated_water_output *>(made.outputs.data()), sizeof(saturated_water_output), made.status.data()));
    return made;
}

struct carbon_monoxide_input {
    /// Carbon monoxide in dry flue gas; allowed 0 to 0.1 (0 ppm to 100000 ppm); usually 0 to 0.001 (0 ppm
    /// to 1000 ppm).
    ratio_dry carbon_monoxide_dry;
    /// Carbon dioxide in dry flue gas; allowed 0.0005 to 0.25 (0.05 % to 25 %); usually 0.01 to 0.15 (1 %
    /// to 15 %); NaN means: not measured.
    ratio_dry carbon_dioxide_dry;
    /// Oxygen in dry flue gas; allowed 0 to 0.205 (0 % to 20.5 %); usually 0.01 to 0.18 (1 % to 18 %); NaN
    /// means: not measured.
    ratio_dry oxygen_dry;
    /// Oxygen of air in the rule's own formula: 20.9, 20.95 or 21 %; needed with oxygen; allowed 0.208 to
    /// 0.211 (20.8 % to 21.1 %); NaN means: no rule chosen.
    ratio_dry air_oxygen;
    /// Oxygen that the rule refers to; 0 % means air-free; allowed 0 to 0.2 (0 % to 20 %); default 0 (0 %).
    ratio_dry reference_oxygen{0.0};
    /// Largest carbon dioxide of the fuel; needed for the air-free value from carbon dioxide; allowed 0.01
    /// to 0.25 (1 % to 25 %); NaN means: not given.
    ratio_dry carbon_dioxide_maximum;
};

struct carbon_monoxide_output {
    /// Carbon monoxide over carbon dioxide, both by volume of the same sample; dilution does not change it;
    /// NaN means: carbon dioxide not measured.
    ratio carbon_monoxide_ratio;
    /// Carbon dioxide over carbon monoxide, the "one to ..." way of stating it; NaN means: no carbon
    /// monoxide, or carbon dioxide not measured.
    ratio carbon_dioxide_over_monoxide;
    /// Carbon monoxide at zero oxygen, from the oxygen read; NaN means: oxygen not measured or no oxygen of
    /// air chosen.
    ratio_air_free carbon_monoxide_air_free;
    /// Carbon monoxide at reference oxygen, from the oxygen read; NaN means: oxygen not measured or no
    /// oxygen of air chosen.
    ratio_dry carbon_monoxide_at_reference;
    /// Carbon monoxide at zero excess air, from the carbon dioxide read and the fuel's largest one; NaN
    /// means: carbon dioxide or its largest value not given.
    ratio_air_free carbon_monoxide_air_free_from_carbon_dioxide;
};

/// Carbon monoxide ratio and air-free value; see fw_carbon_monoxide for settings, accuracy, cautions and sources.
/// CO/CO2 ratio, air-free carbon monoxide from oxygen or from carbon dioxide, and carbon monoxide at a
/// reference oxygen.
inline carbon_monoxide_output carbon_monoxide(const carbon_monoxide_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_carbon_monoxide_output, carbon_monoxide_output, fw_carbon_monoxide_input>(
        input, [&](const fw_carbon_monoxide_input *given, fw_carbon_monoxide_output *made) { return fw_carbon_monoxide(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<carbon_monoxide_output> carbon_monoxide_batch(const std::vector<carbon_monoxide_input> &inputs)
{
    rows<carbon_monoxide_output> made{std::vector<carbon_monoxide_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_carbon_monoxide_batch(inputs.size(), reinterpret_cast<const fw_carbon_monoxide_input *>(inputs.data()),
        sizeof(carbon_monoxide_input), reinterpret_cast<fw_carbon_monoxide_output *>(made.outputs.data()), sizeof(carbon_monoxide_output), made.status.data()));
    return made;
}

struct flue_analysis_input {
    /// Oxygen in dry flue gas; allowed 0 to 0.209 (0 % to 20.9 %); usually 0.02 to 0.12 (2 % to 12 %); NaN
    /// means: not measured.
    ratio_dry oxygen_dry;
    /// Carbon dioxide in dry flue gas, measured as such; leave it out where the instrument derives it from
    /// oxygen; allowed 0.0005 to 0.25 (0.05 % to 25 %); usually 0.04 to 0.15 (4 % to 15 %); NaN means: not
    /// measured.
    ratio_dry carbon_dioxide_dry;
    /// Carbon monoxide in dry flue gas; allowed 0 to 0.1 (0 ppm to 100000 ppm); usually 0 to 0.001 (0 ppm
    /// to 1000 ppm).
    ratio_dry carbon_monoxide_dry;
    /// Temperature of the flue gas where the sample is taken; allowed 253.15 to 873.15 (-20 °C to 600 °C);
    /// usually 303.15 to 573.15 (30 °C to 300 °C).
    kelvin flue_temperature;
    /// Temperature of the combustion air where the burner takes it; allowed 233.15 to 333.15 (-40 °C to 60
    /// °C); usually 263.15 to 313.15 (-10 °C to 40 °C).
    kelvin air_temperature;
    /// Absolute pressure of the atmosphere at the place, not reduced to sea level; allowed 60000 to 110000
    /// (600 mbar to 1100 mbar); usually 80000 to 104500 (800 mbar to 1045 mbar); default 101325 (1013.25
    /// mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Relative humidity of the combustion air; dry air is the convention of published loss figures;
    /// allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio relative_humidity{0.0};
};

struct flue_analysis_output {
    /// Excess air ratio: air supplied over air needed, by element balance with the carbon monoxide in it.
    ratio excess_air_ratio;
    /// Excess air: the excess air ratio less one.
    ratio excess_air;
    /// Oxygen in dry flue gas derived from the carbon dioxide; NaN means: measured, not derived.
    ratio_dry oxygen_dry_derived;
    /// Carbon dioxide in dry flue gas derived from the oxygen and the fuel; not an independent reading; NaN
    /// means: measured, not derived.
    ratio_dry carbon_dioxide_dry_derived;
    /// Measured less derived carbon dioxide: nearly zero when oxygen, carbon dioxide and fuel belong
    /// together; NaN means: only one of the two was measured.
    ratio carbon_dioxide_closure;
    /// Largest carbon dioxide the fuel can give in dry flue gas.
    ratio_dry carbon_dioxide_maximum;
    /// Carbon monoxide over carbon dioxide, the measured one where there is one; dilution does not change
    /// it.
    ratio carbon_monoxide_ratio;
    /// Carbon monoxide per dry flue gas of complete combustion without excess air, by exact balance.
    ratio_air_free carbon_monoxide_air_free;
    /// Temperature at which the flue gas begins to condense; NaN means: too little water vapour to condense
    /// above 0 °C.
    kelvin water_dew_point;
    /// Heat in the dry flue gas above 25 °C.
    ratio_gross dry_gas_loss;
    /// Heat in the water vapour above 25 °C.
    ratio_gross moisture_loss;
    /// Latent heat that leaves with the vapour, less that which came with humid air.
    ratio_gross latent_loss;
    /// Heat in the condensate, which leaves at flue temperature.
    ratio_gross condensate_loss;
    /// Heat not released because carbon monoxide did not burn.
    ratio_gross unburnt_loss;
    /// Heat brought by the combustion air above 25 °C; negative where it is colder.
    ratio_gross air_credit;
    /// Heat brought by the fuel gas, taken at air temperature; zero for liquids and solids.
    ratio_gross fuel_credit;
    /// Flue loss as short formulae mean it: heat of dry gas and vapour above air temperature, without
    /// latent heat and carbon monoxide.
    ratio_net flue_loss_net;
    /// Combustion efficiency on the gross calorific value: what does not leave by the flue.
    ratio_gross efficiency_gross;
    /// Combustion efficiency on the net calorific value; above 100 % where enough condenses.
    ratio_net efficiency_net;
    /// Condensate per gross heat input.
    kilogram_per_joule_gross condensate;
};

/// Flue gas analysis; see fw_flue_analysis for settings, accuracy, cautions and sources.
/// Excess air, derived gases, carbon monoxide ratio and air-free, dew point, every loss, condensate and
/// the combustion efficiency on both bases, from oxygen or carbon dioxide, carbon monoxide and
/// temperatures, by exact element and energy balance.
inline flue_analysis_output flue_analysis(const context &settings, const flue_analysis_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_flue_analysis_output, flue_analysis_output, fw_flue_analysis_input>(
        input, [&](const fw_flue_analysis_input *given, fw_flue_analysis_output *made) { return fw_flue_analysis(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<flue_analysis_output> flue_analysis_batch(const context &settings, const std::vector<flue_analysis_input> &inputs)
{
    rows<flue_analysis_output> made{std::vector<flue_analysis_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_flue_analysis_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_flue_analysis_input *>(inputs.data()),
        sizeof(flue_analysis_input), reinterpret_cast<fw_flue_analysis_output *>(made.outputs.data()), sizeof(flue_analysis_output), made.status.data()));
    return made;
}

struct flue_emissions_input {
    /// Oxygen in dry flue gas; allowed 0 to 0.205 (0 % to 20.5 %); usually 0.02 to 0.12 (2 % to 12 %).
    ratio_dry oxygen_dry;
    /// Carbon monoxide in dry flue gas; allowed 0 to 0.1 (0 ppm to 100000 ppm); usually 0 to 0.001 (0 ppm
    /// to 1000 ppm).
    ratio_dry carbon_monoxide_dry;
    /// Nitrogen oxides in dry flue gas; allowed 0 to 0.01 (0 ppm to 10000 ppm); usually 0 to 0.0003 (0 ppm
    /// to 300 ppm); NaN means: not measured.
    ratio_dry nitrogen_oxides_dry;
    /// Oxygen that the rule refers emissions to: 0 % means air-free; allowed 0 to 0.2 (0 % to 20 %).
    ratio_dry reference_oxygen;
    /// Oxygen of air in the rule's own formula: 20.9, 20.95 or 21 %; allowed 0.208 to 0.211 (20.8 % to 21.1
    /// %).
    ratio_dry air_oxygen;
    /// Temperature to which masses per cubic metre refer; allowed 223.15 to 333.15 (-50 °C to 60 °C);
    /// default 273.15 (0 °C).
    kelvin volume_temperature{273.15};
    /// Absolute pressure to which masses per cubic metre refer; allowed 60000 to 110000 (600 mbar to 1100
    /// mbar); default 101325 (1013.25 mbar).
    pascal_absolute volume_pressure{101325.0};
};

struct flue_emissions_output {
    /// Excess air ratio by element balance.
    ratio excess_air_ratio;
    /// Excess air ratio by the short form with the rule's oxygen of air; 1 to 8 % high for hydrocarbons.
    ratio excess_air_ratio_short;
    /// Carbon dioxide in dry flue gas derived from oxygen by element balance.
    ratio_dry carbon_dioxide_dry_derived;
    /// Carbon dioxide in dry flue gas derived by the short form.
    ratio_dry carbon_dioxide_dry_short;
    /// Carbon monoxide over carbon dioxide, derived by element balance.
    ratio carbon_monoxide_ratio;
    /// Carbon monoxide over carbon dioxide, derived by the short form.
    ratio carbon_monoxide_ratio_short;
    /// Carbon monoxide per dry flue gas of complete combustion without excess air, by element balance.
    ratio_air_free carbon_monoxide_air_free;
    /// Carbon monoxide air-free by the rule's formula.
    ratio_air_free carbon_monoxide_air_free_rule;
    /// Carbon monoxide at reference oxygen by the rule's formula.
    ratio_dry carbon_monoxide_at_reference;
    /// Nitrogen oxides at reference oxygen by the rule's formula; NaN means: not measured.
    ratio_dry nitrogen_oxides_at_reference;
    /// Mass of carbon monoxide per cubic metre of dry flue gas as measured.
    kilogram_per_cubic_metre carbon_monoxide_concentration;
    /// Mass of carbon monoxide per cubic metre of dry flue gas at reference oxygen.
    kilogram_per_cubic_metre carbon_monoxide_concentration_at_reference;
    /// Mass of nitrogen oxides, counted as NO2, per cubic metre of dry flue gas as measured; NaN means: not
    /// measured.
    kilogram_per_cubic_metre nitrogen_oxides_concentration;
    /// Mass of nitrogen oxides, counted as NO2, per cubic metre of dry flue gas at reference oxygen; NaN
    /// means: not measured.
    kilogram_per_cubic_metre nitrogen_oxides_concentration_at_reference;
    /// Carbon monoxide per gross heat input, by element balance.
    kilogram_per_joule_gross carbon_monoxide_per_gross_heat;
    /// Carbon monoxide per net heat input, by element balance.
    kilogram_per_joule_net carbon_monoxide_per_net_heat;
    /// Nitrogen oxides, counted as NO2, per gross heat input, by element balance; NaN means: not measured.
    kilogram_per_joule_gross nitrogen_oxides_per_gross_heat;
    /// Nitrogen oxides, counted as NO2, per net heat input, by element balance; NaN means: not measured.
    kilogram_per_joule_net nitrogen_oxides_per_net_heat;
};

/// Emissions of carbon monoxide and nitrogen oxides; see fw_flue_emissions for settings, accuracy, cautions and sources.
/// Carbon monoxide and nitrogen oxides air-free, at reference oxygen, per cubic metre and per
/// kilowatt-hour on both bases, by element balance and by the short formulae of rules.
inline flue_emissions_output flue_emissions(const context &settings, const flue_emissions_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_flue_emissions_output, flue_emissions_output, fw_flue_emissions_input>(
        input, [&](const fw_flue_emissions_input *given, fw_flue_emissions_output *made) { return fw_flue_emissions(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<flue_emissions_output> flue_emissions_batch(const context &settings, const std::vector<flue_emissions_input> &inputs)
{
    rows<flue_emissions_output> made{std::vector<flue_emissions_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_flue_emissions_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_flue_emissions_input *>(inputs.data()),
        sizeof(flue_emissions_input), reinterpret_cast<fw_flue_emissions_output *>(made.outputs.data()), sizeof(flue_emissions_output), made.status.data()));
    return made;
}

struct mass_concentration_input {
    /// Share of volume; allowed 0 to 1 (0 ppm to 1000000 ppm).
    ratio fraction;
    /// Temperature to which the cubic metre refers; without it the mass is up to 7 % wrong; allowed 223.15
    /// to 333.15 (-50 °C to 60 °C).
    kelvin temperature;
    /// Absolute pressure to which the cubic metre refers; allowed 60000 to 110000 (600 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pascal_absolute pressure{101325.0};
};

struct mass_concentration_output {
    /// Mass of the gas per cubic metre.
    kilogram_per_cubic_metre mass_concentration;
};

/// Mass concentration from volume fraction; see fw_mass_concentration for settings, accuracy, cautions and sources.
/// Milligrams per cubic metre from parts per million, at a stated temperature and pressure.
inline mass_concentration_output mass_concentration(const context &settings, const mass_concentration_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_mass_concentration_output, mass_concentration_output, fw_mass_concentration_input>(
        input, [&](const fw_mass_concentration_input *given, fw_mass_concentration_output *made) { return fw_mass_concentration(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<mass_concentration_output> mass_concentration_batch(const context &settings, const std::vector<mass_concentration_input> &inputs)
{
    rows<mass_concentration_output> made{std::vector<mass_concentration_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_mass_concentration_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_mass_concentration_input *>(inputs.data()),
        sizeof(mass_concentration_input), reinterpret_cast<fw_mass_concentration_output *>(made.outputs.data()), sizeof(mass_concentration_output), made.status.data()));
    return made;
}

struct siegert_constants_input {
    /// Least oxygen; allowed 0 to 0.15 (0 % to 15 %); default 0.01 (1 %).
    ratio_dry least_oxygen{0.01};
    /// Most oxygen; allowed 0.001 to 0.18 (0.1 % to 18 %); default 0.09 (9 %).
    ratio_dry most_oxygen{0.09};
    /// Lowest flue temperature; allowed 334.15 to 673.15 (61 °C to 400 °C); default 353.15 (80 °C).
    kelvin lowest_flue_temperature{353.15};
    /// Highest flue temperature; allowed 335.15 to 873.15 (62 °C to 600 °C); default 573.15 (300 °C).
    kelvin highest_flue_temperature{573.15};
    /// Air temperature; allowed 233.15 to 333.15 (-40 °C to 60 °C); default 293.15 (20 °C).
    kelvin air_temperature{293.15};
};

struct siegert_constants_output {
    /// Constant A2 of the oxygen form.
    ratio a2;
    /// Constant B.
    ratio b;
    /// Constant A1 of the carbon dioxide form.
    ratio a1;
    /// Largest difference of the formula from the energy balance over the field.
    ratio_net largest_deviation;
};

/// Siegert constants of a fuel; see fw_siegert_constants for settings, accuracy, cautions and sources.
/// Constants of Siegert's formula by least squares against the exact flue loss over a field of oxygen
/// and flue temperature; for fuels that no rule lists, such as hydrogen blends.
inline siegert_constants_output siegert_constants(const context &settings, const siegert_constants_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_siegert_constants_output, siegert_constants_output, fw_siegert_constants_input>(
        input, [&](const fw_siegert_constants_input *given, fw_siegert_constants_output *made) { return fw_siegert_constants(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<siegert_constants_output> siegert_constants_batch(const context &settings, const std::vector<siegert_constants_input> &inputs)
{
    rows<siegert_constants_output> made{std::vector<siegert_constants_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_siegert_constants_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_siegert_constants_input *>(inputs.data()),
        sizeof(siegert_constants_input), reinterpret_cast<fw_siegert_constants_output *>(made.outputs.data()), sizeof(siegert_constants_output), made.status.data()));
    return made;
}

struct siegert_flue_loss_input {
    /// Oxygen in dry flue gas; allowed 0 to 0.2 (0 % to 20 %); usually 0.02 to 0.12 (2 % to 12 %); NaN
    /// means: not measured.
    ratio_dry oxygen_dry;
    /// Carbon dioxide in dry flue gas, for the carbon dioxide form; allowed 0.005 to 0.25 (0.5 % to 25 %);
    /// usually 0.04 to 0.15 (4 % to 15 %); NaN means: not measured.
    ratio_dry carbon_dioxide_dry;
    /// Largest carbon dioxide of the fuel, for the carbon dioxide form; allowed 0.01 to 0.25 (1 % to 25 %);
    /// NaN means: not given.
    ratio_dry carbon_dioxide_maximum;
    /// Temperature of the flue gas; allowed 253.15 to 873.15 (-20 °C to 600 °C); usually 333.15 to 573.15
    /// (60 °C to 300 °C).
    kelvin flue_temperature;
    /// Temperature of the combustion air; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to
    /// 313.15 (-10 °C to 40 °C).
    kelvin air_temperature;
};

struct siegert_flue_loss_output {
    /// Flue loss from oxygen, share of the net heat input; NaN means: oxygen not measured.
    ratio_net flue_loss_net;
    /// Net heat input less that flue loss; NaN means: oxygen not measured.
    ratio_net efficiency_net;
    /// Flue loss from carbon dioxide, share of the net heat input; NaN means: carbon dioxide or its largest
    /// value not given.
    ratio_net flue_loss_net_from_carbon_dioxide;
};

/// Flue loss by Siegert's formula; see fw_siegert_flue_loss for settings, accuracy, cautions and sources.
/// Flue loss on the net basis by the short formula that German and Belgian rules prescribe, with their
/// constants or the caller's; for the loss itself use flue_analysis.
inline siegert_flue_loss_output siegert_flue_loss(const context &settings, const siegert_flue_loss_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_siegert_flue_loss_output, siegert_flue_loss_output, fw_siegert_flue_loss_input>(
        input, [&](const fw_siegert_flue_loss_input *given, fw_siegert_flue_loss_output *made) { return fw_siegert_flue_loss(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<siegert_flue_loss_output> siegert_flue_loss_batch(const context &settings, const std::vector<siegert_flue_loss_input> &inputs)
{
    rows<siegert_flue_loss_output> made{std::vector<siegert_flue_loss_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_siegert_flue_loss_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_siegert_flue_loss_input *>(inputs.data()),
        sizeof(siegert_flue_loss_input), reinterpret_cast<fw_siegert_flue_loss_output *>(made.outputs.data()), sizeof(siegert_flue_loss_output), made.status.data()));
    return made;
}

struct volume_fraction_input {
    /// Mass of the gas per cubic metre; allowed 0 to 3 (0 mg/m³ to 3000000 mg/m³).
    kilogram_per_cubic_metre mass_concentration;
    /// Temperature to which the cubic metre refers; allowed 223.15 to 333.15 (-50 °C to 60 °C).
    kelvin temperature;
    /// Absolute pressure to which the cubic metre refers; allowed 60000 to 110000 (600 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pascal_absolute pressure{101325.0};
};

struct volume_fraction_output {
    /// Share of volume.
    ratio fraction;
};

/// Volume fraction from mass concentration; see fw_volume_fraction for settings, accuracy, cautions and sources.
/// Parts per million from milligrams per cubic metre, at a stated temperature and pressure.
inline volume_fraction_output volume_fraction(const context &settings, const volume_fraction_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_volume_fraction_output, volume_fraction_output, fw_volume_fraction_input>(
        input, [&](const fw_volume_fraction_input *given, fw_volume_fraction_output *made) { return fw_volume_fraction(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<volume_fraction_output> volume_fraction_batch(const context &settings, const std::vector<volume_fraction_input> &inputs)
{
    rows<volume_fraction_output> made{std::vector<volume_fraction_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_volume_fraction_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_volume_fraction_input *>(inputs.data()),
        sizeof(volume_fraction_input), reinterpret_cast<fw_volume_fraction_output *>(made.outputs.data()), sizeof(volume_fraction_output), made.status.data()));
    return made;
}

struct fuel_properties_input {
    /// Temperature at which the fuel is taken to burn; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    /// 288.15 (15 °C).
    kelvin combustion_temperature{288.15};
    /// Temperature at which the volume of a gas is taken; allowed 273.15 to 293.15 (0 °C to 20 °C); default
    /// 288.15 (15 °C).
    kelvin metering_temperature{288.15};
    /// Absolute pressure at which the volume of a gas is taken; allowed 60000 to 120000 (60 kPa to 120
    /// kPa); usually 90000 to 110000 (90 kPa to 110 kPa); default 101325 (101.325 kPa).
    pascal_absolute metering_pressure{101325.0};
};

struct fuel_properties_output {
    /// Molar mass; NaN means: not a gas.
    kilogram_per_mole molar_mass;
    /// Compression factor at metering conditions; NaN means: not a gas.
    ratio compression_factor;
    /// Density at metering conditions; NaN means: not a gas.
    kilogram_per_cubic_metre density;
    /// Density the gas would have at metering conditions if it were ideal; NaN means: not a gas.
    kilogram_per_cubic_metre ideal_density;
    /// Density over that of dry air, both real and at metering conditions; NaN means: not a gas.
    ratio relative_density;
    /// Molar mass over that of dry air: relative density of ideal gases; NaN means: not a gas.
    ratio ideal_relative_density;
    /// Gross calorific value per volume; NaN means: not a gas.
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Net calorific value per volume; NaN means: not a gas.
    joule_per_cubic_metre_net net_calorific_value;
    /// Gross Wobbe index; NaN means: not a gas.
    joule_per_cubic_metre_gross gross_wobbe_index;
    /// Net Wobbe index; NaN means: not a gas.
    joule_per_cubic_metre_net net_wobbe_index;
    /// Gross calorific value per amount of substance; NaN means: not a gas.
    joule_per_mole_gross gross_molar_calorific_value;
    /// Net calorific value per amount of substance; NaN means: not a gas.
    joule_per_mole_net net_molar_calorific_value;
    /// Gross calorific value per mass.
    joule_per_kilogram_gross gross_mass_calorific_value;
    /// Net calorific value per mass.
    joule_per_kilogram_net net_mass_calorific_value;
    /// Gross calorific value over net; NaN means: the gas gives no heat.
    ratio gross_over_net;
};

/// Properties of a fuel by name or composition; see fw_fuel_properties for settings, accuracy, cautions and sources.
/// What gas_properties gives, for a test gas by its letters, a composition by names, a hydrogen blend
/// or LPG mix, at reference conditions that may vary; for a liquid or solid fuel its calorific values
/// per mass at 25 °C.
inline fuel_properties_output fuel_properties(const context &settings, const fuel_properties_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_fuel_properties_output, fuel_properties_output, fw_fuel_properties_input>(
        input, [&](const fw_fuel_properties_input *given, fw_fuel_properties_output *made) { return fw_fuel_properties(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<fuel_properties_output> fuel_properties_batch(const context &settings, const std::vector<fuel_properties_input> &inputs)
{
    rows<fuel_properties_output> made{std::vector<fuel_properties_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_fuel_properties_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_fuel_properties_input *>(inputs.data()),
        sizeof(fuel_properties_input), reinterpret_cast<fw_fuel_properties_output *>(made.outputs.data()), sizeof(fuel_properties_output), made.status.data()));
    return made;
}

struct gas_properties_input {
    /// Mole fraction of methane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio methane{0.0};
    /// Mole fraction of ethane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio ethane{0.0};
    /// Mole fraction of propane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio propane{0.0};
    /// Mole fraction of n-butane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio n_butane{0.0};
    /// Mole fraction of isobutane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio isobutane{0.0};
    /// Mole fraction of n-pentane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio n_pentane{0.0};
    /// Mole fraction of isopentane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio isopentane{0.0};
    /// Mole fraction of neopentane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio neopentane{0.0};
    /// Mole fraction of n-hexane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio n_hexane{0.0};
    /// Mole fraction of n-heptane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio n_heptane{0.0};
    /// Mole fraction of n-octane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio n_octane{0.0};
    /// Mole fraction of n-nonane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio n_nonane{0.0};
    /// Mole fraction of n-decane; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio n_decane{0.0};
    /// Mole fraction of ethene; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio ethene{0.0};
    /// Mole fraction of propene; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio propene{0.0};
    /// Mole fraction of hydrogen; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio hydrogen{0.0};
    /// Mole fraction of carbon monoxide; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio carbon_monoxide{0.0};
    /// Mole fraction of nitrogen; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio nitrogen{0.0};
    /// Mole fraction of carbon dioxide; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio carbon_dioxide{0.0};
    /// Mole fraction of oxygen; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio oxygen{0.0};
    /// Mole fraction of helium; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio helium{0.0};
    /// Mole fraction of argon; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio argon{0.0};
    /// Mole fraction of water; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio water{0.0};
    /// Mole fraction of hydrogen sulphide; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio hydrogen_sulphide{0.0};
};

struct gas_properties_output {
    /// Molar mass; NaN means: not a gas.
    kilogram_per_mole molar_mass;
    /// Compression factor at metering conditions; NaN means: not a gas.
    ratio compression_factor;
    /// Density at metering conditions; NaN means: not a gas.
    kilogram_per_cubic_metre density;
    /// Density the gas would have at metering conditions if it were ideal; NaN means: not a gas.
    kilogram_per_cubic_metre ideal_density;
    /// Density over that of dry air, both real and at metering conditions; NaN means: not a gas.
    ratio relative_density;
    /// Molar mass over that of dry air: relative density of ideal gases; NaN means: not a gas.
    ratio ideal_relative_density;
    /// Gross calorific value per volume; NaN means: not a gas.
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Net calorific value per volume; NaN means: not a gas.
    joule_per_cubic_metre_net net_calorific_value;
    /// Gross Wobbe index; NaN means: not a gas.
    joule_per_cubic_metre_gross gross_wobbe_index;
    /// Net Wobbe index; NaN means: not a gas.
    joule_per_cubic_metre_net net_wobbe_index;
    /// Gross calorific value per amount of substance; NaN means: not a gas.
    joule_per_mole_gross gross_molar_calorific_value;
    /// Net calorific value per amount of substance; NaN means: not a gas.
    joule_per_mole_net net_molar_calorific_value;
    /// Gross calorific value per mass.
    joule_per_kilogram_gross gross_mass_calorific_value;
    /// Net calorific value per mass.
    joule_per_kilogram_net net_mass_calorific_value;
    /// Gross calorific value over net; NaN means: the gas gives no heat.
    ratio gross_over_net;
};

/// Properties of a gas from its analysis; see fw_gas_properties for settings, accuracy, cautions and sources.
/// Molar mass, compression factor, density, calorific values and Wobbe indices of a gas mixture at any
/// reference conditions, from the mole fraction of each component.
inline gas_properties_output gas_properties(const context &settings, const gas_properties_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_properties_output, gas_properties_output, fw_gas_properties_input>(
        input, [&](const fw_gas_properties_input *given, fw_gas_properties_output *made) { return fw_gas_properties(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_properties_output> gas_properties_batch(const context &settings, const std::vector<gas_properties_input> &inputs)
{
    rows<gas_properties_output> made{std::vector<gas_properties_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_properties_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_gas_properties_input *>(inputs.data()),
        sizeof(gas_properties_input), reinterpret_cast<fw_gas_properties_output *>(made.outputs.data()), sizeof(gas_properties_output), made.status.data()));
    return made;
}

struct atmospheric_pressure_input {
    /// Height above mean sea level; allowed -500 to 5000; usually -5 to 2500.
    metre altitude;
};

struct atmospheric_pressure_output {
    /// Pressure of the standard atmosphere.
    pascal_absolute standard_pressure;
    /// What UK billing law of 1996 deducts from 1013.25 mbar, in proportion to the altitude; NaN means: the
    /// table begins at sea level.
    pascal uk_deduction;
    /// The deduction of the band of 2.5 m in which the altitude lies; NaN means: the table begins at sea
    /// level.
    pascal uk_band_deduction;
    /// 1013.25 mbar less the deduction in proportion; NaN means: the table begins at sea level.
    pascal_absolute uk_pressure;
};

/// Atmospheric pressure from altitude; see fw_atmospheric_pressure for settings, accuracy, cautions and sources.
/// The pressure of the standard atmosphere at an altitude, and what UK billing law deducts for it.
inline atmospheric_pressure_output atmospheric_pressure(const atmospheric_pressure_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_atmospheric_pressure_output, atmospheric_pressure_output, fw_atmospheric_pressure_input>(
        input, [&](const fw_atmospheric_pressure_input *given, fw_atmospheric_pressure_output *made) { return fw_atmospheric_pressure(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<atmospheric_pressure_output> atmospheric_pressure_batch(const std::vector<atmospheric_pressure_input> &inputs)
{
    rows<atmospheric_pressure_output> made{std::vector<atmospheric_pressure_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_atmospheric_pressure_batch(inputs.size(), reinterpret_cast<const fw_atmospheric_pressure_input *>(inputs.data()),
        sizeof(atmospheric_pressure_input), reinterpret_cast<fw_atmospheric_pressure_output *>(made.outputs.data()), sizeof(atmospheric_pressure_output), made.status.data()));
    return made;
}

struct gas_rate_input {
    /// Volume that passed, as the meter shows it; allowed 1e-5 to 1000; usually 0.005 to 5; NaN means: not
    /// read as such.
    cubic_metre_at_the_meter volume;
    /// Volume of one revolution of the test dial; allowed 1e-5 to 10; usually 0.005 to 0.3; NaN means: no
    /// test dial used.
    cubic_metre_at_the_meter dial_volume;
    /// Revolutions of the test dial; allowed 0.01 to 1000; usually 0.5 to 20; NaN means: no test dial used.
    ratio revolutions;
    /// Index at the start, in the unit of the setting `index_unit`; allowed 0 to 1e9; NaN means: index not
    /// read.
    ratio index_start;
    /// Index at the end, in the unit of the setting `index_unit`; allowed 0 to 1e9; NaN means: index not
    /// read.
    ratio index_end;
    /// Duration of the test; allowed 1 to 3600; usually 20 to 1200.
    second time;
    /// Error of the meter: shown volume less true volume, over true volume; allowed -0.2 to 0.2 (-20 % to
    /// 20 %); usually -0.03 to 0.03 (-3 % to 3 %); default 0 (0 %).
    ratio meter_error{0.0};
    /// Gauge pressure of the gas in the meter; allowed 0 to 200000 (0 mbar to 2000 mbar); usually 500 to
    /// 7500 (5 mbar to 75 mbar); NaN means: not measured.
    pascal_gauge gas_pressure;
    /// Temperature of the gas in the meter; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 268.15 to
    /// 298.15 (-5 °C to 25 °C); NaN means: not measured.
    kelvin gas_temperature;
    /// Atmospheric pressure; allowed 60000 to 110000 (600 mbar to 1100 mbar); usually 95000 to 104000 (950
    /// mbar to 1040 mbar); NaN means: not measured.
    pascal_absolute barometric_pressure;
    /// Height above sea level, to stand in for a barometer; allowed -500 to 4000; usually -5 to 2500; NaN
    /// means: not stated.
    metre altitude;
    /// Compression factor of the gas at reference conditions over that in the meter; allowed 0.9 to 1.1;
    /// usually 0.99 to 1.01; NaN means: that of the fuel if it is named, else 1.
    ratio compression_ratio;
    /// Gross calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    /// usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³); NaN means: not stated.
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Net calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    /// usually 1e7 to 1.3e8 (10 MJ/m³ to 130 MJ/m³); NaN means: not stated.
    joule_per_cubic_metre_net net_calorific_value;
    /// Heat input of the appliance plate, where it is on the gross basis; allowed 10 to 1e8 (0.01 kW to
    /// 100000 kW); usually 1000 to 1000000 (1 kW to 1000 kW); NaN means: no plate on this basis.
    watt_gross plate_heat_input_gross;
    /// Heat input of the appliance plate, where it is on the net basis; allowed 10 to 1e8 (0.01 kW to
    /// 100000 kW); usually 1000 to 1000000 (1 kW to 1000 kW); NaN means: no plate on this basis.
    watt_net plate_heat_input_net;
};

struct gas_rate_output {
    /// Volume that passed, with the meter's error taken out.
    cubic_metre_at_the_meter volume;
    /// Volume flow as it passes the meter.
    cubic_metre_per_second_at_the_meter gas_rate;
    /// Atmospheric pressure taken; NaN means: neither measured nor stated by altitude.
    pascal_absolute atmospheric_pressure;
    /// Reference volume over volume in the meter (state number); NaN means: gas conditions not measured.
    ratio conversion_factor;
    /// Volume flow at reference conditions; NaN means: gas conditions not measured.
    cubic_metre_per_second_at_reference_conditions reference_gas_rate;
    /// Heat input on the gross basis, converted to reference conditions; NaN means: gas conditions or gross
    /// calorific value not known.
    watt_gross heat_input_gross;
    /// Heat input on the net basis, converted to reference conditions; NaN means: gas conditions or net
    /// calorific value not known.
    watt_net heat_input_net;
    /// Gross heat input as if the gas in the meter were at reference conditions; NaN means: gross calorific
    /// value not known.
    watt_gross uncorrected_heat_input_gross;
    /// Net heat input as if the gas in the meter were at reference conditions; NaN means: net calorific
    /// value not known.
    watt_net uncorrected_heat_input_net;
    /// What the uncorrected heat input is off the converted one; NaN means: gas conditions not measured.
    ratio uncorrected_error;
    /// Gross calorific value over net; NaN means: gross or net calorific value not known.
    ratio gross_over_net;
    /// Gross heat input over that of the plate; uncorrected where the gas conditions are not known; NaN
    /// means: no plate value or calorific value on the gross basis.
    ratio_gross share_of_plate_gross;
    /// Net heat input over that of the plate; uncorrected where the gas conditions are not known; NaN
    /// means: no plate value or calorific value on the net basis.
    ratio_net share_of_plate_net;
};

/// Gas rate and heat input; see fw_gas_rate for settings, accuracy, cautions and sources.
/// Gas rate from a timed volume, test dial or index, converted to reference conditions, with the heat
/// input gross and net and its share of the appliance plate on the same basis.
inline gas_rate_output gas_rate(const context &settings, const gas_rate_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_rate_output, gas_rate_output, fw_gas_rate_input>(
        input, [&](const fw_gas_rate_input *given, fw_gas_rate_output *made) { return fw_gas_rate(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_rate_output> gas_rate_batch(const context &settings, const std::vector<gas_rate_input> &inputs)
{
    rows<gas_rate_output> made{std::vector<gas_rate_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_rate_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_gas_rate_input *>(inputs.data()),
        sizeof(gas_rate_input), reinterpret_cast<fw_gas_rate_output *>(made.outputs.data()), sizeof(gas_rate_output), made.status.data()));
    return made;
}

struct gas_rate_uncertainty_input {
    /// Volume that passed; allowed 1e-5 to 1000; usually 0.005 to 5.
    cubic_metre_at_the_meter volume;
    /// Smallest step of the index or dial, which is read at the start and at the end; allowed 0 to 10;
    /// usually 0.0001 to 0.01.
    cubic_metre meter_resolution;
    /// Duration of the test; allowed 1 to 3600; usually 20 to 1200.
    second time;
    /// Uncertainty of each press of the stopwatch; allowed 0 to 10; usually 0.05 to 0.5; default 0.15.
    second reaction_time_uncertainty{0.15};
    /// Maximum permissible error of the meter, as a half-width; allowed 0 to 0.2 (0 % to 20 %); usually
    /// 0.005 to 0.04 (0.5 % to 4 %).
    ratio maximum_permissible_error;
    /// Gross calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    /// usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³).
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Uncertainty of the gross calorific value; allowed 0 to 5e7 (0 MJ/m³ to 50 MJ/m³); usually 0 to
    /// 2000000 (0 MJ/m³ to 2 MJ/m³); default 0 (0 MJ/m³).
    joule_per_cubic_metre_gross calorific_value_uncertainty{0.0};
    /// Gauge pressure of the gas in the meter; allowed 0 to 200000 (0 mbar to 2000 mbar); usually 500 to
    /// 7500 (5 mbar to 75 mbar); NaN means: not measured.
    pascal_gauge gas_pressure;
    /// Uncertainty of the gas pressure; allowed 0 to 10000 (0 mbar to 100 mbar); usually 0 to 500 (0 mbar
    /// to 5 mbar); default 0 (0 mbar).
    pascal gas_pressure_uncertainty{0.0};
    /// Atmospheric pressure; allowed 60000 to 110000 (600 mbar to 1100 mbar); usually 95000 to 104000 (950
    /// mbar to 1040 mbar); NaN means: not measured.
    pascal_absolute barometric_pressure;
    /// Uncertainty of the atmospheric pressure; allowed 0 to 20000 (0 mbar to 200 mbar); usually 0 to 3000
    /// (0 mbar to 30 mbar); default 0 (0 mbar).
    pascal barometric_pressure_uncertainty{0.0};
    /// Temperature of the gas in the meter; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 268.15 to
    /// 298.15 (-5 °C to 25 °C); NaN means: not measured.
    kelvin gas_temperature;
    /// Uncertainty of the gas temperature; allowed 0 to 30; usually 0 to 10; default 0.
    kelvin_difference gas_temperature_uncertainty{0.0};
};

struct gas_rate_uncertainty_output {
    /// Heat input on the gross basis, uncorrected where the gas conditions were not measured.
    watt_gross heat_input_gross;
    /// Its standard uncertainty.
    watt standard_uncertainty;
    /// Its expanded uncertainty, k = 2.
    watt expanded_uncertainty;
    /// Standard uncertainty as a share of the heat input.
    ratio relative_uncertainty;
    /// The same without pressure and temperature of the gas: that of an uncorrected rate, which has an
    /// error besides.
    ratio uncorrected_relative_uncertainty;
    /// Share of the meter's resolution in the squared uncertainty; NaN means: no uncertainty at all.
    ratio share_of_resolution;
    /// Share of the stopwatch; NaN means: no uncertainty at all.
    ratio share_of_timing;
    /// Share of the meter's permissible error; NaN means: no uncertainty at all.
    ratio share_of_meter;
    /// Share of the calorific value; NaN means: no uncertainty at all.
    ratio share_of_calorific_value;
    /// Share of gas and atmospheric pressure; NaN means: no uncertainty at all.
    ratio share_of_pressure;
    /// Share of the gas temperature; NaN means: no uncertainty at all.
    ratio share_of_temperature;
};

/// Uncertainty of a gas rate; see fw_gas_rate_uncertainty for settings, accuracy, cautions and sources.
/// The uncertainty budget of a timed gas rate: resolution of the meter, reaction time, permissible
/// error, calorific value, pressure and temperature, to first order and independent of each other.
inline gas_rate_uncertainty_output gas_rate_uncertainty(const context &settings, const gas_rate_uncertainty_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_rate_uncertainty_output, gas_rate_uncertainty_output, fw_gas_rate_uncertainty_input>(
        input, [&](const fw_gas_rate_uncertainty_input *given, fw_gas_rate_uncertainty_output *made) { return fw_gas_rate_uncertainty(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_rate_uncertainty_output> gas_rate_uncertainty_batch(const context &settings, const std::vector<gas_rate_uncertainty_input> &inputs)
{
    rows<gas_rate_uncertainty_output> made{std::vector<gas_rate_uncertainty_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_rate_uncertainty_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_gas_rate_uncertainty_input *>(inputs.data()),
        sizeof(gas_rate_uncertainty_input), reinterpret_cast<fw_gas_rate_uncertainty_output *>(made.outputs.data()), sizeof(gas_rate_uncertainty_output), made.status.data()));
    return made;
}

struct gas_rate_test_time_input {
    /// Gas rate expected, as it passes the meter; allowed 2.777778e-7 to 27.77778 (0.001 m³/h to 100000
    /// m³/h); usually 1.388889e-5 to 0.02777778 (0.05 m³/h to 100 m³/h); NaN means: to be found from the
    /// heat input.
    cubic_metre_per_second_at_the_meter gas_rate;
    /// Heat input expected; allowed 10 to 1e9 (0.01 kW to 1000000 kW); usually 500 to 1000000 (0.5 kW to
    /// 1000 kW); NaN means: not stated.
    watt_gross heat_input_gross;
    /// Gross calorific value at the reference conditions; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³);
    /// usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³); NaN means: not stated.
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Reference volume over volume in the meter; allowed 0.1 to 10; usually 0.7 to 1.2; default 1.
    ratio conversion_factor{1.0};
    /// Volume that is to pass; allowed 1e-5 to 1000; usually 0.005 to 5; NaN means: not stated.
    cubic_metre_at_the_meter volume;
    /// Smallest step of the index or dial, which is read at the start and at the end; allowed 0 to 10;
    /// usually 0.0001 to 0.01; NaN means: not stated.
    cubic_metre meter_resolution;
    /// Standard uncertainty of each press of the stopwatch; allowed 0 to 10; usually 0.05 to 0.5; default
    /// 0.15.
    second reaction_time_uncertainty{0.15};
    /// Standard uncertainty wanted from reading and timing together, as a share of the rate; allowed 0.0001
    /// to 0.5 (0.01 % to 50 %); usually 0.002 to 0.05 (0.2 % to 5 %); NaN means: not stated.
    ratio wanted_uncertainty;
};

struct gas_rate_test_time_output {
    /// Gas rate taken.
    cubic_metre_per_second_at_the_meter gas_rate;
    /// Time in which the volume passes; NaN means: no volume stated.
    second time_for_volume;
    /// Time from which reading and timing are as certain as wanted; NaN means: no resolution or wanted
    /// uncertainty stated.
    second time_for_uncertainty;
    /// Volume that passes in that time; NaN means: no resolution or wanted uncertainty stated.
    cubic_metre_at_the_meter volume_for_uncertainty;
};

/// Duration of a test at the meter; see fw_gas_rate_test_time for settings, accuracy, cautions and sources.
/// The time a volume takes to pass at an expected rate, and the test time from which the meter's
/// resolution and the stopwatch leave a wanted uncertainty.
inline gas_rate_test_time_output gas_rate_test_time(const gas_rate_test_time_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_rate_test_time_output, gas_rate_test_time_output, fw_gas_rate_test_time_input>(
        input, [&](const fw_gas_rate_test_time_input *given, fw_gas_rate_test_time_output *made) { return fw_gas_rate_test_time(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_rate_test_time_output> gas_rate_test_time_batch(const std::vector<gas_rate_test_time_input> &inputs)
{
    rows<gas_rate_test_time_output> made{std::vector<gas_rate_test_time_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_rate_test_time_batch(inputs.size(), reinterpret_cast<const fw_gas_rate_test_time_input *>(inputs.data()),
        sizeof(gas_rate_test_time_input), reinterpret_cast<fw_gas_rate_test_time_output *>(made.outputs.data()), sizeof(gas_rate_test_time_output), made.status.data()));
    return made;
}

struct gas_energy_input {
    /// Volume the meter counted; allowed 0 to 1e7.
    cubic_metre_at_the_meter volume;
    /// Reference volume over metered volume; 1 if the meter already converts; allowed 0.1 to 10; usually
    /// 0.7 to 1.2.
    ratio conversion_factor;
    /// Gross calorific value at the reference conditions of the conversion; allowed 1000000 to 2e8 (1 MJ/m³
    /// to 200 MJ/m³); usually 1e7 to 1.4e8 (10 MJ/m³ to 140 MJ/m³).
    joule_per_cubic_metre_gross gross_calorific_value;
};

struct gas_energy_output {
    /// Volume at reference conditions.
    cubic_metre_at_reference_conditions reference_volume;
    /// Energy on the gross basis.
    joule energy_gross;
};

/// Energy of a metered volume of gas; see fw_gas_energy for settings, accuracy, cautions and sources.
/// Gross energy of the gas that a meter counted, from the volume conversion factor and the calorific
/// value that the bill states.
inline gas_energy_output gas_energy(const gas_energy_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_energy_output, gas_energy_output, fw_gas_energy_input>(
        input, [&](const fw_gas_energy_input *given, fw_gas_energy_output *made) { return fw_gas_energy(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_energy_output> gas_energy_batch(const std::vector<gas_energy_input> &inputs)
{
    rows<gas_energy_output> made{std::vector<gas_energy_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_energy_batch(inputs.size(), reinterpret_cast<const fw_gas_energy_input *>(inputs.data()),
        sizeof(gas_energy_input), reinterpret_cast<fw_gas_energy_output *>(made.outputs.data()), sizeof(gas_energy_output), made.status.data()));
    return made;
}

struct metering_reference_change_input {
    /// Gross calorific value as stated; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.4e8
    /// (10 MJ/m³ to 140 MJ/m³); NaN means: not stated.
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Net calorific value as stated; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.3e8
    /// (10 MJ/m³ to 130 MJ/m³); NaN means: not stated.
    joule_per_cubic_metre_net net_calorific_value;
    /// Metering temperature of the stated value; allowed 253.15 to 323.15 (-20 °C to 50 °C); usually 273.15
    /// to 298.15 (0 °C to 25 °C).
    kelvin stated_temperature;
    /// Metering pressure of the stated value; allowed 60000 to 120000 (600 mbar to 1200 mbar); usually
    /// 98000 to 103000 (980 mbar to 1030 mbar); default 101325 (1013.25 mbar).
    pascal_absolute stated_pressure{101325.0};
    /// Metering temperature wanted; allowed 253.15 to 323.15 (-20 °C to 50 °C); usually 273.15 to 298.15 (0
    /// °C to 25 °C).
    kelvin wanted_temperature;
    /// Metering pressure wanted; allowed 60000 to 120000 (600 mbar to 1200 mbar); usually 98000 to 103000
    /// (980 mbar to 1030 mbar); default 101325 (1013.25 mbar).
    pascal_absolute wanted_pressure{101325.0};
    /// Compression factor at the stated over that at the wanted conditions; allowed 0.9 to 1.1; usually
    /// 0.99 to 1.01; default 1.
    ratio compression_ratio{1.0};
};

struct metering_reference_change_output {
    /// Volume of the same gas at the stated over that at the wanted conditions.
    ratio volume_ratio;
    /// Gross calorific value; NaN means: not stated.
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Net calorific value; NaN means: not stated.
    joule_per_cubic_metre_net net_calorific_value;
};

/// Change of the metering reference of a calorific value; see fw_metering_reference_change for settings, accuracy, cautions and sources.
/// A calorific value per volume carried from one metering temperature and pressure to another. The
/// combustion reference stays; where the composition is known, gas_properties gives both parts exactly.
inline metering_reference_change_output metering_reference_change(const metering_reference_change_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_metering_reference_change_output, metering_reference_change_output, fw_metering_reference_change_input>(
        input, [&](const fw_metering_reference_change_input *given, fw_metering_reference_change_output *made) { return fw_metering_reference_change(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<metering_reference_change_output> metering_reference_change_batch(const std::vector<metering_reference_change_input> &inputs)
{
    rows<metering_reference_change_output> made{std::vector<metering_reference_change_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_metering_reference_change_batch(inputs.size(), reinterpret_cast<const fw_metering_reference_change_input *>(inputs.data()),
        sizeof(metering_reference_change_input), reinterpret_cast<fw_metering_reference_change_output *>(made.outputs.data()), sizeof(metering_reference_change_output), made.status.data()));
    return made;
}

struct wobbe_index_input {
    /// Gross calorific value; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.4e8 (10 MJ/m³
    /// to 140 MJ/m³); NaN means: not stated.
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Net calorific value; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); usually 1e7 to 1.3e8 (10 MJ/m³
    /// to 130 MJ/m³); NaN means: not stated.
    joule_per_cubic_metre_net net_calorific_value;
    /// Density of the gas over that of dry air; allowed 0.05 to 5; usually 0.06 to 2.2.
    ratio relative_density;
};

struct wobbe_index_output {
    /// Gross Wobbe index; NaN means: no gross calorific value stated.
    joule_per_cubic_metre_gross gross_wobbe_index;
    /// Net Wobbe index; NaN means: no net calorific value stated.
    joule_per_cubic_metre_net net_wobbe_index;
    /// Gross calorific value over net; NaN means: gross or net not stated.
    ratio gross_over_net;
};

/// Wobbe index from calorific value and relative density; see fw_wobbe_index for settings, accuracy, cautions and sources.
/// Gross and net Wobbe index of a gas whose calorific value and relative density are stated, as on a
/// supplier's sheet.
inline wobbe_index_output wobbe_index(const wobbe_index_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_wobbe_index_output, wobbe_index_output, fw_wobbe_index_input>(
        input, [&](const fw_wobbe_index_input *given, fw_wobbe_index_output *made) { return fw_wobbe_index(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<wobbe_index_output> wobbe_index_batch(const std::vector<wobbe_index_input> &inputs)
{
    rows<wobbe_index_output> made{std::vector<wobbe_index_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_wobbe_index_batch(inputs.size(), reinterpret_cast<const fw_wobbe_index_input *>(inputs.data()),
        sizeof(wobbe_index_input), reinterpret_cast<fw_wobbe_index_output *>(made.outputs.data()), sizeof(wobbe_index_output), made.status.data()));
    return made;
}

struct liquid_water_input {
    /// Temperature of the water; allowed 273.15 to 623.15 (0 °C to 350 °C); usually 273.15 to 383.15 (0 °C
    /// to 110 °C).
    kelvin temperature;
    /// Absolute pressure of the water; allowed 600 to 1e8 (0.006 bar to 1000 bar); usually 50000 to 1100000
    /// (0.5 bar to 11 bar); default 200000 (2 bar).
    pascal_absolute pressure{200000.0};
};

struct liquid_water_output {
    /// Density.
    kilogram_per_cubic_metre density;
    /// Specific heat capacity at constant pressure.
    joule_per_kilogram_kelvin specific_heat_capacity;
    /// Specific enthalpy, zero near 0 °C.
    joule_per_kilogram specific_enthalpy;
    /// Dynamic viscosity.
    pascal_second dynamic_viscosity;
    /// Thermal conductivity.
    watt_per_metre_kelvin thermal_conductivity;
    /// Volumetric expansion coefficient at constant pressure; negative below about 4 °C.
    per_kelvin expansion_coefficient;
    /// Prandtl number.
    ratio prandtl_number;
    /// Pressure at which water of this temperature boils.
    pascal_absolute saturation_pressure;
};

/// Properties of liquid water; see fw_liquid_water for settings, accuracy, cautions and sources.
/// Density, heat capacity, enthalpy, viscosity, conductivity and expansion of liquid water at a
/// temperature and pressure.
inline liquid_water_output liquid_water(const liquid_water_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_liquid_water_output, liquid_water_output, fw_liquid_water_input>(
        input, [&](const fw_liquid_water_input *given, fw_liquid_water_output *made) { return fw_liquid_water(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<liquid_water_output> liquid_water_batch(const std::vector<liquid_water_input> &inputs)
{
    rows<liquid_water_output> made{std::vector<liquid_water_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_liquid_water_batch(inputs.size(), reinterpret_cast<const fw_liquid_water_input *>(inputs.data()),
        sizeof(liquid_water_input), reinterpret_cast<fw_liquid_water_output *>(made.outputs.data()), sizeof(liquid_water_output), made.status.data()));
    return made;
}

struct dry_air_input {
    /// Temperature of the air; allowed 223.15 to 473.15 (-50 °C to 200 °C); usually 253.15 to 383.15 (-20
    /// °C to 110 °C).
    kelvin temperature;
    /// Absolute pressure of the air; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to
    /// 106000 (800 mbar to 1060 mbar); default 101325 (1013.25 mbar).
    pascal_absolute pressure{101325.0};
};

struct dry_air_output {
    /// Density.
    kilogram_per_cubic_metre density;
    /// Specific heat capacity at constant pressure.
    joule_per_kilogram_kelvin specific_heat_capacity;
    /// Dynamic viscosity.
    pascal_second dynamic_viscosity;
    /// Kinematic viscosity.
    square_metre_per_second kinematic_viscosity;
    /// Thermal conductivity.
    watt_per_metre_kelvin thermal_conductivity;
    /// Prandtl number.
    ratio prandtl_number;
};

/// Properties of dry air; see fw_dry_air for settings, accuracy, cautions and sources.
/// Density, heat capacity, viscosity, conductivity and Prandtl number of dry air.
inline dry_air_output dry_air(const dry_air_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_dry_air_output, dry_air_output, fw_dry_air_input>(
        input, [&](const fw_dry_air_input *given, fw_dry_air_output *made) { return fw_dry_air(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<dry_air_output> dry_air_batch(const std::vector<dry_air_input> &inputs)
{
    rows<dry_air_output> made{std::vector<dry_air_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_dry_air_batch(inputs.size(), reinterpret_cast<const fw_dry_air_input *>(inputs.data()),
        sizeof(dry_air_input), reinterpret_cast<fw_dry_air_output *>(made.outputs.data()), sizeof(dry_air_output), made.status.data()));
    return made;
}

struct humid_air_input {
    /// Temperature of the air; allowed 273.15 to 323.15 (0 °C to 50 °C); usually 278.15 to 313.15 (5 °C to
    /// 40 °C).
    kelvin temperature;
    /// Relative humidity: vapour pressure over that of saturated air; allowed 0 to 1 (0 % to 100 %);
    /// usually 0.1 to 1 (10 % to 100 %).
    ratio relative_humidity;
    /// Absolute pressure of the air; allowed 60000 to 110000 (600 mbar to 1100 mbar); usually 80000 to
    /// 106000 (800 mbar to 1060 mbar); default 101325 (1013.25 mbar).
    pascal_absolute pressure{101325.0};
};

struct humid_air_output {
    /// Density.
    kilogram_per_cubic_metre density;
    /// Mass of vapour per mass of dry air.
    ratio humidity_ratio;
    /// Mole fraction of vapour in the humid air.
    ratio vapour_mole_fraction;
    /// Pressure of the vapour: mole fraction times pressure.
    pascal_absolute vapour_pressure;
    /// Temperature at which dew or, below 0 °C, frost begins to form; NaN means: below -40 °C.
    kelvin dew_point;
};

/// Properties of humid air; see fw_humid_air for settings, accuracy, cautions and sources.
/// Density, humidity ratio, vapour pressure and dew point of the air in a room or outdoors.
inline humid_air_output humid_air(const humid_air_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_humid_air_output, humid_air_output, fw_humid_air_input>(
        input, [&](const fw_humid_air_input *given, fw_humid_air_output *made) { return fw_humid_air(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<humid_air_output> humid_air_batch(const std::vector<humid_air_input> &inputs)
{
    rows<humid_air_output> made{std::vector<humid_air_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_humid_air_batch(inputs.size(), reinterpret_cast<const fw_humid_air_input *>(inputs.data()),
        sizeof(humid_air_input), reinterpret_cast<fw_humid_air_output *>(made.outputs.data()), sizeof(humid_air_output), made.status.data()));
    return made;
}

struct friction_factor_input {
    /// Reynolds number: velocity times bore over kinematic viscosity; allowed 0.001 to 1e9; usually 10 to
    /// 1e7.
    ratio reynolds_number;
    /// Roughness of the wall over the bore; allowed 0 to 0.2; usually 0 to 0.05; default 0.
    ratio relative_roughness{0.0};
};

struct friction_factor_output {
    /// Darcy friction factor; in the transition a straight line between its ends, for want of better.
    ratio friction_factor;
    /// Least factor that may be: below `friction_factor` in the transition only.
    ratio least_friction_factor;
    /// Greatest factor that may be: above `friction_factor` in the transition only.
    ratio greatest_friction_factor;
    /// Factor if the flow were laminar, 64/Re.
    ratio laminar_friction_factor;
    /// Factor if the flow were turbulent, by the named equation; NaN means: none so far below the turbulent
    /// range.
    ratio turbulent_friction_factor;
};

/// Friction factor of a pipe; see fw_friction_factor for settings, accuracy, cautions and sources.
/// Darcy's friction factor from Reynolds number and relative roughness: laminar below 2300, turbulent
/// from 4000, and a band between.
inline friction_factor_output friction_factor(const context &settings, const friction_factor_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_friction_factor_output, friction_factor_output, fw_friction_factor_input>(
        input, [&](const fw_friction_factor_input *given, fw_friction_factor_output *made) { return fw_friction_factor(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<friction_factor_output> friction_factor_batch(const context &settings, const std::vector<friction_factor_input> &inputs)
{
    rows<friction_factor_output> made{std::vector<friction_factor_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_friction_factor_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_friction_factor_input *>(inputs.data()),
        sizeof(friction_factor_input), reinterpret_cast<fw_friction_factor_output *>(made.outputs.data()), sizeof(friction_factor_output), made.status.data()));
    return made;
}

struct pipe_heat_loss_input {
    /// Temperature of the water; of the pipe where its wall is 0 thick and nothing flows; allowed 273.15 to
    /// 623.15 (0 °C to 350 °C); usually 278.15 to 368.15 (5 °C to 95 °C).
    kelvin water_temperature;
    /// Length of the run; allowed 0.001 to 100000; usually 0.1 to 200; default 1.
    metre length{1.0};
    /// Flow of the water, at its own temperature; allowed 2.777778e-10 to 0.2777778 (0.001 L/h to 1000000
    /// L/h); usually 2.777778e-6 to 0.01388889 (10 L/h to 50000 L/h); NaN means: standing, or the film
    /// inside left out.
    cubic_metre_per_second water_flow;
    /// Outside diameter of the bare pipe; allowed 0.002 to 0.7 (2 mm to 700 mm); usually 0.006 to 0.17 (6
    /// mm to 170 mm); NaN means: as the named tube.
    metre outside_diameter;
    /// Thickness of the pipe's wall; 0 for a surface of known temperature; allowed 0 to 0.05 (0 mm to 50
    /// mm); NaN means: as the named tube.
    metre wall_thickness;
    /// Thermal conductivity of the pipe's wall; allowed 0.02 to 500; NaN means: as the named tube.
    watt_per_metre_kelvin wall_conductivity;
    /// Thickness of the insulation; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm); usually 0 to 0.12
    /// (0 mm to 120 mm); default 0 (0 mm).
    metre insulation_thickness{0.0};
    /// Thermal conductivity of the insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    watt_per_metre_kelvin insulation_conductivity;
    /// Emissivity of the outermost surface; allowed 0 to 1; NaN means: as the named finish.
    ratio emissivity;
    /// Temperature of the air around the run; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 258.15 to
    /// 308.15 (-15 °C to 35 °C).
    kelvin air_temperature;
    /// Mean temperature of the surfaces the run radiates to; allowed 213.15 to 363.15 (-60 °C to 90 °C);
    /// usually 258.15 to 313.15 (-15 °C to 40 °C); NaN means: as the air.
    kelvin radiant_temperature;
    /// Speed of the air across the run; for a run in the wind; allowed 0 to 60; NaN means: still air.
    metre_per_second wind_speed;
    /// Atmospheric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 106000 (800
    /// mbar to 1060 mbar); default 101325 (1013.25 mbar).
    pascal_absolute air_pressure{101325.0};
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// usually 100000 to 600000 (1 bar to 6 bar); default 200000 (2 bar).
    pascal_absolute water_pressure{200000.0};
};

struct pipe_heat_loss_output {
    /// Heat lost per metre of run.
    watt_per_metre heat_loss_per_length;
    /// Heat lost by the whole run.
    watt heat_loss;
    /// Temperature of the outermost surface.
    kelvin surface_temperature;
    /// Part of the loss that leaves by convection, per metre.
    watt_per_metre convection_per_length;
    /// Part of the loss that leaves by radiation, per metre.
    watt_per_metre radiation_per_length;
    /// Resistance of the film inside; 0 where it is left out.
    metre_kelvin_per_watt inside_resistance;
    /// Resistance of the pipe's wall.
    metre_kelvin_per_watt wall_resistance;
    /// Resistance of all insulation.
    metre_kelvin_per_watt insulation_resistance;
    /// Resistance from the outermost surface to the air, radiation included; NaN means: nothing flows.
    metre_kelvin_per_watt outside_resistance;
    /// Thermal conductivity of the insulation as used; NaN means: bare.
    watt_per_metre_kelvin insulation_conductivity_used;
    /// Outermost diameter.
    metre surface_diameter;
    /// Coefficient of convection outside.
    watt_per_square_metre_kelvin convection_coefficient;
    /// Coefficient of radiation outside.
    watt_per_square_metre_kelvin radiation_coefficient;
    /// Nusselt number outside: on the diameter; on the length for a vertical run.
    ratio nusselt_number;
    /// Rayleigh number outside, on the same length; Reynolds times Prandtl number in the wind.
    ratio rayleigh_number;
    /// Mass flow of the water; NaN means: no flow given.
    kilogram_per_second mass_flow;
    /// Reynolds number of the water; NaN means: no flow given.
    ratio reynolds_number;
    /// Coefficient of the film inside, on the bore; NaN means: no flow given.
    watt_per_square_metre_kelvin inside_coefficient;
    /// Expected relative accuracy of the coefficient of convection outside.
    ratio convection_scatter;
};

/// Heat loss of a pipe run; see fw_pipe_heat_loss for settings, accuracy, cautions and sources.
/// Heat that a bare or insulated run loses per metre and in all, its surface temperature, and the
/// resistances on the way: film inside, wall, insulation, and convection and radiation outside, with
/// the surface temperature solved. For the insulation that a wanted loss takes, seek
/// `insulation_thickness` for it.
inline pipe_heat_loss_output pipe_heat_loss(const context &settings, const pipe_heat_loss_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_pipe_heat_loss_output, pipe_heat_loss_output, fw_pipe_heat_loss_input>(
        input, [&](const fw_pipe_heat_loss_input *given, fw_pipe_heat_loss_output *made) { return fw_pipe_heat_loss(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<pipe_heat_loss_output> pipe_heat_loss_batch(const context &settings, const std::vector<pipe_heat_loss_input> &inputs)
{
    rows<pipe_heat_loss_output> made{std::vector<pipe_heat_loss_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_pipe_heat_loss_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_pipe_heat_loss_input *>(inputs.data()),
        sizeof(pipe_heat_loss_input), reinterpret_cast<fw_pipe_heat_loss_output *>(made.outputs.data()), sizeof(pipe_heat_loss_output), made.status.data()));
    return made;
}

struct pipe_temperature_drop_input {
    /// Temperature of the water where it enters; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 278.15
    /// to 368.15 (5 °C to 95 °C).
    kelvin inlet_temperature;
    /// Flow of the water where it enters; allowed 2.777778e-9 to 0.2777778 (0.01 L/h to 1000000 L/h);
    /// usually 2.777778e-6 to 0.01388889 (10 L/h to 50000 L/h).
    cubic_metre_per_second water_flow;
    /// Length of the run; allowed 0 to 100000; usually 0.1 to 200.
    metre length;
    /// Outside diameter of the bare pipe; allowed 0.002 to 0.7 (2 mm to 700 mm); usually 0.006 to 0.17 (6
    /// mm to 170 mm); NaN means: as the named tube.
    metre outside_diameter;
    /// Thickness of the pipe's wall; 0 for a surface of known temperature; allowed 0 to 0.05 (0 mm to 50
    /// mm); NaN means: as the named tube.
    metre wall_thickness;
    /// Thermal conductivity of the pipe's wall; allowed 0.02 to 500; NaN means: as the named tube.
    watt_per_metre_kelvin wall_conductivity;
    /// Thickness of the insulation; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm); usually 0 to 0.12
    /// (0 mm to 120 mm); default 0 (0 mm).
    metre insulation_thickness{0.0};
    /// Thermal conductivity of the insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    watt_per_metre_kelvin insulation_conductivity;
    /// Emissivity of the outermost surface; allowed 0 to 1; NaN means: as the named finish.
    ratio emissivity;
    /// Temperature of the air around the run; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 258.15 to
    /// 308.15 (-15 °C to 35 °C).
    kelvin air_temperature;
    /// Mean temperature of the surfaces the run radiates to; allowed 213.15 to 363.15 (-60 °C to 90 °C);
    /// usually 258.15 to 313.15 (-15 °C to 40 °C); NaN means: as the air.
    kelvin radiant_temperature;
    /// Speed of the air across the run; for a run in the wind; allowed 0 to 60; NaN means: still air.
    metre_per_second wind_speed;
    /// Atmospheric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 106000 (800
    /// mbar to 1060 mbar); default 101325 (1013.25 mbar).
    pascal_absolute air_pressure{101325.0};
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// usually 100000 to 600000 (1 bar to 6 bar); default 200000 (2 bar).
    pascal_absolute water_pressure{200000.0};
};

struct pipe_temperature_drop_output {
    /// Temperature of the water where it leaves.
    kelvin outlet_temperature;
    /// By how much the water cooled; negative where the run takes up heat.
    kelvin_difference temperature_drop;
    /// Heat lost by the whole run.
    watt heat_loss;
    /// Mass flow.
    kilogram_per_second mass_flow;
    /// Heat lost per metre where the water enters.
    watt_per_metre heat_loss_at_inlet;
    /// Heat lost per metre where it leaves.
    watt_per_metre heat_loss_at_outlet;
    /// Reynolds number where the water enters.
    ratio reynolds_number_at_inlet;
    /// Reynolds number where it leaves.
    ratio reynolds_number_at_outlet;
    /// Outlet temperature if the loss per kelvin stayed what it is at the inlet: the usual exponential, for
    /// comparison.
    kelvin outlet_temperature_by_exponential;
};

/// Temperature drop along a pipe run; see fw_pipe_temperature_drop for settings, accuracy, cautions and sources.
/// Temperature of the water where it leaves a run at a given flow, and the heat the run loses, with the
/// loss following the water's temperature along the way.
inline pipe_temperature_drop_output pipe_temperature_drop(const context &settings, const pipe_temperature_drop_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_pipe_temperature_drop_output, pipe_temperature_drop_output, fw_pipe_temperature_drop_input>(
        input, [&](const fw_pipe_temperature_drop_input *given, fw_pipe_temperature_drop_output *made) { return fw_pipe_temperature_drop(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<pipe_temperature_drop_output> pipe_temperature_drop_batch(const context &settings, const std::vector<pipe_temperature_drop_input> &inputs)
{
    rows<pipe_temperature_drop_output> made{std::vector<pipe_temperature_drop_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_pipe_temperature_drop_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_pipe_temperature_drop_input *>(inputs.data()),
        sizeof(pipe_temperature_drop_input), reinterpret_cast<fw_pipe_temperature_drop_output *>(made.outputs.data()), sizeof(pipe_temperature_drop_output), made.status.data()));
    return made;
}

struct pipe_cool_down_input {
    /// Temperature of water and pipe at the start; allowed 273.15 to 383.15 (0 °C to 110 °C); usually
    /// 293.15 to 368.15 (20 °C to 95 °C).
    kelvin start_temperature;
    /// Temperature the water is to come to; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 283.15 to
    /// 363.15 (10 °C to 90 °C).
    kelvin target_temperature;
    /// Time after which the temperature is asked; allowed 0 to 6000000 (0 min to 100000 min); NaN means:
    /// not asked.
    second elapsed_time;
    /// Length of the run; allowed 0.001 to 100000; usually 0.1 to 200; default 1.
    metre length{1.0};
    /// Density of the pipe's wall; allowed 500 to 20000; NaN means: as the named tube.
    kilogram_per_cubic_metre wall_density;
    /// Specific heat capacity of the pipe's wall; allowed 100 to 5000; NaN means: as the named tube.
    joule_per_kilogram_kelvin wall_heat_capacity;
    /// Outside diameter of the bare pipe; allowed 0.002 to 0.7 (2 mm to 700 mm); usually 0.006 to 0.17 (6
    /// mm to 170 mm); NaN means: as the named tube.
    metre outside_diameter;
    /// Thickness of the pipe's wall; 0 for a surface of known temperature; allowed 0 to 0.05 (0 mm to 50
    /// mm); NaN means: as the named tube.
    metre wall_thickness;
    /// Thermal conductivity of the pipe's wall; allowed 0.02 to 500; NaN means: as the named tube.
    watt_per_metre_kelvin wall_conductivity;
    /// Thickness of the insulation; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm); usually 0 to 0.12
    /// (0 mm to 120 mm); default 0 (0 mm).
    metre insulation_thickness{0.0};
    /// Thermal conductivity of the insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    watt_per_metre_kelvin insulation_conductivity;
    /// Emissivity of the outermost surface; allowed 0 to 1; NaN means: as the named finish.
    ratio emissivity;
    /// Temperature of the air around the run; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 258.15 to
    /// 308.15 (-15 °C to 35 °C).
    kelvin air_temperature;
    /// Mean temperature of the surfaces the run radiates to; allowed 213.15 to 363.15 (-60 °C to 90 °C);
    /// usually 258.15 to 313.15 (-15 °C to 40 °C); NaN means: as the air.
    kelvin radiant_temperature;
    /// Speed of the air across the run; for a run in the wind; allowed 0 to 60; NaN means: still air.
    metre_per_second wind_speed;
    /// Atmospheric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 106000 (800
    /// mbar to 1060 mbar); default 101325 (1013.25 mbar).
    pascal_absolute air_pressure{101325.0};
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// usually 100000 to 600000 (1 bar to 6 bar); default 200000 (2 bar).
    pascal_absolute water_pressure{200000.0};
};

struct pipe_cool_down_output {
    /// Time until the target temperature; NaN means: never reached.
    second time_to_target;
    /// Temperature after the time asked; NaN means: not asked.
    kelvin temperature_after;
    /// Heat capacity of the water per metre.
    joule_per_metre_kelvin water_capacity;
    /// Heat capacity of the pipe's wall per metre.
    joule_per_metre_kelvin wall_capacity;
    /// Heat lost per metre at the start.
    watt_per_metre heat_loss_at_start;
    /// Time in which the excess over the room would fall to 1/e if the loss per kelvin stayed what it is at
    /// the start; NaN means: nothing to lose.
    second time_constant;
    /// Time until the target by that constant: the usual exponential, for comparison; NaN means: never
    /// reached.
    second time_to_target_by_exponential;
    /// Heat that water and pipe of the whole run hold above the temperature at which they come to rest.
    joule heat_held;
};

/// Cool-down of standing water in a pipe run; see fw_pipe_cool_down for settings, accuracy, cautions and sources.
/// Time in which the standing water of a run cools to a temperature, its temperature after a time, and
/// the heat the run holds. The loss follows the temperature; water and wall are taken as one mass.
inline pipe_cool_down_output pipe_cool_down(const context &settings, const pipe_cool_down_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_pipe_cool_down_output, pipe_cool_down_output, fw_pipe_cool_down_input>(
        input, [&](const fw_pipe_cool_down_input *given, fw_pipe_cool_down_output *made) { return fw_pipe_cool_down(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<pipe_cool_down_output> pipe_cool_down_batch(const context &settings, const std::vector<pipe_cool_down_input> &inputs)
{
    rows<pipe_cool_down_output> made{std::vector<pipe_cool_down_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_pipe_cool_down_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_pipe_cool_down_input *>(inputs.data()),
        sizeof(pipe_cool_down_input), reinterpret_cast<fw_pipe_cool_down_output *>(made.outputs.data()), sizeof(pipe_cool_down_output), made.status.data()));
    return made;
}

struct critical_radius_input {
    /// Outside diameter of the bare pipe; allowed 0.0001 to 0.7 (0.1 mm to 700 mm); usually 0.006 to 0.17
    /// (6 mm to 170 mm).
    metre outside_diameter;
    /// Thickness of the insulation; allowed 0 to 0.5 (0 mm to 500 mm); default 0 (0 mm).
    metre insulation_thickness{0.0};
    /// Thermal conductivity of the insulation; allowed 0.005 to 5; usually 0.015 to 0.1.
    watt_per_metre_kelvin insulation_conductivity;
    /// Coefficient outside, convection and radiation together; allowed 0.1 to 1000; usually 4 to 50;
    /// default 10.
    watt_per_square_metre_kelvin outside_coefficient{10.0};
};

struct critical_radius_output {
    /// Outer radius of the insulation at which the loss is greatest.
    metre critical_radius;
    /// Loss per metre of run and kelvin between pipe and air, with this insulation.
    watt_per_metre_kelvin loss_per_kelvin;
    /// The same of the bare pipe.
    watt_per_metre_kelvin bare_loss_per_kelvin;
    /// This loss over the bare pipe's.
    ratio loss_ratio;
    /// The greatest loss per kelvin that any thickness of this insulation gives.
    watt_per_metre_kelvin greatest_loss_per_kelvin;
};

/// Critical radius of insulation; see fw_critical_radius for settings, accuracy, cautions and sources.
/// The outer radius up to which insulation around a thin pipe raises the loss instead of lowering it,
/// and the loss per kelvin at a thickness, with a fixed coefficient outside.
inline critical_radius_output critical_radius(const critical_radius_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_critical_radius_output, critical_radius_output, fw_critical_radius_input>(
        input, [&](const fw_critical_radius_input *given, fw_critical_radius_output *made) { return fw_critical_radius(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<critical_radius_output> critical_radius_batch(const std::vector<critical_radius_input> &inputs)
{
    rows<critical_radius_output> made{std::vector<critical_radius_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_critical_radius_batch(inputs.size(), reinterpret_cast<const fw_critical_radius_input *>(inputs.data()),
        sizeof(critical_radius_input), reinterpret_cast<fw_critical_radius_output *>(made.outputs.data()), sizeof(critical_radius_output), made.status.data()));
    return made;
}

struct antifreeze_mixture_input {
    /// Share of glycol by mass; allowed 0 to 0.6 (0 % to 60 %); usually 0.1 to 0.55 (10 % to 55 %).
    ratio glycol_mass_fraction;
    /// Temperature; allowed 213.15 to 373.15 (-60 °C to 100 °C); usually 253.15 to 363.15 (-20 °C to 90
    /// °C).
    kelvin temperature;
};

struct antifreeze_mixture_output {
    /// Density.
    kilogram_per_cubic_metre density;
    /// Specific heat capacity.
    joule_per_kilogram_kelvin specific_heat_capacity;
    /// Dynamic viscosity.
    pascal_second dynamic_viscosity;
    /// Thermal conductivity.
    watt_per_metre_kelvin thermal_conductivity;
    /// Volumetric expansion coefficient.
    per_kelvin expansion_coefficient;
    /// Prandtl number.
    ratio prandtl_number;
    /// Temperature at which ice begins to form.
    kelvin freezing_temperature;
    /// Share of glycol by volume, as poured together at 20 °C.
    ratio glycol_volume_fraction;
};

/// Properties of a glycol mixture; see fw_antifreeze_mixture for settings, accuracy, cautions and sources.
/// Density, heat capacity, viscosity, conductivity, expansion and freezing point of water with
/// propylene or ethylene glycol.
inline antifreeze_mixture_output antifreeze_mixture(const context &settings, const antifreeze_mixture_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_antifreeze_mixture_output, antifreeze_mixture_output, fw_antifreeze_mixture_input>(
        input, [&](const fw_antifreeze_mixture_input *given, fw_antifreeze_mixture_output *made) { return fw_antifreeze_mixture(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<antifreeze_mixture_output> antifreeze_mixture_batch(const context &settings, const std::vector<antifreeze_mixture_input> &inputs)
{
    rows<antifreeze_mixture_output> made{std::vector<antifreeze_mixture_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_antifreeze_mixture_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_antifreeze_mixture_input *>(inputs.data()),
        sizeof(antifreeze_mixture_input), reinterpret_cast<fw_antifreeze_mixture_output *>(made.outputs.data()), sizeof(antifreeze_mixture_output), made.status.data()));
    return made;
}

struct boiling_point_input {
    /// Pressure of the water over that of the air; allowed -90000 to 1e7 (-0.9 bar to 100 bar); usually 0
    /// to 1000000 (0 bar to 10 bar); default 0 (0 bar).
    pascal_gauge water_pressure{0.0};
    /// Pressure of the air; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 70000 to 105000 (700
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Temperature of the water, where the margin to boiling is wanted; allowed 273.15 to 623.15 (0 °C to
    /// 350 °C); NaN means: not asked.
    kelvin water_temperature;
};

struct boiling_point_output {
    /// Absolute pressure.
    pascal_absolute absolute_pressure;
    /// Boiling point.
    kelvin boiling_point;
    /// Margin from the water's temperature up to boiling; negative where it boils; NaN means: no water
    /// temperature given.
    kelvin_difference margin;
};

/// Boiling point of water under pressure; see fw_boiling_point for settings, accuracy, cautions and sources.
/// The temperature at which water boils at a gauge pressure and barometer, and how far from it the
/// water is.
inline boiling_point_output boiling_point(const boiling_point_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_boiling_point_output, boiling_point_output, fw_boiling_point_input>(
        input, [&](const fw_boiling_point_input *given, fw_boiling_point_output *made) { return fw_boiling_point(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<boiling_point_output> boiling_point_batch(const std::vector<boiling_point_input> &inputs)
{
    rows<boiling_point_output> made{std::vector<boiling_point_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_boiling_point_batch(inputs.size(), reinterpret_cast<const fw_boiling_point_input *>(inputs.data()),
        sizeof(boiling_point_input), reinterpret_cast<fw_boiling_point_output *>(made.outputs.data()), sizeof(boiling_point_output), made.status.data()));
    return made;
}

struct cool_down_input {
    /// Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    kilogram metal_mass;
    /// Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    /// allowed 100 to 2000; usually 380 to 950; default 500.
    joule_per_kilogram_kelvin metal_specific_heat_capacity{500.0};
    /// Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    cubic_metre water_content;
    /// Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    /// default 980.
    kilogram_per_cubic_metre water_density{980.0};
    /// Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    /// 2000 to 4500; usually 3000 to 4250; default 4185.
    joule_per_kilogram_kelvin water_specific_heat_capacity{4185.0};
    /// Conductance of the film between metal and water, where the two are to have temperatures of their
    /// own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    watt_per_kelvin film_conductance;
    /// Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    /// 60.
    watt_per_kelvin casing_loss;
    /// Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    watt standing_heat{0.0};
    /// Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    kilogram_per_second pump_flow;
    /// Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    /// allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    pascal pump_shut_off_pressure;
    /// Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    /// resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    /// given.
    pascal pressure_drop;
    /// Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    metre flow_length;
    /// Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    metre return_length;
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    /// the named tube and its water.
    joule_per_metre_kelvin pipe_heat_capacity;
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    /// means: of the named tube, by convection and radiation.
    watt_per_metre_kelvin_of_length pipe_loss;
    /// Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    /// usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    metre insulation_thickness{0.0};
    /// Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    watt_per_metre_kelvin insulation_conductivity;
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    watt emitter_output{0.0};
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    ratio emitter_exponent{1.3};
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    joule_per_kelvin emitter_heat_capacity;
    /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    /// the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    metre emitter_height;
    /// Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    /// 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    /// (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    joule_per_kelvin room_heat_capacity;
    /// Loss of such a room to the outside; allowed 0 to 100000; default 0.
    watt_per_kelvin room_loss{0.0};
    /// Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    /// °C).
    kelvin outdoor_temperature{278.15};
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    kelvin block_temperature;
    /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    /// the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    /// means: as the water of the block.
    kelvin metal_temperature;
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    kelvin circuit_temperature;
    /// Temperature to be reached at the point watched; allowed 243.15 to 423.15 (-30 °C to 150 °C); usually
    /// 293.15 to 368.15 (20 °C to 95 °C).
    kelvin target_temperature;
};

struct cool_down_output {
    /// Time until the target is reached; NaN means: never, or not found.
    second time;
    /// Temperature of the water coming back to the block at that moment; NaN means: no flow, never, or not
    /// found.
    kelvin return_temperature;
    /// Heat that block, pipes and emitters have released by then; NaN means: never, or not found.
    joule heat_released;
    /// Heat given off by the casing; NaN means: never, or not found.
    joule casing_heat;
    /// Heat given off by the pipes of all circuits; NaN means: never, or not found.
    joule pipe_heat;
    /// Heat given off by the emitters of all circuits; NaN means: never, or not found.
    joule emitter_heat;
    /// Heat that block, pipes and emitters still hold over the room; NaN means: never, or not found.
    joule heat_left;
    /// Temperature at the point watched after an endless time; NaN means: none: heat is put in and none is
    /// lost, or not found.
    kelvin steady_temperature;
    /// Share by which heat put in, stored and given off fail to balance; NaN means: never, or not found.
    ratio imbalance;
    /// Time until the target is reached with the circuits in their second state; NaN means: no circuit
    /// changes over, never, or not found.
    second time_after;
    /// Heat given off by the emitters by then; NaN means: no circuit changes over, never, or not found.
    joule emitter_heat_after;
    /// Temperature after an endless time in that state; NaN means: no circuit changes over, none, or not
    /// found.
    kelvin steady_temperature_after;
};

/// Cool-down of a heat generator and its circuits; see fw_cool_down for settings, accuracy, cautions and sources.
/// How long until the hot block has fallen to a temperature with the pump running or stopped, where its
/// heat goes, and what opening or closing another circuit does to that.
inline cool_down_output cool_down(const context &settings, const cool_down_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_cool_down_output, cool_down_output, fw_cool_down_input>(
        input, [&](const fw_cool_down_input *given, fw_cool_down_output *made) { return fw_cool_down(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<cool_down_output> cool_down_batch(const context &settings, const std::vector<cool_down_input> &inputs)
{
    rows<cool_down_output> made{std::vector<cool_down_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_cool_down_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_cool_down_input *>(inputs.data()),
        sizeof(cool_down_input), reinterpret_cast<fw_cool_down_output *>(made.outputs.data()), sizeof(cool_down_output), made.status.data()));
    return made;
}

struct pump_overrun_input {
    /// Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    kilogram metal_mass;
    /// Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    /// allowed 100 to 2000; usually 380 to 950; default 500.
    joule_per_kilogram_kelvin metal_specific_heat_capacity{500.0};
    /// Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    cubic_metre water_content;
    /// Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    /// default 980.
    kilogram_per_cubic_metre water_density{980.0};
    /// Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    /// 2000 to 4500; usually 3000 to 4250; default 4185.
    joule_per_kilogram_kelvin water_specific_heat_capacity{4185.0};
    /// Conductance of the film between metal and water, where the two are to have temperatures of their
    /// own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    watt_per_kelvin film_conductance;
    /// Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    /// 60.
    watt_per_kelvin casing_loss;
    /// Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    watt standing_heat{0.0};
    /// Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    kilogram_per_second pump_flow;
    /// Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    /// allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    pascal pump_shut_off_pressure;
    /// Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    /// resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    /// given.
    pascal pressure_drop;
    /// Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    metre flow_length;
    /// Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    metre return_length;
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    /// the named tube and its water.
    joule_per_metre_kelvin pipe_heat_capacity;
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    /// means: of the named tube, by convection and radiation.
    watt_per_metre_kelvin_of_length pipe_loss;
    /// Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    /// usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    metre insulation_thickness{0.0};
    /// Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    watt_per_metre_kelvin insulation_conductivity;
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    watt emitter_output{0.0};
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    ratio emitter_exponent{1.3};
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    joule_per_kelvin emitter_heat_capacity;
    /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    /// the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    metre emitter_height;
    /// Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    /// 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    /// (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    joule_per_kelvin room_heat_capacity;
    /// Loss of such a room to the outside; allowed 0 to 100000; default 0.
    watt_per_kelvin room_loss{0.0};
    /// Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    /// °C).
    kelvin outdoor_temperature{278.15};
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    kelvin block_temperature;
    /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    /// the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    /// means: as the water of the block.
    kelvin metal_temperature;
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    kelvin circuit_temperature;
    /// Temperature to which the overrun thermostat must fall for the pump to stop; allowed 273.15 to 393.15
    /// (0 °C to 120 °C); usually 303.15 to 363.15 (30 °C to 90 °C).
    kelvin overrun_temperature;
    /// Differential of the overrun thermostat: so far it must rise again for the pump to start anew;
    /// allowed 0.1 to 60; usually 2 to 15; default 6.
    kelvin_difference overrun_differential{6.0};
    /// Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    /// 0.
    second sensor_time_constant{0.0};
    /// Time after which the pump was seen to stop; allowed 0 to 600000 (0 min to 10000 min); NaN means: not
    /// observed.
    second observed_stop_time;
    /// Standard uncertainty of that observation; allowed 0 to 3600; default 10.
    second observation_uncertainty{10.0};
    /// Relative standard uncertainty of the time computed, by what is uncertain in losses and heat
    /// capacities; propagate it, or take 15 % (common practice, no source); allowed 0 to 1 (0 % to 100 %);
    /// default 0.15 (15 %).
    ratio model_uncertainty{0.15};
};

struct pump_overrun_output {
    /// Time until the pump stops for the first time; NaN means: never, or not found.
    second stop_time;
    /// Temperature of the water in the block at that moment; NaN means: never, or not found.
    kelvin block_temperature_at_stop;
    /// Temperature of the returning water just before; NaN means: never, not found, or no flow.
    kelvin return_temperature_at_stop;
    /// Heat the overrun has carried out of block, pipes and emitters; NaN means: never, or not found.
    joule heat_rejected;
    /// Heat that block, pipes and emitters still hold over the room; NaN means: never, or not found.
    joule heat_left;
    /// Highest temperature of the block's water after the pump has stopped for the first time, with the
    /// pump then left off; NaN means: never, or not found.
    kelvin peak_after_stop;
    /// How often the residual heat starts the pump again.
    ratio restart_count;
    /// Time until the pump has stopped for good; NaN means: never, or not found.
    second final_stop_time;
    /// Temperature of the thermostat's place after an endless time with the pump running; NaN means: none:
    /// heat is put in and none is lost, or not found.
    kelvin steady_temperature;
    /// Share by which heat put in, stored and given off fail to balance at the stop; NaN means: never, or
    /// not found.
    ratio imbalance;
    /// Time until the pump stops for the first time with the circuits in their second state; NaN means: no
    /// circuit changes over, never, or not found.
    second stop_time_after;
    /// Temperature of the thermostat's place after an endless time with the pump running, in that state;
    /// NaN means: no circuit changes over, none, or not found.
    kelvin steady_temperature_after;
    /// Observed less computed time, over the standard uncertainty of that difference: within -2 to 2 they
    /// agree; NaN means: not observed, never, or not found.
    ratio deviation;
};

/// Pump overrun; see fw_pump_overrun for settings, accuracy, cautions and sources.
/// When the overrun thermostat stops the pump after the burner has stopped, or that it never does and
/// at what temperature the plant comes to rest; whether residual heat starts it again; what another
/// state of the circuits does to that.
inline pump_overrun_output pump_overrun(const context &settings, const pump_overrun_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_pump_overrun_output, pump_overrun_output, fw_pump_overrun_input>(
        input, [&](const fw_pump_overrun_input *given, fw_pump_overrun_output *made) { return fw_pump_overrun(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<pump_overrun_output> pump_overrun_batch(const context &settings, const std::vector<pump_overrun_input> &inputs)
{
    rows<pump_overrun_output> made{std::vector<pump_overrun_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_pump_overrun_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_pump_overrun_input *>(inputs.data()),
        sizeof(pump_overrun_input), reinterpret_cast<fw_pump_overrun_output *>(made.outputs.data()), sizeof(pump_overrun_output), made.status.data()));
    return made;
}

struct overshoot_input {
    /// Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    kilogram metal_mass;
    /// Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    /// allowed 100 to 2000; usually 380 to 950; default 500.
    joule_per_kilogram_kelvin metal_specific_heat_capacity{500.0};
    /// Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    cubic_metre water_content;
    /// Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    /// default 980.
    kilogram_per_cubic_metre water_density{980.0};
    /// Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    /// 2000 to 4500; usually 3000 to 4250; default 4185.
    joule_per_kilogram_kelvin water_specific_heat_capacity{4185.0};
    /// Conductance of the film between metal and water, where the two are to have temperatures of their
    /// own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    watt_per_kelvin film_conductance;
    /// Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    /// 60.
    watt_per_kelvin casing_loss;
    /// Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    watt standing_heat{0.0};
    /// Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    kilogram_per_second pump_flow;
    /// Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    /// allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    pascal pump_shut_off_pressure;
    /// Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    /// resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    /// given.
    pascal pressure_drop;
    /// Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    metre flow_length;
    /// Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    metre return_length;
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    /// the named tube and its water.
    joule_per_metre_kelvin pipe_heat_capacity;
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    /// means: of the named tube, by convection and radiation.
    watt_per_metre_kelvin_of_length pipe_loss;
    /// Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    /// usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    metre insulation_thickness{0.0};
    /// Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    watt_per_metre_kelvin insulation_conductivity;
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    watt emitter_output{0.0};
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    ratio emitter_exponent{1.3};
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    joule_per_kelvin emitter_heat_capacity;
    /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    /// the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    metre emitter_height;
    /// Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    /// 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    /// (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    joule_per_kelvin room_heat_capacity;
    /// Loss of such a room to the outside; allowed 0 to 100000; default 0.
    watt_per_kelvin room_loss{0.0};
    /// Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    /// °C).
    kelvin outdoor_temperature{278.15};
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    kelvin block_temperature;
    /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    /// the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    /// means: as the water of the block.
    kelvin metal_temperature;
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    kelvin circuit_temperature;
    /// Output of the burner to the block; the most it gives, where it has stages or modulates; allowed 10
    /// to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000 (1 kW to 500 kW).
    watt burner_output;
    /// Output of the low stage, or the least of a modulating burner; allowed 10 to 1e7 (0.01 kW to 10000
    /// kW); NaN means: one output only.
    watt low_output;
    /// How far below the cut-out the high stage gives way to the low one, or a modulating burner begins to
    /// turn down; allowed 0.1 to 60; default 5.
    kelvin_difference turn_down_band{5.0};
    /// Temperature at which the control thermostat stops the burner, on rising temperature; allowed 273.15
    /// to 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    kelvin cut_out_temperature;
    /// Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    /// 0.
    second sensor_time_constant{0.0};
    /// Operating value of the limit thermostat, whose sensor sits in the same pocket: it locks the burner
    /// out until reset by hand; allowed 303.15 to 433.15 (30 °C to 160 °C); usually 353.15 to 388.15 (80 °C
    /// to 115 °C); NaN means: no limit thermostat.
    kelvin limit_temperature;
};

struct overshoot_output {
    /// Time until the thermostat stops the burner; NaN means: the burner never stops, or not found.
    second firing_time;
    /// Temperature of the block's water as the burner stops; NaN means: the burner never stops, or not
    /// found.
    kelvin temperature_at_cut_out;
    /// Heat the metal then holds over the water; NaN means: the burner never stops, or not found.
    joule residual_heat;
    /// Highest temperature of the block's water if the pump stops with the burner; NaN means: the burner
    /// never stops, or not found.
    kelvin peak_with_pump_stopped;
    /// Time of that peak after the burner has stopped; NaN means: the burner never stops, or not found.
    second peak_time_with_pump_stopped;
    /// Highest temperature of the block's water if the pump runs on; NaN means: the burner never stops, or
    /// not found.
    kelvin peak_with_pump_running;
    /// Overshoot over the cut-out with the pump stopped; NaN means: the burner never stops, or not found.
    kelvin_difference overshoot_with_pump_stopped;
    /// Overshoot over the cut-out with the pump running on; NaN means: the burner never stops, or not
    /// found.
    kelvin_difference overshoot_with_pump_running;
    /// Limit less the peak with the pump stopped; negative where the limit would lock out; NaN means: no
    /// limit given, or no peak found.
    kelvin_difference margin_with_pump_stopped;
    /// Limit less the peak with the pump running on; NaN means: no limit given, or no peak found.
    kelvin_difference margin_with_pump_running;
    /// Temperature the block's water would reach if the burner burned on; NaN means: none: no loss, or not
    /// found.
    kelvin steady_temperature;
};

/// Overshoot after the burner has stopped; see fw_overshoot for settings, accuracy, cautions and sources.
/// The highest temperature of the block's water after the control thermostat has stopped the burner,
/// with the pump stopped and with the pump running on, and the margin to the limit thermostat: why a
/// pump runs on.
inline overshoot_output overshoot(const context &settings, const overshoot_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_overshoot_output, overshoot_output, fw_overshoot_input>(
        input, [&](const fw_overshoot_input *given, fw_overshoot_output *made) { return fw_overshoot(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<overshoot_output> overshoot_batch(const context &settings, const std::vector<overshoot_input> &inputs)
{
    rows<overshoot_output> made{std::vector<overshoot_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_overshoot_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_overshoot_input *>(inputs.data()),
        sizeof(overshoot_input), reinterpret_cast<fw_overshoot_output *>(made.outputs.data()), sizeof(overshoot_output), made.status.data()));
    return made;
}

struct warm_up_input {
    /// Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    kilogram metal_mass;
    /// Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    /// allowed 100 to 2000; usually 380 to 950; default 500.
    joule_per_kilogram_kelvin metal_specific_heat_capacity{500.0};
    /// Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    cubic_metre water_content;
    /// Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    /// default 980.
    kilogram_per_cubic_metre water_density{980.0};
    /// Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    /// 2000 to 4500; usually 3000 to 4250; default 4185.
    joule_per_kilogram_kelvin water_specific_heat_capacity{4185.0};
    /// Conductance of the film between metal and water, where the two are to have temperatures of their
    /// own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    watt_per_kelvin film_conductance;
    /// Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    /// 60.
    watt_per_kelvin casing_loss;
    /// Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    watt standing_heat{0.0};
    /// Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    kilogram_per_second pump_flow;
    /// Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    /// allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    pascal pump_shut_off_pressure;
    /// Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    /// resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    /// given.
    pascal pressure_drop;
    /// Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    metre flow_length;
    /// Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    metre return_length;
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    /// the named tube and its water.
    joule_per_metre_kelvin pipe_heat_capacity;
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    /// means: of the named tube, by convection and radiation.
    watt_per_metre_kelvin_of_length pipe_loss;
    /// Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    /// usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    metre insulation_thickness{0.0};
    /// Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    watt_per_metre_kelvin insulation_conductivity;
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    watt emitter_output{0.0};
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    ratio emitter_exponent{1.3};
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    joule_per_kelvin emitter_heat_capacity;
    /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    /// the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    metre emitter_height;
    /// Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    /// 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    /// (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    joule_per_kelvin room_heat_capacity;
    /// Loss of such a room to the outside; allowed 0 to 100000; default 0.
    watt_per_kelvin room_loss{0.0};
    /// Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    /// °C).
    kelvin outdoor_temperature{278.15};
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    kelvin block_temperature;
    /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    /// the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    /// means: as the water of the block.
    kelvin metal_temperature;
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    kelvin circuit_temperature;
    /// Output of the burner to the block; the most it gives, where it has stages or modulates; allowed 10
    /// to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000 (1 kW to 500 kW).
    watt burner_output;
    /// Output of the low stage, or the least of a modulating burner; allowed 10 to 1e7 (0.01 kW to 10000
    /// kW); NaN means: one output only.
    watt low_output;
    /// How far below the cut-out the high stage gives way to the low one, or a modulating burner begins to
    /// turn down; allowed 0.1 to 60; default 5.
    kelvin_difference turn_down_band{5.0};
    /// Temperature at which the control thermostat stops the burner, on rising temperature; allowed 273.15
    /// to 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    kelvin cut_out_temperature;
    /// Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    /// 0.
    second sensor_time_constant{0.0};
    /// Operating value of the limit thermostat, whose sensor sits in the same pocket: it locks the burner
    /// out until reset by hand; allowed 303.15 to 433.15 (30 °C to 160 °C); usually 353.15 to 388.15 (80 °C
    /// to 115 °C); NaN means: no limit thermostat.
    kelvin limit_temperature;
    /// Differential of the control thermostat; allowed 0.1 to 60; usually 2 to 15; default 8.
    kelvin_difference control_differential{8.0};
    /// Least time the burner stays off; allowed 0 to 7200 (0 min to 120 min); default 0 (0 min).
    second anti_cycling_delay{0.0};
    /// Temperature to be reached at the point watched; allowed 243.15 to 423.15 (-30 °C to 150 °C); usually
    /// 293.15 to 363.15 (20 °C to 90 °C).
    kelvin target_temperature;
};

struct warm_up_output {
    /// Time until the target is reached; NaN means: never, or not found.
    second time;
    /// Heat the burner has given to the block by then; NaN means: never, or not found.
    joule heat_put_in;
    /// Heat that block, pipes and emitters have taken up; NaN means: never, or not found.
    joule heat_stored;
    /// Heat given off by casing and pipes; NaN means: never, or not found.
    joule heat_lost;
    /// Heat given off by the emitters; NaN means: never, or not found.
    joule emitter_heat;
    /// Temperature of the block's water at that moment; NaN means: never, or not found.
    kelvin block_temperature_then;
    /// How often the burner has stopped on the way.
    ratio stop_count;
    /// Highest temperature the point watched ever gets to, at rest or in a cycle that repeats; NaN means:
    /// the target is reached, or not found.
    kelvin highest_temperature;
    /// Time at which the limit thermostat locks the burner out; NaN means: it does not trip on the way.
    second limit_trip_time;
    /// Share by which heat put in, stored and given off fail to balance; NaN means: never, or not found.
    ratio imbalance;
};

/// Warm-up of a heat generator and its circuits; see fw_warm_up for settings, accuracy, cautions and sources.
/// How long a plant takes from its start to a temperature at the block, an emitter or the return, with
/// a fixed, two-stage or modulating burner, and where the heat has gone by then.
inline warm_up_output warm_up(const context &settings, const warm_up_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_warm_up_output, warm_up_output, fw_warm_up_input>(
        input, [&](const fw_warm_up_input *given, fw_warm_up_output *made) { return fw_warm_up(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<warm_up_output> warm_up_batch(const context &settings, const std::vector<warm_up_input> &inputs)
{
    rows<warm_up_output> made{std::vector<warm_up_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_warm_up_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_warm_up_input *>(inputs.data()),
        sizeof(warm_up_input), reinterpret_cast<fw_warm_up_output *>(made.outputs.data()), sizeof(warm_up_output), made.status.data()));
    return made;
}

struct circuit_cycling_input {
    /// Mass of the metal of the block (iron, copper, aluminium); allowed 0 to 5000; usually 5 to 500.
    kilogram metal_mass;
    /// Specific heat capacity of that metal; printed values for cast iron run from 420 to 545 J/(kg·K);
    /// allowed 100 to 2000; usually 380 to 950; default 500.
    joule_per_kilogram_kelvin metal_specific_heat_capacity{500.0};
    /// Water content of the block; allowed 0 to 2 (0 L to 2000 L); usually 0.0005 to 0.2 (0.5 L to 200 L).
    cubic_metre water_content;
    /// Density of the water at its mean temperature; 980 kg/m³ holds near 66 °C; allowed 850 to 1150;
    /// default 980.
    kilogram_per_cubic_metre water_density{980.0};
    /// Specific heat capacity of the water; 4185 J/(kg·K) holds near 65 °C, antifreeze has less; allowed
    /// 2000 to 4500; usually 3000 to 4250; default 4185.
    joule_per_kilogram_kelvin water_specific_heat_capacity{4185.0};
    /// Conductance of the film between metal and water, where the two are to have temperatures of their
    /// own; allowed 1 to 1000000; NaN means: metal and water share one temperature.
    watt_per_kelvin film_conductance;
    /// Loss of casing and flueway to the room while the burner is off; allowed 0 to 2000; usually 0.5 to
    /// 60.
    watt_per_kelvin casing_loss;
    /// Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; usually 0 to 300; default 0.
    watt standing_heat{0.0};
    /// Mass flow of the pump; allowed 0 to 20; usually 0.01 to 2.
    kilogram_per_second pump_flow;
    /// Pressure the pump gives against a closed valve; with it the flow follows from pump and circuits;
    /// allowed 100 to 1000000 (0.1 kPa to 1000 kPa); NaN means: the flow stays as given.
    pascal pump_shut_off_pressure;
    /// Pressure drop of the main circuit at the flow given; with it circuits share the flow by their
    /// resistance; allowed 1 to 1000000 (0.001 kPa to 1000 kPa); NaN means: circuits share the flow as
    /// given.
    pascal pressure_drop;
    /// Length of the flow pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    metre flow_length;
    /// Length of the return pipe of the main circuit; allowed 0 to 1000; usually 0.2 to 100.
    metre return_length;
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000; NaN means: of
    /// the named tube and its water.
    joule_per_metre_kelvin pipe_heat_capacity;
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5; NaN
    /// means: of the named tube, by convection and radiation.
    watt_per_metre_kelvin_of_length pipe_loss;
    /// Thickness of the insulation of a named tube; 0 for a bare pipe; allowed 0 to 0.5 (0 mm to 500 mm);
    /// usually 0 to 0.12 (0 mm to 120 mm); default 0 (0 mm).
    metre insulation_thickness{0.0};
    /// Thermal conductivity of that insulation; allowed 0.005 to 5; usually 0.015 to 0.1; NaN means: as the
    /// named insulation at its mean temperature, or bare.
    watt_per_metre_kelvin insulation_conductivity;
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    watt emitter_output{0.0};
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    ratio emitter_exponent{1.3};
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    joule_per_kelvin emitter_heat_capacity;
    /// Height of the main circuit's emitter over the block, where water is to circulate by gravity while
    /// the pump stands; allowed 0.1 to 50; usually 0.5 to 10; NaN means: no gravity circulation.
    metre emitter_height;
    /// Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    /// 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Heat capacity of the room, where it is to warm up by what the plant gives off; allowed 1000 to 1e10
    /// (1 kJ/K to 1e7 kJ/K); NaN means: the room keeps its temperature.
    joule_per_kelvin room_heat_capacity;
    /// Loss of such a room to the outside; allowed 0 to 100000; default 0.
    watt_per_kelvin room_loss{0.0};
    /// Outside temperature for such a room; allowed 213.15 to 323.15 (-60 °C to 50 °C); default 278.15 (5
    /// °C).
    kelvin outdoor_temperature{278.15};
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    kelvin block_temperature;
    /// Temperature of the metal at the start, where it is a mass of its own; a burner leaves it hotter than
    /// the water by its output over the film conductance; allowed 273.15 to 673.15 (0 °C to 400 °C); NaN
    /// means: as the water of the block.
    kelvin metal_temperature;
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    kelvin circuit_temperature;
    /// Output of the burner to the block; the most it gives, where it has stages or modulates; allowed 10
    /// to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000 (1 kW to 500 kW).
    watt burner_output;
    /// Output of the low stage, or the least of a modulating burner; allowed 10 to 1e7 (0.01 kW to 10000
    /// kW); NaN means: one output only.
    watt low_output;
    /// How far below the cut-out the high stage gives way to the low one, or a modulating burner begins to
    /// turn down; allowed 0.1 to 60; default 5.
    kelvin_difference turn_down_band{5.0};
    /// Temperature at which the control thermostat stops the burner, on rising temperature; allowed 273.15
    /// to 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    kelvin cut_out_temperature;
    /// Time constant of the thermostat's sensor in its pocket; allowed 0 to 3600; usually 0 to 120; default
    /// 0.
    second sensor_time_constant{0.0};
    /// Operating value of the limit thermostat, whose sensor sits in the same pocket: it locks the burner
    /// out until reset by hand; allowed 303.15 to 433.15 (30 °C to 160 °C); usually 353.15 to 388.15 (80 °C
    /// to 115 °C); NaN means: no limit thermostat.
    kelvin limit_temperature;
    /// Temperature at which it lights the burner again, on falling temperature; allowed 253.15 to 423.15
    /// (-20 °C to 150 °C); usually 293.15 to 363.15 (20 °C to 90 °C).
    kelvin cut_in_temperature;
    /// Least time the burner stays off; allowed 0 to 7200 (0 min to 120 min); default 0 (0 min).
    second anti_cycling_delay{0.0};
};

struct circuit_cycling_output {
    /// Time the burner burns in each cycle; NaN means: no repeating cycle, or not found.
    second on_time;
    /// Time it stands in each cycle; NaN means: no repeating cycle, or not found.
    second off_time;
    /// Time of a whole cycle; NaN means: no repeating cycle, or not found.
    second period;
    /// Starts per hour; NaN means: no repeating cycle, or not found.
    per_second start_rate;
    /// Share of the time the burner burns; NaN means: no repeating cycle, or not found.
    ratio duty;
    /// Mean heat from the burner over a cycle; what it gives at rest, where it burns without stopping; NaN
    /// means: no repeating cycle, or not found.
    watt mean_output;
    /// Temperature of the block's water at which the plant comes to rest, where the burner burns or stands
    /// without end; NaN means: burner or stages cycle, or not found.
    kelvin steady_temperature;
    /// Cycles until they repeat.
    ratio settling_count;
    /// Time followed: until the cycles repeat, or the plant comes to rest, or 500 cycles or a week are
    /// over; NaN means: the sum did not end.
    second followed_time;
    /// Time of a whole cycle of the stages, where these change over while the burner burns without
    /// stopping; NaN means: the stages do not cycle by themselves.
    second stage_period;
    /// Time at which the limit thermostat locks the burner out; NaN means: it does not trip.
    second limit_trip_time;
};

/// Cycling of a burner on its circuits; see fw_circuit_cycling for settings, accuracy, cautions and sources.
/// On and off times, starts per hour and duty of a burner on a block with pump, pipes and emitters,
/// once the cycles repeat; fixed, two-stage or modulating.
inline circuit_cycling_output circuit_cycling(const context &settings, const circuit_cycling_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_circuit_cycling_output, circuit_cycling_output, fw_circuit_cycling_input>(
        input, [&](const fw_circuit_cycling_input *given, fw_circuit_cycling_output *made) { return fw_circuit_cycling(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<circuit_cycling_output> circuit_cycling_batch(const context &settings, const std::vector<circuit_cycling_input> &inputs)
{
    rows<circuit_cycling_output> made{std::vector<circuit_cycling_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_circuit_cycling_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_circuit_cycling_input *>(inputs.data()),
        sizeof(circuit_cycling_input), reinterpret_cast<fw_circuit_cycling_output *>(made.outputs.data()), sizeof(circuit_cycling_output), made.status.data()));
    return made;
}

struct cool_down_fit_input {
    /// Heat capacity of all that cooled together; with it the loss is found; allowed 1 to 1e9 (0.001 kJ/K
    /// to 1000000 kJ/K); NaN means: not known.
    joule_per_kelvin heat_capacity;
    /// Standard uncertainty of that heat capacity; allowed 0 to 1e9 (0 kJ/K to 1000000 kJ/K); default 0 (0
    /// kJ/K).
    joule_per_kelvin heat_capacity_uncertainty{0.0};
    /// Loss conductance expected at 50 K over the room: compared where the heat capacity is known, else the
    /// heat capacity is found from it; allowed 0.0001 to 100000; NaN means: not known.
    watt_per_kelvin expected_loss_conductance;
    /// Standard uncertainty of that loss conductance; allowed 0 to 100000; default 0.
    watt_per_kelvin loss_conductance_uncertainty{0.0};
    /// Exponent with which the loss falls off: 1 for an insulated block or steady flow, 1.25 for a bare
    /// one, about 1.3 for radiators; allowed 1 to 2; default 1.
    ratio loss_exponent{1.0};
    /// Room temperature; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to 308.15 (0 °C to 35
    /// °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Standard uncertainty of the room temperature; allowed 0 to 20; default 0.5.
    kelvin_difference room_temperature_uncertainty{0.5};
    /// Standard uncertainty of one temperature reading (resolution and scatter; a fixed error of the probe
    /// is not in it); allowed 0.001 to 20; usually 0.05 to 2; default 0.3.
    kelvin_difference reading_uncertainty{0.3};
};

struct cool_down_fit_output {
    /// Time constant at 50 K over the room: heat capacity over loss conductance.
    second time_constant;
    /// Its standard uncertainty.
    second time_constant_uncertainty;
    /// Loss conductance at 50 K over the room; NaN means: no heat capacity given.
    watt_per_kelvin loss_conductance;
    /// Its standard uncertainty; NaN means: no heat capacity given.
    watt_per_kelvin fitted_loss_uncertainty;
    /// Heat capacity found from the loss conductance expected; NaN means: the heat capacity is given.
    joule_per_kelvin fitted_heat_capacity;
    /// Its standard uncertainty; NaN means: the heat capacity is given.
    joule_per_kelvin fitted_heat_capacity_uncertainty;
    /// Fitted less expected loss conductance, over the standard uncertainty of that difference; NaN means:
    /// nothing to compare.
    ratio deviation;
    /// Temperature at the time zero of the log, by the fit.
    kelvin start_temperature;
    /// Root mean square of reading less fit, with two fitted values allowed for.
    kelvin_difference residual;
    /// That over the uncertainty stated for a reading: near 1 where the model fits.
    ratio residual_ratio;
};

/// Loss or heat capacity from a logged cool-down; see fw_cool_down_fit for settings, accuracy, cautions and sources.
/// From times and temperatures logged on site: the time constant and from it the loss conductance (the
/// heat capacity being known) or the heat capacity (the loss being known), with uncertainty, and
/// whether the observation agrees with the loss expected.
inline cool_down_fit_output cool_down_fit(const context &settings, const cool_down_fit_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_cool_down_fit_output, cool_down_fit_output, fw_cool_down_fit_input>(
        input, [&](const fw_cool_down_fit_input *given, fw_cool_down_fit_output *made) { return fw_cool_down_fit(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<cool_down_fit_output> cool_down_fit_batch(const context &settings, const std::vector<cool_down_fit_input> &inputs)
{
    rows<cool_down_fit_output> made{std::vector<cool_down_fit_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_cool_down_fit_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_cool_down_fit_input *>(inputs.data()),
        sizeof(cool_down_fit_input), reinterpret_cast<fw_cool_down_fit_output *>(made.outputs.data()), sizeof(cool_down_fit_output), made.status.data()));
    return made;
}

struct touch_wait_input {
    /// Temperature of the surface now; allowed 243.15 to 673.15 (-30 °C to 400 °C); usually 293.15 to
    /// 383.15 (20 °C to 110 °C).
    kelvin surface_temperature;
    /// Room temperature; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to 308.15 (0 °C to 35
    /// °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Time constant of the cool-down, from `block_cool_down`, `cool_down_fit` or `pipe_cool_down`; allowed
    /// 0.6 to 6000000 (0.01 min to 100000 min); usually 60 to 60000 (1 min to 1000 min).
    second time_constant;
    /// Contact temperature not to be exceeded, by the policy named; allowed 293.15 to 373.15 (20 °C to 100
    /// °C); usually 313.15 to 343.15 (40 °C to 70 °C).
    kelvin contact_temperature;
};

struct touch_wait_output {
    /// Time until the surface has fallen to the contact temperature; zero where it has; NaN means: never.
    second wait;
    /// Surface less contact temperature now; negative where it may be touched.
    kelvin_difference excess;
};

/// Wait until a surface may be touched; see fw_touch_wait for settings, accuracy, cautions and sources.
/// How long until a cooling surface has fallen to a contact temperature that the caller's policy states
/// for its material and contact time.
inline touch_wait_output touch_wait(const context &settings, const touch_wait_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_touch_wait_output, touch_wait_output, fw_touch_wait_input>(
        input, [&](const fw_touch_wait_input *given, fw_touch_wait_output *made) { return fw_touch_wait(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<touch_wait_output> touch_wait_batch(const context &settings, const std::vector<touch_wait_input> &inputs)
{
    rows<touch_wait_output> made{std::vector<touch_wait_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_touch_wait_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_touch_wait_input *>(inputs.data()),
        sizeof(touch_wait_input), reinterpret_cast<fw_touch_wait_output *>(made.outputs.data()), sizeof(touch_wait_output), made.status.data()));
    return made;
}

struct installation_volume_input {
    /// Volume of gas in the meter; from its maker or the local procedure; allowed 0 to 10 (0 L to 10000 L);
    /// default 0 (0 L).
    cubic_metre meter_volume{0.0};
    /// Share of the pipe volume to add for fittings; from the local procedure; allowed 0 to 1 (0 % to 100
    /// %); default 0 (0 %).
    ratio fittings_allowance{0.0};
    /// Volume of vessels and appliances under test; allowed 0 to 10 (0 L to 10000 L); default 0 (0 L).
    cubic_metre other_volume{0.0};
};

struct installation_volume_output {
    /// Volume of the pipes.
    cubic_metre pipe_volume;
    /// Allowance for fittings.
    cubic_metre fittings_volume;
    /// Volume in all.
    cubic_metre installation_volume;
};

/// Volume of a gas installation; see fw_installation_volume for settings, accuracy, cautions and sources.
/// Gas held by pipes, fittings and meter: what a tightness test and a purge are reckoned with.
inline installation_volume_output installation_volume(const context &settings, const installation_volume_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_installation_volume_output, installation_volume_output, fw_installation_volume_input>(
        input, [&](const fw_installation_volume_input *given, fw_installation_volume_output *made) { return fw_installation_volume(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<installation_volume_output> installation_volume_batch(const context &settings, const std::vector<installation_volume_input> &inputs)
{
    rows<installation_volume_output> made{std::vector<installation_volume_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_installation_volume_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_installation_volume_input *>(inputs.data()),
        sizeof(installation_volume_input), reinterpret_cast<fw_installation_volume_output *>(made.outputs.data()), sizeof(installation_volume_output), made.status.data()));
    return made;
}

struct tightness_test_input {
    /// Volume of gas under test: pipes, fittings and meter; allowed 1e-6 to 100 (0.001 L to 100000 L);
    /// usually 0.0005 to 1 (0.5 L to 1000 L).
    cubic_metre installation_volume;
    /// Gauge pressure at the start of the test; allowed 10 to 1000000 (0.1 mbar to 10000 mbar); usually 500
    /// to 20000 (5 mbar to 200 mbar).
    pascal_gauge test_pressure;
    /// Fall of the gauge reading over the test; negative where it rose; allowed -100000 to 1000000 (-1000
    /// mbar to 10000 mbar); usually -0.1 to 2000 (-0.001 mbar to 20 mbar).
    pascal pressure_drop;
    /// Duration of the test, after the gas has settled; allowed 1 to 864000; usually 60 to 7200.
    second test_duration;
    /// Barometric pressure at the start; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    /// 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Temperature of the gas at the start; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    kelvin gas_temperature{288.15};
    /// Rise of the gas temperature over the test; allowed -20 to 20; usually -2 to 2; default 0.
    kelvin_difference temperature_rise{0.0};
    /// Rise of the barometer over the test; allowed -5000 to 5000 (-50 mbar to 50 mbar); usually -200 to
    /// 200 (-2 mbar to 2 mbar); default 0 (0 mbar).
    pascal barometer_rise{0.0};
    /// Smallest movement of the gauge that can be read; allowed 0.0001 to 10000 (1e-6 mbar to 100 mbar);
    /// usually 0.1 to 100 (0.001 mbar to 1 mbar); NaN means: not stated.
    pascal readable_movement;
    /// Bore of the limbs of a liquid gauge, whose moving column takes up volume; allowed 0.0005 to 0.05
    /// (0.5 mm to 50 mm); NaN means: no liquid gauge.
    metre gauge_bore;
    /// Gross calorific value of the gas at the reference conditions below; allowed 1000000 to 2e8 (1 MJ/m³
    /// to 200 MJ/m³); NaN means: not stated.
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Reference temperature to which the leak is stated; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    /// 288.15 (15 °C).
    kelvin reference_temperature{288.15};
    /// Reference pressure to which the leak is stated; allowed 90000 to 110000 (900 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pascal_absolute reference_pressure{101325.0};
};

struct tightness_test_output {
    /// Amount of gas lost, with all corrections; negative where gas came in.
    mole amount_lost;
    /// Leak at reference conditions, with all corrections, as the mean over the test.
    cubic_metre_per_second_at_reference_conditions leak_rate;
    /// Leak at reference conditions from the bare reading, temperature and barometer taken as steady.
    cubic_metre_per_second_at_reference_conditions leak_rate_uncorrected;
    /// Leak as it flows at the pressure and temperature in the installation.
    cubic_metre_per_second_at_the_meter leak_rate_in_pipe;
    /// Leak at the start of the test, if it goes with the gauge pressure; NaN means: the gauge fell to
    /// zero.
    cubic_metre_per_second_at_reference_conditions leak_rate_at_start;
    /// Rate at which the gauge pressure dies away, if the leak goes with it; NaN means: the gauge fell to
    /// zero.
    per_second decay_rate;
    /// Heat that leaks away; NaN means: no calorific value stated.
    watt heat_lost_gross;
    /// Change of the gauge reading that the temperature alone would make.
    pascal temperature_effect;
    /// Change of the gauge reading for each kelvin.
    pascal_per_kelvin temperature_sensitivity;
    /// Change of the gauge reading that the barometer alone would make.
    pascal barometer_effect;
    /// Volume by which the liquid of the gauge moved in; NaN means: no liquid gauge.
    cubic_metre gauge_volume;
    /// Drop that the moving liquid has hidden; NaN means: no liquid gauge.
    pascal gauge_effect;
    /// True loss over loss as read, for the moving liquid alone; NaN means: no liquid gauge, or no drop.
    ratio gauge_factor;
    /// Least leak that this gauge would have shown in this test; NaN means: no readable movement stated.
    cubic_metre_per_second_at_reference_conditions smallest_detectable_leak;
};

/// Tightness test; see fw_tightness_test for settings, accuracy, cautions and sources.
/// Leak rate at reference conditions from a pressure drop, with the effects of temperature, barometer
/// and gauge liquid apart, and the smallest leak the test could show.
inline tightness_test_output tightness_test(const tightness_test_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_tightness_test_output, tightness_test_output, fw_tightness_test_input>(
        input, [&](const fw_tightness_test_input *given, fw_tightness_test_output *made) { return fw_tightness_test(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<tightness_test_output> tightness_test_batch(const std::vector<tightness_test_input> &inputs)
{
    rows<tightness_test_output> made{std::vector<tightness_test_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_tightness_test_batch(inputs.size(), reinterpret_cast<const fw_tightness_test_input *>(inputs.data()),
        sizeof(tightness_test_input), reinterpret_cast<fw_tightness_test_output *>(made.outputs.data()), sizeof(tightness_test_output), made.status.data()));
    return made;
}

struct tightness_plan_input {
    /// Volume of gas under test: pipes, fittings and meter; allowed 1e-6 to 100 (0.001 L to 100000 L);
    /// usually 0.0005 to 1 (0.5 L to 1000 L).
    cubic_metre installation_volume;
    /// Smallest movement of the gauge that can be read; allowed 0.0001 to 10000 (1e-6 mbar to 100 mbar);
    /// usually 0.1 to 100 (0.001 mbar to 1 mbar).
    pascal readable_movement;
    /// Duration intended; allowed 1 to 864000; usually 60 to 7200; NaN means: not stated.
    second test_duration;
    /// Leak that must not go unseen, at reference conditions; set by the local procedure; allowed
    /// 2.777778e-13 to 0.2777778 (1e-6 L/h to 1000000 L/h); NaN means: not stated.
    cubic_metre_per_second_at_reference_conditions leak_limit;
    /// Change of gas temperature to be feared during the test; allowed 0 to 20; usually 0 to 2; default 0.
    kelvin_difference temperature_change{0.0};
    /// Gauge pressure of the test; allowed 10 to 1000000 (0.1 mbar to 10000 mbar); usually 500 to 20000 (5
    /// mbar to 200 mbar); default 2000 (20 mbar).
    pascal_gauge test_pressure{2000.0};
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Temperature of the gas; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to 308.15 (-10 °C
    /// to 35 °C); default 288.15 (15 °C).
    kelvin gas_temperature{288.15};
    /// Reference temperature to which leaks are stated; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    /// 288.15 (15 °C).
    kelvin reference_temperature{288.15};
    /// Reference pressure to which leaks are stated; allowed 90000 to 110000 (900 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pascal_absolute reference_pressure{101325.0};
};

struct tightness_plan_output {
    /// Least leak that moves the gauge by the readable movement within the duration; NaN means: no duration
    /// stated.
    cubic_metre_per_second_at_reference_conditions smallest_detectable_leak;
    /// Time in which a leak at the limit moves the gauge by the readable movement; NaN means: no leak limit
    /// stated.
    second time_needed;
    /// Drop that a leak at the limit makes within the duration; NaN means: no leak limit or no duration
    /// stated.
    pascal drop_at_limit;
    /// Change of the gauge reading for each kelvin.
    pascal_per_kelvin temperature_sensitivity;
    /// Change of the gauge reading by the temperature change feared.
    pascal temperature_effect;
    /// Leak that the temperature change feared would feign or hide within the duration; NaN means: no
    /// duration stated.
    cubic_metre_per_second_at_reference_conditions leak_masked_by_temperature;
};

/// Planning a tightness test; see fw_tightness_plan for settings, accuracy, cautions and sources.
/// The smallest leak a gauge shows in a given time, the time a given leak needs to show, and what
/// temperature does to the reading.
inline tightness_plan_output tightness_plan(const tightness_plan_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_tightness_plan_output, tightness_plan_output, fw_tightness_plan_input>(
        input, [&](const fw_tightness_plan_input *given, fw_tightness_plan_output *made) { return fw_tightness_plan(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<tightness_plan_output> tightness_plan_batch(const std::vector<tightness_plan_input> &inputs)
{
    rows<tightness_plan_output> made{std::vector<tightness_plan_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_tightness_plan_batch(inputs.size(), reinterpret_cast<const fw_tightness_plan_input *>(inputs.data()),
        sizeof(tightness_plan_input), reinterpret_cast<fw_tightness_plan_output *>(made.outputs.data()), sizeof(tightness_plan_output), made.status.data()));
    return made;
}

struct let_by_input {
    /// Volume of gas behind the valve: pipes, fittings and meter; allowed 1e-6 to 100 (0.001 L to 100000
    /// L); usually 0.0005 to 1 (0.5 L to 1000 L).
    cubic_metre installation_volume;
    /// Gauge pressure at the start, lower than before the valve; allowed 0 to 1000000 (0 mbar to 10000
    /// mbar); usually 200 to 1500 (2 mbar to 15 mbar).
    pascal_gauge start_pressure;
    /// Rise of the gauge reading; negative where it fell; allowed -100000 to 100000 (-1000 mbar to 1000
    /// mbar); usually -0.1 to 1000 (-0.001 mbar to 10 mbar).
    pascal pressure_rise;
    /// Duration of watching; allowed 1 to 864000; usually 30 to 3600.
    second test_duration;
    /// Smallest movement of the gauge that can be read; allowed 0.0001 to 10000 (1e-6 mbar to 100 mbar);
    /// usually 0.1 to 100 (0.001 mbar to 1 mbar); NaN means: not stated.
    pascal readable_movement;
    /// Rise of the gas temperature meanwhile; allowed -20 to 20; usually -2 to 2; default 0.
    kelvin_difference temperature_rise{0.0};
    /// Rise of the barometer meanwhile; allowed -5000 to 5000 (-50 mbar to 50 mbar); usually -200 to 200
    /// (-2 mbar to 2 mbar); default 0 (0 mbar).
    pascal barometer_rise{0.0};
    /// Barometric pressure at the start; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    /// 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Temperature of the gas at the start; allowed 233.15 to 333.15 (-40 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    kelvin gas_temperature{288.15};
    /// Reference temperature to which the flow is stated; allowed 273.15 to 298.15 (0 °C to 25 °C); default
    /// 288.15 (15 °C).
    kelvin reference_temperature{288.15};
    /// Reference pressure to which the flow is stated; allowed 90000 to 110000 (900 mbar to 1100 mbar);
    /// default 101325 (1013.25 mbar).
    pascal_absolute reference_pressure{101325.0};
};

struct let_by_output {
    /// Gas that the valve lets by, less any that leaked away meanwhile; at reference conditions.
    cubic_metre_per_second_at_reference_conditions let_by_rate;
    /// Rise that is left after temperature and barometer are taken out.
    pascal corrected_rise;
    /// Least flow that this gauge would have shown; NaN means: no readable movement stated.
    cubic_metre_per_second_at_reference_conditions smallest_detectable_flow;
};

/// Let-by of a shut valve; see fw_let_by for settings, accuracy, cautions and sources.
/// Flow past a shut valve from the pressure rise behind it, temperature and barometer taken out.
inline let_by_output let_by(const let_by_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_let_by_output, let_by_output, fw_let_by_input>(
        input, [&](const fw_let_by_input *given, fw_let_by_output *made) { return fw_let_by(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<let_by_output> let_by_batch(const std::vector<let_by_input> &inputs)
{
    rows<let_by_output> made{std::vector<let_by_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_let_by_batch(inputs.size(), reinterpret_cast<const fw_let_by_input *>(inputs.data()),
        sizeof(let_by_input), reinterpret_cast<fw_let_by_output *>(made.outputs.data()), sizeof(let_by_output), made.status.data()));
    return made;
}

struct leak_scaling_input {
    /// Leak as measured, with the test gas; allowed 0 to 0.2777778 (0 L/h to 1000000 L/h); default
    /// 2.777778e-7 (1 L/h).
    cubic_metre_per_second_at_reference_conditions leak_rate{2.7777777777777776e-7};
    /// Gauge pressure of the test; allowed 1 to 1000000 (0.01 mbar to 10000 mbar); usually 500 to 100000 (5
    /// mbar to 1000 mbar).
    pascal_gauge test_pressure;
    /// Gauge pressure in operation; allowed 1 to 1000000 (0.01 mbar to 10000 mbar); usually 500 to 100000
    /// (5 mbar to 1000 mbar).
    pascal_gauge operating_pressure;
    /// Density over that of air of the gas tested with; left out, that of the test gas named; allowed 0.05
    /// to 5; NaN means: that of the test gas.
    ratio test_relative_density;
    /// Density over that of air of the gas in operation; left out, that of the gas named; allowed 0.05 to
    /// 5; NaN means: that of the operating gas.
    ratio operating_relative_density;
    /// Viscosity of the gas tested with; left out, that of the test gas named; allowed 1e-6 to 0.0001; NaN
    /// means: that of the test gas.
    pascal_second test_viscosity;
    /// Viscosity of the gas in operation; left out, that of the gas named; allowed 1e-6 to 0.0001; NaN
    /// means: that of the operating gas.
    pascal_second operating_viscosity;
    /// Temperature of gas and air; allowed 233.15 to 333.15 (-40 °C to 60 °C); default 288.15 (15 °C).
    kelvin temperature{288.15};
};

struct leak_scaling_output {
    /// Leak if it seeps through a long fine path, where viscosity rules.
    cubic_metre_per_second_at_reference_conditions leak_rate_laminar;
    /// Leak if it blows through a short hole, where density rules.
    cubic_metre_per_second_at_reference_conditions leak_rate_orifice;
    /// Laminar leak of the operating gas over that of the test gas at one pressure.
    ratio gas_ratio_laminar;
    /// Orifice leak of the operating gas over that of the test gas at one pressure.
    ratio gas_ratio_orifice;
    /// Viscosity of the operating gas at the temperature.
    pascal_second operating_viscosity;
    /// Viscosity of air at the temperature.
    pascal_second air_viscosity;
    /// Density of air at the temperature and one standard atmosphere.
    kilogram_per_cubic_metre air_density;
};

/// A leak at another pressure or with another gas; see fw_leak_scaling for settings, accuracy, cautions and sources.
/// What a leak measured at test pressure, perhaps with air, would be at operating pressure with the
/// gas: as a fine seep and as a hole, between which the truth lies.
inline leak_scaling_output leak_scaling(const context &settings, const leak_scaling_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_leak_scaling_output, leak_scaling_output, fw_leak_scaling_input>(
        input, [&](const fw_leak_scaling_input *given, fw_leak_scaling_output *made) { return fw_leak_scaling(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<leak_scaling_output> leak_scaling_batch(const context &settings, const std::vector<leak_scaling_input> &inputs)
{
    rows<leak_scaling_output> made{std::vector<leak_scaling_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_leak_scaling_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_leak_scaling_input *>(inputs.data()),
        sizeof(leak_scaling_input), reinterpret_cast<fw_leak_scaling_output *>(made.outputs.data()), sizeof(leak_scaling_output), made.status.data()));
    return made;
}

struct leak_class_input {
    /// Leak at the conditions that the classes are stated for; allowed 0 to 0.2777778 (0 L/h to 1000000
    /// L/h); usually 0 to 2.777778e-5 (0 L/h to 100 L/h).
    cubic_metre_per_second_at_reference_conditions leak_rate;
    /// Least leak that the test could show; allowed 0 to 0.2777778 (0 L/h to 1000000 L/h); NaN means: not
    /// stated.
    cubic_metre_per_second_at_reference_conditions smallest_detectable_leak;
};

struct leak_class_output {
    /// Number of the class in the caller's list, from 1.
    ratio class_number;
    /// Leak at which the class begins; it belongs to the class.
    cubic_metre_per_second_at_reference_conditions class_from;
    /// Leak at which the next class begins; NaN means: the last class has no end.
    cubic_metre_per_second_at_reference_conditions class_below;
};

/// Class of a leak; see fw_leak_class for settings, accuracy, cautions and sources.
/// The class of a leak rate in a list of classes that the caller takes from the local rule.
inline leak_class_output leak_class(const context &settings, const leak_class_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_leak_class_output, leak_class_output, fw_leak_class_input>(
        input, [&](const fw_leak_class_input *given, fw_leak_class_output *made) { return fw_leak_class(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<leak_class_output> leak_class_batch(const context &settings, const std::vector<leak_class_input> &inputs)
{
    rows<leak_class_output> made{std::vector<leak_class_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_leak_class_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_leak_class_input *>(inputs.data()),
        sizeof(leak_class_input), reinterpret_cast<fw_leak_class_output *>(made.outputs.data()), sizeof(leak_class_output), made.status.data()));
    return made;
}

struct purge_input {
    /// Volume to purge: pipes, fittings and meter; allowed 1e-6 to 1000 (0.001 L to 1000000 L); usually
    /// 0.0005 to 10 (0.5 L to 10000 L).
    cubic_metre installation_volume;
    /// Volume to pass for each volume purged; set by the local procedure; allowed 1 to 20; usually 1 to 5.
    ratio purge_factor;
    /// Volume of one revolution of the test dial, or of one step of the index; allowed 1e-6 to 10 (0.001 L
    /// to 10000 L); NaN means: not stated.
    cubic_metre_at_the_meter dial_volume;
    /// Flow at which the gas is passed; allowed 2.777778e-8 to 27.77778 (0.0001 m³/h to 100000 m³/h); NaN
    /// means: not stated.
    cubic_metre_per_second_at_the_meter purge_flow;
};

struct purge_output {
    /// Volume to pass.
    cubic_metre_at_the_meter purge_volume;
    /// Revolutions of the test dial, or steps of the index; NaN means: no dial volume stated.
    ratio dial_revolutions;
    /// Time to pass it; NaN means: no flow stated.
    second purge_time;
};

/// Purge volume and time; see fw_purge for settings, accuracy, cautions and sources.
/// Volume of gas to pass through an installation, in meter readings and in time. The factor comes from
/// the local procedure.
inline purge_output purge(const purge_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_purge_output, purge_output, fw_purge_input>(
        input, [&](const fw_purge_input *given, fw_purge_output *made) { return fw_purge(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<purge_output> purge_batch(const std::vector<purge_input> &inputs)
{
    rows<purge_output> made{std::vector<purge_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_purge_batch(inputs.size(), reinterpret_cast<const fw_purge_input *>(inputs.data()),
        sizeof(purge_input), reinterpret_cast<fw_purge_output *>(made.outputs.data()), sizeof(purge_output), made.status.data()));
    return made;
}

struct purge_velocity_input {
    /// Bore of the widest pipe purged; allowed 0.002 to 2 (2 mm to 2000 mm); usually 0.008 to 0.3 (8 mm to
    /// 300 mm).
    metre bore;
    /// Velocity to be kept; set by the local procedure; allowed 0.01 to 30; usually 0.3 to 3.
    metre_per_second velocity;
    /// Length of the pipe; allowed 0.01 to 10000.
    metre length;
};

struct purge_velocity_output {
    /// Flow that gives the velocity.
    cubic_metre_per_second_at_the_meter purge_flow;
    /// Time in which the front passes the length.
    second travel_time;
};

/// Purge flow from a velocity; see fw_purge_velocity for settings, accuracy, cautions and sources.
/// Flow that keeps a given velocity in a pipe, and the time the front takes to pass its length.
inline purge_velocity_output purge_velocity(const purge_velocity_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_purge_velocity_output, purge_velocity_output, fw_purge_velocity_input>(
        input, [&](const fw_purge_velocity_input *given, fw_purge_velocity_output *made) { return fw_purge_velocity(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<purge_velocity_output> purge_velocity_batch(const std::vector<purge_velocity_input> &inputs)
{
    rows<purge_velocity_output> made{std::vector<purge_velocity_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_purge_velocity_batch(inputs.size(), reinterpret_cast<const fw_purge_velocity_input *>(inputs.data()),
        sizeof(purge_velocity_input), reinterpret_cast<fw_purge_velocity_output *>(made.outputs.data()), sizeof(purge_velocity_output), made.status.data()));
    return made;
}

struct block_cool_down_input {
    /// Heat capacity of all that cools together: metal and water; allowed 1 to 1e9 (0.001 kJ/K to 1000000
    /// kJ/K); usually 1000 to 2000000 (1 kJ/K to 2000 kJ/K).
    joule_per_kelvin heat_capacity;
    /// Loss in proportion to the temperature difference: casing, insulated pipe, a circuit with a steady
    /// flow; allowed 0 to 100000; default 0.
    watt_per_kelvin loss_conductance{0.0};
    /// Loss by natural convection (or an emitter's output) at 50 K over the room; allowed 0 to 1000000;
    /// default 0.
    watt convective_loss{0.0};
    /// Exponent of that loss: 1.25 for laminar natural convection, about 1.3 for radiators; allowed 1 to 2;
    /// default 1.25.
    ratio loss_exponent{1.25};
    /// Bare area that radiates to surfaces at room temperature; allowed 0 to 1000; default 0.
    square_metre radiating_area{0.0};
    /// Emissivity of that area; allowed 0 to 1; default 0.9.
    ratio emissivity{0.9};
    /// Heat put in all the time, such as by a pilot flame; allowed 0 to 5000; default 0.
    watt standing_heat{0.0};
    /// Room temperature (air and surfaces); allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to
    /// 308.15 (0 °C to 35 °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Temperature at the start; allowed 243.15 to 573.15 (-30 °C to 300 °C); usually 293.15 to 383.15 (20
    /// °C to 110 °C).
    kelvin start_temperature;
    /// Temperature to be reached; allowed 243.15 to 573.15 (-30 °C to 300 °C); usually 288.15 to 373.15 (15
    /// °C to 100 °C).
    kelvin target_temperature;
};

struct block_cool_down_output {
    /// Time until the target is reached; NaN means: never.
    second time;
    /// Heat the mass has released by then; NaN means: never.
    joule heat_released;
    /// Loss at the start.
    watt loss_at_start;
    /// Loss at the target temperature.
    watt loss_at_target;
    /// Heat capacity times temperature difference over loss, at the start; NaN means: the mass is at room
    /// temperature.
    second time_constant;
    /// Time by the exponential with that time constant: too short where the loss falls faster than the
    /// difference; NaN means: never.
    second exponential_time;
    /// Temperature after an endless time.
    kelvin steady_temperature;
};

/// Cool-down of one hot mass; see fw_block_cool_down for settings, accuracy, cautions and sources.
/// How long a hot mass (a block, a casing, a standing pipe) takes to fall to a temperature, by a linear
/// loss, natural convection and radiation together.
inline block_cool_down_output block_cool_down(const block_cool_down_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_block_cool_down_output, block_cool_down_output, fw_block_cool_down_input>(
        input, [&](const fw_block_cool_down_input *given, fw_block_cool_down_output *made) { return fw_block_cool_down(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<block_cool_down_output> block_cool_down_batch(const std::vector<block_cool_down_input> &inputs)
{
    rows<block_cool_down_output> made{std::vector<block_cool_down_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_block_cool_down_batch(inputs.size(), reinterpret_cast<const fw_block_cool_down_input *>(inputs.data()),
        sizeof(block_cool_down_input), reinterpret_cast<fw_block_cool_down_output *>(made.outputs.data()), sizeof(block_cool_down_output), made.status.data()));
    return made;
}

struct burner_cycling_input {
    /// Heat capacity of all that warms and cools together: block, water, and what stays open to it; allowed
    /// 1 to 1e9 (0.001 kJ/K to 1000000 kJ/K); usually 1000 to 5000000 (1 kJ/K to 5000 kJ/K).
    joule_per_kelvin heat_capacity;
    /// Output of the burner to the water; allowed 10 to 1e7 (0.01 kW to 10000 kW); usually 1000 to 500000
    /// (1 kW to 500 kW).
    watt burner_output;
    /// Load that does not depend on the temperature; allowed 0 to 1e7 (0 kW to 10000 kW); default 0 (0 kW).
    watt load{0.0};
    /// Load in proportion to the temperature over the room; allowed 0 to 100000; default 0.
    watt_per_kelvin load_conductance{0.0};
    /// Output of the emitters at 50 K over the room; allowed 0 to 1e7 (0 kW to 10000 kW); default 0 (0 kW).
    watt emitter_output{0.0};
    /// Exponent of the emitters (EN 442); allowed 1 to 2; usually 1 to 1.5; default 1.3.
    ratio emitter_exponent{1.3};
    /// Room temperature; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 273.15 to 308.15 (0 °C to 35
    /// °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Temperature at which the thermostat stops the burner, on rising temperature; allowed 273.15 to
    /// 423.15 (0 °C to 150 °C); usually 298.15 to 368.15 (25 °C to 95 °C).
    kelvin cut_out_temperature;
    /// Temperature at which it lights the burner again, on falling temperature; allowed 273.15 to 423.15 (0
    /// °C to 150 °C); usually 293.15 to 363.15 (20 °C to 90 °C).
    kelvin cut_in_temperature;
    /// Least time the burner stays off; allowed 0 to 7200 (0 min to 120 min); default 0 (0 min).
    second anti_cycling_delay{0.0};
    /// Shortest on-time wanted; allowed 0.6 to 36000 (0.01 min to 600 min); NaN means: no on-time asked
    /// for.
    second wanted_on_time;
};

struct burner_cycling_output {
    /// Difference of the two operating values.
    kelvin_difference differential;
    /// Time the burner burns in each cycle; NaN means: the burner never stops.
    second on_time;
    /// Time it stands in each cycle; NaN means: the burner never lights again.
    second off_time;
    /// Time of a whole cycle; NaN means: no cycle.
    second period;
    /// Starts per hour; NaN means: no cycle.
    per_second start_rate;
    /// Share of the time the burner burns; NaN means: no cycle.
    ratio duty;
    /// Temperature at which the burner lights; below the cut-in where the delay holds it back; NaN means:
    /// the burner never lights again.
    kelvin lowest_temperature;
    /// Heat capacity that gives the on-time wanted; NaN means: no on-time asked for, or no cycle.
    joule_per_kelvin heat_capacity_needed;
    /// Water to add for it; negative where there is more than enough; NaN means: no on-time asked for, or
    /// no cycle.
    cubic_metre water_needed;
};

/// Cycling of a burner; see fw_burner_cycling for settings, accuracy, cautions and sources.
/// On and off times, starts per hour and duty of a burner under a steady load, the effect of the
/// differential, and the water content for a wanted on-time; the heated mass has one temperature.
inline burner_cycling_output burner_cycling(const burner_cycling_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_burner_cycling_output, burner_cycling_output, fw_burner_cycling_input>(
        input, [&](const fw_burner_cycling_input *given, fw_burner_cycling_output *made) { return fw_burner_cycling(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<burner_cycling_output> burner_cycling_batch(const std::vector<burner_cycling_input> &inputs)
{
    rows<burner_cycling_output> made{std::vector<burner_cycling_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_burner_cycling_batch(inputs.size(), reinterpret_cast<const fw_burner_cycling_input *>(inputs.data()),
        sizeof(burner_cycling_input), reinterpret_cast<fw_burner_cycling_output *>(made.outputs.data()), sizeof(burner_cycling_output), made.status.data()));
    return made;
}

struct tube_run_input {
    /// Length; allowed 0 to 100000; default 1.
    metre length{1.0};
};

struct tube_run_output {
    /// Outside diameter.
    metre outer_diameter;
    /// Wall thickness.
    metre wall_thickness;
    /// Bore.
    metre bore;
    /// Water content per metre.
    square_metre content_per_length;
    /// Mass of the empty tube per metre.
    kilogram_per_metre mass_per_length;
    /// Water content.
    cubic_metre content;
    /// Mass of the empty tube.
    kilogram mass;
    /// Heat capacity of the tube without its water.
    joule_per_kelvin wall_heat_capacity;
    /// Outside surface.
    square_metre outer_surface;
};

/// Content and mass of a length of tube; see fw_tube_run for settings, accuracy, cautions and sources.
/// Bore, water content, mass and heat capacity of a length of tube of a standard size or of any size.
inline tube_run_output tube_run(const context &settings, const tube_run_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_tube_run_output, tube_run_output, fw_tube_run_input>(
        input, [&](const fw_tube_run_input *given, fw_tube_run_output *made) { return fw_tube_run(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<tube_run_output> tube_run_batch(const context &settings, const std::vector<tube_run_input> &inputs)
{
    rows<tube_run_output> made{std::vector<tube_run_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_tube_run_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_tube_run_input *>(inputs.data()),
        sizeof(tube_run_input), reinterpret_cast<fw_tube_run_output *>(made.outputs.data()), sizeof(tube_run_output), made.status.data()));
    return made;
}

struct material_properties_input {
    /// Mean temperature of the material; only insulation depends on it here; allowed 223.15 to 573.15 (-50
    /// °C to 300 °C); usually 273.15 to 383.15 (0 °C to 110 °C); default 323.15 (50 °C).
    kelvin temperature{323.15};
};

struct material_properties_output {
    /// Density; NaN means: not in the table.
    kilogram_per_cubic_metre density;
    /// Specific heat capacity; NaN means: not in the table.
    joule_per_kilogram_kelvin specific_heat_capacity;
    /// Lowest specific heat capacity in print; NaN means: prints do not differ much.
    joule_per_kilogram_kelvin least_heat_capacity;
    /// Highest specific heat capacity in print; NaN means: prints do not differ much.
    joule_per_kilogram_kelvin greatest_heat_capacity;
    /// Thermal conductivity; NaN means: a finish has none.
    watt_per_metre_kelvin thermal_conductivity;
    /// Emissivity; NaN means: depends on the finish: ask for that by its name.
    ratio emissivity;
    /// Lowest emissivity in print; NaN means: not a finish.
    ratio least_emissivity;
    /// Highest emissivity in print; NaN means: not a finish.
    ratio greatest_emissivity;
};

/// Properties of a material; see fw_material_properties for settings, accuracy, cautions and sources.
/// Density, heat capacity, conductivity and emissivity of a metal, an insulation or a finish, with the
/// spread of the prints.
inline material_properties_output material_properties(const context &settings, const material_properties_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_material_properties_output, material_properties_output, fw_material_properties_input>(
        input, [&](const fw_material_properties_input *given, fw_material_properties_output *made) { return fw_material_properties(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<material_properties_output> material_properties_batch(const context &settings, const std::vector<material_properties_input> &inputs)
{
    rows<material_properties_output> made{std::vector<material_properties_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_material_properties_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_material_properties_input *>(inputs.data()),
        sizeof(material_properties_input), reinterpret_cast<fw_material_properties_output *>(made.outputs.data()), sizeof(material_properties_output), made.status.data()));
    return made;
}

struct flow_from_heat_input {
    /// Heat that the water is to carry; allowed 1 to 1e7 (0.001 kW to 10000 kW); usually 200 to 500000 (0.2
    /// kW to 500 kW).
    watt heat_output;
    /// Temperature at which the water sets out (flow); allowed 243.15 to 383.15 (-30 °C to 110 °C); usually
    /// 298.15 to 363.15 (25 °C to 90 °C).
    kelvin flow_temperature;
    /// Temperature at which it comes back (return); allowed 243.15 to 383.15 (-30 °C to 110 °C); usually
    /// 288.15 to 353.15 (15 °C to 80 °C).
    kelvin return_temperature;
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// default 200000 (2 bar).
    pascal_absolute pressure{200000.0};
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    ratio glycol_mass_fraction{0.0};
};

struct flow_from_heat_output {
    /// Temperature drop from flow to return.
    kelvin_difference temperature_drop;
    /// Mean heat capacity between the two temperatures: enthalpy difference over temperature drop.
    joule_per_kilogram_kelvin mean_specific_heat_capacity;
    /// Mass flow.
    kilogram_per_second mass_flow;
    /// Volume flow where the water is at return temperature (pump or meter in the return).
    cubic_metre_per_second volume_flow_at_return;
    /// Volume flow where the water is at flow temperature.
    cubic_metre_per_second volume_flow_at_flow;
    /// Volume flow at the mean of the two temperatures.
    cubic_metre_per_second volume_flow_at_mean;
    /// Volume flow by the rule of thumb of 4186 J/(kg K) and 1 kg/L, for comparison.
    cubic_metre_per_second volume_flow_by_rule;
};

/// Flow from heat output and temperature drop; see fw_flow_from_heat for settings, accuracy, cautions and sources.
/// The water flow that carries a heat output between flow and return temperature, from the enthalpies
/// of the real liquid.
inline flow_from_heat_output flow_from_heat(const context &settings, const flow_from_heat_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_flow_from_heat_output, flow_from_heat_output, fw_flow_from_heat_input>(
        input, [&](const fw_flow_from_heat_input *given, fw_flow_from_heat_output *made) { return fw_flow_from_heat(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<flow_from_heat_output> flow_from_heat_batch(const context &settings, const std::vector<flow_from_heat_input> &inputs)
{
    rows<flow_from_heat_output> made{std::vector<flow_from_heat_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_flow_from_heat_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_flow_from_heat_input *>(inputs.data()),
        sizeof(flow_from_heat_input), reinterpret_cast<fw_flow_from_heat_output *>(made.outputs.data()), sizeof(flow_from_heat_output), made.status.data()));
    return made;
}

struct heat_from_flow_input {
    /// Volume flow as measured; where, says the setting `flow_measured_in`; allowed 2.777778e-8 to
    /// 0.2777778 (0.1 L/h to 1000000 L/h); usually 2.777778e-6 to 0.01111111 (10 L/h to 40000 L/h).
    cubic_metre_per_second volume_flow;
    /// Temperature of the flow; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 298.15 to 363.15 (25
    /// °C to 90 °C).
    kelvin flow_temperature;
    /// Temperature of the return; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 288.15 to 353.15 (15
    /// °C to 80 °C).
    kelvin return_temperature;
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// default 200000 (2 bar).
    pascal_absolute pressure{200000.0};
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    ratio glycol_mass_fraction{0.0};
};

struct heat_from_flow_output {
    /// Temperature drop from flow to return.
    kelvin_difference temperature_drop;
    /// Mass flow.
    kilogram_per_second mass_flow;
    /// Heat carried.
    watt heat_output;
};

/// Heat output from flow and temperature drop; see fw_heat_from_flow for settings, accuracy, cautions and sources.
/// The heat that a measured water flow carries between flow and return temperature: the output by the
/// water side.
inline heat_from_flow_output heat_from_flow(const context &settings, const heat_from_flow_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_heat_from_flow_output, heat_from_flow_output, fw_heat_from_flow_input>(
        input, [&](const fw_heat_from_flow_input *given, fw_heat_from_flow_output *made) { return fw_heat_from_flow(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<heat_from_flow_output> heat_from_flow_batch(const context &settings, const std::vector<heat_from_flow_input> &inputs)
{
    rows<heat_from_flow_output> made{std::vector<heat_from_flow_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_heat_from_flow_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_heat_from_flow_input *>(inputs.data()),
        sizeof(heat_from_flow_input), reinterpret_cast<fw_heat_from_flow_output *>(made.outputs.data()), sizeof(heat_from_flow_output), made.status.data()));
    return made;
}

struct emitter_output_input {
    /// Output at the rated condition; allowed 1 to 1000000; usually 100 to 10000.
    watt rated_output;
    /// Exponent of the characteristic equation, from the maker; allowed 1 to 1.6; usually 1.1 to 1.45;
    /// default 1.3.
    ratio exponent{1.3};
    /// Flow temperature now; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 298.15 to 363.15 (25 °C to
    /// 90 °C).
    kelvin flow_temperature;
    /// Return temperature now; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 293.15 to 353.15 (20 °C
    /// to 80 °C).
    kelvin return_temperature;
    /// Room temperature now; allowed 263.15 to 323.15 (-10 °C to 50 °C); usually 278.15 to 299.15 (5 °C to
    /// 26 °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Flow temperature at the rated condition; allowed 273.15 to 403.15 (0 °C to 130 °C); default 348.15
    /// (75 °C).
    kelvin rated_flow_temperature{348.15};
    /// Return temperature at the rated condition; allowed 273.15 to 403.15 (0 °C to 130 °C); default 338.15
    /// (65 °C).
    kelvin rated_return_temperature{338.15};
    /// Room temperature at the rated condition; allowed 273.15 to 303.15 (0 °C to 30 °C); default 293.15
    /// (20 °C).
    kelvin rated_room_temperature{293.15};
    /// Output wanted now, where an emitter is to be chosen; allowed 1 to 1000000; NaN means: not asked.
    watt wanted_output;
};

struct emitter_output_output {
    /// Mean excess temperature now.
    kelvin_difference mean_excess;
    /// Mean excess temperature at the rated condition.
    kelvin_difference rated_mean_excess;
    /// Share of the rated output; its reverse is how much larger an emitter must be rated.
    ratio output_factor;
    /// Output now.
    watt heat_output;
    /// Output at the rated condition that an emitter needs to give the wanted one now; NaN means: no wanted
    /// output given.
    watt needed_rated_output;
};

/// Emitter output at another condition; see fw_emitter_output for settings, accuracy, cautions and sources.
/// What a radiator rated at one flow, return and room temperature gives at another, and the rating that
/// a wanted output needs there.
inline emitter_output_output emitter_output(const context &settings, const emitter_output_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_emitter_output_output, emitter_output_output, fw_emitter_output_input>(
        input, [&](const fw_emitter_output_input *given, fw_emitter_output_output *made) { return fw_emitter_output(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<emitter_output_output> emitter_output_batch(const context &settings, const std::vector<emitter_output_input> &inputs)
{
    rows<emitter_output_output> made{std::vector<emitter_output_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_emitter_output_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_emitter_output_input *>(inputs.data()),
        sizeof(emitter_output_input), reinterpret_cast<fw_emitter_output_output *>(made.outputs.data()), sizeof(emitter_output_output), made.status.data()));
    return made;
}

struct emitter_at_flow_input {
    /// Output at the rated condition; allowed 1 to 1000000; usually 100 to 10000.
    watt rated_output;
    /// Exponent of the characteristic equation, from the maker; allowed 1 to 1.6; usually 1.1 to 1.45;
    /// default 1.3.
    ratio exponent{1.3};
    /// Mass flow of water through it; allowed 2.777778e-5 to 27.77778 (0.1 kg/h to 100000 kg/h); usually
    /// 0.0005555556 to 0.2777778 (2 kg/h to 1000 kg/h).
    kilogram_per_second mass_flow;
    /// Flow temperature; allowed 273.15 to 383.15 (0 °C to 110 °C); usually 298.15 to 363.15 (25 °C to 90
    /// °C).
    kelvin flow_temperature;
    /// Room temperature; allowed 273.15 to 323.15 (0 °C to 50 °C); usually 278.15 to 299.15 (5 °C to 26
    /// °C); default 293.15 (20 °C).
    kelvin room_temperature{293.15};
    /// Mean excess temperature of the rating: 50 K for 75/65/20 °C; allowed 5 to 80; default 50.
    kelvin_difference rated_mean_excess{50.0};
};

struct emitter_at_flow_output {
    /// Return temperature.
    kelvin return_temperature;
    /// Temperature drop.
    kelvin_difference temperature_drop;
    /// Output.
    watt heat_output;
    /// Share of the rated output.
    ratio output_factor;
};

/// Emitter at a water flow; see fw_emitter_at_flow for settings, accuracy, cautions and sources.
/// The return temperature at which the heat the water gives up is the heat the emitter gives off, and
/// that heat.
inline emitter_at_flow_output emitter_at_flow(const context &settings, const emitter_at_flow_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_emitter_at_flow_output, emitter_at_flow_output, fw_emitter_at_flow_input>(
        input, [&](const fw_emitter_at_flow_input *given, fw_emitter_at_flow_output *made) { return fw_emitter_at_flow(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<emitter_at_flow_output> emitter_at_flow_batch(const context &settings, const std::vector<emitter_at_flow_input> &inputs)
{
    rows<emitter_at_flow_output> made{std::vector<emitter_at_flow_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_emitter_at_flow_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_emitter_at_flow_input *>(inputs.data()),
        sizeof(emitter_at_flow_input), reinterpret_cast<fw_emitter_at_flow_output *>(made.outputs.data()), sizeof(emitter_at_flow_output), made.status.data()));
    return made;
}

struct water_pressure_drop_input {
    /// Volume flow; allowed 0 to 0.2777778 (0 L/h to 1000000 L/h); usually 1.388889e-6 to 0.02777778 (5 L/h
    /// to 100000 L/h).
    cubic_metre_per_second volume_flow;
    /// Length of tube, flow and return together; allowed 0 to 10000; usually 0.1 to 500.
    metre length;
    /// Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 363.15 (5
    /// °C to 90 °C); default 333.15 (60 °C).
    kelvin temperature{333.15};
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// default 200000 (2 bar).
    pascal_absolute pressure{200000.0};
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    ratio glycol_mass_fraction{0.0};
    /// Loss coefficients of valves, boiler and other parts that the setting `fittings` does not name;
    /// allowed 0 to 10000; default 0.
    ratio loss_coefficient{0.0};
    /// Equivalent length of parts for which such a length is given; allowed 0 to 10000; default 0.
    metre equivalent_length{0.0};
    /// Density, where it is known from elsewhere; allowed 500 to 2000; NaN means: that of the fluid.
    kilogram_per_cubic_metre density;
    /// Dynamic viscosity, where it is known from elsewhere; allowed 1e-5 to 1; NaN means: that of the
    /// fluid.
    pascal_second dynamic_viscosity;
    /// Velocity above which a notice is given; makers of tube state what theirs stands; allowed 0.1 to 10;
    /// default 1.
    metre_per_second greatest_velocity{1.0};
    /// Velocity below which a notice is given that air may stay; allowed 0 to 2; default 0.2.
    metre_per_second least_velocity{0.2};
};

struct water_pressure_drop_output {
    /// Mean velocity.
    metre_per_second velocity;
    /// Reynolds number.
    ratio reynolds_number;
    /// Darcy friction factor; NaN means: no flow.
    ratio friction_factor;
    /// Velocity pressure.
    pascal velocity_pressure;
    /// Pressure drop per metre of tube.
    pascal_per_metre drop_per_length;
    /// Pressure drop of the tube and equivalent lengths.
    pascal tube_drop;
    /// Pressure drop of fittings by loss coefficient.
    pascal fitting_drop;
    /// Pressure drop of the whole.
    pascal pressure_drop;
    /// Least it may be; less than the drop itself only where the flow is in transition.
    pascal pressure_drop_low;
    /// Most it may be; more than the drop itself only where the flow is in transition.
    pascal pressure_drop_high;
    /// Head of the same liquid.
    metre head_loss;
    /// Power that the drop takes from the liquid; a pump needs this over its efficiency.
    watt hydraulic_power;
};

/// Pressure drop of a run of tube; see fw_water_pressure_drop for settings, accuracy, cautions and sources.
/// Velocity and pressure drop of water or a glycol mixture through a length of tube with its fittings.
inline water_pressure_drop_output water_pressure_drop(const context &settings, const water_pressure_drop_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_water_pressure_drop_output, water_pressure_drop_output, fw_water_pressure_drop_input>(
        input, [&](const fw_water_pressure_drop_input *given, fw_water_pressure_drop_output *made) { return fw_water_pressure_drop(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<water_pressure_drop_output> water_pressure_drop_batch(const context &settings, const std::vector<water_pressure_drop_input> &inputs)
{
    rows<water_pressure_drop_output> made{std::vector<water_pressure_drop_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_water_pressure_drop_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_water_pressure_drop_input *>(inputs.data()),
        sizeof(water_pressure_drop_input), reinterpret_cast<fw_water_pressure_drop_output *>(made.outputs.data()), sizeof(water_pressure_drop_output), made.status.data()));
    return made;
}

struct fitting_loss_input {
    /// Bore of the tube; allowed 0.001 to 1 (1 mm to 1000 mm); usually 0.006 to 0.2 (6 mm to 200 mm).
    metre bore;
};

struct fitting_loss_output {
    /// Friction factor of fully turbulent flow in commercial steel pipe of this bore.
    ratio turbulent_friction_factor;
    /// Loss coefficient on the velocity pressure; NaN means: published as a length: times the friction
    /// factor of the flow, over the bore.
    ratio loss_coefficient;
    /// Equivalent length in bores; for a loss coefficient by the fully turbulent friction factor.
    ratio length_ratio;
    /// Equivalent length of the same tube.
    metre equivalent_length;
};

/// Resistance of a fitting; see fw_fitting_loss for settings, accuracy, cautions and sources.
/// Loss coefficient and equivalent length of a fitting or valve in a tube of a bore.
inline fitting_loss_output fitting_loss(const context &settings, const fitting_loss_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_fitting_loss_output, fitting_loss_output, fw_fitting_loss_input>(
        input, [&](const fw_fitting_loss_input *given, fw_fitting_loss_output *made) { return fw_fitting_loss(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<fitting_loss_output> fitting_loss_batch(const context &settings, const std::vector<fitting_loss_input> &inputs)
{
    rows<fitting_loss_output> made{std::vector<fitting_loss_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_fitting_loss_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_fitting_loss_input *>(inputs.data()),
        sizeof(fitting_loss_input), reinterpret_cast<fw_fitting_loss_output *>(made.outputs.data()), sizeof(fitting_loss_output), made.status.data()));
    return made;
}

struct static_head_input {
    /// Height of the water's top above the point of interest; allowed 0 to 200; usually 0.5 to 40.
    metre height;
    /// Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); default 283.15 (10 °C).
    kelvin temperature{283.15};
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// default 250000 (2.5 bar).
    pascal_absolute pressure{250000.0};
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    ratio glycol_mass_fraction{0.0};
};

struct static_head_output {
    /// Density of the liquid.
    kilogram_per_cubic_metre density;
    /// Pressure of the column.
    pascal static_pressure;
};

/// Static head; see fw_static_head for settings, accuracy, cautions and sources.
/// The pressure that a height of water makes at its temperature.
inline static_head_output static_head(const context &settings, const static_head_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_static_head_output, static_head_output, fw_static_head_input>(
        input, [&](const fw_static_head_input *given, fw_static_head_output *made) { return fw_static_head(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<static_head_output> static_head_batch(const context &settings, const std::vector<static_head_input> &inputs)
{
    rows<static_head_output> made{std::vector<static_head_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_static_head_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_static_head_input *>(inputs.data()),
        sizeof(static_head_input), reinterpret_cast<fw_static_head_output *>(made.outputs.data()), sizeof(static_head_output), made.status.data()));
    return made;
}

struct duty_point_input {
    /// A flow at which the system's pressure drop is known; allowed 2.777778e-7 to 0.2777778 (1 L/h to
    /// 1000000 L/h).
    cubic_metre_per_second known_flow;
    /// Pressure drop of the system at that flow; allowed 1 to 1e7 (0.001 kPa to 10000 kPa); usually 1000 to
    /// 200000 (1 kPa to 200 kPa).
    pascal known_pressure_drop;
    /// Exponent of the drop in the flow: 2 for rough pipe and fittings, 1.75 for smooth pipe alone; allowed
    /// 1 to 2; usually 1.7 to 2; default 2.
    ratio exponent{2.0};
    /// Pressure that the pump must lift at no flow; zero in a closed circuit; allowed 0 to 1000000 (0 kPa
    /// to 1000 kPa); default 0 (0 kPa).
    pascal static_pressure{0.0};
};

struct duty_point_output {
    /// Flow.
    cubic_metre_per_second volume_flow;
    /// Pressure the pump makes and the system takes.
    pascal pressure;
    /// Share of the known flow.
    ratio flow_ratio;
    /// Power given to the water.
    watt hydraulic_power;
};

/// Duty point of a pump; see fw_duty_point for settings, accuracy, cautions and sources.
/// Flow and pressure at which a pump's curve meets the curve of the system.
inline duty_point_output duty_point(const context &settings, const duty_point_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_duty_point_output, duty_point_output, fw_duty_point_input>(
        input, [&](const fw_duty_point_input *given, fw_duty_point_output *made) { return fw_duty_point(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<duty_point_output> duty_point_batch(const context &settings, const std::vector<duty_point_input> &inputs)
{
    rows<duty_point_output> made{std::vector<duty_point_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_duty_point_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_duty_point_input *>(inputs.data()),
        sizeof(duty_point_input), reinterpret_cast<fw_duty_point_output *>(made.outputs.data()), sizeof(duty_point_output), made.status.data()));
    return made;
}

struct valve_kv_input {
    /// Volume flow through the valve; allowed 2.777778e-8 to 0.2777778 (0.1 L/h to 1000000 L/h); usually
    /// 1.388889e-6 to 0.02777778 (5 L/h to 100000 L/h).
    cubic_metre_per_second volume_flow;
    /// Pressure drop that the valve is to make; allowed 10 to 1000000 (0.01 kPa to 1000 kPa); usually 1000
    /// to 50000 (1 kPa to 50 kPa).
    pascal pressure_drop;
    /// Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); default 333.15 (60 °C).
    kelvin temperature{333.15};
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    ratio glycol_mass_fraction{0.0};
};

struct valve_kv_output {
    /// Density of the liquid.
    kilogram_per_cubic_metre density;
    /// Kv: flow at a drop of 1 bar of water of 1000 kg/m³.
    cubic_metre_per_second valve_kv;
};

/// Kv of a balancing valve; see fw_valve_kv for settings, accuracy, cautions and sources.
/// The Kv to which a valve must be set to take a pressure drop at a flow.
inline valve_kv_output valve_kv(const context &settings, const valve_kv_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_valve_kv_output, valve_kv_output, fw_valve_kv_input>(
        input, [&](const fw_valve_kv_input *given, fw_valve_kv_output *made) { return fw_valve_kv(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<valve_kv_output> valve_kv_batch(const context &settings, const std::vector<valve_kv_input> &inputs)
{
    rows<valve_kv_output> made{std::vector<valve_kv_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_valve_kv_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_valve_kv_input *>(inputs.data()),
        sizeof(valve_kv_input), reinterpret_cast<fw_valve_kv_output *>(made.outputs.data()), sizeof(valve_kv_output), made.status.data()));
    return made;
}

struct circuit_balance_input {
    /// Temperature of the water; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 363.15 (5
    /// °C to 90 °C); default 333.15 (60 °C).
    kelvin temperature{333.15};
    /// Absolute pressure of the water; hardly matters; allowed 50000 to 2000000 (0.5 bar to 20 bar);
    /// default 200000 (2 bar).
    pascal_absolute pressure{200000.0};
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    ratio glycol_mass_fraction{0.0};
};

struct circuit_balance_output {
    /// Number of the index circuit, counted from 1: the one with the greatest pressure drop.
    ratio index_circuit;
    /// Its pressure drop: what the pump must make.
    pascal index_pressure_drop;
    /// Smallest pressure drop of any circuit.
    pascal least_pressure_drop;
    /// Flow of the index circuit.
    cubic_metre_per_second index_flow;
    /// Greatest velocity in any section.
    metre_per_second greatest_velocity;
};

/// Index circuit and balance; see fw_circuit_balance for settings, accuracy, cautions and sources.
/// Pressure drop of every circuit, the index circuit, and the Kv to which the balancing valve of each
/// other circuit is set.
inline circuit_balance_output circuit_balance(const context &settings, const circuit_balance_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_circuit_balance_output, circuit_balance_output, fw_circuit_balance_input>(
        input, [&](const fw_circuit_balance_input *given, fw_circuit_balance_output *made) { return fw_circuit_balance(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<circuit_balance_output> circuit_balance_batch(const context &settings, const std::vector<circuit_balance_input> &inputs)
{
    rows<circuit_balance_output> made{std::vector<circuit_balance_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_circuit_balance_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_circuit_balance_input *>(inputs.data()),
        sizeof(circuit_balance_input), reinterpret_cast<fw_circuit_balance_output *>(made.outputs.data()), sizeof(circuit_balance_output), made.status.data()));
    return made;
}

struct expansion_vessel_input {
    /// Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    /// to 5000 L).
    cubic_metre system_content;
    /// Temperature of the water when it is filled; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually
    /// 277.15 to 298.15 (4 °C to 25 °C); default 283.15 (10 °C).
    kelvin fill_temperature{283.15};
    /// Highest temperature the water may reach: what the limiter allows; allowed 283.15 to 383.15 (10 °C to
    /// 110 °C); usually 313.15 to 383.15 (40 °C to 110 °C).
    kelvin highest_temperature;
    /// Height of the system's top above the vessel; allowed 0 to 200; usually 0 to 40.
    metre static_height;
    /// Pressure to be kept at the top over that of the air; allowed 0 to 200000 (0 bar to 2 bar); usually
    /// 20000 to 50000 (0.2 bar to 0.5 bar); default 30000 (0.3 bar).
    pascal pressure_margin{30000.0};
    /// Least pre-charge whatever the height; allowed 0 to 300000 (0 bar to 3 bar); default 70000 (0.7 bar).
    pascal_gauge least_pre_charge{70000.0};
    /// Set pressure of the safety valve; allowed 50000 to 1600000 (0.5 bar to 16 bar); usually 200000 to
    /// 600000 (2 bar to 6 bar); default 300000 (3 bar).
    pascal_gauge safety_valve_pressure{300000.0};
    /// Water reserve as a share of the content; allowed 0 to 0.2 (0 % to 20 %); default 0.005 (0.5 %).
    ratio reserve_share{0.005};
    /// Least water reserve; allowed 0 to 0.1 (0 L to 100 L); default 0.003 (3 L).
    cubic_metre least_reserve{0.003};
    /// Pressure of the air; the standard counts it as 1 bar; allowed 60000 to 110000 (0.6 bar to 1.1 bar);
    /// default 100000 (1 bar).
    pascal_absolute barometric_pressure{100000.0};
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    ratio glycol_mass_fraction{0.0};
    /// Expansion of the liquid, where it is taken from a table; allowed 0 to 0.2 (0 % to 20 %); NaN means:
    /// from the densities of the liquid.
    ratio expansion_share;
};

struct expansion_vessel_output {
    /// Expansion of the liquid as a share of its cold volume.
    ratio expansion_share;
    /// Expansion volume.
    cubic_metre expansion_volume;
    /// Water reserve.
    cubic_metre water_reserve;
    /// Static pressure of the cold system at the vessel.
    pascal static_pressure;
    /// Pre-charge of the vessel, without water in it.
    pascal_gauge pre_charge;
    /// Pressure that the hot system may reach.
    pascal_gauge final_pressure;
    /// Share of the vessel that water can take between pre-charge and final pressure.
    ratio acceptance;
    /// Least vessel, with the reserve by share of the content.
    cubic_metre vessel_volume;
    /// Least vessel where a fifth of it is the reserve: the rule for vessels of up to 15 L; NaN means: the
    /// pressures leave no room for a reserve of a fifth.
    cubic_metre vessel_volume_with_fifth;
    /// Least vessel with no reserve at all, for comparison.
    cubic_metre vessel_volume_without_reserve;
    /// Least pressure to which the cold system is filled, so that the reserve is in the vessel.
    pascal_gauge fill_pressure;
};

/// Expansion vessel; see fw_expansion_vessel for settings, accuracy, cautions and sources.
/// Expansion volume, water reserve, pre-charge, vessel size and fill pressure of a sealed heating
/// system.
inline expansion_vessel_output expansion_vessel(const context &settings, const expansion_vessel_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_expansion_vessel_output, expansion_vessel_output, fw_expansion_vessel_input>(
        input, [&](const fw_expansion_vessel_input *given, fw_expansion_vessel_output *made) { return fw_expansion_vessel(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<expansion_vessel_output> expansion_vessel_batch(const context &settings, const std::vector<expansion_vessel_input> &inputs)
{
    rows<expansion_vessel_output> made{std::vector<expansion_vessel_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_expansion_vessel_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_expansion_vessel_input *>(inputs.data()),
        sizeof(expansion_vessel_input), reinterpret_cast<fw_expansion_vessel_output *>(made.outputs.data()), sizeof(expansion_vessel_output), made.status.data()));
    return made;
}

struct vessel_check_input {
    /// Nominal volume of the vessel; allowed 0.0005 to 100 (0.5 L to 100000 L); usually 0.004 to 1 (4 L to
    /// 1000 L).
    cubic_metre vessel_volume;
    /// Pre-charge as measured with the water side relieved of pressure; allowed 0 to 1000000 (0 bar to 10
    /// bar); usually 50000 to 400000 (0.5 bar to 4 bar).
    pascal_gauge pre_charge;
    /// Pressure of the cold system as filled; allowed 0 to 1000000 (0 bar to 10 bar); usually 80000 to
    /// 400000 (0.8 bar to 4 bar).
    pascal_gauge fill_pressure;
    /// Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    /// to 5000 L).
    cubic_metre system_content;
    /// Temperature of the water at that pressure; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually
    /// 277.15 to 298.15 (4 °C to 25 °C); default 283.15 (10 °C).
    kelvin fill_temperature{283.15};
    /// Temperature to which the whole content is heated; allowed 283.15 to 383.15 (10 °C to 110 °C);
    /// usually 313.15 to 383.15 (40 °C to 110 °C).
    kelvin highest_temperature;
    /// Set pressure of the safety valve; allowed 50000 to 1600000 (0.5 bar to 16 bar); usually 200000 to
    /// 600000 (2 bar to 6 bar); default 300000 (3 bar).
    pascal_gauge safety_valve_pressure{300000.0};
    /// Pressure of the air; allowed 60000 to 110000 (0.6 bar to 1.1 bar); default 100000 (1 bar).
    pascal_absolute barometric_pressure{100000.0};
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    ratio glycol_mass_fraction{0.0};
};

struct vessel_check_output {
    /// Expansion volume of the content.
    cubic_metre expansion_volume;
    /// Gas in the vessel when cold.
    cubic_metre gas_volume_cold;
    /// Water in the vessel when cold: the reserve.
    cubic_metre water_reserve;
    /// Most water the vessel takes up between cold and the pressure allowed when hot.
    cubic_metre take_up;
    /// Pressure of the hot system, if the safety valve did not lift; NaN means: the vessel is full of
    /// water: the safety valve must lift.
    pascal_gauge hot_pressure;
    /// Pressure that the hot system may reach.
    pascal_gauge final_pressure;
    /// Water that leaves by the safety valve on heating up, and is missing when cold again.
    cubic_metre water_lost;
};

/// Expansion vessel as found; see fw_vessel_check for settings, accuracy, cautions and sources.
/// Cold and hot pressure of a sealed system with the vessel and pre-charge found on it, and the water
/// the safety valve would let out.
inline vessel_check_output vessel_check(const context &settings, const vessel_check_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_vessel_check_output, vessel_check_output, fw_vessel_check_input>(
        input, [&](const fw_vessel_check_input *given, fw_vessel_check_output *made) { return fw_vessel_check(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<vessel_check_output> vessel_check_batch(const context &settings, const std::vector<vessel_check_input> &inputs)
{
    rows<vessel_check_output> made{std::vector<vessel_check_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_vessel_check_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_vessel_check_input *>(inputs.data()),
        sizeof(vessel_check_input), reinterpret_cast<fw_vessel_check_output *>(made.outputs.data()), sizeof(vessel_check_output), made.status.data()));
    return made;
}

struct system_content_input {
    /// Water in all emitters, from their makers' tables; allowed 0 to 100 (0 L to 100000 L); default 0 (0
    /// L).
    cubic_metre emitter_content{0.0};
    /// Water in the boiler; allowed 0 to 10 (0 L to 10000 L); usually 0 to 0.5 (0 L to 500 L); default 0 (0
    /// L).
    cubic_metre boiler_content{0.0};
    /// Heating water in the coil of the hot water cylinder; allowed 0 to 1 (0 L to 1000 L); usually 0 to
    /// 0.06 (0 L to 60 L); default 0 (0 L).
    cubic_metre coil_content{0.0};
    /// Water in a feed and expansion cistern of an open vented system; allowed 0 to 10 (0 L to 10000 L);
    /// usually 0 to 0.2 (0 L to 200 L); default 0 (0 L).
    cubic_metre cistern_content{0.0};
    /// Water in buffer vessels and anything else; allowed 0 to 1000 (0 L to 1000000 L); default 0 (0 L).
    cubic_metre other_content{0.0};
};

struct system_content_output {
    /// Length of all pipes.
    metre pipe_length;
    /// Water in all pipes.
    cubic_metre pipe_content;
    /// Mass of all pipes, empty.
    kilogram pipe_mass;
    /// Heat capacity of all pipes, empty.
    joule_per_kelvin pipe_heat_capacity;
    /// Water that circulates: all but the cistern's.
    cubic_metre system_content;
    /// Water to fill everything, the cistern too.
    cubic_metre content_with_cistern;
};

/// Water content of a heating system; see fw_system_content for settings, accuracy, cautions and sources.
/// Water in pipes, emitters, boiler, cylinder coil and cistern, with the mass and heat capacity of the
/// pipes.
inline system_content_output system_content(const context &settings, const system_content_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_system_content_output, system_content_output, fw_system_content_input>(
        input, [&](const fw_system_content_input *given, fw_system_content_output *made) { return fw_system_content(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<system_content_output> system_content_batch(const context &settings, const std::vector<system_content_input> &inputs)
{
    rows<system_content_output> made{std::vector<system_content_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_system_content_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_system_content_input *>(inputs.data()),
        sizeof(system_content_input), reinterpret_cast<fw_system_content_output *>(made.outputs.data()), sizeof(system_content_output), made.status.data()));
    return made;
}

struct heat_store_input {
    /// Temperature at the start; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 368.15 (5
    /// °C to 95 °C).
    kelvin start_temperature;
    /// Temperature at the end; allowed 243.15 to 383.15 (-30 °C to 110 °C); usually 278.15 to 368.15 (5 °C
    /// to 95 °C).
    kelvin end_temperature;
    /// Water content at the start; allowed 0 to 1000 (0 L to 1000000 L); default 0 (0 L).
    cubic_metre water_content{0.0};
    /// Share of glycol by mass; needs the setting `fluid`; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    ratio glycol_mass_fraction{0.0};
    /// Mass of cast iron; allowed 0 to 100000; default 0.
    kilogram cast_iron_mass{0.0};
    /// Heat capacity of that cast iron; prints run from 420 to 545 J/(kg K), so state which is meant;
    /// allowed 380 to 600; usually 420 to 545; default 500.
    joule_per_kilogram_kelvin cast_iron_heat_capacity{500.0};
    /// Mass of steel; allowed 0 to 100000; default 0.
    kilogram steel_mass{0.0};
    /// Mass of copper; allowed 0 to 100000; default 0.
    kilogram copper_mass{0.0};
    /// Mass of aluminium; allowed 0 to 100000; default 0.
    kilogram aluminium_mass{0.0};
    /// Mass of insulation that follows the temperature; half of a jacket is a fair guess; allowed 0 to
    /// 100000; default 0.
    kilogram insulation_mass{0.0};
    /// Heat capacity of the insulation; allowed 500 to 2500; default 1030.
    joule_per_kilogram_kelvin insulation_heat_capacity{1030.0};
    /// Heat capacity of anything else; allowed 0 to 1e9 (0 kJ/K to 1000000 kJ/K); default 0 (0 kJ/K).
    joule_per_kelvin other_heat_capacity{0.0};
};

struct heat_store_output {
    /// Heat capacity of the metal.
    joule_per_kelvin metal_heat_capacity;
    /// Heat capacity of the water: its enthalpy difference over the temperature difference.
    joule_per_kelvin water_heat_capacity;
    /// Heat capacity of the whole.
    joule_per_kelvin heat_capacity;
    /// Heat given off from start to end; negative where the parts warm up.
    joule heat;
    /// Share of it that the water gives.
    ratio water_share;
};

/// Heat held between two temperatures; see fw_heat_store for settings, accuracy, cautions and sources.
/// Heat capacity of iron, steel, copper, aluminium, insulation and water, and the heat they give off
/// between two temperatures.
inline heat_store_output heat_store(const context &settings, const heat_store_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_heat_store_output, heat_store_output, fw_heat_store_input>(
        input, [&](const fw_heat_store_input *given, fw_heat_store_output *made) { return fw_heat_store(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<heat_store_output> heat_store_batch(const context &settings, const std::vector<heat_store_input> &inputs)
{
    rows<heat_store_output> made{std::vector<heat_store_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_heat_store_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_heat_store_input *>(inputs.data()),
        sizeof(heat_store_input), reinterpret_cast<fw_heat_store_output *>(made.outputs.data()), sizeof(heat_store_output), made.status.data()));
    return made;
}

struct inhibitor_dose_input {
    /// Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    /// to 5000 L).
    cubic_metre system_content;
    /// Litres of product for each litre of system water, from its label; allowed 0.0001 to 0.2 (0.01 % to
    /// 20 %); usually 0.002 to 0.05 (0.2 % to 5 %); default 0.01 (1 %).
    ratio dose_ratio{0.01};
    /// Share of a full dose that is in the water already, by test; allowed 0 to 1 (0 % to 100 %); default 0
    /// (0 %).
    ratio strength_left{0.0};
    /// Content of one container; allowed 1e-5 to 1 (0.01 L to 1000 L); default 0.001 (1 L).
    cubic_metre container_content{0.001};
};

struct inhibitor_dose_output {
    /// Product for water that holds none.
    cubic_metre full_dose;
    /// Product to add.
    cubic_metre dose;
    /// Containers that hold it, in parts of one.
    ratio containers;
};

/// Inhibitor dose; see fw_inhibitor_dose for settings, accuracy, cautions and sources.
/// Litres of inhibitor that a system's content needs, less what is still in it.
inline inhibitor_dose_output inhibitor_dose(const inhibitor_dose_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_inhibitor_dose_output, inhibitor_dose_output, fw_inhibitor_dose_input>(
        input, [&](const fw_inhibitor_dose_input *given, fw_inhibitor_dose_output *made) { return fw_inhibitor_dose(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<inhibitor_dose_output> inhibitor_dose_batch(const std::vector<inhibitor_dose_input> &inputs)
{
    rows<inhibitor_dose_output> made{std::vector<inhibitor_dose_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_inhibitor_dose_batch(inputs.size(), reinterpret_cast<const fw_inhibitor_dose_input *>(inputs.data()),
        sizeof(inhibitor_dose_input), reinterpret_cast<fw_inhibitor_dose_output *>(made.outputs.data()), sizeof(inhibitor_dose_output), made.status.data()));
    return made;
}

struct antifreeze_dose_input {
    /// Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    /// to 5000 L).
    cubic_metre system_content;
    /// Temperature down to which no ice is to form; allowed 223.15 to 272.15 (-50 °C to -1 °C); usually
    /// 243.15 to 268.15 (-30 °C to -5 °C).
    kelvin frost_temperature;
    /// Glycol that is in the water already, by volume; allowed 0 to 0.6 (0 % to 60 %); default 0 (0 %).
    ratio glycol_volume_fraction{0.0};
    /// Share of glycol in the product as bought, by volume; allowed 0.5 to 1 (50 % to 100 %); default 1
    /// (100 %).
    ratio product_strength{1.0};
};

struct antifreeze_dose_output {
    /// Glycol needed, by mass.
    ratio glycol_mass_fraction;
    /// Glycol needed, by volume.
    ratio needed_volume_fraction;
    /// Product to add, after as much of the present water has been drained; zero if there is enough.
    cubic_metre product_volume;
    /// Mass of glycol in the system afterwards.
    kilogram glycol_mass;
};

/// Antifreeze dose; see fw_antifreeze_dose for settings, accuracy, cautions and sources.
/// Share of glycol that protects down to a temperature, and the product to add for a content.
inline antifreeze_dose_output antifreeze_dose(const context &settings, const antifreeze_dose_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_antifreeze_dose_output, antifreeze_dose_output, fw_antifreeze_dose_input>(
        input, [&](const fw_antifreeze_dose_input *given, fw_antifreeze_dose_output *made) { return fw_antifreeze_dose(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<antifreeze_dose_output> antifreeze_dose_batch(const context &settings, const std::vector<antifreeze_dose_input> &inputs)
{
    rows<antifreeze_dose_output> made{std::vector<antifreeze_dose_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_antifreeze_dose_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_antifreeze_dose_input *>(inputs.data()),
        sizeof(antifreeze_dose_input), reinterpret_cast<fw_antifreeze_dose_output *>(made.outputs.data()), sizeof(antifreeze_dose_output), made.status.data()));
    return made;
}

struct partial_drain_input {
    /// Water content of the whole system; allowed 0.001 to 1000 (1 L to 1000000 L); usually 0.02 to 5 (20 L
    /// to 5000 L).
    cubic_metre system_content;
    /// Water drained; allowed 0 to 1000 (0 L to 1000000 L).
    cubic_metre drained_volume;
    /// Share of product (inhibitor or antifreeze) in the water before, by volume; allowed 0 to 1 (0 % to
    /// 100 %).
    ratio product_fraction;
    /// Share of product in what is filled in; allowed 0 to 1 (0 % to 100 %); default 0 (0 %).
    ratio refill_fraction{0.0};
    /// Share of product wanted afterwards; allowed 0 to 1 (0 % to 100 %); NaN means: as before.
    ratio wanted_fraction;
    /// Flow at which the filling tap runs; allowed 2.777778e-7 to 0.02777778 (1 L/h to 100000 L/h); default
    /// 0.0001666667 (600 L/h).
    cubic_metre_per_second fill_flow{0.00016666666666666666};
};

struct partial_drain_output {
    /// Product that went with the water.
    cubic_metre product_lost;
    /// Share of product after filling up again.
    ratio fraction_after;
    /// Share of the earlier strength that is left; NaN means: no product was in it.
    ratio strength_left;
    /// Product in the refill that makes the wanted share.
    cubic_metre product_needed;
    /// Plain water of that refill.
    cubic_metre water_needed;
    /// Time to fill up again.
    second fill_time;
};

/// Partial drain and refill; see fw_partial_drain for settings, accuracy, cautions and sources.
/// Strength of inhibitor or antifreeze left after part of the water was drained and replaced, and the
/// refill that restores it.
inline partial_drain_output partial_drain(const partial_drain_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_partial_drain_output, partial_drain_output, fw_partial_drain_input>(
        input, [&](const fw_partial_drain_input *given, fw_partial_drain_output *made) { return fw_partial_drain(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<partial_drain_output> partial_drain_batch(const std::vector<partial_drain_input> &inputs)
{
    rows<partial_drain_output> made{std::vector<partial_drain_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_partial_drain_batch(inputs.size(), reinterpret_cast<const fw_partial_drain_input *>(inputs.data()),
        sizeof(partial_drain_input), reinterpret_cast<fw_partial_drain_output *>(made.outputs.data()), sizeof(partial_drain_output), made.status.data()));
    return made;
}

struct injector_flow_input {
    /// Diameter of the injector bore; allowed 0.0001 to 0.1 (0.1 mm to 100 mm); usually 0.0003 to 0.01 (0.3
    /// mm to 10 mm).
    metre injector_diameter;
    /// Gauge pressure before the injector; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to 6000
    /// (1 mbar to 60 mbar).
    pascal_gauge burner_pressure;
    /// Density of the gas over that of air; left out, that of the fuel; allowed 0.05 to 5; usually 0.3 to
    /// 2.2; NaN means: that of the fuel.
    ratio relative_density;
    /// Discharge coefficient of the injector; allowed 0.1 to 1.2; usually 0.6 to 1.
    ratio discharge_coefficient;
    /// Density of air at the conditions to which the flow is stated; allowed 0.3 to 2; usually 0.9 to 1.35;
    /// default 1.225.
    kilogram_per_cubic_metre air_density{1.225};
    /// Number of like injectors; allowed 1 to 1000; default 1.
    ratio injector_count{1.0};
    /// Gross calorific value at the conditions to which the flow is stated; left out, that of the fuel;
    /// allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); NaN means: that of the fuel.
    joule_per_cubic_metre_gross gross_calorific_value;
};

struct injector_flow_output {
    /// Density of the gas.
    kilogram_per_cubic_metre gas_density;
    /// Velocity of the jet where it is narrowest, without loss.
    metre_per_second jet_velocity;
    /// Flow of all injectors, at the conditions of the air density stated.
    cubic_metre_per_second gas_flow;
    /// Flow by the practical form 0.0467 C_d A √(p/d), which implies air of 1.1885 kg/m³.
    cubic_metre_per_second gas_flow_practical;
    /// Heat input on the gross basis.
    watt_gross heat_input_gross;
};

/// Gas through an injector; see fw_injector_flow for settings, accuracy, cautions and sources.
/// Flow and heat input of burner injectors from bore, pressure, discharge coefficient and relative
/// density.
inline injector_flow_output injector_flow(const context &settings, const injector_flow_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_injector_flow_output, injector_flow_output, fw_injector_flow_input>(
        input, [&](const fw_injector_flow_input *given, fw_injector_flow_output *made) { return fw_injector_flow(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<injector_flow_output> injector_flow_batch(const context &settings, const std::vector<injector_flow_input> &inputs)
{
    rows<injector_flow_output> made{std::vector<injector_flow_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_injector_flow_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_injector_flow_input *>(inputs.data()),
        sizeof(injector_flow_input), reinterpret_cast<fw_injector_flow_output *>(made.outputs.data()), sizeof(injector_flow_output), made.status.data()));
    return made;
}

struct injector_size_input {
    /// Heat input wanted, gross; leave it out to state a flow; allowed 10 to 1e7 (0.01 kW to 10000 kW);
    /// usually 100 to 200000 (0.1 kW to 200 kW); NaN means: a flow is stated.
    watt_gross heat_input_gross;
    /// Gross calorific value at the conditions to which the flow is stated; left out, that of the fuel;
    /// allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); NaN means: that of the fuel.
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Flow wanted, at the conditions of the air density stated; leave it out to state a heat input;
    /// allowed 2.777778e-9 to 2.777778 (0.00001 m³/h to 10000 m³/h); NaN means: a heat input is stated.
    cubic_metre_per_second gas_flow;
    /// Gauge pressure before the injector; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to 6000
    /// (1 mbar to 60 mbar).
    pascal_gauge burner_pressure;
    /// Density of the gas over that of air; left out, that of the fuel; allowed 0.05 to 5; usually 0.3 to
    /// 2.2; NaN means: that of the fuel.
    ratio relative_density;
    /// Discharge coefficient of the injector; allowed 0.1 to 1.2; usually 0.6 to 1.
    ratio discharge_coefficient;
    /// Density of air at the conditions to which flow and calorific value are stated; allowed 0.3 to 2;
    /// usually 0.9 to 1.35; default 1.225.
    kilogram_per_cubic_metre air_density{1.225};
    /// Number of like injectors; allowed 1 to 1000; default 1.
    ratio injector_count{1.0};
};

struct injector_size_output {
    /// Flow of all injectors.
    cubic_metre_per_second gas_flow;
    /// Area of one injector.
    square_metre injector_area;
    /// Diameter of one injector.
    metre injector_diameter;
};

/// Size of an injector; see fw_injector_size for settings, accuracy, cautions and sources.
/// Bore of a burner injector for a heat input or a flow at a pressure.
inline injector_size_output injector_size(const context &settings, const injector_size_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_injector_size_output, injector_size_output, fw_injector_size_input>(
        input, [&](const fw_injector_size_input *given, fw_injector_size_output *made) { return fw_injector_size(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<injector_size_output> injector_size_batch(const context &settings, const std::vector<injector_size_input> &inputs)
{
    rows<injector_size_output> made{std::vector<injector_size_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_injector_size_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_injector_size_input *>(inputs.data()),
        sizeof(injector_size_input), reinterpret_cast<fw_injector_size_output *>(made.outputs.data()), sizeof(injector_size_output), made.status.data()));
    return made;
}

struct burner_pressure_input {
    /// Heat input known, on either basis; the result stands on the same; allowed 1 to 1e8 (0.001 kW to
    /// 100000 kW); usually 500 to 200000 (0.5 kW to 200 kW).
    watt heat_input;
    /// Burner pressure at which it is known; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to
    /// 6000 (1 mbar to 60 mbar).
    pascal_gauge burner_pressure;
    /// Burner pressure in the new state; left out, the same; allowed 1 to 50000 (0.01 mbar to 500 mbar);
    /// usually 100 to 6000 (1 mbar to 60 mbar); NaN means: unchanged.
    pascal_gauge new_burner_pressure;
    /// Heat input wanted in the new state; left out, the same; allowed 1 to 1e8 (0.001 kW to 100000 kW);
    /// usually 500 to 200000 (0.5 kW to 200 kW); NaN means: unchanged.
    watt wanted_heat_input;
    /// Gross calorific value of the gas known; left out, that of the fuel; allowed 1000000 to 2e8 (1 MJ/m³
    /// to 200 MJ/m³); NaN means: that of the fuel.
    joule_per_cubic_metre_gross gross_calorific_value;
    /// Gross calorific value of the new gas; left out, that of the new fuel; allowed 1000000 to 2e8 (1
    /// MJ/m³ to 200 MJ/m³); NaN means: that of the new fuel, or unchanged.
    joule_per_cubic_metre_gross new_gross_calorific_value;
    /// Relative density of the gas known; left out, that of the fuel; allowed 0.05 to 5; NaN means: that of
    /// the fuel.
    ratio relative_density;
    /// Relative density of the new gas; left out, that of the new fuel; allowed 0.05 to 5; NaN means: that
    /// of the new fuel, or unchanged.
    ratio new_relative_density;
    /// Gas temperature at which the heat input is known; allowed 233.15 to 353.15 (-40 °C to 80 °C);
    /// default 288.15 (15 °C).
    kelvin gas_temperature{288.15};
    /// Gas temperature in the new state; left out, the same; allowed 233.15 to 353.15 (-40 °C to 80 °C);
    /// NaN means: unchanged.
    kelvin new_gas_temperature;
    /// Barometric pressure at which the heat input is known; allowed 50000 to 110000 (500 mbar to 1100
    /// mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Barometric pressure in the new state; left out, the same; allowed 50000 to 110000 (500 mbar to 1100
    /// mbar); NaN means: unchanged.
    pascal_absolute new_barometric_pressure;
};

struct burner_pressure_output {
    /// Heat input at the new pressure with the same injector.
    watt new_heat_input;
    /// New over known heat input with the same injector.
    ratio heat_input_ratio;
    /// Burner pressure that gives the wanted heat input with the same injector.
    pascal_gauge pressure_for_wanted;
    /// Injector diameter over the present one that gives the wanted heat input at the new pressure.
    ratio injector_diameter_ratio;
    /// Gross Wobbe index of the gas known.
    joule_per_cubic_metre_gross gross_wobbe_index;
    /// Gross Wobbe index of the new gas.
    joule_per_cubic_metre_gross new_gross_wobbe_index;
    /// New over known Wobbe index.
    ratio wobbe_ratio;
    /// New over known modified Wobbe index, which holds the temperature of the gas as well.
    ratio modified_wobbe_ratio;
    /// New over known flow at reference conditions.
    ratio reference_flow_ratio;
};

/// Burner pressure, heat input and gas; see fw_burner_pressure for settings, accuracy, cautions and sources.
/// Heat input at another burner pressure, gas, gas temperature or barometer by the square law of the
/// injector, the pressure for a wanted heat input, and the injector for it.
inline burner_pressure_output burner_pressure(const context &settings, const burner_pressure_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_burner_pressure_output, burner_pressure_output, fw_burner_pressure_input>(
        input, [&](const fw_burner_pressure_input *given, fw_burner_pressure_output *made) { return fw_burner_pressure(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<burner_pressure_output> burner_pressure_batch(const context &settings, const std::vector<burner_pressure_input> &inputs)
{
    rows<burner_pressure_output> made{std::vector<burner_pressure_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_burner_pressure_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_burner_pressure_input *>(inputs.data()),
        sizeof(burner_pressure_input), reinterpret_cast<fw_burner_pressure_output *>(made.outputs.data()), sizeof(burner_pressure_output), made.status.data()));
    return made;
}

struct altitude_input {
    /// Height above sea level (geopotential, which differs by 0.05 % at 3000 m); allowed -430 to 5000;
    /// usually -10 to 2500.
    metre altitude;
    /// Barometric pressure reduced to sea level, as weather reports give it; allowed 85000 to 109000 (850
    /// mbar to 1090 mbar); usually 96000 to 105000 (960 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute sea_level_pressure{101325.0};
    /// Temperature of the air at the place; left out, that of the standard atmosphere; allowed 223.15 to
    /// 333.15 (-50 °C to 60 °C); NaN means: standard atmosphere.
    kelvin air_temperature;
};

struct altitude_output {
    /// Barometric pressure at the place, as a barometer shows it.
    pascal_absolute barometric_pressure;
    /// Pressure at the place over 1013.25 mbar.
    ratio pressure_ratio;
    /// Air density over that at 15 °C and 1013.25 mbar.
    ratio air_density_ratio;
    /// Heat input over that at sea level, gas temperature, injector and burner pressure the same.
    ratio heat_input_ratio;
};

/// Effect of altitude; see fw_altitude for settings, accuracy, cautions and sources.
/// Barometric pressure at a height, and with it the density of air and the heat input of a burner left
/// as it was set at sea level.
inline altitude_output altitude(const altitude_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_altitude_output, altitude_output, fw_altitude_input>(
        input, [&](const fw_altitude_input *given, fw_altitude_output *made) { return fw_altitude(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<altitude_output> altitude_batch(const std::vector<altitude_input> &inputs)
{
    rows<altitude_output> made{std::vector<altitude_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_altitude_batch(inputs.size(), reinterpret_cast<const fw_altitude_input *>(inputs.data()),
        sizeof(altitude_input), reinterpret_cast<fw_altitude_output *>(made.outputs.data()), sizeof(altitude_output), made.status.data()));
    return made;
}

struct gas_pipe_drop_input {
    /// Flow at reference conditions; leave it out to state a heat input; allowed 0 to 27.77778 (0 m³/h to
    /// 100000 m³/h); usually 1.388889e-5 to 0.02777778 (0.05 m³/h to 100 m³/h); NaN means: a heat input is
    /// stated.
    cubic_metre_per_second_at_reference_conditions gas_flow;
    /// Heat input of all that hangs on the pipe, gross; leave it out to state a flow; allowed 0 to 1e9 (0
    /// kW to 1000000 kW); usually 500 to 1000000 (0.5 kW to 1000 kW); NaN means: a flow is stated.
    watt_gross heat_input_gross;
    /// Length of the pipe; allowed 0 to 10000; usually 0.1 to 100.
    metre length;
    /// Equivalent length of fittings that the setting `fittings` does not name; allowed 0 to 10000; usually
    /// 0 to 50; default 0.
    metre equivalent_length{0.0};
    /// Sum of the loss coefficients of fittings that are neither named nor counted by length; allowed 0 to
    /// 10000; usually 0 to 50; default 0.
    ratio loss_coefficient{0.0};
    /// Height of the end above the beginning; negative where the pipe falls; allowed -1000 to 1000; usually
    /// -30 to 30; default 0.
    metre rise{0.0};
    /// Bore; left out, that of the tube; allowed 0.001 to 2 (1 mm to 2000 mm); usually 0.006 to 0.16 (6 mm
    /// to 160 mm); NaN means: that of the tube.
    metre bore;
    /// Roughness of the wall; left out, that of the tube or of drawn tubing; allowed 0 to 0.005 (0 mm to 5
    /// mm); usually 0 to 0.0003 (0 mm to 0.3 mm); NaN means: that of the tube, or 0.0015 mm.
    metre roughness;
    /// Gauge pressure at the beginning of the pipe; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually
    /// 500 to 20000 (5 mbar to 200 mbar).
    pascal_gauge inlet_pressure;
    /// Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    kelvin gas_temperature{288.15};
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Density of the gas at reference conditions; left out, that of the fuel; allowed 0.05 to 6; NaN
    /// means: that of the fuel.
    kilogram_per_cubic_metre gas_density;
    /// Dynamic viscosity of the gas; left out, that of the fuel; allowed 1e-6 to 0.0001; NaN means: that of
    /// the fuel.
    pascal_second gas_viscosity;
};

struct gas_pipe_drop_output {
    /// Flow at reference conditions.
    cubic_metre_per_second_at_reference_conditions gas_flow;
    /// Flow as it enters the pipe.
    cubic_metre_per_second_at_the_meter flow_in_pipe;
    /// Density as it enters the pipe.
    kilogram_per_cubic_metre density_in_pipe;
    /// Dynamic viscosity.
    pascal_second viscosity;
    /// Mean velocity at the inlet.
    metre_per_second velocity;
    /// Reynolds number.
    ratio reynolds_number;
    /// Least Darcy friction factor; NaN means: no flow.
    ratio friction_factor_low;
    /// Greatest Darcy friction factor; NaN means: no flow.
    ratio friction_factor_high;
    /// Least friction drop with the density of the inlet.
    pascal drop_at_inlet_density_low;
    /// Greatest friction drop with the density of the inlet.
    pascal drop_at_inlet_density_high;
    /// Least friction drop, the gas expanding.
    pascal pressure_drop_low;
    /// Greatest friction drop, the gas expanding: the one to reckon with.
    pascal pressure_drop_high;
    /// Gain of gauge pressure by height; negative where a light gas goes down or a heavy one up.
    pascal height_gain;
    /// Least gauge pressure at the end of the pipe: the one to reckon with.
    pascal_gauge outlet_pressure_low;
    /// Greatest gauge pressure at the end of the pipe.
    pascal_gauge outlet_pressure_high;
};

/// Pressure drop of gas in a pipe; see fw_gas_pipe_drop for settings, accuracy, cautions and sources.
/// Pressure lost by friction and fittings and gained or lost by height in a gas pipe, as a band where
/// the flow is in transition, and the pressure left at its end.
inline gas_pipe_drop_output gas_pipe_drop(const context &settings, const gas_pipe_drop_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_pipe_drop_output, gas_pipe_drop_output, fw_gas_pipe_drop_input>(
        input, [&](const fw_gas_pipe_drop_input *given, fw_gas_pipe_drop_output *made) { return fw_gas_pipe_drop(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_pipe_drop_output> gas_pipe_drop_batch(const context &settings, const std::vector<gas_pipe_drop_input> &inputs)
{
    rows<gas_pipe_drop_output> made{std::vector<gas_pipe_drop_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_pipe_drop_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_gas_pipe_drop_input *>(inputs.data()),
        sizeof(gas_pipe_drop_input), reinterpret_cast<fw_gas_pipe_drop_output *>(made.outputs.data()), sizeof(gas_pipe_drop_output), made.status.data()));
    return made;
}

struct gas_pipe_discharge_input {
    /// Drop allowed between the gauges at both ends; set by the local rule; allowed 0.01 to 500000 (0.0001
    /// mbar to 5000 mbar); usually 10 to 2000 (0.1 mbar to 20 mbar).
    pascal allowed_drop;
    /// Length of the pipe; allowed 0.01 to 10000; usually 0.1 to 100.
    metre length;
    /// Equivalent length of fittings that the setting `fittings` does not name; allowed 0 to 10000; usually
    /// 0 to 50; default 0.
    metre equivalent_length{0.0};
    /// Sum of the loss coefficients of fittings that are neither named nor counted by length; allowed 0 to
    /// 10000; usually 0 to 50; default 0.
    ratio loss_coefficient{0.0};
    /// Height of the end above the beginning; negative where the pipe falls; allowed -1000 to 1000; usually
    /// -30 to 30; default 0.
    metre rise{0.0};
    /// Bore; left out, that of the tube; allowed 0.001 to 2 (1 mm to 2000 mm); usually 0.006 to 0.16 (6 mm
    /// to 160 mm); NaN means: that of the tube.
    metre bore;
    /// Roughness of the wall; left out, that of the tube or of drawn tubing; allowed 0 to 0.005 (0 mm to 5
    /// mm); usually 0 to 0.0003 (0 mm to 0.3 mm); NaN means: that of the tube, or 0.0015 mm.
    metre roughness;
    /// Gauge pressure at the beginning of the pipe; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually
    /// 500 to 20000 (5 mbar to 200 mbar).
    pascal_gauge inlet_pressure;
    /// Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    kelvin gas_temperature{288.15};
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Density of the gas at reference conditions; left out, that of the fuel; allowed 0.05 to 6; NaN
    /// means: that of the fuel.
    kilogram_per_cubic_metre gas_density;
    /// Dynamic viscosity of the gas; left out, that of the fuel; allowed 1e-6 to 0.0001; NaN means: that of
    /// the fuel.
    pascal_second gas_viscosity;
};

struct gas_pipe_discharge_output {
    /// Flow at reference conditions that is certain: the one to reckon with.
    cubic_metre_per_second_at_reference_conditions gas_flow_low;
    /// Greatest flow at reference conditions, if the flow stayed laminar.
    cubic_metre_per_second_at_reference_conditions gas_flow_high;
    /// Heat input that the certain flow feeds, gross, with the calorific value of the fuel.
    watt_gross heat_input_gross;
    /// Velocity at the inlet with the certain flow.
    metre_per_second velocity;
    /// Reynolds number of the certain flow.
    ratio reynolds_number_low;
    /// Reynolds number of the greatest flow.
    ratio reynolds_number_high;
    /// Friction drop that is used, the height gain added to what is allowed.
    pascal friction_drop;
    /// Flow by Pole's old formula, for comparison only: it promises too much in small pipes.
    cubic_metre_per_second_at_reference_conditions flow_by_pole;
};

/// Discharge of gas from a pipe; see fw_gas_pipe_discharge for settings, accuracy, cautions and sources.
/// Flow of gas that a pipe passes for an allowed pressure drop, as a band where the flow is in
/// transition.
inline gas_pipe_discharge_output gas_pipe_discharge(const context &settings, const gas_pipe_discharge_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_pipe_discharge_output, gas_pipe_discharge_output, fw_gas_pipe_discharge_input>(
        input, [&](const fw_gas_pipe_discharge_input *given, fw_gas_pipe_discharge_output *made) { return fw_gas_pipe_discharge(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_pipe_discharge_output> gas_pipe_discharge_batch(const context &settings, const std::vector<gas_pipe_discharge_input> &inputs)
{
    rows<gas_pipe_discharge_output> made{std::vector<gas_pipe_discharge_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_pipe_discharge_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_gas_pipe_discharge_input *>(inputs.data()),
        sizeof(gas_pipe_discharge_input), reinterpret_cast<fw_gas_pipe_discharge_output *>(made.outputs.data()), sizeof(gas_pipe_discharge_output), made.status.data()));
    return made;
}

struct gas_installation_input {
    /// Gauge pressure at the meter outlet; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually 500 to
    /// 20000 (5 mbar to 200 mbar).
    pascal_gauge inlet_pressure;
    /// Share of every load that is drawn; allowed 0 to 2 (0 % to 200 %); usually 0 to 1 (0 % to 100 %);
    /// default 1 (100 %).
    ratio load_factor{1.0};
    /// Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    kelvin gas_temperature{288.15};
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
};

struct gas_installation_output {
    /// Flow at reference conditions through the meter.
    cubic_metre_per_second_at_reference_conditions gas_flow;
    /// Heat input drawn, gross.
    watt_gross heat_input_gross;
    /// Greatest drop from the meter to an appliance: the one to reckon with.
    pascal greatest_drop;
    /// Least gauge pressure at an appliance: the one to reckon with.
    pascal_gauge lowest_appliance_pressure_low;
    /// The same if all flow in transition stayed laminar.
    pascal_gauge lowest_appliance_pressure_high;
    /// Greatest velocity.
    metre_per_second greatest_velocity;
    /// Sections in which the flow is neither laminar nor turbulent.
    ratio sections_in_transition;
    /// Gas held by the pipes, fittings counted by their equivalent length.
    cubic_metre pipe_volume;
};

/// Pressures in a branched gas installation; see fw_gas_installation for settings, accuracy, cautions and sources.
/// Flow, velocity, drop and pressure in every section of a branched installation, and the pressure at
/// the worst-off appliance.
inline gas_installation_output gas_installation(const context &settings, const gas_installation_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_installation_output, gas_installation_output, fw_gas_installation_input>(
        input, [&](const fw_gas_installation_input *given, fw_gas_installation_output *made) { return fw_gas_installation(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_installation_output> gas_installation_batch(const context &settings, const std::vector<gas_installation_input> &inputs)
{
    rows<gas_installation_output> made{std::vector<gas_installation_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_installation_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_gas_installation_input *>(inputs.data()),
        sizeof(gas_installation_input), reinterpret_cast<fw_gas_installation_output *>(made.outputs.data()), sizeof(gas_installation_output), made.status.data()));
    return made;
}

struct gas_pipe_sizing_input {
    /// Drop allowed from the meter to any appliance; set by the local rule; allowed 0.1 to 500000 (0.001
    /// mbar to 5000 mbar); usually 10 to 2000 (0.1 mbar to 20 mbar).
    pascal allowed_drop;
    /// Velocity that no section may exceed; set by the local rule; allowed 0.1 to 100; usually 1 to 30; NaN
    /// means: no limit.
    metre_per_second velocity_limit;
    /// Gauge pressure at the meter outlet; allowed 0 to 1000000 (0 mbar to 10000 mbar); usually 500 to
    /// 20000 (5 mbar to 200 mbar).
    pascal_gauge inlet_pressure;
    /// Share of every load that is reckoned with; allowed 0 to 2 (0 % to 200 %); usually 0.01 to 1 (1 % to
    /// 100 %); default 1 (100 %).
    ratio load_factor{1.0};
    /// Temperature of gas and surroundings; allowed 243.15 to 333.15 (-30 °C to 60 °C); usually 263.15 to
    /// 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    kelvin gas_temperature{288.15};
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
};

struct gas_pipe_sizing_output {
    /// Gas held by the pipes, the least that will do.
    cubic_metre pipe_volume;
    /// Greatest drop from the meter to an appliance.
    pascal greatest_drop;
    /// Drop left over.
    pascal spare_drop;
    /// Least gauge pressure at an appliance.
    pascal_gauge lowest_appliance_pressure;
    /// Greatest velocity.
    metre_per_second greatest_velocity;
    /// Widest bore chosen.
    metre widest_bore;
};

/// Sizing of a branched gas installation; see fw_gas_pipe_sizing for settings, accuracy, cautions and sources.
/// The tube for each section of a branched installation so that no appliance loses more than the
/// allowed drop, no section flows too fast or widens away from the meter, and the pipes hold the least
/// gas.
inline gas_pipe_sizing_output gas_pipe_sizing(const context &settings, const gas_pipe_sizing_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_pipe_sizing_output, gas_pipe_sizing_output, fw_gas_pipe_sizing_input>(
        input, [&](const fw_gas_pipe_sizing_input *given, fw_gas_pipe_sizing_output *made) { return fw_gas_pipe_sizing(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_pipe_sizing_output> gas_pipe_sizing_batch(const context &settings, const std::vector<gas_pipe_sizing_input> &inputs)
{
    rows<gas_pipe_sizing_output> made{std::vector<gas_pipe_sizing_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_pipe_sizing_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_gas_pipe_sizing_input *>(inputs.data()),
        sizeof(gas_pipe_sizing_input), reinterpret_cast<fw_gas_pipe_sizing_output *>(made.outputs.data()), sizeof(gas_pipe_sizing_output), made.status.data()));
    return made;
}

struct absolute_pressure_input {
    /// Pressure above the atmosphere; negative below it; allowed -110000 to 1e7 (-1100 mbar to 100000
    /// mbar).
    pascal_gauge gauge_pressure;
    /// Pressure of the atmosphere at the place, not reduced to sea level; allowed 50000 to 110000 (500 mbar
    /// to 1100 mbar); usually 80000 to 105000 (800 mbar to 1050 mbar).
    pascal_absolute barometric_pressure;
};

struct absolute_pressure_output {
    /// Pressure above vacuum: what gas laws need.
    pascal_absolute absolute_pressure;
};

/// Absolute pressure; see fw_absolute_pressure for settings, accuracy, cautions and sources.
/// The pressure above vacuum of what a gauge shows, from the pressure of the atmosphere.
inline absolute_pressure_output absolute_pressure(const absolute_pressure_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_absolute_pressure_output, absolute_pressure_output, fw_absolute_pressure_input>(
        input, [&](const fw_absolute_pressure_input *given, fw_absolute_pressure_output *made) { return fw_absolute_pressure(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<absolute_pressure_output> absolute_pressure_batch(const std::vector<absolute_pressure_input> &inputs)
{
    rows<absolute_pressure_output> made{std::vector<absolute_pressure_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_absolute_pressure_batch(inputs.size(), reinterpret_cast<const fw_absolute_pressure_input *>(inputs.data()),
        sizeof(absolute_pressure_input), reinterpret_cast<fw_absolute_pressure_output *>(made.outputs.data()), sizeof(absolute_pressure_output), made.status.data()));
    return made;
}

struct analyser_reading_input {
    /// The reading; allowed -0.01 to 1 (-10000 ppm to 1000000 ppm).
    ratio reading;
    /// Lowest value of the measuring range; allowed 0 to 1 (0 ppm to 1000000 ppm); default 0 (0 ppm).
    ratio range_low{0.0};
    /// Highest value of the measuring range; allowed 0 to 1 (0 ppm to 1000000 ppm).
    ratio range_high;
    /// Smallest step of the display; allowed 0 to 0.1 (0 ppm to 100000 ppm); default 0 (0 ppm).
    ratio resolution{0.0};
    /// Stated accuracy, either way, that holds at least; allowed 0 to 0.2 (0 ppm to 200000 ppm); default 0
    /// (0 ppm).
    ratio accuracy_absolute{0.0};
    /// Stated accuracy, either way, as a share of the reading; the greater of both holds; allowed 0 to 1 (0
    /// % to 100 %); usually 0 to 0.2 (0 % to 20 %); default 0 (0 %).
    ratio accuracy_relative{0.0};
    /// Reading in clean air before sampling, which should be the true value there; allowed -0.01 to 1
    /// (-10000 ppm to 1000000 ppm); NaN means: not recorded.
    ratio clean_air_reading;
    /// True value in clean air: nothing for carbon monoxide, about 20.9 % for oxygen; allowed 0 to 1 (0 ppm
    /// to 1000000 ppm); default 0 (0 ppm).
    ratio clean_air_value{0.0};
};

struct analyser_reading_output {
    /// Half-width of the stated accuracy at this reading.
    ratio accuracy;
    /// Standard uncertainty: accuracy and resolution, both as rectangular distributions.
    ratio standard_uncertainty;
    /// The same as a share of the reading; NaN means: the reading is zero.
    ratio relative_uncertainty;
    /// How far the reading stands in the measuring range.
    ratio share_of_range;
    /// Zero error in clean air; NaN means: not recorded.
    ratio zero_error;
};

/// Reading of an analyser; see fw_analyser_reading for settings, accuracy, cautions and sources.
/// Whether a reading lies in the measuring range of the cell, and the uncertainty that the data sheet's
/// accuracy and resolution give it.
inline analyser_reading_output analyser_reading(const analyser_reading_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_analyser_reading_output, analyser_reading_output, fw_analyser_reading_input>(
        input, [&](const fw_analyser_reading_input *given, fw_analyser_reading_output *made) { return fw_analyser_reading(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<analyser_reading_output> analyser_reading_batch(const std::vector<analyser_reading_input> &inputs)
{
    rows<analyser_reading_output> made{std::vector<analyser_reading_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_analyser_reading_batch(inputs.size(), reinterpret_cast<const fw_analyser_reading_input *>(inputs.data()),
        sizeof(analyser_reading_input), reinterpret_cast<fw_analyser_reading_output *>(made.outputs.data()), sizeof(analyser_reading_output), made.status.data()));
    return made;
}

struct flame_supervision_voltage_input {
    /// Voltage of the thermocouple alone, pilot burning, nothing connected; allowed 0 to 1 (0 mV to 1000
    /// mV); usually 0.01 to 0.75 (10 mV to 750 mV); NaN means: not measured.
    volt open_circuit_voltage;
    /// Voltage with the electromagnet connected, pilot burning; allowed 0 to 1 (0 mV to 1000 mV); usually
    /// 0.005 to 0.7 (5 mV to 700 mV).
    volt loaded_voltage;
    /// Voltage at which the electromagnet let go after the pilot was put out; allowed 0 to 1 (0 mV to 1000
    /// mV); NaN means: not measured.
    volt drop_out_voltage;
    /// Time from putting the pilot out to the valve closing; allowed 0 to 600; usually 1 to 120; NaN means:
    /// not measured.
    second closing_time;
};

struct flame_supervision_voltage_output {
    /// Loaded voltage over the voltage at which the magnet lets go; NaN means: drop-out not measured.
    ratio holding_ratio;
    /// Loaded voltage less the voltage at which the magnet lets go; NaN means: drop-out not measured.
    volt holding_margin;
    /// Share of the open-circuit voltage that is lost when the magnet is connected; NaN means: open-circuit
    /// voltage not measured.
    ratio loss_under_load;
    /// Time from putting the pilot out to the valve closing, as read; NaN means: not measured.
    second closing_time;
};

/// Thermo-electric flame supervision; see fw_flame_supervision_voltage for settings, accuracy, cautions and sources.
/// Margin of the thermocouple's voltage over what the electromagnet needs. Plain readings: what is
/// enough is for the maker's instructions and the policy they are judged against.
inline flame_supervision_voltage_output flame_supervision_voltage(const flame_supervision_voltage_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_flame_supervision_voltage_output, flame_supervision_voltage_output, fw_flame_supervision_voltage_input>(
        input, [&](const fw_flame_supervision_voltage_input *given, fw_flame_supervision_voltage_output *made) { return fw_flame_supervision_voltage(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<flame_supervision_voltage_output> flame_supervision_voltage_batch(const std::vector<flame_supervision_voltage_input> &inputs)
{
    rows<flame_supervision_voltage_output> made{std::vector<flame_supervision_voltage_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_flame_supervision_voltage_batch(inputs.size(), reinterpret_cast<const fw_flame_supervision_voltage_input *>(inputs.data()),
        sizeof(flame_supervision_voltage_input), reinterpret_cast<fw_flame_supervision_voltage_output *>(made.outputs.data()), sizeof(flame_supervision_voltage_output), made.status.data()));
    return made;
}

struct inclined_gauge_input {
    /// Movement of the liquid along the tube, positive for a pressure and negative for a draught; allowed
    /// -2 to 2 (-2000 mm to 2000 mm).
    metre length;
    /// Angle of the tube to the horizontal; allowed 0.003490659 to 1.570796 (0.2 ° to 90 °); usually
    /// 0.03490659 to 0.7853982 (2 ° to 45 °).
    radian angle;
    /// Relative density of the liquid to conventional water, as printed on the gauge; allowed 0.5 to 14;
    /// usually 0.7 to 1.1; default 1.
    ratio relative_density{1.0};
    /// Acceleration of gravity at the place; allowed 9.7 to 9.9; usually 9.78 to 9.84; default 9.80665.
    metre_per_second_squared gravity{9.80665};
};

struct inclined_gauge_output {
    /// Height of the column.
    metre_both_limbs level_difference;
    /// Pressure above the atmosphere; negative for a draught.
    pascal_gauge pressure;
};

/// Inclined gauge; see fw_inclined_gauge for settings, accuracy, cautions and sources.
/// Small gauge pressure or draught from the movement along an inclined tube. The level in the cistern
/// is taken as fixed.
inline inclined_gauge_output inclined_gauge(const inclined_gauge_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_inclined_gauge_output, inclined_gauge_output, fw_inclined_gauge_input>(
        input, [&](const fw_inclined_gauge_input *given, fw_inclined_gauge_output *made) { return fw_inclined_gauge(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<inclined_gauge_output> inclined_gauge_batch(const std::vector<inclined_gauge_input> &inputs)
{
    rows<inclined_gauge_output> made{std::vector<inclined_gauge_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_inclined_gauge_batch(inputs.size(), reinterpret_cast<const fw_inclined_gauge_input *>(inputs.data()),
        sizeof(inclined_gauge_input), reinterpret_cast<fw_inclined_gauge_output *>(made.outputs.data()), sizeof(inclined_gauge_output), made.status.data()));
    return made;
}

struct liquid_column_input {
    /// Difference between the levels of the two limbs, positive for a pressure and negative for a suction.
    /// On a scale that is spaced to give the whole pressure from one limb, the figure read from the scale;
    /// allowed -2 to 2 (-2000 mm to 2000 mm); usually -0.3 to 0.6 (-300 mm to 600 mm).
    metre_both_limbs level_difference;
    /// Temperature of the liquid; allowed 273.15 to 333.15 (0 °C to 60 °C); usually 275.15 to 308.15 (2 °C
    /// to 35 °C); default 293.15 (20 °C).
    kelvin liquid_temperature{293.15};
    /// Acceleration of gravity at the place; allowed 9.7 to 9.9; usually 9.78 to 9.84; default 9.80665.
    metre_per_second_squared gravity{9.80665};
    /// Pressure of the atmosphere, which decides the weight of the air column in the open limb; allowed
    /// 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 105000 (800 mbar to 1050 mbar); default
    /// 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
};

struct liquid_column_output {
    /// Level difference that balances the pressure.
    metre_both_limbs level_difference;
    /// Density of the liquid at its temperature.
    kilogram_per_cubic_metre liquid_density;
    /// Pressure above the atmosphere by the weight of the liquid alone, with its true density and local
    /// gravity.
    pascal_gauge pressure;
    /// The same less the weight of the air that stands in the place of the liquid in the other limb.
    pascal_gauge pressure_less_air;
    /// What the same reading is in conventional units of water column: 1000 kg/m³ and standard gravity.
    pascal_gauge pressure_conventional;
    /// Share by which the conventional figure is too high; NaN means: no level difference.
    ratio convention_error;
};

/// Pressure of a liquid column; see fw_liquid_column for settings, accuracy, cautions and sources.
/// Gauge pressure from the level difference of a U-gauge or a scale that gives it, with the true
/// density of the liquid and local gravity, beside the figure in conventional units of water column.
inline liquid_column_output liquid_column(const context &settings, const liquid_column_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_liquid_column_output, liquid_column_output, fw_liquid_column_input>(
        input, [&](const fw_liquid_column_input *given, fw_liquid_column_output *made) { return fw_liquid_column(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<liquid_column_output> liquid_column_batch(const context &settings, const std::vector<liquid_column_input> &inputs)
{
    rows<liquid_column_output> made{std::vector<liquid_column_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_liquid_column_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_liquid_column_input *>(inputs.data()),
        sizeof(liquid_column_input), reinterpret_cast<fw_liquid_column_output *>(made.outputs.data()), sizeof(liquid_column_output), made.status.data()));
    return made;
}

struct local_gravity_input {
    /// Geographic latitude, north or south alike; allowed -1.570796 to 1.570796 (-90 ° to 90 °).
    radian latitude;
    /// Height above sea level; allowed -500 to 9000; usually -10 to 2500; default 0.
    metre height{0.0};
};

struct local_gravity_output {
    /// Acceleration of gravity.
    metre_per_second_squared gravity;
    /// Share by which it exceeds standard gravity, 9.80665 m/s².
    ratio excess_over_standard;
};

/// Local gravity; see fw_local_gravity for settings, accuracy, cautions and sources.
/// Acceleration of gravity at a latitude and height, for a liquid-column gauge read exactly.
inline local_gravity_output local_gravity(const local_gravity_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_local_gravity_output, local_gravity_output, fw_local_gravity_input>(
        input, [&](const fw_local_gravity_input *given, fw_local_gravity_output *made) { return fw_local_gravity(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<local_gravity_output> local_gravity_batch(const std::vector<local_gravity_input> &inputs)
{
    rows<local_gravity_output> made{std::vector<local_gravity_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_local_gravity_batch(inputs.size(), reinterpret_cast<const fw_local_gravity_input *>(inputs.data()),
        sizeof(local_gravity_input), reinterpret_cast<fw_local_gravity_output *>(made.outputs.data()), sizeof(local_gravity_output), made.status.data()));
    return made;
}

struct platinum_resistance_input {
    /// Temperature of the element; allowed 73.15 to 1123.15 (-200 °C to 850 °C); usually 243.15 to 573.15
    /// (-30 °C to 300 °C).
    kelvin temperature;
    /// Resistance of the element at 0 °C: 100 Ω of a Pt100, 1000 Ω of a Pt1000; allowed 1 to 10000.
    ohm resistance_at_zero;
    /// Resistance of both leads together, as in a two-wire circuit; 0 with three or four wires; allowed 0
    /// to 100; usually 0 to 5; default 0.
    ohm lead_resistance{0.0};
};

struct platinum_resistance_output {
    /// Resistance of the element.
    ohm resistance;
    /// Resistance at the meter, through the leads.
    ohm resistance_with_leads;
    /// Temperature that a two-wire meter without correction shows; NaN means: beyond 850 °C.
    kelvin indicated_temperature;
    /// By how much that is too high; NaN means: beyond 850 °C.
    kelvin_difference lead_error;
    /// Half-width of the tolerance of the class at this temperature; NaN means: no class was named.
    kelvin_difference tolerance;
    /// Lowest resistance at the meter within the tolerance; NaN means: no class was named.
    ohm lowest_resistance;
    /// Highest resistance at the meter within the tolerance; NaN means: no class was named.
    ohm highest_resistance;
    /// Relative change of the resistance with temperature, referred to 0 °C.
    per_kelvin sensitivity;
};

/// Resistance of a platinum thermometer; see fw_platinum_resistance for settings, accuracy, cautions and sources.
/// Resistance to expect of a platinum element at a temperature, the band its class allows, and what
/// two-wire leads do to the reading.
inline platinum_resistance_output platinum_resistance(const context &settings, const platinum_resistance_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_platinum_resistance_output, platinum_resistance_output, fw_platinum_resistance_input>(
        input, [&](const fw_platinum_resistance_input *given, fw_platinum_resistance_output *made) { return fw_platinum_resistance(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<platinum_resistance_output> platinum_resistance_batch(const context &settings, const std::vector<platinum_resistance_input> &inputs)
{
    rows<platinum_resistance_output> made{std::vector<platinum_resistance_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_platinum_resistance_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_platinum_resistance_input *>(inputs.data()),
        sizeof(platinum_resistance_input), reinterpret_cast<fw_platinum_resistance_output *>(made.outputs.data()), sizeof(platinum_resistance_output), made.status.data()));
    return made;
}

struct platinum_temperature_input {
    /// Resistance at the meter; allowed 0.1 to 50000; usually 80 to 2000.
    ohm resistance;
    /// Resistance of the element at 0 °C: 100 Ω of a Pt100, 1000 Ω of a Pt1000; allowed 1 to 10000.
    ohm resistance_at_zero;
    /// Resistance of both leads together, as in a two-wire circuit; 0 with three or four wires; allowed 0
    /// to 100; usually 0 to 5; default 0.
    ohm lead_resistance{0.0};
};

struct platinum_temperature_output {
    /// Temperature of the element, the leads allowed for.
    kelvin temperature;
    /// Temperature that the resistance at the meter indicates if the leads are forgotten.
    kelvin indicated_temperature;
    /// By how much the indicated temperature is too high.
    kelvin_difference lead_error;
    /// Relative change of the resistance with temperature, referred to 0 °C.
    per_kelvin sensitivity;
    /// Half-width of the tolerance of the class at this temperature; NaN means: no class was named.
    kelvin_difference tolerance;
};

/// Temperature of a platinum thermometer; see fw_platinum_temperature for settings, accuracy, cautions and sources.
/// Temperature from the resistance of a Pt100, Pt1000 or other platinum element, with the error of
/// two-wire leads and the tolerance of a class.
inline platinum_temperature_output platinum_temperature(const context &settings, const platinum_temperature_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_platinum_temperature_output, platinum_temperature_output, fw_platinum_temperature_input>(
        input, [&](const fw_platinum_temperature_input *given, fw_platinum_temperature_output *made) { return fw_platinum_temperature(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<platinum_temperature_output> platinum_temperature_batch(const context &settings, const std::vector<platinum_temperature_input> &inputs)
{
    rows<platinum_temperature_output> made{std::vector<platinum_temperature_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_platinum_temperature_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_platinum_temperature_input *>(inputs.data()),
        sizeof(platinum_temperature_input), reinterpret_cast<fw_platinum_temperature_output *>(made.outputs.data()), sizeof(platinum_temperature_output), made.status.data()));
    return made;
}

struct thermistor_beta_input {
    /// Resistance measured; allowed 1 to 1e7; usually 100 to 100000.
    ohm resistance;
    /// Resistance at the reference temperature (R25 of most data sheets); allowed 10 to 1000000; usually
    /// 1000 to 100000.
    ohm reference_resistance;
    /// Reference temperature; allowed 223.15 to 473.15 (-50 °C to 200 °C); usually 293.15 to 298.15 (20 °C
    /// to 25 °C); default 298.15 (25 °C).
    kelvin reference_temperature{298.15};
    /// Beta of the thermistor; allowed 1000 to 10000; usually 2800 to 4600.
    kelvin_difference beta;
};

struct thermistor_beta_output {
    /// Temperature of the thermistor.
    kelvin temperature;
    /// Relative change of the resistance with temperature there.
    per_kelvin sensitivity;
};

/// Temperature of a thermistor from Beta; see fw_thermistor_beta for settings, accuracy, cautions and sources.
/// Temperature from the resistance, the resistance at a reference temperature and Beta. The constants
/// are inputs, so their tolerances propagate.
inline thermistor_beta_output thermistor_beta(const thermistor_beta_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_thermistor_beta_output, thermistor_beta_output, fw_thermistor_beta_input>(
        input, [&](const fw_thermistor_beta_input *given, fw_thermistor_beta_output *made) { return fw_thermistor_beta(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<thermistor_beta_output> thermistor_beta_batch(const std::vector<thermistor_beta_input> &inputs)
{
    rows<thermistor_beta_output> made{std::vector<thermistor_beta_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_thermistor_beta_batch(inputs.size(), reinterpret_cast<const fw_thermistor_beta_input *>(inputs.data()),
        sizeof(thermistor_beta_input), reinterpret_cast<fw_thermistor_beta_output *>(made.outputs.data()), sizeof(thermistor_beta_output), made.status.data()));
    return made;
}

struct thermistor_beta_of_points_input {
    /// Resistance at the first temperature; allowed 1 to 1e7.
    ohm first_resistance;
    /// First temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    kelvin first_temperature;
    /// Resistance at the second temperature; allowed 1 to 1e7.
    ohm second_resistance;
    /// Second temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    kelvin second_temperature;
};

struct thermistor_beta_of_points_output {
    /// Beta of the thermistor between the two temperatures.
    kelvin_difference beta;
};

/// Beta of a thermistor from two points; see fw_thermistor_beta_of_points for settings, accuracy, cautions and sources.
/// Beta between two points of resistance and temperature, of a data sheet or measured.
inline thermistor_beta_of_points_output thermistor_beta_of_points(const thermistor_beta_of_points_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_thermistor_beta_of_points_output, thermistor_beta_of_points_output, fw_thermistor_beta_of_points_input>(
        input, [&](const fw_thermistor_beta_of_points_input *given, fw_thermistor_beta_of_points_output *made) { return fw_thermistor_beta_of_points(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<thermistor_beta_of_points_output> thermistor_beta_of_points_batch(const std::vector<thermistor_beta_of_points_input> &inputs)
{
    rows<thermistor_beta_of_points_output> made{std::vector<thermistor_beta_of_points_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_thermistor_beta_of_points_batch(inputs.size(), reinterpret_cast<const fw_thermistor_beta_of_points_input *>(inputs.data()),
        sizeof(thermistor_beta_of_points_input), reinterpret_cast<fw_thermistor_beta_of_points_output *>(made.outputs.data()), sizeof(thermistor_beta_of_points_output), made.status.data()));
    return made;
}

struct thermistor_temperature_input {
    /// Resistance measured; allowed 1 to 1e7; usually 100 to 100000.
    ohm resistance;
};

struct thermistor_temperature_output {
    /// Temperature of the thermistor.
    kelvin temperature;
    /// Relative change of the resistance with temperature there.
    per_kelvin sensitivity;
};

/// Temperature of a thermistor; see fw_thermistor_temperature for settings, accuracy, cautions and sources.
/// Temperature from the resistance of an NTC thermistor by Beta, by three or four coefficients, or by a
/// curve through points.
inline thermistor_temperature_output thermistor_temperature(const context &settings, const thermistor_temperature_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_thermistor_temperature_output, thermistor_temperature_output, fw_thermistor_temperature_input>(
        input, [&](const fw_thermistor_temperature_input *given, fw_thermistor_temperature_output *made) { return fw_thermistor_temperature(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<thermistor_temperature_output> thermistor_temperature_batch(const context &settings, const std::vector<thermistor_temperature_input> &inputs)
{
    rows<thermistor_temperature_output> made{std::vector<thermistor_temperature_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_thermistor_temperature_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_thermistor_temperature_input *>(inputs.data()),
        sizeof(thermistor_temperature_input), reinterpret_cast<fw_thermistor_temperature_output *>(made.outputs.data()), sizeof(thermistor_temperature_output), made.status.data()));
    return made;
}

struct thermistor_check_input {
    /// Temperature of the thermistor, from a thermometer beside it; allowed 223.15 to 473.15 (-50 °C to 200
    /// °C); usually 253.15 to 383.15 (-20 °C to 110 °C).
    kelvin temperature;
    /// By how much that temperature may be wrong, either way; allowed 0 to 20; usually 0 to 5; default 0.
    kelvin_difference temperature_tolerance{0.0};
    /// Tolerance of the resistance at the reference temperature, either way; allowed 0 to 0.3 (0 % to 30
    /// %); usually 0 to 0.1 (0 % to 10 %); default 0 (0 %).
    ratio resistance_tolerance{0.0};
    /// Tolerance of Beta, either way; allowed 0 to 0.1 (0 % to 10 %); usually 0 to 0.03 (0 % to 3 %);
    /// default 0 (0 %).
    ratio beta_tolerance{0.0};
    /// Reference temperature, at which the tolerance of the resistance holds alone; allowed 223.15 to
    /// 473.15 (-50 °C to 200 °C); usually 293.15 to 298.15 (20 °C to 25 °C); default 298.15 (25 °C).
    kelvin reference_temperature{298.15};
    /// Resistance measured, if it was; allowed 0.1 to 1e8; NaN means: not measured.
    ohm measured_resistance;
};

struct thermistor_check_output {
    /// Resistance of a nominal thermistor.
    ohm resistance;
    /// Lowest resistance of a sound one, all tolerances at their worst together.
    ohm lowest_resistance;
    /// Highest resistance of a sound one, all tolerances at their worst together.
    ohm highest_resistance;
    /// Relative change of the resistance with temperature.
    per_kelvin sensitivity;
    /// Temperature that the control reads from the measured resistance; NaN means: not measured, or no
    /// temperature has that resistance.
    kelvin indicated_temperature;
    /// By how much that is above the true temperature; NaN means: not measured, or no temperature has that
    /// resistance.
    kelvin_difference deviation;
};

/// Thermistor check with an ohmmeter; see fw_thermistor_check for settings, accuracy, cautions and sources.
/// Resistance to expect of an NTC thermistor at a temperature and the band its tolerances allow, with a
/// table from -20 to 110 °C to check against, and what a measured resistance would make the control
/// believe.
inline thermistor_check_output thermistor_check(const context &settings, const thermistor_check_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_thermistor_check_output, thermistor_check_output, fw_thermistor_check_input>(
        input, [&](const fw_thermistor_check_input *given, fw_thermistor_check_output *made) { return fw_thermistor_check(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<thermistor_check_output> thermistor_check_batch(const context &settings, const std::vector<thermistor_check_input> &inputs)
{
    rows<thermistor_check_output> made{std::vector<thermistor_check_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_thermistor_check_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_thermistor_check_input *>(inputs.data()),
        sizeof(thermistor_check_input), reinterpret_cast<fw_thermistor_check_output *>(made.outputs.data()), sizeof(thermistor_check_output), made.status.data()));
    return made;
}

struct thermistor_fit_input {
    /// Resistance at the first temperature; allowed 1 to 1e7.
    ohm first_resistance;
    /// First temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    kelvin first_temperature;
    /// Resistance at the second temperature; allowed 1 to 1e7.
    ohm second_resistance;
    /// Second temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    kelvin second_temperature;
    /// Resistance at the third temperature; allowed 1 to 1e7.
    ohm third_resistance;
    /// Third temperature; allowed 213.15 to 573.15 (-60 °C to 300 °C).
    kelvin third_temperature;
    /// A resistance to be turned into a temperature with the fit; allowed 1 to 1e7; NaN means: none asked.
    ohm resistance;
};

struct thermistor_fit_output {
    /// Coefficient A.
    per_kelvin coefficient_a;
    /// Coefficient B, of ln R.
    per_kelvin coefficient_b;
    /// Coefficient C, of (ln R)³.
    per_kelvin coefficient_c;
    /// Temperature for the resistance asked; NaN means: no resistance was asked for, or the curve has no
    /// temperature there.
    kelvin temperature;
};

/// Steinhart-Hart coefficients from three points; see fw_thermistor_fit for settings, accuracy, cautions and sources.
/// The three-term curve through three points of resistance and temperature, and the temperature it
/// gives for another resistance.
inline thermistor_fit_output thermistor_fit(const thermistor_fit_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_thermistor_fit_output, thermistor_fit_output, fw_thermistor_fit_input>(
        input, [&](const fw_thermistor_fit_input *given, fw_thermistor_fit_output *made) { return fw_thermistor_fit(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<thermistor_fit_output> thermistor_fit_batch(const std::vector<thermistor_fit_input> &inputs)
{
    rows<thermistor_fit_output> made{std::vector<thermistor_fit_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_thermistor_fit_batch(inputs.size(), reinterpret_cast<const fw_thermistor_fit_input *>(inputs.data()),
        sizeof(thermistor_fit_input), reinterpret_cast<fw_thermistor_fit_output *>(made.outputs.data()), sizeof(thermistor_fit_output), made.status.data()));
    return made;
}

struct thermocouple_temperature_input {
    /// Voltage at the meter; allowed -0.015 to 0.08 (-15 mV to 80 mV); usually -0.002 to 0.025 (-2 mV to 25
    /// mV).
    volt voltage;
    /// Temperature where the couple joins the copper of the meter; allowed 233.15 to 353.15 (-40 °C to 80
    /// °C); usually 273.15 to 313.15 (0 °C to 40 °C).
    kelvin reference_junction_temperature;
};

struct thermocouple_temperature_output {
    /// EMF of the reference junction, which is added to the voltage.
    volt reference_junction_emf;
    /// EMF of the measuring junction, referred to 0 °C.
    volt emf;
    /// Temperature of the measuring junction.
    kelvin temperature;
    /// Seebeck coefficient there.
    volt_per_kelvin seebeck_coefficient;
    /// Error made by whoever looks the voltage up in the table and adds the temperature of the reference
    /// junction; NaN means: the voltage alone has no temperature.
    kelvin_difference addition_error;
    /// Half-width of the tolerance of the class at this temperature; NaN means: no class was named, or the
    /// type has no such class.
    kelvin_difference tolerance;
};

/// Temperature of a thermocouple; see fw_thermocouple_temperature for settings, accuracy, cautions and sources.
/// Temperature of the measuring junction from the voltage at the meter and the temperature of the
/// reference junction, whose EMF is added.
inline thermocouple_temperature_output thermocouple_temperature(const context &settings, const thermocouple_temperature_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_thermocouple_temperature_output, thermocouple_temperature_output, fw_thermocouple_temperature_input>(
        input, [&](const fw_thermocouple_temperature_input *given, fw_thermocouple_temperature_output *made) { return fw_thermocouple_temperature(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<thermocouple_temperature_output> thermocouple_temperature_batch(const context &settings, const std::vector<thermocouple_temperature_input> &inputs)
{
    rows<thermocouple_temperature_output> made{std::vector<thermocouple_temperature_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_thermocouple_temperature_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_thermocouple_temperature_input *>(inputs.data()),
        sizeof(thermocouple_temperature_input), reinterpret_cast<fw_thermocouple_temperature_output *>(made.outputs.data()), sizeof(thermocouple_temperature_output), made.status.data()));
    return made;
}

struct thermocouple_voltage_input {
    /// Temperature of the measuring junction; allowed 3.15 to 2093.15 (-270 °C to 1820 °C); usually 253.15
    /// to 873.15 (-20 °C to 600 °C).
    kelvin temperature;
    /// Temperature where the couple joins the copper of the meter; allowed 233.15 to 353.15 (-40 °C to 80
    /// °C); usually 273.15 to 313.15 (0 °C to 40 °C); default 273.15 (0 °C).
    kelvin reference_junction_temperature{273.15};
};

struct thermocouple_voltage_output {
    /// Voltage at the meter.
    volt voltage;
    /// EMF of the measuring junction, referred to 0 °C.
    volt emf;
    /// EMF of the reference junction, which is taken off it.
    volt reference_junction_emf;
    /// Seebeck coefficient at the measuring junction.
    volt_per_kelvin seebeck_coefficient;
    /// Half-width of the tolerance of the class at this temperature; NaN means: no class was named, or the
    /// type has no such class.
    kelvin_difference tolerance;
};

/// Voltage of a thermocouple; see fw_thermocouple_voltage for settings, accuracy, cautions and sources.
/// Voltage to expect at the meter for the temperatures of both junctions.
inline thermocouple_voltage_output thermocouple_voltage(const context &settings, const thermocouple_voltage_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_thermocouple_voltage_output, thermocouple_voltage_output, fw_thermocouple_voltage_input>(
        input, [&](const fw_thermocouple_voltage_input *given, fw_thermocouple_voltage_output *made) { return fw_thermocouple_voltage(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<thermocouple_voltage_output> thermocouple_voltage_batch(const context &settings, const std::vector<thermocouple_voltage_input> &inputs)
{
    rows<thermocouple_voltage_output> made{std::vector<thermocouple_voltage_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_thermocouple_voltage_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_thermocouple_voltage_input *>(inputs.data()),
        sizeof(thermocouple_voltage_input), reinterpret_cast<fw_thermocouple_voltage_output *>(made.outputs.data()), sizeof(thermocouple_voltage_output), made.status.data()));
    return made;
}

struct thermostat_differential_input {
    /// Operating value on rising temperature: the burner stops; allowed 253.15 to 473.15 (-20 °C to 200
    /// °C); usually 293.15 to 373.15 (20 °C to 100 °C).
    kelvin cut_out_temperature;
    /// Operating value on falling temperature: the burner lights again; allowed 253.15 to 473.15 (-20 °C to
    /// 200 °C); usually 283.15 to 368.15 (10 °C to 95 °C).
    kelvin cut_in_temperature;
};

struct thermostat_differential_output {
    /// Difference of the two operating values.
    kelvin_difference differential;
    /// Middle between them.
    kelvin mid_point;
};

/// Differential of a thermostat; see fw_thermostat_differential for settings, accuracy, cautions and sources.
/// Differential and mid-point from the temperature at which a thermostat opens and the one at which it
/// closes again.
inline thermostat_differential_output thermostat_differential(const thermostat_differential_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_thermostat_differential_output, thermostat_differential_output, fw_thermostat_differential_input>(
        input, [&](const fw_thermostat_differential_input *given, fw_thermostat_differential_output *made) { return fw_thermostat_differential(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<thermostat_differential_output> thermostat_differential_batch(const std::vector<thermostat_differential_input> &inputs)
{
    rows<thermostat_differential_output> made{std::vector<thermostat_differential_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_thermostat_differential_batch(inputs.size(), reinterpret_cast<const fw_thermostat_differential_input *>(inputs.data()),
        sizeof(thermostat_differential_input), reinterpret_cast<fw_thermostat_differential_output *>(made.outputs.data()), sizeof(thermostat_differential_output), made.status.data()));
    return made;
}

struct thermostat_test_input {
    /// Temperature the thermostat is set to; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN means: not
    /// stated.
    kelvin set_point;
};

struct thermostat_test_output {
    /// Mean operating value on rising temperature: the burner stops.
    kelvin cut_out;
    /// Mean operating value on falling temperature: the burner lights again.
    kelvin cut_in;
    /// Differential: cut-out less cut-in, a difference and not a temperature.
    kelvin_difference differential;
    /// Middle between cut-out and cut-in.
    kelvin mid_point;
    /// Cut-out less set point; NaN means: no set point was stated.
    kelvin_difference offset;
    /// Repeatability of the cut-out: experimental standard deviation of one reading; NaN means: fewer than
    /// two readings.
    kelvin_difference cut_out_repeatability;
    /// Repeatability of the cut-in; NaN means: fewer than two readings.
    kelvin_difference cut_in_repeatability;
    /// Standard uncertainty of the mean cut-out, type A; NaN means: fewer than two readings.
    kelvin_difference cut_out_uncertainty;
    /// Standard uncertainty of the mean cut-in, type A; NaN means: fewer than two readings.
    kelvin_difference cut_in_uncertainty;
    /// Highest less lowest cut-out.
    kelvin_difference cut_out_spread;
    /// Highest less lowest cut-in.
    kelvin_difference cut_in_spread;
    /// Drift of the cut-out from one cycle to the next, from a straight line through the readings in their
    /// order; NaN means: fewer than two readings.
    kelvin_difference cut_out_drift;
    /// Drift of the cut-in from one cycle to the next; NaN means: fewer than two readings.
    kelvin_difference cut_in_drift;
    /// Standard uncertainty of the drift of the cut-out per cycle; NaN means: fewer than three readings.
    kelvin_difference cut_out_drift_uncertainty;
};

/// Thermostat test; see fw_thermostat_test for settings, accuracy, cautions and sources.
/// Cut-out, cut-in, differential, repeatability and drift of a control thermostat from repeated
/// readings. Not for judging a limit thermostat.
inline thermostat_test_output thermostat_test(const context &settings, const thermostat_test_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_thermostat_test_output, thermostat_test_output, fw_thermostat_test_input>(
        input, [&](const fw_thermostat_test_input *given, fw_thermostat_test_output *made) { return fw_thermostat_test(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<thermostat_test_output> thermostat_test_batch(const context &settings, const std::vector<thermostat_test_input> &inputs)
{
    rows<thermostat_test_output> made{std::vector<thermostat_test_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_thermostat_test_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_thermostat_test_input *>(inputs.data()),
        sizeof(thermostat_test_input), reinterpret_cast<fw_thermostat_test_output *>(made.outputs.data()), sizeof(thermostat_test_output), made.status.data()));
    return made;
}

struct u_gauge_input {
    /// How far the liquid fell in the limb that is joined to the gas; negative for a suction; allowed -1 to
    /// 1 (-1000 mm to 1000 mm); usually -0.15 to 0.3 (-150 mm to 300 mm).
    metre_one_limb limb_down;
    /// How far the liquid rose in the limb that is open to the air; negative for a suction; allowed -1 to 1
    /// (-1000 mm to 1000 mm); usually -0.15 to 0.3 (-150 mm to 300 mm).
    metre_one_limb limb_up;
    /// Temperature of the liquid; allowed 273.15 to 333.15 (0 °C to 60 °C); usually 275.15 to 308.15 (2 °C
    /// to 35 °C); default 293.15 (20 °C).
    kelvin liquid_temperature{293.15};
    /// Acceleration of gravity at the place; allowed 9.7 to 9.9; usually 9.78 to 9.84; default 9.80665.
    metre_per_second_squared gravity{9.80665};
    /// Pressure of the atmosphere, which decides the weight of the air column in the open limb; allowed
    /// 50000 to 110000 (500 mbar to 1100 mbar); usually 80000 to 105000 (800 mbar to 1050 mbar); default
    /// 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
};

struct u_gauge_output {
    /// Level difference that balances the pressure.
    metre_both_limbs level_difference;
    /// Density of the liquid at its temperature.
    kilogram_per_cubic_metre liquid_density;
    /// Pressure above the atmosphere by the weight of the liquid alone, with its true density and local
    /// gravity.
    pascal_gauge pressure;
    /// The same less the weight of the air that stands in the place of the liquid in the other limb.
    pascal_gauge pressure_less_air;
    /// What the same reading is in conventional units of water column: 1000 kg/m³ and standard gravity.
    pascal_gauge pressure_conventional;
    /// Share by which the conventional figure is too high; NaN means: no level difference.
    ratio convention_error;
};

/// U-gauge, both limbs; see fw_u_gauge for settings, accuracy, cautions and sources.
/// Gauge pressure from how far the liquid fell in one limb and rose in the other. Both are asked for,
/// since one alone is half the pressure.
inline u_gauge_output u_gauge(const context &settings, const u_gauge_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_u_gauge_output, u_gauge_output, fw_u_gauge_input>(
        input, [&](const fw_u_gauge_input *given, fw_u_gauge_output *made) { return fw_u_gauge(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<u_gauge_output> u_gauge_batch(const context &settings, const std::vector<u_gauge_input> &inputs)
{
    rows<u_gauge_output> made{std::vector<u_gauge_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_u_gauge_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_u_gauge_input *>(inputs.data()),
        sizeof(u_gauge_input), reinterpret_cast<fw_u_gauge_output *>(made.outputs.data()), sizeof(u_gauge_output), made.status.data()));
    return made;
}

struct vent_free_area_input {
    /// Width over all of the opening in the wall or of the grille's core; allowed 0.001 to 10 (1 mm to
    /// 10000 mm); usually 0.05 to 1 (50 mm to 1000 mm).
    metre width;
    /// Height over all; allowed 0.001 to 10 (1 mm to 10000 mm); usually 0.05 to 1 (50 mm to 1000 mm).
    metre height;
    /// Number of like openings within; allowed 1 to 100000; NaN means: a free share is stated.
    ratio opening_count;
    /// Width of one opening, clear; allowed 0.0001 to 10 (0.1 mm to 10000 mm); NaN means: a free share is
    /// stated.
    metre opening_width;
    /// Height of one opening, clear; allowed 0.0001 to 10 (0.1 mm to 10000 mm); NaN means: a free share is
    /// stated.
    metre opening_height;
    /// Free over overall area as its maker states it; leave it out where the openings are measured; allowed
    /// 0.01 to 1 (1 % to 100 %); usually 0.2 to 0.9 (20 % to 90 %); NaN means: the openings are measured.
    ratio free_share;
};

struct vent_free_area_output {
    /// Overall area, which says nothing of the air that passes.
    square_metre_overall overall_area;
    /// Free area: the sum of the openings.
    square_metre_free free_area;
    /// Free over overall area.
    ratio free_share;
};

/// Free area of a ventilator; see fw_vent_free_area for settings, accuracy, cautions and sources.
/// Free area of a ventilator from its openings or from its maker's share, kept apart from its overall
/// area.
inline vent_free_area_output vent_free_area(const vent_free_area_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_vent_free_area_output, vent_free_area_output, fw_vent_free_area_input>(
        input, [&](const fw_vent_free_area_input *given, fw_vent_free_area_output *made) { return fw_vent_free_area(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<vent_free_area_output> vent_free_area_batch(const std::vector<vent_free_area_input> &inputs)
{
    rows<vent_free_area_output> made{std::vector<vent_free_area_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_vent_free_area_batch(inputs.size(), reinterpret_cast<const fw_vent_free_area_input *>(inputs.data()),
        sizeof(vent_free_area_input), reinterpret_cast<fw_vent_free_area_output *>(made.outputs.data()), sizeof(vent_free_area_output), made.status.data()));
    return made;
}

struct opening_flow_input {
    /// Free area: the sum of the openings as measured; allowed 1e-6 to 100 (1 mm² to 1e8 mm²); usually
    /// 0.0005 to 0.2 (500 mm² to 200000 mm²).
    square_metre_free free_area;
    /// Pressure difference across the opening; allowed 0.01 to 500; usually 1 to 50.
    pascal pressure_difference;
    /// Discharge coefficient of the opening; 0.61 for a sharp edge, less for grilles and meshes; allowed
    /// 0.05 to 1; usually 0.25 to 0.75; default 0.61.
    ratio discharge_coefficient{0.61};
    /// Discharge coefficient of the sharp edge that defines equivalent area; allowed 0.55 to 0.65; default
    /// 0.61.
    ratio sharp_edge_coefficient{0.61};
    /// Density of the air; allowed 0.3 to 2; usually 0.9 to 1.35; default 1.2041.
    kilogram_per_cubic_metre air_density{1.2041};
};

struct opening_flow_output {
    /// Flow of air.
    cubic_metre_per_second air_flow;
    /// Equivalent area.
    square_metre_equivalent equivalent_area;
    /// Mean velocity over the free area.
    metre_per_second mean_velocity;
};

/// Air through an opening; see fw_opening_flow for settings, accuracy, cautions and sources.
/// Air that passes an opening of a free area at a pressure difference, and its equivalent area.
inline opening_flow_output opening_flow(const opening_flow_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_opening_flow_output, opening_flow_output, fw_opening_flow_input>(
        input, [&](const fw_opening_flow_input *given, fw_opening_flow_output *made) { return fw_opening_flow(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<opening_flow_output> opening_flow_batch(const std::vector<opening_flow_input> &inputs)
{
    rows<opening_flow_output> made{std::vector<opening_flow_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_opening_flow_batch(inputs.size(), reinterpret_cast<const fw_opening_flow_input *>(inputs.data()),
        sizeof(opening_flow_input), reinterpret_cast<fw_opening_flow_output *>(made.outputs.data()), sizeof(opening_flow_output), made.status.data()));
    return made;
}

struct opening_size_input {
    /// Flow of air wanted; allowed 2.777778e-6 to 277.7778 (0.01 m³/h to 1000000 m³/h); usually
    /// 0.0002777778 to 0.2777778 (1 m³/h to 1000 m³/h).
    cubic_metre_per_second air_flow;
    /// Pressure difference that may be used up; allowed 0.01 to 500; usually 1 to 50.
    pascal pressure_difference;
    /// Discharge coefficient of the opening; 0.61 for a sharp edge, less for grilles and meshes; allowed
    /// 0.05 to 1; usually 0.25 to 0.75; default 0.61.
    ratio discharge_coefficient{0.61};
    /// Discharge coefficient of the sharp edge that defines equivalent area; allowed 0.55 to 0.65; default
    /// 0.61.
    ratio sharp_edge_coefficient{0.61};
    /// Density of the air; allowed 0.3 to 2; usually 0.9 to 1.35; default 1.2041.
    kilogram_per_cubic_metre air_density{1.2041};
};

struct opening_size_output {
    /// Free area needed.
    square_metre_free free_area;
    /// Equivalent area needed.
    square_metre_equivalent equivalent_area;
};

/// Opening for a flow of air; see fw_opening_size for settings, accuracy, cautions and sources.
/// Free and equivalent area that pass a flow of air at a pressure difference.
inline opening_size_output opening_size(const opening_size_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_opening_size_output, opening_size_output, fw_opening_size_input>(
        input, [&](const fw_opening_size_input *given, fw_opening_size_output *made) { return fw_opening_size(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<opening_size_output> opening_size_batch(const std::vector<opening_size_input> &inputs)
{
    rows<opening_size_output> made{std::vector<opening_size_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_opening_size_batch(inputs.size(), reinterpret_cast<const fw_opening_size_input *>(inputs.data()),
        sizeof(opening_size_input), reinterpret_cast<fw_opening_size_output *>(made.outputs.data()), sizeof(opening_size_output), made.status.data()));
    return made;
}

struct ventilation_need_input {
    /// Heat input on the net basis; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1 kW
    /// to 200 kW); NaN means: stated on another basis.
    watt_net heat_input_net;
    /// Heat input on the gross basis; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1
    /// kW to 200 kW); NaN means: stated on another basis.
    watt_gross heat_input_gross;
    /// Nominal heat output; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1 kW to 200
    /// kW); NaN means: stated on another basis.
    watt heat_output;
    /// Rating that the rule leaves free; allowed 0 to 1e7 (0 kW to 10000 kW); default 0 (0 kW).
    watt threshold{0.0};
    /// Area for each kilowatt above the threshold; allowed 0 to 0.001 (0 mm²/kW to 1000000 mm²/kW); NaN
    /// means: the rule asks for no opening.
    square_metre_per_watt area_rate;
    /// Least area whatever the rating; allowed 0 to 100 (0 mm² to 1e8 mm²); default 0 (0 mm²).
    square_metre minimum_area{0.0};
    /// Room volume for each kilowatt above the threshold; allowed 0 to 1 (0 m³/kW to 1000 m³/kW); NaN
    /// means: the rule asks for no room volume.
    cubic_metre_per_watt room_volume_rate;
    /// Air flow for each kilowatt above the threshold; allowed 0 to 0.0002777778 (0 m³/(h·kW) to 1000
    /// m³/(h·kW)); NaN means: the rule asks for no air flow.
    cubic_metre_per_joule air_flow_rate;
};

struct ventilation_need_output {
    /// Rating on the basis of the rule, above the threshold.
    watt rating_above_threshold;
    /// Free area of each opening asked for; NaN means: the rule asks for no free area.
    square_metre_free free_area;
    /// Equivalent area of each opening asked for; NaN means: the rule asks for no equivalent area.
    square_metre_equivalent equivalent_area;
    /// Room volume asked for; NaN means: the rule asks for no room volume.
    cubic_metre room_volume;
    /// Air flow asked for; NaN means: the rule asks for no air flow.
    cubic_metre_per_second air_flow;
};

/// Ventilation by a rule; see fw_ventilation_need for settings, accuracy, cautions and sources.
/// Opening, room volume or air flow that a building rule of the caller's asks for, on the rating basis
/// the rule counts. No rule is built in.
inline ventilation_need_output ventilation_need(const context &settings, const ventilation_need_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_ventilation_need_output, ventilation_need_output, fw_ventilation_need_input>(
        input, [&](const fw_ventilation_need_input *given, fw_ventilation_need_output *made) { return fw_ventilation_need(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<ventilation_need_output> ventilation_need_batch(const context &settings, const std::vector<ventilation_need_input> &inputs)
{
    rows<ventilation_need_output> made{std::vector<ventilation_need_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_ventilation_need_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_ventilation_need_input *>(inputs.data()),
        sizeof(ventilation_need_input), reinterpret_cast<fw_ventilation_need_output *>(made.outputs.data()), sizeof(ventilation_need_output), made.status.data()));
    return made;
}

struct room_concentration_input {
    /// Flow of the gas into the room; nought while it clears; allowed 0 to 0.2777778 (0 L/h to 1000000
    /// L/h); usually 0 to 0.0002777778 (0 L/h to 1000 L/h); default 0 (0 L/h).
    cubic_metre_per_second source{0.0};
    /// Volume of the room; allowed 0.1 to 1000000; usually 5 to 500.
    cubic_metre room_volume;
    /// Air changes; allowed 2.777778e-7 to 0.2777778 (0.001 1/h to 1000 1/h); usually 2.777778e-5 to
    /// 0.002777778 (0.1 1/h to 10 1/h).
    per_second air_change_rate;
    /// Share of the gas in the air that comes in; allowed 0 to 0.1 (0 ppm to 100000 ppm); default 0 (0
    /// ppm).
    ratio_wet background{0.0};
    /// Share of the gas in the room at the start; left out, the background; allowed 0 to 1 (0 ppm to
    /// 1000000 ppm); NaN means: the background.
    ratio_wet initial;
    /// Time from the start; allowed 0 to 3.6e7 (0 h to 10000 h); usually 0 to 172800 (0 h to 48 h).
    second elapsed_time;
    /// Share whose time is asked for; allowed 0 to 1 (0 ppm to 1000000 ppm); NaN means: none asked for.
    ratio_wet level;
};

struct room_concentration_output {
    /// Share of the gas in the room after the time.
    ratio_wet concentration;
    /// Share of the gas in the room after a very long time.
    ratio_wet steady;
    /// Time in which the way to the steady share shrinks to 37 %.
    second time_constant;
    /// Share of the way to the steady share made after the time.
    ratio completion;
    /// Mean share over the time.
    ratio_wet mean;
    /// Time at which the level asked for is met; NaN means: never reached, or none asked for.
    second time_to_level;
};

/// Gas in a ventilated room; see fw_room_concentration for settings, accuracy, cautions and sources.
/// Build-up and clearing of carbon monoxide, carbon dioxide or any gas in a well-mixed room with a
/// steady source and air change.
inline room_concentration_output room_concentration(const room_concentration_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_room_concentration_output, room_concentration_output, fw_room_concentration_input>(
        input, [&](const fw_room_concentration_input *given, fw_room_concentration_output *made) { return fw_room_concentration(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<room_concentration_output> room_concentration_batch(const std::vector<room_concentration_input> &inputs)
{
    rows<room_concentration_output> made{std::vector<room_concentration_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_room_concentration_batch(inputs.size(), reinterpret_cast<const fw_room_concentration_input *>(inputs.data()),
        sizeof(room_concentration_input), reinterpret_cast<fw_room_concentration_output *>(made.outputs.data()), sizeof(room_concentration_output), made.status.data()));
    return made;
}

struct natural_draught_input {
    /// Height of the flue outlet above its inlet; allowed 0 to 200; usually 1 to 30.
    metre height;
    /// Temperature of the outdoor air; allowed 223.15 to 333.15 (-50 °C to 60 °C); usually 253.15 to 308.15
    /// (-20 °C to 35 °C).
    kelvin outdoor_temperature;
    /// Mean temperature of the gas in the flue; allowed 223.15 to 1273.15 (-50 °C to 1000 °C); usually
    /// 313.15 to 523.15 (40 °C to 250 °C).
    kelvin mean_flue_temperature;
    /// Barometric pressure at the place; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    /// 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Specific gas constant of the outdoor air; allowed 270 to 310; default 288.
    joule_per_kilogram_kelvin air_gas_constant{288.0};
    /// Specific gas constant of the gas in the flue; allowed 250 to 350; default 300.
    joule_per_kilogram_kelvin flue_gas_constant{300.0};
    /// Pressure that flow through flue, appliance and air openings takes; allowed 0 to 1000; usually 0 to
    /// 50; default 0.
    pascal pressure_loss{0.0};
};

struct natural_draught_output {
    /// Density of the outdoor air.
    kilogram_per_cubic_metre air_density;
    /// Mean density of the gas in the flue.
    kilogram_per_cubic_metre flue_density;
    /// Draught at rest.
    pascal draught;
    /// Draught left after the pressure loss.
    pascal net_draught;
    /// Mean flue temperature at which the draught at rest turns.
    kelvin reversal_flue_temperature;
    /// Outdoor temperature at which the net draught turns; warmer outdoors it pushes down; NaN means: a
    /// flue without height has no draught to turn.
    kelvin reversal_outdoor_temperature;
};

/// Natural draught of a flue; see fw_natural_draught for settings, accuracy, cautions and sources.
/// Draught from height, mean flue temperature, outdoor temperature and barometer, what is left after
/// losses, and the temperatures at which it turns.
inline natural_draught_output natural_draught(const natural_draught_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_natural_draught_output, natural_draught_output, fw_natural_draught_input>(
        input, [&](const fw_natural_draught_input *given, fw_natural_draught_output *made) { return fw_natural_draught(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<natural_draught_output> natural_draught_batch(const std::vector<natural_draught_input> &inputs)
{
    rows<natural_draught_output> made{std::vector<natural_draught_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_natural_draught_batch(inputs.size(), reinterpret_cast<const fw_natural_draught_input *>(inputs.data()),
        sizeof(natural_draught_input), reinterpret_cast<fw_natural_draught_output *>(made.outputs.data()), sizeof(natural_draught_output), made.status.data()));
    return made;
}

struct flue_flow_input {
    /// Velocity; leave it out to state a mass flow; allowed 0 to 50; usually 0.3 to 10; NaN means: a mass
    /// flow is stated.
    metre_per_second velocity;
    /// Mass flow; leave it out to state a velocity; allowed 0 to 1000; NaN means: a velocity is stated.
    kilogram_per_second mass_flow;
    /// Mean temperature of the flue gas; allowed 223.15 to 1273.15 (-50 °C to 1000 °C); usually 313.15 to
    /// 523.15 (40 °C to 250 °C).
    kelvin mean_flue_temperature;
    /// Specific gas constant of the flue gas; allowed 250 to 350; default 300.
    joule_per_kilogram_kelvin flue_gas_constant{300.0};
    /// Absolute pressure in the flue, which is the barometer's; allowed 50000 to 110000 (500 mbar to 1100
    /// mbar); usually 94000 to 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
    /// Bore of the flue (hydraulic diameter); allowed 0.02 to 10 (20 mm to 10000 mm); usually 0.06 to 0.4
    /// (60 mm to 400 mm).
    metre bore;
    /// Length of the flue; allowed 0 to 1000; usually 0.5 to 50.
    metre length;
    /// Friction factor (Darcy); left out, from the roughness; allowed 0.005 to 1; NaN means: from the
    /// roughness.
    ratio friction_factor;
    /// Roughness of the inner wall; allowed 0 to 0.02 (0 mm to 20 mm); usually 5e-5 to 0.005 (0.05 mm to 5
    /// mm); default 0.001 (1 mm).
    metre roughness{0.001};
    /// Sum of the loss coefficients of bends, inlet and outlet; allowed 0 to 1000; usually 0 to 20; default
    /// 0.
    ratio loss_coefficient{0.0};
};

struct flue_flow_output {
    /// Density of the flue gas.
    kilogram_per_cubic_metre flue_density;
    /// Velocity.
    metre_per_second velocity;
    /// Mass flow.
    kilogram_per_second mass_flow;
    /// Reynolds number.
    ratio reynolds_number;
    /// Friction factor (Darcy) used; NaN means: no flow.
    ratio friction_factor;
    /// Pressure lost by friction and at the fittings.
    pascal pressure_loss;
};

/// Velocity and pressure loss in a flue; see fw_flue_flow for settings, accuracy, cautions and sources.
/// Mass flow, velocity and pressure lost by friction and fittings in a flue at a mean temperature.
inline flue_flow_output flue_flow(const flue_flow_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_flue_flow_output, flue_flow_output, fw_flue_flow_input>(
        input, [&](const fw_flue_flow_input *given, fw_flue_flow_output *made) { return fw_flue_flow(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<flue_flow_output> flue_flow_batch(const std::vector<flue_flow_input> &inputs)
{
    rows<flue_flow_output> made{std::vector<flue_flow_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_flue_flow_batch(inputs.size(), reinterpret_cast<const fw_flue_flow_input *>(inputs.data()),
        sizeof(flue_flow_input), reinterpret_cast<fw_flue_flow_output *>(made.outputs.data()), sizeof(flue_flow_output), made.status.data()));
    return made;
}

struct chimney_draught_input {
    /// Mass flow of flue gas, with the air drawn in at a draught diverter; allowed 1e-5 to 100; usually
    /// 0.002 to 0.2.
    kilogram_per_second mass_flow;
    /// Temperature of the flue gas at the inlet of the chimney; allowed 273.15 to 1273.15 (0 °C to 1000
    /// °C); usually 313.15 to 523.15 (40 °C to 250 °C).
    kelvin inlet_temperature;
    /// Temperature of the outdoor air; allowed 223.15 to 333.15 (-50 °C to 60 °C); usually 253.15 to 308.15
    /// (-20 °C to 35 °C).
    kelvin outdoor_temperature;
    /// Mean temperature of the air around the chimney; left out, that outdoors; allowed 223.15 to 373.15
    /// (-50 °C to 100 °C); NaN means: that outdoors.
    kelvin surrounding_temperature;
    /// Height of the outlet above the inlet; allowed 0.1 to 200; usually 1 to 30.
    metre height;
    /// Length of the flue; left out, the height; allowed 0.1 to 500; NaN means: the height.
    metre length;
    /// Bore (hydraulic diameter); allowed 0.02 to 5 (20 mm to 5000 mm); usually 0.06 to 0.4 (60 mm to 400
    /// mm).
    metre bore;
    /// Outside diameter; left out, the bore; allowed 0.02 to 10 (20 mm to 10000 mm); NaN means: the bore.
    metre outside_diameter;
    /// Thermal resistance of the wall on its inner surface; allowed 0 to 10; usually 0 to 1; default 0.
    square_metre_kelvin_per_watt thermal_resistance{0.0};
    /// Coefficient of heat transfer at the outside; allowed 0.5 to 200; usually 5 to 30; default 8.
    watt_per_square_metre_kelvin external_coefficient{8.0};
    /// Share of the wall's resistance that counts while the wall still warms; 1 when settled; allowed 0 to
    /// 1; default 1.
    ratio instability_factor{1.0};
    /// Roughness of the inner wall; allowed 0 to 0.02 (0 mm to 20 mm); usually 5e-5 to 0.005 (0.05 mm to 5
    /// mm); default 0.001 (1 mm).
    metre roughness{0.001};
    /// Sum of the loss coefficients of bends, inlet and outlet; allowed 0 to 1000; usually 0 to 20; default
    /// 0.
    ratio loss_coefficient{0.0};
    /// Factor by which the loss of the flue is raised for safety; allowed 1 to 3; default 1.
    ratio flow_safety_factor{1.0};
    /// Draught that appliance, connecting pipe and air supply need; allowed 0 to 200; usually 0 to 30;
    /// default 0.
    pascal draught_needed{0.0};
    /// Specific heat capacity of the flue gas; allowed 950 to 1500; usually 1000 to 1250; default 1100.
    joule_per_kilogram_kelvin specific_heat_capacity{1100.0};
    /// Specific gas constant of the flue gas; allowed 250 to 350; default 300.
    joule_per_kilogram_kelvin flue_gas_constant{300.0};
    /// Specific gas constant of the outdoor air; allowed 270 to 310; default 288.
    joule_per_kilogram_kelvin air_gas_constant{288.0};
    /// Share of water vapour in the flue gas as it is in the chimney; allowed 0 to 0.4 (0 % to 40 %);
    /// usually 0.02 to 0.2 (2 % to 20 %); NaN means: not stated.
    ratio_wet water_vapour;
    /// Barometric pressure at the place; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to
    /// 105000 (940 mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
};

struct chimney_draught_output {
    /// Internal coefficient of heat transfer.
    watt_per_square_metre_kelvin internal_coefficient;
    /// Coefficient of heat transmission on the inner surface.
    watt_per_square_metre_kelvin transmission_coefficient;
    /// Cooling number.
    ratio cooling_number;
    /// Mean temperature of the flue gas.
    kelvin mean_flue_temperature;
    /// Temperature of the flue gas at the outlet.
    kelvin outlet_temperature;
    /// Temperature of the inner wall at the outlet, the wall settled.
    kelvin outlet_wall_temperature;
    /// Mean density of the flue gas.
    kilogram_per_cubic_metre flue_density;
    /// Mean velocity of the flue gas.
    metre_per_second velocity;
    /// Reynolds number.
    ratio reynolds_number;
    /// Draught at rest.
    pascal draught;
    /// Loss of the flue with its safety factor.
    pascal pressure_loss;
    /// Draught at the inlet of the chimney.
    pascal net_draught;
    /// Draught left over what is needed.
    pascal spare_draught;
    /// Outdoor temperature at which nothing would be left over, this mean flue temperature kept.
    kelvin reversal_outdoor_temperature;
    /// Dew point of the water vapour; NaN means: no water vapour stated, or a dew point below freezing.
    kelvin dew_point;
    /// Inner wall at the outlet above the dew point; negative where it is wet; NaN means: no dew point.
    kelvin_difference dew_point_margin;
    /// Length from the inlet at which the wall begins to be wet; NaN means: the wall stays dry, or no dew
    /// point.
    metre wet_from;
};

/// Draught and cooling of a chimney; see fw_chimney_draught for settings, accuracy, cautions and sources.
/// Cooling of the flue gas with height, draught, loss and what is left, wall temperature at the outlet
/// and whether and where the wall is wet.
inline chimney_draught_output chimney_draught(const chimney_draught_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_chimney_draught_output, chimney_draught_output, fw_chimney_draught_input>(
        input, [&](const fw_chimney_draught_input *given, fw_chimney_draught_output *made) { return fw_chimney_draught(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<chimney_draught_output> chimney_draught_batch(const std::vector<chimney_draught_input> &inputs)
{
    rows<chimney_draught_output> made{std::vector<chimney_draught_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_chimney_draught_batch(inputs.size(), reinterpret_cast<const fw_chimney_draught_input *>(inputs.data()),
        sizeof(chimney_draught_input), reinterpret_cast<fw_chimney_draught_output *>(made.outputs.data()), sizeof(chimney_draught_output), made.status.data()));
    return made;
}

struct flue_gas_flow_input {
    /// Heat input on the net basis; allowed 10 to 1e8 (0.01 kW to 100000 kW); usually 1000 to 200000 (1 kW
    /// to 200 kW).
    watt_net heat_input_net;
    /// Air in the flue over the air needed, with what a draught diverter draws in; allowed 1 to 50; usually
    /// 1.1 to 6.
    ratio excess_air_ratio;
    /// Temperature of the flue gas, for its heat capacity and volume; allowed 273.15 to 1273.15 (0 °C to
    /// 1000 °C); usually 313.15 to 523.15 (40 °C to 250 °C); default 373.15 (100 °C).
    kelvin flue_temperature{373.15};
    /// Temperature of the air that is drawn in; allowed 253.15 to 333.15 (-20 °C to 60 °C); usually 263.15
    /// to 308.15 (-10 °C to 35 °C); default 288.15 (15 °C).
    kelvin air_temperature{288.15};
    /// Relative humidity of that air; allowed 0 to 1 (0 % to 100 %); default 0.6 (60 %).
    ratio air_relative_humidity{0.6};
    /// Barometric pressure; allowed 50000 to 110000 (500 mbar to 1100 mbar); usually 94000 to 105000 (940
    /// mbar to 1050 mbar); default 101325 (1013.25 mbar).
    pascal_absolute barometric_pressure{101325.0};
};

struct flue_gas_flow_output {
    /// Mass flow.
    kilogram_per_second mass_flow;
    /// Volume flow at the flue temperature and the barometer.
    cubic_metre_per_second volume_flow;
    /// Specific gas constant.
    joule_per_kilogram_kelvin flue_gas_constant;
    /// Specific heat capacity at constant pressure.
    joule_per_kilogram_kelvin specific_heat_capacity;
    /// Share of water vapour.
    ratio_wet water_vapour;
    /// Dew point of that vapour; NaN means: below freezing.
    kelvin dew_point;
};

/// Flue gas of a heat input; see fw_flue_gas_flow for settings, accuracy, cautions and sources.
/// Mass and volume flow, gas constant, heat capacity, water vapour and dew point of the flue gas that a
/// burner and its dilution air send up the flue.
inline flue_gas_flow_output flue_gas_flow(const context &settings, const flue_gas_flow_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_flue_gas_flow_output, flue_gas_flow_output, fw_flue_gas_flow_input>(
        input, [&](const fw_flue_gas_flow_input *given, fw_flue_gas_flow_output *made) { return fw_flue_gas_flow(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<flue_gas_flow_output> flue_gas_flow_batch(const context &settings, const std::vector<flue_gas_flow_input> &inputs)
{
    rows<flue_gas_flow_output> made{std::vector<flue_gas_flow_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_flue_gas_flow_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_flue_gas_flow_input *>(inputs.data()),
        sizeof(flue_gas_flow_input), reinterpret_cast<fw_flue_gas_flow_output *>(made.outputs.data()), sizeof(flue_gas_flow_output), made.status.data()));
    return made;
}

} // namespace flamewright

#endif // FLAMEWRIGHT_HPP
