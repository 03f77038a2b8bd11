# SPDX-License-Identifier: MIT
"""The `ingle` command against the oracle for gas in fireplaces, over thousands of made-up surveys.

Only the findings of the rules that gas.py knows are compared, and each of them has to be there.
INGLE_COMMAND is the command's path.
"""
import os
import subprocess
import unittest
from fractions import Fraction

import amounts
import gas
import generate
import generate_gas

SURVEYS = 2000
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


def same(shown, value, dimension):
    """Whether a report shows this amount, to its places, or this word."""
    if shown is None or value is None:
        return shown is None and value is None
    if dimension is None:
        return shown['text'] == value
    exact = Fraction(value, amounts.UNITS[dimension][shown['unit']])
    return abs(Fraction(shown['value']) - exact) <= PLACES / 2


def differences(got, due):
    """In which parts a finding differs from what is due."""
    parts = ('verdict', 'relation') if due.verdict == 'not-applicable' else due._fields
    return [f'{part} of {due.rule}: {got}\n    not {due}' for part in parts
            if not (same(got.get(part), getattr(due, part), due.dimension)
                    if part in ('required', 'measured', 'margin')
                    else part == 'dimension' or got[part] == getattr(due, part))]


def verdict(finding):
    return finding['verdict']


def once(findings, verdict):
    """Without all but one that is unmeasured: rows that lack the same say so once."""
    kept = [each for each in findings if verdict(each) != 'unmeasured']
    return kept + [each for each in findings if verdict(each) == 'unmeasured'][:1]


def compare(line, report):
    """Everything in which the findings about gas differ from the oracle's."""
    if 'findings' not in report:
        return [f'no findings: {report}']
    found, document = [], generate.read(line)
    have, wanted = {}, {}
    for finding in report['findings']:
        have.setdefault((finding['standard'], finding['rule']), []).append(finding)
    for standard in document['standards']:
        for due in gas.findings(document, standard):
            wanted.setdefault((standard, due.rule), []).append(due)
    for key, dues in wanted.items():
        left, dues = once(have.get(key, []), verdict), once(dues, lambda due: due.verdict)
        if [each['subject'] for each in left] != [due.subject for due in dues]:
            found.append(f'{key}: {left}, not {dues}')
            continue
        for due in dues:
            # A rule may have several rows; each due finding takes the one that is most like it.
            nearest = min(left, key=lambda each, due=due: len(differences(each, due)))
            found += differences(nearest, due)
            left = [each for each in left if each is not nearest]
    return found


class Gas(unittest.TestCase):
    def compare_all(self, lines, *options):
        problems, verdicts = [], set()
        for line, report in zip(lines, streamed(lines, '--all', *options), strict=True):
            verdicts |= {each['verdict'] for each in report.get('findings', ())}
            found = compare(line, report)
            if found:
                problems.append(f'document {line}\n  ' + '\n  '.join(found))
        if problems:
            self.fail(f'{len(problems)} differ, the first of them:\n'
                      + '\n\n'.join(problems[:SHOWN]))
        return verdicts

    def test_every_finding(self):
        verdicts = self.compare_all(generate_gas.lines(SURVEYS))
        self.assertEqual(verdicts, {'meets', 'fails', 'too-close', 'unmeasured', 'by-listing',
                                    'not-applicable'})

    def test_every_finding_in_kilowatts(self):
        self.compare_all(generate_gas.lines(SURVEYS // 4, seed='metric'), '--unit', 'mm')

    def test_every_verdict_of_every_rule(self):
        """Without this a rule that never applies would go unnoticed."""
        seen = {}
        for line in generate_gas.lines(4 * SURVEYS):
            document = generate.read(line)
            for standard in document['standards']:
                for due in gas.findings(document, standard):
                    seen.setdefault((standard, due.rule), set()).add(due.verdict)
        for key, verdicts in seen.items():
            with self.subTest(key):
                self.assertIn('meets', verdicts)
                self.assertIn('fails', verdicts)

    def test_a_wrong_number_is_found(self):
        """With one cell of the table changed the oracle disagrees with the command."""
        before = gas.INPUTS
        gas.INPUTS = (before[0][:6] + (80001,),) + before[1:]
        line = generate.written({
            'standards': [gas.NFPA],
            'survey': {'gas': {'appliance': 'log-set', 'vent': 'chimney', 'listed': False,
                               'chimney-height': '6 ft', 'input': '80001 Btu/h',
                               'damper-opening': '64 in2'}}})
        try:
            self.assertNotEqual(compare(line, run([line], '--all')[0]), [])
        finally:
            gas.INPUTS = before
        self.assertEqual(compare(line, run([line], '--all')[0]), [])


if __name__ == '__main__':
    unittest.main()
