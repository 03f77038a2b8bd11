/* SPDX-License-Identifier: MIT */
#include "command/option_table.h"

#include <ingle/check.h>
#include <ingle/measure.h>
#include <ingle/survey.h>
#include <ingle/uncertainty.h>

#define CHECK (1u << VERB_CHECK)
#define EXPLAIN (1u << VERB_EXPLAIN)
#define ASSESS (1u << VERB_ASSESS)
#define DRAW (1u << VERB_DRAW)
#define SOLVE (1u << VERB_SOLVE)
#define SWEEP (1u << VERB_SWEEP)
#define COMPARE (1u << VERB_COMPARE)
#define WORKSHEET (1u << VERB_WORKSHEET)
#define EXERCISE (1u << VERB_EXERCISE)
#define DRAFT (1u << VERB_DRAFT)
#define LIST (1u << VERB_LIST)
/* The verbs that judge surveys. */
#define JUDGING (CHECK | EXPLAIN | ASSESS | DRAW | SOLVE | SWEEP | COMPARE | WORKSHEET)
/* Those that read surveys. */
#define SURVEYING (JUDGING | DRAFT)
/* Those that lead a quantity through its values. */
#define STEPPING (SOLVE | SWEEP)
/* Those that write pages of text, too. */
#define PAGES (SOLVE | COMPARE | WORKSHEET | EXERCISE | DRAFT)
#define EVERY ((1u << VERB_COUNT) - 1)
#define NONE (1u << VERB_NONE)

