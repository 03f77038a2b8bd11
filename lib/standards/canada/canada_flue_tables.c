/* SPDX-License-Identifier: MIT */
#include "standards/canada/canada_flue_tables.h"

#include "measure/amounts.h"

#define MM(n) MILLIMETRES(n)

/* Upper limits of the classes of chimney height; the first class begins with 3.0 m, included. */
static const int64_t heights[] = {MM(4500), MM(5900), MM(8900), MM(12000)};

/* The upper areas as printed: 0.150, 0.250 ... 1.00, 1.20 ... 2.20 m2. */
static const int64_t upper_areas[] = {
    SQUARE_CENTIMETRES(1500),  SQUARE_CENTIMETRES(2500),  SQUARE_CENTIMETRES(3500),
    SQUARE_CENTIMETRES(5000),  SQUARE_CENTIMETRES(6500),  SQUARE_CENTIMETRES(8000),
    SQUARE_CENTIMETRES(10000), SQUARE_CENTIMETRES(12000), SQUARE_CENTIMETRES(14000),
    SQUARE_CENTIMETRES(16000), SQUARE_CENTIMETRES(18000), SQUARE_CENTIMETRES(20000),
    SQUARE_CENTIMETRES(22000),
};

/*
 * The areas from which rounding to the printed digits, three decimals below 1.00 m2 and two from
 * there on, halves upwards, leads to the next row: 0.1505 ... 1.005, 1.205 ... 2.205 m2.
 */
static const int64_t next_rows_areas[] = {
    SQUARE_CENTIMETRES(1505),  SQUARE_CENTIMETRES(2505),  SQUARE_CENTIMETRES(3505),
    SQUARE_CENTIMETRES(5005),  SQUARE_CENTIMETRES(6505),  SQUARE_CENTIMETRES(8005),
    SQUARE_CENTIMETRES(10050), SQUARE_CENTIMETRES(12050), SQUARE_CENTIMETRES(14050),
    SQUARE_CENTIMETRES(16050), SQUARE_CENTIMETRES(18050), SQUARE_CENTIMETRES(20050),
    SQUARE_CENTIMETRES(22050),
};

/*
 * The tables as printed: a row for each of the areas above, a column for each height, in each cell
 * the least and the greatest size. A macro for each of the sizes takes its cells out of them. The
 * comments are the upper areas in m2.
 */
#define NONE NO_VALUE,

/* C(least, greatest) diameter. */
#define ROUND_TABLE_CELLS(C)                                    \
    C(110, 170) C(100, 160) C(90, 150) C(90, 150) /* 0.150 */   \
    C(150, 210) C(130, 190) C(130, 190) C(120, 180) /* 0.250 */ \
    C(180, 240) C(160, 220) C(150, 210) C(140, 200) /* 0.350 */ \
    C(220, 280) C(200, 260) C(190, 250) C(170, 230) /* 0.500 */ \
    C(260, 320) C(230, 290) C(220, 280) C(200, 260) /* 0.650 */ \
    C(290, 350) C(260, 320) C(240, 300) C(220, 280) /* 0.800 */ \
    C(330, 390) C(290, 350) C(270, 330) C(250, 310) /* 1.00 */  \
    C(360, 420) C(320, 380) C(300, 360) C(270, 330) /* 1.20 */  \
    C(390, 450) C(350, 410) C(330, 390) C(300, 360) /* 1.40 */  \
    C(420, 480) C(380, 440) C(350, 410) C(320, 380) /* 1.60 */  \
    NONE C(400, 460) C(370, 430) C(340, 400) /* 1.80 */         \
    NONE NONE C(400, 460) C(360, 420) /* 2.00 */                \
    NONE NONE NONE C(380, 440) /* 2.20 */

