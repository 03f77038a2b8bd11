# SPDX-License-Identifier: MIT
"""Surveys and reports as JSON documents.

The library reads and writes them; there is no second reader here. A dict becomes text, the text is
judged, and the report's text becomes a dict.
"""

from __future__ import annotations

import contextlib
import ctypes
import json
from dataclasses import dataclass
from typing import (Any, Callable, Dict, Iterable, Iterator, List, Mapping, Optional, Sequence,
                    Tuple, Union)

from . import prototypes
from .errors import IngleError, encoded, require
from .loading import Owned, json_library, library
from .measure import UnitLike, unit_pointer
from .standards import (StandardLike, basis_number, reading_array, rule_name, standard_array,
                        standard_at, standard_of)
from .uncertainty import Probability

# Readers and writers that nobody uses now, each with the memory it has come to need. Taking one
# and giving it back are single steps, so threads need no lock.
_idle: List[Owned] = []


def _raise_for(status: int, text: str) -> None:
    error = json.loads(text)["error"]
    raise IngleError(status, error.get("message"), error.get("at") or "", error.get("line"),
                     error.get("column"))


@contextlib.contextmanager
def _reader() -> Iterator[Owned]:
    """A reader and writer that nobody else uses meanwhile."""
    try:
        reader = _idle.pop()
    except IndexError:
        reader = Owned(json_library.ingle_json_new, json_library.ingle_json_free)
    try:
        yield reader
    finally:
        _idle.append(reader)


def _left(reader: Owned, status: int) -> str:
    """The document that a call left, or the error that it left raised."""
    text = str(json_library.ingle_json_text(reader.pointer, None).decode("utf-8"))
    if status < 0:
        _raise_for(status, text)
    return text


def _asked(call: Callable[..., int], *arguments: Any) -> str:
    with _reader() as reader:
        return _left(reader, call(reader.pointer, *arguments))


# ---- amendments -------------------------------------------------------------------------------

AmendmentsLike = Union[str, bytes, Mapping[str, Any], Sequence[Mapping[str, Any]]]

#: A document as a dict, or its JSON text.
DocumentLike = Union[str, bytes, Mapping[str, Any]]


def _encoded(document: Union[str, bytes]) -> bytes:
    return document.encode("utf-8", "surrogatepass") if isinstance(document, str) else document


def _amend(reader: Owned, amendments: AmendmentsLike) -> None:
    """Let the reader keep amendments; an error says that it is in them."""
    is_text = isinstance(amendments, (str, bytes))
    if isinstance(amendments, (str, bytes)):
        text = _encoded(amendments)
    else:
        whole = amendments if isinstance(amendments, Mapping) else {"amendments": amendments}
        text = json.dumps(whole).encode()
    try:
        _left(reader, json_library.ingle_json_amend(reader.pointer, text, len(text)))
    except IngleError as error:
        # Of a text that the caller has never seen there is no line.
        raise IngleError(error.status, f"amendments: {error.message}", error.at,
                         error.line if is_text else None,
                         error.column if is_text else None) from None


# ---- checking ---------------------------------------------------------------------------------


@contextlib.contextmanager
def _judged(document: DocumentLike, options: prototypes.ingle_json_options,
            amendments: Optional[AmendmentsLike], call: Callable[..., int]
            ) -> Iterator[Tuple[Owned, str]]:
    """A reader that has judged a document, which it keeps meanwhile, and what the call left."""
    is_text = isinstance(document, (str, bytes))
    text = (_encoded(document) if isinstance(document, (str, bytes))
            else json.dumps(document).encode())
    with _reader() as reader:
        try:
            if amendments is not None:
                _amend(reader, amendments)
            status = call(reader.pointer, text, len(text), ctypes.byref(options))
            try:
                left = _left(reader, status)
            except IngleError as error:
                if not is_text:
                    error.line = error.column = None
                raise
            yield reader, left
        finally:
            if amendments is not None:
                json_library.ingle_json_clear_amendments(reader.pointer)


def _report(document: DocumentLike, options: prototypes.ingle_json_options,
            amendments: Optional[AmendmentsLike]) -> str:
    with _judged(document, options, amendments, json_library.ingle_json_check) as (_, left):
        return left


