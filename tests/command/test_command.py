# SPDX-License-Identifier: MIT
"""The ingle command by its arguments, input, output and exit status."""

import json
import os
import re
import select
import shutil
import subprocess
import tempfile
import unittest

from documents import (BAD_BEYOND_SCHEMA, BAD_BYTES, BAD_DOCUMENTS, EXAMPLE, FAILS, MEETS,
                       TOO_CLOSE, TOWN, UNMEASURED, encoded)
from running import BINDING, COMMAND, Run, run_long

VERBS = ["check", "explain", "assess", "draw", "solve", "sweep", "compare", "worksheet",
         "exercise", "draft", "list", "schema"]
NEEDED = {"exercise": ["--standard", "irc-2021"],
          "solve": ["--quantity", "opening.height"], "sweep": ["--quantity", "opening.height"],
          "list": ["units"], "schema": ["survey"]}
CATALOGUES = ["standards", "rules", "readings", "quantities", "units", "verdicts", "statuses",
              "draft"]
DRAWING = {"standards": ["irc-2021"], "survey": {
    "opening": {"area": "7.5 ft2"}, "throat": {"area": "100 sq in"},
    "flue": {"diameter": "10 3/4 in", "above-hearth": "15 ft"}}}
MEBIBYTE = 1 << 20

ALL_BAD = ([(name, data, code, at, "") for name, data, code, at in BAD_BYTES] +
           [(name, encoded(document), code, at, word)
            for name, document, code, at, word in BAD_DOCUMENTS + BAD_BEYOND_SCHEMA])


def options_in_help(*verb):
    """The long options that a help text offers."""
    text = Run(*verb, "--help").stdout.decode()
    return re.findall(r"^  (?:-h, )?(--[a-z-]+)", text, re.MULTILINE)


class Help(unittest.TestCase):
    def test_help_goes_to_standard_output(self):
        for words in [["--help"], ["-h"]] + [[verb, "--help"] for verb in VERBS]:
            with self.subTest(words):
                run = Run(*words)
                self.assertEqual((run.status, run.stderr), (0, b""))
                self.assertTrue(run.stdout.startswith(b"Usage: ingle "))
                self.assertLess(max(map(len, run.stdout.decode().splitlines())), 82)

    def test_help_wins_over_what_follows(self):
        self.assertEqual(Run("check", "--help", "no-such-file").stdout,
                         Run("check", "--help").stdout)

    def test_help_names_the_verbs_and_their_words(self):
        text = Run("--help").stdout.decode()
        for verb in VERBS:
            self.assertIn(f"ingle {verb} ", text)
        self.assertIn("|".join(CATALOGUES), text)

    def setUp(self):
        file = tempfile.NamedTemporaryFile()
        self.addCleanup(file.close)
        file.write(encoded(TOWN))
        file.flush()
        self.town = file.name

    def test_every_option_that_help_offers_is_taken(self):
        for verb in VERBS:
            word = NEEDED.get(verb, [])
            probable = ["--probability"] if verb == "check" else []
            for option in options_in_help(verb):
                argument = {"--standard": ["irc-2021"], "--unit": ["mm"], "--fail-on": ["error"],
                            "--reading": ["hearth-steps=whole-steps"],
                            "--decision": ["simple", *probable],
                            "--guard-band": ["1", *probable],
                            "--monte-carlo": ["10", *probable],
                            "--separate-tapes": probable,
                            "--quantity": ["opening.height"], "--from": ["20 in"],
                            "--to": ["24 in"], "--step": ["1 in"], "--with": ["opening.width"],
                            "--with-from": ["30 in"], "--with-to": ["36 in"],
                            "--with-step": ["1 in"], "--rule": ["hearth-front"],
                            "--format": ["text" if verb in ("explain", "assess") else "json"],
                            "--width": ["60"], "--basis": ["cited"], "--form": ["brief"],
                            "--least": ["fails"], "--view": ["plan"],
                            "--seed": ["7", *probable],
                            "--level": ["2"], "--part": ["problem"],
                            "--appliance": ["stove"], "--fuel": ["wood"],
                            "--amendments": [self.town],
                            "--opening-area": ["8 ft2"], "--flue-area": ["90 sq in"],
                            "--hydraulic-diameter": ["10 in"], "--height": ["5 m"],
                            "--rise": ["300 F"], "--outdoor-temperature": ["20 F"],
                            "--room-temperature": ["68 F"], "--room-pressure": ["-2 Pa"],
                            "--air-pressure": ["29 inHg"], "--inlet-loss": ["1.2"],
                            "--fitting-loss": ["0.6"], "--cap-loss": ["0.5"],
                            "--friction-factor": ["1/30"], "--criterion": ["0.8 ft/s"],
                            "--throat-area": ["90 sq in"], "--inlet": ["sharp"]}
                document = DRAWING if verb == "draft" else UNMEASURED
                alone = {"--appliance": ["--standard", "irc-2021"],
                         "--fuel": ["--standard", "irc-2021", "--appliance", "stove"]}
                with self.subTest(verb, option=option):
                    run = Run(verb, option, *argument.get(option, []), *word,
                              *alone.get(option, []), stdin=encoded(document))
                    self.assertEqual((run.status, run.stderr), (0, b""))

    def test_version(self):
        run = Run("--version")
        self.assertEqual((run.status, run.stderr), (0, b""))
        self.assertRegex(run.stdout, rb"^ingle \d+\.\d+\.\d+\n$")


