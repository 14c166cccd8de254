"""Findings on the sheet: grade marks, and for a chosen one its ring, its shut valves and what is cut off."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import QRectF
from PySide6.QtWidgets import QGraphicsScene

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet.band import ALONG_PX, ROUND_PX, band
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.marks_item import MarksItem
from circuitcheck.finding import Finding, Grade
from circuitcheck.picture import paths
from circuitcheck.picture.grades import PILL_HIGH, RADIUS, ROLES, grade_mark, pill, pill_size
from circuitcheck.picture.labels import Rect, grown, overlap
from circuitcheck.picture.lettering import width
from circuitcheck.picture.marks import Fill, Hatch, Mark, Stroke, TextMark
from circuitcheck.sheet.concern import concerned, shut_states
from circuitcheck.sheet.layout import runs_of, things

RING_PX, RING_RADIUS, RING_WIDTH = 8.0, 9.0, 2.5
BAND_Z = -10.0
OVER_Z = 30.0
WORDS_PITCH = 15.0


class FindingMarks:
    """The marks of the findings of a drawing, and of the one that is chosen."""

    def __init__(self, content: Content) -> None:
        self._content = content
        self._findings: tuple[Finding, ...] = ()
        self._chosen: Finding | None = None
        self._below = MarksItem((), content.palette, z=BAND_Z)
        self._above = MarksItem((), content.palette, z=OVER_Z)
        self._taken: list[Rect] = []
        self._focused_on: Drawing | None = None
        self.adopt(content.scene)

    @property
    def chosen(self) -> Finding | None:
        """The finding that is chosen."""
        return self._chosen

    @property
    def taken(self) -> tuple[Rect, ...]:
        """The boxes of marks and pills, which nothing else should stand on."""
        return tuple(self._taken)

    def adopt(self, scene: QGraphicsScene) -> None:
        """Lie on another scene."""
        for item in (self._below, self._above):
            if item.scene() is not scene:
                scene.addItem(item)

    def show_all(self, findings: Sequence[Finding]) -> None:
        """Mark what these findings judge, while none is chosen."""
        self._findings = tuple(findings)
        self.refresh()

    def choose(self, finding: Finding | None) -> None:
        """Show one finding and let the rest of the drawing turn quiet; None: back to all."""
        self._chosen = finding
        self._focus()
        self.refresh()

    def refresh(self, *, passing: bool = False) -> None:
        """Follow what has moved, changed or gone; `passing`: the drawing is only a preview."""
        if not passing and self._focused_on is not self._content.drawing and self._chosen is not None:
            self._focus()
        self._taken = []
        if self._chosen is None:
            below: list[Mark] = []
            above = self._grade_marks(self._findings)
        else:
            below = self._cut_off(self._chosen)
            above = [
                *self._ring(self._chosen),
                *self._pills(self._chosen),
                *self._words(self._chosen),
            ]
        self._below.show_marks(below, self._content.palette)
        self._above.show_marks(above, self._content.palette)

    def _focus(self) -> None:
        """Let the chosen finding's circuit keep its colour, and its ring and band keep clear of labels."""
        finding, self._focused_on = self._chosen, self._content.drawing
        if finding is None:
            self._content.focus(None, {}, {}, ())
            return
        around = dict.fromkeys(finding.cut_off_components, ROUND_PX + 3)
        boxes = [
            grown(run, ALONG_PX / 2 + 1)
            for id in finding.cut_off_pipes
            for run in runs_of(self._content.layout.lines.get(id, ()), 0)
        ]
        judged = _judged(finding)
        if judged is not None:
            around[judged] = RING_PX + 3
        boxes += [grown(_rect(self._content.box(id)), out) for id, out in around.items()]
        shut = shut_states(finding)
        self._content.focus(concerned(self._content.drawing, finding), shut, around, boxes)

    def _grade_marks(self, findings: Iterable[Finding]) -> list[Mark]:
        """On each thing judged the mark of the heaviest finding on it."""
        heaviest: dict[str, Grade] = {}
        for finding in findings:
            judged = _judged(finding)
            if judged is None or self._content.box(judged).isNull():
                continue
            known = heaviest.get(judged)
            if known is None or finding.grade.rank < known.rank:
                heaviest[judged] = finding.grade
        marks: list[Mark] = []
        for judged, grade in heaviest.items():
            x, y = self._free_corner(judged)
            self._taken.append((x - RADIUS, y - RADIUS, x + RADIUS, y + RADIUS))
            marks += grade_mark(grade, x, y)
        return marks

    def _free_corner(self, id: str) -> tuple[float, float]:
        """Where a mark stands: the first corner of the box that meets nothing; beside a pipe's letter."""
        gap = self._content.layout.gaps.get(id)
        if gap is not None:
            left, top, right, low = gap.box
            y = (top + low) / 2
            places = [(left - RADIUS - 3, y), (right + RADIUS + 3, y)]
        else:
            box = self._content.box(id)
            out = 4.0
            places = [
                (box.left() - out, box.top() - out),
                (box.right() + out, box.top() - out),
                (box.right() + out, box.bottom() + out),
                (box.left() - out, box.bottom() + out),
            ]
        own = frozenset({f"part {id}", f"gap {id}"})
        return min(places, key=lambda place: self._covered(_disc(*place), own))

    def _covered(self, box: Rect, but: frozenset[str] = frozenset()) -> float:
        """How much of a box lies on something, marks already placed included."""
        return self._content.layout.obstacles.overlap(box, but) + sum(
            overlap(box, taken) for taken in self._taken
        )

    def _ring(self, finding: Finding) -> list[Mark]:
        judged = _judged(finding)
        box = QRectF() if judged is None else self._content.box(judged)
        if judged is None or box.isNull():
            return []
        role = "fault_text" if finding.grade is Grade.FAULT else ROLES[finding.grade]
        if finding.grade is Grade.FAULT and self._content.theme.is_dark:
            role = "fault"
        out = box.adjusted(-RING_PX, -RING_PX, RING_PX, RING_PX)
        line = self._content.layout.lines.get(judged)
        if line:
            outline = band([line], [])
            corner = (line[0][0], line[0][1])
        else:
            outline = paths.rectangle(out.x(), out.y(), out.width(), out.height(), RING_RADIUS)
            corner = (out.left(), out.top())
        dash = (5.0, 3.0) if finding.grade is Grade.UNANSWERED else ()
        self._taken.append(_disc(*corner))
        return [Stroke(outline, role, RING_WIDTH, dash), *grade_mark(finding.grade, *corner)]

    def _pills(self, finding: Finding) -> list[Mark]:
        """The word at each valve of the witness: a shut valve is never told by its colour alone."""
        marks: list[Mark] = []
        for part in shut_states(finding):
            box = self._content.box(part)
            if box.isNull():
                continue
            x, y = self._pill_place(part, box)
            wide, high = pill_size("shut")
            self._taken.append((x - wide / 2, y - high / 2, x + wide / 2, y + high / 2))
            marks += pill("shut", x, y, "danger", "danger_text")
        return marks

    def _pill_place(self, part: str, box: QRectF) -> tuple[float, float]:
        """Below the valve, else below its label, else beside or above, whichever covers least."""
        wide, high = pill_size("shut")
        x, y = box.center().x(), box.center().y()
        below = box.bottom() + 7 + high / 2
        places = [(x, below)]
        label = self._content.layout.labels.get(part)
        if label is not None:
            left, _, right, low = label.box
            places.append(((left + right) / 2, low + 3 + high / 2))
        places += [
            (box.right() + 7 + wide / 2, y),
            (box.left() - 7 - wide / 2, y),
            (x, box.top() - 7 - high / 2),
            (x, below + PILL_HIGH),
        ]
        own = frozenset({f"part {part}"})
        return min(
            places,
            key=lambda place: self._covered(
                (place[0] - wide / 2, place[1] - high / 2, place[0] + wide / 2, place[1] + high / 2), own
            ),
        )

    def _cut_off(self, finding: Finding) -> list[Mark]:
        lines = [self._content.layout.lines.get(id, ()) for id in finding.cut_off_pipes]
        lines = [line for line in lines if line]
        boxes = [self._content.box(id) for id in finding.cut_off_components]
        boxes = [box for box in boxes if not box.isNull()]
        if not lines and not boxes:
            return []
        area = band(lines, boxes)
        marks: list[Mark] = [Hatch(area, "danger"), Stroke(area, "danger", 1.5, (6, 4))]
        tint: list[Mark] = [] if self._content.theme.high_contrast else [Fill(area, "danger_tint")]
        return tint + marks

    def _words(self, finding: Finding) -> list[Mark]:
        """The words beside what is cut off, where they cover least."""
        boxes = [self._content.box(id) for id in (*finding.cut_off_components, *finding.cut_off_pipes)]
        boxes = [box for box in boxes if not box.isNull()]
        known = things(self._content.drawing)
        if not boxes or not finding.components or finding.components[0] not in known:
            return []
        lines = ("cut off from the", known[finding.components[0]].kind.title.lower())
        wide, high = max(width(line, 13, 600) for line in lines), 2 * WORDS_PITCH
        best: tuple[float, float, float] | None = None
        for box in boxes:
            for x, y in _beside(box, wide, high):
                covered = self._covered(grown((x - wide / 2, y, x + wide / 2, y + high), 4))
                if best is None or covered < best[0]:
                    best = (covered, x, y)
        if best is None:
            return []
        _, x, y = best
        return [
            TextMark(line, x, y + 11 + index * WORDS_PITCH, "danger", 13, 600, "middle", 4)
            for index, line in enumerate(lines)
        ]


def _judged(finding: Finding) -> str | None:
    """The part judged, which a finding names first; else its first pipe."""
    return next(iter((*finding.components[:1], *finding.pipes[:1])), None)


def _rect(box: QRectF) -> Rect:
    return box.left(), box.top(), box.right(), box.bottom()


def _disc(x: float, y: float) -> Rect:
    return x - RADIUS, y - RADIUS, x + RADIUS, y + RADIUS


def _beside(box: QRectF, wide: float, high: float) -> Iterable[tuple[float, float]]:
    """Places round a box, clear of the band: the words' middle and their top."""
    clear = 14 + 8
    for share in (0.5, 0.25, 0.75):
        x, y = box.left() + share * box.width(), box.top() + share * box.height()
        yield x, box.bottom() + clear
        yield box.right() + clear + wide / 2, y - high / 2
        yield box.left() - clear - wide / 2, y - high / 2
        yield x, box.top() - clear - high
