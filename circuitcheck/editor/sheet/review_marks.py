"""Review on the sheet: pins of notes, and what a comparison found, each told by its sign and its line.

Fitted: a plus and a solid line. Removed: a minus and a dashed ghost where it lay. Moved: an arrow, and a
dotted line from where it lay. Changed: a sign of inequality and a double line. Re-piped: two arrows and a
double line. The colour only helps. A pipe or a tee that came or went has its line and no sign of its own:
there are too many of them, and the line tells.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from itertools import pairwise
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF
from PySide6.QtWidgets import QGraphicsScene

from circuitcheck.drawing.value import Component, Control, Drawing
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.marks_item import MarksItem
from circuitcheck.editor.translating import shown_told
from circuitcheck.geometry import Point
from circuitcheck.picture import paths
from circuitcheck.picture.labels import Rect
from circuitcheck.picture.marks import Fill, Mark, Path, Stroke, TextMark
from circuitcheck.picture.pipes import Place, in_px, pipe_path
from circuitcheck.picture.taken import Taken
from circuitcheck.sheet.layout import symbol_box
from circuitcheck.sheet.things import things

if TYPE_CHECKING:
    from circuitcheck.review.comparing import Comparison

BELOW_Z, ABOVE_Z = -9.0, 31.0
OUT_PX, ALONG_PX = 7.0, 13.0
SIGN_PX = 9.0
LEAST_LINE_PX = 40.0
"""On a pipe shorter than this there is no room for a sign: it stands beside it."""
MOST_WAYS = 12
"""Where more parts than this have moved, the drawing was laid out anew, and lines from place to place
would only hide it."""
TEE = "tee"
SIGNS = {"fitted": "+", "removed": "−", "moved": "→", "changed": "≠", "re-piped": "⇄"}
"""What stands in the disc of each; the panel shows the same beside the words."""
ROLES = {"fitted": "cure", "removed": "ink_2", "moved": "advice", "changed": "select", "re-piped": "select"}
TEXTS = {"cure": "cure_text", "ink_2": "paper", "advice": "advice_text", "select": "select_text"}


class ReviewMarks:
    """Two items, one under the pipes and one over all; they show nothing where there is nothing to show."""

    def __init__(self, content: Content) -> None:
        self._content = content
        self._found: Comparison | None = None
        self._old_lines: Mapping[str, tuple[Point, ...]] = {}
        self._below = MarksItem((), content.palette, z=BELOW_Z)
        self._above = MarksItem((), content.palette, z=ABOVE_Z)
        self._taken = Taken()
        self.pins: dict[str, int] = {}
        """How many open notes are pinned to each thing that shows a pin."""
        self.shown: dict[str, str] = {}
        """What is shown of each thing, by id: `fitted`, `removed`, ...; ids of the old drawing for removed."""
        self.adopt(content.scene)

    def adopt(self, scene: QGraphicsScene) -> None:
        """Lie on another scene."""
        for item in (self._below, self._above):
            if item.scene() is not scene:
                scene.addItem(item)

    def compare(self, found: Comparison | None, old_lines: Mapping[str, tuple[Point, ...]]) -> None:
        """Show a comparison from the next refresh on, with the lines of the old drawing's pipes in
        squares; None: none."""
        self._found, self._old_lines = found, old_lines

    def refresh(self, *, passing: bool = False, avoid: Iterable[Rect] = ()) -> None:
        """Follow what has moved, changed or gone; `passing`: the drawing is only a preview."""
        if passing:
            return
        self._taken = Taken(avoid)
        self.pins, self.shown = {}, {}
        below: list[Mark] = []
        above: list[Mark] = []
        if self._found is not None:
            for part in (self._removed, self._moved, self._fitted, self._altered):
                under, over = part(self._found)
                below += under
                above += over
        above += self._pins()
        self._below.show_marks(below, self._content.palette)
        self._above.show_marks(above, self._content.palette)

    # A comparison.

    def _fitted(self, found: Comparison) -> tuple[list[Mark], list[Mark]]:
        return self._told(found.new, ((id, "fitted") for id in found.fitted), ())

    def _altered(self, found: Comparison) -> tuple[list[Mark], list[Mark]]:
        repiped = dict.fromkeys((each.new_id for each in found.repiped), "re-piped")
        changed = dict.fromkeys((each.new_id for each in found.changed if each.new_id), "changed")
        return self._told(found.new, {**changed, **repiped}.items(), (), double=True)

    def _told(
        self,
        drawing: Drawing,
        ids: Iterable[tuple[str, str]],
        dash: tuple[float, ...],
        *,
        double: bool = False,
    ) -> tuple[list[Mark], list[Mark]]:
        """A line round or along each, and a sign on it."""
        below: list[Mark] = []
        above: list[Mark] = []
        for id, what in ids:
            box = self._content.box(id)
            if box.isNull():
                continue
            self.shown[id] = what
            line = self._content.layout.lines.get(id)
            role = ROLES[what]
            if line:
                below += _along(pipe_path(line), role, double=double)
                if double:
                    above += self._sign(what, *self._beside(line))
            else:
                below += _around(box, role, dash, double=double)
                if double or not _is_tee(drawing, id):
                    above += self._sign_at(what, id, box)
        return below, above

    def _removed(self, found: Comparison) -> tuple[list[Mark], list[Mark]]:
        """Ghosts where things lay in the old drawing."""
        below: list[Mark] = []
        above: list[Mark] = []
        old = things(found.old)
        for id in found.removed:
            line = tuple(in_px(self._old_lines.get(id, ())))
            box = _box(old[id]) if id in old else QRectF()
            if line:
                below.append(Stroke(pipe_path(line), "ink_2", 2, (7, 5)))
            elif not box.isNull():
                below += _around(box, "ink_2", (7, 5))
                if not _is_tee(found.old, id):
                    above += self._sign_at("removed", id, box)
                    above.append(_ghost_name(found.old, id, box))
            else:
                continue
            self.shown[id] = "removed"
        for each in found.repiped:
            if line := tuple(in_px(self._old_lines.get(each.old_id, ()))):
                below.append(Stroke(pipe_path(line), "ink_2", 2, (7, 5)))
        return below, above

    def _moved(self, found: Comparison) -> tuple[list[Mark], list[Mark]]:
        """A dotted line from where a part lay to where it lies."""
        below: list[Mark] = []
        above: list[Mark] = []
        old = things(found.old)
        parts = [mine for mine, _ in found.moved if mine in old]
        for mine, its in found.moved:
            box = self._content.box(its)
            if mine not in old or box.isNull():
                continue
            self.shown[its] = "moved"
            was = _box(old[mine])
            if len(parts) <= MOST_WAYS and not was.isNull() and was.center() != box.center():
                start, finish = was.center(), box.center()
                way: Path = (("M", (start.x(), start.y())), ("L", (finish.x(), finish.y())))
                below.append(Stroke(way, "advice", 2, (0.01, 6), "round"))
            below += _around(box, "advice", (0.01, 5))
            above += self._sign_at("moved", its, box)
        return below, above

    def _beside(self, line: tuple[Place, ...]) -> Place:
        """The middle of a pipe, or beside it where it is short."""
        x, y = _middle(line)
        if _length(line) >= LEAST_LINE_PX:
            return x, y
        out = 2 * SIGN_PX + 2
        places = [(x, y + out), (x, y - out), (x + out, y), (x - out, y)]
        return min(places, key=lambda place: self._covered(_disc(*place), frozenset()))

    def _sign_at(self, what: str, id: str, box: QRectF) -> list[Mark]:
        """The sign at the corner of a box that is freest."""
        small = box.width() < 12 and box.height() < 12
        out = OUT_PX + (5 if small else 0)
        places = [
            (box.right() + out, box.top() - out),
            (box.left() - out, box.top() - out),
            (box.right() + out, box.bottom() + out),
            (box.left() - out, box.bottom() + out),
        ]
        own = frozenset({f"part {id}"})
        return self._sign(what, *min(places, key=lambda place: self._covered(_disc(*place), own)))

    def _covered(self, box: Rect, but: frozenset[str]) -> float:
        return self._content.layout.obstacles.overlap(box, but) + 4 * self._taken.overlap(box)

    def _sign(self, what: str, x: float, y: float) -> list[Mark]:
        self._taken.append(_disc(x, y))
        role = ROLES[what]
        return [
            Fill(paths.circle(x, y, SIGN_PX + 2), "paper"),
            Fill(paths.circle(x, y, SIGN_PX), role),
            TextMark(SIGNS[what], x, y + 5, TEXTS[role], 14, 700),
        ]

    # Notes.

    def _pins(self) -> Iterator[Mark]:
        """On each thing with open notes a pin with their number."""
        counts: dict[str, int] = defaultdict(int)
        for note in self._content.drawing.notes:
            if note.is_open:
                for id in dict.fromkeys(note.on):
                    counts[id] += 1
        for id, count in counts.items():
            box = self._content.box(id)
            if box.isNull():
                continue
            self.pins[id] = count
            line = self._content.layout.lines.get(id)
            x, y = _middle(line, 0.25) if line else self._pin_place(id, box)
            self._taken.append((x - 11, y - 24, x + 11, y))
            yield from _pin(str(count), x, y)

    def _pin_place(self, id: str, box: QRectF) -> Place:
        places = [
            (box.right() - 2, box.top() + 2),
            (box.left() + 2, box.top() + 2),
            (box.center().x(), box.top()),
            (box.right() + 10, box.bottom() + 18),
            (box.left() - 10, box.bottom() + 18),
        ]
        own = frozenset({f"part {id}"})
        return min(places, key=lambda at: self._covered((at[0] - 11, at[1] - 24, at[0] + 11, at[1]), own))


def _pin(text: str, x: float, y: float) -> tuple[Mark, ...]:
    """A speech bubble whose tip stands on a place, with the number of notes in it."""
    bubble = paths.polygon([
        (x, y), (x - 4, y - 6), (x - 11, y - 6), (x - 11, y - 23), (x + 11, y - 23), (x + 11, y - 6), (x + 4, y - 6),
    ])  # fmt: skip
    return (
        Stroke(bubble, "paper", 5),
        Fill(bubble, "advice"),
        TextMark(text, x, y - 10, "advice_text", 12, 700),
    )


def _along(path: Path, role: str, *, double: bool) -> list[Mark]:
    """A wide line under a pipe: solid, or two thin ones beside it."""
    if double:
        return [Stroke(path, role, ALONG_PX), Stroke(path, "paper", ALONG_PX - 3.5)]
    return [Stroke(path, role, ALONG_PX, opacity=0.35)]


def _around(box: QRectF, role: str, dash: tuple[float, ...], *, double: bool = False) -> list[Mark]:
    """An outline round a part: of one line in a dash, or two."""
    cap = "round" if dash and dash[0] < 1 else "flat"
    marks: list[Mark] = [Stroke(_frame(box, OUT_PX), role, 2.25, dash, cap)]
    if double:
        marks.append(Stroke(_frame(box, OUT_PX - 4), role, 1.25))
    return marks


def _frame(box: QRectF, out: float) -> Path:
    grown = box.adjusted(-out, -out, out, out)
    return paths.rectangle(grown.x(), grown.y(), grown.width(), grown.height(), 6)


def _ghost_name(old: Drawing, id: str, box: QRectF) -> TextMark:
    return TextMark(
        shown_told(old.name(id)), box.center().x(), box.center().y() + 4, "ink_2", 12, 500, "middle", 3
    )


def _box(thing: Component | Control) -> QRectF:
    box = symbol_box(thing)
    if box is None:
        return QRectF()
    left, top, right, low = box
    return QRectF(left, top, right - left, low - top)


def _disc(x: float, y: float) -> Rect:
    return x - SIGN_PX, y - SIGN_PX, x + SIGN_PX, y + SIGN_PX


def _length(line: tuple[Place, ...]) -> float:
    return sum(abs(b[0] - a[0]) + abs(b[1] - a[1]) for a, b in pairwise(line))


def _middle(line: tuple[Place, ...], share: float = 0.5) -> Place:
    """The middle of the longest run, or so much of the way along it."""
    if len(line) < 2:
        return line[0]
    a, b = max(pairwise(line), key=lambda run: abs(run[1][0] - run[0][0]) + abs(run[1][1] - run[0][1]))
    return a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share


def _is_tee(drawing: Drawing, id: str) -> bool:
    part = drawing.components.get(id)
    return part is not None and part.kind.name == TEE
