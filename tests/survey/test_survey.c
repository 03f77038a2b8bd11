/* SPDX-License-Identifier: MIT */
/* The catalogue of quantities and the survey: what is recorded, what is refused, in which words. */
#include "measure/amounts.h"
#include "survey/survey.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

static ingle_survey *survey;

static int make(void **state)
{
    (void)state;
    return ingle_survey_new(NULL, &survey) == INGLE_OK ? 0 : -1;
}

static int unmake(void **state)
{
    (void)state;
    ingle_survey_free(survey);
    return 0;
}

static const ingle_quantity *quantity(const char *id)
{
    const ingle_quantity *found = ingle_quantity_find(id);
    assert_non_null(found);
    return found;
}

static void expect_item(const char *id, size_t item, int64_t value, int64_t tolerance)
{
    ingle_amount amount = {-1, -1, -1};
    int64_t half_width = -1;
    assert_int_equal(ingle_survey_get(survey, quantity(id), item, &amount, &half_width), 1);
    assert_int_equal(amount.dimension, ingle_quantity_dimension(quantity(id)));
    assert_true(amount.value == value);
    assert_true(half_width == tolerance);
}

static void expect(const char *id, int64_t value, int64_t tolerance)
{
    expect_item(id, 0, value, tolerance);
}

static void expect_nothing(const char *id, size_t item)
{
    ingle_amount amount = {42, 42, 42};
    int64_t tolerance = 42;
    assert_int_equal(ingle_survey_get(survey, quantity(id), item, &amount, &tolerance), 0);
    assert_true(amount.value == 42 && tolerance == 42);
}

/* Records and expects a refusal whose sentence holds all the words given, NULL after the last. */
static void refused(const char *path, const char *text, const char *tolerance, ingle_status status,
                    const char *const *words)
{
    assert_int_equal(ingle_survey_record(survey, path, text, tolerance), status);
    for (; *words != NULL; words++) {
        if (strstr(ingle_survey_error_text(survey), *words) == NULL) {
            print_error("%s: %s\n", *words, ingle_survey_error_text(survey));
        }
        assert_non_null(strstr(ingle_survey_error_text(survey), *words));
    }
}

#define WORDS(...) ((const char *const[]){__VA_ARGS__, NULL})

/* ---- the catalogue -------------------------------------------------------------------------- */

static void ids_are_unique_and_start_with_their_group(void **state)
{
    (void)state;
    assert_true(ingle_quantity_count() > 0);
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *one = ingle_quantity_at(i);
        const char *id = ingle_quantity_id(one);
        const char *group = ingle_quantity_group(one);
        const char *name = ingle_quantity_name(one);
        assert_int_equal(strncmp(id, group, strlen(group)), 0);
        assert_int_equal(id[strlen(group)], '.');
        assert_string_equal(id + strlen(group) + 1, name);
        assert_true(strlen(name) > 0);
        assert_int_equal(strspn(name, "abcdefghijklmnopqrstuvwxyz-"), strlen(name));
        assert_ptr_equal(ingle_quantity_find(id), one);
        for (size_t j = 0; j < i; j++) {
            assert_string_not_equal(ingle_quantity_id(ingle_quantity_at(j)), id);
        }
    }
    assert_null(ingle_quantity_at(ingle_quantity_count()));
    assert_null(ingle_quantity_find("opening"));
    assert_null(ingle_quantity_find(""));
    assert_null(ingle_quantity_find(NULL));
}

static void the_quantities_of_a_group_stand_together(void **state)
{
    (void)state;
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const char *group = ingle_quantity_group(ingle_quantity_at(i));
        for (size_t j = 0; j + 1 < i; j++) {
            /* A group that is met again has never been left. */
            if (strcmp(ingle_quantity_group(ingle_quantity_at(j)), group) == 0) {
                assert_string_equal(ingle_quantity_group(ingle_quantity_at(j + 1)), group);
                assert_int_equal(ingle_quantity_repeats(ingle_quantity_at(j)),
                                 ingle_quantity_repeats(ingle_quantity_at(i)));
            }
        }
    }
    size_t members = 0;
    for (enum group_id group = 0; group < GROUP_COUNT; group++) {
        assert_int_equal(groups[group].first, members);
        assert_true(group_size(group) > 0);
        assert_int_equal(group_find(groups[group].id), group);
        assert_true(!groups[group].repeats || groups[group].how != NULL);
        members += group_size(group);
    }
    assert_int_equal(members, ingle_quantity_count());
    assert_int_equal(group_find("nothing"), GROUP_COUNT);
    assert_int_equal(group_find(NULL), GROUP_COUNT);
}

