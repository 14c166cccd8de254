"""The document as one PDF: selectable text, bookmarks, page numbers, the shipped font embedded, line work."""

from __future__ import annotations

import io
from dataclasses import dataclass
from typing import Any

from reportlab.lib.pagesizes import A3, A4
from reportlab.platypus import BaseDocTemplate, Frame, PageTemplate

from circuitcheck.report.document.content import Content
from circuitcheck.report.document.paper import Orientation, Paper
from circuitcheck.report.document.pdf_blocks import DRAWING_PAGE, TEXT_PAGE, Anchor, PdfBlocks
from circuitcheck.report.document.pdf_marks import colour, font_name, register_fonts
from circuitcheck.report.document.sections import sections
from circuitcheck.report.plain import plain
from circuitcheck.sheet.pictures import Picture

SIZES = {Paper.A4: A4, Paper.A3: A3}
MARGIN, FOOT = 48.0, 46.0
DRAWING_MARGIN = 30.0
DRAWING_HEAD = 46.0
CARE = "An aid to competent people. A drawing without findings is not a certificate."
MOST_TEXT_WIDE = 640.0
"""Lines of text no longer than this can be read; on a wide page the rest stays free."""


@dataclass(frozen=True, slots=True)
class _Page:
    """A page's size and where its frame lies."""

    size: tuple[float, float]
    frame: tuple[float, float, float, float]


def as_pdf(content: Content, paper: Paper = Paper.A4, orientation: Orientation | None = None) -> bytes:
    """The file. Without an orientation text stands upright, and the drawing lies as it is larger."""
    register_fonts()
    text = _text_page(_turned(SIZES[paper], orientation or Orientation.PORTRAIT))
    lies = orientation or _better(content.drawing)
    drawing = _drawing_page(_turned(SIZES[paper], lies))
    blocks = PdfBlocks(text.frame[2], (drawing.frame[2], drawing.frame[3] - DRAWING_HEAD))
    out = io.BytesIO()
    template = _Template(out, content, text, drawing)
    story: list[Any] = []
    for number, section in enumerate(sections(content)):
        story += blocks.section(section, is_first=number == 0)
    template.multiBuild(story)
    return out.getvalue()


def _turned(size: tuple[float, float], orientation: Orientation) -> tuple[float, float]:
    short, long = sorted(size)
    return (short, long) if orientation is Orientation.PORTRAIT else (long, short)


def _better(picture: Picture | None) -> Orientation:
    if picture is None:
        return Orientation.PORTRAIT
    wide, high = picture.size
    return Orientation.LANDSCAPE if wide > high else Orientation.PORTRAIT


def _text_page(size: tuple[float, float]) -> _Page:
    wide = min(size[0] - 2 * MARGIN, MOST_TEXT_WIDE)
    return _Page(size, ((size[0] - wide) / 2, FOOT, wide, size[1] - FOOT - MARGIN))


def _drawing_page(size: tuple[float, float]) -> _Page:
    wide, high = size[0] - 2 * DRAWING_MARGIN, size[1] - FOOT - DRAWING_MARGIN
    return _Page(size, (DRAWING_MARGIN, FOOT, wide, high))


class _Template(BaseDocTemplate):
    """Pages with their foot; it tells the outline and the contents of each anchor that is drawn."""

    def __init__(self, out: io.BytesIO, content: Content, text: _Page, drawing: _Page) -> None:
        super().__init__(
            out,
            pagesize=text.size,
            title=plain(content.title),
            author=content.program,
            subject=plain(f"{content.file}, {content.made_on}"),
            creator=content.program,
            lang="en-GB",
            # The same drawing on the same day gives the same bytes.
            invariant=1,
            pageCompression=1,
        )
        self._foot = plain(f"{content.title} · {content.file} · {content.made_on} · {content.program}")
        self._pages_before = 0
        self.addPageTemplates(
            [
                PageTemplate(name, [_frame(page)], pagesize=page.size, onPageEnd=self._end_page)
                for name, page in ((TEXT_PAGE, text), (DRAWING_PAGE, drawing))
            ]
        )

    def beforeDocument(self) -> None:
        """Each pass knows from the one before how many pages there are."""
        self._pages_before, self._pages_now = getattr(self, "_pages_now", 0), 0
        self.canv.showOutline()

    def afterFlowable(self, flowable: Any) -> None:
        """Add a bookmark; those of the first level also to the contents."""
        if not isinstance(flowable, Anchor):
            return
        self.canv.addOutlineEntry(flowable.title, flowable.key, flowable.level, closed=flowable.level == 0)
        if flowable.level == 0:
            self.notify("TOCEntry", (0, _markup(flowable.title), self.page, flowable.key))

    def _end_page(self, canvas: Any, template: Any) -> None:
        self._pages_now = canvas.getPageNumber()
        wide = canvas._pagesize[0]
        margin = DRAWING_MARGIN if template.pageTemplate.id == DRAWING_PAGE else MARGIN
        canvas.saveState()
        canvas.setStrokeColor(colour("hairline"))
        canvas.setLineWidth(0.5)
        canvas.line(margin, FOOT - 10, wide - margin, FOOT - 10)
        canvas.setFillColor(colour("ink_2"))
        canvas.setFont(font_name(400), 7.5)
        total = max(self._pages_before, self._pages_now)
        pages = f"Page {self._pages_now} of {total}"
        canvas.drawRightString(wide - margin, FOOT - 20, pages)
        room = wide - 2 * margin - canvas.stringWidth(pages, font_name(400), 7.5) - 12
        foot = self._foot
        while foot and canvas.stringWidth(foot, font_name(400), 7.5) > room:
            foot = f"{foot[:-2].rstrip()}…"
        canvas.drawString(margin, FOOT - 20, foot)
        canvas.drawString(
            margin, FOOT - 30, "An aid to competent people. A drawing without findings is not a certificate."
        )
        canvas.restoreState()


def _frame(page: _Page) -> Frame:
    left, low, wide, high = page.frame
    return Frame(left, low, wide, high, leftPadding=0, rightPadding=0, topPadding=0, bottomPadding=0)


def _markup(text: str) -> str:
    from xml.sax.saxutils import escape

    return escape(text)
