"""The water of mains-fed stores: what feeds it, what relieves it, and how much of it there is to swell."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from circuitcheck.circuit.isolation import reaches
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.walking import Walk, against_the_flow, walk
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hot_water import secondary_pipes
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Passage, Role, Way
from circuitcheck.sizing.discharge import within
from circuitcheck.told import a_word

SETTING = "set_pressure_bar"


@dataclass(frozen=True)
class StoredWater:
    """The mains-fed stores whose water is one, by ways that pressure passes both ways."""

    plant: Plant
    places: tuple[Placed, ...]
    reach: frozenset[int]

    @property
    def stores(self) -> tuple[str, ...]:
        """Their ids, in the order of the drawing."""
        return tuple(place.part for place in self.places)

    def reached(self, role: Role) -> tuple[Placed, ...]:
        """The devices of that role within reach."""
        circuit = self.plant.circuit
        return tuple(place for place in circuit.devices(role) if circuit.water(place.node) in self.reach)

    @cached_property
    def vessels(self) -> tuple[str, ...]:
        """The expansion vessels on it, heat sources' own left out."""
        return tuple(place.part for place in self.reached(Role.HOLDS_EXPANSION) if not place.device.built_in)

    @property
    def mains(self) -> tuple[str, ...]:
        """The mains that feed it."""
        return self._mains(self._back(frozenset()))

    @cached_property
    def reducers(self) -> tuple[str, ...]:
        """The reducing valves whose water comes to it."""
        reached = self._back(frozenset()).steps
        return tuple(
            place.part
            for place in self.plant.circuit.devices(Role.REDUCES)
            if Joint(place.part, place.device.other) in reached
        )

    def is_fed_past(self, reducers: frozenset[str]) -> bool:
        """Whether a main's water comes to it by a way through none of these reducing valves."""
        return bool(self._mains(self._back(reducers)))

    def _mains(self, reached: Walk) -> tuple[str, ...]:
        mains = self.plant.circuit.devices(Role.MAIN)
        return tuple(place.part for place in mains if Joint(place.part, place.device.port) in reached.steps)

    def _back(self, barred: frozenset[str]) -> Walk:
        """Where its water can come from, not through these reducing valves."""

        def may_pass(part: str, passage: Passage, forward: bool) -> bool:
            if part in barred and passage.pressure_way is Way.REDUCING:
                return False
            return against_the_flow(part, passage, forward)

        starts = [Joint(place.part, place.device.other) for place in self.places]
        return walk(self.plant.circuit, starts, may_pass)


def stored_waters(plant: Plant) -> tuple[StoredWater, ...]:
    """The water of mains-fed stores, in the order of the drawing."""
    circuit = plant.circuit
    groups: dict[frozenset[int], list[Placed]] = {}
    for place in circuit.devices(Role.STORES_AT_MAINS_PRESSURE):
        groups.setdefault(reaches(circuit, circuit.water(place.other)), []).append(place)
    return tuple(StoredWater(plant, tuple(places), reach) for reach, places in groups.items())


def take_fill_bar(gathering: Gathering, water: StoredWater) -> float | None:
    """The pressure the water stands at cold: what reducing valves let in on the way that lets in most,
    else the main's standing pressure. None where it is not known."""
    plant = gathering.plant
    settings = {part: plant.value(part, SETTING) for part in water.reducers}
    unreduced = bool(water.mains) and water.is_fed_past(frozenset(settings))
    if unreduced or not settings:
        found = [
            gathering.part(
                main, "standing_pressure_bar", "pfill", a_word("Main's standing pressure, not reduced")
            )
            for main in water.mains
        ]
        return None if not found or None in found else max(float(each) for each in found)
    unknown = [part for part, bar in settings.items() if bar is None]
    if unknown:
        gathering.lacks(*(f"{part}.{SETTING}" for part in unknown))
        return None
    by_setting = sorted(settings, key=lambda part: float(settings[part] or 0.0))
    deciding = by_setting[-1]
    for part in by_setting if water.mains else ():
        upto = frozenset(each for each in settings if within(settings[each], settings[part]))
        if not water.is_fed_past(upto):
            deciding = part
            break
    return float(gathering.part(deciding, SETTING, "pfill", a_word("Reducing valve set at")))


def relief_of(water: StoredWater) -> tuple[Placed, ...]:
    """The expansion relief valves on the water whose setting the drawing holds; none where one of them is
    built into a store, since then it does not."""
    valves = water.reached(Role.RELIEVES_BY_PRESSURE)
    if any(valve.device.built_in and valve.device.port == "relief" for valve in valves):
        return ()
    return valves


def take_relief_bar(gathering: Gathering, valves: tuple[Placed, ...]) -> float | None:
    """The lowest setting of these relief valves; None where one is not known."""
    drawing = gathering.plant.drawing
    fields = {}
    for valve in valves:
        own = {field.name for field in drawing.components[valve.part].kind.own_fields}
        fields[valve.part] = "relief_pressure_bar" if "relief_pressure_bar" in own else SETTING
    found = {
        part: gathering.part(part, field, f"prv {part}", a_word("Expansion relief valve set at"))
        for part, field in fields.items()
    }
    return None if None in found.values() else min(float(each) for each in found.values())


def take_swelling_l(gathering: Gathering, water: StoredWater, store: str) -> float | None:
    """The litres that swell for one store: its own, and its secondary circuit's where that is more than
    the rule book leaves out. None where they are not known."""
    volume = gathering.part(store, "volume_l", f"C {store}", a_word("Store's volume"))
    pipes = secondary_pipes(gathering.plant, store)
    litres = [gathering.plant.contents.pipe_litres(pipe) for pipe in pipes]
    for _, missing in litres:
        gathering.lacks(*missing)
    known = sum(each for each, _ in litres if each is not None)
    if any(each is None for each, _ in litres) or volume is None:
        return None
    if not pipes:
        return float(volume)
    limit = gathering.limit(
        "store.secondary_content_l", "Cs0", a_word("Secondary circuit that counts, above")
    )
    gathering.add(
        f"Cs {store}",
        a_word("Secondary circuit's pipes"),
        known,
        "l",
        a_word("figure: bores and lengths of its pipes"),
    )
    return float(volume) + (known if known > limit else 0.0)
