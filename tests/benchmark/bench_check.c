/* SPDX-License-Identifier: MIT */
/*
 * How much one check of the demo's living room costs against its bare comparisons, and how much the
 * trainer's bench against one check, in one run.
 */
#include "check_by_hand.h"

#include <ingle/ingle.h>

#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { RUNS = 20000, ROUNDS = 7 };

static const struct {
    const char *path;
    const char *text;
    const char *tolerance;
} living_room[] = {
    {"appliance.kind", "masonry-fireplace", NULL},
    {"opening.width", "36 in", NULL},
    {"opening.height", "2' 4\"", NULL},
    {"firebox.depth", "19 15/16 in", "1/8 in"},
    {"throat.height", "8 1/2 in", NULL},
    {"throat.above-lintel", "8 in", NULL},
    {"throat.depth", "4 in", NULL},
    {"throat.width", "32 in", NULL},
    {"damper.area", "70 in2", NULL},
    {"lintel.left", "4 in", NULL},
    {"lintel.right", "3 1/4 in", NULL},
    {"smoke-chamber.height", "37 in", NULL},
    {"smoke-chamber.walls", "corbeled", NULL},
    {"smoke-chamber.slope", "35 deg", NULL},
    {"smoke-chamber.area", "0.09 m2", NULL},
    {"hearth.front", "18 in", NULL},
    {"hearth.left", "12 in", NULL},
    {"hearth.right", "254 mm", NULL},
    {"hearth.thickness", "4 in", NULL},
    {"hearth.extension-thickness", "3/8 in", NULL},
    {"hearth.firebox-raise", "7 7/8 in", NULL},
    {"trim[0].distance", "9 in", NULL},
    {"trim[0].projection", "1 1/2 in", NULL},
    {"trim[1].distance", "5 7/8 in", NULL},
    {"trim[1].projection", "3/4 in", NULL},
    {"trim[2].distance", "12 1/8 in", NULL},
    {"trim[2].projection", "8 in", NULL},
    {"trim[3].place", "abutting", NULL},
    {"trim[3].lining-distance", "9 in", NULL},
    {"trim[4].combustible", "no", NULL},
    {"flue.liner", "8.5x13", NULL},
};

static size_t allocations;

static void *counting(void *context, void *memory, size_t bytes)
{
    (void)context;
    if (bytes == 0) {
        free(memory);
        return NULL;
    }
    allocations++;
    return realloc(memory, bytes);
}

static void need(ingle_status status, const char *what)
{
    if (status < 0) {
        fprintf(stderr, "%s: %s\n", what, ingle_status_text(status));
        exit(1);
    }
}

static ingle_survey *make_survey(void)
{
    ingle_survey *survey;
    need(ingle_survey_new(NULL, &survey), "survey");
    for (int i = 0; i < 5; i++) {
        need(ingle_survey_add_item(survey, "trim", NULL, NULL), "trim");
    }
    for (size_t i = 0; i < sizeof living_room / sizeof living_room[0]; i++) {
        need(ingle_survey_record(survey, living_room[i].path, living_room[i].text,
                                 living_room[i].tolerance),
             living_room[i].path);
    }
    return survey;
}

static int64_t amount(const ingle_survey *survey, const char *id, size_t item)
{
    ingle_amount got = {0, 0, 0};
    ingle_survey_get(survey, ingle_quantity_find(id), item, &got, NULL);
    return got.value;
}

static struct hand_survey by_hand(const ingle_survey *s)
{
    struct hand_survey hand = {
        .width = amount(s, "opening.width", 0),
        .height = amount(s, "opening.height", 0),
        .depth = amount(s, "firebox.depth", 0),
        .throat_height = amount(s, "throat.height", 0),
        .throat_above_lintel = amount(s, "throat.above-lintel", 0),
        .throat_depth = amount(s, "throat.depth", 0),
        .throat_width = amount(s, "throat.width", 0),
        .damper_area = amount(s, "damper.area", 0),
        .lintel_left = amount(s, "lintel.left", 0),
        .lintel_right = amount(s, "lintel.right", 0),
        .chamber_height = amount(s, "smoke-chamber.height", 0),
        .chamber_slope = amount(s, "smoke-chamber.slope", 0),
        .chamber_area = amount(s, "smoke-chamber.area", 0),
        .front = amount(s, "hearth.front", 0),
        .left = amount(s, "hearth.left", 0),
        .right = amount(s, "hearth.right", 0),
        .thickness = amount(s, "hearth.thickness", 0),
        .extension = amount(s, "hearth.extension-thickness", 0),
        .raise = amount(s, "hearth.firebox-raise", 0),
        .flue_area = 76 * INT64_C(645160000000000),
        .corbeled = 1,
        .trim_count = 5,
    };
    for (size_t i = 0; i < 5; i++) {
        hand.trim[i] = (struct hand_trim){i == 3, i != 4, amount(s, "trim.distance", i),
                                          amount(s, "trim.projection", i),
                                          amount(s, "trim.lining-distance", i)};
    }
    return hand;
}