def _options(standards: Optional[Iterable[StandardLike]], unit: Optional[UnitLike], working: bool,
             not_applicable: bool, one_line: bool, readings: Optional[Mapping[str, str]],
             probability: Optional[Probability] = None,
             basis: Optional[str] = None) -> prototypes.ingle_json_options:
    options = prototypes.ingle_json_options(size=ctypes.sizeof(prototypes.ingle_json_options),
                                            unit=unit_pointer(unit), without_working=not working,
                                            with_not_applicable=not_applicable, one_line=one_line,
                                            least_basis=basis_number(basis))
    if standards is not None:
        adopted = standard_array(standards)
        options.standards = ctypes.cast(adopted, ctypes.POINTER(ctypes.c_void_p))
        options.standard_count = len(adopted)
    if readings is not None:
        followed = reading_array(readings, -1)
        options.readings = followed
        options.reading_count = len(followed)
    if probability is not None:
        options.probability = ctypes.pointer(probability.struct())
    return options


def check_text(document: Union[str, bytes], *, standards: Optional[Iterable[StandardLike]] = None,
               unit: Optional[UnitLike] = None, working: bool = True,
               not_applicable: bool = False, one_line: bool = False,
               amendments: Optional[AmendmentsLike] = None,
               readings: Optional[Mapping[str, str]] = None,
               probability: Optional[Probability] = None,
               basis: Optional[str] = None) -> str:
    """Judge a survey document and give its report, both as JSON text.

    :param document: JSON as RFC 8259 has it; bytes are UTF-8
    :param standards: ids or ``Standard`` objects in place of the document's; none leaves those
    :param unit: the unit in which lengths are shown: ``in``, ``ft``, ``mm``, ``cm`` or ``m``
    :param working: whether the steps of the calculations are in the report
    :param not_applicable: whether rules that do not apply give findings too
    :param one_line: whether the report is on one line, not indented
    :param amendments: a town's changes to the numbers, under the document's own: the text of a
        document of amendments, that document as a dict, or a list of its entries
    :param readings: the option to follow by the id of the reading, whatever the document says
    :param probability: tells, beside each verdict, how sure it is that the rule is met
    :param basis: judges by no rule whose numbers are known less well than this: ``read``,
        ``cited``, ``from-memory`` or ``common-practice``; None by all
    :raises IngleError: if the document or the amendments cannot be used; it says where and why,
        and its message begins with ``amendments:`` where it is in those
    """
    options = _options(standards, unit, working, not_applicable, one_line, readings, probability,
                       basis)
    return _report(document, options, amendments)


def check(document: DocumentLike, *, standards: Optional[Iterable[StandardLike]] = None,
          unit: Optional[UnitLike] = None, working: bool = True, not_applicable: bool = False,
          amendments: Optional[AmendmentsLike] = None,
          readings: Optional[Mapping[str, str]] = None,
          probability: Optional[Probability] = None,
          basis: Optional[str] = None) -> Dict[str, Any]:
    """Judge a survey document, a dict or JSON text, and give its report as a dict.

    The arguments are those of ``check_text``. An error says by its ``at`` where in the document it
    is; of a dict it has no line or column, which would count in a text that the caller has never
    seen.

    A float in a dict counts as the decimal number that Python prints for it, since that is what
    ``json.load`` makes of a number: 19.9375 is exact, and what was computed, 0.1 + 0.2, is what it
    has come to, 0.30000000000000004. Write amounts as texts, ``"19 15/16 in"``, to be sure of them;
    ``Survey.set``, which no ``json.load`` comes before, takes no float.
    """
    options = _options(standards, unit, working, not_applicable, True, readings, probability,
                       basis)
    found: Dict[str, Any] = json.loads(_report(document, options, amendments))
    return found


# ---- further work on a document ---------------------------------------------------------------


