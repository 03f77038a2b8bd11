/* SPDX-License-Identifier: MIT */
/*
 * Survey documents in and reports out, through the public header alone.
 */
#include "document.h"

#include <stdio.h>

/* ---- the forms of an amount ------------------------------------------------------------------ */

/* What is measured shows what was read. */
static void expect_front(const char *document, const char *value, const char *unit,
                         const char *text)
{
    if (check_with(document, NULL) != INGLE_OK) {
        print_message("%s\n%s", document, ingle_json_text(json, NULL));
        fail();
    }
    struct json_object *report = left();
    struct json_object *measured = member(finding(report, "hearth-front"), "measured");
    assert_string_equal(text_of(measured, "value"), value);
    assert_string_equal(text_of(measured, "unit"), unit);
    assert_string_equal(text_of(measured, "text"), text);
    json_object_put(report);
}

static void forms_of_an_amount(void **state)
{
    (void)state;
    static const char *const inches[] = {
        DOCUMENT("", "`19 15/16 in`"),
        DOCUMENT("", "`19-15/16\\``"),
        DOCUMENT("", "`1' 7 15/16\\``"),
        DOCUMENT("", "`1 ft 7.9375 in`"),
        DOCUMENT("", "`19\\u002015/16 in`"),
        DOCUMENT("", "`506.4125 mm`"),
        DOCUMENT("", "{`value`: 19.9375, `unit`: `in`}"),
        DOCUMENT("", "{`value`: 1.99375e1, `unit`: `in`}"),
        DOCUMENT("", "{`value`: 199375E-4, `unit`: `[in_i]`}"),
        DOCUMENT("", "{`value`: `19 15/16`, `unit`: `in`}"),
        DOCUMENT("", "{`unit`: `mm`, `value`: 506.41250000000000000000000}"),
        DOCUMENT("", "{`value`: `19 15/16 in`, `note`: `measured twice`}"),
        DOCUMENT("", "{`value`: `19 15/16 in`, `tolerance`: `0 in`}"),
        DOCUMENT("`unit`: `in`, ", "19.9375"),
        DOCUMENT("`unit`: `in`, ", "{`value`: 19.9375}"),
        DOCUMENT("`unit`: `in`, ", "`506.4125 mm`"),
    };
    for (size_t i = 0; i < sizeof inches / sizeof inches[0]; i++) {
        expect_front(inches[i], "19.9375", "in", "19 15/16 in");
    }
    expect_front(DOCUMENT("`unit`: `mm`, ", "506.4125"), "506.4125", "mm", "506.4125 mm");
    expect_front(DOCUMENT("`unit`: `mm`, ", "`19 15/16 in`"), "506.4125", "mm", "506.4125 mm");
    expect_front(DOCUMENT("`unit`: `cm`, ", "50.64125"), "50.64125", "cm", "50.64125 cm");
    expect_front(DOCUMENT("`unit`: `m`, ", "0.5"), "0.5", "m", "0.5 m");
}

/* A number goes from its source text to an exact amount: no double has these digits. */
static void numbers_are_exact(void **state)
{
    (void)state;
    expect_front(DOCUMENT("`unit`: `mm`, ", "507.999999"), "507.999999", "mm", "507.999999 mm");
    expect_front(DOCUMENT("`unit`: `mm`, ", "507.99999900000000000000000000000000000000"),
                 "507.999999", "mm", "507.999999 mm");
}

static void areas_angles_choices_and_flags(void **state)
{
    (void)state;
    ingle_status status = check_with(
        "{`standards`: [`irc-2021`], `unit`: `mm`, `survey`: {`appliance`: {`kind`: "
        "`masonry-fireplace`, `fuel`: `wood`}, `opening`: {`area`: 557418.24}, `flue`: {`shape`: "
        "`round`, `net-area`: {`value`: `600`, `unit`: `cm2`}}, `smoke-chamber`: {`walls`: "
        "`corbeled`, `slope`: {`value`: 31, `unit`: `deg`}}, `trim`: [{`label`: `shelf`, `side`: "
        "`above`, `combustible`: true, `distance`: 254, `projection`: 20}, {`side`: `left`, "
        "`combustible`: false, `distance`: 10}]}}",
        NULL);
    assert_int_equal(status, INGLE_OK);
    struct json_object *report = left();
    struct json_object *area = member(finding(report, "flue-area"), "measured");
    assert_string_equal(text_of(area, "value"), "60000");
    assert_string_equal(text_of(area, "unit"), "mm2");
    struct json_object *hearth = member(finding(report, "hearth-front"), "required");
    assert_string_equal(text_of(hearth, "text"), "508 mm");
    json_object_put(report);
}

