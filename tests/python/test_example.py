# SPDX-License-Identifier: MIT
"""The example script runs as its reader would run it, and prints what it says it prints."""

import os
import pathlib
import subprocess
import sys
import unittest

ROOT = pathlib.Path(__file__).resolve().parents[2]


class Example(unittest.TestCase):
    def test_it_prints_a_report(self):
        done = subprocess.run([sys.executable, str(ROOT / "examples/python/judge_fireplace.py")],
                              env=dict(os.environ, PYTHONIOENCODING="utf-8"), check=False,
                              stdout=subprocess.PIPE, stderr=subprocess.PIPE)
        self.assertEqual((done.returncode, done.stderr), (0, b""))
        printed = " ".join(done.stdout.decode("utf-8").split())
        # R1001.10: 36 in x 24 in is 6 ft2, so 20 in are due in front of the opening.
        for words in ("FAILS", "MEETS", "R1001.10", "36 in × 24 in", "20 in"):
            self.assertIn(words, printed)


if __name__ == "__main__":
    unittest.main()
