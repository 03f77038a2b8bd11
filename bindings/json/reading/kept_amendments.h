/* SPDX-License-Identifier: MIT */
/*
 * Amendments that hold for every document: those of a town's file. A list of the library can be
 * emptied and added to, but not cut; what a document added is taken back by setting these again.
 */
#ifndef INGLE_JSON_KEPT_AMENDMENTS_H
#define INGLE_JSON_KEPT_AMENDMENTS_H

#include <ingle/standards.h>

#include <stdbool.h>
#include <stddef.h>

/* One number of a rule, as ingle_amendments_set_text() takes it; `text` need not end in NUL. */
struct json_amendment {
    const ingle_standard *standard;
    const char *rule, *number, *text, *citation;
    size_t length; /* of the text */
    const ingle_unit *unit;
};

struct json_kept_amendment {
    struct json_amendment amendment;
    char *texts; /* all of its texts, in one piece of memory */
};

struct json_kept_amendments {
    struct json_kept_amendment *list;
    size_t count, capacity;
};

/* Keeps a copy; false if memory failed. */
bool json_kept_add(struct json_kept_amendments *kept, const struct json_amendment *amendment);

/* Lets go of all but the first so many. */
void json_kept_cut(struct json_kept_amendments *kept, size_t count);

void json_kept_free(struct json_kept_amendments *kept);

/* Makes a list of the library hold these and nothing else; INGLE_OK or INGLE_ERROR_MEMORY. */
ingle_status json_kept_restore(const struct json_kept_amendments *kept,
                               ingle_amendments *amendments);

/* Sets one number in a list of the library. */
ingle_status json_amendment_set(ingle_amendments *amendments,
                                const struct json_amendment *amendment);

#endif
