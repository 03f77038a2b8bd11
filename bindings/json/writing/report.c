/* SPDX-License-Identifier: MIT */
#include "writing/report.h"

#include "writing/amount.h"
#include "writing/probability.h"

#include <stdio.h>
#include <string.h>

/* ---- texts that the library writes ----------------------------------------------------------- */

static ingle_status step_text(const void *step, int32_t part, const ingle_format *format,
                              char *buffer, size_t capacity, size_t *length)
{
    return ingle_step_text(step, part, format, buffer, capacity, length);
}

static ingle_status remedy_text(const void *remedy, int32_t part, const ingle_format *format,
                                char *buffer, size_t capacity, size_t *length)
{
    return ingle_remedy_text(remedy, part, format, buffer, capacity, length);
}

static ingle_status unjudged_text(const void *unjudged, int32_t part, const ingle_format *format,
                                  char *buffer, size_t capacity, size_t *length)
{
    (void)part;
    (void)format;
    return ingle_unjudged_subject_text(unjudged, buffer, capacity, length);
}

static ingle_status missing_text(const void *missing, int32_t part, const ingle_format *format,
                                 char *buffer, size_t capacity, size_t *length)
{
    (void)part;
    (void)format;
    return ingle_missing_subject_text(missing, buffer, capacity, length);
}

static void write_amounts(struct json_writer *writer, const ingle_finding *finding,
                          const ingle_format *format)
{
    const ingle_quantity *quantity = ingle_finding_quantity(finding);
    ingle_amount amount;
    if (ingle_finding_measured(finding, &amount)) {
        json_amount_of(writer, "measured", quantity, &amount, format);
    }
    if (ingle_finding_required(finding, &amount)) {
        json_amount_of(writer, "required", quantity, &amount, format);
    }
    if (ingle_finding_margin(finding, &amount)) {
        json_amount_of(writer, "margin", quantity, &amount, format);
    }
    if (ingle_finding_usual(finding, &amount)) {
        json_amount_of(writer, "usual", quantity, &amount, format);
    }
}

/* ---- a finding ------------------------------------------------------------------------------- */

static void write_rule(struct json_writer *writer, const ingle_finding *finding)
{
    const ingle_rule *rule = ingle_finding_rule(finding);
    json_text(writer, "standard", ingle_standard_id(ingle_finding_standard(finding)));
    json_text(writer, "rule", ingle_rule_id(rule));
    json_text(writer, "section", ingle_rule_section(rule));
    json_text(writer, "basis", ingle_basis_name(ingle_rule_basis(rule)));
    if (ingle_finding_by_listing(finding)) {
        json_boolean(writer, "by_listing", true);
    }
}

static void write_if_any(struct json_writer *writer, const char *name, const char *text)
{
    if (text != NULL) {
        json_text(writer, name, text);
    }
}

static ingle_status lacking_text(const void *finding, int32_t part, const ingle_format *format,
                                 char *buffer, size_t capacity, size_t *length)
{
    (void)format;
    return ingle_finding_missing_text(finding, (size_t)part, buffer, capacity, length);
}

static void write_missing(struct json_writer *writer, const ingle_finding *finding)
{
    size_t count = ingle_finding_missing_count(finding);
    if (count == 0) {
        return;
    }
    json_open_array(writer, "missing");
    for (size_t i = 0; i < count; i++) {
        json_text_from(writer, NULL, lacking_text, finding, (int32_t)i, NULL);
    }
    json_close_array(writer);
}

static void write_step(struct json_writer *writer, const ingle_step *step,
                       const ingle_format *format)
{
    ingle_amount amount;
    size_t length;
    json_open_object(writer, NULL);
    json_text(writer, "step", ingle_step_label(step));
    json_text_from(writer, "expression", step_text, step, INGLE_STEP_EXPRESSION, format);
    json_text_from(writer, "substituted", step_text, step, INGLE_STEP_SUBSTITUTED, format);
    if (ingle_step_result(step, &amount) && ingle_dimension_is_amount(amount.dimension)) {
        json_amount(writer, "result", &amount, format);
    }
    if (ingle_step_text(step, INGLE_STEP_REMARK, NULL, NULL, 0, &length) >= 0 && length > 0) {
        json_text_from(writer, "remark", step_text, step, INGLE_STEP_REMARK, format);
    }
    json_close_object(writer);
}

