# SPDX-License-Identifier: MIT
"""Made-up surveys for the oracle of abroad.py, the same ones for the same seed.

Amounts lie at the limits of the rules and where they step, one base unit or one millimetre beside
them, and anywhere between.
"""
from fractions import Fraction

import abroad
import canada_rules
import europe_rules
import generate
from abroad_rules import LISTINGS, M2, MM, MM2, M
from amounts import DEGREE, KILOWATT, RATIO_ONE

FLAGS = (True, False)
SEEN = {
    'appliance/fuel': ('wood', 'gas'),
    'flue/shape': ('round', 'round', 'square', 'rectangular', 'rectangular', 'oval'),
    'flue/lining': ('sound', 'cracked', 'none'),
    'firebox/lining': ('firebrick', 'firebrick', 'other', 'steel', 'steel', 'none'),
    'chimney/liner': ('clay', 'stainless', 'other'), 'chimney/place': ('interior', 'exterior'),
    'chimney/flues': ('single', 'separate'), 'opening/exposure': ('front', 'front', 'more-sides'),
    'trim/side': ('above', 'above', 'left', 'right'), 'damper/state': ('working', 'removed'),
    'gas/appliance': ('log-set', 'log-set', 'insert', 'room-heater', 'none'),
    'throat/can-be-measured': (True, False, False), 'throat/present': (True, True, False),
    'outlet/parapet': (True, True, False),
    'recess/construction': ('solid', 'back-to-back', 'cavity', 'prefabricated'),
    'house/storeys': ('one', 'one', 'two', 'more'),
    'chimney/heat-class': ('residential', 'residential', 'low', 'medium'),
    'floor/protection': ('none', 'ember', 'listed-protector'),
    'gas/vent': ('chimney', 'direct'),
    'co-alarm/place': ('none', 'ceiling', 'wall'),
    'wall/surface': ('wall', 'ceiling'),
    'wall/shield-face': ('none', *canada_rules.REDUCTIONS),
    'wall/shield-layers': ('none', 'one', 'two'),
    'wall/protection': ('none', 'none', 'steel-vented'), 'stove/type': ('radiant', 'circulating'),
    'listing/label': ('listed', 'no-label', 'home-made'), 'hearth/build': ('one-piece', 'units'),
    'chimney/construction': ('masonry', 'masonry', 'masonry', 'factory-built'),
    'flue/shared-with': ('solid-fuel', 'gas', 'oil'),
    'connector/into': ('masonry-chimney', 'fireplace-chimney', 'open-fireplace-flue'),
    'air/duct-state': ('connected',) * 5 + ('missing',),
    'air/intake-place': ('outdoors', 'indoors'),
    'insert/connection': ('none', 'listed-liner', 'sealed'),
}
KINDS = ('masonry-fireplace',) * 6 + ('stove', 'stove', 'insert', 'pellet-stove', 'masonry-heater',
                                      'factory-built-fireplace', 'steel-fireplace-unit')
STOVES_ONLY = ('csa-b365', 'csa-b365-1991', 'common-practice-canada', 'as-nzs-2918-2001',
               'arrete-1980', 'nhbc-northern-ireland-2011', 'common-practice-australia')
MANY_RULES = ('obc-2012',) * 4 + ('adj-2010', 'nhbc-2020') * 2  # come up the more often
OPTIONS = {'area-rows': ('upper-limits', 'rounded'), 'hearth-steps': ('round-up', 'whole-steps'),
           'nhbc-separation': ('outer-face', 'scotland')}