/* C(the least size: shorter, longer side, the greatest: shorter, longer side). */
#define RECTANGULAR_TABLE_CELLS(C)                                                              \
    C(200,200, 200,200) C(100,200, 100,200) C(100,200, 100,200) C(100,200, 100,200) /* 0.150 */ \
    C(200,200, 200,200) C(200,200, 200,200) C(200,200, 200,200) C(200,200, 200,200) /* 0.250 */ \
    C(200,300, 200,300) C(200,200, 200,300) C(200,200, 200,200) C(200,200, 200,200) /* 0.350 */ \
    C(300,300, 300,300) C(200,300, 200,300) C(200,300, 200,300) C(200,200, 200,300) /* 0.500 */ \
    C(300,300, 300,400) C(300,300, 300,300) C(300,300, 300,300) C(200,300, 200,300) /* 0.650 */ \
    C(300,400, 300,400) C(300,300, 300,400) C(300,300, 300,300) C(300,300, 300,300) /* 0.800 */ \
    C(400,400, 400,400) C(300,400, 300,400) C(300,400, 300,400) C(300,300, 300,300) /* 1.00 */  \
    C(400,400, 400,400) C(400,400, 400,400) C(300,400, 300,400) C(300,400, 300,400) /* 1.20 */  \
    NONE C(400,400, 400,400) C(400,400, 400,400) C(300,400, 300,400) /* 1.40 */                 \
    NONE NONE C(400,400, 400,400) C(400,400, 400,400) /* 1.60 */                                \
    NONE NONE NONE C(400,400, 400,400) /* 1.80 */                                               \
    NONE NONE NONE C(400,400, 400,400) /* 2.00 */

#define LEAST_DIAMETER(least, most) MM(least),
#define MOST_DIAMETER(least, most) MM(most),
#define LEAST_SHORTER(shorter, longer, most_shorter, most_longer) MM(shorter),
#define LEAST_LONGER(shorter, longer, most_shorter, most_longer) MM(longer),
#define MOST_SHORTER(shorter, longer, most_shorter, most_longer) MM(most_shorter),
#define MOST_LONGER(shorter, longer, most_shorter, most_longer) MM(most_longer),

static const int64_t round_least_cells[] = {ROUND_TABLE_CELLS(LEAST_DIAMETER)};
static const int64_t round_most_cells[] = {ROUND_TABLE_CELLS(MOST_DIAMETER)};
static const int64_t shorter_least_cells[] = {RECTANGULAR_TABLE_CELLS(LEAST_SHORTER)};
static const int64_t longer_least_cells[] = {RECTANGULAR_TABLE_CELLS(LEAST_LONGER)};
static const int64_t shorter_most_cells[] = {RECTANGULAR_TABLE_CELLS(MOST_SHORTER)};
static const int64_t longer_most_cells[] = {RECTANGULAR_TABLE_CELLS(MOST_LONGER)};

enum { ROUND_ROWS = 13, RECTANGULAR_ROWS = 12, HEIGHTS = 4 };

#define BY_AREA(printed, areas, way, row_count, all_cells)                            \
    {                                                                                 \
        .name = printed, .rows = {areas, row_count, 0, way},                          \
        .columns = {heights, HEIGHTS, MM(3000), KEY_UP_TO}, .cells = all_cells,       \
    }

#define FLUE_TABLE(printed, row_count, all_cells)                                     \
    {                                                                                 \
        BY_AREA(printed, upper_areas, KEY_UP_TO, row_count, all_cells),               \
        BY_AREA(printed, next_rows_areas, KEY_BELOW, row_count, all_cells),           \
    }

#define ROUND_TABLE "Table 9.21.2.5.A"
#define RECTANGULAR_TABLE "Table 9.21.2.5.B"

const struct flue_table canada_round_least = FLUE_TABLE(ROUND_TABLE, ROUND_ROWS, round_least_cells);
const struct flue_table canada_round_most = FLUE_TABLE(ROUND_TABLE, ROUND_ROWS, round_most_cells);
const struct flue_table canada_shorter_least =
    FLUE_TABLE(RECTANGULAR_TABLE, RECTANGULAR_ROWS, shorter_least_cells);
const struct flue_table canada_shorter_most =
    FLUE_TABLE(RECTANGULAR_TABLE, RECTANGULAR_ROWS, shorter_most_cells);
const struct flue_table canada_longer_least =
    FLUE_TABLE(RECTANGULAR_TABLE, RECTANGULAR_ROWS, longer_least_cells);
const struct flue_table canada_longer_most =
    FLUE_TABLE(RECTANGULAR_TABLE, RECTANGULAR_ROWS, longer_most_cells);

_Static_assert(sizeof round_least_cells / sizeof *round_least_cells == ROUND_ROWS * HEIGHTS,
               "a row or a cell of the round table is missing");
_Static_assert(sizeof shorter_least_cells / sizeof *shorter_least_cells ==
                   RECTANGULAR_ROWS * HEIGHTS,
               "a row or a cell of the rectangular table is missing");
