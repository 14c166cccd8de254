"""Pressure map.

The lowest and the highest pressure at every part of the heating water whose height is known, over all
situations, cold and hot: where it may draw in air, where hot water comes nearest to boiling, whether any
part sees more than it is made for, and what each gauge should read.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from circuitcheck.drawing.value import Joint
from circuitcheck.figures.charged import take_charged
from circuitcheck.figures.driven import USUAL, barred, called, driven
from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heated_water import HeatedWater, heated_waters
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.pressures import Extent, Pressures
from circuitcheck.figures.solved import Run
from circuitcheck.figures.telling import Telling
from circuitcheck.figures.working import take_temperatures, why_not_reckoned
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.boiling import LEAST_C, MOST_C, STANDARD_BAR, boils_at_c, vapour_absolute_bar
from circuitcheck.sizing.vessel import static_bar
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "pressure-map",
    a_word("Pressure map"),
    a_word(
        "p = p fixed − 0.0981 × (height − the fixed point's) + what the pumps add there\n"
        "fixed point: the expansion vessel (fill pressure cold; hot by Boyle's law), or the open water level\n"
        "above boiling = lowest p + 1.013 − vapour pressure at the highest temperature"
    ),
    a_word(
        "Hydrostatics at 1000 kg/m³ and 9.81 m/s²; that a pump leaves the vessel's pressure as it is: Building "
        "Services Engineering and common practice; vapour pressure: Antoine's equation (from memory). Pumps by the "
        "solved network."
    ),
    a_word(
        "Gauge pressures at the height of each part. The lowest is taken cold, as filled; heating up only adds. "
        "The highest is hot, with nothing let out by the safety valve. Parts of unknown height are left out."
    ),
)
FAR_BELOW = -1.0
LEAST_BAR = -0.9
"""Below, cold water boils too."""


@dataclass(frozen=True, slots=True)
class Point:
    """The fixed point: its part and port, its height, and its pressures cold and hot, in bar."""

    joint: Joint
    height_m: float
    cold_bar: float
    hot_bar: float


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each heating water."""
    return tuple(_one(plant, water) for water in heated_waters(plant))


def _one(plant: Plant, water: HeatedWater) -> Figure:
    told = Gathering(plant)
    why = why_not_reckoned(water.expansion)
    point = None
    if not why:
        found = _cistern(told, water) if water.is_open_vented else _vessel(told, water)
        point, why = (None, found) if isinstance(found, str) else (found, "")
    subject = _subject(plant, water)
    if why:
        return TELLING.refused(told, subject, why)
    if point is None:
        return TELLING.lacking(told, subject)
    pressures = Pressures(plant, water, point.joint, point.height_m)
    bars = [
        bar
        for body in plant.solved.bodies
        if body.network.number == water.body and (bar := barred(body)) is not None
    ]
    if bars:
        told.lacks(*bars[0][0])
        return TELLING.refused(told, subject, bars[0][1]) if bars[0][1] else TELLING.lacking(told, subject)
    if not pressures.extents:
        return TELLING.lacking(told, subject)
    hottest = water.expansion.hottest_c.high
    results = [*_results(pressures, point, hottest)]
    return TELLING.worked(told, subject, results, moves=_moves(pressures, point))


def _subject(plant: Plant, water: HeatedWater) -> tuple[str, ...]:
    fixed = water.reached(Role.FEEDS if water.is_open_vented else Role.HOLDS_EXPANSION)
    return tuple(dict.fromkeys((*water.parts, *(place.part for place in fixed))))


def _vessel(told: Gathering, water: HeatedWater) -> Point | str | None:
    """The vessel that holds the pressure; of several, the largest."""
    vessels = water.reached(Role.HOLDS_EXPANSION)
    if not vessels:
        return a_word("no expansion vessel is joined to this water, so that nothing holds its pressure")
    charged = take_charged(told, water)
    volumes = [volume for volume, _ in charged.vessels] if charged else []
    vessel = vessels[volumes.index(max(volumes))] if volumes else vessels[0]
    height = told.plant.heights.of(vessel.part)
    if height is None:
        told.lacks(*told.plant.heights.missing_for((vessel.part,)))
        return None
    told.add(
        "z",
        worded("Height of {part}", part=told.plant.drawing.name(vessel.part)),
        height,
        "m",
        a_word("given heights and rises"),
    )
    if charged is None:
        return None
    return Point(Joint(vessel.part, vessel.device.port), height, charged.fill_bar, charged.hot_bar())


def _cistern(told: Gathering, water: HeatedWater) -> Point | str | None:
    cisterns = water.reached(Role.FEEDS)
    if not cisterns:
        return a_word("the water is open, and no cistern that feeds it is drawn")
    take_temperatures(told, water.expansion)
    level = told.part(cisterns[0].part, "water_level_m", "z", a_word("Water level above the datum"))
    if level is None or not water.expansion.hottest_c.known:
        return None
    return Point(Joint(cisterns[0].part, cisterns[0].device.port), float(level), 0.0, 0.0)


