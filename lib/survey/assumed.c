/* SPDX-License-Identifier: MIT */
/*
 * What is taken for granted where nothing is recorded. For nearly every quantity that is one thing,
 * which stands in the catalogue. What a chimney is made of depends on what stands on it: a chimney
 * over a fireplace is masonry unless somebody says otherwise, one behind a stove may be anything.
 * That nothing burns gas is not taken for granted where gas is the fuel.
 */
#include "survey/survey.h"

static bool recorded(const ingle_survey *survey, enum quantity_id id, int64_t *value)
{
    const struct record *record = survey_record(survey, id, 0);
    *value = record->value;
    return record->recorded;
}

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

enum assumption survey_assumed(const ingle_survey *survey, enum quantity_id id, int64_t *value)
{
    if (id == QUANTITY_CHIMNEY_CONSTRUCTION) {
        return chimney_construction(survey, value);
    }
    if (id == QUANTITY_GAS_APPLIANCE) {
        return gas_appliance(survey, value);
    }
    if (!quantities[id].assumes) {
        return NOT_ASSUMED;
    }
    *value = quantities[id].assumed;
    return ASSUMED;
}
