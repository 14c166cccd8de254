"""Files from strangers: a drawing or a typed refusal, and whatever was read can be judged, shown and saved."""

from __future__ import annotations

import csv
import io
import json
import socket
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cli import run
from circuitcheck.drawing.value import Drawing
from circuitcheck.storage.faults import is_unseen
from circuitcheck.storage.reading import parse
from tests.storage.hostile import samples
from tests.strange_files import READ, Tried, outputs

BATCHES = 20
MANY, MOST_MIB = 200_000, 512


@pytest.mark.parametrize("batch", range(BATCHES))
def test_a_strange_file_is_a_drawing_or_refused(batch: int) -> None:
    Tried().batch(batch)


@pytest.mark.evening
@pytest.mark.skipif(sys.platform == "win32", reason="memory is not told that way there")
@pytest.mark.parametrize("part", range(MANY // READ // BATCHES))
def test_nor_is_any_of_very_many_anything_else(part: int, capsys: pytest.CaptureFixture[str]) -> None:
    first = (part + 1) * BATCHES
    program = [sys.executable, "-m", "tests.strange_files", str(first), str(first + BATCHES - 1)]
    done = subprocess.run(program, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    tried = json.loads(done.stdout)
    with capsys.disabled():
        print(f"\n{tried}")
    assert tried["files"] == BATCHES * READ
    assert tried["most_mib"] < MOST_MIB


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
