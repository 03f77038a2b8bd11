/* SPDX-License-Identifier: MIT */
/*
 * What is taken for granted where nothing is recorded. For nearly every quantity that is one thing,
 * which stands in the catalogue. What a chimney is made of depends on what stands on it: a chimney
 * over a fireplace is masonry unless somebody says otherwise, one behind a stove may be anything.
 * That nothing burns gas is not taken for granted where gas is the fuel.
 * That a wall has no shield is taken for granted only while nothing is said of one.
 * A few others are told by what else is recorded.
 */
#include "survey/survey.h"

static bool recorded(const ingle_survey *survey, enum quantity_id id, int64_t *value)
{
    const struct record *record = survey_record(survey, id, 0);
    *value = record->value;
    return record->recorded;
}

/* ---- what the chimney is made of ------------------------------------------------------------ */

/* The chimney that a connector goes into. */
static enum assumption told_by_connector(const ingle_survey *survey, int64_t *construction)
{
    int64_t into;
    if (!recorded(survey, QUANTITY_CONNECTOR_INTO, &into)) {
        return NOT_ASSUMED;
    }
    switch ((enum choice_CONNECTOR_INTO)into) {
    case CHOICE_CONNECTOR_INTO_MASONRY_CHIMNEY:
    case CHOICE_CONNECTOR_INTO_FIREPLACE_CHIMNEY:
        *construction = CHOICE_CHIMNEY_CONSTRUCTION_MASONRY;
        return TOLD_BY_OTHERS;
    case CHOICE_CONNECTOR_INTO_FACTORY_BUILT_CHIMNEY:
    case CHOICE_CONNECTOR_INTO_FACTORY_BUILT_FIREPLACE:
        *construction = CHOICE_CHIMNEY_CONSTRUCTION_FACTORY_BUILT;
        return TOLD_BY_OTHERS;
    case CHOICE_CONNECTOR_INTO_OPEN_FIREPLACE_FLUE:
    case CHOICE_CONNECTOR_INTO_COUNT:
        break;
    }
    return NOT_ASSUMED;
}

static enum assumption chimney_construction(const ingle_survey *survey, int64_t *construction)
{
    int64_t kind;
    int64_t factory_built;
    bool known = recorded(survey, QUANTITY_APPLIANCE_KIND, &kind);
    if (known && (kind == CHOICE_APPLIANCE_KIND_STOVE ||
                  kind == CHOICE_APPLIANCE_KIND_PELLET_STOVE)) {
        return told_by_connector(survey, construction);
    }
    bool insert = known && kind == CHOICE_APPLIANCE_KIND_INSERT &&
                  recorded(survey, QUANTITY_INSERT_IN_FACTORY_BUILT, &factory_built) &&
                  factory_built != 0;
    if (insert || (known && kind == CHOICE_APPLIANCE_KIND_FACTORY_BUILT_FIREPLACE)) {
        *construction = CHOICE_CHIMNEY_CONSTRUCTION_FACTORY_BUILT;
        return TOLD_BY_OTHERS;
    }
    *construction = CHOICE_CHIMNEY_CONSTRUCTION_MASONRY;
    return ASSUMED;
}

/* Where gas is the fuel something burns it: what that is has to be seen. */
static enum assumption gas_appliance(const ingle_survey *survey, int64_t *appliance)
{
    int64_t fuel;
    if (recorded(survey, QUANTITY_APPLIANCE_FUEL, &fuel) && fuel == CHOICE_APPLIANCE_FUEL_GAS) {
        return NOT_ASSUMED;
    }
    *appliance = CHOICE_GAS_APPLIANCE_NONE;
    return ASSUMED;
}

/* What is just pushed in has no connector that could reach anything. */
static enum assumption reaches_liner(const ingle_survey *survey, int64_t *reaches)
{
    int64_t connection;
    *reaches = false;
    return recorded(survey, QUANTITY_INSERT_CONNECTION, &connection) &&
                   connection == CHOICE_INSERT_CONNECTION_NONE
               ? TOLD_BY_OTHERS
               : NOT_ASSUMED;
}

