"""The document as one PDF: selectable text, bookmarks, page numbers, the shipped font embedded, line work."""

from __future__ import annotations

import io
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from reportlab.lib.pagesizes import A3, A4
from reportlab.platypus import BaseDocTemplate, Frame, PageTemplate

from circuitcheck.picture.lettering import fitted, width
from circuitcheck.report.document.blocks import Section
from circuitcheck.report.document.content import CARE, Content, Head
from circuitcheck.report.document.paper import Orientation, Paper
from circuitcheck.report.document.pdf_blocks import DRAWING_PAGE, TEXT_PAGE, PdfBlocks
from circuitcheck.report.document.pdf_marks import colour, font_name, register_fonts
from circuitcheck.report.document.pdf_pages import Foot, Pages
from circuitcheck.report.document.sections import sections
from circuitcheck.report.document.telling import LANGUAGE
from circuitcheck.report.plain import plain
from circuitcheck.sheet.pictures import Picture
from circuitcheck.told import tell, worded

SIZES = {Paper.A4: A4, Paper.A3: A3}
MARGIN, FOOT = 48.0, 46.0
DRAWING_MARGIN = 30.0
DRAWING_HEAD = 46.0
FOOT_MARGIN = 40.0
MOST_TEXT_WIDE = 640.0
"""Lines of text no longer than this can be read; on a wide page the rest stays free."""


@dataclass(frozen=True, slots=True)
class _Page:
    """A page's size and where its frame lies."""

    size: tuple[float, float]
    frame: tuple[float, float, float, float]


def as_pdf(content: Content, paper: Paper = Paper.A4, orientation: Orientation | None = None) -> bytes:
    """The file. Without an orientation text stands upright, and the drawing lies as it is larger."""
    lies = orientation or _better(content.drawing)
    return pdf_of(content, sections(content), paper, orientation or Orientation.PORTRAIT, lies)


def pdf_of(
    head: Head,
    found: Sequence[Section],
    paper: Paper,
    upright: Orientation,
    lies: Orientation,
    most_wide: float = MOST_TEXT_WIDE,
) -> bytes:
    """The file of these sections: how pages of text lie and how wide text may be on them in points, and how a page
    with a whole drawing lies."""
    register_fonts()
    text = _text_page(_turned(SIZES[paper], upright), most_wide)
    drawing = _drawing_page(_turned(SIZES[paper], lies))
    room = (drawing.frame[2], drawing.frame[3] - DRAWING_HEAD)
    blocks = PdfBlocks(found, text.frame[2], room, head.tongue)
    out = io.BytesIO()
    story = [each for number, one in enumerate(found) for each in blocks.section(one, is_first=number == 0)]

    def pages(*arguments: Any, **named: Any) -> Pages:
        made = Pages(*arguments, **named)
        made.foot = _foot(head)
        made.setDateFormatter(lambda *_: f"D:{head.day.replace('-', '')}000000+00'00'")
        made.showOutline()
        return made

    _template(out, head, text, drawing).build(story, canvasmaker=pages)
    return out.getvalue()


def _turned(size: tuple[float, float], orientation: Orientation) -> tuple[float, float]:
    short, long = sorted(size)
    return (short, long) if orientation is Orientation.PORTRAIT else (long, short)


def _better(picture: Picture | None) -> Orientation:
    if picture is None:
        return Orientation.PORTRAIT
    wide, high = picture.size
    return Orientation.LANDSCAPE if wide > high else Orientation.PORTRAIT


def _text_page(size: tuple[float, float], most_wide: float) -> _Page:
    wide = min(size[0] - 2 * MARGIN, most_wide)
    return _Page(size, ((size[0] - wide) / 2, FOOT, wide, size[1] - FOOT - MARGIN))


def _drawing_page(size: tuple[float, float]) -> _Page:
    wide, high = size[0] - 2 * DRAWING_MARGIN, size[1] - FOOT - DRAWING_MARGIN
    return _Page(size, (DRAWING_MARGIN, FOOT, wide, high))


def _template(out: io.BytesIO, head: Head, text: _Page, drawing: _Page) -> BaseDocTemplate:
    """The two kinds of page, and what the file says of itself."""
    made = BaseDocTemplate(
        out,
        pagesize=text.size,
        title=plain(head.title),
        author=head.program,
        subject=plain(f"{head.file}, {head.made_on}"),
        creator=head.program,
        lang=tell(LANGUAGE, head.tongue),
        # The same drawing on the same day gives the same bytes.
        invariant=1,
        pageCompression=1,
    )
    made.addPageTemplates(
        [
            PageTemplate(name, [_frame(page)], pagesize=page.size)
            for name, page in ((TEXT_PAGE, text), (DRAWING_PAGE, drawing))
        ]
    )
    return made


def _foot(head: Head) -> Foot:
    """What stands at the foot of every page."""
    said = plain(f"{head.title} · {head.file} · {head.made_on} · {head.program}")
    size = 7.5

    def paint(canvas: Pages, number: int, count: int) -> None:
        right = canvas.page_wide - FOOT_MARGIN
        canvas.setStrokeColor(colour("hairline"))
        canvas.setLineWidth(0.5)
        canvas.line(FOOT_MARGIN, FOOT - 10, right, FOOT - 10)
        canvas.setFillColor(colour("ink_2"))
        canvas.setFont(font_name(400), size)
        pages = tell(worded("Page {number} of {count}", number=number, count=count), head.tongue)
        canvas.drawRightString(right, FOOT - 20, pages)
        room = right - FOOT_MARGIN - width(pages, size) - 12
        canvas.drawString(FOOT_MARGIN, FOOT - 20, fitted(said, size, 400, room))
        canvas.drawString(FOOT_MARGIN, FOOT - 30, tell(CARE, head.tongue))

    return paint


def _frame(page: _Page) -> Frame:
    left, low, wide, high = page.frame
    # Columns set within a page find their way back to its frame by the name.
    return Frame(
        left, low, wide, high, leftPadding=0, rightPadding=0, topPadding=0, bottomPadding=0, id="page"
    )
