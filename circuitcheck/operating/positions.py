"""How everything in a drawing stands: a situation of its controls, and what hands have turned since."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.plan import SHUTTABLE
from circuitcheck.circuit.situations import BOTH, HEATING_ONLY, HOT_WATER_ONLY, RUN_ON
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Role, Way
from circuitcheck.report.flows import apart
from circuitcheck.told import a_word

AS_DRAWN = a_word("as drawn")
"""The one position of a drawing whose controls tell of no situation."""
NONE: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Positions:
    """One position of everything.

    `name` is the situation that it began from. `shut` names passages as a witness does (`iv1`, `zv1`,
    `tv1:a`), whoever shut them; `running` what drives water, `firing` the heat sources that heat,
    `flooded` the vessels that have lost their gas. `missing` are the fields without which it is not
    known how the controls leave the valves; `called` is what the situation is meant to serve.
    """

    name: str
    shut: frozenset[str] = NONE
    running: frozenset[str] = NONE
    firing: frozenset[str] = NONE
    flooded: frozenset[str] = NONE
    called: frozenset[str] = NONE
    missing: tuple[str, ...] = ()
    is_own: bool = False
    """Whether a hand has turned anything since."""

    def by_hand(
        self,
        *,
        shut: frozenset[str] | None = None,
        running: frozenset[str] | None = None,
        firing: frozenset[str] | None = None,
        flooded: frozenset[str] | None = None,
    ) -> Positions:
        """The same with something turned by hand: how it stands is then known, whatever is missing."""
        return replace(
            self,
            is_own=True,
            missing=(),
            shut=self.shut if shut is None else shut,
            running=self.running if running is None else running,
            firing=self.firing if firing is None else firing,
            flooded=self.flooded if flooded is None else flooded,
        )


@dataclass(frozen=True, slots=True)
class Turnable:
    """A passage that something can shut: its label as a witness has it, its part and leg, and what shuts it."""

    label: str
    part: str
    leg: str
    way: Way
    secured: bool


def situations(plant: Plant) -> tuple[Positions, ...]:
    """One for each situation of the drawing, each by a name of its own; never none."""
    try:
        told = plant.situations.all
    except TooLargeError:
        told = ()
    heats = [place.part for place in plant.circuit.devices(Role.HEATS)]
    always = frozenset(
        each for each in heats if plant.drawing.components[each].value("heat") == "uncontrolled"
    )
    if not told:
        return (Positions(AS_DRAWN, firing=always),)
    names = apart(plant.drawing, [(each.name, each.shut) for each in told])
    return tuple(
        Positions(
            name,
            each.shut,
            each.running,
            frozenset(heats) if each.heat_on else always,
            called=each.called,
            missing=each.missing,
        )
        for name, each in zip(names, told, strict=True)
    )


def named(offered: Iterable[Positions], name: str) -> Positions | None:
    """The situation of that name; of several the first whose name begins so."""
    known = tuple(offered)
    exact = (each for each in known if each.name == name)
    begun = (each for each in known if each.name.startswith(f"{name}:"))
    return next(exact, next(begun, None))


def turnables(circuit: Circuit) -> tuple[Turnable, ...]:
    """All that can be shut, in the order of the drawing."""
    return tuple(_turnables(circuit, circuit.plans))


def turnables_of(circuit: Circuit, part: str) -> tuple[Turnable, ...]:
    """What can be shut in one part."""
    return tuple(_turnables(circuit, (part,)))


def _turnables(circuit: Circuit, parts: Iterable[str]) -> Iterator[Turnable]:
    for part in parts:
        seen: set[str] = set()
        for passage in circuit.plans[part].passages:
            label = f"{part}:{passage.leg}" if passage.leg else part
            shuttable = passage.way in SHUTTABLE or passage.pressure_way in SHUTTABLE
            if shuttable and not passage.gap and label not in seen:
                seen.add(label)
                way = passage.way if passage.way in SHUTTABLE else passage.pressure_way
                yield Turnable(label, part, passage.leg, way, passage.secured)


def shut_by_hand(circuit: Circuit, positions: Positions, labels: Iterable[str]) -> Positions:
    """The same with these shut as well; a leg that would leave a three-port valve wholly shut opens the other."""
    shut = positions.shut
    for label in labels:
        part, _, leg = label.partition(":")
        if leg:
            shut -= {each.label for each in turnables_of(circuit, part)}
        shut |= {label}
    return positions if shut == positions.shut else positions.by_hand(shut=shut)


def pressed(plant: Plant, positions: Positions, part: str) -> Positions | None:
    """What a press on a part makes of the positions; None where there is nothing to turn on it.

    A valve shuts or opens, a three-port valve goes on to its next stand, a pump starts or stops, a heat
    source is lit or put out, a vessel loses its gas or has it back.
    """
    circuit = plant.circuit
    if part not in circuit.plans:
        return None
    roles = {device.role for device in circuit.plans[part].devices}
    if Role.HEATS in roles:
        return positions.by_hand(firing=positions.firing ^ {part})
    if Role.PUMPS in roles:
        return positions.by_hand(running=positions.running ^ {part})
    ways = turnables_of(circuit, part)
    if len(ways) > 1:
        return _next_stand(plant, positions, part, ways)
    if ways:
        return positions.by_hand(shut=positions.shut ^ {ways[0].label})
    if part in vessels(plant):
        return positions.by_hand(flooded=positions.flooded ^ {part})
    return None


def vessels(plant: Plant) -> tuple[str, ...]:
    """The vessels of heating water that stand by themselves: what can lose its gas here."""
    heating = {each.body for each in plant.bodies.heated} - plant.bodies.drinking
    return tuple(
        place.part
        for place in plant.circuit.devices(Role.HOLDS_EXPANSION)
        if not place.device.built_in and plant.bodies.of(place.node) in heating
    )


def turned(plant: Plant, positions: Positions, label: str) -> Positions:
    """The same with one passage shut that was open, or opened that was shut. A three-port valve never
    shuts both legs: shutting one opens the other."""
    if label in positions.shut:
        return positions.by_hand(shut=positions.shut - {label})
    return shut_by_hand(plant.circuit, positions, (label,))


def _next_stand(plant: Plant, positions: Positions, part: str, ways: tuple[Turnable, ...]) -> Positions:
    """A valve with legs goes from one to the next; one that shares stands open to all between."""
    labels = [each.label for each in ways]
    stands = [frozenset({label}) for label in labels]
    if plant.drawing.components[part].value("action") == "share":
        stands.append(NONE)
    now = positions.shut & set(labels)
    place = stands.index(now) + 1 if now in stands else 0
    return positions.by_hand(shut=(positions.shut - set(labels)) | stands[place % len(stands)])


def proving(offered: Iterable[Positions], circuit: Circuit, shut: Iterable[str]) -> Positions:
    """The positions that a witness names: these passages shut and everything else open.

    What controls alone can shut they shut when nothing calls: the pump runs on and nothing heats. Where a
    hand is needed, heat is called, so that it is seen what becomes of it.
    """
    known, labels = tuple(offered), frozenset(shut)
    ways = {each.label: each.way for part in circuit.plans for each in turnables_of(circuit, part)}
    by_controls = all(ways.get(label) in (Way.MOTOR, Way.THERMOSTAT) for label in labels)
    names = (
        (RUN_ON, BOTH, HEATING_ONLY, HOT_WATER_ONLY) if by_controls else (BOTH, HEATING_ONLY, HOT_WATER_ONLY)
    )
    base = next((found for name in names if (found := named(known, name)) is not None), known[0])
    return base.by_hand(shut=labels)
