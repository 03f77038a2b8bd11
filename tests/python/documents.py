# SPDX-License-Identifier: MIT
"""Survey documents to judge, and the two ways to judge them without `ingle.check`.

`command_reports` runs the `ingle` command. `judged` records a document into the objects of the
package and writes their findings in the shape of a report document.
"""

import json
import os
import pathlib
import subprocess
import sys
from decimal import Decimal

import ingle

ROOT = pathlib.Path(__file__).resolve().parents[2]
COMMAND = os.environ["INGLE_COMMAND"]


# ---- the documents ----------------------------------------------------------------------------


def published():
    """Every case's document with the arguments that it is judged with."""
    for path in sorted((ROOT / "tests" / "published").glob("*.json")):
        for case in json.loads(path.read_text(encoding="utf-8"))["cases"]:
            yield case["document"], case.get("arguments", [])


def examples():
    for path in sorted((ROOT / "examples").rglob("*.json")):
        yield json.loads(path.read_text(encoding="utf-8")), []


def generated(count):
    """Documents that the oracle's tests make up."""
    sys.path.insert(0, str(ROOT / "tests" / "oracle"))
    try:
        import generate
    finally:
        sys.path.pop(0)
    return [(json.loads(line), []) for line in generate.lines(count, "python")]


def options(arguments):
    """The arguments of the command as those of `ingle.check`."""
    found, left = {}, list(arguments)
    while left:
        word = left.pop(0)
        if word == "--all":
            found["not_applicable"] = True
        elif word == "--no-working":
            found["working"] = False
        elif word == "--unit":
            found["unit"] = left.pop(0)
        elif word == "--standard":
            found.setdefault("standards", []).append(left.pop(0))
        elif word == "--reading":
            reading, option = left.pop(0).split("=")
            found.setdefault("readings", {})[reading] = option
        else:
            raise ValueError(f"{word} is no argument known here")
    return found


# ---- by the command ---------------------------------------------------------------------------


def command(*words, given=""):
    return subprocess.run([COMMAND, *words], input=given.encode(), stdout=subprocess.PIPE,
                          stderr=subprocess.PIPE, check=False)


def command_reports(documents, arguments=()):
    """What the command answers to each document, in their order."""
    lines = "".join(json.dumps(document) + "\n" for document in documents)
    done = command("check", "--lines", *arguments, given=lines)
    answers = [json.loads(line) for line in done.stdout.decode().splitlines()]
    if len(answers) != len(documents):
        raise AssertionError(f"{len(documents)} documents, {len(answers)} answers: {done.stderr}")
    return answers


# ---- by the objects ---------------------------------------------------------------------------


def _amount(value, dimension, unit):
    text = value if isinstance(value, str) else format(Decimal(str(value)), "f")
    return ingle.Amount.parse(text, dimension, unit)


def _document_unit(document, dimension):
    unit = document.get("unit")
    if unit is None or dimension not in ("length", "area"):
        return None
    return unit if dimension == "length" else unit + "2"


def _record(survey, document, quantity, path, value):
    whole = value if isinstance(value, dict) else {"value": value}
    value, tolerance = whole["value"], whole.get("tolerance")
    if quantity.choices or isinstance(value, bool):
        survey.set(path, value)
        return
    bare = not isinstance(value, str)
    unit = whole.get("unit") or (_document_unit(document, quantity.dimension) if bare else None)
    if tolerance is not None:
        own = unit if not isinstance(tolerance, str) else None
        tolerance = _amount(tolerance, quantity.dimension, own)
    elif document.get("tolerance") is not None and quantity.dimension == "length":
        given = document["tolerance"]
        whole_tolerance = given if isinstance(given, dict) else {"value": given}
        own = whole_tolerance.get("unit") or (
            document.get("unit") if not isinstance(whole_tolerance["value"], str) else None)
        tolerance = _amount(whole_tolerance["value"], "length", own)
    if unit is None and tolerance is None and not bare:
        survey.set(path, value)
    else:
        survey.set(path, _amount(value, quantity.dimension, unit), tolerance)


