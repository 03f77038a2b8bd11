/* SPDX-License-Identifier: MIT */
/*
 * Reads a survey document into a survey, amendments, and what else the document says.
 */
#ifndef INGLE_JSON_READER_H
#define INGLE_JSON_READER_H

#include "writing/error.h"
#include "reading/kept_amendments.h"
#include "reading/value.h"

#include <ingle/ingle.h>

/* A group of the catalogue: its quantities stand together. */
struct json_group {
    const char *name;
    size_t first; /* the index of its first quantity */
    size_t count;
    bool repeats;
};

struct json_reader {
    /* What was read; texts are borrowed from the tree. */
    const char *id; /* NULL without one */
    size_t id_length;
    const ingle_unit *unit; /* NULL without one */
    const ingle_standard **standards;
    size_t standard_count;
    ingle_survey *survey;
    ingle_amendments *amendments; /* those that are kept, and the document's after them */
    bool amended;                 /* by the document */
    int32_t *readings;            /* of each reading the number of the option to follow */
    uint32_t *rounded; /* the values that are no whole number of base units */
    size_t rounded_count;

    /* Why it was not. */
    struct json_error error;

    /* While reading. */
    const struct json_scan *scan;
    const ingle_unit *area_unit; /* the square of `unit` */
    int64_t tolerance;           /* of every length that has none of its own */
    uint32_t tolerance_node;
    bool keeping;          /* what is read are amendments to keep */
    const char *authority; /* whose they are; NULL where it is not told */

    /* For good. */
    struct json_group *groups;
    size_t group_count;
    const char **names; /* of all quantities in their groups, since asking costs a search */
    size_t rounded_capacity;
    struct json_kept_amendments kept;
};

/* The units of length a document may name as its own, and in which a report may be shown. */
extern const char *const json_document_units[];

/* Makes an empty reader; INGLE_OK or INGLE_ERROR_MEMORY, and then nothing is to be given back. */
ingle_status json_reader_start(struct json_reader *reader);
void json_reader_free(struct json_reader *reader);

/*
 * Reads a document: a tree that the scan went through before. With `adopted` it need not name
 * standards, and those that it names are read but not taken.
 */
ingle_status json_read_document(struct json_reader *reader, const struct json_scan *scan,
                                struct json_object *tree, bool adopted);

/*
 * Reads a document of amendments, and keeps them for the documents to come; on error the ones that
 * were kept before stay alone.
 */
ingle_status json_read_amendments_document(struct json_reader *reader,
                                           const struct json_scan *scan,
                                           struct json_object *tree);

/* ---- for the parts of the reader ------------------------------------------------------------- */

/* The text of a value, without NUL inside; NULL if it is another and was refused. */
const char *json_read_text(struct json_reader *reader, struct json_value value, const char *due,
                           size_t *length);

/* A note: read, and ignored. */
ingle_status json_read_note(struct json_reader *reader, struct json_value value);

/* The standard that a value names; NULL if there is none and it was refused. */
const ingle_standard *json_read_standard(struct json_reader *reader, struct json_value value);

/* Forgets the document before; INGLE_OK or INGLE_ERROR_MEMORY. */
ingle_status json_forget(struct json_reader *reader, const struct json_scan *scan);

/*
 * Finds the members of an object by their names, each as it stands among them, and refuses others.
 * `present` is given with nothing present.
 */
ingle_status json_find_members(struct json_reader *reader, struct json_value around,
                               const char *const *names, size_t count, struct json_value *values,
                               bool *present);

/* Refuses a member for its name, with the nearest of those that are known here. */
ingle_status json_refuse_member(struct json_reader *reader, struct json_value value,
                                const char *name, const char *const *known, size_t count);

/* Writes `a, b and c`, as far as it fits. */
void json_list_names(const char *const *names, size_t count, char *list, size_t size);

/* Refuses an object that lacks a member. */
ingle_status json_refuse_missing(struct json_reader *reader, struct json_value around,
                                 const char *name);

/* An object, or else it is refused. */
ingle_status json_expect_object(struct json_reader *reader, struct json_value value,
                                const char *due);

/* The unit of bare numbers, and its square. */
ingle_status json_read_document_unit(struct json_reader *reader, struct json_value value);

/* Notes a value that is no whole number of base units. */
ingle_status json_note_rounded(struct json_reader *reader, uint32_t node);

/* Reads the survey itself: the groups and their quantities. */
ingle_status json_read_survey(struct json_reader *reader, struct json_value survey);

/* Reads which options of readings to follow: an object. */
ingle_status json_read_readings(struct json_reader *reader, struct json_value readings);

/* Reads the amendments: an array. */
ingle_status json_read_amendments(struct json_reader *reader, struct json_value amendments);

#endif