class CommandLine(unittest.TestCase):
    def refused(self, *words, says=""):
        run = Run(*words, stdin=encoded(EXAMPLE))
        self.assertEqual((run.status, run.stdout), (2, b""), words)
        self.assertEqual(run.error["code"], "usage")
        self.assertIn(says, run.error["message"])

    def test_a_verb_is_needed(self):
        self.refused()

    def test_the_nearest_word_is_named(self):
        self.refused("chekc", says='"check"')
        self.refused("check", "--lnies", says="--lines")
        self.refused("check", "--standard", "irc-2022", says='"irc-2')
        self.refused("check", "--fail-on", "fail", says='"fails"')
        self.refused("check", "--unit", "mmm", says='"mm"')
        self.refused("list", "rule", says='"rules"')
        self.refused("schema", "reports", says='"report"')
        self.refused("check", "--reading", "hearth-step=round-up", says='"hearth-steps"')
        self.refused("check", "--reading", "hearth-steps=roundup", says='"round-up"')

    def test_the_offending_word_is_named(self):
        self.refused("paint", says='"paint"')
        self.refused("check", "--colour", says="--colour")
        self.refused("check", "-x", says="-x")
        self.refused("check", "--unit", "cubit", says='"cubit"')
        self.refused("list", "units", "verdicts", says='"verdicts"')

    def test_options_belong_to_verbs(self):
        self.refused("--lines")
        self.refused("list", "units", "--lines", says="--lines")
        self.refused("schema", "survey", "--standard", "irc-2021", says="--standard")
        self.refused("check", "--version", says="--version")

    def test_arguments_of_options(self):
        self.refused("check", "--unit", says="--unit")
        self.refused("check", "--lines=yes", says="--lines")
        self.refused("check", "--reading", says="--reading")
        for reading in ("", "=", "hearth-steps", "hearth-steps=", "=round-up", "x" * 5000,
                        "hearth-steps=round-up=", "hearth-steps=" + "x" * 5000):
            self.refused("check", "--reading", reading)
        self.refused("check", "--amendments", says="--amendments")
        self.refused("check", "--amendments", "-", says="standard input")
        self.refused("list", "rules", "--standard", "irc-2021", "--standard", "irc-2018")
        for missing in ("list", "schema"):
            self.refused(missing)

    def test_words_of_any_bytes(self):
        self.refused(b"\xff\xfe\"\\\n", says="??")
        self.refused("Kaminöfen", says="Kaminöfen")
        self.refused("ö" * 5000, says="…")

    def test_options_end_at_two_hyphens(self):
        with tempfile.TemporaryDirectory() as folder:
            with open(os.path.join(folder, "--lines"), "wb") as file:
                file.write(encoded(FAILS))
            run = Run("check", "--", "--lines", cwd=folder)
        self.assertEqual(run.document["verdict"], "fails")

    def test_options_may_follow_files(self):
        self.assertEqual(Run("check", "-", "--no-working", stdin=encoded(FAILS)).stdout,
                         Run("check", "--no-working", "-", stdin=encoded(FAILS)).stdout)