static void every_quantity_says_what_it_is_and_how_it_is_measured(void **state)
{
    (void)state;
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *one = ingle_quantity_at(i);
        const char *how = ingle_quantity_how(one);
        assert_non_null(ingle_quantity_label(one));
        assert_true(strlen(ingle_quantity_label(one)) > 0);
        assert_non_null(how);
        assert_int_equal(how[strlen(how) - 1], '.');
        assert_non_null(ingle_dimension_name(ingle_quantity_dimension(one)));
    }
}

static void ranges_have_room(void **state)
{
    (void)state;
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *one = ingle_quantity_at(i);
        ingle_amount least = {-1, 0, 0}, most = {-1, 0, 0};
        ingle_quantity_range(one, &least, &most);
        ingle_quantity_range(one, NULL, NULL);
        assert_true(least.value >= 0 && least.value < most.value);
        assert_int_equal(least.dimension, ingle_quantity_dimension(one));
        assert_int_equal(most.dimension, ingle_quantity_dimension(one));
        if (ingle_quantity_dimension(one) == INGLE_CHOICE) {
            assert_true(least.value == 0);
            assert_true(most.value == (int64_t)ingle_quantity_choice_count(one) - 1);
        }
    }
}

static void choices_are_unique_and_belong_to_choices(void **state)
{
    (void)state;
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *one = ingle_quantity_at(i);
        size_t count = ingle_quantity_choice_count(one);
        assert_int_equal(count > 0, ingle_quantity_dimension(one) == INGLE_CHOICE);
        for (size_t j = 0; j < count; j++) {
            assert_true(strlen(ingle_quantity_choice_at(one, j)) > 0);
            assert_true(strlen(ingle_quantity_choice_label(one, j)) > 0);
            for (size_t k = 0; k < j; k++) {
                assert_string_not_equal(ingle_quantity_choice_at(one, j),
                                        ingle_quantity_choice_at(one, k));
                assert_string_not_equal(ingle_quantity_choice_label(one, j),
                                        ingle_quantity_choice_label(one, k));
            }
        }
        assert_null(ingle_quantity_choice_at(one, count));
        assert_null(ingle_quantity_choice_label(one, count));
    }
}

static void what_is_assumed_is_one_of_the_choices(void **state)
{
    (void)state;
    size_t assumptions = 0;
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *one = ingle_quantity_at(i);
        ingle_amount assumed = {42, 42, 42}, most;
        ingle_quantity_range(one, NULL, &most);
        if (ingle_quantity_assumed(one, &assumed)) {
            assumptions++;
            assert_true(assumed.dimension == INGLE_CHOICE || assumed.dimension == INGLE_FLAG);
            assert_true(assumed.value >= 0 && assumed.value <= most.value);
        } else {
            assert_true(assumed.value == 42);
        }
    }
    assert_true(assumptions > 0);
    assert_int_equal(ingle_quantity_assumed(quantity("trim.combustible"), NULL), 1);
}

/* ---- recording by path ---------------------------------------------------------------------- */

static void amounts_are_recorded_to_the_base_unit(void **state)
{
    (void)state;
    assert_int_equal(ingle_survey_record(survey, "opening.width", "3' 0 1/2\"", NULL), INGLE_OK);
    expect("opening.width", INCHES_AND(36, 1, 2), 0);
    assert_int_equal(ingle_survey_record(survey, "opening.width", "914 mm", NULL), INGLE_OK);
    expect("opening.width", MILLIMETRES(914), 0);
    assert_int_equal(ingle_survey_record(survey, "opening.area", "6 ft2", NULL), INGLE_OK);
    expect("opening.area", INCHES(36) * INCHES(24), 0); /* 864 in2 = 6 ft2 */
    assert_int_equal(ingle_survey_record(survey, "smoke-chamber.slope", "45°", NULL), INGLE_OK);
    expect("smoke-chamber.slope", DEGREES(45), 0);
    /* 1/3 in = 8 466 666.67 nm */
    assert_int_equal(ingle_survey_record(survey, "hearth.thickness", "1/3 in", NULL),
                     INGLE_ROUNDED);
    expect("hearth.thickness", 8466667, 0);
}

static void choices_and_flags_are_recorded_by_name(void **state)
{
    (void)state;
    assert_int_equal(ingle_survey_record(survey, "flue.liner", "13x13", NULL), INGLE_OK);
    expect("flue.liner", CHOICE_FLUE_LINER_13X13, 0);
    assert_int_equal(ingle_survey_record(survey, "flue.shape", "square", NULL), INGLE_OK);
    expect("flue.shape", CHOICE_FLUE_SHAPE_SQUARE, 0);
    assert_int_equal(ingle_survey_add_item(survey, "trim", NULL, NULL), INGLE_OK);
    assert_int_equal(ingle_survey_record(survey, "trim[0].combustible", "no", NULL), INGLE_OK);
    expect("trim.combustible", 0, 0);
    assert_int_equal(ingle_survey_record(survey, "trim[0].combustible", "yes", NULL), INGLE_OK);
    expect("trim.combustible", 1, 0);
    refused("trim[0].combustible", "maybe", NULL, INGLE_ERROR_UNKNOWN_CHOICE,
            WORDS("trim.combustible", "yes", "no"));
    expect("trim.combustible", 1, 0);
}

