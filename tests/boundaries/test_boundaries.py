#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Every number of every row of every standard: at its limit, one base unit below, one above.

The rows come from the library's catalogues, so a new row is tested without a change here; a new
formula needs its limits in limits.py, and the test fails until it has them. Each amount is written
in every unit and manner that a document knows (written.py). INGLE_COMMAND names the command.

That the numbers themselves are those of the publications is for tests/published to say.
"""
import json
import os
import subprocess
import unittest
from fractions import Fraction

import applies
import counting
import limits
import table_limits
import written

COMMAND = os.environ["INGLE_COMMAND"]


def catalogue(name):
    done = subprocess.run([COMMAND, "list", name], check=True, text=True, encoding="utf-8",
                          capture_output=True)
    return json.loads(done.stdout)


QUANTITIES = {quantity["id"]: quantity for quantity in catalogue("quantities")}
RULES = catalogue("rules")


def pointer(quantity):
    group, name = quantity.split(".")
    item = "/0" if QUANTITIES[quantity].get("repeats") else ""
    return "/survey/%s%s/%s" % (group, item, name)


def condition_parts(rule):
    """The parts of a rule's condition."""
    return applies.parts(rule, QUANTITIES)


def conditions(rule):
    """What has to be recorded for a rule to apply, read from the catalogue's sentence."""
    survey, excluded = {}, {}
    for quantity, test, negated, value, _ in condition_parts(rule):
        if test:
            survey[quantity] = value + applies.AMOUNT_TESTS[test][0]
        elif QUANTITIES[quantity]["dimension"] == "flag":
            survey[quantity] = (value == ("yes",)) != negated
        elif negated:
            excluded.setdefault(quantity, set()).update(value)
        else:
            survey[quantity] = value[0]
    for quantity, values in excluded.items():
        survey.setdefault(quantity, next(choice for choice in choices_of(quantity)
                                         if choice not in values))
    return survey


def choices_of(quantity):
    """What can be seen of a choice or flag, in the order of the catalogue."""
    described = QUANTITIES[quantity]
    if described["dimension"] == "flag":
        return (False, True)
    return tuple(choice["id"] for choice in described.get("choices", ()))


def put(survey, quantity, value):
    group, name = quantity.split(".")
    if QUANTITIES[quantity].get("repeats"):
        survey.setdefault(group, [{}])[0][name] = value
    else:
        survey.setdefault(group, {})[name] = value


def put_plain(survey, quantity, value):
    """Records a choice or flag as it is, an amount in one plain way."""
    if isinstance(value, (str, bool)):
        put(survey, quantity, value)
    else:
        put(survey, quantity, written.plain(value, QUANTITIES[quantity]["dimension"]))


def is_beyond(quantity, amount):
    """Whether a count is one that a document may not have: there is no fourth level of three."""
    return (QUANTITIES[quantity]["dimension"] == "count"
            and amount > QUANTITIES[quantity]["most"]["value"])


def is_asked_of(rule, quantity, seen):
    """Whether a rule asks anything where the very thing it judges is seen to be so."""
    word = {True: "yes", False: "no"}.get(seen, seen)
    return all(part.admits(word) for part in condition_parts(rule)
               if part.quantity == quantity and not part.test)


def by_another_row(rule, probe, value):
    """The verdict of the same rule's row that asks where this one does not, if there is one."""
    known = {**conditions(rule), **probe.fixed, probe.varied: value}
    for row in alternatives(rule):
        if row["formula"] == "observed" and all(holds(part, known)
                                                for part in condition_parts(row)):
            wanted = numbers_of(row)["state"] == value
            return limits.MEETS if wanted == (row["relation"] == "is") else limits.FAILS
    return limits.NOT_APPLICABLE


def values_of(rule, probe):
    """(what is tried, value as a document has it, its unit, expected verdict)."""
    if isinstance(probe, limits.Sight):
        for value, expected in probe.expected.items():
            asked = is_asked_of(rule, probe.varied, value)
            yield value, value, None, expected if asked else by_another_row(rule, probe, value)
        return
    dimension = QUANTITIES[probe.varied]["dimension"]
    for off, expected in zip((-1, 0, 1), probe.expected):
        if probe.amount + off >= 0 and not is_beyond(probe.varied, probe.amount + off):
            for unit, value, of_document in written.ways(probe.amount + off, dimension):
                yield (off, unit or None), value, of_document, expected


