# SPDX-License-Identifier: MIT
"""Texts that the library writes piece by piece, gathered; how pages and sheets look."""

from __future__ import annotations

import ctypes
from typing import Any, List, Optional

from . import prototypes
from .errors import Catalogue, IngleError, encoded, error_of, nearest
from .loading import library

#: What a page of text can be written as, each by its number.
FORMATS: Catalogue[int] = Catalogue({
    library.ingle_page_format_name(number).decode(): number
    for number in range(library.ingle_page_format_count())})


def number_of(name: str, known: Catalogue[int], what: str) -> int:
    """The number of a name, or an error that says which is near it."""
    if name in known:
        return known[name]
    near = nearest(name, known)
    hint = f" Did you mean {near}?" if near else f" One of {', '.join(known)} is due."
    raise error_of("unknown-name", f"{name}: there is no such {what}.{hint}")


class _Gathering:
    """Gathers what a call writes, and keeps what went wrong within: C cannot pass it on."""

    def __init__(self) -> None:
        self.pieces: List[bytes] = []
        self.raised: Optional[BaseException] = None

    def take(self, _context: Optional[int], text: int, length: int) -> int:
        """An ingle_write."""
        try:
            self.pieces.append(ctypes.string_at(text, length))
        except BaseException as error:  # noqa: B902  also an interruption by the user
            self.raised = error
            return 1
        return 0


def gathered(call: Any, *arguments: Any) -> str:
    """All that a call writes that ends its arguments with a write callback and its context."""
    gathering = _Gathering()
    status = call(*arguments, prototypes.ingle_write(gathering.take), None)
    if gathering.raised is not None:
        raise gathering.raised
    if status < 0:
        raise IngleError(status)
    return b"".join(gathering.pieces).decode("utf-8")


def page(format: str, width: Optional[int], colour: bool, unit: Optional[int],
         title: Optional[bytes]) -> prototypes.ingle_page:
    """How a page looks, as calls of the library take it."""
    if width is not None and not 20 <= width <= 1000:
        raise error_of("argument", f"A line has 20 to 1000 columns, not {width}.")
    return prototypes.ingle_page(size=ctypes.sizeof(prototypes.ingle_page),
                                 format=number_of(format, FORMATS, "format of a page"),
                                 width=width or 0, colour=colour, unit=unit, title=title)


def sheet(unit: Optional[int], title: Optional[bytes]) -> prototypes.ingle_sheet:
    """How a plot or drawing looks, as calls of the library take it."""
    return prototypes.ingle_sheet(size=ctypes.sizeof(prototypes.ingle_sheet), unit=unit,
                                  title=title)


def title_text(title: Optional[str], otherwise: Optional[bytes] = None) -> Optional[bytes]:
    """A title as calls of the library take it."""
    return otherwise if title is None else encoded(title)
