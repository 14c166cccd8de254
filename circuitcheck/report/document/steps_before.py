"""Steps of the commissioning sheet before the heat source is fired: charges, pressure test, filling, treatment."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.figures.expansion import vessel_fields
from circuitcheck.parts.kind import Role
from circuitcheck.report.document.asked_of import (
    NOT_KNOWN,
    PRACTICE,
    Asked,
    joined,
    result_words,
    value_in,
    with_unit,
)
from circuitcheck.report.document.content import Step
from circuitcheck.report.document.situations_told import gauge_cold
from circuitcheck.report.wording import upper
from circuitcheck.sizing import testing
from circuitcheck.told import a_word, strung, worded

CLEANED = a_word("BS 7593:2019")
CHARGE = a_word("taught in trade textbooks: the charge is measured with no water pressure on the vessel")
LINK = a_word("Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraph 24, with guidance G24.2")
INHIBITOR = a_word("Inhibitor put in, label left at the plant")
TEST_FIGURE, VESSEL_FIGURE = "test-and-treatment", "heating-vessel"


def before(asked: Asked) -> Iterator[Step]:
    """What is done dry, or with the water off again."""
    if asked.has(Role.HEATS):
        yield Step(
            a_word("Circuit cleaned and flushed, water run off to a foul drain"),
            a_word("runs clear"),
            CLEANED,
        )
    yield from _pressure_tests(asked)
    for place in asked.places(Role.HOLDS_EXPANSION):
        field = vessel_fields(place)[1]
        yield Step(
            worded("{part}: gas charge, measured with the water side empty", part=asked.name(place.part)),
            asked.words(place.part, field, "bar"),
            CHARGE,
            "bar",
        )


def _pressure_tests(asked: Asked) -> Iterator[Step]:
    """Of the heating pipework, by the figure that tells at what pressure."""
    results = asked.results(TEST_FIGURE)
    if not asked.has(Role.HEATS):
        return
    tests = [each for each in results if each.name.startswith("Test pressure")]
    others = [each for each in results if each.name.startswith("By the other source")]
    left_out = [upper(value_in(each.name, "part")) for each in results if "made for less" in each.name]
    source = worded(
        "{first}; {second}: the sources disagree",
        first=a_word(testing.TEST_SOURCE),
        second=a_word(testing.OTHER_TEST_SOURCE),
    )
    for number, test in enumerate(tests or (None,)):
        other = result_words(others[number]) if number < len(others) else ""
        yield Step(
            a_word("Pressure test of the heating pipework, cold and full of water, before it is hidden"),
            joined(
                (
                    NOT_KNOWN
                    if test is None
                    else worded(
                        "{pressure}, no loss after 30 minutes to settle", pressure=result_words(test)
                    ),
                    worded("By the other source {pressure}", pressure=other) if other else "",
                    worded("Shut or left off: {parts}", parts=strung(left_out)) if left_out else "",
                )
            ),
            source,
            "bar",
        )


def filling(asked: Asked) -> Iterator[Step]:
    """What is read and done while the circuits are filled."""
    yield from _mains(asked)
    if asked.has(Role.HOLDS_EXPANSION, Role.FILLS) and asked.has(Role.HEATS):
        yield Step(
            a_word("Heating circuit filled, cold fill pressure at the vessel"),
            joined((asked.words("design", "fill_pressure_bar", "bar"), _range(asked))),
            a_word("EN 12828, Annex D (from memory), with the figure for the vessel in this document"),
            "bar",
        )
    for name, reading in gauge_cold(asked.figures):
        yield Step(
            worded("{gauge}: reading cold and at rest", gauge=name),
            reading,
            a_word("hydrostatics, worked in this document"),
            "bar",
        )
    for place in asked.places(Role.FEEDS):
        yield Step(
            worded("{part}: float valve set, water level above the datum", part=asked.name(place.part)),
            asked.words(place.part, "water_level_m", "m"),
            PRACTICE,
            "m",
        )
    if asked.has(Role.HEATS):
        yield Step(
            a_word("Air let out at every emitter, vent and high point, pressure made up"),
            a_word("no air"),
            PRACTICE,
        )
    for place in asked.places(Role.FILLS):
        what = worded("{part}: taken off after filling, both ends closed", part=asked.name(place.part))
        yield Step(what, a_word("taken off"), LINK)
    yield from _treatment(asked)
    if asked.has(Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN):
        yield Step(
            a_word("Store filled with a hot tap open, then each tap run until clear"),
            a_word("no air, no dirt"),
            PRACTICE,
        )


def _range(asked: Asked) -> str:
    """Between what pressures the vessels as drawn may be filled cold."""
    ends: dict[str, dict[str, str]] = {}
    for each in asked.results(VESSEL_FIGURE):
        _, parted, end = each.name.partition(" charged as drawn, filled cold ")
        if parted:
            ends.setdefault(value_in(each.name, "name"), {})[end] = result_words(each)
    return strung(
        (
            worded(
                "{vessel} may be filled from {least} to {most}",
                vessel=upper(name),
                least=each["from"],
                most=each["to"],
            )
            for name, each in ends.items()
        ),
        "; ",
    )


def _treatment(asked: Asked) -> Iterator[Step]:
    for result in asked.results(TEST_FIGURE):
        if result.name.startswith("Inhibitor"):
            content = asked.result(TEST_FIGURE, "Water to treat")
            said = worded(
                "about {dose} for {content} of water; the supplier’s dose comes first",
                dose=result_words(result),
                content=content,
            )
            source = strung((CLEANED, a_word(testing.INHIBITOR_SOURCE)), "; ")
            yield Step(INHIBITOR, said, source, "l")
            return
    if asked.has(Role.HEATS):
        yield Step(INHIBITOR, NOT_KNOWN, CLEANED, "l")


def _mains(asked: Asked) -> Iterator[Step]:
    for place in asked.places(Role.MAIN):
        for what, field, unit in (
            (a_word("{part}: standing pressure"), "standing_pressure_bar", "bar"),
            (a_word("{part}: running pressure"), "running_pressure_bar", "bar"),
            (a_word("{part}: flow, running"), "flow_lpm", "l/min"),
        ):
            yield Step(
                worded(what, part=asked.name(place.part)),
                asked.words(place.part, field, unit),
                PRACTICE,
                unit,
            )
    for place in asked.places(Role.REDUCES):
        setting = asked.number(place.part, "set_pressure_bar")
        yield Step(
            worded("{part}: pressure behind it, no tap open", part=asked.name(place.part)),
            NOT_KNOWN if setting is None else with_unit(setting, "bar"),
            PRACTICE,
            "bar",
        )
