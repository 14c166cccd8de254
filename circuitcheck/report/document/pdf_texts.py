"""Texts of a file as a PDF's paragraphs: harmless, in pieces that a page can take, and how each kind is set."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any
from xml.sax.saxutils import escape

from reportlab.lib.enums import TA_RIGHT
from reportlab.lib.styles import ParagraphStyle
from reportlab.platypus import Paragraph

from circuitcheck.report.document.blocks import Style
from circuitcheck.report.document.pdf_marks import colour, font_name
from circuitcheck.report.plain import bound, plain

MOST_LINES, MOST_LETTERS = 40, 2_000


def text_of(text: str) -> str:
    """A text of a file, harmless inside a paragraph; its line breaks kept."""
    return "<br/>".join(escape(bound(plain(line))) for line in text.splitlines())


def pieces(text: str) -> list[str]:
    """The text in one piece where it is short, else in several that each begin a line.

    What a page has no room for of a paragraph is set anew for the next page, all of it: a note of a hundred thousand
    line breaks, which a file may hold, would take an hour in one piece.
    """
    made, size = list[list[str]](), 0
    for line in _lines(text):
        if not made or len(made[-1]) == MOST_LINES or size + len(line) > MOST_LETTERS:
            made.append([])
            size = 0
        made[-1].append(line)
        size += len(line)
    return ["\n".join(lines) for lines in made] or [""]


def _lines(text: str) -> Iterator[str]:
    """Its lines, those that are too long for a piece cut where a word ends, if any does."""
    for line in text.splitlines():
        begin = 0
        while len(line) - begin > MOST_LETTERS:
            end = line.rfind(" ", begin + 1, begin + MOST_LETTERS) + 1 or begin + MOST_LETTERS
            yield line[begin:end]
            begin = end
        yield line[begin:]


def paragraphs(
    text: str, style: ParagraphStyle, before: str = "", bullet: str | None = None
) -> Iterator[Paragraph]:
    """A text as one paragraph, a very long one as several close together; `before` is markup."""
    parts = pieces(text)
    for number, part in enumerate(parts, start=1):
        made = Paragraph(before + text_of(part), style, bulletText=bullet)
        if number < len(parts):
            made.spaceAfter = 0
        before, bullet = "", None
        yield made


def _style(
    name: str, size: float, lead: float, weight: int = 400, role: str = "ink", **more: Any
) -> ParagraphStyle:
    return ParagraphStyle(
        name,
        fontName=font_name(weight),
        bulletFontName=font_name(400),
        fontSize=size,
        leading=lead,
        textColor=colour(role),
        splitLongWords=1,
        embeddedHyphenation=0,
        uriWasteReduce=0,
        allowWidows=0,
        allowOrphans=0,
        **more,
    )


class Styles:
    """How each kind of paragraph is set."""

    def __init__(self) -> None:
        self.title = _style("title", 22, 26, 600, spaceAfter=2)
        self.section = _style("section", 16, 20, 600, spaceBefore=14, spaceAfter=6)
        self.heading = _style("heading", 11.5, 15, 600, spaceBefore=10, spaceAfter=3)
        self.body = _style("body", 9.5, 13, spaceAfter=4)
        self.lead = _style("lead", 12, 16, 400, "ink_2", spaceAfter=8)
        self.second = _style("second", 8, 11, 400, "ink_2", spaceAfter=4)
        self.strong = _style("strong", 10.5, 14, 600, spaceAfter=5)
        self.small_bullet = _style(
            "small bullet", 8, 10.5, 400, "ink_2", leftIndent=9, bulletIndent=1, bulletFontSize=8
        )
        self.bullet = _style("bullet", 9.5, 13, leftIndent=11, bulletIndent=1, spaceAfter=2)
        self.cell = _style("cell", 8.8, 11.4)
        self.bold_cell = _style("bold cell", 8.8, 11.4, 600)
        self.number = _style("number", 8.8, 11.4, alignment=TA_RIGHT)
        self.bold_number = _style("bold number", 8.8, 11.4, 600, alignment=TA_RIGHT)
        self.head = _style("head", 8, 10.5, 600, "ink_2")
        self.head_number = _style("head number", 8, 10.5, 600, "ink_2", alignment=TA_RIGHT)

    def of(self, style: Style) -> ParagraphStyle:
        """The setting of a paragraph."""
        found = {
            Style.BODY: self.body,
            Style.LEAD: self.lead,
            Style.SECOND: self.second,
            Style.STRONG: self.strong,
        }
        return found[style]
