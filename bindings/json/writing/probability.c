/* SPDX-License-Identifier: MIT */
#include "writing/probability.h"

#include "writing/amount.h"

#include <stdio.h>

/* ---- texts that the library writes ----------------------------------------------------------- */

static ingle_status conformance_text(const void *conformance, int32_t part,
                                     const ingle_format *format, char *buffer, size_t capacity,
                                     size_t *length)
{
    return ingle_conformance_text(conformance, part, format, buffer, capacity, length);
}

static ingle_status step_text(const void *step, int32_t part, const ingle_format *format,
                              char *buffer, size_t capacity, size_t *length)
{
    return ingle_uncertainty_step_text(step, part, format, buffer, capacity, length);
}

static ingle_status budget_text(const void *budget, int32_t part, const ingle_format *format,
                                char *buffer, size_t capacity, size_t *length)
{
    (void)part;
    (void)format;
    return ingle_length_budget_subject_text(budget, buffer, capacity, length);
}

static ingle_status figure_text(const void *figure, int32_t part, const ingle_format *format,
                                char *buffer, size_t capacity, size_t *length)
{
    (void)part;
    return ingle_figure_format(figure, format, buffer, capacity, length);
}

/* An empty text is taken back: asking first whether there is one would write it twice. */
static void write_text_if_any(struct json_writer *writer, const char *name,
                              json_source source, const void *object, int32_t part,
                              const ingle_format *format)
{
    struct json_mark before = json_mark(writer);
    if (json_text_from(writer, name, source, object, part, format) == 0) {
        json_return(writer, before);
    }
}

/* ---- figures --------------------------------------------------------------------------------- */

static void write_digits(struct json_writer *writer, const char *name, const ingle_figure *figure,
                         const ingle_format *format)
{
    char room[64]; /* more than any figure takes */
    ingle_figure_decimal(figure, format, room, sizeof room, NULL);
    json_digits(writer, name, room);
}

static void write_figure(struct json_writer *writer, const char *name, const ingle_figure *figure,
                         const ingle_format *format)
{
    const ingle_unit *unit = ingle_figure_unit(figure, format);
    json_open_object(writer, name);
    write_digits(writer, "value", figure, format);
    if (unit != NULL) {
        json_text(writer, "unit", ingle_unit_id(unit));
    }
    json_text_from(writer, "text", figure_text, figure, 0, format);
    json_close_object(writer);
}

static void write_number(struct json_writer *writer, const char *name, double number)
{
    ingle_figure figure = {number, INGLE_COUNT, 0};
    write_digits(writer, name, &figure, NULL);
}

/* ---- steps ----------------------------------------------------------------------------------- */

static void write_step(struct json_writer *writer, const ingle_uncertainty_step *step,
                       const ingle_format *format)
{
    ingle_figure figure;
    const char *about = ingle_uncertainty_step_about(step);
    json_open_object(writer, NULL);
    json_text(writer, "step", ingle_uncertainty_step_label(step));
    if (about != NULL) {
        json_text(writer, "about", about);
    }
    json_text_from(writer, "expression", step_text, step, INGLE_STEP_EXPRESSION, format);
    json_text_from(writer, "substituted", step_text, step, INGLE_STEP_SUBSTITUTED, format);
    if (ingle_uncertainty_step_result(step, &figure)) {
        write_figure(writer, "result", &figure, format);
    }
    write_text_if_any(writer, "remark", step_text, step, INGLE_STEP_REMARK, format);
    json_close_object(writer);
}

/* ---- a finding's ----------------------------------------------------------------------------- */

static void write_run(struct json_writer *writer, const ingle_conformance *conformance,
                      const ingle_format *format)
{
    ingle_monte_carlo run = {.size = sizeof run};
    if (!ingle_conformance_monte_carlo(conformance, &run)) {
        return;
    }
    const ingle_quantity *judged =
        ingle_finding_quantity(ingle_conformance_finding(conformance));
    ingle_figure spread = {run.standard_uncertainty, ingle_quantity_dimension(judged), 0};
    json_open_object(writer, "monte_carlo");
    write_number(writer, "value", (double)run.met / (double)run.trials);
    json_integer(writer, "met", (int64_t)run.met);
    json_integer(writer, "trials", (int64_t)run.trials);
    if (run.outside > 0) {
        json_integer(writer, "outside", (int64_t)run.outside);
    }
    write_figure(writer, "standard_uncertainty", &spread, format);
    json_boolean(writer, "agrees", run.agrees != 0);
    json_close_object(writer);
}

