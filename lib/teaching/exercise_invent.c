/* SPDX-License-Identifier: MIT */
/*
 * Making up a fireplace. Every measure is on a graduation of the tape that it is told by. The
 * ranges are those of ordinary houses and mean nothing else.
 */
#include "teaching/exercise.h"

#include "measure/amounts.h"

/* ---- measures ------------------------------------------------------------------------------- */

static void give(struct inventing *inventing, enum quantity_id quantity, size_t item,
                 int64_t value, const ingle_unit *unit)
{
    ingle_exercise *exercise = inventing->exercise;
    if (inventing->status != INGLE_OK || exercise->given_count == EXERCISE_GIVEN) {
        return;
    }
    inventing->status = ingle_survey_set(exercise->survey, &quantities[quantity], item, value, 0);
    exercise->given[exercise->given_count++] = (struct given){quantity, item, unit};
}

/* Whether this measure is told in the other kind of unit. */
static bool is_metric(struct inventing *inventing)
{
    bool other = inventing->mixed && random_below(&inventing->random, 3) == 0;
    return inventing->metric != other;
}

/* A length from `least` to `most` inches or so, by the half inch or by 5 mm. */
static void give_length(struct inventing *inventing, enum quantity_id quantity, size_t item,
                        int64_t least, int64_t most)
{
    bool metric = is_metric(inventing);
    int64_t step = metric ? MILLIMETRES(5) : INCHES_AND(0, 1, 2);
    int64_t first = INCHES(least) / step, last = INCHES(most) / step;
    int64_t value =
        step * (first + (int64_t)random_below(&inventing->random, (uint64_t)(last - first + 1)));
    give(inventing, quantity, item, value, ingle_unit_find(metric ? "mm" : "in"));
}

static void give_inches(struct inventing *inventing, enum quantity_id quantity, size_t item,
                        int64_t value)
{
    static const char *const units[] = {"in", "ft"};
    size_t unit = inventing->mixed ? (size_t)random_below(&inventing->random, 2) : 0;
    give(inventing, quantity, item, value, ingle_unit_find(units[unit]));
}

static void give_choice(struct inventing *inventing, enum quantity_id quantity, size_t item,
                        int64_t choice)
{
    give(inventing, quantity, item, choice, NULL);
}

/* ---- topics --------------------------------------------------------------------------------- */

static void invent_kind(struct inventing *inventing, int64_t kind)
{
    give_choice(inventing, QUANTITY_APPLIANCE_KIND, 0, kind);
}

static void invent_opening(struct inventing *inventing)
{
    give_length(inventing, QUANTITY_OPENING_WIDTH, 0, 28, 48);
    give_length(inventing, QUANTITY_OPENING_HEIGHT, 0, 22, 36);
}

static void invent_hearth_front(struct inventing *inventing)
{
    give_length(inventing, QUANTITY_HEARTH_FRONT, 0, 14, 24);
}

static void invent_hearth_sides(struct inventing *inventing)
{
    give_length(inventing, QUANTITY_HEARTH_LEFT, 0, 6, 14);
    give_length(inventing, QUANTITY_HEARTH_RIGHT, 0, 6, 14);
}

static void add_trim(struct inventing *inventing, const char *label, int64_t side, int64_t least,
                     int64_t most)
{
    size_t item = 0;
    if (inventing->status == INGLE_OK) {
        inventing->status =
            ingle_survey_add_item(inventing->exercise->survey, "trim", label, &item);
    }
    give_choice(inventing, QUANTITY_TRIM_SIDE, item, side);
    give(inventing, QUANTITY_TRIM_COMBUSTIBLE, item, 1, NULL);
    give_length(inventing, QUANTITY_TRIM_DISTANCE, item, least, most);
    give_length(inventing, QUANTITY_TRIM_PROJECTION, item, 1, 4);
}

static void invent_mantel(struct inventing *inventing)
{
    add_trim(inventing, "mantel shelf", CHOICE_TRIM_SIDE_ABOVE, 4, 14);
}

static void invent_pilaster(struct inventing *inventing)
{
    add_trim(inventing, "left pilaster", CHOICE_TRIM_SIDE_LEFT, 4, 14);
}

static void invent_flue(struct inventing *inventing)
{
    bool round = random_below(&inventing->random, 2) == 0;
    give_choice(inventing, QUANTITY_FLUE_SHAPE, 0,
                round ? CHOICE_FLUE_SHAPE_ROUND : CHOICE_FLUE_SHAPE_RECTANGULAR);
    if (round) {
        give_length(inventing, QUANTITY_FLUE_DIAMETER, 0, 7, 14);
    } else {
        give_length(inventing, QUANTITY_FLUE_WIDTH, 0, 7, 16);
        give_length(inventing, QUANTITY_FLUE_DEPTH, 0, 7, 12);
    }
    give_length(inventing, QUANTITY_FLUE_HEIGHT, 0, 140, 320);
}

