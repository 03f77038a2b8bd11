/* SPDX-License-Identifier: MIT */
/* The index of standards, what every row has to have, and the numbers that changed by edition. */
#include "measure/amounts.h"
#include "standards/rule.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

/* Calls with every rule of every standard. */
static void each_rule(void (*look)(const ingle_standard *standard, const ingle_rule *rule))
{
    const ingle_standard *standard;
    for (size_t s = 0; (standard = ingle_standard_at(s)) != NULL; s++) {
        const ingle_rule *rule;
        for (size_t r = 0; (rule = ingle_standard_rule_at(standard, r)) != NULL; r++) {
            look(standard, rule);
        }
    }
}

static const ingle_standard *standard_of(const char *id)
{
    const ingle_standard *standard = ingle_standard_find(id);
    assert_non_null(standard);
    return standard;
}

/* The only row of a rule id in a standard. */
static const ingle_rule *row_of(const char *standard, const char *id)
{
    const ingle_rule *found = NULL;
    const ingle_rule *rule;
    for (size_t r = 0; (rule = ingle_standard_rule_at(standard_of(standard), r)) != NULL; r++) {
        if (strcmp(ingle_rule_id(rule), id) == 0) {
            assert_null(found);
            found = rule;
        }
    }
    assert_non_null(found);
    return found;
}

static int64_t number_of(const char *standard, const char *id, const char *name)
{
    const ingle_rule *rule = row_of(standard, id);
    for (size_t n = 0; n < ingle_rule_number_count(rule); n++) {
        if (strcmp(ingle_rule_number_name(rule, n), name) == 0) {
            ingle_amount amount = {-1, 0, 0};
            assert_int_equal(ingle_rule_number_at(rule, n, &amount), INGLE_OK);
            return amount.value;
        }
    }
    fail_msg("%s has no number %s", id, name);
    return -1;
}

/* ---- the index ------------------------------------------------------------------------------ */

static void ids_are_unique_and_found(void **state)
{
    (void)state;
    assert_true(ingle_standard_count() > 0);
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        const ingle_standard *standard = ingle_standard_at(i);
        const char *id = ingle_standard_id(standard);
        assert_true(strlen(id) > 0);
        assert_int_equal(strspn(id, "abcdefghijklmnopqrstuvwxyz0123456789-"), strlen(id));
        assert_ptr_equal(ingle_standard_find(id), standard);
        for (size_t j = 0; j < i; j++) {
            assert_string_not_equal(ingle_standard_id(ingle_standard_at(j)), id);
        }
    }
    assert_null(ingle_standard_at(ingle_standard_count()));
    assert_null(ingle_standard_find("irc"));
    assert_null(ingle_standard_find(""));
    assert_null(ingle_standard_find(NULL));
}

static void standards_describe_themselves(void **state)
{
    (void)state;
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        const ingle_standard *standard = ingle_standard_at(i);
        char year[16];
        int32_t edition = ingle_standard_edition(standard);
        assert_true(strlen(ingle_standard_title(standard)) > 0);
        assert_true(strlen(ingle_standard_place(standard)) > 0);
        const char *note = ingle_standard_note(standard);
        assert_int_equal(note[strlen(note) - 1], '.');
        assert_non_null(ingle_standard_unit(standard));
        assert_int_equal(ingle_unit_dimension(ingle_standard_unit(standard)), INGLE_LENGTH);
        assert_true(ingle_standard_rule_count(standard) > 0);
        /* An edition ends the id. What has no stated one may name the years it was in use. */
        snprintf(year, sizeof year, "-%d", (int)edition);
        const char *id = ingle_standard_id(standard);
        if (edition != 0) {
            assert_true(edition > 1900 && edition < 2100);
            assert_string_equal(id + strlen(id) - strlen(year), year);
        }
    }
}

