/* SPDX-License-Identifier: MIT */
/**
 * @file
 * How sure a finding is: what the tape leaves uncertain of each length, the probability that the
 * rule is met, and a decision rule to hold it against. All of it stands beside the verdict and
 * never changes it.
 *
 * A survey names the tape by its quantities `tape.class`, `tape.end`, `tape.graduation` and, where
 * the masonry is uneven, `tape.irregularity`. From these each length that was measured with it gets
 * a standard uncertainty:
 *
 * | part    | half-width                                  | source                                |
 * |---------|---------------------------------------------|---------------------------------------|
 * | tape    | the maximum permissible error of its class  | Directive 2014/32/EU Annex X;         |
 * |         |                                             | NIST Handbook 44 section 5.52;        |
 * |         |                                             | UK SI 1986/1682 regulation 24         |
 * | reading | half a graduation                           | JCGM 100 (GUM) 4.3.7, F.2.2.1         |
 * | masonry | `tape.irregularity`                         | the one who measured                  |
 *
 * Each part is rectangular, so its standard uncertainty is its half-width divided by √3; the parts
 * of one length are independent and combine as the root of the sum of their squares. Lengths that
 * are read, told or gauged (a listing's, the depth of frost) have none, nor have areas and other
 * amounts that were recorded as such: they are taken as exact.
 *
 * The finding's margin, with its sign, is propagated to first order: each length is moved by its
 * standard uncertainty either way and the finding's own formula run again, in exact amounts. Errors
 * of one tape are common to all lengths measured with it: at every length the tape is off by the
 * same share of what its class allows there. What is off in proportion to length then cancels where
 * two areas are compared; the end, the rounding up of the length and the readings do not. The
 * probability is that of the normal distribution (JCGM 106:2012, clause 7; its clauses and values
 * are known here from memory).
 *
 * Where the requirement steps or bends within three standard uncertainties (the larger hearth from
 * 6 ft² on, a flue's aspect ratio at 2:1), no straight line through the margin describes it. Then
 * the probability is counted by a Monte Carlo run, asked for or not, and no standard uncertainty of
 * the margin is given.
 *
 * A tolerance in a survey (ingle_survey_set()) is another thing. It is a box: the true length lies
 * within the half-width, all corners count alike, and the verdict `too-close` says that the corners
 * disagree. A standard uncertainty is the width of a distribution; a rectangular half-width divided
 * by √3 is one, but the two are never mixed: tolerances have no part in a probability, and the tape
 * has none in a verdict.
 */
#ifndef INGLE_UNCERTAINTY_H
#define INGLE_UNCERTAINTY_H

#include <ingle/api.h>
#include <ingle/check.h>
#include <ingle/measure.h>
#include <ingle/memory.h>
#include <ingle/status.h>
#include <ingle/survey.h>

#include <stddef.h>
#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/* ---- figures -------------------------------------------------------------------------------- */

/**
 * A number that is not exact: an uncertainty, a change of a margin, a probability. This struct is
 * fixed for ever. Its value is always finite.
 */
typedef struct ingle_figure {
    /** In base units of the dimension, whole or not; a plain number counts ones. */
    double value;
    /** What it counts; INGLE_COUNT for a plain number. */
    ingle_dimension dimension;
    /** Zero. */
    int32_t reserved;
} ingle_figure;

/**
 * The unit a figure is shown in: as ingle_amount_unit(), but inches where that would be feet.
 *
 * @returns NULL for plain numbers and for unusable arguments.
 */
INGLE_API const ingle_unit *ingle_figure_unit(const ingle_figure *figure,
                                              const ingle_format *format);

/**
 * Writes a figure for people, to three significant digits with its unit: `0.0241 in`.
 *
 * @param figure a figure with a finite value
 * @param format how, or NULL for inches
 * @param[out] buffer receives UTF-8 that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK, INGLE_CUT or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_figure_format(const ingle_figure *figure, const ingle_format *format,
                                           char *buffer, size_t capacity, size_t *length);

/**
 * Writes a figure as a plain decimal number in the unit of ingle_figure_unit(): at most seven
 * significant digits, at most twelve places, no exponent: a JSON number. The arguments and statuses
 * are those of ingle_figure_format().
 */
