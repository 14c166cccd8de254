"""A document in German: nothing of it is left in English, and data for other programs stay as they are."""

from __future__ import annotations

import io
import re
from collections.abc import Mapping
from dataclasses import replace
from datetime import date
from functools import cache
from html import unescape
from pathlib import Path
from random import Random
from types import MappingProxyType
from typing import Any

import pytest
from pypdf import PdfReader

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Acceptance, Drawing, Note, Reply
from circuitcheck.report.document.content import Content
from circuitcheck.report.document.gathering import gather
from circuitcheck.report.document.sections import sections
from circuitcheck.report.document.writing import Form, made, write
from circuitcheck.review.record import sign
from circuitcheck.shipped import data_path
from circuitcheck.told import ENGLISH, Told, Tongue
from circuitcheck.tongues import tongue

from .conftest import DAY, content_of, sample
from .test_painters import Seen
from .untold import english_in, names_of, sources, texts_of, translations

SAMPLES = sorted(path.stem for path in data_path("samples").glob("*.wetcircuit"))
PAINTED = ("terrace-as-found", "village-hall-near-miss", "guest-house-second-source-cut-off")
"""Drawings with findings, whose files are read again."""


@cache
def reviewed() -> Drawing:
    """A drawing with notes, acceptances and a record that no longer holds; some numbers are not known."""
    drawing = sample("terrace-as-found")
    findings = analyse(drawing).findings
    accepted = tuple(
        Acceptance(each.check, (*each.components, *each.pipes), reason, "Xq", "2026-11-01", until)
        for each, reason, until in zip(
            findings, ("Zzz", "", ""), ("2026-12-01", None, "2026-11-02"), strict=False
        )
    )
    note = Note("n1", ("hs", "gone"), "Xq", "2026-11-03", "Qqq", "open", (Reply("", "", "Www"),))
    drawing = replace(drawing, acceptances=accepted, notes=(note, Note("n2", (), "", "", "Vvv", "settled")))
    drawing = sign(drawing, "Xq", DAY, "sound")
    drawing = sign(drawing, "Xq", DAY, "sound")
    bare = {
        id: replace(part, label="", data=MappingProxyType({}))
        for id, part in drawing.components.items()
        if id in list(drawing.components)[::3]
    }
    return replace(drawing, title="", components={**drawing.components, **bare})


def sparse(drawing: Drawing, share: float) -> Drawing:
    """The drawing with no more than that share of its data known, and half of its parts without a name."""
    chance = Random(17)

    def some(data: Mapping[str, Any]) -> Mapping[str, Any]:
        return MappingProxyType({name: each for name, each in data.items() if chance.random() < share})

    parts = {
        id: replace(part, label=part.label if chance.random() < 0.5 else "", data=some(part.data))
        for id, part in drawing.components.items()
    }
    pipes = {id: replace(pipe, data=some(pipe.data)) for id, pipe in drawing.pipes.items()}
    return replace(drawing, components=parts, pipes=pipes, design=some(drawing.design))


def drawn(name: str) -> Drawing:
    return reviewed() if name == "reviewed" else Drawing() if name == "empty" else sample(name)


def named(name: str) -> list[str]:
    """What the drawing calls its things, and called them when it was reviewed."""
    return names_of(drawn(name), sample("terrace-as-found")) if name == "reviewed" else names_of(drawn(name))


@cache
def german(name: str) -> Content:
    return gather(drawn(name), f"{name}.wetcircuit", DAY, tongue=tongue("de"))


@pytest.mark.parametrize("name", [*SAMPLES, "reviewed", "empty"])
def test_nothing_of_its_content_is_left_in_english(name: str) -> None:
    texts = list(texts_of((german(name), sections(german(name)))))
    assert len(texts) > (100 if name == "empty" else 1000)
    assert not english_in(texts, named(name))
    # What can still be told was never told.
    assert not [text for text in texts if isinstance(text, Told)]


@pytest.mark.parametrize("share", [0.0, 0.5, 0.75])
@pytest.mark.parametrize("name", ["cottage", "flat-over-workshop", "guest-house", "terrace-as-found"])
def test_nothing_is_left_in_english_where_little_is_known(name: str, share: float) -> None:
    drawing = sparse(sample(name), share)
    content = gather(drawing, f"{name}.wetcircuit", DAY, tongue=tongue("de"))
    assert any(each.missing for each in content.findings)
    assert not english_in(texts_of((content, sections(content))), names_of(drawing))


