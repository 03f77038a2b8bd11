#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Judges an invented fireplace and prints the findings as a small report.

    python3 judge_fireplace.py [standard]

Every finding shows what was measured, what is required, by which section, and how the requirement
was computed. Nothing here says that a fireplace is safe: the local authority, the listing of the
appliance and licensed practice decide.
"""

from __future__ import annotations

import sys
import textwrap

import ingle


def measured_fireplace() -> ingle.Survey:
    """The living room of an invented house, as the tape and the eye found it."""
    survey = ingle.Survey()
    survey.set("appliance.kind", "masonry-fireplace")
    survey.set("opening.width", "36 in")
    survey.set("opening.height", "24 in")
    survey.set("firebox.depth", "21 1/2 in")
    # The edge of the stone is rough, so the tape is only good to an eighth of an inch here.
    survey.set("hearth.front", "19 15/16 in", tolerance="1/8 in")
    survey.set("hearth.left", "12 in")
    survey.set("hearth.right", "10 1/2 in")
    survey.set("flue.liner", "13x13")
    shelf = survey.add_item("trim", "mantel shelf")
    survey.set(f"trim[{shelf}].side", "above")
    survey.set(f"trim[{shelf}].distance", "10 in")
    survey.set(f"trim[{shelf}].projection", "7 in")
    return survey


def paragraph(text: str, first: str = "  ", rest: str = "  ") -> None:
    """Print a text in lines that fit a page."""
    print(textwrap.fill(text, 90, initial_indent=first, subsequent_indent=rest))


def print_finding(finding: ingle.Finding) -> None:
    """Print one finding: the verdict, the citation, the working, what would help."""
    print(f"{finding.verdict.upper():<11} {finding.label}")
    paragraph(finding.sentence())
    paragraph(finding.citation)
    for step in finding.steps:
        paragraph(step.sentence(), "    = ", "      ")
    for remedy in finding.remedies:
        paragraph(remedy.sentence(), "    > ", "      ")
    if finding.caution():
        paragraph(finding.caution(), "    ! ", "      ")
    print()


def main() -> int:
    """Judge the fireplace by the standard that the first argument names, or IRC 2021."""
    standard = sys.argv[1] if len(sys.argv) > 1 else "irc-2021"
    try:
        report = ingle.Report(measured_fireplace(), [standard])
    except ingle.IngleError as error:
        print(error, file=sys.stderr)
        return 2
    for finding in report:
        if finding.verdict != "unmeasured":
            print_finding(finding)
    print("Not measured:")
    for missing in report.missing:
        paragraph(f"{missing.quantity.label}. {missing.quantity.how}", "  - ", "    ")
    for notice in report.notices:
        paragraph(notice)
    print(f"All in all: {report.verdict}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
