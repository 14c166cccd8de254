"""Flows and pressures in every situation, from the drawing: the solved network of each body of heating water.

Forced flow only: circulation by warmth alone is left out. Friction by Darcy-Weisbach and
Colebrook-White at the mean of the design's flow and return temperatures; fittings by loss factors.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from circuitcheck.circuit.situations import Situation
from circuitcheck.figures.hydraulic_body import HydraulicBody, bodies
from circuitcheck.figures.resistance import LITRES_A_MINUTE
from circuitcheck.sizing.pipe import velocity_m_s

if TYPE_CHECKING:
    from circuitcheck.circuit.joining import Placed
    from circuitcheck.circuit.solver.solution import Failure, Solution
    from circuitcheck.figures.plant import Plant


class Solved:
    """The solved bodies of heating water of a plant; each is solved when first asked."""

    def __init__(self, plant: Plant) -> None:
        self._plant = plant

    @cached_property
    def bodies(self) -> tuple[SolvedBody, ...]:
        """One for each body of heating water that a pump stands in."""
        return tuple(SolvedBody(self._plant, body) for body in bodies(self._plant))

    def let_go(self) -> None:
        """Nothing more is asked of it: its bodies and their runs refer to one another."""
        for body in self.__dict__.get("bodies", ()):
            for other in body.__dict__.get("least_and_most", ()):
                other.__dict__.clear()
            body.__dict__.clear()

    @cached_property
    def _by_number(self) -> dict[int, SolvedBody]:
        return {body.network.number: body for body in self.bodies}

    def at(self, place: Placed) -> SolvedBody | None:
        """The body that a device stands in; None where no pump drives its water, or it is no heating water."""
        node = place.node if place.other < 0 else place.other
        return self._by_number.get(self._plant.bodies.of(node))

    @property
    def missing(self) -> tuple[str, ...]:
        """What keeps bodies from being solved: `pu.shut_off_head_m`, `p3.length_m`, `design.flow_temperature_c`."""
        return tuple(dict.fromkeys(name for body in self.bodies for name in body.missing))

    @property
    def taken(self) -> tuple[str, ...]:
        """The defaults that the flows rest on, each with its source."""
        return tuple(dict.fromkeys(text for body in self.bodies for text in body.taken))


@dataclass(frozen=True, slots=True)
class Run:
    """One situation of one body: flow and pressure by the id of a pipe or part. None: not to be told."""

    situation: Situation
    body: SolvedBody
    row: int

    @property
    def failure(self) -> Failure | None:
        """Why this situation could not be solved."""
        return self.body.solution.failures.get(self.row)

    @property
    def failed_at(self) -> tuple[str, ...]:
        """The pipes and parts at which it shows."""
        failure = self.failure
        places = () if failure is None else failure.links
        return tuple(dict.fromkeys(self.body.network.strands[place].id for place in places))

    def flow_lpm(self, id: str, leg: str = "") -> float | None:
        """Flow in litres a minute, as a passage is written (return to flow, in to out) or from a pipe's
        first end to its second; negative the other way. `leg`: of a three-port valve."""
        place = self.body.place(id, leg)
        flow = None if place is None else self.body.solution.flow_m3_s(self.row, place)
        return None if flow is None else flow * LITRES_A_MINUTE

    def difference_kpa(self, id: str, leg: str = "") -> float | None:
        """Pressure at the beginning less that at the end, told the same way; below 0 across a pump."""
        place = self.body.place(id, leg)
        found = None if place is None else self.body.solution.difference_pa(self.row, place)
        return None if found is None else found / 1000

    def between_kpa(self, start: str, finish: str) -> float | None:
        """Pressure in the first of two pipes, at its first end, less that in the other, likewise."""
        a, b = self.body.place(start), self.body.place(finish)
        if a is None or b is None:
            return None
        strands, solution = self.body.network.strands, self.body.solution
        found = solution.between_pa(self.row, strands[a].a, strands[b].a)
        return None if found is None else found / 1000

    def velocity_m_s(self, pipe: str) -> float | None:
        """The water's mean velocity in a pipe; never negative."""
        flow, bore = self.flow_lpm(pipe), self.body.bore_mm(pipe)
        return None if flow is None or bore is None else abs(velocity_m_s(flow / 60, bore))