class Check(unittest.TestCase):
    def test_a_report_is_indented_and_alone(self):
        run = Run("check", stdin=encoded(EXAMPLE))
        self.assertEqual((run.status, run.stderr), (0, b""))
        self.assertTrue(run.stdout.startswith(b'{\n  "id": "alder-lane-living-room",\n'))
        self.assertTrue(run.stdout.endswith(b"\n}\n"))

    def finding(self, *words, document=FAILS, rule="hearth-front"):
        report = Run("check", *words, stdin=encoded(document)).document
        return next(found for found in report["findings"] if found["rule"] == rule)

    def test_hearth_of_an_opening_of_six_square_feet(self):
        # IRC 2021, R1001.10: from 6 square feet on, 20 inches in front.
        finding = self.finding()
        self.assertEqual(finding["verdict"], "fails")
        self.assertEqual(finding["required"], {"value": 20, "unit": "in", "text": "20 in"})
        self.assertEqual(finding["measured"]["text"], "19 15/16 in")
        self.assertEqual(finding["margin"]["text"], "-1/16 in")
        self.assertEqual(finding["section"], "R1001.10")
        self.assertTrue(finding["working"])
        self.assertTrue(finding["remedy"])

    def test_an_amendment_is_cited(self):
        finding = self.finding(document=EXAMPLE)
        self.assertEqual(finding["required"]["text"], "24 in")
        self.assertEqual(finding["amendment"], "Alder Lane by-law 7-2")

    def test_without_working(self):
        self.assertNotIn("working", self.finding("--no-working"))

    def test_units(self):
        texts = {unit: self.finding("--unit", unit)["measured"]["text"]
                 for unit in ("in", "ft", "mm", "cm", "m")}
        self.assertEqual(texts["in"], "19 15/16 in")
        self.assertEqual(texts["mm"], "506.4125 mm")  # 19.9375 × 25.4
        self.assertEqual(texts["cm"], "50.64125 cm")
        self.assertEqual(texts["m"], "0.5064125 m")
        self.assertEqual(texts["ft"], "1 ft 7 15/16 in")

    def test_all_shows_what_does_not_apply(self):
        shown = Run("check", "--all", stdin=encoded(MEETS)).document["findings"]
        usual = Run("check", stdin=encoded(MEETS)).document["findings"]
        verdicts = {finding["verdict"] for finding in shown}
        self.assertIn("not-applicable", verdicts)
        self.assertEqual([found for found in shown if found["verdict"] != "not-applicable"], usual)

    def test_standards_of_the_command_line_take_their_place(self):
        report = Run("check", "--standard", "irc-2018", "--standard", "irc-2015",
                     stdin=encoded(UNMEASURED)).document
        named = [finding["standard"] for finding in report["findings"]]
        self.assertEqual(sorted(set(named), key=named.index), ["irc-2018", "irc-2015"])

    def test_a_document_needs_no_standards_then(self):
        document = {"survey": UNMEASURED["survey"]}
        self.assertEqual(Run("check", stdin=encoded(document)).error["code"], "no-standard")
        self.assertEqual(Run("check", "--standard", "irc-2021", stdin=encoded(document)).status, 0)

    def test_bad_input(self):
        for name, data, code, at, word in ALL_BAD:
            with self.subTest(name):
                run = Run("check", stdin=data)
                self.assertEqual((run.status, run.stdout), (2, b""))
                self.assertEqual(run.error["code"], code)
                self.assertIn(word, run.error["message"])
                self.assertIn("line", run.error)
                self.assertIn("column", run.error)
                if at is not None:
                    self.assertEqual(run.error["at"], at)

    def test_line_and_column_of_an_error(self):
        data = b'{\n  "standards": ["irc-2021"],\n  "survey": {"opening": {"widht": "36 in"}}\n}'
        error = Run("check", stdin=data).error
        self.assertEqual((error["line"], error["column"]), (3, 26))

    def test_a_hundred_megabytes(self):
        pieces = [b'{"note": "'] + [b"x" * MEBIBYTE] * 100 + [b'", "survey": {}}']
        small = run_long(["check"], [b"{"])[3]
        status, out, err, memory = run_long(["check"], pieces)
        self.assertEqual((status, out), (2, b""))
        self.assertEqual(json.loads(err)["error"]["code"], "length")
        self.assertLess(memory, small + 8 * MEBIBYTE)

    def test_the_longest_document(self):
        longest = MEBIBYTE
        data = encoded(FAILS)
        self.assertEqual(Run("check", stdin=data.ljust(longest)).status, 0)
        self.assertEqual(Run("check", stdin=data.ljust(longest + 1)).error["code"], "length")


