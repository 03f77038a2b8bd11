# SPDX-License-Identifier: MIT
"""Made-up surveys of gas in fireplaces for the oracle, the same ones for the same seed.

Amounts lie at the limits of the rules and at the table's numbers, one base unit, one sixteenth of
an inch or one watt beside them, and anywhere between.
"""
import math
from fractions import Fraction

import gas
import generate
from gas import FT3
from amounts import BTU, FT, IN, IN2, KILOWATT

SEEN = {
    'gas.vent': ('chimney', 'chimney', 'chimney', 'direct', 'unvented', 'unvented'),
    'gas.room': ('other', 'bedroom', 'bathroom'),
    'gas.listed': (True, False, False),
    'gas.valve-place': ('in-room', 'in-room', 'in-firebox', 'remote', 'manifold', 'none'),
    'gas.valve-access': ('ready', 'ready', 'panel', 'cabinet', 'none'),
    'gas-pipe.entry': ('sealed', 'gap'),
    'air.duct-state': ('connected', 'connected', 'blocked', 'missing', 'none'),
    'damper.state': ('working', 'stuck', 'removed', 'fixed-open', 'blocked-open'),
}
FLAGS = ('gas.valve-upstream', 'gas.valve-by-listing', 'gas.valve-identified',
         'gas.valve-serves-others', 'gas.open-pipe', 'gas.thermostat',
         'gas.screen', 'gas.working-flue', 'gas.room-volume', 'gas.listed-in-fireplace',
         'gas.wall-mounted', 'gas.oxygen-shutoff', 'gas.more-heaters', 'gas.sole-heat',
         'gas.on-fireplace-flue', 'gas.fireplace-sealed', 'gas.damper-by-maker', 'insert.into-flue',
         'air.on-inner-slab', 'gas.flue-access', 'gas.in-manufactured-home',
         'gas.listed-for-manufactured-home', 'gas.listed-for-flue', 'gas.into-flue',
         'insert.in-factory-built', 'damper.from-room', 'air.damper-tight',
         'glass-doors.cover-opening', 'alarms.co-near-bedrooms', 'alarms.co-in-bedroom')
KINDS = ('masonry-fireplace', 'factory-built-fireplace', 'insert', 'steel-fireplace-unit', 'stove')
APPLIANCES = ('log-set', 'log-set', 'log-set', 'log-lighter', 'fireplace', 'insert', 'room-heater',
              'none')
TOLERANCES = {'length': ('1/16 in', '1/2 in', '1 ft', '3 mm'), 'area': ('1 in2', '0.25 in2',
                                                                         '8 in2', '1 cm2'),
              'volume': ('1 ft3', '20 cu ft', '0.1 m3'),
              'power': ('100 Btu/h', '500 Btu/h', '5000 Btu/h', '0.1 kW', '1 W')}


def heat_text(source, value):
    """A heat input in Btu/h where that is exact, else as a fraction of one."""
    exact = Fraction(value, BTU)
    if exact.denominator == 1:
        return source.one(('%d Btu/h', '%d BTU/h', '%d BTUH', '%d [Btu_IT]/h')) % exact
    watts = generate.decimal(Fraction(value, KILOWATT))
    return f'{watts} kW' if watts is not None else f'{value}/{BTU} Btu/h'


def space_text(source, value):
    """A volume in cubic feet where that is exact, else in cubic metres."""
    exact = Fraction(value, FT3)
    if exact.denominator == 1:
        return source.one(('%d ft3', '%d cu ft', '%d ft³')) % exact
    return generate.decimal(Fraction(value, 10 ** 12)) + ' m3'


class Maker:
    """Makes one document."""

    def __init__(self, seed, uncertain):
        self.source = generate.Source(seed)
        self.full = self.source.chance(0.6)
        self.uncertain = uncertain and self.source.chance(0.6)
        self.groups = {}

    def put(self, path, value, share=0.85):
        if self.full or self.source.chance(share):
            group, name = path.split('.')
            self.groups.setdefault(group, {})[name] = value

    def amount(self, path, value):
        dimension = gas.AMOUNTS[path.replace('.', '/')]
        text = (heat_text(self.source, value) if dimension == 'power'
                else space_text(self.source, value) if dimension == 'volume'
                else generate.exact_text(self.source, value, dimension))
        if self.uncertain and self.source.chance(0.5):
            self.put(path, {'value': text, 'tolerance': self.source.one(TOLERANCES[dimension])})
        else:
            self.put(path, text)

    def heat(self):
        """At a number of the table or of a rule, beside it, or anywhere."""
        source = self.source
        cell = source.one(source.one(gas.INPUTS)) * BTU
        limit = source.one((6000, 10000, 40000)) * BTU
        mark = source.one((cell, cell, cell, limit))
        step = source.one((0, 0, 1, BTU, KILOWATT // 1000, 700 * BTU, None))
        if step is None:
            return BTU * source.whole(1000, 150000)
        return mark + step * source.one((-1, 1))

    def height(self):
        mark = self.source.one(gas.HEIGHTS) * FT
        step = self.source.one((0, 0, 1, IN // 16, FT, None))
        if step is None:
            return IN * self.source.whole(60, 480)
        return mark + step * self.source.one((-1, 1))

    def space(self, heat):
        """What the heat asks for, a little more or less, or any room."""
        due = math.ceil(Fraction(heat, BTU) * FT3 / 20)
        step = self.source.one((0, 0, 1, FT3, 50 * FT3, None))
        if step is None:
            return FT3 * self.source.whole(50, 6000)
        return max(0, due + step * self.source.one((-1, 1)))

    def opening(self):
        mark = self.source.one(gas.OPENINGS) * IN2
        return mark + self.source.one((0, 0, 0, 1, -1, IN2, -IN2))

    def document(self, identity):
        source = self.source
        self.put('appliance.kind', source.one(KINDS))
        self.put('appliance.fuel', source.one(('wood', 'gas')), 0.6)
        self.put('gas.appliance', source.one(APPLIANCES))
        for path, words in SEEN.items():
            self.put(path, source.one(words))
        for path in FLAGS:
            self.put(path, source.chance(0.5))
        feet = source.one((3, 4, 6, 50)) * FT
        self.amount('gas.valve-distance', generate.near(source, feet))
        self.amount('gas.fixed-pipe-end', generate.near(source, 6 * FT))
        heat = self.heat()
        self.amount('gas.input', heat)
        self.amount('gas.space', self.space(heat))
        self.amount('gas.chimney-height', self.height())
        self.amount('gas.damper-opening', self.opening())
        self.amount('air.area', 6 * IN2 + source.one((-IN2, -1, 0, 1, IN2)))
        if source.chance(0.5):
            self.amount('listing.damper-opening', self.opening())
        standards = [source.one(gas.STANDARDS)]
        standards += [each for each in gas.STANDARDS
                      if each not in standards and source.chance(0.15)]
        document = {'id': identity, 'standards': standards}
        if self.uncertain and source.chance(0.5):
            document['tolerance'] = source.one(TOLERANCES['length'])
        document['survey'] = self.groups
        return document


def lines(count, seed='gas', uncertain=True):
    """So many documents, one a line."""
    return [generate.written(Maker(f'{seed} {index}', uncertain).document(f'gas-{index}'))
            for index in range(count)]
