"""The command line: outputs, exit statuses, folders, and files that cannot be read."""

from __future__ import annotations

import csv
import io
import json
import os
import shutil
from pathlib import Path

import pytest

from circuitcheck.cli import run
from circuitcheck.shipped import data_path

SOUND, FAULTY, DANGEROUS = "cottage", "terrace-bypass-backwards", "terrace-valve-before-vessel"
Capture = pytest.CaptureFixture[str]


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder with a sound, a faulty and a dangerous drawing in it."""
    for name in (SOUND, FAULTY, DANGEROUS):
        shutil.copy(data_path("samples") / f"{name}.wetcircuit", tmp_path)
    return tmp_path


def drawing(folder: Path, name: str) -> str:
    return str(folder / f"{name}.wetcircuit")


def test_a_sound_drawing_ends_with_0(folder: Path, capsys: Capture) -> None:
    assert run(["check", drawing(folder, SOUND)]) == 0
    out, err = capsys.readouterr()
    assert "Nothing found by" in out and "not a certificate" in out
    assert "0 checks not judged" in err


def test_findings_end_with_1_from_the_grade_that_counts(folder: Path, capsys: Capture) -> None:
    assert run(["check", drawing(folder, FAULTY)]) == 1
    assert run(["check", drawing(folder, FAULTY), "--at-least", "danger"]) == 0
    assert run(["check", drawing(folder, DANGEROUS), "--at-least", "danger"]) == 1
    assert "Return valve" in capsys.readouterr().out


def test_a_file_that_cannot_be_read_never_stops_the_others(folder: Path, capsys: Capture) -> None:
    (folder / "aa.wetcircuit").write_text('{"wetcircuit": 99}')
    (folder / "bb.wetcircuit").write_bytes(b"\xff\xfe\x00")
    assert run(["check", str(folder), "--as", "json"]) == 2
    files = json.loads(capsys.readouterr().out)["files"]
    assert [Path(each["file"]).stem for each in files] == ["aa", "bb", SOUND, FAULTY, DANGEROUS]
    assert [bool(each["error"]) for each in files] == [True, True, False, False, False]
    assert all(each["findings"] == [] for each in files[:3])


def test_json_has_the_shape_others_rely_on(folder: Path, capsys: Capture) -> None:
    run(["check", drawing(folder, DANGEROUS), "--as", "json"])
    first = capsys.readouterr().out
    run(["check", drawing(folder, DANGEROUS), "--as", "json"])
    assert capsys.readouterr().out == first
    told = json.loads(first)
    assert told["program"].startswith("circuitcheck ") and told["rule_book"] == "england"
    (file,) = told["files"]
    assert file["error"] is None and file["title"]
    assert set(file) >= {"taken", "judged", "not_applicable", "not_judged", "findings"}
    (finding,) = file["findings"]
    assert finding["check"] == "vessel-can-be-cut-off" and finding["grade"] == "danger"
    assert set(finding) == {
        "check",
        "grade",
        "message",
        "components",
        "pipes",
        "witness",
        "numbers",
        "missing",
        "accepted",
    }
    assert len(finding["witness"]["shut"]) == 2 and finding["witness"]["alone"] == []
    assert finding["components"][1:3] == finding["witness"]["shut"]


def test_csv_has_a_row_a_finding_and_no_formulas(folder: Path, capsys: Capture) -> None:
    text = (folder / f"{DANGEROUS}.wetcircuit").read_text()
    (folder / f"{DANGEROUS}.wetcircuit").write_text(text.replace('"Heat source"', '"=1+1"'))
    run(["check", drawing(folder, DANGEROUS), "--as", "csv"])
    header, row = csv.reader(io.StringIO(capsys.readouterr().out))
    assert header[:3] == ["file", "check", "grade"] and row[2] == "danger"
    assert row[header.index("message")].startswith("'=1+1")


def test_text_from_a_file_cannot_steer_the_terminal(folder: Path, capsys: Capture) -> None:
    told = json.loads((folder / f"{SOUND}.wetcircuit").read_text())
    told["title"] = "a\x1b[31mred\u202e"
    (folder / f"{SOUND}.wetcircuit").write_text(json.dumps(told))
    run(["check", drawing(folder, SOUND)])
    out = capsys.readouterr().out
    assert "\x1b" not in out and "\u202e" not in out
    assert "<U+001B>" in out and "<U+202E>" in out


def test_strict_counts_what_is_not_known(folder: Path) -> None:
    path = folder / f"{SOUND}.wetcircuit"
    told = json.loads(path.read_text())
    for pipe in told["pipes"]:
        pipe.get("data", {}).pop("length_m", None)
    path.write_text(json.dumps(told))
    assert run(["check", str(path)]) == 0
    assert run(["check", str(path), "--strict"]) == 1


@pytest.mark.parametrize(("name", "check", "status"), [(FAULTY, None, 0), (DANGEROUS, None, 1)])
def test_an_accepted_fault_does_not_count_and_an_accepted_danger_does(
    folder: Path, capsys: Capture, name: str, check: None, status: int
) -> None:
    path = folder / f"{name}.wetcircuit"
    run(["check", str(path), "--as", "json"])
    findings = json.loads(capsys.readouterr().out)["files"][0]["findings"]
    told = json.loads(path.read_text())
    told["acceptances"] = [
        {
            "check": each["check"],
            "on": each["components"] + each["pipes"],
            "reason": "known",
            "author": "A. Reader",
            "date": "2026-01-01",
            "until": "2026-06-30",
        }
        for each in findings
    ]
    path.write_text(json.dumps(told))
    assert run(["check", str(path), "--on", "2026-06-30"]) == status
    assert run(["check", str(path), "--on", "2026-07-01"]) == 1


def test_folders_are_walked_without_hidden_files_or_links(folder: Path, capsys: Capture) -> None:
    (folder / ".hidden.wetcircuit").write_text("{}")
    below = folder / "zz"
    below.mkdir()
    shutil.copy(drawing(folder, SOUND), below)
    if hasattr(os, "symlink"):
        (folder / "link.wetcircuit").symlink_to(drawing(folder, SOUND))
    run(["check", str(folder), "--as", "json"])
    files = [Path(each["file"]) for each in json.loads(capsys.readouterr().out)["files"]]
    assert [file.stem for file in files] == [SOUND, FAULTY, DANGEROUS, SOUND]


def test_nothing_to_check_is_2(tmp_path: Path, capsys: Capture) -> None:
    assert run(["check", str(tmp_path)]) == 2
    assert run(["check", str(tmp_path / "none.wetcircuit")]) == 2
    assert "no drawing" in capsys.readouterr().err
    with pytest.raises(SystemExit) as wrong:
        run(["check", "--as", "parchment", str(tmp_path)])
    assert wrong.value.code == 2


def test_several_at_a_time_give_the_same_answer(folder: Path, capsys: Capture) -> None:
    run(["check", str(folder), "--as", "json"])
    one = capsys.readouterr().out
    run(["check", str(folder), "--as", "json", "--jobs", "2"])
    assert capsys.readouterr().out == one


def test_explain(capsys: Capture) -> None:
    assert run(["explain"]) == 0
    assert "vessel-can-be-cut-off" in capsys.readouterr().out
    assert run(["explain", "vessel-can-be-cut-off"]) == 0
    out = capsys.readouterr().out
    assert all(
        heading in out for heading in ("What it flags", "Why it matters", "What puts it right", "Source")
    )
    assert run(["explain", "no-such-check"]) == 2


def test_samples_are_listed_and_copied_and_nobodys_work_is_overwritten(
    tmp_path: Path, capsys: Capture
) -> None:
    assert run(["samples"]) == 0
    assert f"{SOUND}.wetcircuit" in capsys.readouterr().out
    assert run(["samples", "--to", str(tmp_path / "new")]) == 0
    assert (tmp_path / "new" / f"{SOUND}.wetcircuit").exists()
    assert run(["samples", "--to", str(tmp_path / "new")]) == 2
