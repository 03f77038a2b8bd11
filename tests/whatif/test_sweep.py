# SPDX-License-Identifier: MIT
"""`ingle sweep` against single checks: every cell, as JSON, CSV and plot."""
import csv
import io
import re
import unittest
import xml.etree.ElementTree as ElementTree
from fractions import Fraction

import judging
from judging import asked, changed, example, matter, pointer, ran, reports

GRAVITY = [each['verdict'] for each in asked('list', 'verdicts')]
PARTS = ('measured', 'required', 'margin')
PLAIN = {'standards': ['irc-2021', 'irc-2000'], 'unit': 'in',
         'survey': {'appliance': {'kind': 'masonry-fireplace'},
                    'opening': {'width': 36, 'height': 28},
                    'hearth': {'front': {'value': 18, 'tolerance': '1/4 in'}, 'left': 12,
                               'right': 9},
                    'trim': [{'side': 'above', 'combustible': True, 'distance': 9,
                              'projection': 2}],
                    'flue': {'shape': 'round', 'diameter': 10, 'height': 240}}}
COLUMNS = ['value', 'unit', 'standard', 'rule', 'section', 'subject', 'verdict', 'relation',
           'required', 'measured', 'margin', 'unit of the rule']


def path_of(subject):
    """A subject as a path: `trim[0].distance`."""
    group, *item, name = subject.split('/')[2:]
    return f'{group}[{item[0]}].{name}' if item else f'{group}.{name}'


def said(finding):
    """What a cell says of a finding."""
    return {name: finding[name] for name in ('section', 'verdict', 'relation', *PARTS)
            if name in finding}


def gravest(report):
    """One finding on each matter; where a standard has several, the first of the gravest."""
    found = {}
    for finding in report.get('findings', ()):
        known = found.get(matter(finding))
        if known is None or GRAVITY.index(finding['verdict']) > GRAVITY.index(known['verdict']):
            found[matter(finding)] = finding
    return {key: said(finding) for key, finding in found.items()}