TOLERANCES = ('1 mm', '3 mm', '0.000001 mm', '1 cm')
SMALLEST = {'opening/width': 160 * MM, 'opening/height': 160 * MM, 'opening/area': M2 // 20,
            'opening/total-length': 160 * MM, 'opening/total-area': M2 // 20,
            'flue/diameter': 30 * MM, 'flue/width': 30 * MM, 'flue/depth': 30 * MM,
            'flue/shorter-side': 30 * MM, 'flue/longer-side': 30 * MM, 'flue/net-area': 700 * MM2,
            'air/diameter': 10 * MM, 'air/area': 100 * MM2, 'outlet/stack-width': 30 * MM,
            'separation/pipe-diameter': 30 * MM, 'gas/input': KILOWATT // 2,
            'firebox/depth': 30 * MM}


def known_limits():
    """Amounts by key at which some rule changes its mind."""
    limits = {}
    for told in abroad.STANDARDS.values():
        for rule in told:
            pairs = [*rule.marks, *((key, value) for key, _, value in rule.when)]
            try:
                pairs.append((rule.key, rule.required(None)))
            except (TypeError, AttributeError):
                pass  # it rests on something measured
            for key, value in pairs:
                if key in abroad.DIMENSIONS and not isinstance(value, str):
                    limits.setdefault(key, set()).add(int(getattr(value, 'amount', value)))
    sizes = {int(side) * MM for table in (canada_rules.ROUND_FLUES, canada_rules.RECTANGULAR_FLUES)
             for line in table for cell in line if cell != 'none'
             for part in cell.split('/') for side in part.split('x')}
    for key in ('diameter', 'width', 'depth', 'shorter-side', 'longer-side'):
        limits.setdefault(f'flue/{key}', set()).update(sizes)
    for key in ('hearth/from-facing', 'hearth/front'):
        limits.setdefault(key, set()).update({each * MM for each in (400, 450, 475, 500, 525, 550)})
    raises = limits.setdefault('hearth/firebox-raise', set())
    raises.update({each * MM for each in (150, 300, 350, 400, 450)})
    limits.setdefault('air/diameter', set()).add(100 * MM)
    limits.setdefault('air/area', set()).add(7854 * MM2)
    limits['cap/terminal-built-in'] = {125 * MM, 150 * MM}
    limits['cap/terminal-length'] = {500 * MM, 600 * MM}
    limits.setdefault('vent/area', set()).update(
        area * MM2 for area in europe_rules.VENTS.values())
    limits['opening/width'].update(width * MM for width in europe_rules.VENTS)
    limits['separation/pipe-diameter'] = {150 * MM}
    for key in ('separation/pipe-to-shield', 'separation/pipe-shield-overlap'):
        limits[key] = {225 * MM}
    for line in canada_rules.ANGLES:
        for name, size in zip(('longer-leg', 'shorter-leg', 'angle-thickness'), line[1:]):
            limits.setdefault(f'lintel/{name}', set()).add(int(Fraction(size) * MM))
    return {key: sorted(values) for key, values in limits.items()}


