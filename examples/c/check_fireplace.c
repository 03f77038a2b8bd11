/* SPDX-License-Identifier: MIT */
/*
 * Judges one masonry fireplace by the International Residential Code of 2021 and prints what a
 * reader of the report has to know. The house is invented.
 *
 *     cc -std=c11 check_fireplace.c $(pkg-config --cflags --libs ingle) -o check_fireplace
 */
#include <ingle/ingle.h>

#include <stdio.h>
#include <stdlib.h>

/* What was written down at the fireplace. A tolerance is the half-width of the measurement. */
static const struct {
    const char *path;
    const char *text;
    const char *tolerance;
} notes[] = {
    {"appliance.kind", "masonry-fireplace", NULL},
    {"opening.width", "36 in", NULL},
    {"opening.height", "2 ft 6 in", NULL},
    {"hearth.front", "19 15/16 in", "1/16 in"},
    {"hearth.left", "12 1/4 in", "1/16 in"},
    {"hearth.right", "10 1/2 in", "1/16 in"},
    {"trim[0].side", "above", NULL},
    {"trim[0].distance", "10 in", NULL},
    {"trim[0].projection", "1 3/4 in", NULL},
    {"flue.liner", "12x12", NULL},
};

enum { NOTE_COUNT = sizeof notes / sizeof notes[0], LONGEST_TEXT = 1024 };

/* Where the library writes a text. The longest sentence is far shorter; a longer one is cut. */
static char text[LONGEST_TEXT];

/* Prints the text that a call has just written, unless it is empty. */
static void print_text(const char *label, ingle_status status)
{
    if (status < 0) {
        printf("%s(%s)\n", label, ingle_status_text(status));
    } else if (text[0] != '\0') {
        printf("%s%s\n", label, text);
    }
}

/* Prints a part of a finding. NULL means inches to the 64th; ingle_format has other ways. */
static void print_part(const char *label, const ingle_finding *finding, ingle_finding_part part)
{
    print_text(label, ingle_finding_text(finding, part, NULL, text, sizeof text, NULL));
}

static void print_finding(const ingle_finding *finding)
{
    printf("%s: ", ingle_verdict_name(ingle_finding_verdict(finding)));
    print_part("", finding, INGLE_FINDING_SENTENCE);
    print_part("    source: ", finding, INGLE_FINDING_CITATION);
    for (size_t i = 0; i < ingle_finding_step_count(finding); i++) {
        const ingle_step *step = ingle_finding_step_at(finding, i);
        print_text("    working: ",
                   ingle_step_text(step, INGLE_STEP_SENTENCE, NULL, text, sizeof text, NULL));
    }
    for (size_t i = 0; i < ingle_finding_remedy_count(finding); i++) {
        const ingle_remedy *remedy = ingle_finding_remedy_at(finding, i);
        print_text("    remedy: ",
                   ingle_remedy_text(remedy, INGLE_REMEDY_SENTENCE, NULL, text, sizeof text, NULL));
    }
    print_part("    caution: ", finding, INGLE_FINDING_CAUTION);
}

static void print_report(const ingle_report *report)
{
    printf("Gravest verdict: %s\n\n", ingle_verdict_name(ingle_report_verdict(report)));
    for (size_t i = 0; i < ingle_report_finding_count(report); i++) {
        const ingle_finding *finding = ingle_report_finding_at(report, i);
        /* What was not measured is listed below, once for each quantity. */
        if (ingle_finding_verdict(finding) != INGLE_UNMEASURED) {
            print_finding(finding);
        }
    }
    printf("\nNot measured:\n");
    for (size_t i = 0; i < ingle_report_missing_count(report); i++) {
        const ingle_quantity *quantity =
            ingle_missing_quantity(ingle_report_missing_at(report, i));
        printf("    %s. %s\n", ingle_quantity_label(quantity), ingle_quantity_how(quantity));
    }
    for (size_t i = 0; i < ingle_report_notice_count(report); i++) {
        printf("\nNotice: %s\n", ingle_report_notice_at(report, i));
    }
}

/* Records the notes. The survey itself knows what was wrong with one that it refuses. */
static ingle_status record(ingle_survey *survey)
{
    ingle_status status = ingle_survey_add_item(survey, "trim", "mantel shelf", NULL);
    for (size_t i = 0; i < NOTE_COUNT && status >= 0; i++) {
        status = ingle_survey_record(survey, notes[i].path, notes[i].text, notes[i].tolerance);
        if (status < 0) {
            fprintf(stderr, "%s: %s\n", notes[i].path, ingle_survey_error_text(survey));
        }
    }
    return status;
}

/* Judges the survey. A fireplace that meets nothing is a report too: statuses are for the call. */
static ingle_status check(const ingle_survey *survey, ingle_report *report)
{
    /* Which code is adopted is a local fact, so there is no default. */
    const ingle_standard *adopted = ingle_standard_find("irc-2021");
    ingle_status status = ingle_check(survey, &adopted, 1, NULL, report);
    if (status < 0) {
        fprintf(stderr, "%s: %s\n", ingle_report_error_subject(report),
                ingle_report_error_text(report));
    }
    return status;
}

int main(void)
{
    ingle_survey *survey = NULL;
    ingle_report *report = NULL;
    ingle_status status = ingle_survey_new(NULL, &survey);
    if (status >= 0) {
        status = ingle_report_new(NULL, &report);
    }
    if (status >= 0) {
        status = record(survey);
    }
    if (status >= 0) {
        status = check(survey, report);
    }
    if (status >= 0) {
        print_report(report);
    } else {
        fprintf(stderr, "check_fireplace: %s\n", ingle_status_text(status));
    }
    ingle_report_free(report); /* before the survey, to which it refers */
    ingle_survey_free(survey);
    return status >= 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