class Sweep(unittest.TestCase):
    def sweep(self, document, path, *words, options=()):
        return asked('sweep', '--quantity', path, *words, *options, given=document)

    def hold(self, document, path, *words, options=()):
        """Every line and cell is what single checks say, and no line is left out."""
        swept = self.sweep(document, path, *words, '--all', options=options)
        values = list(dict.fromkeys(cell['value']['text'] for line in swept['lines']
                                    for cell in line['values']))
        single = reports([changed(document, path, self.exact_text(swept, text))
                          for text in values], *options)
        expected, got = {}, {}
        for text, report in zip(values, single):
            for key, cell in gravest(report).items():
                expected.setdefault(key, {})[text] = cell
        for line in swept['lines']:
            key = matter(line)
            self.assertNotIn(key, got)
            got[key] = {cell['value']['text']: {name: cell[name] for name in cell
                                                if name != 'value'} for cell in line['values']}
        self.assertEqual(list(got.keys() ^ expected.keys()), [])
        for key in expected:
            self.assertEqual(got[key], expected[key], key)
        return swept, expected

    @staticmethod
    def exact_text(swept, text):
        for line in swept['lines']:
            for cell in line['values']:
                shown = cell['value']
                if shown['text'] == text:
                    return f"{shown['value']} {shown['unit']}" if 'unit' in shown else text
        raise KeyError(text)

    def test_every_cell(self):
        for document, path, words, options in (
                (PLAIN, 'opening.height', ('--from', '20 in', '--to', '30 in', '--step', '1/4 in'),
                 ()),
                (PLAIN, 'hearth.front', ('--from', '14 in', '--to', '22 in', '--step', '1/8 in'),
                 ('--unit', 'mm')),
                (PLAIN, 'trim[0].distance', ('--from', '4 in', '--to', '14 in', '--step',
                                             '1/4 in'), ()),
                (PLAIN, 'flue.diameter', ('--from', '6 in', '--to', '14 in', '--step', '1/4 in'),
                 ('--unit', 'cm')),
                (example('heron-weir/living-room.json'), 'opening.width',
                 ('--from', '30 in', '--to', '40 in', '--step', '1/2 in'), ()),
                (example('heron-weir/study-insert.json'), 'hearth.front',
                 ('--from', '10 in', '--to', '24 in', '--step', '1/2 in'), ())):
            with self.subTest(path):
                self.hold(document, path, *words, options=options)

    def test_lines_that_change(self):
        """Without --all those lines are left out that are the same at every value."""
        words = ('--from', '22 in', '--to', '26 in', '--step', '1/2 in')
        _, expected = self.hold(PLAIN, 'opening.height', *words)
        changing = {key for key, cells in expected.items()
                    if len(cells) < 9 or any(cell != next(iter(cells.values()))
                                             for cell in cells.values())}
        swept = self.sweep(PLAIN, 'opening.height', *words)
        self.assertEqual({matter(line) for line in swept['lines']}, changing)
        self.assertGreater(len(expected), len(changing))
        self.assertGreater(len(changing), 3)

    def test_one_rule(self):
        swept = self.sweep(PLAIN, 'opening.height', '--rule', 'hearth-front', '--from', '20 in',
                           '--to', '30 in')
        self.assertEqual({line['rule'] for line in swept['lines']}, {'hearth-front'})
        self.assertEqual({line['standard'] for line in swept['lines']}, set(PLAIN['standards']))

    def test_the_step_at_six_square_feet(self):
        """R1001.10: 16 in in front below 6 ft2, 20 in from there; 36 in x 24 in is 6 ft2."""
        swept = self.sweep(PLAIN, 'opening.height', '--rule', 'hearth-front', '--standard',
                           'irc-2021', '--from', '23 in', '--to', '25 in')
        line, = swept['lines']
        required = {cell['value']['text']: cell['required']['text'] for cell in line['values']}
        self.assertEqual(len(required), 2 * 16 + 1)
        self.assertEqual((required['23 15/16 in'], required['24 in']), ('16 in', '20 in'))
        self.assertEqual(set(list(required.values())[:16]), {'16 in'})
        self.assertEqual(set(list(required.values())[16:]), {'20 in'})
        # 35 in x 24 11/16 in is 864 1/16 in2, one graduation less 861.875 in2.
        narrow = self.sweep(changed(PLAIN, 'opening.width', '35 in'), 'opening.height', '--rule',
                            'hearth-front', '--standard', 'irc-2021', '--from', '24 in', '--to',
                            '25 in')
        required = {cell['value']['text']: cell['required']['text']
                    for cell in narrow['lines'][0]['values']}
        self.assertEqual((required['24 5/8 in'], required['24 11/16 in']), ('16 in', '20 in'))

    def test_the_step_on_the_millimetre(self):
        swept = self.sweep(PLAIN, 'opening.height', '--rule', 'hearth-front', '--standard',
                           'irc-2021', '--unit', 'mm', '--from', '600 mm', '--to', '620 mm')
        required = {cell['value']['text']: cell['required']['text']
                    for cell in swept['lines'][0]['values']}
        # 24 in are 609.6 mm.
        self.assertEqual((required['609 mm'], required['610 mm']), ('406.4 mm', '508 mm'))

    def test_choices_and_flags(self):
        liners = next(each for each in asked('list', 'quantities') if each['id'] == 'flue.liner')
        document = dict(PLAIN, survey={key: value for key, value in PLAIN['survey'].items()
                                       if key != 'flue'})
        swept, _ = self.hold(document, 'flue.liner')
        self.assertTrue(swept['lines'])
        names = [each['id'] for each in liners['choices']]
        for line in swept['lines']:
            shown = [cell['value']['text'] for cell in line['values']]
            self.assertEqual(shown, [name for name in names if name in shown])

    def test_a_value_that_contradicts_has_no_cells(self):
        document = dict(PLAIN, survey=dict(PLAIN['survey'],
                                           flue={'shape': 'square', 'width': 12}))
        swept, _ = self.hold(document, 'flue.depth', '--from', '11 in', '--to', '13 in')
        self.assertTrue(swept['lines'])


