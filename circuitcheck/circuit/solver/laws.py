"""The chains of a network as arrays: pressure lost and its slope for any flows, all rows at once.

Arrays here are flat, the chains of one row after those of another: numbers that lie side by side in the
same shape are worked through fastest, and at the size of a house that is what time goes on.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite, pi
from typing import TYPE_CHECKING

from circuitcheck.circuit.solver.balance import added
from circuitcheck.circuit.solver.chains import Sums
from circuitcheck.circuit.solver.network import Network
from circuitcheck.circuit.solver.rows import Row

if TYPE_CHECKING:
    from numpy import bool_, intp
    from numpy.typing import NDArray

    from circuitcheck.circuit.solver.friction import Floats, Friction

BARRED_PA_S_M3 = 1e14
"""Pa/(m³/s): how steeply pressure rises where a valve stops water."""

LEAK_M3_S = 2e-9
"""0.0001 l/min: no more flow than the method itself lets through a valve that stops 2 bar."""

SMOOTH_M3_S = 2e-8
ROUNDED_PA = 1e-3
LEAST_SLOPE_PA_S_M3 = 1e3
"""Without any pipe in its chain, a square law k Q|Q| is reckoned as k Q √(Q² + s²), with a slope in still
water that is not 0: s is 0.001 l/min, or what a thousandth of a pascal drives where that is less; and at
least so much that the slope is 1 Pa a litre a second."""

START_M_S = 0.3
START_M3_S = 1e-4
NO_TUBE = (0.0, 0.02, 0.0)
"""Length, diameter and roughness of what stands for a tube in a chain without one."""

BARELY_M3_S = 1e-15
"""How far a flow is put beyond the point from which a valve stops it, for the valve's law to hold."""


