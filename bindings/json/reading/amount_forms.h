/* SPDX-License-Identifier: MIT */
/*
 * The forms in which a document writes an amount: a text with its unit, a bare number in the
 * document's unit, or an object of value, unit and tolerance.
 */
#ifndef INGLE_JSON_AMOUNT_FORMS_H
#define INGLE_JSON_AMOUNT_FORMS_H

#include "reading/reader.h"

/* A number or text, and the unit of a bare number. */
struct json_measure {
    const char *text;
    size_t length;
    const ingle_unit *unit; /* NULL where the text has to have it */
    uint32_t node;
};

struct json_amount_form {
    struct json_measure value;
    struct json_measure tolerance;
    bool tolerated; /* it has a tolerance of its own */
};

/* Takes an amount apart; `tolerable` says whether it may have a tolerance. */
ingle_status json_read_amount(struct json_reader *reader, struct json_value value,
                              ingle_dimension dimension, bool tolerable,
                              struct json_amount_form *amount);

/* The base units of what was written. */
ingle_status json_parse_measure(struct json_reader *reader, const struct json_measure *measure,
                                ingle_dimension dimension, int64_t *base_units);

/* The unit that the document gives a bare number of this dimension; NULL if none. */
const ingle_unit *json_document_unit(const struct json_reader *reader, ingle_dimension dimension);

#endif