static double now(void)
{
    struct timespec time;
    clock_gettime(CLOCK_MONOTONIC, &time);
    return (double)time.tv_sec + 1e-9 * (double)time.tv_nsec;
}

/* The least time of one call, of several rounds. */
static double time_check(const ingle_survey *survey, const ingle_check_options *options,
                         ingle_report *report)
{
    const ingle_standard *standard = ingle_standard_find("irc-2021");
    double least = 1;
    for (int round = 0; round < ROUNDS; round++) {
        double start = now();
        for (int i = 0; i < RUNS; i++) {
            need(ingle_check(survey, &standard, 1, options, report), "check");
        }
        double each = (now() - start) / RUNS;
        least = each < least ? each : least;
    }
    return least;
}

static double time_by_hand(struct hand_survey *hand, long *misses)
{
    double least = 1;
    for (int round = 0; round < ROUNDS; round++) {
        double start = now();
        for (int i = 0; i < RUNS * 10; i++) {
            hand->front += (i & 1) != 0 ? 1 : -1; /* so that nothing can be left out */
            *misses += check_by_hand(hand);
        }
        double each = (now() - start) / (RUNS * 10);
        least = each < least ? each : least;
    }
    return least;
}

/* Ten feet of opening, at every sixteenth of an inch. */
static double time_solve(const ingle_survey *survey)
{
    const ingle_standard *standard = ingle_standard_find("irc-2021");
    ingle_range range = {.size = sizeof range, .quantity = ingle_quantity_find("opening.width"),
                         .from = 6 * INT64_C(25400000), .to = 126 * INT64_C(25400000)};
    ingle_solution *solution;
    double least = 1;
    need(ingle_solution_new(NULL, &solution), "solution");
    for (int round = 0; round < ROUNDS; round++) {
        double start = now();
        need(ingle_solve(survey, &standard, 1, NULL, &range, NULL, solution), "solve");
        double each = now() - start;
        least = each < least ? each : least;
    }
    ingle_solution_free(solution);
    return least;
}

static int32_t swallow(void *context, const char *text, size_t length)
{
    (void)text;
    *(size_t *)context += length;
    return 0;
}

static double time_draw(const ingle_report *report, ingle_view view)
{
    double least = 1;
    size_t bytes = 0;
    for (int round = 0; round < ROUNDS; round++) {
        double start = now();
        need(ingle_draw(report, view, NULL, swallow, &bytes), ingle_view_name(view));
        double each = now() - start;
        least = each < least ? each : least;
    }
    return least;
}

static void show(const char *what, double time, double yardstick)
{
    printf("%-34s %8.3f us  x %.0f\n", what, time * 1e6, time / yardstick);
}

int main(void)
{
    ingle_allocator allocator = {sizeof allocator, counting, NULL};
    ingle_check_options plain = {.size = sizeof plain, .without_working = 1,
                                 .without_remedies = 1};
    ingle_check_options remedies = {.size = sizeof remedies, .without_working = 1};
    ingle_check_options full = {.size = sizeof full};
    ingle_survey *survey = make_survey();
    ingle_report *report;
    const ingle_standard *standard = ingle_standard_find("irc-2021");
    long misses = 0;
    need(ingle_report_new(&allocator, &report), "report");
    need(ingle_check(survey, &standard, 1, &full, report), "check");
    size_t findings = ingle_report_finding_count(report);
    size_t before = allocations;

    struct hand_survey hand = by_hand(survey);
    double yardstick = time_by_hand(&hand, &misses);
    printf("%zu findings; by hand %ld comparisons not met\n", findings,
           misses / (ROUNDS * RUNS * 10));
    show("by hand, comparisons only", yardstick, yardstick);
    show("check, verdicts and margins", time_check(survey, &plain, report), yardstick);
    show("check with remedies", time_check(survey, &remedies, report), yardstick);
    show("check with remedies and steps", time_check(survey, &full, report), yardstick);
    printf("allocations after the first check: %zu\n", allocations - before);

    yardstick = time_check(survey, &plain, report);
    printf("\nagainst one check, verdicts and margins\n");
    show("solve, 10 ft by 1/16 in", time_solve(survey), yardstick);
    need(ingle_check(survey, &standard, 1, &full, report), "check");
    for (ingle_view view = INGLE_VIEW_PLAN; view <= INGLE_VIEW_SECTION; view++) {
        show(ingle_view_name(view), time_draw(report, view), yardstick);
    }
    ingle_report_free(report);
    ingle_survey_free(survey);
    return allocations == before ? 0 : 1;
}
