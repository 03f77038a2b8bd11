/* SPDX-License-Identifier: MIT */
/* Solving, sweeping and comparing, their pages and plots, while memory fails. */
#include "works.h"

static ingle_survey *survey;
static ingle_report *report;
static const ingle_standard *standards[3];

enum { STANDARDS = sizeof standards / sizeof standards[0] };

static int make_ground(void **state)
{
    (void)state;
    standards[0] = ingle_standard_find("irc-2012");
    standards[1] = ingle_standard_find("irc-2021");
    standards[2] = ingle_standard_find("common-practice-us");
    assert_int_equal(ingle_survey_new(NULL, &survey), INGLE_OK);
    assert_int_equal(ingle_report_new(NULL, &report), INGLE_OK);
    survey_at_the_limits(survey);
    assert_int_equal(ingle_check(survey, standards, STANDARDS, NULL, report), INGLE_OK);
    return 0;
}

static int free_ground(void **state)
{
    (void)state;
    ingle_report_free(report);
    ingle_survey_free(survey);
    return 0;
}

static ingle_range inches(const char *quantity, int64_t from, int64_t to, int64_t step)
{
    const int64_t inch = 25400000;
    return (ingle_range){.size = sizeof(ingle_range), .quantity = ingle_quantity_find(quantity),
                         .from = from * inch, .to = to * inch, .step = step * inch};
}

/* In the format and with the unit of a metric country, too: other words, other lengths. */
static ingle_page page_of(ingle_page_format format)
{
    return (ingle_page){.size = sizeof(ingle_page), .format = format,
                        .unit = format == INGLE_PAGE_HTML ? ingle_unit_find("mm") : NULL};
}

/* ---- solving -------------------------------------------------------------------------------- */

static ingle_status new_solution(struct work *work)
{
    return ingle_solution_new(&work->allocator, (ingle_solution **)&work->object);
}

static ingle_status solve(struct work *work)
{
    ingle_range range = inches("hearth.front", 17, 23, 1);
    return ingle_solve(survey, standards, STANDARDS, NULL, &range, NULL, work->object);
}

static const char *solution_error(const void *object)
{
    return ingle_solution_error_text(object);
}

static bool solution_is_empty(const void *object)
{
    ingle_range range;
    ingle_solution_range(object, &range);
    return range.size == 0 && ingle_solution_interval_count(object) == 0 &&
           ingle_solution_aside_count(object) == 0;
}

static void free_solution(void *object)
{
    ingle_solution_free(object);
}

static ingle_status solution_as(struct work *work, ingle_page_format format)
{
    ingle_page page = page_of(format);
    return ingle_solution_page(work->object, &page, keep, work->said);
}

static ingle_status solution_text(struct work *work)
{
    return solution_as(work, INGLE_PAGE_TEXT);
}

static ingle_status solution_html(struct work *work)
{
    return solution_as(work, INGLE_PAGE_HTML);
}

static const struct trade solving = {new_solution, solve, solution_error, solution_is_empty,
                                     free_solution, {solution_text, solution_html}, 20};

static void solving_fails(void **state)
{
    (void)state;
    fail_at_every_allocation(&solving);
    assert_non_null(strstr(whole.text, "20 in"));
}

/* ---- two quantities ------------------------------------------------------------------------- */

static ingle_status new_frontier(struct work *work)
{
    return ingle_frontier_new(&work->allocator, (ingle_frontier **)&work->object);
}

static ingle_status solve_with(struct work *work)
{
    ingle_range range = inches("hearth.front", 17, 23, 2);
    ingle_range with = inches("opening.height", 20, 28, 4);
    ingle_solve_options options = {.size = sizeof options, .rule = "hearth-front"};
    return ingle_solve_with(survey, standards, STANDARDS, NULL, &range, &with, &options,
                            work->object);
}

static const char *frontier_error(const void *object)
{
    return ingle_frontier_error_text(object);
}

static bool frontier_is_empty(const void *object)
{
    ingle_range with;
    ingle_frontier_with(object, &with);
    return with.size == 0 && ingle_frontier_count(object) == 0;
}

static void free_frontier(void *object)
{
    ingle_frontier_free(object);
}

static ingle_status frontier_page(struct work *work)
{
    ingle_page page = page_of(INGLE_PAGE_MARKDOWN);
    return ingle_frontier_page(work->object, &page, keep, work->said);
}

static ingle_status frontier_plot(struct work *work)
{
    return ingle_frontier_plot(work->object, NULL, keep, work->said);
}