def document_of(rule, known, varied, value, unit):
    """A document that records what is known, and one more thing as it is written."""
    survey = {}
    for quantity, amount in known.items():
        put_plain(survey, quantity, amount)
    put(survey, varied, value)
    document = {"standards": [rule["standard"]], "survey": survey}
    if unit:
        document["unit"] = unit
    if "follows" in rule:
        document["readings"] = {rule["follows"]["reading"]: rule["follows"]["option"]}
    return document


def documents(rule, probe, amendments, tried=None):
    """(what is tried, document text, expected verdict) for a probe, each amount in every way.

    What is tried is added to `tried`, as counting.py counts it.
    """
    for what, value, unit, expected in values_of(rule, probe):
        known = {**conditions(rule), **probe.fixed}
        document = document_of(rule, known, probe.varied, value, unit)
        if amendments:
            document["amendments"] = amendments
        if tried is not None:
            tried.add(what)
        yield "%s = %s" % (probe.varied, value), written.finish(json.dumps(document)), expected


class Trial:
    """Documents that wait to be judged together, with what each must give."""

    def __init__(self):
        self.waiting = []
        self.failures = []
        self.count = 0

    def add(self, rule, judged, told, text, expected):
        self.waiting.append((rule, judged, told, text, expected))
        if len(self.waiting) >= 1000:
            self.run()

    def run(self):
        lines = "".join(text + "\n" for _, _, _, text, _ in self.waiting)
        done = subprocess.run([COMMAND, "check", "--lines", "--no-working"],
                              input=lines.encode("utf-8"), capture_output=True, check=False)
        reports = done.stdout.split(b"\n")[:-1]
        if done.returncode != 0 or len(reports) != len(self.waiting):
            raise AssertionError("status %d, %d reports for %d documents: %s" % (
                done.returncode, len(reports), len(self.waiting), done.stderr))
        for (rule, judged, told, text, expected), report in zip(self.waiting, reports):
            got = self.judged(rule, judged, json.loads(report.decode("utf-8"), parse_float=str))
            if not self.is_right(got, expected):
                self.failures.append("%s %s: expected %s with %s, got %s\n    %s" % (
                    rule["standard"], rule["rule"], expected, told, got, text))
        self.count += len(self.waiting)
        self.waiting = []

    @staticmethod
    def is_right(got, expected):
        return got == [expected] or (expected is limits.NOT_APPLICABLE and not got)

    @staticmethod
    def findings(rule, judged, report):
        wanted, subject = rule["rule"], pointer(judged)
        return [finding for finding in report["findings"]
                if finding["rule"] == wanted and finding["subject"] == subject]

    def judged(self, rule, judged, report):
        if "error" in report:
            return report["error"]
        return [self.told(finding, judged)
                for finding in self.findings(rule, judged, report)]

    @staticmethod
    def told(finding, judged):
        if "usual" not in finding:
            return limits.OUTSIDE if limits.OUTSIDE in finding["sentence"] else finding["verdict"]
        assert finding["verdict"] == "by-listing", finding
        return limits.told_usual(amount_shown(finding["usual"], QUANTITIES[judged]["dimension"]))


class RowsTrial(Trial):
    """The same of what is required by each of the rows that apply, however many they are."""

    def judged(self, rule, judged, report):
        if "error" in report:
            return report["error"]
        return {(finding["section"], finding.get("reading"),
                 required_of(finding, QUANTITIES[judged]["dimension"]))
                for finding in self.findings(rule, judged, report)
                if finding["verdict"] != "unmeasured" or limits.OUTSIDE in finding["sentence"]}

    @staticmethod
    def is_right(got, expected):
        if all(required is not None for _, _, required in expected):
            return got == expected
        return {each[:2] for each in got} == {each[:2] for each in expected}


def alternatives(rule):
    """The rows of a rule's id, itself among them, that can hold beside each other."""
    return [row for row in RULES
            if (row["standard"], row["rule"]) == (rule["standard"], rule["rule"])
            and follows_alike(row, rule)]


