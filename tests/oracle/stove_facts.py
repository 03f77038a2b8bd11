# SPDX-License-Identifier: MIT
"""What a document records of stoves and inserts, for the oracle: amounts, words, layers."""
from fractions import Fraction

import amounts
from amounts import IN

LENGTHS = '''
 connector/diameter connector/wall-clearance connector/ceiling-clearance connector/run
 connector/rise connector/first-rise connector/chimney-height connector/overlap connector/thickness
 collar/diameter
 flue/diameter stove/leg-height stove/width stove/depth floor/front floor/left floor/right
 floor/back floor/door-front floor/door-left floor/door-right floor/width floor/depth
 floor/thickness floor/beside-connector wall/clearance wall/unprotected wall/by-listing
 wall/air-space wall/edge-gap wall/beyond-shield pass-through/clearance
 pass-through/liner-thickness pass-through/insulation pass-through/diameter pass-through/length
 pass-through/opening insert/hearth-front insert/hearth-left insert/hearth-right
 insert/body-left insert/body-right insert/liner-diameter hearth/front hearth/left hearth/right
 hearth/extension-thickness chimney/clearance room/furniture listing/hearth-front
 listing/hearth-side listing/hearth-back listing/connector-clearance listing/chimney-clearance
 chimney/height-above-roof nearby/distance nearby/top-above floor/top-thickness
 listing/pad-thickness listing/floor-beside-connector listing/unbraced-height
 listing/flue-height listing/flue-above-base flue/height flue/above-base
 listing/gas-back-clearance listing/gas-side-clearance listing/gas-top-clearance
 gas/back-clearance gas/side-clearance gas/top-clearance trim/distance trim/projection
 listing/gas-trim-distance listing/gas-trim-projection listing/gas-hearth-front
 listing/gas-hearth-side cleanout/below-inlet cleanout/height
'''.split()
AREAS = 'flue/net-area listing/flue-area-least listing/flue-area-most'.split()
COUNTS = 'connector/elbows connector/screws connector/gauge'.split()
RATIOS = 'listing/pad-r'.split()
AMOUNTS = {**dict.fromkeys(LENGTHS, 'length'), **dict.fromkeys(AREAS, 'area'),
           **dict.fromkeys(COUNTS, 'count'), **dict.fromkeys(RATIOS, 'ratio'),
           'room/volume': 'volume'}
ASSUMED = {'stove/type': 'radiant', 'wall/surface': 'wall', 'wall/protection': 'none',
           'wall/corner': 'no', 'wall/in-front': 'no',
           'connector/kind': 'single-wall', 'connector/shield': 'none',
           'insert/in-factory-built': 'no', 'flue/draft-fan': 'no', 'gas/appliance': 'none',
           'trim/combustible': 'yes', 'connector/several': 'no', 'stove/small-special': 'no'}
REPEATING = ('wall', 'nearby', 'trim')
# The first option of a reading is followed unless another is chosen.
READINGS = {'brace-height': ('five-feet', 'six-feet'), 'shield-minimum': ('as-bare', 'stands'),
            'pipe-reduction': ('half', 'two-thirds')}


class Facts:
    def __init__(self, document):
        self.unit, survey = document.get('unit'), document['survey']
        self.lists = {group: survey.get(group) for group in REPEATING}
        self.layers = survey.get('layer')
        chosen = {**{name: ways[0] for name, ways in READINGS.items()},
                  **document.get('readings', {})}
        self.amounts = {}
        self.words = {f'reading/{name}': option for name, option in chosen.items()}
        for group, members in survey.items():
            for index, item in enumerate(members) if isinstance(members, list) else ():
                self.take(f'{group}/{index}', group, item)
            if isinstance(members, dict):
                self.take(group, group, members)

    def take(self, place, group, members):
        for name, value in members.items():
            dimension = AMOUNTS.get(f'{group}/{name}')
            if dimension == 'count':
                self.amounts[f'{place}/{name}'] = (value, 0)
            elif dimension:
                tolerance = amounts.read_tolerance(value, dimension, self.unit) or 0
                self.amounts[f'{place}/{name}'] = (amounts.read(value, dimension, self.unit),
                                                   tolerance)
            else:
                self.words[f'{place}/{name}'] = {True: 'yes', False: 'no'}.get(value, value) \
                    if isinstance(value, (bool, str)) else value

    def known(self, key, item):
        """What is recorded or assumed: an amount or a word; None for nothing."""
        place = located(key, item)
        if place in self.amounts:
            return self.amounts[place][0]
        if key == 'chimney/construction' and place not in self.words:
            return self.construction()
        if key == 'insert/reaches-liner' and place not in self.words:
            # What is just pushed in has no connector.
            return 'no' if self.words.get('insert/connection') == 'none' else None
        return self.words.get(place, ASSUMED.get(key))

    def construction(self):
        """A stove's chimney is what its connector goes into; only a fireplace's is masonry."""
        what = self.words.get('appliance/kind')
        if what in ('stove', 'pellet-stove'):
            into = self.words.get('connector/into') or ''
            if into in ('masonry-chimney', 'fireplace-chimney'):
                return 'masonry'
            return 'factory-built' if into.startswith('factory-built') else None
        inside = what == 'insert' and self.words.get('insert/in-factory-built') == 'yes'
        return 'factory-built' if inside or what == 'factory-built-fireplace' else 'masonry'

    def box(self, key, item):
        value, tolerance = self.amounts[located(key, item)]
        return max(0, value - tolerance), value + tolerance

    def within(self, key, item):
        """What it may be: nothing, a word, or an amount and the ends of its tolerance."""
        value = self.known(key, item)
        if value is None:
            return ()
        return (value, *self.box(key, item)) if located(key, item) in self.amounts else (value,)

    def r_value(self, materials, end=0):
        """The sum of the layers, exactly: as measured, or at an end of their thicknesses, -1 or 1.
        None where one of them cannot be told."""
        values = [layer_value(layer, materials, end) for layer in self.layers or ()]
        return None if not values or None in values else sum(values)


def layer_value(layer, materials, end=0):
    """By its own data, or else what is usual of one inch of its material."""
    def number(name):
        return Fraction(layer[name]) if name in layer else None

    if 'r-value' in layer:
        return number('r-value')
    if 'c' in layer:
        return 1 / number('c')
    if 'thickness' not in layer:
        return None
    tolerance = amounts.read_tolerance(layer['thickness'], 'length') or 0
    inches = max(amounts.exact(layer['thickness'], 'length') + end * tolerance, 0) / IN
    if 'k' in layer:
        return inches / number('k')
    if 'r-per-inch' in layer:
        return inches * number('r-per-inch')
    usual = materials.get(layer.get('material'))
    return None if usual is None else inches * usual


def located(key, item):
    group, name = key.split('/')
    return f'{group}/{item}/{name}' if group in REPEATING and item is not None else key
