"""The questions of the supply checks answered by trying every way, written on its own.

The ways through each kind are told anew from the drawing format's table; nothing of the program's
passages, roles or walks is used. Every answer is an enumeration of simple paths; only the fewest check valves on
any way are a shortest path, since in circuits of many tees the ways are many and the least of them is the same.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import networkx as nx
from hypothesis import strategies as st

from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.parts.catalogue import component_kinds

Port = tuple[str, str]

BOTH = {
    "tee": (("a", "b"), ("a", "branch"), ("b", "branch")),
    "isolating_valve": (("a", "b"),),
    "pump": (("in", "out"),),
    "radiator": (("flow", "return"),),
    "heat_source": (("flow", "return"),),
}
ONE = {
    "check_valve": (("in", "out"),),
    "pressure_reducing_valve": (("in", "out"),),
    "blending_valve": (("hot", "mixed"), ("cold", "mixed")),
    "inlet_group": (("in", "balanced_cold"), ("balanced_cold", "out")),
    "combination_heat_source": (),
}
STORE_PORTS = {
    "unvented_store": ("cold", "hot", "relief", "secondary_return"),
    "vented_store": ("cold", "hot"),
}
CHECKED = {("check_valve", "in", "out"), ("inlet_group", "balanced_cold", "out")}


@dataclass
class Told:
    """Every directed way, with what it is: (kind, part) of the passage, and whether it is an arrow."""

    drawing: Drawing
    graph: nx.MultiDiGraph[Port] = field(default_factory=nx.MultiDiGraph)


def tell(drawing: Drawing, *, outside: bool = False) -> Told:
    """The drawing as water is drawn; `outside` leaves stores and heaters out."""
    told = Told(drawing)
    graph = told.graph
    for pipe in drawing.pipes.values():
        one, two = pipe.ends
        if isinstance(one, Joint) and isinstance(two, Joint):
            a, b = (one.part, one.port), (two.part, two.port)
            graph.add_edge(a, b, what=("pipe", pipe.id))
            graph.add_edge(b, a, what=("pipe", pipe.id))
    for part in drawing.components.values():
        _tell_part(graph, part, outside=outside)
    return told


def _tell_part(graph: nx.MultiDiGraph[Port], part: Component, *, outside: bool) -> None:
    kind, id = part.kind.name, part.id
    for port in part.kind.ports:
        graph.add_node((id, port.name))
    for a, b in BOTH.get(kind, ()):
        graph.add_edge((id, a), (id, b), what=(kind, id))
        graph.add_edge((id, b), (id, a), what=(kind, id))
    for a, b in ONE.get(kind, ()):
        graph.add_edge((id, a), (id, b), what=(f"{kind}:{a}", id))
    if kind == "combination_heat_source":
        graph.add_edge((id, "return"), (id, "flow"), what=(kind, id))
        graph.add_edge((id, "flow"), (id, "return"), what=(kind, id))
        if not outside:
            graph.add_edge((id, "cold"), (id, "hot"), what=(kind, id))
    if kind in STORE_PORTS:
        graph.add_edge((id, "coil_flow"), (id, "coil_return"), what=(kind, id))
        graph.add_edge((id, "coil_return"), (id, "coil_flow"), what=(kind, id))
        if not outside:
            for a, b in itertools.permutations(STORE_PORTS[kind], 2):
                if b != "cold":
                    graph.add_edge((id, a), (id, b), what=(kind, id))


def paths(
    graph: nx.MultiDiGraph[Port], start: Port, goal: Port
) -> Iterator[list[tuple[Port, Port, dict[str, Any]]]]:
    """Every simple path from start to goal, as edges with their data; of parallel edges each in turn."""
    if start == goal:
        return
    for ports in {tuple(path) for path in nx.all_simple_paths(graph, start, goal)}:
        steps = list(itertools.pairwise(ports))
        for chosen in itertools.product(*(graph[a][b].values() for a, b in steps)):
            yield [(a, b, what) for (a, b), what in zip(steps, chosen, strict=True)]


def hot_ports(part: Component) -> list[Port]:
    """Where hot water comes from."""
    if part.kind.name in STORE_PORTS:
        return [(part.id, port) for port in STORE_PORTS[part.kind.name] if port != "cold"]
    return [(part.id, "hot")] if part.kind.name == "combination_heat_source" else []


def unblended(drawing: Drawing, givers: list[Component], goal: Port, limit_c: float) -> bool:
    """Whether some way from a giver to the goal has no blending valve, entered by its hot inlet, that
    is set at or under the limit."""
    told = tell(drawing)
    for giver in givers:
        for start in hot_ports(giver):
            for path in paths(told.graph, start, goal):
                valves = [a[0] for a, _, what in path if what["what"][0] == "blending_valve:hot"]
                if all(drawing.components[id].data["set_temperature_c"] > limit_c for id in valves):
                    return True
            if start == goal:
                return True
    return False


def fewest_checks(drawing: Drawing, start: Port, goals: set[Port]) -> int | None:
    """The fewest check valves against the water on any way from start to a goal; None for no way."""
    told = tell(drawing, outside=True)
    graph: nx.MultiDiGraph[Port] = nx.MultiDiGraph()
    for a, b, data in told.graph.edges(data=True):
        kind, _, port = data["what"][0].partition(":")
        graph.add_edge(a, b, checks=0)
        if port:
            graph.add_edge(b, a, checks=int((kind, port, b[1]) in CHECKED))
    for part in drawing.components.values():
        ports = STORE_PORTS.get(part.kind.name, ())
        if part.kind.name == "combination_heat_source":
            ports = ("cold", "hot")
        for a_port, b_port in itertools.permutations(ports, 2):
            graph.add_edge((part.id, a_port), (part.id, b_port), checks=0)
        if part.kind.name == "filling_link" and part.data["left_connected"] and not part.data["double_check"]:
            for ends in (("supply", "system"), ("system", "supply")):
                graph.add_edge((part.id, ends[0]), (part.id, ends[1]), checks=0)
    if start not in graph:
        return None
    fewest: dict[Port, float] = nx.single_source_dijkstra_path_length(graph, start, weight="checks")
    return min((int(fewest[goal]) for goal in goals & fewest.keys()), default=None)


def cold_taps(drawing: Drawing, store: str) -> set[str] | None:
    """The outlets and blending valves whose cold is drawn between a store and its check valve; None
    where no check valve stands before it."""
    told = tell(drawing, outside=True)
    arrows = [(a, b, data["what"]) for a, b, data in told.graph.edges(data=True) if ":" in data["what"][0]]
    open_ways: nx.Graph[Port] = nx.Graph()
    open_ways.add_nodes_from(told.graph)
    open_ways.add_edges_from(
        (a, b) for a, b, data in told.graph.edges(data=True) if ":" not in data["what"][0]
    )
    between = nx.node_connected_component(open_ways, (store, "cold"))
    checks = [(a, b) for a, b, what in arrows if (what[0].partition(":")[0], a[1], b[1]) in CHECKED]
    mains = [(part.id, "outlet") for part in drawing.components.values() if part.kind.name == "cold_main"]
    whole = tell(drawing).graph
    if not any((store, "cold") in nx.descendants(whole, main) for main in mains):
        return None
    unchecked = told.graph.copy()
    unchecked.remove_edges_from([(a, b) for a, b in checks])
    for main in mains:
        if ({main} | nx.descendants(unchecked, main)) & between:
            return None
    drawn = {(store, "cold")} | nx.descendants(told.graph, (store, "cold"))
    return {
        id
        for id, port in drawn
        if port == "cold" and drawing.components[id].kind.name in ("outlet", "blending_valve")
    }


INLINE = {
    "check_valve": ("in", "out"),
    "isolating_valve": ("a", "b"),
    "pump": ("in", "out"),
    "pressure_reducing_valve": ("in", "out"),
    "blending_valve": ("hot", "mixed"),
}


def _data(draw: st.DrawFn, kind: str) -> dict[str, object]:
    if kind == "blending_valve":
        return {"set_temperature_c": draw(st.sampled_from((40, 48, 55, 60, 70)))}
    if kind in STORE_PORTS:
        return {"thermostat_c": draw(st.sampled_from((45, 48, 60, 80, 85)))}
    if kind == "outlet":
        return {"fitting": draw(st.sampled_from(("bath", "bath", "sink")))}
    if kind == "filling_link":
        return {"left_connected": draw(st.booleans()), "double_check": draw(st.booleans())}
    return {}


@st.composite
def random_supplies(draw: st.DrawFn) -> Drawing:
    """Mains, stores, heaters, outlets and what stands between them, joined at random; the ports that
    belong together are drawn together more often than not."""
    kinds = draw(st.lists(st.sampled_from(("unvented_store", "unvented_store", "vented_store",
        "combination_heat_source")), min_size=1, max_size=2))  # fmt: skip
    kinds += ["cold_main"] * draw(st.integers(0, 2)) + ["outlet"] * draw(st.integers(1, 3))
    kinds += draw(
        st.lists(st.sampled_from((*INLINE, "check_valve", "blending_valve", "inlet_group")), max_size=4)
    )
    kinds += draw(st.lists(st.sampled_from(("heat_source", "radiator", "filling_link")), max_size=2))
    kinds += ["tee"] * draw(st.integers(0, 4))
    components = {}
    for number, kind in enumerate(kinds):
        id = f"{kind[:2]}{number}"
        components[id] = Component(id, component_kinds()[kind], data=_data(draw, kind))
    left_out = {"relief", "relief_outlet", "coil_flow", "coil_return"}
    ports = [
        Joint(part.id, port.name)
        for part in components.values()
        for port in part.kind.ports
        if port.name not in left_out or draw(st.integers(0, 4)) == 0
    ]
    givers = {Joint(*port) for part in components.values() for port in hot_ports(part)}
    first = [joint for joint in ports if joint in givers or joint.port in ("outlet", "out", "mixed")]
    rest = [joint for joint in ports if joint not in first]
    pairs = list(zip(draw(st.permutations(first)), draw(st.permutations(rest)), strict=False))
    used = {joint for pair in pairs for joint in pair}
    others = draw(st.permutations([joint for joint in ports if joint not in used]))
    pairs += list(zip(others[::2], others[1::2], strict=False))
    pipes = {f"p{number}": Pipe(f"p{number}", pair) for number, pair in enumerate(pairs)}
    return Drawing(components=components, pipes=pipes, design={"dwelling": "new"})


FEEDS = ("check_valve", "pressure_reducing_valve", "isolating_valve")


@st.composite
def fed_supplies(draw: st.DrawFn) -> Drawing:
    """A main that feeds a store by pipes with valves and branches, some the wrong way round; taps and
    heating water joined to the branches and to the hot pipe, by valves or none; then one or two pipes
    change places."""
    components: dict[str, Component] = {}
    joins: list[tuple[Joint, Joint]] = []

    def part(kind: str, **data: object) -> str:
        id = f"{kind[:2]}{len(components)}"
        components[id] = Component(id, component_kinds()[kind], data=data)
        return id

    def through(start: Joint, most: int) -> Joint:
        for kind in draw(st.lists(st.sampled_from(FEEDS), max_size=most)):
            id = part(kind)
            first, last = INLINE[kind]
            if draw(st.integers(0, 6)) == 0:
                first, last = last, first
            joins.append((start, Joint(id, first)))
            start = Joint(id, last)
        return start

    def branch(start: Joint) -> Joint:
        tee = part("tee")
        joins.append((start, Joint(tee, "a")))
        off = through(Joint(tee, "branch"), 2)
        goal = draw(st.sampled_from(("outlet.cold", "outlet.cold", "outlet.hot", "heating", "blend")))
        if goal.startswith("outlet"):
            joins.append((off, Joint(part("outlet", fitting="bath"), goal.partition(".")[2])))
        elif goal == "heating":
            heat, rad, back = part("heat_source"), part("radiator"), part("tee")
            joins.append((Joint(heat, "flow"), Joint(rad, "flow")))
            joins.append((Joint(rad, "return"), Joint(back, "a")))
            joins.append((Joint(back, "b"), Joint(heat, "return")))
            joins.append((off, Joint(back, "branch")))
        else:
            blend = part("blending_valve", set_temperature_c=draw(st.sampled_from((48, 60, 70))))
            joins.append((off, Joint(blend, draw(st.sampled_from(("hot", "cold"))))))
            joins.append((Joint(blend, "mixed"), Joint(part("outlet", fitting="bath"), "hot")))
        return Joint(tee, "b")

    start = through(Joint(part("cold_main"), "outlet"), 1)
    for _ in range(draw(st.integers(0, 2))):
        start = through(branch(start), 2)
    store = part("unvented_store", thermostat_c=draw(st.sampled_from((48, 60, 85))))
    joins.append((start, Joint(store, "cold")))
    start = Joint(store, "hot")
    for _ in range(draw(st.integers(0, 2))):
        start = branch(start)
    joins.append((start, Joint(part("outlet", fitting="bath"), "hot")))
    for _ in range(draw(st.sampled_from((0, 0, 0, 1, 2)))):
        one, two = draw(st.integers(0, len(joins) - 1)), draw(st.integers(0, len(joins) - 1))
        if one != two:
            joins[one], joins[two] = (joins[one][0], joins[two][1]), (joins[two][0], joins[one][1])
    pipes = {f"p{number}": Pipe(f"p{number}", ends) for number, ends in enumerate(joins)}
    return Drawing(components=components, pipes=pipes, design={"dwelling": "new"})


@st.composite
def parted_waters(draw: st.DrawFn) -> Drawing:
    """The water of a heating ring and that of a main with a tap, joined by several ways through tees: most with check
    valves that keep them apart, some of them the wrong way round."""
    given = {"hs": "heat_source", "ra": "radiator", "cm": "cold_main", "ou": "outlet", "t0": "tee", "t1": "tee",
        "t2": "tee", "t3": "tee"}  # fmt: skip
    middle = [f"m{number}" for number in range(draw(st.integers(0, 2)))]
    kinds = {**given, **dict.fromkeys(middle, "tee")}
    joins = [(Joint(*one.split(".")), Joint(*other.split("."))) for one, other in (
        ("hs.flow", "ra.flow"), ("ra.return", "t0.a"), ("t0.b", "t1.a"), ("t1.b", "hs.return"),
        ("cm.outlet", "t2.a"), ("t2.b", "t3.a"), ("t3.b", "ou.cold"),
    )]  # fmt: skip
    # From the drinking water on, so that most valves face the way that holds the heating water back.
    free = [Joint("t2", "branch"), Joint("t3", "branch")]
    free += [Joint(tee, port) for tee in middle for port in ("a", "b", "branch")]
    free += [Joint("t0", "branch"), Joint("t1", "branch")]
    is_careless = draw(st.booleans())
    places = draw(st.permutations(range(len(free))))
    for pair in zip(places[::2], places[1::2], strict=False):
        here, end = (free[place] for place in sorted(pair))
        for kind in draw(
            st.lists(st.sampled_from(("check_valve", "check_valve", "isolating_valve")), max_size=4)
        ):
            id = f"{kind[:2]}{len(kinds)}"
            kinds[id] = kind
            first, last = INLINE[kind] if not is_careless or draw(st.integers(0, 2)) else INLINE[kind][::-1]
            joins.append((here, Joint(id, first)))
            here = Joint(id, last)
        joins.append((here, end))
    components = {id: Component(id, component_kinds()[kind]) for id, kind in kinds.items()}
    pipes = {f"p{number}": Pipe(f"p{number}", ends) for number, ends in enumerate(joins)}
    return Drawing(components=components, pipes=pipes, design={"dwelling": "new"})


def parts_of(drawing: Drawing, *kinds: str) -> Iterator[Component]:
    """The parts of these kinds."""
    return (part for part in drawing.components.values() if part.kind.name in kinds)
