"""The sheet from far off: one item paints all, where walking the items would cost too much."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple, Protocol

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from circuitcheck.editor.sheet.painting import Palette
from circuitcheck.editor.sheet.pixmaps import Look
from circuitcheck.editor.sheet.shown_part import Lens, rect_of
from circuitcheck.picture.labels import Rect
from circuitcheck.picture.pipes import LINES, Place

FAR_SCALE = 0.35
"""Below this zoom the overview stands for the items."""

TINY_SCALE = 0.16
"""Below this zoom a symbol is a few px across: its box stands for it, and lines are one px wide."""

LINE_PX = 4.0


class FarPart(NamedTuple):
    """What is seen of a part from far off, in px of the sheet."""

    id: str
    at: Place
    palette: Palette
    box: Rect


class FarPipe(NamedTuple):
    """What is seen of a pipe from far off: its line in px, and the service that gives its colour."""

    line: tuple[Place, ...]
    service: str
    palette: Palette


class Seen(Protocol):
    """Who knows what there is to see."""

    def far_parts(self) -> Iterable[FarPart]:
        """All parts."""

    def far_pipes(self) -> Iterable[FarPipe]:
        """All pipes."""

    def look(self, id: str) -> Look:
        """The look of a part: asked only for those of which more than a box is seen."""

    def box_of_all(self) -> Rect | None:
        """The box round all of it."""


class OverviewItem(QGraphicsItem):
    """All lines by colour in one path each, all symbols as pixmaps; no labels, letters or hops."""

    def __init__(self, lens: Lens, seen: Seen) -> None:
        super().__init__()
        self._lens = lens
        self._seen = seen
        self._is_stale = True
        self._parts: list[FarPart] = []
        self._looks: dict[str, Look] = {}
        self._lines: list[tuple[QPen, QPainterPath]] = []
        self._boxes: list[tuple[Palette, QPainterPath]] = []
        self._bounds = QRectF()
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemUsesExtendedStyleOption)

    def renew(self) -> None:
        """What is seen is no longer what it was; it is read only when next painted, or asked for the box."""
        self.prepareGeometryChange()
        self._is_stale = True
        self.update()

    def boundingRect(self) -> QRectF:
        """All it paints."""
        self._read()
        return self._bounds

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Paint the lines, then the symbols that lie in what is exposed."""
        self._read()
        painter.setBrush(Qt.BrushStyle.NoBrush)
        place = painter.worldTransform()
        if place.m11() < TINY_SCALE:
            self._paint_tiny(painter)
            return
        for pen, path in self._lines:
            painter.setPen(pen)
            painter.drawPath(path)
        zoom, ratio = place.m11(), painter.device().devicePixelRatioF()
        exposed = option.exposedRect.adjusted(-64, -64, 64, 64)
        left, top, right, low = exposed.left(), exposed.top(), exposed.right(), exposed.bottom()
        pixmaps, settled = self._lens.pixmaps, self._lens.settled
        dx, dy = place.dx(), place.dy()
        painter.save()
        painter.resetTransform()
        looks = self._looks
        for view in self._parts:
            x, y = view.at
            if left < x < right and top < y < low:
                look = looks.get(view.id)
                if look is None:
                    look = looks[view.id] = self._seen.look(view.id)
                picture = pixmaps.get(look, view.palette, zoom * ratio, settled=settled)
                corner = QPointF(dx + (x + picture.origin.x()) * zoom, dy + (y + picture.origin.y()) * zoom)
                across, down = picture.size_px
                target = QRectF(corner.x(), corner.y(), across * zoom, down * zoom)
                painter.drawPixmap(target, picture.pixmap, picture.whole)
        painter.restore()

    def _paint_tiny(self, painter: QPainter) -> None:
        """Lines of one px and a box for each symbol: all lines are square, so nothing needs smoothing."""
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        for pen, path in self._lines:
            painter.setPen(QPen(pen.color(), 0))
            painter.drawPath(path)
        for palette, path in self._boxes:
            painter.setPen(QPen(palette.colour("ink"), 0))
            painter.setBrush(palette.colour("body"))
            painter.drawPath(path)
        painter.restore()

    def _read(self) -> None:
        """Take in what there is."""
        if not self._is_stale:
            return
        self._is_stale = False
        self._parts = list(self._seen.far_parts())
        self._looks = {}
        by_colour: dict[tuple[str, int], tuple[FarPipe, QPainterPath]] = {}
        for view in self._seen.far_pipes():
            key = (LINES[view.service].role, id(view.palette))
            if key not in by_colour:
                by_colour[key] = (view, QPainterPath())
            path = by_colour[key][1]
            path.moveTo(*view.line[0])
            for x, y in view.line[1:]:
                path.lineTo(x, y)
        self._lines = []
        for (role, _), (view, path) in by_colour.items():
            self._lines.append((QPen(view.palette.colour(role), LINE_PX), path))
        boxes: dict[int, tuple[Palette, QPainterPath]] = {}
        for part in self._parts:
            left, top, right, low = part.box
            tone = id(part.palette)
            if tone not in boxes:
                boxes[tone] = (part.palette, QPainterPath())
            boxes[tone][1].addRect(left, top, right - left, low - top)
        self._boxes = list(boxes.values())
        whole = self._seen.box_of_all()
        self._bounds = QRectF() if whole is None else rect_of(whole).adjusted(-64, -64, 64, 64)
