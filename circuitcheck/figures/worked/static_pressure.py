"""Static pressure.

What the height of the water alone presses with, what pressure is left at the top when the circuit is
cold, and what each gauge should then read. A top without pressure draws in air; a gauge that reads
something else than this, cold, has found a fault.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heated_water import HeatedWater, heated_waters
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import refusal, static_above
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.vessel import static_bar
from circuitcheck.told import a_word, worded

NAME, TITLE = "static-pressure", "Static pressure"
FORMULA = (
    "p = 0.0981 × h\n"
    "at the top, cold = pfill − 0.0981 × h\n"
    "a gauge, cold = pfill − 0.0981 × (its height − the vessel's)"
)
OPEN_FORMULA = "p = 0.0981 × (water level − height)"
SOURCE = (
    "Hydrostatics at 1000 kg/m³ and 9.81 m/s²; that the top keeps a margin of 0.3 bar: BS EN 12828, Annex D "
    "(from memory)."
)
LIMITS = (
    "All cold and at rest; gauge pressures; the fill pressure holds at the vessel, the lowest of several."
)


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each heating water."""
    return tuple(
        _open(plant, water) if water.is_open_vented else _sealed(plant, water)
        for water in heated_waters(plant)
    )


def _subject(water: HeatedWater, *others: Placed) -> tuple[str, ...]:
    return tuple(dict.fromkeys((*water.parts, *(place.part for place in others))))


def _sealed(plant: Plant, water: HeatedWater) -> Figure:
    gathering = Gathering(plant)
    vessels, gauges = water.reached(Role.HOLDS_EXPANSION), water.reached(Role.SHOWS_PRESSURE)
    subject = _subject(water, *vessels, *gauges)
    low = _lowest(plant, vessels)
    place = low.part if low else water.parts[0]
    static = static_above(water.expansion, place)
    gathering.lacks(*static.missing)
    fill = gathering.design("fill_pressure_bar", "pfill", a_word("Fill pressure"))
    if not static.known or fill is None:
        return refusal(NAME, TITLE, subject, gathering, formula=FORMULA, source=SOURCE, limits=LIMITS)
    stated = plant.design("static_height_m") is not None
    origin = "given design.static_height_m" if stated else a_word("given heights and rises of the parts")
    gathering.add(
        "h",
        worded("Top of the water above {place}", place=plant.drawing.name(place)),
        static.low,
        "m",
        origin,
    )
    pressure = static_bar(static.low)
    margin = gathering.design(
        "safety_margin_bar", a_word("margin"), a_word("Margin at the top"), needed=False
    )
    results = [
        Result(a_word("Static pressure"), pressure, "bar"),
        Result(a_word("Left at the top, cold"), fill - pressure, "bar"),
    ]
    if margin is not None:
        results.append(Result(a_word("Least fill pressure: static and margin"), pressure + margin, "bar"))
    results += _gauges(plant, place, gauges, fill)
    moves = _moves(plant, margin, pressure)
    return Figure(
        NAME, TITLE, subject, tuple(results), FORMULA, gathering.inputs, SOURCE, LIMITS, moves=moves
    )


def _lowest(plant: Plant, vessels: tuple[Placed, ...]) -> Placed | None:
    """The lowest of the vessels, as far as heights tell; the first where they do not."""

    def height(place: Placed) -> float:
        found = plant.heights.of(place.part)
        return float("inf") if found is None else found

    return min(vessels, key=height, default=None)


def _gauges(plant: Plant, place: str, gauges: tuple[Placed, ...], fill: float) -> Iterator[Result]:
    for gauge in gauges:
        name = plant.drawing.name(gauge.part)
        of = worded("Gauge of {name}", name=name) if gauge.device.built_in else name
        above = plant.heights.difference(place, gauge.part)
        if above is None:
            yield Result(
                worded("{of} reads, cold", of=of),
                worded("{fill:.3g} bar if level with {place}", fill=fill, place=plant.drawing.name(place)),
                "",
            )
        else:
            yield Result(worded("{of} reads, cold", of=of), fill - static_bar(above), "bar")


def _moves(plant: Plant, margin: float | None, pressure: float) -> tuple[Moves, ...]:
    if margin is None or "safety_margin_bar" in plant.drawing.design or pressure + margin <= 0:
        return ()
    return (
        Moves(
            "design.safety_margin_bar",
            a_word("0.2 bar instead of 0.3 (least fill pressure)"),
            -0.1 / (pressure + margin),
        ),
    )


def _open(plant: Plant, water: HeatedWater) -> Figure:
    """Under a cistern: its water level sets the pressure."""
    gathering = Gathering(plant)
    cisterns = water.reached(Role.FEEDS)
    subject = _subject(water, *cisterns)
    if not cisterns:
        why = a_word("the water is open, and no cistern that feeds it is drawn")
        return refusal(
            NAME, TITLE, subject, gathering, formula=OPEN_FORMULA, source=SOURCE, limits=LIMITS, why=why
        )
    levels = [
        gathering.part(place.part, "water_level_m", f"z {place.part}", a_word("Water level above the datum"))
        for place in cisterns
    ]
    heights = {part: plant.heights.of(part) for part in water.parts}
    gathering.lacks(*plant.heights.missing_for(water.parts))
    if gathering.missing:
        return refusal(NAME, TITLE, subject, gathering, formula=OPEN_FORMULA, source=SOURCE, limits=LIMITS)
    level = min(float(each) for each in levels)
    results = []
    for part, height in heights.items():
        gathering.add(
            f"h {part}",
            worded("Height of {part}", part=plant.drawing.name(part)),
            height or 0.0,
            "m",
            worded("given heights, {part}", part=part),
        )
        results.append(
            Result(
                worded("Pressure at {part}", part=plant.drawing.name(part)),
                static_bar(level - (height or 0.0)),
                "bar",
            )
        )
    for gauge in water.reached(Role.SHOWS_PRESSURE):
        own = plant.heights.of(gauge.part)
        if own is not None:
            results.append(
                Result(
                    worded("{part} reads, cold", part=plant.drawing.name(gauge.part)),
                    static_bar(level - own),
                    "bar",
                )
            )
    return Figure(NAME, TITLE, subject, tuple(results), OPEN_FORMULA, gathering.inputs, SOURCE, LIMITS)
