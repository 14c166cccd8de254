"""The water of a plant at its design temperatures."""

from __future__ import annotations

from dataclasses import dataclass

from circuitcheck.sizing.pipe import design_flow_l_s


@dataclass(frozen=True, slots=True)
class Water:
    """The water of a plant at its mean design temperature, and how far it cools on its way round."""

    density_kg_m3: float
    viscosity_pa_s: float
    capacity_j_kgk: float
    difference_k: float

    def flow_m3_s(self, power_kw: float) -> float:
        """The flow that carries a power."""
        litres = design_flow_l_s(
            power_kw,
            self.difference_k,
            capacity_j_kgk=self.capacity_j_kgk,
            density_kg_m3=self.density_kg_m3,
        )
        return litres / 1000