static void write_working(struct json_writer *writer, const ingle_finding *finding,
                          const ingle_format *format)
{
    size_t count = ingle_finding_step_count(finding);
    if (count == 0) {
        return;
    }
    json_open_array(writer, "working");
    for (size_t i = 0; i < count; i++) {
        write_step(writer, ingle_finding_step_at(finding, i), format);
    }
    json_close_array(writer);
}

static void write_remedies(struct json_writer *writer, const ingle_finding *finding,
                           const ingle_format *format)
{
    size_t count = ingle_finding_remedy_count(finding);
    if (count == 0) {
        return;
    }
    json_open_array(writer, "remedy");
    for (size_t i = 0; i < count; i++) {
        const ingle_remedy *remedy = ingle_finding_remedy_at(finding, i);
        ingle_amount amount;
        ingle_remedy_amount(remedy, &amount);
        json_open_object(writer, NULL);
        json_text_from(writer, "change", remedy_text, remedy, INGLE_REMEDY_SUBJECT, format);
        json_amount_of(writer, "to", ingle_remedy_quantity(remedy), &amount, format);
        json_text_from(writer, "text", remedy_text, remedy, INGLE_REMEDY_SENTENCE, format);
        json_close_object(writer);
    }
    json_close_array(writer);
}

static size_t write_part(struct json_writer *writer, const char *name,
                         const ingle_finding *finding, ingle_finding_part part,
                         const ingle_format *format)
{
    return json_text_from(writer, name, json_finding_text, finding, part, format);
}

/* An empty caution is taken back: asking first whether there is one would write it twice. */
static void write_caution(struct json_writer *writer, const ingle_finding *finding,
                          const ingle_format *format)
{
    struct json_mark before = json_mark(writer);
    if (write_part(writer, "caution", finding, INGLE_FINDING_CAUTION, format) == 0) {
        json_return(writer, before);
    }
}

/* `conformance` tells how sure the finding is; NULL leaves that out. */
static void write_finding(struct json_writer *writer, const ingle_finding *finding,
                          const ingle_conformance *conformance, bool with_working,
                          const ingle_unit *unit)
{
    ingle_format format = {.size = sizeof format, .unit = unit};
    if (unit == NULL) {
        format.unit = ingle_standard_unit(ingle_finding_standard(finding));
    }
    ingle_relation relation = ingle_finding_relation(finding);
    json_open_object(writer, NULL);
    write_rule(writer, finding);
    write_part(writer, "subject", finding, INGLE_FINDING_SUBJECT, &format);
    write_part(writer, "label", finding, INGLE_FINDING_LABEL, &format);
    json_text(writer, "verdict", ingle_verdict_name(ingle_finding_verdict(finding)));
    json_text(writer, "relation", ingle_relation_name(relation));
    write_amounts(writer, finding, &format);
    write_if_any(writer, "reading", ingle_finding_reading(finding));
    write_if_any(writer, "amendment", ingle_finding_amendment(finding));
    write_part(writer, "citation", finding, INGLE_FINDING_CITATION, &format);
    write_part(writer, "sentence", finding, INGLE_FINDING_SENTENCE, &format);
    write_missing(writer, finding);
    write_working(writer, finding, &format);
    write_remedies(writer, finding, &format);
    if (conformance != NULL) {
        json_probability_write(writer, conformance, with_working, &format);
    }
    write_caution(writer, finding, &format);
    write_if_any(writer, "mend", ingle_finding_mend(finding));
    write_if_any(writer, "refer", ingle_finding_refer(finding));
    write_if_any(writer, "inspection", ingle_finding_inspection(finding));
    json_close_object(writer);
}

void json_finding_write(struct json_writer *writer, const ingle_finding *finding,
                        const ingle_unit *unit)
{
    write_finding(writer, finding, NULL, false, unit);
}

/* ---- the whole ------------------------------------------------------------------------------- */

