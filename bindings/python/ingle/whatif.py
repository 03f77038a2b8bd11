# SPDX-License-Identifier: MIT
"""What would happen: the values that would do, a quantity led through its values, many standards.

Nothing is computed a second time: every answer is what a check finds.

The functions here take a survey document, as a dict or as JSON text, and what ``ingle.check``
takes with it: ``standards`` in place of the document's own, the ``unit`` in which lengths are
shown, ``amendments`` and ``readings``. Quantities are named by their path, ``opening.height`` or
``trim[0].distance``; amounts are texts, ``20 in``.
"""

from __future__ import annotations

import ctypes
from typing import Any, Callable, Dict, Iterable, Mapping, Optional

from . import prototypes
from .document import AmendmentsLike, Asked, DocumentLike, asked
from .errors import encoded, error_of, require
from .loading import Owned, json_library, library
from .measure import UnitLike
from .standards import StandardLike
from .writing import gathered, page, sheet, title_text


def _rule(rule: Optional[str]) -> Optional[bytes]:
    return None if rule is None else encoded(rule)


def _ask(call: Callable[..., int], owned: Owned, error_text: Callable[..., bytes],
         *arguments: Any) -> None:
    require(call(*arguments, owned.pointer), error_text(owned.pointer))


# ---- solve ------------------------------------------------------------------------------------


def _solve_options(rule: Optional[str], strict: bool) -> prototypes.ingle_solve_options:
    return prototypes.ingle_solve_options(size=ctypes.sizeof(prototypes.ingle_solve_options),
                                          rule=_rule(rule), strict=strict)


def _solution(about: Asked, values: prototypes.ingle_range,
              options: prototypes.ingle_solve_options) -> Owned:
    solution = Owned(library.ingle_solution_new, library.ingle_solution_free, None)
    _ask(library.ingle_solve, solution, library.ingle_solution_error_text, *about.question,
         ctypes.byref(values), ctypes.byref(options))
    return solution


def _frontier(about: Asked, values: prototypes.ingle_range, other: prototypes.ingle_range,
              options: prototypes.ingle_solve_options) -> Owned:
    frontier = Owned(library.ingle_frontier_new, library.ingle_frontier_free, None)
    _ask(library.ingle_solve_with, frontier, library.ingle_frontier_error_text, *about.question,
         ctypes.byref(values), ctypes.byref(other), ctypes.byref(options))
    return frontier


def _other(about: Asked, with_: Optional[str], least: Optional[str], most: Optional[str],
           step: Optional[str]) -> Optional[prototypes.ingle_range]:
    if with_ is not None:
        return about.range(with_, least, most, step)
    if (least, most, step) != (None, None, None):
        raise error_of("argument", "with_from, with_to and with_step belong to with_.")
    return None


def solve(document: DocumentLike, quantity: str, *, from_: Optional[str] = None,
          to: Optional[str] = None, step: Optional[str] = None, with_: Optional[str] = None,
          with_from: Optional[str] = None, with_to: Optional[str] = None,
          with_step: Optional[str] = None, rule: Optional[str] = None, strict: bool = False,
          standards: Optional[Iterable[StandardLike]] = None, unit: Optional[UnitLike] = None,
          amendments: Optional[AmendmentsLike] = None,
          readings: Optional[Mapping[str, str]] = None) -> Dict[str, Any]:
    """Find the values of a quantity that would do, at every graduation of the tape.

    :param quantity: whose values are asked for, all else being as surveyed
    :param from_: its least value; without it, the least that is plausible
    :param to: its greatest value; without it, the greatest that is plausible
    :param step: from one value to the next; without it, 1/16 in or 1 mm, and what is usual for
        others
    :param with_: another quantity: solve at each of its values
    :param with_from: its least value
    :param with_to: its greatest value
    :param with_step: from one of its values to the next; without it, some forty values
    :param rule: only this rule has to be met
    :param strict: whether what is too close to call counts as failing
    :returns: what ``ingle solve`` writes: the values that work, in intervals with the rules that
        stop them, and how far they are from what was surveyed
    :raises IngleError: if the document, the quantity or its range cannot be used
    """
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        values = about.range(quantity, from_, to, step)
        other = _other(about, with_, with_from, with_to, with_step)
        options = _solve_options(rule, strict)
        if other is None:
            solution = _solution(about, values, options)
            return about.answer(json_library.ingle_json_solution, solution.pointer)
        frontier = _frontier(about, values, other, options)
        return about.answer(json_library.ingle_json_frontier, frontier.pointer)


