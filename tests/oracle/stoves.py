# SPDX-License-Identifier: MIT
"""The oracle for stoves and inserts, recomputed from the publications' numbers alone.

Written apart from the library, with exact fractions. Where each number is from is said beside the
rules, in stove_codes.py and stove_local.py.
"""
from collections import namedtuple
from fractions import Fraction
from itertools import product
from math import ceil, floor

import stove_codes
import stove_local
from amounts import RATIO_ONE
from rules import PI_HIGH, PI_LOW
from stove_facts import REPEATING, Facts, located

RULES = {**stove_codes.RULES, **stove_local.RULES}
STANDARDS = tuple(RULES)

Finding = namedtuple('Finding', 'rule subject verdict required measured missing usual',
                     defaults=(None,))


def rules_of(standard):
    return RULES[standard]


# ---- requirements --------------------------------------------------------------------------------

def on_line(table, value):
    """Between two heads on a straight line; nothing beyond the first and the last."""
    heads = sorted(table)
    for low, high in zip(heads, heads[1:]):
        if low <= value <= high:
            rise = Fraction(table[high] - table[low], high - low)
            return table[low] + rise * (value - low)
    return None


def required_at(rule, value):
    """What is required where the input is `value`; None where nothing is printed."""
    if rule.kind == 'share':
        return max(value * rule.value[0], rule.value[1])
    if rule.kind == 'shielded':
        return min(value, max(value * rule.value[0], rule.value[1]))
    return {'limit': lambda: rule.value, 'plus': lambda: value + rule.value,
            'most': lambda: min(value, rule.value), 'listing': lambda: value,
            'not-printed': lambda: None,
            'exact': lambda: rule.value.get(value),
            'within': lambda: rule.value[0] if value <= rule.value[1] else None,
            'line': lambda: on_line(rule.value, value)}[rule.kind]()


def whole(rule, exact):
    return ceil(exact) if rule.relation == 'at-least' else floor(exact)


def holds(rule, measured, required):
    return measured >= required if rule.relation == 'at-least' else measured <= required


# ---- judging -------------------------------------------------------------------------------------

# What is listed apart from the appliance.
APART = ('listing/chimney-clearance', 'listing/connector-clearance', 'listing/unbraced-height',
         'listing/flue-height', 'listing/flue-above-base')


# Recorded of nothing: what a listing would say that is not there.
UNSAID = 'listing/nothing'


def speaks(rule, facts, item):
    """Whether a listing says something of it: what carries no label has none; chimneys, pipes, gas
    appliances and wall assemblies are listed apart from it."""
    assembly = (rule.listing == 'wall/by-listing'
                and facts.known('wall/protection', item) == 'listed-assembly')
    return (rule.listing in APART or assembly or (rule.listing or '').startswith('listing/gas-')
            or facts.known('listing/label', None) in (None, 'listed'))


def effective(rule, facts, item):
    """The rule, or what the listing puts in its place where it says something."""
    if (rule.listing and rule.kind != 'listing' and speaks(rule, facts, item)
            and facts.known(rule.listing, item) is not None):
        return rule._replace(kind='listing', source=rule.listing)
    if rule.kind == 'listing':
        return rule._replace(source=rule.listing if speaks(rule, facts, item) else UNSAID)
    return rule


def usual_of(rule, facts):
    """What listings usually ask, where one decides that is not recorded; else None."""
    if rule.kind == 'about':
        body = facts.known(rule.source, None)
        told = None in (facts.known(key, None) for key in rule.value[2])
        return body + rule.value[0] if told and body is not None else None
    labelled = facts.known('listing/label', None) in (None, 'listed')
    return rule.value if rule.kind == 'usual' or labelled else None


def judge_about(rule, facts, item, key, subject):
    """By the figures of the listing and the body that they go about."""
    _, times, listed = rule.value
    measured, body = facts.known(key, item), facts.known(rule.source, None)
    if None in (facts.known(each, None) for each in listed):
        return Finding(rule.id, subject, 'by-listing', None, measured, listed,
                       usual_of(rule, facts))
    if body is None:
        return Finding(rule.id, subject, 'unmeasured', None, measured, rule.source)
    required = body + times * sum(facts.known(each, None) for each in listed)
    if measured is None:
        return Finding(rule.id, subject, 'unmeasured', required, None, key)
    boxes = [facts.box(each, item) for each in (key, rule.source, *listed)]
    good = {corner >= first + times * sum(others) for corner, first, *others in product(*boxes)}
    verdict = 'too-close' if len(good) == 2 else 'meets' if good == {True} else 'fails'
    return Finding(rule.id, subject, verdict, required, measured, None)


def marks(rule):
    if rule.kind in ('exact', 'line'):
        return [head + off for head in rule.value for off in (-1, 0, 1)]
    return []


def corner_verdicts(rule, facts, item, key):
    low, high = facts.box(key, item)
    inputs = [None]
    if rule.source:
        box = facts.box(rule.source, item)
        inputs = {*box, *(mark for mark in marks(rule) if box[0] <= mark <= box[1])}
    for measured, value in product((low, high), inputs):
        required = required_at(rule, value)
        yield required is None or holds(rule, measured, whole(rule, required))