static void write_findings(struct json_writer *writer, const struct json_report *report)
{
    size_t count = ingle_report_finding_count(report->report);
    json_open_array(writer, "findings");
    for (size_t i = 0; i < count; i++) {
        const ingle_conformance *conformance =
            report->assessment == NULL ? NULL : ingle_assessment_at(report->assessment, i);
        write_finding(writer, ingle_report_finding_at(report->report, i), conformance,
                      report->with_working, report->unit);
    }
    json_close_array(writer);
}

static void write_unmeasured(struct json_writer *writer, const ingle_report *report)
{
    size_t count = ingle_report_missing_count(report);
    json_open_array(writer, "unmeasured");
    for (size_t i = 0; i < count; i++) {
        const ingle_missing *missing = ingle_report_missing_at(report, i);
        size_t rules = ingle_missing_rule_count(missing);
        json_open_object(writer, NULL);
        json_text_from(writer, "quantity", missing_text, missing, 0, NULL);
        json_text(writer, "label", ingle_missing_label(missing));
        json_open_array(writer, "for");
        for (size_t j = 0; j < rules; j++) {
            json_text(writer, NULL, ingle_missing_rule_at(missing, j));
        }
        json_close_array(writer);
        json_text(writer, "how", ingle_missing_how(missing));
        json_close_object(writer);
    }
    json_close_array(writer);
}

static void write_standards(struct json_writer *writer, const ingle_report *report)
{
    size_t count = ingle_report_standard_count(report);
    json_open_array(writer, "standards");
    for (size_t i = 0; i < count; i++) {
        json_open_object(writer, NULL);
        json_text(writer, "standard", ingle_standard_id(ingle_report_standard_at(report, i)));
        json_text(writer, "verdict",
                  ingle_verdict_name(ingle_report_standard_verdict(report, i)));
        json_close_object(writer);
    }
    json_close_array(writer);
}

static void write_unjudged(struct json_writer *writer, const ingle_report *report)
{
    const ingle_unjudged *unjudged;
    const ingle_standard *standard;
    json_open_array(writer, "unjudged");
    for (size_t i = 0; (unjudged = ingle_report_unjudged_at(report, i)) != NULL; i++) {
        json_open_object(writer, NULL);
        json_text_from(writer, "quantity", unjudged_text, unjudged, 0, NULL);
        json_text(writer, "label", ingle_quantity_label(ingle_unjudged_quantity(unjudged)));
        json_open_array(writer, "standards");
        for (size_t j = 0; (standard = ingle_unjudged_standard_at(unjudged, j)) != NULL; j++) {
            json_text(writer, NULL, ingle_standard_id(standard));
        }
        json_close_array(writer);
        json_close_object(writer);
    }
    json_close_array(writer);
}

/* An amount that was rounded says so: it is not to the last digit what the document has. */
static void write_rounded(struct json_writer *writer, const struct json_reader *document)
{
    for (size_t i = 0; i < document->rounded_count; i++) {
        char pointer[256], notice[400];
        json_scan_pointer(document->scan, document->rounded[i], pointer, sizeof pointer);
        snprintf(notice, sizeof notice,
                 "%s: this is no whole number of base units; the nearest one was taken.", pointer);
        json_text(writer, NULL, notice);
    }
}

static void write_notices(struct json_writer *writer, const struct json_report *report)
{
    size_t count = ingle_report_notice_count(report->report);
    json_open_array(writer, "notices");
    for (size_t i = 0; i < count; i++) {
        json_text(writer, NULL, ingle_report_notice_at(report->report, i));
    }
    write_rounded(writer, report->document);
    json_close_array(writer);
}

bool json_report_write(const struct json_report *report, struct json_writer *writer, bool one_line)
{
    const struct json_reader *document = report->document;
    json_start(writer, one_line);
    json_open_object(writer, NULL);
    if (document->id != NULL) {
        json_text_bytes(writer, "id", document->id, document->id_length);
    }
    json_text(writer, "verdict", ingle_verdict_name(ingle_report_verdict(report->report)));
    write_findings(writer, report);
    write_unmeasured(writer, report->report);
    write_unjudged(writer, report->report);
    write_standards(writer, report->report);
    if (report->assessment != NULL) {
        json_uncertainty_write(writer, report->assessment, report->probability,
                               report->with_working, report->unit);
    }
    write_notices(writer, report);
    json_text(writer, "ingle", ingle_version());
    json_close_object(writer);
    return json_finish(writer);
}
