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
struct cubic_metre_per_second;
struct cubic_metre_per_second_at_reference_conditions;
struct cubic_metre_per_second_at_the_meter;
struct joule;
struct joule_per_cubic_metre_gross;
struct joule_per_cubic_metre_net;
struct joule_per_kelvin;
struct joule_per_kilogram;
struct joule_per_kilogram_gross;
struct joule_per_kilogram_kelvin;
struct joule_per_kilogram_net;
struct joule_per_metre_kelvin;
struct joule_per_mole_gross;
struct joule_per_mole_net;
struct kelvin;
struct kelvin_difference;
struct kilogram;
struct kilogram_per_cubic_metre;
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
struct second;
struct square_metre;
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
/// Volume flow, SI.
using cubic_metre_per_second = quantity<tag::cubic_metre_per_second>;
/// Volume flow (at reference conditions), SI.
using cubic_metre_per_second_at_reference_conditions = quantity<tag::cubic_metre_per_second_at_reference_conditions>;
/// Volume flow (at the meter), SI.
using cubic_metre_per_second_at_the_meter = quantity<tag::cubic_metre_per_second_at_the_meter>;
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
/// Time, SI.
using second = quantity<tag::second>;
/// Area, SI.
using square_metre = quantity<tag::square_metre>;
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
inline rows<fuel_properties_output> fuel_properties(const context &settings, const std::vector<fuel_properties_input> &inputs)
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
inline rows<gas_properties_output> gas_properties(const context &settings, const std::vector<gas_properties_input> &inputs)
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
inline rows<atmospheric_pressure_output> atmospheric_pressure(const std::vector<atmospheric_pressure_input> &inputs)
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
    /// usually 0.99 to 1.01; default 1.
    ratio compression_ratio{1.0};
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
    ratio share_of_plate_gross;
    /// Net heat input over that of the plate; uncorrected where the gas conditions are not known; NaN
    /// means: no plate value or calorific value on the net basis.
    ratio share_of_plate_net;
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
inline rows<gas_rate_output> gas_rate(const context &settings, const std::vector<gas_rate_input> &inputs)
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
inline rows<gas_rate_uncertainty_output> gas_rate_uncertainty(const context &settings, const std::vector<gas_rate_uncertainty_input> &inputs)
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
inline rows<gas_rate_test_time_output> gas_rate_test_time(const std::vector<gas_rate_test_time_input> &inputs)
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
inline rows<gas_energy_output> gas_energy(const std::vector<gas_energy_input> &inputs)
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
inline rows<metering_reference_change_output> metering_reference_change(const std::vector<metering_reference_change_input> &inputs)
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
inline rows<wobbe_index_output> wobbe_index(const std::vector<wobbe_index_input> &inputs)
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
inline rows<liquid_water_output> liquid_water(const std::vector<liquid_water_input> &inputs)
{
    rows<liquid_water_output> made{std::vector<liquid_water_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_liquid_water_batch(inputs.size(), reinterpret_cast<const fw_liquid_water_input *>(inputs.data()),
        sizeof(liquid_water_input), reinterpret_cast<fw_liquid_water_output *>(made.outputs.data()), sizeof(liquid_water_output), made.status.data()));
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
    /// Heat capacity of pipe and water per length; allowed 1 to 100000; usually 200 to 10000.
    joule_per_metre_kelvin pipe_heat_capacity;
    /// Heat loss of the pipe per length and kelvin over the room; allowed 0 to 50; usually 0.05 to 5.
    watt_per_metre_kelvin_of_length pipe_loss;
    /// Output of the emitter of the main circuit at 50 K over the room; zero for a bypass; allowed 0 to
    /// 1000000; usually 0 to 40000; default 0.
    watt emitter_output{0.0};
    /// Exponent of that emitter (EN 442); 1.3 is common for radiators; allowed 1 to 2; usually 1 to 1.5;
    /// default 1.3.
    ratio emitter_exponent{1.3};
    /// Heat capacity of that emitter with its water; allowed 10 to 1e8 (0.01 kJ/K to 100000 kJ/K); NaN
    /// means: no emitter.
    joule_per_kelvin emitter_heat_capacity;
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
    kelvin outside_temperature{278.15};
    /// Temperature of the block at the start; allowed 273.15 to 423.15 (0 °C to 150 °C); usually 278.15 to
    /// 383.15 (5 °C to 110 °C).
    kelvin block_temperature;
    /// Temperature of pipes and emitters at the start; allowed 243.15 to 423.15 (-30 °C to 150 °C); NaN
    /// means: as the block.
    kelvin circuit_temperature;
    /// Temperature to be reached at the point watched; allowed 243.15 to 423.15 (-30 °C to 150 °C); usually
    /// 293.15 to 368.15 (20 °C to 95 °C).
    kelvin target_temperature;
};