class Csv(unittest.TestCase):
    """RFC 4180: CR LF, a header, as many fields in each record; the same as the JSON."""

    def records(self, *words, given=PLAIN):
        text = ran('sweep', *words, '--format', 'csv', given=given)
        self.assertTrue(text.endswith('\r\n'))
        self.assertEqual(text.count('\n'), text.count('\r\n'))
        rows = list(csv.reader(io.StringIO(text, newline=''), strict=True))
        self.assertEqual(rows[0], COLUMNS)
        self.assertEqual({len(row) for row in rows}, {len(COLUMNS)})
        return [dict(zip(COLUMNS, row)) for row in rows[1:]]

    def expected(self, *words, given=PLAIN):
        swept = asked('sweep', *words, given=given)
        found = {}
        for line in swept['lines']:
            for cell in line['values']:
                found[(self.written(cell['value']), *matter(line))] = cell
        return found

    @staticmethod
    def written(shown):
        if shown is None:
            return ''
        return str(shown['value']) if 'value' in shown else shown['text']

    def same(self, written, shown, message):
        """Numbers are the same to the last decimal; words are the same words."""
        if shown is None or 'value' not in shown:
            self.assertEqual(written, self.written(shown), message)
        else:
            self.assertEqual(Fraction(written), Fraction(str(shown['value'])), message)

    def test_it_is_the_json(self):
        for words in (('--quantity', 'opening.height', '--from', '20 in', '--to', '30 in',
                       '--step', '1/4 in', '--unit', 'in'),
                      ('--quantity', 'opening.height', '--from', '20 in', '--to', '30 in',
                       '--step', '1/4 in', '--unit', 'mm', '--all'),
                      ('--quantity', 'trim[0].distance', '--from', '2 in', '--to', '14 in',
                       '--step', '1/4 in', '--unit', 'in', '--all'),
                      ('--quantity', 'flue.shape', '--all', '--unit', 'in')):
            with self.subTest(words):
                document = PLAIN
                if words[1] == 'flue.shape':
                    document = dict(PLAIN, survey=dict(PLAIN['survey'], flue={'height': 240}))
                expected, seen = self.expected(*words, given=document), set()
                for row in self.records(*words, given=document):
                    key = next(key for key in expected if key[1:] == (
                        row['standard'], row['rule'], self.subject(row['subject']))
                        and self.same_number(key[0], row['value']))
                    self.assertNotIn(key, seen)
                    seen.add(key)
                    self.hold(row, expected[key])
                self.assertEqual(seen, set(expected))

    @staticmethod
    def same_number(one, other):
        try:
            return Fraction(one) == Fraction(other)
        except ValueError:
            return one == other

    @staticmethod
    def subject(path):
        return pointer(path)

    def hold(self, row, cell):
        for name in ('section', 'verdict', 'relation'):
            self.assertEqual(row[name], cell[name])
        self.assertEqual(row['unit'], cell['value'].get('unit', ''))
        for name in PARTS:
            self.same(row[name], cell.get(name), (name, row, cell))
        units = {cell[name]['unit'] for name in PARTS if name in cell and 'unit' in cell[name]}
        if units:
            self.assertEqual({row['unit of the rule']}, units)


class Plot(unittest.TestCase):
    def test_it_is_svg_of_what_was_asked(self):
        text = ran('sweep', '--quantity', 'opening.height', '--from', '20 in', '--to', '30 in',
                   '--rule', 'hearth-front', '--format', 'svg', given=PLAIN)
        tree = ElementTree.fromstring(text)
        self.assertEqual(tree.tag, '{http://www.w3.org/2000/svg}svg')
        words = ' '.join(' '.join(each.itertext()) for each in tree)
        for word in ('20', '30', 'irc-2021', 'irc-2000'):
            self.assertIn(word, words)
        for name in ('title', 'desc'):
            self.assertIsNotNone(tree.find('{http://www.w3.org/2000/svg}' + name))
        self.assertFalse(re.search(r'(nan|inf)\b', text, re.I))


if __name__ == '__main__':
    unittest.main()
