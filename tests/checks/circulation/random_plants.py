"""Random sound plants: heat sources side by side, a separator or none, and what takes their heat, all joined
the right way."""

from __future__ import annotations

from hypothesis import strategies as st

from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.parts.catalogue import component_kinds

TAKERS = {
    "radiator": ("flow", "return"),
    "heating_zone": ("flow", "return"),
    "vented_store": ("coil_flow", "coil_return"),
}
HARMLESS = {"isolating_valve": ("a", "b"), "zone_valve": ("in", "out"), "strainer": ("in", "out")}
ARROWS = {"pump": ("in", "out"), "check_valve": ("in", "out")}
ENDS = TAKERS | HARMLESS | ARROWS


class Maker:
    """A plant as it grows."""

    def __init__(self, draw: st.DrawFn) -> None:
        self.draw = draw
        self.parts: dict[str, Component] = {}
        self.joins: list[tuple[Joint, Joint]] = []

    def part(self, kind: str, built_in: tuple[str, ...] = ()) -> str:
        id = f"{kind}{len(self.parts)}"
        data = {"built_in": built_in} if built_in else {}
        self.parts[id] = Component(id, component_kinds()[kind], data=data)
        return id

    def with_the_water(self, start: Joint, *kinds: str) -> Joint:
        """These one after another, the way the water goes."""
        for kind in kinds:
            id = self.part(kind)
            self.joins.append((start, Joint(id, ENDS[kind][0])))
            start = Joint(id, ENDS[kind][1])
        return start

    def some(self, *kinds: str, most: int = 1) -> list[str]:
        return self.draw(st.lists(st.sampled_from(kinds), max_size=most))

    def side_by_side(self, pairs: list[tuple[Joint, Joint]]) -> tuple[Joint, Joint]:
        """Flows and returns joined by tees to one flow and one return."""
        flow, back = pairs[0]
        for one, other in pairs[1:]:
            for start, added in ((flow, one), (back, other)):
                tee = self.part("tee")
                self.joins += [(start, Joint(tee, "a")), (added, Joint(tee, "branch"))]
                flow, back = (Joint(tee, "b"), back) if start == flow else (flow, Joint(tee, "b"))
        return flow, back

    def source(self, *, pump: bool) -> tuple[Joint, Joint]:
        inside = [each for each in ("check_valve", "bypass") if self.draw(st.booleans())]
        heat = self.part("heat_source", tuple((*inside, "pump") if pump else inside))
        flow = self.with_the_water(Joint(heat, "flow"), *self.some(*HARMLESS, "check_valve"))
        return flow, Joint(heat, "return")

    def takers(self, *, pumps: bool) -> tuple[Joint, Joint]:
        """One to three that take heat, side by side; each with its pump or none."""
        pairs = []
        for kind in self.draw(st.lists(st.sampled_from(list(TAKERS)), min_size=1, max_size=3)):
            arrows = ["pump", *self.some("check_valve")] if pumps else []
            before = [*arrows, *self.some(*HARMLESS)]
            first = self.part(before[0]) if before else self.part(kind)
            begun = before[0] if before else kind
            last = self.with_the_water(Joint(first, ENDS[begun][1]), *before[1:], *([kind] if before else []))
            pairs.append((Joint(first, ENDS[begun][0]), last))
        return self.side_by_side(pairs)

    def drawing(self) -> Drawing:
        pipes = {f"p{number}": Pipe(f"p{number}", ends) for number, ends in enumerate(self.joins)}
        return Drawing(components=self.parts, pipes=pipes)


@st.composite
def sound_plants(draw: st.DrawFn) -> Drawing:
    """A plant with nothing changed over. Pumps stand in the heat source, beside it, or before each taker."""
    maker = Maker(draw)
    moved_by = draw(st.sampled_from(("inside", "inside", "in flow", "in return", "before each")))
    count = draw(st.integers(1, 2))
    flow, back = maker.side_by_side([maker.source(pump=moved_by == "inside") for _ in range(count)])
    if moved_by == "in flow":
        flow = maker.with_the_water(flow, "pump")
    if moved_by == "in return":
        pump = maker.part("pump")
        maker.joins.append((back, Joint(pump, "out")))
        back = Joint(pump, "in")
    if draw(st.booleans()) and moved_by != "before each":
        parting = maker.part("separator")
        pairs = [(Joint(parting, "source_flow"), Joint(parting, "source_return"))]
        if draw(st.integers(0, 3)) == 0:
            pairs.append(maker.takers(pumps=False))
        one, other = maker.side_by_side(pairs)
        maker.joins += [(flow, one), (back, other)]
        flow, back = Joint(parting, "load_flow"), Joint(parting, "load_return")
        moved_by = "before each"
    one, other = maker.takers(pumps=moved_by == "before each")
    maker.joins += [(flow, one), (back, other)]
    return maker.drawing()
