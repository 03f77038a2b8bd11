/* SPDX-License-Identifier: MIT */
/*
 * The model against the 46 cells of the Canadian table of round flues (Ontario Building Code 2012,
 * Table 9.21.2.5.A, read), as the library's own rules have it. The residuals are those of a
 * computation apart from this library: opening at its class's upper bound, height at its class's
 * lower bound, 0.8 ft/s, the required diameter less the middle of the band.
 */
#include "fireplace.h"

enum { ROWS = 13, COLUMNS = 4 };

static const double lowest_height = 3.0; /* of the first class, as printed */

/* The rule of a name whose first row is printed as 0.150 m². */
static const ingle_rule *rule_of(const char *id)
{
    const ingle_standard *standard = ingle_standard_find("obc-2012");
    assert_non_null(standard);
    for (size_t i = 0; i < ingle_standard_rule_count(standard); i++) {
        ingle_amount key;
        const ingle_rule *rule = ingle_standard_rule_at(standard, i);
        if (strcmp(ingle_rule_id(rule), id) == 0 && ingle_rule_table_row_count(rule) == ROWS &&
            ingle_rule_table_row_at(rule, 0, &key) == INGLE_OK &&
            key.value == INT64_C(150000000000000000)) {
            return rule;
        }
    }
    fail_msg("no table for %s", id);
    return NULL;
}

static double cell_of(const ingle_rule *rule, size_t row, size_t column)
{
    ingle_amount cell;
    return ingle_rule_table_cell_at(rule, row, column, &cell) == INGLE_OK
               ? (double)cell.value * 1e-9
               : 0.0;
}

static double opening_of(const ingle_rule *rule, size_t row)
{
    ingle_amount key;
    assert_int_equal(ingle_rule_table_row_at(rule, row, &key), INGLE_OK);
    return (double)key.value * 1e-18;
}

static double height_of(const ingle_rule *rule, size_t column)
{
    ingle_amount key;
    if (column == 0) {
        return lowest_height;
    }
    assert_int_equal(ingle_rule_table_column_at(rule, column - 1, &key), INGLE_OK);
    return (double)key.value * 1e-9;
}

/* One set of coefficients over all cells. */
struct residuals {
    int cells, inside;
    double sum, squares, largest;
    double by_height[COLUMNS];
};

static double required(double opening, double height, double inlet, double friction)
{
    ingle_draft_input input = defaults();
    double diameter = 0;
    input.opening_area = opening;
    input.height = height;
    input.inlet_loss = inlet;
    input.friction_factor = friction;
    assert_int_equal(ingle_draft_required(&input, INGLE_DRAFT_REQUIRED_DIAMETER, &diameter),
                     INGLE_OK);
    input.flue_area = PI / 4.0 * diameter * diameter;
    input.hydraulic_diameter = diameter;
    assert_near(velocity_of(&input), input.criterion, 1e-12);
    return diameter;
}

static struct residuals compare(double inlet, double friction)
{
    const ingle_rule *least = rule_of("flue-diameter");
    const ingle_rule *most = rule_of("flue-diameter-most");
    struct residuals all = {0};
    for (size_t j = 0; j < COLUMNS; j++) {
        int cells = 0;
        for (size_t i = 0; i < ROWS; i++) {
            double low = cell_of(least, i, j);
            double high = cell_of(most, i, j);
            if (low > 0) {
                double found = required(opening_of(least, i), height_of(least, j), inlet, friction);
                double residual = 1000.0 * (found - (low + high) / 2.0);
                cells++;
                all.inside += found >= low && found <= high;
                all.sum += residual;
                all.by_height[j] += residual;
                all.squares += residual * residual;
                all.largest = fmax(all.largest, fabs(residual));
            }
        }
        all.by_height[j] /= cells;
        all.cells += cells;
    }
    return all;
}

static void test_default_set(void **state)
{
    struct residuals all = compare(1.0, 1.0 / 30.0);
    (void)state;
    assert_int_equal(all.cells, 46);
    assert_int_equal(all.inside, 46);
    assert_within(sqrt(all.squares / all.cells), 8.50, 0.005);
    assert_within(all.largest, 17.11, 0.005);
    assert_within(all.sum / all.cells, 7.2, 0.051);
    static const double means[] = {1.2, 6.7, 8.4, 11.0};
    for (size_t j = 0; j < COLUMNS; j++) {
        assert_within(all.by_height[j], means[j], 0.051);
    }
}

static void test_other_sets(void **state)
{
    static const struct {
        double inlet, friction, mean, rms, largest, means[COLUMNS];
    } rows[] = {
        {1.0, 0.0245, 2.7, 4.6, 10.6, {-1.6, 2.9, 3.8, 4.9}},
        {0.85, 1.0 / 30.0, 3.1, 6.2, 13.3, {-3.6, 2.4, 4.5, 7.6}},
        {1.116, 0.0134, 0.0, 2.8, 5.8, {-1.4, 1.3, 0.8, -0.8}},
    };
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        struct residuals all = compare(rows[i].inlet, rows[i].friction);
        assert_int_equal(all.inside, 46);
        assert_within(all.sum / all.cells, rows[i].mean, 0.06);
        assert_within(sqrt(all.squares / all.cells), rows[i].rms, 0.06);
        assert_within(all.largest, rows[i].largest, 0.06);
        for (size_t j = 0; j < COLUMNS; j++) {
            assert_within(all.by_height[j], rows[i].means[j], 0.06);
        }
    }
}

/* f = 1/30, not 0.0333: with that the largest residual is 17.08. */
static void test_rounded_friction_differs(void **state)
{
    (void)state;
    assert_within(compare(1.0, 0.0333).largest, 17.08, 0.005);
}

/* V at the table's diameters in ft/s: minimum 0.35-0.70, middle 0.67-0.82, maximum 0.87-1.23. */
static void test_velocities_at_the_table(void **state)
{
    static const double ranges[3][2] = {{.35, .70}, {.67, .82}, {.87, 1.23}};
    const ingle_rule *least = rule_of("flue-diameter");
    const ingle_rule *most = rule_of("flue-diameter-most");
    (void)state;
    for (int edge = 0; edge < 3; edge++) {
        double low = 10, high = 0;
        for (size_t i = 0; i < ROWS * COLUMNS; i++) {
            double from = cell_of(least, i / COLUMNS, i % COLUMNS);
            double to = cell_of(most, i / COLUMNS, i % COLUMNS);
            if (from > 0) {
                ingle_draft_input input =
                    round_fireplace(opening_of(least, i / COLUMNS), from + (to - from) * edge / 2.0,
                                    height_of(least, i % COLUMNS));
                double velocity = velocity_of(&input) / FOOT;
                low = fmin(low, velocity);
                high = fmax(high, velocity);
            }
        }
        assert_within(low, ranges[edge][0], 0.0051);
        assert_within(high, ranges[edge][1], 0.0051);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_default_set),
        cmocka_unit_test(test_other_sets),
        cmocka_unit_test(test_rounded_friction_differs),
        cmocka_unit_test(test_velocities_at_the_table),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
