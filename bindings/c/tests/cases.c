/* Real cases and bad calls: every rule on top of the header, tried. */
#include "check.h"
#include <math.h>
#include <stdint.h>

static fw_liquid_water_input water(double celsius, double bar)
{
    fw_liquid_water_input input;
    CHECK(fw_liquid_water_unset(&input) == FW_OK);
    input.temperature = celsius + 273.15;
    input.pressure = bar * 1e5;
    return input;
}

static void versions_agree(void)
{
    CHECK(fw_abi_version() == FW_ABI_VERSION);
    CHECK(fw_version() != NULL && strchr(fw_version(), '.') != NULL);
}

/* IAPWS R7-97(2012), table 5: 300 K and 3 MPa in region 1. */
static void water_is_that_of_the_formulation(void)
{
    fw_liquid_water_input input = water(300.0 - 273.15, 30.0);
    fw_liquid_water_output output;
    CHECK(fw_liquid_water(&input, &output, NULL) == FW_OK);
    CHECK(fabs(output.density - 1.0 / 0.100215168e-2) < 1e-5);
    CHECK(fabs(output.specific_enthalpy - 115.331273e3) < 1e-2);
}

static void nothing_has_failed_yet(void)
{
    CHECK(fw_error_status() == FW_OK);
    CHECK(strcmp(fw_error_message(), "") == 0 && strcmp(fw_error_field(), "") == 0);
    CHECK(isnan(fw_error_value()));
}

static void defaults_are_written_and_the_rest_must_be_given(void)
{
    fw_liquid_water_input input;
    fw_liquid_water_output output;
    CHECK(fw_liquid_water_unset(&input) == FW_OK);
    CHECK(input.pressure == 2e5 && isnan(input.temperature));
    CHECK(fw_liquid_water(&input, &output, NULL) == FW_MISSING);
    CHECK(strcmp(fw_error_field(), "temperature") == 0);
    CHECK(fw_liquid_water_unset(NULL) == FW_NULL_POINTER);
}

static void a_refusal_says_why_and_writes_nothing(void)
{
    fw_liquid_water_input input = water(-3.0, 2.0);
    fw_liquid_water_output output, before;
    fw_notices notices = {7, 7};
    memset(&output, 0x5A, sizeof output);
    before = output;
    CHECK(fw_liquid_water(&input, &output, &notices) == FW_OUT_OF_RANGE);
    CHECK(memcmp(&output, &before, sizeof output) == 0);
    CHECK(notices.unusual == 7 && notices.raised == 7);
    CHECK(fw_error_status() == FW_OUT_OF_RANGE);
    CHECK(strcmp(fw_error_code(), "out_of_range") == 0);
    CHECK(strcmp(fw_error_field(), "temperature") == 0);
    CHECK(strcmp(fw_error_unit(), "\xC2\xB0""C") == 0);
    CHECK(fabs(fw_error_value() + 3.0) < 1e-9 && fw_error_minimum() == 0.0 && fw_error_maximum() == 350.0);
    CHECK(strstr(fw_error_message(), "is out of range") != NULL);

    /* A call that succeeds leaves the last error alone. */
    input = water(60.0, 2.0);
    CHECK(fw_liquid_water(&input, &output, &notices) == FW_OK);
    CHECK(fw_error_status() == FW_OUT_OF_RANGE);
    CHECK(notices.unusual == 0 && notices.raised == 0);

    input = water(150.0, 1.5);
    CHECK(fw_liquid_water(&input, &output, NULL) == FW_REFUSED);
    CHECK(strcmp(fw_error_code(), "WOULD_BOIL") == 0 && strcmp(fw_error_field(), "pressure") == 0);
    input.temperature = (double)INFINITY;
    CHECK(fw_liquid_water(&input, &output, NULL) == FW_NOT_FINITE);
}

static void an_unusual_reading_is_noticed(void)
{
    fw_liquid_water_input input = water(150.0, 20.0);
    fw_liquid_water_output output;
    fw_notices notices;
    double values[2];
    char *words = NULL;
    CHECK(fw_liquid_water(&input, &output, &notices) == FW_OK);
    CHECK(notices.unusual == 3);
    memcpy(values, &input, sizeof values);
    CHECK(fw_notices_json("liquid_water", &notices, values, 2, &words) == FW_OK);
    CHECK(strstr(words, "UNUSUAL") != NULL && strstr(words, "temperature") != NULL);
    fw_string_free(words);
    words = NULL;
    CHECK(fw_notices_json("liquid_water", &notices, values, 1, &words) == FW_WRONG_COUNT);
    CHECK(fw_notices_json("liquid_wotar", &notices, values, 2, &words) == FW_UNKNOWN_NAME);
    CHECK(strstr(fw_error_message(), "did you mean \"liquid_water\"") != NULL);
    CHECK(fw_notices_json("liquid_water", NULL, values, 2, &words) == FW_NULL_POINTER && words == NULL);
}

