# SPDX-License-Identifier: MIT
"""Finds and loads the two C libraries, and refuses those that do not fit this package.

Looked for, in this order: where ``INGLE_LIBRARY`` (and ``INGLE_JSON_LIBRARY``) say; beside this
package; by the exact name that the system's loader knows; by what ctypes finds.
"""

from __future__ import annotations

import ctypes
import ctypes.util
import os
import sys
import weakref
from typing import Any, Callable, Iterator, List, Optional

from . import prototypes

# The series of releases that this package binds: major and minor version. It is this package's
# own version too; the patch level is the library's.
SERIES = "0.1"

# The number in the libraries' SONAME.
SONAME_NUMBER = "0"


def _file_names(name: str) -> List[str]:
    if sys.platform == "darwin":
        return [f"lib{name}.{SONAME_NUMBER}.dylib", f"lib{name}.dylib"]
    if sys.platform == "win32":
        return [f"{name}-{SONAME_NUMBER}.dll", f"lib{name}-{SONAME_NUMBER}.dll"]
    return [f"lib{name}.so.{SONAME_NUMBER}", f"lib{name}.so"]


def _existing(folders: List[str], names: List[str]) -> Optional[str]:
    for folder in folders:
        for name in names:
            path = os.path.join(folder, name)
            if os.path.exists(path):
                return path
    return None


def _candidates(name: str) -> Iterator[str]:
    bundled = _existing([os.path.dirname(os.path.abspath(__file__))], _file_names(name))
    if bundled is not None:
        yield bundled
    yield _file_names(name)[0]
    found = ctypes.util.find_library(name)
    if found is not None:
        yield found


def _open_path(path: str, variable: str) -> ctypes.CDLL:
    try:
        return ctypes.CDLL(path)
    except OSError as error:
        raise ImportError(f"{variable} names a library that cannot be loaded: {error}") from error


def _open_any(name: str, variable: str) -> ctypes.CDLL:
    reasons = []
    for candidate in _candidates(name):
        try:
            return ctypes.CDLL(candidate)
        except OSError as error:
            reasons.append(str(error))
    raise ImportError(f"Ingle's library {_file_names(name)[0]} was not found. Install it, or give "
                      f"its path in {variable}. Tried: {'; '.join(reasons)}")


def _open_library() -> ctypes.CDLL:
    path = os.environ.get("INGLE_LIBRARY")
    if path:
        return _open_path(path, "INGLE_LIBRARY")
    return _open_any("ingle", "INGLE_LIBRARY")


def _open_json_library() -> ctypes.CDLL:
    path = os.environ.get("INGLE_JSON_LIBRARY")
    if path:
        return _open_path(path, "INGLE_JSON_LIBRARY")
    library_path = os.environ.get("INGLE_LIBRARY")
    if not library_path:
        return _open_any("ingle-json", "INGLE_JSON_LIBRARY")
    folder = os.path.dirname(os.path.abspath(library_path))
    # A build tree has it in another folder than an installation.
    folders = [folder, os.path.join(folder, os.pardir, "bindings", "json")]
    beside = _existing(folders, _file_names("ingle-json"))
    if beside is None:
        raise ImportError(f"{_file_names('ingle-json')[0]} is not beside INGLE_LIBRARY "
                          f"({library_path}); give its path in INGLE_JSON_LIBRARY.")
    return _open_path(beside, "INGLE_LIBRARY")


# ---- whether they fit -------------------------------------------------------------------------


def _declare(library: ctypes.CDLL, functions: Any) -> None:
    try:
        prototypes.declare(library, functions)
    except AttributeError as error:
        raise ImportError(f"The library found is not one this package can use: {error}") from error


def _check_version(library: ctypes.CDLL) -> str:
    version = str(library.ingle_version().decode())
    if not version.startswith(SERIES + "."):
        raise ImportError(f"This package is for Ingle {SERIES}; the library found is {version}.")
    return version


def _address(function: Any) -> Optional[int]:
    return ctypes.cast(function, ctypes.c_void_p).value


def _check_same(library: ctypes.CDLL, json_library: ctypes.CDLL) -> None:
    # What one library hands out, the other must know: both have to share one libingle.
    if _address(json_library.ingle_version) != _address(library.ingle_version):
        raise ImportError("libingle-json rests on another libingle than the one that was found; "
                          "give both paths in INGLE_LIBRARY and INGLE_JSON_LIBRARY.")


def _check_struct(library: ctypes.CDLL, kind: Any, use: Callable[[Any], int],
                  done: bytes = b"done") -> None:
    """Call with our size, with one that is too small, and with one byte more than is known."""

    class Longer(ctypes.Structure):
        _fields_ = [("known", kind), ("unknown", ctypes.c_size_t)]

    size = ctypes.sizeof(kind)
    name = library.ingle_status_name
    expected = ((size, 0, done), (ctypes.sizeof(ctypes.c_size_t), 0, b"struct-size"),
                (ctypes.sizeof(Longer), 1, b"struct-newer"))
    for given_size, unknown, answer in expected:
        given = Longer()
        given.known.size = given_size
        given.unknown = unknown
        got = name(use(ctypes.cast(ctypes.byref(given), ctypes.POINTER(kind))))
        if got != answer:
            raise ImportError(f"{kind.__name__} is another struct in the library found: size "
                              f"{given_size} gave {got.decode()}, not {answer.decode()}.")