static void items_are_recorded_by_their_index(void **state)
{
    (void)state;
    for (size_t i = 0; i < 12; i++) {
        size_t item = 42;
        assert_int_equal(ingle_survey_add_item(survey, "trim", NULL, &item), INGLE_OK);
        assert_int_equal(item, i);
    }
    assert_int_equal(ingle_survey_record(survey, "trim[0].distance", "6 in", NULL), INGLE_OK);
    assert_int_equal(ingle_survey_record(survey, "trim[11].distance", "7 in", "1/8 in"), INGLE_OK);
    expect_item("trim.distance", 0, INCHES(6), 0);
    expect_item("trim.distance", 11, INCHES(7), INCHES_AND(0, 1, 8));
    expect_nothing("trim.distance", 1);
    expect_nothing("trim.projection", 11);
    refused("trim[12].distance", "6 in", NULL, INGLE_ERROR_ARGUMENT, WORDS("trim.distance"));
    refused("opening[1].width", "36 in", NULL, INGLE_ERROR_ARGUMENT, WORDS("opening.width"));
    expect_nothing("opening.width", 0);
    expect_nothing("opening.width", 1);
}

static void paths_that_are_none_are_refused(void **state)
{
    (void)state;
    static const char *const paths[] = {
        "", "width", "opening", "opening.", ".width", "trim[].distance", "trim[0.distance",
        "trim[x].distance", "trim[-1].distance", "trim[0]distance", "trim[0]", "trim[0].",
        "trim.distance[0]", "tr[0]im.distance", "trim[0].[0]distance", "opening.width ",
        "trim[99999999999999999999999].distance", "opening/width",
        "a.very.long.path.that.is.much.longer.than.any.id.in.the.catalogue.of.quantities.is"};
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    for (size_t i = 0; i < sizeof paths / sizeof paths[0]; i++) {
        ingle_status status = ingle_survey_record(survey, paths[i], "12 in", NULL);
        if (status != INGLE_ERROR_UNKNOWN_QUANTITY) {
            print_error("%s: %d\n", paths[i], (int)status);
        }
        assert_int_equal(status, INGLE_ERROR_UNKNOWN_QUANTITY);
        assert_true(strlen(ingle_survey_error_text(survey)) > 0);
    }
    expect_nothing("trim.distance", 0);
}

static void the_sentence_tells_of_items(void **state)
{
    (void)state;
    const ingle_quantity *quantity = NULL;
    refused("trim[0].distance", "6 in", NULL, INGLE_ERROR_ARGUMENT,
            WORDS("trim has no item 0; none was added yet (add_item)."));
    refused("trim.distance", "6 in", NULL, INGLE_ERROR_UNKNOWN_QUANTITY,
            WORDS("trim.distance: trim repeats: write trim[0].distance."));
    assert_int_equal(ingle_survey_find(survey, "/survey/wall/clearance", &quantity, NULL),
                     INGLE_ERROR_UNKNOWN_QUANTITY);
    assert_non_null(strstr(ingle_survey_error_text(survey),
                           "wall repeats: write wall[0].clearance."));
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    /* With one item there, too: a second one would make it another. */
    refused("trim.distance", "6 in", NULL, INGLE_ERROR_UNKNOWN_QUANTITY, WORDS("trim repeats"));
    expect_nothing("trim.distance", 0);
    refused("trim[1].side", "above", NULL, INGLE_ERROR_ARGUMENT,
            WORDS("trim has no item 1; 1 was added, counted from 0."));
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    assert_int_equal(ingle_survey_find(survey, "trim[2].side", &quantity, NULL),
                     INGLE_ERROR_UNKNOWN_QUANTITY);
    assert_non_null(strstr(ingle_survey_error_text(survey),
                           "trim[2].side: trim has no item 2; 2 were added, counted from 0."));
    refused("opening[1].width", "6 in", NULL, INGLE_ERROR_ARGUMENT,
            WORDS("opening does not repeat: write opening.width."));
    assert_null(quantity);
}