def solve_page(document: DocumentLike, quantity: str, format: str = "text", *,
               from_: Optional[str] = None, to: Optional[str] = None, step: Optional[str] = None,
               with_: Optional[str] = None, with_from: Optional[str] = None,
               with_to: Optional[str] = None, with_step: Optional[str] = None,
               rule: Optional[str] = None, strict: bool = False, width: Optional[int] = None,
               colour: bool = False, title: Optional[str] = None,
               standards: Optional[Iterable[StandardLike]] = None,
               unit: Optional[UnitLike] = None, amendments: Optional[AmendmentsLike] = None,
               readings: Optional[Mapping[str, str]] = None) -> str:
    """Find the values of a quantity that would do, and write them as a page.

    The arguments are those of ``solve``, and how the page looks: see ``explain``.
    """
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        values = about.range(quantity, from_, to, step)
        other = _other(about, with_, with_from, with_to, with_step)
        options = _solve_options(rule, strict)
        look = page(format, width, colour, about.unit, title_text(title))
        if other is None:
            solution = _solution(about, values, options)
            return gathered(library.ingle_solution_page, solution.pointer, ctypes.byref(look))
        frontier = _frontier(about, values, other, options)
        return gathered(library.ingle_frontier_page, frontier.pointer, ctypes.byref(look))


def solve_plot(document: DocumentLike, quantity: str, with_: str, *, from_: Optional[str] = None,
               to: Optional[str] = None, step: Optional[str] = None,
               with_from: Optional[str] = None, with_to: Optional[str] = None,
               with_step: Optional[str] = None, rule: Optional[str] = None, strict: bool = False,
               title: Optional[str] = None, standards: Optional[Iterable[StandardLike]] = None,
               unit: Optional[UnitLike] = None, amendments: Optional[AmendmentsLike] = None,
               readings: Optional[Mapping[str, str]] = None) -> str:
    """Plot, as SVG, which values of a quantity would do at each value of another.

    The arguments are those of ``solve``.
    """
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        values = about.range(quantity, from_, to, step)
        other = about.range(with_, with_from, with_to, with_step)
        frontier = _frontier(about, values, other, _solve_options(rule, strict))
        look = sheet(about.unit, title_text(title))
        return gathered(library.ingle_frontier_plot, frontier.pointer, ctypes.byref(look))


# ---- sweep ------------------------------------------------------------------------------------


def _sweep(about: Asked, values: prototypes.ingle_range, rule: Optional[str],
           unchanged: bool) -> Owned:
    options = prototypes.ingle_sweep_options(size=ctypes.sizeof(prototypes.ingle_sweep_options),
                                             rule=_rule(rule), with_unchanged=unchanged)
    swept = Owned(library.ingle_sweep_new, library.ingle_sweep_free, None)
    _ask(library.ingle_sweep_run, swept, library.ingle_sweep_error_text, *about.question,
         ctypes.byref(values), ctypes.byref(options))
    return swept


