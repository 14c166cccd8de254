"""What a PDF page is filled with besides paragraphs and tables: marks, pictures, places, boxes to fill in."""

from __future__ import annotations

from reportlab.lib.enums import TA_RIGHT
from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfbase.pdfmetrics import getAscent
from reportlab.platypus import Flowable

from circuitcheck.finding import Grade
from circuitcheck.picture.grades import RADIUS, RING, grade_mark
from circuitcheck.report.document.blocks import LINE, Blank
from circuitcheck.report.document.pdf_marks import colour, font_name, paint
from circuitcheck.report.document.pdf_pages import SIZE as CONTENTS_SIZE
from circuitcheck.report.document.pdf_pages import Pages
from circuitcheck.report.plain import plain
from circuitcheck.sheet.pictures import Picture

SMALL = 0.62
"""Points to a px of a small picture: what stands 12 px high is 7.4 point."""
BOX_HIGH = 13.0


class Mark(Flowable):
    """A grade's mark."""

    def __init__(self, grade: Grade, scale: float = SMALL) -> None:
        super().__init__()
        reach = RADIUS + RING
        self._picture = Picture(grade_mark(grade, reach, reach), (0, 0, 2 * reach, 2 * reach), grade.value)
        self._scale = scale
        self.width = self.height = 2 * reach * scale

    def draw(self) -> None:
        """Paint it."""
        paint(self.canv, self._picture, 0, 0, self._scale)


class PictureFlowable(Flowable):
    """A picture, no wider than its frame and no higher than it may be."""

    def __init__(self, picture: Picture, most_high: float, most_scale: float, *, framed: bool) -> None:
        super().__init__()
        self._picture, self._most_high, self._most_scale = picture, most_high, most_scale
        self._framed = framed
        self.spaceBefore, self.spaceAfter = 4, 6

    def wrap(self, wide: float, high: float) -> tuple[float, float]:
        """How large it is in the room there is."""
        across, down = self._picture.size
        most_high = min(self._most_high, high - 1) if not self._framed else self._most_high
        self._scale = min(self._most_scale, wide / across, most_high / down)
        self.width, self.height = across * self._scale, down * self._scale
        self._left = (wide - self.width) / 2 if not self._framed else 0.0
        return wide, self.height

    def draw(self) -> None:
        """Paint it."""
        paint(self.canv, self._picture, self._left, 0, self._scale)
        if self._framed:
            self.canv.setStrokeColor(colour("hairline"))
            self.canv.setLineWidth(0.5)
            self.canv.rect(self._left, 0, self.width, self.height, stroke=1, fill=0)


def pages_of(flowable: Flowable) -> Pages:
    """The canvas that a flowable is painted on. Raises TypeError for one that knows no places."""
    canvas = flowable.canv
    if not isinstance(canvas, Pages):
        raise TypeError("places are told to a canvas of pages only")
    return canvas


class Anchor(Flowable):
    """A place that a bookmark leads to, and that the contents tell the page of."""

    def __init__(self, key: str, title: str, level: int) -> None:
        super().__init__()
        self.key, self.title, self.level = key, plain(title), level
        self.width = self.height = 0

    def draw(self) -> None:
        """Note where it is."""
        pages_of(self).note_place(self.key, self.title, self.level)


class ContentsLine(Flowable):
    """A section's title with dots up to the number of its page, which is written in the end."""

    def __init__(self, key: str, title: str) -> None:
        super().__init__()
        self._key, self._title = key, plain(title)
        self.height = 12.5

    def wrap(self, wide: float, high: float) -> tuple[float, float]:
        """One line, as wide as the frame."""
        self.width = wide
        return wide, self.height

    def draw(self) -> None:
        """Paint title and dots."""
        canvas, low = self.canv, 3.0
        canvas.setFillColor(colour("ink"))
        canvas.setFont(font_name(400), CONTENTS_SIZE)
        canvas.drawString(0, low, self._title)
        start = canvas.stringWidth(self._title, font_name(400), CONTENTS_SIZE) + 6
        canvas.setStrokeColor(colour("edge"))
        canvas.setLineWidth(0.8)
        canvas.setLineCap(1)
        canvas.setDash([0.01, 4], 0)
        canvas.line(start, low, self.width - 20, low)
        canvas.setDash([], 0)
        canvas.setLineCap(0)
        pages_of(self).note_contents(self._key, self.width, low)


class Line(Flowable):
    """One line of text that fits: set at once, where a paragraph would first look for its breaks."""

    def __init__(self, text: str, style: ParagraphStyle) -> None:
        super().__init__()
        self._text, self._style = text, style

    def wrap(self, wide: float, high: float) -> tuple[float, float]:
        """As wide as its cell."""
        self.width, self.height = wide, self._style.leading
        return self.width, self.height

    def draw(self) -> None:
        """Paint it with its baseline where a paragraph has its first."""
        canvas, style = self.canv, self._style
        y = self.height - getAscent(style.fontName, style.fontSize)
        canvas.setFillColor(style.textColor)
        canvas.setFont(style.fontName, style.fontSize)
        if style.alignment == TA_RIGHT:
            canvas.drawRightString(self.width, y, self._text)
        else:
            canvas.drawString(0, y, self._text)


class BoxFlowable(Flowable):
    """A box to fill in by hand, with the unit at its right."""

    def __init__(self, blank: Blank) -> None:
        super().__init__()
        self._blank = blank

    def wrap(self, wide: float, high: float) -> tuple[float, float]:
        """As wide as its cell; a tick is square."""
        self.width, self.height = (wide if self._blank.unit else BOX_HIGH), BOX_HIGH
        return self.width, self.height

    def draw(self) -> None:
        """Paint it."""
        canvas = self.canv
        canvas.setStrokeColor(colour("edge"))
        canvas.setLineWidth(0.7)
        if not self._blank.unit:
            canvas.rect(1, 1, BOX_HIGH - 3, BOX_HIGH - 3, stroke=1, fill=0)
            return
        canvas.line(0, 1, self.width, 1)
        if self._blank != LINE:
            canvas.setFillColor(colour("ink_2"))
            canvas.setFont(font_name(400), 8)
            canvas.drawRightString(self.width, 3, self._blank.unit)