static void editions_of_one_title_differ(void **state)
{
    (void)state;
    static const char *const editions[] = {"irc-2012", "irc-2015", "irc-2018", "irc-2021",
                                           "irc-2024"};
    for (size_t i = 0; i < sizeof editions / sizeof editions[0]; i++) {
        assert_string_equal(ingle_standard_title(standard_of(editions[i])),
                            ingle_standard_title(standard_of(editions[0])));
        assert_int_equal(ingle_standard_edition(standard_of(editions[i])),
                         atoi(editions[i] + 4));
    }
    assert_int_equal(ingle_standard_edition(standard_of("common-practice-us")), 0);
}

/* ---- the rows ------------------------------------------------------------------------------- */

static void look_at_origin(const ingle_standard *standard, const ingle_rule *rule)
{
    ingle_basis basis = ingle_rule_basis(rule);
    assert_true(strlen(ingle_rule_section(rule)) > 0);
    assert_non_null(ingle_basis_name(basis));
    assert_non_null(ingle_relation_name(ingle_rule_relation(rule)));
    /* Common practice has no publication, so no edition. */
    assert_true(basis != INGLE_BASIS_COMMON_PRACTICE || ingle_standard_edition(standard) == 0);
    assert_true(strlen(ingle_rule_id(rule)) > 0);
    assert_int_equal(strspn(ingle_rule_id(rule), "abcdefghijklmnopqrstuvwxyz-"),
                     strlen(ingle_rule_id(rule)));
    assert_true(strlen(ingle_rule_label(rule)) > 0);
    const char *reading = ingle_rule_reading(rule);
    assert_true(reading == NULL || reading[strlen(reading) - 1] == '.');
}

static void look_at_edition(const ingle_standard *standard, const ingle_rule *rule)
{
    int32_t edition = ingle_standard_edition(standard);
    int32_t since = ingle_rule_since(rule), until = ingle_rule_until(rule);
    assert_true(since == 0 || since <= edition);
    assert_true(until == 0 || until >= edition);
    assert_true(since == 0 || until == 0 || since <= until);
}

static void look_at_quantities(const ingle_standard *standard, const ingle_rule *rule)
{
    (void)standard;
    size_t count = ingle_rule_quantity_count(rule);
    const ingle_quantity *first = ingle_rule_quantity_at(rule, 0);
    assert_true(count > 0);
    assert_null(ingle_rule_quantity_at(rule, count));
    for (size_t q = 0; q < count; q++) {
        const ingle_quantity *judged = ingle_rule_quantity_at(rule, q);
        ingle_dimension dimension = ingle_quantity_dimension(judged);
        bool seen = dimension == INGLE_CHOICE || dimension == INGLE_FLAG;
        bool compared = ingle_rule_relation(rule) != INGLE_IS &&
                        ingle_rule_relation(rule) != INGLE_IS_NOT;
        assert_int_equal(seen, !compared);
        assert_int_equal(dimension, ingle_quantity_dimension(first));
    }
}

/* Numbers of the judged quantity's own kind lie where it can lie; ratios are no slips either. */
static void look_at_numbers(const ingle_standard *standard, const ingle_rule *rule)
{
    (void)standard;
    ingle_amount most, amount = {0, 0, 0};
    size_t count = ingle_rule_number_count(rule);
    assert_true(count > 0 || rule->table != NULL || ingle_rule_input_count(rule) > 0 ||
                    rule->formula == &formula_not_printed);
    assert_null(ingle_rule_number_name(rule, count));
    assert_int_equal(ingle_rule_number_at(rule, count, &amount), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_rule_number_at(rule, 0, NULL), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_rule_number_at(NULL, 0, &amount), INGLE_ERROR_ARGUMENT);
    ingle_quantity_range(ingle_rule_quantity_at(rule, 0), NULL, &most);
    for (size_t n = 0; n < count; n++) {
        assert_int_equal(ingle_rule_number_at(rule, n, &amount), INGLE_OK);
        assert_true(strlen(ingle_rule_number_name(rule, n)) > 0);
        assert_true(amount.value >= 0);
        if (amount.dimension == most.dimension) {
            assert_true(amount.value <= most.value);
        }
        if (amount.dimension == INGLE_RATIO) {
            assert_true(amount.value > 0 && amount.value <= 1000 * INGLE_RATIO_ONE);
        }
        for (size_t m = 0; m < n; m++) {
            assert_string_not_equal(ingle_rule_number_name(rule, m),
                                    ingle_rule_number_name(rule, n));
        }
    }
    /* Nothing stands behind the numbers that have a name. */
    for (size_t n = count; n < FORMULA_NUMBERS; n++) {
        assert_true(rule->numbers[n] == 0);
    }
}

