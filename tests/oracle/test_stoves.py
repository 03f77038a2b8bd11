# SPDX-License-Identifier: MIT
"""The `ingle` command against the oracle for stoves and inserts, over many made-up surveys.

Of each standard the findings of the rules that stoves.py knows are compared, all of them.
INGLE_COMMAND is the command's path.
"""
import copy
import os
import subprocess
import unittest
from fractions import Fraction
from unittest import mock

import amounts
import generate
import generate_stoves
import stove_codes
import stove_facts
import stoves

SURVEYS = 2400
BATCH = 100
SHOWN = 4
PLACES = Fraction(1, 10 ** 9)


def run(lines, *options):
    command = [os.environ['INGLE_COMMAND'], 'check', '--lines', '--no-working', *options]
    done = subprocess.run(command, input='\n'.join(lines) + '\n', capture_output=True,
                          encoding='utf-8', check=False)
    if done.returncode != 0:
        raise AssertionError(f'{command} ended with {done.returncode}: {done.stderr[:2000]}')
    return [generate.read(line) for line in done.stdout.split('\n')[:-1]]


def streamed(lines, *options):
    """The same in batches: thousands of reports at once would fill the memory."""
    for start in range(0, len(lines), BATCH):
        yield from run(lines[start:start + BATCH], *options)


def dimension_of(subject):
    parts = subject.split('/')[2:]
    group, name = parts[0], parts[-1]
    return {'r-value': 'ratio'}.get(name, stove_facts.AMOUNTS.get(f'{group}/{name}'))


def same(shown, value, dimension):
    """Whether a report shows this amount, to its places, or this word."""
    if shown is None or value is None:
        return shown is None and value is None
    if dimension is None:
        return shown['text'] == value
    size = {'count': 1, 'ratio': amounts.RATIO_ONE}.get(dimension)
    exact = Fraction(value) / (size or amounts.UNITS[dimension][shown['unit']])
    return abs(Fraction(shown['value']) - exact) <= PLACES


def is_met(due, got):
    """Whether a finding of the command is the one that is due."""
    dimension = dimension_of(due.subject)
    return (got['verdict'] == due.verdict and got['subject'] == due.subject
            and all(same(got.get(part), getattr(due, part), dimension)
                    for part in ('required', 'measured', 'usual')))


def compare(line, report):
    """Everything in which the findings differ from the oracle's."""
    if 'findings' not in report:
        return [f'no findings: {report}']
    problems, document = [], generate.read(line)
    for standard in document['standards']:
        known = stoves.rule_ids(standard)
        got = [each for each in report['findings']
               if each['standard'] == standard and each['rule'] in known]
        for due in stoves.findings(document, standard):
            match = next((each for each in got
                          if each['rule'] == due.rule and is_met(due, each)), None)
            if match is None:
                problems.append(f'{standard} lacks {due}, has '
                                f'{[each for each in got if each["rule"] == due.rule]}')
            else:
                got.remove(match)
        problems += [f'{standard} has {each} beside what is due' for each in got]
    return problems


def changed(document, pointer, value):
    """The document with a length changed that keeps its tolerance."""
    document = copy.deepcopy(document)
    *path, name = pointer.split('/')[2:]
    holder = document['survey']
    for step in path:
        holder = holder[int(step)] if isinstance(holder, list) else holder.setdefault(step, {})
    text = f'{generate.decimal(Fraction(value, amounts.NM_PER_MM))} mm'
    before = holder.get(name)
    holder[name] = ({'value': text, 'tolerance': before['tolerance']}
                    if isinstance(before, dict) and 'tolerance' in before else text)
    return document


