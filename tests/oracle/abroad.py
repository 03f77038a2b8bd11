# SPDX-License-Identifier: MIT
"""The oracle for other countries than the United States: judges a survey by the rules of
canada_rules.py and europe_rules.py, apart from the library and with exact fractions."""
from collections import namedtuple
from itertools import product
from math import ceil, floor

import amounts
import canada_rules
import europe_rules
import rules
from abroad_rules import BY_LISTING, IF_KNOWN, LISTINGS, OR_UNKNOWN, OUTSIDE, Usual

STANDARDS = {**canada_rules.STANDARDS, **europe_rules.STANDARDS}

DIMENSIONS = {key: dimension for dimension, keys in {
    'length': '''opening/width opening/height opening/total-length flue/diameter flue/width
        flue/depth flue/shorter-side flue/longer-side flue/height flue/liner-thickness
        flue/liner-gap firebox/depth firebox/lining-thickness firebox/floor-lining-thickness
        firebox/wall-thickness firebox/surround-thickness firebox/leaves-thickness
        smoke-chamber/wall-thickness hearth/front hearth/facing hearth/from-facing hearth/left
        hearth/right hearth/thickness hearth/extension-thickness hearth/edge-thickness
        hearth/overall-depth hearth/firebox-raise hearth/timber-below hearth/timber-air-space
        hearth/plan-width hearth/plan-depth hearth/clear-front hearth/clear-left hearth/clear-right
        lintel/left lintel/right lintel/longer-leg lintel/shorter-leg lintel/angle-thickness
        trim/distance trim/projection chimney/height-above-roof chimney/wall-thickness
        chimney/flue-spacing chimney/clearance chimney/liner-below-inlet nearby/distance
        nearby/top-above nearby/rise cap/projection cap/drip cap/liner-above window/distance
        window/outlet-above neighbour/distance neighbour/outlet-above outlet/to-ridge
        outlet/above-ridge outlet/from-roof outlet/off-roof outlet/above-roof outlet/above-parapet
        separation/from-flue separation/fixings separation/timber separation/others
        separation/flue-pipe separation/smoke-chamber separation/metal-at-face separation/finish
        radiation/distance warm-air/distance warm-air/projection air/diameter
        fireplace/back-clearance fireplace/side-clearance chimney/parging floor/door-front
        floor/door-left floor/door-right floor/left floor/right floor/back stove/space-before-door
        wall/unprotected wall/clearance wall/air-space vent/aperture outlet/stack-width
        separation/pipe-diameter co-alarm/from-wall co-alarm/below-ceiling co-alarm/distance
        footing/free-projection floor/front separation/joist-masonry separation/cleanout
        smoke-chamber/exposed-back hearth/opening-above-floor hearth/unit-thickness
        hearth/sheet-metal wall/shield-metal wall/bottom-gap wall/shield-beside wall/shield-above
        wall/by-listing listing/hearth-front listing/hearth-side listing/hearth-back
        listing/smoke-chamber-wall insert/hearth-front insert/projection insert/body-left
        insert/body-right firebox/above-floor firebox/unit-thickness hearth/clear-back
        gas/support-height gas/back-clearance gas/side-clearance gas/top-clearance gas/hearth-front
        gas/hearth-left gas/hearth-right cap/terminal-length cap/terminal-built-in neighbour/clear
        separation/pipe-to-shield separation/pipe-shield-overlap separation/pipe-shield-gap
        chimney/firebrick-thickness footing/thickness footing/wall-height flue/element-height
        flue/above-floor-protector insert/flue-clearance wall/shield-to-appliance
        wall/shield-above-appliance wall/shield-thickness recess/side-thickness
        recess/back-thickness recess/base-thickness recess/top-thickness
        adjacent-wall/hearth-distance adjacent-wall/appliance-distance adjacent-wall/thickness
        adjacent-wall/above-appliance adjacent-wall/above-hearth hood/thickness''',
    'area': '''opening/area opening/total-area flue/net-area throat/area vent/area air/area
        listing/vent-area''',
    'ratio': 'air/supply firebox/unit-net-volume',
    'angle': 'flue/slope smoke-chamber/slope house/roof-pitch',
    'count': 'flue/bends',
    'power': 'appliance/output gas/input'}.items() for key in keys.split()}