static void look_at_formula(const ingle_standard *standard, const ingle_rule *rule)
{
    (void)standard;
    bool asks_input = false;
    assert_true(strlen(ingle_rule_formula(rule)) > 0);
    const char *text = ingle_rule_formula_text(rule);
    assert_int_equal(text[strlen(text) - 1], '.');
    for (size_t d = 0; d < rule->formula->driver_count; d++) {
        asks_input = asks_input || rule->formula->drivers[d].quantity == THE_INPUT;
    }
    assert_true(!asks_input || ingle_rule_input_count(rule) > 0);
    assert_true(rule->formula != &formula_fixed || ingle_rule_input_count(rule) == 0);
    for (size_t i = 0; i < ingle_rule_input_count(rule); i++) {
        assert_non_null(ingle_rule_input_at(rule, i));
    }
    assert_null(ingle_rule_input_at(rule, ingle_rule_input_count(rule)));
}

static void rows_say_where_they_come_from(void **state)
{
    (void)state;
    each_rule(look_at_origin);
}

static void rows_belong_to_their_edition(void **state)
{
    (void)state;
    each_rule(look_at_edition);
    struct ingle_rule rule = {.since = 2015, .until = 2021};
    assert_false(rule_in_edition(&rule, 2012));
    assert_true(rule_in_edition(&rule, 2015));
    assert_true(rule_in_edition(&rule, 2021));
    assert_false(rule_in_edition(&rule, 2024));
}

static void rows_judge_amounts_of_one_kind(void **state)
{
    (void)state;
    each_rule(look_at_quantities);
}

static void numbers_lie_where_they_can(void **state)
{
    (void)state;
    each_rule(look_at_numbers);
}

static void rows_have_what_their_formula_asks(void **state)
{
    (void)state;
    each_rule(look_at_formula);
}

static void rows_can_be_counted(void **state)
{
    (void)state;
    for (size_t i = 0; i < ingle_standard_count(); i++) {
        const ingle_standard *standard = ingle_standard_at(i);
        size_t count = ingle_standard_rule_count(standard);
        for (size_t r = 0; r < count; r++) {
            assert_non_null(ingle_standard_rule_at(standard, r));
        }
        assert_null(ingle_standard_rule_at(standard, count));
        assert_null(ingle_standard_rule_at(standard, SIZE_MAX));
    }
}

static bool matter_used[MATTER_COUNT];

static void note_matter(const ingle_standard *standard, const ingle_rule *rule)
{
    (void)standard;
    matter_used[rule->matter] = true;
}

static void every_matter_is_used_and_whole(void **state)
{
    (void)state;
    each_rule(note_matter);
    for (enum matter_id i = 0; i < MATTER_COUNT; i++) {
        assert_true(matter_used[i]);
        assert_true(matter_judged_count(i) > 0);
        const char *caution = matters[i].caution;
        assert_int_equal(caution[strlen(caution) - 1], '.');
        assert_null(strstr(caution, " safe"));
        for (enum matter_id j = 0; j < i; j++) {
            assert_string_not_equal(matters[i].id, matters[j].id);
        }
    }
}

/* Every quantity a remedy can change says how, in the direction that helps. */
static void every_remedy_has_its_words(void **state)
{
    (void)state;
    for (enum matter_id i = 0; i < MATTER_COUNT; i++) {
        for (size_t c = 0; c < matter_change_count(i); c++) {
            const struct ingle_quantity *change = &quantities[matters[i].changes[c]];
            assert_true(change->dimension == INGLE_CHOICE || change->increase != NULL ||
                        change->decrease != NULL);
        }
    }
}

