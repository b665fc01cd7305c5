/* Record batches made by hand, by the published layout of the Arrow C data interface. */
#include "check.h"
#include <math.h>

#ifdef __linux__
#include <dirent.h>
#endif

#define ARROW_FLAG_NULLABLE 2

struct ArrowSchema {
    const char *format;
    const char *name;
    const char *metadata;
    int64_t flags;
    int64_t n_children;
    struct ArrowSchema **children;
    struct ArrowSchema *dictionary;
    void (*release)(struct ArrowSchema *);
    void *private_data;
};

struct ArrowArray {
    int64_t length;
    int64_t null_count;
    int64_t offset;
    int64_t n_buffers;
    int64_t n_children;
    const void **buffers;
    struct ArrowArray **children;
    struct ArrowArray *dictionary;
    void (*release)(struct ArrowArray *);
    void *private_data;
};

/* More than one thread would take at once, if there were several. */
enum { ROWS = 40000, OFFSET = 3, OUTPUTS = 8 };

/* A table of one column of temperatures in degrees Celsius, of which some are null and some absurd. */
struct table {
    struct ArrowSchema schema, column_schema, *schemas[1];
    struct ArrowArray array, column, *columns[1];
    const void *no_buffers[1], *buffers[2];
    double *celsius;
    unsigned char *valid;
    int released;
};

static void release_schema(struct ArrowSchema *schema)
{
    schema->release = NULL;
}

/* The memory goes with the column, which a consumer may move out of its parent. */
static void release_column(struct ArrowArray *column)
{
    struct table *table = column->private_data;
    free(table->celsius);
    free(table->valid);
    table->released++;
    column->release = NULL;
}

static void release_array(struct ArrowArray *array)
{
    if (array->children[0]->release != NULL) {
        array->children[0]->release(array->children[0]);
    }
    array->release = NULL;
}

/* Metadata is a count, and keys and values with their lengths in front of them. */
static void one_pair(char *metadata, const char *key, const char *value)
{
    const int32_t numbers[3] = {1, (int32_t)strlen(key), (int32_t)strlen(value)};
    memcpy(metadata, numbers, 8);
    memcpy(metadata + 8, key, strlen(key));
    memcpy(metadata + 8 + strlen(key), numbers + 2, 4);
    memcpy(metadata + 12 + strlen(key), value, strlen(value));
}

static int is_null(int row)
{
    return row % 7 == 5;
}

static void fill(struct table *table, const char *metadata)
{
    memset(table, 0, sizeof *table);
    table->celsius = malloc((ROWS + OFFSET) * sizeof *table->celsius);
    table->valid = calloc((ROWS + OFFSET + 7) / 8, 1);
    CHECK(table->celsius != NULL && table->valid != NULL);
    for (int i = 0; i < ROWS + OFFSET; i++) {
        const int row = i - OFFSET;
        table->celsius[i] = row % 11 == 3 ? -40.0 : row * (90.0 / ROWS);
        if (!is_null(row)) {
            table->valid[i / 8] |= (unsigned char)(1u << i % 8);
        }
    }
    table->schemas[0] = &table->column_schema;
    table->columns[0] = &table->column;
    table->buffers[0] = table->valid;
    table->buffers[1] = table->celsius;
    table->column_schema = (struct ArrowSchema){
        .format = "g", .name = "temperature", .metadata = metadata, .flags = ARROW_FLAG_NULLABLE, .release = release_schema};
    table->schema = (struct ArrowSchema){
        .format = "+s", .name = "", .n_children = 1, .children = table->schemas, .release = release_schema};
    table->column = (struct ArrowArray){.length = ROWS, .null_count = -1, .offset = OFFSET, .n_buffers = 2,
                                        .buffers = table->buffers, .release = release_column, .private_data = table};
    table->array = (struct ArrowArray){.length = ROWS, .n_buffers = 1, .n_children = 1, .buffers = table->no_buffers,
                                       .children = table->columns, .release = release_array};
}

static int valid(const struct ArrowArray *column, int row)
{
    const unsigned char *bits = column->buffers[0];
    const int64_t at = column->offset + row;
    return bits == NULL || (bits[at / 8] >> at % 8 & 1);
}

static int threads(void)
{
    int count = 0;
#ifdef __linux__
    DIR *folder = opendir("/proc/self/task");
    CHECK(folder != NULL);
    for (const struct dirent *entry; (entry = readdir(folder)) != NULL;) {
        count += entry->d_name[0] != '.';
    }
    closedir(folder);
#endif
    return count;
}

/* What each row of the results must be, by the function for one reading. */
static void compare(const struct ArrowArray *result, int first)
{
    const struct ArrowArray *status = result->children[first + OUTPUTS];
    const struct ArrowArray *reason = result->children[first + OUTPUTS + 1];
    int refused = 0;
    CHECK(result->length == ROWS);
    for (int row = 0; row < ROWS; row++) {
        fw_liquid_water_input input;
        fw_liquid_water_output output;
        fw_notices notices;
        CHECK(fw_liquid_water_unset(&input) == FW_OK);
        input.temperature = row % 11 == 3 ? -40.0 + 273.15 : row * (90.0 / ROWS) + 273.15;
        input.temperature = is_null(row) ? NAN : input.temperature;
        input.pressure = 200000.0;
        const int has_result = fw_liquid_water(&input, &output, &notices) == FW_OK;
        const int16_t found = ((const int16_t *)status->buffers[1])[status->offset + row];
        CHECK(has_result == (found < FW_ROW_FIELD) && has_result == !valid(reason, row));
        CHECK(has_result || found == FW_ROW_FIELD);
        refused += !has_result;
        for (int i = 0; i < OUTPUTS; i++) {
            const struct ArrowArray *column = result->children[first + i];
            double expected;
            memcpy(&expected, (const char *)&output + i * sizeof expected, sizeof expected);
            CHECK(valid(column, row) == (has_result && !isnan(expected)));
            CHECK(!has_result || same(((const double *)column->buffers[1])[column->offset + row], expected));
        }
    }
    CHECK(refused > ROWS / 7 && refused < ROWS / 2);
}

