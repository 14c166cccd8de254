"""`report` over a folder: the list of all drawings, the same bytes however it is done, and going on with it."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from html import unescape
from pathlib import Path
from urllib.parse import unquote

import pytest
from pypdf import PdfReader

from circuitcheck.cli import run
from circuitcheck.storage.reading import parse
from tests.cli.drawings import dangerous, sound, write
from tests.report.document.untold import english_in, names_of

ROOT = Path(__file__).parents[2]
Capture = pytest.CaptureFixture[str]


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A sound drawing, a dangerous one below under an odd name, and one that can't be read."""
    made = tmp_path / "drawings"
    (made / "no. 7 & <8>").mkdir(parents=True)
    write(made / "a.wetcircuit", sound())
    write(made / "no. 7 & <8>" / 'b#?"ż.wetcircuit', dangerous())
    (made / "c.wetcircuit").write_text("{")
    return made


def reported(folder: Path, out: Path, form: str, *more: str) -> int:
    out.mkdir(exist_ok=True)
    return run(["report", str(folder), "-o", str(out), "--as", form, "--on", "2026-11-25", *more])


def test_the_list_tells_of_every_drawing_and_leads_to_its_document(folder: Path, tmp_path: Path) -> None:
    out = tmp_path / "out"
    assert reported(folder, out, "pdf") == 2
    page = (out / "index.html").read_text(encoding="utf-8")
    links = [unquote(unescape(each)) for each in re.findall(r'<td[^>]*><a href="([^"]*)"', page)]
    assert len(links) == 2 and all((out / each).is_file() for each in links)
    assert "3 drawings, 2 documents." in page and "1 file of which no document could be made." in page
    assert "c.wetcircuit" in page and "<8>" not in page
    told = PdfReader(out / "index.pdf")
    text = " ".join(page.extract_text() for page in told.pages)
    assert "Findings by check" in text and "c.wetcircuit" in text
    files = [
        link.get_object()["/A"]["/F"]
        for page in told.pages
        for link in page.get("/Annots", ())
        if link.get_object().get("/A", {}).get("/S") == "/GoToR"
    ]
    assert len(files) == 2 and all((out / each).is_file() for each in files)


def test_it_is_not_written_over_a_drawings_document(folder: Path, tmp_path: Path, capsys: Capture) -> None:
    write(folder / "index.wetcircuit", sound())
    assert reported(folder, tmp_path / "out", "html") == 2
    assert "the list of all drawings" in capsys.readouterr().err
    assert reported(folder, tmp_path / "out", "svg") == 2
    assert (tmp_path / "out" / "index.svg").exists()


@pytest.mark.parametrize("form", ["html", "svg"])
def test_the_same_bytes_in_any_process_and_however_many(folder: Path, tmp_path: Path, form: str) -> None:
    """A process orders its sets by a seed of its own."""
    written = []
    for seed, jobs in (("1", "1"), ("2", "2")):
        out = tmp_path / seed
        out.mkdir()
        call = ["report", str(folder), "-o", str(out), "--as", form, "--on", "2026-11-25", "--jobs", jobs]
        env = {**os.environ, "PYTHONHASHSEED": seed}
        subprocess.run([sys.executable, "-m", "circuitcheck", *call], cwd=ROOT, env=env, check=False)
        written.append(
            {path.relative_to(out): path.read_bytes() for path in out.rglob("*.*") if path.is_file()}
        )
    assert written[0] == written[1] and len(written[0]) == 3


def test_a_document_that_is_gone_or_altered_is_made_again(
    folder: Path, tmp_path: Path, capsys: Capture
) -> None:
    out, more = tmp_path / "out", ("--resume", "--state", str(tmp_path / "state"))
    reported(folder, out, "svg", *more)
    whole = (out / "a.svg").read_bytes()
    (out / "a.svg").write_bytes(whole[:-1])
    capsys.readouterr()
    assert reported(folder, out, "svg", *more) == 2
    assert (out / "a.svg").read_bytes() == whole
    told = capsys.readouterr()
    assert "2 of 3 files are taken over" in told.err
    assert len(told.out.splitlines()) == 2


def test_the_list_is_in_the_language_of_the_documents(folder: Path, tmp_path: Path) -> None:
    out = tmp_path / "out"
    assert reported(folder, out, "html", "--language", "de") == 2
    page = (out / "index.html").read_text(encoding="utf-8")
    assert '<html lang="de">' in page
    texts = [unescape(each) for each in re.findall(r">([^<]+)<", page.partition("<body>")[2])]
    assert "Alle Zeichnungen" in texts and any(
        each.startswith("3 Zeichnungen, 2 Dokumente.") for each in texts
    )
    files = ("a", "c", 'no. 7 & <8>/b#?"ż')
    texts = [each for each in texts if each not in files]
    names = names_of(*(parse(json.dumps(each).encode(), "x") for each in (sound(), dangerous())))
    assert not english_in(texts, [*names, "drawings"])


def test_documents_of_another_language_are_made_anew(folder: Path, tmp_path: Path, capsys: Capture) -> None:
    out, state = tmp_path / "out", tmp_path / "state"
    for language, again in (("en", ()), ("de", ("--resume",))):
        reported(folder, out, "html", "--language", language, "--state", str(state), *again)
    assert '<html lang="de">' in (out / "a.html").read_text(encoding="utf-8")
