/* SPDX-License-Identifier: MIT */
/*
 * What rows about gas in several publications have in common: their conditions, and the one table
 * of permanent damper openings.
 */
#ifndef INGLE_STANDARDS_GAS_ROWS_H
#define INGLE_STANDARDS_GAS_ROWS_H

#include "formulas/table.h"
#include "survey/quantity.h"

#define ANY_GAS {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_NONE}
#define NO_GAS {QUANTITY_GAS_APPLIANCE, IS, CHOICE_GAS_APPLIANCE_NONE}
#define GAS_LOGS {QUANTITY_GAS_APPLIANCE, IS, CHOICE_GAS_APPLIANCE_LOG_SET}
#define LOG_LIGHTER {QUANTITY_GAS_APPLIANCE, IS, CHOICE_GAS_APPLIANCE_LOG_LIGHTER}
#define NO_LOG_LIGHTER {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_LOG_LIGHTER}
#define GAS_HEATER {QUANTITY_GAS_APPLIANCE, IS, CHOICE_GAS_APPLIANCE_ROOM_HEATER}
#define NO_GAS_HEATER {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_ROOM_HEATER}
#define NO_GAS_LOGS {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_LOG_SET}
#define NO_GAS_INSERT {QUANTITY_GAS_APPLIANCE, IS_NOT, CHOICE_GAS_APPLIANCE_INSERT}

#define UP_THE_CHIMNEY {QUANTITY_GAS_VENT, IS, CHOICE_GAS_VENT_CHIMNEY}
#define UNVENTED {QUANTITY_GAS_VENT, IS, CHOICE_GAS_VENT_UNVENTED}
#define GAS_IN_BEDROOM {QUANTITY_GAS_ROOM, IS, CHOICE_GAS_ROOM_BEDROOM}
#define GAS_IN_BATHROOM {QUANTITY_GAS_ROOM, IS, CHOICE_GAS_ROOM_BATHROOM}
#define GAS_IN_BEDROOM_OR_BATHROOM {QUANTITY_GAS_ROOM, IS_NOT, CHOICE_GAS_ROOM_OTHER}
#define IN_MANUFACTURED_HOME {QUANTITY_GAS_IN_MANUFACTURED_HOME, IS, true}
#define GAS_LISTED {QUANTITY_GAS_LISTED, IS, true}
#define GAS_UNLISTED {QUANTITY_GAS_LISTED, IS, false}

#define VALVE_IN_ROOM {QUANTITY_GAS_VALVE_PLACE, IS, CHOICE_GAS_VALVE_PLACE_IN_ROOM}
#define VALVE_NOT_IN_ROOM {QUANTITY_GAS_VALVE_PLACE, IS_NOT, CHOICE_GAS_VALVE_PLACE_IN_ROOM}
#define VALVE_IN_FIREBOX {QUANTITY_GAS_VALVE_PLACE, IS, CHOICE_GAS_VALVE_PLACE_IN_FIREBOX}
#define VALVE_NOT_IN_FIREBOX {QUANTITY_GAS_VALVE_PLACE, IS_NOT, CHOICE_GAS_VALVE_PLACE_IN_FIREBOX}
#define VALVE_REMOTE {QUANTITY_GAS_VALVE_PLACE, IS, CHOICE_GAS_VALVE_PLACE_REMOTE}
#define VALVE_AT_MANIFOLD {QUANTITY_GAS_VALVE_PLACE, IS, CHOICE_GAS_VALVE_PLACE_MANIFOLD}
#define VALVE_NOT_AT_MANIFOLD {QUANTITY_GAS_VALVE_PLACE, IS_NOT, CHOICE_GAS_VALVE_PLACE_MANIFOLD}
#define VALVE_THERE {QUANTITY_GAS_VALVE_PLACE, IS_NOT, CHOICE_GAS_VALVE_PLACE_NONE}

#define REMOTE_VALVE_READING                                                                  \
    "A remote valve is let in for vented decorative appliances and for room heaters. Every "  \
    "kind but a log lighter is read as one of these."

/*
 * NFPA 54-2012 Table 10.6.2.3: the heat input, in each cell, up to which a permanent free opening
 * (the head of its column) is enough at a chimney height (the head of its row).
 */
enum { DAMPER_HEIGHTS = 6, DAMPER_OPENINGS = 7 };

extern const int64_t damper_heights[DAMPER_HEIGHTS];
extern const int64_t damper_openings[DAMPER_OPENINGS];
extern const int64_t damper_inputs[DAMPER_HEIGHTS * DAMPER_OPENINGS];

#define DAMPER_TABLE(printed_name)                                              \
    {                                                                           \
        .name = printed_name,                                                   \
        .rows = {damper_heights, DAMPER_HEIGHTS, 0, KEY_FROM},                  \
        .columns = {damper_openings, DAMPER_OPENINGS, 0, KEY_UP_TO},            \
        .cells = damper_inputs                                                  \
    }

#define DAMPER_TABLE_READING                                                                  \
    "Between two heights the lower row is used, and between two inputs the next larger "      \
    "opening. Nothing is read below the lowest row or beyond the largest opening. The table " \
    "does not say where the height is measured from."

#endif
