/* SPDX-License-Identifier: MIT */
#include "drawing/scene.h"

#include "check/report.h"
#include "survey/survey.h"

#include <string.h>

/* ---- what there is to draw ------------------------------------------------------------------ */

bool scene_has(const struct scene *scene, enum quantity_id quantity, size_t item, int64_t *value)
{
    const struct record *record = survey_record(scene->survey, quantity, item);
    if (record == NULL || !record->recorded) {
        return false;
    }
    *value = record->value;
    return true;
}

bool scene_needs(struct scene *scene, enum quantity_id quantity, size_t item, int64_t *value)
{
    if (scene_has(scene, quantity, item, value)) {
        return true;
    }
    const char *label = quantities[quantity].label;
    struct text text = {scene->left_out, sizeof scene->left_out, strlen(scene->left_out)};
    if (strstr(scene->left_out, label) == NULL) {
        text_add(&text, text.length > 0 ? ", " : "");
        text_add(&text, label);
    }
    return false;
}

/* Whether `required` asks more than `most` of what is measured. */
static bool is_harder(const ingle_finding *finding, int64_t required, int64_t most)
{
    return ingle_finding_relation(finding) == INGLE_AT_LEAST ? required > most : required < most;
}

const ingle_finding *scene_finding(const struct scene *scene, const char *rule,
                                   enum quantity_id quantity, size_t item)
{
    const ingle_finding *hardest = NULL;
    int64_t most = 0;
    for (size_t i = 0; i < ingle_report_finding_count(scene->report); i++) {
        const ingle_finding *finding = ingle_report_finding_at(scene->report, i);
        ingle_amount required;
        if (ingle_finding_quantity(finding) != &quantities[quantity] ||
            ingle_finding_item(finding) != item ||
            strcmp(ingle_rule_id(ingle_finding_rule(finding)), rule) != 0 ||
            ingle_finding_verdict(finding) == INGLE_NOT_APPLICABLE ||
            !ingle_finding_required(finding, &required)) {
            continue;
        }
        if (hardest == NULL || is_harder(finding, required.value, most)) {
            hardest = finding;
            most = required.value;
        }
    }
    return hardest;
}

bool scene_required(const struct scene *scene, const char *rule, enum quantity_id quantity,
                    size_t item, int64_t *required)
{
    ingle_amount amount;
    const ingle_finding *finding = scene_finding(scene, rule, quantity, item);
    if (finding == NULL || !ingle_finding_required(finding, &amount)) {
        return false;
    }
    *required = amount.value;
    return true;
}

bool scene_number(const ingle_finding *finding, const char *name, int64_t *value)
{
    const ingle_rule *rule = ingle_finding_rule(finding);
    for (size_t i = 0; i < ingle_rule_number_count(rule); i++) {
        ingle_amount amount;
        if (strcmp(ingle_rule_number_name(rule, i), name) == 0 &&
            ingle_rule_number_at(rule, i, &amount) == INGLE_OK) {
            *value = amount.value;
            return true;
        }
    }
    return false;
}

/* ---- to scale ------------------------------------------------------------------------------- */

void extent_add(struct extent *extent, int64_t x, int64_t y)
{
    extent->left = x < extent->left ? x : extent->left;
    extent->right = x > extent->right ? x : extent->right;
    extent->top = y < extent->top ? y : extent->top;
    extent->bottom = y > extent->bottom ? y : extent->bottom;
}

/* A nanometre at 1 : 1 is a thousandth of a thousandth of a millimetre. */
int32_t scene_length(const struct scene *scene, int64_t length)
{
    return (int32_t)(length / (1000 * (int64_t)scene->scale));
}

struct point scene_place(const struct scene *scene, int64_t x, int64_t y)
{
    return (struct point){scene->origin.x + scene_length(scene, x),
                          scene->origin.y + scene_length(scene, y)};
}

