/* SPDX-License-Identifier: MIT */
/*
 * An estimate of the draft as JSON.
 */
#include "json.h"
#include "writing/amount.h"
#include "writing/draft.h"

/* More digits than any of it is known to, and fewer than would show how a double is kept. */
enum { VALUE_DIGITS = 10, TEXT_ROOM = 64 };

struct draft_writing {
    struct json_writer *out;
    const ingle_draft *draft;
    ingle_format format;
};

static void write_number(struct json_writer *out, const char *name, double value)
{
    char digits[TEXT_ROOM];
    ingle_draft_decimal(value, VALUE_DIGITS, digits, sizeof digits, NULL);
    json_digits(out, name, digits);
}

/* `"value": 0.787, "unit": "ft/s", "text": "0.787 ft/s"` */
static void write_value(const struct draft_writing *writing, ingle_draft_figure figure)
{
    char text[TEXT_ROOM];
    double value = 0;
    const char *unit = ingle_draft_figure_unit(figure, &writing->format);
    ingle_draft_get_shown(writing->draft, figure, &writing->format, &value);
    ingle_draft_figure_text(writing->draft, figure, &writing->format, text, sizeof text, NULL);
    write_number(writing->out, "value", value);
    if (unit != NULL) {
        json_text(writing->out, "unit", unit);
    }
    json_text(writing->out, "text", text);
}

static void open_figure(const struct draft_writing *writing, ingle_draft_figure figure)
{
    json_open_object(writing->out, ingle_draft_figure_id(figure));
    json_text(writing->out, "label", ingle_draft_figure_label(figure));
    json_text(writing->out, "symbol", ingle_draft_figure_symbol(figure));
    write_value(writing, figure);
}

static void write_input(const struct draft_writing *writing, ingle_draft_figure figure)
{
    const char *origin = ingle_draft_origin(writing->draft, figure);
    const char *from = ingle_draft_from(writing->draft, figure);
    const ingle_draft_number *number = ingle_draft_figure_default(figure);
    open_figure(writing, figure);
    json_text(writing->out, "from", from);
    if (origin != NULL) {
        json_text(writing->out, "origin", origin);
    } else if (from[0] == 'd' && number != NULL) {
        json_text(writing->out, "source", ingle_draft_number_source(number));
        json_text(writing->out, "basis", ingle_draft_number_basis(number));
    }
    json_close_object(writing->out);
}

/* Those that went in, or those that came out. */
static void write_figures(const struct draft_writing *writing, const char *name, bool inputs)
{
    json_open_object(writing->out, name);
    for (size_t i = 0; i < ingle_draft_figure_count(); i++) {
        ingle_draft_figure figure = ingle_draft_figure_at(i);
        bool goes_in = ingle_draft_figure_is_input(figure) != 0;
        if (goes_in != inputs || !ingle_draft_get(writing->draft, figure, NULL)) {
            continue;
        }
        if (goes_in) {
            write_input(writing, figure);
        } else {
            open_figure(writing, figure);
            json_close_object(writing->out);
        }
    }
    json_close_object(writing->out);
}

static void write_sensitivities(const struct draft_writing *writing)
{
    json_open_object(writing->out, "sensitivities");
    for (size_t i = 0; i < ingle_draft_figure_count(); i++) {
        ingle_draft_figure figure = ingle_draft_figure_at(i);
        double value;
        if (ingle_draft_sensitivity(writing->draft, figure, &value)) {
            write_number(writing->out, ingle_draft_figure_id(figure), value);
        }
    }
    json_close_object(writing->out);
}

static void write_outside(const struct draft_writing *writing)
{
    const ingle_draft *draft = writing->draft;
    json_open_array(writing->out, "outside");
    for (size_t i = 0; i < ingle_draft_outside_count(draft); i++) {
        ingle_draft_figure figure = ingle_draft_outside_figure(draft, i);
        json_open_object(writing->out, NULL);
        if (figure != 0) {
            json_text(writing->out, "figure", ingle_draft_figure_id(figure));
        }
        json_text(writing->out, "reason", ingle_draft_outside_at(draft, i));
        json_close_object(writing->out);
    }
    json_close_array(writing->out);
}

/* ---- steps ----------------------------------------------------------------------------------- */

struct step_source {
    const ingle_draft *draft;
    size_t index;
};

static ingle_status step_text(const void *source, int32_t part, const ingle_format *format,
                              char *buffer, size_t capacity, size_t *length)
{
    const struct step_source *step = source;
    return ingle_draft_step_text(step->draft, step->index, part, format, buffer, capacity,
                                 length);
}

