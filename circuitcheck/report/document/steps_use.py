"""Steps of the commissioning sheet once the plant is hot: balancing, bypass, taps, and handing over."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.figures.driven import SOURCE as NETWORK
from circuitcheck.parts.kind import Role
from circuitcheck.report.document.asked_of import PRACTICE, Asked, joined, result_words
from circuitcheck.report.document.content import Step
from circuitcheck.report.wording import shown

HOT_SOURCE = (
    "WFR guidance G18.4: 50 °C within 30 seconds; HSG274 part 2 and BS 8558 allow a minute: sources disagree"
)
LEAST_HOT_C = 50.0
KEEP = "BS 7593:2019: the water tested every year; safety and relief valves lifted yearly: common practice, no source"


def flow(asked: Asked) -> Iterator[Step]:
    """The flow and valve setting of each emitter and coil, and the bypass."""
    flows = [each for each in asked.results("balancing") if ": design flow" in each.name]
    for result in flows:
        name = result.name.partition(": design flow")[0]
        kv = next(
            (each for each in asked.results("balancing") if each.name.startswith(f"{name}: kv of")), None
        )
        said = "" if kv is None else f"kv of its balancing valve about {result_words(kv)}"
        yield Step(
            f"{name}: flow set", joined((result_words(result), said)), f"{NETWORK.rstrip('.')}", "l/min"
        )
    if not flows:
        for place in (*asked.places(Role.EMITS), *asked.places(Role.HEATED_BY_COIL)):
            yield Step(
                f"{asked.name(place.part)}: flow set, return not warmer than designed",
                "not told: numbers are missing, see the figure for balancing",
                PRACTICE,
                "°C",
            )
    for place in asked.places(Role.BYPASSES):
        setting = asked.words(place.part, "set_difference_kpa", "kPa")
        range_ = asked.result("bypass-setting", "serves both", subject=place.part)
        yield Step(
            f"{asked.name(place.part)}: set; stays cool while a zone is open, opens when all are shut",
            joined((setting, f"{range_} serves both" if range_ else "")),
            "worked in this document",
            "kPa",
        )
    if asked.has(Role.HEATS):
        for what, field in (("Flow", "flow_temperature_c"), ("Return", "return_temperature_c")):
            yield Step(
                f"{what} temperature, all heating called, settled",
                asked.words("design", field, "°C"),
                "as designed",
                "°C",
            )


def taps(asked: Asked) -> Iterator[Step]:
    """The store's temperature, and what comes at each outlet."""
    for role in (Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN):
        for place in asked.places(role):
            least = asked.limit("supply.store_least_c")
            setting = asked.words(place.part, "thermostat_c", "°C")
            said = joined((f"set at {setting}", f"at least {shown(least[0])} °C" if least else ""))
            yield Step(
                f"{asked.name(place.part)}: temperature of the store",
                said,
                least[1] if least else PRACTICE,
                "°C",
            )
    for place in asked.places(Role.BLENDS):
        said = asked.words(place.part, "set_temperature_c", "°C")
        yield Step(f"{asked.name(place.part)}: temperature of the mixed water", said, PRACTICE, "°C")
    bath = asked.limit("supply.bath_highest_c")
    for place in asked.places(Role.DRAWS):
        if not _is_joined(asked, place.part, "hot"):
            continue
        name, fitting = asked.name(place.part), asked.plant.value(place.part, "fitting")
        if fitting == "bath" and bath is not None:
            yield Step(f"{name}: hottest water at the bath", f"at most {shown(bath[0])} °C", bath[1], "°C")
        else:
            expect = f"{shown(LEAST_HOT_C)} °C within 30 seconds; less where it is blended on purpose"
            yield Step(f"{name}: hot water after 30 seconds", expect, HOT_SOURCE, "°C")


def _is_joined(asked: Asked, part: str, port: str) -> bool:
    return any(joint == (part, port) for joint in asked.drawing.joined)


def handing_over(asked: Asked) -> Iterator[Step]:
    """What the user is shown and what stays at the plant."""
    yield Step(
        "User shown the controls, the gauge, filling, and how to shut off water, gas and electricity",
        "",
        PRACTICE,
    )
    if asked.has(Role.RELIEVES_HEATING, Role.RELIEVES_STORE):
        yield Step(
            "User told that relief pipes may run at any time, near boiling, and whom to call then",
            "",
            PRACTICE,
        )
    yield Step(
        "Makers’ instructions, this document and notices to the authority left with the user", "", PRACTICE
    )
    yield Step("Next service agreed", "within a year", KEEP, "date")
