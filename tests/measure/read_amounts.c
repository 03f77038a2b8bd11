/* SPDX-License-Identifier: MIT */
/*
 * Reads lines of a dimension's number, a tab and an amount's text; prints of each the status, the
 * value and the amount as a decimal in its usual unit, by tabs.
 */
#include <ingle/measure.h>

#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int main(void)
{
    char line[4096];
    while (fgets(line, sizeof line, stdin) != NULL) {
        char *text;
        ingle_dimension dimension = (ingle_dimension)strtol(line, &text, 10);
        text += *text == '\t';
        ingle_amount amount = {0, dimension, INGLE_SCALE_USUAL};
        char decimal[64];
        ingle_status status =
            ingle_amount_parse(text, strcspn(text, "\n"), dimension, NULL, &amount, NULL);
        ingle_amount_decimal(&amount, ingle_amount_unit(&amount, NULL), decimal, sizeof decimal,
                             NULL);
        printf("%s\t%" PRId64 "\t%s\n", ingle_status_name(status), amount.value, decimal);
    }
    return 0;
}
