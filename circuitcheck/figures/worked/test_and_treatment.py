"""Pressure test and treatment of the heating water.

At what pressure the pipework is tested before it is hidden, and how much water there is to treat. The
sources disagree on the test; both are shown, and which one is used. Treated water keeps radiators from
rusting from inside and the heat source from furring up.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.figures.expansion import safety_valve_field
from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heated_water import HeatedWater, heating_bodies
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import WANTING, content_moves, setting_origin, take_content
from circuitcheck.parts.kind import Role
from circuitcheck.sizing import testing
from circuitcheck.sizing.vessel import static_bar
from circuitcheck.told import a_word, worded

NAME, TITLE = "test-and-treatment", "Pressure test and treatment"
FORMULA = "test = 1.5 × pw (the other source: 1.3 × pw)\ninhibitor = 0.01 × V"
SOURCE = (
    f"Test: {testing.TEST_SOURCE}; {testing.OTHER_TEST_SOURCE}; used: the higher. Inhibitor: "
    f"{testing.INHIBITOR_SOURCE}. BS 7593:2019: cleaned and flushed, inhibitor, a filter, the water tested every "
    "year and dosed anew or fully tested every five."
)
LIMITS = (
    "Pipework alone, cold and full: the heat source, the safety valve, the vessel and whatever is made for less are "
    "shut off or left off during the test. As working pressure stands what the safety valves let it come to, or "
    "the height of the cistern's water."
)

HIGHER_BY_BAR = 0.5


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each body of heating water."""
    return tuple(_one(plant, water) for water in heating_bodies(plant))


def _one(plant: Plant, water: HeatedWater) -> Figure:
    gathering = Gathering(plant)
    working = _open(gathering, water) if water.is_open_vented else _sealed(gathering, water)
    content = take_content(gathering, water.body)
    results = (*_test(plant, water, working), *_treatment(content))
    moves = content_moves(plant, water.body) if content is not None else ()
    if working:
        moves = (*_setting_moves(gathering, working), *moves)
    why = "" if results and not gathering.missing else WANTING
    if why and not gathering.missing:
        why = a_word(
            "neither a safety valve nor a cistern tells the working pressure, and no content is known"
        )
    return Figure(
        NAME,
        TITLE,
        water.parts,
        results,
        FORMULA,
        gathering.inputs,
        SOURCE,
        LIMITS,
        refused=why,
        missing=gathering.missing,
        moves=moves,
    )


def _setting_moves(gathering: Gathering, working: float) -> Iterator[Moves]:
    """A safety valve whose usual setting was taken: what another one, a common one, would change."""
    for field in gathering.defaults:
        if field.endswith("set_pressure_bar"):
            moved = testing.pressure_test_bar(working + HIGHER_BY_BAR) / testing.pressure_test_bar(working)
            yield Moves(field, worded("+{higher_by_bar:g} bar", higher_by_bar=HIGHER_BY_BAR), moved - 1)


def _sealed(gathering: Gathering, water: HeatedWater) -> float | None:
    """The highest setting of the safety valves, which the pressure cannot come above."""
    plant = gathering.plant
    settings = {valve: water.expansion.setting_bar(valve) for valve in water.reached(Role.RELIEVES_HEATING)}
    gathering.lacks(*(safety_valve_field(valve) for valve, setting in settings.items() if setting is None))
    known = {valve: setting for valve, setting in settings.items() if setting is not None}
    if not known or len(known) < len(settings):
        return None
    highest = max(known, key=lambda valve: known[valve])
    origin = setting_origin(plant, highest)
    gathering.add("pw", a_word("Safety valve set at"), known[highest], "bar", origin)
    return known[highest]


def _open(gathering: Gathering, water: HeatedWater) -> float | None:
    """The cistern's water over the lowest part of known height."""
    plant = gathering.plant
    levels = [
        gathering.part(place.part, "water_level_m", f"z {place.part}", a_word("Water level above the datum"))
        for place in water.reached(Role.FEEDS)
    ]
    heights = [height for part in water.parts if (height := plant.heights.of(part)) is not None]
    gathering.lacks(*plant.heights.missing_for(water.parts))
    if not levels or None in levels or not heights:
        return None
    pressure = static_bar(max(float(each) for each in levels) - min(heights))
    gathering.add("pw", a_word("Static pressure at what heats it"), pressure, "bar", "figure static-pressure")
    return pressure


def _test(plant: Plant, water: HeatedWater, working: float | None) -> Iterator[Result]:
    if working is None:
        return
    test = testing.pressure_test_bar(working)
    yield Result(a_word("Test pressure (1.5 times, used)"), test, "bar")
    yield Result(a_word("By the other source (1.3 times)"), testing.other_pressure_test_bar(working), "bar")
    for part in water.parts:
        own = {field.name for field in plant.drawing.components[part].kind.own_fields}
        most = plant.value(part, "maximum_pressure_bar") if "maximum_pressure_bar" in own else None
        if most is not None and most < test:
            yield Result(
                worded("{part} is made for less and is left out", part=plant.drawing.name(part)),
                float(most),
                "bar",
            )


def _treatment(content: float | None) -> Iterator[Result]:
    if content is None:
        return
    yield Result(a_word("Water to treat"), content, "l")
    yield Result(a_word("Inhibitor at one litre for 100"), testing.inhibitor_l(content), "l")
