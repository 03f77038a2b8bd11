# SPDX-License-Identifier: MIT
"""An estimate of how an open fireplace draws, and the numbers it rests on.

It works beside the findings and decides none: no promise about smoke, no check of a code.
"""

from __future__ import annotations

import contextlib
import ctypes
import json
from dataclasses import dataclass, field
from typing import Any, Dict, Iterable, Iterator, Mapping, Optional, Tuple, Union

from . import prototypes
from .document import _encoded, _left, _options, _reader
from .errors import Catalogue, IngleError, encoded, nearest
from .loading import Owned, json_library, library
from .measure import UnitLike, unit_pointer
from .standards import StandardLike, standard_array
from .survey import Survey
from .writing import gathered, page, sheet, title_text

# ---- the numbers it rests on ------------------------------------------------------------------


@dataclass(frozen=True, eq=False)
class DraftNumber:
    """A number that the estimate rests on, or that a published relation has, with its source."""

    #: Unique and stable: ``criterion``.
    id: str
    #: What it is for: ``default``, ``claim``, ``component`` and so on.
    group: str
    #: In words.
    label: str
    #: In its unit.
    value: float
    #: ``m/s``; ``1`` where it has none.
    unit: str
    #: The range in which it is plausible; None where none is known.
    range: Optional[Tuple[float, float]] = field(repr=False)
    #: Where it comes from.
    source: str = field(repr=False)
    #: How it is known: as rules have it, or ``derived`` or ``assumption``.
    basis: str


def _read_number(pointer: int) -> DraftNumber:
    least, most = ctypes.c_double(), ctypes.c_double()
    ranged = library.ingle_draft_number_range(pointer, ctypes.byref(least), ctypes.byref(most))
    return DraftNumber(id=library.ingle_draft_number_id(pointer).decode(),
                       group=library.ingle_draft_number_group(pointer).decode(),
                       label=library.ingle_draft_number_label(pointer).decode(),
                       value=library.ingle_draft_number_value(pointer),
                       unit=library.ingle_draft_number_unit(pointer).decode(),
                       range=(least.value, most.value) if ranged else None,
                       source=library.ingle_draft_number_source(pointer).decode(),
                       basis=library.ingle_draft_number_basis(pointer).decode())


_NUMBERS = [_read_number(library.ingle_draft_number_at(i))
            for i in range(library.ingle_draft_number_count())]

#: Every number that the estimate rests on, by its id.
draft_numbers: Catalogue[DraftNumber] = Catalogue({each.id: each for each in _NUMBERS})

# ---- what goes in -----------------------------------------------------------------------------

#: A figure that goes in: text with its unit, ``300 F``, or a number in SI units.
DraftFigure = Union[str, float]

_INLETS = {"given": prototypes.INGLE_DRAFT_INLET_GIVEN,
           "sharp": prototypes.INGLE_DRAFT_INLET_SHARP,
           "rounded": prototypes.INGLE_DRAFT_INLET_ROUNDED}


def _read_figures() -> Dict[str, int]:
    every = map(library.ingle_draft_figure_at, range(library.ingle_draft_figure_count()))
    return {library.ingle_draft_figure_id(figure).decode(): figure for figure in every
            if library.ingle_draft_figure_is_input(figure)}


_FIGURES = _read_figures()

#: The figures that ``draft`` takes by name, with `_` for `-`.
draft_inputs: Tuple[str, ...] = tuple(name.replace("-", "_") for name in _FIGURES)


def _set(input_: prototypes.ingle_draft_input, name: str, value: DraftFigure) -> None:
    figure = _FIGURES.get(name.replace("_", "-"))
    if figure is None:
        meant = nearest(name, draft_inputs)
        raise TypeError(f"draft() takes no {name!r}" + (f"; did you mean {meant!r}?" if meant
                                                        else ""))
    if isinstance(value, str):
        text = encoded(value, name)
        position = ctypes.c_size_t()
        status = library.ingle_draft_input_set_text(ctypes.byref(input_), figure, text, len(text),
                                                    ctypes.byref(position))
        if status < 0:
            raise IngleError(status, at=name, position=position.value)
    elif isinstance(value, bool) or not isinstance(value, (int, float)):
        raise TypeError(f"{name}: a str or a number in SI units is due, "
                        f"not {type(value).__name__}")
    else:
        library.ingle_draft_input_set(ctypes.byref(input_), figure, float(value))


def _input(figures: Mapping[str, DraftFigure], inlet: str) -> prototypes.ingle_draft_input:
    made = prototypes.ingle_draft_input()
    library.ingle_draft_input_start(ctypes.byref(made))
    for name, value in figures.items():
        _set(made, name, value)
    if inlet not in _INLETS:
        raise ValueError(f"an inlet is one of {', '.join(_INLETS)}, not {inlet!r}")
    made.inlet = _INLETS[inlet]
    return made


# ---- the estimate -----------------------------------------------------------------------------


def _figure_name(draft: Owned) -> str:
    name = library.ingle_draft_figure_id(library.ingle_draft_error_figure(draft.pointer))
    return "" if name is None else name.decode()


def _require(draft: Owned, status: int) -> None:
    if status < 0:
        text = library.ingle_draft_error_text(draft.pointer).decode()
        raise IngleError(status, text or None, _figure_name(draft))


def _estimate(survey: int, standards: Any, count: int,
              input_: prototypes.ingle_draft_input) -> Owned:
    draft = Owned(library.ingle_draft_new, library.ingle_draft_free, None)
    _require(draft, library.ingle_draft_take_survey(draft.pointer, survey, standards, count,
                                                    ctypes.byref(input_)))
    _require(draft, library.ingle_draft_estimate(draft.pointer, ctypes.byref(input_)))
    return draft