static const struct option_entry options[] = {
    {OPTION_LINES, "lines", CHECK, ARGUMENT_NONE,
     "read JSON Lines: every line in gives one line out, in the same order", NULL},
    {OPTION_STANDARD, "standard", SURVEYING, ARGUMENT_STANDARD,
     "judge by this standard, whatever the documents say; may be repeated", NULL},
    {OPTION_QUANTITY, "quantity", STEPPING, ARGUMENT_TEXT,
     "the quantity whose values are asked for, as opening.height or trim[0].distance", "PATH"},
    {OPTION_FROM, "from", STEPPING, ARGUMENT_TEXT,
     "its least value; without it, the least that is plausible", "AMOUNT"},
    {OPTION_TO, "to", STEPPING, ARGUMENT_TEXT,
     "its greatest value; without it, the greatest that is plausible", "AMOUNT"},
    {OPTION_STEP, "step", STEPPING, ARGUMENT_TEXT,
     "from one value to the next; without it, 1/16 in or 1 mm, and what is usual for others",
     "AMOUNT"},
    {OPTION_WITH, "with", SOLVE, ARGUMENT_TEXT,
     "another quantity: solve at each of its values", "PATH"},
    {OPTION_WITH_FROM, "with-from", SOLVE, ARGUMENT_TEXT, "the least value of the other",
     "AMOUNT"},
    {OPTION_WITH_TO, "with-to", SOLVE, ARGUMENT_TEXT, "the greatest value of the other",
     "AMOUNT"},
    {OPTION_WITH_STEP, "with-step", SOLVE, ARGUMENT_TEXT,
     "from one value of the other to the next; without it, some forty values", "AMOUNT"},
    {OPTION_RULE, "rule", STEPPING | EXPLAIN | ASSESS, ARGUMENT_TEXT,
     "only this rule, such as hearth-front", "RULE"},
    {OPTION_STRICT, "strict", SOLVE, ARGUMENT_NONE,
     "take what is too close to call for a failure", NULL},
    {OPTION_FORM, "form", EXPLAIN, ARGUMENT_WORD,
     "how much is said: all worked out; that with only a line for what is met; or a line for each "
     "finding; without it, worked",
     "worked|report|brief"},
    {OPTION_LEAST, "least", EXPLAIN, ARGUMENT_WORD,
     "leave out the findings with a milder verdict",
     "meets|unmeasured|by-listing|too-close|fails"},
    {OPTION_VIEW, "view", DRAW, ARGUMENT_WORD, "from where; without it, plan",
     "plan|elevation|section|roof"},
    {OPTION_FORMAT, "format", EXPLAIN, ARGUMENT_WORD,
     "what is written; without it, text", "text|markdown|html"},
    {OPTION_OPENING_AREA, "opening-area", DRAFT, ARGUMENT_TEXT, "area of the opening", "AREA"},
    {OPTION_FLUE_AREA, "flue-area", DRAFT, ARGUMENT_TEXT, "clear area of the flue", "AREA"},
    {OPTION_HYDRAULIC_DIAMETER, "hydraulic-diameter", DRAFT, ARGUMENT_TEXT,
     "hydraulic diameter of the flue; without --flue-area, the diameter of a round one", "LENGTH"},
    {OPTION_HEIGHT, "height", DRAFT, ARGUMENT_TEXT,
     "height from the firebox floor to the top of the flue", "LENGTH"},
    {OPTION_RISE, "rise", DRAFT, ARGUMENT_TEXT,
     "rise of the flue gas over the outdoor temperature, as 300 F; 300 F is a large fire", "RISE"},
    {OPTION_OUTDOOR_TEMPERATURE, "outdoor-temperature", DRAFT, ARGUMENT_TEXT,
     "outdoor temperature, as 20 F", "TEMPERATURE"},
    {OPTION_ROOM_TEMPERATURE, "room-temperature", DRAFT, ARGUMENT_TEXT,
     "room temperature, as 70 F", "TEMPERATURE"},
    {OPTION_ROOM_PRESSURE, "room-pressure", DRAFT, ARGUMENT_TEXT,
     "pressure of the room over that outdoors, as -5 Pa", "PRESSURE"},
    {OPTION_AIR_PRESSURE, "air-pressure", DRAFT, ARGUMENT_TEXT,
     "pressure of the outdoor air, as 29.92 inHg; it has no part in the velocity", "PRESSURE"},
    {OPTION_INLET_LOSS, "inlet-loss", DRAFT, ARGUMENT_TEXT,
     "loss of throat and smoke chamber, in velocity heads of the flue", "NUMBER"},
    {OPTION_FITTING_LOSS, "fitting-loss", DRAFT, ARGUMENT_TEXT,
     "loss of offsets and fittings, in the same", "NUMBER"},
    {OPTION_CAP_LOSS, "cap-loss", DRAFT, ARGUMENT_TEXT,
     "loss of cap and spark screen, in the same", "NUMBER"},
    {OPTION_FRICTION_FACTOR, "friction-factor", DRAFT, ARGUMENT_TEXT,
     "friction factor of the flue, as 1/30", "NUMBER"},
    {OPTION_CRITERION, "criterion", DRAFT, ARGUMENT_TEXT,
     "the mean velocity through the opening that is asked for, as 0.8 ft/s", "VELOCITY"},
    {OPTION_THROAT_AREA, "throat-area", DRAFT, ARGUMENT_TEXT, "clear area of the throat", "AREA"},
    {OPTION_INLET, "inlet", DRAFT, ARGUMENT_WORD,
     "compute the loss of the inlet from the throat, with such a lintel", "sharp|rounded"},
    {OPTION_FORMAT, "format", ASSESS, ARGUMENT_WORD,
     "what is written; without it, text; svg is a plot of one finding, and needs --rule",
     "text|markdown|html|svg"},
    {OPTION_FORMAT, "format", SWEEP, ARGUMENT_WORD,
     "what is written; without it, json", "json|csv|svg"},
    {OPTION_FORMAT, "format", SOLVE, ARGUMENT_WORD,
     "what is written; without it, json; svg is a plot, and needs --with",
     "json|text|markdown|html|svg"},
    {OPTION_FORMAT, "format", DRAFT, ARGUMENT_WORD, "what is written; without it, json",
     "json|text|markdown|html|svg"},
    {OPTION_FORMAT, "format", COMPARE, ARGUMENT_WORD,
     "what is written; without it, json", "json|text|markdown|html"},
    {OPTION_STANDARD, "standard", EXERCISE, ARGUMENT_STANDARD,
     "ask about this standard; may be repeated", NULL},
    {OPTION_UNIT, "unit", EXERCISE, ARGUMENT_UNIT, "show lengths in the answers in this unit",
     NULL},
    {OPTION_SEED, "seed", EXERCISE, ARGUMENT_TEXT,
     "which problem: the same number gives the same one; without it, 1", "NUMBER"},
    {OPTION_LEVEL, "level", EXERCISE, ARGUMENT_WORD,
     "from one rule to a whole fireplace with traps; without it, 1", "1|2|3|4"},
    {OPTION_PART, "part", EXERCISE, ARGUMENT_WORD, "which parts; without it, both",
     "both|problem|answers"},
    {OPTION_FORMAT, "format", EXERCISE, ARGUMENT_WORD, "what is written; without it, text",
     "json|text|markdown|html"},
    {OPTION_FORMAT, "format", WORKSHEET, ARGUMENT_WORD,
     "what is written; without it, text; json is a survey document to fill in",
     "json|text|markdown|html"},
    {OPTION_APPLIANCE, "appliance", WORKSHEET, ARGUMENT_CHOICE,
     "for this kind of appliance, in place of a survey document; needs --standard; the words are "
     "those of appliance.kind in `ingle list quantities`",
     "appliance.kind"},
    {OPTION_FUEL, "fuel", WORKSHEET, ARGUMENT_CHOICE, "with --appliance: what it burns",
     "appliance.fuel"},
    {OPTION_WIDTH, "width", PAGES | EXPLAIN | ASSESS, ARGUMENT_COLUMNS,
     "with --format text: the columns of a line; without it, those of the terminal or 79",
     NULL},
    {OPTION_STANDARD, "standard", LIST, ARGUMENT_STANDARD,
     "only what belongs to this standard; units, verdicts and statuses belong to none", NULL},
    {OPTION_AMENDMENTS, "amendments", JUDGING, ARGUMENT_FILE,
     "change the numbers of standards as this document of amendments says, a town's for all of its "
     "surveys; may be repeated; a survey's own amendments win", NULL},
    {OPTION_READING, "reading", JUDGING, ARGUMENT_READING,
     "where a publication can be read in more than one way, read it like this, whatever the "
     "documents say: see `ingle list readings`; may be repeated", NULL},
    {OPTION_BASIS, "basis", JUDGING, ARGUMENT_WORD,
     "judge by no rule whose numbers are known less well than this; without it, by all",
     "read|cited|from-memory|common-practice"},
    {OPTION_ALL, "all", CHECK, ARGUMENT_NONE, "report the rules that do not apply, too", NULL},
    {OPTION_ALL, "all", SWEEP, ARGUMENT_NONE,
     "keep the rules that say the same at every value, too", NULL},
    {OPTION_NO_WORKING, "no-working", CHECK, ARGUMENT_NONE,
     "leave out the steps of the calculations", NULL},
    {OPTION_UNIT, "unit", SURVEYING, ARGUMENT_UNIT,
     "show lengths in this unit, and areas to match", NULL},
    {OPTION_FAIL_ON, "fail-on", CHECK, ARGUMENT_GRAVITY,
     "exit with status 1 if a whole verdict is this grave or graver, or, with error, if a line "
     "cannot be used; may be repeated", NULL},
    {OPTION_UNBUFFERED, "unbuffered", CHECK, ARGUMENT_NONE,
     "with --lines: write each line out at once", NULL},
    {OPTION_PROBABILITY, "probability", CHECK, ARGUMENT_NONE,
     "tell, beside each verdict, the probability that the rule is met, from the tape that the "
     "survey names", NULL},
    {OPTION_DECISION, "decision", CHECK | ASSESS, ARGUMENT_DECISION,
     "with --probability or assess: decide by this rule", NULL},
    {OPTION_GUARD_BAND, "guard-band", CHECK | ASSESS, ARGUMENT_TEXT,
     "with --probability or assess: decide with a guard band of so many expanded uncertainties U, "
     "or one of those that ILAC-G8 names: six-sigma, three-sigma, ilac-g8-2009, iso-14253-1-2017",
     "R"},
    {OPTION_MONTE_CARLO, "monte-carlo", CHECK | ASSESS, ARGUMENT_TEXT,
     "with --probability or assess: count it in this many trials, too", "N"},
    {OPTION_SEED, "seed", CHECK | ASSESS, ARGUMENT_TEXT,
     "with --probability or assess: what the trials start from; the same gives the same", "S"},
    {OPTION_SEPARATE_TAPES, "separate-tapes", CHECK | ASSESS, ARGUMENT_NONE,
     "with --probability or assess: take each length as measured with a tape of its own", NULL},
    {OPTION_HELP, "help", EVERY, ARGUMENT_NONE, "show this help", NULL},
    {OPTION_VERSION, "version", NONE, ARGUMENT_NONE, "show the release", NULL},
};