struct cool_down_output {
    /// Time until the target is reached; NaN means: never.
    second time;
    /// Temperature of the water coming back to the block at that moment; NaN means: no flow, or never.
    kelvin return_temperature;
    /// Heat that block, pipes and emitters have released by then; NaN means: never.
    joule heat_released;
    /// Heat given off by the casing; NaN means: never.
    joule casing_heat;
    /// Heat given off by the pipes of all circuits; NaN means: never.
    joule pipe_heat;
    /// Heat given off by the emitters of all circuits; NaN means: never.
    joule emitter_heat;
    /// Heat that block, pipes and emitters still hold over the room; NaN means: never.
    joule heat_left;
    /// Temperature at the point watched after an endless time; NaN means: none: heat is put in and none is
    /// lost.
    kelvin steady_temperature;
    /// Share by which heat put in, stored and given off fail to balance; NaN means: never.
    ratio imbalance;
    /// Time until the target is reached with the circuits in their second state; NaN means: no circuit
    /// changes over, or never.
    second time_after;
    /// Heat given off by the emitters by then; NaN means: no circuit changes over, or never.
    joule emitter_heat_after;
    /// Temperature after an endless time in that state; NaN means: no circuit changes over, or none.
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
inline rows<cool_down_output> cool_down(const context &settings, const std::vector<cool_down_input> &inputs)
{
    rows<cool_down_output> made{std::vector<cool_down_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_cool_down_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_cool_down_input *>(inputs.data()),
        sizeof(cool_down_input), reinterpret_cast<fw_cool_down_output *>(made.outputs.data()), sizeof(cool_down_output), made.status.data()));
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
inline rows<installation_volume_output> installation_volume(const context &settings, const std::vector<installation_volume_input> &inputs)
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
    joule_per_cubic_metre_gross calorific_value_gross;
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
inline rows<tightness_test_output> tightness_test(const std::vector<tightness_test_input> &inputs)
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
inline rows<tightness_plan_output> tightness_plan(const std::vector<tightness_plan_input> &inputs)
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
inline rows<let_by_output> let_by(const std::vector<let_by_input> &inputs)
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
    /// Density over that of air of the gas tested with; 1 for air; allowed 0.05 to 5; default 1.
    ratio test_relative_density{1.0};
    /// Density over that of air of the gas in operation; allowed 0.05 to 5; default 1.
    ratio operating_relative_density{1.0};
    /// Viscosity of the gas tested with; left out, that of air; allowed 1e-6 to 0.0001; NaN means: that of
    /// air.
    pascal_second test_viscosity;
    /// Viscosity of the gas in operation; left out, that of air; allowed 1e-6 to 0.0001; NaN means: that of
    /// air.
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
    /// Viscosity of air at the temperature.
    pascal_second air_viscosity;
    /// Density of air at the temperature and one standard atmosphere.
    kilogram_per_cubic_metre air_density;
};

