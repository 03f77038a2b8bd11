/* SPDX-License-Identifier: MIT */
/*
 * The words that findings are made of: whatever a rule judges can be said, every matter says who
 * looks next, and nothing is called safe.
 */
#include "standards/rule.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

static void each_rule(void (*look)(const struct ingle_rule *rule))
{
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        const ingle_standard *standard = ingle_standard_at(i);
        for (size_t r = 0; r < ingle_standard_rule_count(standard); r++) {
            look(ingle_standard_rule_at(standard, r));
        }
    }
}

/* ---- what is seen --------------------------------------------------------------------------- */

static size_t judged_states;

/* Names what has no words, for whoever has just added it. */
static void assert_said(const char *words, const char *of)
{
    if (words == NULL) {
        fail_msg("%s has no words for what a rule judges, or for whom it sends", of);
    }
}

static void assert_clause(const char *clause, const char *of)
{
    assert_said(clause, of);
    assert_true(clause[0] >= 'a' && clause[0] <= 'z');
    assert_true(clause[strlen(clause) - 1] != '.');
    judged_states++;
}

static void assert_clauses(const struct ingle_quantity *quantity)
{
    if (quantity->dimension == INGLE_FLAG) {
        assert_clause(quantity->when[0], quantity->id);
        assert_clause(quantity->when[1], quantity->id);
        return;
    }
    for (size_t i = 0; i < quantity->choice_count; i++) {
        assert_clause(quantity->choices[i].when, quantity->id);
    }
}

/* "; the rule asks that it be": of the state that the rule wants, or of any but the one it bars. */
static void assert_wish(const struct ingle_quantity *quantity, ingle_relation relation,
                        int64_t state)
{
    bool wanted = relation == INGLE_IS;
    const char *wish = quantity->dimension == INGLE_FLAG ? quantity->asks[wanted ? state : !state]
                       : wanted                          ? quantity->choices[state].asks
                                                         : quantity->choices[state].bars;
    assert_said(wish, quantity->id);
    assert_true(strncmp(wish, "that ", 5) == 0 || strncmp(wish, "for ", 4) == 0);
}

static void look_at_states(const struct ingle_rule *rule)
{
    if (rule->relation != INGLE_IS && rule->relation != INGLE_IS_NOT) {
        return;
    }
    for (size_t q = 0; q < matter_judged_count(rule->matter); q++) {
        const struct ingle_quantity *quantity = &quantities[matters[rule->matter].judged[q]];
        assert_clauses(quantity);
        assert_wish(quantity, rule->relation, rule->numbers[0]);
    }
}

static void whatever_a_rule_judges_by_eye_can_be_said(void **state)
{
    (void)state;
    each_rule(look_at_states);
    assert_true(judged_states > 0);
}

/* ---- who looks next ------------------------------------------------------------------------- */

static void every_matter_says_who_looks_next(void **state)
{
    (void)state;
    for (enum matter_id i = 0; i < MATTER_COUNT; i++) {
        const char *refer = matters[i].refer;
        assert_said(refer, matters[i].id);
        assert_true(refer[strlen(refer) - 1] != '.');
    }
}

/* An inspection names its level and whose levels those are, and how that is known. */
static void every_inspection_names_its_level_and_its_source(void **state)
{
    (void)state;
    size_t called_for = 0;
    for (enum matter_id i = 0; i < MATTER_COUNT; i++) {
        const char *inspection = matters[i].inspection;
        if (inspection == NULL) {
            continue;
        }
        called_for++;
        assert_int_equal(strncmp(inspection, "Level ", 6), 0);
        assert_non_null(strstr(inspection, "inspection by NFPA 211"));
        assert_true(strstr(inspection, "cited") != NULL || strstr(inspection, "cite)") != NULL);
        assert_int_equal(inspection[strlen(inspection) - 1], '.');
    }
    assert_true(called_for > 0);
}

/*
 * Cited of the levels is what calls for each: that the use stays or changes, what was done or
 * happened, and that the flue is free of deposits and blockage belongs to level 1 (facts `insp-L1`
 * to `insp-L3` of the reference for stoves and inserts). That what is seen calls for one is our
 * reading.
 */
static void what_is_our_reading_is_not_called_cited(void **state)
{
    (void)state;
    static const char *const cited[] = {
        "fuel", "at least once a year", "sold or transferred", "an appliance was", "relined",
        "something happened", "chimney fire", "hazard is suspected", "free",
        "on the flue was changed"};
    for (enum matter_id i = 0; i < MATTER_COUNT; i++) {
        const char *inspection = matters[i].inspection;
        bool calls = inspection == NULL || strstr(inspection, "(cited)") == NULL;
        for (size_t c = 0; c < COUNT_OF(cited) && !calls; c++) {
            calls = strstr(inspection, cited[c]) != NULL;
        }
        if (!calls) {
            fail_msg("%s: nothing that is cited calls for this: %s", matters[i].id, inspection);
        }
    }
}

