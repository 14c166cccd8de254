"""Which heat sources heat which emitters and coils: bodies of heating water that plates join."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from circuitcheck.parts.kind import Role

if TYPE_CHECKING:
    from circuitcheck.figures.plant import Plant


@dataclass(frozen=True, slots=True)
class HeatNet:
    """Heating water, with the water behind heat exchangers: what heats it and what takes the heat.

    Ids in the order of the drawing. `waters` are its bodies.
    """

    sources: tuple[str, ...]
    emitters: tuple[str, ...]
    coils: tuple[str, ...]
    waters: frozenset[int]


def heat_nets(plant: Plant) -> tuple[HeatNet, ...]:
    """Every heated net, in the order of its first heat source. Worked once."""
    return plant.kept("heat nets", lambda: _found(plant))


def _found(plant: Plant) -> tuple[HeatNet, ...]:
    circuit, bodies = plant.circuit, plant.bodies
    joined: dict[int, set[int]] = {}
    for place in circuit.devices(Role.EXCHANGES):
        one, two = bodies.of(place.node), bodies.of(place.other)
        if one not in bodies.drinking and two not in bodies.drinking:
            joined.setdefault(one, set()).add(two)
            joined.setdefault(two, set()).add(one)
    by_body: dict[Role, dict[int, list[str]]] = {}
    for role in (Role.HEATS, Role.EMITS, Role.HEATED_BY_COIL):
        held = by_body[role] = {}
        for place in circuit.devices(role):
            held.setdefault(bodies.of(place.other), []).append(place.part)
    order = {part: place for place, part in enumerate(plant.drawing.components)}
    nets: list[HeatNet] = []
    seen: set[int] = set()
    for body in by_body[Role.HEATS]:
        if body in seen:
            continue
        waters = _reached(body, joined)
        seen |= waters

        def of(role: Role, waters: frozenset[int] = waters) -> tuple[str, ...]:
            found = [part for water in waters for part in by_body[role].get(water, ())]
            return tuple(sorted(found, key=order.__getitem__))

        nets.append(HeatNet(of(Role.HEATS), of(Role.EMITS), of(Role.HEATED_BY_COIL), waters))
    return tuple(nets)


def _reached(start: int, joined: dict[int, set[int]]) -> frozenset[int]:
    seen, todo = {start}, [start]
    for body in todo:
        fresh = joined.get(body, set()) - seen
        seen |= fresh
        todo += sorted(fresh)
    return frozenset(seen)


def heats_coil(plant: Plant, store: str) -> tuple[str, ...]:
    """The heat sources whose heat reaches a store's coil, through heat exchangers too."""
    by_coil = plant.kept(
        "sources by coil", lambda: {coil: net.sources for net in heat_nets(plant) for coil in net.coils}
    )
    return by_coil.get(store, ())


def heats_water(plant: Plant, store: str) -> tuple[str, ...]:
    """The heat sources that stand on a store's own water."""
    places = [*plant.circuit.devices(Role.STORES_AT_MAINS_PRESSURE), *plant.circuit.devices(Role.STORES_OPEN)]
    own = {plant.bodies.of(place.node) for place in places if place.part == store}
    return tuple(
        place.part for place in plant.circuit.devices(Role.HEATS) if plant.bodies.of(place.other) in own
    )
