# SPDX-License-Identifier: MIT
"""Judges surveys by `ingle check` alone, for tests of what else is asked about them.

INGLE_COMMAND is the command's path.
"""
import copy
import json
import os
import pathlib
import subprocess
from fractions import Fraction

ROOT = pathlib.Path(__file__).resolve().parents[2]
COMMAND = os.environ['INGLE_COMMAND']
# Amounts are shown with no more than so many decimals.
PLACES = Fraction(1, 10 ** 9)


def ran(*words, given=None, status=0):
    """What the command writes of a document."""
    done = subprocess.run([COMMAND, *words], capture_output=True, check=False,
                          input=None if given is None else json.dumps(given).encode())
    if done.returncode != status:
        raise AssertionError(f'{words} ended with {done.returncode}: {done.stderr.decode()[:2000]}')
    return done.stdout.decode('utf-8')


def asked(*words, given=None):
    return json.loads(ran(*words, given=given))


def reports(documents, *options):
    """The report of each document, of one process; an error stands in place of a report."""
    if not documents:
        return []
    lines = ''.join(json.dumps(each) + '\n' for each in documents)
    done = subprocess.run([COMMAND, 'check', '--lines', '--no-working', *options],
                          input=lines.encode(), capture_output=True, check=False)
    found = [json.loads(line) for line in done.stdout.decode('utf-8').splitlines()]
    if len(found) != len(documents):
        raise AssertionError(f'{len(documents)} documents, {len(found)} answers: {done.stderr}')
    return found


def place(document, path):
    """What holds a quantity, by its path, and its name there."""
    group, name = path.split('.')
    if '[' not in group:
        return document['survey'].setdefault(group, {}), name
    group, item = group.rstrip(']').split('[')
    return document['survey'][group][int(item)], name


def changed(document, path, value):
    """The document with one quantity changed; its tolerance stays."""
    document = copy.deepcopy(document)
    holder, name = place(document, path)
    before = holder.get(name)
    if isinstance(before, dict) and 'tolerance' in before:
        value = {'value': value, 'tolerance': before['tolerance']}
    holder[name] = value
    return document


def pointer(path):
    return '/survey/' + path.replace('[', '/').replace('].', '/').replace('.', '/')


def matter(finding):
    """What a finding is about, whichever row of the standard holds."""
    return finding['standard'], finding['rule'], finding['subject']


def example(path):
    return json.loads((ROOT / 'examples' / path).read_text(encoding='utf-8'))
