# SPDX-License-Identifier: MIT
"""Surveys and reports as JSON documents.

The library reads and writes them; there is no second reader here. A dict becomes text, the text is
judged, and the report's text becomes a dict.
"""

from __future__ import annotations

import ctypes
import json
from typing import Any, Callable, Dict, Iterable, List, Optional, Union

from . import prototypes
from .errors import IngleError, encoded
from .loading import Owned, json_library
from .measure import UnitLike, unit_pointer
from .standards import StandardLike, standard_array, standard_of

# Readers and writers that nobody uses now, each with the memory it has come to need. Taking one
# and giving it back are single steps, so threads need no lock.
_idle: List[Owned] = []


def _raise_for(status: int, text: str) -> None:
    error = json.loads(text)["error"]
    raise IngleError(status, error.get("message"), error.get("at") or "", error.get("line"),
                     error.get("column"))


def _asked(call: Callable[..., int], *arguments: Any) -> str:
    """The document that a call leaves, or the error that it leaves raised."""
    try:
        reader = _idle.pop()
    except IndexError:
        reader = Owned(json_library.ingle_json_new, json_library.ingle_json_free)
    try:
        status = call(reader.pointer, *arguments)
        text = json_library.ingle_json_text(reader.pointer, None).decode("utf-8")
    finally:
        _idle.append(reader)
    if status < 0:
        _raise_for(status, text)
    return str(text)


def check_text(document: Union[str, bytes], *, standards: Optional[Iterable[StandardLike]] = None,
               unit: Optional[UnitLike] = None, working: bool = True,
               not_applicable: bool = False, one_line: bool = False) -> str:
    """Judge a survey document and give its report, both as JSON text.

    :param document: JSON as RFC 8259 has it; bytes are UTF-8
    :param standards: ids or ``Standard`` objects in place of the document's; none leaves those
    :param unit: the unit in which lengths are shown: ``in``, ``ft``, ``mm``, ``cm`` or ``m``
    :param working: whether the steps of the calculations are in the report
    :param not_applicable: whether rules that do not apply give findings too
    :param one_line: whether the report is on one line, not indented
    :raises IngleError: if the document cannot be used; it says where and why
    """
    given = document.encode("utf-8", "surrogatepass") if isinstance(document, str) else document
    options = prototypes.ingle_json_options(size=ctypes.sizeof(prototypes.ingle_json_options),
                                            unit=unit_pointer(unit), without_working=not working,
                                            with_not_applicable=not_applicable, one_line=one_line)
    if standards is not None:
        adopted = standard_array(standards)
        options.standards = ctypes.cast(adopted, ctypes.POINTER(ctypes.c_void_p))
        options.standard_count = len(adopted)
    return _asked(json_library.ingle_json_check, given, len(given), ctypes.byref(options))


def check(document: Dict[str, Any], *, standards: Optional[Iterable[StandardLike]] = None,
          unit: Optional[UnitLike] = None, working: bool = True,
          not_applicable: bool = False) -> Dict[str, Any]:
    """Judge a survey document and give its report.

    The arguments are those of ``check_text``. An error says by its ``at`` where in the document it
    is; it has no line or column.
    """
    try:
        report = check_text(json.dumps(document), standards=standards, unit=unit, working=working,
                            not_applicable=not_applicable, one_line=True)
    except IngleError as error:
        # They would count in a text that the caller has never seen.
        error.line = error.column = None
        raise
    found: Dict[str, Any] = json.loads(report)
    return found


def catalogue(name: str, standard: Optional[StandardLike] = None) -> List[Dict[str, Any]]:
    """A catalogue as the command ``ingle list`` gives it.

    :param name: ``standards``, ``rules``, ``quantities``, ``units``, ``verdicts`` or ``statuses``
    :param standard: the standard whose rules, or whose rules' quantities, are listed
    """
    only = None if standard is None else standard_of(standard).pointer
    found: List[Dict[str, Any]] = json.loads(
        _asked(json_library.ingle_json_list, encoded(name), only))
    return found


def schema(document: str) -> Dict[str, Any]:
    """The JSON Schema (2020-12) of a document: ``survey`` or ``report``."""
    found: Dict[str, Any] = json.loads(_asked(json_library.ingle_json_schema, encoded(document)))
    return found
