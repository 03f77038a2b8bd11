/* SPDX-License-Identifier: MIT */
/* What every room rests on: statuses, structs of other releases, near-miss names, cut texts. */
#include "base/memory.h"
#include "base/nearest.h"
#include "base/text.h"

#include <ingle/names.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

/* ---- statuses ------------------------------------------------------------------------------- */

static ingle_status status_at(size_t index)
{
    ingle_status status = 0;
    assert_int_equal(ingle_status_at(index, &status), INGLE_OK);
    return status;
}

static void statuses_are_unique_and_described(void **state)
{
    (void)state;
    assert_true(ingle_status_count() > 30);
    assert_int_equal(status_at(0), INGLE_OK);
    for (size_t i = 0; i < ingle_status_count(); i++) {
        const char *name = ingle_status_name(status_at(i));
        const char *text = ingle_status_text(status_at(i));
        assert_true(strlen(name) > 0);
        assert_int_equal(strspn(name, "abcdefghijklmnopqrstuvwxyz-"), strlen(name));
        assert_int_equal(text[strlen(text) - 1], '.');
        for (size_t j = 0; j < i; j++) {
            assert_int_not_equal(status_at(j), status_at(i));
            assert_string_not_equal(ingle_status_name(status_at(j)), name);
            assert_string_not_equal(ingle_status_text(status_at(j)), text);
        }
    }
}

static void the_sign_tells_whether_it_was_done(void **state)
{
    (void)state;
    assert_int_equal(INGLE_OK, 0);
    assert_true(INGLE_ROUNDED > 0 && INGLE_CUT > 0);
    assert_string_equal(ingle_status_name(INGLE_ERROR_UNIT_MISSING), "unit-missing");
    assert_true(INGLE_ERROR_UNIT_MISSING < 0);
    assert_string_equal(ingle_status_name(-9999), "failure");
    assert_string_equal(ingle_status_name(9999), "caution");
    assert_string_equal(ingle_status_name(INT32_MIN), "failure");
    assert_true(strlen(ingle_status_text(-9999)) > 0);
    assert_true(strlen(ingle_status_text(9999)) > 0);
}

static void past_the_end_nothing_is_written(void **state)
{
    (void)state;
    ingle_status status = 42;
    assert_int_equal(ingle_status_at(ingle_status_count(), &status), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_status_at(SIZE_MAX, &status), INGLE_ERROR_ARGUMENT);
    assert_int_equal(status, 42);
    assert_int_equal(ingle_status_at(0, NULL), INGLE_ERROR_ARGUMENT);
}

/* ---- structs of other releases -------------------------------------------------------------- */

struct first_release {
    size_t size;
    int64_t width;
};

struct this_release {
    size_t size;
    int64_t width;
    int64_t height;
};

struct next_release {
    size_t size;
    int64_t width;
    int64_t height;
    int64_t depth;
};

static ingle_status take(struct this_release *known, const void *given)
{
    return struct_take(known, sizeof *known, sizeof(struct first_release), given);
}

static void only_what_the_caller_has_is_read(void **state)
{
    (void)state;
    /* Of the very size on the heap, so that a sanitizer sees a byte read beyond. */
    struct first_release *given = malloc(sizeof *given);
    assert_non_null(given);
    *given = (struct first_release){sizeof *given, 7};
    struct this_release known = {0, 0, 42};
    assert_int_equal(take(&known, given), INGLE_OK);
    assert_true(known.width == 7 && known.height == 0);
    free(given);
}

static void the_struct_of_this_release_is_copied(void **state)
{
    (void)state;
    struct this_release given = {sizeof given, 7, 8};
    struct this_release known = {0, 0, 0};
    assert_int_equal(take(&known, &given), INGLE_OK);
    assert_memory_equal(&known, &given, sizeof given);
}

static void a_newer_struct_may_not_ask_for_more(void **state)
{
    (void)state;
    struct next_release given = {sizeof given, 7, 8, 0};
    struct this_release known = {0, 0, 0};
    assert_int_equal(take(&known, &given), INGLE_OK);
    assert_true(known.width == 7 && known.height == 8);
    ((unsigned char *)&given)[sizeof given - 1] = 1;
    known.width = 42;
    assert_int_equal(take(&known, &given), INGLE_ERROR_STRUCT_NEWER);
    assert_true(known.width == 42);
}

