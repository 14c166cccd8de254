"""Marks on the sheet that belong to no part or pipe: frames, rings, pills, ghosts, the title block."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from circuitcheck.editor.sheet.painting import Palette, Prepared
from circuitcheck.picture.labels import ASCENT
from circuitcheck.picture.lettering import width
from circuitcheck.picture.marks import Mark, TextMark, extent

MARKS_Z = 20.0


class MarksItem(QGraphicsItem):
    """Shows any marks; it takes no part in what the pointer finds."""

    def __init__(self, marks: Iterable[Mark], palette: Palette, z: float = MARKS_Z) -> None:
        super().__init__()
        self._bounds = QRectF()
        self._shown: tuple[tuple[Mark, ...], Palette] = ((), palette)
        self._prepared = Prepared((), palette)
        self.setZValue(z)
        self.show_marks(marks, palette)

    def show_marks(self, marks: Iterable[Mark], palette: Palette) -> None:
        """Show other marks; where they are none or the same nothing is painted anew."""
        kept = tuple(marks)
        if (kept, palette) == self._shown:
            return
        self._shown = kept, palette
        self.prepareGeometryChange()
        self._prepared = Prepared(kept, palette)
        self._bounds = box_of(kept)
        self.update()

    def boundingRect(self) -> QRectF:
        """All it paints."""
        return self._bounds

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Paint the marks."""
        self._prepared.paint(painter)


def box_of(marks: tuple[Mark, ...]) -> QRectF:
    """The box round the marks, texts included, with room for a stroke that high contrast widens; null for none."""
    if not marks:
        return QRectF()
    shapes = [mark for mark in marks if not isinstance(mark, TextMark)]
    found = QRectF()
    if shapes:
        left, top, right, low = extent(shapes)
        found = QRectF(left, top, right - left, low - top)
    for mark in marks:
        if isinstance(mark, TextMark):
            wide = width(mark.text, mark.size, mark.weight)
            left = mark.x - {"start": 0.0, "middle": wide / 2, "end": wide}[mark.anchor]
            rise = ASCENT * mark.size / 12
            found = found.united(QRectF(left, mark.y - rise, wide, rise + mark.size * 0.4))
    return found.adjusted(-6, -6, 6, 6)
