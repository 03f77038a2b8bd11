# SPDX-License-Identifier: MIT
"""The `ingle` command against the oracle, over thousands of made-up surveys.

What must come out is recomputed in rules.py from the publications named there. INGLE_COMMAND is
the command's path.
"""
import copy
import os
import subprocess
import unittest
from decimal import Decimal
from fractions import Fraction
from itertools import islice

import amounts
import generate
import rules

SURVEYS = 2800
BATCH = 100
SHOWN = 4
PLACES = Fraction(1, 10 ** 9)
GRADUATION = {('length', 'in'): amounts.IN // 16, ('length', 'mm'): amounts.NM_PER_MM,
              ('area', 'in'): amounts.IN2, ('area', 'mm'): 100 * amounts.NM_PER_MM ** 2}


def run(lines, *options):
    """One process over all lines; the reports in their order."""
    command = [os.environ['INGLE_COMMAND'], 'check', '--lines', '--no-working', *options]
    done = subprocess.run(command, input='\n'.join(lines) + '\n', capture_output=True,
                          encoding='utf-8', check=False)
    if done.returncode != 0:
        raise AssertionError(f'{command} ended with {done.returncode}: {done.stderr[:2000]}')
    reports = [generate.read(line) for line in done.stdout.split('\n')[:-1]]
    if len(reports) != len(lines):
        raise AssertionError(f'{len(lines)} surveys gave {len(reports)} reports')
    return reports


def streamed(lines, *options):
    """The same in batches: thousands of reports at once would fill the memory."""
    lines = iter(lines)
    while batch := list(islice(lines, BATCH)):
        yield from run(batch, *options)


def judged_once(trials, *options):
    """(what belongs to it, report) of each trial, (document's line, what belongs to it): documents
    that are alike are judged once."""
    alike = {}
    for line, each in trials:
        alike.setdefault(line, []).append(each)
    for each, report in zip(alike.values(), streamed(alike, *options)):
        for one in each:
            yield one, report


def same_amount(shown, value, dimension):
    """Whether a report's amount is this number of base units, to the places that it shows."""
    if shown is None or value is None:
        return shown is None and value is None
    if dimension == 'state':
        return shown['text'] == {True: 'yes', False: 'no'}.get(value, value)
    if dimension == 'count':
        return shown['value'] == value
    exact = Fraction(value, amounts.UNITS[dimension][shown['unit']])
    written = Fraction(shown['value'])
    return abs(written - exact) <= PLACES / 2 and (written / PLACES).denominator == 1


def reading_of(finding):
    """Which of the two readings of a liner's aspect ratio a finding follows."""
    text = finding.get('reading') or ''
    if finding['rule'] != 'flue-area':
        return None
    both = [word for word in ('outside', 'inside') if word in text]
    return both[0] if len(both) == 1 else None


def key_of(finding):
    return (finding['standard'], finding['rule'], finding['subject'], reading_of(finding) or '')


def differences(expected, got):
    """What of one finding differs, in words."""
    found = []
    if got['verdict'] != expected.verdict:
        found.append(f'verdict {got["verdict"]}, not {expected.verdict}')
    if got['relation'] != expected.relation:
        found.append(f'relation {got["relation"]}, not {expected.relation}')
    if expected.verdict != 'not-applicable':
        for name in ('required', 'measured', 'margin', 'usual'):
            value = getattr(expected, name)
            if not same_amount(got.get(name), value, expected.dimension):
                found.append(f'{name} {got.get(name)}, not {value} base units')
    return found


def told_here(finding):
    """Whether the oracle tells the finding's rule; the others have tests of their own."""
    return finding['rule'] in generate.rules_of(finding['standard'])


def verdict_of(finding):
    return finding['verdict']


def only_applying(findings, key, verdict):
    """Of rows of one rule on one subject those that apply; where none does, one of them."""
    rows = {}
    for each in findings:
        rows.setdefault(key(each), []).append(each)
    return [each for same in rows.values()
            for each in ([one for one in same if verdict(one) != 'not-applicable'] or same[:1])]


