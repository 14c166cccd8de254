"""The linear step: node pressures for given slopes. Dense for a house, banded or sparse beyond."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from numpy import intp
    from numpy.typing import NDArray

    from circuitcheck.circuit.solver.friction import Floats

    Ints = NDArray[intp]

DENSE_UP_TO = 48
"""Nodes; below, all states are solved in one call of the dense solver."""

BAND_WORK_BOUND = 3e8
"""Nodes times band width squared; beyond, sparse factors fill less than the band does."""


def _added(places: Ints, values: Floats, size: int) -> Floats:
    """Values added up by place."""
    import numpy as np

    return np.asarray(np.bincount(places, values, size), dtype=np.float64)


class Dense:
    """Every state's matrix whole, all solved in one call.

    Added up by `bincount`: at this size a product of matrices costs more in waking threads than it saves.
    """

    def __init__(self, a: Ints, b: Ints, unknown: int) -> None:
        import numpy as np

        # Ends at a given pressure have a row and a column of their own, which are cut off.
        self._ends = np.concatenate([a, b])
        self._size = size = unknown + 1
        self._entries = np.concatenate([a * size + a, b * size + b, a * size + b, b * size + a])

    def gathered(self, along: Floats) -> Floats:
        """What leaves each node along its chains, from a value along each chain."""
        import numpy as np

        signed = np.concatenate([along, -along], axis=1)
        return self._added(self._ends, signed, self._size)[:, :-1]

    @staticmethod
    def _added(places: Ints, values: Floats, size: int) -> Floats:
        """Values added up by place, each row for itself."""
        import numpy as np

        rows = len(values)
        everywhere = places + size * np.arange(rows)[:, None]
        return _added(everywhere.ravel(), values.ravel(), rows * size).reshape(rows, size)

    def solve(self, conductance: Floats, grounds: Floats, right: Floats) -> Floats:
        """Pressures at the unknown nodes, one row a state."""
        import numpy as np

        size = self._size
        shares = np.concatenate([conductance, conductance, -conductance, -conductance], axis=1)
        matrix = self._added(self._entries, shares, size * size).reshape(-1, size, size)[:, :-1, :-1]
        diagonal = np.arange(size - 1)
        matrix[:, diagonal, diagonal] += grounds
        return np.asarray(np.linalg.solve(matrix, right[:, :, None])[:, :, 0], dtype=np.float64)


class Sparse:
    """One state after the other, each matrix by its band in the reverse Cuthill-McKee order."""

    def __init__(self, a: Ints, b: Ints, unknown: int) -> None:
        import numpy as np
        from scipy.sparse import csr_array  # type: ignore[import-untyped]  # ships no types
        from scipy.sparse.csgraph import reverse_cuthill_mckee  # type: ignore[import-untyped]  # ships no types

        inner = (a < unknown) & (b < unknown) & (a != b)
        ones = np.ones(2 * inner.sum())
        pattern = csr_array(
            (ones, (np.r_[a[inner], b[inner]], np.r_[b[inner], a[inner]])), shape=(unknown, unknown)
        )
        order = np.asarray(reverse_cuthill_mckee(pattern, symmetric_mode=True), dtype=np.intp)
        place = np.empty(unknown + 1, dtype=np.intp)
        place[order] = np.arange(unknown)
        place[unknown] = unknown
        self._place, self._order, self.unknown = place, order, unknown
        self._a, self._b = place[a], place[b]
        self._a_in, self._b_in = a < unknown, b < unknown
        self._inner = inner
        low, high = np.minimum(self._a, self._b)[inner], np.maximum(self._a, self._b)[inner]
        self._low, self._high = low, high
        self.width = int((high - low).max(initial=0))
        self._banded = unknown * float(self.width) ** 2 <= BAND_WORK_BOUND
        # Lower band, column by column as LAPACK has it: entry (i, j) lies at j, i − j.
        self._at_pair = low * (self.width + 1) + (high - low)
        self._loose = a != b

    def gathered(self, along: Floats) -> Floats:
        """What leaves each node along its chains, from a value along each chain."""
        import numpy as np

        return np.stack([self._gather(row)[self._place[:-1]] for row in along])

    def _gather(self, row: Floats) -> Floats:

        size = self.unknown + 1
        total = _added(self._a, row, size) - _added(self._b, row, size)
        result: Floats = total[: self.unknown]
        return result

    def solve(self, conductance: Floats, grounds: Floats, right: Floats) -> Floats:
        """Pressures at the unknown nodes, one row a state."""
        import numpy as np

        return np.stack([self._one(*each) for each in zip(conductance, grounds, right, strict=True)])

    def _one(self, conductance: Floats, grounds: Floats, right: Floats) -> Floats:
        import numpy as np

        size = self.unknown + 1
        loose = np.where(self._loose, conductance, 0.0)
        diagonal = (_added(self._a, loose, size) + _added(self._b, loose, size))[: self.unknown]
        diagonal += grounds[self._order]
        pairs = -conductance[self._inner]
        solve = self._band if self._banded else self._factored
        result: Floats = solve(diagonal, pairs, right[self._order])[self._place[:-1]]
        return result

    def _band(self, diagonal: Floats, pairs: Floats, right: Floats) -> Any:
        import numpy as np
        from scipy.linalg.lapack import dpbsv  # type: ignore[import-untyped]  # ships no types

        band = _added(self._at_pair, pairs, self.unknown * (self.width + 1))
        band[:: self.width + 1] += diagonal
        _, found, info = dpbsv(
            band.reshape(self.unknown, self.width + 1).T, right, lower=1, overwrite_ab=1, overwrite_b=1
        )
        if info:
            raise np.linalg.LinAlgError(f"the band is not positive at {info}")
        return found

    def _factored(self, diagonal: Floats, pairs: Floats, right: Floats) -> Any:
        import numpy as np
        from scipy.sparse import csc_array
        from scipy.sparse.linalg import splu  # type: ignore[import-untyped]  # ships no types

        here = np.arange(self.unknown)
        rows = np.r_[here, self._low, self._high]
        columns = np.r_[here, self._high, self._low]
        matrix = csc_array((np.r_[diagonal, pairs, pairs], (rows, columns)))
        return splu(matrix, permc_spec="MMD_AT_PLUS_A", options={"SymmetricMode": True}).solve(right)


def balance(a: Ints, b: Ints, unknown: int) -> Dense | Sparse:
    """The solver for chains between these nodes; `unknown` stands for a node whose pressure is given."""
    return Dense(a, b, unknown) if unknown <= DENSE_UP_TO else Sparse(a, b, unknown)
