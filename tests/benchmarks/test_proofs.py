"""The proofs from the Drawing, joining included, beside one pass of a compiled library.

The yardstick is rustworkx's connected components over the same graph: ports, pipes and passages.
Each line is a ratio taken in one run: pytest -n 0 -s tests/benchmarks
"""

from __future__ import annotations

import gc
import time
from collections.abc import Callable

import pytest
import rustworkx

from circuitcheck.analysis import analyse
from circuitcheck.checks.case import Case
from circuitcheck.circuit.circulation import HeatRound
from circuitcheck.circuit.isolation import cut_off
from circuitcheck.circuit.joining import Circuit
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.parts.kind import Role
from tests.benchmarks.synthetic import plant, with_valve_before_vessel

SIZES = (60, 1_000, 10_000)


def best_s(work: Callable[[], object], tries: int = 7) -> float:
    """The least time of several tries, in seconds of the processor: what the work needs when nothing disturbs it."""
    times = []
    for _ in range(tries):
        start = time.process_time()
        work()
        times.append(time.process_time() - start)
    return min(times)


def yardstick(drawing: Drawing) -> Callable[[], object]:
    """Connected components of the drawing's ports, already laid out for the compiled library."""
    number: dict[tuple[str, str], int] = {}
    edges = []
    for pipe in drawing.pipes.values():
        a, b = (number.setdefault((end.part, end.port), len(number)) for end in pipe.joints)
        edges.append((a, b, None))
    for part in drawing.components.values():
        for passage in part.kind.passages(part.data):
            a, b = (number.setdefault(Joint(part.id, port), len(number)) for port in (passage.a, passage.b))
            edges.append((a, b, None))
    graph: rustworkx.PyGraph[int, None] = rustworkx.PyGraph()
    graph.add_nodes_from(range(len(number)))
    graph.add_edges_from(edges)
    return lambda: rustworkx.connected_components(graph)


def cut_offs(drawing: Drawing) -> object:
    """Vessel and safety valve, every heat source."""
    circuit = Circuit(drawing)
    return [
        cut_off(
            circuit,
            circuit.water(heat.other),
            [circuit.water(place.node) for place in circuit.devices(role)],
        )
        for role in (Role.HOLDS_EXPANSION, Role.RELIEVES_HEATING)
        for heat in circuit.devices(Role.HEATS)
    ]


def way_round(drawing: Drawing) -> object:
    """The way round when the zones shut, every heat source."""
    case = Case(drawing)
    return [HeatRound(case.flow, heat.part).shut_in() for heat in case.circuit.devices(Role.HEATS)]


@pytest.mark.parametrize("size", SIZES)
def test_proofs(size: int) -> None:
    drawing = plant(size)
    faulty = with_valve_before_vessel(drawing)
    work_of_limit = yardstick(drawing)
    analyse(plant(60))  # whatever is loaded and kept once, whichever drawing it is
    gc.collect()
    gc.freeze()  # as after a file is opened: what was there before is looked through no more
    limit = best_s(work_of_limit, tries=20)
    for name, work in (
        ("joining", lambda: Circuit(drawing)),
        ("both cut-offs, sound", lambda: cut_offs(drawing)),
        ("both cut-offs, a valve before the vessel", lambda: cut_offs(faulty)),
        ("way round", lambda: way_round(drawing)),
        ("all checks with messages", lambda: analyse(drawing)),
    ):
        took = best_s(work, tries=5)
        print(f"{size:>6} components  {name:<42} {took * 1e3:9.2f} ms  {took / limit:8.1f} x yardstick")
    gc.unfreeze()
