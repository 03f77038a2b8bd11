/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Surveys and reports as JSON, for programs that speak JSON and for bindings.
 *
 * Every call leaves one document in the object, borrowed through ingle_json_text(): what was asked
 * for, or `{"error": {"code", "message", "at", "line", "column"}}` if the status is negative.
 */
#ifndef INGLE_JSON_H
#define INGLE_JSON_H

#include <ingle/ingle.h>

#ifdef __cplusplus
extern "C" {
#endif

/** The longest document that is read, in bytes. No survey comes near it. */
#define INGLE_JSON_LONGEST 1048576

/** Reads and writes documents, and keeps its memory between them. One thread at a time. */
typedef struct ingle_json ingle_json;

/** What reading and writing do. Start from zeroed bytes and set `size`. */
typedef struct ingle_json_options {
    /** sizeof(ingle_json_options). */
    size_t size;
    /** Standards that take the place of the document's; NULL leaves the document's. */
    const ingle_standard *const *standards;
    /** How many they are. */
    size_t standard_count;
    /** How lengths are shown; NULL takes the document's `unit`, else each standard's own. */
    const ingle_unit *unit;
    /** 1 leaves the steps of the calculation out. */
    int32_t without_working;
    /** 1 adds findings for rules that do not apply. */
    int32_t with_not_applicable;
    /** 1 writes on one line, 0 indents. */
    int32_t one_line;
    /** Judges by no row whose numbers are known less well than this; 0 leaves out none. */
    ingle_basis least_basis;
    /**
     * For each of the readings, in the order of ingle_reading_at(), the number of the option to
     * follow whatever the document says; -1 leaves the document's, and so does NULL for all.
     */
    const int32_t *readings;
    /** How many numbers there are; readings past them are left to the document. */
    size_t reading_count;
    /** Tells how sure each finding is, beside its verdict; NULL leaves that out. */
    const ingle_probability_options *probability;
} ingle_json_options;

/**
 * Makes a reader and writer.
 *
 * @param[out] json receives it; give it back with ingle_json_free()
 * @returns INGLE_OK, INGLE_ERROR_MEMORY or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_json_new(ingle_json **json);

/** Gives it back. NULL is allowed. */
INGLE_API void ingle_json_free(ingle_json *json);

/** The longest document that is read, in bytes: INGLE_JSON_LONGEST when the library was built. */
INGLE_API size_t ingle_json_longest(void);

/**
 * Judges a survey document and leaves its report.
 *
 * @param json a reader and writer
 * @param document RFC 8259 and nothing else; need not end in NUL
 * @param length its length in bytes
 * @param options what to do, or NULL for all of it, indented
 * @returns INGLE_OK, or what is wrong with the document.
 */
INGLE_API ingle_status ingle_json_check(ingle_json *json, const char *document, size_t length,
                                        const ingle_json_options *options);

/**
 * Reads a document of amendments, the changes of a town to the numbers of standards, and keeps them
 * for all later checks. A later amendment of the same number wins: those of this document over the
 * ones kept before, and those of a survey document, for that survey, over all of them.
 *
 * It leaves `{"amendments": N}`: how many numbers are kept now.
 *
 * @param json a reader and writer
 * @param document RFC 8259 and nothing else; need not end in NUL
 * @param length its length in bytes
 * @returns INGLE_OK, or what is wrong with the document; nothing of it is kept then.
 */
INGLE_API ingle_status ingle_json_amend(ingle_json *json, const char *document, size_t length);

/** Lets go of the amendments that are kept. NULL is allowed. */
INGLE_API void ingle_json_clear_amendments(ingle_json *json);

/**
 * Reads and judges a survey document as ingle_json_check() does, and leaves its verdict alone:
 * `{"verdict": "fails"}`. What was read is then at hand for further work in C or for the calls of
 * this header that answer questions about it.
 *
 * @returns INGLE_OK, or what is wrong with the document.
 */
INGLE_API ingle_status ingle_json_read(ingle_json *json, const char *document, size_t length,
                                       const ingle_json_options *options);

/**
 * The survey of the document that was read or checked last; NULL if there is none. Like all that is
 * told of that document it is borrowed until another one is read, amendments are kept or let
 * go, or the options' standards are gone.
 */
INGLE_API const ingle_survey *ingle_json_survey(const ingle_json *json);

/** The report on that survey; NULL without one. */
INGLE_API const ingle_report *ingle_json_report(const ingle_json *json);

/** The standards it was judged by; `count` receives how many, 0 and NULL without a document. */
INGLE_API const ingle_standard *const *ingle_json_standards(const ingle_json *json, size_t *count);

/** How it was judged: with its amendments and readings; NULL without a document. */
INGLE_API const ingle_check_options *ingle_json_how(const ingle_json *json);

/** The unit in which its results are shown; NULL takes each standard's own. */
INGLE_API const ingle_unit *ingle_json_unit(const ingle_json *json);

/** Its id, as far as its first 127 bytes; "" without one. */
INGLE_API const char *ingle_json_id(const ingle_json *json);

/** The same as a title, `living-room` as `Living room`; NULL without one. */
INGLE_API const char *ingle_json_title(const ingle_json *json);

/**
 * Makes a range for ingle_solve() or ingle_sweep_run() from texts, on the survey that was read.
 *
 * @param json a reader and writer that has read a survey
 * @param path the quantity, as ingle_survey_find() reads it
 * @param from the least value, as ingle_amount_parse() reads it; a bare number of a length is in
 *             the unit of ingle_json_unit(), of an area in its square; NULL for the least plausible
 * @param to the greatest value; NULL for the greatest plausible
 * @param step from one value to the next; NULL for what is usual
 * @param[out] range receives it, yet to be settled
 * @returns INGLE_OK, or what is wrong; an error document is left then.
 */
INGLE_API ingle_status ingle_json_range(ingle_json *json, const char *path, const char *from,
                                        const char *to, const char *step, ingle_range *range);

/**
 * Leaves a solution of ingle_solve() on the survey that was read.
 *
 * @returns INGLE_OK, INGLE_ERROR_MEMORY, or INGLE_ERROR_ARGUMENT if nothing was read or solved.
 */
INGLE_API ingle_status ingle_json_solution(ingle_json *json, const ingle_solution *solution);

/** Leaves a frontier of ingle_solve_with(); see ingle_json_solution(). */
INGLE_API ingle_status ingle_json_frontier(ingle_json *json, const ingle_frontier *frontier);

/** Leaves a sweep of ingle_sweep_run(); see ingle_json_solution(). */
INGLE_API ingle_status ingle_json_sweep(ingle_json *json, const ingle_sweep *sweep);

/** Leaves a comparison of the report on the survey that was read; see ingle_json_solution(). */
INGLE_API ingle_status ingle_json_comparison(ingle_json *json, const ingle_comparison *comparison);

/**
 * Leaves a survey document to fill in: what the survey that was read has, and in notes, which
 * readers pass over, what a worksheet of it lacks and how that is measured. It can be checked as it
 * is.
 *
 * @returns as ingle_json_solution().
 */
INGLE_API ingle_status ingle_json_worksheet(ingle_json *json, const ingle_worksheet *worksheet);

/**
 * Leaves an exercise of ingle_exercise_make(): the survey document of the problem, the questions,
 * and the answers as findings of a report.
 *
 * @param json a reader and writer
 * @param seed see ingle_exercise_make()
 * @param level see ingle_exercise_make()
 * @param standards see ingle_exercise_make()
 * @param standard_count how many
 * @param part which parts
 * @param unit how lengths of the answers are shown; NULL takes each standard's own
 * @returns INGLE_OK, or what ingle_exercise_make() refuses.
 */
INGLE_API ingle_status ingle_json_exercise(ingle_json *json, uint64_t seed, int32_t level,
                                           const ingle_standard *const *standards,
                                           size_t standard_count, ingle_exercise_part part,
                                           const ingle_unit *unit);

/**
 * Leaves an estimate of ingle_draft_estimate(), with the id of the survey that was read, if one
 * was.
 *
 * @param json a reader and writer
 * @param draft an estimate
 * @param unit how figures are shown; NULL takes ingle_json_draft_unit()
 * @returns INGLE_OK, INGLE_ERROR_MEMORY, INGLE_ERROR_DIMENSION, or INGLE_ERROR_ARGUMENT if no
 *          estimate was made.
 */
INGLE_API ingle_status ingle_json_draft(ingle_json *json, const ingle_draft *draft,
                                        const ingle_unit *unit);

/**
 * How figures of an estimate are shown: in the unit of the document that was read, or else its
 * first standard's; NULL if none was read.
 */
INGLE_API const ingle_unit *ingle_json_draft_unit(const ingle_json *json);

/** The verdict of the last report; INGLE_NOT_APPLICABLE after an error. */
INGLE_API ingle_verdict ingle_json_verdict(const ingle_json *json);

/**
 * Leaves a catalogue: an array of objects.
 *
 * @param json a reader and writer
 * @param catalogue `standards`, `rules`, `readings`, `quantities`, `units`, `verdicts`,
 *                  `statuses` or `draft`
 * @param standard the standard whose rules, or whose rules' readings or quantities, are listed;
 *                 NULL for all
 * @returns INGLE_OK, INGLE_ERROR_UNKNOWN_NAME, INGLE_ERROR_MEMORY or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_json_list(ingle_json *json, const char *catalogue,
                                       const ingle_standard *standard);

/**
 * Leaves the JSON Schema (2020-12) of a document, made from the catalogues.
 *
 * @param json a reader and writer
 * @param document `survey`, which a worksheet is as well, `report`, `amendments`, `solution`,
 *                 `frontier`, `sweep`, `comparison`, `exercise`, `draft` or `error`
 * @returns INGLE_OK, INGLE_ERROR_UNKNOWN_NAME, INGLE_ERROR_MEMORY or INGLE_ERROR_ARGUMENT.
 */
INGLE_API ingle_status ingle_json_schema(ingle_json *json, const char *document);

/**
 * Leaves an error document for something outside a survey: a command line, a file.
 *
 * @param json a reader and writer
 * @param status its code; not positive or zero
 * @param message a sentence, or NULL for ingle_status_text()
 * @returns the status, or INGLE_ERROR_MEMORY.
 */
INGLE_API ingle_status ingle_json_error(ingle_json *json, ingle_status status,
                                        const char *message);

/**
 * The document that the last call left, with a newline at its end.
 *
 * @param json a reader and writer
 * @param[out] length receives its length in bytes; may be NULL
 * @returns UTF-8 that ends in NUL, borrowed until the next call; never NULL.
 */
INGLE_API const char *ingle_json_text(const ingle_json *json, size_t *length);

#ifdef __cplusplus
}
#endif

#endif
