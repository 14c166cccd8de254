"""Steps of the commissioning sheet before the heat source is fired: charges, pressure test, filling, treatment."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.figures.expansion import vessel_fields
from circuitcheck.parts.kind import Role
from circuitcheck.report.document.asked_of import NOT_KNOWN, PRACTICE, Asked, joined, result_words
from circuitcheck.report.document.content import Step
from circuitcheck.report.document.situations_told import gauge_cold
from circuitcheck.report.wording import shown
from circuitcheck.sizing import testing

CLEANED = "BS 7593:2019"
CHARGE = "taught in trade textbooks: the charge is measured with no water pressure on the vessel"
LINK = "Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraph 24, with guidance G24.2"
TEST_FIGURE, VESSEL_FIGURE = "test-and-treatment", "heating-vessel"


def before(asked: Asked) -> Iterator[Step]:
    """What is done dry, or with the water off again."""
    if asked.has(Role.HEATS):
        yield Step("Circuit cleaned and flushed, water run off to a foul drain", "runs clear", CLEANED)
    yield from _pressure_tests(asked)
    for place in asked.places(Role.HOLDS_EXPANSION):
        field = vessel_fields(place)[1]
        yield Step(
            f"{asked.name(place.part)}: gas charge, measured with the water side empty",
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
    left_out = [
        each.name.partition(" is made for less")[0] for each in results if "made for less" in each.name
    ]
    source = f"{testing.TEST_SOURCE}; {testing.OTHER_TEST_SOURCE}: the sources disagree"
    for number, test in enumerate(tests or (None,)):
        other = result_words(others[number]) if number < len(others) else ""
        yield Step(
            "Pressure test of the heating pipework, cold and full of water, before it is hidden",
            joined(
                (
                    NOT_KNOWN
                    if test is None
                    else f"{result_words(test)}, no loss after 30 minutes to settle",
                    f"By the other source {other}" if other else "",
                    f"Shut or left off: {', '.join(left_out)}" if left_out else "",
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
            "Heating circuit filled, cold fill pressure at the vessel",
            joined((asked.words("design", "fill_pressure_bar", "bar"), _range(asked))),
            "EN 12828, Annex D (from memory), with the figure for the vessel in this document",
            "bar",
        )
    for name, reading in gauge_cold(asked.figures):
        yield Step(
            f"{name}: reading cold and at rest", reading, "hydrostatics, worked in this document", "bar"
        )
    for place in asked.places(Role.FEEDS):
        yield Step(
            f"{asked.name(place.part)}: float valve set, water level above the datum",
            asked.words(place.part, "water_level_m", "m"),
            PRACTICE,
            "m",
        )
    if asked.has(Role.HEATS):
        yield Step("Air let out at every emitter, vent and high point, pressure made up", "no air", PRACTICE)
    for place in asked.places(Role.FILLS):
        yield Step(f"{asked.name(place.part)}: taken off after filling, both ends closed", "off", LINK)
    yield from _treatment(asked)
    if asked.has(Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN):
        yield Step(
            "Store filled with a hot tap open, then each tap run until clear", "no air, no dirt", PRACTICE
        )


def _range(asked: Asked) -> str:
    """Between what pressures the vessels as drawn may be filled cold."""
    ends: dict[str, list[str]] = {}
    for each in asked.results(VESSEL_FIGURE):
        name, parted, end = each.name.partition(" charged as drawn, filled cold ")
        if parted:
            ends.setdefault(name, []).append(f"{end} {result_words(each)}")
    return "; ".join(f"{name} may be filled {' '.join(said)}" for name, said in ends.items())


def _treatment(asked: Asked) -> Iterator[Step]:
    for result in asked.results(TEST_FIGURE):
        if result.name.startswith("Inhibitor"):
            content = asked.result(TEST_FIGURE, "Water to treat")
            said = f"about {result_words(result)} for {content} of water; the supplier’s dose comes first"
            yield Step(
                "Inhibitor put in, label left at the plant",
                said,
                f"{CLEANED}; {testing.INHIBITOR_SOURCE}",
                "l",
            )
            return
    if asked.has(Role.HEATS):
        yield Step("Inhibitor put in, label left at the plant", NOT_KNOWN, CLEANED, "l")


def _mains(asked: Asked) -> Iterator[Step]:
    for place in asked.places(Role.MAIN):
        for what, field, unit in (
            ("standing pressure", "standing_pressure_bar", "bar"),
            ("running pressure", "running_pressure_bar", "bar"),
            ("flow, running", "flow_lpm", "l/min"),
        ):
            yield Step(
                f"{asked.name(place.part)}: {what}", asked.words(place.part, field, unit), PRACTICE, unit
            )
    for place in asked.places(Role.REDUCES):
        setting = asked.number(place.part, "set_pressure_bar")
        yield Step(
            f"{asked.name(place.part)}: pressure behind it, no tap open",
            NOT_KNOWN if setting is None else f"{shown(setting)} bar",
            PRACTICE,
            "bar",
        )
