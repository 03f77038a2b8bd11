# SPDX-License-Identifier: MIT
"""The standards the library holds, their rules as printed, readings, and local amendments."""

from __future__ import annotations

import ctypes
from dataclasses import dataclass, field
from typing import Any, Dict, Iterable, List, Mapping, NamedTuple, Optional, Tuple, Union

from . import prototypes
from .errors import Catalogue, IngleError, decoded, encoded, error_of, nearest, require, written
from .loading import Owned, library
from .measure import Amount, Unit, UnitLike, unit_at, unit_pointer
from .survey import Quantity, quantity_at


@dataclass(frozen=True, eq=False)
class Reading:
    """Something that a publication leaves open, so that it can be read in more than one way."""

    #: Unique and stable: ``hearth-steps``.
    id: str
    #: What is open, in words.
    label: str
    #: The ways to read it with what they mean; the first is followed unless another is chosen.
    options: Dict[str, str] = field(repr=False)
    pointer: int = field(repr=False)


class Followed(NamedTuple):
    """The way of reading that a rule belongs to."""

    #: The id of the reading.
    reading: str
    #: The id of its option.
    option: str


class Table(NamedTuple):
    """A printed table that a rule looks its requirement up in."""

    #: Its number as printed.
    name: str
    #: How a row is found for the first input: ``up-to``, ``from`` and so on.
    row_reading: str
    #: The same for a column and the second input; None where there is one column without key.
    column_reading: Optional[str]
    rows: Tuple[Amount, ...]
    columns: Tuple[Amount, ...]
    #: Row after row; None where no value is printed.
    cells: Tuple[Tuple[Optional[Amount], ...], ...]


@dataclass(frozen=True, eq=False, repr=False)
class Rule:
    """One row of a standard. Editions that print the same row share it."""

    #: The same for the same matter in every standard: ``hearth-front``.
    id: str
    #: What it is about, in words.
    label: str
    #: The section of the publication.
    section: str
    #: How its numbers are known: ``read``, ``cited`` and so on.
    basis: str
    #: How what is measured has to stand to what is required: ``at-least``.
    relation: str
    #: The quantities that it judges.
    quantities: Tuple[Quantity, ...]
    #: The quantities that the requirement is computed from; none where it is fixed.
    inputs: Tuple[Quantity, ...]
    #: The first edition that has this row; 0 if all known ones do.
    since: int
    #: The last edition that has this row; 0 if the newest known one does.
    until: int
    #: The name of the formula that computes what is required.
    formula: str
    #: What that formula does, in a sentence.
    formula_text: str
    #: Its numbers as printed, by the name under which an amendment sets them. What a state has to
    #: be is here too, and no amendment sets it: ``quantities[0].value_of()`` names it.
    numbers: Dict[str, Amount]
    #: How the text is read where it can be read in more than one way; None where it is plain.
    reading: Optional[str]
    #: The way of reading that it belongs to; None where it holds however the text is read.
    follows: Optional[Followed]
    #: When it applies.
    condition: str
    #: The quantity of the appliance's own listing that it gives way to; None if there is none.
    listing: Optional[Quantity]
    #: What is dangerous while it is not met.
    caution: str
    #: What puts it right, where no remedy is computed; None where one always is.
    mend: Optional[str]
    #: Who should look next while it is not met; None for nobody in particular.
    refer: Optional[str]
    #: Which inspection is called for while it is not met, and why; None for none.
    inspection: Optional[str]
    #: The table that it looks its requirement up in; None without one.
    table: Optional[Table]
    pointer: int

    @property
    def standards(self) -> Tuple[Standard, ...]:
        """The standards that have this row, in the library's order."""
        return tuple(each for each in _STANDARDS.values() if self in each.rules)

    def __repr__(self) -> str:
        of = ", ".join(each.id for each in self.standards)
        return f"<rule: {self.id} of {of}: {self.section}, {self.basis}>"


