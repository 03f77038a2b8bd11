/* SPDX-License-Identifier: MIT */
/*
 * The strict pass: which documents it takes, which it refuses and where, and what its nodes say.
 * The rules are those of RFC 8259 (grammar), the Unicode Standard, table 3-7 (UTF-8) and RFC 6901
 * (pointers).
 */
#include "strict/scan.h"

#include "scan_documents.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#define COUNT(array) (sizeof(array) / sizeof(array)[0])

enum { DEPTH_LIMIT = 16 };

/* Scans a copy that ends where its memory ends, so that a sanitizer sees a byte read too many. */
static ingle_status scan_copy(struct json_scan *scan, const char *bytes, size_t length,
                              char **copy)
{
    *copy = malloc(length > 0 ? length : 1);
    assert_non_null(*copy);
    memcpy(*copy, bytes, length);
    return json_scan_document(scan, *copy, length, DEPTH_LIMIT);
}

static void accepts_what_json_is(void **state)
{
    (void)state;
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    for (size_t i = 0; i < COUNT(accepted); i++) {
        char *copy;
        ingle_status status = scan_copy(&scan, accepted[i].bytes, accepted[i].length, &copy);
        if (status != INGLE_OK || scan.node_count != accepted[i].nodes) {
            fail_msg("%s: %s %s, %zu nodes", accepted[i].bytes, ingle_status_name(status),
                     scan.fault.sentence, scan.node_count);
        }
        free(copy);
    }
    json_scan_free(&scan);
}

static void refuses_all_else_and_says_where(void **state)
{
    (void)state;
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    for (size_t i = 0; i < COUNT(refused); i++) {
        char *copy, pointer[64];
        size_t line, column;
        ingle_status status = scan_copy(&scan, refused[i].bytes, refused[i].length, &copy);
        json_scan_place(&scan, scan.fault.offset, &line, &column);
        json_scan_pointer(&scan, scan.fault.node, pointer, sizeof pointer);
        if (status != refused[i].status || scan.fault.status != status ||
            line != refused[i].line || column != refused[i].column ||
            strcmp(pointer, refused[i].pointer) != 0 ||
            strstr(scan.fault.sentence, refused[i].part) == NULL ||
            scan.fault.sentence[strlen(scan.fault.sentence) - 1] != '.') {
            fail_msg("row %zu, %s: %s, line %zu, column %zu, at \"%s\": %s", i, refused[i].bytes,
                     ingle_status_name(status), line, column, pointer, scan.fault.sentence);
        }
        free(copy);
    }
    json_scan_free(&scan);
}

static const char survey[] =
    "{\"caf\\u00e9\": [1.50, -0, \"\\ud83d\\ude00 \xE2\x82\xAC\", {\"\": null}, []],\n"
    " \"a/b\": {\"m~n\": true, \"k\": {}}, \"z\" : \"\\u0000\" , \"\xC3\xA9\":false }";

static void refuses_every_beginning_of_a_document(void **state)
{
    (void)state;
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    for (size_t length = 0; length < sizeof survey - 1; length++) {
        char *copy;
        assert_true(scan_copy(&scan, survey, length, &copy) < 0);
        assert_true(scan.fault.offset <= length);
        free(copy);
    }
    assert_int_equal(json_scan_document(&scan, survey, sizeof survey - 1, 3), INGLE_OK);
    json_scan_free(&scan);
}

