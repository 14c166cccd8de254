"""A part or a control on the sheet: one item that paints its symbol, its open ports and its label."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from circuitcheck.editor.sheet.painting import Palette, Prepared
from circuitcheck.editor.sheet.pixmaps import Look, Pixmaps
from circuitcheck.picture.labels import Label, Rect, grown, marks_of
from circuitcheck.picture.marks import Mark, extent, moved

PART_Z = 10.0
LEAST_HALF_PX = 10.0
"""A part is at least so large to the pointer, from its middle, in px at 100 %."""


@dataclass(frozen=True)
class PartView:
    """What is shown of a part. `box` is its symbol's, `label` stands where it lies on the sheet, in px."""

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
    """How the sheet is looked at, shared by its items: zoom settled, and the pixmaps made so far."""

    pixmaps: Pixmaps
    settled: bool = True


class PartItem(QGraphicsItem):
    """Shows a PartView; it holds nothing of the drawing but the id."""

    def __init__(self, id: str, view: PartView, lens: Lens) -> None:
        super().__init__()
        self.id = id
        self._lens = lens
        self._view = view
        self._bounds = QRectF()
        self._reach = QRectF()
        self._ports = Prepared((), view.palette)
        self._label = Prepared((), view.palette)
        self.setZValue(PART_Z)
        self.show_view(view)

    @property
    def view(self) -> PartView:
        """What is shown."""
        return self._view

    def show_view(self, view: PartView) -> None:
        """Show something else of the part."""
        self.prepareGeometryChange()
        x, y = view.at
        self._view = view
        label = () if view.label is None else moved(marks_of(view.label), -x, -y)
        self._ports = Prepared(view.ports, view.palette)
        self._label = Prepared(label, view.text_palette or view.palette)
        left, top, right, low = view.box
        symbol = QRectF(left - x, top - y, right - left, low - top)
        self._reach = symbol.united(
            QRectF(-LEAST_HALF_PX, -LEAST_HALF_PX, 2 * LEAST_HALF_PX, 2 * LEAST_HALF_PX)
        )
        bounds = self._reach.adjusted(-3, -3, 3, 3)
        if view.ports:
            bounds = bounds.united(rect_of(grown(extent(view.ports), 1)))
        if view.label is not None:
            left, top, right, low = grown(view.label.box, 6)
            bounds = bounds.united(QRectF(left - x, top - y, right - left, low - top))
        self._bounds = bounds
        self.setPos(x, y)
        self.update()

    @property
    def reach(self) -> QRectF:
        """Where the pointer takes hold of it, in px of the sheet."""
        return self._reach.translated(self.pos())

    def boundingRect(self) -> QRectF:
        """All it paints, from its middle."""
        return self._bounds

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Paint the symbol's shared pixmap on whole pixels, then ports and label."""
        paint_look(painter, self._view.look, self._view.palette, self._lens)
        self._ports.paint(painter)
        self._label.paint(painter)


def paint_look(painter: QPainter, look: Look, palette: Palette, lens: Lens) -> None:
    """Paint a symbol about the painter's 0,0, unblurred: a pixel of its pixmap on a pixel of the screen."""
    place = painter.worldTransform()
    zoom, ratio = place.m11(), painter.device().devicePixelRatioF()
    scale = zoom * ratio
    picture = lens.pixmaps.get(look, palette, scale, settled=lens.settled)
    middle = place.map(QPointF(0, 0))
    x, y = round(middle.x() * ratio) / ratio, round(middle.y() * ratio) / ratio
    across, down = picture.size_px
    target = QRectF(x + picture.origin.x() * zoom, y + picture.origin.y() * zoom, across * zoom, down * zoom)
    painter.save()
    painter.resetTransform()
    painter.drawPixmap(target, picture.pixmap, picture.whole)
    painter.restore()


def rect_of(box: Rect) -> QRectF:
    """A box of the picture as Qt's rectangle."""
    left, top, right, low = box
    return QRectF(left, top, right - left, low - top)
