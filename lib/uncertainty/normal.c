/* SPDX-License-Identifier: MIT */
#include "uncertainty/normal.h"

#include <ingle/uncertainty.h>

#include <math.h>
#include <stdbool.h>

#define SQUARE_ROOT_OF_HALF 0.70710678118654752440

double normal_below(double z)
{
    return 0.5 * erfc(-z * SQUARE_ROOT_OF_HALF);
}

/* How many standard uncertainties a limit lies above the value; at 0, which side it is on. */
static double distance(double value, double uncertainty, double limit, double on_limit)
{
    if (uncertainty > 0) {
        return (limit - value) / uncertainty;
    }
    return limit > value ? INFINITY : limit < value ? -INFINITY : on_limit;
}

static bool usable(double value, double uncertainty, const double *lower, const double *upper)
{
    if (!isfinite(value) || !isfinite(uncertainty) || uncertainty < 0 ||
        (lower == NULL && upper == NULL)) {
        return false;
    }
    return (lower == NULL || isfinite(*lower)) && (upper == NULL || isfinite(*upper)) &&
           (lower == NULL || upper == NULL || *lower <= *upper);
}

ingle_status ingle_probability_within(double value, double standard_uncertainty,
                                      const double *lower, const double *upper,
                                      double *probability)
{
    if (probability == NULL || !usable(value, standard_uncertainty, lower, upper)) {
        return INGLE_ERROR_ARGUMENT;
    }
    double from = lower == NULL ? -INFINITY
                                : distance(value, standard_uncertainty, *lower, -INFINITY);
    double to = upper == NULL ? INFINITY
                              : distance(value, standard_uncertainty, *upper, INFINITY);
    /* A difference of two numbers near 1 would lose what their complements have. */
    *probability = from > 0 ? normal_below(-from) - normal_below(-to)
                            : normal_below(to) - normal_below(from);
    return INGLE_OK;
}
