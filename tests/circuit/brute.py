"""The same questions answered by trying every position of every valve, written on its own.

Nothing here uses the program's passages, plans or graphs: the ways through each kind are told anew
from the drawing format's table, and every answer is a plain enumeration with networkx.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

import networkx as nx

from circuitcheck.drawing.value import Component, Drawing, Joint

Port = tuple[str, str]
Position = frozenset[str]
"""What is shut: part ids, and `id:a` or `id:b` for the leg of a three-port valve."""


@dataclass(frozen=True)
class Way:
    """A way through a part: how pressure takes it, how water takes it, and what may shut it."""

    a: Port
    b: Port
    pressure: bool = True
    back: bool = True
    shut_by: str = ""  # "", "hand", "motor", "thermostat"
    pressure_shut_by: str = ""
    entry: str = ""  # what a position calls it
    secured: bool = False
    emits: bool = False
    householder: bool = False
    pump: str = ""
    heat: str = ""


@dataclass
class Plant:
    """Every way and pipe of a drawing, and the ports of its devices."""

    ways: list[Way] = field(default_factory=list)
    pipes: list[tuple[Port, Port]] = field(default_factory=list)
    vessels: set[Port] = field(default_factory=set)
    safety_valves: set[Port] = field(default_factory=set)
    heats: dict[str, Port] = field(default_factory=dict)


def plant(drawing: Drawing) -> Plant:
    """Tell a drawing anew."""
    found = Plant()
    for part in drawing.components.values():
        _TELL[part.kind.name](found, part, lambda name, part=part: (part.id, name))  # type: ignore[misc]
    for pipe in drawing.pipes.values():
        start, finish = pipe.ends
        if isinstance(start, Joint) and isinstance(finish, Joint):
            found.pipes.append(((start.part, start.port), (finish.part, finish.port)))
    return found


At = Callable[[str], Port]
Tell = Callable[[Plant, Component, At], None]


def _get(part: Component, name: str, default: Any) -> Any:
    return part.data.get(name, default)


def _heat_source(found: Plant, part: Component, at: At) -> None:
    built_in = _get(part, "built_in", [])
    inside = at("inside")
    check = "check_valve" in built_in
    found.ways.append(Way(at("return"), inside, pressure=not check, back=not check))
    pump = part.id if "pump" in built_in else ""
    found.ways.append(Way(inside, at("flow"), back=False, heat=part.id, pump=pump))
    if "bypass" in built_in:
        found.ways.append(Way(at("flow"), inside, pressure=False, back=False))
    if "vessel" in built_in:
        found.vessels.add(at("flow"))
    if "safety_valve" in built_in:
        found.safety_valves.add(at("flow"))
    found.heats[part.id] = at("flow")


def _pump(found: Plant, part: Component, at: At) -> None:
    hand = "hand" if _get(part, "isolating_valves", True) else ""
    found.ways.append(
        Way(at("in"), at("out"), back=False, shut_by=hand, pressure_shut_by=hand, entry=part.id, pump=part.id)
    )


def _motor(found: Plant, part: Component, at: At) -> None:
    found.ways.append(Way(at("in"), at("out"), shut_by="motor", pressure_shut_by="motor", entry=part.id))


def _three_port(found: Plant, part: Component, at: At) -> None:
    for leg in ("a", "b"):
        found.ways.append(
            Way(at("ab"), at(leg), shut_by="motor", pressure_shut_by="motor", entry=f"{part.id}:{leg}")
        )


def _hand(found: Plant, part: Component, at: At) -> None:
    secured = bool(_get(part, "secured", False))
    found.ways.append(
        Way(at("a"), at("b"), shut_by="hand", pressure_shut_by="hand", entry=part.id, secured=secured)
    )


def _dirt(found: Plant, part: Component, at: At) -> None:
    hand = "hand" if _get(part, "isolating_valves", True) else ""
    found.ways.append(Way(at("a"), at("b"), shut_by=hand, pressure_shut_by=hand, entry=part.id))


def _arrow(found: Plant, part: Component, at: At) -> None:
    found.ways.append(Way(at("in"), at("out"), pressure=False, back=False))


def _open(found: Plant, part: Component, at: At) -> None:
    found.ways.append(Way(at("in"), at("out")))


def _tee(found: Plant, part: Component, at: At) -> None:
    for one, two in (("a", "b"), ("a", "branch"), ("b", "branch")):
        found.ways.append(Way(at(one), at(two)))


def _separator(found: Plant, part: Component, at: At) -> None:
    names = ("source_flow", "source_return", "load_flow", "load_return")
    for one, two in itertools.combinations(names, 2):
        found.ways.append(Way(at(one), at(two)))


def _radiator(found: Plant, part: Component, at: At) -> None:
    if _get(part, "thermostatic", True):
        shut_by = "thermostat"
    else:
        shut_by = "hand" if _get(part, "valves", True) else ""
    found.ways.append(
        Way(
            at("flow"),
            at("return"),
            shut_by=shut_by,
            pressure_shut_by=shut_by,
            entry=part.id,
            emits=True,
            householder=bool(_get(part, "hand_wheel", False)),
        )
    )


def _zone(found: Plant, part: Component, at: At) -> None:
    shut_by = "thermostat" if _get(part, "all_thermostatic", True) else ""
    found.ways.append(
        Way(at("flow"), at("return"), shut_by=shut_by, pressure_shut_by="hand", entry=part.id, emits=True)
    )


def _vented_store(found: Plant, part: Component, at: At) -> None:
    found.ways.append(Way(at("coil_flow"), at("coil_return"), emits=True))
    found.ways.append(Way(at("cold"), at("hot")))


def _vessel(found: Plant, part: Component, at: At) -> None:
    found.vessels.add(at("connection"))


def _safety_valve(found: Plant, part: Component, at: At) -> None:
    found.safety_valves.add(at("inlet"))


def _nothing(found: Plant, part: Component, at: At) -> None:
    pass


_TELL: Mapping[str, Tell] = {
    "heat_source": _heat_source,
    "pump": _pump,
    "zone_valve": _motor,
    "three_port_valve": _three_port,
    "isolating_valve": _hand,
    "balancing_valve": _hand,
    "dirt_separator": _dirt,
    "check_valve": _arrow,
    "bypass_valve": _arrow,
    "pressure_reducing_valve": _arrow,
    "strainer": _open,
    "tee": _tee,
    "separator": _separator,
    "radiator": _radiator,
    "heating_zone": _zone,
    "vented_store": _vented_store,
    "expansion_vessel": _vessel,
    "safety_valve": _safety_valve,
    "cap": _nothing,
    "air_vent": _nothing,
    "filling_link": _nothing,
}

KINDS = tuple(_TELL)


def positions(entries: list[str], *, never: Position = frozenset()) -> Iterator[Position]:
    """Every position: any of the entries shut, but never both legs of one three-port valve."""
    free = [entry for entry in entries if entry not in never]
    for shut in itertools.product((False, True), repeat=len(free)):
        position = frozenset(entry for entry, is_shut in zip(free, shut, strict=True) if is_shut)
        if not any(f"{entry[:-2]}:b" in position for entry in position if entry.endswith(":a")):
            yield position


@dataclass(frozen=True)
class CutAnswer:
    """The size of a smallest set, of a smallest without secured valves, and each that does it alone."""

    size: int
    unsecured_size: int | None
    alone: frozenset[str]


def cut_answer(found: Plant, start: Port, goals: set[Port]) -> CutAnswer | None:
    """What shuts `start` off from all goals; None where no position does."""
    shuttable = [way for way in found.ways if way.pressure and way.pressure_shut_by]
    entries = sorted({way.entry for way in shuttable})
    secured = {way.entry for way in shuttable if way.secured}
    proving = [position for position in positions(entries) if not joined(found, start, goals, position)]
    if not proving:
        return None
    unsecured = [len(position) for position in proving if not position & secured]
    return CutAnswer(
        min(map(len, proving)),
        min(unsecured) if unsecured else None,
        frozenset(entry for entry in entries if frozenset({entry}) in proving),
    )


def joined(found: Plant, start: Port, goals: set[Port], position: Position) -> bool:
    graph: nx.Graph[Port] = nx.Graph()
    graph.add_node(start)
    graph.add_nodes_from(goals)
    graph.add_edges_from(found.pipes)
    for way in found.ways:
        if way.pressure and not (way.pressure_shut_by and way.entry in position):
            graph.add_edge(way.a, way.b)
    return bool(nx.node_connected_component(graph, start) & goals)


@dataclass(frozen=True)
class LoopFacts:
    """One simple loop: what shuts it, by whom, and what it takes in."""

    controlled: frozenset[str]
    hands: frozenset[str]
    emits: bool
    householder: bool
    pumps: frozenset[str]
    heats: frozenset[str]


def loops(found: Plant) -> list[LoopFacts]:
    """Every circuit that visits no port twice and has a pump in it, with everything open."""
    graph: nx.DiGraph[object] = nx.DiGraph()
    ways: dict[object, Way | None] = {}
    for number, (a, b) in enumerate(found.pipes):
        middle = ("pipe", number)
        ways[middle] = None
        for u, v in ((a, middle), (middle, b), (b, middle), (middle, a)):
            graph.add_edge(u, v)
    for number, way in enumerate(found.ways):
        middle = ("way", number)
        ways[middle] = way
        graph.add_edge(way.a, middle)
        graph.add_edge(middle, way.b)
        if way.back:
            graph.add_edge(way.b, middle)
            graph.add_edge(middle, way.a)
    facts = []
    for cycle in nx.simple_cycles(graph):
        if len(cycle) <= 2:
            continue
        on = [passed for node in cycle if (passed := ways.get(node)) is not None]
        pumps = frozenset(way.pump for way in on if way.pump)
        if pumps:
            facts.append(
                LoopFacts(
                    frozenset(way.entry for way in on if way.shut_by in ("motor", "thermostat")),
                    frozenset(way.entry for way in on if way.shut_by == "hand" and not way.emits),
                    any(way.emits for way in on),
                    any(way.householder for way in on),
                    pumps,
                    frozenset(way.heat for way in on if way.heat),
                )
            )
    return facts


def counted(all_loops: list[LoopFacts], pump: str, heat: str) -> list[frozenset[str]]:
    """The loops of that pump and heat source that count as a way round, by what shuts each."""
    own = [loop for loop in all_loops if pump in loop.pumps and heat in loop.heats]
    if not own:
        return []
    common = frozenset.intersection(*(loop.hands for loop in own))
    return [loop.controlled for loop in own if not loop.householder and (loop.emits or loop.hands <= common)]


def smallest_without(
    ways_round: list[frozenset[str]], entries: list[str], never: Position = frozenset()
) -> int | None:
    """The size of a smallest position that shuts every way round; None where each leaves one."""
    sizes = [
        len(position)
        for position in positions(entries, never=never)
        if all(way & position for way in ways_round)
    ]
    return min(sizes, default=None)


def controlled_entries(found: Plant) -> list[str]:
    """Every motor and thermostat passage."""
    return sorted({way.entry for way in found.ways if way.shut_by in ("motor", "thermostat")})


def motors_on_the_water_of(found: Plant, heat: str) -> set[str]:
    """The motor passages on all water that can meet the heat source's, whichever way."""
    graph: nx.Graph[Port] = nx.Graph()
    graph.add_edges_from(found.pipes)
    graph.add_edges_from((way.a, way.b) for way in found.ways)
    water = nx.node_connected_component(graph, found.heats[heat])
    return {way.entry for way in found.ways if way.shut_by == "motor" and way.a in water}
