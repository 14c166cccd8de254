"""Random circuits small enough to try every position of every valve."""

from __future__ import annotations

from typing import Any

from hypothesis import strategies as st

from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.parts.catalogue import component_kinds

SHUTTABLE = ("zone_valve", "isolating_valve", "balancing_valve", "radiator", "heating_zone", "dirt_separator")
ARROWS = ("check_valve", "bypass_valve", "pressure_reducing_valve")
BUILT_IN = ("pump", "vessel", "safety_valve", "bypass", "check_valve")


def _data(draw: st.DrawFn, kind: str) -> dict[str, Any]:
    yes = st.booleans()
    if kind == "heat_source":
        return {"built_in": draw(st.lists(st.sampled_from(BUILT_IN), unique=True, max_size=2))}
    if kind in ("pump", "dirt_separator"):
        return {"isolating_valves": draw(yes)}
    if kind == "isolating_valve":
        return {"secured": draw(yes)}
    if kind == "radiator":
        return {
            "thermostatic": draw(yes),
            "valves": draw(yes),
            "hand_wheel": draw(st.sampled_from([False] * 4 + [True])),
        }
    if kind == "heating_zone":
        return {"all_thermostatic": draw(yes)}
    return {}


@st.composite
def circuits(draw: st.DrawFn, *, most_shuttable: int = 7) -> Drawing:
    """A heat source or two, pumps, vessels, every kind of passage and tees, joined at random."""
    kinds = ["heat_source"] * draw(st.integers(1, 2))
    kinds += ["pump"] * draw(st.integers(0, 2))
    kinds += ["expansion_vessel"] * draw(st.integers(0, 2))
    kinds += ["safety_valve"] * draw(st.integers(0, 1))
    kinds += ["three_port_valve"] * draw(st.integers(0, 3))
    kinds += draw(st.lists(st.sampled_from(SHUTTABLE), max_size=most_shuttable - 3))
    kinds += draw(st.lists(st.sampled_from(ARROWS), max_size=2))
    kinds += draw(st.lists(st.sampled_from(("strainer", "separator", "vented_store", "cap")), max_size=2))
    kinds += ["tee"] * draw(st.integers(0, 7))
    components = {}
    for number, kind in enumerate(kinds):
        id = f"{kind[:2]}{number}"
        components[id] = Component(id, component_kinds()[kind], data=_data(draw, kind))
    ports = [
        Joint(part.id, port.name)
        for part in components.values()
        for port in part.kind.ports
        if port.name not in ("relief", "outlet", "cold", "hot")
    ]
    shuffled = draw(st.permutations(ports))
    left_free = draw(st.sampled_from([0, 0, 0, 1, 2]))
    usable = shuffled[left_free:]
    pipes = {}
    for number in range(len(usable) // 2):
        pipes[f"p{number}"] = Pipe(f"p{number}", (usable[2 * number], usable[2 * number + 1]))
    return Drawing(components=components, pipes=pipes)


INLINE = {
    "pump": ("in", "out"),
    "zone_valve": ("in", "out"),
    "isolating_valve": ("a", "b"),
    "balancing_valve": ("a", "b"),
    "dirt_separator": ("a", "b"),
    "strainer": ("in", "out"),
    "check_valve": ("in", "out"),
    "bypass_valve": ("in", "out"),
    "radiator": ("flow", "return"),
    "heating_zone": ("flow", "return"),
    "vented_store": ("coil_flow", "coil_return"),
}
ON_A_RUNG = ["zone_valve", "radiator", "heating_zone", "vented_store", "bypass_valve"] * 3 + [
    "isolating_valve",
    "balancing_valve",
    "check_valve",
    "pump",
]
ON_A_MAIN = ("pump", "pump", "isolating_valve", "dirt_separator", "strainer", "zone_valve", "check_valve")


class _Maker:
    """Joins parts one after another."""

    def __init__(self, draw: st.DrawFn) -> None:
        self.draw = draw
        self.components: dict[str, Component] = {}
        self.joins: list[tuple[Joint, Joint]] = []

    def part(self, kind: str) -> str:
        id = f"{kind[:2]}{len(self.components)}"
        self.components[id] = Component(id, component_kinds()[kind], data=_data(self.draw, kind))
        return id

    def inline(self, start: Joint, kind: str) -> Joint:
        id = self.part(kind)
        first, last = INLINE[kind]
        if kind in ("bypass_valve", "check_valve", "pump") and self.draw(st.integers(0, 5)) == 0:
            first, last = last, first
        self.joins.append((start, Joint(id, first)))
        return Joint(id, last)

    def tee(self, start: Joint) -> tuple[Joint, Joint]:
        id = self.part("tee")
        self.joins.append((start, Joint(id, "a")))
        return Joint(id, "b"), Joint(id, "branch")

    def hang(self, start: Joint, kind: str, port: str) -> Joint:
        onward, branch = self.tee(start)
        if self.draw(st.booleans()):
            branch = self.inline(
                branch, self.draw(st.sampled_from(("isolating_valve", "check_valve", "strainer")))
            )
        self.joins.append((branch, Joint(self.part(kind), port)))
        return onward

    def main(self, start: Joint) -> Joint:
        for kind in self.draw(st.lists(st.sampled_from(ON_A_MAIN), max_size=2)):
            start = self.inline(start, kind)
        hung = self.draw(st.sampled_from((None, None, "expansion_vessel", "safety_valve")))
        if hung:
            start = self.hang(start, hung, "connection" if hung == "expansion_vessel" else "inlet")
        return start


@st.composite
def plants(draw: st.DrawFn) -> Drawing:
    """A heat source with a flow and a return main and rungs between them, as plants are, with
    a mistake or two: parts the wrong way round, and pipes that change places."""
    maker = _Maker(draw)
    heat = maker.part("heat_source")
    flow, back = maker.main(Joint(heat, "flow")), Joint(heat, "return")
    rungs = draw(st.integers(1, 4))
    for rung in range(rungs):
        last = rung == rungs - 1
        if last:
            branch = flow
        elif draw(st.integers(0, 3)) == 0:
            valve = maker.part("three_port_valve")
            maker.joins.append((flow, Joint(valve, "ab")))
            branch, flow = Joint(valve, "a"), Joint(valve, "b")
        else:
            flow, branch = maker.tee(flow)
        for kind in draw(st.lists(st.sampled_from(ON_A_RUNG), min_size=1, max_size=2)):
            branch = maker.inline(branch, kind)
        if last:
            maker.joins.append((branch, back))
        else:
            tee = maker.part("tee")
            maker.joins += [(branch, Joint(tee, "branch")), (Joint(tee, "a"), back)]
            back = maker.main(Joint(tee, "b"))
        if not last and draw(st.booleans()):
            flow = maker.main(flow)
    joins = list(maker.joins)
    for _ in range(draw(st.sampled_from((0, 0, 0, 1, 2)))):
        one, two = draw(st.integers(0, len(joins) - 1)), draw(st.integers(0, len(joins) - 1))
        if one != two:
            joins[one], joins[two] = (joins[one][0], joins[two][1]), (joins[two][0], joins[one][1])
    pipes = {f"p{n}": Pipe(f"p{n}", ends) for n, ends in enumerate(joins)}
    return Drawing(components=maker.components, pipes=pipes)
