/* SPDX-License-Identifier: MIT */
/*
 * A frontier as a plot: what would do together is tinted, and its edge drawn.
 */
#include "drawing/plot.h"
#include "drawing/sheet.h"

#include <ingle/plot.h>

enum { FIELD_WIDTH = 140000, FIELD_HEIGHT = 90000, HEAD = 24000, LEGEND = 8000 };

static struct plot_axis axis_of(const ingle_range *range, const ingle_unit *unit)
{
    ingle_amount kind;
    ingle_quantity_range(range->quantity, &kind, NULL);
    return (struct plot_axis){ingle_quantity_label(range->quantity), range->from, range->to,
                              kind.dimension, kind.scale, unit};
}

/* Half a step to each side of a value belongs to it. */
static void put_column(const struct plot *plot, const ingle_frontier *frontier, size_t index,
                       int64_t half)
{
    ingle_amount value;
    ingle_interval interval;
    const ingle_solution *solution = ingle_frontier_solution_at(frontier, index);
    ingle_frontier_value_at(frontier, index, &value);
    int32_t left = plot_across(plot, value.value - half);
    int32_t right = plot_across(plot, value.value + half);
    for (size_t i = 0; ingle_solution_interval_at(solution, i, &interval) == INGLE_OK; i++) {
        struct point top = plot_place(plot, value.value, interval.most.value);
        struct point bottom = plot_place(plot, value.value, interval.least.value);
        svg_area(plot->svg, AREA_LIMITED, (struct point){left, top.y}, right - left,
                 bottom.y - top.y);
        svg_line(plot->svg, LINE_OUTLINE, (struct point){left, top.y},
                 (struct point){right, top.y});
        svg_line(plot->svg, LINE_OUTLINE, (struct point){left, bottom.y},
                 (struct point){right, bottom.y});
    }
}

static void put_legend(const struct plot *plot)
{
    int32_t y = plot->corner.y - 5000;
    svg_rectangle(plot->svg, LINE_OUTLINE, AREA_LIMITED, (struct point){plot->corner.x, y - 2000},
                  8000, 4000);
    svg_text(plot->svg, (struct point){plot->corner.x + 10000, y + 1000}, ANCHOR_START, TEXT_SMALL,
             "would do: no rule fails that depends on them");
}

static void put_frontier(struct svg *svg, const ingle_frontier *frontier, const ingle_sheet *sheet)
{
    ingle_range range, with;
    ingle_frontier_with(frontier, &with);
    ingle_solution_range(ingle_frontier_solution_at(frontier, 0), &range);
    struct plot plot = {svg, {PLOT_LEFT, HEAD}, FIELD_WIDTH, FIELD_HEIGHT,
                        axis_of(&with, sheet->unit), axis_of(&range, sheet->unit)};
    put_legend(&plot);
    for (size_t i = 0; i < ingle_frontier_count(frontier); i++) {
        put_column(&plot, frontier, i, with.step / 2);
    }
    plot_axes(&plot);
}

ingle_status ingle_frontier_plot(const ingle_frontier *frontier, const ingle_sheet *sheet,
                                 ingle_write write, void *context)
{
    ingle_sheet taken;
    ingle_range range, with;
    struct svg svg;
    ingle_status status = sheet_take(&taken, sheet);
    if (status != INGLE_OK || frontier == NULL || ingle_frontier_count(frontier) == 0) {
        return status != INGLE_OK ? status : INGLE_ERROR_ARGUMENT;
    }
    ingle_frontier_with(frontier, &with);
    ingle_solution_range(ingle_frontier_solution_at(frontier, 0), &range);
    if (!ingle_dimension_is_amount(ingle_quantity_dimension(range.quantity)) ||
        !ingle_dimension_is_amount(ingle_quantity_dimension(with.quantity))) {
        return INGLE_ERROR_DIMENSION;
    }
    const char *title = taken.title != NULL ? taken.title : "What would do together";
    status = svg_start(&svg, write, context, PLOT_LEFT + FIELD_WIDTH + PLOT_RIGHT,
                       HEAD + FIELD_HEIGHT + PLOT_BELOW + LEGEND, title,
                       "For each value of one quantity, across, the values of the other, up, at "
                       "which no rule fails that depends on them.");
    if (status != INGLE_OK) {
        return status;
    }
    svg_text(&svg, (struct point){PLOT_LEFT, 9000}, ANCHOR_START, TEXT_TITLE, title);
    put_frontier(&svg, frontier, &taken);
    return svg_end(&svg);
}
