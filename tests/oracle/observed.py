# SPDX-License-Identifier: MIT
"""Rows that are told in other files than rules.py: what each asks, and how it is judged.

A row may ask for a state that is seen, or for an amount. Whether it applies may be unknown, where a
condition asks for something that is not recorded.
"""
from collections import namedtuple
from itertools import product
from math import ceil, floor

from rules import Expression, Finding, fixed

# What a requirement comes to where the publication prints nothing.
OUTSIDE = object()

# `marks` are the amounts of a measure, by its key, at which the requirement steps.
Told = namedtuple('Told', 'rule key relation applies measured required dimension marks')


def seen(rule, key, relation, state, applies, survey):
    """A row on a choice or flag."""
    return Told(rule, key, relation, applies, choice(survey, key), state, 'state', {})


def amount(rule, key, relation, applies, measured, required, dimension='length', marks=None):
    return Told(rule, key, relation, applies, measured, required, dimension, marks or {})


def choice(survey, key, assumed=None):
    value = survey.choices.get(key, assumed)
    return {True: 'yes', False: 'no'}.get(value, value) if isinstance(value, bool) else value


def same(value, *wanted):
    """Whether a value is one of those wanted; None where it is not recorded."""
    return None if value is None else value in wanted


def other(value, *barred):
    return None if value is None else value not in barred


def every(*conditions):
    """Whether all hold: one that does not settles it, else one that is unknown."""
    if False in conditions:
        return False
    return None if None in conditions else True


def nothing(row, standard):
    return Finding(standard, row.rule, '/survey/' + row.key, 'not-applicable', row.relation, None,
                   None, None, None, None, row.dimension)


def judge_state(row, finding):
    verdict = 'unmeasured'
    if row.measured is not None:
        met = (row.measured == row.required) == (row.relation == 'is')
        verdict = 'meets' if met else 'fails'
    return finding._replace(verdict=verdict, required=row.required, measured=row.measured)


def at(row, point):
    """Verdict and requirement at one point."""
    required = row.required.value(point)
    if required is OUTSIDE or required is None:
        return 'not-applicable', required
    required = ceil(required) if row.relation == 'at-least' else floor(required)
    measured = row.measured.value(point)
    met = {'at-least': measured >= required, 'at-most': measured <= required,
           'less-than': measured < required}[row.relation]
    return 'meets' if met else 'fails', required


def points(row, survey):
    """The corners of the box of tolerances, and the amounts at and next to which it steps."""
    keys = sorted(set((row.measured.keys if row.measured else ()) + row.required.keys))
    spread = []
    for key in keys:
        low, high = survey.box(key)
        near = {mark + off for mark in row.marks.get(key, ()) for off in (-1, 0, 1)}
        spread.append(sorted({low, high} | {value for value in near if low <= value <= high}))
    for values in product(*spread):
        yield dict(zip(keys, values))


def judge_amount(row, survey, finding):
    if row.required is None:
        return finding._replace(verdict='unmeasured', measured=row.measured
                                and row.measured.value(survey.point()))
    if row.measured is None:
        required = row.required.value(survey.point())
        if required is OUTSIDE:
            return finding._replace(verdict='unmeasured')
        if required is None:
            limited = any(row.required.value(point) is not None for point in points(row, survey))
            return finding._replace(verdict='unmeasured') if limited else finding
        rounded = ceil(required) if row.relation == 'at-least' else floor(required)
        return finding._replace(verdict='unmeasured', required=rounded)
    here, required = at(row, survey.point())
    if required is OUTSIDE:
        return finding._replace(verdict='unmeasured', measured=row.measured.value(survey.point()))
    found = {at(row, point)[0] for point in points(row, survey)} | {here}
    verdict = here
    if 'fails' in found:
        verdict = 'fails' if found == {'fails'} else 'too-close'
    measured = row.measured.value(survey.point())
    if required is None:
        return finding._replace(verdict=verdict, measured=measured)
    margin = measured - required if row.relation == 'at-least' else required - measured
    return finding._replace(verdict=verdict, required=required, measured=measured, margin=margin)


def judge(row, survey, standard):
    finding = nothing(row, standard)
    if row.applies is False:
        return finding
    if row.applies is None:
        return finding._replace(verdict='unmeasured')
    if row.dimension == 'state':
        return judge_state(row, finding)
    return judge_amount(row, survey, finding)


def least(survey, rule, key, limit, applies, dimension='length'):
    """A row that asks for a fixed least amount."""
    return amount(rule, key, 'at-least', applies, survey.one(key), fixed(limit), dimension)


def under(survey, rule, key, limit, applies):
    """A row that asks for less than an amount."""
    return amount(rule, key, 'less-than', applies, survey.one(key), fixed(limit))


def of(expressions, value):
    """An expression of others; None where one of them is not there."""
    if None in expressions:
        return None
    keys = sum((each.keys for each in expressions), ())
    return Expression(keys, lambda point: value(*(each.value(point) for each in expressions)))
