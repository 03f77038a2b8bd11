/* SPDX-License-Identifier: MIT */
#include "draft/estimate.h"

static const char what_it_is_not[] =
    "This is an estimate of a flow. It is no promise about smoke, no check of a code, and no named "
    "standard's method.";

static const char large_fire[] =
    "0.8 ft/s through the opening goes with a rise of the flue gas of 300 °F, and that is a large "
    "fire: about 34 kW to the flue for an opening of 7.5 ft². With a smaller fire less air goes "
    "in.";

static const char what_is_taken[] =
    "Calm wind, a steady fire and a warm flue are taken for granted. A cold start, wind or a tight "
    "house are another matter.";

static const char what_it_was_compared_with[] =
    "The model was compared with published tables of flue sizes, which are agreed and not "
    "measured; no measured fireplace stands behind it.";

static const char criterion_from_memory[] =
    "The criterion of 0.8 ft/s and the rise of 300 °F are from memory of a handbook; confirm them "
    "there before relying on them.";

static const char throat_unknown[] =
    "The throat's area was not measured; the estimate holds only where it is at least that of the "
    "flue.";

static const char proportions[] =
    "The hydraulic diameter was taken from the liner's net area and the proportions of its nominal "
    "size.";

static const char is_outside[] =
    "This fireplace lies outside what may be claimed of the model. The figures show how it works, "
    "no more.";

static const char no_flow[] =
    "Nothing drives a flow up the flue: the room's pressure takes away the whole draft.";

static void add(struct ingle_draft *draft, const char *notice)
{
    draft->notices[draft->notice_count++] = notice;
}

bool is_default(const struct ingle_draft *draft, ingle_draft_figure figure)
{
    const ingle_draft_number *number = ingle_draft_figure_default(figure);
    double value = figure_in(&draft->input, figure);
    return number != NULL && value >= number->value && value <= number->value;
}

void draft_notices_collect(struct ingle_draft *draft)
{
    draft->notice_count = 0;
    if (draft->standing == INGLE_DRAFT_NO_DRAFT) {
        add(draft, no_flow);
    }
    if (draft->outside_count > 0) {
        add(draft, is_outside);
    }
    add(draft, what_it_is_not);
    add(draft, large_fire);
    if (is_default(draft, INGLE_DRAFT_CRITERION) || is_default(draft, INGLE_DRAFT_RISE)) {
        add(draft, criterion_from_memory);
    }
    if (!(draft->input.throat_area > 0)) {
        add(draft, throat_unknown);
    }
    if (draft->proportions_from_name) {
        add(draft, proportions);
    }
    add(draft, what_is_taken);
    add(draft, what_it_was_compared_with);
}
