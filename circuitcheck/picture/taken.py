"""Boxes that stand already: on a large sheet thousands, each held only against what lies near it. Places in px."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from circuitcheck.picture.labels import Obstacles, Rect, overlap


class Taken:
    """Boxes in the order in which they came to stand, in a grid."""

    def __init__(self, boxes: Iterable[Rect] = ()) -> None:
        self._boxes: list[Rect] = []
        self._grid = Obstacles()
        self.extend(boxes)

    def __iter__(self) -> Iterator[Rect]:
        return iter(self._boxes)

    def __len__(self) -> int:
        return len(self._boxes)

    def append(self, box: Rect) -> None:
        """One more box stands."""
        self._grid.put(str(len(self._boxes)), (box,))
        self._boxes.append(box)

    def extend(self, boxes: Iterable[Rect]) -> None:
        """More of them stand."""
        for box in boxes:
            self.append(box)

    def met(self, box: Rect) -> list[Rect]:
        """Those that this one shares some area with, in their order."""
        return [self._boxes[number] for number in sorted(map(int, self._grid.met(box)))]

    def is_met(self, box: Rect) -> bool:
        """Whether any shares some area with this one."""
        return bool(self._grid.met(box))

    def overlap(self, box: Rect) -> float:
        """How much of this box each of them covers, in square px, all together."""
        return sum(overlap(box, each) for each in self.met(box))
