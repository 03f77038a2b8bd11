# SPDX-License-Identifier: MIT
"""For who shows people how the numbers come about: reports worked out, worksheets, exercises.

The functions that take a survey document take it as a dict or as JSON text, and with it what
``ingle.check`` takes: ``standards``, ``unit``, ``amendments`` and ``readings``.
"""

from __future__ import annotations

import ctypes
from typing import Any, Dict, Iterable, Mapping, Optional, Tuple

from . import prototypes
from .document import AmendmentsLike, Asked, DocumentLike, answered, asked
from .errors import Catalogue, encoded, error_of, require
from .loading import Owned, json_library, library
from .measure import UnitLike, unit_pointer
from .report import verdicts
from .standards import StandardLike, standard_array
from .uncertainty import Probability
from .writing import gathered, number_of, page, title_text

# Their numbers are those of ingle_explain_form and ingle_exercise_part, in order.
_FORMS: Catalogue[int] = Catalogue({"worked": 0, "report": 1, "brief": 2})
_PARTS: Catalogue[int] = Catalogue({"both": 0, "problem": 1, "answers": 2})

#: The levels of exercises, from the easiest, 1, each with what it is made of.
levels: Dict[int, str] = {
    number: library.ingle_exercise_level_text(number).decode()
    for number in range(1, library.ingle_exercise_level_count() + 1)}

#: How many numbers a seed can be: from 0 up to this, itself excepted.
SEEDS = 2 ** 64


def explain(document: DocumentLike, format: str = "text", *, form: str = "worked",
            least: Optional[str] = None, rule: Optional[str] = None,
            width: Optional[int] = None, colour: bool = False, title: Optional[str] = None,
            standards: Optional[Iterable[StandardLike]] = None, unit: Optional[UnitLike] = None,
            amendments: Optional[AmendmentsLike] = None,
            readings: Optional[Mapping[str, str]] = None) -> str:
    """Judge a survey document, and write its report as a worked solution.

    :param format: ``text``, ``markdown`` or ``html``
    :param form: ``worked`` works all out, ``brief`` gives a line to each finding, and ``report``
        a line to what is met alone
    :param least: findings milder than this verdict are left out
    :param rule: only this rule, one of the standards'
    :param width: the columns of a text, 20 to 1000; without it, 79
    :param colour: whether verdicts in a text have the colours of a terminal beside their words
    :param title: without it, the document's id as a title
    :raises IngleError: if the document cannot be used, or no standard has the rule
    """
    options = prototypes.ingle_explain_options(
        size=ctypes.sizeof(prototypes.ingle_explain_options),
        form=number_of(form, _FORMS, "form of a report"))
    if least is not None:
        gravities = Catalogue({each.id: each.gravity for each in verdicts.values()})
        options.least = number_of(least, gravities, "verdict")
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings) as about:
        options.rule = about.rule(rule)
        look = page(format, width, colour, about.unit, title_text(title, about.title))
        return gathered(library.ingle_explain, about.report, ctypes.byref(look),
                        ctypes.byref(options))


def assess(document: DocumentLike, format: str = "text", *, rule: Optional[str] = None,
           probability: Optional[Probability] = None, width: Optional[int] = None,
           colour: bool = False, title: Optional[str] = None,
           standards: Optional[Iterable[StandardLike]] = None, unit: Optional[UnitLike] = None,
           amendments: Optional[AmendmentsLike] = None,
           readings: Optional[Mapping[str, str]] = None) -> str:
    """Judge a survey document, and write how sure its findings are as a page.

    :param rule: only this rule, one of the standards'
    :param probability: what is asked; simple acceptance without Monte Carlo if None
    :param title: without it, the page's own

    How the page looks: see ``explain``. The same as objects is ``ingle.Assessment``.

    :raises IngleError: if the document cannot be used, or no standard has the rule
    """
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        only = about.rule(rule)
        made = about.assessment(probability)  # held as long as it is read
        look = page(format, width, colour, about.unit, title_text(title))
        return gathered(library.ingle_assessment_page, made.pointer, ctypes.byref(look), only)


# ---- worksheets -------------------------------------------------------------------------------


def _survey_of(document: Optional[DocumentLike], appliance: Optional[str],
               fuel: Optional[str]) -> DocumentLike:
    if (document is None) == (appliance is None):
        raise error_of("argument", "A worksheet is for a survey document or for an appliance.")
    if document is not None:
        if fuel is not None:
            raise error_of("argument", "fuel belongs to appliance.")
        return document
    observed = {"kind": appliance} if fuel is None else {"kind": appliance, "fuel": fuel}
    return {"survey": {"appliance": observed}}


