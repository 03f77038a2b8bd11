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


def compare(line, report):
    """Everything in which the findings about gas differ from the oracle's."""
    if 'findings' not in report:
        return [f'no findings: {report}']
    found, document = [], generate.read(line)
    have = {}
    for finding in report['findings']:
        have.setdefault((finding['standard'], finding['rule']), []).append(finding)
    for standard in document['standards']:
        for due in gas.findings(document, standard):
            got = have.get((standard, due.rule), [])
            if [each['subject'] for each in got] != [due.subject]:
                found.append(f'{due.rule} of {standard}: {got}, not {due}')
                continue
            parts = ('verdict', 'relation') if due.verdict == 'not-applicable' else due._fields
            for part in parts:
                equal = (same(got[0].get(part), getattr(due, part), due.dimension)
                         if part in ('required', 'measured', 'margin')
                         else part == 'dimension' or got[0][part] == getattr(due, part))
                if not equal:
                    found.append(f'{part} of {due.rule}: {got[0]}\n    not {due}')
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
