/* SPDX-License-Identifier: MIT */
/* Prints every unit of the library: id, UCUM code, dimension, numerator, denominator, by tabs. */
#include <ingle/measure.h>

#include <inttypes.h>
#include <stdio.h>

int main(void)
{
    for (size_t i = 0; i < ingle_unit_count(); i++) {
        const ingle_unit *unit = ingle_unit_at(i);
        int64_t numerator, denominator;
        ingle_unit_size(unit, &numerator, &denominator);
        printf("%s\t%s\t%s\t%" PRId64 "\t%" PRId64 "\n", ingle_unit_id(unit),
               ingle_unit_ucum(unit), ingle_dimension_name(ingle_unit_dimension(unit)), numerator,
               denominator);
    }
    return 0;
}