/* ---- conditions ----------------------------------------------------------------------------- */

static void conditions_are_written(void **state)
{
    (void)state;
    static const char due[] = "appliance.kind is masonry-fireplace and trim.place is on-face and "
                              "trim.combustible is yes";
    const ingle_rule *rule = row_of("irc-2021", "trim-distance");
    size_t length = 0;
    assert_int_equal(ingle_rule_condition_text(rule, NULL, 0, &length), INGLE_OK);
    assert_int_equal(length, strlen(due));
    for (size_t capacity = 1; capacity <= sizeof due + 1; capacity++) {
        char *buffer = malloc(capacity);
        assert_non_null(buffer);
        size_t written = capacity <= strlen(due) ? capacity - 1 : strlen(due);
        assert_int_equal(ingle_rule_condition_text(rule, buffer, capacity, &length),
                         capacity <= strlen(due) ? INGLE_CUT : INGLE_OK);
        assert_int_equal(length, strlen(due));
        assert_memory_equal(buffer, due, written);
        assert_int_equal(buffer[written], '\0');
        free(buffer);
    }
    assert_int_equal(ingle_rule_condition_text(NULL, NULL, 0, &length), INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_rule_condition_text(rule, NULL, 1, &length), INGLE_ERROR_ARGUMENT);
}

static void look_at_condition(const ingle_standard *standard, const ingle_rule *rule)
{
    char text[400], id[64];
    (void)standard;
    assert_int_equal(ingle_rule_condition_text(rule, text, sizeof text, NULL), INGLE_OK);
    assert_int_equal(strlen(text) > 0, rule->when[0].test != 0);
    if (strlen(text) > 0) {
        assert_int_equal(sscanf(text, "%63s is", id), 1);
        assert_non_null(ingle_quantity_find(id));
    }
}

static void every_condition_can_be_told(void **state)
{
    (void)state;
    each_rule(look_at_condition);
}

/* ---- numbers by edition --------------------------------------------------------------------- */

/* IRC R1001.10 and Table R1001.1 items B and C, all editions; R1001.6; R1001.9; R1003.15.1. */
static void the_same_in_every_edition(void **state)
{
    (void)state;
    static const char *const editions[] = {"irc-2012", "irc-2015", "irc-2018", "irc-2021",
                                           "irc-2024"};
    for (size_t i = 0; i < sizeof editions / sizeof editions[0]; i++) {
        const char *irc = editions[i];
        assert_true(number_of(irc, "hearth-front", "threshold") == SQUARE_INCHES(864));
        assert_true(number_of(irc, "hearth-front", "small") == INCHES(16));
        assert_true(number_of(irc, "hearth-front", "large") == INCHES(20));
        assert_true(number_of(irc, "hearth-side", "small") == INCHES(8));
        assert_true(number_of(irc, "hearth-side", "large") == INCHES(12));
        assert_true(number_of(irc, "firebox-depth", "limit") == INCHES(20));
        assert_true(number_of(irc, "hearth-thickness", "limit") == INCHES(4));
        assert_true(number_of(irc, "trim-distance", "limit") == INCHES(6));
        assert_true(number_of(irc, "flue-area", "round") == INGLE_RATIO_ONE / 12);
        assert_true(number_of(irc, "flue-area", "square") == INGLE_RATIO_ONE / 10);
        assert_true(number_of(irc, "flue-area", "rectangular") == INGLE_RATIO_ONE / 10);
        assert_true(number_of(irc, "flue-area", "long") == INGLE_RATIO_ONE / 8);
        assert_true(number_of(irc, "flue-area", "aspect") == 2 * INGLE_RATIO_ONE);
    }
}

