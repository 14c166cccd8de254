"""A selection of very many things: the marks of each made when it comes into view, those of all put together for
what is seen from far off."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from functools import partial
from itertools import pairwise
from typing import NamedTuple

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QGraphicsScene

from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.far_grid import FarGrid
from circuitcheck.editor.sheet.layer import Layer
from circuitcheck.editor.sheet.overview import TINY_SCALE
from circuitcheck.editor.sheet.painting import NO_BRUSH, NO_PEN, Prepared, washed
from circuitcheck.editor.sheet.shown_part import edges_of, rect_of
from circuitcheck.picture.marks import Mark

MANY = 400
"""Of more than this many things none has marks of its own."""
OUT_PX = 24.0
"""So far out of what a thing paints itself its frame reaches at most."""
WASH_PX, STROKE_PX = 13.0, 2.0
PART_SHARE = 0.12
PIPE_SHARE = 2 * PART_SHARE
"""What is selected, many or few: how wide a pipe's wash and a frame's stroke are, and what of the colour a wash has."""
NOTHING: frozenset[str] = frozenset()

Marks = Callable[[str], Sequence[Mark]]


class _Batch(NamedTuple):
    """What is selected about one square of the sheet: the boxes of parts, each run of pipes."""

    boxes: list[QRectF]
    runs: list[QLineF]


FromAfar = Callable[[QPainter, Sequence[_Batch], QColor, bool], None]


class ManySelected:
    """Two layers, one under the parts and one over all; they show nothing while few are selected. `wash` and
    `frame` give the marks of one thing under and over it."""

    def __init__(self, content: Content, wash: Marks, frame: Marks, under_z: float, over_z: float) -> None:
        self._content = content
        self._marks = (wash, frame)
        self._ids = NOTHING
        self._off = QPointF()
        self._made: tuple[dict[str, Prepared], dict[str, Prepared]] = ({}, {})
        self._far: FarGrid[str, _Batch] | None = None
        self._layers = (
            Layer(partial(self._paint, 0, self._wash_from_afar), under_z),
            Layer(partial(self._paint, 1, self._frame_from_afar), over_z),
        )

    def adopt(self, scene: QGraphicsScene) -> None:
        """Lie on another scene."""
        for layer in self._layers:
            if layer.scene() is not scene:
                scene.addItem(layer)

    def show(self, ids: frozenset[str]) -> None:
        """Show these selected, as they lie now."""
        if not ids and not self._ids:
            return
        self._ids, self._far = ids, None
        for made in self._made:
            made.clear()
        for layer in self._layers:
            layer.update()

    def show_off(self, off: QPointF) -> None:
        """Show the marks so far off the things, in px: there they will lie."""
        if off != self._off:
            self._off = off
            for layer in self._layers:
                layer.update()

    def _paint(self, which: int, from_afar: FromAfar, painter: QPainter, boxes: Sequence[QRectF]) -> None:
        """Paint one of both layers."""
        if not self._ids:
            return
        painter.save()
        painter.translate(self._off)
        boxes = [box.translated(-self._off) for box in boxes]
        if self._content.is_far:
            is_tiny = painter.worldTransform().m11() < TINY_SCALE
            from_afar(painter, self._seen_from_afar(boxes), self._content.palette.colour("select"), is_tiny)
        else:
            self._paint_near(painter, boxes, which)
        painter.restore()

    def _wash_from_afar(
        self, painter: QPainter, batches: Sequence[_Batch], colour: QColor, is_tiny: bool
    ) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=not is_tiny)
        painter.setBrush(NO_BRUSH)
        painter.setPen(QPen(washed(colour, PIPE_SHARE), 0 if is_tiny else WASH_PX))
        for batch in batches:
            painter.drawLines(batch.runs)
        painter.setPen(NO_PEN)
        painter.setBrush(washed(colour, PART_SHARE))
        for batch in batches:
            painter.drawRects(batch.boxes)

    def _frame_from_afar(
        self, painter: QPainter, batches: Sequence[_Batch], colour: QColor, is_tiny: bool
    ) -> None:
        # Straight frames need no smoothing.
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        painter.setBrush(NO_BRUSH)
        painter.setPen(QPen(colour, 0 if is_tiny else STROKE_PX))
        for batch in batches:
            painter.drawRects(batch.boxes)

    def _paint_near(self, painter: QPainter, boxes: Iterable[QRectF], which: int) -> None:
        """Paint the marks of each thing that is in view."""
        parts, pipes = self._content.within([box.adjusted(-OUT_PX, -OUT_PX, OUT_PX, OUT_PX) for box in boxes])
        made, marks = self._made[which], self._marks[which]
        for id in sorted((parts | pipes) & self._ids):
            ready = made.get(id)
            if ready is None:
                ready = made[id] = Prepared(marks(id), self._content.palette)
            ready.paint(painter)

    def _seen_from_afar(self, exposed: Iterable[QRectF]) -> list[_Batch]:
        if self._far is None:
            self._far = FarGrid(lambda id: id, self._batch)
            parts, pipes = self._content.far_boxes()
            boxes = {id: parts.get(id) or pipes.get(id) for id in self._ids}
            self._far.fill({id: box for id, box in boxes.items() if box is not None})
        return self._far.within([edges_of(box) for box in exposed])

    def _batch(self, ids: Sequence[str]) -> _Batch:
        layout = self._content.layout
        boxes = [rect_of(layout.boxes[id]) for id in ids if id in layout.boxes]
        lines = [layout.lines[id] for id in ids if id in layout.lines]
        return _Batch(boxes, [QLineF(*a, *b) for line in lines for a, b in pairwise(line)])