ASSUMED = {
    'opening/exposure': 'front', 'hearth/in-recess': True, 'hearth/on-combustible-floor': False,
    'throat/present': True, 'house/easily-ignited-roof': False, 'house/flue-in-party-wall': False,
    'flue/draught-stabiliser': False, 'outlet/parapet': False,
    'outlet/anti-downdraught-cap': False, 'radiation/shield': False, 'warm-air/outlets': False,
    'separation/metal-through-face': False, 'lintel/steel-angle': False, 'chimney/flues': 'single',
    'chimney/place': 'interior', 'chimney/liner': 'clay', 'trim/combustible': True,
    'wall/surface': 'wall',
    'separation/joists-bear': False,
    'chimney/firebrick-wythe': False, 'flue/listed-with-oil': False, 'firebox/air-chamber': False,
    'fireplace/in-exterior-wall': False, 'lintel/steel': True, 'smoke-chamber/back-exposed': False,
    'insert/in-factory-built': False, 'wall/protection': 'none', 'stove/type': 'radiant',
    'throat/can-be-measured': True, 'hearth/back-to-wall': False, 'stove/smoke-exempt': False,
    'listing/small-pellet-flue': False, 'gas/flame-raised': False, 'gas/back-boiler': False,
    'gas/shielded': False, 'gas/low-clearance-rate': False, 'house/combustible-floor': True,
    'cap/terminal': False, 'separation/pipe-insulated': False, 'separation/pipe-shield': False,
    'hearth/left-to-wall': False, 'hearth/right-to-wall': False, 'chimney/rubble-stone': False,
    'chimney/heat-class': 'residential', 'air/supply-shared': False,
    'wall/shield-fire-rated': False, 'recess/construction': 'solid', 'hood/metal': False,
    'gas/appliance': 'none', 'wall/shield-face': 'none', 'wall/shield-layers': 'none',
}
SHIELDS = ('wall/protection', 'wall/shield-face', 'wall/shield-layers')
Finding = namedtuple('Finding', 'rule subject relation verdict required measured margin dimension '
                     'usual', defaults=(None,))


class Missing(Exception):
    """Something is not recorded."""


# ---- the survey ----------------------------------------------------------------------------------

class Facts:
    """What a document records: amounts with half-widths, and what was seen."""

    def assumed(self, key, item=0):
        """What is taken where nothing is recorded. A stove's chimney is what its connector goes
        into; only a fireplace's is masonry. An outlet above the ridge reaches it, one above an
        opening is not below it. That a wall has no shield is taken only where nothing is said of
        one."""
        if key == 'outlet/reaches-ridge':
            return True if self.box('outlet/above-ridge', (0, 0))[0] > 0 else None
        if key == 'window/outlet-below':
            return False if self.box(f'window/{item}/outlet-above', (0, 0))[0] > 0 else None
        if key in SHIELDS and any(
                self.seen.get(each.replace('/', f'/{item}/'), 'none') != 'none'
                for each in SHIELDS):
            return None
        if key == 'gas/appliance' and self.seen.get('appliance/fuel') == 'gas':
            return None  # something burns it
        if key != 'chimney/construction':
            return ASSUMED.get(key)
        what, into = self.seen.get('appliance/kind'), self.seen.get('connector/into') or ''
        if what in ('stove', 'pellet-stove'):
            if into in ('masonry-chimney', 'fireplace-chimney'):
                return 'masonry'
            return 'factory-built' if into.startswith('factory-built') else None
        inside = what == 'insert' and self.seen.get('insert/in-factory-built') in (True, 'yes')
        return 'factory-built' if inside or what == 'factory-built-fireplace' else 'masonry'

    def __init__(self, document):
        self.unit = document.get('unit')
        whole = document.get('tolerance')
        self.tolerance = amounts.read(whole, 'length', self.unit) if whole is not None else 0
        self.amounts, self.seen, self.lists = {}, {}, {}
        for group, members in document['survey'].items():
            if isinstance(members, list):
                self.lists[group] = len(members)
            for item, each in enumerate(members if isinstance(members, list) else [members]):
                place = f'{group}/{item}' if isinstance(members, list) else group
                for name, value in each.items():
                    self.record(f'{place}/{name}', f'{group}/{name}', value)

    def record(self, key, known_as, value):
        dimension = DIMENSIONS.get(known_as)
        if dimension is None:
            self.seen[key] = value
            return
        tolerance = amounts.read_tolerance(value, dimension, self.unit)
        if tolerance is None:
            tolerance = self.tolerance if dimension == 'length' else 0
        self.amounts[key] = (amounts.read(value, dimension, self.unit), tolerance)

    def box(self, key, otherwise=None):
        value, tolerance = self.amounts.get(key, otherwise) or self.amounts[key]
        return max(0, value - tolerance), value + tolerance


