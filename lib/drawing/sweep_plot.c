/* SPDX-License-Identifier: MIT */
/*
 * A sweep as a plot: a panel for each rule, one below the other.
 */
#include "drawing/plot.h"
#include "drawing/sheet.h"

#include "base/text.h"

#include <ingle/plot.h>

#include <string.h>

enum {
    FIELD_WIDTH = 140000,
    FIELD_HEIGHT = 50000,
    HEAD = 14000,  /* the title of the sheet */
    PANEL_HEAD = 16000, /* the name of the rule and the strip of its verdicts */
    STRIP = 5000,
    PANEL = PANEL_HEAD + FIELD_HEIGHT + PLOT_BELOW,
    LEGEND = 10000,
    MARKS_MOST = 4
};

struct panel {
    const ingle_sweep *sweep;
    size_t line;
    struct plot plot;
};

/* ---- what there is to plot ------------------------------------------------------------------ */

static bool cell_at(const struct panel *panel, size_t value, ingle_sweep_cell *cell)
{
    return ingle_sweep_cell_at(panel->sweep, value, panel->line, cell) == INGLE_OK &&
           cell->rule != NULL;
}

static int64_t value_at(const struct panel *panel, size_t value)
{
    ingle_amount amount = {0, 0, 0};
    ingle_sweep_value_at(panel->sweep, value, &amount);
    return amount.value;
}

static void stretch(struct plot_axis *axis, int64_t value)
{
    axis->least = value < axis->least ? value : axis->least;
    axis->most = value > axis->most ? value : axis->most;
}

/* The upright axis of a line, with some room above and below; false where it has no amounts. */
static bool scale(struct panel *panel, const ingle_unit *unit)
{
    const ingle_quantity *quantity = ingle_sweep_line_quantity(panel->sweep, panel->line);
    ingle_amount kind;
    ingle_sweep_cell cell;
    ingle_quantity_range(quantity, &kind, NULL);
    struct plot_axis *up = &panel->plot.up;
    *up = (struct plot_axis){ingle_quantity_label(quantity), INT64_MAX, INT64_MIN, kind.dimension,
                             kind.scale, unit};
    if (!ingle_dimension_is_amount(kind.dimension)) {
        return false;
    }
    for (size_t i = 0; i < ingle_sweep_value_count(panel->sweep); i++) {
        if (cell_at(panel, i, &cell) && cell.has_required) {
            stretch(up, cell.required.value);
        }
        if (cell_at(panel, i, &cell) && cell.has_measured) {
            stretch(up, cell.measured.value);
        }
    }
    if (up->most < up->least) {
        return false;
    }
    int64_t room = (up->most - up->least) / 10 + up->most / 50 + 1;
    up->least = up->least > room ? up->least - room : 0;
    up->most = up->most < INT64_MAX - room ? up->most + room : up->most;
    return true;
}

static bool take_panel(struct panel *panel, const ingle_sweep *sweep, size_t line,
                       const ingle_unit *unit)
{
    ingle_range range;
    ingle_amount kind;
    ingle_sweep_range(sweep, &range);
    ingle_quantity_range(range.quantity, &kind, NULL);
    *panel = (struct panel){.sweep = sweep, .line = line};
    panel->plot.width = FIELD_WIDTH;
    panel->plot.height = FIELD_HEIGHT;
    panel->plot.across = (struct plot_axis){ingle_quantity_label(range.quantity), range.from,
                                            range.to, kind.dimension, kind.scale, unit};
    return scale(panel, unit);
}

/* ---- a panel -------------------------------------------------------------------------------- */

static void put_name(const struct panel *panel)
{
    char words[200];
    struct text text = text_start(words, sizeof words);
    text_add(&text, ingle_rule_id(ingle_sweep_line_rule(panel->sweep, panel->line)));
    text_add(&text, ", ");
    text_add(&text, ingle_standard_id(ingle_sweep_line_standard(panel->sweep, panel->line)));
    svg_text(panel->plot.svg,
             (struct point){panel->plot.corner.x, panel->plot.corner.y - STRIP - 4000},
             ANCHOR_START, TEXT_USUAL, words);
}

