"""The network behind one body of heating water: its links from the drawing, its states from the controls."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from functools import cached_property
from typing import TYPE_CHECKING

from circuitcheck.circuit.plan import SHUTTABLE
from circuitcheck.circuit.situations import BOTH, HEATING_ONLY, HOT_WATER_ONLY, Situation
from circuitcheck.circuit.solver.chains import Reduced, reduce
from circuitcheck.circuit.solver.network import Link, Network, State
from circuitcheck.figures.design_water import Water
from circuitcheck.figures.resistance import AFRESH, NO_SOURCE, Resistances
from circuitcheck.figures.strands import Drawn, Strand
from circuitcheck.parts.kind import Role, Way

if TYPE_CHECKING:
    from circuitcheck.circuit.solver.solution import Solution
    from circuitcheck.figures.plant import Plant

STANDS_FOR_A_PIPE = Link(0, 0, length_m=1.0, diameter_m=0.02)
TAKERS = frozenset({Role.EMITS, Role.HEATED_BY_COIL, Role.EXCHANGES})
SETTING_ORDER = (BOTH, HEATING_ONLY, HOT_WATER_ONLY)
"""In which situation valves are set to the design flow: the one that asks most of the pump, first."""


class HydraulicBody:
    """One body of heating water with pumps in it. `missing` names what keeps it from being solved,
    `refused` says why it can't be at all, `taken` lists the defaults it rests on."""

    def __init__(
        self, plant: Plant, number: int, pumps: tuple[str, ...], drawn: Drawn, defaults: float = 1.0
    ) -> None:
        self.plant, self.number, self.pumps, self.drawn = plant, number, pumps, drawn
        self._resistances = Resistances(plant, defaults)
        self.set_by_flow: dict[int, float] = {}
        self._is_set = False
        links = self._links()
        self.missing = tuple(self._resistances.missing)
        self.refused = self._resistances.refused
        self.network: Network | None = None
        water = self._resistances.water
        if not self.missing and not self.refused and water is not None:
            self.network = Network(self.nodes, links, water.density_kg_m3, water.viscosity_pa_s)

    @property
    def strands(self) -> tuple[Strand, ...]:
        """Its links by place; laid out when first asked, which a body without pump data never is."""
        return self.drawn.strands[self.number]

    @property
    def nodes(self) -> int:
        """How many nodes the strands join."""
        return self.drawn.nodes[self.number]

    def with_defaults_times(self, factor: float) -> HydraulicBody:
        """The same body with every resistance that is a default so many times as large."""
        return HydraulicBody(self.plant, self.number, self.pumps, self.drawn, factor)

    @property
    def taken(self) -> tuple[str, ...]:
        """The defaults it rests on, each with its source."""
        return tuple(self._resistances.taken)

    @property
    def water(self) -> Water | None:
        """The water in it, where the design tells."""
        return self._resistances.water

    def design_flow_m3_s(self, part: str) -> float | None:
        """The flow an emitter or coil is meant to have."""
        return self._resistances.design_flow_m3_s(part)

    def design_missing(self, parts: Iterable[str]) -> tuple[str, ...]:
        """The fields that would have to be known for the design flows of these parts."""
        asked = Resistances(self.plant)
        for part in parts:
            asked.design_flow_m3_s(part)
        return tuple(asked.missing)

    @cached_property
    def place(self) -> dict[str, tuple[int, ...]]:
        """The strands of each pipe and part, by place."""
        found: dict[str, list[int]] = {}
        for number, strand in enumerate(self.strands):
            found.setdefault(strand.id, []).append(number)
        return {id: tuple(places) for id, places in found.items()}

    @cached_property
    def takers(self) -> tuple[str, ...]:
        """Its emitters, coils and exchangers on a loop, in the order of the drawing."""
        return tuple(
            dict.fromkeys(
                strand.id
                for place, strand in enumerate(self.strands)
                if place in self._on_a_loop and strand.passage is not None and self._takes(strand.id, strand)
            )
        )

    def _takes(self, id: str, strand: Strand) -> bool:
        passage = strand.passage
        return passage is not None and passage.gives_heat and id in self._taker_parts

    @cached_property
    def _taker_parts(self) -> frozenset[str]:
        circuit = self.plant.circuit
        return circuit.parts_with(*TAKERS)

    def _links(self) -> tuple[Link, ...]:
        """The links with their data; where a pump's curve is not known, nothing further is asked for."""
        told = self._resistances
        _ = told.water
        for id in self.pumps:
            told.curve(id)
        if told.missing or told.refused:
            return ()
        links = []
        for place, strand in enumerate(self.strands):
            if self._wide[place]:
                links.append(AFRESH.between(strand.a, strand.b))
            elif place not in self._on_a_loop:
                links.append(STANDS_FOR_A_PIPE.between(strand.a, strand.b))
            else:
                links.append(self._link(place, strand) or AFRESH.between(strand.a, strand.b))
        return tuple(links)

    @cached_property
    def _wide(self) -> tuple[bool, ...]:
        """Of each strand, whether it costs nothing whatever the data."""
        told = self._resistances
        return tuple(
            strand.passage is not None and told.is_wide(strand.id, strand.passage) for strand in self.strands
        )

    @cached_property
    def _skeleton(self) -> Reduced:
        """The body's chains, by its joints alone: what is on none of them carries no flow."""
        links = tuple(
            (AFRESH if is_wide else STANDS_FOR_A_PIPE).between(strand.a, strand.b)
            for strand, is_wide in zip(self.strands, self._wide, strict=True)
        )
        return reduce(Network(self.nodes, links, 1.0, 1.0), (State(),))

    @cached_property
    def _on_a_loop(self) -> dict[int, int]:
        """By strand that can carry flow: its chain."""
        return {
            place: number for number, chain in enumerate(self._skeleton.chains) for place, _ in chain.steps
        }

    def carries(self, place: int) -> bool:
        """Whether a strand is on a loop, so that water can flow in it."""
        return place in self._on_a_loop

    def _link(self, place: int, strand: Strand) -> Link | None:
        told = self._resistances
        if strand.passage is None:
            return told.pipe(strand.id, strand.a, strand.b)
        link = told.passage(strand.id, strand.passage, strand.a, strand.b)
        if link is None:
            return None
        part = self._set_for(place, strand)
        if part is None:
            return link
        design = told.design_flow_m3_s(part)
        if design:
            self.set_by_flow[place] = design
            what = self.plant.drawing.name(strand.id)
            whose = "its" if part == strand.id else f"{self.plant.drawing.name(part)} its"
            told.taken[f"{what} is set to give {whose} design flow ({NO_SOURCE})"] = None
        return link

    def _set_for(self, place: int, strand: Strand) -> str | None:
        """The emitter whose design flow a valve is set to give: a radiator's own lockshield, or a
        balancing valve without kv in series with one emitter or coil."""
        told = self._resistances
        passage = strand.passage
        if passage is None:
            return None
        if passage.gives_heat:
            return strand.id if told.is_set(strand.id) else None
        fields = {field.name for field in self.plant.drawing.components[strand.id].kind.own_fields}
        if passage.way is not Way.HAND or "kv_m3h" not in fields:
            return None
        if self.plant.value(strand.id, "kv_m3h") is not None:
            return None
        served = self._in_series(place)
        if len(served) != 1:
            told.missing[f"{strand.id}.kv_m3h"] = None
            return None
        return None if told.is_set(served[0]) else served[0]

    def _in_series(self, place: int) -> tuple[str, ...]:
        chain = self._skeleton.chains[self._on_a_loop[place]]
        strands = (self.strands[each] for each, _ in chain.steps)
        return tuple(dict.fromkeys(strand.id for strand in strands if self._takes(strand.id, strand)))

    def state(self, situation: Situation) -> State:
        """The links that a situation shuts and the pumps that it leaves standing."""
        motors, driving = self._commanded
        return State(
            frozenset(place for place, label in motors if label in situation.shut),
            frozenset(place for place, pump in driving if pump not in situation.running),
        )

    @cached_property
    def _commanded(self) -> tuple[tuple[tuple[int, str], ...], tuple[tuple[int, str], ...]]:
        """What controls command: the ways of motor valves by label, and those through pumps by id."""
        motors, driving = [], []
        for place, strand in enumerate(self.strands):
            if strand.passage is None:
                continue
            if strand.passage.way is Way.MOTOR:
                motors.append((place, f"{strand.id}:{strand.leg}" if strand.leg else strand.id))
            if strand.id in self.pumps:
                driving.append((place, strand.id))
        return tuple(motors), tuple(driving)

    def solve(self, situations: tuple[Situation, ...]) -> Solution:
        """Solve all situations, once the valves that are set to a flow have been set."""
        from circuitcheck.circuit.solver.solve import solve

        network = self.network
        if network is None:
            raise ValueError("numbers are missing")
        states = tuple(self.state(each) for each in situations)
        return solve(self._as_set(network, situations, states), states)

    def solve_standing(
        self, situations: tuple[Situation, ...], shut: frozenset[str], running: frozenset[str]
    ) -> Solution:
        """Solve one position of everything that can be shut, by whomever: `shut` as a witness names it
        (`iv1`, `tv1:a`). Valves that are set to a flow stay as the situations have them set."""
        from circuitcheck.circuit.solver.solve import solve

        network = self.network
        if network is None:
            raise ValueError("numbers are missing")
        if self.set_by_flow and not self._is_set:
            network = self._as_set(network, situations, tuple(self.state(each) for each in situations))
        return solve(network, (self._standing(shut, running),))

    def _as_set(
        self, network: Network, situations: tuple[Situation, ...], states: tuple[State, ...]
    ) -> Network:
        """The network with its valves set to the design flows; that is done once."""
        if self.set_by_flow and not self._is_set:
            self.network = network = replace(network, links=self._set(network, situations, states))
            self._is_set = True
        return network

    def _standing(self, shut: frozenset[str], running: frozenset[str]) -> State:
        """The links that are shut, whatever shuts them, and the pumps that stand still."""
        closed, stopped = set[int](), set[int]()
        for place, strand in enumerate(self.strands):
            if strand.passage is None:
                continue
            label = f"{strand.id}:{strand.leg}" if strand.leg else strand.id
            # A zone stands open to water, but a hand can shut it to water and pressure alike.
            if label in shut and SHUTTABLE & {strand.passage.way, strand.passage.pressure_way}:
                closed.add(place)
            if strand.id in self.pumps and strand.id not in running:
                stopped.add(place)
        return State(frozenset(closed), frozenset(stopped))

    def _set(
        self, network: Network, situations: tuple[Situation, ...], states: tuple[State, ...]
    ) -> tuple[Link, ...]:
        """The links with every set valve's resistance: what it takes up to hold the design flow."""
        from circuitcheck.circuit.solver.solve import solve

        meant = self._setting_rows(situations)
        if not meant:
            return network.links
        links = list(network.links)
        for place, design in self.set_by_flow.items():
            links[place] = replace(links[place], limit_m3_s=design)
        rows = sorted(set(meant.values()))
        solution = solve(replace(network, links=tuple(links)), [states[row] for row in rows])
        for place, row in meant.items():
            state = rows.index(row)
            flow, taken = solution.flow_m3_s(state, place), solution.difference_pa(state, place)
            plain = network.links[place]
            # An emitter may be piped the other way round: its water then runs against the passage.
            if flow is not None and taken is not None and abs(flow) >= self.set_by_flow[place]:
                links[place] = replace(plain, quadratic=max(plain.quadratic, abs(taken) / flow**2))
            else:
                links[place] = plain
        return tuple(
            replace(link, limit_m3_s=plain.limit_m3_s)
            for link, plain in zip(links, network.links, strict=True)
        )

    def _setting_rows(self, situations: tuple[Situation, ...]) -> dict[int, int]:
        """By set valve, the situation in which it is set."""
        found: dict[int, int] = {}
        for name in SETTING_ORDER:
            for row, situation in enumerate(situations):
                if situation.name == name and not situation.missing:
                    for place in self.set_by_flow:
                        if set(self._in_series(place)) & situation.called:
                            found.setdefault(place, row)
        return found


def bodies(plant: Plant) -> tuple[HydraulicBody, ...]:
    """Every body of heating water that a pump stands in, in the order of the drawing's pumps."""
    circuit = plant.circuit
    heated = {each.body for each in plant.bodies.heated} - plant.bodies.drinking
    pumps: dict[int, dict[str, None]] = {}
    for place in circuit.devices(Role.PUMPS):
        body = plant.bodies.of(place.other)
        if body in heated:
            pumps.setdefault(body, {})[place.part] = None
    drawn = Drawn(plant, tuple(pumps))
    return tuple(HydraulicBody(plant, body, tuple(inside), drawn) for body, inside in pumps.items())
