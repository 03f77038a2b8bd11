/* SPDX-License-Identifier: MIT */
/*
 * The estimate as a page.
 */
#include "draft/decimal.h"
#include "draft/estimate.h"
#include "pages/page.h"

#include <string.h>

enum { WORDS_SIZE = 640 };

struct estimate_page {
    struct page *page;
    const struct ingle_draft *draft;
    ingle_format format;
    char words[WORDS_SIZE]; /* the last that were made */
};

static const char *figure_words(struct estimate_page *estimate, ingle_draft_figure figure)
{
    ingle_draft_figure_text(estimate->draft, figure, &estimate->format, estimate->words,
                            sizeof estimate->words, NULL);
    return estimate->words;
}

/* ---- what it comes to ----------------------------------------------------------------------- */

static void put_standing(struct estimate_page *estimate)
{
    const struct ingle_draft *draft = estimate->draft;
    ingle_draft_sentence(draft, &estimate->format, estimate->words, sizeof estimate->words, NULL);
    page_line(estimate->page, PAGE_PARAGRAPH, estimate->words);
    if (draft->outside_count == 0) {
        return;
    }
    page_heading(estimate->page, 2, "Outside what may be claimed");
    for (size_t i = 0; i < draft->outside_count; i++) {
        page_line(estimate->page, PAGE_ITEM, draft->outside[i].text);
    }
}

static void put_results(struct estimate_page *estimate)
{
    static const ingle_draft_figure figures[] = {
        INGLE_DRAFT_THEORETICAL_DRAFT,  INGLE_DRAFT_FLUE_VELOCITY,
        INGLE_DRAFT_FRONTAL_VELOCITY,   INGLE_DRAFT_EXPANDED_UNCERTAINTY,
        INGLE_DRAFT_MASS_FLOW,          INGLE_DRAFT_REQUIRED_DIAMETER,
        INGLE_DRAFT_REQUIRED_AREA,      INGLE_DRAFT_REQUIRED_HEIGHT,
    };
    page_heading(estimate->page, 2, "What comes out");
    for (size_t i = 0; i < sizeof figures / sizeof figures[0]; i++) {
        if (ingle_draft_get(estimate->draft, figures[i], NULL)) {
            page_fact(estimate->page, figure_row(figures[i])->label,
                      figure_words(estimate, figures[i]));
        }
    }
}

/* ---- what went in --------------------------------------------------------------------------- */

/* `7.50 ft2, from opening.width × opening.height`; `300 °F, by default (from-memory)` */
static void put_input(struct estimate_page *estimate, ingle_draft_figure figure)
{
    char line[WORDS_SIZE];
    struct text text = text_start(line, sizeof line);
    const char *from = ingle_draft_from(estimate->draft, figure);
    const char *origin = ingle_draft_origin(estimate->draft, figure);
    text_add(&text, figure_words(estimate, figure));
    if (origin != NULL) {
        text_add(&text, ", from ");
        text_add(&text, origin);
    } else if (strcmp(from, "default") == 0) {
        text_add(&text, ", by default (");
        text_add(&text, ingle_draft_number_basis(ingle_draft_figure_default(figure)));
        text_add(&text, ")");
    } else {
        text_add(&text, ", ");
        text_add(&text, from);
    }
    page_fact(estimate->page, figure_row(figure)->label, line);
}

static void put_inputs(struct estimate_page *estimate)
{
    page_heading(estimate->page, 2, "What goes in");
    for (ingle_draft_figure figure = 1; figure <= INPUT_FIGURES; figure++) {
        if (ingle_draft_get(estimate->draft, figure, NULL)) {
            put_input(estimate, figure);
        }
    }
}

/* ---- the working and the cautions ----------------------------------------------------------- */

static void put_working(struct estimate_page *estimate)
{
    page_heading(estimate->page, 2, "Working");
    for (size_t i = 0; i < estimate->draft->step_count; i++) {
        ingle_draft_step_text(estimate->draft, i, INGLE_STEP_SENTENCE, &estimate->format,
                              estimate->words, sizeof estimate->words, NULL);
        page_line(estimate->page, PAGE_WORKING, estimate->words);
    }
}

static void put_sensitivities(struct estimate_page *estimate)
{
    page_heading(estimate->page, 2, "What the velocity follows");
    page_line(estimate->page, PAGE_PARAGRAPH,
              "By how many percent it changes for each percent more of one figure, all else as it "
              "is.");
    for (ingle_draft_figure figure = 1; figure <= INPUT_FIGURES; figure++) {
        double value;
        if (ingle_draft_sensitivity(estimate->draft, figure, &value)) {
            struct text text = text_start(estimate->words, sizeof estimate->words);
            text_add_places(&text, value, 2);
            page_fact(estimate->page, figure_row(figure)->label, estimate->words);
        }
    }
}

static void put_notices(struct estimate_page *estimate)
{
    page_heading(estimate->page, 2, "Notice");
    for (size_t i = 0; i < estimate->draft->notice_count; i++) {
        page_line(estimate->page, PAGE_ITEM, estimate->draft->notices[i]);
    }
}

ingle_status ingle_draft_page(const ingle_draft *draft, const ingle_page *options,
                              ingle_write write, void *context)
{
    struct page page;
    enum unit_system system;
    if (draft == NULL || draft->standing == 0) {
        return INGLE_ERROR_ARGUMENT;
    }
    ingle_status status =
        page_start(&page, &draft->allocator, options, write, context, "Draft of the fireplace");
    if (status != INGLE_OK) {
        return status;
    }
    struct estimate_page estimate = {.page = &page, .draft = draft};
    estimate.format = page_format(&page, NULL);
    status = system_of(&estimate.format, &system);
    if (status != INGLE_OK) {
        output_fail(&page.output, status);
    }
    put_standing(&estimate);
    put_results(&estimate);
    put_inputs(&estimate);
    if (draft->standing != INGLE_DRAFT_NO_DRAFT) {
        put_sensitivities(&estimate);
    }
    put_working(&estimate);
    put_notices(&estimate);
    return page_end(&page);
}
