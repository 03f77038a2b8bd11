# SPDX-License-Identifier: MIT
"""`ingle solve` against brute force: every value of the grid by `ingle check` alone.

No value is reckoned here but the grid's; what does is worked out anew from the verdicts of single
checks, as include/ingle/solve.h promises it.
"""
import unittest
from fractions import Fraction

from judging import asked, changed, example, matter, pointer, reports

INCH = Fraction(1)
PLAIN = {'standards': ['irc-2021'],
         'survey': {'appliance': {'kind': 'masonry-fireplace'},
                    'opening': {'width': '36 in', 'height': '28 in'},
                    'hearth': {'front': '19 15/16 in', 'left': '10 in', 'right': '12 in'},
                    'trim': [{'label': 'shelf', 'side': 'above', 'combustible': True,
                              'distance': '9 in', 'projection': '2 in'}],
                    'flue': {'shape': 'round', 'diameter': '10 in', 'height': '20 ft'}}}
# Measures with tolerances, by an old and a new edition together.
BLURRED = dict(PLAIN, standards=['irc-2000', 'irc-2021'], tolerance='1/2 in')
METRIC = {'standards': ['obc-2012'], 'unit': 'mm',
          'survey': {'appliance': {'kind': 'masonry-fireplace'},
                     'opening': {'width': 900, 'height': 700},
                     'hearth': {'front': 450, 'left': 200, 'right': 210}}}


def text_of(value, unit):
    whole, rest = divmod(value, 1)
    if unit != 'in' or rest == 0:
        return f'{float(value):.4f} {unit}' if rest else f'{whole} {unit}'
    return f'{whole} {rest.numerator}/{rest.denominator} {unit}'


