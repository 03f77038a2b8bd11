#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Installs Ingle into an empty folder and builds the C examples against it by pkg-config alone.

MESON_BUILD_ROOT names the build folder. Each examples/c/NAME.c has what it must print beside it,
in NAME.expected.
"""
import json
import os
import re
import shlex
import subprocess
import tempfile
import unittest
from pathlib import Path

import source_tree

COMPILER = [*shlex.split(os.environ.get("CC", "cc")), "-std=c11", "-Wall", "-Wextra",
            "-Wpedantic", "-Werror"]


def run(command, **options):
    return subprocess.run(command, text=True, encoding="utf-8", capture_output=True, check=False,
                          **options)


def done(command, **options):
    """Runs what has to succeed, and gives its output."""
    result = run(command, **options)
    if result.returncode != 0:
        raise AssertionError("%s: %s%s" % (shlex.join(map(str, command)), result.stdout,
                                           result.stderr))
    return result.stdout


def sanitizer_flags(build):
    """What a program needs beside pkg-config's flags if the library was built with sanitizers."""
    for option in json.loads(done(["meson", "introspect", "--buildoptions", build])):
        if option["name"] == "b_sanitize" and option["value"] not in ("none", "", []):
            value = option["value"]
            return ["-fsanitize=" + (value if isinstance(value, str) else ",".join(value))]
    return []


class Install(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(cls.folder.cleanup)
        build = os.environ["MESON_BUILD_ROOT"]
        done(["meson", "install", "-C", build, "--no-rebuild", "--quiet",
              "--destdir", cls.folder.name])
        cls.root = Path(cls.folder.name)
        cls.package = cls.only("ingle.pc")
        cls.library = cls.package.parents[1]
        cls.extra = sanitizer_flags(build)

    @classmethod
    def only(cls, name):
        found = list(cls.root.rglob(name))
        if len(found) != 1:
            raise AssertionError("%s is installed %d times" % (name, len(found)))
        return found[0]

    def flags(self, *asked, package="ingle"):
        """What pkg-config says of the installed copy and, for JSON, of the json-c it rests on."""
        folders = [str(self.package.parent)]
        if package != "ingle":
            folders += done(["pkg-config", "--variable=pcfiledir", "json-c"]).split()
        environment = dict(os.environ, PKG_CONFIG_LIBDIR=":".join(folders),
                           PKG_CONFIG_PATH="", PKG_CONFIG_SYSROOT_DIR=str(self.root))
        return shlex.split(done(["pkg-config", *asked, package], env=environment))

    def build(self, source, program, flags):
        return run([*COMPILER, source, "-o", program, *flags, *self.extra])

    def test_examples_print_what_they_must(self):
        for source in source_tree.files("examples/c", ".c"):
            with self.subTest(source.name):
                program = self.root / source.stem
                built = self.build(source, program, self.flags("--cflags", "--libs"))
                self.assertEqual((built.returncode, built.stdout, built.stderr), (0, "", ""))
                ran = run([program], env=dict(os.environ, LD_LIBRARY_PATH=str(self.library)))
                expected = source.with_suffix(".expected").read_text(encoding="utf-8")
                self.assertEqual(ran.stdout, expected)
                self.assertEqual((ran.returncode, ran.stderr), (0, ""))

    def test_the_readme_s_json_program_is_built_by_its_package(self):
        readme = (source_tree.ROOT / "README.md").read_text(encoding="utf-8")
        source = self.root / "json.c"
        source.write_text(re.findall(r"```c\n(.*?)```", readme, re.DOTALL)[1], encoding="utf-8")
        program = self.root / "json"
        built = self.build(source, program,
                           self.flags("--cflags", "--libs", package="ingle-json"))
        self.assertEqual((built.returncode, built.stderr), (0, ""))
        ran = run([program], env=dict(os.environ, LD_LIBRARY_PATH=str(self.library)))
        self.assertEqual((ran.returncode, ran.stderr), (0, ""))
        self.assertEqual(json.loads(ran.stdout)["verdict"], "fails")

    def test_examples_need_the_flags(self):
        for source in source_tree.files("examples/c", ".c"):
            with self.subTest(source.name):
                program = self.root / "not-built"
                unlinked = self.build(source, program, self.flags("--cflags"))
                self.assertNotEqual(unlinked.returncode, 0)
                self.assertIn("ingle_check", unlinked.stderr)
                if not any(Path(folder, "ingle").exists()
                           for folder in ("/usr/include", "/usr/local/include")):
                    blind = self.build(source, program, self.flags("--libs"))
                    self.assertNotEqual(blind.returncode, 0)
                    self.assertIn("ingle/ingle.h", blind.stderr)

    def test_every_public_header_is_installed(self):
        installed = {path.name for path in self.only("ingle.h").parent.glob("*.h")}
        public = {path.name.replace(".in", "")
                  for path in source_tree.files("include/ingle", ".h", ".h.in")}
        self.assertEqual(installed, public)

    def test_nothing_private_is_installed(self):
        names = {path.name for path in self.root.rglob("*") if path.is_file()}
        self.assertFalse({name for name in names if name.endswith((".c", ".def", ".map"))})
        self.assertNotIn("libingle-open.a", names)

    def test_the_package_knows_its_version(self):
        version = (self.only("version.h")).read_text(encoding="utf-8")
        self.assertIn('#define INGLE_VERSION "%s"' % self.flags("--modversion")[0], version)


if __name__ == "__main__":
    unittest.main()
