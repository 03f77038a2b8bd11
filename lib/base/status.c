/* SPDX-License-Identifier: MIT */
#include <ingle/status.h>

static const struct {
    ingle_status status;
    const char *name;
    const char *text;
} statuses[] = {
    {INGLE_OK, "done", "Done."},
    {INGLE_ROUNDED, "rounded",
     "Done; the amount is no whole number of base units and the nearest one was taken."},
    {INGLE_CUT, "cut", "Done; the buffer was too small and its text is cut."},
    {INGLE_ERROR_MEMORY, "memory", "Memory could not be had."},
    {INGLE_ERROR_ARGUMENT, "argument", "An argument is missing or not among those the call takes."},
    {INGLE_ERROR_STRUCT_SIZE, "struct-size", "The size of a struct is not one that was released."},
    {INGLE_ERROR_STRUCT_NEWER, "struct-newer",
     "A struct asks for something that this release does not know."},
    {INGLE_ERROR_EMPTY, "empty", "An amount is due and the text is empty."},
    {INGLE_ERROR_NUMBER, "number", "A number is due here."},
    {INGLE_ERROR_COMMA, "comma",
     "Write a decimal point, and no separator between thousands: a comma can mean either."},
    {INGLE_ERROR_ZERO_DENOMINATOR, "zero-denominator", "The fraction has zero below its line."},
    {INGLE_ERROR_OVERFLOW, "overflow", "The amount is too large to be held exactly."},
    {INGLE_ERROR_UNIT_MISSING, "unit-missing", "The number needs a unit."},
    {INGLE_ERROR_UNIT_UNKNOWN, "unit-unknown", "No unit known here is written like this."},
    {INGLE_ERROR_DIMENSION, "dimension", "The unit measures something else than is due here."},
    {INGLE_ERROR_TRAILING_TEXT, "trailing-text", "The amount ends before its text does."},
    {INGLE_ERROR_NEGATIVE, "negative", "This amount cannot be negative."},
    {INGLE_ERROR_IMPLAUSIBLE, "implausible", "The amount lies outside the plausible range."},
    {INGLE_ERROR_UNKNOWN_QUANTITY, "unknown-quantity", "No quantity has this id."},
    {INGLE_ERROR_UNKNOWN_CHOICE, "unknown-choice", "The quantity has no such choice."},
    {INGLE_ERROR_UNKNOWN_STANDARD, "unknown-standard", "No standard has this id."},
    {INGLE_ERROR_UNKNOWN_RULE, "unknown-rule", "The standard has no rule with this id."},
    {INGLE_ERROR_UNKNOWN_NUMBER, "unknown-number", "The rule has no number with this name."},
    {INGLE_ERROR_CONTRADICTION, "contradiction", "Two things recorded cannot both be so."},
    {INGLE_ERROR_NO_STANDARD, "no-standard",
     "Name the standards adopted where the house stands: that is a local fact, and nothing is "
     "taken for granted."},
    {INGLE_ERROR_ENCODING, "encoding", "The bytes are not UTF-8 text."},
    {INGLE_ERROR_JSON, "json", "The document is not JSON as RFC 8259 has it."},
    {INGLE_ERROR_DUPLICATE_NAME, "duplicate-name", "An object has two members of the same name."},
    {INGLE_ERROR_UNKNOWN_NAME, "unknown-name", "This name is not known here."},
    {INGLE_ERROR_MISSING_NAME, "missing-name", "A name that is needed is not here."},
    {INGLE_ERROR_TYPE, "type", "A value of another type is due here."},
    {INGLE_ERROR_DEPTH, "depth", "The document is nested deeper than any survey is."},
    {INGLE_ERROR_LENGTH, "length", "The document is longer than any survey is."},
    {INGLE_ERROR_IO, "io", "Reading or writing failed."},
    {INGLE_ERROR_USAGE, "usage", "The command line cannot be used."},
    {INGLE_ERROR_RANGE, "range",
     "The range has no value in it, or too many: it has to rise, and its step be above zero."},
    {INGLE_ERROR_NOTHING_MEASURED, "nothing-measured",
     "Nothing was measured of what this would be made from."},
    {INGLE_ERROR_NO_CITATION, "no-citation",
     "An amendment needs a citation: where the local authority says so."},
};

enum { STATUS_COUNT = sizeof statuses / sizeof statuses[0] };

const char *ingle_status_name(ingle_status status)
{
    for (size_t i = 0; i < STATUS_COUNT; i++) {
        if (statuses[i].status == status) {
            return statuses[i].name;
        }
    }
    return status > 0 ? "caution" : "failure";
}

const char *ingle_status_text(ingle_status status)
{
    for (size_t i = 0; i < STATUS_COUNT; i++) {
        if (statuses[i].status == status) {
            return statuses[i].text;
        }
    }
    return status > 0 ? "Done, with a caution that this release does not know."
                      : "Failed, for a reason that this release does not know.";
}

size_t ingle_status_count(void)
{
    return STATUS_COUNT;
}

ingle_status ingle_status_at(size_t index, ingle_status *status)
{
    if (index >= STATUS_COUNT || status == NULL) {
        return INGLE_ERROR_ARGUMENT;
    }
    *status = statuses[index].status;
    return INGLE_OK;
}