def compare(line, report):
    """Everything in which a report differs from the oracle."""
    document, found = generate.read(line), []
    expected = [each for standard in document['standards']
                for each in rules.check(document, standard)]
    if 'findings' not in report:
        return [f'no findings: {report}']
    want = {(each.standard, each.rule, each.subject, each.reading or ''): each
            for each in only_applying(expected, lambda each: each[:3], lambda each: each.verdict)}
    findings = only_applying([each for each in report['findings'] if told_here(each)],
                             lambda each: key_of(each)[:3], verdict_of)
    have = {key_of(each): each for each in findings}
    # What is not measured may be so for an exception and for what it stands in for.
    measured = [each for each in findings if each['verdict'] != 'unmeasured']
    if len({key_of(each) for each in measured}) != len(measured):
        found.append('a finding came twice')
    found += [f'missing: {key} {want[key].verdict}' for key in want if key not in have]
    found += [f'unexpected: {key} {have[key]["verdict"]}' for key in have if key not in want]
    for key in want:
        if key in have:
            parts = differences(want[key], have[key])
            found += [f'{key}: {"; ".join(parts)}\n    oracle {want[key]}\n    command {have[key]}'
                      ] if parts else []
    gravest = max((each['verdict'] for each in report['findings']), key=rules.GRAVITY.index,
                  default='not-applicable')
    if report['verdict'] != gravest:
        found.append(f'overall {report["verdict"]}, not {gravest}')
    return found


def base_text(value, dimension):
    """An amount in millimetres or square millimetres, with all its digits."""
    unit = {'length': 'mm', 'area': 'mm2'}[dimension]
    return f'{generate.decimal(Fraction(value, amounts.UNITS[dimension][unit]))} {unit}'


def place(document, pointer):
    """The group or item that holds a subject, and the subject's name in it."""
    *path, name = pointer.split('/')[2:]
    holder = document['survey']
    for step in path:
        holder = holder[int(step)] if isinstance(holder, list) else holder.setdefault(step, {})
    return holder, name


def changed(document, pointer, value):
    """The document with one member changed; an amount keeps the tolerance it had.

    What is not on the way to the member is shared with the document.
    """
    document = dict(document)
    holder, name = document, 'survey'
    for step in pointer.split('/')[2:]:
        within = copy.copy(holder.get(name, {}) if isinstance(holder, dict) else holder[name])
        holder[name] = within
        holder, name = within, int(step) if isinstance(within, list) else step
    before = holder.get(name)
    if isinstance(before, dict) and 'tolerance' in before:
        value = {'value': value, 'tolerance': before['tolerance']}
    holder[name] = value
    return document


def relined(document, liner):
    """The document with a new liner in the flue: what was measured of the old flue is gone."""
    return document | {'survey': document['survey'] | {'flue': {'liner': liner}}}


class Case(unittest.TestCase):
    def report(self, problems):
        if problems:
            shown = '\n\n'.join(problems[:SHOWN])
            self.fail(f'{len(problems)} differ, the first of them:\n{shown}')


