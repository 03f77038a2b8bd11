# SPDX-License-Identifier: MIT
"""Exact amounts, their units, and text in and out."""

from __future__ import annotations

import ctypes
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Dict, Optional, Tuple, Union

from . import prototypes
from .errors import ROUNDED, Catalogue, encoded, error_of, require, written
from .loading import library


def _dimensions() -> Dict[str, int]:
    numbers = {}
    number = 1
    while True:
        name = library.ingle_dimension_name(number)
        if name is None:
            return numbers
        numbers[name.decode()] = number
        number += 1


_DIMENSION_NUMBERS = _dimensions()
_DIMENSION_NAMES = {number: name for name, number in _DIMENSION_NUMBERS.items()}

#: The names of all dimensions: what an amount can count.
dimensions: Tuple[str, ...] = tuple(_DIMENSION_NUMBERS)

LENGTH = _DIMENSION_NAMES[prototypes.INGLE_LENGTH]
CHOICE = _DIMENSION_NAMES[prototypes.INGLE_CHOICE]
FLAG = _DIMENSION_NAMES[prototypes.INGLE_FLAG]


def dimension_name(number: int) -> str:
    """The name of a dimension that the library gave."""
    return _DIMENSION_NAMES[number]


# ---- units ------------------------------------------------------------------------------------


@dataclass(frozen=True, eq=False)
class Unit:
    """A unit. There is one object for each."""

    #: Unique and stable: ``in``, ``ft2``.
    id: str
    #: In words: ``square foot``.
    label: str
    #: Its code in the Unified Code for Units of Measure.
    ucum: str
    #: What it measures.
    dimension: str
    #: How many base units of its dimension it holds.
    size: Fraction = field(repr=False)
    #: Every spelling it is known by.
    names: Tuple[str, ...] = field(repr=False)
    pointer: int = field(repr=False)

    @staticmethod
    def find(name: str) -> Unit:
        """The unit of any spelling it is known by; IngleError if there is none."""
        pointer = library.ingle_unit_find(encoded(name))
        if pointer is None:
            raise error_of("unit-unknown")
        return unit_at(pointer)


UnitLike = Union[str, Unit]


def _read_unit(pointer: int) -> Unit:
    numerator, denominator = ctypes.c_int64(), ctypes.c_int64()
    library.ingle_unit_size(pointer, ctypes.byref(numerator), ctypes.byref(denominator))
    names = tuple(library.ingle_unit_name_at(pointer, i).decode()
                  for i in range(library.ingle_unit_name_count(pointer)))
    return Unit(id=library.ingle_unit_id(pointer).decode(),
                label=library.ingle_unit_label(pointer).decode(),
                ucum=library.ingle_unit_ucum(pointer).decode(),
                dimension=dimension_name(library.ingle_unit_dimension(pointer)),
                size=Fraction(numerator.value, denominator.value), names=names, pointer=pointer)


_UNITS = {pointer: _read_unit(pointer)
          for pointer in map(library.ingle_unit_at, range(library.ingle_unit_count()))}

#: Every unit, by its id.
units: Catalogue[Unit] = Catalogue({unit.id: unit for unit in _UNITS.values()})


def unit_at(pointer: int) -> Unit:
    """The unit that the library gave."""
    return _UNITS[pointer]


def unit_pointer(unit: Optional[UnitLike]) -> Optional[int]:
    """A unit as calls of the library take it."""
    if unit is None:
        return None
    return (unit if isinstance(unit, Unit) else Unit.find(unit)).pointer


# ---- amounts ----------------------------------------------------------------------------------


def amount_format(unit: Optional[UnitLike], denominator: int = 0) -> prototypes.ingle_format:
    """How amounts are shown, as calls of the library take it."""
    return prototypes.ingle_format(ctypes.sizeof(prototypes.ingle_format), unit_pointer(unit),
                                   denominator, 0)