static void pointers_of_reports_are_paths(void **state)
{
    (void)state;
    const ingle_quantity *quantity = NULL;
    size_t item = 9;
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    assert_int_equal(ingle_survey_find(survey, "/survey/trim/1/distance", &quantity, &item),
                     INGLE_OK);
    assert_ptr_equal(quantity, ingle_quantity_find("trim.distance"));
    assert_int_equal(item, 1);
    assert_int_equal(ingle_survey_find(survey, "/survey/hearth/front", &quantity, &item),
                     INGLE_OK);
    assert_ptr_equal(quantity, ingle_quantity_find("hearth.front"));
    assert_int_equal(item, 0);
    static const char *const none[] = {"/survey", "/survey/", "/survey/hearth", "/hearth/front",
                                       "/survey/trim/1/", "/survey/trim/1/distance/0",
                                       "/survey/trim/2/distance", "trim[2].distance"};
    for (size_t i = 0; i < sizeof none / sizeof none[0]; i++) {
        assert_int_equal(ingle_survey_find(survey, none[i], &quantity, &item),
                         INGLE_ERROR_UNKNOWN_QUANTITY);
        assert_non_null(strstr(ingle_survey_error_text(survey), none[i]));
    }
    assert_ptr_equal(quantity, ingle_quantity_find("hearth.front"));
}

static void a_copy_holds_the_same_and_is_its_own(void **state)
{
    (void)state;
    ingle_survey *copy = NULL;
    ingle_amount amount;
    int64_t tolerance = 0;
    assert_int_equal(ingle_survey_new(NULL, &copy), INGLE_OK);
    ingle_survey_record(copy, "opening.height", "30 in", NULL);
    ingle_survey_add_item(survey, "trim", "shelf", NULL);
    ingle_survey_record(survey, "trim[0].distance", "6 in", NULL);
    ingle_survey_record(survey, "opening.width", "36 in", "1/8 in");
    assert_int_equal(ingle_survey_copy(copy, survey), INGLE_OK);
    ingle_survey_clear(survey);
    assert_string_equal(ingle_survey_item_label(copy, "trim", 0), "shelf");
    assert_true(ingle_survey_get(copy, ingle_quantity_find("trim.distance"), 0, &amount, NULL));
    assert_int_equal(amount.value, 6 * 25400000);
    assert_true(ingle_survey_get(copy, ingle_quantity_find("opening.width"), 0, &amount,
                                 &tolerance));
    assert_int_equal(tolerance, 25400000 / 8);
    assert_false(ingle_survey_get(copy, ingle_quantity_find("opening.height"), 0, NULL, NULL));
    assert_int_equal(ingle_survey_copy(copy, copy), INGLE_ERROR_ARGUMENT);
    ingle_survey_free(copy);
}

static void the_sentence_names_what_was_meant(void **state)
{
    (void)state;
    refused("opening.widht", "36 in", NULL, INGLE_ERROR_UNKNOWN_QUANTITY,
            WORDS("opening.widht", "Did you mean opening.width?"));
    refused("hearth.frnt", "16 in", NULL, INGLE_ERROR_UNKNOWN_QUANTITY, WORDS("hearth.front?"));
    refused("trim[0].distanse", "6 in", NULL, INGLE_ERROR_UNKNOWN_QUANTITY,
            WORDS("trim[0].distanse", "Did you mean trim[0].distance?"));
    refused("trim[7].distanse", "6 in", NULL, INGLE_ERROR_UNKNOWN_QUANTITY,
            WORDS("Did you mean trim[7].distance?"));
    refused("flue.liner", "13x31", NULL, INGLE_ERROR_UNKNOWN_CHOICE,
            WORDS("flue.liner", "did you mean 13x13?"));
    refused("appliance.fuel", "hydrogen", NULL, INGLE_ERROR_UNKNOWN_CHOICE,
            WORDS("appliance.fuel", "wood", "gas"));
    refused("zzzzzz", "6 in", NULL, INGLE_ERROR_UNKNOWN_QUANTITY, WORDS("zzzzzz"));
    assert_null(strstr(ingle_survey_error_text(survey), "Did you mean"));
    expect_nothing("flue.liner", 0);
}

/* ---- what is refused ------------------------------------------------------------------------ */

