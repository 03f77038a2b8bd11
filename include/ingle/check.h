/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Judging a survey by standards: findings with what is required, what was measured, the margin, the
 * verdict, the working, remedies and cautions.
 *
 * A finding says whether a number of a publication is met. It never says that something is safe.
 */
#ifndef INGLE_CHECK_H
#define INGLE_CHECK_H

#include <ingle/api.h>
#include <ingle/measure.h>
#include <ingle/memory.h>
#include <ingle/standards.h>
#include <ingle/status.h>
#include <ingle/survey.h>

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What a finding comes to. The greater number is the graver verdict. */
typedef int32_t ingle_verdict;

enum {
    /** The rule does not apply to what was surveyed. */
    INGLE_NOT_APPLICABLE = 0,
    /** The rule is met, wherever within the tolerances the true measures lie. */
    INGLE_MEETS = 1,
    /**
     * Something that the rule needs was not recorded, or the publication prints no value for what
     * was: then nothing is missing, and the sentence says so.
     */
    INGLE_UNMEASURED = 2,
    /** The appliance's own listing decides. */
    INGLE_BY_LISTING = 3,
    /** Within the tolerances it may be met or not, or it is not met but need not apply. */
    INGLE_TOO_CLOSE = 4,
    /** The rule applies and is not met, wherever within the tolerances the true measures lie. */
    INGLE_FAILS = 5
};

/** How many verdicts there are; they count from 0. */
INGLE_API size_t ingle_verdict_count(void);

/** The name of a verdict as documents write it: `too-close`; NULL for a number that is none. */
INGLE_API const char *ingle_verdict_name(ingle_verdict verdict);

/** What a verdict means, in a sentence; NULL for a number that is none. */
INGLE_API const char *ingle_verdict_text(ingle_verdict verdict);

/** The verdict of a name; -1 when there is none. */
INGLE_API ingle_verdict ingle_verdict_find(const char *name);

/* ---- checking ------------------------------------------------------------------------------- */

/** The findings of one check. One thread at a time may use it. */
typedef struct ingle_report ingle_report;

/** What a check does. Start from zeroed bytes and set `size`. */
typedef struct ingle_check_options {
    /** sizeof(ingle_check_options). */
    size_t size;
    /** Local amendments, or NULL. */
    const ingle_amendments *amendments;
    /** 1 leaves the steps of the calculation out. */
    int32_t without_working;
    /** 1 leaves the remedies out. */
    int32_t without_remedies;
    /** 1 adds findings for rules that do not apply. */
    int32_t with_not_applicable;
    /** 1 seeks remedies on the millimetre, 0 on the sixteenth of an inch. */
    int32_t metric_remedies;
    /**
     * For each of the readings, in the order of ingle_reading_at(), the number of the option to
     * follow; NULL follows the first of each.
     */
    const int32_t *readings;
    /** How many numbers there are; readings past them follow their first option. */
    size_t reading_count;
    /**
     * Judges by no row whose numbers are known less well than this: INGLE_BASIS_CITED leaves out
     * what is from memory and what is common practice. 0 leaves out none.
     */
    ingle_basis least_basis;
    /** Zero. */
    int32_t reserved;
} ingle_check_options;

/**
 * Makes an empty report.
 *
 * @param allocator where its memory comes from; NULL for the C library
 * @param[out] report receives it; give it back with ingle_report_free()
 * @returns INGLE_OK, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT, INGLE_ERROR_STRUCT_SIZE or
 *          INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_report_new(const ingle_allocator *allocator, ingle_report **report);

/** Gives a report back. NULL is allowed. */
INGLE_API void ingle_report_free(ingle_report *report);

/**
 * Judges a survey by every rule of every standard that applies to it.
 *
 * The report keeps its memory: used again, it asks for none once it has seen its largest survey.
 * It refers to the survey and the amendments, which must stay as they are while it is read.
 *
 * @param survey what was measured and observed
 * @param standards the standards adopted, in the order in which they shall be reported; one that is
 *                  among them twice is adopted once, where it comes first
 * @param standard_count how many; at least 1
 * @param options what to do, or NULL for all with steps and remedies
 * @param[out] report receives the findings; what it held before is gone
 * @returns INGLE_OK; INGLE_ERROR_NO_STANDARD; INGLE_ERROR_UNKNOWN_STANDARD for a NULL among
 *          them, whose index the error's text tells; INGLE_ERROR_CONTRADICTION if two things
 *          recorded cannot both be so, both of which it tells; INGLE_ERROR_OVERFLOW;
 *          INGLE_ERROR_MEMORY; INGLE_ERROR_ARGUMENT, also for an option of a reading or a basis
 *          that there is not; INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER. On error the
 *          report is empty, and ingle_report_error_text() and _subject() tell more.
 */
