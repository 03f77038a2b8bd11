# SPDX-License-Identifier: MIT
"""How rules of other countries than the United States are written, with exact fractions: their
numbers stand in canada_rules.py and europe_rules.py."""
from collections import namedtuple
from fractions import Fraction

import amounts

MM, M = amounts.NM_PER_MM, 1000 * amounts.NM_PER_MM
MM2, M2 = MM * MM, M * M

OUTSIDE = 'nothing is printed'
OR_UNKNOWN, IF_KNOWN = ' or unknown', ' if known'  # what a comparison comes to of what is not known
BY_LISTING = 'the listing decides'
# The same, where it is known what listings usually ask.
Usual = namedtuple('Usual', 'amount')

# `when` are (key, comparison, value); `required` is a function of a reading of the survey, whose
# result is an amount, a state, None for no limit, OUTSIDE or BY_LISTING; `marks` are (key, amount)
# at which it steps.
Rule = namedtuple('Rule', 'id key relation required when marks role option',
                  defaults=((), (), None, None))
# The appliance's own listing comes before any rule on these matters: where its figure is recorded.
LISTINGS = {
    **dict.fromkeys(('insert-hearth-front', 'floor-protection-front', 'factory-hearth-front',
                     'floor-protection-before-body'), 'listing/hearth-front'),
    **dict.fromkeys(('insert-body-side', 'floor-protection-side', 'factory-hearth-side',
                     'floor-protection-beside-body'), 'listing/hearth-side'),
    'floor-protection-behind-body': 'listing/hearth-back',
    **dict.fromkeys(('stove-clearance', 'stove-clearance-reduced'), 'wall/by-listing'),
    'insert-smoke-chamber': 'listing/smoke-chamber-wall',
}


# ---- how rules are written -----------------------------------------------------------------------

def limit(amount):
    return lambda get: amount


def at_least(rule, key, amount, *when, **more):
    return Rule(rule, key, 'at-least', limit(amount), when, **more)


def usual(rule, key, amount, *when):
    """The listing decides; where it is not recorded, this is what listings usually ask."""
    return Rule(rule, key, 'at-least', limit(Usual(amount)), when)


def usual_if_labelled(rule, key, amount, *when):
    """The same of what has a label; of what has none it is what is required."""
    def required(get):
        label = get.facts.seen.get('listing/label', 'listed')
        return Usual(amount) if label == 'listed' else amount
    return Rule(rule, key, 'at-least', required, when, ((key, amount),))


def at_most(rule, key, amount, *when, **more):
    return Rule(rule, key, 'at-most', limit(amount), when, **more)


def state(rule, key, relation, wanted, *when, **more):
    return Rule(rule, key, relation, limit(wanted), when, **more)


def share(rule, key, source, fraction, *when, relation='at-least'):
    return Rule(rule, key, relation, lambda get: get(source) * Fraction(fraction), when)


def within(rule, key, amount, source, reach, *when):
    return Rule(rule, key, 'at-least', lambda get: amount if get(source) <= reach else None, when,
                ((source, reach),))


def in_scope(rule, key, most, *when):
    """What a section is about: of more it says nothing."""
    return Rule(rule, key, 'at-most', lambda get: most if get(key) <= most else OUTSIDE, when,
                ((key, most),))


def kind(word):
    return ('appliance/kind', 'is', word)


def layers(word):
    return ('wall/shield-layers', 'is', word)


def kinds(*words):
    return ('appliance/kind', 'in', words)


OPEN, STOVE, INSERT = kind('masonry-fireplace'), kind('stove'), kind('insert')
SCREEN = ('wall/shield-layers', 'is not', 'none')
NO_GAS = ('appliance/fuel', 'is not' + OR_UNKNOWN, 'gas')
OUTLET = ('gas/vent', 'is' + OR_UNKNOWN, 'chimney')  # no sealed vent, nor none at all
CLOSED = (kinds('stove', 'insert', 'pellet-stove'), NO_GAS)
ANY_FIRE = (kinds('masonry-fireplace', 'stove', 'insert', 'pellet-stove'), NO_GAS)
CHIMNEY = (('appliance/kind', 'is not', 'factory-built-fireplace'),
           ('chimney/construction', 'is', 'masonry'))  # of masonry, whatever stands on it
ROUND, SIDED = ('flue/shape', 'is', 'round'), ('flue/shape', 'is not', 'round')
