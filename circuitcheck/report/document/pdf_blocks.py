"""Blocks as what a PDF page is filled with: paragraphs, tables with boxes to fill in, pictures."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any
from xml.sax.saxutils import escape

from reportlab.lib.enums import TA_RIGHT
from reportlab.lib.styles import ParagraphStyle
from reportlab.platypus import (
    CondPageBreak,
    Flowable,
    KeepTogether,
    NextPageTemplate,
    PageBreak,
    Paragraph,
    Spacer,
    TableStyle,
)
from reportlab.platypus import Table as PdfTable
from reportlab.platypus.tableofcontents import TableOfContents

from circuitcheck.finding import Grade
from circuitcheck.picture.colours import printed
from circuitcheck.picture.grades import RADIUS, RING, grade_mark
from circuitcheck.report.document.blocks import (
    LINE,
    Blank,
    Block,
    Bullets,
    Cell,
    Contents,
    Counts,
    GradedHeading,
    Heading,
    Labelled,
    Section,
    Shown,
    Style,
    Table,
    Text,
    Together,
)
from circuitcheck.report.document.pdf_marks import colour, font_name, paint
from circuitcheck.report.plain import plain
from circuitcheck.sheet.pictures import Picture

DRAWING_PAGE, TEXT_PAGE = "drawing", "text"
LARGEST = 0.75
"""Points to a px at most: what stands 12 px high is 9 point."""
SMALL = 0.62
"""The same for small pictures."""
LEAST_LEGIBLE = 0.33
"""Below so many points to a px lettering is smaller than 4 point."""
BOX_HIGH = 13.0
LEAST_BELOW = 110.0
"""A heading stands so many points above the page's end at least."""


def _style(
    name: str, size: float, lead: float, weight: int = 400, role: str = "ink", **more: Any
) -> ParagraphStyle:
    return ParagraphStyle(
        name,
        fontName=font_name(weight),
        fontSize=size,
        leading=lead,
        textColor=colour(role),
        splitLongWords=1,
        embeddedHyphenation=0,
        uriWasteReduce=0,
        **more,
    )


class Styles:
    """How each kind of paragraph is set."""

    def __init__(self) -> None:
        self.title = _style("title", 22, 26, 600, spaceAfter=2)
        self.section = _style("section", 16, 20, 600, spaceBefore=14, spaceAfter=6, keepWithNext=1)
        self.heading = _style("heading", 11.5, 15, 600, spaceBefore=10, spaceAfter=3)
        self.body = _style("body", 9.5, 13, spaceAfter=4)
        self.lead = _style("lead", 12, 16, 400, "ink_2", spaceAfter=8)
        self.second = _style("second", 8, 11, 400, "ink_2", spaceAfter=4)
        self.strong = _style("strong", 10.5, 14, 600, spaceAfter=5)
        self.bullet = _style("bullet", 9.5, 13, leftIndent=11, bulletIndent=1, spaceAfter=2)
        self.cell = _style("cell", 8.8, 11.4)
        self.bold_cell = _style("bold cell", 8.8, 11.4, 600)
        self.number = _style("number", 8.8, 11.4, alignment=TA_RIGHT)
        self.bold_number = _style("bold number", 8.8, 11.4, 600, alignment=TA_RIGHT)
        self.head = _style("head", 8, 10.5, 600, "ink_2")
        self.head_number = _style("head number", 8, 10.5, 600, "ink_2", alignment=TA_RIGHT)
        self.contents = _style("contents", 9, 12.5)

    def of(self, style: Style) -> ParagraphStyle:
        """The setting of a paragraph."""
        found = {
            Style.BODY: self.body,
            Style.LEAD: self.lead,
            Style.SECOND: self.second,
            Style.STRONG: self.strong,
        }
        return found[style]


def text_of(text: str) -> str:
    """A text of a file, harmless inside a paragraph; its line breaks kept."""
    return "<br/>".join(escape(plain(line)) for line in text.splitlines())


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


class Anchor(Flowable):
    """A place that a bookmark leads to, and that the contents tell the page of."""

    def __init__(self, key: str, title: str, level: int) -> None:
        super().__init__()
        self.key, self.title, self.level = key, plain(title), level
        self.width = self.height = 0

    def draw(self) -> None:
        """Set the bookmark."""
        self.canv.bookmarkHorizontal(self.key, 0, 18)


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


