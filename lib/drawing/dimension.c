/* SPDX-License-Identifier: MIT */
/*
 * Dimensions and marks on paper, where the layout put them.
 */
#include "base/text.h"
#include "drawing/picture.h"

static int32_t sign(int32_t number)
{
    return (number > 0) - (number < 0);
}

static bool is_upright(const struct dimension *dimension)
{
    return dimension->side == SIDE_LEFT || dimension->side == SIDE_RIGHT;
}

/* From the thing, a little off it, to a little past the dimension line. */
static void put_extension(struct svg *svg, struct point from, struct point to)
{
    int32_t dx = sign(to.x - from.x), dy = sign(to.y - from.y);
    svg_line(svg, LINE_THIN,
             (struct point){from.x + dx * EXTENSION_GAP, from.y + dy * EXTENSION_GAP},
             (struct point){to.x + dx * EXTENSION_PAST, to.y + dy * EXTENSION_PAST});
}

void dimension_draw(struct svg *svg, const struct dimension *dimension)
{
    bool upright = is_upright(dimension);
    int32_t at = dimension->at;
    struct point start = dimension->start, end = dimension->end;
    struct point first = upright ? (struct point){at, start.y} : (struct point){start.x, at};
    struct point last = upright ? (struct point){at, end.y} : (struct point){end.x, at};
    int32_t dx = sign(last.x - first.x), dy = sign(last.y - first.y);
    int32_t into = dimension->inwards ? -1 : 1;
    if (dx == 0 && dy == 0) {
        dx = !upright;
        dy = upright;
    }
    put_extension(svg, start, first);
    put_extension(svg, end, last);
    svg_line(svg, LINE_THIN,
             upright ? (struct point){at, dimension->least} : (struct point){dimension->least, at},
             upright ? (struct point){at, dimension->most} : (struct point){dimension->most, at});
    svg_arrow(svg, first, -into * dx, -into * dy);
    svg_arrow(svg, last, into * dx, into * dy);
    svg_text_over(svg, dimension->middle, upright, dimension->words);
}

void mark_draw(struct svg *svg, const struct picture *picture, const struct mark *mark)
{
    char words[12];
    struct text text = text_start(words, sizeof words);
    struct point target = picture_point(picture, mark->target);
    text_add_unsigned(&text, mark->number);
    svg_dot(svg, target, 600);
    svg_line(svg, LINE_THIN, target, (struct point){mark->at.x, mark->at.y + MARK_RADIUS});
    svg_circle(svg, LINE_THIN, AREA_PAPER, mark->at, MARK_RADIUS);
    svg_text(svg, (struct point){mark->at.x, mark->at.y + TEXT_SMALL / 2}, ANCHOR_MIDDLE,
             TEXT_SMALL, words);
}
