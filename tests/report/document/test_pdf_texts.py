"""Very long texts go into a PDF in pieces, nothing of them lost; none takes longer than it is long."""

from __future__ import annotations

import io
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pypdf import PdfReader
from reportlab.platypus import BalancedColumns, KeepTogether, Paragraph
from reportlab.platypus import Table as PdfTable

from circuitcheck.drawing.value import Acceptance, Note, Reply
from circuitcheck.report.document.gathering import gather
from circuitcheck.report.document.pdf_blocks import PdfBlocks
from circuitcheck.report.document.pdf_marks import register_fonts
from circuitcheck.report.document.pdf_texts import MOST_LETTERS, MOST_LINES, pieces
from circuitcheck.report.document.sections import sections
from circuitcheck.report.document.writing import Form, made
from circuitcheck.storage.limits import LONGEST_LABEL, LONGEST_TEXT
from circuitcheck.tongues import tongue

from .conftest import DAY, sample

LONG = {"line breaks": "a\n" * 5_000, "one word": "W" * LONGEST_TEXT, "words": "ab " * (LONGEST_TEXT // 3)}


@given(st.text(st.sampled_from("ab \n<&"), max_size=200), st.integers(1, 60))
def test_pieces_are_short_and_nothing_of_the_text_is_lost(text: str, times: int) -> None:
    long = text * times
    made = pieces(long)
    assert all(len(each.splitlines()) <= MOST_LINES for each in made)
    assert all(len(each.replace("\n", "")) <= MOST_LETTERS for each in made)
    assert "".join(made).replace("\n", "") == "".join(long.splitlines())


def test_what_is_short_stays_whole() -> None:
    for text in ("", "a", "a\nb", "\n".join("a" * MOST_LINES)):
        assert pieces(text) == [text]


def test_a_long_line_is_cut_where_a_word_ends() -> None:
    first, second = pieces("word " * (MOST_LETTERS // 5) + "more")
    assert (first[-5:], second) == ("word ", "more")


def paragraphs(flowables: list[Any]) -> Iterator[Paragraph]:
    each: Any
    for each in flowables:
        if isinstance(each, Paragraph):
            yield each
        elif isinstance(each, PdfTable):
            yield from paragraphs([cell for row in vars(each)["_cellvalues"] for cell in row])
        elif isinstance(each, KeepTogether | BalancedColumns):
            yield from paragraphs(vars(each)["_content"])


@pytest.mark.parametrize("text", LONG.values(), ids=LONG)
def test_no_paragraph_of_a_document_is_longer_than_a_piece(text: str) -> None:
    drawing = sample("terrace-valve-before-vessel")
    note = Note("n1", ("hs",), "A. Other", "2026-01-01", text, replies=(Reply("A", "2026-01-01", text),))
    accepted = Acceptance("vessel-can-be-cut-off", ("hs",), text, "A. Other", "2026-01-01")
    content = gather(
        replace(drawing, title=text[:LONGEST_LABEL], notes=(note,), acceptances=(accepted,)), "a", DAY
    )
    found = sections(content)
    register_fonts()
    blocks = PdfBlocks(found, 500, (500, 700), tongue("en"))
    story = [each for number, one in enumerate(found) for each in blocks.section(one, is_first=number == 0)]
    lengths = [len(each.getPlainText()) for each in paragraphs(story)]
    assert sum(lengths) > 3 * len(text.replace("\n", ""))
    # Beside its own texts a paragraph has a few words before or behind.
    assert max(lengths) <= MOST_LETTERS + 100


def test_it_reads_on_from_page_to_page() -> None:
    text = "\n".join(f"line{number}" for number in range(400))
    content = gather(
        replace(
            sample("terrace-valve-before-vessel"),
            notes=(Note("n1", ("hs",), "A. Other", "2026-01-01", text),),
            acceptances=(Acceptance("vessel-can-be-cut-off", ("hs",), text, "A. Other", "2026-01-01"),),
        ),
        "a",
        DAY,
    )
    reader = PdfReader(io.BytesIO(made(content, Form.PDF)), strict=True)
    words = " ".join(page.extract_text() for page in reader.pages).split()
    for number in (0, MOST_LINES - 1, MOST_LINES, 399):
        assert words.count(f"line{number}") == 2


def test_the_head_of_a_table_stands_once_on_a_page_and_below_its_heading() -> None:
    text = "\n".join(f"line{number}" for number in range(14))
    accepted = Acceptance("vessel-can-be-cut-off", ("hs",), text, "A. Other", "2026-01-01")
    content = gather(
        replace(sample("terrace-valve-before-vessel"), acceptances=tuple([accepted] * 12)), "a", DAY
    )
    reader = PdfReader(io.BytesIO(made(content, Form.PDF)), strict=True)
    with_lines = [text for page in reader.pages if "line3" in (text := page.extract_text())]
    assert len(with_lines) > 2
    assert [page.count("State today") for page in with_lines] == [1] * len(with_lines)
    assert "Acceptances" in with_lines[0]
