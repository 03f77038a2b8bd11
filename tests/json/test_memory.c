/* SPDX-License-Identifier: MIT */
/*
 * Memory that cannot be had, at every place where the reader, the library beneath it and the writer
 * ask for it; and trees that json-c left incomplete, as it does where it had no memory itself.
 *
 * The linker leads the calls of both libraries, which are linked statically here, through __wrap_.
 */
#include "document.h"

#include "reading/value.h"

#include <stdio.h>
#include <stdlib.h>

static long allowed = -1; /* calls that still succeed; -1 is all */
static long asked;

void *__real_malloc(size_t bytes);
void *__real_calloc(size_t count, size_t bytes);
void *__real_realloc(void *memory, size_t bytes);
void *__wrap_malloc(size_t bytes);
void *__wrap_calloc(size_t count, size_t bytes);
void *__wrap_realloc(void *memory, size_t bytes);

static bool refused(void)
{
    asked++;
    if (allowed > 0) {
        allowed--;
        return false;
    }
    return allowed == 0;
}

void *__wrap_malloc(size_t bytes)
{
    return refused() ? NULL : __real_malloc(bytes);
}

void *__wrap_calloc(size_t count, size_t bytes)
{
    return refused() ? NULL : __real_calloc(count, bytes);
}

void *__wrap_realloc(void *memory, size_t bytes)
{
    return refused() ? NULL : __real_realloc(memory, bytes);
}

static const char document[] =
    "{`standards`: [`irc-2021`], `tolerance`: `1/16 in`, " SURVEY_START
    "`19 1/3 in`}, `trim`: [{`label`: `shelf`, `side`: `above`, `distance`: `10 in`}]}, "
    "`amendments`: [{`standard`: `irc-2021`, `rule`: `hearth-front`, `set`: {`large`: `24 in`}, "
    "`citation`: `by-law 7-2`}]}";

static const char town[] =
    "{`authority`: `Town`, `amendments`: [{`standard`: `irc-2021`, `rule`: `hearth-front`, "
    "`set`: {`large`: `24 in`, `small`: `18 in`}, `citation`: `by-law 7-2`}]}";

/* Makes an object, amends and judges with so many calls; false where even the object failed. */
static bool judge_with(long calls, ingle_status *status)
{
    ingle_json *shared = json;
    allowed = calls;
    *status = ingle_json_new(&json);
    bool made = *status == INGLE_OK;
    if (made) {
        *status = amend_with(town);
        *status = *status == INGLE_OK ? check_with(document, NULL) : *status;
        allowed = -1;
        struct json_object *tree = left();
        struct json_object *error = member(tree, "error");
        assert_string_equal(*status == INGLE_OK ? "(absent)" : text_of(error, "code"),
                            *status == INGLE_OK ? "(absent)" : "memory");
        assert_true((error == NULL) == (*status == INGLE_OK));
        json_object_put(tree);
        /* It serves again as if nothing had been. */
        assert_int_equal(amend_with(town), INGLE_OK);
        assert_int_equal(check_with(document, NULL), INGLE_OK);
        ingle_json_free(json);
    }
    allowed = -1;
    json = shared;
    return made;
}

static void every_allocation_can_fail(void **state)
{
    (void)state;
    ingle_status status = INGLE_ERROR_MEMORY;
    long calls = 0;
    bool judged = false;
    while (status != INGLE_OK) {
        assert_int_equal(status, INGLE_ERROR_MEMORY);
        assert_true(calls < 1000);
        judged |= judge_with(calls++, &status);
    }
    assert_true(judged && calls > 10);
}

/* All that a warm reader asks for is json-c's tree and the labels of a survey's items. */
static void a_warm_reader_asks_for_little(void **state)
{
    (void)state;
    assert_int_equal(check_with(DOCUMENT("", "`19 in`"), NULL), INGLE_OK);
    asked = 0;
    assert_int_equal(check_with(DOCUMENT("", "`19 in`"), NULL), INGLE_OK);
    assert_int_equal(asked, 0);
}

/* ---- trees that lack something --------------------------------------------------------------- */

static const char whole[] = "{\"a\": [1, null, \"te\\u0078t\"], \"b\\n\": {\"c\": true}, \"d\": 2}";

static struct json_object *inner(struct json_object *tree, const char *name)
{
    struct json_object *value = member(tree, name);
    assert_non_null(value);
    return value;
}

static void lose_the_last_member(struct json_object *tree)
{
    json_object_object_del(tree, "d");
}

static void lose_the_first_member(struct json_object *tree)
{
    json_object_object_del(tree, "a");
}

static void lose_an_element(struct json_object *tree)
{
    json_object_array_del_idx(inner(tree, "a"), 1, 1);
}

static void lose_the_end_of_a_text(struct json_object *tree)
{
    json_object_set_string(json_object_array_get_idx(inner(tree, "a"), 2), "te");
}

static void lose_the_end_of_a_name(struct json_object *tree)
{
    json_object_object_del(inner(tree, "b\n"), "c");
    json_object_object_add(inner(tree, "b\n"), "", json_object_new_boolean(1));
}

static void lose_a_value(struct json_object *tree)
{
    json_object_object_add(tree, "d", NULL);
}

static void swap_the_kind(struct json_object *tree)
{
    json_object_object_add(tree, "d", json_object_new_string("2"));
}

static bool is_whole_after(void (*change)(struct json_object *tree))
{
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    assert_int_equal(json_scan_document(&scan, whole, sizeof whole - 1, 16), INGLE_OK);
    struct json_object *tree = json_tokener_parse(whole);
    assert_non_null(tree);
    if (change != NULL) {
        change(tree);
    }
    bool result = json_tree_is_whole(&scan, tree);
    json_object_put(tree);
    json_scan_free(&scan);
    return result;
}

static void an_incomplete_tree_is_noticed(void **state)
{
    (void)state;
    assert_true(is_whole_after(NULL));
    assert_false(is_whole_after(lose_the_last_member));
    assert_false(is_whole_after(lose_the_first_member));
    assert_false(is_whole_after(lose_an_element));
    assert_false(is_whole_after(lose_the_end_of_a_text));
    assert_false(is_whole_after(lose_the_end_of_a_name));
    assert_false(is_whole_after(lose_a_value));
    assert_false(is_whole_after(swap_the_kind));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_allocation_can_fail),
        cmocka_unit_test(a_warm_reader_asks_for_little),
        cmocka_unit_test(an_incomplete_tree_is_noticed),
    };
    return cmocka_run_group_tests(tests, document_make, document_unmake);
}
