"""Labels: where the name and the figure of a part stand, and the marks of them. Places in px."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from math import floor

from circuitcheck.picture.lettering import fitted, width, wrapped
from circuitcheck.picture.marks import Mark, TextMark

NAME_SIZE, NAME_WEIGHT = 13.0, 600
FIGURE_SIZE, FIGURE_WEIGHT = 12.0, 400
PITCH = 15.0
ASCENT, DESCENT = 11.0, 4.0
CLEAR = 8.0
"""The clear space between a symbol and its label."""
LABEL_EDGE = 2.0
"""What a label keeps clear of anything else."""
HALO = 4.0
MOST_WIDE = 190.0
CELL_PX = 64.0
MOST_CELLS = 4096
"""A box in more cells than this is in none but in one of its own, which is looked into for every box."""
_ANYWHERE = (1 << 40, 0)
_NOBODY: frozenset[str] = frozenset()

Rect = tuple[float, float, float, float]
"""Left, top, right, bottom, in px."""


@dataclass(frozen=True, slots=True)
class Label:
    """A part's lines, the name first, and where they stand: the anchor of each line and the box of all.

    `heads`: how many of the lines are the name's.
    """

    lines: tuple[str, ...]
    box: Rect
    anchor: str
    is_inside: bool = False
    heads: int = 1

    @property
    def x(self) -> float:
        """Where the lines are anchored."""
        left, _, right, _ = self.box
        return {"start": left, "middle": (left + right) / 2, "end": right}[self.anchor]


class Obstacles:
    """The boxes a label must not meet, by owner, in a grid so that one owner changes alone."""

    def __init__(self) -> None:
        self._boxes: dict[str, tuple[Rect, ...]] = {}
        self._cells: dict[tuple[int, int], set[str]] = defaultdict(set)

    def put(self, owner: str, boxes: Iterable[Rect]) -> None:
        """Set the boxes of one owner; none forgets it."""
        kept = tuple(boxes)
        if kept == self._boxes.get(owner, ()):
            return
        for box in self._boxes.pop(owner, ()):
            for cell in _cells(box):
                self._cells[cell].discard(owner)
        if kept:
            self._boxes[owner] = kept
        for box in kept:
            for cell in _cells(box):
                self._cells[cell].add(owner)

    def boxes(self, owner: str) -> tuple[Rect, ...]:
        """The boxes of one owner."""
        return self._boxes.get(owner, ())

    def met(self, box: Rect, but: frozenset[str] = frozenset()) -> set[str]:
        """The owners whose boxes meet this one, some left out of account."""
        near: set[str] = set(self._cells.get(_ANYWHERE, ()))
        for cell in _cells(box):
            near |= self._boxes.keys() if cell == _ANYWHERE else self._cells.get(cell, set())
        return {owner for owner in near - but if any(overlap(box, other) > 0 for other in self._boxes[owner])}

    def near(self, boxes: Iterable[Rect]) -> set[str]:
        """The owners whose boxes may meet any of these: all in the cells that these lie in."""
        found: set[str] = set(self._cells.get(_ANYWHERE, ()))
        for box in boxes:
            left, top, right, low = (floor(edge / CELL_PX) for edge in box)
            if (right - left + 1) * (low - top + 1) > len(self._cells):
                for (column, row), owners in self._cells.items():
                    if left <= column <= right and top <= row <= low:
                        found |= owners
                continue
            for column in range(left, right + 1):
                for row in range(top, low + 1):
                    found |= self._cells.get((column, row), _NOBODY)
        return found

    def overlap(self, box: Rect, but: frozenset[str] = frozenset()) -> float:
        """How much of this box is covered by others, in square px."""
        return sum(overlap(box, other) for owner in self.met(box, but) for other in self._boxes[owner])


def overlap(a: Rect, b: Rect) -> float:
    """The area two boxes share, in square px; edges that touch share nothing."""
    wide = min(a[2], b[2]) - max(a[0], b[0])
    high = min(a[3], b[3]) - max(a[1], b[1])
    return wide * high if wide > 0 and high > 0 else 0.0


def grown(box: Rect, by: float) -> Rect:
    """A box with its edges moved outwards."""
    return box[0] - by, box[1] - by, box[2] + by, box[3] + by


def size_of(lines: Sequence[str], heads: int = 1) -> tuple[float, float]:
    """How wide and high a label is whose first lines are the name's."""
    widths = [width(line, *_face(index, heads)) for index, line in enumerate(lines)]
    return max(widths, default=0.0), ASCENT + PITCH * (len(lines) - 1) + DESCENT


