"""What shows the user's own doing over the drawing: selection, hover, focus ring, caret, rubber band."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtWidgets import QGraphicsScene

from circuitcheck.drawing.value import Component
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.many_selected import (
    MANY,
    NOTHING,
    PART_SHARE,
    STROKE_PX,
    WASH_PX,
    ManySelected,
)
from circuitcheck.editor.sheet.marks_item import MARKS_Z, MarksItem
from circuitcheck.geometry import Point
from circuitcheck.picture import paths
from circuitcheck.picture.grades import port_ring
from circuitcheck.picture.marks import SQUARE_PX, Fill, Mark, Path, Stroke
from circuitcheck.picture.pipes import DOT_PX, pipe_path

FRAME_PX, FRAME_RADIUS = 7.0, 8.0
FOCUS_PX = 12.0
UNDER_Z = 5.0


class Overlay:
    """The marks over and under the items, made anew when asked; they belong to the scene shown."""

    def __init__(self, content: Content) -> None:
        self._content = content
        self._selected: frozenset[str] = frozenset()
        self._hovered: str | None = None
        self._focused: str | None = None
        self._caret: Point | None = None
        self._band: QRectF | None = None
        self._joints: tuple[Point, ...] = ()
        self._under = MarksItem((), content.palette, z=UNDER_Z)
        self._over = MarksItem((), content.palette, z=MARKS_Z + 5)
        self._passing = MarksItem((), content.palette, z=MARKS_Z + 6)
        self._many = ManySelected(
            content, lambda id: self._wash(id, PART_SHARE), self._frame, UNDER_Z, MARKS_Z + 5
        )
        self.adopt(content.scene)

    def adopt(self, scene: QGraphicsScene) -> None:
        """Lie on another scene."""
        for item in (self._under, self._over, self._passing):
            if item.scene() is not scene:
                scene.addItem(item)
        self._many.adopt(scene)

    def show_selection(self, ids: frozenset[str]) -> None:
        """Frame what is selected."""
        self._selected = ids
        self.refresh()

    def show_selection_off(self, off: QPointF) -> None:
        """Show the frames of a large selection so far off what is selected, in px: it is on the move there."""
        self._many.show_off(off)

    def show_hover(self, id: str | None) -> None:
        """Wash the part or pipe under the pointer, and show a part's ports."""
        if id != self._hovered:
            self._hovered = id
            self._refresh_marks()

    def show_focus(self, id: str | None) -> None:
        """Ring what the keyboard is on."""
        if id != self._focused:
            self._focused = id
            self._refresh_marks()

    def show_caret(self, at: Point | None) -> None:
        """Show the cross that the arrow keys move."""
        if at != self._caret:
            self._caret = at
            self._refresh_passing()

    def show_band(self, box: QRectF | None) -> None:
        """Show the rubber band."""
        self._band = box
        self._refresh_passing()

    def show_joints(self, places: Iterable[Point]) -> None:
        """Show where something about to be placed joins."""
        self._joints = tuple(places)
        self._refresh_passing()

    def refresh(self) -> None:
        """Follow what has moved, changed or gone."""
        self._many.show(self._selected if len(self._selected) > MANY else NOTHING)
        self._refresh_marks()

    def _refresh_marks(self) -> None:
        under: list[Mark] = []
        over: list[Mark] = []
        for id in sorted(self._selected) if len(self._selected) <= MANY else ():
            under += self._wash(id, PART_SHARE)
            over += self._frame(id)
        if self._hovered is not None and self._hovered not in self._selected:
            under += self._wash(self._hovered, 0.10)
        if self._hovered is not None:
            over += self._ports(self._hovered)
        if self._focused is not None:
            over += self._ring(self._focused)
        self._under.show_marks(under, self._content.palette)
        self._over.show_marks(over, self._content.palette)
        self._refresh_passing()

    def _refresh_passing(self) -> None:
        marks: list[Mark] = []
        for x, y in self._joints:
            marks.append(Fill(paths.circle(x * SQUARE_PX, y * SQUARE_PX, DOT_PX), "select"))
        if self._caret is not None:
            marks += _cross(self._caret)
        if self._band is not None:
            box = paths.rectangle(self._band.x(), self._band.y(), self._band.width(), self._band.height())
            marks += [Fill(box, "select", 0.08), Stroke(box, "select", 1.0, (4, 3))]
        self._passing.show_marks(marks, self._content.palette)

    def _wash(self, id: str, share: float) -> list[Mark]:
        line = self._content.layout.lines.get(id)
        if line:
            return [Stroke(pipe_path(line), "select", WASH_PX, (), "round", opacity=2 * share)]
        box = self._box(id, FRAME_PX)
        return [] if box is None else [Fill(box, "select", share)]

    def _frame(self, id: str) -> list[Mark]:
        box = None if id in self._content.layout.lines else self._box(id, FRAME_PX)
        return [] if box is None else [Stroke(box, "select", STROKE_PX)]

    def _ring(self, id: str) -> list[Mark]:
        box = self._box(id, FOCUS_PX)
        return [] if box is None else [Stroke(box, "select", 2, (4, 3))]

    def _box(self, id: str, out: float) -> Path | None:
        box = self._content.box(id)
        if box.isNull():
            return None
        box = box.united(_middle(box, 8)).adjusted(-out, -out, out, out)
        radius = FRAME_RADIUS + out - FRAME_PX
        return paths.rectangle(box.x(), box.y(), box.width(), box.height(), radius)

    def _ports(self, id: str) -> list[Mark]:
        part = self._content.layout.things.get(id)
        if not isinstance(part, Component):
            return []
        marks: list[Mark] = []
        for port in part.kind.ports:
            at = part.port_at(port.name)
            if at is not None:
                marks += port_ring(at.x * SQUARE_PX, at.y * SQUARE_PX)
        return marks


def _middle(box: QRectF, half: float) -> QRectF:
    """A box about another's middle, so that a dot is framed like anything else."""
    return QRectF(box.center() - QPointF(half, half), box.center() + QPointF(half, half))


def _cross(at: Point) -> list[Mark]:
    """The caret: a cross with an open middle, so that what it is on can be seen."""
    x, y = at.x * SQUARE_PX, at.y * SQUARE_PX
    arms: Path = ()
    for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):
        arms = (*arms, ("M", (x + 3 * dx, y + 3 * dy)), ("L", (x + 11 * dx, y + 11 * dy)))
    return [Stroke(arms, "paper", 5, cap="round"), Stroke(arms, "select", 2, cap="round")]