class Liner(NamedTuple):
    """One row of a standard's tables of flue liners."""

    #: The choice of the quantity ``flue.liner``.
    liner: str
    #: Its net area as printed.
    area: Amount
    #: The number of the table.
    table: str


@dataclass(frozen=True, eq=False)
class Standard:
    """One edition of one publication. There is one object for each."""

    #: Unique and stable: ``irc-2021``.
    id: str
    #: The title of the publication.
    title: str
    #: The year of the edition; 0 where there is no publication.
    edition: int
    #: Where it is used.
    place: str
    #: What a reader has to know of how its text was seen.
    note: str = field(repr=False)
    #: The unit of length that its numbers are printed in.
    unit: Unit = field(repr=False)
    #: Its rules, in the order of the publication.
    rules: Tuple[Rule, ...] = field(repr=False)
    #: The flue liners that it prints a net area for.
    liners: Tuple[Liner, ...] = field(repr=False)
    pointer: int = field(repr=False)


StandardLike = Union[str, Standard]


# ---- reading them from the library ------------------------------------------------------------


def _read_reading(pointer: int) -> Reading:
    options = {library.ingle_reading_option_at(pointer, i).decode():
               library.ingle_reading_option_label(pointer, i).decode()
               for i in range(library.ingle_reading_option_count(pointer))}
    return Reading(library.ingle_reading_id(pointer).decode(),
                   library.ingle_reading_label(pointer).decode(), options, pointer)


_READINGS = {pointer: _read_reading(pointer) for pointer in
             map(library.ingle_reading_at, range(library.ingle_reading_count()))}

#: Everything that can be read in more than one way, by its id.
readings: Catalogue[Reading] = Catalogue({each.id: each for each in _READINGS.values()})


def _read_followed(pointer: int) -> Optional[Followed]:
    option = ctypes.c_size_t()
    reading = _READINGS.get(library.ingle_rule_follows(pointer, ctypes.byref(option)))
    return None if reading is None else Followed(reading.id, tuple(reading.options)[option.value])


def _read_number(pointer: int, index: int) -> Amount:
    amount = prototypes.ingle_amount()
    require(library.ingle_rule_number_at(pointer, index, ctypes.byref(amount)))
    return Amount.of_struct(amount)


def _read_numbers(pointer: int) -> Dict[str, Amount]:
    return {library.ingle_rule_number_name(pointer, i).decode(): _read_number(pointer, i)
            for i in range(library.ingle_rule_number_count(pointer))}


def _read_table_amount(read, pointer: int, *place: int) -> Optional[Amount]:
    amount = prototypes.ingle_amount()
    if read(pointer, *place, ctypes.byref(amount)) < 0:
        return None
    return Amount.of_struct(amount)


def _read_keys(read, pointer: int, count: int) -> Tuple[Amount, ...]:
    keys = (_read_table_amount(read, pointer, i) for i in range(count))
    return tuple(key for key in keys if key is not None)


def _read_table(pointer: int) -> Optional[Table]:
    name = decoded(library.ingle_rule_table(pointer))
    if name is None:
        return None
    rows = library.ingle_rule_table_row_count(pointer)
    columns = library.ingle_rule_table_column_count(pointer)
    return Table(name, library.ingle_rule_table_row_reading(pointer).decode(),
                 decoded(library.ingle_rule_table_column_reading(pointer)),
                 _read_keys(library.ingle_rule_table_row_at, pointer, rows),
                 _read_keys(library.ingle_rule_table_column_at, pointer, columns),
                 tuple(tuple(_read_table_amount(library.ingle_rule_table_cell_at, pointer, row,
                                                column) for column in range(columns))
                       for row in range(rows)))


