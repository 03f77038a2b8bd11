#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The trainer's guide: every command in it is run, and what it shows is what comes out.

    /usr/bin/python3 tests/guide/test_guide.py           # compares
    /usr/bin/python3 tests/guide/test_guide.py --write   # writes the outputs and drawings anew

A block marked `console` holds commands, each after `$ `, and what they print. They are run by bash
in a copy of docs/guide, so files that they write are compared with those that stand there.
INGLE_COMMAND names the `ingle` command.
"""

import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import unittest

ROOT = pathlib.Path(__file__).resolve().parents[2]
GUIDE = ROOT / "docs" / "trainers-guide.md"
FOLDER = ROOT / "docs" / "guide"
COMMAND = pathlib.Path(os.environ["INGLE_COMMAND"])
# A longer fence goes around output that has a fence of its own in it.
BLOCK = re.compile(r"^(`{3,})console\n(.*?)^\1$", re.MULTILINE | re.DOTALL)
IMAGE = re.compile(r"!\[[^\]]+\]\(guide/([^)]+)\)")
LEAST_BLOCKS = 12
SLOWEST = 60


def run(command, folder):
    """What a command prints, on both outputs, in the order of a terminal."""
    environment = dict(os.environ, PATH=f"{COMMAND.parent}:{os.environ['PATH']}", COLUMNS="79",
                       NO_COLOR="1", LC_ALL="C.UTF-8")
    done = subprocess.run(["bash", "-c", command], cwd=folder, env=environment, timeout=SLOWEST,
                          stdout=subprocess.PIPE, stderr=subprocess.STDOUT, check=False)
    return done.stdout.decode().replace("\r\n", "\n")


def commands(block):
    """The commands of a block; one goes on where its line ends in a backslash."""
    found = []
    going_on = False
    for line in block.splitlines():
        if line.startswith("$ "):
            found.append(line[2:])
        elif going_on:
            found[-1] += "\n" + line
        going_on = (line.startswith("$ ") or going_on) and line.endswith("\\")
    return found


def rendered(block, folder):
    """The block with what its commands print now."""
    parts = []
    for command in commands(block):
        parts.append("$ " + command + "\n" + run(command, folder))
    return "".join(part if part.endswith("\n") else part + "\n" for part in parts)


def guide_now(folder):
    """The whole guide with what its commands print now."""
    text = GUIDE.read_text(encoding="utf-8")
    return BLOCK.sub(
        lambda match: f"{match[1]}console\n{rendered(match[2], folder)}{match[1]}", text)


def blocks(text):
    return [match[2] for match in BLOCK.finditer(text)]


def working_copy():
    """A copy of docs/guide, with the examples where they are seen from there."""
    base = pathlib.Path(tempfile.mkdtemp())
    folder = base / "docs" / "guide"
    shutil.copytree(FOLDER, folder)
    shutil.copytree(ROOT / "examples", base / "examples")
    return folder


class Guide(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = working_copy()
        for drawing in cls.folder.glob("*.svg"):
            drawing.unlink()
        cls.text = GUIDE.read_text(encoding="utf-8")
        cls.now = guide_now(cls.folder)

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(cls.folder.parents[1])

    def test_every_command_prints_what_the_guide_shows(self):
        was, now = blocks(self.text), blocks(self.now)
        self.assertGreaterEqual(len(was), LEAST_BLOCKS)
        for shown, printed in zip(was, now):
            with self.subTest(commands(shown)):
                self.assertEqual(shown, printed, f"run {__file__} --write and read the changes")

    def test_no_command_fails(self):
        for block in blocks(self.now):
            self.assertNotIn('{"error"', block)
            self.assertNotIn("command not found", block)

    def test_the_drawings_are_those_that_the_commands_write(self):
        shown = set(IMAGE.findall(self.text))
        self.assertTrue(shown)
        self.assertEqual({path.name for path in self.folder.glob("*.svg")},
                         {path.name for path in FOLDER.glob("*.svg")})
        self.assertLessEqual(shown, {path.name for path in FOLDER.iterdir()})
        for path in FOLDER.glob("*.svg"):
            with self.subTest(path.name):
                self.assertEqual((self.folder / path.name).read_bytes(), path.read_bytes())

    def test_the_readme_shows_one_of_them(self):
        readme = (ROOT / "README.md").read_text(encoding="utf-8")
        self.assertRegex(readme, r"!\[[^\]]+\]\(docs/guide/[^)]+\.svg\)")


def write():
    folder = working_copy()
    GUIDE.write_text(guide_now(folder), encoding="utf-8")
    for drawing in folder.glob("*.svg"):
        shutil.copy(drawing, FOLDER / drawing.name)
    shutil.rmtree(folder.parents[1])


if __name__ == "__main__":
    if "--write" in sys.argv:
        write()
    else:
        unittest.main()
