# SPDX-License-Identifier: MIT
"""Where the limits of what is looked up in a printed table lie.

The table is the one that the catalogue prints; how it is read between its keys is done here anew.
Keys and cells are base units, or the names of choices; a cell without value is None.
"""
from fractions import Fraction
from typing import NamedTuple

import limits
import written

OUTSIDE = limits.OUTSIDE


class Keys(NamedTuple):
    reading: str
    keys: tuple


class Table(NamedTuple):
    rows: Keys
    columns: Keys  # None where the table has one column without a head
    cells: tuple


def amount_of(shown):
    """The base units of a key or cell, or the name of a choice; None where nothing is printed."""
    if shown is None:
        return None
    if "unit" in shown:
        exact = Fraction(str(shown["value"])) * written.SIZES[shown["unit"]]
        if exact.denominator != 1:
            raise AssertionError("no whole number of base units: %r" % shown)
        return int(exact)
    text = shown["text"]
    return written.read_number(text) if text[0].isdigit() else text


def table_of(rule):
    """The table of a rule of the catalogue, or None."""
    shown = rule.get("table")
    if shown is None:
        return None
    columns = None
    if "columns" in shown:
        columns = Keys(shown["column_reading"], tuple(amount_of(key) for key in shown["columns"]))
    rows = Keys(shown.get("row_reading"), tuple(amount_of(key) for key in shown["rows"]))
    return Table(rows, columns, tuple(tuple(amount_of(cell) for cell in row)
                                      for row in shown["cells"]))


# ---- reading between the keys --------------------------------------------------------------------

def place_of(keys, amount):
    """Which key an amount belongs to; None where the table ends before it."""
    if keys is None:
        return 0
    if keys.reading == "exact":
        return keys.keys.index(amount) if amount in keys.keys else None
    for index, key in enumerate(keys.keys):
        if (keys.reading == "up-to" and amount <= key) or (keys.reading == "below"
                                                           and amount < key):
            return index
    if keys.reading in ("up-to", "below"):
        return None
    reached = [index for index, key in enumerate(keys.keys) if key <= amount]
    return reached[-1] if reached else None


def between(row, first, place, column):
    """The value on the straight line between two rows, to the strict side; None beyond the last."""
    keys = row.table.rows.keys
    here = row.table.cells[place][column]
    if first == keys[place] or here is None:
        return here
    if place + 1 == len(keys) or row.table.cells[place + 1][column] is None:
        return None
    rise = row.table.cells[place + 1][column] - here
    exact = here + Fraction(rise * (first - keys[place]), keys[place + 1] - keys[place])
    down = exact.numerator // exact.denominator
    return down if row.relation == "at-most" or down == exact else down + 1


def cell_for(row, first, second):
    place, column = place_of(row.table.rows, first), place_of(row.table.columns, second)
    if place is None or column is None:
        return None
    if row.table.rows.reading == "interpolate":
        return between(row, first, place, column)
    return row.table.cells[place][column]


def column_for(row, first, second):
    """The head of the first column whose cell is the second amount or more."""
    place = place_of(row.table.rows, first)
    if place is None:
        return None
    return next((head for head, cell in zip(row.table.columns.keys, row.table.cells[place])
                 if cell is not None and cell >= second), None)


# ---- probes --------------------------------------------------------------------------------------

def inside(keys, index):
    """An amount that belongs to a key."""
    return keys.keys[index] - 1 if keys.reading == "below" else keys.keys[index]


def starts_of(keys):
    """An amount that belongs to each key, and where values lie on a line, some between them."""
    starts = [inside(keys, index) for index in range(len(keys.keys))]
    if keys.reading == "interpolate":
        starts += [low + (high - low) // 3 for low, high in zip(keys.keys, keys.keys[1:])]
    return starts


def judged_at(row, judged, required):
    return OUTSIDE if required is None else limits.verdict(row, judged, required)


def along(row, varied, fixed, at, required):
    """A probe that varies an input round an amount, with a judged amount that tells the sides."""
    asked = [required(at + off) for off in (-1, 0, 1)]
    for judged in sorted({value for value in asked if value is not None}):
        expected = tuple(judged_at(row, judged, value) for value in asked)
        if len(set(expected)) > 1:
            return limits.Probe((), {**fixed, row.judged: judged}, varied, at, expected)
    return None


def is_amount(key):
    return isinstance(key, int)


def edges(row, first, second, required, seconds):
    """Probes at every row key, each with the first of the second inputs that tells the sides."""
    for key in row.table.rows.keys:
        if not is_amount(key):
            continue
        for other in seconds:
            fixed = {} if second is None else {second: other}
            probe = along(row, first, fixed, key, lambda amount: required(row, amount, other))
            if probe is not None:
                yield probe
                break


def table_cell(row):
    first = row.sources[0]
    second = row.sources[1] if len(row.sources) > 1 else None
    rows, columns = row.table.rows, row.table.columns
    places = [inside(columns, index) for index in range(len(columns.keys))] if second else [None]
    starts = starts_of(rows)
    for start in starts:
        for place in places:
            value = cell_for(row, start, place)
            if value is not None and value > 0:
                fixed = {first: start} if second is None else {first: start, second: place}
                yield limits.around_judged(row, (), fixed, value)
    yield from edges(row, first, second, cell_for, places)
    for key in columns.keys if second else ():
        if is_amount(key):
            found = (along(row, second, {first: start}, key,
                           lambda amount: cell_for(row, start, amount)) for start in starts)
            yield from [probe for probe in found if probe is not None][:1]


def table_column(row):
    first, second = row.sources
    rows = row.table.rows
    for index, cells in enumerate(row.table.cells):
        start = inside(rows, index)
        for head, cell in zip(row.table.columns.keys, cells):
            if cell is None:
                continue
            yield limits.around_judged(row, (), {first: start, second: cell}, head)
            probe = along(row, second, {first: start}, cell,
                          lambda amount: column_for(row, start, amount))
            if probe is not None:
                yield probe
    seconds = [cell + 1 for cells in row.table.cells for cell in cells if cell is not None]
    yield from edges(row, first, second, column_for, seconds + [1])


FORMULAS = {"table-cell": table_cell, "table-column": table_column}
