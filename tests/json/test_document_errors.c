/* SPDX-License-Identifier: MIT */
/*
 * Documents and calls that are refused: each with its code and its place.
 */
#include "document.h"

#include <stdlib.h>

/* ---- errors ---------------------------------------------------------------------------------- */

struct refusal {
    const char *document;
    ingle_status status;
    const char *at;
    int line, column;
    const char *word; /* that the message has, or NULL */
};

static void expect_refusal(const struct refusal *expected, ingle_status status)
{
    struct json_object *tree = left();
    struct json_object *error = member(tree, "error");
    assert_non_null(error);
    bool as_expected =
        status == expected->status && json_object_object_length(tree) == 1 &&
        strcmp(text_of(error, "code"), ingle_status_name(expected->status)) == 0 &&
        strcmp(text_of(error, "at"), expected->at) == 0 &&
        json_object_get_int(member(error, "line")) == expected->line &&
        json_object_get_int(member(error, "column")) == expected->column &&
        strlen(text_of(error, "message")) > 0 &&
        (expected->word == NULL || strstr(text_of(error, "message"), expected->word) != NULL);
    if (!as_expected) {
        print_message("%s\nexpected %s at \"%s\", line %d, column %d, not\n%s\n",
                      expected->document, ingle_status_name(expected->status), expected->at,
                      expected->line, expected->column, json_object_get_string(tree));
        fail();
    }
    assert_int_equal(ingle_json_verdict(json), INGLE_NOT_APPLICABLE);
    json_object_put(tree);
}

static void expect_refusals(const struct refusal *refusals, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        expect_refusal(&refusals[i], check_with(refusals[i].document, NULL));
    }
}

#define EXPECT_REFUSALS(list) expect_refusals(list, sizeof(list) / sizeof *(list))

/* Every place below is on the second line, from its first column. */
#define HEAD "{`standards`: [`irc-2021`],\n"
#define HEARTH HEAD "`survey`: {`hearth`: {"

static void document_errors(void **state)
{
    (void)state;
    static const struct refusal refusals[] = {
        {"", INGLE_ERROR_JSON, "", 1, 1, "ends"},
        {"{`survey`: {}", INGLE_ERROR_JSON, "", 1, 14, "ends"},
        {"{`survey`: NaN}", INGLE_ERROR_JSON, "/survey", 1, 12, NULL},
        {"{`survey`:\n {`hearth`: {}, `hearth`: {}}}", INGLE_ERROR_DUPLICATE_NAME,
         "/survey/hearth", 2, 17, NULL},
        {"{`id`: `\xff`}", INGLE_ERROR_ENCODING, "/id", 1, 9, NULL},
        {"[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]", INGLE_ERROR_DEPTH,
         "/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0", 1, 17, "16"},
        {"[]", INGLE_ERROR_TYPE, "", 1, 1, "object"},
        {" 1", INGLE_ERROR_TYPE, "", 1, 2, "a number"},
        {"null", INGLE_ERROR_TYPE, "", 1, 1, "left out"},
        {"{}", INGLE_ERROR_MISSING_NAME, "", 1, 1, "survey"},
        {HEAD "`surveys`: {}}", INGLE_ERROR_UNKNOWN_NAME, "/surveys", 2, 1, "survey?"},
        {HEAD "`xyzzy`: {}}", INGLE_ERROR_UNKNOWN_NAME, "/xyzzy", 2, 1, "amendments"},
        {HEAD "`a/b~c`: {}}", INGLE_ERROR_UNKNOWN_NAME, "/a~1b~0c", 2, 1, NULL},
        {HEAD "`survey`: []}", INGLE_ERROR_TYPE, "/survey", 2, 11, "an array"},
        {HEAD "`survey`: null}", INGLE_ERROR_TYPE, "/survey", 2, 11, "left out"},
        {HEAD "`id`: 7, `survey`: {}}", INGLE_ERROR_TYPE, "/id", 2, 7, "a text"},
        {HEAD "`id`: `a\\u0000b`, `survey`: {}}", INGLE_ERROR_ENCODING, "/id", 2, 9, "\\u0000"},
        {HEAD "`note`: 1, `survey`: {}}", INGLE_ERROR_TYPE, "/note", 2, 9, NULL},
        {HEAD "`unit`: `inch`, `survey`: {}}", INGLE_ERROR_UNIT_UNKNOWN, "/unit", 2, 9, "mm"},
        {HEAD "`unit`: 1, `survey`: {}}", INGLE_ERROR_TYPE, "/unit", 2, 9, NULL},
        {HEAD "`tolerance`: 1, `survey`: {}}", INGLE_ERROR_UNIT_MISSING, "/tolerance", 2, 14, NULL},
        {HEAD "`tolerance`: `-1/8 in`, `survey`: {}}", INGLE_ERROR_NEGATIVE, "/tolerance", 2, 14,
         NULL},
        {HEAD "`tolerance`: `1 in2`, `survey`: {}}", INGLE_ERROR_DIMENSION, "/tolerance", 2, 17,
         NULL},
        {HEAD "`tolerance`: {`value`: 1, `unit`: `in`, `tolerance`: 1}, `survey`: {}}",
         INGLE_ERROR_UNKNOWN_NAME, "/tolerance/tolerance", 2, 41, NULL},
        {HEAD "`tolerance`: `200 in`, `survey`: {`flue`: {`width`: `8 in`}}}",
         INGLE_ERROR_IMPLAUSIBLE, "/tolerance", 2, 14, NULL},
    };
    EXPECT_REFUSALS(refusals);
}