INGLE_API ingle_status ingle_figure_decimal(const ingle_figure *figure, const ingle_format *format,
                                            char *buffer, size_t capacity, size_t *length);

/* ---- probability ---------------------------------------------------------------------------- */

/**
 * The probability that what was measured lies within its limits: JCGM 106:2012, clause 7.
 *
 * @param value what was measured
 * @param standard_uncertainty of the value, in its unit; 0 gives 0 or 1
 * @param lower the lower limit, or NULL for none
 * @param upper the upper limit, or NULL for none; one of the two is needed
 * @param[out] probability receives a number from 0 to 1; untouched on error
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT for a number that is not finite, a negative
 *          uncertainty, no limit at all, or a lower limit above the upper.
 */
INGLE_API ingle_status ingle_probability_within(double value, double standard_uncertainty,
                                                const double *lower, const double *upper,
                                                double *probability);

/* ---- decision rules ------------------------------------------------------------------------- */

/** How a finding's margin is held against its uncertainty. */
typedef int32_t ingle_decision_rule;

enum {
    /** Simple acceptance: pass where the rule is met as measured. ILAC-G8:09/2019, 4.2.1. */
    INGLE_RULE_SIMPLE = 0,
    /**
     * Guarded: pass where it is met by the guard band or more, else fail. ILAC-G8:09/2019, 4.2.2.
     * With a negative factor fail only where it is missed by more than the band (guarded
     * rejection, JCGM 106 8.3.3.2).
     */
    INGLE_RULE_GUARDED = 1,
    /** The four-way rule with its two conditional answers told as one, `inconclusive`. */
    INGLE_RULE_THREE_WAY = 2,
    /**
     * Pass beyond the guard band; conditional pass from there to the limit, which is included;
     * conditional fail to the band's other side; fail beyond. ILAC-G8:09/2019, 4.2.3. The limit
     * itself is printed as both conditional answers and taken as a conditional pass.
     */
    INGLE_RULE_FOUR_WAY = 3
};

/** How many decision rules there are; they count from 0. */
INGLE_API size_t ingle_decision_rule_count(void);

/** The name of a decision rule: `four-way`; NULL for a number that is none. */
INGLE_API const char *ingle_decision_rule_name(ingle_decision_rule rule);

/** What a decision rule does and where it is from; NULL for a number that is none. */
INGLE_API const char *ingle_decision_rule_text(ingle_decision_rule rule);

/** The decision rule of a name; -1 when there is none. */
INGLE_API ingle_decision_rule ingle_decision_rule_find(const char *name);

/** What a decision rule comes to. */
typedef int32_t ingle_decision;

enum {
    /** None was made. */
    INGLE_DECISION_NONE = 0,
    INGLE_DECISION_PASS = 1,
    INGLE_DECISION_CONDITIONAL_PASS = 2,
    INGLE_DECISION_INCONCLUSIVE = 3,
    INGLE_DECISION_CONDITIONAL_FAIL = 4,
    INGLE_DECISION_FAIL = 5
};

/** How many decisions there are; they count from 0. */
INGLE_API size_t ingle_decision_count(void);

/** The name of a decision: `conditional-pass`; NULL for a number that is none. */
INGLE_API const char *ingle_decision_name(ingle_decision decision);

/** How many guard bands have a name: the rows of ILAC-G8:09/2019, Table 1. */
INGLE_API size_t ingle_guard_band_count(void);

/** The name of a guard band, from 0: `ilac-g8-2009`; NULL past the end. */
INGLE_API const char *ingle_guard_band_name(size_t index);

/** Its factor r: the band is r × U, and U is twice the standard uncertainty; 0 past the end. */
INGLE_API double ingle_guard_band_factor(size_t index);

/** What Table 1 prints of the risk of a false acceptance; NULL past the end. */
INGLE_API const char *ingle_guard_band_text(size_t index);

