"""Steps of the commissioning sheet once the plant is hot: balancing, bypass, taps, and handing over."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.figures.driven import SOURCE as NETWORK
from circuitcheck.parts.kind import Role
from circuitcheck.report.document.asked_of import (
    PRACTICE,
    Asked,
    joined,
    result_words,
    value_in,
    with_unit,
)
from circuitcheck.report.document.content import Step
from circuitcheck.report.wording import upper
from circuitcheck.told import a_word, worded

HOT_SOURCE = a_word(
    "WFR guidance G18.4: 50 °C within 30 seconds; HSG274 part 2 and BS 8558 allow a minute: sources disagree"
)
LEAST_HOT_C = 50.0
KEEP = a_word(
    "BS 7593:2019: the water tested every year; safety and relief valves lifted yearly: common practice, no source"
)


def flow(asked: Asked) -> Iterator[Step]:
    """The flow and valve setting of each emitter and coil, and the bypass."""
    flows = [each for each in asked.results("balancing") if ": design flow" in each.name]
    for result in flows:
        name = value_in(result.name, "name")
        kv = next(
            (each for each in asked.results("balancing") if each.name.startswith(f"{name}: kv of")), None
        )
        said = "" if kv is None else worded("kv of its balancing valve about {value}", value=result_words(kv))
        yield Step(
            worded("{part}: flow set", part=upper(name)),
            joined((result_words(result), said)),
            a_word(NETWORK),
            "l/min",
        )
    if not flows:
        for place in (*asked.places(Role.EMITS), *asked.places(Role.HEATED_BY_COIL)):
            yield Step(
                worded("{part}: flow set, return not warmer than designed", part=asked.name(place.part)),
                a_word("not told: numbers are missing, see the figure for balancing"),
                PRACTICE,
                "°C",
            )
    for place in asked.places(Role.BYPASSES):
        setting = asked.words(place.part, "set_difference_kpa", "kPa")
        range_ = asked.result("bypass-setting", "serves both", subject=place.part)
        yield Step(
            worded(
                "{part}: set; stays cool while a zone is open, opens when all are shut",
                part=asked.name(place.part),
            ),
            joined((setting, worded("{range} serves both", range=range_) if range_ else "")),
            a_word("worked in this document"),
            "kPa",
        )
    if asked.has(Role.HEATS):
        for what, field in (
            (a_word("Flow temperature, all heating called, settled"), "flow_temperature_c"),
            (a_word("Return temperature, all heating called, settled"), "return_temperature_c"),
        ):
            yield Step(what, asked.words("design", field, "°C"), a_word("as designed"), "°C")


def taps(asked: Asked) -> Iterator[Step]:
    """The store's temperature, and what comes at each outlet."""
    for role in (Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN):
        for place in asked.places(role):
            least = asked.limit("supply.store_least_c")
            setting = asked.words(place.part, "thermostat_c", "°C")
            said = joined(
                (
                    worded("set at {value}", value=setting),
                    worded("at least {value}", value=with_unit(least[0], "°C")) if least else "",
                )
            )
            yield Step(
                worded("{part}: temperature of the store", part=asked.name(place.part)),
                said,
                least[1] if least else PRACTICE,
                "°C",
            )
    for place in asked.places(Role.BLENDS):
        said = asked.words(place.part, "set_temperature_c", "°C")
        what = worded("{part}: temperature of the mixed water", part=asked.name(place.part))
        yield Step(what, said, PRACTICE, "°C")
    bath = asked.limit("supply.bath_highest_c")
    for place in asked.places(Role.DRAWS):
        if not _is_joined(asked, place.part, "hot"):
            continue
        name, fitting = asked.name(place.part), asked.plant.value(place.part, "fitting")
        if fitting == "bath" and bath is not None:
            yield Step(
                worded("{part}: hottest water at the bath", part=name),
                worded("at most {value}", value=with_unit(bath[0], "°C")),
                bath[1],
                "°C",
            )
        else:
            expect = worded(
                "{value} within 30 seconds; less where it is blended on purpose",
                value=with_unit(LEAST_HOT_C, "°C"),
            )
            yield Step(worded("{part}: hot water after 30 seconds", part=name), expect, HOT_SOURCE, "°C")


def _is_joined(asked: Asked, part: str, port: str) -> bool:
    return any(joint == (part, port) for joint in asked.drawing.joined)


def handing_over(asked: Asked) -> Iterator[Step]:
    """What the user is shown and what stays at the plant."""
    yield Step(
        a_word("User shown the controls, the gauge, filling, and how to shut off water, gas and electricity"),
        "",
        PRACTICE,
    )
    if asked.has(Role.RELIEVES_HEATING, Role.RELIEVES_STORE):
        yield Step(
            a_word("User told that relief pipes may run at any time, near boiling, and whom to call then"),
            "",
            PRACTICE,
        )
    yield Step(
        a_word("Makers’ instructions, this document and notices to the authority left with the user"),
        "",
        PRACTICE,
    )
    yield Step(a_word("Next service agreed"), a_word("within a year"), KEEP, a_word("date"))