static void standard_errors(void **state)
{
    (void)state;
    static const struct refusal refusals[] = {
        {"{`survey`: {}}", INGLE_ERROR_NO_STANDARD, "", 1, 1, NULL},
        {"{`standards`: [], `survey`: {}}", INGLE_ERROR_NO_STANDARD, "/standards", 1, 15, NULL},
        {"{`standards`: `irc-2021`, `survey`: {}}", INGLE_ERROR_TYPE, "/standards", 1, 15, "array"},
        {"{`standards`: [1], `survey`: {}}", INGLE_ERROR_TYPE, "/standards/0", 1, 16, NULL},
        {"{`standards`: [null], `survey`: {}}", INGLE_ERROR_TYPE, "/standards/0", 1, 16, NULL},
        {"{`standards`: [`irc-2021`, `IRC 2018`], `survey`: {}}", INGLE_ERROR_UNKNOWN_STANDARD,
         "/standards/1", 1, 28, "irc-2018"},
        {"{`standards`: [`irc-2021`,`irc-2021`], `survey`: {}}", INGLE_ERROR_DUPLICATE_NAME,
         "/standards/1", 1, 27, NULL},
    };
    EXPECT_REFUSALS(refusals);
}

static void survey_errors(void **state)
{
    (void)state;
    static const struct refusal refusals[] = {
        {HEAD "`survey`: {`hearht`: {}}}", INGLE_ERROR_UNKNOWN_NAME, "/survey/hearht", 2, 12,
         "hearth"},
        {HEAD "`survey`: {`hearth`: []}}", INGLE_ERROR_TYPE, "/survey/hearth", 2, 22, NULL},
        {HEAD "`survey`: {`hearth`: null}}", INGLE_ERROR_TYPE, "/survey/hearth", 2, 22, "left out"},
        {HEAD "`survey`: {`trim`: {}}}", INGLE_ERROR_TYPE, "/survey/trim", 2, 20, "array"},
        {HEAD "`survey`: {`trim`: [1]}}", INGLE_ERROR_TYPE, "/survey/trim/0", 2, 21, NULL},
        {HEAD "`survey`: {`trim`: [{}, {`lable`: ``}]}}", INGLE_ERROR_UNKNOWN_NAME,
         "/survey/trim/1/lable", 2, 26, "label"},
        {HEAD "`survey`: {`trim`: [{`label`: 1}]}}", INGLE_ERROR_TYPE, "/survey/trim/0/label", 2,
         31, NULL},
        {HEAD "`survey`: {`trim`: [{`combustible`: `yes`}]}}", INGLE_ERROR_TYPE,
         "/survey/trim/0/combustible", 2, 37, "true or false"},
        {HEAD "`survey`: {`trim`: [{`side`: `abvoe`}]}}", INGLE_ERROR_UNKNOWN_CHOICE,
         "/survey/trim/0/side", 2, 30, "above"},
        {HEAD "`survey`: {`trim`: [{`side`: true}]}}", INGLE_ERROR_TYPE, "/survey/trim/0/side", 2,
         30, NULL},
        {HEARTH "`frnt`: `1 in`}}}", INGLE_ERROR_UNKNOWN_NAME, "/survey/hearth/frnt", 2, 23,
         "front"},
        {HEARTH "`label`: `a`}}}", INGLE_ERROR_UNKNOWN_NAME, "/survey/hearth/label", 2, 23, NULL},
        {HEAD "`survey`: {`appliance`: {`kind`: `masonry-fireplace`, `fuel`: `wood`},\n`flue`: "
              "{`liner`: `8.5x13`, `shape`: `square`}}}",
         INGLE_ERROR_CONTRADICTION, "/survey/flue/shape", 3, 38, "flue.liner is 8.5x13"},
    };
    EXPECT_REFUSALS(refusals);
}

