"""The pipes and the ways through parts of bodies of water, as links between numbered nodes."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from circuitcheck.parts.kind import Device, Passage, Role, Way

if TYPE_CHECKING:
    from circuitcheck.figures.plant import Plant


@dataclass(frozen=True, slots=True)
class Strand:
    """One link of the network and what it stands for: a pipe (`passage` None) or a way through a part."""

    id: str
    a: int
    b: int
    passage: Passage | None = None

    @property
    def leg(self) -> str:
        """The leg of a three-port valve, else empty."""
        return "" if self.passage is None else self.passage.leg


class Drawn:
    """The pipes and ways through parts of these bodies, with nodes numbered anew in each."""

    def __init__(self, plant: Plant, wanted: tuple[int, ...]) -> None:
        self._plant, self._wanted = plant, wanted

    @cached_property
    def nodes(self) -> dict[int, int]:
        """How many nodes each body has."""
        return {
            body: 1 + max((max(strand.a, strand.b) for strand in strands), default=0)
            for body, strands in self.strands.items()
        }

    @cached_property
    def strands(self) -> dict[int, tuple[Strand, ...]]:
        """The strands of each body."""
        circuit, bodies_ = self._plant.circuit, self._plant.bodies
        found: dict[int, list[Strand]] = {body: [] for body in self._wanted}
        numbers: dict[int, dict[tuple[str, str], int]] = {body: {} for body in found}
        for id, plan in circuit.plans.items():
            for passage in plan.passages:
                body = bodies_.of(circuit.node(id, passage.a))
                if body in found and not passage.gap and not _inside(plan.devices, passage):
                    number = numbers[body]
                    a, b = (number.setdefault((id, port), len(number)) for port in (passage.a, passage.b))
                    found[body].append(Strand(id, a, b, passage))
        for node, pipe in enumerate(self._plant.drawing.pipes.values()):
            body = bodies_.of(node)
            if body in found and len(pipe.joints) == 2:
                number = numbers[body]
                a, b = (number.setdefault((end.part, end.port), len(number)) for end in pipe.joints)
                found[body].append(Strand(pipe.id, a, b))
        return {body: tuple(strands) for body, strands in found.items()}


def _inside(devices: Iterable[Device], passage: Passage) -> bool:
    """A heat source's own bypass: its maker sets it, and it serves the heat source alone."""
    return passage.way is Way.SPRING and any(each.role is Role.BYPASSES and each.built_in for each in devices)