class Reading:
    """Values by key, of one item of a list; what is asked for is remembered."""

    def __init__(self, facts, item, values=None, demand=True):
        self.facts, self.item, self.values, self.asked = facts, item, values or {}, set()
        self.demand = demand  # a round flue's area is a demand where a requirement rests on it

    def place(self, key):
        group, name = key.split('/')
        return f'{group}/{self.item}/{name}' if group in self.facts.lists else key

    def base(self, key):
        place = self.place(key)
        if place in self.values:
            return self.values[place]
        if place in self.facts.amounts:
            self.asked.add(place)
            return self.facts.amounts[place][0]
        return None

    def __call__(self, key):
        value = self.base(key)
        if value is None:
            value = self.derived(key)
        return value

    def pair(self, first, second):
        return self(first), self(second)

    def derived(self, key):
        if key == 'opening/area':
            width, height = self.pair('opening/width', 'opening/height')
            return width * height
        if key == 'opening/total-area':
            length, height = self.pair('opening/total-length', 'opening/height')
            return length * height
        if key == 'hearth/from-facing':
            front, facing = self.pair('hearth/front', 'hearth/facing')
            return front - facing
        if key in ('flue/shorter-side', 'flue/longer-side'):
            sides = self.pair('flue/width', 'flue/depth')
            return min(sides) if key.endswith('shorter-side') else max(sides)
        if key == 'nearby/top-above':
            top, rise = self.pair('chimney/height-above-roof', 'nearby/rise')
            return top - rise
        if key == 'insert/hearth-front':
            front, projection = self.pair('hearth/front', 'insert/projection')
            return front - projection
        if key == 'flue/net-area':
            return self.net_area()
        if key == 'air/area':
            return self.circle(self('air/diameter'))
        raise Missing(key)

    def circle(self, diameter):
        return (rules.circle_as_requirement if self.demand else rules.circle)(diameter)

    def net_area(self):
        diameter = self.base('flue/diameter')
        if diameter is not None:
            return self.circle(diameter)
        if self.facts.seen.get('flue/shape') == 'oval':
            raise Missing('flue/net-area')
        width, depth = self.pair('flue/width', 'flue/depth')
        return width * depth

    def state(self, key):
        value = self.facts.seen.get(self.place(key), self.facts.assumed(key, self.item))
        if value is None:
            raise Missing(key)
        return value


# ---- judging -------------------------------------------------------------------------------------

COMPARE = {'is': lambda a, b: a == b, 'is not': lambda a, b: a != b, '>=': lambda a, b: a >= b,
           '>': lambda a, b: a > b, '<=': lambda a, b: a <= b, '<': lambda a, b: a < b,
           'in': lambda a, b: a in b}
COMPARE |= {name + unknown: test for name, test in COMPARE.items()
            for unknown in (OR_UNKNOWN, IF_KNOWN)}