def sweep(document: DocumentLike, quantity: str, *, from_: Optional[str] = None,
          to: Optional[str] = None, step: Optional[str] = None, rule: Optional[str] = None,
          unchanged: bool = False, standards: Optional[Iterable[StandardLike]] = None,
          unit: Optional[UnitLike] = None, amendments: Optional[AmendmentsLike] = None,
          readings: Optional[Mapping[str, str]] = None) -> Dict[str, Any]:
    """Lead a quantity through its values, and tell what each rule says at each of them.

    :param quantity: which, all else being as surveyed; its values are those of ``solve``
    :param rule: only this rule
    :param unchanged: whether rules that say the same at every value are kept, too
    :returns: what ``ingle sweep`` writes
    :raises IngleError: if the document, the quantity or its range cannot be used
    """
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        swept = _sweep(about, about.range(quantity, from_, to, step), rule, unchanged)
        return about.answer(json_library.ingle_json_sweep, swept.pointer)


def sweep_csv(document: DocumentLike, quantity: str, *, from_: Optional[str] = None,
              to: Optional[str] = None, step: Optional[str] = None, rule: Optional[str] = None,
              unchanged: bool = False, standards: Optional[Iterable[StandardLike]] = None,
              unit: Optional[UnitLike] = None, amendments: Optional[AmendmentsLike] = None,
              readings: Optional[Mapping[str, str]] = None) -> str:
    """Sweep a quantity, and write all of it as CSV (RFC 4180), with the arguments of ``sweep``.

    Its lines end in CR LF: open a file for it with ``newline=""``.
    """
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        swept = _sweep(about, about.range(quantity, from_, to, step), rule, unchanged)
        look = prototypes.ingle_format(size=ctypes.sizeof(prototypes.ingle_format),
                                       unit=about.unit)
        return gathered(library.ingle_sweep_csv, swept.pointer, ctypes.byref(look))


def sweep_plot(document: DocumentLike, quantity: str, *, from_: Optional[str] = None,
               to: Optional[str] = None, step: Optional[str] = None, rule: Optional[str] = None,
               unchanged: bool = False, title: Optional[str] = None,
               standards: Optional[Iterable[StandardLike]] = None,
               unit: Optional[UnitLike] = None, amendments: Optional[AmendmentsLike] = None,
               readings: Optional[Mapping[str, str]] = None) -> str:
    """Sweep a quantity, and plot it as SVG, with the arguments of ``sweep``."""
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        swept = _sweep(about, about.range(quantity, from_, to, step), rule, unchanged)
        look = sheet(about.unit, title_text(title))
        return gathered(library.ingle_sweep_plot, swept.pointer, ctypes.byref(look))


# ---- compare ----------------------------------------------------------------------------------


def _comparison(about: Asked) -> Owned:
    made = Owned(library.ingle_comparison_new, library.ingle_comparison_free, None)
    require(library.ingle_compare(about.report, made.pointer))
    return made


def compare(document: DocumentLike, standards: Optional[Iterable[StandardLike]] = None, *,
            unit: Optional[UnitLike] = None, amendments: Optional[AmendmentsLike] = None,
            readings: Optional[Mapping[str, str]] = None) -> Dict[str, Any]:
    """Judge one survey by many standards, and set rule beside rule.

    :param standards: in this order; without them, the document's own
    :returns: what ``ingle compare`` writes: the verdict by each standard, and for each rule what
        each of them requires, and what changed from one to the next
    :raises IngleError: if the document or a standard cannot be used
    """
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        made = _comparison(about)  # held as long as it is read
        return about.answer(json_library.ingle_json_comparison, made.pointer)


def compare_page(document: DocumentLike, standards: Optional[Iterable[StandardLike]] = None,
                 format: str = "text", *, width: Optional[int] = None, colour: bool = False,
                 title: Optional[str] = None, unit: Optional[UnitLike] = None,
                 amendments: Optional[AmendmentsLike] = None,
                 readings: Optional[Mapping[str, str]] = None) -> str:
    """Judge one survey by many standards, and write rule beside rule as a page.

    The arguments are those of ``compare``, and how the page looks: see ``explain``.
    """
    with asked(document, standards=standards, unit=unit, amendments=amendments,
               readings=readings, working=False) as about:
        look = page(format, width, colour, about.unit, title_text(title))
        made = _comparison(about)
        return gathered(library.ingle_comparison_page, made.pointer, ctypes.byref(look))
