/* SPDX-License-Identifier: MIT */
/*
 * The schema of report documents, and of the findings in them.
 */
#include "schema/schema.h"

#include <ingle/ingle.h>

#define COUNT(names) (sizeof names / sizeof names[0])

/* ---- findings -------------------------------------------------------------------------------- */

static void write_working(struct json_writer *out)
{
    static const char *const required[] = {"step", "expression", "substituted"};
    schema_open_array(out, "working", "The steps of the calculation, in their order.");
    schema_open_object(out, "items", NULL);
    schema_type(out, "step", "string", "What the step gives.");
    schema_type(out, "expression", "string", NULL);
    schema_type(out, "substituted", "string", NULL);
    schema_reference(out, "result", "amount", "");
    schema_type(out, "remark", "string", "More to say of it, such as the table it is from.");
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

static void write_remedy(struct json_writer *out)
{
    static const char *const required[] = {"change", "to", "text"};
    schema_open_array(out, "remedy", "Changes of which each alone would meet the rule.");
    schema_open_object(out, "items", NULL);
    schema_reference(out, "change", "pointer", "");
    schema_reference(out, "to", "amount", "");
    schema_type(out, "text", "string", NULL);
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

static void write_missing(struct json_writer *out)
{
    schema_open_array(out, "missing", "What was not recorded and is needed here.");
    schema_reference(out, "items", "pointer", "");
    schema_close_array(out);
}

void schema_finding(struct json_writer *out)
{
    static const char *const required[] = {"standard", "rule",    "section",  "basis",
                                           "subject",  "label",   "verdict",  "relation",
                                           "citation", "sentence"};
    schema_open_object(out, "items", "One rule judged on one thing.");
    schema_standard(out);
    schema_type(out, "rule", "string", NULL);
    schema_type(out, "section", "string", NULL);
    schema_names(out, "basis", NULL, schema_basis_at);
    schema_type(out, "by_listing", "boolean",
                "What is required is the listing's, to which the rule gave way.");
    schema_reference(out, "subject", "pointer", "");
    schema_type(out, "label", "string", NULL);
    schema_verdict(out, "Whether the rule is met.");
    schema_relation(out);
    schema_reference(out, "measured", "amount", "");
    schema_reference(out, "required", "amount", "");
    schema_reference(out, "margin", "amount", "");
    schema_reference(out, "usual", "amount", "");
    schema_type(out, "reading", "string", "How the text was read where it can be read otherwise.");
    schema_type(out, "amendment", "string", "Where the authority amends the rule's numbers.");
    schema_type(out, "citation", "string", NULL);
    schema_type(out, "sentence", "string", "The verdict in words.");
    write_missing(out);
    write_working(out);
    write_remedy(out);
    schema_probability(out);
    schema_type(out, "caution", "string", NULL);
    schema_type(out, "mend", "string",
                "What puts it right, in a sentence, where no remedy is computed.");
    schema_type(out, "refer", "string", "Who should look next.");
    schema_type(out, "inspection", "string", "Which inspection is called for, and why.");
    schema_close_object(out, required, COUNT(required));
}

/* ---- the document ---------------------------------------------------------------------------- */

static void write_unmeasured(struct json_writer *out)
{
    static const char *const required[] = {"quantity", "label", "for", "how"};
    schema_open_array(out, "unmeasured", "What to measure or observe next.");
    schema_open_object(out, "items", NULL);
    schema_reference(out, "quantity", "pointer", "");
    schema_type(out, "label", "string", "What it is, in words.");
    schema_texts(out, "for", "The rules that need it.");
    schema_type(out, "how", "string", "How it is measured.");
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

static void write_standards(struct json_writer *out)
{
    static const char *const required[] = {"standard", "verdict"};
    schema_open_array(out, "standards", "What each standard comes to by itself.");
    schema_open_object(out, "items", NULL);
    schema_standard(out);
    schema_verdict(out, "The gravest of its findings.");
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

static void write_unjudged(struct json_writer *out)
{
    static const char *const required[] = {"quantity", "label", "standards"};
    schema_open_array(out, "unjudged",
                      "What was recorded, though no rule of the standards named makes use of it.");
    schema_open_object(out, "items", NULL);
    schema_reference(out, "quantity", "pointer", "");
    schema_type(out, "label", "string", "What it is, in words.");
    schema_open_array(out, "standards", "Standards of the same places that have a rule on it.");
    json_open_object(out, "items");
    schema_enum(out, schema_standard_at);
    json_close_object(out);
    schema_close_array(out);
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

static void write_properties(struct json_writer *out)
{
    schema_type(out, "id", "string", "That of the survey document, if it has one.");
    schema_verdict(out, "The gravest of the findings.");
    schema_open_array(out, "findings", NULL);
    schema_finding(out);
    schema_close_array(out);
    write_unmeasured(out);
    write_unjudged(out);
    write_standards(out);
    schema_uncertainty(out);
    schema_texts(out, "notices", "Cautions that belong to the whole report.");
    schema_release(out);
}

void schema_report(struct json_writer *out)
{
    static const char *const required[] = {"verdict",   "findings", "unmeasured", "unjudged",
                                           "standards", "notices",  "ingle"};
    schema_answer_definitions(out);
    schema_open_document(out, "Report",
                         "A survey judged by the standards adopted. It says which numbers of the "
                         "publications are met; the local authority and the appliance's listing "
                         "decide.");
    write_properties(out);
    schema_close_document(out, required, COUNT(required));
}
