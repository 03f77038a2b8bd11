/* SPDX-License-Identifier: MIT */
/**
 * @file
 * Plots of what would happen, as SVG that reads in black and white.
 */
#ifndef INGLE_PLOT_H
#define INGLE_PLOT_H

#include <ingle/api.h>
#include <ingle/draft.h>
#include <ingle/page.h>
#include <ingle/solve.h>
#include <ingle/sweep.h>
#include <ingle/uncertainty.h>

#ifdef __cplusplus
extern "C" {
#endif

/** How a plot or drawing looks. Start from zeroed bytes and set `size`. */
typedef struct ingle_sheet {
    /** sizeof(ingle_sheet). */
    size_t size;
    /** How lengths are shown, and what follows from them; NULL for inches. */
    const ingle_unit *unit;
    /** The title; NULL takes the call's own. */
    const char *title;
} ingle_sheet;

/**
 * Plots a sweep: for each line what is required and what is measured against the quantity that was
 * led through its values, with the verdict above. Lines without amounts are left out.
 *
 * @param sweep a sweep of a quantity that is no choice or flag
 * @param sheet how it looks; NULL for inches
 * @param write receives the SVG document
 * @param context handed to `write`
 * @returns INGLE_OK, INGLE_ERROR_IO, INGLE_ERROR_ARGUMENT, INGLE_ERROR_DIMENSION for a choice or
 *          flag, INGLE_ERROR_NOTHING_MEASURED if no line has amounts, INGLE_ERROR_STRUCT_SIZE or
 *          INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_sweep_plot(const ingle_sweep *sweep, const ingle_sheet *sheet,
                                        ingle_write write, void *context);

/**
 * Plots a frontier: for each value of the one quantity the values of the other that would do.
 *
 * @returns as ingle_sweep_plot().
 */
INGLE_API ingle_status ingle_frontier_plot(const ingle_frontier *frontier,
                                           const ingle_sheet *sheet, ingle_write write,
                                           void *context);

/**
 * Plots an estimate of the draft: the velocity through the opening against the height of the flue,
 * with the estimate and its uncertainty, the criterion, and beside it the flues that a standard's
 * ratios of flue to opening ask for.
 *
 * @param draft an estimate
 * @param input what it was made from
 * @param standard the standard whose ratios are drawn; NULL, or one without, for none
 * @param sheet how it looks; NULL for feet
 * @param write receives the SVG document
 * @param context handed to `write`
 * @returns INGLE_OK, INGLE_ERROR_IO, INGLE_ERROR_ARGUMENT, INGLE_ERROR_NOTHING_MEASURED where
 *          nothing drives a flow, INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_draft_plot(const ingle_draft *draft, const ingle_draft_input *input,
                                        const ingle_standard *standard, const ingle_sheet *sheet,
                                        ingle_write write, void *context);

/**
 * Plots how sure a finding is: the probability that its rule is met against what is measured, with
 * the limit of the rule.
 *
 * @param conformance of a finding that asks for so much or more, and whose margin has a standard
 *                    uncertainty
 * @param sheet how it looks; NULL for inches
 * @param write receives the SVG document
 * @param context handed to `write`
 * @returns INGLE_OK, INGLE_ERROR_IO, INGLE_ERROR_ARGUMENT, INGLE_ERROR_NOTHING_MEASURED where there
 *          is no uncertainty, INGLE_ERROR_DIMENSION for a finding of another kind,
 *          INGLE_ERROR_STRUCT_SIZE or INGLE_ERROR_STRUCT_NEWER.
 */
INGLE_API ingle_status ingle_probability_plot(const ingle_conformance *conformance,
                                              const ingle_sheet *sheet, ingle_write write,
                                              void *context);

#ifdef __cplusplus
}
#endif

#endif