static const struct {
    enum json_kind kind;
    const char *source;
    const char *name; /* as written; NULL for what is no member */
    const char *pointer;
    uint32_t parent, index, next;
} survey_nodes[] = {
    {JSON_OBJECT, survey, NULL, "", JSON_NO_NODE, 0, 13},
    {JSON_ARRAY, "[1.50, -0, \"\\ud83d\\ude00 \xE2\x82\xAC\", {\"\": null}, []]", "caf\\u00e9",
     "/caf\xC3\xA9", 0, 0, 8},
    {JSON_NUMBER, "1.50", NULL, "/caf\xC3\xA9/0", 1, 0, 3},
    {JSON_NUMBER, "-0", NULL, "/caf\xC3\xA9/1", 1, 1, 4},
    {JSON_STRING, "\"\\ud83d\\ude00 \xE2\x82\xAC\"", NULL, "/caf\xC3\xA9/2", 1, 2, 5},
    {JSON_OBJECT, "{\"\": null}", NULL, "/caf\xC3\xA9/3", 1, 3, 7},
    {JSON_NULL, "null", "", "/caf\xC3\xA9/3/", 5, 0, 7},
    {JSON_ARRAY, "[]", NULL, "/caf\xC3\xA9/4", 1, 4, 8},
    {JSON_OBJECT, "{\"m~n\": true, \"k\": {}}", "a/b", "/a~1b", 0, 1, 11},
    {JSON_TRUE, "true", "m~n", "/a~1b/m~0n", 8, 0, 10},
    {JSON_OBJECT, "{}", "k", "/a~1b/k", 8, 1, 11},
    {JSON_STRING, "\"\\u0000\"", "z", "/z", 0, 2, 12},
    {JSON_FALSE, "false", "\xC3\xA9", "/\xC3\xA9", 0, 3, 13},
};

static void nodes_know_their_source_and_place(void **state)
{
    (void)state;
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    assert_int_equal(json_scan_document(&scan, survey, sizeof survey - 1, 3), INGLE_OK);
    assert_int_equal(scan.node_count, COUNT(survey_nodes));
    for (size_t i = 0; i < scan.node_count; i++) {
        const struct json_node *node = &scan.nodes[i];
        char pointer[32];
        const char *name = survey_nodes[i].name;
        assert_int_equal(node->kind, survey_nodes[i].kind);
        assert_int_equal(node->length, strlen(survey_nodes[i].source));
        assert_memory_equal(survey + node->start, survey_nodes[i].source, node->length);
        assert_int_equal(node->name_length, name != NULL ? strlen(name) : 0);
        if (name != NULL) {
            assert_memory_equal(survey + node->name, name, node->name_length);
            assert_int_equal(survey[node->name - 1], '"');
        }
        assert_int_equal(node->parent, survey_nodes[i].parent);
        assert_int_equal(node->index, survey_nodes[i].index);
        assert_int_equal(node->next, survey_nodes[i].next);
        assert_int_equal(node->escaped, i == 4 || i == 11);
        assert_int_equal(node->holds_nul, i == 11);
        assert_int_equal(node->name_escaped, i == 1);
        assert_int_equal(json_scan_pointer(&scan, i, pointer, sizeof pointer),
                         strlen(survey_nodes[i].pointer));
        assert_string_equal(pointer, survey_nodes[i].pointer);
    }
    json_scan_free(&scan);
}

static void places_count_lines_and_code_points(void **state)
{
    (void)state;
    static const char text[] = "[\"\xC3\xA9\xF0\x9F\x98\x80\",\r\n\t2,\n\n3]";
    static const struct {
        size_t node, line, column;
    } places[] = {{0, 1, 1}, {1, 1, 2}, {2, 2, 2}, {3, 4, 1}};
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    assert_int_equal(json_scan_document(&scan, text, sizeof text - 1, 1), INGLE_OK);
    size_t line, column;
    for (size_t i = 0; i < COUNT(places); i++) {
        json_scan_place(&scan, scan.nodes[places[i].node].start, &line, &column);
        assert_int_equal(line, places[i].line);
        assert_int_equal(column, places[i].column);
    }
    json_scan_place(&scan, 10, &line, &column); /* behind [, quote, two letters, quote: a comma */
    assert_int_equal(column, 7);
    json_scan_place(&scan, SIZE_MAX, &line, &column); /* past the end is the end */
    assert_int_equal(line, 4);
    assert_int_equal(column, 3);
    json_scan_free(&scan);
}