static void write_step(const struct draft_writing *writing, size_t index)
{
    struct json_writer *out = writing->out;
    struct step_source step = {writing->draft, index};
    ingle_draft_figure figure = ingle_draft_step_figure(writing->draft, index);
    json_open_object(out, NULL);
    json_text(out, "step", ingle_draft_figure_label(figure));
    json_text(out, "figure", ingle_draft_figure_id(figure));
    json_text_from(out, "expression", step_text, &step, INGLE_STEP_EXPRESSION, &writing->format);
    json_text_from(out, "substituted", step_text, &step, INGLE_STEP_SUBSTITUTED,
                   &writing->format);
    json_open_object(out, "result");
    write_value(writing, figure);
    json_close_object(out);
    struct json_mark mark = json_mark(out);
    if (json_text_from(out, "remark", step_text, &step, INGLE_STEP_REMARK, &writing->format) ==
        0) {
        json_return(out, mark);
    }
    json_close_object(out);
}

/* ---- the whole ------------------------------------------------------------------------------- */

static ingle_status sentence_text(const void *draft, int32_t part, const ingle_format *format,
                                  char *buffer, size_t capacity, size_t *length)
{
    (void)part;
    return ingle_draft_sentence(draft, format, buffer, capacity, length);
}

static void write_notices(const struct draft_writing *writing)
{
    json_open_array(writing->out, "notices");
    for (size_t i = 0; i < ingle_draft_notice_count(writing->draft); i++) {
        json_text(writing->out, NULL, ingle_draft_notice_at(writing->draft, i));
    }
    json_close_array(writing->out);
}

static void write_working(const struct draft_writing *writing)
{
    json_open_array(writing->out, "working");
    for (size_t i = 0; i < ingle_draft_step_count(writing->draft); i++) {
        write_step(writing, i);
    }
    json_close_array(writing->out);
}

static void write_draft(const struct draft_writing *writing, const char *id)
{
    struct json_writer *out = writing->out;
    const ingle_draft *draft = writing->draft;
    json_open_object(out, NULL);
    if (id[0] != '\0') {
        json_text(out, "id", id);
    }
    json_text(out, "standing", ingle_draft_standing_name(ingle_draft_standing_of(draft)));
    json_boolean(out, "reached", ingle_draft_reached(draft) != 0);
    json_text_from(out, "sentence", sentence_text, draft, 0, &writing->format);
    json_boolean(out, "claimable", ingle_draft_outside_count(draft) == 0);
    write_outside(writing);
    write_figures(writing, "inputs", true);
    write_figures(writing, "results", false);
    write_sensitivities(writing);
    write_working(writing);
    write_notices(writing);
    json_text(out, "ingle", ingle_version());
    json_close_object(out);
}

/* ---- the numbers it rests on ----------------------------------------------------------------- */

static void write_draft_number(struct json_writer *out, const ingle_draft_number *number)
{
    double least, most;
    json_open_object(out, NULL);
    json_text(out, "id", ingle_draft_number_id(number));
    json_text(out, "group", ingle_draft_number_group(number));
    json_text(out, "label", ingle_draft_number_label(number));
    write_number(out, "value", ingle_draft_number_value(number));
    json_text(out, "unit", ingle_draft_number_unit(number));
    if (ingle_draft_number_range(number, &least, &most)) {
        json_open_object(out, "range");
        write_number(out, "least", least);
        write_number(out, "most", most);
        json_close_object(out);
    }
    json_text(out, "source", ingle_draft_number_source(number));
    json_text(out, "basis", ingle_draft_number_basis(number));
    json_close_object(out);
}

void json_list_draft_numbers(struct json_writer *out, const ingle_standard *only)
{
    (void)only;
    for (size_t i = 0; i < ingle_draft_number_count(); i++) {
        write_draft_number(out, ingle_draft_number_at(i));
    }
}

/* ---- the calls ------------------------------------------------------------------------------- */

const ingle_unit *ingle_json_draft_unit(const ingle_json *json)
{
    if (json == NULL || !json->read) {
        return NULL;
    }
    return json->unit != NULL ? json->unit : ingle_standard_unit(json->standards[0]);
}

ingle_status ingle_json_draft(ingle_json *json, const ingle_draft *draft, const ingle_unit *unit)
{
    char word[TEXT_ROOM];
    if (json == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct draft_writing writing = {&json->writer, draft, {.size = sizeof(ingle_format)}};
    writing.format.unit = unit != NULL ? unit : ingle_json_draft_unit(json);
    ingle_status status =
        ingle_draft_sentence(draft, &writing.format, word, sizeof word, NULL);
    if (status < 0) {
        return ingle_json_error(json, status, NULL);
    }
    json_start(&json->writer, false);
    write_draft(&writing, ingle_json_id(json));
    return json_finish(&json->writer) ? INGLE_OK : INGLE_ERROR_MEMORY;
}