/* Where a gas appliance is tells whether one sleeps beside it; of others nobody is taken to. */
static enum assumption sleeping(const ingle_survey *survey, int64_t *sleeps)
{
    int64_t gas;
    int64_t room;
    bool known = recorded(survey, QUANTITY_GAS_APPLIANCE, &gas) ||
                 gas_appliance(survey, &gas) != NOT_ASSUMED;
    *sleeps = false;
    if (known && gas == CHOICE_GAS_APPLIANCE_NONE) {
        return ASSUMED;
    }
    if (!recorded(survey, QUANTITY_GAS_ROOM, &room)) {
        return NOT_ASSUMED;
    }
    *sleeps = room != CHOICE_GAS_ROOM_OTHER;
    return TOLD_BY_OTHERS;
}

/* ---- whether the outlet is as high as the ridge --------------------------------------------- */

/* One that stands above the ridge is; one that does not may be level with it. */
static enum assumption told_by_height(const ingle_survey *survey, int64_t *reaches)
{
    const struct record *above = survey_record(survey, QUANTITY_OUTLET_ABOVE_RIDGE, 0);
    *reaches = 1;
    return above->recorded && above->value > above->tolerance ? TOLD_BY_OTHERS : NOT_ASSUMED;
}

/* One that stands above an opening is not below it; one that does not may be level with it. */
static enum assumption told_by_window(const ingle_survey *survey, size_t item, int64_t *below)
{
    const struct record *above = survey_record(survey, QUANTITY_WINDOW_OUTLET_ABOVE, item);
    *below = 0;
    return above != NULL && above->recorded && above->value > above->tolerance ? TOLD_BY_OTHERS
                                                                               : NOT_ASSUMED;
}

/* ---- the shield in front of a wall ---------------------------------------------------------- */

/* The ways in which publications tell shields apart, and what each says where there is none. */
static const struct {
    enum quantity_id quantity;
    int64_t none;
} shields[] = {
    {QUANTITY_WALL_PROTECTION, CHOICE_WALL_PROTECTION_NONE},
    {QUANTITY_WALL_SHIELD_FACE, CHOICE_WALL_SHIELD_FACE_NONE},
    {QUANTITY_WALL_SHIELD_LAYERS, CHOICE_WALL_SHIELD_LAYERS_NONE},
};

enum { SHIELDS = sizeof shields / sizeof shields[0] };

static bool is_shield(enum quantity_id id)
{
    for (size_t i = 0; i < SHIELDS; i++) {
        if (shields[i].quantity == id) {
            return true;
        }
    }
    return false;
}

static bool has_shield(const ingle_survey *survey, size_t item)
{
    for (size_t i = 0; i < SHIELDS; i++) {
        const struct record *record = survey_record(survey, shields[i].quantity, item);
        if (record != NULL && record->recorded && record->value != shields[i].none) {
            return true;
        }
    }
    return false;
}

/* ---- the whole ------------------------------------------------------------------------------ */

enum assumption survey_assumed(const ingle_survey *survey, enum quantity_id id, size_t item,
                               int64_t *value)
{
    if (id == QUANTITY_CHIMNEY_CONSTRUCTION) {
        return chimney_construction(survey, value);
    }
    if (id == QUANTITY_GAS_APPLIANCE) {
        return gas_appliance(survey, value);
    }
    if (id == QUANTITY_OUTLET_REACHES_RIDGE) {
        return told_by_height(survey, value);
    }
    if (id == QUANTITY_WINDOW_OUTLET_BELOW) {
        return told_by_window(survey, item, value);
    }
    if (id == QUANTITY_INSERT_REACHES_LINER) {
        return reaches_liner(survey, value);
    }
    if (id == QUANTITY_ROOM_SLEEPING) {
        return sleeping(survey, value);
    }
    if (!quantities[id].assumes || (is_shield(id) && has_shield(survey, item))) {
        return NOT_ASSUMED;
    }
    *value = quantities[id].assumed;
    return ASSUMED;
}
