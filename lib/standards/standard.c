/* SPDX-License-Identifier: MIT */
/*
 * The index over the files of standards, and what the public can ask of standards and rules.
 */
#include "base/nearest.h"
#include "base/text.h"
#include "standards/publications.h"

#include <string.h>

static const struct publication *const publications[] = {
    &publication_irc,
    &publication_ibc,
    &publication_irc_early,
    &publication_nfpa_211_inspection,
    &publication_nfpa_211_fireplaces,
    &publication_cabo,
    &publication_ubc,
    &publication_sbc,
    &publication_nbfu,
    &publication_farmers_bulletins,
    &publication_federal_us,
    &publication_bia,
    &publication_local_us,
    &publication_missouri_extension,
    &publication_nfpa_211,
    &publication_nasd_1254,
    &publication_imc,
    &publication_imc_chimneys,
    &publication_astm_e1509,
    &publication_ifgc_2009,
    &publication_nyc_mechanical,
    &publication_nyc_administrative,
    &publication_newburgh_heights,
    &publication_ohio,
    &publication_missouri,
    &publication_lorain,
    &publication_north_hempstead,
    &publication_red_lion,
    &publication_florida_building,
    &publication_florida_mechanical,
    &publication_older_stoves,
    &publication_purdue,
    &publication_state_stove_rules,
    &publication_hud_manufactured_home,
    &publication_common_practice,
    &publication_common_practice_canada,
    &publication_ontario,
    &publication_canada,
    &publication_csa_b365,
    &publication_england,
    &publication_nhbc,
    &publication_ireland,
    &publication_europe,
    &publication_australia,
    &publication_nfpa_54,
    &publication_california,
    &publication_massachusetts,
    &publication_ifgc,
    &publication_older_gas,
};

/* ---- standards ------------------------------------------------------------------------------ */

size_t ingle_standard_count(void)
{
    size_t count = 0;
    for (size_t i = 0; i < COUNT_OF(publications); i++) {
        count += publications[i]->count;
    }
    return count;
}

const ingle_standard *ingle_standard_at(size_t index)
{
    for (size_t i = 0; i < COUNT_OF(publications); i++) {
        if (index < publications[i]->count) {
            return &publications[i]->editions[index];
        }
        index -= publications[i]->count;
    }
    return NULL;
}

const ingle_standard *ingle_standard_find(const char *id)
{
    const ingle_standard *standard;
    for (size_t i = 0; id != NULL && (standard = ingle_standard_at(i)) != NULL; i++) {
        if (strcmp(standard->id, id) == 0) {
            return standard;
        }
    }
    return NULL;
}

const char *ingle_standard_id(const ingle_standard *standard)
{
    return standard->id;
}

const char *ingle_standard_title(const ingle_standard *standard)
{
    return standard->title;
}

int32_t ingle_standard_edition(const ingle_standard *standard)
{
    return standard->edition;
}

const char *ingle_standard_place(const ingle_standard *standard)
{
    return standard->place;
}

const char *ingle_standard_note(const ingle_standard *standard)
{
    return standard->note;
}

const ingle_unit *ingle_standard_unit(const ingle_standard *standard)
{
    return unit_at_place(standard->unit);
}

/* ---- its rules ------------------------------------------------------------------------------ */

bool rule_in_edition(const struct ingle_rule *rule, int32_t edition)
{
    return (rule->since == 0 || edition >= rule->since) &&
           (rule->until == 0 || edition <= rule->until);
}

size_t ingle_standard_rule_count(const ingle_standard *standard)
{
    size_t count = 0;
    for (size_t i = 0; i < standard->rule_count; i++) {
        count += rule_in_edition(&standard->rules[i], standard->edition);
    }
    return count;
}

const ingle_rule *ingle_standard_rule_at(const ingle_standard *standard, size_t index)
{
    for (size_t i = 0; i < standard->rule_count; i++) {
        if (rule_in_edition(&standard->rules[i], standard->edition) && index-- == 0) {
            return &standard->rules[i];
        }
    }
    return NULL;
}

size_t standards_first_null(const ingle_standard *const *standards, size_t count)
{
    size_t i = 0;
    while (i < count && standards[i] != NULL) {
        i++;
    }
    return i;
}

void standards_tell_null(struct text *text, size_t index)
{
    text_add(text, "standards[");
    text_add_unsigned(text, index);
    text_add(text, "] is NULL: no standard has the id that was looked for.");
}

