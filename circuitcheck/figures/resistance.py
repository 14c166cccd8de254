"""What each part and pipe costs in pressure: from its data, else a named default, else named as missing."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import cached_property
from typing import TYPE_CHECKING

from circuitcheck.circuit.solver.network import Link, kv_quadratic, pipe, pump
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.design_water import Water
from circuitcheck.parts.kind import Passage, Role, Way
from circuitcheck.sizing.pipe import (
    GRAVITY_M_S2,
    LOSS_FACTORS,
    ROUGHNESS_MM,
    UNITEMISED_SHARE,
    area_m2,
)
from circuitcheck.sizing.water import (
    LEAST_C,
    MOST_C,
    density_kg_m3,
    heat_capacity_j_kgk,
    viscosity_pa_s,
)
from circuitcheck.told import a_word, worded

if TYPE_CHECKING:
    from circuitcheck.figures.plant import Plant

NO_SOURCE = "common practice, no source"
HEAT_SOURCE_KPA = 10.0
"""Across a heat source at the flow that carries its output: common practice, no source."""

ACROSS_IT, ONCE_OPEN = "pressure across it at its output's flow", "kv once open"
"""What is taken as usual of a part, behind its id."""

KV_M3H: dict[str, float] = {
    a_word("motor valve"): 4.0,
    a_word("filter or strainer"): 6.0,
    a_word("blending valve"): 2.5,
    a_word("coil or exchanger"): 3.0,
    a_word("radiator with its valves open"): 0.6,
    a_word("radiator without valves"): 2.0,
}
"""kv where the drawing has no number for it: common practice, no source."""

LITRES_A_MINUTE = 60_000.0
LEAST_PIPE_M = 1e-5
"""As long is a pipe taken that is drawn with no length, no bend and no tee."""
"""Litres a minute in a cubic metre a second."""

AFRESH = Link(0, 0)


class Resistances:
    """Links of a network from a plant's parts and pipes. What is not known gathers in `missing`, which
    defaults were taken in `taken`, why nothing can be computed at all in `refused`. Every resistance that is
    a default counts `defaults` times, to see what rests on it."""

    def __init__(self, plant: Plant, defaults: float = 1.0) -> None:
        self.plant, self.defaults = plant, defaults
        self.missing: dict[str, None] = {}
        self.taken: dict[str, None] = {}
        self.refused = ""

    @cached_property
    def water(self) -> Water | None:
        """The plant's water; None where the design does not tell, or it is not water the formulas hold for."""
        flow, back = (self._design(name) for name in ("flow_temperature_c", "return_temperature_c"))
        if self.plant.design("glycol_percent"):
            self.refused = a_word("the program's formulas hold for water without glycol")
            return None
        if flow is None or back is None:
            return None
        if flow <= back or not LEAST_C <= (mean := (flow + back) / 2) <= MOST_C:
            self.refused = a_word("the design's flow must be hotter than its return, and both liquid water")
            return None
        return Water(density_kg_m3(mean), viscosity_pa_s(mean), heat_capacity_j_kgk(mean), flow - back)

    def _design(self, field: str) -> float | None:
        value = self.plant.design(field)
        if value is None:
            self.missing[f"design.{field}"] = None
        return None if value is None else float(value)

    def number(self, part: str, field: str) -> float | None:
        """A part's number; where it is not known it is named as missing."""
        value = self.plant.value(part, field)
        if value is None:
            self.missing[f"{part}.{field}"] = None
        return None if value is None else float(value)

    def curve(self, part: str) -> tuple[float, float] | None:
        """A pump's shut-off pressure in pascals and its most flow in m³/s."""
        head, most = self.number(part, "shut_off_head_m"), self.number(part, "maximum_flow_lpm")
        if head is None or most is None or self.water is None:
            return None
        if head <= 0 or most <= 0:
            self.refused = worded("{part} has a head or a most flow of 0", part=self.plant.drawing.name(part))
            return None
        return head * GRAVITY_M_S2 * self.water.density_kg_m3, most / LITRES_A_MINUTE

    def bore_mm(self, id: str, *, needed: bool = True) -> float | None:
        """A pipe's bore: as given, else by its size and material."""
        from circuitcheck.sizing.tube import bore_mm

        given = self.plant.pipe_value(id, "bore_mm")
        if given is not None:
            return float(given)
        size, material = self.plant.pipe_value(id, "size_mm"), self.plant.pipe_value(id, "material")
        bore = None if size is None or material is None else bore_mm(material, size)
        if bore is None and needed:
            unknown = "size_mm" if size is None else "material" if material is None else "bore_mm"
            self.missing[f"{id}.{unknown}"] = None
        return bore

    def pipe(self, id: str, a: int, b: int) -> Link | None:
        """A pipe with its bends and its share of the tees at its ends; None where something is missing."""
        bore, length = self.bore_mm(id), self.plant.length_m(id)
        if length is None:
            self.missing[f"{id}.length_m"] = None
        if bore is None or length is None or self.water is None:
            return None
        factor, metres = self._tees(id), length.value
        bends = self.plant.bends(id)
        if bends is None:
            metres *= 1 + UNITEMISED_SHARE
            self._take(
                f"{id}.bends",
                a_word("25 % of its length"),
                a_word("Building Services Engineering, example 4.2"),
            )
        else:
            factor += bends.value * LOSS_FACTORS["bend"]
        if not metres and not factor:
            # With nothing to lose by, the solver takes both ends as one and tells no flow between them.
            metres = LEAST_PIPE_M
        material = str(self.plant.pipe_value(id, "material") or "copper")
        return pipe(
            a,
            b,
            length_m=metres,
            diameter_m=bore / 1000,
            roughness_m=ROUGHNESS_MM[material] / 1000,
            density_kg_m3=self.water.density_kg_m3,
            loss_factor=factor,
        )

    def _tees(self, id: str) -> float:
        """Half the loss straight through a tee for each end on its run; for one on its branch, what a way
        through the branch costs beyond the half that the other pipe bears."""
        straight, branch = (
            LOSS_FACTORS[a_word("tee, straight on")] / 2,
            LOSS_FACTORS[a_word("tee, through the branch")],
        )
        factor = 0.0
        for end in self.plant.drawing.pipes[id].joints:
            if self.plant.drawing.components[end.part].kind.name == "tee":
                factor += branch - straight if end.port == "branch" else straight
        return factor

    def passage(self, part: str, passage: Passage, a: int, b: int) -> Link | None:
        """A way through a part; None where something is missing."""
        roles = self.roles(part, passage)
        for role, told in _TOLD.items():
            if role in roles:
                link = told(self, part, passage)
                return None if link is None else link.between(a, b)
        link = self._plain(part, passage)
        return link.between(a, b, one_way=passage.way in (Way.ONE_WAY, Way.REDUCING))

    def roles(self, part: str, passage: Passage) -> frozenset[Role]:
        """What stands on a way through a part; on a spring's way its bypass alone."""
        devices = self.plant.circuit.plans[part].devices
        ends = {passage.a, passage.b}
        found = frozenset(each.role for each in devices if {each.port, each.other} == ends)
        bypass = frozenset({Role.BYPASSES})
        return found & bypass if passage.way is Way.SPRING else found - bypass

    def is_wide(self, part: str, passage: Passage) -> bool:
        """Whether a way costs nothing, whatever the data: a tee's arm, a separator's."""
        return (
            passage.way is Way.OPEN
            and not passage.gives_heat
            and not self.roles(part, passage) & _TOLD.keys()
            and not any(
                field.name == "kv_m3h" for field in self.plant.drawing.components[part].kind.own_fields
            )
        )

    def _pump(self, part: str, passage: Passage) -> Link | None:
        curve = self.curve(part)
        return None if curve is None else pump(0, 0, shut_off_pa=curve[0], maximum_flow_m3_s=curve[1])

    def _heat_source(self, part: str, passage: Passage) -> Link | None:
        output = self.number(part, "output_kw")
        if not output or self.water is None:
            return None if output is None or self.water is None else AFRESH
        self._take(
            f"{part}: {ACROSS_IT}",
            f"{HEAT_SOURCE_KPA:g} kPa",
        )
        kpa = HEAT_SOURCE_KPA * self.defaults
        return Link(0, 0, quadratic=kpa * 1000 / self.water.flow_m3_s(output) ** 2)

    def _bypass(self, part: str, passage: Passage) -> Link | None:
        set_kpa = self.number(part, "set_difference_kpa")
        if set_kpa is None:
            return None
        self._take(f"{part}: {ONCE_OPEN}", f"{KV_M3H[a_word('motor valve')]:g} m³/h")
        return Link(
            0,
            0,
            quadratic=kv_quadratic(KV_M3H[a_word("motor valve")]) * self.defaults,
            one_way=True,
            opens_at_pa=set_kpa * 1000,
        )

    def _emitter(self, part: str, passage: Passage) -> Link | None:
        plant = self.plant
        fields = {field.name for field in plant.drawing.components[part].kind.own_fields}
        if "resistance_kpa" in fields:
            design, loss = self.design_flow_m3_s(part), self.number(part, "resistance_kpa")
            if design is None or loss is None:
                return None
            return Link(0, 0, quadratic=loss * 1000 / design**2) if design else AFRESH
        valves = self.is_set(part)
        return self._usual(
            part,
            a_word("radiator with its valves open") if valves else a_word("radiator without valves"),
        )

    def _coil(self, part: str, passage: Passage) -> Link:
        return self._usual(part, a_word("coil or exchanger"))

    def _blending(self, part: str, passage: Passage) -> Link:
        return replace(self._usual(part, a_word("blending valve")), one_way=True)

    def _filter(self, part: str, passage: Passage) -> Link:
        return self._usual(
            part, a_word("coil or exchanger") if passage.gives_heat else a_word("filter or strainer")
        )

    def _plain(self, part: str, passage: Passage) -> Link:
        fields = {field.name for field in self.plant.drawing.components[part].kind.own_fields}
        if "kv_m3h" in fields:
            kv = self.plant.value(part, "kv_m3h")
            if kv is not None:
                return Link(0, 0, quadratic=kv_quadratic(kv))
            if passage.way is Way.MOTOR:
                return self._usual(part, a_word("motor valve"))
            return self._valve(
                part, a_word("isolating valve")
            )  # a balancing valve, wide open until it is set
        if passage.gives_heat:
            return self._usual(part, a_word("coil or exchanger"))
        if passage.way in (Way.ONE_WAY, Way.REDUCING):
            return self._valve(part, a_word("check valve"))
        if passage.way is Way.HAND:
            return self._valve(part, a_word("isolating valve"))
        return AFRESH

    def _usual(self, part: str, what: str) -> Link:
        self._take(f"{part}.kv_m3h", f"{KV_M3H[what]:g} ({what})")
        return Link(0, 0, quadratic=kv_quadratic(KV_M3H[what]) * self.defaults)

    def _valve(self, part: str, what: str) -> Link:
        """A valve by its loss factor, at the bore of a pipe that joins it; the pipe says what it lacks."""
        joined = self.plant.drawing.joined
        for port in self.plant.drawing.components[part].kind.ports:
            id = joined.get(Joint(part, port.name))
            bore = None if id is None else self.bore_mm(id, needed=False)
            if bore is not None and self.water is not None:
                dynamic = self.water.density_kg_m3 / 2 / area_m2(bore) ** 2
                return Link(0, 0, quadratic=LOSS_FACTORS[what] * dynamic)
        return AFRESH

    def is_set(self, part: str) -> bool:
        """Whether an emitter has a valve with which its flow is set."""
        return any(
            field.name == "valves" and bool(self.plant.value(part, "valves"))
            for field in self.plant.drawing.components[part].kind.own_fields
        )

    def design_flow_m3_s(self, part: str) -> float | None:
        """The flow an emitter or a coil is meant to have; None where it is not known or has no number.

        It carries what an emitter gives at the design's temperatures, not what it would at 50 K.
        """
        for field, factor in (("output_kw", 1.0), ("output_w", 1e-3), ("coil_power_kw", 1.0)):
            if any(each.name == field for each in self.plant.drawing.components[part].kind.own_fields):
                power = self.number(part, field)
                if power is None or self.water is None:
                    return None
                return self.water.flow_m3_s(power * factor * self._given_share(part))
        return None

    def _given_share(self, part: str) -> float:
        """The share of its stated output that a part gives at the design's temperatures."""
        from circuitcheck.figures.emitting import share_at

        if not any(each.role is Role.EMITS for each in self.plant.circuit.plans[part].devices):
            return 1.0
        flow, back = self.plant.design("flow_temperature_c"), self.plant.design("return_temperature_c")
        return share_at(self.plant, part, float(flow), float(back))

    def _take(self, what: str, value: str, source: str = NO_SOURCE) -> None:
        self.taken[f"{what} = {value} ({source})"] = None


# Not kept in the object: methods of its own would be a circle that only a search for garbage finds.
_TOLD: Mapping[Role, Callable[[Resistances, str, Passage], Link | None]] = {
    Role.PUMPS: Resistances._pump,
    Role.HEATS: Resistances._heat_source,
    Role.BYPASSES: Resistances._bypass,
    Role.EMITS: Resistances._emitter,
    Role.HEATED_BY_COIL: Resistances._coil,
    Role.BLENDS: Resistances._blending,
    Role.CAN_BLOCK: Resistances._filter,
}