PERHAPS = 'perhaps'


def holds(condition, reading):
    """Whether a condition holds: at each end of the tolerances, at none, or PERHAPS."""
    key, comparison, value = condition
    if key not in DIMENSIONS:
        return COMPARE[comparison](reading.state(key), value)
    if reading.base(key) is None:
        raise Missing(key)
    answers = {COMPARE[comparison](end, value) for end in reading.facts.box(reading.place(key))}
    return PERHAPS if len(answers) == 2 else answers.pop()


def holds_at_all(condition, reading):
    """The same, and what it comes to of what is not known; Missing where that is asked for."""
    answer = attempt(holds, condition, reading)
    if answer is Missing and condition[1].endswith((OR_UNKNOWN, IF_KNOWN)):
        return condition[1].endswith(OR_UNKNOWN)
    return answer


def applies(rule, reading):
    """True, False, PERHAPS, or None where a condition asks for something that is not recorded."""
    unknown = perhaps = False
    for condition in rule.when:
        if reading.item is None and condition[0].split('/')[0] == rule.key.split('/')[0]:
            continue
        answer = holds_at_all(condition, reading)
        if answer is False:
            return False
        unknown |= answer is Missing
        perhaps |= answer is PERHAPS
    return None if unknown else PERHAPS if perhaps else True


def rounded(relation, exact):
    return ceil(exact) if relation == 'at-least' else floor(exact)


def attempt(function, *arguments):
    try:
        return function(*arguments)
    except Missing:
        return Missing


def margin_of(rule, measured, required):
    return measured - required if rule.relation == 'at-least' else required - measured


def required_of(rule, reading):
    """What is required: by the appliance's own listing, where that is recorded. What carries no
    label has none."""
    if rule.id in LISTINGS and reading.facts.seen.get('listing/label', 'listed') == 'listed':
        listed = reading.base(LISTINGS[rule.id])
        if listed is not None:
            return listed
    return rule.required(reading)


def margin_at(rule, facts, item, values):
    """The margin at a point of the box; None where there is no limit."""
    required = required_of(rule, Reading(facts, item, values))
    if required in (None, OUTSIDE):
        return None
    measured = Reading(facts, item, values, demand=False)(rule.key)
    return margin_of(rule, measured, rounded(rule.relation, required))


def product_marks(facts, mark, keys):
    """Where one side brings an area to a mark, with the other side at either of its ends."""
    first, second = keys
    for here, there in ((first, second), (second, first)):
        for other in facts.box(there):
            for shift in (-1, 0, 1):
                yield here, mark // other + shift if other else 0


def points(rule, facts, reading, keys):
    """Points of the box among which the worst and the best are."""
    spread = {key: set(facts.box(key)) for key in keys}
    marks = [(reading.place(key), mark + shift) for key, mark in rule.marks for shift in (-1, 0, 1)]
    sides = ('opening/width', 'opening/height')
    if all(side in keys for side in sides):
        for key, mark in rule.marks:
            if key == 'opening/area':
                marks += product_marks(facts, mark, sides)
    for key, value in marks:
        if key in spread and facts.box(key)[0] <= value <= facts.box(key)[1]:
            spread[key].add(value)
    for values in product(*spread.values()):
        yield dict(zip(spread, values))