/* IRC R1001.11 exception 3: 12 in through 2021, by the opening's size in 2024. */
static void abutting_trim_changed_in_2024(void **state)
{
    (void)state;
    assert_true(number_of("irc-2012", "trim-abutting", "limit") == INCHES(12));
    assert_true(number_of("irc-2021", "trim-abutting", "limit") == INCHES(12));
    assert_int_equal(ingle_rule_until(row_of("irc-2021", "trim-abutting")), 2021);
    assert_int_equal(ingle_rule_since(row_of("irc-2024", "trim-abutting")), 2024);
    assert_true(number_of("irc-2024", "trim-abutting", "threshold") == SQUARE_INCHES(864));
    assert_true(number_of("irc-2024", "trim-abutting", "small") == INCHES(8));
    assert_true(number_of("irc-2024", "trim-abutting", "large") == INCHES(12));
    assert_string_equal(ingle_rule_section(row_of("irc-2024", "trim-abutting")),
                        "R1001.11 exception 3");
}

/* ---- liners --------------------------------------------------------------------------------- */

/* IRC Tables R1003.14(1) and R1003.14(2), 2012 to 2024, in printed order. */
static const struct {
    const char *liner;
    int net_area;
} printed[] = {
    {"round-6", 28},  {"round-7", 38},   {"round-8", 50},  {"round-10", 78}, {"round-10.75", 90},
    {"round-12", 113}, {"round-15", 176}, {"round-18", 254}, {"4.5x8.5", 23}, {"4.5x13", 34},
    {"8x8", 42},      {"8.5x8.5", 49},   {"8x12", 67},     {"8.5x13", 76},   {"12x12", 102},
    {"8.5x18", 101},  {"13x13", 127},    {"12x16", 131},   {"13x18", 173},   {"16x16", 181},
    {"16x20", 222},   {"18x18", 233},    {"20x20", 298},   {"20x24", 335},   {"24x24", 431},
};

static void liners_are_as_printed(void **state)
{
    (void)state;
    for (size_t s = 0; s < ingle_standard_count(); s++) {
        const ingle_standard *standard = ingle_standard_at(s);
        if (strncmp(ingle_standard_id(standard), "irc-", 4) != 0 ||
            ingle_standard_edition(standard) < 2012) {
            continue; /* of the first two editions no liner table is known */
        }
        assert_int_equal(ingle_standard_liner_count(standard), 25);
        for (size_t i = 0; i < 25; i++) {
            const char *liner = NULL, *table = NULL;
            ingle_amount area = {0, 0, 0};
            assert_int_equal(ingle_standard_liner_at(standard, i, &liner, &area, &table),
                             INGLE_OK);
            assert_string_equal(liner, printed[i].liner);
            assert_true(area.value == printed[i].net_area * SQUARE_INCHES(1));
            assert_int_equal(area.dimension, INGLE_AREA);
            assert_string_equal(table, i < 8 ? "Table R1003.14(1)" : "Table R1003.14(2)");
        }
    }
}

/* The size in a liner's name is the one it is judged by; only one reaches 2:1 inside alone. */
static void liners_are_named_by_their_size(void **state)
{
    (void)state;
    const ingle_standard *standard = standard_of("irc-2021");
    for (size_t i = 0; i < standard->liner_count; i++) {
        const struct liner *liner = &standard->liners[i];
        const char *name = quantities[QUANTITY_FLUE_LINER].choices[liner->liner].id;
        double width = 0, depth = 0;
        if (sscanf(name, "round-%lf", &width) != 1) {
            assert_int_equal(sscanf(name, "%lfx%lf", &width, &depth), 2);
        }
        assert_true((double)liner->width == width * 25400000.0);
        assert_true((double)liner->depth == depth * 25400000.0);
        assert_int_equal(liner->long_inside, strcmp(name, "4.5x8.5") == 0);
    }
}

