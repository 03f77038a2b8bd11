/* SPDX-License-Identifier: MIT */
/*
 * The JSON Schemas of the documents, in parts. Each function writes into an object that is open.
 */
#ifndef INGLE_JSON_SCHEMA_H
#define INGLE_JSON_SCHEMA_H

#include "writing/write.h"

#include <ingle/measure.h>

/* The members of a whole schema. */
void schema_survey(struct json_writer *out);
void schema_report(struct json_writer *out);
void schema_amendments_document(struct json_writer *out);
void schema_solution(struct json_writer *out);
void schema_frontier(struct json_writer *out);
void schema_sweep(struct json_writer *out);
void schema_comparison(struct json_writer *out);
void schema_exercise(struct json_writer *out);
void schema_draft(struct json_writer *out);
void schema_error(struct json_writer *out);

/* ---- what they are made of ------------------------------------------------------------------- */

/* A property that refers to one of $defs: `kind` and `suffix` make its name. */
void schema_reference(struct json_writer *out, const char *property, const char *kind,
                      const char *suffix);

/* A property of a type, with a description or NULL. */
void schema_type(struct json_writer *out, const char *property, const char *type,
                 const char *description);

/* Opens a property that is an object, and its `properties`; or one that is an array. */
void schema_open_object(struct json_writer *out, const char *property, const char *description);
void schema_open_array(struct json_writer *out, const char *property, const char *description);
void schema_close_array(struct json_writer *out);

/* Closes `properties` and the object: it has all of the required names, and no other properties. */
void schema_close_object(struct json_writer *out, const char *const *required, size_t count);

/* An `enum` of what a catalogue gives; `name_at` returns NULL past its end. */
void schema_enum(struct json_writer *out, const char *(*name_at)(size_t index));

const char *schema_standard_at(size_t index);
const char *schema_verdict_at(size_t index);

/* ---- parts of the schemas of documents that are read ----------------------------------------- */

/* The property `unit`, `purpose` being what else it is for, or "". */
void schema_unit(struct json_writer *out, const char *purpose);

/* Opens, and closes, what holds of properties where the document has no unit. */
void schema_open_without_unit(struct json_writer *out);
void schema_close_without_unit(struct json_writer *out);

/* The $defs of documents that have amounts. */
void schema_definitions(struct json_writer *out);

/* The property `amendments`, and what holds of it where the document has no unit. */
void schema_amendments(struct json_writer *out);
void schema_amendments_with_units(struct json_writer *out);

/* ---- parts of the schemas of documents that are written -------------------------------------- */

/* The title of a document, what it is, and that it is an object; opens its properties. */
void schema_open_document(struct json_writer *out, const char *title, const char *description);

/* Closes the properties of a document: it has all of the required names, and no others. */
void schema_close_document(struct json_writer *out, const char *const *required, size_t count);

/* The $defs of an amount, of a number that is not exact, and of a JSON pointer. */
void schema_answer_definitions(struct json_writer *out);

/* A property that is one of what a catalogue gives, with a description or NULL. */
void schema_names(struct json_writer *out, const char *property, const char *description,
                  const char *(*name_at)(size_t index));

/* A property that is an array of texts, with a description or NULL. */
void schema_texts(struct json_writer *out, const char *property, const char *description);

/* `required` of several names. */
void schema_required(struct json_writer *out, const char *const *required, size_t count);

/* The properties that documents share: a quantity's place, a standard, a verdict, the release. */
void schema_subject(struct json_writer *out, const char *property);
void schema_standard(struct json_writer *out);
void schema_verdict(struct json_writer *out, const char *description);
void schema_relation(struct json_writer *out);
void schema_release(struct json_writer *out);

/* A finding, as an item of an array. */
void schema_finding(struct json_writer *out);

const char *schema_basis_at(size_t index);

/* ---- parts of the schema of reports ---------------------------------------------------------- */

/* How sure a finding is, and what is uncertain of the lengths. */
void schema_probability(struct json_writer *out);
void schema_uncertainty(struct json_writer *out);

/* ---- amounts of survey documents ------------------------------------------------------------- */

/* The $defs of every dimension that is written as an amount. */
void schema_amounts(struct json_writer *out);

/* What stands behind a dimension's name for an amount that has no tolerance. */
#define SCHEMA_FIXED "-without-tolerance"

/* The $def of whatever does not need the document's unit. */
#define SCHEMA_WITH_UNIT "with-unit"

/* Whether a bare number of this dimension takes the document's unit. */
bool schema_takes_document_unit(ingle_dimension dimension);

#endif