class Files(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)

    def file(self, name, data):
        path = os.path.join(self.folder.name, name)
        with open(path, "wb") as file:
            file.write(data)
        return path

    def test_reports_in_the_order_of_files(self):
        run = Run("check", self.file("a.json", encoded(FAILS)), "-", stdin=encoded(MEETS))
        first, end = json.JSONDecoder().raw_decode(run.stdout.decode())
        second = json.loads(run.stdout.decode()[end:])
        self.assertEqual((first["verdict"], second["verdict"]), ("fails", "meets"))

    def test_one_bad_file_leaves_nothing_on_standard_output(self):
        bad = self.file('bad "one" ö.json', b'{"survey": 1}')
        run = Run("check", self.file("good.json", encoded(FAILS)), bad)
        self.assertEqual((run.status, run.stdout), (2, b""))
        self.assertEqual(run.error["code"], "type")
        self.assertEqual(run.error["at"], "/survey")
        self.assertTrue(run.error["message"].startswith(bad + ": "))

    def test_files_that_cannot_be_read(self):
        for name in (os.path.join(self.folder.name, "none.json"), self.folder.name):
            for more in ([], ["--lines"]):
                run = Run("check", *more, name)
                self.assertEqual((run.status, run.stdout), (3, b""))
                self.assertEqual(run.error["code"], "io")
                self.assertIn(name, run.error["message"])

    def test_lines_count_through_all_files(self):
        first = self.file("a.jsonl", encoded(FAILS) + b"\n" + encoded(FAILS))
        run = Run("check", "--lines", first, self.file("b.jsonl", b"no\n"))
        self.assertEqual([line.get("line") for line in run.lines], [None, None, 3])

    @unittest.skipUnless(os.path.exists("/dev/full"), "the system has no /dev/full")
    def test_output_that_cannot_be_written(self):
        for words in (["check"], ["check", "--lines"], ["list", "rules"], ["--help"]):
            with self.subTest(words), open("/dev/full", "wb") as full:
                done = subprocess.run([COMMAND, *words], input=encoded(FAILS), stdout=full,
                                      stderr=subprocess.PIPE, timeout=60, check=False)
                self.assertEqual(done.returncode, 3)
                self.assertEqual(json.loads(done.stderr)["error"]["code"], "io")

    def test_a_reader_that_goes_away(self):
        script = '"$0" list rules | head -c 1 >/dev/null; echo "${PIPESTATUS[0]}"'
        done = subprocess.run(["bash", "-c", script, COMMAND], capture_output=True, timeout=60,
                              check=False)
        self.assertEqual(done.stderr, b"")
        self.assertIn(done.stdout, (b"0\n", b"3\n", b"141\n"))