/**
 * The probability that a rule is missed though it is met by exactly the guard band: the greatest
 * risk of a false acceptance with a factor r, Φ(−2 r).
 *
 * @returns a number from 0 to 1; 1 for a factor that is not finite.
 */
INGLE_API double ingle_guard_band_risk(double factor);

/**
 * Decides by a margin and its uncertainty.
 *
 * @param rule the decision rule
 * @param factor of the guard band; 0 with INGLE_RULE_SIMPLE and with no other
 * @param margin by how much the rule is met; negative is by how much it is missed
 * @param standard_uncertainty of the margin, in its unit
 * @param[out] decision receives the decision; untouched on error
 * @returns INGLE_OK, or INGLE_ERROR_ARGUMENT for a rule that is none, a factor that does not go
 *          with it (one below zero goes with INGLE_RULE_GUARDED alone; none is beyond ±100), a
 *          number that is not finite or a negative uncertainty.
 */
INGLE_API ingle_status ingle_decide(ingle_decision_rule rule, double factor, double margin,
                                    double standard_uncertainty, ingle_decision *decision);

/* ---- assessing ------------------------------------------------------------------------------ */

/** The most trials of a Monte Carlo run. */
#define INGLE_MOST_TRIALS 10000000

/** The trials of a run that is needed though none was asked for. */
#define INGLE_TRIALS_UNASKED 100000

/** INGLE_MOST_TRIALS when the library was built. */
INGLE_API uint64_t ingle_most_trials(void);

/** What an assessment does. Start from zeroed bytes, which is simple acceptance, and set `size`. */
typedef struct ingle_probability_options {
    /** sizeof(ingle_probability_options). */
    size_t size;
    /** How it is decided. */
    ingle_decision_rule rule;
    /**
     * 1 takes each length as measured with a tape of its own, so that no error is common to two;
     * 0 takes all as measured with one tape.
     */
    int32_t separate_tapes;
    /** The factor of the guard band; 0 with INGLE_RULE_SIMPLE and with no other. */
    double guard_factor;
    /** Monte Carlo trials for each finding, no more than INGLE_MOST_TRIALS; 0 for none. */
    uint64_t trials;
    /**
     * What chance starts from; the same seed gives the same counts on every machine. Each finding
     * starts from it anew, so that no finding bears on another's.
     */
    uint64_t seed;
} ingle_probability_options;

/** What was found of the findings of one report. One thread at a time may use it. */
typedef struct ingle_assessment ingle_assessment;

/**
 * Makes an empty assessment.
 *
 * @param allocator where its memory comes from; NULL for the C library
 * @param[out] assessment receives it; give it back with ingle_assessment_free()
 * @returns INGLE_OK, INGLE_ERROR_MEMORY, INGLE_ERROR_ARGUMENT, INGLE_ERROR_STRUCT_SIZE or
 *          INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_assessment_new(const ingle_allocator *allocator,
                                            ingle_assessment **assessment);

/** Gives an assessment back. NULL is allowed. */
INGLE_API void ingle_assessment_free(ingle_assessment *assessment);

/**
 * Finds how sure each finding of a report is.
 *
 * Where the survey does not name its tape this is no error: ingle_assessment_missing_at() tells
 * what is missing, and no finding has a probability. The assessment refers to the report, its
 * survey and its amendments, which must stay as they are while it is read.
 *
 * @param report of a check that was done
 * @param options what to do, or NULL for simple acceptance without Monte Carlo
 * @param[out] assessment receives it; what it held before is gone
 * @returns INGLE_OK; INGLE_ERROR_ARGUMENT for options out of range; INGLE_ERROR_MEMORY;
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER. On error the assessment is empty.
 */
INGLE_API ingle_status ingle_assess(const ingle_report *report,
                                    const ingle_probability_options *options,
                                    ingle_assessment *assessment);

/** How many quantities of the tape are missing; 0 where it is named. */
INGLE_API size_t ingle_assessment_missing_count(const ingle_assessment *assessment);