static void bad_pointers_are_statuses(void)
{
    fw_liquid_water_input input = water(60.0, 2.0);
    fw_liquid_water_output output;
    /* Room for an output struct that starts one byte late; never read as one. */
    unsigned char *room = malloc(sizeof output + 1);
    union { unsigned char *bytes; fw_liquid_water_output *output; fw_notices *notices; } late;
    CHECK(room != NULL);
    late.bytes = room + 1;
    CHECK(fw_liquid_water(NULL, &output, NULL) == FW_NULL_POINTER);
    CHECK(strcmp(fw_error_message(), "input is NULL") == 0 && strcmp(fw_error_code(), "call") == 0);
    CHECK(fw_liquid_water(&input, NULL, NULL) == FW_NULL_POINTER);
    CHECK(fw_liquid_water(&input, late.output, NULL) == FW_MISALIGNED);
    CHECK(fw_liquid_water(&input, &output, late.notices) == FW_MISALIGNED);
    free(room);
    CHECK(fw_catalogue_json(NULL) == FW_NULL_POINTER);
    fw_string_free(NULL);
    fw_context_free(NULL);
}

static void an_output_may_lie_over_the_input(void)
{
    union { fw_liquid_water_input input; fw_liquid_water_output output; } place;
    fw_liquid_water_input input = water(60.0, 2.0);
    fw_liquid_water_output output;
    CHECK(fw_liquid_water(&input, &output, NULL) == FW_OK);
    place.input = input;
    CHECK(fw_liquid_water(&place.input, &place.output, NULL) == FW_OK);
    CHECK(memcmp(&place.output, &output, sizeof output) == 0);
}

static void contexts_fix_settings(void)
{
    fw_context *context = NULL, *none = NULL;
    double input[2] = {60.0 + 273.15, 2e5}, output[8];
    fw_fuel_properties_input gas;
    fw_fuel_properties_output properties;
    CHECK(fw_context_new("liquid_water", NULL, &context) == FW_OK);
    CHECK(fw_evaluate(context, input, 2, output, 8, NULL) == FW_OK);
    CHECK(fabs(output[0] - 983.2) < 0.1);
    CHECK(fw_evaluate(context, input, 1, output, 8, NULL) == FW_WRONG_COUNT);
    CHECK(fw_evaluate(context, input, 2, output, 7, NULL) == FW_WRONG_COUNT);
    CHECK(fw_evaluate(NULL, input, 2, output, 8, NULL) == FW_NULL_POINTER);

    CHECK(fw_fuel_properties_unset(&gas) == FW_OK);
    CHECK(fw_fuel_properties(context, &gas, &properties, NULL) == FW_WRONG_CONTEXT);
    fw_context_free(context);

    CHECK(fw_context_new("fuel_properties", "{\"fuel\": \"G20\"}", &context) == FW_OK);
    CHECK(fw_fuel_properties(context, &gas, &properties, NULL) == FW_OK);
    /* EN 437: G20 is methane, 37.78 MJ/m3 gross and 34.02 net at 15/15 degC. */
    CHECK(fabs(properties.gross_calorific_value / 1e6 - 37.78) < 0.06);
    CHECK(fabs(properties.net_calorific_value / 1e6 - 34.02) < 0.06);
    fw_context_free(context);

    CHECK(fw_context_new("fuel_properties", "{\"fuel\": \"G20\", \"colour\": 1}", &none) == FW_UNKNOWN_NAME);
    CHECK(fw_context_new("fuel_properties", "{\"fuel\": ", &none) == FW_BAD_SETTING);
    CHECK(fw_context_new("fuel_properties", "\xFF\xFE", &none) == FW_NOT_UTF8);
    CHECK(fw_context_new(NULL, NULL, &none) == FW_NULL_POINTER);
    CHECK(fw_context_new("liquid_water", NULL, NULL) == FW_NULL_POINTER);
    CHECK(none == NULL);
}

enum { ROWS = 3000 };