@dataclass(frozen=True)
class _Estimated:
    """An estimate, and how it is shown."""

    reader: Owned
    draft: Owned
    input: prototypes.ingle_draft_input
    #: Whose ratios a plot has; None where there is none.
    standard: Optional[int]
    unit: Optional[int]


@contextlib.contextmanager
def _of_survey(survey: Survey, standards: Optional[Iterable[StandardLike]],
               unit: Optional[UnitLike], input_: prototypes.ingle_draft_input
               ) -> Iterator[_Estimated]:
    adopted = [] if standards is None else standard_array(standards)
    reader = Owned(json_library.ingle_json_new, json_library.ingle_json_free)
    owned = survey.reading(reader)
    draft = _estimate(owned.pointer, adopted or None, len(adopted), input_)
    yield _Estimated(reader, draft, input_, adopted[0] if adopted else None, unit_pointer(unit))


@contextlib.contextmanager
def _of_document(document: bytes, standards: Optional[Iterable[StandardLike]],
                 unit: Optional[UnitLike], input_: prototypes.ingle_draft_input
                 ) -> Iterator[_Estimated]:
    options = _options(standards, unit, False, False, True, None)
    with _reader() as reader:
        status = json_library.ingle_json_read(reader.pointer, document, len(document),
                                              ctypes.byref(options))
        _left(reader, status)
        count = ctypes.c_size_t()
        adopted = json_library.ingle_json_standards(reader.pointer, ctypes.byref(count))
        draft = _estimate(json_library.ingle_json_survey(reader.pointer), adopted, count.value,
                          input_)
        yield _Estimated(reader, draft, input_, adopted[0],
                         json_library.ingle_json_draft_unit(reader.pointer))


#: A survey document, as a dict or its text, or a ``Survey``.
DraftLike = Union[Mapping[str, Any], str, bytes, Survey]


@contextlib.contextmanager
def _estimated(document: DraftLike, standards: Optional[Iterable[StandardLike]],
               unit: Optional[UnitLike], inlet: str, figures: Mapping[str, DraftFigure]
               ) -> Iterator[_Estimated]:
    """An estimate, as long as the block lasts."""
    input_ = _input(figures, inlet)
    if isinstance(document, Survey):
        with _of_survey(document, standards, unit, input_) as made:
            yield made
        return
    is_text = isinstance(document, (str, bytes))
    written = document if isinstance(document, (str, bytes)) else json.dumps(document)
    try:
        with _of_document(_encoded(written), standards, unit, input_) as made:
            yield made
    except IngleError as error:
        if not is_text:
            error.line = error.column = None
        raise


def draft(document: DraftLike, *, standards: Optional[Iterable[StandardLike]] = None,
          unit: Optional[UnitLike] = None, inlet: str = "given",
          **figures: DraftFigure) -> Dict[str, Any]:
    """Estimate how a fireplace draws, in the shape that ``ingle draft`` writes.

    :param document: a survey document, as a dict or its text, or a ``Survey``
    :param standards: those whose tables of liners are looked into, by id or as objects; none
        leaves the document's
    :param unit: the unit by which figures are shown: ``in``, ``ft``, ``mm``, ``cm`` or ``m``
    :param inlet: ``sharp`` or ``rounded`` computes the loss of the inlet from the throat's area
    :param figures: what goes in, by the names of ``draft_inputs``, in place of what the survey or
        the defaults have: ``rise="300 F"``, ``room_pressure=-5.0``. A text has its unit, a number
        is in SI units (kelvins, metres, pascals)
    :raises IngleError: if the document or a figure cannot be used, or the survey lacks one
    """
    with _estimated(document, standards, unit, inlet, figures) as made:
        found: Dict[str, Any] = json.loads(_left(made.reader, json_library.ingle_json_draft(
            made.reader.pointer, made.draft.pointer, made.unit)))
        return found


def draft_page(document: DraftLike, format: str = "text", *, width: Optional[int] = None,
               colour: bool = False, title: Optional[str] = None,
               standards: Optional[Iterable[StandardLike]] = None,
               unit: Optional[UnitLike] = None, inlet: str = "given",
               **figures: DraftFigure) -> str:
    """Estimate how a fireplace draws, and write it as a page.

    The arguments are those of ``draft``, and how the page looks: see ``explain``.
    """
    with _estimated(document, standards, unit, inlet, figures) as made:
        look = page(format, width, colour, made.unit, title_text(title))
        return gathered(library.ingle_draft_page, made.draft.pointer, ctypes.byref(look))


def draft_plot(document: DraftLike, *, title: Optional[str] = None,
               standards: Optional[Iterable[StandardLike]] = None,
               unit: Optional[UnitLike] = None, inlet: str = "given",
               **figures: DraftFigure) -> str:
    """Estimate how a fireplace draws, and plot it against the height of the flue, as SVG.

    The arguments are those of ``draft``; the first of the standards is the one whose ratios of flue
    to opening are drawn beside it.

    :param title: without it, the plot's own
    :raises IngleError: as ``draft``, and where nothing drives a flow
    """
    with _estimated(document, standards, unit, inlet, figures) as made:
        look = sheet(made.unit, title_text(title))
        return gathered(library.ingle_draft_plot, made.draft.pointer, ctypes.byref(made.input),
                        made.standard, ctypes.byref(look))