static void errors_stand_at_their_place(void **state)
{
    (void)state;
    static const struct {
        const char *text;
        ingle_status status;
        size_t position;
    } cases[] = {
        {"", INGLE_ERROR_EMPTY, 0},          {"wide", INGLE_ERROR_NUMBER, 0},
        {"36", INGLE_ERROR_UNIT_MISSING, 2}, {"36 lb", INGLE_ERROR_UNIT_UNKNOWN, 3},
        {"36 ft2", INGLE_ERROR_DIMENSION, 3}, {"36,5 in", INGLE_ERROR_COMMA, 2},
        {"36 in wide", INGLE_ERROR_TRAILING_TEXT, 6},
        {"36 1/0 in", INGLE_ERROR_ZERO_DENOMINATOR, 5},
        {"36 \xFFin", INGLE_ERROR_ENCODING, 3},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        ingle_status status = ingle_survey_record(survey, "opening.width", cases[i].text, NULL);
        if (status != cases[i].status || ingle_survey_error_position(survey) != cases[i].position) {
            print_error("%s: %d at %zu\n", cases[i].text, (int)status,
                        ingle_survey_error_position(survey));
        }
        assert_int_equal(status, cases[i].status);
        assert_int_equal(ingle_survey_error_position(survey), cases[i].position);
        assert_non_null(strstr(ingle_survey_error_text(survey), "opening.width: "));
        expect_nothing("opening.width", 0);
    }
    /* The next error without a place has none. */
    refused("opening.width", "1 in", NULL, INGLE_ERROR_IMPLAUSIBLE, WORDS("opening.width"));
    assert_int_equal(ingle_survey_error_position(survey), 0);
}

static void amounts_outside_the_range_are_implausible(void **state)
{
    (void)state;
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        const ingle_quantity *one = ingle_quantity_at(i);
        ingle_dimension dimension = ingle_quantity_dimension(one);
        ingle_amount least, most;
        bool amount = dimension != INGLE_CHOICE && dimension != INGLE_FLAG;
        ingle_quantity_range(one, &least, &most);
        if (ingle_quantity_repeats(one)) {
            ingle_survey_clear(survey);
            ingle_survey_add_item(survey, ingle_quantity_group(one), NULL, NULL);
        }
        assert_int_equal(ingle_survey_set(survey, one, 0, least.value, 0), INGLE_OK);
        assert_int_equal(ingle_survey_set(survey, one, 0, most.value, 0), INGLE_OK);
        assert_int_equal(ingle_survey_set(survey, one, 0, most.value + 1, 0),
                         amount                         ? INGLE_ERROR_IMPLAUSIBLE
                         : dimension == INGLE_CHOICE    ? INGLE_ERROR_UNKNOWN_CHOICE
                                                        : INGLE_ERROR_ARGUMENT);
        assert_int_equal(ingle_survey_set(survey, one, 0, -1, 0),
                         dimension == INGLE_CHOICE ? INGLE_ERROR_UNKNOWN_CHOICE
                                                   : INGLE_ERROR_NEGATIVE);
        if (least.value > 0) {
            assert_int_equal(ingle_survey_set(survey, one, 0, least.value - 1, 0),
                             INGLE_ERROR_IMPLAUSIBLE);
        }
        assert_int_equal(ingle_survey_set(survey, one, 0, INT64_MAX, 0),
                         amount                      ? INGLE_ERROR_IMPLAUSIBLE
                         : dimension == INGLE_CHOICE ? INGLE_ERROR_UNKNOWN_CHOICE
                                                     : INGLE_ERROR_ARGUMENT);
        expect(ingle_quantity_id(one), most.value, 0);
    }
}

static void the_sentence_tells_the_range(void **state)
{
    (void)state;
    refused("opening.width", "36 ft", NULL, INGLE_ERROR_IMPLAUSIBLE,
            WORDS("opening.width: 432 in", "6 in to 240 in"));
    refused("hearth.front", "-1 in", NULL, INGLE_ERROR_NEGATIVE, WORDS("hearth.front"));
    expect_nothing("hearth.front", 0);
}

