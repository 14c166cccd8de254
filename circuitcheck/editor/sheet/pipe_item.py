"""A pipe on the sheet: its line by service, its letter and size, and the mark of an end that is free."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from circuitcheck.editor.sheet.painting import Palette, Prepared
from circuitcheck.picture.grades import open_port_mark
from circuitcheck.picture.marks import Mark
from circuitcheck.picture.pipes import HOP_PX, Gap, Place, pipe_marks


@dataclass(frozen=True)
class PipeView:
    """What is shown of a pipe: its line in px, and which of its ends are free."""

    line: tuple[Place, ...]
    service: str
    palette: Palette
    hops: tuple[Place, ...] = ()
    gap: Gap | None = None
    text: str = ""
    free: tuple[bool, bool] = (False, False)


class PipeItem(QGraphicsItem):
    """Shows a PipeView; it holds nothing of the drawing but the id. It lies at height 0, as an item does that
    is told no other: to tell thousands takes its time."""

    def __init__(self, id: str, view: PipeView) -> None:
        super().__init__()
        self.id = id
        self._view = view
        self._bounds = QRectF()
        self._prepared = Prepared((), view.palette)
        self.show_view(view)

    @property
    def view(self) -> PipeView:
        """What is shown."""
        return self._view

    def show_view(self, view: PipeView) -> None:
        """Show something else of the pipe."""
        self.prepareGeometryChange()
        self._view = view
        marks: list[Mark] = list(
            pipe_marks(view.line, view.service, hops=view.hops, gap=view.gap, text=view.text)
        )
        for end, is_free in zip((view.line[0], view.line[-1]), view.free, strict=True):
            if is_free:
                marks += open_port_mark(*end, None)
        self._prepared = Prepared(marks, view.palette)
        xs, ys = [x for x, _ in view.line], [y for _, y in view.line]
        reach = HOP_PX + 6
        bounds = QRectF(min(xs), min(ys), max(xs) - min(xs), max(ys) - min(ys))
        bounds = bounds.adjusted(-reach, -reach, reach, reach)
        if view.gap is not None:
            left, top, right, low = view.gap.box
            bounds = bounds.united(QRectF(left, top, right - left, low - top))
        self._bounds = bounds
        self.update()

    def boundingRect(self) -> QRectF:
        """All it paints, in px of the sheet."""
        return self._bounds

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Paint the line, its letter and its free ends."""
        self._prepared.paint(painter)
