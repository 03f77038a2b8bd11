/* SPDX-License-Identifier: MIT */
/*
 * What rules are about, the same in every standard.
 */
#ifndef INGLE_STANDARDS_MATTERS_H
#define INGLE_STANDARDS_MATTERS_H

#include "survey/quantity.h"

enum { MATTER_JUDGED = 4, MATTER_CHANGES = 4, MATTER_AS = 2 };

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
    const char *mend;       /* what puts it right where no remedy is computed; or NULL */
    const char *refer;      /* who should look next; NULL for nobody in particular */
    const char *inspection; /* which inspection is called for, and why; NULL for none */
    /* The same where it is recorded whether the fuel changes: no, yes; or NULL. */
    const char *inspection_by_fuel[2];
    enum quantity_id listing; /* the listing's figure on the same matter; 0 where there is none */
    /* Both lists end with QUANTITY_APPLIANCE_KIND, which no rule judges and no remedy changes. */
    enum quantity_id judged[MATTER_JUDGED];
    enum quantity_id changes[MATTER_CHANGES];
    /* What is seen, and the matter whose words it gets; the list ends with the first matter. */
    struct {
        int64_t state;
        enum matter_id words;
    } as[MATTER_AS];
};

extern const struct matter matters[MATTER_COUNT];

size_t matter_judged_count(enum matter_id matter);
/* The matter whose words belong to a state: its own, or another's. */
const struct matter *matter_as(enum matter_id matter, int64_t state);

size_t matter_change_count(enum matter_id matter);

#endif
