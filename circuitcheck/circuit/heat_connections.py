"""Which flow and return of heating water are changed over: of a heat source, or of what takes its heat.

Looked at is what lies ahead of a heat source's flow and what before its return, as far as the first that
takes heat, a separator or a bypass valve. What has its flow side ahead of the flow is joined the right
way; what has its return side there, and its flow side before the return, is not. Where both lie on either
side water can go either way, and nothing is told. The walk goes over reaches of water, so that what takes
heat costs a look-up each.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import Enum, auto
from typing import NamedTuple

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.joining import Circuit, Placed
from circuitcheck.circuit.pump_sides import Reaches, reaches_of
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role


class Side(NamedTuple):
    """The flow and the return of something, by its role: what gives heat, or what takes it."""

    role: Role
    flow: Joint
    back: Joint


class Whose(Enum):
    """Whose flow and return are changed over."""

    SURELY = auto()
    """That of what is named first: everything else on that water agrees without it."""
    EITHER = auto()
    """Of what is named first, or of all that it feeds: these two contradict one another."""


@dataclass(frozen=True, slots=True)
class Turned:
    """A flow and a return that are changed over: `sides` are those, several only where heat sources stand
    side by side. `against` is what contradicts them."""

    sides: tuple[Side, ...]
    against: tuple[Side, ...]
    whose: Whose


SEPARATOR = (("source_flow", "source_return"), ("load_flow", "load_return"))
"""The flow, above, and the return, below, on either side of a separator."""

Pair = tuple[int, int]
"""The reaches that the flow and the return of something are in."""


class _Judged(NamedTuple):
    """What one giver of heat says of the pairs that it feeds: which are right and which are not. `ahead` and
    `before` are the reaches that lie ahead of its flow alone, and before its return alone."""

    giver: Side
    facing: Pair
    ahead: frozenset[int]
    before: frozenset[int]
    right: frozenset[Pair]
    wrong: frozenset[Pair]

    @property
    def is_sound(self) -> bool:
        """Whether something it feeds is joined the right way, or an arrow on the way, as of a pump, says that
        the water does go as this giver has it."""
        return bool(self.right or self.wrong - {self.facing})


def turned(circuit: Circuit, bodies: Bodies) -> tuple[Turned, ...]:
    """Every flow and return changed over, what gives heat first, in the order of the drawing."""
    heats = [
        Side(Role.HEATS, Joint(place.part, place.device.other), Joint(place.part, "return"))
        for place in circuit.devices(Role.HEATS)
    ]
    behind = list(_givers_behind(circuit, bodies))
    if not heats:
        return ()
    reaches = reaches_of(circuit)
    takers = _Takers(circuit, reaches, behind)
    walk = _Walk(circuit, reaches, takers)
    of_heats, of_others = [walk.judged(each) for each in heats], [walk.judged(each) for each in behind]
    right = frozenset[Pair]().union(*(each.right for each in (*of_heats, *of_others)))
    found = [*_of_givers(of_heats, takers, right)]
    wrong = dict.fromkeys(
        pair
        for each in (*of_heats, *of_others)
        for pair in sorted(each.wrong - right)
        if each.is_sound and (each.giver.role is Role.HEATS or pair != each.facing)
    )
    found += (
        Turned((side,), (), Whose.SURELY)
        for pair in wrong
        for side in takers.at(pair)
        if side.role is not Role.EMITS
    )
    found += _across(circuit, reaches, of_heats)
    return tuple(dict.fromkeys(found))


def _across(circuit: Circuit, reaches: Reaches, judged: Iterable[_Judged]) -> Iterator[Turned]:
    """The separators that a heat source's water enters and leaves at the same height: the flow of one side
    and the return of the other are changed over, and the hot water goes straight back."""
    for place in circuit.devices(Role.SEPARATES):
        sides = [tuple(Joint(place.part, port) for port in ports) for ports in SEPARATOR]
        at = {port: reaches.of(circuit.node(*port)) for side in sides for port in side}
        for each in judged:
            enters = [port for port, reach in at.items() if reach in each.ahead]
            leaves = [port for port, reach in at.items() if reach in each.before]
            if len(enters) != 1 or len(leaves) != 1:
                continue
            one, other = (next(side for side in sides if port in side) for port in (enters[0], leaves[0]))
            if one is other or one.index(enters[0]) != other.index(leaves[0]):
                continue
            above = enters[0] == one[0]
            flow, back = (leaves[0], one[1]) if above else (other[0], enters[0])
            yield Turned((Side(Role.SEPARATES, flow, back),), (), Whose.SURELY)
            break


def _of_givers(judged: Iterable[_Judged], takers: _Takers, right: frozenset[Pair]) -> Iterator[Turned]:
    """What is said of the heat sources that face the wrong way, those side by side together."""
    unsound: dict[Pair, list[Side]] = {}
    for each in judged:
        if each.wrong and not each.is_sound:
            unsound.setdefault(each.facing, []).append(each.giver)
    for facing, givers in unsound.items():
        against = takers.at(facing)
        if facing in right:
            yield from (Turned((giver,), against, Whose.SURELY) for giver in givers)
        elif len(givers) > 1 and len(against) == 1 and against[0].role is not Role.EMITS:
            # That two slips of the same sort were made is less likely than one.
            yield Turned(against, (), Whose.SURELY)
        else:
            yield Turned(tuple(givers), against, Whose.EITHER)


def _givers_behind(circuit: Circuit, bodies: Bodies) -> Iterator[Side]:
    """What hands heat on to further heating water: separators, and exchangers by the side they heat."""
    for place in circuit.devices(Role.SEPARATES):
        yield Side(Role.SEPARATES, Joint(place.part, "load_flow"), Joint(place.part, "load_return"))
    if circuit.devices(Role.EXCHANGES):
        heated = {(each.part, each.body) for each in bodies.heated if each.by_exchanger}
        for place in circuit.devices(Role.EXCHANGES):
            for side in _sides_of_exchanger(circuit, place.part):
                if (place.part, bodies.of(circuit.node(*side.flow))) in heated:
                    yield Side(Role.EXCHANGES, side.back, side.flow)


def _sides_of_exchanger(circuit: Circuit, part: str) -> Iterator[Side]:
    for passage in circuit.plans[part].passages:
        if passage.gives_heat:
            yield Side(Role.EXCHANGES, Joint(part, passage.a), Joint(part, passage.b))


class _Takers:
    """Everything that takes heat by the reaches that its flow and its return are in."""

    def __init__(self, circuit: Circuit, reaches: Reaches, behind: Iterable[Side]) -> None:
        of = reaches.of
        # There are thousands of emitters, and mostly none is ever named: they stay as they are placed.
        self._placed: defaultdict[Pair, list[Placed]] = defaultdict(list)
        for role in (Role.EMITS, Role.HEATED_BY_COIL):
            for place in circuit.devices(role):
                self._placed[of(place.node), of(place.other)].append(place)
        self._others: defaultdict[Pair, list[Side]] = defaultdict(list)
        heated = {(each.back, each.flow) for each in behind}
        for side in _separators_and_exchangers(circuit):
            if (side.flow, side.back) not in heated:
                self._others[of(circuit.node(*side.flow)), of(circuit.node(*side.back))].append(side)

    @property
    def pairs(self) -> Iterable[Pair]:
        """The reaches of all, each pair once."""
        return dict.fromkeys((*self._placed, *self._others))

    def at(self, pair: Pair) -> tuple[Side, ...]:
        """What takes heat between two reaches."""
        placed = (
            Side(device.role, Joint(part, device.port), Joint(part, device.other))
            for part, device, _, _ in self._placed.get(pair, ())
        )
        return (*placed, *self._others.get(pair, ()))


def _separators_and_exchangers(circuit: Circuit) -> Iterator[Side]:
    """Either side of each: which of them takes the heat, the walk finds."""
    for place in circuit.devices(Role.SEPARATES):
        for flow, back in SEPARATOR:
            yield Side(Role.SEPARATES, Joint(place.part, flow), Joint(place.part, back))
    for place in circuit.devices(Role.EXCHANGES):
        yield from _sides_of_exchanger(circuit, place.part)


class _Walk:
    """Walks over the reaches of a circuit, through no heat source."""

    def __init__(self, circuit: Circuit, reaches: Reaches, takers: _Takers) -> None:
        self.circuit = circuit
        self.reaches = reaches
        self.heats = circuit.parts_with(Role.HEATS)
        self.at: defaultdict[int, list[Pair]] = defaultdict(list)
        for pair in takers.pairs:
            if pair[0] != pair[1]:
                for reach in pair:
                    self.at[reach].append(pair)

    def judged(self, giver: Side) -> _Judged:
        """What a giver of heat says of all that it feeds."""
        flow, back = (self.reaches.of(self.circuit.node(*port)) for port in (giver.flow, giver.back))
        ahead, before = self._ahead(flow), self._before(back)
        near = {pair for reach in ahead | before for pair in self.at.get(reach, ())}
        right = frozenset(pair for pair in near if pair[0] in ahead or pair[1] in before)
        wrong = frozenset(pair for pair in near - right if pair[1] in ahead and pair[0] in before)
        return _Judged(
            giver, (back, flow), frozenset(ahead - before), frozenset(before - ahead), right, wrong
        )

    def _ahead(self, start: int) -> set[int]:
        """The reaches that water comes to from one."""
        seen, todo = {start}, [start]
        while todo:
            for arrow in self.reaches.leaving.get(todo.pop(), ()):
                if arrow.b not in seen and arrow.part not in self.heats:
                    seen.add(arrow.b)
                    todo.append(arrow.b)
        return seen

    def _before(self, start: int) -> set[int]:
        """The reaches that water comes from to one."""
        seen, todo = {start}, [start]
        while todo:
            for arrow in self.reaches.coming.get(todo.pop(), ()):
                if arrow.a not in seen and arrow.part not in self.heats:
                    seen.add(arrow.a)
                    todo.append(arrow.a)
        return seen
