// A boiler's gas rate from the meter, and the water it heats, in C++17. The readings are invented.
//
// Build with what pkg-config says:
//     c++ -std=c++17 gas_and_water.cpp $(pkg-config --cflags --libs flamewright) -o gas_and_water
#include <flamewright.hpp>
#include <cstdio>

using namespace flamewright;

int main()
{
    if (!abi_fits()) {
        std::fputs("header and library do not belong together\n", stderr);
        return 1;
    }
    try {
        gas_rate_input reading;
        reading.volume = cubic_metre_at_the_meter{0.100};
        reading.time = second{125};
        reading.gas_pressure = pascal_gauge{21 * units::millibar};
        reading.gas_temperature = kelvin{12 * units::celsius};
        reading.barometric_pressure = pascal_absolute{1004 * units::millibar};
        reading.gross_calorific_value = joule_per_cubic_metre_gross{38.9 * units::megajoule_per_cubic_metre};
        reading.net_calorific_value = joule_per_cubic_metre_net{35.1 * units::megajoule_per_cubic_metre};
        reading.plate_heat_input_net = watt_net{27.0 * units::kilowatt};
        // reading.gas_pressure = reading.barometric_pressure;  does not compile: absolute is not gauge

        const context settings("gas_rate", R"({"reference": "15/15"})");
        const gas_rate_output rate = gas_rate(settings, reading);
        std::printf("heat input      %.2f kW net, %.2f kW gross\n", rate.heat_input_net.si() / units::kilowatt,
                    rate.heat_input_gross.si() / units::kilowatt);

        std::vector<liquid_water_input> states(5);
        for (std::size_t i = 0; i < states.size(); i++) {
            states[i].temperature = kelvin{(20.0 + 20.0 * static_cast<double>(i)) * units::celsius};
        }
        states[3].temperature = kelvin{-4 * units::celsius};
        const rows<liquid_water_output> water = liquid_water_batch(states);
        for (std::size_t i = 0; i < states.size(); i++) {
            if (water.status[i] < FW_ROW_FIELD) {
                std::printf("water at %3.0f degC %.2f kg/m3\n", states[i].temperature.si() / units::celsius, water.outputs[i].density.si());
            } else {
                std::printf("water at %3.0f degC refused\n", states[i].temperature.si() / units::celsius);
            }
        }

        // A refusal as a value.
        reading.gas_temperature = kelvin{12};
        const auto tried = attempt([&] { return gas_rate(settings, reading); });
        if (const auto *refusal = std::get_if<error>(&tried)) {
            std::printf("refused         %s\n", refusal->what());
            return 0;
        }
        std::fputs("gas at 12 K was taken for true\n", stderr);
        return 1;
    } catch (const error &refusal) {
        std::fprintf(stderr, "%s: %s\n", refusal.field().c_str(), refusal.what());
        return 1;
    }
}
