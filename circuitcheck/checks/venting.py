"""What the checks of open-vented circuits share: whose vent it is, its way up, and where it and the
feed join the circuit."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cached_property

from circuitcheck.checks.case import Case
from circuitcheck.checks.cutting_off import HeatedWater, heated_waters
from circuitcheck.circuit.bodies import Heated
from circuitcheck.circuit.flowways import Ways
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.loops import find_loop
from circuitcheck.circuit.pipework import Cost, Step, Tapping, onward, tapping, way
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role


def end_of(place: Placed) -> Joint:
    """The port that a vent or feed stands at."""
    return Joint(place.part, place.device.port)


@dataclass(frozen=True, slots=True)
class VentPipe:
    """A vent and the ports of hot water that it must let steam and air out of, by what heats them."""

    vent: Placed
    starts: tuple[Joint, ...]

    @property
    def serves(self) -> tuple[str, ...]:
        """The heat sources, exchangers and stores it vents."""
        return tuple(dict.fromkeys(start.part for start in self.starts))


def vent_pipes(case: Case) -> tuple[VentPipe, ...]:
    """Every vent that hot water reaches, with all it vents, in the order of what it vents."""
    if not case.circuit.devices(Role.VENTS):
        return ()
    starts: dict[Joint, list[Joint]] = {}
    places: dict[Joint, Placed] = {}
    for water in heated_waters(case):
        for place in water.vents:
            places[end_of(place)] = place
            starts.setdefault(end_of(place), []).extend(_outlets(case, water.heated))
    for water in open_stores(case):
        for place in water.hot_vents:
            places[end_of(place)] = place
            starts.setdefault(end_of(place), []).append(water.hot)
    return tuple(VentPipe(places[end], tuple(found)) for end, found in starts.items())


def _outlets(case: Case, heated: Heated) -> list[Joint]:
    circuit = case.circuit
    role = Role.EXCHANGES if heated.by_exchanger else Role.HEATS
    found = []
    for place in circuit.devices(role):
        if place.part != heated.part:
            continue
        if not heated.by_exchanger:
            found.append(Joint(place.part, place.device.other))
            continue
        ports = case.drawing.components[place.part].kind.ports
        found += [
            Joint(place.part, port.name)
            for port in ports
            if case.bodies.of(circuit.node(place.part, port.name)) == heated.body
        ]
    return found


@dataclass(frozen=True)
class OpenStore(HeatedWater):
    """The water of a store that is open to air, told from its hot port; `heated.part` is the store."""

    hot: Joint

    @cached_property
    def hot_vents(self) -> tuple[Placed, ...]:
        """The vents that its hot side reaches, valves open, other than back through the store."""
        ends = {end_of(place): place for place in self.reached(Role.VENTS)}
        if not ends:
            return ()
        circuit = self.case.circuit
        seen = {self.hot}
        todo = [self.hot]
        while todo:
            for step in onward(circuit, todo.pop()):
                if step.finish not in seen and not (step.stores and step.start.part == self.heated.part):
                    seen.add(step.finish)
                    todo.append(step.finish)
        return tuple(place for end, place in ends.items() if end in seen)


def open_stores(case: Case) -> tuple[OpenStore, ...]:
    """Every store that is open to air, in the order of the drawing."""
    circuit, bodies = case.circuit, case.bodies
    return tuple(
        OpenStore(
            case,
            Heated(place.part, circuit.water(place.other), bodies.of(place.other), by_exchanger=True),
            Joint(place.part, place.device.other),
        )
        for place in circuit.devices(Role.STORES_OPEN)
    )


def is_cistern(case: Case, part: str) -> bool:
    """Whether a part is a cistern; an id that is not there is none."""
    plan = case.circuit.plans.get(part)
    return plan is not None and any(device.role is Role.FEEDS for device in plan.devices)


def cistern_under(case: Case, vent: Placed) -> str | None:
    """The cistern a vent ends over: the one it names, or the one whose own vent port it is drawn to.
    None: not known."""
    if is_cistern(case, vent.part):
        return vent.part
    over = case.value(vent.part, "over")
    return None if over is None else str(over)


def cisterns_feeding(case: Case, node: int) -> tuple[Placed, ...]:
    """The cisterns whose water can come to a node by any way, in the order of the drawing."""
    body = case.bodies.of(node)
    return tuple(place for place in case.circuit.devices(Role.FEEDS) if case.bodies.of(place.node) == body)


@dataclass(frozen=True)
class VentAndFeed:
    """A vent and a feed of one heated water, and where each joins the circuit."""

    case: Case
    water: HeatedWater
    vent: Placed
    feed: Placed
    vent_tap: Tapping
    feed_tap: Tapping

    @cached_property
    def pipes_between(self) -> tuple[str, ...] | None:
        """The shortest run of pipe between the two tees, past no heat source, emitter or store.

        A pipe of unknown length counts as none: if the run is too long all the same, it is too
        long. None where there is no such run.
        """
        steps = self._way(lambda step: step.goes_on, self._length)
        return None if steps is None else tuple(step.pipe for step in steps if step.pipe)

    @cached_property
    def surest_pipes_between(self) -> tuple[str, ...] | None:
        """The shortest run whose every length is known."""
        steps = self._way(lambda step: step.goes_on and self._is_known(step), self._length)
        return None if steps is None else tuple(step.pipe for step in steps if step.pipe)

    @cached_property
    def way_past_no_emitter(self) -> tuple[Step, ...] | None:
        """The way from the feed's tee to the vent's with the fewest pumps on it; None where there is none.

        It may lead through the heat source, but through no emitter, coil, exchanger or store: past
        those, all the circuit's resistance lies on the way and not the pump alone.
        """
        return self._way(lambda step: not (step.emits or step.stores), _pumps_then_steps)

    @property
    def pumps_between(self) -> tuple[Step, ...]:
        """The steps through pumps on that way."""
        return tuple(step for step in self.way_past_no_emitter or () if step.pumps)

    def _way(self, allowed: Callable[[Step], bool], cost: Callable[[Step], Cost]) -> tuple[Step, ...] | None:
        vent_at = self.vent_tap.joint.part
        if vent_at == self.feed_tap.joint.part:
            return ()
        return way(
            self.case.circuit,
            [self.feed_tap.joint],
            lambda joint: joint.part == vent_at,
            lambda step: step.pipe not in self.feed_tap.pipes and allowed(step),
            cost,
        )

    def _length(self, step: Step) -> Cost:
        length = self.case.length_m(step.pipe) if step.pipe else None
        return (0.0 if length is None else length.value, 1.0)

    def _is_known(self, step: Step) -> bool:
        return not step.pipe or self.case.length_m(step.pipe) is not None


def _pumps_then_steps(step: Step) -> Cost:
    return (abs(step.pumps), 1.0)


def vents_and_feeds(case: Case) -> tuple[VentAndFeed, ...]:
    """For each vent of pumped, open-vented heating, it and the feed that stands best to it.

    Best: with the fewest pumps between, then by the shortest run of pipe. A vent that several heat
    sources share is told once.
    """
    if not case.circuit.devices(Role.VENTS) or not case.circuit.devices(Role.PUMPS):
        return ()
    found: dict[Joint, VentAndFeed] = {}
    for water in heated_waters(case):
        vents, feeds = water.reached(Role.VENTS), water.reached(Role.FEEDS)
        if not vents or not feeds or not pumps_of(case, water):
            continue
        case.rests_on_pressure_ways(water.reach)
        feed_taps = [(feed, tapping(case.circuit, end_of(feed))) for feed in feeds]
        for vent in vents:
            vent_tap = tapping(case.circuit, end_of(vent))
            pairs = [
                VentAndFeed(case, water, vent, feed, vent_tap, feed_tap)
                for feed, feed_tap in feed_taps
                if vent_tap is not None and feed_tap is not None
            ]
            if pairs and end_of(vent) not in found:
                found[end_of(vent)] = min(pairs, key=_standing)
    return tuple(found.values())


def _standing(pair: VentAndFeed) -> tuple[int, float]:
    pipes = pair.pipes_between
    lengths = [pair.case.length_m(pipe) for pipe in pipes or ()]
    run = sum(0.0 if length is None else length.value for length in lengths)
    return len(pair.pumps_between), float("inf") if pipes is None else run


def pumps_of(case: Case, water: HeatedWater) -> tuple[Placed, ...]:
    """The pumps in a heated water, built-in ones too."""
    circuit = case.circuit
    return tuple(place for place in circuit.devices(Role.PUMPS) if circuit.water(place.node) in water.reach)


def height_above_water_m(case: Case, vent: Placed) -> float | None:
    """How far a vent ends above the water below it, as given, else from the two heights; None where that
    is not known, as it never is for one drawn to the cistern's own port."""
    if is_cistern(case, vent.part):
        return None
    given = case.value(vent.part, "height_above_water_mm")
    if given is not None:
        return float(given) / 1000
    cistern, end = cistern_under(case, vent), case.heights.of(vent.part)
    if cistern is None or end is None or not is_cistern(case, cistern):
        return None
    level = case.value(cistern, "water_level_m")
    return None if level is None else end - float(level)


