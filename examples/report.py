#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes the reports of `ingle check` as Markdown: what an inspector hands over, and an example.

    ingle check survey.json | python3 report.py > report.md

Standard input holds one report or several, one after the other. Nothing is computed here: every
number, sentence and verdict stands in the report. Only the order and the layout are made.
"""

import json
import sys

IN_FULL = [("fails", "Fails"), ("too-close", "Too close to call"), ("by-listing", "By the listing")]

IN_WORDS = {"fails": "failed", "too-close": "too close to call",
            "by-listing": "for the listing to decide", "unmeasured": "not measured",
            "meets": "met"}

RELATIONS = {"at-least": "at least ", "at-most": "no more than ", "less-than": "less than "}

RULES_NAMED = 3  # more rules that lack the same measurement are counted


# ---- words ------------------------------------------------------------------------------------


def capitalized(text):
    return text[:1].upper() + text[1:]


def listed(words):
    """One, two and three: as people list things."""
    return " and ".join(filter(None, [", ".join(words[:-1]), words[-1]]))


def observed(finding):
    """Something seen, which has no number: the sentence says it all."""
    return finding["relation"] in ("is", "is-not")


def required(finding):
    return RELATIONS[finding["relation"]] + finding["required"]["text"]


def basis(finding):
    """How the number is known."""
    return "listing" if finding.get("by_listing") else finding["basis"].replace("-", " ")


# ---- a finding in full ------------------------------------------------------------------------


def equal_to(text):
    """An amount after its equals sign; a rounded one brings a sign of its own."""
    return f" {text}" if text.startswith("≈") else f" = {text}"


def calculation(finding):
    """The steps, indented as a block, each as it stands and with its amounts put in."""
    for step in finding.get("working", []):
        line = f"        {step['step']}: {step['expression']}"
        if "result" not in step:
            line += f" is {step['substituted']}"
        elif step["substituted"] == step["result"]["text"]:
            line += equal_to(step["substituted"])
        else:
            line += equal_to(step["substituted"]) + equal_to(step["result"]["text"])
        yield line + (f". {step['remark']}" if "remark" in step else "")


def numbers(finding):
    amounts = [("Measured", finding.get("measured", {}).get("text")),
               ("required", required(finding) if "required" in finding else None),
               ("margin", finding.get("margin", {}).get("text"))]
    return "; ".join(f"{name} **{text}**" for name, text in amounts if text)


def proof(finding):
    """What was found against what is required, by which text, and how that was computed."""
    if not observed(finding) and numbers(finding):
        yield f"- {numbers(finding)}."
    yield f"- Source: {finding['citation']}. Basis: {basis(finding)}."
    steps = [] if observed(finding) else list(calculation(finding))
    if steps:
        yield from ["- Calculation:", "", *steps, ""]


def advice(finding):
    yield from (("To put it right", remedy["text"]) for remedy in finding.get("remedy", []))
    named = [("Meanwhile", "caution"), ("Who should look next", "refer"),
             ("Inspection", "inspection"), ("How the text was read", "reading")]
    yield from ((name, finding[key]) for name, key in named if key in finding)


def in_full(finding):
    yield f"### {capitalized(finding['label'])} (`{finding['standard']}`, `{finding['rule']}`)"
    yield from ["", capitalized(finding["sentence"]), ""]
    yield from proof(finding)
    yield from (f"- {name}: {text.rstrip('.')}." for name, text in advice(finding))
    yield ""


# ---- what is told in one line -----------------------------------------------------------------


def named(findings):
    """What the findings on items of a list call them, and on a list that nobody looked at."""
    for finding in findings:
        if finding["subject"].count("/") != 3:
            yield finding["subject"], finding["label"]


def needed_for(missing):
    rules = list(dict.fromkeys(missing["for"]))
    if len(rules) > RULES_NAMED:
        return f"{len(rules)} rules"
    return ", ".join(f"`{rule}`" for rule in rules)


def not_measured(report):
    if not report["unmeasured"]:
        return
    labels = dict(named(report["findings"]))
    yield from ["## Not measured", ""]
    for missing in report["unmeasured"]:
        name = labels.get(missing["quantity"], missing["label"])
        yield f"- **{capitalized(name)}** (for {needed_for(missing)}): {missing['how']}"
    yield ""


def row(cells):
    return "| " + " | ".join(cell.replace("|", "\\|") for cell in cells) + " |"


def compared(finding):
    """What was found and what is required; of something seen the sentence says both."""
    if observed(finding):
        return capitalized(finding["sentence"]).rstrip("."), ""
    return finding["measured"]["text"], required(finding)


def met(report):
    findings = [finding for finding in report["findings"] if finding["verdict"] == "meets"]
    if not findings:
        return
    yield from ["## Meets", "", row(["what", "found", "required", "source", "basis"]),
                row(["---"] * 5)]
    for finding in findings:
        yield row([capitalized(finding["label"]), *compared(finding), finding["citation"],
                   basis(finding)])
    yield ""


# ---- the report -------------------------------------------------------------------------------


def summary(report):
    """The verdict, how many findings have which, and by what was judged."""
    found = [finding["verdict"] for finding in report["findings"]]
    counts = [f"{found.count(verdict)} {words}" for verdict, words in IN_WORDS.items()
              if verdict in found]
    standards = list(dict.fromkeys(finding["standard"] for finding in report["findings"]))
    if not found:
        return "Nothing was judged."
    return (f"**Verdict: {report['verdict']}.** Findings: {listed(counts)}. "
            f"Judged by {listed([f'`{standard}`' for standard in standards])}.")


def lines(report):
    yield from ["# " + capitalized(report.get("id", "report").replace("-", " ")), ""]
    yield from [summary(report), ""]
    for verdict, heading in IN_FULL:
        findings = [finding for finding in report["findings"] if finding["verdict"] == verdict]
        if findings:
            yield from [f"## {heading}", ""]
        for finding in findings:
            yield from in_full(finding)
    yield from not_measured(report)
    yield from met(report)
    yield from ["## Notices", ""]
    yield from (f"- {notice}" for notice in report["notices"])
    yield from ["", f"Ingle {report['ingle']}.", ""]


def reports(text):
    """The documents that stand one after the other in a text."""
    decoder = json.JSONDecoder()
    text = text.strip()
    while text:
        report, end = decoder.raw_decode(text)
        yield report
        text = text[end:].lstrip()


def main():
    for stream in (sys.stdin, sys.stdout):
        stream.reconfigure(encoding="utf-8")
    for report in reports(sys.stdin.read()):
        print("\n".join(lines(report)))


if __name__ == "__main__":
    main()
