# SPDX-License-Identifier: MIT
"""When a rule applies: the catalogue's sentence read into its parts."""
import re
from typing import NamedTuple

import written

# For each test of an amount: how far off the limit the nearest amount is that passes it.
AMOUNT_TESTS = {"at least": (0, lambda amount, limit: amount >= limit),
                "more than": (1, lambda amount, limit: amount > limit),
                "at most": (0, lambda amount, limit: amount <= limit),
                "less than": (-1, lambda amount, limit: amount < limit)}
UNKNOWN = {" or unknown": True, " if known": False}  # what a part comes to of what is not known
CONDITION = re.compile(r"([\w.-]+) is (?:(at least|more than|at most|less than) (.+?)"
                       r"|(not )?([\w.-]+(?: or [\w.-]+)*?))( or unknown| if known)?")


class Part(NamedTuple):
    """`test` is one of AMOUNT_TESTS and `value` base units; without it `value` are words.

    `unknown` is what the part comes to where the quantity is not known; None where it is asked for.
    """
    quantity: str
    test: str
    negated: bool
    value: object
    unknown: bool

    def admits(self, word):
        """Whether a choice or flag, `yes` or `no`, may be what is seen."""
        return (word in self.value) != self.negated


def parts(rule, quantities):
    """The parts of a rule's condition, all of which have to hold."""
    for text in rule["when"].split(" and ") if rule["when"] else []:
        match = CONDITION.fullmatch(text)
        if not match:
            raise AssertionError("%s: cannot read the condition %r" % (rule["rule"], text))
        quantity, test, amount, negated, words, otherwise = match.groups()
        unknown = UNKNOWN.get(otherwise)
        if test:
            value = written.read_number(amount, quantities[quantity]["dimension"])
            yield Part(quantity, test, False, value, unknown)
        else:
            yield Part(quantity, None, bool(negated), tuple(words.split(" or ")), unknown)
