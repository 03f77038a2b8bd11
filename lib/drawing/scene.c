/* SPDX-License-Identifier: MIT */
#include "drawing/scene.h"

#include "check/report.h"
#include "survey/survey.h"

#include <string.h>

/* ---- what was measured ---------------------------------------------------------------------- */

bool scene_has(const struct scene *scene, enum quantity_id quantity, size_t item, int64_t *value)
{
    const struct record *record = survey_record(scene->survey, quantity, item);
    if (record == NULL || !record->recorded) {
        return false;
    }
    *value = record->value;
    return true;
}

static void list_once(char *list, size_t size, const char *what)
{
    struct text text = {list, size, strlen(list)};
    if (strstr(list, what) == NULL) {
        text_add(&text, text.length > 0 ? "; " : "");
        text_add(&text, what);
    }
}

bool scene_needs(struct scene *scene, enum quantity_id quantity, size_t item, int64_t *value)
{
    if (scene_has(scene, quantity, item, value)) {
        return true;
    }
    list_once(scene->left_out, sizeof scene->left_out, quantities[quantity].label);
    return false;
}

void scene_assumes(struct scene *scene, const char *what)
{
    list_once(scene->assumed, sizeof scene->assumed, what);
}

bool scene_takes(struct scene *scene, enum quantity_id quantity, int64_t instead, int64_t *value)
{
    if (scene_has(scene, quantity, 0, value)) {
        return true;
    }
    *value = instead;
    scene_assumes(scene, quantities[quantity].label);
    return false;
}

/* ---- what findings say ---------------------------------------------------------------------- */

static bool is_about(const struct ingle_finding *finding, enum quantity_id quantity, size_t item)
{
    return finding->judged == quantity && finding->item == item &&
           finding->verdict != INGLE_NOT_APPLICABLE;
}

struct amount_told scene_measured(const struct scene *scene, enum quantity_id quantity, size_t item)
{
    struct amount_told measured = {.told = TOLD_MEASURED};
    measured.known = scene_has(scene, quantity, item, &measured.amount);
    for (size_t i = 0; i < scene->report->finding_count && !measured.known; i++) {
        const struct ingle_finding *finding = &scene->report->findings[i];
        if (is_about(finding, quantity, item) && finding->has_measured) {
            measured = (struct amount_told){true, TOLD_DERIVED, finding->measured};
        }
    }
    return measured;
}

struct amount_told scene_demand(const struct scene *scene, enum quantity_id quantity, size_t item,
                                ingle_relation relation)
{
    bool least = relation == INGLE_AT_LEAST;
    struct amount_told most = {.told = least ? TOLD_REQUIRED : TOLD_ALLOWED};
    for (size_t i = 0; i < scene->report->finding_count; i++) {
        const struct ingle_finding *finding = &scene->report->findings[i];
        if (!is_about(finding, quantity, item) || !finding->has_required ||
            finding->relation != relation) {
            continue;
        }
        if (!most.known ||
            (least ? finding->required > most.amount : finding->required < most.amount)) {
            most.known = true;
            most.amount = finding->required;
        }
    }
    return most;
}

