/* SPDX-License-Identifier: MIT */
#include "document.h"

ingle_json *json;

int document_make(void **state)
{
    (void)state;
    return ingle_json_new(&json) == INGLE_OK ? 0 : -1;
}

int document_unmake(void **state)
{
    (void)state;
    ingle_json_free(json);
    return 0;
}

static size_t with_quotes(const char *legible, char *document, size_t size)
{
    size_t length = strlen(legible);
    assert_true(length < size);
    for (size_t i = 0; i <= length; i++) {
        document[i] = legible[i] == '`' ? '"' : legible[i];
    }
    return length;
}

ingle_status check_with(const char *legible, const ingle_json_options *options)
{
    char document[4096];
    size_t length = with_quotes(legible, document, sizeof document);
    return ingle_json_check(json, document, length, options);
}

ingle_status read_with(const char *legible, const ingle_json_options *options)
{
    char document[4096];
    size_t length = with_quotes(legible, document, sizeof document);
    return ingle_json_read(json, document, length, options);
}

ingle_status amend_with(const char *legible)
{
    char document[4096];
    size_t length = with_quotes(legible, document, sizeof document);
    return ingle_json_amend(json, document, length);
}

struct json_object *left(void)
{
    size_t length;
    const char *text = ingle_json_text(json, &length);
    assert_int_equal(strlen(text), length);
    assert_true(length > 1 && text[length - 1] == '\n');
    struct json_object *tree = json_tokener_parse(text);
    assert_non_null(tree);
    return tree;
}

struct json_object *member(struct json_object *around, const char *name)
{
    struct json_object *value = NULL;
    json_object_object_get_ex(around, name, &value);
    return value;
}

const char *text_of(struct json_object *around, const char *name)
{
    struct json_object *value = member(around, name);
    return value == NULL ? "(absent)" : json_object_get_string(value);
}

struct json_object *finding(struct json_object *report, const char *rule)
{
    struct json_object *findings = member(report, "findings");
    for (size_t i = 0; i < json_object_array_length(findings); i++) {
        struct json_object *one = json_object_array_get_idx(findings, i);
        if (strcmp(text_of(one, "rule"), rule) == 0) {
            return one;
        }
    }
    print_message("no finding of rule %s\n", rule);
    fail();
    return NULL;
}