static void amount_errors(void **state)
{
    (void)state;
    static const char front[] = "/survey/hearth/front";
    static const char value[] = "/survey/hearth/front/value";
    static const struct refusal refusals[] = {
        {HEARTH "`front`: null}}}", INGLE_ERROR_TYPE, front, 2, 32, "left out"},
        {HEARTH "`front`: true}}}", INGLE_ERROR_TYPE, front, 2, 32, "true"},
        {HEARTH "`front`: []}}}", INGLE_ERROR_TYPE, front, 2, 32, NULL},
        {HEARTH "`front`: 20}}}", INGLE_ERROR_UNIT_MISSING, front, 2, 32, NULL},
        {HEARTH "`front`: `20`}}}", INGLE_ERROR_UNIT_MISSING, front, 2, 35, NULL},
        {HEARTH "`front`: ``}}}", INGLE_ERROR_EMPTY, front, 2, 33, NULL},
        {HEARTH "`front`: `wide`}}}", INGLE_ERROR_NUMBER, front, 2, 33, NULL},
        {HEARTH "`front`: `20 inn`}}}", INGLE_ERROR_UNIT_UNKNOWN, front, 2, 36, NULL},
        {HEARTH "`front`: `20,5 in`}}}", INGLE_ERROR_COMMA, front, 2, 35, NULL},
        {HEARTH "`front`: `\\u0032\\u0030,5 in`}}}", INGLE_ERROR_COMMA, front, 2, 45, NULL},
        {HEARTH "`front`: `12½,5 in`}}}", INGLE_ERROR_COMMA, front, 2, 36, NULL},
        {HEARTH "`front`: `1/0 in`}}}", INGLE_ERROR_ZERO_DENOMINATOR, front, 2, 35, NULL},
        {HEARTH "`front`: `20 in2`}}}", INGLE_ERROR_DIMENSION, front, 2, 36, NULL},
        {HEARTH "`front`: `20 in !`}}}", INGLE_ERROR_TRAILING_TEXT, front, 2, 39, NULL},
        {HEARTH "`front`: `20\\u0000 in`}}}", INGLE_ERROR_ENCODING, front, 2, 35, NULL},
        {HEARTH "`front`: `-20 in`}}}", INGLE_ERROR_NEGATIVE, front, 2, 32, NULL},
        {HEARTH "`front`: `2000 ft`}}}", INGLE_ERROR_IMPLAUSIBLE, front, 2, 32, "range"},
        {HEARTH "`front`: {`value`: 1e400, `unit`: `in`}}}}", INGLE_ERROR_OVERFLOW, value, 2, 42,
         NULL},
        {HEARTH "`front`: {}}}}", INGLE_ERROR_MISSING_NAME, front, 2, 32, "value"},
        {HEARTH "`front`: {`unit`: `in`}}}}", INGLE_ERROR_MISSING_NAME, front, 2, 32, "value"},
        {HEARTH "`front`: {`value`: null}}}}", INGLE_ERROR_TYPE, value, 2, 42, "left out"},
        {HEARTH "`front`: {`value`: {}}}}}", INGLE_ERROR_TYPE, value, 2, 42, NULL},
        {HEARTH "`front`: {`value`: 20}}}}", INGLE_ERROR_UNIT_MISSING, value, 2, 42, NULL},
        {HEARTH "`front`: {`value`: `20`}}}}", INGLE_ERROR_UNIT_MISSING, value, 2, 45, NULL},
        {HEARTH "`front`: {`value`: `20 in`, `unit`: `in`}}}}", INGLE_ERROR_TRAILING_TEXT, value, 2,
         42, "leave"},
        {HEARTH "`front`: {`value`: 20, `unit`: `in2`}}}}", INGLE_ERROR_DIMENSION,
         "/survey/hearth/front/unit", 2, 54, "length"},
        {HEARTH "`front`: {`value`: 20, `unit`: `inchs`}}}}", INGLE_ERROR_UNIT_UNKNOWN,
         "/survey/hearth/front/unit", 2, 54, NULL},
        {HEARTH "`front`: {`value`: 20, `unit`: 1}}}}", INGLE_ERROR_TYPE,
         "/survey/hearth/front/unit", 2, 54, NULL},
        {HEARTH "`front`: {`value`: 20, `units`: `in`}}}}", INGLE_ERROR_UNKNOWN_NAME,
         "/survey/hearth/front/units", 2, 46, "unit"},
        {HEARTH "`front`: {`value`: `20 in`, `tolerance`: 1}}}}", INGLE_ERROR_UNIT_MISSING,
         "/survey/hearth/front/tolerance", 2, 64, NULL},
        {HEARTH "`front`: {`value`: `20 in`, `tolerance`: `-1 in`}}}}", INGLE_ERROR_NEGATIVE,
         "/survey/hearth/front/tolerance", 2, 64, NULL},
        {HEARTH "`front`: {`value`: `20 in`, `tolerance`: `900 in`}}}}", INGLE_ERROR_IMPLAUSIBLE,
         "/survey/hearth/front/tolerance", 2, 64, NULL},
        {HEARTH "`front`: {`value`: `20 in`, `note`: 1}}}}", INGLE_ERROR_TYPE,
         "/survey/hearth/front/note", 2, 59, NULL},
        {HEAD "`unit`: `in`, `survey`: {`smoke-chamber`: {`slope`: 30}}}",
         INGLE_ERROR_UNIT_MISSING, "/survey/smoke-chamber/slope", 2, 53, NULL},
    };
    EXPECT_REFUSALS(refusals);
}