class Lines(unittest.TestCase):
    def test_bad_lines_between_good_ones(self):
        good = encoded(FAILS) + b"\n"
        for name, data, code, at, word in ALL_BAD:
            with self.subTest(name):
                run = Run("check", "--lines", stdin=good + data + b"\n" + good)
                self.assertEqual((run.status, run.stderr), (0, b""))
                before, answer, after = run.lines
                self.assertEqual((before["verdict"], after["verdict"]), ("fails", "fails"))
                self.assertEqual(list(answer), ["line", "error"])
                self.assertEqual(answer["line"], 2)
                self.assertEqual(answer["error"]["code"], code)
                self.assertIn(word, answer["error"]["message"])
                self.assertIn("column", answer["error"])
                if at is not None:
                    self.assertEqual(answer["error"]["at"], at)

    def test_one_line_out_for_each_line_in(self):
        lines = [encoded(FAILS), b"", b"no", encoded(MEETS), b"  ", encoded(TOO_CLOSE)]
        for end in (b"", b"\n"):
            run = Run("check", "--lines", stdin=b"\n".join(lines) + end)
            self.assertEqual([line.get("verdict", line.get("line")) for line in run.lines],
                             ["fails", 2, 3, "meets", 5, "too-close"])

    def test_nothing_in_nothing_out(self):
        run = Run("check", "--lines")
        self.assertEqual((run.status, run.stdout, run.stderr), (0, b"", b""))

    def test_lines_of_other_systems(self):
        run = Run("check", "--lines", stdin=encoded(FAILS) + b"\r\n" + encoded(MEETS) + b"\r\n")
        self.assertEqual([line["verdict"] for line in run.lines], ["fails", "meets"])

    def test_a_line_says_what_a_document_says(self):
        for words in ([], ["--all"], ["--no-working"], ["--unit", "mm"]):
            line = Run("check", "--lines", *words, stdin=encoded(EXAMPLE)).lines
            self.assertEqual(line, [Run("check", *words, stdin=encoded(EXAMPLE)).document])

    def test_a_line_of_a_hundred_megabytes(self):
        good = encoded(FAILS) + b"\n"
        pieces = ([good, b'{"note": "'] + [b"x" * MEBIBYTE] * 100 +
                  [b'", "survey": {}}\n', good])
        small = run_long(["check", "--lines"], [good])[3]
        status, out, err, memory = run_long(["check", "--lines"], pieces)
        self.assertEqual((status, err), (0, b""))
        before, answer, after = [json.loads(line) for line in out.splitlines()]
        self.assertEqual((before["verdict"], after["verdict"]), ("fails", "fails"))
        self.assertEqual((answer["line"], answer["error"]["code"]), (2, "length"))
        self.assertLess(memory, small + 8 * MEBIBYTE)

    def test_memory_does_not_grow_with_the_lines(self):
        good = encoded(FAILS) + b"\n"
        few = run_long(["check", "--lines"], [good * 100])[3]
        status, out, _, many = run_long(["check", "--lines"], [good * 100] * 50)
        self.assertEqual((status, out.count(b"\n")), (0, 5000))
        self.assertLess(many, few + 2 * MEBIBYTE)

    def test_lines_at_the_edge_of_what_is_read_at_once(self):
        good = encoded(FAILS)
        for length in (65535, 65536, 65537, MEBIBYTE - 1, MEBIBYTE):
            data = good + b"\n" + good.ljust(length) + b"\n" + good
            self.assertEqual([line["verdict"] for line in
                              Run("check", "--lines", stdin=data).lines], ["fails"] * 3)
        data = good + b"\n" + good.ljust(MEBIBYTE + 1) + b"\n" + good
        codes = [line.get("error", {}).get("code") for line in
                 Run("check", "--lines", stdin=data).lines]
        self.assertEqual(codes, [None, "length", None])

    def test_a_persistent_child_is_answered_line_by_line(self):
        for words in ([], ["--unbuffered"]):
            child = subprocess.Popen([COMMAND, "check", "--lines", *words], stdin=subprocess.PIPE,
                                     stdout=subprocess.PIPE, bufsize=0)
            with child:
                for document in (FAILS, MEETS, FAILS):
                    child.stdin.write(encoded(document) + b"\n")
                    ready, _, _ = select.select([child.stdout], [], [], 30)
                    self.assertTrue(ready, "no answer within 30 seconds")
                    answer = b""
                    while not answer.endswith(b"\n"):
                        answer += child.stdout.read(65536)
                    self.assertIn("verdict", json.loads(answer))
                child.stdin.close()
                self.assertEqual(child.wait(30), 0)