def _check_amount(library: ctypes.CDLL) -> None:
    """The amount has no size of its own: see that the library writes all of ours and no more."""
    size = ctypes.sizeof(prototypes.ingle_amount)
    written = (ctypes.c_ubyte * (2 * size))(*([0xA5] * (2 * size)))
    pointer = ctypes.cast(written, ctypes.POINTER(prototypes.ingle_amount))
    status = library.ingle_amount_parse(b"1 mm", 4, prototypes.INGLE_LENGTH, None, pointer, None)
    amount = pointer.contents
    whole = (amount.value, amount.dimension, amount.scale) == (
        1000000, prototypes.INGLE_LENGTH, prototypes.INGLE_SCALE_USUAL)
    if status != 0 or not whole or any(byte != 0xA5 for byte in written[size:]):
        raise ImportError("ingle_amount is another struct in the library found.")


class Owned:
    """An object of a library: freed when nothing in Python holds it any longer."""

    def __init__(self, new: Callable[..., int], free: Callable[..., None],
                 *arguments: Any) -> None:
        pointer = ctypes.c_void_p()
        if new(*arguments, ctypes.byref(pointer)) < 0:
            raise MemoryError
        #: The address, as calls of the library take it.
        self.pointer = pointer.value
        #: What reads this object and must not see it change.
        self.readers: weakref.WeakSet[Any] = weakref.WeakSet()
        weakref.finalize(self, free, self.pointer)


def _flag_range(library: ctypes.CDLL, given: Any) -> Any:
    """A range over the two values of some flag."""
    every = map(library.ingle_quantity_at, range(library.ingle_quantity_count()))
    given.quantity = next(each for each in every
                          if library.ingle_quantity_dimension(each) == prototypes.INGLE_FLAG
                          and not library.ingle_quantity_repeats(each))
    return ctypes.byref(given)


def _check_bench_structs(library: ctypes.CDLL, survey: Owned, standards: Any,
                         report: Owned) -> None:
    """Those of what is asked about a survey, and of how it is written."""
    library.ingle_check(survey.pointer, standards, 1, None, report.pointer)
    swallow = prototypes.ingle_write(lambda _context, _text, _length: 0)
    solution = Owned(library.ingle_solution_new, library.ingle_solution_free, None)
    sweep = Owned(library.ingle_sweep_new, library.ingle_sweep_free, None)
    values = prototypes.ingle_range(size=ctypes.sizeof(prototypes.ingle_range))
    asked = (survey.pointer, standards, 1, None, _flag_range(library, values))
    _check_struct(library, prototypes.ingle_range, lambda given: library.ingle_range_settle(
        _flag_range(library, given.contents), None))
    _check_struct(library, prototypes.ingle_solve_options,
                  lambda given: library.ingle_solve(*asked, given, solution.pointer))
    _check_struct(library, prototypes.ingle_sweep_options,
                  lambda given: library.ingle_sweep_run(*asked, given, sweep.pointer))
    _check_struct(library, prototypes.ingle_page,
                  lambda given: library.ingle_explain(report.pointer, given, None, swallow, None))
    _check_struct(library, prototypes.ingle_explain_options,
                  lambda given: library.ingle_explain(report.pointer, None, given, swallow, None))
    # Nothing was measured that could be drawn, which is said of a sheet that can be read.
    _check_struct(library, prototypes.ingle_sheet,
                  lambda given: library.ingle_draw(report.pointer, 0, given, swallow, None),
                  b"nothing-measured")


def _check_structs(library: ctypes.CDLL, json_library: ctypes.CDLL) -> None:
    _check_amount(library)
    amount = prototypes.ingle_amount(0, prototypes.INGLE_LENGTH, prototypes.INGLE_SCALE_USUAL)
    text = ctypes.create_string_buffer(64)
    _check_struct(library, prototypes.ingle_format,
                  lambda given: library.ingle_amount_format(amount, given, text, 64, None))
    survey = Owned(library.ingle_survey_new, library.ingle_survey_free, None)
    report = Owned(library.ingle_report_new, library.ingle_report_free, None)
    standards = (ctypes.c_void_p * 1)(library.ingle_standard_at(0))
    _check_struct(library, prototypes.ingle_check_options,
                  lambda given: library.ingle_check(survey.pointer, standards, 1, given,
                                                    report.pointer))
    assessment = Owned(library.ingle_assessment_new, library.ingle_assessment_free, None)
    _check_struct(library, prototypes.ingle_probability_options,
                  lambda given: library.ingle_assess(report.pointer, given, assessment.pointer))
    _check_bench_structs(library, survey, standards, report)
    json = Owned(json_library.ingle_json_new, json_library.ingle_json_free)
    document = b'{"standards": ["%s"], "survey": {}}' % library.ingle_standard_id(standards[0])
    _check_struct(library, prototypes.ingle_json_options,
                  lambda given: json_library.ingle_json_check(json.pointer, document,
                                                              len(document), given))
    velocity = ctypes.c_double()

    def draft(given: Any) -> int:
        size = given.contents.size
        library.ingle_draft_input_start(given)
        given.contents.size = size
        for name in ("opening_area", "flue_area", "hydraulic_diameter", "height"):
            setattr(given.contents, name, 1.0)
        return int(library.ingle_draft_velocity(given, ctypes.byref(velocity)))

    _check_struct(library, prototypes.ingle_draft_input, draft)


library = _open_library()
_declare(library, prototypes.LIBRARY_FUNCTIONS)
version = _check_version(library)
json_library = _open_json_library()
_declare(json_library, prototypes.JSON_FUNCTIONS)
_check_same(library, json_library)
_check_structs(library, json_library)
