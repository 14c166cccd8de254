"""The way along the pipes from port to port, so that a length, a rise or a pump on it can be told.

Vertices are the ports of parts; steps are the pipes, and the ways through parts that pressure takes
both ways. The contracted graph of `joining` no longer knows one pipe from the next; this one does.
"""

from __future__ import annotations

import heapq
import itertools
from collections.abc import Callable, Iterable, Iterator
from functools import cache
from typing import NamedTuple

from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.plan import Plan
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role

_STORES = frozenset({Role.STORES_OPEN, Role.STORES_AT_MAINS_PRESSURE})
_OPEN_TO_AIR = frozenset({Role.VENTS, Role.FEEDS})


class Step(NamedTuple):
    """One step of a way: a pipe by its id, or through a part.

    `forward`: a pipe is taken from its first end to its second. `emits`: through an emitter, a coil or
    an exchanger; `heats`: through a heat source; `stores`: through a store's water. `pumps`: 1 through
    a pump with it, -1 against it.
    """

    start: Joint
    finish: Joint
    pipe: str = ""
    forward: bool = True
    emits: bool = False
    heats: bool = False
    stores: bool = False
    pumps: int = 0

    @property
    def goes_on(self) -> bool:
        """Whether it only leads on: a pipe, or through a part that neither heats, emits nor stores."""
        return not (self.emits or self.heats or self.stores)


Cost = tuple[float, ...]


class _Through(NamedTuple):
    """A way through a part, from one port to another."""

    to: str
    emits: bool
    heats: bool
    stores: bool
    pumps: int


@cache
def _throughs(plan: Plan) -> dict[str, tuple[_Through, ...]]:
    pairs = [pair for group in plan.open_groups for pair in itertools.combinations(group, 2)]
    pairs += [(a, b) for a, b, _, _ in plan.shut_pairs]
    stored = {each.port for each in plan.devices if each.role in _STORES}
    in_store = {port for group in plan.open_groups if stored & {*group} for port in group}
    found: dict[str, list[_Through]] = {}
    for a, b in dict.fromkeys(pairs):
        emits = any(way.gives_heat and {way.a, way.b} == {a, b} for way in plan.passages)
        # Water reaches a heat source's flow only through its heat, wherever it came in.
        heats = any(each.role is Role.HEATS and each.other in (a, b) for each in plan.devices)
        stores = {a, b} <= in_store
        driven = [each.other for each in plan.devices if each.role is Role.PUMPS and each.other in (a, b)]
        pumps = 0 if not driven else (1 if driven[0] == b else -1)
        found.setdefault(a, []).append(_Through(b, emits, heats, stores, pumps))
        found.setdefault(b, []).append(_Through(a, emits, heats, stores, -pumps))
    return {port: tuple(ways) for port, ways in found.items()}


def through(circuit: Circuit, joint: Joint) -> Iterator[Step]:
    """The steps from a port through its part."""
    for way in _throughs(circuit.plans[joint.part]).get(joint.port, ()):
        to, emits, heats, stores, pumps = way
        yield Step(joint, Joint(joint.part, to), "", True, emits, heats, stores, pumps)


def along(circuit: Circuit, joint: Joint) -> Step | None:
    """The step from a port along its pipe to a port at the other end; None where there is none."""
    drawing = circuit.drawing
    id = drawing.joined.get(joint)
    if id is None:
        return None
    first, second = drawing.pipes[id].ends
    forward = first == joint
    other = second if forward else first
    return Step(joint, other, id, forward) if isinstance(other, Joint) else None


def onward(circuit: Circuit, joint: Joint) -> Iterator[Step]:
    """The steps from a port: along its pipe and through its part."""
    pipe = along(circuit, joint)
    if pipe is not None:
        yield pipe
    yield from through(circuit, joint)


def way(
    circuit: Circuit,
    starts: Iterable[Joint],
    is_goal: Callable[[Joint], bool],
    allowed: Callable[[Step], bool],
    cost: Callable[[Step], Cost],
) -> tuple[Step, ...] | None:
    """The cheapest way by allowed steps from any start to a goal, by costs added up place by place and
    compared in order; None where there is no way. Costs are never negative."""
    order = itertools.count()
    came: dict[Joint, Step | None] = {}
    todo: list[tuple[Cost, int, Joint, Step | None]] = [((), next(order), start, None) for start in starts]
    heapq.heapify(todo)
    while todo:
        spent, _, here, step = heapq.heappop(todo)
        if here in came:
            continue
        came[here] = step
        if is_goal(here):
            return _steps_to(here, came)
        for on in onward(circuit, here):
            if on.finish not in came and allowed(on):
                price = cost(on)
                total = tuple(a + b for a, b in zip(spent, price, strict=True)) if spent else price
                heapq.heappush(todo, (total, next(order), on.finish, on))
    return None


def _steps_to(goal: Joint, came: dict[Joint, Step | None]) -> tuple[Step, ...]:
    steps = []
    step = came[goal]
    while step is not None:
        steps.append(step)
        step = came[step.start]
    return tuple(reversed(steps))


class Tapping(NamedTuple):
    """Where a vent's or feed's own pipe leaves the circuit: the port it joins there, and the pipes
    from its open end to that port."""

    joint: Joint
    pipes: tuple[str, ...]


def tapping(circuit: Circuit, end: Joint) -> Tapping | None:
    """Where the pipe that begins at a vent or a cistern's feed joins the circuit; None if nowhere.

    It is the first part from which water can go on two ways that each lead to a heat source, an
    emitter, a store or another open end; what merely hangs there (a drain, an air vent, a cap) is
    no such way. Else the heat source, emitter or store that the pipe ends at.
    """
    pipes: list[str] = []
    seen = {end}
    here = end
    while True:
        pipe = along(circuit, here)
        if pipe is None or pipe.finish in seen:
            return None
        pipes.append(pipe.pipe)
        arrived = pipe.finish
        ways = list(through(circuit, arrived))
        if any(not step.goes_on for step in ways):
            return Tapping(arrived, tuple(pipes))
        live = [step for step in ways if _leads_on(circuit, step, arrived)]
        if len(live) != 1:
            return Tapping(arrived, tuple(pipes)) if live else None
        seen |= {arrived, live[0].finish}
        here = live[0].finish


def _leads_on(circuit: Circuit, step: Step, arrived: Joint) -> bool:
    """Whether a way on from a port leads, without going back through it, to more than a dead end."""
    seen = {arrived, step.finish}
    first = along(circuit, step.finish)
    todo = [] if first is None or first.finish in seen else [first.finish]
    while todo:
        here = todo.pop()
        if here in seen:
            continue
        seen.add(here)
        if any(
            device.role in _OPEN_TO_AIR and device.port == here.port
            for device in circuit.plans[here.part].devices
        ):
            return True
        for on in onward(circuit, here):
            if not on.goes_on:
                return True
            todo.append(on.finish)
    return False