static void batches_lose_no_row(void)
{
    struct row { fw_liquid_water_input input; char name[16]; fw_liquid_water_output output; };
    struct row *rows = calloc(ROWS, sizeof *rows);
    uint16_t *status = calloc(ROWS, sizeof *status);
    double *density = calloc(ROWS, sizeof *density), *others = calloc(ROWS * 7, sizeof *others);
    fw_context *context = NULL;
    const double pressure = 2e5;
    fw_column inputs[2];
    fw_column_out outputs[8];
    CHECK(rows && status && density && others);
    for (int i = 0; i < ROWS; i++) {
        rows[i].input = water(i % 7 == 3 ? -20.0 : 0.03 * i, 2.0);
        strcpy(rows[i].name, "kept");
    }
    CHECK(fw_liquid_water_batch(ROWS, &rows->input, sizeof *rows, &rows->output, sizeof *rows, status) == FW_OK);
    for (int i = 0; i < ROWS; i++) {
        fw_liquid_water_output one;
        fw_notices notices;
        CHECK(strcmp(rows[i].name, "kept") == 0);
        if (i % 7 == 3) {
            CHECK(status[i] == FW_ROW_FIELD + 0 && isnan(rows[i].output.density));
        } else {
            CHECK(fw_liquid_water(&rows[i].input, &one, &notices) == FW_OK);
            CHECK(memcmp(&rows[i].output, &one, sizeof one) == 0);
            CHECK(status[i] == (notices.unusual || notices.raised ? FW_ROW_NOTICE : FW_ROW_OK));
        }
    }

    /* The same by columns, with one pressure for all. */
    CHECK(fw_context_new("liquid_water", NULL, &context) == FW_OK);
    inputs[0].values = &rows->input.temperature;
    inputs[0].stride = sizeof *rows;
    inputs[1].values = &pressure;
    inputs[1].stride = 0;
    for (int i = 0; i < 8; i++) {
        outputs[i].values = i == 0 ? density : others + (i - 1) * ROWS;
        outputs[i].stride = sizeof(double);
    }
    CHECK(fw_evaluate_columns(context, ROWS, inputs, 2, outputs, 8, NULL) == FW_OK);
    for (int i = 0; i < ROWS; i++) {
        CHECK(same(density[i], rows[i].output.density));
        CHECK(same(others[6 * ROWS + i], rows[i].output.saturation_pressure));
    }
    /* Only one of the outputs, the others left alone. */
    memset(density, 0, ROWS * sizeof *density);
    memset(others, 0, 7 * ROWS * sizeof *others);
    for (int i = 1; i < 8; i++) {
        outputs[i].values = NULL;
    }
    CHECK(fw_evaluate_columns(context, ROWS, inputs, 2, outputs, 8, status) == FW_OK);
    for (int i = 0; i < ROWS; i++) {
        CHECK(same(density[i], rows[i].output.density));
        CHECK((status[i] >= FW_ROW_FIELD) == isnan(density[i]));
    }
    for (int i = 0; i < 7 * ROWS; i++) {
        CHECK(others[i] == 0.0);
    }
    for (int i = 1; i < 8; i++) {
        outputs[i].values = others + (i - 1) * ROWS;
    }
    CHECK(fw_evaluate_columns(context, ROWS, inputs, 1, outputs, 8, NULL) == FW_WRONG_COUNT);
    CHECK(fw_evaluate_columns(context, 0, inputs, 2, outputs, 8, NULL) == FW_OK);
    outputs[1].values = density;
    CHECK(fw_evaluate_columns(context, ROWS, inputs, 2, outputs, 8, NULL) == FW_OVERLAP);
    outputs[1].stride = 0;
    CHECK(fw_evaluate_columns(context, ROWS, inputs, 2, outputs, 8, NULL) == FW_BAD_STRIDE);
    fw_context_free(context);

    /* No rows, no pointers. */
    CHECK(fw_liquid_water_batch(0, NULL, 0, NULL, sizeof *rows, NULL) == FW_OK);
    CHECK(fw_liquid_water_batch(1, NULL, 0, &rows->output, sizeof *rows, NULL) == FW_NULL_POINTER);
    CHECK(fw_liquid_water_batch(ROWS, &rows->input, 12, &rows->output, sizeof *rows, NULL) == FW_BAD_STRIDE);
    CHECK(fw_liquid_water_batch(ROWS, &rows->input, 8, &rows->output, sizeof *rows, NULL) == FW_BAD_STRIDE);
    CHECK(fw_liquid_water_batch(ROWS, &rows->input, sizeof *rows, &rows->output, 0, NULL) == FW_BAD_STRIDE);
    CHECK(fw_liquid_water_batch(SIZE_MAX, &rows->input, 0, &rows->output, sizeof *rows, NULL) == FW_WRONG_COUNT);
    /* Row 0's output would lie over row 1's input. */
    CHECK(fw_liquid_water_batch(2, &rows[1].input, sizeof *rows, (fw_liquid_water_output *)(void *)&rows[2].input, sizeof *rows, NULL) == FW_OVERLAP);
    CHECK(fw_liquid_water_batch(ROWS, &rows->input, sizeof *rows, &rows->output, sizeof *rows, (uint16_t *)(void *)rows) == FW_OVERLAP);
    free(rows);
    free(status);
    free(density);
    free(others);
}

