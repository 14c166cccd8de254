"""Marks of practice on the sheet: a ring round each thing marked, and a word at it; never told by colour alone."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtCore import QRectF
from PySide6.QtWidgets import QGraphicsScene

from circuitcheck.editor.sheet.band import band
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.marks_item import MarksItem
from circuitcheck.lessons.scoring import Outcome
from circuitcheck.picture import paths
from circuitcheck.picture.grades import pill, pill_size
from circuitcheck.picture.labels import Rect, overlap
from circuitcheck.picture.marks import Mark, Path, Stroke

RING_PX, RADIUS_PX, WIDTH_PX = 8.0, 9.0, 2.5
CLEAR_PX = 5.0
OVER_Z = 35.0


@dataclass(frozen=True, slots=True)
class Look:
    """A ring's colour and dash, and the colours of its word."""

    role: str
    text_role: str
    dash: tuple[float, ...] = ()


MARKED = Look("select", "select_text")
FALSE = Look("ink_2", "paper", (2, 4))
OUTCOMES = {
    Outcome.FOUND: Look("cure", "cure_text"),
    Outcome.WRONG_REASON: Look("advice", "advice_text", (9, 4)),
    Outcome.MISSED: Look("danger", "danger_text", (5, 3)),
}


@dataclass(frozen=True, slots=True)
class Ringed:
    """One thing with a ring, and the word at it."""

    id: str
    text: str
    look: Look


class PracticeMarks:
    """The rings and words that lie over the drawing."""

    def __init__(self, content: Content) -> None:
        self._content = content
        self._item = MarksItem((), content.palette, z=OVER_Z)
        self.shown: tuple[Ringed, ...] = ()
        self.adopt(content.scene)

    def adopt(self, scene: QGraphicsScene) -> None:
        """Lie on another scene."""
        if self._item.scene() is not scene:
            scene.addItem(self._item)

    def show(self, ringed: Iterable[Ringed]) -> None:
        """Show these and no others."""
        self.shown = tuple(ringed)
        self.refresh()

    def refresh(self) -> None:
        """Follow what has moved or changed its colour."""
        marks: list[Mark] = []
        taken: list[Rect] = []
        for each in self.shown:
            box = self._content.box(each.id)
            if box.isNull():
                continue
            outline = self._outline(each.id, box)
            marks.append(Stroke(outline, each.look.role, WIDTH_PX, each.look.dash))
            x, y = self._word_place(each, box, taken)
            wide, high = pill_size(each.text)
            taken.append((x - wide / 2, y - high / 2, x + wide / 2, y + high / 2))
            marks += pill(each.text, x, y, each.look.role, each.look.text_role)
        self._item.show_marks(marks, self._content.palette)

    def _outline(self, id: str, box: QRectF) -> Path:
        line = self._content.layout.lines.get(id)
        if line:
            return band([line], [])
        grown = box.adjusted(-RING_PX, -RING_PX, RING_PX, RING_PX)
        return paths.rectangle(grown.x(), grown.y(), grown.width(), grown.height(), RADIUS_PX)

    def _word_place(self, each: Ringed, box: QRectF, taken: Sequence[Rect]) -> tuple[float, float]:
        """Beside the thing where it covers least."""
        wide, high = pill_size(each.text)
        line = self._content.layout.lines.get(each.id)
        if line:
            boxes = [
                QRectF(min(a[0], b[0]), min(a[1], b[1]), abs(a[0] - b[0]), abs(a[1] - b[1]))
                for a, b in pairwise(line)
            ]
        else:
            boxes = [box]
        out = RING_PX + CLEAR_PX + 6
        places: list[tuple[float, float]] = []
        for where in boxes:
            middle = where.center()
            places += [
                (middle.x(), where.top() - out - high / 2),
                (middle.x(), where.bottom() + out + high / 2),
                (where.right() + out + wide / 2, middle.y()),
                (where.left() - out - wide / 2, middle.y()),
            ]

        def covered(place: tuple[float, float]) -> float:
            x, y = place
            pill_box = (x - wide / 2, y - high / 2, x + wide / 2, y + high / 2)
            return self._content.layout.obstacles.overlap(pill_box) + sum(
                4 * overlap(pill_box, other) for other in taken
            )

        return min(places, key=covered)
