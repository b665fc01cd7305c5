/* The same bits as the Rust library gave, for every calculation of the catalogue, by its own
 * function, by name, and in a batch; in one thread, and in eight at once. */
#include "every.h"
#include <pthread.h>

enum { THREADS = 8, ROUNDS = 10 };

static const double untouched = -12345.678;

static void expect_sample(const struct calculation *c, const struct sample *s, fw_status status, const double *output,
                          const fw_notices *notices, const char *way)
{
    int good = status == s->status;
    for (size_t i = 0; i < c->outputs; i++) {
        good = good && same(output[i], s->status == FW_OK ? s->output[i] : untouched);
    }
    if (status == FW_OK) {
        good = good && notices->unusual == s->unusual && notices->raised == s->raised;
    } else {
        good = good && fw_error_status() == status && fw_error_message()[0] != '\0';
    }
    if (!good) {
        fprintf(stderr, "%s %s: status %d, expected %d (%s)\n", c->name, way, (int)status, (int)s->status, fw_error_message());
        for (size_t i = 0; i < c->outputs; i++) {
            fprintf(stderr, "    %zu: %a, expected %a\n", i, output[i], s->status == FW_OK ? s->output[i] : untouched);
        }
        exit(EXIT_FAILURE);
    }
}

static void walk(const struct calculation *c)
{
    fw_context *context = NULL;
    double output[MOST];
    fw_notices notices;
    CHECK(fw_context_new(c->name, c->settings, &context) == FW_OK);
    for (size_t k = 0; k < c->sample_count; k++) {
        const struct sample *s = &c->samples[k];
        for (size_t i = 0; i < c->outputs; i++) {
            output[i] = untouched;
        }
        expect_sample(c, s, c->call(context, s->input, output, &notices), output, &notices, "by its own function");
        for (size_t i = 0; i < c->outputs; i++) {
            output[i] = untouched;
        }
        expect_sample(c, s, fw_evaluate(context, s->input, c->inputs, output, c->outputs, &notices), output, &notices, "by name");
    }
    fw_context_free(context);
}

static void walk_batch(const struct calculation *c)
{
    fw_context *context = NULL;
    double *inputs = calloc(c->sample_count * c->inputs, sizeof *inputs);
    double *outputs = calloc(c->sample_count * c->outputs, sizeof *outputs);
    uint16_t *status = calloc(c->sample_count, sizeof *status);
    CHECK(inputs && outputs && status);
    CHECK(fw_context_new(c->name, c->settings, &context) == FW_OK);
    for (size_t k = 0; k < c->sample_count; k++) {
        memcpy(inputs + k * c->inputs, c->samples[k].input, c->inputs * sizeof *inputs);
    }
    CHECK(c->batch(context, c->sample_count, inputs, outputs, status) == FW_OK);
    for (size_t k = 0; k < c->sample_count; k++) {
        const struct sample *s = &c->samples[k];
        CHECK((status[k] < FW_ROW_FIELD) == (s->status == FW_OK));
        for (size_t i = 0; i < c->outputs; i++) {
            if (!same(outputs[k * c->outputs + i], s->status == FW_OK ? s->output[i] : (double)NAN)) {
                fprintf(stderr, "%s in a batch: row %zu output %zu: %a\n", c->name, k, i, outputs[k * c->outputs + i]);
                exit(EXIT_FAILURE);
            }
        }
    }
    fw_context_free(context);
    free(inputs);
    free(outputs);
    free(status);
}

static void *walk_all(void *first)
{
    for (int round = 0; round < ROUNDS; round++) {
        for (size_t i = 0; i < every_count; i++) {
            const struct calculation *c = &every[(i + *(size_t *)first) % every_count];
            if (round == 0 || !c->slow) {
                walk(c);
            }
        }
    }
    return NULL;
}

int main(void)
{
    pthread_t threads[THREADS];
    size_t first[THREADS], samples = 0, results = 0;
    /* First with all threads at once, so that they also race for every first call. */
    for (size_t t = 0; t < THREADS; t++) {
        first[t] = t * 3;
        CHECK(pthread_create(&threads[t], NULL, walk_all, &first[t]) == 0);
    }
    for (size_t t = 0; t < THREADS; t++) {
        CHECK(pthread_join(threads[t], NULL) == 0);
    }
    /* The errors stayed with their threads. */
    CHECK(fw_error_status() == FW_OK);
    for (size_t i = 0; i < every_count; i++) {
        walk(&every[i]);
        walk_batch(&every[i]);
        size_t here = 0;
        for (size_t k = 0; k < every[i].sample_count; k++) {
            here += every[i].samples[k].status == FW_OK;
        }
        if (here == 0) {
            printf("    %s: every reading drawn was refused, alike on both sides\n", every[i].name);
        }
        samples += every[i].sample_count;
        results += here;
    }
    CHECK(every_count > 0 && 2 * results >= samples / 2);
    printf("conformance: %zu calculations, %zu readings, %zu with a result, the same bits as in Rust\n", every_count, samples, results);
    return 0;
}
