# SPDX-License-Identifier: MIT
"""All files of the oracle together: what each standard says of a document, whoever tells it."""
from itertools import zip_longest

import abroad
import conditions
import gas
import generate
import generate_abroad
import generate_gas
import generate_stoves
import generate_told
import history
import rules
import stoves


def findings(document, standard):
    """Every finding of one standard, with each of the files that tell rules of it."""
    found, survey = [], rules.Survey(document)
    for standards, told in ((rules.STANDARDS, rules.check), (gas.STANDARDS, gas.findings),
                            (stoves.STANDARDS, stoves.findings),
                            (abroad.STANDARDS, abroad.findings)):
        if standard in standards:
            found += told(document, standard)
    return found + conditions.findings(survey, standard) + history.findings(survey, standard)


def overall(document):
    """The gravest verdict of all the standards of a document."""
    return rules.overall([each for standard in document['standards']
                          for each in findings(document, standard)])


def surveys(count=None, **habits):
    """(document, its line) of the generators by turns: those that the tests compare, or so many."""
    import test_abroad
    import test_gas
    import test_oracle
    import test_stoves
    import test_told
    made = []
    for lines, compared in (
            (generate.lines, test_oracle.SURVEYS), (generate_gas.lines, test_gas.SURVEYS),
            (generate_stoves.lines, test_stoves.SURVEYS),
            (generate_abroad.lines, test_abroad.SURVEYS),
            (lambda number, **more: generate_told.lines(number, 'older'), test_told.SURVEYS),
            (lambda number, **more: generate_told.lines(number, 'observed'),
             test_told.SURVEYS // 2)):
        made.append(lines(count or compared, **habits))
    for turn in zip_longest(*made):
        for line in turn:
            if line is not None:
                yield generate.read(line), line
