"""Blocks as what a PDF page is filled with: paragraphs, tables with boxes to fill in, pictures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any
from xml.sax.saxutils import escape

from reportlab.lib.enums import TA_RIGHT
from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfbase.pdfmetrics import stringWidth
from reportlab.platypus import (
    BalancedColumns,
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

from circuitcheck.picture.colours import printed
from circuitcheck.report.document.blocks import (
    Blank,
    Block,
    Bullets,
    Cell,
    Columns,
    Contents,
    Counts,
    GradedHeading,
    Heading,
    Labelled,
    Link,
    Section,
    Shown,
    Style,
    Table,
    Text,
    Together,
)
from circuitcheck.report.document.pdf_flowables import (
    SMALL,
    Anchor,
    BoxFlowable,
    ContentsLine,
    Line,
    Mark,
    PictureFlowable,
)
from circuitcheck.report.document.pdf_marks import colour, font_name
from circuitcheck.report.plain import bound, plain
from circuitcheck.told import Tongue, a_word, tell

DRAWING_PAGE, TEXT_PAGE = "drawing", "text"
SUMMARY, CONTENTS = a_word("Summary"), a_word("Contents")
SMALL_LETTERING = a_word("The lettering is small at this size: a larger paper, or the SVG, shows it larger.")
LARGEST = 0.75
"""Points to a px at most: what stands 12 px high is 9 point."""
LEAST_LEGIBLE = 0.33
"""Below so many points to a px lettering is smaller than 4 point."""
CELL_GAP, GAP_AFTER_NUMBERS = 8.0, 16.0
LEAST_BELOW = 110.0
"""A heading stands so many points above the page's end at least."""


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


def text_of(text: str) -> str:
    """A text of a file, harmless inside a paragraph; its line breaks kept."""
    return "<br/>".join(escape(bound(plain(line))) for line in text.splitlines())


class PdfBlocks:
    """Makes what pages are filled with.

    `sections`: all of them, for the contents; `wide`: the text's frame; `picture_room`: what a page has
    for a whole picture, wide and high; `tongue`: the language of the few words that are no section's.
    """

    def __init__(
        self, sections: Sequence[Section], wide: float, picture_room: tuple[float, float], tongue: Tongue
    ) -> None:
        self.styles = Styles()
        self._sections = sections[1:]
        self._wide = wide
        self._room = picture_room
        self._tongue = tongue
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
        yield Anchor(section.key, section.title if not is_first else tell(SUMMARY, self._tongue), 0)
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
                yield from self._heading(block)
            case GradedHeading():
                yield from self._graded(block)
            case Bullets() | Columns():
                yield from self._list(block)
            case Contents():
                yield from self._contents()
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
            yield Paragraph(text_of(tell(SMALL_LETTERING, self._tongue)), self.styles.second)

    def _contents(self) -> Iterator[Flowable]:
        yield Paragraph(text_of(tell(CONTENTS, self._tongue)), self.styles.heading)
        for section in self._sections:
            yield ContentsLine(section.key, section.title)

    def _heading(self, block: Heading) -> Iterator[Flowable]:
        yield CondPageBreak(LEAST_BELOW)
        yield from self._listed(block.text if block.listed else "")
        yield Paragraph(text_of(block.text), self.styles.heading)

    def _graded(self, block: GradedHeading) -> Iterator[Flowable]:
        yield CondPageBreak(LEAST_BELOW)
        yield from self._listed(f"{block.number}. {block.text} ({block.grade_words})")
        words = f"{block.number}. {text_of(block.text)}"
        grade = f'<font size="8.5" color="{printed("ink_2")}">{text_of(block.grade_words)}</font>'
        cells = [[Mark(block.grade), Paragraph(f"{words} &nbsp; {grade}", self.styles.heading)]]
        yield PdfTable(cells, colWidths=[20, self._wide - 20], style=_BARE, spaceBefore=10)

    def _counts(self, block: Counts) -> Flowable:
        cells: list[Any] = []
        for grade, count, words in block.counts:
            cells += [Mark(grade), Paragraph(f"<b>{count}</b> {text_of(words)}", self.styles.body)]
        return PdfTable(
            [cells], colWidths=[18, 82] * len(block.counts), style=_BARE, hAlign="LEFT", spaceAfter=4
        )

    def _list(self, block: Bullets | Columns) -> Iterator[Flowable]:
        if isinstance(block, Bullets):
            for item in block.items:
                yield Paragraph(text_of(item), self.styles.bullet, bulletText="•")
            return
        made: list[Flowable] = [
            Paragraph(text_of(each), self.styles.small_bullet, bulletText="•") for each in block.items
        ]
        yield BalancedColumns(made, nCols=2, innerPadding=12, spaceAfter=4)

    def _table(self, block: Table) -> Flowable:
        total = sum(block.shares)
        widths = [self._wide * share / total for share in block.shares]
        gaps = [CELL_GAP] * len(widths)
        for column in block.numeric:
            if column + 1 not in block.numeric:
                # Set to the right, they would else touch what is set to the left behind them.
                gaps[column] = GAP_AFTER_NUMBERS
        gaps[-1] = 0.0
        rows: list[list[Any]] = []
        if block.head:
            styles = self.styles
            rows.append(
                [
                    Paragraph(text_of(each), styles.head_number if column in block.numeric else styles.head)
                    for column, each in enumerate(block.head)
                ]
            )
        rows += [
            [
                self._cell(block, column, cell, widths[column] - gaps[column])
                for column, cell in enumerate(row)
            ]
            for row in block.rows
        ]
        base = _HEADED if block.head else _PLAIN
        padding: list[Any] = [
            ("RIGHTPADDING", (column, 0), (column, -1), gap) for column, gap in enumerate(gaps)
        ]
        style = TableStyle(padding, parent=base)
        return PdfTable(rows, colWidths=widths, style=style, repeatRows=1 if block.head else 0, splitInRow=1)

    def _cell(self, block: Table, column: int, cell: Cell, wide: float) -> Any:
        if isinstance(cell, Blank):
            return BoxFlowable(cell)
        if isinstance(cell, Link):
            # To another PDF beside this one, which a viewer opens in this one's place.
            path, colour = escape(cell.path, _IN_QUOTES), printed("select")
            return Paragraph(
                f'<a href="pdf:{path}" color="{colour}">{text_of(cell.text)}</a>', self.styles.cell
            )
        if not cell:
            return ""
        styles, is_bold = self.styles, column in block.bold
        if column in block.numeric:
            style = styles.bold_number if is_bold else styles.number
        else:
            style = styles.bold_cell if is_bold else styles.cell
        text = plain(cell)
        if len(cell.splitlines()) == 1 and stringWidth(text, style.fontName, style.fontSize) <= wide:
            return Line(text, style)
        return Paragraph(text_of(cell), style)


_IN_QUOTES = {'"': "&quot;"}

_TIGHT = [
    ("LEFTPADDING", (0, 0), (-1, -1), 0),
    ("RIGHTPADDING", (0, 0), (-1, -1), CELL_GAP),
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
