/* SPDX-License-Identifier: MIT */
/*
 * The working: one step for each figure that comes out, its equation once by signs and once with
 * the amounts put in.
 */
#include "draft/decimal.h"
#include "draft/estimate.h"

#include <string.h>

/* What goes into a step: a figure, or one of the numbers. */
struct draft_operand {
    ingle_draft_figure figure; /* 0 for a number */
    enum number_id number;
};

struct draft_step {
    ingle_draft_figure figure;
    const char *expression; /* {0} to {5} stand for the operands */
    const char *remark;     /* NULL without one */
    struct draft_operand operands[6];
};

#define F(name) {INGLE_DRAFT_##name, NUMBER_NONE}
#define N(name) {0, NUMBER_##name}

enum { INLET_STEPS = 3 };

static const struct draft_step inlet_steps[INLET_STEPS] = {
    [INGLE_DRAFT_INLET_SHARP] =
        {INGLE_DRAFT_INLET_LOSS, "({0} / {1})² × ({2} + (1 − 1 / {3})²) + {4}",
         "Textbook losses put together: entry at a sharp lintel, widening into the smoke chamber, "
         "gather.",
         {F(FLUE_AREA), F(THROAT_AREA), N(SHARP_ENTRY), N(SMOKE_CHAMBER_RATIO), N(GATHER_LOSS)}},
    [INGLE_DRAFT_INLET_ROUNDED] =
        {INGLE_DRAFT_INLET_LOSS, "({0} / {1})² × ({2} + (1 − 1 / {3})²) + {4}",
         "Textbook losses put together: entry at a rounded breast, widening into the smoke "
         "chamber, gather.",
         {F(FLUE_AREA), F(THROAT_AREA), N(ROUNDED_ENTRY), N(SMOKE_CHAMBER_RATIO),
          N(GATHER_LOSS)}},
};

static const struct draft_step steps[] = {
    {INGLE_DRAFT_MEAN_TEMPERATURE, "{0} + {1}", NULL, {F(OUTDOOR_TEMPERATURE), F(RISE)}},
    {INGLE_DRAFT_THETA, "{0} / {1} × (1 − {0} / {1})",
     "At most 1/4, where the rise is as large as the outdoor temperature: from a rise of 300 °F on "
     "a hotter fire adds next to nothing. With one temperature in the room and outdoors and no "
     "room pressure V = (Af / Ao) √(2 g H Θ / K).",
     {F(OUTDOOR_TEMPERATURE), F(MEAN_TEMPERATURE)}},
    {INGLE_DRAFT_OUTDOOR_DENSITY, "{0} / ({1} × {2})", NULL,
     {F(AIR_PRESSURE), N(GAS_CONSTANT), F(OUTDOOR_TEMPERATURE)}},
    {INGLE_DRAFT_GAS_DENSITY, "{0} / ({1} × {2})", "The flue gas is taken as air.",
     {F(AIR_PRESSURE), N(GAS_CONSTANT), F(MEAN_TEMPERATURE)}},
    {INGLE_DRAFT_ROOM_DENSITY, "{0} / ({1} × {2})", NULL,
     {F(AIR_PRESSURE), N(GAS_CONSTANT), F(ROOM_TEMPERATURE)}},
    {INGLE_DRAFT_THEORETICAL_DRAFT, "{0} × {1} × ({2} − {3})", NULL,
     {N(GRAVITY), F(HEIGHT), F(OUTDOOR_DENSITY), F(GAS_DENSITY)}},
    {INGLE_DRAFT_DRIVING_PRESSURE, "{0} + {1}", NULL, {F(THEORETICAL_DRAFT), F(ROOM_PRESSURE)}},
    {INGLE_DRAFT_FRICTION_LOSS, "{0} × {1} / {2}", NULL,
     {F(FRICTION_FACTOR), F(HEIGHT), F(HYDRAULIC_DIAMETER)}},
    {INGLE_DRAFT_TOTAL_LOSS, "{0} + {1} + {2} + {3} + {4}",
     "In velocity heads of the flue; the last is the one that leaves at the top.",
     {F(INLET_LOSS), F(FITTING_LOSS), F(FRICTION_LOSS), F(CAP_LOSS), N(EXIT_LOSS)}},
    {INGLE_DRAFT_FLUE_VELOCITY, "√(2 × {0} / ({1} × {2}))", NULL,
     {F(DRIVING_PRESSURE), F(TOTAL_LOSS), F(GAS_DENSITY)}},
    {INGLE_DRAFT_AREA_RATIO, "{0} / {1}", NULL, {F(FLUE_AREA), F(OPENING_AREA)}},
    {INGLE_DRAFT_FRONTAL_VELOCITY, "{0} × {1} × {2} / {3}", NULL,
     {F(AREA_RATIO), F(FLUE_VELOCITY), F(GAS_DENSITY), F(ROOM_DENSITY)}},
    {INGLE_DRAFT_MASS_FLOW, "{0} × {1} × {2}", NULL,
     {F(GAS_DENSITY), F(FLUE_VELOCITY), F(FLUE_AREA)}},
    {INGLE_DRAFT_STANDARD_UNCERTAINTY, "from {0}, {1}, {2}, {3}",
     "Each standard uncertainty times how the velocity follows that figure, squared, added, and "
     "the root taken.",
     {N(UNCERTAIN_INLET), N(UNCERTAIN_FRICTION), N(UNCERTAIN_RISE), N(UNCERTAIN_HEIGHT)}},
    {INGLE_DRAFT_EXPANDED_UNCERTAINTY, "2 × {0}, at least {1}", "Rounded up.",
     {F(STANDARD_UNCERTAINTY), N(STATED_UNCERTAINTY)}},
    {INGLE_DRAFT_FRONTAL_VELOCITY_LOW, "{0} × (1 − {1})", NULL,
     {F(FRONTAL_VELOCITY), F(EXPANDED_UNCERTAINTY)}},
    {INGLE_DRAFT_FRONTAL_VELOCITY_HIGH, "{0} × (1 + {1})", NULL,
     {F(FRONTAL_VELOCITY), F(EXPANDED_UNCERTAINTY)}},
    {INGLE_DRAFT_REQUIRED_DIAMETER, "the round flue at which V = {0}", "Found by halving.",
     {F(CRITERION)}},
    {INGLE_DRAFT_REQUIRED_AREA, "the flue of this shape at which V = {0}", "Found by halving.",
     {F(CRITERION)}},
    {INGLE_DRAFT_REQUIRED_HEIGHT, "the height at which V = {0}", "Found by halving.",
     {F(CRITERION)}},
};

