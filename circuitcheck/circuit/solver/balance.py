"""The linear step: node pressures for given slopes, of all rows at once. Dense for a house, banded or sparse
beyond.

Arrays are flat, row after row: chains as they come, nodes as the solver has arranged them.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from numpy import intp
    from numpy.typing import NDArray

    from circuitcheck.circuit.solver.friction import Floats

    Ints = NDArray[intp]

DENSE_UP_TO = 24
"""Nodes; below, a dense matrix a row is solved sooner than scipy is loaded."""

BAND_WORK_BOUND = 3e8
"""Nodes times band width squared; beyond, sparse factors fill less than the band does."""


def added(places: Ints, values: Floats, size: int) -> Floats:
    """Values added up by place."""
    import numpy as np

    return np.asarray(np.bincount(places, values, size), dtype=np.float64)


class Balance(ABC):
    """Chains between nodes `a` and `b`, in so many rows; `unknown` stands for a node whose pressure is given."""

    def __init__(self, a: Ints, b: Ints, unknown: int, rows: int) -> None:
        import numpy as np

        self.unknown, self.rows, self.size = unknown, rows, unknown * rows
        order = self._ordered(a, b, unknown)
        self._place = np.empty(unknown + 1, dtype=np.intp)
        self._place[order] = np.arange(unknown)
        self._place[unknown] = unknown
        first = np.repeat(np.arange(rows), len(a))
        own_a, own_b = np.tile(self._place[a], rows), np.tile(self._place[b], rows)
        # All nodes of a given pressure are one place behind those of all rows.
        self.a = np.where(own_a < unknown, first * unknown + own_a, self.size)
        self.b = np.where(own_b < unknown, first * unknown + own_b, self.size)
        self._ends = np.concatenate([self.a, self.b])
        self._padded = np.zeros(self.size + 1)
        self._lay_out()

    def _ordered(self, a: Ints, b: Ints, unknown: int) -> Ints:
        """The nodes in the order in which they are eliminated."""
        import numpy as np

        return np.arange(unknown)

    @abstractmethod
    def _lay_out(self) -> None:
        """Find where each chain's conductance stands in the matrix."""

    @abstractmethod
    def solve(self, conductance: Floats, grounds: Floats, right: Floats) -> Floats:
        """Pressures at the nodes as arranged. Raises LinAlgError where the matrix is singular."""

    def arranged(self, values: Floats) -> Floats:
        """Values at the nodes of each row (rows by nodes), flat and as the solver has them."""
        import numpy as np

        result = np.empty((self.rows, self.unknown))
        result[:, self._place[:-1]] = values
        return result.ravel()

    def restored(self, values: Floats) -> Floats:
        """The same the other way round: rows by nodes."""
        result: Floats = values.reshape(self.rows, self.unknown)[:, self._place[:-1]]
        return result

    def gathered(self, along: Floats) -> Floats:
        """What leaves each node along its chains, from a value along each chain."""
        import numpy as np

        result: Floats = added(self._ends, np.concatenate([along, -along]), self.size + 1)[:-1]
        return result

    def differences(self, pressure: Floats) -> Floats:
        """Pressure at a chain's beginning less that at its end, a given one counting 0."""
        self._padded[:-1] = pressure
        result: Floats = self._padded[self.a] - self._padded[self.b]
        return result


class Dense(Balance):
    """Every row's matrix whole."""

    def _lay_out(self) -> None:
        import numpy as np

        width, outside = self.unknown, self.size * self.unknown
        row_a, row_b = self.a * width, self.b * width
        in_a, in_b = self.a % max(width, 1), self.b % max(width, 1)
        is_a, is_b = self.a < self.size, self.b < self.size
        here = np.arange(self.size)
        self._entries = np.concatenate(
            [
                np.where(is_a, row_a + in_a, outside),
                np.where(is_b, row_b + in_b, outside),
                np.where(is_a & is_b, row_a + in_b, outside),
                np.where(is_a & is_b, row_b + in_a, outside),
                here * width + here % max(width, 1),
            ]
        )

    def solve(self, conductance: Floats, grounds: Floats, right: Floats) -> Floats:
        """Pressures at the nodes as arranged."""
        import numpy as np

        lower = -conductance
        shares = np.concatenate([conductance, conductance, lower, lower, grounds])
        entries = added(self._entries, shares, self.size * self.unknown + 1)
        matrix = entries[:-1].reshape(self.rows, self.unknown, self.unknown)
        found = np.linalg.solve(matrix, right.reshape(self.rows, self.unknown, 1))
        return np.asarray(found, dtype=np.float64).ravel()