static void a_pointer_is_cut_between_code_points(void **state)
{
    (void)state;
    static const char text[] = "{\"a\xE2\x82\xAC\":[0,[1]]}";
    static const char whole[] = "/a\xE2\x82\xAC/1/0";
    static const size_t kept[] = {0, 0, 1, 2, 2, 2, 5, 6, 7, 8, 9, 9};
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    assert_int_equal(json_scan_document(&scan, text, sizeof text - 1, 3), INGLE_OK);
    assert_int_equal(json_scan_pointer(&scan, 4, NULL, 0), sizeof whole - 1);
    for (size_t capacity = 1; capacity < COUNT(kept); capacity++) {
        char *buffer = malloc(capacity);
        assert_int_equal(json_scan_pointer(&scan, 4, buffer, capacity), sizeof whole - 1);
        assert_int_equal(strlen(buffer), kept[capacity]);
        assert_memory_equal(buffer, whole, kept[capacity]);
        free(buffer);
    }
    char nothing[1] = {'x'};
    assert_int_equal(json_scan_pointer(&scan, 99, nothing, 1), 0); /* no such node: no pointer */
    assert_int_equal(nothing[0], '\0');
    json_scan_free(&scan);
}

static void each_byte_counts_wherever_it_stands_in_a_string(void **state)
{
    (void)state;
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    for (unsigned byte = 0; byte < 256; byte++) {
        for (size_t at = 1; at <= 24; at++) {
            char text[26];
            memset(text, 'a', sizeof text);
            text[0] = text[25] = '"';
            text[at] = (char)byte;
            ingle_status due = byte == 0 || byte > 0x7F                    ? INGLE_ERROR_ENCODING
                               : byte < ' ' || byte == '"' || byte == '\\' ? INGLE_ERROR_JSON
                                                                           : INGLE_OK;
            ingle_status status = json_scan_document(&scan, text, sizeof text, 0);
            /* A backslash before the closing quote leaves the string open; a quote ends it. */
            size_t offset = byte == '"'                ? at + 1
                            : byte == '\\' && at == 24 ? sizeof text
                                                       : at;
            assert_int_equal(status, due);
            if (due != INGLE_OK) {
                assert_int_equal(scan.fault.offset, offset);
            }
        }
    }
    json_scan_free(&scan);
}

/* Writes a number of up to 21 bits in the form of a UTF-8 sequence of `length` bytes. */
static void write_sequence(uint32_t number, size_t length, char *out)
{
    static const unsigned leads[] = {0, 0, 0xC0, 0xE0, 0xF0};
    for (size_t i = length - 1; i > 0; i--) {
        out[i] = (char)(0x80 | (number & 0x3F));
        number >>= 6;
    }
    out[0] = (char)(leads[length] | number);
}

static void each_code_point_has_one_form(void **state)
{
    (void)state;
    static const uint32_t ends[] = {0, 0x80, 0x800, 0x10000, 0x200000};
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    for (size_t length = 2; length <= 4; length++) {
        for (uint32_t number = 0; number < ends[length]; number++) {
            char text[6] = {'"'};
            write_sequence(number, length, text + 1);
            text[length + 1] = '"';
            bool well_formed = number >= ends[length - 1] && number <= 0x10FFFF &&
                               (number < 0xD800 || number > 0xDFFF);
            ingle_status status = json_scan_document(&scan, text, length + 2, 0);
            if (status != (well_formed ? INGLE_OK : INGLE_ERROR_ENCODING)) {
                fail_msg("%lX in %zu bytes: %s", (unsigned long)number, length,
                         ingle_status_name(status));
            }
        }
    }
    json_scan_free(&scan);
}

