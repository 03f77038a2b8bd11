/* SPDX-License-Identifier: MIT */
/*
 * The schema of estimates of the draft: their figures are those of the catalogue.
 */
#include "schema/schema.h"

#include <ingle/ingle.h>

#include <string.h>

#define COUNT(names) (sizeof names / sizeof names[0])

/* ---- names ----------------------------------------------------------------------------------- */

static const char *standing_at(size_t index)
{
    return ingle_draft_standing_name((ingle_draft_standing)index + INGLE_DRAFT_NO_DRAFT);
}

static const char *figure_at(size_t index)
{
    return ingle_draft_figure_id(ingle_draft_figure_at(index));
}

static const char *from_at(size_t index)
{
    static const char *const names[] = {"survey", "given", "default", "computed"};
    return index < COUNT(names) ? names[index] : NULL;
}

/* Whether a basis stands among those of the numbers before this one. */
static bool is_met(size_t number)
{
    const char *basis = ingle_draft_number_basis(ingle_draft_number_at(number));
    for (size_t i = 0; i < number; i++) {
        if (strcmp(ingle_draft_number_basis(ingle_draft_number_at(i)), basis) == 0) {
            return true;
        }
    }
    return false;
}

/* Each basis that a number of the catalogue has, once. */
static const char *basis_at(size_t index)
{
    for (size_t i = 0; i < ingle_draft_number_count(); i++) {
        if (!is_met(i) && index-- == 0) {
            return ingle_draft_number_basis(ingle_draft_number_at(i));
        }
    }
    return NULL;
}

/* ---- figures --------------------------------------------------------------------------------- */

static void write_value(struct json_writer *out)
{
    schema_type(out, "value", "number", NULL);
    schema_type(out, "unit", "string", "Not there where the figure has none.");
    schema_type(out, "text", "string", "For people: to three digits.");
}

static void write_figure(struct json_writer *out)
{
    static const char *const required[] = {"label", "symbol", "value", "text"};
    schema_open_object(out, "result", NULL);
    schema_type(out, "label", "string", NULL);
    schema_type(out, "symbol", "string", "Its sign in the equations.");
    write_value(out);
    schema_close_object(out, required, COUNT(required));
}

static void write_input(struct json_writer *out)
{
    static const char *const required[] = {"label", "symbol", "value", "text", "from"};
    schema_open_object(out, "input", NULL);
    schema_type(out, "label", "string", NULL);
    schema_type(out, "symbol", "string", "Its sign in the equations.");
    write_value(out);
    schema_names(out, "from", "Where it comes from.", from_at);
    schema_type(out, "origin", "string", "The quantities of the survey that it comes from.");
    schema_type(out, "source", "string", "Of a default: where that comes from.");
    schema_names(out, "basis", "Of a default: how it is known.", basis_at);
    schema_close_object(out, required, COUNT(required));
}

static void write_figures(struct json_writer *out, const char *property, const char *description,
                          const char *definition, bool inputs)
{
    schema_open_object(out, property, description);
    for (size_t i = 0; i < ingle_draft_figure_count(); i++) {
        ingle_draft_figure figure = ingle_draft_figure_at(i);
        if ((ingle_draft_figure_is_input(figure) != 0) == inputs) {
            schema_reference(out, ingle_draft_figure_id(figure), definition, "");
        }
    }
    schema_close_object(out, NULL, 0);
}

static void write_sensitivities(struct json_writer *out)
{
    schema_open_object(out, "sensitivities",
                       "By how many percent the velocity follows each percent of a figure.");
    for (size_t i = 0; i < ingle_draft_figure_count(); i++) {
        if (ingle_draft_figure_is_input(ingle_draft_figure_at(i))) {
            schema_type(out, figure_at(i), "number", NULL);
        }
    }
    schema_close_object(out, NULL, 0);
}

/* ---- the rest -------------------------------------------------------------------------------- */

static void write_outside(struct json_writer *out)
{
    static const char *const required[] = {"reason"};
    schema_open_array(out, "outside", "What puts it outside what may be claimed.");
    schema_open_object(out, "items", NULL);
    schema_names(out, "figure", NULL, figure_at);
    schema_type(out, "reason", "string", "In a sentence.");
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

static void write_working(struct json_writer *out)
{
    static const char *const required[] = {"step", "figure", "expression", "substituted",
                                           "result"};
    static const char *const result[] = {"value", "text"};
    schema_open_array(out, "working", "The steps of the calculation, in their order.");
    schema_open_object(out, "items", NULL);
    schema_type(out, "step", "string", "What the step gives.");
    schema_names(out, "figure", NULL, figure_at);
    schema_type(out, "expression", "string", NULL);
    schema_type(out, "substituted", "string", NULL);
    schema_open_object(out, "result", NULL);
    write_value(out);
    schema_close_object(out, result, COUNT(result));
    schema_type(out, "remark", "string", NULL);
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

void schema_draft(struct json_writer *out)
{
    static const char *const required[] = {"standing", "reached",       "sentence", "claimable",
                                           "outside",  "inputs",        "results",  "sensitivities",
                                           "working",  "notices",       "ingle"};
    json_open_object(out, "$defs");
    write_figure(out);
    write_input(out);
    json_close_object(out);
    schema_open_document(out, "Draft",
                         "An estimate of the draft of an open fireplace. It decides no rule, and "
                         "is no promise about smoke.");
    schema_type(out, "id", "string", "That of the survey document, if it has one.");
    schema_names(out, "standing", "How it stands to the criterion.", standing_at);
    schema_type(out, "reached", "boolean",
                "Whether the velocity is the criterion or more, its uncertainty left out.");
    schema_type(out, "sentence", "string", NULL);
    schema_type(out, "claimable", "boolean", "Whether nothing puts it outside.");
    write_outside(out);
    write_figures(out, "inputs", "What went in.", "input", true);
    write_figures(out, "results", "What came out.", "result", false);
    write_sensitivities(out);
    write_working(out);
    schema_texts(out, "notices", "Cautions that belong to the estimate.");
    schema_release(out);
    schema_close_document(out, required, COUNT(required));
}
