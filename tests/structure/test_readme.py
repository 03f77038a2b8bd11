#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""What the README shows is what the project does: its finding, its survey, its first steps."""

import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest

import source_tree

README = (source_tree.ROOT / "README.md").read_text(encoding="utf-8")
COMMAND = os.environ["INGLE_COMMAND"]
LIBRARY = pathlib.Path(os.environ["INGLE_LIBRARY"])
JSON_LIBRARY = pathlib.Path(os.environ["INGLE_JSON_LIBRARY"])
BUILD = pathlib.Path(os.environ["MESON_BUILD_ROOT"])


def blocks(language):
    return re.findall(rf"```{language}\n(.*?)```", README, re.DOTALL)


def judged(document):
    done = subprocess.run([COMMAND, "check"], input=document, capture_output=True, text=True,
                          encoding="utf-8", check=True)
    return json.loads(done.stdout)


class Readme(unittest.TestCase):
    def test_finding(self):
        shown = json.loads(blocks("json")[0])
        living_room = source_tree.ROOT / "examples/heron-weir/living-room.json"
        report = judged(living_room.read_text(encoding="utf-8"))
        self.assertIn(shown, report["findings"])

    def test_survey(self):
        self.assertIn(judged(blocks("json")[1])["verdict"], ("fails", "too-close"))

    def built(self, block, *libraries):
        """What a C program of the page prints, which has nothing but the page to go by."""
        with tempfile.TemporaryDirectory() as folder:
            source = pathlib.Path(folder, "first.c")
            source.write_text(blocks("c")[block], encoding="utf-8")
            program = str(source.with_suffix(""))
            subprocess.run(os.environ["CC"].split() + [
                "-std=c11", "-Wall", "-Werror", str(source), f"-I{source_tree.ROOT / 'include'}",
                f"-I{source_tree.ROOT / 'bindings/json'}", f"-I{BUILD / 'include'}",
                *map(str, libraries), *(f"-Wl,-rpath,{each.parent}" for each in libraries), "-o",
                program], check=True)
            return subprocess.run([program], capture_output=True, text=True, check=True).stdout

    def test_c(self):
        # IRC 2021, R1001.10: 20 in for an opening of exactly 6 square feet.
        self.assertIn("19 15/16 in measured, at least 20 in is required", self.built(0, LIBRARY))

    def test_json_in_c(self):
        report = json.loads(self.built(1, LIBRARY, JSON_LIBRARY))
        finding = next(each for each in report["findings"] if each["rule"] == "hearth-front")
        # As above.
        self.assertEqual((finding["verdict"], finding["required"]["text"]), ("fails", "20 in"))

    def test_libraries_are_named(self):
        """What an embedder has to know of: both libraries, their packages and their variables."""
        for word in ("pkg-config ingle-json", "ingle-json.h", "INGLE_LIBRARY",
                     "INGLE_JSON_LIBRARY"):
            self.assertIn(word, README)

    def test_python(self):
        environment = dict(os.environ, PYTHONPATH=str(source_tree.ROOT / "bindings/python"))
        done = subprocess.run([sys.executable, "-c", blocks("python")[0]], capture_output=True,
                              text=True, check=True, env=environment)
        self.assertEqual(done.stdout, "fails\n")


if __name__ == "__main__":
    unittest.main()