#define AMENDMENT(parts) "{`standards`: [`irc-2021`], `survey`: {}, `amendments`: [\n{" parts "}]}"
#define OF_IRC "`standard`: `irc-2021`, `citation`: `c`, "

static void amendment_errors(void **state)
{
    (void)state;
    static const struct refusal refusals[] = {
        {HEAD "`amendments`: {}, `survey`: {}}", INGLE_ERROR_TYPE, "/amendments", 2, 15, "array"},
        {HEAD "`amendments`: [1], `survey`: {}}", INGLE_ERROR_TYPE, "/amendments/0", 2, 16, NULL},
        {AMENDMENT("`standard`: `irc-2021`, `rule`: `hearth-front`, `set`: {`large`: `24 in`}"),
         INGLE_ERROR_MISSING_NAME, "/amendments/0", 2, 1, "citation"},
        {AMENDMENT(OF_IRC "`rule`: `hearth-front`"), INGLE_ERROR_MISSING_NAME, "/amendments/0", 2,
         1, "set"},
        {AMENDMENT("`rule_id`: 1"), INGLE_ERROR_UNKNOWN_NAME, "/amendments/0/rule_id", 2, 2, NULL},
        {AMENDMENT("`standard`: `irc-2020`, `citation`: `c`, `rule`: `hearth-front`, `set`: {}"),
         INGLE_ERROR_UNKNOWN_STANDARD, "/amendments/0/standard", 2, 14, "irc-20"},
        {AMENDMENT(OF_IRC "`rule`: `hearth-frnt`, `set`: {`large`: `24 in`}"),
         INGLE_ERROR_UNKNOWN_RULE, "/amendments/0/rule", 2, 51, "hearth-front"},
        {AMENDMENT(OF_IRC "`rule`: `hearth-front`, `set`: {`lrge`: `24 in`}"),
         INGLE_ERROR_UNKNOWN_NUMBER, "/amendments/0/set/lrge", 2, 75, "large"},
        {AMENDMENT(OF_IRC "`rule`: `hearth-front`, `set`: {}"), INGLE_ERROR_MISSING_NAME,
         "/amendments/0/set", 2, 74, NULL},
        {AMENDMENT(OF_IRC "`rule`: `hearth-front`, `set`: []"), INGLE_ERROR_TYPE,
         "/amendments/0/set", 2, 74, NULL},
        {AMENDMENT(OF_IRC "`rule`: `hearth-front`, `set`: {`large`: 24}"),
         INGLE_ERROR_UNIT_MISSING, "/amendments/0/set/large", 2, 84, NULL},
        {AMENDMENT(OF_IRC "`rule`: `hearth-front`, `set`: {`large`: null}"), INGLE_ERROR_TYPE,
         "/amendments/0/set/large", 2, 84, NULL},
        {AMENDMENT(OF_IRC "`rule`: `hearth-front`, `set`: {`large`: `24 lb`}"),
         INGLE_ERROR_UNIT_UNKNOWN, "/amendments/0/set/large", 2, 88, NULL},
        {AMENDMENT(OF_IRC "`rule`: `hearth-front`, `set`: {`large`: {`value`: `24 in`, "
                          "`tolerance`: `1 in`}}"),
         INGLE_ERROR_UNKNOWN_NAME, "/amendments/0/set/large/tolerance", 2, 103, NULL},
        {AMENDMENT(OF_IRC "`rule`: 1, `set`: {`large`: `24 in`}"), INGLE_ERROR_TYPE,
         "/amendments/0/rule", 2, 51, NULL},
        {AMENDMENT("`standard`: `irc-2021`, `citation`: 1, `rule`: `hearth-front`, `set`: {}"),
         INGLE_ERROR_TYPE, "/amendments/0/citation", 2, 38, NULL},
    };
    EXPECT_REFUSALS(refusals);
}

