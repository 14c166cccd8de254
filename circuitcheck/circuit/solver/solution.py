"""What was solved: flow and difference of pressure along every link, pressure at every node."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from math import pi
from typing import TYPE_CHECKING

from circuitcheck.circuit.solver.chains import Reduced
from circuitcheck.circuit.solver.network import Network, State
from circuitcheck.circuit.solver.rows import Row, pieces_by_row

if TYPE_CHECKING:
    from circuitcheck.circuit.solver.friction import Floats, Friction

GIVEN = -1


@dataclass(frozen=True, slots=True)
class Failure:
    """Why a state could not be solved, and the links (by place) where it shows; none: all of them."""

    why: str
    links: tuple[int, ...]


class Solution:
    """Flows, differences and pressures by state and place. `steps`: what the slowest state needed."""

    def __init__(
        self,
        network: Network,
        states: tuple[State, ...],
        reduced: Reduced,
        flow: Floats,
        pressure: Floats,
        failures: Mapping[int, Failure],
        steps: int,
        friction: Friction,
        rows: Sequence[Row],
    ) -> None:
        self.network, self.states, self.failures, self.steps = network, states, failures, steps
        self._rows = rows
        self._reduced, self._flow, self._pressure, self._friction = reduced, flow, pressure, friction

    @cached_property
    def _chain_of(self) -> dict[int, tuple[int, int]]:
        """By link: its chain and its sign there. What is not here carries no flow, or is a wide way."""
        return {
            place: (column, sign)
            for column, chain in enumerate(self._reduced.chains)
            for place, sign in chain.steps
        }

    def flow_m3_s(self, state: int, link: int) -> float | None:
        """Flow from a link's a to its b. None in a wide way, whose share nothing decides, and where
        the state failed."""
        if state in self.failures:
            return None
        found = self._chain_of.get(link)
        if found is None:
            return None if self._wide(link) else 0.0
        column, sign = found
        return sign * float(self._flow[state, column]) + 0.0  # never -0

    def _wide(self, place: int) -> bool:
        link = self.network.links[place]
        return self._reduced.group[link.a] == self._reduced.group[link.b]

    def pressure_pa(self, state: int, node: int) -> float | None:
        """Pressure at a node: as given, or against some node of its own piece of the circuit. None
        where the state failed, or beyond two shut valves, where nothing decides it."""
        if state in self.failures:
            return None
        found = self._all(state).get(self._reduced.group[node])
        return None if found is None else found[0]

    def between_pa(self, state: int, a: int, b: int) -> float | None:
        """Pressure at one node less that at another; None too where they lie in pieces of the circuit
        that nothing joins, so that nothing decides it."""
        if state in self.failures:
            return None
        group, known = self._reduced.group, self._all(state)
        one, other = known.get(group[a]), known.get(group[b])
        if one is None or other is None or one[1] != other[1]:
            return None
        return one[0] - other[0]

    def difference_pa(self, state: int, link: int) -> float | None:
        """Pressure at a link's a less that at its b; None as `between_pa`."""
        ends = self.network.links[link]
        return self.between_pa(state, ends.a, ends.b)

    @cached_property
    def _by_state(self) -> dict[int, dict[int, tuple[float, int]]]:
        return {}

    def _all(self, state: int) -> dict[int, tuple[float, int]]:
        """Pressure, and piece of the circuit, by group of nodes, those within chains and dead ends too."""
        if state not in self._by_state:
            self._by_state[state] = self._spread(state)
        return self._by_state[state]

    def _spread(self, state: int) -> dict[int, tuple[float, int]]:
        reduced = self._reduced
        pieces = self._piece(state)
        known = {
            reduced.group[old]: (float(self._pressure[state, new]), pieces[new])
            for old, new in enumerate(reduced.node)
            if new >= 0
        }
        for column in range(len(reduced.chains)):
            self._along(state, column, known)
        self._dead_ends(state, known)
        return known

    def _piece(self, state: int) -> tuple[int, ...]:
        """The piece each node of the reduced network is in; where a pressure is given, all are as one."""
        passes = self._passes(state)
        if passes not in self._pieces:
            ends = [
                (self._reduced.node[chain.a], self._reduced.node[chain.b]) for chain in self._reduced.chains
            ]
            (found,) = pieces_by_row(self._reduced.count, ends, [passes])
            held = {found[self._reduced.node[each]] for each in self.network.fixed_pa}
            self._pieces[passes] = tuple(GIVEN if each in held else each for each in found)
        return self._pieces[passes]

    def _passes(self, state: int) -> tuple[bool, ...]:
        """Along which chains pressure is passed on: not where a one-way passage lets nothing through."""
        return tuple(
            passes and not (column in self._one_way and not self._flow[state, column])
            for column, passes in enumerate(self._rows[state].open)
        )

    @cached_property
    def _one_way(self) -> frozenset[int]:
        links = self.network.links
        return frozenset(self._chain_of[place][0] for place in self._chain_of if links[place].one_way)

    @cached_property
    def _pieces(self) -> dict[tuple[bool, ...], tuple[int, ...]]:
        return {}

    def _along(self, state: int, column: int, known: dict[int, tuple[float, int]]) -> None:
        """Walk a chain from both its ends up to what stops water in it; what stops it takes the rest."""
        chain = self._reduced.chains[column]
        flow = float(self._flow[state, column])
        for start, steps in ((chain.a, chain.steps), (chain.b, chain.turned().steps)):
            # The chain's ends are groups already.
            pressure, piece = known[start]
            for place, sign in steps:
                along = self._chain_of[place][1] * flow
                if self._takes_rest(state, place, along):
                    break
                pressure -= sign * self._lost(state, place, along)
                link = self.network.links[place]
                known.setdefault(self._reduced.group[link.b if sign > 0 else link.a], (pressure, piece))

    def _takes_rest(self, state: int, place: int, flow: float) -> bool:
        """Whether a link stops the water or holds it back, and so takes all pressure that is left."""
        link = self.network.links[place]
        return (
            place in self.states[state].shut or (link.one_way and flow <= 0) or abs(flow) >= link.limit_m3_s
        )

    def _lost(self, state: int, place: int, flow: float) -> float:
        """The pressure lost along one open link."""
        link = self.network.links[place]
        running = place not in self.states[state].stopped
        return (
            (link.quadratic + link.pump_quadratic) * flow * abs(flow)
            + link.opens_at_pa
            - (link.head_pa if running else 0.0)
            + (float(self._rubbed[state, self._tube[place]]) * flow if place in self._tube else 0.0)
        )

    @cached_property
    def _tube(self) -> dict[int, int]:
        pipes = (place for place in self._chain_of if self.network.links[place].length_m)
        return {place: column for column, place in enumerate(pipes)}

    @cached_property
    def _rubbed(self) -> Floats:
        """Friction over flow of every pipe that carries any, in the order of `_tube`."""
        import numpy as np

        places = list(self._tube)
        links = [self.network.links[place] for place in places]
        table = np.array([(link.length_m, link.diameter_m, link.roughness_m) for link in links])
        length, diameter, roughness = table.reshape(-1, 3).T
        flow = np.abs(self._flow[:, [self._chain_of[place][0] for place in places]])
        per_flow = 4 * self.network.density_kg_m3 / (pi * diameter * self.network.viscosity_pa_s)
        law = self._friction(np.broadcast_to(roughness / diameter, flow.shape))
        product, _ = law.exactly(flow * per_flow)
        found: Floats = 8 * self.network.density_kg_m3 * length / (pi**2 * diameter**5) / per_flow * product
        return found

    def _dead_ends(self, state: int, known: dict[int, tuple[float, int]]) -> None:
        """Still water has the pressure of what it hangs on, but for a pump's head."""
        rest = [
            place
            for place, link in enumerate(self.network.links)
            if place not in self._chain_of
            and place not in self.states[state].shut
            and not self._wide(place)
            and not link.opens_at_pa
        ]
        grew = True
        while grew and rest:
            grew, left = False, []
            for place in rest:
                link = self.network.links[place]
                a, b = self._reduced.group[link.a], self._reduced.group[link.b]
                if (a in known) == (b in known):
                    if a not in known:
                        left.append(place)
                    continue
                lost = self._lost(state, place, 0.0)
                if a in known:
                    known[b] = (known[a][0] - lost, known[a][1])
                else:
                    known[a] = (known[b][0] + lost, known[b][1])
                grew = True
            rest = left