static void what_is_not_so_recorded_is_refused(void **state)
{
    (void)state;
    const ingle_quantity *width = quantity("opening.width");
    const ingle_quantity *liner = quantity("flue.liner");
    assert_int_equal(ingle_survey_record(NULL, "opening.width", "36 in", NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_record(survey, NULL, "36 in", NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_record(survey, "opening.width", NULL, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_set(NULL, width, 0, 1, 0), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_set(survey, NULL, 0, 1, 0), INGLE_ERROR_UNKNOWN_QUANTITY);
    assert_int_equal(ingle_survey_set_text(survey, NULL, 0, "1 in", 4, NULL),
                     INGLE_ERROR_UNKNOWN_QUANTITY);
    assert_int_equal(ingle_survey_set_text(survey, width, 0, NULL, 0, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_set_text(survey, liner, 0, "13x13", 5, NULL),
                     INGLE_ERROR_DIMENSION);
    assert_int_equal(ingle_survey_set_choice(survey, width, 0, "round"), INGLE_ERROR_DIMENSION);
    assert_int_equal(ingle_survey_set_choice(survey, liner, 0, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_set_choice(survey, NULL, 0, "round"),
                     INGLE_ERROR_UNKNOWN_QUANTITY);
    assert_int_equal(ingle_survey_set_choice(NULL, liner, 0, "13x13"), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_set_choice(survey, liner, 1, "13x13"), INGLE_ERROR_ARGUMENT);
    expect_nothing("opening.width", 0);
    expect_nothing("flue.liner", 0);
}

static void a_text_ends_at_its_length_and_may_lean_on_a_unit(void **state)
{
    (void)state;
    const ingle_quantity *width = quantity("opening.width");
    assert_int_equal(ingle_survey_set_text(survey, width, 0, "36 inches of", 5, NULL), INGLE_OK);
    expect("opening.width", INCHES(36), 0);
    assert_int_equal(ingle_survey_set_text(survey, width, 0, "900", 3, ingle_unit_find("mm")),
                     INGLE_OK);
    expect("opening.width", MILLIMETRES(900), 0);
    assert_int_equal(ingle_survey_set_text(survey, width, 0, "36 in", 5, ingle_unit_find("mm")),
                     INGLE_OK);
    expect("opening.width", INCHES(36), 0);
}

/* ---- tolerances ----------------------------------------------------------------------------- */

static void a_tolerance_is_kept_with_its_value(void **state)
{
    (void)state;
    const ingle_quantity *front = quantity("hearth.front");
    assert_int_equal(ingle_survey_record(survey, "hearth.front", "16 in", "1/8 in"), INGLE_OK);
    expect("hearth.front", INCHES(16), INCHES_AND(0, 1, 8));
    assert_int_equal(ingle_survey_set_tolerance_text(survey, front, 0, "2 mm", 4, NULL), INGLE_OK);
    expect("hearth.front", INCHES(16), MILLIMETRES(2));
    /* A value recorded anew comes without the tolerance of the one before. */
    assert_int_equal(ingle_survey_record(survey, "hearth.front", "17 in", NULL), INGLE_OK);
    expect("hearth.front", INCHES(17), 0);
    assert_int_equal(ingle_survey_set(survey, front, 0, INCHES(18), 5), INGLE_OK);
    expect("hearth.front", INCHES(18), 5);
    assert_int_equal(ingle_survey_get(survey, front, 0, NULL, NULL), 1);
}

static void a_refused_tolerance_undoes_the_value(void **state)
{
    (void)state;
    static const struct {
        const char *tolerance;
        ingle_status status;
    } cases[] = {{"-1/8 in", INGLE_ERROR_NEGATIVE},
                 {"1/8", INGLE_ERROR_UNIT_MISSING},
                 {"", INGLE_ERROR_EMPTY},
                 {"1 in2", INGLE_ERROR_DIMENSION},
                 {"900 in", INGLE_ERROR_IMPLAUSIBLE}};
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        ingle_survey_clear(survey);
        assert_int_equal(ingle_survey_record(survey, "hearth.front", "16 in", cases[i].tolerance),
                         cases[i].status);
        assert_non_null(strstr(ingle_survey_error_text(survey), "hearth.front"));
        expect_nothing("hearth.front", 0);
        ingle_survey_record(survey, "hearth.front", "20 in", "1/16 in");
        assert_int_equal(ingle_survey_record(survey, "hearth.front", "16 in", cases[i].tolerance),
                         cases[i].status);
        expect("hearth.front", INCHES(20), INCHES_AND(0, 1, 16));
    }
}

static void tolerances_belong_to_recorded_amounts(void **state)
{
    (void)state;
    const ingle_quantity *front = quantity("hearth.front");
    const ingle_quantity *shape = quantity("flue.shape");
    assert_int_equal(ingle_survey_set_tolerance_text(survey, front, 0, "1 in", 4, NULL),
                     INGLE_ERROR_ARGUMENT);
    expect_nothing("hearth.front", 0);
    assert_int_equal(ingle_survey_set(survey, front, 0, INCHES(16), -1), INGLE_ERROR_NEGATIVE);
    assert_int_equal(ingle_survey_set(survey, front, 0, INCHES(16), INCHES(240) + 1),
                     INGLE_ERROR_IMPLAUSIBLE);
    expect_nothing("hearth.front", 0);
    assert_int_equal(ingle_survey_set(survey, shape, 0, CHOICE_FLUE_SHAPE_ROUND, 1),
                     INGLE_ERROR_ARGUMENT);
    expect_nothing("flue.shape", 0);
    assert_int_equal(ingle_survey_set_tolerance_text(survey, shape, 0, "1 in", 4, NULL),
                     INGLE_ERROR_DIMENSION);
    assert_int_equal(ingle_survey_set_tolerance_text(survey, NULL, 0, "1 in", 4, NULL),
                     INGLE_ERROR_UNKNOWN_QUANTITY);
}

/* As the header says of every text: an amount that is no whole number of base units says so. */
static void a_rounded_tolerance_says_so(void **state)
{
    (void)state;
    assert_int_equal(ingle_survey_record(survey, "hearth.front", "16 in", "1/3 in"),
                     INGLE_ROUNDED);
    expect("hearth.front", INCHES(16), 8466667);
}

/* A choice has no tolerance, so one that is given is an error as it is in ingle_survey_set(). */
static void a_choice_takes_no_tolerance(void **state)
{
    (void)state;
    assert_true(ingle_survey_record(survey, "flue.shape", "round", "1 in") < 0);
    expect_nothing("flue.shape", 0);
    assert_true(ingle_survey_record(survey, "flue.shape", "round", "nonsense") < 0);
    expect_nothing("flue.shape", 0);
}

/* ---- items ---------------------------------------------------------------------------------- */

static void items_keep_their_labels(void **state)
{
    (void)state;
    char label[] = "mantel shelf";
    size_t item = 42;
    assert_int_equal(ingle_survey_item_count(survey, "trim"), 0);
    assert_int_equal(ingle_survey_add_item(survey, "trim", label, &item), INGLE_OK);
    assert_int_equal(item, 0);
    label[0] = 'M'; /* the label was copied */
    assert_int_equal(ingle_survey_add_item(survey, "trim", NULL, NULL), INGLE_OK);
    assert_int_equal(ingle_survey_add_item(survey, "trim", "", NULL), INGLE_OK);
    assert_int_equal(ingle_survey_add_item(survey, "trim", "Kaminsims, über der Öffnung", &item),
                     INGLE_OK);
    assert_int_equal(item, 3);
    assert_int_equal(ingle_survey_item_count(survey, "trim"), 4);
    assert_string_equal(ingle_survey_item_label(survey, "trim", 0), "mantel shelf");
    assert_null(ingle_survey_item_label(survey, "trim", 1));
    assert_string_equal(ingle_survey_item_label(survey, "trim", 2), "");
    assert_string_equal(ingle_survey_item_label(survey, "trim", 3),
                        "Kaminsims, über der Öffnung");
    assert_null(ingle_survey_item_label(survey, "trim", 4));
    assert_null(ingle_survey_item_label(survey, "opening", 0));
    assert_null(ingle_survey_item_label(survey, "nothing", 0));
    assert_int_equal(ingle_survey_item_count(survey, "nothing"), 0);
    assert_int_equal(ingle_survey_item_count(survey, NULL), 0);
}

static void items_belong_to_groups_that_repeat(void **state)
{
    (void)state;
    size_t item = 42;
    assert_int_equal(ingle_survey_add_item(survey, "opening", NULL, &item),
                     INGLE_ERROR_UNKNOWN_QUANTITY);
    assert_int_equal(ingle_survey_add_item(survey, "trims", NULL, &item),
                     INGLE_ERROR_UNKNOWN_QUANTITY);
    assert_int_equal(ingle_survey_add_item(survey, NULL, NULL, &item), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_add_item(NULL, "trim", NULL, &item), INGLE_ERROR_ARGUMENT);
    assert_int_equal(item, 42);
    assert_int_equal(ingle_survey_open_group(survey, "opening"), INGLE_ERROR_UNKNOWN_QUANTITY);
    assert_int_equal(ingle_survey_open_group(survey, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_open_group(NULL, "trim"), INGLE_ERROR_ARGUMENT);
}

static void a_label_is_utf8(void **state)
{
    (void)state;
    assert_int_equal(ingle_survey_add_item(survey, "trim", "shelf \xFF", NULL),
                     INGLE_ERROR_ENCODING);
    assert_int_equal(ingle_survey_item_count(survey, "trim"), 0);
}

static void an_open_group_was_looked_at(void **state)
{
    (void)state;
    assert_false(survey->items[GROUP_TRIM].opened);
    assert_int_equal(ingle_survey_is_open(survey, "trim"), 0);
    assert_int_equal(ingle_survey_open_group(survey, "trim"), INGLE_OK);
    assert_int_equal(ingle_survey_is_open(survey, "trim"), 1);
    assert_int_equal(ingle_survey_is_open(survey, "opening"), 0);
    assert_int_equal(ingle_survey_is_open(survey, NULL), 0);
    assert_true(survey->items[GROUP_TRIM].opened);
    assert_int_equal(ingle_survey_item_count(survey, "trim"), 0);
    ingle_survey_clear(survey);
    assert_false(survey->items[GROUP_TRIM].opened);
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    assert_true(survey->items[GROUP_TRIM].opened);
}

/* ---- taking back ---------------------------------------------------------------------------- */

static void a_quantity_is_taken_out_again(void **state)
{
    (void)state;
    const ingle_quantity *width = quantity("opening.width");
    ingle_survey_record(survey, "opening.width", "36 in", "1/8 in");
    ingle_survey_record(survey, "opening.height", "24 in", NULL);
    assert_int_equal(ingle_survey_unset(survey, width, 0), INGLE_OK);
    assert_int_equal(ingle_survey_unset(survey, width, 0), INGLE_OK);
    expect_nothing("opening.width", 0);
    expect("opening.height", INCHES(24), 0);
    assert_int_equal(ingle_survey_unset(survey, width, 1), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_unset(survey, quantity("trim.distance"), 0),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_unset(survey, NULL, 0), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_survey_unset(NULL, width, 0), INGLE_ERROR_ARGUMENT);
}

static void a_cleared_survey_is_as_new(void **state)
{
    (void)state;
    ingle_survey_add_item(survey, "trim", "shelf", NULL);
    ingle_survey_record(survey, "trim[0].distance", "6 in", NULL);
    ingle_survey_record(survey, "opening.width", "36 in", NULL);
    ingle_survey_record(survey, "opening.width", "36 lb", NULL);
    ingle_survey_clear(survey);
    assert_string_equal(ingle_survey_error_text(survey), "");
    assert_int_equal(ingle_survey_error_position(survey), 0);
    assert_int_equal(ingle_survey_item_count(survey, "trim"), 0);
    for (size_t i = 0; i < ingle_quantity_count(); i++) {
        expect_nothing(ingle_quantity_id(ingle_quantity_at(i)), 0);
    }
    ingle_survey_add_item(survey, "trim", NULL, NULL);
    expect_nothing("trim.distance", 0);
    assert_null(ingle_survey_item_label(survey, "trim", 0));
}

static void nothing_is_read_where_nothing_is(void **state)
{
    (void)state;
    int64_t value = 42;
    assert_int_equal(ingle_survey_get(NULL, quantity("opening.width"), 0, NULL, NULL), 0);
    assert_int_equal(ingle_survey_get(survey, NULL, 0, NULL, NULL), 0);
    assert_string_equal(ingle_survey_error_text(survey), "");
    assert_int_equal(ingle_survey_new(NULL, NULL), INGLE_ERROR_ARGUMENT);
    ingle_survey_free(NULL);
    /* What is assumed is not recorded, and is taken only where it is asked for. */
    expect_nothing("firebox.design", 0);
    assert_true(survey_value(survey, QUANTITY_FIREBOX_DESIGN, 0, &value));
    assert_true(value == CHOICE_FIREBOX_DESIGN_CONVENTIONAL);
    assert_false(survey_value(survey, QUANTITY_OPENING_WIDTH, 0, &value));
}

#define SURVEY_TEST(name) cmocka_unit_test_setup_teardown(name, make, unmake)

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(ids_are_unique_and_start_with_their_group),
        cmocka_unit_test(the_quantities_of_a_group_stand_together),
        cmocka_unit_test(every_quantity_says_what_it_is_and_how_it_is_measured),
        cmocka_unit_test(ranges_have_room),
        cmocka_unit_test(choices_are_unique_and_belong_to_choices),
        cmocka_unit_test(what_is_assumed_is_one_of_the_choices),
        SURVEY_TEST(amounts_are_recorded_to_the_base_unit),
        SURVEY_TEST(choices_and_flags_are_recorded_by_name),
        SURVEY_TEST(items_are_recorded_by_their_index),
        SURVEY_TEST(paths_that_are_none_are_refused),
        SURVEY_TEST(the_sentence_tells_of_items),
        SURVEY_TEST(pointers_of_reports_are_paths),
        SURVEY_TEST(a_copy_holds_the_same_and_is_its_own),
        SURVEY_TEST(the_sentence_names_what_was_meant),
        SURVEY_TEST(errors_stand_at_their_place),
        SURVEY_TEST(amounts_outside_the_range_are_implausible),
        SURVEY_TEST(the_sentence_tells_the_range),
        SURVEY_TEST(what_is_not_so_recorded_is_refused),
        SURVEY_TEST(a_text_ends_at_its_length_and_may_lean_on_a_unit),
        SURVEY_TEST(a_tolerance_is_kept_with_its_value),
        SURVEY_TEST(a_refused_tolerance_undoes_the_value),
        SURVEY_TEST(tolerances_belong_to_recorded_amounts),
        SURVEY_TEST(a_rounded_tolerance_says_so),
        SURVEY_TEST(a_choice_takes_no_tolerance),
        SURVEY_TEST(items_keep_their_labels),
        SURVEY_TEST(items_belong_to_groups_that_repeat),
        SURVEY_TEST(a_label_is_utf8),
        SURVEY_TEST(an_open_group_was_looked_at),
        SURVEY_TEST(a_quantity_is_taken_out_again),
        SURVEY_TEST(a_cleared_survey_is_as_new),
        SURVEY_TEST(nothing_is_read_where_nothing_is),
    };
    return cmocka_run_group_tests_name("survey", tests, NULL, NULL);
}