const struct option_entry *option_at(size_t index)
{
    return index < sizeof options / sizeof options[0] ? &options[index] : NULL;
}

bool option_belongs(const struct option_entry *option, enum command_verb verb)
{
    return (option->verbs >> verb & 1) != 0;
}

/* The units that ingle_format takes are those of length. */
static size_t length_units(const char *words[WORDS_MOST])
{
    size_t count = 0;
    for (size_t i = 0; i < ingle_unit_count() && count < WORDS_MOST; i++) {
        const ingle_unit *unit = ingle_unit_at(i);
        if (ingle_unit_dimension(unit) == INGLE_LENGTH) {
            words[count++] = ingle_unit_id(unit);
        }
    }
    return count;
}

/* What is graver than meeting the rules, the gravest first. */
static size_t gravities(const char *words[WORDS_MOST])
{
    size_t count = 0;
    size_t verdict = ingle_verdict_count();
    while (verdict > INGLE_MEETS + 1 && count < WORDS_MOST - 1) {
        words[count++] = ingle_verdict_name((ingle_verdict)--verdict);
    }
    words[count++] = "error";
    return count;
}

static size_t decisions(const char *words[WORDS_MOST])
{
    size_t count = 0;
    for (; count < ingle_decision_rule_count() && count < WORDS_MOST; count++) {
        words[count] = ingle_decision_rule_name((ingle_decision_rule)count);
    }
    return count;
}

