/* SPDX-License-Identifier: MIT */
/*
 * Any bytes as a survey document: what is left is JSON, and an error exactly where the status says
 * so. Each input is judged twice, in both layouts and with one object that has seen all before it;
 * first it is taken for a document of amendments, too.
 */
#include <ingle-json.h>

#include <json-c/json.h>

#include <stdbool.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static void require(bool holds)
{
    if (!holds) {
        abort();
    }
}

static struct json_object *parse(const char *text, size_t length)
{
    struct json_tokener *tokener = json_tokener_new_ex(64);
    require(tokener != NULL);
    json_tokener_set_flags(tokener, JSON_TOKENER_STRICT | JSON_TOKENER_VALIDATE_UTF8);
    struct json_object *tree = json_tokener_parse_ex(tokener, text, (int)length);
    require(json_tokener_get_error(tokener) == json_tokener_success);
    json_tokener_free(tokener);
    return tree;
}

/* Keeps what is sound as amendments, judges a survey by them, and lets go of them. */
static void amend(ingle_json *json, const uint8_t *data, size_t size)
{
    static const char survey[] = "{\"standards\": [\"irc-2021\"], \"survey\": {}}";
    ingle_status status = ingle_json_amend(json, (const char *)data, size);
    size_t length;
    const char *text = ingle_json_text(json, &length);
    require(length > 0 && strlen(text) == length && text[length - 1] == '\n');
    struct json_object *tree = parse(text, length);
    require(json_object_object_get_ex(tree, "error", NULL) == (status < 0));
    require(json_object_object_get_ex(tree, "amendments", NULL) == (status >= 0));
    require(status != INGLE_ERROR_MEMORY);
    json_object_put(tree);
    require(ingle_json_check(json, survey, sizeof survey - 1, NULL) == INGLE_OK);
    ingle_json_clear_amendments(json);
}

static struct json_object *judge(ingle_json *json, const uint8_t *data, size_t size, bool one_line,
                                 ingle_status *status)
{
    static const ingle_probability_options probability = {.size = sizeof probability,
                                                          .rule = INGLE_RULE_FOUR_WAY,
                                                          .guard_factor = 1,
                                                          .trials = 16};
    ingle_json_options options = {
        .size = sizeof options, .one_line = one_line, .probability = &probability};
    *status = ingle_json_check(json, (const char *)data, size, &options);
    size_t length;
    const char *text = ingle_json_text(json, &length);
    require(length > 0 && strlen(text) == length);
    const char *end = strchr(text, '\n');
    require(text[length - 1] == '\n' && (!one_line || end == text + length - 1));
    struct json_object *tree = parse(text, length);
    bool refused = json_object_object_get_ex(tree, "error", NULL);
    bool judged = json_object_object_get_ex(tree, "findings", NULL);
    require(refused == (*status < 0) && judged == !refused);
    /* Also what json-c makes of a document it was given whole and cannot read in step. */
    require(*status != INGLE_ERROR_MEMORY);
    return tree;
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    static ingle_json *json;
    ingle_status first, second;
    require(json != NULL || ingle_json_new(&json) == INGLE_OK);
    amend(json, data, size);
    struct json_object *line = judge(json, data, size, true, &first);
    struct json_object *indented = judge(json, data, size, false, &second);
    require(first == second && json_object_equal(line, indented));
    json_object_put(line);
    json_object_put(indented);
    return 0;
}
