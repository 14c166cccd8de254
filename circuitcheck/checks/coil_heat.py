"""Which heat sources warm a store's coil."""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.circuit.joining import Placed
from circuitcheck.parts.kind import Role


def heated_by(case: Case, coil: Placed) -> tuple[str, ...]:
    """The heat sources whose heat reaches a coil: on its water, or through heat exchangers before it."""
    circuit, bodies = case.circuit, case.bodies
    heats = circuit.devices(Role.HEATS)
    if not heats:
        return ()
    seen = {bodies.of(coil.node)}
    todo = list(seen)
    for body in todo:
        for place in circuit.devices(Role.EXCHANGES):
            sides = bodies.of(place.node), bodies.of(place.other)
            if body in sides:
                fresh = {side for side in sides if side not in seen and side not in bodies.drinking}
                seen |= fresh
                todo += fresh
    return tuple(heat.part for heat in heats if bodies.of(heat.other) in seen)


def coil_of(case: Case, store: str) -> Placed | None:
    """A store's coil; None where it has none."""
    coils = case.circuit.devices(Role.HEATED_BY_COIL)
    return next((coil for coil in coils if coil.part == store), None)