_Static_assert(sizeof steps / sizeof steps[0] < STEPS, "there is room for all steps");

void draft_steps_collect(struct ingle_draft *draft)
{
    draft->step_count = 0;
    if (draft->input.inlet != INGLE_DRAFT_INLET_GIVEN) {
        draft->steps[draft->step_count++] = &inlet_steps[draft->input.inlet];
    }
    for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++) {
        if (draft->known[FIGURE_PLACE(steps[i].figure)]) {
            draft->steps[draft->step_count++] = &steps[i];
        }
    }
}

/* ---- in words ------------------------------------------------------------------------------- */

static void add_number(struct text *text, enum number_id id, bool by_signs)
{
    const struct ingle_draft_number *number = &draft_numbers[id];
    if (by_signs && number->sign != NULL) {
        text_add(text, number->sign);
        return;
    }
    text_add_significant(text, number->value, 6);
    if (number->unit[0] != '1') {
        text_add(text, " ");
        text_add(text, number->unit);
    }
}

static void add_operand(struct text *text, const struct ingle_draft *draft,
                        struct draft_operand operand, bool by_signs)
{
    if (operand.figure == 0) {
        add_number(text, operand.number, by_signs);
    } else if (by_signs) {
        text_add(text, figure_row(operand.figure)->symbol);
    } else {
        double value = figure_value(draft, operand.figure);
        bool bracketed = value < 0;
        text_add(text, bracketed ? "(" : "");
        text_add_shown(text, figure_row(operand.figure)->kind, SYSTEM_SI, value);
        text_add(text, bracketed ? ")" : "");
    }
}

static void add_expression(struct text *text, const struct ingle_draft *draft,
                           const struct draft_step *step, bool by_signs)
{
    for (const char *at = step->expression; *at != '\0'; at++) {
        if (at[0] == '{') {
            add_operand(text, draft, step->operands[at[1] - '0'], by_signs);
            at += 2;
        } else {
            text_add_bytes(text, at, 1);
        }
    }
}

/* What comes out, in SI units, and in those asked for where they differ. */
static void add_result(struct text *text, const struct ingle_draft *draft,
                       ingle_draft_figure figure, enum unit_system system)
{
    enum kind kind = figure_row(figure)->kind;
    double value = figure_value(draft, figure);
    const char *own = unit_shown(kind, SYSTEM_SI)->name;
    const char *asked = unit_shown(kind, system)->name;
    text_add_shown(text, kind, SYSTEM_SI, value);
    if (own != NULL && strcmp(own, asked) != 0) {
        text_add(text, ", ");
        text_add_shown(text, kind, system, value);
    }
}

static void add_sentence(struct text *text, const struct ingle_draft *draft,
                         const struct draft_step *step, enum unit_system system)
{
    const struct figure *row = figure_row(step->figure);
    text_add(text, row->label);
    text_add(text, ": ");
    text_add(text, row->symbol);
    text_add(text, " = ");
    add_expression(text, draft, step, true);
    text_add(text, " = ");
    add_expression(text, draft, step, false);
    text_add(text, " = ");
    add_result(text, draft, step->figure, system);
}

size_t ingle_draft_step_count(const ingle_draft *draft)
{
    return draft->step_count;
}

ingle_draft_figure ingle_draft_step_figure(const ingle_draft *draft, size_t index)
{
    return index < draft->step_count ? draft->steps[index]->figure : 0;
}

ingle_status ingle_draft_step_text(const ingle_draft *draft, size_t index, ingle_step_part part,
                                   const ingle_format *format, char *buffer, size_t capacity,
                                   size_t *length)
{
    enum unit_system system;
    if (draft == NULL || index >= draft->step_count || (buffer == NULL && capacity > 0) ||
        part < INGLE_STEP_EXPRESSION || part > INGLE_STEP_REMARK) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status = system_of(format, &system);
    if (status != INGLE_OK) {
        return status;
    }
    const struct draft_step *step = draft->steps[index];
    struct text text = text_start(buffer, capacity);
    if (part == INGLE_STEP_REMARK) {
        text_add(&text, step->remark == NULL ? "" : step->remark);
    } else if (part == INGLE_STEP_SENTENCE) {
        add_sentence(&text, draft, step, system);
    } else {
        add_expression(&text, draft, step, part == INGLE_STEP_EXPRESSION);
    }
    return text_end(&text, length);
}
