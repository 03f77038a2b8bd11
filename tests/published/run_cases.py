#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Runs published cases through `ingle check` and compares what must come out.

    INGLE_COMMAND=/path/to/ingle run_cases.py [FILE...]

Without a file, every *.json beside this program is run. README.md says what a case looks like.
Prints each case that failed with what was expected and what came, then `N passed, N failed`.
Ends with status 0 if none failed, 1 if one did, 2 if the command line cannot be used.
"""
import json
import os
import subprocess
import sys
from pathlib import Path

KINDS = ("published", "derived", "common-practice", "from-memory")
VERDICTS = ("not-applicable", "meets", "unmeasured", "by-listing", "too-close", "fails")
AMOUNTS = ("measured", "required", "margin", "usual")

# The known words at each place: name -> (type, whether it is needed).
FILE_WORDS = {"title": (str, True), "cases": (list, True)}
CASE_WORDS = {"name": (str, True), "source": (dict, True), "kind": (str, True),
              "note": (str, False), "document": (dict, True), "also": (list, False),
              "arguments": (list, False), "expect": (dict, True), "disagrees": (str, False)}
SOURCE_WORDS = {"publication": (str, True), "section": (str, False), "edition": (str, False)}
EXPECT_WORDS = {"verdict": (str, False), "findings": (list, True), "absent": (list, False),
                "unmeasured": (list, False)}
FINDING_WORDS = {"standard": (str, False), "rule": (str, True), "subject": (str, False),
                 "reading": (str, False), "verdict": (str, False), "measured": (str, False),
                 "required": (str, False), "margin": (str, False), "usual": (str, False),
                 "remedy": (list, False)}
REMEDY_WORDS = {"change": (str, True), "to": (str, True)}


class Unusable(Exception):
    """A case or file that does not say what a case has to say."""


# ---- reading cases ------------------------------------------------------------------------------

def unique_members(pairs):
    members = dict(pairs)
    if len(members) != len(pairs):
        raise Unusable("a name stands twice in one object: %s" % [name for name, _ in pairs])
    return members


def check_words(value, words, place):
    """Holds an object to the words known at its place, their types, and those that are needed."""
    if not isinstance(value, dict):
        raise Unusable("%s: an object is due" % place)
    for name, member in value.items():
        if name not in words:
            raise Unusable("%s: unknown word %r; known are %s" % (place, name, ", ".join(words)))
        if not isinstance(member, words[name][0]):
            raise Unusable("%s: %r has the wrong type" % (place, name))
        if member == "":
            raise Unusable("%s: %r is empty" % (place, name))
    for name, (_, needed) in words.items():
        if needed and name not in value:
            raise Unusable("%s: %r is missing" % (place, name))


def check_texts(values, place):
    if not all(isinstance(value, str) and value for value in values):
        raise Unusable("%s: texts are due" % place)


def check_verdict(verdict, place):
    if verdict is not None and verdict not in VERDICTS:
        raise Unusable("%s: unknown verdict %r" % (place, verdict))


def check_finding(finding, place):
    check_words(finding, FINDING_WORDS, place)
    check_verdict(finding.get("verdict"), place)
    if not {"verdict", "remedy", *AMOUNTS} & finding.keys():
        raise Unusable("%s: expects nothing of the finding" % place)
    for index, remedy in enumerate(finding.get("remedy", [])):
        check_words(remedy, REMEDY_WORDS, "%s, remedy %d" % (place, index + 1))


def check_also(case, place):
    """The same holds in other editions: of one standard, each named once."""
    also = case.get("also", [])
    check_texts(also, place + ", also")
    standards = case["document"].get("standards", [])
    if also and len(standards) != 1:
        raise Unusable("%s: `also` needs a document with one standard" % place)
    if len(set(also + standards)) != len(also + standards):
        raise Unusable("%s, also: a standard stands twice" % place)


def check_case(case):
    check_words(case, CASE_WORDS, "case")
    place = "case %r" % case["name"]
    check_words(case["source"], SOURCE_WORDS, place + ", source")
    if case["kind"] not in KINDS:
        raise Unusable("%s: unknown kind %r; known are %s"
                       % (place, case["kind"], ", ".join(KINDS)))
    if case["kind"] in ("published", "derived"):
        for name in ("section", "edition"):
            if name not in case["source"]:
                raise Unusable("%s, source: %r is missing" % (place, name))
    check_texts(case.get("arguments", []), place + ", arguments")
    check_also(case, place)
    expect = case["expect"]
    check_words(expect, EXPECT_WORDS, place + ", expect")
    check_verdict(expect.get("verdict"), place + ", expect")
    check_texts(expect.get("absent", []), place + ", absent")
    check_texts(expect.get("unmeasured", []), place + ", unmeasured")
    for index, finding in enumerate(expect["findings"]):
        check_finding(finding, "%s, finding %d" % (place, index + 1))
    if not any(expect.values()):
        raise Unusable("%s: expects nothing" % place)


def read_file(path):
    """The cases of a file. Each still has to pass check_case()."""
    try:
        content = json.loads(Path(path).read_text(encoding="utf-8"),
                             object_pairs_hook=unique_members)
        check_words(content, FILE_WORDS, "file")
    except (OSError, ValueError) as error:
        raise Unusable(str(error)) from error
    if not content["cases"]:
        raise Unusable("no cases")
    names = [case.get("name") for case in content["cases"] if isinstance(case, dict)]
    for name in names:
        if names.count(name) > 1:
            raise Unusable("two cases are called %r" % name)
    return content["cases"]


# ---- judging ------------------------------------------------------------------------------------

def renamed(value, before, after):
    """The same with another standard wherever the one it was written for is named."""
    if isinstance(value, dict):
        return {name: renamed(member, before, after) for name, member in value.items()}
    if isinstance(value, list):
        return [renamed(member, before, after) for member in value]
    return after if value == before else value


def variants(case):
    """A case, and the same for each other edition of which it says that it holds there too."""
    yield case
    for standard in case.get("also", []):
        before = case["document"]["standards"][0]
        yield {**case, "document": renamed(case["document"], before, standard),
               "expect": renamed(case["expect"], before, standard)}


def output_of(arguments, text):
    done = subprocess.run([os.environ["INGLE_COMMAND"], "check", *arguments], input=text,
                          text=True, encoding="utf-8", capture_output=True, check=False)
    if done.returncode != 0:
        raise Unusable("`ingle check` ended with status %d: %s%s"
                       % (done.returncode, done.stdout, done.stderr))
    return done.stdout


def run_command(case):
    """The report of a case's document."""
    return json.loads(output_of(case.get("arguments", []), json.dumps(case["document"])))


