"""Progress: kept in one file, counted by check, exported, never trusted."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path

import pytest

from circuitcheck.lessons.generator import exercise
from circuitcheck.lessons.progress import (
    Log,
    Practised,
    ProgressError,
    Tally,
    as_csv,
    as_json,
    read,
    suggested,
    tallies,
    with_exercise,
    write,
)
from circuitcheck.lessons.scoring import Mark, Outcome, score

LOG = Log(
    exercises=(
        Practised(
            "2030-01-02", 1, "no-store", (("gauge-absent", Outcome.FOUND), ("open-end", Outcome.MISSED))
        ),
        Practised("2030-01-03", 2, "separator", (("open-end", Outcome.WRONG_REASON),), ("near-miss",)),
    )
)


def test_it_is_counted_by_check() -> None:
    assert tallies(LOG) == {
        "gauge-absent": Tally(1, 1, 0, 0),
        "near-miss": Tally(0, 0, 0, 1),
        "open-end": Tally(2, 0, 1, 0),
    }


def test_an_answer_is_added() -> None:
    made = exercise(1, kinds={"gauge-absent"}, arrangement="no-store")
    log = with_exercise(LOG, made, score(made, [Mark("kitchen", "open-end")]), "2030-01-04")
    assert log.exercises[:2] == LOG.exercises
    assert log.exercises[2] == Practised(
        "2030-01-04", 1, "no-store", (("gauge-absent", Outcome.MISSED),), ("open-end",)
    )


def test_it_comes_back_from_its_file(tmp_path: Path) -> None:
    path = tmp_path / "practice.json"
    assert read(path) == Log()
    write(LOG, path)
    assert read(path) == LOG
    assert json.loads(path.read_bytes())["exercises"][0]["seed"] == 1
    assert json.loads(as_json(Log()))["exercises"] == []


@pytest.mark.parametrize(
    "data",
    [
        b"",
        b"{",
        b"[]",
        b'{"exercises": 3}',
        b'{"circuitcheck_practice": 2}',
        b'{"exercises": [{"date": 1}]}',
        b"\xff",
    ],
)
def test_another_file_is_refused_in_a_sentence(tmp_path: Path, data: bytes) -> None:
    path = tmp_path / "practice.json"
    path.write_bytes(data)
    with pytest.raises(ProgressError, match=r"^The file of practice .*\.$"):
        read(path)
    assert path.read_bytes() == data


def test_the_table_has_a_row_a_fault_and_a_row_an_accusation() -> None:
    rows = list(csv.DictReader(io.StringIO(as_csv(LOG))))
    assert [(row["check"], row["outcome"]) for row in rows] == [
        ("gauge-absent", "found"),
        ("open-end", "missed"),
        ("open-end", "wrong reason"),
        ("near-miss", "false accusation"),
    ]


def test_no_cell_is_a_formula() -> None:
    log = Log(exercises=(Practised("=1+1", 1, "@a", (("+x", Outcome.FOUND),)),))
    cells = next(csv.reader(io.StringIO(as_csv(log).split("\r\n")[1])))
    assert cells == ["'=1+1", "1", "'@a", "'+x", "found"]


def test_what_is_least_known_comes_next() -> None:
    kinds = ("gauge-absent", "open-end", "near-miss", "vessel-absent")
    assert suggested(LOG, kinds) == ("near-miss", "open-end", "vessel-absent", "gauge-absent")
    assert suggested(Log(), kinds, 2) == ("gauge-absent", "near-miss")
