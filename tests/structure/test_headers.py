#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Each public header compiles alone, as C11 and as C++17, without a warning.

MESON_BUILD_ROOT names the build folder, which holds the generated header.
"""
import os
import shlex
import subprocess
import unittest
from pathlib import Path

import source_tree

WARNINGS = ["-Wall", "-Wextra", "-pedantic", "-Werror"]
LANGUAGES = {"C11": [*shlex.split(os.environ.get("CC", "cc")), "-x", "c", "-std=c11"],
             "C++17": [*shlex.split(os.environ.get("CXX", "c++")), "-x", "c++", "-std=c++17"]}


def compile_text(language, text):
    folders = [source_tree.ROOT / "include", Path(os.environ["MESON_BUILD_ROOT"], "include"),
               source_tree.ROOT / "bindings/json"]
    command = [*LANGUAGES[language], *WARNINGS, "-fsyntax-only",
               *("-I%s" % folder for folder in folders), "-"]
    return subprocess.run(command, input=text, text=True, capture_output=True, check=False)


class Headers(unittest.TestCase):
    def test_each_compiles_alone(self):
        headers = ["ingle/" + path.name.replace(".in", "")
                   for path in source_tree.files("include/ingle", ".h", ".h.in")]
        for header in [*headers, "ingle-json.h"]:
            for language in LANGUAGES:
                with self.subTest(header=header, language=language):
                    # Twice: its guard has to hold too. C wants something after it.
                    text = "#include <%s>\n" % header * 2 + "extern int after;\n"
                    done = compile_text(language, text)
                    self.assertEqual(done.returncode, 0, done.stderr)

    def test_a_missing_include_is_found(self):
        text = "size_t ingle_nothing(void);\n"
        for language in LANGUAGES:
            self.assertNotEqual(compile_text(language, text).returncode, 0)


if __name__ == "__main__":
    unittest.main()