static void reading_errors(void **state)
{
    (void)state;
    static const struct refusal refusals[] = {
        {HEAD "`readings`: [], `survey`: {}}", INGLE_ERROR_TYPE, "/readings", 2, 13, "object"},
        {HEAD "`readings`: {`hearth-stps`: `round-up`}, `survey`: {}}", INGLE_ERROR_UNKNOWN_NAME,
         "/readings/hearth-stps", 2, 14, "hearth-steps"},
        {HEAD "`readings`: {`xyzzy`: `round-up`}, `survey`: {}}", INGLE_ERROR_UNKNOWN_NAME,
         "/readings/xyzzy", 2, 14, "hearth-steps"},
        {HEAD "`readings`: {`hearth-steps`: `whole-stps`}, `survey`: {}}",
         INGLE_ERROR_UNKNOWN_CHOICE, "/readings/hearth-steps", 2, 30, "whole-steps?"},
        {HEAD "`readings`: {`hearth-steps`: `xyzzy`}, `survey`: {}}", INGLE_ERROR_UNKNOWN_CHOICE,
         "/readings/hearth-steps", 2, 30, "round-up and whole-steps"},
        {HEAD "`readings`: {`hearth-steps`: 0}, `survey`: {}}", INGLE_ERROR_TYPE,
         "/readings/hearth-steps", 2, 30, "options"},
        {HEAD "`readings`: {`hearth-steps`: null}, `survey`: {}}", INGLE_ERROR_TYPE,
         "/readings/hearth-steps", 2, 30, "left out"},
        {HEAD "`readings`: {`note`: 0}, `survey`: {}}", INGLE_ERROR_TYPE, "/readings/note", 2, 22,
         NULL},
    };
    EXPECT_REFUSALS(refusals);
}

