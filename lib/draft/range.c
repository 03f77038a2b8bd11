/* SPDX-License-Identifier: MIT */
/*
 * Whether an estimate lies within what may be claimed of the model, and why not.
 */
#include "draft/estimate.h"

#include "draft/decimal.h"

#include <math.h>

static struct text add_reason(struct ingle_draft *draft, ingle_draft_figure figure)
{
    struct reason *reason = &draft->outside[draft->outside_count++];
    reason->figure = figure;
    return text_start(reason->text, sizeof reason->text);
}

static void add_words(struct ingle_draft *draft, ingle_draft_figure figure, const char *words)
{
    struct text text = add_reason(draft, figure);
    text_add(&text, words);
}

/* The figures with a range of their own. */
static const struct claim {
    ingle_draft_figure figure;
    enum number_id least;
    enum number_id most;
    const char *begin;
} claims[] = {
    {INGLE_DRAFT_OPENING_AREA, NUMBER_CLAIM_OPENING_LEAST, NUMBER_CLAIM_OPENING_MOST,
     "The model was compared with tables for openings of "},
    {INGLE_DRAFT_HYDRAULIC_DIAMETER, NUMBER_CLAIM_DIAMETER_LEAST, NUMBER_CLAIM_DIAMETER_MOST,
     "The model was compared with tables for flues with a hydraulic diameter of "},
    {INGLE_DRAFT_HEIGHT, NUMBER_CLAIM_HEIGHT_LEAST, NUMBER_CLAIM_HEIGHT_MOST,
     "The model was compared with tables for heights of "},
    {INGLE_DRAFT_RISE, NUMBER_CLAIM_RISE_LEAST, NUMBER_CLAIM_RISE_MOST,
     "The model may be relied on for a rise of the gas of "},
};

static void check_claim(struct ingle_draft *draft, const struct claim *claim)
{
    double value = figure_in(&draft->input, claim->figure);
    double least = number_of(claim->least);
    double most = number_of(claim->most);
    enum kind kind = figure_row(claim->figure)->kind;
    if (value >= least && value <= most) {
        return;
    }
    struct text text = add_reason(draft, claim->figure);
    text_add(&text, claim->begin);
    text_add_shown(&text, kind, SYSTEM_SI, least);
    text_add(&text, " to ");
    text_add_shown(&text, kind, SYSTEM_SI, most);
    text_add(&text, "; here it is ");
    text_add_shown(&text, kind, SYSTEM_SI, value);
    text_add(&text, ".");
}

/* A rectangle of the proportions r has an area of (1 + r)² / 4r of the square of its diameter. */
static void check_shape(struct ingle_draft *draft)
{
    const double slack = 1e-6; /* of areas and sides that are written in decimals */
    double aspect = number_of(NUMBER_CLAIM_ASPECT);
    double longest = (1.0 + aspect) * (1.0 + aspect) / (4.0 * aspect);
    double diameter = draft->input.hydraulic_diameter;
    if (draft->input.flue_area > longest * diameter * diameter * (1.0 + slack)) {
        add_words(draft, INGLE_DRAFT_HYDRAULIC_DIAMETER,
                  "The flue is longer than 2:1 or more irregular, and the model does not explain "
                  "the published ratios for such flues.");
    }
}

static void check_losses(struct ingle_draft *draft)
{
    const ingle_draft_input *input = &draft->input;
    if (input->throat_area > 0 && input->throat_area < input->flue_area) {
        add_words(draft, INGLE_DRAFT_THROAT_AREA,
                  "The throat is smaller than the flue, and then its own loss rules the flow.");
    }
    if (input->fitting_loss > 0 || (input->circumstances & INGLE_DRAFT_NOT_STRAIGHT) != 0) {
        add_words(draft, INGLE_DRAFT_FITTING_LOSS, "The model is for one straight flue.");
    }
    if (input->room_pressure < 0 || input->room_pressure > 0) {
        add_words(draft, INGLE_DRAFT_ROOM_PRESSURE,
                  "The model is for a room at outdoor pressure; this estimate is only as good as "
                  "the pressure that was measured.");
    }
}

static void check_circumstances(struct ingle_draft *draft)
{
    ingle_draft_circumstances circumstances = draft->input.circumstances;
    if ((circumstances & INGLE_DRAFT_MORE_SIDES) != 0) {
        add_words(draft, INGLE_DRAFT_OPENING_AREA,
                  "The fireplace is open on two or more sides, and the model is for one.");
    }
    if ((circumstances & INGLE_DRAFT_OTHER_APPLIANCE) != 0) {
        add_words(draft, 0, "The model is for an open masonry fireplace and no other appliance.");
    }
}

void range_check(struct ingle_draft *draft)
{
    draft->outside_count = 0;
    for (size_t i = 0; i < sizeof claims / sizeof claims[0]; i++) {
        check_claim(draft, &claims[i]);
    }
    check_shape(draft);
    check_losses(draft);
    check_circumstances(draft);
}