bool scene_fit(struct scene *scene, const struct extent *extent, int32_t margin)
{
    static const int32_t scales[] = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
    int32_t width = FIELD_RIGHT - FIELD_LEFT - 2 * margin;
    int32_t height = FIELD_BOTTOM - FIELD_TOP - 2 * margin;
    for (size_t i = 0; i < sizeof scales / sizeof scales[0]; i++) {
        int64_t nanometres = 1000 * (int64_t)scales[i];
        if ((extent->right - extent->left) / nanometres <= width &&
            (extent->bottom - extent->top) / nanometres <= height) {
            scene->scale = scales[i];
            int32_t across = scene_length(scene, extent->right - extent->left);
            int32_t down = scene_length(scene, extent->bottom - extent->top);
            scene->origin.x = FIELD_LEFT + margin + (width - across) / 2 -
                              scene_length(scene, extent->left);
            scene->origin.y =
                FIELD_TOP + margin + (height - down) / 2 - scene_length(scene, extent->top);
            return true;
        }
    }
    return false;
}

/* ---- drawing -------------------------------------------------------------------------------- */

void scene_rectangle(struct scene *scene, enum line line, enum area area, int64_t left,
                     int64_t top, int64_t right, int64_t bottom)
{
    struct point corner = scene_place(scene, left, top);
    struct point opposite = scene_place(scene, right, bottom);
    scene->used[area] = true;
    scene->required = scene->required || line == LINE_REQUIRED;
    svg_rectangle(&scene->svg, line, area, corner, opposite.x - corner.x,
                  opposite.y - corner.y);
}

void scene_area(struct scene *scene, enum area area, int64_t left, int64_t top, int64_t right,
                int64_t bottom)
{
    struct point corner = scene_place(scene, left, top);
    struct point opposite = scene_place(scene, right, bottom);
    if (right > left && bottom > top) {
        scene->used[area] = true;
        svg_area(&scene->svg, area, corner, opposite.x - corner.x, opposite.y - corner.y);
    }
}

void scene_line(struct scene *scene, enum line line, int64_t x1, int64_t y1, int64_t x2,
                int64_t y2)
{
    scene->required = scene->required || line == LINE_REQUIRED;
    svg_line(&scene->svg, line, scene_place(scene, x1, y1), scene_place(scene, x2, y2));
}

void scene_words(const struct scene *scene, int64_t length, char *words, size_t size)
{
    ingle_amount amount = {length, INGLE_LENGTH, INGLE_SCALE_USUAL};
    ingle_format format = {.size = sizeof format, .unit = scene->sheet.unit};
    ingle_amount_format(&amount, &format, words, size, NULL);
}

static void start_dimension(struct scene *scene, enum told told, enum quantity_id quantity,
                            size_t item, int64_t amount, char *words)
{
    char subject[SCENE_WORDS];
    struct text text = text_start(subject, sizeof subject);
    survey_add_pointer(&text, quantity, item);
    svg_amount_group(&scene->svg, told == TOLD_REQUIRED ? "required" : "measured", subject,
                     amount);
    text = text_start(words, SCENE_WORDS);
    scene_words(scene, amount, words, SCENE_WORDS);
    if (told == TOLD_REQUIRED) {
        text.length = strlen(words);
        text_add(&text, " required");
    }
}

void scene_dimension_level(struct scene *scene, enum told told, enum quantity_id quantity,
                           size_t item, int64_t amount, struct point from, struct point to,
                           int32_t at)
{
    char words[SCENE_WORDS];
    start_dimension(scene, told, quantity, item, amount, words);
    svg_dimension_level(&scene->svg, from, to, at, words);
    svg_group_end(&scene->svg);
}

void scene_dimension_upright(struct scene *scene, enum told told, enum quantity_id quantity,
                             size_t item, int64_t amount, struct point from, struct point to,
                             int32_t at)
{
    char words[SCENE_WORDS];
    start_dimension(scene, told, quantity, item, amount, words);
    svg_dimension_upright(&scene->svg, from, to, at, words);
    svg_group_end(&scene->svg);
}