class FailOn(unittest.TestCase):
    # From the gravest to the mildest, as the contract has it; nothing is milder than unmeasured
    # but meeting the rules.
    LADDER = ["fails", "too-close", "by-listing", "unmeasured"]

    def test_the_ladder(self):
        for document, gravity in ((FAILS, 0), (TOO_CLOSE, 1), (UNMEASURED, 3), (MEETS, 4)):
            for step, name in enumerate(self.LADDER):
                with self.subTest(gravity, fail_on=name):
                    run = Run("check", "--fail-on", name, stdin=encoded(document))
                    self.assertEqual(run.status, 1 if gravity <= step else 0)
                    self.assertEqual(run.stdout, Run("check", stdin=encoded(document)).stdout)
                    self.assertEqual(run.stderr, b"")

    def test_the_verdicts_of_the_documents(self):
        for document, verdict in ((FAILS, "fails"), (TOO_CLOSE, "too-close"),
                                  (UNMEASURED, "unmeasured"), (MEETS, "meets")):
            run = Run("check", stdin=encoded(document))
            self.assertEqual((run.status, run.document["verdict"]), (0, verdict))

    def test_lines_fail_by_the_gravest(self):
        data = b"\n".join(map(encoded, (MEETS, TOO_CLOSE, MEETS)))
        self.assertEqual(Run("check", "--lines", "--fail-on", "fails", stdin=data).status, 0)
        self.assertEqual(Run("check", "--lines", "--fail-on", "too-close", stdin=data).status, 1)

    def test_lines_that_cannot_be_used(self):
        data = encoded(MEETS) + b"\nno\n" + encoded(MEETS)
        self.assertEqual(Run("check", "--lines", stdin=data).status, 0)
        self.assertEqual(Run("check", "--lines", "--fail-on", "unmeasured", stdin=data).status, 0)
        run = Run("check", "--lines", "--fail-on", "error", stdin=data)
        self.assertEqual((run.status, len(run.lines)), (1, 3))

    def test_each_of_several_counts(self):
        both = ["--fail-on", "error", "--fail-on", "too-close", "--fail-on", "fails"]
        for data in (b"no", encoded(TOO_CLOSE), encoded(FAILS)):
            self.assertEqual(Run("check", "--lines", *both, stdin=data).status, 1)
        self.assertEqual(Run("check", "--lines", *both, stdin=encoded(UNMEASURED)).status, 0)

    def test_a_document_that_cannot_be_used_is_no_verdict(self):
        for name in self.LADDER + ["error"]:
            self.assertEqual(Run("check", "--fail-on", name, stdin=b"no").status, 2)