static void expect_verdict(const char *document, const char *verdict)
{
    assert_int_equal(check_with(document, NULL), INGLE_OK);
    struct json_object *report = left();
    assert_string_equal(text_of(finding(report, "hearth-front"), "verdict"), verdict);
    json_object_put(report);
}

static void tolerances(void **state)
{
    (void)state;
    expect_verdict(DOCUMENT("", "`19 15/16 in`"), "fails");
    expect_verdict(DOCUMENT("", "{`value`: `19 15/16 in`, `tolerance`: `1/8 in`}"), "too-close");
    expect_verdict(DOCUMENT("", "{`value`: 19.9375, `unit`: `in`, `tolerance`: 0.125}"),
                   "too-close");
    expect_verdict(DOCUMENT("`unit`: `in`, ", "{`value`: 19.9375, `tolerance`: 0.125}"),
                   "too-close");
    expect_verdict(DOCUMENT("`tolerance`: `1/8 in`, ", "`19 15/16 in`"), "too-close");
    expect_verdict(DOCUMENT("`tolerance`: 0.125, `unit`: `in`, ", "`19 15/16 in`"), "too-close");
    expect_verdict(DOCUMENT("`tolerance`: {`value`: 0.125, `unit`: `in`}, ", "`19 15/16 in`"),
                   "too-close");
    /* One of its own takes the place of the document's, also where it is none. The opening has the
       document's, so that 16 in or 20 in may be required. */
    expect_verdict(DOCUMENT("`tolerance`: `1/4 in`, ", "`15 7/8 in`"), "too-close");
    expect_verdict(DOCUMENT("`tolerance`: `1/4 in`, ",
                            "{`value`: `15 7/8 in`, `tolerance`: `0 in`}"),
                   "fails");
}

static void rounding_is_told(void **state)
{
    (void)state;
    assert_int_equal(check_with(DOCUMENT("", "`20 1/3 in`"), NULL), INGLE_OK);
    struct json_object *report = left();
    struct json_object *notices = member(report, "notices");
    size_t count = json_object_array_length(notices);
    assert_true(count > 0);
    const char *last = json_object_get_string(json_object_array_get_idx(notices, count - 1));
    assert_non_null(strstr(last, "/survey/hearth/front"));
    json_object_put(report);
}

/* ---- members --------------------------------------------------------------------------------- */

static void order_is_free(void **state)
{
    (void)state;
    static char first[131072];
    size_t length;
    assert_int_equal(
        check_with("{`id`: `a`, `standards`: [`irc-2021`], `unit`: `in`, `tolerance`: 0.125, "
                   "`amendments`: [{`standard`: `irc-2021`, `rule`: `hearth-front`, `set`: "
                   "{`large`: 24}, `citation`: `by-law 7-2`}], " SURVEY("19.9375") "}",
                   NULL),
        INGLE_OK);
    const char *text = ingle_json_text(json, &length);
    assert_true(length < sizeof first);
    memcpy(first, text, length + 1);
    assert_int_equal(
        check_with("{" SURVEY("19.9375") ", `amendments`: [{`citation`: `by-law 7-2`, `set`: "
                   "{`large`: 24}, `rule`: `hearth-front`, `standard`: `irc-2021`}], "
                   "`tolerance`: 0.125, `unit`: `in`, `standards`: [`irc-2021`], `id`: `a`}",
                   NULL),
        INGLE_OK);
    assert_string_equal(ingle_json_text(json, NULL), first);
}

static void an_amendment_is_in_the_finding(void **state)
{
    (void)state;
    static const char *const sets[] = {"`24 in`", "24", "{`value`: 24, `unit`: `in`}",
                                       "{`value`: `2`, `unit`: `ft`, `note`: `n`}"};
    for (size_t i = 0; i < sizeof sets / sizeof sets[0]; i++) {
        char document[1024];
        snprintf(document, sizeof document,
                 "{`standards`: [`irc-2021`], `unit`: `in`, `amendments`: [{`standard`: "
                 "`irc-2021`, `rule`: `hearth-front`, `set`: {`large`: %s, `note`: `n`}, "
                 "`citation`: `Alder Lane by-law 7-2`, `note`: `n`}], " SURVEY("`23 in`") "}",
                 sets[i]);
        assert_int_equal(check_with(document, NULL), INGLE_OK);
        struct json_object *report = left();
        struct json_object *front = finding(report, "hearth-front");
        assert_string_equal(text_of(member(front, "required"), "text"), "24 in");
        assert_string_equal(text_of(front, "amendment"), "Alder Lane by-law 7-2");
        json_object_put(report);
    }
    /* The next document knows nothing of it. */
    expect_verdict(DOCUMENT("", "`23 in`"), "meets");
}

