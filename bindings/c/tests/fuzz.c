/* Random doubles into every function, random and damaged JSON into the JSON calls, for as many
 * seconds as are asked for. Nothing may crash, hang, leak, or answer FW_PANIC. */
#include "every.h"
#include <time.h>

static uint64_t state;

static uint64_t draw(void)
{
    /* xorshift64*, Marsaglia 2003 and Vigna 2016: the quality does not matter here, repeating does. */
    state ^= state >> 12;
    state ^= state << 25;
    state ^= state >> 27;
    return state * UINT64_C(2685821657736338717);
}

static double any_double(const struct calculation *c, size_t i)
{
    static const double odd[] = {0.0, -0.0, 1.0, -1.0, 5e-324, 2.2250738585072014e-308, 1.7976931348623157e308, 273.15, 1e5};
    uint64_t bits = draw();
    double value;
    switch (draw() % 6) {
    case 0:
        memcpy(&value, &bits, sizeof value);
        return value;
    case 1:
        return odd[bits % (sizeof odd / sizeof *odd)];
    case 2:
        return bits % 3 == 0 ? (double)NAN : bits % 3 == 1 ? (double)INFINITY : -(double)INFINITY;
    default:
        /* Near a reading that is known, so that the sum itself is reached. */
        if (c->sample_count == 0) {
            return (double)(bits >> 11) * 0x1p-53;
        }
        value = c->samples[bits % c->sample_count].input[i];
        return draw() % 4 ? value : value * (0.5 + (double)(draw() >> 11) * 0x1p-53);
    }
}

/* What is written beside a result must be finite, or absent as its field says; seen by the library. */
static void numbers(const struct calculation *c, fw_context *context)
{
    double inputs[8 * MOST], outputs[8 * MOST];
    uint16_t row_status[8];
    fw_notices notices;
    for (size_t i = 0; i < 8 * c->inputs; i++) {
        inputs[i] = any_double(c, i % c->inputs);
    }
    CHECK(c->call(context, inputs, outputs, &notices) != FW_PANIC);
    CHECK(c->call(NULL, inputs, outputs, NULL) != FW_PANIC);
    CHECK(c->batch(context, 8, inputs, outputs, row_status) == FW_OK);
}

static const char *const calls[] = {
    "{\"calculation\": \"liquid_water\", \"temperature\": \"60 degC\", \"pressure\": \"2 bar\"}",
    "{\"calculation\": \"fuel_properties\", \"fuel\": \"G20\", \"metering_pressure\": \"1013.25 mbar\"}",
    "{\"calculation\": \"fuel_properties\", \"fuel\": {\"methane\": \"90 %\", \"ethane\": \"10 %\"}}",
    "{\"calculation\": \"u_gauge\", \"settings\": [1, 2.5e3, null, true, \"\\u00b0C\"]}",
};

static void texts(void)
{
    char text[512];
    char *answer = NULL;
    const struct calculation *c = &every[draw() % every_count];
    size_t length;
    if (draw() % 4 == 0) {
        length = draw() % (sizeof text - 1);
        for (size_t i = 0; i < length; i++) {
            text[i] = (char)(1 + draw() % 255);
        }
        text[length] = '\0';
    } else {
        strcpy(text, calls[draw() % (sizeof calls / sizeof *calls)]);
        length = strlen(text);
        for (uint64_t n = draw() % 6; n > 0 && length > 0; n--) {
            size_t at = draw() % length, other = draw() % length;
            switch (draw() % 4) {
            case 0:
                text[at] = (char)(1 + draw() % 255);
                break;
            case 1:
                text[at] = "{}[]\":,.0123456789eE+-%/ \\"[draw() % 26];
                break;
            case 2:
                memmove(text + at, text + at + 1, length - at);
                length--;
                break;
            default:
                text[at] = text[other];
            }
        }
    }
    CHECK(fw_evaluate_json(text, &answer) != FW_PANIC);
    fw_string_free(answer);
    fw_context *context = NULL;
    CHECK(fw_context_new(c->name, text, &context) != FW_PANIC);
    fw_context_free(context);
}

/* A visit record, damaged here and there. */
static void visits(const char *record)
{
    size_t length = strlen(record);
    char *text = malloc(length + 1), *written = NULL;
    CHECK(text != NULL);
    memcpy(text, record, length + 1);
    for (uint64_t n = draw() % 8; n > 0; n--) {
        size_t at = draw() % length;
        text[at] = draw() % 2 ? (char)(1 + draw() % 127) : text[draw() % length];
    }
    CHECK(fw_visit_json(text, NULL, &written) != FW_PANIC);
    fw_string_free(written);
    free(text);
}

/* A text file; NULL if it cannot be read. */
static char *text_of(const char *path)
{
    FILE *file = fopen(path, "rb");
    char *text = calloc(1 << 20, 1);
    if (file == NULL || text == NULL || fread(text, 1, (1 << 20) - 1, file) == 0) {
        free(text);
        text = NULL;
    }
    if (file != NULL) {
        fclose(file);
    }
    return text;
}

int main(int count, char **words)
{
    double seconds = count > 1 ? atof(words[1]) : 3.0;
    uint64_t seed = count > 2 ? strtoull(words[2], NULL, 0) : 20261125;
    char *record = count > 3 ? text_of(words[3]) : NULL;
    uint64_t rounds = 0;
    fw_context **contexts = calloc(every_count, sizeof *contexts);
    time_t start = time(NULL);
    CHECK(contexts && seconds > 0.0);
    state = seed | 1;
    for (size_t i = 0; i < every_count; i++) {
        CHECK(fw_context_new(every[i].name, every[i].settings, &contexts[i]) == FW_OK);
    }
    do {
        for (size_t i = 0; i < every_count; i++) {
            if (!every[i].slow || rounds % 64 == 63) {
                numbers(&every[i], contexts[i]);
            }
        }
        for (int i = 0; i < 20; i++) {
            texts();
        }
        if (record != NULL && rounds % 16 == 0) {
            visits(record);
        }
        rounds++;
    } while (difftime(time(NULL), start) < seconds);
    for (size_t i = 0; i < every_count; i++) {
        fw_context_free(contexts[i]);
    }
    free(contexts);
    CHECK(count < 4 || record != NULL);
    free(record);
    printf("fuzz: %llu rounds over %zu calculations from seed %llu\n", (unsigned long long)rounds, every_count, (unsigned long long)seed);
    return 0;
}
