"""`compare` on the command line: its forms, its schema, its exit status; and what `check` tells of reviews."""

from __future__ import annotations

import csv
import io
import json
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator

import circuitcheck.report as report
from circuitcheck.cli import run
from circuitcheck.drawing.edits import set_field
from circuitcheck.review.record import sign
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from circuitcheck.storage.writing import write as save
from tests.cli.drawings import accepting, advised, dangerous, sound, write

Capture = pytest.CaptureFixture[str]
SCHEMA = Draft202012Validator(
    json.loads((Path(report.__file__).parent / "compare.schema.json").read_text(encoding="utf-8"))
)
SAMPLES = data_path("samples")
FOUND, PROPOSED = (str(SAMPLES / f"terrace-as-{name}.wetcircuit") for name in ("found", "proposed"))


def as_json(capsys: Capture, *arguments: str) -> tuple[int, dict[str, Any]]:
    status = run([*arguments, "--as", "json"])
    told: dict[str, Any] = json.loads(capsys.readouterr().out)
    return status, told


def test_the_schema_is_a_schema() -> None:
    Draft202012Validator.check_schema(SCHEMA.schema)


@pytest.mark.parametrize("old", sorted(SAMPLES.glob("*.wetcircuit"))[::3], ids=lambda path: path.stem)
def test_json_holds_to_the_schema_that_ships(old: Path, capsys: Capture) -> None:
    status, told = as_json(capsys, "compare", str(old), PROPOSED)
    SCHEMA.validate(told)
    assert (status == 0) is told["same"] is (str(old) == PROPOSED)


def test_the_same_drawing_is_0_in_any_order_of_the_file(tmp_path: Path, capsys: Capture) -> None:
    told = sound()
    old = write(tmp_path / "old.wetcircuit", told)
    turned = {name: each[::-1] if isinstance(each, list) else each for name, each in reversed(told.items())}
    new = write(tmp_path / "new.wetcircuit", turned)
    assert run(["compare", str(old), str(new)]) == 0
    assert "hold the same" in capsys.readouterr().out


def test_text_tells_what_came_out_and_went_in(tmp_path: Path, capsys: Capture) -> None:
    old, new = write(tmp_path / "old.wetcircuit", sound()), write(tmp_path / "new.wetcircuit", dangerous())
    assert run(["compare", str(old), str(new)]) == 1
    text = capsys.readouterr().out
    assert "Fitted" in text and "iv1" in text
    assert "1  Isolating valve 15 mm  [iv1]" in text
    assert "Came: ! danger, vessel-can-be-cut-off:" in text


def test_csv_has_a_row_for_each_and_no_formulas(tmp_path: Path, capsys: Capture) -> None:
    told = dangerous()
    told["title"] = "=1+1"
    old, new = write(tmp_path / "old.wetcircuit", sound()), write(tmp_path / "new.wetcircuit", told)
    assert run(["compare", str(old), str(new), "--as", "csv"]) == 1
    rows = list(csv.DictReader(io.StringIO(capsys.readouterr().out)))
    assert {row["section"] for row in rows} == {"difference", "fit", "finding"}
    assert any(row["what"] == "fitted" and row["new_id"] == "iv1" for row in rows)
    assert not any(value.startswith("=") for row in rows for value in row.values())


def test_a_file_that_cannot_be_read_is_2_and_both_are_told(tmp_path: Path, capsys: Capture) -> None:
    broken = tmp_path / "broken.wetcircuit"
    broken.write_text("{", encoding="utf-8")
    assert run(["compare", str(broken), str(tmp_path / "none.wetcircuit")]) == 2
    said = capsys.readouterr()
    assert said.out == "" and "broken" in said.err and "none" in said.err


@pytest.fixture
def reviewed(tmp_path: Path) -> Path:
    """The hall with a secured valve, its finding accepted, and a review record."""
    path = write(
        tmp_path / "hall.wetcircuit",
        accepting(advised(), "vessel-can-be-cut-off", "hs1", "iv1", "ev1", until="2031-05-01"),
    )
    save(sign(read(path), "B. Looker", date(2031, 3, 1), "accepted", role="supervisor"), path)
    return path


def test_check_tells_acceptances_and_a_record_that_holds(reviewed: Path, capsys: Capture) -> None:
    status, told = as_json(capsys, "check", str(reviewed), "--on", "2031-03-15", "--at-least", "advice")
    (file,) = told["files"]
    (finding,) = file["findings"]
    assert status == 0 and finding["acceptance"] == {
        "reason": "Agreed.", "author": "A supervisor", "date": "2030-01-01", "until": "2031-05-01",
    }  # fmt: skip
    assert [each["standing"] for each in file["acceptances"]] == ["holds"]
    (record,) = file["reviews"]
    assert (record["state"], record["author"], record["meaning"]) == ("holds", "B. Looker", "holds")
    schema = json.loads((Path(report.__file__).parent / "check.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator(schema).validate(told)


def test_check_tells_a_broken_record_and_what_changed(reviewed: Path, capsys: Capture) -> None:
    save(set_field(read(reviewed), "p1", "size_mm", 28), reviewed)
    _, told = as_json(capsys, "check", str(reviewed), "--on", "2031-03-15")
    (record,) = told["files"][0]["reviews"]
    assert record["state"] == "broken" and record["layout"] == "holds"
    assert "Changed: pipe p1, size from 15 mm to 28 mm." in record["told"]
    run(["check", str(reviewed), "--on", "2031-06-01"])
    text = capsys.readouterr().out
    assert "Review record by B. Looker, supervisor, 2031-03-01: accepted." in text
    assert "The record is broken" in text and "size from 15 mm to 28 mm" in text
    assert "Acceptance run out on 2031-05-01" in text


def test_csv_and_sarif_tell_them_too(reviewed: Path, capsys: Capture) -> None:
    run(["check", str(reviewed), "--on", "2031-03-15", "--as", "csv"])
    rows = list(csv.DictReader(io.StringIO(capsys.readouterr().out)))
    accepted, record = rows
    assert (accepted["reason"], accepted["accepted_by"], accepted["until"]) == (
        "Agreed.",
        "A supervisor",
        "2031-05-01",
    )
    assert record["grade"] == "record" and "The record holds" in record["message"]
    run(["check", str(reviewed), "--on", "2031-03-15", "--as", "sarif"])
    (one,) = json.loads(capsys.readouterr().out)["runs"]
    assert one["artifacts"][0]["properties"]["reviews"][0]["state"] == "holds"
    (suppression,) = one["results"][0]["suppressions"]
    assert suppression["status"] == "accepted" and suppression["properties"]["until"] == "2031-05-01"


def test_a_file_without_either_says_nothing_of_them(tmp_path: Path, capsys: Capture) -> None:
    _, told = as_json(capsys, "check", str(write(tmp_path / "hall.wetcircuit", sound())))
    assert not {"acceptances", "reviews"} & told["files"][0].keys()