class Laws:
    """Pressure lost along each chain beyond what is given between its ends, from its flow."""

    def __init__(
        self,
        network: Network,
        sums: Sequence[Sums],
        rows: Sequence[Row],
        given_pa: Sequence[float],
        friction: Friction,
    ) -> None:
        import numpy as np

        self.rows, self.chains = len(rows), len(sums)
        self.open = np.array([row.open for row in rows], dtype=float).ravel()
        self.offset = np.array([row.offset_pa for row in rows]).ravel() - self._each(given_pa)
        self._quadratic = self._each([each.quadratic for each in sums])
        self._tubes(network, sums, friction)
        self._hindered(sums)

    def _each(self, values: Sequence[float]) -> Floats:
        """A value for each chain, told again for every row."""
        import numpy as np

        return np.tile(np.array(values, dtype=float), self.rows)

    def _tubes(self, network: Network, sums: Sequence[Sums], friction: Friction) -> None:
        import numpy as np

        tubes = [(column, *tube) for column, each in enumerate(sums) for tube in each.friction or (NO_TUBE,)]
        table = np.tile(np.array(tubes, dtype=float).reshape(-1, 4), (self.rows, 1))
        column, length, diameter, roughness = table.T
        density, viscosity = network.density_kg_m3, network.viscosity_pa_s
        self._law = friction(roughness / diameter)
        self._reynolds = 4 * density / (pi * diameter * viscosity)
        # Darcy-Weisbach with v = Q/A: what stands before f · Q|Q|, over Reynolds for one m³/s.
        self._scale = 8 * density * length / (pi**2 * diameter**5) / self._reynolds
        self._chain_of_tube: NDArray[intp] | None = None
        if len(tubes) > len(sums):
            first = np.repeat(self.chains * np.arange(self.rows), len(tubes))
            self._chain_of_tube = first + column.astype(np.intp)
        self._bare = np.flatnonzero([not each.friction for each in sums] * self.rows)
        law = self._quadratic[self._bare]
        rounded = np.minimum(SMOOTH_M3_S, np.sqrt(ROUNDED_PA / law))
        self._smooth = np.maximum(LEAST_SLOPE_PA_S_M3 / law, rounded) ** 2
        widest = [max((tube[1] for tube in each.friction), default=0.0) for each in sums]
        start = [START_M_S * pi * width**2 / 4 if width else START_M3_S for width in widest]
        self._start = self._each(start)

    def _hindered(self, sums: Sequence[Sums]) -> None:
        """Where water may go one way only, where none may, and where no more than so much."""
        import numpy as np

        one_way = [place for place, each in enumerate(sums) if each.forward != each.backward]
        limited = [place for place, each in enumerate(sums) if isfinite(each.limit_m3_s)]
        first = self.chains * np.arange(self.rows)[:, None]
        self.one_way = (first + np.array(one_way, dtype=np.intp)).ravel()
        self._limited = (first + np.array(limited, dtype=np.intp)).ravel()
        self._way = np.tile(np.array([1.0 if sums[place].forward else -1.0 for place in one_way]), self.rows)
        self._limit = np.tile(np.array([sums[place].limit_m3_s for place in limited], dtype=float), self.rows)

    @property
    def hinders(self) -> bool:
        """Whether anything is there that may stop the water."""
        return bool(self.one_way.size or self._limited.size)

    def start(self) -> Floats:
        """A flow to begin from in every chain that is open."""
        import numpy as np

        flow = self._start.copy()
        flow[self.one_way] *= self._way
        flow[self._limited] = np.clip(flow[self._limited], -self._limit, self._limit)
        self._law.forget()
        return np.asarray(flow * self.open)

    def _stopped(self, flow: Floats) -> NDArray[bool_]:
        """Of `one_way`, which stop water that would go that way."""
        result: NDArray[bool_] = flow[self.one_way] * self._way < 0
        return result

    def stops(self, flow: Floats) -> NDArray[intp]:
        """The places where a one-way passage stops water that would go that way."""
        return self.one_way[self._stopped(flow)]

    def held(self, flow: Floats, before: Floats) -> NDArray[intp]:
        """Hold flows, in place, to where a valve they would have come past begins to stop them; where one
        that stopped water opens, begin afresh. Gives the places so changed."""
        import numpy as np

        changed = []
        if self.one_way.size:
            shuts = self._stopped(flow)
            turns = np.flatnonzero(shuts != self._stopped(before))
            if turns.size:
                places = self.one_way[turns]
                size = np.where(shuts[turns], -BARELY_M3_S, self._start[places])
                flow[places] = size * self._way[turns]
                changed.append(places)
        if self._limited.size:
            there, earlier = np.abs(flow[self._limited]), np.abs(before[self._limited])
            over = (there > self._limit) & (earlier <= self._limit)
            if over.any():
                places = self._limited[over]
                flow[places] = np.copysign(self._limit[over] + BARELY_M3_S, flow[places])
                changed.append(places)
        return np.concatenate(changed) if changed else np.zeros(0, dtype=np.intp)

    def lost(self, flow: Floats) -> tuple[Floats, Floats]:
        """The pressure lost in pascals and its slope, for flows in m³/s."""
        import numpy as np

        size = np.abs(flow)
        fittings = self._quadratic * size
        rubs, rises = self._rubbed(size)
        lost = (fittings + rubs) * flow + self.offset
        slope = fittings + fittings + rises
        if self._bare.size:
            self._round(flow, lost, slope)
        if self.one_way.size:
            places = self.stops(flow)
            lost[places] += BARRED_PA_S_M3 * flow[places]
            slope[places] += BARRED_PA_S_M3
        if self._limited.size:
            over = size[self._limited] - self._limit
            beyond = over > 0
            places = self._limited[beyond]
            lost[places] += np.copysign(BARRED_PA_S_M3 * over[beyond], flow[places])
            slope[places] += BARRED_PA_S_M3
        return lost, slope

    def _round(self, flow: Floats, lost: Floats, slope: Floats) -> None:
        """The square law of chains without a pipe, rounded about still water, in place of the plain one."""
        import numpy as np

        here, quadratic = flow[self._bare], self._quadratic[self._bare]
        size, square = np.abs(here), here * here
        rounded = np.sqrt(square + self._smooth)
        lost[self._bare] += quadratic * (rounded - size) * here
        slope[self._bare] += quadratic * (rounded + square / rounded - 2 * size)

    def _rubbed(self, size: Floats) -> tuple[Floats, Floats]:
        """Friction over flow, and friction's slope, of each chain."""

        chains = self._chain_of_tube
        product, grows = self._law((size if chains is None else size[chains]) * self._reynolds)
        rubs, rises = self._scale * product, self._scale * (product + grows)
        if chains is None:
            return rubs, rises
        return added(chains, rubs, len(size)), added(chains, rises, len(size))
