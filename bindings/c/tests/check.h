/* The one way in which these programs fail. */
#ifndef CHECK_H
#define CHECK_H

#include <flamewright.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define CHECK(condition)                                                                       \
    do {                                                                                       \
        if (!(condition)) {                                                                    \
            fprintf(stderr, "%s:%d: does not hold: %s\n    last error: %s\n", __FILE__, __LINE__, \
                    #condition, fw_error_message());                                           \
            exit(EXIT_FAILURE);                                                                \
        }                                                                                      \
    } while (0)

/* The same double, or both not a number. */
static inline int same(double a, double b)
{
    return memcmp(&a, &b, sizeof a) == 0 || (a != a && b != b);
}

#endif