class List(unittest.TestCase):
    def test_every_catalogue_is_an_array_of_objects(self):
        for name in CATALOGUES:
            run = Run("list", name)
            self.assertEqual((run.status, run.stderr), (0, b""))
            self.assertTrue(run.document)
            self.assertTrue(all(isinstance(entry, dict) for entry in run.document))

    def test_ids_are_unique(self):
        for name, key in (("standards", "id"), ("quantities", "id"), ("units", "id"),
                          ("verdicts", "verdict"), ("statuses", "code"), ("statuses", "status")):
            keys = [entry[key] for entry in Run("list", name).document]
            self.assertEqual(len(keys), len(set(keys)), name)

    def test_rules_belong_to_standards(self):
        rules = Run("list", "rules").document
        for standard in Run("list", "standards").document:
            own = [rule for rule in rules if rule["standard"] == standard["id"]]
            self.assertEqual(len(own), standard["rules"])
            listed = Run("list", "rules", "--standard", standard["id"]).document
            self.assertEqual(listed, own)

    def test_rules_speak_of_known_things(self):
        quantities = {entry["id"] for entry in Run("list", "quantities").document}
        for rule in Run("list", "rules").document:
            self.assertTrue(rule["judges"])
            self.assertLessEqual(set(rule["judges"]), quantities)
            self.assertLessEqual(set(rule.get("from", [])), quantities)
            self.assertNotIn(0, (rule.get("since"), rule.get("until")))

    def test_a_standard_has_its_own_quantities(self):
        rules = Run("list", "rules", "--standard", "irc-2021").document
        used = {name for rule in rules
                for name in rule["judges"] + rule.get("from", []) + [rule.get("listing")]} - {None}
        listed = Run("list", "quantities", "--standard", "irc-2021").document
        self.assertEqual({entry["id"] for entry in listed}, used)
        self.assertLess(len(listed), len(Run("list", "quantities").document))

    def test_a_standard_by_itself(self):
        listed = Run("list", "standards", "--standard", "irc-2018").document
        self.assertEqual([entry["id"] for entry in listed], ["irc-2018"])

    def test_rows_as_printed(self):
        # IRC 2021, R1001.10; and Table R1003.14(2): a 13 by 13 liner has 127 square inches.
        rule = next(rule for rule in Run("list", "rules", "--standard", "irc-2021").document
                    if rule["rule"] == "hearth-front")
        self.assertEqual(rule["numbers"]["large"]["text"], "20 in")
        self.assertEqual(rule["section"], "R1001.10")
        standard, = Run("list", "standards", "--standard", "irc-2021").document
        liner = next(row for row in standard["liners"] if row["liner"] == "13x13")
        self.assertEqual(liner["net_area"], {"value": 127, "unit": "in2", "text": "127 in2"})

    def test_sizes_of_units(self):
        # The inch is 25.4 mm exactly: 25 400 000 nm. The foot is 12 of it.
        units = {unit["id"]: unit for unit in Run("list", "units").document}
        self.assertEqual((units["in"]["numerator"], units["in"]["denominator"]), (25400000, 1))
        self.assertEqual(units["ft"]["numerator"], 12 * 25400000)
        self.assertEqual(units["in"]["ucum"], "[in_i]")
        self.assertIn("″", units["in"]["names"])

    def test_gravity_is_the_order_of_verdicts(self):
        names = [entry["verdict"] for entry in
                 sorted(Run("list", "verdicts").document, key=lambda entry: -entry["gravity"])]
        self.assertEqual(names[:4], FailOn.LADDER)


class Manual(unittest.TestCase):
    def setUp(self):
        self.text = (BINDING / "command/ingle.1").read_text()
        self.tags = "\n".join(re.findall(r"^\.It (.*)$", self.text, re.MULTILINE))

    def test_every_option_and_verb_has_its_entry(self):
        for verb in VERBS:
            self.assertRegex(self.tags, rf"(?m)^Cm {verb}\b")
            for option in options_in_help(verb) + options_in_help():
                self.assertRegex(self.tags, rf"(?m)^Fl (?:h , )?-{option[2:]}\b")

    def test_it_has_no_option_that_help_does_not_offer(self):
        offered = {option for verb in VERBS for option in options_in_help(verb)}
        described = {"-" + name for name in re.findall(r"^Fl (?:h , )?(-[a-z-]+)", self.tags,
                                                       re.MULTILINE)}
        self.assertEqual(described, offered | set(options_in_help()))

    def test_words(self):
        words = CATALOGUES + ["survey", "report", "amendments", "error"] + FailOn.LADDER
        for word in words:
            self.assertRegex(self.text, rf"Cm .*{word}\b")

    @unittest.skipUnless(shutil.which("mandoc"), "mandoc is not installed")
    def test_lint(self):
        done = subprocess.run(["mandoc", "-T", "lint", "-W", "warning",
                               BINDING / "command/ingle.1"],
                              capture_output=True, timeout=60, check=False)
        self.assertEqual((done.returncode, done.stdout), (0, b""))