def pumps_before_feed(case: Case, pair: VentAndFeed) -> tuple[str, ...]:
    """The pumps that have the feed on their delivery side: walking on from the outlet, its tee comes
    before any emitter, coil, exchanger or other pump, and walking back from the inlet it does not."""
    circuit = case.circuit
    goal = pair.feed_tap.joint.part
    found = []
    for place in pumps_of(case, pair.water):
        device = place.device

        def plain(step: Step) -> bool:
            return not (step.emits or step.stores or step.pumps)

        ends = (Joint(place.part, device.other), Joint(place.part, device.port))
        after, before = (
            way(circuit, [end], lambda joint: joint.part == goal, plain, lambda step: (1.0,)) for end in ends
        )
        if after is not None and before is None:
            found.append(place.part)
    return tuple(found)


def turns_by_gravity(case: Case, water: HeatedWater) -> bool:
    """Whether a loop through the heat source and an emitter or coil needs no pump, as gravity hot water
    does. Raises TooLargeError beyond the search bound."""
    if water.heated.by_exchanger:
        return False
    heat = water.heated.part
    alone = frozenset({heat})
    edges = [
        edge._replace(pumps=alone) if heat in edge.heats else edge
        for edge in case.flow.around(heat)
        if not edge.pumps
    ]
    return find_loop(Ways(edges), heat, must_emit=True) is not None


def unknown_lengths(case: Case, pipes: Iterable[str]) -> tuple[str, ...]:
    """The fields that would tell the lengths of these pipes, for those not known."""
    return tuple(f"{pipe}.length_m" for pipe in pipes if case.length_m(pipe) is None)
