"""Walks a circuit's water port by port, through whatever passages the asker lets it take."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from circuitcheck.circuit.joining import Circuit
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Passage, Way

MayPass = Callable[[str, Passage, bool], bool]
"""Whether a walk may take a part's passage: from `a` to `b` where the last is True, else from `b` to `a`."""

STOPS = frozenset({Way.ONE_WAY, Way.SPRING, Way.REDUCING})
"""Passages that pressure does not take both ways."""


def along_the_flow(part: str, passage: Passage, forward: bool) -> bool:
    """As water and its pressure can go on: not against an arrow."""
    return forward or passage.pressure_way not in STOPS


def against_the_flow(part: str, passage: Passage, forward: bool) -> bool:
    """Back to where water and its pressure can come from."""
    return not forward or passage.pressure_way not in STOPS


def any_way(part: str, passage: Passage, forward: bool) -> bool:
    """By every passage, whichever way it lets water through."""
    return True


@dataclass(frozen=True, slots=True)
class Walk:
    """Every port reached, nearest first, and the port each was reached from (None for a start)."""

    came: dict[Joint, Joint | None]
    steps: dict[Joint, int]

    def way_to(self, joint: Joint) -> tuple[Joint, ...]:
        """The ports on a shortest way to one that was reached, from its start."""
        way = [joint]
        while (before := self.came[way[-1]]) is not None:
            way.append(before)
        return tuple(reversed(way))


def walk(circuit: Circuit, starts: Iterable[Joint], may_pass: MayPass) -> Walk:
    """Walk from these ports by pipes and passages; a gap open to air is never crossed."""
    came: dict[Joint, Joint | None] = dict.fromkeys(starts)
    steps = dict.fromkeys(came, 0)
    todo = list(came)
    for here in todo:
        for there in _onward(circuit, here, may_pass):
            if there not in came:
                came[there] = here
                steps[there] = steps[here] + 1
                todo.append(there)
    return Walk(came, steps)


def passage_between(circuit: Circuit, one: Joint, other: Joint) -> Passage | None:
    """The passage by which a walk went from one port of a part to another; None for a pipe."""
    if one.part != other.part:
        return None
    for passage in circuit.plans[one.part].passages:
        if {passage.a, passage.b} == {one.port, other.port} and not passage.gap:
            return passage
    return None


def _onward(circuit: Circuit, here: Joint, may_pass: MayPass) -> Iterator[Joint]:
    drawing = circuit.drawing
    pipe = drawing.joined.get(here)
    if pipe is not None:
        yield from (end for end in drawing.pipes[pipe].joints if end != here)
    for passage in circuit.plans[here.part].passages:
        if passage.gap:
            continue
        if passage.a == here.port and may_pass(here.part, passage, True):
            yield Joint(here.part, passage.b)
        if passage.b == here.port and may_pass(here.part, passage, False):
            yield Joint(here.part, passage.a)
