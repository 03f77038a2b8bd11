# SPDX-License-Identifier: MIT
"""What can be measured or observed (quantities), and what was (a survey)."""

from __future__ import annotations

import ctypes
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Any, Dict, Iterator, Optional, Tuple, Union

from . import prototypes
from .errors import ROUNDED, Catalogue, IngleError, decoded, encoded, error_of, require
from .loading import Owned, library
from .measure import CHOICE, FLAG, Amount, UnitLike, dimension_name

# ---- the catalogue of quantities --------------------------------------------------------------


@dataclass(frozen=True, eq=False)
class Quantity:
    """One thing that can be measured or observed. There is one object for each."""

    #: Unique and stable: ``opening.width``.
    id: str
    #: The first part of the id.
    group: str
    #: The second part of the id.
    name: str
    #: In words.
    label: str
    #: How it is measured or observed: from what to what.
    how: str = field(repr=False)
    #: What kind of thing it is: one of ``ingle.dimensions``.
    dimension: str
    #: Whether its group repeats, as pieces of trim do.
    repeats: bool = field(repr=False)
    #: The smallest amount that is plausible.
    least: Amount = field(repr=False)
    #: The largest amount that is plausible.
    most: Amount = field(repr=False)
    #: The names of its choices with what they mean; empty where it is no choice.
    choices: Dict[str, str] = field(repr=False)
    #: What is taken where it is not recorded: a choice or a flag; None where nothing is.
    assumed: Optional[Union[str, bool]] = field(repr=False)
    pointer: int = field(repr=False)

    def path(self, item: int = 0) -> str:
        """How a survey names it: ``opening.width``, ``trim[0].distance``."""
        return f"{self.group}[{item}].{self.name}" if self.repeats else self.id

    def value_of(self, amount: Amount) -> Union[Amount, str, bool]:
        """An amount of it as people say it: a choice's name, a flag, or the amount itself."""
        if self.dimension == CHOICE:
            return tuple(self.choices)[amount.value]
        return bool(amount.value) if self.dimension == FLAG else amount


def _read_choices(pointer: int) -> Dict[str, str]:
    return {library.ingle_quantity_choice_at(pointer, i).decode():
            library.ingle_quantity_choice_label(pointer, i).decode()
            for i in range(library.ingle_quantity_choice_count(pointer))}


def _read_assumed(pointer: int, choices: Dict[str, str]) -> Optional[Union[str, bool]]:
    amount = prototypes.ingle_amount()
    if not library.ingle_quantity_assumed(pointer, ctypes.byref(amount)):
        return None
    return tuple(choices)[amount.value] if choices else bool(amount.value)


def _read_quantity(pointer: int) -> Quantity:
    least, most = prototypes.ingle_amount(), prototypes.ingle_amount()
    library.ingle_quantity_range(pointer, ctypes.byref(least), ctypes.byref(most))
    choices = _read_choices(pointer)
    return Quantity(id=library.ingle_quantity_id(pointer).decode(),
                    group=library.ingle_quantity_group(pointer).decode(),
                    name=library.ingle_quantity_name(pointer).decode(),
                    label=library.ingle_quantity_label(pointer).decode(),
                    how=library.ingle_quantity_how(pointer).decode(),
                    dimension=dimension_name(library.ingle_quantity_dimension(pointer)),
                    repeats=bool(library.ingle_quantity_repeats(pointer)),
                    least=Amount.of_struct(least), most=Amount.of_struct(most), choices=choices,
                    assumed=_read_assumed(pointer, choices), pointer=pointer)


_QUANTITIES = {pointer: _read_quantity(pointer) for pointer in
               map(library.ingle_quantity_at, range(library.ingle_quantity_count()))}

#: Every quantity, by its id.
quantities: Catalogue[Quantity] = Catalogue({each.id: each for each in _QUANTITIES.values()})

_REPEATING_GROUPS = {each.group for each in _QUANTITIES.values() if each.repeats}


