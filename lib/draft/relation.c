/* SPDX-License-Identifier: MIT */
#include "draft/relation.h"

#include <math.h>

ingle_status arguments_accept(const struct argument *arguments, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        const struct argument *argument = &arguments[i];
        if (!isfinite(argument->value)) {
            return INGLE_ERROR_NUMBER;
        }
        if (argument->value < argument->least || argument->value > argument->most ||
            (argument->above && argument->value <= argument->least)) {
            return INGLE_ERROR_IMPLAUSIBLE;
        }
    }
    return INGLE_OK;
}

ingle_status relation_give(ingle_status accepted, double result, double *out)
{
    if (out == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    if (accepted != INGLE_OK) {
        return accepted;
    }
    if (!isfinite(result)) {
        return INGLE_ERROR_OVERFLOW;
    }
    *out = result;
    return INGLE_OK;
}