static size_t choices(const char *id, const char *words[WORDS_MOST])
{
    const ingle_quantity *quantity = ingle_quantity_find(id);
    size_t count = 0;
    for (; count < ingle_quantity_choice_count(quantity) && count < WORDS_MOST; count++) {
        words[count] = ingle_quantity_choice_at(quantity, count);
    }
    return count;
}

/* The words between the bars of an entry's form. */
static size_t own_words(const char *form, struct argument_words *words)
{
    size_t count = 0;
    char *at = words->kept;
    for (; *form != '\0' && at < words->kept + FORM_MOST - 1 && count < WORDS_MOST; form++) {
        if (at == words->kept || at[-1] == '\0') {
            words->words[count++] = at;
        }
        *at++ = *form == '|' ? '\0' : *form;
    }
    *at = '\0';
    return count;
}

void argument_words(const struct option_entry *option, struct argument_words *words)
{
    words->count = 0;
    if (option->argument == ARGUMENT_UNIT) {
        words->count = length_units(words->words);
    } else if (option->argument == ARGUMENT_GRAVITY) {
        words->count = gravities(words->words);
    } else if (option->argument == ARGUMENT_DECISION) {
        words->count = decisions(words->words);
    } else if (option->argument == ARGUMENT_WORD) {
        words->count = own_words(option->form, words);
    } else if (option->argument == ARGUMENT_CHOICE) {
        words->count = choices(option->form, words->words);
    }
}

const char *argument_form(const struct option_entry *option)
{
    return option->argument == ARGUMENT_FILE      ? "FILE"
           : option->argument == ARGUMENT_READING ? "ID=OPTION"
           : option->argument == ARGUMENT_TEXT    ? option->form
           : option->argument == ARGUMENT_CHOICE  ? "WORD"
           : option->argument == ARGUMENT_COLUMNS ? "COLUMNS"
                                                  : "ID";
}

