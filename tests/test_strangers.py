"""Files from strangers: a drawing or a typed refusal, and whatever was read can be judged, shown and saved."""

from __future__ import annotations

import csv
import io
import json
import socket
import sys
import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from random import Random
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cli import run
from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.parts_list import parts_list
from circuitcheck.report import parts, sizes
from circuitcheck.report.as_csv import as_csv
from circuitcheck.report.as_json import as_json
from circuitcheck.report.as_sarif import as_sarif
from circuitcheck.report.as_text import as_text
from circuitcheck.report.checked import told_of
from circuitcheck.storage.faults import is_unseen
from circuitcheck.storage.reading import DrawingError, parse
from circuitcheck.storage.writing import dump
from tests.storage.hostile import file_bytes, samples

TODAY = date(2030, 1, 31)
BATCHES = 20
READ, JUDGED = 250, 6
"""Files of a batch that are read, and drawings of them that go through everything."""
MOST_S = 2.0
MANY, MOST_MIB = 200_000, 512
KIB_A_MIB = 1024 if sys.platform == "linux" else 1024 * 1024
"""The most memory is told in KiB on Linux, in bytes on macOS."""


def outputs(drawing: Drawing, file: str = "a.wetcircuit") -> dict[str, str]:
    """All that the command line says of a drawing, by the form it is said in."""
    checked = [told_of(file, analyse(drawing), TODAY)]
    found, listed = sizes.sized(file, drawing), parts_list(drawing)
    return {
        "text": as_text(checked),
        "json": as_json(checked),
        "csv": as_csv(checked),
        "sarif": as_sarif(checked),
        "sizes text": sizes.as_text(found),
        "sizes json": sizes.as_json(found),
        "sizes csv": sizes.as_csv(found),
        "parts text": parts.as_text(file, listed),
        "parts json": parts.as_json(file, listed),
        "parts csv": parts.as_csv(listed),
    }


@dataclass
class Tried:
    """How many files were tried, and the most that one of them took."""

    files: int = 0
    judged: int = 0
    read_s: float = 0.0
    judged_s: float = 0.0

    def batch(self, seed: int) -> None:
        """Try the files of one batch: each is a drawing or refused, and what can be read can be told and saved."""
        chance, known, judged = Random(seed), samples(), 0
        refused, read_whole = 0, 0
        for _ in range(READ):
            data = file_bytes(chance, known)
            begun = time.process_time()
            try:
                drawing = parse(data, "strange.wetcircuit")
            except DrawingError as error:
                refused += bool(error.faults and str(error))
                continue
            finally:
                self.files += 1
                self.read_s = max(self.read_s, time.process_time() - begun)
                assert self.read_s < MOST_S, data
            read_whole += 1
            saved = dump(drawing)
            assert dump(parse(saved, "saved.wetcircuit")) == saved
            if judged < JUDGED:
                judged += 1
                analysis = analyse(drawing)
                assert analysis.crashed == (), (analysis.why_not_judged, data)
                assert all(outputs(drawing).values())
                self.judged_s = max(self.judged_s, time.process_time() - begun)
                assert self.judged_s < 5 * MOST_S, data
        assert 0 < refused == READ - read_whole
        assert judged == JUDGED
        self.judged += judged


@pytest.mark.parametrize("batch", range(BATCHES))
def test_a_strange_file_is_a_drawing_or_refused(batch: int) -> None:
    Tried().batch(batch)


@pytest.mark.evening
@pytest.mark.skipif(sys.platform == "win32", reason="memory is not told that way there")
@pytest.mark.parametrize("part", range(MANY // READ // BATCHES))
def test_nor_is_any_of_very_many_anything_else(part: int, capsys: pytest.CaptureFixture[str]) -> None:
    """All in one process, whose memory must not grow by them: run with -n 0."""
    import resource

    tried = Tried()
    for batch in range((part + 1) * BATCHES, (part + 2) * BATCHES):
        tried.batch(batch)
    most_mib = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / KIB_A_MIB
    with capsys.disabled():
        print(f"\n{tried}, {most_mib:.0f} MiB at most")
    assert tried.files == MANY / (MANY // READ // BATCHES)
    assert most_mib < MOST_MIB


HOSTILE = "=HYPERLINK(\"x\")<img src='file:///x'>\x1b[31m\x1b]0;t\x07\x9b2J\u202e\u2066\u200bA&amp;{one}%s"


def with_hostile_texts() -> Drawing:
    """A sample with that text wherever a text may stand."""
    raw: dict[str, Any] = max(samples(), key=lambda each: len(each["components"]))
    raw["title"] = HOSTILE
    for number, part in enumerate(raw["components"]):
        part["label"] = f"{HOSTILE}{number}"
        part.setdefault("data", {})["note"] = HOSTILE
    raw["components"].append({"id": f"{HOSTILE}id", "kind": "pump", "label": "", "at": [90, 90]})
    ends = [[f"{HOSTILE}id", "in"], [95, 95]]
    raw["pipes"].append({"id": f"{HOSTILE}pipe", "ends": ends, "data": {"note": HOSTILE}})
    words = {"author": HOSTILE, "date": HOSTILE, "text": HOSTILE}
    raw["notes"] = [{"id": f"{HOSTILE}note", "on": [HOSTILE], **words, "replies": [words]}]
    checks = {finding.check for finding in analyse(parse(json.dumps(raw).encode(), "x")).findings}
    raw["acceptances"] = [
        {"check": check, "on": [f"{HOSTILE}id"], "reason": HOSTILE, "author": HOSTILE, "date": HOSTILE}
        for check in [*sorted(checks), HOSTILE]
    ]
    names = ("author", "role", "date", "decision", "remarks", "program", "rule_book")
    raw["reviews"] = [dict.fromkeys(names, HOSTILE)]
    return parse(json.dumps(raw).encode(), "x")


def test_text_from_a_file_is_only_text_in_every_output() -> None:
    for form, text in outputs(with_hostile_texts(), f"{HOSTILE}.wetcircuit").items():
        shown = {each for each in text if is_unseen(each)} - {"\n", "\r"}
        assert not shown, (form, shown)
        if "json" in form or form == "sarif":
            json.loads(text)
        if "csv" in form:
            for row in csv.reader(io.StringIO(text)):
                assert not [each for each in row if each.startswith(("=", "@", "\t", "\r"))], (form, row)


class NoNetworkError(AssertionError):
    """Something asked for a socket."""


@pytest.fixture
def no_sockets(monkeypatch: pytest.MonkeyPatch) -> None:
    """Making any socket, or asking for any address, fails."""

    def refuse(*_: object, **__: object) -> Any:
        raise NoNetworkError

    for name in ("socket", "create_connection", "getaddrinfo", "gethostbyname", "socketpair"):
        monkeypatch.setattr(socket, name, refuse)


@pytest.mark.usefixtures("no_sockets")
@pytest.mark.parametrize(
    "call",
    [
        lambda file: ["check", "--cures", "--as", "text", file],
        lambda file: ["check", "--as", "sarif", file],
        lambda file: ["sizes", file],
        lambda file: ["parts", file],
        lambda file: ["compare", file, file],
    ],
)
def test_no_command_makes_a_socket(call: Callable[[str], list[str]], tmp_path: Path) -> None:
    file = tmp_path / "a.wetcircuit"
    file.write_text(json.dumps(samples()[0]))
    assert run(call(str(file))) in (0, 1)
    with pytest.raises(NoNetworkError):
        socket.socket()