def _read_rule(pointer: int) -> Rule:
    judged = tuple(quantity_at(library.ingle_rule_quantity_at(pointer, i))
                   for i in range(library.ingle_rule_quantity_count(pointer)))
    inputs = tuple(quantity_at(library.ingle_rule_input_at(pointer, i))
                   for i in range(library.ingle_rule_input_count(pointer)))
    listing = library.ingle_rule_listing(pointer)
    return Rule(id=library.ingle_rule_id(pointer).decode(),
                label=library.ingle_rule_label(pointer).decode(),
                section=library.ingle_rule_section(pointer).decode(),
                basis=library.ingle_basis_name(library.ingle_rule_basis(pointer)).decode(),
                relation=library.ingle_relation_name(library.ingle_rule_relation(pointer)).decode(),
                quantities=judged, inputs=inputs,
                since=library.ingle_rule_since(pointer), until=library.ingle_rule_until(pointer),
                formula=library.ingle_rule_formula(pointer).decode(),
                formula_text=library.ingle_rule_formula_text(pointer).decode(),
                numbers=_read_numbers(pointer),
                reading=decoded(library.ingle_rule_reading(pointer)),
                follows=_read_followed(pointer),
                condition=written(library.ingle_rule_condition_text, pointer),
                listing=None if listing is None else quantity_at(listing),
                caution=library.ingle_rule_caution(pointer).decode(),
                mend=decoded(library.ingle_rule_mend(pointer)),
                refer=decoded(library.ingle_rule_refer(pointer)),
                inspection=decoded(library.ingle_rule_inspection(pointer)),
                table=_read_table(pointer), pointer=pointer)


_RULES: Dict[int, Rule] = {}


def rule_at(pointer: int) -> Rule:
    """The rule that the library gave."""
    rule = _RULES.get(pointer)
    if rule is None:
        rule = _RULES.setdefault(pointer, _read_rule(pointer))
    return rule


def _read_liner(pointer: int, index: int) -> Liner:
    liner, area, table = ctypes.c_char_p(), prototypes.ingle_amount(), ctypes.c_char_p()
    require(library.ingle_standard_liner_at(pointer, index, ctypes.byref(liner),
                                            ctypes.byref(area), ctypes.byref(table)))
    return Liner(decoded(liner.value) or "", Amount.of_struct(area), decoded(table.value) or "")


def _read_standard(pointer: int) -> Standard:
    rows = tuple(rule_at(library.ingle_standard_rule_at(pointer, i))
                 for i in range(library.ingle_standard_rule_count(pointer)))
    liners = tuple(_read_liner(pointer, i)
                   for i in range(library.ingle_standard_liner_count(pointer)))
    return Standard(id=library.ingle_standard_id(pointer).decode(),
                    title=library.ingle_standard_title(pointer).decode(),
                    edition=library.ingle_standard_edition(pointer),
                    place=library.ingle_standard_place(pointer).decode(),
                    note=library.ingle_standard_note(pointer).decode(),
                    unit=unit_at(library.ingle_standard_unit(pointer)), rules=rows, liners=liners,
                    pointer=pointer)


_STANDARDS = {pointer: _read_standard(pointer) for pointer in
              map(library.ingle_standard_at, range(library.ingle_standard_count()))}

#: Every standard, by its id.
standards: Catalogue[Standard] = Catalogue({each.id: each for each in _STANDARDS.values()})


def _rules_by_id() -> Dict[str, Tuple[Rule, ...]]:
    rows: Dict[str, List[Rule]] = {}
    for rule in _RULES.values():
        rows.setdefault(rule.id, []).append(rule)
    return {id_: tuple(same) for id_, same in rows.items()}


#: Every row of every standard, by rule id: what one id stands for in all of them.
rules: Catalogue[Tuple[Rule, ...]] = Catalogue(_rules_by_id())


def standard_at(pointer: int) -> Standard:
    """The standard that the library gave."""
    return _STANDARDS[pointer]


def _unknown(code: str, name: str, what: str, known: Iterable[str]) -> IngleError:
    near = nearest(name, known)
    hint = f" Did you mean {near}?" if near else ""
    return error_of(code, f"{name}: {what}.{hint}")


def standard_of(standard: StandardLike) -> Standard:
    """A standard by its id; IngleError if there is none."""
    if isinstance(standard, Standard):
        return standard
    found = standards.get(standard)
    if found is None:
        raise _unknown("unknown-standard", standard, "no standard has this id", standards)
    return found