bool standards_have_rule(const ingle_standard *const *standards, size_t count, const char *id,
                         struct nearest *nearest)
{
    const ingle_rule *rule;
    for (size_t i = 0; i < count; i++) {
        for (size_t j = 0; (rule = ingle_standard_rule_at(standards[i], j)) != NULL; j++) {
            if (strcmp(ingle_rule_id(rule), id) == 0) {
                return true;
            }
            nearest_offer(nearest, ingle_rule_id(rule));
        }
    }
    return false;
}

const char *ingle_rule_id(const ingle_rule *rule)
{
    return matters[rule->matter].id;
}

const char *ingle_rule_label(const ingle_rule *rule)
{
    return matters[rule->matter].label;
}

const char *ingle_rule_section(const ingle_rule *rule)
{
    return rule->section;
}

ingle_basis ingle_rule_basis(const ingle_rule *rule)
{
    return rule->basis;
}

ingle_relation ingle_rule_relation(const ingle_rule *rule)
{
    return rule->relation;
}

size_t ingle_rule_quantity_count(const ingle_rule *rule)
{
    return matter_judged_count(rule->matter);
}

const ingle_quantity *ingle_rule_quantity_at(const ingle_rule *rule, size_t index)
{
    return index < matter_judged_count(rule->matter)
               ? &quantities[matters[rule->matter].judged[index]]
               : NULL;
}

size_t ingle_rule_input_count(const ingle_rule *rule)
{
    size_t count = 0;
    while (count < INPUTS && rule->inputs[count] != 0) {
        count++;
    }
    return count;
}

const ingle_quantity *ingle_rule_input_at(const ingle_rule *rule, size_t index)
{
    return index < ingle_rule_input_count(rule) ? &quantities[rule->inputs[index]] : NULL;
}

const ingle_reading *ingle_rule_follows(const ingle_rule *rule, size_t *option)
{
    if (rule->follows.reading == READING_NONE) {
        return NULL;
    }
    if (option != NULL) {
        *option = rule->follows.option;
    }
    return ingle_reading_at(rule->follows.reading - 1u);
}

const char *ingle_rule_caution(const ingle_rule *rule)
{
    return matters[rule->matter].caution;
}

const char *ingle_rule_mend(const ingle_rule *rule)
{
    return matters[rule->matter].mend;
}

const char *ingle_rule_refer(const ingle_rule *rule)
{
    return matters[rule->matter].refer;
}

const char *ingle_rule_inspection(const ingle_rule *rule)
{
    return matters[rule->matter].inspection;
}

const ingle_quantity *ingle_rule_listing(const ingle_rule *rule)
{
    enum quantity_id listing = matters[rule->matter].listing;
    return listing == 0 ? NULL : &quantities[listing];
}

int32_t ingle_rule_since(const ingle_rule *rule)
{
    return rule->since;
}

int32_t ingle_rule_until(const ingle_rule *rule)
{
    return rule->until;
}

const char *ingle_rule_formula(const ingle_rule *rule)
{
    return rule->formula->name;
}

bool rule_is_undated(const struct ingle_rule *rule)
{
    return strstr(rule->section, "edition not") != NULL;
}

const char *ingle_rule_formula_text(const ingle_rule *rule)
{
    return rule->formula->text;
}

size_t ingle_rule_number_count(const ingle_rule *rule)
{
    return formula_number_count(rule->formula);
}

const char *ingle_rule_number_name(const ingle_rule *rule, size_t index)
{
    return index < formula_number_count(rule->formula) ? rule->formula->numbers[index].name : NULL;
}

ingle_status ingle_rule_number_at(const ingle_rule *rule, size_t index, ingle_amount *amount)
{
    if (rule == NULL || amount == NULL || index >= formula_number_count(rule->formula)) {
        return INGLE_ERROR_ARGUMENT;
    }
    *amount = formula_number_amount(rule->formula, (unsigned)index,
                                    matters[rule->matter].judged[0], rule->numbers[index]);
    return INGLE_OK;
}

const char *ingle_rule_reading(const ingle_rule *rule)
{
    return rule->reading;
}

/* ---- words ---------------------------------------------------------------------------------- */

static const char *const test_words[] = {
    [IS] = " is ",           [IS_NOT] = " is not ",       [AT_LEAST] = " is at least ",
    [MORE_THAN] = " is more than ", [AT_MOST] = " is at most ", [LESS_THAN] = " is less than ",
    [ONE_OF] = " is ",
};

const char *condition_words(enum condition_test test)
{
    return test_words[test];
}

/* In inches where that is exact, as it is for publications that print them; else in millimetres. */
static void add_exactly(struct text *text, ingle_amount amount)
{
    char written[64];
    ingle_format metric = {sizeof metric, unit_at_place(UNIT_MILLIMETRE), 0, 0};
    ingle_amount_format(&amount, NULL, written, sizeof written, NULL);
    if (strncmp(written, "≈", strlen("≈")) == 0) {
        ingle_amount_format(&amount, &metric, written, sizeof written, NULL);
    }
    text_add(text, written);
}

