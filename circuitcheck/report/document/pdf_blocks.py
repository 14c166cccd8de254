"""Blocks as what a PDF page is filled with: paragraphs, tables with boxes to fill in, pictures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from reportlab.platypus import (
    BalancedColumns,
    CondPageBreak,
    Flowable,
    KeepTogether,
    NextPageTemplate,
    PageBreak,
    Paragraph,
    Spacer,
)
from reportlab.platypus import Table as PdfTable

from circuitcheck.picture.colours import printed
from circuitcheck.report.document.blocks import (
    Block,
    Bullets,
    Columns,
    Contents,
    Counts,
    GradedHeading,
    Heading,
    Labelled,
    Section,
    Shown,
    Table,
    Text,
    Together,
)
from circuitcheck.report.document.pdf_flowables import (
    SMALL,
    Anchor,
    ContentsLine,
    Mark,
    PictureFlowable,
)
from circuitcheck.report.document.pdf_tables import BARE, table
from circuitcheck.report.document.pdf_texts import Styles, paragraphs, text_of
from circuitcheck.told import Tongue, a_word, tell

DRAWING_PAGE, TEXT_PAGE = "drawing", "text"
SUMMARY, CONTENTS = a_word("Summary"), a_word("Contents")
SMALL_LETTERING = a_word("The lettering is small at this size: a larger paper, or the SVG, shows it larger.")
LARGEST = 0.75
"""Points to a px at most: what stands 12 px high is 9 point."""
LEAST_LEGIBLE = 0.33
"""Below so many points to a px lettering is smaller than 4 point."""
LEAST_BELOW = 110.0
"""A heading stands so many points above the page's end at least."""


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
                yield from paragraphs(block.text, styles.of(block.style))
            case Labelled():
                yield from paragraphs(block.text, styles.body, f"<b>{text_of(block.label)}:</b> ")
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
                yield table(block, styles, self._wide)
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
        yield PdfTable(cells, colWidths=[20, self._wide - 20], style=BARE, spaceBefore=10)

    def _counts(self, block: Counts) -> Flowable:
        cells: list[Any] = []
        for grade, count, words in block.counts:
            cells += [Mark(grade), Paragraph(f"<b>{count}</b> {text_of(words)}", self.styles.body)]
        return PdfTable(
            [cells], colWidths=[18, 82] * len(block.counts), style=BARE, hAlign="LEFT", spaceAfter=4
        )

    def _list(self, block: Bullets | Columns) -> Iterator[Flowable]:
        if isinstance(block, Bullets):
            for item in block.items:
                yield from paragraphs(item, self.styles.bullet, bullet="•")
            return
        made: list[Flowable] = [
            each for item in block.items for each in paragraphs(item, self.styles.small_bullet, bullet="•")
        ]
        yield BalancedColumns(made, nCols=2, innerPadding=12, spaceAfter=4)
