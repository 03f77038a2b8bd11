/* SPDX-License-Identifier: MIT */
#include "drawing/pieces.h"

#include "check/report.h"

static bool can_burn(const struct scene *scene, size_t item)
{
    int64_t flag;
    return !scene_has(scene, QUANTITY_TRIM_COMBUSTIBLE, item, &flag) || flag != 0;
}

static bool is_abutting(const struct scene *scene, size_t item)
{
    int64_t place;
    return scene_has(scene, QUANTITY_TRIM_PLACE, item, &place) &&
           place == CHOICE_TRIM_PLACE_ABUTTING;
}

bool piece_take(struct scene *scene, size_t item, struct piece *piece)
{
    int64_t distance;
    bool burns = can_burn(scene, item);
    *piece = (struct piece){.item = item, .from = QUANTITY_TRIM_DISTANCE};
    if (is_abutting(scene, item) &&
        !scene_has(scene, QUANTITY_TRIM_DISTANCE, item, &distance)) {
        piece->from = QUANTITY_TRIM_LINING_DISTANCE;
    }
    if (!burns && !scene_has(scene, piece->from, item, &distance)) {
        return false;
    }
    bool has_side = scene_needs(scene, QUANTITY_TRIM_SIDE, item, &piece->side);
    bool has_distance = scene_needs(scene, piece->from, item, &distance);
    piece->distance = scene_measured(scene, piece->from, item);
    piece->required = scene_demand(scene, piece->from, item, INGLE_AT_LEAST);
    piece->projection = scene_measured(scene, QUANTITY_TRIM_PROJECTION, item);
    piece->allowed = scene_demand(scene, QUANTITY_TRIM_PROJECTION, item, INGLE_AT_MOST);
    piece->area = !burns ? AREA_STONE
                  : scene_verdict(scene, GROUP_TRIM, item) == INGLE_FAILS ? AREA_FAILING
                                                                          : AREA_WOOD;
    return has_side && has_distance;
}

bool piece_mark(struct scene *scene, const struct piece *piece, struct place target)
{
    static const char *const sides[] = {[CHOICE_TRIM_SIDE_ABOVE] = " above the opening",
                                        [CHOICE_TRIM_SIDE_LEFT] = " left of the opening",
                                        [CHOICE_TRIM_SIDE_RIGHT] = " right of the opening"};
    bool lining = piece->from == QUANTITY_TRIM_LINING_DISTANCE;
    char *note = scene_mark(scene, GROUP_TRIM, piece->item, target);
    if (note == NULL) {
        return false;
    }
    note_add(scene, note, ": ", piece->distance,
             lining ? " from the firebox lining" : sides[piece->side]);
    note_add(scene, note, ", where ", piece->required, " is required");
    note_add(scene, note, "; projects ", piece->projection, "");
    note_add(scene, note, ", where ", piece->allowed, " is allowed");
    note_end(scene, note, GROUP_TRIM, piece->item);
    return true;
}

/* What holds for a side whatever a piece projects: the least that is required of any there. */
static int64_t least_required(const struct scene *scene, int64_t side, size_t *piece)
{
    int64_t least = 0, its_side;
    size_t count = ingle_survey_item_count(scene->survey, "trim");
    for (size_t i = 0; i < count; i++) {
        struct amount_told asked =
            scene_demand(scene, QUANTITY_TRIM_DISTANCE, i, INGLE_AT_LEAST);
        if (asked.known && scene_has(scene, QUANTITY_TRIM_SIDE, i, &its_side) &&
            its_side == side && (least == 0 || asked.amount < least)) {
            least = asked.amount;
            *piece = i;
        }
    }
    return least;
}

void zones_take(const struct scene *scene, struct zones *zones)
{
    *zones = (struct zones){.within = 0};
    if (!scene_number(scene, "trim-projection", "zone", &zones->zone) ||
        !scene_number(scene, "trim-projection", "within", &zones->within) ||
        !scene_number(scene, "trim-projection", "ratio", &zones->ratio)) {
        zones->zone = zones->within = 0;
    }
    for (int64_t side = 0; side < 3; side++) {
        size_t piece = ITEM_NONE;
        int64_t least = least_required(scene, side, &piece);
        zones->forbidden[side] = larger(zones->zone, least);
        zones->piece[side] = least > zones->zone ? piece : ITEM_NONE;
    }
}
