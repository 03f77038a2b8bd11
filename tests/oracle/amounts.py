# SPDX-License-Identifier: MIT
"""Amount texts read with exact fractions, for the oracle and for nothing else.

Written apart from the library: what both read alike has been read twice.

Sizes: the inch is 25.4 mm and the foot 12 in exactly (international yard and pound agreement,
1959); the degree is 3600 arcseconds. The unit codes in brackets are those of UCUM (section 4.4,
tables of international customary units).
"""
import re
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache

NM_PER_MM = 1_000_000
IN = 25_400_000
FT = 12 * IN
IN2 = IN * IN
FT2 = 144 * IN2
DEGREE = 3_600_000_000
# In hundred millionths of a joule in an hour; the Btu of the International Table, 1055.05585262 J.
BTU = 105_505_585_262
KILOWATT = 3_600_000 * 10 ** 8

LENGTH = {
    'in': IN, '"': IN, '″': IN, 'inch': IN, 'inches': IN, '[in_i]': IN,
    'ft': FT, "'": FT, '′': FT, 'feet': FT, '[ft_i]': FT,
    'mm': NM_PER_MM, 'cm': 10 * NM_PER_MM, 'm': 1000 * NM_PER_MM,
}
AREA = {
    'in2': IN2, 'in²': IN2, 'sq in': IN2, '[sin_i]': IN2,
    'ft2': FT2, 'ft²': FT2, 'sq ft': FT2, '[sft_i]': FT2,
    'mm2': NM_PER_MM ** 2, 'mm²': NM_PER_MM ** 2,
    'cm2': (10 * NM_PER_MM) ** 2, 'cm²': (10 * NM_PER_MM) ** 2,
    'm2': (1000 * NM_PER_MM) ** 2, 'm²': (1000 * NM_PER_MM) ** 2,
}
ANGLE = {'deg': DEGREE, '°': DEGREE}
RATIO = {}
POWER = {'Btu/h': BTU, 'BTU/h': BTU, 'BTUH': BTU, '[Btu_IT]/h': BTU, 'kW': KILOWATT,
         'W': KILOWATT // 1000}
# In cubes of a tenth of a millimetre, of which 254 are an inch.
VOLUME = {'ft3': 254 ** 3 * 1728, 'ft³': 254 ** 3 * 1728, 'cu ft': 254 ** 3 * 1728,
          '[cft_i]': 254 ** 3 * 1728, 'in3': 254 ** 3, 'L': 10 ** 9, 'm3': 10 ** 12, 'm³': 10 ** 12}
UNITS = {'length': LENGTH, 'area': AREA, 'angle': ANGLE, 'ratio': RATIO, 'slope': RATIO,
         'power': POWER, 'volume': VOLUME}
RATIO_ONE = 36_000_000_000

VULGAR = {'½': Fraction(1, 2), '¼': Fraction(1, 4), '¾': Fraction(3, 4), '⅛': Fraction(1, 8),
          '⅜': Fraction(3, 8), '⅝': Fraction(5, 8), '⅞': Fraction(7, 8)}

_NUMBER = re.compile(
    r'(?P<decimal>\d+\.\d+)'
    r'|(?:(?P<mixed>\d+)[ -])?(?P<top>\d+)/(?P<bottom>\d+)'
    r'|(?P<whole>\d+)? ?(?P<vulgar>[' + ''.join(VULGAR) + r'])'
    r'|(?P<plain>\d+)')


class AmountError(ValueError):
    """The text is none that the generator writes."""


def nearest(exact):
    """The nearest whole number of base units; halves go away from zero."""
    return (2 * exact.numerator + exact.denominator) // (2 * exact.denominator)


def _number(text):
    found = _NUMBER.match(text)
    if not found:
        raise AmountError(text)
    if found['decimal']:
        value = Fraction(found['decimal'])
    elif found['bottom']:
        value = int(found['mixed'] or 0) + Fraction(int(found['top']), int(found['bottom']))
    elif found['vulgar']:
        value = int(found['whole'] or 0) + VULGAR[found['vulgar']]
    else:
        value = Fraction(int(found['plain']))
    return value, text[found.end():]


@lru_cache(maxsize=1 << 16)  # each standard of a document reads the same texts
def exact_text(text, dimension, unit=None):
    """The exact amount of a text in base units, before any rounding."""
    units = UNITS[dimension]
    rest, total, count = text.strip(), Fraction(0), 0
    while rest:
        value, rest = _number(rest)
        rest = rest.lstrip()
        names = [name for name in units if rest.startswith(name)]
        if names:
            name = max(names, key=len)
            rest = rest[len(name):].lstrip()
            size = units[name]
        elif unit in units and not rest and not count:
            size = units[unit]
        elif dimension in ('ratio', 'slope') and not rest and not count:
            size = RATIO_ONE
        else:
            raise AmountError(text)
        total += value * size
        count += 1
    if not count or count > 2:
        raise AmountError(text)
    return total


def exact(value, dimension, unit=None):
    """The exact amount of a member of a document: text, object or bare number."""
    if isinstance(value, dict):
        unit, value = value.get('unit', unit), value['value']
    if dimension == 'count':
        return Fraction(value)
    if isinstance(value, (int, Decimal)):
        if unit is None:
            raise AmountError(value)
        return Fraction(value) * UNITS[dimension][unit]
    return exact_text(value, dimension, unit)


def read(value, dimension, unit=None):
    """The amount in whole base units: nm, nm2 or millionths of an arcsecond."""
    return nearest(exact(value, dimension, unit))


def read_tolerance(value, dimension, unit=None):
    """The half-width an object carries, or None where it carries none."""
    if isinstance(value, dict) and 'tolerance' in value:
        return read(value['tolerance'], dimension, value.get('unit', unit))
    return None
