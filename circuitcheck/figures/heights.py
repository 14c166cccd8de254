"""How high each part stands: the heights given, carried on from part to part by the rises of the pipes.

One datum for the whole sheet; a part stands at one height, and a pipe's rise is told between the
heights of the parts at its two ends. Where no height is given at all, the rises still tell how much
higher one part stands than another that they join to it.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import Enum
from functools import cached_property
from typing import TYPE_CHECKING, NamedTuple

from circuitcheck.drawing.value import Joint

if TYPE_CHECKING:
    from circuitcheck.figures.plant import Plant

CLOSES_WITHIN_M = 0.1
"""A loop, or two heights and the rises between them, must agree this well (the drawing format)."""

_ROUNDING_M = 1e-9

_OF_HEIGHTS = frozenset({"given", "_rises", "is_told", "_steps", "_stands", "_pieces"})
"""What rests on heights and rises alone."""


class Against(Enum):
    """What a height or rise disagrees with."""

    ITSELF = "the pipes are a loop that does not come back to where it began"
    HEIGHTS = "the pipes lead between two parts whose heights say otherwise"
    LENGTH = "the pipe rises or falls by more than its length"


@dataclass(frozen=True, slots=True)
class Disagreement:
    """Heights that cannot all be right: the pipes in order, the parts they pass, and by how much.

    `by_m`: what the loop or the two heights miss by, or how much longer the rise is than the pipe.
    """

    against: Against
    pipes: tuple[str, ...]
    parts: tuple[str, ...]
    by_m: float


class _Step(NamedTuple):
    """A pipe whose rise is given, told from the part it leaves."""

    pipe: str
    to: str
    rise_m: float


class _Stand(NamedTuple):
    """Where a part stands: `height_m` above the datum, or above `root` where nothing ties it to the
    datum; and the pipe and part that it was reached by ("" at a root)."""

    root: str
    height_m: float
    steps: int
    pipe: str
    came_from: str


class Heights:
    """The heights of a plant's parts, in metres. Worked once, when first asked for; linear in the drawing."""

    def __init__(self, plant: Plant) -> None:
        self._plant = plant

    def carried(self, plant: Plant) -> Heights:
        """The same for a drawing with the same heights and rises."""
        other = Heights(plant)
        other.__dict__ |= {name: each for name, each in self.__dict__.items() if name in _OF_HEIGHTS}
        return other

    @cached_property
    def given(self) -> Mapping[str, float]:
        """The parts whose `height_m` is given."""
        plant = self._plant
        return {
            id: height
            for id in plant.told_parts
            if "height_m" in plant.drawing.components[id].data
            and (height := plant.value(id, "height_m")) is not None
        }

    @cached_property
    def _rises(self) -> Mapping[str, float]:
        plant = self._plant
        if not plant.told_pipes:
            return {}
        return {
            id: rise
            for id, pipe in plant.drawing.pipes.items()
            if "rise_m" in pipe.data and (rise := plant.pipe_value(id, "rise_m")) is not None
        }

    @cached_property
    def is_told(self) -> bool:
        """Whether the drawing gives any height or rise at all."""
        return bool(self._rises or self.given)

    def of(self, part: str) -> float | None:
        """How high a part stands above the sheet's datum; None where that is not known."""
        stand = self._stands.get(part)
        return stand.height_m if stand is not None and stand.root in self.given else None

    def difference(self, part_a: str, part_b: str) -> float | None:
        """How much higher `part_b` stands than `part_a`; None where that is not known."""
        if not self.is_told:
            return 0.0 if part_a == part_b else None
        a, b = self._stands.get(part_a), self._stands.get(part_b)
        if part_a == part_b:
            return 0.0
        if a is None or b is None:
            return None
        tied = a.root == b.root or (a.root in self.given and b.root in self.given)
        return b.height_m - a.height_m if tied else None

    def rise(self, pipe: str) -> float | None:
        """The height a pipe gains from its first end to its second: as given, else from the heights of
        the parts at its ends. None where neither tells."""
        given = self._rises.get(pipe)
        if given is not None:
            return given
        start, finish = self._plant.drawing.pipes[pipe].ends
        if not isinstance(start, Joint) or not isinstance(finish, Joint):
            return None
        return self.difference(start.part, finish.part)

    def missing_for(self, parts: Iterable[str]) -> tuple[str, ...]:
        """The fewest fields that would tell how high these parts stand, for those not known.

        One pipe's `rise_m` where just that pipe parts it from parts of known height; else the part's
        own `height_m`. Parts that known rises join need one field between them.
        """
        if not self.is_told:
            return tuple([f"{part}.height_m" for part in dict.fromkeys(parts)])
        fields: dict[str, None] = {}
        seen: set[str] = set()
        for part in parts:
            if self.of(part) is not None:
                continue
            stand = self._stands.get(part)
            root = part if stand is None else stand.root
            if root not in seen:
                seen.add(root)
                fields[self._field_for(part, root)] = None
        return tuple(fields)

    def _field_for(self, part: str, root: str) -> str:
        for member in self._pieces.get(root, [part]):
            for pipe in self._plant.drawing.pipes_of(member):
                joints = self._plant.drawing.pipes[pipe].joints
                if any(self.of(joint.part) is not None for joint in joints):
                    return f"{pipe}.rise_m"
        return f"{part}.height_m"

    @cached_property
    def _pieces(self) -> Mapping[str, list[str]]:
        """The parts that rises join, by their root."""
        found: dict[str, list[str]] = {}
        for part, stand in self._stands.items():
            found.setdefault(stand.root, []).append(part)
        return found

    @cached_property
    def _steps(self) -> Mapping[str, list[_Step]]:
        found: dict[str, list[_Step]] = {}
        pipes = self._plant.drawing.pipes
        for id, rise in self._rises.items():
            start, finish = pipes[id].ends
            if isinstance(start, Joint) and isinstance(finish, Joint):
                found.setdefault(start.part, []).append(_Step(id, finish.part, rise))
                found.setdefault(finish.part, []).append(_Step(id, start.part, -rise))
        return found

    @cached_property
    def _stands(self) -> Mapping[str, _Stand]:
        """Where each part stands that a height or a rise says something of.

        From all given heights at once, the nearest one first, so that each part's height rests on
        as few rises as can be; then, from some part, each piece that no given height is joined to.
        """
        found = {part: _Stand(part, height, 0, "", "") for part, height in self.given.items()}
        self._spread(found, deque(found))
        for part in self._steps:
            if part not in found:
                found[part] = _Stand(part, 0.0, 0, "", "")
                self._spread(found, deque([part]))
        return found

    def _spread(self, found: dict[str, _Stand], todo: deque[str]) -> None:
        while todo:
            here = todo.popleft()
            root, height, steps, _, _ = found[here]
            for pipe, there, rise in self._steps.get(here, ()):
                if there not in found:
                    found[there] = _Stand(root, height + rise, steps + 1, pipe, here)
                    todo.append(there)

    @cached_property
    def disagreements(self) -> tuple[Disagreement, ...]:
        """Every disagreement, in the order of the pipes that close it.

        A pipe that was not needed to reach a part closes one loop, or one way between two given
        heights, and it is the shortest such way through it. Two of those that each agree within
        the 0.1 m may together miss by more; that is not told.
        """
        found = []
        for pipe, rise in self._rises.items():
            too_long = self._longer_than_pipe(pipe, rise)
            if too_long is not None:
                found.append(too_long)
            closed = self._closed_by(pipe, rise)
            if closed is not None:
                found.append(closed)
        return tuple(found)

    def _longer_than_pipe(self, pipe: str, rise: float) -> Disagreement | None:
        length = self._plant.length_m(pipe)
        if length is None or abs(rise) <= length.value + _ROUNDING_M:
            return None
        parts = tuple(joint.part for joint in self._plant.drawing.pipes[pipe].joints)
        return Disagreement(Against.LENGTH, (pipe,), tuple(dict.fromkeys(parts)), abs(rise) - length.value)

    def _closed_by(self, pipe: str, rise: float) -> Disagreement | None:
        start, finish = self._plant.drawing.pipes[pipe].ends
        if not isinstance(start, Joint) or not isinstance(finish, Joint):
            return None
        a, b = self._stands[start.part], self._stands[finish.part]
        by = a.height_m + rise - b.height_m
        if abs(by) <= CLOSES_WITHIN_M + _ROUNDING_M:
            return None
        back, forth = self._ways_apart(start.part, finish.part)
        pipes = (*(step.pipe for _, step in reversed(back)), pipe, *(step.pipe for _, step in forth))
        parts = (*(part for part, _ in reversed(back)), *(part for part, _ in forth))
        if a.root == b.root:
            meeting = back[-1][1].came_from if back else (forth[-1][1].came_from if forth else start.part)
            return Disagreement(Against.ITSELF, pipes, tuple(dict.fromkeys((meeting, *parts))), abs(by))
        between = tuple(dict.fromkeys((a.root, *parts, b.root)))
        return Disagreement(Against.HEIGHTS, pipes, between, abs(by))

    def _ways_apart(self, a: str, b: str) -> tuple[list[tuple[str, _Stand]], list[tuple[str, _Stand]]]:
        """The steps by which two parts were reached, from each back to where the two ways part."""
        stands = self._stands
        back: list[tuple[str, _Stand]] = []
        forth: list[tuple[str, _Stand]] = []
        while a != b:
            one, two = stands[a], stands[b]
            if one.steps >= two.steps and one.came_from:
                back.append((a, one))
                a = one.came_from
            elif two.came_from:
                forth.append((b, two))
                b = two.came_from
            else:
                break
        return back, forth
