/* Every calculation of the catalogue behind one shape, so that a test can walk them all. The table
 * itself, every.inc, is written from the catalogue when the tests are built. */
#ifndef EVERY_H
#define EVERY_H

#include "check.h"
#include <math.h>
#include <stdint.h>

enum { MOST = 64 }; /* fields of a record */

/* What the Rust library made of one reading. */
struct sample {
    fw_status status;
    uint64_t unusual, raised;
    const double *input, *output;
};

struct calculation {
    const char *name, *settings;
    size_t inputs, outputs;
    int slow;
    fw_status (*unset)(double *input);
    fw_status (*call)(const fw_context *context, const double *input, double *output, fw_notices *notices);
    fw_status (*batch)(const fw_context *context, size_t rows, const double *inputs, double *outputs, uint16_t *row_status);
    const struct sample *samples;
    size_t sample_count;
};

extern const struct calculation every[];
extern const size_t every_count;

#endif