def rule_name(rule: str, adopted: Iterable[Standard]) -> bytes:
    """A rule of some standards as calls of the library take it; IngleError if none has it."""
    known = {each.id: None for standard in adopted for each in standard.rules}
    name = encoded(rule)
    if rule not in known:
        raise _unknown("unknown-rule", rule, "none of the standards has a rule with this id", known)
    return name


def standard_array(adopted: Iterable[StandardLike]) -> ctypes.Array[ctypes.c_void_p]:
    """Standards as calls of the library take them; one alone need not be in a list."""
    each = [adopted] if isinstance(adopted, (str, Standard)) else list(adopted)
    return (ctypes.c_void_p * len(each))(*(standard_of(one).pointer for one in each))


def reading_array(chosen: Mapping[str, str], otherwise: int) -> ctypes.Array[ctypes.c_int32]:
    """The number of the option of every reading, or `otherwise` where none is chosen."""
    options = {each.id: otherwise for each in readings.values()}
    for id_, option in chosen.items():
        known = readings.get(id_)
        if known is None:
            raise _unknown("unknown-name", id_, "no reading has this id", readings)
        if option not in known.options:
            raise _unknown("unknown-choice", option, f"{id_} has no such option", known.options)
        options[id_] = tuple(known.options).index(option)
    return (ctypes.c_int32 * len(options))(*options.values())


#: How numbers can be known, the best first.
BASES = ("read", "cited", "from-memory", "common-practice")


def basis_number(basis: Optional[str]) -> int:
    """The library's number of a basis; 0 for None, which leaves out nothing."""
    if basis is None:
        return 0
    number = int(library.ingle_basis_find(basis.encode()))
    if number == 0:
        raise _unknown("unknown-choice", basis, "numbers are known in no such way",
                       BASES)
    return number


# ---- amendments -------------------------------------------------------------------------------


class Amendments:
    """A local authority's changes to the numbers of rules. One thread at a time may change it.

    A report keeps what it was made from: changing the amendments later does not change it.
    """

    def __init__(self) -> None:
        self._owned = Owned(library.ingle_amendments_new, library.ingle_amendments_free, None)
        self._made: List[Tuple[Any, ...]] = []

    def set(self, standard: StandardLike, rule: str, number: str, text: str, *, citation: str,
            unit: Optional[UnitLike] = None) -> None:
        """Set a number of all rows of a standard that share a rule id.

        :param rule: a rule id: ``hearth-front``
        :param number: the name of one of the rule's numbers, as ``Rule.numbers`` has it
        :param text: the amount, with its unit unless `unit` tells it
        :param citation: where the authority says so, not blank; it appears in the finding
        """
        place = f"{rule}.{number}"
        amount = encoded(text, place)
        change = (standard_of(standard).pointer, encoded(rule), encoded(number), amount,
                  len(amount), unit_pointer(unit), encoded(citation, place))
        self._prepare()
        self._set(change, place)
        self._made.append(change)

    def clear(self) -> None:
        """Take all of them back."""
        self._made.clear()
        self._prepare()
        library.ingle_amendments_clear(self._owned.pointer)

    def reading(self, reader: Any) -> Owned:
        """The library's object, kept unchanged for a reader as long as that lives."""
        self._owned.readers.add(reader)
        return self._owned

    def _prepare(self) -> None:
        # Reports refer to the amendments they were made from: leave those to them.
        if self._owned.readers:
            self._owned = Owned(library.ingle_amendments_new, library.ingle_amendments_free, None)
            for change in self._made:
                self._set(change, "")

    def _set(self, change: Tuple[Any, ...], place: str) -> None:
        status = library.ingle_amendments_set_text(self._owned.pointer, *change)
        if status < 0:
            require(status, library.ingle_amendments_error_text(self._owned.pointer), place,
                    library.ingle_amendments_error_position(self._owned.pointer))
