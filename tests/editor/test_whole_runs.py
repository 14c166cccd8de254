"""Whole processes: opened, edited, saved and closed; and two of them on one file."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.editor.own_process import environment, faults_said, ran
from tests.editor.whole_runs import LABEL

RUNS, MANY = 2, 20
SAMPLES = sorted(data_path("samples").glob("*.wetcircuit"))


def copied(sample: Path, folder: Path) -> Path:
    file = folder / sample.name
    file.write_bytes(sample.read_bytes())
    return file


def open_edit_close(number: int, home: Path) -> None:
    """One run; only the label that was typed differs in the file, and nothing else is left."""
    folder = home / "drawings"
    folder.mkdir(exist_ok=True)
    file = copied(SAMPLES[number % len(SAMPLES)], folder)
    before = read(file)
    done = ran(home, "-m", "tests.editor.whole_runs", "edit", str(file), timeout_s=90)
    assert (done.returncode, faults_said(done), done.stdout) == (0, [], "saved True\n"), done.stderr
    after = read(file)
    first = next(iter(before.components))
    assert after.components[first].label == LABEL
    rest = [id for id in before.components if id != first]
    assert [after.components[id] for id in rest] == [before.components[id] for id in rest]
    assert (after.pipes, after.controls, after.design) == (before.pipes, before.controls, before.design)
    assert list(folder.iterdir()) == [file]
    assert not list(home.rglob("*.recovery")) and not list(home.rglob("*.open"))
    assert not list(home.rglob("circuitcheck.log"))
    file.unlink()


def test_opened_edited_saved_closed(tmp_path: Path) -> None:
    for number in range(RUNS):
        open_edit_close(number, tmp_path)


@pytest.mark.evening
def test_opened_edited_saved_closed_many_times(tmp_path: Path) -> None:
    for number in range(MANY):
        open_edit_close(number, tmp_path)


class Run:
    """A program that does what it is told."""

    def __init__(self, file: Path, home: Path) -> None:
        self.process = subprocess.Popen(
            [sys.executable, "-m", "tests.editor.whole_runs", "twice", str(file)],
            env=environment(home),
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            text=True,
        )

    def heard(self) -> str:
        assert self.process.stdout is not None
        return self.process.stdout.readline().strip()

    def say(self, *lines: str) -> None:
        assert self.process.stdin is not None
        self.process.stdin.write("".join(f"{line}\n" for line in lines))
        self.process.stdin.flush()

    def close(self) -> int:
        self.say("close")
        return self.ended()

    def ended(self) -> int:
        self.process.communicate(timeout=60)
        return self.process.returncode


def test_two_programs_on_one_file(tmp_path: Path) -> None:
    file = copied(SAMPLES[0], tmp_path)
    one = Run(file, tmp_path)
    assert one.heard() == "shows True"
    two = Run(file, tmp_path)
    assert two.heard() == f"told: {file.name} is open already: the program runs twice."
    two.say("Open it here too")
    assert two.heard() == "shows True"
    one.say("edit of the first", "save")
    assert one.heard() == "saved True"
    two.say("edit of the second", "save")
    assert two.heard() == f"told: {file.name} was changed by somebody else since it was opened here."
    two.say("Cancel")
    assert two.heard() == "saved False"
    assert read(file).title == "of the first"
    two.say("save")
    assert two.heard().startswith("told: ")
    two.say("Replace")
    assert two.heard() == "saved True"
    assert read(file).title == "of the second"
    assert (two.close(), one.close()) == (0, 0)
    three = Run(file, tmp_path)
    assert three.heard() == "shows True"
    assert three.close() == 0
    assert not list(tmp_path.rglob("*.open"))


def test_a_program_that_was_killed_claims_nothing(tmp_path: Path) -> None:
    file = copied(SAMPLES[0], tmp_path)
    one = Run(file, tmp_path)
    assert one.heard() == "shows True"
    one.process.kill()
    one.ended()
    two = Run(file, tmp_path)
    assert two.heard() == "shows True"
    assert two.close() == 0