/* ---- what to leave undone, and what to do --------------------------------------------------- */

static bool has_any(const char *text, const char *const *words, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        if (strstr(text, words[i]) != NULL) {
            return true;
        }
    }
    return false;
}

/* Whoever reads that there is fire, gas or something that falls also reads what not to do. */
static void every_danger_comes_with_what_not_to_do(void **state)
{
    (void)state;
    static const char *const dangers[] = {
        "carbon monoxide", "smoke", "Smoke", "char", "burn", "light it", "lights", "ember", "Ember",
        "spark", "flame", "heat", "Heat", "creosote", "hot gas", "Hot gas",
        "cracks", "crack or fall", "leaks"};
    static const char *const bans[] = {
        "Do not ",     "do not ",      "Burn no",   "burn nothing", "Light no",  "light none",
        "Light it by", "Use neither",  "Keep ",     "Move ",        "Count no ", "Clear it away",
        "Let no fire", "Open a window", "Look ",    "Never ",       "never close"};
    size_t dangerous = 0;
    for (enum matter_id i = 0; i < MATTER_COUNT; i++) {
        if (!has_any(matters[i].caution, dangers, COUNT_OF(dangers))) {
            continue;
        }
        dangerous++;
        if (!has_any(matters[i].caution, bans, COUNT_OF(bans))) {
            fail_msg("%s does not say what not to do: %s", matters[i].id, matters[i].caution);
        }
    }
    assert_true(dangerous > MATTER_COUNT / 2);
}

/* What no remedy can change is put right by what the matter says. */
static void whatever_no_remedy_changes_can_be_put_right(void **state)
{
    (void)state;
    for (enum matter_id i = 0; i < MATTER_COUNT; i++) {
        const char *mend = matters[i].mend;
        if (matter_change_count(i) == 0) {
            assert_said(mend, matters[i].id);
        }
        if (mend != NULL) {
            assert_true(mend[0] >= 'A' && mend[0] <= 'Z');
            assert_int_equal(mend[strlen(mend) - 1], '.');
        }
    }
}

/* ---- never ---------------------------------------------------------------------------------- */

static size_t texts_seen;

static void assert_never_safe(const char *text)
{
    if (text != NULL) {
        texts_seen++;
        assert_null(strstr(text, "safe "));
        assert_null(strstr(text, "safe."));
        assert_null(strstr(text, "safe,"));
        assert_null(strstr(text, "safely"));
        assert_null(strstr(text, "Safe"));
    }
}

static void look_at_a_quantity(const struct ingle_quantity *quantity)
{
    const char *const texts[] = {quantity->label,    quantity->how,     quantity->increase,
                                 quantity->decrease, quantity->when[0], quantity->when[1],
                                 quantity->asks[0],  quantity->asks[1]};
    for (size_t i = 0; i < COUNT_OF(texts); i++) {
        assert_never_safe(texts[i]);
    }
    for (size_t i = 0; i < quantity->choice_count; i++) {
        assert_never_safe(quantity->choices[i].label);
        assert_never_safe(quantity->choices[i].when);
        assert_never_safe(quantity->choices[i].asks);
        assert_never_safe(quantity->choices[i].bars);
    }
}

static void look_at_a_row(const struct ingle_rule *rule)
{
    assert_never_safe(rule->reading);
    assert_never_safe(ingle_rule_formula_text(rule));
}

static void nothing_is_called_safe(void **state)
{
    (void)state;
    for (size_t i = 0; i < QUANTITY_COUNT; i++) {
        look_at_a_quantity(&quantities[i]);
    }
    for (enum matter_id i = 0; i < MATTER_COUNT; i++) {
        assert_never_safe(matters[i].label);
        assert_never_safe(matters[i].caution);
        assert_never_safe(matters[i].mend);
        assert_never_safe(matters[i].refer);
        assert_never_safe(matters[i].inspection);
    }
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        assert_never_safe(ingle_standard_note(ingle_standard_at(i)));
    }
    for (size_t i = 0; i < ingle_reading_count(); i++) {
        assert_never_safe(ingle_reading_label(ingle_reading_at(i)));
    }
    each_rule(look_at_a_row);
    assert_true(texts_seen > QUANTITY_COUNT + MATTER_COUNT);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(whatever_a_rule_judges_by_eye_can_be_said),
        cmocka_unit_test(every_matter_says_who_looks_next),
        cmocka_unit_test(every_inspection_names_its_level_and_its_source),
        cmocka_unit_test(what_is_our_reading_is_not_called_cited),
        cmocka_unit_test(every_danger_comes_with_what_not_to_do),
        cmocka_unit_test(whatever_no_remedy_changes_can_be_put_right),
        cmocka_unit_test(nothing_is_called_safe),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
