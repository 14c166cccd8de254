"""Solves a network in all its states: flows and pressures, or which part does not settle, and why.

The global gradient method of Todini and Pilati ("A gradient algorithm for the analysis of pipe
networks", 1988): Newton's method on flows and node pressures together. Every link's pressure rises
with its flow, so the true flows are the one minimum of a convex function, the network's content; a
step that overshoots the minimum along its way is shortened, which makes the method converge from any
start. One-way passages, springs and limits are steep laws in the same function.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

from circuitcheck.circuit.solver.balance import balance
from circuitcheck.circuit.solver.chains import Chain, reduce
from circuitcheck.circuit.solver.friction import colebrook_white
from circuitcheck.circuit.solver.laws import BARRED_PA_S_M3, LEAK_M3_S, Laws
from circuitcheck.circuit.solver.network import Network, State
from circuitcheck.circuit.solver.solution import Failure, Solution

if TYPE_CHECKING:
    from circuitcheck.circuit.solver.friction import Floats, Friction

ITERATION_BOUND = 200
FLOW_TOLERANCE = 1e-6
FLOW_M3_S = 1e-9
ROUNDING_M3_S = 1e-13
"""Less movement than this is rounding: 10 Pa across a valve that stops water, nothing elsewhere."""

PRESSURE_TOLERANCE = 1e-7
PRESSURE_PA = 1e-3
SHORTENING_BOUND = 40
GROUND = 1e-6
"""m³/s a pascal: ties one node of a closed circuit to zero, through which nothing flows."""

NOT_SETTLED = "after {steps} steps the pressures on this stretch still differ by {pascals:.4g} Pa"
CUT_OFF = "{litres:.4g} l/s are drawn where no way leads from a given pressure"
NO_NUMBER = "the numbers of this stretch are too far apart to be computed with"


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
        self.laws = Laws(network, reduced, states, self.friction)
        fixed = {reduced.node[node]: pressure for node, pressure in network.fixed_pa.items()}
        self.free = [node for node in range(reduced.count) if node not in fixed]
        self.column = {node: place for place, node in enumerate(self.free)}
        unknown = len(self.free)
        self.ends = [(reduced.node[chain.a], reduced.node[chain.b]) for chain in reduced.chains]
        columns = [[self.column.get(end, unknown) for end in ends] for ends in self.ends]
        self.a, self.b = np.array(columns, dtype=np.intp).reshape(-1, 2).T
        self.balance = balance(self.a, self.b, unknown)
        self.given = np.array([fixed.get(a, 0.0) - fixed.get(b, 0.0) for a, b in self.ends])
        self.drawn = np.zeros(unknown)
        for node, flow in network.drawn_m3_s.items():
            if (place := self.column.get(reduced.node[node])) is not None:
                self.drawn[place] += flow
        self.cut_off: dict[int, Failure] = {}
        self.flow = self.laws.start()
        self.pressure = np.zeros((len(states), reduced.count))
        for node, pressure in fixed.items():
            self.pressure[:, node] = pressure
        self.grounds = self._grounded(fixed)

    def _grounded(self, fixed: Mapping[int, float]) -> Floats:
        """One node of every piece that no given pressure reaches is tied to zero."""
        import numpy as np

        grounds = np.zeros((self.flow.shape[0], len(self.free)))
        known: dict[bytes, tuple[list[int], str]] = {}
        for row, is_open in enumerate(self.laws.open):
            key = is_open.tobytes()
            if key not in known:
                known[key] = self._roots([bool(each) for each in is_open], fixed)
            roots, why = known[key]
            grounds[row, roots] = GROUND
            if why:
                self.cut_off[row] = Failure(why, ())
        return grounds

    def _roots(self, is_open: list[bool], fixed: Mapping[int, float]) -> tuple[list[int], str]:
        parent = list(range(self.reduced.count))

        def find(node: int) -> int:
            while parent[node] != node:
                parent[node] = node = parent[parent[node]]
            return node

        for (a, b), passes in zip(self.ends, is_open, strict=True):
            if passes:
                parent[find(a)] = find(b)
        held = {find(node) for node in fixed}
        drawn: dict[int, float] = {}
        roots: dict[int, int] = {}
        for node, place in self.column.items():
            piece = find(node)
            if piece not in held:
                roots.setdefault(piece, place)
                drawn[piece] = drawn.get(piece, 0.0) + float(self.drawn[place])
        worst = max((abs(flow) for flow in drawn.values()), default=0.0)
        why = CUT_OFF.format(litres=worst * 1000) if worst > 1e-12 else ""
        return list(roots.values()), why

    def run(self, bound: int = ITERATION_BOUND) -> Solution:
        """Iterate, from fresh starting flows, until every state has settled, or the bound."""
        self.flow, self.steps = self.laws.start(), 0
        self.failures = dict(self.cut_off)
        if self.flow.size:
            self._iterate(bound)
        # What leaks past a valve that stops the water is the method's, not the valve's.
        flow = self.flow * ~self.laws.stops(self.flow) * (abs(self.flow) > LEAK_M3_S)
        return Solution(
            self.network,
            self.states,
            self.reduced,
            flow,
            self.pressure.copy(),
            self.failures,
            self.steps,
            self.friction,
        )

    def _iterate(self, bound: int) -> None:
        import numpy as np

        with np.errstate(all="ignore"):
            settled = np.zeros(len(self.flow), dtype=bool)
            lost, slope = self.laws.lost(self.flow)
            difference = np.zeros_like(self.flow)
            while not settled.all() and self.steps < bound:
                difference, step = self._step(lost, slope)
                step[settled] = 0.0  # noise may not unsettle it while others are still on their way
                flow, lost, slope, shortened = self._along(step, difference, lost)
                settled |= self._settled(flow, step, difference, lost) & ~shortened
                self.flow = flow
                self.steps += 1
        for row in np.flatnonzero(~settled):
            self.failures.setdefault(int(row), self._failure(int(row), lost, difference))

    def _step(self, lost: Floats, slope: Floats) -> tuple[Floats, Floats]:
        """The differences of pressure along the chains, and the change of flow, of Newton's step."""
        import numpy as np

        conductance = np.where(self.laws.open, 1 / slope, 0.0)
        still = self.flow - conductance * (lost - self.given)
        right = -self.drawn - self.balance.gathered(still)
        try:
            pressure = self.balance.solve(conductance, self.grounds, right)
        except np.linalg.LinAlgError:
            pressure = np.full_like(right, np.nan)
        self.pressure[:, self.free] = pressure
        padded = np.concatenate([pressure, np.zeros((len(pressure), 1))], axis=1)
        difference = padded[:, self.a] - padded[:, self.b] + self.given
        return difference, conductance * (difference - lost)

    def _along(
        self, step: Floats, difference: Floats, lost: Floats
    ) -> tuple[Floats, Floats, Floats, NDArray[bool_]]:
        """The flows after the step, shortened in a state where it overshoots the content's minimum."""
        import numpy as np

        flow = self.flow + step
        now, slope = self.laws.lost(flow)
        shortened = np.zeros(len(flow), dtype=bool)
        if self.steps == 0:
            return flow, now, slope, shortened  # the first step alone makes the flows balance
        falls = np.einsum("ij,ij->i", step, lost - difference)
        rises = np.einsum("ij,ij->i", step, now - difference)
        noise = 1e-12 * np.einsum("ij,ij->i", np.abs(step), np.abs(now) + np.abs(difference))
        over = rises > np.maximum(0.5 * np.abs(falls), noise)
        if not over.any():
            return flow, now, slope, shortened
        low, high = np.zeros(len(flow)), np.ones(len(flow))
        share = np.where(over, 0.5, 1.0)
        for _ in range(SHORTENING_BOUND):
            flow = self.flow + share[:, None] * step
            now, slope = self.laws.lost(flow)
            rises = np.einsum("ij,ij->i", step, now - difference)
            too_far = over & (rises > 0.5 * np.abs(falls))
            too_near = over & (rises < -0.5 * np.abs(falls))
            if not (too_far | too_near).any():
                break
            high, low = np.where(too_far, share, high), np.where(too_near, share, low)
            share = np.where(too_far | too_near, (low + high) / 2, share)
        return flow, now, slope, over

    def _settled(self, flow: Floats, step: Floats, difference: Floats, lost: Floats) -> NDArray[bool_]:
        import numpy as np

        is_open = self.laws.open
        size = np.abs(flow).sum(axis=1)
        moved = np.abs(step).sum(axis=1)
        still = moved <= FLOW_TOLERANCE * size + FLOW_M3_S
        gaps = np.where(is_open, np.abs(difference - lost), 0.0)
        # A valve that stops water holds whatever stands across it, to the last digit of a flow of nothing.
        holds = self.laws.stops(flow) & (2 * gaps < BARRED_PA_S_M3 * np.abs(flow))
        gap = np.where(holds, 0.0, gaps).max(axis=1)
        heads = np.where(is_open, np.abs(self.laws.offset) + np.abs(difference), 0.0).max(axis=1)
        result: NDArray[bool_] = still & (
            (gap <= PRESSURE_TOLERANCE * heads + PRESSURE_PA) | (moved <= ROUNDING_M3_S)
        )
        return result

    def _failure(self, row: int, lost: Floats, difference: Floats) -> Failure:
        import numpy as np

        gap = np.where(self.laws.open[row], np.abs(difference[row] - lost[row]), 0.0)
        bad = ~np.isfinite(gap)
        worst = int(np.argmax(np.where(bad, np.inf, gap)))
        chain: Chain = self.reduced.chains[worst]
        links = tuple(place for place, _ in chain.steps)
        if bad.any():
            return Failure(NO_NUMBER, links)
        return Failure(NOT_SETTLED.format(steps=self.steps, pascals=gap[worst]), links)


if TYPE_CHECKING:
    from numpy import bool_
    from numpy.typing import NDArray
