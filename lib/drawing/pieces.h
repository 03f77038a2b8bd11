/* SPDX-License-Identifier: MIT */
/*
 * The pieces of trim around an opening, and the zones that rules on trim make.
 */
#ifndef INGLE_DRAWING_PIECES_H
#define INGLE_DRAWING_PIECES_H

#include "drawing/scene.h"

struct piece {
    size_t item;
    int64_t side; /* enum choice_TRIM_SIDE */
    enum quantity_id from; /* what its distance is measured by: from the opening or the lining */
    struct amount_told distance, required; /* from the opening */
    struct amount_told projection, allowed;
    enum area area;
};

/*
 * Takes what there is to draw of a piece; false where its side or its distance was not measured,
 * which is noted, or where a piece cannot burn and its distance was not asked for.
 */
bool piece_take(struct scene *scene, size_t item, struct piece *piece);

/* Adds the piece's mark and note; false if all marks are taken. */
bool piece_mark(struct scene *scene, const struct piece *piece, struct place target);

/*
 * The zones around an opening: where nothing that can burn may be, and where its projection is
 * limited. Of a side's forbidden zone `piece` tells by which piece it was found; it is ITEM_NONE
 * where the zone is a number of the rule on projection.
 */
struct zones {
    int64_t forbidden[3]; /* by enum choice_TRIM_SIDE; 0 where there is none */
    size_t piece[3];
    int64_t zone, within; /* where the limit begins and ends; 0 where there is none */
    int64_t ratio;        /* of the distance that may project, in INGLE_RATIO_ONE */
};

void zones_take(const struct scene *scene, struct zones *zones);

#endif
