"""The water of each mains-fed store, what stands on it, and how its absence is told."""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.cutting_off import HeatedWater
from circuitcheck.checks.wording import upper
from circuitcheck.circuit.bodies import Heated
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.walking import STOPS, any_way, passage_between, walk
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Passage, Role

RELIEF_PORT = "relief"
"""The port of a store that a temperature relief valve stands on."""


@dataclass(frozen=True)
class StoreWater(HeatedWater):
    """The water that one mains-fed store heats, and all that pressure reaches from it both ways."""

    @property
    def store(self) -> str:
        """The store's id."""
        return self.heated.part

    @property
    def ports(self) -> tuple[Joint, ...]:
        """The store's own ports on that water."""
        return store_ports(self.case, self.store)

    @property
    def temperature_reliefs(self) -> tuple[Placed, ...]:
        """Its own temperature relief valves within reach: built in, or nearest to it of all stores."""
        return tuple(
            place
            for place in self.reached(Role.RELIEVES_BY_TEMPERATURE)
            if home_of(self.case, place).store == self.store
        )


@dataclass(frozen=True, slots=True)
class Home:
    """The store and the port of it that a relief valve is nearest to; both empty where it is on none."""

    store: str = ""
    port: str = ""

    @property
    def on_relief_port(self) -> bool:
        """Whether that is where a temperature relief valve feels the heat."""
        return self.port == RELIEF_PORT


def store_waters(case: Case) -> tuple[StoreWater, ...]:
    """The water of every mains-fed store, in the order of the drawing."""
    return case.kept("store waters", lambda: _store_waters(case))


def _store_waters(case: Case) -> tuple[StoreWater, ...]:
    circuit, bodies = case.circuit, case.bodies
    return tuple(
        StoreWater(
            case, Heated(place.part, circuit.water(place.other), bodies.of(place.other), by_exchanger=False)
        )
        for place in circuit.devices(Role.STORES_AT_MAINS_PRESSURE)
    )


def store_ports(case: Case, store: str) -> tuple[Joint, ...]:
    """The ports of a store that its water stands at: not its coil's, nor an inlet behind whose own check
    valve it stands."""
    plan = case.circuit.plans[store]
    inside = next(device.other for device in plan.devices if device.role is Role.STORES_AT_MAINS_PRESSURE)
    group = next((group for group in plan.open_groups if inside in group), (inside,))
    ports = {port.name for port in case.drawing.components[store].kind.ports}
    return tuple(Joint(store, port) for port in group if port in ports)


def home_of(case: Case, valve: Placed) -> Home:
    """The store's port that a relief valve is nearest to, by whatever pipes and parts lie between."""
    if valve.device.built_in:
        return Home(valve.part, valve.device.port)
    homes: dict[Joint, Home] = case.kept("homes of relief valves", dict)
    inlet = Joint(valve.part, valve.device.port)
    if inlet not in homes:
        homes[inlet] = _nearest_home(case, inlet)
    return homes[inlet]


def _nearest_home(case: Case, valve: Joint) -> Home:
    ports = case.kept("ports of stores", lambda: _ports_of_stores(case))

    def outside(part: str, passage: Passage, forward: bool) -> bool:
        return part not in ports

    found = walk(case.circuit, [valve], outside)
    at = [joint for joint in found.steps if joint in ports.get(joint.part, ())]
    nearest = min(at, key=lambda joint: (found.steps[joint], joint.port != RELIEF_PORT, joint), default=None)
    return Home() if nearest is None else Home(*nearest)


def _ports_of_stores(case: Case) -> dict[str, tuple[Joint, ...]]:
    stores = case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE)
    return {place.part: store_ports(case, place.part) for place in stores}


def above_exempt(case: Case, store: str) -> bool | None:
    """Whether a store is large enough for the rules that leave small ones out; None: not known."""
    volume = case.value(store, "volume_l")
    return None if volume is None else bool(volume > case.limit("store.exempt_content_l").value)


def unanswered(
    case: Case,
    check: str,
    template: str,
    components: Iterable[str],
    missing: Iterable[str],
    would_be: Grade,
    **values: str | float,
) -> Finding:
    """A finding that says what must be known. The first component is {thing}; {missing} lists the fields."""
    parts, fields = tuple(dict.fromkeys(components)), tuple(dict.fromkeys(missing))
    known = {"thing": upper(case.drawing.name(parts[0])), "missing": ", ".join(fields), **values}
    return Finding(check, Grade.UNANSWERED, Says(template, known), parts, missing=fields, would_be=would_be)


def judge_absent(
    case: Case,
    check: str,
    role: Role,
    found: Callable[[StoreWater], tuple[Placed, ...]],
    template: str,
    blocked: str,
    excused: Callable[[StoreWater], tuple[bool, tuple[str, ...]]] = lambda water: (False, ()),
) -> Verdict:
    """One danger for each store that reaches none of what `found` looks for.

    `template` says so of {thing}; `blocked` says it where one lies only beyond {blocker}, which does
    not let pressure through both ways. `excused` tells whether a store needs none, or what would
    have to be known to say so.
    """
    findings, sound = [], 0
    for water in store_waters(case):
        case.rests_on_pressure_ways(water.reach)
        if found(water):
            sound += 1
            continue
        is_excused, missing = excused(water)
        if is_excused:
            continue
        blocker = _blocker(case, water, role)
        parts = (water.store, *blocker)
        if missing:
            says = template + " Whether it needs one rests on what is not known: {missing}."
            findings.append(unanswered(case, check, says, parts, missing, Grade.DANGER))
            continue
        values: dict[str, str | float] = {"thing": upper(case.drawing.name(water.store))}
        if blocker:
            values |= {"blocker": case.drawing.name(blocker[0]), "device": case.drawing.name(blocker[1])}
        says_so = Says(blocked if blocker else template, values)
        findings.append(Finding(check, Grade.DANGER, says_so, tuple(dict.fromkeys(parts))))
    return Verdict(tuple(findings), sound)


def _blocker(case: Case, water: StoreWater, role: Role) -> tuple[str, ...]:
    """The first part that stops pressure on the nearest way to a device of that role, and the device;
    nothing where none lies behind such a part. What another store can use is that store's."""
    circuit = case.circuit
    used = frozenset[int]().union(*(each.reach for each in store_waters(case)))
    found = walk(circuit, water.ports, any_way)
    behind = [
        joint
        for place in circuit.devices(role)
        if circuit.water(place.node) not in used
        and (joint := Joint(place.part, place.device.port)) in found.steps
    ]
    if not behind:
        return ()
    nearest = min(behind, key=lambda joint: found.steps[joint])
    way = found.way_to(nearest)
    for one, other in itertools.pairwise(way):
        passage = passage_between(circuit, one, other)
        if passage is not None and passage.pressure_way in STOPS:
            return one.part, nearest.part
    return ()
