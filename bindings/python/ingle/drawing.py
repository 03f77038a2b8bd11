# SPDX-License-Identifier: MIT
"""As SVG: drawings to scale of what was surveyed and required, and how sure a finding is."""

from __future__ import annotations

import ctypes
from typing import Iterable, Mapping, Optional

from .document import AmendmentsLike, DocumentLike, asked
from .errors import Catalogue, error_of
from .loading import Owned, library
from .measure import UnitLike
from .standards import StandardLike
from .uncertainty import Probability
from .writing import gathered, number_of, sheet, title_text

#: What can be drawn: the names of the views, each with what it shows.
views: Catalogue[str] = Catalogue({
    library.ingle_view_name(number).decode(): library.ingle_view_text(number).decode()
    for number in range(library.ingle_view_count())})

_NUMBERS: Catalogue[int] = Catalogue({name: number for number, name in enumerate(views)})


def draw(document: DocumentLike, view: str = "plan", unit: Optional[UnitLike] = None, *,
         title: Optional[str] = None, standards: Optional[Iterable[StandardLike]] = None,
         amendments: Optional[AmendmentsLike] = None,
         readings: Optional[Mapping[str, str]] = None) -> str:
    """Judge a survey document, and draw a view of it to scale, as SVG.

    :param document: a survey document, as a dict or as JSON text
    :param view: one of ``ingle.views``
    :param unit: the unit of its dimensions; without it, the document's, or inches
    :param title: without it, the document's id as a title
    :param standards: see ``check_text``, as ``amendments`` and ``readings``
    :raises IngleError: if the document cannot be used, or what the view rests on was not measured
    """
    number = number_of(view, _NUMBERS, "view")
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        look = sheet(about.unit, title_text(title, about.title))
        return gathered(library.ingle_draw, about.report, number, ctypes.byref(look))


def _conformance(assessment: Owned, rule: str) -> int:
    """That of the first finding on a rule."""
    for index in range(library.ingle_assessment_count(assessment.pointer)):
        found: int = library.ingle_assessment_at(assessment.pointer, index)
        finding = library.ingle_conformance_finding(found)
        if library.ingle_rule_id(library.ingle_finding_rule(finding)) == rule.encode():
            return found
    raise error_of("nothing-measured", f"There is no finding on {rule}.")


def probability_plot(document: DocumentLike, rule: str, *,
                     probability: Optional[Probability] = None, title: Optional[str] = None,
                     standards: Optional[Iterable[StandardLike]] = None,
                     unit: Optional[UnitLike] = None,
                     amendments: Optional[AmendmentsLike] = None,
                     readings: Optional[Mapping[str, str]] = None) -> str:
    """Judge a survey document, and plot how sure the first finding on a rule is, as SVG.

    The probability that the rule is met stands against what is measured, with the limit.

    :param rule: the rule, one of the standards'
    :param probability: what is asked; simple acceptance without Monte Carlo if None
    :param title: without it, the plot's own
    :raises IngleError: if the document cannot be used, if no standard has the rule, or if there is
        no finding on it whose margin has a standard uncertainty
    """
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        about.rule(rule)
        made = about.assessment(probability)
        look = sheet(about.unit, title_text(title))
        return gathered(library.ingle_probability_plot, _conformance(made, rule),
                        ctypes.byref(look))