static void a_size_that_was_never_released_is_refused(void **state)
{
    (void)state;
    struct first_release given = {0, 7};
    struct this_release known = {0, 42, 0};
    assert_int_equal(take(&known, &given), INGLE_ERROR_STRUCT_SIZE);
    given.size = sizeof given - 1;
    assert_int_equal(take(&known, &given), INGLE_ERROR_STRUCT_SIZE);
    given.size = SIZE_MAX; /* garbage: nothing beyond the struct may be read */
    assert_int_equal(take(&known, &given), INGLE_ERROR_STRUCT_SIZE);
    assert_true(known.width == 42);
}

static void *no_memory(void *context, void *memory, size_t bytes)
{
    (void)context;
    (void)memory;
    (void)bytes;
    return NULL;
}

static void allocators_are_taken_or_refused(void **state)
{
    (void)state;
    ingle_allocator taken;
    ingle_allocator given = {sizeof given, no_memory, state};
    assert_int_equal(allocator_take(&taken, &given), INGLE_OK);
    assert_ptr_equal(taken.context, state);
    assert_null(allocator_new(&taken, 8));
    given.reallocate = NULL;
    assert_int_equal(allocator_take(&taken, &given), INGLE_ERROR_ARGUMENT);
    given.size = 1;
    assert_int_equal(allocator_take(&taken, &given), INGLE_ERROR_STRUCT_SIZE);
    assert_int_equal(allocator_take(&taken, NULL), INGLE_OK);
    char *copy = allocator_copy(&taken, "mantel shelf", 6);
    assert_string_equal(copy, "mantel");
    allocator_free(&taken, copy);
    allocator_free(&taken, NULL);
}

static void arrays_grow_and_keep_what_they_hold(void **state)
{
    (void)state;
    ingle_allocator memory;
    int64_t *numbers = NULL;
    size_t capacity = 0;
    allocator_take(&memory, NULL);
    for (size_t count = 0; count < 1000; count++) {
        assert_true(array_reserve(&memory, (void **)&numbers, &capacity, count, sizeof *numbers));
        assert_true(capacity > count);
        numbers[count] = (int64_t)count;
    }
    for (size_t i = 0; i < 1000; i++) {
        assert_true(numbers[i] == (int64_t)i);
    }
    int64_t *before = numbers;
    size_t full = capacity;
    memory.reallocate = no_memory;
    assert_false(array_reserve(&memory, (void **)&numbers, &capacity, full, sizeof *numbers));
    assert_ptr_equal(numbers, before);
    assert_int_equal(capacity, full);
    allocator_take(&memory, NULL);
    assert_false(array_reserve(&memory, (void **)&numbers, &capacity, full, SIZE_MAX / 2));
    assert_int_equal(capacity, full);
    allocator_free(&memory, numbers);
}

/* ---- near-miss names ------------------------------------------------------------------------ */

static const char *const known[] = {"opening.width", "opening.height", "hearth.front",
                                    "trim.distance", "round-10.75"};

static const char *meant(const char *name)
{
    return ingle_name_nearest(name, known, sizeof known / sizeof known[0]);
}

