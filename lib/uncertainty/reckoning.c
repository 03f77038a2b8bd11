/* SPDX-License-Identifier: MIT */
#include "uncertainty/reckoning.h"

#include "base/memory.h"
#include "uncertainty/figure.h"

#include <string.h>

void reckoning_add(struct reckoning *reckoning, const struct ingle_uncertainty_step *step)
{
    if (reckoning->failed ||
        !array_reserve(&reckoning->allocator, (void **)&reckoning->steps, &reckoning->capacity,
                       reckoning->count, sizeof *reckoning->steps)) {
        reckoning->failed = true;
        return;
    }
    reckoning->steps[reckoning->count++] = *step;
}

const char *ingle_uncertainty_step_label(const ingle_uncertainty_step *step)
{
    return step->label;
}

const char *ingle_uncertainty_step_about(const ingle_uncertainty_step *step)
{
    return step->about;
}

int ingle_uncertainty_step_result(const ingle_uncertainty_step *step, ingle_figure *figure)
{
    if (step->has_result && figure != NULL) {
        *figure = step->result;
    }
    return step->has_result;
}

/* ---- words ---------------------------------------------------------------------------------- */

static void add_operand(struct text *text, const struct reckoning_operand *operand,
                        const ingle_format *format)
{
    char written[80];
    if (!operand->exact) {
        text_add_figure(text, &operand->figure, format);
        return;
    }
    ingle_amount amount = {(int64_t)operand->figure.value, operand->figure.dimension,
                           INGLE_SCALE_USUAL};
    if (ingle_amount_format(&amount, format, written, sizeof written, NULL) >= 0) {
        text_add(text, written);
    }
}

/* The expression with its operands put in, by their names or by their figures. */
static void add_expression(struct text *text, const struct ingle_uncertainty_step *step,
                           const ingle_format *format, bool figures)
{
    const char *rest = step->expression;
    const char *brace;
    while ((brace = strchr(rest, '{')) != NULL) {
        const struct reckoning_operand *operand = &step->operands[brace[1] - '0'];
        text_add_bytes(text, rest, (size_t)(brace - rest));
        if (figures) {
            add_operand(text, operand, format);
        } else {
            text_add(text, operand->name);
        }
        rest = brace + 3;
    }
    text_add(text, rest);
}

static void add_sentence(struct text *text, const struct ingle_uncertainty_step *step,
                         const ingle_format *format)
{
    text_add(text, step->label);
    if (step->about != NULL) {
        text_add(text, ", ");
        text_add(text, step->about);
    }
    text_add(text, ": ");
    add_expression(text, step, format, false);
    text_add(text, step->has_result ? " = " : ", here ");
    add_expression(text, step, format, true);
    if (step->has_result && strcmp(step->expression, "{0}") != 0) {
        text_add(text, " = ");
        text_add_figure(text, &step->result, format);
    }
    text_add(text, ".");
    if (step->remark != NULL) {
        text_add(text, " ");
        text_add(text, step->remark);
    }
}

ingle_status ingle_uncertainty_step_text(const ingle_uncertainty_step *step, ingle_step_part part,
                                         const ingle_format *format, char *buffer,
                                         size_t capacity, size_t *length)
{
    if (step == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    switch (part) {
    case INGLE_STEP_EXPRESSION:
        add_expression(&text, step, format, false);
        break;
    case INGLE_STEP_SUBSTITUTED:
        add_expression(&text, step, format, true);
        break;
    case INGLE_STEP_SENTENCE:
        add_sentence(&text, step, format);
        break;
    case INGLE_STEP_REMARK:
        text_add(&text, step->remark == NULL ? "" : step->remark);
        break;
    default:
        return INGLE_ERROR_ARGUMENT;
    }
    return text_end(&text, length);
}
