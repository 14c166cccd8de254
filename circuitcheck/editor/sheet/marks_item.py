"""Marks on the sheet that belong to no part or pipe: frames, rings, pills, ghosts, the title block."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from circuitcheck.editor.sheet.layer import EVERYWHERE, expose, exposed
from circuitcheck.editor.sheet.painting import Palette, Prepared
from circuitcheck.picture.labels import ASCENT
from circuitcheck.picture.lettering import width
from circuitcheck.picture.marks import Mark, TextMark, extent

MARKS_Z = 20.0


class MarksItem(QGraphicsItem):
    """Shows any marks; it takes no part in what the pointer finds. It says itself what is to be painted anew,
    as a layer does: the box round all its marks may be the sheet."""

    def __init__(self, marks: Iterable[Mark], palette: Palette, z: float = MARKS_Z) -> None:
        super().__init__()
        self._palette = palette
        self._shown: tuple[Mark, ...] = ()
        self._ready: list[tuple[QRectF, Prepared]] = []
        self._box = QRectF()
        self.setZValue(z)
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemUsesExtendedStyleOption)
        self.show_marks(marks, palette)

    @property
    def box(self) -> QRectF:
        """The box round all marks, in px of the sheet; null for none."""
        return QRectF(self._box)

    def show_marks(self, marks: Iterable[Mark], palette: Palette) -> None:
        """Show other marks; those that stay the same are not painted anew."""
        new = tuple(marks)
        if palette is not self._palette:
            self._replace(new, palette, 0, 0)
        elif new != self._shown:
            head = _alike(new, self._shown)
            most = min(len(new), len(self._shown)) - head
            tail = min(most, _alike(new[::-1], self._shown[::-1]))
            self._replace(new, palette, head, tail)

    def _replace(self, new: tuple[Mark, ...], palette: Palette, head: int, tail: int) -> None:
        """Show others between so many first and so many last, which stay."""
        old_end, new_end = len(self._ready) - tail, len(new) - tail
        made = [(box_of((mark,)), Prepared((mark,), palette)) for mark in new[head:new_end]]
        expose(self.scene(), [box for box, _ in (*self._ready[head:old_end], *made)])
        self._ready[head:old_end] = made
        self._box = QRectF()
        for box, _ in self._ready:
            self._box = self._box.united(box)
        self._shown, self._palette = new, palette

    def boundingRect(self) -> QRectF:
        """The whole sheet."""
        return EVERYWHERE

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Paint the marks that lie in what is exposed."""
        if not self._box.intersects(option.exposedRect):
            return
        boxes = exposed(painter, option.exposedRect)
        for box, mark in self._ready:
            if any(box.intersects(each) for each in boxes):
                mark.paint(painter)


def _alike(one: Sequence[Mark], other: Sequence[Mark]) -> int:
    """How many marks are the same from the first on."""
    for count, (a, b) in enumerate(zip(one, other, strict=False)):
        if a != b:
            return count
    return min(len(one), len(other))


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