@dataclass(frozen=True)
class Amount:
    """An exact amount: a whole number of base units of its dimension."""

    #: How many base units: nanometres for a length.
    value: int
    #: What it counts: one of ``ingle.dimensions``.
    dimension: str
    #: 0 or 1: whether it is usually written in its larger unit. It has no part in comparisons.
    scale: int = field(default=prototypes.INGLE_SCALE_USUAL, compare=False, repr=False)
    #: True if the text it was read from is no whole number of base units.
    rounded: bool = field(default=False, compare=False, repr=False)

    def __post_init__(self) -> None:
        if not isinstance(self.value, int) or isinstance(self.value, bool):
            raise TypeError("an amount is a whole number of base units: an int")
        if self.dimension not in _DIMENSION_NUMBERS:
            raise ValueError(f"no dimension has the name {self.dimension!r}; "
                             f"there are {', '.join(dimensions)}")
        if not -2**63 <= self.value < 2**63:
            raise error_of("overflow")

    @staticmethod
    def parse(text: str, dimension: str = LENGTH, unit: Optional[UnitLike] = None) -> Amount:
        """Read an amount from text, ``19 15/16 in``; `unit` is the unit of a bare number."""
        number = _DIMENSION_NUMBERS.get(dimension)
        if number is None:
            raise ValueError(f"no dimension has the name {dimension!r}")
        amount, position = prototypes.ingle_amount(), ctypes.c_size_t()
        given = encoded(text)
        status = library.ingle_amount_parse(given, len(given), number, unit_pointer(unit),
                                            ctypes.byref(amount), ctypes.byref(position))
        require(status, position=position.value)
        return Amount(amount.value, dimension, amount.scale, status == ROUNDED)

    def text(self, unit: Optional[UnitLike] = None, denominator: int = 0) -> str:
        """For people: in the unit of length given, or inches to the given fraction (0 is 64)."""
        return written(library.ingle_amount_format, self.struct(),
                       amount_format(unit, denominator))

    def unit(self, unit: Optional[UnitLike] = None) -> Optional[Unit]:
        """The unit in which `text` shows it; None where its dimension has none."""
        pointer = library.ingle_amount_unit(self.struct(), amount_format(unit))
        return None if pointer is None else unit_at(pointer)

    def decimal(self, unit: Optional[UnitLike] = None) -> str:
        """A plain decimal number in a unit of its dimension, to at most nine places."""
        return written(library.ingle_amount_decimal, self.struct(), unit_pointer(unit))

    def fraction(self, unit: Optional[UnitLike] = None) -> Fraction:
        """Exactly, in base units or in a unit of its dimension."""
        if unit is None:
            return Fraction(self.value)
        known = unit if isinstance(unit, Unit) else Unit.find(unit)
        if known.dimension != self.dimension:
            raise error_of("dimension")
        return self.value / known.size

    def ratio(self) -> Fraction:
        """Exactly, as a plain number, where that is what it is: a ratio, a slope or a count."""
        # The library reads a bare number for these dimensions and for no others.
        return Fraction(self.value, Amount.parse("1", self.dimension).value)

    def __str__(self) -> str:
        return self.text()

    def _comparable(self, other: object) -> bool:
        return isinstance(other, Amount) and other.dimension == self.dimension

    def __lt__(self, other: Amount) -> bool:
        return self.value < other.value if self._comparable(other) else NotImplemented

    def __le__(self, other: Amount) -> bool:
        return self.value <= other.value if self._comparable(other) else NotImplemented

    def __gt__(self, other: Amount) -> bool:
        return self.value > other.value if self._comparable(other) else NotImplemented

    def __ge__(self, other: Amount) -> bool:
        return self.value >= other.value if self._comparable(other) else NotImplemented

    def struct(self) -> prototypes.ingle_amount:
        """As calls of the library take it."""
        return prototypes.ingle_amount(self.value, _DIMENSION_NUMBERS[self.dimension], self.scale)

    @staticmethod
    def of_struct(amount: prototypes.ingle_amount) -> Amount:
        """An amount that the library gave."""
        return Amount(amount.value, _DIMENSION_NAMES[amount.dimension], amount.scale)
