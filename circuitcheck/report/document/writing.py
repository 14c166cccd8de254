"""Writes documents: what a file's ending chooses, and onto the disk whole or not at all."""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from pathlib import Path

from circuitcheck.analysis import Analysis
from circuitcheck.drawing.value import Drawing
from circuitcheck.report.document.content import Content
from circuitcheck.report.document.gathering import gather
from circuitcheck.report.document.paper import Orientation, Paper
from circuitcheck.storage.saver import save_bytes
from circuitcheck.told import ENGLISH, Tongue


class Form(StrEnum):
    """The kinds of file a document can be, by their endings."""

    PDF = "pdf"
    HTML = "html"
    SVG = "svg"
    PNG = "png"
    CSV = "csv"


def form_of(path: Path) -> Form | None:
    """What a file's ending chooses; None for an ending that is none of them."""
    ending = path.suffix.lower().removeprefix(".")
    return Form("html" if ending == "htm" else ending) if ending in (*Form, "htm") else None


def made(
    content: Content, form: Form, paper: Paper = Paper.A4, orientation: Orientation | None = None
) -> bytes:
    """A document as the bytes of its file. Each painter is imported when it is asked for: some are slow to."""
    match form:
        case Form.PDF:
            from circuitcheck.report.document.as_pdf import as_pdf

            return as_pdf(content, paper, orientation)
        case Form.HTML:
            from circuitcheck.report.document.as_html import as_html

            return as_html(content)
        case Form.SVG:
            from circuitcheck.report.document.as_svg import as_svg

            return as_svg(content)
        case Form.PNG:
            from circuitcheck.report.document.as_png import as_png

            return as_png(content)
        case Form.CSV:
            from circuitcheck.report.document.as_csv import as_csv

            return as_csv(content)


def told_in(form: Form, tongue: Tongue) -> Tongue:
    """The language of a kind of file: a table is read by other programs, and is English always."""
    return ENGLISH if form is Form.CSV else tongue


def write(
    drawing: Drawing,
    source: str,
    to: Path,
    form: Form,
    today: date,
    *,
    paper: Paper = Paper.A4,
    orientation: Orientation | None = None,
    analysis: Analysis | None = None,
    tongue: Tongue = ENGLISH,
) -> None:
    """Make the document of a drawing and put it into a file. Raises SaveError, a sentence, where it can't be.

    What stood there before stays as it was until the whole of the new file is on the disk.
    """
    content = gather(drawing, source, today, analysis, told_in(form, tongue))
    save_bytes(to, made(content, form, paper, orientation))