static const char *const catalogues[] = {"standards", "rules",    "readings", "quantities",
                                         "units",     "verdicts", "statuses", "draft"};
static const char *const documents[] = {"survey", "report", "amendments", "solution", "frontier",
                                        "sweep", "comparison", "exercise", "draft", "error"};

#define WORDS(list) list, sizeof list / sizeof list[0]

static const struct verb_entry verbs[VERB_COUNT] = {
    [VERB_CHECK] = {"check", "[FILE]...", NULL, 0,
                    "Judges survey documents by the standards they name, and writes a report for "
                    "each. - or no FILE is standard input.",
                    NULL, NULL},
    [VERB_EXPLAIN] = {"explain", "[FILE]", NULL, 0,
                      "Writes the report on a survey as a worked solution, in the order of the "
                      "visit: what was measured, the rule and its source, the calculation, the "
                      "verdict, what would put it right, and what is dangerous meanwhile.",
                      NULL, NULL},
    [VERB_ASSESS] = {"assess", "[FILE]", NULL, 0,
                     "Writes how sure the findings are: how uncertain each length is by the tape "
                     "that the survey names, the probability that each rule is met, and what is "
                     "decided by it. The verdicts stay as they are.",
                     NULL, NULL},
    [VERB_DRAW] = {"draw", "[FILE]", NULL, 0,
                   "Draws a view of the fireplace to scale, as SVG: what was measured, what is "
                   "required and what is missing.",
                   NULL, NULL},
    [VERB_SOLVE] = {"solve", "[FILE]", NULL, 0,
                    "Finds the values of a quantity at which no rule fails that depends on it, all "
                    "else as surveyed, at every graduation of the tape; and how far they are from "
                    "what was surveyed.",
                    NULL, NULL},
    [VERB_SWEEP] = {"sweep", "[FILE]", NULL, 0,
                    "Leads a quantity through its values, and writes what each rule requires and "
                    "comes to at each of them.",
                    NULL, NULL},
    [VERB_COMPARE] = {"compare", "[FILE]", NULL, 0,
                      "Judges one survey by many standards, and sets rule beside rule: what each "
                      "requires, what changes from one to the next, and which are met as a whole.",
                      NULL, NULL},
    [VERB_WORKSHEET] = {"worksheet", "[FILE]", NULL, 0,
                        "Writes what has to be measured and observed, in the order of the visit: "
                        "for a kind of appliance, or what a survey still lacks.",
                        NULL, NULL},
    [VERB_EXERCISE] = {"exercise", "", NULL, 0,
                       "Makes up a practice problem: a fireplace, what was measured at it, "
                       "questions, and the answers worked out. The fireplace is invented.",
                       NULL, NULL},
    [VERB_DRAFT] = {"draft", "[FILE]", NULL, 0,
                    "Estimates how the fireplace draws: the mean velocity through its opening, "
                    "what would reach a criterion, and how sure that is. It decides no rule, and "
                    "promises nothing about smoke.",
                    NULL, NULL},
    [VERB_LIST] = {"list", NULL, WORDS(catalogues), "Writes one of the catalogues as JSON.",
                   "The name of a catalogue is needed.", "No catalogue is called"},
    [VERB_SCHEMA] = {"schema", NULL, WORDS(documents),
                     "Writes the JSON Schema of a document. What `ingle worksheet` writes is a "
                     "survey.",
                     "The name of a document is needed.",
                     "There is no schema of a document called"},
    [VERB_NONE] = {NULL, NULL, NULL, 0,
                   "Judges what was measured at a fireplace by the published rules adopted there. "
                   "A finding says whether a number of a publication is met; the local authority "
                   "and the listing of the appliance decide.",
                   NULL, NULL},
};

const struct verb_entry *verb_at(enum command_verb verb)
{
    return &verbs[verb];
}
