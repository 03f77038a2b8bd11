/* SPDX-License-Identifier: MIT */
#include "reading/kept_amendments.h"

#include <stdlib.h>
#include <string.h>

/* Copies a text to where the next one begins, and gives where it stands. */
static const char *put(char **end, const char *text, size_t length)
{
    char *start = *end;
    memcpy(start, text, length);
    start[length] = '\0';
    *end = start + length + 1;
    return start;
}

/* A copy whose texts are its own; false if memory failed. */
static bool copy(const struct json_amendment *from, struct json_kept_amendment *kept)
{
    size_t rule = strlen(from->rule), number = strlen(from->number);
    size_t citation = strlen(from->citation);
    struct json_amendment *to = &kept->amendment;
    char *end = kept->texts = malloc(rule + number + from->length + citation + 4);
    if (end == NULL) {
        return false;
    }
    *to = *from;
    to->rule = put(&end, from->rule, rule);
    to->number = put(&end, from->number, number);
    to->text = put(&end, from->text, from->length);
    to->citation = put(&end, from->citation, citation);
    return true;
}

bool json_kept_add(struct json_kept_amendments *kept, const struct json_amendment *amendment)
{
    if (kept->count == kept->capacity) {
        size_t capacity = kept->capacity == 0 ? 16 : kept->capacity * 2;
        struct json_kept_amendment *grown = realloc(kept->list, capacity * sizeof *grown);
        if (grown == NULL) {
            return false;
        }
        kept->list = grown;
        kept->capacity = capacity;
    }
    if (!copy(amendment, &kept->list[kept->count])) {
        return false;
    }
    kept->count++;
    return true;
}

void json_kept_cut(struct json_kept_amendments *kept, size_t count)
{
    while (kept->count > count) {
        free(kept->list[--kept->count].texts);
    }
}

void json_kept_free(struct json_kept_amendments *kept)
{
    json_kept_cut(kept, 0);
    free(kept->list);
    memset(kept, 0, sizeof *kept);
}

ingle_status json_kept_restore(const struct json_kept_amendments *kept,
                               ingle_amendments *amendments)
{
    ingle_amendments_clear(amendments);
    for (size_t i = 0; i < kept->count; i++) {
        ingle_status status = json_amendment_set(amendments, &kept->list[i].amendment);
        if (status < 0) {
            return status;
        }
    }
    return INGLE_OK;
}

ingle_status json_amendment_set(ingle_amendments *amendments,
                                const struct json_amendment *amendment)
{
    return ingle_amendments_set_text(amendments, amendment->standard, amendment->rule,
                                     amendment->number, amendment->text, amendment->length,
                                     amendment->unit, amendment->citation);
}