/* Common practice, no publication: only materials on which what is said does not conflict. */
static void materials_are_those_without_conflict(void **state)
{
    (void)state;
    static const struct {
        const char *material;
        int64_t thousandths;
    } known[] = {{"common-brick", 200}, {"face-brick", 111}, {"cement-mortar", 200},
                 {"ceramic-tile", 80},  {"slate", 100},      {"granite", 83}};
    const ingle_standard *standard = standard_of("common-practice-us");
    const char *material = NULL;
    ingle_amount r_value = {0, 0, 0};
    assert_int_equal(ingle_standard_material_count(standard), 6);
    for (size_t i = 0; i < 6; i++) {
        assert_int_equal(ingle_standard_material_at(standard, i, &material, &r_value), INGLE_OK);
        assert_string_equal(material, known[i].material);
        assert_true(r_value.value == RATIO(known[i].thousandths, 1000));
    }
    assert_int_equal(ingle_standard_material_at(standard, 6, &material, &r_value),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_standard_material_at(NULL, 0, &material, &r_value),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_standard_material_at(standard, 0, NULL, &r_value),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_standard_material_at(standard, 0, &material, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_standard_material_count(standard_of("astm-e1509")), 0);
}

static void past_the_last_liner_is_nothing(void **state)
{
    (void)state;
    const ingle_standard *standard = standard_of("irc-2021");
    const char *liner = "unwritten", *table = "unwritten";
    ingle_amount area = {42, 42, 42};
    assert_int_equal(ingle_standard_liner_at(standard, 25, &liner, &area, &table),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_standard_liner_at(NULL, 0, &liner, &area, &table),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_standard_liner_at(standard, 0, NULL, &area, &table),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_standard_liner_at(standard, 0, &liner, NULL, &table),
                     INGLE_ERROR_ARGUMENT);
    assert_int_equal(ingle_standard_liner_at(standard, 0, &liner, &area, NULL),
                     INGLE_ERROR_ARGUMENT);
    assert_string_equal(liner, "unwritten");
    assert_true(area.value == 42);
}

static void bases_and_relations_have_names(void **state)
{
    (void)state;
    assert_string_equal(ingle_basis_name(INGLE_BASIS_READ), "read");
    assert_string_equal(ingle_basis_name(INGLE_BASIS_CITED), "cited");
    assert_string_equal(ingle_basis_name(INGLE_BASIS_FROM_MEMORY), "from-memory");
    assert_string_equal(ingle_basis_name(INGLE_BASIS_COMMON_PRACTICE), "common-practice");
    assert_null(ingle_basis_name(0));
    assert_null(ingle_basis_name(5));
    assert_null(ingle_basis_name(-1));
    assert_string_equal(ingle_relation_name(INGLE_AT_LEAST), "at-least");
    assert_string_equal(ingle_relation_name(INGLE_AT_MOST), "at-most");
    assert_null(ingle_relation_name(0));
    assert_string_equal(ingle_relation_name(INGLE_IS), "is");
    assert_string_equal(ingle_relation_name(INGLE_IS_NOT), "is-not");
    assert_string_equal(ingle_relation_name(INGLE_LESS_THAN), "less-than");
    assert_null(ingle_relation_name(INGLE_LESS_THAN + 1));
    assert_null(ingle_relation_name(-1));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(ids_are_unique_and_found),
        cmocka_unit_test(standards_describe_themselves),
        cmocka_unit_test(editions_of_one_title_differ),
        cmocka_unit_test(rows_say_where_they_come_from),
        cmocka_unit_test(rows_belong_to_their_edition),
        cmocka_unit_test(rows_judge_amounts_of_one_kind),
        cmocka_unit_test(numbers_lie_where_they_can),
        cmocka_unit_test(rows_have_what_their_formula_asks),
        cmocka_unit_test(rows_can_be_counted),
        cmocka_unit_test(every_matter_is_used_and_whole),
        cmocka_unit_test(every_remedy_has_its_words),
        cmocka_unit_test(conditions_are_written),
        cmocka_unit_test(every_condition_can_be_told),
        cmocka_unit_test(the_same_in_every_edition),
        cmocka_unit_test(abutting_trim_changed_in_2024),
        cmocka_unit_test(liners_are_as_printed),
        cmocka_unit_test(liners_are_named_by_their_size),
        cmocka_unit_test(materials_are_those_without_conflict),
        cmocka_unit_test(past_the_last_liner_is_nothing),
        cmocka_unit_test(bases_and_relations_have_names),
    };
    return cmocka_run_group_tests_name("standards", tests, NULL, NULL);
}
