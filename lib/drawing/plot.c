/* SPDX-License-Identifier: MIT */
#include "drawing/plot.h"

#include "base/text.h"

#include <string.h>

/* ---- places --------------------------------------------------------------------------------- */

/* How far along an axis of a length on paper; every part is small enough for 64 bits. */
static int32_t along(const struct plot_axis *axis, int64_t value, int32_t length)
{
    int64_t range = axis->most - axis->least;
    int64_t from = value - axis->least;
    if (from <= 0 || range <= 0) {
        return 0;
    }
    if (from >= range) {
        return length;
    }
    while (range > INT64_MAX / 1000000) {
        range /= 2;
        from /= 2;
    }
    return (int32_t)(from * 1000000 / range * length / 1000000);
}

int32_t plot_across(const struct plot *plot, int64_t across)
{
    return plot->corner.x + along(&plot->across, across, plot->width);
}

struct point plot_place(const struct plot *plot, int64_t across, int64_t up)
{
    return (struct point){plot_across(plot, across),
                          plot->corner.y + plot->height - along(&plot->up, up, plot->height)};
}

/* ---- numbers at ticks ----------------------------------------------------------------------- */

static void add_thousandths(struct text *text, int64_t value)
{
    char digits[4] = {'.', (char)('0' + value / 100 % 10), (char)('0' + value / 10 % 10),
                      (char)('0' + value % 10)};
    text_add_unsigned(text, (uint64_t)(value / 1000));
    size_t count = value % 10 != 0 ? 4 : value % 100 != 0 ? 3 : value % 1000 != 0 ? 2 : 0;
    text_add_bytes(text, digits, count);
}

void plot_words(const struct plot_axis *axis, int64_t value, char *words, size_t size)
{
    struct text text = text_start(words, size);
    if (axis->dimension == 0) {
        add_thousandths(&text, value);
        return;
    }
    ingle_amount amount = {value, axis->dimension, axis->scale};
    ingle_format format = {.size = sizeof format, .unit = axis->unit};
    ingle_amount_format(&amount, &format, words, size, NULL);
}

static const ingle_unit *unit_of(const struct plot_axis *axis)
{
    ingle_amount amount = {axis->most, axis->dimension, axis->scale};
    ingle_format format = {.size = sizeof format, .unit = axis->unit};
    return axis->dimension == 0 ? NULL : ingle_amount_unit(&amount, &format);
}

/* The number at a tick: the unit stands in the axis's label. */
static void tick_words(const struct plot_axis *axis, int64_t value, char *words, size_t size)
{
    plot_words(axis, value, words, size);
    const ingle_unit *unit = unit_of(axis);
    const char *id = unit == NULL ? "" : ingle_unit_id(unit);
    size_t length = strlen(words), ending = strlen(id);
    if (ending > 0 && length > ending + 1 && strcmp(words + length - ending, id) == 0 &&
        words[length - ending - 1] == ' ') {
        words[length - ending - 1] = '\0';
    }
}

/* One of the axis's units in base units; thousandths of plain numbers, ratios and slopes. */
static int64_t unit_size(const struct plot_axis *axis)
{
    const ingle_unit *unit = unit_of(axis);
    int64_t numerator = 1000, denominator = 1;
    if (unit != NULL) {
        ingle_unit_size(unit, &numerator, &denominator);
    } else if (axis->dimension == INGLE_RATIO || axis->dimension == INGLE_SLOPE) {
        numerator = INGLE_RATIO_ONE;
    } else if (axis->dimension != 0) {
        numerator = 1;
    }
    return numerator / denominator;
}

static int64_t ticks_at(const struct plot_axis *axis, int64_t step)
{
    return axis->most / step - (axis->least + step - 1) / step + 1;
}

/* Inches are halved or come in the steps of a tape. */
static int64_t inch_step(const struct plot_axis *axis, int64_t inch, int64_t most)
{
    static const int64_t sixteenths[] = {1,   2,   4,   8,   16,   32,   64,  96,
                                         192, 384, 768, 960, 1920, 3840, 9600};
    size_t i = 0;
    while (i + 1 < sizeof sixteenths / sizeof sixteenths[0] &&
           ticks_at(axis, inch / 16 * sixteenths[i]) > most) {
        i++;
    }
    return inch / 16 * sixteenths[i];
}

/* 1, 2, 5 and their tenfolds, down to a thousandth of the unit. */
static int64_t decimal_step(const struct plot_axis *axis, int64_t unit, int64_t most)
{
    int64_t step = unit >= 1000 ? unit / 1000 : 1;
    for (unsigned turn = 0; ticks_at(axis, step) > most && step < INT64_MAX / 10; turn++) {
        step = turn % 3 == 1 ? step / 2 * 5 : step * 2;
    }
    return step;
}

static int64_t tick_step(const struct plot_axis *axis, int64_t most)
{
    const ingle_unit *unit = unit_of(axis);
    bool inches = unit != NULL && axis->dimension == INGLE_LENGTH &&
                  (strcmp(ingle_unit_id(unit), "in") == 0 ||
                   strcmp(ingle_unit_id(unit), "ft") == 0);
    return inches ? inch_step(axis, INT64_C(25400000), most)
                  : decimal_step(axis, unit_size(axis), most);
}

static int64_t first_tick(const struct plot_axis *axis, int64_t step)
{
    int64_t over = axis->least % step;
    return over > 0 ? axis->least - over + step : axis->least - over;
}

/* ---- axes ----------------------------------------------------------------------------------- */

enum {
    TICK = 1500,
    TICKS_ACROSS_APART = 16000,
    TICKS_UP_APART = 9000,
    BETWEEN_TICKS = 2500,
    LABEL_LINE = 4300,
    /* Beside the upright axis, where its label has two lines. */
    TICK_ROOM = PLOT_LEFT - TICK - 2 * LABEL_LINE - 2500
};

