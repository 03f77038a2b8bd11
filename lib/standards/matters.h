/* SPDX-License-Identifier: MIT */
/*
 * What rules are about, the same in every standard.
 */
#ifndef INGLE_STANDARDS_MATTERS_H
#define INGLE_STANDARDS_MATTERS_H

#include "survey/quantity.h"

enum { MATTER_JUDGED = 4, MATTER_CHANGES = 4 };

enum matter_id {
#define MATTER(name, id, ...) MATTER_##name,
#include "standards/matters.def"
#undef MATTER
    MATTER_COUNT
};

struct matter {
    const char *id;
    const char *label;
    const char *caution;
    const char *refer;      /* who should look next; NULL for nobody in particular */
    const char *inspection; /* which inspection is called for, and why; NULL for none */
    enum quantity_id listing; /* the listing's figure on the same matter; 0 where there is none */
    /* Both lists end with QUANTITY_APPLIANCE_KIND, which no rule judges and no remedy changes. */
    enum quantity_id judged[MATTER_JUDGED];
    enum quantity_id changes[MATTER_CHANGES];
};

extern const struct matter matters[MATTER_COUNT];

size_t matter_judged_count(enum matter_id matter);
size_t matter_change_count(enum matter_id matter);

#endif
