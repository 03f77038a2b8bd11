# SPDX-License-Identifier: MIT
"""What the tests of this room share: the surveys that come with the project, and the command.

INGLE_COMMAND is the command's path.
"""
import os
import pathlib
import subprocess

import generate

ROOT = pathlib.Path(__file__).resolve().parents[2]
COMMAND = os.environ['INGLE_COMMAND']


def written_of(document, *words):
    """What the command writes of a document."""
    done = subprocess.run([COMMAND, *words], input=generate.written(document).encode(),
                          capture_output=True, check=False)
    if done.returncode != 0:
        raise AssertionError(f'{words}: {done.stderr.decode()}\n{generate.written(document)}')
    return done.stdout.decode()


def ran(document, *words):
    """The same as JSON, its numbers exact."""
    return generate.read(written_of(document, *words))


def measured():
    """(file, document) of the survey documents that come with the project."""
    for folder in ('examples', 'docs/guide'):
        for path in sorted((ROOT / folder).rglob('*.json')):
            yield path.name, generate.read(path.read_text(encoding='utf-8'))