/* What is on an axis and in which unit; the former is cut where both do not fit. */
static void axis_label(const struct plot_axis *axis, int32_t width, char *words, size_t size)
{
    char unit[40];
    struct text text = text_start(unit, sizeof unit);
    if (unit_of(axis) != NULL) {
        text_add(&text, ", ");
        text_add(&text, ingle_unit_id(unit_of(axis)));
    }
    text = text_start(words, size);
    text_add(&text, axis->label);
    svg_fit_text(words, size, width - svg_text_width(unit, TEXT_SMALL), TEXT_SMALL);
    text.length = strlen(words);
    text_add(&text, unit);
}

/* How wide the widest number at the ticks of some step is. */
static int32_t widest_tick(const struct plot_axis *axis, int64_t step)
{
    int32_t widest = 0;
    for (int64_t at = first_tick(axis, step); at <= axis->most; at += step) {
        char words[64];
        tick_words(axis, at, words, sizeof words);
        int32_t width = svg_text_width(words, TEXT_SMALL);
        widest = width > widest ? width : widest;
    }
    return widest;
}

/* The least step whose numbers fit side by side along a length; two ticks fit anyway. */
static int64_t step_across(const struct plot *plot)
{
    int32_t ticks = plot->width / TICKS_ACROSS_APART + 1;
    int64_t step = tick_step(&plot->across, ticks);
    while (ticks > 2 && widest_tick(&plot->across, step) + BETWEEN_TICKS >
                            plot->width / (int32_t)ticks) {
        step = tick_step(&plot->across, --ticks);
    }
    return step;
}

/* The least step whose numbers fit beside the axis. */
static int64_t step_up(const struct plot *plot)
{
    int32_t ticks = plot->height / TICKS_UP_APART + 1;
    int64_t step = tick_step(&plot->up, ticks);
    while (ticks > 2 && widest_tick(&plot->up, step) > TICK_ROOM) {
        step = tick_step(&plot->up, --ticks);
    }
    return step;
}

static void put_ticks_across(const struct plot *plot)
{
    int64_t step = step_across(plot);
    int32_t bottom = plot->corner.y + plot->height;
    for (int64_t at = first_tick(&plot->across, step); at <= plot->across.most; at += step) {
        char words[64];
        int32_t x = plot_across(plot, at);
        tick_words(&plot->across, at, words, sizeof words);
        svg_line(plot->svg, LINE_THIN, (struct point){x, bottom},
                 (struct point){x, bottom + TICK});
        svg_text(plot->svg, (struct point){x, bottom + TICK + TEXT_SMALL + 1000}, ANCHOR_MIDDLE,
                 TEXT_SMALL, words);
    }
}

static void put_ticks_up(const struct plot *plot)
{
    int64_t step = step_up(plot);
    int32_t left = plot->corner.x;
    for (int64_t at = first_tick(&plot->up, step); at <= plot->up.most; at += step) {
        char words[64];
        int32_t y = plot_place(plot, plot->across.least, at).y;
        tick_words(&plot->up, at, words, sizeof words);
        svg_fit_text(words, sizeof words, TICK_ROOM, TEXT_SMALL);
        svg_line(plot->svg, LINE_THIN, (struct point){left - TICK, y}, (struct point){left, y});
        svg_text(plot->svg, (struct point){left - TICK - 1000, y + TEXT_SMALL / 2}, ANCHOR_END,
                 TEXT_SMALL, words);
    }
}

/* In two lines where one is too long, next to the numbers. */
static void put_label_up(const struct plot *plot)
{
    char words[160];
    int32_t middle = plot->corner.y + plot->height / 2;
    int32_t ticks = widest_tick(&plot->up, step_up(plot));
    int32_t x = plot->corner.x - TICK - 2500 - (ticks < TICK_ROOM ? ticks : TICK_ROOM);
    axis_label(&plot->up, 2 * plot->height - plot->height / 4, words, sizeof words);
    size_t length = svg_line_length(words, plot->height, TEXT_SMALL);
    char *rest = words + length + (words[length] == ' ');
    if (*rest != '\0') {
        svg_fit_text(rest, sizeof words - (size_t)(rest - words), plot->height, TEXT_SMALL);
        svg_text_upwards(plot->svg, (struct point){x, middle}, ANCHOR_MIDDLE, TEXT_SMALL, rest);
        x -= LABEL_LINE;
    }
    words[length] = '\0';
    svg_text_upwards(plot->svg, (struct point){x, middle}, ANCHOR_MIDDLE, TEXT_SMALL, words);
}

void plot_axes(const struct plot *plot)
{
    char words[160];
    struct point corner = plot->corner;
    svg_rectangle(plot->svg, LINE_THIN, AREA_NONE, corner, plot->width, plot->height);
    put_ticks_across(plot);
    put_ticks_up(plot);
    axis_label(&plot->across, plot->width + PLOT_RIGHT, words, sizeof words);
    svg_text(plot->svg,
             (struct point){corner.x + plot->width / 2,
                            corner.y + plot->height + PLOT_BELOW - TEXT_SMALL},
             ANCHOR_MIDDLE, TEXT_SMALL, words);
    put_label_up(plot);
}

void plot_key(const struct plot *plot, int32_t row, enum line line, const char *name)
{
    int32_t left = plot->corner.x + plot->width + 4000;
    int32_t y = plot->corner.y + 4000 + row * 8000;
    svg_line(plot->svg, line, (struct point){left, y}, (struct point){left + 12000, y});
    svg_text(plot->svg, (struct point){left + 14000, y + TEXT_SMALL / 2}, ANCHOR_START, TEXT_SMALL,
             name);
}
