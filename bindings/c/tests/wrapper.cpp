// The C++ wrapper: types that do not mix, refusals as exceptions and as values, handles that free themselves.
#include <flamewright.hpp>
#include <cstdio>
#include <cstdlib>
#include <type_traits>

#define CHECK(condition)                                                            \
    do {                                                                            \
        if (!(condition)) {                                                         \
            std::fprintf(stderr, "%s:%d: does not hold: %s\n", __FILE__, __LINE__, #condition); \
            std::exit(EXIT_FAILURE);                                                \
        }                                                                           \
    } while (0)

using namespace flamewright;

// What must not compile does not.
static_assert(!std::is_convertible<double, kelvin>::value, "a bare number is no quantity");
static_assert(!std::is_assignable<pascal_gauge &, pascal_absolute>::value, "gauge is not absolute");
static_assert(!std::is_constructible<watt_gross, watt_net>::value, "gross is not net");
static_assert(!std::is_assignable<kelvin &, kelvin_difference>::value, "a difference is no temperature");
static_assert(!std::is_copy_constructible<context>::value && std::is_move_constructible<context>::value, "one owner");
static_assert(kelvin{62 * units::celsius}.si() == 62 + 273.15, "units are worked out by the compiler");

int main()
{
    CHECK(abi_fits() && version() == fw_version());

    liquid_water_input input;
    CHECK(!input.temperature.given() && input.pressure == pascal_absolute{2 * units::bar});
    try {
        liquid_water(input);
        CHECK(!"a missing temperature was let pass");
    } catch (const error &refusal) {
        CHECK(refusal.status() == FW_MISSING && refusal.field() == "temperature");
    }
    input.temperature = kelvin{60 * units::celsius};
    fw_notices notices{1, 1};
    const liquid_water_output one = liquid_water(input, &notices);
    CHECK(one.density.si() > 983.1 && one.density.si() < 983.3 && notices.unusual == 0);

    fw_liquid_water_input plain;
    fw_liquid_water_output made;
    CHECK(fw_liquid_water_unset(&plain) == FW_OK);
    plain.temperature = 60 + 273.15;
    CHECK(fw_liquid_water(&plain, &made, nullptr) == FW_OK && made.density == one.density.si());

    std::vector<liquid_water_input> many(3, input);
    many[1].temperature = kelvin{};
    const auto all = liquid_water_batch(many);
    CHECK(all.status[0] == FW_ROW_OK && all.status[1] == FW_ROW_FIELD && all.status[2] == FW_ROW_OK);
    CHECK(all.outputs[0].density == one.density && !all.outputs[1].density.given());
    CHECK(liquid_water_batch(std::vector<liquid_water_input>{}).outputs.empty());

    context gas("fuel_properties", R"({"fuel": "G20"})");
    context moved = std::move(gas);
    CHECK(fuel_properties(moved, {}).net_calorific_value.si() > 33.9e6);
    const auto wrong = attempt([] { return context("fuel_properties", R"({"fuel": "G2O"})"); });
    CHECK(std::holds_alternative<error>(wrong));
    const auto other = attempt([&] { return gas_rate(moved, {}); });
    CHECK(std::get<error>(other).status() == FW_WRONG_CONTEXT);

    CHECK(evaluate_json(R"({"calculation": "liquid_water", "temperature": "60 degC"})").find("density") != std::string::npos);
    CHECK(std::holds_alternative<error>(attempt([] { return evaluate_json("{"); })));
    CHECK(catalogue_json().find("liquid_water") != std::string::npos);
    std::puts("wrapper: passed");
    return 0;
}
