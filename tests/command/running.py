# SPDX-License-Identifier: MIT
"""Runs the command; the environment variable INGLE_COMMAND holds its path."""

import contextlib
import json
import os
import pathlib
import subprocess
import tempfile
import threading

COMMAND = os.environ["INGLE_COMMAND"]
BINDING = pathlib.Path(__file__).resolve().parents[2] / "bindings" / "json"


class Run:
    """What came of running the command with these arguments."""

    def __init__(self, *arguments, stdin=b"", **more):
        done = subprocess.run([COMMAND, *arguments], input=stdin, capture_output=True, timeout=60,
                              check=False, **more)
        self.status = done.returncode
        self.stdout = done.stdout
        self.stderr = done.stderr

    @property
    def document(self):
        """Standard output as one JSON document."""
        return json.loads(self.stdout)

    @property
    def lines(self):
        """Standard output as JSON Lines."""
        return [json.loads(line) for line in self.stdout.splitlines()]

    @property
    def error(self):
        """The error on standard error, which is one line and nothing else."""
        document = json.loads(self.stderr)
        if self.stderr.count(b"\n") != 1 or list(document) != ["error"]:
            raise AssertionError(f"not one line of one error: {self.stderr!r}")
        return document["error"]


def run_long(arguments, pieces):
    """Runs the command on a stream of pieces; gives status, both outputs and the memory it took.

    What is not read is let go: the command may end before its input does.
    """
    # A build with the address sanitizer keeps what is freed, up to this size.
    sanitizer = os.environ.get("ASAN_OPTIONS", "") + ":quarantine_size_mb=1"
    with tempfile.TemporaryFile() as out, tempfile.TemporaryFile() as err:
        child = subprocess.Popen([COMMAND, *arguments], stdin=subprocess.PIPE, stdout=out,
                                 stderr=err, env={**os.environ, "ASAN_OPTIONS": sanitizer})

        def feed():
            with contextlib.suppress(BrokenPipeError), child.stdin:
                for piece in pieces:
                    child.stdin.write(piece)

        feeder = threading.Thread(target=feed)
        feeder.start()
        _, status, usage = os.wait4(child.pid, 0)
        child.returncode = os.waitstatus_to_exitcode(status)
        feeder.join()
        out.seek(0)
        err.seek(0)
        return child.returncode, out.read(), err.read(), usage.ru_maxrss * 1024
