"""A drawing at work in time: pressure and temperature of its heating water, from one standing to the next.

Every pipe and part holds water of one temperature, which the solved flow carries on to the next; heat
sources put heat in, emitters and coils take it out (`heat.py`); what swells goes into the vessels or out
by the safety valve (`cushion.py`). Water and heat are accounted for to the last bit.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import inf
from typing import TYPE_CHECKING

from circuitcheck.circuit.situations import RUN_ON
from circuitcheck.figures.plant import Plant
from circuitcheck.operating.cells import Cells, Sides, cells
from circuitcheck.operating.cushion import Holding, holding, joined
from circuitcheck.operating.heat import METAL_ABOVE_K, Heat, heat
from circuitcheck.operating.positions import Positions
from circuitcheck.operating.settling import Settling
from circuitcheck.operating.state import State
from circuitcheck.operating.stepping import STEP_S, Stepper, trips
from circuitcheck.operating.streams import Streams, streams
from circuitcheck.operating.water_tables import celsius_of, heat_at, litres_at
from circuitcheck.report.flows import PipeFlow
from circuitcheck.sizing.pressure_in_time import MOST_BAR
from circuitcheck.sizing.water import MOST_C, density_kg_m3
from circuitcheck.told import a_word, worded

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

MOST_CELLS = 2000
TOO_LARGE = (
    "it has more than {cells} pipes and parts with heating water in them, too many to be carried on in time"
)
NO_HEATING = a_word("no heat source or exchanger heats any water in this drawing")
GLYCOL = a_word("the water has glycol in it, and the formulas hold for water without")


@dataclass(frozen=True, slots=True)
class Row:
    """One moment. By heat source: the water that leaves it and that comes to it, and its gauge pressure; by
    store its temperature. Since the start: litres let out. Now: what burns and what emitters give, in kW."""

    seconds: float
    flow_c: tuple[float, ...]
    return_c: tuple[float, ...]
    bar: tuple[float, ...]
    store_c: tuple[float, ...]
    let_out_l: float
    fired_kw: float
    given_kw: float
    lifted: frozenset[str]
    tripped: frozenset[str]
    is_driven: bool
    """Whether the pumps that run in this standing still do."""


class Model:
    """What runs in time of one drawing: built once, carried on for any standing of it. `missing` names the
    fields without which nothing can be carried on, `refused` says why it never can."""

    def __init__(self, plant: Plant) -> None:
        self.plant = plant
        self.sides = Sides(plant)
        self.refused = GLYCOL if plant.design("glycol_percent") else ""
        self.cells: Cells = cells(plant, self.sides)
        bodies = frozenset(each.body for each in self.cells.cells)
        self.heat: Heat = heat(plant, self.sides, self.cells.cells)
        self.held: Holding = holding(plant, bodies)
        if not self.cells.cells and not self.cells.missing:
            self.refused = NO_HEATING
        elif len(self.cells.cells) > MOST_CELLS:
            self.refused = TOO_LARGE.format(cells=MOST_CELLS)
        for celsius in (self.heat.cold_c, self.heat.flow_c, self.heat.return_c):
            if not 0 <= celsius <= MOST_C:
                self.refused = worded(
                    "{celsius:g} °C is beyond the formulas for water, 0 to {most_c:g} °C",
                    celsius=celsius,
                    most_c=MOST_C,
                )
        self.missing = tuple(dict.fromkeys((*self.cells.missing, *self.heat.missing, *self.held.missing)))

    @property
    def can_run(self) -> bool:
        """Whether it can be carried on in time."""
        return not self.missing and not self.refused

    def streams(self, flows: Mapping[str, PipeFlow]) -> Streams:
        """Where the water of each cell goes with these flows."""
        mean = (self.heat.flow_c + self.heat.return_c) / 2
        return streams(self.plant, self.sides, self.cells.cells, flows, density_kg_m3(mean) / 1000)

    def cold(self) -> State:
        """Filled, and cold. Needs all numbers."""
        import numpy as np

        cold_c, fill = self.heat.cold_c, self.held.fill_bar
        l_kg, j_kg = float(litres_at(cold_c)), float(heat_at(cold_c))
        kg = np.array([each.litres for each in self.cells.cells]) / l_kg
        fill_kg = np.array([each.holds_l(fill) / l_kg for each in self.held.cushions])
        return State(
            0.0,
            kg,
            kg * j_kg,
            np.full(len(kg), fill),
            np.full(len(fill_kg), fill),
            fill_kg,
            np.zeros(len(fill_kg)),
            np.zeros(len(fill_kg)),
            np.array([each.metal_j_k * cold_c for each in self.heat.sources]),
            np.array([max(each.store_kg, 1e-9) * j_kg for each in self.heat.coils]),
        )

    def hot(self, positions: Positions) -> State:
        """As it is when heat has been called for long: the flow's pipes at the flow temperature, all else at
        the return's, the sources' metal as hot as at full output, stores at their thermostats."""
        import numpy as np

        state = self.cold()
        heat = self.heat
        service = self._services()
        celsius = np.array(
            [heat.flow_c if service.get(each.id) == "flow" else heat.return_c for each in self.cells.cells]
        )
        for source in heat.sources:
            celsius[source.cell] = heat.flow_c
        heated = state.kg * heat_at(celsius)
        metal = np.array([each.metal_j_k * (heat.flow_c + METAL_ABOVE_K) for each in heat.sources])
        stores = np.array([each.store_kg * float(heat_at(each.thermostat_c)) for each in heat.coils])
        # From cold in one leap, nothing flowing: what swells by it goes where the valves let it.
        begun = Run(self, replace(positions, name="", firing=frozenset()), {}, state)
        begun.warm(heated, metal, stores)
        return begun.state()

    def _services(self) -> Mapping[str, str]:
        from circuitcheck.circuit.services import services

        return {pipe: str(service) for pipe, service in services(self.plant.drawing).items()}

    def celsius(self, state: State) -> dict[str, float]:
        """The temperature of each pipe's water, and of each part's that holds any."""
        found = celsius_of(state.joules / state.kg)
        return {each.id: float(c) for each, c in zip(self.cells.cells, found, strict=True)}

    def bar(self, state: State) -> dict[str, float]:
        """The pressure of each pipe's water: level with the vessel, and with no pump's share."""
        return {each.id: float(bar) for each, bar in zip(self.cells.cells, state.bar, strict=True)}


class Run:
    """One standing of a model, carried on from a state."""

    def __init__(
        self,
        model: Model,
        positions: Positions,
        flows: Mapping[str, PipeFlow],
        state: State,
        step_s: float = STEP_S,
    ) -> None:
        self._model, self._positions, self._step_s = model, positions, step_s
        self._flows = flows
        self._state = state.copy()
        self._lead(flows)
        self.take(self._state)
        if self._state.flooded != positions.flooded:
            self._settling.set_flooded(self._state, positions.flooded)
            self._settling.begin(self._state)

    def _lead(self, flows: Mapping[str, PipeFlow]) -> None:
        """Let the water flow so from now on."""
        model = self._model
        found = model.streams(flows)
        self._stepper = Stepper(model.heat, found, self._positions.firing, self._step_s)
        links = [(int(a), int(b)) for a, b in zip(found.start.tolist(), found.end.tolist(), strict=True)]
        first = {int(group): cell for cell, group in enumerate(found.group.tolist())}
        together = [(first[a], first[b]) for a, b in links]
        alike: dict[int, list[int]] = {}
        for cell, group in enumerate(found.group.tolist()):
            alike.setdefault(group, []).append(cell)
        together_all = [*together, *(tuple(each) for each in alike.values())]
        waters = joined(model.plant, model.cells.cells, model.held, self._positions.shut, together_all)
        self._settling = Settling(model.cells.cells, model.held, waters, self._stepper, model.heat.cold_c)

    def warm(self, joules: Floats, metal_j: Floats, store_j: Floats) -> None:
        """Put so much heat into cells, metal and stores at once, and let the water settle."""
        found = self.state()
        more = joules.sum() + metal_j.sum() + store_j.sum()
        found.fired_j += float(more - found.joules.sum() - found.metal_j.sum() - found.store_j.sum())
        found.joules, found.metal_j, found.store_j = joules, metal_j, store_j
        self._stepper.begin(found)
        self._state = found
        self._settling.settle(found)

    def take(self, state: State) -> None:
        """Go on from a state."""
        self._state = state
        self._stepper.begin(state)
        self._settling.begin(state)

    def state(self) -> State:
        """How it stands now, to go on from later."""
        found = self._state.copy()
        self._stepper.end(found)
        return found

    @property
    def why_over(self) -> str:
        """Why it cannot be carried on any further: `hot` or `bar`; empty where it can."""
        if float(self._stepper.celsius.max()) >= MOST_C - 0.05:
            return "hot"
        return "bar" if float(self._state.bar.max()) >= MOST_BAR else ""

    @property
    def is_driven(self) -> bool:
        """Whether the pumps that run in this standing still do: a run-on ends by itself."""
        return self._overrun_s == inf or self._state.overrun_s < self._overrun_s

    @property
    def _overrun_s(self) -> float:
        runs_on = self._positions.name.partition(":")[0] == RUN_ON and not self._positions.firing
        if not runs_on:
            return inf
        return max((each.overrun_s for each in self._model.heat.sources), default=0.0)

    def carry_on(self, seconds: float) -> None:
        """By so many seconds, in steps; it stops early where `why_over` says so."""
        left = seconds
        while left > 1e-9 and not self.why_over:
            left -= self._one_step(left)

    def _one_step(self, most: float) -> float:
        """One step, of so many seconds at most; how long it was."""
        state, was_driven = self._state, self.is_driven
        step = min(self._stepper.step_s, most)
        if was_driven and self._overrun_s < inf:
            step = min(step, max(1e-6, self._overrun_s - state.overrun_s))
        self._stepper.step(step, state.tripped)
        self._settling.settle(state)
        state.tripped = trips(self._model.heat, self._stepper.outlets_c, state.tripped)
        state.seconds += step
        # It counts from when the heat was called off, whatever valves are turned meanwhile.
        state.overrun_s = 0.0 if self._overrun_s == inf else state.overrun_s + step
        if was_driven and not self.is_driven:
            self._stand_still()
        return step

    @property
    def is_stiff(self) -> bool:
        """Whether a heat source that heats stands on water to which nothing gives way."""
        cells = [each.cell for each in self._model.heat.sources if each.id in self._positions.firing]
        return any(self._settling.is_stiff(cell, self._state) for cell in cells)

    def _stand_still(self) -> None:
        """The pumps stop."""
        state = self.state()
        self._lead({})
        self.take(state)

    def row(self) -> Row:
        """This moment."""
        stepper, state, heat = self._stepper, self._state, self._model.heat
        fired, given = stepper.powers_kw(state.tripped)
        return Row(
            state.seconds,
            tuple(stepper.outlets_c.tolist()),
            tuple(stepper.returns_c.tolist()),
            tuple(float(state.bar[each.cell]) for each in heat.sources),
            tuple(stepper.stores_c.tolist()),
            state.out_l,
            fired,
            given,
            state.lifted,
            state.tripped,
            self.is_driven,
        )
