# SPDX-License-Identifier: MIT
"""The Python package against what it is made from: the headers, the build, its own promises."""

import ast
import ctypes
import importlib
import inspect
import pathlib
import re
import typing
import unittest

import headers
import ingle
from ingle import loading, prototypes

PACKAGE = pathlib.Path(ingle.__file__).parent

SCALARS = {"int": ctypes.c_int, "int32_t": ctypes.c_int32, "int64_t": ctypes.c_int64,
           "size_t": ctypes.c_size_t, "uint64_t": ctypes.c_uint64, "double": ctypes.c_double}
# `typedef int32_t ingle_verdict;` and its like.
SCALARS.update({name: SCALARS[kind] for kind, name in
                re.findall(r"typedef (int32_t) (\w+);", headers.LIBRARY)})
STRUCTS = {struct.__name__: struct for struct in prototypes.STRUCTS}


def expected_type(kind):
    """The ctypes type of a C type."""
    if kind == "void":
        return None
    if kind == "ingle_write":
        return prototypes.ingle_write
    if "*" not in kind:
        return SCALARS[kind]
    target, stars = kind.replace("const", "").replace("*", "").strip(), kind.count("*")
    if target == "char":
        return ctypes.c_char_p if stars == 1 else ctypes.POINTER(ctypes.c_char_p)
    if stars == 2:
        return ctypes.POINTER(ctypes.c_void_p)
    known = SCALARS.get(target) or STRUCTS.get(target)
    return ctypes.c_void_p if known is None else ctypes.POINTER(known)


class AgainstHeaders(unittest.TestCase):
    def check_functions(self, table, text, library):
        declared = headers.functions(text)
        self.assertGreater(len(declared), 5)
        for name, (result, arguments) in table.items():
            with self.subTest(name):
                self.assertIn(name, declared)
                c_result, c_parameters = declared[name]
                self.assertEqual(len(arguments), len(c_parameters))
                self.assertIs(result, expected_type(c_result))
                self.assertEqual(list(arguments), [expected_type(each) for each in c_parameters])
                function = getattr(library, name)
                self.assertEqual(list(function.argtypes), list(arguments))
                self.assertIs(function.restype, result)

    def test_functions_are_those_of_the_headers(self):
        self.check_functions(prototypes.LIBRARY_FUNCTIONS, headers.LIBRARY, loading.library)

    def test_json_functions_are_those_of_the_header(self):
        self.check_functions(prototypes.JSON_FUNCTIONS, headers.JSON, loading.json_library)

    def test_structs_are_those_of_the_headers(self):
        for struct in prototypes.STRUCTS:
            with self.subTest(struct.__name__):
                declared = headers.members(headers.LIBRARY + headers.JSON, struct.__name__)
                members = [(name, expected_type(kind)) for kind, name in declared]
                self.assertEqual(list(struct._fields_), members)

    def test_what_a_text_is_written_through(self):
        result, parameters = re.search(r"typedef (\w+) \(\*ingle_write\)\(([^)]*)\);",
                                       headers.LIBRARY).groups()
        self.assertEqual(" ".join(parameters.split()),
                         "void *context, const char *text, size_t length")
        self.assertIs(prototypes.ingle_write._restype_, SCALARS[result])
        # The text is no C string: an address alone.
        self.assertEqual(prototypes.ingle_write._argtypes_,
                         (ctypes.c_void_p, ctypes.c_void_p, ctypes.c_size_t))

    def test_constants_are_those_of_the_headers(self):
        declared = headers.constants(headers.LIBRARY)
        used = {name: number for name, number in vars(prototypes).items()
                if name.startswith("INGLE_")}
        self.assertGreater(len(used), 10)
        self.assertEqual(used, {name: declared.get(name) for name in used})

    def test_every_function_used_is_declared(self):
        used = set()
        for path in PACKAGE.glob("*.py"):
            used.update(re.findall(r"library\.(ingle_\w+)", path.read_text(encoding="utf-8")))
        declared = set(prototypes.LIBRARY_FUNCTIONS) | set(prototypes.JSON_FUNCTIONS)
        self.assertEqual(used, declared)


class AgainstTheBuild(unittest.TestCase):
    BUILD = (headers.ROOT / "meson.build").read_text(encoding="utf-8")

    def test_series_is_that_of_the_project(self):
        version = re.search(r"version: '([^']+)'", self.BUILD)[1]
        self.assertEqual(version.rsplit(".", 1)[0], loading.SERIES)
        self.assertEqual(version, ingle.__version__)

    def test_soname_is_that_of_the_build(self):
        soversion = re.search(r"^soversion = '([^']+)'", self.BUILD, re.M)[1]
        self.assertEqual(soversion, loading.SONAME_NUMBER)


def public_callables():
    """Every public function, and every public or special method of a public class."""
    for name in ingle.__all__:
        member = getattr(ingle, name)
        if inspect.isclass(member):
            for inner_name, inner in vars(member).items():
                yield from _methods(f"{name}.{inner_name}", inner_name, inner)
        elif inspect.isfunction(member):
            yield name, member


def _methods(path, name, member):
    if name.startswith("_") and not name.startswith("__"):
        return
    function = getattr(member, "fget", None) or getattr(member, "__func__", member)
    if inspect.isfunction(function) and function.__module__.startswith("ingle"):
        # A dataclass writes some methods itself, without hints.
        if pathlib.Path(function.__code__.co_filename).parent == PACKAGE:
            yield path, function


class Promises(unittest.TestCase):
    def test_hints_are_whole(self):
        self.assertTrue((PACKAGE / "py.typed").exists())
        found = dict(public_callables())
        self.assertGreater(len(found), 60)
        for path, function in found.items():
            with self.subTest(path):
                hints = typing.get_type_hints(function)
                parameters = [name for name in inspect.signature(function).parameters
                              if name != "self"]
                self.assertEqual([name for name in parameters if name not in hints], [])
                self.assertIn("return", hints)

    def test_everything_public_has_a_docstring(self):
        for path, function in public_callables():
            if "__" not in path:
                with self.subTest(path):
                    self.assertTrue(inspect.getdoc(function))
        for path in PACKAGE.glob("*.py"):
            module = importlib.import_module(f"ingle.{path.stem}")
            self.assertTrue(inspect.getdoc(module), path.name)

    def test_syntax_is_that_of_python_3_9(self):
        for path in PACKAGE.glob("*.py"):
            ast.parse(path.read_text(encoding="utf-8"), str(path), feature_version=(3, 9))

    def test_only_the_standard_library_is_used(self):
        standard = getattr(__import__("sys"), "stdlib_module_names", None)
        if standard is None:  # before Python 3.10 the interpreter does not tell
            return
        for path in PACKAGE.glob("*.py"):
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                names = [alias.name for alias in node.names] if isinstance(node, ast.Import) else (
                    [node.module] if isinstance(node, ast.ImportFrom) and not node.level else [])
                self.assertLessEqual({name.split(".")[0] for name in names}, set(standard))


if __name__ == "__main__":
    unittest.main()
