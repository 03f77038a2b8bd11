/* SPDX-License-Identifier: MIT */
#include "check/notices.h"

#include "check/report.h"

static const char who_decides[] =
    "The numbers are those that the named publications print. The local authority, the listing of "
    "the appliance and licensed practice decide.";

static const char what_is_not_said[] =
    "A rule that is met says nothing of what was not measured or cannot be seen. Have the "
    "fireplace and its chimney inspected before they are used.";

static const char amended[] =
    "Local amendments took the place of printed numbers; where they come from stands with each "
    "finding.";

static const char *const basis_cautions[] = {
    [INGLE_BASIS_READ] = NULL,
    [INGLE_BASIS_CITED] = "What is asked here is known from another source that cites the "
                          "publication; confirm it there before relying on it.",
    [INGLE_BASIS_FROM_MEMORY] = "What is asked here is from memory; confirm it in the publication "
                                "before relying on it.",
    [INGLE_BASIS_COMMON_PRACTICE] = "What is asked here is common practice with no publication "
                                    "behind it: advice, not code.",
};

const char *basis_caution(ingle_basis basis)
{
    return basis_cautions[basis];
}

static void add(struct ingle_report *report, const char *notice)
{
    for (size_t i = 0; i < report->notice_count; i++) {
        if (report->notices[i] == notice) {
            return;
        }
    }
    if (report->notice_count < NOTICES) {
        report->notices[report->notice_count++] = notice;
    }
}

void notices_collect(struct ingle_report *report, const ingle_amendments *amendments)
{
    add(report, who_decides);
    add(report, what_is_not_said);
    for (size_t i = 0; i < report->standard_count; i++) {
        if (amendments_concern(amendments, report->standards[i])) {
            add(report, amended);
        }
    }
    for (size_t i = 0; i < report->standard_count; i++) {
        add(report, report->standards[i]->note);
    }
}