static void notes_stand_anywhere(void **state)
{
    (void)state;
    assert_int_equal(
        check_with("{`note`: `n`, `standards`: [`irc-2021`], `survey`: {`note`: `n`, `hearth`: "
                   "{`note`: ``, `front`: {`note`: `n`, `value`: `20 in`}}, `trim`: [{`note`: "
                   "`n`, `label`: `shelf`}]}}",
                   NULL),
        INGLE_OK);
}

static void id_comes_back_as_it_was(void **state)
{
    (void)state;
    assert_int_equal(check_with("{`standards`: [`irc-2021`], `id`: `a\\`\\\\\\n\\u00e9\\u0001`, "
                                "`survey`: {}}",
                                NULL),
                     INGLE_OK);
    struct json_object *report = left();
    assert_string_equal(text_of(report, "id"), "a\"\\\n\xc3\xa9\x01");
    json_object_put(report);
    assert_int_equal(check_with("{`standards`: [`irc-2021`], `survey`: {}}", NULL), INGLE_OK);
    report = left();
    assert_null(member(report, "id"));
    json_object_put(report);
}

static size_t count_rules(struct json_object *report, const char *start)
{
    struct json_object *findings = member(report, "findings");
    size_t count = 0;
    for (size_t i = 0; i < json_object_array_length(findings); i++) {
        struct json_object *one = json_object_array_get_idx(findings, i);
        count += strncmp(text_of(one, "rule"), start, strlen(start)) == 0;
    }
    return count;
}

/* "There is no trim" is not "nobody looked". */
static void no_trim_is_not_unknown_trim(void **state)
{
    (void)state;
    assert_int_equal(check_with(DOCUMENT("", "`20 in`"), NULL), INGLE_OK);
    assert_non_null(strstr(ingle_json_text(json, NULL), "\"quantity\": \"/survey/trim\""));
    struct json_object *report = left();
    struct json_object *missing = member(finding(report, "trim-distance"), "missing");
    assert_int_equal(json_object_array_length(missing), 1);
    assert_string_equal(json_object_get_string(json_object_array_get_idx(missing, 0)),
                        "/survey/trim");
    json_object_put(report);
    assert_int_equal(check_with("{`standards`: [`irc-2021`], " SURVEY_START
                                "`20 in`}, `trim`: []}}",
                                NULL),
                     INGLE_OK);
    assert_null(strstr(ingle_json_text(json, NULL), "/survey/trim"));
    report = left();
    assert_int_equal(count_rules(report, "trim-"), 0);
    json_object_put(report);
    /* A piece of which nothing is known is named by its index. */
    assert_int_equal(check_with("{`standards`: [`irc-2021`], " SURVEY_START
                                "`20 in`}, `trim`: [{`side`: `left`, `distance`: `20 in`}, "
                                "{`side`: `above`}]}}",
                                NULL),
                     INGLE_OK);
    assert_non_null(strstr(ingle_json_text(json, NULL), "\"/survey/trim/1/distance\""));
}

/* ---- the report ------------------------------------------------------------------------------ */

static void assert_order(struct json_object *object, const char *const *names, size_t count)
{
    size_t at = 0;
    json_object_object_foreach(object, name, value)
    {
        (void)value;
        while (at < count && strcmp(names[at], name) != 0) {
            at++;
        }
        if (at == count) {
            print_message("%s is not known, or not at its place\n", name);
            fail();
        }
    }
}

static void members_stand_in_the_order_of_the_contract(void **state)
{
    (void)state;
    static const char *const top[] = {"id",        "verdict",  "findings",
                                      "unmeasured", "unjudged", "standards",
                                      "notices",   "ingle"};
    static const char *const parts[] = {
        "standard", "rule",      "section",  "basis",    "subject", "label",   "verdict",
        "relation", "measured",  "required", "margin",   "reading", "amendment", "citation",
        "sentence", "missing",   "working",  "remedy",   "caution", "refer",   "inspection"};
    static const char *const step[] = {"step", "expression", "substituted", "result"};
    static const char *const remedy[] = {"change", "to", "text"};
    assert_int_equal(check_with(DOCUMENT("`id`: `a`, ", "`19 15/16 in`"), NULL), INGLE_OK);
    struct json_object *report = left();
    assert_order(report, top, sizeof top / sizeof top[0]);
    struct json_object *findings = member(report, "findings");
    for (size_t i = 0; i < json_object_array_length(findings); i++) {
        assert_order(json_object_array_get_idx(findings, i), parts, sizeof parts / sizeof parts[0]);
    }
    struct json_object *front = finding(report, "hearth-front");
    struct json_object *working = member(front, "working");
    assert_true(json_object_array_length(working) > 0);
    for (size_t i = 0; i < json_object_array_length(working); i++) {
        assert_order(json_object_array_get_idx(working, i), step, sizeof step / sizeof step[0]);
    }
    assert_order(json_object_array_get_idx(member(front, "remedy"), 0), remedy, 3);
    json_object_put(report);
}