INGLE_API ingle_status ingle_check(const ingle_survey *survey,
                                   const ingle_standard *const *standards, size_t standard_count,
                                   const ingle_check_options *options, ingle_report *report);

/** What was wrong with the last check that failed, in a sentence; "" before one. */
INGLE_API const char *ingle_report_error_text(const ingle_report *report);

/** The JSON pointer of what was wrong, `/survey/flue/shape`; "" where it is the call itself. */
INGLE_API const char *ingle_report_error_subject(const ingle_report *report);

/* ---- the report ----------------------------------------------------------------------------- */

/** One rule judged on one thing. Borrowed from its report. */
typedef struct ingle_finding ingle_finding;

/** How many standards it was judged by. */
INGLE_API size_t ingle_report_standard_count(const ingle_report *report);

/**
 * One of these standards, from 0, each once, in the order in which they were given; NULL past the
 * end.
 */
INGLE_API const ingle_standard *ingle_report_standard_at(const ingle_report *report, size_t index);

/**
 * The gravest verdict of the findings by one of these standards, from 0: what a code says and what
 * is common practice stand apart. INGLE_NOT_APPLICABLE where none of its rules applied, and past
 * the end.
 */
INGLE_API ingle_verdict ingle_report_standard_verdict(const ingle_report *report, size_t index);

/** The gravest verdict of all findings; INGLE_NOT_APPLICABLE if no rule applied. */
INGLE_API ingle_verdict ingle_report_verdict(const ingle_report *report);

/** How many findings there are. */
INGLE_API size_t ingle_report_finding_count(const ingle_report *report);

/** One of the findings, from 0, by standard and rule; NULL past the end. */
INGLE_API const ingle_finding *ingle_report_finding_at(const ingle_report *report, size_t index);

/** How many cautions belong to the whole report. */
INGLE_API size_t ingle_report_notice_count(const ingle_report *report);

/** One of the cautions that belong to the whole report, from 0; NULL past the end. */
INGLE_API const char *ingle_report_notice_at(const ingle_report *report, size_t index);

/* ---- what was not measured ------------------------------------------------------------------ */

/** A quantity that findings lack. Borrowed from its report. */
typedef struct ingle_missing ingle_missing;

/** How many quantities findings lack. */
INGLE_API size_t ingle_report_missing_count(const ingle_report *report);

/** One of the quantities that findings lack, from 0; NULL past the end. */
INGLE_API const ingle_missing *ingle_report_missing_at(const ingle_report *report, size_t index);

/** Which quantity it is. */
INGLE_API const ingle_quantity *ingle_missing_quantity(const ingle_missing *missing);

/** What it is, in words; where a whole group was not looked at, the group's name. */
INGLE_API const char *ingle_missing_label(const ingle_missing *missing);

/** How it is measured; where a whole group was not looked at, how that is recorded. */
INGLE_API const char *ingle_missing_how(const ingle_missing *missing);

/** How many rules lack it. */
INGLE_API size_t ingle_missing_rule_count(const ingle_missing *missing);

/** The id of one of the rules that lack it, from 0, each once; NULL past the end. */
INGLE_API const char *ingle_missing_rule_at(const ingle_missing *missing, size_t index);

/**
 * Writes the JSON pointer of what is missing: `/survey/flue/width`.
 *
 * @param missing borrowed from a report
 * @param[out] buffer receives UTF-8 that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK, INGLE_CUT or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_missing_subject_text(const ingle_missing *missing, char *buffer,
                                                  size_t capacity, size_t *length);

/* ---- what was recorded and not judged -------------------------------------------------------- */

/**
 * Something that was recorded and that rules judge, though none of the standards named that
 * applies here: a cracked panel in a report by a code that says nothing of panels. Borrowed from
 * its report.
 */
typedef struct ingle_unjudged ingle_unjudged;

/** How many such things were recorded. */
INGLE_API size_t ingle_report_unjudged_count(const ingle_report *report);

/** One of them, from 0, in the order of the catalogue; NULL past the end. */
INGLE_API const ingle_unjudged *ingle_report_unjudged_at(const ingle_report *report, size_t index);

