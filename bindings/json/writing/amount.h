/* SPDX-License-Identifier: MIT */
/*
 * An amount as `{"value": 19.9375, "unit": "in", "text": "19 15/16 in"}`, and texts that the
 * library writes in place.
 */
#ifndef INGLE_JSON_AMOUNT_H
#define INGLE_JSON_AMOUNT_H

#include "writing/write.h"

#include <ingle/check.h>
#include <ingle/measure.h>
#include <ingle/survey.h>

/* An amount by ingle_dimension_is_amount(); counts and ratios have no unit. */
void json_amount(struct json_writer *writer, const char *name, const ingle_amount *amount,
                 const ingle_format *format);

/* An amount of a quantity: a choice or a flag is `{"text": "gas"}`. */
void json_amount_of(struct json_writer *writer, const char *name, const ingle_quantity *quantity,
                    const ingle_amount *amount, const ingle_format *format);

/* An amount as a document has it that is read: exact, with its unit and a tolerance or NULL. */
void json_measure(struct json_writer *writer, const char *name, const ingle_amount *amount,
                  const ingle_amount *tolerance, const ingle_format *format);

/*
 * What a survey document has of a quantity, by its name: a choice, a flag, or value and unit, and
 * its tolerance where it is another than what is `usual` for the document's lengths.
 */
void json_recorded(struct json_writer *writer, const ingle_quantity *quantity,
                   const ingle_amount *amount, int64_t tolerance, int64_t usual,
                   const ingle_format *format);

/*
 * The same of a measurement that is told in a unit of its own, in decimals of it: to the nearest
 * base unit where it is a length.
 */
void json_told(struct json_writer *writer, const ingle_quantity *quantity,
               const ingle_amount *amount, const ingle_unit *unit);

/* The member `tolerance` of a survey document: that of lengths without one of their own. */
void json_tolerance(struct json_writer *writer, int64_t tolerance, const ingle_format *format);

/* Whatever writes text in the manner of ingle_finding_text(). */
typedef ingle_status (*json_source)(const void *object, int32_t part, const ingle_format *format,
                                    char *buffer, size_t capacity, size_t *length);

/* A text that its source writes in place; returns its length. */
size_t json_text_from(struct json_writer *writer, const char *name, json_source source,
                      const void *object, int32_t part, const ingle_format *format);

/* ingle_finding_text() as a source. */
ingle_status json_finding_text(const void *finding, int32_t part, const ingle_format *format,
                               char *buffer, size_t capacity, size_t *length);

#endif