/* The finding that the contract shows, word for word where it has words. */
static void the_contract_s_example(void **state)
{
    (void)state;
    assert_int_equal(check_with(DOCUMENT("", "`19 15/16 in`"), NULL), INGLE_OK);
    assert_int_equal(ingle_json_verdict(json), INGLE_FAILS);
    struct json_object *report = left();
    assert_string_equal(text_of(report, "verdict"), "fails");
    assert_string_equal(text_of(report, "ingle"), ingle_version());
    struct json_object *front = finding(report, "hearth-front");
    assert_string_equal(text_of(front, "standard"), "irc-2021");
    assert_string_equal(text_of(front, "section"), "R1001.10");
    assert_string_equal(text_of(front, "subject"), "/survey/hearth/front");
    assert_string_equal(text_of(front, "label"), "hearth extension in front of the opening");
    assert_string_equal(text_of(front, "verdict"), "fails");
    assert_string_equal(text_of(front, "relation"), "at-least");
    assert_string_equal(text_of(member(front, "required"), "value"), "20");
    assert_string_equal(text_of(member(front, "margin"), "value"), "-0.0625");
    assert_string_equal(text_of(member(front, "margin"), "text"), "-1/16 in");
    struct json_object *remedy = json_object_array_get_idx(member(front, "remedy"), 0);
    assert_string_equal(text_of(remedy, "change"), "/survey/hearth/front");
    assert_string_equal(text_of(member(remedy, "to"), "text"), "20 in");
    json_object_put(report);
}

static void options_are_heard(void **state)
{
    (void)state;
    const ingle_standard *older = ingle_standard_find("irc-2018");
    ingle_json_options options = {.size = sizeof options, .one_line = 1};
    options.standards = &older;
    options.standard_count = 1;
    options.unit = ingle_unit_find("mm");
    options.without_working = 1;
    assert_int_equal(check_with("{" SURVEY("`20 in`") "}", &options), INGLE_OK);
    size_t length;
    const char *text = ingle_json_text(json, &length);
    assert_ptr_equal(strchr(text, '\n'), text + length - 1);
    struct json_object *report = left();
    struct json_object *front = finding(report, "hearth-front");
    assert_string_equal(text_of(front, "standard"), "irc-2018");
    assert_string_equal(text_of(member(front, "measured"), "text"), "508 mm");
    assert_null(member(front, "working"));
    size_t fewer = json_object_array_length(member(report, "findings"));
    json_object_put(report);
    options.with_not_applicable = 1;
    assert_int_equal(check_with("{" SURVEY("`20 in`") "}", &options), INGLE_OK);
    report = left();
    assert_true(json_object_array_length(member(report, "findings")) > fewer);
    json_object_put(report);
}

static void both_layouts_say_the_same(void **state)
{
    (void)state;
    ingle_json_options options = {.size = sizeof options};
    assert_int_equal(check_with(DOCUMENT("", "`19 in`"), &options), INGLE_OK);
    assert_non_null(strstr(ingle_json_text(json, NULL), "\n  \"verdict\": \"fails\""));
    struct json_object *indented = left();
    options.one_line = 1;
    assert_int_equal(check_with(DOCUMENT("", "`19 in`"), &options), INGLE_OK);
    struct json_object *line = left();
    assert_true(json_object_equal(indented, line));
    json_object_put(indented);
    json_object_put(line);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(forms_of_an_amount),
        cmocka_unit_test(numbers_are_exact),
        cmocka_unit_test(areas_angles_choices_and_flags),
        cmocka_unit_test(tolerances),
        cmocka_unit_test(rounding_is_told),
        cmocka_unit_test(order_is_free),
        cmocka_unit_test(an_amendment_is_in_the_finding),
        cmocka_unit_test(notes_stand_anywhere),
        cmocka_unit_test(id_comes_back_as_it_was),
        cmocka_unit_test(no_trim_is_not_unknown_trim),
        cmocka_unit_test(members_stand_in_the_order_of_the_contract),
        cmocka_unit_test(the_contract_s_example),
        cmocka_unit_test(options_are_heard),
        cmocka_unit_test(both_layouts_say_the_same),
    };
    return cmocka_run_group_tests(tests, document_make, document_unmake);
}