def judge_amount(rule, facts, item, key, subject):
    rule = effective(rule, facts, item)
    if rule.kind.startswith('usual'):
        usual = usual_of(rule, facts)
        if usual is not None:
            return Finding(rule.id, subject, 'by-listing', None, facts.known(key, item),
                           rule.listing, usual)
        rule = rule._replace(kind='limit')
    value = facts.known(rule.source, item) if rule.source else None
    if rule.kind == 'listing' and not speaks(rule, facts, item):
        value = None
    measured = facts.known(key, item)
    if rule.source and value is None:
        verdict = 'by-listing' if rule.kind == 'listing' else 'unmeasured'
        return Finding(rule.id, subject, verdict, None, measured, rule.source)
    required = required_at(rule, value)
    if required is None:
        verdict = 'not-applicable' if rule.kind == 'within' else 'unmeasured'
        return Finding(rule.id, subject, verdict, None, measured, None)
    required = whole(rule, required)
    if measured is None:
        return Finding(rule.id, subject, 'unmeasured', required, None, key)
    good = {holds(rule, measured, required), *corner_verdicts(rule, facts, item, key)}
    verdict = 'too-close' if len(good) == 2 else 'meets' if good == {True} else 'fails'
    return Finding(rule.id, subject, verdict, required, measured, None)


def judge_flue(rule, facts, subject):
    """A flue's area against a round collar's. Two circles compare as their diameters."""
    bound = 'least' if rule.relation == 'at-least' else 'most'
    labelled = rule.listing and facts.known('listing/label', None) in (None, 'listed')
    stated = facts.known('listing/flue-area-' + bound, None) if labelled else None
    collar, across = facts.known(rule.source, None), facts.known('flue/diameter', None)
    area = facts.known('flue/net-area', None)
    measured = area if area is not None else across and PI_LOW * across ** 2 / 4
    if stated is None and collar is None:
        return Finding(rule.id, subject, 'unmeasured', None, measured, rule.source)
    required = stated if stated is not None else rule.value * PI_LOW * collar ** 2 / 4
    if measured is None:
        return Finding(rule.id, subject, 'unmeasured', required, None, 'flue')
    if stated is None and area is None:
        good = holds(rule, Fraction(across, collar) ** 2, rule.value)
    elif stated is None:
        sides = {holds(rule, area, rule.value * pi * collar ** 2 / 4) for pi in (PI_LOW, PI_HIGH)}
        assert len(sides) == 1
        good = sides.pop()
    else:
        good = holds(rule, measured, stated)
    return Finding(rule.id, subject, 'meets' if good else 'fails', required, measured, None)


def judge_least_area(rule, facts, subject):
    """A flue's area against a printed one; a round flue's is taken at its least."""
    across, measured = facts.known('flue/diameter', None), facts.known('flue/net-area', None)
    if measured is None and across is not None:
        measured = PI_LOW * across ** 2 / 4
    verdict = 'unmeasured' if measured is None else 'meets' if measured >= rule.value else 'fails'
    return Finding(rule.id, subject, verdict, rule.value, measured, None)


def judge_layers(rule, facts, subject):
    need = facts.known('listing/pad-r', None) if speaks(rule, facts, None) else None
    have = facts.r_value(rule.value or {})
    measured = None if have is None else floor(have * RATIO_ONE)
    if need is None:
        return Finding(rule.id, subject, 'by-listing', None, measured, rule.listing)
    if have is None:
        return Finding(rule.id, subject, 'unmeasured', need, None, 'floor/r-value')
    ends = {facts.r_value(rule.value or {}, end) * RATIO_ONE >= need for end in (-1, 0, 1)}
    verdict = 'too-close' if len(ends) == 2 else 'meets' if ends == {True} else 'fails'
    return Finding(rule.id, subject, verdict, need, measured, None)


def judge_sight(rule, facts, item, key, subject):
    word = facts.known(key, item)
    if word is None:
        return Finding(rule.id, subject, 'unmeasured', rule.value, None, key)
    good = (word == rule.value) == (rule.relation == 'is')
    return Finding(rule.id, subject, 'meets' if good else 'fails', rule.value, word, None)


def judge_applying(rule, facts, item, key, subject):
    if rule.kind == 'seen':
        return judge_sight(rule, facts, item, key, subject)
    if rule.kind == 'collar':
        return judge_flue(rule, facts, subject)
    if rule.id == 'flue-area-stove':
        return judge_least_area(rule, facts, subject)
    if rule.kind == 'about':
        return judge_about(rule, facts, item, key, subject)
    if key == 'floor/r-value':
        return judge_layers(rule, facts, subject)
    found = judge_amount(rule, facts, item, key, subject)
    return None if (rule.kind, found.verdict) == ('within', 'not-applicable') else found


def judge(rule, facts, item, key):
    """One finding, or None where the rule does not apply."""
    group = key.split('/')[0]
    nobody_looked = group in REPEATING and item is None
    subject = '/survey/' + (group if nobody_looked else located(key, item))
    unknown, perhaps = None, False
    for asked, test in rule.when:
        if nobody_looked and asked.startswith(group + '/'):
            continue
        answers = {bool(test(value)) for value in facts.within(asked, item)}
        if answers == {False}:
            return None
        unknown = unknown if answers else asked
        perhaps |= len(answers) == 2
    if unknown or nobody_looked:
        return Finding(rule.id, subject, 'unmeasured', None, None, unknown or group)
    found = judge_applying(rule, facts, item, key, subject)
    if perhaps and found and found.verdict == 'fails':
        return found._replace(verdict='too-close')
    return found


def items_of(facts, key):
    items = facts.lists.get(key.split('/')[0])
    return [None] if items is None else range(len(items))


def findings(document, standard):
    """The findings of one standard about stoves and inserts, each different one once."""
    facts, found = Facts(document), []
    for rule in rules_of(standard):
        for key in rule.keys:
            for item in items_of(facts, key):
                finding = judge(rule, facts, item, key)
                if finding is not None and finding not in found:
                    found.append(finding)
    return found


def rule_ids(standard):
    return {rule.id for rule in rules_of(standard)}
