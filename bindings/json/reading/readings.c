/* SPDX-License-Identifier: MIT */
/*
 * The readings of a document: which way to read what a publication leaves open.
 */
#include "reading/reader.h"

#include <string.h>

enum { NAMES_MOST = 64 };

static ingle_status refuse_reading(struct json_reader *reader, struct json_value value,
                                   const char *name)
{
    const char *known[NAMES_MOST];
    size_t count = 0;
    for (size_t i = 0; i < ingle_reading_count() && count < NAMES_MOST - 1; i++) {
        known[count++] = ingle_reading_id(ingle_reading_at(i));
    }
    known[count++] = "note";
    return json_refuse_member(reader, value, name, known, count);
}

static ingle_status refuse_option(struct json_reader *reader, const ingle_reading *reading,
                                  uint32_t node, const char *id)
{
    char list[JSON_SENTENCE_SIZE / 2];
    const char *known[NAMES_MOST];
    size_t count = ingle_reading_option_count(reading);
    count = count < NAMES_MOST ? count : NAMES_MOST;
    for (size_t i = 0; i < count; i++) {
        known[i] = ingle_reading_option_at(reading, i);
    }
    const char *nearest = ingle_name_nearest(id, known, count);
    if (nearest != NULL) {
        return json_refuse(&reader->error, node, INGLE_ERROR_UNKNOWN_CHOICE,
                           "This reading has no such option. Did you mean %s?", nearest);
    }
    json_list_names(known, count, list, sizeof list);
    return json_refuse(&reader->error, node, INGLE_ERROR_UNKNOWN_CHOICE,
                       "This reading has no such option. Known are %s.", list);
}

static ingle_status read_option(struct json_reader *reader, size_t index, struct json_value value)
{
    const ingle_reading *reading = ingle_reading_at(index);
    size_t length;
    const char *id, *option;
    id = json_read_text(reader, value, "a text that is one of the reading's options", &length);
    if (id == NULL) {
        return reader->error.status;
    }
    for (int32_t i = 0; (option = ingle_reading_option_at(reading, (size_t)i)) != NULL; i++) {
        if (strcmp(option, id) == 0) {
            reader->readings[index] = i;
            return INGLE_OK;
        }
    }
    return refuse_option(reader, reading, value.node, id);
}

ingle_status json_read_readings(struct json_reader *reader, struct json_value readings)
{
    ingle_status status = json_expect_object(reader, readings, "an object of readings");
    if (status != INGLE_OK) {
        return status;
    }
    struct json_walk walk = json_walk_start(reader->scan, readings);
    struct json_value value;
    const char *name;
    while (status == INGLE_OK && json_walk_next(&walk, &name, &value)) {
        size_t i = 0, count = ingle_reading_count();
        while (i < count && strcmp(ingle_reading_id(ingle_reading_at(i)), name) != 0) {
            i++;
        }
        if (i < count) {
            status = read_option(reader, i, value);
        } else if (strcmp(name, "note") == 0) {
            status = json_read_note(reader, value);
        } else {
            status = refuse_reading(reader, value, name);
        }
    }
    return status;
}