def run_lines(cases):
    """The reports of many documents that are judged with the same arguments."""
    if not cases:
        return []
    text = "".join(json.dumps(case["document"]) + "\n" for case in cases)
    lines = output_of(["--lines", *cases[0].get("arguments", [])], text).splitlines()
    if len(lines) != len(cases):
        raise Unusable("%d documents gave %d reports" % (len(cases), len(lines)))
    reports = [json.loads(line) for line in lines]
    for case, report in zip(cases, reports):
        if "error" in report:
            raise Unusable("%s: %s" % (case["document"]["standards"], report["error"]))
    return reports


def amount_text(finding, name):
    amount = finding.get(name)
    return amount["text"] if isinstance(amount, dict) else amount


def finding_differences(expected, findings):
    """What one expected finding lacks among those that came."""
    keys = [name for name in ("standard", "rule", "subject", "reading") if name in expected]
    name = ", ".join("%s %s" % (key, expected[key]) for key in keys)
    same = [finding for finding in findings
            if all(finding.get(key) == expected[key] for key in keys)]
    if len(same) != 1:
        told = [(finding["rule"], finding["subject"], finding.get("reading"))
                for finding in (same or findings)]
        yield "%s: expected one finding, got %d of: %s" % (name, len(same), told)
        return
    got = same[0]
    if "verdict" in expected and got["verdict"] != expected["verdict"]:
        yield "%s: expected verdict %s, got %s" % (name, expected["verdict"], got["verdict"])
    for part in AMOUNTS:
        if part in expected and amount_text(got, part) != expected[part]:
            yield "%s: expected %s %s, got %s" % (name, part, expected[part],
                                                  amount_text(got, part))
    if "remedy" in expected:
        yield from remedy_differences(name, expected["remedy"], got.get("remedy", []))


def remedy_differences(name, expected, got):
    told = [{"change": remedy["change"], "to": amount_text(remedy, "to")} for remedy in got]
    if not expected and told:
        yield "%s: expected no remedy, got %s" % (name, told)
    for remedy in expected:
        if remedy not in told:
            yield "%s: expected the remedy %s, got %s" % (name, remedy, told)


def differences(expect, report):
    """Everything in which a report is not what is expected."""
    if "verdict" in expect and report["verdict"] != expect["verdict"]:
        yield "expected the verdict %s, got %s" % (expect["verdict"], report["verdict"])
    for finding in expect["findings"]:
        yield from finding_differences(finding, report["findings"])
    for rule in expect.get("absent", []):
        for finding in report["findings"]:
            if finding["rule"] == rule:
                yield "expected no finding of %s, got: %s %s" % (rule, finding["subject"],
                                                                 finding["verdict"])
    lacking = [missing["quantity"] for missing in report.get("unmeasured", [])]
    for quantity in expect.get("unmeasured", []):
        if quantity not in lacking:
            yield "expected %s among what is unmeasured, got %s" % (quantity, lacking)


def case_failures(case):
    """Why a case fails; empty if it passes."""
    try:
        check_case(case)
        found = list(differences(case["expect"], run_command(case)))
        others = list(variants(case))[1:]
        for other, report in zip(others, run_lines(others)):
            found += ["%s: %s" % (other["document"]["standards"][0], each)
                      for each in differences(other["expect"], report)]
    except Unusable as error:
        return [str(error)]
    if "disagrees" not in case:
        return found
    if found:
        return []
    return ["is marked as a disagreement with the publication, and passes: either the library is "
            "now wrong, or `disagrees` has to go"]


def run_file(path):
    """How many cases of a file passed and how many failed."""
    try:
        cases = read_file(path)
    except Unusable as error:
        print("FAILED %s\n    %s" % (path, error))
        return 0, 1
    failed = 0
    for case in cases:
        failures = case_failures(case)
        if failures:
            failed += 1
            name = case.get("name") if isinstance(case, dict) else case
            print("FAILED %s: %s" % (Path(path).name, name))
            print("".join("    %s\n" % failure for failure in failures), end="")
    return len(cases) - failed, failed


def main(paths):
    if not os.environ.get("INGLE_COMMAND"):
        print("INGLE_COMMAND has to name the `ingle` command", file=sys.stderr)
        return 2
    paths = paths or sorted(Path(__file__).parent.glob("*.json"))
    counts = [run_file(path) for path in paths]
    passed, failed = (sum(column) for column in zip(*counts))
    print("%d passed, %d failed" % (passed, failed))
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