def _worksheet(about: Asked) -> Owned:
    made = Owned(library.ingle_worksheet_new, library.ingle_worksheet_free, None)
    status = library.ingle_worksheet_make(*about.question, made.pointer)
    require(status, library.ingle_worksheet_error_text(made.pointer))
    return made


def worksheet(document: Optional[DocumentLike] = None, *, appliance: Optional[str] = None,
              fuel: Optional[str] = None, standards: Optional[Iterable[StandardLike]] = None,
              unit: Optional[UnitLike] = None, amendments: Optional[AmendmentsLike] = None,
              readings: Optional[Mapping[str, str]] = None) -> Dict[str, Any]:
    """Make a survey document to fill in: what is recorded, and in notes what is still missing.

    :param document: what was found so far
    :param appliance: in place of a document, a kind of appliance: one of the choices of
        ``appliance.kind``; ``standards`` are needed then
    :param fuel: with `appliance`, what it burns
    :raises IngleError: if the document or a standard cannot be used
    """
    with asked(_survey_of(document, appliance, fuel), standards=standards, unit=unit,
               amendments=amendments, readings=readings, working=False) as about:
        made = _worksheet(about)  # held as long as it is read
        return about.answer(json_library.ingle_json_worksheet, made.pointer)


def worksheet_page(document: Optional[DocumentLike] = None, format: str = "text", *,
                   appliance: Optional[str] = None, fuel: Optional[str] = None,
                   width: Optional[int] = None, colour: bool = False,
                   title: Optional[str] = None,
                   standards: Optional[Iterable[StandardLike]] = None,
                   unit: Optional[UnitLike] = None,
                   amendments: Optional[AmendmentsLike] = None,
                   readings: Optional[Mapping[str, str]] = None) -> str:
    """Write a worksheet to print and carry: what to measure, how, and which rules need it.

    The arguments are those of ``worksheet``, and how the page looks: see ``explain``.
    """
    with asked(_survey_of(document, appliance, fuel), standards=standards, unit=unit,
               amendments=amendments, readings=readings, working=False) as about:
        look = page(format, width, colour, about.unit, title_text(title))
        made = _worksheet(about)
        return gathered(library.ingle_worksheet_page, made.pointer, ctypes.byref(look))


# ---- exercises --------------------------------------------------------------------------------


def _problem(standards: Iterable[StandardLike], seed: int, level: int) -> Tuple[Any, ...]:
    """Seed, level and standards as calls of the library take them."""
    if not 0 <= seed < SEEDS:
        raise error_of("argument", f"A seed is a number from 0 to {SEEDS - 1}.")
    if level not in levels:
        raise error_of("argument", f"A level is a number from 1 to {len(levels)}.")
    adopted = standard_array(standards)
    return seed, level, adopted, len(adopted)


def exercise(standards: Iterable[StandardLike], seed: int = 1, level: int = 1, *,
             part: str = "both", unit: Optional[UnitLike] = None) -> Dict[str, Any]:
    """Make up a practice problem: an invented fireplace, questions, and their answers.

    :param standards: what is asked about
    :param seed: which problem: the same number gives the same one
    :param level: one of ``ingle.levels``, from the easiest, 1
    :param part: ``both``, or the ``problem`` or the ``answers`` alone
    :param unit: the unit in which the answers show lengths
    :raises IngleError: if there is nothing to ask by these standards
    """
    return answered(json_library.ingle_json_exercise, *_problem(standards, seed, level),
                    number_of(part, _PARTS, "part of an exercise"), unit_pointer(unit))


def exercise_page(standards: Iterable[StandardLike], seed: int = 1, level: int = 1,
                  format: str = "text", *, part: str = "both", width: Optional[int] = None,
                  colour: bool = False, title: Optional[str] = None,
                  unit: Optional[UnitLike] = None) -> str:
    """Make up a practice problem, and write it as a page.

    The arguments are those of ``exercise``, and how the page looks: see ``explain``.
    """
    look = page(format, width, colour, unit_pointer(unit), title_text(title))
    made = Owned(library.ingle_exercise_new, library.ingle_exercise_free, None)
    require(library.ingle_exercise_make(made.pointer, *_problem(standards, seed, level)))
    return gathered(library.ingle_exercise_page, made.pointer,
                    number_of(part, _PARTS, "part of an exercise"), ctypes.byref(look))
