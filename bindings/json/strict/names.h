/* SPDX-License-Identifier: MIT */
/*
 * The member names of one object: whether any comes twice.
 */
#ifndef INGLE_JSON_NAMES_H
#define INGLE_JSON_NAMES_H

#include <stddef.h>
#include <stdint.h>

struct json_name {
    const unsigned char *text; /* unescaped */
    uint32_t length;
    uint32_t node; /* the member's */
};

/*
 * The first node in the document whose name an earlier one of these has too, or JSON_NO_NODE. May
 * put the names in another order. Takes no more than n log n comparisons, whatever the names.
 */
uint32_t json_first_repeated(struct json_name *names, size_t count);

#endif