static void write_known(struct json_writer *writer, const ingle_conformance *conformance,
                        double probability, const ingle_format *format)
{
    ingle_figure uncertainty;
    write_number(writer, "value", probability);
    json_text(writer, "method", ingle_method_name(ingle_conformance_method(conformance)));
    if (ingle_conformance_uncertainty(conformance, &uncertainty)) {
        write_figure(writer, "standard_uncertainty", &uncertainty, format);
    }
    json_text(writer, "decision",
              ingle_decision_name(ingle_conformance_decision(conformance)));
    write_run(writer, conformance, format);
}

static void write_working(struct json_writer *writer, const ingle_conformance *conformance,
                          const ingle_format *format)
{
    json_open_array(writer, "working");
    for (size_t i = 0; i < ingle_conformance_step_count(conformance); i++) {
        write_step(writer, ingle_conformance_step_at(conformance, i), format);
    }
    json_close_array(writer);
}

void json_probability_write(struct json_writer *writer, const ingle_conformance *conformance,
                            bool with_working, const ingle_format *format)
{
    double probability;
    bool known = ingle_conformance_probability(conformance, &probability);
    if (!known && !ingle_finding_margin(ingle_conformance_finding(conformance), NULL)) {
        return;
    }
    json_open_object(writer, "probability");
    if (known) {
        write_known(writer, conformance, probability, format);
    }
    json_text_from(writer, "sentence", conformance_text, conformance,
                      INGLE_CONFORMANCE_SENTENCE, format);
    write_text_if_any(writer, "caution", conformance_text, conformance,
                             INGLE_CONFORMANCE_CAUTION, format);
    if (known && with_working) {
        write_working(writer, conformance, format);
    }
    json_close_object(writer);
}

/* ---- the report's ---------------------------------------------------------------------------- */

static void write_missing(struct json_writer *writer, const ingle_assessment *assessment)
{
    const ingle_quantity *quantity;
    json_open_array(writer, "missing");
    for (size_t i = 0; (quantity = ingle_assessment_missing_at(assessment, i)) != NULL; i++) {
        char pointer[80];
        snprintf(pointer, sizeof pointer, "/survey/%s/%s", ingle_quantity_group(quantity),
                 ingle_quantity_name(quantity));
        json_text(writer, NULL, pointer);
    }
    json_close_array(writer);
}

static void write_length(struct json_writer *writer, const ingle_length_budget *budget,
                         bool with_working, const ingle_format *format)
{
    ingle_figure uncertainty;
    json_open_object(writer, NULL);
    json_text_from(writer, "quantity", budget_text, budget, 0, format);
    if (ingle_length_budget_uncertainty(budget, &uncertainty)) {
        write_figure(writer, "standard_uncertainty", &uncertainty, format);
    }
    if (with_working) {
        json_open_array(writer, "working");
        for (size_t i = 0; i < ingle_length_budget_step_count(budget); i++) {
            write_step(writer, ingle_length_budget_step_at(budget, i), format);
        }
        json_close_array(writer);
    }
    json_close_object(writer);
}

void json_uncertainty_write(struct json_writer *writer, const ingle_assessment *assessment,
                            const ingle_probability_options *options, bool with_working,
                            const ingle_unit *unit)
{
    ingle_format format = {.size = sizeof format, .unit = unit};
    const ingle_length_budget *budget;
    json_open_object(writer, "uncertainty");
    json_text(writer, "text", ingle_assessment_text(assessment));
    if (ingle_assessment_missing_count(assessment) > 0) {
        write_missing(writer, assessment);
    }
    json_text(writer, "decision_rule", ingle_decision_rule_name(options->rule));
    write_number(writer, "guard_band", options->guard_factor);
    json_open_array(writer, "lengths");
    for (size_t i = 0; (budget = ingle_assessment_length_at(assessment, i)) != NULL; i++) {
        write_length(writer, budget, with_working, &format);
    }
    json_close_array(writer);
    json_close_object(writer);
}