def required_of(finding, dimension):
    """What a finding requires: base units, or the name of a choice; OUTSIDE what is printed."""
    if limits.OUTSIDE in finding["sentence"]:
        return limits.OUTSIDE
    return amount_shown(finding["required"], dimension)


def amount_shown(shown, dimension):
    """An amount as a report shows it: base units, or the name of a choice."""
    if dimension in ("flag", "choice"):
        return shown["text"]
    if dimension == "count":
        return int(shown["value"])
    return round(Fraction(shown["value"]) * written.SIZES[shown.get("unit")])


def holds(part, known):
    """Whether a part of a condition holds; None where nothing is known of it."""
    amount = known.get(part.quantity, QUANTITIES[part.quantity].get("assumed"))
    if amount is None:
        return part.unknown
    if part.test:
        return applies.AMOUNT_TESTS[part.test][1](amount, part.value)
    return part.admits({True: "yes", False: "no"}.get(amount, amount))


def follows_alike(row, rule):
    """Whether a row belongs to the reading that a document for a rule follows."""
    return (row.get("follows") == rule.get("follows")
            or row.get("follows", {}).get("reading") != rule.get("follows", {}).get("reading"))


def requirement(row, known):
    """What a row requires, where that is printed or a share or left out; else None."""
    if row["formula"] == "not-printed":
        return limits.OUTSIDE
    numbers, source = numbers_of(row), row.get("from", [None])[0]
    if row["formula"] == "share" and source in known:
        return limits.times(limits.Row(row["relation"], None, None, None, None), known[source],
                            numbers["ratio"])
    if row["formula"] not in ("fixed", "observed"):
        return None
    number = next(iter(numbers.values()))
    return {True: "yes", False: "no"}.get(number, number)


def due_rows(rule, judged, known):
    """(section, reading, requirement) of each row of a rule's id that applies to what is known."""
    return {(row["section"], row.get("reading"), requirement(row, known))
            for row in alternatives(rule)
            if judged in row["judges"] and all(holds(part, known) for part in condition_parts(row))}


def possible_choices(rule, judged):
    """What can be seen of the judged quantity where the rule applies."""
    excluded = {word for quantity, test, negated, words, _ in condition_parts(rule)
                if quantity == judged and negated and not test for word in words}
    return tuple(choice for choice in choices_of(judged) if choice not in excluded)


def most_of(source):
    """The longest that an input can plausibly be; None for what is no length."""
    if source is None or QUANTITIES[source]["dimension"] != "length":
        return None
    most = QUANTITIES[source]["most"]
    return int(Fraction(str(most["value"])) * written.SIZES[most["unit"]])


def probes_of(rule, numbers):
    """(judged quantity, probe) for every limit of a row."""
    formula = {**limits.FORMULAS, **table_limits.FORMULAS}.get(rule["formula"])
    if formula is None:
        raise AssertionError("limits.py does not know the formula %r" % rule["formula"])
    source = rule.get("from", [None])[0]
    for judged in rule["judges"]:
        row = limits.Row(rule["relation"], judged, source,
                         source and QUANTITIES[source]["dimension"], numbers,
                         tuple(rule.get("from", ())), choices=possible_choices(rule, judged),
                         source_choices=choices_of(source) if source else (),
                         table=table_limits.table_of(rule), source_most=most_of(source))
        for probe in formula(row):
            yield judged, probe


def number_of(rule, number):
    dimension = QUANTITIES[rule["judges"][0]]["dimension"]
    if dimension == "flag":
        return number["text"] == "yes"
    return number["text"] if dimension == "choice" else written.read_number(number, dimension)


def numbers_of(rule):
    return {name: number_of(rule, number) for name, number in rule["numbers"].items()}


def has_amounts(rule, name):
    """Whether an amendment can set a rule's number: what is to be seen is none."""
    return not isinstance(numbers_of(rule)[name], (str, bool))