static void add_choices(struct text *text, const ingle_quantity *quantity, int64_t bits)
{
    const char *between = "";
    for (size_t i = 0; i < quantity->choice_count; i++) {
        if ((bits & CHOICE_BIT(i)) != 0) {
            text_add(text, between);
            text_add(text, quantity->choices[i].id);
            between = " or ";
        }
    }
}

static void add_condition(struct text *text, const struct condition *condition)
{
    const ingle_quantity *quantity = &quantities[condition->quantity];
    text_add(text, quantity->id);
    text_add(text, test_words[condition->test]);
    if (condition->test == ONE_OF) {
        add_choices(text, quantity, condition->value);
    } else if (quantity->dimension != INGLE_FLAG && quantity->dimension != INGLE_CHOICE) {
        add_exactly(text, quantity_amount(condition->quantity, condition->value));
    } else if (quantity->dimension == INGLE_FLAG) {
        text_add(text, condition->value != 0 ? "yes" : "no");
    } else {
        text_add(text, quantity->choices[condition->value].id);
    }
    text_add(text, condition->unknown == OR_UNKNOWN ? " or unknown"
                   : condition->unknown == IF_KNOWN ? " if known"
                                                    : "");
}

ingle_status ingle_rule_condition_text(const ingle_rule *rule, char *buffer, size_t capacity,
                                       size_t *length)
{
    if (rule == NULL || (buffer == NULL && capacity > 0)) {
        return INGLE_ERROR_ARGUMENT;
    }
    struct text text = text_start(buffer, capacity);
    for (size_t i = 0; i < RULE_CONDITIONS && rule->when[i].test != 0; i++) {
        text_add(&text, i == 0 ? "" : " and ");
        add_condition(&text, &rule->when[i]);
    }
    return text_end(&text, length);
}

static const char *const basis_names[] = {
    [INGLE_BASIS_READ] = "read",
    [INGLE_BASIS_CITED] = "cited",
    [INGLE_BASIS_FROM_MEMORY] = "from-memory",
    [INGLE_BASIS_COMMON_PRACTICE] = "common-practice",
};

const char *ingle_basis_name(ingle_basis basis)
{
    return basis > 0 && (size_t)basis < COUNT_OF(basis_names) ? basis_names[basis] : NULL;
}

ingle_basis ingle_basis_find(const char *name)
{
    for (size_t i = INGLE_BASIS_READ; name != NULL && i < COUNT_OF(basis_names); i++) {
        if (strcmp(basis_names[i], name) == 0) {
            return (ingle_basis)i;
        }
    }
    return 0;
}

static const char *const relation_names[] = {
    [INGLE_AT_LEAST] = "at-least",
    [INGLE_AT_MOST] = "at-most",
    [INGLE_IS] = "is",
    [INGLE_IS_NOT] = "is-not",
    [INGLE_LESS_THAN] = "less-than",
};

const char *ingle_relation_name(ingle_relation relation)
{
    return relation > 0 && (size_t)relation < COUNT_OF(relation_names) ? relation_names[relation]
                                                                       : NULL;
}

/* ---- liners --------------------------------------------------------------------------------- */

size_t ingle_standard_material_count(const ingle_standard *standard)
{
    return standard->material_count;
}

ingle_status ingle_standard_material_at(const ingle_standard *standard, size_t index,
                                        const char **material, ingle_amount *r_per_inch)
{
    if (standard == NULL || index >= standard->material_count || material == NULL ||
        r_per_inch == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    const struct material *row = &standard->materials[index];
    *material = quantities[QUANTITY_LAYER_MATERIAL].choices[row->material].id;
    *r_per_inch = quantity_amount(QUANTITY_LAYER_R_PER_INCH, row->r_per_inch);
    return INGLE_OK;
}

size_t ingle_standard_liner_count(const ingle_standard *standard)
{
    return standard->liner_count;
}

ingle_status ingle_standard_liner_at(const ingle_standard *standard, size_t index,
                                     const char **liner, ingle_amount *area, const char **table)
{
    if (standard == NULL || index >= standard->liner_count || liner == NULL || area == NULL ||
        table == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    const struct liner *row = &standard->liners[index];
    *liner = quantities[QUANTITY_FLUE_LINER].choices[row->liner].id;
    *area = quantity_amount(QUANTITY_FLUE_NET_AREA, row->net_area);
    *table = row->table;
    return INGLE_OK;
}