class Completion(unittest.TestCase):
    def complete(self, *words):
        script = ('source "$1"; shift; COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _ingle; '
                  'printf "%s\\n" "${COMPREPLY[@]}"')
        done = subprocess.run(["bash", "-c", script, "bash", BINDING / "command/ingle.bash",
                               COMMAND,
                               *words], capture_output=True, timeout=60, check=False, text=True)
        self.assertEqual((done.returncode, done.stderr), (0, ""))
        return done.stdout.split()

    def test_verbs(self):
        self.assertEqual(self.complete(""), VERBS)
        self.assertEqual(self.complete("s"), ["solve", "sweep", "schema"])

    def test_options_are_those_of_the_help(self):
        self.assertEqual(self.complete("-"), options_in_help())
        for verb in VERBS:
            self.assertEqual(self.complete(verb, "--"), options_in_help(verb))
        self.assertIn("--fail-on", self.complete("check", "--f"))

    def test_words_of_verbs(self):
        self.assertEqual(self.complete("list", ""), CATALOGUES)
        self.assertEqual(self.complete("list", "--standard", "irc-2021", "ru"), ["rules"])
        self.assertEqual(self.complete("schema", ""),
                         ["survey", "report", "amendments", "solution", "frontier", "sweep",
                          "comparison", "exercise", "draft", "error"])

    def test_arguments_of_options(self):
        standards = [entry["id"] for entry in Run("list", "standards").document]
        self.assertEqual(self.complete("check", "--standard", ""), standards)
        self.assertEqual(self.complete("list", "--standard", "irc-2018"), ["irc-2018"])
        self.assertEqual(self.complete("check", "--unit", "m"), ["mm", "m"])
        self.assertEqual(self.complete("check", "--fail-on", ""), FailOn.LADDER + ["error"])
        self.assertEqual(self.complete("sweep", "--format", ""), ["json", "csv", "svg"])
        self.assertEqual(self.complete("solve", "--quantity", "opening.w"), ["opening.width"])
        self.assertEqual(self.complete("solve", "--rule", "hearth-front"), ["hearth-front"])

    def test_readings(self):
        both = [f"{reading['id']}={option['id']}" for reading in Run("list", "readings").document
                for option in reading["options"]]
        self.assertIn("hearth-steps=whole-steps", both)
        self.assertEqual(self.complete("check", "--reading", ""), both)
        self.assertEqual(self.complete("check", "--reading", "hearth-steps=w"),
                         ["hearth-steps=whole-steps"])
        # A shell that parts words at `=` asks for what is behind it.
        for words in (["=", ""], ["="]):
            self.assertEqual(self.complete("check", "--reading", "hearth-steps", *words),
                             ["round-up", "whole-steps"])
        self.assertEqual(self.complete("check", "--reading", "hearth-steps", "=", "r"),
                         ["round-up"])

    def test_files(self):
        self.assertEqual(self.complete("check", "--amendments", str(BINDING / "command/ingle.b")),
                         [str(BINDING / "command/ingle.bash")])
        for verb in ("check", "compare"):
            self.assertEqual(self.complete(verb, str(BINDING / "command/ingle.b")),
                             [str(BINDING / "command/ingle.bash")])


if __name__ == "__main__":
    unittest.main()
