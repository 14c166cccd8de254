"""Newton's steps from starting flows to settled ones, all rows at once."""

from __future__ import annotations

from typing import TYPE_CHECKING

from circuitcheck.circuit.solver.balance import Balance
from circuitcheck.circuit.solver.laws import BARRED_PA_S_M3, Laws

if TYPE_CHECKING:
    from numpy import bool_
    from numpy.typing import NDArray

    from circuitcheck.circuit.solver.friction import Floats

    Bools = NDArray[bool_]

FREE_STEPS = 8
"""So many are taken whole and unproved; from then on each must lower the content."""

FLOW_TOLERANCE = 1e-9
FLOW_M3_S = 1e-13
"""What the next step would still move, all chains together, once the flows have settled."""

MOVED_TOLERANCE = 1e-3
MOVED_M3_S = 1e-11
"""More than this moved, and the law of friction may not have caught up with the flows."""

ENDED_TOLERANCE = 1e-8
ENDED_M3_S = 1e-12
"""No more than this moved, and the flows have settled, whatever rounding says of the next step."""

PATIENCE = 40
COARSE_TOLERANCE = 1e-6
COARSE_M3_S = 1e-9
"""After so many steps, what these do not reach is taken for rounding's doing."""

ROUNDING_M3_S = 1e-13
"""Less movement than this is rounding: 10 Pa across a valve that stops water, nothing elsewhere."""

PRESSURE_TOLERANCE = 1e-7
PRESSURE_PA = 1e-3
SHORTENING_BOUND = 40


class Descent:
    """The flows of all rows on their way."""

    def __init__(self, laws: Laws, balance: Balance, drawn: Floats, grounds: Floats) -> None:
        import numpy as np

        self.laws, self.balance, self._drawn, self._grounds = laws, balance, drawn, grounds
        self.flow = laws.start()
        self.pressure = np.zeros(balance.size)
        self.gap = np.zeros_like(self.flow)
        self.steps = 0

    def run(self, bound: int) -> Bools:
        """Step until every row has settled, or so often; which rows have."""
        import numpy as np

        settled = np.zeros(self.laws.rows, dtype=bool)
        if not self.flow.size:
            return ~settled
        with np.errstate(all="ignore"):
            lost, slope = self.laws.lost(self.flow)
            while self.steps < bound and not settled.all():
                lost, slope, now = self._step(lost, slope, settled)
                settled |= now
                self.steps += 1
        return settled

    def _step(self, lost: Floats, slope: Floats, settled: Bools) -> tuple[Floats, Floats, Bools]:
        """One step of every row that has not settled; the new losses, their slopes, and which have now."""
        import numpy as np

        conductance = self.laws.open / slope
        right = self.balance.gathered(conductance * lost - self.flow) - self._drawn
        try:
            self.pressure = self.balance.solve(conductance, self._grounds, right)
        except np.linalg.LinAlgError:
            self.pressure = np.full_like(right, np.nan)
        difference = self.balance.differences(self.pressure)
        step = conductance * (difference - lost)
        if self.steps and settled.any():
            # Noise may not unsettle it while others are still on their way.
            step *= np.repeat(~settled, self.laws.chains)
        before = self.flow
        self.flow = before + step
        if self.steps < FREE_STEPS:
            whole = self._held(before)
            now, slope = self.laws.lost(self.flow)
        else:
            now, slope, whole = self._shortened(before, step, difference, lost)
        self.gap = (difference - now) * self.laws.open
        return now, slope, self._settled(step, slope, difference) & whole

    def _held(self, before: Floats) -> Bools:
        """Hold flows where valves begin to stop them; the rows in which none had to be."""
        import numpy as np

        whole = np.ones(self.laws.rows, dtype=bool)
        if self.laws.hinders and (changed := self.laws.held(self.flow, before)).size:
            whole[changed // self.laws.chains] = False
        return whole

    def _by_row(self, values: Floats) -> Floats:
        return values.reshape(self.laws.rows, self.laws.chains)

    def _sums(self, values: Floats) -> Floats:
        """Added up for each row."""
        import numpy as np

        result: Floats = np.add.reduce(self._by_row(values), axis=1)
        return result

    def _shortened(
        self, before: Floats, step: Floats, difference: Floats, lost: Floats
    ) -> tuple[Floats, Floats, Bools]:
        """The losses after the step, shortened in a row where it overshoots the content's minimum."""
        import numpy as np

        now, slope = self.laws.lost(self.flow)
        if self.steps == FREE_STEPS:
            return now, slope, np.ones(self.laws.rows, dtype=bool)  # this step alone makes the flows balance
        falls = np.abs(self._sums(step * (lost - difference)))
        rises = self._sums(step * (now - difference))
        noise = 1e-12 * self._sums(np.abs(step) * (np.abs(now) + np.abs(difference)))
        over = rises > np.maximum(0.5 * falls, noise)
        if not over.any():
            return now, slope, ~over
        low, high = np.zeros(len(over)), np.ones(len(over))
        share = np.where(over, 0.5, 1.0)
        for _ in range(SHORTENING_BOUND):
            self.flow = before + np.repeat(share, self.laws.chains) * step
            now, slope = self.laws.lost(self.flow)
            rises = self._sums(step * (now - difference))
            too_far = over & (rises > 0.5 * falls)
            too_near = over & (rises < -0.5 * falls)
            if not (too_far | too_near).any():
                break
            high, low = np.where(too_far, share, high), np.where(too_near, share, low)
            share = np.where(too_far | too_near, (low + high) / 2, share)
        return now, slope, ~over

    def _settled(self, step: Floats, slope: Floats, difference: Floats) -> Bools:
        import numpy as np

        size, moved = self._sums(np.abs(self.flow)), self._sums(np.abs(step))
        still = moved <= MOVED_TOLERANCE * size + MOVED_M3_S
        if not still.any():
            return still
        gaps = np.abs(self.gap)
        still &= self._sums(gaps / slope) <= FLOW_TOLERANCE * size + FLOW_M3_S
        still |= moved <= ENDED_TOLERANCE * size + ENDED_M3_S
        if self.steps >= PATIENCE:
            still |= moved <= COARSE_TOLERANCE * size + COARSE_M3_S
        if not still.any():
            return still
        # A valve that stops water holds whatever stands across it, to the last digit of a flow of nothing.
        places = self.laws.stops(self.flow)
        gaps[places[2 * gaps[places] < BARRED_PA_S_M3 * np.abs(self.flow[places])]] = 0.0
        gap = self._by_row(gaps).max(axis=1)
        heads = self._by_row((np.abs(self.laws.offset) + np.abs(difference)) * self.laws.open).max(axis=1)
        result: Bools = still & ((gap <= PRESSURE_TOLERANCE * heads + PRESSURE_PA) | (moved <= ROUNDING_M3_S))
        return result
