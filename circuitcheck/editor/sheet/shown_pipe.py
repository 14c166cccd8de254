"""A pipe on the sheet: its line by service, its letter and size, and the mark of an end that is free."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtGui import QPainter

from circuitcheck.editor.sheet.painting import Palette, Prepared
from circuitcheck.editor.sheet.shown_part import rect_of
from circuitcheck.picture.grades import open_port_mark
from circuitcheck.picture.marks import Mark
from circuitcheck.picture.pipes import HOP_PX, Gap, Place, pipe_marks
from circuitcheck.sheet.layout import runs_of

REACH_PX = HOP_PX + 6
"""So far from its line a pipe paints at most: hops, and the marks of free ends."""


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


class ShownPipe:
    """A PipeView ready to paint; it holds nothing of the drawing but the id."""

    __slots__ = ("_marks", "boxes", "id", "view")

    def __init__(self, id: str, view: PipeView) -> None:
        self.id = id
        self.view = view
        marks: list[Mark] = list(
            pipe_marks(view.line, view.service, hops=view.hops, gap=view.gap, text=view.text)
        )
        for end, is_free in zip((view.line[0], view.line[-1]), view.free, strict=True):
            if is_free:
                marks += open_port_mark(*end, None)
        self._marks = Prepared(marks, view.palette)
        self.boxes = [rect_of(run) for run in runs_of(view.line, REACH_PX)]
        """All it paints, in px of the sheet: run by run, for the box round all of them is mostly paper."""
        if view.gap is not None:
            self.boxes.append(rect_of(view.gap.box))

    def paint(self, painter: QPainter) -> None:
        """Paint the line, its letter and its free ends."""
        self._marks.paint(painter)
