"""Solves a network in all its states: flows and pressures, or which part does not settle, and why.

The global gradient method of Todini and Pilati ("A gradient algorithm for the analysis of pipe
networks", 1988): Newton's method on flows and node pressures together. Every link's pressure rises
with its flow, so the true flows are the one minimum of a convex function, the network's content; a
step that overshoots the minimum along its way is shortened, which makes the method converge from any
start. One-way passages, springs and limits are steep laws in the same function. Before that, some steps
are taken as they come, with flows held where such a valve begins to stop them: mostly these suffice.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from circuitcheck.circuit.solver.balance import balance
from circuitcheck.circuit.solver.chains import Chain, reduce, summed
from circuitcheck.circuit.solver.descent import Descent
from circuitcheck.circuit.solver.friction import colebrook_white
from circuitcheck.circuit.solver.laws import LEAK_M3_S, Laws
from circuitcheck.circuit.solver.network import Network, State
from circuitcheck.circuit.solver.rows import pieces_by_row, rows
from circuitcheck.circuit.solver.solution import Failure, Solution
from circuitcheck.told import a_word

if TYPE_CHECKING:
    from circuitcheck.circuit.solver.friction import Friction

ITERATION_BOUND = 200
GROUND = 1e-6
"""m³/s a pascal: ties one node of a closed circuit to zero, through which nothing flows."""

NOT_SETTLED = "after {steps} steps the pressures on this stretch still differ by {pascals:.4g} Pa"
CUT_OFF = "{litres:.4g} l/s are drawn where no way leads from a given pressure"
NO_NUMBER = a_word("the numbers of this stretch are too far apart to be computed with")


def solve(
    network: Network,
    states: Sequence[State] = (State(),),
    *,
    friction: Friction | None = None,
    iteration_bound: int = ITERATION_BOUND,
) -> Solution:
    """Solve a network in each state. Raises ValueError for numbers no network can have.

    A state that cannot be solved has its reason in the solution's `failures`, and no flows.
    """
    return Prepared(network, states, friction).run(iteration_bound)


class Prepared:
    """A network laid out for its states, to be solved as often as asked. Raises ValueError, see `solve`."""

    def __init__(
        self, network: Network, states: Sequence[State] = (State(),), friction: Friction | None = None
    ) -> None:
        import numpy as np

        network.check()
        self.network, self.states = network, tuple(states)
        self.friction = friction or colebrook_white
        self.reduced = reduced = reduce(network, states)
        sums = [summed(network.links, chain) for chain in reduced.chains]
        found = rows(reduced, sums, self.states)
        is_still = not network.fixed_pa and not any(network.drawn_m3_s.values())
        solved = [place for place, row in enumerate(found.rows) if row.driven or not is_still]
        self.rows = [found.rows[place] for place in solved]
        number = {place: row for row, place in enumerate(solved)}
        self.row_told = [found.rows[place] for place in found.of_state]
        self.row_of_state = [number.get(place, -1) for place in found.of_state]
        self.fixed = {reduced.node[node]: pressure for node, pressure in network.fixed_pa.items()}
        if any(self.fixed[reduced.node[node]] != pressure for node, pressure in network.fixed_pa.items()):
            raise ValueError("a wide way joins nodes with two pressures given")
        self.free = [node for node in range(reduced.count) if node not in self.fixed]
        self.column = {node: place for place, node in enumerate(self.free)}
        self.ends = [(reduced.node[chain.a], reduced.node[chain.b]) for chain in reduced.chains]
        unknown = len(self.free)
        columns = [[self.column.get(end, unknown) for end in ends] for ends in self.ends]
        a, b = np.array(columns, dtype=np.intp).reshape(-1, 2).T
        self.balance = balance(a, b, unknown, len(self.rows))
        given = [self.fixed.get(a, 0.0) - self.fixed.get(b, 0.0) for a, b in self.ends]
        self.laws = Laws(network, sums, self.rows, given, self.friction)
        self._drawn()
        self._grounded()

    def _drawn(self) -> None:
        import numpy as np

        at = [0.0] * (len(self.free) + 1)
        for node, flow in self.network.drawn_m3_s.items():
            if flow:
                at[self.column.get(self.reduced.node[node], -1)] += flow
        drawn = np.tile(np.array(at[:-1]), (len(self.rows), 1))
        self.drawn = self.balance.arranged(drawn)

    def _grounded(self) -> None:
        """One node of every piece that no given pressure reaches is tied to zero."""
        import numpy as np

        grounds = np.zeros((len(self.rows), len(self.free)))
        self.cut_off: dict[int, Failure] = {}
        pieces = pieces_by_row(self.reduced.count, self.ends, [row.open for row in self.rows])
        for number, piece in enumerate(pieces):
            roots, why = self._roots(piece)
            grounds[number, roots] = GROUND
            if why:
                self.cut_off[number] = Failure(why, ())
        self.grounds = self.balance.arranged(grounds)

    def _roots(self, piece: Sequence[int]) -> tuple[list[int], str]:
        """A column of each piece without a given pressure, and what is wrong if water is drawn there."""
        held = {piece[node] for node in self.fixed}
        roots: dict[int, int] = {}
        for node, place in self.column.items():
            if piece[node] not in held:
                roots.setdefault(piece[node], place)
        drawn = dict.fromkeys(roots, 0.0)
        for old, flow in self.network.drawn_m3_s.items():
            if flow and (number := piece[self.reduced.node[old]]) in drawn:
                drawn[number] += flow
        worst = max(map(abs, drawn.values()), default=0.0)
        return list(roots.values()), CUT_OFF.format(litres=worst * 1000) if worst > 1e-12 else ""

    def run(self, bound: int = ITERATION_BOUND) -> Solution:
        """Iterate, from fresh starting flows, until every row has settled, or the bound."""
        import numpy as np

        descent = Descent(self.laws, self.balance, self.drawn, self.grounds)
        settled = descent.run(bound)
        failures = dict(self.cut_off)
        for row in np.flatnonzero(~settled).tolist():
            failures.setdefault(row, self._failure(descent, row))
        # What leaks past a valve that stops the water is the method's, not the valve's.
        flow = np.where(np.abs(descent.flow) <= LEAK_M3_S, 0.0, descent.flow)
        flow[self.laws.stops(descent.flow)] = 0.0
        pressure = np.zeros((len(self.rows) + 1, self.reduced.count))
        pressure[:, list(self.fixed)] = list(self.fixed.values())
        pressure[:-1, self.free] = self.balance.restored(descent.pressure)
        # Behind the rows that were solved, one for the states in which nothing drives the water.
        flows = np.zeros((len(self.rows) + 1, len(self.ends)))
        flows[:-1] = flow.reshape(len(self.rows), len(self.ends))
        return Solution(
            self.network,
            self.states,
            self.reduced,
            flows[self.row_of_state],
            pressure[self.row_of_state],
            {state: failures[row] for state, row in enumerate(self.row_of_state) if row in failures},
            descent.steps,
            self.friction,
            self.row_told,
        )

    def _failure(self, descent: Descent, row: int) -> Failure:
        import numpy as np

        gap = np.abs(descent.gap.reshape(len(self.rows), -1)[row])
        bad = ~np.isfinite(gap)
        worst = int(np.argmax(np.where(bad, np.inf, gap)))
        chain: Chain = self.reduced.chains[worst]
        links = tuple(place for place, _ in chain.steps)
        if bad.any():
            return Failure(NO_NUMBER, links)
        return Failure(NOT_SETTLED.format(steps=descent.steps, pascals=gap[worst]), links)