def grid(least, most, step):
    first = -(-Fraction(least) // step)
    return [step * place for place in range(int(first), int(Fraction(most) // step) + 1)]


class BruteForce:
    """What single checks find at every value."""

    def __init__(self, document, path, values, *options, rule=None, strict=False):
        bad = ('fails', 'too-close') if strict else ('fails',)
        self.values, self.failing = values, []
        for report in reports([changed(document, path, value) for value in values], *options):
            self.failing.append(None if 'error' in report else self.margins(report, bad, rule))
        judged = [each for each in self.failing if each is not None]
        always = set.intersection(*map(set, judged)) if judged else set()
        moved = {each for each in always
                 if each[2] == pointer(path) or len({found[each] for found in judged}) > 1}
        self.aside = always - moved
        self.does = [found is not None and not moved and set(found) == self.aside
                     for found in self.failing]

    @staticmethod
    def margins(report, bad, rule):
        """The worst margin of everything that fails."""
        found = {}
        for finding in report['findings']:
            if finding['verdict'] in bad and rule in (None, finding['rule']):
                margin = finding.get('margin', {}).get('value', 0)
                known = found.get(matter(finding))
                found[matter(finding)] = margin if known is None else min(known, margin)
        return found

    def intervals(self):
        found, begun = [], None
        for place, does in enumerate(self.does + [False]):
            if does and begun is None:
                begun = place
            elif not does and begun is not None:
                found.append((begun, place - 1))
                begun = None
        return found

    def stops(self, place):
        """The rules that fail at a place, beyond those that always do; None past the ends."""
        if not 0 <= place < len(self.values) or self.failing[place] is None:
            return None
        return {each[:2] for each in set(self.failing[place]) - self.aside}


class Solve(unittest.TestCase):
    def solve(self, document, path, values, unit, *options, rule=None, strict=False,
              check_options=()):
        """The answer, after it was held against brute force."""
        step = values[1] - values[0]
        words = ['--quantity', path, '--from', text_of(values[0], unit), '--to',
                 text_of(values[-1], unit), '--step', text_of(step, unit), *options,
                 *check_options]
        words += ['--rule', rule] if rule else []
        words += ['--strict'] if strict else []
        answer = asked('solve', *words, '--unit', unit, given=document)
        texts = [text_of(each, unit) for each in values]
        force = BruteForce(document, path, texts, *check_options, rule=rule, strict=strict)
        self.hold(answer, force, values)
        return answer, force

    def hold(self, answer, force, values):
        expected = [(values[first], values[last]) for first, last in force.intervals()]
        got = [(exact(each['from']), exact(each['to'])) for each in answer['works']]
        self.assertEqual(got, expected)
        for (first, last), each in zip(force.intervals(), answer['works']):
            for name, place in (('below', first - 1), ('above', last + 1)):
                stops = force.stops(place)
                self.assertEqual(name in each, stops is not None)
                if stops is not None:
                    self.assertIn((each[name]['standard'], each[name]['rule']), stops)
        self.assertEqual({(each['standard'], each['rule']) for each in answer['aside']},
                         {each[:2] for each in force.aside})
        self.nearest(answer, [value for value, does in zip(values, force.does) if does])

    def nearest(self, answer, doing):
        if 'surveyed' not in answer:
            self.assertNotIn('nearest', answer)
            return
        now = exact(answer['surveyed']['value'])
        for name, fitting in (('below', [each for each in doing if each < now]),
                              ('above', [each for each in doing if each > now])):
            found = answer['nearest'].get(name)
            self.assertEqual(found is not None, bool(fitting), name)
            if fitting:
                due = max(fitting) if name == 'below' else min(fitting)
                self.assertEqual(exact(found['to']), due)
                self.assertEqual(exact(found['change']), due - now)


def exact(shown):
    return Fraction(str(shown['value']))


class Lengths(Solve):
    def test_hearth_on_the_sixteenth(self):
        answer, force = self.solve(PLAIN, 'hearth.front', grid(14, 24, INCH / 16), 'in')
        # R1001.10: 6 ft2 and more (36 in x 28 in) need 20 in.
        self.assertEqual([each['from']['text'] for each in answer['works']], ['20 in'])
        self.assertEqual(answer['nearest']['above']['change']['text'], '1/16 in')
        self.assertFalse(answer['surveyed']['works'])
        self.assertTrue(force.aside)

    def test_opening_just_below_six_square_feet(self):
        """R1001.10 asks for 20 in, not 16 in, from 6 ft2: 36 in x 24 in is 6 ft2 exactly."""
        answer, _ = self.solve(PLAIN, 'opening.height', grid(20, 30, INCH / 16), 'in',
                               rule='hearth-front')
        self.assertEqual([(each['from']['text'], each['to']['text']) for each in answer['works']],
                         [('20 in', '23 15/16 in')])
        self.assertEqual(answer['works'][0]['above']['rule'], 'hearth-front')
        self.assertNotIn('below', answer['works'][0])

    def test_quantities_of_every_kind_of_place(self):
        for path, least, most, step in (
                ('opening.width', 24, 60, INCH / 2), ('opening.height', 20, 50, INCH / 2),
                ('hearth.left', 4, 16, INCH / 4), ('trim[0].distance', 4, 14, INCH / 8),
                ('trim[0].projection', 0, 6, INCH / 8), ('flue.diameter', 5, 16, INCH / 8),
                ('firebox.depth', 10, 30, INCH / 2)):
            with self.subTest(path):
                self.solve(PLAIN, path, grid(least, most, step), 'in')

    def test_tolerances_and_strict(self):
        for strict in (False, True):
            for path in ('hearth.front', 'opening.height', 'trim[0].distance'):
                with self.subTest(path, strict=strict):
                    self.solve(BLURRED, path, grid(12, 30, INCH / 8), 'in', strict=strict)
        lax, _ = self.solve(BLURRED, 'hearth.front', grid(16, 24, INCH / 8), 'in',
                            rule='hearth-front')
        strict, _ = self.solve(BLURRED, 'hearth.front', grid(16, 24, INCH / 8), 'in',
                               rule='hearth-front', strict=True)
        self.assertLess(exact(lax['works'][0]['from']), 20)
        self.assertGreater(exact(strict['works'][0]['from']), 20)

    def test_on_the_millimetre(self):
        answer, _ = self.solve(METRIC, 'hearth.front', grid(350, 500, Fraction(1)), 'mm')
        self.assertTrue(answer['works'])
        self.solve(METRIC, 'opening.height', grid(500, 900, Fraction(10)), 'mm')
        self.solve(METRIC, 'hearth.left', grid(150, 250, Fraction(1)), 'mm')

    def test_readings_and_amendments_are_kept(self):
        town = dict(PLAIN, amendments=[{'standard': 'irc-2021', 'rule': 'hearth-front',
                                        'set': {'large': '22 in'}, 'citation': 'by-law 7-2'}])
        answer, _ = self.solve(town, 'hearth.front', grid(16, 24, INCH / 4), 'in',
                               rule='hearth-front')
        self.assertEqual(answer['works'][0]['from']['text'], '22 in')
        for option in ('whole-steps', 'round-up'):
            self.solve(METRIC, 'opening.height', grid(600, 800, Fraction(20)), 'mm',
                       check_options=('--reading', f'hearth-steps={option}'))

    def test_what_is_not_recorded(self):
        bare = {'standards': ['irc-2021'], 'survey': {'appliance': {'kind': 'masonry-fireplace'}}}
        answer, _ = self.solve(bare, 'firebox.depth', grid(10, 30, INCH / 2), 'in')
        self.assertNotIn('surveyed', answer)
        self.assertEqual(answer['works'][0]['from']['text'], '20 in')      # R1001.11.1: 20 in

    def test_the_surveyed_value_off_the_grid(self):
        for front in ('19 1/3 in', '20.01 in', '507.9 mm', '30 in'):
            document = changed(PLAIN, 'hearth.front', front)
            answer, _ = self.solve(document, 'hearth.front', grid(16, 24, INCH / 16), 'in',
                                   rule='hearth-front')
            verdict = [each['verdict'] for each in reports([document])[0]['findings']
                       if each['rule'] == 'hearth-front']
            self.assertEqual(answer['surveyed']['works'], verdict == ['meets'])

    def test_examples(self):
        for path, file, values in (
                ('opening.height', 'heron-weir/living-room.json', grid(20, 40, INCH / 4)),
                ('hearth.front', 'heron-weir/study-insert.json', grid(8, 30, INCH / 4)),
                ('opening.width', 'heron-weir/nursery.json', grid(20, 50, INCH / 2)),
                ('flue.height', 'thistle-end-farm/kitchen.json', grid(100, 300, INCH * 4)),
                ('hearth.front', 'lamplighter-row/bedroom.json', grid(8, 30, INCH / 4))):
            for strict in (False, True):
                with self.subTest(file, strict=strict):
                    self.solve(example(file), path, values, 'in', strict=strict)


class Words(Solve):
    """Choices and flags take all their values."""

    def check(self, document, path, texts, values=None, **asked_for):
        words = ['--quantity', path]
        for name, value in asked_for.items():
            words += ['--' + name] + ([value] if isinstance(value, str) else [])
        answer = asked('solve', *words, given=document)
        force = BruteForce(document, path, values or texts,
                           rule=asked_for.get('rule'), strict='strict' in asked_for)
        shown = [(each['from']['text'], each['to']['text']) for each in answer['works']]
        self.assertEqual(shown, [(texts[a], texts[b]) for a, b in force.intervals()])
        return answer

    def test_every_choice_and_flag(self):
        quantities = asked('list', 'quantities')
        document = example('heron-weir/living-room.json')
        seen = 0
        for quantity in quantities:
            if quantity.get('repeats') or quantity['dimension'] not in ('choice', 'flag'):
                continue
            with self.subTest(quantity['id']):
                seen += 1
                if quantity['dimension'] == 'flag':
                    self.check(document, quantity['id'], ['no', 'yes'], [False, True])
                else:
                    self.check(document, quantity['id'],
                               [each['id'] for each in quantity['choices']])
        self.assertGreater(seen, 20)

    def test_a_liner(self):
        """Flue sizes by their nominal sizes: those for which the flue is large enough."""
        document = changed(PLAIN, 'flue.liner', None)
        document['survey']['flue'] = {}
        liners = next(each for each in asked('list', 'quantities') if each['id'] == 'flue.liner')
        answer = self.check(document, 'flue.liner', [each['id'] for each in liners['choices']],
                            rule='flue-area')
        self.assertTrue(answer['works'])


class Frontier(Solve):
    def test_each_row_is_a_solution(self):
        cases = ((PLAIN, 'opening.height', grid(20, 36, INCH / 2), 'flue.diameter',
                  grid(6, 14, INCH)),
                 (PLAIN, 'trim[0].projection', grid(0, 6, INCH / 8), 'trim[0].distance',
                  grid(4, 14, INCH)),
                 (BLURRED, 'hearth.front', grid(14, 22, INCH / 4), 'opening.height',
                  grid(22, 26, INCH / 2)))
        for document, path, values, other, others in cases:
            with self.subTest(path, other=other):
                answer = asked('solve', '--quantity', path, '--from', text_of(values[0], 'in'),
                               '--to', text_of(values[-1], 'in'), '--step',
                               text_of(values[1] - values[0], 'in'), '--with', other,
                               '--with-from', text_of(others[0], 'in'), '--with-to',
                               text_of(others[-1], 'in'), '--with-step',
                               text_of(others[1] - others[0], 'in'), '--unit', 'in',
                               given=document)
                self.assertEqual([exact(each['value']) for each in answer['frontier']], others)
                texts = [text_of(each, 'in') for each in values]
                for value, row in zip(others, answer['frontier']):
                    there = changed(document, other, text_of(value, 'in'))
                    force = BruteForce(there, path, texts)
                    self.assertEqual(
                        [(exact(each['from']), exact(each['to'])) for each in row['works']],
                        [(values[a], values[b]) for a, b in force.intervals()])

    def test_forty_values_without_a_step(self):
        for words in ((), ('--unit', 'mm')):
            answer = asked('solve', '--quantity', 'hearth.front', '--from', '16 in', '--to',
                           '20 in', '--step', '1 in', '--with', 'opening.height', *words,
                           given=PLAIN)
            found = [exact(each['value']) for each in answer['frontier']]
            self.assertLessEqual(len(found), 41)
            self.assertGreater(len(found), 10)
            steps = {b - a for a, b in zip(found, found[1:])}
            self.assertEqual(len(steps), 1)
            # Twice a graduation, and twice, and twice: or 1, 2, 5, 10 mm and so on.
            step = steps.pop()
            if words:
                self.assertIn(str(step).rstrip('0'), ('1', '2', '5'))
            else:
                self.assertEqual((step * 16).numerator & (step * 16).numerator - 1, 0)


class Gaps(Solve):
    def test_a_flue_that_grows_too_oblong(self):
        """R1003.15.1: 1/10 of the opening, but 1/8 from an aspect ratio of 2 to 1 on.

        36 in x 33 in are 1188 in2: 15 in x 8 in are 120 in2, a tenth; 16 in x 8 in are twice as
        wide as deep and have to be an eighth, 148.5 in2, which 18 3/4 in x 8 in are.
        """
        document = changed(PLAIN, 'opening.height', '33 in')
        document['survey']['flue'] = {'shape': 'rectangular', 'width': '12 in', 'depth': '8 in'}
        answer, _ = self.solve(document, 'flue.width', grid(4, 30, INCH / 4), 'in')
        self.assertEqual([(each['from']['text'], each['to']['text']) for each in answer['works']],
                         [('15 in', '15 3/4 in'), ('18 3/4 in', '30 in')])
        self.assertEqual(answer['nearest']['above']['to']['text'], '15 in')
        self.assertNotIn('below', answer['nearest'])
        between = changed(document, 'flue.width', '17 in')
        answer, _ = self.solve(between, 'flue.width', grid(4, 30, INCH / 4), 'in')
        self.assertEqual([answer['nearest'][name]['change']['text'] for name in ('below', 'above')],
                         ['-1 1/4 in', '1 3/4 in'])

    def test_a_value_that_contradicts(self):
        """A flue that is said to be square has one side: another depth cannot be so."""
        document = changed(PLAIN, 'flue.shape', 'square')
        document['survey']['flue'] = {'shape': 'square', 'width': '12 in'}
        single = reports([changed(document, 'flue.depth', f'{depth} in') for depth in (8, 12)])
        answer, force = self.solve(document, 'flue.depth', grid(8, 16, INCH / 2), 'in')
        self.assertEqual('error' in single[0], force.failing[0] is None)
        self.assertEqual([each for each in answer['works']
                          if exact(each['from']) <= 8 <= exact(each['to'])] != [],
                         force.does[0])


if __name__ == '__main__':
    unittest.main()