static const struct trade solving_two = {new_frontier, solve_with, frontier_error,
                                         frontier_is_empty, free_frontier,
                                         {frontier_page, frontier_plot}, 50};

static void solving_for_two_fails(void **state)
{
    (void)state;
    fail_at_every_allocation(&solving_two);
    assert_non_null(strstr(whole.text, "</svg>"));
}

static void a_frontier_is_plotted_without_memory(void **state)
{
    (void)state;
    struct work work = {.said = &whole};
    work.allocator = memory_allocator(&work.memory);
    start_work(&work, &solving_two);
    fill_work(&work, &solving_two);
    write_without_memory(&work, frontier_plot);
    free_frontier(work.object);
}

/* ---- sweeping ------------------------------------------------------------------------------- */

static ingle_status new_sweep(struct work *work)
{
    return ingle_sweep_new(&work->allocator, (ingle_sweep **)&work->object);
}

static ingle_status sweep(struct work *work)
{
    ingle_range range = inches("opening.width", 30, 42, 2);
    ingle_sweep_options options = {.size = sizeof options, .with_unchanged = 1};
    return ingle_sweep_run(survey, standards, STANDARDS, NULL, &range, &options, work->object);
}

static const char *sweep_error(const void *object)
{
    return ingle_sweep_error_text(object);
}

static bool sweep_is_empty(const void *object)
{
    ingle_range range;
    ingle_sweep_range(object, &range);
    return range.size == 0 && ingle_sweep_value_count(object) == 0 &&
           ingle_sweep_line_count(object) == 0;
}

static void free_sweep(void *object)
{
    ingle_sweep_free(object);
}

static ingle_status sweep_csv(struct work *work)
{
    return ingle_sweep_csv(work->object, NULL, keep, work->said);
}

static ingle_status sweep_plot(struct work *work)
{
    return ingle_sweep_plot(work->object, NULL, keep, work->said);
}

static const struct trade sweeping = {new_sweep, sweep, sweep_error, sweep_is_empty, free_sweep,
                                      {sweep_csv, sweep_plot}, 50};

static void sweeping_fails(void **state)
{
    (void)state;
    fail_at_every_allocation(&sweeping);
    assert_non_null(strstr(whole.text, "hearth-front"));
}

static void a_sweep_is_written_without_memory(void **state)
{
    (void)state;
    struct work work = {.said = &whole};
    work.allocator = memory_allocator(&work.memory);
    start_work(&work, &sweeping);
    fill_work(&work, &sweeping);
    write_without_memory(&work, sweep_csv);
    write_without_memory(&work, sweep_plot);
    free_sweep(work.object);
}

/* ---- comparing ------------------------------------------------------------------------------ */

static ingle_status new_comparison(struct work *work)
{
    return ingle_comparison_new(&work->allocator, (ingle_comparison **)&work->object);
}

static ingle_status compare(struct work *work)
{
    return ingle_compare(report, work->object);
}

static bool comparison_is_empty(const void *object)
{
    return ingle_comparison_standard_count(object) == 0 &&
           ingle_comparison_line_count(object) == 0 &&
           ingle_comparison_finding_at(object, 0, 0) == NULL &&
           ingle_comparison_line_at(object, 0) == NULL;
}

static void free_comparison(void *object)
{
    ingle_comparison_free(object);
}

static ingle_status comparison_as(struct work *work, ingle_page_format format)
{
    ingle_page page = page_of(format);
    return ingle_comparison_page(work->object, &page, keep, work->said);
}

static ingle_status comparison_text(struct work *work)
{
    return comparison_as(work, INGLE_PAGE_TEXT);
}

static ingle_status comparison_markdown(struct work *work)
{
    return comparison_as(work, INGLE_PAGE_MARKDOWN);
}

static ingle_status comparison_html(struct work *work)
{
    return comparison_as(work, INGLE_PAGE_HTML);
}

static const struct trade comparing = {
    new_comparison, compare, NULL, comparison_is_empty, free_comparison,
    {comparison_text, comparison_markdown, comparison_html}, 12};

static void comparing_fails(void **state)
{
    (void)state;
    fail_at_every_allocation(&comparing);
    assert_non_null(strstr(whole.text, "hearth-front"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(solving_fails),
        cmocka_unit_test(solving_for_two_fails),
        cmocka_unit_test(a_frontier_is_plotted_without_memory),
        cmocka_unit_test(sweeping_fails),
        cmocka_unit_test(a_sweep_is_written_without_memory),
        cmocka_unit_test(comparing_fails),
    };
    return cmocka_run_group_tests_name("memory-whatif", tests, make_ground, free_ground);
}
