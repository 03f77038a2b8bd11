#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The headers, the symbol maps and the built libraries export the same names, all documented.

INGLE_LIBRARY and INGLE_JSON_LIBRARY name the built shared libraries.
"""
import os
import re
import subprocess
import unittest

import source_tree

LIBRARIES = {
    "ingle": ("INGLE_LIBRARY", "lib/ingle.map",
              lambda: source_tree.files("include/ingle", ".h", ".h.in")),
    "ingle-json": ("INGLE_JSON_LIBRARY", "bindings/json/ingle-json.map",
                   lambda: [source_tree.ROOT / "bindings/json/ingle-json.h"]),
}


def declared(text):
    """The names declared for export in the text of a header."""
    code = source_tree.without_comments(text)
    return re.findall(r"^INGLE_API\b[^;(]*?(\w+)\s*[(;]", code, re.MULTILINE)


def undocumented(text):
    """The published declarations of a header that no doc comment stands right before."""
    lines = text.splitlines()
    found = []
    for index, line in enumerate(lines):
        if not re.match(r"INGLE_API\b|typedef\b|#define INGLE_\w+[( ]", line):
            continue
        start = index - 1
        while start > 0 and lines[index - 1].endswith("*/") and "/*" not in lines[start]:
            start -= 1
        if index == 0 or not lines[start].startswith("/**"):
            found.append(line)
    return found


def mapped(text):
    """The names that a version script exports, and whether everything else is hidden."""
    code = re.sub(r"/\*.*?\*/|#[^\n]*", "", text, flags=re.DOTALL)
    names = []
    for part in re.findall(r"global:(.*?)(?:local:|\})", code, re.DOTALL):
        names += re.findall(r"[\w*]+", part)
    return names, re.search(r"local:\s*\*;", code) is not None


def exported(path):
    """The names a built library exports; version nodes are no names."""
    done = subprocess.run(["nm", "-D", "--defined-only", path], check=True, text=True,
                          capture_output=True)
    symbols = [line.split()[1:] for line in done.stdout.splitlines()]
    return [name.split("@")[0] for kind, name in symbols if kind != "A"]


class Exports(unittest.TestCase):
    def test_headers_maps_and_libraries_agree(self):
        for library, (variable, map_file, headers) in LIBRARIES.items():
            with self.subTest(library):
                in_headers = [name for path in headers()
                              for name in declared(path.read_text(encoding="utf-8"))]
                in_map, rest_hidden = mapped(
                    (source_tree.ROOT / map_file).read_text(encoding="utf-8"))
                in_library = exported(os.environ[variable])
                self.assertGreater(len(in_headers), 5)
                self.assertTrue(rest_hidden, "the map has to hide the rest: `local: *;`")
                self.assertEqual(sorted(in_headers), sorted(set(in_headers)), "declared twice")
                self.assertEqual(sorted(in_map), sorted(in_headers), "map and headers")
                self.assertEqual(sorted(in_library), sorted(in_headers), "library and headers")

    def test_every_name_has_the_prefix(self):
        for _, _, headers in LIBRARIES.values():
            for path in headers():
                for name in declared(path.read_text(encoding="utf-8")):
                    self.assertTrue(name.startswith("ingle_"), name)

    def test_everything_published_is_documented(self):
        for _, _, headers in LIBRARIES.values():
            for path in headers():
                with self.subTest(source_tree.name_of(path)):
                    missing = [line for line in undocumented(path.read_text(encoding="utf-8"))
                               if not re.fullmatch(r"#define INGLE_(API|\w+_H)\b.*", line)]
                    self.assertEqual(missing, [])


class TheChecksThemselves(unittest.TestCase):
    """What must be found is found."""

    def test_declarations(self):
        text = ("/** INGLE_API void ingle_comment(void); */\n"
                "INGLE_API const char *ingle_a(void);\nINGLE_API int\ningle_b(int x);\n")
        self.assertEqual(declared(text), ["ingle_a", "ingle_b"])

    def test_missing_documentation(self):
        documented = "/**\n * What.\n */\nINGLE_API int ingle_a(void);\n"
        self.assertEqual(undocumented(documented), [])
        for text in ("INGLE_API int ingle_a(void);\n",
                     "/* What. */\nINGLE_API int ingle_a(void);\n",
                     documented + "INGLE_API int ingle_b(void);\n",
                     documented + "\nINGLE_API int ingle_b(void);\n"):
            self.assertEqual(len(undocumented(text)), 1, text)

    def test_maps(self):
        self.assertEqual(mapped("A { global: ingle_a; ingle_b; local: *; };"),
                         (["ingle_a", "ingle_b"], True))
        self.assertEqual(mapped("A { global: ingle_*; };"), (["ingle_*"], False))


if __name__ == "__main__":
    unittest.main()