/* Values from `first` to before `end`, that come to the same verdict. */
static void put_run(const struct panel *panel, size_t first, size_t end, ingle_verdict verdict)
{
    const struct plot *plot = &panel->plot;
    size_t last = end < ingle_sweep_value_count(panel->sweep) ? end : end - 1;
    int32_t left = plot_across(plot, value_at(panel, first));
    int32_t width = plot_across(plot, value_at(panel, last)) - left;
    const char *name = ingle_verdict_name(verdict);
    int32_t needs = svg_text_width(name, TEXT_SMALL) + 2000;
    struct point corner = {left, plot->corner.y - STRIP - 1500};
    svg_rectangle(plot->svg, LINE_THIN, verdict == INGLE_FAILS ? AREA_MISSING : AREA_NONE, corner,
                  width, STRIP);
    if (width < needs) {
        return;
    }
    struct point middle = {left + width / 2, corner.y + STRIP / 2 + TEXT_SMALL / 2};
    svg_area(plot->svg, AREA_PAPER, (struct point){middle.x - needs / 2, corner.y + 500}, needs,
             STRIP - 1000);
    svg_text(plot->svg, middle, ANCHOR_MIDDLE, TEXT_SMALL, name);
}

static void put_verdicts(const struct panel *panel)
{
    size_t count = ingle_sweep_value_count(panel->sweep), first = 0;
    ingle_sweep_cell cell, next;
    ingle_sweep_cell_at(panel->sweep, 0, panel->line, &cell);
    for (size_t i = 1; i <= count; i++) {
        if (i < count) {
            ingle_sweep_cell_at(panel->sweep, i, panel->line, &next);
        }
        if (i == count || next.verdict != cell.verdict) {
            put_run(panel, first, i, cell.verdict);
            first = i;
            cell = next;
        }
    }
}

/* A line that keeps its amount from one value to the next, and goes straight up or down there. */
static void put_curve(const struct panel *panel, enum line line, bool required)
{
    bool drawing = false;
    int64_t last = 0;
    ingle_sweep_cell cell;
    for (size_t i = 0; i < ingle_sweep_value_count(panel->sweep); i++) {
        bool known = cell_at(panel, i, &cell) &&
                     (required ? cell.has_required : cell.has_measured) != 0;
        int64_t amount = required ? cell.required.value : cell.measured.value;
        int64_t at = value_at(panel, i);
        if (known && !drawing) {
            svg_polyline_start(panel->plot.svg);
        }
        if (drawing) {
            svg_polyline_point(panel->plot.svg, plot_place(&panel->plot, at, last));
        }
        if (known) {
            svg_polyline_point(panel->plot.svg, plot_place(&panel->plot, at, amount));
        } else if (drawing) {
            svg_polyline_end(panel->plot.svg, line);
        }
        drawing = known;
        last = amount;
    }
    if (drawing) {
        svg_polyline_end(panel->plot.svg, line);
    }
}

static bool steps_at(const struct panel *panel, size_t value)
{
    ingle_sweep_cell cell, before;
    return cell_at(panel, value, &cell) && cell_at(panel, value - 1, &before) &&
           cell.has_required && before.has_required &&
           cell.required.value != before.required.value;
}

static void mark_step(const struct panel *panel, size_t value)
{
    char words[160];
    ingle_sweep_cell cell;
    int64_t at = value_at(panel, value);
    struct text text = text_start(words, sizeof words);
    cell_at(panel, value, &cell);
    text_add(&text, "from ");
    plot_words(&panel->plot.across, at, words + text.length, sizeof words - text.length);
    text.length = strlen(words);
    text_add(&text, ": ");
    plot_words(&panel->plot.up, cell.required.value, words + text.length,
               sizeof words - text.length);
    struct point place = plot_place(&panel->plot, at, cell.required.value);
    bool right = place.x < panel->plot.corner.x + FIELD_WIDTH / 2;
    svg_dot(panel->plot.svg, place, 900);
    svg_text(panel->plot.svg, (struct point){place.x + (right ? 1500 : -1500), place.y - 1500},
             right ? ANCHOR_START : ANCHOR_END, TEXT_SMALL, words);
}

