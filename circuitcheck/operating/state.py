"""What is carried on in time: the water of every cell with its heat, what the vessels took, and the accounts."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]


@dataclass(slots=True)
class State:
    """Everything at one moment. By cell: `kg` and `joules` (above 0 °C) of its water, `bar` (gauge).

    By cushion: its pressure, `fill_kg` of water that it held when filled, `in_kg` and `in_j` that swelled into
    it since. By heat source and store: the heat of its metal, and of its water. `tripped`: sources whose cut-out has.
    Accounts since the start: heat fired, given to rooms and let out in joules; water let out (as litres
    and kilograms) and filled in. `overrun_s`: how long pumps have run on.
    """

    seconds: float
    kg: Floats
    joules: Floats
    bar: Floats
    cushion_bar: Floats
    fill_kg: Floats
    in_kg: Floats
    in_j: Floats
    metal_j: Floats
    store_j: Floats
    flooded: frozenset[str] = frozenset()
    tripped: frozenset[str] = frozenset()
    fired_j: float = 0.0
    given_j: float = 0.0
    out_j: float = 0.0
    out_kg: float = 0.0
    out_l: float = 0.0
    filled_kg: float = 0.0
    filled_j: float = 0.0
    overrun_s: float = 0.0
    lifted: frozenset[str] = frozenset()
    """The safety valves that let water out at this moment."""

    def copy(self) -> State:
        """The same, to be carried on by itself."""
        return replace(
            self,
            kg=self.kg.copy(),
            joules=self.joules.copy(),
            bar=self.bar.copy(),
            cushion_bar=self.cushion_bar.copy(),
            fill_kg=self.fill_kg.copy(),
            in_kg=self.in_kg.copy(),
            in_j=self.in_j.copy(),
            metal_j=self.metal_j.copy(),
            store_j=self.store_j.copy(),
        )

    @property
    def water_kg(self) -> float:
        """All water there is, and what has gone, less what came: it never changes."""
        return float(self.kg.sum() + self.fill_kg.sum() + self.in_kg.sum()) + self.out_kg - self.filled_kg

    @property
    def heat_j(self) -> float:
        """All heat there is, and what has gone, less what was fired or filled in: it never changes."""
        held = float(self.joules.sum() + self.in_j.sum() + self.metal_j.sum() + self.store_j.sum())
        return held + self.given_j + self.out_j - self.fired_j - self.filled_j