static void a_batch_may_work_in_place(void)
{
    union place { fw_liquid_water_input input; fw_liquid_water_output output; } places[40];
    fw_liquid_water_output one[40];
    for (int i = 0; i < 40; i++) {
        places[i].input = water(2.0 * i, 2.0);
        CHECK(fw_liquid_water(&places[i].input, &one[i], NULL) == FW_OK);
    }
    CHECK(fw_liquid_water_batch(40, &places->input, sizeof *places, &places->output, sizeof *places, NULL) == FW_OK);
    CHECK(sizeof *places == sizeof *one && memcmp(places, one, sizeof one) == 0);
}

static void json_calls_answer_either_way(void)
{
    char *answer = NULL;
    CHECK(fw_evaluate_json("{\"calculation\": \"liquid_water\", \"temperature\": \"60 degC\"}", &answer) == FW_OK);
    CHECK(strstr(answer, "\"density\"") != NULL && strstr(answer, "\"error\"") == NULL);
    fw_string_free(answer);
    answer = NULL;
    CHECK(fw_evaluate_json("{\"calculation\": \"liquid_water\", \"temperature\": \"60\"}", &answer) == FW_UNIT_MISSING);
    CHECK(strstr(answer, "\"error\"") != NULL && strstr(answer, "unit_missing") != NULL);
    fw_string_free(answer);
    answer = NULL;
    CHECK(fw_evaluate_json("{\"calculation\": \"static_head\", \"height\": {\"value\": \"6.5 m\", \"accuracy\": \"0.1 m\"}, "
                           "\"ask\": {\"steps\": true, \"monte_carlo\": {\"trials\": 1000}}}", &answer) == FW_OK);
    CHECK(strstr(answer, "\"standard_uncertainty\"") != NULL && strstr(answer, "\"budget\"") != NULL);
    CHECK(strstr(answer, "\"substituted\"") != NULL && strstr(answer, "\"monte_carlo\"") != NULL);
    fw_string_free(answer);
    answer = NULL;
    CHECK(fw_evaluate_json("nonsense", &answer) == FW_BAD_SETTING && answer != NULL);
    fw_string_free(answer);
    answer = NULL;
    CHECK(fw_evaluate_json(NULL, &answer) == FW_NULL_POINTER && answer == NULL);
    CHECK(fw_evaluate_json("{}", NULL) == FW_NULL_POINTER);
    CHECK(fw_catalogue_json(&answer) == FW_OK);
    CHECK(strstr(answer, "\"liquid_water\"") != NULL && strstr(answer, "\"sources\"") != NULL);
    fw_string_free(answer);
}

static void a_visit_is_assessed_in_one_call(void)
{
    const char *visit = "title = \"A kitchen, invented\"\n"
                        "date = \"2026-11-20\"\n"
                        "[checks.liquid_water]\n"
                        "temperature = \"60 degC\"\n"
                        "pressure = \"2 bar\"\n";
    char *written = NULL;
    CHECK(fw_visit_json(visit, NULL, &written) == FW_OK);
    CHECK(strstr(written, "liquid_water") != NULL && strstr(written, "983.") != NULL);
    fw_string_free(written);
    written = NULL;
    CHECK(fw_visit_json("{\"title\": \"the same as JSON\", \"checks\": {\"liquid_water\": {\"temperature\": \"60 degC\"}}}", NULL,
                        &written) == FW_OK);
    fw_string_free(written);
    written = NULL;
    CHECK(fw_visit_text(visit, NULL, &written) == FW_OK && strstr(written, "A kitchen, invented") != NULL);
    fw_string_free(written);
    written = NULL;
    CHECK(fw_visit_html(visit, NULL, &written) == FW_OK && strstr(written, "<html") != NULL);
    fw_string_free(written);
    written = NULL;
    CHECK(fw_visit_text("title = ", NULL, &written) != FW_OK && written == NULL && fw_error_message()[0] != '\0');
    CHECK(fw_visit_json("title = ", NULL, &written) != FW_OK && strstr(written, "\"error\"") != NULL);
    fw_string_free(written);
    written = NULL;
    CHECK(fw_visit_text(visit, "[[limit", &written) != FW_OK && written == NULL);
    CHECK(fw_visit_html(NULL, NULL, &written) == FW_NULL_POINTER && written == NULL);
    CHECK(fw_visit_html(visit, NULL, NULL) == FW_NULL_POINTER);
}

int main(void)
{
    nothing_has_failed_yet();
    versions_agree();
    water_is_that_of_the_formulation();
    defaults_are_written_and_the_rest_must_be_given();
    a_refusal_says_why_and_writes_nothing();
    an_unusual_reading_is_noticed();
    bad_pointers_are_statuses();
    an_output_may_lie_over_the_input();
    contexts_fix_settings();
    batches_lose_no_row();
    a_batch_may_work_in_place();
    json_calls_answer_either_way();
    a_visit_is_assessed_in_one_call();
    puts("cases: passed");
    return 0;
}