/* Where the requirement goes up by steps, each has its mark; a slope has none. */
static void put_marks(const struct panel *panel)
{
    size_t found = 0, count = ingle_sweep_value_count(panel->sweep);
    for (size_t i = 1; i < count; i++) {
        found += steps_at(panel, i);
    }
    for (size_t i = 1; i < count && found <= MARKS_MOST; i++) {
        if (steps_at(panel, i)) {
            mark_step(panel, i);
        }
    }
}

static void put_panel(struct panel *panel, struct svg *svg, int32_t top)
{
    panel->plot.svg = svg;
    panel->plot.corner = (struct point){PLOT_LEFT, top + PANEL_HEAD};
    svg_group(svg, "panel", NULL);
    put_name(panel);
    put_verdicts(panel);
    plot_axes(&panel->plot);
    put_curve(panel, LINE_HIDDEN, false);
    put_curve(panel, LINE_OUTLINE, true);
    put_marks(panel);
    svg_group_end(svg);
}

/* ---- the sheet ------------------------------------------------------------------------------ */

static void put_legend(struct svg *svg, int32_t top)
{
    int32_t y = top + 4000;
    svg_line(svg, LINE_OUTLINE, (struct point){PLOT_LEFT, y},
             (struct point){PLOT_LEFT + 12000, y});
    svg_text(svg, (struct point){PLOT_LEFT + 14000, y + 1000}, ANCHOR_START, TEXT_SMALL,
             "required");
    svg_line(svg, LINE_HIDDEN, (struct point){PLOT_LEFT + 50000, y},
             (struct point){PLOT_LEFT + 62000, y});
    svg_text(svg, (struct point){PLOT_LEFT + 64000, y + 1000}, ANCHOR_START, TEXT_SMALL,
             "measured");
}

static size_t count_panels(const ingle_sweep *sweep, const ingle_unit *unit)
{
    size_t found = 0;
    struct panel panel;
    for (size_t i = 0; i < ingle_sweep_line_count(sweep); i++) {
        found += take_panel(&panel, sweep, i, unit);
    }
    return found;
}

static void put_panels(const ingle_sweep *sweep, struct svg *svg, const ingle_unit *unit)
{
    int32_t top = HEAD;
    struct panel panel;
    for (size_t i = 0; i < ingle_sweep_line_count(sweep); i++) {
        if (take_panel(&panel, sweep, i, unit)) {
            put_panel(&panel, svg, top);
            top += PANEL;
        }
    }
    put_legend(svg, top);
}

ingle_status ingle_sweep_plot(const ingle_sweep *sweep, const ingle_sheet *sheet,
                              ingle_write write, void *context)
{
    ingle_sheet taken;
    ingle_range range;
    struct svg svg;
    ingle_status status = sheet_take(&taken, sheet);
    if (status != INGLE_OK || sweep == NULL || ingle_sweep_value_count(sweep) == 0) {
        return status != INGLE_OK ? status : INGLE_ERROR_ARGUMENT;
    }
    ingle_sweep_range(sweep, &range);
    if (!ingle_dimension_is_amount(ingle_quantity_dimension(range.quantity))) {
        return INGLE_ERROR_DIMENSION;
    }
    size_t panels = count_panels(sweep, taken.unit);
    if (panels == 0) {
        return INGLE_ERROR_NOTHING_MEASURED;
    }
    const char *title = taken.title != NULL ? taken.title : "What each rule requires";
    status = svg_start(&svg, write, context, PLOT_LEFT + FIELD_WIDTH + PLOT_RIGHT,
                       HEAD + (int32_t)panels * PANEL + LEGEND, title,
                       "For each rule, what is required and what is measured as one quantity "
                       "changes, with the verdicts in a strip above.");
    if (status != INGLE_OK) {
        return status;
    }
    svg_text(&svg, (struct point){PLOT_LEFT, 9000}, ANCHOR_START, TEXT_TITLE, title);
    put_panels(sweep, &svg, taken.unit);
    return svg_end(&svg);
}