class Stoves(unittest.TestCase):
    def compare_all(self, lines, *options):
        problems, verdicts = [], set()
        for line, report in zip(lines, streamed(lines, *options), strict=True):
            verdicts |= {each['verdict'] for each in report.get('findings', ())}
            found = compare(line, report)
            if found:
                problems.append(f'document {line}\n  ' + '\n  '.join(found))
        if problems:
            self.fail(f'{len(problems)} differ, the first of them:\n'
                      + '\n\n'.join(problems[:SHOWN]))
        return verdicts

    def test_every_finding(self):
        verdicts = self.compare_all(generate_stoves.lines(SURVEYS))
        self.assertEqual(verdicts, {'meets', 'fails', 'too-close', 'unmeasured', 'by-listing'})

    def test_every_finding_in_millimetres(self):
        self.compare_all(generate_stoves.lines(SURVEYS // 4, seed='metric'), '--unit', 'mm')

    def test_every_verdict_of_every_rule(self):
        """Without this a rule that never applies would go unnoticed."""
        seen = {}
        for line in generate_stoves.lines(SURVEYS):
            document = generate.read(line)
            for standard in document['standards']:
                for due in stoves.findings(document, standard):
                    seen.setdefault((standard, due.rule), set()).add(due.verdict)
        self.assertEqual(set(seen), {(standard, rule) for standard in stoves.STANDARDS
                                     for rule in stoves.rule_ids(standard)})
        for key, verdicts in seen.items():
            with self.subTest(key):
                self.assertIn('meets', verdicts)
                self.assertIn('fails', verdicts)

    def remedies(self, lines):
        """(finding, document with a remedy done, whether that has to meet the rule) of each."""
        for line, report in zip(lines, streamed(lines), strict=True):
            document = generate.read(line)
            for finding in report['findings']:
                if finding['rule'] not in stoves.rule_ids(finding['standard']):
                    continue
                single = document | {'standards': [finding['standard']]}
                for remedy in finding.get('remedy', ()):
                    to = amounts.exact_text(f'{remedy["to"]["value"]} {remedy["to"]["unit"]}',
                                            'length')
                    yield finding, changed(single, remedy['change'], to), True
                    if finding['verdict'] == 'fails':
                        less = -1 if finding['relation'] == 'at-least' else 1
                        less *= -1 if remedy['change'] != finding['subject'] and \
                            remedy['change'] != '/survey/flue/diameter' else 1
                        yield finding, changed(single, remedy['change'],
                                               to + less * amounts.IN // 16), False

    def test_remedies(self):
        """A remedy does what it says, and a sixteenth of an inch less does not."""
        trials = list(self.remedies(generate_stoves.lines(300, seed='remedies')))
        self.assertGreater(len(trials), 500, 'hardly any remedies to try')
        problems = []
        for (finding, trial, met), report in zip(
                trials, streamed([generate.written(trial) for _, trial, _ in trials]), strict=True):
            left = {each['verdict'] for each in report.get('findings', ())
                    if (each['rule'], each['subject']) == (finding['rule'], finding['subject'])}
            if 'error' in report or bool(left & {'fails', 'too-close'}) == met:
                problems.append(f'{finding} with {generate.written(trial)} is {left or report}')
        if problems:
            self.fail(f'{len(problems)} of {len(trials)} differ, the first of them:\n'
                      + '\n\n'.join(problems[:SHOWN]))

    def test_a_wrong_number_is_found(self):
        """With one cell of a table changed the oracle disagrees with the command."""
        line = generate.written({
            'standards': [stove_codes.IMC],
            'survey': {'appliance': {'kind': 'stove'},
                       'wall': [{'protection': 'steel-vented', 'unprotected': '36 in',
                                 'clearance': '12 in'}]}})
        self.assertEqual(compare(line, run([line])[0]), [])
        above, beside = stove_codes.IMC_TABLE['steel-vented']
        with mock.patch.dict(stove_codes.IMC_TABLE, {'steel-vented': (above, (13, *beside[1:]))}):
            wrong = stove_codes.mechanical()
        with mock.patch.dict(stoves.RULES, {stove_codes.IMC: wrong}):
            self.assertNotEqual(compare(line, run([line])[0]), [])


if __name__ == '__main__':
    unittest.main()
