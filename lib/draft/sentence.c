/* SPDX-License-Identifier: MIT */
/*
 * The estimate in a sentence or two.
 */
#include "draft/estimate.h"

#include <string.h>

static const struct {
    const char *name;
    const char *before; /* the criterion, after the velocity */
    const char *after;
} standings[] = {
    [INGLE_DRAFT_NO_DRAFT] = {"no-draft", "", ""},
    [INGLE_DRAFT_FALLS_SHORT] = {"falls-short", "that falls short of the ", " asked for."},
    [INGLE_DRAFT_WITHIN_UNCERTAINTY] = {"within-uncertainty", "the ",
                                        " asked for lies within its uncertainty."},
    [INGLE_DRAFT_REACHES] = {"reaches", "that reaches the ", " asked for."},
};

const char *ingle_draft_standing_name(ingle_draft_standing standing)
{
    return standing >= INGLE_DRAFT_NO_DRAFT && standing <= INGLE_DRAFT_REACHES
               ? standings[standing].name
               : NULL;
}

struct words {
    struct text text;
    const struct ingle_draft *draft;
    enum unit_system system;
};

static void add_figure(struct words *words, ingle_draft_figure figure)
{
    text_add_shown(&words->text, figure_row(figure)->kind, words->system,
                   figure_value(words->draft, figure));
}

static void add_velocity(struct words *words)
{
    const struct ingle_draft *draft = words->draft;
    text_add(&words->text, "Through the opening goes an estimated ");
    add_figure(words, INGLE_DRAFT_FRONTAL_VELOCITY);
    if (draft->known[FIGURE_PLACE(INGLE_DRAFT_FRONTAL_VELOCITY_LOW)]) {
        text_add(&words->text, " (");
        add_figure(words, INGLE_DRAFT_FRONTAL_VELOCITY_LOW);
        text_add(&words->text, " to ");
        add_figure(words, INGLE_DRAFT_FRONTAL_VELOCITY_HIGH);
        text_add(&words->text, ")");
    }
    text_add(&words->text, " on the average; ");
    text_add(&words->text, standings[draft->standing].before);
    add_figure(words, INGLE_DRAFT_CRITERION);
    text_add(&words->text, standings[draft->standing].after);
}

/* Where the criterion is not reached, what would reach it. */
static void add_required(struct words *words)
{
    const struct ingle_draft *draft = words->draft;
    bool by_height = draft->known[FIGURE_PLACE(INGLE_DRAFT_REQUIRED_HEIGHT)];
    if (ingle_draft_reached(draft) || !draft->known[FIGURE_PLACE(INGLE_DRAFT_REQUIRED_DIAMETER)]) {
        return;
    }
    text_add(&words->text, " By the estimate a round flue of ");
    add_figure(words, INGLE_DRAFT_REQUIRED_DIAMETER);
    if (by_height) {
        text_add(&words->text, ", or this flue at a height of ");
        add_figure(words, INGLE_DRAFT_REQUIRED_HEIGHT);
        text_add(&words->text, ",");
    }
    text_add(&words->text, " would reach it.");
}

ingle_status ingle_draft_sentence(const ingle_draft *draft, const ingle_format *format,
                                  char *buffer, size_t capacity, size_t *length)
{
    struct words words = {.draft = draft};
    if (draft == NULL || (buffer == NULL && capacity > 0) || draft->standing == 0) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status = system_of(format, &words.system);
    if (status != INGLE_OK) {
        return status;
    }
    words.text = text_start(buffer, capacity);
    if (draft->standing == INGLE_DRAFT_NO_DRAFT) {
        text_add(&words.text, "Nothing drives a flow up the flue.");
    } else {
        add_velocity(&words);
    }
    add_required(&words);
    return text_end(&words.text, length);
}
