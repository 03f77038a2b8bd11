# SPDX-License-Identifier: MIT
"""What only shows where all files of the oracle are seen together.

The verdict of a whole report is recomputed from the oracle's own findings; every rule of every
standard has to be told by one of the files, and every row of them has to be judged in one of the
surveys that their tests compare. INGLE_COMMAND is the command's path.
"""
import unittest
from collections import Counter

import everything
import generate
import rows
from test_oracle import Case, streamed

SURVEYS = 240
JUDGED = ('meets', 'fails', 'too-close')

# (standard, rule) that no file tells, and why. It only gets shorter.
UNTOLD = {}


def told():
    """(standard, rule) of everything the oracle says, of a part of what the tests compare."""
    return {(standard, each.rule) for document, _ in everything.surveys(1000)
            for standard in document['standards']
            for each in everything.findings(document, standard)}


class Whole(Case):
    def test_the_verdict_of_the_whole(self):
        """By all the standards of a survey, and by each of them alone."""
        documents = [document | {'standards': standards}
                     for document, _ in everything.surveys(SURVEYS, seed='whole')
                     for standards in {tuple(document['standards']),
                                       *((each,) for each in document['standards'])}]
        for document in documents:
            document['standards'] = list(document['standards'])
            document['amendments'] = [each for each in document.get('amendments', ())
                                      if each['standard'] in document['standards']]
        problems, seen = [], Counter()
        reports = streamed([generate.written(document) for document in documents])
        for document, report in zip(documents, reports):
            expected = everything.overall(document)
            seen[expected] += 1
            if report.get('verdict') != expected:
                problems.append(f'{generate.written(document)}\n  {report.get("verdict")}, '
                                f'not {expected}')
        self.report(problems)
        for verdict in ('meets', 'fails', 'too-close', 'unmeasured', 'by-listing'):
            self.assertGreater(seen[verdict], 20, verdict)

    def test_every_rule_is_told(self):
        known = {(rule['standard'], rule['rule']) for rule in rows.catalogue('rules')}
        found = told()
        self.assertEqual(found - known, set(), 'told, but not of the library')
        self.assertEqual(known - found, set(UNTOLD), 'what is not told, and what is listed as such')

    def test_every_row_is_judged(self):
        known = rows.Rows()
        left = {place for place, rule in enumerate(known.rules)
                if rule['formula'] != 'not-printed'
                and any(cell for line in rule.get('table', {}).get('cells', [[True]])
                        for cell in line)}
        documents, lines = zip(*everything.surveys())
        for document, report in zip(documents, streamed(lines)):
            for finding in report['findings']:
                places = known.places[finding['standard'], finding['rule']]
                if finding['verdict'] in JUDGED and left & set(places):
                    found = known.of(document, finding)
                    left -= set(found) if len(found) == 1 else set()
            if not left:
                break
        self.assertEqual([known.rules[place]['standard'] + ' ' + known.rules[place]['rule'] + ', '
                          + known.rules[place]['when'] for place in sorted(left)], [])


if __name__ == '__main__':
    unittest.main()