/** One of the quantities of the tape that are missing, from 0; NULL past the end. */
INGLE_API const ingle_quantity *ingle_assessment_missing_at(const ingle_assessment *assessment,
                                                            size_t index);

/** What the assessment rests on, or lacks, in a sentence or two. */
INGLE_API const char *ingle_assessment_text(const ingle_assessment *assessment);

/* ---- steps ---------------------------------------------------------------------------------- */

/** One step of a budget or of a probability. Borrowed from its assessment. */
typedef struct ingle_uncertainty_step ingle_uncertainty_step;

/** What a step gives, in words: `standard uncertainty from the reading`. */
INGLE_API const char *ingle_uncertainty_step_label(const ingle_uncertainty_step *step);

/** The id of the quantity that a step is about: `opening.width`; NULL if it is about none. */
INGLE_API const char *ingle_uncertainty_step_about(const ingle_uncertainty_step *step);

/** Gets what a step comes to. @returns 1, or 0 for a step that only tells something. */
INGLE_API int ingle_uncertainty_step_result(const ingle_uncertainty_step *step,
                                            ingle_figure *figure);

/**
 * Writes a part of a step.
 *
 * @param step borrowed from an assessment
 * @param part INGLE_STEP_EXPRESSION, _SUBSTITUTED, _SENTENCE or _REMARK
 * @param format how lengths and areas are shown; NULL for inches
 * @param[out] buffer receives UTF-8 that ends in NUL; may be NULL if capacity is 0
 * @param capacity bytes in the buffer
 * @param[out] length receives the bytes of the whole text without the NUL; may be NULL
 * @returns INGLE_OK, INGLE_CUT or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_uncertainty_step_text(const ingle_uncertainty_step *step,
                                                   ingle_step_part part,
                                                   const ingle_format *format, char *buffer,
                                                   size_t capacity, size_t *length);

/* ---- the budget of a length ----------------------------------------------------------------- */

/** What is uncertain of one recorded length. Borrowed from its assessment. */
typedef struct ingle_length_budget ingle_length_budget;

/** How many lengths were measured with the tape; 0 where it is not named. */
INGLE_API size_t ingle_assessment_length_count(const ingle_assessment *assessment);

/** One of the lengths, from 0, in the order of the catalogue; NULL past the end. */
INGLE_API const ingle_length_budget *ingle_assessment_length_at(const ingle_assessment *assessment,
                                                                size_t index);

/** Which length it is. */
INGLE_API const ingle_quantity *ingle_length_budget_quantity(const ingle_length_budget *budget);

/** The index of its item where its group repeats, else 0. */
INGLE_API size_t ingle_length_budget_item(const ingle_length_budget *budget);

/**
 * Gets the standard uncertainty of the length. @returns 1, or 0 where none is published for a
 * length like this (beyond 100 ft in Handbook 44), and then nothing is written.
 */
INGLE_API int ingle_length_budget_uncertainty(const ingle_length_budget *budget,
                                              ingle_figure *uncertainty);

/** Writes the JSON pointer of the length; the arguments are those of the texts of a finding. */
INGLE_API ingle_status ingle_length_budget_subject_text(const ingle_length_budget *budget,
                                                        char *buffer, size_t capacity,
                                                        size_t *length);

/** How many steps the budget has. */
INGLE_API size_t ingle_length_budget_step_count(const ingle_length_budget *budget);

/** One of the steps, from 0; NULL past the end. */
INGLE_API const ingle_uncertainty_step *
ingle_length_budget_step_at(const ingle_length_budget *budget, size_t index);

/* ---- how sure a finding is ------------------------------------------------------------------ */

/** How sure one finding is. Borrowed from its assessment. */
typedef struct ingle_conformance ingle_conformance;

/** How many there are: one for each finding of the report. */
INGLE_API size_t ingle_assessment_count(const ingle_assessment *assessment);

/** That of one of the findings, in the order of the report; NULL past the end. */
INGLE_API const ingle_conformance *ingle_assessment_at(const ingle_assessment *assessment,
                                                       size_t index);