def amended(rule, name, value):
    """Another number in the place of one of a rule's, and how an amendment writes it."""
    judged = rule["judges"][0]
    number = rule["numbers"][name]
    unit = number.get("unit")
    if unit is None and QUANTITIES[judged]["dimension"] == "count":
        return value + 1, value + 1
    if unit is None:
        changed = value * 9 // 8
        return changed, "%d/%d" % (changed, written.RATIO_ONE)
    size = written.SIZES[unit]
    changed = value + (size if unit.endswith("2") else size // 64)
    return changed, "%d/%d %s" % (changed, size, unit)


# Limits beside which there is no amount: no level of inspection above the third can be recorded.
ENDS = {("nfpa-211-inspections", "inspection-opened-up", "limit",
         "inspection.level was not tried at [(1, None)]")}


# Where another row of the same rule takes over with the same number: nothing is to be seen there.
TAKEN_OVER = {("adj-2010", "flue-area", "opening.width"),
              ("adj-2010", "flue-shorter-side", "opening.width"),
              ("adj-2010", "adjacent-wall-above-hearth", "adjacent-wall.hearth-distance"),
              ("nhbc-2011", "room-vent-area", "gas.input")}


class Boundaries(unittest.TestCase):
    maxDiff = None

    def assert_done(self, trial):
        trial.run()
        if trial.failures:
            self.fail("%d of %d failed, the first:\n%s" % (
                len(trial.failures), trial.count, "\n".join(trial.failures[:5])))

    def assert_can_fail(self, probe):
        """Neighbouring amounts must not all give the same: a probe of that kind proves nothing.

        Unless what they give is itself the number.
        """
        expected = probe.expected
        if isinstance(probe, limits.Probe) and expected == 3 * (limits.told_usual(probe.amount),):
            return
        if isinstance(probe, limits.Sight):
            expected = expected.values()
        self.assertGreater(len(set(expected)), 1, probe)

    def test_every_unit_is_written_in(self):
        units = catalogue("units")
        for dimension in written.WAYS:
            with self.subTest(dimension):
                known = {unit["id"] for unit in units if unit["dimension"] == dimension}
                self.assertEqual(written.units_of(dimension), known - written.INEXACT_UNITS)

    def test_every_number_of_every_row(self):
        trial = Trial()
        lacking = set()
        for rule in RULES:
            count, amounts = counting.Numbers(rule), set()
            for judged, probe in probes_of(rule, numbers_of(rule)):
                self.assert_can_fail(probe)
                tried = set()
                for told, text, expected in documents(rule, probe, None, tried):
                    trial.add(rule, judged, told, text, expected)
                count.add(probe, tried)
                if isinstance(probe, limits.Probe):
                    amounts.add((probe.varied, probe.amount))
            for name, why in count.lacking(lambda quantity: possible_choices(rule, quantity),
                                           lambda quantity: QUANTITIES[quantity]["dimension"]):
                lacking.add((rule["standard"], rule["rule"], name, why))
            table = table_limits.table_of(rule)
            if table is not None:
                for quantity, amount in counting.untried_of_table(rule, table, amounts):
                    lacking.add((rule["standard"], rule["rule"], "the table",
                                 "%s was not tried at %s" % (quantity, amount)))
        self.assertEqual(lacking, ENDS)
        self.assert_done(trial)

    def lacking(self, rule, probe, tried):
        count = counting.Numbers(rule)
        count.add(probe, tried)
        return list(count.lacking(lambda quantity: possible_choices(rule, quantity),
                                  lambda quantity: QUANTITIES[quantity]["dimension"]))

    def test_what_is_left_out_is_noticed(self):
        """A unit or a side that no document has, and a cell or key of a table without a probe."""
        for formula in ("fixed", "observed"):
            rule = next(rule for rule in RULES if rule["formula"] == formula)
            _, probe = next(probes_of(rule, numbers_of(rule)))
            tried = set()
            list(documents(rule, probe, None, tried))
            self.assertEqual(self.lacking(rule, probe, tried), [])
            for each in tried:
                self.assertEqual(len(self.lacking(rule, probe, tried - {each})), 1)
        for formula in table_limits.FORMULAS:
            rule = next(rule for rule in RULES if rule["formula"] == formula
                        and any(cell for line in rule["table"]["cells"] for cell in line))
            table = table_limits.table_of(rule)
            amounts = {(probe.varied, probe.amount)
                       for _, probe in probes_of(rule, numbers_of(rule))}
            self.assertEqual(counting.untried_of_table(rule, table, amounts), set())
            self.assertGreater(len(counting.untried_of_table(rule, table, set())), len(table.cells))

    def test_every_amount_in_a_condition(self):
        """Round its limit just the rows apply whose conditions hold, each with its number."""
        trial, covered = RowsTrial(), 0
        for rule in RULES:
            for quantity, test, _, limit, _ in condition_parts(rule):
                if test:
                    covered += 1
                    tried = self.try_condition(trial, rule, quantity, limit)
                    self.assertEqual(tried, {off for off in (-1, 0, 1) if limit + off >= 0}, rule)
        self.assert_done(trial)
        self.assertGreater(covered, 0)

    def try_condition(self, trial, rule, quantity, limit):
        """Records amounts round a condition's limit; how far off it they were."""
        judged, known = self.judged_beside(rule, quantity)
        tried, expected = set(), {}
        for off in (-1, 0, 1):
            if limit + off >= 0:
                expected[off] = due_rows(rule, judged, {**known, quantity: limit + off})
        if len({frozenset(each) for each in expected.values()}) == 1:
            self.assertIn((rule["standard"], rule["rule"], quantity), TAKEN_OVER)
        for off, rows in expected.items():
            tried.add(off)
            for _, value, unit in written.ways(limit + off, QUANTITIES[quantity]["dimension"]):
                document = document_of(rule, known, quantity, value, unit)
                trial.add(rule, judged, "%s = %s" % (quantity, value),
                          written.finish(json.dumps(document)), rows)
        return tried

    @staticmethod
    def judged_beside(rule, quantity):
        """A quantity that a rule judges, and what has to be known for it to be, all but one."""
        if rule["formula"] == "not-printed":
            judged = rule["judges"][0]
            amount = 1 if QUANTITIES[judged]["dimension"] == "count" else written.INCH
            return judged, {**conditions(rule), judged: amount}
        judged, probe = next((judged, probe)
                             for judged, probe in probes_of(rule, numbers_of(rule))
                             if quantity not in (judged, probe.varied))
        known = {**conditions(rule), **probe.fixed}
        known[probe.varied] = (next(iter(probe.expected)) if isinstance(probe, limits.Sight)
                               else probe.amount)
        return judged, known

    def test_every_standard_has_rows(self):
        for standard in catalogue("standards"):
            with self.subTest(standard["id"]):
                self.assertTrue([rule for rule in RULES if rule["standard"] == standard["id"]])

    def test_amended_numbers(self):
        """One row of each formula, with every one of its numbers amended."""
        trial = Trial()
        rows = {}
        for rule in RULES:
            if any(has_amounts(rule, name) for name in rule["numbers"]):
                rows.setdefault(rule["formula"], rule)
        for rule in rows.values():
            changed = {name: amended(rule, name, value)
                       for name, value in numbers_of(rule).items()}
            amendments = [{"standard": rule["standard"], "rule": rule["rule"],
                           "set": {name: text for name, (_, text) in changed.items()},
                           "citation": "Quarry Row by-law 3"}]
            numbers = {name: value for name, (value, _) in changed.items()}
            self.assertEqual(set(numbers.values()) & set(numbers_of(rule).values()), set())
            for judged, probe in probes_of(rule, numbers):
                self.assert_can_fail(probe)
                for told, text, expected in documents(rule, probe, amendments):
                    trial.add(rule, judged, told, text, expected)
        self.assert_done(trial)

    def test_a_wrong_limit_is_found(self):
        """With every expectation turned round, every document fails."""
        rule = next(rule for rule in RULES if rule["formula"] == "fixed")
        trial = Trial()
        for judged, probe in probes_of(rule, numbers_of(rule)):
            for told, text, expected in documents(rule, probe, None):
                other = limits.FAILS if expected == limits.MEETS else limits.MEETS
                trial.add(rule, judged, told, text, other)
        trial.run()
        self.assertGreater(trial.count, 0)
        self.assertEqual(len(trial.failures), trial.count)


if __name__ == "__main__":
    unittest.main()
