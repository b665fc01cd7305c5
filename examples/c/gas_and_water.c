/* A boiler's gas rate from the meter, and the water it heats. The readings are invented.
 *
 * Build with what pkg-config says:
 *     cc gas_and_water.c $(pkg-config --cflags --libs flamewright) -o gas_and_water
 */
#include <flamewright.h>
#include <stdio.h>

static int refused(const char *what)
{
    fprintf(stderr, "%s: %s\n", what, fw_error_message());
    return 1;
}

int main(void)
{
    fw_gas_rate_input reading;
    fw_gas_rate_output rate;
    fw_notices notices;
    fw_liquid_water_input state;
    fw_liquid_water_output water;
    char *answer = NULL;

    if (fw_abi_version() != FW_ABI_VERSION) {
        fprintf(stderr, "header and library do not belong together\n");
        return 1;
    }

    /* 0.100 m3 in 2 min 5 s, at 21 mbar and 12 degC; plate 27.0 kW net. Everything is SI. */
    fw_gas_rate_unset(&reading);
    reading.volume = 0.100;
    reading.time = 2 * 60 + 5;
    reading.gas_pressure = 21 * 100.0;
    reading.gas_temperature = 12 + 273.15;
    reading.barometric_pressure = 1004 * 100.0;
    reading.gross_calorific_value = 38.9e6;
    reading.net_calorific_value = 35.1e6;
    reading.plate_heat_input_net = 27.0e3;
    if (fw_gas_rate(NULL, &reading, &rate, &notices) != FW_OK) {
        return refused("gas rate");
    }
    printf("gas rate          %6.3f m3/h at the meter\n", rate.gas_rate * 3600);
    printf("heat input        %6.2f kW net, %.2f kW gross\n", rate.heat_input_net / 1e3, rate.heat_input_gross / 1e3);
    printf("share of plate    %6.1f %%\n", rate.share_of_plate_net * 100);

    fw_liquid_water_unset(&state);
    state.temperature = 62 + 273.15;
    if (fw_liquid_water(&state, &water, NULL) != FW_OK) {
        return refused("water");
    }
    printf("water at 62 degC  %6.2f kg/m3, %.1f J/(kg K)\n", water.density, water.specific_heat_capacity);

    /* A slip is refused in words: the pressure is missing its scale. */
    reading.barometric_pressure = 1004;
    if (fw_gas_rate(NULL, &reading, &rate, NULL) == FW_OK) {
        fprintf(stderr, "a barometer of 10 mbar was taken for true\n");
        return 1;
    }
    printf("refused           %s\n", fw_error_message());

    /* The same library by text: units in the values. */
    if (fw_evaluate_json("{\"calculation\": \"liquid_water\", \"temperature\": \"62 degC\", \"pressure\": \"1.5 bar\"}", &answer) != FW_OK) {
        fw_string_free(answer);
        return refused("call");
    }
    printf("%.60s...\n", answer);
    fw_string_free(answer);
    return 0;
}