@pytest.mark.parametrize("name", PAINTED)
def test_the_words_of_the_page_are_german_too(name: str) -> None:
    page = made(german(name), Form.HTML).decode("utf-8")
    assert '<html lang="de">' in page
    seen = Seen(page)
    labels = [value or "" for key, value in seen.attributes if key in ("aria-label", "data-head")]
    assert labels
    names = named(name)
    assert not english_in(labels, names)
    texts = [unescape(each) for each in re.findall(r">([^<]+)<", page.partition("<body>")[2])]
    assert len(texts) > 500
    assert not english_in(texts, names)


@pytest.mark.parametrize("name", PAINTED)
def test_the_words_of_the_pdf_are_german_too(name: str) -> None:
    reader = PdfReader(io.BytesIO(made(german(name), Form.PDF)))
    assert reader.trailer["/Root"]["/Lang"] == "de"  # type: ignore[index]
    names = named(name)
    count = len(reader.pages)
    for number, page in enumerate(reader.pages, start=1):
        text = page.extract_text()
        assert f"Seite {number} von {count}" in text
        # Lines end anywhere, and a name may be broken at their end.
        assert not english_in([" ".join(text.split())], names)
    titles = [str(each.title) for each in reader.outline if not isinstance(each, list)]
    assert titles[0] == "Überblick"
    assert not english_in(titles, names)


@pytest.mark.parametrize("form", [Form.SVG, Form.PNG])
def test_the_drawing_alone_is_german_too(form: Form) -> None:
    data = made(german("terrace-as-found"), form)
    assert data != made(gather(sample("terrace-as-found"), "x", DAY), form)
    if form is Form.SVG:
        page = data.decode("utf-8")
        assert 'xml:lang="de"' in page
        texts = [unescape(each) for each in re.findall(r"<(?:text|desc|title)[^>]*>([^<]*)<", page)]
        assert not english_in(texts, names_of(sample("terrace-as-found")))


def test_numbers_and_days_are_written_as_in_german() -> None:
    content = german("terrace-as-found")
    assert content.made_on == "25.11.2026" and content.day == "2026-11-25"
    assert dict(content.design)["Sicherheitszuschlag"] == "0,3 bar (üblicher Wert, nicht angegeben)"
    told = german("reviewed")
    assert told.findings[0].accepted == "Hingenommen von Xq am 01.11.2026, bis 01.12.2026: Zzz"
    assert told.notes[0].says[0] == ("Xq", "03.11.2026", "Qqq")


def test_another_places_decimal_sign() -> None:
    swiss = gather(sample("terrace-as-found"), "x", DAY, tongue=tongue("de", "."))
    assert dict(swiss.design)["Sicherheitszuschlag"].startswith("0.3 bar")


@pytest.mark.parametrize("form", list(Form))
def test_a_table_is_the_same_in_every_language_and_the_rest_is_not(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, form: Form
) -> None:
    # What is gathered is the same for every kind of file.
    def gathered(drawing: Drawing, source: str, today: date, analysis: object, asked: Tongue) -> Content:
        return (content_of if asked is ENGLISH else german)("terrace-as-found")

    monkeypatch.setattr("circuitcheck.report.document.writing.gather", gathered)
    files = {code: tmp_path / f"{code}.{form}" for code in ("en", "de")}
    for code, file in files.items():
        write(sample("terrace-as-found"), "x", file, form, DAY, tongue=tongue(code))
    same = files["en"].read_bytes() == files["de"].read_bytes()
    assert same is (form is Form.CSV)


def test_a_record_is_held_against_the_same_in_every_language() -> None:
    drawing = sign(sample("cottage"), "Xq", DAY, "sound")
    english, told = gather(drawing, "x", DAY), gather(drawing, "x", DAY, tongue=tongue("de"))
    assert english.review.holds is told.review.holds is True
    digests = [value for _, value in english.review.rows if re.fullmatch(r"[0-9a-f]{64}", value)]
    assert len(digests) == 3
    assert digests == [value for _, value in told.review.rows if re.fullmatch(r"[0-9a-f]{64}", value)]
    assert gather(sample("cottage"), "x", DAY, tongue=ENGLISH) == gather(sample("cottage"), "x", DAY)


def test_the_search_finds_what_is_english() -> None:
    assert len(sources()) > 1500
    content = gather(sample("terrace-as-found"), "terrace-as-found.wetcircuit", DAY)
    names = names_of(sample("terrace-as-found"))
    found = set(english_in(texts_of((content, sections(content))), names))
    told = {text for text in texts_of(sections(content)) if text in translations()}
    same = {text for text in told if translations()[text] in (text, "")}
    # A word that another text has for its German, such as Symbol, may pass; hardly one does.
    assert len(told - same - found) <= len(told) // 20
    assert english_in(["Druck 0.3 bar"], ()) == ["Druck 0.3 bar"]
    assert english_in(["Pump", "Pump: 3 m"], ["Pump"]) == []