def quantity_at(pointer: int) -> Quantity:
    """The quantity that the library gave."""
    return _QUANTITIES[pointer]


# ---- the survey -------------------------------------------------------------------------------

#: What can be recorded: text, an exact amount, a yes or no, or a number whose unit is told.
Recordable = Union[str, Amount, bool, int, Decimal]


def _written_number(value: Union[str, int, Decimal]) -> str:
    if isinstance(value, Decimal):
        return format(value, "f")
    if isinstance(value, (str, int)):
        return str(value)
    hint = "; Decimal(repr(number)) is what it prints as" if isinstance(value, float) else ""
    raise TypeError(f"a str, Amount, bool, int or Decimal is due, not {type(value).__name__}: "
                    f"amounts are exact{hint}")


def _as_amount(value: Union[str, Amount, int, Decimal], quantity: Quantity,
               unit: Optional[UnitLike], path: str) -> Amount:
    if isinstance(value, Amount):
        if value.dimension != quantity.dimension:
            raise error_of("dimension", at=path)
        return value
    text = _written_number(value)
    try:
        return Amount.parse(text, quantity.dimension, unit)
    except IngleError as error:
        error.at = path
        raise


class Survey:
    """The quantities recorded at one fireplace or stove. One thread at a time may use it.

    Quantities are named by their path: ``opening.width``, or ``trim[0].distance`` for one of the
    items of a group that repeats. A report keeps what it was made from: changing the survey later
    does not change it.
    """

    def __init__(self) -> None:
        self._owned = Owned(library.ingle_survey_new, library.ingle_survey_free, None)

    def set(self, path: str, value: Recordable, tolerance: Optional[Recordable] = None,
            unit: Optional[UnitLike] = None) -> Union[Amount, str, bool]:
        """Record a quantity.

        :param value: text (an amount with its unit, a choice's name, ``yes`` or ``no``), an exact
            ``Amount``, a bool, or an int or Decimal with `unit`
        :param tolerance: the half-width within which the measurement lies, in the same forms
        :param unit: the unit of a bare number
        :returns: what was recorded; an amount tells by ``rounded`` whether the text was not exact
        """
        self._prepare()
        if isinstance(value, str) and unit is None and (tolerance is None
                                                        or isinstance(tolerance, str)):
            rounded = self._record(path, value, tolerance)
        else:
            rounded = self._record_exactly(path, value, tolerance, unit)
        recorded = self.get(path)
        assert recorded is not None
        if rounded and isinstance(recorded, Amount):
            return Amount(recorded.value, recorded.dimension, recorded.scale, True)
        return recorded

    def _record(self, path: str, text: str, tolerance: Optional[str]) -> bool:
        status = library.ingle_survey_record(
            self._owned.pointer, encoded(path), encoded(text, path),
            None if tolerance is None else encoded(tolerance, path))
        return self._require(status, path, True) == ROUNDED

    def _record_exactly(self, path: str, value: Recordable, tolerance: Optional[Recordable],
                        unit: Optional[UnitLike]) -> bool:
        quantity, item = self._resolve(path)
        if isinstance(value, bool):
            if quantity.dimension != FLAG:
                raise error_of("dimension", at=path)
            amount = Amount(int(value), FLAG)
        else:
            amount = _as_amount(value, quantity, unit, path)
        half_width = None if tolerance is None else _as_amount(tolerance, quantity, unit, path)
        status = library.ingle_survey_set(self._owned.pointer, quantity.pointer, item,
                                          amount.value, half_width.value if half_width else 0)
        self._require(status, path)
        return amount.rounded or (half_width is not None and half_width.rounded)

    def get(self, path: str) -> Optional[Union[Amount, str, bool]]:
        """What is recorded: an amount, a choice's name or a flag; None if nothing is."""
        quantity, item = self._resolve(path)
        found = self._read(quantity, item)
        return None if found is None else quantity.value_of(found[0])

    def tolerance(self, path: str) -> Optional[Amount]:
        """The half-width within which a recorded measurement lies; None without one."""
        quantity, item = self._resolve(path)
        found = self._read(quantity, item)
        return Amount(found[1], quantity.dimension) if found is not None and found[1] else None

    def unset(self, path: str) -> None:
        """Take a quantity out again; nothing happens where it is not recorded."""
        quantity, item = self._resolve(path)
        self._prepare()
        status = library.ingle_survey_unset(self._owned.pointer, quantity.pointer, item)
        require(status, at=path)

    def clear(self) -> None:
        """Empty the survey."""
        self._prepare()
        library.ingle_survey_clear(self._owned.pointer)

    def open_group(self, group: str) -> None:
        """Record that a repeating group was looked at, though it may have no item."""
        self._prepare()
        require(library.ingle_survey_open_group(self._owned.pointer, encoded(group)), at=group)

    def add_item(self, group: str, label: Optional[str] = None) -> int:
        """Add an item to a repeating group, and give its index, from 0."""
        self._prepare()
        item = ctypes.c_size_t()
        status = library.ingle_survey_add_item(
            self._owned.pointer, encoded(group),
            None if label is None else encoded(label, group), ctypes.byref(item))
        require(status, at=group)
        return item.value

    def items(self, group: str) -> Tuple[Optional[str], ...]:
        """The labels of a repeating group's items, None for an item without."""
        name = encoded(group)
        count = library.ingle_survey_item_count(self._owned.pointer, name)
        return tuple(decoded(library.ingle_survey_item_label(self._owned.pointer, name, i))
                     for i in range(count))

    def __iter__(self) -> Iterator[str]:
        """The paths of all that is recorded, in the library's order."""
        return (quantity.path(item) for quantity, item, _, _ in self._records())

    def __len__(self) -> int:
        return sum(1 for _ in self._records())

    def __contains__(self, path: object) -> bool:
        return isinstance(path, str) and self.get(path) is not None

    def __repr__(self) -> str:
        return f"<survey of {len(self)} quantities>"

    def copy(self) -> Survey:
        """Another survey in which the same is recorded."""
        made = Survey()
        require(library.ingle_survey_copy(made._owned.pointer, self._owned.pointer))
        return made

    # ---- within the package -------------------------------------------------------------------

    def reading(self, reader: Any) -> Owned:
        """The library's object, kept unchanged for a reader as long as that lives."""
        self._owned.readers.add(reader)
        return self._owned

    def _prepare(self) -> None:
        # Reports refer to the survey they were made from: leave that to them, change a copy.
        if self._owned.readers:
            self._owned = self.copy()._owned

    def _resolve(self, path: str) -> Tuple[Quantity, int]:
        pointer, item = ctypes.c_void_p(), ctypes.c_size_t()
        self._require(library.ingle_survey_find(self._owned.pointer, encoded(path),
                                                ctypes.byref(pointer), ctypes.byref(item)), path)
        return quantity_at(pointer.value), item.value

    def _require(self, status: int, path: str, in_text: bool = False) -> int:
        if status >= 0:
            return status
        position = library.ingle_survey_error_position(self._owned.pointer) if in_text else None
        return require(status, library.ingle_survey_error_text(self._owned.pointer), path,
                       position)

    def _read(self, quantity: Quantity, item: int) -> Optional[Tuple[Amount, int]]:
        amount, tolerance = prototypes.ingle_amount(), ctypes.c_int64()
        found = library.ingle_survey_get(self._owned.pointer, quantity.pointer, item,
                                         ctypes.byref(amount), ctypes.byref(tolerance))
        return (Amount.of_struct(amount), tolerance.value) if found else None

    def _records(self) -> Iterator[Tuple[Quantity, int, Amount, int]]:
        counts = {group: len(self.items(group)) for group in _REPEATING_GROUPS}
        for quantity in quantities.values():
            for item in range(counts.get(quantity.group, 1)):
                found = self._read(quantity, item)
                if found is not None:
                    yield (quantity, item, *found)
