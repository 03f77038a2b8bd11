/* SPDX-License-Identifier: MIT */
/*
 * The parts of the schema of reports that say how sure findings are.
 */
#include "schema/schema.h"

#include <ingle/ingle.h>

#define COUNT(names) (sizeof names / sizeof names[0])

static const char *method_at(size_t index)
{
    return ingle_method_name((ingle_method)index + INGLE_METHOD_FIRST_ORDER);
}

static const char *decision_at(size_t index)
{
    return ingle_decision_name((ingle_decision)index + INGLE_DECISION_PASS);
}

static const char *rule_at(size_t index)
{
    return ingle_decision_rule_name((ingle_decision_rule)index);
}

static void write_names(struct json_writer *out, const char *property, const char *description,
                        const char *(*name_at)(size_t index))
{
    json_open_object(out, property);
    json_text(out, "description", description);
    schema_enum(out, name_at);
    json_close_object(out);
}

static void write_share(struct json_writer *out, const char *property, const char *description)
{
    json_open_object(out, property);
    json_text(out, "description", description);
    json_text(out, "type", "number");
    json_integer(out, "minimum", 0);
    json_integer(out, "maximum", 1);
    json_close_object(out);
}

static void write_working(struct json_writer *out)
{
    static const char *const required[] = {"step", "expression", "substituted"};
    schema_open_array(out, "working", "The steps of the calculation, in their order.");
    schema_open_object(out, "items", NULL);
    schema_type(out, "step", "string", "What the step gives.");
    schema_type(out, "about", "string", "The quantity it is about.");
    schema_type(out, "expression", "string", NULL);
    schema_type(out, "substituted", "string", NULL);
    schema_reference(out, "result", "figure", "");
    schema_type(out, "remark", "string", NULL);
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

static void write_run(struct json_writer *out)
{
    static const char *const required[] = {"value", "met", "trials", "standard_uncertainty",
                                           "agrees"};
    schema_open_object(out, "monte_carlo", "What a Monte Carlo run came to.");
    write_share(out, "value", "In which share of the trials the rule was met.");
    schema_type(out, "met", "integer", NULL);
    schema_type(out, "trials", "integer", NULL);
    schema_type(out, "outside", "integer", "Trials for which the publication prints no value.");
    schema_reference(out, "standard_uncertainty", "figure", "");
    schema_type(out, "agrees", "boolean", "Whether it agrees with the first-order law.");
    schema_close_object(out, required, COUNT(required));
}

void schema_probability(struct json_writer *out)
{
    static const char *const required[] = {"sentence"};
    schema_open_object(out, "probability",
                       "How sure it is that the rule is met, beside the verdict and without a part "
                       "in it.");
    write_share(out, "value", "The probability that the rule is met.");
    write_names(out, "method", "How it was found.", method_at);
    schema_reference(out, "standard_uncertainty", "figure", "");
    write_names(out, "decision", "What the decision rule comes to.", decision_at);
    write_run(out);
    schema_type(out, "sentence", "string", NULL);
    schema_type(out, "caution", "string", NULL);
    write_working(out);
    schema_close_object(out, required, COUNT(required));
}

static void write_length(struct json_writer *out)
{
    static const char *const required[] = {"quantity"};
    schema_open_array(out, "lengths", "The lengths measured with the tape.");
    schema_open_object(out, "items", NULL);
    schema_reference(out, "quantity", "pointer", "");
    schema_reference(out, "standard_uncertainty", "figure", "");
    write_working(out);
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

void schema_uncertainty(struct json_writer *out)
{
    static const char *const required[] = {"text", "decision_rule", "guard_band", "lengths"};
    schema_open_object(out, "uncertainty", "What the probabilities of the findings rest on.");
    schema_type(out, "text", "string", NULL);
    schema_open_array(out, "missing", "What has to be recorded of the tape first.");
    schema_reference(out, "items", "pointer", "");
    schema_close_array(out);
    write_names(out, "decision_rule", "The decision rule.", rule_at);
    schema_type(out, "guard_band", "number", "In expanded uncertainties U.");
    write_length(out);
    schema_close_object(out, required, COUNT(required));
}
