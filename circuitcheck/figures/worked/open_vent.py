"""Open vent: size and height above the water.

Where everything else fails, steam leaves by the open vent. It must be wide enough, and end high enough above
the cistern's water: hot water stands higher in it than cold, and a pump that pushes on it lifts the water by
as many metres as its head. A vent that is too low pours hot water into the cistern all day.
"""

from __future__ import annotations

from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.pipework import Cost, Step, Tapping, tapping, way
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.content import pipe_bore_mm
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heat_nets import heat_nets
from circuitcheck.figures.hot_water import limit_or_none
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.open_vent import least_height_by_gravity_m
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "open-vent",
    a_word("Open vent: size and height above the water"),
    a_word(
        "least height by gravity: h = 0.04 H + 0.15 m\nagainst a pump: h above the head that pushes on the vent"
    ),
    a_word(
        "BS 5449: 22 mm, and 450 mm for a pumped circuit (as taught in trade textbooks; bore of 19 mm from memory). "
        "WFR guidance to Schedule 2, G20.3: 0.04 H + 0.15, written for a store's vent. Hydrostatics."
    ),
    a_word(
        "The pump at its shut-off head, the most it can put there. H is told down to where the heat source or the "
        "store stands. Only the vent's own pipe is measured here, from the circuit to its end."
    ),
)

CHECKS = ("open-vent-too-small", "pump-over-or-draws-air")
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each open vent that is joined to a circuit or a store."""
    found = (_vent(plant, place) for place in plant.circuit.devices(Role.VENTS))
    return tuple(figure for figure in found if figure is not None)


def _vent(plant: Plant, place: Placed) -> Figure | None:
    end = Joint(place.part, place.device.port)
    if end not in plant.drawing.joined:
        return None
    tap = tapping(plant.circuit, end)
    body = plant.bodies.of(place.node)
    heats = next((net.sources for net in heat_nets(plant) if body in net.waters), ())
    stores = tuple(
        each.part for each in plant.circuit.devices(Role.STORES_OPEN) if plant.bodies.of(each.node) == body
    )
    if tap is None or not (heats or stores):
        return None
    told = Gathering(plant)
    results = [*_size(told, tap), *_heights(told, place, tap, heats or stores, pumped=bool(heats))]
    if not results:
        return TELLING.lacking(told, (place.part,))
    more = worded("Not known: {missing}.", missing=", ".join(told.missing)) if told.missing else ""
    return TELLING.worked(told, (place.part,), results, more_limits=more)


def _size(told: Gathering, tap: Tapping) -> list[Result]:
    bores = []
    for pipe in tap.pipes:
        bore, missing = pipe_bore_mm(told.plant, pipe)
        told.lacks(*missing)
        if bore is not None:
            told.add(
                "d",
                worded("Bore of {pipe}", pipe=pipe),
                bore,
                "mm",
                a_word("given, or of standard tube of its size"),
            )
            bores.append(bore)
    results = [Result(a_word("Narrowest bore of its pipe"), min(bores), "mm")] if bores else []
    least = limit_or_none(told.plant, "open_vent.smallest_bore_mm")
    if bores and least is not None:
        told.limit("open_vent.smallest_bore_mm", "dm", a_word("Smallest bore of an open vent"))
        results.append(Result(a_word("Smallest bore allowed"), least, "mm"))
    return results


def _heights(
    told: Gathering, place: Placed, tap: Tapping, hot: tuple[str, ...], *, pumped: bool
) -> list[Result]:
    results = []
    height = _height_above_water(told, place)
    if height is not None:
        results.append(Result(a_word("It ends above the water"), height, "m"))
    feeds = [
        feed
        for feed in told.plant.circuit.devices(Role.FEEDS)
        if told.plant.bodies.of(feed.node) == told.plant.bodies.of(place.node)
    ]
    name = told.plant.drawing.name
    levels = [
        told.part(feed.part, "water_level_m", "z", worded("Water of {part}", part=name(feed.part)))
        for feed in feeds
    ]
    stands = {part: told.plant.heights.of(part) for part in hot}
    told.lacks(*told.plant.heights.missing_for([part for part in hot if stands[part] is None]))
    heights = [each for each in stands.values() if each is not None]
    known = [float(level) for level in levels if level is not None]
    if heights and known:
        above = max(known) - min(heights)
        told.add(
            "H",
            a_word("From the water down to what heats"),
            above,
            "m",
            a_word("worked out from the heights"),
        )
        if above >= 0:
            least = a_word("Least height, turning by gravity") if pumped else a_word("Least height")
            results.append(Result(least, least_height_by_gravity_m(above), "m"))
    if pumped:
        results += _pumped(told, tap, feeds, height)
    return results


def _pumped(told: Gathering, tap: Tapping, feeds: list[Placed], height: float | None) -> list[Result]:
    results = []
    least = limit_or_none(told.plant, "open_vent.least_height_pumped_m")
    if least is not None:
        told.limit("open_vent.least_height_pumped_m", "hp", a_word("Least height of a pumped circuit's vent"))
        results.append(Result(a_word("Least height, fully pumped"), least, "m"))
    pumps = _pumps_between(told.plant, tap, feeds)
    if pumps is None:
        return results
    heads = [told.part(pump, "shut_off_head_m", "hs") for pump in pumps]
    if any(head is None for head in heads):
        return results
    head = sum(float(each) for each in heads if each is not None)
    results.append(Result(a_word("Pump head that pushes on it"), head, "m"))
    if height is not None and head > 0:
        results.append(Result(a_word("Height to spare above that"), height - head, "m"))
    return results


def _height_above_water(told: Gathering, place: Placed) -> float | None:
    """As given, else from the two heights; a vent drawn to the cistern's own port states none."""
    plant = told.plant
    fields = {field.name for field in plant.drawing.components[place.part].kind.own_fields}
    if "height_above_water_mm" not in fields:
        return None
    given = told.part(place.part, "height_above_water_mm", "h", needed=False)
    if given is not None:
        return float(given) / 1000
    over, end = plant.value(place.part, "over"), plant.heights.of(place.part)
    cisterns = {feed.part for feed in plant.circuit.devices(Role.FEEDS)}
    level = plant.value(str(over), "water_level_m") if over in cisterns else None
    if end is None or level is None:
        told.lacks(f"{place.part}.height_above_water_mm")
        return None
    told.add(
        "h", a_word("Height above the water"), end - float(level), "m", a_word("worked out from the heights")
    )
    return end - float(level)


def _pumps_between(plant: Plant, vent: Tapping, feeds: list[Placed]) -> tuple[str, ...] | None:
    """The pumps that push on the vent, on the way from the feed that stands best to it; None: no way."""
    best: tuple[str, ...] | None = None
    for feed in feeds:
        tap = tapping(plant.circuit, Joint(feed.part, feed.device.port))
        if tap is None:
            continue
        found = _pushing(plant, tap, vent)
        if found is not None and (best is None or len(found) < len(best)):
            best = found
    return best


def _pushing(plant: Plant, feed: Tapping, vent: Tapping) -> tuple[str, ...] | None:
    if feed.joint.part == vent.joint.part:
        return ()

    def allowed(step: Step) -> bool:
        return step.pipe not in feed.pipes and not (step.emits or step.stores)

    def cost(step: Step) -> Cost:
        return (abs(step.pumps), 1.0)

    steps = way(plant.circuit, [feed.joint], lambda joint: joint.part == vent.joint.part, allowed, cost)
    if steps is None:
        return None
    return tuple(dict.fromkeys(step.start.part for step in steps if step.pumps > 0))