/** Which quantity it is. */
INGLE_API const ingle_quantity *ingle_unjudged_quantity(const ingle_unjudged *unjudged);

/** Writes its JSON pointer; arguments and statuses are those of ingle_missing_subject_text(). */
INGLE_API ingle_status ingle_unjudged_subject_text(const ingle_unjudged *unjudged, char *buffer,
                                                   size_t capacity, size_t *length);

/**
 * One of the standards, from 0, that have a rule on it: of the places of those named and of other
 * publications, the newest edition of each; NULL past the end. Whether the rule would apply is
 * not said.
 */
INGLE_API const ingle_standard *ingle_unjudged_standard_at(const ingle_unjudged *unjudged,
                                                           size_t index);

/* ---- a finding ------------------------------------------------------------------------------ */

/** The standard it was judged by. */
INGLE_API const ingle_standard *ingle_finding_standard(const ingle_finding *finding);

/** The rule it was judged by. */
INGLE_API const ingle_rule *ingle_finding_rule(const ingle_finding *finding);

/** What it comes to. */
INGLE_API ingle_verdict ingle_finding_verdict(const ingle_finding *finding);

/**
 * How measured stands to required: the rule's relation, or that of the listing to which it gave way
 * (a listing states what it allows, that amount included).
 */
INGLE_API ingle_relation ingle_finding_relation(const ingle_finding *finding);

/** The quantity that was judged. */
INGLE_API const ingle_quantity *ingle_finding_quantity(const ingle_finding *finding);

/** The index of the item that was judged, where its group repeats, else 0. */
INGLE_API size_t ingle_finding_item(const ingle_finding *finding);

/** Where an amendment of the rule's numbers comes from; NULL without one. */
INGLE_API const char *ingle_finding_amendment(const ingle_finding *finding);

/** How the text was read where it can be read in more than one way; NULL where it is plain. */
INGLE_API const char *ingle_finding_reading(const ingle_finding *finding);

/** 1 if what is required is the appliance's own listing's, to which the rule gave way; else 0. */
INGLE_API int ingle_finding_by_listing(const ingle_finding *finding);

/**
 * What puts right a rule that is not met, where no remedy is computed: what is only seen, say. NULL
 * where remedies are, and where nothing is left to do.
 */
INGLE_API const char *ingle_finding_mend(const ingle_finding *finding);

/**
 * Who should look next: who puts right what fails, who measures what is not recorded, who looks a
 * listing up. NULL for nobody in particular, and where nothing is left to do.
 */
INGLE_API const char *ingle_finding_refer(const ingle_finding *finding);

/** Which inspection is called for, and why; NULL where none is, or the rule is met or unjudged. */
INGLE_API const char *ingle_finding_inspection(const ingle_finding *finding);

/** Gets what was measured. @returns 1, or 0 if it was not, and then nothing is written. */
INGLE_API int ingle_finding_measured(const ingle_finding *finding, ingle_amount *amount);

/** Gets what is required. @returns 1, or 0 if it is not known, and then nothing is written. */
INGLE_API int ingle_finding_required(const ingle_finding *finding, ingle_amount *amount);

/**
 * Gets by how much the rule is met; negative is by how much it is missed. Tolerances have no part
 * in it. @returns 1, or 0 if it is not known, and then nothing is written.
 */
INGLE_API int ingle_finding_margin(const ingle_finding *finding, ingle_amount *amount);

/**
 * Gets what is usual, where a label or manual decides that is not recorded: to compare with while
 * it is looked up, and no requirement. @returns 1, or 0 where nothing is known to be usual, and
 * then nothing is written.
 */
INGLE_API int ingle_finding_usual(const ingle_finding *finding, ingle_amount *amount);

/** How many quantities it lacks. */
INGLE_API size_t ingle_finding_missing_count(const ingle_finding *finding);

/** One of the quantities it lacks, from 0; NULL past the end. */
INGLE_API const ingle_quantity *ingle_finding_missing_at(const ingle_finding *finding,
                                                         size_t index);

/**
 * Writes the JSON pointer of one of the quantities a finding lacks; the group's, where a whole
 * repeating group was not looked at.
 *
 * @param finding borrowed from a report
 * @param index from 0
 * @param[out] buffer receives UTF-8 that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK, INGLE_CUT, or INGLE_ERROR_ARGUMENT past the end or for NULL.
 */
INGLE_API ingle_status ingle_finding_missing_text(const ingle_finding *finding, size_t index,
                                                  char *buffer, size_t capacity, size_t *length);