static void errors_of_amendments_documents(void **state)
{
    (void)state;
    static const struct refusal refusals[] = {
        {"", INGLE_ERROR_JSON, "", 1, 1, "ends"},
        {"{`amendments`: [}", INGLE_ERROR_JSON, "/amendments/0", 1, 17, NULL},
        {"{`amendments`: [], `amendments`: []}", INGLE_ERROR_DUPLICATE_NAME, "/amendments", 1, 20,
         NULL},
        {"[]", INGLE_ERROR_TYPE, "", 1, 1, "amendments"},
        {"null", INGLE_ERROR_TYPE, "", 1, 1, "left out"},
        {"{}", INGLE_ERROR_MISSING_NAME, "", 1, 1, "amendments"},
        {"{`amendmnts`: []}", INGLE_ERROR_UNKNOWN_NAME, "/amendmnts", 1, 2, "amendments?"},
        {"{`survey`: {}, `amendments`: []}", INGLE_ERROR_UNKNOWN_NAME, "/survey", 1, 2,
         "authority"},
        {"{`authority`: 1, `amendments`: []}", INGLE_ERROR_TYPE, "/authority", 1, 15, "a text"},
        {"{`authority`: `a\\u0000`, `amendments`: []}", INGLE_ERROR_ENCODING, "/authority", 1, 17,
         NULL},
        {"{`unit`: `furlong`, `amendments`: []}", INGLE_ERROR_UNIT_UNKNOWN, "/unit", 1, 10, "mm"},
        {"{`note`: 1, `amendments`: []}", INGLE_ERROR_TYPE, "/note", 1, 10, NULL},
        {"{`amendments`: {}}", INGLE_ERROR_TYPE, "/amendments", 1, 16, "array"},
        {"{`amendments`: [\n{" OF_IRC "`rule`: `hearth-frnt`, `set`: {`large`: `24 in`}}]}",
         INGLE_ERROR_UNKNOWN_RULE, "/amendments/0/rule", 2, 51, "hearth-front"},
        {"{`amendments`: [\n{" OF_IRC "`rule`: `hearth-front`, `set`: {`large`: 24}}]}",
         INGLE_ERROR_UNIT_MISSING, "/amendments/0/set/large", 2, 84, NULL},
        {"{`amendments`: [\n{" OF_IRC "`rule`: `hearth-front`, `set`: {`large`: `24 lb`}}]}",
         INGLE_ERROR_UNIT_UNKNOWN, "/amendments/0/set/large", 2, 88, NULL},
    };
    for (size_t i = 0; i < sizeof refusals / sizeof refusals[0]; i++) {
        expect_refusal(&refusals[i], amend_with(refusals[i].document));
    }
}

static void a_document_that_is_too_long(void **state)
{
    (void)state;
    size_t length = INGLE_JSON_LONGEST + 1;
    char *document = malloc(length);
    assert_non_null(document);
    memset(document, ' ', length);
    assert_int_equal(ingle_json_longest(), INGLE_JSON_LONGEST);
    document[9] = '\n';
    struct refusal expected = {"1 048 577 bytes", INGLE_ERROR_LENGTH, "", 2,
                               INGLE_JSON_LONGEST - 9, "1048576"};
    expect_refusal(&expected, ingle_json_check(json, document, length, NULL));
    expect_refusal(&expected, ingle_json_amend(json, document, length));
    /* One byte less is read, and is no survey for another reason. */
    expected = (struct refusal){"1 048 576 bytes", INGLE_ERROR_JSON, "", 2,
                                INGLE_JSON_LONGEST - 9, NULL};
    expect_refusal(&expected, ingle_json_check(json, document, length - 1, NULL));
    free(document);
}

static void a_long_name_is_reported_whole(void **state)
{
    (void)state;
    enum { LENGTH = 100000 };
    char *document = malloc(LENGTH + 16);
    assert_non_null(document);
    memset(document, 'n', LENGTH + 16);
    memcpy(document, "{\"", 2);
    memcpy(document + 2 + LENGTH, "\": 1}", 6);
    assert_int_equal(ingle_json_check(json, document, 2 + LENGTH + 5, NULL),
                     INGLE_ERROR_UNKNOWN_NAME);
    struct json_object *tree = left();
    assert_int_equal(strlen(text_of(member(tree, "error"), "at")), LENGTH + 1);
    json_object_put(tree);
    free(document);
}

static void an_error_leaves_nothing_behind(void **state)
{
    (void)state;
    assert_int_equal(check_with(DOCUMENT("`id`: `a`, ", "`19 in`"), NULL), INGLE_OK);
    char *report = strdup(ingle_json_text(json, NULL));
    assert_non_null(report);
    assert_int_equal(check_with(DOCUMENT("`unit`: `mm`, `tolerance`: 9, ", "`20 inn`"), NULL),
                     INGLE_ERROR_UNIT_UNKNOWN);
    assert_null(strstr(ingle_json_text(json, NULL), "findings"));
    assert_int_equal(check_with(DOCUMENT("`id`: `a`, ", "`19 in`"), NULL), INGLE_OK);
    assert_string_equal(ingle_json_text(json, NULL), report);
    free(report);
}