class PdfBlocks:
    """Makes what pages are filled with. `wide`: of the text's frame, `high`: of a picture's page."""

    def __init__(self, wide: float, picture_room: tuple[float, float]) -> None:
        self.styles = Styles()
        self._wide = wide
        self._room = picture_room
        self._count = 0

    def section(self, section: Section, *, is_first: bool) -> Iterator[Flowable]:
        """A section with its heading and its bookmark."""
        shown = next((each for each in section.blocks if isinstance(each, Shown) and each.whole_page), None)
        if shown is not None:
            yield NextPageTemplate(DRAWING_PAGE)
            yield PageBreak()
        elif section.on_new_page:
            yield PageBreak()
        elif not is_first:
            yield CondPageBreak(120)
        yield Anchor(section.key, section.title if not is_first else "Summary", 0)
        yield Paragraph(text_of(section.title), self.styles.title if is_first else self.styles.section)
        for block in section.blocks:
            yield from self.block(block)
        if shown is not None:
            # The next section begins a page of its own.
            yield NextPageTemplate(TEXT_PAGE)

    def block(self, block: Block) -> Iterator[Flowable]:
        """One block."""
        styles = self.styles
        match block:
            case Text():
                yield Paragraph(text_of(block.text), styles.of(block.style))
            case Labelled():
                yield Paragraph(f"<b>{text_of(block.label)}:</b> {text_of(block.text)}", styles.body)
            case Heading():
                yield CondPageBreak(LEAST_BELOW)
                yield from self._listed(block.text if block.listed else "")
                yield Paragraph(text_of(block.text), styles.heading)
            case GradedHeading():
                yield CondPageBreak(LEAST_BELOW)
                yield from self._listed(f"{block.number}. {block.text} ({block.grade_words})")
                yield self._graded(block)
            case Bullets():
                for item in block.items:
                    yield Paragraph(text_of(item), styles.bullet, bulletText="•")
            case Contents():
                listed = TableOfContents(dotsMinLevel=0)
                listed.levelStyles = [styles.contents]
                yield Paragraph("Contents", styles.heading)
                yield listed
            case Counts():
                yield self._counts(block)
            case Table():
                yield self._table(block)
                yield Spacer(1, 6)
            case Shown():
                yield from self._shown(block)
            case Together():
                yield KeepTogether([each for inner in block.blocks for each in self.block(inner)])

    def _listed(self, title: str) -> Iterator[Flowable]:
        if title:
            self._count += 1
            yield Anchor(f"place{self._count}", title, 1)

    def _shown(self, block: Shown) -> Iterator[Flowable]:
        if not block.whole_page:
            yield PictureFlowable(block.picture, block.most_px * SMALL, SMALL, framed=True)
            return
        wide, high = self._room
        across, down = block.picture.size
        scale = min(LARGEST * 1.6, wide / across, high / down)
        yield PictureFlowable(block.picture, high, LARGEST * 1.6, framed=False)
        if scale < LEAST_LEGIBLE:
            small = "The lettering is small at this size: a larger paper, or the SVG, shows it larger."
            yield Paragraph(small, self.styles.second)

    def _graded(self, block: GradedHeading) -> Flowable:
        words = f"{block.number}. {text_of(block.text)}"
        grade = f'<font size="8.5" color="{printed("ink_2")}">{text_of(block.grade_words)}</font>'
        cells = [[Mark(block.grade), Paragraph(f"{words} &nbsp; {grade}", self.styles.heading)]]
        made = PdfTable(cells, colWidths=[20, self._wide - 20], style=_BARE, spaceBefore=10)
        return made

    def _counts(self, block: Counts) -> Flowable:
        cells: list[Any] = []
        for grade, count in block.counts:
            cells += [Mark(grade), Paragraph(f"<b>{count}</b> {grade.value}", self.styles.body)]
        return PdfTable(
            [cells], colWidths=[18, 82] * len(block.counts), style=_BARE, hAlign="LEFT", spaceAfter=4
        )

    def _table(self, block: Table) -> Flowable:
        total = sum(block.shares)
        widths = [self._wide * share / total for share in block.shares]
        rows: list[list[Any]] = []
        if block.head:
            styles = self.styles
            rows.append(
                [
                    Paragraph(text_of(each), styles.head_number if column in block.numeric else styles.head)
                    for column, each in enumerate(block.head)
                ]
            )
        rows += [[self._cell(block, column, cell) for column, cell in enumerate(row)] for row in block.rows]
        style = _HEADED if block.head else _PLAIN
        return PdfTable(rows, colWidths=widths, style=style, repeatRows=1 if block.head else 0, splitInRow=1)

    def _cell(self, block: Table, column: int, cell: Cell) -> Any:
        if isinstance(cell, Blank):
            return BoxFlowable(cell)
        styles = self.styles
        if column in block.numeric:
            return Paragraph(text_of(cell), styles.bold_number if column in block.bold else styles.number)
        return Paragraph(text_of(cell), styles.bold_cell if column in block.bold else styles.cell)


_TIGHT = [
    ("LEFTPADDING", (0, 0), (-1, -1), 0),
    ("RIGHTPADDING", (0, 0), (-1, -1), 8),
    ("TOPPADDING", (0, 0), (-1, -1), 2.5),
    ("BOTTOMPADDING", (0, 0), (-1, -1), 2.5),
    ("VALIGN", (0, 0), (-1, -1), "TOP"),
]
_BARE = TableStyle([*_TIGHT, ("VALIGN", (0, 0), (-1, -1), "MIDDLE"), ("TOPPADDING", (0, 0), (-1, -1), 0)])
_PLAIN = TableStyle([*_TIGHT, ("LINEBELOW", (0, 0), (-1, -1), 0.4, colour("hairline"))])
_HEADED = TableStyle(
    [
        *_TIGHT,
        ("LINEBELOW", (0, 1), (-1, -1), 0.4, colour("hairline")),
        ("LINEBELOW", (0, 0), (-1, 0), 0.8, colour("ink_2")),
    ]
)
