"""The sheet from far off: one item paints all in few strokes, where painting thing by thing would cost too much."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Protocol

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from circuitcheck.editor.sheet.far_batches import (
    FarPart,
    FarPipe,
    FarSymbols,
    lines_by_height,
    paint_boxes,
    paint_lines,
)
from circuitcheck.editor.sheet.far_grid import FarGrid
from circuitcheck.editor.sheet.layer import EVERYWHERE, expose, exposed
from circuitcheck.editor.sheet.pixmaps import Look
from circuitcheck.editor.sheet.shown_part import Lens, edges_of, rect_of
from circuitcheck.picture.labels import Rect

LINE_PX = 4.0

FAR_SCALE = 0.35
"""Below this zoom the overview stands for the items."""

TINY_SCALE = 0.16
"""Below this zoom a symbol is a few px across: its box stands for it, and lines are one px wide."""


class Seen(Protocol):
    """Who knows what there is to see."""

    def far_boxes(self) -> tuple[Mapping[str, Rect], Mapping[str, Rect]]:
        """The boxes of all symbols and of the lines of all pipes that lie on the sheet, in px, by id."""

    def far_part(self, id: str) -> FarPart:
        """What is seen of a part."""

    def far_pipe(self, id: str) -> FarPipe:
        """What is seen of a pipe."""

    def look(self, id: str) -> Look:
        """The look of a part: asked only for those of which more than a box is seen."""


class OverviewItem(QGraphicsItem):
    """All lines by colour, all symbols as pixmaps; no labels, letters or hops. What of it changed is only
    noted until it is looked at from far off again."""

    def __init__(self, lens: Lens, seen: Seen) -> None:
        super().__init__()
        self._lens = lens
        self._seen = seen
        self._changed: set[str] | None = None
        """What changed since it was last read; None: all may have."""
        self._symbols = FarGrid(seen.far_part, lambda parts: FarSymbols(parts, seen.look))
        self._lines = FarGrid(seen.far_pipe, lines_by_height)
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemUsesExtendedStyleOption)

    def renew_all(self) -> None:
        """All of it may be another."""
        self._changed = None
        self.update()

    def recolour(self) -> None:
        """All of it may look otherwise, and lies where it did."""
        if self._changed is not None:
            self._symbols.renew()
            self._lines.renew()
        self.update()

    def note(self, ids: Iterable[str]) -> None:
        """These parts and pipes may have changed, come or gone."""
        if self._changed is not None:
            self._changed.update(ids)

    def follow(self) -> None:
        """Take in what changed, and let it be painted."""
        if self._changed is None:
            self._read_all()
            return
        symbols, lines = self._seen.far_boxes()
        boxes: list[Rect] = []
        for id in self._changed:
            boxes += self._symbols.put(id, symbols.get(id))
            boxes += self._lines.put(id, lines.get(id))
        expose(self.scene(), map(rect_of, boxes))
        self._changed = set()

    def boundingRect(self) -> QRectF:
        """The whole sheet."""
        return EVERYWHERE

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Paint what lies in what is exposed: the lines, then the symbols."""
        if self._changed is None:
            self._read_all()
        boxes = [edges_of(piece) for piece in exposed(painter, option.exposedRect)]
        symbols, lines = self._symbols.within(boxes), self._lines.within(boxes)
        zoom = painter.worldTransform().m11()
        painter.save()
        if zoom < TINY_SCALE:
            # All lines are square: where they are one px wide, nothing needs smoothing.
            painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
            paint_lines(painter, lines, 0, thin=True)
            paint_boxes(painter, symbols)
        else:
            width = LINE_PX * zoom * painter.device().devicePixelRatioF()
            paint_lines(painter, lines, LINE_PX, thin=width <= 1)
            place = painter.worldTransform()
            # Pixmaps are put on the screen's own pixels: only where the sheet lies, not how large it is shown.
            painter.resetTransform()
            painter.translate(place.dx(), place.dy())
            for each in symbols:
                each.paint(painter, zoom, self._lens)
        painter.restore()

    def _read_all(self) -> None:
        self._changed = set()
        symbols, lines = self._seen.far_boxes()
        self._symbols.fill(symbols)
        self._lines.fill(lines)
