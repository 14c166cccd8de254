"""A synthetic plant of any size, shaped as houses are: mains, rungs, and valves on the rungs."""

from __future__ import annotations

from typing import Any

from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.parts.catalogue import component_kinds

End = tuple[str, str]


def plant(components: int) -> Drawing:
    """A sealed plant of about so many components, four in ten of them shuttable: one heat source
    with vessel, safety valve, pump and bypass, and rungs of a valve and a radiator."""
    parts: dict[str, Component] = {}
    pipes: dict[str, Pipe] = {}

    def part(kind: str, **data: Any) -> str:
        id = f"c{len(parts)}"
        parts[id] = Component(id, component_kinds()[kind], data=data)
        return id

    def pipe(start: End, finish: End) -> None:
        id = f"p{len(pipes)}"
        pipes[id] = Pipe(id, (Joint(*start), Joint(*finish)))

    heat, safety, vessel = part("heat_source", built_in=[]), part("safety_valve"), part("expansion_vessel")
    pump, bypass = part("pump", isolating_valves=True), part("bypass_valve")
    tees = [part("tee") for _ in range(4)]
    pipe((heat, "flow"), (tees[0], "a"))
    pipe((tees[0], "branch"), (safety, "inlet"))
    pipe((tees[0], "b"), (pump, "in"))
    pipe((pump, "out"), (tees[1], "a"))
    pipe((tees[1], "branch"), (bypass, "in"))
    pipe((bypass, "out"), (tees[2], "branch"))
    pipe((tees[2], "b"), (tees[3], "a"))
    pipe((tees[3], "branch"), (vessel, "connection"))
    pipe((tees[3], "b"), (heat, "return"))
    flow: End = (tees[1], "b")
    back: End = (tees[2], "a")
    rung = 0
    while len(parts) < components - 5:
        leave, come = part("tee"), part("tee")
        kind, inlet, outlet = (("isolating_valve", "a", "b"), ("zone_valve", "in", "out"))[rung % 2]
        valve, radiator = part(kind), part("radiator")
        pipe(flow, (leave, "a"))
        pipe((leave, "branch"), (valve, inlet))
        pipe((valve, outlet), (radiator, "flow"))
        pipe((radiator, "return"), (come, "branch"))
        pipe((come, "a"), back)
        flow, back = (leave, "b"), (come, "b")
        rung += 1
    zone = part("heating_zone")
    pipe(flow, (zone, "flow"))
    pipe((zone, "return"), back)
    return Drawing(components=parts, pipes=pipes)


def with_valve_before_vessel(drawing: Drawing) -> Drawing:
    """The same plant with an isolating valve between the vessel's tee and the heat source."""
    valve = Component("iv", component_kinds()["isolating_valve"])
    pipes = dict(drawing.pipes)
    back = pipes[drawing.joined[Joint("c0", "return")]]
    start, finish = back.ends
    pipes[back.id] = Pipe(back.id, (start, Joint("iv", "a")))
    pipes["extra"] = Pipe("extra", (Joint("iv", "b"), finish))
    parts = {**drawing.components, "iv": valve}
    return Drawing(components=parts, pipes=pipes)