static void the_depth_limit_is_the_callers(void **state)
{
    (void)state;
    enum { DEEP = 5000 };
    static char text[2 * DEEP];
    memset(text, '[', DEEP);
    memset(text + DEEP, ']', DEEP);
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    assert_int_equal(json_scan_document(&scan, text, sizeof text, DEEP), INGLE_OK);
    assert_int_equal(json_scan_pointer(&scan, DEEP - 1, NULL, 0), 2 * (DEEP - 1));
    assert_int_equal(json_scan_document(&scan, text, sizeof text, DEEP - 1), INGLE_ERROR_DEPTH);
    assert_int_equal(scan.fault.offset, DEEP - 1);
    assert_int_equal(json_scan_document(&scan, "1", 1, 0), INGLE_OK);
    assert_int_equal(json_scan_document(&scan, "{}", 2, 0), INGLE_ERROR_DEPTH);
    json_scan_free(&scan);
}

/* Writes an object of `count` members n0, n1, … in which member `later`, if it is less than
   `count`, has the name of member `earlier`. Returns its length; `at` receives the later's name. */
static size_t write_object(char *text, size_t count, size_t earlier, size_t later, size_t *at)
{
    size_t length = 0;
    for (size_t i = 0; i < count; i++) {
        text[length++] = i == 0 ? '{' : ',';
        if (i == later) {
            *at = length;
        }
        length += (size_t)sprintf(text + length, "\"n%zu\":0", i == later ? earlier : i);
    }
    text[length++] = '}';
    return length;
}

static void any_two_names_of_an_object_are_compared(void **state)
{
    (void)state;
    char text[512];
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    /* Around the size from which on names are sorted, and where the heap is not full. */
    static const size_t counts[] = {2, 3, 15, 16, 17, 18, 33};
    for (size_t i = 0; i < COUNT(counts); i++) {
        size_t count = counts[i], at = 0;
        size_t length = write_object(text, count, 0, count, &at);
        assert_int_equal(json_scan_document(&scan, text, length, 1), INGLE_OK);
        for (size_t later = 1; later < count; later++) {
            for (size_t earlier = 0; earlier < later; earlier++) {
                length = write_object(text, count, earlier, later, &at);
                assert_int_equal(json_scan_document(&scan, text, length, 1),
                                 INGLE_ERROR_DUPLICATE_NAME);
                assert_int_equal(scan.fault.offset, at);
                assert_int_equal(scan.fault.node, later + 1);
            }
        }
    }
    json_scan_free(&scan);
}

static void the_first_of_several_repetitions_is_reported(void **state)
{
    (void)state;
    /* More names than are compared one by one: z is repeated before y and a are. */
    static const char text[] =
        "{\"a\":0,\"y\":0,\"z\":0,\"1\":0,\"2\":0,\"3\":0,\"4\":0,\"5\":0,\"6\":0,\"7\":0,\"8\":0,"
        "\"z\":0,\"y\":0,\"z\":0,\"a\":0,\"9\":0,\"10\":0,\"11\":0}";
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    assert_int_equal(json_scan_document(&scan, text, sizeof text - 1, 1),
                     INGLE_ERROR_DUPLICATE_NAME);
    assert_int_equal(scan.fault.node, 12);
    json_scan_free(&scan);
}

static void an_object_of_very_many_names_is_held_to_the_same(void **state)
{
    (void)state;
    enum { MANY = 100000 }; /* pair by pair this would be 5 000 000 000 comparisons */
    char *text = malloc(MANY * 12 + 2);
    assert_non_null(text);
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    size_t at = 0;
    size_t length = write_object(text, MANY, 0, MANY, &at);
    assert_int_equal(json_scan_document(&scan, text, length, 1), INGLE_OK);
    assert_int_equal(scan.node_count, MANY + 1);
    length = write_object(text, MANY, 4711, MANY - 1, &at);
    assert_int_equal(json_scan_document(&scan, text, length, 1), INGLE_ERROR_DUPLICATE_NAME);
    assert_int_equal(scan.fault.offset, at);
    free(text);
    json_scan_free(&scan);
}

struct purse {
    size_t left;  /* how many allocations succeed yet */
    size_t asked; /* how many were asked for */
};

static void *reallocate_from_purse(void *context, void *memory, size_t bytes)
{
    struct purse *purse = context;
    if (bytes == 0) {
        free(memory);
        return NULL;
    }
    purse->asked++;
    if (purse->left == 0) {
        return NULL;
    }
    purse->left--;
    return realloc(memory, bytes);
}

