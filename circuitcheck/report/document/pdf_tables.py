"""Tables of a PDF, with boxes to fill in by hand and links to other files."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import zip_longest
from typing import Any
from xml.sax.saxutils import escape

from reportlab.pdfbase.pdfmetrics import stringWidth
from reportlab.platypus import Flowable, Paragraph, TableStyle
from reportlab.platypus import Table as PdfTable

from circuitcheck.picture.colours import printed
from circuitcheck.report.document.blocks import Blank, Cell, Link, Table
from circuitcheck.report.document.pdf_flowables import BoxFlowable, Line
from circuitcheck.report.document.pdf_marks import colour
from circuitcheck.report.document.pdf_texts import Styles, pieces, text_of
from circuitcheck.report.plain import plain

CELL_GAP, GAP_AFTER_NUMBERS = 8.0, 16.0
HIGH = 60.0
"""A first row up to so many points high, with the head above it, goes to the next page whole: less than what a heading
has below it."""


class Rows(PdfTable):
    """A table that goes on on the next page between two rows, and within one only where none goes before it.

    The library tries what is left of a table once more below it, and would begin it there with its head again.
    """

    left_high = 0.0
    """So high is what is left of the page on which this table began; no more of it goes there."""

    def split(self, available_wide: float, available_high: float) -> list[Flowable]:
        """What goes on this page, and what on the next; nothing where all of it goes there."""
        if available_high <= self.left_high:
            self.left_high = 0.0
            return []
        self.splitInRow = 0
        found: list[Any] = super().split(available_wide, available_high)
        if not found and sum(self._heights[: self.repeatRows + 1]) > HIGH:
            self.splitInRow = 1
            found = super().split(available_wide, available_high)
        if found:
            here, *rest = found
            for each in rest:
                each.left_high = available_high - sum(here._heights)
        return found

    @property
    def _heights(self) -> list[float]:
        heights: list[float] = vars(self)["_rowHeights"]
        return heights


def table(block: Table, styles: Styles, wide: float) -> Flowable:
    """A table of the width `wide`; `styles` set its texts."""
    total = sum(block.shares)
    widths = [wide * share / total for share in block.shares]
    gaps = [CELL_GAP] * len(widths)
    for column in block.numeric:
        if column + 1 not in block.numeric:
            # Set to the right, they would else touch what is set to the left behind them.
            gaps[column] = GAP_AFTER_NUMBERS
    gaps[-1] = 0.0
    rows: list[list[Any]] = []
    if block.head:
        rows.append(
            [
                Paragraph(text_of(each), styles.head_number if column in block.numeric else styles.head)
                for column, each in enumerate(block.head)
            ]
        )
    more: list[Any] = [("RIGHTPADDING", (column, 0), (column, -1), gap) for column, gap in enumerate(gaps)]
    for whole in block.rows:
        parts = _in_pieces(whole)
        for number, part in enumerate(parts, start=1):
            rows.append(
                [
                    _cell(block, column, cell, styles, widths[column] - gaps[column])
                    for column, cell in enumerate(part)
                ]
            )
            if number < len(parts):
                more += _goes_on(len(rows) - 1)
    style = TableStyle(more, parent=_HEADED if block.head else _PLAIN)
    return Rows(rows, colWidths=widths, style=style, repeatRows=1 if block.head else 0)


def _cell(block: Table, column: int, cell: Cell, styles: Styles, wide: float) -> Any:
    if isinstance(cell, Blank):
        return BoxFlowable(cell)
    if isinstance(cell, Link):
        # To another PDF beside this one, which a viewer opens in this one's place.
        path, colour = escape(cell.path, _IN_QUOTES), printed("select")
        return Paragraph(f'<a href="pdf:{path}" color="{colour}">{text_of(cell.text)}</a>', styles.cell)
    if not cell:
        return ""
    is_bold = column in block.bold
    if column in block.numeric:
        style = styles.bold_number if is_bold else styles.number
    else:
        style = styles.bold_cell if is_bold else styles.cell
    text = plain(cell)
    if len(cell.splitlines()) == 1 and stringWidth(text, style.fontName, style.fontSize) <= wide:
        return Line(text, style)
    return Paragraph(text_of(cell), style)


def _in_pieces(row: Sequence[Cell]) -> list[tuple[Cell, ...]]:
    """A row as it is, or one with a very long text as several below one another."""
    cells = [pieces(cell) if isinstance(cell, str) else [cell] for cell in row]
    return list(zip_longest(*cells, fillvalue=""))


def _goes_on(row: int) -> list[Any]:
    """How a row looks that the next one goes on from: as if both were one."""
    return [
        ("LINEBELOW", (0, row), (-1, row), 0.8, "white"),
        ("BOTTOMPADDING", (0, row), (-1, row), 0),
        ("TOPPADDING", (0, row + 1), (-1, row + 1), 0),
    ]


_IN_QUOTES = {'"': "&quot;"}

_TIGHT = [
    ("LEFTPADDING", (0, 0), (-1, -1), 0),
    ("RIGHTPADDING", (0, 0), (-1, -1), CELL_GAP),
    ("TOPPADDING", (0, 0), (-1, -1), 2.5),
    ("BOTTOMPADDING", (0, 0), (-1, -1), 2.5),
    ("VALIGN", (0, 0), (-1, -1), "TOP"),
]
BARE = TableStyle([*_TIGHT, ("VALIGN", (0, 0), (-1, -1), "MIDDLE"), ("TOPPADDING", (0, 0), (-1, -1), 0)])
_PLAIN = TableStyle([*_TIGHT, ("LINEBELOW", (0, 0), (-1, -1), 0.4, colour("hairline"))])
_HEADED = TableStyle(
    [
        *_TIGHT,
        ("LINEBELOW", (0, 1), (-1, -1), 0.4, colour("hairline")),
        ("LINEBELOW", (0, 0), (-1, 0), 0.8, colour("ink_2")),
    ]
)
