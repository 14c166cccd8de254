"""`report`: what the ending chooses, folders, and what is said where nothing can be written."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from pypdf import PdfReader

from circuitcheck.cli import COMMANDS, run
from circuitcheck.report.document.writing import Form
from tests.cli.drawings import sound, write

Capture = pytest.CaptureFixture[str]
STARTS = {
    "pdf": b"%PDF-",
    "html": b"<!DOCTYPE html>",
    "svg": b"<?xml",
    "png": b"\x89PNG",
    "csv": b"\xef\xbb\xbf",
}


@pytest.fixture
def hall(tmp_path: Path) -> Path:
    return write(tmp_path / "hall.wetcircuit", sound())


def test_it_is_a_command() -> None:
    assert "report" in COMMANDS


@pytest.mark.parametrize("form", list(Form))
def test_the_ending_chooses(hall: Path, tmp_path: Path, capsys: Capture, form: Form) -> None:
    to = tmp_path / f"out.{form.upper()}"
    assert run(["report", str(hall), "-o", str(to), "--on", "2026-11-25"]) == 0
    assert to.read_bytes().startswith(STARTS[form])
    told = capsys.readouterr()
    assert told.out == f"{to}\n"
    assert told.err.startswith("circuitcheck: 1 document, ")
    assert "checks not judged" in told.err


def test_paper_and_orientation(hall: Path, tmp_path: Path) -> None:
    to = tmp_path / "out.pdf"
    assert run(["report", str(hall), "-o", str(to), "--paper", "a3", "--orientation", "landscape"]) == 0
    assert {round(page.mediabox.width) for page in PdfReader(to).pages} == {1191}


@pytest.mark.parametrize("name", ["out", "out.doc", "out.wetcircuit"])
def test_another_ending_is_refused(hall: Path, tmp_path: Path, capsys: Capture, name: str) -> None:
    assert run(["report", str(hall), "-o", str(tmp_path / name)]) == 2
    assert ".pdf, .html, .svg, .png, .csv" in capsys.readouterr().err
    assert not (tmp_path / name).exists()


def test_a_missing_folder_is_said(hall: Path, tmp_path: Path, capsys: Capture) -> None:
    assert run(["report", str(hall), "-o", str(tmp_path / "no" / "out.csv")]) == 2
    assert "the folder does not exist" in capsys.readouterr().err
    assert run(["report", str(tmp_path), "-o", str(tmp_path / "no"), "--as", "csv"]) == 2
    assert "there is no such folder" in capsys.readouterr().err


def test_a_broken_file_says_what_is_wrong_and_leaves_what_stood_there(
    tmp_path: Path, capsys: Capture
) -> None:
    told = sound()
    told["components"][0]["kind"] = "dragon"
    broken, to = write(tmp_path / "broken.wetcircuit", told), tmp_path / "out.html"
    to.write_text("as it was")
    assert run(["report", str(broken), "-o", str(to)]) == 2
    assert "dragon" in capsys.readouterr().err
    assert to.read_text() == "as it was"


def test_a_file_that_may_not_be_replaced_stays(hall: Path, tmp_path: Path, capsys: Capture) -> None:
    to = tmp_path / "out.csv"
    to.mkdir()
    assert run(["report", str(hall), "-o", str(to)]) == 2
    assert "--as" in capsys.readouterr().err


class TestMany:
    @pytest.fixture
    def folder(self, tmp_path: Path) -> Path:
        """Three drawings, one of them below and one broken."""
        folder = tmp_path / "drawings"
        (folder / "below").mkdir(parents=True)
        write(folder / "a.wetcircuit", sound())
        write(folder / "below" / "a.wetcircuit", sound())
        (folder / "c.wetcircuit").write_text(json.dumps({"wetcircuit": 1, "components": 5}))
        return folder

    @pytest.mark.parametrize("jobs", ["1", "2"])
    def test_each_goes_below_the_folder_and_a_broken_one_does_not_stop_the_rest(
        self, folder: Path, tmp_path: Path, capsys: Capture, jobs: str
    ) -> None:
        out = tmp_path / "out"
        out.mkdir()
        assert run(["report", str(folder), "-o", str(out), "--as", "svg", "--jobs", jobs]) == 2
        assert sorted(path.relative_to(out) for path in out.rglob("*.svg")) == [
            Path("a.svg"),
            Path("below/a.svg"),
        ]
        told = capsys.readouterr()
        assert told.out.splitlines() == [str(out / "a.svg"), str(out / "below" / "a.svg")]
        assert "c.wetcircuit" in told.err and "2 documents" in told.err

    def test_it_asks_which_kind(self, folder: Path, tmp_path: Path, capsys: Capture) -> None:
        assert run(["report", str(folder), "-o", str(tmp_path)]) == 2
        assert "--as" in capsys.readouterr().err

    def test_two_of_one_name_are_not_written_over_each_other(
        self, folder: Path, tmp_path: Path, capsys: Capture
    ) -> None:
        files = [str(folder / "a.wetcircuit"), str(folder / "below" / "a.wetcircuit")]
        assert run(["report", *files, "-o", str(tmp_path), "--as", "csv"]) == 2
        assert "both" in capsys.readouterr().err

    def test_one_file_into_a_folder(self, folder: Path, tmp_path: Path) -> None:
        assert run(["report", str(folder / "a.wetcircuit"), "-o", str(tmp_path), "--as", "csv"]) == 0
        assert (tmp_path / "a.csv").exists()


def test_the_language_is_chosen_and_a_table_has_none(hall: Path, tmp_path: Path, capsys: Capture) -> None:
    for language in ("en", "de"):
        for form in ("html", "csv"):
            to = tmp_path / f"{language}.{form}"
            assert (
                run(["report", str(hall), "-o", str(to), "--language", language, "--on", "2026-11-25"]) == 0
            )
    page = (tmp_path / "de.html").read_text(encoding="utf-8")
    assert '<html lang="de">' in page and "Inbetriebnahmeblatt" in page and "25.11.2026" in page
    assert '<html lang="en-GB">' in (tmp_path / "en.html").read_text(encoding="utf-8")
    assert (tmp_path / "de.csv").read_bytes() == (tmp_path / "en.csv").read_bytes()
    # Messages are for who calls.
    assert "1 document" in capsys.readouterr().err
    with pytest.raises(SystemExit):
        run(["report", str(hall), "-o", str(tmp_path / "x.html"), "--language", "tlh"])
