"""Where things lie as seen from far off: in squares of a coarse grid, each of which is made ready as a whole."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import Generic, TypeVar

from circuitcheck.picture.labels import Rect, grown

CELL_PX = 2048.0
"""The side of a square of the grid. Of smaller ones there are too many at the least zoom; of larger ones too much
is made ready anew for one thing that changed, and painted in vain beyond the edges of the view."""

REACH_PX = 32.0
"""So far out of its box a thing paints at most: two px of the screen at the least zoom."""

Thing = TypeVar("Thing")
Batch = TypeVar("Batch")
Square = tuple[int, int]


class _Cell(Generic[Thing, Batch]):
    """What lies about one square: each thing by its middle, so that it is painted once."""

    __slots__ = ("batch", "boxes", "reach", "things")

    def __init__(self) -> None:
        self.boxes: dict[str, Rect] = {}
        self.things: dict[str, Thing] = {}
        self.reach: Rect | None = None
        self.batch: Batch | None = None


class FarGrid(Generic[Thing, Batch]):
    """Things by their boxes. A thing is read when its square is first in view, and again when it changed;
    `make` then makes the batch of a square from its things."""

    def __init__(self, read: Callable[[str], Thing], make: Callable[[Sequence[Thing]], Batch]) -> None:
        self._read = read
        self._make = make
        self._squares: dict[str, Square] = {}
        self._cells: dict[Square, _Cell[Thing, Batch]] = {}

    def put(self, id: str, box: Rect | None) -> list[Rect]:
        """A thing lies there now, or looks otherwise; None: nowhere. Returns what is to be painted anew."""
        boxes = [] if box is None else [box]
        square = self._squares.pop(id, None)
        if square is not None:
            cell = self._changing(square)
            boxes.append(cell.boxes.pop(id))
            cell.things.pop(id, None)
            if not cell.boxes:
                del self._cells[square]
        if box is not None:
            square = self._squares[id] = _square(box)
            self._changing(square).boxes[id] = box
        return [grown(each, REACH_PX) for each in boxes]

    def fill(self, boxes: Mapping[str, Rect]) -> None:
        """All that lies there, in place of what did: of thousands quicker than to put them one by one."""
        self._squares, self._cells = {}, {}
        squares, cells = self._squares, self._cells
        for id, box in boxes.items():
            square = squares[id] = _square(box)
            cell = cells.get(square)
            if cell is None:
                cell = cells[square] = _Cell()
            cell.boxes[id] = box

    def renew(self) -> None:
        """Everything lies where it did and looks otherwise."""
        for cell in self._cells.values():
            cell.things.clear()
            cell.batch = None

    def within(self, boxes: Iterable[Rect]) -> list[Batch]:
        """The batches that may paint anything in these boxes; always in the same order, so that what lies on
        top does not depend on what is painted anew."""
        asked = list(boxes)
        return [
            self._batch(cell)
            for _, cell in sorted(self._cells.items(), key=lambda each: each[0])
            if any(_meet(_reach(cell), box) for box in asked)
        ]

    def _changing(self, square: Square) -> _Cell[Thing, Batch]:
        cell = self._cells.get(square)
        if cell is None:
            cell = self._cells[square] = _Cell()
        cell.reach = cell.batch = None
        return cell

    def _batch(self, cell: _Cell[Thing, Batch]) -> Batch:
        if cell.batch is None:
            for id in cell.boxes.keys() - cell.things.keys():
                cell.things[id] = self._read(id)
            cell.batch = self._make([cell.things[id] for id in sorted(cell.things)])
        return cell.batch


def _square(box: Rect) -> Square:
    left, top, right, low = box
    return int((top + low) / 2 // CELL_PX), int((left + right) / 2 // CELL_PX)


def _reach(cell: _Cell[Thing, Batch]) -> Rect:
    if cell.reach is None:
        lefts, tops, rights, lows = zip(*cell.boxes.values(), strict=True)
        cell.reach = grown((min(lefts), min(tops), max(rights), max(lows)), REACH_PX)
    return cell.reach


def _meet(one: Rect, other: Rect) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]