def judge_amounts(rule, facts, item, nothing):
    """The finding of a rule that applies."""
    wanted, there = Reading(facts, item), Reading(facts, item, demand=False)
    required, measured = attempt(required_of, rule, wanted), attempt(there, rule.key)
    if required == OUTSIDE:
        found = None if measured is Missing else measured
        return nothing._replace(measured=found)
    if required == BY_LISTING:
        return nothing._replace(verdict='by-listing',
                                measured=None if measured is Missing else measured)
    if isinstance(required, Usual):
        return nothing._replace(verdict='by-listing', usual=required.amount,
                                measured=None if measured is Missing else measured)
    finding = nothing._replace(
        measured=None if measured is Missing else measured,
        required=None if required in (Missing, None) else rounded(rule.relation, required))
    if required is Missing or (measured is Missing and required is not None):
        return finding
    keys = sorted(wanted.asked | there.asked)
    if measured is Missing:  # within the tolerances it may have to be known after all
        asked = {required_of(rule, Reading(facts, item, values))
                 for values in points(rule, facts, wanted, sorted(wanted.asked))}
        return None if asked == {None} else finding
    outcomes = {(margin_at(rule, facts, item, values) or 0) < 0
                for values in points(rule, facts, wanted, keys)}
    if True in outcomes:
        verdict = 'fails' if outcomes == {True} else 'too-close'
    elif required is None:
        return None
    else:
        verdict = 'meets'
    margin = None if required is None else margin_of(rule, measured, finding.required)
    return finding._replace(verdict=verdict, margin=margin)


def judge_state(rule, reading, nothing):
    got = attempt(reading.state, rule.key)
    if got is Missing:
        return nothing
    met = (got == rule.required(reading)) == (rule.relation == 'is')
    return nothing._replace(verdict='meets' if met else 'fails')


def judge(rule, facts, item):
    """One finding, or None where the rule asks nothing."""
    group, name = rule.key.split('/')
    repeats = item is not ALONE
    reading = Reading(facts, item if repeats else 0)
    place = {ALONE: rule.key, None: group}.get(item, f'{group}/{item}/{name}')
    dimension = DIMENSIONS.get(rule.key, 'state' if rule.relation.startswith('is') else 'length')
    nothing = Finding(rule.id, '/survey/' + place, rule.relation, 'unmeasured', None, None, None,
                      dimension)
    answer = applies(rule, reading)
    if answer is False:
        return None
    if answer is None or item is None:
        return nothing
    found = (judge_state(rule, reading, nothing) if dimension == 'state' else
             judge_amounts(rule, facts, reading.item, nothing))
    if answer is PERHAPS and found and found.verdict == 'fails':
        return found._replace(verdict='too-close')
    return found


ALTERNATIVES = (' of outlets', ' of separations')  # what roles are of, beside a standard's first
ALONE = 'no list'
REPEATING = ('trim', 'nearby', 'window', 'neighbour', 'wall', 'adjacent-wall')


def items_of(rule, facts):
    """The items a rule is asked of: ALONE for a group that does not repeat, None where nobody
    looked."""
    group = rule.key.split('/')[0]
    if group not in REPEATING:
        return [ALONE]
    return range(facts.lists[group]) if group in facts.lists else [None]


def settle(found, name=''):
    """Of ordinary rules and those instead of them, whichever are met, the exception first; where
    the ordinary ones ask nothing the exception is not needed."""
    ordinary, instead = f'ordinary{name}', f'exception{name}'
    verdicts = {role: {finding.verdict for rule, finding in found
                       if rule.role == role and finding.verdict != 'not-applicable'}
                for role in (ordinary, instead)}
    if verdicts[instead] == {'meets'}:
        return [pair for pair in found if pair[0].role != ordinary]
    if verdicts[ordinary] <= {'meets'}:
        return [pair for pair in found if pair[0].role != instead]
    return found


def judged(document, standard):
    """Each finding that a report without rules that do not apply has to have, with its rule."""
    facts, chosen = Facts(document), document.get('readings', {})
    defaults = {'area-rows': 'upper-limits', 'hearth-steps': 'round-up',
                'nhbc-separation': 'outer-face'}
    found = []
    for rule in STANDARDS[standard]:
        if rule.option:
            name, option = rule.option
            if chosen.get(name, defaults[name]) != option:
                continue
        for item in items_of(rule, facts):
            finding = judge(rule, facts, item)
            if finding is not None:
                found.append((rule, finding))
    for name in ('', *ALTERNATIVES):
        found = settle(found, name)
    return found


def findings(document, standard):
    return [finding for _, finding in judged(document, standard)]
