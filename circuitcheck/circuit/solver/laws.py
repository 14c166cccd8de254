"""The chains of a network as arrays: pressure lost and its slope for any flows, all states at once."""

from __future__ import annotations

from collections.abc import Sequence
from math import pi
from typing import TYPE_CHECKING

from circuitcheck.circuit.solver.chains import Reduced, Sums, summed
from circuitcheck.circuit.solver.network import Network, State
from circuitcheck.circuit.solver.solution import TINY_REYNOLDS

if TYPE_CHECKING:
    from numpy import bool_
    from numpy.typing import NDArray

    from circuitcheck.circuit.solver.friction import Floats, Friction

BARRED_PA_S_M3 = 1e14
"""Pa/(m³/s): how steeply pressure rises where a valve stops water."""

LEAK_M3_S = 2e-9
"""0.0001 l/min: no more flow than the method itself lets through a valve that stops 2 bar."""

SMOOTH_M3_S = 2e-8
LEAST_SLOPE_PA_S_M3 = 1e3
"""A square law k Q|Q| is reckoned as k Q √(Q² + s²), with a slope in still water that is not 0: s is 0.001
l/min, or, in a chain without any pipe, so much more that the slope is at least 1 Pa a litre a second."""

START_M_S = 0.3
START_M3_S = 1e-4


class Laws:
    """Pressure lost along each chain, from its flow: rows are states, columns chains."""

    def __init__(
        self, network: Network, reduced: Reduced, states: Sequence[State], friction: Friction
    ) -> None:
        import numpy as np

        sums = [summed(network.links, chain) for chain in reduced.chains]
        count = len(sums)
        self.quadratic = np.array([each.quadratic for each in sums])
        self.limit = np.array([each.limit_m3_s for each in sums])
        self._limited = bool(np.isfinite(self.limit).any())
        self._not_back = np.array([not each.backward for each in sums], dtype=bool)
        self._not_forward = np.array([not each.forward for each in sums], dtype=bool)
        self._barred = bool((self._not_back | self._not_forward).any())
        self.offset = np.array([each.opens_at_pa for each in sums]) * np.ones((len(states), 1))
        for column, each in enumerate(sums):
            for place, head in each.pumps:
                for row, state in enumerate(states):
                    if place not in state.stopped:
                        self.offset[row, column] -= head
        self.open = np.ones((len(states), count), dtype=bool)
        for row, state in enumerate(states):
            if state.shut:
                for column, chain in enumerate(reduced.chains):
                    if any(place in state.shut for place, _ in chain.steps):
                        self.open[row, column] = False
        self._tubes(network, sums, friction)

    def _tubes(self, network: Network, sums: Sequence[Sums], friction: Friction) -> None:
        import numpy as np

        rows = [(column, *tube) for column, each in enumerate(sums) for tube in each.friction]
        table = np.array(rows, dtype=float).reshape(-1, 4)
        self._column = table[:, 0].astype(int)
        length, diameter, roughness = table[:, 1], table[:, 2], table[:, 3]
        density, viscosity = network.density_kg_m3, network.viscosity_pa_s
        self._law = friction(roughness / diameter) if len(rows) else None
        self._reynolds = 4 * density / (pi * diameter * viscosity)
        # Darcy-Weisbach with v = Q/A: what stands before f · Q|Q|, over Reynolds for one m³/s.
        self._scale = 8 * density * length / (pi**2 * diameter**5) / self._reynolds
        self._plain = len(rows) == len(sums) and bool((self._column == np.arange(len(sums))).all())
        # Tubes stand in the order of their chains: where each chain's begin, to add up by.
        self._chains, self._begins = np.unique(self._column, return_index=True)
        bare = np.ones(len(sums), dtype=bool)
        bare[self._column] = False
        wide = LEAST_SLOPE_PA_S_M3 / np.maximum(self.quadratic, 1.0)
        self._smooth = np.where(bare, np.maximum(wide, SMOOTH_M3_S), SMOOTH_M3_S) ** 2
        self._start = np.full(len(sums), START_M3_S)
        self._start[self._column] = START_M_S * pi * diameter**2 / 4

    def start(self) -> Floats:
        """A flow to begin from in every chain that is open."""
        import numpy as np

        flow = np.where(self._not_forward, -self._start, self._start)
        flow = np.clip(flow, -self.limit, self.limit)
        return flow * self.open

    def stops(self, flow: Floats) -> NDArray[bool_]:
        """Where a one-way passage stops water that would go that way."""
        result: NDArray[bool_] = (self._not_back & (flow < 0)) | (self._not_forward & (flow > 0))
        return result

    def lost(self, flow: Floats) -> tuple[Floats, Floats]:
        """The pressure lost in pascals and its slope, for flows in m³/s."""
        import numpy as np

        size = np.abs(flow)
        round_zero = np.sqrt(flow * flow + self._smooth)
        lost = self.offset + self.quadratic * flow * round_zero
        slope = self.quadratic * (round_zero + flow * flow / round_zero)
        if self._law is not None:
            tubes = size if self._plain else size[:, self._column]
            product, grows = self._law(np.maximum(tubes * self._reynolds, TINY_REYNOLDS))
            per_flow, rise = self._scale * product, self._scale * (product + grows)
            if self._plain:
                lost += per_flow * flow
                slope += rise
            else:
                lost[:, self._chains] += (
                    np.add.reduceat(per_flow, self._begins, axis=1) * flow[:, self._chains]
                )
                slope[:, self._chains] += np.add.reduceat(rise, self._begins, axis=1)
        if self._barred:
            wrong = self.stops(flow)
            lost += np.where(wrong, BARRED_PA_S_M3 * flow, 0.0)
            slope += np.where(wrong, BARRED_PA_S_M3, 0.0)
        if self._limited:
            over = np.maximum(size - self.limit, 0.0)
            lost += BARRED_PA_S_M3 * np.sign(flow) * over
            slope += np.where(over > 0, BARRED_PA_S_M3, 0.0)
        return lost, slope
