/* SPDX-License-Identifier: MIT */
#include "check_by_hand.h"

static const int64_t inch = INT64_C(25400000);
static const int64_t square_inch = INT64_C(645160000000000);

static int trim_misses(const struct hand_trim *trim)
{
    if (!trim->combustible) {
        return 0;
    }
    if (trim->abutting) {
        return trim->lining_distance < 12 * inch;
    }
    int misses = trim->distance < 6 * inch;
    if (trim->distance < 6 * inch) {
        misses += trim->projection > 0;
    } else if (trim->distance <= 12 * inch) {
        misses += trim->projection * 8 > trim->distance;
    }
    return misses;
}

static int firebox_misses(const struct hand_survey *s)
{
    int64_t throat = s->throat_width * s->throat_depth;
    return (s->depth < 20 * inch) + (s->throat_height < 8 * inch) + (s->throat_depth < 4 * inch) +
           (throat < s->flue_area) + (s->damper_area < s->flue_area) +
           (s->chamber_area < s->flue_area) + (s->lintel_left < 4 * inch) +
           (s->lintel_right < 4 * inch) + (s->throat_above_lintel < 8 * inch) +
           (s->chamber_height > s->width) +
           (s->chamber_slope > (s->corbeled ? 30 : 45) * INT64_C(3600000000));
}

int check_by_hand(const struct hand_survey *s)
{
    int64_t opening = s->width * s->height;
    int large = opening >= 864 * square_inch;
    int misses = firebox_misses(s);
    misses += s->thickness < 4 * inch;
    misses += s->extension * 8 < (s->raise >= 8 * inch ? 3 * inch : 16 * inch);
    misses += s->front < (large ? 20 : 16) * inch;
    misses += s->left < (large ? 12 : 8) * inch;
    misses += s->right < (large ? 12 : 8) * inch;
    misses += s->flue_area < opening / 10;
    for (int i = 0; i < s->trim_count; i++) {
        misses += trim_misses(&s->trim[i]);
    }
    return misses;
}