/** What ingle_finding_text() can write. */
typedef int32_t ingle_finding_part;

enum {
    /** The JSON pointer of what was judged: `/survey/hearth/front`. */
    INGLE_FINDING_SUBJECT = 1,
    /**
     * What the rule is about, in words; the quantity where the rule judges several, or an item of a
     * repeating group with the item's label.
     */
    INGLE_FINDING_LABEL = 2,
    /** Publication, edition and section, and the amendment if there is one. */
    INGLE_FINDING_CITATION = 3,
    /** The verdict in a sentence, with the amounts. */
    INGLE_FINDING_SENTENCE = 4,
    /** What is dangerous meanwhile, and what to know of the number; empty if there is nothing. */
    INGLE_FINDING_CAUTION = 5,
    /** Of that only what is dangerous meanwhile. */
    INGLE_FINDING_DANGER = 6
};

/**
 * Writes a part of a finding.
 *
 * @param finding borrowed from a report
 * @param part which
 * @param format how amounts are shown; NULL for inches
 * @param[out] buffer receives UTF-8 that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK, INGLE_CUT, INGLE_ERROR_ARGUMENT, or what ingle_amount_format() refuses.
 */
INGLE_API ingle_status ingle_finding_text(const ingle_finding *finding, ingle_finding_part part,
                                          const ingle_format *format, char *buffer,
                                          size_t capacity, size_t *length);

/* ---- its working ---------------------------------------------------------------------------- */

/** One step of a calculation. Borrowed from its report. */
typedef struct ingle_step ingle_step;

/** How many steps led to what is required and measured; 0 if they were left out. */
INGLE_API size_t ingle_finding_step_count(const ingle_finding *finding);

/** One of the steps, from 0, in the order of the calculation; NULL past the end. */
INGLE_API const ingle_step *ingle_finding_step_at(const ingle_finding *finding, size_t index);

/** What a step gives, in words: `opening area`. */
INGLE_API const char *ingle_step_label(const ingle_step *step);

/** Gets what a step comes to. @returns 1, or 0 for a step without amount (a reading, say). */
INGLE_API int ingle_step_result(const ingle_step *step, ingle_amount *amount);

/** What ingle_step_text() can write. */
typedef int32_t ingle_step_part;

enum {
    /** The calculation by names: `opening.width × opening.height`. */
    INGLE_STEP_EXPRESSION = 1,
    /** The same with the amounts put in: `36 in × 24 in`. */
    INGLE_STEP_SUBSTITUTED = 2,
    /** All of it in a sentence. */
    INGLE_STEP_SENTENCE = 3,
    /** More to say of it, such as the table it is from; empty if there is nothing. */
    INGLE_STEP_REMARK = 4
};

/** Writes a part of a step; the arguments and statuses are those of ingle_finding_text(). */
INGLE_API ingle_status ingle_step_text(const ingle_step *step, ingle_step_part part,
                                       const ingle_format *format, char *buffer, size_t capacity,
                                       size_t *length);

/* ---- its remedies --------------------------------------------------------------------------- */

/** One change that would meet the rule, all else as it is. Borrowed from its report. */
typedef struct ingle_remedy ingle_remedy;

/** How many remedies were found. */
INGLE_API size_t ingle_finding_remedy_count(const ingle_finding *finding);

/** One of the remedies, from 0; NULL past the end. */
INGLE_API const ingle_remedy *ingle_finding_remedy_at(const ingle_finding *finding, size_t index);

/** The quantity to change. */
INGLE_API const ingle_quantity *ingle_remedy_quantity(const ingle_remedy *remedy);

/** What to change it to: an amount on the tape's graduation, or a choice. */
INGLE_API void ingle_remedy_amount(const ingle_remedy *remedy, ingle_amount *amount);

/** What ingle_remedy_text() can write. */
typedef int32_t ingle_remedy_part;

enum {
    /** The JSON pointer of what to change. */
    INGLE_REMEDY_SUBJECT = 1,
    /** What to do, in a sentence with the amounts. */
    INGLE_REMEDY_SENTENCE = 2
};

/** Writes a part of a remedy; the arguments and statuses are those of ingle_finding_text(). */
INGLE_API ingle_status ingle_remedy_text(const ingle_remedy *remedy, ingle_remedy_part part,
                                         const ingle_format *format, char *buffer,
                                         size_t capacity, size_t *length);

#ifdef __cplusplus
}
#endif

#endif