def _results(pressures: Pressures, point: Point, hottest_c: float) -> Iterator[Result]:
    plant = pressures.plant
    low = min(pressures.extents, key=lambda each: each.least_bar)
    high = max(pressures.extents, key=lambda each: each.most_bar)
    yield Result(
        worded("Lowest, cold: at {where}", where=_where(plant, low, low.least)),
        point.cold_bar + low.least_bar,
        "bar",
    )
    yield Result(
        worded("Highest, hot: at {where}", where=_where(plant, high, high.most)),
        point.hot_bar + high.most_bar,
        "bar",
    )
    lowest = point.cold_bar + low.least_bar
    if lowest >= 0:
        yield Result(a_word("Above drawing in air, at the lowest"), lowest, "bar")
    else:
        yield Result(a_word("Draws in air, at the lowest, by"), -lowest, "bar")
    yield from _boiling(lowest, hottest_c)
    yield from _gauges(pressures, point)
    yield from _too_much(pressures, point)
    for extent in pressures.extents:
        ends = (max(FAR_BELOW, point.cold_bar + extent.least_bar), point.hot_bar + extent.most_bar)
        yield Result(
            plant.drawing.name(extent.part),
            worded("{ends:.2f} to {ends_2:.2f}", ends=ends[0], ends_2=ends[1]),
            "bar",
        )


def _boiling(lowest_bar: float, hottest_c: float) -> Iterator[Result]:
    """How far the hottest water is from boiling where pressure is lowest."""
    if lowest_bar <= LEAST_BAR or not LEAST_C <= hottest_c <= MOST_C:
        return
    boils = boils_at_c(lowest_bar)
    yield Result(a_word("Water boils there at"), boils, "°C")
    margin = lowest_bar + STANDARD_BAR - vapour_absolute_bar(hottest_c)
    said = a_word("Above boiling") if margin >= 0 else a_word("Boils: too low")
    yield Result(
        worded("{said} at {hottest_c:.4g} °C, by", said=said, hottest_c=hottest_c), abs(margin), "bar"
    )


def _where(plant: Plant, extent: Extent, run: Run | None) -> str:
    where = a_word("all at rest") if run is None else called(run)
    return worded("{part}, {situation}", part=plant.drawing.name(extent.part), situation=where)


def _gauges(pressures: Pressures, point: Point) -> Iterator[Result]:
    plant = pressures.plant
    for place in pressures.water.reached(Role.SHOWS_PRESSURE):
        height = plant.heights.of(place.part)
        if height is None:
            continue
        name = plant.drawing.name(place.part)
        name = worded("Gauge of {name}", name=name) if place.device.built_in else name
        static = static_bar(pressures.fixed_height_m - height)
        yield Result(worded("{name} reads, cold, at rest", name=name), point.cold_bar + static, "bar")
        runs = driven(pressures.body) if pressures.body is not None else ()
        read = [bar for run in runs if (bar := pressures.in_run_bar(place.part, run)) is not None]
        if read:
            text = worded(
                "{cold_bar:.2f} to {cold_bar_2:.2f}",
                cold_bar=point.cold_bar + min(read),
                cold_bar_2=point.cold_bar + max(read),
            )
            yield Result(worded("{name} reads, cold, pumps running", name=name), text, "bar")
            text = worded(
                "{hot_bar:.2f} to {hot_bar_2:.2f}",
                hot_bar=point.hot_bar + min(read),
                hot_bar_2=point.hot_bar + max(read),
            )
            yield Result(worded("{name} reads, hot, pumps running", name=name), text, "bar")


def _too_much(pressures: Pressures, point: Point) -> Iterator[Result]:
    """The parts whose stated highest pressure is passed."""
    plant = pressures.plant
    for extent in pressures.extents:
        kind = plant.drawing.components[extent.part].kind
        field = next((each for each in FIELDS if any(own.name == each for own in kind.own_fields)), None)
        most = None if field is None else plant.value(extent.part, field)
        if most is not None and point.hot_bar + extent.most_bar > most:
            by = point.hot_bar + extent.most_bar - most
            yield Result(
                worded("{part} would see more than it is made for, by", part=plant.drawing.name(extent.part)),
                by,
                "bar",
            )


FIELDS = ("coil_maximum_pressure_bar", "maximum_pressure_bar")
"""A store's body is made for the mains' pressure, its coil for the heating's."""


def _moves(pressures: Pressures, point: Point) -> Iterator[Moves]:
    """How far the lowest pressure moves with the resistances that are defaults."""
    body = pressures.body
    low = min(pressures.extents, key=lambda each: each.least_bar)
    if body is None or low.least is None or not body.taken:
        return
    own = point.cold_bar + low.least_bar
    for other, by in zip(body.least_and_most, (a_word("half as much"), a_word("twice as much")), strict=True):
        moved = pressures.again_bar(other, low.part, other.runs[low.least.row])
        if moved is not None and abs(own) > 1e-6 and abs(point.cold_bar + moved - own) > 1e-4:
            yield Moves(
                worded("{usual} (lowest)", usual=USUAL), by, (point.cold_bar + moved - own) / abs(own)
            )