class Findings(Case):
    def compare_all(self, lines, *options):
        problems = []
        for line, report in zip(lines, streamed(lines, '--all', *options)):
            found = compare(line, report)
            if found:
                problems.append(f'document {line}\n  ' + '\n  '.join(found))
        self.report(problems)

    def test_every_finding_in_millimetres(self):
        self.compare_all(generate.lines(SURVEYS), '--unit', 'mm')

    def test_every_finding_in_the_units_of_the_document(self):
        self.compare_all(generate.lines(SURVEYS // 8, seed='units'))

    def test_contradictions(self):
        lines = []
        for liner in generate.LINERS:
            for shape in ('round', 'square', 'rectangular'):
                lines.append(generate.written({
                    'standards': ['irc-2021'],
                    'survey': {'appliance': {'kind': 'masonry-fireplace'},
                               'flue': {'liner': liner, 'shape': shape}}}))
        problems = []
        for line, report in zip(lines, streamed(lines)):
            try:
                rules.check(generate.read(line), 'irc-2021')
                expected = False
            except rules.Contradiction:
                expected = True
            if ('error' in report) != expected:
                problems.append(f'document {line}: {report}')
        self.report(problems)


    def test_overflow_points_at_something_recorded(self):
        """Both sides are plausible; their product is more than 64 bits of nm2 hold."""
        line = generate.written({
            'standards': ['irc-2021'],
            'survey': {'appliance': {'kind': 'masonry-fireplace'},
                       'opening': {'width': '240 in', 'height': '144 in'}}})
        error = run([line])[0]['error']
        self.assertEqual(error['code'], 'overflow')
        self.assertIn(error['at'], ('/survey/opening', '/survey/opening/width',
                                    '/survey/opening/height', '/survey/opening/area'))


class Circles(Case):
    """A round flue's area is right to the square nanometre, down as a capacity, up as a demand."""

    def test_round_flues(self):
        source, problems, lines = generate.Source('circles'), [], []
        for _ in range(2000):
            diameter = source.whole(100 * amounts.NM_PER_MM, 600 * amounts.NM_PER_MM)
            area = rules.circle(diameter)
            lines.append(generate.written({
                'standards': ['irc-2021'],
                'survey': {'appliance': {'kind': 'masonry-fireplace'},
                           'flue': {'diameter': base_text(diameter, 'length')},
                           'opening': {'area': base_text(12 * area, 'area')},
                           'throat': {'area': base_text(area, 'area')},
                           'damper': {'area': base_text(area + 1, 'area')}}}))
        for line, report in zip(lines, streamed(lines)):
            verdicts = {each['subject']: each['verdict'] for each in report['findings']}
            for subject, expected in (('flue/net-area', 'meets'), ('throat/area', 'fails'),
                                      ('damper/area', 'meets')):
                if verdicts['/survey/' + subject] != expected:
                    problems.append(f'document {line}\n  {subject} is not {expected}')
        self.report(problems)


class Missing(Case):
    """What a finding says is missing is not there, and once it is there the rule is judged."""

    FILLING = {'length': '10 in', 'area': '100 in2', 'angle': '10 deg', 'slope': '6/12',
               'count': '2'}

    @staticmethod
    def asked_whether(before, after):
        """Whether it was only asked whether the rule applies at all; now it asks for measures."""
        return (len(before['missing']) == 1 and 'required' not in before
                and before['missing'][0] not in after['missing'])

    def filled(self, document, finding):
        for pointer in finding['missing']:
            name = '.'.join(part for part in pointer.split('/')[2:] if not part.isdigit())
            if name in ('trim', 'nearby'):
                value = []
            elif name == 'appliance.kind':
                value = 'insert' if finding['standard'] == rules.COMMON else 'masonry-fireplace'
            elif name in rules.QUANTITIES:
                value = self.FILLING[rules.QUANTITIES[name]]
            else:
                value = rules.FILLING[name]
            document = changed(document, pointer, value)
        return document

    def recorded(self, document, pointer):
        *path, name = pointer.split('/')[1:]
        for step in path:
            document = (document[int(step)] if isinstance(document, list)
                        else document.get(step, {}))
        return name in document

    def summary(self, report):
        """The report's own list of what is missing, from its findings."""
        rules_of = {}
        for finding in report['findings']:
            for pointer in finding.get('missing', ()):
                rules_of.setdefault(pointer, set()).add(finding['rule'])
        return rules_of

    def test_missing_quantities(self):
        lines, problems, trials = generate.lines(300, seed='missing', full=False), [], []
        for line, report in zip(lines, streamed(lines)):
            document = generate.read(line)
            listed = {each['quantity']: set(each['for']) for each in report['unmeasured']}
            if listed != self.summary(report):
                problems.append(f'document {line}\n  lists {listed}, not {self.summary(report)}')
            for finding in report['findings']:
                missing = finding.get('missing', ())
                if bool(missing) != (finding['verdict'] in ('unmeasured', 'by-listing')) or any(
                        self.recorded(document, pointer) for pointer in missing):
                    problems.append(f'document {line}\n  {finding}')
                elif missing and told_here(finding):
                    trial = generate.written(self.filled(document, finding))
                    trials.append((trial, (line, finding, trial)))
        self.assertGreater(len(trials), 500, 'hardly anything is missing')
        for (line, finding, trial), report in judged_once(trials):
            left = [each for each in report.get('findings', ()) if each['verdict'] == 'unmeasured'
                    and each['standard'] == finding['standard']
                    and each['subject'] == finding['subject'] and each['rule'] == finding['rule']]
            more = [each for each in left if not self.asked_whether(finding, each)]
            if 'error' in report or more:
                problems.append(f'document {line}\n  with {finding["missing"]} recorded:\n'
                                f'  tried {trial}\n  {left or report}')
        self.report(problems)


class Remedies(Case):
    """A remedy does what it says, and one graduation less does not."""

    def trials(self, lines, unit):
        """(document, finding, remedy, changed document, whether it must be met) of each remedy."""
        for line, report in zip(lines, streamed(lines, '--unit', unit)):
            document = generate.read(line)
            for finding in report['findings']:
                single = document | {'standards': [finding['standard']]}
                single['amendments'] = [each for each in document.get('amendments', ())
                                        if each['standard'] == finding['standard']]
                for remedy in finding.get('remedy', ()):
                    for trial, met in self.tries(single, finding, remedy, unit):
                        yield line, finding, remedy, trial, met

    def tries(self, document, finding, remedy, unit):
        pointer, target = remedy['change'], remedy['to']
        if pointer.endswith('/liner'):
            liner = target if isinstance(target, str) else target['text']
            yield relined(document, liner), True
            table = (rules.ROUND_LINERS if liner in rules.ROUND_LINERS
                     else rules.RECTANGULAR_LINERS)
            for other in table:
                if table[other] < table[liner]:
                    yield relined(document, other), False
            return
        group, name = pointer.split('/')[2], pointer.rsplit('/', 1)[1]
        dimension = rules.QUANTITIES[f'{group}.{name}']
        yield changed(document, pointer, f'{target["value"]} {target["unit"]}'), True
        if dimension not in ('length', 'area'):
            return
        value = amounts.read(f'{target["value"]} {target["unit"]}', dimension)
        before = self.present(document, pointer, finding)
        step = GRADUATION[dimension, unit] * (-1 if value > before else 1)
        if abs(value - before) > abs(step):
            yield changed(document, pointer, base_text(value + step, dimension)), False

    def present(self, document, pointer, finding):
        """What is there now of the quantity to change, or of what it stands for."""
        survey, key = rules.Survey(document), pointer.removeprefix('/survey/')
        if survey.has(key):
            return survey.values[key][0]
        if key == 'opening/area':
            return survey.opening().value(survey.point())
        shown = finding['measured']
        dimension = rules.QUANTITIES['.'.join(part for part in key.split('/')
                                              if not part.isdigit())]
        return amounts.nearest(Fraction(shown['value'])
                               * amounts.UNITS[dimension][shown['unit']])

    def check_remedies(self, unit):
        lines = generate.lines(160, seed=f'remedies {unit}')
        trials = list(self.trials(lines, unit))
        self.assertGreater(len(trials), 500, 'hardly any remedies to try')
        reports = streamed((generate.written(trial) for _, _, _, trial, _ in trials), '--all')
        problems = []
        for (line, finding, remedy, trial, met), report in zip(trials, reports):
            after = {each['verdict'] for each in report.get('findings', ())
                     if each['rule'] == finding['rule'] and each['subject'] == finding['subject']
                     and (reading_of(finding) == reading_of(each)
                          or None in (reading_of(finding), reading_of(each)))}
            done = bool(after) and after <= {'meets', 'not-applicable'}
            if not met and finding['rule'] in rules.ORDINARY + rules.EXCEPTION:
                done = after == {'meets'}     # else the other rules of R1001.6 are met instead
            if done != met:
                what = 'does not meet the rule' if met else 'met the rule already with less'
                shown = {name: finding.get(name) for name in
                         ('standard', 'rule', 'subject', 'verdict', 'measured', 'required')}
                problems.append(f'document {line}\n  finding {generate.written(shown)}\n'
                                f'  remedy {generate.written(remedy)} {what}: {after}\n'
                                f'  tried {generate.written(trial)}')
        self.report(problems)

    def test_on_the_sixteenth_of_an_inch(self):
        self.check_remedies('in')

    def test_on_the_millimetre(self):
        self.check_remedies('mm')


class Tolerances(Case):
    """No point within the tolerances contradicts what was said of all of them."""

    POINTS = 12
    FORBIDDEN = {'meets': {'fails'}, 'fails': {'meets', 'not-applicable'},
                 'not-applicable': {'fails'}}
    SETTLED = FORBIDDEN | {'fails': {'meets'}}      # the other rules of R1001.6 may be met there

    def within(self, source, document):
        """The document with every measure at some point of its box and no tolerance."""
        survey = rules.Survey(document)
        point = copy.deepcopy(document)
        point.pop('tolerance', None)
        for key in survey.values:
            holder, name = place(point, '/survey/' + key)
            group = key.split('/')[0]
            dimension = rules.QUANTITIES[f'{group}.{name}']
            low, high = survey.box(key)
            low = max(low, generate.SMALLEST.get(f'{group}.{name}', 0))
            value = source.one((low, high, source.whole(low, high), source.whole(low, high)))
            if dimension == 'angle':
                value -= value % 9              # its decimals in degrees end
            holder[name] = generate.exact_text(source, value, dimension)
        return point

    def test_points_within(self):
        source = generate.Source('points within')
        lines = generate.lines(100, seed='tolerances', uncertain=True, full=True)
        reports = run(lines, '--all')
        points = [generate.written(self.within(source, generate.read(line)))
                  for line in lines for _ in range(self.POINTS)]
        judged = streamed(points, '--all')
        problems = []
        for index, report in enumerate(reports):
            whole = {key_of(each): verdict_of(each)
                     for each in only_applying(report['findings'], key_of, verdict_of)}
            for at in range(index * self.POINTS, (index + 1) * self.POINTS):
                told = filter(told_here, next(judged).get('findings', ()))
                for each in only_applying(told, key_of, verdict_of):
                    said = whole.get(key_of(each))
                    rumford = each['rule'] in rules.ORDINARY + rules.EXCEPTION
                    forbidden = self.SETTLED if rumford else self.FORBIDDEN
                    if each['verdict'] in forbidden.get(said, ()):
                        problems.append(f'document {lines[index]}\n  {key_of(each)} is {said}, but '
                                        f'{each["verdict"]} at {points[at]}')
        self.report(problems)


if __name__ == '__main__':
    unittest.main()
