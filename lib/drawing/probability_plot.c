/* SPDX-License-Identifier: MIT */
/*
 * The probability that a rule is met against the margin: where the limit lies, and how far inside
 * it a measure has to be to convince.
 */
#include "drawing/plot.h"
#include "drawing/sheet.h"
#include "uncertainty/normal.h"

#include <ingle/plot.h>

enum { FIELD_WIDTH = 140000, FIELD_HEIGHT = 80000, HEAD = 26000, NAMES = 66000, POINTS = 96 };

/* How many standard uncertainties to each side of the limit are shown. */
enum { SPREAD = 4 };

struct curve {
    struct plot plot;
    double uncertainty; /* of the margin, in base units */
    int64_t shift;      /* what is added to a margin, so that the axis begins at 0 */
};

static int64_t shown(const struct curve *curve, double margin)
{
    return (int64_t)margin + curve->shift;
}

/* In thousandths of a percent. */
static int64_t percent(double probability)
{
    return (int64_t)(probability * 100.0 * 1000.0 + 0.5);
}

static void put_curve(const struct curve *curve)
{
    svg_polyline_start(curve->plot.svg);
    for (int i = 0; i <= POINTS; i++) {
        double z = SPREAD * (2.0 * i / POINTS - 1.0);
        svg_polyline_point(curve->plot.svg,
                           plot_place(&curve->plot, shown(curve, z * curve->uncertainty),
                                      percent(normal_below(z))));
    }
    svg_polyline_end(curve->plot.svg, LINE_OUTLINE);
}

static void put_upright(const struct curve *curve, enum line line, double margin)
{
    struct point low = plot_place(&curve->plot, shown(curve, margin), 0);
    svg_line(curve->plot.svg, line, low, (struct point){low.x, curve->plot.corner.y});
}

static void put_measured(const struct curve *curve, double margin, double probability)
{
    char words[64];
    struct point place =
        plot_place(&curve->plot, shown(curve, margin), percent(probability));
    struct plot_axis up = curve->plot.up;
    plot_words(&up, percent(probability) / 100 * 100, words, sizeof words);
    svg_dot(curve->plot.svg, place, 1200);
    svg_text(curve->plot.svg, (struct point){place.x + 3000, place.y + 1000}, ANCHOR_START,
             TEXT_SMALL, words);
}

/* A margin is shown by what is measured: the axis tells the amount at each. */
static void put_all(struct curve *curve, double margin, double probability)
{
    plot_axes(&curve->plot);
    put_upright(curve, LINE_HIDDEN, 0.0);
    put_upright(curve, LINE_LIMIT, 2.0 * curve->uncertainty);
    put_curve(curve);
    put_measured(curve, margin, probability);
    plot_key(&curve->plot, 0, LINE_OUTLINE, "probability");
    plot_key(&curve->plot, 1, LINE_HIDDEN, "the limit of the rule");
    plot_key(&curve->plot, 2, LINE_LIMIT, "limit and U (k = 2)");
}

/* The judged quantity along the axis, rising to what meets the rule on the right. */
static bool take_plot(struct curve *curve, struct svg *svg, const ingle_finding *finding,
                      const ingle_unit *unit)
{
    ingle_amount required;
    const ingle_quantity *quantity = ingle_finding_quantity(finding);
    ingle_relation relation = ingle_finding_relation(finding);
    if (!ingle_finding_required(finding, &required) || relation != INGLE_AT_LEAST) {
        return false;
    }
    double half = SPREAD * curve->uncertainty;
    curve->shift = required.value;
    curve->plot = (struct plot){svg, {PLOT_LEFT, HEAD}, FIELD_WIDTH, FIELD_HEIGHT,
                                {ingle_quantity_label(quantity), required.value - (int64_t)half,
                                 required.value + (int64_t)half, required.dimension,
                                 required.scale, unit},
                                {"probability that the rule is met, %", 0, 100000, 0, 0, NULL}};
    return curve->plot.across.most > curve->plot.across.least;
}

ingle_status ingle_probability_plot(const ingle_conformance *conformance, const ingle_sheet *sheet,
                                    ingle_write write, void *context)
{
    ingle_sheet taken;
    struct svg svg;
    struct curve curve = {.uncertainty = 0.0};
    ingle_figure uncertainty;
    ingle_amount margin;
    double probability;
    ingle_status status = sheet_take(&taken, sheet);
    if (status != INGLE_OK || conformance == NULL) {
        return status != INGLE_OK ? status : INGLE_ERROR_ARGUMENT;
    }
    const ingle_finding *finding = ingle_conformance_finding(conformance);
    if (!ingle_conformance_uncertainty(conformance, &uncertainty) ||
        !ingle_conformance_probability(conformance, &probability) ||
        !ingle_finding_margin(finding, &margin)) {
        return INGLE_ERROR_NOTHING_MEASURED;
    }
    curve.uncertainty = uncertainty.value;
    if (!take_plot(&curve, &svg, finding, taken.unit)) {
        return INGLE_ERROR_DIMENSION;
    }
    const char *title = taken.title != NULL ? taken.title : "How sure are we?";
    status = svg_start(&svg, write, context, PLOT_LEFT + FIELD_WIDTH + NAMES,
                       HEAD + FIELD_HEIGHT + PLOT_BELOW + 6000, title,
                       "The probability that the rule is met against what is measured, by the "
                       "normal distribution, with the limit of the rule.");
    if (status != INGLE_OK) {
        return status;
    }
    svg_text(&svg, (struct point){PLOT_LEFT, 9000}, ANCHOR_START, TEXT_TITLE, title);
    svg_text(&svg, (struct point){PLOT_LEFT, 18000}, ANCHOR_START, TEXT_USUAL,
             ingle_rule_id(ingle_finding_rule(finding)));
    put_all(&curve, (double)margin.value, probability);
    return svg_end(&svg);
}
