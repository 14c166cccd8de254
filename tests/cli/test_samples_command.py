"""`samples`: listed, and copied out without touching anybody's work."""

from __future__ import annotations

from pathlib import Path

import pytest

from circuitcheck.cli import run
from circuitcheck.shipped import data_path

Capture = pytest.CaptureFixture[str]
NAMES = sorted(path.name for path in data_path("samples").glob("*.wetcircuit"))


def test_listed_with_titles(capsys: Capture) -> None:
    assert run(["samples"]) == 0
    lines = [line.split(maxsplit=1) for line in capsys.readouterr().out.splitlines()]
    assert [line[0] for line in lines] == NAMES and len(NAMES) >= 10
    assert all(len(line) == 2 and line[1] for line in lines)


def test_copied_byte_for_byte_and_into_a_folder_that_is_made(tmp_path: Path, capsys: Capture) -> None:
    to = tmp_path / "new" / "folder"
    assert run(["samples", "--to", str(to)]) == 0
    assert sorted(path.name for path in to.iterdir()) == NAMES
    for name in NAMES:
        assert (to / name).read_bytes() == (data_path("samples") / name).read_bytes()
    assert capsys.readouterr().out.splitlines() == [str(to / name) for name in NAMES]


def test_nothing_is_copied_where_one_is_there_already(tmp_path: Path, capsys: Capture) -> None:
    own = tmp_path / NAMES[-1]
    own.write_text("my own work")
    assert run(["samples", "--to", str(tmp_path)]) == 2
    out, err = capsys.readouterr()
    assert out == "" and NAMES[-1] in err
    assert [path.name for path in tmp_path.iterdir()] == [NAMES[-1]]
    assert own.read_text() == "my own work"


def test_a_file_in_place_of_the_folder(tmp_path: Path, capsys: Capture) -> None:
    (tmp_path / "x").write_text("")
    assert run(["samples", "--to", str(tmp_path / "x")]) == 2
    assert capsys.readouterr().err


@pytest.mark.parametrize("name", NAMES)
def test_each_can_be_checked(name: str, tmp_path: Path) -> None:
    assert run(["check", str(data_path("samples") / name)]) in (0, 1)
