# SPDX-License-Identifier: MIT
"""What a call of the library says of itself, as an exception, and text in and out of calls."""

from __future__ import annotations

import ctypes
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Dict, Generic, Iterable, Iterator, Optional, TypeVar

from .loading import library

Entry = TypeVar("Entry")


class Catalogue(Mapping, Generic[Entry]):  # type: ignore[type-arg]
    """What the library knows of one kind, by id, in the library's order."""

    def __init__(self, entries: Dict[str, Entry]) -> None:
        self._entries = entries

    def __getitem__(self, key: str) -> Entry:
        return self._entries[key]

    def __iter__(self) -> Iterator[str]:
        return iter(self._entries)

    def __len__(self) -> int:
        return len(self._entries)

    def __repr__(self) -> str:
        return f"<catalogue: {', '.join(self._entries)}>"


@dataclass(frozen=True)
class Status:
    """One thing that a call can say of itself."""

    #: Its name, as documents write it: ``unit-missing``.
    id: str
    #: Its number: 0 done, positive done with a caution, negative not done.
    number: int
    #: What it means, in a sentence.
    text: str


def _status_at(index: int) -> Status:
    number = ctypes.c_int32()
    library.ingle_status_at(index, ctypes.byref(number))
    return Status(library.ingle_status_name(number).decode(), number.value,
                  library.ingle_status_text(number).decode())


def _statuses() -> Dict[str, Status]:
    every = (_status_at(i) for i in range(library.ingle_status_count()))
    return {status.id: status for status in every}


#: Every status, by its name.
statuses: Catalogue[Status] = Catalogue(_statuses())

ROUNDED = statuses["rounded"].number
CUT = statuses["cut"].number


class IngleError(Exception):
    """A call that was not done."""

    def __init__(self, status: int, message: Optional[str] = None, at: str = "",
                 line: Optional[int] = None, column: Optional[int] = None,
                 position: Optional[int] = None) -> None:
        #: The library's number for what was wrong, always negative.
        self.status = status
        #: Its name, stable, as documents write it: ``unit-missing``.
        self.code: str = library.ingle_status_name(status).decode()
        #: What was wrong, in a sentence.
        self.message: str = message or library.ingle_status_text(status).decode()
        #: Where: a JSON pointer into the document, or the path given to a survey; "" for the call.
        self.at = at
        #: The line of the document's text, from 1; None where there is no such text.
        self.line = line
        #: The column in that line, from 1; None where there is no such text.
        self.column = column
        #: The offset in bytes into the text of an amount; None where the error is not in one.
        self.position = position
        super().__init__(self.message)

    def __str__(self) -> str:
        place = f" (at {self.at})" if self.at else ""
        return f"{self.code}: {self.message}{place}"

    def __reduce__(self) -> Any:
        return (type(self), (self.status, self.message, self.at, self.line, self.column,
                             self.position))


def error_of(name: str, message: Optional[str] = None, at: str = "") -> IngleError:
    """The exception for a status by its name."""
    return IngleError(statuses[name].number, message, at)


def require(status: int, message: Optional[bytes] = None, at: str = "",
            position: Optional[int] = None) -> int:
    """Raise if a status says that the call was not done, else give it back."""
    if status < 0:
        raise IngleError(status, message.decode() if message else None, at, position=position)
    return status


# ---- text -------------------------------------------------------------------------------------


def encoded(text: str, at: str = "") -> bytes:
    """A text as the library takes it. It would end at a NUL, so that is refused."""
    if not isinstance(text, str):
        raise TypeError(f"a str is due, not {type(text).__name__}")
    try:
        written = text.encode("utf-8")
    except UnicodeEncodeError:
        raise error_of("encoding", at=at) from None
    if b"\0" in written:
        raise error_of("encoding", at=at)
    return written


def decoded(text: Optional[bytes]) -> Optional[str]:
    """A text of the library, or None where it has none."""
    return None if text is None else text.decode("utf-8")


def written(call: Any, *arguments: Any) -> str:
    """What a call writes that ends its arguments with buffer, capacity and length."""
    length = ctypes.c_size_t()
    capacity = 256
    while True:
        buffer = ctypes.create_string_buffer(capacity)
        status = require(call(*arguments, buffer, capacity, ctypes.byref(length)))
        if status != CUT:
            return buffer.value.decode("utf-8")
        capacity = length.value + 1


def nearest(name: str, known: Iterable[str]) -> Optional[str]:
    """The known name that a mistyped one most likely means."""
    names = [each.encode("utf-8") for each in known]
    array = (ctypes.c_char_p * len(names))(*names)
    return decoded(library.ingle_name_nearest(encoded(name), array, len(names)))
