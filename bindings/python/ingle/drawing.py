# SPDX-License-Identifier: MIT
"""Drawings to scale of what was surveyed and what is required, as SVG."""

from __future__ import annotations

import ctypes
from typing import Iterable, Mapping, Optional

from .document import AmendmentsLike, DocumentLike, asked
from .errors import Catalogue
from .loading import library
from .measure import UnitLike
from .standards import StandardLike
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
