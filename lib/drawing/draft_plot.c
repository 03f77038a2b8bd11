/* SPDX-License-Identifier: MIT */
/*
 * The velocity through the opening against the height of the flue: for the flue that is there, and
 * beside it for the flues that a code's ratios ask for.
 */
#include "draft/decimal.h"
#include "draft/shape.h"
#include "drawing/plot.h"
#include "drawing/sheet.h"

#include <ingle/plot.h>

#include <string.h>

enum { FIELD_WIDTH = 140000, FIELD_HEIGHT = 90000, HEAD = 24000, NAMES = 80000, POINTS = 60 };

/* The heights that are plotted, in nanometres; they hold those that the model may claim. */
#define LEAST_HEIGHT INT64_C(2000000000)
#define MOST_HEIGHT INT64_C(14000000000)

#define METRES_PER_NANOMETRE 1e-9

struct drafting {
    const ingle_draft_input *input;
    const ingle_rule *ratios; /* NULL without a standard that has them */
    const ingle_standard *standard;
    double per_shown; /* metres a second in one of the unit that is shown */
    struct plot plot;
};

/* ---- flues ---------------------------------------------------------------------------------- */

/* The rule that sizes a flue by its shape as a share of the opening. */
static const ingle_rule *find_ratios(const ingle_standard *standard)
{
    for (size_t i = 0; i < ingle_standard_rule_count(standard); i++) {
        const ingle_rule *rule = ingle_standard_rule_at(standard, i);
        if (strcmp(ingle_rule_id(rule), "flue-area") == 0 &&
            strcmp(ingle_rule_formula(rule), "flue-share") == 0) {
            return rule;
        }
    }
    return NULL;
}

static bool ratio_of(const ingle_rule *rule, const char *name, ingle_amount *ratio)
{
    for (size_t i = 0; i < ingle_rule_number_count(rule); i++) {
        if (strcmp(ingle_rule_number_name(rule, i), name) == 0) {
            return ingle_rule_number_at(rule, i, ratio) == INGLE_OK;
        }
    }
    return false;
}

/* ---- curves --------------------------------------------------------------------------------- */

static int64_t height_at(int32_t index)
{
    return LEAST_HEIGHT + (MOST_HEIGHT - LEAST_HEIGHT) / POINTS * index;
}

/* The velocity in thousandths of the unit shown; false where the model gives none. */
static bool velocity_at(const struct drafting *drafting, ingle_draft_input input, int64_t height,
                        int64_t *velocity)
{
    double value;
    input.height = (double)height * METRES_PER_NANOMETRE;
    if (ingle_draft_velocity(&input, &value) != INGLE_OK) {
        return false;
    }
    *velocity = (int64_t)(value / drafting->per_shown * 1000.0 + 0.5);
    return true;
}

static void put_curve(const struct drafting *drafting, const ingle_draft_input *input,
                      enum line line)
{
    svg_polyline_start(drafting->plot.svg);
    for (int32_t i = 0; i <= POINTS; i++) {
        int64_t velocity;
        if (velocity_at(drafting, *input, height_at(i), &velocity)) {
            svg_polyline_point(drafting->plot.svg,
                               plot_place(&drafting->plot, height_at(i), velocity));
        }
    }
    svg_polyline_end(drafting->plot.svg, line);
}

/* The curve of a flue that is a printed share of the opening. */
static void put_ratio(const struct drafting *drafting, int32_t row, enum line line,
                      const char *number, const char *shape)
{
    ingle_draft_input input = *drafting->input;
    ingle_amount ratio;
    char name[96];
    if (!ratio_of(drafting->ratios, number, &ratio)) {
        return;
    }
    input.flue_area = input.opening_area * (double)ratio.value / (double)INGLE_RATIO_ONE;
    input.hydraulic_diameter =
        strcmp(number, "round") == 0    ? diameter_of_circle(input.flue_area)
        : strcmp(number, "square") == 0 ? diameter_of_rectangle(input.flue_area, 1.0, 1.0)
                                        : diameter_of_rectangle(input.flue_area, 2.0, 1.0);
    put_curve(drafting, &input, line);
    struct text text = text_start(name, sizeof name);
    ingle_amount_format(&ratio, NULL, name, sizeof name, NULL);
    text.length = strlen(name);
    text_add(&text, " of the opening, ");
    text_add(&text, shape);
    plot_key(&drafting->plot, row, line, name);
}

static void put_ratios(const struct drafting *drafting)
{
    if (drafting->ratios == NULL) {
        return;
    }
    char source[96];
    struct text text = text_start(source, sizeof source);
    put_ratio(drafting, 2, LINE_THIN, "round", "round");
    put_ratio(drafting, 3, LINE_HIDDEN, "square", "square");
    put_ratio(drafting, 4, LINE_CENTRE, "long", "2:1");
    text_add(&text, ingle_standard_id(drafting->standard));
    text_add(&text, ", ");
    text_add(&text, ingle_rule_section(drafting->ratios));
    svg_text(drafting->plot.svg,
             (struct point){drafting->plot.corner.x + FIELD_WIDTH + 18000,
                            drafting->plot.corner.y + 4000 + 5 * 8000},
             ANCHOR_START, TEXT_SMALL, source);
}

/* ---- what was surveyed ---------------------------------------------------------------------- */