/** The finding it belongs to. */
INGLE_API const ingle_finding *ingle_conformance_finding(const ingle_conformance *conformance);

/** How a probability was found. */
typedef int32_t ingle_method;

enum {
    /** There is none. */
    INGLE_METHOD_NONE = 0,
    /** By the normal distribution and the first-order law. */
    INGLE_METHOD_FIRST_ORDER = 1,
    /** Counted in a Monte Carlo run, since the margin steps or bends within the uncertainty. */
    INGLE_METHOD_MONTE_CARLO = 2
};

/** The name of a method: `first-order`; NULL for a number that is none. */
INGLE_API const char *ingle_method_name(ingle_method method);

/** How the probability was found; INGLE_METHOD_NONE where there is none. */
INGLE_API ingle_method ingle_conformance_method(const ingle_conformance *conformance);

/** Gets the probability that the rule is met. @returns 1, or 0 where there is none. */
INGLE_API int ingle_conformance_probability(const ingle_conformance *conformance,
                                            double *probability);

/**
 * Gets the standard uncertainty of the margin. @returns 1, or 0 where there is none, which is so
 * with INGLE_METHOD_MONTE_CARLO too.
 */
INGLE_API int ingle_conformance_uncertainty(const ingle_conformance *conformance,
                                            ingle_figure *uncertainty);

/** What the decision rule comes to; INGLE_DECISION_NONE without a probability. */
INGLE_API ingle_decision ingle_conformance_decision(const ingle_conformance *conformance);

/** What a Monte Carlo run came to. The struct is the library's own; it may grow at its end. */
typedef struct ingle_monte_carlo {
    /** sizeof(ingle_monte_carlo), set by the caller. */
    size_t size;
    /** How many trials there were. */
    uint64_t trials;
    /** In how many of them the rule was met. */
    uint64_t met;
    /** In how many the publication prints no value; they do not count as met. */
    uint64_t outside;
    /** The standard uncertainty of the margin over the trials that have one, in base units. */
    double standard_uncertainty;
    /**
     * 1 if the run agrees with the first-order law: the standard uncertainties within 5 %, and the
     * probabilities within four standard errors of the count and 0.0573, by which a normal and a
     * rectangular distribution of one standard uncertainty differ at most. Else 0.
     */
    int32_t agrees;
    /** Zero. */
    int32_t reserved;
} ingle_monte_carlo;

/**
 * Gets what the Monte Carlo run of a finding came to. Each length is drawn from the rectangular
 * distributions of its budget, the tape's share being one draw for all of them, and the finding's
 * own formula judges.
 *
 * @param conformance borrowed from an assessment
 * @param[in,out] run its `size` set; receives the rest
 * @returns 1, or 0 where there was no run or the size is unusable, and then nothing is written.
 */
INGLE_API int ingle_conformance_monte_carlo(const ingle_conformance *conformance,
                                            ingle_monte_carlo *run);

/** How many steps led to the probability. */
INGLE_API size_t ingle_conformance_step_count(const ingle_conformance *conformance);

/** One of the steps, from 0; NULL past the end. */
INGLE_API const ingle_uncertainty_step *
ingle_conformance_step_at(const ingle_conformance *conformance, size_t index);

/** What ingle_conformance_text() can write. */
typedef int32_t ingle_conformance_part;

enum {
    /** The probability and the decision in a sentence, or why there is none. */
    INGLE_CONFORMANCE_SENTENCE = 1,
    /** What to know of it; empty if there is nothing. */
    INGLE_CONFORMANCE_CAUTION = 2
};

/** Writes a part; the arguments and statuses are those of ingle_uncertainty_step_text(). */
INGLE_API ingle_status ingle_conformance_text(const ingle_conformance *conformance,
                                              ingle_conformance_part part,
                                              const ingle_format *format, char *buffer,
                                              size_t capacity, size_t *length);

#ifdef __cplusplus
}
#endif

#endif