/* ---- calls ----------------------------------------------------------------------------------- */

static void errors_outside_a_document(void **state)
{
    (void)state;
    assert_int_equal(ingle_json_error(json, INGLE_ERROR_IO, "a.json \xff\xc3: not \"there\"."),
                     INGLE_ERROR_IO);
    struct json_object *tree = left();
    struct json_object *error = member(tree, "error");
    assert_string_equal(text_of(error, "code"), "io");
    assert_string_equal(text_of(error, "message"), "a.json ??: not \"there\".");
    assert_string_equal(text_of(error, "at"), "");
    assert_null(member(error, "line"));
    assert_null(member(error, "column"));
    json_object_put(tree);
    assert_int_equal(ingle_json_error(json, INGLE_ERROR_USAGE, NULL), INGLE_ERROR_USAGE);
    tree = left();
    assert_string_equal(text_of(member(tree, "error"), "message"),
                        ingle_status_text(INGLE_ERROR_USAGE));
    json_object_put(tree);
    assert_int_equal(ingle_json_error(json, INGLE_OK, NULL), INGLE_ERROR_ARGUMENT);
}

static void expect_call_error(const ingle_json_options *options, ingle_status status)
{
    assert_int_equal(check_with(DOCUMENT("", "`19 in`"), options), status);
    struct json_object *tree = left();
    assert_string_equal(text_of(member(tree, "error"), "code"), ingle_status_name(status));
    json_object_put(tree);
}

static void calls_that_are_wrong(void **state)
{
    (void)state;
    const ingle_standard *none = NULL;
    struct {
        ingle_json_options options;
        int more[2];
    } newer = {.options = {.size = sizeof newer}};
    ingle_json_options options = {.size = sizeof options};
    assert_int_equal(ingle_json_new(NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_check(NULL, "", 0, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_check(json, NULL, 1, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_check(json, NULL, 0, NULL), INGLE_ERROR_JSON);
    assert_int_equal(ingle_json_error(NULL, INGLE_ERROR_IO, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_json_verdict(NULL), INGLE_NOT_APPLICABLE);
    assert_string_equal(ingle_json_text(NULL, NULL), "");
    ingle_json_free(NULL);

    assert_int_equal(check_with(DOCUMENT("", "`19 in`"), &newer.options), INGLE_OK);
    newer.more[1] = 1;
    expect_call_error(&newer.options, INGLE_ERROR_STRUCT_NEWER);
    options.size--;
    expect_call_error(&options, INGLE_ERROR_STRUCT_SIZE);
    options = (ingle_json_options){.size = sizeof options, .standard_count = 1};
    expect_call_error(&options, INGLE_ERROR_ARGUMENT);
    options.standards = &none;
    expect_call_error(&options, INGLE_ERROR_ARGUMENT);
    options = (ingle_json_options){.size = sizeof options, .unit = ingle_unit_find("in2")};
    expect_call_error(&options, INGLE_ERROR_ARGUMENT);
    options = (ingle_json_options){.size = sizeof options, .least_basis = 5};
    expect_call_error(&options, INGLE_ERROR_ARGUMENT);
}

static void a_new_object_has_no_document(void **state)
{
    (void)state;
    ingle_json *fresh = NULL;
    size_t length = 1;
    assert_int_equal(ingle_json_new(&fresh), INGLE_OK);
    assert_string_equal(ingle_json_text(fresh, &length), "");
    assert_int_equal(length, 0);
    assert_int_equal(ingle_json_verdict(fresh), INGLE_NOT_APPLICABLE);
    ingle_json_free(fresh);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(document_errors),
        cmocka_unit_test(standard_errors),
        cmocka_unit_test(survey_errors),
        cmocka_unit_test(amount_errors),
        cmocka_unit_test(amendment_errors),
        cmocka_unit_test(reading_errors),
        cmocka_unit_test(errors_of_amendments_documents),
        cmocka_unit_test(a_document_that_is_too_long),
        cmocka_unit_test(a_long_name_is_reported_whole),
        cmocka_unit_test(an_error_leaves_nothing_behind),
        cmocka_unit_test(errors_outside_a_document),
        cmocka_unit_test(calls_that_are_wrong),
        cmocka_unit_test(a_new_object_has_no_document),
    };
    return cmocka_run_group_tests(tests, document_make, document_unmake);
}