static size_t write_deep_document(char *text)
{
    size_t length = 0;
    for (int i = 0; i < 40; i++) {
        length += (size_t)sprintf(text + length, "{\"\\u0061\":1,\"b\":");
    }
    text[length++] = '0';
    memset(text + length, '}', 40);
    return length + 40;
}

static void every_allocation_can_fail(void **state)
{
    (void)state;
    char text[1024];
    size_t length = write_deep_document(text);
    size_t needed = 0;
    ingle_status status = INGLE_ERROR_MEMORY;
    for (; status != INGLE_OK; needed++) {
        struct purse purse = {needed, 0};
        ingle_allocator allocator = {sizeof allocator, reallocate_from_purse, &purse};
        struct json_scan scan;
        json_scan_init(&scan, &allocator);
        status = json_scan_document(&scan, text, length, 40);
        if (status != INGLE_OK) {
            assert_int_equal(status, INGLE_ERROR_MEMORY);
            assert_non_null(strstr(scan.fault.sentence, "Memory"));
            purse.left = SIZE_MAX;
            assert_int_equal(json_scan_document(&scan, text, length, 40), INGLE_OK);
        }
        json_scan_free(&scan);
        assert_int_equal(json_scan_document(&scan, "1", 1, 0),
                         purse.left > 0 ? INGLE_OK : INGLE_ERROR_MEMORY);
        json_scan_free(&scan);
    }
    assert_true(needed > 4); /* nodes, names, open containers and unescaped names, some twice */
}

static void a_warm_scan_allocates_nothing(void **state)
{
    (void)state;
    char text[1024];
    size_t length = write_deep_document(text);
    struct purse purse = {SIZE_MAX, 0};
    ingle_allocator allocator = {sizeof allocator, reallocate_from_purse, &purse};
    struct json_scan scan;
    json_scan_init(&scan, &allocator);
    assert_int_equal(json_scan_document(&scan, text, length, 40), INGLE_OK);
    size_t asked = purse.asked;
    assert_true(asked > 0);
    assert_int_equal(json_scan_document(&scan, text, length, 40), INGLE_OK);
    assert_int_equal(json_scan_document(&scan, text, length - 1, 40), INGLE_ERROR_JSON);
    assert_int_equal(json_scan_document(&scan, survey, sizeof survey - 1, 3), INGLE_OK);
    assert_int_equal(purse.asked, asked);
    json_scan_free(&scan);
}

static void what_cannot_be_counted_in_32_bits_is_refused(void **state)
{
    (void)state;
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    assert_int_equal(json_scan_document(&scan, "1", UINT32_MAX, 1), INGLE_ERROR_LENGTH);
    assert_int_equal(scan.fault.offset, 0);
    assert_int_equal(json_scan_document(&scan, NULL, 0, 1), INGLE_ERROR_JSON);
    json_scan_free(&scan);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(accepts_what_json_is),
        cmocka_unit_test(refuses_all_else_and_says_where),
        cmocka_unit_test(refuses_every_beginning_of_a_document),
        cmocka_unit_test(nodes_know_their_source_and_place),
        cmocka_unit_test(places_count_lines_and_code_points),
        cmocka_unit_test(a_pointer_is_cut_between_code_points),
        cmocka_unit_test(each_byte_counts_wherever_it_stands_in_a_string),
        cmocka_unit_test(each_code_point_has_one_form),
        cmocka_unit_test(the_depth_limit_is_the_callers),
        cmocka_unit_test(any_two_names_of_an_object_are_compared),
        cmocka_unit_test(the_first_of_several_repetitions_is_reported),
        cmocka_unit_test(an_object_of_very_many_names_is_held_to_the_same),
        cmocka_unit_test(every_allocation_can_fail),
        cmocka_unit_test(a_warm_scan_allocates_nothing),
        cmocka_unit_test(what_cannot_be_counted_in_32_bits_is_refused),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