class SolvedBody:
    """One body of heating water: what is missing to solve it, or its runs, one for each situation."""

    def __init__(self, plant: Plant, network: HydraulicBody) -> None:
        self.plant, self.network = plant, network

    @property
    def pipes(self) -> tuple[str, ...]:
        """Its pipes that are on a loop."""
        network = self.network
        return tuple(
            strand.id
            for place, strand in enumerate(network.strands)
            if strand.passage is None and network.carries(place)
        )

    @cached_property
    def least_and_most(self) -> tuple[SolvedBody, SolvedBody]:
        """The same body with every resistance that is a default halved, and doubled: how far its flows
        move by what is not told."""
        halved, doubled = (self.network.with_defaults_times(factor) for factor in (0.5, 2.0))
        return SolvedBody(self.plant, halved), SolvedBody(self.plant, doubled)

    @property
    def pumps(self) -> tuple[str, ...]:
        """What drives it: pumps, and heat sources with one built in."""
        return self.network.pumps

    @property
    def takers(self) -> tuple[str, ...]:
        """Its emitters, coils and exchangers on a loop."""
        return self.network.takers

    @property
    def missing(self) -> tuple[str, ...]:
        """The fields that would have to be known; empty where it can be solved, or never can."""
        return self.network.missing

    @property
    def refused(self) -> str:
        """Why it can't be solved whatever is told; else empty."""
        return self.network.refused

    @property
    def taken(self) -> tuple[str, ...]:
        """The defaults it rests on."""
        return self.network.taken

    @property
    def is_known(self) -> bool:
        """Whether it can be solved."""
        return self.network.network is not None

    @cached_property
    def runs(self) -> tuple[Run, ...]:
        """One for each situation, in order; none where numbers are missing. Raises TooLargeError."""
        if not self.is_known:
            return ()
        return tuple(Run(each, self, row) for row, each in enumerate(self._situations))

    @cached_property
    def _situations(self) -> tuple[Situation, ...]:
        situations = self.plant.situations
        for part, field in situations.reads:
            self.plant.value(part, field)  # a default that the positions rest on is remembered
        return situations.all

    @cached_property
    def solution(self) -> Solution:
        """All situations at once."""
        return self.network.solve(self._situations)

    def standing(self, situation: Situation) -> Run | None:
        """How it runs with everything that can be shut in one position, `situation.shut` naming valves
        that a hand or a head shuts as well; None where numbers are missing. Raises TooLargeError."""
        return Run(situation, _Standing(self, situation), 0) if self.is_known else None

    def place(self, id: str, leg: str = "") -> int | None:
        """The link that stands for a pipe, a part, or a leg of one.

        Of several ways inside a part not a wide one: it is contracted away, and no flow is told of it.
        """
        strands = self.network.strands
        places = [each for each in self.network.place.get(id, ()) if not leg or strands[each].leg == leg]
        network = self.network.network
        if network is not None:
            places.sort(key=lambda each: network.links[each].lossless)
        return places[0] if places else None

    def bore_mm(self, pipe: str) -> float | None:
        """The bore of a pipe that is on a loop."""
        place = self.place(pipe)
        if place is None or self.network.network is None or not self.network.carries(place):
            return None
        return self.network.network.links[place].diameter_m * 1000

    def design_lpm(self, part: str) -> float | None:
        """The flow an emitter or coil is meant to have, in litres a minute."""
        flow = self.network.design_flow_m3_s(part)
        return None if flow is None else flow * LITRES_A_MINUTE

    def design_missing(self, parts: Iterable[str]) -> tuple[str, ...]:
        """The fields that would have to be known for these parts' design flows."""
        return self.network.design_missing(parts)


class _Standing(SolvedBody):
    """The same body solved for one position of everything in it."""

    def __init__(self, whole: SolvedBody, situation: Situation) -> None:
        super().__init__(whole.plant, whole.network)
        self._whole, self._situation = whole, situation

    @cached_property
    def _situations(self) -> tuple[Situation, ...]:
        return (self._situation,)

    @cached_property
    def solution(self) -> Solution:
        """That one position."""
        asked = self._situation
        return self.network.solve_standing(self._whole._situations, asked.shut, asked.running)