int main(void)
{
    char celsius[32], bar[32];
    one_pair(celsius, "unit", "degC");
    one_pair(bar, "unit", "bar");
    const char *options = "{\"constants\": {\"pressure\": \"2 bar\"}, \"output_units\": \"si\"}";
    fw_context *context = NULL;
    CHECK(fw_context_new("liquid_water", NULL, &context) == FW_OK);
    struct ArrowSchema schema;
    struct ArrowArray result;
    struct table table;

    /* The columns kept come first, where they lie. */
    fill(&table, celsius);
    CHECK(fw_evaluate_arrow(context, options, &table.schema, &table.array, &schema, &result) == FW_OK);
    CHECK(threads() <= 1);
    CHECK(table.array.release == NULL && table.schema.release != NULL && table.released == 0);
    CHECK(schema.n_children == 1 + OUTPUTS + 2 && result.n_children == schema.n_children);
    CHECK(strcmp(schema.children[0]->name, "temperature") == 0 && strcmp(schema.children[1]->name, "density") == 0);
    CHECK(strcmp(schema.children[1 + OUTPUTS]->name, "status") == 0 && strcmp(schema.children[1 + OUTPUTS]->format, "s") == 0);
    CHECK(result.children[0]->buffers[1] == (const void *)table.celsius
          || result.children[0]->buffers[1] == (const void *)(table.celsius + OFFSET));
    compare(&result, 1);
    schema.release(&schema);
    CHECK(schema.release == NULL && table.released == 0);
    fw_context_free(context);
    result.release(&result);
    CHECK(result.release == NULL && table.released == 1);

    /* Nothing kept: the table is let go of at once. The result may take the place of what was moved from. */
    CHECK(fw_context_new("liquid_water", NULL, &context) == FW_OK);
    options = "{\"constants\": {\"pressure\": \"2 bar\"}, \"output_units\": \"si\", \"keep\": false}";
    fill(&table, celsius);
    CHECK(fw_evaluate_arrow(context, options, &table.schema, &table.array, &schema, &table.array) == FW_OK);
    CHECK(table.released == 1 && table.array.n_children == OUTPUTS + 2);
    compare(&table.array, 0);
    table.array.release(&table.array);
    schema.release(&schema);

    /* A schema or an option that is wrong leaves the table with the caller. */
    fill(&table, bar);
    memset(&schema, 0, sizeof schema);
    memset(&result, 0, sizeof result);
    CHECK(fw_evaluate_arrow(context, options, &table.schema, &table.array, &schema, &result) == FW_WRONG_DIMENSION);
    CHECK(strstr(fw_error_message(), "temperature") != NULL);
    table.column_schema.metadata = celsius;
    CHECK(fw_evaluate_arrow(context, "{\"keeps\": 1}", &table.schema, &table.array, &schema, &result) == FW_UNKNOWN_NAME);
    CHECK(fw_evaluate_arrow(context, "{", &table.schema, &table.array, &schema, &result) != FW_OK);
    table.column_schema.format = "u";
    CHECK(fw_evaluate_arrow(context, options, &table.schema, &table.array, &schema, &result) == FW_BAD_SETTING);
    CHECK(fw_evaluate_arrow(context, options, &table.column_schema, &table.array, &schema, &result) == FW_BAD_SETTING);
    table.column_schema.format = "g";
    CHECK(fw_evaluate_arrow(NULL, options, &table.schema, &table.array, &schema, &result) == FW_NULL_POINTER);
    CHECK(fw_evaluate_arrow(context, options, NULL, &table.array, &schema, &result) == FW_NULL_POINTER);
    CHECK(fw_evaluate_arrow(context, options, &table.schema, NULL, &schema, &result) == FW_NULL_POINTER);
    CHECK(fw_evaluate_arrow(context, options, &table.schema, &table.array, NULL, &result) == FW_NULL_POINTER);
    CHECK(fw_evaluate_arrow(context, options, &table.schema, &table.array, &schema, NULL) == FW_NULL_POINTER);
    CHECK(fw_evaluate_arrow(context, options, &table.schema, &table.array, &table.schema, &result) == FW_OVERLAP);
    CHECK(table.array.release != NULL && table.released == 0 && schema.release == NULL && result.release == NULL);

    /* One that does not fit its schema is taken, let go of, and refused. */
    table.array.n_children = 0;
    CHECK(fw_evaluate_arrow(context, options, &table.schema, &table.array, &schema, &result) == FW_BAD_SETTING);
    CHECK(table.array.release == NULL && table.released == 1 && result.release == NULL);
    CHECK(fw_evaluate_arrow(context, options, &table.schema, &table.array, &schema, &result) == FW_BAD_SETTING);
    CHECK(strstr(fw_error_message(), "released") != NULL);
    table.schema.release(&table.schema);
    CHECK(fw_evaluate_arrow(context, options, &table.schema, &table.array, &schema, &result) == FW_BAD_SETTING);
    fw_context_free(context);
    puts("arrow: every row as the function for one reading gives it, one thread");
    return EXIT_SUCCESS;
}
