"""Findings as marks on a drawing that is laid out: grades, rings, the word at each shut valve, what is cut off."""

from __future__ import annotations

from collections.abc import Iterable

from circuitcheck.finding import Finding, Grade
from circuitcheck.picture import paths
from circuitcheck.picture.grades import PILL_HIGH, RADIUS, ROLES, grade_mark, pill, pill_size
from circuitcheck.picture.labels import Rect, grown
from circuitcheck.picture.lettering import width
from circuitcheck.picture.marks import Mark, Path, Stroke, TextMark
from circuitcheck.picture.taken import Taken
from circuitcheck.sheet.concern import shut_states
from circuitcheck.sheet.layout import Layout
from circuitcheck.sheet.things import things
from circuitcheck.told import a_word, lower

RING_PX, RING_RADIUS, RING_WIDTH = 8.0, 9.0, 2.5
WORDS_PITCH = 15.0
UNANSWERED_DASH = (5.0, 3.0)

SHUT = a_word("shut")


class Marking:
    """The marks of findings on one layout. What stands already is kept clear of, so one is used for one picture."""

    def __init__(self, layout: Layout) -> None:
        self._layout = layout
        self.taken = Taken()
        """The boxes of marks and pills, which nothing else should stand on."""

    def grades(self, findings: Iterable[Finding]) -> list[Mark]:
        """On each thing judged the mark of the heaviest finding on it."""
        heaviest: dict[str, Grade] = {}
        for finding in findings:
            about = judged(finding)
            if about is None or self._layout.box(about) is None:
                continue
            known = heaviest.get(about)
            if known is None or finding.grade.rank < known.rank:
                heaviest[about] = finding.grade
        marks: list[Mark] = []
        for about, grade in heaviest.items():
            x, y = self._free_corner(about)
            self.taken.append(_disc(x, y))
            marks += grade_mark(grade, x, y)
        return marks

    def ring(self, finding: Finding, round_line: Path, role: str) -> list[Mark]:
        """The ring round the thing judged, with its grade; `round_line` is the ring's path where it is a pipe."""
        about = judged(finding)
        box = None if about is None else self._layout.box(about)
        if about is None or box is None:
            return []
        line = self._layout.lines.get(about)
        if line:
            outline, corner = round_line, line[0]
        else:
            left, top, right, low = grown(box, RING_PX)
            outline = paths.rectangle(left, top, right - left, low - top, RING_RADIUS)
            corner = (left, top)
        dash = UNANSWERED_DASH if finding.grade is Grade.UNANSWERED else ()
        self.taken.append(_disc(*corner))
        ring: list[Mark] = [Stroke(outline, role, RING_WIDTH, dash)] if outline else []
        return [*ring, *grade_mark(finding.grade, *corner)]

    def pills(self, finding: Finding) -> list[Mark]:
        """The word at each valve of the witness: a shut valve is never told by its colour alone."""
        marks: list[Mark] = []
        for part in shut_states(finding):
            box = self._layout.box(part)
            if box is None:
                continue
            x, y = self._pill_place(part, box)
            shut = self._layout.tell(SHUT)
            wide, high = pill_size(shut)
            self.taken.append((x - wide / 2, y - high / 2, x + wide / 2, y + high / 2))
            marks += pill(shut, x, y, "danger", "danger_text")
        return marks

    def words(self, finding: Finding) -> list[Mark]:
        """The words beside what is cut off, where they cover least."""
        found = (self._layout.box(id) for id in (*finding.cut_off_components, *finding.cut_off_pipes))
        boxes = [box for box in found if box is not None]
        known = things(self._layout.drawing)
        if not boxes or not finding.components or finding.components[0] not in known:
            return []
        said = (a_word("cut off from the"), lower(known[finding.components[0]].kind.title))
        lines = [self._layout.tell(line) for line in said]
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

    def _free_corner(self, id: str) -> tuple[float, float]:
        """Where a mark stands: the first corner of the box that meets nothing; beside a pipe's letter."""
        gap, box = self._layout.gaps.get(id), self._layout.box(id)
        if gap is not None:
            left, top, right, low = gap.box
            y = (top + low) / 2
            places = [(left - RADIUS - 3, y), (right + RADIUS + 3, y)]
        else:
            left, top, right, low = grown(box or (0, 0, 0, 0), 4.0)
            places = [(left, top), (right, top), (right, low), (left, low)]
        own = frozenset({f"part {id}", f"gap {id}"})
        return min(places, key=lambda place: self._covered(_disc(*place), own))

    def _covered(self, box: Rect, but: frozenset[str] = frozenset()) -> float:
        """How much of a box lies on something, marks already placed included."""
        return self._layout.obstacles.overlap(box, but) + self.taken.overlap(box)

    def _pill_place(self, part: str, box: Rect) -> tuple[float, float]:
        """Below the valve, else below its label, else beside or above, whichever covers least."""
        wide, high = pill_size(self._layout.tell(SHUT))
        left, top, right, low = box
        x, y = (left + right) / 2, (top + low) / 2
        below = low + 7 + high / 2
        places = [(x, below)]
        label = self._layout.labels.get(part)
        if label is not None:
            label_left, _, label_right, label_low = label.box
            places.append(((label_left + label_right) / 2, label_low + 3 + high / 2))
        places += [
            (right + 7 + wide / 2, y),
            (left - 7 - wide / 2, y),
            (x, top - 7 - high / 2),
            (x, below + PILL_HIGH),
        ]
        own = frozenset({f"part {part}"})
        return min(
            places,
            key=lambda place: self._covered(
                (place[0] - wide / 2, place[1] - high / 2, place[0] + wide / 2, place[1] + high / 2), own
            ),
        )


def judged(finding: Finding) -> str | None:
    """The part judged, which a finding names first; else its first pipe."""
    return next(iter((*finding.components[:1], *finding.pipes[:1])), None)


def ring_role(finding: Finding, *, is_dark: bool = False) -> str:
    """The colour role of a finding's ring: amber alone is too pale for a line on light paper."""
    if finding.grade is Grade.FAULT:
        return "fault" if is_dark else "fault_text"
    return ROLES[finding.grade]


def _disc(x: float, y: float) -> Rect:
    return x - RADIUS, y - RADIUS, x + RADIUS, y + RADIUS


def _beside(box: Rect, wide: float, high: float) -> Iterable[tuple[float, float]]:
    """Places round a box, clear of the band: the words' middle and their top."""
    clear = 14 + 8
    left, top, right, low = box
    for share in (0.5, 0.25, 0.75):
        x, y = left + share * (right - left), top + share * (low - top)
        yield x, low + clear
        yield right + clear + wide / 2, y - high / 2
        yield left - clear - wide / 2, y - high / 2
        yield x, top - clear - high