static void slips_find_the_name_meant(void **state)
{
    (void)state;
    static const char *const cases[][2] = {
        {"opening.width", "opening.width"},   {"opening.widht", "opening.width"},
        {"opening.hieght", "opening.height"}, {"Opening.Width", "opening.width"},
        {"hearth.font", "hearth.front"},      {"heart.front", "hearth.front"},
        {"trim.distances", "trim.distance"},  {"round_10.75", "round-10.75"},
        {"ROUND 10.75", "round-10.75"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        const char *found = meant(cases[i][0]);
        if (found == NULL) {
            print_error("%s\n", cases[i][0]);
        }
        assert_non_null(found);
        assert_string_equal(found, cases[i][1]);
    }
}

static void other_words_find_nothing(void **state)
{
    (void)state;
    static char longest[5000];
    memset(longest, 'x', sizeof longest - 1);
    assert_null(meant("chimney"));
    assert_null(meant(""));
    assert_null(meant(longest));
    assert_null(meant(NULL));
    assert_null(ingle_name_nearest("width", NULL, 0));
    assert_null(ingle_name_nearest("width", NULL, 3));
    assert_null(ingle_name_nearest("width", known, 0));
}

static void the_first_of_equals_is_kept(void **state)
{
    (void)state;
    static const char *const alike[] = {"left", "lift"};
    struct nearest nearest = nearest_start("lxft");
    nearest_offer(&nearest, alike[0]);
    assert_int_equal(nearest.distance, 1);
    nearest_offer(&nearest, alike[1]);
    assert_string_equal(nearest.best, "left");
    nearest_offer(&nearest, "LXFT");
    assert_int_equal(nearest.distance, 0);
    assert_string_equal(nearest.best, "LXFT");
}

/* ---- texts ---------------------------------------------------------------------------------- */

static void numbers_are_written_in_digits(void **state)
{
    (void)state;
    static const struct {
        uint64_t number;
        const char *digits;
    } cases[] = {{0, "0"}, {7, "7"}, {10, "10"}, {2024, "2024"},
                 {UINT64_MAX, "18446744073709551615"}};
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        char buffer[32];
        struct text text = text_start(buffer, sizeof buffer);
        text_add_unsigned(&text, cases[i].number);
        assert_int_equal(text_end(&text, NULL), INGLE_OK);
        assert_string_equal(buffer, cases[i].digits);
    }
}

static ingle_status write_parts(char *buffer, size_t capacity, size_t *length)
{
    struct text text = text_start(buffer, capacity);
    text_add(&text, "trim ");
    text_add(&text, "");
    text_add_unsigned(&text, 12);
    text_add_bytes(&text, ": mantelpiece", 8);
    return text_end(&text, length);
}

static void a_text_is_cut_at_any_capacity(void **state)
{
    (void)state;
    static const char whole[] = "trim 12: mantel";
    size_t length = 0;
    assert_int_equal(write_parts(NULL, 0, &length), INGLE_OK);
    assert_int_equal(length, strlen(whole));
    for (size_t capacity = 1; capacity <= sizeof whole + 1; capacity++) {
        char *buffer = malloc(capacity);
        assert_non_null(buffer);
        memset(buffer, '#', capacity);
        ingle_status status = write_parts(buffer, capacity, &length);
        size_t written = capacity <= strlen(whole) ? capacity - 1 : strlen(whole);
        assert_int_equal(status, capacity <= strlen(whole) ? INGLE_CUT : INGLE_OK);
        assert_int_equal(length, strlen(whole));
        assert_memory_equal(buffer, whole, written);
        assert_int_equal(buffer[written], '\0');
        free(buffer);
    }
}

static void an_empty_text_still_ends(void **state)
{
    (void)state;
    char buffer[1] = {'#'};
    size_t length = 42;
    struct text text = text_start(buffer, sizeof buffer);
    assert_int_equal(text_end(&text, &length), INGLE_OK);
    assert_int_equal(length, 0);
    assert_int_equal(buffer[0], '\0');
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(statuses_are_unique_and_described),
        cmocka_unit_test(the_sign_tells_whether_it_was_done),
        cmocka_unit_test(past_the_end_nothing_is_written),
        cmocka_unit_test(only_what_the_caller_has_is_read),
        cmocka_unit_test(the_struct_of_this_release_is_copied),
        cmocka_unit_test(a_newer_struct_may_not_ask_for_more),
        cmocka_unit_test(a_size_that_was_never_released_is_refused),
        cmocka_unit_test(allocators_are_taken_or_refused),
        cmocka_unit_test(arrays_grow_and_keep_what_they_hold),
        cmocka_unit_test(slips_find_the_name_meant),
        cmocka_unit_test(other_words_find_nothing),
        cmocka_unit_test(the_first_of_equals_is_kept),
        cmocka_unit_test(numbers_are_written_in_digits),
        cmocka_unit_test(a_text_is_cut_at_any_capacity),
        cmocka_unit_test(an_empty_text_still_ends),
    };
    return cmocka_run_group_tests_name("base", tests, NULL, NULL);
}