/// A leak at another pressure or with another gas; see fw_leak_scaling for settings, accuracy, cautions and sources.
/// What a leak measured at test pressure, perhaps with air, would be at operating pressure with the
/// gas: as a fine seep and as a hole, between which the truth lies.
inline leak_scaling_output leak_scaling(const leak_scaling_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_leak_scaling_output, leak_scaling_output, fw_leak_scaling_input>(
        input, [&](const fw_leak_scaling_input *given, fw_leak_scaling_output *made) { return fw_leak_scaling(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<leak_scaling_output> leak_scaling(const std::vector<leak_scaling_input> &inputs)
{
    rows<leak_scaling_output> made{std::vector<leak_scaling_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_leak_scaling_batch(inputs.size(), reinterpret_cast<const fw_leak_scaling_input *>(inputs.data()),
        sizeof(leak_scaling_input), reinterpret_cast<fw_leak_scaling_output *>(made.outputs.data()), sizeof(leak_scaling_output), made.status.data()));
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
inline rows<purge_output> purge(const std::vector<purge_input> &inputs)
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
inline rows<purge_velocity_output> purge_velocity(const std::vector<purge_velocity_input> &inputs)
{
    rows<purge_velocity_output> made{std::vector<purge_velocity_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_purge_velocity_batch(inputs.size(), reinterpret_cast<const fw_purge_velocity_input *>(inputs.data()),
        sizeof(purge_velocity_input), reinterpret_cast<fw_purge_velocity_output *>(made.outputs.data()), sizeof(purge_velocity_output), made.status.data()));
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
/// the surface temperature solved.
inline pipe_heat_loss_output pipe_heat_loss(const context &settings, const pipe_heat_loss_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_pipe_heat_loss_output, pipe_heat_loss_output, fw_pipe_heat_loss_input>(
        input, [&](const fw_pipe_heat_loss_input *given, fw_pipe_heat_loss_output *made) { return fw_pipe_heat_loss(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<pipe_heat_loss_output> pipe_heat_loss(const context &settings, const std::vector<pipe_heat_loss_input> &inputs)
{
    rows<pipe_heat_loss_output> made{std::vector<pipe_heat_loss_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_pipe_heat_loss_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_pipe_heat_loss_input *>(inputs.data()),
        sizeof(pipe_heat_loss_input), reinterpret_cast<fw_pipe_heat_loss_output *>(made.outputs.data()), sizeof(pipe_heat_loss_output), made.status.data()));
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
inline rows<block_cool_down_output> block_cool_down(const std::vector<block_cool_down_input> &inputs)
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
inline rows<burner_cycling_output> burner_cycling(const std::vector<burner_cycling_input> &inputs)
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
inline rows<tube_run_output> tube_run(const context &settings, const std::vector<tube_run_input> &inputs)
{
    rows<tube_run_output> made{std::vector<tube_run_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_tube_run_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_tube_run_input *>(inputs.data()),
        sizeof(tube_run_input), reinterpret_cast<fw_tube_run_output *>(made.outputs.data()), sizeof(tube_run_output), made.status.data()));
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
inline rows<flow_from_heat_output> flow_from_heat(const context &settings, const std::vector<flow_from_heat_input> &inputs)
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
inline rows<heat_from_flow_output> heat_from_flow(const context &settings, const std::vector<heat_from_flow_input> &inputs)
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
};

/// Emitter output at another condition; see fw_emitter_output for settings, accuracy, cautions and sources.
/// What a radiator rated at one flow, return and room temperature gives at another.
inline emitter_output_output emitter_output(const context &settings, const emitter_output_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_emitter_output_output, emitter_output_output, fw_emitter_output_input>(
        input, [&](const fw_emitter_output_input *given, fw_emitter_output_output *made) { return fw_emitter_output(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<emitter_output_output> emitter_output(const context &settings, const std::vector<emitter_output_input> &inputs)
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
inline rows<emitter_at_flow_output> emitter_at_flow(const context &settings, const std::vector<emitter_at_flow_input> &inputs)
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
inline rows<water_pressure_drop_output> water_pressure_drop(const context &settings, const std::vector<water_pressure_drop_input> &inputs)
{
    rows<water_pressure_drop_output> made{std::vector<water_pressure_drop_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_water_pressure_drop_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_water_pressure_drop_input *>(inputs.data()),
        sizeof(water_pressure_drop_input), reinterpret_cast<fw_water_pressure_drop_output *>(made.outputs.data()), sizeof(water_pressure_drop_output), made.status.data()));
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
inline rows<static_head_output> static_head(const context &settings, const std::vector<static_head_input> &inputs)
{
    rows<static_head_output> made{std::vector<static_head_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_static_head_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_static_head_input *>(inputs.data()),
        sizeof(static_head_input), reinterpret_cast<fw_static_head_output *>(made.outputs.data()), sizeof(static_head_output), made.status.data()));
    return made;
}

struct injector_flow_input {
    /// Diameter of the injector bore; allowed 0.0001 to 0.1 (0.1 mm to 100 mm); usually 0.0003 to 0.01 (0.3
    /// mm to 10 mm).
    metre injector_diameter;
    /// Gauge pressure before the injector; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to 6000
    /// (1 mbar to 60 mbar).
    pascal_gauge burner_pressure;
    /// Density of the gas over that of air; allowed 0.05 to 5; usually 0.3 to 2.2.
    ratio relative_density;
    /// Discharge coefficient of the injector; allowed 0.1 to 1.2; usually 0.6 to 1.
    ratio discharge_coefficient;
    /// Density of air at the conditions to which the flow is stated; allowed 0.3 to 2; usually 0.9 to 1.35;
    /// default 1.225.
    kilogram_per_cubic_metre air_density{1.225};
    /// Number of like injectors; allowed 1 to 1000; default 1.
    ratio injector_count{1.0};
    /// Gross calorific value at the conditions to which the flow is stated; allowed 1000000 to 2e8 (1 MJ/m³
    /// to 200 MJ/m³); NaN means: not stated.
    joule_per_cubic_metre_gross calorific_value_gross;
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
    /// Heat input on the gross basis; NaN means: no calorific value stated.
    watt_gross heat_input_gross;
};

/// Gas through an injector; see fw_injector_flow for settings, accuracy, cautions and sources.
/// Flow and heat input of burner injectors from bore, pressure, discharge coefficient and relative
/// density.
inline injector_flow_output injector_flow(const injector_flow_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_injector_flow_output, injector_flow_output, fw_injector_flow_input>(
        input, [&](const fw_injector_flow_input *given, fw_injector_flow_output *made) { return fw_injector_flow(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<injector_flow_output> injector_flow(const std::vector<injector_flow_input> &inputs)
{
    rows<injector_flow_output> made{std::vector<injector_flow_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_injector_flow_batch(inputs.size(), reinterpret_cast<const fw_injector_flow_input *>(inputs.data()),
        sizeof(injector_flow_input), reinterpret_cast<fw_injector_flow_output *>(made.outputs.data()), sizeof(injector_flow_output), made.status.data()));
    return made;
}

struct injector_size_input {
    /// Heat input wanted, gross; leave it out to state a flow; allowed 10 to 1e7 (0.01 kW to 10000 kW);
    /// usually 100 to 200000 (0.1 kW to 200 kW); NaN means: a flow is stated.
    watt_gross heat_input_gross;
    /// Gross calorific value, needed with a heat input; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); NaN
    /// means: a flow is stated.
    joule_per_cubic_metre_gross calorific_value_gross;
    /// Flow wanted, at the conditions of the air density stated; leave it out to state a heat input;
    /// allowed 2.777778e-9 to 2.777778 (0.00001 m³/h to 10000 m³/h); NaN means: a heat input is stated.
    cubic_metre_per_second gas_flow;
    /// Gauge pressure before the injector; allowed 1 to 50000 (0.01 mbar to 500 mbar); usually 100 to 6000
    /// (1 mbar to 60 mbar).
    pascal_gauge burner_pressure;
    /// Density of the gas over that of air; allowed 0.05 to 5; usually 0.3 to 2.2.
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
inline injector_size_output injector_size(const injector_size_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_injector_size_output, injector_size_output, fw_injector_size_input>(
        input, [&](const fw_injector_size_input *given, fw_injector_size_output *made) { return fw_injector_size(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<injector_size_output> injector_size(const std::vector<injector_size_input> &inputs)
{
    rows<injector_size_output> made{std::vector<injector_size_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_injector_size_batch(inputs.size(), reinterpret_cast<const fw_injector_size_input *>(inputs.data()),
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
    /// Gross calorific value of the gas known; allowed 1000000 to 2e8 (1 MJ/m³ to 200 MJ/m³); default 3.9e7
    /// (39 MJ/m³).
    joule_per_cubic_metre_gross calorific_value_gross{39000000.0};
    /// Gross calorific value of the new gas; left out, the same; allowed 1000000 to 2e8 (1 MJ/m³ to 200
    /// MJ/m³); NaN means: unchanged.
    joule_per_cubic_metre_gross new_calorific_value_gross;
    /// Relative density of the gas known; allowed 0.05 to 5; default 0.6.
    ratio relative_density{0.6};
    /// Relative density of the new gas; left out, the same; allowed 0.05 to 5; NaN means: unchanged.
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
    joule_per_cubic_metre_gross wobbe_index_gross;
    /// Gross Wobbe index of the new gas.
    joule_per_cubic_metre_gross new_wobbe_index_gross;
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
inline burner_pressure_output burner_pressure(const burner_pressure_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_burner_pressure_output, burner_pressure_output, fw_burner_pressure_input>(
        input, [&](const fw_burner_pressure_input *given, fw_burner_pressure_output *made) { return fw_burner_pressure(given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<burner_pressure_output> burner_pressure(const std::vector<burner_pressure_input> &inputs)
{
    rows<burner_pressure_output> made{std::vector<burner_pressure_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_burner_pressure_batch(inputs.size(), reinterpret_cast<const fw_burner_pressure_input *>(inputs.data()),
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
inline rows<altitude_output> altitude(const std::vector<altitude_input> &inputs)
{
    rows<altitude_output> made{std::vector<altitude_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_altitude_batch(inputs.size(), reinterpret_cast<const fw_altitude_input *>(inputs.data()),
        sizeof(altitude_input), reinterpret_cast<fw_altitude_output *>(made.outputs.data()), sizeof(altitude_output), made.status.data()));
    return made;
}

struct absolute_pressure_input {
    /// Pressure above the atmosphere; negative below it; allowed -110000 to 1e7 (-1100 mbar to 100000
    /// mbar).
    pascal_gauge gauge_pressure;
    /// Pressure of the atmosphere at the place, not reduced to sea level; allowed 50000 to 110000 (500 mbar
    /// to 1100 mbar); usually 80000 to 105000 (800 mbar to 1050 mbar).
    pascal_absolute barometer;
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
inline rows<absolute_pressure_output> absolute_pressure(const std::vector<absolute_pressure_input> &inputs)
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
inline rows<analyser_reading_output> analyser_reading(const std::vector<analyser_reading_input> &inputs)
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
inline rows<flame_supervision_voltage_output> flame_supervision_voltage(const std::vector<flame_supervision_voltage_input> &inputs)
{
    rows<flame_supervision_voltage_output> made{std::vector<flame_supervision_voltage_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_flame_supervision_voltage_batch(inputs.size(), reinterpret_cast<const fw_flame_supervision_voltage_input *>(inputs.data()),
        sizeof(flame_supervision_voltage_input), reinterpret_cast<fw_flame_supervision_voltage_output *>(made.outputs.data()), sizeof(flame_supervision_voltage_output), made.status.data()));
    return made;
}

struct gas_mass_concentration_input {
    /// Share by volume, dry or wet as it was measured; the concentration stands on the same basis; allowed
    /// 0 to 1 (0 ppm to 1000000 ppm); usually 0 to 0.005 (0 ppm to 5000 ppm).
    ratio volume_fraction;
    /// Temperature to which the cubic metre refers; allowed 223.15 to 1773.15 (-50 °C to 1500 °C); usually
    /// 273.15 to 298.15 (0 °C to 25 °C).
    kelvin temperature;
    /// Pressure to which the cubic metre refers; allowed 30000 to 200000 (300 mbar to 2000 mbar); usually
    /// 80000 to 105000 (800 mbar to 1050 mbar).
    pascal_absolute pressure;
};

struct gas_mass_concentration_output {
    /// Mass of the gas per volume of the mixture.
    kilogram_per_cubic_metre mass_concentration;
};

/// Mass concentration of a gas; see fw_gas_mass_concentration for settings, accuracy, cautions and sources.
/// Milligrams per cubic metre from parts per million at a stated temperature and pressure.
inline gas_mass_concentration_output gas_mass_concentration(const context &settings, const gas_mass_concentration_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_mass_concentration_output, gas_mass_concentration_output, fw_gas_mass_concentration_input>(
        input, [&](const fw_gas_mass_concentration_input *given, fw_gas_mass_concentration_output *made) { return fw_gas_mass_concentration(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_mass_concentration_output> gas_mass_concentration(const context &settings, const std::vector<gas_mass_concentration_input> &inputs)
{
    rows<gas_mass_concentration_output> made{std::vector<gas_mass_concentration_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_mass_concentration_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_gas_mass_concentration_input *>(inputs.data()),
        sizeof(gas_mass_concentration_input), reinterpret_cast<fw_gas_mass_concentration_output *>(made.outputs.data()), sizeof(gas_mass_concentration_output), made.status.data()));
    return made;
}

struct gas_volume_fraction_input {
    /// Mass of the gas per volume of the mixture; the share stands on the same basis, dry or wet; allowed 0
    /// to 5 (0 mg/m³ to 5000000 mg/m³); usually 0 to 0.01 (0 mg/m³ to 10000 mg/m³).
    kilogram_per_cubic_metre mass_concentration;
    /// Temperature to which the cubic metre refers; allowed 223.15 to 1773.15 (-50 °C to 1500 °C); usually
    /// 273.15 to 298.15 (0 °C to 25 °C).
    kelvin temperature;
    /// Pressure to which the cubic metre refers; allowed 30000 to 200000 (300 mbar to 2000 mbar); usually
    /// 80000 to 105000 (800 mbar to 1050 mbar).
    pascal_absolute pressure;
};

struct gas_volume_fraction_output {
    /// Share by volume.
    ratio volume_fraction;
};

/// Volume fraction of a gas; see fw_gas_volume_fraction for settings, accuracy, cautions and sources.
/// Parts per million from milligrams per cubic metre at a stated temperature and pressure.
inline gas_volume_fraction_output gas_volume_fraction(const context &settings, const gas_volume_fraction_input &input, fw_notices *notices = nullptr)
{
    return detail::one<fw_gas_volume_fraction_output, gas_volume_fraction_output, fw_gas_volume_fraction_input>(
        input, [&](const fw_gas_volume_fraction_input *given, fw_gas_volume_fraction_output *made) { return fw_gas_volume_fraction(settings.get(), given, made, notices); });
}

/// The same over many inputs; no row is lost.
inline rows<gas_volume_fraction_output> gas_volume_fraction(const context &settings, const std::vector<gas_volume_fraction_input> &inputs)
{
    rows<gas_volume_fraction_output> made{std::vector<gas_volume_fraction_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_gas_volume_fraction_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_gas_volume_fraction_input *>(inputs.data()),
        sizeof(gas_volume_fraction_input), reinterpret_cast<fw_gas_volume_fraction_output *>(made.outputs.data()), sizeof(gas_volume_fraction_output), made.status.data()));
    return made;
}

struct inclined_gauge_input {
    /// Movement of the liquid along the tube, positive for a pressure and negative for a draught; allowed
    /// -2 to 2 (-2000 mm to 2000 mm).
    metre length;
    /// Angle of the tube to the horizontal; allowed 0.01745329 to 1.570796 (1 ° to 90 °); usually
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
inline rows<inclined_gauge_output> inclined_gauge(const std::vector<inclined_gauge_input> &inputs)
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
    pascal_absolute barometer{101325.0};
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
inline rows<liquid_column_output> liquid_column(const context &settings, const std::vector<liquid_column_input> &inputs)
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
inline rows<local_gravity_output> local_gravity(const std::vector<local_gravity_input> &inputs)
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
inline rows<platinum_resistance_output> platinum_resistance(const context &settings, const std::vector<platinum_resistance_input> &inputs)
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
inline rows<platinum_temperature_output> platinum_temperature(const context &settings, const std::vector<platinum_temperature_input> &inputs)
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
inline rows<thermistor_beta_output> thermistor_beta(const std::vector<thermistor_beta_input> &inputs)
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
inline rows<thermistor_beta_of_points_output> thermistor_beta_of_points(const std::vector<thermistor_beta_of_points_input> &inputs)
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
inline rows<thermistor_temperature_output> thermistor_temperature(const context &settings, const std::vector<thermistor_temperature_input> &inputs)
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
inline rows<thermistor_check_output> thermistor_check(const context &settings, const std::vector<thermistor_check_input> &inputs)
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
inline rows<thermistor_fit_output> thermistor_fit(const std::vector<thermistor_fit_input> &inputs)
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
inline rows<thermocouple_temperature_output> thermocouple_temperature(const context &settings, const std::vector<thermocouple_temperature_input> &inputs)
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
inline rows<thermocouple_voltage_output> thermocouple_voltage(const context &settings, const std::vector<thermocouple_voltage_input> &inputs)
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
inline rows<thermostat_differential_output> thermostat_differential(const std::vector<thermostat_differential_input> &inputs)
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
inline rows<thermostat_test_output> thermostat_test(const context &settings, const std::vector<thermostat_test_input> &inputs)
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
    pascal_absolute barometer{101325.0};
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
inline rows<u_gauge_output> u_gauge(const context &settings, const std::vector<u_gauge_input> &inputs)
{
    rows<u_gauge_output> made{std::vector<u_gauge_output>(inputs.size()), std::vector<std::uint16_t>(inputs.size())};
    detail::check(fw_u_gauge_batch(settings.get(), inputs.size(), reinterpret_cast<const fw_u_gauge_input *>(inputs.data()),
        sizeof(u_gauge_input), reinterpret_cast<fw_u_gauge_output *>(made.outputs.data()), sizeof(u_gauge_output), made.status.data()));
    return made;
}

} // namespace flamewright

#endif // FLAMEWRIGHT_HPP
