"""The box round all that lies on a sheet, and what of it lies lowest, where a few things at a time come to lie
elsewhere. Places in px."""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Mapping

from circuitcheck.picture.labels import Rect

NOWHERE = float("-inf")


class Extent:
    """Holds boxes by owner. What is asked is kept up as boxes change: of thousands only those are looked at that did.

    Where a box that touched the outermost edge goes, the box round all is taken anew when it is next asked.
    """

    def __init__(self, boxes: Mapping[str, Rect]) -> None:
        self._boxes = dict(boxes)
        self._by_low = sorted(_entry(owner, box) for owner, box in self._boxes.items())
        self._whole: Rect | None = None

    def put(self, owner: str, box: Rect | None) -> None:
        """An owner's box is another; None: it has none any more."""
        old = self._boxes.get(owner)
        if old == box:
            return
        if old is not None:
            del self._boxes[owner]
            del self._by_low[bisect_left(self._by_low, _entry(owner, old))]
            if self._whole is not None and any(a == b for a, b in zip(old, self._whole, strict=True)):
                self._whole = None
        if box is not None:
            self._boxes[owner] = box
            insort(self._by_low, _entry(owner, box))
            if self._whole is not None:
                left, top, right, low = self._whole
                self._whole = min(left, box[0]), min(top, box[1]), max(right, box[2]), max(low, box[3])

    def whole(self) -> Rect | None:
        """The box round all; None where there is none."""
        if self._whole is None and self._boxes:
            lefts, tops, rights, lows = zip(*self._boxes.values(), strict=True)
            self._whole = min(lefts), min(tops), max(rights), max(lows)
        return self._whole

    def lowest(self, left: float, right: float) -> float:
        """The lowest edge of all that lies between two uprights; minus infinity for nothing."""
        return next((low for low, a, b, _ in reversed(self._by_low) if a < right and left < b), NOWHERE)


def _entry(owner: str, box: Rect) -> tuple[float, float, float, str]:
    return box[3], box[0], box[2], owner
