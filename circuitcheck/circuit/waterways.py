"""Walks along water port by port: along pipes and through parts, with or against their arrows.

A vertex is a port. A step leads along a pipe or through a part, and knows whether it goes against
an arrow (a check valve, a reducing valve, a blending valve). What a question lets pass is told by a
filter, so that one walk serves them all. Nothing is worked out ahead: a walk begins at the ports it
is asked about.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Iterable, Iterator, Mapping
from itertools import chain
from typing import NamedTuple

from circuitcheck.circuit.joining import Circuit
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Way

ARROWS = frozenset({Way.ONE_WAY, Way.SPRING, Way.REDUCING})


class Step(NamedTuple):
    """One step of a walk: along `pipe`, or (`pipe` empty) through the part of both ports.

    `against`: against the arrow of a one-way, spring or reducing passage. `upstream`: from the
    outlet of a pump or heat source to its inlet, as water can go while that does not drive it.
    """

    start: Joint
    finish: Joint
    pipe: str = ""
    against: bool = False
    upstream: bool = False


Passes = Callable[[Step], bool]
CameBy = Mapping[Joint, Step | None]
Cheapest = Mapping[Joint, tuple[float, Step | None]]


class Waterways:
    """The steps of one circuit and the walks made of them."""

    def __init__(self, circuit: Circuit) -> None:
        self.circuit = circuit
        self._known: dict[Joint, tuple[Step, ...]] = circuit.keep(__name__, dict)

    def steps(self, here: Joint) -> tuple[Step, ...]:
        """Every step from a port, with or against the arrows; none across a gap open to air."""
        known = self._known.get(here)
        if known is None:
            # Many questions walk over the same water.
            known = self._known[here] = tuple(self._steps(here))
        return known

    def _steps(self, here: Joint) -> Iterator[Step]:
        drawing = self.circuit.drawing
        pipe = drawing.joined.get(here)
        if pipe is not None:
            for end in drawing.pipes[pipe].joints:
                if end != here:
                    yield Step(here, end, pipe)
        for passage in self.circuit.plans[here.part].passages:
            if passage.gap:
                continue
            arrow = passage.way in ARROWS
            if passage.a == here.port:
                yield Step(here, Joint(here.part, passage.b))
            elif passage.b == here.port:
                yield Step(here, Joint(here.part, passage.a), "", arrow, passage.driven)

    def walk(self, starts: Iterable[Joint], passes: Passes) -> CameBy:
        """Every port reached by steps that pass, nearest first, each with the step it was reached by."""
        came: dict[Joint, Step | None] = dict.fromkeys(starts)
        todo = list(came)
        for here in todo:
            for step in self.steps(here):
                if step.finish not in came and passes(step):
                    came[step.finish] = step
                    todo.append(step.finish)
        return came

    def cheapest(
        self,
        starts: Iterable[Joint],
        cost: Callable[[Step], float | None],
        *,
        links: Mapping[Joint, Joint] | None = None,
    ) -> Cheapest:
        """For every port reached, the least total cost of the steps to it and the last of these.

        `cost` is None for a step that does not pass. `links` are further steps, from port to port.
        """
        best: dict[Joint, tuple[float, Step | None]] = {}
        todo: list[tuple[float, int, Joint, Step | None]] = []
        for number, start in enumerate(starts):
            todo.append((0.0, number, start, None))
        count = len(todo)
        heapq.heapify(todo)
        while todo:
            total, _, here, by = heapq.heappop(todo)
            if here in best:
                continue
            best[here] = (total, by)
            steps: Iterable[Step] = self.steps(here)
            if links and here in links:
                steps = chain(steps, [Step(here, links[here])])
            for step in steps:
                if step.finish not in best and (more := cost(step)) is not None:
                    heapq.heappush(todo, (total + more, count, step.finish, step))
                    count += 1
        return best

    @staticmethod
    def way(came: CameBy, goal: Joint) -> tuple[Step, ...]:
        """The steps to a port that a walk reached, first step first."""
        steps: list[Step] = []
        step = came[goal]
        while step is not None:
            steps.append(step)
            step = came[step.start]
        return tuple(reversed(steps))

    @staticmethod
    def origin(came: CameBy, goal: Joint) -> Joint:
        """The port from which a walk came to a port that it reached."""
        step = came[goal]
        while step is not None:
            goal = step.start
            step = came[goal]
        return goal


def pipes_of(steps: Iterable[Step]) -> tuple[str, ...]:
    """The pipes on a way, in its order, each once."""
    return tuple(dict.fromkeys(step.pipe for step in steps if step.pipe))


def cheapest_way(best: Cheapest, goal: Joint) -> tuple[Step, ...]:
    """The steps of the cheapest way to a port, first step first."""
    steps: list[Step] = []
    _, step = best[goal]
    while step is not None:
        steps.append(step)
        _, step = best[step.start]
    return tuple(reversed(steps))