def survey_of(document):
    """The survey of a document, recorded by the objects of the package."""
    survey = ingle.Survey()
    for group, content in document["survey"].items():
        if group == "note":
            continue
        items = content if isinstance(content, list) else [content]
        if isinstance(content, list):
            survey.open_group(group)
        for members in items:
            item = survey.add_item(group, members.get("label")) if items is content else 0
            for name, value in members.items():
                if name != "note" and not (name == "label" and items is content):
                    quantity = ingle.quantities[f"{group}.{name}"]
                    _record(survey, document, quantity, quantity.path(item), value)
    return survey


def amendments_of(document):
    made = ingle.Amendments()
    for each in document.get("amendments", []):
        rows = [row for row in ingle.standards[each["standard"]].rules if row.id == each["rule"]]
        for number, value in each["set"].items():
            whole = value if isinstance(value, dict) else {"value": value}
            bare = not isinstance(whole["value"], str)
            dimension = next(row.numbers[number].dimension
                             for row in rows if number in row.numbers)
            unit = whole.get("unit") or (_document_unit(document, dimension) if bare else None)
            text = format(Decimal(str(whole["value"])), "f") if bare else whole["value"]
            made.set(each["standard"], each["rule"], number, text, citation=each["citation"],
                     unit=unit)
    return made


def judged(document, standards=None, unit=None, working=True, not_applicable=False, readings=None):
    """The report of a document by the objects of the package, in the shape of a report."""
    shown = unit or document.get("unit")
    adopted = standards or document["standards"]
    metric = (shown or ingle.standards[adopted[0]].unit.id) in ("mm", "cm", "m")
    survey = survey_of(document)
    chosen = {**document.get("readings", {}), **(readings or {})}
    chosen.pop("note", None)
    report = ingle.Report(survey, adopted, amendments=amendments_of(document), readings=chosen,
                          working=working, not_applicable=not_applicable, metric_remedies=metric)
    return {
        "verdict": report.verdict,
        "standards": [{"standard": standard, "verdict": verdict}
                      for standard, verdict in report.standards.items()],
        "findings": [_finding(each, survey, shown) for each in report],
        "unmeasured": [{"quantity": each.subject, "label": each.label, "for": list(each.rules),
                        "how": each.how} for each in report.missing],
        "unjudged": [{"quantity": each.subject, "label": each.quantity.label,
                      "standards": [standard.id for standard in each.standards]}
                     for each in report.unjudged],
        "notices": list(report.notices),
        "ingle": ingle.__version__,
    }


def _shown(amount, unit):
    of = amount.unit(unit)
    known = {"value": json.loads(amount.decimal(of))}
    if of is not None:
        known["unit"] = of.id
    known["text"] = amount.text(unit)
    return known


def _value(amount, quantity, unit):
    value = quantity.value_of(amount)
    if isinstance(value, ingle.Amount):
        return _shown(value, unit)
    return {"text": {True: "yes", False: "no"}.get(value, value)}


def _finding(finding, survey, unit):
    shown = unit or finding.standard.unit
    found = {"standard": finding.standard.id, "rule": finding.rule.id,
             "section": finding.rule.section, "basis": finding.rule.basis,
             "subject": finding.subject, "label": finding.label, "verdict": finding.verdict,
             "relation": finding.relation}
    if finding.by_listing:
        found["by_listing"] = True
    for name in ("measured", "required", "margin", "usual"):
        amount = getattr(finding, name)
        if amount is not None:
            found[name] = _value(amount, finding.quantity, shown)
    for name in ("reading", "amendment"):
        if getattr(finding, name) is not None:
            found[name] = getattr(finding, name)
    found["citation"] = finding.citation
    found["sentence"] = finding.sentence(shown)
    parts = {"missing": list(finding.missing_subjects),
             "working": [_step(each, shown) for each in finding.steps],
             "remedy": [{"change": each.subject, "to": _value(each.amount, each.quantity, shown),
                         "text": each.sentence(shown)} for each in finding.remedies],
             "caution": finding.caution(shown), "mend": finding.mend, "refer": finding.refer,
             "inspection": finding.inspection}
    found.update({name: part for name, part in parts.items() if part})
    return found


def _step(step, unit):
    found = {"step": step.label, "expression": step.expression,
             "substituted": step.substituted(unit)}
    if step.result is not None and step.result.dimension not in ("choice", "flag"):
        found["result"] = _shown(step.result, unit)
    if step.remark:
        found["remark"] = step.remark
    return found