static void invent_firebox(struct inventing *inventing)
{
    give_length(inventing, QUANTITY_FIREBOX_DEPTH, 0, 16, 26);
    give_length(inventing, QUANTITY_THROAT_HEIGHT, 0, 6, 12);
    give_length(inventing, QUANTITY_SMOKE_CHAMBER_HEIGHT, 0, 24, 48);
}

/* ---- traps ---------------------------------------------------------------------------------- */

/* An opening of 6 ft² to the hair: where a limit steps, which side does the step belong to? */
static void invent_exact_opening(struct inventing *inventing)
{
    static const int8_t sides[][2] = {{36, 24}, {32, 27}, {48, 18}, {24, 36}, {27, 32}, {54, 16}};
    size_t pick = (size_t)random_below(&inventing->random, sizeof sides / sizeof sides[0]);
    give_inches(inventing, QUANTITY_OPENING_WIDTH, 0, INCHES(sides[pick][0]));
    give_inches(inventing, QUANTITY_OPENING_HEIGHT, 0, INCHES(sides[pick][1]));
}

/* A hearth just at a limit, or a sixteenth of an inch short of it. */
static void invent_hearth_at_limit(struct inventing *inventing)
{
    int64_t limit = random_below(&inventing->random, 2) == 0 ? INCHES(20) : INCHES(16);
    int64_t short_of = random_below(&inventing->random, 2) == 0 ? INCHES_AND(0, 1, 16) : 0;
    give_inches(inventing, QUANTITY_HEARTH_FRONT, 0, limit - short_of);
    give_inches(inventing, QUANTITY_HEARTH_LEFT, 0, limit == INCHES(20) ? INCHES(12) : INCHES(8));
    give_inches(inventing, QUANTITY_HEARTH_RIGHT, 0, INCHES(12) - short_of);
}

/* An insert stands on the hearth, and takes from what is in front of the fire. */
static void invent_insert(struct inventing *inventing)
{
    invent_kind(inventing, CHOICE_APPLIANCE_KIND_INSERT);
    invent_opening(inventing);
    give_length(inventing, QUANTITY_HEARTH_FRONT, 0, 16, 26);
    give_length(inventing, QUANTITY_INSERT_PROJECTION, 0, 2, 10);
    give_inches(inventing, QUANTITY_LISTING_HEARTH_FRONT, 0,
                INCHES(14 + 2 * (int64_t)random_below(&inventing->random, 4)));
    invent_flue(inventing);
}

/* ---- levels --------------------------------------------------------------------------------- */

static void invent_one(struct inventing *inventing)
{
    static void (*const topics[])(struct inventing *) = {
        invent_hearth_front, invent_mantel, invent_flue, invent_firebox, invent_hearth_sides};
    invent_kind(inventing, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE);
    invent_opening(inventing);
    topics[random_below(&inventing->random, sizeof topics / sizeof topics[0])](inventing);
}

static void invent_some(struct inventing *inventing)
{
    invent_kind(inventing, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE);
    invent_opening(inventing);
    invent_hearth_front(inventing);
    invent_hearth_sides(inventing);
    if (random_below(&inventing->random, 2) == 0) {
        invent_mantel(inventing);
    } else {
        invent_firebox(inventing);
    }
}

static void invent_whole(struct inventing *inventing)
{
    invent_kind(inventing, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE);
    invent_opening(inventing);
    invent_firebox(inventing);
    invent_hearth_front(inventing);
    invent_hearth_sides(inventing);
    invent_mantel(inventing);
    invent_pilaster(inventing);
    invent_flue(inventing);
}

static void invent_trap(struct inventing *inventing)
{
    inventing->mixed = true;
    if (random_below(&inventing->random, 4) == 0) {
        invent_insert(inventing);
        return;
    }
    invent_kind(inventing, CHOICE_APPLIANCE_KIND_MASONRY_FIREPLACE);
    invent_exact_opening(inventing);
    invent_hearth_at_limit(inventing);
    invent_firebox(inventing);
    invent_mantel(inventing);
    invent_pilaster(inventing);
    invent_flue(inventing);
}

ingle_status exercise_invent(ingle_exercise *exercise, bool metric, uint32_t turn)
{
    static void (*const levels[EXERCISE_LEVELS])(struct inventing *) = {invent_one, invent_some,
                                                                        invent_whole, invent_trap};
    struct inventing inventing = {.exercise = exercise, .metric = metric, .status = INGLE_OK};
    inventing.random.state = exercise->seed;
    uint64_t start = random_next(&inventing.random);
    inventing.random.state = start + (uint64_t)exercise->level * EXERCISE_TURNS + turn;
    exercise->given_count = 0;
    ingle_survey_clear(exercise->survey);
    levels[exercise->level - 1](&inventing);
    return inventing.status < 0 ? inventing.status : INGLE_OK;
}
