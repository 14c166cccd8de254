"""What water can be on its way round through a heat source while some passages are shut."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import cast

from circuitcheck.circuit.joining import Circuit, Placed
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Passage, Way


@dataclass(frozen=True, slots=True)
class Round:
    """The pipes and parts that lie on some way round, the heat source among them; none where there is none."""

    pipes: tuple[str, ...] = ()
    parts: tuple[str, ...] = ()


def circulating(circuit: Circuit, heat: Placed, shut: frozenset[str]) -> Round:
    """What lies on some way from a heat source's flow back to its return that passes no port twice.

    `shut` are motor passages as situations name them (`zv1`, `tv1:a`). Thermostatic heads, and what any
    householder may shut by hand, are shut too; other hand valves are open. Which way arrows point is
    left out.
    """
    import networkx as nx

    out, back = Joint(heat.part, heat.device.other), Joint(heat.part, "return")
    graph: nx.Graph[Joint] = nx.Graph()
    graph.add_edges_from(_pipes(circuit))
    graph.add_edges_from(_passages(circuit, heat.part, shut))
    if out not in graph or back not in graph or not nx.has_path(graph, out, back):
        return Round()
    graph.add_edge(out, back)
    # The stubs say lists of sets; each is one set of vertices.
    blocks = cast("Iterator[set[Joint]]", nx.biconnected_components(graph))
    block = next(each for each in blocks if out in each and back in each)
    drawing = circuit.drawing
    pipes = (
        id for id, pipe in drawing.pipes.items() if len(pipe.joints) == 2 and block.issuperset(pipe.joints)
    )
    ports: dict[str, int] = {}
    for joint in block:
        ports[joint.part] = ports.get(joint.part, 0) + 1
    return Round(tuple(pipes), tuple(id for id in drawing.components if ports.get(id, 0) > 1))


def _pipes(circuit: Circuit) -> Iterator[tuple[Joint, Joint]]:
    for pipe in circuit.drawing.pipes.values():
        if len(pipe.joints) == 2:
            yield pipe.joints[0], pipe.joints[1]


def _passages(circuit: Circuit, heat: str, shut: frozenset[str]) -> Iterator[tuple[Joint, Joint]]:
    for part, plan in circuit.plans.items():
        if part == heat:
            continue
        for passage in plan.passages:
            if _is_open(part, passage, shut):
                yield Joint(part, passage.a), Joint(part, passage.b)


def _is_open(part: str, passage: Passage, shut: frozenset[str]) -> bool:
    if passage.gap or passage.way is Way.THERMOSTAT or passage.householder:
        return False
    label = f"{part}:{passage.leg}" if passage.leg else part
    return not (passage.way is Way.MOTOR and label in shut)
