"""A part or a control on the sheet: its symbol, its open ports and its label."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from circuitcheck.editor.sheet.painting import Palette, Prepared
from circuitcheck.editor.sheet.pixmaps import Look, Pixmaps
from circuitcheck.picture.labels import Label, Rect, grown, marks_of
from circuitcheck.picture.marks import Mark, extent

LEAST_HALF_PX = 10.0
"""A part is at least so large to the pointer, from its middle, in px at 100 %."""


@dataclass(frozen=True)
class PartView:
    """What is shown of a part. All stands where it lies on the sheet, in px; `box` is its symbol's."""

    at: tuple[float, float]
    look: Look
    palette: Palette
    box: Rect
    ports: tuple[Mark, ...] = ()
    label: Label | None = None
    text_palette: Palette | None = None
    """For the label, where it has other colours than the symbol."""


@dataclass
class Lens:
    """How the sheet is looked at, shared by all on it: zoom settled, and the pixmaps made so far."""

    pixmaps: Pixmaps
    settled: bool = True


class ShownPart:
    """A PartView ready to paint; it holds nothing of the drawing but the id."""

    __slots__ = ("_marks", "boxes", "id", "reach", "view")

    def __init__(self, id: str, view: PartView) -> None:
        self.id = id
        self.view = view
        x, y = view.at
        self.reach = rect_of(view.box).united(
            QRectF(x - LEAST_HALF_PX, y - LEAST_HALF_PX, 2 * LEAST_HALF_PX, 2 * LEAST_HALF_PX)
        )
        """Where the pointer takes hold of it, in px of the sheet."""
        self.boxes = [self.reach.adjusted(-3, -3, 3, 3)]
        """All it paints, in px of the sheet."""
        self._marks: list[Prepared] = []
        if view.ports:
            self.boxes.append(rect_of(grown(extent(view.ports), 1)))
            self._marks.append(Prepared(view.ports, view.palette))
        if view.label is not None:
            self.boxes.append(rect_of(grown(view.label.box, 6)))
            self._marks.append(Prepared(marks_of(view.label), view.text_palette or view.palette))

    def paint_marks(self, painter: QPainter) -> None:
        """Paint its open ports and its label."""
        for marks in self._marks:
            marks.paint(painter)


def paint_parts(painter: QPainter, parts: Sequence[ShownPart], lens: Lens) -> None:
    """Paint the symbols' shared pixmaps, then ports and labels over all of them."""
    place = painter.worldTransform()
    painter.save()
    painter.resetTransform()
    for part in parts:
        _paint_look(painter, part.view, place.map(QPointF(*part.view.at)), place.m11(), lens)
    painter.restore()
    for part in parts:
        part.paint_marks(painter)


def _paint_look(painter: QPainter, view: PartView, middle: QPointF, zoom: float, lens: Lens) -> None:
    """Paint a symbol unblurred: a pixel of its pixmap on a pixel of the screen."""
    ratio = painter.device().devicePixelRatioF()
    picture = lens.pixmaps.get(view.look, view.palette, zoom * ratio, settled=lens.settled)
    x, y = round(middle.x() * ratio) / ratio, round(middle.y() * ratio) / ratio
    painter.drawPixmap(picture.target(x, y, zoom), picture.pixmap, picture.whole)


def rect_of(box: Rect) -> QRectF:
    """A box of the picture as Qt's rectangle."""
    left, top, right, low = box
    return QRectF(left, top, right - left, low - top)


def edges_of(box: QRectF) -> Rect:
    """Qt's rectangle as a box of the picture."""
    return box.left(), box.top(), box.right(), box.bottom()