static bool rule_number(const ingle_rule *rule, const char *name, int64_t *value)
{
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

bool scene_number(const struct scene *scene, const char *rule, const char *name, int64_t *value)
{
    for (size_t i = 0; i < scene->report->finding_count; i++) {
        const struct ingle_finding *finding = &scene->report->findings[i];
        if (finding->verdict != INGLE_NOT_APPLICABLE && finding->amendment == NULL &&
            strcmp(ingle_rule_id(finding->rule), rule) == 0 &&
            rule_number(finding->rule, name, value)) {
            return true;
        }
    }
    return false;
}

ingle_verdict scene_verdict(const struct scene *scene, enum group_id group, size_t item)
{
    ingle_verdict gravest = INGLE_NOT_APPLICABLE;
    for (size_t i = 0; i < scene->report->finding_count; i++) {
        const struct ingle_finding *finding = &scene->report->findings[i];
        if (quantities[finding->judged].group == group && finding->item == item &&
            finding->verdict > gravest) {
            gravest = finding->verdict;
        }
    }
    return gravest;
}

/* ---- the picture ---------------------------------------------------------------------------- */

struct shape *scene_shape(struct scene *scene, enum line line, enum area area)
{
    scene->used_lines[line] = true;
    scene->used_areas[area] = true;
    return picture_shape(scene->into, line, area);
}

void scene_rectangle(struct scene *scene, enum line line, enum area area, int64_t left,
                     int64_t top, int64_t right, int64_t bottom)
{
    if (left < right && top < bottom) {
        struct shape *shape = scene_shape(scene, line, area);
        shape_corner(shape, left, top);
        shape_corner(shape, right, top);
        shape_corner(shape, right, bottom);
        shape_corner(shape, left, bottom);
    }
}

void scene_line(struct scene *scene, enum line line, int64_t x1, int64_t y1, int64_t x2,
                int64_t y2)
{
    struct shape *shape = scene_shape(scene, line, AREA_NONE);
    shape->open = true;
    shape_corner(shape, x1, y1);
    shape_corner(shape, x2, y2);
}

void scene_words(const struct scene *scene, int64_t length, char *words, size_t size)
{
    ingle_amount amount = {length, INGLE_LENGTH, INGLE_SCALE_USUAL};
    ingle_format format = {.size = sizeof format, .unit = scene->sheet.unit};
    ingle_amount_format(&amount, &format, words, size, NULL);
}

static const struct {
    const char *before, *after;
} told_words[] = {
    [TOLD_MEASURED] = {"", ""},         [TOLD_DERIVED] = {"", ""},
    [TOLD_REQUIRED] = {"", " required"}, [TOLD_ALLOWED] = {"", " allowed"},
    [TOLD_ZONE] = {"within ", ""},      [TOLD_REACH] = {"within ", ""},
};

static void add_dimension(struct scene *scene, const struct dimension *dimension)
{
    struct picture *picture = scene->into;
    char words[DIMENSION_WORDS];
    if (picture->dimension_count == DIMENSIONS_MOST) {
        picture->overfull = true;
        return;
    }
    struct dimension *added = &picture->dimensions[picture->dimension_count++];
    *added = *dimension;
    struct text text = text_start(added->words, sizeof added->words);
    scene_words(scene, added->amount, words, sizeof words);
    text_add(&text, told_words[added->told].before);
    text_add(&text, words);
    text_add(&text, told_words[added->told].after);
}

void scene_dimension(struct scene *scene, enum side side, enum quantity_id quantity, size_t item,
                     struct amount_told amount, struct place from, struct place to)
{
    if (amount.known) {
        add_dimension(scene, &(struct dimension){.told = amount.told, .side = side,
                                                 .quantity = quantity, .item = item,
                                                 .amount = amount.amount, .from = from, .to = to});
    }
}

void scene_dimension_number(struct scene *scene, enum side side, enum told told, const char *rule,
                            const char *number, int64_t amount, struct place from, struct place to)
{
    add_dimension(scene, &(struct dimension){.told = told, .side = side, .rule = rule,
                                             .number = number, .amount = amount, .from = from,
                                             .to = to});
}

/* ---- items with a mark ---------------------------------------------------------------------- */

char *scene_mark(struct scene *scene, enum group_id group, size_t item, struct place target)
{
    struct picture *picture = scene->into;
    if (picture->mark_count == MARKS_MOST) {
        return NULL;
    }
    struct mark *mark = &picture->marks[picture->mark_count++];
    char *note = scene->notes[scene->note_count++];
    const char *label = ingle_survey_item_label(scene->survey, groups[group].id, item);
    struct text text = text_start(note, SCENE_NOTE);
    mark->number = (unsigned)picture->mark_count;
    mark->target = target;
    text_add_unsigned(&text, mark->number);
    text_add(&text, "  ");
    text_add(&text, label != NULL ? label : groups[group].id);
    return note;
}

void note_add(const struct scene *scene, char *note, const char *before, struct amount_told amount,
              const char *after)
{
    char words[DIMENSION_WORDS];
    struct text text = {note, SCENE_NOTE, strlen(note)};
    if (!amount.known) {
        return;
    }
    scene_words(scene, amount.amount, words, sizeof words);
    for (char *blank = strchr(words, ' '); blank != NULL; blank = strchr(blank, ' ')) {
        *blank = SVG_NO_BREAK;
    }
    text_add(&text, before);
    text_add(&text, words);
    text_add(&text, after);
}

static const char *const verdict_words[] = {
    [INGLE_NOT_APPLICABLE] = ": no rule applies",
    [INGLE_MEETS] = ": meets what applies",
    [INGLE_UNMEASURED] = ": not all measured",
    [INGLE_BY_LISTING] = ": its listing decides",
    [INGLE_TOO_CLOSE] = ": too close to call",
    [INGLE_FAILS] = ": FAILS",
};

void note_end(const struct scene *scene, char *note, enum group_id group, size_t item)
{
    struct text text = {note, SCENE_NOTE, strlen(note)};
    text_add(&text, verdict_words[scene_verdict(scene, group, item)]);
}

void scene_not_drawn(struct scene *scene, const char *what, size_t count)
{
    if (count > 0) {
        struct text text = text_start(scene->notes[scene->note_count++], SCENE_NOTE);
        text_add_unsigned(&text, count);
        text_add(&text, what);
    }
}