def placed(
    lines: Sequence[str], around: Rect, obstacles: Obstacles, but: frozenset[str] = frozenset()
) -> Label:
    """The label in the first slot round a box that meets nothing, else in the one that meets least."""
    kept = tuple(fitted(line, *_face(index), MOST_WIDE) for index, line in enumerate(lines))
    best: tuple[float, Label] | None = None
    for label in _slots(kept, around):
        covered = obstacles.overlap(grown(label.box, LABEL_EDGE), but)
        if covered == 0:
            return label
        if best is None or covered < best[0]:
            best = (covered, label)
    if best is None:
        raise ValueError("a label needs a line")
    return best[1]


def inside(lines: Sequence[str], x: float, top: float, most_wide: float) -> Label:
    """The label centred on `x`, its first line at the top of what it stands in, broken to be no wider."""
    name = wrapped(lines[0], NAME_SIZE, NAME_WEIGHT, most_wide)
    figures = [part for line in lines[1:] for part in wrapped(line, FIGURE_SIZE, FIGURE_WEIGHT, most_wide)]
    wide, high = size_of([*name, *figures], len(name))
    box = (x - wide / 2, top, x + wide / 2, top + high)
    return Label((*name, *figures), box, "middle", True, len(name))


def marks_of(label: Label) -> tuple[Mark, ...]:
    """The label's lines: the name semibold, then the figures in the second ink."""
    return tuple(
        TextMark(
            line,
            label.x,
            label.box[1] + ASCENT + PITCH * index,
            "ink" if index < label.heads else "ink_2",
            *_face(index, label.heads),
            label.anchor,
            0 if label.is_inside else HALO,
        )
        for index, line in enumerate(label.lines)
    )


def _slots(lines: tuple[str, ...], around: Rect) -> Iterator[Label]:
    """Below, above, right, left, then below and above along an edge, then the corners, then a little off."""
    wide, high = size_of(lines)
    left, top, right, low = around
    x, y = (left + right) / 2, (top + low) / 2
    below, above = low + CLEAR, top - CLEAR + 1 - high
    beyond, before = right + CLEAR, left - CLEAR - wide
    yield Label(lines, (x - wide / 2, below, x + wide / 2, below + high), "middle")
    yield Label(lines, (x - wide / 2, above, x + wide / 2, above + high), "middle")
    yield Label(lines, (beyond, y - high / 2, beyond + wide, y + high / 2), "start")
    yield Label(lines, (before, y - high / 2, before + wide, y + high / 2), "end")
    for edge_y in (below, above):
        yield Label(lines, (left, edge_y, left + wide, edge_y + high), "start")
        yield Label(lines, (right - wide, edge_y, right, edge_y + high), "end")
    for corner_y in (low + 2, top - 2 - high):
        yield Label(lines, (right + 2, corner_y, right + 2 + wide, corner_y + high), "start")
        yield Label(lines, (left - 2 - wide, corner_y, left - 2, corner_y + high), "end")
    for off in (low - high, top):
        yield Label(lines, (beyond, off, beyond + wide, off + high), "start")
        yield Label(lines, (before, off, before + wide, off + high), "end")
    for off in (1.5 * CELL_PX / 4, 3 * CELL_PX / 4):
        yield Label(lines, (x - wide / 2, below + off, x + wide / 2, below + off + high), "middle")
        yield Label(lines, (x - wide / 2, above - off, x + wide / 2, above - off + high), "middle")
        yield Label(lines, (beyond + off, y - high / 2, beyond + off + wide, y + high / 2), "start")


def _face(index: int, heads: int = 1) -> tuple[float, int]:
    return (NAME_SIZE, NAME_WEIGHT) if index < heads else (FIGURE_SIZE, FIGURE_WEIGHT)


def _cells(box: Rect) -> Iterator[tuple[int, int]]:
    left, top, right, low = (floor(edge / CELL_PX) for edge in box)
    if (right - left + 1) * (low - top + 1) > MOST_CELLS:
        yield _ANYWHERE
        return
    for column in range(left, right + 1):
        for row in range(top, low + 1):
            yield column, row