@dataclass(frozen=True)
class Asked:
    """A document that was read and judged, for what is asked about it while it is at hand."""

    reader: Owned

    @property
    def survey(self) -> Optional[int]:
        """What was measured and observed."""
        address: Optional[int] = json_library.ingle_json_survey(self.reader.pointer)
        return address

    @property
    def report(self) -> Optional[int]:
        """The report on it."""
        address: Optional[int] = json_library.ingle_json_report(self.reader.pointer)
        return address

    @property
    def unit(self) -> Optional[int]:
        """The unit in which lengths are shown, or None for each standard's own."""
        address: Optional[int] = json_library.ingle_json_unit(self.reader.pointer)
        return address

    @property
    def title(self) -> Optional[bytes]:
        """Its id as a title, or None without one."""
        title: Optional[bytes] = json_library.ingle_json_title(self.reader.pointer)
        return title

    @property
    def question(self) -> Tuple[Any, ...]:
        """Survey, standards, their count, how they are checked: how calls of the library begin."""
        count = ctypes.c_size_t()
        standards = json_library.ingle_json_standards(self.reader.pointer, ctypes.byref(count))
        return (self.survey, standards, count.value,
                json_library.ingle_json_how(self.reader.pointer))

    def rule(self, name: Optional[str]) -> Optional[bytes]:
        """A rule of the document's standards as calls of the library take it."""
        if name is None:
            return None
        count = ctypes.c_size_t()
        adopted = json_library.ingle_json_standards(self.reader.pointer, ctypes.byref(count))
        return rule_name(name, [standard_at(adopted[i]) for i in range(count.value)])

    def answer(self, call: Callable[..., int], *arguments: Any) -> Dict[str, Any]:
        """The document that a call of the reader leaves."""
        found: Dict[str, Any] = json.loads(
            _left(self.reader, call(self.reader.pointer, *arguments)))
        return found

    def assessment(self, probability: Optional[Probability]) -> Owned:
        """How sure the findings of the report are."""
        made = Owned(library.ingle_assessment_new, library.ingle_assessment_free, None)
        options = (probability or Probability()).struct()
        require(library.ingle_assess(self.report, ctypes.byref(options), made.pointer))
        return made

    def range(self, path: str, least: Optional[str], most: Optional[str],
              step: Optional[str]) -> prototypes.ingle_range:
        """The values that a quantity is led through."""
        made = prototypes.ingle_range(size=ctypes.sizeof(prototypes.ingle_range))
        bounds = (None if each is None else encoded(each) for each in (least, most, step))
        _left(self.reader, json_library.ingle_json_range(
            self.reader.pointer, encoded(path), *bounds, ctypes.byref(made)))
        return made


@contextlib.contextmanager
def asked(document: DocumentLike, *, standards: Optional[Iterable[StandardLike]] = None,
          unit: Optional[UnitLike] = None, amendments: Optional[AmendmentsLike] = None,
          readings: Optional[Mapping[str, str]] = None, working: bool = True) -> Iterator[Asked]:
    """A document that was read and judged, as long as the block lasts."""
    options = _options(standards, unit, working, False, True, readings)
    with _judged(document, options, amendments, json_library.ingle_json_read) as (reader, _):
        yield Asked(reader)


def answered(call: Callable[..., int], *arguments: Any) -> Dict[str, Any]:
    """The document that a call leaves which needs no survey."""
    found: Dict[str, Any] = json.loads(_asked(call, *arguments))
    return found


# ---- catalogues and schemas -------------------------------------------------------------------


def catalogue(name: str, standard: Optional[StandardLike] = None) -> List[Dict[str, Any]]:
    """A catalogue as the command ``ingle list`` gives it.

    :param name: ``standards``, ``rules``, ``readings``, ``quantities``, ``units``, ``verdicts`` or
        ``statuses``
    :param standard: the standard whose rules, or whose rules' readings or quantities, are listed
    """
    only = None if standard is None else standard_of(standard).pointer
    found: List[Dict[str, Any]] = json.loads(
        _asked(json_library.ingle_json_list, encoded(name), only))
    return found


def schema(document: str) -> Dict[str, Any]:
    """The JSON Schema (2020-12) of a document.

    :param document: ``survey``, which a worksheet is as well, ``report``, ``amendments``,
        ``solution``, ``frontier``, ``sweep``, ``comparison``, ``exercise``, ``draft`` or ``error``
    """
    found: Dict[str, Any] = json.loads(_asked(json_library.ingle_json_schema, encoded(document)))
    return found
