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

/* The rows are those of the opening areas above, the columns those of the heights. */
static const int64_t round_least_cells[] = {
    MM(110), MM(100), MM(90), MM(90), /* up to 0.150 */
    MM(150), MM(130), MM(130), MM(120), /* 0.151-0.250 */
    MM(180), MM(160), MM(150), MM(140), /* 0.251-0.350 */
    MM(220), MM(200), MM(190), MM(170), /* 0.351-0.500 */
    MM(260), MM(230), MM(220), MM(200), /* 0.501-0.650 */
    MM(290), MM(260), MM(240), MM(220), /* 0.651-0.800 */
    MM(330), MM(290), MM(270), MM(250), /* 0.801-1.00 */
    MM(360), MM(320), MM(300), MM(270), /* 1.01-1.20 */
    MM(390), MM(350), MM(330), MM(300), /* 1.21-1.40 */
    MM(420), MM(380), MM(350), MM(320), /* 1.41-1.60 */
    NO_VALUE, MM(400), MM(370), MM(340), /* 1.61-1.80 */
    NO_VALUE, NO_VALUE, MM(400), MM(360), /* 1.81-2.00 */
    NO_VALUE, NO_VALUE, NO_VALUE, MM(380), /* 2.01-2.20 */
};

static const int64_t round_most_cells[] = {
    MM(170), MM(160), MM(150), MM(150), /* up to 0.150 */
    MM(210), MM(190), MM(190), MM(180), /* 0.151-0.250 */
    MM(240), MM(220), MM(210), MM(200), /* 0.251-0.350 */
    MM(280), MM(260), MM(250), MM(230), /* 0.351-0.500 */
    MM(320), MM(290), MM(280), MM(260), /* 0.501-0.650 */
    MM(350), MM(320), MM(300), MM(280), /* 0.651-0.800 */
    MM(390), MM(350), MM(330), MM(310), /* 0.801-1.00 */
    MM(420), MM(380), MM(360), MM(330), /* 1.01-1.20 */
    MM(450), MM(410), MM(390), MM(360), /* 1.21-1.40 */
    MM(480), MM(440), MM(410), MM(380), /* 1.41-1.60 */
    NO_VALUE, MM(460), MM(430), MM(400), /* 1.61-1.80 */
    NO_VALUE, NO_VALUE, MM(460), MM(420), /* 1.81-2.00 */
    NO_VALUE, NO_VALUE, NO_VALUE, MM(440), /* 2.01-2.20 */
};

static const int64_t shorter_least_cells[] = {
    MM(200), MM(100), MM(100), MM(100), /* up to 0.150 */
    MM(200), MM(200), MM(200), MM(200), /* 0.151-0.250 */
    MM(200), MM(200), MM(200), MM(200), /* 0.251-0.350 */
    MM(300), MM(200), MM(200), MM(200), /* 0.351-0.500 */
    MM(300), MM(300), MM(300), MM(200), /* 0.501-0.650 */
    MM(300), MM(300), MM(300), MM(300), /* 0.651-0.800 */
    MM(400), MM(300), MM(300), MM(300), /* 0.801-1.00 */
    MM(400), MM(400), MM(300), MM(300), /* 1.01-1.20 */
    NO_VALUE, MM(400), MM(400), MM(300), /* 1.21-1.40 */
    NO_VALUE, NO_VALUE, MM(400), MM(400), /* 1.41-1.60 */
    NO_VALUE, NO_VALUE, NO_VALUE, MM(400), /* 1.61-1.80 */
    NO_VALUE, NO_VALUE, NO_VALUE, MM(400), /* 1.81-2.00 */
};

static const int64_t longer_least_cells[] = {
    MM(200), MM(200), MM(200), MM(200), /* up to 0.150 */
    MM(200), MM(200), MM(200), MM(200), /* 0.151-0.250 */
    MM(300), MM(200), MM(200), MM(200), /* 0.251-0.350 */
    MM(300), MM(300), MM(300), MM(200), /* 0.351-0.500 */
    MM(300), MM(300), MM(300), MM(300), /* 0.501-0.650 */
    MM(400), MM(300), MM(300), MM(300), /* 0.651-0.800 */
    MM(400), MM(400), MM(400), MM(300), /* 0.801-1.00 */
    MM(400), MM(400), MM(400), MM(400), /* 1.01-1.20 */
    NO_VALUE, MM(400), MM(400), MM(400), /* 1.21-1.40 */
    NO_VALUE, NO_VALUE, MM(400), MM(400), /* 1.41-1.60 */
    NO_VALUE, NO_VALUE, NO_VALUE, MM(400), /* 1.61-1.80 */
    NO_VALUE, NO_VALUE, NO_VALUE, MM(400), /* 1.81-2.00 */
};

static const int64_t shorter_most_cells[] = {
    MM(200), MM(100), MM(100), MM(100), /* up to 0.150 */
    MM(200), MM(200), MM(200), MM(200), /* 0.151-0.250 */
    MM(200), MM(200), MM(200), MM(200), /* 0.251-0.350 */
    MM(300), MM(200), MM(200), MM(200), /* 0.351-0.500 */
    MM(300), MM(300), MM(300), MM(200), /* 0.501-0.650 */
    MM(300), MM(300), MM(300), MM(300), /* 0.651-0.800 */
    MM(400), MM(300), MM(300), MM(300), /* 0.801-1.00 */
    MM(400), MM(400), MM(300), MM(300), /* 1.01-1.20 */
    NO_VALUE, MM(400), MM(400), MM(300), /* 1.21-1.40 */
    NO_VALUE, NO_VALUE, MM(400), MM(400), /* 1.41-1.60 */
    NO_VALUE, NO_VALUE, NO_VALUE, MM(400), /* 1.61-1.80 */
    NO_VALUE, NO_VALUE, NO_VALUE, MM(400), /* 1.81-2.00 */
};

static const int64_t longer_most_cells[] = {
    MM(200), MM(200), MM(200), MM(200), /* up to 0.150 */
    MM(200), MM(200), MM(200), MM(200), /* 0.151-0.250 */
    MM(300), MM(300), MM(200), MM(200), /* 0.251-0.350 */
    MM(300), MM(300), MM(300), MM(300), /* 0.351-0.500 */
    MM(400), MM(300), MM(300), MM(300), /* 0.501-0.650 */
    MM(400), MM(400), MM(300), MM(300), /* 0.651-0.800 */
    MM(400), MM(400), MM(400), MM(300), /* 0.801-1.00 */
    MM(400), MM(400), MM(400), MM(400), /* 1.01-1.20 */
    NO_VALUE, MM(400), MM(400), MM(400), /* 1.21-1.40 */
    NO_VALUE, NO_VALUE, MM(400), MM(400), /* 1.41-1.60 */
    NO_VALUE, NO_VALUE, NO_VALUE, MM(400), /* 1.61-1.80 */
    NO_VALUE, NO_VALUE, NO_VALUE, MM(400), /* 1.81-2.00 */
};

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

_Static_assert(sizeof round_least_cells / sizeof *round_least_cells == ROUND_ROWS * HEIGHTS &&
                   sizeof round_most_cells == sizeof round_least_cells,
               "a row or a cell of the round table is missing");
_Static_assert(sizeof shorter_least_cells / sizeof *shorter_least_cells ==
                       RECTANGULAR_ROWS * HEIGHTS &&
                   sizeof longer_least_cells == sizeof shorter_least_cells &&
                   sizeof shorter_most_cells == sizeof shorter_least_cells &&
                   sizeof longer_most_cells == sizeof shorter_least_cells,
               "a row or a cell of the rectangular table is missing");