class Sparse(Balance):
    """All rows' matrices one behind the other, by their band in the reverse Cuthill-McKee order."""

    def _ordered(self, a: Ints, b: Ints, unknown: int) -> Ints:
        import numpy as np

        return np.array(reverse_cuthill_mckee(a.tolist(), b.tolist(), unknown), dtype=np.intp)

    def _lay_out(self) -> None:
        import numpy as np

        inner = (self.a < self.size) & (self.b < self.size) & (self.a != self.b)
        self._inner = np.flatnonzero(inner)
        self._loose = (self.a != self.b).astype(float)
        low, high = np.minimum(self.a, self.b)[inner], np.maximum(self.a, self.b)[inner]
        self._low, self._high = low, high
        self.width = int((high - low).max(initial=0))
        self._banded = self.unknown * float(self.width) ** 2 <= BAND_WORK_BOUND
        # Lower band, column by column as LAPACK has it: entry (i, j) lies at j, i − j.
        column = self.width + 1
        here = np.arange(self.size)
        outside = self.size * column
        ends = np.where(self._ends < self.size, self._ends * column, outside)
        self._entries = np.concatenate([ends, low * column + high - low, here * column])

    def solve(self, conductance: Floats, grounds: Floats, right: Floats) -> Floats:
        """Pressures at the nodes as arranged."""
        import numpy as np

        loose = conductance * self._loose
        pairs = -conductance[self._inner]
        if not self._banded:
            return np.asarray(self._factored(loose, pairs, grounds, right), dtype=np.float64)
        from scipy.linalg.lapack import dpbsv  # type: ignore[import-untyped]  # ships no types

        shares = np.concatenate([loose, loose, pairs, grounds])
        band = added(self._entries, shares, self.size * (self.width + 1) + 1)[:-1]
        _, found, info = dpbsv(
            band.reshape(self.size, self.width + 1).T, right, lower=1, overwrite_ab=1, overwrite_b=1
        )
        if info:
            raise np.linalg.LinAlgError(f"the band is not positive at {info}")
        return np.asarray(found, dtype=np.float64)

    def _factored(self, loose: Floats, pairs: Floats, grounds: Floats, right: Floats) -> Any:
        import numpy as np
        from scipy.sparse import csc_array  # type: ignore[import-untyped]  # ships no types
        from scipy.sparse.linalg import splu  # type: ignore[import-untyped]  # ships no types

        diagonal = added(self._ends, np.concatenate([loose, loose]), self.size + 1)[:-1] + grounds
        here = np.arange(self.size)
        rows = np.r_[here, self._low, self._high]
        columns = np.r_[here, self._high, self._low]
        matrix = csc_array((np.r_[diagonal, pairs, pairs], (rows, columns)))
        try:
            return splu(matrix, permc_spec="MMD_AT_PLUS_A", options={"SymmetricMode": True}).solve(right)
        except RuntimeError as error:  # which is what it says of a singular matrix
            raise np.linalg.LinAlgError(str(error)) from error


def reverse_cuthill_mckee(a: list[int], b: list[int], unknown: int) -> list[int]:
    """The nodes below `unknown` in an order in which nodes that chains join stand close together.

    Cuthill and McKee, "Reducing the bandwidth of sparse symmetric matrices", 1969, reversed after George,
    each piece from a node that lies far out.
    """
    beside: list[set[int]] = [set() for _ in range(unknown)]
    for one, other in zip(a, b, strict=True):
        if one < unknown and other < unknown and one != other:
            beside[one].add(other)
            beside[other].add(one)
    nearby = [sorted(each, key=lambda node: (len(beside[node]), node)) for each in beside]
    order: list[int] = []
    seen = [False] * unknown
    for start in range(unknown):
        if not seen[start]:
            far = _from(_from(start, nearby)[-1], nearby)[-1]
            piece = _from(far, nearby)
            for node in piece:
                seen[node] = True
            order += piece
    return order[::-1]


def _from(start: int, nearby: list[list[int]]) -> list[int]:
    """All that chains join to a node, nearest first."""
    found, seen = [start], {start}
    for node in found:
        for each in nearby[node]:
            if each not in seen:
                seen.add(each)
                found.append(each)
    return found


def balance(a: Ints, b: Ints, unknown: int, rows: int) -> Balance:
    """The solver for chains between these nodes."""
    kind = Dense if unknown <= DENSE_UP_TO else Sparse
    return kind(a, b, unknown, rows)