LIMITS = known_limits()
USUAL = {'length': (10 * MM, 2 * M), 'area': (M2 // 50, 2 * M2), 'angle': (0, 60 * DEGREE),
         'power': (KILOWATT, 60 * KILOWATT), 'count': (0, 6), 'ratio': (0, 500 * RATIO_ONE)}
# Things that are never large.
THIN = ('hearth/facing', 'air/', 'vent/aper', 'firebox/', 'lintel/', 'flue/liner',
        'chimney/parging', 'cap/', 'wall/air', 'hearth/thickness', 'hearth/ex', 'hearth/edge',
        'smoke-chamber/wall', 'chimney/wall', 'hearth/unit', 'wall/bottom',
        'smoke-chamber/exposed', 'listing/smoke', 'recess/', 'hood/', 'adjacent-wall/thickness',
        'gas/', 'separation/pipe-shield', 'wall/shield-to', 'wall/shield-thickness',
        'chimney/firebrick', 'insert/flue')
SHEETS = ('hearth/sheet-metal', 'wall/shield-metal')
STEPS = {'length': (0, 0, 1, MM), 'area': (0, 0, 1, MM2, M2 // 10000, 4 * M2 // 10000),
         'angle': (0, 0, DEGREE, DEGREE // 2), 'power': (0, 0, KILOWATT // 1000), 'count': (0, 1),
         'ratio': (0, 0, RATIO_ONE // 1000)}
GRIDS = {'length': MM, 'area': MM2 * 100, 'angle': DEGREE, 'power': KILOWATT // 10, 'count': 1,
         'ratio': RATIO_ONE // 1000}


def keys_of(standards):
    """What the rules of some standards ask for: keys of amounts, keys of states."""
    asked = {'opening/width', 'opening/height', 'opening/area', 'flue/width', 'flue/depth',
             'flue/diameter', 'flue/height', 'hearth/firebox-raise', 'hearth/facing',
             'hearth/front', 'throat/area', 'appliance/output', 'opening/total-length',
             'nearby/distance', 'nearby/rise', 'gas/input',
             'outlet/stack-width', 'separation/pipe-diameter', 'window/distance',
             'neighbour/distance', 'air/diameter',
             'chimney/height-above-roof', 'wall/unprotected', 'trim/projection',
             'firebox/above-floor', 'cap/terminal-length', 'listing/vent-area'}
    for standard in standards:
        for rule in abroad.STANDARDS[standard]:
            asked |= {rule.key, *(key for key, _, _ in rule.when)}
            if rule.id in LISTINGS:
                asked.add(LISTINGS[rule.id])
    return sorted(asked - {'appliance/kind', 'nearby/top-above'})


class Maker:
    """Makes one document."""

    def __init__(self, seed, uncertain):
        self.source = generate.Source(seed)
        self.share = self.source.one((1, 0.9, 0.7))
        self.uncertain = uncertain and self.source.chance(0.5)
        self.groups = {}

    def amount(self, key):
        source, dimension = self.source, abroad.DIMENSIONS[key]
        step = source.one(STEPS[dimension] + (None,))
        if key not in LIMITS or step is None or source.chance(0.2):
            low, high = USUAL[dimension]
            if dimension in ('length', 'area') and key.startswith(THIN):
                low, high = 10 * MM, 90 * MM
            if key == 'firebox/unit-net-volume':
                high = RATIO_ONE
            if key in SHEETS:
                return source.whole(1, 100) * MM // 100
            value = GRIDS[dimension] * source.whole(low // GRIDS[dimension],
                                                    high // GRIDS[dimension])
        else:
            value = source.one(LIMITS[key]) + step * source.one((-1, 1))
        return max(SMALLEST.get(key, 0), value)

    def written(self, key, value=None):
        source, dimension = self.source, abroad.DIMENSIONS[key]
        value = self.amount(key) if value is None else value
        if dimension == 'count':
            return value
        if dimension == 'ratio':
            return f'{value}/{RATIO_ONE}'
        if dimension == 'power':
            return f'{Fraction(value, KILOWATT)} kW'
        text = generate.exact_text(source, value, dimension)
        if self.uncertain and dimension in ('length', 'power') and source.chance(0.4):
            return {'value': text, 'tolerance': source.one(TOLERANCES)}
        return text

    def value(self, key):
        return (self.written(key) if key in abroad.DIMENSIONS
                else self.source.one(SEEN.get(key, FLAGS)))

    def share_of(self, key):
        """A listing's figure is rare: where there is one the rule's own number is not tried."""
        return 0.3 if key in LISTINGS.values() else self.share

    def members(self, names, group):
        return {name: self.value(f'{group}/{name}') for name in names
                if self.source.chance(self.share_of(f'{group}/{name}'))}

    def fitting(self, key, conditions):
        """A value that makes all conditions on a key hold."""
        def fits(value):
            return all(abroad.COMPARE[test](value, wanted) for test, wanted in conditions)
        if key in abroad.DIMENSIONS:
            step = GRIDS[abroad.DIMENSIONS[key]]
            far = 1 if abroad.DIMENSIONS[key] == 'count' else 40
            near = [wanted + off * step for _, wanted in conditions
                    for off in (-far, -1, 0, 1, far)]
            return self.written(key, self.source.one([each for each in near
                                                      if each >= 0 and fits(each)]))
        options = KINDS if key == 'appliance/kind' else SEEN.get(key, FLAGS)
        fitting = [each for each in options if fits(each)]
        return self.source.one(fitting) if fitting else conditions[0][1]

    def aim(self, standards):
        """Makes one of the rules apply that chance would seldom bring about."""
        rule = self.source.one(abroad.STANDARDS[self.source.one(standards)])
        by_key = {}
        for key, test, wanted in rule.when:
            by_key.setdefault(key, []).append((test, wanted))
        if rule.key != 'nearby/top-above' and rule.key not in by_key:
            by_key[rule.key] = []
        if rule.id.startswith('factory-hearth'):  # nothing but the listing has a number for it
            by_key[LISTINGS[rule.id]] = []
        for key, conditions in by_key.items():
            group, name = key.split('/')
            holders = self.groups.setdefault(group, [{}] if group in abroad.REPEATING else {})
            for holder in holders if isinstance(holders, list) else [holders]:
                holder[name] = self.fitting(key, conditions) if conditions else self.value(key)

    def flue(self, members):
        """One way to know the size of a flue, that fits its shape."""
        sides = ('width', 'depth', 'shorter-side', 'longer-side', 'net-area')
        shape = members.get('shape')
        if shape == 'round' or (shape is None and self.source.chance(0.5)):
            for name in sides:
                members.pop(name, None)
            return
        members.pop('diameter', None)
        if self.source.chance(0.5):
            for name in sides[:2]:
                members.pop(name, None)
        else:
            for name in sides[2:]:
                members.pop(name, None)
            if shape is not None and {'width', 'depth'} <= members.keys():
                if shape == 'square':
                    members['depth'] = members['width']
                elif members['width'] == members['depth']:
                    members.pop('depth')

    def document(self, identity):
        source = self.source
        standards = [source.one((*sorted(abroad.STANDARDS), *MANY_RULES))
                     for _ in range(source.one((1, 1, 2, 3)))]
        standards = list(dict.fromkeys(standards))
        groups = {}
        for key in keys_of(standards):
            group, name = key.split('/')
            groups.setdefault(group, []).append(name)
        for group, names in groups.items():
            if group in abroad.REPEATING:
                if source.chance(0.85):
                    self.groups[group] = [self.members(names, group)
                                          for _ in range(source.whole(0, 3))]
            else:
                self.groups[group] = self.members(names, group)
        if source.chance(0.5):
            self.groups.get('opening', {}).pop('area', None)
            self.groups.get('hearth', {}).pop('from-facing', None)
        if source.chance(0.97):
            stoves = set(standards) & set(STOVES_ONLY) and source.chance(0.7)
            self.groups.setdefault('appliance', {})['kind'] = ('stove' if stoves
                                                               else source.one(KINDS))
        if source.chance(0.7):
            self.aim(standards)
        if self.groups.get('throat', {}).get('can-be-measured') is False and source.chance(0.5):
            width = source.one(sorted(europe_rules.VENTS)) * MM  # a vent is printed for these alone
            self.groups.setdefault('opening', {})['width'] = self.written('opening/width', width)
        self.flue(self.groups.get('flue', {}))
        document = {'id': identity, 'standards': standards, 'survey': self.groups}
        if self.uncertain and source.chance(0.5):
            document['tolerance'] = source.one(TOLERANCES)
        readings = {name: source.one(options) for name, options in OPTIONS.items()
                    if source.chance(0.4)}
        if readings:
            document['readings'] = readings
        return document


def lines(count, seed='abroad', uncertain=True):
    return [generate.written(Maker(f'{seed} {index}', uncertain).document(f'survey-{index}'))
            for index in range(count)]
