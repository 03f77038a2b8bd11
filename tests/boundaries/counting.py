# SPDX-License-Identifier: MIT
"""Counts what the probes have tried of each number, and names what they have not.

What is counted is what was written into a document, not what a probe says of itself.
"""
import limits
import written

NEIGHBOURS = {-1, 0, 1}


class Numbers:
    """For each number of a row, what was tried round the limits that cover it."""

    def __init__(self, rule):
        self.tried = {name: [] for name in rule["numbers"]}

    def add(self, probe, tried):
        """`tried` are (off the limit, unit) for amounts, the values themselves for what is seen."""
        for name in probe.numbers:
            self.tried[name].append((probe, tried))

    def lacking(self, choices_of, dimension_of):
        """Each number without a limit that was tried at all there is to try, and why."""
        for name, probes in self.tried.items():
            reasons = [self.fault(probe, tried, choices_of, dimension_of)
                       for probe, tried in probes]
            if not reasons:
                yield name, "it has no probe"
            elif None not in reasons:
                yield name, reasons[0]

    @staticmethod
    def fault(probe, tried, choices_of, dimension_of):
        """What was left out round one limit; None if nothing was."""
        if isinstance(probe, limits.Sight):
            left = set(probe.expected) - tried | set(choices_of(probe.varied)) - set(probe.expected)
        else:
            dimension = dimension_of(probe.varied)
            units = (written.units_of(dimension) if dimension in written.WAYS else set()) or {None}
            left = {(off, unit) for off in NEIGHBOURS for unit in units} - tried
        return "%s was not tried at %s" % (probe.varied, sorted(left, key=str)) if left else None


# ---- tables --------------------------------------------------------------------------------------

def changing_keys(keys, lines):
    """The keys at which what is read in a table changes, from its lines of cells."""
    nothing = [None] * len(lines[0])
    for index, key in enumerate(keys.keys):
        if keys.reading in ("up-to", "below"):
            beside = lines[index + 1] if index + 1 < len(lines) else nothing
        elif keys.reading == "exact":
            beside = nothing
        else:
            beside = lines[index - 1] if index else nothing
        if isinstance(key, int) and (keys.reading == "interpolate" or lines[index] != beside):
            yield key


def untried_of_table(rule, table, tried):
    """What of a table no probe tried; `tried` has the amounts of each quantity varied."""
    judged, first = rule["judges"][0], rule["from"][0]
    second = rule["from"][1] if len(rule["from"]) > 1 else None
    cells = {cell for line in table.cells for cell in line if cell}
    columns = [list(column) for column in zip(*table.cells)]
    due = {(first, key) for key in changing_keys(table.rows, [list(line) for line in table.cells])}
    if rule["formula"] == "table-cell":
        due |= {(judged, cell) for cell in cells}
        due |= {(second, key) for key in changing_keys(table.columns, columns)} if second else set()
    else:
        due |= {(second, cell) for cell in cells}
        due |= {(judged, head) for head, column in zip(table.columns.keys, columns) if any(column)}
    return due - tried