static void put_criterion(const struct drafting *drafting)
{
    int64_t value = (int64_t)(drafting->input->criterion / drafting->per_shown * 1000.0 + 0.5);
    svg_line(drafting->plot.svg, LINE_LIMIT, plot_place(&drafting->plot, LEAST_HEIGHT, value),
             plot_place(&drafting->plot, MOST_HEIGHT, value));
    plot_key(&drafting->plot, 1, LINE_LIMIT, "criterion, from memory");
}

/* The estimate with its uncertainty, where the height is within the plot. */
static void put_estimate(const struct drafting *drafting, double uncertainty)
{
    int64_t height = (int64_t)(drafting->input->height / METRES_PER_NANOMETRE), velocity;
    if (height < LEAST_HEIGHT || height > MOST_HEIGHT ||
        !velocity_at(drafting, *drafting->input, height, &velocity)) {
        return;
    }
    int64_t half = (int64_t)((double)velocity * uncertainty);
    struct point middle = plot_place(&drafting->plot, height, velocity);
    struct point low = plot_place(&drafting->plot, height, velocity - half);
    struct point high = plot_place(&drafting->plot, height, velocity + half);
    svg_line(drafting->plot.svg, LINE_OUTLINE, low, high);
    svg_line(drafting->plot.svg, LINE_OUTLINE, (struct point){low.x - 1500, low.y},
             (struct point){low.x + 1500, low.y});
    svg_line(drafting->plot.svg, LINE_OUTLINE, (struct point){high.x - 1500, high.y},
             (struct point){high.x + 1500, high.y});
    svg_dot(drafting->plot.svg, middle, 1200);
}

/* ---- the sheet ------------------------------------------------------------------------------ */

/* The largest velocity of all curves, with room above. */
static int64_t largest(const struct drafting *drafting)
{
    ingle_draft_input input = *drafting->input;
    ingle_amount ratio;
    int64_t most = (int64_t)(input.criterion / drafting->per_shown * 1000.0) + 1, velocity;
    if (velocity_at(drafting, input, MOST_HEIGHT, &velocity) && velocity > most) {
        most = velocity;
    }
    if (drafting->ratios != NULL && ratio_of(drafting->ratios, "long", &ratio)) {
        input.flue_area = input.opening_area * (double)ratio.value / (double)INGLE_RATIO_ONE;
        input.hydraulic_diameter = diameter_of_circle(input.flue_area);
        if (velocity_at(drafting, input, MOST_HEIGHT, &velocity) && velocity > most) {
            most = velocity;
        }
    }
    return most + most / 8;
}

/* Heights in feet and velocities in ft/s, or both metric. */
static void take_plot(struct drafting *drafting, struct svg *svg, const ingle_unit *unit)
{
    bool metric = ingle_unit_is_metric(unit) != 0;
    drafting->per_shown = metric ? 1.0 : 0.3048;
    drafting->plot = (struct plot){svg, {PLOT_LEFT, HEAD}, FIELD_WIDTH, FIELD_HEIGHT,
                                   {.dimension = INGLE_LENGTH}, {.dimension = 0}};
    drafting->plot.across.label = "height of the flue";
    drafting->plot.across.least = LEAST_HEIGHT;
    drafting->plot.across.most = MOST_HEIGHT;
    drafting->plot.across.unit = metric ? unit : ingle_unit_find("ft");
    drafting->plot.up.label = metric ? "velocity through the opening, m/s"
                                     : "velocity through the opening, ft/s";
    drafting->plot.up.most = largest(drafting);
}

static void put_plot(struct drafting *drafting, double uncertainty)
{
    plot_axes(&drafting->plot);
    put_criterion(drafting);
    put_ratios(drafting);
    put_curve(drafting, drafting->input, LINE_OUTLINE);
    plot_key(&drafting->plot, 0, LINE_OUTLINE, "this flue");
    put_estimate(drafting, uncertainty);
}

ingle_status ingle_draft_plot(const ingle_draft *draft, const ingle_draft_input *input,
                              const ingle_standard *standard, const ingle_sheet *sheet,
                              ingle_write write, void *context)
{
    ingle_sheet taken;
    struct svg svg;
    double uncertainty = 0.0;
    ingle_status status = sheet_take(&taken, sheet);
    if (status != INGLE_OK || draft == NULL || input == NULL) {
        return status != INGLE_OK ? status : INGLE_ERROR_ARGUMENT;
    }
    if (!ingle_draft_get(draft, INGLE_DRAFT_EXPANDED_UNCERTAINTY, &uncertainty)) {
        return INGLE_ERROR_NOTHING_MEASURED;
    }
    struct drafting drafting = {.input = input, .standard = standard};
    drafting.ratios = standard == NULL ? NULL : find_ratios(standard);
    take_plot(&drafting, &svg, taken.unit);
    const char *title = taken.title != NULL ? taken.title : "Will it draw? An estimate";
    status = svg_start(&svg, write, context, PLOT_LEFT + FIELD_WIDTH + NAMES,
                       HEAD + FIELD_HEIGHT + PLOT_BELOW + 6000, title,
                       "The estimated mean velocity through the opening against the height of the "
                       "flue, for this flue and for those that a code's ratios ask for. It is no "
                       "promise about smoke and no check of a code.");
    if (status != INGLE_OK) {
        return status;
    }
    svg_text(&svg, (struct point){PLOT_LEFT, 9000}, ANCHOR_START, TEXT_TITLE, title);
    svg_text(&svg, (struct point){PLOT_LEFT, 17000}, ANCHOR_START, TEXT_SMALL,
             "No promise about smoke, and no check of a code.");
    put_plot(&drafting, uncertainty);
    return svg_end(&svg);
}
